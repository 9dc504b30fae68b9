//! Hands on figure and chart: what the script needs to make handles of grips, and to read a chart out.
//!
//! The script owns pointer, focus and keys; here is what needs the scale, the inputs or the words.

use super::controls::Scale;
use super::exports::Handle;
use super::model::to_js;
use super::state::State;
use crate::figure::chart_read::{Reading, chart_read, x_step};
use crate::figure::number::within;
use crate::figure::{Act, Chart, Grip, Slide, Theme, Turn, chart_layout};
use axlewright_core::input::{self, Kind};
use axlewright_core::{Tree, format, units, words};
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
impl Handle {
    /// The shown figure as SVG; nothing where no figure is shown.
    #[must_use]
    pub fn drawing(&self) -> String {
        self.model.peek(|state| {
            if state.show.figure {
                state.svg.clone()
            } else {
                String::new()
            }
        })
    }

    /// The grips of the shown figure and the size of its page, and where the chart's dot stands:
    /// `{ width, height, grips: […], chart: { now, min, max, text } }`.
    #[must_use]
    pub fn hands(&self) -> JsValue {
        let visual = self.model.visual;
        self.model.peek(|state| {
            let mut tree = Tree::map();
            tree.set("width", Tree::Number(state.size.0));
            tree.set("height", Tree::Number(state.size.1));
            let grips = state.grips.iter().filter(|_| state.show.figure);
            let grips =
                grips.filter_map(|grip| grip_tree(state, grip, &|path| state.offers(visual, path)));
            tree.set("grips", Tree::List(grips.collect()));
            if let Some(chart) = &state.chart {
                tree.set(
                    "chart",
                    place_tree(chart, &chart_read(chart, present_x(chart))),
                );
            }
            to_js(&tree)
        })
    }

    /// The reader gives an input another value, as a text with its unit.
    pub fn change(&self, path: &str, text: &str) {
        if let Some(input) = input::find(path) {
            // A pull that moves two inputs is one step to take back: that of the grip's first.
            let step = self.model.peek(|state| {
                let mut paths = state.grips.iter().map(Grip::paths);
                let moved = paths.find(|paths| paths.contains(&input.path));
                moved.map_or(input.path, |paths| paths[0])
            });
            self.model.change_in_step(input.path, text, None, step);
        }
    }

    /// What the chart says at a share of its whole width.
    #[must_use]
    pub fn read_at(&self, share: f64) -> JsValue {
        self.read(&|chart| chart_layout(chart).x_at(share * chart.width))
    }

    /// What the chart says some steps from an x; from the present state where x is no number.
    #[must_use]
    pub fn read_from(&self, x: f64, steps: f64) -> JsValue {
        self.read(&|chart| {
            let from = if x.is_nan() { present_x(chart) } else { x };
            from + steps * x_step(chart)
        })
    }

    fn read(&self, x: &dyn Fn(&Chart) -> f64) -> JsValue {
        let visual = self.model.visual;
        self.model.peek(|state| match &state.chart {
            Some(chart) if state.show.chart => {
                let reading = chart_read(chart, x(chart));
                let mut tree = reading_tree(chart, &reading);
                let path = chart.x_input.filter(|path| state.offers(visual, path));
                if let Some((path, text)) =
                    path.and_then(|p| Some((p, x_given(p, chart, &reading)?)))
                {
                    tree.set("path", Tree::text(path));
                    tree.set("given", Tree::Text(text));
                }
                to_js(&tree)
            }
            _ => JsValue::NULL,
        })
    }
}

fn present_x(chart: &Chart) -> f64 {
    chart.present.first().map_or(chart.x_axis.min, |dot| dot.x)
}

/// The x of a reading as its input is given, kept where a slider would keep it.
fn x_given(path: &str, chart: &Chart, reading: &Reading) -> Option<String> {
    let Kind::Quantity {
        dimension, usual, ..
    } = input::find(path)?.kind
    else {
        return None;
    };
    let unit = &chart.x_axis.unit;
    let si = units::parse(&[&format::plain(reading.x), " ", unit].concat(), dimension).ok()?;
    if usual.0 <= si && si <= usual.1 {
        return Some([&format::plain(reading.x), " ", unit].concat());
    }
    let si = within(si, usual.0, usual.1);
    Some([&format::plain(si), " ", dimension.si_unit()].concat())
}

fn number(tree: &mut Tree, name: &str, value: f64) {
    tree.set(name, Tree::Number(value));
}

