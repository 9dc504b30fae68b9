//! Comparisons whose failure says quantity, case, got, want, tolerance and source.

use approx::abs_diff_eq;
use axlewright_core::Scenario;
use core::fmt;

/// One number against what it should be.
#[derive(Clone, Copy, Debug)]
pub struct Comparison<'a> {
    /// What is compared.
    pub quantity: &'a str,
    /// The case in which it is compared.
    pub case: &'a str,
    /// What came out.
    pub got: f64,
    /// What should come out.
    pub want: f64,
    /// Largest difference that is accepted.
    pub tolerance: f64,
    /// Unit of all three numbers; empty for a pure number.
    pub unit: &'a str,
    /// Where the wanted number comes from.
    pub source: &'a str,
}

impl Comparison<'_> {
    /// Whether the difference is accepted; never for a number that is not finite.
    #[must_use]
    pub fn holds(&self) -> bool {
        abs_diff_eq!(self.got, self.want, epsilon = self.tolerance)
    }
}

impl fmt::Display for Comparison<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            quantity,
            case,
            got,
            want,
            tolerance,
            unit,
            source,
        } = self;
        write!(
            f,
            "{quantity} [{case}]: got {got} {unit}, want {want} ± {tolerance} {unit} (difference {:e}); source: {source}",
            got - want
        )
    }
}

/// Asserts that a number is what it should be.
///
/// # Panics
/// When it is not.
#[track_caller]
pub fn assert_close(comparison: Comparison) {
    assert!(comparison.holds(), "{comparison}");
}

/// Asserts that two numbers agree to a share of their size.
///
/// `scale` is the size that the difference is measured by where it is larger than the numbers, as for
/// the small difference of two large forces.
///
/// # Panics
/// When they do not.
#[track_caller]
pub fn assert_equal_relative(
    quantity: &str,
    case: &str,
    (got, want): (f64, f64),
    relative: f64,
    scale: f64,
) {
    let size = got.abs().max(want.abs()).max(scale);
    assert_close(Comparison {
        quantity,
        case,
        got,
        want,
        tolerance: relative * size,
        unit: "",
        source: "the two must be the same",
    });
}

/// A scenario from paths and texts.
///
/// # Panics
/// When a text is refused.
#[track_caller]
#[must_use]
pub fn scenario(fields: &[(&str, &str)]) -> Scenario {
    let mut scenario = Scenario::default();
    for (path, text) in fields {
        let outcome = scenario.set(path, text);
        assert!(outcome.is_ok(), "{path} = {text}: {outcome:?}");
    }
    scenario
}
