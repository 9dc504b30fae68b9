//! Puts the two scripts together: the glue, the table of elements, the styles and the hand-written parts.

use super::BuildError;
use super::fingerprint::short_hash;
use super::strip::strip_script;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use flate2::Compression;
use flate2::write::GzEncoder;
use serde_json::json;
use std::collections::BTreeMap;
use std::io::Write as _;
use std::path::Path;

/// What both scripts are made of.
pub(super) struct Script<'a> {
    /// The folder of the hand-written parts.
    pub folder: &'a Path,
    /// The glue for the wasm file, as a script that declares `wasm_bindgen`.
    pub glue: &'a str,
    /// The table of elements and sentences, as JSON.
    pub table: &'a str,
    /// Tag and words of each language that is not inside the wasm.
    pub words: &'a [(String, String)],
    /// The version that the scripts state.
    pub version: &'a str,
    /// Name and content of each wasm file.
    pub wasm: &'a [(String, Vec<u8>)],
    /// Names of the files that each part of the wasm needs, besides the main one.
    pub parts: &'a BTreeMap<String, Vec<String>>,
}

impl Script<'_> {
    /// `axlewright.js`, the module that loads the wasm files beside it.
    pub(super) fn module(&self) -> Result<String, BuildError> {
        let words = self.words_table(|text| short_hash(text.as_bytes()));
        let wasm = self.wasm_table(short_hash);
        let source = [wasm, words, self.common()?, self.hand_written("module.js")?].concat();
        Ok(self.with_banner(&strip_script(&source)))
    }

    /// `axlewright.classic.js`, with the wasm files inside.
    pub(super) fn classic(&self) -> Result<String, BuildError> {
        let words = self.words_table(str::to_owned);
        let source = [words, self.common()?, self.hand_written("classic.js")?].concat();
        // The long texts are put in last, so that nothing has to read through them.
        let wasm = self.wasm_table(|content| STANDARD.encode(packed(content)));
        let script = format!(
            "(() => {{\n\"use strict\";\n{wasm}{}}})();\n",
            strip_script(&source)
        );
        Ok(self.with_banner(&script))
    }

    /// What the script holds of each wasm file, by its name.
    fn wasm_table(&self, held: impl Fn(&[u8]) -> String) -> String {
        let pairs = self.wasm.iter();
        let table: serde_json::Map<_, _> = pairs
            .map(|(name, content)| (name.clone(), held(content).into()))
            .collect();
        format!("const WASM = {};\n", script_literal(&table.into()))
    }

    /// What the script holds of each language, by its tag.
    fn words_table(&self, held: impl Fn(&str) -> String) -> String {
        let pairs = self.words.iter();
        let table: serde_json::Map<_, _> = pairs
            .map(|(tag, text)| (tag.clone(), held(text).into()))
            .collect();
        format!("const WORDS = {};\n", script_literal(&table.into()))
    }

    fn with_banner(&self, script: &str) -> String {
        format!(
            "/* Axlewright {}, MIT or Apache-2.0 */\n{script}",
            self.version
        )
    }

    fn common(&self) -> Result<String, BuildError> {
        let table: serde_json::Value =
            serde_json::from_str(self.table).map_err(BuildError::Table)?;
        let text = |value: &str| script_literal(&serde_json::Value::from(value));
        let constants = format!(
            "const VERSION = {};\nconst PARTS = {};\nconst TABLE = {};\nconst CSS = {};\n",
            text(self.version),
            script_literal(&json!(self.parts)),
            script_literal(&table),
            text(&strip_styles(&self.hand_written("element.css")?)),
        );
        // The glue keeps its state in a closure: each call of `glue` gives a fresh one. It sees the
        // WebAssembly that it is given.
        let glue = format!(
            "const glue = (WebAssembly) => {{\n{}\nreturn wasm_bindgen;\n}};\n",
            self.glue
        );
        let mut script = constants + &glue;
        let names = [
            "instance.js",
            "parts.js",
            "words.js",
            "picture.js",
            "take.js",
            "scenario.js",
            "turns.js",
            "rewrite.js",
            "sketch.js",
            "hands.js",
            "axlewright.js",
        ];
        for name in names {
            script += &self.hand_written(name)?;
        }
        Ok(script)
    }

    fn hand_written(&self, name: &str) -> Result<String, BuildError> {
        let path = self.folder.join(name);
        std::fs::read_to_string(&path).map_err(|source| BuildError::File { path, source })
    }
}

/// Compressed as a browser can undo it. Writing into memory does not fail; were it to, the script would
/// hold nothing, and the tests would tell.
fn packed(content: &[u8]) -> Vec<u8> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    let written = encoder.write_all(content);
    written.and_then(|()| encoder.finish()).unwrap_or_default()
}

/// JSON that is also safe inside a script that a page holds inline.
pub(super) fn script_literal(value: &serde_json::Value) -> String {
    value
        .to_string()
        .replace("</", "<\\/")
        .replace("<!--", "<\\!--")
}

