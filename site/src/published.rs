//! Published values beside ours: one data file, read by the tests, which assert it, and by the site,
//! which shows it.

mod formula;
mod row;

pub use formula::{Formula, find as find_formula};
pub use row::{Check, Fault, Label, Method, read};

use axlewright_core::topic::{self, OutputKind, ReadingValue};
use axlewright_core::units::{self, Dimension};

/// Our value for a check, in the check's unit.
///
/// # Errors
/// A [`Fault`] that names the check and says what in its row cannot be computed.
pub fn compute(check: &Check) -> Result<f64, Fault> {
    let (value, dimension) = match &check.method {
        Method::Topic { .. } => from_topic(check)?,
        Method::Formula { name, arguments } => from_formula(check, name, arguments, None)?,
        Method::TopicThenFormula {
            name, arguments, ..
        } => {
            let first = from_topic(check)?;
            from_formula(check, name, arguments, Some(first))?
        }
    };
    let unit = units::parse(&format!("1 {}", check.unit), dimension)
        .map_err(|_| check.fault("its unit does not measure what is computed"))?;
    let in_unit = value * check.factor / unit;
    if in_unit.is_finite() {
        Ok(in_unit)
    } else {
        Err(check.fault("the result is not finite"))
    }
}

/// A value of a topic's answer, SI, and what it measures. Yes is 1 and no is 0.
fn from_topic(check: &Check) -> Result<(f64, Dimension), Fault> {
    let (Method::Topic {
        topic: name,
        path,
        scenario,
    }
    | Method::TopicThenFormula {
        topic: name,
        path,
        scenario,
        ..
    }) = &check.method
    else {
        return Err(check.fault("it names no topic"));
    };
    let topic = topic::find(name).map_err(|problem| check.fault(&problem.to_string()))?;
    let readings = topic
        .solve(scenario)
        .map_err(|problem| check.fault(&problem.to_string()))?;
    let reading = readings
        .iter()
        .find(|reading| reading.path == *path)
        .ok_or_else(|| check.fault("the topic does not answer its path"))?;
    match (&reading.value, topic.outputs[reading.output].kind) {
        (ReadingValue::Number(number), OutputKind::Quantity(dimension)) => Ok((*number, dimension)),
        (ReadingValue::Flag(flag), _) => Ok((f64::from(u8::from(*flag)), Dimension::Ratio)),
        _ => Err(check.fault("its path is not a number")),
    }
}

fn from_formula(
    check: &Check,
    name: &str,
    arguments: &[(String, String)],
    first: Option<(f64, Dimension)>,
) -> Result<(f64, Dimension), Fault> {
    let formula = formula::find(name).ok_or_else(|| check.fault("its formula is not known"))?;
    let values = formula
        .values(arguments, first)
        .map_err(|what| check.fault(&what))?;
    Ok(((formula.compute)(&values), formula.result))
}
