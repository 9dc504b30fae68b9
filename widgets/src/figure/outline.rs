//! Outlines of four generic, invented cars, from the side and from above.
//!
//! Each is a short path in thousandths of the wheelbase, x forward from the
//! rear axle, y up from the ground (from above: y in thousandths of half the
//! body's width). They are scaled by the real wheelbase and track; the wheel
//! arches are not in the data but drawn around the real wheels.

use super::number::within;
use super::outline_data::{Drawing, SALOON, SMALL_CAR, SPORTS, UTILITY};
use super::scene::{Piece, Point, at};

/// Which of the four bodies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum BodyKind {
    /// Small city car.
    SmallCar,
    /// Family saloon.
    #[default]
    Saloon,
    /// Heavy utility.
    Utility,
    /// Low sports car.
    Sports,
}

/// All bodies.
pub const BODIES: [BodyKind; 4] = [
    BodyKind::SmallCar,
    BodyKind::Saloon,
    BodyKind::Utility,
    BodyKind::Sports,
];

impl BodyKind {
    fn drawing(self) -> &'static Drawing {
        match self {
            BodyKind::SmallCar => &SMALL_CAR,
            BodyKind::Saloon => &SALOON,
            BodyKind::Utility => &UTILITY,
            BodyKind::Sports => &SPORTS,
        }
    }

    /// Height of the sill, in wheelbases.
    pub fn sill(self) -> f64 {
        self.drawing().sill / 1000.0
    }

    /// Ends of the body along the car, in wheelbases from the rear axle.
    pub fn ends(self) -> (f64, f64) {
        let (mut rear, mut front) = (0.0f64, 1.0f64);
        for piece in parse(self.drawing().plan) {
            if let Piece::Move(p) | Piece::Curve(_, _, p) = piece {
                rear = rear.min(p.x);
                front = front.max(p.x);
            }
        }
        (rear, front)
    }
}

/// Body and its lines from the side: x forward from the rear axle and y up from
/// the ground, in the unit of `wheelbase`.
pub fn side(kind: BodyKind, wheelbase: f64, wheel_radius: f64) -> (Vec<Piece>, Vec<Piece>) {
    let drawing = kind.drawing();
    let mut body = scaled(&parse(drawing.side), wheelbase, wheelbase);
    let sill = kind.sill() * wheelbase;
    // A finger's breadth between tyre and arch, concentric with the wheel.
    let arch = wheel_radius * 1.12 + 0.006 * wheelbase;
    let nose = end_of(body.last());
    let tail = end_of(body.first());
    push_arch(&mut body, at(wheelbase, wheel_radius), arch, nose.y, sill);
    push_arch(&mut body, at(0.0, wheel_radius), arch, sill, tail.y);
    body.push(Piece::Close);
    let lines = scaled(&parse(drawing.side_lines), wheelbase, wheelbase);
    (body, lines)
}

/// Body and its lines from above: x forward from the rear axle, y to the left.
pub fn plan(kind: BodyKind, wheelbase: f64, half_width: f64) -> (Vec<Piece>, Vec<Piece>) {
    let drawing = kind.drawing();
    let mut body = scaled(&parse(drawing.plan), wheelbase, half_width);
    for index in (1..body.len()).rev() {
        if let Piece::Curve(a, b, _) = body[index] {
            let back = end_of(body.get(index - 1));
            body.push(Piece::Curve(mirror(b), mirror(a), mirror(back)));
        }
    }
    body.push(Piece::Close);
    let left = scaled(&parse(drawing.plan_lines), wheelbase, half_width);
    let mut lines = left.clone();
    for piece in left {
        lines.push(match piece {
            Piece::Move(p) => Piece::Move(mirror(p)),
            Piece::Line(p) => Piece::Line(mirror(p)),
            Piece::Curve(a, b, p) => Piece::Curve(mirror(a), mirror(b), mirror(p)),
            Piece::Close => Piece::Close,
        });
    }
    (body, lines)
}

/// The same pieces with every point moved.
pub fn moved(pieces: &[Piece], place: &dyn Fn(Point) -> Point) -> Vec<Piece> {
    pieces
        .iter()
        .map(|piece| match piece {
            Piece::Move(p) => Piece::Move(place(*p)),
            Piece::Line(p) => Piece::Line(place(*p)),
            Piece::Curve(a, b, p) => Piece::Curve(place(*a), place(*b), place(*p)),
            Piece::Close => Piece::Close,
        })
        .collect()
}

fn mirror(p: Point) -> Point {
    at(p.x, -p.y)
}

fn scaled(pieces: &[Piece], x: f64, y: f64) -> Vec<Piece> {
    moved(pieces, &|p| at(p.x * x, p.y * y))
}

fn end_of(piece: Option<&Piece>) -> Point {
    match piece {
        Some(Piece::Move(p) | Piece::Line(p) | Piece::Curve(_, _, p)) => *p,
        _ => at(0.0, 0.0),
    }
}

