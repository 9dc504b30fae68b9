//! Where things lie in the plan view: car, axles, friction circles.

use super::angle::sin_cos;
use super::grip::{Act, Grip, REACH};
use super::number::within;
use super::outline::{self};
use super::palette::Role;
use super::place::{Candidate, Placer, Rect};
use super::scene::{Mark, Point, Scene, ValueLabel, at, margin};

use super::plan_view::{PlanView, Rest};

/// Where a car is on the page, seen from above.
pub(crate) struct Frame {
    /// The point that stays when the heading changes.
    pub(super) pivot: Point,
    /// The same point in car axes: ahead of the rear axle, left of the middle.
    pub(super) pivot_m: Point,
    /// Scene units per metre.
    pub(crate) per_m: f64,
    pub(crate) heading_rad: f64,
}

impl Frame {
    /// A point ahead of the rear axle and left of the middle \[m\], on the page.
    pub(crate) fn place(&self, forward_m: f64, left_m: f64) -> Point {
        self.pivot
            .plus(
                (forward_m - self.pivot_m.x) * self.per_m,
                -(left_m - self.pivot_m.y) * self.per_m,
            )
            .turned(self.pivot, self.heading_rad)
    }

    pub(super) fn vector(&self, forward: f64, left: f64) -> Point {
        at(forward, -left).turned(at(0.0, 0.0), self.heading_rad)
    }
}

pub(super) struct Plan<'a> {
    pub(super) view: &'a PlanView,
    pub(super) frame: Frame,
    pub(super) bounds: Rect,
    pub(super) placer: Placer,
    /// Label, colour, wishes, and the sign that it belongs to where a hairline
    /// is to tie them.
    pub(super) waiting: Vec<(ValueLabel, Role, Vec<Candidate>, Option<Point>)>,
    pub(super) hubs: [Point; 4],
    pub(super) narrow: bool,
    /// The words of the turning centre stand in the text below, for want of room in the drawing.
    pub(super) centre_in_text: bool,
}

pub(super) fn half_width(view: &PlanView) -> f64 {
    let front = view.track_front_m + view.tyre_width_front_m;
    let rear = view.track_rear_m + view.tyre_width_rear_m;
    front.max(rear).max(0.5) / 2.0 + 0.03
}

