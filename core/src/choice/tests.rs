//! What holds for every brief.

use super::*;
use crate::units::System;
use crate::vehicle::DEMO_NAMES;
use crate::words::Lang;

fn brief(fields: &[(&str, &str)]) -> Scenario {
    let mut scenario = Scenario::default();
    for (path, text) in fields {
        scenario.set(path, text).unwrap();
    }
    scenario
}

/// Briefs that differ in what they ask for and in what they find worth something.
fn briefs() -> Vec<Scenario> {
    let asks: [&[(&str, &str)]; 6] = [
        &[],
        &[("choice.target_time", "5 s")],
        &[("choice.turn_in_place", "on")],
        &[
            ("choice.torque_vectoring", "on"),
            ("choice.weight_time", "9"),
        ],
        &[
            ("choice.start_grade", "30 %"),
            ("choice.start_surface", "gravel"),
            ("choice.weight_cost", "0"),
        ],
        &[
            ("choice.least_range", "560 km"),
            ("vehicle.disconnect", "front"),
        ],
    ];
    let mut all = Vec::new();
    for base in DEMO_NAMES {
        for fields in asks {
            let mut scenario = brief(fields);
            scenario.set("vehicle.base", base).unwrap();
            all.push(scenario);
        }
    }
    all
}

#[test]
fn the_recommended_layout_meets_the_brief_and_nothing_dominates_a_member_of_the_front() {
    for scenario in briefs() {
        let found = answer(&scenario).unwrap();
        let judged = &found.decision.judged;
        let worth = |one: &Judged| {
            let pairs = found.brief.weights.into_iter().zip(one.shares);
            pairs
                .map(|(weight, share)| if weight > 0.0 { share } else { 0.0 })
                .collect::<Vec<f64>>()
        };
        for one in judged {
            assert_eq!(
                one.score.is_some(),
                one.verdict == Verdict::Meets,
                "{scenario:?}"
            );
            let beaten = judged.iter().any(|other| {
                let (mine, theirs) = (worth(one), worth(other));
                other.score.is_some()
                    && theirs.iter().zip(&mine).all(|(t, m)| t >= m)
                    && theirs.iter().zip(&mine).any(|(t, m)| t > m)
            });
            let wanted = one.score.is_some() && !beaten;
            assert_eq!(one.on_pareto_front, wanted, "{scenario:?} {one:?}");
        }
        match found.decision.recommended {
            Some(layout) => {
                let chosen = found.decision.of(layout).unwrap();
                assert!(chosen.on_pareto_front, "{scenario:?}");
                for other in judged {
                    assert!(other.score.is_none_or(|score| Some(score) <= chosen.score));
                }
            }
            None => assert!(judged.iter().all(|one| one.score.is_none())),
        }
    }
}

#[test]
fn a_score_moves_one_way_as_a_weight_grows() {
    for scenario in briefs() {
        let found = answer(&scenario).unwrap();
        for at in 0..4 {
            let mut before: Option<Vec<f64>> = None;
            let mut ways: Vec<f64> = vec![0.0; found.measures.len()];
            for weight in [0.0, 0.5, 1.0, 3.0, 8.0, 40.0] {
                let mut brief = found.brief;
                brief.weights[at] = weight;
                let decision = decide(&brief, &found.measures, true);
                let now: Vec<f64> = decision.judged.iter().map(|j| j.score.unwrap()).collect();
                for (layout, (way, score)) in ways.iter_mut().zip(&now).enumerate() {
                    let step = before.as_ref().map_or(0.0, |before| score - before[layout]);
                    assert!(*way * step >= -1e-15, "{scenario:?} {at} {layout}");
                    *way += step;
                }
                before = Some(now);
            }
            // What is best in the weighed thing gains by its weight.
            let decision = decide(&found.brief, &found.measures, true);
            for (judged, way) in decision.judged.iter().zip(ways) {
                assert!(
                    judged.shares[at] < 1.0 || way >= -1e-12,
                    "{scenario:?} {at}"
                );
            }
        }
    }
}

#[test]
fn all_costs_scaled_together_change_nothing_but_the_costs() {
    for scenario in briefs() {
        let found = answer(&scenario).unwrap();
        let mut brief = found.brief;
        brief.costs = brief.costs.map(|cost| 64.0 * cost);
        let scaled = decide(&brief, &found.measures, false);
        assert_eq!(scaled.recommended, found.decision.recommended);
        for (one, other) in scaled.judged.iter().zip(&found.decision.judged) {
            assert!((one.cost - 64.0 * other.cost).abs() < 1e-9);
            assert_eq!(
                (one.score, one.on_pareto_front),
                (other.score, other.on_pareto_front)
            );
        }
    }
}

