//! The ground: peak and sliding coefficient of friction by surface, from the published table.
//!
//! Source: J. Y. Wong, Theory of Ground Vehicles, Table 1.3 (after Taborek). The label of each row
//! says how sure we are of it: "quoted" was read where another text quotes the table, "memory" was
//! not looked up. Where the table prints a range its middle is used, and the range is kept.

use crate::error::Problem;
use crate::math;
use crate::scenario::Scenario;

/// How a published value came to us.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Label {
    /// Read in a text that quotes the source.
    Quoted,
    /// From memory, not looked up.
    Memory,
}

/// One row of the adhesion table.
#[derive(Clone, Copy, Debug)]
pub struct Surface {
    /// Name in a scenario.
    pub name: &'static str,
    /// Peak coefficient of friction: smallest and largest printed value.
    pub peak: (f64, f64),
    /// Sliding coefficient of friction: smallest and largest printed value.
    pub sliding: (f64, f64),
    /// How the row came to us.
    pub label: Label,
}

impl Surface {
    /// Peak coefficient of friction, μ_p \[1\]: the middle of the printed range.
    #[must_use]
    pub fn friction_peak(&self) -> f64 {
        0.5 * (self.peak.0 + self.peak.1)
    }

    /// Sliding coefficient of friction, μ_s \[1\]: the middle of the printed range.
    #[must_use]
    pub fn friction_sliding(&self) -> f64 {
        0.5 * (self.sliding.0 + self.sliding.1)
    }

    /// Key of the surface's name in the catalogue.
    #[must_use]
    pub fn label_key(&self) -> String {
        format!("surface.{}", self.name)
    }
}

const fn row(name: &'static str, peak: (f64, f64), sliding: (f64, f64), label: Label) -> Surface {
    Surface {
        name,
        peak,
        sliding,
        label,
    }
}

/// The adhesion table.
pub const SURFACES: &[Surface] = &[
    row("asphalt_dry", (0.8, 0.9), (0.75, 0.75), Label::Quoted),
    row("asphalt_wet", (0.5, 0.7), (0.45, 0.6), Label::Quoted),
    row("concrete_wet", (0.8, 0.8), (0.7, 0.7), Label::Memory),
    row("gravel", (0.6, 0.6), (0.55, 0.55), Label::Quoted),
    row("earth_dry", (0.68, 0.68), (0.65, 0.65), Label::Quoted),
    row("earth_wet", (0.55, 0.55), (0.4, 0.5), Label::Quoted),
    row("snow", (0.2, 0.2), (0.15, 0.15), Label::Quoted),
    row("ice", (0.1, 0.1), (0.07, 0.07), Label::Quoted),
];

/// Names of the surfaces, in the order of [`SURFACES`].
pub const NAMES: &[&str] = &[
    "asphalt_dry",
    "asphalt_wet",
    "concrete_wet",
    "gravel",
    "earth_dry",
    "earth_wet",
    "snow",
    "ice",
];

/// Friction between the tyres and the ground of a scenario.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Friction {
    /// Peak coefficient of friction under the left wheels \[1\].
    pub peak_left: f64,
    /// Peak coefficient of friction under the right wheels \[1\].
    pub peak_right: f64,
}

impl Friction {
    /// Reads the peak friction of a scenario: the value given for a side, or for both sides, or the
    /// named surface's, or what the vehicle's own tyres have on dry asphalt.
    ///
    /// # Errors
    /// [`Problem::Missing`] when nothing gives it.
    pub fn peak(scenario: &Scenario) -> Result<Self, Problem> {
        let both = scenario.number("surface.friction_peak");
        let side = |path| {
            scenario
                .number(path)
                .or(both)
                .map_or_else(|| scenario.require("surface.friction_peak"), Ok)
        };
        Ok(Self {
            peak_left: side("surface.friction_peak_left")?,
            peak_right: side("surface.friction_peak_right")?,
        })
    }
}

/// Least that a load leaves of a tyre's friction \[1\].
pub const LEAST_FACTOR: f64 = 0.1;

/// What a tyre's friction is worth at a load, over that at its reference load \[1\]:
/// 1 − k·(N − N_0)/N_0, but never less than a tenth. So far from the reference load the straight line
/// is no longer what was measured.
///
/// `sensitivity`: k; `load_n`: load of one wheel N \[N\]; `reference_n`: reference load N_0 \[N\].
///
/// ```
/// let factor = axlewright_core::surface::load_factor(0.1, 5000.0, 4000.0);
/// assert!((factor - 0.975).abs() < 1e-12);
/// ```
#[must_use]
pub fn load_factor(sensitivity: f64, load_n: f64, reference_n: f64) -> f64 {
    math::larger(
        1.0 - sensitivity * (load_n - reference_n) / reference_n,
        LEAST_FACTOR,
    )
}

/// Sliding coefficient of friction of a scenario \[1\].
///
/// # Errors
/// [`Problem::Missing`] when nothing gives it.
pub fn sliding(scenario: &Scenario) -> Result<f64, Problem> {
    scenario.require("surface.friction_sliding")
}

/// Sliding over peak friction: what the scenario says of the ground, or the ratio of dry asphalt in the
/// adhesion table where only the vehicle's own tyres are known.
pub(crate) fn sliding_over_peak(scenario: &Scenario, friction: f64) -> f64 {
    let said = scenario
        .given_number("surface.friction_sliding")
        .or_else(|| {
            let named = scenario.word("surface.kind").and_then(find);
            named.map(Surface::friction_sliding)
        });
    match said {
        Some(sliding) => sliding / friction,
        None => find("asphalt_dry").map_or(1.0, |row| row.friction_sliding() / row.friction_peak()),
    }
}

/// The friction that a scenario has where it does not give it: the named surface's, or what the
/// vehicle's own tyres have on dry asphalt. A single friction value, as textbooks give it, serves for
/// both peak and sliding.
pub(crate) fn friction_not_given(scenario: &Scenario, path: &str) -> Option<f64> {
    match path {
        "surface.friction_peak" => named(scenario).map(Surface::friction_peak),
        "surface.friction_sliding" => scenario
            .given_number("surface.friction_peak")
            .or_else(|| named(scenario).map(Surface::friction_sliding)),
        _ => return None,
    }
    .or_else(|| scenario.number("vehicle.tyre_friction"))
}

fn named(scenario: &Scenario) -> Option<&'static Surface> {
    scenario.word("surface.kind").and_then(find)
}

/// The surface of a name.
#[must_use]
pub fn find(name: &str) -> Option<&'static Surface> {
    SURFACES.iter().find(|surface| surface.name == name)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{self, Lang};

    #[test]
    fn the_names_are_those_of_the_table_and_sliding_is_below_peak() {
        let names: Vec<_> = SURFACES.iter().map(|s| s.name).collect();
        assert_eq!(names, NAMES);
        for surface in SURFACES {
            assert!(
                surface.friction_sliding() < surface.friction_peak(),
                "{}",
                surface.name
            );
            for lang in Lang::ALL {
                for key in [
                    surface.label_key(),
                    format!("surface.short.{}", surface.name),
                ] {
                    assert!(words::find(lang, &key).is_some(), "{lang:?}: {key}");
                }
            }
        }
    }
}