/// Goes along the lower edge to the wheel and around it, front to back.
fn push_arch(body: &mut Vec<Piece>, hub: Point, radius: f64, front_y: f64, rear_y: f64) {
    // Unit vectors from the hub, at the feet and at the quarters of the circle.
    let foot = |y: f64| {
        let up = within((y - hub.y) / radius, -0.95, 0.95);
        at((1.0 - up * up).sqrt(), up)
    };
    let (front, rear) = (foot(front_y), foot(rear_y));
    let ways = [
        front,
        at(1.0, 0.0),
        at(0.0, 1.0),
        at(-1.0, 0.0),
        at(-rear.x, rear.y),
    ];
    let on = |way: Point, along: f64| {
        // The tangent is the radius turned by a quarter.
        hub.plus(
            radius * (way.x - along * way.y),
            radius * (way.y + along * way.x),
        )
    };
    body.push(Piece::Line(on(ways[0], 0.0)));
    for pair in ways.windows(2) {
        let (a, b) = (pair[0], pair[1]);
        // k = 4/3 tan(θ/4) makes a Bézier curve follow a circle; half angles by
        // tan(θ/2) = sin θ / (1 + cos θ)
        let half = (a.x * b.y - a.y * b.x) / (1.0 + a.x * b.x + a.y * b.y);
        let k = 4.0 / 3.0 * half / (1.0 + (1.0 + half * half).sqrt());
        body.push(Piece::Curve(on(a, k), on(b, -k), on(b, 0.0)));
    }
}

/// Reads a path. A letter that it does not know is skipped.
fn parse(path: &str) -> Vec<Piece> {
    let mut pieces = Vec::new();
    let mut numbers = [0.0; 6];
    let mut filled = 0;
    let mut letter = b'M';
    for word in path.as_bytes().split(|byte| *byte == b' ') {
        let (mut number, mut sign) = (0.0, 1.0);
        for byte in word {
            match byte {
                b'0'..=b'9' => number = number * 10.0 + f64::from(byte - b'0'),
                b'-' => sign = -1.0,
                _ => {
                    letter = *byte;
                    filled = 0;
                }
            }
        }
        if word.is_empty() || filled > 5 {
            continue;
        }
        numbers[filled] = sign * number / 1000.0;
        filled += 1;
        let [a, b, c, d, e, f] = numbers;
        let piece = match (letter, filled) {
            (b'M', 2) => Piece::Move(at(a, b)),
            (b'L', 2) => Piece::Line(at(a, b)),
            (b'C', 6) => Piece::Curve(at(a, b), at(c, d), at(e, f)),
            _ => continue,
        };
        filled = 0;
        pieces.push(piece);
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arches_are_concentric_with_the_wheels() {
        for kind in BODIES {
            let (body, _) = side(kind, 2.8, 0.33);
            let arch = 0.33 * 1.12 + 0.006 * 2.8;
            for hub_x in [0.0, 2.8] {
                let on_arch = body
                    .iter()
                    .filter(|piece| {
                        let p = end_of(Some(piece));
                        let far = axlewright_core::math::hypot(p.x - hub_x, p.y - 0.33);
                        (far - arch).abs() < 1e-9
                    })
                    .count();
                assert_eq!(on_arch, 5, "{kind:?}");
            }
        }
    }

    #[test]
    fn every_path_is_whole() {
        for kind in BODIES {
            let d = kind.drawing();
            for path in [d.side, d.side_lines, d.plan, d.plan_lines] {
                let numbers = path
                    .split(|c: char| !(c == '-' || c.is_ascii_digit()))
                    .filter(|word| !word.is_empty())
                    .count();
                let used: usize = parse(path)
                    .iter()
                    .map(|piece| match piece {
                        Piece::Curve(..) => 6,
                        Piece::Close => 0,
                        _ => 2,
                    })
                    .sum();
                assert_eq!(numbers, used, "{kind:?} {path}");
            }
        }
    }

    #[test]
    fn seen_from_above_both_halves_are_alike_and_closed() {
        for kind in BODIES {
            let (body, _) = plan(kind, 2.8, 0.9);
            let first = end_of(body.first());
            let last = end_of(body.get(body.len() - 2));
            assert!((first.x - last.x).abs() < 1e-9 && (first.y - last.y).abs() < 1e-9);
            let (left, right) = body.iter().fold((0.0f64, 0.0f64), |(l, r), piece| {
                let p = end_of(Some(piece));
                (l.max(p.y), r.min(p.y))
            });
            assert!((left + right).abs() < 1e-9);
        }
    }

    #[test]
    fn side_and_plan_have_one_length() {
        for kind in BODIES {
            let (rear, front) = kind.ends();
            let (body, _) = side(kind, 1.0, 0.12);
            let (low, high) = body.iter().fold((0.0f64, 0.0f64), |(l, h), piece| {
                let p = end_of(Some(piece));
                (l.min(p.x), h.max(p.x))
            });
            assert!((low - rear).abs() < 0.012, "{kind:?} {low} {rear}");
            assert!((high - front).abs() < 0.012, "{kind:?} {high} {front}");
        }
    }
}
