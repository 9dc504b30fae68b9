//! The chart of a line that a reader sketches: empty axes to draw on, and later both lines.

use crate::figure::{Axis, Chart, Dash, Line, Marker, Role};
use axlewright_core::question::{Amount, Asked, Course, PLACES};
use axlewright_core::units::{System, from_si, to_si};
use axlewright_core::words::{self, Lang};

/// What is drawn on the axes.
#[derive(Clone, Copy, Debug)]
pub enum Drawn<'a> {
    /// Nothing: the reader draws.
    Nothing,
    /// The true line.
    Right,
    /// The true line beside the reader's, whose heights are SI.
    Both(&'a [f64; PLACES]),
}

/// The chart of a question; nothing where no line is asked for.
#[must_use]
pub fn chart(
    asked: &Asked,
    drawn: Drawn,
    width: f64,
    (lang, system): (Lang, System),
) -> Option<Chart> {
    let course = asked.course()?;
    let along = |x: f64| from_si(x, course.along, system);
    let up = |y: f64| from_si(y, course.most.dimension, system);
    let line = |points: Vec<(f64, f64)>, key: &str| Line {
        label: words::get(lang, key).into(),
        points,
        ..Line::default()
    };
    let mut lines = Vec::new();
    if !matches!(drawn, Drawn::Nothing) {
        let points = course.points.iter().map(|(x, y)| (along(*x), up(*y)));
        lines.push(line(points.collect(), "question.line_right"));
    }
    if let Drawn::Both(given) = drawn {
        let places = course.places();
        let points = places
            .iter()
            .zip(given)
            .map(|((x, _), y)| (along(*x), up(*y)));
        lines.push(Line {
            role: Role::Inertia,
            dash: Dash::Short,
            marker: Marker::Circle,
            ..line(points.collect(), "question.line_yours")
        });
    }
    let places = course.places();
    Some(Chart {
        width,
        height: 300.0,
        description: described(asked, course, drawn, (lang, system)),
        x_axis: Axis {
            title: words::get(lang, &["input.", asked.asked_for()].concat()).into(),
            unit: course.along.display_unit(system).into(),
            min: along(places[0].0),
            max: along(places[PLACES - 1].0),
        },
        y_axis: Axis {
            title: asked.label(lang),
            unit: asked.unit(system).into(),
            min: 0.0,
            max: course.top(system),
        },
        lines,
        decimal_mark: lang.decimal_mark(),
        ..Chart::default()
    })
}

fn described(
    asked: &Asked,
    course: &Course,
    drawn: Drawn,
    (lang, system): (Lang, System),
) -> String {
    match drawn {
        Drawn::Nothing => {
            let input = words::get(lang, &["input.", asked.asked_for()].concat());
            let [from, to] = [0, PLACES - 1].map(|at| asked.place(at, lang, system));
            let output = asked.label(lang);
            let top = Amount {
                value: to_si(course.top(system), course.most.dimension, system),
                ..course.most
            };
            let top = top.text(lang, system);
            words::fill(lang, "question.axes", &[input, &from, &to, &output, &top])
        }
        Drawn::Right => asked.answer(lang, system),
        Drawn::Both(given) => words::fill(
            lang,
            "question.lines",
            &[
                &asked.answer(lang, system),
                &asked.line(given, lang, system),
            ],
        ),
    }
}
