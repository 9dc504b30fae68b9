//! Traction limits: how hard each layout can push before a tyre slips or the front axle lifts.
//!
//! Acceleration takes load from the front axle just when a front drive needs it, and gives it to the
//! rear. The topic has the closed forms of the textbooks and a general solve with slope, drag, lift,
//! load-sensitive friction, fixed and ideal torque splits, differentials, a solid axle, and friction
//! that differs left and right.
//!
//! Model: rigid body in steady acceleration; every driven wheel at its peak friction, none beyond.
//! Rotating parts and the slip needed to make the force are left out.

mod axle;
mod closed_form;
mod report;

pub use axle::{Axle, AxleType, Differential};
pub use closed_form::{
    adhesion_utilisation_braking, adhesion_utilisation_driving, all_wheel_fixed_split, front_drive,
    ideal_front_share, rear_drive,
};
pub use report::TOPIC;
pub(crate) use report::tell;

use crate::error::{Allowed, Problem};
use crate::layout::{AxleDrive, Layout};
use crate::load_transfer::{self, AxleLoads};
use crate::motor::tractive_force_n;
use crate::root;
use crate::scenario::Scenario;
use crate::surface::Friction;
use crate::vehicle::{Air, AirForces, Chassis, Slope};

/// What the topic asks, for any layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Forces of the air at the speed asked for.
    pub air: AirForces,
    /// Slope of the road.
    pub slope: Slope,
    /// Rolling-resistance coefficient f_r \[1\].
    pub rolling_resistance: f64,
    /// The front axle as a place where tyres push.
    pub front: Axle,
    /// The rear axle as a place where tyres push.
    pub rear: Axle,
    /// Front share of the tractive force p_f \[1\] where it is fixed; `None`: each axle gives what it
    /// can, which two motors on two axles can do.
    pub front_share: Option<f64>,
    /// Tractive force of one motor at its wheels \[N\], where the motors' own torque may limit.
    pub motor_force_n: Option<f64>,
}

/// What stops a layout from accelerating harder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LimitedBy {
    /// The front tyres slip.
    FrontSlip,
    /// The rear tyres slip.
    RearSlip,
    /// All tyres slip.
    AllSlip,
    /// The front axle leaves the ground.
    FrontLift,
    /// The motors have no more torque.
    MotorTorque,
}

impl LimitedBy {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::FrontSlip => "front_slip",
            Self::RearSlip => "rear_slip",
            Self::AllSlip => "front_and_rear_slip",
            Self::FrontLift => "front_lift",
            Self::MotorTorque => "motor_torque",
        }
    }
}

/// The limit of one layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// Largest acceleration a_x \[m/s²\]. Negative on a slope that the layout cannot climb.
    pub acceleration_m_s2: f64,
    /// What stops it.
    pub limited_by: LimitedBy,
    /// Axle loads at the limit.
    pub loads: AxleLoads,
    /// Tractive force of the front axle at the limit \[N\].
    pub front_force_n: f64,
    /// Tractive force of the rear axle at the limit \[N\].
    pub rear_force_n: f64,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let chassis = Chassis::from_scenario(scenario)?;
        let friction = Friction::peak(scenario)?;
        let axle = |front| Axle::from_scenario(scenario, &chassis, friction, front);
        Ok(Self {
            chassis,
            air: Air::from_scenario(scenario)
                .forces(scenario.number("traction.speed").unwrap_or(0.0)),
            slope: Slope::from_grade(scenario.number("surface.grade").unwrap_or(0.0)),
            rolling_resistance: scenario.number("vehicle.rolling_resistance").unwrap_or(0.0),
            front: axle(true)?,
            rear: axle(false)?,
            front_share: scenario.number("traction.front_share"),
            motor_force_n: motor_force(scenario)?,
        })
    }

    /// Everything along the road that is not tractive force: drag, grade, rolling resistance \[N\].
    fn resistance_n(&self) -> f64 {
        let across_n =
            self.chassis.weight_n() * self.slope.cos - self.air.lift_front_n - self.air.lift_rear_n;
        // R = D + W·sin θ + f_r·(N_f + N_r)
        self.air.drag_n
            + self.chassis.weight_n() * self.slope.sin
            + self.rolling_resistance * across_n.max(0.0)
    }

    fn loads(&self, acceleration_m_s2: f64) -> AxleLoads {
        load_transfer::axle_loads(&self.chassis, &self.air, self.slope, acceleration_m_s2)
    }
}

/// Force of one motor at its wheels where the scenario lets the motors limit: T·i·η/R, and at speed no
/// more than P·η/V.
fn motor_force(scenario: &Scenario) -> Result<Option<f64>, Problem> {
    if scenario.word("traction.motor_limit") != Some("as_fitted") {
        return Ok(None);
    }
    let torque_n_m = scenario.require("vehicle.motor_torque")?;
    let ratio = scenario.require("vehicle.motor_ratio")?;
    let radius_m = scenario.require("vehicle.wheel_radius")?;
    let efficiency = scenario.number("vehicle.gear_efficiency").unwrap_or(1.0);
    let at_rest_n = tractive_force_n(torque_n_m, ratio, efficiency, radius_m);
    let speed_m_s = scenario.number("traction.speed").unwrap_or(0.0);
    Ok(Some(match scenario.number("vehicle.motor_power") {
        Some(power_w) if speed_m_s > 0.0 => at_rest_n.min(power_w * efficiency / speed_m_s),
        _ => at_rest_n,
    }))
}

