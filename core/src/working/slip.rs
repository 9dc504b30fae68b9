//! A working with a slip in one line, and the lines after it that follow from that.

use super::{Kind, Quantity, Step, notation};

/// The steps with another equation in one of them. Its value and those that rest on it are computed anew,
/// so that every other line is right by itself. None where the equation cannot be read or computed, or
/// where what rests on it was solved rather than computed.
pub(crate) fn with_slip(steps: &[&Step], at: usize, equation: &str) -> Option<Vec<Step>> {
    let mut lines: Vec<Step> = steps.iter().map(|step| (*step).clone()).collect();
    let mut known: Vec<Quantity> = Vec::new();
    for step in lines.get(..at)? {
        known.extend(step.inputs.iter().cloned());
        known.push(step.result.clone());
    }
    let line = lines.get_mut(at)?;
    known.append(&mut line.inputs);
    // What was computed last hides what had its symbol before.
    let find = |symbol: &str| known.iter().rev().find(|known| known.symbol == symbol);
    line.expression = notation::read(equation, &|name| find(name).map(|known| known.symbol))?;
    for symbol in line.expression.symbols() {
        line.inputs.push(find(symbol)?.clone());
    }
    let mut changed = vec![compute(line)?];
    for line in lines.get_mut(at + 1..)? {
        let mut follows = false;
        for input in &mut line.inputs {
            if let Some((_, value)) = changed.iter().find(|(old, _)| old == input) {
                input.value = *value;
                follows = true;
            }
        }
        if follows && line.kind == Kind::Satisfied {
            return None;
        }
        if follows {
            changed.push(compute(line)?);
        }
    }
    Some(lines)
}

/// Computes a line from what it holds; its result before, and the value after.
fn compute(line: &mut Step) -> Option<(Quantity, f64)> {
    let old = line.result.clone();
    let value = line.evaluate().filter(|value| value.is_finite())?;
    line.result.value = value;
    Some((old, value))
}
