//! How many motors, and where: like motors on two axles share their torque as their number, and the
//! axles share the load as the acceleration has it. The two meet at one acceleration.
//!
//! Model: the traction limits of [`crate::traction`], and the launch of [`crate::launch`] with tyres
//! that grip at once. The vehicle weighs the same with any layout; what more motors weigh is told beside.

mod report;

pub use report::{COLUMNS, TOPIC};

use crate::GRAVITY_M_S2;
use crate::error::{Allowed, Problem};
use crate::launch;
use crate::layout::{AxleDrive, Layout};
use crate::scenario::Scenario;
use crate::traction::{self, Limit};
use crate::vehicle::{Air, Chassis};

/// Acceleration at which like motors, n_f in front and n_r behind, share their torque as the axles
/// share the load \[m/s²\]: a = g·(b/L − n_f/(n_f + n_r))·L/h. Level road, no air; infinite for a CG on
/// the ground.
///
/// ```
/// use axlewright_core::{motor_split, vehicle::Chassis};
/// let esker = Chassis::new(1850.0, 2.86, 1.46, 0.54)?;
/// let match_m_s2 = motor_split::matching_acceleration(&esker, 1, 2);
/// assert!((match_m_s2 / 9.81 - 0.827).abs() < 0.001);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn matching_acceleration(chassis: &Chassis, front: u8, rear: u8) -> f64 {
    let share = front_share(front, rear);
    let (b, h, wheelbase) = (
        chassis.cg_to_rear_axle_m(),
        chassis.cg_height_m(),
        chassis.wheelbase_m(),
    );
    GRAVITY_M_S2 * (b / wheelbase - share) * wheelbase / h
}

/// Front share of the torque of like motors, n_f/(n_f + n_r).
#[must_use]
pub fn front_share(front: u8, rear: u8) -> f64 {
    f64::from(front) / f64::from(front + rear)
}

/// What the topic asks, for any layout.
#[derive(Clone, Debug)]
pub struct Question {
    /// The ground and the car at rest, motors of any strength.
    pub rest: traction::Question,
    /// The same at the speed up to which the motors are to reach the limit.
    pub fast: traction::Question,
    /// That speed \[m/s\].
    pub speed_m_s: f64,
    /// Rolling radius R \[m\].
    pub radius_m: f64,
    /// Ratio between a motor and its wheels.
    pub ratio: f64,
    /// Efficiency of the gears.
    pub gear_efficiency: f64,
    /// Track widths, front and rear \[m\], where given.
    pub tracks_m: [Option<f64>; 2],
    /// The launch, where the motor's torque is given.
    pub launch: Option<launch::Question>,
    /// Mass of a drive unit \[kg\].
    pub unit_mass_kg: f64,
    /// Cost of a drive unit, in the reader's unit.
    pub unit_cost: f64,
}

/// What the topic answers for a layout.
#[derive(Clone, Copy, Debug)]
pub struct Answer {
    /// Limit of the tyres when each axle gives all it can.
    pub limit: Limit,
    /// Limit when every motor gives the same torque.
    pub equal: Limit,
    /// Limit at speed.
    pub fast: Limit,
    /// Torque of one motor that reaches the limit up to the speed \[N·m\].
    pub torque_n_m: f64,
    /// Power of one motor that does \[W\].
    pub power_w: f64,
    /// Force of that motor where it needs this power \[N\], and the speed there \[m/s\].
    pub at_most_power: (f64, f64),
    /// The car as it passes 60 mph, if it does.
    pub mark: Option<launch::Mark>,
    /// Force with which a wheel of each axle can push forward while its twin pulls back \[N\]; none for
    /// an axle without a motor per wheel.
    pub pair_n: [Option<f64>; 2],
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let number = |path| scenario.number(path);
        let speed_m_s = scenario.require("motor_split.speed")?;
        let mut rest = traction::Question::from_scenario(scenario)?;
        rest.motor_force_n = None;
        rest.front_share = None;
        let air = Air::from_scenario(scenario);
        rest.air = air.forces(0.0);
        let mut fast = rest;
        fast.air = air.forces(speed_m_s);
        let launch = match number("vehicle.motor_torque") {
            Some(_) => {
                let mut launch = launch::Question::from_scenario(scenario)?;
                launch.slip = None;
                launch.springs = None;
                Some(launch)
            }
            None => None,
        };
        Ok(Self {
            rest,
            fast,
            speed_m_s,
            radius_m: scenario.require("vehicle.wheel_radius")?,
            ratio: scenario.require("vehicle.motor_ratio")?,
            gear_efficiency: number("vehicle.gear_efficiency").unwrap_or(1.0),
            tracks_m: [number("vehicle.track_front"), number("vehicle.track_rear")],
            launch,
            unit_mass_kg: number("motor_split.drive_unit_mass").unwrap_or(0.0),
            unit_cost: number("motor_split.drive_unit_cost").unwrap_or(0.0),
        })
    }
}

