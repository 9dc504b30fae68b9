//! Bars: one row per layout, with its plan glyph, its value and its reason.

use super::grip::{Act, Grip};
use super::number::{nice_step, tick_text, ticks, within};
use super::outline::BodyKind;
use super::palette::Role;
use super::place::Rect;
use super::plan_glyph::push_glyph;
use super::scene::{Anchor, Caution, Label, Mark, Point, Scene, at, margin};
use super::text_metrics::{LEADING, TEXT, text_width, wrap};

/// One row.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BarRow {
    /// Name of the layout: "F1R1".
    pub name: String,
    /// Motors on the front axle, for the glyph.
    pub front_motors: u8,
    /// Motors on the rear axle, for the glyph.
    pub rear_motors: u8,
    /// Length of the bar on the axis.
    pub value: f64,
    /// The value as text, with unit.
    pub value_text: String,
    /// Why it is what it is, in soft words.
    pub reason: String,
    /// Its value in the pinned state, drawn as a ring.
    pub pinned: Option<f64>,
    /// The row that is chosen or present: drawn full, the others lighter.
    pub chosen: bool,
    /// Input and word that choose the row; none where it cannot be chosen.
    pub choice: Option<(&'static str, &'static str)>,
}

/// A labelled line across the rows: "friction 0.85".
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BarReference {
    /// Where on the axis.
    pub value: f64,
    /// Its label.
    pub label: String,
}

/// What the bars show.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Bars {
    /// Width of the figure in scene units.
    pub width: f64,
    /// The finding, drawn as headline.
    pub title: String,
    /// One soft line below it.
    pub subtitle: String,
    /// The text description.
    pub description: String,
    /// Outline used for the glyphs.
    pub body: BodyKind,
    /// Axis title with unit.
    pub axis_title: String,
    /// Largest value on the axis; it starts at 0.
    pub axis_max: f64,
    /// Decimal mark of the ticks: '.' or ','.
    pub decimal_mark: char,
    /// Colour of the chosen bar, by meaning.
    pub role: Role,
    /// Rows, top to bottom.
    pub rows: Vec<BarRow>,
    /// Reference lines.
    pub references: Vec<BarReference>,
    /// The caution, where the physics can hurt someone.
    pub caution: Option<Caution>,
}

/// Where the bars lie.
struct Ruler {
    left: f64,
    length: f64,
    max: f64,
}

impl Ruler {
    fn x(&self, value: f64) -> f64 {
        let share = if value.is_finite() {
            within(value / self.max, 0.0, 1.0)
        } else {
            0.0
        };
        self.left + share * self.length
    }
}

/// Lays out the bars.
pub fn bars(view: &Bars) -> Scene {
    let width = within(view.width, 300.0, 2000.0);
    let narrow = width < super::NARROW_BELOW;
    let (mut scene, top) =
        Scene::headed(width, &view.title, &view.subtitle, &view.description, 0.0);
    let (left, right) = (margin(width), width - margin(width));
    let name_width = view
        .rows
        .iter()
        .map(|row| text_width(&row.name, TEXT, true))
        .fold(0.0, f64::max);
    let value_width = view
        .rows
        .iter()
        .map(|row| text_width(&row.value_text, TEXT, true))
        .fold(0.0, f64::max);
    let bar_left = if narrow {
        left
    } else {
        left + 90.0 + name_width + 20.0
    };
    let bar_right = if narrow {
        right
    } else {
        right - value_width - 12.0
    };
    let ruler = Ruler {
        left: bar_left,
        length: (bar_right - bar_left).max(20.0),
        max: if view.axis_max > 0.0 && view.axis_max.is_finite() {
            view.axis_max
        } else {
            1.0
        },
    };
    let first = references_top(&mut scene, view, &ruler, top + 10.0, right);
    let mut y = first;
    let mut rows = Vec::new();
    for row in &view.rows {
        let start = y;
        y = row_height(row, narrow, start, right - bar_left);
        rows.push((row, start, y));
    }
    axis(&mut scene, view, &ruler, first, y, narrow);
    for (row, start, _) in &rows {
        bar(&mut scene, view, row, &ruler, *start, narrow);
    }
    for reference in &view.references {
        let x = ruler.x(reference.value);
        if !narrow {
            scene.marks.push(Mark::Reference {
                from: at(x, first - 4.0),
                to: at(x, y),
            });
            continue;
        }
        // In a narrow figure the text stands in the way: the line is drawn at
        // the bars alone.
        scene.marks.push(Mark::Reference {
            from: at(x, first - 6.0),
            to: at(x, first + 2.0),
        });
        for (_, start, _) in &rows {
            scene.marks.push(Mark::Reference {
                from: at(x, start + 35.0),
                to: at(x, start + 61.0),
            });
        }
    }
    for (row, start, _) in &rows {
        row_text(&mut scene, view, row, &ruler, *start, narrow, right);
    }
    for (row, start, end) in &rows {
        grip(&mut scene, row, at(left, *start), at(right, *end));
    }
    y += 44.0;
    if let Some(caution) = &view.caution {
        y = scene.caution(caution, left, y + 6.0, right - left) + 10.0;
    }
    scene.height = y.ceil();
    scene
}

