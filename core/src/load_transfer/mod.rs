//! Weight transfer under acceleration: how much each axle carries.
//!
//! The inertial force acts at CG height, the tractive force at the ground; the axle loads must
//! balance the couple. In steady state the springs have no part in it: they set only the squat.
//!
//! Model: rigid body in its plane of symmetry on a straight slope, steady acceleration. Rotating
//! parts are left out. Holds while both axles stay on the ground.

mod report;
mod squat;

pub use report::TOPIC;
pub(crate) use report::{write_chassis, write_landmarks, write_loads, write_surroundings};
pub use squat::{Squat, Suspension, squat_after_step, steady_squat};

use crate::error::{Allowed, Problem};
use crate::scenario::Scenario;
use crate::units::Dimension as D;
use crate::vehicle::{Air, AirForces, Chassis, Slope};

/// What the topic asks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Forces of the air at the speed asked for.
    pub air: AirForces,
    /// Slope of the road.
    pub slope: Slope,
    /// Acceleration along the road, a_x \[m/s²\], forward positive.
    pub acceleration_m_s2: f64,
    /// Springs, where given.
    pub suspension: Option<Suspension>,
}

/// Axle loads in steady state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxleLoads {
    /// Load of the front axle, N_f \[N\].
    pub front_n: f64,
    /// Load of the rear axle, N_r \[N\].
    pub rear_n: f64,
}

/// What the topic answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Axle loads.
    pub loads: AxleLoads,
    /// Axle loads at rest on the level.
    pub static_loads: AxleLoads,
    /// Acceleration at which the front axle leaves the ground \[m/s²\]; none for a CG on the ground.
    pub front_lift_acceleration_m_s2: Option<f64>,
    /// Acceleration at which the rear axle carries twice the front \[m/s²\]; none for a CG on the
    /// ground.
    pub two_to_one_acceleration_m_s2: Option<f64>,
    /// Squat, where springs are given.
    pub squat: Option<Squat>,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario. The CG height may be left out only where it has no part: at a
    /// steady speed on the level without drag.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let acceleration_m_s2 = scenario.number("load_transfer.acceleration").unwrap_or(0.0);
        let speed_m_s = scenario.number("load_transfer.speed").unwrap_or(0.0);
        let slope = Slope::from_grade(scenario.number("surface.grade").unwrap_or(0.0));
        let at_rest = acceleration_m_s2 == 0.0 && speed_m_s == 0.0 && slope.sin == 0.0;
        let chassis = if at_rest {
            Chassis::without_height(scenario)?
        } else {
            Chassis::from_scenario(scenario)?
        };
        Ok(Self {
            chassis,
            air: Air::from_scenario(scenario).forces(speed_m_s),
            slope,
            acceleration_m_s2,
            suspension: Suspension::from_scenario(scenario),
        })
    }
}

/// Axle loads of a chassis at an acceleration on a slope. Either may come out negative: then that
/// axle has left the ground, and the caller must refuse.
///
/// Source: R. N. Jazar, Vehicle Dynamics: Theory and Application, ch. 2, eq. 2.121–2.122 (read),
/// with drag and lift added by the same balance of moments.
///
/// ```
/// use axlewright_core::{load_transfer, vehicle::{AirForces, Chassis, Slope}};
/// let chassis = Chassis::new(890.0, 2.35, 0.78, 0.5)?;
/// let level = Slope::from_grade(0.0);
/// let loads = load_transfer::axle_loads(&chassis, &AirForces::default(), level, 0.0);
/// assert!((loads.front_n / 2.0 - 2916.5).abs() < 0.5);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn axle_loads(
    chassis: &Chassis,
    air: &AirForces,
    slope: Slope,
    acceleration_m_s2: f64,
) -> AxleLoads {
    let weight_n = chassis.weight_n();
    let (a, b) = (chassis.cg_to_front_axle_m(), chassis.cg_to_rear_axle_m());
    let wheelbase_m = chassis.wheelbase_m();
    // M = (m·a_x + W·sin θ)·h + D·h_d
    let couple_n_m = (chassis.mass_kg() * acceleration_m_s2 + weight_n * slope.sin)
        * chassis.cg_height_m()
        + air.drag_n * air.drag_height_m;
    AxleLoads {
        // N_f = (W·cos θ·b − M)/L − Z_f
        front_n: (weight_n * slope.cos * b - couple_n_m) / wheelbase_m - air.lift_front_n,
        // N_r = (W·cos θ·a + M)/L − Z_r
        rear_n: (weight_n * slope.cos * a + couple_n_m) / wheelbase_m - air.lift_rear_n,
    }
}

/// Acceleration at which the front axle leaves the ground \[m/s²\]; infinite for a CG on the ground.
#[must_use]
pub fn front_lift_acceleration(chassis: &Chassis, air: &AirForces, slope: Slope) -> f64 {
    acceleration_at_ratio(chassis, air, slope, None)
}

/// Acceleration at which the rear axle leaves the ground \[m/s²\] (braking: negative).
#[must_use]
pub fn rear_lift_acceleration(chassis: &Chassis, air: &AirForces, slope: Slope) -> f64 {
    acceleration_at_ratio(chassis, air, slope, Some(0.0))
}