/// Motors of each axle as numbers.
pub(crate) fn counts(layout: Layout) -> [u8; 2] {
    [layout.front().motors(), layout.rear().motors()]
}

/// Solves the question for a layout.
///
/// # Errors
/// [`Problem::NoAnswer`] when the air lifts an axle at the speed asked for.
///
/// ```
/// use axlewright_core::{Scenario, layout::Layout, motor_split};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// let question = motor_split::Question::from_scenario(&scenario)?;
/// // Motors that all give the same torque use no more of the grip than a free split does.
/// let answer = motor_split::solve(&question, Layout::F1R2)?;
/// assert!(answer.equal.acceleration_m_s2 <= answer.limit.acceleration_m_s2);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
pub fn solve(question: &Question, layout: Layout) -> Result<Answer, Problem> {
    let limit = traction::limit(&question.rest, layout)?;
    let [front, rear] = counts(layout);
    let mut shared = question.rest;
    shared.front_share = Some(front_share(front, rear));
    let fast = traction::limit(&question.fast, layout).map_err(|_| Problem::NoAnswer {
        field: "motor_split.speed",
        value: crate::format::plain(question.speed_m_s) + " m/s",
        why: "why.air_lifts",
        allowed: Allowed::Sentence("allowed.less_speed"),
    })?;
    let (limit_n, fast_n) = (most_of_one_n(&limit, layout), most_of_one_n(&fast, layout));
    let at_most_power = most_power(question, layout, fast_n)?;
    let run = question
        .launch
        .map(|launch| launch::course(&launch, layout).run.marks[launch::MARK_60_MPH]);
    Ok(Answer {
        limit,
        equal: traction::limit(&shared, layout)?,
        fast,
        // T = F·R/(i·η), P = F·V_p/η for the motor that must push hardest
        torque_n_m: limit_n.max(fast_n) * question.radius_m
            / (question.ratio * question.gear_efficiency),
        power_w: at_most_power.0 * at_most_power.1 / question.gear_efficiency,
        at_most_power,
        mark: run.flatten(),
        pair_n: [
            pair_n(question, layout.front(), true),
            pair_n(question, layout.rear(), false),
        ],
    })
}

/// Steps in which the speeds up to the one asked for are looked through.
const SPEEDS: u32 = 16;

