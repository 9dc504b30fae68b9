//! The scene: meant things with their places.
//!
//! Places are in scene units, x to the right, y down. Drawing, theme,
//! description and label placement all work on these things and not on shapes.

use super::grip::Grip;
use super::text_metrics::{GAP, LEADING, TEXT, TITLE, text_width, wrap};

pub use super::force::{ForceKind, ForceScale, ScaleBar};
pub use super::mark::{Anchor, Label, Mark, Piece, Point, at};

/// A value with its words: drawn bold, then soft.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ValueLabel {
    /// "11 320 N".
    pub value: String,
    /// "rear axle load, 62 %".
    pub words: String,
}

impl ValueLabel {
    /// Whether there is nothing to draw.
    pub fn is_empty(&self) -> bool {
        self.value.is_empty() && self.words.is_empty()
    }

    /// Width on one line.
    pub fn width(&self) -> f64 {
        let gap = if self.value.is_empty() || self.words.is_empty() {
            0.0
        } else {
            GAP
        };
        text_width(&self.value, TEXT, true) + gap + text_width(&self.words, TEXT, false)
    }
}

/// The caution box.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Caution {
    /// "Caution".
    pub word: String,
    /// What to mind.
    pub text: String,
}

/// A figure before it is drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scene {
    /// Width in scene units.
    pub width: f64,
    /// Height in scene units.
    pub height: f64,
    /// Headline, for `<title>`.
    pub title: String,
    /// The soft line below it.
    pub subtitle: String,
    /// Text description, for `<desc>`.
    pub description: String,
    /// Newtons that one scene unit stands for; 0 where no force is drawn.
    pub newtons_per_unit: f64,
    /// The things, back to front.
    pub marks: Vec<Mark>,
    /// How many things at the beginning are the headline and the soft line below it.
    pub headline: usize,
    /// What a reader can take hold of. Never written into a file.
    pub grips: Vec<Grip>,
}

impl Scene {
    /// An empty scene with its headline drawn. Also gives the y below it.
    pub fn headed(
        width: f64,
        title: &str,
        subtitle: &str,
        description: &str,
        kept_right: f64,
    ) -> (Scene, f64) {
        let mut scene = Scene {
            width,
            title: String::from(title),
            subtitle: String::from(subtitle),
            description: String::from(description),
            ..Scene::default()
        };
        let left = margin(width);
        let room = width - 2.0 * left;
        let mut y = 8.0;
        for line in wrap(title, TITLE, true, room - kept_right) {
            y += 22.0;
            scene.label(Label {
                at: at(left, y),
                value: line,
                size: TITLE,
                ..Label::default()
            });
        }
        for line in wrap(subtitle, TEXT, false, room - kept_right) {
            y += 20.0;
            scene.label(Label {
                at: at(left, y),
                words: line,
                size: TEXT,
                ..Label::default()
            });
        }
        scene.headline = scene.marks.len();
        (scene, y)
    }

    /// Adds a text.
    pub fn label(&mut self, label: Label) {
        self.marks.push(Mark::Label(label));
    }

    /// Adds soft words.
    pub fn words(&mut self, place: Point, anchor: Anchor, words: &str) {
        self.label(Label {
            at: place,
            anchor,
            words: String::from(words),
            size: TEXT,
            rim: true,
            ..Label::default()
        });
    }

    /// Adds a line.
    pub fn hairline(&mut self, from: Point, to: Point) {
        self.marks.push(Mark::Hairline { from, to });
    }

    /// Adds the caution box below `y`, gives the y of its lower edge.
    pub fn caution(&mut self, caution: &Caution, left: f64, y: f64, width: f64) -> f64 {
        let lines = wrap(&caution.text, TEXT, false, width - 28.0);
        let widest = lines
            .iter()
            .map(|line| text_width(line, TEXT, false))
            .fold(text_width(&caution.word, TEXT, true), f64::max);
        let height = 36.0 + lines.len() as f64 * LEADING;
        self.marks.push(Mark::CautionBox {
            at: at(left, y),
            width: (widest + 28.0).min(width),
            height,
        });
        self.label(Label {
            at: at(left + 14.0, y + 23.0),
            value: caution.word.clone(),
            size: TEXT,
            ..Label::default()
        });
        for (index, line) in lines.into_iter().enumerate() {
            self.label(Label {
                at: at(left + 14.0, y + 23.0 + (index + 1) as f64 * LEADING),
                words: line,
                size: TEXT,
                ..Label::default()
            });
        }
        y + height
    }

    /// Adds the scale bar, its right end at `right`, and its label.
    pub fn scale_bar(&mut self, bar: &ScaleBar, right: f64, y: f64) {
        let text = text_width(&bar.label, TEXT, false);
        let length = bar.force_n / self.newtons_per_unit.max(1e-9);
        self.marks.push(Mark::ScaleBar {
            at: at(right - text - 8.0 - length, y - 4.5),
            force_n: bar.force_n,
        });
        self.words(at(right - text, y), Anchor::Start, &bar.label);
    }

    /// Boxes of all texts, for tests and for placing more.
    pub fn label_boxes(&self) -> Vec<super::place::Rect> {
        self.marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::Label(label) => Some(label.rect()),
                _ => None,
            })
            .collect()
    }
}

/// Margin left and right of a figure of this width.
pub fn margin(width: f64) -> f64 {
    if width < super::NARROW_BELOW {
        8.0
    } else {
        40.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headlines_wrap_inside_the_width() {
        let (scene, y) = Scene::headed(
            340.0,
            "Accelerating at 0.60 g, the rear axle carries 1.66 times the front",
            "Squat drawn 3 times larger than it is.",
            "",
            0.0,
        );
        assert!(y > 60.0);
        for rect in scene.label_boxes() {
            assert!(rect.x1 <= 340.0);
        }
    }
}
