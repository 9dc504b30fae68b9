//! A moment of the spin-up: the car as it has turned, what its patches do, and what they left on the
//! ground.

use crate::figure::{
    Caution, ForceScale, PlanView, PlanWheel, Scene, TurningCentre, ValueLabel, YawArrow, plan_view,
};
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Look, Voice, body, scale_step};
use axlewright_core::turn_in_place::{AxleState, Moment, Point, Question, Spin, at_time, course};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Scenario, format, math, planar};

/// Length of the longest sliding arrow, of the width of the figure.
const SLIDE_DRAWN: f64 = 0.05;
/// Angle between two points of a trace \[rad\].
const TRACE_STEP_RAD: f64 = 0.07;
/// Angle over which a trace is drawn: a little more than once round.
const TRACE_RAD: f64 = 6.6;

/// Sliding speed that one scene unit stands for: a patch of the steady turn has an arrow of one length
/// whatever the yaw rate that is asked for. `ratio_m`: wheel speed over yaw rate.
pub(super) fn speed_scale(question: &Question, ratio_m: f64, yaw_rad_s: f64, width: f64) -> f64 {
    let along = |axle: &AxleState| axle.speed_factor * ratio_m - 0.5 * axle.track_m;
    let along_m = along(&question.front)
        .abs()
        .max(along(&question.rear).abs());
    let slide_m = math::hypot(along_m, 0.5 * question.chassis.wheelbase_m());
    slide_m * yaw_rad_s / longest_drawn(width)
}

/// How long the arrow of the fastest patch is in a steady turn.
fn longest_drawn(width: f64) -> f64 {
    SLIDE_DRAWN * width.clamp(500.0, 1000.0)
}

/// Sliding velocity of a patch over the ground, forward and to the left of the car.
fn slide_m_s(spin: &Spin, state: &planar::State, wheel: usize) -> (f64, f64) {
    let (forward, left) = spin.car.hub_m_s(state, wheel);
    let driven = spin.driven[wheel / 2];
    let tread = spin.car.radius_m * state[planar::WHEEL + wheel];
    // A wheel that rolls freely slides only sideways.
    (if driven { forward - tread } else { 0.0 }, left)
}

/// Where a wheel was at the points of a run, from where the CG is now.
fn trace(spin: &Spin, points: &[Point], wheel: usize, now: &Moment) -> Vec<(f64, f64)> {
    let (ahead_m, left_m) = spin.car.place_m(wheel);
    let (x0, y0) = now.mark.place_m;
    let mut trace = Vec::new();
    let mut last_rad = f64::INFINITY;
    let shown = points.iter().filter(|point| {
        point.time_s <= now.mark.time_s && now.mark.heading_rad - point.heading_rad < TRACE_RAD
    });
    for point in shown {
        if (point.heading_rad - last_rad).abs() < TRACE_STEP_RAD {
            continue;
        }
        last_rad = point.heading_rad;
        trace.push(at(
            point.place_m,
            point.heading_rad,
            (ahead_m, left_m),
            (x0, y0),
        ));
    }
    let (heading, place) = (now.mark.heading_rad, now.mark.place_m);
    trace.push(at(place, heading, (ahead_m, left_m), (x0, y0)));
    trace
}

fn at(
    (x, y): (f64, f64),
    heading_rad: f64,
    (ahead_m, left_m): (f64, f64),
    (x0, y0): (f64, f64),
) -> (f64, f64) {
    let (sin, cos) = (math::sin(heading_rad), math::cos(heading_rad));
    (
        x - x0 + ahead_m * cos - left_m * sin,
        y - y0 + ahead_m * sin + left_m * cos,
    )
}

