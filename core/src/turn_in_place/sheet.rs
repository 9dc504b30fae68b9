//! The topic's working.

use super::report::{Numbers, Slow, numbers};
use super::spin::{self, Spin};
use super::{End, Question, judge, sheet_more};
use crate::error::Problem;
use crate::layout::Layout;
use crate::load_transfer::write_chassis;
use crate::scenario::Scenario;
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};
use core::f64::consts::PI;

/// Whether the closed forms of a car with its CG midway hold as they stand.
fn is_even(question: &Question) -> bool {
    let (front, rear) = (&question.front, &question.rear);
    let near = |a: f64, b: f64| (a - b).abs() <= 1e-12 * a.abs().max(b.abs());
    near(front.load_n, rear.load_n)
        && near(front.track_m, rear.track_m)
        && near(front.friction, rear.friction)
        && near(front.speed_factor, 1.0)
}

pub(super) fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let numbers = numbers(&question)?;
    let mut sheet = Sheet::new();
    write_chassis(&mut sheet, &question.chassis);
    let (front, rear) = (question.front, question.rear);
    sheet.step(
        "step.static_front",
        "N_f",
        "",
        "W*b/L",
        front.load_n,
        D::Force,
    );
    sheet.step(
        "step.static_rear",
        "N_r",
        "",
        "W*a/L",
        rear.load_n,
        D::Force,
    );
    sheet.source("source.turn_in_place");
    sheet.given("μ_f", front.friction, D::Ratio);
    sheet.given("μ_r", rear.friction, D::Ratio);
    sheet.given("μ_s", question.friction, D::Ratio);
    sheet.given("t_f", front.track_m, D::Length);
    sheet.given("t_r", rear.track_m, D::Length);
    sheet.given("q", front.speed_factor, D::Ratio);
    sheet.given("π", PI, D::Ratio);
    match &numbers.slow {
        Slow::Alike(_) if is_even(&question) => {
            sheet.given("μ_s", front.friction, D::Ratio);
            sheet.given("t", front.track_m, D::Length);
            write_turn(&mut sheet, EVEN, &numbers);
        }
        Slow::Alike(turn) => {
            sheet.given("s_f", turn.front_slide_m, D::Length);
            sheet.given("s_r", turn.rear_slide_m, D::Length);
            sheet.given("F_f", turn.front_force_n, D::Force);
            sheet.given("F_r", turn.rear_force_n, D::Force);
            let equations = match turn.rolling {
                None => UNEVEN,
                Some(End::Front) => FRONT_ROLLS,
                Some(End::Rear) => REAR_ROLLS,
            };
            write_turn(&mut sheet, equations, &numbers);
        }
        Slow::Split(turn) => sheet_more::write_split(&mut sheet, &question, turn, &numbers),
    }
    let radius = match numbers.slow {
        Slow::Alike(_) => "abs(a - x)",
        Slow::Split(_) => "sqrt((a - x)² + y²)",
    };
    let path_m = numbers.path_radius_m;
    sheet.step(
        "step.path_radius",
        "ρ",
        "path_radius",
        radius,
        path_m,
        D::Length,
    );
    write_torques(&mut sheet, scenario, &question, &numbers);
    sheet_more::write_patches(&mut sheet, &question, &numbers);
    sheet_more::write_wear(&mut sheet, &question, &numbers);
    sheet_more::write_drift(&mut sheet, &question, &numbers);
    write_pairs(&mut sheet, scenario, &question);
    sheet_more::write_lock(&mut sheet, scenario, &question);
    sheet_more::write_surfaces(&mut sheet, scenario, &question)?;
    if let Some(spin) = Spin::of_slow_turn(scenario, &question, &numbers)? {
        spin::write(&mut sheet, &spin);
    }
    Ok(sheet.into_steps())
}

/// The equations of one kind of turn, in the order in which they are shown: what it finds, symbol,
/// path in the answer, right side, dimension.
type Equation = (&'static str, &'static str, &'static str, &'static str, D);

