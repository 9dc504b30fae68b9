//! Lines of equal value over two inputs.

use super::{Frame, Ruler, axes, begin, end, place_label};
use crate::figure::number::{nice_step, tick_text, ticks};
use crate::figure::palette::Role;
use crate::figure::scene::{Anchor, Label, Point, at};
use crate::figure::svg::SvgOptions;
use crate::figure::text_metrics::TEXT;

/// Values over a grid.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Contour {
    /// What every plot has.
    pub frame: Frame,
    /// Along.
    pub x: Ruler,
    /// Up.
    pub y: Ruler,
    /// Values of x, ascending.
    pub columns: Vec<f64>,
    /// Values of y, ascending.
    pub rows: Vec<f64>,
    /// The value for each row and each column in it; what is not finite is a hole.
    pub values: Vec<f64>,
}

type Segment = (Point, Point);

/// Draws it as SVG.
#[must_use]
pub fn contour(plot: &Contour, options: &SvgOptions) -> String {
    let (mut writer, top) = begin(&plot.frame, options);
    let area = axes(&mut writer, &plot.frame, &plot.x, &plot.y, top);
    let finite = plot
        .values
        .iter()
        .copied()
        .filter(|value| value.is_finite());
    let (low, high) = finite.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    });
    let step = nice_step(high - low, 10);
    let mut labels = Vec::new();
    let mut taken = Vec::new();
    for level in ticks(low, high, step) {
        let segments: Vec<Segment> = segments(plot, level)
            .into_iter()
            .map(|(a, b)| (area.place(a.x, a.y), area.place(b.x, b.y)))
            .collect();
        if segments.is_empty() {
            continue;
        }
        writer.put("<path d=\"");
        for (from, to) in &segments {
            writer.put("M");
            writer.point(*from);
            writer.put("L");
            writer.point(*to);
        }
        writer.put("\"");
        writer.ink(Role::Ink, 1.4);
        writer.put("/>\n");
        let text = tick_text(level, step, plot.frame.decimal_mark);
        // From the middle of the line outwards.
        let middle = segments.len() / 2;
        let places = (0..segments.len()).map(|at| {
            let at = if at % 2 == 0 {
                middle + at / 2
            } else {
                middle - at.div_ceil(2)
            };
            let (a, b) = segments[at.min(segments.len() - 1)];
            self::at(0.5 * (a.x + b.x), 0.5 * (a.y + b.y))
        });
        if let Some(place) = place_label(&mut taken, &area.rect, places, &text) {
            labels.push((place, text));
        }
    }
    for (place, value) in labels {
        writer.label(&Label {
            at: place.plus(0.0, 4.5),
            anchor: Anchor::Middle,
            value,
            size: TEXT,
            rim: true,
            ..Label::default()
        });
    }
    end(writer)
}

/// The pieces of the line of one level, in values of x and y, ordered along x: in each cell of the grid
/// the level is where it is between two corners (marching squares).
fn segments(plot: &Contour, level: f64) -> Vec<Segment> {
    let wide = plot.columns.len();
    let mut found = Vec::new();
    for column in 1..wide {
        for row in 1..plot.rows.len() {
            let corner = |right: usize, up: usize| {
                let (c, r) = (column - 1 + right, row - 1 + up);
                let place = at(plot.columns[c], plot.rows[r]);
                // A level that meets a corner passes it by on one side, the same for all its cells.
                (place, plot.values[r * wide + c] - level)
            };
            let corners = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
            if corners.iter().all(|(_, value)| value.is_finite()) {
                cell(&corners, &mut found);
            }
        }
    }
    found
}

fn cell(corners: &[(Point, f64); 4], found: &mut Vec<Segment>) {
    let mut cuts: Vec<Point> = Vec::new();
    for edge in 0..4 {
        let ((a, low), (b, high)) = (corners[edge], corners[(edge + 1) % 4]);
        if (low >= 0.0) != (high >= 0.0) {
            let share = low / (low - high);
            cuts.push(at(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)));
        }
    }
    match cuts[..] {
        [a, b] => found.push((a, b)),
        // A saddle: the mean tells which corners belong together.
        [a, b, c, d] => {
            let mean = corners.iter().map(|(_, value)| value).sum::<f64>();
            if (mean >= 0.0) == (corners[0].1 >= 0.0) {
                found.extend([(a, b), (c, d)]);
            } else {
                found.extend([(a, d), (b, c)]);
            }
        }
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::{frame, options};
    use super::*;

    fn bowl(side: usize) -> Contour {
        let steps: Vec<f64> = (0..side)
            .map(|i| i as f64 / (side - 1) as f64 * 2.0 - 1.0)
            .collect();
        let values = steps
            .iter()
            .flat_map(|y| steps.iter().map(move |x| x * x + y * y));
        Contour {
            frame: frame(),
            x: Ruler::over("a".into(), "m".into(), (-1.0, 1.0)),
            y: Ruler::over("b".into(), String::new(), (-1.0, 1.0)),
            values: values.collect(),
            columns: steps.clone(),
            rows: steps,
        }
    }

    #[test]
    fn the_lines_of_a_bowl_are_circles() {
        let bowl = bowl(81);
        for level in [0.1, 0.25, 0.64] {
            let segments = segments(&bowl, level);
            assert!(segments.len() > 40, "{level}: {}", segments.len());
            let mut length = 0.0;
            for (a, b) in segments {
                for p in [a, b] {
                    let radius = (p.x * p.x + p.y * p.y).sqrt();
                    assert!((radius - level.sqrt()).abs() < 2e-3, "{level}: {radius}");
                }
                let (dx, dy) = (a.x - b.x, a.y - b.y);
                length += (dx * dx + dy * dy).sqrt();
            }
            let round = core::f64::consts::TAU * level.sqrt();
            assert!(
                (length / round - 1.0).abs() < 0.01,
                "{level}: {length}, want {round}"
            );
        }
    }

    #[test]
    fn a_saddle_is_cut_in_two_and_a_hole_is_left_out() {
        let square = |values: [f64; 4]| Contour {
            columns: vec![0.0, 1.0],
            rows: vec![0.0, 1.0],
            values: values.to_vec(),
            ..bowl(2)
        };
        assert_eq!(segments(&square([1.0, -1.0, -1.0, 1.0]), 0.0).len(), 2);
        assert_eq!(segments(&square([1.0, 1.0, -1.0, 1.0]), 0.0).len(), 1);
        assert_eq!(segments(&square([1.0, f64::NAN, -1.0, 1.0]), 0.0).len(), 0);
        assert_eq!(segments(&square([1.0; 4]), 0.0).len(), 0);
    }

    #[test]
    fn it_is_drawn_with_its_values_and_the_same_every_time() {
        let svg = contour(&bowl(41), &options());
        assert_eq!(svg, contour(&bowl(41), &options()));
        for part in [
            "&lt; more",
            ">0.5<",
            ">1.0<",
            ">a, m<",
            ">b<",
            "<metadata>m",
        ] {
            assert!(svg.contains(part), "{part}");
        }
        assert!(!svg.contains("NaN"));
    }
}
