//! Where the parts of a chart lie: computed once, used for drawing and for
//! finding the value under a pointer. No text is measured by a backend.

use super::chart::Chart;
use super::number::{nice_step, within};
use super::place::{Rect, text_rect};
use super::scene::{Anchor, Point, at};
use super::spread::spread;
use super::text_metrics::{LEADING, TEXT, TITLE, text_width, wrap};

/// Distance between the lines of one end label.
pub const END_LEADING: f64 = 15.0;

/// A line of text in the layout.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// Middle of its height.
    pub at: Point,
    /// How it hangs there.
    pub anchor: Anchor,
    /// The text.
    pub text: String,
}

impl Placed {
    /// The box that it fills.
    pub fn rect(&self) -> Rect {
        let width = text_width(&self.text, TEXT, false);
        text_rect(self.at.plus(0.0, 0.35 * TEXT), self.anchor, width, TEXT)
    }
}

/// The layout of a chart, in its own units.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ChartLayout {
    /// The plotting area.
    pub plot: Rect,
    /// Headline, bold.
    pub title: Vec<Placed>,
    /// The soft line below it.
    pub subtitle: Vec<Placed>,
    /// Title of the y axis, above its ticks.
    pub y_title: Option<Placed>,
    /// Title of the x axis, below its ticks.
    pub x_title: Option<Placed>,
    /// Step of the x ticks.
    pub x_step: f64,
    /// Step of the y ticks.
    pub y_step: f64,
    /// Per line of the chart: where it ends, and its label.
    pub ends: Vec<(Point, Vec<Placed>)>,
    /// Labels of the vertical reference lines.
    pub verticals: Vec<Placed>,
    x: (f64, f64),
    y: (f64, f64),
}

/// Lays out a chart.
pub fn chart_layout(chart: &Chart) -> ChartLayout {
    let width = within(chart.width, 200.0, 4000.0);
    let height = within(chart.height, 140.0, 4000.0);
    let mut layout = ChartLayout {
        x: range(chart.x_axis.min, chart.x_axis.max),
        y: range(chart.y_axis.min, chart.y_axis.max),
        ..ChartLayout::default()
    };
    let mut y = 4.0;
    for line in wrap(&chart.title, TITLE, true, width - 8.0) {
        y += 22.0;
        layout.title.push(text(4.0, y - 6.0, Anchor::Start, line));
    }
    for line in wrap(&chart.subtitle, TEXT, false, width - 8.0) {
        y += 20.0;
        layout
            .subtitle
            .push(text(4.0, y - 4.0, Anchor::Start, line));
    }
    if y > 4.0 {
        y += 10.0;
    }
    let title = with_unit(&chart.y_axis.title, &chart.y_axis.unit);
    if !title.is_empty() {
        layout.y_title = Some(text(4.0, 0.0, Anchor::Start, title));
        y += 8.0;
    }
    // Ticks need the height, the height needs the rows of labels above: rows
    // are few, so their room is found with the width alone.
    let bottom = height - 44.0;
    layout.y_step = nice_step(
        layout.y.1 - layout.y.0,
        (((bottom - y) / 44.0) as usize).clamp(2, 10),
    );
    let left = 4.0 + tick_width(chart, &layout) + 8.0;
    let ends_width = ends_width(chart, width);
    layout.plot = Rect {
        x0: left,
        y0: y + 6.0,
        x1: (width - ends_width).max(left + 60.0),
        y1: bottom,
    };
    layout.x_step = x_step(chart, &layout);
    verticals(chart, &mut layout);
    ends(chart, &mut layout, ends_width - 14.0);
    let title = with_unit(&chart.x_axis.title, &chart.x_axis.unit);
    if !title.is_empty() {
        layout.x_title = Some(text(layout.plot.x1, bottom + 32.0, Anchor::End, title));
    }
    layout
}

impl ChartLayout {
    /// Place of a value.
    pub fn place(&self, x: f64, y: f64) -> Point {
        let share = |value: f64, (low, high): (f64, f64)| (value - low) / (high - low);
        at(
            self.plot.x0 + share(x, self.x) * (self.plot.x1 - self.plot.x0),
            self.plot.y1 - share(y, self.y) * (self.plot.y1 - self.plot.y0),
        )
    }

    /// Value on the x axis under a place, kept on the axis.
    pub fn x_at(&self, place_x: f64) -> f64 {
        let share = (place_x - self.plot.x0) / (self.plot.x1 - self.plot.x0);
        self.x.0 + within(share, 0.0, 1.0) * (self.x.1 - self.x.0)
    }

    /// Ends of the x axis, put right where the chart's are not in order.
    pub fn x_range(&self) -> (f64, f64) {
        self.x
    }

