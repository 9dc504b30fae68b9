//! Cornering: the car in plan view on its path, helped by two motors, by one brake, and by a brake in front
//! with motors behind, for the same yaw moment; and three charts.

mod chart;

use crate::figure::beside;
use crate::figure::mark::at;
use crate::figure::scene::margin;
use crate::figure::{
    Caution, ForceScale, NARROW, NARROW_BELOW, PlanView, PlanWheel, Scene, ValueLabel, WIDE,
    YawArrow, plan_view,
};
use crate::motors::motor_turns;
use crate::side::wheel_radius;
use crate::visual::{Drawing, Look, View, Visual, Voice, body, scale_step};
use axlewright_core::cornering::{Curve, Help, Question, TOPIC, Trim, Way, constant_radius, help};
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario, math};

/// Width from which three cars stand beside each other.
const THREE_FROM: f64 = 964.0;

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Chart],
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    let curve = constant_radius(&question);
    Ok(match view {
        View::Chart => Drawing::Chart(chart::chart(scenario, &question, &curve, look)),
        View::Side | View::Plan | View::Bars => {
            Drawing::Scene(plan(scenario, &question, &curve, look))
        }
    })
}

/// One car of the figure.
struct Shown {
    title: String,
    trim: Trim,
    help: Option<(Way, Help)>,
}

/// The word that says why a turn is not held.
fn reason(voice: Voice, curve: &Curve) -> String {
    voice.word(&["reason.", curve.held.word()].concat())
}

/// The cars that are drawn: three with help where the turn is held and a moment is wanted, else one.
fn shown(voice: Voice, question: &Question, curve: &Curve) -> Vec<Shown> {
    let alone = |trim: &Trim| Shown {
        title: voice.word("figure.cornering.alone"),
        trim: *trim,
        help: None,
    };
    let Some(plain) = &curve.asked else {
        return curve.last.iter().map(alone).collect();
    };
    let mut list = Vec::new();
    if question.moment_n_m > 0.0 {
        for way in [Way::Motors, Way::Brakes, Way::Mixed] {
            let Some(found) = help(question, way) else {
                continue;
            };
            let key = match (way, question.axle) {
                (Way::Brakes, 0) => "figure.cornering.brakes_front",
                (Way::Brakes, _) => "figure.cornering.brakes_rear",
                (Way::Mixed, _) => "figure.cornering.mixed",
                (Way::Motors, 0) => "figure.cornering.motors_front",
                _ => "figure.cornering.motors_rear",
            };
            if let Some(trim) = found.trim(question, plain) {
                list.push(Shown {
                    title: voice.word(key),
                    trim,
                    help: Some((way, found)),
                });
            }
        }
    }
    if list.is_empty() {
        list.push(alone(plain));
    }
    list
}

/// Friction that a wheel has in a turn \[N\]; none where nothing limits it.
fn friction_n(question: &Question, trim: &Trim, wheel: usize) -> Option<f64> {
    let loads = &trim.instant.loads;
    let tyre = &question.car.tyres[wheel];
    tyre.curve
        .map(|_| tyre.friction * loads.loads_n[wheel] * loads.factors[wheel])
}

