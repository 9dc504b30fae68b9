//! Makes a question's numbers from a seed and a scenario, and finds the right answer.

use super::draw::Draw;
use super::{Course, Kind, Question, Spoilt, Traced, Vary};
use crate::error::{Allowed, Problem};
use crate::input;
use crate::scenario::Scenario;
use crate::topic::{OutputKind, Reading, ReadingValue, Report, Topic};
use crate::units::{self, Dimension};

/// A question with its numbers, ready to be asked.
#[derive(Clone, Debug)]
pub struct Asked {
    /// The topic.
    pub topic: &'static Topic,
    /// The question.
    pub question: &'static Question,
    /// The seed, if there was one.
    pub seed: Option<u64>,
    /// The scenario as it is told to the reader.
    pub scenario: Scenario,
    /// The scenario that shows the answer: with the right value put in, or the change made.
    pub solved: Scenario,
    /// The answer.
    pub right: Right,
    /// What an output is to come to, SI, with its dimension and digits; only where one is to be found.
    pub target: Option<Amount>,
    /// The inputs that the reader is told, besides those in the statement.
    pub given: Vec<&'static str>,
    /// Outputs that the working of the answer derives.
    pub shown: Vec<String>,
    /// For a change: the input, and the output before and after.
    pub change: Option<Change>,
    /// The solution in which an error is to be found.
    pub spoilt: Option<Spoilt>,
    /// The chart that the answer is read off.
    pub traced: Option<Traced>,
}

/// A quantity and how it is written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// Value, SI.
    pub value: f64,
    /// What it measures.
    pub dimension: Dimension,
    /// Significant digits.
    pub digits: u8,
}

/// The right answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Right {
    /// A quantity.
    Number(Amount),
    /// A line.
    Line(Course),
    /// One of the choices: words and keys of the catalogue, and which of them is right.
    Choice {
        /// Word, and key of the catalogue; without a key the word itself is shown.
        choices: Vec<(&'static str, String)>,
        /// Position of the right one.
        right: usize,
    },
}

/// One input changed, and what comes of it.
#[derive(Clone, Debug)]
pub struct Change {
    /// Path of the input.
    pub input: &'static str,
    /// The output before.
    pub before: Amount,
    /// The output after.
    pub after: Amount,
}

/// Draws that are tried before a seed is given up. A draw fails where the choices lie too near to
/// each other, or where a vehicle of unusual proportions has no answer.
const TRIES: u32 = 60;

impl Question {
    /// Makes a question of a topic: draws its numbers, solves it, and collects what the reader must
    /// be told.
    ///
    /// # Errors
    /// [`Problem::UnknownWord`] for an unknown id; a [`Problem`] of the scenario; and
    /// [`Problem::NoAnswer`] where this scenario leaves the question without a clear answer.
    pub fn make(
        topic: &'static Topic,
        id: &str,
        seed: Option<u64>,
        base: &Scenario,
    ) -> Result<Asked, Problem> {
        let question = Self::find(topic, id)?;
        let base = topic.completed(base)?;
        let Some(seed) = seed else {
            return attempt(topic, question, None, &base);
        };
        let mut draw = Draw::of(seed, topic.name, question.id);
        let mut made = Err(unclear(question));
        for _ in 0..TRIES {
            made = attempt(topic, question, Some(&mut draw), &base);
            match &mut made {
                Ok(asked) if asked.tells_the_answer() => made = Err(unclear(question)),
                Ok(asked) => {
                    asked.seed = Some(seed);
                    break;
                }
                Err(_) => {}
            }
        }
        made
    }
}

impl Asked {
    /// The answer with its working.
    ///
    /// # Errors
    /// None for a question that was made; it has been solved.
    pub fn report(&self) -> Result<Report, Problem> {
        self.topic.report(&self.solved)
    }
}

pub(super) fn unclear(question: &Question) -> Problem {
    Problem::NoAnswer {
        field: "question",
        value: question.id.into(),
        why: "why.question_unclear",
        allowed: Allowed::Sentence("allowed.other_question"),
    }
}

fn attempt(
    topic: &'static Topic,
    question: &'static Question,
    mut draw: Option<&mut Draw>,
    base: &Scenario,
) -> Result<Asked, Problem> {
    let mut scenario = base.clone();
    // Where an input is to be found, what is hidden still says what the target is a share of.
    if !matches!(question.kind, Kind::Find { .. }) {
        question.hides.iter().for_each(|path| scenario.unset(path));
    }
    for (path, text) in question.fixed {
        scenario.set(path, text)?;
    }
    for vary in question.varied {
        put(&mut scenario, vary, draw.as_deref_mut())?;
    }
    let mut asked = Asked {
        topic,
        question,
        seed: None,
        solved: Scenario::default(),
        scenario,
        right: Right::Choice {
            choices: Vec::new(),
            right: 0,
        },
        target: None,
        given: Vec::new(),
        shown: Vec::new(),
        change: None,
        spoilt: None,
        traced: None,
    };
    match &question.kind {
        Kind::Number { output } => asked.number(output)?,
        Kind::Find {
            input,
            between,
            rising,
            target,
        } => asked.find(input, *between, *rising, target, draw)?,
        Kind::Choice(choice) => asked.choose(choice, draw)?,
        Kind::Sketch(sketch) => asked.sketch(sketch)?,
    }
    asked.trace()?;
    asked.given = asked.what_is_given()?;
    Ok(asked)
}

