//! Sine and cosine for drawing.
//!
//! The platform's differ in their last digits between a browser and a build
//! machine, and bring tables for huge angles. These use only arithmetic that
//! is exact by standard, so that a figure is the same text everywhere.

use core::f64::consts::FRAC_PI_2;

/// Sine and cosine of an angle, good to 1e-10.
pub fn sin_cos(angle_rad: f64) -> (f64, f64) {
    if angle_rad.is_nan() || angle_rad.abs() > 1e6 {
        return (0.0, 1.0);
    }
    let quarter = (angle_rad / FRAC_PI_2 + 0.5).floor();
    let x = angle_rad - quarter * FRAC_PI_2;
    // Taylor series, each term from the one before; |x| is at most π/4.
    let (mut sin, mut cos) = (0.0, 0.0);
    let mut term = 1.0;
    for n in 0..14 {
        let sign = if n % 4 < 2 { 1.0 } else { -1.0 };
        if n % 2 == 0 {
            cos += sign * term;
        } else {
            sin += sign * term;
        }
        term *= x / f64::from(n + 1);
    }
    match (quarter as i64).rem_euclid(4) {
        0 => (sin, cos),
        1 => (cos, -sin),
        2 => (-sin, -cos),
        _ => (-cos, sin),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_the_exact_functions() {
        for step in -2000..2000 {
            let angle = f64::from(step) * 0.0137;
            let (sin, cos) = sin_cos(angle);
            assert!(
                (sin - axlewright_core::math::sin(angle)).abs() < 1e-10,
                "{angle}"
            );
            assert!(
                (cos - axlewright_core::math::cos(angle)).abs() < 1e-10,
                "{angle}"
            );
        }
        assert_eq!(sin_cos(f64::NAN), (0.0, 1.0));
    }
}
