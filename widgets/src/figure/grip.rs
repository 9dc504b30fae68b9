//! Grips: what a reader can take hold of in a figure, and which inputs that moves.
//!
//! The code that draws a thing makes its grip, because it knows the scale. A grip names inputs and
//! lengths on the page only; its words and the steps and ends of its values belong to the inputs. No
//! grip is written into a file.

use super::place::Rect;
use super::scene::{Point, at};

/// Half the least breadth of a grip in scene units: 28 units are 26 CSS pixels where a narrow figure
/// is shrunk to 320.
pub const REACH: f64 = 14.0;

/// One grip.
#[derive(Clone, Debug, PartialEq)]
pub struct Grip {
    /// Its middle.
    pub at: Point,
    /// Half its width and half its height.
    pub half: Point,
    /// What it does.
    pub act: Act,
}

/// What a grip does.
#[derive(Clone, Debug, PartialEq)]
pub enum Act {
    /// Moves inputs, one for each direction in which it can be pulled.
    Slide(Vec<Slide>),
    /// Goes through words of an input: a click takes the next, a key the next or the last.
    Turn(Turn),
    /// Gives an input one word. Grips that give the same input its words are one choice.
    Choose {
        /// The input.
        path: &'static str,
        /// The word.
        word: &'static str,
        /// What a reader is told that it stands for.
        label: String,
        /// Whether it is what the figure shows.
        chosen: bool,
    },
}

/// An input that follows a grip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slide {
    /// The input.
    pub path: &'static str,
    /// How far the grip goes on the page when the value grows by one SI unit, in scene units.
    pub per_si: Point,
}

/// Words of an input that stand for counts, in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Turn {
    /// The input.
    pub path: &'static str,
    /// "motors on the front axle".
    pub label: String,
    /// The present count in words.
    pub said: String,
    /// Count that the first word stands for.
    pub first: u8,
    /// Which of the words holds now.
    pub now: usize,
    /// The words, each one more than the last.
    pub words: Vec<&'static str>,
}

impl Grip {
    /// A small grip for pulling.
    pub fn slide(place: Point, slides: Vec<Slide>) -> Grip {
        Grip {
            at: place,
            half: at(REACH, REACH),
            act: Act::Slide(slides),
        }
    }

    /// The box in which it is felt.
    pub fn rect(&self) -> Rect {
        Rect {
            x0: self.at.x - self.half.x,
            y0: self.at.y - self.half.y,
            x1: self.at.x + self.half.x,
            y1: self.at.y + self.half.y,
        }
    }

    /// The inputs that it changes.
    pub fn paths(&self) -> Vec<&'static str> {
        match &self.act {
            Act::Slide(slides) => slides.iter().map(|slide| slide.path).collect(),
            Act::Turn(turn) => vec![turn.path],
            Act::Choose { path, .. } => vec![path],
        }
    }
}

