//! Launches: energy and momentum balance for any car, and what the page says of layouts, friction and the
//! rollout is so (`site/pages/launch.md`).

use crate::scenarios::{Reach, config, topic, whole, with, with_word};
use axlewright_core::Scenario;
use axlewright_core::launch::{
    MARK_60_MPH, MARK_100_KM_H, MARK_160_KM_H, MARK_ROLLOUT, Mark, Question, Run, run,
};
use axlewright_core::layout::Layout;
use axlewright_core::traction;
use axlewright_core::vehicle::DEMO_NAMES;
use axlewright_tests::{assert_equal_relative, scenario, show};
use proptest::prelude::*;

/// Any layout is run, whatever the scenario names.
const ANY: &[&str] = &["layouts"];
/// Each motor brings its own power: from a shared battery a further motor would be nothing but another rotor.
const OWN_POWER: &[&str] = &["layouts", "vehicle.battery_power"];
/// Nothing that makes the limit of the tyres change with the speed.
const NO_AIR: &[&str] = &[
    "layouts",
    "vehicle.lift_area_front",
    "vehicle.lift_area_rear",
];

/// The question as the first sums on paper have it: tyres that grip at once, load that moves at once.
fn on_paper(scenario: &Scenario) -> Option<Question> {
    Question::from_scenario(&with_word(scenario, "launch.model", "ideal")).ok()
}

/// Asserts that a run passes each mark no later than another, beyond the error of a run.
fn no_slower(quick: &Run, slow: &Run, case: &str) {
    for (at, (quick, slow)) in quick.marks.iter().zip(&slow.marks).enumerate() {
        let Some(slow) = slow else { continue };
        let time_s = quick.map_or(f64::INFINITY, |mark| mark.time_s);
        assert!(
            time_s <= slow.time_s * (1.0 + 6e-6),
            "mark {at}: {time_s} s, {} s: {case}",
            slow.time_s
        );
    }
}

