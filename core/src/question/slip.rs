//! Spot the error: a worked solution with a slip in one line.
//!
//! The solution is the working of the topic. One equation is replaced by one of the slips that the table
//! names, and what follows from it is computed on, as a reader would who did not notice.

use super::draw::Draw;
use super::{Asked, Right};
use crate::error::Problem;
use crate::working::{Step, with_slip};

/// A slip that people make.
#[derive(Debug)]
pub struct Slip {
    /// Symbol of the line that it spoils.
    pub symbol: &'static str,
    /// The wrong right side of that line.
    pub equation: &'static str,
    /// Why it is wrong: `question.why.WHY` in the catalogue.
    pub why: &'static str,
}

/// What the choices are called: the lines' numbers, as the list of the solution counts them.
const NUMBERS: [&str; 12] = [
    "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12",
];

/// Share by which the spoilt line must differ from the right one.
const APART: f64 = 0.02;

/// A solution with a slip in it.
#[derive(Clone, Debug)]
pub struct Spoilt {
    /// The lines.
    pub lines: Vec<Step>,
    /// The slip.
    pub slip: &'static Slip,
    /// The line as it should be.
    pub right: Step,
}

/// Word and key of each choice.
type Choices = Vec<(&'static str, String)>;

impl Asked {
    /// Spoils the solution; the choices, and which of them is right. None where the slip hardly shows.
    pub(super) fn spoil(
        &mut self,
        output: &'static str,
        slips: &'static [Slip],
        draw: Option<&mut Draw>,
    ) -> Result<Option<(Choices, usize)>, Problem> {
        self.shown = vec![self.path(output)];
        let report = self.topic.report(&self.scenario)?;
        let steps = report.derivations(&self.shown);
        let Some(slip) = slips.get(draw.map_or(0, |draw| draw.below(slips.len()))) else {
            return Ok(None);
        };
        let at = steps.iter().rposition(|s| s.result.symbol == slip.symbol);
        let Some((at, lines)) = at.and_then(|at| Some((at, with_slip(&steps, at, slip.equation)?)))
        else {
            return Ok(None);
        };
        let (wrong, right) = (lines[at].result.value, steps[at].result.value);
        let is_plain = (wrong - right).abs() > APART * wrong.abs().max(right.abs());
        if !is_plain || lines.len() > NUMBERS.len() {
            return Ok(None);
        }
        let named = NUMBERS.iter().take(lines.len());
        let choices = named.map(|number| (*number, String::new())).collect();
        self.spoilt = Some(Spoilt {
            right: steps[at].clone(),
            lines,
            slip,
        });
        Ok(Some((choices, at)))
    }

    /// The number of the line with the slip, where there is one.
    pub(super) fn wrong_line(&self) -> &'static str {
        match &self.right {
            Right::Choice { right, .. } => NUMBERS.get(*right).copied().unwrap_or(""),
            Right::Number(_) | Right::Line(_) => "",
        }
    }
}
