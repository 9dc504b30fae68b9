//! The same bytes from two copies of the tree in different folders, each compiled from nothing.

use crate::{read, root};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Copies every file that belongs to the tree, and lends what the tests have installed: `wasm-opt`.
fn copy_tree(to: &Path) {
    let listed = Command::new("git")
        .args(["ls-files", "-z"])
        .current_dir(root())
        .output()
        .expect("git");
    assert!(listed.status.success(), "the tree is no checkout");
    let names = String::from_utf8(listed.stdout).unwrap();
    for name in names.split_terminator('\0') {
        let file = to.join(name);
        std::fs::create_dir_all(file.parent().unwrap()).unwrap();
        std::fs::copy(root().join(name), file).unwrap_or_else(|e| panic!("{name}: {e}"));
    }
    let programs = root().join("tests/node_modules");
    std::os::unix::fs::symlink(programs, to.join("tests/node_modules")).unwrap();
}

/// Compiles and builds everything in a tree, as its README says.
fn build(tree: &Path) -> PathBuf {
    let out = tree.join("public");
    let done = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
        .args(["axlewright", "build", "--out"])
        .arg(&out)
        .current_dir(tree)
        // Each tree has a target folder of its own.
        .env_remove("CARGO_TARGET_DIR")
        .status()
        .expect("cargo");
    assert!(done.success(), "{}", tree.display());
    out
}

/// Every file below a folder with its bytes.
fn files(folder: &Path, below: &Path, all: &mut BTreeMap<String, Vec<u8>>) {
    for entry in std::fs::read_dir(below).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files(folder, &path, all);
        } else {
            let name = path.strip_prefix(folder).unwrap().display().to_string();
            all.insert(name, std::fs::read(&path).unwrap());
        }
    }
}

#[test]
#[ignore = "compiles everything twice, a quarter of an hour: a step of each release"]
fn two_copies_of_the_tree_in_different_folders_build_the_same_bytes() {
    let place = tempfile::tempdir().unwrap();
    let mut built = Vec::new();
    for name in ["a", "another/one/deeper"] {
        let tree = place.path().join(name);
        copy_tree(&tree);
        let out = build(&tree);
        let mut all = BTreeMap::new();
        files(&out, &out, &mut all);
        // Two compiled trees at once are more than many a disk has room for.
        let integrity = read(&out.join("integrity.json"));
        std::fs::remove_dir_all(&tree).unwrap();
        built.push((all, integrity));
    }
    let [(first, one), (second, other)] = &built[..] else {
        panic!("two builds");
    };
    assert_eq!(one, other, "integrity.json");
    let names = |all: &BTreeMap<String, Vec<u8>>| all.keys().cloned().collect::<Vec<_>>();
    assert_eq!(names(first), names(second));
    let wasm = first.keys().filter(|name| name.ends_with(".wasm")).count();
    assert!(wasm > 10, "{wasm} files of wasm");
    for (name, bytes) in first {
        assert!(*bytes == second[name], "{name} differs");
    }
    println!("{} files are the same, {wasm} of them wasm", first.len());
}
