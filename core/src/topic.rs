//! The topics: each one thing worth explaining, under one name in every room of the house.

use crate::error::Problem;
use crate::format;
use crate::input::{self, INPUTS, Input};
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::tree::Tree;
use crate::units::{Dimension, System};
use crate::words::{self, Lang};
use crate::working::{self, Step};
use crate::{
    choice, cornering, idle_drag, launch, load_transfer, motor_split, packaging, traction,
    turn_in_place,
};
use std::borrow::Cow;

/// A topic: its names, what it reads, what it answers, and how.
#[derive(Debug)]
pub struct Topic {
    /// Name in code and files: `load_transfer`.
    pub name: &'static str,
    /// Paths of the inputs that it reads, in the order in which they are shown.
    pub inputs: &'static [&'static str],
    /// Inputs that an element shows as controls unless told otherwise.
    pub controls: &'static [&'static str],
    /// A scenario to begin with: path and text.
    pub example: &'static [(&'static str, &'static str)],
    /// Everything that it answers.
    pub outputs: &'static [Output],
    /// Computes the numbers.
    pub(crate) solve: Solve,
    /// Computes the numbers that take no run, where the others take one.
    pub(crate) solve_without_run: Option<Solve>,
    /// Writes the working.
    pub(crate) working: fn(&Scenario) -> Result<Vec<Step>, Problem>,
}

/// Computes the numbers of a scenario.
pub(crate) type Solve = fn(&Scenario) -> Result<Vec<Reading>, Problem>;

/// One thing that a topic answers.
#[derive(Debug)]
pub struct Output {
    /// Name: the path in the answer, with `*` for a layout.
    pub name: &'static str,
    /// Symbol in the equations; empty for words.
    pub symbol: &'static str,
    /// What it is.
    pub kind: OutputKind,
    /// Significant digits that it deserves.
    pub digits: u8,
    /// Whether it is the headline of the topic (shown large) or a detail.
    pub headline: bool,
}

/// What an output is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OutputKind {
    /// A quantity, SI in files.
    Quantity(Dimension),
    /// A word of the catalogue (`reason.*`).
    Word,
    /// Yes or no.
    Flag,
    /// A sentence of the catalogue with numbers put in.
    Sentence,
    /// A layout's name.
    Layout,
}

/// One value of an answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// Path in the answer: `limits.F1.acceleration`.
    pub path: String,
    /// Layout that it belongs to; empty for the whole vehicle.
    pub layout: &'static str,
    /// Position in [`Topic::outputs`].
    pub output: usize,
    /// The value.
    pub value: ReadingValue,
}

/// The value of a reading.
#[derive(Clone, Debug, PartialEq)]
pub enum ReadingValue {
    /// A number, SI, always finite.
    Number(f64),
    /// A word: the part of a catalogue key after `reason.`.
    Word(&'static str),
    /// Yes or no.
    Flag(bool),
    /// A sentence with what is put into it.
    Sentence(Sentence),
    /// A layout.
    Layout(Layout),
}

/// A sentence of the catalogue and what is put into it, said in any language and system of units.
#[derive(Clone, Debug, PartialEq)]
pub struct Sentence {
    /// Key of the catalogue.
    pub key: &'static str,
    /// What stands in the place of `{0}`, `{1}`, …
    pub parts: Vec<Part>,
}

/// What is put into a sentence.
#[derive(Clone, Debug, PartialEq)]
pub enum Part {
    /// A name that is the same in every language.
    Name(&'static str),
    /// A text of the catalogue, by its key.
    Key(&'static str),
    /// A quantity, SI, and the significant digits that it deserves.
    Number(f64, Dimension, u8),
}

impl Sentence {
    /// The sentence in a language and a system of units.
    #[must_use]
    pub fn text(&self, lang: Lang, system: System) -> String {
        let said: Vec<String> = self
            .parts
            .iter()
            .map(|part| match part {
                Part::Name(name) => (*name).into(),
                Part::Key(key) => words::get(lang, key).into(),
                Part::Number(value, dimension, digits) => {
                    format::quantity(*value, *dimension, system, *digits, lang)
                }
            })
            .collect();
        let parts: Vec<&str> = said.iter().map(String::as_str).collect();
        words::fill(lang, self.key, &parts)
    }
}

/// The answer of a topic with its working, in the one shape that elements, pages and files print.
#[derive(Clone, Debug)]
pub struct Report {
    /// The topic.
    pub topic: &'static Topic,
    /// What was asked.
    pub scenario: Scenario,
    /// The values.
    pub readings: Vec<Reading>,
    /// The working.
    pub steps: Vec<Step>,
}

/// Every topic, in the order in which they are taught.
pub const TOPICS: &[&Topic] = &[
    &load_transfer::TOPIC,
    &traction::TOPIC,
    &motor_split::TOPIC,
    &launch::TOPIC,
    &cornering::TOPIC,
    &turn_in_place::TOPIC,
    &idle_drag::TOPIC,
    &packaging::TOPIC,
    &choice::TOPIC,
];

/// The topic of a name; hyphens and underscores are the same.
///
/// # Errors
/// [`Problem::UnknownWord`] lists the names.
pub fn find(name: &str) -> Result<&'static Topic, Problem> {
    let wanted = name.trim().to_ascii_lowercase().replace('-', "_");
    TOPICS
        .iter()
        .find(|topic| topic.name == wanted)
        .copied()
        .ok_or_else(|| Problem::UnknownWord {
            field: "topic".into(),
            value: name.chars().take(40).collect(),
            allowed: TOPICS.iter().map(|topic| topic.name).collect(),
        })
}

impl Topic {
    /// Name with hyphens, as pages and elements carry it: `load-transfer`.
    #[must_use]
    pub fn slug(&self) -> String {
        self.name.replace('_', "-")
    }

