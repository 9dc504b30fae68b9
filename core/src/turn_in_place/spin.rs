//! The spin-up: a car that stands begins to turn in place, with the torque that its motors have.
//!
//! It is a run of the planar model. The motors of each wheel bring it to its speed and hold it there, as
//! far as their torque goes; wheels without a motor of their own roll freely. The tyres have their
//! sliding friction, as in the slow turn, and wind up before they slide. Drag and rolling resistance are
//! left out. Angles are anticlockwise; on a slope the car faces uphill at first.

use super::Question;
use super::judge::driven_apart;
use super::patches::{Motion, settled};
use super::report::{Numbers, numbers};
use super::sheet_more::found;
use crate::error::Problem;
use crate::integrate::{MOST, State};
use crate::motor::Envelope;
use crate::planar::{self, Car, Controls, STATES, Tyre};
use crate::scenario::Scenario;
use crate::topic::{ReadingValue, Readings};
use crate::tyre::SlipCurve;
use crate::units::Dimension as D;
use crate::vehicle::Air;
use crate::working::Sheet;

use super::spin_run::{Mark, Run, course};

/// Time in which a motor brings its wheel to the speed that is asked for \[s\].
const WHEEL_TIME_S: f64 = 0.05;
/// Least inertia of a wheel over m·R²: below it the equations say nothing more and only take longer.
const LEAST_SPINNING: f64 = 5e-4;

/// Places in the state, after those of the planar model: work of the motors at the wheels, and the heat
/// of sliding.
pub(super) const MOTOR_WORK: usize = STATES;
pub(super) const HEAT: usize = STATES + 1;

/// A spin-up, with all that does not change during it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spin {
    /// The car on its ground.
    pub car: Car,
    /// One motor.
    pub motor: Envelope,
    /// Ratio between a motor and its wheel, i.
    pub ratio: f64,
    /// Efficiency of the gears η.
    pub gear_efficiency: f64,
    /// Whether each wheel of the axle has a motor of its own, front and rear.
    pub driven: [bool; 2],
    /// Speeds that the wheels are to have \[rad/s\].
    pub wheel_speeds_rad_s: [f64; 4],
    /// Wheel speed over yaw rate of the slow turn, κ \[m\].
    pub speed_ratio_m: f64,
    /// Yaw rate that is asked for \[rad/s\].
    pub yaw_rate_rad_s: f64,
}

