//! The built site as files: links, headings, weights, validity, search, packages.
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "in a test, stopping is the right answer"
)]

mod build;
mod hosting;
mod packages;
mod pages;
mod reproduce;
mod search;

use axlewright_core::topic::TOPICS;
use axlewright_site::site::{SiteReport, build};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// The root of the source tree.
pub(crate) fn root() -> PathBuf {
    axlewright_tests::file("..").canonicalize().unwrap()
}

/// The site, built once for all tests.
pub(crate) fn site() -> &'static SiteReport {
    static SITE: OnceLock<SiteReport> = OnceLock::new();
    SITE.get_or_init(|| {
        let root = root();
        let out = root.join("target/site-tests");
        // What an earlier build left behind is no part of this one.
        let _ = std::fs::remove_dir_all(&out);
        build(&root, &out, &mut |line| eprintln!("{line}")).expect("the site builds")
    })
}

pub(crate) fn read(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// Whether a page is a frame: an element alone, for pages of other sites.
pub(crate) fn is_frame(page: &str) -> bool {
    page.starts_with("embed/")
}

/// Name and text of every page and every frame; the offline file is left out.
pub(crate) fn pages() -> Vec<(&'static str, String)> {
    let site = site();
    let is_page = |name: &&String| name.ends_with(".html") && !name.contains("offline");
    let names = site.files.iter().filter(is_page);
    let all: Vec<_> = names
        .map(|name| (name.as_str(), read(&site.out.join(name))))
        .collect();
    let frames = all.iter().filter(|(name, _)| is_frame(name)).count();
    assert_eq!(frames, TOPICS.len(), "a frame for each topic");
    assert!(all.len() > 60, "{} pages", all.len());
    all
}