    /// Tag of the element: `axle-load-transfer`.
    #[must_use]
    pub fn tag(&self) -> String {
        format!("axle-{}", self.slug())
    }

    /// The topic's example scenario.
    ///
    /// # Errors
    /// None for the topics of this crate; the tests see to it.
    pub fn example(&self) -> Result<Scenario, Problem> {
        let mut scenario = Scenario::default();
        for (path, text) in self.example {
            scenario.set(path, text)?;
        }
        Ok(scenario)
    }

    /// Completes a scenario that gives no vehicle at all with the topic's example.
    ///
    /// An invented vehicle is never mixed with the reader's own values unless it was asked for by
    /// name: a scenario that gives any field of its own vehicle is left as it is. Without a vehicle
    /// the example's vehicle is taken, and of the rest of the example only what the scenario leaves
    /// open.
    ///
    /// # Errors
    /// As [`Topic::example`].
    pub fn completed(&self, scenario: &Scenario) -> Result<Scenario, Problem> {
        let own_vehicle = scenario.gives_any("vehicle") && scenario.word("vehicle.base").is_none();
        if own_vehicle {
            return Ok(scenario.clone());
        }
        Ok(self.example()?.overlaid_with(scenario))
    }

    /// A scenario without what only other topics ask for. Topics share their physics, and what this one does
    /// not list among its inputs, and so offers to nobody, must not sway its answer.
    #[must_use]
    pub fn own<'a>(&self, scenario: &'a Scenario) -> Cow<'a, Scenario> {
        let foreign = |path: &str| !self.inputs.contains(&path);
        if !scenario.entries().any(|(path, _)| foreign(path)) {
            return Cow::Borrowed(scenario);
        }
        let mut own = scenario.clone();
        for (path, _) in scenario.entries() {
            if foreign(path) {
                own.unset(path);
            }
        }
        Cow::Owned(own)
    }

    /// Solves a scenario and writes the working.
    ///
    /// # Errors
    /// A [`Problem`] that names field, value and what is allowed.
    pub fn report(&'static self, scenario: &Scenario) -> Result<Report, Problem> {
        let steps = (self.working)(&self.own(scenario));
        Ok(Report {
            topic: self,
            scenario: scenario.clone(),
            readings: self.solve(scenario)?,
            steps: steps.map_err(|problem| problem.told_as_given(scenario))?,
        })
    }

    /// Solves a scenario and leaves the working unwritten, for what must be quick: a moving slider.
    /// [`Report::write_working`] adds it.
    ///
    /// # Errors
    /// As [`Topic::report`].
    pub fn brief(&'static self, scenario: &Scenario) -> Result<Report, Problem> {
        Ok(Report {
            topic: self,
            scenario: scenario.clone(),
            readings: self.solve(scenario)?,
            steps: Vec::new(),
        })
    }

    /// Solves a scenario, without the working.
    ///
    /// # Errors
    /// As [`Topic::report`].
    pub fn solve(&self, scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
        (self.solve)(&self.own(scenario)).map_err(|problem| problem.told_as_given(scenario))
    }

    /// As [`Topic::solve`], without the numbers that take a run, for who asks many times for others.
    ///
    /// # Errors
    /// As [`Topic::report`].
    pub(crate) fn solve_without_run(&self, scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
        let solve = self.solve_without_run.unwrap_or(self.solve);
        solve(&self.own(scenario)).map_err(|problem| problem.told_as_given(scenario))
    }

