//! What the project is built from: each thing has its reason, its licence is one that fits, a version
//! that is there twice is explained, and none asks for a newer Rust than is stated.
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test stops where a value is missing"
)]

use axlewright_tests::{file, python};
use serde_json::Value;
use spdx::{Expression, LicenseReq, ParseMode};
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;
use std::sync::LazyLock;

/// Licences that let their work go into a work under MIT or Apache 2.0: they ask for their own notice to
/// be kept, or for nothing.
const FITTING: [&str; 12] = [
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];
/// Further licences of tools that judge or build in the tests, and of which nothing goes on to a reader.
const OF_TOOLS: [&str; 2] = ["MPL-2.0", "NCSA"];
/// What older packages of Python say instead of an expression; of the family, whichever it is, all fit.
const OF_PYTHON: [&str; 2] = [
    "License :: OSI Approved :: BSD License",
    "License :: OSI Approved :: MIT License",
];

/// Every package of the workspace, for every machine, as cargo knows it.
static PACKAGES: LazyLock<Vec<Value>> = LazyLock::new(|| packages("../Cargo.toml"));

/// Every package that the lock file beside a manifest names.
fn packages(manifest: &str) -> Vec<Value> {
    let output = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--format-version",
            "1",
            "--locked",
            "--manifest-path",
        ])
        .arg(file(manifest))
        .current_dir(file(".."))
        .output()
        .unwrap();
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{errors}");
    let metadata: Value = serde_json::from_slice(&output.stdout).unwrap();
    metadata["packages"].as_array().unwrap().clone()
}

fn read(name: &str) -> String {
    let path = file(name);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// Whether a package is one of ours.
fn is_own(package: &Value) -> bool {
    package["source"].is_null()
}

fn text<'a>(value: &'a Value, name: &str) -> &'a str {
    value[name].as_str().unwrap_or_default()
}

/// The first cells of the table under a heading of DEVELOPERS.md, with the rest of their line.
fn table(heading: &str) -> Vec<(String, String)> {
    let page = read("../DEVELOPERS.md");
    let (_, rest) = page
        .split_once(&format!("\n### {heading}\n"))
        .unwrap_or_else(|| panic!("DEVELOPERS.md has no section {heading}"));
    let section = rest.split("\n#").next().unwrap_or(rest);
    let rows = section.lines().filter(|line| line.starts_with("| `"));
    rows.map(|line| {
        let (first, reason) = line[2..].split_once(" | ").unwrap();
        (first.into(), reason.trim_end_matches('|').trim().to_owned())
    })
    .collect()
}

/// The names between backticks.
fn names(cell: &str) -> impl Iterator<Item = String> {
    cell.split('`').skip(1).step_by(2).map(ToOwned::to_owned)
}

fn keys(file: &Value) -> impl Iterator<Item = String> {
    file.as_object().unwrap().keys().cloned()
}

/// Everything that we ask for by name: crates, crates of the fuzz targets, packages of npm and of pip,
/// and what is kept here as its makers wrote it.
fn asked_for() -> BTreeSet<String> {
    let mut all = BTreeSet::new();
    for package in PACKAGES.iter().filter(|package| is_own(package)) {
        for dependency in package["dependencies"].as_array().unwrap() {
            all.insert(text(dependency, "name").to_owned());
        }
    }
    let fuzz: toml::Table = toml::from_str(&read("fuzz/Cargo.toml")).unwrap();
    all.extend(fuzz["dependencies"].as_table().unwrap().keys().cloned());
    let npm: Value = serde_json::from_str(&read("package.json")).unwrap();
    all.extend(keys(&npm["devDependencies"]));
    for line in read("requirements.txt").lines() {
        if let Some((name, _)) = line.split_once("==") {
            all.insert(name.into());
        }
    }
    for folder in ["../site/vendor", "../widgets/js/vendor"] {
        for entry in std::fs::read_dir(file(folder)).unwrap() {
            let name = entry.unwrap().file_name().into_string().unwrap();
            if let Some(name) = name.strip_suffix(".js") {
                all.insert(name.into());
            }
        }
    }
    all.retain(|name| !name.starts_with("axlewright-"));
    all
}

