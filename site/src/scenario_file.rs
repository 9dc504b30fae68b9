//! Reads scenarios from TOML and JSON files, and `field=value` settings from the command line.

use axlewright_core::input::{self, Kind};
use axlewright_core::topic::Topic;
use axlewright_core::{Problem, Scenario, Tree};
use std::fmt;
use std::io::Read;
use std::path::{Path, PathBuf};

/// Largest scenario file that is read. A hand-written one has a few hundred bytes.
pub const LARGEST_BYTES: u64 = 1_000_000;

/// Why a scenario cannot be had.
#[derive(Debug)]
#[non_exhaustive]
pub enum ScenarioError {
    /// The file cannot be read.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        reason: String,
    },
    /// The file is larger than a scenario can be.
    TooLarge {
        /// The file.
        path: PathBuf,
        /// Its size, where known.
        bytes: u64,
    },
    /// The file is neither TOML nor JSON.
    Syntax {
        /// The file.
        path: PathBuf,
        /// Line of the fault, from 1.
        line: usize,
        /// What is wrong.
        reason: String,
    },
    /// A setting is not of the form `field=value`.
    NotASetting(String),
    /// A field, a value or the whole is refused.
    Refused(Problem),
}

impl fmt::Display for ScenarioError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable { path, reason } => {
                write!(
                    f,
                    "scenario {}: it cannot be read: {reason}",
                    path.display()
                )
            }
            Self::TooLarge { path, bytes } => write!(
                f,
                "scenario {}: {bytes} bytes are too many; allowed: at most {LARGEST_BYTES} bytes",
                path.display()
            ),
            Self::Syntax { path, line, reason } => write!(
                f,
                "scenario {}, line {line}: {reason}; allowed: TOML or JSON",
                path.display()
            ),
            Self::NotASetting(text) => write!(
                f,
                "--set \"{}\" is not a setting; allowed: field=value, for example vehicle.mass=\"1850 kg\"",
                one_line(text)
            ),
            Self::Refused(problem) => f.write_str(&one_line(&problem.to_string())),
        }
    }
}

impl std::error::Error for ScenarioError {}

impl From<Problem> for ScenarioError {
    fn from(problem: Problem) -> Self {
        Self::Refused(problem)
    }
}

/// A text on one line, without control characters: what a reader's terminal may be given.
#[must_use]
pub fn one_line(text: &str) -> String {
    text.chars()
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect()
}

/// The scenario of a command: the file if there is one, the settings on top of it, and where neither
/// names a vehicle, the topic's example.
///
/// # Errors
/// A [`ScenarioError`]: one line that names field, value and what is allowed.
pub fn gather(
    topic: &Topic,
    file: Option<&Path>,
    settings: &[String],
) -> Result<Scenario, ScenarioError> {
    let mut scenario = match file {
        Some(path) => read(path)?,
        None => Scenario::default(),
    };
    for setting in settings {
        set(&mut scenario, setting)?;
    }
    // A file is taken at its word: what it leaves out is told, not made up.
    if file.is_some() {
        return Ok(scenario);
    }
    Ok(topic.completed(&scenario)?)
}

/// Puts a setting on top of a scenario.
///
/// # Errors
/// As [`gather`].
pub fn set(scenario: &mut Scenario, setting: &str) -> Result<(), ScenarioError> {
    let (path, value) = setting
        .split_once('=')
        .ok_or_else(|| ScenarioError::NotASetting(setting.chars().take(60).collect()))?;
    let value = value.trim().trim_matches('"');
    match text_file(path.trim(), value, Path::new("")) {
        Some(file) => scenario.set(path.trim(), &lines_of(&file)?)?,
        None => scenario.set(path.trim(), value)?,
    }
    Ok(())
}

/// Reads a scenario file; `-` is the standard input.
///
/// # Errors
/// As [`gather`].
pub fn read(path: &Path) -> Result<Scenario, ScenarioError> {
    parse(path, &read_text(path)?)
}

/// Reads the data of a file, TOML or JSON; `-` is the standard input.
///
/// # Errors
/// As [`gather`].
pub fn read_tree(path: &Path) -> Result<Tree, ScenarioError> {
    parse_tree(path, &read_text(path)?)
}

