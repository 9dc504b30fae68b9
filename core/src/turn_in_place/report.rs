//! The topic's readings.

use super::judge::driven_apart;
use super::spin::{self, Spin};
use super::table::OUTPUTS;
use super::{
    AxleState, Drilling, LayoutAnswer, Question, SplitTurn, Turn, drilling, full_lock, judge,
    path_radius_m, slides_m, split_turn, wear,
};
use crate::error::Problem;
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::scrub;
use crate::surface::{SURFACES, Surface};
use crate::topic::{Reading, ReadingValue, Readings};
use core::f64::consts::{PI, TAU};

/// The slow turn as it was solved.
pub(super) enum Slow {
    /// Left and right alike.
    Alike(Turn),
    /// Friction of its own left and right.
    Split(SplitTurn),
}

/// Everything that is read off a slow turn, in one place for readings and working.
pub(super) struct Numbers {
    pub(super) slow: Slow,
    pub(super) centre_behind_front_m: f64,
    pub(super) centre_to_left_m: f64,
    pub(super) path_radius_m: f64,
    pub(super) speed_ratio_m: f64,
    pub(super) mean_force_n: f64,
    pub(super) front_force_n: f64,
    pub(super) rear_force_n: f64,
    pub(super) resisting_n_m: f64,
    pub(super) energy_j: f64,
    pub(super) lateral_scrub_n_m: f64,
    pub(super) lengthwise_use: f64,
    /// Heat of one tyre in a turn, front and rear; the mean of left and right \[J\].
    pub(super) heat_j: [f64; 2],
}

fn grip_n(axle: &AxleState) -> f64 {
    axle.friction * axle.load_n
}

pub(super) fn numbers(question: &Question) -> Result<Numbers, Problem> {
    let mut numbers = if question.is_split() {
        of_split(question, split_turn(question)?)
    } else {
        of_alike(question, question.four_wheel_turn()?)
    };
    let (front_n, rear_n) = (grip_n(&question.front), grip_n(&question.rear));
    let behind_m = numbers.centre_behind_front_m;
    numbers.mean_force_n = 0.5 * (numbers.front_force_n + numbers.rear_force_n);
    numbers.lengthwise_use =
        2.0 * (numbers.front_force_n + numbers.rear_force_n) / (front_n + rear_n);
    numbers.lateral_scrub_n_m = scrub::lateral_scrub_moment_n_m(
        1.0,
        (front_n, behind_m),
        (rear_n, question.chassis.wheelbase_m() - behind_m),
    );
    numbers.path_radius_m = path_radius_m(question, behind_m, numbers.centre_to_left_m);
    Ok(numbers)
}

fn of_alike(question: &Question, turn: Turn) -> Numbers {
    Numbers {
        centre_behind_front_m: turn.centre_behind_front_m,
        centre_to_left_m: 0.0,
        path_radius_m: 0.0,
        speed_ratio_m: turn.speed_ratio_m,
        mean_force_n: 0.0,
        front_force_n: turn.front_force_n,
        rear_force_n: turn.rear_force_n,
        resisting_n_m: turn.resisting_moment_n_m,
        energy_j: turn.energy_per_turn_j,
        lateral_scrub_n_m: 0.0,
        lengthwise_use: 0.0,
        heat_j: [
            PI * grip_n(&question.front) * turn.front_slide_m,
            PI * grip_n(&question.rear) * turn.rear_slide_m,
        ],
        slow: Slow::Alike(turn),
    }
}

