//! A talk: topics strung together for a speaker. It adds no physics.
//!
//! A talk is plain data, as a TOML file holds it: a head, and steps. A step names a topic, what changes
//! in the scenario, the view, the parts of the figure that are drawn so far, a sentence that is shown,
//! a note for the speaker and, if wanted, a question to the audience. Sentences hold values by name,
//! so that what is said and what is shown cannot disagree.
//!
//! ```
//! use axlewright_core::talk::Talk;
//! use axlewright_core::units::System;
//! use axlewright_core::{Scenario, Tree};
//!
//! let step = Tree::Map(vec![
//!     ("topic".into(), Tree::text("load_transfer")),
//!     ("say".into(), Tree::text("The rear carries {rear_to_front_ratio:2} times the front.")),
//! ]);
//! let talk = Talk::from_tree(&Tree::Map(vec![
//!     ("title".into(), Tree::text("Where the weight goes")),
//!     ("vehicle".into(), Tree::text("esker")),
//!     ("steps".into(), Tree::List(vec![step])),
//! ]))?;
//! let report = talk.steps[0].report(&Scenario::default())?;
//! let said = talk.steps[0].said(&report, talk.lang, System::Si)?;
//! assert!(said.starts_with("The rear carries 1."), "{said}");
//! # Ok::<(), Box<dyn core::error::Error>>(())
//! ```

mod between;
mod check;
mod fault;
mod part;
mod question;
mod read;
mod sentence;
mod starter;

pub use between::between;
pub use fault::{Fault, Place};
pub use part::{Part, Parts};
pub use question::{Question, Right};
pub use read::FindTopic;
pub use sentence::Sentence;
pub use starter::STARTER;

use crate::error::Problem;
use crate::scenario::Scenario;
use crate::topic::{Report, Topic};
use crate::units::System;
use crate::words::Lang;

/// A talk.
#[derive(Clone, Debug)]
pub struct Talk {
    /// Title.
    pub title: String,
    /// Language of the speaker: of numbers, and of the words in the figures.
    pub lang: Lang,
    /// The steps, at least one.
    pub steps: Vec<Step>,
}

/// One step of a talk.
#[derive(Clone, Debug)]
pub struct Step {
    /// Where it stands, from 1.
    pub number: usize,
    /// What it shows.
    pub topic: &'static Topic,
    /// Everything that is given up to this step.
    pub scenario: Scenario,
    /// How it is shown.
    pub show: Show,
    /// Parts of the figure that are drawn.
    pub parts: Parts,
    /// The sentence shown.
    pub say: Sentence,
    /// The speaker's note.
    pub note: Sentence,
    /// The question to the audience.
    pub question: Option<Question>,
}

/// How a step is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Show {
    /// The view that the topic begins with.
    First,
    /// From the side.
    Side,
    /// From above.
    Plan,
    /// Bars, a row for each layout.
    Bars,
    /// The chart.
    Chart,
    /// The numbers.
    Table,
}

impl Show {
    /// The words of a talk file.
    pub const WORDS: [&'static str; 5] = ["side", "plan", "bars", "chart", "table"];

    /// Its word in a talk file; empty for the topic's first view.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::First => "",
            Self::Side => "side",
            Self::Plan => "plan",
            Self::Bars => "bars",
            Self::Chart => "chart",
            Self::Table => "table",
        }
    }

    fn of(word: &str) -> Option<Self> {
        [Self::Side, Self::Plan, Self::Bars, Self::Chart, Self::Table]
            .into_iter()
            .find(|show| show.word() == word)
    }
}

impl Step {
    /// What is asked of the topic: the step's scenario, with what a speaker has changed on top.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn asked(&self, changed: &Scenario) -> Result<Scenario, Problem> {
        self.topic
            .completed(&self.scenario.clone().overlaid_with(changed))
    }

    /// The answer of the step, with what a speaker has changed.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario.
    pub fn report(&self, changed: &Scenario) -> Result<Report, Problem> {
        self.topic.brief(&self.asked(changed)?)
    }

    /// The sentence with the values of an answer.
    ///
    /// # Errors
    /// A [`Fault`] when the answer lacks a value that the sentence names.
    pub fn said(&self, report: &Report, lang: Lang, system: System) -> Result<String, Fault> {
        self.say.spoken(&self.place(), report, lang, system)
    }

    /// The note with the values of an answer.
    ///
    /// # Errors
    /// As [`Step::said`].
    pub fn noted(&self, report: &Report, lang: Lang, system: System) -> Result<String, Fault> {
        self.note.spoken(&self.place(), report, lang, system)
    }

    /// The right answer of the step's question: in words, and for a choice its place among the choices.
    #[must_use]
    pub fn answer(
        &self,
        report: &Report,
        lang: Lang,
        system: System,
    ) -> Option<(String, Option<usize>)> {
        let question = self.question.as_ref()?;
        question.answer(&self.place(), report, lang, system).ok()
    }

    fn place(&self) -> Place {
        Place::Step(self.number)
    }
}

#[cfg(test)]
mod tests;
