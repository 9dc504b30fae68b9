//! Help: every command has an example, and every example is run as it stands. Completions, manual pages,
//! and colour on a terminal alone.

use crate::stdout_of;
use axlewright_core::topic::TOPICS;
use axlewright_tests::{program, python, run};
use serde_json::json;
use std::fs::File;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Command, Stdio};

/// What a command says of itself, from the words that call it.
fn help_of(command: &[String]) -> String {
    let words = command.iter().map(String::as_str);
    stdout_of(&words.chain(["--help"]).collect::<Vec<_>>())
}

/// The commands right below one, as its own help lists them; none where it has none.
fn below(command: &[String]) -> Vec<Vec<String>> {
    let help = help_of(command);
    let Some((_, list)) = help.split_once("Commands:\n") else {
        return Vec::new();
    };
    let (list, _) = list.split_once("\n\n").unwrap();
    list.lines()
        .filter_map(|line| line.split_whitespace().next())
        .map(|name| [command, &[name.to_owned()]].concat())
        .collect()
}

/// Every command, each before those below it.
fn every_command() -> Vec<Vec<String>> {
    let mut found = below(&[]);
    let mut at = 0;
    while at < found.len() {
        let inner = below(&found[at]);
        found.splice(at + 1..at + 1, inner);
        at += 1;
    }
    found
}

/// Names of the commands of the program itself.
fn commands() -> Vec<String> {
    below(&[]).into_iter().map(|words| words.concat()).collect()
}

fn examples(help: &str) -> Vec<&str> {
    help.lines()
        .filter_map(|line| line.trim().strip_prefix("Example: "))
        .collect()
}

/// A line as a reader types it, in a folder.
fn shell(folder: &Path, line: &str) -> Command {
    let programs = program().parent().unwrap();
    let path = format!("{}:{}", programs.display(), std::env::var("PATH").unwrap());
    let mut command = Command::new("sh");
    command
        .args(["-c", line])
        .env("PATH", path)
        .current_dir(folder)
        .stdin(Stdio::null());
    command
}

/// Runs a line that serves: takes the address that it prints, fetches a page there, and ends it.
fn typed_and_served(folder: &Path, line: &str) {
    let errors = folder.join("served.txt");
    let mut serving = shell(folder, &format!("exec {line}"))
        .stdout(Stdio::piped())
        .stderr(File::create(&errors).unwrap())
        .spawn()
        .unwrap();
    let mut address = String::new();
    let mut told = BufReader::new(serving.stdout.take().unwrap());
    let read = told.read_line(&mut address);
    let page = read.and_then(|_| first_page(address.trim()));
    serving.kill().unwrap();
    serving.wait().unwrap();
    let errors = std::fs::read_to_string(errors).unwrap();
    let page = page.unwrap_or_else(|error| panic!("{line}: {address:?}: {error}\n{errors}"));
    assert!(page.starts_with("HTTP/1.1 200 OK"), "{line}: {page}");
    assert!(
        page.contains("<axle-"),
        "{line}: no element on the first page"
    );
}

/// What a server on this machine answers to a browser that asks for its first page.
fn first_page(address: &str) -> std::io::Result<String> {
    let host = address.trim_start_matches("http://").trim_end_matches('/');
    let mut stream = TcpStream::connect(host)?;
    write!(
        stream,
        "GET / HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"
    )?;
    let mut answer = String::new();
    stream.read_to_string(&mut answer)?;
    Ok(answer)
}

/// Runs a line as a reader would who types it.
fn typed(folder: &Path, line: &str) {
    let output = shell(folder, line).output().unwrap();
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
    let commands = every_command();
    for wanted in [
        "answer",
        "figure",
        "study",
        "schema",
        "new",
        "talk check",
        "talk build",
    ] {
        assert!(
            commands.iter().any(|known| known.join(" ") == wanted),
            "{wanted}"
        );
    }
    for command in &commands {
        let help = help_of(command);
        let examples = examples(&help);
        let own = format!("axlewright {}", command.join(" "));
        assert!(
            examples.iter().any(|line| line.contains(&own)),
            "{own} has no example:\n{help}"
        );
        for line in examples {
            if line.starts_with("axlewright serve") {
                typed_and_served(folder.path(), line);
            } else {
                typed(folder.path(), line);
            }
        }
    }
    typed(folder.path(), examples(&stdout_of(&["--help"]))[0]);
    for made in [
        "traction.png",
        "man/axlewright-figure.1",
        "my-talk.html",
        "public/index.html",
        "public/integrity.json",
    ] {
        assert!(folder.path().join(made).exists(), "{made}");
    }
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

/// Count of rows that is short enough to wait for and long enough to be told of twice.
const ROWS: usize = 400;

#[test]
fn a_study_on_a_terminal_tells_how_far_it_is_and_what_time_is_left() {
    let folder = tempfile::tempdir().unwrap();
    let table = folder.path().join("heights.csv");
    let heights = format!("vehicle.cg_height=0.4m:0.7m:{ROWS}");
    let arguments = [
        "study",
        "launch",
        "--set",
        "vehicle.base=esker",
        "--set",
        "layouts=F1R1",
        "--set",
        "layout=F1R1",
        "--want",
        "layouts.F1R1.time_to_60_mph",
        "--vary",
        &heights,
        "-o",
        table.to_str().unwrap(),
    ];
    let text = on_terminal(&arguments, &[("NO_COLOR", "1")]);
    // "███░░░ 42 %  168/400  150 rows/s  1s left", written again and again on the same line.
    let told: Vec<&str> = text.split(" rows/s  ").collect();
    let mut done = Vec::new();
    for (before, after) in told.iter().zip(&told[1..]) {
        let (before, rate) = before.rsplit_once(&format!("/{ROWS}  ")).unwrap();
        assert!(rate.parse::<u64>().is_ok(), "{rate:?} rows a second");
        let rows: usize = before.rsplit(' ').next().unwrap().parse().unwrap();
        let percent = before
            .rsplit_once(" %")
            .unwrap()
            .0
            .rsplit(' ')
            .next()
            .unwrap();
        let percent: usize = percent.parse().unwrap();
        assert!(
            percent.abs_diff(100 * rows / ROWS) <= 1,
            "{percent} %, {rows} rows"
        );
        let mut left = after.split(' ');
        let time = left.next().unwrap();
        let number = time.trim_end_matches(|letter: char| letter.is_ascii_alphabetic());
        assert!(number.parse::<u32>().is_ok() && number != time, "{time:?}");
        assert!(left.next().unwrap().starts_with("left"), "{after:?}");
        done.push(rows);
    }
    assert!(done.is_sorted(), "{done:?}");
    done.dedup();
    assert!(done.len() > 2, "told of {done:?} rows: {text:?}");
    // Then the bar goes and the summary comes; the table is whole.
    assert!(
        text.contains(&format!("{ROWS} rows, 0 without an answer")),
        "{text:?}"
    );
    assert_eq!(
        std::fs::read_to_string(&table).unwrap().lines().count(),
        ROWS + 1
    );
    let again = run(&[&arguments[..], &["--fresh"]].concat());
    assert!(
        !again.stderr.contains("rows/s"),
        "no terminal, no bar: {}",
        again.stderr
    );
}

#[test]
fn the_commands_know_every_topic() {
    for topic in TOPICS {
        assert!(!stdout_of(&["answer", topic.name]).is_empty());
        assert!(stdout_of(&["figure", topic.name]).starts_with("<svg"));
        assert!(stdout_of(&["schema", topic.name]).starts_with('{'));
    }
}
