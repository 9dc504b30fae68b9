//! Motors placed by hand: buttons for each axle, a click on an axle or a wheel of the plan view, a
//! motor dragged from one axle to the other.

use super::erase::{Place, tag, target};
use super::model::Model;
use crate::figure::scene::{Mark, Point, Scene};
use axlewright_core::layout::Layout;
use axlewright_core::motor_split::layout_of;
use axlewright_core::words;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, MouseEvent};

/// Where the axles lie in a plan view, in shares of its width: front, then rear, each with the
/// distance of its wheels from the middle.
#[derive(Clone, Copy, Default)]
pub(super) struct Axles {
    x: [f64; 2],
    y: f64,
    half_track: f64,
}

impl Axles {
    /// The axles of a scene that shows wheels from above.
    pub(super) fn of(scene: &Scene) -> Option<Self> {
        let wheels: Vec<Point> = scene
            .marks
            .iter()
            .filter_map(|mark| match mark {
                Mark::WheelAbove { centre, .. } => Some(*centre),
                _ => None,
            })
            .collect();
        let least = |pick: fn(&Point) -> f64| wheels.iter().map(pick).reduce(f64::min);
        let most = |pick: fn(&Point) -> f64| wheels.iter().map(pick).reduce(f64::max);
        let (low, high) = (least(|p| p.y)?, most(|p| p.y)?);
        Some(Self {
            x: [most(|p| p.x)? / scene.width, least(|p| p.x)? / scene.width],
            y: 0.5 * (low + high) / scene.width,
            half_track: 0.5 * (high - low) / scene.width,
        })
    }

    /// The axle at a place, 0 in front, and whether the place is at a wheel.
    fn at(&self, x: f64, y: f64) -> Option<(usize, bool)> {
        let reach = 0.3 * (self.x[0] - self.x[1]).abs();
        let off = (y - self.y).abs();
        let axle = self.x.iter().position(|axle| (x - axle).abs() < reach)?;
        (off < 1.4 * self.half_track).then_some((axle, off > 0.6 * self.half_track))
    }
}

fn counts(layout: Layout) -> [u8; 2] {
    [layout.front().motors(), layout.rear().motors()]
}

/// The axle under an event, from what is drawn.
fn spot(model: Model, event: &MouseEvent, place: Place) -> Option<(usize, bool)> {
    let axles = model.peek(|s| s.axles)?;
    let picture: Element = place.try_get_untracked().flatten()?.first_element_child()?;
    let rect = picture.get_bounding_client_rect();
    let x = (f64::from(event.client_x()) - rect.left()) / rect.width();
    let y = (f64::from(event.client_y()) - rect.top()) / rect.width();
    axles.at(x, y)
}

fn put(model: Model, wanted: [u8; 2]) {
    if let Some(layout) = layout_of(wanted[0], wanted[1]) {
        model.change("layout", layout.name());
    }
}

/// What a press that began and ended at axles asks for.
fn asked(now: [u8; 2], from: (usize, bool), to: (usize, bool)) -> [u8; 2] {
    let mut wanted = now;
    if from.0 == to.0 {
        // At a wheel: a motor for each wheel; between them: one for both. Again: none.
        let motors = if to.1 { 2 } else { 1 };
        wanted[to.0] = if now[to.0] == motors { 0 } else { motors };
    } else if now[from.0] > 0 && now[to.0] < 2 {
        wanted[from.0] -= 1;
        wanted[to.0] += 1;
    }
    wanted
}

/// An event of the page and what is done then.
type Listener = (&'static str, Box<dyn FnMut(Event)>);

/// Lets a figure take clicks and drags on its axles.
pub(super) fn on_figure(model: Model, place: Place) -> [Listener; 2] {
    let began: StoredValue<Option<(usize, bool)>> = StoredValue::new(None);
    let down = move |event: Event| {
        let found = mouse(&event).and_then(|event| spot(model, &event, place));
        began.set_value(found);
    };
    let up = move |event: Event| {
        let from = began.get_value();
        let to = mouse(&event).and_then(|event| spot(model, &event, place));
        began.set_value(None);
        if let Some((from, to)) = from.zip(to) {
            put(model, asked(counts(shown(model)), from, to));
        }
    };
    [("pointerdown", Box::new(down)), ("pointerup", Box::new(up))]
}

fn mouse(event: &Event) -> Option<MouseEvent> {
    event.dyn_ref::<MouseEvent>().cloned()
}

fn shown(model: Model) -> Layout {
    model.peek(|s| {
        s.report
            .as_ref()
            .map_or(Layout::R1, |r| r.scenario.layout())
    })
}

/// Buttons for the motors of each axle.
pub(super) fn motors(model: Model) -> Option<AnyView> {
    if !model.visual.places_motors {
        return None;
    }
    let groups = [("ui.motors_front", 0_usize), ("ui.motors_rear", 1)];
    let row = groups
        .into_iter()
        .fold(tag("div", "motors"), |row, (key, axle)| {
            let name = move || model.read(|s| words::get(s.lang, key).to_owned());
            let group = tag("div", "views")
                .fixed("role", "group")
                .live("aria-label", name)
                .with(tag("span", "").says(name).view());
            let group = (0..3_u8).fold(group, |group, count| {
                let pressed = move || {
                    let is = model.read(|s| {
                        let report = s.report.as_ref();
                        report.is_some_and(|r| counts(r.scenario.layout())[axle] == count)
                    });
                    String::from(if is { "true" } else { "false" })
                };
                let press = move |event| {
                    if target::<Element>(&event).is_some() {
                        let mut wanted = counts(shown(model));
                        wanted[axle] = count;
                        put(model, wanted);
                    }
                };
                let digit = ["0", "1", "2"][usize::from(count)];
                let button = tag("button", "")
                    .fixed("type", "button")
                    .live("aria-pressed", pressed)
                    .on("click", press)
                    .word(digit);
                group.with(button.view())
            });
            row.with(group.view())
        });
    Some(row.view())
}
