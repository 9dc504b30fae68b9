//! Plots of a study: lines of equal value, points, parallel axes. Native alone: no page draws them.
//!
//! They share the frame of a chart: hairline grid, no box, titles with units at the axes, the finding as
//! headline. What they show is no axle and no force, so it is drawn in ink.

mod contour;
mod parallel;
mod points;

pub use contour::{Contour, contour};
pub use parallel::{Parallel, parallel};
pub use points::{Points, points};

use super::number::{nice_step, tick_text, ticks};
use super::palette::Role;
use super::place::{Rect, text_rect};
use super::scene::{Anchor, Label, Point, Scene, at, margin};
use super::svg::{SvgOptions, open};
use super::svg_writer::Writer;
use super::text_metrics::{LEADING, TEXT, text_width};

/// One axis of a plot.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ruler {
    /// Title: "CG height".
    pub title: String,
    /// Unit; empty for a pure ratio and for words.
    pub unit: String,
    /// Lower end.
    pub min: f64,
    /// Upper end.
    pub max: f64,
    /// Words in place of numbers: the first at 0, the next at 1.
    pub words: Vec<String>,
}

/// What every plot has.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Frame {
    /// Width in scene units.
    pub width: f64,
    /// Height in scene units.
    pub height: f64,
    /// The finding, drawn as headline.
    pub title: String,
    /// One soft line below it.
    pub subtitle: String,
    /// The text description.
    pub description: String,
    /// Decimal mark of the ticks.
    pub decimal_mark: char,
}

impl Ruler {
    /// An axis over the values that it must hold, a little wider than they are.
    #[must_use]
    pub fn over(title: String, unit: String, (min, max): (f64, f64)) -> Self {
        let span = max - min;
        // A single value gets some room on both sides.
        let room = if span > 0.0 {
            0.0
        } else {
            0.5 * min.abs().max(1e-3)
        };
        Self {
            title,
            unit,
            min: min - room,
            max: max + room,
            words: Vec::new(),
        }
    }

    /// The axis with some room at both ends, so that no point lies on the frame.
    #[must_use]
    pub fn with_room(mut self) -> Self {
        let room = 0.03 * (self.max - self.min);
        (self.min, self.max) = (self.min - room, self.max + room);
        self
    }

    /// An axis of words.
    #[must_use]
    pub fn of_words(title: String, words: Vec<String>) -> Self {
        Self {
            title,
            min: -0.5,
            max: words.len() as f64 - 0.5,
            words,
            ..Self::default()
        }
    }

    /// Title with its unit.
    fn head(&self) -> String {
        match (self.title.as_str(), self.unit.as_str()) {
            (title, "") => title.into(),
            (title, unit) => [title, ", ", unit].concat(),
        }
    }

    /// Where the axis has marks, and what stands at them; at most so many.
    fn marks(&self, most: usize, decimal_mark: char) -> Vec<(f64, String)> {
        if !self.words.is_empty() {
            let words = self.words.iter().enumerate();
            return words.map(|(at, word)| (at as f64, word.clone())).collect();
        }
        let step = nice_step(self.max - self.min, most);
        ticks(self.min, self.max, step)
            .into_iter()
            .map(|value| (value, tick_text(value, step, decimal_mark)))
            .collect()
    }

    fn share(&self, value: f64) -> f64 {
        (value - self.min) / (self.max - self.min)
    }
}

/// The area between the axes.
struct Area {
    rect: Rect,
    x: Ruler,
    y: Ruler,
}

impl Area {
    fn place(&self, x: f64, y: f64) -> Point {
        let Rect { x0, y0, x1, y1 } = self.rect;
        at(
            x0 + self.x.share(x) * (x1 - x0),
            y1 - self.y.share(y) * (y1 - y0),
        )
    }
}

/// Begins a plot: paper, headline, and the y below it.
fn begin(frame: &Frame, options: &SvgOptions) -> (Writer, f64) {
    let (mut scene, y) = Scene::headed(
        frame.width,
        &frame.title,
        &frame.subtitle,
        &frame.description,
        0.0,
    );
    scene.height = frame.height;
    let mut writer = Writer {
        out: String::with_capacity(65_536),
        theme: options.theme,
        per_unit: 1.0,
    };
    open(&mut writer.out, &scene, options);
    for mark in &scene.marks {
        writer.mark(mark);
    }
    (writer, y)
}

fn soft(writer: &mut Writer, place: Point, anchor: Anchor, words: String) {
    writer.label(&Label {
        at: place,
        anchor,
        words,
        size: TEXT,
        ..Label::default()
    });
}

