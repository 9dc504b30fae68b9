//! Turns a Markdown page with computed values into HTML.
//!
//! A page begins with TOML front matter between lines of `+++`: its title, its topic and a scenario.
//! In the text, `{{ … }}` puts in what the core computes for that scenario; no result is typed.

mod functions;
mod interface;

use crate::published::Check;
use crate::scenario_file::{self, ScenarioError};
use axlewright_core::topic::{self, Report};
use axlewright_core::{Problem, Scenario};
use minijinja::Environment;
use serde::Deserialize;
use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

/// Why a page cannot be made.
#[derive(Debug)]
#[non_exhaustive]
pub enum PageError {
    /// The front matter is missing or wrong.
    FrontMatter(PathBuf, String),
    /// The scenario in the front matter is refused.
    Scenario(PathBuf, Box<ScenarioError>),
    /// The topic is unknown, or the scenario has no answer.
    Topic(PathBuf, Box<Problem>),
    /// A value or a function in the text is wrong.
    Text(PathBuf, String),
}

impl fmt::Display for PageError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::FrontMatter(path, reason) => {
                write!(f, "{}: front matter: {reason}", path.display())
            }
            Self::Scenario(path, error) => write!(f, "{}: {error}", path.display()),
            Self::Topic(path, problem) => write!(f, "{}: {problem}", path.display()),
            Self::Text(path, reason) => write!(f, "{}: {reason}", path.display()),
        }
    }
}

impl std::error::Error for PageError {}

/// What the front matter says.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontMatter {
    /// Title of the page.
    pub title: String,
    /// Title in the navigation; the title where it is left out.
    #[serde(default)]
    pub short: Option<String>,
    /// One sentence for search engines and link previews.
    pub summary: String,
    /// The topic; left out on pages that are about none.
    #[serde(default)]
    pub topic: Option<String>,
    /// Place in the navigation.
    pub order: u32,
    /// The scenario, as in a scenario file.
    #[serde(default)]
    pub scenario: Option<toml::Table>,
}

/// A file that a page needs beside it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Asset {
    /// Path from the site's root.
    pub path: String,
    /// Content.
    pub content: String,
}

/// A page before it is laid out.
#[derive(Clone, Debug)]
pub struct Page {
    /// Name of the file without ending: `load-transfer`.
    pub slug: String,
    /// Front matter.
    pub front: FrontMatter,
    /// The body as HTML.
    pub body: String,
    /// Figures that the body shows.
    pub assets: Vec<Asset>,
}

/// What the functions in a page's text work on.
pub(crate) struct Context {
    pub(crate) slug: String,
    pub(crate) report: Option<Report>,
    pub(crate) checks: Arc<Vec<Check>>,
    pub(crate) assets: Mutex<Vec<Asset>>,
}

/// Makes one page.
///
/// # Errors
/// [`PageError`] names the file and the fault.
pub fn page(path: &Path, text: &str, checks: &Arc<Vec<Check>>) -> Result<Page, PageError> {
    let wrong = |reason: &str| PageError::FrontMatter(path.to_path_buf(), reason.into());
    let rest = text
        .strip_prefix("+++\n")
        .ok_or_else(|| wrong("the first line must be +++"))?;
    let (front, body) = rest
        .split_once("\n+++\n")
        .ok_or_else(|| wrong("its end (+++) is missing"))?;
    let front: FrontMatter = toml::from_str(front).map_err(|e| wrong(e.message()))?;
    let slug = path
        .file_stem()
        .and_then(|s| s.to_str())
        .unwrap_or("page")
        .to_owned();
    let context = Arc::new(Context {
        slug: slug.clone(),
        report: report_of(path, &front)?,
        checks: checks.clone(),
        assets: Mutex::default(),
    });
    let mut environment = Environment::new();
    environment.set_undefined_behavior(minijinja::UndefinedBehavior::Strict);
    functions::add(&mut environment, &context);
    let filled = environment
        .render_str(body, ())
        .map_err(|e| PageError::Text(path.to_path_buf(), format!("{e:#}").replace('\n', " ")))?;
    let assets = match context.assets.lock() {
        Ok(mut assets) => std::mem::take(&mut *assets),
        Err(_) => Vec::new(),
    };
    Ok(Page {
        slug,
        front,
        body: html_of(&filled),
        assets,
    })
}

