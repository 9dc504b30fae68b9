//! Questions on traction limits.

use super::{Because, Choice, Curve, Kind, Order, Question, Slip, Vary};

const FRICTION: &str = "surface.friction_peak";
const HEIGHT: &str = "vehicle.cg_height";
const TO_FRONT: &str = "vehicle.cg_to_front_axle";
const LIMIT: &str = "limits.*.acceleration";
const TOLD: &[&str] = &[
    FRICTION,
    "vehicle.mass",
    "vehicle.wheelbase",
    TO_FRONT,
    HEIGHT,
];

/// Where the motors may limit, a reader must be able to see whether they do.
const MOTORS_TOLD: &[&str] = &[
    FRICTION,
    "vehicle.mass",
    "vehicle.wheelbase",
    TO_FRONT,
    HEIGHT,
    "vehicle.motor_torque",
    "vehicle.motor_ratio",
    "vehicle.wheel_radius",
];

/// What would take the place of the friction that a question tells or asks for.
const OTHER_FRICTIONS: &[&str] = &[
    "surface.kind",
    "surface.friction_peak_left",
    "surface.friction_peak_right",
    "vehicle.tyre_friction",
];

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "limit",
        varied: &[
            Vary::words("layout", &["F1", "R1"]),
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
            Vary::percent(HEIGHT, 85, 130, 5),
        ],
        told: TOLD,
        parts: &["layout"],
        kind: Kind::Number { output: LIMIT },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "read_friction",
        fixed: &[("layouts", "R1"), ("layout", "R1")],
        hides: OTHER_FRICTIONS,
        varied: &[
            Vary::percent(HEIGHT, 85, 130, 5),
            Vary::percent(TO_FRONT, 80, 120, 5),
        ],
        parts: &["target"],
        curve: Some(Curve {
            input: FRICTION,
            between: (0.1, 1.1),
            output: LIMIT,
        }),
        kind: Kind::Find {
            input: FRICTION,
            between: (0.001, 5.0),
            rising: true,
            target: Vary::steps(LIMIT, (10, 60, 5), 100, "g"),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "sketch_limit",
        hides: OTHER_FRICTIONS,
        varied: &[
            Vary::words("layout", &["F1", "R1"]),
            Vary::percent(HEIGHT, 85, 130, 5),
            Vary::percent(TO_FRONT, 80, 120, 5),
        ],
        told: TOLD,
        parts: &["layout", "from", "to"],
        // "Twice the friction, twice the acceleration": true of all wheels, of one axle it is not.
        kind: Kind::Sketch(Curve {
            input: FRICTION,
            between: (0.2, 1.0),
            output: LIMIT,
        }),
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "faster_drive",
        fixed: &[("layouts", "F1 R1"), ("layout", "R1")],
        varied: &[
            Vary::steps(FRICTION, (15, 100, 5), 100, ""),
            Vary::percent(TO_FRONT, 65, 105, 5),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Larger(&[
            ("limits.F1.acceleration", "F1", ""),
            ("limits.R1.acceleration", "R1", ""),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "order",
        fixed: &[
            ("layouts", "F1 R1 F1R1"),
            ("layout", "F1R1"),
            ("traction.motor_limit", "as_fitted"),
            ("vehicle.motor_torque", "450 N·m"),
        ],
        hides: &["traction.front_share"],
        varied: &[
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            Vary::steps("vehicle.motor_torque", (200, 600, 50), 1, "N·m"),
            Vary::percent(TO_FRONT, 75, 110, 5),
        ],
        told: MOTORS_TOLD,
        kind: Kind::Choice(Choice::Rank {
            output: LIMIT,
            falling: true,
            orders: &[
                Order {
                    word: "tyres",
                    layouts: &["F1R1", "R1", "F1"],
                    because: Because::Words(&[
                        ("limits.R1.limited_by", "rear_slip"),
                        ("limits.F1.limited_by", "front_slip"),
                    ]),
                },
                Order {
                    word: "motor",
                    layouts: &["F1R1", "R1", "F1"],
                    because: Because::Words(&[
                        ("limits.R1.limited_by", "motor_torque"),
                        ("limits.F1.limited_by", "front_slip"),
                    ]),
                },
                Order {
                    word: "front_heavy",
                    layouts: &["F1R1", "F1", "R1"],
                    because: Because::Words(&[
                        ("limits.F1.limited_by", "front_slip"),
                        ("limits.R1.limited_by", "rear_slip"),
                    ]),
                },
                // "Wheels that push are better than wheels that pull."
                Order {
                    word: "pushing",
                    layouts: &["R1", "F1R1", "F1"],
                    because: Because::Never,
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        // As the textbook has it: nothing but the tyres of the driven axle, on a level road.
        fixed: &[
            ("layouts", "F1"),
            ("layout", "F1"),
            ("vehicle.rolling_resistance", "0"),
            ("vehicle.tyre_load_sensitivity", "0"),
        ],
        hides: &[
            "surface.grade",
            "traction.speed",
            "traction.motor_limit",
            "traction.front_axle_type",
            "surface.friction_peak_left",
            "surface.friction_peak_right",
        ],
        varied: &[
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
            Vary::percent(HEIGHT, 85, 130, 5),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Spot {
            output: "limits.*.front_adhesion_utilisation",
            slips: &[
                Slip {
                    symbol: "a_x",
                    equation: "μ*g*(b/L)/(1 - μ*h/L)",
                    why: "front_sign",
                },
                Slip {
                    symbol: "a_x",
                    equation: "μ*g",
                    why: "all_tyres",
                },
                Slip {
                    symbol: "N_f",
                    equation: "(W*b + m*a_x*h)/L",
                    why: "side",
                },
                Slip {
                    symbol: "W",
                    equation: "m",
                    why: "mass",
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "what_limits",
        fixed: &[("layouts", "F1R1"), ("layout", "F1R1")],
        varied: &[
            Vary::steps("traction.front_share", (20, 60, 5), 100, ""),
            Vary::steps(FRICTION, (30, 100, 10), 100, ""),
        ],
        told: TOLD,
        parts: &["traction.front_share"],
        kind: Kind::Choice(Choice::Word {
            output: "limits.*.limited_by",
            words: &["front_slip", "rear_slip", "front_lift", "motor_torque"],
            apart: &[(
                "limits.*.front_adhesion_utilisation",
                "limits.*.rear_adhesion_utilisation",
            )],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "needed_friction",
        hides: OTHER_FRICTIONS,
        varied: &[
            Vary::words("layout", &["F1", "R1"]),
            Vary::percent(HEIGHT, 85, 130, 5),
        ],
        told: TOLD,
        parts: &["layout", "target"],
        kind: Kind::Find {
            input: FRICTION,
            between: (0.001, 5.0),
            rising: true,
            target: Vary::steps(LIMIT, (15, 45, 5), 100, "g"),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "change",
        varied: &[
            Vary::words("layout", &["F1", "R1", "F1R1"]),
            Vary::steps(FRICTION, (50, 90, 5), 100, ""),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            (Vary::percent(HEIGHT, 120, 120, 1), LIMIT),
            (Vary::percent("vehicle.mass", 120, 120, 1), LIMIT),
            (Vary::percent(TO_FRONT, 90, 90, 1), LIMIT),
            (Vary::percent("vehicle.motor_torque", 150, 150, 1), LIMIT),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "rear_load",
        fixed: &[("layouts", "R1"), ("layout", "R1")],
        varied: &[
            Vary::steps(FRICTION, (40, 90, 5), 100, ""),
            Vary::percent(HEIGHT, 85, 130, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "limits.*.rear_axle_load",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "force",
        varied: &[
            Vary::words("layout", &["F1", "R1", "F1R1"]),
            Vary::steps(FRICTION, (40, 90, 5), 100, ""),
            Vary::percent("vehicle.mass", 80, 120, 5),
        ],
        told: TOLD,
        parts: &["layout"],
        kind: Kind::Number {
            output: "limits.*.tractive_force",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "uphill",
        varied: &[
            Vary::words("layout", &["F1", "R1", "F1R1"]),
            Vary::steps("surface.grade", (6, 14, 1), 1, "%"),
            Vary::steps(FRICTION, (75, 100, 5), 100, ""),
        ],
        told: TOLD,
        parts: &["layout", "surface.grade"],
        kind: Kind::Number { output: LIMIT },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "one_side",
        fixed: &[("layouts", "R1"), ("layout", "R1")],
        hides: &[],
        varied: &[
            Vary::steps("surface.friction_peak_left", (15, 40, 5), 100, ""),
            Vary::steps("surface.friction_peak_right", (60, 95, 5), 100, ""),
        ],
        told: TOLD,
        parts: &["surface.friction_peak_left", "surface.friction_peak_right"],
        kind: Kind::Number { output: LIMIT },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "ideal_share",
        varied: &[
            Vary::percent(TO_FRONT, 80, 120, 5),
            Vary::percent("vehicle.wheelbase", 100, 110, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "ideal_front_share_at_rest",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
];
