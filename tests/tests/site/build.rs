//! How long a build takes, and that it is the same each time.

use crate::{root, site};
use axlewright_site::folder::Folder;
use axlewright_site::site::{Pages, WATCHED, build};
use std::time::Instant;

fn bytes(folder: &std::path::Path, file: &str) -> Vec<u8> {
    std::fs::read(folder.join(file)).unwrap_or_else(|e| panic!("{file}: {e}"))
}

#[test]
fn two_builds_are_the_same_to_the_byte_and_take_seconds() {
    let first = site();
    let folder = tempfile::tempdir().unwrap();
    let started = Instant::now();
    let second = build(&root(), folder.path(), &mut |_| {}).unwrap();
    let took = started.elapsed().as_secs_f64();
    println!(
        "a whole build of {} files took {took:.1} s (this test is not optimised)",
        second.files.len()
    );
    assert!(took < 60.0, "{took} s");
    assert_eq!(first.files, second.files);
    assert!(first.files.len() > 100);
    for file in &first.files {
        assert!(
            bytes(&first.out, file) == bytes(&second.out, file),
            "{file} differs"
        );
    }
}

#[test]
fn editing_one_page_makes_one_page() {
    let root = root();
    // A copy of what pages are made from, so that a page can be edited.
    let copy = tempfile::tempdir().unwrap();
    std::fs::create_dir(copy.path().join("tests")).unwrap();
    std::fs::create_dir(copy.path().join("site")).unwrap();
    // What the development server watches is enough to make every page: it misses no change.
    for place in WATCHED {
        let (from, to) = (root.join(place), copy.path().join(place));
        if from.is_file() {
            std::fs::copy(from, to).unwrap();
            continue;
        }
        std::fs::create_dir_all(&to).unwrap();
        for entry in std::fs::read_dir(from).unwrap() {
            let path = entry.unwrap().path();
            std::fs::copy(&path, to.join(path.file_name().unwrap())).unwrap();
        }
    }
    let out = tempfile::tempdir().unwrap();
    let mut pages = Pages::default();
    let time = |pages: &mut Pages| {
        let started = Instant::now();
        pages
            .build(copy.path(), &mut Folder::new(out.path()))
            .unwrap();
        started.elapsed().as_secs_f64()
    };
    let whole = time(&mut pages);
    let page = copy.path().join("site/pages/hosting.md");
    let text = std::fs::read_to_string(&page).unwrap();
    std::fs::write(&page, text.replace("Copy the folder", "Put the folder")).unwrap();
    let again = time(&mut pages);
    println!("all pages: {whole:.2} s; one page edited: {again:.2} s (this test is not optimised)");
    let made = std::fs::read_to_string(out.path().join("hosting.html")).unwrap();
    assert!(
        made.contains("Put the folder to any place"),
        "the edit is there"
    );
    assert!(again < 0.5 * whole, "{again} s of {whole} s");
}