/// Acceleration at which N_r = ratio·N_f \[m/s²\]; with no ratio, at which N_f = 0.
///
/// Both loads are straight lines in a_x, so the answer is exact.
#[must_use]
pub fn acceleration_at_ratio(
    chassis: &Chassis,
    air: &AirForces,
    slope: Slope,
    ratio: Option<f64>,
) -> f64 {
    let unaccelerated = axle_loads(chassis, air, slope, 0.0);
    // dN_r/da_x = −dN_f/da_x = m·h/L
    let gain_kg = chassis.mass_kg() * chassis.cg_height_m() / chassis.wheelbase_m();
    match ratio {
        None => unaccelerated.front_n / gain_kg,
        Some(ratio) => {
            (ratio * unaccelerated.front_n - unaccelerated.rear_n) / ((1.0 + ratio) * gain_kg)
        }
    }
}

/// Solves the question.
///
/// # Errors
/// [`Problem::NoAnswer`] when an axle would leave the ground.
///
/// ```
/// use axlewright_core::{Scenario, load_transfer};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// scenario.set("load_transfer.acceleration", "0.6 g")?;
/// let answer = load_transfer::solve(&load_transfer::Question::from_scenario(&scenario)?)?;
/// assert!((answer.loads.rear_n / answer.loads.front_n - 1.66).abs() < 0.01);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
pub fn solve(question: &Question) -> Result<Answer, Problem> {
    let Question {
        chassis,
        air,
        slope,
        ..
    } = question;
    let loads = axle_loads(chassis, air, *slope, question.acceleration_m_s2);
    // A millionth of the weight keeps the ratio of the loads a sensible number.
    let least_n = 1e-6 * chassis.weight_n();
    if loads.front_n < least_n || loads.rear_n < least_n {
        return Err(lifted(question));
    }
    let level = Slope::from_grade(0.0);
    let static_loads = axle_loads(chassis, &AirForces::default(), level, 0.0);
    let finite = |value: f64| value.is_finite().then_some(value);
    Ok(Answer {
        loads,
        static_loads,
        front_lift_acceleration_m_s2: finite(front_lift_acceleration(chassis, air, *slope)),
        two_to_one_acceleration_m_s2: finite(acceleration_at_ratio(
            chassis,
            air,
            *slope,
            Some(2.0),
        )),
        squat: question
            .suspension
            .map(|springs| steady_squat(chassis, &springs, &static_loads, &loads)),
    })
}

/// The refusal when an axle would leave the ground: it tells the range in which both stay down.
fn lifted(question: &Question) -> Problem {
    let Question {
        chassis,
        air,
        slope,
        ..
    } = question;
    let low = rear_lift_acceleration(chassis, air, *slope);
    let high = front_lift_acceleration(chassis, air, *slope);
    let allowed = if low.is_finite() && high.is_finite() {
        Allowed::Inside {
            min: low,
            max: high,
            dimension: D::Acceleration,
        }
    } else {
        Allowed::Sentence("allowed.less_lift")
    };
    Problem::NoAnswer {
        field: "load_transfer.acceleration",
        value: format!("{} m/s²", crate::format::plain(question.acceleration_m_s2)),
        why: "why.axle_lifts",
        allowed,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::GRAVITY_M_S2;
    use crate::math;

    fn esker() -> Question {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "esker").unwrap();
        scenario.set("load_transfer.acceleration", "0.6 g").unwrap();
        Question::from_scenario(&scenario).unwrap()
    }

    #[test]
    fn loads_sum_to_the_weight_and_the_ratio_reaches_two_where_said() {
        let question = esker();
        let answer = solve(&question).unwrap();
        let sum = answer.loads.front_n + answer.loads.rear_n;
        assert!((sum - question.chassis.weight_n()).abs() < 1e-9, "{sum}");
        let at = answer.two_to_one_acceleration_m_s2.unwrap();
        assert!((at / GRAVITY_M_S2 - 0.827).abs() < 0.001, "{at}");
        let there = solve(&Question {
            acceleration_m_s2: at,
            ..question
        });
        let ratio = there.map(|a| a.loads.rear_n / a.loads.front_n).unwrap();
        assert!((ratio - 2.0).abs() < 1e-12, "{ratio}");
    }

    #[test]
    fn beyond_lift_off_the_refusal_names_the_range() {
        let lift = solve(&esker())
            .unwrap()
            .front_lift_acceleration_m_s2
            .unwrap();
        for acceleration_m_s2 in [lift, lift + 0.1, -30.0] {
            let problem = solve(&Question {
                acceleration_m_s2,
                ..esker()
            })
            .unwrap_err();
            assert_eq!(problem.field(), "load_transfer.acceleration");
            assert!(problem.to_string().contains("2.59"), "{problem}");
        }
    }

    #[test]
    fn a_step_of_acceleration_ends_in_the_steady_squat_and_overshoots_by_the_book() {
        let question = esker();
        let springs = question.suspension.unwrap();
        let steady = solve(&question).unwrap().squat.unwrap();
        assert!(steady.pitch_rad < 0.0, "nose up is negative");
        let late = squat_after_step(&question.chassis, &springs, &steady, 60.0);
        assert!((late.pitch_rad - steady.pitch_rad).abs() < 1e-12);
        // First overshoot of a damped step response: e^(−πζ/√(1−ζ²)) at t = π/ω_d.
        let root = math::sqrt(1.0 - springs.damping_ratio * springs.damping_ratio);
        let peak_at = 0.5 / (springs.ride_frequency_rear_hz * root);
        let peak = squat_after_step(&question.chassis, &springs, &steady, peak_at);
        let want = 1.0 + math::exp(-core::f64::consts::PI * springs.damping_ratio / root);
        assert!((peak.drop_rear_m / steady.drop_rear_m - want).abs() < 1e-12);
    }
}
