//! What holds for every question of every topic, for many seeds and every demo vehicle.

use super::*;
use crate::scenario::Scenario;
use crate::topic::{self, TOPICS};
use crate::units::System;
use crate::vehicle::DEMO_NAMES;
use crate::words::{self, Lang};

const LANG: Lang = Lang::English;
const SEEDS: u64 = 20;

fn demo(base: &str) -> Scenario {
    let mut scenario = Scenario::default();
    scenario.set("vehicle.base", base).unwrap();
    scenario
}

/// Every question of every topic with many seeds, and without one, for every demo vehicle.
fn each(check: &dyn Fn(&Asked)) {
    for topic in TOPICS {
        for question in of(topic) {
            for base in DEMO_NAMES {
                for seed in (0..SEEDS).map(Some).chain([None]) {
                    let asked = Question::make(topic, question.id, seed, &demo(base));
                    let case = || format!("{} {} {base} {seed:?}", topic.name, question.id);
                    check(&asked.unwrap_or_else(|problem| panic!("{}: {problem}", case())));
                }
            }
        }
    }
}

fn name(asked: &Asked) -> String {
    let (topic, id) = (asked.topic.name, asked.question.id);
    format!("{topic} {id} {:?}: {:?}", asked.seed, asked.scenario)
}

#[test]
fn every_topic_in_the_tables_has_at_least_four_with_their_words() {
    for (topic, questions) in TABLES {
        let topic = topic::find(topic).unwrap();
        assert!(questions.len() >= 4, "{}", topic.name);
        for question in *questions {
            let id = question.id;
            let is_change = matches!(question.kind, Kind::Choice(Choice::Change(_)));
            let key = format!("question.{}.{id}", topic.name);
            let statement = words::find(LANG, &key);
            assert_eq!(statement.is_none(), is_change, "{key}");
            if let Some(statement) = statement {
                assert_eq!(
                    statement.matches('{').count(),
                    question.parts.len(),
                    "{key}"
                );
            }
            assert!(words::find(LANG, &format!("{key}.hint")).is_some(), "{key}");
            let same = questions.iter().filter(|other| other.id == id);
            assert_eq!(same.count(), 1, "{key}");
            let inputs = question.told.iter().chain(question.hides);
            for path in inputs.chain(question.varied.iter().map(|vary| &vary.path)) {
                assert!(topic.inputs.contains(path), "{key}: {path}");
            }
        }
    }
}

#[test]
fn every_seed_has_an_answer_inside_a_sensible_range() {
    each(&|asked| {
        match &asked.right {
            Right::Number(amount) => {
                let value = amount.value;
                assert!(value.is_finite() && value > 0.0, "{}", name(asked));
                let most = match amount.dimension {
                    crate::units::Dimension::Force => 45_000.0,
                    crate::units::Dimension::Torque => 6000.0,
                    crate::units::Dimension::Energy => 1e6,
                    crate::units::Dimension::Acceleration => 25.0,
                    crate::units::Dimension::Length => 3.0,
                    _ => 2.5,
                };
                assert!(value < most, "{value}: {}", name(asked));
                assert!(asked.question.tolerance > 0.0);
            }
            Right::Choice { choices, right } => {
                assert!(*right < choices.len() && choices.len() > 1);
            }
        }
        // The answer has a working, which shows what is asked.
        let report = asked.report().unwrap();
        for path in &asked.shown {
            assert!(
                !report.derivation(path).is_empty(),
                "{path}: {}",
                name(asked)
            );
        }
        assert!(!asked.shown.is_empty());
    });
}

#[test]
fn the_right_answer_is_judged_right_and_its_number_is_that_of_the_topic() {
    each(&|asked| {
        let readings = asked.topic.solve(&asked.solved).unwrap();
        let solved = topic::number_of(&readings, &asked.shown[0]);
        match (&asked.right, &asked.question.kind) {
            (Right::Number(amount), Kind::Number { .. }) => {
                assert_eq!(solved, Some(amount.value), "{}", name(asked));
            }
            (Right::Number(_), _) => {
                let (got, want) = (solved.unwrap(), asked.target.unwrap().value);
                assert!(
                    (got - want).abs() < 1e-6 * want,
                    "{got}, {want}: {}",
                    name(asked)
                );
            }
            (Right::Choice { .. }, _) => {}
        }
        let text = match &asked.right {
            // As it would be read off the answer and typed back.
            Right::Number(_) => asked.answer(LANG, System::Si),
            Right::Choice { choices, right } => choices[*right].0.into(),
        };
        let verdict = asked.judge(&text, LANG, System::Si).unwrap();
        assert!(verdict.within, "{text}: {verdict:?} {}", name(asked));
        assert!((verdict.score - 1.0).abs() < 1e-12);
    });
}

