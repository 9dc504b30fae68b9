//! Draws only some parts of a scene: a talk builds its figure up as a hand would on a board.
//!
//! The places of things do not depend on what is drawn, so nothing jumps when a part appears.

use super::force::ForceKind;
use super::mark::Mark;
use super::palette::Role;
use super::place::Rect;
use super::scene::Scene;
use axlewright_core::talk::{Part, Parts};

/// Takes out of a scene what is not among the parts. A caution always stays.
pub fn reveal(scene: &mut Scene, parts: Parts) {
    if parts.has_whole_figure() {
        return;
    }
    let cautions: Vec<Rect> = scene.marks.iter().filter_map(caution_box).collect();
    let headline = scene.headline;
    let mut at = 0;
    scene.marks.retain(|mark| {
        let of_headline = at < headline;
        at += 1;
        match mark {
            Mark::Label(label) if cautions.iter().any(|rect| rect.holds(label.at)) => true,
            _ if of_headline => parts.has(Part::Headline),
            _ => part_of(mark).is_none_or(|part| parts.has(part)),
        }
    });
    if !parts.has(Part::Headline) {
        scene.headline = 0;
    }
    // What is not drawn cannot be taken hold of.
    let held = [Part::Cg, Part::Inertia, Part::Motors];
    if !held.into_iter().all(|part| parts.has(part)) {
        scene.grips.clear();
    }
}

fn caution_box(mark: &Mark) -> Option<Rect> {
    match mark {
        Mark::CautionBox { at, width, height } => Some(Rect {
            x0: at.x,
            y0: at.y,
            x1: at.x + width,
            y1: at.y + height,
        }),
        _ => None,
    }
}

/// The part that a thing belongs to; none for what is always drawn.
fn part_of(mark: &Mark) -> Option<Part> {
    Some(match mark {
        Mark::CautionBox { .. } => return None,
        Mark::Ground { .. } | Mark::Hairline { .. } => Part::Ground,
        Mark::Wheel { .. } | Mark::WheelAbove { .. } | Mark::Brake { .. } => Part::Wheels,
        Mark::Body(_) | Mark::BodyLines(_) => Part::Body,
        Mark::Motor { .. } | Mark::HalfShaft { .. } => Part::Motors,
        Mark::CentreOfGravity { .. } => Part::Cg,
        Mark::ForceArrow { kind, .. } => match kind {
            ForceKind::FrontLoad | ForceKind::RearLoad | ForceKind::Weight => Part::Loads,
            ForceKind::Tractive => Part::Tractive,
            ForceKind::Inertia | ForceKind::Drag => Part::Inertia,
        },
        Mark::Bar { .. } | Mark::PinnedRing { .. } | Mark::Reference { .. } => Part::Tractive,
        Mark::FrictionCircle { .. } => Part::Circles,
        Mark::VelocityArrow { .. }
        | Mark::YawArrow { .. }
        | Mark::TurningCentre { .. }
        | Mark::Path { .. }
        | Mark::Trace { .. } => Part::Motion,
        Mark::Dimension { .. } | Mark::Extension { .. } => Part::Dimensions,
        // The words of a dimension line are soft and have no value of their own.
        Mark::Label(label) if label.role == Role::Soft && label.value.is_empty() => {
            Part::Dimensions
        }
        Mark::Label(_) | Mark::Leader { .. } | Mark::ScaleBar { .. } => Part::Labels,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::visual::{Drawing, Look, VISUALS, View};

    fn scenes() -> Vec<Scene> {
        let mut scenes = Vec::new();
        for visual in VISUALS {
            let scenario = visual.topic.example().unwrap();
            for view in visual.views.iter().filter(|view| **view != View::Chart) {
                let drawing = visual.draw(&scenario, *view, &Look::default()).unwrap();
                if let Drawing::Scene(scene) = drawing {
                    scenes.push(scene);
                }
            }
        }
        scenes
    }

    #[test]
    fn every_part_that_is_added_adds_things_or_leaves_the_figure_as_it_is() {
        for whole in scenes() {
            let mut parts = Parts::NONE;
            let mut before = Vec::new();
            for part in Part::ALL {
                parts = parts.with(part);
                let mut scene = whole.clone();
                reveal(&mut scene, parts);
                let kept = |mark| scene.marks.contains(mark);
                assert!(before.iter().all(kept), "{}: {}", whole.title, part.word());
                before = scene.marks;
            }
            assert_eq!(before, whole.marks, "{}", whole.title);
        }
    }

    #[test]
    fn the_caution_is_always_there() {
        let box_of = |scene: &Scene| scene.marks.iter().find_map(caution_box);
        let mut scenes = scenes();
        scenes.retain(|scene| box_of(scene).is_some());
        assert!(!scenes.is_empty(), "no figure with a caution");
        for whole in scenes {
            let mut scene = whole.clone();
            reveal(&mut scene, Parts::NONE);
            assert_eq!(box_of(&scene), box_of(&whole), "{}", whole.title);
            let words = scene.label_boxes();
            assert!(
                words.len() >= 2,
                "{}: the caution lost its words",
                whole.title
            );
            assert_eq!(scene.marks.len(), words.len() + 1, "{}", whole.title);
        }
    }
}
