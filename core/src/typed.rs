//! Numbers as a reader types them, with the decimal mark of the reader's language.
//!
//! "0,6 g" and "0.6 g" mean the same to everybody. "1,850 kg" does not: it is 1850 kg to one reader and
//! 1.850 kg to another. In a language that writes a decimal comma the comma is taken at its word and
//! "1.850 kg" is refused; where a point is written it is the other way round. The refusal names both
//! readings. Files, attributes and links do not come through here: they have a decimal point.

use crate::units::UnitError;
use crate::words::Lang;

/// The text with a decimal point, as [`crate::units::parse`] reads it.
///
/// # Errors
/// [`UnitError::TwoReadings`] when the mark may part thousands as well as decimals.
///
/// ```
/// use axlewright_core::{typed::with_point, words::Lang};
/// assert_eq!(with_point("0,6 g", Lang::English).as_deref(), Ok("0.6 g"));
/// assert_eq!(with_point("2,865 m", Lang::German).as_deref(), Ok("2.865 m"));
/// assert!(with_point("2,865 m", Lang::English).is_err());
/// assert!(with_point("2.865 m", Lang::German).is_err());
/// ```
pub fn with_point(text: &str, lang: Lang) -> Result<String, UnitError> {
    let text = text.trim();
    let number_ends = text.find(|letter| !belongs_to_number(letter));
    let (number, rest) = text
        .split_at_checked(number_ends.unwrap_or(text.len()))
        .unwrap_or((text, ""));
    let Some((whole, decimals)) = number.split_once(['.', ',']) else {
        return Ok(text.into());
    };
    // Two marks are no number in any form that is read here.
    if decimals.contains(['.', ',']) {
        return Ok(text.into());
    }
    let is_own = number.contains(lang.decimal_mark());
    if !is_own && may_be_grouped(whole, decimals) {
        return Err(UnitError::TwoReadings(number.into()));
    }
    Ok([whole, ".", decimals, rest].concat())
}

fn belongs_to_number(letter: char) -> bool {
    letter.is_ascii_digit()
        || matches!(
            letter,
            '.' | ',' | '+' | '-' | '−' | '\u{2009}' | '\u{202f}' | '\u{a0}'
        )
}

/// One to three digits that do not begin with a nought, a mark, and exactly three digits.
fn may_be_grouped(whole: &str, decimals: &str) -> bool {
    let whole = whole.trim_start_matches(['+', '-', '−']);
    let is_digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    decimals.len() == 3
        && is_digits(decimals)
        && (1..=3).contains(&whole.len())
        && is_digits(whole)
        && !whole.starts_with('0')
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{self, Dimension};

    fn read(text: &str, lang: Lang) -> Result<f64, UnitError> {
        units::parse(&with_point(text, lang)?, Dimension::Mass)
    }

    #[test]
    fn a_comma_is_a_decimal_mark_where_it_can_be_nothing_else() {
        for lang in Lang::ALL {
            for (text, want) in [
                ("0,6 kg", 0.6),
                ("-0,6 kg", -0.6),
                ("−0,6 kg", -0.6),
                ("0.6 kg", 0.6),
                ("1,85 t", 1850.0),
                ("1.85 t", 1850.0),
                ("0,125 t", 125.0),
                ("0.125 t", 125.0),
                ("1,8505 t", 1850.5),
                ("1234,567 kg", 1234.567),
                ("1\u{2009}850,5 kg", 1850.5),
                ("1\u{2009}850,125 kg", 1850.125),
                ("1,85e3 kg", 1850.0),
                ("1850", 1850.0),
                ("  2,5", 2.5),
            ] {
                assert_eq!(read(text, lang), Ok(want), "{text} in {lang:?}");
            }
        }
    }

    #[test]
    fn the_own_mark_is_taken_at_its_word_and_the_other_is_asked_about() {
        for lang in Lang::ALL {
            let own = lang.decimal_mark();
            let other = if own == '.' { ',' } else { '.' };
            assert_eq!(read(&format!("1{own}850 kg"), lang), Ok(1.85), "{lang:?}");
            for start in ["1", "-12", "123", "+9"] {
                let typed = format!("{start}{other}850");
                let want = UnitError::TwoReadings(typed.clone());
                assert_eq!(read(&(typed + " kg"), lang), Err(want), "{lang:?}");
            }
        }
    }

    #[test]
    fn what_is_no_number_stays_none() {
        for lang in Lang::ALL {
            for text in [
                "",
                ",",
                "1,850,000 kg",
                "1.850,5 kg",
                "1,850.5 kg",
                "a,b",
                "1,2,3",
            ] {
                assert_eq!(
                    read(text, lang),
                    Err(UnitError::NotANumber),
                    "{text} in {lang:?}"
                );
            }
        }
    }
}
