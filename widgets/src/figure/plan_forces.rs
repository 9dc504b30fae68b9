//! Forces, motions and words of the plan view.

use super::number::within;
use super::palette::Role;
use super::place::{Rect, spot, text_rect};
use super::scene::{Anchor, ForceKind, Label, Mark, Point, Scene, ValueLabel, at};
use super::text_metrics::{GAP, LEADING, TEXT, text_width, wrap};

use super::plan_layout::Plan;

impl Plan<'_> {
    /// Places of points on the ground, from the CG, as far as they are on the page.
    fn on_ground(&self, points_m: &[(f64, f64)]) -> Vec<Point> {
        let cg = self.cg();
        let place =
            |(along, up): &(f64, f64)| cg.plus(along * self.frame.per_m, -up * self.frame.per_m);
        let seen = |p: &Point| {
            let bounds = &self.bounds;
            p.x > bounds.x0 && p.x < bounds.x1 && p.y > bounds.y0 && p.y < bounds.y1
        };
        points_m.iter().map(place).filter(seen).collect()
    }

    /// What the tyres leave on the ground, below everything else.
    pub(super) fn traces(&self, scene: &mut Scene) {
        for trace in &self.view.traces_m {
            let points = self.on_ground(trace);
            if points.len() > 1 {
                scene.marks.push(Mark::Trace { points });
            }
        }
    }

    pub(super) fn forces(&mut self, scene: &mut Scene) {
        let view = self.view;
        let cg = self.cg();
        if !view.path_m.is_empty() {
            let points = self.on_ground(&view.path_m);
            scene.marks.push(Mark::Path { points });
        }
        for (index, (wheel, hub)) in view.wheels.iter().zip(self.hubs).enumerate() {
            if let Some((forward, left)) = wheel.sliding_m_s {
                let per_unit = if view.m_s_per_unit > 0.0 {
                    view.m_s_per_unit
                } else {
                    0.05
                };
                let vector = self.frame.vector(forward / per_unit, left / per_unit);
                scene.marks.push(Mark::VelocityArrow { from: hub, vector });
                self.placer
                    .block_line(hub, hub.plus(vector.x, vector.y), 5.0);
            }
            if let Some((forward, left)) = wheel.ghost_n {
                let vector_n = self.frame.vector(forward, left);
                scene.marks.push(Mark::ForceArrow {
                    kind: ForceKind::Tractive,
                    from: hub,
                    vector_n,
                    ghost: true,
                });
                let tip = hub.plus(view.scale.units(vector_n.x), view.scale.units(vector_n.y));
                self.placer.block_arrow(hub, tip);
            }
            if let Some((forward, left)) = wheel.force_n {
                let vector_n = self.frame.vector(forward, left);
                scene.marks.push(Mark::ForceArrow {
                    kind: ForceKind::Tractive,
                    from: hub,
                    vector_n,
                    ghost: false,
                });
                let tip = hub.plus(view.scale.units(vector_n.x), view.scale.units(vector_n.y));
                self.placer.block_arrow(hub, tip);
            }
            let reach = view
                .scale
                .units(wheel.friction_n.unwrap_or(0.0))
                .max(view.wheel_radius_m * self.frame.per_m * 0.5);
            let (up, down) = (
                spot(hub.x, hub.y - reach - 8.0, Anchor::Middle),
                spot(hub.x, hub.y + reach + 17.0, Anchor::Middle),
            );
            let wanted = if index % 2 == 0 {
                [up, down]
            } else {
                [down, up]
            };
            if !wheel.label.is_empty() {
                self.waiting
                    .push((wheel.label.clone(), Role::Tractive, wanted.to_vec(), None));
            }
        }
        self.yaw(scene, cg);
        self.turning_centre(scene, cg);
    }

    pub(super) fn yaw(&mut self, scene: &mut Scene, cg: Point) {
        let Some(yaw) = &self.view.yaw else {
            return;
        };
        let radius = 0.46 * self.frame.per_m;
        scene.marks.push(Mark::YawArrow {
            centre: cg,
            radius,
            anticlockwise: yaw.anticlockwise,
        });
        let around = radius + 6.0;
        self.placer.block(Rect {
            x0: cg.x - around,
            y0: cg.y - around,
            x1: cg.x + around,
            y1: cg.y + around,
        });
        if !yaw.label.is_empty() {
            self.waiting.push((
                yaw.label.clone(),
                Role::Inertia,
                vec![
                    spot(cg.x, cg.y + around + 14.0, Anchor::Middle),
                    spot(cg.x, cg.y - around - 8.0, Anchor::Middle),
                ],
                None,
            ));
        }
    }

    pub(super) fn turning_centre(&mut self, scene: &mut Scene, cg: Point) {
        let Some(centre) = &self.view.turning_centre else {
            return;
        };
        let wheelbase = within(self.view.wheelbase_m, 0.5, 20.0);
        let cg_m = wheelbase - self.view.cg_behind_front_m;
        let mut place = self.frame.place(cg_m + centre.forward_m, centre.left_m);
        let inner = Rect {
            x0: self.bounds.x0 + 6.0,
            y0: self.bounds.y0 + 6.0,
            x1: self.bounds.x1 - 6.0,
            y1: self.bounds.y1 - 6.0,
        };
        let (dx, dy) = (place.x - cg.x, place.y - cg.y);
        let mut share = 1.0f64;
        for (from, delta, low, high) in [
            (cg.x, dx, inner.x0, inner.x1),
            (cg.y, dy, inner.y0, inner.y1),
        ] {
            if delta > 1e-9 {
                share = share.min((high - from) / delta);
            } else if delta < -1e-9 {
                share = share.min((low - from) / delta);
            }
        }
        if share < 1.0 {
            // Too far away to draw: a line shows where it lies.
            place = cg.plus(dx * share.max(0.0), dy * share.max(0.0));
            scene.marks.push(Mark::Extension {
                from: cg,
                to: place,
            });
        } else {
            scene.marks.push(Mark::TurningCentre { at: place });
            self.placer.block(Rect {
                x0: place.x - 7.0,
                y0: place.y - 7.0,
                x1: place.x + 7.0,
                y1: place.y + 7.0,
            });
        }
        if !centre.label.is_empty() && !self.narrow {
            let label = ValueLabel {
                value: String::new(),
                words: centre.label.clone(),
            };
            let wanted = vec![
                spot(place.x + 10.0, place.y - 8.0, Anchor::Start),
                spot(place.x + 10.0, place.y + 16.0, Anchor::Start),
                spot(place.x - 10.0, place.y - 8.0, Anchor::End),
            ];
            self.waiting
                .push((label, Role::Inertia, wanted, Some(place)));
        }
    }

    pub(super) fn labels(&mut self, scene: &mut Scene) {
        for (mut label, role, wanted, tied) in core::mem::take(&mut self.waiting) {
            if self.narrow && !label.value.is_empty() {
                label.words.clear();
            }
            let (width, height) = (label.width(), TEXT + 1.0);
            let found = match (self.placer.try_place(width, height, &wanted), tied) {
                (Some(found), _) => found,
                (None, None) => self.placer.place(width, height, &wanted),
                (None, Some(_)) => {
                    self.centre_in_text = true;
                    continue;
                }
            };
            if let Some(sign) = tied {
                let rect = text_rect(found.at, found.anchor, label.width(), TEXT);
                let near = at(
                    within(sign.x, rect.x0, rect.x1),
                    within(sign.y, rect.y0, rect.y1),
                );
                let (dx, dy) = (near.x - sign.x, near.y - sign.y);
                let far = (dx * dx + dy * dy).sqrt();
                if far > 16.0 {
                    scene.marks.push(Mark::Leader {
                        from: sign.plus(dx * 6.0 / far, dy * 6.0 / far),
                        to: near,
                    });
                }
            }
            scene.label(Label {
                at: found.at,
                anchor: found.anchor,
                value: label.value,
                words: label.words,
                role,
                size: TEXT,
                rim: true,
            });
        }
    }

    /// Legend, values and caution from `y` down, gives the y of their end.
    pub(super) fn text(&self, scene: &mut Scene, left: f64, mut y: f64, width: f64) -> f64 {
        let view = self.view;
        if let Some(centre) = view.turning_centre.as_ref().filter(|_| self.centre_in_text) {
            // There is no room for these words in the drawing: sign and words.
            scene.marks.push(Mark::TurningCentre {
                at: at(left + 6.0, y + LEADING - 4.5),
            });
            for part in wrap(&centre.label, TEXT, false, width - 20.0) {
                y += LEADING;
                scene.words(at(left + 20.0, y), Anchor::Start, &part);
            }
            y += 3.0;
        }
        for line in &view.legend {
            for part in wrap(line, TEXT, false, width) {
                y += LEADING;
                scene.words(at(left, y), Anchor::Start, &part);
            }
            y += 3.0;
        }
        if !view.legend.is_empty() && !view.notes.is_empty() {
            y += 12.0;
        }
        // In a narrow figure the drawing shows the value alone.
        let yaw = view
            .yaw
            .iter()
            .map(|yaw| &yaw.label)
            .filter(|label| self.narrow && !label.value.is_empty() && !label.words.is_empty());
        for note in yaw.chain(&view.notes) {
            let indent = text_width(&note.value, TEXT, true) + GAP;
            let mut lines = wrap(&note.words, TEXT, false, width - indent).into_iter();
            y += LEADING;
            scene.label(Label {
                at: at(left, y),
                value: note.value.clone(),
                words: lines.next().unwrap_or_default(),
                size: TEXT,
                ..Label::default()
            });
            for line in lines {
                y += LEADING;
                scene.words(at(left + indent, y), Anchor::Start, &line);
            }
            y += 3.0;
        }
        if let Some(caution) = &view.caution {
            y = scene.caution(caution, left, y + 16.0, width);
        }
        y
    }
}
