//! The one input format. A scenario holds what was given; what was not given comes from the demo
//! vehicle named by `vehicle.base`, or from the input's default.

use crate::error::{Allowed, Problem};
use crate::format;
use crate::input::{self, INPUTS, Input, Kind};
use crate::layout::Layout;
use crate::surface;
use crate::tree::Tree;
use crate::turn_in_place;
use crate::typed;
use crate::units;
use crate::vehicle;
use crate::words::Lang;
use serde::de::{Deserialize, Deserializer, Error as _};
use serde::ser::{Serialize, Serializer};

/// A scenario: vehicle, surface, layouts, and what each topic asks.
///
/// ```
/// use axlewright_core::Scenario;
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.mass", "4080 lb")?;
/// assert!(scenario.number("vehicle.mass").is_some_and(|m| (m - 1850.66).abs() < 0.01));
/// let problem = scenario.set("vehicle.weelbase", "2.8 m");
/// assert!(problem.is_err_and(|p| p.to_string().contains("vehicle.wheelbase")));
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scenario {
    given: Vec<(usize, Given)>,
}

/// One given value, and the text that it was given as.
#[derive(Clone, Debug, PartialEq)]
struct Given {
    value: Value,
    text: String,
}

#[derive(Clone, Debug, PartialEq)]
enum Value {
    Number(f64),
    Word(&'static str),
    Layouts(Vec<Layout>),
    Text,
}

impl Scenario {
    /// Reads plain nested data: the tables of a TOML file, a JSON object.
    ///
    /// # Errors
    /// The first [`Problem`], in the order of the data. Empty data is [`Problem::Empty`].
    pub fn from_tree(tree: &Tree) -> Result<Self, Problem> {
        let mut scenario = Self::default();
        match tree {
            Tree::Map(entries) => {
                for (name, value) in entries {
                    scenario.read(name, value)?;
                }
            }
            _ => return Err(Problem::Empty),
        }
        if scenario.given.is_empty() {
            return Err(Problem::Empty);
        }
        Ok(scenario)
    }

    fn read(&mut self, path: &str, value: &Tree) -> Result<(), Problem> {
        if let Tree::Map(entries) = value
            && input::index(path).is_none()
        {
            let section = format!("{path}.");
            if !INPUTS.iter().any(|i| i.path.starts_with(&section)) {
                return Err(unknown_field(path));
            }
            for (name, value) in entries {
                self.read(&format!("{path}.{name}"), value)?;
            }
            return Ok(());
        }
        self.set_tree(path, value)
    }

    /// Sets a field from a text: `"1850 kg"`, `"esker"`, `"F1 R1 F2R2"`. A trace without a line is none.
    ///
    /// # Errors
    /// A [`Problem`] that names the field, the value and what is allowed; the scenario is then
    /// unchanged.
    pub fn set(&mut self, path: &str, text: &str) -> Result<(), Problem> {
        let (at, input) = known(path)?;
        let value = read_text(input, text)?;
        match (value, text.trim()) {
            // A link could not tell an empty text from none.
            (Value::Text, "") => self.unset(path),
            (value, text) => self.put(at, value, text),
        }
        Ok(())
    }

    /// Sets a quantity in SI.
    ///
    /// # Errors
    /// As [`Scenario::set`].
    pub fn set_number(&mut self, path: &str, value: f64) -> Result<(), Problem> {
        let (at, input) = known(path)?;
        let Kind::Quantity { dimension, .. } = input.kind else {
            return Err(wrong_kind(input, format::plain(value)));
        };
        check_range(path, value)?;
        let text = match dimension.si_unit() {
            "" => format::plain(value),
            unit => format!("{} {unit}", format::plain(value)),
        };
        self.put(at, Value::Number(value), &text);
        Ok(())
    }

    /// Sets a field from plain data: a text, a number (SI), a list of layouts.
    ///
    /// # Errors
    /// As [`Scenario::set`].
    pub fn set_tree(&mut self, path: &str, value: &Tree) -> Result<(), Problem> {
        let (_, input) = known(path)?;
        match (value, &input.kind) {
            (Tree::Text(text), _) => self.set(path, text),
            (Tree::Number(number), Kind::Quantity { .. }) => self.set_number(path, *number),
            (Tree::List(items), Kind::Layouts) => {
                let mut names = String::new();
                for item in items {
                    match item {
                        Tree::Text(name) => {
                            names.push_str(name);
                            names.push(' ');
                        }
                        other => return Err(wrong_kind(input, shorten(other))),
                    }
                }
                self.set(path, &names)
            }
            (other, _) => Err(wrong_kind(input, shorten(other))),
        }
    }

