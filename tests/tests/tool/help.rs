//! Help: every command has an example, and every example is run as it stands. Completions, manual pages,
//! and colour on a terminal alone.

use crate::stdout_of;
use axlewright_core::topic::TOPICS;
use axlewright_tests::{program, python, run};
use serde_json::json;
use std::path::Path;
use std::process::{Command, Stdio};

/// Commands whose example builds the whole site: the browser suite and `tests/run` do that.
const BUILDERS: [&str; 2] = ["serve", "build"];

/// Names of the commands, as the program's own help lists them.
fn commands() -> Vec<String> {
    let help = stdout_of(&["--help"]);
    let (_, list) = help.split_once("Commands:\n").unwrap();
    let (list, _) = list.split_once("\n\n").unwrap();
    list.lines()
        .filter_map(|line| line.split_whitespace().next())
        .map(str::to_owned)
        .collect()
}

fn examples(help: &str) -> Vec<&str> {
    help.lines()
        .filter_map(|line| line.trim().strip_prefix("Example: "))
        .collect()
}

/// Runs a line as a reader would who types it.
fn typed(folder: &Path, line: &str) {
    let programs = program().parent().unwrap();
    let path = format!("{}:{}", programs.display(), std::env::var("PATH").unwrap());
    let output = Command::new("sh")
        .args(["-c", line])
        .env("PATH", path)
        .current_dir(folder)
        .stdin(Stdio::null())
        .output()
        .unwrap();
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{line}: {told}");
    assert!(!told.contains("panicked"), "{line}: {told}");
}

#[test]
fn every_example_of_the_help_is_true() {
    let folder = tempfile::tempdir().unwrap();
    // What the examples read and do not write themselves.
    let book = folder.path().join("chapter.md");
    std::fs::write(
        book,
        "{{ value(\"traction\", \"limits.R1.acceleration\") }}\n",
    )
    .unwrap();
    let commands = commands();
    for wanted in ["answer", "figure", "study", "schema", "new"] {
        assert!(commands.iter().any(|known| known == wanted), "{wanted}");
    }
    for command in &commands {
        let help = stdout_of(&[command, "--help"]);
        let examples = examples(&help);
        let own = format!("axlewright {command}");
        assert!(
            examples.iter().any(|line| line.contains(&own)),
            "{command} has no example:\n{help}"
        );
        if BUILDERS.contains(&command.as_str()) {
            continue;
        }
        for line in examples {
            typed(folder.path(), line);
        }
    }
    typed(folder.path(), examples(&stdout_of(&["--help"]))[0]);
    assert!(folder.path().join("traction.png").exists());
    assert!(folder.path().join("man/axlewright-figure.1").exists());
}

#[test]
fn completions_and_manual_pages_know_every_command_and_option() {
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let script = stdout_of(&["completions", shell]);
        for word in commands()
            .iter()
            .map(String::as_str)
            .chain(["outline-text"])
        {
            assert!(script.contains(word), "{shell}: {word}");
        }
    }
    let bash = stdout_of(&["completions", "bash"]);
    let checked = Command::new("bash")
        .args(["-n", "-c", &bash])
        .output()
        .unwrap();
    assert!(
        checked.status.success(),
        "{}",
        String::from_utf8_lossy(&checked.stderr)
    );
    let folder = tempfile::tempdir().unwrap();
    let out = folder.path().join("man");
    stdout_of(&["manual", "--out", out.to_str().unwrap()]);
    for command in commands() {
        let page = std::fs::read_to_string(out.join(format!("axlewright-{command}.1"))).unwrap();
        assert!(
            page.contains(".SH SYNOPSIS") && page.contains("Example: "),
            "{command}"
        );
    }
    assert!(stdout_of(&["manual"]).contains("Exit codes: 0 done"));
}

/// What the program writes on a terminal.
fn on_terminal(arguments: &[&str], environment: &[(&str, &str)]) -> String {
    let mut line = vec![program().to_str().unwrap()];
    line.extend_from_slice(arguments);
    let environment: serde_json::Map<_, _> = environment
        .iter()
        .map(|(name, value)| ((*name).to_owned(), json!(value)))
        .collect();
    let asked = json!({"program": line, "environment": environment});
    serde_json::from_str(&python("terminal.py", &asked.to_string())).unwrap()
}

#[test]
fn colour_is_for_terminals_that_want_it() {
    for arguments in [
        &["answer", "traction"][..],
        &["answer", "traction", "--set", "vehicle.mass=0"],
        &["figure", "--help"],
    ] {
        let piped = run(arguments);
        let piped = format!("{}{}", piped.stdout, piped.stderr);
        assert!(!piped.contains('\u{1b}'), "{arguments:?}: {piped:?}");
        let coloured = on_terminal(arguments, &[]);
        assert!(coloured.contains("\u{1b}["), "{arguments:?}: {coloured:?}");
        for plain in [[("NO_COLOR", "1")], [("TERM", "dumb")]] {
            let text = on_terminal(arguments, &plain);
            assert!(
                !text.contains("\u{1b}["),
                "{arguments:?} {plain:?}: {text:?}"
            );
        }
    }
}

#[test]
fn the_commands_know_every_topic() {
    for topic in TOPICS {
        assert!(!stdout_of(&["answer", topic.name]).is_empty());
        assert!(stdout_of(&["figure", topic.name]).starts_with("<svg"));
        assert!(stdout_of(&["schema", topic.name]).starts_with('{'));
    }
}
