//! Where the English words live in the browser: in the main wasm file, or in the part that alone says them.

use crate::topic::TOPICS;

/// Every word, wherever it lives.
#[cfg(not(target_arch = "wasm32"))]
pub(super) const ALL: &str = "*";

/// What every element may say.
pub(super) const MAIN: &str = "";

/// Families of words whose second part is the topic that alone says them, if it is a topic.
const OF_TOPICS: &[&str] = &["caution", "figure", "help", "input", "output"];

/// Families that one part of the wasm says, and that part. What is of `program` is said by no element.
const OF_PARTS: &[(&str, &str)] = &[
    ("check", "program"),
    ("question", "question"),
    ("script", "program"),
    ("site", "program"),
    ("source", "working"),
    ("starter", "program"),
    ("step", "working"),
    ("talk", "talk"),
];

/// Inputs that are named for one topic and read by another too; a test tells which are missing.
const READ_TWICE: &[&str] = &[
    "idle_drag.auxiliary_power",
    "idle_drag.cycle",
    "idle_drag.regeneration_power",
    "idle_drag.speed",
    "idle_drag.trace",
    "packaging.box_fill",
    "packaging.clearance",
    "packaging.gap",
    "packaging.gear_power_density",
    "packaging.half_shaft_length",
    "packaging.inverter_power_density",
    "packaging.motor_power_density",
    "packaging.structure_width",
    "packaging.unit_height",
    "packaging.unit_length",
];

/// Whether a key lives in a home.
pub(super) const fn is_of(key: &str, home: &str) -> bool {
    is_same(home, "*") || is_same(of(key), home)
}

/// The home of a key in the browser: the name of a topic or of another part; empty for the main file,
/// `program` for what no element says.
#[must_use]
pub const fn of(key: &str) -> &'static str {
    let mut at = 0;
    while at < OF_PARTS.len() {
        if begins(key, OF_PARTS[at].0, 0) {
            return OF_PARTS[at].1;
        }
        at += 1;
    }
    let mut at = 0;
    while at < OF_TOPICS.len() {
        let mut topic = 0;
        while begins(key, OF_TOPICS[at], 0) && topic < TOPICS.len() {
            let after = OF_TOPICS[at].len() + 1;
            if begins(key, TOPICS[topic].name, after) {
                // An input of one topic may be read by another too.
                return if is_read_twice(key, after) {
                    MAIN
                } else {
                    TOPICS[topic].name
                };
            }
            topic += 1;
        }
        at += 1;
    }
    MAIN
}

/// Whether more than one topic reads the input whose path stands at a place of a key.
const fn is_read_twice(key: &str, place: usize) -> bool {
    let mut at = 0;
    while at < READ_TWICE.len() {
        if key.len() == place + READ_TWICE[at].len() && begins(key, READ_TWICE[at], place) {
            return true;
        }
        at += 1;
    }
    false
}

/// Whether a whole word of the key, up to a dot or its end, stands at a place.
const fn begins(key: &str, word: &str, place: usize) -> bool {
    let (key, word) = (key.as_bytes(), word.as_bytes());
    let end = place + word.len();
    if key.len() < end || (key.len() > end && key[end] != b'.') {
        return false;
    }
    let mut at = 0;
    while at < word.len() {
        if key[place + at] != word[at] {
            return false;
        }
        at += 1;
    }
    true
}

const fn is_same(one: &str, other: &str) -> bool {
    one.len() == other.len() && begins(one, other, 0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Lang, keys};

    #[test]
    fn words_live_where_they_are_said() {
        for (key, home) in [
            ("caution.launch", "launch"),
            ("figure.motor_split.title", "motor_split"),
            ("figure.axis.speed", MAIN),
            ("help.traction.speed", "traction"),
            ("input.vehicle.mass", MAIN),
            ("launch.traction", MAIN),
            ("question.traction.limit", "question"),
            ("step.weight", "working"),
            ("site.skip", "program"),
            ("ui.undo", MAIN),
        ] {
            assert_eq!(of(key), home, "{key}");
        }
    }

    #[test]
    fn every_home_together_is_the_whole_catalogue() {
        let mut homes = vec![MAIN, "question", "talk", "working", "program"];
        homes.extend(TOPICS.iter().map(|topic| topic.name));
        for key in keys(Lang::English) {
            assert!(homes.contains(&of(key)), "{key}");
        }
    }

    #[test]
    fn a_topic_says_its_inputs_and_outputs_by_itself() {
        for topic in TOPICS {
            let inputs = topic.inputs().flat_map(|i| [i.label_key(), i.help_key()]);
            let outputs = (0..topic.outputs.len()).map(|at| topic.output_key(at));
            for key in inputs.chain(outputs) {
                let home = of(&key);
                assert!(
                    [MAIN, topic.name].contains(&home),
                    "{key} of {}",
                    topic.name
                );
            }
        }
    }
}
