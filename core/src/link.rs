//! Links with state: a scenario as the query of an address, and back.
//!
//! A parameter has the name of the attribute and holds the text that was given, so that a link can be
//! read and typed: `traction.html?vehicle=corrie&friction-peak=1.6&layout=F1`. It holds only what
//! differs from the page's own setting. A parameter without a value takes the page's own value away.
//! The names are frozen: a link that was once given out still opens.

use crate::error::Problem;
use crate::scenario::Scenario;
use crate::topic::Topic;

/// The query of a scenario, without question mark; empty where nothing differs from `base`.
///
/// `base` is what the page gave, not completed with the example of the topic, because that is what
/// the query will be put on top of. Inputs that the topic does not read are left out.
///
/// ```
/// use axlewright_core::{Scenario, link, topic};
///
/// let traction = topic::find("traction")?;
/// let mut scenario = traction.example()?;
/// let base = scenario.clone();
/// scenario.set("surface.friction_peak", "1.6")?;
/// scenario.set("vehicle.mass", "4080 lb")?;
/// assert_eq!(link::link_query(traction, &scenario, &base), "friction-peak=1.6&mass=4080+lb");
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn link_query(topic: &Topic, scenario: &Scenario, base: &Scenario) -> String {
    let mut query = String::new();
    for input in topic.inputs() {
        let (now, own) = (scenario.text(input.path), base.text(input.path));
        if now != own {
            push_parameter(&mut query, &input.attribute(), now.unwrap_or(""));
        }
    }
    query
}

/// Adds a parameter to a query.
pub fn push_parameter(query: &mut String, name: &str, value: &str) {
    if !query.is_empty() {
        query.push('&');
    }
    push_encoded(query, name);
    query.push('=');
    push_encoded(query, value);
}

/// The scenario of a query on top of what the page gives, and the parameters that are no input of the
/// topic: attributes of another kind, or none of ours.
///
/// # Errors
/// The first [`Problem`] of a value.
pub fn read_query(
    topic: &Topic,
    query: &str,
    base: &Scenario,
) -> Result<(Scenario, Vec<String>), Problem> {
    let mut scenario = base.clone();
    let mut other = Vec::new();
    for parameter in query.split('&').filter(|part| !part.is_empty()) {
        let (name, value) = parameter.split_once('=').unwrap_or((parameter, ""));
        let (name, value) = (decoded(name), decoded(value));
        match topic.input_of_attribute(&name) {
            Some(input) if value.is_empty() => scenario.unset(input.path),
            Some(input) => scenario.set(input.path, &value)?,
            None => other.push(name),
        }
    }
    Ok((scenario, other))
}

/// Letters, digits and marks that mean nothing in a query stay; a space is `+`, all else is `%` and two
/// hexadecimal digits for each byte of UTF-8 (the form of web addresses, `x-www-form-urlencoded`).
fn push_encoded(out: &mut String, text: &str) {
    for byte in text.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'.' | b'_' | b'/' => {
                out.push(char::from(byte));
            }
            b' ' => out.push('+'),
            _ => {
                out.push('%');
                for digit in [byte >> 4, byte & 15] {
                    out.push(char::from(b"0123456789ABCDEF"[usize::from(digit)]));
                }
            }
        }
    }
}

/// The text of an encoded one. What is not well encoded stands for itself.
fn decoded(text: &str) -> String {
    let bytes = text.as_bytes();
    let digit = |at: usize| {
        let symbol = bytes.get(at).copied()?;
        char::from(symbol).to_digit(16)
    };
    let mut plain = Vec::new();
    let mut at = 0;
    while at < bytes.len() {
        let pair = digit(at + 1).zip(digit(at + 2));
        match (bytes[at], pair) {
            (b'%', Some((high, low))) => {
                plain.push((high * 16 + low) as u8);
                at += 2;
            }
            (b'+', _) => plain.push(b' '),
            (byte, _) => plain.push(byte),
        }
        at += 1;
    }
    String::from_utf8_lossy(&plain).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::topic;

    #[test]
    fn a_value_that_the_reader_took_away_is_taken_away_by_the_link() {
        let traction = topic::find("traction").unwrap();
        let mut base = traction.example().unwrap();
        base.set("vehicle.mass", "2 t").unwrap();
        let mut scenario = base.clone();
        scenario.unset("vehicle.mass");
        let query = link_query(traction, &scenario, &base);
        assert_eq!(query, "mass=");
        assert_eq!(
            read_query(traction, &query, &base).unwrap(),
            (scenario, Vec::new())
        );
    }

    #[test]
    fn a_trace_without_a_line_is_no_trace() {
        let idle_drag = topic::find("idle_drag").unwrap();
        let base = idle_drag.example().unwrap();
        let read = |query| read_query(idle_drag, query, &base).unwrap().0;
        let with = read("trace=t;m/s%0A0;0");
        assert_ne!(with, base);
        for blank in ["trace=", "trace=+", "trace=%0A+%0A"] {
            assert_eq!(read(blank), base, "{blank}");
            let mut taken = with.clone();
            let text = &decoded(blank)["trace=".len()..];
            taken.set("idle_drag.trace", text).unwrap();
            assert_eq!(taken, base, "{blank}");
        }
    }

    #[test]
    fn every_sign_survives_and_none_of_them_is_markup() {
        let text = "1,5 m/s² & <b>\"'=+%#?;\u{1F600}";
        let mut query = String::new();
        push_parameter(&mut query, "a&b", text);
        assert!(
            !query[4..].contains(['&', '<', '>', '"', '\'', ' ', '#', '?', ';']),
            "{query}"
        );
        let (name, value) = query.split_once('=').unwrap();
        assert_eq!((decoded(name), decoded(value)), ("a&b".into(), text.into()));
        assert_eq!(decoded("5%2"), "5%2");
        assert_eq!(decoded("%zz%FF"), "%zz\u{FFFD}");
    }

    #[test]
    fn what_is_no_input_is_told_and_a_wrong_value_is_refused() {
        let traction = topic::find("traction").unwrap();
        let base = traction.example().unwrap();
        let read = |query: &str| read_query(traction, query, &base);
        assert_eq!(
            read("view=side&from=mail&&onload=x()").unwrap(),
            (
                base.clone(),
                vec!["view".into(), "from".into(), "onload".into()]
            )
        );
        let problem = read("mass=heavy").unwrap_err();
        assert_eq!(problem.field(), "vehicle.mass");
    }
}
