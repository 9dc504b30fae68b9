//! Arrows in SVG: forces, velocities, the sense of yaw.

use super::palette::Role;
use super::scene::{Point, at};
use super::svg_writer::{Writer, direction};

impl Writer {
    pub(super) fn arrow(&mut self, from: Point, to: Point, role: Role, dashed: bool) {
        let (length, along) = direction(from, to);
        if length < 0.5 {
            return;
        }
        let width = if dashed { 3.0 } else { 4.0 };
        // A short arrow keeps its true length: head and shaft shrink together.
        let head = 17.0f64.min(length);
        let half = head * 0.36;
        let neck = to.plus(-along.x * head, -along.y * head);
        if length - head > 0.5 {
            let joint = neck.plus(along.x, along.y);
            self.line(from, joint, role, width, if dashed { "8 4" } else { "" });
        }
        self.polygon(&[
            to,
            neck.plus(-along.y * half, along.x * half),
            neck.plus(along.y * half, -along.x * half),
        ]);
        self.fill(role);
        self.put("/>\n");
    }

    pub(super) fn ghost(&mut self, from: Point, to: Point, role: Role) {
        let (length, along) = direction(from, to);
        if length < 0.5 {
            return;
        }
        let head = 22.0f64.min(length);
        let neck = to.plus(-along.x * head, -along.y * head);
        let side = |p: Point, by: f64| p.plus(-along.y * by, along.x * by);
        self.polygon(&[
            side(from, 5.0),
            side(neck, 5.0),
            side(neck, head * 0.5),
            to,
            side(neck, -head * 0.5),
            side(neck, -5.0),
            side(from, -5.0),
        ]);
        self.ink(role, 1.0);
        self.dash("3 2");
        self.put("/>\n");
    }

    pub(super) fn velocity(&mut self, from: Point, vector: Point) {
        let to = from.plus(vector.x, vector.y);
        let (length, along) = direction(from, to);
        if length < 1.0 {
            return;
        }
        self.line(from, to, Role::Ink, 1.4, "4 3");
        let head = 8.0f64.min(length);
        let neck = to.plus(-along.x * head, -along.y * head);
        let half = head * 0.45;
        self.put("<path d=\"M");
        self.point(neck.plus(-along.y * half, along.x * half));
        self.put("L");
        self.point(to);
        self.put("L");
        self.point(neck.plus(along.y * half, -along.x * half));
        self.put("\"");
        self.ink(Role::Ink, 1.4);
        self.put("/>\n");
    }

    pub(super) fn yaw(&mut self, centre: Point, radius: f64, anticlockwise: bool) {
        // Three quarters of a circle, open at the top, where the head is.
        let way = if anticlockwise { 1.0 } else { -1.0 };
        let on = |angle: f64| at(centre.x + radius, centre.y).turned(centre, angle);
        let quarter = core::f64::consts::FRAC_PI_2;
        let start = on(quarter + way * 0.75);
        let end_angle = quarter + way * (core::f64::consts::TAU - 0.75);
        let head_angle = 16.0 / radius.max(16.0);
        let neck = on(end_angle - way * head_angle);
        self.put("<path d=\"M");
        self.point(start);
        self.put("A");
        self.num(radius);
        self.put(" ");
        self.num(radius);
        self.put(if anticlockwise { " 0 1 0 " } else { " 0 1 1 " });
        self.point(on(end_angle - way * head_angle * 0.9));
        self.put("\"");
        self.ink(Role::Inertia, 3.0);
        self.put("/>\n");
        let tip = on(end_angle);
        let (_, along) = direction(neck, tip);
        self.polygon(&[
            tip,
            neck.plus(-along.y * 6.0, along.x * 6.0),
            neck.plus(along.y * 6.0, -along.x * 6.0),
        ]);
        self.fill(Role::Inertia);
        self.put("/>\n");
    }
}