/// Draws two axes with their grid, and gives the area between them.
fn axes(writer: &mut Writer, frame: &Frame, x: &Ruler, y: &Ruler, top: f64) -> Area {
    let left = margin(frame.width);
    let y_marks = y.marks(
        ((frame.height - top - 90.0) / 30.0).clamp(2.0, 12.0) as usize,
        frame.decimal_mark,
    );
    let widest = y_marks
        .iter()
        .map(|(_, text)| text_width(text, TEXT, false))
        .fold(12.0, f64::max);
    let area = Area {
        rect: Rect {
            x0: left + widest + 8.0,
            y0: top + 2.0 * LEADING,
            x1: frame.width - left - 8.0,
            y1: frame.height - 44.0,
        },
        x: x.clone(),
        y: y.clone(),
    };
    let Rect { x0, y0, x1, y1 } = area.rect;
    soft(writer, at(left, top + LEADING), Anchor::Start, y.head());
    for (value, text) in y_marks {
        let place = area.place(x.min, value);
        writer.line(place, at(x1, place.y), Role::Hair, 1.0, "");
        soft(writer, at(x0 - 8.0, place.y + 4.5), Anchor::End, text);
    }
    let x_marks = x_marks(x, x1 - x0, frame.decimal_mark);
    for (value, text) in x_marks {
        let place = area.place(value, y.min);
        writer.line(at(place.x, y0), at(place.x, y1 + 4.0), Role::Hair, 1.0, "");
        soft(writer, at(place.x, y1 + 18.0), Anchor::Middle, text);
    }
    writer.line(at(x0, y1), at(x1, y1), Role::Soft, 1.0, "");
    soft(writer, at(x1, y1 + 36.0), Anchor::End, x.head());
    area
}

/// The finest marks whose texts do not touch.
fn x_marks(x: &Ruler, room: f64, decimal_mark: char) -> Vec<(f64, String)> {
    let mut found = x.marks(2, decimal_mark);
    for most in 3..=12 {
        let finer = x.marks(most, decimal_mark);
        let widest = finer
            .iter()
            .map(|(_, text)| text_width(text, TEXT, false))
            .fold(0.0, f64::max);
        if finer.len() as f64 * (widest + 14.0) > room {
            break;
        }
        found = finer;
    }
    found
}

/// Puts a text where none of the others stands, the first place of those given that is free.
fn place_label(
    taken: &mut Vec<Rect>,
    area: &Rect,
    places: impl Iterator<Item = Point>,
    text: &str,
) -> Option<Point> {
    let width = text_width(text, TEXT, true);
    for place in places {
        let rect = text_rect(
            at(place.x, place.y + 4.5),
            Anchor::Middle,
            width + 8.0,
            TEXT,
        );
        if rect.inside(area) && !taken.iter().any(|other| other.overlaps(&rect)) {
            taken.push(rect);
            return Some(place);
        }
    }
    None
}

fn end(mut writer: Writer) -> String {
    writer.put("</svg>\n");
    writer.out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::Theme;

    pub(super) fn frame() -> Frame {
        Frame {
            width: 600.0,
            height: 420.0,
            title: "R1 gets 0.42 to 3.42 m/s² < more".into(),
            subtitle: "Invented vehicle.".into(),
            description: "A study.".into(),
            decimal_mark: '.',
        }
    }

    pub(super) fn options() -> SvgOptions<'static> {
        SvgOptions {
            prefix: "p",
            theme: Theme::Print,
            font_family: "sans-serif",
            metadata: "m",
            sized: true,
        }
    }

    #[test]
    fn an_axis_holds_its_values_and_a_single_value_too() {
        let one = Ruler::over("a".into(), "m".into(), (2.0, 2.0));
        assert!(one.min < 2.0 && one.max > 2.0);
        assert_eq!(one.head(), "a, m");
        let words = Ruler::of_words("b".into(), vec!["ice".into(), "snow".into()]);
        let marks = words.marks(1, '.');
        assert_eq!(marks, [(0.0, "ice".to_owned()), (1.0, "snow".to_owned())]);
        assert!((words.share(0.5) - 0.5).abs() < 1e-12);
    }

    #[test]
    fn labels_keep_clear_of_each_other() {
        let area = Rect {
            x0: 0.0,
            y0: 0.0,
            x1: 200.0,
            y1: 100.0,
        };
        let mut taken = Vec::new();
        let places = || [at(50.0, 50.0), at(150.0, 50.0)].into_iter();
        assert_eq!(
            place_label(&mut taken, &area, places(), "0.5"),
            Some(at(50.0, 50.0))
        );
        assert_eq!(
            place_label(&mut taken, &area, places(), "0.6"),
            Some(at(150.0, 50.0))
        );
        assert_eq!(place_label(&mut taken, &area, places(), "0.7"), None);
    }
}
