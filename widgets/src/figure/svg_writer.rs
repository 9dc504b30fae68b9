//! The strokes that SVG marks are made of.

use super::number::push_coord;
use super::palette::{Role, Theme};
use super::scene::{Anchor, Label, Piece, Point, at};
use super::svg::push_escaped;
use super::text_metrics::GAP;

/// Collects the text.
pub(super) struct Writer {
    pub(super) out: String,
    pub(super) theme: Theme,
    pub(super) per_unit: f64,
}

impl Writer {
    pub(super) fn put(&mut self, text: &str) {
        self.out.push_str(text);
    }

    pub(super) fn num(&mut self, value: f64) {
        push_coord(&mut self.out, value);
    }

    pub(super) fn attr(&mut self, name: &str, value: f64) {
        self.put(" ");
        self.put(name);
        self.put("=\"");
        self.num(value);
        self.put("\"");
    }

    pub(super) fn point(&mut self, p: Point) {
        self.num(p.x);
        self.put(" ");
        self.num(p.y);
    }

    pub(super) fn ink(&mut self, stroke: Role, width: f64) {
        self.put(" stroke=\"");
        self.put(self.theme.stroke(stroke));
        self.put("\"");
        self.attr("stroke-width", width);
    }

    pub(super) fn fill(&mut self, role: Role) {
        self.put(" fill=\"");
        self.put(self.theme.stroke(role));
        self.put("\"");
    }

    pub(super) fn dash(&mut self, pattern: &str) {
        self.put(" stroke-dasharray=\"");
        self.put(pattern);
        self.put("\"");
    }

    pub(super) fn line(&mut self, from: Point, to: Point, role: Role, width: f64, pattern: &str) {
        self.put("<path d=\"M");
        self.point(from);
        self.put("L");
        self.point(to);
        self.put("\"");
        self.ink(role, width);
        if !pattern.is_empty() {
            self.dash(pattern);
        }
        self.put("/>\n");
    }

    pub(super) fn polygon(&mut self, points: &[Point]) {
        self.put("<path d=\"");
        for (index, point) in points.iter().enumerate() {
            self.put(if index == 0 { "M" } else { "L" });
            self.point(*point);
        }
        self.put("z\"");
    }

    pub(super) fn circle(&mut self, centre: Point, radius: f64) {
        self.put("<circle");
        self.attr("cx", centre.x);
        self.attr("cy", centre.y);
        self.attr("r", radius.max(0.0));
    }

    pub(super) fn pieces(&mut self, pieces: &[Piece]) {
        self.put("<path d=\"");
        for piece in pieces {
            match piece {
                Piece::Move(p) => {
                    self.put("M");
                    self.point(*p);
                }
                Piece::Line(p) => {
                    self.put("L");
                    self.point(*p);
                }
                Piece::Curve(a, b, p) => {
                    self.put("C");
                    self.point(*a);
                    self.put(" ");
                    self.point(*b);
                    self.put(" ");
                    self.point(*p);
                }
                Piece::Close => self.put("z"),
            }
        }
        self.put("\"");
    }

    pub(super) fn rect(&mut self, corner: Point, width: f64, height: f64) {
        self.put("<rect");
        self.attr("x", corner.x);
        self.attr("y", corner.y);
        self.attr("width", width);
        self.attr("height", height);
    }

    pub(super) fn turned_box(&mut self, c: Point, length: f64, width: f64, angle: f64, round: f64) {
        self.rect(c.plus(-length / 2.0, -width / 2.0), length, width);
        self.attr("rx", round);
        if angle.abs() > 1e-4 {
            self.put(" transform=\"rotate(");
            self.num(-angle.to_degrees());
            self.put(" ");
            self.point(c);
            self.put(")\"");
        }
    }

    pub(super) fn label(&mut self, label: &Label) {
        if label.value.is_empty() && label.words.is_empty() {
            return;
        }
        self.put("<text");
        self.attr("x", label.at.x);
        self.attr("y", label.at.y);
        self.attr("font-size", label.size);
        match label.anchor {
            Anchor::Start => {}
            Anchor::Middle => self.put(" text-anchor=\"middle\""),
            Anchor::End => self.put(" text-anchor=\"end\""),
        }
        if label.rim {
            self.put(" paint-order=\"stroke\"");
            self.ink(Role::Paper, 6.0);
        }
        self.put(">");
        if !label.value.is_empty() {
            self.put("<tspan font-weight=\"600\" fill=\"");
            self.put(self.theme.text(label.role));
            self.put("\">");
            push_escaped(&mut self.out, &label.value);
            self.put("</tspan>");
        }
        if !label.words.is_empty() {
            self.put("<tspan");
            if !label.value.is_empty() {
                self.attr("dx", GAP);
            }
            self.put(" fill=\"");
            self.put(self.theme.text(Role::Soft));
            self.put("\">");
            push_escaped(&mut self.out, &label.words);
            self.put("</tspan>");
        }
        self.put("</text>\n");
    }
}

/// Length and unit vector.
pub(super) fn direction(from: Point, to: Point) -> (f64, Point) {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = (dx * dx + dy * dy).sqrt();
    if length > 1e-9 && length.is_finite() {
        (length, at(dx / length, dy / length))
    } else {
        (0.0, at(1.0, 0.0))
    }
}