/// The styles without comments and indentation. The text must not hold a comment mark in a string.
pub(super) fn strip_styles(source: &str) -> String {
    let mut kept = String::new();
    let mut rest = source;
    while let Some((before, after)) = rest.split_once("/*") {
        kept += before;
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept += rest;
    let mut styles = String::with_capacity(kept.len());
    for line in kept.lines().map(str::trim).filter(|line| !line.is_empty()) {
        // A line that ends nothing goes on in the next.
        if !styles.is_empty() && !styles.ends_with(['{', '}', ';', ',']) {
            styles.push('\n');
        }
        match line.strip_suffix(" {") {
            Some(head) => styles.extend([head, "{"]),
            None => styles += &declaration(line),
        }
    }
    styles
}

/// A line of a rule without the space after the name of what it sets.
fn declaration(line: &str) -> String {
    match line.split_once(": ") {
        Some((name, value)) if line.ends_with(';') && !name.contains(['"', '(']) => {
            [name, ":", value].concat()
        }
        _ => line.into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hand_written() -> std::path::PathBuf {
        crate::toolchain::workspace_root()
            .expect("the source tree")
            .join("widgets/js")
    }

    fn words() -> &'static [(String, String)] {
        static WORDS: std::sync::OnceLock<[(String, String); 1]> = std::sync::OnceLock::new();
        WORDS.get_or_init(|| [("xx".into(), "key\ta </script> wörd // kept".into())])
    }

    fn wasm() -> &'static [(String, Vec<u8>)] {
        static WASM: std::sync::OnceLock<[(String, Vec<u8>); 1]> = std::sync::OnceLock::new();
        WASM.get_or_init(|| [("parts/a.wasm".into(), b"\0asm".to_vec())])
    }

    fn parts() -> &'static BTreeMap<String, Vec<String>> {
        static PARTS: std::sync::OnceLock<BTreeMap<String, Vec<String>>> =
            std::sync::OnceLock::new();
        PARTS.get_or_init(|| [("a".into(), vec!["parts/a.wasm".into()])].into())
    }

    fn script(folder: &Path) -> Script<'_> {
        Script {
            words: words(),
            folder,
            glue: "let wasm_bindgen = 1; // glue",
            table: r#"{"elements":[],"words":{"en":{"stopped":"a </script> b"}}}"#,
            version: "9.8.7",
            wasm: wasm(),
            parts: parts(),
        }
    }

    #[test]
    fn both_scripts_hold_the_same_elements_and_state_the_version() {
        let folder = hand_written();
        let module = script(&folder).module().expect("a module");
        let classic = script(&folder).classic().expect("a classic script");
        for script in [&module, &classic] {
            assert!(script.starts_with("/* Axlewright 9.8.7, "), "banner");
            assert!(
                script.contains("class AxleElement extends HTMLElement"),
                "class"
            );
            assert!(!script.contains("// glue"), "comments are gone");
            assert!(!script.contains("</script>"), "no end tag inside");
        }
        assert!(module.contains("export default"), "the module exports");
        assert!(!classic.contains("export "), "the classic script does not");
        assert!(
            !classic.contains("import.meta"),
            "the classic script names no module address"
        );
        // What a browser undoes: base64, then gzip.
        let inside = classic
            .split_once(r#"const WASM = {"parts/a.wasm":""#)
            .and_then(|(_, rest)| rest.split_once('"'))
            .map(|(text, _)| STANDARD.decode(text).expect("base64"))
            .expect("the wasm file is inside");
        let mut plain = Vec::new();
        std::io::Read::read_to_end(&mut flate2::read::GzDecoder::new(&inside[..]), &mut plain)
            .expect("gzip");
        assert_eq!(plain, b"\0asm");
        for script in [&module, &classic] {
            let part = r#"const PARTS = {"a":["parts/a.wasm"]};"#;
            assert!(script.contains(part), "it knows what a part needs");
        }
        assert!(
            classic.contains(r#"const WORDS = {"xx":"key\ta <\/script> wörd // kept"};"#),
            "the words are inside"
        );
        let hash = short_hash(words()[0].1.as_bytes());
        assert!(
            module.contains(&format!("const WORDS = {{\"xx\":\"{hash}\"}};")),
            "the module fetches them by their hash"
        );
    }

    #[test]
    fn a_table_that_is_not_json_is_refused() {
        let folder = hand_written();
        let broken = Script {
            table: "{",
            ..script(&folder)
        };
        assert!(
            matches!(broken.module(), Err(BuildError::Table(_))),
            "refused"
        );
    }

    #[test]
    fn styles_lose_comments_and_indentation() {
        assert_eq!(
            strip_styles("/* a\n b */\n:host {\n  color: red; /* c */\n}\n"),
            ":host{color:red;}"
        );
        // What goes over several lines, and what only looks like a declaration.
        assert_eq!(
            strip_styles(
                "a,\n:is(b) c {\n  margin:\n    0 auto;\n  content: \"a: b\";\n}\n@media (x: y) {\n}\n"
            ),
            "a,:is(b) c{margin:\n0 auto;content:\"a: b\";}@media (x: y){}"
        );
    }
}
