//! What a line chart shows. Drawing is in `chart_draw`, SVG output in `chart_svg`.

use super::palette::Role;

/// One axis.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Axis {
    /// Title: "speed".
    pub title: String,
    /// Unit: "km/h"; empty for a pure ratio.
    pub unit: String,
    /// Lower end.
    pub min: f64,
    /// Upper end.
    pub max: f64,
}

/// How a line is dashed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Dash {
    /// Unbroken.
    #[default]
    Solid,
    /// Long dashes.
    Long,
    /// Short dashes.
    Short,
    /// Dash and dot.
    DashDot,
    /// Dots.
    Dots,
}

/// The marker that sits on a line at even steps.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Marker {
    /// None.
    #[default]
    None,
    /// Circle.
    Circle,
    /// Square.
    Square,
    /// Triangle.
    Triangle,
    /// Diamond.
    Diamond,
}

/// One line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Line {
    /// Label at the line's end.
    pub label: String,
    /// Points in ascending x. A point that is not finite breaks the line.
    pub points: Vec<(f64, f64)>,
    /// Colour, by meaning.
    pub role: Role,
    /// Dash.
    pub dash: Dash,
    /// Marker.
    pub marker: Marker,
}

/// A state on the chart.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ChartPoint {
    /// On the x axis.
    pub x: f64,
    /// On the y axis.
    pub y: f64,
    /// Colour, by meaning.
    pub role: Role,
}

/// A labelled reference line at one x.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Vertical {
    /// On the x axis.
    pub x: f64,
    /// Its label.
    pub label: String,
}

/// What the chart shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Chart {
    /// Width in CSS pixels or scene units.
    pub width: f64,
    /// Height in the same.
    pub height: f64,
    /// The finding, drawn as headline; empty for none.
    pub title: String,
    /// One soft line below it; empty for none.
    pub subtitle: String,
    /// The text description.
    pub description: String,
    /// Along.
    pub x_axis: Axis,
    /// Up.
    pub y_axis: Axis,
    /// Lines.
    pub lines: Vec<Line>,
    /// The present state, filled dots.
    pub present: Vec<ChartPoint>,
    /// The pinned state, rings.
    pub pinned: Vec<ChartPoint>,
    /// Names beside points, each with its place.
    pub names: Vec<(f64, f64, String)>,
    /// Labelled reference lines.
    pub verticals: Vec<Vertical>,
    /// Decimal mark: '.' or ','.
    pub decimal_mark: char,
    /// Input that the x axis shows, where it is one of the topic.
    pub x_input: Option<&'static str>,
}
