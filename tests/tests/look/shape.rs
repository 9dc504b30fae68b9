//! Whether a box of text meets a convex shape.

use axlewright_widgets::figure::place::Rect;
use axlewright_widgets::figure::scene::{Point, at};

/// Corners of a convex shape, in order.
pub(crate) type Shape = Vec<Point>;

/// How far two shapes may reach into each other before it counts, in scene units.
const TOUCH: f64 = 0.05;

/// The corners of a box.
pub(crate) fn of_rect(rect: &Rect) -> Shape {
    vec![
        at(rect.x0, rect.y0),
        at(rect.x1, rect.y0),
        at(rect.x1, rect.y1),
        at(rect.x0, rect.y1),
    ]
}

/// The box around a shape.
pub(crate) fn bounds(shape: &[Point]) -> Rect {
    let none = Rect {
        x0: f64::MAX,
        y0: f64::MAX,
        x1: f64::MIN,
        y1: f64::MIN,
    };
    shape.iter().fold(none, |all, p| Rect {
        x0: all.x0.min(p.x),
        y0: all.y0.min(p.y),
        x1: all.x1.max(p.x),
        y1: all.y1.max(p.y),
    })
}

/// A straight stroke of a width.
pub(crate) fn stroke(from: Point, to: Point, width: f64) -> Shape {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = axlewright_core::math::hypot(dx, dy).max(1e-9);
    let (nx, ny) = (-dy / length * width / 2.0, dx / length * width / 2.0);
    vec![
        from.plus(nx, ny),
        to.plus(nx, ny),
        to.plus(-nx, -ny),
        from.plus(-nx, -ny),
    ]
}

/// A circle, as a polygon that lies on it.
pub(crate) fn disc(centre: Point, radius: f64) -> Shape {
    (0..32)
        .map(|step| {
            let angle = f64::from(step) / 32.0 * core::f64::consts::TAU;
            centre.plus(
                radius * axlewright_core::math::cos(angle),
                radius * axlewright_core::math::sin(angle),
            )
        })
        .collect()
}

/// A box that is turned about its middle, anticlockwise as seen on the page.
pub(crate) fn turned_box(centre: Point, length: f64, width: f64, angle_rad: f64) -> Shape {
    [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)]
        .iter()
        .map(|(x, y)| centre.plus(x * length, y * width).turned(centre, angle_rad))
        .collect()
}

/// Whether a box and a convex shape share more than an edge (separating axes).
pub(crate) fn meets(rect: &Rect, shape: &[Point]) -> bool {
    let text = of_rect(rect);
    let mut axes = vec![at(1.0, 0.0), at(0.0, 1.0)];
    for (index, one) in shape.iter().enumerate() {
        let next = shape[(index + 1) % shape.len()];
        let (dx, dy) = (next.x - one.x, next.y - one.y);
        let length = axlewright_core::math::hypot(dx, dy);
        if length > 1e-9 {
            axes.push(at(-dy / length, dx / length));
        }
    }
    axes.iter().all(|axis| {
        let span = |points: &[Point]| {
            points.iter().fold((f64::MAX, f64::MIN), |(low, high), p| {
                let along = p.x * axis.x + p.y * axis.y;
                (low.min(along), high.max(along))
            })
        };
        let (a, b) = (span(&text), span(shape));
        a.1 - b.0 > TOUCH && b.1 - a.0 > TOUCH
    })
}

#[test]
fn shapes_that_meet_are_told_from_those_that_do_not() {
    let text = Rect {
        x0: 0.0,
        y0: 0.0,
        x1: 100.0,
        y1: 14.0,
    };
    assert!(meets(&text, &stroke(at(50.0, -20.0), at(50.0, 30.0), 2.0)));
    assert!(meets(&text, &stroke(at(40.0, 5.0), at(60.0, 5.0), 2.0)));
    assert!(!meets(
        &text,
        &stroke(at(104.0, -20.0), at(104.0, 30.0), 2.0)
    ));
    // Past the corner: the boxes around the two overlap, the things do not.
    assert!(!meets(
        &text,
        &stroke(at(90.0, 40.0), at(140.0, -10.0), 2.0)
    ));
    assert!(!meets(&text, &disc(at(107.0, 21.0), 9.0)));
    assert!(meets(&text, &disc(at(103.0, 17.0), 9.0)));
    assert!(meets(&text, &turned_box(at(50.0, 20.0), 30.0, 30.0, 0.8)));
}
