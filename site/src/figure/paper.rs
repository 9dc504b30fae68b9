//! Figures by their size on paper.
//!
//! A figure is laid out for the column that it will stand in, not drawn large and shrunk: its text then
//! has the size that was asked for, and its lines have the width that a printer holds.

use axlewright_core::units::{self, Dimension};
use axlewright_widgets::figure::text_metrics::TEXT;
use axlewright_widgets::visual::Drawing;

/// Millimetres of a printer's point.
const MM_PER_POINT: f64 = 25.4 / 72.0;

/// Size of text on paper where none is asked for, in points: that of captions in most journals.
pub const USUAL_TEXT_PT: f64 = 8.0;

/// Widths that the views are drawn for, in their own units.
pub const WIDTHS: (f64, f64) = (320.0, 4000.0);

/// Heights of a chart, in its own units.
const CHART_HEIGHTS: (f64, f64) = (240.0, 4000.0);

/// How large a figure is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Size {
    /// So many of its own units wide. Text is 13 units high.
    Units(f64),
    /// So large on paper.
    Paper(Paper),
}

/// A size on paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Paper {
    /// Width \[mm\].
    pub width_mm: f64,
    /// Height \[mm\]; as high as the figure is where none is asked for.
    pub height_mm: Option<f64>,
    /// Size of its text in points.
    pub text_pt: f64,
}

/// A size that cannot be: field, value, what is allowed.
#[derive(Clone, Debug, PartialEq)]
pub struct SizeProblem {
    /// Field of the command line.
    pub field: &'static str,
    /// Its value.
    pub value: String,
    /// What is allowed.
    pub allowed: String,
}

impl std::fmt::Display for SizeProblem {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self {
            field,
            value,
            allowed,
        } = self;
        write!(f, "{field} = {value} is not possible; allowed: {allowed}")
    }
}

impl std::error::Error for SizeProblem {}

/// A length in millimetres from a text with a unit: "84mm", "3.3 in".
///
/// # Errors
/// A [`SizeProblem`] that names the field.
pub fn millimetres(field: &'static str, text: &str) -> Result<f64, SizeProblem> {
    units::parse(text, Dimension::Length)
        .ok()
        .filter(|metres| (0.001..=10.0).contains(metres))
        // A millionth of a millimetre is the round-off of a conversion, not a length.
        .map(|metres| (1e9 * metres).round() / 1e6)
        .ok_or_else(|| SizeProblem {
            field,
            value: format!("\"{text}\""),
            allowed: "a length such as 84mm, 8.4cm or 3.3in".into(),
        })
}

impl Size {
    /// Width in units of the figure.
    ///
    /// # Errors
    /// A [`SizeProblem`] where no view can be laid out at that width.
    pub fn units(&self) -> Result<f64, SizeProblem> {
        let (width, value, scale, unit) = match self {
            Self::Units(width) => (*width, width.to_string(), 1.0, ""),
            Self::Paper(paper) => {
                let scale = paper.mm_per_unit();
                (
                    paper.width_mm / scale,
                    format!("{} mm", paper.width_mm),
                    scale,
                    " mm",
                )
            }
        };
        if (WIDTHS.0..=WIDTHS.1).contains(&width) {
            return Ok(width);
        }
        let with_text = match self {
            Self::Units(_) => String::new(),
            Self::Paper(paper) => format!(" with text of {} pt", paper.text_pt),
        };
        // Rounded inwards, so that what is said to be allowed is.
        let (low, high) = ((WIDTHS.0 * scale).ceil(), (WIDTHS.1 * scale).floor());
        Err(SizeProblem {
            field: "width",
            value,
            allowed: format!("{low}{unit} to {high}{unit}{with_text}"),
        })
    }

    /// Height in units of the figure where one is asked for.
    ///
    /// # Errors
    /// A [`SizeProblem`] where the height is no height of a chart.
    pub fn height_units(&self) -> Result<Option<f64>, SizeProblem> {
        let Self::Paper(
            paper @ Paper {
                height_mm: Some(height_mm),
                ..
            },
        ) = self
        else {
            return Ok(None);
        };
        let height = height_mm / paper.mm_per_unit();
        if (CHART_HEIGHTS.0..=CHART_HEIGHTS.1).contains(&height) {
            return Ok(Some(height));
        }
        Err(paper.height_problem(*height_mm, CHART_HEIGHTS))
    }

