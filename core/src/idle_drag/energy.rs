//! The energy of a drive over a cycle, second by second, and where it went.

use super::split::{self, Axle, Split};
use super::{Question, counts};
use crate::layout::Layout;
use crate::road_load;

/// Where the energy of a drive went.
///
/// What left the battery is the work against the road, the change of kinetic energy, and the losses:
/// [`Tally::spent_j`] adds them up, and [`Tally::battery_j`] is counted apart from them.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Tally {
    /// Distance \[m\].
    pub distance_m: f64,
    /// Time \[s\].
    pub time_s: f64,
    /// Time with the motors pushing \[s\].
    pub pushing_s: f64,
    /// Time with the front axle alone pushing, and with the rear axle alone \[s\].
    pub alone_s: [f64; 2],
    /// Work against air, rolling resistance and grade \[J\].
    pub road_j: f64,
    /// Kinetic energy at the end less that at the start \[J\].
    pub kinetic_j: f64,
    /// Loss in the motors of the front and of the rear axle \[J\].
    pub motor_j: [f64; 2],
    /// The part of it that was lost in motors that made no torque \[J\].
    pub idle_j: f64,
    /// Loss in the gears \[J\].
    pub gear_j: f64,
    /// Heat of the brakes \[J\].
    pub brake_j: f64,
    /// Lights, pumps, heating \[J\].
    pub auxiliary_j: f64,
    /// What left the battery, less what came back \[J\].
    pub battery_j: f64,
}

impl Tally {
    /// Energy of the battery for a distance \[J/m\].
    #[must_use]
    pub fn per_distance(&self) -> f64 {
        self.battery_j / self.distance_m
    }

    /// Work, change of kinetic energy and all losses \[J\].
    #[must_use]
    pub fn spent_j(&self) -> f64 {
        let lost_j = self.motor_j[0] + self.motor_j[1] + self.gear_j + self.brake_j;
        self.road_j + self.kinetic_j + lost_j + self.auxiliary_j
    }

    /// Time with both axles pushing \[s\].
    #[must_use]
    pub fn both_s(&self) -> f64 {
        self.pushing_s - self.alone_s[0] - self.alone_s[1]
    }
}

/// The same drive with the torque shared in three ways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drive {
    /// Shared for the least loss.
    pub best: Tally,
    /// Every motor with the same torque.
    pub even: Tally,
    /// Shared for the least loss, with motors that lose nothing while they make no torque.
    pub free: Tally,
}

impl Drive {
    /// Share of the energy that the best split saves against the same torque from every motor; none where
    /// a descent fills the battery or nothing is used.
    #[must_use]
    pub fn saved(&self) -> Option<f64> {
        let (best_j, even_j) = (self.best.battery_j, self.even.battery_j);
        (best_j > 0.0 && even_j > 0.0).then(|| 1.0 - best_j / even_j)
    }
}

/// Which axle drives and which helps: a word of the catalogue after `reason.`.
#[must_use]
pub fn primary(layout: Layout, tally: &Tally) -> &'static str {
    let [front, rear] = counts(layout);
    if front == 0.0 || rear == 0.0 {
        return "one_axle";
    }
    let [front_s, rear_s] = tally.alone_s;
    if tally.both_s() >= 0.999 * tally.pushing_s {
        "both_always"
    } else if front_s > rear_s {
        "front_first"
    } else {
        "rear_first"
    }
}

/// One step of a cycle: a straight line of speed over a time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Length \[s\].
    pub length_s: f64,
    /// Speed at its start \[m/s\].
    pub from_m_s: f64,
    /// Speed at its end \[m/s\].
    pub to_m_s: f64,
}

/// What the road asks for at a speed and an acceleration, and the axles that can give it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Demand {
    /// Speed \[m/s\].
    pub speed_m_s: f64,
    /// Speed of the motors ω = V·i/R \[rad/s\].
    pub motor_rad_s: f64,
    /// Air, rolling resistance and grade \[N\].
    pub road_n: f64,
    /// Force at the wheels: road load and m·a of the car with its turning parts \[N\].
    pub force_n: f64,
    /// The axles at this speed.
    pub axles: [Axle; 2],
}

impl Question {
    /// Apparent mass of a layout: turning wheels and rotors make the car seem heavier \[kg\].
    #[must_use]
    pub fn apparent_mass_kg(&self, layout: Layout) -> f64 {
        let rotors = f64::from(layout.motors()) * self.rotor_inertia_kg_m2;
        let parts = [(4.0 * self.wheel_inertia_kg_m2, 1.0), (rotors, self.ratio)];
        self.mass_kg * crate::motor::mass_factor(self.mass_kg, self.radius_m, &parts)
    }