    /// The inputs that the topic reads.
    pub fn inputs(&self) -> impl Iterator<Item = &'static Input> {
        self.inputs
            .iter()
            .filter_map(|path| input::index(path).map(|at| &INPUTS[at]))
    }

    /// The input of an attribute name of this topic's element.
    #[must_use]
    pub fn input_of_attribute(&self, attribute: &str) -> Option<&'static Input> {
        self.inputs().find(|input| input.attribute() == attribute)
    }

    /// Key of an output's name in the catalogue.
    #[must_use]
    pub fn output_key(&self, output: usize) -> String {
        let name = self.outputs.get(output).map_or("", |o| o.name);
        // What every layout has is named by its last part; anything else by all of it.
        let part = if name.contains('*') {
            name.rsplit('.').next().unwrap_or(name)
        } else {
            name
        };
        format!("output.{}.{part}", self.name)
    }
}

impl Report {
    /// Writes the working where it is not there yet.
    pub fn write_working(&mut self) {
        // What has been solved has a working; were there none, the list would stay empty.
        if self.steps.is_empty()
            && let Ok(steps) = (self.topic.working)(&self.topic.own(&self.scenario))
        {
            self.steps = steps;
        }
    }

    /// The number of a path.
    #[must_use]
    pub fn number(&self, path: &str) -> Option<f64> {
        number_of(&self.readings, path)
    }

    /// The steps that lead to the number of a path.
    #[must_use]
    pub fn derivation(&self, path: &str) -> Vec<&Step> {
        working::derivation(&self.steps, path)
    }

    /// The steps that lead to the numbers of some paths, each once and in the order of the working.
    #[must_use]
    pub fn derivations(&self, paths: &[String]) -> Vec<&Step> {
        let wanted: Vec<&Step> = paths
            .iter()
            .flat_map(|path| self.derivation(path))
            .collect();
        let steps = self.steps.iter();
        steps
            .filter(|step| wanted.iter().any(|other| core::ptr::eq(*other, *step)))
            .collect()
    }

    /// The answer as plain nested data: values by path, SI, beside `topic`, `scenario` and `working`.
    #[must_use]
    pub fn to_tree(&self) -> Tree {
        let mut tree = self.numbers_tree();
        tree.set("working", working_tree(&self.steps));
        tree
    }

    /// As [`Report::to_tree`] without the working, which takes far longer to write than to compute.
    #[must_use]
    pub fn numbers_tree(&self) -> Tree {
        let mut tree = Tree::map();
        tree.set("topic", Tree::text(self.topic.name));
        for reading in &self.readings {
            let value = match &reading.value {
                ReadingValue::Number(number) => Tree::Number(*number),
                ReadingValue::Word(word) => Tree::text(*word),
                ReadingValue::Flag(flag) => Tree::Bool(*flag),
                ReadingValue::Sentence(sentence) => {
                    Tree::text(sentence.text(Lang::English, System::Si))
                }
                ReadingValue::Layout(layout) => Tree::text(layout.name()),
            };
            tree.set_path(&reading.path, value);
        }
        tree.set("scenario", self.scenario.to_tree());
        tree
    }
}

/// The number of a path among readings.
#[must_use]
pub fn number_of(readings: &[Reading], path: &str) -> Option<f64> {
    readings
        .iter()
        .find(|r| r.path == path)
        .and_then(|r| match r.value {
            ReadingValue::Number(number) => Some(number),
            _ => None,
        })
}

fn working_tree(steps: &[Step]) -> Tree {
    let quantity = |q: &working::Quantity| {
        Tree::Map(vec![
            ("symbol".into(), Tree::text(q.symbol)),
            ("value".into(), Tree::Number(q.value)),
            ("unit".into(), Tree::text(q.dimension.si_unit())),
        ])
    };
    Tree::List(
        steps
            .iter()
            .map(|step| {
                let mut tree = Tree::map();
                tree.set("about", Tree::text(step.about));
                if !step.scope.is_empty() {
                    tree.set("layout", Tree::text(step.scope));
                }
                if !step.path.is_empty() {
                    tree.set("gives", Tree::text(step.path.as_str()));
                }
                tree.set("equation", Tree::text(step.text(Lang::English)));
                tree.set("latex", Tree::text(step.latex(Lang::English)));
                tree.set(
                    "inputs",
                    Tree::List(step.inputs.iter().map(quantity).collect()),
                );
                tree.set("result", quantity(&step.result));
                tree.set(
                    "solved_for_unknown",
                    Tree::Bool(step.kind == working::Kind::Satisfied),
                );
                tree.set("source", Tree::text(step.source));
                tree
            })
            .collect(),
    )
}