#[test]
fn no_two_choices_are_nearly_the_same_and_every_choice_comes_up() {
    for topic in TOPICS {
        for question in of(topic) {
            let Kind::Choice(choice) = &question.kind else {
                continue;
            };
            let mut came: Vec<&str> = Vec::new();
            for base in DEMO_NAMES {
                for seed in 0..SEEDS {
                    let asked =
                        Question::make(topic, question.id, Some(seed), &demo(base)).unwrap();
                    let Right::Choice { choices, right } = &asked.right else {
                        panic!("{}", name(&asked));
                    };
                    came.push(choices[*right].0);
                    let numbers: Vec<f64> = asked
                        .shown
                        .iter()
                        .filter_map(|path| asked.report().unwrap().number(path))
                        .collect();
                    let apart = |a: f64, b: f64| (a - b).abs() > 0.0199 * a.abs().max(b.abs());
                    match choice {
                        Choice::Larger(_) => {
                            assert!(apart(numbers[0], numbers[1]), "{}", name(&asked));
                        }
                        Choice::Word { .. } => {
                            for pair in numbers.chunks(2) {
                                assert!(apart(pair[0], pair[1]), "{}", name(&asked));
                            }
                        }
                        Choice::Change(_) => {
                            let change = asked.change.as_ref().unwrap();
                            let (before, after) = (change.before.value, change.after.value);
                            let share = ((after - before) / before).abs();
                            assert!(
                                !(1e-9..=0.0099).contains(&share),
                                "{share}: {}",
                                name(&asked)
                            );
                        }
                    }
                }
            }
            let count = came.len();
            came.sort_unstable();
            came.dedup();
            assert!(
                came.len() > 1,
                "{} {}: always {came:?} of {count}",
                topic.name,
                question.id
            );
        }
    }
}

#[test]
fn a_statement_never_gives_the_answer_away() {
    each(&|asked| {
        for system in [System::Si, System::Us] {
            let mut told = asked.statement(LANG, system);
            assert!(!told.is_empty() && !told.contains(['{', '}']), "{told}");
            for (label, value) in asked.given(LANG, system) {
                assert!(
                    !label.is_empty() && !value.is_empty(),
                    "{told}: {label} {value}"
                );
                told = told + "; " + label + " " + &value;
            }
            for part in asked.scenario.entries() {
                if let Kind::Find { input, .. } = asked.question.kind {
                    assert_ne!(part.0, input, "{}", name(asked));
                }
            }
            if let Right::Number(_) = asked.right {
                let answer = asked.answer(LANG, system);
                assert!(!told.contains(&answer), "{answer} in {told}");
                assert!(!asked.hint(LANG).contains(&answer));
            }
        }
    });
}

#[test]
fn whatever_moves_the_answer_is_told() {
    let numbers = |asked: &Asked, scenario: &Scenario| -> Vec<Option<f64>> {
        let readings = asked.topic.solve(scenario).unwrap_or_default();
        let number = |path: &String| topic::number_of(&readings, path);
        asked.shown.iter().map(number).collect()
    };
    for topic in TOPICS {
        for question in of(topic) {
            // A slope where the topic has one, and a speed, so that more has a part in it.
            let mut base = demo("moraine");
            for path in ["load_transfer.speed", "traction.speed"] {
                base.set(path, "30 m/s").unwrap();
            }
            if topic.name != "turn_in_place" {
                base.set("surface.grade", "4 %").unwrap();
            }
            for seed in 0..8 {
                let asked = Question::make(topic, question.id, Some(seed), &base).unwrap();
                let statement = asked.question.parts.iter().copied();
                let sought = match asked.question.kind {
                    Kind::Find { input, .. } => input,
                    _ => "",
                };
                let told: Vec<&str> = asked
                    .given
                    .iter()
                    .copied()
                    .chain(statement)
                    .chain([sought])
                    .chain(asked.change.as_ref().map(|change| change.input))
                    .collect();
                // Only what was told, and nothing of the demo vehicle: the same numbers come out.
                let mut bare = Scenario::default();
                for path in topic.inputs {
                    if let Some(value) = asked.solved.number(path)
                        && told.contains(path)
                    {
                        bare.set_number(path, value).unwrap();
                    } else if let Some(text) = asked.solved.text(path)
                        && *path != "vehicle.base"
                    {
                        bare.set(path, text).unwrap();
                    }
                }
                // The spring rate is a part of no load; without it there is no squat to answer.
                let (got, want) = (numbers(&asked, &bare), numbers(&asked, &asked.solved));
                for (got, want) in got.iter().zip(&want) {
                    let (got, want) = (got.unwrap_or(f64::NAN), want.unwrap());
                    assert!(
                        (got - want).abs() <= 1e-9 * want.abs(),
                        "{got} {want} {told:?} {}",
                        name(&asked)
                    );
                }
            }
        }
    }
}

