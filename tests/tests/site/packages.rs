//! The offline file, the package for course systems, the package for npm.

use crate::{read, site};
use axlewright_core::topic::TOPICS;
use axlewright_site::html::sections;
use std::path::Path;
use std::process::Command;

pub(crate) fn done(command: &mut Command) -> String {
    let output = command
        .output()
        .unwrap_or_else(|e| panic!("{command:?}: {e} (tests/run installs it)"));
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{command:?}: {errors}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}

#[test]
fn the_offline_file_holds_every_page_under_its_size() {
    let text = read(&site().out.join("axlewright-offline.html"));
    println!("axlewright-offline.html: {} bytes", text.len());
    assert!(text.len() < 1_500_000, "{} bytes", text.len());
    for topic in TOPICS {
        let slug = topic.slug();
        assert!(text.contains(&format!("<article id=\"{slug}\">")), "{slug}");
    }
    // It asks for no file: every source is inside.
    assert!(!text.contains(" src=\"figures"), "a picture is outside");
    assert!(
        !text.contains("<link rel=\"stylesheet\""),
        "a style is outside"
    );
}

fn unpacked(archive: &Path) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let script = "import sys, zipfile\n\
                  with zipfile.ZipFile(sys.argv[1]) as z:\n    \
                  bad = z.testzip()\n    \
                  assert bad is None, bad\n    \
                  z.extractall(sys.argv[2])";
    done(
        Command::new("python3")
            .args(["-c", script])
            .arg(archive)
            .arg(folder.path()),
    );
    folder
}

#[test]
fn the_course_package_is_valid_against_the_standards_schema() {
    let folder = unpacked(&site().out.join("axlewright-scorm12.zip"));
    let schemas = axlewright_tests::file(".scorm");
    for entry in std::fs::read_dir(&schemas).expect("the schemas (tests/run fetches them)") {
        let path = entry.unwrap().path();
        std::fs::copy(&path, folder.path().join(path.file_name().unwrap())).unwrap();
    }
    let both = "<xs:schema xmlns:xs=\"http://www.w3.org/2001/XMLSchema\">\
        <xs:import namespace=\"http://www.imsproject.org/xsd/imscp_rootv1p1p2\" schemaLocation=\"imscp_rootv1p1p2.xsd\"/>\
        <xs:import namespace=\"http://www.adlnet.org/xsd/adlcp_rootv1p2\" schemaLocation=\"adlcp_rootv1p2.xsd\"/></xs:schema>";
    std::fs::write(folder.path().join("both.xsd"), both).unwrap();
    let judge = || {
        let mut command = Command::new("xmllint");
        command
            .args([
                "--nonet",
                "--noout",
                "--schema",
                "both.xsd",
                "imsmanifest.xml",
            ])
            .current_dir(folder.path());
        command
    };
    done(&mut judge());
    let manifest = read(&folder.path().join("imsmanifest.xml"));
    for topic in TOPICS {
        let lesson = format!("adlcp:scormtype=\"sco\" href=\"{}.html\"", topic.slug());
        assert!(manifest.contains(&lesson), "{lesson}");
    }
    // Every file that the manifest names is there, and every picture of a lesson is named.
    let mut named = 0;
    for part in manifest.split("<file href=\"").skip(1) {
        let name = part.split('"').next().unwrap();
        assert!(folder.path().join(name).is_file(), "{name} is missing");
        named += 1;
    }
    assert!(named > 20, "{named} files");
    for topic in TOPICS {
        let lesson = read(&folder.path().join(format!("{}.html", topic.slug())));
        for part in lesson.split(" src=\"").skip(1) {
            let name = part.split(['"', '?']).next().unwrap();
            assert!(
                manifest.contains(&format!("<file href=\"{name}\"/>")),
                "{name}"
            );
        }
    }
    // Every lesson, and the glossary beside them, is valid HTML with its headings in order.
    let mut pages = Vec::new();
    for entry in std::fs::read_dir(folder.path()).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|end| end == "html") {
            let heads = sections(&read(&path));
            let levels = heads.iter().map(|section| section.level);
            let levels: Vec<u8> = levels.filter(|level| *level < 4).collect();
            assert_eq!(levels.first(), Some(&1), "{}", path.display());
            for pair in levels.windows(2) {
                assert!(pair[1] <= pair[0] + 1, "{}: {levels:?}", path.display());
            }
            pages.push(path.display().to_string());
        }
    }
    assert_eq!(pages.len(), TOPICS.len() + 1, "{pages:?}");
    let told = axlewright_tests::node("html.mjs", &serde_json::json!(pages).to_string());
    assert!(told.is_empty(), "{told}");
    // The judge is awake.
    let wrong = manifest.replace("adlcp:scormtype=\"sco\"", "adlcp:scormtype=\"lesson\"");
    std::fs::write(folder.path().join("imsmanifest.xml"), wrong).unwrap();
    assert!(!judge().output().unwrap().status.success());
}

#[test]
fn npm_packs_the_package_with_types_and_manifest() {
    let folder = tempfile::tempdir().unwrap();
    let told = done(
        Command::new("npm")
            .args(["pack", "--json", "--pack-destination"])
            .arg(folder.path())
            .current_dir(site().out.join("npm")),
    );
    let start = told.find(['[', '{']).expect("JSON");
    let told: serde_json::Value = serde_json::from_str(&told[start..]).expect("JSON");
    // One version of npm prints a list, another a map by name.
    let about = told
        .get(0)
        .or_else(|| told.get("axlewright"))
        .expect("a package");
    let files: Vec<&str> = about["files"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|file| file["path"].as_str())
        .collect();
    for name in [
        "package.json",
        "index.js",
        "index.d.ts",
        "axlewright.classic.js",
        "custom-elements.json",
        "README.md",
        "LICENSE-MIT",
        "LICENSE-APACHE",
    ] {
        assert!(files.contains(&name), "{name} is not in {files:?}");
    }
    assert_eq!(files.len(), 8, "{files:?}");
    assert_eq!(about["version"], env!("CARGO_PKG_VERSION"));
}