/// Where the motor that pushes hardest needs most power on the way to the speed asked for: its force
/// \[N\] and the speed \[m/s\].
///
/// A body with lift lets go of its tyres as it gets faster: then force times speed is largest before the
/// end. Forces of the air grow with the square of the speed.
fn most_power(question: &Question, layout: Layout, fast_n: f64) -> Result<(f64, f64), Problem> {
    let at = |share: f64| {
        let mut there = question.fast;
        let square = share * share;
        there.air.drag_n *= square;
        there.air.lift_front_n *= square;
        there.air.lift_rear_n *= square;
        traction::limit(&there, layout).map(|limit| most_of_one_n(&limit, layout))
    };
    let mut best = (fast_n, 1.0);
    for step in 1..SPEEDS {
        let share = f64::from(step) / f64::from(SPEEDS);
        let force_n = at(share)?;
        if force_n * share > best.0 * best.1 {
            best = (force_n, share);
        }
    }
    // Between its neighbours the largest is narrowed down, half by half.
    let mut reach = 1.0 / f64::from(SPEEDS);
    while best.1 < 1.0 && reach > 1e-7 {
        reach *= 0.5;
        for share in [best.1 - reach, best.1 + reach] {
            let force_n = at(share)?;
            if force_n * share > best.0 * best.1 {
                best = (force_n, share);
            }
        }
    }
    Ok((best.0, best.1 * question.speed_m_s))
}

/// Force of the motor that pushes hardest at a limit \[N\].
fn most_of_one_n(limit: &Limit, layout: Layout) -> f64 {
    let [front, rear] = counts(layout).map(f64::from);
    let one = |force_n: f64, count: f64| if count > 0.0 { force_n / count } else { 0.0 };
    one(limit.front_force_n, front)
        .max(one(limit.rear_force_n, rear))
        .max(0.0)
}

/// What one wheel of a pair can push with, at rest: its motor or its grip, whichever is less.
fn pair_n(question: &Question, drive: AxleDrive, front: bool) -> Option<f64> {
    if drive != AxleDrive::MotorPerWheel {
        return None;
    }
    let still = crate::load_transfer::axle_loads(
        &question.rest.chassis,
        &question.rest.air,
        question.rest.slope,
        0.0,
    );
    let (axle, load_n) = if front {
        (&question.rest.front, still.front_n)
    } else {
        (&question.rest.rear, still.rear_n)
    };
    let wheel_n = 0.5 * load_n.max(0.0);
    let peak = axle.friction.peak_left.min(axle.friction.peak_right);
    let grip_n = wheel_n * axle.friction_at(peak, wheel_n);
    Some(match &question.launch {
        Some(launch) => {
            let motor_n = launch.motor.torque_n_m * question.ratio * question.gear_efficiency
                / question.radius_m;
            motor_n.min(grip_n)
        }
        None => grip_n,
    })
}

/// Parts of a layout: motor, inverter and gears for each motor, two half shafts for each driven axle,
/// a differential where one motor drives two wheels.
#[must_use]
pub fn parts(layout: Layout) -> u8 {
    [layout.front(), layout.rear()]
        .into_iter()
        .map(|axle| match axle {
            AxleDrive::Undriven => 0,
            AxleDrive::OneMotor => 3 + 2 + 1,
            AxleDrive::MotorPerWheel => 6 + 2,
        })
        .sum()
}