    /// Forgets what was given for a field.
    pub fn unset(&mut self, path: &str) {
        if let Some(at) = input::index(path) {
            self.given.retain(|(other, _)| *other != at);
        }
    }

    /// Sets a field from what a reader typed, who may write a decimal comma. What is kept has a point.
    ///
    /// # Errors
    /// As [`Scenario::set`]; also when the number can be read in two ways.
    pub fn set_typed(&mut self, path: &str, text: &str, lang: Lang) -> Result<(), Problem> {
        let (_, input) = known(path)?;
        let Kind::Quantity { .. } = input.kind else {
            return self.set(path, text);
        };
        let plain = typed::with_point(text, lang).map_err(|reason| Problem::NotAQuantity {
            field: path.into(),
            value: shorten(&Tree::text(text.trim())),
            reason,
            allowed: input.allowed(),
        })?;
        self.set(path, &plain)
            .map_err(|problem| problem.told_as(text))
    }

    /// Sets a quantity that is known to be in its range, in place and without a text to tell it by.
    pub(crate) fn vary(&mut self, at: usize, number: f64) {
        let value = Value::Number(number);
        match self.given.binary_search_by_key(&at, |(other, _)| *other) {
            Ok(found) => self.given[found].1.value = value,
            Err(place) => {
                let text = String::new();
                self.given.insert(place, (at, Given { value, text }));
            }
        }
    }

    fn put(&mut self, at: usize, value: Value, text: &str) {
        // Words and layouts in their own spelling: a scenario that is written and read again is the same.
        let text = match &value {
            Value::Word(word) => (*word).into(),
            Value::Layouts(layouts) => {
                let names: Vec<&str> = layouts.iter().map(|layout| layout.name()).collect();
                names.join(" ")
            }
            Value::Number(_) | Value::Text => text.into(),
        };
        let given = Given { value, text };
        match self.given.binary_search_by_key(&at, |(other, _)| *other) {
            Ok(found) => self.given[found].1 = given,
            Err(place) => self.given.insert(place, (at, given)),
        }
    }

    fn given(&self, path: &str) -> Option<&Given> {
        self.given_at(input::index(path)?)
    }

    fn given_at(&self, at: usize) -> Option<&Given> {
        self.given
            .binary_search_by_key(&at, |(other, _)| *other)
            .ok()
            .map(|found| &self.given[found].1)
    }

    /// The text that a field was given as, if it was given.
    #[must_use]
    pub fn text(&self, path: &str) -> Option<&str> {
        self.given(path).map(|given| given.text.as_str())
    }

    /// Whether any field of the section ("vehicle", "surface", …) was given.
    #[must_use]
    pub fn gives_any(&self, section: &str) -> bool {
        self.given
            .iter()
            .any(|(at, _)| INPUTS[*at].path.split('.').next() == Some(section))
    }

    /// Value of a quantity as it was given, SI; `None` when it was not given.
    #[must_use]
    pub fn given_number(&self, path: &str) -> Option<f64> {
        match self.given(path)?.value {
            Value::Number(number) => Some(number),
            _ => None,
        }
    }

    /// Value of a quantity, SI: given, or the demo vehicle's, or the surface's, or the default.
    #[must_use]
    pub fn number(&self, path: &str) -> Option<f64> {
        let at = input::index(path)?;
        if let Some(Given {
            value: Value::Number(number),
            ..
        }) = self.given_at(at)
        {
            return Some(*number);
        }
        if let Some(number) = vehicle::chassis_not_given(self, path) {
            return Some(number);
        }
        if let Some(base) = self.word("vehicle.base")
            && let Some(value) = vehicle::demo_value_at(base, at)
        {
            return Some(value);
        }
        if let Some(value) = surface::friction_not_given(self, path) {
            return Some(value);
        }
        if path == "turn_in_place.wear_coefficient" {
            return Some(turn_in_place::wear::calibrated().coefficient_m3_j);
        }
        match INPUTS[at].kind {
            Kind::Quantity { default, .. } => default,
            _ => None,
        }
    }

    /// Value of a quantity that the question cannot do without, SI.
    ///
    /// # Errors
    /// [`Problem::Missing`] when nothing gives it.
    pub fn require(&self, path: &'static str) -> Result<f64, Problem> {
        self.number(path).ok_or_else(|| missing(path))
    }

    /// Word of a choice: given, or the default.
    #[must_use]
    pub fn word(&self, path: &str) -> Option<&'static str> {
        let at = input::index(path)?;
        if let Some(Given {
            value: Value::Word(word),
            ..
        }) = self.given_at(at)
        {
            return Some(word);
        }
        match INPUTS[at].kind {
            Kind::Choice { default, .. } => default,
            _ => None,
        }
    }