impl<'a> Plan<'a> {
    pub(super) fn new(view: &'a PlanView, width: f64, narrow: bool, top: f64) -> Plan<'a> {
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        let (rear, front) = view.body.ends();
        let (rear, front) = (rear * wheelbase, front * wheelbase);
        let left = margin(width);
        let has_text = !view.legend.is_empty() || !view.notes.is_empty() || view.caution.is_some();
        let region = if narrow || !has_text {
            width - 2.0 * left
        } else {
            width * 0.54 - left
        };
        let half_m = half_width(view);
        let cg_m = at(wheelbase - view.cg_behind_front_m, 0.0);
        let mut pivot_m = cg_m;
        // A car that is to turn stays where its CG is, whatever point it turns about at the moment.
        if let Some(centre) = view.turning_centre.as_ref().filter(|_| !view.turning_room) {
            let (f, l) = (centre.forward_m, centre.left_m);
            if f.abs() < 3.0 && l.abs() < 3.0 {
                pivot_m = at(cg_m.x + f, l);
            }
        }
        // How far circles and arrows reach out of the car.
        let mut reach = 0.0f64;
        let mut labelled = false;
        for wheel in &view.wheels {
            reach = reach.max(view.scale.units(wheel.friction_n.unwrap_or(0.0)));
            for (f, l) in [wheel.force_n, wheel.ghost_n].into_iter().flatten() {
                reach = reach.max(view.scale.units((f * f + l * l).sqrt()));
            }
            labelled |= !wheel.label.is_empty();
        }
        let reach = reach.min(region / 3.0);
        let edge = if labelled { 22.0 } else { 4.0 };
        let turned = view.turning_room || view.heading_rad.abs() > 1e-3;
        let share = if narrow { 0.155 } else { 0.09 };
        let (per_m, half_height, pivot_x);
        if turned {
            let far_x = (front - pivot_m.x).abs().max((pivot_m.x - rear).abs());
            let far_y = half_m * 0.8 + pivot_m.y.abs();
            let far = (far_x * far_x + far_y * far_y).sqrt();
            // The corners of a body are round, so wheels with circles reach as far.
            let room = region / 2.0 - 8.0;
            per_m = (share * width).min(room / far);
            half_height = (far * per_m)
                .max(reach + (half_m + wheelbase / 2.0) * per_m * 0.9)
                .min(room)
                + edge;
            pivot_x = left + region / 2.0;
        } else {
            let ahead = (front - wheelbase).max(0.0);
            let behind = (-rear).max(0.0);
            let length = front - rear;
            let room = region - 16.0;
            let mut scale = (share * width).min(room / length);
            // Circles may reach past the ends of the body.
            let past = (reach - ahead.min(behind) * scale).max(0.0) * 2.0;
            scale = scale.min((room - past) / length);
            per_m = scale;
            half_height = (half_m.max(view.reach_aside_m) * per_m)
                .max(view.track_front_m.max(view.track_rear_m) / 2.0 * per_m + reach)
                + edge;
            let middle = (front + rear) / 2.0;
            pivot_x = left + region / 2.0 + (pivot_m.x - middle) * per_m;
        }
        let middle_y = top + 16.0 + half_height;
        let frame = Frame {
            pivot: at(
                pivot_x,
                middle_y + if turned { 0.0 } else { -pivot_m.y * per_m },
            ),
            pivot_m,
            per_m,
            heading_rad: if view.heading_rad.is_finite() {
                view.heading_rad
            } else {
                0.0
            },
        };
        let bounds = Rect {
            x0: left,
            y0: top + 8.0,
            x1: left + region,
            y1: middle_y + half_height + 8.0,
        };
        let (f, r) = (view.track_front_m / 2.0, view.track_rear_m / 2.0);
        let hubs = [
            frame.place(wheelbase, f),
            frame.place(wheelbase, -f),
            frame.place(0.0, r),
            frame.place(0.0, -r),
        ];
        Plan {
            view,
            frame,
            bounds,
            placer: Placer::new(bounds),
            waiting: Vec::new(),
            hubs,
            narrow,
            centre_in_text: narrow,
        }
    }

    pub(super) fn cg(&self) -> Point {
        let wheelbase = within(self.view.wheelbase_m, 0.5, 20.0);
        self.frame
            .place(wheelbase - self.view.cg_behind_front_m, 0.0)
    }

    pub(super) fn circles(&self, scene: &mut Scene) {
        for (wheel, hub) in self.view.wheels.iter().zip(self.hubs) {
            if let Some(friction_n) = wheel.friction_n {
                scene.marks.push(Mark::FrictionCircle {
                    centre: hub,
                    friction_n: friction_n.max(0.0),
                });
            }
        }
    }

    pub(super) fn car(&mut self, scene: &mut Scene) {
        let view = self.view;
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        let (body, lines) = outline::plan(view.body, wheelbase, half_width(view));
        let place = |p: Point| self.frame.place(p.x, p.y);
        scene.marks.push(Mark::Body(outline::moved(&body, &place)));
        scene
            .marks
            .push(Mark::BodyLines(outline::moved(&lines, &place)));
        // Again over the body, which is filled: the circle must be whole.
        self.circles(scene);
        for (x_m, motors, track, role, rest) in [
            (
                wheelbase,
                view.front_motors,
                view.track_front_m,
                Role::Front,
                view.wheels[0].rest,
            ),
            (
                0.0,
                view.rear_motors,
                view.track_rear_m,
                Role::Rear,
                view.wheels[2].rest,
            ),
        ] {
            let role = match rest {
                Rest::Drives => role,
                Rest::Idles | Rest::Parted => Role::Fine,
            };
            let cut = rest == Rest::Parted;
            self.axle(scene, x_m, motors, track / 2.0, (role, cut));
        }
        for (index, (wheel, hub)) in view.wheels.iter().zip(self.hubs).enumerate() {
            let tyre = if index < 2 {
                view.tyre_width_front_m
            } else {
                view.tyre_width_rear_m
            };
            let (length, breadth) = (
                2.0 * view.wheel_radius_m * self.frame.per_m,
                tyre * self.frame.per_m,
            );
            scene.marks.push(Mark::WheelAbove {
                centre: hub,
                length,
                width: breadth,
                angle_rad: self.frame.heading_rad + wheel.steer_rad,
            });
            if wheel.braked {
                // Beside the tyre, on the side of the car.
                let aside_m = 0.5 * tyre + 8.0 / self.frame.per_m;
                let inward_m = if index % 2 == 0 { -aside_m } else { aside_m };
                let (sin, cos) = sin_cos(wheel.steer_rad);
                let by = self.frame.vector(
                    -sin * inward_m * self.frame.per_m,
                    cos * inward_m * self.frame.per_m,
                );
                scene.marks.push(Mark::Brake {
                    centre: hub.plus(by.x, by.y),
                    length: 0.62 * length,
                    angle_rad: self.frame.heading_rad + wheel.steer_rad,
                });
            }
            let half = length / 2.0;
            self.placer.block(Rect {
                x0: hub.x - half,
                y0: hub.y - half,
                x1: hub.x + half,
                y1: hub.y + half,
            });
        }
        let cg = self.cg();
        scene.marks.push(Mark::CentreOfGravity {
            at: cg,
            radius: 6.0,
        });
        self.placer.block(Rect {
            x0: cg.x - 7.0,
            y0: cg.y - 7.0,
            x1: cg.x + 7.0,
            y1: cg.y + 7.0,
        });
    }

    /// A handle on the motors of each axle, or on the place for them.
    pub(super) fn grips(&self, scene: &mut Scene) {
        let Some(turns) = &self.view.motor_turns else {
            return;
        };
        let wheelbase = within(self.view.wheelbase_m, 0.5, 20.0);
        let (sin, cos) = sin_cos(self.frame.heading_rad);
        // Half the box of two drive units side by side, upright on the page also when the car is not.
        let (along, across) = (0.24 * self.frame.per_m, 0.54 * self.frame.per_m);
        let half = at(
            (along * cos.abs() + across * sin.abs()).max(REACH),
            (along * sin.abs() + across * cos.abs()).max(REACH),
        );
        for (turn, x_m) in turns.iter().zip([wheelbase, 0.0]) {
            scene.grips.push(Grip {
                at: self.frame.place(x_m, 0.0),
                half,
                act: Act::Turn(turn.clone()),
            });
        }
    }

    pub(super) fn axle(
        &mut self,
        scene: &mut Scene,
        x_m: f64,
        motors: u8,
        half_track_m: f64,
        (role, cut): (Role, bool),
    ) {
        if motors == 0 {
            return;
        }
        let (one, other) = (self.frame.place(x_m, 0.4), self.frame.place(x_m, -0.4));
        self.placer.block_line(one, other, 0.2 * self.frame.per_m);
        let frame = &self.frame;
        for side in [1.0, -1.0] {
            let end_m = half_track_m - 0.1;
            // A disconnect leaves the wheel's end of the shaft turning alone.
            let parts: &[(f64, f64)] = if cut {
                &[(0.0, 0.62), (0.82, 1.0)]
            } else {
                &[(0.0, 1.0)]
            };
            for (from, to) in parts {
                scene.marks.push(Mark::HalfShaft {
                    from: frame.place(x_m, side * from * end_m),
                    to: frame.place(x_m, side * to * end_m),
                    role,
                });
            }
        }
        // Two units do not share a shaft: the middle is left open.
        let middles: &[f64] = if motors == 1 { &[0.0] } else { &[0.27, -0.27] };
        if motors > 1 {
            let gap = 0.06;
            scene.marks.push(Mark::Motor {
                centre: frame.place(x_m, 0.0),
                length: 0.12 * frame.per_m,
                width: 2.0 * gap * frame.per_m,
                angle_rad: frame.heading_rad,
                role: Role::Paper,
            });
        }
        for middle in middles {
            scene.marks.push(Mark::Motor {
                centre: frame.place(x_m, *middle),
                length: 0.36 * frame.per_m,
                width: 0.42 * frame.per_m,
                angle_rad: frame.heading_rad,
                role,
            });
        }
    }
}
