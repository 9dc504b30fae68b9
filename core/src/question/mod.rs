//! Questions that a reader answers before the answer is shown.
//!
//! Each topic declares its questions in a table: what is drawn from the seed, what is asked, how near
//! is right. [`Question::make`] turns one into an [`Asked`] with its numbers; [`Asked::judge`] says
//! how far off a prediction is. The same seed gives the same numbers everywhere. Without a seed the
//! scenario is asked as it is.
//!
//! ```
//! use axlewright_core::question::Question;
//! use axlewright_core::units::System;
//! use axlewright_core::words::Lang;
//! use axlewright_core::{Scenario, topic};
//!
//! let topic = topic::find("traction")?;
//! let asked = Question::make(topic, "limit", Some(7), &Scenario::default())?;
//! let verdict = asked.judge("0.5 g", Lang::English, System::Si)?;
//! assert!((0.0..=1.0).contains(&verdict.score));
//! assert!(asked.judge("11 kN", Lang::English, System::Si).is_err());
//! # Ok::<(), axlewright_core::Problem>(())
//! ```

mod choice;
mod choose;
mod cornering;
mod curve;
mod draw;
mod given;
mod idle_drag;
mod judge;
mod launch;
mod load_transfer;
mod make;
mod motor_split;
mod packaging;
mod rank;
mod setting;
mod sketch;
mod slip;
mod text;
mod traction;
mod turn_in_place;
mod vary;

pub use curve::{Curve, Traced};
pub use judge::{Said, Verdict};
pub use make::{Amount, Asked, Change, Right};
pub use rank::{Because, Order};
pub use setting::{SEED_LIMIT, Setting};
pub use sketch::{Course, PLACES};
pub use slip::{Slip, Spoilt};
pub use vary::{Spread, Vary};

use crate::topic::Topic;

/// One question of a topic.
#[derive(Debug)]
pub struct Question {
    /// Name: `needed_friction`. Statement and hint are `question.TOPIC.ID` in the catalogue.
    pub id: &'static str,
    /// What is taken out of the scenario, because it would say the answer or disturb.
    pub hides: &'static [&'static str],
    /// What the question sets, whatever the scenario gives: path and text.
    pub fixed: &'static [(&'static str, &'static str)],
    /// What the seed draws. Without a seed only what the scenario lacks is set.
    pub varied: &'static [Vary],
    /// Inputs that the reader is always told. Whatever else the answer depends on is told as well.
    pub told: &'static [&'static str],
    /// What is put into the statement, in order: paths of inputs, `layout`, `target`, or `from` and
    /// `to`, the ends of a line.
    pub parts: &'static [&'static str],
    /// A chart that tells the reader what the given values would: the answer is read off it.
    pub curve: Option<Curve>,
    /// What is asked.
    pub kind: Kind,
    /// Share of the right value by which a prediction may miss and still be right; for a line, on
    /// average and of its largest value.
    pub tolerance: f64,
}

/// What a question asks.
#[derive(Debug)]
pub enum Kind {
    /// The value of an output.
    Number {
        /// Path of the output, with `*` for the shown layout.
        output: &'static str,
    },
    /// The value of an input that brings an output to a target.
    Find {
        /// Path of the input.
        input: &'static str,
        /// Values between which it is sought, SI.
        between: (f64, f64),
        /// Whether the output rises with the input. Beyond where the topic has an answer, it counts
        /// as having risen on.
        rising: bool,
        /// The output, and what it is to come to.
        target: Vary,
    },
    /// One of several.
    Choice(Choice),
    /// A line: an output along an input.
    Sketch(Curve),
}

/// What the choices are.
#[derive(Debug)]
pub enum Choice {
    /// The largest of several outputs: path, word, and key of the catalogue (empty: the word itself).
    Larger(&'static [(&'static str, &'static str, &'static str)]),
    /// The word that an output has.
    Word {
        /// Path of the output.
        output: &'static str,
        /// The words to choose from: keys `reason.WORD` of the catalogue.
        words: &'static [&'static str],
        /// Pairs of outputs that must not be nearly the same: there the word would hang on a hair.
        apart: &'static [(&'static str, &'static str)],
    },
    /// What becomes of an output when one input changes: more, the same, less. The seed draws one of
    /// the changes.
    Change(&'static [(Vary, &'static str)]),
    /// An order of layouts with the reason for it.
    Rank {
        /// Path of the output that orders them, with `*` for each layout.
        output: &'static str,
        /// Whether the largest value comes first; otherwise the smallest does.
        falling: bool,
        /// The orders to choose from.
        orders: &'static [Order],
    },
    /// The line of a worked solution that has an error. The seed draws one of the slips.
    Spot {
        /// Path of the output that the solution is for.
        output: &'static str,
        /// The slips that may be made.
        slips: &'static [Slip],
    },
}

impl Question {
    /// What a question has unless its table says otherwise.
    const PLAIN: Self = Self {
        id: "",
        hides: &[],
        fixed: &[],
        varied: &[],
        told: &[],
        parts: &[],
        curve: None,
        kind: Kind::Number { output: "" },
        tolerance: 0.0,
    };
}

/// The questions of every topic that has some.
const TABLES: &[(&str, &[Question])] = &[
    ("load_transfer", load_transfer::QUESTIONS),
    ("traction", traction::QUESTIONS),
    ("motor_split", motor_split::QUESTIONS),
    ("launch", launch::QUESTIONS),
    ("cornering", cornering::QUESTIONS),
    ("turn_in_place", turn_in_place::QUESTIONS),
    ("idle_drag", idle_drag::QUESTIONS),
    ("packaging", packaging::QUESTIONS),
    ("choice", choice::QUESTIONS),
];

/// The questions of a topic.
#[must_use]
pub fn of(topic: &Topic) -> &'static [Question] {
    TABLES
        .iter()
        .find(|(name, _)| *name == topic.name)
        .map_or(&[], |(_, questions)| questions)
}

#[cfg(test)]
mod tests;