#[test]
fn the_same_seed_gives_the_same_numbers_and_another_gives_others() {
    for topic in TOPICS {
        for question in of(topic) {
            let make = |seed| {
                let asked = Question::make(topic, question.id, Some(seed), &demo("esker")).unwrap();
                let target = asked.target.map(|target| target.value);
                (
                    asked.statement(LANG, System::Si),
                    format!("{:?} {target:?}", asked.scenario),
                )
            };
            assert_eq!(make(7), make(7));
            let mut different: Vec<_> = (0..20).map(make).collect();
            different.sort();
            different.dedup();
            assert!(
                different.len() > 5,
                "{} {}: {}",
                topic.name,
                question.id,
                different.len()
            );
        }
    }
}

#[test]
fn without_a_seed_the_scenario_is_asked_as_it_is() {
    let topic = topic::find("load_transfer").unwrap();
    let mut scenario = demo("corrie");
    scenario
        .set("load_transfer.acceleration", "0.37 g")
        .unwrap();
    let asked = Question::make(topic, "rear-load", None, &scenario).unwrap();
    assert_eq!(asked.scenario, scenario);
    assert!(asked.statement(LANG, System::Si).contains("0.37\u{2009}g"));
    let loads = topic.solve(&scenario).unwrap();
    let load = topic::number_of(&loads, "rear_axle_load").unwrap();
    let verdict = asked.judge("10 kN", LANG, System::Si).unwrap();
    assert_eq!(verdict.right, Said::Number(load));
    assert_eq!(verdict.given, Said::Number(10_000.0));
}

fn lift_height() -> Asked {
    let topic = topic::find("load_transfer").unwrap();
    Question::make(topic, "lift_height", None, &demo("esker")).unwrap()
}

#[test]
fn a_found_value_is_put_in_and_what_comes_of_it_is_said() {
    let asked = lift_height();
    // N_f = 0 at a = g·b/h, so h = 1.40 m/(target in g); the middle of the targets is asked.
    let target_g = asked.target.unwrap().value / crate::GRAVITY_M_S2;
    let Right::Number(right) = asked.right else {
        panic!("{asked:?}");
    };
    assert!((right.value - 1.40 / target_g).abs() < 1e-9, "{right:?}");
    let verdict = asked.judge("1.0 m", LANG, System::Si).unwrap();
    let reached = verdict.reached.unwrap() / crate::GRAVITY_M_S2;
    assert!((reached - 1.40).abs() < 1e-9, "{verdict:?}");
    assert!((verdict.relative.unwrap() - (1.40 / target_g - 1.0)).abs() < 1e-9);
    assert!(verdict.difference.unwrap() < 0.0 && !verdict.within);
    let text = asked.verdict(&verdict, LANG, System::Si);
    for part in ["1.00\u{2009}m", "1.40\u{2009}g", "too much"] {
        assert!(text.contains(part), "{text}");
    }
    // A value that the input itself does not accept is no prediction.
    assert!(asked.judge("20 m", LANG, System::Si).is_err());
}

#[test]
fn the_score_falls_in_a_straight_line_from_one_to_four_tolerances() {
    let topic = topic::find("load_transfer").unwrap();
    let asked = Question::make(topic, "rear_load", None, &demo("esker")).unwrap();
    let Right::Number(right) = asked.right else {
        panic!("{asked:?}");
    };
    for (times, score, within) in [
        (0.0, 1.0, true),
        (0.99, 1.0, true),
        (1.3, 0.9, false),
        (-2.5, 0.5, false),
        (3.7, 0.1, false),
        (-4.0, 0.0, false),
        (50.0, 0.0, false),
    ] {
        let text = format!("{} N", right.value * (1.0 + 0.05 * times));
        let verdict = asked.judge(&text, LANG, System::Si).unwrap();
        assert!((verdict.score - score).abs() < 1e-6, "{times}: {verdict:?}");
        assert_eq!(verdict.within, within, "{times}");
        let words = asked.verdict(&verdict, LANG, System::Si);
        assert_eq!(words.contains("inside"), within, "{words}");
        let said = match times {
            t if t > 1.0 => words.contains("much"),
            t if t < -1.0 => words.contains("too little"),
            _ => true,
        };
        assert!(said, "{words}");
    }
}

