//! Talks: read from files, checked, written as text for whoever has no script, and built into one HTML
//! file that needs nothing else.

use crate::elements::{CLASSIC, TALK_CLASSIC};
use crate::scenario_file::{self, ScenarioError, one_line};
use crate::slim::slim;
use axlewright_core::talk::{Fault, Talk};
use axlewright_core::units::System;
use axlewright_core::{Scenario, Tree};
use axlewright_core::{topic, words};
use axlewright_widgets::figure::svg::push_escaped;
use axlewright_widgets::figure::{Theme, WIDE};
use axlewright_widgets::talk::{checked, sheet};
use axlewright_widgets::visual::Visual;
use std::fmt::{self, Write as _};
use std::path::Path;

/// Why a talk cannot be given.
#[derive(Debug)]
#[non_exhaustive]
pub enum TalkError {
    /// The file cannot be read, or is neither TOML nor JSON.
    Unread(ScenarioError),
    /// Its faults, by step.
    Faults(Vec<Fault>),
    /// A script of the elements cannot be read.
    Script(std::io::Error),
}

impl fmt::Display for TalkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unread(error) => f.write_str(&error.to_string().replacen("scenario", "talk", 1)),
            Self::Faults(faults) => {
                for (at, fault) in faults.iter().enumerate() {
                    let line_end = if at > 0 { "\n" } else { "" };
                    write!(f, "{line_end}{}", one_line(&fault.to_string()))?;
                }
                Ok(())
            }
            Self::Script(error) => write!(f, "a script of the elements cannot be read: {error}"),
        }
    }
}

impl std::error::Error for TalkError {}

/// A talk that can be given, and the data that it was read from.
#[derive(Debug)]
pub struct TalkFile {
    /// The talk.
    pub talk: Talk,
    /// Its data.
    pub tree: Tree,
}

/// Reads a talk file and says all of it once.
///
/// # Errors
/// A [`TalkError`] with every fault, by step and field.
pub fn read(path: &Path) -> Result<TalkFile, TalkError> {
    let tree = scenario_file::read_tree(path).map_err(TalkError::Unread)?;
    match checked(&tree, topic::find, Visual::of) {
        (talk, faults) if faults.is_empty() => Ok(TalkFile { talk, tree }),
        (_, faults) => Err(TalkError::Faults(faults)),
    }
}

/// The steps as an ordered list: question, sentence, description of the figure, note. It stands where no
/// script runs.
#[must_use]
pub fn transcript(talk: &Talk) -> String {
    let mut html = String::from("<ol class=\"transcript\">\n");
    for step in &talk.steps {
        // What has been checked has an answer.
        let Ok(report) = step.report(&Scenario::default()) else {
            continue;
        };
        html.push_str("<li>");
        let mut paragraph = |text: &str| {
            if !text.is_empty() {
                html.push_str("<p>");
                push_escaped(&mut html, text);
                html.push_str("</p>");
            }
        };
        paragraph(step.question.as_ref().map_or("", |question| &question.text));
        let (lang, system) = (talk.lang, System::Si);
        paragraph(&step.said(&report, lang, system).unwrap_or_default());
        let note = step.noted(&report, lang, system).unwrap_or_default();
        let sheet = Visual::of(step.topic)
            .and_then(|visual| sheet(visual, step, &report, lang, system, Theme::Print, WIDE).ok());
        paragraph(&sheet.unwrap_or_default().description);
        paragraph(&note);
        html.push_str("</li>\n");
    }
    html + "</ol>"
}

/// The element with its talk inside, so that a page from a folder, which may fetch nothing, has it too.
#[must_use]
pub fn element(file: &TalkFile) -> String {
    let data = serde_json::to_string(&file.tree)
        .unwrap_or_default()
        .replace('<', "\\u003c");
    let text = transcript(&file.talk);
    // The opening tag stands alone on its line: so Markdown takes the element as a block.
    format!("<axle-talk>\n<script type=\"application/json\">{data}</script>\n{text}\n</axle-talk>")
}

