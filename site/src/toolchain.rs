//! Finds what a build of the elements needs: the source tree, the wasm target and, if there is one, `wasm-opt`.

use std::ffi::OsStr;
use std::fmt;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The Rust target that browsers run.
pub const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// Why the tools for a build of the elements cannot be had.
#[derive(Debug)]
#[non_exhaustive]
pub enum ToolchainError {
    /// No folder above the current one holds the source tree.
    NoWorkspace,
    /// `rustc` cannot be started.
    NoRustc(std::io::Error),
    /// The wasm target is missing and `rustup` cannot be started.
    NoRustup,
    /// `rustup` was started and could not add the target.
    TargetNotAdded,
}

impl fmt::Display for ToolchainError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoWorkspace => write!(
                f,
                "the source tree (a folder with Cargo.toml, core/, widgets/ and site/) is not here; run the command inside it"
            ),
            Self::NoRustc(source) => write!(f, "rustc cannot be started: {source}"),
            Self::NoRustup => write!(
                f,
                "the Rust target {WASM_TARGET} is missing and rustup is not installed; add the target with the tool that installed Rust"
            ),
            Self::TargetNotAdded => write!(
                f,
                "rustup could not add the target {WASM_TARGET}; its own message is above"
            ),
        }
    }
}

impl std::error::Error for ToolchainError {}

/// The root of the source tree: the nearest folder that holds it, from the current one upward,
/// then the tree that this program was built from.
///
/// # Errors
/// [`ToolchainError::NoWorkspace`] when neither is there.
pub fn workspace_root() -> Result<PathBuf, ToolchainError> {
    let built_from = Path::new(env!("CARGO_MANIFEST_DIR")).parent();
    let current = std::env::current_dir().ok();
    current
        .iter()
        .flat_map(|folder| folder.ancestors())
        .chain(built_from)
        .find(|folder| is_workspace(folder))
        .map(Path::to_path_buf)
        .ok_or(ToolchainError::NoWorkspace)
}

fn is_workspace(folder: &Path) -> bool {
    ["core", "widgets", "site"]
        .iter()
        .all(|room| folder.join(room).join("Cargo.toml").is_file())
}

/// Makes sure that `rustc` can build for the browser. A missing target is added through `rustup`,
/// which is announced to `say` first.
///
/// # Errors
/// When `rustc` cannot be started, or the target is missing and cannot be added.
pub fn ensure_wasm_target(root: &Path, say: &mut dyn FnMut(&str)) -> Result<(), ToolchainError> {
    if has_wasm_target(root)? {
        return Ok(());
    }
    say(&format!(
        "adding the Rust target {WASM_TARGET} (rustup target add {WASM_TARGET})"
    ));
    let status = Command::new("rustup")
        .args(["target", "add", WASM_TARGET])
        .current_dir(root)
        .status()
        .map_err(|_| ToolchainError::NoRustup)?;
    // What counts is that the compiler that will be used has it.
    if status.success() && has_wasm_target(root)? {
        Ok(())
    } else {
        Err(ToolchainError::TargetNotAdded)
    }
}

fn has_wasm_target(root: &Path) -> Result<bool, ToolchainError> {
    let sysroot = rustc(root, &["--print", "sysroot"])?;
    Ok(Path::new(sysroot.trim())
        .join("lib/rustlib")
        .join(WASM_TARGET)
        .join("lib")
        .is_dir())
}

/// The full version of the compiler that builds in `root`.
///
/// # Errors
/// When `rustc` cannot be started.
pub fn rustc_version(root: &Path) -> Result<String, ToolchainError> {
    rustc(root, &["-vV"])
}

/// The folder of the compiler that builds the source tree at `root`.
///
/// # Errors
/// When there is no compiler.
pub fn sysroot(root: &Path) -> Result<String, ToolchainError> {
    Ok(rustc(root, &["--print", "sysroot"])?.trim().to_owned())
}

fn rustc(root: &Path, arguments: &[&str]) -> Result<String, ToolchainError> {
    let program = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let output = Command::new(program)
        .args(arguments)
        .current_dir(root)
        .output()
        .map_err(ToolchainError::NoRustc)?;
    Ok(String::from_utf8_lossy(&output.stdout).into_owned())
}

/// The program that makes wasm smaller, if there is one: the one that `AXLEWRIGHT_WASM_OPT` names,
/// else the one that the tests have installed, else the one on the search path.
///
/// The tests' own copy goes before the search path because its version is known to read what this
/// compiler writes; a distribution's copy is often too old.
#[must_use]
pub fn find_wasm_opt(root: &Path) -> Option<PathBuf> {
    let named = std::env::var_os("AXLEWRIGHT_WASM_OPT");
    let path = std::env::var_os("PATH");
    wasm_opt_among(root, named.as_deref(), path.as_deref())
}

fn wasm_opt_among(root: &Path, named: Option<&OsStr>, path: Option<&OsStr>) -> Option<PathBuf> {
    let program = format!("wasm-opt{}", std::env::consts::EXE_SUFFIX);
    let on_path = path.into_iter().flat_map(std::env::split_paths);
    named
        .map(PathBuf::from)
        .into_iter()
        .chain([root.join("tests/node_modules/.bin").join(&program)])
        .chain(on_path.map(|folder| folder.join(&program)))
        .find(|candidate| candidate.is_file())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_workspace_is_found_from_inside() {
        let root = workspace_root().expect("the test runs inside the source tree");
        assert!(
            root.join("core/Cargo.toml").is_file(),
            "{} holds core/",
            root.display()
        );
    }

    #[test]
    fn a_named_wasm_opt_goes_first_and_a_wrong_name_is_passed_over() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let tests = folder.path().join("tests/node_modules/.bin");
        let elsewhere = folder.path().join("bin");
        for place in [&tests, &elsewhere] {
            std::fs::create_dir_all(place).expect("a folder");
            std::fs::write(place.join("wasm-opt"), "").expect("a file");
        }
        let named = elsewhere.join("wasm-opt");
        let find = |named: Option<&OsStr>, path: Option<&OsStr>| {
            wasm_opt_among(folder.path(), named, path)
        };
        assert_eq!(
            find(Some(named.as_os_str()), None),
            Some(named.clone()),
            "named"
        );
        assert_eq!(
            find(Some(OsStr::new("/nowhere")), None),
            Some(tests.join("wasm-opt")),
            "wrong name"
        );
        assert_eq!(
            wasm_opt_among(Path::new("/nowhere"), None, Some(elsewhere.as_os_str())),
            Some(named),
            "search path"
        );
        assert_eq!(
            wasm_opt_among(Path::new("/nowhere"), None, None),
            None,
            "none"
        );
    }

    #[test]
    fn the_compiler_is_asked_once_and_says_its_version() {
        let version = rustc_version(Path::new(".")).expect("rustc runs");
        assert!(version.starts_with("rustc "), "got {version:?}");
    }
}
