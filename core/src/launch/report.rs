//! The topic's table, its readings and its working.

use super::run::{MARKS, Mark, Run};
use super::state::AxleLimit;
use super::{
    MARK_60_MPH, MARK_100_KM_H, MARK_160_KM_H, MARK_QUARTER_MILE, MARK_ROLLOUT, Question, at_time,
    course,
};
use crate::error::Problem;
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::topic::{
    Output, OutputKind, Part, Reading, ReadingValue, Readings, Sentence, Topic, plain, quantity,
};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "launch",
    inputs: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "layouts",
        "launch.time",
        "surface.friction_peak",
        "surface.friction_sliding",
        "vehicle.mass",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.battery_power",
        "launch.traction_control",
        "launch.slip_target",
        "launch.model",
        "surface.grade",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.cg_height",
        "vehicle.wheel_radius",
        "vehicle.motor_ratio",
        "vehicle.motor_decline_speed",
        "vehicle.motor_max_speed",
        "vehicle.rotor_inertia",
        "vehicle.wheel_inertia",
        "vehicle.gear_efficiency",
        "vehicle.rolling_resistance",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "air.density",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "vehicle.tyre_peak_slip",
        "vehicle.tyre_relaxation_length",
        "vehicle.ride_frequency_front",
        "vehicle.ride_frequency_rear",
        "vehicle.anti_lift_front",
        "vehicle.anti_squat_rear",
        "vehicle.damping_ratio",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "launch.traction_control",
        "surface.friction_peak",
        "vehicle.mass",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.cg_height",
        "surface.grade",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("layouts", "F1 R1 F1R1 F1R2"),
        ("layout", "F1R1"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
const OUTPUTS: &[Output] = &[
    quantity("layouts.*.time_to_60_mph", "t_60", D::Time, 3, true),
    quantity("layouts.*.time_to_100_km_h", "t_100", D::Time, 3, false),
    quantity("layouts.*.time_to_160_km_h", "t_160", D::Time, 3, false),
    quantity("layouts.*.quarter_mile_time", "t_q", D::Time, 4, true),
    quantity("layouts.*.quarter_mile_speed", "V_q", D::Speed, 3, false),
    quantity("layouts.*.rollout_time", "t_r", D::Time, 3, false),
    quantity("layouts.*.time_to_60_mph_after_rollout", "t_60r", D::Time, 3, false),
    quantity("layouts.*.time_to_100_km_h_after_rollout", "t_100r", D::Time, 3, false),
    quantity("layouts.*.time_to_160_km_h_after_rollout", "t_160r", D::Time, 3, false),
    quantity("layouts.*.quarter_mile_time_after_rollout", "t_qr", D::Time, 4, false),
    plain("layouts.*.outcome", OutputKind::Word),
    plain("layouts.*.front_phases", OutputKind::Sentence),
    plain("layouts.*.rear_phases", OutputKind::Sentence),
    quantity("layouts.*.front_grip_limited_until", "t_gf", D::Time, 3, false),
    quantity("layouts.*.rear_grip_limited_until", "t_gr", D::Time, 3, false),
    quantity("layouts.*.front_peak_slip", "σ_f", D::Ratio, 2, false),
    quantity("layouts.*.rear_peak_slip", "σ_r", D::Ratio, 2, false),
    quantity("layouts.*.motor_energy", "E_m", D::Energy, 4, false),
    quantity("layouts.*.tyre_heat", "Q", D::Energy, 3, false),
    quantity("layouts.*.end_speed", "V_e", D::Speed, 3, false),
    quantity("layouts.*.speed_at_time", "V_t", D::Speed, 3, false),
];

/// Times of the marks, in the order of the marks: name, symbol.
const TIMES: [(&str, &str); 5] = [
    ("layouts.*.rollout_time", "t_r"),
    ("layouts.*.time_to_60_mph", "t_60"),
    ("layouts.*.time_to_100_km_h", "t_100"),
    ("layouts.*.time_to_160_km_h", "t_160"),
    ("layouts.*.quarter_mile_time", "t_q"),
];

/// What is read off the run as it is: name, symbol, what it is, dimension.
const READ_OFF: [(&str, &str, &str, D); 5] = [
    (
        "layouts.*.front_grip_limited_until",
        "t_gf",
        "step.grip_until",
        D::Time,
    ),
    (
        "layouts.*.rear_grip_limited_until",
        "t_gr",
        "step.grip_until",
        D::Time,
    ),
    (
        "layouts.*.front_peak_slip",
        "σ_f",
        "step.peak_slip",
        D::Ratio,
    ),
    (
        "layouts.*.rear_peak_slip",
        "σ_r",
        "step.peak_slip",
        D::Ratio,
    ),
    ("layouts.*.end_speed", "V_e", "step.end_speed", D::Speed),
];

/// The values of [`READ_OFF`]; an axle without slip or grip phase has none.
fn read_off(run: &Run) -> [Option<f64>; 5] {
    let slip = |slip: f64| (slip > 0.0).then_some(slip);
    [
        run.grip_until_s[0],
        run.grip_until_s[1],
        slip(run.peak_slip[0]),
        slip(run.peak_slip[1]),
        Some(run.end_speed_m_s),
    ]
}

/// Speed at the time that is shown \[m/s\]: of the layout that is shown, where the scenario gives a time.
fn shown_speed(scenario: &Scenario, question: &Question, layout: Layout) -> Option<f64> {
    let time_s = scenario.given_number("launch.time")?;
    (layout == scenario.layout()).then(|| at_time(question, layout, time_s).0.speed_m_s)
}

/// Energy from the motors' shafts up to 60 mph, and the heat of slip in it \[J\].
fn energies(question: &Question, mark: &Mark) -> (f64, f64) {
    let taken_j = mark.taken_j(question.chassis.mass_kg());
    (
        taken_j / question.gear_efficiency,
        mark.slip_heat_j[0] + mark.slip_heat_j[1],
    )
}

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let mut readings = Readings::of(OUTPUTS);
    for layout in scenario.layouts() {
        let course = course(&question, layout);
        let run = &course.run;
        let mut add = |name, value: Option<f64>| {
            if let Some(value) = value {
                readings.add(name, layout.name(), ReadingValue::Number(value));
            }
        };
        let time = |at: usize| run.marks[at].map(|mark: Mark| mark.time_s);
        for at in [MARK_60_MPH, MARK_100_KM_H, MARK_160_KM_H, MARK_QUARTER_MILE] {
            add(TIMES[at].0, time(at));
        }
        let quarter = run.marks[MARK_QUARTER_MILE];
        add(
            "layouts.*.quarter_mile_speed",
            quarter.map(|mark| mark.speed_m_s),
        );
        let rollout_s = time(MARK_ROLLOUT);
        add("layouts.*.rollout_time", rollout_s);
        for (name, at, ..) in AFTER_ROLLOUT {
            add(
                name,
                time(at).zip(rollout_s).map(|(all, first)| all - first),
            );
        }
        for ((name, ..), value) in READ_OFF.into_iter().zip(read_off(run)) {
            add(name, value);
        }
        if let Some(mark) = &run.marks[MARK_60_MPH] {
            let (energy_j, heat_j) = energies(&question, mark);
            add("layouts.*.motor_energy", Some(energy_j));
            add("layouts.*.tyre_heat", Some(heat_j));
        }
        add(
            "layouts.*.speed_at_time",
            shown_speed(scenario, &question, layout),
        );
        let word = ReadingValue::Word(run.outcome.word());
        readings.add("layouts.*.outcome", layout.name(), word);
        for (axle, name) in PHASES.into_iter().enumerate() {
            if let Some(sentence) = told_phases(&course.phases(axle)) {
                readings.add(name, layout.name(), ReadingValue::Sentence(sentence));
            }
        }
    }
    Ok(readings.into_list())
}

