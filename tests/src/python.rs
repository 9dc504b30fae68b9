//! The reference scripts in Python.

use std::env;
use std::ffi::OsString;
use std::io::Write;
use std::process::{Command, Stdio};

/// Runs a script of `reference/` with a text on its standard input and gives what it printed.
///
/// The interpreter is `AXLEWRIGHT_PYTHON`, or that of `tests/.venv`, or `python3`.
///
/// # Panics
/// When the script fails, with the last line that it wrote to standard error: a missing module is a
/// failure of the test, not a reason to leave it out.
#[must_use]
pub fn python(script: &str, input: &str) -> String {
    let local = crate::file(".venv/bin/python");
    let interpreter: OsString = match env::var_os("AXLEWRIGHT_PYTHON") {
        Some(path) => path,
        None if local.exists() => local.into(),
        None => "python3".into(),
    };
    let started = Command::new(&interpreter)
        .arg(crate::file("reference").join(script))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn();
    let mut child = started.unwrap_or_else(|error| {
        panic!("{} cannot be run: {error}", interpreter.display());
    });
    // A script that ends early, as for a missing module, closes its input: its own words say why.
    let mut stdin = child.stdin.take().expect("the input is piped");
    let text = input.to_owned();
    let writer = std::thread::spawn(move || stdin.write_all(text.as_bytes()).is_ok());
    let output = child.wait_with_output().expect("the script ends");
    let read_all = writer.join().unwrap_or(false);
    let errors = String::from_utf8_lossy(&output.stderr);
    let last = errors.lines().last().unwrap_or("no message");
    assert!(output.status.success() && read_all, "{script}: {last}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}
