//! Makes a figure of a scenario: the drawing, its caption, and the SVG that says what it was made from.

use super::paper::{Size, SizeProblem, USUAL_TEXT_PT};
use super::{FileError, outlined};
use crate::words::fill;
use axlewright_core::topic::Topic;
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::{Problem, Scenario};
use axlewright_widgets::figure::{Theme, WIDE};
use axlewright_widgets::figure_file::{drawn_file, options};
use axlewright_widgets::visual::{Drawing, Look, View, Visual};
use std::fmt;

/// A figure that is wanted.
#[derive(Clone, Copy, Debug)]
pub struct FigureAsked<'a> {
    /// The topic.
    pub topic: &'static Topic,
    /// What is drawn.
    pub scenario: &'a Scenario,
    /// Word of the view; empty for the topic's first.
    pub view: &'a str,
    /// Colours.
    pub theme: Theme,
    /// Size.
    pub size: Size,
    /// Whether letters are shapes.
    pub outline: bool,
    /// Language.
    pub lang: Lang,
    /// Units.
    pub system: System,
}

/// A figure that is made.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// SVG.
    pub svg: String,
    /// The text description, with the finding.
    pub alt: String,
    /// The finding, whose vehicle it is, and what computed it.
    pub caption: String,
    /// The view that is drawn.
    pub view: View,
}

/// Why a figure cannot be made.
#[derive(Debug)]
#[non_exhaustive]
pub enum MakeError {
    /// The scenario or the view is refused.
    Refused(Problem),
    /// The size is refused.
    Size(SizeProblem),
    /// The topic has no figure.
    NoFigure(&'static str),
    /// The file cannot be made.
    File(FileError),
}

impl fmt::Display for MakeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Refused(problem) => write!(f, "{problem}"),
            Self::Size(problem) => write!(f, "{problem}"),
            Self::NoFigure(topic) => write!(f, "{topic} has no figure"),
            Self::File(error) => write!(f, "{error}"),
        }
    }
}

impl std::error::Error for MakeError {}

/// Makes a figure.
///
/// # Errors
/// A [`MakeError`]: one line that names field, value and what is allowed.
pub fn make(asked: &FigureAsked) -> Result<Figure, MakeError> {
    let visual = Visual::of(asked.topic).ok_or(MakeError::NoFigure(asked.topic.name))?;
    let view = visual.view(asked.view).map_err(MakeError::Refused)?;
    let look = Look {
        width: asked.size.units().map_err(MakeError::Size)?,
        lang: asked.lang,
        system: asked.system,
        ..Look::default()
    };
    let drawn = visual.draw(asked.scenario, view, &look);
    let mut drawing = drawn.map_err(MakeError::Refused)?;
    asked.size.heighten(&mut drawing).map_err(MakeError::Size)?;
    // On paper the width is told with its unit.
    let told = match asked.size {
        Size::Units(_) => look,
        Size::Paper(_) => Look {
            width: WIDE,
            ..look
        },
    };
    let options = options(&told, asked.theme) + &size_options(&asked.size, asked.outline);
    let svg = drawn_file(
        &drawing,
        visual,
        asked.scenario,
        (view, asked.theme),
        &options,
    );
    let svg = finish(svg, &asked.size, asked.outline).map_err(MakeError::File)?;
    Ok(Figure {
        svg,
        alt: format!("{}. {}", drawing.title(), drawing.description()),
        caption: caption(&drawing, asked.topic, asked.lang),
        view,
    })
}

/// Makes shapes of the letters where that is asked for, and writes the size on paper.
///
/// # Errors
/// [`FileError`].
pub fn finish(svg: String, size: &Size, outline: bool) -> Result<String, FileError> {
    let svg = if outline { outlined(&svg)? } else { svg };
    Ok(size.on_paper(svg))
}

/// Options of the program that give a size and shapes, each with a space before it.
fn size_options(size: &Size, outline: bool) -> String {
    let mut options = String::new();
    if let Size::Paper(paper) = size {
        options.push_str(&format!(" --width {}mm", paper.width_mm));
        if let Some(height_mm) = paper.height_mm {
            options.push_str(&format!(" --height {height_mm}mm"));
        }
        if (paper.text_pt - USUAL_TEXT_PT).abs() > 1e-9 {
            options.push_str(&format!(" --text-size {}pt", paper.text_pt));
        }
    }
    if outline {
        options.push_str(" --outline-text");
    }
    options
}

fn caption(drawing: &Drawing, topic: &Topic, lang: Lang) -> String {
    let subtitle = match drawing {
        Drawing::Scene(scene) => &scene.subtitle,
        Drawing::Chart(chart) => &chart.subtitle,
    };
    let name = words::get(lang, &format!("topic.{}", topic.name));
    let made = fill(lang, "caption.made", &[env!("CARGO_PKG_VERSION"), name]);
    let mut caption = format!("{}.", drawing.title());
    if !subtitle.is_empty() {
        let stop = if subtitle.ends_with('.') { "" } else { "." };
        caption.push_str(&format!(" {subtitle}{stop}"));
    }
    caption + " " + &made
}
