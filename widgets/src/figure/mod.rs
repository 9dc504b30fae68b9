//! Figures: the drawing layer, the same natively and in the browser.
//!
//! A view takes plain numbers and words and lays out a [`scene::Scene`] of
//! meant things (forces, wheels, dimensions, labels). [`mod@svg`] writes a scene
//! as text. Charts go through `plotters`, on any of its backends.
//!
//! No word that a reader sees is made here: the caller gives every one.

pub mod angle;
pub mod bars;
pub mod beside;
pub mod chart;
pub mod chart_draw;
pub mod chart_layout;
mod chart_lines;
mod chart_names;
pub mod chart_read;
pub mod chart_svg;
pub mod force;
pub mod grip;
pub mod mark;
pub mod number;
pub mod outline;
mod outline_data;
pub mod palette;
pub mod place;
mod plan_forces;
pub mod plan_glyph;
mod plan_layout;
pub mod plan_view;
#[cfg(not(target_arch = "wasm32"))]
pub mod plot;
pub mod reveal;
pub mod scene;
mod side_forces;
mod side_layout;
pub mod side_view;
pub mod spread;
pub mod svg;
mod svg_arrows;
mod svg_marks;
mod svg_writer;
pub mod text_metrics;

pub use bars::{BarReference, BarRow, Bars, bars};
pub use chart::{Axis, Chart, ChartPoint, Dash, Line, Marker, Vertical};
pub use chart_draw::draw_chart;
pub use chart_layout::{ChartLayout, chart_layout};
pub use chart_svg::chart_svg;
pub use grip::{Act, Grip, Slide, Turn};
pub use outline::BodyKind;
pub use palette::{Role, Theme};
pub use plan_glyph::plan_glyph;
pub(crate) use plan_layout::Frame;
pub(crate) use plan_view::plan_view_with;
pub use plan_view::{PlanView, PlanWheel, Rest, TurningCentre, YawArrow, plan_view};
pub use reveal::reveal;
pub use scene::{Caution, ForceScale, ScaleBar, Scene, ValueLabel};
pub use side_view::{AxleForces, Drag, GhostLoads, SideView, arrows_fit, side_view};
pub use svg::{SvgOptions, svg};

/// The width of a figure for a page or a printed column, in scene units.
pub const WIDE: f64 = 1000.0;
/// The width of a figure for a telephone, in scene units.
///
/// Drawn on a 320 px wide page it is shrunk by a tenth at most, so that its
/// 13-unit text stays above 11 px.
pub const NARROW: f64 = 340.0;
/// Below this width the views simplify: labels stack, side text moves below.
pub const NARROW_BELOW: f64 = 640.0;
