//! The topic's table, its readings and its working.

use super::{Axle, AxleType, Differential, Limit, Question, limit};
use crate::error::Problem;
use crate::layout::{AxleDrive, Layout};
use crate::load_transfer::{self, write_chassis};
use crate::quick::Told;
use crate::scenario::Scenario;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "traction",
    inputs: &[
        "vehicle.base",
        "surface.kind",
        "surface.friction_peak",
        "vehicle.mass",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.cg_height",
        "surface.grade",
        "traction.speed",
        "traction.front_share",
        "layouts",
        "layout",
        "vehicle.rolling_resistance",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "air.density",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "surface.friction_peak_left",
        "surface.friction_peak_right",
        "traction.front_differential",
        "traction.rear_differential",
        "traction.front_axle_type",
        "traction.rear_axle_type",
        "vehicle.final_drive_ratio",
        "vehicle.roll_stiffness_front_share",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.wheel_radius",
        "traction.motor_limit",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.motor_ratio",
        "vehicle.gear_efficiency",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "layouts",
        "surface.friction_peak",
        "vehicle.cg_height",
        "vehicle.cg_to_front_axle",
        "vehicle.wheelbase",
        "surface.grade",
        "traction.speed",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("layouts", "F1 R1 F1R1"),
        ("layout", "R1"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working,
};

const OUTPUTS: &[Output] = &[
    quantity("limits.*.acceleration", "a_x", D::Acceleration, 3, true),
    plain("limits.*.limited_by", OutputKind::Word),
    quantity("limits.*.front_axle_load", "N_f", D::Force, 4, false),
    quantity("limits.*.rear_axle_load", "N_r", D::Force, 4, false),
    quantity("limits.*.front_tractive_force", "F_f", D::Force, 4, false),
    quantity("limits.*.rear_tractive_force", "F_r", D::Force, 4, false),
    quantity("limits.*.tractive_force", "F", D::Force, 4, false),
    quantity(
        "limits.*.front_adhesion_utilisation",
        "f_f",
        D::Ratio,
        3,
        false,
    ),
    quantity(
        "limits.*.rear_adhesion_utilisation",
        "f_re",
        D::Ratio,
        3,
        false,
    ),
    quantity("front_lift_acceleration", "a_l", D::Acceleration, 3, false),
    quantity("ideal_front_share_at_rest", "p_f0", D::Ratio, 3, false),
    quantity("two_to_one_acceleration", "a_2", D::Acceleration, 3, false),
];

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let mut readings = Readings::of(OUTPUTS);
    tell(scenario, &mut readings)?;
    Ok(readings.into_list())
}

/// Tells every value to whoever asks: a list for a reader, a row of a study.
pub(crate) fn tell(scenario: &Scenario, told: &mut dyn Told) -> Result<(), Problem> {
    let question = Question::from_scenario(scenario)?;
    for layout in scenario.layouts() {
        let Limit {
            acceleration_m_s2,
            limited_by,
            loads,
            front_force_n,
            rear_force_n,
        } = limit(&question, layout)?;
        let n = ReadingValue::Number;
        // In the order of the outputs.
        let values = [
            n(acceleration_m_s2),
            ReadingValue::Word(limited_by.word()),
            n(loads.front_n),
            n(loads.rear_n),
            n(front_force_n),
            n(rear_force_n),
            n(front_force_n + rear_force_n),
            n(use_of(front_force_n, loads.front_n)),
            n(use_of(rear_force_n, loads.rear_n)),
        ];
        for (output, value) in values.into_iter().enumerate() {
            told.tell(output, Some(layout), value);
        }
    }
    let (lift, share, two) = landmarks(&question);
    for (output, value) in [(9, lift), (10, Some(share)), (11, two)] {
        if let Some(value) = value {
            told.tell(output, None, ReadingValue::Number(value));
        }
    }
    Ok(())
}

/// Friction that an axle uses, F/N; 0 for an axle without load, which can use none.
fn use_of(force_n: f64, load_n: f64) -> f64 {
    if load_n > 1e-9 * force_n.abs() && load_n > 0.0 {
        force_n / load_n
    } else {
        0.0
    }
}

