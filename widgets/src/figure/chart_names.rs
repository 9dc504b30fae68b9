//! Where the names of points stand in a chart.

use super::chart::Chart;
use super::chart_layout::{ChartLayout, Placed};
use super::chart_lines::runs;
use super::number::within;
use super::place::Rect;
use super::scene::{Anchor, Point, at};

/// Half the box that a drawn point fills.
const POINT: f64 = 7.5;

/// Where a name may stand beside its point, wished for most first.
const SPOTS: [(f64, f64, Anchor); 8] = [
    (7.0, -11.0, Anchor::Start),
    (-7.0, -11.0, Anchor::End),
    (7.0, 15.0, Anchor::Start),
    (-7.0, 15.0, Anchor::End),
    (11.0, 0.0, Anchor::Start),
    (-11.0, 0.0, Anchor::End),
    (0.0, -19.0, Anchor::Middle),
    (0.0, 21.0, Anchor::Middle),
];

impl ChartLayout {
    /// The names of a chart's points, each beside its own. A name for which no place is free is left out:
    /// the table and the description hold it.
    pub(super) fn names(&self, chart: &Chart) -> Vec<Placed> {
        let mut taken: Vec<Rect> = Vec::new();
        let points = chart.present.iter().chain(&chart.pinned);
        for point in points.map(|point| self.place(point.x, point.y)) {
            taken.push(around(point));
        }
        for vertical in &chart.verticals {
            let x = self.place(vertical.x, 0.0).x;
            taken.push(Rect {
                x0: x - 2.0,
                y0: 0.0,
                x1: x + 2.0,
                y1: self.plot.y1,
            });
        }
        for run in chart.lines.iter().flat_map(|line| runs(line, self)) {
            for pair in run.windows(2) {
                cover(pair[0], pair[1], &mut taken);
            }
        }
        taken.extend(self.verticals.iter().chain(&self.y_title).map(Placed::rect));
        let room = Rect {
            x0: self.plot.x0 + 2.0,
            y0: self.plot.y0 - 12.0,
            x1: self.plot.x1 + 12.0,
            y1: self.plot.y1 - 1.0,
        };
        let mut placed = Vec::new();
        for (x, y, text) in &chart.names {
            let point = self.place(*x, *y);
            let free = SPOTS.into_iter().find_map(|(right, down, anchor)| {
                let name = Placed {
                    at: at(point.x + right, point.y + down),
                    anchor,
                    text: text.clone(),
                };
                let rect = name.rect();
                (rect.inside(&room) && !taken.iter().any(|other| other.overlaps(&rect)))
                    .then_some(name)
            });
            if let Some(name) = free {
                taken.push(name.rect());
                placed.push(name);
            }
        }
        placed
    }
}

/// Takes a stretch of a line, as boxes small enough to follow its slope.
fn cover(from: Point, to: Point, taken: &mut Vec<Rect>) {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let parts = within((dx.abs().min(dy.abs()) / 4.0).ceil(), 1.0, 200.0);
    let mut part = 0.0;
    while part < parts {
        let [one, other] = [part / parts, (part + 1.0) / parts]
            .map(|share| at(from.x + share * dx, from.y + share * dy));
        taken.push(Rect {
            x0: one.x.min(other.x) - 2.0,
            y0: one.y.min(other.y) - 2.0,
            x1: one.x.max(other.x) + 2.0,
            y1: one.y.max(other.y) + 2.0,
        });
        part += 1.0;
    }
}

fn around(point: Point) -> Rect {
    Rect {
        x0: point.x - POINT,
        y0: point.y - POINT,
        x1: point.x + POINT,
        y1: point.y + POINT,
    }
}
