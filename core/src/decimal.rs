//! Decimal numbers read and written the same way on every machine, in little code.
//!
//! The standard library's conversions are exact for every one of 2⁶⁴ values and bring 40 kB of tables
//! and code into the browser for it. Here at most 15 significant digits are read exactly (Clinger's
//! fast path: a whole number below 2⁵³ times or over an exact power of ten is correctly rounded) and
//! further digits within two units in the last place, for sizes from 10⁻³⁰ to 10³⁰; beyond, where powers
//! of ten are rounded themselves, to some thirteen digits. At most 17 are written. Below 10⁻²⁹⁰, where
//! no quantity lies and a power of ten would overflow, a number is zero.

use crate::math;

/// What is smaller is read and written as zero.
const SMALLEST: f64 = 1e-290;

/// Reads an unsigned decimal number with an optional exponent: `1850`, `0.6`, `1.85e3`.
///
/// `None` where the text is anything else, or the number is not finite.
pub(crate) fn parse(text: &str) -> Option<f64> {
    let (mantissa, exponent) = match text.split_once(['e', 'E']) {
        None => (text, 0),
        Some((mantissa, exponent)) => (mantissa, whole(exponent)?),
    };
    let mut digits: u64 = 0;
    let mut scale = exponent;
    let mut any = false;
    let mut after_point = false;
    for byte in mantissa.bytes() {
        match byte {
            b'0'..=b'9' => {
                any = true;
                if digits < 100_000_000_000_000_000 {
                    digits = digits * 10 + u64::from(byte - b'0');
                    scale -= i32::from(after_point);
                } else {
                    // Digits beyond the seventeenth no longer count, but their place does.
                    scale += i32::from(!after_point);
                }
            }
            b'.' if !after_point => after_point = true,
            _ => return None,
        }
    }
    if !any {
        return None;
    }
    let value = if scale < 0 {
        digits as f64 / math::power_of_ten(-scale)
    } else {
        digits as f64 * math::power_of_ten(scale)
    };
    let value = if value < SMALLEST { 0.0 } else { value };
    value.is_finite().then_some(value)
}

/// A whole exponent with an optional sign, no larger than a number can have.
fn whole(text: &str) -> Option<i32> {
    let (sign, digits) = match text.strip_prefix('-') {
        Some(digits) => (-1, digits),
        None => (1, text.strip_prefix('+').unwrap_or(text)),
    };
    let mut value = 0_i32;
    if digits.is_empty() {
        return None;
    }
    for byte in digits.bytes() {
        if !byte.is_ascii_digit() {
            return None;
        }
        value = (value * 10 + i32::from(byte - b'0')).min(9999);
    }
    Some(sign * value)
}

/// Writes the size of a number below 10¹⁵ with a count of decimals, rounded half away from zero.
pub(crate) fn fixed(magnitude: f64, decimals: u8) -> String {
    let scaled = math::round(magnitude * math::power_of_ten(i32::from(decimals)));
    let mut digits = whole_digits(scaled as u128);
    let decimals = usize::from(decimals);
    while digits.len() <= decimals {
        digits.insert(0, '0');
    }
    if decimals > 0 {
        digits.insert(digits.len() - decimals, '.');
    }
    digits
}

fn whole_digits(mut value: u128) -> String {
    let mut bytes = Vec::new();
    loop {
        bytes.push(b'0' + (value % 10) as u8);
        value /= 10;
        if value == 0 {
            break;
        }
    }
    bytes.iter().rev().map(|byte| char::from(*byte)).collect()
}

/// Writes a number with as few significant digits as read back to the same number, at most 17; in
/// exponent form where it is very large or very small.
pub(crate) fn shortest(value: f64) -> String {
    if value.abs() < SMALLEST || !value.is_finite() {
        let text = match () {
            () if value.is_nan() => "NaN",
            () if value == f64::INFINITY => "inf",
            () if value == f64::NEG_INFINITY => "-inf",
            () => "0",
        };
        return text.into();
    }
    let magnitude = value.abs();
    let exponent = exponent_of(magnitude);
    let mut text = String::new();
    for digits in 1..=17 {
        text = with_digits(magnitude, exponent, digits);
        if parse(&text) == Some(magnitude) {
            break;
        }
    }
    if value < 0.0 {
        format!("-{text}")
    } else {
        text
    }
}

