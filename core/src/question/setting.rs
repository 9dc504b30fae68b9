//! The attribute `question`: `"limit"`, `"limit 7"`, `"any 7"`, or empty.

use super::{Question, of};
use crate::error::{Allowed, Problem};
use crate::input;
use crate::topic::Topic;

/// The largest seed: whole numbers up to it are exact in every JSON reader.
pub const SEED_LIMIT: u64 = (1 << 53) - 1;

/// Which question a page asks.
#[derive(Clone, Copy, Debug)]
pub struct Setting {
    /// The question; none where the seed picks it.
    pub question: Option<&'static Question>,
    /// The seed; none where the scenario is asked as it is.
    pub seed: Option<u64>,
}

impl Setting {
    /// Reads the attribute.
    ///
    /// # Errors
    /// [`Problem::UnknownWord`] for an unknown question, its allowed names led by the nearest one;
    /// [`Problem::NoAnswer`] for a topic without questions; [`Problem::WrongKind`] for a seed that is not a whole number up to [`SEED_LIMIT`].
    pub fn read(topic: &Topic, text: &str) -> Result<Self, Problem> {
        if of(topic).is_empty() {
            return Err(Problem::NoAnswer {
                field: "question",
                value: text.chars().take(40).collect(),
                why: "why.no_questions",
                allowed: Allowed::Sentence("allowed.no_question"),
            });
        }
        let mut words = text.split_ascii_whitespace();
        let question = match words.next() {
            None | Some("any") => None,
            Some(id) => Some(Question::find(topic, id)?),
        };
        let seed = match words.next() {
            None => None,
            Some(digits) => Some(
                whole(digits)
                    .filter(|_| words.next().is_none())
                    .ok_or_else(|| Problem::WrongKind {
                        field: "question".into(),
                        value: text.chars().take(40).collect(),
                        allowed: Allowed::Sentence("allowed.seed"),
                    })?,
            ),
        };
        Ok(Self { question, seed })
    }

    /// Name of the question; with none chosen, of the one that the seed picks.
    #[must_use]
    pub fn id(&self, topic: &Topic) -> &'static str {
        let questions = of(topic);
        let picked = || {
            let mut draw = super::draw::Draw::of(self.seed?, topic.name, "any");
            questions.get(draw.below(questions.len()))
        };
        self.question
            .or_else(picked)
            .or(questions.first())
            .map_or("", |question| question.id)
    }
}

/// A whole number up to the limit.
fn whole(digits: &str) -> Option<u64> {
    let mut value = 0_u64;
    for byte in digits.bytes() {
        let digit = byte.checked_sub(b'0').filter(|digit| *digit < 10)?;
        value = value * 10 + u64::from(digit);
        if value > SEED_LIMIT {
            return None;
        }
    }
    Some(value)
}

impl Question {
    /// The question of a name; hyphens and underscores are the same.
    ///
    /// # Errors
    /// [`Problem::UnknownWord`], its allowed names led by the nearest one.
    pub fn find(topic: &Topic, id: &str) -> Result<&'static Self, Problem> {
        let wanted = id.to_ascii_lowercase().replace('-', "_");
        let questions = of(topic);
        questions
            .iter()
            .find(|question| question.id == wanted)
            .ok_or_else(|| {
                let mut allowed: Vec<&'static str> = questions.iter().map(|q| q.id).collect();
                let nearest = input::nearest(&wanted, allowed.iter().copied());
                allowed.sort_by_key(|name| Some(*name) != nearest);
                Problem::UnknownWord {
                    field: "question".into(),
                    value: id.chars().take(40).collect(),
                    allowed,
                }
            })
    }
}
