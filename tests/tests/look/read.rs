//! What lies where in a figure: its texts, and the things that they must keep clear of.

use crate::shape::{Shape, disc, stroke, turned_box};
use axlewright_widgets::figure::Chart;
use axlewright_widgets::figure::place::{Rect, text_rect};
use axlewright_widgets::figure::scene::{Anchor, Mark, Point, Scene, at};
use axlewright_widgets::figure::text_metrics::text_width;
use axlewright_widgets::figure::{SvgOptions, chart_svg};

/// A text on the page.
pub(crate) struct Text {
    pub(crate) says: String,
    pub(crate) rect: Rect,
    /// A paper-coloured rim: it may lie over thin lines.
    pub(crate) rim: bool,
}

/// A drawn thing.
pub(crate) struct Thing {
    pub(crate) name: &'static str,
    pub(crate) shape: Shape,
    /// Thin: a text with a rim may lie over it.
    pub(crate) thin: bool,
}

/// A figure as boxes and shapes.
#[derive(Default)]
pub(crate) struct Page {
    pub(crate) width: f64,
    pub(crate) height: f64,
    pub(crate) texts: Vec<Text>,
    pub(crate) things: Vec<Thing>,
}

impl Page {
    fn thing(&mut self, name: &'static str, thin: bool, shape: Shape) {
        self.things.push(Thing { name, shape, thin });
    }

    fn arrow(&mut self, name: &'static str, from: Point, to: Point, dashed: bool) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = axlewright_core::math::hypot(dx, dy);
        if length < 0.5 {
            return;
        }
        let head = 17.0_f64.min(length);
        let neck = to.plus(-dx / length * head, -dy / length * head);
        self.thing(
            name,
            false,
            stroke(from, neck, if dashed { 3.0 } else { 4.0 }),
        );
        let (nx, ny) = (-dy / length * head * 0.36, dx / length * head * 0.36);
        self.thing(
            name,
            false,
            vec![to, neck.plus(nx, ny), neck.plus(-nx, -ny)],
        );
    }
}

/// A scene's boxes and shapes, from its own marks.
pub(crate) fn scene(scene: &Scene) -> Page {
    let mut page = Page {
        width: scene.width,
        height: scene.height,
        ..Page::default()
    };
    let per_unit = scene.newtons_per_unit.max(1e-9);
    for mark in &scene.marks {
        add(&mut page, mark, per_unit);
    }
    page
}

