//! Scenes put together into one: side by side, or one below the other.

use super::mark::{Mark, Point};
use super::outline::moved;
use super::scene::Scene;

/// Adds a scene's things to another, moved by a vector.
pub fn add(scene: &mut Scene, part: Scene, by: Point) {
    let place = |point: Point| point.plus(by.x, by.y);
    scene
        .marks
        .extend(part.marks.into_iter().map(|mark| shifted(mark, &place)));
    scene.grips.extend(part.grips.into_iter().map(|mut grip| {
        grip.at = place(grip.at);
        grip
    }));
}

fn shifted(mut mark: Mark, place: &dyn Fn(Point) -> Point) -> Mark {
    match &mut mark {
        Mark::ForceArrow { from, .. } | Mark::VelocityArrow { from, .. } => *from = place(*from),
        Mark::YawArrow { centre, .. }
        | Mark::Wheel { centre, .. }
        | Mark::WheelAbove { centre, .. }
        | Mark::Motor { centre, .. }
        | Mark::Brake { centre, .. }
        | Mark::FrictionCircle { centre, .. } => *centre = place(*centre),
        Mark::HalfShaft { from, to, .. }
        | Mark::Ground { from, to }
        | Mark::Dimension { from, to, .. }
        | Mark::Extension { from, to }
        | Mark::Leader { from, to }
        | Mark::Reference { from, to }
        | Mark::Hairline { from, to } => (*from, *to) = (place(*from), place(*to)),
        Mark::CentreOfGravity { at, .. }
        | Mark::ScaleBar { at, .. }
        | Mark::TurningCentre { at }
        | Mark::Bar { at, .. }
        | Mark::PinnedRing { at }
        | Mark::CautionBox { at, .. } => *at = place(*at),
        Mark::Label(label) => label.at = place(label.at),
        Mark::Path { points } | Mark::Trace { points } => {
            for point in points {
                *point = place(*point);
            }
        }
        Mark::Body(pieces) | Mark::BodyLines(pieces) => *pieces = moved(pieces, place),
    }
    mark
}
