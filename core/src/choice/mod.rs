//! Which layout for this brief: every layout is measured, judged against what the brief asks for, and
//! scored by what the reader finds worth something.
//!
//! A demand removes layouts, a weight orders the rest. The score is the weighted mean of four shares:
//! time to 60 mph, cost and energy each as best over own, and the width behind that no drive unit takes.
//! Only layouts that meet the brief are compared with each other.
//!
//! The default weights and unit costs are invented, once for every vehicle: cost counts twice as much as
//! each of the others. All motors are alike and the vehicle weighs the same with any layout.

mod because;
mod measure;
mod parts;
mod report;
mod sensitivity;
mod work;

pub use measure::{GROUNDS, Measure, Space};
pub use parts::{COSTS, Parts};
pub use report::{COLUMNS, TOPIC};
pub use sensitivity::{Flip, VARIED};
pub use work::{Answer, advance, answer};

use crate::error::Problem;
use crate::layout::Layout;
use crate::scenario::Scenario;

/// What is weighed, in the order of all lists here: input of the weight.
pub const WEIGHTS: [&str; 4] = [
    "choice.weight_time",
    "choice.weight_cost",
    "choice.weight_energy",
    "choice.weight_room",
];

/// What the brief asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Brief {
    /// Longest time to 60 mph \[s\].
    pub target_s: Option<f64>,
    /// Steepest grade on which the car must start from rest.
    pub start_grade: Option<f64>,
    /// Shortest range \[m\].
    pub least_range_m: Option<f64>,
    /// Whether it must turn in place.
    pub turns: bool,
    /// Whether it must move torque from left to right by its motors.
    pub vectors: bool,
    /// Weights, in the order of [`WEIGHTS`].
    pub weights: [f64; 4],
    /// Costs of the parts, in the order of [`COSTS`].
    pub costs: [f64; 6],
}

impl Brief {
    /// Reads the brief of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let mut weights = [0.0; 4];
        for (weight, path) in weights.iter_mut().zip(WEIGHTS) {
            *weight = scenario.require(path)?;
        }
        let mut costs = [0.0; 6];
        for (cost, path) in costs.iter_mut().zip(COSTS) {
            *cost = scenario.require(path)?;
        }
        let asked = |path| scenario.word(path) == Some("on");
        Ok(Self {
            target_s: scenario.number("choice.target_time"),
            start_grade: scenario.number("choice.start_grade"),
            least_range_m: scenario.number("choice.least_range"),
            turns: asked("choice.turn_in_place"),
            vectors: asked("choice.torque_vectoring"),
            weights,
            costs,
        })
    }

    /// The first demand that a layout does not meet, and [`Verdict::Meets`] where it meets all.
    #[must_use]
    pub fn verdict(&self, measure: &Measure) -> Verdict {
        let less = |has: Option<f64>, least: f64| has.is_none_or(|has| has < least);
        let too_slow = |target_s: f64| measure.mark.is_none_or(|mark| mark.time_s > target_s);
        if measure.space.left_m < 0.0 {
            Verdict::DoesNotFit
        } else if self.turns && !measure.turn.feasible() {
            Verdict::CannotTurn
        } else if self.vectors && !measure.vectors {
            Verdict::CannotVector
        } else if self.start_grade.is_some() && measure.start.acceleration_m_s2 < 0.0 {
            Verdict::CannotStart
        } else if self.target_s.is_some_and(too_slow) {
            Verdict::TooSlow
        } else if self
            .least_range_m
            .is_some_and(|least_m| less(measure.range_m, least_m))
        {
            Verdict::RangeTooShort
        } else {
            Verdict::Meets
        }
    }
}

/// Whether a layout meets the brief, or what it fails first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It meets it.
    Meets,
    /// Its drive units do not fit.
    DoesNotFit,
    /// It cannot turn in place.
    CannotTurn,
    /// No axle has a motor per wheel.
    CannotVector,
    /// It cannot start on the grade.
    CannotStart,
    /// It takes too long to 60 mph.
    TooSlow,
    /// It does not go far enough.
    RangeTooShort,
}

impl Verdict {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Meets => "meets_brief",
            Self::DoesNotFit => "does_not_fit",
            Self::CannotTurn => "cannot_turn_in_place",
            Self::CannotVector => "cannot_vector_torque",
            Self::CannotStart => "cannot_start_on_grade",
            Self::TooSlow => "misses_target_time",
            Self::RangeTooShort => "range_too_short",
        }
    }
}

/// What becomes of one layout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// The layout.
    pub layout: Layout,
    /// Whether it meets the brief.
    pub verdict: Verdict,
    /// Its cost.
    pub cost: f64,
    /// Shares of time, cost, energy and room, 1 for the best that meets the brief; meant for layouts
    /// that do.
    pub shares: [f64; 4],
    /// Weighted mean of the shares; none for a layout that does not meet the brief.
    pub score: Option<f64>,
    /// Whether no other layout that meets the brief is as good in all that has a weight, and better in
    /// something.
    pub on_pareto_front: bool,
}

