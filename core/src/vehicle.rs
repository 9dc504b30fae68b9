//! The vehicle, validated once, and the four demo vehicles.
//!
//! All demo vehicles are invented and stand for no real car.

use crate::error::{Allowed, Problem};
use crate::input::{self, INPUTS};
use crate::scenario::Scenario;
use crate::units::Dimension;
use crate::{GRAVITY_M_S2, math};
use core::f64::consts::PI;

/// Names of the demo vehicles: a small city car, a family saloon, a heavy utility, a low sports car.
pub const DEMO_NAMES: &[&str] = &["kame", "esker", "moraine", "corrie"];

/// Values of the demo vehicles by path, in the order of [`DEMO_NAMES`]. SI. Invented.
#[rustfmt::skip]
const DEMO_VALUES: &[(&str, [f64; 4])] = &[
    ("vehicle.mass", [1180.0, 1850.0, 2950.0, 1980.0]),
    ("vehicle.wheelbase", [2.46, 2.86, 3.05, 2.75]),
    ("vehicle.cg_to_front_axle", [1.08, 1.46, 1.50, 1.45]),
    ("vehicle.cg_height", [0.53, 0.54, 0.68, 0.46]),
    ("vehicle.track_front", [1.48, 1.60, 1.72, 1.66]),
    ("vehicle.track_rear", [1.47, 1.60, 1.72, 1.65]),
    ("vehicle.wheel_radius", [0.300, 0.335, 0.395, 0.345]),
    ("vehicle.tyre_width_front", [0.185, 0.235, 0.265, 0.245]),
    ("vehicle.tyre_width_rear", [0.185, 0.235, 0.265, 0.305]),
    ("vehicle.tyre_pressure", [230e3, 250e3, 280e3, 250e3]),
    // 38°, 36°, 34°, 32°.
    ("vehicle.max_steer_angle", [19.0 * PI / 90.0, 18.0 * PI / 90.0, 17.0 * PI / 90.0, 16.0 * PI / 90.0]),
    ("vehicle.drag_area", [0.62, 0.56, 0.98, 0.52]),
    ("vehicle.rolling_resistance", [0.010, 0.009, 0.012, 0.010]),
    ("vehicle.ride_frequency_front", [1.3, 1.2, 1.3, 1.7]),
    ("vehicle.ride_frequency_rear", [1.5, 1.4, 1.6, 1.9]),
    ("vehicle.anti_squat_rear", [0.0, 0.3, 0.1, 0.4]),
    ("vehicle.tyre_friction", [0.95, 1.00, 0.95, 1.10]),
    ("vehicle.motor_torque", [180.0, 330.0, 300.0, 420.0]),
    ("vehicle.motor_power", [85e3, 180e3, 150e3, 260e3]),
    ("vehicle.motor_ratio", [9.6, 9.2, 12.5, 9.0]),
    ("vehicle.battery_energy", [42.0 * 3.6e6, 78.0 * 3.6e6, 120.0 * 3.6e6, 88.0 * 3.6e6]),
    ("vehicle.rotor_inertia", [0.03, 0.05, 0.05, 0.06]),
    ("vehicle.wheel_inertia", [0.8, 1.1, 1.9, 1.3]),
    ("vehicle.tyre_peak_slip", [0.10, 0.10, 0.11, 0.09]),
    ("vehicle.tyre_relaxation_length", [0.25, 0.30, 0.35, 0.30]),
    ("vehicle.cornering_stiffness_front", [42e3, 66e3, 92e3, 98e3]),
    ("vehicle.cornering_stiffness_rear", [44e3, 84e3, 104e3, 122e3]),
    ("vehicle.drive_efficiency", [0.90, 0.91, 0.89, 0.91]),
];

/// The value that a demo vehicle gives for a path, SI.
#[must_use]
pub fn demo_value(base: &str, path: &str) -> Option<f64> {
    demo_value_at(base, input::index(path)?)
}

/// Row of [`DEMO_VALUES`] for each input; past its end where the demo vehicles do not give it.
static DEMO_ROWS: [u8; INPUTS.len()] = {
    let mut rows = [u8::MAX; INPUTS.len()];
    let mut row = 0;
    while row < DEMO_VALUES.len() {
        let mut at = 0;
        while !same(DEMO_VALUES[row].0.as_bytes(), INPUTS[at].path.as_bytes()) {
            at += 1;
        }
        rows[at] = row as u8;
        row += 1;
    }
    rows
};

const fn same(one: &[u8], other: &[u8]) -> bool {
    let mut at = 0;
    while at < one.len() && at < other.len() && one[at] == other[at] {
        at += 1;
    }
    at == one.len() && at == other.len()
}

/// As [`demo_value`], of the input at an index.
pub(crate) fn demo_value_at(base: &str, input: usize) -> Option<f64> {
    let column = DEMO_NAMES.iter().position(|name| *name == base)?;
    let row = usize::from(*DEMO_ROWS.get(input)?);
    DEMO_VALUES.get(row).map(|(_, values)| values[column])
}

