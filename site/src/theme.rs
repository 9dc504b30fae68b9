//! The layout of the pages, and the styles and scripts that they share.

use crate::elements::short_hash;
use crate::frame;
use crate::pages::{Asset, Listed, Page};
use crate::search;
use crate::site::{SiteError, read};
use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use minijinja::{Environment, Value, context};
use std::path::Path;

/// The groups of the navigation, in order.
const GROUPS: &[&str] = &["start", "topics", "use", "teach", "reference"];

/// The page that a server sends for an address that leads nowhere.
const LOST: &str = "404";

/// The script of that page, which finds the site from there, and its style. Their names are unlike those of
/// others: they are also asked for outside the site.
const LOST_SCRIPT: &str = "axlewright-lost.js";
const LOST_STYLE: &str = "axlewright-lost.css";

/// How many folders deep a lost address may be for that page to find the site.
const LOST_DEPTH: usize = 6;

/// What pages are put into.
#[derive(Debug)]
pub struct Theme {
    layout: String,
    /// Styles, scripts and other files that the pages share.
    pub assets: Vec<Asset>,
}

impl Theme {
    /// Reads `site/theme` of the source tree. `index` is the script of the search's index.
    ///
    /// # Errors
    /// When a file cannot be read.
    pub fn read(root: &Path, index: String) -> Result<Self, SiteError> {
        let theme = root.join("site/theme");
        let file = |name: &str| read(&theme.join(name));
        let tags: Vec<String> = TOPICS.iter().map(|topic| topic.tag()).collect();
        let tags = tags.join(", ");
        let script = |text: String| text.replace("ELEMENTS", &format!("\"{tags}\""));
        let word = |name: &str| Value::from(words::get(Lang::English, &format!("site.{name}")));
        let query = file("query.js")?;
        let library = read(&root.join("site/vendor/minisearch.js"))?;
        let search = file("search.js")?.replace("NOTHING_FOUND", &literal(&word("search_none")));
        let page = script(file("page.js")?)
            .replace("NEW_VERSION", &literal(&word("new_version")))
            .replace("TAKE_IT", &literal(&word("new_version_take")));
        let style = file("style.css")?.replace("AXLE_TAGS", &tags);
        let mut assets = vec![
            asset(LOST_STYLE, style.clone()),
            asset("style.css", style),
            asset("page.js", query.clone() + &page),
            asset("follow.js", script(file("follow.js")?)),
            asset("builder.js", file("builder.js")?),
            asset("search.js", format!("{library}\n{search}")),
            asset(search::INDEX, index),
            asset(LOST_SCRIPT, file("lost.js")?),
            asset("icon.svg", file("icon.svg")?),
        ];
        let frames = frame::frames(
            &file("frame.html")?,
            &(query + &file("frame.js")?),
            file("frame.css")?,
        );
        assets.extend(frames);
        Ok(Self {
            layout: file("layout.html")?,
            assets,
        })
    }

    /// The address of a shared file: its name, and the hash of its content.
    fn address(&self, name: &str) -> Result<String, SiteError> {
        let found = self.assets.iter().find(|asset| asset.path == name);
        let asset = found.ok_or_else(|| SiteError::Layout(format!("there is no file {name}")))?;
        Ok(format!("{name}?{}", short_hash(asset.content.as_bytes())))
    }

    /// The groups of the navigation: title, and pages in order.
    #[must_use]
    pub fn groups<'a>(&self, pages: &'a [Page]) -> Vec<(&'static str, Vec<&'a Listed>)> {
        let of = |group: &&str| {
            let title = words::get(Lang::English, &format!("site.group_{group}"));
            let inside = pages.iter().map(|page| &page.listed);
            let inside = inside.filter(|page| page.section == **group);
            (title, inside.collect())
        };
        GROUPS.iter().map(of).collect()
    }

    /// A page in its layout.
    ///
    /// # Errors
    /// [`SiteError::Layout`].
    pub fn lay_out(
        &self,
        pages: &[Page],
        at: usize,
        scripts: &[String],
    ) -> Result<String, SiteError> {
        let page = &pages[at];
        let own = &page.listed;
        let word = |name: &str| words::get(Lang::English, &format!("site.{name}"));
        let entry = |page: &Listed| context! { slug => page.slug, short => page.short };
        let groups: Vec<Value> = self
            .groups(pages)
            .into_iter()
            .map(|(title, inside)| {
                let inside: Vec<Value> = inside.into_iter().map(entry).collect();
                context! { title => title, pages => inside }
            })
            .collect();
        let beside: Vec<&Listed> = pages
            .iter()
            .map(|page| &page.listed)
            .filter(|page| {
                page.series == own.series && (page.section.is_empty() == own.section.is_empty())
            })
            .collect();
        let place = beside.iter().position(|page| page.slug == own.slug);
        let at_place = |place: Option<usize>| {
            place
                .and_then(|place| beside.get(place))
                .map(|page| entry(page))
        };
        // What belongs to no series and no menu has no neighbours.
        let is_alone = own.section.is_empty() && own.series.is_empty();
        let place = place.filter(|_| !is_alone);
        let mut addresses = vec![self.address("page.js")?];
        for name in scripts {
            addresses.push(self.address(name)?);
        }
        let mut styles = vec![self.address("style.css")?];
        if own.slug == LOST {
            let above = |file: String| (0..LOST_DEPTH).map(move |up| "../".repeat(up) + &file);
            addresses.extend(above(self.address(LOST_SCRIPT)?));
            styles = above(self.address(LOST_STYLE)?).collect();
        }
        let mut environment = Environment::new();
        environment.set_undefined_behavior(minijinja::UndefinedBehavior::Strict);
        environment
            .add_template("layout.html", &self.layout)
            .map_err(|e| SiteError::Layout(e.to_string()))?;
        environment
            .get_template("layout.html")
            .and_then(|template| {
                template.render(context! {
                    slug => own.slug,
                    title => own.title,
                    summary => own.summary,
                    body => page.body,
                    groups => groups,
                    previous => at_place(place.and_then(|place| place.checked_sub(1))),
                    next => at_place(place.map(|place| place + 1)),
                    styles => styles,
                    scripts => addresses,
                    version => env!("CARGO_PKG_VERSION"),
                    words => context! {
                        skip => word("skip"),
                        pages => word("pages"),
                        all_pages => word("all_pages"),
                        search => word("search"),
                        beside => word("beside"),
                        invented => word("invented"),
                        disclaimer => word("disclaimer"),
                        licence => word("licence"),
                    },
                })
            })
            .map_err(|e| SiteError::Layout(format!("{e:#}")))
    }
}

fn asset(path: &str, content: String) -> Asset {
    Asset {
        path: path.into(),
        content,
    }
}

/// A text as a literal of a script.
fn literal(text: &Value) -> String {
    serde_json::Value::from(text.to_string()).to_string()
}
