//! Scripts for Node, which judge documents by other people's programs.

use std::io::Write;
use std::process::{Command, Stdio};

/// Runs a script of the folder `interface` with a text on its standard input; gives what it printed.
///
/// # Panics
/// When Node or a package is missing or the script fails: that is a failure of the test, not a reason to
/// leave it out.
#[must_use]
pub fn node(script: &str, input: &str) -> String {
    let started = Command::new("node")
        .arg(crate::file("interface").join(script))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn();
    let mut child = started.expect("node is installed (tests/run installs it)");
    let mut stdin = child.stdin.take().expect("the input is piped");
    let text = input.to_owned();
    let writer = std::thread::spawn(move || stdin.write_all(text.as_bytes()).is_ok());
    let output = child.wait_with_output().expect("the script ends");
    let read_all = writer.join().unwrap_or(false);
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success() && read_all, "{script}: {errors}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}
