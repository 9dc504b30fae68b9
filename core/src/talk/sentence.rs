//! A sentence with values by name: `The rear carries {rear_axle_load:3 kN}.`
//!
//! Between braces stands the name of an output (`limits.R1.acceleration`) or of an input
//! (`vehicle.mass`); after a colon, if wanted, the count of significant digits, a unit, or both. Without
//! them the output's own digits and the reader's units are taken. A brace that is meant is written twice.

use super::fault::{Fault, Place};
use crate::format;
use crate::input::{self, Kind};
use crate::topic::{OutputKind, ReadingValue, Report};
use crate::units::{self, Dimension, System};
use crate::words::{self, Lang};

/// A sentence with values by name.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sentence {
    /// The field of the talk that holds it.
    field: &'static str,
    pieces: Vec<Piece>,
}

#[derive(Clone, Debug, PartialEq)]
enum Piece {
    Words(String),
    Value {
        name: String,
        digits: Option<u8>,
        unit: String,
    },
}

/// Digits of an input that a sentence names without saying how many.
const INPUT_DIGITS: u8 = 3;

impl Sentence {
    /// Reads a sentence. What is wrong with the form of a value comes back: the text between its braces,
    /// and the reason as a key of the catalogue.
    pub(super) fn read(field: &'static str, text: &str) -> Result<Self, (String, &'static str)> {
        let mut pieces = Vec::new();
        let mut words = String::new();
        let mut rest = text;
        while let Some(at) = rest.find(['{', '}']) {
            let brace = &rest[at..=at];
            words.push_str(&rest[..at]);
            rest = &rest[at + 1..];
            if rest.starts_with(brace) {
                words.push_str(brace);
                rest = &rest[1..];
                continue;
            }
            let end = rest.find(['{', '}']);
            let Some(end) = end.filter(|end| brace == "{" && rest[*end..].starts_with('}')) else {
                return Err((shortened(&[brace, rest].concat()), "talk.why.brace"));
            };
            if !words.is_empty() {
                pieces.push(Piece::Words(core::mem::take(&mut words)));
            }
            pieces.push(value(&rest[..end])?);
            rest = &rest[end + 1..];
        }
        words.push_str(rest);
        if !words.is_empty() {
            pieces.push(Piece::Words(words));
        }
        Ok(Self { field, pieces })
    }

    /// Whether there is nothing to say.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.pieces.is_empty()
    }

    /// The values that it names, in their order.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.pieces.iter().filter_map(|piece| match piece {
            Piece::Value { name, .. } => Some(name.as_str()),
            Piece::Words(_) => None,
        })
    }

    /// The sentence with the values of an answer.
    ///
    /// # Errors
    /// A [`Fault`] at the given place when the answer lacks a value that the sentence names.
    pub fn spoken(
        &self,
        place: &Place,
        report: &Report,
        lang: Lang,
        system: System,
    ) -> Result<String, Fault> {
        let mut said = String::new();
        for piece in &self.pieces {
            match piece {
                Piece::Words(words) => said.push_str(words),
                Piece::Value { name, digits, unit } => {
                    let told = Told {
                        digits: *digits,
                        unit,
                        lang,
                        system,
                    };
                    let value = told.value(name, report).map_err(|miss| match miss {
                        Miss::Name => Self::unknown(self.field, place, name, report),
                        Miss::Unit => Fault::WrongForm {
                            place: place.clone(),
                            field: self.field,
                            text: unit.clone(),
                            why: "talk.why.unit",
                        },
                    })?;
                    said.push_str(&value);
                }
            }
        }
        Ok(said)
    }
}

impl Sentence {
    /// The fault of a name that an answer does not have.
    pub(super) fn unknown(
        field: &'static str,
        place: &Place,
        name: &str,
        report: &Report,
    ) -> Fault {
        let outputs = report.readings.iter().map(|reading| reading.path.as_str());
        let inputs = report.topic.inputs.iter().copied();
        Fault::UnknownValue {
            place: place.clone(),
            field,
            name: shortened(name),
            nearest: input::nearest(name, outputs.chain(inputs)).map(String::from),
        }
    }
}

/// Reads `name:3 kN`.
fn value(text: &str) -> Result<Piece, (String, &'static str)> {
    let (name, form) = text.split_once(':').unwrap_or((text, ""));
    let form = form.trim();
    let after = form.trim_start_matches(|c: char| c.is_ascii_digit());
    let count = &form[..form.len() - after.len()];
    let digits = match count {
        "" => None,
        // More digits than a double has would be noise.
        _ => match count.parse::<u8>() {
            Ok(digits @ 1..=9) => Some(digits),
            _ => return Err((shortened(text), "talk.why.digits")),
        },
    };
    if name.trim().is_empty() {
        return Err((shortened(text), "talk.why.name"));
    }
    Ok(Piece::Value {
        name: name.trim().into(),
        digits,
        unit: after.trim().into(),
    })
}

fn shortened(text: &str) -> String {
    text.chars().take(60).collect()
}

enum Miss {
    Name,
    Unit,
}

/// How a value is told.
struct Told<'a> {
    digits: Option<u8>,
    unit: &'a str,
    lang: Lang,
    system: System,
}

impl Told<'_> {
    fn value(&self, name: &str, report: &Report) -> Result<String, Miss> {
        if let Some(reading) = report.readings.iter().find(|r| r.path == name) {
            let output = &report.topic.outputs[reading.output];
            return match (&reading.value, output.kind) {
                (ReadingValue::Number(number), OutputKind::Quantity(dimension)) => {
                    self.quantity(*number, dimension, output.digits)
                }
                (ReadingValue::Word(word), _) => Ok(self.word(&["reason.", word].concat(), word)),
                (ReadingValue::Flag(flag), _) => {
                    let key = if *flag { "ui.yes" } else { "ui.no" };
                    Ok(words::get(self.lang, key).into())
                }
                (ReadingValue::Sentence(sentence), _) => Ok(sentence.text(self.lang, self.system)),
                (ReadingValue::Layout(layout), _) => Ok(layout.name().into()),
                // A number is declared a quantity; the tests of the topics see to it.
                (ReadingValue::Number(_), _) => Err(Miss::Name),
            };
        }
        let input = input::find(name).ok_or(Miss::Name)?;
        if !report.topic.inputs.contains(&input.path) {
            return Err(Miss::Name);
        }
        match input.kind {
            Kind::Quantity { dimension, .. } => {
                let number = report.scenario.number(name).ok_or(Miss::Name)?;
                self.quantity(number, dimension, INPUT_DIGITS)
            }
            Kind::Choice { .. } => {
                let word = report.scenario.word(name).ok_or(Miss::Name)?;
                Ok(self.word(&input.choice_key(word), word))
            }
            Kind::Layouts => Ok(report.scenario.layout().name().into()),
            // Lines of a file are nothing to say.
            Kind::Text { .. } => Err(Miss::Name),
        }
    }

    fn word(&self, key: &str, word: &str) -> String {
        words::find(self.lang, key).unwrap_or(word).into()
    }

    fn quantity(&self, value: f64, dimension: Dimension, digits: u8) -> Result<String, Miss> {
        let digits = self.digits.unwrap_or(digits);
        if self.unit.is_empty() {
            return Ok(format::quantity(
                value,
                dimension,
                self.system,
                digits,
                self.lang,
            ));
        }
        let one = ["1 ", self.unit].concat();
        let size = units::parse(&one, dimension).map_err(|_| Miss::Unit)?;
        let number = format::significant(value / size, digits, self.lang);
        Ok(format::with_unit(number, self.unit))
    }
}