proptest! {
    #![proptest_config(config(60))]

    /// "The energy for it", and "what it found must satisfy this": m·V = ∫(F − R)dt.
    #[test]
    fn energy_and_momentum_balance(
        scenario in whole(topic("launch"), Reach::Usual, ANY)
    ) {
        let Ok(question) = Question::from_scenario(&scenario) else { return Ok(()); };
        let mass = question.chassis.mass_kg();
        for layout in [scenario.layout(), Layout::F1R2] {
            for mark in run(&question, layout).marks.into_iter().flatten() {
                let case = format!("{layout:?}, {mark:?}: {}", show(&scenario));
                let given = mark.motor_work_j * question.gear_efficiency;
                assert_equal_relative("energy", &case, (mark.taken_j(mass), given), 1e-5, 0.0);
                let momentum = (mark.push_n_s - mark.hold_n_s, mass * mark.speed_m_s);
                assert_equal_relative("momentum", &case, momentum, 1e-9, mark.push_n_s);
            }
        }
    }

    /// "One driven axle can use only its own load. Two can use all of it. More motors also bring more
    /// power, so the second half is quicker as well."
    #[test]
    fn a_further_motor_makes_no_launch_slower(
        scenario in whole(topic("launch"), Reach::Usual, OWN_POWER)
    ) {
        // A rotor can be so heavy, or its motor at its highest speed so soon, that it is dead weight to spin.
        let light = with(&scenario, "vehicle.rotor_inertia", 0.0);
        let Some(question) = on_paper(&light) else { return Ok(()); };
        let runs = Layout::ALL.map(|layout| run(&question, layout));
        let of = |layout: Layout| &runs[layout as usize];
        for (more, fewer) in [
            (Layout::F1R1, Layout::F1),
            (Layout::F1R1, Layout::R1),
            (Layout::F2, Layout::F1),
            (Layout::R2, Layout::R1),
            (Layout::F1R2, Layout::F1R1),
            (Layout::F1R2, Layout::R2),
            (Layout::F2R1, Layout::F1R1),
            (Layout::F2R1, Layout::F2),
            (Layout::F2R2, Layout::F1R2),
            (Layout::F2R2, Layout::F2R1),
        ] {
            let case = format!("{more:?}, {fewer:?}: {}", show(&scenario));
            no_slower(of(more), of(fewer), &case);
        }
    }

    /// "It is quicker while grip limits. Two cars with the same power run side by side once power does": two
    /// motors, on one axle or on both, take the same time from 100 to 160 km/h where no tyre limits there.
    #[test]
    fn the_same_power_runs_side_by_side_once_power_limits(
        scenario in whole(topic("launch"), Reach::Usual, ANY)
    ) {
        let Some(question) = on_paper(&scenario) else { return Ok(()); };
        let gained = [Layout::F1R1, Layout::R2, Layout::F2].map(|layout| {
            let run = run(&question, layout);
            let (from, to) = (run.marks[MARK_100_KM_H]?, run.marks[MARK_160_KM_H]?);
            let gripped = run.grip_until_s.into_iter().flatten().fold(0.0, f64::max);
            (gripped < from.time_s).then_some(to.time_s - from.time_s)
        });
        for other in &gained[1..] {
            if let (Some(both), Some(one)) = (gained[0], *other) {
                assert_equal_relative("gained", &show(&scenario), (both, one), 1e-5, 0.0);
            }
        }
    }

    /// "On very sticky tyres [...] the same car needs [less]": more friction is never slower.
    #[test]
    fn more_friction_is_never_slower(
        scenario in whole(topic("launch"), Reach::Usual, ANY),
        more in 1.0..2.0,
    ) {
        let friction = scenario.number("surface.friction_peak").unwrap();
        let stickier = with(&scenario, "surface.friction_peak", friction * more);
        let (Some(sticky), Some(plain)) = (on_paper(&stickier), on_paper(&scenario)) else {
            return Ok(());
        };
        for layout in [scenario.layout(), Layout::F1R1] {
            let case = format!("{layout:?} × {more}: {}", show(&scenario));
            no_slower(&run(&sticky, layout), &run(&plain, layout), &case);
        }
    }

    /// "At first [...] grip limits, and the speed climbs in a nearly straight line": no launch beats the
    /// steady limit of its tyres, neither to a speed nor over the rollout.
    #[test]
    fn no_launch_beats_the_limit_of_its_tyres(
        scenario in whole(topic("launch"), Reach::Usual, NO_AIR)
    ) {
        let scenario = with(&scenario, "vehicle.drag_area", 0.0);
        let Some(question) = on_paper(&scenario) else { return Ok(()); };
        let Ok(limits) = traction::Question::from_scenario(&scenario) else { return Ok(()); };
        for layout in Layout::ALL {
            let Ok(limit) = traction::limit(&limits, layout) else { continue; };
            let most = limit.acceleration_m_s2;
            let run = run(&question, layout);
            let time_s = |at: usize| run.marks[at].map(|mark: Mark| mark.time_s);
            let case = format!("{layout:?}, {most} m/s²: {}", show(&scenario));
            if let Some(time_s) = time_s(MARK_60_MPH) {
                prop_assert!(time_s >= 26.8224 / most * (1.0 - 6e-6), "{} s: {}", time_s, case);
            }
            if let Some(time_s) = time_s(MARK_ROLLOUT) {
                let least_s = f64::sqrt(2.0 * 0.3048 / most);
                prop_assert!(time_s >= least_s * (1.0 - 6e-6), "rollout {} s: {}", time_s, case);
            }
        }
    }

    /// "A time with the rollout left out looks much better than the [time] from rest."
    #[test]
    fn the_rollout_is_what_lies_between_the_two_times(
        scenario in whole(topic("launch"), Reach::Usual, &[])
    ) {
        let Ok(readings) = topic("launch").solve(&scenario) else { return Ok(()); };
        for layout in scenario.layouts() {
            let of = |name: &str| {
                axlewright_core::topic::number_of(&readings, &format!("layouts.{}.{name}", layout.name()))
            };
            let Some(all) = of("time_to_60_mph") else { continue; };
            let (after, first) = (of("time_to_60_mph_after_rollout").unwrap(), of("rollout_time").unwrap());
            let case = format!("{layout:?}: {}", show(&scenario));
            assert_equal_relative("sum", &case, (after + first, all), 1e-12, 0.0);
            prop_assert!(0.0 < first && first < all, "{}", case);
        }
    }
}

/// "Without traction control it does harm [...], because tyres that slide hold less than tyres that just
/// slip." Said of ordinary cars whose wheels spin, as the demo vehicles are. It is no law: over the first foot,
/// or with a tyre that wants a quarter of slip for its peak, a controller may lose a little.
#[test]
fn spinning_wheels_make_no_launch_of_a_demo_vehicle_quicker() {
    let mut spun = 0;
    for base in DEMO_NAMES {
        for layout in Layout::ALL {
            let [held, free] = ["on", "off"].map(|word| {
                let car = scenario(&[("vehicle.base", base), ("launch.traction_control", word)]);
                run(&Question::from_scenario(&car).unwrap(), layout)
            });
            if free.peak_slip.iter().all(|slip| *slip < 0.5) {
                continue;
            }
            spun += 1;
            let [held, free] = [held, free].map(|run| run.marks[MARK_60_MPH].unwrap().time_s);
            assert!(
                held < free,
                "{base} {layout:?}: {held} s held, {free} s spinning"
            );
        }
    }
    assert!(spun > 8, "only {spun} launches spin their wheels");
}