/// Closed forms for a = b, equal tracks and friction.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const EVEN: &[Equation] = &[
    ("step.centre_even", "x", "turning_centre_behind_front_axle", "L/2", D::Length),
    ("step.speed_ratio_even", "κ", "wheel_speed_ratio", "(t² + L²)/(2*t)", D::Length),
    ("step.force_per_wheel", "F", "tractive_force_per_wheel", "μ_s*W/4*L/sqrt(L² + t²)", D::Force),
    ("step.same_force", "F_f", "front_tractive_force_per_wheel", "1*F", D::Force),
    ("step.same_force", "F_r", "rear_tractive_force_per_wheel", "1*F", D::Force),
    ("step.lengthwise", "c", "friction_used_lengthwise", "L/sqrt(L² + t²)", D::Ratio),
    ("step.lateral_scrub", "M_l", "lateral_scrub_moment", "μ_s*W*L/2", D::Torque),
    ("step.resisting", "M_r", "resisting_moment", "μ_s*W*L*t/(2*sqrt(L² + t²))", D::Torque),
    ("step.energy", "E", "energy_per_turn", "π*μ_s*W*sqrt(L² + t²)*L/t", D::Energy),
];

/// The equations that the general solve satisfies, then what follows from them.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const UNEVEN: &[Equation] = &[
    ("step.centre", "x", "turning_centre_behind_front_axle", "L*(μ_r*N_r/s_r)/(μ_f*N_f/s_f + μ_r*N_r/s_r)", D::Length),
    ("step.speed_ratio", "κ", "wheel_speed_ratio", "(μ_f*N_f*s_f + μ_r*N_r*s_r)/(2*(q*F_f + F_r))", D::Length),
    ("step.slide_front", "s_f", "", "sqrt((q*κ - t_f/2)² + x²)", D::Length),
    ("step.slide_rear", "s_r", "", "sqrt((κ - t_r/2)² + (L - x)²)", D::Length),
    ("step.force_front", "F_f", "front_tractive_force_per_wheel", "μ_f*N_f/2*(q*κ - t_f/2)/s_f", D::Force),
    ("step.force_rear", "F_r", "rear_tractive_force_per_wheel", "μ_r*N_r/2*(κ - t_r/2)/s_r", D::Force),
    ("step.force_mean", "F", "tractive_force_per_wheel", "(F_f + F_r)/2", D::Force),
    ("step.lengthwise", "c", "friction_used_lengthwise", "4*F/(μ_f*N_f + μ_r*N_r)", D::Ratio),
    ("step.lateral_scrub", "M_l", "lateral_scrub_moment", "μ_f*N_f*x + μ_r*N_r*(L - x)", D::Torque),
    ("step.resisting", "M_r", "resisting_moment", "μ_f*N_f*x²/s_f + μ_r*N_r*(L - x)²/s_r", D::Torque),
    ("step.energy", "E", "energy_per_turn", "2*π*(μ_f*N_f*s_f + μ_r*N_r*s_r)", D::Energy),
];

/// The car turns about its front axle, whose wheels roll: they push with what the rear leaves over.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const FRONT_ROLLS: &[Equation] = &[
    ("step.centre_rolls", "x", "turning_centre_behind_front_axle", "0", D::Length),
    ("step.speed_ratio_rolls", "κ", "wheel_speed_ratio", "t_f/(2*q)", D::Length),
    ("step.slide_rear", "s_r", "", "sqrt((κ - t_r/2)² + (L - x)²)", D::Length),
    ("step.resisting", "M_r", "resisting_moment", "μ_r*N_r*(L - x)²/s_r", D::Torque),
    ("step.force_rear", "F_r", "rear_tractive_force_per_wheel", "μ_r*N_r/2*(κ - t_r/2)/s_r", D::Force),
    ("step.force_rest", "F_f", "front_tractive_force_per_wheel", "(M_r - F_r*t_r)/t_f", D::Force),
    ("step.force_mean", "F", "tractive_force_per_wheel", "(F_f + F_r)/2", D::Force),
    ("step.lengthwise", "c", "friction_used_lengthwise", "4*F/(μ_f*N_f + μ_r*N_r)", D::Ratio),
    ("step.lateral_scrub", "M_l", "lateral_scrub_moment", "μ_f*N_f*x + μ_r*N_r*(L - x)", D::Torque),
    ("step.energy", "E", "energy_per_turn", "2*π*μ_r*N_r*s_r", D::Energy),
];