pub(super) fn moment(scenario: &Scenario, question: &Question, spin: &Spin, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let now = at_time(spin, scenario.number("turn_in_place.time").unwrap_or(0.0));
    let course = course(spin);
    let loads = &now.instant.loads;
    let wheel = |at: usize| PlanWheel {
        friction_n: Some(spin.car.tyres[at].friction * loads.factors[at] * loads.loads_n[at]),
        force_n: Some((now.instant.body_n[at][0], now.instant.body_n[at][1])),
        sliding_m_s: Some(slide_m_s(spin, &now.state, at)),
        ..PlanWheel::default()
    };
    let largest_n = 0.5 * question.front.friction * question.front.load_n.max(question.rear.load_n);
    let scale = ForceScale::fit_plan(scale_step(largest_n), look.width);
    let fastest_m_s = (0..4)
        .map(|at| slide_m_s(spin, &now.state, at))
        .map(|(along, across)| math::hypot(along, across))
        .fold(0.0, f64::max);
    let chassis = &question.chassis;
    let yaw = now.mark.yaw_rad_s;
    let turned = voice.quantity(now.mark.heading_rad, D::Angle, 3);
    let time = format::with_unit(voice.fixed(now.mark.time_s, 2), "s");
    let rate = voice.quantity(yaw, D::YawRate, 3);
    let way = format::with_unit(voice.fixed(now.mark.way_off_m(), 2), "m");
    let slide = format::with_unit(voice.fixed(fastest_m_s, 2), "m/s");
    let turns = yaw > 0.05 * spin.yaw_rate_rad_s;
    let note = |value: &str, key: &str| ValueLabel {
        value: value.into(),
        words: voice.word(key),
    };
    let outcome = voice.word(&["reason.", course.run.outcome.word()].concat());
    let point = |p: &Point| {
        (
            p.place_m.0 - now.mark.place_m.0,
            p.place_m.1 - now.mark.place_m.1,
        )
    };
    let path = course.points.iter().filter(|p| p.time_s <= now.mark.time_s);
    plan_view(&PlanView {
        width: look.width,
        title: voice.fill("figure.turn_in_place.moment", &[&time, &turned]),
        subtitle: [outcome.as_str(), " ", &voice.whose(scenario)].concat(),
        description: voice.fill(
            "figure.turn_in_place.moment_describe",
            &[layout.name(), &time, &turned, &rate, &way, &slide],
        ),
        body: body(scenario),
        wheelbase_m: chassis.wheelbase_m(),
        track_front_m: question.front.track_m,
        track_rear_m: question.rear.track_m,
        wheel_radius_m: wheel_radius(scenario, chassis.wheelbase_m()),
        tyre_width_front_m: question.tyre_widths_m[0],
        tyre_width_rear_m: question.tyre_widths_m[1],
        cg_behind_front_m: chassis.cg_to_front_axle_m(),
        heading_rad: now.mark.heading_rad,
        turning_room: true,
        front_motors: layout.front().motors(),
        rear_motors: layout.rear().motors(),
        scale,
        scale_bar: Some(voice.scale_bar(&scale)),
        // A car that slides down its slope outruns every turn: its arrows stay on the page.
        m_s_per_unit: speed_scale(
            question,
            spin.speed_ratio_m,
            spin.yaw_rate_rad_s,
            look.width,
        )
        .max(fastest_m_s / (1.5 * longest_drawn(look.width))),
        wheels: [wheel(0), wheel(1), wheel(2), wheel(3)],
        yaw: turns.then(|| YawArrow {
            anticlockwise: true,
            label: ValueLabel::default(),
        }),
        turning_centre: turns.then(|| TurningCentre {
            forward_m: -now.state[planar::LEFTWARD] / yaw,
            left_m: now.state[planar::FORWARD] / yaw,
            label: voice.word("figure.turn_in_place.centre"),
        }),
        path_m: path.step_by(4).map(point).collect(),
        traces_m: [0, 1, 2, 3]
            .map(|wheel| trace(spin, &course.points, wheel, &now))
            .to_vec(),
        legend: [
            "figure.turn_in_place.circle",
            "figure.turn_in_place.arrow",
            "figure.turn_in_place.slide",
            "figure.turn_in_place.trace",
        ]
        .map(|key| voice.word(key))
        .to_vec(),
        notes: vec![
            note(&rate, "figure.turn_in_place.note_yaw"),
            note(&slide, "figure.turn_in_place.note_slide"),
            note(&way, "figure.turn_in_place.note_way"),
        ],
        caution: look.caution.then(|| Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.turn_in_place"),
        }),
        reach_aside_m: 0.0,
        motor_turns: Some(motor_turns(voice, layout)),
    })
}