fn read_text(path: &Path) -> Result<String, ScenarioError> {
    let unreadable = |reason: String| ScenarioError::Unreadable {
        path: path.to_path_buf(),
        reason,
    };
    let mut bytes = Vec::new();
    let too_large = |bytes: u64| ScenarioError::TooLarge {
        path: path.to_path_buf(),
        bytes,
    };
    // One byte more than allowed tells that there is more, whatever the file says of its size.
    let limit = LARGEST_BYTES + 1;
    let read = if path == Path::new("-") {
        std::io::stdin().lock().take(limit).read_to_end(&mut bytes)
    } else {
        let file = std::fs::File::open(path).map_err(|e| unreadable(e.to_string()))?;
        let size = file.metadata().map_err(|e| unreadable(e.to_string()))?;
        if size.is_dir() {
            return Err(unreadable("it is a directory".into()));
        }
        if size.len() > LARGEST_BYTES {
            return Err(too_large(size.len()));
        }
        file.take(limit).read_to_end(&mut bytes)
    };
    read.map_err(|e| unreadable(e.to_string()))?;
    if bytes.len() as u64 > LARGEST_BYTES {
        return Err(too_large(bytes.len() as u64));
    }
    String::from_utf8(bytes).map_err(|_| unreadable("it is not UTF-8 text".into()))
}

/// Reads the text of a scenario: JSON where it begins with a brace or the file's name says so, TOML
/// otherwise. `path` is told in refusals, and files that a field names are looked for beside it.
///
/// # Errors
/// As [`gather`].
///
/// ```
/// use axlewright_site::scenario_file::parse;
/// use std::path::Path;
///
/// let scenario = parse(Path::new("car.toml"), "[vehicle]\nmass = \"4080 lb\"\n")?;
/// assert!((scenario.number("vehicle.mass").unwrap_or_default() - 1850.7).abs() < 0.05);
/// // A refusal is one line that says where, what and what is allowed.
/// let refused = parse(Path::new("car.toml"), "[vehicle]\nmas = 1850\n").map_err(|e| e.to_string());
/// assert!(refused.is_err_and(|told| told.contains("vehicle.mas") && told.contains("vehicle.mass")));
/// # Ok::<(), axlewright_site::scenario_file::ScenarioError>(())
/// ```
pub fn parse(path: &Path, text: &str) -> Result<Scenario, ScenarioError> {
    let (tree, _) = split(parse_tree(path, text)?);
    Ok(Scenario::from_tree(&tree)?)
}

/// Reads a scenario file that may say in a table `study` what is to be varied. A file that says nothing
/// else leaves the scenario empty.
///
/// # Errors
/// As [`gather`].
pub fn read_study(path: &Path) -> Result<(Scenario, Option<Tree>), ScenarioError> {
    let (tree, study) = split(parse_tree(path, &read_text(path)?)?);
    let says_nothing = study.is_some() && tree == Tree::map();
    let scenario = if says_nothing {
        Scenario::default()
    } else {
        Scenario::from_tree(&tree)?
    };
    Ok((scenario, study))
}

/// A scenario, and what its file says of a study. The scenario is the same to every other command.
fn split(tree: Tree) -> (Tree, Option<Tree>) {
    match tree {
        Tree::Map(mut entries) => {
            let at = entries.iter().position(|(name, _)| name == "study");
            let study = at.map(|at| entries.remove(at).1);
            (Tree::Map(entries), study)
        }
        other => (other, None),
    }
}

/// Reads the text of a file as data, TOML or JSON, as [`parse`] does.
///
/// # Errors
/// As [`gather`].
pub fn parse_tree(path: &Path, text: &str) -> Result<Tree, ScenarioError> {
    if text.trim().is_empty() {
        return Err(Problem::Empty.into());
    }
    let syntax = |line: usize, reason: &str| ScenarioError::Syntax {
        path: path.to_path_buf(),
        line,
        reason: one_line(reason),
    };
    let is_json =
        path.extension().is_some_and(|e| e == "json") || text.trim_start().starts_with('{');
    let mut tree: Tree = if is_json {
        serde_json::from_str(text).map_err(|e| {
            let told = e.to_string();
            let reason = told.split(" at line ").next().unwrap_or(&told);
            syntax(e.line(), reason)
        })?
    } else {
        toml::from_str(text).map_err(|e| {
            let at = e.span().map_or(0, |span| span.start.min(text.len()));
            let before = text.get(..at).unwrap_or(text);
            syntax(before.matches('\n').count() + 1, e.message())
        })?
    };
    read_files(&mut tree, "", path.parent().unwrap_or(Path::new("")))?;
    Ok(tree)
}