/// The layout with so many motors on each axle; none for no motor at all, or more than two on an axle.
#[must_use]
pub fn layout_of(front: u8, rear: u8) -> Option<Layout> {
    Layout::ALL
        .into_iter()
        .find(|layout| counts(*layout) == [front, rear])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn question(fields: &[(&str, &str)]) -> Question {
        let mut scenario = Scenario::default();
        for (path, text) in fields {
            scenario.set(path, text).unwrap();
        }
        Question::from_scenario(&scenario).unwrap()
    }

    #[test]
    fn one_in_front_and_two_behind_match_where_the_load_is_two_to_one() {
        for base in crate::vehicle::DEMO_NAMES {
            let question = question(&[("vehicle.base", base)]);
            let chassis = &question.rest.chassis;
            let level = crate::vehicle::Slope::from_grade(0.0);
            let air = crate::vehicle::AirForces::default();
            let two = crate::load_transfer::acceleration_at_ratio(chassis, &air, level, Some(2.0));
            let got = matching_acceleration(chassis, 1, 2);
            assert!((got - two).abs() < 1e-12 * two, "{base}: {got}, {two}");
            let loads = crate::load_transfer::axle_loads(chassis, &air, level, got);
            assert!((loads.rear_n / loads.front_n - 2.0).abs() < 1e-12);
        }
    }

    #[test]
    fn like_motors_reach_the_full_limit_only_where_they_match() {
        let question = question(&[
            ("vehicle.base", "esker"),
            ("vehicle.rolling_resistance", "0"),
        ]);
        let answer = |layout| solve(&question, layout).unwrap();
        for layout in [Layout::F1R1, Layout::F1R2, Layout::F2R1] {
            let found = answer(layout);
            assert!(found.equal.acceleration_m_s2 <= found.limit.acceleration_m_s2 + 1e-12);
        }
        // At a friction equal to the match, 1 : 2 uses all of it.
        let matched = matching_acceleration(&question.rest.chassis, 1, 2) / GRAVITY_M_S2;
        let mut there = question.clone();
        for axle in [&mut there.rest.front, &mut there.rest.rear] {
            axle.friction.peak_left = matched;
            axle.friction.peak_right = matched;
        }
        let found = solve(&there, Layout::F1R2).unwrap();
        let lost = found.limit.acceleration_m_s2 - found.equal.acceleration_m_s2;
        assert!(lost.abs() < 1e-9, "{lost}");
    }

    #[test]
    fn the_smallest_motor_just_reaches_the_limit() {
        let fields = [("vehicle.base", "corrie"), ("motor_split.speed", "30 m/s")];
        let question = question(&fields);
        for layout in Layout::ALL {
            let found = solve(&question, layout).unwrap();
            let mut limited = question.rest;
            limited.motor_force_n = Some(found.torque_n_m * question.ratio / question.radius_m);
            let with = traction::limit(&limited, layout).unwrap().acceleration_m_s2;
            let lost = found.limit.acceleration_m_s2 - with;
            assert!(lost.abs() < 1e-9, "{layout:?}: {lost}");
            assert!((found.at_most_power.1 - 30.0).abs() < 1e-12);
            let mut weaker = question.fast;
            weaker.motor_force_n = Some(0.99 * found.power_w / question.speed_m_s);
            let with = traction::limit(&weaker, layout).unwrap().acceleration_m_s2;
            assert!(with < found.fast.acceleration_m_s2 - 1e-6, "{layout:?}");
        }
    }

    #[test]
    fn up_to_a_higher_speed_no_less_power_is_needed() {
        let power = |speed: &str| {
            let fields = [
                ("vehicle.base", "corrie"),
                ("vehicle.lift_area_front", "1 m^2"),
                ("vehicle.lift_area_rear", "1 m^2"),
                ("motor_split.speed", speed),
            ];
            let found = solve(&question(&fields), Layout::F1R1).unwrap();
            (found.power_w, found.at_most_power.1)
        };
        // Lift lets go of the tyres: the most is needed on the way.
        let (slow, _) = power("50 m/s");
        let (_, nearly_there) = power("73 m/s");
        let (fast, at_m_s) = power("100 m/s");
        let (faster, again_m_s) = power("105 m/s");
        assert!(fast > slow, "{fast} {slow}");
        assert!((faster / fast - 1.0).abs() < 1e-9, "{faster} {fast}");
        assert!((at_m_s - again_m_s).abs() < 0.01, "{at_m_s} {again_m_s}");
        assert!(at_m_s < 100.0 && nearly_there <= 73.0, "{at_m_s}");
    }

    #[test]
    fn every_layout_is_found_by_its_motors() {
        for layout in Layout::ALL {
            let [front, rear] = counts(layout);
            assert_eq!(layout_of(front, rear), Some(layout));
        }
        assert_eq!(layout_of(0, 0), None);
        assert_eq!(parts(Layout::F1R1), 12);
        assert_eq!(parts(Layout::F1R2), 14);
    }
}
