//! Fitting the motors in: how large a drive unit is, and what room the wheels leave it.
//!
//! A drive unit is motor, inverter, gears and differential together. Each has a power density, so each
//! takes a volume, and the volumes add. The room between the wheels ends where a wheel sweeps when it is
//! steered, so two units are harder to fit between steered wheels than between fixed ones.
//!
//! Model: the outer box of a unit has a given length and height and is as wide as its volume needs. A
//! steered wheel turns about its own middle; rails, suspension and clearance are widths that are given.

mod report;

pub use report::TOPIC;

use crate::error::Problem;
use crate::layout::Layout;
use crate::math;
use crate::scenario::Scenario;
use core::f64::consts::FRAC_PI_2;

/// Power density above which a whole drive unit (motor, inverter, gears and differential together) is
/// extraordinary \[W/m³\]: 16 kW/L. Common practice, no source.
pub const EXTRAORDINARY_W_M3: f64 = 16e6;

/// Volume of parts that all carry the same power \[m³\]: V = ΣP/p.
///
/// ```
/// use axlewright_core::packaging::volume_m3;
/// // 100 kW/L of inverter and 50 kW/L of motor.
/// let together_w_m3 = 100e3 / volume_m3(100e3, &[100e6, 50e6]);
/// assert!((together_w_m3 / 1e6 - 33.3).abs() < 0.05);
/// ```
#[must_use]
pub fn volume_m3(power_w: f64, densities_w_m3: &[f64]) -> f64 {
    densities_w_m3.iter().map(|density| power_w / density).sum()
}

/// Power density \[W/m³\]: p = P/V.
#[must_use]
pub fn power_density_w_m3(power_w: f64, volume_m3: f64) -> f64 {
    power_w / volume_m3
}

/// Volume of an outer box \[m³\].
#[must_use]
pub fn box_m3(length_m: f64, width_m: f64, height_m: f64) -> f64 {
    length_m * width_m * height_m
}

/// A wheel seen from above.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wheel {
    /// Radius R \[m\]; from above the wheel is 2·R long.
    pub radius_m: f64,
    /// Width of the tyre w \[m\].
    pub width_m: f64,
    /// Steer angle at full lock, to either side δ_m \[rad\]; 0 for a wheel that is not steered.
    pub steer_rad: f64,
}

/// Which part of a wheel comes nearest to a drive unit at full lock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Nearest {
    /// It is not steered: its inner face.
    Face,
    /// Its inner face, where the unit ends.
    SlantedFace,
    /// Its inner corner.
    Corner,
    /// Its inner corner on the way, before full lock: a wheel that is steered very far.
    CornerInPassing,
}

impl Wheel {
    /// Half the diagonal \[m\] and its angle from the wheel's plane \[rad\].
    fn corner(&self) -> (f64, f64) {
        let half_m = 0.5 * self.width_m;
        (
            math::hypot(self.radius_m, half_m),
            math::atan(half_m / self.radius_m),
        )
    }

    /// How far the wheel reaches inward of its own middle, anywhere along a unit that lies `length_m`
    /// along the car, midway over the axle \[m\].
    ///
    /// ```
    /// use axlewright_core::packaging::Wheel;
    /// let wheel = Wheel { radius_m: 0.3, width_m: 0.2, steer_rad: 0.0 };
    /// assert!((wheel.reach_m(0.4).0 - 0.1).abs() < 1e-12);
    /// let steered = Wheel { steer_rad: 0.6, ..wheel };
    /// assert!(steered.reach_m(0.4).0 > 0.2);
    /// ```
    #[must_use]
    pub fn reach_m(&self, length_m: f64) -> (f64, Nearest) {
        let half_m = 0.5 * self.width_m;
        if self.steer_rad <= 0.0 {
            return (half_m, Nearest::Face);
        }
        let (sin, cos) = (math::sin(self.steer_rad), math::cos(self.steer_rad));
        let (diagonal_m, angle_rad) = self.corner();
        if self.steer_rad + angle_rad >= FRAC_PI_2 {
            return (diagonal_m, Nearest::CornerInPassing);
        }
        // Where the corner is along the car: beyond it the unit no longer meets the inner face.
        let corner_m = self.radius_m * cos - half_m * sin;
        if 0.5 * length_m < corner_m {
            let reach_m = 0.5 * length_m * sin / cos + half_m / cos;
            return (reach_m, Nearest::SlantedFace);
        }
        (self.radius_m * sin + half_m * cos, Nearest::Corner)
    }