fn plan(scenario: &Scenario, question: &Question, curve: &Curve, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let cars = shown(voice, question, curve);
    let narrow = look.width < NARROW_BELOW;
    // Beside each other as many as have room, each about as on a telephone; the others below them.
    let most = if narrow {
        1
    } else if look.width < THREE_FROM {
        2
    } else {
        3
    };
    let columns = cars.len().min(most);
    // The parts have a narrow margin of their own; together they keep that of the figure.
    let inset = if columns > 1 {
        margin(look.width) - margin(NARROW)
    } else {
        0.0
    };
    let each = (look.width - 2.0 * inset) / columns.max(1) as f64;
    // A scale for half the weight on one wheel holds while sliders move.
    let largest_n = scale_step(0.4 * question.car.chassis.weight_n());
    let scale = ForceScale::fit_plan(largest_n, WIDE);
    let title = title(voice, question, curve, &cars);
    let subtitle = subtitle(voice, scenario, question, curve, &cars);
    let description = describe(voice, question, curve, &cars);
    let kept = if narrow { 0.0 } else { 180.0 };
    let (mut scene, mut top) = Scene::headed(look.width, &title, &subtitle, &description, kept);
    scene.newtons_per_unit = scale.newtons_per_unit;
    let right = look.width - margin(look.width);
    let bar = voice.scale_bar(&scale);
    if narrow {
        top += 24.0;
        scene.scale_bar(&bar, right, top);
    } else {
        scene.scale_bar(&bar, right, 30.0);
    }
    let pinned = look.pinned.and_then(|pinned| {
        let question = Question::from_scenario(pinned).ok()?;
        let curve = constant_radius(&question);
        Some(shown(voice, &question, &curve))
    });
    let mut bottom = top;
    for (index, car) in cars.iter().enumerate() {
        let column = index % columns;
        if column == 0 {
            top = bottom;
        }
        let ghost = pinned.as_ref().and_then(|cars| cars.get(index));
        let view = car_view(scenario, question, curve, (voice, look, index), car, ghost);
        let part = plan_view(&PlanView {
            width: each,
            scale,
            ..view
        });
        let by = at(inset + each * column as f64, top);
        bottom = bottom.max(by.y + part.height);
        beside::add(&mut scene, part, by);
    }
    if look.caution {
        let caution = Caution {
            word: voice.word("figure.caution"),
            text: voice.word("caution.cornering"),
        };
        let left = margin(look.width);
        bottom = scene.caution(&caution, left, bottom + 8.0, look.width - 2.0 * left) + 12.0;
    }
    scene.height = bottom.ceil();
    scene
}

fn title(voice: Voice, question: &Question, curve: &Curve, cars: &[Shown]) -> String {
    if curve.asked.is_none() {
        return voice.fill("figure.cornering.title_cannot", &[&reason(voice, curve)]);
    }
    let power = |way: Way| {
        let found = cars.iter().filter_map(|car| car.help);
        found
            .filter(|(other, _)| *other == way)
            .map(|(_, help)| voice.quantity(help.power_w, D::Power, 2))
            .next()
    };
    match (power(Way::Motors), power(Way::Brakes)) {
        (Some(motors), Some(brakes)) => {
            let moment = voice.quantity(question.moment_n_m, D::Torque, 3);
            voice.fill("figure.cornering.title", &[&moment, &motors, &brakes])
        }
        _ => voice.fill(
            "figure.cornering.title_plain",
            &[&voice.acceleration(question.lateral_m_s2())],
        ),
    }
}

fn subtitle(
    voice: Voice,
    scenario: &Scenario,
    question: &Question,
    curve: &Curve,
    cars: &[Shown],
) -> String {
    let turn = cars
        .first()
        .map_or(question.speed_m_s, |car| car.trim.turn.speed_m_s);
    let line = voice.fill(
        "figure.cornering.subtitle",
        &[
            &voice.quantity(turn, D::Speed, 3),
            &voice.quantity(question.radius_m, D::Length, 3),
            &voice.acceleration(turn * turn / question.radius_m),
        ],
    );
    let mut parts = vec![line];
    if curve.asked.is_none() && curve.last.is_some() {
        parts.push(voice.word("figure.cornering.limit_shown"));
    }
    parts.push(voice.word("figure.cornering.circle"));
    parts.push(voice.whose(scenario));
    parts.join(" ")
}

