//! A row of the file of published values.

use axlewright_core::Scenario;
use core::fmt;
use toml::{Table, Value};

/// One published number and how we compute it.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// The check that the number belongs to; several numbers may share one.
    pub id: String,
    /// What the number is, in one plain sentence.
    pub what: String,
    /// Where it was published.
    pub source: String,
    /// How it came to us.
    pub label: Label,
    /// The published number, in [`Check::unit`].
    pub expected: f64,
    /// Unit of the number, as it may be typed in a scenario; empty for a pure number.
    pub unit: String,
    /// Rounding of the published number, in [`Check::unit`].
    pub tolerance: f64,
    /// What our value is multiplied by: 0.5 for one wheel of an axle.
    pub factor: f64,
    /// How our value is computed.
    pub method: Method,
}

/// How a published value came to us.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Label {
    /// Read in the source.
    Read,
    /// Read where another text quotes the source.
    Quoted,
    /// From memory, not looked up.
    Memory,
    /// Follows from the equations; the number itself was not published.
    Derived,
    /// A rule of the trade without a source.
    Practice,
}

impl Label {
    const ALL: [Self; 5] = [
        Self::Read,
        Self::Quoted,
        Self::Memory,
        Self::Derived,
        Self::Practice,
    ];

    fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|label| label.word() == word)
    }

    /// The label as written in the file.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Quoted => "quoted",
            Self::Memory => "memory",
            Self::Derived => "derived",
            Self::Practice => "practice",
        }
    }
}

/// How our value of a check is computed.
#[derive(Clone, Debug, PartialEq)]
pub enum Method {
    /// A value of a topic's answer.
    Topic {
        /// Name of the topic.
        topic: String,
        /// Path in the answer.
        path: String,
        /// The case, as it would be typed.
        scenario: Scenario,
    },
    /// A formula of the core.
    Formula {
        /// Name of the formula.
        name: String,
        /// Names and texts of its arguments.
        arguments: Vec<(String, String)>,
    },
    /// A formula whose first argument is a value of a topic's answer.
    TopicThenFormula {
        /// Name of the topic.
        topic: String,
        /// Path in the answer.
        path: String,
        /// The case, as it would be typed.
        scenario: Scenario,
        /// Name of the formula.
        name: String,
        /// Names and texts of its other arguments.
        arguments: Vec<(String, String)>,
    },
}

/// What is wrong with a row, or with the file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The check at fault; empty when the file as a whole is.
    pub id: String,
    /// What is wrong.
    pub what: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.id.is_empty() {
            write!(f, "published values: {}", self.what)
        } else {
            write!(f, "published value {}: {}", self.id, self.what)
        }
    }
}

impl core::error::Error for Fault {}

impl Check {
    /// Whether a value, in the check's unit, is the published one within its rounding.
    #[must_use]
    pub fn holds(&self, value: f64) -> bool {
        (value - self.expected).abs() <= self.tolerance
    }

    pub(super) fn fault(&self, what: &str) -> Fault {
        Fault {
            id: self.id.clone(),
            what: format!("{what} ({})", self.what),
        }
    }
}

/// Reads the file of published values.
///
/// # Errors
/// A [`Fault`] for text that is not TOML of this shape, for a row that says neither topic nor
/// formula, and for a file without rows.
pub fn read(text: &str) -> Result<Vec<Check>, Fault> {
    let fault = |what: String| Fault {
        id: String::new(),
        what,
    };
    let file: Table = toml::from_str(text).map_err(|error| fault(error.to_string()))?;
    if let Some(other) = file.keys().find(|name| *name != "check") {
        return Err(fault(format!("unknown table {other}")));
    }
    let rows = match file.get("check") {
        Some(Value::Array(rows)) if !rows.is_empty() => rows,
        _ => return Err(fault("there is no row".into())),
    };
    rows.iter()
        .map(|row| match row {
            Value::Table(row) => read_row(row),
            _ => Err(fault("a check is not a table".into())),
        })
        .collect()
}