fn of_split(question: &Question, turn: SplitTurn) -> Numbers {
    let mean = |left: usize| 0.5 * (turn.forces_n[left].0.abs() + turn.forces_n[left + 1].0.abs());
    let slides = |at: usize| turn.grips_n[at] * turn.slides_m[at][2];
    let heat = |left: usize| PI * (slides(left) + slides(left + 1));
    let holds = |left: usize, ahead_m: f64| {
        let one = |at: usize| turn.grips_n[at] / turn.slides_m[at][2];
        (one(left) + one(left + 1)) * ahead_m * ahead_m
    };
    let behind_m = turn.centre_behind_front_m;
    Numbers {
        centre_behind_front_m: behind_m,
        centre_to_left_m: turn.centre_to_left_m,
        path_radius_m: 0.0,
        speed_ratio_m: turn.speed_ratio_m,
        mean_force_n: 0.0,
        front_force_n: mean(0),
        rear_force_n: mean(2),
        resisting_n_m: holds(0, behind_m) + holds(2, question.chassis.wheelbase_m() - behind_m),
        energy_j: TAU * turn.sliding_n_m(),
        lateral_scrub_n_m: 0.0,
        lengthwise_use: 0.0,
        heat_j: [heat(0), heat(2)],
        slow: Slow::Split(turn),
    }
}

/// What the size of the patches adds; only where left and right are alike and the pressure is given.
pub(super) struct Patches {
    /// Front and rear.
    pub(super) axles: [Drilling; 2],
    /// Sliding of the patches along and across, per radian, front and rear \[m\].
    pub(super) slides_m: [(f64, f64); 2],
    /// If the bound resisted: centre behind the front axle, κ, mean force per wheel, energy.
    pub(super) against: Option<Against>,
}

/// The turn against the bound of the drilling moment.
pub(super) struct Against {
    pub(super) centre_behind_front_m: f64,
    pub(super) speed_ratio_m: f64,
    /// Sliding per radian, front and rear \[m\].
    pub(super) slides_m: [f64; 2],
    /// Force of one wheel, front and rear \[N\].
    pub(super) forces_n: [f64; 2],
    pub(super) energy_j: f64,
}

pub(super) fn patches(question: &Question, numbers: &Numbers) -> Option<Patches> {
    let Slow::Alike(turn) = &numbers.slow else {
        return None;
    };
    let pressure_pa = question.pressure_pa?;
    let wheelbase_m = question.chassis.wheelbase_m();
    let axles = [&question.front, &question.rear];
    let slides_m = slides_m(turn, (axles[0], axles[1]), wheelbase_m);
    let of = |at: usize| {
        drilling(
            axles[at],
            question.tyre_widths_m[at],
            pressure_pa,
            slides_m[at],
        )
    };
    let drills = [of(0), of(1)];
    let bound_n_m = drills[0].bound_n_m + drills[1].bound_n_m;
    let against = question.turn_against(bound_n_m).map(|(behind_m, ratio_m)| {
        let ahead_m = [behind_m, wheelbase_m - behind_m];
        let along_m = axles.map(|axle| axle.speed_factor * ratio_m - 0.5 * axle.track_m);
        let slides_m = [0, 1].map(|at| crate::math::hypot(along_m[at], ahead_m[at]));
        Against {
            centre_behind_front_m: behind_m,
            speed_ratio_m: ratio_m,
            slides_m,
            forces_n: [0, 1].map(|at| 0.5 * grip_n(axles[at]) * along_m[at] / slides_m[at]),
            energy_j: TAU
                * (grip_n(axles[0]) * slides_m[0] + grip_n(axles[1]) * slides_m[1] + bound_n_m),
        }
    });
    Some(Patches {
        axles: drills,
        slides_m,
        against,
    })
}

/// What a turn takes on ground whose friction is 1 everywhere; on another it is in proportion.
pub(super) struct OnOne {
    /// Mean force per wheel \[N\].
    pub(super) mean_force_n: f64,
    /// Force of the wheel that pushes most \[N\].
    most_force_n: f64,
    /// Energy of a turn \[J\].
    pub(super) energy_j: f64,
    /// Whether the shown layout can turn in place if its motors have the torque.
    can: bool,
}

impl OnOne {
    pub(super) fn of(question: &Question, layout: Layout) -> Result<Self, Problem> {
        let question = question.on_friction(1.0);
        let turn = question.four_wheel_turn()?;
        let free = Question {
            motor_wheel_torque_n_m: None,
            ..question
        };
        Ok(Self {
            mean_force_n: 0.5 * (turn.front_force_n + turn.rear_force_n),
            most_force_n: turn.front_force_n.max(turn.rear_force_n),
            energy_j: turn.energy_per_turn_j,
            can: judge(&free, layout).verdict.feasible(),
        })
    }