/// Writes the labels of the reference lines, gives the y where rows start.
fn references_top(scene: &mut Scene, view: &Bars, ruler: &Ruler, top: f64, right: f64) -> f64 {
    let mut y = top;
    let mut placed: Vec<Rect> = Vec::new();
    let mut lowest = top;
    for reference in &view.references {
        let wide = text_width(&reference.label, TEXT, false);
        let half = wide / 2.0;
        let x = within(
            ruler.x(reference.value),
            margin(scene.width) + half,
            (right - half).max(margin(scene.width) + half),
        );
        let rect = |y: f64| super::place::text_rect(at(x, y), Anchor::Middle, wide + 8.0, TEXT);
        y = top + LEADING;
        while placed.iter().any(|other| other.overlaps(&rect(y))) {
            y += LEADING;
        }
        placed.push(rect(y));
        lowest = lowest.max(y);
        scene.words(at(x, y), Anchor::Middle, &reference.label);
    }
    if y > top { lowest + 12.0 } else { top + 8.0 }
}

const ROW: f64 = 52.0;

fn row_height(row: &BarRow, narrow: bool, start: f64, room: f64) -> f64 {
    let lines = wrap(&row.reason, TEXT, false, room).len().max(1) as f64;
    if narrow {
        start + 64.0 + lines * LEADING
    } else {
        start + ROW + (lines - 1.0) * LEADING
    }
}

fn axis(scene: &mut Scene, view: &Bars, ruler: &Ruler, top: f64, bottom: f64, narrow: bool) {
    // As many ticks as their numbers leave room for.
    let mut step = nice_step(ruler.max, 2);
    for most in 3..=if narrow { 4 } else { 8 } {
        let finer = nice_step(ruler.max, most);
        let number = tick_text(ruler.max, finer, view.decimal_mark);
        if text_width(&number, TEXT, false) + 10.0 < finer / ruler.max * ruler.length {
            step = finer;
        }
    }
    for value in ticks(0.0, ruler.max, step) {
        let x = ruler.x(value);
        if !narrow {
            scene.hairline(at(x, top), at(x, bottom + 4.0));
        }
        let anchor = if narrow && value < step * 0.5 {
            Anchor::Start
        } else if narrow && x > scene.width - 20.0 {
            Anchor::End
        } else {
            Anchor::Middle
        };
        scene.words(
            at(x, bottom + 18.0),
            anchor,
            &tick_text(value, step, view.decimal_mark),
        );
    }
    scene.words(
        at(ruler.left + ruler.length, bottom + 36.0),
        Anchor::End,
        &view.axis_title,
    );
}

fn bar(scene: &mut Scene, view: &Bars, row: &BarRow, ruler: &Ruler, y: f64, narrow: bool) {
    let glyph_x = margin(scene.width) + 36.0;
    push_glyph(
        scene,
        view.body,
        row.front_motors,
        row.rear_motors,
        at(glyph_x, y + if narrow { 20.0 } else { 21.0 }),
        14.0,
    );
    scene.marks.push(Mark::Bar {
        at: at(ruler.left, y + if narrow { 42.0 } else { 8.0 }),
        width: ruler.x(row.value) - ruler.left,
        height: 12.0,
        role: view.role,
        chosen: row.chosen,
    });
    if let Some(pinned) = row.pinned {
        scene.marks.push(Mark::PinnedRing {
            at: at(ruler.x(pinned), y + if narrow { 48.0 } else { 14.0 }),
        });
    }
}