#[test]
fn whatever_is_asked_for_by_name_has_its_reason() {
    let rows = table("What it is built from");
    let given: Vec<String> = rows.iter().flat_map(|(cell, _)| names(cell)).collect();
    let once: BTreeSet<String> = given.iter().cloned().collect();
    assert_eq!(once.len(), given.len(), "a name stands twice: {given:?}");
    for (cell, reason) in &rows {
        assert!(reason.len() > 15, "{cell}: {reason:?} is no reason");
    }
    let asked = asked_for();
    assert!(asked.len() > 30, "{asked:?}");
    let bare: Vec<_> = asked.difference(&once).collect();
    assert!(bare.is_empty(), "no reason in DEVELOPERS.md: {bare:?}");
    let stale: Vec<_> = once.difference(&asked).collect();
    assert!(stale.is_empty(), "nobody asks for these: {stale:?}");
}

/// Whether a licence expression can be met with licences of a list.
fn fits(expression: &str, wanted: &[&str]) -> bool {
    let parsed = Expression::parse_mode(expression, ParseMode::LAX);
    parsed.is_ok_and(|parsed| {
        parsed.evaluate(|required: &LicenseReq| wanted.contains(&required.to_string().as_str()))
    })
}

#[test]
fn every_licence_of_a_crate_fits() {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    let mut foreign = Vec::new();
    for package in PACKAGES.iter() {
        let licence = text(package, "license");
        *counts.entry(licence).or_default() += 1;
        if !fits(licence, &FITTING) {
            foreign.push((text(package, "name"), licence));
        }
    }
    println!("{counts:#?}");
    assert!(foreign.is_empty(), "{foreign:?}");
    // The check tells: these do not fit.
    for licence in ["GPL-3.0-only", "MIT AND LGPL-2.1-only", "", "MPL-2.0"] {
        assert!(!fits(licence, &FITTING), "{licence}");
    }
}

#[test]
fn every_licence_of_a_tool_from_npm_fits_and_what_ships_says_its_own() {
    let lock: Value = serde_json::from_str(&read("package-lock.json")).unwrap();
    let tools = [&FITTING[..], &OF_TOOLS].concat();
    let packages = lock["packages"].as_object().unwrap();
    for (path, package) in packages.iter().filter(|(path, _)| !path.is_empty()) {
        let licence = text(package, "license");
        assert!(fits(licence, &tools), "{path}: {licence:?}");
    }
    assert!(packages.len() > 50, "{} packages", packages.len());
    let search = read("../site/vendor/minisearch.LICENSE");
    assert!(search.contains("Permission is hereby granted, free of charge"));
    let reader = read("../widgets/js/vendor/smol-toml.js");
    assert!(reader.contains("SPDX-License-Identifier: BSD-3-Clause"));
}

/// The fuzz targets are a workspace of their own, and a tool.
#[test]
fn every_licence_of_the_fuzz_targets_fits() {
    let tools = [&FITTING[..], &OF_TOOLS].concat();
    let packages = packages("fuzz/Cargo.toml");
    for package in &packages {
        let (name, licence) = (text(package, "name"), text(package, "license"));
        assert!(fits(licence, &tools), "{name}: {licence:?}");
    }
    let names: BTreeSet<&str> = packages
        .iter()
        .map(|package| text(package, "name"))
        .collect();
    for name in ["arbitrary", "libfuzzer-sys", "axlewright-core"] {
        assert!(names.contains(name), "{name} is not among {names:?}");
    }
}