    fn on(&self, question: &Question, surface: &Surface) -> OnSurface {
        let friction = surface.friction_sliding();
        let enough = question
            .wheel_radius_m
            .zip(question.motor_wheel_torque_n_m)
            .is_none_or(|(radius_m, has)| radius_m * self.most_force_n * friction <= has);
        OnSurface {
            name: surface.name,
            mean_force_n: self.mean_force_n * friction,
            energy_j: self.energy_j * friction,
            feasible: self.can && enough,
        }
    }
}

/// What a turn takes on a surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnSurface {
    /// Name of the surface in a scenario.
    pub name: &'static str,
    /// Mean tractive force per wheel \[N\].
    pub mean_force_n: f64,
    /// Energy of one full turn \[J\].
    pub energy_j: f64,
    /// Whether the layout can turn in place there.
    pub feasible: bool,
}

/// What a turn takes on each surface of the adhesion table, level and alike left and right.
///
/// # Errors
/// As [`Question::four_wheel_turn`].
pub fn on_surfaces(question: &Question, layout: Layout) -> Result<Vec<OnSurface>, Problem> {
    let on_one = OnOne::of(question, layout)?;
    Ok(SURFACES
        .iter()
        .map(|surface| on_one.on(question, surface))
        .collect())
}

/// Wear coefficient: the reader's, or the calibrated one \[m³/J\].
pub(super) fn wear_m3_j(question: &Question) -> f64 {
    question
        .wear_m3_j
        .unwrap_or_else(|| wear::calibrated().coefficient_m3_j)
}

pub(super) fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let numbers = numbers(&question)?;
    let mut readings = slow(scenario, &question, &numbers)?;
    if let Some(spin) = Spin::of_slow_turn(scenario, &question, &numbers)? {
        spin::add(&mut readings, &spin);
    }
    Ok(readings.into_list())
}

/// The readings of the slow turn alone, without the spin-up.
///
/// # Errors
/// A [`Problem`] of the scenario.
pub(super) fn slow_readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(slow(scenario, &question, &numbers(&question)?)?.into_list())
}

fn slow(scenario: &Scenario, question: &Question, numbers: &Numbers) -> Result<Readings, Problem> {
    let torque = |force_n: f64| question.wheel_radius_m.map(|radius_m| radius_m * force_n);
    let mut readings = Readings::of(OUTPUTS);
    readings.optional("wheel_torque", torque(numbers.mean_force_n));
    readings.optional("available_wheel_torque", question.motor_wheel_torque_n_m);
    let split = question.is_split().then_some(numbers.centre_to_left_m);
    for (name, value) in [
        ("tractive_force_per_wheel", numbers.mean_force_n),
        ("energy_per_turn", numbers.energy_j),
        ("friction_used_lengthwise", numbers.lengthwise_use),
        ("resisting_moment", numbers.resisting_n_m),
        ("lateral_scrub_moment", numbers.lateral_scrub_n_m),
        ("wheel_speed_ratio", numbers.speed_ratio_m),
        (
            "turning_centre_behind_front_axle",
            numbers.centre_behind_front_m,
        ),
    ] {
        readings.number(name, value);
    }
    readings.optional("turning_centre_to_left", split);
    readings.number("path_radius", numbers.path_radius_m);
    readings.number("front_tractive_force_per_wheel", numbers.front_force_n);
    readings.number("rear_tractive_force_per_wheel", numbers.rear_force_n);
    readings.optional("front_wheel_torque", torque(numbers.front_force_n));
    readings.optional("rear_wheel_torque", torque(numbers.rear_force_n));
    if let Some(patches) = patches(question, numbers) {
        let [front, rear] = &patches.axles;
        readings.number("front_patch_length", front.patch_length_m);
        readings.number("rear_patch_length", rear.patch_length_m);
        readings.number("drilling_moment", front.moment_n_m + rear.moment_n_m);
        readings.number("drilling_moment_bound", front.bound_n_m + rear.bound_n_m);
        if let Some(against) = &patches.against {
            let mean_n = 0.5 * (against.forces_n[0] + against.forces_n[1]);
            readings.optional("wheel_torque_bound", torque(mean_n));
            readings.number("energy_per_turn_bound", against.energy_j);
        }
    }
    readings.number("heat_per_front_tyre", numbers.heat_j[0]);
    readings.number("heat_per_rear_tyre", numbers.heat_j[1]);
    let coefficient = wear_m3_j(question);
    let (least, most) = wear::RANGE_M3_J;
    readings.number("wear_coefficient", coefficient);
    for (name, coefficient) in [
        ("tread_lost_per_turn", coefficient),
        ("tread_lost_least", least),
        ("tread_lost_most", most),
    ] {
        readings.number(name, wear::worn_kg(coefficient, numbers.energy_j));
    }
    if let Slow::Alike(turn) = &numbers.slow {
        readings.optional("drift_per_turn", question.drift_per_turn_m(turn));
    }
    add_layouts(&mut readings, scenario, question);
    add_surfaces(&mut readings, scenario, question)?;
    Ok(readings)
}

