//! Formulas of the core by name, for published values that no topic answers.

use axlewright_core::idle_drag::wltc;
use axlewright_core::turn_in_place::wear;
use axlewright_core::tyre::{brush, magic_formula};
use axlewright_core::units::{self, Dimension as D};
use axlewright_core::{
    GRAVITY_M_S2, Scenario, motor, packaging, road_load, scrub, surface, topic, traction, vehicle,
};

/// A formula of the core: what it takes and what it gives.
#[derive(Debug)]
pub struct Formula {
    /// Name in the file of published values.
    pub name: &'static str,
    /// Names and kinds of the arguments.
    pub takes: &'static [(&'static str, Takes)],
    /// What the result measures.
    pub result: D,
    /// The value, SI, for arguments in SI in the order of [`Formula::takes`].
    pub compute: fn(&[f64]) -> f64,
}

/// What an argument of a formula is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// A quantity with a unit of the core.
    Quantity(D),
    /// A pressure in kPa or bar; no scenario holds one, so the core has no unit for it.
    Pressure,
    /// A surface of the adhesion table; its position is passed on.
    Surface,
}

use Takes::{Pressure, Quantity as Q, Surface};

const AIR: &[(&str, Takes)] = &[
    ("density", Q(D::Density)),
    ("drag_coefficient", Q(D::Ratio)),
    ("frontal_area", Q(D::Area)),
    ("speed", Q(D::Speed)),
];
const ROAD_LOAD: &[(&str, Takes)] = &[
    ("density", Q(D::Density)),
    ("drag_coefficient", Q(D::Ratio)),
    ("frontal_area", Q(D::Area)),
    ("speed", Q(D::Speed)),
    ("weight", Q(D::Force)),
    ("grade", Q(D::Slope)),
];
const WHEEL_LOADS: &[(&str, Takes)] = &[
    ("wheelbase", Q(D::Length)),
    ("front_wheel_load", Q(D::Force)),
    ("rear_wheel_load", Q(D::Force)),
];
const UTILISATION: &[(&str, Takes)] = &[
    ("front_share", Q(D::Ratio)),
    ("deceleration", Q(D::Acceleration)),
    ("front_load_share", Q(D::Ratio)),
    ("height_over_wheelbase", Q(D::Ratio)),
];
const TRACKED: &[(&str, Takes)] = &[
    ("friction", Q(D::Ratio)),
    ("weight", Q(D::Force)),
    ("track_length", Q(D::Length)),
    ("tread", Q(D::Length)),
    ("rolling_resistance", Q(D::Ratio)),
];
const TRACKED_MOMENT: &[(&str, Takes)] = &[
    ("friction", Q(D::Ratio)),
    ("weight", Q(D::Force)),
    ("track_length", Q(D::Length)),
];
const SHAFT: &[(&str, Takes)] = &[
    ("torque", Q(D::Torque)),
    ("ratio", Q(D::Ratio)),
    ("efficiency", Q(D::Ratio)),
    ("wheel_radius", Q(D::Length)),
];
const ROAD_SPEED: &[(&str, Takes)] = &[
    ("shaft_speed", Q(D::Rotation)),
    ("ratio", Q(D::Ratio)),
    ("wheel_radius", Q(D::Length)),
    ("slip", Q(D::Ratio)),
];
const SPINNING: &[(&str, Takes)] = &[
    ("weight", Q(D::Force)),
    ("wheel_weight", Q(D::Force)),
    ("radius_of_gyration", Q(D::Length)),
    ("shaft_inertia", Q(D::Inertia)),
    ("ratio", Q(D::Ratio)),
    ("wheel_radius", Q(D::Length)),
];
const RESISTANCE: &[(&str, Takes)] = &[
    ("density", Q(D::Density)),
    ("drag_coefficient", Q(D::Ratio)),
    ("frontal_area", Q(D::Area)),
    ("speed", Q(D::Speed)),
    ("weight", Q(D::Force)),
    ("rolling_resistance", Q(D::Ratio)),
];
const ACCELERATION: &[(&str, Takes)] = &[
    ("thrust", Q(D::Force)),
    ("resistance", Q(D::Force)),
    ("weight", Q(D::Force)),
    ("mass_factor", Q(D::Ratio)),
];
const WHEEL_LOAD: &[(&str, Takes)] = &[("load", Q(D::Force))];
const NORMALISED_SLIP: &[(&str, Takes)] = &[("normalised_slip", Q(D::Ratio))];
const TWO_PARTS: &[(&str, Takes)] = &[
    ("power", Q(D::Power)),
    ("one", Q(D::PowerDensity)),
    ("other", Q(D::PowerDensity)),
];
const BOX: &[(&str, Takes)] = &[
    ("length", Q(D::Length)),
    ("width", Q(D::Length)),
    ("height", Q(D::Length)),
];
const POWER_AND_BOX: &[(&str, Takes)] = &[
    ("power", Q(D::Power)),
    ("length", Q(D::Length)),
    ("width", Q(D::Length)),
    ("height", Q(D::Length)),
];
const PIVOTING: &[(&str, Takes)] = &[
    ("friction", Q(D::Ratio)),
    ("load", Q(D::Force)),
    ("pressure", Pressure),
    ("tyre_width", Q(D::Length)),
    ("slide", Q(D::Length)),
];
const ONE_SURFACE: &[(&str, Takes)] = &[("surface", Surface)];

