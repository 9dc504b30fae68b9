//! How far off a prediction is.

use super::{Asked, Kind, PLACES, Right};
use crate::error::{Allowed, Problem};
use crate::tree::Tree;
use crate::typed::with_point;
use crate::units::{self, Dimension, System};
use crate::words::Lang;

/// What was said, or what is right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Said {
    /// A quantity, SI.
    Number(f64),
    /// The word of a choice.
    Choice(&'static str),
    /// The heights of a line at its places, SI.
    Line([f64; PLACES]),
}

/// How far off a prediction is.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// What the reader said.
    pub given: Said,
    /// What is right.
    pub right: Said,
    /// What was said less what is right, SI; none for a choice. For a line, the mean distance.
    pub difference: Option<f64>,
    /// How far off, as a share: of the right value; where an input was to be found, of the target
    /// that it was to bring about; for a line, of its largest value. None for a choice, where the right value is near zero, and where
    /// what was said brings about nothing that can be computed.
    pub relative: Option<f64>,
    /// Where an input was to be found: what the reader's own value brings about, SI.
    pub reached: Option<f64>,
    /// Of a line: the place where it is furthest off.
    pub furthest: Option<usize>,
    /// Whether it is right within the tolerance.
    pub within: bool,
    /// 1 within the tolerance, falling in a straight line to 0 at four times the tolerance.
    pub score: f64,
}

/// Below this size a value is near zero, and a share of it says nothing.
pub(super) fn near_zero(dimension: Dimension) -> f64 {
    match dimension {
        Dimension::Force => 50.0,
        Dimension::Torque => 10.0,
        Dimension::Energy => 500.0,
        Dimension::Acceleration => 0.1,
        Dimension::WornMass => 1e-5,
        _ => 0.01,
    }
}

impl Asked {
    /// Judges a prediction: a number with any unit of the right kind (without one, in the unit that
    /// [`Asked::unit`] names; with the decimal mark of the language), the word of a choice, or the nine
    /// heights of a line as plain numbers in that unit.
    ///
    /// # Errors
    /// A [`Problem`] for what is no prediction: no number, a unit of another kind, a value that the
    /// input sought does not accept, a word that is not among the choices.
    pub fn judge(&self, text: &str, lang: Lang, system: System) -> Result<Verdict, Problem> {
        match &self.right {
            Right::Number(right) => {
                let said = self.read(text, right.dimension, lang, system)?;
                self.judge_number(said, right.value, right.dimension)
            }
            Right::Line(course) => {
                let heights = self.heights(text, course.most.dimension, system)?;
                Ok(self.judge_line(heights, course))
            }
            Right::Choice { choices, right } => {
                let words = || choices.iter().map(|(word, _)| *word);
                let at =
                    words()
                        .position(|word| word == text)
                        .ok_or_else(|| Problem::UnknownWord {
                            field: self.question.id.into(),
                            value: text.chars().take(40).collect(),
                            allowed: words().collect(),
                        })?;
                let within = at == *right;
                Ok(Verdict {
                    given: Said::Choice(choices[at].0),
                    right: Said::Choice(choices[*right].0),
                    difference: None,
                    relative: None,
                    reached: None,
                    furthest: None,
                    within,
                    score: f64::from(u8::from(within)),
                })
            }
        }
    }