/// The power of ten of a number's first digit.
fn exponent_of(magnitude: f64) -> i32 {
    let mut exponent = 0;
    while magnitude / math::power_of_ten(exponent) >= 10.0 {
        exponent += 1;
    }
    while magnitude * math::power_of_ten(-exponent) < 1.0 {
        exponent -= 1;
    }
    exponent
}

fn with_digits(magnitude: f64, exponent: i32, digits: i32) -> String {
    let shift = digits - 1 - exponent;
    let scaled = if shift >= 0 {
        magnitude * math::power_of_ten(shift)
    } else {
        magnitude / math::power_of_ten(-shift)
    };
    let mut figures = whole_digits(math::round(scaled) as u128);
    // Rounding may have carried into one digit more.
    let exponent = exponent + figures.len() as i32 - digits;
    while figures.len() > 1 && figures.ends_with('0') {
        figures.pop();
    }
    let count = figures.len() as i32;
    if !(-7..21).contains(&exponent) {
        if count > 1 {
            figures.insert(1, '.');
        }
        return format!("{figures}e{exponent}");
    }
    if exponent < 0 {
        let zeros = "0".repeat((-exponent - 1) as usize);
        return format!("0.{zeros}{figures}");
    }
    if count > exponent + 1 {
        figures.insert((exponent + 1) as usize, '.');
    } else {
        figures.push_str(&"0".repeat((exponent + 1 - count) as usize));
    }
    figures
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_decimals_are_read_exactly() {
        for text in [
            "0",
            "1850",
            "0.6",
            "2.86",
            "26.8224",
            "0.45359237",
            "4.4482216152605",
            "1e-3",
            "1.85e3",
            "123456789012345",
            "0.000001",
            "9.81",
            "31.83",
            "1e22",
        ] {
            assert_eq!(parse(text), text.parse().ok(), "{text}");
        }
        for text in ["", ".", "e5", "1e", "1.2.3", "1x", "1e400", "-1"] {
            assert_eq!(parse(text), None, "{text}");
        }
        assert_eq!(parse("1e-400"), Some(0.0));
    }

    #[test]
    fn what_is_written_reads_back() {
        let mut state = 12_345_u64;
        for _ in 0..20_000 {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1);
            let value = (state >> 11) as f64 / 1e6 / ((state & 1023) as f64 + 1.0);
            let text = shortest(value);
            let back: f64 = text.parse().unwrap();
            assert!(
                (back - value).abs() <= 4.0 * f64::EPSILON * value,
                "{value}: {text}"
            );
        }
        for (value, want) in [
            (0.1, "0.1"),
            (-2.5, "-2.5"),
            (1e21, "1e21"),
            (123_456.0, "123456"),
            (9.995e-8, "9.995e-8"),
            (0.000_123, "0.000123"),
            (1.0 / 3.0, "0.3333333333333333"),
        ] {
            assert_eq!(shortest(value), want);
        }
    }

    #[test]
    fn what_is_too_small_is_zero_and_the_rest_keeps_its_size() {
        for text in ["1e-291", "1.19e-310", "5e-324", "1e-400"] {
            assert_eq!(parse(text), Some(0.0), "{text}");
        }
        for value in [1.19e-310, -5e-324, 1e-300] {
            assert_eq!(shortest(value), "0", "{value:e}");
        }
        for value in [1.1e-290, 3.4e-287, 1.7e308, f64::MAX] {
            let back: f64 = shortest(value).parse().unwrap();
            assert!((back / value - 1.0).abs() < 1e-13, "{value:e}: {back:e}");
        }
        assert_eq!(shortest(f64::INFINITY), "inf");
        assert_eq!(shortest(f64::NEG_INFINITY), "-inf");
        assert_eq!(shortest(f64::NAN), "NaN");
    }

    #[test]
    fn decimals_are_rounded_half_away_from_zero() {
        assert_eq!(fixed(0.125, 2), "0.13");
        assert_eq!(fixed(9.996, 2), "10.00");
        assert_eq!(fixed(0.0004, 3), "0.000");
        assert_eq!(fixed(11_320.4, 0), "11320");
    }
}
