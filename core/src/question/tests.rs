//! What holds for every question of every topic, for many seeds and every demo vehicle.

use super::*;
use crate::scenario::Scenario;
use crate::topic::{self, TOPICS};
use crate::units::System;
use crate::vehicle::DEMO_NAMES;
use crate::words::{self, Lang};

const LANG: Lang = Lang::English;
const SEEDS: u64 = 20;

/// How many seeds are tried. A launch is computed in hundreds of steps, so fewer of it.
fn seeds(topic: &topic::Topic) -> u64 {
    match topic.name {
        "launch" => 2,
        "cornering" => 4,
        // Each question asks for all layouts again and again.
        "choice" => 6,
        _ => SEEDS,
    }
}

fn demo(base: &str) -> Scenario {
    let mut scenario = Scenario::default();
    scenario.set("vehicle.base", base).unwrap();
    scenario
}

/// Every question of every topic with many seeds, and without one, for every demo vehicle.
fn each(check: &dyn Fn(&Asked)) {
    static ALL: std::sync::OnceLock<Vec<Asked>> = std::sync::OnceLock::new();
    let make = || {
        let mut all = Vec::new();
        for topic in TOPICS {
            for question in of(topic) {
                for base in DEMO_NAMES {
                    for seed in (0..seeds(topic)).map(Some).chain([None]) {
                        let asked = Question::make(topic, question.id, seed, &demo(base));
                        let case = || format!("{} {} {base} {seed:?}", topic.name, question.id);
                        all.push(asked.unwrap_or_else(|problem| panic!("{}: {problem}", case())));
                    }
                }
            }
        }
        all
    };
    ALL.get_or_init(make).iter().for_each(check);
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
            let is_change = matches!(
                question.kind,
                Kind::Choice(Choice::Change(_) | Choice::Spot { .. })
            );
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

/// What a question asks of a reader. A prediction of a word or of a direction, and a line that is sketched,
/// are estimates: they are made before anything is computed.
fn kind(question: &Question) -> &'static str {
    match question.kind {
        _ if question.curve.is_some() => "read a figure",
        Kind::Number { .. } => "compute",
        Kind::Find { .. } => "find the input",
        Kind::Choice(Choice::Rank { .. }) => "rank with a reason",
        Kind::Choice(Choice::Spot { .. }) => "spot the error",
        Kind::Sketch(_)
        | Kind::Choice(Choice::Larger(_) | Choice::Word { .. } | Choice::Change(_)) => "estimate",
    }
}

const KINDS: [&str; 6] = [
    "compute",
    "find the input",
    "rank with a reason",
    "read a figure",
    "spot the error",
    "estimate",
];

/// What a topic lacks on purpose, and why.
const LACKING: &[(&str, &str, &str)] = &[
    (
        "load_transfer",
        "rank with a reason",
        "its loads are the same whatever drives",
    ),
    (
        "launch",
        "spot the error",
        "its lines are read off the run; few follow from others",
    ),
    (
        "cornering",
        "rank with a reason",
        "layouts can add a moment or cannot; the order of how much is that of their motors",
    ),
    (
        "turn_in_place",
        "rank with a reason",
        "a layout turns in place or does not; `feasible` asks which, and why",
    ),
    (
        "idle_drag",
        "rank with a reason",
        "which axle drives and which idles is asked by `who_drives`, with the reason",
    ),
    (
        "packaging",
        "rank with a reason",
        "all drive units are alike, so the order is that of their count",
    ),
    (
        "choice",
        "spot the error",
        "its numbers come from other topics, whose solutions have their errors to spot",
    ),
];

#[test]
fn every_topic_has_ten_questions_and_every_kind_but_what_it_lacks_on_purpose() {
    for topic in TOPICS {
        let questions = of(topic);
        assert!(questions.len() >= 10, "{}: {}", topic.name, questions.len());
        let has = |wanted: &str| questions.iter().any(|question| kind(question) == wanted);
        assert!(
            KINDS.iter().filter(|kind| has(kind)).count() >= 4,
            "{}",
            topic.name
        );
        for kind in KINDS {
            let lacks = LACKING
                .iter()
                .any(|(name, lacking, _)| *name == topic.name && *lacking == kind);
            assert_eq!(has(kind), !lacks, "{}: {kind}", topic.name);
        }
    }
}