    fn read(
        &self,
        text: &str,
        dimension: Dimension,
        lang: Lang,
        system: System,
    ) -> Result<f64, Problem> {
        let bare = text
            .bytes()
            .all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b',' | b'-' | b'+' | b' '));
        let typed = if bare {
            [text, " ", dimension.display_unit(system)].concat()
        } else {
            text.into()
        };
        let read = with_point(&typed, lang).and_then(|plain| units::parse(&plain, dimension));
        read.map_err(|reason| {
            let units: Vec<&'static str> = dimension.units().collect();
            Problem::NotAQuantity {
                field: self.asked_for().into(),
                value: text.trim().chars().take(40).collect(),
                reason,
                allowed: match dimension {
                    Dimension::Ratio => Allowed::Sentence("allowed.ratio"),
                    _ => Allowed::OneOf(units),
                },
            }
        })
    }

    fn judge_number(
        &self,
        given: f64,
        right: f64,
        dimension: Dimension,
    ) -> Result<Verdict, Problem> {
        let difference = given - right;
        let mut relative = Some(difference / right.abs());
        let mut miss = (difference / right.abs().max(near_zero(dimension))).abs();
        let mut reached = None;
        if right.abs() < near_zero(dimension) {
            relative = None;
        }
        if let (Kind::Find { input, target, .. }, Some(wanted)) = (&self.question.kind, self.target)
        {
            // The reader's own value is put in: what counts is how near it comes to the target.
            self.scenario.clone().set_number(input, given)?;
            reached = self.with(input, given, target.path).ok().map(|a| a.value);
            relative = reached.map(|reached| (reached - wanted.value) / wanted.value.abs());
            miss = relative.map_or(f64::INFINITY, f64::abs);
        }
        let times = self.times(miss);
        Ok(Verdict {
            given: Said::Number(given),
            right: Said::Number(right),
            difference: Some(difference),
            relative,
            reached,
            furthest: None,
            within: times <= 1.0,
            score: Self::score_of(times),
        })
    }

    /// How many tolerances a miss is.
    pub(super) fn times(&self, miss: f64) -> f64 {
        // Round-off must not put a value on the border outside it.
        miss / self.question.tolerance - 1e-9
    }

    /// The score of a miss of so many tolerances.
    pub(super) fn score_of(times: f64) -> f64 {
        ((4.0 - times) / 3.0).clamp(0.0, 1.0)
    }

    /// Path of what the reader is asked for.
    #[must_use]
    pub fn asked_for(&self) -> &str {
        match self.question.kind {
            Kind::Find { input, .. } => input,
            Kind::Number { .. } => self.shown.first().map_or("", |path| path),
            Kind::Choice(_) => self.question.id,
            Kind::Sketch(ref sketch) => sketch.input,
        }
    }

    /// A verdict as plain data, SI: `topic`, `question`, `seed`, `given`, `right`, `unit`,
    /// `difference`, `relative`, `at`, `within`, `score`. What there is not is null. Of a line `given` and
    /// `right` are lists, and `at` says where.
    #[must_use]
    pub fn score_tree(&self, verdict: &Verdict) -> Tree {
        let list = |values: &[f64]| Tree::List(values.iter().copied().map(Tree::Number).collect());
        let number = |value: Option<f64>| value.map_or(Tree::Null, Tree::Number);
        let said = |said: &Said| match said {
            Said::Number(value) => Tree::Number(*value),
            Said::Choice(word) => Tree::text(*word),
            Said::Line(values) => list(values),
        };
        let unit = match &self.right {
            Right::Number(amount) => amount.dimension.si_unit(),
            Right::Line(course) => course.most.dimension.si_unit(),
            Right::Choice { .. } => "",
        };
        let at = self
            .course()
            .map_or(Tree::Null, |course| list(&course.places().map(|(x, _)| x)));
        Tree::Map(
            [
                ("topic", Tree::text(self.topic.name)),
                ("question", Tree::text(self.question.id)),
                ("seed", number(self.seed.map(|seed| seed as f64))),
                ("given", said(&verdict.given)),
                ("right", said(&verdict.right)),
                ("unit", Tree::text(unit)),
                ("difference", number(verdict.difference)),
                ("relative", number(verdict.relative)),
                ("at", at),
                ("within", Tree::Bool(verdict.within)),
                ("score", Tree::Number(verdict.score)),
            ]
            .into_iter()
            .map(|(name, value)| (name.into(), value))
            .collect(),
        )
    }
}