fn text(tree: &mut Tree, name: &str, value: &str) {
    tree.set(name, Tree::text(value));
}

fn place_tree(chart: &Chart, reading: &Reading) -> Tree {
    let mut tree = Tree::map();
    number(&mut tree, "now", reading.x);
    number(&mut tree, "min", chart.x_axis.min);
    number(&mut tree, "max", chart.x_axis.max);
    text(&mut tree, "text", &reading.x_text);
    tree
}

/// A reading with its places in shares of the chart's box.
fn reading_tree(chart: &Chart, reading: &Reading) -> Tree {
    let layout = chart_layout(chart);
    let mut tree = place_tree(chart, reading);
    text(&mut tree, "head", &chart.x_axis.title);
    number(
        &mut tree,
        "left",
        layout.place(reading.x, 0.0).x / chart.width,
    );
    number(&mut tree, "top", layout.plot.y0 / chart.height);
    number(&mut tree, "bottom", layout.plot.y1 / chart.height);
    let values = reading.values.iter().map(|value| {
        let mut tree = Tree::map();
        text(&mut tree, "label", &value.label);
        text(&mut tree, "text", &value.text);
        text(&mut tree, "colour", Theme::Live.text(value.role));
        number(
            &mut tree,
            "top",
            layout.place(reading.x, value.y).y / chart.height,
        );
        tree
    });
    tree.set("values", Tree::List(values.collect()));
    tree
}

fn grip_tree(state: &State, grip: &Grip, offers: &dyn Fn(&str) -> bool) -> Option<Tree> {
    let mut tree = Tree::map();
    number(&mut tree, "x", grip.at.x);
    number(&mut tree, "y", grip.at.y);
    number(&mut tree, "w", 2.0 * grip.half.x);
    number(&mut tree, "h", 2.0 * grip.half.y);
    let axes: Vec<Tree> = match &grip.act {
        Act::Slide(slides) => {
            text(&mut tree, "kind", "slide");
            let slides = slides.iter().filter(|slide| offers(slide.path));
            slides
                .filter_map(|slide| slide_tree(state, slide))
                .collect()
        }
        Act::Turn(turn) => {
            text(&mut tree, "kind", "turn");
            let offered = offers(turn.path).then(|| turn_tree(turn));
            offered.into_iter().collect()
        }
        Act::Choose {
            path,
            word,
            label,
            chosen,
        } => {
            text(&mut tree, "kind", "choose");
            let mut choice = Tree::map();
            text(&mut choice, "path", path);
            text(&mut choice, "word", word);
            text(&mut choice, "label", label);
            choice.set("chosen", Tree::Bool(*chosen));
            offers(path).then_some(choice).into_iter().collect()
        }
    };
    if axes.is_empty() {
        return None;
    }
    tree.set("axes", Tree::List(axes));
    Some(tree)
}

/// One direction of a grip: a slider in the units and steps that its input has elsewhere.
fn slide_tree(state: &State, slide: &Slide) -> Option<Tree> {
    let input = input::find(slide.path)?;
    let scale = Scale::of(input, state.system)?;
    let now = scale.people(state.number(slide.path)?);
    let mut tree = Tree::map();
    text(&mut tree, "path", slide.path);
    text(
        &mut tree,
        "label",
        words::get(state.lang, &input.label_key()),
    );
    text(&mut tree, "text", &scale.text(Some(now), state.lang));
    text(&mut tree, "unit", scale.unit);
    number(&mut tree, "now", now);
    number(&mut tree, "min", scale.ends.0);
    number(&mut tree, "max", scale.ends.1);
    number(&mut tree, "step", scale.step);
    number(&mut tree, "decimals", f64::from(scale.decimals));
    // Scene units for one unit of people.
    let per_si = scale.people(1.0);
    number(&mut tree, "dx", slide.per_si.x / per_si);
    number(&mut tree, "dy", slide.per_si.y / per_si);
    Some(tree)
}

fn turn_tree(turn: &Turn) -> Tree {
    let mut tree = Tree::map();
    text(&mut tree, "path", turn.path);
    text(&mut tree, "label", &turn.label);
    text(&mut tree, "text", &turn.said);
    let first = f64::from(turn.first);
    number(&mut tree, "now", first + turn.now as f64);
    number(&mut tree, "min", first);
    number(&mut tree, "max", first + turn.words.len() as f64 - 1.0);
    let words = turn.words.iter().map(|word| Tree::text(*word));
    tree.set("words", Tree::List(words.collect()));
    tree
}
