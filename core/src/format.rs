//! Numbers as people read them: as many digits as the model deserves, the decimal mark of their
//! language, a thin space between thousands, the proper minus sign.

use crate::math;
use crate::units::{self, Dimension, System};
use crate::words::Lang;

/// Thin space, between thousands and between a number and its unit.
pub const THIN_SPACE: char = '\u{2009}';

/// A number with the given count of significant digits, never in exponent form.
///
/// Whole digits are kept, so 11 320.4 with three digits reads "11 320". Values beyond 10¹⁵ or below
/// 10⁻¹² do not occur in an accepted scenario; they print in exponent form.
///
/// ```
/// use axlewright_core::{format, words::Lang};
/// assert_eq!(format::significant(11_320.4, 3, Lang::English), "11\u{2009}320");
/// assert_eq!(format::significant(-0.04567, 3, Lang::English), "−0.0457");
/// assert_eq!(format::significant(-0.04567, 3, Lang::German), "−0,0457");
/// ```
#[must_use]
pub fn significant(value: f64, digits: u8, lang: Lang) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".into();
    }
    let magnitude = value.abs();
    if !(1e-12..1e15).contains(&magnitude) {
        return exponent_form(value, lang);
    }
    let mut whole_digits = 1;
    let mut bound = 10.0;
    while magnitude >= bound {
        whole_digits += 1;
        bound *= 10.0;
    }
    let mut leading_zeros = 0;
    let mut scaled = magnitude;
    while scaled < 1.0 {
        scaled *= 10.0;
        leading_zeros += 1;
    }
    let digits = i32::from(digits);
    let decimals = if magnitude >= 1.0 {
        digits - whole_digits
    } else {
        digits - 1 + leading_zeros
    };
    if decimals >= 0 {
        // Rounding may carry into one digit more: 9.996 is 10.0, not 10.00, and 0.9999 is 1.00.
        let half_step = 0.5 * math::power_of_ten(-decimals);
        let next = if magnitude < 1.0 {
            math::power_of_ten(1 - leading_zeros)
        } else {
            bound
        };
        let carried = magnitude + half_step >= next;
        let one_less = i32::from(carried && decimals > 0);
        return fixed(value, (decimals - one_less) as u8, lang);
    }
    // Five digits of a load are honest, six are not: "11 320 N", but "334 000 J".
    let step = math::power_of_ten((-decimals - 1).max(0));
    fixed(math::round(value / step) * step, 0, lang)
}

/// A number with a fixed count of decimals.
#[must_use]
pub fn fixed(value: f64, decimals: u8, lang: Lang) -> String {
    if value.abs() >= 1e15 || !value.is_finite() {
        return exponent_form(value, lang);
    }
    let plain = crate::decimal::fixed(value.abs(), decimals);
    let negative = value < 0.0 && plain.bytes().any(|b| (b'1'..=b'9').contains(&b));
    let (whole, fraction) = plain.split_once('.').unwrap_or((&plain, ""));
    let mut text = String::new();
    if negative {
        text.push('−');
    }
    for (at, digit) in whole.chars().enumerate() {
        let left = whole.len() - at;
        if at > 0 && left.is_multiple_of(3) && whole.len() > 3 {
            text.push(THIN_SPACE);
        }
        text.push(digit);
    }
    if !fraction.is_empty() {
        text.push(lang.decimal_mark());
        text.push_str(fraction);
    }
    text
}

fn exponent_form(value: f64, lang: Lang) -> String {
    let marks = |letter| match letter {
        '-' => '−',
        '.' => lang.decimal_mark(),
        other => other,
    };
    crate::decimal::shortest(value).chars().map(marks).collect()
}

/// An SI value in the unit in which people read it, with that unit.
///
/// ```
/// use axlewright_core::{format, units::{Dimension, System}, words::Lang};
/// let said = |lang| format::quantity(5.886, Dimension::Acceleration, System::Si, 3, lang);
/// assert_eq!(said(Lang::English), "0.600\u{2009}g");
/// assert_eq!(said(Lang::Spanish), "0,600\u{2009}g");
/// ```
#[must_use]
pub fn quantity(
    value: f64,
    dimension: Dimension,
    system: System,
    digits: u8,
    lang: Lang,
) -> String {
    with_unit(
        significant(units::from_si(value, dimension, system), digits, lang),
        dimension.display_unit(system),
    )
}

/// A number and its unit, joined as typography wants it.
#[must_use]
pub fn with_unit(number: String, unit: &str) -> String {
    match unit {
        "" => number,
        "°" => number + unit,
        _ => {
            let mut text = number;
            text.push(THIN_SPACE);
            text + unit
        }
    }
}

/// The shortest plain text that reads back as the same number, for files, links and attributes: with a
/// decimal point in every language.
#[must_use]
pub fn plain(value: f64) -> String {
    crate::decimal::shortest(value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keeps_the_digits_that_the_model_deserves() {
        for (value, digits, want) in [
            (0.0, 3, "0"),
            (1.658, 3, "1.66"),
            (0.6, 3, "0.600"),
            (9.996, 3, "10.0"),
            (0.99999, 3, "1.00"),
            (0.099_99, 3, "0.100"),
            (1326.4, 4, "1\u{2009}326"),
            (333_968.0, 3, "334\u{2009}000"),
            (-5.0, 2, "−5.0"),
            (-0.0001, 1, "−0.0001"),
        ] {
            let said = |lang| significant(value, digits, lang);
            assert_eq!(said(Lang::English), want, "{value} with {digits}");
            let comma = want.replace('.', ",");
            assert_eq!(said(Lang::German), comma, "{value} with {digits}");
        }
        let zero = fixed(-0.001, 1, Lang::English);
        assert_eq!(zero, "0.0", "no minus sign before a zero");
        assert_eq!(fixed(2.5e15, 0, Lang::Spanish), "2500000000000000");
        assert_eq!(fixed(-2.5e-15, 0, Lang::Spanish), "0");
        assert_eq!(significant(-2.5e-15, 3, Lang::Spanish), "−2,5e−15");
    }
}