/// The limit of one layout.
///
/// The largest a_x for which the driven axles can give F_f + F_r = m·a_x + R is sought between the
/// acceleration at which the rear axle lifts and that at which the front does. The margin of the
/// axles over that need is concave in a_x, so there is one such a_x.
///
/// # Errors
/// [`Problem::NoAnswer`] when the air lifts an axle off the ground before the car accelerates at all.
///
/// ```
/// use axlewright_core::{Scenario, layout::Layout, traction};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "corrie")?;
/// scenario.set("surface.kind", "snow")?;
/// let question = traction::Question::from_scenario(&scenario)?;
/// let reaches = |layout| traction::limit(&question, layout).map(|limit| limit.acceleration_m_s2);
/// assert!(reaches(Layout::F1R1)? > reaches(Layout::R1)?);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
pub fn limit(question: &Question, layout: Layout) -> Result<Limit, Problem> {
    let (lowest, highest) = bracket(question, layout)?;
    let margin = |acceleration| margin_n(question, layout, acceleration);
    if margin(lowest) < 0.0 {
        return Err(air_lifts());
    }
    let acceleration_m_s2 = if margin(highest) >= 0.0 {
        highest
    } else {
        root::last_not_negative(lowest, highest, margin)
    };
    let loads = question.loads(acceleration_m_s2);
    let inertia_n = question.chassis.mass_kg() * acceleration_m_s2;
    let needed_n = inertia_n + question.resistance_n();
    // What two large numbers leave of each other is round-off, not a force.
    let round_off_n = 1e-14 * (inertia_n.abs() + question.chassis.weight_n());
    let needed_n = if needed_n.abs() <= round_off_n {
        0.0
    } else {
        needed_n
    };
    let (front_n, rear_n) = capacities_n(question, layout, &loads);
    let (front_force_n, rear_force_n) = match (layout.front(), layout.rear()) {
        (AxleDrive::Undriven, _) => (0.0, needed_n),
        (_, AxleDrive::Undriven) => (needed_n, 0.0),
        _ => match question.front_share {
            Some(share) => (share * needed_n, (1.0 - share) * needed_n),
            // Ideal split: at the limit each axle gives all it has. Where the front axle lifts
            // first the axles share what is needed in proportion to what they have.
            None => {
                let most_n = front_n + rear_n;
                let used = if most_n > 0.0 { needed_n / most_n } else { 0.0 };
                (used * front_n, used * rear_n)
            }
        },
    };
    let limited_by = if acceleration_m_s2 >= highest {
        LimitedBy::FrontLift
    } else {
        what_limits(question, layout, &loads, front_force_n, rear_force_n)
    };
    Ok(Limit {
        acceleration_m_s2,
        limited_by,
        loads,
        front_force_n,
        rear_force_n,
    })
}

/// Accelerations between which both axles are on the ground.
fn bracket(question: &Question, layout: Layout) -> Result<(f64, f64), Problem> {
    let (chassis, air, slope) = (&question.chassis, &question.air, question.slope);
    let still = question.loads(0.0);
    let lowest = load_transfer::rear_lift_acceleration(chassis, air, slope);
    let highest = load_transfer::front_lift_acceleration(chassis, air, slope);
    if lowest.is_finite() && highest.is_finite() && lowest < highest {
        return Ok((lowest, highest));
    }
    if still.front_n > 0.0 && still.rear_n > 0.0 {
        // A CG on the ground: the loads do not depend on a_x, so neither do the capacities.
        let (front_n, rear_n) = capacities_n(question, layout, &still);
        let most =
            (front_n + rear_n + question.resistance_n().abs() + 1.0) / question.chassis.mass_kg();
        return Ok((-2.0 * most, 2.0 * most));
    }
    Err(air_lifts())
}

/// The refusal when the air takes an axle off the ground.
fn air_lifts() -> Problem {
    Problem::NoAnswer {
        field: "traction.speed",
        value: String::new(),
        why: "why.air_lifts",
        allowed: Allowed::Sentence("allowed.less_speed"),
    }
}

/// Most that each axle can push at given loads \[N\]; 0 for an undriven axle.
fn capacities_n(question: &Question, layout: Layout, loads: &AxleLoads) -> (f64, f64) {
    let side = |axle: &Axle, drive: AxleDrive, load_n: f64| {
        let grip_n = axle.capacity_n(drive, load_n.max(0.0));
        match question.motor_force_n {
            Some(force_n) => grip_n.min(f64::from(drive.motors()) * force_n),
            None => grip_n,
        }
    };
    (
        side(&question.front, layout.front(), loads.front_n),
        side(&question.rear, layout.rear(), loads.rear_n),
    )
}