fn add_layouts(readings: &mut Readings, scenario: &Scenario, question: &Question) {
    // Only where each wheel has a motor of its own matters, so several layouts share an answer.
    let mut judged: Vec<([bool; 2], LayoutAnswer)> = Vec::new();
    for layout in scenario.layouts() {
        let kind = driven_apart(layout);
        let known = judged.iter().find(|(known, _)| *known == kind);
        let answer = match known {
            Some((_, answer)) => *answer,
            None => {
                let answer = judge(question, layout);
                judged.push((kind, answer));
                answer
            }
        };
        let name = layout.name();
        let feasible = answer.verdict.feasible();
        readings.add("layouts.*.feasible", name, ReadingValue::Flag(feasible));
        let reason = ReadingValue::Word(answer.verdict.word());
        readings.add("layouts.*.reason", name, reason);
        let number = ReadingValue::Number;
        if let Some((driving_n_m, holding_n_m)) = answer.pair_moments_n_m {
            readings.add("layouts.*.driving_moment", name, number(driving_n_m));
            readings.add("layouts.*.holding_moment", name, number(holding_n_m));
        }
        if let Some(lock) = full_lock(question, layout) {
            for (path, value) in [
                (
                    "layouts.*.full_lock_centre_behind_front",
                    lock.centre_behind_front_m,
                ),
                ("layouts.*.full_lock_centre_to_left", lock.centre_to_left_m),
                ("layouts.*.full_lock_sweep_radius", lock.sweep_radius_m),
            ] {
                readings.add(path, name, number(value));
            }
            let in_place = ReadingValue::Flag(lock.in_place);
            readings.add("layouts.*.full_lock_in_place", name, in_place);
        }
    }
}

fn add_surfaces(
    readings: &mut Readings,
    scenario: &Scenario,
    question: &Question,
) -> Result<(), Problem> {
    let on_one = OnOne::of(question, scenario.layout())?;
    for surface in SURFACES {
        let on = on_one.on(question, surface);
        if let Some(radius_m) = question.wheel_radius_m {
            // The order of the working: the torque on a friction of 1, times the friction.
            let torque_n_m = radius_m * on_one.mean_force_n * surface.friction_sliding();
            let value = ReadingValue::Number(torque_n_m);
            readings.add("surfaces.*.wheel_torque", surface.name, value);
        }
        let energy = ReadingValue::Number(on.energy_j);
        readings.add("surfaces.*.energy_per_turn", surface.name, energy);
        let feasible = ReadingValue::Flag(on.feasible);
        readings.add("surfaces.*.feasible", surface.name, feasible);
    }
    Ok(())
}
