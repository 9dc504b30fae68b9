//! The topic's table, its readings and its working.

use super::work::compared;
use super::{Answer, GROUNDS, Judged, Measure, Space, VARIED, answer};
use crate::error::Problem;
use crate::scenario::Scenario;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::traction::Limit;
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "choice",
    inputs: &[
        "vehicle.base",
        "layout",
        "layouts",
        "choice.target_time",
        "choice.start_grade",
        "choice.start_surface",
        "choice.least_range",
        "choice.turn_in_place",
        "choice.turn_surface",
        "choice.torque_vectoring",
        "choice.weight_cost",
        "choice.weight_time",
        "choice.weight_energy",
        "choice.weight_room",
        "choice.motor_cost",
        "choice.inverter_cost",
        "choice.gear_set_cost",
        "choice.half_shaft_cost",
        "choice.differential_cost",
        "choice.disconnect_cost",
        "choice.spread",
        "surface.kind",
        "surface.friction_peak",
        "surface.friction_sliding",
        "surface.grade",
        "vehicle.mass",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.cg_height",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.wheel_radius",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.motor_ratio",
        "vehicle.motor_decline_speed",
        "vehicle.motor_max_speed",
        "vehicle.rotor_inertia",
        "vehicle.wheel_inertia",
        "vehicle.gear_efficiency",
        "vehicle.battery_power",
        "vehicle.battery_energy",
        "vehicle.front_machine",
        "vehicle.rear_machine",
        "vehicle.disconnect",
        "idle_drag.cycle",
        "idle_drag.trace",
        "idle_drag.speed",
        "idle_drag.auxiliary_power",
        "idle_drag.regeneration_power",
        "packaging.motor_power_density",
        "packaging.inverter_power_density",
        "packaging.gear_power_density",
        "packaging.structure_width",
        "packaging.box_fill",
        "packaging.unit_length",
        "packaging.unit_height",
        "packaging.clearance",
        "packaging.half_shaft_length",
        "packaging.gap",
        "vehicle.cornering_stiffness_front",
        "vehicle.cornering_stiffness_rear",
        "vehicle.roll_stiffness_front_share",
        "vehicle.drive_efficiency",
        "vehicle.copper_loss_magnet",
        "vehicle.copper_loss_induction",
        "vehicle.weakening_loss",
        "vehicle.magnetising_loss",
        "vehicle.hysteresis_loss",
        "vehicle.eddy_loss",
        "vehicle.bearing_loss",
        "vehicle.windage_loss",
        "vehicle.max_steer_angle",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "vehicle.tyre_peak_slip",
        "vehicle.tyre_relaxation_length",
        "vehicle.rolling_resistance",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "vehicle.ride_frequency_front",
        "vehicle.ride_frequency_rear",
        "vehicle.anti_lift_front",
        "vehicle.anti_squat_rear",
        "vehicle.damping_ratio",
        "air.density",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "choice.target_time",
        "choice.start_grade",
        "choice.start_surface",
        "choice.least_range",
        "choice.turn_in_place",
        "choice.torque_vectoring",
        "choice.weight_cost",
        "choice.weight_time",
        "choice.weight_energy",
        "choice.weight_room",
        "vehicle.motor_torque",
        "vehicle.motor_power",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("choice.target_time", "7 s"),
        ("choice.start_grade", "20 %"),
        ("choice.least_range", "400 km"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: Some(readings_without_run),
    working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
const OUTPUTS: &[Output] = &[
    Output { headline: true, ..plain("recommended", OutputKind::Layout) },
    Output { headline: true, ..plain("because", OutputKind::Sentence) },
    plain("layouts.*.feasible", OutputKind::Flag),
    plain("layouts.*.reason", OutputKind::Word),
    quantity("layouts.*.score", "s", D::Ratio, 3, false),
    plain("layouts.*.on_pareto_front", OutputKind::Flag),
    quantity("layouts.*.time_to_60_mph", "t_60", D::Time, 3, false),
    quantity("layouts.*.cost", "c", D::Ratio, 3, false),
    quantity("layouts.*.energy_per_km", "e", D::EnergyPerDistance, 3, false),
    quantity("layouts.*.range", "s_b", D::Distance, 3, false),
    quantity("layouts.*.room_share", "p_s", D::Ratio, 2, false),
    quantity("layouts.*.limit", "a_x", D::Acceleration, 3, false),
    quantity("layouts.*.limit_wet", "a_w", D::Acceleration, 3, false),
    quantity("layouts.*.limit_wet_concrete", "a_c", D::Acceleration, 3, false),
    quantity("layouts.*.limit_gravel", "a_v", D::Acceleration, 3, false),
    quantity("layouts.*.limit_dry_earth", "a_d", D::Acceleration, 3, false),
    quantity("layouts.*.limit_wet_earth", "a_e", D::Acceleration, 3, false),
    quantity("layouts.*.limit_snow", "a_s", D::Acceleration, 3, false),
    quantity("layouts.*.limit_ice", "a_i", D::Acceleration, 3, false),
    quantity("layouts.*.start_margin", "a_m", D::Acceleration, 2, false),
    quantity("layouts.*.yaw_moment", "M_z", D::Torque, 3, false),
    plain("layouts.*.turns_in_place", OutputKind::Flag),
    quantity("layouts.*.volume", "V", D::Volume, 3, false),
    quantity("layouts.*.room_left", "d", D::Length, 2, false),
    quantity("layouts.*.motors", "n_m", D::Ratio, 1, false),
    quantity("layouts.*.inverters", "n_i", D::Ratio, 1, false),
    quantity("layouts.*.gear_sets", "n_g", D::Ratio, 1, false),
    quantity("layouts.*.half_shafts", "n_h", D::Ratio, 1, false),
    quantity("layouts.*.differentials", "n_d", D::Ratio, 1, false),
    quantity("layouts.*.disconnects", "n_x", D::Ratio, 1, false),
    quantity("layouts.*.parts", "n_p", D::Ratio, 2, false),
    quantity("changes_at.target_time", "x", D::Ratio, 2, false),
    quantity("changes_at.start_grade", "x", D::Ratio, 2, false),
    quantity("changes_at.least_range", "x", D::Ratio, 2, false),
    quantity("changes_at.weight_time", "x", D::Ratio, 2, false),
    quantity("changes_at.weight_cost", "x", D::Ratio, 2, false),
    quantity("changes_at.weight_energy", "x", D::Ratio, 2, false),
    quantity("changes_at.weight_room", "x", D::Ratio, 2, false),
    quantity("changes_at.motor_cost", "x", D::Ratio, 2, false),
    quantity("changes_at.inverter_cost", "x", D::Ratio, 2, false),
    quantity("changes_at.mass", "x", D::Ratio, 2, false),
    quantity("changes_at.cg_height", "x", D::Ratio, 2, false),
    quantity("changes_at.motor_torque", "x", D::Ratio, 2, false),
    quantity("changes_at.motor_power", "x", D::Ratio, 2, false),
    quantity("changes_at.friction_peak", "x", D::Ratio, 2, false),
    quantity("changes_at.battery_energy", "x", D::Ratio, 2, false),
    plain("becomes.target_time", OutputKind::Layout),
    plain("becomes.start_grade", OutputKind::Layout),
    plain("becomes.least_range", OutputKind::Layout),
    plain("becomes.weight_time", OutputKind::Layout),
    plain("becomes.weight_cost", OutputKind::Layout),
    plain("becomes.weight_energy", OutputKind::Layout),
    plain("becomes.weight_room", OutputKind::Layout),
    plain("becomes.motor_cost", OutputKind::Layout),
    plain("becomes.inverter_cost", OutputKind::Layout),
    plain("becomes.mass", OutputKind::Layout),
    plain("becomes.cg_height", OutputKind::Layout),
    plain("becomes.motor_torque", OutputKind::Layout),
    plain("becomes.motor_power", OutputKind::Layout),
    plain("becomes.friction_peak", OutputKind::Layout),
    plain("becomes.battery_energy", OutputKind::Layout),
];

/// The table that a reader may sort: outputs of the layouts, one column each.
pub const COLUMNS: &[&str] = &[
    "layouts.*.score",
    "layouts.*.reason",
    "layouts.*.on_pareto_front",
    "layouts.*.time_to_60_mph",
    "layouts.*.cost",
    "layouts.*.energy_per_km",
    "layouts.*.range",
    "layouts.*.room_share",
    "layouts.*.limit_wet",
    "layouts.*.yaw_moment",
    "layouts.*.turns_in_place",
    "layouts.*.volume",
    "layouts.*.parts",
];

/// Symbols of the shares and of the best, in the order of the weights.
const SHARES: [(&str, &str); 4] = [
    ("s_t", "t_b"),
    ("s_c", "c_b"),
    ("s_e", "e_b"),
    ("s_s", "p_b"),
];

/// Traction limits in the order of the measure: output and symbol.
fn limit_names() -> impl Iterator<Item = (&'static str, &'static str)> {
    let grounds = GROUNDS.map(|(path, _, symbol)| (path, symbol));
    std::iter::once(("layouts.*.limit", "a_x")).chain(grounds)
}

/// Counts of parts: output, its name in the words, symbol, symbol of the cost.
const COUNTS: [(&str, &str, &str, &str); 6] = [
    ("layouts.*.motors", "output.choice.motors", "n_m", "c_m"),
    (
        "layouts.*.inverters",
        "output.choice.inverters",
        "n_i",
        "c_i",
    ),
    (
        "layouts.*.gear_sets",
        "output.choice.gear_sets",
        "n_g",
        "c_g",
    ),
    (
        "layouts.*.half_shafts",
        "output.choice.half_shafts",
        "n_h",
        "c_h",
    ),
    (
        "layouts.*.differentials",
        "output.choice.differentials",
        "n_d",
        "c_d",
    ),
    (
        "layouts.*.disconnects",
        "output.choice.disconnects",
        "n_x",
        "c_x",
    ),
];

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let answer = answer(scenario)?;
    let mut readings = Readings::of(OUTPUTS);
    if let Some(layout) = answer.decision.recommended {
        readings.add("recommended", "", ReadingValue::Layout(layout));
    }
    readings.add("because", "", ReadingValue::Sentence(answer.because()));
    for (measure, judged) in answer.measures.iter().zip(&answer.decision.judged) {
        add_layout(&mut readings, measure, judged.cost);
        add_judged(&mut readings, judged);
    }
    for ((_, changes_at, becomes, _), flip) in VARIED.iter().zip(&answer.flips) {
        if let Some(flip) = flip {
            readings.number(changes_at, flip.change());
            if let Some(layout) = flip.becomes {
                readings.add(becomes, "", ReadingValue::Layout(layout));
            }
        }
    }
    Ok(readings.into_list())
}

/// What parts, room and grip say. Where time and range are not asked for, it is enough for the judgement.
fn readings_without_run(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let (brief, measures) = compared(scenario)?;
    let mut readings = Readings::of(OUTPUTS);
    for measure in &measures {
        add_layout(&mut readings, measure, measure.parts.cost(&brief.costs));
        if brief.target_s.is_none() && brief.least_range_m.is_none() {
            let word = ReadingValue::Word(brief.verdict(measure).word());
            readings.add("layouts.*.reason", measure.layout.name(), word);
        }
    }
    Ok(readings.into_list())
}

fn add_judged(readings: &mut Readings, judged: &Judged) {
    let name = judged.layout.name();
    let mut add = |path, value| readings.add(path, name, value);
    let flag = ReadingValue::Flag;
    add("layouts.*.feasible", flag(judged.score.is_some()));
    let word = judged.verdict.word();
    add("layouts.*.reason", ReadingValue::Word(word));
    if let Some(score) = judged.score {
        add("layouts.*.score", ReadingValue::Number(score));
    }
    add("layouts.*.on_pareto_front", flag(judged.on_pareto_front));
}

fn add_layout(readings: &mut Readings, measure: &Measure, cost: f64) {
    let name = measure.layout.name();
    let mut add = |path, value| readings.add(path, name, value);
    let (flag, number) = (ReadingValue::Flag, ReadingValue::Number);
    let mut some = |path, value: Option<f64>| {
        if let Some(value) = value {
            add(path, number(value));
        }
    };
    some("layouts.*.time_to_60_mph", measure.mark.map(|m| m.time_s));
    some("layouts.*.cost", Some(cost));
    some("layouts.*.energy_per_km", measure.energy_j_m);
    some("layouts.*.range", measure.range_m);
    some("layouts.*.room_share", Some(measure.space.free_share));
    for ((path, _), limit) in limit_names().zip(measure.limits.iter().flatten()) {
        some(path, Some(limit.acceleration_m_s2));
    }
    some(
        "layouts.*.start_margin",
        Some(measure.start.acceleration_m_s2),
    );
    some("layouts.*.yaw_moment", measure.yaw_n_m);
    some("layouts.*.volume", Some(measure.space.volume_m3));
    some("layouts.*.room_left", Some(measure.space.left_m));
    for ((path, ..), count) in COUNTS.into_iter().zip(measure.parts.counts()) {
        some(path, Some(f64::from(count)));
    }
    some("layouts.*.parts", Some(f64::from(measure.parts.total())));
    add("layouts.*.turns_in_place", flag(measure.turn.feasible()));
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let answer = answer(scenario)?;
    let mut sheet = Sheet::new();
    sheet.source("source.choice");
    for (symbol, cost) in COUNTS.iter().map(|row| row.3).zip(answer.brief.costs) {
        sheet.given(symbol, cost, D::Ratio);
    }
    for (symbol, weight) in ["w_t", "w_c", "w_e", "w_s"]
        .into_iter()
        .zip(answer.brief.weights)
    {
        sheet.given(symbol, weight, D::Ratio);
    }
    let mass_kg = scenario.require("vehicle.mass")?;
    sheet.given("m", mass_kg, D::Mass);
    if let Some(battery_j) = scenario.number("vehicle.battery_energy") {
        sheet.given("E_b", battery_j, D::StoredEnergy);
    }
    write_best(&mut sheet, &answer);
    for (measure, judged) in answer.measures.iter().zip(&answer.decision.judged) {
        sheet.begin(judged.layout.name());
        write_layout(&mut sheet, measure, judged, mass_kg);
        sheet.begin("");
    }
    for ((_, path, ..), flip) in VARIED.iter().zip(&answer.flips) {
        if let Some(flip) = flip {
            sheet.given("x_0", flip.from, D::Ratio);
            sheet.given("x_1", flip.at, D::Ratio);
            let right = "(x_1 - x_0)/x_0";
            sheet.step("step.changes_at", "x", path, right, flip.change(), D::Ratio);
        }
    }
    Ok(sheet.into_steps())
}

/// The best time, cost, energy and room among the layouts that meet the brief.
fn write_best(sheet: &mut Sheet, answer: &Answer) {
    let pairs = || answer.measures.iter().zip(&answer.decision.judged);
    let able = || pairs().filter(|(_, judged)| judged.score.is_some());
    let least = |value: &dyn Fn(&Measure, &Judged) -> Option<f64>| {
        able().filter_map(|(m, j)| value(m, j)).reduce(f64::min)
    };
    let best = [
        least(&|m, _| m.mark.map(|mark| mark.time_s)),
        least(&|_, j| Some(j.cost)),
        least(&|m, _| m.energy_j_m),
        least(&|m, _| Some(-m.space.free_share)).map(|share| -share),
    ];
    let dimensions = [D::Time, D::Ratio, D::EnergyPerDistance, D::Ratio];
    for (((_, symbol), value), dimension) in SHARES.into_iter().zip(best).zip(dimensions) {
        if let Some(value) = value {
            sheet.given(symbol, value, dimension);
        }
    }
}

fn write_layout(sheet: &mut Sheet, measure: &Measure, judged: &Judged, mass_kg: f64) {
    if let Some(mark) = measure.mark {
        sheet.given("F_t", mark.push_n_s / mark.time_s, D::Force);
        sheet.given("R_m", mark.hold_n_s / mark.time_s, D::Force);
        sheet.given("V_1", mark.speed_m_s, D::Speed);
        let (path, right) = ("layouts.*.time_to_60_mph", "m*V_1/(F_t - R_m)");
        let about = "step.time_to_speed";
        sheet.satisfied(about, "t_60", path, right, mark.time_s, D::Time);
    }
    write_parts(sheet, measure, judged.cost);
    write_energy(sheet, measure);
    for (name, limit) in limit_names().zip(measure.limits.iter().flatten()) {
        write_limit(sheet, name, limit, mass_kg);
    }
    let path = ("layouts.*.start_margin", "a_m");
    write_limit(sheet, path, &measure.start, mass_kg);
    if let Some(yaw_n_m) = measure.yaw_n_m {
        sheet.given("M_1", yaw_n_m, D::Torque);
        let path = "layouts.*.yaw_moment";
        sheet.step("step.yaw_of_layout", "M_z", path, "M_1", yaw_n_m, D::Torque);
    }
    write_space(sheet, &measure.space);
    if let Some(score) = judged.score {
        write_score(sheet, measure, judged, score);
    }
}

fn write_space(sheet: &mut Sheet, space: &Space) {
    sheet.given("V_u", space.unit_m3, D::Volume);
    let path = "layouts.*.volume";
    sheet.step(
        "step.drive_volume",
        "V",
        path,
        "n_m*V_u",
        space.volume_m3,
        D::Volume,
    );
    sheet.given("B_1", space.room_m, D::Length);
    sheet.given("u_1", space.needed_m, D::Length);
    let path = "layouts.*.room_left";
    sheet.step(
        "step.room_left",
        "d",
        path,
        "B_1 - u_1",
        space.left_m,
        D::Length,
    );
    sheet.given("B_r", space.rear_room_m, D::Length);
    sheet.given("u_r", space.rear_taken_m, D::Length);
    let right = if space.free_share > 0.0 {
        "1 - u_r/B_r"
    } else {
        "0"
    };
    let path = "layouts.*.room_share";
    sheet.step(
        "step.room_share",
        "p_s",
        path,
        right,
        space.free_share,
        D::Ratio,
    );
}

fn write_parts(sheet: &mut Sheet, measure: &Measure, cost: f64) {
    let counts = measure.parts.counts();
    for ((path, about, symbol, _), count) in COUNTS.into_iter().zip(counts) {
        let digits = ["0", "1", "2", "3", "4"];
        let right = digits[usize::from(count.min(4))];
        sheet.step(about, symbol, path, right, f64::from(count), D::Ratio);
    }
    let total = f64::from(measure.parts.total());
    let right = "n_m + n_i + n_g + n_h + n_d + n_x";
    sheet.step(
        "step.parts_total",
        "n_p",
        "layouts.*.parts",
        right,
        total,
        D::Ratio,
    );
    let right = "n_m*c_m + n_i*c_i + n_g*c_g + n_h*c_h + n_d*c_d + n_x*c_x";
    sheet.step("step.cost", "c", "layouts.*.cost", right, cost, D::Ratio);
}

fn write_energy(sheet: &mut Sheet, measure: &Measure) {
    let Some(((energy_j, distance_m), per_m)) = measure.cycle.zip(measure.energy_j_m) else {
        return;
    };
    sheet.given("E", energy_j, D::StoredEnergy);
    sheet.given("s_c", distance_m, D::Distance);
    let (path, right) = ("layouts.*.energy_per_km", "E/s_c");
    sheet.step(
        "step.energy_per_distance",
        "e",
        path,
        right,
        per_m,
        D::EnergyPerDistance,
    );
    if let Some(range_m) = measure.range_m {
        let path = "layouts.*.range";
        sheet.step(
            "step.range_of_layout",
            "s_b",
            path,
            "E_b/e",
            range_m,
            D::Distance,
        );
    }
}

fn write_limit(
    sheet: &mut Sheet,
    (path, symbol): (&'static str, &'static str),
    limit: &Limit,
    mass_kg: f64,
) {
    let found = limit.acceleration_m_s2;
    let held_n = limit.front_force_n + limit.rear_force_n - mass_kg * found;
    sheet.given("F_f", limit.front_force_n, D::Force);
    sheet.given("F_r", limit.rear_force_n, D::Force);
    sheet.given("R_h", held_n, D::Force);
    let right = "(F_f + F_r - R_h)/m";
    sheet.satisfied(
        "step.motion_all",
        symbol,
        path,
        right,
        found,
        D::Acceleration,
    );
}

fn write_score(sheet: &mut Sheet, measure: &Measure, judged: &Judged, score: f64) {
    let given = [
        measure.mark.map(|_| "t_b/t_60"),
        Some("c_b/c"),
        measure.energy_j_m.map(|_| "e_b/e"),
        Some("p_s/p_b"),
    ];
    for (((symbol, _), right), share) in SHARES.into_iter().zip(given).zip(judged.shares) {
        // What is not there at all counts nothing.
        let right = right.filter(|_| share > 0.0).unwrap_or("0");
        sheet.step("step.share", symbol, "", right, share, D::Ratio);
    }
    let path = "layouts.*.score";
    let right = "(w_t*s_t + w_c*s_c + w_e*s_e + w_s*s_s)/(w_t + w_c + w_e + w_s)";
    let right = if score > 0.0 { right } else { "0" };
    sheet.step("step.score", "s", path, right, score, D::Ratio);
}