    /// Area that the wheel sweeps from full lock to full lock \[m²\]: the union of all its places.
    ///
    /// Up to the angle of its diagonal the wheel sweeps four sectors beside what it covers anyway;
    /// beyond it the sectors of the front corners, and of the rear ones, have grown together.
    #[must_use]
    pub fn swept_area_m2(&self) -> f64 {
        let (diagonal_m, angle_rad) = self.corner();
        let (square, steer) = (diagonal_m * diagonal_m, self.steer_rad);
        let face = self.radius_m * self.width_m;
        let tan = math::sin(steer) / math::cos(steer);
        if steer + angle_rad >= FRAC_PI_2 {
            return core::f64::consts::PI * square;
        }
        if steer < angle_rad {
            // 2·R·w + ρ²·(4·δ − 2·tan δ)
            2.0 * face + square * (4.0 * steer - 2.0 * tan)
        } else {
            // 2·ρ²·(δ + atan(w/(2·R))) + R·w − w²/2·tan δ
            2.0 * square * (steer + angle_rad) + face - 0.5 * self.width_m * self.width_m * tan
        }
    }
}

/// What bounds the room at an axle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// The wheels, with clearance and structure beside them.
    Wheels,
    /// The half shafts, which must not be shorter.
    HalfShafts,
}

/// What the room between the wheels must hold besides drive units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Length of a unit along the car \[m\].
    pub unit_length_m: f64,
    /// Clearance beside a wheel \[m\].
    pub clearance_m: f64,
    /// Rails and suspension beside a wheel \[m\].
    pub structure_m: f64,
    /// Least distance between the middle of a wheel and a unit \[m\].
    pub half_shaft_m: f64,
}

/// The room between the wheels of an axle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// The wheel.
    pub wheel: Wheel,
    /// Track width t \[m\].
    pub track_m: f64,
    /// How far a wheel reaches inward \[m\].
    pub reach_m: f64,
    /// With which part.
    pub nearest: Nearest,
    /// What is free for drive units \[m\]; less than nothing where the wheels leave no room.
    pub free_m: f64,
    /// What bounds it.
    pub bound: Bound,
}

impl Room {
    /// The room between two wheels.
    #[must_use]
    pub fn new(wheel: Wheel, track_m: f64, around: &Surroundings) -> Self {
        let (reach_m, nearest) = wheel.reach_m(around.unit_length_m);
        let wheels_m = reach_m + around.clearance_m + around.structure_m;
        let bound = if wheels_m >= around.half_shaft_m {
            Bound::Wheels
        } else {
            Bound::HalfShafts
        };
        Self {
            wheel,
            track_m,
            reach_m,
            nearest,
            // B = t − 2·max(e + c + s, l_h)
            free_m: track_m - 2.0 * wheels_m.max(around.half_shaft_m),
            bound,
        }
    }
}

/// One drive unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// Power of its motor P \[W\].
    pub power_w: f64,
    /// Volume of motor, inverter, gears and differential V \[m³\].
    pub volume_m3: f64,
    /// Width of its outer box \[m\].
    pub width_m: f64,
    /// Gap that a second one beside it needs \[m\].
    pub gap_m: f64,
}

impl Unit {
    /// Width that so many units need side by side \[m\].
    #[must_use]
    pub fn side_by_side_m(&self, units: u8) -> f64 {
        let gaps = f64::from(units.saturating_sub(1));
        f64::from(units) * self.width_m + gaps * self.gap_m
    }
}

/// What the topic knows of a vehicle: as much as the scenario gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vehicle {
    /// Power densities of motor, inverter, and gears with differential \[W/m³\].
    pub densities_w_m3: [f64; 3],
    /// Power over volume of the whole unit \[W/m³\].
    pub density_w_m3: f64,
    /// Share of its outer box that a unit fills k_v.
    pub box_fill: f64,
    /// Height of a unit \[m\].
    pub unit_height_m: f64,
    /// Surroundings of the units.
    pub around: Surroundings,
    /// A drive unit, where the motor's power is given.
    pub unit: Option<Unit>,
    /// Wheels, front and rear; no front one without radius and steer angle.
    pub wheels: [Option<Wheel>; 2],
    /// Rooms, front and rear; none without a wheel and a track width.
    pub rooms: [Option<Room>; 2],
}

/// Whether a layout fits, and what is in the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It fits.
    Fits,
    /// The front axle is too narrow for its units.
    FrontTooNarrow,
    /// The rear axle is.
    RearTooNarrow,
    /// Both are.
    BothTooNarrow,
}

impl Verdict {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fits => "units_fit",
            Self::FrontTooNarrow => "front_too_narrow",
            Self::RearTooNarrow => "rear_too_narrow",
            Self::BothTooNarrow => "both_too_narrow",
        }
    }
}

