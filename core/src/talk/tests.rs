use super::*;
use crate::tree::Tree;

fn map(entries: &[(&str, Tree)]) -> Tree {
    let entries = entries.iter().map(|(name, v)| ((*name).into(), v.clone()));
    Tree::Map(entries.collect())
}

fn texts(items: &[&str]) -> Tree {
    Tree::List(items.iter().map(|item| Tree::text(*item)).collect())
}

fn found_in(talk: &Tree) -> Vec<Fault> {
    Talk::checked(talk, crate::topic::find, &|_, _, _| Ok(())).1
}

fn talk_of(steps: Vec<Tree>) -> Tree {
    map(&[
        ("title", Tree::text("A talk")),
        ("vehicle", Tree::text("esker")),
        ("steps", Tree::List(steps)),
    ])
}

fn step(entries: &[(&str, Tree)]) -> Tree {
    let mut all = vec![("topic", Tree::text("load_transfer"))];
    all.extend(entries.iter().cloned());
    map(&all)
}

fn said(sentence: &str) -> Result<String, Fault> {
    let talk = Talk::from_tree(&talk_of(vec![step(&[("say", Tree::text(sentence))])]))?;
    let report = talk.steps[0].report(&Scenario::default()).unwrap();
    talk.steps[0].said(&report, Lang::English, System::Si)
}

#[test]
fn a_value_is_said_with_the_digits_and_the_unit_that_are_asked_for() {
    // Esker at rest: 1850 · 9.81 · 1.46/2.86 = 9264.5 N on the rear axle at 0 g.
    let rest = map(&[("load_transfer", map(&[("acceleration", Tree::text("0 g"))]))]);
    let sentence = "{rear_axle_load:3 kN}, {rear_axle_load:2kN}, {vehicle.mass:4 t}, {{so}}";
    let talk = talk_of(vec![step(&[("set", rest), ("say", Tree::text(sentence))])]);
    let talk = Talk::from_tree(&talk).unwrap();
    let report = talk.steps[0].report(&Scenario::default()).unwrap();
    let told = |lang| talk.steps[0].said(&report, lang, System::Si).unwrap();
    assert_eq!(
        told(Lang::English),
        "9.26\u{2009}kN, 9.3\u{2009}kN, 1.850\u{2009}t, {so}"
    );
    assert!(told(Lang::German).starts_with("9,26\u{2009}kN"));
}

#[test]
fn without_a_form_the_output_says_how_many_digits_and_the_reader_which_unit() {
    let tree = talk_of(vec![step(&[("say", Tree::text("{rear_axle_load}"))])]);
    let talk = Talk::from_tree(&tree).unwrap();
    let report = talk.steps[0].report(&Scenario::default()).unwrap();
    let told = |system| talk.steps[0].said(&report, Lang::English, system).unwrap();
    assert!(
        told(System::Si).ends_with("\u{2009}N"),
        "{}",
        told(System::Si)
    );
    assert!(
        told(System::Us).ends_with("\u{2009}lbf"),
        "{}",
        told(System::Us)
    );
}

#[test]
fn a_name_that_is_not_known_is_told_the_nearest() {
    let fault = said("It carries {rear_axle_lod}.").unwrap_err();
    assert_eq!(
        fault.to_string(),
        "Step 1: say: \"rear_axle_lod\" is not a value of this step; the nearest is \"rear_axle_load\"."
    );
    // An input of another topic is no value of this one.
    assert!(said("{turn_in_place.yaw_rate}").is_err());
}

#[test]
fn a_form_that_cannot_be_said_is_refused() {
    for (sentence, part) in [
        ("{rear_axle_load:3 kg}", "no such unit"),
        ("{rear_axle_load:0}", "1 to 9"),
        ("{rear_axle_load:99999999999999999999}", "1 to 9"),
        ("{}", "name is missing"),
        ("{rear_axle_load", "brace"),
        ("rear_axle_load}", "brace"),
        ("{rear{_axle_load}", "brace"),
    ] {
        let fault = said(sentence).unwrap_err();
        assert_eq!(fault.place(), &Place::Step(1), "{sentence}");
        assert_eq!(fault.field(), "say", "{sentence}");
        assert!(fault.to_string().contains(part), "{sentence}: {fault}");
    }
}