#[test]
fn past_the_change_that_is_told_another_layout_is_recommended_and_before_it_the_same() {
    let mut told = 0;
    for scenario in briefs() {
        let found = answer(&scenario).unwrap();
        for ((path, _, _, again), flip) in VARIED.iter().zip(&found.flips) {
            let Some(flip) = flip else { continue };
            assert!(flip.change().abs() <= found.spread * (1.0 + 1e-9), "{path}");
            assert_ne!(flip.becomes, found.decision.recommended, "{path}");
            let there = |share: f64| {
                let mut there = scenario.clone();
                let value = flip.from + share * (flip.at - flip.from);
                there.set_number(path, value).unwrap();
                answer(&there).unwrap().decision.recommended
            };
            // The times of a changed car are told from a launch with ideal grip: to some hundredths.
            if !again {
                assert_eq!(there(1.0), flip.becomes, "{path} {scenario:?}");
                assert_eq!(
                    there(0.98),
                    found.decision.recommended,
                    "{path} {scenario:?}"
                );
            }
            told += 1;
        }
    }
    assert!(told > 20, "{told} changes prove little");
}

#[test]
fn pieces_give_the_answer_that_is_given_at_once() {
    let scenario = brief(&[("vehicle.base", "corrie"), ("choice.target_time", "3.5 s")]);
    let mut pieces = 1;
    let found = loop {
        match advance(&scenario).unwrap() {
            Some(found) => break found,
            None => pieces += 1,
        }
    };
    assert_eq!(pieces, 2 * found.measures.len() + VARIED.len() + 2);
    let other = brief(&[("vehicle.base", "kame")]);
    assert_ne!(answer(&other).unwrap(), found);
    assert_eq!(answer(&scenario).unwrap(), found);
}

#[test]
fn the_yaw_moment_is_that_of_cornering() {
    for base in DEMO_NAMES {
        let scenario = brief(&[("vehicle.base", base), ("surface.grade", "5 %")]);
        let found = answer(&scenario).unwrap();
        let turns = crate::cornering::TOPIC
            .solve(&brief(&[("vehicle.base", base)]))
            .unwrap();
        for measure in &found.measures {
            let path = ["yaw_moment.", measure.layout.name(), ".max"].concat();
            let want = crate::topic::number_of(&turns, &path).unwrap();
            let got = measure.yaw_n_m.unwrap();
            assert!((got - want).abs() <= 1e-6 * want.abs(), "{base} {path}");
            // A moment there is also without a pair; it is small, and it is not vectoring.
            assert_eq!(measure.vectors, measure.layout.name().contains('2'));
        }
    }
    // A car that cannot be steered into that turn is judged all the same.
    let mut stiff = brief(&[("vehicle.base", "esker"), ("choice.torque_vectoring", "on")]);
    stiff.set("vehicle.max_steer_angle", "1 deg").unwrap();
    let found = answer(&stiff).unwrap();
    assert!(
        found
            .measures
            .iter()
            .all(|measure| measure.yaw_n_m.is_none())
    );
    let layout = found.decision.recommended.unwrap();
    assert!(found.measure(layout).unwrap().vectors);
    let text = found.because().text(Lang::English, System::Si);
    assert!(text.len() > 30 && !text.contains(['{', '}']), "{text}");
}

#[test]
fn what_needs_no_run_is_the_same_without_one() {
    for base in DEMO_NAMES {
        let mut scenario = brief(&[("vehicle.base", base), ("choice.start_grade", "15 %")]);
        let all = TOPIC.solve(&scenario).unwrap();
        let some = TOPIC.solve_without_run(&scenario).unwrap();
        assert!(some.len() > 100, "{}", some.len());
        for reading in &some {
            assert!(all.contains(reading), "{reading:?}");
        }
        let judged = |list: &[crate::topic::Reading]| {
            list.iter()
                .any(|reading| reading.path == "layouts.R1.reason")
        };
        assert!(judged(&some));
        // Whether it is quick enough only a run can tell.
        scenario.set("choice.target_time", "9 s").unwrap();
        assert!(!judged(&TOPIC.solve_without_run(&scenario).unwrap()));
    }
}

#[test]
fn the_sentence_says_the_numbers_and_leaves_no_gap() {
    for scenario in briefs() {
        let found = answer(&scenario).unwrap();
        for lang in Lang::ALL {
            for system in [System::Si, System::Us] {
                let text = found.because().text(lang, system);
                assert!(text.len() > 30 && !text.contains(['{', '}']), "{text}");
                assert!(!text.contains("  "), "{text}");
                if let Some(layout) = found.decision.recommended {
                    assert!(text.contains(layout.name()), "{text}");
                }
            }
        }
    }
    let scenario = brief(&[("vehicle.base", "esker"), ("choice.target_time", "6.5 s")]);
    let said = answer(&scenario).unwrap();
    let text = said.because().text(Lang::English, System::Si);
    assert!(text.starts_with("R1: F1 would score higher"), "{text}");
}

#[test]
fn a_brief_that_nothing_meets_says_so() {
    let scenario = brief(&[("vehicle.base", "kame"), ("choice.target_time", "1 s")]);
    let found = answer(&scenario).unwrap();
    assert_eq!(found.decision.recommended, None);
    let text = found.because().text(Lang::English, System::Si);
    assert!(text.starts_with("No layout meets the brief."), "{text}");
}