/// The path of the CG near the car, forward and to the left of it \[m\].
fn path_m(question: &Question, trim: &Trim) -> Vec<(f64, f64)> {
    let radius_m = question.radius_m;
    let reach_m = 2.2 * question.car.chassis.wheelbase_m();
    (-40..=40)
        .map(|part| {
            // From the CG along the circle: the tangent there lies at the sideslip angle.
            let turned = reach_m / radius_m * f64::from(part) / 40.0;
            let angle = trim.sideslip_rad + turned;
            (
                radius_m * (math::sin(angle) - math::sin(trim.sideslip_rad)),
                radius_m * (math::cos(trim.sideslip_rad) - math::cos(angle)),
            )
        })
        .collect()
}

fn car_view(
    scenario: &Scenario,
    question: &Question,
    curve: &Curve,
    (voice, look, index): (Voice, &Look, usize),
    car: &Shown,
    ghost: Option<&Shown>,
) -> PlanView {
    let chassis = &question.car.chassis;
    let [front_m, rear_m] = question.car.tracks_m;
    let usual_m = 0.56 * chassis.wheelbase_m();
    let drawn_m = |track: f64| if track > 0.0 { track } else { usual_m };
    let trim = &car.trim;
    let wheels = core::array::from_fn(|wheel| PlanWheel {
        steer_rad: if wheel < 2 { trim.steer_rad } else { 0.0 },
        friction_n: friction_n(question, trim, wheel),
        force_n: Some(trim.instant.body_n[wheel].into()),
        ghost_n: ghost.map(|ghost| ghost.trim.instant.body_n[wheel].into()),
        label: ValueLabel {
            value: friction_n(question, trim, wheel)
                .map_or_else(String::new, |_| voice.percent(trim.instant.used[wheel])),
            words: String::new(),
        },
        // The moment is one to the left, so the left wheel is held.
        braked: car
            .help
            .is_some_and(|(_, help)| help.brake_force_n > 0.0 && wheel == 2 * help.brake_axle),
        ..PlanWheel::default()
    });
    PlanView {
        width: look.width,
        title: car.title.clone(),
        body: body(scenario),
        wheelbase_m: chassis.wheelbase_m(),
        track_front_m: drawn_m(front_m),
        track_rear_m: drawn_m(rear_m),
        wheel_radius_m: wheel_radius(scenario, chassis.wheelbase_m()),
        tyre_width_front_m: scenario.number("vehicle.tyre_width_front").unwrap_or(0.22),
        tyre_width_rear_m: scenario.number("vehicle.tyre_width_rear").unwrap_or(0.22),
        cg_behind_front_m: chassis.cg_to_front_axle_m(),
        front_motors: question.layout.front().motors(),
        rear_motors: question.layout.rear().motors(),
        wheels,
        yaw: car.help.map(|_| YawArrow {
            anticlockwise: true,
            label: ValueLabel::default(),
        }),
        path_m: path_m(question, trim),
        notes: notes(voice, question, curve, car),
        motor_turns: (index == 0).then(|| motor_turns(voice, question.layout)),
        ..PlanView::default()
    }
}

fn notes(voice: Voice, question: &Question, curve: &Curve, car: &Shown) -> Vec<ValueLabel> {
    let label = |value: String, words: String| ValueLabel { value, words };
    let angle = |trim: &Trim| voice.quantity(trim.steer_rad, D::Angle, 3);
    let mut notes = Vec::new();
    if let Some((way, help)) = &car.help {
        let power = |value: f64| voice.quantity(value, D::Power, 3);
        let word = |key: &str| voice.word(key);
        if *way != Way::Brakes {
            notes.push(label(
                ["±", &voice.force(help.motor_force_n)].concat(),
                word("figure.cornering.note_force"),
            ));
        }
        if *way != Way::Motors {
            notes.push(label(
                voice.force(help.brake_force_n),
                word("figure.cornering.note_brake"),
            ));
        }
        notes.push(label(
            power(help.power_w),
            word("figure.cornering.note_power"),
        ));
        notes.push(label(
            power(help.brake_heat_w),
            word("figure.cornering.note_heat"),
        ));
        notes.push(label(
            voice.quantity(help.deceleration_m_s2, D::Speed, 2),
            word("figure.cornering.note_slow"),
        ));
    }
    let words = match (&curve.asked, car.help) {
        (Some(plain), Some(_)) => voice.fill("figure.cornering.note_steer", &[&angle(plain)]),
        _ => voice.word("figure.cornering.note_steer_alone"),
    };
    notes.push(label(angle(&car.trim), words));
    if let Some((way, help)) = car.help
        && way != Way::Brakes
    {
        let axle = [question.layout.front(), question.layout.rear()][help.motor_axle];
        if axle != axlewright_core::layout::AxleDrive::MotorPerWheel {
            notes.push(label(
                question.layout.name().into(),
                voice.word("reason.way_needs_a_pair"),
            ));
        }
    }
    notes
}

