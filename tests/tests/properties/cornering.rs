//! Cornering: what the page says of motors and brakes, of the single track, and of tyres whose friction
//! is shared out and never added to.

use crate::scenarios::{Reach, config, topic, whole, with};
use axlewright_core::Scenario;
use axlewright_core::cornering::{Question, Reaches, SingleTrack, Trim, Turn, Way, help, trim};
use axlewright_core::layout::Layout;
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

/// A slope has no steady turn.
const LEVEL: &[&str] = &["surface.grade"];

fn question(scenario: &Scenario) -> Option<Question> {
    Question::from_scenario(scenario).ok()
}

fn steady(question: &Question) -> Option<Trim> {
    let turn = Turn::plain(question.speed_m_s, 1.0 / question.radius_m);
    trim(question, &turn, None)
}

proptest! {
    #![proptest_config(config(400))]

    /// A pair's forces add up to nothing along the car and to the moment about it. One brake needs twice
    /// the force, all of which holds the car back and becomes heat.
    #[test]
    fn motors_pass_the_power_round_and_a_brake_burns_it(
        scenario in whole(topic("cornering"), Reach::Accepted, LEVEL),
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let ways = [Way::Motors, Way::Brakes].map(|way| help(&question, way));
        let [Some(motors), Some(brakes)] = ways else { return Ok(()); };
        let case = show(&scenario);
        let track_m = question.car.tracks_m[question.axle];
        let (wanted, speed) = (question.moment_n_m, question.speed_m_s);
        let pair = (motors.motor_force_n * track_m, wanted);
        assert_equal_relative("ΔF·t", &case, pair, 1e-12, 0.0);
        let pair = (brakes.brake_force_n * 0.5 * track_m, wanted);
        assert_equal_relative("F_b·t/2", &case, pair, 1e-12, 0.0);
        let pair = (brakes.brake_force_n, 2.0 * motors.motor_force_n);
        assert_equal_relative("force of a brake", &case, pair, 1e-12, 0.0);
        let pair = (brakes.brake_heat_w, brakes.brake_force_n * speed);
        assert_equal_relative("heat", &case, pair, 1e-12, 0.0);
        let held_n = brakes.deceleration_m_s2 * question.car.chassis.mass_kg();
        assert_equal_relative("m·d", &case, (held_n, brakes.brake_force_n), 1e-12, 0.0);
        prop_assert_eq!((motors.brake_force_n, motors.brake_heat_w, motors.deceleration_m_s2), (0.0, 0.0, 0.0));
        // Without losses the pair is free; with any it still asks for less than the brake.
        let lossless = Question { drive_efficiency: 1.0, ..question };
        prop_assert_eq!(help(&lossless, Way::Motors).map(|help| help.power_w), Some(0.0));
        prop_assert!(motors.power_w >= 0.0 && motors.power_w <= brakes.power_w, "{}", case);
        prop_assert!(brakes.power_w >= brakes.brake_heat_w);
    }

    /// Brakes in front and motors behind lie between the two where the axles are as wide.
    #[test]
    fn the_mixed_way_lies_between(
        scenario in whole(topic("cornering"), Reach::Usual, LEVEL),
    ) {
        let track = scenario.number("vehicle.track_front").unwrap();
        let scenario = with(&scenario, "vehicle.track_rear", track);
        let Some(question) = question(&scenario) else { return Ok(()); };
        let power = |way| help(&question, way).map(|help| help.power_w);
        if let (Some(motors), Some(mixed), Some(brakes)) =
            (power(Way::Motors), power(Way::Mixed), power(Way::Brakes))
        {
            let share = question.front_share;
            let want = share * brakes + (1.0 - share) * motors;
            assert_equal_relative("power", &show(&scenario), (mixed, want), 1e-12, 1e-6);
        }
    }

    /// At the characteristic speed the steer angle is twice the Ackermann angle; at the critical speed
    /// none is left. A car has the one or the other, by the sign of its gradient.
    #[test]
    fn characteristic_and_critical_speed_are_what_they_are_called(
        scenario in whole(topic("cornering"), Reach::Accepted, LEVEL),
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let track = SingleTrack::of(&question);
        let case = show(&scenario);
        let steer = |speed_m_s| SingleTrack { speed_m_s, ..track }.steer_rad();
        let ackermann = track.ackermann_rad();
        match (track.characteristic_m_s(), track.critical_m_s()) {
            (Some(speed), None) => {
                prop_assert!(track.gradient() > 0.0);
                let pair = (steer(speed), 2.0 * ackermann);
                assert_equal_relative("at V_c", &case, pair, 1e-9, 0.0);
            }
            (None, Some(speed)) => {
                prop_assert!(track.gradient() < 0.0);
                assert_equal_relative("at V_k", &case, (steer(speed), 0.0), 1e-9, ackermann);
            }
            (None, None) => prop_assert!(track.gradient() == 0.0),
            both => return Err(TestCaseError::fail(format!("{both:?}: {case}"))),
        }
        // At walking pace the wheels follow the circle.
        assert_equal_relative("slow", &case, (steer(1e-6), ackermann), 1e-9, 0.0);
    }
}

proptest! {
    #![proptest_config(config(60))]

    /// In a steady turn the wheels carry the weight and the air's lift, and no tyre gives more than its
    /// friction has: moving torque from left to right adds none.
    #[test]
    fn no_tyre_gives_more_than_its_friction(
        scenario in whole(topic("cornering"), Reach::Usual, LEVEL),
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let Some(plain) = steady(&question) else { return Ok(()); };
        let case = show(&scenario);
        let helped = [Way::Motors, Way::Brakes, Way::Mixed]
            .into_iter()
            .filter_map(|way| help(&question, way)?.trim(&question, &plain));
        for trim in helped.chain([plain]) {
            for axle in [0, 1] {
                let used = trim.used(axle);
                prop_assert!((0.0..=1.0 + 1e-6).contains(&used), "{}: {}", used, case);
            }
        }
    }

    /// No layout's reach is against the turn, and a single motor behind an open differential has none.
    #[test]
    fn a_single_motor_makes_no_moment(
        scenario in whole(topic("cornering"), Reach::Usual, LEVEL),
    ) {
        let Some(question) = question(&scenario) else { return Ok(()); };
        let Some(trim) = steady(&question) else { return Ok(()); };
        let case = show(&scenario);
        let reaches = Reaches::new(&question, &trim);
        for layout in Layout::ALL {
            let Some(reach) = reaches.of(layout) else { continue };
            let size = question.car.chassis.weight_n();
            prop_assert!(reach.moment_n_m >= -1e-6 * size, "{:?}: {}", reach, case);
        }
        let moment = |layout| reaches.of(layout).map(|reach| reach.moment_n_m);
        for single in [Layout::F1, Layout::R1] {
            if let Some(moment) = moment(single) {
                prop_assert!(moment.abs() <= 1e-6, "{} {}: {}", single.name(), moment, case);
            }
        }
    }
}
