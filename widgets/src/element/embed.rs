//! Code that puts an element with its present state into another page.

use crate::figure::svg::push_escaped;
use axlewright_core::Scenario;
use axlewright_core::link::{link_query, push_parameter};
use axlewright_core::topic::Topic;
use axlewright_core::words::{self, Lang};

/// A way into another page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EmbedKind {
    /// The module and the element. The server must allow other origins to read the script.
    Module,
    /// The classic script, which has the wasm inside, and the element.
    Classic,
    /// A frame, for pages that take no script.
    Frame,
}

/// What is put into the other page.
#[derive(Clone, Copy, Debug)]
pub struct Embed<'a> {
    /// The topic.
    pub topic: &'static Topic,
    /// What the element shows, completed with the example where it names no vehicle of its own.
    pub scenario: &'a Scenario,
    /// Attributes besides the inputs, such as `show` and `view`, with their values.
    pub settings: &'a [(&'a str, &'a str)],
    /// Address of the folder that holds the scripts, without slash at its end.
    pub folder: &'a str,
    /// Hash of the script, as `integrity.json` beside it tells; empty: none is asked for.
    ///
    /// The script cannot hold its own hash, so the builder writes it into that file. A page that
    /// carries a hash stops working when the script at the same address changes.
    pub integrity: &'a str,
    /// Language of the frame's title.
    pub lang: Lang,
}

/// The code to paste, with everything escaped that came from a reader.
#[must_use]
pub fn embed_code(kind: EmbedKind, embed: &Embed) -> String {
    match kind {
        EmbedKind::Module => with_script(embed, " type=\"module\"", "axlewright.js", ""),
        EmbedKind::Classic => with_script(embed, "", "axlewright.classic.js", " defer"),
        EmbedKind::Frame => frame(embed),
    }
}

fn with_script(embed: &Embed, kind: &str, file: &str, when: &str) -> String {
    let mut code = String::from("<script");
    code.push_str(kind);
    push_attribute(&mut code, "src", &[embed.folder, "/", file].concat());
    if !embed.integrity.is_empty() {
        push_attribute(&mut code, "integrity", embed.integrity);
        push_attribute(&mut code, "crossorigin", "anonymous");
    }
    code.push_str(when);
    code.push_str("></script>\n<");
    let tag = embed.topic.tag();
    code.push_str(&tag);
    for input in embed.topic.inputs() {
        if let Some(text) = embed.scenario.text(input.path) {
            push_attribute(&mut code, &input.attribute(), text);
        }
    }
    for (name, value) in embed.settings {
        push_attribute(&mut code, name, value);
    }
    code.push_str("></");
    code.push_str(&tag);
    code.push('>');
    code
}

/// The frame may run its script and nothing else: no cookie, no form, no way to the page that holds it.
fn frame(embed: &Embed) -> String {
    let mut query = link_query(embed.topic, embed.scenario, &Scenario::default());
    for (name, value) in embed.settings {
        push_parameter(&mut query, name, value);
    }
    let page = [embed.folder, "/embed/", &embed.topic.slug(), ".html"].concat();
    let address = if query.is_empty() {
        page
    } else {
        [&page, "?", &query].concat()
    };
    let title = words::get(embed.lang, &["topic.", embed.topic.name].concat());
    let mut code = String::from("<iframe");
    push_attribute(&mut code, "src", &address);
    push_attribute(&mut code, "title", title);
    code.push_str(
        " sandbox=\"allow-scripts\" loading=\"lazy\" width=\"100%\" height=\"900\"></iframe>",
    );
    code
}

fn push_attribute(code: &mut String, name: &str, value: &str) {
    code.push(' ');
    code.push_str(name);
    code.push_str("=\"");
    push_escaped(code, value);
    code.push('"');
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::topic;

    fn code(kind: EmbedKind, settings: &[(&str, &str)], integrity: &str) -> String {
        let topic = topic::find("traction").unwrap();
        let mut scenario = topic.example().unwrap();
        scenario.set("vehicle.mass", "4080 lb").unwrap();
        scenario.set("layouts", "F1 F2R2").unwrap();
        embed_code(
            kind,
            &Embed {
                topic,
                scenario: &scenario,
                settings,
                folder: "https://example.org/a",
                integrity,
                lang: Lang::English,
            },
        )
    }

    #[test]
    fn a_module_a_classic_script_and_a_frame() {
        let module = code(EmbedKind::Module, &[("view", "side")], "sha384-abc");
        let script = "<script type=\"module\" src=\"https://example.org/a/axlewright.js\" integrity=\"sha384-abc\" crossorigin=\"anonymous\"></script>\n<axle-traction ";
        assert!(module.starts_with(script), "{module}");
        assert!(module.contains(" mass=\"4080 lb\" "), "{module}");
        assert!(
            module.ends_with(" view=\"side\"></axle-traction>"),
            "{module}"
        );
        let classic = code(EmbedKind::Classic, &[], "");
        let script = "<script src=\"https://example.org/a/axlewright.classic.js\" defer></script>\n<axle-traction ";
        assert!(classic.starts_with(script), "{classic}");
        let frame = code(EmbedKind::Frame, &[("show", "figure readouts")], "");
        for part in [
            "<iframe src=\"https://example.org/a/embed/traction.html?",
            "&amp;layouts=F1+F2R2&amp;layout=R1&amp;show=figure+readouts\"",
            " title=\"Traction limits\" sandbox=\"allow-scripts\"",
        ] {
            assert!(frame.contains(part), "{part} in {frame}");
        }
    }

    #[test]
    fn nothing_breaks_out_of_its_attribute() {
        let wild = "\"><script>alert('x')</script>&amp;";
        for kind in [EmbedKind::Module, EmbedKind::Classic, EmbedKind::Frame] {
            let code = code(kind, &[("scenario", wild)], wild);
            let scripts = usize::from(kind != EmbedKind::Frame);
            assert_eq!(code.matches("<script").count(), scripts, "{code}");
            assert_eq!(code.matches('"').count() % 2, 0, "{code}");
            assert!(!code.contains(wild), "{code}");
        }
    }
}
