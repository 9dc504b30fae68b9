//! The topic's table, its readings and its working.

use super::{AxleState, Question, Turn, judge};
use crate::error::Problem;
use crate::layout::Layout;
use crate::load_transfer::write_chassis;
use crate::scenario::Scenario;
use crate::scrub;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use crate::working::{Expression, Sheet, Step, number, sqrt, symbol as s};
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
        s("W") * s("b") / s("L"),
        front.load_n,
        D::Force,
    );
    sheet.step(
        "step.static_rear",
        "N_r",
        "",
        s("W") * s("a") / s("L"),
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
        write_even(&mut sheet, &numbers);
    } else {
        write_uneven(&mut sheet, &numbers);
    }
    write_torques(&mut sheet, scenario, &question, &numbers);
    write_pairs(&mut sheet, scenario, &question);
    Ok(sheet.into_steps())
}

/// Closed forms for a = b, equal tracks and friction.
fn write_even(sheet: &mut Sheet, numbers: &Numbers) {
    let turn = &numbers.turn;
    let centre = s("L") / number(2.0);
    let x = turn.centre_behind_front_m;
    sheet.step(
        "step.centre_even",
        "x",
        "turning_centre_behind_front_axle",
        centre,
        x,
        D::Length,
    );
    let ratio = (s("t").squared() + s("L").squared()) / (number(2.0) * s("t"));
    let kappa = turn.speed_ratio_m;
    sheet.step(
        "step.speed_ratio_even",
        "κ",
        "wheel_speed_ratio",
        ratio,
        kappa,
        D::Length,
    );
    let diagonal = || sqrt(s("L").squared() + s("t").squared());
    let force = |weight: Expression| s("μ_s") * weight / number(4.0) * s("L") / diagonal();
    let per_wheel = numbers.mean_force_n;
    let path = "tractive_force_per_wheel";
    sheet.step(
        "step.force_per_wheel",
        "F",
        path,
        force(s("W")),
        per_wheel,
        D::Force,
    );
    for (symbol, path, value) in [
        ("F_f", "front_tractive_force_per_wheel", turn.front_force_n),
        ("F_r", "rear_tractive_force_per_wheel", turn.rear_force_n),
    ] {
        sheet.step(
            "step.same_force",
            symbol,
            path,
            number(1.0) * s("F"),
            value,
            D::Force,
        );
    }
    let share = s("L") / diagonal();
    let path = "friction_used_lengthwise";
    sheet.step(
        "step.lengthwise",
        "c",
        path,
        share,
        numbers.lengthwise_use,
        D::Ratio,
    );
    let scrub = s("μ_s") * s("W") * s("L") / number(2.0);
    let path = "lateral_scrub_moment";
    sheet.step(
        "step.lateral_scrub",
        "M_l",
        path,
        scrub,
        numbers.lateral_scrub_n_m,
        D::Torque,
    );
    let moment = s("μ_s") * s("W") * s("L") * s("t") / (number(2.0) * diagonal());
    let value = turn.resisting_moment_n_m;
    sheet.step(
        "step.resisting",
        "M_r",
        "resisting_moment",
        moment,
        value,
        D::Torque,
    );
    let energy = s("π") * s("μ_s") * s("W") * diagonal() * s("L") / s("t");
    let value = turn.energy_per_turn_j;
    sheet.step(
        "step.energy",
        "E",
        "energy_per_turn",
        energy,
        value,
        D::Energy,
    );
}