    /// Ends of the y axis.
    pub fn y_range(&self) -> (f64, f64) {
        self.y
    }
}

fn text(x: f64, y: f64, anchor: Anchor, text: String) -> Placed {
    Placed {
        at: at(x, y),
        anchor,
        text,
    }
}

fn with_unit(title: &str, unit: &str) -> String {
    let mut whole = String::from(title);
    if !title.is_empty() && !unit.is_empty() {
        whole.push_str(", ");
    }
    whole.push_str(unit);
    whole
}

fn range(min: f64, max: f64) -> (f64, f64) {
    if !(min.is_finite() && max.is_finite()) {
        (0.0, 1.0)
    } else if max > min {
        (min, max)
    } else {
        (min, min + 1.0)
    }
}

/// The finest round step whose ticks do not touch.
fn x_step(chart: &Chart, layout: &ChartLayout) -> f64 {
    let (low, high) = layout.x;
    let mut step = nice_step(high - low, 2);
    for parts in 3..=12 {
        let finer = nice_step(high - low, parts);
        let apart = finer / (high - low) * (layout.plot.x1 - layout.plot.x0);
        let wide = [low, high].map(|value| {
            let text = super::number::tick_text(value, finer, chart.decimal_mark);
            text_width(&text, TEXT, false)
        });
        if apart < wide[0].max(wide[1]) + 18.0 {
            break;
        }
        step = finer;
    }
    step
}

fn tick_width(chart: &Chart, layout: &ChartLayout) -> f64 {
    super::number::ticks(layout.y.0, layout.y.1, layout.y_step)
        .into_iter()
        .map(|value| {
            let text = super::number::tick_text(value, layout.y_step, chart.decimal_mark);
            text_width(&text, TEXT, false)
        })
        .fold(12.0, f64::max)
}

fn ends_width(chart: &Chart, width: f64) -> f64 {
    let widest = chart
        .lines
        .iter()
        .map(|line| text_width(&line.label, TEXT, false))
        .fold(0.0, f64::max);
    if widest > 0.0 {
        (widest + 18.0).min(width * 0.34)
    } else {
        14.0
    }
}

/// Labels above the plot, in as few rows as keep them apart and clear of each other's lines.
fn verticals(chart: &Chart, layout: &mut ChartLayout) {
    let lines: Vec<(f64, f64)> = chart
        .verticals
        .iter()
        .map(|vertical| {
            let width = text_width(&vertical.label, TEXT, false);
            (layout.place(vertical.x, 0.0).x, width)
        })
        .collect();
    let (low, high) = (layout.plot.x0, layout.plot.x1 + 10.0);
    let mut found: Vec<(f64, f64)> = Vec::new();
    for rows in 1..=lines.len() {
        if rows_fit(&lines, low, high, rows, &mut found) {
            break;
        }
    }
    // Rows count upwards from the plot; the axis title stands above them, where no line crosses it.
    let mut placed: Vec<Placed> = Vec::new();
    for (index, vertical) in chart.verticals.iter().enumerate() {
        // Where even a row for each is too narrow, lines run behind words.
        let fallback = (
            within(lines[index].0, low, high - lines[index].1),
            index as f64,
        );
        let (x, row) = found.get(index).copied().unwrap_or(fallback);
        let label = vertical.label.clone();
        placed.push(text(x, -row * LEADING, Anchor::Start, label));
    }
    let highest = placed.iter().map(|label| label.at.y).fold(0.0, f64::min);
    let mut title = layout.y_title.take();
    if let Some(title) = &mut title {
        title.at.y = if placed.is_empty() {
            0.0
        } else {
            highest - LEADING
        };
    }
    let top = title.as_ref().map_or(highest, |title| title.at.y);
    if title.is_some() || !placed.is_empty() {
        layout.plot.y0 += LEADING - top;
    }
    let lowest = layout.plot.y0 - LEADING / 2.0 - 6.0;
    for label in placed.iter_mut().chain(&mut title) {
        label.at.y += lowest;
    }
    layout.y_title = title;
    layout.verticals = placed;
}

/// Finds a left end and a row for the labels of all lines, given as place and width of label. A line
/// goes down from its label through the rows below it.
fn rows_fit(
    lines: &[(f64, f64)],
    low: f64,
    high: f64,
    rows: usize,
    found: &mut Vec<(f64, f64)>,
) -> bool {
    let Some((line, width)) = lines.get(found.len()).copied() else {
        return true;
    };
    for row in (0..rows).map(|row| row as f64) {
        // Over its line, right of it, left of it.
        for left in [
            line - width / 2.0,
            line - 3.0,
            line - width + 3.0,
            line + 6.0,
            line - width - 6.0,
        ] {
            let x = within(left, low, high - width);
            let covers =
                |place: f64, x: f64, width: f64| place > x - 5.0 && place < x + width + 5.0;
            let clear = found
                .iter()
                .zip(lines)
                .all(|((x2, row2), (line2, width2))| {
                    if (row - row2).abs() < 0.5 {
                        x + width + 5.0 <= *x2 || x2 + width2 + 5.0 <= x
                    } else if row < *row2 {
                        !covers(*line2, x, width)
                    } else {
                        !covers(line, *x2, *width2)
                    }
                });
            if clear {
                found.push((x, row));
                if rows_fit(lines, low, high, rows, found) {
                    return true;
                }
                found.pop();
            }
        }
    }
    false
}