    /// The layouts to compare: those given, with the one that is shown among them; or all.
    #[must_use]
    pub fn layouts(&self) -> Vec<Layout> {
        let mut layouts = self.given_layouts().unwrap_or(&Layout::ALL).to_vec();
        let shown = self.layout();
        if !layouts.contains(&shown) {
            layouts.push(shown);
        }
        layouts
    }

    fn given_layouts(&self) -> Option<&[Layout]> {
        match &self.given("layouts")?.value {
            Value::Layouts(layouts) => Some(layouts),
            _ => None,
        }
    }

    /// The layout that a figure shows: the one given, or the first of those to compare.
    #[must_use]
    pub fn layout(&self) -> Layout {
        let given = self
            .text("layout")
            .and_then(|name| Layout::from_name(name).ok());
        let first = || {
            self.given_layouts()
                .and_then(|layouts| layouts.first().copied())
        };
        given.or_else(first).unwrap_or(Layout::R1)
    }

    /// What was given, as plain nested data in the order of the input table. Quantities are texts
    /// with a unit, as they were given.
    #[must_use]
    pub fn to_tree(&self) -> Tree {
        let mut tree = Tree::map();
        for (at, given) in &self.given {
            let value = match &given.value {
                Value::Layouts(layouts) => {
                    Tree::List(layouts.iter().map(|l| Tree::text(l.name())).collect())
                }
                _ => Tree::text(given.text.as_str()),
            };
            tree.set_path(INPUTS[*at].path, value);
        }
        tree
    }

    /// What was given, path by path, in the order of the input table.
    pub fn entries(&self) -> impl Iterator<Item = (&'static str, &str)> {
        self.given
            .iter()
            .map(|(at, given)| (INPUTS[*at].path, given.text.as_str()))
    }

    /// This scenario with everything that the other gives put on top.
    #[must_use]
    pub fn overlaid_with(mut self, other: &Self) -> Self {
        for (at, given) in &other.given {
            self.put(*at, given.value.clone(), &given.text);
        }
        self
    }
}

impl Serialize for Scenario {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.to_tree().serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Scenario {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let tree = Tree::deserialize(deserializer)?;
        Self::from_tree(&tree).map_err(D::Error::custom)
    }
}

fn known(path: &str) -> Result<(usize, &'static Input), Problem> {
    let at = input::index(path).ok_or_else(|| unknown_field(path))?;
    Ok((at, &INPUTS[at]))
}

fn unknown_field(path: &str) -> Problem {
    let field: String = path.chars().take(80).collect();
    let nearest = input::nearest(&field, INPUTS.iter().map(|i| i.path)).or_else(|| {
        // "mass" at the top level, or in the wrong section, still has a home.
        let last = field.rsplit('.').next().unwrap_or(&field);
        INPUTS
            .iter()
            .map(|i| i.path)
            .find(|known| known.rsplit('.').next() == Some(last))
    });
    Problem::UnknownField { field, nearest }
}

fn missing(path: &'static str) -> Problem {
    Problem::Missing {
        field: path,
        allowed: input::find(path).map_or(Allowed::Sentence("allowed.any"), Input::allowed),
    }
}

fn wrong_kind(input: &Input, value: String) -> Problem {
    Problem::WrongKind {
        field: input.path.into(),
        value,
        allowed: input.allowed(),
    }
}

fn shorten(tree: &Tree) -> String {
    match tree {
        Tree::Null => "nothing".into(),
        Tree::Bool(value) => value.to_string(),
        Tree::Number(value) => format::plain(*value),
        Tree::Text(text) => text.chars().take(40).collect(),
        Tree::List(_) => "[…]".into(),
        Tree::Map(_) => "{…}".into(),
    }
}

