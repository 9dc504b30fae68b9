//! From Rust to a small wasm file and the glue that fits it.

use super::{BuildError, ElementsOptions};
use crate::toolchain::WASM_TARGET;
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
    let glue = output.js().to_string();
    let module = output.wasm_mut();
    // A dependency hands out its bridges between byte streams; nothing here asks for them. Once they
    // are not exported, wasm-opt can drop them and all that they alone use.
    let unused: Vec<_> = module
        .exports
        .iter()
        .filter(|export| export.name.contains("intounderlying"))
        .map(|export| export.id())
        .collect();
    for export in unused {
        module.exports.delete(export);
    }
    Ok((glue, module.emit_wasm()))
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
    say("making the elements smaller with wasm-opt");
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
