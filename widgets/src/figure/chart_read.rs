//! What a chart says at one x: the values of its lines there, and a table of such readings.
//!
//! Values are those of the drawn lines, straight between two points. Where a line is broken, or does
//! not reach, it says nothing.

use super::chart::{Axis, Chart, Line};
use super::number::{nice_step, tick_text, ticks, within};
use super::palette::Role;
use axlewright_core::format::with_unit;
use axlewright_core::math::round;

/// The values at one x.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reading {
    /// Where on the x axis.
    pub x: f64,
    /// The same with its unit.
    pub x_text: String,
    /// Per line that has a value there.
    pub values: Vec<LineValue>,
}

/// The value of one line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LineValue {
    /// The line's label.
    pub label: String,
    /// Its value.
    pub y: f64,
    /// The same with its unit.
    pub text: String,
    /// Its colour, by meaning.
    pub role: Role,
}

/// Step between two readings: at most 120 in the width of the chart.
pub fn x_step(chart: &Chart) -> f64 {
    nice_step(chart.x_axis.max - chart.x_axis.min, 120)
}

/// The x of a reading nearest to the given one: a whole step, or an end of the axis.
pub fn x_near(chart: &Chart, x: f64) -> f64 {
    let (min, max) = (chart.x_axis.min, chart.x_axis.max);
    let step = x_step(chart);
    let near = round(within(x, min, max) / step) * step;
    // Without the noise of binary fractions, so that 0.6 is 0.6.
    let near = round(near * 1e9) / 1e9;
    if x >= max || near > max {
        max
    } else if x <= min || near < min {
        min
    } else {
        near
    }
}

/// The lines as a reader names them. A line without a label goes on in the next one: a run is drawn in
/// pieces that differ in colour and dash, and only its last piece is labelled.
pub fn series(chart: &Chart) -> Vec<Line> {
    let mut all: Vec<Line> = Vec::new();
    let mut open = false;
    for piece in &chart.lines {
        match all.last_mut() {
            Some(last) if open => {
                let points = core::mem::take(&mut last.points);
                *last = piece.clone();
                last.points = points;
                last.points.extend_from_slice(&piece.points);
            }
            _ => all.push(piece.clone()),
        }
        open = piece.label.is_empty();
    }
    all
}

/// Reads the chart at the x of a reading nearest to the given one.
pub fn chart_read(chart: &Chart, x: f64) -> Reading {
    let x = x_near(chart, x);
    let values = series(chart)
        .into_iter()
        .filter_map(|line| {
            let y = value_at(&line, x)?;
            Some(LineValue {
                label: line.label,
                y,
                text: with_unit(y_text(chart, y), &chart.y_axis.unit),
                role: line.role,
            })
        })
        .collect();
    Reading {
        x,
        x_text: with_unit(x_text(chart, x), &chart.x_axis.unit),
        values,
    }
}

/// The value of a line, between its points straight from one to the next.
pub fn value_at(line: &Line, x: f64) -> Option<f64> {
    // A line that ends where the axis does must have a value there, also when its last point was
    // rounded.
    let slack = 1e-9 * (1.0 + x.abs());
    let near = |at: f64| (at - x).abs() <= slack;
    let exact = line
        .points
        .iter()
        .find(|(at, y)| near(*at) && y.is_finite());
    if let Some((_, y)) = exact {
        return Some(*y);
    }
    line.points.windows(2).find_map(|pair| {
        let ((x0, y0), (x1, y1)) = (pair[0], pair[1]);
        let y = y0 + (y1 - y0) * (x - x0) / (x1 - x0);
        (x0 < x && x < x1 && y.is_finite()).then_some(y)
    })
}

/// At most 25 round x of the axis.
pub fn round_x(chart: &Chart) -> Vec<f64> {
    let (min, max) = (chart.x_axis.min, chart.x_axis.max);
    ticks(min, max, nice_step(max - min, 24))
        .into_iter()
        .map(|x| x_near(chart, x))
        .collect()
}

/// An x as text, without its unit.
pub fn x_text(chart: &Chart, x: f64) -> String {
    let step = x_step(chart);
    let whole = (x / step - round(x / step)).abs() < 1e-6;
    // An end of the axis that is no whole step takes a digit more.
    tick_text(
        x,
        if whole { step } else { step / 10.0 },
        chart.decimal_mark,
    )
}

