//! Traction limits in relation: what can never be worse, what must not matter, what must scale. Where the
//! page claims it, its words stand above the property (`site/pages/traction.md`).

use crate::scenarios::{Reach, config, topic, whole, with, with_word};
use axlewright_core::layout::Layout;
use axlewright_core::traction::{Limit, LimitedBy, Question, limit};
use axlewright_core::vehicle::Slope;
use axlewright_core::{GRAVITY_M_S2, Scenario};
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

const WITHOUT_SHARE: &[&str] = &["traction.front_share", "layouts"];
const INDEPENDENT: &[&str] = &[
    "layouts",
    "traction.front_axle_type",
    "traction.rear_axle_type",
];
/// Everything that acts through an absolute force: air, and tyres or motors given in newtons.
const WITHOUT_FORCES: &[&str] = &[
    "layouts",
    "traction.speed",
    "traction.motor_limit",
    "vehicle.tyre_reference_load",
];

/// Left and right alike, no fixed split, motors as strong as needed, no driveshaft that loads one side.
const EVEN: &[&str] = &[
    "layouts",
    "traction.front_share",
    "traction.motor_limit",
    "traction.front_axle_type",
    "traction.rear_axle_type",
    "surface.friction_peak_left",
    "surface.friction_peak_right",
];
/// As the page has it: besides, no air, and a friction that minds no load.
const PLAIN: &[&str] = &[
    "layouts",
    "traction.front_share",
    "traction.motor_limit",
    "traction.front_axle_type",
    "traction.rear_axle_type",
    "surface.friction_peak_left",
    "surface.friction_peak_right",
    "traction.speed",
    "vehicle.tyre_load_sensitivity",
];

fn limit_of(scenario: &Scenario, layout: Layout) -> Option<Limit> {
    let question = Question::from_scenario(scenario).ok()?;
    limit(&question, layout).ok()
}

/// Asserts that one limit is not below another, beyond round-off.
fn not_worse(better: Option<Limit>, worse: Option<Limit>, case: &str) {
    let (Some(better), Some(worse)) = (better, worse) else {
        return;
    };
    let (better, worse) = (better.acceleration_m_s2, worse.acceleration_m_s2);
    let slack = 1e-9 * (1.0 + better.abs().max(worse.abs()));
    assert!(better >= worse - slack, "{better} < {worse} m/s²: {case}");
}

