//! How each meant thing looks in SVG.

use super::palette::Role;
use super::scene::{Mark, Point, at};
use super::svg_writer::{Writer, direction};

impl Writer {
    /// Writes one thing.
    pub(super) fn mark(&mut self, mark: &Mark) {
        match mark {
            Mark::ForceArrow {
                kind,
                from,
                vector_n,
                ghost,
            } => {
                let per_unit = if self.per_unit > 0.0 {
                    self.per_unit
                } else {
                    1.0
                };
                let to = from.plus(vector_n.x / per_unit, vector_n.y / per_unit);
                let role = kind.role();
                if *ghost {
                    self.ghost(*from, to, role);
                } else {
                    self.arrow(*from, to, role, kind.dashed());
                }
            }
            Mark::VelocityArrow { from, vector } => self.velocity(*from, *vector),
            Mark::YawArrow {
                centre,
                radius,
                anticlockwise,
            } => self.yaw(*centre, *radius, *anticlockwise),
            Mark::Wheel { centre, radius } => {
                self.circle(*centre, *radius);
                self.fill(Role::Paper);
                self.ink(Role::Ink, 1.6);
                self.put("/>\n");
                self.circle(*centre, radius * 0.66);
                self.ink(Role::Fine, 1.0);
                self.put("/>\n");
                self.circle(*centre, (radius * 0.14).max(2.0));
                self.ink(Role::Ink, 1.2);
                self.put("/>\n");
            }
            Mark::WheelAbove {
                centre,
                length,
                width,
                angle_rad,
            } => {
                self.turned_box(
                    *centre,
                    *length,
                    *width,
                    *angle_rad,
                    0.28 * width.min(*length),
                );
                self.fill(Role::Paper);
                self.ink(Role::Ink, if *length < 20.0 { 1.0 } else { 1.6 });
                self.put("/>\n");
            }
            Mark::Motor {
                centre,
                length,
                width,
                angle_rad,
                role,
            } => {
                self.turned_box(
                    *centre,
                    *length,
                    *width,
                    *angle_rad,
                    0.2 * width.min(*length),
                );
                self.fill(*role);
                self.put("/>\n");
            }
            Mark::Brake {
                centre,
                length,
                angle_rad,
            } => {
                for (along, across) in [(*length, 2.0), (0.45 * length, 9.0)] {
                    self.turned_box(*centre, along, across, *angle_rad, 1.0);
                    self.fill(Role::Ink);
                    self.put("/>\n");
                }
            }
            Mark::HalfShaft { from, to, role } => self.line(*from, *to, *role, 2.0, ""),
            Mark::CentreOfGravity { at, radius } => self.centre_of_gravity(*at, *radius),
            Mark::Body(pieces) => {
                self.pieces(pieces);
                self.fill(Role::Paper);
                self.ink(Role::Ink, 1.6);
                self.put("/>\n");
            }
            Mark::BodyLines(pieces) => {
                self.pieces(pieces);
                self.ink(Role::Fine, 1.0);
                self.put("/>\n");
            }
            Mark::Ground { from, to } => self.ground(*from, *to),
            Mark::Dimension { from, to, gap } => self.dimension(*from, *to, *gap),
            Mark::Extension { from, to } | Mark::Hairline { from, to } => {
                self.line(*from, *to, Role::Hair, 1.0, "");
            }
            Mark::Leader { from, to } => self.line(*from, *to, Role::Fine, 1.0, ""),
            Mark::FrictionCircle { centre, friction_n } => {
                let radius = friction_n / self.per_unit.max(1e-9);
                self.circle(*centre, radius);
                self.ink(Role::Fine, 1.0);
                self.put("/>\n");
            }
            Mark::ScaleBar { at: left, force_n } => {
                let right = left.plus(force_n / self.per_unit.max(1e-9), 0.0);
                self.put("<path d=\"");
                for (a, b) in [
                    (*left, right),
                    (left.plus(0.0, -4.0), left.plus(0.0, 4.0)),
                    (right.plus(0.0, -4.0), right.plus(0.0, 4.0)),
                ] {
                    self.put("M");
                    self.point(a);
                    self.put("L");
                    self.point(b);
                }
                self.put("\"");
                self.ink(Role::Ink, 1.2);
                self.put("/>\n");
            }
            Mark::TurningCentre { at: c } => {
                self.circle(*c, 5.0);
                self.fill(Role::Paper);
                self.ink(Role::Inertia, 1.6);
                self.put("/>\n");
                self.circle(*c, 1.6);
                self.fill(Role::Inertia);
                self.put("/>\n");
            }
            Mark::Path { points } => {
                self.line_through(points);
                self.ink(Role::Fine, 1.2);
                self.dash("10 4 2 4");
                self.put("/>\n");
            }
            Mark::Trace { points } => {
                self.line_through(points);
                self.ink(Role::Hair, 3.0);
                self.put("/>\n");
            }
            Mark::Bar {
                at: p,
                width,
                height,
                role,
                chosen,
            } => {
                self.rect(*p, width.max(0.0), height.max(0.0));
                if *chosen {
                    self.fill(*role);
                } else {
                    self.fill(Role::Hair);
                    self.ink(Role::Fine, 1.0);
                }
                self.put("/>\n");
            }
            Mark::PinnedRing { at: p } => {
                self.circle(*p, 4.5);
                self.fill(Role::Paper);
                self.ink(Role::Ink, 1.6);
                self.put("/>\n");
            }
            Mark::Reference { from, to } => self.line(*from, *to, Role::Ink, 1.2, "5 3"),
            Mark::Label(label) => self.label(label),
            Mark::CautionBox {
                at: p,
                width,
                height,
            } => {
                self.rect(*p, *width, *height);
                self.attr("rx", 2.0);
                self.ink(Role::Ink, 1.2);
                self.put("/>\n");
            }
        }
    }