impl Vehicle {
    /// Reads a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let number = |path| scenario.number(path);
        let densities_w_m3 = [
            scenario.require("packaging.motor_power_density")?,
            scenario.require("packaging.inverter_power_density")?,
            scenario.require("packaging.gear_power_density")?,
        ];
        let around = Surroundings {
            unit_length_m: scenario.require("packaging.unit_length")?,
            clearance_m: scenario.require("packaging.clearance")?,
            structure_m: scenario.require("packaging.structure_width")?,
            half_shaft_m: scenario.require("packaging.half_shaft_length")?,
        };
        let box_fill = scenario.require("packaging.box_fill")?;
        let unit_height_m = scenario.require("packaging.unit_height")?;
        let gap_m = scenario.require("packaging.gap")?;
        let unit = number("vehicle.motor_power").map(|power_w| {
            let volume_m3 = volume_m3(power_w, &densities_w_m3);
            Unit {
                power_w,
                volume_m3,
                // w_u = V/(k_v·l_u·h_u)
                width_m: volume_m3 / box_m3(box_fill, around.unit_length_m, unit_height_m),
                gap_m,
            }
        });
        let radius = number("vehicle.wheel_radius");
        let steer = number("vehicle.max_steer_angle");
        let front_width_m = scenario.require("vehicle.tyre_width_front")?;
        let front = radius.zip(steer).map(|(radius_m, steer_rad)| Wheel {
            radius_m,
            width_m: front_width_m,
            steer_rad,
        });
        // A wheel that is not steered reaches in by half its width, whatever its radius.
        let rear = Wheel {
            radius_m: radius.unwrap_or(0.0),
            width_m: scenario.require("vehicle.tyre_width_rear")?,
            steer_rad: 0.0,
        };
        let wheels = [front, Some(rear)];
        let tracks = [number("vehicle.track_front"), number("vehicle.track_rear")];
        let room = |axle: usize| {
            let (wheel, track_m) = wheels[axle].zip(tracks[axle])?;
            Some(Room::new(wheel, track_m, &around))
        };
        Ok(Self {
            densities_w_m3,
            density_w_m3: 1.0 / volume_m3(1.0, &densities_w_m3),
            box_fill,
            unit_height_m,
            around,
            unit,
            wheels,
            rooms: [room(0), room(1)],
        })
    }

    /// What is left at an axle (0 front, 1 rear) with so many units \[m\]; negative where they do not fit.
    ///
    /// ```
    /// use axlewright_core::{Scenario, packaging::Vehicle};
    /// let mut scenario = Scenario::default();
    /// scenario.set("vehicle.base", "corrie")?;
    /// let vehicle = Vehicle::from_scenario(&scenario)?;
    /// // Two units fit between wheels that go straight, and not between wheels that are steered.
    /// assert!(vehicle.left_m(1, 2) > Some(0.0) && vehicle.left_m(0, 2) < Some(0.0));
    /// # Ok::<(), axlewright_core::Problem>(())
    /// ```
    #[must_use]
    pub fn left_m(&self, axle: usize, units: u8) -> Option<f64> {
        let (room, unit) = self.rooms[axle].zip(self.unit)?;
        Some(room.free_m - unit.side_by_side_m(units))
    }

    /// What is left at the driven axle of a layout that has least \[m\], and whether the layout fits.
    #[must_use]
    pub fn judge(&self, layout: Layout) -> Option<(f64, Verdict)> {
        let left = |axle, units| match units {
            0 => Some(f64::INFINITY),
            _ => self.left_m(axle, units),
        };
        let front_m = left(0, layout.front().motors())?;
        let rear_m = left(1, layout.rear().motors())?;
        let verdict = match (front_m < 0.0, rear_m < 0.0) {
            (false, false) => Verdict::Fits,
            (true, false) => Verdict::FrontTooNarrow,
            (false, true) => Verdict::RearTooNarrow,
            (true, true) => Verdict::BothTooNarrow,
        };
        Some((front_m.min(rear_m), verdict))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn demo(fields: &[(&str, &str)]) -> Vehicle {
        let mut scenario = Scenario::default();
        for (path, text) in fields {
            scenario.set(path, text).unwrap();
        }
        Vehicle::from_scenario(&scenario).unwrap()
    }

    /// Whether a point (ahead, inward) of the wheel's middle lies under the wheel at a steer angle.
    fn covers(wheel: &Wheel, steer_rad: f64, (ahead_m, inward_m): (f64, f64)) -> bool {
        let (sin, cos) = (math::sin(steer_rad), math::cos(steer_rad));
        let along_m = ahead_m * cos + inward_m * sin;
        let across_m = inward_m * cos - ahead_m * sin;
        along_m.abs() <= wheel.radius_m && across_m.abs() <= 0.5 * wheel.width_m
    }

    fn swept(wheel: &Wheel, point: (f64, f64)) -> bool {
        (-200..=200)
            .map(|step| f64::from(step) / 200.0 * wheel.steer_rad)
            .any(|steer_rad| covers(wheel, steer_rad, point))
    }

    #[test]
    fn reach_and_area_are_those_of_a_wheel_that_is_turned_in_small_steps() {
        for (radius_m, width_m, steer_rad) in [
            (0.30, 0.185, 0.663),
            (0.345, 0.305, 0.2),
            (0.335, 0.235, 0.628),
            (0.335, 0.235, 0.05),
            (0.2, 0.5, 1.0),
        ] {
            let wheel = Wheel {
                radius_m,
                width_m,
                steer_rad,
            };
            let cell_m = 0.004;
            let (mut cells, mut reach_m) = (0.0, 0.0_f64);
            for row in -110..=110 {
                for column in -110..=110 {
                    let point = (f64::from(row) * cell_m, f64::from(column) * cell_m);
                    if swept(&wheel, point) {
                        cells += 1.0;
                        if point.0.abs() <= 0.225 {
                            reach_m = reach_m.max(point.1);
                        }
                    }
                }
            }
            let area_m2 = cells * cell_m * cell_m;
            let want_m2 = wheel.swept_area_m2();
            assert!(
                (area_m2 / want_m2 - 1.0).abs() < 0.02,
                "{wheel:?}: {area_m2}, {want_m2}"
            );
            let (want_m, _) = wheel.reach_m(0.45);
            assert!(
                (reach_m - want_m).abs() < 2.0 * cell_m,
                "{wheel:?}: {reach_m}, {want_m}"
            );
        }
    }

    #[test]
    fn the_pieces_of_reach_and_area_meet() {
        let wheel = |steer_rad| Wheel {
            radius_m: 0.3,
            width_m: 0.2,
            steer_rad,
        };
        let angle_rad = math::atan(0.1 / 0.3);
        for steer_rad in [angle_rad, FRAC_PI_2 - angle_rad] {
            let (below, above) = (wheel(steer_rad - 1e-9), wheel(steer_rad + 1e-9));
            assert!((below.swept_area_m2() - above.swept_area_m2()).abs() < 1e-8);
            assert!((below.reach_m(0.45).0 - above.reach_m(0.45).0).abs() < 1e-8);
        }
        assert!((wheel(0.0).swept_area_m2() - 0.12).abs() < 1e-12);
    }

    #[test]
    fn two_units_are_harder_to_fit_between_steered_wheels() {
        for base in crate::vehicle::DEMO_NAMES {
            let [front, rear] = demo(&[("vehicle.base", base)]).rooms.map(Option::unwrap);
            assert!(front.free_m < rear.free_m, "{base}: {front:?}, {rear:?}");
        }
    }

    #[test]
    fn a_layout_is_judged_by_the_axle_that_has_least_left() {
        let corrie = demo(&[("vehicle.base", "corrie")]);
        let (left_m, verdict) = corrie.judge(Layout::F2R2).unwrap();
        let least_m = corrie
            .left_m(0, 2)
            .unwrap()
            .min(corrie.left_m(1, 2).unwrap());
        assert!((left_m - least_m).abs() < 1e-12);
        assert_eq!(verdict == Verdict::Fits, left_m >= 0.0);
        let strong = demo(&[
            ("vehicle.base", "corrie"),
            ("vehicle.motor_power", "5000 kW"),
        ]);
        let verdict = |layout| strong.judge(layout).unwrap().1;
        assert_eq!(verdict(Layout::F1R1), Verdict::BothTooNarrow);
        assert_eq!(verdict(Layout::R2), Verdict::RearTooNarrow);
        assert_eq!(verdict(Layout::F1), Verdict::FrontTooNarrow);
    }

    #[test]
    fn what_is_not_given_is_not_answered() {
        let track = demo(&[("vehicle.track_rear", "1.6 m")]);
        assert!(track.rooms[1].is_some() && track.rooms[0].is_none());
        assert_eq!(track.judge(Layout::R1), None);
        let power = demo(&[
            ("vehicle.track_rear", "1.6 m"),
            ("vehicle.motor_power", "100 kW"),
        ]);
        assert!(power.judge(Layout::R1).is_some());
        assert_eq!(power.judge(Layout::F1), None);
    }
}
