//! Packaging: volumes add, a steered wheel takes room, and what an axle carries more of leaves less.

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::Scenario;
use axlewright_core::layout::Layout;
use axlewright_core::packaging::{Room, Vehicle, Verdict, Wheel, volume_m3};
use axlewright_tests::{assert_equal_relative, show};
use core::f64::consts::{FRAC_PI_3, PI};
use proptest::prelude::*;

fn vehicle(scenario: &Scenario) -> Vehicle {
    Vehicle::from_scenario(scenario).unwrap()
}

fn density() -> impl Strategy<Value = f64> {
    1e5..1e9
}

fn wheel() -> impl Strategy<Value = Wheel> {
    (0.05..2.0, 0.02..1.0, 0.0..=FRAC_PI_3).prop_map(|(radius_m, width_m, steer_rad)| Wheel {
        radius_m,
        width_m,
        steer_rad,
    })
}

proptest! {
    #![proptest_config(config(1000))]

    /// The whole is less dense than its worst part, and no denser than three times less than its best.
    /// Doubling the motor's density saves at most half of the volume, and only half where the other parts
    /// take none.
    #[test]
    fn the_whole_is_less_dense_than_its_worst_part(
        densities in [density(), density(), density()],
        power_w in 1e3..1e6,
    ) {
        let volume = volume_m3(power_w, &densities);
        let whole = power_w / volume;
        let worst = densities.iter().copied().fold(f64::INFINITY, f64::min);
        prop_assert!(whole < worst && whole >= worst / 3.0 * (1.0 - 1e-12));
        let [motor, inverter, gears] = densities;
        let doubled = volume_m3(power_w, &[2.0 * motor, inverter, gears]);
        prop_assert!(doubled < volume && doubled > 0.5 * volume);
        let twice = volume_m3(2.0 * power_w, &densities);
        assert_equal_relative("twice the power", "", (twice, 2.0 * volume), 1e-12, 0.0);
    }

    /// A straight wheel reaches in by half its tyre. A steered one reaches in farther the farther it is
    /// steered, up to half its diagonal, and sweeps at least what it covers and at most a full circle.
    #[test]
    fn a_steered_wheel_takes_more_room(wheel in wheel(), less in 0.0..1.0, length_m in 0.05..3.0) {
        let (reach_m, _) = wheel.reach_m(length_m);
        let calmer = Wheel { steer_rad: wheel.steer_rad * less, ..wheel };
        let straight = Wheel { steer_rad: 0.0, ..wheel };
        let half_m = 0.5 * wheel.width_m;
        let diagonal_m = wheel.radius_m.hypot(half_m);
        prop_assert!((straight.reach_m(length_m).0 - half_m).abs() < 1e-15);
        prop_assert!(reach_m >= calmer.reach_m(length_m).0 - 1e-12);
        prop_assert!((half_m - 1e-12..=diagonal_m + 1e-12).contains(&reach_m));
        // A longer unit meets the corner at the latest.
        prop_assert!(wheel.reach_m(2.0 * length_m).0 >= reach_m - 1e-12);
        let area_m2 = wheel.swept_area_m2();
        let covered_m2 = 2.0 * wheel.radius_m * wheel.width_m;
        prop_assert!(area_m2 >= calmer.swept_area_m2() - 1e-12);
        prop_assert!(area_m2 >= covered_m2 - 1e-12);
        prop_assert!(area_m2 <= PI * diagonal_m * diagonal_m + 1e-12);
    }

    /// Two units are harder to fit in front than behind, although the track is as wide.
    #[test]
    fn steered_wheels_leave_less(scenario in whole(topic("packaging"), Reach::Usual, &[])) {
        let track = scenario.number("vehicle.track_front").unwrap();
        let tyre = scenario.number("vehicle.tyre_width_front").unwrap();
        let alike = with(&with(&scenario, "vehicle.track_rear", track), "vehicle.tyre_width_rear", tyre);
        let [Some(front), Some(rear)] = vehicle(&alike).rooms else { return Ok(()); };
        prop_assert!(front.free_m <= rear.free_m + 1e-12, "{}", show(&alike));
        let wider = Room::new(front.wheel, front.track_m + 0.1, &vehicle(&alike).around);
        assert_equal_relative("track", &show(&alike), (wider.free_m - front.free_m, 0.1), 1e-9, 1.0);
    }

    /// More units on an axle leave less, more power leaves less, and a layout fits exactly where every
    /// driven axle has something left.
    #[test]
    fn more_leaves_less_and_the_verdict_says_so(
        scenario in whole(topic("packaging"), Reach::Accepted, &[]),
        more in 1.0..2.0,
    ) {
        let here = vehicle(&scenario);
        let power = scenario.number("vehicle.motor_power").unwrap();
        let most = 5e6;
        let stronger = with(&scenario, "vehicle.motor_power", f64::min(more * power, most));
        let stronger = vehicle(&stronger);
        for axle in [0, 1] {
            let left = |vehicle: &Vehicle, units| vehicle.left_m(axle, units).unwrap();
            prop_assert!(left(&here, 2) <= left(&here, 1));
            prop_assert!(left(&here, 1) <= left(&here, 0));
            prop_assert!(left(&stronger, 1) <= left(&here, 1) + 1e-9);
        }
        for layout in Layout::ALL {
            let Some((left_m, verdict)) = here.judge(layout) else { continue };
            let counts = [layout.front().motors(), layout.rear().motors()];
            let all_fit = (0..2).all(|axle| counts[axle] == 0 || here.left_m(axle, counts[axle]).unwrap() >= 0.0);
            prop_assert_eq!(left_m >= 0.0, all_fit);
            prop_assert_eq!(verdict == Verdict::Fits, all_fit, "{}: {}", layout.name(), show(&scenario));
        }
    }
}
