//! The forces of the side view and their labels.

use super::grip::{Grip, REACH, Slide, tip_clear_of};
use super::number::within;
use super::palette::Role;
use super::place::{Candidate, Rect, spot};
use super::scene::{Anchor, ForceKind, Label, Mark, Point, Scene, ValueLabel, at, margin};
use super::text_metrics::{GAP, LEADING, TEXT, text_width, wrap};

use super::side_layout::{Side, clean};
use super::side_view::AxleForces;

impl Side<'_> {
    pub(super) fn forces(&mut self, scene: &mut Scene) {
        let view = self.view;
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        if let Some(ghost) = view.ghost {
            for (x_m, kind, load_n) in [
                (0.0, ForceKind::RearLoad, ghost.rear_n),
                (wheelbase, ForceKind::FrontLoad, ghost.front_n),
            ] {
                self.load(scene, x_m, kind, load_n, true);
            }
        }
        for (x_m, kind, axle) in [
            (0.0, ForceKind::RearLoad, &view.rear),
            (wheelbase, ForceKind::FrontLoad, &view.front),
        ] {
            let tail = self.load(scene, x_m, kind, axle.load_n, false);
            let outward = if x_m > 0.0 { 1.0 } else { -1.0 };
            let (out, inn) = if x_m > 0.0 {
                (Anchor::Start, Anchor::End)
            } else {
                (Anchor::End, Anchor::Start)
            };
            let wanted = [
                spot(tail.x + outward * 12.0, tail.y - 1.0, out),
                spot(tail.x - outward * 12.0, tail.y - 1.0, inn),
                spot(tail.x, tail.y + 18.0, Anchor::Middle),
            ];
            self.wait(&axle.load_label, kind.role(), &wanted);
            self.tractive(scene, x_m, axle);
        }
        let cg = self.cg();
        self.at_cg(scene, cg);
        self.drag(scene);
        scene.marks.push(Mark::CentreOfGravity {
            at: cg,
            radius: if self.narrow { 7.0 } else { 9.0 },
        });
        self.grips(scene, cg);
    }

    /// Handles on the CG and on the tip of the inertial force.
    fn grips(&self, scene: &mut Scene, cg: Point) {
        let view = self.view;
        let slide = |path, per_si| Slide { path, per_si };
        if let Some([behind, height]) = view.cg_inputs {
            let per_m = self.frame.per_m;
            let slides = vec![
                slide(behind, self.frame.vector(-per_m, 0.0)),
                slide(height, self.frame.vector(0.0, per_m)),
            ];
            scene.grips.push(Grip::slide(cg, slides));
        }
        if let Some((path, newtons)) = view.inertia_input {
            let inertia_n = clean(view.inertia_n);
            let arrow = self.frame.vector(-view.scale.units(inertia_n), 0.0);
            let way = if inertia_n < 0.0 { 1.0 } else { -1.0 };
            let tip = tip_clear_of(cg, cg.plus(arrow.x, arrow.y), self.frame.vector(way, 0.0));
            let tip = at(within(tip.x, REACH, self.width - REACH), tip.y);
            let per_si = self.frame.vector(-view.scale.units(newtons), 0.0);
            scene
                .grips
                .push(Grip::slide(tip, vec![slide(path, per_si)]));
        }
    }

    /// Draws a load from below up to the contact patch, gives its tail.
    pub(super) fn load(
        &mut self,
        scene: &mut Scene,
        x_m: f64,
        kind: ForceKind,
        load_n: f64,
        ghost: bool,
    ) -> Point {
        let load_n = clean(load_n).max(0.0);
        let units = self.view.scale.units(load_n);
        let gap = self.m(3.0);
        let tail = self.frame.place(x_m, -gap - self.m(units));
        let tip = self.frame.place(x_m, -gap);
        scene.marks.push(Mark::ForceArrow {
            kind,
            from: tail,
            vector_n: self.frame.vector(0.0, load_n),
            ghost,
        });
        if ghost {
            self.placer.block_line(tail, tip, 11.0);
        } else {
            self.placer.block_arrow(tail, tip);
        }
        self.lower(tail);
        tail
    }

    pub(super) fn tractive(&mut self, scene: &mut Scene, x_m: f64, axle: &AxleForces) {
        let force_n = clean(axle.tractive_n);
        let units = self.view.scale.units(force_n);
        if units.abs() < 0.5 {
            return;
        }
        let from = self.frame.place(x_m, 0.0);
        let tip = self.frame.place(x_m + self.m(units), 0.0);
        scene.marks.push(Mark::ForceArrow {
            kind: ForceKind::Tractive,
            from,
            vector_n: self.frame.vector(force_n, 0.0),
            ghost: false,
        });
        self.placer.block_arrow(from, tip);
        let (ahead, anchor, back) = if units > 0.0 {
            (1.0, Anchor::Start, Anchor::End)
        } else {
            (-1.0, Anchor::End, Anchor::Start)
        };
        let wheel = self.view.wheel_radius_m * self.frame.per_m + 6.0;
        let beyond = if units.abs() + 8.0 > wheel {
            tip.x + ahead * 8.0
        } else {
            from.x + ahead * wheel
        };
        // On a slope the text goes where the ground falls away from it.
        let grade = self.frame.grade_rad;
        let falls = if grade.abs() < 1e-4 {
            spot(beyond, tip.y - 8.0, anchor)
        } else if (grade > 0.0) == (units > 0.0) {
            spot(tip.x + ahead * 4.0, tip.y + 22.0, anchor)
        } else {
            spot(tip.x + ahead * 10.0, tip.y - 2.0, anchor)
        };
        let wanted = [
            falls,
            spot(tip.x - ahead * 20.0, tip.y - 9.5, back),
            spot(from.x + ahead * wheel, tip.y - 9.5, anchor),
            spot(tip.x + ahead * 2.0, tip.y + 28.0, anchor),
            spot(tip.x - ahead * 2.0, tip.y + 28.0, back),
        ];
        self.wait(&axle.tractive_label, Role::Tractive, &wanted);
    }

    pub(super) fn at_cg(&mut self, scene: &mut Scene, cg: Point) {
        let view = self.view;
        self.placer.block(Rect {
            x0: cg.x - 10.0,
            y0: cg.y - 10.0,
            x1: cg.x + 10.0,
            y1: cg.y + 10.0,
        });
        let inertia_n = clean(view.inertia_n);
        if view.scale.units(inertia_n).abs() >= 0.5 {
            let vector_n = self.frame.vector(-inertia_n, 0.0);
            scene.marks.push(Mark::ForceArrow {
                kind: ForceKind::Inertia,
                from: cg,
                vector_n,
                ghost: false,
            });
            let tip = cg.plus(view.scale.units(vector_n.x), view.scale.units(vector_n.y));
            self.placer.block_arrow(cg, tip);
            let (way, anchor, back) = if inertia_n > 0.0 {
                (-1.0, Anchor::End, Anchor::Start)
            } else {
                (1.0, Anchor::Start, Anchor::End)
            };
            let wanted = [
                spot(tip.x, tip.y - 12.0, back),
                spot(cg.x + way * 13.0, cg.y - 12.0, anchor),
                spot((tip.x + cg.x) / 2.0, tip.y.min(cg.y) - 16.0, Anchor::Middle),
                spot(tip.x + way * 8.0, tip.y + 4.5, anchor),
                spot(tip.x, tip.y + 22.0, back),
            ];
            self.wait(&view.inertia_label, Role::Inertia, &wanted);
        }
        let weight = view.scale.units(clean(view.weight_n)).max(0.0);
        if self.frame.grade_rad.abs() > 1e-4 && weight > 0.5 {
            scene.marks.push(Mark::ForceArrow {
                kind: ForceKind::Weight,
                from: cg,
                vector_n: at(0.0, view.weight_n),
                ghost: false,
            });
            let tip = cg.plus(0.0, weight);
            self.placer.block_arrow(cg, tip);
            self.lower(tip.plus(0.0, 6.0));
            let wanted = [
                spot(tip.x + 10.0, tip.y - 4.0, Anchor::Start),
                spot(tip.x - 10.0, tip.y - 4.0, Anchor::End),
                spot(tip.x, tip.y + 18.0, Anchor::Middle),
            ];
            self.wait(&view.weight_label, Role::Ink, &wanted);
        }
    }

    /// Far ends of the forces along the road.
    pub(super) fn ends_along(&self) -> [Point; 4] {
        let view = self.view;
        let along = |from: Point, force_n: f64| {
            let vector = self.frame.vector(view.scale.units(clean(force_n)), 0.0);
            from.plus(vector.x, vector.y)
        };
        let wheelbase = within(view.wheelbase_m, 0.5, 20.0);
        let cg = self.cg();
        [
            along(cg, -view.inertia_n),
            along(self.frame.place(wheelbase, 0.0), view.front.tractive_n),
            along(self.frame.place(0.0, 0.0), view.rear.tractive_n),
            self.drag_ends().map_or(cg, |(from, _)| from),
        ]
    }

    /// Tail and tip of the drag, where it is long enough to be seen.
    pub(super) fn drag_ends(&self) -> Option<(Point, Point)> {
        let drag = self.view.drag.as_ref()?;
        let units = self.view.scale.units(clean(drag.force_n));
        if units < 0.5 {
            return None;
        }
        let tip_m = self.front_end_m + self.m(if self.narrow { -20.0 } else { 8.0 });
        let place = |x_m: f64| self.frame.place(x_m, clean(drag.height_m));
        Some((place(tip_m + self.m(units)), place(tip_m)))
    }

    pub(super) fn drag(&mut self, scene: &mut Scene) {
        let (Some(drag), Some((from, tip))) = (&self.view.drag, self.drag_ends()) else {
            return;
        };
        scene.marks.push(Mark::ForceArrow {
            kind: ForceKind::Drag,
            from,
            vector_n: self.frame.vector(-drag.force_n, 0.0),
            ghost: false,
        });
        self.placer.block_arrow(from, tip);
        self.wait(
            &drag.label,
            Role::Soft,
            &[
                spot(tip.x, tip.y - 12.0, Anchor::Start),
                spot(tip.x, tip.y - 30.0, Anchor::Start),
            ],
        );
    }

    pub(super) fn wait(&mut self, label: &ValueLabel, role: Role, wanted: &[Candidate]) {
        if !label.is_empty() {
            self.waiting.push((label.clone(), role, wanted.to_vec()));
        }
    }

    pub(super) fn labels(&mut self, scene: &mut Scene) {
        let waiting = core::mem::take(&mut self.waiting);
        for (label, role, wanted) in &waiting {
            if self.narrow && !label.value.is_empty() {
                // A narrow figure shows the value at its arrow, the words below.
                let value = ValueLabel {
                    value: label.value.clone(),
                    words: String::new(),
                };
                self.put(scene, &value, *role, wanted);
            } else {
                self.put(scene, label, *role, wanted);
            }
        }
        if self.narrow {
            self.waiting = waiting;
            self.waiting.retain(|(label, _, _)| !label.value.is_empty());
        }
    }

    pub(super) fn put(
        &mut self,
        scene: &mut Scene,
        label: &ValueLabel,
        role: Role,
        wanted: &[Candidate],
    ) {
        let found = self.placer.place(label.width(), TEXT + 1.0, wanted);
        let place = found.at;
        self.lower(place.plus(0.0, 5.0));
        self.top = self.top.min(place.y);
        scene.label(Label {
            at: place,
            anchor: found.anchor,
            value: label.value.clone(),
            words: label.words.clone(),
            role,
            size: TEXT,
            rim: true,
        });
    }

    /// All values with their words, one below the other.
    pub(super) fn list(&self, scene: &mut Scene, mut y: f64) -> f64 {
        let left = margin(self.width);
        for (label, role, _) in &self.waiting {
            y += LEADING;
            let indent = text_width(&label.value, TEXT, true) + GAP;
            let lines = wrap(&label.words, TEXT, false, self.width - 2.0 * left - indent);
            scene.label(Label {
                at: at(left, y),
                value: label.value.clone(),
                words: lines.first().cloned().unwrap_or_default(),
                role: *role,
                size: TEXT,
                ..Label::default()
            });
            for line in lines.into_iter().skip(1) {
                y += LEADING;
                scene.label(Label {
                    at: at(left + indent, y),
                    words: line,
                    size: TEXT,
                    ..Label::default()
                });
            }
        }
        y + 10.0
    }
}