impl Spin {
    /// Reads the spin-up of a scenario; none where wheel radius or motor is not given.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(
        scenario: &Scenario,
        question: &Question,
    ) -> Result<Option<Self>, Problem> {
        Self::of_slow_turn(scenario, question, &numbers(question)?)
    }

    /// The same, where the slow turn has been solved already.
    pub(super) fn of_slow_turn(
        scenario: &Scenario,
        question: &Question,
        numbers: &Numbers,
    ) -> Result<Option<Self>, Problem> {
        let number = |path| scenario.number(path);
        let (Some(radius_m), Some(ratio), Some(_)) = (
            question.wheel_radius_m,
            number("vehicle.motor_ratio"),
            number("vehicle.motor_torque"),
        ) else {
            return Ok(None);
        };
        let driven = driven_apart(scenario.layout());
        let chassis = question.chassis;
        let yaw_rate_rad_s = number("turn_in_place.yaw_rate").unwrap_or(1.0);
        let wheel_n_m = number("vehicle.wheel_inertia").unwrap_or(0.0);
        let rotor = number("vehicle.rotor_inertia").unwrap_or(0.0) * ratio * ratio;
        let least = LEAST_SPINNING * chassis.mass_kg() * radius_m * radius_m;
        let peak_slip = number("vehicle.tyre_peak_slip").unwrap_or(0.1);
        let tyre = |at: usize| Tyre {
            friction: question.sides[at % 2],
            sensitivity: number("vehicle.tyre_load_sensitivity").unwrap_or(0.0),
            reference_n: number("vehicle.tyre_reference_load").unwrap_or(0.25 * chassis.weight_n()),
            peak_slip: [peak_slip; 2],
            curve: Some(SlipCurve::flat(peak_slip)),
        };
        let inertia = |at: usize| {
            let rotor = if driven[at / 2] { rotor } else { 0.0 };
            (wheel_n_m + rotor).max(least)
        };
        let speed = |at: usize| {
            let factor = if at < 2 {
                question.front.speed_factor
            } else {
                1.0
            };
            let side = if at.is_multiple_of(2) { -1.0 } else { 1.0 };
            side * factor * numbers.speed_ratio_m * yaw_rate_rad_s / radius_m
        };
        let of_all = [0, 1, 2, 3];
        Ok(Some(Self {
            car: Car {
                chassis,
                // Common practice: I_z = m·a·b.
                yaw_inertia_kg_m2: number("vehicle.yaw_inertia").unwrap_or(
                    chassis.mass_kg() * chassis.cg_to_front_axle_m() * chassis.cg_to_rear_axle_m(),
                ),
                tracks_m: [question.front.track_m, question.rear.track_m],
                roll_front_share: number("vehicle.roll_stiffness_front_share").unwrap_or(0.5),
                radius_m,
                wheel_inertias_kg_m2: of_all.map(inertia),
                rolling_resistance: 0.0,
                air: Air::default(),
                slope: question.slope,
                tyres: of_all.map(tyre),
                relaxation_m: number("vehicle.tyre_relaxation_length").unwrap_or(0.3),
            },
            motor: Envelope::from_scenario(scenario)?,
            ratio,
            gear_efficiency: number("vehicle.gear_efficiency").unwrap_or(1.0),
            driven,
            wheel_speeds_rad_s: of_all.map(speed),
            speed_ratio_m: numbers.speed_ratio_m,
            yaw_rate_rad_s,
        }))
    }

    /// Rates of a state.
    pub(super) fn rates(&self, state: &State, rates: &mut State) {
        let body = body_of(state);
        let mut change = [0.0; STATES];
        let free = Controls::steered(0.0, 0.0);
        let instant = self.car.rates_and_instant(&free, &body, &mut change);
        *rates = [0.0; MOST];
        for wheel in 0..4 {
            if !self.driven[wheel / 2] {
                continue;
            }
            let inertia = self.car.wheel_inertias_kg_m2[wheel];
            let at = planar::WHEEL + wheel;
            // The torque that brings the wheel to its speed: T = R·F + J·(ω* − ω)/τ, as far as it goes.
            let wanted = (self.wheel_speeds_rad_s[wheel] - body[at]) / WHEEL_TIME_S - change[at];
            let has_n_m =
                self.motor.torque(body[at] * self.ratio).0 * self.ratio * self.gear_efficiency;
            let torque_n_m =
                crate::math::smaller(crate::math::larger(inertia * wanted, -has_n_m), has_n_m);
            change[at] += torque_n_m / inertia;
            rates[MOTOR_WORK] += torque_n_m * body[at];
        }
        rates[..STATES].copy_from_slice(&change);
        rates[HEAT] = instant.slip_heat_w;
    }

    /// The motion in which the spin-up ends on level ground: the slow turn's balance with the force that
    /// carries the CG round, and with the loads that this force moves. Motors are taken to hold their
    /// speeds.
    #[must_use]
    pub fn steady_motion(&self, question: &Question) -> Motion {
        let chassis = &self.car.chassis;
        let (mass_kg, height_m) = (chassis.mass_kg(), chassis.cg_height_m());
        let mut patches = question.patches(self.driven, 1.0);
        let mut motion = Motion::default();
        for _ in 0..30 {
            let (u, v, r) = (motion.forward_m_s, motion.left_m_s, motion.yaw_rad_s);
            let (along_n, across_n) = (-mass_kg * v * r, mass_kg * u * r);
            let moved_n = along_n * height_m / chassis.wheelbase_m();
            for (at, patch) in patches.iter_mut().enumerate() {
                let (axle_n, share, track_m) = if at < 2 {
                    let share = self.car.roll_front_share;
                    (
                        question.front.load_n - moved_n,
                        share,
                        question.front.track_m,
                    )
                } else {
                    let share = 1.0 - self.car.roll_front_share;
                    (question.rear.load_n + moved_n, share, question.rear.track_m)
                };
                let right_n = share * height_m / track_m * across_n;
                let load_n = 0.5 * axle_n
                    + if at.is_multiple_of(2) {
                        -right_n
                    } else {
                        right_n
                    };
                let tyre = &self.car.tyres[at];
                patch.grip_n = tyre.friction
                    * load_n
                    * crate::surface::load_factor(tyre.sensitivity, load_n, tyre.reference_n);
                patch.tread_m_s =
                    self.driven[at / 2].then_some(self.car.radius_m * self.wheel_speeds_rad_s[at]);
            }
            motion = settled(&patches, 0.0, mass_kg);
        }
        motion
    }
}