/// Collects readings in the order of a topic's outputs.
pub(crate) struct Readings {
    outputs: &'static [Output],
    list: Vec<Reading>,
}

impl Readings {
    pub(crate) fn of(outputs: &'static [Output]) -> Self {
        Self {
            outputs,
            list: Vec::new(),
        }
    }

    /// Adds a number for the whole vehicle.
    pub(crate) fn number(&mut self, name: &'static str, value: f64) {
        self.add(name, "", ReadingValue::Number(value));
    }

    /// Adds a number if there is one.
    pub(crate) fn optional(&mut self, name: &'static str, value: Option<f64>) {
        if let Some(value) = value {
            self.number(name, value);
        }
    }

    /// Adds a value for one layout (`*` in the name) or for the whole vehicle.
    pub(crate) fn add(&mut self, name: &'static str, layout: &'static str, value: ReadingValue) {
        if matches!(value, ReadingValue::Number(number) if !number.is_finite()) {
            return;
        }
        if let Some(output) = self.outputs.iter().position(|o| o.name == name) {
            self.list.push(Reading {
                path: name.replace('*', layout),
                layout,
                output,
                value,
            });
        }
    }

    /// Adds a value by the position of its output.
    pub(crate) fn put(&mut self, output: usize, layout: &'static str, value: ReadingValue) {
        if let Some(known) = self.outputs.get(output) {
            self.add(known.name, layout, value);
        }
    }

    pub(crate) fn into_list(self) -> Vec<Reading> {
        self.list
    }
}

/// A quantity among a topic's outputs.
pub(crate) const fn quantity(
    name: &'static str,
    symbol: &'static str,
    dimension: Dimension,
    digits: u8,
    headline: bool,
) -> Output {
    Output {
        name,
        symbol,
        kind: OutputKind::Quantity(dimension),
        digits,
        headline,
    }
}

/// A word or a flag among a topic's outputs.
pub(crate) const fn plain(name: &'static str, kind: OutputKind) -> Output {
    Output {
        name,
        symbol: "",
        kind,
        digits: 0,
        headline: false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_topic_is_whole() {
        for topic in TOPICS {
            for path in topic.inputs.iter().chain(topic.controls) {
                assert!(input::find(path).is_some(), "{}: {path}", topic.name);
            }
            for path in topic.controls {
                assert!(topic.inputs.contains(path), "{}: {path}", topic.name);
            }
            for (at, output) in topic.outputs.iter().enumerate() {
                let key = topic.output_key(at);
                assert!(
                    words::find(Lang::English, &key).is_some(),
                    "{}: {key}",
                    output.name
                );
            }
            let report = topic.report(&topic.example().unwrap()).unwrap();
            for step in &report.steps {
                for key in [step.about, step.source] {
                    assert!(
                        words::find(Lang::English, key).is_some(),
                        "no words for {key}"
                    );
                }
            }
        }
    }

    #[test]
    fn every_number_opens_to_its_derivation_and_the_working_cannot_lie() {
        for topic in TOPICS {
            let report = topic.report(&topic.example().unwrap()).unwrap();
            for reading in &report.readings {
                let ReadingValue::Number(number) = reading.value else {
                    continue;
                };
                let steps = report.derivation(&reading.path);
                let last = steps
                    .last()
                    .unwrap_or_else(|| panic!("no working for {}", reading.path));
                assert!(
                    (last.result.value - number).abs() <= 1e-12 * number.abs(),
                    "{}: step {}, answer {number}",
                    reading.path,
                    last.result.value
                );
            }
            for step in &report.steps {
                let got = step
                    .evaluate()
                    .unwrap_or_else(|| panic!("{} lacks a number", step.text(Lang::English)));
                let scale = step
                    .inputs
                    .iter()
                    .fold(1e-9, |most: f64, q| most.max(q.value.abs()));
                let want = step.result.value;
                // A solved equation is met as closely as the solver ends.
                let bound = match step.kind {
                    working::Kind::Computed => 1e-12 * want.abs() + 1e-15 * scale,
                    working::Kind::Satisfied => 1e-9 * want.abs(),
                };
                assert!(
                    (got - want).abs() <= bound,
                    "{}: {got}, answer {want}",
                    step.text(Lang::English)
                );
            }
        }
    }
}
