//! An order of layouts with the reason for it: an order is right only together with what decides it.

use super::Asked;
use crate::topic::{Reading, ReadingValue};

/// An order of layouts with a reason. Its sentence is `question.TOPIC.ID.WORD` in the catalogue.
#[derive(Debug)]
pub struct Order {
    /// Word of the choice.
    pub word: &'static str,
    /// The layouts, the first one first.
    pub layouts: &'static [&'static str],
    /// What makes the reason the right one, besides the order.
    pub because: Because,
}

/// What makes a reason the right one.
#[derive(Debug)]
pub enum Because {
    /// The order alone: no other reason leads to it.
    Order,
    /// What limits: words that outputs have.
    Words(&'static [(&'static str, &'static str)]),
    /// What comes first: an output that is clearly larger than another.
    Larger(&'static str, &'static str),
    /// Nothing: the reason is a mistake that people make.
    Never,
}

/// Share by which an output must lead the next.
const APART: f64 = 0.02;

impl Asked {
    /// Whether an order and its reason are what the answer says.
    pub(super) fn is_order(
        &self,
        readings: &[Reading],
        output: &str,
        falling: bool,
        order: &Order,
    ) -> bool {
        let leads = |one: &str, other: &str| {
            let pair = (self.amount(readings, one), self.amount(readings, other));
            let (Ok(one), Ok(other)) = pair else {
                return false;
            };
            one.value - other.value > APART * one.value.abs().max(other.value.abs())
        };
        for pair in order.layouts.windows(2) {
            let (one, other) = (output.replace('*', pair[0]), output.replace('*', pair[1]));
            let is_first = if falling {
                leads(&one, &other)
            } else {
                leads(&other, &one)
            };
            if !is_first {
                return false;
            }
        }
        match order.because {
            Because::Order => true,
            Because::Words(words) => words.iter().all(|(output, word)| {
                let found = self.reading(readings, output);
                matches!(found, Ok(Reading { value: ReadingValue::Word(found), .. }) if found == word)
            }),
            Because::Larger(one, other) => leads(one, other),
            Because::Never => false,
        }
    }
}
