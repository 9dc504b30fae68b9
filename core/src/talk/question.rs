//! A question to the audience. Its right answer is computed, never written into the talk.

use super::fault::{Fault, Place};
use super::sentence::Sentence;
use crate::topic::{Report, number_of};
use crate::units::System;
use crate::words::Lang;

/// A question to the audience.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// What is asked.
    pub text: String,
    /// What is right.
    pub right: Right,
}

/// What is right.
#[derive(Clone, Debug, PartialEq)]
pub enum Right {
    /// The value that a sentence of one value names: the audience says a number.
    Value(Sentence),
    /// The largest or the smallest of several outputs: the audience chooses.
    Extreme {
        /// Paths of the outputs, two at least.
        paths: Vec<String>,
        /// What each is called before the audience; as many as paths.
        words: Vec<String>,
        /// Whether the largest is right.
        largest: bool,
    },
}

impl Question {
    /// The right answer: in words, and for a choice its place among the choices, from 0.
    ///
    /// # Errors
    /// A [`Fault`] when the answer of the step lacks a value that is asked for.
    pub fn answer(
        &self,
        place: &Place,
        report: &Report,
        lang: Lang,
        system: System,
    ) -> Result<(String, Option<usize>), Fault> {
        match &self.right {
            Right::Value(sentence) => Ok((sentence.spoken(place, report, lang, system)?, None)),
            Right::Extreme {
                paths,
                words,
                largest,
            } => {
                let mut best: Option<(f64, usize)> = None;
                for (at, path) in paths.iter().enumerate() {
                    let value = number_of(&report.readings, path)
                        .ok_or_else(|| Sentence::unknown("question", place, path, report))?;
                    let signed = if *largest { value } else { -value };
                    if best.is_none_or(|(most, _)| signed > most) {
                        best = Some((signed, at));
                    }
                }
                let at = best.map_or(0, |(_, at)| at);
                Ok((words.get(at).cloned().unwrap_or_default(), Some(at)))
            }
        }
    }
}
