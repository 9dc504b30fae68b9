//! Which layout for this brief: the layout that is looked at from above, what would change the
//! recommendation as sorted bars, and a scatter of cost against time.

use crate::figure::{
    Axis, BarRow, Bars, Caution, Chart, ChartPoint, Dash, Line, PlanView, Role, Scene, ValueLabel,
    bars, plan_view,
};
use crate::load_transfer::chart_height;
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Drawing, Look, View, Visual, Voice, body};
use axlewright_core::choice::{Answer, COLUMNS, Flip, Measure, TOPIC, VARIED, advance, answer};
use axlewright_core::input::{self, Kind};
use axlewright_core::layout::Layout;
use axlewright_core::units::{Dimension as D, System};
use axlewright_core::{Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Bars, View::Chart],
    table: COLUMNS,
    work: Some(work),
    ..Visual::of_topic(&TOPIC, draw)
};

fn work(scenario: &Scenario) -> Result<bool, Problem> {
    Ok(advance(scenario)?.is_some())
}

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let answer = answer(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart(scenario, &answer, look)),
        View::Bars => Drawing::Scene(sensitivity(scenario, &answer, look)),
        _ => Drawing::Scene(plan(scenario, &answer, look)),
    })
}

fn system(look: &Look) -> System {
    look.system
}

/// The layout that is looked at: the one given, or else the recommended one.
fn shown(scenario: &Scenario, answer: &Answer) -> Layout {
    let recommended = answer.decision.recommended;
    match recommended {
        Some(layout) if scenario.text("layout").is_none() => layout,
        _ => scenario.layout(),
    }
}

/// The finding: what is recommended.
fn title(voice: Voice, answer: &Answer) -> String {
    match answer.decision.recommended {
        Some(layout) => voice.fill("figure.choice.title", &[layout.name()]),
        None => voice.word("figure.choice.title_none"),
    }
}

fn plan(scenario: &Scenario, answer: &Answer, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let layout = shown(scenario, answer);
    let because = answer.because().text(look.lang, system(look));
    let verdict = answer.decision.of(layout).map_or("", |j| j.verdict.word());
    let reason = voice.word(&["reason.", verdict].concat());
    let notes = answer
        .measure(layout)
        .map_or_else(Vec::new, |measure| notes(voice, answer, measure));
    let told: Vec<String> = notes
        .iter()
        .map(|note| [&note.value, " ", &note.words].concat())
        .collect();
    let wheelbase_m = scenario.number("vehicle.wheelbase").unwrap_or(2.7);
    let track = |path| scenario.number(path).unwrap_or(1.6);
    let width = |path| scenario.number(path).unwrap_or(0.22);
    plan_view(&PlanView {
        width: look.width,
        title: title(voice, answer),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.choice.describe",
            &[&because, layout.name(), &reason, &told.join("; ")],
        ),
        body: body(scenario),
        wheelbase_m,
        track_front_m: track("vehicle.track_front"),
        track_rear_m: track("vehicle.track_rear"),
        wheel_radius_m: wheel_radius(scenario, wheelbase_m),
        tyre_width_front_m: width("vehicle.tyre_width_front"),
        tyre_width_rear_m: width("vehicle.tyre_width_rear"),
        cg_behind_front_m: scenario
            .number("vehicle.cg_to_front_axle")
            .unwrap_or(0.5 * wheelbase_m),
        front_motors: layout.front().motors(),
        rear_motors: layout.rear().motors(),
        legend: vec![
            because,
            voice.fill("figure.choice.shown", &[layout.name(), &reason]),
        ],
        notes,
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.choice"),
        }),
        motor_turns: Some(motor_turns(voice, layout)),
        ..PlanView::default()
    })
}

/// What the layout that is looked at does.
fn notes(voice: Voice, answer: &Answer, measure: &Measure) -> Vec<ValueLabel> {
    let mut notes = Vec::new();
    let mut add = |value: String, key: &str| {
        notes.push(ValueLabel {
            value,
            words: voice.word(key),
        });
    };
    if let Some(judged) = answer.decision.of(measure.layout) {
        if let Some(score) = judged.score {
            add(voice.fixed(score, 2), "output.choice.score");
        }
        add(voice.fixed(judged.cost, 1), "output.choice.cost");
    }
    if let Some(mark) = measure.mark {
        let time = voice.quantity(mark.time_s, D::Time, 3);
        add(time, "output.choice.time_to_60_mph");
    }
    if let Some(range_m) = measure.range_m {
        add(
            voice.quantity(range_m, D::Distance, 3),
            "output.choice.range",
        );
    }
    let volume = voice.quantity(measure.space.volume_m3, D::Volume, 3);
    add(volume, "output.choice.volume");
    notes
}

