//! What the fuzz targets do with random bytes: read them as a text, or as changes to a scenario, and ask
//! the core. It must answer with finite numbers or refuse with a clear line, and soon.
//!
//! The file that judges an answer is that of the properties, and the one that reads scenario files is
//! the program's own; both know the core alone.

#[path = "../../src/answers.rs"]
mod answers;
mod change;
mod clock;
#[path = "../../../site/src/scenario_file.rs"]
pub mod scenario_file;
mod text;

pub use text::{link, quantity, scenario, talk, trace};

use arbitrary::Unstructured;
use axlewright_core::topic;

/// Longest time on the processor for a text, in seconds.
const TEXT_S: f64 = 1.0;

/// Longest time on the processor for an answer and its working, in seconds. Of the slowest topics an
/// example takes some hundredths; a question at the edge of its range may take longer, not for ever.
fn longest_s(topic: &str) -> f64 {
    match topic {
        "launch" | "cornering" | "idle_drag" => 2.0,
        // Every layout is launched and driven, and each input is varied.
        "choice" => 8.0,
        _ => 0.5,
    }
}

/// Solves a topic for a scenario that the bytes make out of its inputs.
///
/// # Panics
/// When the answer is not what every answer must be.
pub fn topic(name: &str, data: &[u8]) {
    let Ok(topic) = topic::find(name) else {
        panic!("no topic {name}");
    };
    let scenario = change::scenario(topic, &mut Unstructured::new(data));
    clock::within(
        longest_s(name),
        || answers::show(&scenario),
        || answers::answers_or_refuses(topic, &scenario),
    );
}
