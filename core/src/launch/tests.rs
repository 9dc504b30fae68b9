//! Cases whose answer is known, the balances of a run, and what the trade knows of launches.

use super::*;
use crate::layout::Layout;
use crate::{GRAVITY_M_S2, load_transfer, math, traction};

const V_60: f64 = 26.8224;

fn scenario(fields: &[(&str, &str)]) -> Scenario {
    let mut scenario = Scenario::default();
    for (path, text) in fields {
        scenario.set(path, text).unwrap();
    }
    scenario
}

fn question(fields: &[(&str, &str)]) -> Question {
    Question::from_scenario(&scenario(fields)).unwrap()
}

/// A car of which nothing is known but what a textbook gives.
fn plain(torque: &str, power: &str, more: &[(&str, &str)]) -> Question {
    let mut fields = vec![
        ("vehicle.mass", "1500 kg"),
        ("vehicle.wheelbase", "2.7 m"),
        ("vehicle.cg_to_front_axle", "1.35 m"),
        ("vehicle.cg_height", "0.5 m"),
        ("vehicle.wheel_radius", "0.3 m"),
        ("vehicle.motor_ratio", "10"),
        ("surface.friction_peak", "1"),
        ("vehicle.motor_torque", torque),
    ];
    if !power.is_empty() {
        fields.push(("vehicle.motor_power", power));
    }
    fields.extend_from_slice(more);
    question(&fields)
}

fn time(question: &Question, layout: Layout, at: usize) -> f64 {
    run(question, layout).marks[at].unwrap().time_s
}

fn close(got: f64, want: f64, relative: f64) {
    assert!(
        ((got - want) / want).abs() <= relative,
        "{got}, want {want}"
    );
}

#[test]
fn a_constant_force_takes_mass_times_speed_over_force() {
    // F = 150·10/0.3 = 5000 N, below the grip of the rear axle.
    let question = plain("150 N·m", "", &[]);
    close(
        time(&question, Layout::R1, MARK_60_MPH),
        1500.0 * V_60 / 5000.0,
        1e-9,
    );
    let a = 5000.0 / 1500.0;
    close(
        time(&question, Layout::R1, MARK_ROLLOUT),
        math::sqrt(0.6096 / a),
        1e-9,
    );
    close(
        time(&question, Layout::R1, MARK_QUARTER_MILE),
        math::sqrt(2.0 * 402.336 / a),
        1e-9,
    );
}

#[test]
fn constant_force_then_constant_power_is_the_sum_of_both() {
    let question = plain("150 N·m", "50 kW", &[]);
    let corner = 50e3 / 5000.0;
    let want = 1500.0 * corner / 5000.0 + 1500.0 * (V_60 * V_60 - corner * corner) / (2.0 * 50e3);
    close(time(&question, Layout::R1, MARK_60_MPH), want, 1e-6);
}

#[test]
fn constant_power_takes_the_gain_of_kinetic_energy_over_the_power() {
    // A CG on the ground: both axles carry the same all the time.
    let question = plain("400 N·m", "100 kW", &[("vehicle.cg_height", "0 m")]);
    let speed = 100.0 / 3.6;
    let gained_s =
        time(&question, Layout::F1R1, MARK_100_KM_H) - time(&question, Layout::F1R1, MARK_60_MPH);
    let want_s = 1500.0 * (speed * speed - V_60 * V_60) / (2.0 * 200e3);
    close(gained_s, want_s, 1e-6);
    // From rest: t = m·V²/(2·P), less what grip withholds up to the speed at which it no longer does.
    let corner = 200e3 / (1500.0 * GRAVITY_M_S2);
    let withheld_s = 1500.0 * corner * corner / (2.0 * 200e3);
    let want_s = 1500.0 * V_60 * V_60 / (2.0 * 200e3) + withheld_s;
    close(time(&question, Layout::F1R1, MARK_60_MPH), want_s, 1e-6);
}

