//! Questions on idle motors. All are of a steady speed: that needs no cycle to follow.

use super::{Choice, Curve, Kind, Question, Slip, Vary};

const SPEED: &str = "idle_drag.speed";
const MASS: &str = "vehicle.mass";
const ENERGY: &str = "layouts.*.energy_per_km";
const IDLE: &str = "idle_loss_permanent_magnet";
const STEADY: (&str, &str) = ("idle_drag.cycle", "steady");
const REAR: &[(&str, &str)] = &[STEADY, ("layouts", "R1"), ("layout", "R1")];
const TOLD: &[&str] = &[
    SPEED,
    MASS,
    "vehicle.wheel_radius",
    "vehicle.motor_ratio",
    "vehicle.motor_torque",
    "vehicle.motor_power",
];
const SPEEDS: Vary = Vary::steps(SPEED, (50, 130, 5), 1, "km/h");

/// The questions.
pub(super) const QUESTIONS: &[Question] = &[
    Question {
        id: "motor_speed",
        fixed: REAR,
        varied: &[SPEEDS, Vary::percent("vehicle.motor_ratio", 80, 120, 5)],
        told: TOLD,
        kind: Kind::Number {
            output: "motor_speed",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "wrong_line",
        fixed: REAR,
        varied: &[
            Vary::steps(SPEED, (90, 150, 5), 1, "km/h"),
            Vary::percent("vehicle.hysteresis_loss", 60, 200, 20),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Spot {
            output: IDLE,
            slips: &[
                Slip {
                    symbol: "P_0p",
                    equation: "0",
                    why: "magnet",
                },
                Slip {
                    symbol: "ω",
                    equation: "V/R",
                    why: "gearing",
                },
                Slip {
                    symbol: "B",
                    equation: "min(1; ω/ω_b)",
                    why: "field",
                },
                Slip {
                    symbol: "ω_b",
                    equation: "P_m*T_m",
                    why: "base_speed",
                },
            ],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "sketch_idle_loss",
        fixed: REAR,
        varied: &[
            Vary::percent("vehicle.hysteresis_loss", 60, 200, 20),
            Vary::percent("vehicle.motor_ratio", 80, 120, 5),
        ],
        told: TOLD,
        parts: &["from", "to"],
        // "A loss in iron grows as the speed": a part of it does, the rest faster.
        kind: Kind::Sketch(Curve {
            input: SPEED,
            between: (20.0 / 3.6, 180.0 / 3.6),
            output: IDLE,
        }),
        tolerance: 0.07,
        ..Question::PLAIN
    },
    Question {
        id: "road_load",
        fixed: REAR,
        varied: &[SPEEDS, Vary::percent("vehicle.drag_area", 80, 130, 5)],
        told: TOLD,
        kind: Kind::Number {
            output: "road_load",
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "idle_magnet",
        fixed: REAR,
        varied: &[
            SPEEDS,
            Vary::percent("vehicle.hysteresis_loss", 60, 200, 20),
        ],
        told: TOLD,
        kind: Kind::Number { output: IDLE },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "idle_induction",
        fixed: REAR,
        varied: &[SPEEDS, Vary::percent("vehicle.bearing_loss", 60, 200, 20)],
        told: TOLD,
        kind: Kind::Number {
            output: "idle_loss_induction",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "steady_energy",
        fixed: REAR,
        varied: &[SPEEDS, Vary::percent(MASS, 80, 130, 5)],
        told: TOLD,
        kind: Kind::Number { output: ENERGY },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "range",
        fixed: REAR,
        varied: &[SPEEDS, Vary::percent("vehicle.battery_energy", 60, 140, 10)],
        told: TOLD,
        kind: Kind::Number {
            output: "layouts.*.range",
        },
        tolerance: 0.10,
        ..Question::PLAIN
    },
    Question {
        id: "speed_of_loss",
        fixed: REAR,
        varied: &[Vary::percent("vehicle.hysteresis_loss", 60, 200, 20)],
        told: &[
            MASS,
            "vehicle.wheel_radius",
            "vehicle.motor_ratio",
            "vehicle.motor_torque",
            "vehicle.motor_power",
        ],
        parts: &["target"],
        kind: Kind::Find {
            input: SPEED,
            between: (0.5, 80.0),
            rising: true,
            target: Vary::percent(IDLE, 40, 120, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
    Question {
        id: "loses_more",
        fixed: &[
            STEADY,
            ("layouts", "F1 R1"),
            ("layout", "R1"),
            ("vehicle.front_machine", "induction"),
            ("vehicle.rear_machine", "permanent_magnet"),
        ],
        varied: &[
            Vary::steps(SPEED, (40, 170, 10), 1, "km/h"),
            Vary::percent("vehicle.hysteresis_loss", 60, 140, 20),
        ],
        told: TOLD,
        kind: Kind::Choice(Choice::Larger(&[
            ("layouts.F1.motor_loss", "F1", "option.induction"),
            ("layouts.R1.motor_loss", "R1", "option.permanent_magnet"),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "who_drives",
        fixed: &[STEADY],
        varied: &[
            Vary::words("layout", &["F1R1", "F1R2", "F2R1"]),
            Vary::words("vehicle.front_machine", &["permanent_magnet", "induction"]),
            Vary::words("vehicle.disconnect", &["none", "front", "rear"]),
            SPEEDS,
        ],
        told: TOLD,
        parts: &["layout"],
        kind: Kind::Choice(Choice::Word {
            output: "layouts.*.primary",
            words: &["front_first", "rear_first", "both_always"],
            apart: &[("layouts.*.both_axles_above", "layouts.*.force_at_wheels")],
        }),
        ..Question::PLAIN
    },
    Question {
        id: "change",
        fixed: REAR,
        varied: &[SPEEDS],
        told: TOLD,
        kind: Kind::Choice(Choice::Change(&[
            // "A motor at zero torque costs nothing", "a heavier car drags more".
            (Vary::percent(SPEED, 140, 140, 1), IDLE),
            (Vary::percent(MASS, 120, 120, 1), IDLE),
            (
                Vary::percent("vehicle.copper_loss_magnet", 150, 150, 1),
                IDLE,
            ),
            (
                Vary::percent("vehicle.hysteresis_loss", 200, 200, 1),
                "idle_loss_induction",
            ),
            (Vary::percent("vehicle.motor_ratio", 80, 80, 1), IDLE),
            (Vary::percent(MASS, 120, 120, 1), ENERGY),
            (Vary::percent("vehicle.battery_energy", 120, 120, 1), ENERGY),
            (
                Vary::percent("vehicle.battery_energy", 80, 80, 1),
                "layouts.*.range",
            ),
        ])),
        ..Question::PLAIN
    },
    Question {
        id: "read_speed",
        fixed: REAR,
        varied: &[
            Vary::percent("vehicle.hysteresis_loss", 60, 200, 20),
            Vary::percent("vehicle.eddy_loss", 60, 200, 20),
        ],
        parts: &["target"],
        curve: Some(Curve {
            input: SPEED,
            between: (5.0, 45.0),
            output: IDLE,
        }),
        kind: Kind::Find {
            input: SPEED,
            between: (0.5, 80.0),
            rising: true,
            target: Vary::percent(IDLE, 40, 110, 5),
        },
        tolerance: 0.05,
        ..Question::PLAIN
    },
];