/// A value of a line as text, without its unit: to a hundredth of the axis or finer.
pub fn y_text(chart: &Chart, y: f64) -> String {
    let step = nice_step(chart.y_axis.max - chart.y_axis.min, 100);
    tick_text(y, step, chart.decimal_mark)
}

/// "acceleration, g"; the title alone where there is no unit.
pub fn axis_head(axis: &Axis) -> String {
    if axis.unit.is_empty() {
        axis.title.clone()
    } else {
        [axis.title.as_str(), ", ", &axis.unit].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::visual::{Drawing, Look, VISUALS, View};

    fn chart(points: &[(f64, f64)]) -> Chart {
        let mut chart = Chart {
            decimal_mark: '.',
            lines: vec![Line {
                label: "front axle".into(),
                points: points.to_vec(),
                role: Role::Front,
                ..Line::default()
            }],
            ..Chart::default()
        };
        chart.x_axis.max = 1.2;
        chart.x_axis.unit = "g".into();
        chart.y_axis.max = 12_000.0;
        chart.y_axis.unit = "N".into();
        chart
    }

    #[test]
    fn a_value_lies_on_the_straight_line_between_two_points() {
        let chart = chart(&[(0.0, 9000.0), (1.2, 3000.0)]);
        let read = chart_read(&chart, 0.601);
        assert_eq!(read.x_text, "0.60\u{2009}g");
        assert_eq!(read.values.len(), 1);
        assert_eq!(read.values[0].label, "front axle");
        assert_eq!(read.values[0].text, "6\u{2009}000\u{2009}N");
        assert!((read.values[0].y - 6000.0).abs() < 1e-9);
        assert!((read.x - 0.6).abs() < 1e-15);
    }

    #[test]
    fn a_broken_line_says_nothing_where_it_is_broken() {
        let broken = chart(&[(0.0, 1.0), (0.4, f64::NAN), (0.8, 3.0), (1.0, 4.0)]);
        for (x, value) in [
            (0.0, Some(1.0)),
            (0.2, None),
            (0.4, None),
            (0.6, None),
            (0.8, Some(3.0)),
            (0.9, Some(3.5)),
            (1.1, None),
        ] {
            let read = chart_read(&broken, x);
            let got = read.values.first().map(|value| value.y);
            match (got, value) {
                (Some(got), Some(want)) => assert!((got - want).abs() < 1e-9, "{x}: {got}"),
                (got, want) => assert_eq!(got, want, "{x}"),
            }
        }
    }

    #[test]
    fn readings_stay_on_the_axis_and_reach_its_ends() {
        let mut chart = chart(&[(0.0, 0.0), (2.0, 2.0)]);
        chart.x_axis.max = 1.1734;
        assert!((x_near(&chart, 9.0) - 1.1734).abs() < 1e-15);
        assert!(x_near(&chart, -9.0).abs() < 1e-15);
        assert_eq!(chart_read(&chart, 9.0).x_text, "1.173\u{2009}g");
        let xs = round_x(&chart);
        assert!(xs.len() <= 25 && xs.len() > 10, "{xs:?}");
        assert!(xs.iter().all(|x| (0.0..=1.1734).contains(x)));
    }

    #[test]
    fn every_topic_reads_out_along_its_whole_axis() {
        for visual in VISUALS {
            let scenario = visual.topic.example().unwrap();
            let drawn = visual.draw(&scenario, View::Chart, &Look::default());
            let Ok(Drawing::Chart(chart)) = drawn else {
                panic!("{} has a chart", visual.topic.name)
            };
            // Points with names of their own are a scatter: its line starts where the first one lies.
            if !chart.names.is_empty() {
                continue;
            }
            for x in round_x(&chart).into_iter().skip(1) {
                let read = chart_read(&chart, x);
                // A line may end before the axis does.
                let lines = chart.lines.iter();
                let there = lines.filter(|line| value_at(line, x).is_some()).count();
                let wanted = there.min(series(&chart).len());
                assert_eq!(read.values.len(), wanted, "{x} {read:?}");
                assert!(read.values.iter().all(|v| !v.label.is_empty()), "{read:?}");
            }
            // The dots of the present state lie on their lines.
            for dot in &chart.present {
                let on = chart.lines.iter().filter_map(|l| value_at(l, dot.x));
                let off = on.map(|y| (y - dot.y).abs()).fold(f64::INFINITY, f64::min);
                let span = chart.y_axis.max - chart.y_axis.min;
                assert!(off < 0.01 * span, "{} {off}", visual.topic.name);
            }
        }
    }
}
