//! A package for course systems by the standard SCORM 1.2: a zip with the manifest `imsmanifest.xml`,
//! in which each topic is a lesson that reports completion and score.
//!
//! Source: Advanced Distributed Learning, SCORM 1.2 Content Aggregation Model and Run-Time Environment,
//! 2001 (from memory; the tests hold the manifest against the standard's schema).

use super::rewrite::{Rewrite, rewritten};
use super::zip::archive;
use crate::elements::CLASSIC;
use crate::folder::Folder;
use crate::pages::Page;
use crate::site::{Made, SiteError, read};
use axlewright_core::words::{self, Lang};
use std::path::Path;

/// The page of the package that is no lesson: the words that lessons link to.
const GLOSSARY: &str = "glossary";

/// Makes the package.
///
/// # Errors
/// When a file cannot be read.
pub(super) fn package(root: &Path, folder: &Folder, made: &Made) -> Result<Vec<u8>, SiteError> {
    let place = root.join("site/course");
    let layout = read(&place.join("lesson.html"))?;
    let lessons: Vec<&Page> = made
        .pages
        .iter()
        .filter(|page| page.listed.is_topic_page())
        .collect();
    let glossary = made.pages.iter().find(|page| page.listed.slug == GLOSSARY);
    let mut files = Vec::new();
    for page in lessons.iter().copied().chain(glossary) {
        let is_lesson = page.listed.is_topic_page();
        let rules = Rewrite {
            anchor: &str::to_owned,
            link: &link,
            mark: &|address| mark(address, is_lesson),
            image: &|_| None,
        };
        let scripts = if is_lesson {
            format!(
                "<script src=\"lesson.js\" defer></script>\n<script src=\"{CLASSIC}\" defer></script>\n"
            )
        } else {
            String::new()
        };
        let title = page.listed.title.replace('&', "&amp;").replace('<', "&lt;");
        let html = layout
            .replace("LESSON_TITLE", &title)
            .replace("LESSON_SCRIPTS", &scripts)
            .replace("LESSON_BODY", &rewritten(&page.body, &rules));
        files.push((format!("{}.html", page.listed.slug), html.into_bytes()));
        if is_lesson {
            for asset in &page.assets {
                files.push((asset.path.clone(), asset.content.clone().into_bytes()));
            }
        }
    }
    for name in ["style.css", CLASSIC] {
        files.push((name.into(), folder.read(name)?));
    }
    files.push((
        "lesson.js".into(),
        read(&place.join("lesson.js"))?.into_bytes(),
    ));
    files.sort();
    let manifest = manifest(&lessons, &files);
    files.insert(0, ("imsmanifest.xml".into(), manifest.into_bytes()));
    archive(&files).map_err(|error| SiteError::File(super::COURSE.into(), error))
}

/// Links stay inside a lesson or lead to the glossary: a lesson must not replace itself by another, for
/// the course system would not know. The other pages of the site are not in the package.
fn link(address: &str) -> Option<String> {
    let stays = address.starts_with('#') || address.starts_with("glossary.html");
    stays.then(|| address.into())
}

/// A lesson stays where it is while a word is looked up: left, it would be over for the course system.
fn mark(address: &str, is_lesson: bool) -> String {
    if !is_lesson || address.starts_with('#') {
        return String::new();
    }
    let title = words::get(Lang::English, "site.new_window");
    format!(" target=\"_blank\" rel=\"noopener\" title=\"{title}\"")
}

fn manifest(lessons: &[&Page], files: &[(String, Vec<u8>)]) -> String {
    let escaped = |text: &str| {
        text.replace('&', "&amp;")
            .replace('<', "&lt;")
            .replace('"', "&quot;")
    };
    let mut xml = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <manifest identifier=\"axlewright\" version=\"VERSION\"\n  \
         xmlns=\"http://www.imsproject.org/xsd/imscp_rootv1p1p2\"\n  \
         xmlns:adlcp=\"http://www.adlnet.org/xsd/adlcp_rootv1p2\"\n  \
         xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"\n  \
         xsi:schemaLocation=\"http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd \
         http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd\">\n  \
         <metadata>\n    <schema>ADL SCORM</schema>\n    <schemaversion>1.2</schemaversion>\n  </metadata>\n  \
         <organizations default=\"course\">\n    <organization identifier=\"course\">\n      \
         <title>Axlewright</title>\n",
    )
    .replace("VERSION", env!("CARGO_PKG_VERSION"));
    for page in lessons {
        let slug = &page.listed.slug;
        xml.push_str(&format!(
            "      <item identifier=\"item-{slug}\" identifierref=\"lesson-{slug}\" isvisible=\"true\">\n        <title>{}</title>\n      </item>\n",
            escaped(&page.listed.title)
        ));
    }
    xml.push_str("    </organization>\n  </organizations>\n  <resources>\n");
    let is_own = |page: &Page, name: &str| {
        name == format!("{}.html", page.listed.slug)
            || page.assets.iter().any(|asset| asset.path == name)
    };
    for page in lessons {
        let slug = &page.listed.slug;
        xml.push_str(&format!(
            "    <resource identifier=\"lesson-{slug}\" type=\"webcontent\" adlcp:scormtype=\"sco\" href=\"{slug}.html\">\n"
        ));
        for (name, _) in files.iter().filter(|(name, _)| is_own(page, name)) {
            xml.push_str(&format!("      <file href=\"{}\"/>\n", escaped(name)));
        }
        xml.push_str("      <dependency identifierref=\"shared\"/>\n    </resource>\n");
    }
    xml.push_str("    <resource identifier=\"shared\" type=\"webcontent\" adlcp:scormtype=\"asset\" href=\"glossary.html\">\n");
    let is_shared = |name: &str| !lessons.iter().any(|page| is_own(page, name));
    for (name, _) in files.iter().filter(|(name, _)| is_shared(name)) {
        xml.push_str(&format!("      <file href=\"{}\"/>\n", escaped(name)));
    }
    xml.push_str("    </resource>\n  </resources>\n</manifest>\n");
    xml
}