/// Whether the outputs of a scenario say what a reason says, judged without the code of the question.
fn is_reason(asked: &Asked, because: &Because) -> bool {
    let readings = asked.topic.solve(&asked.solved).unwrap();
    let number = |path: &str| topic::number_of(&readings, path).unwrap_or(f64::NAN);
    match because {
        Because::Order => true,
        Because::Never => false,
        Because::Larger(one, other) => number(one) > number(other),
        Because::Words(words) => words.iter().all(|(path, word)| {
            let found = readings.iter().find(|reading| reading.path == *path);
            matches!(found.map(|found| &found.value), Some(topic::ReadingValue::Word(found)) if found == word)
        }),
    }
}

#[test]
fn an_order_is_right_only_with_the_reason_that_limits() {
    let mut ranked = 0;
    for topic in TOPICS {
        for question in of(topic) {
            let Kind::Choice(Choice::Rank {
                output,
                falling,
                orders,
            }) = &question.kind
            else {
                continue;
            };
            ranked += 1;
            let mut unseen: Vec<&str> = orders
                .iter()
                .filter(|order| !matches!(order.because, Because::Never))
                .map(|order| order.word)
                .collect();
            for order in *orders {
                assert!((3..=4).contains(&order.layouts.len()), "{}", order.word);
                // The sentence begins with the layouts in their order.
                let key = format!("question.{}.{}.{}", topic.name, question.id, order.word);
                for lang in Lang::ALL {
                    let sentence = words::find(lang, &key).unwrap_or_else(|| panic!("{key}"));
                    let (first, _) = sentence.split_once(". ").expect(&key);
                    let named: Vec<&str> = first
                        .split([' ', ','])
                        .filter(|word| word.starts_with(['F', 'R']))
                        .collect();
                    assert_eq!(named, order.layouts, "{key}");
                }
            }
            for base in DEMO_NAMES {
                for seed in 0..12 {
                    let asked =
                        Question::make(topic, question.id, Some(seed), &demo(base)).unwrap();
                    let Right::Choice { choices, right } = &asked.right else {
                        panic!("{}", name(&asked));
                    };
                    assert_eq!(choices.len(), orders.len());
                    let report = asked.report().unwrap();
                    let mut layouts: Vec<&str> = orders[0].layouts.to_vec();
                    layouts.sort_by(|one, other| {
                        let value =
                            |layout: &str| report.number(&output.replace('*', layout)).unwrap();
                        let order = value(one).total_cmp(&value(other));
                        if *falling { order.reverse() } else { order }
                    });
                    for (at, order) in orders.iter().enumerate() {
                        let fits = order.layouts == layouts && is_reason(&asked, &order.because);
                        assert_eq!(fits, at == *right, "{} {}", order.word, name(&asked));
                    }
                    let word = choices[*right].0;
                    unseen.retain(|other| *other != word);
                }
            }
            assert_eq!(unseen, Vec::<&str>::new(), "{} {}", topic.name, question.id);
        }
    }
    assert!(ranked >= 4, "{ranked}");
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
                    crate::units::Dimension::Energy => 2e6,
                    crate::units::Dimension::Power => 1e6,
                    crate::units::Dimension::Speed => 100.0,
                    crate::units::Dimension::Time => 60.0,
                    crate::units::Dimension::Acceleration => 25.0,
                    crate::units::Dimension::Length => 3.0,
                    crate::units::Dimension::Rotation => 2500.0,
                    crate::units::Dimension::EnergyPerDistance => 5000.0,
                    crate::units::Dimension::Distance => 3e6,
                    crate::units::Dimension::PowerDensity => 1e8,
                    // Costs and counts of parts.
                    crate::units::Dimension::Ratio if asked.topic.name == "choice" => 100.0,
                    _ => 2.5,
                };
                assert!(value < most, "{value}: {}", name(asked));
                assert!(asked.question.tolerance > 0.0);
            }
            Right::Choice { choices, right } => {
                assert!(*right < choices.len() && choices.len() > 1);
            }
            Right::Line(course) => {
                let rises = course.points.windows(2).all(|pair| pair[0].0 < pair[1].0);
                assert!(rises && course.places().len() == PLACES, "{}", name(asked));
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
            (Right::Line(course), _) => {
                let middle = course.places()[PLACES / 2];
                assert_eq!(solved, Some(middle.1), "{}", name(asked));
            }
        }
        let text = match &asked.right {
            // As it would be read off the answer and typed back.
            Right::Number(_) => asked.answer(LANG, System::Si),
            Right::Choice { choices, right } => choices[*right].0.into(),
            Right::Line(course) => heights(course, |_, value| value),
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
                for seed in 0..seeds(topic) {
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
                        Choice::Rank { .. } => {
                            let mut sorted = numbers.clone();
                            sorted.sort_by(f64::total_cmp);
                            for pair in sorted.windows(2) {
                                assert!(apart(pair[0], pair[1]), "{}", name(&asked));
                            }
                        }
                        Choice::Spot { .. } => {
                            let spoilt = asked.spoilt.as_ref().unwrap();
                            let wrong = spoilt.lines[*right].result.value;
                            assert!(apart(wrong, spoilt.right.result.value), "{}", name(&asked));
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
                // A length of 0.345 m does not tell a share of 0.345.
                let ends = |at: usize| {
                    let next = told[at + answer.len()..].chars().next();
                    !next.is_some_and(|c| c.is_alphanumeric() || c == '\u{2009}')
                };
                let tells = told.match_indices(&answer).any(|(at, _)| ends(at));
                assert!(!tells, "{answer} in {told}");
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
                // The choice asks traction, but at rest: the speed is none of its inputs.
                if topic.name != "choice" {
                    base.set(path, "30 m/s").unwrap();
                }
            }
            if !["turn_in_place", "cornering"].contains(&topic.name) {
                base.set("surface.grade", "4 %").unwrap();
            }
            // Where a chart is read, it tells what the numbers behind it would.
            if question.curve.is_some() {
                continue;
            }
            for seed in 0..seeds(topic).min(8) {
                let asked = Question::make(topic, question.id, Some(seed), &base).unwrap();
                let statement = asked.question.parts.iter().copied();
                let sought = match asked.question.kind {
                    Kind::Find { input, .. } => input,
                    Kind::Sketch(ref sketch) => sketch.input,
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
                if topic.name == "choice" {
                    // Nothing is judged without a whole vehicle: all that is not told is another value.
                    for path in topic.inputs {
                        if let Some(value) = asked.solved.number(path)
                            && !told.contains(path)
                        {
                            let set = bare.set_number(path, 1.1 * value);
                            let _ = set.or_else(|_| bare.set_number(path, 0.9 * value));
                        }
                    }
                }
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
            let mut different: Vec<_> = (0..8.max(seeds(topic))).map(make).collect();
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
        other => panic!("{other:?}"),
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
    let mut any: Vec<_> = (0..60).map(|seed| id(&format!("any {seed}"))).collect();
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
    base.set("surface.grade", "100 %").unwrap();
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

#[test]
fn a_spoilt_solution_has_one_wrong_line_and_the_others_follow_from_it() {
    let mut spoilt_lines = 0;
    each(&|asked| {
        let Some(spoilt) = &asked.spoilt else {
            return;
        };
        let Right::Choice { choices, right } = &asked.right else {
            panic!("{}", name(asked));
        };
        let report = asked.report().unwrap();
        let steps = report.derivations(&asked.shown);
        assert_eq!(steps.len(), choices.len(), "{}", name(asked));
        assert_eq!(steps.len(), spoilt.lines.len());
        for (at, (line, step)) in spoilt.lines.iter().zip(&steps).enumerate() {
            // What a line says is what its numbers give, the wrong one too.
            let got = line.evaluate().unwrap();
            let want = line.result.value;
            assert!((got - want).abs() <= 1e-9 * want.abs(), "{}", name(asked));
            assert_eq!(
                line.expression == step.expression,
                at != *right,
                "{}",
                name(asked)
            );
            // A number that an earlier line gave is the number that line gave.
            for (input, original) in line.inputs.iter().zip(&step.inputs) {
                let from = steps[..at].iter().rposition(|s| s.result == *original);
                if let Some(from) = from.filter(|_| at != *right) {
                    assert_eq!(input, &spoilt.lines[from].result, "{}", name(asked));
                }
            }
        }
        let end = |steps: &[f64]| *steps.last().unwrap();
        let before: Vec<f64> = steps.iter().map(|step| step.result.value).collect();
        let after: Vec<f64> = spoilt.lines.iter().map(|line| line.result.value).collect();
        assert!((end(&before) - end(&after)).abs() > 1e-6 * end(&before).abs());
        let told = asked.told_slip(LANG).unwrap();
        assert!(told.contains(choices[*right].0), "{told}");
        assert!(told.contains(&steps[*right].text(LANG)), "{told}");
    });
    for topic in TOPICS {
        for question in of(topic) {
            let Kind::Choice(Choice::Spot { slips, .. }) = &question.kind else {
                continue;
            };
            // Every slip of the table comes up.
            let mut unseen: Vec<&str> = slips.iter().map(|slip| slip.equation).collect();
            for seed in 0..60 {
                let asked = Question::make(topic, question.id, Some(seed), &demo("esker"));
                let equation = asked.unwrap().spoilt.unwrap().slip.equation;
                unseen.retain(|other| *other != equation);
            }
            assert_eq!(unseen, Vec::<&str>::new(), "{}", topic.name);
            spoilt_lines += slips.len();
        }
    }
    assert!(spoilt_lines >= 20, "{spoilt_lines}");
}

#[test]
fn what_is_read_off_a_chart_is_the_answer() {
    let read = std::cell::Cell::new(0);
    each(&|asked| {
        let Some(traced) = &asked.traced else {
            return;
        };
        let Right::Number(right) = asked.right else {
            panic!("{}", name(asked));
        };
        assert!(asked.given.is_empty(), "{}", name(asked));
        // Along the line from point to point, as an eye does it.
        type Pick<'a> = &'a dyn Fn(&(f64, Amount)) -> (f64, f64);
        let at = |sought: f64, from: Pick| {
            let points: Vec<(f64, f64)> = traced.points.iter().map(from).collect();
            let pair = points
                .windows(2)
                .find(|pair| (sought - pair[0].0) * (sought - pair[1].0) <= 0.0)
                .unwrap_or_else(|| panic!("{sought} is not on the chart: {}", name(asked)));
            let share = (sought - pair[0].0) / (pair[1].0 - pair[0].0);
            pair[0].1 + share * (pair[1].1 - pair[0].1)
        };
        let found = match asked.target {
            Some(target) => at(target.value, &|(x, amount)| (amount.value, *x)),
            None => {
                let x = asked.scenario.number(traced.input).unwrap();
                at(x, &|(x, amount)| (*x, amount.value))
            }
        };
        let miss = (found - right.value).abs() / right.value;
        // A reader has most of the tolerance for the eye.
        assert!(
            miss < 0.2 * asked.question.tolerance,
            "{miss}: {}",
            name(asked)
        );
        let (title, points) = asked.chart_text(LANG, System::Si);
        assert!(
            !title.is_empty() && points.matches("; ").count() == 5,
            "{title}: {points}"
        );
        read.set(read.get() + 1);
    });
    assert!(read.get() > 200, "{}", read.get());
}

/// The heights of a line, each changed, as a reader's line comes in.
fn heights(course: &Course, change: impl Fn(usize, f64) -> f64) -> String {
    let unit = |value: f64| crate::units::from_si(value, course.most.dimension, System::Si);
    let places = course.places().into_iter().enumerate();
    let words = places.map(|(at, (_, value))| format!("{:.9}", unit(change(at, value))));
    words.collect::<Vec<_>>().join(" ")
}

fn sketched() -> Vec<Asked> {
    let mut all = Vec::new();
    for topic in TOPICS {
        for question in of(topic) {
            if matches!(question.kind, Kind::Sketch(_)) {
                let made = Question::make(topic, question.id, Some(3), &demo("esker"));
                all.push(made.unwrap());
            }
        }
    }
    assert!(all.len() >= 3);
    all
}

#[test]
fn a_sketched_line_is_judged_by_its_mean_distance() {
    for asked in sketched() {
        let course = asked.course().unwrap();
        let places = course.places();
        let size = places.iter().map(|place| place.1).fold(0.0, f64::max);
        let tolerance = asked.question.tolerance;
        // Shifted as a whole, up and down in turn, and off at one place alone: the mean is the same.
        for (times, score) in [(0.0, 1.0), (0.9, 1.0), (2.5, 0.5), (6.0, 0.0)] {
            let off = times * tolerance * size;
            let shifted = heights(course, |_, value| value + off);
            let zigzag = heights(course, |at, value| {
                value + if at % 2 == 0 { off } else { -off }
            });
            let alone = heights(course, |at, value| {
                value + if at == 5 { PLACES as f64 * off } else { 0.0 }
            });
            for text in [shifted, zigzag, alone.clone()] {
                // A line below nought cannot be drawn.
                if text.contains('-') {
                    continue;
                }
                let verdict = asked.judge(&text, LANG, System::Si).unwrap();
                let mean = verdict.difference.unwrap();
                assert!((mean - off).abs() < 1e-6 * size, "{mean} {off}");
                let relative = verdict.relative.unwrap();
                assert!((relative - times * tolerance).abs() < 1e-6, "{relative}");
                assert!((verdict.score - score).abs() < 1e-6, "{verdict:?}");
                assert_eq!(verdict.within, times <= 1.0);
            }
            if times > 0.0 {
                let verdict = asked.judge(&alone, LANG, System::Si).unwrap();
                assert_eq!(verdict.furthest, Some(5));
                let said = asked.verdict(&verdict, LANG, System::Si);
                assert!(said.contains(&asked.place(5, LANG, System::Si)), "{said}");
                assert_eq!(said.contains("inside"), times <= 1.0, "{said}");
                let mut settled = asked.clone();
                settled.settle(&verdict);
                let readings = asked.topic.solve(&settled.solved).unwrap();
                let there = topic::number_of(&readings, &asked.shown[0]).unwrap();
                assert!((there - places[5].1).abs() < 1e-9 * size, "{there}");
            }
        }
    }
}

#[test]
fn a_line_in_other_units_is_the_same_line() {
    for asked in sketched() {
        let course = asked.course().unwrap();
        let flat = |system| {
            let value =
                crate::units::from_si(0.4 * course.most.value, course.most.dimension, system);
            vec![format!("{value:.12}"); PLACES].join(" ")
        };
        let [si, us] = [System::Si, System::Us].map(|system| {
            let verdict = asked.judge(&flat(system), LANG, system).unwrap();
            (verdict.difference.unwrap(), verdict.furthest, verdict.score)
        });
        assert!(
            (si.0 - us.0).abs() < 1e-6 * course.most.value,
            "{si:?} {us:?}"
        );
        assert_eq!(si.1, us.1);
        assert!((si.2 - us.2).abs() < 1e-9, "{si:?} {us:?}");
    }
}

#[test]
fn what_is_no_line_is_refused() {
    let asked = &sketched()[0];
    for text in [
        "",
        "1 2 3",
        "1 2 3 4 5 6 7 8 9 10",
        "1 2 3 4 x 6 7 8 9",
        "1 2 3 4 -5 6 7 8 9",
    ] {
        let problem = asked.judge(text, LANG, System::Si).unwrap_err().to_string();
        assert!(problem.contains("nine"), "{text}: {problem}");
    }
}

#[test]
fn the_axis_holds_the_line_and_does_not_tell_how_high_it_rises() {
    let mut shares = Vec::new();
    each(&|asked| {
        let Some(course) = asked.course() else { return };
        for system in [System::Si, System::Us] {
            let most = crate::units::from_si(course.most.value, course.most.dimension, system);
            let share = most / course.top(system);
            assert!((0.5..=0.87).contains(&share), "{share}: {}", name(asked));
        }
    });
    for asked in sketched() {
        for seed in 0..12 {
            let made = Question::make(asked.topic, asked.question.id, Some(seed), &demo("esker"));
            let made = made.unwrap();
            let course = made.course().unwrap();
            let most = course.most;
            let shown = crate::units::from_si(most.value, most.dimension, System::Si);
            shares.push((100.0 * shown / course.top(System::Si)) as i32);
        }
    }
    shares.sort_unstable();
    shares.dedup();
    assert!(shares.len() > 8, "{shares:?}");
}

#[test]
fn the_score_of_a_line_holds_its_points() {
    let asked = &sketched()[0];
    let course = asked.course().unwrap();
    let verdict = asked
        .judge(&heights(course, |_, value| value), LANG, System::Si)
        .unwrap();
    let tree = asked.score_tree(&verdict);
    for name in ["given", "right", "at"] {
        let Some(crate::Tree::List(values)) = tree.get(name) else {
            panic!("{name}: {tree:?}");
        };
        assert_eq!(values.len(), PLACES);
    }
    assert_eq!(tree.get("unit"), Some(&crate::Tree::text("N")));
}
