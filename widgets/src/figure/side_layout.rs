//! Where things lie in the side view: ground, car, dimensions.

use super::number::within;
use super::outline::{self};
use super::palette::Role;
use super::place::{Candidate, Placer, Rect, spot};
use super::scene::{Anchor, Mark, Piece, Point, Scene, ValueLabel, at, margin};
use super::side_view::SideView;
use super::text_metrics::{TEXT, text_width};

/// From car to page: x forward from the rear axle, y up from the ground, in metres.
pub(super) struct Frame {
    pub(super) origin: Point,
    pub(super) middle_m: f64,
    pub(super) per_m: f64,
    pub(super) grade_rad: f64,
}

impl Frame {
    pub(super) fn place(&self, x_m: f64, y_m: f64) -> Point {
        self.origin
            .plus((x_m - self.middle_m) * self.per_m, -y_m * self.per_m)
            .turned(self.origin, self.grade_rad)
    }

    /// A vector of the car (forward, up) on the page, y down.
    pub(super) fn vector(&self, forward: f64, up: f64) -> Point {
        at(forward, -up).turned(at(0.0, 0.0), self.grade_rad)
    }
}

pub(super) struct Side<'a> {
    pub(super) view: &'a SideView,
    pub(super) narrow: bool,
    pub(super) frame: Frame,
    pub(super) rear_end_m: f64,
    pub(super) front_end_m: f64,
    pub(super) placer: Placer,
    /// Labels still to be placed, most tied to their spot first.
    pub(super) waiting: Vec<(ValueLabel, Role, Vec<Candidate>)>,
    pub(super) bottom: f64,
    pub(super) width: f64,
    pub(super) top: f64,
}