/// What the axles can give beyond what an acceleration needs \[N\].
fn margin_n(question: &Question, layout: Layout, acceleration_m_s2: f64) -> f64 {
    let loads = question.loads(acceleration_m_s2);
    let needed_n = question.chassis.mass_kg() * acceleration_m_s2 + question.resistance_n();
    let (front_n, rear_n) = capacities_n(question, layout, &loads);
    let both = layout.front() != AxleDrive::Undriven && layout.rear() != AxleDrive::Undriven;
    match question.front_share {
        Some(share) if both => (front_n - share * needed_n).min(rear_n - (1.0 - share) * needed_n),
        _ => front_n + rear_n - needed_n,
    }
}

fn what_limits(
    question: &Question,
    layout: Layout,
    loads: &AxleLoads,
    front_force_n: f64,
    rear_force_n: f64,
) -> LimitedBy {
    let slips = |axle: &Axle, drive: AxleDrive, load_n: f64, force_n: f64| {
        let grip_n = axle.capacity_n(drive, load_n.max(0.0));
        drive != AxleDrive::Undriven && force_n >= grip_n * (1.0 - 1e-9) - 1e-9
    };
    let front = slips(
        &question.front,
        layout.front(),
        loads.front_n,
        front_force_n,
    );
    let rear = slips(&question.rear, layout.rear(), loads.rear_n, rear_force_n);
    match (front, rear) {
        (true, true) => LimitedBy::AllSlip,
        (true, false) => LimitedBy::FrontSlip,
        (false, true) => LimitedBy::RearSlip,
        (false, false) => LimitedBy::MotorTorque,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::GRAVITY_M_S2;

    fn demo(base: &str) -> Scenario {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", base).unwrap();
        scenario.set("vehicle.rolling_resistance", "0").unwrap();
        scenario
    }

    #[test]
    fn the_general_solve_meets_the_closed_forms() {
        for base in crate::vehicle::DEMO_NAMES {
            let question = Question::from_scenario(&demo(base)).unwrap();
            let (chassis, friction) = (&question.chassis, question.front.friction.peak_left);
            let (a, h, l) = (
                chassis.cg_to_front_axle_m(),
                chassis.cg_height_m(),
                chassis.wheelbase_m(),
            );
            for (layout, want) in [
                (Layout::F1, front_drive(friction, a, h, l)),
                (Layout::R1, rear_drive(friction, a, h, l)),
                (Layout::F1R1, friction),
            ] {
                let got = limit(&question, layout).unwrap().acceleration_m_s2 / GRAVITY_M_S2;
                assert!(
                    (got - want).abs() < 1e-12,
                    "{base} {layout:?}: {got}, want {want}"
                );
            }
        }
    }

    #[test]
    fn a_fixed_split_stops_at_the_axle_that_slips_first() {
        let mut scenario = demo("esker");
        scenario.set("traction.front_share", "50 %").unwrap();
        let question = Question::from_scenario(&scenario).unwrap();
        let got = limit(&question, Layout::F1R1).unwrap();
        let chassis = &question.chassis;
        let want = all_wheel_fixed_split(
            1.0,
            0.5,
            chassis.cg_to_front_axle_m(),
            chassis.cg_height_m(),
            chassis.wheelbase_m(),
        );
        assert!((got.acceleration_m_s2 / GRAVITY_M_S2 - want).abs() < 1e-12);
        assert_eq!(got.limited_by, LimitedBy::FrontSlip);
    }

    #[test]
    fn sticky_tyres_lift_the_front_axle() {
        let mut scenario = demo("esker");
        scenario.set("surface.friction_peak", "4").unwrap();
        let question = Question::from_scenario(&scenario).unwrap();
        let rear = limit(&question, Layout::R2).unwrap();
        assert_eq!(rear.limited_by, LimitedBy::FrontLift);
        let want = 1.40 / 0.54;
        assert!((rear.acceleration_m_s2 / GRAVITY_M_S2 - want).abs() < 1e-12);
    }

    #[test]
    fn a_weak_motor_is_named_where_it_may_limit() {
        let mut scenario = demo("kame");
        scenario.set("traction.motor_limit", "as_fitted").unwrap();
        let question = Question::from_scenario(&scenario).unwrap();
        let limit = limit(&question, Layout::R1).unwrap();
        assert_eq!(limit.limited_by, LimitedBy::MotorTorque);
        let want = 180.0 * 9.6 / 0.3 / 1180.0;
        assert!((limit.acceleration_m_s2 - want).abs() < 1e-9);
        // What the gears lose is not at the wheels.
        scenario.set("vehicle.gear_efficiency", "0.8").unwrap();
        let question = Question::from_scenario(&scenario).unwrap();
        let limit = super::limit(&question, Layout::R1).unwrap();
        assert!((limit.acceleration_m_s2 - 0.8 * want).abs() < 1e-9);
    }
}
