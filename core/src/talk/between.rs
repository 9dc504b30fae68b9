//! Scenarios on the way from one step to the next, each to be solved: a talk shows computed pictures
//! between its steps, never blended ones.

use crate::input::{self, Kind};
use crate::scenario::Scenario;

/// The scenario at a share of the way from one to another: quantities change evenly, words at once.
///
/// ```
/// use axlewright_core::{Scenario, talk};
/// let at = |text| {
///     let mut scenario = Scenario::default();
///     scenario.set("load_transfer.acceleration", text).map(|()| scenario)
/// };
/// let half = talk::between(&at("0 g")?, &at("0.6 g")?, 0.5);
/// let half = half.number("load_transfer.acceleration").unwrap_or_default();
/// assert!((half - 0.3 * 9.81).abs() < 1e-12);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn between(from: &Scenario, to: &Scenario, share: f64) -> Scenario {
    // Not a number is the end of the way too.
    let share = if share.is_nan() { 1.0 } else { share.max(0.0) };
    if share >= 1.0 {
        return to.clone();
    }
    let mut found = to.clone();
    let paths = from.entries().chain(to.entries()).map(|(path, _)| path);
    for path in paths {
        let is_quantity =
            input::find(path).is_some_and(|i| matches!(i.kind, Kind::Quantity { .. }));
        // Another vehicle brings values of its own: there is nothing between them to show.
        let (Some(start), Some(end)) = (from.number(path), to.number(path)) else {
            continue;
        };
        if is_quantity {
            // Between two accepted values every value is accepted.
            let _ = found.set_number(path, start + share * (end - start));
        }
    }
    found
}
