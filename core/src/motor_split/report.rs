//! The topic's table, its readings and its working.

use super::{Answer, Question, counts, front_share, matching_acceleration, parts, solve};
use crate::error::Problem;
use crate::layout::Layout;
use crate::load_transfer::write_chassis;
use crate::scenario::Scenario;
use crate::topic::{Output, Reading, ReadingValue, Readings, Topic, quantity};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "motor_split",
    inputs: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "layouts",
        "surface.friction_peak",
        "vehicle.mass",
        "vehicle.cg_height",
        "vehicle.cg_to_front_axle",
        "vehicle.wheelbase",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "motor_split.speed",
        "motor_split.drive_unit_mass",
        "motor_split.drive_unit_cost",
        "surface.grade",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.wheel_radius",
        "vehicle.motor_ratio",
        "vehicle.motor_decline_speed",
        "vehicle.motor_max_speed",
        "vehicle.rotor_inertia",
        "vehicle.wheel_inertia",
        "vehicle.gear_efficiency",
        "vehicle.battery_power",
        "vehicle.rolling_resistance",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "air.density",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "surface.friction_peak",
        "vehicle.cg_height",
        "vehicle.cg_to_front_axle",
        "vehicle.wheelbase",
        "vehicle.motor_torque",
        "motor_split.speed",
    ],
    example: &[
        ("vehicle.base", "corrie"),
        ("layouts", "F1 R1 F1R1 F1R2 F2R2"),
        ("layout", "F1R2"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
const OUTPUTS: &[Output] = &[
    quantity("front_load_share_at_rest", "p_l", D::Ratio, 3, false),
    quantity("layouts.*.matching_acceleration", "a_m", D::Acceleration, 3, true),
    quantity("layouts.*.torque_front_share", "p_t", D::Ratio, 3, false),
    quantity("layouts.*.traction_limit", "a_x", D::Acceleration, 3, false),
    quantity("layouts.*.like_motors_limit", "a_e", D::Acceleration, 3, false),
    quantity("layouts.*.front_load_share_at_limit", "p_x", D::Ratio, 3, false),
    quantity("layouts.*.motor_torque_needed", "T_n", D::Torque, 3, false),
    quantity("layouts.*.motor_power_needed", "P_n", D::Power, 3, false),
    quantity("layouts.*.time_to_60_mph", "t_60", D::Time, 3, false),
    quantity("layouts.*.limit_gained", "Δa", D::Acceleration, 2, false),
    quantity("layouts.*.yaw_moment_gained", "ΔM", D::Torque, 3, false),
    quantity("layouts.*.time_saved", "Δt", D::Time, 2, false),
    quantity("layouts.*.yaw_moment", "M_z", D::Torque, 3, false),
    quantity("layouts.*.motors", "n", D::Ratio, 1, false),
    quantity("layouts.*.parts", "n_p", D::Ratio, 1, false),
    quantity("layouts.*.drive_mass", "m_d", D::Mass, 3, false),
    quantity("layouts.*.drive_cost", "c_d", D::Ratio, 3, false),
];

/// The table that a reader may sort: outputs of the layouts, one column each.
pub const COLUMNS: &[&str] = &[
    "layouts.*.motors",
    "layouts.*.traction_limit",
    "layouts.*.like_motors_limit",
    "layouts.*.time_to_60_mph",
    "layouts.*.time_saved",
    "layouts.*.limit_gained",
    "layouts.*.yaw_moment",
    "layouts.*.yaw_moment_gained",
    "layouts.*.parts",
    "layouts.*.drive_mass",
    "layouts.*.drive_cost",
];

/// The answers of all layouts that are compared.
fn answers(scenario: &Scenario, question: &Question) -> Result<Vec<(Layout, Answer)>, Problem> {
    scenario
        .layouts()
        .into_iter()
        .map(|layout| Ok((layout, solve(question, layout)?)))
        .collect()
}

/// Time to 60 mph of the quickest compared layout with fewer motors \[s\].
fn quickest_with_fewer(all: &[(Layout, Answer)], layout: Layout) -> Option<f64> {
    all.iter()
        .filter(|(other, _)| other.motors() < layout.motors())
        .filter_map(|(_, answer)| answer.mark.map(|mark| mark.time_s))
        .reduce(f64::min)
}

/// The largest value of what a compared layout with fewer motors has.
fn most_with_fewer(
    all: &[(Layout, Answer)],
    layout: Layout,
    value: impl Fn(&Answer) -> f64,
) -> Option<f64> {
    let mut most: Option<f64> = None;
    for (other, answer) in all {
        if other.motors() < layout.motors() {
            let value = value(answer);
            most = Some(most.map_or(value, |most| most.max(value)));
        }
    }
    most
}

fn limit_of(answer: &Answer) -> f64 {
    answer.limit.acceleration_m_s2
}

fn yaw_moment(question: &Question, answer: &Answer) -> f64 {
    let one = |axle: usize| answer.pair_n[axle].zip(question.tracks_m[axle]);
    [0, 1]
        .into_iter()
        .filter_map(one)
        .map(|(force_n, track_m)| force_n * track_m)
        .sum()
}

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let chassis = &question.rest.chassis;
    let mut readings = Readings::of(OUTPUTS);
    let share = chassis.cg_to_rear_axle_m() / chassis.wheelbase_m();
    readings.number("front_load_share_at_rest", share);
    let all = answers(scenario, &question)?;
    for (layout, answer) in &all {
        let mut add = |name, value| readings.add(name, layout.name(), ReadingValue::Number(value));
        let [front, rear] = counts(*layout);
        let motors = f64::from(layout.motors());
        if front > 0 && rear > 0 {
            let matched = matching_acceleration(chassis, front, rear);
            add("layouts.*.matching_acceleration", matched);
        }
        add("layouts.*.torque_front_share", front_share(front, rear));
        add("layouts.*.traction_limit", answer.limit.acceleration_m_s2);
        add(
            "layouts.*.like_motors_limit",
            answer.equal.acceleration_m_s2,
        );
        add("layouts.*.front_load_share_at_limit", load_share(answer));
        add("layouts.*.motor_torque_needed", answer.torque_n_m);
        add("layouts.*.motor_power_needed", answer.power_w);
        if let Some(mark) = &answer.mark {
            add("layouts.*.time_to_60_mph", mark.time_s);
            if let Some(before_s) = quickest_with_fewer(&all, *layout) {
                add("layouts.*.time_saved", before_s - mark.time_s);
            }
        }
        let yaw_n_m = yaw_moment(&question, answer);
        add("layouts.*.yaw_moment", yaw_n_m);
        if let Some(before) = most_with_fewer(&all, *layout, limit_of) {
            add("layouts.*.limit_gained", limit_of(answer) - before);
        }
        if let Some(before) = most_with_fewer(&all, *layout, |other| yaw_moment(&question, other)) {
            add("layouts.*.yaw_moment_gained", yaw_n_m - before);
        }
        add("layouts.*.motors", motors);
        add("layouts.*.parts", f64::from(parts(*layout)));
        add("layouts.*.drive_mass", motors * question.unit_mass_kg);
        add("layouts.*.drive_cost", motors * question.unit_cost);
    }
    Ok(readings.into_list())
}

fn load_share(answer: &Answer) -> f64 {
    let loads = answer.limit.loads;
    loads.front_n / (loads.front_n + loads.rear_n)
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let chassis = &question.rest.chassis;
    let mut sheet = Sheet::new();
    write_chassis(&mut sheet, chassis);
    sheet.source("source.motor_split");
    for (symbol, value, dimension) in [
        ("R", question.radius_m, D::Length),
        ("i", question.ratio, D::Ratio),
        ("η", question.gear_efficiency, D::Ratio),
        ("m_u", question.unit_mass_kg, D::Mass),
        ("c_u", question.unit_cost, D::Ratio),
    ] {
        sheet.given(symbol, value, dimension);
    }
    let share = chassis.cg_to_rear_axle_m() / chassis.wheelbase_m();
    let path = "front_load_share_at_rest";
    sheet.step("step.ideal_share", "p_l", path, "b/L", share, D::Ratio);
    let all = answers(scenario, &question)?;
    for (layout, answer) in &all {
        sheet.begin(layout.name());
        let fewer_s = quickest_with_fewer(&all, *layout);
        write_layout(&mut sheet, &question, *layout, answer, fewer_s);
        let fewer = most_with_fewer(&all, *layout, limit_of);
        let path = "layouts.*.limit_gained";
        write_gain(
            &mut sheet,
            ["step.limit_gained", "Δa", path, "a_b", "a_x - a_b"],
            limit_of(answer),
            fewer,
            D::Acceleration,
        );
        let moment = |answer: &Answer| yaw_moment(&question, answer);
        let fewer = most_with_fewer(&all, *layout, moment);
        let path = "layouts.*.yaw_moment_gained";
        write_gain(
            &mut sheet,
            ["step.yaw_gained", "ΔM", path, "M_b", "M_z - M_b"],
            moment(answer),
            fewer,
            D::Torque,
        );
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

/// What a layout has beyond the best with fewer motors. Texts: what it is about, symbol, path, symbol of the
/// best with fewer, equation.
fn write_gain(
    sheet: &mut Sheet,
    [about, symbol, path, best, right]: [&'static str; 5],
    now: f64,
    fewer: Option<f64>,
    dimension: D,
) {
    if let Some(fewer) = fewer {
        sheet.given(best, fewer, dimension);
        sheet.step(about, symbol, path, right, now - fewer, dimension);
    }
}

fn write_layout(
    sheet: &mut Sheet,
    question: &Question,
    layout: Layout,
    answer: &Answer,
    fewer_s: Option<f64>,
) {
    let chassis = &question.rest.chassis;
    let [front, rear] = counts(layout);
    let motors = f64::from(layout.motors());
    let mut step = |about, symbol, path, right: &str, value, dimension| {
        sheet.step(about, symbol, path, right, value, dimension);
    };
    let digits = ["0", "1", "2"];
    let (n_f, n_r) = (digits[usize::from(front)], digits[usize::from(rear)]);
    let path = "layouts.*.motors";
    let sum = [n_f, " + ", n_r].concat();
    step("step.motors", "n", path, &sum, motors, D::Ratio);
    let share = front_share(front, rear);
    let path = "layouts.*.torque_front_share";
    let of = if front == 0 {
        "0".into()
    } else {
        [n_f, "/n"].concat()
    };
    step("step.torque_share", "p_t", path, &of, share, D::Ratio);
    if front > 0 && rear > 0 {
        let found = matching_acceleration(chassis, front, rear);
        if found.is_finite() {
            let path = "layouts.*.matching_acceleration";
            let right = "g*(b/L - p_t)*L/h";
            step("step.matching", "a_m", path, right, found, D::Acceleration);
        }
    }
    let (units, costs) = (motors * question.unit_mass_kg, motors * question.unit_cost);
    step(
        "step.drive_mass",
        "m_d",
        "layouts.*.drive_mass",
        "n*m_u",
        units,
        D::Mass,
    );
    step(
        "step.drive_cost",
        "c_d",
        "layouts.*.drive_cost",
        "n*c_u",
        costs,
        D::Ratio,
    );
    let (driven, pairs) = (
        u8::from(front > 0) + u8::from(rear > 0),
        u8::from(front == 2) + u8::from(rear == 2),
    );
    let sum = [
        "3*n + 2*",
        digits[usize::from(driven)],
        " + ",
        digits[usize::from(driven - pairs)],
    ];
    let count = f64::from(parts(layout));
    step(
        "step.parts",
        "n_p",
        "layouts.*.parts",
        &sum.concat(),
        count,
        D::Ratio,
    );
    write_limits(sheet, question, answer);
    write_motor(sheet, layout, answer);
    write_yaw(sheet, question, answer);
    if let Some(mark) = &answer.mark {
        let time_s = mark.time_s;
        sheet.given("F_t", mark.push_n_s / time_s, D::Force);
        sheet.given("R_m", mark.hold_n_s / time_s, D::Force);
        sheet.given("V_1", mark.speed_m_s, D::Speed);
        let path = "layouts.*.time_to_60_mph";
        let right = "m*V_1/(F_t - R_m)";
        sheet.satisfied("step.time_to_speed", "t_60", path, right, time_s, D::Time);
        if let Some(before_s) = fewer_s {
            sheet.given("t_b", before_s, D::Time);
            let path = "layouts.*.time_saved";
            let saved_s = before_s - time_s;
            sheet.step(
                "step.time_saved",
                "Δt",
                path,
                "t_b - t_60",
                saved_s,
                D::Time,
            );
        }
    }
}

/// The equation of motion that each limit satisfies.
fn write_limits(sheet: &mut Sheet, question: &Question, answer: &Answer) {
    let mass_kg = question.rest.chassis.mass_kg();
    for (about, symbol, path, limit) in [
        (
            "step.like_motors",
            "a_e",
            "layouts.*.like_motors_limit",
            &answer.equal,
        ),
        (
            "step.motion_all",
            "a_x",
            "layouts.*.traction_limit",
            &answer.limit,
        ),
    ] {
        let found = limit.acceleration_m_s2;
        let held_n = limit.front_force_n + limit.rear_force_n - mass_kg * found;
        sheet.given("F_f", limit.front_force_n, D::Force);
        sheet.given("F_r", limit.rear_force_n, D::Force);
        sheet.given("R_h", held_n, D::Force);
        let right = "(F_f + F_r - R_h)/m";
        sheet.satisfied(about, symbol, path, right, found, D::Acceleration);
    }
    let loads = answer.limit.loads;
    sheet.given("N_f", loads.front_n, D::Force);
    sheet.given("N_r", loads.rear_n, D::Force);
    let path = "layouts.*.front_load_share_at_limit";
    let right = "N_f/(N_f + N_r)";
    sheet.step(
        "step.front_share",
        "p_x",
        path,
        right,
        load_share(answer),
        D::Ratio,
    );
}

/// The motor that pushes hardest, at rest and at speed.
fn write_motor(sheet: &mut Sheet, layout: Layout, answer: &Answer) {
    let at_rest_n = super::most_of_one_n(&answer.limit, layout);
    let fast_n = super::most_of_one_n(&answer.fast, layout);
    sheet.given("F_1", at_rest_n.max(fast_n), D::Force);
    let (force_n, speed_m_s) = answer.at_most_power;
    sheet.given("F_v", force_n, D::Force);
    sheet.given("V_p", speed_m_s, D::Speed);
    let path = "layouts.*.motor_torque_needed";
    let torque = answer.torque_n_m;
    sheet.step(
        "step.torque_needed",
        "T_n",
        path,
        "F_1*R/(i*η)",
        torque,
        D::Torque,
    );
    let path = "layouts.*.motor_power_needed";
    sheet.step(
        "step.power_needed",
        "P_n",
        path,
        "F_v*V_p/η",
        answer.power_w,
        D::Power,
    );
}

fn write_yaw(sheet: &mut Sheet, question: &Question, answer: &Answer) {
    let ends = [("F_pf", "t_f", "F_pf*t_f"), ("F_pr", "t_r", "F_pr*t_r")];
    let mut terms = Vec::new();
    for (axle, (force, track, term)) in ends.into_iter().enumerate() {
        if let Some((force_n, track_m)) = answer.pair_n[axle].zip(question.tracks_m[axle]) {
            sheet.given(force, force_n, D::Force);
            sheet.given(track, track_m, D::Length);
            terms.push(term);
        }
    }
    let right = if terms.is_empty() {
        "0".into()
    } else {
        terms.join(" + ")
    };
    let moment = yaw_moment(question, answer);
    let path = "layouts.*.yaw_moment";
    sheet.step("step.yaw_pair", "M_z", path, &right, moment, D::Torque);
}