/// What limits each axle, front and rear.
const PHASES: [&str; 2] = ["layouts.*.front_phases", "layouts.*.rear_phases"];

/// The phases of an axle in a sentence; none for an undriven one.
fn told_phases(phases: &[(AxleLimit, f64)]) -> Option<Sentence> {
    let key = match phases {
        [] | [(AxleLimit::Undriven, _), ..] => return None,
        [_] => "figure.launch.phases_1",
        [_, _] => "figure.launch.phases_2",
        [_, _, _] => "figure.launch.phases_3",
        _ => "figure.launch.phases_4",
    };
    let mut parts = Vec::new();
    for (limit, until_s) in phases {
        parts.push(Part::Key(limit.key()));
        parts.push(Part::Number(*until_s, D::Time, 3));
    }
    Some(Sentence { key, parts })
}

/// Times that begin after a foot of rollout: name, the mark that they end at, symbol, equation.
#[rustfmt::skip] // One time, one line: it is read as a table.
const AFTER_ROLLOUT: [(&str, usize, &str, &str); 4] = [
    ("layouts.*.time_to_60_mph_after_rollout", MARK_60_MPH, "t_60r", "t_60 - t_r"),
    ("layouts.*.time_to_100_km_h_after_rollout", MARK_100_KM_H, "t_100r", "t_100 - t_r"),
    ("layouts.*.time_to_160_km_h_after_rollout", MARK_160_KM_H, "t_160r", "t_160 - t_r"),
    ("layouts.*.quarter_mile_time_after_rollout", MARK_QUARTER_MILE, "t_qr", "t_q - t_r"),
];

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let mut sheet = Sheet::new();
    sheet.source("source.launch");
    sheet.given("m", question.chassis.mass_kg(), D::Mass);
    sheet.given("η", question.gear_efficiency, D::Ratio);
    for layout in scenario.layouts() {
        sheet.begin(layout.name());
        let course = course(&question, layout);
        let run = &course.run;
        for at in 0..MARKS.len() {
            if let Some(mark) = &run.marks[at] {
                write_mark(&mut sheet, at, mark);
            }
        }
        for (name, at, symbol, right) in AFTER_ROLLOUT {
            if let (Some(all), Some(first)) = (&run.marks[at], &run.marks[MARK_ROLLOUT]) {
                let value = all.time_s - first.time_s;
                sheet.step("step.after_rollout", symbol, name, right, value, D::Time);
            }
        }
        for ((name, symbol, about, dimension), value) in READ_OFF.into_iter().zip(read_off(run)) {
            if let Some(value) = value {
                sheet.given(symbol, value, dimension);
                let same = ["1*", symbol].concat();
                sheet.step(about, symbol, name, &same, value, dimension);
            }
        }
        if let Some(mark) = &run.marks[MARK_60_MPH] {
            write_energies(&mut sheet, &question, mark);
        }
        if let Some(speed_m_s) = shown_speed(scenario, &question, layout) {
            sheet.given("V_t", speed_m_s, D::Speed);
            let path = "layouts.*.speed_at_time";
            sheet.step(
                "step.speed_at_time",
                "V_t",
                path,
                "1*V_t",
                speed_m_s,
                D::Speed,
            );
        }
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

/// Time at a mark. To a speed it is momentum over the mean of all forces, which is what the equation
/// of motion says when it is added up over the run; to a distance it is distance over mean speed.
fn write_mark(sheet: &mut Sheet, at: usize, mark: &Mark) {
    let (name, symbol) = TIMES[at];
    let time_s = mark.time_s;
    sheet.given("F_t", mark.push_n_s / time_s, D::Force);
    sheet.given("R_m", mark.hold_n_s / time_s, D::Force);
    if MARKS[at].0 == super::state::SPEED {
        sheet.given("V_1", mark.speed_m_s, D::Speed);
        let right = "m*V_1/(F_t - R_m)";
        sheet.satisfied("step.time_to_speed", symbol, name, right, time_s, D::Time);
    } else {
        sheet.given("s_1", mark.distance_m, D::Length);
        sheet.given("V_m", mark.distance_m / time_s, D::Speed);
        let right = "s_1/V_m";
        sheet.satisfied(
            "step.time_to_distance",
            symbol,
            name,
            right,
            time_s,
            D::Time,
        );
    }
    if at == MARK_QUARTER_MILE {
        sheet.satisfied(
            "step.trap_speed",
            "V_q",
            "layouts.*.quarter_mile_speed",
            "(F_t - R_m)*t_q/m",
            mark.speed_m_s,
            D::Speed,
        );
    }
}

fn write_energies(sheet: &mut Sheet, question: &Question, mark: &Mark) {
    let (energy_j, heat_j) = energies(question, mark);
    for (symbol, value) in [
        ("E_s", mark.spinning_j),
        ("W_D", mark.drag_work_j),
        ("W_R", mark.rolling_work_j),
        ("W_G", mark.grade_work_j),
        ("Q_f", mark.slip_heat_j[0]),
        ("Q_r", mark.slip_heat_j[1]),
    ] {
        sheet.given(symbol, value, D::Energy);
    }
    sheet.given("V_1", mark.speed_m_s, D::Speed);
    let path = "layouts.*.tyre_heat";
    sheet.step("step.tyre_heat", "Q", path, "Q_f + Q_r", heat_j, D::Energy);
    sheet.step(
        "step.motor_energy",
        "E_m",
        "layouts.*.motor_energy",
        "(0.5*m*V_1² + E_s + W_D + W_R + W_G + Q)/η",
        energy_j,
        D::Energy,
    );
}
