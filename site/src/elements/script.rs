//! Puts the two scripts together: the glue, the table of elements, the styles and the hand-written parts.

use super::BuildError;
use super::fingerprint::short_hash;
use super::strip::strip_script;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use std::path::Path;

/// What both scripts are made of.
pub(super) struct Parts<'a> {
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
    /// A short name of the wasm file's content.
    pub wasm_hash: &'a str,
}

impl Parts<'_> {
    /// `axlewright.js`, the module that loads the wasm file beside it.
    pub(super) fn module(&self) -> Result<String, BuildError> {
        let words = self.words_table(|text| short_hash(text.as_bytes()));
        let source = [words, self.common()?, self.hand_written("module.js")?].concat();
        Ok(self.with_banner(&strip_script(&source)))
    }

    /// `axlewright.classic.js`, with the wasm file inside.
    pub(super) fn classic(&self, wasm: &[u8]) -> Result<String, BuildError> {
        let words = self.words_table(str::to_owned);
        let source = [words, self.common()?, self.hand_written("classic.js")?].concat();
        // The long text is put in last, so that nothing has to read through it.
        let wasm = STANDARD.encode(wasm);
        let script = format!(
            "(() => {{\n\"use strict\";\nconst WASM_BASE64 = \"{wasm}\";\n{}}})();\n",
            strip_script(&source)
        );
        Ok(self.with_banner(&script))
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
            "const VERSION = {};\nconst WASM_HASH = {};\nconst TABLE = {};\nconst CSS = {};\n",
            text(self.version),
            text(self.wasm_hash),
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
        for name in [
            "instance.js",
            "words.js",
            "picture.js",
            "take.js",
            "hands.js",
            "axlewright.js",
        ] {
            script += &self.hand_written(name)?;
        }
        Ok(script)
    }

    fn hand_written(&self, name: &str) -> Result<String, BuildError> {
        let path = self.folder.join(name);
        std::fs::read_to_string(&path).map_err(|source| BuildError::File { path, source })
    }
}

/// JSON that is also safe inside a script that a page holds inline.
fn script_literal(value: &serde_json::Value) -> String {
    value
        .to_string()
        .replace("</", "<\\/")
        .replace("<!--", "<\\!--")
}

/// The styles without comments and indentation. The text must not hold a comment mark in a string.
fn strip_styles(source: &str) -> String {
    let mut kept = String::new();
    let mut rest = source;
    while let Some((before, after)) = rest.split_once("/*") {
        kept += before;
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept += rest;
    let lines = kept.lines().map(str::trim).filter(|line| !line.is_empty());
    lines.collect::<Vec<_>>().join("\n")
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

    fn parts(folder: &Path) -> Parts<'_> {
        Parts {
            words: words(),
            folder,
            glue: "let wasm_bindgen = 1; // glue",
            table: r#"{"elements":[],"words":{"en":{"stopped":"a </script> b"}}}"#,
            version: "9.8.7",
            wasm_hash: "abc",
        }
    }

    #[test]
    fn both_scripts_hold_the_same_elements_and_state_the_version() {
        let folder = hand_written();
        let module = parts(&folder).module().expect("a module");
        let classic = parts(&folder).classic(b"\0asm").expect("a classic script");
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
        assert!(classic.contains("\"AGFzbQ==\""), "the wasm file is inside");
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
        let broken = Parts {
            table: "{",
            ..parts(&folder)
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
            ":host {\ncolor: red;\n}"
        );
    }
}