    /// Air, rolling resistance and grade at a speed \[N\]: ½·ρ·C_dA·V² + W·(f_r·cos θ + sin θ).
    #[must_use]
    pub fn road_load_n(&self, speed_m_s: f64) -> f64 {
        let weight_n = self.mass_kg * crate::GRAVITY_M_S2;
        road_load::drag_n(self.density_kg_m3, self.drag_area_m2, speed_m_s)
            + weight_n * (self.rolling_resistance * self.slope.cos + self.slope.sin)
    }

    /// The axles of a layout at a speed of its motors.
    #[must_use]
    pub fn axles(&self, layout: Layout, motor_rad_s: f64) -> [Axle; 2] {
        let most_n_m = self.motor.torque(motor_rad_s).0;
        let counts = counts(layout);
        [0, 1].map(|at| {
            let count = counts[at];
            if count == 0.0 {
                return Axle::UNDRIVEN;
            }
            let losses = self.losses[at].at(motor_rad_s);
            Axle {
                run_w: count * losses.run_w,
                idle_w: if self.disconnect[at] {
                    0.0
                } else {
                    count * losses.idle_w
                },
                copper: losses.copper / count,
                most_n_m: count * most_n_m,
            }
        })
    }

    /// What is asked of a layout at a speed and an acceleration.
    #[must_use]
    pub fn demand(&self, layout: Layout, speed_m_s: f64, acceleration_m_s2: f64) -> Demand {
        let motor_rad_s = speed_m_s * self.ratio / self.radius_m;
        let road_n = self.road_load_n(speed_m_s);
        Demand {
            speed_m_s,
            motor_rad_s,
            road_n,
            force_n: road_n + self.apparent_mass_kg(layout) * acceleration_m_s2,
            axles: self.axles(layout, motor_rad_s),
        }
    }

    /// Torque at the motors' shafts that gives a force at the wheels, T = F·R/(i·η) \[N·m\].
    #[must_use]
    pub fn shaft_torque_n_m(&self, force_n: f64) -> f64 {
        force_n * self.radius_m / (self.ratio * self.gear_efficiency)
    }

    /// Force at the wheels of a torque at the shafts, F = T·i·η/R \[N\].
    #[must_use]
    pub fn pull_n(&self, torque_n_m: f64) -> f64 {
        torque_n_m * self.ratio * self.gear_efficiency / self.radius_m
    }

    /// Distance that the battery lasts \[m\]; none where it is not given, or where a descent fills it.
    #[must_use]
    pub fn range_m(&self, tally: &Tally) -> Option<f64> {
        let battery_j = self.battery_j.filter(|_| tally.battery_j > 0.0);
        battery_j.map(|battery_j| battery_j / tally.per_distance())
    }

    /// Most torque that the motors may brake with \[N·m\]: what the wheels give through the gears,
    /// |F|·R·η/i, and no more than the limit P_r/ω.
    #[must_use]
    pub fn braking_torque_n_m(&self, demand: &Demand) -> f64 {
        let wheels = -demand.force_n * self.radius_m * self.gear_efficiency / self.ratio;
        wheels.min(self.regeneration_w / demand.motor_rad_s)
    }

    /// How the torque is best shared; none where the motors have not that much. For braking the
    /// torques are those that brake.
    #[must_use]
    pub fn best(&self, demand: &Demand) -> Option<Split> {
        if demand.force_n < 0.0 {
            let torque = self.braking_torque_n_m(demand);
            return Some(split::recovering(&demand.axles, torque, demand.motor_rad_s));
        }
        split::best(&demand.axles, self.shaft_torque_n_m(demand.force_n))
    }

    fn even(&self, layout: Layout, demand: &Demand) -> Option<Split> {
        let counts = counts(layout);
        if demand.force_n < 0.0 {
            let torque = self.braking_torque_n_m(demand);
            let speed = demand.motor_rad_s;
            return Some(split::recovering_even(&demand.axles, counts, torque, speed));
        }
        split::even(&demand.axles, counts, self.shaft_torque_n_m(demand.force_n))
    }
}

/// The end of a step, with the torque shared for the least loss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since the start \[s\].
    pub time_s: f64,
    /// Speed \[m/s\].
    pub speed_m_s: f64,
    /// Force at the wheels during the step \[N\].
    pub force_n: f64,
    /// What has left the battery \[J\].
    pub battery_j: f64,
}

