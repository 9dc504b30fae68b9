//! A figure as a file: the same bytes natively and in the browser for the same scenario.

use crate::figure::svg::FILE_FONT;
use crate::figure::{SvgOptions, Theme};
use crate::visual::{Drawing, Look, View, Visual};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario};

/// A scenario as a TOML file that the program reads: a line for each value that it gives.
#[must_use]
pub fn scenario_toml(scenario: &Scenario) -> String {
    let mut toml = String::new();
    for (path, text) in scenario.entries() {
        let mut escaped = String::with_capacity(text.len());
        for letter in text.chars() {
            match letter {
                '\\' => escaped.push_str("\\\\"),
                '"' => escaped.push_str("\\\""),
                '\n' => escaped.push_str("\\n"),
                '\r' => escaped.push_str("\\r"),
                '\t' => escaped.push_str("\\t"),
                other => escaped.push(other),
            }
        }
        toml.push_str(&format!("{path} = \"{escaped}\"\n"));
    }
    toml
}

/// Draws a view of a scenario as a self-contained SVG file. Its metadata hold the scenario as TOML, so
/// that the figure can be made again.
///
/// # Errors
/// A [`Problem`] of the scenario.
///
/// ```
/// use axlewright_core::{Scenario, topic};
/// use axlewright_widgets::figure::Theme;
/// use axlewright_widgets::figure_file::figure_file;
/// use axlewright_widgets::visual::{Look, View, Visual};
///
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "corrie")?;
/// let topic = topic::find("traction")?;
/// let Some(visual) = Visual::of(topic) else { panic!("every topic has its figures") };
/// let draw = || figure_file(visual, &scenario, View::Chart, &Look::default(), Theme::Print);
/// let svg = draw()?;
/// // It says what it was made from, and is the same each time.
/// assert!(svg.starts_with("<svg") && svg.contains("vehicle.base = ") && svg.contains("corrie"));
/// assert_eq!(svg, draw()?);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
pub fn figure_file(
    visual: &Visual,
    scenario: &Scenario,
    view: View,
    look: &Look,
    theme: Theme,
) -> Result<String, Problem> {
    let drawing = visual.draw(scenario, view, look)?;
    let options = options(look, theme);
    Ok(drawn_file(
        &drawing,
        visual,
        scenario,
        (view, theme),
        &options,
    ))
}

/// How a figure looks where it does not look as usual, as options of the program's command `figure`.
#[must_use]
pub fn options(look: &Look, theme: Theme) -> String {
    let mut options = String::new();
    if look.lang != Lang::English {
        options.push_str(&format!(" --lang {}", look.lang.tag()));
    }
    if look.system == System::Us {
        options.push_str(" --units us");
    }
    // A browser saves light figures of the usual width alone.
    #[cfg(not(target_arch = "wasm32"))]
    {
        if let Some(word) = theme.word() {
            options.push_str(&format!(" --style {word}"));
        }
        if (look.width - crate::figure::WIDE).abs() > 1e-9 {
            options.push_str(&format!(" --width {}", look.width));
        }
    }
    #[cfg(target_arch = "wasm32")]
    let _ = theme;
    options
}

/// A drawing as a self-contained SVG file. `options` are those of the program's command `figure` that
/// gave it, each with a space before it.
#[must_use]
pub fn drawn_file(
    drawing: &Drawing,
    visual: &Visual,
    scenario: &Scenario,
    (view, theme): (View, Theme),
    options: &str,
) -> String {
    let topic = visual.topic.name;
    let (version, word) = (env!("CARGO_PKG_VERSION"), view.word());
    let mut metadata = format!("# axlewright {version} figure {topic} --view {word}{options}\n");
    metadata.push_str(&format!(
        "# Cite as: Axlewright {version}, figure of {topic}. SI where a value has no unit.\n"
    ));
    metadata.push_str(&scenario_toml(scenario));
    drawing.svg(&SvgOptions {
        prefix: &format!("{topic}-{word}"),
        theme,
        font_family: FILE_FONT,
        metadata: &metadata,
        sized: true,
    })
}
