//! Reads what the pages are made from: their texts, the glossary, the lessons, the published checks.

use crate::pages::{Common, Glossary, HeldTalk, Lessons, Source, source};
use crate::serve::CONTENT_SECURITY_POLICY;
use crate::site::{SiteError, files_in, read, read_checks};
use crate::talk;
use axlewright_core::topic::TOPICS;
use axlewright_core::words::{self, Lang};
use std::path::Path;

/// The examples of servers' settings, in `site/hosting`.
const HOSTING: &[&str] = &["nginx.conf", "apache.conf", "Caddyfile"];

/// The texts of all pages in the order of the navigation, and what they share.
///
/// # Errors
/// [`SiteError`] names the file and the fault.
pub fn read_all(root: &Path) -> Result<(Vec<Source>, Common), SiteError> {
    let site = root.join("site");
    let mut sources = Vec::new();
    for path in files_in(&site.join("pages"), "md")? {
        let made = source(&path, &read(&path)?, stem(&path), "");
        sources.push(made.map_err(SiteError::Page)?);
    }
    for path in files_in(&site.join("per-topic"), "md")? {
        let text = read(&path)?;
        for topic in TOPICS {
            let title = words::get(Lang::English, &format!("topic.{}", topic.name));
            let own = text
                .replace("AXLE_TOPIC", topic.name)
                .replace("AXLE_TITLE", title)
                .replace("AXLE_SLUG", &topic.slug());
            let slug = format!("{}-{}", stem(&path), topic.slug());
            let made = source(&path, &own, &slug, stem(&path));
            sources.push(made.map_err(SiteError::Page)?);
        }
    }
    // Pages of one series keep the order of the topics.
    sources.sort_by_key(|source| source.listed.order);
    let pages = sources.iter().map(|source| source.listed.clone()).collect();
    let texts = sources
        .iter()
        .filter(|source| source.listed.is_topic_page())
        .map(|source| (source.listed.topic.clone(), source.body.clone()))
        .collect();
    let common = Common {
        checks: read_checks(root)?,
        glossary: glossary(&site.join("glossary.toml"))?,
        lessons: lessons(&site.join("lessons.toml"))?,
        hosting: hosting(&site.join("hosting"))?,
        talks: talks(&site.join("talks"))?,
        pages,
        texts,
    };
    Ok((sources, common))
}

fn stem(path: &Path) -> &str {
    path.file_stem()
        .and_then(|stem| stem.to_str())
        .unwrap_or("page")
}

/// The talks in a folder, by name. One with a fault does not go out.
fn talks(folder: &Path) -> Result<Vec<HeldTalk>, SiteError> {
    let mut all = Vec::new();
    for path in files_in(folder, "toml")? {
        let file =
            talk::read(&path).map_err(|error| SiteError::Talk(path.clone(), Box::new(error)))?;
        all.push(HeldTalk {
            name: stem(&path).to_owned(),
            text: read(&path)?,
            html: talk::element(&file),
        });
    }
    Ok(all)
}

fn glossary(path: &Path) -> Result<Glossary, SiteError> {
    Glossary::read(&read(path)?).map_err(|reason| SiteError::Data(path.into(), reason))
}

fn lessons(path: &Path) -> Result<Lessons, SiteError> {
    toml::from_str(&read(path)?)
        .map_err(|error| SiteError::Data(path.into(), error.message().into()))
}

fn hosting(folder: &Path) -> Result<Vec<(String, String)>, SiteError> {
    let mut all = Vec::new();
    for name in HOSTING {
        let text = read(&folder.join(name))?.replace("AXLE_POLICY", CONTENT_SECURITY_POLICY);
        all.push(((*name).into(), text));
    }
    Ok(all)
}
