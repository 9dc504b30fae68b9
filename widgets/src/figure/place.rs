//! Placing labels so that none covers another, nor an arrow.

use super::number::within;
use super::scene::{Anchor, Point, at};

/// A box.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rect {
    /// Left.
    pub x0: f64,
    /// Top.
    pub y0: f64,
    /// Right.
    pub x1: f64,
    /// Bottom.
    pub y1: f64,
}

impl Rect {
    /// Whether two boxes share more than an edge.
    pub fn overlaps(&self, other: &Rect) -> bool {
        self.x0 < other.x1 && other.x0 < self.x1 && self.y0 < other.y1 && other.y0 < self.y1
    }

    /// Whether this box lies inside another.
    pub fn inside(&self, other: &Rect) -> bool {
        self.x0 >= other.x0 && self.x1 <= other.x1 && self.y0 >= other.y0 && self.y1 <= other.y1
    }

    /// Whether a place lies inside this box.
    pub fn holds(&self, place: Point) -> bool {
        (self.x0..=self.x1).contains(&place.x) && (self.y0..=self.y1).contains(&place.y)
    }

    fn grown(&self, by: f64) -> Rect {
        Rect {
            x0: self.x0 - by,
            y0: self.y0 - by,
            x1: self.x1 + by,
            y1: self.y1 + by,
        }
    }
}

/// The box of a text whose baseline is at `place`.
pub fn text_rect(place: Point, anchor: Anchor, width: f64, size: f64) -> Rect {
    let x0 = match anchor {
        Anchor::Start => place.x,
        Anchor::Middle => place.x - width / 2.0,
        Anchor::End => place.x - width,
    };
    Rect {
        x0,
        y0: place.y - 0.8 * size,
        x1: x0 + width,
        y1: place.y + 0.25 * size,
    }
}

/// A place where a text may hang.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Candidate {
    /// Baseline.
    pub at: Point,
    /// Hang.
    pub anchor: Anchor,
}

/// Short for [`Candidate`].
pub const fn spot(x: f64, y: f64, anchor: Anchor) -> Candidate {
    Candidate {
        at: at(x, y),
        anchor,
    }
}

/// Remembers what is taken.
#[derive(Clone, Debug, Default)]
pub struct Placer {
    bounds: Rect,
    taken: Vec<Rect>,
}

impl Placer {
    /// Labels must stay inside `bounds`.
    pub fn new(bounds: Rect) -> Placer {
        Placer {
            bounds,
            taken: Vec::new(),
        }
    }

    /// Keeps labels out of a box.
    pub fn block(&mut self, rect: Rect) {
        self.taken.push(rect);
    }

    /// Keeps labels off a line with this half width.
    pub fn block_line(&mut self, from: Point, to: Point, half: f64) {
        let length = (to.x - from.x).abs().max((to.y - from.y).abs());
        let parts = within((length / 8.0).ceil(), 1.0, 400.0);
        let mut index = 0.0;
        while index <= parts {
            let t = index / parts;
            let (x, y) = (from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t);
            self.block(Rect {
                x0: x - half,
                y0: y - half,
                x1: x + half,
                y1: y + half,
            });
            index += 1.0;
        }
    }

    fn free(&self, rect: &Rect) -> bool {
        let roomy = rect.grown(2.0);
        rect.inside(&self.bounds) && !self.taken.iter().any(|taken| taken.overlaps(&roomy))
    }

    /// Takes the first candidate that is free. Where none is, walks away from
    /// each in growing steps until a free place is found.
    pub fn place(&mut self, width: f64, height: f64, wanted: &[Candidate]) -> Candidate {
        let found = self.try_place(width, height, wanted);
        found.unwrap_or_else(|| {
            // Nothing is free: the first wish, kept on the page.
            let wish = wanted.first().map_or(Point::default(), |wish| wish.at);
            let x = within(wish.x, self.bounds.x0, self.bounds.x1 - width);
            spot(x, wish.y, Anchor::Start)
        })
    }