const FIELDS: &[&str] = &[
    "id",
    "what",
    "source",
    "label",
    "expected",
    "unit",
    "tolerance",
    "factor",
    "topic",
    "path",
    "scenario",
    "formula",
    "arguments",
];

fn read_row(row: &Table) -> Result<Check, Fault> {
    let id = row.get("id").and_then(Value::as_str).unwrap_or_default();
    let fault = |what: String| Fault {
        id: id.into(),
        what,
    };
    if let Some(other) = row.keys().find(|name| !FIELDS.contains(&name.as_str())) {
        return Err(fault(format!("unknown field {other}")));
    }
    let text = |name: &str| {
        row.get(name)
            .and_then(Value::as_str)
            .map(str::to_owned)
            .ok_or_else(|| fault(format!("{name} must be a text")))
    };
    let number = |name: &str| {
        let value = row.get(name);
        let whole = value.and_then(Value::as_integer).map(|n| n as f64);
        value
            .and_then(Value::as_float)
            .or(whole)
            .ok_or_else(|| fault(format!("{name} must be a number")))
    };
    let label = text("label")?;
    let method = read_method(row).map_err(fault)?;
    Ok(Check {
        id: text("id")?,
        what: text("what")?,
        source: text("source")?,
        label: Label::from_word(&label).ok_or_else(|| fault(format!("label cannot be {label}")))?,
        expected: number("expected")?,
        unit: text("unit")?,
        tolerance: number("tolerance")?,
        factor: if row.contains_key("factor") {
            number("factor")?
        } else {
            1.0
        },
        method,
    })
}

fn read_method(row: &Table) -> Result<Method, String> {
    let text = |name: &str| row.get(name).and_then(Value::as_str).map(str::to_owned);
    let mut arguments = Vec::new();
    if let Some(Value::Table(given)) = row.get("arguments") {
        for (name, value) in given {
            let text = value
                .as_str()
                .ok_or_else(|| format!("argument {name} must be a text with its unit"))?;
            arguments.push((name.clone(), text.to_owned()));
        }
    }
    let scenario = match row.get("scenario") {
        Some(scenario) => Some(
            scenario
                .clone()
                .try_into::<Scenario>()
                .map_err(|error| error.to_string())?,
        ),
        None => None,
    };
    match (text("topic"), text("path"), scenario, text("formula")) {
        (Some(topic), Some(path), Some(scenario), None) => Ok(Method::Topic {
            topic,
            path,
            scenario,
        }),
        (Some(topic), Some(path), Some(scenario), Some(name)) => Ok(Method::TopicThenFormula {
            topic,
            path,
            scenario,
            name,
            arguments,
        }),
        (None, None, None, Some(name)) => Ok(Method::Formula { name, arguments }),
        (None, None, None, None) => Err("it has neither topic nor formula".into()),
        _ => Err("topic, path and scenario go together".into()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROW: &str = "[[check]]\nid = \"X\"\nwhat = \"A.\"\nsource = \"none\"\nlabel = \"derived\"\n\
                       expected = 1\nunit = \"\"\ntolerance = 0.1\n";

    #[test]
    fn a_row_without_a_way_to_compute_it_is_refused_by_its_id() {
        let fault = read(ROW).unwrap_err();
        assert_eq!(fault.id, "X");
        assert!(read("").is_err(), "no rows");
        assert!(
            read(&format!(
                "{ROW}formula = \"round_patch_factor\"\ncolour = 1\n"
            ))
            .is_err()
        );
    }

    #[test]
    fn a_value_holds_within_the_rounding_and_not_beyond() {
        let checks = read(&format!("{ROW}formula = \"round_patch_factor\"\n")).unwrap();
        assert!(checks[0].holds(1.1 - 1e-9) && checks[0].holds(0.9 + 1e-9));
        assert!(!checks[0].holds(1.1001) && !checks[0].holds(f64::NAN));
    }
}
