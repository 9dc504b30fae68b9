//! A bare page for each topic, to be put into a page of somebody else by `<iframe>`.
//!
//! Its policy names its three files by a mark of their tags (`nonce`) and not by `'self'`: in a sandbox,
//! where the origin is one of its own, WebKit holds nothing for `'self'`. The mark is no secret. What it
//! keeps out is all that a text could bring along: scripts in attributes, in addresses, and in tags
//! without it.

use crate::pages::Asset;
use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use axlewright_widgets::element::interface::EVENTS;

/// The folder of the frames.
const FOLDER: &str = "embed";

/// The frames with their script and style, made from the texts of `site/theme`.
#[must_use]
pub fn frames(page: &str, script: &str, style: String) -> Vec<Asset> {
    let events: Vec<String> = EVENTS.iter().map(|e| format!("\"{}\"", e.name)).collect();
    let script = script.replace("EVENTS", &format!("[{}]", events.join(", ")));
    let tags: Vec<String> = TOPICS.iter().map(|topic| topic.tag()).collect();
    let script = script.replace("ELEMENTS", &format!("\"{}\"", tags.join(", ")));
    let asset = |name: &str, content: String| Asset {
        path: format!("{FOLDER}/{name}"),
        content,
    };
    let mut all = vec![asset("frame.js", script), asset("frame.css", style)];
    for topic in TOPICS {
        let title = words::get(Lang::English, &format!("topic.{}", topic.name));
        let page = page
            .replace("AXLE_TITLE", title)
            .replace("AXLE_TAG", &topic.tag())
            .replace(
                "AXLE_NO_SCRIPT",
                words::get(Lang::English, "site.no_script"),
            );
        all.push(asset(&format!("{}.html", topic.slug()), page));
    }
    all
}
