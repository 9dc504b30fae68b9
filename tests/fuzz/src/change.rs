//! A scenario made of bytes: a start, then changes, each of one input. So the fuzzer may take a change
//! out, put one in, or move it into another case.

use arbitrary::{Result, Unstructured};
use axlewright_core::Scenario;
use axlewright_core::input::{Input, Kind};
use axlewright_core::layout::Layout;
use axlewright_core::topic::Topic;
use axlewright_core::vehicle::DEMO_NAMES;

/// The scenario of some bytes.
pub(crate) fn scenario(topic: &'static Topic, bytes: &mut Unstructured) -> Scenario {
    let mut scenario = Scenario::default();
    match bytes.arbitrary::<u8>().unwrap_or_default() % 8 {
        0..3 => scenario = expected("the example", topic.example()),
        start @ 3..7 => {
            let name = DEMO_NAMES[usize::from(start - 3) % DEMO_NAMES.len()];
            expected(name, scenario.set("vehicle.base", name));
        }
        _ => {}
    }
    let inputs: Vec<&Input> = topic.inputs().collect();
    while !bytes.is_empty() {
        // The last change may lack bytes; then it is none.
        if change(&mut scenario, &inputs, bytes).is_err() {
            break;
        }
    }
    scenario
}

/// One change.
fn change(scenario: &mut Scenario, inputs: &[&Input], bytes: &mut Unstructured) -> Result<()> {
    let input = bytes.choose(inputs)?;
    let path = input.path;
    match &input.kind {
        Kind::Quantity {
            accepted, usual, ..
        } => match number(*accepted, *usual, bytes)? {
            // The table says that it accepts this: a refusal is a fault of the core.
            Some(value) => expected(path, scenario.set_number(path, value)),
            None => scenario.unset(path),
        },
        Kind::Choice { words, .. } => match bytes.int_in_range(0..=words.len())? {
            at if at < words.len() => expected(path, scenario.set(path, words[at])),
            _ => scenario.unset(path),
        },
        Kind::Layouts => {
            let chosen: u8 = bytes.arbitrary()?;
            let names = Layout::NAMES.iter().enumerate();
            let names: Vec<&str> = names
                .filter(|(at, _)| chosen & (1 << at) != 0)
                .map(|(_, name)| *name)
                .collect();
            if names.is_empty() {
                scenario.unset(path);
            } else {
                expected(path, scenario.set(path, &names.join(" ")));
            }
        }
        Kind::Text { .. } => {
            expected(path, scenario.set(path, &cycle(bytes)?));
        }
    }
    Ok(())
}

/// A quantity, or that it is not given.
fn number(
    (low, high): (f64, f64),
    usual: (f64, f64),
    bytes: &mut Unstructured,
) -> Result<Option<f64>> {
    let size = high - low;
    let value = match bytes.arbitrary::<u8>()? % 16 {
        // The range of the slider.
        0..6 => usual.0 + (usual.1 - usual.0) * f64::from(bytes.arbitrary::<u16>()?) / 65535.0,
        // The accepted range.
        6..8 => low + size * f64::from(bytes.arbitrary::<u32>()?) / f64::from(u32::MAX),
        // Near an end of it: the byte tells how often its size is halved.
        8..10 => low + size * (-f64::from(bytes.arbitrary::<u8>()?)).exp2(),
        10 => high - size * (-f64::from(bytes.arbitrary::<u8>()?)).exp2(),
        // The ends, and nothing, or as near to it as is accepted.
        11 => high,
        12 => low,
        13..15 => 0.0,
        _ => return Ok(None),
    };
    Ok(Some(value.clamp(low, high)))
}

/// A short cycle of a reader's own: steps of one length, speeds in km/h that change no faster than is
/// believed.
fn cycle(bytes: &mut Unstructured) -> Result<String> {
    let step_s = [0.1, 0.5, 1.0, 10.0, 1000.0][bytes.choose_index(5)?];
    let mut text = String::from("s,km/h");
    let mut speed_km_h = 0.0_f64;
    for row in 0..=bytes.int_in_range(1..=40)? {
        let most = 30.0 * 3.6 * step_s * 0.99;
        let change = most * f64::from(bytes.arbitrary::<i8>()?) / 127.0;
        speed_km_h = (speed_km_h + change).clamp(0.0, 539.0);
        text.push_str(&format!("\n{},{speed_km_h}", f64::from(row) * step_s));
    }
    Ok(text)
}

fn expected<T>(what: &str, outcome: std::result::Result<T, axlewright_core::Problem>) -> T {
    outcome.unwrap_or_else(|problem| panic!("{what}: {problem}"))
}
