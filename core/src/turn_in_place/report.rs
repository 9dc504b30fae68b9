//! The topic's table, its readings and its working.

use super::{AxleState, End, Question, Turn, judge};
use crate::error::Problem;
use crate::layout::Layout;
use crate::load_transfer::write_chassis;
use crate::scenario::Scenario;
use crate::scrub;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};
use core::f64::consts::PI;

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "turn_in_place",
    inputs: &[
        "vehicle.base",
        "surface.kind",
        "surface.friction_sliding",
        "surface.friction_peak",
        "vehicle.mass",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.wheel_radius",
        "vehicle.motor_torque",
        "vehicle.motor_ratio",
        "turn_in_place.front_to_rear_wheel_speed",
        "layouts",
        "layout",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "surface.grade",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "surface.friction_sliding",
        "vehicle.mass",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.track_front",
        "vehicle.motor_torque",
    ],
    example: &[("vehicle.base", "esker"), ("layout", "F2R2")],
    outputs: OUTPUTS,
    solve: readings,
    working,
};

const OUTPUTS: &[Output] = &[
    quantity("wheel_torque", "T", D::Torque, 4, true),
    quantity("available_wheel_torque", "T_a", D::Torque, 4, true),
    quantity("tractive_force_per_wheel", "F", D::Force, 4, false),
    quantity("energy_per_turn", "E", D::Energy, 3, true),
    quantity("friction_used_lengthwise", "c", D::Ratio, 2, true),
    quantity("resisting_moment", "M_r", D::Torque, 4, false),
    quantity("lateral_scrub_moment", "M_l", D::Torque, 4, false),
    quantity("wheel_speed_ratio", "κ", D::Length, 3, false),
    quantity("turning_centre_behind_front_axle", "x", D::Length, 3, false),
    quantity("front_tractive_force_per_wheel", "F_f", D::Force, 4, false),
    quantity("rear_tractive_force_per_wheel", "F_r", D::Force, 4, false),
    quantity("front_wheel_torque", "T_f", D::Torque, 4, false),
    quantity("rear_wheel_torque", "T_r", D::Torque, 4, false),
    plain("layouts.*.feasible", OutputKind::Flag),
    plain("layouts.*.reason", OutputKind::Word),
    quantity("layouts.*.driving_moment", "M_d", D::Torque, 4, false),
    quantity("layouts.*.holding_moment", "M_h", D::Torque, 4, false),
];

/// Everything that is read off a turn, in one place for readings and working.
struct Numbers {
    turn: Turn,
    mean_force_n: f64,
    lateral_scrub_n_m: f64,
    lengthwise_use: f64,
}

fn numbers(question: &Question) -> Result<Numbers, Problem> {
    let turn = question.four_wheel_turn()?;
    let mean_force_n = 0.5 * (turn.front_force_n + turn.rear_force_n);
    let grip = |axle: &AxleState| axle.friction * axle.load_n;
    let grip_n = grip(&question.front) + grip(&question.rear);
    let centre_m = turn.centre_behind_front_m;
    let rear_arm_m = question.chassis.wheelbase_m() - centre_m;
    Ok(Numbers {
        turn,
        mean_force_n,
        lateral_scrub_n_m: scrub::lateral_scrub_moment_n_m(
            1.0,
            (grip(&question.front), centre_m),
            (grip(&question.rear), rear_arm_m),
        ),
        lengthwise_use: 2.0 * (turn.front_force_n + turn.rear_force_n) / grip_n,
    })
}

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let Numbers {
        turn,
        mean_force_n,
        lateral_scrub_n_m,
        lengthwise_use,
    } = numbers(&question)?;
    let torque = |force_n: f64| question.wheel_radius_m.map(|radius_m| radius_m * force_n);
    let mut readings = Readings::of(OUTPUTS);
    readings.optional("wheel_torque", torque(mean_force_n));
    readings.optional("available_wheel_torque", question.motor_wheel_torque_n_m);
    readings.number("tractive_force_per_wheel", mean_force_n);
    readings.number("energy_per_turn", turn.energy_per_turn_j);
    readings.number("friction_used_lengthwise", lengthwise_use);
    readings.number("resisting_moment", turn.resisting_moment_n_m);
    readings.number("lateral_scrub_moment", lateral_scrub_n_m);
    readings.number("wheel_speed_ratio", turn.speed_ratio_m);
    readings.number(
        "turning_centre_behind_front_axle",
        turn.centre_behind_front_m,
    );
    readings.number("front_tractive_force_per_wheel", turn.front_force_n);
    readings.number("rear_tractive_force_per_wheel", turn.rear_force_n);
    readings.optional("front_wheel_torque", torque(turn.front_force_n));
    readings.optional("rear_wheel_torque", torque(turn.rear_force_n));
    for layout in scenario.layouts() {
        let answer = judge(&question, layout);
        let name = layout.name();
        let feasible = answer.verdict.feasible();
        readings.add("layouts.*.feasible", name, ReadingValue::Flag(feasible));
        readings.add(
            "layouts.*.reason",
            name,
            ReadingValue::Word(answer.verdict.word()),
        );
        if let Some((driving_n_m, holding_n_m)) = answer.pair_moments_n_m {
            let number = ReadingValue::Number;
            readings.add("layouts.*.driving_moment", name, number(driving_n_m));
            readings.add("layouts.*.holding_moment", name, number(holding_n_m));
        }
    }
    Ok(readings.into_list())
}

/// Whether the closed forms of a car with its CG midway hold as they stand.
fn is_even(question: &Question) -> bool {
    let (front, rear) = (&question.front, &question.rear);
    let near = |a: f64, b: f64| (a - b).abs() <= 1e-12 * a.abs().max(b.abs());
    near(front.load_n, rear.load_n)
        && near(front.track_m, rear.track_m)
        && near(front.friction, rear.friction)
        && near(front.speed_factor, 1.0)
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
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
    if is_even(&question) {
        sheet.given("μ_s", front.friction, D::Ratio);
        sheet.given("t", front.track_m, D::Length);
        write_turn(&mut sheet, EVEN, &numbers);
    } else {
        let turn = &numbers.turn;
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
    write_torques(&mut sheet, scenario, &question, &numbers);
    write_pairs(&mut sheet, scenario, &question);
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
    let turn = &numbers.turn;
    let values = [
        ("x", turn.centre_behind_front_m),
        ("κ", turn.speed_ratio_m),
        ("s_f", turn.front_slide_m),
        ("s_r", turn.rear_slide_m),
        ("F", numbers.mean_force_n),
        ("F_f", turn.front_force_n),
        ("F_r", turn.rear_force_n),
        ("c", numbers.lengthwise_use),
        ("M_l", numbers.lateral_scrub_n_m),
        ("M_r", turn.resisting_moment_n_m),
        ("E", turn.energy_per_turn_j),
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
        let turn = &numbers.turn;
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
                turn.front_force_n,
            ),
            (
                "step.torque_rear",
                "T_r",
                "rear_wheel_torque",
                "R*F_r",
                turn.rear_force_n,
            ),
        ] {
            sheet.step(about, symbol, path, right, radius_m * force_n, D::Torque);
        }
    }
    if let Some(available_n_m) = question.motor_wheel_torque_n_m {
        let given = |path| scenario.number(path).unwrap_or(0.0);
        sheet.given("T_m", given("vehicle.motor_torque"), D::Torque);
        sheet.given("i", given("vehicle.motor_ratio"), D::Ratio);
        let path = "available_wheel_torque";
        sheet.step(
            "step.available",
            "T_a",
            path,
            "T_m*i",
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
