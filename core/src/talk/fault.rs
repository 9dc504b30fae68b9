//! What can be wrong with a talk, and the sentence that says where.

use crate::error::Problem;
use crate::words::{self, Lang};
use core::fmt;

/// Where a fault is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// Before the steps.
    Head,
    /// In a step, counted from 1.
    Step(usize),
}

impl Place {
    /// The step, from 1; 0 for the head.
    #[must_use]
    pub fn number(&self) -> usize {
        match self {
            Self::Head => 0,
            Self::Step(number) => *number,
        }
    }
}

/// A fault of a talk. It names step and field.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum Fault {
    /// A field or a value is refused.
    Refused {
        /// Step or head.
        place: Place,
        /// What is wrong; it names the field.
        problem: Box<Problem>,
    },
    /// A sentence names a value that the step does not have.
    UnknownValue {
        /// Step.
        place: Place,
        /// The field that holds the sentence.
        field: &'static str,
        /// The name.
        name: String,
        /// The name that is most like it among those that the step has.
        nearest: Option<String>,
    },
    /// A sentence wants a value in a form that it does not have.
    WrongForm {
        /// Step.
        place: Place,
        /// The field that holds the sentence.
        field: &'static str,
        /// What stands between the braces.
        text: String,
        /// Why not: a key of the catalogue.
        why: &'static str,
    },
}

impl Fault {
    /// A field or a value is refused.
    #[must_use]
    pub fn refused(place: Place, problem: Problem) -> Self {
        let problem = Box::new(problem);
        Self::Refused { place, problem }
    }

    /// Step or head.
    #[must_use]
    pub fn place(&self) -> &Place {
        match self {
            Self::Refused { place, .. }
            | Self::UnknownValue { place, .. }
            | Self::WrongForm { place, .. } => place,
        }
    }

    /// The field at fault.
    #[must_use]
    pub fn field(&self) -> &str {
        match self {
            Self::Refused { problem, .. } => problem.field(),
            Self::UnknownValue { field, .. } | Self::WrongForm { field, .. } => field,
        }
    }

    /// One clear sentence: step, field, value, what is allowed.
    #[must_use]
    pub fn sentence(&self, lang: Lang) -> String {
        let told = match self {
            Self::Refused { problem, .. } => problem.sentence(lang),
            Self::UnknownValue {
                field,
                name,
                nearest: Some(nearest),
                ..
            } => words::fill(lang, "talk.value_near", &[field, name, nearest]),
            Self::UnknownValue { field, name, .. } => {
                words::fill(lang, "talk.value", &[field, name])
            }
            Self::WrongForm {
                field, text, why, ..
            } => words::fill(lang, "talk.form", &[field, text, words::get(lang, why)]),
        };
        match self.place() {
            Place::Head => words::fill(lang, "talk.in_head", &[&told]),
            Place::Step(step) => {
                let number = crate::format::fixed(*step as f64, 0, lang);
                words::fill(lang, "talk.in_step", &[&number, &told])
            }
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence(Lang::English))
    }
}

impl core::error::Error for Fault {}