#[test]
fn any_unit_of_the_kind_is_read_and_another_kind_is_refused_in_one_line() {
    let topic = topic::find("traction").unwrap();
    let asked = Question::make(topic, "limit", None, &demo("esker")).unwrap();
    let given = |text: &str, system| match asked.judge(text, LANG, system).unwrap().given {
        Said::Number(value) => value,
        Said::Choice(word) => panic!("{word}"),
    };
    for text in ["0.63", "0.63 g", "6.1803 m/s²", "6.1803 m/s^2", " 0.63 "] {
        assert!((given(text, System::Si) - 6.1803).abs() < 1e-9, "{text}");
    }
    for (text, part) in [
        ("11 kN", "force"),
        ("much", "not a number"),
        ("", "not a number"),
        ("0.6 bananas", "bananas"),
    ] {
        let problem = asked.judge(text, LANG, System::Si).unwrap_err().to_string();
        assert!(
            problem.contains(part) && !problem.contains('\n'),
            "{problem}"
        );
        assert!(problem.contains("m/s²"), "{problem}");
    }
    let topic = topic::find("load_transfer").unwrap();
    let asked = Question::make(topic, "rear_load", None, &demo("esker")).unwrap();
    let us = asked.judge("2540", LANG, System::Us).unwrap();
    assert_eq!(us, asked.judge("2540 lbf", LANG, System::Si).unwrap());
    assert_eq!(asked.unit(System::Us), "lbf");
}

#[test]
fn near_zero_the_difference_itself_is_said() {
    let topic = topic::find("load_transfer").unwrap();
    let mut base = demo("esker");
    // The rear axle is about to lift: hard braking.
    base.set("load_transfer.acceleration", "-2.703 g").unwrap();
    let asked = Question::make(topic, "rear_load", None, &base).unwrap();
    let verdict = asked.judge("400 N", LANG, System::Si).unwrap();
    assert_eq!(verdict.relative, None, "{verdict:?}");
    let text = asked.verdict(&verdict, LANG, System::Si);
    assert!(text.contains("\u{2009}N too much"), "{text}");
    let json = asked.score_tree(&verdict);
    assert_eq!(json.get("relative"), Some(&crate::Tree::Null));
}

#[test]
fn the_setting_is_read_and_a_slip_is_told_the_nearest_name() {
    let topic = topic::find("traction").unwrap();
    let read = |text: &str| Setting::read(topic, text);
    let id = |text: &str| read(text).unwrap().id(topic);
    assert_eq!(id("needed-friction 12"), "needed_friction");
    assert_eq!(read("limit 12").unwrap().seed, Some(12));
    assert_eq!(read("limit").unwrap().seed, None);
    assert_eq!(id(""), of(topic)[0].id);
    let mut any: Vec<_> = (0..40).map(|seed| id(&format!("any {seed}"))).collect();
    assert_eq!(id("any 7"), id("any 7"));
    any.sort_unstable();
    any.dedup();
    assert_eq!(any.len(), of(topic).len(), "{any:?}");
    let problem = read("neded_friction 3").unwrap_err();
    assert_eq!(problem.field(), "question");
    assert!(
        problem.allowed(LANG).starts_with("needed_friction,"),
        "{problem}"
    );
    for text in [
        "limit x",
        "limit -3",
        "limit 1.5",
        "limit 7 8",
        "limit 9007199254740992",
    ] {
        let problem = read(text).unwrap_err();
        assert!(
            problem.to_string().contains("whole number"),
            "{text}: {problem}"
        );
    }
    assert_eq!(
        read("limit 9007199254740991").unwrap().seed,
        Some(SEED_LIMIT)
    );
}

#[test]
fn a_scenario_that_cannot_be_asked_is_refused_not_guessed() {
    let topic = topic::find("turn_in_place").unwrap();
    let mut base = demo("esker");
    base.set("surface.grade", "5 %").unwrap();
    let problem = Question::make(topic, "energy", Some(1), &base).unwrap_err();
    assert_eq!(problem.field(), "surface.grade");
    // No wheel radius, so no torque.
    let mut own = Scenario::default();
    for (path, text) in [
        ("vehicle.mass", "2 t"),
        ("vehicle.wheelbase", "3 m"),
        ("vehicle.cg_to_front_axle", "1.5 m"),
        ("vehicle.track_front", "1.6 m"),
        ("surface.friction_sliding", "0.8"),
    ] {
        own.set(path, text).unwrap();
    }
    let problem = Question::make(topic, "wheel_torque", Some(1), &own).unwrap_err();
    assert!(problem.to_string().contains("no clear answer"), "{problem}");
    assert!(Question::make(topic, "energy", Some(1), &own).is_ok());
}

#[test]
fn a_topic_without_questions_says_so() {
    for topic in topic::TOPICS {
        let read = Setting::read(topic, "any 7");
        assert_eq!(read.is_err(), of(topic).is_empty(), "{}", topic.name);
        if let Err(problem) = read {
            assert!(
                problem.to_string().contains("no questions yet"),
                "{problem}"
            );
        }
    }
}
