//! Builds the whole site: elements, pages, figures, styles.

use crate::elements::{BuildError, ElementsOptions, ElementsReport, build_elements, short_hash};
use crate::folder::Folder;
use crate::html;
use crate::integrity::{INTEGRITY, integrity};
use crate::interface;
use crate::output::write_whole;
use crate::packages;
use crate::pages::{Asset, Common, Page, PageError, Source, page};
use crate::published::{self, Check};
use crate::search::{self, Entry};
use crate::sources;
use crate::talk::TalkError;
use crate::theme::Theme;
use crate::worker;
use axlewright_core::topic::TOPICS;
use axlewright_widgets::element::element_table;
use notify::{RecommendedWatcher, RecursiveMode, Watcher};
use std::collections::HashMap;
use std::fmt;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;
use std::time::{Duration, Instant};

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
    /// A talk is wrong.
    Talk(PathBuf, Box<TalkError>),
    /// The layout is wrong.
    Layout(String),
    /// A file cannot be read or written.
    File(PathBuf, std::io::Error),
    /// A file beside the pages is wrong.
    Data(PathBuf, String),
    /// The making of a page broke off.
    Lost(PathBuf),
    /// Changes of files cannot be watched.
    Watch(notify::Error),
}

impl fmt::Display for SiteError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Elements(error) => write!(f, "{error}"),
            Self::Page(error) => write!(f, "{error}"),
            Self::Checks(reason) => write!(f, "tests/published.toml: {reason}"),
            Self::Talk(path, error) => write!(f, "{}: {error}", path.display()),
            Self::Layout(reason) => write!(f, "site/theme/layout.html: {reason}"),
            Self::File(path, error) => write!(f, "{}: {error}", path.display()),
            Self::Data(path, reason) => write!(f, "{}: {reason}", path.display()),
            Self::Lost(path) => write!(f, "{}: the making of the page broke off", path.display()),
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
    /// What is handed out whole: name and bytes.
    pub packages: Vec<(String, usize)>,
    /// Every file, by its path from the site's root.
    pub files: Vec<String>,
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
                "{:<36} {:>9} bytes {:>9} with brotli\n",
                file.name, file.raw, file.brotli
            ));
        }
        for topic in TOPICS {
            text.push_str(&format!(
                "one {:<32} needs {:>9} with brotli\n",
                topic.tag(),
                self.elements.needed_brotli(topic.name)
            ));
        }
        for (name, size) in &self.packages {
            text.push_str(&format!("{name:<24} {size:>9} bytes\n"));
        }
        text
    }
}

/// Builds the site of the source tree at `root` into `out`. `say` hears what takes time, a line each.
///
/// # Errors
/// [`SiteError`] names the file and the fault.
pub fn build(root: &Path, out: &Path, say: &mut dyn FnMut(&str)) -> Result<SiteReport, SiteError> {
    let version = env!("CARGO_PKG_VERSION");
    let elements = build_scripts(root, out, say)?;
    let mut folder = Folder::new(out);
    for file in &elements.files {
        folder.note(&file.name)?;
    }
    let hashes = integrity(out).map_err(|error| SiteError::File(out.to_path_buf(), error))?;
    folder.write(INTEGRITY, hashes.as_bytes())?;
    let documents =
        interface::documents(version).map_err(|error| SiteError::Layout(error.to_string()))?;
    for Asset { path, content } in &documents {
        folder.write(path, content.as_bytes())?;
    }
    let made = Pages::default().build(root, &mut folder)?;
    // What is handed out whole is not kept by the worker as well.
    let kept = folder.files().clone();
    let packages = packages::build(root, &mut folder, &made)?;
    folder.write(worker::WORKER, worker::script(root, &kept)?.as_bytes())?;
    Ok(SiteReport {
        elements,
        pages: made.pages.len(),
        packages,
        files: folder.files().keys().cloned().collect(),
        out: out.to_path_buf(),
    })
}

/// Builds the scripts of the elements and what they load, without pages.
///
/// # Errors
/// As [`build`].
pub fn build_scripts(
    root: &Path,
    out: &Path,
    say: &mut dyn FnMut(&str),
) -> Result<ElementsReport, SiteError> {
    let table = serde_json::to_string(&element_table())
        .map_err(|error| SiteError::Layout(error.to_string()))?;
    let options = ElementsOptions::new(root, table, env!("CARGO_PKG_VERSION"));
    build_elements(out, &options, say).map_err(SiteError::Elements)
}

/// Builds pages, figures and styles; gives the count of pages.
///
/// # Errors
/// As [`build`].
pub fn build_pages(root: &Path, out: &Path) -> Result<usize, SiteError> {
    let made = Pages::default().build(root, &mut Folder::new(out))?;
    Ok(made.pages.len())
}

/// Pages made so far, each with what it was made from, so that only what changed is made again.
#[derive(Debug, Default)]
pub struct Pages {
    made: HashMap<String, (String, Page)>,
}