const fn formula(
    name: &'static str,
    takes: &'static [(&'static str, Takes)],
    result: D,
    compute: fn(&[f64]) -> f64,
) -> Formula {
    Formula {
        name,
        takes,
        result,
        compute,
    }
}

const PHASE: &[(&str, Takes)] = &[("phase", Q(D::Ratio))];

/// A phase of the cycle, counted from 1 as people do.
fn phase(values: &[f64]) -> usize {
    (values[0] as usize).saturating_sub(1)
}

/// Whether two motors on one axle of each demo vehicle add more than twice the yaw moment that one motor on
/// each axle does.
fn pairs_turn_more() -> Option<bool> {
    let topic = topic::find("cornering").ok()?;
    let mut all = true;
    for base in vehicle::DEMO_NAMES {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", base).ok()?;
        scenario.set("layouts", "F2 R2 F1R1").ok()?;
        let readings = topic.solve(&scenario).ok()?;
        let moment =
            |layout: &str| topic::number_of(&readings, &format!("yaw_moment.{layout}.max"));
        let pair = moment("F2")?.min(moment("R2")?);
        all &= pair > 2.0 * moment("F1R1")?;
    }
    Some(all)
}

/// What the best split saves with four like motors with magnets that together drive one car.
fn saved(disconnect: &str) -> f64 {
    idle_drag(
        &[
            ("vehicle.motor_torque", "85 N m"),
            ("vehicle.motor_power", "45 kW"),
            ("vehicle.disconnect", disconnect),
            ("layouts", "F2R2"),
            ("layout", "F2R2"),
        ],
        "layouts.F2R2.saved_by_split",
    )
}

fn idle(path: &str) -> f64 {
    idle_drag(&[], path)
}

/// A value of the idle motors of an invented saloon; no number where there is none.
fn idle_drag(fields: &[(&str, &str)], path: &str) -> f64 {
    let mut scenario = Scenario::default();
    let base = [("vehicle.base", "esker")];
    for (field, text) in base.iter().chain(fields) {
        if scenario.set(field, text).is_err() {
            return f64::NAN;
        }
    }
    let solved = topic::find("idle_drag").and_then(|topic| topic.solve(&scenario));
    solved
        .ok()
        .and_then(|readings| topic::number_of(&readings, path))
        .unwrap_or(f64::NAN)
}

