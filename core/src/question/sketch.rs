//! A line that the reader sketches: what an output comes to along an input.
//!
//! The reader gives the height of the line at nine places, evenly spaced. There, and only there, it is
//! compared with the true line; between them the true line is known finely enough to be drawn.

use super::judge::near_zero;
use super::make::{dimension_of, unclear};
use super::{Amount, Asked, Curve, Kind, Right, Said, Verdict};
use crate::error::Problem;
use crate::math::{larger, power_of_ten};
use crate::units::{self, Dimension, System};
use crate::{decimal, scenario::Scenario};

/// How many places a sketched line has.
pub const PLACES: usize = 9;

/// Pieces of the true line between two places.
const PIECES: usize = 4;

/// The true line.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// What the input along measures.
    pub along: Dimension,
    /// Points in the order of the input, SI: the places, and some between them.
    pub points: Vec<(f64, f64)>,
    /// The largest value, with dimension and digits.
    pub most: Amount,
}

impl Course {
    /// Where the places are, and the true value there, SI.
    #[must_use]
    pub fn places(&self) -> [(f64, f64); PLACES] {
        core::array::from_fn(|at| self.points.get(PIECES * at).copied().unwrap_or_default())
    }

    /// The upper end of the axis to draw on, in the unit that people read. It is one of a few round
    /// numbers, so that it does not tell how high the line rises.
    #[must_use]
    pub fn top(&self, system: System) -> f64 {
        let most = 1.15 * units::from_si(self.most.value, self.most.dimension, system);
        let mut exponent = -9;
        while power_of_ten(exponent + 1) <= most && exponent < 12 {
            exponent += 1;
        }
        let steps = [1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0];
        let tops = steps.map(|step| {
            if exponent < 0 {
                step / power_of_ten(-exponent)
            } else {
                step * power_of_ten(exponent)
            }
        });
        tops.into_iter().find(|top| *top >= most).unwrap_or(tops[7])
    }
}

impl Asked {
    /// Finds the true line.
    pub(super) fn sketch(&mut self, sketch: &Curve) -> Result<(), Problem> {
        let mut points = Vec::new();
        let mut most: Option<Amount> = None;
        for point in self.points(sketch, PIECES * (PLACES - 1)) {
            let (x, amount) = point?;
            // The axis begins at nought.
            if amount.value < 0.0 {
                return Err(unclear(self.question));
            }
            points.push((x, amount.value));
            if most.is_none_or(|most| amount.value > most.value) {
                most = Some(amount);
            }
        }
        let most = most.ok_or_else(|| unclear(self.question))?;
        if most.value < near_zero(most.dimension) {
            return Err(unclear(self.question));
        }
        self.right = Right::Line(Course {
            along: dimension_of(sketch.input),
            points,
            most,
        });
        self.shown = vec![self.path(sketch.output)];
        self.solved = self.scenario.clone();
        self.solved.set_number(sketch.input, sketch.at(0.5))
    }

    /// Reads nine heights, divided by spaces, in the unit that [`Asked::unit`] names.
    pub(super) fn heights(
        &self,
        text: &str,
        dimension: Dimension,
        system: System,
    ) -> Result<[f64; PLACES], Problem> {
        let mut heights = [0.0; PLACES];
        let mut words = text.split_ascii_whitespace();
        let all = heights.iter_mut().all(|height| {
            let read = words.next().and_then(decimal::parse);
            *height = units::to_si(read.unwrap_or(0.0), dimension, system);
            read.is_some()
        });
        if all && words.next().is_none() {
            return Ok(heights);
        }
        Err(Problem::NoLine {
            question: self.question.id,
        })
    }

    /// Judges a sketched line by its mean distance from the true one, as a share of the largest true
    /// value at the places.
    pub(super) fn judge_line(&self, given: [f64; PLACES], course: &Course) -> Verdict {
        let right = course.places().map(|(_, value)| value);
        let (mut sum, mut size) = (0.0, near_zero(course.most.dimension));
        let (mut furthest, mut most) = (0, -1.0);
        for (at, (given, right)) in given.iter().zip(right).enumerate() {
            let off = (given - right).abs();
            sum += off;
            size = larger(right, size);
            if off > most {
                (furthest, most) = (at, off);
            }
        }
        let mean = sum / PLACES as f64;
        let times = self.times(mean / size);
        Verdict {
            given: Said::Line(given),
            right: Said::Line(right),
            difference: Some(mean),
            relative: Some(mean / size),
            reached: None,
            furthest: Some(furthest),
            within: times <= 1.0,
            score: Self::score_of(times),
        }
    }

    /// Moves the scenario that shows the answer to where a sketched line was furthest off, so that its
    /// working is that of the largest mistake.
    pub fn settle(&mut self, verdict: &Verdict) {
        if let (Kind::Sketch(sketch), Some(at)) = (&self.question.kind, verdict.furthest) {
            let x = sketch.at(at as f64 / (PLACES - 1) as f64);
            // The line was made from this very value, so it is not refused.
            let _ = self.solved.set_number(sketch.input, x);
        }
    }

    /// The true line, where one is to be sketched.
    #[must_use]
    pub fn course(&self) -> Option<&Course> {
        match &self.right {
            Right::Line(course) => Some(course),
            _ => None,
        }
    }

    /// The scenarios in which it counts what the reader is told: for a line, more than one.
    pub(super) fn probes(&self, scenario: &Scenario) -> Vec<Scenario> {
        let Kind::Sketch(sketch) = &self.question.kind else {
            return vec![scenario.clone()];
        };
        let probe = |x| {
            let mut probe = scenario.clone();
            probe.set_number(sketch.input, x).ok().map(|()| probe)
        };
        [0.0, 0.5, 1.0]
            .into_iter()
            .filter_map(|share| probe(sketch.at(share)))
            .collect()
    }
}
