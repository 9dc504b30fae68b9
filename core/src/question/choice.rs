//! Questions on choosing a layout. They ask what parts, room and grip say: no run is needed for them.

use super::{Because, Choice, Curve, Kind, Order, Question, Vary};

const MOTOR: &str = "choice.motor_cost";
const INVERTER: &str = "choice.inverter_cost";
const SHAFT: &str = "choice.half_shaft_cost";
const DIFFERENTIAL: &str = "choice.differential_cost";
const GRADE: &str = "choice.start_grade";
const POWER: &str = "vehicle.motor_power";
const MASS: &str = "vehicle.mass";
const TO_FRONT: &str = "vehicle.cg_to_front_axle";
const HEIGHT: &str = "vehicle.cg_height";
const FRICTION: &str = "surface.friction_peak";

const START: &str = "layouts.*.start_margin";
const COST: &str = "layouts.*.cost";
const COSTS: &[&str] = &[
    MOTOR,
    INVERTER,
    "choice.gear_set_cost",
    SHAFT,
    DIFFERENTIAL,
    "choice.disconnect_cost",
];
const UNIT: &[&str] = &[
    POWER,
    "packaging.motor_power_density",
    "packaging.inverter_power_density",
    "packaging.gear_power_density",
];
const GRIP: &[&str] = &[MASS, "vehicle.wheelbase", TO_FRONT, HEIGHT];
const GROUND: &[&str] = &[MASS, "vehicle.wheelbase", TO_FRONT, HEIGHT, FRICTION];

/// What would need a run to judge, or another ground.
const NO_RUN: &[&str] = &[
    "choice.target_time",
    "choice.least_range",
    "surface.friction_sliding",
];