/// Every formula.
#[rustfmt::skip]
const FORMULAS: &[Formula] = &[
    formula("cg_to_front_axle", WHEEL_LOADS, D::Length, |v| vehicle::cg_from_wheel_loads(v[0], v[1], v[2]).0),
    formula("cg_to_rear_axle", WHEEL_LOADS, D::Length, |v| vehicle::cg_from_wheel_loads(v[0], v[1], v[2]).1),
    formula("time_to_speed", &[("acceleration", Q(D::Acceleration)), ("speed", Q(D::Speed))], D::Time,
        |v| road_load::time_to_speed_s(v[1], v[0])),
    formula("speed_after_distance", &[("acceleration", Q(D::Acceleration)), ("distance", Q(D::Length))], D::Speed,
        |v| road_load::speed_after_distance_m_s(v[0], v[1])),
    formula("front_adhesion_utilisation_braking", UTILISATION, D::Ratio, |v| utilisation(v).0),
    formula("rear_adhesion_utilisation_braking", UTILISATION, D::Ratio, |v| utilisation(v).1),
    formula("drag", AIR, D::Force, |v| road_load::drag_n(v[0], v[1] * v[2], v[3])),
    formula("highway_rolling_resistance", &[("weight", Q(D::Force)), ("speed", Q(D::Speed))], D::Force,
        |v| v[0] * road_load::highway_rolling_resistance(v[1])),
    // The textbook takes sin θ for tan θ.
    formula("small_grade_resistance", &[("weight", Q(D::Force)), ("grade", Q(D::Slope))], D::Force, |v| v[0] * v[1]),
    formula("highway_road_load", ROAD_LOAD, D::Force,
        |v| road_load::drag_n(v[0], v[1] * v[2], v[3]) + v[4] * road_load::highway_rolling_resistance(v[3]) + v[4] * v[5]),
    formula("pressure_rolling_resistance", &[("pressure", Pressure), ("speed", Q(D::Speed))], D::Ratio,
        |v| road_load::pressure_rolling_resistance(v[0] / 1e5, v[1])),
    formula("tracked_turning_moment", TRACKED_MOMENT, D::Torque,
        |v| scrub::tracked_turning_moment_n_m(v[0], v[1], v[2])),
    formula("tracked_outer_force", TRACKED, D::Force, |v| tracked(v).0),
    formula("tracked_inner_force", TRACKED, D::Force, |v| tracked(v).1),
    formula("parking_scrub_arm", &[("offset", Q(D::Length)), ("patch", Q(D::Length))], D::Length,
        |v| scrub::parking_scrub_arm_m(v[0], v[1])),
    formula("parking_scrub_moment", &[("friction", Q(D::Ratio)), ("carried_mass", Q(D::Mass)), ("offset", Q(D::Length)), ("patch", Q(D::Length))], D::Torque,
        |v| scrub::parking_scrub_moment_n_m(v[0], v[1] * GRAVITY_M_S2, v[2], v[3])),
    formula("jacking_moment", &[("carried_mass", Q(D::Mass)), ("offset", Q(D::Length)), ("inclination", Q(D::Angle)), ("steer_angle", Q(D::Angle))], D::Torque,
        |v| scrub::jacking_moment_n_m(v[0] * GRAVITY_M_S2, v[1], v[2], v[3])),
    formula("gough_moment", &[("friction", Q(D::Ratio)), ("load", Q(D::Force)), ("pressure", Pressure)], D::Torque,
        |v| scrub::gough_moment_n_m(v[0], v[1], v[2])),
    formula("pivoting_moment_falls", PIVOTING, D::Ratio, pivoting_moment_falls),
    formula("worn_on_the_road", &[("mass", Q(D::Mass)), ("distance", Q(D::Length))], D::WornMass,
        |v| wear::worn_on_the_road_kg(v[0], v[1])),
    formula("round_patch_factor", &[], D::Ratio, |_| scrub::round_patch_factor()),
    formula("square_patch_factor", &[], D::Ratio, |_| scrub::square_patch_factor()),
    formula("mass_factor", SPINNING, D::Ratio, mass_factor),
    formula("tractive_force", SHAFT, D::Force, |v| motor::tractive_force_n(v[0], v[1], v[2], v[3])),
    formula("road_speed", ROAD_SPEED, D::Speed, |v| motor::road_speed_m_s(v[0], v[1], v[2], v[3])),
    formula("road_resistance", RESISTANCE, D::Force, |v| road_load::drag_n(v[0], v[1] * v[2], v[3]) + v[5] * v[4]),
    formula("acceleration_with_mass_factor", ACCELERATION, D::Acceleration, |v| (v[0] - v[1]) / (v[3] * v[2] / GRAVITY_M_S2)),
    formula("magic_longitudinal_peak", WHEEL_LOAD, D::Force, |v| magic_peak(magic_formula::Force::Longitudinal, v).1),
    formula("magic_longitudinal_peak_slip", WHEEL_LOAD, D::Ratio, |v| magic_peak(magic_formula::Force::Longitudinal, v).0 / 100.0),
    formula("magic_lateral_peak", WHEEL_LOAD, D::Force, |v| magic_peak(magic_formula::Force::Lateral, v).1),
    formula("magic_lateral_peak_slip_angle", WHEEL_LOAD, D::Angle, |v| magic_peak(magic_formula::Force::Lateral, v).0.to_radians()),
    formula("magic_aligning_peak", WHEEL_LOAD, D::Torque, |v| magic_peak(magic_formula::Force::Aligning, v).1),
    formula("brush_share", NORMALISED_SLIP, D::Ratio, |v| brush::share(v[0])),
    formula("brush_aligning_share", NORMALISED_SLIP, D::Ratio, |v| brush::aligning_share(v[0])),
    formula("brush_trail_share", NORMALISED_SLIP, D::Ratio, |v| brush::trail_share(v[0])),
    formula("cycle_length", &[], D::Time, |_| wltc::LENGTH_S as f64),
    formula("cycle_highest_speed", &[], D::Speed, |_| wltc::highest_km_h() / 3.6),
    formula("cycle_phase_sum", PHASE, D::Ratio, |v| wltc::phase_sum_km_h(phase(v))),
    formula("cycle_sum", &[], D::Ratio, |_| wltc::speeds_km_h().sum()),
    formula("cycle_phase_distance", PHASE, D::Distance, |v| wltc::phase_distance_m(phase(v))),
    formula("left_right_beats_front_rear", &[], D::Ratio, |_| f64::from(u8::from(pairs_turn_more() == Some(true)))),
    formula("disconnect_makes_the_split_worth_while", &[], D::Ratio, |_| f64::from(u8::from(saved("front") > 10.0 * saved("none").abs()))),
    formula("induction_idles_lighter", &[], D::Ratio, |_| f64::from(u8::from(idle("idle_loss_induction") < 0.5 * idle("idle_loss_permanent_magnet")))),
    formula("least_peak_friction", ONE_SURFACE, D::Ratio, |v| row(v).peak.0),
    formula("most_peak_friction", ONE_SURFACE, D::Ratio, |v| row(v).peak.1),
    formula("least_sliding_friction", ONE_SURFACE, D::Ratio, |v| row(v).sliding.0),
    formula("most_sliding_friction", ONE_SURFACE, D::Ratio, |v| row(v).sliding.1),
    formula("power_density", &[("power", Q(D::Power)), ("volume", Q(D::Volume))], D::PowerDensity,
        |v| packaging::power_density_w_m3(v[0], v[1])),
    formula("volume_of_two", TWO_PARTS, D::Volume, |v| packaging::volume_m3(v[0], &v[1..])),
    formula("power_density_of_two", TWO_PARTS, D::PowerDensity,
        |v| packaging::power_density_w_m3(v[0], packaging::volume_m3(v[0], &v[1..]))),
    formula("box_volume", BOX, D::Volume, |v| packaging::box_m3(v[0], v[1], v[2])),
    formula("power_density_of_box", POWER_AND_BOX, D::PowerDensity,
        |v| packaging::power_density_w_m3(v[0], packaging::box_m3(v[1], v[2], v[3]))),
];