#[test]
fn drag_at_constant_force_follows_the_hyperbolic_tangent() {
    let question = plain("150 N·m", "", &[("vehicle.drag_area", "4")]);
    let terminal = math::sqrt(5000.0 / (0.5 * 1.225 * 4.0));
    let x = V_60 / terminal;
    let want = 1500.0 * terminal / 5000.0 * 0.5 * libm::log((1.0 + x) / (1.0 - x));
    close(time(&question, Layout::R1, MARK_60_MPH), want, 1e-7);
    let end = run(
        &plain("150 N·m", "", &[("vehicle.drag_area", "8")]),
        Layout::R1,
    );
    assert_eq!(end.outcome, Outcome::TopSpeed);
    // A constant force against drag: V = V_T·tanh(F·t/(m·V_T)).
    let top = math::sqrt(5000.0 / (0.5 * 1.225 * 8.0));
    close(
        end.end_speed_m_s,
        top * libm::tanh(5000.0 * end.end_s / (1500.0 * top)),
        1e-6,
    );
    close(end.end_speed_m_s, top, 1e-4);
}

/// Times to 60 mph and limits of the demo vehicles, as a rough sum by another hand gives them: no slip, no
/// battery limit. They are marks, rounded to a tenth of a second and a hundredth of g; gears that lose 3 %
/// account for them.
#[test]
fn the_demo_vehicles_do_what_a_rough_sum_says() {
    let layouts = [
        Layout::F1,
        Layout::R1,
        Layout::F1R1,
        Layout::F1R2,
        Layout::F2R2,
    ];
    for (base, [front_g, rear_g, two_to_one_g], seconds) in [
        ("kame", [0.44, 0.52, 1.06], [7.6, 7.5, 3.8, 3.0, 3.0]),
        ("esker", [0.41, 0.63, 0.83], [7.0, 6.3, 3.5, 2.8, 2.8]),
        ("moraine", [0.40, 0.59, 0.78], [10.9, 10.9, 5.3, 3.5, 3.2]),
        ("corrie", [0.44, 0.71, 0.83], [6.4, 5.4, 3.1, 2.5, 2.5]),
    ] {
        let rough = question(&[
            ("vehicle.base", base),
            ("launch.model", "ideal"),
            ("vehicle.gear_efficiency", "0.97"),
        ]);
        for (layout, want_s) in layouts.into_iter().zip(seconds) {
            let got_s = time(&rough, layout, MARK_60_MPH);
            assert!(
                (got_s - want_s).abs() < 0.05 + 0.03 * want_s,
                "{base} {layout:?}: {got_s}, {want_s}"
            );
        }
        let plain = scenario(&[("vehicle.base", base), ("vehicle.rolling_resistance", "0")]);
        let limits = traction::Question::from_scenario(&plain).unwrap();
        for (layout, want_g) in [(Layout::F1, front_g), (Layout::R1, rear_g)] {
            let got_g = traction::limit(&limits, layout).unwrap().acceleration_m_s2 / GRAVITY_M_S2;
            assert!(
                (got_g - want_g).abs() <= 0.0051,
                "{base} {layout:?}: {got_g}, {want_g}"
            );
        }
        let two = crate::motor_split::matching_acceleration(&limits.chassis, 1, 2) / GRAVITY_M_S2;
        assert!(
            (two - two_to_one_g).abs() <= 0.0051,
            "{base}: {two}, {two_to_one_g}"
        );
    }
}