/// One HTML file with the talk, the elements and everything else inside. `scripts` is a folder with the
/// built scripts.
///
/// # Errors
/// [`TalkError::Script`] when a script is missing.
pub fn page(file: &TalkFile, scripts: &Path) -> Result<String, TalkError> {
    let script = |name: &str| {
        std::fs::read_to_string(scripts.join(name))
            .map(|text| text.replace("</script", "<\\/script"))
            .map_err(TalkError::Script)
    };
    let talk = &file.talk;
    let mut title = String::new();
    push_escaped(&mut title, &talk.title);
    let mut html = String::new();
    let lang = talk.lang.tag();
    // Writing into a string does not fail.
    let _ = write!(
        html,
        "<!DOCTYPE html>\n<html lang=\"{lang}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>{PAGE_STYLE}</style>\n</head>\n<body>\n<main>\n<h1>{title}</h1>\n\
         {}\n\
         <p class=\"whose\">{}</p>\n</main>\n",
        element(file),
        words::get(talk.lang, "talk.whose"),
    );
    let mut parts: Vec<&str> = talk.steps.iter().map(|step| step.topic.name).collect();
    parts.extend(["talk", "take", "working"]);
    let elements = slim(&script(CLASSIC)?, &parts, lang);
    for script in [elements, script(TALK_CLASSIC)?] {
        html.push_str("<script>");
        html.push_str(&script);
        html.push_str("</script>\n");
    }
    Ok(html + "</body>\n</html>\n")
}

const PAGE_STYLE: &str = "body{margin:0;font:1rem/1.5 'Source Sans 3','DejaVu Sans',Verdana,sans-serif;\
color:#1d2433;background:#fff}main{max-inline-size:64rem;margin:0 auto;padding:.5rem 1rem}\
h1{font-size:1.1rem;margin:.25rem 0}.whose{color:#5b6477;font-size:.9rem}\
@media(prefers-color-scheme:dark){body{color:#e8ebf1;background:#12161f}.whose{color:#a9b2c3}}\
@media screen{axle-talk:defined~.whose{margin-block-start:1rem}}";

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::talk::STARTER;

    fn starter() -> TalkFile {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("talk.toml");
        std::fs::write(&path, STARTER).unwrap();
        read(&path).unwrap()
    }

    #[test]
    fn the_starter_can_be_given_as_it_is() {
        let file = starter();
        assert_eq!(file.talk.steps.len(), 2);
        let text = transcript(&file.talk);
        // 1850 kg · 9.81 m/s² · 1.46/2.86 = 9 264.6 N
        assert!(text.contains("9.26\u{2009}kN"), "{text}");
        assert!(text.contains("How many times"), "{text}");
    }

    #[test]
    fn every_fault_of_a_file_is_told_on_a_line_of_its_own() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("talk.toml");
        let bad = STARTER
            .replace("{rear_axle_load:3 kN}", "{rear_axle_lod:3 kN}")
            .replace("view = \"side\"", "view = \"sdie\"");
        std::fs::write(&path, bad).unwrap();
        let told = read(&path).unwrap_err().to_string();
        let lines: Vec<&str> = told.lines().collect();
        assert_eq!(lines.len(), 2, "{told}");
        assert!(
            lines[0].contains("Step 1") && told.contains("rear_axle_load"),
            "{told}"
        );
        std::fs::write(&path, "title = ").unwrap();
        let told = read(&path).unwrap_err().to_string();
        assert!(
            told.starts_with("talk ") && told.contains("line 1"),
            "{told}"
        );
    }

    #[test]
    fn the_page_holds_its_talk_and_nothing_that_ends_a_script_early() {
        let folder = tempfile::tempdir().unwrap();
        for name in [CLASSIC, TALK_CLASSIC] {
            std::fs::write(folder.path().join(name), "let a = \"</script>\";").unwrap();
        }
        let mut file = starter();
        file.tree.set("title", Tree::text("</script><b>&"));
        file.talk.title = "</script><b>&".into();
        let html = page(&file, folder.path()).unwrap();
        assert_eq!(html.matches("</script>").count(), 3, "{html}");
        assert!(html.contains("<title>&lt;/script&gt;&lt;b&gt;&amp;</title>"));
    }
}
