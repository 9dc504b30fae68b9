//! Elementary functions that give the same bits on every machine.
//!
//! The functions of the standard library call whatever mathematics library the machine has, so the
//! last digit may differ between a browser and a file written natively. These call one
//! implementation everywhere; `clippy.toml` keeps the others out of this crate.

/// Sine of an angle \[rad\].
#[must_use]
pub fn sin(angle_rad: f64) -> f64 {
    libm::sin(angle_rad)
}

/// Cosine of an angle \[rad\].
#[must_use]
pub fn cos(angle_rad: f64) -> f64 {
    libm::cos(angle_rad)
}

/// Sine and cosine of an angle \[rad\], sooner than one after the other.
#[must_use]
pub fn sin_cos(angle_rad: f64) -> (f64, f64) {
    libm::sincos(angle_rad)
}

/// Tangent of an angle \[rad\].
#[must_use]
pub fn tan(angle_rad: f64) -> f64 {
    libm::tan(angle_rad)
}

/// Angle \[rad\] whose tangent is given, between −π/2 and π/2.
#[must_use]
pub fn atan(tangent: f64) -> f64 {
    libm::atan(tangent)
}

/// Square root; NaN for a negative argument.
///
/// The machine's own: the standard for floating-point numbers asks for the nearest number, so all agree,
/// and a browser has an instruction for it.
#[must_use]
#[inline(always)]
pub fn sqrt(value: f64) -> f64 {
    value.sqrt()
}

/// The larger of two numbers, of which the first may be no number: then it is the second.
///
/// A plain comparison: where code is built for a browser, [`f64::max`] is a call.
#[must_use]
#[inline(always)]
pub fn larger(value: f64, least: f64) -> f64 {
    if value > least { value } else { least }
}

/// The smaller of two numbers, as [`larger`].
#[must_use]
#[inline(always)]
pub fn smaller(value: f64, most: f64) -> f64 {
    if value < most { value } else { most }
}

/// Length of the hypotenuse, √(x² + y²).
#[must_use]
pub fn hypot(x: f64, y: f64) -> f64 {
    sqrt(x * x + y * y)
}

/// Exponential function.
#[must_use]
pub fn exp(value: f64) -> f64 {
    libm::exp(value)
}

/// A positive number to a power.
#[must_use]
pub fn power(base: f64, exponent: f64) -> f64 {
    libm::pow(base, exponent)
}

/// Largest whole number not above the value. Exact, so every machine has the same.
#[must_use]
#[inline(always)]
pub fn floor(value: f64) -> f64 {
    value.floor()
}

/// Nearest whole number, halves away from zero.
#[must_use]
pub fn round(value: f64) -> f64 {
    libm::round(value)
}

/// Ten to a whole power.
#[must_use]
pub fn power_of_ten(exponent: i32) -> f64 {
    let mut result = 1.0;
    for _ in 0..exponent.unsigned_abs().min(330) {
        result *= 10.0;
    }
    if exponent < 0 { 1.0 / result } else { result }
}
