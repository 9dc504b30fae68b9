//! What can be wrong with an input, and the sentence that says so.

use crate::format;
use crate::units::{Dimension, System, UnitError};
use crate::words::{self, Lang};
use core::fmt;

/// What a field accepts.
#[derive(Clone, Debug, PartialEq)]
pub enum Allowed {
    /// A quantity between two values, both included.
    Between {
        /// Smallest accepted value, SI.
        min: f64,
        /// Largest accepted value, SI.
        max: f64,
        /// What the quantity measures.
        dimension: Dimension,
    },
    /// A quantity strictly between two values.
    Inside {
        /// Limit from below, SI.
        min: f64,
        /// Limit from above, SI.
        max: f64,
        /// What the quantity measures.
        dimension: Dimension,
    },
    /// One of these words.
    OneOf(Vec<&'static str>),
    /// A sentence of the catalogue.
    Sentence(&'static str),
}

/// A refused input. Every variant names the field, the value and what is allowed.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum Problem {
    /// A field that does not exist.
    UnknownField {
        /// Dotted name as given.
        field: String,
        /// The known name that is most like it.
        nearest: Option<&'static str>,
    },
    /// A word that is not among the accepted ones (a vehicle, a surface, a layout, a topic).
    UnknownWord {
        /// Dotted name of the field.
        field: String,
        /// The word as given.
        value: String,
        /// The accepted words.
        allowed: Vec<&'static str>,
    },
    /// A text that is not a quantity of the wanted kind.
    NotAQuantity {
        /// Dotted name of the field.
        field: String,
        /// The text as given.
        value: String,
        /// What is wrong with it.
        reason: UnitError,
        /// What the field accepts.
        allowed: Allowed,
    },
    /// A value of the wrong kind (a table for a number, a number for a word).
    WrongKind {
        /// Dotted name of the field.
        field: String,
        /// The value as given, shortened.
        value: String,
        /// What the field accepts.
        allowed: Allowed,
    },
    /// A quantity outside its range.
    OutOfRange {
        /// Dotted name of the field.
        field: String,
        /// The value as given.
        value: String,
        /// What the field accepts here.
        allowed: Allowed,
    },
    /// A field that the topic needs and that nothing gives.
    Missing {
        /// Dotted name of the field.
        field: &'static str,
        /// What the field accepts.
        allowed: Allowed,
    },
    /// A scenario with nothing in it.
    Empty,
    /// A question that asks for a line, and no line drawn.
    NoLine {
        /// Name of the question.
        question: &'static str,
    },
    /// A text of many lines, one of which is at fault.
    Line {
        /// Dotted name of the field.
        field: &'static str,
        /// The line, counted from 1.
        line: usize,
        /// The line as given, shortened.
        value: String,
        /// What is wrong with it: a key of the catalogue.
        why: &'static str,
        /// What a line may hold.
        allowed: Allowed,
    },
    /// Values that are each in range but have no answer together.
    NoAnswer {
        /// Dotted name of the field to change.
        field: &'static str,
        /// Its value.
        value: String,
        /// Why there is no answer: a key of the catalogue.
        why: &'static str,
        /// What the field accepts with the other values as they are.
        allowed: Allowed,
    },
}

impl Problem {
    /// Dotted name of the field at fault; empty when the whole scenario is.
    #[must_use]
    pub fn field(&self) -> &str {
        match self {
            Self::UnknownField { field, .. }
            | Self::UnknownWord { field, .. }
            | Self::NotAQuantity { field, .. }
            | Self::WrongKind { field, .. }
            | Self::OutOfRange { field, .. } => field,
            Self::Missing { field, .. }
            | Self::NoAnswer { field, .. }
            | Self::Line { field, .. } => field,
            Self::NoLine { .. } => "question",
            Self::Empty => "",
        }
    }

    /// The value as it was given; empty when none was.
    #[must_use]
    pub fn value(&self) -> &str {
        match self {
            Self::UnknownWord { value, .. }
            | Self::NotAQuantity { value, .. }
            | Self::WrongKind { value, .. }
            | Self::OutOfRange { value, .. }
            | Self::Line { value, .. }
            | Self::NoAnswer { value, .. } => value,
            Self::NoLine { question } => question,
            Self::UnknownField { .. } | Self::Missing { .. } | Self::Empty => "",
        }
    }

    /// The same refusal with the value as the scenario gave it, for values that were computed with.
    #[must_use]
    pub(crate) fn told_as_given(mut self, scenario: &crate::Scenario) -> Self {
        if let Self::NoAnswer { field, value, .. } = &mut self
            && let Some(text) = scenario.text(field)
        {
            *value = text.into();
        }
        self
    }

    /// The same refusal with the value as the reader typed it.
    #[must_use]
    pub(crate) fn told_as(mut self, typed: &str) -> Self {
        if let Self::NotAQuantity { value, .. } | Self::OutOfRange { value, .. } = &mut self {
            *value = typed.trim().chars().take(40).collect();
        }
        self
    }

    /// What is allowed, as a phrase.
    #[must_use]
    pub fn allowed(&self, lang: Lang) -> String {
        match self {
            Self::UnknownField { nearest, .. } => nearest.unwrap_or("").into(),
            Self::UnknownWord { allowed, .. } => allowed.join(", "),
            Self::NotAQuantity { allowed, .. }
            | Self::WrongKind { allowed, .. }
            | Self::OutOfRange { allowed, .. }
            | Self::Missing { allowed, .. }
            | Self::Line { allowed, .. }
            | Self::NoAnswer { allowed, .. } => allowed.phrase(lang),
            Self::NoLine { .. } => words::get(lang, "question.nine_heights").into(),
            Self::Empty => String::new(),
        }
    }

