//! The chart that a question is read off: one line, a grid, and no value told.

use crate::figure::{Axis, Chart, Line, Role};
use crate::load_transfer::chart_height;
use axlewright_core::question::Asked;
use axlewright_core::units::{self, System};
use axlewright_core::words::{self, Lang};

/// The chart of a question; none where nothing is to be read.
#[must_use]
pub fn question_chart(asked: &Asked, width: f64, lang: Lang, system: System) -> Option<Chart> {
    let traced = asked.traced.as_ref()?;
    let up = traced.points.first()?.1.dimension;
    let mut points = Vec::with_capacity(traced.points.len());
    let (mut low, mut high) = (0.0_f64, 0.0_f64);
    for (along, amount) in &traced.points {
        let y = units::from_si(amount.value, up, system);
        (low, high) = (low.min(y), high.max(y));
        points.push((units::from_si(*along, traced.along, system), y));
    }
    let (title, description) = asked.chart_text(lang, system);
    let x_title = words::get(lang, &["input.", traced.input].concat());
    let end = |at: Option<&(f64, f64)>| at.map_or(0.0, |point| point.0);
    Some(Chart {
        width,
        height: chart_height(width),
        title,
        description,
        x_axis: Axis {
            title: x_title.into(),
            unit: traced.along.display_unit(system).into(),
            min: end(points.first()),
            max: end(points.last()),
        },
        y_axis: Axis {
            title: asked.output_label(lang),
            unit: up.display_unit(system).into(),
            min: low,
            max: high,
        },
        lines: vec![Line {
            points,
            role: Role::Ink,
            ..Line::default()
        }],
        decimal_mark: lang.decimal_mark(),
        ..Chart::default()
    })
}
