//! The commands of the program `axlewright`.
//!
//! Exit codes: 0 done; 1 the machine failed (a file cannot be written, a build failed); 2 the input
//! was refused.

mod commands;
mod document;
mod figure;
mod ink;
mod plot;
mod shell;
mod study;
mod talk;

use axlewright_core::Problem;
use axlewright_core::Scenario;
use axlewright_core::topic::{self, Topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_site::answer::AnswerFormat;
use axlewright_site::scenario_file::{self, ScenarioError};
use clap::error::ErrorKind;
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::fmt::Display;
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Explains why an electric car has one, two, three or four motors, with numbers that are computed.
#[derive(Parser)]
#[command(
    name = "axlewright",
    version,
    about,
    disable_help_subcommand = true,
    after_help = "Exit codes: 0 done; 1 the machine failed; 2 the input was refused. An error is one line that names field, value and what is allowed.\n\nExample: axlewright answer traction --set vehicle.base=corrie"
)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Build what is missing and serve the site on this machine
    #[command(after_help = "Example: axlewright serve --port 7400")]
    Serve {
        /// Port on the loopback address; the next free one is taken if it is in use
        #[arg(long)]
        port: Option<u16>,
    },
    /// Build the static site and the embeddable script
    #[command(after_help = "Example: axlewright build --out public")]
    Build {
        /// Folder for the site
        #[arg(long, default_value = "target/site")]
        out: PathBuf,
        /// Build into Trunk's staging folder and keep its live-reload script (called by Trunk.toml)
        #[arg(long, hide = true)]
        trunk: bool,
    },
    /// Print the numbers of a topic with their working
    #[command(
        after_help = "Example: axlewright answer load-transfer --set vehicle.base=esker --set load_transfer.acceleration=\"0.6 g\""
    )]
    Answer {
        #[command(flatten)]
        question: QuestionArgs,
        /// How to print
        #[arg(long, value_enum, default_value = "text")]
        format: AnswerFormat,
    },
    /// Answer a question for each line of JSON on the standard input, for notebooks and scripts
    #[command(
        after_help = "Example: echo '{\"topic\": \"traction\", \"scenario\": {\"vehicle\": {\"base\": \"corrie\"}}}' | axlewright answers"
    )]
    Answers {
        /// Language of refusals: en, de, es
        #[arg(long, default_value = "en")]
        lang: String,
    },
    /// Draw the figure of a topic as SVG, PNG or PDF
    #[command(
        after_help = "Example: axlewright figure traction --set vehicle.base=corrie -o traction.svg\nExample: axlewright figure traction --view chart --style print --width 84mm -o column.pdf\nExample: axlewright figure --again traction.svg -o traction.png"
    )]
    Figure(figure::FigureArgs),
    /// Answer a topic over a grid or a Latin hypercube of inputs, as CSV
    #[command(
        after_help = "Example: axlewright study traction --vary vehicle.cg_height=0.4m:0.7m:31 --vary surface.kind=ice,gravel -o heights.csv\nExample: axlewright study load-transfer --design latin --points 5000 --seed 7 --vary vehicle.mass=900kg:2500kg --vary vehicle.cg_height=0.4m:0.7m -o masses.csv"
    )]
    Study(study::StudyArgs),
    /// Start, check or build a talk
    #[command(subcommand, after_help = "Example: axlewright talk new talk.toml")]
    Talk(TalkCommand),
    /// Plot the table that a study wrote: contour, scatter, parallel axes
    #[command(
        after_help = "Example: axlewright study traction --vary vehicle.cg_height=0.4m:0.7m:31 --vary surface.grade=0%:20%:21 -o slopes.csv\nExample: axlewright plot traction slopes.csv --z limits.R1.acceleration --width 84mm --style print -o slopes.svg"
    )]
    Plot(plot::PlotArgs),
    /// Fill a document with numbers and figures of scenario files: Markdown, AsciiDoc, LaTeX, HTML
    #[command(after_help = "Example: axlewright fill chapter.md -o filled.md")]
    Fill {
        /// The document
        document: PathBuf,
        /// File to write; the standard output if left out. Figures go to `figures` beside it
        #[arg(short, long)]
        output: Option<PathBuf>,
    },
    /// Fill the chapters of a book: a preprocessor of mdBook, called by it
    #[command(
        after_help = "In book.toml: [preprocessor.axlewright] command = \"axlewright mdbook\"\n\nExample: axlewright mdbook supports html"
    )]
    Mdbook {
        /// What the builder asks
        #[arg(value_name = "supports RENDERER")]
        asked: Vec<String>,
    },
    /// Print the JSON Schema of a topic, or of scenarios
    #[command(after_help = "Example: axlewright schema traction")]
    Schema {
        /// The topic; left out: scenarios with every field
        topic: Option<String>,
    },
    /// Write a commented scenario to start from
    #[command(after_help = "Example: axlewright new my-car.toml --topic traction")]
    New {
        /// The file to write; it must not exist
        scenario: PathBuf,
        /// The topic whose fields it lists
        #[arg(long, default_value = "load_transfer")]
        topic: String,
    },
    /// Print the completions of a shell
    #[command(after_help = "Example: axlewright completions bash")]
    Completions {
        /// The shell
        #[arg(value_enum)]
        shell: clap_complete::Shell,
    },
    /// Print the manual page, or write one for every command
    #[command(after_help = "Example: axlewright manual --out man")]
    Manual {
        /// Folder for a page of every command
        #[arg(long)]
        out: Option<PathBuf>,
    },
}

