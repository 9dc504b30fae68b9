//! Lines of a chart: cut to the plot, into dashes, and beaded with markers.

use super::chart::Line;
use super::chart_layout::ChartLayout;
use super::scene::Point;

/// The parts of a line that lie in the plot, each without a gap.
pub(super) fn runs(line: &Line, layout: &ChartLayout) -> Vec<Vec<Point>> {
    let mut runs: Vec<Vec<Point>> = Vec::new();
    let mut open = false;
    let mut last: Option<Point> = None;
    for (x, y) in &line.points {
        let p = layout.place(*x, *y);
        let p = (p.x.is_finite() && p.y.is_finite()).then_some(p);
        match last.zip(p).and_then(|(a, b)| clipped(a, b, layout)) {
            Some((from, to)) => {
                if !open || runs.is_empty() {
                    runs.push(vec![from]);
                }
                if let Some(run) = runs.last_mut() {
                    run.push(to);
                }
                // Where the far end was cut off, the next part starts anew.
                open = p.is_some_and(|b| near(b, to));
            }
            None => open = false,
        }
        last = p;
    }
    runs
}

fn near(a: Point, b: Point) -> bool {
    (a.x - b.x).abs() < 1e-6 && (a.y - b.y).abs() < 1e-6
}

/// The part of a segment inside the plot.
fn clipped(a: Point, b: Point, layout: &ChartLayout) -> Option<(Point, Point)> {
    let plot = layout.plot;
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let (mut enter, mut leave) = (0.0f64, 1.0f64);
    for (way, room) in [
        (-dx, a.x - plot.x0),
        (dx, plot.x1 - a.x),
        (-dy, a.y - plot.y0),
        (dy, plot.y1 - a.y),
    ] {
        if way.abs() < 1e-12 {
            if room < -1e-6 {
                return None;
            }
        } else if way < 0.0 {
            enter = enter.max(room / way);
        } else {
            leave = leave.min(room / way);
        }
    }
    let on = |t: f64| a.plus(dx * t, dy * t);
    (enter <= leave).then(|| (on(enter), on(leave)))
}

/// Cuts a run into dashes.
pub(super) fn dashed(run: &[Point], pattern: &[f64]) -> Vec<Vec<Point>> {
    let mut dashes: Vec<Vec<Point>> = Vec::new();
    let mut part = 0;
    let mut left = pattern.first().copied().unwrap_or(1.0);
    let mut drawing = false;
    for pair in run.windows(2) {
        let (mut a, b) = (pair[0], pair[1]);
        loop {
            let (dx, dy) = (b.x - a.x, b.y - a.y);
            let length = (dx * dx + dy * dy).sqrt();
            let on = part % 2 == 0;
            if on && !drawing {
                dashes.push(vec![a]);
                drawing = true;
            }
            let whole = length <= left;
            let end = if whole {
                b
            } else {
                a.plus(dx / length * left, dy / length * left)
            };
            if on && let Some(dash) = dashes.last_mut() {
                dash.push(end);
            }
            if whole {
                left -= length;
                break;
            }
            a = end;
            drawing = false;
            part = (part + 1) % pattern.len();
            left = pattern[part].max(0.5);
        }
    }
    dashes
}

/// Points at even distances along a run.
pub(super) fn beads(run: &[Point], first: f64, gap: f64) -> Vec<Point> {
    let mut beads = Vec::new();
    let mut next = first;
    for pair in run.windows(2) {
        let (dx, dy) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
        let length = (dx * dx + dy * dy).sqrt();
        while next <= length && length > 0.0 {
            beads.push(pair[0].plus(dx * next / length, dy * next / length));
            next += gap;
        }
        next -= length;
    }
    beads
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::chart::Chart;
    use crate::figure::chart_layout::chart_layout;
    use crate::figure::scene::at;

    fn length(run: &[Point]) -> f64 {
        run.windows(2)
            .map(|p| axlewright_core::math::hypot(p[1].x - p[0].x, p[1].y - p[0].y))
            .sum()
    }

    #[test]
    fn dashes_go_around_corners_and_keep_their_length() {
        let run = [at(0.0, 0.0), at(7.0, 0.0), at(7.0, 50.0)];
        let dashes = dashed(&run, &[10.0, 5.0]);
        assert_eq!(dashes.len(), 4);
        for dash in &dashes[..3] {
            assert!((length(dash) - 10.0).abs() < 1e-9);
        }
        assert_eq!(dashes[0].len(), 3);
    }

    #[test]
    fn a_line_leaves_the_plot_and_comes_back() {
        let mut chart = Chart {
            width: 600.0,
            height: 300.0,
            ..Chart::default()
        };
        chart.x_axis.max = 4.0;
        chart.y_axis.max = 1.0;
        chart.lines.push(Line {
            points: vec![
                (0.0, 0.5),
                (1.0, 2.0),
                (2.0, 0.5),
                (3.0, f64::NAN),
                (3.5, 0.2),
                (4.0, 0.2),
            ],
            ..Line::default()
        });
        let layout = chart_layout(&chart);
        let runs = runs(&chart.lines[0], &layout);
        assert_eq!(runs.len(), 3);
        for p in runs.iter().flatten() {
            assert!(p.y >= layout.plot.y0 - 1e-6 && p.y <= layout.plot.y1 + 1e-6);
        }
    }

    #[test]
    fn markers_are_evenly_spread() {
        let beads = beads(&[at(0.0, 0.0), at(50.0, 0.0), at(100.0, 0.0)], 20.0, 40.0);
        let xs: Vec<f64> = beads.iter().map(|p| p.x).collect();
        assert_eq!(xs, [20.0, 60.0, 100.0]);
    }
}
