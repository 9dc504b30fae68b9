//! The topic's table, its readings and its working.

use super::split::{Split, changes};
use super::{Demand, Question, counts, course, primary};
use crate::GRAVITY_M_S2;
use crate::error::Problem;
use crate::layout::Layout;
use crate::motor::Machine;
use crate::scenario::Scenario;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "idle_drag",
    inputs: &[
        "vehicle.base",
        "layout",
        "layouts",
        "vehicle.front_machine",
        "vehicle.rear_machine",
        "vehicle.disconnect",
        "idle_drag.chart",
        "idle_drag.cycle",
        "idle_drag.trace",
        "idle_drag.speed",
        "idle_drag.acceleration",
        "vehicle.mass",
        "vehicle.drag_area",
        "vehicle.rolling_resistance",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.battery_energy",
        "idle_drag.auxiliary_power",
        "idle_drag.regeneration_power",
        "vehicle.hysteresis_loss",
        "vehicle.eddy_loss",
        "vehicle.bearing_loss",
        "vehicle.windage_loss",
        "vehicle.copper_loss_magnet",
        "vehicle.weakening_loss",
        "vehicle.copper_loss_induction",
        "vehicle.magnetising_loss",
        "surface.grade",
        "vehicle.wheel_radius",
        "vehicle.motor_ratio",
        "vehicle.motor_decline_speed",
        "vehicle.motor_max_speed",
        "vehicle.rotor_inertia",
        "vehicle.wheel_inertia",
        "vehicle.gear_efficiency",
        "air.density",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "layout",
        "layouts",
        "vehicle.front_machine",
        "vehicle.rear_machine",
        "vehicle.disconnect",
        "idle_drag.chart",
        "idle_drag.cycle",
        "idle_drag.trace",
        "idle_drag.speed",
        "idle_drag.acceleration",
        "vehicle.mass",
        "vehicle.hysteresis_loss",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("vehicle.front_machine", "induction"),
        ("layouts", "R1 F1R1 F1R2 F2R2"),
        ("layout", "F1R1"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
const OUTPUTS: &[Output] = &[
    quantity("cycle_distance", "s", D::Distance, 3, false),
    quantity("road_load", "F_R", D::Force, 3, false),
    quantity("motor_speed", "ω", D::Rotation, 3, false),
    quantity("idle_loss_permanent_magnet", "P_0p", D::Power, 3, false),
    quantity("idle_loss_induction", "P_0i", D::Power, 3, false),
    quantity("layouts.*.energy_per_km", "e", D::EnergyPerDistance, 3, true),
    quantity("layouts.*.range", "s_b", D::Distance, 3, true),
    quantity("layouts.*.range_lost_to_idle", "Δs", D::Distance, 2, false),
    quantity("layouts.*.motor_loss_per_km", "q_m", D::EnergyPerDistance, 3, false),
    quantity("layouts.*.idle_loss_per_km", "q_i", D::EnergyPerDistance, 3, false),
    quantity("layouts.*.saved_by_split", "u", D::Ratio, 2, false),
    plain("layouts.*.primary", OutputKind::Word),
    quantity("layouts.*.booster_time_share", "b", D::Ratio, 2, false),
    plain("layouts.*.follows_cycle", OutputKind::Flag),
    quantity("layouts.*.force_at_wheels", "F_x", D::Force, 3, false),
    quantity("layouts.*.front_torque_share", "p_t", D::Ratio, 2, false),
    quantity("layouts.*.motor_loss", "P_v", D::Power, 3, false),
    quantity("layouts.*.both_axles_above", "F_2", D::Force, 3, false),
];

/// The table that a reader may sort: outputs of the layouts, one column each.
pub const COLUMNS: &[&str] = &[
    "layouts.*.energy_per_km",
    "layouts.*.range",
    "layouts.*.range_lost_to_idle",
    "layouts.*.motor_loss_per_km",
    "layouts.*.idle_loss_per_km",
    "layouts.*.saved_by_split",
    "layouts.*.booster_time_share",
];

/// Torque above which both axles make some \[N·m\]; none where there is none such.
fn both_above_n_m(demand: &Demand) -> Option<f64> {
    let changes = changes(&demand.axles);
    let both = changes.iter().find(|(_, running)| *running == [true; 2]);
    both.map(|(torque, _)| *torque)
}

fn front_share(split: &Split) -> Option<f64> {
    let total = split.total_n_m();
    (total > 0.0).then(|| split.torques_n_m[0] / total)
}

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let mut readings = Readings::of(OUTPUTS);
    readings.number("cycle_distance", question.cycle.length().1);
    readings.number("road_load", question.road_load_n(question.speed_m_s));
    readings.number("motor_speed", question.motor_rad_s());
    for (name, machine) in [
        ("idle_loss_permanent_magnet", Machine::PermanentMagnet),
        ("idle_loss_induction", Machine::Induction),
    ] {
        readings.number(name, question.idle_w(machine, scenario));
    }
    for layout in scenario.layouts() {
        let drive = course(&question, layout);
        let mut add = |name, value: Option<f64>| {
            if let Some(value) = value {
                readings.add(name, layout.name(), ReadingValue::Number(value));
            }
        };
        if let Some(drive) = &drive {
            let (best, range) = (&drive.best, question.range_m(&drive.best));
            let lost = question.range_m(&drive.free).zip(range);
            add("layouts.*.energy_per_km", Some(best.per_distance()));
            add("layouts.*.range", range);
            add(
                "layouts.*.range_lost_to_idle",
                lost.map(|(free, now)| free - now),
            );
            let motor_j = best.motor_j[0] + best.motor_j[1];
            add(
                "layouts.*.motor_loss_per_km",
                Some(motor_j / best.distance_m),
            );
            add(
                "layouts.*.idle_loss_per_km",
                Some(best.idle_j / best.distance_m),
            );
            add("layouts.*.saved_by_split", drive.saved());
            if best.pushing_s > 0.0 {
                let share = best.both_s() / best.pushing_s;
                add("layouts.*.booster_time_share", Some(share));
            }
        }
        let demand = question.demand(layout, question.speed_m_s, question.acceleration_m_s2);
        let split = question.best(&demand);
        add("layouts.*.force_at_wheels", Some(demand.force_n));
        add(
            "layouts.*.front_torque_share",
            split.as_ref().and_then(front_share),
        );
        add("layouts.*.motor_loss", split.map(|split| split.loss_w));
        let both = both_above_n_m(&demand).map(|torque| question.pull_n(torque));
        add("layouts.*.both_axles_above", both);
        if let Some(drive) = &drive {
            let word = ReadingValue::Word(primary(layout, &drive.best));
            readings.add("layouts.*.primary", layout.name(), word);
        }
        let follows = ReadingValue::Flag(drive.is_some());
        readings.add("layouts.*.follows_cycle", layout.name(), follows);
    }
    Ok(readings.into_list())
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let mut sheet = Sheet::new();
    sheet.source("source.idle_drag");
    write_given(&mut sheet, scenario, &question);
    write_machine(&mut sheet, scenario, &question);
    let (time_s, distance_m) = question.cycle.length();
    sheet.given("t_c", time_s, D::Time);
    sheet.given("V_c", distance_m / time_s, D::Speed);
    let path = "cycle_distance";
    sheet.step(
        "step.cycle_distance",
        "s",
        path,
        "V_c*t_c",
        distance_m,
        D::Distance,
    );
    for layout in scenario.layouts() {
        sheet.begin(layout.name());
        write_point(&mut sheet, &question, layout);
        write_cycle(&mut sheet, &question, layout);
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

/// What the scenario gives.
fn write_given(sheet: &mut Sheet, scenario: &Scenario, question: &Question) {
    for (symbol, value, dimension) in [
        ("m", question.mass_kg, D::Mass),
        ("g", GRAVITY_M_S2, D::Acceleration),
        ("ρ", question.density_kg_m3, D::Density),
        ("C_dA", question.drag_area_m2, D::Area),
        ("f_r", question.rolling_resistance, D::Ratio),
        ("θ", question.slope.angle_rad, D::Angle),
        ("R", question.radius_m, D::Length),
        ("i", question.ratio, D::Ratio),
        ("η", question.gear_efficiency, D::Ratio),
        ("J_w", question.wheel_inertia_kg_m2, D::Inertia),
        ("J_m", question.rotor_inertia_kg_m2, D::Inertia),
        ("V", question.speed_m_s, D::Speed),
        ("a_x", question.acceleration_m_s2, D::Acceleration),
        ("T_m", question.motor.torque_n_m, D::Torque),
        ("P_m", question.motor.power_w, D::Power),
        ("P_r", question.regeneration_w, D::Power),
    ] {
        sheet.given(symbol, value, dimension);
    }
    for (symbol, path) in [
        ("k_p", "vehicle.copper_loss_magnet"),
        ("k_i", "vehicle.copper_loss_induction"),
        ("k_f", "vehicle.weakening_loss"),
        ("k_m", "vehicle.magnetising_loss"),
        ("k_h", "vehicle.hysteresis_loss"),
        ("k_e", "vehicle.eddy_loss"),
        ("k_b", "vehicle.bearing_loss"),
        ("k_w", "vehicle.windage_loss"),
    ] {
        sheet.given(symbol, scenario.number(path).unwrap_or(0.0), D::Ratio);
    }
    if let Some(battery_j) = question.battery_j {
        sheet.given("E_b", battery_j, D::StoredEnergy);
    }
}

/// One motor at the speed that is looked at, and the road load there.
fn write_machine(sheet: &mut Sheet, scenario: &Scenario, question: &Question) {
    let motor_rad_s = question.motor_rad_s();
    let machine = &question.losses[0];
    let idle = |machine| question.idle_w(machine, scenario);
    let road_n = question.road_load_n(question.speed_m_s);
    let right = "0.5*ρ*C_dA*V² + m*g*(f_r*cos(θ) + sin(θ))";
    sheet.step(
        "step.road_load",
        "F_R",
        "road_load",
        right,
        road_n,
        D::Force,
    );
    let rows: [(_, _, &str, _, f64, _); 7] = [
        (
            "step.motor_speed",
            "ω",
            "motor_speed",
            "V*i/R",
            motor_rad_s,
            D::Rotation,
        ),
        (
            "step.base_speed",
            "ω_b",
            "",
            "P_m/T_m",
            machine.base_rad_s,
            D::Rotation,
        ),
        (
            "step.flux",
            "B",
            "",
            "min(1; ω_b/ω)",
            machine.flux(motor_rad_s),
            D::Ratio,
        ),
        (
            "step.iron_loss",
            "P_fe",
            "",
            "P_m*(k_h*ω/ω_b + k_e*(ω/ω_b)²)",
            machine.iron_w(motor_rad_s),
            D::Power,
        ),
        (
            "step.bearing_loss",
            "P_d",
            "",
            "P_m*(k_b*ω/ω_b + k_w*(ω/ω_b)²*ω/ω_b)",
            machine.drag_w(motor_rad_s),
            D::Power,
        ),
        (
            "step.idle_magnet",
            "P_0p",
            "idle_loss_permanent_magnet",
            "P_fe*B² + P_m*k_f*(1 - B)² + P_d",
            idle(Machine::PermanentMagnet),
            D::Power,
        ),
        (
            "step.idle_induction",
            "P_0i",
            "idle_loss_induction",
            "1*P_d",
            idle(Machine::Induction),
            D::Power,
        ),
    ];
    for (about, symbol, path, right, value, dimension) in rows {
        sheet.step(about, symbol, path, right, value, dimension);
    }
}

/// How a layout shares the torque at the point that is looked at.
fn write_point(sheet: &mut Sheet, question: &Question, layout: Layout) {
    let demand = question.demand(layout, question.speed_m_s, question.acceleration_m_s2);
    let force_n = demand.force_n;
    let [front, rear] = counts(layout);
    sheet.given("n_f", front, D::Ratio);
    sheet.given("n_r", rear, D::Ratio);
    let mass_kg = question.apparent_mass_kg(layout);
    let right = "m + (4*J_w + (n_f + n_r)*J_m*i²)/R²";
    sheet.step("step.apparent_mass", "m_a", "", right, mass_kg, D::Mass);
    let path = "layouts.*.force_at_wheels";
    sheet.step(
        "step.force_at_wheels",
        "F_x",
        path,
        "F_R + m_a*a_x",
        force_n,
        D::Force,
    );
    write_both_above(sheet, question, &demand);
    let Some(split) = question.best(&demand) else {
        return;
    };
    let (about, right, torque) = if force_n < 0.0 {
        let most = question.braking_torque_n_m(&demand);
        ("step.braking_torque", "min(-F_x*R*η/i; P_r/ω)", most)
    } else {
        (
            "step.shaft_torque",
            "F_x*R/(i*η)",
            question.shaft_torque_n_m(force_n),
        )
    };
    sheet.step(about, "T", "", right, torque, D::Torque);
    let [front_n_m, rear_n_m] = split.torques_n_m;
    sheet.given("T_f", front_n_m, D::Torque);
    sheet.given("T_r", rear_n_m, D::Torque);
    write_losses(sheet, question, layout, &demand, &split);
    let [front, rear] = &demand.axles;
    if split.is_both() {
        let wanted = torque * rear.copper / (front.copper + rear.copper);
        if (wanted - front_n_m).abs() <= 1e-12 * torque {
            let right = "T*c_r/(c_f + c_r)";
            sheet.step("step.best_share", "T_f", "", right, front_n_m, D::Torque);
        }
    }
    let right = "a_f + c_f*T_f² + a_r + c_r*T_r²";
    let path = "layouts.*.motor_loss";
    sheet.step(
        "step.motor_loss",
        "P_v",
        path,
        right,
        split.loss_w,
        D::Power,
    );
    if let Some(share) = front_share(&split) {
        let path = "layouts.*.front_torque_share";
        let right = "T_f/(T_f + T_r)";
        sheet.step(
            "step.front_torque_share",
            "p_t",
            path,
            right,
            share,
            D::Ratio,
        );
    }
}

/// What the motors of each axle lose whatever the torque, and their copper.
fn write_losses(
    sheet: &mut Sheet,
    question: &Question,
    layout: Layout,
    demand: &Demand,
    split: &Split,
) {
    let driven = counts(layout);
    for (at, axle) in demand.axles.iter().enumerate() {
        let names = [("a_f", "c_f", "n_f"), ("a_r", "c_r", "n_r")];
        let (fixed, copper, count) = names[at];
        let driven = driven[at] > 0.0;
        let runs = split.torques_n_m[at] > 0.0;
        let magnets = question.losses[at].machine == Machine::PermanentMagnet;
        let one = match (runs, magnets) {
            (false, _) if question.disconnect[at] => "0",
            (_, true) => "*P_0p",
            (false, false) => "*P_d",
            (true, false) => "*((P_fe + P_m*k_m)*B² + P_d)",
        };
        let right = if one == "0" || !driven {
            "0".into()
        } else {
            [count, one].concat()
        };
        let lost_w = if runs { axle.run_w } else { axle.idle_w };
        sheet.step("step.axle_fixed", fixed, "", &right, lost_w, D::Power);
        let one = if magnets {
            ["P_m*k_p/(", count, "*T_m²)"]
        } else {
            ["P_m*k_i/(", count, "*T_m²*B²)"]
        };
        let right = if driven { one.concat() } else { "0".into() };
        sheet.step(
            "step.axle_copper",
            copper,
            "",
            &right,
            axle.copper,
            D::Ratio,
        );
    }
}

/// The force from which on both axles lose less than one.
fn write_both_above(sheet: &mut Sheet, question: &Question, demand: &Demand) {
    if let Some(torque) = both_above_n_m(demand) {
        sheet.given("T_2", torque, D::Torque);
        let path = "layouts.*.both_axles_above";
        let force_n = question.pull_n(torque);
        sheet.step(
            "step.both_above",
            "F_2",
            path,
            "T_2*i*η/R",
            force_n,
            D::Force,
        );
    }
}

/// The cycle: where the energy went, and what follows from it.
fn write_cycle(sheet: &mut Sheet, question: &Question, layout: Layout) {
    let Some(drive) = course(question, layout) else {
        return;
    };
    let best = &drive.best;
    let motor_j = best.motor_j[0] + best.motor_j[1];
    for (symbol, value) in [
        ("W_R", best.road_j),
        ("ΔE_k", best.kinetic_j),
        ("Q_m", motor_j),
        ("Q_i", best.idle_j),
        ("Q_g", best.gear_j),
        ("Q_b", best.brake_j),
        ("E_a", best.auxiliary_j),
        ("E_v", drive.even.battery_j),
        ("E_0", drive.free.battery_j),
    ] {
        sheet.given(symbol, value, D::StoredEnergy);
    }
    let energy_j = best.battery_j;
    let right = "W_R + ΔE_k + Q_m + Q_g + Q_b + E_a";
    sheet.satisfied(
        "step.battery_energy",
        "E",
        "",
        right,
        energy_j,
        D::StoredEnergy,
    );
    let per = D::EnergyPerDistance;
    let mut step = |about, symbol, path, right, value, dimension| {
        sheet.step(about, symbol, path, right, value, dimension);
    };
    let path = "layouts.*.energy_per_km";
    step(
        "step.energy_per_km",
        "e",
        path,
        "E/s",
        best.per_distance(),
        per,
    );
    let path = "layouts.*.motor_loss_per_km";
    let value = motor_j / best.distance_m;
    step("step.motor_loss_per_km", "q_m", path, "Q_m/s", value, per);
    let path = "layouts.*.idle_loss_per_km";
    let value = best.idle_j / best.distance_m;
    step("step.idle_loss_per_km", "q_i", path, "Q_i/s", value, per);
    if let Some(saved) = drive.saved() {
        let path = "layouts.*.saved_by_split";
        step(
            "step.saved_by_split",
            "u",
            path,
            "1 - E/E_v",
            saved,
            D::Ratio,
        );
    }
    if let Some(range) = question.range_m(best) {
        let path = "layouts.*.range";
        step("step.range", "s_b", path, "E_b/e", range, D::Distance);
        if let Some(free) = question.range_m(&drive.free) {
            let path = "layouts.*.range_lost_to_idle";
            let right = "E_b*s/E_0 - s_b";
            let lost = free - range;
            step("step.range_lost", "Δs", path, right, lost, D::Distance);
        }
    }
    if best.pushing_s > 0.0 {
        sheet.given("t_2", best.both_s(), D::Time);
        sheet.given("t_p", best.pushing_s, D::Time);
        let path = "layouts.*.booster_time_share";
        let share = best.both_s() / best.pushing_s;
        sheet.step("step.booster_share", "b", path, "t_2/t_p", share, D::Ratio);
    }
}