fn add(page: &mut Page, mark: &Mark, per_unit: f64) {
    match mark {
        Mark::Label(label) => page.texts.push(Text {
            says: format!("{} {}", label.value, label.words),
            rect: label.rect(),
            rim: label.rim,
        }),
        Mark::ForceArrow {
            kind,
            from,
            vector_n,
            ghost,
        } => {
            let to = from.plus(vector_n.x / per_unit, vector_n.y / per_unit);
            if *ghost {
                page.thing("pinned load", false, stroke(*from, to, 10.0));
            } else {
                page.arrow("force", *from, to, kind.dashed());
            }
        }
        Mark::VelocityArrow { from, vector } => {
            page.thing(
                "velocity",
                false,
                stroke(*from, from.plus(vector.x, vector.y), 1.4),
            );
        }
        Mark::YawArrow { centre, radius, .. } => {
            // Three quarters of a circle, open at the top.
            for step in -2..=10 {
                let angle = |step: i32| f64::from(step) / 12.0 * core::f64::consts::PI;
                let on = |a: f64| {
                    centre.plus(
                        radius * axlewright_core::math::cos(a),
                        radius * axlewright_core::math::sin(a),
                    )
                };
                page.thing(
                    "yaw",
                    false,
                    stroke(on(angle(step)), on(angle(step + 1)), 3.0),
                );
            }
        }
        Mark::Wheel { centre, radius } => page.thing("wheel", false, disc(*centre, *radius)),
        Mark::WheelAbove {
            centre,
            length,
            width,
            angle_rad,
        } => page.thing(
            "wheel",
            false,
            turned_box(*centre, *length, *width, *angle_rad),
        ),
        Mark::Motor {
            centre,
            length,
            width,
            angle_rad,
            ..
        } => page.thing(
            "motor",
            false,
            turned_box(*centre, *length, *width, *angle_rad),
        ),
        Mark::Brake {
            centre,
            length,
            angle_rad,
        } => page.thing(
            "brake",
            false,
            turned_box(*centre, *length, 9.0, *angle_rad),
        ),
        Mark::HalfShaft { from, to, .. } => {
            page.thing("half shaft", false, stroke(*from, *to, 2.0));
        }
        Mark::CentreOfGravity { at, radius } => page.thing("CG", false, disc(*at, *radius)),
        Mark::PinnedRing { at } => page.thing("pinned value", false, disc(*at, 4.5)),
        Mark::TurningCentre { at } => page.thing("turning centre", false, disc(*at, 5.0)),
        Mark::Ground { from, to } => page.thing("ground", false, stroke(*from, *to, 1.6)),
        Mark::Dimension { from, to, gap } => {
            let (dx, dy) = (to.x - from.x, to.y - from.y);
            let length = axlewright_core::math::hypot(dx, dy).max(1e-9);
            let share = ((length - gap) / 2.0).max(0.0) / length;
            page.thing(
                "dimension",
                true,
                stroke(*from, from.plus(dx * share, dy * share), 1.0),
            );
            page.thing(
                "dimension",
                true,
                stroke(*to, to.plus(-dx * share, -dy * share), 1.0),
            );
        }
        Mark::Extension { from, to }
        | Mark::Hairline { from, to }
        | Mark::Leader { from, to }
        | Mark::Reference { from, to } => {
            page.thing("thin line", true, stroke(*from, *to, 1.0));
        }
        Mark::ScaleBar { at, force_n } => page.thing(
            "scale bar",
            false,
            stroke(*at, at.plus(force_n / per_unit, 0.0), 8.0),
        ),
        Mark::Bar {
            at: corner,
            width,
            height,
            ..
        } => {
            let middle = corner.plus(width / 2.0, height / 2.0);
            page.thing("bar", false, turned_box(middle, *width, *height, 0.0));
        }
        Mark::Path { points } => {
            for pair in points.windows(2) {
                page.thing("path", true, stroke(pair[0], pair[1], 1.2));
            }
        }
        // Outlines and broad pale traces that the words lie in or on: their rim cuts the line.
        Mark::Trace { .. }
        | Mark::Body(_)
        | Mark::BodyLines(_)
        | Mark::FrictionCircle { .. }
        | Mark::CautionBox { .. } => {}
    }
}

/// A chart's boxes and lines, from the SVG that is written.
pub(crate) fn chart(chart: &Chart) -> Page {
    let svg = chart_svg(chart, &SvgOptions::default());
    let mut page = Page {
        width: chart.width,
        height: chart.height,
        ..Page::default()
    };
    // A text that stands on paper of its own covers what is thin below it.
    let mut on_paper = false;
    for line in svg.lines() {
        let number = |name: &str| -> f64 {
            let text = attribute(line, name);
            text.parse().unwrap_or_else(|_| panic!("{name} in {line}"))
        };
        if line.starts_with("<text") {
            let says = text_of(line);
            let size = number("font-size");
            let bold = line.contains("font-weight");
            let anchor = match attribute(line, "text-anchor") {
                "end" => Anchor::End,
                "middle" => Anchor::Middle,
                _ => Anchor::Start,
            };
            let width = text_width(&says, size, bold);
            page.texts.push(Text {
                rect: text_rect(at(number("x"), number("y")), anchor, width, size),
                says,
                rim: on_paper,
            });
        } else if line.starts_with("<path") && line.contains("stroke-width") {
            let width = number("stroke-width");
            for run in attribute(line, "d")
                .split('M')
                .filter(|run| !run.is_empty())
            {
                let points: Vec<Point> = run.split('L').map(point).collect();
                for pair in points.windows(2) {
                    page.thing("line", width <= 1.0, stroke(pair[0], pair[1], width));
                }
            }
        } else if line.starts_with("<circle") {
            let centre = at(number("cx"), number("cy"));
            page.thing("point", false, disc(centre, number("r")));
        }
        on_paper = line.starts_with("<path") && !line.contains("stroke-width");
    }
    page
}

fn attribute<'a>(line: &'a str, name: &str) -> &'a str {
    line.split_once(&format!(" {name}=\""))
        .and_then(|(_, rest)| rest.split_once('"'))
        .map_or("", |(value, _)| value)
}

fn text_of(line: &str) -> String {
    let inside = line.split_once('>').map_or("", |(_, rest)| rest);
    let inside = inside.split_once("</text>").map_or("", |(text, _)| text);
    inside
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
}

fn point(text: &str) -> Point {
    let (x, y) = text.trim().split_once(' ').expect("two numbers");
    at(x.parse().expect("x"), y.parse().expect("y"))
}