const LAYOUT: Vary = Vary::words(
    "layout",
    &["F1", "R1", "F2", "R2", "F1R1", "F1R2", "F2R1", "F2R2"],
);

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "cost",
        hides: NO_RUN,
        varied: &[
            LAYOUT,
            Vary::percent(MOTOR, 50, 200, 25),
            Vary::percent(SHAFT, 100, 300, 50),
        ],
        told: COSTS,
        parts: &["layout"],
        kind: Kind::Number { output: COST },
        tolerance: 0.03,
        ..Question::PLAIN
    },
    Question {
        id: "parts",
        hides: NO_RUN,
        varied: &[
            LAYOUT,
            Vary::words("vehicle.disconnect", &["none", "front", "rear", "both"]),
        ],
        parts: &["layout"],
        kind: Kind::Number {
            output: "layouts.*.parts",
        },
        tolerance: 0.01,
        ..Question::PLAIN
    },
    Question {
        id: "motor_cost",
        hides: NO_RUN,
        varied: &[LAYOUT, Vary::percent(INVERTER, 50, 150, 25)],
        told: COSTS,
        parts: &["layout", "target"],
        kind: Kind::Find {
            input: MOTOR,
            between: (0.0, 1000.0),
            rising: true,
            target: Vary::percent(COST, 85, 150, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "volume",
        hides: NO_RUN,
        varied: &[LAYOUT, Vary::percent(POWER, 60, 150, 10)],
        told: UNIT,
        parts: &["layout"],
        kind: Kind::Number {
            output: "layouts.*.volume",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
    Question {
        id: "power_for_volume",
        hides: NO_RUN,
        varied: &[
            LAYOUT,
            Vary::percent("packaging.motor_power_density", 80, 150, 10),
        ],
        told: UNIT,
        parts: &["layout", "target"],
        kind: Kind::Find {
            input: POWER,
            between: (100.0, 5e6),
            rising: true,
            target: Vary::percent("layouts.*.volume", 75, 125, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "limit",
        hides: NO_RUN,
        varied: &[
            Vary::words("layout", &["F1", "R1", "F1R1"]),
            Vary::steps(FRICTION, (30, 100, 5), 100, ""),
            Vary::percent(TO_FRONT, 90, 110, 5),
        ],
        told: GROUND,
        parts: &["layout"],
        kind: Kind::Number {
            output: "layouts.*.limit",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "start",
        hides: NO_RUN,
        fixed: &[("layouts", "F1 R1"), ("layout", "R1")],
        varied: &[
            Vary::percent(TO_FRONT, 70, 125, 5),
            Vary::steps(GRADE, (5, 25, 5), 100, ""),
        ],
        told: GRIP,
        parts: &[GRADE],
        kind: Kind::Choice(Choice::Larger(&[
            ("layouts.F1.start_margin", "F1", ""),
            ("layouts.R1.start_margin", "R1", ""),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "read_grade",
        hides: NO_RUN,
        fixed: &[("layouts", "R1"), ("layout", "R1")],
        varied: &[Vary::percent(TO_FRONT, 85, 115, 5)],
        parts: &["target"],
        curve: Some(Curve {
            input: GRADE,
            between: (0.0, 0.4),
            output: START,
        }),
        kind: Kind::Find {
            input: GRADE,
            between: (0.0, 1.0),
            rising: false,
            target: Vary::steps(START, (6, 22, 2), 100, "g"),
        },
        tolerance: 0.06,
        ..Question::PLAIN
    },
    Question {
        id: "order",
        hides: NO_RUN,
        fixed: &[
            ("layouts", "F1 R1 F1R1"),
            ("layout", "F1R1"),
            ("choice.start_surface", "asphalt_wet"),
            // So strong that the tyres decide.
            ("vehicle.motor_torque", "900 N·m"),
        ],
        varied: &[
            Vary::percent(TO_FRONT, 65, 115, 5),
            Vary::steps(GRADE, (4, 24, 4), 100, ""),
        ],
        told: GRIP,
        parts: &[GRADE],
        kind: Kind::Choice(Choice::Rank {
            output: START,
            falling: true,
            orders: &[
                Order {
                    word: "rear_load",
                    layouts: &["F1R1", "R1", "F1"],
                    because: Because::Order,
                },
                Order {
                    word: "front_load",
                    layouts: &["F1R1", "F1", "R1"],
                    because: Because::Order,
                },
                // "More motors have more grip."
                Order {
                    word: "torque",
                    layouts: &["F1R1", "R1", "F1"],
                    because: Because::Never,
                },
                // "Uphill only the rear wheels matter."
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
        id: "refused",
        hides: &["choice.target_time", "choice.least_range", GRADE],
        varied: &[
            LAYOUT,
            Vary::percent(POWER, 80, 260, 20),
            Vary::words("choice.turn_in_place", &["on", "off"]),
            Vary::words("choice.torque_vectoring", &["on", "off"]),
        ],
        parts: &["layout"],
        kind: Kind::Choice(Choice::Word {
            output: "layouts.*.reason",
            words: &[
                "meets_brief",
                "does_not_fit",
                "cannot_turn_in_place",
                "cannot_vector_torque",
            ],
            // What is left of the room, and how many motors there are: both decide, neither is near the other.
            apart: &[("layouts.*.room_left", "layouts.*.motors")],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "change",
        hides: NO_RUN,
        varied: &[LAYOUT, Vary::percent(INVERTER, 50, 150, 25)],
        told: COSTS,
        kind: Kind::Choice(Choice::Change(&[
            (Vary::percent(MOTOR, 150, 150, 1), COST),
            // "A lighter car is cheaper", "what I weigh more costs more", "a differential is in every car".
            (Vary::percent(MASS, 80, 80, 1), COST),
            (Vary::percent("choice.weight_cost", 200, 200, 1), COST),
            (Vary::percent(DIFFERENTIAL, 50, 50, 1), COST),
            (Vary::percent(SHAFT, 200, 200, 1), COST),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "change_car",
        hides: NO_RUN,
        varied: &[
            Vary::words("layout", &["F1", "R1"]),
            Vary::percent(TO_FRONT, 90, 110, 5),
        ],
        told: GROUND,
        kind: Kind::Choice(Choice::Change(&[
            (Vary::percent(HEIGHT, 130, 130, 1), "layouts.*.limit"),
            (Vary::percent(FRICTION, 80, 80, 1), "layouts.*.limit"),
            (Vary::percent(MASS, 120, 120, 1), "layouts.*.volume"),
            (Vary::percent(POWER, 120, 120, 1), "layouts.*.volume"),
            (
                Vary::percent("vehicle.motor_torque", 120, 120, 1),
                "layouts.*.volume",
            ),
        ])),
        ..Question::PLAIN
    },
];