/// The part of a state that the planar model knows.
pub(super) fn body_of(state: &State) -> planar::State {
    core::array::from_fn(|at| state[at])
}

/// Angles that are marked, and the names of their time and energy.
#[rustfmt::skip] // One mark, one line: it is read as a table.
const MARKS: [(&str, &str, &str, &str); 3] = [
    ("spin.time_to_90", "t_90", "spin.energy_to_90", "E_90"),
    ("spin.time_to_180", "t_180", "spin.energy_to_180", "E_180"),
    ("spin.time_to_360", "t_360", "spin.energy_to_360", "E_360"),
];

/// Energy from the motors' shafts up to a mark: all that it went into \[J\].
fn energy_j(spin: &Spin, mark: &Mark) -> f64 {
    (mark.kinetic_j + mark.heat_j + mark.climb_j) / spin.gear_efficiency
}

/// The mark at which the way off is told: the full turn.
fn full_turn(run: &Run) -> Option<&Mark> {
    run.marks[2].as_ref()
}

pub(super) fn add(readings: &mut Readings, spin: &Spin) {
    let course = course(spin);
    let run = &course.run;
    let word = ReadingValue::Word(run.outcome.word());
    readings.add("spin.outcome", "", word);
    for (mark, (time, ..)) in run.marks.iter().zip(MARKS) {
        readings.optional(time, mark.as_ref().map(|mark| mark.time_s));
    }
    for (mark, (_, _, energy, _)) in run.marks.iter().zip(MARKS) {
        readings.optional(energy, mark.as_ref().map(|mark| energy_j(spin, mark)));
    }
    readings.optional("spin.steady_yaw_rate", run.steady_yaw_rad_s);
    readings.optional("spin.time_to_steady", run.steady_after_s);
    readings.optional("spin.way_off", full_turn(run).map(Mark::way_off_m));
}

pub(super) fn write(sheet: &mut Sheet, spin: &Spin) {
    let course = course(spin);
    let run = &course.run;
    sheet.source("source.spin");
    sheet.given("η", spin.gear_efficiency, D::Ratio);
    for (mark, (time, time_symbol, energy, energy_symbol)) in run.marks.iter().zip(MARKS) {
        let Some(mark) = mark else { continue };
        sheet.given("ψ_1", mark.heading_rad, D::Angle);
        sheet.given("r_m", mark.heading_rad / mark.time_s, D::YawRate);
        let about = "step.spin_time";
        sheet.satisfied(about, time_symbol, time, "ψ_1/r_m", mark.time_s, D::Time);
        for (symbol, value) in [
            ("E_m", mark.kinetic_j),
            ("Q_s", mark.heat_j),
            ("W_G", mark.climb_j),
        ] {
            sheet.given(symbol, value, D::Energy);
        }
        let about = "step.spin_energy";
        let right = "(E_m + Q_s + W_G)/η";
        sheet.step(
            about,
            energy_symbol,
            energy,
            right,
            energy_j(spin, mark),
            D::Energy,
        );
    }
    if let Some(yaw_rad_s) = run.steady_yaw_rad_s {
        let path = "spin.steady_yaw_rate";
        found(
            sheet,
            "step.spin_steady",
            "r_s",
            path,
            yaw_rad_s,
            D::YawRate,
        );
    }
    if let Some(time_s) = run.steady_after_s {
        let path = "spin.time_to_steady";
        found(sheet, "step.spin_settles", "t_s", path, time_s, D::Time);
    }
    if let Some(mark) = full_turn(run) {
        sheet.given("x_1", mark.place_m.0, D::Length);
        sheet.given("y_1", mark.place_m.1, D::Length);
        let right = "sqrt(x_1² + y_1²)";
        let way_m = mark.way_off_m();
        sheet.step(
            "step.spin_way_off",
            "e",
            "spin.way_off",
            right,
            way_m,
            D::Length,
        );
    }
}
