//! Builds the whole site: elements, pages, figures, styles.

use crate::elements::{BuildError, ElementsOptions, ElementsReport, build_elements};
use crate::frame;
use crate::integrity::{INTEGRITY, integrity};
use crate::interface;
use crate::output::write_whole;
use crate::pages::{Asset, Page, PageError, page};
use crate::published::{self, Check};
use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use axlewright_widgets::element::element_table;
use minijinja::{Environment, context};
use notify::{RecommendedWatcher, RecursiveMode, Watcher};
use std::fmt;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc;
use std::time::Duration;

/// Why the site cannot be built.
#[derive(Debug)]
#[non_exhaustive]
pub enum SiteError {
    /// The elements cannot be built.
    Elements(BuildError),
    /// A page is wrong.
    Page(PageError),
    /// The published checks are wrong.
    Checks(String),
    /// The layout is wrong.
    Layout(String),
    /// A file cannot be read or written.
    File(PathBuf, std::io::Error),
    /// Changes of files cannot be watched.
    Watch(notify::Error),
}

impl fmt::Display for SiteError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Elements(error) => write!(f, "{error}"),
            Self::Page(error) => write!(f, "{error}"),
            Self::Checks(reason) => write!(f, "tests/published.toml: {reason}"),
            Self::Layout(reason) => write!(f, "site/theme/layout.html: {reason}"),
            Self::File(path, error) => write!(f, "{}: {error}", path.display()),
            Self::Watch(error) => write!(f, "changes of files cannot be watched: {error}"),
        }
    }
}

impl std::error::Error for SiteError {}

/// What a build made.
#[derive(Debug)]
pub struct SiteReport {
    /// The elements.
    pub elements: ElementsReport,
    /// Count of pages.
    pub pages: usize,
    /// Where it is.
    pub out: PathBuf,
}

impl SiteReport {
    /// What was made and what it weighs, a line each.
    #[must_use]
    pub fn summary(&self) -> String {
        let mut text = format!("{} pages in {}\n", self.pages, self.out.display());
        for file in &self.elements.files {
            text.push_str(&format!(
                "{:<24} {:>9} bytes {:>9} with brotli\n",
                file.name, file.raw, file.brotli
            ));
        }
        text.push_str(&format!(
            "{:<24} {:>15} {:>9} with brotli\n",
            "one element needs",
            "",
            self.elements.needed_brotli()
        ));
        text
    }
}

/// Builds the site of the source tree at `root` into `out`. `say` hears what takes time, a line each.
///
/// # Errors
/// [`SiteError`] names the file and the fault.
pub fn build(root: &Path, out: &Path, say: &mut dyn FnMut(&str)) -> Result<SiteReport, SiteError> {
    let table = serde_json::to_string(&element_table())
        .map_err(|error| SiteError::Layout(error.to_string()))?;
    let options = ElementsOptions::new(root, table, env!("CARGO_PKG_VERSION"));
    let elements = build_elements(out, &options, say).map_err(SiteError::Elements)?;
    let hashes = integrity(out).map_err(|error| SiteError::File(out.to_path_buf(), error))?;
    write(out, INTEGRITY, hashes.as_bytes())?;
    let documents = interface::documents(env!("CARGO_PKG_VERSION"))
        .map_err(|error| SiteError::Layout(error.to_string()))?;
    for Asset { path, content } in &documents {
        write(out, path, content.as_bytes())?;
    }
    let pages = build_pages(root, out)?;
    Ok(SiteReport {
        elements,
        pages,
        out: out.to_path_buf(),
    })
}

/// Builds pages, figures and styles; gives the count of pages.
///
/// # Errors
/// As [`build`].
pub fn build_pages(root: &Path, out: &Path) -> Result<usize, SiteError> {
    let checks = Arc::new(read_checks(root)?);
    let mut pages = Vec::new();
    for path in files_in(&root.join("site/pages"), "md")? {
        let text = read(&path)?;
        pages.push(page(&path, &text, &checks).map_err(SiteError::Page)?);
    }
    pages.sort_by_key(|page| page.front.order);
    let theme = root.join("site/theme");
    let layout = read(&theme.join("layout.html"))?;
    for at in 0..pages.len() {
        let html = lay_out(&layout, &pages, at)?;
        write(out, &format!("{}.html", pages[at].slug), html.as_bytes())?;
        for Asset { path, content } in &pages[at].assets {
            write(out, path, content.as_bytes())?;
        }
    }
    let tags: Vec<String> = TOPICS.iter().map(|topic| topic.tag()).collect();
    let tags = tags.join(", ");
    let style = read(&theme.join("style.css"))?.replace("AXLE_TAGS", &tags);
    write(out, "style.css", style.as_bytes())?;
    let query = read(&theme.join("query.js"))?;
    let script = read(&theme.join("page.js"))?.replace("ELEMENTS", &format!("\"{tags}\""));
    write(out, "page.js", (query.clone() + &script).as_bytes())?;
    let frame = read(&theme.join("frame.html"))?;
    let script = query + &read(&theme.join("frame.js"))?;
    let style = read(&theme.join("frame.css"))?;
    for Asset { path, content } in frame::frames(&frame, &script, style) {
        write(out, &path, content.as_bytes())?;
    }
    write(out, "icon.svg", read(&theme.join("icon.svg"))?.as_bytes())?;
    Ok(pages.len())
}

