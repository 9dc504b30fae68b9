//! The choices of a question, and which of them is right.

use super::draw::Draw;
use super::make::unclear;
use super::{Asked, Change, Choice, Right, Vary};
use crate::error::Problem;
use crate::topic::ReadingValue;

/// Share by which outputs must differ for one of them to be called larger.
const APART: f64 = 0.02;

impl Asked {
    pub(super) fn choose(
        &mut self,
        choice: &'static Choice,
        draw: Option<&mut Draw>,
    ) -> Result<(), Problem> {
        let mut choices = Vec::new();
        let mut right = None;
        self.solved = self.scenario.clone();
        match choice {
            Choice::Larger(outputs) => {
                let readings = self.topic.solve_without_run(&self.scenario)?;
                let mut values = Vec::new();
                for (output, word, key) in *outputs {
                    values.push(self.amount(&readings, output)?.value);
                    choices.push((*word, (*key).into()));
                    self.shown.push(self.path(output));
                }
                let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                let near = |value: &&f64| most - **value <= APART * most.abs();
                if values.iter().filter(near).count() == 1 {
                    right = values.iter().position(|value| near(&value));
                }
            }
            Choice::Word {
                output,
                words,
                apart,
            } => {
                let readings = self.topic.solve_without_run(&self.scenario)?;
                for (one, other) in *apart {
                    let pair = (self.amount(&readings, one), self.amount(&readings, other));
                    if let (Ok(one_amount), Ok(other_amount)) = pair {
                        let (a, b) = (one_amount.value, other_amount.value);
                        if (a - b).abs() <= APART * a.abs().max(b.abs()) {
                            return Err(unclear(self.question));
                        }
                        self.shown.extend([self.path(one), self.path(other)]);
                    }
                }
                if let ReadingValue::Word(found) = self.reading(&readings, output)?.value {
                    right = words.iter().position(|word| *word == found);
                }
                for word in *words {
                    choices.push((*word, ["reason.", word].concat()));
                }
            }
            Choice::Change(changes) => {
                let at = draw.map_or(0, |draw| draw.below(changes.len()));
                if let Some((vary, output)) = changes.get(at) {
                    right = self.changed(vary, output)?;
                }
                for (word, key) in [
                    ("more", "question.more"),
                    ("same", "question.same"),
                    ("less", "question.less"),
                ] {
                    choices.push((word, key.into()));
                }
            }
            Choice::Rank {
                output,
                falling,
                orders,
            } => {
                let readings = self.topic.solve_without_run(&self.scenario)?;
                let mut fitting = 0;
                for (at, order) in orders.iter().enumerate() {
                    let key = [&*self.key("."), order.word].concat();
                    choices.push((order.word, key));
                    if self.is_order(&readings, output, *falling, order) {
                        right = Some(at);
                        fitting += 1;
                    }
                }
                // With two reasons for it, none would be the one.
                if fitting > 1 {
                    right = None;
                }
                let layouts = orders.first().map_or(&[][..], |order| order.layouts);
                for layout in layouts {
                    self.shown.push(output.replace('*', layout));
                }
            }
            Choice::Spot { output, slips } => {
                if let Some((numbers, at)) = self.spoil(output, slips, draw)? {
                    choices = numbers;
                    right = Some(at);
                }
            }
        }
        let right = right.ok_or_else(|| unclear(self.question))?;
        self.right = Right::Choice { choices, right };
        Ok(())
    }

    /// Makes a change; position of what comes of it among more, the same, less. None where there is
    /// nothing to change, or where the output hardly moves.
    fn changed(&mut self, vary: &Vary, output: &'static str) -> Result<Option<usize>, Problem> {
        let now = self.scenario.number(vary.path);
        let Some(text) = vary.text(None, now) else {
            return Ok(None);
        };
        if vary.path.starts_with("surface.friction") {
            self.solved.unset("surface.kind");
        }
        self.solved.set(vary.path, &text)?;
        let before = self.amount(&self.topic.solve_without_run(&self.scenario)?, output)?;
        let after = self.amount(&self.topic.solve_without_run(&self.solved)?, output)?;
        let share = (after.value - before.value) / before.value.abs();
        self.shown = vec![self.path(output)];
        self.change = Some(Change {
            input: vary.path,
            before,
            after,
        });
        Ok(if share.abs() <= 1e-9 {
            Some(1)
        } else if share >= 0.5 * APART {
            Some(0)
        } else if share <= -0.5 * APART {
            Some(2)
        } else {
            None
        })
    }
}
