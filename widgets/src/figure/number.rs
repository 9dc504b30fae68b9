//! Numbers as text: coordinates in the drawing, ticks on an axis.

/// The value kept between two ends; what is no number becomes the lower one.
///
/// The standard `clamp` panics where the ends are not in order, and carries the
/// code that prints them.
#[allow(clippy::manual_clamp, reason = "never panics, and takes NaN out")]
pub fn within(value: f64, low: f64, high: f64) -> f64 {
    value.max(low).min(high)
}

/// Appends a coordinate with at most one decimal.
///
/// One tenth of a unit is finer than any screen shows, and rounding this early
/// makes the text the same on every machine.
pub fn push_coord(out: &mut String, value: f64) {
    let tenths = if value.is_finite() {
        (within(value, -1e9, 1e9) * 10.0).round() as i64
    } else {
        0
    };
    if tenths < 0 {
        out.push('-');
    }
    let tenths = tenths.unsigned_abs();
    push_digits(out, tenths / 10);
    if !tenths.is_multiple_of(10) {
        out.push('.');
        push_digits(out, tenths % 10);
    }
}

/// Appends a whole number.
pub fn push_digits(out: &mut String, value: u64) {
    if value >= 10 {
        push_digits(out, value / 10);
    }
    out.push(char::from(b'0' + (value % 10) as u8));
}

/// The round step, 1, 2 or 5 times a power of ten, that cuts `span` into at
/// most `most` parts.
pub fn nice_step(span: f64, most: usize) -> f64 {
    if !(span > 0.0 && span.is_finite()) || most == 0 {
        return 1.0;
    }
    let rough = span / most as f64;
    let mut power = 1.0;
    while power > rough && power > 1e-300 {
        power /= 10.0;
    }
    while power * 10.0 <= rough {
        power *= 10.0;
    }
    for factor in [1.0, 2.0, 5.0] {
        if factor * power >= rough * (1.0 - 1e-9) {
            return factor * power;
        }
    }
    10.0 * power
}

/// The multiples of `step` from `min` to `max`, both kept.
pub fn ticks(min: f64, max: f64, step: f64) -> Vec<f64> {
    let mut all = Vec::new();
    if !(step > 0.0 && min.is_finite() && max.is_finite()) {
        return all;
    }
    let slack = step * 1e-6;
    let mut index = ((min - slack) / step).ceil();
    while index * step <= max + slack && all.len() < 200 {
        all.push(index * step);
        index += 1.0;
    }
    all
}

/// A tick's text: as many decimals as its step needs, "−" for minus, and a thin
/// space between thousands, as all numbers here have.
pub fn tick_text(value: f64, step: f64, decimal_mark: char) -> String {
    let (mut decimals, mut unit, mut part) = (0, 1u64, step);
    // 0.999…: a step of 0.1 is not quite a tenth.
    while part > 0.0 && part < 0.999_999 && decimals < 6 {
        decimals += 1;
        unit *= 10;
        part *= 10.0;
    }
    let scaled = (value.abs().min(1e12) * unit as f64).round() as u64;
    let mut text = String::new();
    if value < 0.0 && scaled > 0 {
        text.push('−');
    }
    push_grouped(&mut text, scaled / unit);
    if decimals > 0 {
        text.push(if decimal_mark == ',' { ',' } else { '.' });
        let mut place = unit / 10;
        while place > 0 {
            push_digits(&mut text, scaled / place % 10);
            place /= 10;
        }
    }
    text
}

fn push_grouped(out: &mut String, value: u64) {
    let mut digits = String::new();
    push_digits(&mut digits, value);
    let grouped = digits.len() > 3;
    for (index, digit) in digits.chars().enumerate() {
        if grouped && index > 0 && (digits.len() - index).is_multiple_of(3) {
            out.push('\u{2009}');
        }
        out.push(digit);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn coord(value: f64) -> String {
        let mut out = String::new();
        push_coord(&mut out, value);
        out
    }

    #[test]
    fn coordinates_are_short_and_never_minus_zero() {
        assert_eq!(coord(12.0), "12");
        assert_eq!(coord(12.34), "12.3");
        assert_eq!(coord(-0.26), "-0.3");
        assert_eq!(coord(-0.04), "0");
        assert_eq!(coord(f64::NAN), "0");
    }

    #[test]
    fn steps_are_one_two_or_five() {
        assert!((nice_step(10.0, 5) - 2.0).abs() < 1e-12);
        assert!((nice_step(0.9, 5) - 0.2).abs() < 1e-12);
        assert!((nice_step(24_000.0, 5) - 5000.0).abs() < 1e-9);
        assert!((nice_step(f64::NAN, 5) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn ticks_keep_both_ends() {
        let all = ticks(-0.4, 0.4, 0.2);
        assert_eq!(all.len(), 5);
        let text: Vec<String> = all.iter().map(|v| tick_text(*v, 0.2, '.')).collect();
        assert_eq!(text, ["−0.4", "−0.2", "0.0", "0.2", "0.4"]);
    }

    #[test]
    fn thousands_are_spaced_above_9999() {
        assert_eq!(tick_text(5000.0, 1000.0, '.'), "5\u{2009}000");
        assert_eq!(tick_text(15000.0, 5000.0, '.'), "15\u{2009}000");
        assert_eq!(
            tick_text(-1234567.5, 0.5, ','),
            "−1\u{2009}234\u{2009}567,5"
        );
    }
}
