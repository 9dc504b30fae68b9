//! What the elements cost, against the bounds of `budgets.toml`.
#![allow(
    clippy::expect_used,
    reason = "in a test, stopping is the right answer"
)]

use axlewright_core::topic::TOPICS;

#[test]
fn the_elements_do_not_grow() {
    let text = std::fs::read_to_string(axlewright_tests::file("budgets.toml")).expect("budgets");
    let budgets: toml::Table = text.parse().expect("TOML");
    let number = |name: &str| {
        let value = budgets["needed_bytes"][name].as_integer();
        u64::try_from(value.expect("a number")).expect("a size")
    };
    let folder = tempfile::tempdir().expect("a folder");
    let root = axlewright_tests::file("..");
    let root = root.canonicalize().expect("the workspace is there");
    let built = axlewright_site::site::build(&root, folder.path(), &mut |line| eprintln!("{line}"));
    let elements = built.expect("the site builds").elements;
    assert!(
        elements.optimised,
        "wasm-opt is missing (tests/run installs it)"
    );
    let (bound, goal) = (number("bound"), number("goal"));
    for topic in TOPICS {
        let own = elements.parts.get(topic.name).map_or(0, Vec::len);
        assert!(own > 0, "{} has a part of its own", topic.name);
        let needed = elements.needed_brotli(topic.name);
        println!(
            "one {} needs {needed} bytes with brotli; the goal is {goal}",
            topic.tag()
        );
        assert!(
            (10_000..=bound).contains(&needed),
            "one {} needs {needed} bytes, {bound} may be; the goal is {goal}",
            topic.tag()
        );
    }
}
