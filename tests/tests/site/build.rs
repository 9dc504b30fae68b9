//! How long a build takes, and that it is the same each time.
//!
//! Time is that on the processor, of all threads together: it does not grow where other programs run beside.
//! What is held to a time runs in a process of its own, because the tests of one file share theirs.

use crate::{read, root, site};
use axlewright_site::folder::Folder;
use axlewright_site::site::{Pages, WATCHED, build};
use std::path::Path;
use std::process::Command;

fn bytes(folder: &std::path::Path, file: &str) -> Vec<u8> {
    std::fs::read(folder.join(file)).unwrap_or_else(|e| panic!("{file}: {e}"))
}

#[test]
fn two_builds_are_the_same_to_the_byte() {
    let first = site();
    let folder = tempfile::tempdir().unwrap();
    let second = build(&root(), folder.path(), &mut |_| {}).unwrap();
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
#[ignore = "measured by `a_build_and_an_edit_stay_within_their_time`, in a process of its own"]
fn a_whole_build_alone() {
    let folder = tempfile::tempdir().unwrap();
    let before_s = spent_s();
    let made = build(&root(), folder.path(), &mut |_| {}).unwrap();
    println!("{} files", made.files.len());
    println!("{SPENT}{:.2}", spent_s() - before_s);
}

/// What a test says its work took.
const SPENT: &str = "seconds on the processor: ";

/// Seconds that this process has spent on processors: user and system time of all its threads, which Linux
/// tells in hundredths of a second.
fn spent_s() -> f64 {
    let text = read(Path::new("/proc/self/stat"));
    let (_, after_name) = text.rsplit_once(')').unwrap();
    let fields: Vec<&str> = after_name.split_whitespace().collect();
    let ticks = |at: usize| fields[at].parse::<f64>().unwrap();
    (ticks(11) + ticks(12)) / 100.0
}

/// Runs one test of this file in a process of its own; what it says its work took.
fn alone(test: &str) -> f64 {
    let output = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "--include-ignored", "--nocapture", test])
        .output()
        .unwrap();
    let told = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{test}: {told}");
    let (_, spent) = told.split_once(SPENT).unwrap_or_else(|| panic!("{told}"));
    spent.split_whitespace().next().unwrap().parse().unwrap()
}

/// The budgets are of the program as it is released; here it is not optimised.
#[test]
fn a_build_and_an_edit_stay_within_their_time() {
    site(); // the elements are clean
    let whole_s = alone("build::a_whole_build_alone");
    let edit_s = alone("build::editing_one_page_makes_one_page");
    println!("the whole site {whole_s} s, one page {edit_s} s (not optimised)");
    assert!(whole_s < 20.0, "the whole site took {whole_s} s");
    assert!(edit_s < 1.0, "one page took {edit_s} s");
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
        let before_s = spent_s();
        pages
            .build(copy.path(), &mut Folder::new(out.path()))
            .unwrap();
        spent_s() - before_s
    };
    let whole = time(&mut pages);
    let page = copy.path().join("site/pages/hosting.md");
    let text = std::fs::read_to_string(&page).unwrap();
    std::fs::write(&page, text.replace("Copy the folder", "Put the folder")).unwrap();
    let again = time(&mut pages);
    println!("all pages: {whole:.2} s");
    println!("{SPENT}{again:.2}");
    let made = std::fs::read_to_string(out.path().join("hosting.html")).unwrap();
    assert!(
        made.contains("Put the folder to any place"),
        "the edit is there"
    );
}
