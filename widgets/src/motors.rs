//! Motors placed and taken away, axle by axle: the layouts that differ on one axle alone.

use crate::figure::grip::Turn;
use crate::visual::Voice;
use axlewright_core::layout::Layout;

/// The choices of the front and of the rear axle, each with the other axle as it is.
pub(crate) fn motor_turns(voice: Voice, layout: Layout) -> [Turn; 2] {
    let (front, rear) = (layout.front().motors(), layout.rear().motors());
    let turn = |label: &str, count: u8, wanted: &dyn Fn(u8) -> (u8, u8)| {
        let found = |motors: u8| {
            Layout::ALL
                .into_iter()
                .find(|l| (l.front().motors(), l.rear().motors()) == wanted(motors))
        };
        // A car needs one motor somewhere: without any on the other axle, none is no choice here.
        let first = if found(0).is_some() { 0 } else { 1 };
        Turn {
            path: "layout",
            label: voice.word(label),
            said: voice.word(match count {
                0 => "ui.motors.none",
                1 => "ui.motors.one",
                _ => "ui.motors.two",
            }),
            first,
            now: usize::from(count - first.min(count)),
            words: (first..=2).filter_map(found).map(Layout::name).collect(),
        }
    };
    [
        turn("ui.motors.front", front, &|motors| (motors, rear)),
        turn("ui.motors.rear", rear, &|motors| (front, motors)),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::visual::Look;

    #[test]
    fn every_layout_is_one_of_its_own_choices() {
        for layout in Layout::ALL {
            for turn in motor_turns(Voice::of(&Look::default()), layout) {
                assert_eq!(turn.words[turn.now], layout.name(), "{turn:?}");
                assert_eq!(turn.words.len(), usize::from(3 - turn.first), "{turn:?}");
            }
        }
    }

    #[test]
    fn the_last_motor_cannot_be_taken_away() {
        let [front, rear] = motor_turns(Voice::of(&Look::default()), Layout::R1);
        assert_eq!(front.words, ["R1", "F1R1", "F2R1"]);
        assert_eq!(rear.words, ["R1", "R2"]);
        assert_eq!((front.first, rear.first), (0, 1));
    }
}