/// Builds the pages again whenever a page, a style or a published check changes, for as long as the
/// returned value lives.
///
/// # Errors
/// [`SiteError::Watch`].
pub fn watch(
    root: &Path,
    out: &Path,
    say: &mut dyn FnMut(&str),
) -> Result<RecommendedWatcher, SiteError> {
    let (stirred, changes) = mpsc::channel();
    let mut watcher = notify::recommended_watcher(move |event: notify::Result<notify::Event>| {
        let changed = event.is_ok_and(|e| !matches!(e.kind, notify::EventKind::Access(_)));
        if changed {
            let _ = stirred.send(());
        }
    })
    .map_err(SiteError::Watch)?;
    for place in ["site/pages", "site/theme", "tests/published.toml"] {
        watcher
            .watch(&root.join(place), RecursiveMode::Recursive)
            .map_err(SiteError::Watch)?;
    }
    say("pages are built again when a file in site/pages or site/theme changes");
    let (root, out) = (root.to_path_buf(), out.to_path_buf());
    std::thread::spawn(move || {
        while changes.recv().is_ok() {
            // An editor writes a file in several steps: wait until it is still.
            while changes.recv_timeout(Duration::from_millis(80)).is_ok() {}
            match build_pages(&root, &out) {
                Ok(count) => eprintln!("{count} pages built again"),
                Err(error) => eprintln!("axlewright: {error}"),
            }
        }
    });
    Ok(watcher)
}

/// Adds the scripts of one page to every page of the site: how a development server's live reload gets
/// into pages that it did not make.
///
/// # Errors
/// [`SiteError::File`].
pub fn add_scripts(out: &Path, from_page: &str) -> Result<(), SiteError> {
    let mut scripts = String::new();
    for part in from_page.split("<script").skip(1) {
        if let Some((script, _)) = part.split_once("</script>") {
            scripts.push_str(&format!("<script{script}</script>\n"));
        }
    }
    for path in files_in(out, "html")? {
        let html = read(&path)?.replace("</body>", &format!("{scripts}</body>"));
        write_whole(&path, html.as_bytes()).map_err(|error| SiteError::File(path, error))?;
    }
    Ok(())
}

/// Reads the published checks of the source tree.
///
/// # Errors
/// [`SiteError`] when the file is missing or wrong.
pub fn read_checks(root: &Path) -> Result<Vec<Check>, SiteError> {
    let text = read(&root.join("tests/published.toml"))?;
    published::read(&text).map_err(|error| SiteError::Checks(error.to_string()))
}

fn lay_out(layout: &str, pages: &[Page], at: usize) -> Result<String, SiteError> {
    let page = &pages[at];
    let entry = |page: &Page| {
        let short = page.front.short.as_deref().unwrap_or(&page.front.title);
        context! { slug => page.slug, short => short }
    };
    let navigation: Vec<_> = pages.iter().map(entry).collect();
    let word = |name: &str| words::get(Lang::English, &format!("site.{name}"));
    let mut environment = Environment::new();
    environment.set_undefined_behavior(minijinja::UndefinedBehavior::Strict);
    environment
        .add_template("layout.html", layout)
        .map_err(|e| SiteError::Layout(e.to_string()))?;
    environment
        .get_template("layout.html")
        .and_then(|template| {
            template.render(context! {
                slug => page.slug,
                title => page.front.title,
                summary => page.front.summary,
                body => page.body,
                navigation => navigation,
                previous => at.checked_sub(1).map(|before| entry(&pages[before])),
                next => pages.get(at + 1).map(entry),
                version => env!("CARGO_PKG_VERSION"),
                words => context! {
                    skip => word("skip"),
                    pages => word("pages"),
                    beside => word("beside"),
                    invented => word("invented"),
                    disclaimer => word("disclaimer"),
                    licence => word("licence"),
                },
            })
        })
        .map_err(|e| SiteError::Layout(format!("{e:#}")))
}

fn files_in(folder: &Path, ending: &str) -> Result<Vec<PathBuf>, SiteError> {
    let failed = |error| SiteError::File(folder.to_path_buf(), error);
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        if path.extension().is_some_and(|e| e == ending) {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

fn read(path: &Path) -> Result<String, SiteError> {
    fs::read_to_string(path).map_err(|error| SiteError::File(path.to_path_buf(), error))
}

/// Writes a file of the site; one that is there with the same content is left alone.
fn write(out: &Path, name: &str, bytes: &[u8]) -> Result<(), SiteError> {
    let path = out.join(name);
    if fs::read(&path).is_ok_and(|old| old == bytes) {
        return Ok(());
    }
    let failed = |error| SiteError::File(path.clone(), error);
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(failed)?;
    }
    write_whole(&path, bytes).map_err(failed)
}