/// The place of a grip at the tip of an arrow that begins at another grip: at the tip, or as near to
/// it as leaves both within reach.
pub fn tip_clear_of(origin: Point, tip: Point, direction: Point) -> Point {
    // Grips are upright boxes: they keep apart when they do along one of the page's axes.
    let apart = 2.0 * REACH + 2.0;
    let gone = (tip.x - origin.x).abs().max((tip.y - origin.y).abs());
    if gone >= apart {
        return tip;
    }
    let least = apart / direction.x.abs().max(direction.y.abs()).max(1e-3);
    origin.plus(direction.x * least, direction.y * least)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::visual::{Drawing, Look, VISUALS, View};
    use axlewright_core::Scenario;

    fn grips(topic: usize, view: View, width: f64, changes: &[(&str, String)]) -> (Vec<Grip>, f64) {
        let visual = VISUALS[topic];
        let mut scenario: Scenario = visual.topic.example().unwrap();
        for (path, text) in changes {
            scenario.set(path, text).unwrap();
        }
        let look = Look {
            width,
            ..Look::default()
        };
        match visual.draw(&scenario, view, &look) {
            Ok(Drawing::Scene(scene)) => (scene.grips, scene.height),
            // What is refused draws nothing.
            _ => (Vec::new(), 0.0),
        }
    }

    fn keep_apart(grips: &[Grip], width: f64, height: f64, name: &str) {
        for (index, grip) in grips.iter().enumerate() {
            let rect = grip.rect();
            // At the worst, a figure of 340 units is shown 320 CSS pixels wide.
            let least = rect.x1.min(width) - rect.x0.max(0.0);
            assert!(least * 320.0 / 340.0 >= 24.0, "{name} {grip:?}");
            let least = rect.y1.min(height) - rect.y0.max(0.0);
            assert!(least * 320.0 / 340.0 >= 24.0, "{name} {grip:?}");
            for other in &grips[index + 1..] {
                assert!(!rect.overlaps(&other.rect()), "{name} {grip:?} {other:?}");
            }
        }
    }

    const WIDTHS: [f64; 4] = [340.0, 500.0, 720.0, 1000.0];

    #[test]
    fn grips_of_a_side_view_keep_apart() {
        let mut seen = 0;
        for base in axlewright_core::vehicle::DEMO_NAMES {
            for acceleration in [-1.0, -0.4, -0.05, 0.0, 0.02, 0.1, 0.3, 0.8, 1.4] {
                for grade in [-0.6, -0.2, 0.0, 0.1, 0.3, 0.9] {
                    for height in [0.2, 0.5, 0.9] {
                        for width in WIDTHS {
                            let changes = [
                                ("vehicle.base", (*base).to_owned()),
                                ("load_transfer.acceleration", format!("{acceleration} g")),
                                ("surface.grade", grade.to_string()),
                                ("vehicle.cg_height", format!("{height} m")),
                            ];
                            let name = format!("{changes:?} {width}");
                            let (found, high) = grips(0, View::Side, width, &changes);
                            assert!(found.is_empty() || found.len() == 2, "{name}");
                            keep_apart(&found, width, high, &name);
                            seen += found.len();
                        }
                    }
                }
            }
        }
        assert!(seen > 3000, "{seen}");
    }

    #[test]
    fn grips_of_plan_views_and_rows_keep_apart() {
        for base in axlewright_core::vehicle::DEMO_NAMES {
            for layout in axlewright_core::layout::Layout::NAMES {
                for width in WIDTHS {
                    let changes = [
                        ("vehicle.base", (*base).to_owned()),
                        ("layout", (*layout).to_owned()),
                    ];
                    let name = format!("{changes:?} {width}");
                    let (found, high) = grips(2, View::Plan, width, &changes);
                    assert_eq!(found.len(), 2, "{name}");
                    keep_apart(&found, width, high, &name);
                    let (found, high) = grips(1, View::Plan, width, &changes);
                    assert!(found.len() >= 3, "{name}");
                    keep_apart(&found, width, high, &name);
                }
            }
        }
    }

    #[test]
    fn a_pull_moves_the_drawing_as_far_as_its_grip_says() {
        let scenario = |height: &str| [("vehicle.cg_height", height.to_owned())];
        for width in WIDTHS {
            let (low, _) = grips(0, View::Side, width, &scenario("0.5 m"));
            let (high, _) = grips(0, View::Side, width, &scenario("0.6 m"));
            let Act::Slide(slides) = &low[0].act else {
                panic!("{low:?}")
            };
            let up = slides.iter().find(|s| s.path == "vehicle.cg_height");
            let per_si = up.expect("it moves up").per_si;
            let moved = high[0].at.y - low[0].at.y;
            assert!((moved - 0.1 * per_si.y).abs() < 1e-9, "{moved} {per_si:?}");
            assert!(moved < 0.0, "up is up");
        }
    }

    #[test]
    fn the_arrow_is_as_long_as_its_grip_says() {
        let pulled = |g: &str| [("load_transfer.acceleration", g.to_owned())];
        for width in WIDTHS {
            let (less, _) = grips(0, View::Side, width, &pulled("0.5 g"));
            let (more, _) = grips(0, View::Side, width, &pulled("0.6 g"));
            let Act::Slide(slides) = &less[1].act else {
                panic!("{less:?}")
            };
            let want = slides[0].per_si.x * 0.981;
            let moved = more[1].at.x - less[1].at.x;
            assert!((moved - want).abs() < 1e-9, "{moved} {want}");
            assert!(moved < 0.0, "forward acceleration pulls rearward");
        }
    }

    #[test]
    fn a_limit_is_no_pull() {
        let (found, _) = grips(1, View::Side, 1000.0, &[]);
        assert_eq!(found.len(), 1, "the centre of gravity alone: {found:?}");
    }
}