/// 1 + (4·I_w + I_e·i²)/(m·r²), I_w from weight and radius of gyration of one wheel.
fn mass_factor(v: &[f64]) -> f64 {
    let wheel = v[1] / GRAVITY_M_S2 * v[2] * v[2];
    motor::mass_factor(
        v[0] / GRAVITY_M_S2,
        v[5],
        &[(4.0 * wheel, 1.0), (v[3], v[4])],
    )
}

/// 1 where a patch that slides along by some length per radian resists less than a standing one.
fn pivoting_moment_falls(v: &[f64]) -> f64 {
    let [friction, load_n, pressure_pa, width_m, slide_m] = [v[0], v[1], v[2], v[3], v[4]];
    let patch_m = (load_n / (pressure_pa * width_m), width_m);
    let driven = scrub::sliding_patch_moment_n_m(friction, load_n, patch_m, (slide_m, 0.0));
    f64::from(u8::from(
        driven < scrub::gough_moment_n_m(friction, load_n, pressure_pa),
    ))
}

/// Slip (per cent or degrees) at which force or moment is largest at a wheel load, and its value there.
fn magic_peak(force: magic_formula::Force, v: &[f64]) -> (f64, f64) {
    let factors = magic_formula::factors(force, v[0] / 1000.0);
    let slip = factors.peak_slip(40.0);
    (slip, factors.at(slip))
}

