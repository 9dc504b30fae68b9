//! Turns a Markdown page with computed values into HTML.
//!
//! A page begins with TOML front matter between lines of `+++`: its title, its topic and a scenario.
//! In the text, `{{ … }}` puts in what the core computes for that scenario; no result is typed.

mod cases;
mod functions;
mod glossary;
mod interface;
mod practice;
mod reference;
mod teach;

pub use glossary::Glossary;
pub use teach::Lessons;

use crate::elements::short_hash;
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
    /// Group in the navigation: `start`, `topics`, `use`, `teach`, `reference`; empty for a page that is in
    /// no menu. Unless it says otherwise, a page of a topic is in `topics` and another one in `use`.
    #[serde(default)]
    pub section: Option<String>,
    /// Scripts that this page alone needs.
    #[serde(default)]
    pub scripts: Vec<String>,
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

/// What one page knows of another: enough for menus and links.
#[derive(Clone, Debug)]
pub struct Listed {
    /// Name of the file without ending: `load-transfer`.
    pub slug: String,
    /// Title in the navigation.
    pub short: String,
    /// Title.
    pub title: String,
    /// Its first heading: on a topic's page the question that opens it.
    pub heading: String,
    /// One sentence on what it tells.
    pub summary: String,
    /// Group in the navigation; empty where it is in no menu.
    pub section: String,
    /// What its file was made from, where several topics share one text; else empty.
    pub series: String,
    /// The topic; empty on pages that are about none.
    pub topic: String,
    /// Place in the navigation.
    pub order: u32,
}

/// The text of a page, read but not filled in.
#[derive(Clone, Debug)]
pub struct Source {
    /// Where it lies.
    pub path: PathBuf,
    /// Front matter.
    pub front: FrontMatter,
    /// The rest.
    pub body: String,
    /// What other pages may know.
    pub listed: Listed,
}

/// A talk that pages hold.
#[derive(Clone, Debug)]
pub struct HeldTalk {
    /// Name of its file, without the ending.
    pub name: String,
    /// Text of its file.
    pub text: String,
    /// The element with the talk inside, as HTML.
    pub html: String,
}

/// What all pages share.
#[derive(Debug, Default)]
pub struct Common {
    /// The published checks.
    pub checks: Vec<Check>,
    /// The words that pages link to.
    pub glossary: Glossary,
    /// What a teacher is told of each topic.
    pub lessons: Lessons,
    /// Examples of servers' settings: name of the file, and text.
    pub hosting: Vec<(String, String)>,
    /// The talks that pages hold.
    pub talks: Vec<HeldTalk>,
    /// All pages, in order.
    pub pages: Vec<Listed>,
    /// The text of each topic's page, for what is said of it elsewhere.
    pub texts: Vec<(String, String)>,
}

/// A page before it is laid out.
#[derive(Clone, Debug)]
pub struct Page {
    /// What other pages know of it.
    pub listed: Listed,
    /// The body as HTML.
    pub body: String,
    /// Figures that the body shows.
    pub assets: Vec<Asset>,
}

/// What the functions in a page's text work on.
pub(crate) struct Context {
    pub(crate) slug: String,
    /// Folder of the case studies' scenario files.
    pub(crate) cases: PathBuf,
    pub(crate) report: Option<Report>,
    pub(crate) common: Arc<Common>,
    pub(crate) assets: Mutex<Vec<Asset>>,
}

impl Context {
    /// Keeps a file for the page and tells its address. The name stays for those who link to it; the hash
    /// tells a kept copy from a newer file.
    ///
    /// # Errors
    /// When another thread stopped while it kept one.
    pub(crate) fn keep(&self, path: String, content: String) -> Result<String, minijinja::Error> {
        let address = format!("{path}?{}", short_hash(content.as_bytes()));
        let locked = |_| functions::wrong("assets are locked");
        let mut assets = self.assets.lock().map_err(locked)?;
        if !assets.iter().any(|known| known.path == path) {
            assets.push(Asset { path, content });
        }
        Ok(address)
    }
}

