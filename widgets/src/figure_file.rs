//! A figure as a file: the same bytes natively and in the browser for the same scenario.

use crate::figure::svg::FILE_FONT;
use crate::figure::{SvgOptions, Theme};
use crate::visual::{Look, View, Visual};
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario};

/// A scenario as a TOML file that the program reads: a line for each value that it gives.
#[must_use]
pub fn scenario_toml(scenario: &Scenario) -> String {
    let mut toml = String::new();
    for (path, text) in scenario.entries() {
        let escaped = text.replace('\\', "\\\\").replace('"', "\\\"");
        toml.push_str(&format!("{path} = \"{escaped}\"\n"));
    }
    toml
}

/// Draws a view of a scenario as a self-contained SVG file. Its metadata hold the scenario as TOML, so
/// that the figure can be made again.
///
/// # Errors
/// A [`Problem`] of the scenario.
pub fn figure_file(
    visual: &Visual,
    scenario: &Scenario,
    view: View,
    look: &Look,
    theme: Theme,
) -> Result<String, Problem> {
    let drawing = visual.draw(scenario, view, look)?;
    let topic = visual.topic.name;
    let mut metadata = format!(
        "# axlewright {} figure {topic} --view {}\n",
        env!("CARGO_PKG_VERSION"),
        view.word()
    );
    if look.lang != Lang::English {
        metadata.insert_str(metadata.len() - 1, &format!(" --lang {}", look.lang.tag()));
    }
    metadata.push_str(&scenario_toml(scenario));
    Ok(drawing.svg(&SvgOptions {
        prefix: &format!("{topic}-{}", view.word()),
        theme,
        font_family: FILE_FONT,
        metadata: &metadata,
        sized: true,
    }))
}