    /// One clear sentence: field, value, what is allowed.
    #[must_use]
    pub fn sentence(&self, lang: Lang) -> String {
        let (field, value) = (self.field(), self.value());
        let allowed = self.allowed(lang);
        match self {
            Self::UnknownField { nearest: None, .. } => {
                words::fill(lang, "problem.field", &[field])
            }
            Self::UnknownField {
                nearest: Some(name),
                ..
            } => words::fill(lang, "problem.field_near", &[field, name]),
            Self::UnknownWord { .. } => {
                words::fill(lang, "problem.word", &[field, value, &allowed])
            }
            Self::NotAQuantity { reason, .. } => {
                let why = match reason {
                    UnitError::NotANumber => words::get(lang, "problem.not_a_number").into(),
                    UnitError::TwoReadings(typed) => {
                        let grouped = typed.replace(['.', ','], "");
                        let mut mark = [0; 4];
                        let mark = lang.decimal_mark().encode_utf8(&mut mark);
                        let split = typed.replace(['.', ','], mark);
                        words::fill(lang, "problem.two_readings", &[typed, &grouped, &split])
                    }
                    UnitError::UnknownUnit(unit) => {
                        words::fill(lang, "problem.unknown_unit", &[unit])
                    }
                    UnitError::WrongDimension { unit, measures } => words::fill(
                        lang,
                        "problem.wrong_dimension",
                        &[unit, words::get(lang, measures.word())],
                    ),
                };
                words::fill(lang, "problem.quantity", &[field, value, &why, &allowed])
            }
            Self::WrongKind { .. } => words::fill(lang, "problem.kind", &[field, value, &allowed]),
            Self::OutOfRange { .. } => {
                words::fill(lang, "problem.range", &[field, value, &allowed])
            }
            // A demo vehicle brings what is a vehicle's, and nothing else.
            Self::Missing { .. } if field.starts_with("vehicle.") => {
                words::fill(lang, "problem.missing", &[field, &allowed])
            }
            Self::Missing { .. } => words::fill(lang, "problem.missing_plain", &[field, &allowed]),
            Self::NoLine { .. } => words::fill(lang, "question.nothing_drawn", &[&allowed]),
            Self::Empty => words::get(lang, "problem.empty").into(),
            Self::Line { line, why, .. } => words::fill(
                lang,
                "problem.line",
                &[
                    field,
                    &format::plain(*line as f64),
                    value,
                    words::get(lang, why),
                    &allowed,
                ],
            ),
            Self::NoAnswer { why, .. } => words::fill(
                lang,
                "problem.no_answer",
                &[field, value, words::get(lang, why), &allowed],
            ),
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence(Lang::English))
    }
}

impl core::error::Error for Problem {}

impl Allowed {
    /// The allowed values as a phrase: "100 kg to 60 000 kg".
    #[must_use]
    pub fn phrase(&self, lang: Lang) -> String {
        match self {
            Self::Between {
                min,
                max,
                dimension,
            } => words::fill(
                lang,
                "allowed.between",
                &[
                    &bound(*min, *dimension, lang),
                    &bound(*max, *dimension, lang),
                ],
            ),
            Self::Inside {
                min,
                max,
                dimension,
            } => words::fill(
                lang,
                "allowed.inside",
                &[
                    &bound(*min, *dimension, lang),
                    &bound(*max, *dimension, lang),
                ],
            ),
            Self::OneOf(names) => names.join(", "),
            Self::Sentence(key) => words::get(lang, key).into(),
        }
    }
}

/// A limit, written so that it can be typed back.
fn bound(value: f64, dimension: Dimension, lang: Lang) -> String {
    let unit = dimension.display_unit(System::Si);
    let shown = crate::units::from_si(value, dimension, System::Si);
    let digits = if shown.abs() >= 100.0 { 5 } else { 4 };
    let mut text = format::significant(shown, digits, lang);
    let mark = lang.decimal_mark();
    if text.contains(mark) {
        let kept = text.trim_end_matches('0').trim_end_matches(mark).len();
        text.truncate(kept);
    }
    format::with_unit(text, unit)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_names_field_value_and_range() {
        let problem = Problem::OutOfRange {
            field: "vehicle.mass".into(),
            value: "-5 kg".into(),
            allowed: Allowed::Between {
                min: 10.0,
                max: 1e5,
                dimension: Dimension::Mass,
            },
        };
        let sentence = problem.to_string();
        for part in [
            "vehicle.mass",
            "-5 kg",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ] {
            assert!(sentence.contains(part), "{sentence}");
        }
        assert!(!sentence.contains('\n'));
    }

    #[test]
    fn a_number_with_two_readings_is_told_with_both() {
        for (lang, typed, grouped, split) in [
            (Lang::English, "1,850", "1850", "1.850"),
            (Lang::German, "-1.850", "-1850", "-1,850"),
        ] {
            let mut scenario = crate::Scenario::default();
            let text = format!("{typed} kg");
            let problem = scenario.set_typed("vehicle.mass", &text, lang);
            let problem = problem.unwrap_err();
            assert_eq!((problem.field(), problem.value()), ("vehicle.mass", &*text));
            let sentence = problem.sentence(lang);
            for part in [typed, grouped, split] {
                assert!(
                    sentence.contains(&format!(" {part} "))
                        || sentence.contains(&format!("{part};")),
                    "{sentence}"
                );
            }
        }
    }
}