#[test]
fn the_phases_of_an_axle_follow_each_other_to_the_end() {
    let limited = question(&[
        ("vehicle.base", "esker"),
        ("vehicle.battery_power", "100 kW"),
    ]);
    for (question, last) in [
        (question(&[("vehicle.base", "esker")]), AxleLimit::Power),
        (limited, AxleLimit::Battery),
    ] {
        for layout in Layout::ALL {
            let course = course(&question, layout);
            for axle in 0..2 {
                let phases = course.phases(axle);
                assert!(!phases.is_empty() && phases.len() <= 4);
                assert!(
                    phases
                        .windows(2)
                        .all(|pair| pair[0].1 < pair[1].1 && pair[0].0 != pair[1].0)
                );
                let (limit, until_s) = phases[phases.len() - 1];
                close(until_s, course.run.end_s, 1e-12);
                if limit != AxleLimit::Undriven {
                    assert_eq!(limit, last, "{layout:?} {axle}: {phases:?}");
                }
            }
        }
    }
}

#[test]
fn a_run_ends_where_the_air_lifts_the_front_wheels() {
    let fields = [
        ("vehicle.base", "esker"),
        ("vehicle.lift_area_front", "8 m^2"),
        ("surface.grade", "-30 %"),
    ];
    let full = question(&fields);
    for question in [full, full.on_paper()] {
        let run = run(&question, Layout::R1);
        let speed = run.end_speed_m_s;
        assert_eq!(run.outcome, Outcome::AirLifts, "{speed}");
        // Lift and the moment of the drag leave nothing on the front wheels.
        let air = question.air.forces(speed);
        let still = load_transfer::axle_loads(&question.chassis, &air, question.slope, 0.0);
        let weight_n = question.chassis.weight_n();
        assert!(still.front_n < 2e-3 * weight_n, "{}", still.front_n);
        assert!(still.front_n > -0.05 * weight_n, "{}", still.front_n);
    }
}

#[test]
fn at_first_the_car_accelerates_at_its_traction_limit() {
    for base in crate::vehicle::DEMO_NAMES {
        let fields = [
            ("vehicle.base", *base),
            ("vehicle.motor_torque", "5000 N·m"),
            ("launch.model", "ideal"),
        ];
        let limits = traction::Question::from_scenario(&scenario(&fields)).unwrap();
        for layout in Layout::ALL {
            let (mark, ..) = at_time(&question(&fields).on_paper(), layout, 0.0);
            let want = traction::limit(&limits, layout).unwrap().acceleration_m_s2;
            close(mark.instant.acceleration_m_s2, want, 1e-12);
        }
    }
}

#[test]
fn the_energy_balance_closes() {
    for base in crate::vehicle::DEMO_NAMES {
        for more in [
            ("surface.grade", "5 %"),
            ("launch.traction_control", "off"),
            ("launch.model", "ideal"),
        ] {
            let question = question(&[
                ("vehicle.base", base),
                ("vehicle.gear_efficiency", "0.95"),
                more,
            ]);
            for layout in Layout::ALL {
                for mark in run(&question, layout).marks.into_iter().flatten() {
                    let taken_j = mark.taken_j(question.chassis.mass_kg()) / 0.95;
                    close(taken_j, mark.motor_work_j, 1e-6);
                    let momentum = question.chassis.mass_kg() * mark.speed_m_s;
                    close(mark.push_n_s - mark.hold_n_s, momentum, 1e-9);
                }
            }
        }
    }
}

#[test]
fn a_far_smaller_tolerance_changes_no_time_by_three_millionths() {
    for more in [
        ("launch.traction_control", "on"),
        ("launch.traction_control", "off"),
        ("launch.model", "ideal"),
    ] {
        let question = question(&[("vehicle.base", "esker"), more]);
        let tolerance = if question.slip.is_some() { 1e-8 } else { 1e-11 };
        for layout in Layout::ALL {
            let finer = follow(&question, layout, tolerance, &mut |_, _| {});
            for (one, other) in run(&question, layout).marks.iter().zip(finer.marks) {
                close(one.unwrap().time_s, other.unwrap().time_s, 3e-6);
            }
        }
    }
}

