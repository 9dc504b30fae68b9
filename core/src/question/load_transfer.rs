//! Questions on weight transfer.

use super::{Choice, Curve, Kind, Question, Slip, Vary};
use crate::GRAVITY_M_S2;

const ACCELERATION: &str = "load_transfer.acceleration";
const HEIGHT: &str = "vehicle.cg_height";
const MASS: &str = "vehicle.mass";
const TOLD: &[&str] = &[
    MASS,
    "vehicle.wheelbase",
    "vehicle.cg_to_front_axle",
    HEIGHT,
    ACCELERATION,
];

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "rear_load",
        varied: &[
            Vary::steps(ACCELERATION, (30, 90, 5), 100, "g"),
            Vary::percent(MASS, 80, 120, 5),
            Vary::percent(HEIGHT, 80, 140, 5),
        ],
        told: TOLD,
        parts: &[ACCELERATION],
        kind: Kind::Number {
            output: "rear_axle_load",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "sketch_rear_load",
        varied: &[
            Vary::percent(MASS, 80, 120, 5),
            Vary::percent(HEIGHT, 80, 140, 5),
        ],
        told: TOLD,
        parts: &["from", "to"],
        // "It grows with the square of the acceleration", "the whole weight goes to the rear".
        kind: Kind::Sketch(Curve {
            input: ACCELERATION,
            between: (0.0, 0.8 * GRAVITY_M_S2),
            output: "rear_axle_load",
        }),
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "ratio_acceleration",
        varied: &[Vary::percent(HEIGHT, 90, 140, 5)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: ACCELERATION,
            between: (0.0, 39.0),
            rising: true,
            target: Vary::steps("rear_to_front_ratio", (150, 400, 25), 100, ""),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "lift_height",
        hides: &[ACCELERATION],
        varied: &[Vary::percent("vehicle.cg_to_front_axle", 90, 110, 2)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: HEIGHT,
            between: (0.01, 5.0),
            rising: false,
            target: Vary::steps("front_lift_acceleration", (70, 140, 5), 100, "g"),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "heavier_axle",
        varied: &[
            Vary::steps(ACCELERATION, (-60, 60, 5), 100, "g"),
            Vary::percent("vehicle.cg_to_front_axle", 75, 125, 5),
        ],
        told: TOLD,
        parts: &[ACCELERATION],
        kind: Kind::Choice(Choice::Larger(&[
            ("front_axle_load", "front", "question.front_axle"),
            ("rear_axle_load", "rear", "question.rear_axle"),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "change",
        varied: &[Vary::steps(ACCELERATION, (30, 80, 5), 100, "g")],
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            // "Soft springs cause load transfer", "the heavier the car, the more of it moves".
            (
                Vary::percent("vehicle.ride_frequency_rear", 60, 60, 1),
                "rear_axle_load",
            ),
            (Vary::percent(MASS, 120, 120, 1), "rear_to_front_ratio"),
            (Vary::percent(HEIGHT, 120, 120, 1), "rear_to_front_ratio"),
            (
                Vary::percent("vehicle.wheelbase", 110, 110, 1),
                "transferred_load",
            ),
            (
                Vary::percent("vehicle.cg_to_front_axle", 90, 90, 1),
                "front_lift_acceleration",
            ),
            (
                Vary::percent(HEIGHT, 120, 120, 1),
                "front_lift_acceleration",
            ),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "front_load",
        varied: &[
            Vary::steps(ACCELERATION, (-80, -30, 5), 100, "g"),
            Vary::percent(MASS, 80, 120, 5),
        ],
        told: TOLD,
        parts: &[ACCELERATION],
        kind: Kind::Number {
            output: "front_axle_load",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "transferred",
        varied: &[
            Vary::steps(ACCELERATION, (30, 90, 5), 100, "g"),
            Vary::percent(MASS, 80, 120, 5),
            Vary::percent(HEIGHT, 80, 140, 5),
        ],
        told: TOLD,
        parts: &[ACCELERATION],
        kind: Kind::Number {
            output: "transferred_load",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "front_share",
        varied: &[
            Vary::steps(ACCELERATION, (20, 70, 5), 100, "g"),
            Vary::percent(HEIGHT, 80, 120, 5),
        ],
        told: TOLD,
        parts: &[ACCELERATION],
        kind: Kind::Number {
            output: "front_load_share",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "two_to_one",
        varied: &[
            Vary::percent(HEIGHT, 80, 140, 5),
            Vary::percent("vehicle.cg_to_front_axle", 90, 105, 5),
        ],
        told: TOLD,
        kind: Kind::Number {
            output: "two_to_one_acceleration",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "transfer_acceleration",
        varied: &[Vary::percent(HEIGHT, 80, 140, 5)],
        told: TOLD,
        parts: &["target"],
        kind: Kind::Find {
            input: ACCELERATION,
            between: (0.0, 39.0),
            rising: true,
            target: Vary::percent("transferred_load", 40, 130, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        varied: &[
            Vary::steps(ACCELERATION, (30, 80, 5), 100, "g"),
            Vary::percent(MASS, 80, 120, 5),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Spot {
            output: "rear_to_front_ratio",
            slips: &[
                Slip {
                    symbol: "W",
                    equation: "m",
                    why: "mass",
                },
                Slip {
                    symbol: "N_r",
                    equation: "(W*a - m*a_x*h)/L",
                    why: "side",
                },
                Slip {
                    symbol: "N_f",
                    equation: "(W*b - m*a_x*L)/h",
                    why: "arm",
                },
                Slip {
                    symbol: "N_f",
                    equation: "(W*a - m*a_x*h)/L",
                    why: "axle",
                },
                Slip {
                    symbol: "n",
                    equation: "N_f/N_r",
                    why: "ratio",
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "read_load",
        varied: &[
            Vary::steps(ACCELERATION, (15, 85, 5), 100, "g"),
            Vary::percent(MASS, 80, 120, 5),
            Vary::percent(HEIGHT, 80, 140, 5),
        ],
        parts: &[ACCELERATION],
        curve: Some(Curve {
            input: ACCELERATION,
            between: (0.0, 9.81),
            output: "rear_axle_load",
        }),
        kind: Kind::Number {
            output: "rear_axle_load",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
];
