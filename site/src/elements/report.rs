//! What a build made and what it weighs, kept beside the files so that the next build can tell whether
//! anything is left to do.

use super::{BuildError, MODULE, WASM, read, write};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::path::Path;

const KEPT: &str = "report.json";

/// What one finished file weighs, in bytes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FileSize {
    /// The file's name.
    pub name: String,
    /// As it is.
    pub raw: u64,
    /// Compressed with brotli at its best.
    pub brotli: u64,
}

/// What a build did.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ElementsReport {
    /// The finished files.
    pub files: Vec<FileSize>,
    /// Names of the files that each part of the wasm needs, besides the main one.
    pub parts: BTreeMap<String, Vec<String>>,
    /// Whether `wasm-opt` made the wasm smaller.
    pub optimised: bool,
    /// Whether anything had to be built.
    pub built: bool,
}

impl ElementsReport {
    /// What a page must fetch for one element of a part's topic in English, compressed: the module, the
    /// main wasm file, and the files of the part.
    #[must_use]
    pub fn needed_brotli(&self, part: &str) -> u64 {
        let own = self.parts.get(part).map_or(&[][..], Vec::as_slice);
        let is_needed = |file: &&FileSize| {
            [MODULE, WASM].contains(&file.name.as_str()) || own.contains(&file.name)
        };
        let needed = self.files.iter().filter(is_needed);
        needed.map(|file| file.brotli).sum()
    }
}

/// Weighs the finished files in `folder`.
pub(super) fn weigh(folder: &Path, name: &str) -> Result<FileSize, BuildError> {
    let path = folder.join(name);
    let content = read(&path)?;
    let mut compressed = Vec::new();
    let settings = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        ..Default::default()
    };
    brotli::BrotliCompress(&mut content.as_slice(), &mut compressed, &settings)
        .map_err(|source| BuildError::File { path, source })?;
    Ok(FileSize {
        name: name.to_string(),
        raw: length(&content),
        brotli: length(&compressed),
    })
}

fn length(bytes: &[u8]) -> u64 {
    u64::try_from(bytes.len()).unwrap_or(u64::MAX)
}

/// The report of the files in `folder`, if they were made from what is wanted now and are still whole.
pub(super) fn load(folder: &Path, wanted: &str) -> Option<ElementsReport> {
    let text = std::fs::read_to_string(folder.join(KEPT)).ok()?;
    let report: Value = serde_json::from_str(&text).ok()?;
    if report["fingerprint"] != wanted {
        return None;
    }
    let files = report["files"].as_array()?.iter().map(|file| {
        Some(FileSize {
            name: file["name"].as_str()?.to_string(),
            raw: file["raw"].as_u64()?,
            brotli: file["brotli"].as_u64()?,
        })
    });
    let files = files.collect::<Option<Vec<_>>>()?;
    let whole = |file: &FileSize| {
        std::fs::metadata(folder.join(&file.name)).is_ok_and(|data| data.len() == file.raw)
    };
    let parts = report["parts"].as_object()?.iter().map(|(part, files)| {
        let names = files.as_array()?.iter();
        let names = names.map(|name| name.as_str().map(String::from));
        Some((part.clone(), names.collect::<Option<_>>()?))
    });
    let parts = parts.collect::<Option<_>>()?;
    let optimised = report["optimised"].as_bool()?;
    files.iter().all(whole).then_some(ElementsReport {
        files,
        parts,
        optimised,
        built: false,
    })
}

/// Writes the report into `folder`, once its files are finished.
pub(super) fn keep(
    folder: &Path,
    report: &ElementsReport,
    fingerprint: &str,
) -> Result<(), BuildError> {
    let file =
        |file: &FileSize| json!({ "name": file.name, "raw": file.raw, "brotli": file.brotli });
    let text = json!({
        "fingerprint": fingerprint,
        "optimised": report.optimised,
        "parts": report.parts,
        "files": report.files.iter().map(file).collect::<Vec<_>>(),
    });
    write(&folder.join(KEPT), text.to_string().as_bytes())
}

/// Forgets the report, before the files it is about are changed.
pub(super) fn forget(folder: &Path) {
    // Not being there is as good.
    let _ = std::fs::remove_file(folder.join(KEPT));
}

#[cfg(test)]
mod tests {
    use super::super::CLASSIC;
    use super::*;

    #[test]
    fn a_report_is_believed_only_for_its_own_whole_files() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let path = folder.path();
        std::fs::write(path.join(CLASSIC), "x".repeat(1000)).expect("a file");
        let file = weigh(path, CLASSIC).expect("a weight");
        assert_eq!(file.raw, 1000, "raw");
        assert!(
            file.brotli > 0 && file.brotli < 100,
            "compressed to {}",
            file.brotli
        );

        let sized = |name: &str, brotli| FileSize {
            name: name.into(),
            raw: 0,
            brotli,
        };
        std::fs::write(path.join(WASM), "").expect("a file");
        std::fs::write(path.join("own"), "").expect("a file");
        std::fs::write(path.join("other"), "").expect("a file");
        let report = ElementsReport {
            files: vec![file, sized(WASM, 100), sized("own", 20), sized("other", 3)],
            parts: [("one".to_owned(), vec!["own".to_owned()])].into(),
            optimised: true,
            built: true,
        };
        assert_eq!(
            report.needed_brotli("one"),
            120,
            "neither the classic script nor another part is what its page fetches"
        );
        keep(path, &report, "abc").expect("kept");
        let again = ElementsReport {
            built: false,
            ..report
        };
        assert_eq!(load(path, "abc"), Some(again), "same inputs");
        assert_eq!(load(path, "abd"), None, "other inputs");
        std::fs::write(path.join(CLASSIC), "cut short").expect("a file");
        assert_eq!(load(path, "abc"), None, "a file was changed");
        forget(path);
        assert_eq!(load(path, "abc"), None, "no report");
    }
}
