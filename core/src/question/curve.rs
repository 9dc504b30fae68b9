//! A line: an output along an input. The reader is shown it as a chart instead of the numbers behind it,
//! or sketches it.

use super::make::{dimension_of, unclear};
use super::{Amount, Asked};
use crate::error::Problem;
use crate::units::Dimension;

/// The line that a question is read off, or that is to be sketched.
#[derive(Debug)]
pub struct Curve {
    /// Path of the input along the axis.
    pub input: &'static str,
    /// Its ends, where the line begins and ends, SI.
    pub between: (f64, f64),
    /// Path of the output upward, with `*` for the shown layout.
    pub output: &'static str,
}

/// The chart's line, computed.
#[derive(Clone, Debug)]
pub struct Traced {
    /// Path of the input along the axis.
    pub input: &'static str,
    /// What the input measures.
    pub along: Dimension,
    /// Input and output, SI, from the left to the right.
    pub points: Vec<(f64, Amount)>,
}

/// How many pieces the line has: a multiple of the five that the description tells.
const PIECES: usize = 60;

impl Curve {
    /// The input at a share of the way.
    pub(super) fn at(&self, share: f64) -> f64 {
        self.between.0 + share * (self.between.1 - self.between.0)
    }
}

impl Asked {
    /// The points of a line at the ends of so many pieces, each computed when it is asked for.
    pub(super) fn points(
        &self,
        curve: &Curve,
        pieces: usize,
    ) -> impl Iterator<Item = Result<(f64, Amount), Problem>> {
        (0..=pieces).map(move |at| {
            let along = curve.at(at as f64 / pieces as f64);
            Ok((along, self.with(curve.input, along, curve.output)?))
        })
    }

    /// Computes the line of the chart, if the question has one.
    pub(super) fn trace(&mut self) -> Result<(), Problem> {
        let Some(curve) = &self.question.curve else {
            return Ok(());
        };
        let (first, last) = curve.between;
        let points = self.points(curve, PIECES).collect::<Result<_, _>>()?;
        let sought = match (&self.right, self.target) {
            (super::Right::Number(right), Some(_)) => right.value,
            _ => self.scenario.number(curve.input).unwrap_or(first),
        };
        // What is to be read must stand on the chart, and not at its edge.
        let margin = 0.04 * (last - first);
        if sought < first + margin || sought > last - margin {
            return Err(unclear(self.question));
        }
        self.traced = Some(Traced {
            input: curve.input,
            along: dimension_of(curve.input),
            points,
        });
        Ok(())
    }
}

impl Traced {
    /// Six points of the line, evenly spread: for readers who do not see it.
    pub(super) fn some(&self) -> impl Iterator<Item = &(f64, Amount)> {
        self.points.iter().step_by(PIECES / 5)
    }
}
