//! Questions on how many motors, and where.

use super::{Because, Choice, Curve, Kind, Order, Question, Slip, Vary};

const FRICTION: &str = "surface.friction_peak";
const HEIGHT: &str = "vehicle.cg_height";
const TO_FRONT: &str = "vehicle.cg_to_front_axle";
const MASS: &str = "vehicle.mass";
const MATCH: &str = "layouts.*.matching_acceleration";
const LIKE: &str = "layouts.*.like_motors_limit";
const THREE: &[(&str, &str)] = &[("layouts", "F1R2"), ("layout", "F1R2")];
const TWO: &[(&str, &str)] = &[("layouts", "F1R1"), ("layout", "F1R1")];
const TOLD: &[&str] = &[
    FRICTION,
    MASS,
    "vehicle.wheelbase",
    TO_FRONT,
    HEIGHT,
    "vehicle.wheel_radius",
    "vehicle.motor_ratio",
];

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "matching",
        fixed: THREE,
        varied: &[
            Vary::percent(HEIGHT, 80, 130, 5),
            Vary::percent(TO_FRONT, 90, 106, 2),
        ],
        told: TOLD,
        kind: Kind::Number { output: MATCH },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        fixed: THREE,
        varied: &[
            Vary::percent(HEIGHT, 80, 130, 5),
            Vary::percent(TO_FRONT, 90, 106, 2),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Spot {
            output: "layouts.*.matching_acceleration",
            slips: &[
                Slip {
                    symbol: "a_m",
                    equation: "g*(b/L - p_t)*h/L",
                    why: "height",
                },
                Slip {
                    symbol: "p_t",
                    equation: "b/L",
                    why: "static",
                },
                Slip {
                    symbol: "b",
                    equation: "a",
                    why: "arm_axle",
                },
                Slip {
                    symbol: "a_m",
                    equation: "g*(b/L - p_t)*L/b",
                    why: "height",
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "read_friction",
        fixed: THREE,
        // What would take the place of the friction that is asked for.
        hides: &["surface.kind", "vehicle.tyre_friction"],
        varied: &[
            Vary::percent(HEIGHT, 80, 130, 5),
            Vary::percent(TO_FRONT, 85, 115, 5),
        ],
        parts: &["target"],
        curve: Some(Curve {
            input: FRICTION,
            between: (0.1, 1.1),
            output: LIKE,
        }),
        kind: Kind::Find {
            input: FRICTION,
            between: (0.001, 5.0),
            rising: true,
            target: Vary::steps(LIKE, (15, 70, 5), 100, "g"),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "order",
        fixed: &[("layouts", "F1R1 F1R2 F2R1"), ("layout", "F1R2")],
        varied: &[
            Vary::steps(FRICTION, (10, 110, 5), 100, ""),
            Vary::percent(HEIGHT, 80, 130, 5),
            Vary::percent(TO_FRONT, 75, 110, 5),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Rank {
            output: LIKE,
            falling: true,
            orders: &[
                Order {
                    word: "third",
                    layouts: &["F1R2", "F1R1", "F2R1"],
                    because: Because::Order,
                },
                Order {
                    word: "half",
                    layouts: &["F1R1", "F1R2", "F2R1"],
                    because: Because::Order,
                },
                Order {
                    word: "front_heavy",
                    layouts: &["F1R1", "F2R1", "F1R2"],
                    because: Because::Order,
                },
                // "More motors are always quicker."
                Order {
                    word: "count",
                    layouts: &["F1R2", "F2R1", "F1R1"],
                    because: Because::Never,
                },
                // "The split should equal the static weight split."
                Order {
                    word: "rest",
                    layouts: &["F1R1", "F1R2", "F2R1"],
                    because: Because::Never,
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "share_at_rest",
        fixed: THREE,
        varied: &[
            Vary::percent(TO_FRONT, 80, 120, 5),
            Vary::percent("vehicle.wheelbase", 100, 110, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "front_load_share_at_rest",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
    Question {
        id: "like_limit",
        varied: &[
            Vary::words("layout", &["F1R1", "F1R2", "F2R2"]),
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
            Vary::percent(HEIGHT, 85, 120, 5),
        ],
        told: TOLD,
        parts: &["layout"],
        kind: Kind::Number { output: LIKE },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "share_at_limit",
        fixed: TWO,
        varied: &[
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
            Vary::percent(HEIGHT, 85, 120, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.front_load_share_at_limit",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "torque_needed",
        fixed: TWO,
        varied: &[
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
            Vary::percent(MASS, 80, 120, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.motor_torque_needed",
        },
        tolerance: 0.08,
        ..Question::PLAIN
    },
    Question {
        id: "power_needed",
        fixed: TWO,
        varied: &[
            Vary::steps("motor_split.speed", (40, 100, 10), 1, "km/h"),
            Vary::steps(FRICTION, (40, 100, 5), 100, ""),
        ],
        told: TOLD,
        parts: &["motor_split.speed"],
        kind: Kind::Number {
            output: "layouts.*.motor_power_needed",
        },
        tolerance: 0.08,
        ..Question::PLAIN
    },
    Question {
        id: "match_height",
        fixed: THREE,
        varied: &[Vary::percent(TO_FRONT, 92, 106, 2)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: HEIGHT,
            between: (0.05, 3.0),
            rising: false,
            target: Vary::percent(MATCH, 75, 140, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "match_place",
        fixed: THREE,
        varied: &[Vary::percent(HEIGHT, 85, 120, 5)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: TO_FRONT,
            between: (0.05, 5.0),
            rising: false,
            target: Vary::percent(MATCH, 70, 125, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "two_or_three",
        fixed: &[("layouts", "F1R1 F1R2"), ("layout", "F1R2")],
        varied: &[
            Vary::steps(FRICTION, (10, 110, 5), 100, ""),
            Vary::percent(HEIGHT, 80, 130, 5),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Larger(&[
            ("layouts.F1R1.like_motors_limit", "F1R1", ""),
            ("layouts.F1R2.like_motors_limit", "F1R2", ""),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "change",
        fixed: THREE,
        varied: &[
            Vary::steps(FRICTION, (50, 90, 5), 100, ""),
            Vary::percent(TO_FRONT, 96, 104, 2),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            (Vary::percent(HEIGHT, 120, 120, 1), MATCH),
            // "Heavier cars need another split", "stronger motors match later".
            (Vary::percent(MASS, 120, 120, 1), MATCH),
            (Vary::percent("vehicle.motor_torque", 150, 150, 1), MATCH),
            (Vary::percent(FRICTION, 80, 80, 1), MATCH),
            (Vary::percent(TO_FRONT, 90, 90, 1), MATCH),
            (
                Vary::percent(MASS, 120, 120, 1),
                "layouts.*.motor_torque_needed",
            ),
        ])),
        ..Question::PLAIN
    },
];
