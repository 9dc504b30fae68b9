//! Properties of losses, of the best split and of drives.

use crate::scenarios::{Reach, config, topic, whole, with_word};
use axlewright_core::Scenario;
use axlewright_core::idle_drag::split::best;
use axlewright_core::idle_drag::{Question, drive};
use axlewright_core::layout::Layout;
use axlewright_core::motor::Machine;
use proptest::prelude::*;

const MACHINES: [&str; 2] = ["vehicle.front_machine", "vehicle.rear_machine"];

fn question(scenario: &Scenario) -> Option<Question> {
    Question::from_scenario(scenario).ok()
}

/// Energy of a drive; none where the motors are too weak, or where nothing pushes.
fn energy(scenario: &Scenario, layout: Layout) -> Option<f64> {
    let question = question(scenario)?;
    drive(&question, layout).map(|drive| drive.best.battery_j)
}

/// As near as sums of some thousand terms of this size can be.
fn slack(scenario: &Scenario, layout: Layout) -> f64 {
    let tally = question(scenario).and_then(|q| drive(&q, layout));
    tally.map_or(0.0, |drive| {
        let best = drive.best;
        1e-9 * (best.road_j.abs() + best.brake_j + best.motor_j[0] + best.motor_j[1] + 1.0)
    })
}

proptest! {
    #![proptest_config(config(60))]

    /// Whatever is accepted: no loss is negative, and every joule is found again.
    #[test]
    fn losses_are_never_negative_and_the_balance_closes(
        scenario in whole(topic("idle_drag"), Reach::Accepted, &[]),
    ) {
        if let Some(question) = question(&scenario)
            && let Some(drive) = drive(&question, scenario.layout())
        {
            for tally in [drive.best, drive.even, drive.free] {
                let scale = tally.road_j.abs() + tally.kinetic_j.abs() + tally.motor_j[0]
                    + tally.motor_j[1] + tally.brake_j.abs() + tally.gear_j + tally.auxiliary_j;
                prop_assert!((tally.battery_j - tally.spent_j()).abs() <= 1e-9 * scale);
                for lost in [tally.motor_j[0], tally.motor_j[1], tally.idle_j, tally.gear_j] {
                    prop_assert!(lost >= 0.0 && lost.is_finite());
                }
                prop_assert!(tally.brake_j >= -1e-9 * scale);
            }
        }
    }

    /// The same torque for all, or motors that are free when idle: never below, never above the best.
    #[test]
    fn nothing_beats_the_best_but_free_motors(
        scenario in whole(topic("idle_drag"), Reach::Usual, &[]),
    ) {
        let layout = scenario.layout();
        if let Some(question) = question(&scenario) && let Some(drive) = drive(&question, layout) {
            let room = slack(&scenario, layout);
            prop_assert!(drive.best.battery_j <= drive.even.battery_j + room);
            prop_assert!(drive.free.battery_j <= drive.best.battery_j + room);
        }
    }

    /// Whatever is disconnected while it is idle, nothing more is used.
    #[test]
    fn a_disconnect_never_costs(
        scenario in whole(topic("idle_drag"), Reach::Usual, &["vehicle.disconnect"]),
        axle in prop::sample::select(vec!["front", "rear", "both"]),
    ) {
        let layout = scenario.layout();
        let with = with_word(&scenario, "vehicle.disconnect", axle);
        if let (Some(with), Some(without)) = (energy(&with, layout), energy(&scenario, layout)) {
            prop_assert!(with <= without + slack(&scenario, layout));
        }
    }

    /// An idle motor never saves: at a force that one axle gives, a second one that must stay idle
    /// adds its drag.
    #[test]
    fn a_motor_that_stays_idle_only_adds_its_drag(
        scenario in whole(topic("idle_drag"), Reach::Usual, &["vehicle.disconnect"]),
        speed in 1.0..50.0_f64,
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let road = question.road_load_n(speed).max(0.0);
        let alone = question.demand(Layout::R1, speed, 0.0);
        let mut joined = question.demand(Layout::F1R1, speed, 0.0);
        joined.axles[0].most_n_m = 0.0;
        let torque = question.shaft_torque_n_m(road);
        let loss = |axles| axlewright_core::idle_drag::split::best(axles, torque).map(|s| s.loss_w);
        if let (Some(one), Some(two)) = (loss(&alone.axles), loss(&joined.axles)) {
            prop_assert!(two >= one);
            prop_assert!((two - one - joined.axles[0].idle_w).abs() <= 1e-9 * two);
        }
    }

    /// At no torque an induction motor never loses more than one with magnets.
    #[test]
    fn an_induction_motor_idles_no_worse(
        scenario in whole(topic("idle_drag"), Reach::Accepted, &MACHINES),
    ) {
        if let Some(question) = question(&scenario) {
            let magnets = question.idle_w(Machine::PermanentMagnet, &scenario);
            let induction = question.idle_w(Machine::Induction, &scenario);
            prop_assert!(0.0 <= induction && induction <= magnets);
        }
    }

    /// With magnets on both axles and no disconnect the second motor drags in any case, so it may as well
    /// work: both share at every speed and torque, and of like motors each takes its part, which leaves
    /// half of the copper loss on two axles.
    #[test]
    fn two_axles_with_magnets_always_share(
        scenario in whole(topic("idle_drag"), Reach::Usual, &["vehicle.disconnect", MACHINES[0], MACHINES[1]]),
        speed in 1.0..50.0_f64,
        part in 0.01..0.99_f64,
    ) {
        let magnets = with_word(&scenario, MACHINES[0], "permanent_magnet");
        let magnets = with_word(&magnets, MACHINES[1], "permanent_magnet");
        let magnets = with_word(&magnets, "vehicle.disconnect", "none");
        let Some(question) = question(&magnets) else { return Ok(()); };
        let axles = question.demand(Layout::F1R1, speed, 0.0).axles;
        let most_n_m = axles[0].most_n_m.min(axles[1].most_n_m);
        prop_assume!(most_n_m > 1e-3);
        let split = best(&axles, part * most_n_m).unwrap();
        prop_assert!(split.is_both(), "{:?}", split);
        let [front, rear] = split.torques_n_m;
        prop_assert!((front - rear).abs() <= 1e-9 * most_n_m, "{:?}", split);
        let alone = axles[1].copper * (part * most_n_m) * (part * most_n_m);
        let shared = split.loss_w - axles[0].run_w - axles[1].run_w;
        prop_assert!((shared - 0.5 * alone).abs() <= 1e-9 * (alone + split.loss_w));
    }

    /// Of all ways to share a torque none loses less than the one that is taken.
    #[test]
    fn no_other_split_loses_less(
        scenario in whole(topic("idle_drag"), Reach::Usual, &[]),
        speed in 1.0..50.0_f64,
        part in 0.0..1.0_f64,
        share in 0.0..=1.0_f64,
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let axles = question.demand(scenario.layout(), speed, 0.0).axles;
        let torque = part * (axles[0].most_n_m + axles[1].most_n_m);
        let Some(split) = best(&axles, torque) else { return Ok(()); };
        prop_assert!((split.total_n_m() - torque).abs() <= 1e-12 * torque);
        let other = [share * torque, torque - share * torque];
        let can = (0..2).all(|axle| other[axle] <= axles[axle].most_n_m);
        if can {
            let loss_w = axles[0].loss_w(other[0]) + axles[1].loss_w(other[1]);
            prop_assert!(split.loss_w <= loss_w * (1.0 + 1e-12), "{:?}", split);
        }
    }
}