/// What a build of the pages made.
#[derive(Debug)]
pub struct Made {
    /// The pages in order, before they are laid out.
    pub pages: Vec<Page>,
    /// What they are put into.
    pub theme: Theme,
}

impl Pages {
    /// Builds pages, figures and styles.
    ///
    /// # Errors
    /// As [`build`].
    pub fn build(&mut self, root: &Path, folder: &mut Folder) -> Result<Made, SiteError> {
        let (sources, common) = sources::read_all(root)?;
        for talk in &common.talks {
            folder.write(&format!("talks/{}.toml", talk.name), talk.text.as_bytes())?;
        }
        let pages = self.make(&sources, common)?;
        let theme = Theme::read(root, search::script(&entries(&pages)))?;
        for asset in &theme.assets {
            folder.write(&asset.path, asset.content.as_bytes())?;
        }
        for at in 0..pages.len() {
            let html = theme.lay_out(&pages, at, &sources[at].front.scripts)?;
            let name = format!("{}.html", pages[at].listed.slug);
            folder.write(&name, html.as_bytes())?;
            for Asset { path, content } in &pages[at].assets {
                folder.write(path, content.as_bytes())?;
            }
        }
        Ok(Made { pages, theme })
    }

    /// Makes the pages that are not made yet, on all processors.
    fn make(&mut self, sources: &[Source], common: Common) -> Result<Vec<Page>, SiteError> {
        let shared = short_hash(format!("{common:?}").as_bytes());
        let common = Arc::new(common);
        let keys: Vec<String> = sources
            .iter()
            .map(|source| short_hash(format!("{shared}{source:?}").as_bytes()))
            .collect();
        let is_made = |at: usize| {
            let made = self.made.get(&sources[at].listed.slug);
            made.is_some_and(|(key, _)| *key == keys[at])
        };
        let open: Vec<usize> = (0..sources.len()).filter(|at| !is_made(*at)).collect();
        let next = AtomicUsize::new(0);
        let workers = std::thread::available_parallelism().map_or(1, usize::from);
        let made = std::thread::scope(|scope| {
            let work = || {
                let mut made = Vec::new();
                while let Some(&at) = open.get(next.fetch_add(1, Ordering::Relaxed)) {
                    made.push((at, page(&sources[at], &common)));
                }
                made
            };
            let threads: Vec<_> = (0..workers).map(|_| scope.spawn(work)).collect();
            let mut all = Vec::new();
            for thread in threads {
                // A page that panics is a fault of this program; the others are whole.
                if let Ok(some) = thread.join() {
                    all.extend(some);
                }
            }
            all
        });
        for (at, page) in made {
            let page = page.map_err(SiteError::Page)?;
            let slug = sources[at].listed.slug.clone();
            self.made.insert(slug, (keys[at].clone(), page));
        }
        let found = |source: &Source| {
            self.made
                .get(&source.listed.slug)
                .map(|(_, page)| page.clone())
        };
        sources
            .iter()
            .map(|source| found(source).ok_or_else(|| SiteError::Lost(source.path.clone())))
            .collect()
    }
}

/// What the search finds: the sections of all pages in the menus, and the lesson plans.
fn entries(pages: &[Page]) -> Vec<Entry> {
    let mut entries = Vec::new();
    for page in pages.iter().filter(|page| search::looks_through(page)) {
        let listed = &page.listed;
        for section in html::sections(&page.body) {
            let anchor = match section.level {
                1 => String::new(),
                _ => format!("#{}", section.anchor),
            };
            if section.level == 1 || !section.anchor.is_empty() {
                entries.push(Entry {
                    address: format!("{}.html{anchor}", listed.slug),
                    page: listed.title.clone(),
                    section,
                });
            }
        }
    }
    entries
}

/// What pages are made from.
pub const WATCHED: &[&str] = &[
    "site/cases",
    "site/glossary.toml",
    "site/hosting",
    "site/lessons.toml",
    "site/pages",
    "site/per-topic",
    "site/talks",
    "site/theme",
    "site/vendor",
    "tests/published.toml",
];

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
    for place in WATCHED {
        watcher
            .watch(&root.join(place), RecursiveMode::Recursive)
            .map_err(SiteError::Watch)?;
    }
    say("pages are built again when a file that they are made from changes");
    let (root, out) = (root.to_path_buf(), out.to_path_buf());
    std::thread::spawn(move || {
        let mut pages = Pages::default();
        while changes.recv().is_ok() {
            // An editor writes a file in several steps: wait until it is still.
            while changes.recv_timeout(Duration::from_millis(80)).is_ok() {}
            let started = Instant::now();
            match pages.build(&root, &mut Folder::new(&out)) {
                Ok(made) => eprintln!(
                    "{} pages built again in {} ms",
                    made.pages.len(),
                    started.elapsed().as_millis()
                ),
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

pub(crate) fn files_in(folder: &Path, ending: &str) -> Result<Vec<PathBuf>, SiteError> {
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

pub(crate) fn read(path: &Path) -> Result<String, SiteError> {
    fs::read_to_string(path).map_err(|error| SiteError::File(path.to_path_buf(), error))
}