/// The equations that the general solve satisfies, then what follows from them.
fn write_uneven(sheet: &mut Sheet, numbers: &Numbers) {
    let turn = &numbers.turn;
    for (symbol, value, dimension) in [
        ("s_f", turn.front_slide_m, D::Length),
        ("s_r", turn.rear_slide_m, D::Length),
        ("F_f", turn.front_force_n, D::Force),
        ("F_r", turn.rear_force_n, D::Force),
    ] {
        sheet.given(symbol, value, dimension);
    }
    let front_grip = || s("μ_f") * s("N_f");
    let rear_grip = || s("μ_r") * s("N_r");
    let centre =
        s("L") * (rear_grip() / s("s_r")) / (front_grip() / s("s_f") + rear_grip() / s("s_r"));
    let x = turn.centre_behind_front_m;
    let path = "turning_centre_behind_front_axle";
    sheet.satisfied("step.centre", "x", path, centre, x, D::Length);
    let lost = || front_grip() * s("s_f") + rear_grip() * s("s_r");
    let ratio = lost() / (number(2.0) * (s("q") * s("F_f") + s("F_r")));
    let kappa = turn.speed_ratio_m;
    sheet.satisfied(
        "step.speed_ratio",
        "κ",
        "wheel_speed_ratio",
        ratio,
        kappa,
        D::Length,
    );
    let front_along = || s("q") * s("κ") - s("t_f") / number(2.0);
    let rear_along = || s("κ") - s("t_r") / number(2.0);
    let front = sqrt(front_along().squared() + s("x").squared());
    let rear = sqrt(rear_along().squared() + (s("L") - s("x")).squared());
    sheet.step(
        "step.slide_front",
        "s_f",
        "",
        front,
        turn.front_slide_m,
        D::Length,
    );
    sheet.step(
        "step.slide_rear",
        "s_r",
        "",
        rear,
        turn.rear_slide_m,
        D::Length,
    );
    let front = front_grip() / number(2.0) * front_along() / s("s_f");
    let rear = rear_grip() / number(2.0) * rear_along() / s("s_r");
    let path = "front_tractive_force_per_wheel";
    sheet.step(
        "step.force_front",
        "F_f",
        path,
        front,
        turn.front_force_n,
        D::Force,
    );
    let path = "rear_tractive_force_per_wheel";
    sheet.step(
        "step.force_rear",
        "F_r",
        path,
        rear,
        turn.rear_force_n,
        D::Force,
    );
    let mean = (s("F_f") + s("F_r")) / number(2.0);
    let path = "tractive_force_per_wheel";
    sheet.step(
        "step.force_mean",
        "F",
        path,
        mean,
        numbers.mean_force_n,
        D::Force,
    );
    let share = number(4.0) * s("F") / (front_grip() + rear_grip());
    let path = "friction_used_lengthwise";
    sheet.step(
        "step.lengthwise",
        "c",
        path,
        share,
        numbers.lengthwise_use,
        D::Ratio,
    );
    let scrub = front_grip() * s("x") + rear_grip() * (s("L") - s("x"));
    let path = "lateral_scrub_moment";
    sheet.step(
        "step.lateral_scrub",
        "M_l",
        path,
        scrub,
        numbers.lateral_scrub_n_m,
        D::Torque,
    );
    let moment = front_grip() * s("x").squared() / s("s_f")
        + rear_grip() * (s("L") - s("x")).squared() / s("s_r");
    let value = turn.resisting_moment_n_m;
    sheet.step(
        "step.resisting",
        "M_r",
        "resisting_moment",
        moment,
        value,
        D::Torque,
    );
    let energy = number(2.0) * s("π") * lost();
    let value = turn.energy_per_turn_j;
    sheet.step(
        "step.energy",
        "E",
        "energy_per_turn",
        energy,
        value,
        D::Energy,
    );
}

fn write_torques(sheet: &mut Sheet, scenario: &Scenario, question: &Question, numbers: &Numbers) {
    if let Some(radius_m) = question.wheel_radius_m {
        sheet.given("R", radius_m, D::Length);
        for (about, symbol, path, force, force_n) in [
            (
                "step.torque",
                "T",
                "wheel_torque",
                "F",
                numbers.mean_force_n,
            ),
            (
                "step.torque_front",
                "T_f",
                "front_wheel_torque",
                "F_f",
                numbers.turn.front_force_n,
            ),
            (
                "step.torque_rear",
                "T_r",
                "rear_wheel_torque",
                "F_r",
                numbers.turn.rear_force_n,
            ),
        ] {
            let value = radius_m * force_n;
            sheet.step(about, symbol, path, s("R") * s(force), value, D::Torque);
        }
    }
    if let Some(available_n_m) = question.motor_wheel_torque_n_m {
        sheet.given(
            "T_m",
            scenario.number("vehicle.motor_torque").unwrap_or(0.0),
            D::Torque,
        );
        sheet.given(
            "i",
            scenario.number("vehicle.motor_ratio").unwrap_or(0.0),
            D::Ratio,
        );
        let right = s("T_m") * s("i");
        let path = "available_wheel_torque";
        sheet.step(
            "step.available",
            "T_a",
            path,
            right,
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
        let rear = matches!(layout, Layout::R2 | Layout::F1R2);
        let front_grip = || s("μ_f") * s("N_f");
        let rear_grip = || s("μ_r") * s("N_r");
        let (drives, holds) = if rear {
            (rear_grip() * s("t_r"), front_grip() * s("L"))
        } else {
            (front_grip() * s("t_f"), rear_grip() * s("L"))
        };
        sheet.begin(layout.name());
        let path = format!("layouts.{}.driving_moment", layout.name());
        let right = drives / number(2.0);
        sheet.step(
            "step.pair_drives",
            "M_d",
            path,
            right,
            driving_n_m,
            D::Torque,
        );
        let path = format!("layouts.{}.holding_moment", layout.name());
        sheet.step("step.other_holds","M_h",path,holds,
            holding_n_m,
            D::Torque,
        );
        sheet.begin("");
    }
}
