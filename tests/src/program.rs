//! The program `axlewright`, built as the tests were, and run.

use std::env;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::OnceLock;

/// What a run of the program left behind.
#[derive(Clone, Debug)]
pub struct Run {
    /// Exit code; none when a signal ended it.
    pub code: Option<i32>,
    /// Standard output.
    pub stdout: String,
    /// Standard error.
    pub stderr: String,
}

/// Path of the program.
///
/// `AXLEWRIGHT_PROGRAM` names it where it was built elsewhere. Otherwise cargo brings it up to date in
/// the target folder and profile of the running test, which takes no time when nothing changed.
///
/// # Panics
/// When cargo cannot build it.
#[must_use]
pub fn program() -> &'static Path {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| match env::var_os("AXLEWRIGHT_PROGRAM") {
        Some(path) => path.into(),
        None => build(),
    })
}

fn build() -> PathBuf {
    let test = env::current_exe().expect("a running test has a path");
    // target/debug/deps/test-0123 → target/debug
    let profile = test
        .parent()
        .and_then(Path::parent)
        .expect("a test lies in target/PROFILE/deps");
    let target = profile.parent().expect("a profile lies in target");
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(cargo);
    command
        .args(["build", "--quiet", "--package", "axlewright-site"])
        .args(["--bin", "axlewright", "--manifest-path"])
        .arg(crate::file("../Cargo.toml"))
        .arg("--target-dir")
        .arg(target);
    if profile.ends_with("release") {
        command.arg("--release");
    }
    let output = command.output().expect("cargo can be run");
    assert!(
        output.status.success(),
        "cargo cannot build the program:\n{}",
        String::from_utf8_lossy(&output.stderr)
    );
    profile.join(format!("axlewright{}", env::consts::EXE_SUFFIX))
}

/// Runs the program.
///
/// # Panics
/// When it cannot be started.
#[must_use]
pub fn run(arguments: &[&str]) -> Run {
    run_in(&env::temp_dir(), arguments)
}

/// Runs the program in a folder.
///
/// # Panics
/// When it cannot be started.
#[must_use]
pub fn run_in(folder: &Path, arguments: &[&str]) -> Run {
    let output = Command::new(program())
        .args(arguments)
        .current_dir(folder)
        .stdin(Stdio::null())
        .output()
        .expect("the program can be started");
    Run {
        code: output.status.code(),
        stdout: String::from_utf8_lossy(&output.stdout).into_owned(),
        stderr: String::from_utf8_lossy(&output.stderr).into_owned(),
    }
}