/// Labels right of the plot, each at the height where its line ends.
fn ends(chart: &Chart, layout: &mut ChartLayout, room: f64) {
    let mut lines = Vec::new();
    let mut wishes = Vec::new();
    let mut most = 1;
    for line in &chart.lines {
        let end = line
            .points
            .iter()
            .rev()
            .map(|(x, y)| layout.place(*x, *y))
            .find(|p| {
                p.x.is_finite()
                    && p.y >= layout.plot.y0 - 0.5
                    && p.y <= layout.plot.y1 + 0.5
                    && p.x <= layout.plot.x1 + 0.5
            });
        let wrapped = if end.is_some() {
            wrap(&line.label, TEXT, false, room)
        } else {
            Vec::new()
        };
        most = most.max(wrapped.len());
        if !wrapped.is_empty() {
            wishes.push(end.map_or(0.0, |p| p.y));
        }
        lines.push((end.unwrap_or_default(), wrapped));
    }
    let block = most as f64 * END_LEADING;
    let low = layout.plot.y0 + block / 2.0 - 8.0;
    let placed = spread(
        &wishes,
        block + 3.0,
        low,
        layout.plot.y1 - block / 2.0 + 8.0,
    );
    let mut next = placed.into_iter();
    for (end, wrapped) in lines {
        let mut parts = Vec::new();
        if !wrapped.is_empty() {
            let middle = next.next().unwrap_or(end.y);
            let first = middle - (wrapped.len() as f64 - 1.0) * END_LEADING / 2.0;
            for (index, part) in wrapped.into_iter().enumerate() {
                let y = first + index as f64 * END_LEADING;
                parts.push(text(layout.plot.x1 + 14.0, y, Anchor::Start, part));
            }
        }
        layout.ends.push((end, parts));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::chart::{Line, Vertical};

    fn chart(seed: u32, width: f64) -> Chart {
        let mut chart = Chart {
            width,
            height: 320.0,
            decimal_mark: '.',
            ..Chart::default()
        };
        chart.x_axis.max = 10.0;
        chart.y_axis.max = 100.0;
        for index in 0..4u32 {
            let end = f64::from((seed * 17 + index * index * 7) % 100);
            chart.lines.push(Line {
                label: format!("layout {index} with words"),
                points: vec![(0.0, 0.0), (10.0, end)],
                ..Line::default()
            });
            chart.verticals.push(Vertical {
                x: f64::from((seed + index * 3) % 10),
                label: format!("mark number {index}"),
            });
        }
        chart
    }

    #[test]
    fn labels_never_collide_nor_leave_the_chart() {
        for seed in 0..100 {
            for width in [320.0, 600.0, 1000.0] {
                let layout = chart_layout(&chart(seed, width));
                let mut boxes: Vec<Rect> = Vec::new();
                let ends = layout.ends.iter().flat_map(|(_, parts)| parts);
                for placed in layout.verticals.iter().chain(ends) {
                    let rect = placed.rect();
                    assert!(
                        rect.x1 <= width && rect.y0 >= 0.0 && rect.y1 <= 320.0,
                        "{rect:?}"
                    );
                    for other in &boxes {
                        assert!(!rect.overlaps(other), "{seed} {width} {placed:?}");
                    }
                    boxes.push(rect);
                }
            }
        }
    }

    #[test]
    fn a_place_reads_back_as_its_value() {
        let layout = chart_layout(&chart(3, 600.0));
        for x in [0.0, 2.5, 10.0] {
            assert!((layout.x_at(layout.place(x, 0.0).x) - x).abs() < 1e-9);
        }
        assert!((layout.x_at(-50.0)).abs() < 1e-9);
    }

    #[test]
    fn an_axis_that_is_no_range_still_draws() {
        let mut bad = chart(1, 600.0);
        bad.x_axis.max = f64::NAN;
        bad.y_axis.max = bad.y_axis.min;
        let layout = chart_layout(&bad);
        assert!(layout.place(0.5, 0.5).x.is_finite());
        assert!(layout.x_step > 0.0 && layout.y_step > 0.0);
    }
}
