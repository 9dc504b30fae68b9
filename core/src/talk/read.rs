//! Reads a talk from plain data. The first fault ends the reading; [`Talk::checked`] finds them all.

use super::fault::{Fault, Place};
use super::part::{Part, Parts};
use super::question::{Question, Right};
use super::sentence::Sentence;
use super::{Show, Step, Talk};
use crate::error::{Allowed, Problem};
use crate::format;
use crate::input;
use crate::scenario::Scenario;
use crate::topic;
use crate::tree::Tree;
use crate::words::Lang;

const HEAD: [&str; 5] = ["title", "lang", "vehicle", "scenario", "steps"];
const STEP: [&str; 7] = ["topic", "set", "view", "parts", "say", "note", "question"];
const QUESTION: [&str; 5] = ["text", "value", "largest", "smallest", "words"];

/// More steps than a talk of a day has: a file with more is a mistake, or malice.
const MOST_STEPS: usize = 500;

impl Talk {
    /// Reads a talk: the tables of a TOML file, a JSON object.
    ///
    /// # Errors
    /// The first [`Fault`], in the order of the data.
    pub fn from_tree(tree: &Tree) -> Result<Self, Fault> {
        Self::with_topics(tree, topic::find)
    }

    /// As [`Talk::from_tree`], for a program that has not every topic at hand.
    ///
    /// # Errors
    /// As [`Talk::from_tree`]; also when `find` refuses a topic.
    pub fn with_topics(tree: &Tree, find: FindTopic) -> Result<Self, Fault> {
        let (talk, faults) = Self::read(tree, find);
        match faults.into_iter().next() {
            None => Ok(talk),
            Some(fault) => Err(fault),
        }
    }

    /// Reads what can be read, and tells every fault.
    pub(super) fn read(tree: &Tree, find: FindTopic) -> (Self, Vec<Fault>) {
        let mut reader = Reader {
            find,
            place: None,
            faults: Vec::new(),
        };
        let mut talk = Self {
            title: String::new(),
            lang: Lang::English,
            steps: Vec::new(),
        };
        let Tree::Map(_) = tree else {
            reader.refuse(Problem::Empty);
            return (talk, reader.faults);
        };
        reader.known(tree, "", &HEAD);
        talk.title = reader.text(tree, "title", true).unwrap_or_default();
        if let Some(tag) = reader.text(tree, "lang", false) {
            match Lang::known(&tag) {
                Some(lang) => talk.lang = lang,
                None => reader.unknown_word("lang", &tag, Lang::ALL.map(Lang::tag).to_vec()),
            }
        }
        let mut scenario = Scenario::default();
        if let Some(name) = reader.text(tree, "vehicle", false)
            && let Err(problem) = scenario.set("vehicle.base", &name)
        {
            reader.refuse(problem);
        }
        reader.put(&mut scenario, tree.get("scenario"), "scenario");
        let steps = match tree.get("steps") {
            Some(Tree::List(steps)) if !steps.is_empty() && steps.len() <= MOST_STEPS => steps,
            Some(Tree::List(steps)) => {
                let count = format::fixed(steps.len() as f64, 0, Lang::English);
                reader.wrong("steps", count, "talk.allowed.steps");
                return (talk, reader.faults);
            }
            other => {
                let value = other.map_or_else(String::new, shortened);
                reader.wrong("steps", value, "talk.allowed.steps");
                return (talk, reader.faults);
            }
        };
        let mut before = (Parts::FIGURE, None);
        for (at, step) in steps.iter().enumerate() {
            reader.place = Some(at + 1);
            if let Some(step) = reader.step(step, at + 1, &mut scenario, before) {
                before = (step.parts, Some((step.topic, step.show)));
                talk.steps.push(step);
            }
        }
        (talk, reader.faults)
    }
}

