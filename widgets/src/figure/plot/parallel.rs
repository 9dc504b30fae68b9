//! Many columns side by side: an axis for each, a line across them for each row.

use super::{Frame, Ruler, begin, end, soft};
use crate::figure::palette::Role;
use crate::figure::scene::{Anchor, at, margin};
use crate::figure::svg::SvgOptions;
use crate::figure::text_metrics::{LEADING, TEXT, text_width, wrap};

/// What it shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Parallel {
    /// What every plot has.
    pub frame: Frame,
    /// The axes, left to right.
    pub axes: Vec<Ruler>,
    /// Rows: a value for each axis, and whether the row stands out.
    pub rows: Vec<(Vec<f64>, bool)>,
}

/// Most marks of an axis.
const MARKS: usize = 5;

/// Draws it as SVG. Rows that stand out are drawn last, in ink.
#[must_use]
pub fn parallel(plot: &Parallel, options: &SvgOptions) -> String {
    let (mut writer, top) = begin(&plot.frame, options);
    let left = margin(plot.frame.width).max(28.0);
    // What stands at the marks stands right of each axis, also of the last.
    let last = plot
        .axes
        .last()
        .map_or_else(Vec::new, |axis| axis.marks(MARKS, plot.frame.decimal_mark));
    let beside = last
        .iter()
        .map(|(_, text)| text_width(text, TEXT, false) + 10.0)
        .fold(28.0, f64::max);
    let right = margin(plot.frame.width) + beside.min(0.3 * plot.frame.width);
    let apart = (plot.frame.width - left - right) / (plot.axes.len().max(2) - 1) as f64;
    let titles: Vec<Vec<String>> = plot
        .axes
        .iter()
        .map(|axis| wrap(&axis.head(), TEXT, false, (apart - 12.0).max(60.0)))
        .collect();
    let lines = titles.iter().map(Vec::len).max().unwrap_or(0);
    let (y0, y1) = (
        top + LEADING * (lines as f64 + 1.6),
        plot.frame.height - 36.0,
    );
    let place = |index: usize, value: f64| {
        let axis = &plot.axes[index];
        at(
            left + apart * index as f64,
            y1 - axis.share(value) * (y1 - y0),
        )
    };
    for wanted in [false, true] {
        let (role, width) = if wanted {
            (Role::Ink, 1.4)
        } else {
            (Role::Hair, 1.0)
        };
        for (values, _) in plot
            .rows
            .iter()
            .filter(|(_, stands_out)| *stands_out == wanted)
        {
            if values.iter().any(|value| !value.is_finite()) {
                continue;
            }
            writer.put("<path d=\"");
            for (index, value) in values.iter().enumerate() {
                writer.put(if index == 0 { "M" } else { "L" });
                writer.point(place(index, *value));
            }
            writer.put("\"");
            writer.ink(role, width);
            writer.put("/>\n");
        }
    }
    for (index, axis) in plot.axes.iter().enumerate() {
        let x = left + apart * index as f64;
        // The outermost titles stay on the paper.
        let (anchor, x_text) = match index {
            0 => (Anchor::Start, margin(plot.frame.width)),
            last if last + 1 == plot.axes.len() => {
                (Anchor::End, plot.frame.width - margin(plot.frame.width))
            }
            _ => (Anchor::Middle, x),
        };
        for (line, text) in titles[index].iter().enumerate() {
            let y = top + LEADING * (line as f64 + 1.2);
            soft(&mut writer, at(x_text, y), anchor, text.clone());
        }
        writer.line(at(x, y0), at(x, y1), Role::Soft, 1.0, "");
        let marks = axis.marks(MARKS, plot.frame.decimal_mark);
        for (value, text) in marks {
            let tick = place(index, value);
            writer.line(tick, tick.plus(5.0, 0.0), Role::Soft, 1.0, "");
            let lines = wrap(&text, TEXT, false, apart - 16.0);
            let first = tick.y - 0.5 * LEADING * (lines.len() as f64 - 1.0);
            for (line, text) in lines.into_iter().enumerate() {
                let width = text_width(&text, TEXT, false);
                let x = tick.x + 8.0;
                let y = first + LEADING * line as f64;
                // Paper behind the whole text: a rim lets lines through between its letters.
                writer.rect(at(x - 2.0, y - 8.0), width + 4.0, 16.0);
                writer.fill(Role::Paper);
                writer.put("/>\n");
                soft(&mut writer, at(x, y + 4.5), Anchor::Start, text);
            }
        }
    }
    end(writer)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{frame, options};
    use super::*;

    #[test]
    fn a_line_for_each_row_and_those_that_stand_out_on_top() {
        let axis = |title: &str| Ruler::over(title.into(), "m".into(), (0.0, 1.0));
        let plot = Parallel {
            frame: frame(),
            axes: vec![axis("a"), axis("b"), axis("c")],
            rows: (0..20)
                .map(|i| (vec![f64::from(i) / 20.0; 3], i >= 18))
                .chain([(vec![0.0, f64::NAN, 1.0], false)])
                .collect(),
        };
        let svg = parallel(&plot, &options());
        let ink = "stroke=\"#000000\" stroke-width=\"1.4\"";
        assert_eq!(svg.matches(ink).count(), 2);
        let hair = svg.matches("stroke=\"#bcbcbc\" stroke-width=\"1\"").count();
        assert_eq!(hair, 18);
        assert!(svg.find(ink) > svg.rfind("#bcbcbc"));
        for part in [">a, m<", ">c, m<"] {
            assert!(svg.contains(part), "{part}");
        }
    }
}