impl<'a> Side<'a> {
    pub(super) fn new(view: &'a SideView, width: f64, narrow: bool, top: f64) -> Side<'a> {
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        let (rear, front) = view.body.ends();
        let (rear_end_m, front_end_m) = (rear * wheelbase, front * wheelbase);
        let share = if narrow { 0.182 } else { 0.116 };
        let longest = if narrow { 0.93 } else { 0.6 };
        let per_m = (share * width).min(longest * width / (front_end_m - rear_end_m));
        let grade_rad = within(clean(view.grade_rad), -0.6, 0.6);
        let flat = grade_rad.abs() < 1e-4;
        let mut frame = Frame {
            origin: at(width * if narrow { 0.49 } else { 0.42 }, 0.0),
            middle_m: (rear_end_m + front_end_m) / 2.0,
            // A narrow figure has no room beside the car to lean over into.
            per_m: if narrow && !flat { 0.88 * per_m } else { per_m },
            grade_rad,
        };
        let (body, _) = outline::side(view.body, wheelbase, view.wheel_radius_m);
        let mut high = 0.0f64;
        let (mut left, mut right) = (width, 0.0f64);
        for piece in &body {
            if let Piece::Move(p) | Piece::Line(p) | Piece::Curve(_, _, p) = piece {
                let p = frame.place(p.x, p.y);
                high = high.min(p.y);
                left = left.min(p.x);
                right = right.max(p.x);
            }
        }
        if !flat {
            frame.origin.x += width * if narrow { 0.5 } else { 0.45 } - (left + right) / 2.0;
            for end in [rear_end_m, front_end_m] {
                high = high.min(frame.place(end, 0.0).y - 24.0);
            }
        }
        let mut side = Side {
            view,
            narrow,
            rear_end_m,
            front_end_m,
            placer: Placer::new(Rect {
                x0: margin(width),
                y0: top + 6.0,
                x1: width - margin(width),
                y1: 4000.0,
            }),
            waiting: Vec::new(),
            bottom: 0.0,
            frame,
            width,
            top,
        };
        // What stands above the roof needs its room, and that of its words.
        let (head, _) = side.cg_dimension();
        high = high.min(head.y - if narrow { 44.0 } else { 0.0 });
        for end in side.ends_along() {
            high = high.min(end.y - 8.0);
        }
        if let Some((_, tip)) = side.drag_ends() {
            high = high.min(tip.y - 8.0);
        }
        side.frame.origin.y = (top + 26.0 - high).ceil();
        side.bottom = side.frame.origin.y;
        side
    }

    pub(super) fn lower(&mut self, p: Point) {
        self.bottom = self.bottom.max(p.y);
    }

    /// The centre of gravity on the page.
    pub(super) fn cg(&self) -> Point {
        let wheelbase = within(self.view.wheelbase_m, 0.5, 20.0);
        let x_m = wheelbase - self.view.cg_behind_front_m;
        self.frame.place(clean(x_m), clean(self.view.cg_height_m))
    }

    /// Metres that a length of the page stands for.
    pub(super) fn m(&self, units: f64) -> f64 {
        units / self.frame.per_m
    }

    pub(super) fn ground(&mut self, scene: &mut Scene) {
        let flat = self.frame.grade_rad.abs() < 1e-4;
        let half = self.width / 2.0 - margin(self.width);
        let (from, to) = if flat {
            let y = self.frame.origin.y;
            let middle = self.width / 2.0;
            (at(middle - half, y), at(middle + half, y))
        } else {
            let beyond = self.m(if self.narrow { 4.0 } else { 70.0 });
            (
                self.frame.place(self.rear_end_m - beyond, 0.0),
                self.frame.place(self.front_end_m + beyond, 0.0),
            )
        };
        scene.marks.push(Mark::Ground { from, to });
        // The band of the hatching, kept free of labels.
        let under = self.frame.vector(0.0, -5.0);
        self.placer
            .block_line(from.plus(under.x, under.y), to.plus(under.x, under.y), 5.0);
        self.lower(from.plus(0.0, 20.0));
        self.lower(to.plus(0.0, 20.0));
        if !flat {
            // The level line that the grade is measured from, at its lower end.
            let uphill = self.frame.grade_rad > 0.0;
            let low = if uphill { from } else { to };
            let long = if self.narrow { 70.0 } else { 120.0 };
            let end = low.plus(if uphill { long } else { -long }, 0.0);
            scene.marks.push(Mark::Extension { from: low, to: end });
            self.placer.block_line(low, end, 1.0);
            let anchor = if uphill { Anchor::Start } else { Anchor::End };
            self.wait(
                &ValueLabel {
                    value: String::new(),
                    words: self.view.grade_label.clone(),
                },
                Role::Soft,
                &[spot(low.x, low.y + 18.0, anchor)],
            );
        }
    }

    pub(super) fn car(&mut self, scene: &mut Scene) {
        let view = self.view;
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        let (body, lines) = outline::side(view.body, wheelbase, view.wheel_radius_m);
        let pitch = within(clean(view.pitch_rad) * view.pitch_exaggeration, -0.1, 0.1);
        // The body pitches about a point between the hubs; the wheels stay.
        let pivot = at(wheelbase / 2.0, view.wheel_radius_m);
        let frame = &self.frame;
        let place = |p: Point| {
            // y is up here, so the turn on the page is the other way round.
            let p = p.turned(pivot, -pitch);
            frame.place(p.x, p.y)
        };
        scene.marks.push(Mark::Body(outline::moved(&body, &place)));
        scene
            .marks
            .push(Mark::BodyLines(outline::moved(&lines, &place)));
        // Labels under the car must not cut into its sill.
        let reach = view.wheel_radius_m * 1.2;
        let sill = view.body.sill() * wheelbase;
        let (rear, front) = (place(at(reach, sill)), place(at(wheelbase - reach, sill)));
        self.placer.block_line(rear, front, 1.0);
        for x_m in [0.0, wheelbase] {
            let centre = self.frame.place(x_m, view.wheel_radius_m);
            let radius = view.wheel_radius_m * self.frame.per_m;
            scene.marks.push(Mark::Wheel { centre, radius });
            self.placer.block(Rect {
                x0: centre.x - radius,
                y0: centre.y - radius,
                x1: centre.x + radius,
                y1: centre.y + radius,
            });
        }
    }

    pub(super) fn dimensions(&mut self, scene: &mut Scene) {
        let view = self.view;
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        // Below the longest arrow that the scale keeps room for.
        let reserve = view
            .scale
            .units(
                view.scale
                    .largest_n
                    .max(view.front.load_n)
                    .max(view.rear.load_n),
            )
            .min(400.0);
        let depth = self.m(reserve + 34.0);
        if !view.wheelbase_label.is_empty() {
            let (from, to) = (
                self.frame.place(0.0, -depth),
                self.frame.place(wheelbase, -depth),
            );
            let gap = text_width(&view.wheelbase_label, TEXT, false) + 12.0;
            scene.marks.push(Mark::Dimension { from, to, gap });
            for (end, load_n) in [(0.0, view.rear.load_n), (wheelbase, view.front.load_n)] {
                let tail = self.m(view.scale.units(load_n).max(10.0) + 10.0);
                scene.marks.push(Mark::Extension {
                    from: self.frame.place(end, -tail),
                    to: self.frame.place(end, -depth),
                });
            }
            let middle = at((from.x + to.x) / 2.0, (from.y + to.y) / 2.0);
            let mut found = ValueLabel::default();
            found.words.clone_from(&view.wheelbase_label);
            self.put(
                scene,
                &found,
                Role::Soft,
                &[spot(middle.x, middle.y + 4.5, Anchor::Middle)],
            );
            self.placer.block_line(from, to, 2.0);
            self.lower(from);
            self.lower(to);
        }
        if !view.cg_height_label.is_empty() {
            self.cg_height(scene);
        }
    }

    /// Upper and lower end of the dimension line of the CG height, ahead of the car.
    fn cg_dimension(&self) -> (Point, Point) {
        let drag = self
            .view
            .drag
            .as_ref()
            .map_or(0.0, |drag| self.view.scale.units(drag.force_n).max(0.0));
        let mut ahead = self.m(if self.narrow { 6.0 } else { 36.0 + drag });
        if !self.narrow && self.frame.grade_rad.abs() < 1e-4 {
            // Far enough away that the front tractive force has room for its words.
            let right = self.width * 0.825 - self.frame.place(self.front_end_m, 0.0).x;
            ahead = ahead.max(self.m(right));
        }
        let x_m = self.front_end_m + ahead;
        (
            self.frame.place(x_m, clean(self.view.cg_height_m)),
            self.frame.place(x_m, 0.0),
        )
    }

    fn cg_height(&mut self, scene: &mut Scene) {
        let view = self.view;
        let (head, foot) = self.cg_dimension();
        let beyond = self.frame.vector(4.0, 0.0);
        scene.marks.push(Mark::Extension {
            from: self.cg(),
            to: head.plus(beyond.x, beyond.y),
        });
        scene.marks.push(Mark::Dimension {
            from: head,
            to: foot,
            gap: 0.0,
        });
        self.placer.block_line(head, foot, 3.0);
        let label = ValueLabel {
            value: String::new(),
            words: view.cg_height_label.clone(),
        };
        // Its words wait until the arrows have their places.
        if self.narrow {
            // Above the bonnet, tied to its line by a hairline.
            let above = at(head.x, head.y - 44.0);
            scene.marks.push(Mark::Extension {
                from: head,
                to: above,
            });
            let right = self.width - margin(self.width);
            self.wait(
                &label,
                Role::Soft,
                &[spot(right, above.y - 5.0, Anchor::End)],
            );
        } else {
            let middle = at((head.x + foot.x) / 2.0, (head.y + foot.y) / 2.0);
            self.wait(
                &label,
                Role::Soft,
                &[spot(middle.x + 10.0, middle.y + 4.5, Anchor::Start)],
            );
        }
    }
}

/// A number that can be drawn: what is not finite is nothing.
pub(super) fn clean(value: f64) -> f64 {
    if value.is_finite() { value } else { 0.0 }
}