fn row_text(
    scene: &mut Scene,
    view: &Bars,
    row: &BarRow,
    ruler: &Ruler,
    y: f64,
    narrow: bool,
    right: f64,
) {
    let name = Label {
        at: at(
            margin(scene.width) + 84.0,
            y + if narrow { 25.0 } else { 26.0 },
        ),
        value: row.name.clone(),
        size: TEXT,
        rim: true,
        ..Label::default()
    };
    let value = Label {
        at: if narrow {
            at(right, y + 25.0)
        } else {
            value_place(view, row, ruler, y)
        },
        anchor: if narrow { Anchor::End } else { Anchor::Start },
        value: row.value_text.clone(),
        size: TEXT,
        rim: true,
        ..Label::default()
    };
    scene.label(name);
    scene.label(value);
    let start = y + if narrow { 54.0 } else { 20.0 };
    for (index, line) in wrap(&row.reason, TEXT, false, right - ruler.left)
        .iter()
        .enumerate()
    {
        scene.words(
            at(ruler.left, start + (index + 1) as f64 * LEADING - 2.0),
            Anchor::Start,
            line,
        );
    }
}

/// The whole row is a handle that chooses it.
fn grip(scene: &mut Scene, row: &BarRow, from: Point, to: Point) {
    if let Some((path, word)) = row.choice {
        scene.grips.push(Grip {
            at: at((from.x + to.x) / 2.0, (from.y + to.y) / 2.0),
            half: at((to.x - from.x) / 2.0, (to.y - from.y) / 2.0),
            act: Act::Choose {
                path,
                word,
                label: [row.name.as_str(), &row.value_text, &row.reason].join(", "),
                chosen: row.chosen,
            },
        });
    }
}

/// At the end of the bar, clear of the reference lines.
fn value_place(view: &Bars, row: &BarRow, ruler: &Ruler, y: f64) -> Point {
    let wide = text_width(&row.value_text, TEXT, true);
    let mut x = ruler.x(row.value) + 8.0;
    // Clear of one line, it may come to stand on the next.
    let lines = || view.references.iter().map(|r| r.value).chain(row.pinned);
    for _ in lines() {
        for value in lines() {
            let line = ruler.x(value);
            if line > x - 5.0 && line < x + wide + 5.0 {
                x = line + 8.0;
            }
        }
    }
    at(x, y + 18.5)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn case(width: f64, seed: u32) -> Bars {
        let share = |index: u32| f64::from((seed * 29 + index * 41) % 121) / 100.0;
        Bars {
            width,
            title: "Two motors behind and one in front use nearly all the grip".into(),
            subtitle: "Largest acceleration from rest.".into(),
            axis_title: "acceleration, g".into(),
            axis_max: 1.2,
            rows: (0..5)
                .map(|index| BarRow {
                    name: format!("F1R{index}"),
                    front_motors: 1,
                    rear_motors: (index % 3) as u8,
                    value: share(index),
                    value_text: format!("{:.2} g", share(index)),
                    reason: "The front axle loses load just when it is to push hard.".into(),
                    pinned: (index % 2 == 0).then(|| share(index + 7)),
                    chosen: index == 2,
                    choice: Some(("layout", "F1")),
                })
                .collect(),
            references: (0..3)
                .map(|index| BarReference {
                    value: share(index + 7),
                    label: format!("reference {:.2}", share(index + 7)),
                })
                .collect(),
            ..Bars::default()
        }
    }

    #[test]
    fn labels_never_overlap_and_stay_on_the_page() {
        for seed in 0..121 {
            for width in [340.0, 500.0, 720.0, 1000.0] {
                let scene = bars(&case(width, seed));
                let boxes = scene.label_boxes();
                for (index, one) in boxes.iter().enumerate() {
                    assert!(one.x0 >= 0.0 && one.x1 <= width, "{seed} {width} {one:?}");
                    assert!(one.y0 >= 0.0 && one.y1 <= scene.height);
                    for other in &boxes[index + 1..] {
                        assert!(!one.overlaps(other), "{seed} {width} {one:?} {other:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn bars_are_as_long_as_their_values() {
        let view = case(1000.0, 5);
        let lengths: Vec<f64> = bars(&view)
            .marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::Bar { width, .. } => Some(*width),
                _ => None,
            })
            .collect();
        assert_eq!(lengths.len(), 5);
        for (row, length) in view.rows.iter().zip(&lengths) {
            let first = lengths[0] / view.rows[0].value;
            assert!((length - row.value * first).abs() < 1e-6);
        }
    }
}
