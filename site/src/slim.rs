//! The classic script of the elements with only those parts inside that one page needs: a talk shows some
//! topics in one language, and its file is sent about.

use crate::elements::WASM;
use serde_json::{Map, Value};

/// The script with the wasm files of some parts and the words of one language. What is left out is left out
/// of the tables too, so that the script does not look for it. A script that was put together otherwise
/// comes back as it is: it is larger, and works.
#[must_use]
pub(crate) fn slim(script: &str, parts: &[&str], lang: &str) -> String {
    let Some(mut files) = table(script, "PARTS") else {
        return script.into();
    };
    files.retain(|part, _| parts.contains(&part.as_str()));
    let needed: Vec<&str> = files
        .values()
        .filter_map(Value::as_array)
        .flatten()
        .filter_map(Value::as_str)
        .chain([WASM]) // every page needs the main file
        .collect();
    let mut lines = Vec::new();
    for line in script.split_inclusive('\n') {
        lines.push(
            without(line, "WASM", &|name| needed.contains(&name))
                .or_else(|| without(line, "PARTS", &|part| parts.contains(&part)))
                .or_else(|| without(line, "WORDS", &|tag| tag == lang))
                .unwrap_or_else(|| line.into()),
        );
    }
    lines.concat()
}

/// The table that a line of the script declares, if it does.
fn of_line(line: &str, name: &str) -> Option<Map<String, Value>> {
    let declared = line.strip_prefix("const ")?.strip_prefix(name)?;
    let text = declared.strip_prefix(" = ")?.trim_end().strip_suffix(';')?;
    serde_json::from_str(text).ok()
}

fn table(script: &str, name: &str) -> Option<Map<String, Value>> {
    script.lines().find_map(|line| of_line(line, name))
}

/// The line with fewer entries in its table.
fn without(line: &str, name: &str, keeps: &dyn Fn(&str) -> bool) -> Option<String> {
    let mut table = of_line(line, name)?;
    table.retain(|key, _| keeps(key));
    let text = Value::from(table).to_string().replace("</", "<\\/");
    Some(["const ", name, " = ", &text, ";\n"].concat())
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCRIPT: &str = "(() => {\nconst WASM = {\"axlewright_bg.wasm\":\"AA\",\"parts/a.wasm\":\"BB\",\"parts/b.wasm\":\"CC\",\"parts/shared-0.wasm\":\"DD\"};\n\
        const WORDS = {\"de\":\"k\\tein <\\/b>\",\"es\":\"k\\tun\"};\n\
        const PARTS = {\"a\":[\"parts/shared-0.wasm\",\"parts/a.wasm\"],\"b\":[\"parts/b.wasm\"]};\nlet rest = 1;\n})();\n";

    #[test]
    fn only_what_is_needed_stays() {
        let made = slim(SCRIPT, &["a"], "de");
        for kept in ["AA", "BB", "DD", "ein <\\/b>", "let rest = 1;\n})();\n"] {
            assert!(made.contains(kept), "{kept}: {made}");
        }
        for gone in ["CC", "parts/b.wasm", "\"b\"", "\"es\""] {
            assert!(!made.contains(gone), "{gone}: {made}");
        }
        assert!(!slim(SCRIPT, &["a"], "en").contains("\"de\""));
    }

    #[test]
    fn another_script_stays_as_it_is() {
        assert_eq!(slim("let a = 1;", &["a"], "en"), "let a = 1;");
    }
}