/// Body outline of a demo vehicle: a word of [`input::BODIES`].
#[must_use]
pub fn demo_body(base: &str) -> Option<&'static str> {
    let column = DEMO_NAMES.iter().position(|name| *name == base)?;
    input::BODIES.get(column).copied()
}

/// What the side view needs: mass, wheelbase, and where the centre of gravity (CG) is.
///
/// The CG lies between the axles; a value of this type cannot say otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chassis {
    mass_kg: f64,
    wheelbase_m: f64,
    cg_to_front_axle_m: f64,
    cg_height_m: f64,
}

impl Chassis {
    /// A chassis of mass m \[kg\], wheelbase L \[m\], CG a \[m\] behind the front axle and h \[m\]
    /// above the ground.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`] when a value is not finite or not in the range of the input table, or
    /// when the CG does not lie between the axles.
    ///
    /// ```
    /// use axlewright_core::vehicle::Chassis;
    /// let esker = Chassis::new(1850.0, 2.86, 1.46, 0.54)?;
    /// assert!((esker.cg_to_rear_axle_m() - 1.40).abs() < 1e-12);
    /// assert!(Chassis::new(1850.0, 2.86, 3.0, 0.54).is_err());
    /// # Ok::<(), axlewright_core::Problem>(())
    /// ```
    pub fn new(
        mass_kg: f64,
        wheelbase_m: f64,
        cg_to_front_axle_m: f64,
        cg_height_m: f64,
    ) -> Result<Self, Problem> {
        for (path, value) in [
            ("vehicle.mass", mass_kg),
            ("vehicle.wheelbase", wheelbase_m),
            ("vehicle.cg_to_front_axle", cg_to_front_axle_m),
            ("vehicle.cg_height", cg_height_m),
        ] {
            crate::scenario::check_range(path, value)?;
        }
        if cg_to_front_axle_m >= wheelbase_m {
            return Err(Problem::OutOfRange {
                field: "vehicle.cg_to_front_axle".into(),
                value: crate::format::plain(cg_to_front_axle_m) + " m",
                allowed: Allowed::Inside {
                    min: 0.0,
                    max: wheelbase_m,
                    dimension: Dimension::Length,
                },
            });
        }
        Ok(Self {
            mass_kg,
            wheelbase_m,
            cg_to_front_axle_m,
            cg_height_m,
        })
    }

    /// Reads the chassis of a scenario.
    ///
    /// # Errors
    /// Those of [`Chassis::new`], and [`Problem::Missing`].
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        Self::new(
            scenario.require("vehicle.mass")?,
            scenario.require("vehicle.wheelbase")?,
            scenario.require("vehicle.cg_to_front_axle")?,
            scenario.require("vehicle.cg_height")?,
        )
    }

    /// As [`Chassis::from_scenario`], with a CG on the ground where no height is given: for
    /// questions in which the height has no part.
    ///
    /// # Errors
    /// Those of [`Chassis::from_scenario`].
    pub fn without_height(scenario: &Scenario) -> Result<Self, Problem> {
        Self::new(
            scenario.require("vehicle.mass")?,
            scenario.require("vehicle.wheelbase")?,
            scenario.require("vehicle.cg_to_front_axle")?,
            scenario.number("vehicle.cg_height").unwrap_or(0.0),
        )
    }

    /// Mass m \[kg\].
    #[must_use]
    pub fn mass_kg(&self) -> f64 {
        self.mass_kg
    }

    /// Wheelbase L \[m\].
    #[must_use]
    pub fn wheelbase_m(&self) -> f64 {
        self.wheelbase_m
    }

    /// Distance of the CG behind the front axle, a \[m\].
    #[must_use]
    pub fn cg_to_front_axle_m(&self) -> f64 {
        self.cg_to_front_axle_m
    }

    /// Distance of the CG ahead of the rear axle, b = L − a \[m\].
    #[must_use]
    pub fn cg_to_rear_axle_m(&self) -> f64 {
        self.wheelbase_m - self.cg_to_front_axle_m
    }

    /// Height of the CG above the ground, h \[m\].
    #[must_use]
    pub fn cg_height_m(&self) -> f64 {
        self.cg_height_m
    }

    /// Weight W = m·g \[N\].
    #[must_use]
    pub fn weight_n(&self) -> f64 {
        self.mass_kg * GRAVITY_M_S2
    }
}

/// Mass and place of the CG where a scenario gives instead what each axle carries, as a scale shows it:
/// m = m_f + m_r, a = L·m_r/m.
pub(crate) fn chassis_not_given(scenario: &Scenario, path: &str) -> Option<f64> {
    if path != "vehicle.mass" && path != "vehicle.cg_to_front_axle" {
        return None;
    }
    let front_kg = scenario.given_number("vehicle.axle_load_front")?;
    let rear_kg = scenario.given_number("vehicle.axle_load_rear")?;
    if path == "vehicle.mass" {
        return Some(front_kg + rear_kg);
    }
    let wheelbase_m = scenario.number("vehicle.wheelbase")?;
    Some(cg_from_wheel_loads(wheelbase_m, front_kg, rear_kg).0)
}