/// Topic and view of the step before, with its parts: what a step that says nothing of them keeps.
type Before = (Parts, Option<(&'static topic::Topic, Show)>);

/// Finds a topic by its name, or says which there are.
pub type FindTopic = fn(&str) -> Result<&'static topic::Topic, Problem>;

struct Reader {
    find: FindTopic,
    /// Step that is being read; none in the head.
    place: Option<usize>,
    faults: Vec<Fault>,
}

impl Reader {
    fn place(&self) -> Place {
        self.place.map_or(Place::Head, Place::Step)
    }

    fn refuse(&mut self, problem: Problem) {
        let place = self.place();
        self.faults.push(Fault::refused(place, problem));
    }

    fn wrong(&mut self, field: &str, value: String, allowed: &'static str) {
        self.refuse(Problem::WrongKind {
            field: field.into(),
            value,
            allowed: Allowed::Sentence(allowed),
        });
    }

    fn unknown_word(&mut self, field: &str, value: &str, allowed: Vec<&'static str>) {
        self.refuse(Problem::UnknownWord {
            field: field.into(),
            value: value.chars().take(40).collect(),
            allowed,
        });
    }

    /// Refuses names that are not among the known ones.
    fn known(&mut self, tree: &Tree, section: &str, names: &'static [&'static str]) {
        let Tree::Map(entries) = tree else { return };
        for (name, _) in entries {
            if !names.contains(&name.as_str()) {
                let field = [section, &name.chars().take(40).collect::<String>()].concat();
                let nearest = input::nearest(name, names.iter().copied())
                    .and_then(|near| names.iter().copied().find(|known| *known == near));
                self.refuse(Problem::UnknownField { field, nearest });
            }
        }
    }

    fn text(&mut self, tree: &Tree, field: &'static str, needed: bool) -> Option<String> {
        match tree.get(field) {
            Some(Tree::Text(text)) => Some(text.trim().into()),
            None if !needed => None,
            None => {
                self.refuse(Problem::Missing {
                    field,
                    allowed: Allowed::Sentence("talk.allowed.text"),
                });
                None
            }
            Some(other) => {
                self.wrong(field, shortened(other), "talk.allowed.text");
                None
            }
        }
    }

    fn texts(&mut self, tree: &Tree, field: &'static str) -> Option<Vec<String>> {
        let list = match tree.get(field)? {
            Tree::List(items) => items.iter().map(|item| match item {
                Tree::Text(text) => Some(text.trim().to_owned()),
                _ => None,
            }),
            other => {
                self.wrong(field, shortened(other), "talk.allowed.list");
                return None;
            }
        };
        let list: Option<Vec<String>> = list.collect();
        if list.is_none() {
            self.wrong(field, "[…]".into(), "talk.allowed.list");
        }
        list
    }

    fn sentence(&mut self, tree: &Tree, field: &'static str) -> Sentence {
        let text = self.text(tree, field, false).unwrap_or_default();
        self.sentence_of(field, &text)
    }

    fn sentence_of(&mut self, field: &'static str, text: &str) -> Sentence {
        Sentence::read(field, text).unwrap_or_else(|(text, why)| {
            let place = self.place();
            self.faults.push(Fault::WrongForm {
                place,
                field,
                text,
                why,
            });
            Sentence::default()
        })
    }

    /// Puts a table of scenario fields onto a scenario, each fault told.
    fn put(&mut self, scenario: &mut Scenario, fields: Option<&Tree>, field: &'static str) {
        let fields = match fields {
            None => return,
            Some(Tree::Map(fields)) => fields,
            Some(other) => return self.wrong(field, shortened(other), "talk.allowed.table"),
        };
        for (name, value) in fields {
            self.put_field(scenario, name, value);
        }
    }

    fn put_field(&mut self, scenario: &mut Scenario, path: &str, value: &Tree) {
        if let Tree::Map(fields) = value
            && input::index(path).is_none()
        {
            for (name, value) in fields {
                self.put_field(scenario, &[path, ".", name].concat(), value);
            }
        } else if let Err(problem) = scenario.set_tree(path, value) {
            self.refuse(problem);
        }
    }

    fn step(
        &mut self,
        tree: &Tree,
        number: usize,
        scenario: &mut Scenario,
        before: Before,
    ) -> Option<Step> {
        if !matches!(tree, Tree::Map(_)) {
            self.wrong("steps", shortened(tree), "talk.allowed.table");
            return None;
        }
        self.known(tree, "", &STEP);
        let named = self.text(tree, "topic", before.1.is_none());
        let topic = match (named, before.1) {
            (Some(name), _) => match (self.find)(&name) {
                Ok(topic) => Some(topic),
                Err(problem) => {
                    self.refuse(problem);
                    None
                }
            },
            (None, Some((topic, _))) => Some(topic),
            (None, None) => None,
        };
        self.put(scenario, tree.get("set"), "set");
        let same_topic = topic
            .zip(before.1)
            .filter(|(now, (then, _))| now.name == then.name);
        let show = match self.text(tree, "view", false) {
            None => same_topic.map_or(Show::First, |(_, (_, show))| show),
            Some(word) => Show::of(&word).unwrap_or_else(|| {
                self.unknown_word("view", &word, Show::WORDS.to_vec());
                Show::First
            }),
        };
        let parts = self.parts(tree).unwrap_or(match same_topic {
            Some(_) => before.0,
            None => Parts::FIGURE,
        });
        let (say, note) = (self.sentence(tree, "say"), self.sentence(tree, "note"));
        let question = self.question(tree.get("question"));
        Some(Step {
            number,
            topic: topic?,
            scenario: scenario.clone(),
            show,
            parts,
            say,
            note,
            question,
        })
    }

    fn parts(&mut self, tree: &Tree) -> Option<Parts> {
        let words = match tree.get("parts")? {
            Tree::Text(words) => words.clone(),
            _ => self.texts(tree, "parts")?.join(" "),
        };
        match Parts::read(&words) {
            Ok(parts) => Some(parts),
            Err(word) => {
                let mut allowed = vec!["all"];
                allowed.extend(Part::ALL.map(Part::word));
                self.unknown_word("parts", word, allowed);
                None
            }
        }
    }

    fn question(&mut self, tree: Option<&Tree>) -> Option<Question> {
        let tree = tree?;
        if !matches!(tree, Tree::Map(_)) {
            self.wrong("question", shortened(tree), "talk.allowed.table");
            return None;
        }
        self.known(tree, "question.", &QUESTION);
        let text = self.text(tree, "text", true)?;
        let value = self.text(tree, "value", false);
        let largest = self.texts(tree, "largest");
        let smallest = self.texts(tree, "smallest");
        let words = self.texts(tree, "words");
        let right = match (value, largest, smallest) {
            (Some(value), None, None) => {
                let sentence = ["{", &value, "}"].concat();
                Right::Value(self.sentence_of("question", &sentence))
            }
            (None, Some(paths), None) => self.extreme(paths, words, true)?,
            (None, None, Some(paths)) => self.extreme(paths, words, false)?,
            _ => {
                self.wrong("question", "{…}".into(), "talk.allowed.question");
                return None;
            }
        };
        Some(Question { text, right })
    }

    fn extreme(
        &mut self,
        paths: Vec<String>,
        words: Option<Vec<String>>,
        largest: bool,
    ) -> Option<Right> {
        let words = words.unwrap_or_else(|| paths.clone());
        if paths.len() < 2 || words.len() != paths.len() {
            self.wrong("question", "[…]".into(), "talk.allowed.choices");
            return None;
        }
        Some(Right::Extreme {
            paths,
            words,
            largest,
        })
    }
}

fn shortened(tree: &Tree) -> String {
    match tree {
        Tree::Text(text) => text.chars().take(40).collect(),
        Tree::Number(number) => format::plain(*number),
        Tree::Bool(flag) => flag.to_string(),
        Tree::List(_) => "[…]".into(),
        Tree::Map(_) => "{…}".into(),
        Tree::Null => String::new(),
    }
}