fn read_text(input: &Input, text: &str) -> Result<Value, Problem> {
    let shown: String = text.trim().chars().take(40).collect();
    match &input.kind {
        Kind::Quantity { dimension, .. } => {
            let number =
                units::parse(text, *dimension).map_err(|reason| Problem::NotAQuantity {
                    field: input.path.into(),
                    value: shown.clone(),
                    reason,
                    allowed: input.allowed(),
                })?;
            if !in_range(input, number) {
                return Err(out_of_range(input, shown));
            }
            Ok(Value::Number(number))
        }
        Kind::Choice { words, .. } => {
            let wanted = text.trim().to_ascii_lowercase().replace(['-', ' '], "_");
            words
                .iter()
                .find(|word| word.to_ascii_lowercase() == wanted)
                .map(|word| Value::Word(word))
                .ok_or_else(|| unknown_word(input, shown, words))
        }
        Kind::Text { most, .. } if text.len() <= *most => Ok(Value::Text),
        Kind::Text { most, .. } => {
            let before = text.bytes().take(*most).filter(|b| *b == b'\n').count();
            let line = text.lines().nth(before).unwrap_or_default();
            Err(Problem::Line {
                field: input.path,
                line: before + 1,
                value: line.chars().take(40).collect(),
                why: "why.trace_long",
                allowed: input.allowed(),
            })
        }
        Kind::Layouts => {
            let mut layouts = Vec::new();
            for name in text.split([' ', ',', ';']).filter(|name| !name.is_empty()) {
                let layout = Layout::from_name(name).map_err(|_| {
                    unknown_word(input, name.chars().take(40).collect(), Layout::NAMES)
                })?;
                if !layouts.contains(&layout) {
                    layouts.push(layout);
                }
            }
            if layouts.is_empty() {
                return Err(unknown_word(input, shown, Layout::NAMES));
            }
            Ok(Value::Layouts(layouts))
        }
    }
}

fn unknown_word(input: &Input, value: String, words: &[&'static str]) -> Problem {
    Problem::UnknownWord {
        field: input.path.into(),
        value,
        allowed: words.to_vec(),
    }
}

/// Refuses an SI value outside the range that the input table gives for its path.
///
/// # Errors
/// [`Problem::OutOfRange`]; a number that is not finite is out of every range.
pub(crate) fn check_range(path: &str, value: f64) -> Result<(), Problem> {
    let (_, input) = known(path)?;
    if in_range(input, value) {
        return Ok(());
    }
    let unit = match input.kind {
        Kind::Quantity { dimension, .. } => dimension.si_unit(),
        _ => "",
    };
    let shown = format!("{} {unit}", format::plain(value));
    Err(out_of_range(input, shown.trim().into()))
}

fn in_range(input: &Input, value: f64) -> bool {
    match input.kind {
        Kind::Quantity { accepted, .. } => accepted.0 <= value && value <= accepted.1,
        _ => true,
    }
}

fn out_of_range(input: &Input, shown: String) -> Problem {
    Problem::OutOfRange {
        field: input.path.into(),
        value: shown,
        allowed: input.allowed(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_not_given_comes_from_the_base_and_what_is_given_wins() {
        let mut scenario = Scenario::default();
        assert_eq!(scenario.number("vehicle.mass"), None);
        scenario.set("vehicle.base", "Esker").unwrap();
        assert_eq!(scenario.number("vehicle.mass"), Some(1850.0));
        scenario.set("vehicle.mass", "2 t").unwrap();
        assert_eq!(scenario.number("vehicle.mass"), Some(2000.0));
        scenario.unset("vehicle.mass");
        assert_eq!(scenario.number("vehicle.mass"), Some(1850.0));
    }

    #[test]
    fn a_refused_value_leaves_the_scenario_as_it_was() {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.mass", "2 t").unwrap();
        let before = scenario.clone();
        for (path, text) in [
            ("vehicle.mass", "two tonnes"),
            ("vehicle.mass", "0 kg"),
            ("vehicle.mass", "-5 kg"),
            ("vehicle.mass", "2 m"),
            ("vehicle.base", "lorry"),
            ("surface.friction_peak", "1e9"),
            ("layouts", "F1 R9"),
            ("vehicle.colour", "red"),
        ] {
            let problem = scenario.set(path, text).unwrap_err();
            assert!(problem.field().starts_with(path), "{problem}");
            assert_eq!(scenario, before);
        }
        assert!(scenario.set_number("vehicle.mass", f64::NAN).is_err());
        assert_eq!(scenario, before);
    }

    #[test]
    fn plain_data_goes_in_and_comes_out_the_same() {
        let mut tree = Tree::map();
        tree.set_path("vehicle.mass", Tree::text("4080 lb"));
        tree.set_path(
            "layouts",
            Tree::List(vec![Tree::text("F1"), Tree::text("F2R2")]),
        );
        let scenario = Scenario::from_tree(&tree).unwrap();
        assert_eq!(Scenario::from_tree(&scenario.to_tree()).unwrap(), scenario);
        assert_eq!(scenario.to_tree(), tree);
        assert_eq!(Scenario::from_tree(&Tree::map()), Err(Problem::Empty));
    }

    #[test]
    fn a_field_in_the_wrong_place_is_told_its_home() {
        let problem = Scenario::default().set("mass", "5 kg").unwrap_err();
        assert!(problem.to_string().contains("vehicle.mass"), "{problem}");
    }
}