/// Puts a drawn value into a scenario; without a seed only where there is none.
fn put(scenario: &mut Scenario, vary: &Vary, draw: Option<&mut Draw>) -> Result<(), Problem> {
    let path = vary.path;
    let now = scenario.number(path);
    if draw.is_none() && (now.is_some() || scenario.word(path).is_some()) {
        return Ok(());
    }
    let Some(text) = vary.text(draw, now) else {
        return Ok(());
    };
    // A named surface would contradict a friction of its own.
    if path.starts_with("surface.friction") {
        scenario.unset("surface.kind");
    }
    scenario.set(path, &text)
}

impl Asked {
    /// A path with the shown layout in the place of its `*`.
    pub(super) fn path(&self, output: &str) -> String {
        output.replace('*', self.scenario.layout().name())
    }

    pub(super) fn reading<'a>(
        &self,
        readings: &'a [Reading],
        output: &str,
    ) -> Result<&'a Reading, Problem> {
        let path = self.path(output);
        let found = readings.iter().find(|reading| reading.path == path);
        found.ok_or_else(|| unclear(self.question))
    }

    /// The number of an output in a solved scenario.
    pub(super) fn amount(&self, readings: &[Reading], output: &str) -> Result<Amount, Problem> {
        let reading = self.reading(readings, output)?;
        let described = &self.topic.outputs[reading.output];
        match (&reading.value, described.kind) {
            (ReadingValue::Number(value), OutputKind::Quantity(dimension)) => Ok(Amount {
                value: *value,
                dimension,
                digits: described.digits,
            }),
            _ => Err(unclear(self.question)),
        }
    }

    fn number(&mut self, output: &'static str) -> Result<(), Problem> {
        let readings = self.topic.solve_without_run(&self.scenario)?;
        self.right = Right::Number(self.amount(&readings, output)?);
        self.shown = vec![self.path(output)];
        self.solved = self.scenario.clone();
        Ok(())
    }

    fn find(
        &mut self,
        path: &'static str,
        between: (f64, f64),
        rising: bool,
        target: &Vary,
        draw: Option<&mut Draw>,
    ) -> Result<(), Problem> {
        // What a percentage is taken of: the output as the scenario has it.
        let now = self.topic.solve_without_run(&self.scenario);
        let now = now.and_then(|readings| self.amount(&readings, target.path));
        for path in self.question.hides.iter().chain([&path]) {
            self.scenario.unset(path);
        }
        let text = target.text(draw, now.ok().map(|amount| amount.value));
        let (mut low, mut high) = between;
        let mut found = None;
        // Halving: sixty steps leave nothing of the interval. Ends that give no answer do not matter.
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            let reached = self.with(path, middle, target.path).ok();
            let wanted = |amount: &Amount| {
                let text = text.as_deref()?;
                units::parse(text, amount.dimension).ok()
            };
            found = reached.and_then(|amount| Some((amount, wanted(&amount)?)));
            let risen = found.is_none_or(|(amount, wanted)| (amount.value > wanted) == rising);
            if risen {
                high = middle;
            } else {
                low = middle;
            }
        }
        let (reached, wanted) = found.ok_or_else(|| unclear(self.question))?;
        if (reached.value - wanted).abs() > 1e-6 * wanted.abs() {
            return Err(unclear(self.question));
        }
        let value = 0.5 * (low + high);
        let dimension = dimension_of(path);
        self.right = Right::Number(Amount {
            value,
            dimension,
            digits: 3,
        });
        self.target = Some(Amount {
            value: wanted,
            ..reached
        });
        self.solved = self.scenario.clone();
        self.solved.set_number(path, value)?;
        self.shown = vec![self.path(target.path)];
        Ok(())
    }

    /// What an output comes to with a value of an input.
    ///
    /// # Errors
    /// A [`Problem`] where the topic has no answer for that value.
    pub(super) fn with(&self, path: &str, value: f64, output: &str) -> Result<Amount, Problem> {
        let mut scenario = self.scenario.clone();
        scenario.set_number(path, value)?;
        let readings = self.topic.solve_without_run(&scenario)?;
        self.amount(&readings, output)
    }
}

pub(super) fn dimension_of(path: &str) -> Dimension {
    match input::find(path).map(|input| &input.kind) {
        Some(input::Kind::Quantity { dimension, .. }) => *dimension,
        _ => Dimension::Ratio,
    }
}