fn utilisation(v: &[f64]) -> (f64, f64) {
    traction::adhesion_utilisation_braking(v[0], v[1] / GRAVITY_M_S2, v[2], v[3])
}

fn tracked(v: &[f64]) -> (f64, f64) {
    let moment_n_m = scrub::tracked_turning_moment_n_m(v[0], v[1], v[2]);
    scrub::tracked_turning_forces_n(v[4], v[1], moment_n_m, v[3])
}

fn row(v: &[f64]) -> &'static surface::Surface {
    &surface::SURFACES[v[0] as usize]
}

/// The formula of a name.
#[must_use]
pub fn find(name: &str) -> Option<&'static Formula> {
    FORMULAS.iter().find(|formula| formula.name == name)
}

impl Formula {
    /// The arguments in SI, in order; `first` stands for the first of them where it is given.
    pub(super) fn values(
        &self,
        arguments: &[(String, String)],
        first: Option<(f64, D)>,
    ) -> Result<Vec<f64>, String> {
        let mut values = Vec::new();
        let mut takes = self.takes;
        if let Some((value, dimension)) = first {
            match takes.split_first() {
                Some(((_, Q(wanted)), rest)) if *wanted == dimension => {
                    values.push(value);
                    takes = rest;
                }
                _ => return Err("the topic's value is not what the formula takes first".into()),
            }
        }
        if let Some((extra, _)) = arguments
            .iter()
            .find(|(given, _)| !takes.iter().any(|(name, _)| name == given))
        {
            return Err(format!("the formula takes no {extra}"));
        }
        for (name, kind) in takes {
            let text = arguments
                .iter()
                .find(|(given, _)| given == name)
                .map(|(_, text)| text.as_str())
                .ok_or_else(|| format!("the formula lacks {name}"))?;
            values.push(value(*kind, text).ok_or_else(|| format!("{name} cannot be {text}"))?);
        }
        Ok(values)
    }
}

fn value(kind: Takes, text: &str) -> Option<f64> {
    match kind {
        Q(dimension) => units::parse(text, dimension).ok(),
        Pressure => {
            let (number, factor) = if let Some(number) = text.strip_suffix("kPa") {
                (number, 1e3)
            } else {
                (text.strip_suffix("bar")?, 1e5)
            };
            number.trim().parse::<f64>().ok().map(|n| n * factor)
        }
        Surface => surface::NAMES
            .iter()
            .position(|name| *name == text)
            .map(|at| at as f64),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_unique_and_arguments_are_asked_for_by_name() {
        for (at, formula) in FORMULAS.iter().enumerate() {
            let first = FORMULAS.iter().position(|f| f.name == formula.name);
            assert_eq!(first, Some(at), "{}", formula.name);
        }
        let drag = find("drag").unwrap();
        assert_eq!(
            drag.values(&[], None),
            Err("the formula lacks density".into())
        );
        let extra = [("colour".to_owned(), "red".to_owned())];
        assert_eq!(
            drag.values(&extra, None),
            Err("the formula takes no colour".into())
        );
    }
}