/// A value of an input as people read it.
fn value_text(voice: Voice, path: &str, value: f64) -> String {
    match input::find(path).map(|input| &input.kind) {
        Some(Kind::Quantity { dimension, .. }) => voice.quantity(value, *dimension, 3),
        _ => voice.fixed(value, 2),
    }
}

/// What would change the recommendation, the smallest change first.
fn sensitivity(scenario: &Scenario, answer: &Answer, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let mut flips: Vec<(&'static str, Flip)> = Vec::new();
    for ((path, ..), flip) in VARIED.iter().zip(&answer.flips) {
        if let Some(flip) = flip {
            let wider = |other: &(&str, Flip)| other.1.change().abs() > flip.change().abs();
            let place = flips.iter().position(wider).unwrap_or(flips.len());
            flips.insert(place, (path, *flip));
        }
    }
    let spread = voice.percent(answer.spread);
    let rows: Vec<BarRow> = flips
        .iter()
        .enumerate()
        .map(|(at, (path, flip))| {
            let name = voice.word(&["input.", path].concat());
            let (from, to) = (
                value_text(voice, path, flip.from),
                value_text(voice, path, flip.at),
            );
            BarRow {
                name: flip.becomes.map_or("–", Layout::name).into(),
                front_motors: flip.becomes.map_or(0, |layout| layout.front().motors()),
                rear_motors: flip.becomes.map_or(0, |layout| layout.rear().motors()),
                value: 100.0 * flip.change().abs(),
                value_text: signed_percent(voice, flip.change()),
                reason: voice.fill("figure.choice.bar", &[&name, &from, &to]),
                pinned: None,
                chosen: at == 0,
                choice: None,
            }
        })
        .collect();
    let told: Vec<String> = rows
        .iter()
        .map(|row| {
            voice.fill(
                "figure.choice.bar_told",
                &[&row.reason, &row.value_text, &row.name],
            )
        })
        .collect();
    let title = if rows.is_empty() {
        voice.fill("figure.choice.bars_none", &[&spread])
    } else {
        voice.fill("figure.choice.bars_title", &[&spread])
    };
    bars(&Bars {
        width: look.width,
        description: [&title, ". ", &told.join("; ")].concat(),
        title,
        subtitle: voice.whose(scenario),
        body: body(scenario),
        axis_title: voice.word("figure.choice.bars_axis"),
        axis_max: 100.0 * answer.spread,
        decimal_mark: look.lang.decimal_mark(),
        role: Role::Tractive,
        rows,
        ..Bars::default()
    })
}

/// A share as a signed percentage.
fn signed_percent(voice: Voice, share: f64) -> String {
    let decimals = if share.abs() < 0.1 { 1 } else { 0 };
    let sign = if share > 0.0 { "+" } else { "" };
    let number = voice.fixed(100.0 * share, decimals);
    axlewright_core::format::with_unit([sign, &number].concat(), "%")
}

/// The smallest of a few round ends of an axis that holds a value.
fn axis_end(value: f64) -> f64 {
    let mut decade = 1.0;
    while decade * 10.0 < value {
        decade *= 10.0;
    }
    let ends = [1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0];
    let found = ends.into_iter().find(|end| end * decade >= value);
    found.unwrap_or(10.0) * decade
}

/// Time to 60 mph against cost: a dot for each layout, and the best time that a cost buys.
fn chart(scenario: &Scenario, answer: &Answer, look: &Look) -> Chart {
    let voice = Voice::of(look);
    let mut present = Vec::new();
    let mut rings = Vec::new();
    let mut names: Vec<(f64, f64, String)> = Vec::new();
    let mut able: Vec<(f64, f64)> = Vec::new();
    let mut told = Vec::new();
    let (mut most_cost, mut most_s) = (0.0_f64, 0.0_f64);
    for (measure, judged) in answer.measures.iter().zip(&answer.decision.judged) {
        let Some(mark) = measure.mark else { continue };
        let (cost, time_s) = (judged.cost, mark.time_s);
        most_cost = most_cost.max(cost);
        most_s = most_s.max(time_s);
        let meets = judged.score.is_some();
        let point = |role| ChartPoint {
            x: cost,
            y: time_s,
            role,
        };
        let name = judged.layout.name();
        if judged.on_pareto_front {
            present.push(point(Role::Tractive));
        } else {
            rings.push(point(if meets { Role::Tractive } else { Role::Fine }));
        }
        if meets {
            able.push((cost, time_s));
        }
        let text = if meets {
            name.into()
        } else {
            ["(", name, ")"].concat()
        };
        let time = voice.quantity(time_s, D::Time, 3);
        told.push([&text, ": ", &voice.fixed(cost, 1), ", ", &time].concat());
        names.push((cost, time_s, text));
    }
    // The best time that a cost buys: cheapest first, each quicker than all before it.
    able.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    let mut front: Vec<(f64, f64)> = Vec::new();
    for (cost, time_s) in able {
        if front.last().is_none_or(|(_, least_s)| time_s < *least_s) {
            front.push((cost, time_s));
        }
    }
    let (x_max, y_max) = (axis_end(1.12 * most_cost), axis_end(1.05 * most_s));
    let title = match answer.decision.recommended {
        Some(layout) => voice.fill("figure.choice.chart_title", &[layout.name()]),
        None => voice.word("figure.choice.title_none"),
    };
    Chart {
        width: look.width,
        height: chart_height(look.width),
        title,
        subtitle: [
            &voice.whose(scenario),
            " ",
            &voice.word("figure.choice.chart_key"),
        ]
        .concat(),
        description: voice.fill(
            "figure.choice.chart_describe",
            &[&told.join("; "), &voice.whose(scenario)],
        ),
        x_axis: Axis {
            title: voice.word("output.choice.cost"),
            unit: String::new(),
            min: 0.0,
            max: x_max,
        },
        y_axis: Axis {
            title: voice.word("output.choice.time_to_60_mph"),
            unit: voice.unit(D::Time),
            min: 0.0,
            max: y_max,
        },
        lines: vec![Line {
            label: voice.word("figure.choice.line_front"),
            points: front,
            role: Role::Ink,
            dash: Dash::Short,
            ..Line::default()
        }],
        present,
        pinned: rings,
        names: joined(names, 0.02 * x_max, 0.05 * y_max),
        decimal_mark: look.lang.decimal_mark(),
        ..Chart::default()
    }
}

/// Names of points that lie on each other are written as one.
fn joined(names: Vec<(f64, f64, String)>, near_x: f64, near_y: f64) -> Vec<(f64, f64, String)> {
    let mut joined: Vec<(f64, f64, String)> = Vec::new();
    for (x, y, name) in names {
        let near = |other: &&mut (f64, f64, String)| {
            (other.0 - x).abs() < near_x && (other.1 - y).abs() < near_y
        };
        match joined.iter_mut().find(near) {
            Some(other) => other.2 = [&other.2, ", ", &name].concat(),
            None => joined.push((x, y, name)),
        }
    }
    joined
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawn(fields: &[(&str, &str)], view: View) -> Drawing {
        let mut scenario = Scenario::default();
        for (path, text) in fields {
            scenario.set(path, text).unwrap();
        }
        VISUAL.draw(&scenario, view, &Look::default()).unwrap()
    }

    const BRIEF: &[(&str, &str)] = &[("vehicle.base", "esker"), ("choice.target_time", "6.5 s")];

    #[test]
    fn every_layout_is_named_once_and_the_front_falls() {
        let Drawing::Chart(chart) = drawn(BRIEF, View::Chart) else {
            panic!("a chart")
        };
        let all: Vec<&str> = chart
            .names
            .iter()
            .flat_map(|(_, _, name)| name.split(", "))
            .collect();
        assert_eq!(all.len(), 8, "{all:?}");
        assert_eq!(chart.present.len() + chart.pinned.len(), 8);
        let front = &chart.lines[0].points;
        assert!(front.windows(2).all(|p| p[0].0 < p[1].0 && p[0].1 > p[1].1));
        assert!(all.contains(&"(F1)"), "F1 is too slow: {all:?}");
    }

    #[test]
    fn the_bars_are_sorted_and_name_the_layout_that_comes() {
        let Drawing::Scene(scene) = drawn(BRIEF, View::Bars) else {
            panic!("a scene")
        };
        let widths: Vec<f64> = scene
            .marks
            .iter()
            .filter_map(|mark| match mark {
                crate::figure::mark::Mark::Bar { width, .. } => Some(*width),
                _ => None,
            })
            .collect();
        assert!(!widths.is_empty());
        assert!(
            widths.windows(2).all(|pair| pair[0] <= pair[1]),
            "{widths:?}"
        );
    }

    #[test]
    fn the_recommended_layout_is_shown_until_another_is_picked() {
        let first = drawn(BRIEF, View::Plan);
        assert!(first.title().contains("R1"), "{}", first.title());
        let picked = drawn(&[BRIEF, &[("layout", "F1")]].concat(), View::Plan);
        assert!(
            picked.description().contains("F1"),
            "{}",
            picked.description()
        );
        assert_ne!(first.description(), picked.description());
    }
}