/// The same about the rear axle.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const REAR_ROLLS: &[Equation] = &[
    ("step.centre_rolls", "x", "turning_centre_behind_front_axle", "1*L", D::Length),
    ("step.speed_ratio_rolls", "κ", "wheel_speed_ratio", "t_r/2", D::Length),
    ("step.slide_front", "s_f", "", "sqrt((q*κ - t_f/2)² + x²)", D::Length),
    ("step.resisting", "M_r", "resisting_moment", "μ_f*N_f*x²/s_f", D::Torque),
    ("step.force_front", "F_f", "front_tractive_force_per_wheel", "μ_f*N_f/2*(q*κ - t_f/2)/s_f", D::Force),
    ("step.force_rest", "F_r", "rear_tractive_force_per_wheel", "(M_r - F_f*t_f)/t_r", D::Force),
    ("step.force_mean", "F", "tractive_force_per_wheel", "(F_f + F_r)/2", D::Force),
    ("step.lengthwise", "c", "friction_used_lengthwise", "4*F/(μ_f*N_f + μ_r*N_r)", D::Ratio),
    ("step.lateral_scrub", "M_l", "lateral_scrub_moment", "μ_f*N_f*x + μ_r*N_r*(L - x)", D::Torque),
    ("step.energy", "E", "energy_per_turn", "2*π*μ_f*N_f*s_f", D::Energy),
];

/// Writes the equations with the numbers of the turn.
fn write_turn(sheet: &mut Sheet, equations: &[Equation], numbers: &Numbers) {
    let Slow::Alike(turn) = &numbers.slow else {
        return;
    };
    let values = [
        ("x", numbers.centre_behind_front_m),
        ("κ", numbers.speed_ratio_m),
        ("s_f", turn.front_slide_m),
        ("s_r", turn.rear_slide_m),
        ("F", numbers.mean_force_n),
        ("F_f", numbers.front_force_n),
        ("F_r", numbers.rear_force_n),
        ("c", numbers.lengthwise_use),
        ("M_l", numbers.lateral_scrub_n_m),
        ("M_r", numbers.resisting_n_m),
        ("E", numbers.energy_j),
    ];
    for (about, symbol, path, right, dimension) in equations {
        let value = values
            .iter()
            .find(|(name, _)| name == symbol)
            .map_or(0.0, |(_, v)| *v);
        match *about {
            // These two were solved together, for the unknowns inside them.
            "step.centre" | "step.speed_ratio" => {
                sheet.satisfied(about, symbol, path, right, value, *dimension);
            }
            _ => sheet.step(about, symbol, path, right, value, *dimension),
        }
    }
}

fn write_torques(sheet: &mut Sheet, scenario: &Scenario, question: &Question, numbers: &Numbers) {
    if let Some(radius_m) = question.wheel_radius_m {
        sheet.given("R", radius_m, D::Length);
        for (about, symbol, path, right, force_n) in [
            (
                "step.torque",
                "T",
                "wheel_torque",
                "R*F",
                numbers.mean_force_n,
            ),
            (
                "step.torque_front",
                "T_f",
                "front_wheel_torque",
                "R*F_f",
                numbers.front_force_n,
            ),
            (
                "step.torque_rear",
                "T_r",
                "rear_wheel_torque",
                "R*F_r",
                numbers.rear_force_n,
            ),
        ] {
            sheet.step(about, symbol, path, right, radius_m * force_n, D::Torque);
        }
    }
    if let Some(available_n_m) = question.motor_wheel_torque_n_m {
        let given = |path| scenario.number(path).unwrap_or(0.0);
        sheet.given("T_m", given("vehicle.motor_torque"), D::Torque);
        sheet.given("i", given("vehicle.motor_ratio"), D::Ratio);
        let efficiency = scenario.number("vehicle.gear_efficiency");
        sheet.given("η", efficiency.unwrap_or(1.0), D::Ratio);
        let path = "available_wheel_torque";
        sheet.step(
            "step.available",
            "T_a",
            path,
            "T_m*i*η",
            available_n_m,
            D::Torque,
        );
    }
}

/// The two moments that decide about a single driven pair.
fn write_pairs(sheet: &mut Sheet, scenario: &Scenario, question: &Question) {
    for layout in scenario.layouts() {
        let Some((driving_n_m, holding_n_m)) = judge(question, layout).pair_moments_n_m else {
            continue;
        };
        let (drives, holds) = if matches!(layout, Layout::R2 | Layout::F1R2) {
            ("μ_r*N_r*t_r/2", "μ_f*N_f*L")
        } else {
            ("μ_f*N_f*t_f/2", "μ_r*N_r*L")
        };
        sheet.begin(layout.name());
        let path = "layouts.*.driving_moment";
        sheet.step(
            "step.pair_drives",
            "M_d",
            path,
            drives,
            driving_n_m,
            D::Torque,
        );
        let path = "layouts.*.holding_moment";
        sheet.step(
            "step.other_holds",
            "M_h",
            path,
            holds,
            holding_n_m,
            D::Torque,
        );
        sheet.begin("");
    }
}