fn describe(voice: Voice, question: &Question, curve: &Curve, cars: &[Shown]) -> String {
    let radius = voice.quantity(question.radius_m, D::Length, 3);
    let angle = |car: &Shown| voice.quantity(car.trim.steer_rad, D::Angle, 3);
    let Some(first) = cars.first() else {
        return reason(voice, curve);
    };
    let speed = voice.quantity(first.trim.turn.speed_m_s, D::Speed, 3);
    let mut said = Vec::new();
    if curve.asked.is_none() {
        said.push(reason(voice, curve));
    }
    let power = |car: &Shown| {
        car.help.map_or_else(String::new, |(_, help)| {
            voice.quantity(help.power_w, D::Power, 3)
        })
    };
    if cars.len() > 1 {
        said.push(voice.fill("figure.cornering.describe", &[&speed, &radius]));
        for car in cars {
            let parts = [car.title.as_str(), &power(car), &angle(car)];
            said.push(voice.fill("figure.cornering.describe_way", &parts));
        }
    } else {
        said.push(voice.fill(
            "figure.cornering.describe_alone",
            &[&speed, &radius, &angle(first)],
        ));
    }
    if question.car.tyres[0].curve.is_some() {
        let used = first.trim.instant.used.map(|share| voice.percent(share));
        let parts = [used[0].as_str(), &used[1], &used[2], &used[3]];
        said.push(voice.fill("figure.cornering.describe_used", &parts));
    }
    said.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::mark::Mark;

    fn scene(fields: &[(&str, &str)], width: f64) -> Scene {
        let mut scenario = TOPIC.example().unwrap();
        for (path, text) in fields {
            scenario.set(path, text).unwrap();
        }
        let look = Look {
            width,
            ..Look::default()
        };
        match VISUAL.draw(&scenario, View::Plan, &look).unwrap() {
            Drawing::Scene(scene) => scene,
            Drawing::Chart(_) => panic!("a scene"),
        }
    }

    fn brakes(scene: &Scene) -> usize {
        let is_brake = |mark: &&Mark| matches!(mark, Mark::Brake { .. });
        scene.marks.iter().filter(is_brake).count()
    }

    #[test]
    fn three_ways_are_drawn_and_every_braked_wheel_shows_its_brake() {
        for width in [320.0, 760.0, 1000.0] {
            let scene = scene(&[], width);
            let cars = scene
                .marks
                .iter()
                .filter(|mark| matches!(mark, Mark::Body(_)));
            assert_eq!(cars.count(), 3, "{width}");
            assert_eq!(brakes(&scene), 2, "{width}");
            assert!(
                scene.description.contains("A brake in front"),
                "{}",
                scene.description
            );
        }
        // Without a moment that is wanted there is one car, and nothing brakes.
        let alone = scene(&[("cornering.yaw_moment", "0 N·m")], 1000.0);
        assert_eq!(brakes(&alone), 0);
        // Nothing of the moment is left to the brake in front.
        let motors = scene(&[("cornering.front_share", "0")], 1000.0);
        assert_eq!(brakes(&motors), 1);
    }
}
