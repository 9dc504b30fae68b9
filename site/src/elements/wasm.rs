//! From Rust to a small wasm file and the glue that fits it.

use super::empty::UNUSED;
use super::split::LINK;
use super::{BuildError, ElementsOptions};
use crate::toolchain::{self, WASM_TARGET};
use std::fmt;
use std::path::{Path, PathBuf};
use std::process::Command;
use wasm_bindgen_cli_support::Bindgen;

/// The cargo profile that the elements are built with.
const PROFILE: &str = "elements";

/// `--crate-type cdylib` matters: a library that is also built for other Rust code gets no link-time
/// optimisation, whatever the profile says, and comes out a third larger.
pub(super) fn compile(options: &ElementsOptions) -> Result<(), BuildError> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(cargo);
    command
        .args([
            "rustc",
            "--lib",
            "--crate-type",
            "cdylib",
            "--package",
            &options.package,
        ])
        .args([
            "--target",
            WASM_TARGET,
            "--profile",
            PROFILE,
            "--target-dir",
        ])
        .arg(&options.target)
        // Tells who calls whom and who reads what, for the split into parts.
        .args(["--", "-C", "link-args=--emit-relocs"])
        .env("CARGO_ENCODED_RUSTFLAGS", rust_flags(&options.root))
        .current_dir(&options.root);
    let status = command.status();
    let status = status.map_err(|source| BuildError::NotStarted {
        program: "cargo".into(),
        source,
    })?;
    if status.success() {
        Ok(())
    } else {
        Err(BuildError::Failed {
            program: "cargo".into(),
        })
    }
}

/// Flags for the compiler, one after another as cargo wants them. Messages of panics name source
/// files: without this they would carry the folders of the machine that built them, into every browser.
fn rust_flags(root: &Path) -> String {
    let cargo_home = std::env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| std::env::var_os("HOME").map(|home| Path::new(&home).join(".cargo")));
    let sources = cargo_home.map(|home| home.join("registry/src"));
    let registries = sources.and_then(|folder| std::fs::read_dir(folder).ok());
    let mut flags = vec![format!("--remap-path-prefix={}=.", root.display())];
    for registry in registries.into_iter().flatten().flatten() {
        flags.push(format!(
            "--remap-path-prefix={}=.",
            registry.path().display()
        ));
    }
    // Where the sources of the standard library are installed, its messages name their folder.
    if let Ok(sysroot) = toolchain::sysroot(root) {
        flags.push(format!(
            "--remap-path-prefix={sysroot}/lib/rustlib/src/rust=."
        ));
    }
    flags.sort();
    flags.join("\u{1f}")
}

/// Where `compile` puts the wasm file.
pub(super) fn compiled_wasm(options: &ElementsOptions) -> PathBuf {
    let name = format!("{}.wasm", options.package.replace('-', "_"));
    options.target.join(WASM_TARGET).join(PROFILE).join(name)
}

/// The glue and the wasm file that fits it. The plain script form serves both outputs: a page from
/// the file system cannot import modules.
pub(super) fn write_glue(compiled: &Path) -> Result<(String, Vec<u8>), BuildError> {
    // The reasons are told over several lines; an error here is one.
    let failed = |error: &dyn fmt::Display| {
        let words: Vec<_> = error
            .to_string()
            .split_whitespace()
            .map(String::from)
            .collect();
        BuildError::Glue(words.join(" "))
    };
    let mut output = Bindgen::new()
        .input_path(compiled)
        .out_name("axlewright")
        .no_modules(true)
        .map_err(|error| failed(&format!("{error:#}")))?
        .typescript(false)
        .keep_lld_exports(true) // the parts share the function table
        .generate_output()
        .map_err(|error| failed(&format!("{error:#}")))?;
    // Every crate has an entry here; what counts is whether any holds a script.
    let snippets = output
        .snippets()
        .values()
        .any(|scripts| !scripts.is_empty());
    if snippets || !output.local_modules().is_empty() {
        return Err(failed(
            &"a crate brings script snippets, which a page from the file system cannot load",
        ));
    }
    let mut glue = without_loaders(output.js());
    let module = output.wasm_mut();
    let unused: Vec<_> = module
        .exports
        .iter()
        .filter(|export| {
            let linker = ["__heap_base", "__data_end"].contains(&export.name.as_str());
            linker || export.name.contains(UNUSED)
        })
        .map(|export| export.id())
        .collect();
    for export in unused {
        module.exports.delete(export);
    }
    let imports = module.imports.iter_mut();
    shorten(&mut glue, imports.map(|import| &mut import.name));
    Ok((glue, module.emit_wasm()))
}

/// Gives the functions of the glue short names. Theirs end in hashes, which no compression makes small,
/// and stand in the glue and in the wasm.
fn shorten<'a>(glue: &mut String, imports: impl Iterator<Item = &'a mut String>) {
    for (at, name) in imports.enumerate() {
        let entry = format!("\n{name}: ");
        if glue.matches(&entry).count() == 1 {
            *name = format!("i{at}");
            *glue = glue.replacen(&entry, &format!("\n{name}: "), 1);
        }
    }
}

/// The glue without what fetches the parts: it would call `require`, and the script knows better.
fn without_loaders(glue: &str) -> String {
    let is_loader = |line: &&str| {
        line.contains(&format!("require(\"{LINK}\")"))
            || line.contains(&format!("\"{LINK}\": import"))
    };
    let lines = glue.lines().map(str::trim).filter(|line| !is_loader(line));
    lines.collect::<Vec<_>>().join("\n")
}

/// Makes the wasm file smaller; tells whether it did. A copy of the program that is too old for this
/// compiler's output refuses it, which costs size and nothing else.
///
/// Without any feature flag wasm-opt allows what the file's own list of features names, and no more.
/// With `--all-features` it writes files that browsers refuse.
pub(super) fn optimise(
    program: &Path,
    wasm: &Path,
    say: &mut dyn FnMut(&str),
) -> Result<bool, BuildError> {
    let smaller = wasm.with_extension("smaller");
    let output = Command::new(program)
        .args(["-Oz", "-o"])
        .args([&smaller, wasm])
        .output();
    match output {
        Ok(output) if output.status.success() => {
            let moved = std::fs::rename(&smaller, wasm);
            moved.map_err(|source| BuildError::File {
                path: smaller,
                source,
            })?;
            return Ok(true);
        }
        Ok(output) => {
            let message = String::from_utf8_lossy(&output.stderr);
            let line = message.lines().next().unwrap_or("it gave no reason");
            say(&format!(
                "{} failed, the elements stay larger: {line}",
                program.display()
            ));
        }
        Err(error) => say(&format!(
            "{} cannot be started, the elements stay larger: {error}",
            program.display()
        )),
    }
    Ok(false)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_glue_asks_for_no_part_and_calls_its_functions_by_short_names() {
        let glue = "const import1 = require(\"parts\");\n  __wbg_log_0123456789abcdef: function(a) {\n\
                    log(a);\n},\n\"parts\": import1,\n};";
        let mut glue = without_loaders(glue);
        let mut names = ["__wbg_log_0123456789abcdef", "elsewhere"].map(String::from);
        glue.insert(0, '\n');
        shorten(&mut glue, names.iter_mut());
        assert_eq!(glue, "\ni0: function(a) {\nlog(a);\n},\n};");
        assert_eq!(
            names,
            ["i0", "elsewhere"],
            "what it does not hold keeps its name"
        );
    }
}
