//! How long the physics takes: the answer of each topic to its example, a whole run of one layout of each
//! demo vehicle, ten seconds of the planar car at 1 kHz, the cycle for all layouts, and single solves that
//! the reference scripts make too.
//!
//! ```sh
//! cargo run --release --package axlewright-core --example pace
//! ```
//!
//! prints JSON: microseconds for each. With the number of a part and a count, as in `pace 3 1`, it does that
//! part so many times and prints nothing: so a program that counts instructions may watch it. Built for wasm,
//! where there is no clock, each call of `main` does the next part of the work, in the same order, and the
//! page that called takes the time.
#![allow(clippy::disallowed_macros, reason = "it prints its result")]

use axlewright_core::layout::Layout;
use axlewright_core::planar::{Car, Controls, advance};
use axlewright_core::topic::TOPICS;
use axlewright_core::vehicle::DEMO_NAMES;
use axlewright_core::{Problem, Scenario, idle_drag, launch, traction, turn_in_place};
use std::process::ExitCode;
use std::sync::atomic::{AtomicU32, Ordering};

/// Layouts whose launch is timed: the slowest to compute, and one with both axles driven.
const LAYOUTS: [Layout; 2] = [Layout::R1, Layout::F2R2];

/// A part of the work.
enum Part {
    /// The answer of a topic, as an element asks for it.
    Topic(usize),
    /// A full launch.
    Launch(usize, Layout),
    /// Ten seconds of the planar car, in steps of a millisecond by the method of order four.
    Planar,
    /// The published cycle with the best split for every layout.
    Cycle,
    /// The traction limit of one layout.
    Limit,
    /// The slow turn in place of four driven wheels.
    Turn,
    /// The best split of the torque at one speed and demand.
    Split,
}

fn parts() -> Vec<Part> {
    let topics = (0..TOPICS.len()).map(Part::Topic);
    let launches = DEMO_NAMES
        .iter()
        .enumerate()
        .flat_map(|(vehicle, _)| LAYOUTS.map(|layout| Part::Launch(vehicle, layout)));
    let whole = [
        Part::Planar,
        Part::Cycle,
        Part::Limit,
        Part::Turn,
        Part::Split,
    ];
    topics.chain(launches).chain(whole).collect()
}

impl Part {
    #[cfg(not(target_family = "wasm"))]
    fn name(&self) -> String {
        match self {
            Self::Topic(at) => TOPICS[*at].name.into(),
            Self::Launch(at, layout) => format!("{} {}", DEMO_NAMES[*at], layout.name()),
            Self::Planar => "planar 10 s".into(),
            Self::Cycle => "cycle, eight layouts".into(),
            Self::Limit => "one traction limit".into(),
            Self::Turn => "one steady turn".into(),
            Self::Split => "one best split".into(),
        }
    }

    /// How often it is done in one go, so that a clock of a tenth of a millisecond can tell.
    fn times(&self) -> u32 {
        match self {
            Self::Topic(at) if matches!(TOPICS[*at].name, "launch" | "choice") => 8,
            Self::Topic(_) => 200,
            Self::Launch(..) => 20,
            Self::Planar | Self::Cycle => 2,
            Self::Limit | Self::Turn | Self::Split => 2000,
        }
    }

    /// Does it, each time for a car of another mass: nothing that is kept may answer.
    fn run(&self, count: &AtomicU32) -> Result<(), Problem> {
        let mut scenario = match self {
            Self::Topic(at) => TOPICS[*at].example()?,
            Self::Launch(vehicle, _) => {
                let mut scenario = Scenario::default();
                scenario.set("vehicle.base", DEMO_NAMES[*vehicle])?;
                scenario
            }
            _ => {
                let mut scenario = Scenario::default();
                scenario.set("vehicle.base", "esker")?;
                scenario
            }
        };
        let mass_kg = scenario.require("vehicle.mass")?;
        for _ in 0..self.times() {
            let heavier = 1e-5 * f64::from(count.fetch_add(1, Ordering::Relaxed) % 10_000);
            scenario.set_number("vehicle.mass", mass_kg * (1.0 + heavier))?;
            match self {
                Self::Topic(at) => {
                    TOPICS[*at].brief(&scenario)?;
                }
                Self::Launch(_, layout) => {
                    let question = launch::Question::from_scenario(&scenario)?;
                    std::hint::black_box(launch::run(&question, *layout));
                }
                Self::Planar => drive(&Car::from_scenario(&scenario, Layout::F2R2)?),
                Self::Cycle => {
                    let question = idle_drag::Question::from_scenario(&scenario)?;
                    for layout in Layout::ALL {
                        std::hint::black_box(idle_drag::drive(&question, layout));
                    }
                }
                Self::Limit => {
                    let question = traction::Question::from_scenario(&scenario)?;
                    let _ = std::hint::black_box(traction::limit(&question, Layout::F1R1));
                }
                Self::Turn => {
                    let question = turn_in_place::Question::from_scenario(&scenario)?;
                    let _ = std::hint::black_box(question.four_wheel_turn());
                }
                Self::Split => {
                    let question = idle_drag::Question::from_scenario(&scenario)?;
                    let axles = question.axles(Layout::F1R1, 400.0);
                    let _ = std::hint::black_box(idle_drag::split::best(&axles, 60.0));
                }
            }
        }
        Ok(())
    }
}

/// Ten seconds of a turn at 1 kHz.
fn drive(car: &Car) {
    let controls = Controls::steered(0.03, 0.0);
    let mut state = car.rolling(&controls, (20.0, 0.0, 0.0));
    for _ in 0..10_000 {
        advance(car, &controls, &mut state, 1e-3);
    }
    std::hint::black_box(state);
}

static COUNT: AtomicU32 = AtomicU32::new(0);

#[cfg(target_family = "wasm")]
fn main() -> ExitCode {
    static NEXT: AtomicU32 = AtomicU32::new(0);
    let parts = parts();
    let next = NEXT.fetch_add(1, Ordering::Relaxed) as usize % parts.len();
    match parts[next].run(&COUNT) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::FAILURE,
    }
}

#[cfg(not(target_family = "wasm"))]
fn main() -> ExitCode {
    const ROUNDS: usize = 25;
    let mut asked = std::env::args().skip(1).map(|text| text.parse().ok());
    if let (Some(Some(number)), Some(Some(count))) = (asked.next(), asked.next()) {
        let done = (0..count).all(|_: usize| {
            let parts = parts();
            let part: Option<&Part> = parts.get::<usize>(number);
            part.is_some_and(|part| part.run(&COUNT).is_ok())
        });
        return if done {
            ExitCode::SUCCESS
        } else {
            ExitCode::FAILURE
        };
    }
    let mut lines = Vec::new();
    for part in parts() {
        // The least: others work on the machine too.
        let mut least_us = f64::INFINITY;
        for _ in 0..ROUNDS {
            let began = std::time::Instant::now();
            if part.run(&COUNT).is_err() {
                return ExitCode::FAILURE;
            }
            least_us =
                (1e6 * began.elapsed().as_secs_f64() / f64::from(part.times())).min(least_us);
        }
        let (name, times) = (part.name(), part.times());
        lines.push(format!(
            "{{ \"name\": \"{name}\", \"times\": {times}, \"us\": {least_us:.2} }}"
        ));
    }
    println!("[\n{}\n]", lines.join(",\n"));
    ExitCode::SUCCESS
}