fn report_of(path: &Path, front: &FrontMatter) -> Result<Option<Report>, PageError> {
    let Some(name) = &front.topic else {
        return Ok(None);
    };
    let refused = |problem| PageError::Topic(path.to_path_buf(), Box::new(problem));
    let topic = topic::find(name).map_err(refused)?;
    let scenario: Scenario = match &front.scenario {
        None => topic.example().map_err(refused)?,
        Some(table) => scenario_file::parse(Path::new("front-matter.toml"), &table.to_string())
            .map_err(|e| PageError::Scenario(path.to_path_buf(), Box::new(e)))?,
    };
    topic.report(&scenario).map(Some).map_err(refused)
}

/// Markdown to HTML; headings get an anchor of their own, and code can be scrolled by keyboard.
fn html_of(markdown: &str) -> String {
    use pulldown_cmark::{CowStr, Event, Options, Parser, Tag, html};
    let options = Options::ENABLE_TABLES | Options::ENABLE_SMART_PUNCTUATION;
    let mut events: Vec<Event> = Parser::new_ext(markdown, options).collect();
    for at in 0..events.len() {
        let words: String = events[at..]
            .iter()
            .skip(1)
            .take_while(|event| !matches!(event, Event::End(_)))
            .filter_map(|event| match event {
                Event::Text(text) | Event::Code(text) => Some(text.as_ref()),
                _ => None,
            })
            .collect();
        if let Event::Start(Tag::Heading { id, .. }) = &mut events[at] {
            *id = Some(CowStr::from(anchor(&words)));
        }
    }
    let mut out = String::new();
    html::push_html(&mut out, events.into_iter());
    // What may scroll sideways must be reached by keyboard.
    out.replace("<pre><code", "<pre tabindex=\"0\"><code")
}

/// The anchor of a heading: its words in lower case, joined by hyphens.
fn anchor(words: &str) -> String {
    let parts: Vec<String> = words
        .split(|c: char| !c.is_alphanumeric())
        .filter(|part| !part.is_empty())
        .map(str::to_lowercase)
        .collect();
    parts.join("-")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn made(body: &str) -> Result<Page, PageError> {
        let front = "+++\ntitle = \"T\"\nsummary = \"S\"\norder = 1\ntopic = \"load_transfer\"\n[scenario.vehicle]\nbase = \"esker\"\n[scenario.load_transfer]\nacceleration = \"0.6 g\"\n+++\n";
        page(
            Path::new("t.md"),
            &format!("{front}{body}"),
            &Arc::default(),
        )
    }

    #[test]
    fn values_are_computed_not_typed() {
        let page = made("# A title\n\nThe rear carries {{ say('rear_axle_load') }}.\n").unwrap();
        assert!(
            page.body.contains("11\u{2009}321\u{2009}N"),
            "{}",
            page.body
        );
        assert!(page.body.contains("<h1 id=\"a-title\">"), "{}", page.body);
    }

    #[test]
    fn an_unknown_value_stops_the_build_and_names_the_nearest() {
        let told = made("{{ say('rear_axle_lod') }}").unwrap_err().to_string();
        assert!(
            told.contains("rear_axle_load") && told.contains("t.md"),
            "{told}"
        );
        assert!(made("{{ nonsense }}").is_err());
    }

    #[test]
    fn an_element_holds_its_picture_for_readers_without_script() {
        let page = made("{{ element() }}").unwrap();
        assert!(page.body.contains("<axle-load-transfer"), "{}", page.body);
        assert!(
            page.body.contains("acceleration=\"0.6 g\""),
            "{}",
            page.body
        );
        assert!(
            page.body.contains("alt=\"Accelerating at 0.60\u{2009}g"),
            "{}",
            page.body
        );
        assert!(page.assets.len() >= 2);
    }
}