proptest! {
    #![proptest_config(config(500))]

    #[test]
    fn ideal_all_wheel_drive_is_never_worse_than_one_axle(
        scenario in whole(topic("traction"), Reach::Usual, WITHOUT_SHARE)
    ) {
        let of = |layout| limit_of(&scenario, layout);
        for (all, one) in [
            (Layout::F1R1, Layout::F1),
            (Layout::F1R1, Layout::R1),
            (Layout::F1R2, Layout::F1),
            (Layout::F1R2, Layout::R2),
            (Layout::F2R1, Layout::F2),
            (Layout::F2R1, Layout::R1),
            (Layout::F2R2, Layout::F2),
            (Layout::F2R2, Layout::R2),
        ] {
            not_worse(of(all), of(one), &format!("{all:?} against {one:?}: {}", show(&scenario)));
        }
    }

    /// A solid axle is left out: its driveshaft loads one side, which gains where that side grips.
    #[test]
    fn a_motor_per_wheel_is_never_worse_than_one_for_both(
        scenario in whole(topic("traction"), Reach::Usual, INDEPENDENT)
    ) {
        let of = |layout| limit_of(&scenario, layout);
        for (two, one) in [
            (Layout::F2, Layout::F1),
            (Layout::R2, Layout::R1),
            (Layout::F1R2, Layout::F1R1),
            (Layout::F2R1, Layout::F1R1),
            (Layout::F2R2, Layout::F1R2),
            (Layout::F2R2, Layout::F2R1),
        ] {
            not_worse(of(two), of(one), &format!("{two:?} against {one:?}: {}", show(&scenario)));
        }
    }

    #[test]
    fn no_fixed_split_is_better_than_the_ideal_one(
        scenario in whole(topic("traction"), Reach::Usual, WITHOUT_SHARE),
        share in 0.0..=1.0,
    ) {
        let fixed = with(&scenario, "traction.front_share", share);
        for layout in [Layout::F1R1, Layout::F1R2, Layout::F2R1, Layout::F2R2] {
            let case = format!("{layout:?}, share {share}: {}", show(&scenario));
            not_worse(limit_of(&scenario, layout), limit_of(&fixed, layout), &case);
        }
    }

    #[test]
    fn a_locked_differential_is_never_worse_than_an_open_one(
        scenario in whole(topic("traction"), Reach::Usual, &["layouts"])
    ) {
        for layout in Layout::ALL {
            let with_both = |word: &str| {
                let front = with_word(&scenario, "traction.front_differential", word);
                with_word(&front, "traction.rear_differential", word)
            };
            let open = limit_of(&with_both("open"), layout);
            let locked = limit_of(&with_both("locked"), layout);
            let brakes = limit_of(&with_both("open_with_brakes"), layout);
            not_worse(locked, open, &format!("{layout:?}: {}", show(&scenario)));
            prop_assert_eq!(locked, brakes);
        }
    }

    /// Left and right may be swapped: the limit does not know them apart. A solid axle does, because
    /// its driveshaft turns one way, and is left out.
    #[test]
    fn the_limit_is_mirror_symmetric(
        scenario in whole(topic("traction"), Reach::Accepted, INDEPENDENT)
    ) {
        let side = |path: &str| scenario.number(path).unwrap();
        let (left, right) = (side("surface.friction_peak_left"), side("surface.friction_peak_right"));
        let swapped = with(&scenario, "surface.friction_peak_left", right);
        let swapped = with(&swapped, "surface.friction_peak_right", left);
        for layout in Layout::ALL {
            let (Some(one), Some(other)) = (limit_of(&scenario, layout), limit_of(&swapped, layout)) else {
                continue;
            };
            let case = format!("{layout:?}: {}", show(&scenario));
            let pair = (other.acceleration_m_s2, one.acceleration_m_s2);
            assert_equal_relative("a_x", &case, pair, 1e-11, 1.0);
            prop_assert_eq!(one.limited_by, other.limited_by, "{}", case);
        }
    }

    /// Without air the limit does not depend on mass, and every force is in proportion to it.
    #[test]
    fn limits_do_not_depend_on_mass_and_forces_scale_with_it(
        scenario in whole(topic("traction"), Reach::Usual, WITHOUT_FORCES),
        factor in 0.1..10.0,
    ) {
        let mass = scenario.number("vehicle.mass").unwrap();
        let heavier = with(&scenario, "vehicle.mass", mass * factor);
        for layout in Layout::ALL {
            let (Some(one), Some(other)) = (limit_of(&scenario, layout), limit_of(&heavier, layout)) else {
                continue;
            };
            let case = format!("{layout:?} × {factor}: {}", show(&scenario));
            let near = |what: &str, got: f64, want: f64, size: f64| {
                assert_equal_relative(what, &case, (got, want), 1e-10, size);
            };
            near("a_x", other.acceleration_m_s2, one.acceleration_m_s2, 10.0);
            let size = 10.0 * mass * factor;
            near("F_f", other.front_force_n, factor * one.front_force_n, size);
            near("F_r", other.rear_force_n, factor * one.rear_force_n, size);
            near("N_f", other.loads.front_n, factor * one.loads.front_n, size);
            near("N_r", other.loads.rear_n, factor * one.loads.rear_n, size);
        }
    }

    /// More friction on both sides is never worse, with an ideal split.
    #[test]
    fn more_friction_is_never_worse(
        scenario in whole(topic("traction"), Reach::Usual, &["layouts", "surface.friction_peak_left", "surface.friction_peak_right"]),
        more in 1.0..2.0,
    ) {
        let friction = scenario.number("surface.friction_peak").unwrap();
        let stickier = with(&scenario, "surface.friction_peak", friction * more);
        for layout in Layout::ALL {
            let case = format!("{layout:?} × {more}: {}", show(&scenario));
            not_worse(limit_of(&stickier, layout), limit_of(&scenario, layout), &case);
        }
    }

    /// "F1R1 and F2R2 have the same limit on this page. On even ground two motors already use the friction
    /// of all four tyres."
    #[test]
    fn on_even_ground_a_second_motor_on_an_axle_gains_nothing(
        scenario in whole(topic("traction"), Reach::Usual, EVEN)
    ) {
        for (one, two) in [
            (Layout::F1, Layout::F2),
            (Layout::R1, Layout::R2),
            (Layout::F1R1, Layout::F1R2),
            (Layout::F1R1, Layout::F2R1),
            (Layout::F1R1, Layout::F2R2),
        ] {
            let case = format!("{one:?}, {two:?}: {}", show(&scenario));
            prop_assert_eq!(limit_of(&scenario, one), limit_of(&scenario, two), "{}", case);
        }
    }

    /// "All-wheel drive with an ideal split gives μ·g, with no geometry in it at all", less what rolling and
    /// the grade take.
    #[test]
    fn all_wheel_drive_knows_no_geometry(
        scenario in whole(topic("traction"), Reach::Usual, PLAIN)
    ) {
        let Some(limit) = limit_of(&scenario, Layout::F1R1) else { return Ok(()); };
        if limit.limited_by == LimitedBy::FrontLift {
            return Ok(());
        }
        let of = |path: &str| scenario.number(path).unwrap();
        let slope = Slope::from_grade(of("surface.grade"));
        let left = of("surface.friction_peak") - of("vehicle.rolling_resistance");
        let want = GRAVITY_M_S2 * (left * slope.cos - slope.sin);
        let pair = (limit.acceleration_m_s2, want);
        assert_equal_relative("a_x", &show(&scenario), pair, 1e-10, GRAVITY_M_S2);
    }

    /// "Uphill both lose the same g·sin θ. The gap between them shrinks only by the cosine of the slope, so
    /// it counts for more and more": it is a growing share of what front drive is left with.
    #[test]
    fn uphill_the_gap_between_front_and_rear_drive_stays_and_counts_for_more(
        scenario in whole(topic("traction"), Reach::Usual, PLAIN),
        grade in 0.01..0.3,
    ) {
        let limits = |grade: f64| {
            let there = with(&scenario, "surface.grade", grade);
            let [front, rear] = [Layout::F1, Layout::R1].map(|layout| limit_of(&there, layout));
            let (front, rear) = (front?, rear?);
            let slips = [front, rear].map(|limit| limit.limited_by != LimitedBy::FrontLift);
            (slips == [true; 2]).then_some((front.acceleration_m_s2, rear.acceleration_m_s2))
        };
        let (Some((front, rear)), Some((front_up, rear_up))) = (limits(0.0), limits(grade)) else {
            return Ok(());
        };
        let case = format!("grade {grade}: {}", show(&scenario));
        let slope = Slope::from_grade(grade);
        let lost = (front * slope.cos - front_up, GRAVITY_M_S2 * slope.sin);
        assert_equal_relative("lost uphill", &case, lost, 1e-9, GRAVITY_M_S2);
        let gap = (rear_up - front_up, (rear - front) * slope.cos);
        assert_equal_relative("gap", &case, gap, 1e-9, GRAVITY_M_S2);
        if front_up > 1e-6 && rear > front + 1e-6 {
            prop_assert!(rear_up / front_up > rear / front, "{}", case);
        }
    }
}