    /// The same; nothing where no place is free.
    pub fn try_place(
        &mut self,
        width: f64,
        height: f64,
        wanted: &[Candidate],
    ) -> Option<Candidate> {
        let found = self.search(width, height, wanted)?;
        self.block(block_rect(found, width, height));
        Some(found)
    }

    /// Keeps labels off an arrow: its shaft, and its wider head.
    pub fn block_arrow(&mut self, from: Point, tip: Point) {
        self.block_line(from, tip, 3.0);
        let (dx, dy) = (tip.x - from.x, tip.y - from.y);
        let length = (dx * dx + dy * dy).sqrt();
        if length > 0.0 {
            let head = 14.0f64.min(length) / length;
            self.block_line(tip.plus(-dx * head, -dy * head), tip, 6.0);
        }
    }

    /// The free place nearest to the first wish, wherever it is.
    fn anywhere(&self, width: f64, height: f64, wanted: &[Candidate]) -> Option<Candidate> {
        let wish = wanted.first()?.at;
        let mut best = None;
        let mut nearest = f64::INFINITY;
        for row in 0..60 {
            for column in 0..40 {
                let x = self.bounds.x0 + f64::from(column) * 25.0;
                let y = self.bounds.y0 + 12.0 + f64::from(row) * 9.0;
                let candidate = spot(x, y, Anchor::Start);
                let far = (x - wish.x).abs() + (y - wish.y).abs();
                if far < nearest && self.free(&block_rect(candidate, width, height)) {
                    nearest = far;
                    best = Some(candidate);
                }
            }
        }
        best
    }

    fn search(&self, width: f64, height: f64, wanted: &[Candidate]) -> Option<Candidate> {
        for step in 0..80 {
            let reach = f64::from(step) * 5.0;
            for candidate in wanted {
                for (dx, dy) in WAYS {
                    let mut moved = *candidate;
                    moved.at = moved.at.plus(dx * reach, dy * reach);
                    // Slide back in from the sides rather than give up a place.
                    let rect = block_rect(moved, width, height);
                    if rect.x0 < self.bounds.x0 {
                        moved.at.x += self.bounds.x0 - rect.x0;
                    } else if rect.x1 > self.bounds.x1 {
                        moved.at.x += self.bounds.x1 - rect.x1;
                    }
                    if self.free(&block_rect(moved, width, height)) {
                        return Some(moved);
                    }
                    if step == 0 {
                        break;
                    }
                }
            }
        }
        self.anywhere(width, height, wanted)
    }
}

const WAYS: [(f64, f64); 6] = [
    (0.0, 1.0),
    (0.0, -1.0),
    (1.0, 0.0),
    (-1.0, 0.0),
    (1.0, 1.0),
    (-1.0, 1.0),
];

/// The box of a block of text `height` high whose first baseline is given.
fn block_rect(candidate: Candidate, width: f64, height: f64) -> Rect {
    let mut rect = text_rect(
        candidate.at,
        candidate.anchor,
        width,
        super::text_metrics::TEXT,
    );
    rect.y1 = rect.y0 + height;
    rect
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_at_one_spot_never_overlap() {
        let bounds = Rect {
            x0: 0.0,
            y0: 0.0,
            x1: 340.0,
            y1: 300.0,
        };
        for seed in 0..40 {
            let mut placer = Placer::new(bounds);
            placer.block_line(at(20.0, 150.0), at(300.0, 150.0 + f64::from(seed)), 5.0);
            let mut boxes: Vec<Rect> = Vec::new();
            for label in 0..8 {
                let width = 60.0 + f64::from((seed * 7 + label * 13) % 50);
                let x = 40.0 + f64::from((seed * 31) % 250);
                let wanted = [spot(x, 140.0, Anchor::Start), spot(x, 170.0, Anchor::End)];
                let found = placer.place(width, 14.0, &wanted);
                let rect = block_rect(found, width, 14.0);
                assert!(rect.inside(&bounds), "{seed} {label} {rect:?}");
                for other in &boxes {
                    assert!(!rect.overlaps(other), "{seed} {label}");
                }
                boxes.push(rect);
            }
        }
    }
}
