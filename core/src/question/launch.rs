//! Questions on the launch.

use super::{Because, Choice, Curve, Kind, Order, Question, Vary};

const FRICTION: &str = "surface.friction_peak";
const MASS: &str = "vehicle.mass";
const POWER: &str = "vehicle.motor_power";
const TIME: &str = "launch.time";
const TO_60: &str = "layouts.*.time_to_60_mph";
const SPEED: &str = "layouts.*.speed_at_time";
const ALL_WHEEL: &[(&str, &str)] = &[("layouts", "F1R1"), ("layout", "F1R1")];
const REAR: &[(&str, &str)] = &[("layouts", "R1"), ("layout", "R1")];
const TOLD: &[&str] = &[
    FRICTION,
    MASS,
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    "vehicle.cg_height",
    "vehicle.motor_torque",
    POWER,
    "vehicle.motor_ratio",
    "vehicle.wheel_radius",
    "vehicle.rotor_inertia",
    // Without one of them the tyres grip at once, or the body has no springs.
    "vehicle.tyre_peak_slip",
    "vehicle.tyre_relaxation_length",
    "vehicle.ride_frequency_front",
    "vehicle.ride_frequency_rear",
];
/// Traction control keeps the tyres from sliding; what they hold then follows from the peak.
const SLIDING: &[&str] = &["surface.friction_sliding"];
const ROAD_AND_MASS: &[Vary] = &[
    Vary::steps(FRICTION, (60, 100, 5), 100, ""),
    Vary::percent(MASS, 85, 120, 5),
];

/// The questions. What a run gives comes from hundreds of steps, so an estimate is given more room.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "time_to_60",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number { output: TO_60 },
        tolerance: 0.12,
        ..Question::PLAIN
    },
    Question {
        id: "needed_power",
        fixed: ALL_WHEEL,
        varied: &[Vary::percent(MASS, 85, 120, 5)],
        hides: SLIDING,
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: POWER,
            between: (1e4, 2e6),
            rising: false,
            // Slower than it is: quicker may be more than the torque allows.
            target: Vary::percent(TO_60, 105, 150, 5),
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "read_time",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        parts: &["target"],
        curve: Some(Curve {
            input: TIME,
            between: (0.0, 8.0),
            output: SPEED,
        }),
        kind: Kind::Find {
            input: TIME,
            between: (0.01, 60.0),
            rising: true,
            target: Vary::steps(SPEED, (30, 90, 5), 1, "km/h"),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "order",
        // Two motors each: the power is the same, only the place of it differs.
        fixed: &[
            ("layouts", "F2 R2 F1R1"),
            ("layout", "F1R1"),
            // So strong at rest that the tyres of one axle cannot take it.
            ("vehicle.motor_torque", "600 N·m"),
            (FRICTION, "0.8"),
        ],
        varied: &[
            Vary::steps(FRICTION, (20, 100, 5), 100, ""),
            Vary::percent("vehicle.cg_to_front_axle", 70, 105, 5),
        ],
        hides: &["surface.friction_sliding", "surface.kind"],
        told: TOLD,
        kind: Kind::Choice(Choice::Rank {
            output: TO_60,
            falling: false,
            orders: &[
                Order {
                    word: "then_power",
                    layouts: &["F1R1", "R2", "F2"],
                    because: Because::Larger(
                        "layouts.R2.time_to_60_mph",
                        "layouts.R2.rear_grip_limited_until",
                    ),
                },
                Order {
                    word: "grip_alone",
                    layouts: &["F1R1", "R2", "F2"],
                    because: Because::Larger(
                        "layouts.R2.rear_grip_limited_until",
                        "layouts.R2.time_to_60_mph",
                    ),
                },
                Order {
                    word: "front_heavy",
                    layouts: &["F1R1", "F2", "R2"],
                    because: Because::Order,
                },
                // "Wheels that push are better than wheels that pull."
                Order {
                    word: "pushing",
                    layouts: &["R2", "F1R1", "F2"],
                    because: Because::Never,
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "time_to_100",
        fixed: REAR,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.time_to_100_km_h",
        },
        tolerance: 0.12,
        ..Question::PLAIN
    },
    Question {
        id: "quarter_time",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.quarter_mile_time",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "quarter_speed",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.quarter_mile_speed",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "rollout",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.rollout_time",
        },
        tolerance: 0.12,
        ..Question::PLAIN
    },
    Question {
        id: "after_rollout",
        fixed: REAR,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.time_to_60_mph_after_rollout",
        },
        tolerance: 0.12,
        ..Question::PLAIN
    },
    Question {
        id: "motor_energy",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.motor_energy",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "quarter_after_rollout",
        fixed: REAR,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.quarter_mile_time_after_rollout",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "time_to_160",
        fixed: ALL_WHEEL,
        varied: ROAD_AND_MASS,
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.time_to_160_km_h",
        },
        tolerance: 0.12,
        ..Question::PLAIN
    },
    Question {
        id: "change",
        fixed: REAR,
        varied: &[
            Vary::steps(FRICTION, (40, 80, 5), 100, ""),
            Vary::percent(MASS, 90, 110, 5),
        ],
        hides: SLIDING,
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            (Vary::percent(MASS, 120, 120, 1), TO_60),
            (Vary::percent(FRICTION, 80, 80, 1), TO_60),
            // "The time to 60 is a matter of power."
            (Vary::percent(POWER, 150, 150, 1), "layouts.*.rollout_time"),
            (Vary::percent("vehicle.cg_height", 130, 130, 1), TO_60),
            (
                Vary::percent(FRICTION, 120, 120, 1),
                "layouts.*.rollout_time",
            ),
            (Vary::percent("vehicle.drag_area", 150, 150, 1), TO_60),
        ])),
        ..Question::PLAIN
    },
];