/// The file that the value of a field names: one that takes lines, and has none but a name.
fn text_file(path: &str, value: &str, folder: &Path) -> Option<PathBuf> {
    let most = match input::find(path)?.kind {
        Kind::Text { .. } => 1000,
        _ => return None,
    };
    let named = !value.is_empty() && value.len() < most && !value.contains('\n');
    named.then(|| folder.join(value))
}

/// Puts the lines of files in the place of their names. A name is seen from the scenario's own folder.
fn read_files(tree: &mut Tree, path: &str, folder: &Path) -> Result<(), ScenarioError> {
    if let Tree::Map(entries) = tree {
        for (name, value) in entries {
            let path = if path.is_empty() {
                name.clone()
            } else {
                format!("{path}.{name}")
            };
            read_files(value, &path, folder)?;
        }
    } else if let Tree::Text(text) = tree
        && let Some(file) = text_file(path, text, folder)
    {
        *text = lines_of(&file)?;
    }
    Ok(())
}

/// As much of a file of lines as a scenario takes, and a byte more: what is longer is refused by its line.
fn lines_of(file: &Path) -> Result<String, ScenarioError> {
    let unreadable = |reason: String| ScenarioError::Unreadable {
        path: file.to_path_buf(),
        reason,
    };
    let mut bytes = Vec::new();
    let opened = std::fs::File::open(file).map_err(|e| unreadable(e.to_string()))?;
    opened
        .take(LARGEST_BYTES)
        .read_to_end(&mut bytes)
        .map_err(|e| unreadable(e.to_string()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::topic::TOPICS;

    fn refusal(text: &str) -> String {
        parse(Path::new("case.toml"), text).unwrap_err().to_string()
    }

    #[test]
    fn toml_and_json_say_the_same() {
        let toml = "layouts = [\"F1\"]\n[vehicle]\nmass = \"1850 kg\"\nwheelbase = 2.86\n";
        let json = r#"{"layouts": ["F1"], "vehicle": {"mass": "1850 kg", "wheelbase": 2.86}}"#;
        let path = Path::new("case");
        assert_eq!(parse(path, toml).unwrap(), parse(path, json).unwrap());
    }

    #[test]
    fn every_fault_is_told_in_one_line_with_its_place() {
        for (text, parts) in [
            ("[vehicle]\nmass = \n", vec!["line 2"]),
            ("[vehicle]\nmass = nan\n", vec!["vehicle.mass", "NaN", "10"]),
            (
                "[vehicle]\nmas = \"5 kg\"\n",
                vec!["vehicle.mas", "vehicle.mass"],
            ),
            ("[vehicle]\nmass = [1]\n", vec!["vehicle.mass"]),
            ("vehicle = 5\n", vec!["vehicle"]),
            ("", vec!["empty"]),
            ("# nothing\n", vec!["empty"]),
            ("{\"vehicle\": }", vec!["line 1"]),
        ] {
            let told = refusal(text);
            assert!(!told.contains('\n'), "{told}");
            for part in parts {
                assert!(told.contains(part), "{text:?}: {told}");
            }
        }
    }

    #[test]
    fn a_cycle_is_read_from_the_file_that_is_named() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("my.csv"), "0,0\n1,36\n2,0\n").unwrap();
        let file = folder.path().join("case.toml");
        let toml =
            "[vehicle]\nbase = \"esker\"\n[idle_drag]\ncycle = \"own\"\ntrace = \"my.csv\"\n";
        let scenario = parse(&file, toml).unwrap();
        let text = scenario.text("idle_drag.trace");
        assert_eq!(text, Some("0,0\n1,36\n2,0"));
        let missing = parse(&file, &toml.replace("my.csv", "none.csv"));
        assert!(missing.unwrap_err().to_string().contains("none.csv"));
        // Ten million rows: no more is read than is needed to refuse them by a line.
        let long = folder.path().join("long.csv");
        std::fs::write(&long, "0,50\n".repeat(500_000)).unwrap();
        let told = parse(&file, &toml.replace("my.csv", "long.csv")).unwrap_err();
        assert!(told.to_string().contains("line 120001"), "{told}");
    }

    #[test]
    fn settings_alone_are_not_mixed_with_an_invented_vehicle() {
        let topic = TOPICS[0];
        let own = gather(topic, None, &["vehicle.mass=1000 kg".into()]).unwrap();
        assert_eq!(own.number("vehicle.wheelbase"), None);
        let none = gather(topic, None, &["surface.grade=5 %".into()]).unwrap();
        assert_eq!(none.word("vehicle.base"), Some("esker"));
        assert!(gather(topic, None, &["vehicle.mass".into()]).is_err());
    }
}