    fn centre_of_gravity(&mut self, c: Point, r: f64) {
        self.circle(c, r);
        self.fill(Role::Paper);
        self.ink(Role::Ink, 1.4);
        self.put("/>\n<path d=\"");
        for sign in [1.0, -1.0] {
            self.put("M");
            self.point(c.plus(0.0, -r * sign));
            self.put("A");
            self.num(r);
            self.put(" ");
            self.num(r);
            self.put(" 0 0 1 ");
            self.point(c.plus(r * sign, 0.0));
            self.put("L");
            self.point(c);
            self.put("z");
        }
        self.put("\"");
        self.fill(Role::Ink);
        self.put("/>\n");
    }

    fn ground(&mut self, from: Point, to: Point) {
        let (length, along) = direction(from, to);
        // Strokes lean back at 45° to the ground and stop 9 units below it.
        let (lean_x, lean_y) = (-along.x - along.y, -along.y + along.x);
        self.put("<path d=\"");
        let mut s = 9.0;
        while s <= length {
            let top = from.plus(along.x * s, along.y * s);
            self.put("M");
            self.point(top);
            self.put("l");
            self.point(at(lean_x * 8.0, lean_y * 8.0));
            s += 9.0;
        }
        self.put("\"");
        self.ink(Role::Hair, 1.0);
        self.put("/>\n");
        self.line(from, to, Role::Ink, 1.6, "");
    }

    fn dimension(&mut self, from: Point, to: Point, gap: f64) {
        let (length, along) = direction(from, to);
        let part = ((length - gap) / 2.0).max(0.0);
        self.put("<path d=\"");
        for (end, way) in [(from, part), (to, -part)] {
            self.put("M");
            self.point(end);
            self.put("L");
            self.point(end.plus(along.x * way, along.y * way));
        }
        for end in [from, to] {
            self.put("M");
            self.point(end.plus(-along.y * 4.0, along.x * 4.0));
            self.put("L");
            self.point(end.plus(along.y * 4.0, -along.x * 4.0));
        }
        self.put("\"");
        self.ink(Role::Fine, 1.0);
        self.put("/>\n");
    }

    /// Begins a path through points.
    fn line_through(&mut self, points: &[Point]) {
        self.put("<path d=\"");
        for (index, point) in points.iter().enumerate() {
            self.put(if index == 0 { "M" } else { "L" });
            self.point(*point);
        }
        self.put("\"");
    }
}
