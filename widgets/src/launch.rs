//! The launch: the car in side view at a moment of its run, and speed against time for up to four
//! layouts with what limits them along the way.

mod chart;

use crate::figure::{Scene, SideView, side_view};
use crate::side::SideState;
use crate::visual::{Drawing, Look, View, Visual, Voice};
use axlewright_core::launch::{AxleLimit, Instant, MARK_60_MPH, Question, TOPIC, at_time, course};
use axlewright_core::layout::Layout;
use axlewright_core::load_transfer::AxleLoads;
use axlewright_core::units::Dimension as D;
use axlewright_core::{Problem, Scenario, format, math};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Side, View::Chart],
    playback: Some("launch.time"),
    ..Visual::of_topic(&TOPIC, draw)
};

/// How many times larger than it is the squat is drawn.
const SQUAT_DRAWN: f64 = 3.0;

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(match view {
        View::Chart => Drawing::Chart(chart::chart(scenario, &question, look)),
        _ => Drawing::Scene(side(scenario, &question, look)),
    })
}

/// What limits the whole car at an instant, as a figure shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Phase {
    FrontGrip,
    RearGrip,
    AllGrip,
    Torque,
    Power,
    MotorSpeed,
    Battery,
}

impl Phase {
    fn of([front, rear]: [AxleLimit; 2]) -> Self {
        let held = [front, rear].map(AxleLimit::is_of_ground);
        let free = |limit: AxleLimit| limit == AxleLimit::Undriven;
        match held {
            [true, true] => Self::AllGrip,
            [true, false] => Self::FrontGrip,
            [false, true] => Self::RearGrip,
            // Machines are alike: what ends the front one, where there is one, ends the car.
            _ => match if free(front) { rear } else { front } {
                AxleLimit::Torque => Self::Torque,
                AxleLimit::Battery => Self::Battery,
                AxleLimit::MotorSpeed => Self::MotorSpeed,
                _ => Self::Power,
            },
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::FrontGrip => "figure.launch.front_grip",
            Self::RearGrip => "figure.launch.rear_grip",
            Self::AllGrip => "figure.launch.all_grip",
            Self::Torque => "figure.launch.torque",
            Self::Power => "figure.launch.power",
            Self::MotorSpeed => "figure.launch.motor_speed",
            Self::Battery => "figure.launch.battery",
        }
    }
}

fn side(scenario: &Scenario, question: &Question, look: &Look) -> Scene {
    let voice = Voice::of(look);
    let layout: Layout = scenario.layout();
    let time_s = scenario.number("launch.time").unwrap_or(0.0);
    let (mark, attitude, slip) = at_time(question, layout, time_s);
    let instant = &mark.instant;
    let [front_n, rear_n] = instant.loads_n;
    let state = SideState {
        scenario,
        chassis: &question.chassis,
        air: &instant.air,
        slope: question.slope,
        acceleration_m_s2: instant.acceleration_m_s2,
        loads: AxleLoads { front_n, rear_n },
        forces_n: (drawn(instant, 0), drawn(instant, 1)),
    };
    let speed = voice.quantity(mark.speed_m_s, D::Speed, 3);
    let time = format::with_unit(voice.fixed(mark.time_s, 2), "s");
    let distance = voice.quantity(mark.distance_m, D::Length, 3);
    let limits = voice.word(Phase::of(instant.limits).word());
    let pitch_rad =
        math::atan((attitude.rise_front_m + attitude.drop_rear_m) / question.chassis.wheelbase_m());
    let mut subtitle = [limits.as_str(), ". ", &voice.whose(scenario)].concat();
    if question.springs.is_some() {
        let times = voice.fixed(SQUAT_DRAWN, 0);
        let squat = voice.fill("figure.squat", &[&times]);
        subtitle = [&subtitle, " ", &squat].concat();
    }
    let title = if time_s > 0.0 {
        voice.fill(
            "figure.launch.title",
            &[layout.name(), &time, &speed, &distance],
        )
    } else {
        at_the_start(voice, question, layout)
    };
    side_view(&SideView {
        title,
        subtitle,
        description: voice.fill(
            "figure.launch.describe",
            &[
                layout.name(),
                &time,
                &speed,
                &voice.acceleration(instant.acceleration_m_s2),
                &voice.force(front_n),
                &voice.force(rear_n),
                &voice.percent(slip[0]),
                &voice.percent(slip[1]),
                &limits,
            ],
        ),
        pitch_rad,
        pitch_exaggeration: SQUAT_DRAWN,
        ..state.view(look)
    })
}

/// What the run will come to: before it is played there is nothing else to say of it.
fn at_the_start(voice: Voice, question: &Question, layout: Layout) -> String {
    let run = &course(question, layout).run;
    match run.marks[MARK_60_MPH] {
        Some(mark) => {
            let time = format::with_unit(voice.fixed(mark.time_s, 2), "s");
            voice.fill("figure.launch.title_start", &[layout.name(), &time])
        }
        None => {
            let reason = voice.word(&["reason.", run.outcome.word()].concat());
            voice.fill("figure.launch.title_start_never", &[layout.name(), &reason])
        }
    }
}

/// The tractive force of an axle as it is drawn: what spins up free wheels is too little to see.
fn drawn(instant: &Instant, axle: usize) -> f64 {
    if instant.limits[axle] == AxleLimit::Undriven {
        0.0
    } else {
        instant.forces_n[axle].max(0.0)
    }
}