#[test]
fn a_fault_in_every_field_is_told_with_its_step() {
    let text = |word: &str| Tree::text(word);
    let speeding = map(&[("load_transfer", map(&[("acceleration", text("9 kg"))]))]);
    let unknown = map(&[("vehicle", map(&[("mas", text("1 t"))]))]);
    let asked = |right: &[(&str, Tree)]| {
        let mut question = vec![("text", text("Which?"))];
        question.extend(right.iter().cloned());
        map(&question)
    };
    let faults: Vec<(&str, Tree, &str)> = vec![
        ("topic", text("load_transfr"), "topic"),
        ("set", speeding, "load_transfer.acceleration"),
        ("set", unknown, "vehicle.mas"),
        ("set", text("fast"), "set"),
        ("view", text("front"), "view"),
        ("parts", text("body wings"), "parts"),
        ("parts", Tree::Number(3.0), "parts"),
        ("say", text("{nothing_such}"), "say"),
        ("say", Tree::Bool(true), "say"),
        ("note", text("{nothing_such}"), "note"),
        ("question", asked(&[]), "question"),
        (
            "question",
            asked(&[("value", text("no_value"))]),
            "question",
        ),
        (
            "question",
            asked(&[("largest", texts(&["front_axle_load"]))]),
            "question",
        ),
        (
            "question",
            asked(&[("largest", texts(&["front_axle_load", "x"]))]),
            "question",
        ),
        (
            "question",
            asked(&[
                ("smallest", texts(&["front_axle_load", "rear_axle_load"])),
                ("words", texts(&["front"])),
            ]),
            "question",
        ),
        ("question", text("Which?"), "question"),
        ("sya", text("It."), "sya"),
    ];
    for (field, value, at_fault) in faults {
        let good = step(&[]);
        let mut bad = good.clone();
        bad.set(field, value.clone());
        let found = found_in(&talk_of(vec![good.clone(), bad, good]));
        assert_eq!(found.len(), 1, "{field} = {value:?}: {found:?}");
        assert_eq!(found[0].place(), &Place::Step(2), "{field} = {value:?}");
        assert_eq!(found[0].field(), at_fault, "{field} = {value:?}");
    }
}

#[test]
fn a_fault_in_the_head_is_told() {
    for (field, value) in [
        ("title", Tree::Number(1.0)),
        ("lang", Tree::text("xx")),
        ("vehicle", Tree::text("nonsense")),
        (
            "scenario",
            map(&[("vehicle", map(&[("mass", Tree::text("-1 kg"))]))]),
        ),
        ("steps", Tree::List(Vec::new())),
        ("steps", Tree::List(vec![step(&[]); 501])),
        ("tilte", Tree::text("A")),
    ] {
        let mut talk = talk_of(vec![step(&[])]);
        talk.set(field, value.clone());
        let found = found_in(&talk);
        assert!(!found.is_empty(), "{field} = {value:?}");
        assert_eq!(found[0].place(), &Place::Head, "{field} = {value:?}");
    }
    assert!(matches!(found_in(&Tree::Null)[..], [Fault::Refused { .. }]));
    let nameless = map(&[("steps", Tree::List(vec![step(&[])]))]);
    assert_eq!(found_in(&nameless)[0].field(), "title");
}

#[test]
fn every_fault_of_a_talk_is_told_at_once() {
    let twice = step(&[("say", Tree::text("{a}")), ("note", Tree::text("{b}"))]);
    let found = found_in(&talk_of(vec![twice.clone(), step(&[]), twice]));
    let places: Vec<_> = found
        .iter()
        .map(|f| (f.place().clone(), f.field()))
        .collect();
    let at = |number, field| (Place::Step(number), field);
    assert_eq!(
        places,
        [at(1, "say"), at(1, "note"), at(3, "say"), at(3, "note")]
    );
}