/// Reads a page's text. `series` is the name of the text where several topics share one.
///
/// # Errors
/// [`PageError::FrontMatter`].
pub fn source(path: &Path, text: &str, slug: &str, series: &str) -> Result<Source, PageError> {
    let wrong = |reason: &str| PageError::FrontMatter(path.to_path_buf(), reason.into());
    let rest = text
        .strip_prefix("+++\n")
        .ok_or_else(|| wrong("the first line must be +++"))?;
    let (front, body) = rest
        .split_once("\n+++\n")
        .ok_or_else(|| wrong("its end (+++) is missing"))?;
    let front: FrontMatter = toml::from_str(front).map_err(|e| wrong(e.message()))?;
    let heading = body.lines().find_map(|line| line.strip_prefix("# "));
    let usual = if front.topic.is_some() {
        "topics"
    } else {
        "use"
    };
    let listed = Listed {
        slug: slug.into(),
        short: front.short.as_ref().unwrap_or(&front.title).clone(),
        title: front.title.clone(),
        heading: heading.unwrap_or(&front.title).trim().into(),
        summary: front.summary.clone(),
        section: front.section.clone().unwrap_or_else(|| usual.into()),
        series: series.into(),
        topic: front.topic.clone().unwrap_or_default(),
        order: front.order,
    };
    let mut body = body.to_owned();
    if listed.is_topic_page() {
        practice::add_section(&mut body);
    }
    Ok(Source {
        path: path.to_path_buf(),
        front,
        body,
        listed,
    })
}

impl Listed {
    /// Whether this is the page that explains its topic.
    #[must_use]
    pub fn is_topic_page(&self) -> bool {
        self.section == "topics" && self.slug == self.topic.replace('_', "-")
    }
}

/// Makes one page.
///
/// # Errors
/// [`PageError`] names the file and the fault.
pub fn page(source: &Source, common: &Arc<Common>) -> Result<Page, PageError> {
    let path = &source.path;
    let context = Arc::new(Context {
        slug: source.listed.slug.clone(),
        cases: path.with_file_name("").join("../cases"),
        report: report_of(path, &source.front)?,
        common: common.clone(),
        assets: Mutex::default(),
    });
    let mut environment = Environment::new();
    environment.set_undefined_behavior(minijinja::UndefinedBehavior::Strict);
    functions::add(&mut environment, &context);
    cases::add(&mut environment, &context);
    let filled = environment
        .render_str(&source.body, ())
        .map_err(|e| PageError::Text(path.clone(), format!("{e:#}").replace('\n', " ")))?;
    let assets = match context.assets.lock() {
        Ok(mut assets) => std::mem::take(&mut *assets),
        Err(_) => Vec::new(),
    };
    let mut links = common.glossary.links(&source.listed);
    Ok(Page {
        listed: source.listed.clone(),
        body: html_of(&filled, &mut links),
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

/// Markdown to HTML; headings get an anchor of their own, the first mention of a word of the glossary
/// leads there, and code can be scrolled by keyboard.
fn html_of(markdown: &str, links: &mut glossary::Links) -> String {
    use pulldown_cmark::{CowStr, Event, Options, Parser, Tag, TagEnd, html};
    let options = Options::ENABLE_TABLES | Options::ENABLE_SMART_PUNCTUATION;
    let parsed: Vec<Event> = Parser::new_ext(markdown, options).collect();
    let mut events = Vec::with_capacity(parsed.len());
    // Inside a heading, a link or code nothing is linked.
    let mut closed = 0_usize;
    for (at, event) in parsed.iter().enumerate() {
        match event {
            Event::Start(Tag::Heading {
                level,
                classes,
                attrs,
                ..
            }) => {
                let words: String = parsed[at..]
                    .iter()
                    .skip(1)
                    .take_while(|event| !matches!(event, Event::End(TagEnd::Heading(_))))
                    .filter_map(|event| match event {
                        Event::Text(text) | Event::Code(text) => Some(text.as_ref()),
                        _ => None,
                    })
                    .collect();
                closed += 1;
                events.push(Event::Start(Tag::Heading {
                    level: *level,
                    id: Some(CowStr::from(anchor(&words))),
                    classes: classes.clone(),
                    attrs: attrs.clone(),
                }));
                continue;
            }
            Event::Start(Tag::Link { .. } | Tag::CodeBlock(_)) => closed += 1,
            Event::End(TagEnd::Heading(_) | TagEnd::Link | TagEnd::CodeBlock) => {
                closed = closed.saturating_sub(1);
            }
            Event::Text(text) if closed == 0 => {
                match links.linked(text) {
                    Some(html) => events.push(Event::InlineHtml(html.into())),
                    None => events.push(event.clone()),
                }
                continue;
            }
            _ => {}
        }
        events.push(event.clone());
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
        let text = format!("{front}{body}");
        page(&source(Path::new("t.md"), &text, "t", "")?, &Arc::default())
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
