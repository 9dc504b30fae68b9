//! The choice: what a brief asks for removes layouts, what it weighs orders the rest, and nothing else
//! does. A layout is measured once; the brief is then changed and judged again. The page claims all of it
//! (`site/pages/choice.md`: "The idea").

use crate::scenarios::{Reach, config, topic, whole};
use axlewright_core::choice::{Answer, Brief, Decision, Verdict, answer, decide};
use axlewright_tests::{assert_equal_relative, show};
use proptest::prelude::*;

fn scores(decision: &Decision) -> Vec<Option<f64>> {
    decision.judged.iter().map(|judged| judged.score).collect()
}

fn same(case: &str, got: &Decision, want: &Decision) {
    for (got, want) in scores(got).into_iter().zip(scores(want)) {
        assert_eq!(got.is_some(), want.is_some(), "{case}");
        let pair = (got.unwrap_or_default(), want.unwrap_or_default());
        assert_equal_relative("a score", case, pair, 1e-9, 1e-9);
    }
}

/// The recommended layout meets the brief, has the highest score, and lies on the Pareto front; who does
/// not meet the brief has no score.
fn is_sound(case: &str, brief: &Brief, decision: &Decision) {
    for judged in &decision.judged {
        let meets = judged.verdict == Verdict::Meets;
        assert_eq!(judged.score.is_some(), meets, "{case}");
        let in_range = judged
            .score
            .is_none_or(|score| (0.0..=1.0 + 1e-12).contains(&score));
        assert!(in_range, "{judged:?}: {case}");
    }
    let able = scores(decision).into_iter().flatten();
    let highest = able.fold(f64::NEG_INFINITY, f64::max);
    let Some(layout) = decision.recommended else {
        assert!(highest == f64::NEG_INFINITY, "{case}");
        return;
    };
    let chosen = decision.of(layout).unwrap();
    assert!(chosen.score.unwrap() >= highest, "{case}");
    let weighs = brief.weights.iter().any(|weight| *weight > 0.0);
    assert!(!weighs || chosen.on_pareto_front, "{chosen:?}: {case}");
}

fn changed_briefs(case: &str, found: &Answer, factor: f64) {
    let Answer {
        brief,
        measures,
        decision,
        ..
    } = found;
    let judge = |brief: &Brief| decide(brief, measures, false);
    // In which money one counts does not matter, nor on which scale one weighs.
    let dearer = Brief {
        costs: brief.costs.map(|cost| cost * factor),
        ..*brief
    };
    same(case, &judge(&dearer), decision);
    let heavier = Brief {
        weights: brief.weights.map(|weight| weight * factor),
        ..*brief
    };
    same(case, &judge(&heavier), decision);
    // A demand taken away lets nobody fall out.
    let eased = [
        Brief {
            target_s: None,
            ..*brief
        },
        Brief {
            start_grade: None,
            ..*brief
        },
        Brief {
            least_range_m: None,
            ..*brief
        },
        Brief {
            turns: false,
            ..*brief
        },
        Brief {
            vectors: false,
            ..*brief
        },
    ];
    for brief in eased {
        let eased = judge(&brief);
        is_sound(case, &brief, &eased);
        for (now, before) in scores(&eased).into_iter().zip(scores(decision)) {
            assert!(now.is_some() || before.is_none(), "{case}");
        }
    }
}

proptest! {
    #![proptest_config(config(12))]

    #[test]
    fn demands_remove_and_weights_order(
        scenario in whole(topic("choice"), Reach::Usual, &[]),
        factor in 0.01..100.0,
    ) {
        // What has no answer is refused; `every_topic` looks at how.
        let Ok(found) = answer(&scenario) else { return Ok(()); };
        let case = show(&scenario);
        is_sound(&case, &found.brief, &found.decision);
        changed_briefs(&case, &found, factor);
        // What would come of it if no layout were refused.
        prop_assert!(scores(&found.without_demands).iter().all(Option::is_some));
    }
}