/// Front-lift acceleration, static front load share, acceleration of the 2 : 1 load.
fn landmarks(question: &Question) -> (Option<f64>, f64, Option<f64>) {
    let (chassis, air, slope) = (&question.chassis, &question.air, question.slope);
    let finite = |value: f64| value.is_finite().then_some(value);
    (
        finite(load_transfer::front_lift_acceleration(chassis, air, slope)),
        chassis.cg_to_rear_axle_m() / chassis.wheelbase_m(),
        finite(load_transfer::acceleration_at_ratio(
            chassis,
            air,
            slope,
            Some(2.0),
        )),
    )
}

/// Whether the textbook's closed forms hold as they stand.
fn is_textbook(question: &Question) -> bool {
    question.slope.sin == 0.0
        && question.air == question_without_air(question)
        && question.rolling_resistance == 0.0
        && question.motor_force_n.is_none()
        && question.front.is_plain()
        && question.rear.is_plain()
}

fn question_without_air(question: &Question) -> crate::vehicle::AirForces {
    crate::vehicle::AirForces {
        drag_height_m: question.air.drag_height_m,
        ..Default::default()
    }
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let mut sheet = Sheet::new();
    write_chassis(&mut sheet, &question.chassis);
    load_transfer::write_surroundings(&mut sheet, scenario, "traction.speed");
    sheet.source("source.traction");
    sheet.given("μ", question.front.friction.peak_left, D::Ratio);
    sheet.given("f_r", question.rolling_resistance, D::Ratio);
    let share = question.chassis.cg_to_rear_axle_m() / question.chassis.wheelbase_m();
    let path = "ideal_front_share_at_rest";
    sheet.step("step.ideal_share", "p_f0", path, "b/L", share, D::Ratio);
    let surroundings = (&question.chassis, &question.air, question.slope);
    load_transfer::write_landmarks(&mut sheet, surroundings, None);
    for layout in scenario.layouts() {
        sheet.begin(layout.name());
        let limit = limit(&question, layout)?;
        if is_textbook(&question) && limit.limited_by != super::LimitedBy::FrontLift {
            write_closed_form(&mut sheet, &question, layout, &limit);
        } else {
            write_solved(&mut sheet, &question, &limit);
        }
        let paths = ["limits.*.front_axle_load", "limits.*.rear_axle_load"];
        let sloped = question.slope.sin != 0.0;
        load_transfer::write_loads(&mut sheet, paths, sloped, &question.air, limit.loads);
        write_forces(&mut sheet, &question, layout, &limit);
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

const ACCELERATION: &str = "limits.*.acceleration";

fn write_closed_form(sheet: &mut Sheet, question: &Question, layout: Layout, limit: &Limit) {
    let front_first = limit.limited_by == super::LimitedBy::FrontSlip;
    let (about, right) = match (layout.front(), layout.rear(), question.front_share) {
        (AxleDrive::Undriven, ..) => ("step.limit_rear", "μ*g*(a/L)/(1 - μ*h/L)"),
        (_, AxleDrive::Undriven, _) => ("step.limit_front", "μ*g*(b/L)/(1 + μ*h/L)"),
        (.., Some(share)) => {
            sheet.given("p_f", share, D::Ratio);
            if front_first {
                ("step.limit_fixed_front", "μ*g*(b/L)/(p_f + μ*h/L)")
            } else {
                ("step.limit_fixed_rear", "μ*g*(a/L)/(1 - p_f - μ*h/L)")
            }
        }
        _ => ("step.limit_all", "μ*g"),
    };
    let found = limit.acceleration_m_s2;
    sheet.step(about, "a_x", ACCELERATION, right, found, D::Acceleration);
}

/// Forces that hold the car back besides its inertia, each with a sign before it.
fn resistance(question: &Question, sign: &str) -> String {
    let mut text = String::new();
    for (acts, force) in [
        (question.air.drag_n != 0.0, "D"),
        (question.slope.sin != 0.0, "W*sin(θ)"),
        (question.rolling_resistance != 0.0, "f_r*(N_f + N_r)"),
    ] {
        if acts {
            text.push_str(sign);
            text.push_str(force);
        }
    }
    text
}

/// The equation of motion that the general solve satisfies, with the forces that it found.
fn write_solved(sheet: &mut Sheet, question: &Question, limit: &Limit) {
    let found = limit.acceleration_m_s2;
    let about = match limit.limited_by {
        super::LimitedBy::FrontLift => {
            let right = "N_f1/(m*h/L)";
            let about = "step.limit_lift";
            return sheet.step(about, "a_x", ACCELERATION, right, found, D::Acceleration);
        }
        super::LimitedBy::MotorTorque => "step.motion_motor",
        _ => "step.motion_slip",
    };
    sheet.given("F_f", limit.front_force_n, D::Force);
    sheet.given("F_r", limit.rear_force_n, D::Force);
    sheet.given("N_f", limit.loads.front_n, D::Force);
    sheet.given("N_r", limit.loads.rear_n, D::Force);
    write_grip(sheet, question, limit);
    let right = format!("(F_f + F_r{})/m", resistance(question, " - "));
    sheet.satisfied(about, "a_x", ACCELERATION, &right, found, D::Acceleration);
}

/// What the axles that slip push with, where their friction is one constant: μ·N, and for a solid
/// axle with an open differential what its unloaded wheel allows.
fn write_grip(sheet: &mut Sheet, question: &Question, limit: &Limit) {
    use super::LimitedBy::{AllSlip, FrontSlip, RearSlip};
    let plain = |axle: &Axle| {
        axle.load_sensitivity == 0.0
            && axle.friction.peak_left.to_bits() == axle.friction.peak_right.to_bits()
    };
    let ends = [
        (
            &question.front,
            [FrontSlip, AllSlip],
            limit.front_force_n,
            "F_f",
            "μ*N_f",
            "2*μ*(N_f/2 - ΔN)",
        ),
        (
            &question.rear,
            [RearSlip, AllSlip],
            limit.rear_force_n,
            "F_r",
            "μ*N_r",
            "2*μ*(N_r/2 - ΔN)",
        ),
    ];
    for (axle, slips, force_n, symbol, whole, unloaded) in ends {
        if !slips.contains(&limit.limited_by) || force_n == 0.0 || !plain(axle) {
            continue;
        }
        let right = match axle.axle_type {
            AxleType::Independent => whole,
            AxleType::Solid { shift_per_force } if axle.differential == Differential::Open => {
                sheet.given("k_s", shift_per_force, D::Ratio);
                let shift = if symbol == "F_f" {
                    "k_s*F_f"
                } else {
                    "k_s*F_r"
                };
                let moved_n = shift_per_force * force_n;
                sheet.satisfied("step.shift", "ΔN", "", shift, moved_n, D::Force);
                unloaded
            }
            AxleType::Solid { .. } => whole,
        };
        sheet.satisfied("step.grip", symbol, "", right, force_n, D::Force);
    }
}

fn write_forces(sheet: &mut Sheet, question: &Question, layout: Layout, limit: &Limit) {
    let (front_n, rear_n) = (limit.front_force_n, limit.rear_force_n);
    let total_n = front_n + rear_n;
    let (front, rear) = match (layout.front(), layout.rear()) {
        (AxleDrive::Undriven, _) => ("0", "F"),
        (_, AxleDrive::Undriven) => ("F", "0"),
        _ => ("p_f*F", "(1 - p_f)*F"),
    };
    let front_use = use_of(front_n, limit.loads.front_n);
    let rear_use = use_of(rear_n, limit.loads.rear_n);
    let quotient = |value: f64, text: &'static str| if value == 0.0 { "0" } else { text };
    let need = format!("m*a_x{}", resistance(question, " + "));
    sheet.step(
        "step.force",
        "F",
        "limits.*.tractive_force",
        &need,
        total_n,
        D::Force,
    );
    if front.len() > 1 {
        let share = if total_n == 0.0 {
            0.0
        } else {
            front_n / total_n
        };
        sheet.given("p_f", share, D::Ratio);
    }
    for (about, symbol, path, right, value, dimension) in [
        (
            "step.front_force",
            "F_f",
            "limits.*.front_tractive_force",
            front,
            front_n,
            D::Force,
        ),
        (
            "step.rear_force",
            "F_r",
            "limits.*.rear_tractive_force",
            rear,
            rear_n,
            D::Force,
        ),
        (
            "step.front_use",
            "f_f",
            "limits.*.front_adhesion_utilisation",
            quotient(front_use, "F_f/N_f"),
            front_use,
            D::Ratio,
        ),
        (
            "step.rear_use",
            "f_re",
            "limits.*.rear_adhesion_utilisation",
            quotient(rear_use, "F_r/N_r"),
            rear_use,
            D::Ratio,
        ),
    ] {
        sheet.step(about, symbol, path, right, value, dimension);
    }
}
