//! Questions on fitting the motors in.

use super::{Choice, Curve, Kind, Question, Slip, Vary};

const POWER: &str = "vehicle.motor_power";
const MOTOR: &str = "packaging.motor_power_density";
const INVERTER: &str = "packaging.inverter_power_density";
const GEARS: &str = "packaging.gear_power_density";
const STEER: &str = "vehicle.max_steer_angle";
const TRACK: &str = "vehicle.track_front";
const WIDTH: &str = "vehicle.tyre_width_front";
const STRUCTURE: &str = "packaging.structure_width";

const UNIT: &[&str] = &[POWER, MOTOR, INVERTER, GEARS];
const ROOM: &[&str] = &[
    TRACK,
    WIDTH,
    "vehicle.wheel_radius",
    STEER,
    "packaging.clearance",
    STRUCTURE,
];

const BOTH: &[&str] = &[
    POWER,
    MOTOR,
    INVERTER,
    GEARS,
    TRACK,
    "vehicle.track_rear",
    WIDTH,
    "vehicle.tyre_width_rear",
    "vehicle.wheel_radius",
    STEER,
    "packaging.clearance",
    STRUCTURE,
];

const fn number(
    id: &'static str,
    output: &'static str,
    varied: &'static [Vary],
    told: &'static [&'static str],
) -> Question {
    Question {
        id,
        varied,
        told,
        kind: Kind::Number { output },
        tolerance: 0.03,
        ..Question::PLAIN
    }
}

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    number(
        "unit_volume",
        "unit_volume",
        &[
            Vary::percent(POWER, 60, 150, 10),
            Vary::steps(MOTOR, (15, 50, 5), 1, "kW/L"),
            Vary::steps(INVERTER, (30, 100, 10), 1, "kW/L"),
        ],
        UNIT,
    ),
    number(
        "power_density",
        "power_density",
        &[
            Vary::steps(MOTOR, (15, 60, 5), 1, "kW/L"),
            Vary::steps(INVERTER, (30, 100, 10), 1, "kW/L"),
            Vary::steps(GEARS, (10, 40, 5), 1, "kW/L"),
        ],
        &[MOTOR, INVERTER, GEARS],
    ),
    number(
        "unit_width",
        "unit_width",
        &[
            Vary::percent(POWER, 60, 150, 10),
            Vary::steps("packaging.box_fill", (40, 80, 10), 1, "%"),
        ],
        UNIT,
    ),
    number(
        "front_reach",
        "front_wheel_reach",
        &[
            Vary::steps(STEER, (26, 40, 2), 1, "deg"),
            Vary::percent(WIDTH, 80, 130, 10),
        ],
        &[STEER, WIDTH, "vehicle.wheel_radius"],
    ),
    number(
        "front_room",
        "front_room",
        &[
            Vary::steps(STEER, (26, 40, 2), 1, "deg"),
            Vary::percent(TRACK, 95, 115, 5),
        ],
        ROOM,
    ),
    Question {
        id: "drive_volume",
        varied: &[
            Vary::words("layout", &["F1R1", "R2", "F1R2", "F2R2"]),
            Vary::percent(POWER, 60, 150, 10),
        ],
        told: UNIT,
        parts: &["layout"],
        kind: Kind::Number {
            output: "layouts.*.drive_volume",
        },
        tolerance: 0.03,
        ..Question::PLAIN
    },
    Question {
        id: "needed_density",
        varied: &[Vary::percent(POWER, 80, 130, 10)],
        told: &[POWER, INVERTER, GEARS],
        parts: &["target"],
        kind: Kind::Find {
            input: MOTOR,
            between: (1e5, 1e9),
            rising: false,
            target: Vary::percent("unit_volume", 75, 125, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "steer_limit",
        varied: &[Vary::percent(TRACK, 95, 110, 5)],
        told: ROOM,
        parts: &["target"],
        kind: Kind::Find {
            input: STEER,
            between: (0.01, 1.0),
            rising: false,
            target: Vary::percent("front_room", 95, 115, 5),
        },
        tolerance: 0.06,
        ..Question::PLAIN
    },
    Question {
        id: "read_angle",
        varied: &[
            Vary::percent(TRACK, 95, 110, 5),
            Vary::percent(WIDTH, 80, 120, 10),
        ],
        parts: &["target"],
        curve: Some(Curve {
            input: STEER,
            between: (0.2, 0.9),
            output: "front_room",
        }),
        kind: Kind::Find {
            input: STEER,
            between: (0.01, 1.0),
            rising: false,
            target: Vary::percent("front_room", 95, 120, 5),
        },
        tolerance: 0.06,
        ..Question::PLAIN
    },
    Question {
        id: "fits",
        varied: &[
            Vary::words("layout", &["F2", "R2", "F1R2", "F2R1", "F2R2"]),
            Vary::percent(POWER, 80, 260, 20),
        ],
        told: BOTH,
        parts: &["layout"],
        kind: Kind::Choice(Choice::Word {
            output: "layouts.*.reason",
            words: &[
                "units_fit",
                "front_too_narrow",
                "rear_too_narrow",
                "both_too_narrow",
            ],
            apart: &[("front_room", "unit_width"), ("rear_room", "unit_width")],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "wider_axle",
        varied: &[
            Vary::steps(STEER, (10, 45, 5), 1, "deg"),
            Vary::percent(TRACK, 90, 130, 5),
        ],
        told: BOTH,
        kind: Kind::Choice(Choice::Larger(&[
            ("front_room", "front", "question.front_axle"),
            ("rear_room", "rear", "question.rear_axle"),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "change",
        varied: &[Vary::percent(POWER, 80, 130, 10)],
        told: BOTH,
        kind: Kind::Choice(Choice::Change(&[
            // "Power per litre of the motor is what counts"; what the room rests on.
            (Vary::percent(MOTOR, 200, 200, 1), "power_density"),
            (Vary::percent(GEARS, 50, 50, 1), "unit_volume"),
            (Vary::percent(STEER, 80, 80, 1), "front_room"),
            (Vary::percent(STEER, 80, 80, 1), "rear_room"),
            (Vary::percent(POWER, 150, 150, 1), "power_density"),
            (Vary::percent(WIDTH, 120, 120, 1), "front_room"),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        varied: &[
            Vary::percent(POWER, 60, 150, 10),
            Vary::steps(MOTOR, (15, 50, 5), 1, "kW/L"),
        ],
        told: BOTH,
        kind: Kind::Choice(Choice::Spot {
            output: "rear_left_with_two",
            slips: &[
                Slip {
                    symbol: "V",
                    equation: "P/p_m",
                    why: "whole_unit",
                },
                Slip {
                    symbol: "B_r",
                    equation: "t_r - (e_r + c + s)",
                    why: "both_wheels",
                },
                Slip {
                    symbol: "d_r2",
                    equation: "B_r - w_u - g_u",
                    why: "two_units",
                },
                Slip {
                    symbol: "w_u",
                    equation: "V/(l_u*h_u)",
                    why: "box_fill",
                },
            ],
        }),
        ..Question::PLAIN
    },
];