/// Drives the cycle of a question with a layout; none where its motors are too weak to follow.
///
/// ```
/// use axlewright_core::{Scenario, idle_drag, layout::Layout};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// let question = idle_drag::Question::from_scenario(&scenario)?;
/// let drive = idle_drag::drive(&question, Layout::F1R1).ok_or(axlewright_core::Problem::Empty)?;
/// // Every joule of the battery is found again.
/// assert!((drive.best.spent_j() / drive.best.battery_j - 1.0).abs() < 1e-9);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn drive(question: &Question, layout: Layout) -> Option<Drive> {
    follow(question, layout, &mut |_| ())
}

/// As [`drive`], and shows every moment.
pub fn follow(question: &Question, layout: Layout, see: &mut dyn FnMut(&Moment)) -> Option<Drive> {
    let mut tallies = [Tally::default(); 3];
    let mass_kg = question.apparent_mass_kg(layout);
    let mut follows = true;
    let mut ends_m_s: Option<(f64, f64)> = None;
    question.cycle.each(&mut |step| {
        if !follows || step.length_s <= 0.0 {
            return;
        }
        let first_m_s = ends_m_s.map_or(step.from_m_s, |ends| ends.0);
        ends_m_s = Some((first_m_s, step.to_m_s));
        let speed_m_s = 0.5 * (step.from_m_s + step.to_m_s);
        if speed_m_s <= 0.0 {
            let used_j = question.auxiliary_w * step.length_s;
            for tally in &mut tallies {
                tally.time_s += step.length_s;
                tally.auxiliary_j += used_j;
                tally.battery_j += used_j;
            }
            see(&Moment {
                time_s: tallies[0].time_s,
                speed_m_s: step.to_m_s,
                force_n: 0.0,
                battery_j: tallies[0].battery_j,
            });
            return;
        }
        let acceleration_m_s2 = (step.to_m_s - step.from_m_s) / step.length_s;
        let demand = question.demand(layout, speed_m_s, acceleration_m_s2);
        let mut free = demand;
        for axle in &mut free.axles {
            axle.idle_w = 0.0;
        }
        let ways = [
            (question.best(&demand), &demand),
            (question.even(layout, &demand), &demand),
            (question.best(&free), &free),
        ];
        for (tally, (split, demand)) in tallies.iter_mut().zip(ways) {
            match split {
                Some(split) => add(tally, question, step.length_s, demand, &split),
                None => follows = false,
            }
        }
        see(&Moment {
            time_s: tallies[0].time_s,
            speed_m_s: step.to_m_s,
            force_n: demand.force_n,
            battery_j: tallies[0].battery_j,
        });
    });
    if let Some((from, to)) = ends_m_s {
        for tally in &mut tallies {
            tally.kinetic_j = 0.5 * mass_kg * (to * to - from * from);
        }
    }
    let [best, even, free] = tallies;
    follows.then_some(Drive { best, even, free })
}

/// Adds one step of a drive.
fn add(tally: &mut Tally, question: &Question, time_s: f64, demand: &Demand, split: &Split) {
    let distance_m = demand.speed_m_s * time_s;
    let shaft_w = split.total_n_m() * demand.motor_rad_s;
    tally.distance_m += distance_m;
    tally.time_s += time_s;
    tally.road_j += demand.road_n * distance_m;
    for (at, axle) in demand.axles.iter().enumerate() {
        let torque = split.torques_n_m[at];
        let lost_j = axle.loss_w(torque) * time_s;
        tally.motor_j[at] += lost_j;
        if torque == 0.0 {
            tally.idle_j += lost_j;
        }
    }
    tally.auxiliary_j += question.auxiliary_w * time_s;
    let efficiency = question.gear_efficiency;
    let given_w = if demand.force_n < 0.0 {
        // The wheels give T·ω/η to the motors, and the brakes take the rest.
        let wheels_w = shaft_w / efficiency;
        tally.gear_j += (wheels_w - shaft_w) * time_s;
        tally.brake_j += (-demand.force_n * demand.speed_m_s - wheels_w) * time_s;
        -shaft_w
    } else {
        tally.gear_j += (1.0 - efficiency) * shaft_w * time_s;
        if shaft_w > 0.0 {
            tally.pushing_s += time_s;
            let [front, rear] = split.torques_n_m;
            if rear == 0.0 {
                tally.alone_s[0] += time_s;
            } else if front == 0.0 {
                tally.alone_s[1] += time_s;
            }
        }
        shaft_w
    };
    tally.battery_j += (given_w + split.loss_w + question.auxiliary_w) * time_s;
}
