//! Questions on cornering.

use super::{Choice, Curve, Kind, Question, Slip, Vary};

const SPEED: &str = "cornering.speed";
const RADIUS: &str = "cornering.radius";
const MOMENT: &str = "cornering.yaw_moment";
const LATERAL: &str = "lateral_acceleration";
const FRONT: &str = "vehicle.cornering_stiffness_front";
const REAR: &str = "vehicle.cornering_stiffness_rear";
const TRACK_TOLD: &[&str] = &[
    "vehicle.mass",
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    FRONT,
    REAR,
];
const TURN_TOLD: &[&str] = &[
    "vehicle.mass",
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    FRONT,
    REAR,
    SPEED,
    RADIUS,
    "vehicle.track_front",
    "vehicle.track_rear",
    "vehicle.rolling_resistance",
    "vehicle.drag_area",
    "vehicle.tyre_peak_slip",
];
const MOMENT_TOLD: &[&str] = &[
    "vehicle.mass",
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    FRONT,
    REAR,
    "vehicle.track_rear",
    SPEED,
    MOMENT,
];

/// What a tyre that slides holds follows from the peak.
const SLIDING: &[&str] = &["surface.friction_sliding"];

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "understeer_gradient",
        varied: &[
            Vary::percent(FRONT, 60, 95, 5),
            Vary::percent("vehicle.mass", 90, 120, 5),
        ],
        told: TRACK_TOLD,
        kind: Kind::Number {
            output: "understeer_gradient",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "characteristic_speed",
        varied: &[
            Vary::percent(FRONT, 60, 90, 5),
            Vary::percent("vehicle.wheelbase", 95, 115, 5),
        ],
        told: TRACK_TOLD,
        kind: Kind::Number {
            output: "characteristic_speed",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "steer",
        varied: &[
            Vary::steps(SPEED, (10, 20, 1), 1, "m/s"),
            Vary::steps(RADIUS, (80, 200, 10), 1, "m"),
            Vary::percent(FRONT, 70, 90, 5),
        ],
        told: TURN_TOLD,
        kind: Kind::Number {
            output: "single_track.steer_angle",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "brake_heat",
        fixed: &[("cornering.axle", "rear")],
        varied: &[
            Vary::steps(SPEED, (10, 30, 2), 1, "m/s"),
            Vary::steps(MOMENT, (400, 2000, 100), 1, "N·m"),
        ],
        told: MOMENT_TOLD,
        kind: Kind::Number {
            output: "vectoring.brakes.heat",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "motor_force",
        fixed: &[("cornering.axle", "rear")],
        varied: &[
            Vary::steps(SPEED, (10, 30, 2), 1, "m/s"),
            Vary::steps(MOMENT, (400, 2000, 100), 1, "N·m"),
        ],
        told: MOMENT_TOLD,
        kind: Kind::Number {
            output: "vectoring.motors.force",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "speed_lost",
        fixed: &[("cornering.axle", "rear")],
        varied: &[
            Vary::percent("vehicle.mass", 80, 120, 5),
            Vary::steps(MOMENT, (400, 2000, 100), 1, "N·m"),
        ],
        told: MOMENT_TOLD,
        kind: Kind::Number {
            output: "vectoring.brakes.deceleration",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "needed_speed",
        varied: &[Vary::steps(RADIUS, (40, 200, 10), 1, "m")],
        told: TURN_TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: SPEED,
            between: (0.1, 150.0),
            rising: true,
            target: Vary::steps(LATERAL, (20, 90, 5), 100, "g"),
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "read_speed",
        // The layout has no part in it; one is quicker to compute than all.
        fixed: &[("layouts", "R1"), ("layout", "R1")],
        varied: &[Vary::steps(RADIUS, (40, 120, 5), 1, "m")],
        parts: &["target"],
        curve: Some(Curve {
            input: SPEED,
            between: (4.0, 36.0),
            output: LATERAL,
        }),
        kind: Kind::Find {
            input: SPEED,
            between: (0.1, 150.0),
            rising: true,
            target: Vary::steps(LATERAL, (20, 80, 5), 100, "g"),
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "turn",
        // Nothing holds the car back, so how it is driven has no part in where its limit lies.
        fixed: &[
            ("layout", "F1R2"),
            ("vehicle.rolling_resistance", "0"),
            ("vehicle.drag_area", "0 m²"),
        ],
        varied: &[
            Vary::steps(SPEED, (12, 34, 2), 1, "m/s"),
            Vary::steps(RADIUS, (40, 100, 20), 1, "m"),
        ],
        told: TURN_TOLD,
        kind: Kind::Choice(Choice::Word {
            output: "turn",
            words: &[
                "turn_held",
                "front_slides",
                "rear_slides",
                "tips_over",
                "wheel_spins",
            ],
            apart: &[(LATERAL, "limit_lateral_acceleration")],
        }),
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "ackermann",
        varied: &[
            Vary::percent("vehicle.wheelbase", 90, 120, 5),
            Vary::steps(RADIUS, (20, 120, 10), 1, "m"),
        ],
        told: TURN_TOLD,
        kind: Kind::Number {
            output: "ackermann_angle",
        },
        tolerance: 0.05,
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "change",
        fixed: &[("cornering.axle", "rear")],
        varied: &[
            Vary::steps(SPEED, (10, 16, 1), 1, "m/s"),
            Vary::steps(RADIUS, (80, 160, 20), 1, "m"),
        ],
        told: TURN_TOLD,
        kind: Kind::Choice(Choice::Change(&[
            // "Brakes do the same for free"; "torque vectoring adds grip"; what speed does.
            (Vary::percent(SPEED, 120, 120, 1), "vectoring.brakes.heat"),
            (Vary::percent(SPEED, 120, 120, 1), "vectoring.motors.force"),
            (Vary::percent(SPEED, 120, 120, 1), "ackermann_angle"),
            (
                Vary::percent(MOMENT, 150, 150, 1),
                "limit_lateral_acceleration",
            ),
            (Vary::percent(REAR, 110, 110, 1), "understeer_gradient"),
        ])),
        hides: SLIDING,
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        varied: &[
            Vary::steps(SPEED, (10, 20, 1), 1, "m/s"),
            Vary::steps(RADIUS, (80, 200, 10), 1, "m"),
            Vary::percent(FRONT, 70, 90, 5),
        ],
        told: TURN_TOLD,
        hides: SLIDING,
        kind: Kind::Choice(Choice::Spot {
            output: "single_track.steer_angle",
            slips: &[
                Slip {
                    symbol: "a_y",
                    equation: "V/R_p",
                    why: "square",
                },
                Slip {
                    symbol: "K",
                    equation: "(N_r/(2*C_r) - N_f/(2*C_f))/g",
                    why: "gradient",
                },
                Slip {
                    symbol: "δ_1",
                    equation: "δ_A - K*a_y",
                    why: "understeer",
                },
                Slip {
                    symbol: "N_f",
                    equation: "W*a/L",
                    why: "axle",
                },
                Slip {
                    symbol: "δ_A",
                    equation: "L/(2*R_p)",
                    why: "geometry",
                },
            ],
        }),
        ..Question::PLAIN
    },
];
