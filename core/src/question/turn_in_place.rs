//! Questions on turning in place.

use super::{Choice, Curve, Kind, Question, Slip, Vary};

const FRICTION: &str = "surface.friction_sliding";
const MASS: &str = "vehicle.mass";
const RADIUS: &str = "vehicle.wheel_radius";
const PRESSURE: &str = "vehicle.tyre_pressure";
const WEAR: &str = "turn_in_place.wear_coefficient";
const GRADE: &str = "surface.grade";
const TOLD: &[&str] = &[
    FRICTION,
    MASS,
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    "vehicle.track_front",
    "vehicle.track_rear",
    RADIUS,
];

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "wheel_torque",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            Vary::percent(MASS, 80, 130, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "wheel_torque",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "energy",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            Vary::percent(MASS, 80, 130, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "energy_per_turn",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "lengthwise",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::percent("vehicle.wheelbase", 75, 150, 5),
            Vary::steps(FRICTION, (30, 100, 10), 100, ""),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "friction_used_lengthwise",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
    Question {
        id: "feasible",
        varied: &[
            Vary::words("layout", &["F1R1", "R2", "F1R2", "F2R2", "F2R2", "F2R2"]),
            Vary::steps(FRICTION, (40, 110, 10), 100, ""),
            Vary::percent("vehicle.motor_torque", 20, 100, 10),
        ],
        told: TOLD,
        parts: &["layout"],
        kind: Kind::Choice(Choice::Word {
            output: "layouts.*.reason",
            words: &[
                "wheels_driven_apart",
                "motor_torque_too_small",
                "no_counter_rotation",
                "undriven_axle_holds",
                "pair_holds_itself",
            ],
            apart: &[
                ("front_wheel_torque", "available_wheel_torque"),
                ("rear_wheel_torque", "available_wheel_torque"),
                ("layouts.*.driving_moment", "layouts.*.holding_moment"),
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "needed_friction",
        fixed: &[("layout", "F2R2")],
        hides: &[
            "surface.kind",
            "surface.friction_peak",
            "vehicle.tyre_friction",
        ],
        varied: &[Vary::percent(MASS, 80, 130, 5)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: FRICTION,
            between: (0.001, 5.0),
            rising: true,
            target: Vary::percent("wheel_torque", 30, 110, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "change",
        fixed: &[("layout", "F2R2")],
        varied: &[Vary::steps(FRICTION, (30, 90, 5), 100, "")],
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            // "It takes little torque because nothing moves forward"; what the share rests on.
            (
                Vary::percent(FRICTION, 80, 80, 1),
                "friction_used_lengthwise",
            ),
            (Vary::percent(RADIUS, 110, 110, 1), "wheel_torque"),
            (Vary::percent(RADIUS, 110, 110, 1), "energy_per_turn"),
            (Vary::percent(MASS, 120, 120, 1), "friction_used_lengthwise"),
            (
                Vary::percent("vehicle.wheelbase", 115, 115, 1),
                "wheel_torque",
            ),
            (
                Vary::percent("vehicle.motor_torque", 150, 150, 1),
                "wheel_torque",
            ),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        fixed: &[("layout", "F2R2")],
        hides: &[
            "surface.friction_sliding_left",
            "surface.friction_sliding_right",
            "vehicle.tyre_load_sensitivity",
        ],
        varied: &[
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            // Uneven, so that each axle has its own line.
            Vary::percent("vehicle.cg_to_front_axle", 82, 92, 2),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Spot {
            output: "wheel_torque",
            slips: &[
                Slip {
                    symbol: "F_f",
                    equation: "μ_f*N_f*(q*κ - t_f/2)/s_f",
                    why: "two_wheels",
                },
                Slip {
                    symbol: "s_r",
                    equation: "sqrt((κ - t_r/2)² + x²)",
                    why: "slide_arm",
                },
                Slip {
                    symbol: "F",
                    equation: "F_f + F_r",
                    why: "mean",
                },
                Slip {
                    symbol: "T",
                    equation: "F/R",
                    why: "lever",
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "harder_axle",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::percent("vehicle.cg_to_front_axle", 75, 125, 5),
            Vary::steps(FRICTION, (30, 100, 10), 100, ""),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Larger(&[
            (
                "front_tractive_force_per_wheel",
                "front",
                "question.front_axle",
            ),
            (
                "rear_tractive_force_per_wheel",
                "rear",
                "question.rear_axle",
            ),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "drilling",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::steps(PRESSURE, (180, 320, 10), 1, "kPa"),
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "drilling_moment_bound",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "tread",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::steps(WEAR, (1, 10, 1), 1000, "mm³/J"),
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            Vary::percent(MASS, 80, 130, 5),
        ],
        told: TOLD,
        parts: &[WEAR],
        kind: Kind::Number {
            output: "tread_lost_per_turn",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "drift",
        fixed: &[("layout", "F2R2")],
        hides: &[GRADE],
        varied: &[Vary::steps(FRICTION, (50, 100, 5), 100, "")],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: GRADE,
            between: (0.0005, 0.4),
            rising: true,
            target: Vary::steps("drift_per_turn", (20, 100, 10), 100, "m"),
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "read_torque",
        fixed: &[("layout", "F2R2")],
        varied: &[
            Vary::steps(FRICTION, (20, 100, 5), 100, ""),
            Vary::percent(MASS, 80, 130, 5),
        ],
        parts: &[FRICTION],
        curve: Some(Curve {
            input: FRICTION,
            between: (0.1, 1.5),
            output: "wheel_torque",
        }),
        kind: Kind::Number {
            output: "wheel_torque",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
];