#[test]
fn what_a_step_leaves_out_stays() {
    let set = |text: &str| map(&[("load_transfer", map(&[("acceleration", Tree::text(text))]))]);
    let talk = Talk::from_tree(&talk_of(vec![
        step(&[
            ("set", set("0.2 g")),
            ("view", Tree::text("chart")),
            ("parts", Tree::text("cg body")),
        ]),
        map(&[("set", set("0.4 g"))]),
        map(&[]),
        map(&[("topic", Tree::text("traction"))]),
    ]))
    .unwrap();
    let numbers: Vec<_> = talk
        .steps
        .iter()
        .map(|s| s.scenario.number("load_transfer.acceleration").unwrap() / 9.81)
        .collect();
    for (got, want) in numbers.iter().zip([0.2, 0.4, 0.4, 0.4]) {
        assert!((got - want).abs() < 1e-12, "{got}, wanted {want}");
    }
    assert_eq!(talk.steps[2].show, Show::Chart);
    assert_eq!(talk.steps[2].parts.words(), "body cg");
    assert_eq!(
        talk.steps[3].show,
        Show::First,
        "another topic begins with its own view"
    );
    assert_eq!(talk.steps[3].parts, Parts::FIGURE);
}

#[test]
fn the_right_answer_of_a_question_is_computed() {
    let question = |right: &str| {
        map(&[
            ("text", Tree::text("Which axle carries more?")),
            (right, texts(&["front_axle_load", "rear_axle_load"])),
            ("words", texts(&["the front", "the rear"])),
        ])
    };
    let set = map(&[(
        "load_transfer",
        map(&[("acceleration", Tree::text("0.6 g"))]),
    )]);
    for (right, want) in [("largest", ("the rear", 1)), ("smallest", ("the front", 0))] {
        let step = step(&[("set", set.clone()), ("question", question(right))]);
        let talk = Talk::from_tree(&talk_of(vec![step])).unwrap();
        let report = talk.steps[0].report(&Scenario::default()).unwrap();
        let asked = talk.steps[0].question.as_ref().unwrap();
        let (words, at) = asked
            .answer(&Place::Step(1), &report, Lang::English, System::Si)
            .unwrap();
        assert_eq!((words.as_str(), at), (want.0, Some(want.1)));
    }
}

#[test]
fn on_the_way_every_scenario_has_an_answer() {
    let at = |pairs: &[(&str, &str)]| {
        let mut scenario = Scenario::default();
        for (path, text) in pairs {
            scenario.set(path, text).unwrap();
        }
        scenario
    };
    let from = at(&[
        ("vehicle.base", "esker"),
        ("load_transfer.acceleration", "0 g"),
    ]);
    let to = at(&[
        ("vehicle.base", "esker"),
        ("load_transfer.acceleration", "0.8 g"),
        ("vehicle.cg_height", "0.9 m"),
    ]);
    let topic = crate::topic::find("load_transfer").unwrap();
    let mut last = 0.0;
    for step in 0..=10 {
        let share = f64::from(step) / 10.0;
        let here = between(&from, &to, share);
        let report = topic.brief(&topic.completed(&here).unwrap()).unwrap();
        let rear = report.number("rear_axle_load").unwrap();
        assert!(
            rear > last,
            "the rear load grows at {share}: {rear} after {last}"
        );
        last = rear;
    }
    assert_eq!(between(&from, &to, 1.0), to);
    assert_eq!(between(&from, &to, f64::NAN), to);
    let start = between(&from, &to, 0.0);
    assert_eq!(
        start.number("vehicle.cg_height"),
        from.number("vehicle.cg_height")
    );
}

#[test]
fn parts_have_words_of_their_own() {
    for part in Part::ALL {
        let parts = Parts::read(part.word()).unwrap();
        assert_eq!(parts, Parts::NONE.with(part));
    }
    assert_eq!(Parts::read(&Parts::FIGURE.words()), Ok(Parts::FIGURE));
    assert_eq!(Parts::read("all"), Ok(Parts::FIGURE));
    assert_eq!(Parts::read("body, wing"), Err("wing"));
}