/// Common practice, no source.
#[test]
fn rear_drive_on_road_tyres_stays_above_three_seconds_and_all_wheel_drive_gets_under() {
    for base in crate::vehicle::DEMO_NAMES {
        let strong = [
            ("vehicle.base", *base),
            ("vehicle.motor_torque", "5000 N·m"),
            ("vehicle.motor_power", "5000 kW"),
        ];
        let question = question(&strong);
        for layout in [Layout::R1, Layout::R2, Layout::F1, Layout::F2] {
            let seconds = time(&question, layout, MARK_60_MPH);
            assert!(seconds > 3.0, "{base} {layout:?}: {seconds} s");
        }
        let seconds = time(&question, Layout::F1R2, MARK_60_MPH);
        assert!(seconds < 3.0, "{base} F1R2: {seconds} s");
    }
    let sticky = question(&[
        ("vehicle.base", "corrie"),
        ("vehicle.motor_torque", "5000 N·m"),
        ("vehicle.motor_power", "5000 kW"),
        ("surface.friction_peak", "1.6"),
    ]);
    let seconds = time(&sticky, Layout::R1, MARK_60_MPH);
    assert!(seconds < 3.0, "sticky tyres: {seconds} s");
    // Downforce adds to that.
    let pressed = question(&[
        ("vehicle.base", "corrie"),
        ("vehicle.motor_torque", "5000 N·m"),
        ("vehicle.motor_power", "5000 kW"),
        ("surface.friction_peak", "1.6"),
        ("vehicle.lift_area_front", "-1 m^2"),
        ("vehicle.lift_area_rear", "-2 m^2"),
    ]);
    let quicker = time(&pressed, Layout::R1, MARK_60_MPH);
    assert!(
        quicker < seconds,
        "with downforce: {quicker} s, without {seconds} s"
    );
}

#[test]
fn traction_control_holds_the_slip_and_without_it_the_wheels_spin() {
    let on = run(&question(&[("vehicle.base", "corrie")]), Layout::F1R2);
    assert!(
        on.peak_slip.iter().all(|slip| *slip < 0.095),
        "{:?}",
        on.peak_slip
    );
    let off = run(
        &question(&[
            ("vehicle.base", "corrie"),
            ("launch.traction_control", "off"),
        ]),
        Layout::F1R2,
    );
    assert!(
        off.peak_slip.iter().all(|slip| *slip > 0.5),
        "{:?}",
        off.peak_slip
    );
    let slower = off.marks[MARK_60_MPH].unwrap().time_s - on.marks[MARK_60_MPH].unwrap().time_s;
    assert!(slower > 0.1, "{slower} s");
}

#[test]
fn springs_delay_the_load_and_the_rear_drive_car_that_needs_it() {
    let sprung = question(&[
        ("vehicle.base", "esker"),
        ("vehicle.motor_torque", "1000 N·m"),
    ]);
    let stiff = Question {
        springs: None,
        ..sprung
    };
    let speed = |question: &Question| at_time(question, Layout::R1, 0.2).0.speed_m_s;
    let (late, early) = (speed(&sprung), speed(&stiff));
    assert!(
        late < 0.97 * early,
        "{late} m/s, {early} m/s without springs"
    );
}

#[test]
fn a_shared_battery_limits_all_motors_together() {
    let free = question(&[("vehicle.base", "esker"), ("launch.model", "ideal")]);
    let shared = Question {
        battery_w: 180e3,
        ..free
    };
    let one = time(&free, Layout::R1, MARK_160_KM_H);
    let four = run(&shared, Layout::F2R2);
    let seconds = four.marks[MARK_160_KM_H].unwrap().time_s;
    assert!(seconds < one, "more grip at first");
    let end = follow_power(&shared, Layout::F2R2);
    assert!(end <= 180e3 * (1.0 + 1e-9), "{end} W");
    let full = Question {
        battery_w: 180e3,
        ..question(&[("vehicle.base", "esker")])
    };
    let end = follow_power(&full, Layout::F2R2);
    assert!(end <= 180e3 * (1.0 + 1e-9), "{end} W");
}