#[derive(Subcommand)]
enum TalkCommand {
    /// Write a commented talk to start from
    #[command(after_help = "Example: axlewright talk new my-talk.toml")]
    New {
        /// The file to write; it must not exist
        talk: PathBuf,
    },
    /// Compute every value of a talk and tell each fault by step and field
    #[command(after_help = "Example: axlewright talk check my-talk.toml")]
    Check {
        /// Talk file, TOML or JSON
        talk: PathBuf,
    },
    /// Build one HTML file that holds the talk and needs nothing else
    #[command(after_help = "Example: axlewright talk build my-talk.toml -o my-talk.html")]
    Build {
        /// Talk file, TOML or JSON
        talk: PathBuf,
        /// File to write
        #[arg(short, long)]
        output: PathBuf,
    },
}

#[derive(Args)]
struct QuestionArgs {
    #[arg(help = topics())]
    topic: String,
    /// Scenario file, TOML or JSON; "-" is the standard input
    scenario: Option<PathBuf>,
    /// A field and its value, on top of the scenario: field=value
    #[arg(long = "set", value_name = "FIELD=VALUE")]
    settings: Vec<String>,
    /// Units of what is printed for people; files of numbers are SI
    #[arg(long, value_enum, default_value = "si")]
    units: Units,
    /// Language of what is printed for people: en, de, es
    #[arg(long, default_value = "en")]
    lang: String,
}

/// Units of people.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Units {
    /// Metric
    Si,
    /// Customary in the United States
    Us,
}

/// Help of an argument that names a topic.
fn topics() -> String {
    let names: Vec<String> = topic::TOPICS.iter().map(|topic| topic.slug()).collect();
    format!("The topic: {}", names.join(", "))
}

/// How a command ends.
enum Failure {
    /// The input was refused.
    Input(String),
    /// The machine failed.
    Machine(String),
}

impl Failure {
    fn input(error: impl Display) -> Self {
        Self::Input(error.to_string())
    }

    fn machine(error: impl Display) -> Self {
        Self::Machine(error.to_string())
    }
}

/// Runs the program.
pub(crate) fn run() -> ExitCode {
    let cli = match Cli::try_parse() {
        Ok(cli) => cli,
        Err(error) => return refuse_arguments(&error),
    };
    match commands::run(cli.command) {
        Ok(()) => ExitCode::SUCCESS,
        Err(Failure::Input(line)) => {
            complain(&line);
            ExitCode::from(2)
        }
        Err(Failure::Machine(line)) => {
            complain(&line);
            ExitCode::FAILURE
        }
    }
}

/// Says on one line what went wrong.
fn complain(line: &str) {
    let colour = ink::allowed(&io::stderr());
    eprintln!("{} {line}", ink::red("axlewright:", colour));
}

/// Prints on the standard output. A reader that has gone away (`| head`) is no failure.
fn print(text: &str) -> Result<(), Failure> {
    match io::stdout().lock().write_all(text.as_bytes()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => Err(Failure::machine(error)),
        _ => Ok(()),
    }
}

/// Tells the reader something that is no result.
fn say(line: &str) {
    eprintln!("{line}");
}

/// The language of a tag. One that is not known is refused: English would be a guess.
fn language(tag: &str) -> Result<Lang, Failure> {
    Lang::known(tag).ok_or_else(|| {
        Failure::input(Problem::UnknownWord {
            field: "lang".into(),
            value: tag.chars().take(40).collect(),
            allowed: Lang::ALL.map(Lang::tag).to_vec(),
        })
    })
}

/// A refusal as one sentence of a language, on one line.
fn refused(problem: &Problem, lang: Lang) -> Failure {
    Failure::Input(scenario_file::one_line(&problem.sentence(lang)))
}

/// The scenario of a topic: a file, settings on top of it, completed where neither names a vehicle.
fn gather(
    topic: &Topic,
    file: Option<&Path>,
    settings: &[String],
    lang: Lang,
) -> Result<Scenario, Failure> {
    scenario_file::gather(topic, file, settings).map_err(|error| match error {
        ScenarioError::Refused(problem) => refused(&problem, lang),
        other => Failure::input(other),
    })
}

fn system_of(units: Units) -> System {
    match units {
        Units::Si => System::Si,
        Units::Us => System::Us,
    }
}

/// Help and version go out as clap prints them; a refused argument is told in one line.
fn refuse_arguments(error: &clap::Error) -> ExitCode {
    if matches!(
        error.kind(),
        ErrorKind::DisplayHelp
            | ErrorKind::DisplayVersion
            | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand
    ) {
        let shown = error.print().is_ok();
        let asked = error.kind() != ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand;
        return if shown && asked {
            ExitCode::SUCCESS
        } else {
            ExitCode::from(2)
        };
    }
    let told = error.to_string();
    let line: Vec<&str> = told
        .lines()
        .map(str::trim)
        .filter(|line| {
            !line.is_empty() && !line.starts_with("Usage") && !line.starts_with("For more")
        })
        .collect();
    let line = line.join(" ");
    complain(line.trim_start_matches("error: "));
    ExitCode::from(2)
}