/// Distances of the CG from the axles (a, b) \[m\], from the static loads of one wheel on each axle.
///
/// a = L·F_r/(F_f + F_r), b = L·F_f/(F_f + F_r).
/// Source: R. N. Jazar, Vehicle Dynamics: Theory and Application, ch. 2, eq. 2.19–2.20 (read).
///
/// ```
/// let (a, b) = axlewright_core::vehicle::cg_from_wheel_loads(2.34, 2000.0, 1800.0);
/// assert!((a - 1.1084).abs() < 1e-4 && (b - 1.2316).abs() < 1e-4);
/// ```
#[must_use]
pub fn cg_from_wheel_loads(wheelbase_m: f64, front_n: f64, rear_n: f64) -> (f64, f64) {
    let total_n = front_n + rear_n;
    (
        wheelbase_m * rear_n / total_n,
        wheelbase_m * front_n / total_n,
    )
}

/// What the air does: drag and lift areas and the density.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Air {
    /// Drag area C_d·A \[m²\].
    pub drag_area_m2: f64,
    /// Height at which the drag acts, h_d \[m\].
    pub drag_height_m: f64,
    /// Lift area on the front axle, C_l·A_f \[m²\]; negative is downforce.
    pub lift_area_front_m2: f64,
    /// Lift area on the rear axle, C_l·A_r \[m²\]; negative is downforce.
    pub lift_area_rear_m2: f64,
    /// Density ρ \[kg/m³\].
    pub density_kg_m3: f64,
}

/// Forces of the air at one speed.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct AirForces {
    /// Drag D \[N\], rearward positive.
    pub drag_n: f64,
    /// Height at which the drag acts \[m\].
    pub drag_height_m: f64,
    /// Lift on the front axle \[N\], upward positive.
    pub lift_front_n: f64,
    /// Lift on the rear axle \[N\], upward positive.
    pub lift_rear_n: f64,
}

impl Air {
    /// Reads the air of a scenario; what is not given does not act. Drag acts at CG height unless
    /// its own height is given.
    #[must_use]
    pub fn from_scenario(scenario: &Scenario) -> Self {
        let number = |path| scenario.number(path).unwrap_or(0.0);
        Self {
            drag_area_m2: number("vehicle.drag_area"),
            drag_height_m: scenario
                .number("vehicle.drag_height")
                .or_else(|| scenario.number("vehicle.cg_height"))
                .unwrap_or(0.0),
            lift_area_front_m2: number("vehicle.lift_area_front"),
            lift_area_rear_m2: number("vehicle.lift_area_rear"),
            density_kg_m3: number("air.density"),
        }
    }

    /// Forces at speed V \[m/s\]: ½·ρ·V² times each area.
    #[must_use]
    pub fn forces(&self, speed_m_s: f64) -> AirForces {
        // q = ½·ρ·V²
        let pressure_pa = 0.5 * self.density_kg_m3 * speed_m_s * speed_m_s;
        AirForces {
            drag_n: pressure_pa * self.drag_area_m2,
            drag_height_m: self.drag_height_m,
            lift_front_n: pressure_pa * self.lift_area_front_m2,
            lift_rear_n: pressure_pa * self.lift_area_rear_m2,
        }
    }
}

/// A slope of the road, from its grade G = tan θ (rise over run, uphill positive).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slope {
    /// Slope angle θ \[rad\].
    pub angle_rad: f64,
    /// sin θ.
    pub sin: f64,
    /// cos θ.
    pub cos: f64,
}

impl Slope {
    /// The slope of a grade.
    #[must_use]
    pub fn from_grade(grade: f64) -> Self {
        let angle_rad = math::atan(grade);
        let cos = 1.0 / math::hypot(1.0, grade);
        Self {
            angle_rad,
            sin: grade * cos,
            cos,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn demo_vehicles_lie_in_the_accepted_ranges() {
        for (path, values) in DEMO_VALUES {
            assert!(input::find(path).is_some(), "{path}");
            for value in values {
                assert_eq!(crate::scenario::check_range(path, *value), Ok(()), "{path}");
            }
        }
    }

    #[test]
    fn a_cg_outside_the_wheelbase_is_refused() {
        for a in [2.5, 2.6, -0.1, 0.0, f64::NAN] {
            let refusal = Chassis::new(1000.0, 2.5, a, 0.5)
                .err()
                .map(|p| p.field().to_owned());
            assert_eq!(refusal.as_deref(), Some("vehicle.cg_to_front_axle"), "{a}");
        }
    }
}