    /// Gives a drawing the height that is asked for: a chart is laid out so high, under a scene the paper
    /// stays white.
    ///
    /// # Errors
    /// A [`SizeProblem`] where the height is too little.
    pub fn heighten(&self, drawing: &mut Drawing) -> Result<(), SizeProblem> {
        let Self::Paper(
            paper @ Paper {
                height_mm: Some(height_mm),
                ..
            },
        ) = self
        else {
            return Ok(());
        };
        let height = height_mm / paper.mm_per_unit();
        let (least, most) = match drawing {
            Drawing::Chart(_) => CHART_HEIGHTS,
            Drawing::Scene(scene) => (scene.height, CHART_HEIGHTS.1),
        };
        if !(least..=most).contains(&height) {
            return Err(paper.height_problem(*height_mm, (least, most)));
        }
        match drawing {
            Drawing::Chart(chart) => chart.height = height,
            Drawing::Scene(scene) => scene.height = height,
        }
        Ok(())
    }

    /// Writes the size on paper into the head of an SVG that has its size in units.
    #[must_use]
    pub fn on_paper(&self, svg: String) -> String {
        let Self::Paper(paper) = self else {
            return svg;
        };
        let Some((head, rest)) = svg.split_once(" role=") else {
            return svg;
        };
        let Some((before, size)) = head.split_once(" width=\"") else {
            return svg;
        };
        let number = |text: Option<&str>| text.and_then(|t| t.parse::<f64>().ok());
        let mut parts = size.split('"');
        let (Some(width), Some(height)) = (number(parts.next()), number(parts.nth(1))) else {
            return svg;
        };
        // The size in units was rounded; the width on paper is the one that was asked for.
        let scaled_mm = (height * paper.width_mm / width * 1e3).round() / 1e3;
        format!(
            "{before} width=\"{}mm\" height=\"{}mm\" role={rest}",
            paper.width_mm,
            paper.height_mm.unwrap_or(scaled_mm)
        )
    }
}

impl Paper {
    fn height_problem(&self, height_mm: f64, (least, most): (f64, f64)) -> SizeProblem {
        let scale = self.mm_per_unit();
        // Rounded inwards, so that what is said to be allowed is.
        let (low, high) = ((10.0 * least * scale).ceil() / 10.0, (most * scale).floor());
        SizeProblem {
            field: "height",
            value: format!("{height_mm} mm"),
            allowed: format!("{low} mm to {high} mm for this figure"),
        }
    }

    /// Millimetres of a unit of the figure: its text is [`TEXT`] units high.
    fn mm_per_unit(&self) -> f64 {
        self.text_pt * MM_PER_POINT / TEXT
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const COLUMN: Paper = Paper {
        width_mm: 84.0,
        height_mm: None,
        text_pt: 8.0,
    };

    #[test]
    fn a_column_is_as_wide_as_it_says_and_its_text_is_as_high() {
        let size = Size::Paper(COLUMN);
        let width = size.units().unwrap();
        // 13 units are 8 points are 2.822 mm.
        assert!((width * 8.0 * MM_PER_POINT / 13.0 - 84.0).abs() < 1e-9);
        let svg = "<svg viewBox=\"0 0 387 200\" width=\"387\" height=\"200\" role=\"img\">";
        let on_paper = size.on_paper(svg.into());
        assert_eq!(
            on_paper,
            "<svg viewBox=\"0 0 387 200\" width=\"84mm\" height=\"43.411mm\" role=\"img\">"
        );
    }

    #[test]
    fn a_size_that_cannot_be_is_told_with_the_range() {
        let narrow = Size::Paper(Paper {
            width_mm: 40.0,
            ..COLUMN
        });
        let told = narrow.units().unwrap_err().to_string();
        for part in ["width", "40 mm", "70 mm", "8 pt"] {
            assert!(told.contains(part), "{told}");
        }
        assert!(Size::Units(100.0).units().is_err());
        assert!((millimetres("width", "3.3in").unwrap() - 83.82).abs() < 1e-9);
        for text in ["", "84", "84 kg", "-84mm", "1e9 m"] {
            let told = millimetres("width", text).unwrap_err().to_string();
            assert!(
                told.contains("width") && told.contains("84mm"),
                "{text}: {told}"
            );
        }
    }
}