/// What comes of a brief.
#[derive(Clone, Debug, PartialEq)]
pub struct Decision {
    /// Every layout, in the order of the measures.
    pub judged: Vec<Judged>,
    /// The layout with the highest score; none where none meets the brief.
    pub recommended: Option<Layout>,
}

impl Decision {
    /// What becomes of a layout.
    #[must_use]
    pub fn of(&self, layout: Layout) -> Option<&Judged> {
        self.judged.iter().find(|judged| judged.layout == layout)
    }

    /// The layouts that meet the brief.
    fn able(&self) -> impl Iterator<Item = &Judged> {
        self.judged.iter().filter(|judged| judged.score.is_some())
    }

    /// The layout with the highest score beside the recommended one.
    #[must_use]
    pub fn runner_up(&self) -> Option<&Judged> {
        best(
            self.able()
                .filter(|judged| Some(judged.layout) != self.recommended),
        )
    }
}

/// Judges the measured layouts by a brief. `all`: as if every one met its demands.
#[must_use]
pub fn decide(brief: &Brief, measures: &[Measure], all: bool) -> Decision {
    let verdicts = measures.iter().map(|measure| {
        let verdict = brief.verdict(measure);
        (verdict, all || verdict == Verdict::Meets)
    });
    let verdicts: Vec<(Verdict, bool)> = verdicts.collect();
    let values: Vec<[f64; 4]> = measures.iter().map(|m| values(brief, m)).collect();
    // The best of what meets the brief: scaling a column scales its best too, and no share moves.
    let mut most = [0.0_f64; 4];
    for (value, (_, able)) in values.iter().zip(&verdicts) {
        for (most, value) in most.iter_mut().zip(value) {
            if *able {
                *most = most.max(*value);
            }
        }
    }
    let mut judged: Vec<Judged> = measures
        .iter()
        .zip(values)
        .zip(&verdicts)
        .map(|((measure, values), (verdict, able))| {
            let mut shares = [0.0; 4];
            for ((share, value), most) in shares.iter_mut().zip(values).zip(most) {
                *share = if most > 0.0 { value / most } else { 0.0 };
            }
            Judged {
                layout: measure.layout,
                verdict: *verdict,
                cost: measure.parts.cost(&brief.costs),
                shares,
                score: able.then(|| mean(&brief.weights, &shares)),
                on_pareto_front: false,
            }
        })
        .collect();
    for at in 0..judged.len() {
        let one = judged[at];
        judged[at].on_pareto_front = one.score.is_some()
            && !judged
                .iter()
                .any(|other| other.score.is_some() && dominates(&brief.weights, other, &one));
    }
    let recommended = best(judged.iter()).map(|judged| judged.layout);
    Decision {
        judged,
        recommended,
    }
}

/// What is better where it is more, one number for each weight. What a layout does not do at all counts
/// nothing.
fn values(brief: &Brief, measure: &Measure) -> [f64; 4] {
    let one_over = |value: f64| if value > 0.0 { 1.0 / value } else { 0.0 };
    [
        measure.mark.map_or(0.0, |mark| one_over(mark.time_s)),
        one_over(measure.parts.cost(&brief.costs)),
        measure.energy_j_m.map_or(0.0, one_over),
        measure.space.free_share,
    ]
}

/// s = Σw·s/Σw; nothing where nothing has a weight.
fn mean(weights: &[f64; 4], shares: &[f64; 4]) -> f64 {
    let sum: f64 = weights.iter().sum();
    if sum <= 0.0 {
        return 0.0;
    }
    let weighted: f64 = weights.iter().zip(shares).map(|(w, s)| w * s).sum();
    weighted / sum
}

/// Whether one is as good as another in all that has a weight, and better in something.
fn dominates(weights: &[f64; 4], one: &Judged, other: &Judged) -> bool {
    let mut better = false;
    let pairs = one.shares.iter().zip(&other.shares);
    for (weight, (mine, theirs)) in weights.iter().zip(pairs) {
        if *weight > 0.0 {
            if mine < theirs {
                return false;
            }
            better |= mine > theirs;
        }
    }
    better
}

/// The highest score; of equal ones the first, which has fewer motors.
fn best<'a>(judged: impl Iterator<Item = &'a Judged>) -> Option<&'a Judged> {
    let mut best: Option<(&Judged, f64)> = None;
    for one in judged {
        if let Some(score) = one.score
            && best.is_none_or(|(_, most)| score > most)
        {
            best = Some((one, score));
        }
    }
    best.map(|(one, _)| one)
}

#[cfg(test)]
mod tests;