/// What the packages of Python say of themselves, with all that they ask for in turn. They are tools: what
/// their wheels hold besides is not handed on to anybody.
#[test]
fn every_licence_of_a_package_of_python_fits() {
    let tools = [&FITTING[..], &OF_TOOLS].concat();
    let wanted: BTreeMap<String, String> = read("requirements.txt")
        .lines()
        .filter_map(|line| line.split_once("=="))
        .map(|(name, version)| (name.into(), version.into()))
        .collect();
    let names: Vec<&String> = wanted.keys().collect();
    let printed = python("licences.py", &serde_json::to_string(&names).unwrap());
    let found: Vec<Value> = serde_json::from_str(&printed).unwrap();
    for package in &found {
        let (name, licence) = (text(package, "name"), text(package, "licence"));
        let families = package["families"].as_array().unwrap();
        let family_fits = licence.is_empty()
            && !families.is_empty()
            && families
                .iter()
                .all(|family| OF_PYTHON.contains(&family.as_str().unwrap()));
        assert!(family_fits || fits(licence, &tools), "{package}");
        if let Some(version) = wanted.get(name) {
            assert_eq!(text(package, "version"), version, "{name}");
        }
    }
    // What is asked for, and what sympy asks for.
    for name in wanted.keys().map(String::as_str).chain(["mpmath"]) {
        assert!(
            found.iter().any(|package| text(package, "name") == name),
            "{name}"
        );
    }
}

#[test]
fn every_version_that_is_there_twice_is_explained() {
    let mut versions: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for package in PACKAGES.iter() {
        let found = versions.entry(text(package, "name")).or_default();
        found.insert(text(package, "version"));
    }
    let twice: BTreeSet<String> = versions
        .iter()
        .filter(|(_, versions)| versions.len() > 1)
        .map(|(name, _)| (*name).to_owned())
        .collect();
    let explained: BTreeSet<String> = table("Versions that are there twice")
        .iter()
        .flat_map(|(cell, _)| names(cell))
        .collect();
    assert_eq!(twice, explained, "DEVELOPERS.md explains the second set");
}

/// A version by its numbers; what is not stated is nought.
fn numbers(version: &str) -> [u32; 3] {
    let mut parts = version.split('.').map(|part| part.parse().unwrap_or(0));
    [(); 3].map(|()| parts.next().unwrap_or(0))
}

/// The stated minimum is the version that everything is built and tested with, and no dependency states a
/// newer one.
#[test]
fn the_least_rust_is_the_one_that_is_tested() {
    let toolchain: toml::Table = toml::from_str(&read("../rust-toolchain.toml")).unwrap();
    let channel = toolchain["toolchain"]["channel"].as_str().unwrap();
    let workspace: toml::Table = toml::from_str(&read("../Cargo.toml")).unwrap();
    let least = workspace["workspace"]["package"]["rust-version"].as_str();
    let least = numbers(least.unwrap());
    assert_eq!(least, numbers(channel), "rust-toolchain.toml");
    let fuzz: toml::Table = toml::from_str(&read("fuzz/Cargo.toml")).unwrap();
    let of_fuzz = fuzz["package"]["rust-version"].as_str().unwrap();
    assert_eq!(numbers(of_fuzz), least, "tests/fuzz/Cargo.toml");
    for package in PACKAGES.iter() {
        let wanted = numbers(text(package, "rust_version"));
        assert!(
            wanted <= least,
            "{} wants {wanted:?}",
            text(package, "name")
        );
    }
}

/// What is tried at random is every topic.
#[test]
fn every_topic_has_its_fuzz_target() {
    for topic in axlewright_core::topic::TOPICS {
        let name = topic.name;
        let target = read(&format!("fuzz/targets/{name}.rs"));
        assert!(
            target.contains(&format!("topic(\"{name}\", data)")),
            "{name}"
        );
        let named = format!("name = \"{name}\"\npath = \"targets/{name}.rs\"");
        assert!(read("fuzz/Cargo.toml").contains(&named), "{name}");
    }
}
