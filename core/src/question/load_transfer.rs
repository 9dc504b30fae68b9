//! Questions on weight transfer.

use super::{Choice, Kind, Question, Vary};

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
];