/// Most power of the motors along a run.
fn follow_power(question: &Question, layout: Layout) -> f64 {
    let mut most = 0.0_f64;
    let _ = follow(question, layout, 1e-6, &mut |_, now| {
        most = most.max(now.motor_w)
    });
    most
}

#[test]
fn what_cannot_launch_says_why() {
    for (more, layout, want) in [
        (
            &[("surface.grade", "60 %")][..],
            Layout::R1,
            Outcome::TooWeak,
        ),
        (
            &[("surface.grade", "20 %"), ("surface.kind", "ice")],
            Layout::F1R2,
            Outcome::NoGrip,
        ),
        (
            &[("surface.kind", "ice"), ("surface.grade", "15 %")],
            Layout::F1,
            Outcome::NoGrip,
        ),
        (
            &[("vehicle.motor_torque", "1 N·m")],
            Layout::F1,
            Outcome::TooWeak,
        ),
        (
            &[("vehicle.motor_power", "9 kW"), ("vehicle.drag_area", "20")],
            Layout::R1,
            Outcome::TopSpeed,
        ),
    ] {
        for model in ["full", "ideal"] {
            for control in ["on", "off"] {
                let mut fields = vec![
                    ("vehicle.base", "moraine"),
                    ("launch.model", model),
                    ("launch.traction_control", control),
                ];
                fields.extend_from_slice(more);
                let run = run(&question(&fields), layout);
                assert_eq!(run.outcome, want, "{fields:?}");
            }
        }
    }
}

#[test]
fn the_front_wheels_stay_on_the_ground() {
    let question = question(&[
        ("vehicle.base", "corrie"),
        ("vehicle.cg_height", "1.2 m"),
        ("vehicle.motor_torque", "3000 N·m"),
        ("launch.model", "ideal"),
        ("surface.friction_peak", "1.6"),
    ]);
    let (mark, ..) = at_time(&question, Layout::R2, 0.5);
    assert_eq!(mark.instant.limits[1], AxleLimit::FrontLift);
    assert!(mark.instant.loads_n[0].abs() < 1e-6 * question.chassis.weight_n());
    let lift = question.chassis.cg_to_rear_axle_m() / question.chassis.cg_height_m();
    assert!(mark.instant.acceleration_m_s2 / GRAVITY_M_S2 < lift * 1.01);
}

#[test]
fn a_moment_of_the_run_is_on_the_run() {
    let question = question(&[("vehicle.base", "esker")]);
    let all = run(&question, Layout::F1R1);
    let mark = all.marks[MARK_60_MPH].unwrap();
    let (again, attitude, slip) = at_time(&question, Layout::F1R1, mark.time_s);
    close(again.speed_m_s, V_60, 1e-7);
    close(again.distance_m, mark.distance_m, 1e-6);
    assert!(attitude.drop_rear_m > 0.0 && attitude.rise_front_m > 0.0);
    assert!(slip[0] > 0.0 && slip[1] > 0.0);
    let (still, ..) = at_time(&question, Layout::F1R1, 0.0);
    assert!(still.distance_m.abs() < 1e-12 && still.time_s.abs() < 1e-12);
}

/// Found by a fuzz target: once lift had taken the rear axle off the ground, the acceleration of a step was
/// sought in vain, and 20 000 steps were tried.
#[test]
fn an_axle_without_load_does_not_hold_the_run_up() {
    let mut question = question(&[
        ("vehicle.base", "esker"),
        ("vehicle.drag_area", "0 m²"),
        ("vehicle.lift_area_rear", "10 m²"),
        ("surface.friction_peak", "5"),
    ]);
    question.slip = None;
    question.springs = None;
    for layout in Layout::ALL {
        let run = run(&question, layout);
        assert!(run.marks[MARK_60_MPH].is_some(), "{layout:?}");
        assert!(run.steps < 1000, "{layout:?}: {} steps", run.steps);
    }
}
