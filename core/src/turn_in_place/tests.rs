//! The spin-up: where it ends, what it costs, and what it does where it cannot.

use super::*;
use crate::scenario::Scenario;
use crate::vehicle::DEMO_NAMES;

fn spin_of(settings: &[(&str, &str)]) -> (Question, Spin) {
    let mut scenario = Scenario::default();
    scenario.set("layout", "F2R2").unwrap();
    for (path, text) in settings {
        scenario.set(path, text).unwrap();
    }
    let question = Question::from_scenario(&scenario).unwrap();
    let spin = Spin::from_scenario(&scenario, &question).unwrap().unwrap();
    (question, spin)
}

fn long_run(spin: &Spin) -> Run {
    follow(spin, 40.0, 1e-9, &mut |_| {})
}

/// Largest difference of the end of a run from the balance that it should end in, over the motion.
fn off_balance(question: &Question, spin: &Spin, run: &Run) -> f64 {
    let want = spin.steady_motion(question);
    let (u, v, r) = run.motion;
    let reach_m = question.chassis.wheelbase_m();
    let off = (u - want.forward_m_s).abs() + (v - want.left_m_s).abs();
    (off / reach_m).max((r - want.yaw_rad_s).abs()) / want.yaw_rad_s
}

#[test]
fn a_spin_up_ends_in_the_steady_turn_and_its_energies_balance() {
    for base in DEMO_NAMES {
        for surface in ["gravel", "asphalt_dry", "snow"] {
            let (question, spin) = spin_of(&[("vehicle.base", base), ("surface.kind", surface)]);
            let run = long_run(&spin);
            let case = format!("{base} on {surface}: {run:?}");
            assert_eq!(run.outcome, SpinOutcome::Settles, "{case}");
            // It ended when it changed by less than a thousandth in a second.
            assert!(off_balance(&question, &spin, &run) < 5e-3, "{case}");
            for mark in run.marks.iter().flatten().chain([&run.end]) {
                let taken = mark.kinetic_j + mark.heat_j + mark.climb_j;
                assert!(
                    (mark.work_j - taken).abs() < 1e-5 * taken,
                    "{mark:?}: {case}"
                );
            }
        }
    }
}

/// Follows a spin-up for a time, steady or not.
fn at_end(spin: &Spin, time_s: f64) -> (f64, f64, f64) {
    let moment = at_time(spin, time_s);
    (
        moment.state[crate::planar::FORWARD],
        moment.state[crate::planar::LEFTWARD],
        moment.state[crate::planar::YAW_RATE],
    )
}

#[test]
fn the_end_of_a_long_spin_up_is_the_steady_solve_to_a_millionth() {
    for settings in [
        &[("vehicle.base", "esker")][..],
        &[
            ("vehicle.base", "kame"),
            ("turn_in_place.yaw_rate", "120 °/s"),
        ],
        &[
            ("vehicle.base", "moraine"),
            ("surface.friction_sliding", "0.5"),
            ("surface.friction_sliding_left", "0.4"),
        ],
        &[
            ("vehicle.base", "corrie"),
            ("vehicle.tyre_load_sensitivity", "0.15"),
            ("turn_in_place.front_to_rear_wheel_speed", "1.2"),
        ],
    ] {
        let (question, spin) = spin_of(settings);
        let mut run = long_run(&spin);
        run.motion = at_end(&spin, 30.0);
        let off = off_balance(&question, &spin, &run);
        assert!(off < 1e-6, "{settings:?}: {off:e} {:?}", run.motion);
    }
}

#[test]
fn what_does_not_turn_in_place_says_so() {
    let esker = ("vehicle.base", "esker");
    for (settings, want) in [
        (
            &[esker, ("vehicle.motor_torque", "60 N·m")][..],
            SpinOutcome::NeverStarts,
        ),
        (&[esker, ("layout", "R2")], SpinOutcome::LeavesPlace),
        (&[esker, ("layout", "F1R1")], SpinOutcome::NoCounterRotation),
        (&[esker, ("surface.grade", "4 %")], SpinOutcome::Drifts),
        (
            &[
                esker,
                ("vehicle.rotor_inertia", "50 kg·m²"),
                ("turn_in_place.yaw_rate", "180 °/s"),
            ],
            SpinOutcome::NeverSettles,
        ),
    ] {
        let (_, spin) = spin_of(settings);
        let run = &course(&spin).run;
        assert_eq!(run.outcome, want, "{settings:?}: {run:?}");
    }
}

#[test]
fn on_a_slope_it_drifts_downhill_about_as_far_as_the_friction_law_says() {
    for (base, grade, within) in [("esker", "0.5 %", 0.05), ("moraine", "1 %", 0.05)] {
        let (question, spin) = spin_of(&[
            ("vehicle.base", base),
            ("surface.grade", grade),
            ("turn_in_place.yaw_rate", "10 °/s"),
        ]);
        let want = question
            .drift_per_turn_m(&question.four_wheel_turn().unwrap())
            .unwrap();
        let run = &course(&spin).run;
        let place_m = run.marks[2].unwrap().place_m;
        assert!(place_m.0 < 0.0, "downhill: {place_m:?}");
        assert!(
            (-place_m.0 / want - 1.0).abs() < within,
            "{place_m:?} {want}"
        );
    }
}

#[test]
fn a_moment_is_the_run_and_points_lie_on_it() {
    let (_, spin) = spin_of(&[("vehicle.base", "moraine"), ("surface.kind", "gravel")]);
    let course = course(&spin);
    for point in course.points.iter().step_by(17) {
        let moment = at_time(&spin, point.time_s);
        assert!((moment.mark.heading_rad - point.heading_rad).abs() < 1e-9);
    }
    assert!(at_time(&spin, 0.0).mark.yaw_rad_s.abs() < 1e-12);
}
