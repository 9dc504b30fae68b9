//! The commands of the program `axlewright`.
//!
//! Exit codes: 0 done; 1 the machine failed (a file cannot be written, a build failed); 2 the input
//! was refused.

mod commands;

use axlewright_site::answer::AnswerFormat;
use clap::error::ErrorKind;
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::fmt::Display;
use std::path::PathBuf;
use std::process::ExitCode;

/// Explains why an electric car has one, two, three or four motors, with numbers that are computed.
#[derive(Parser)]
#[command(name = "axlewright", version, about, disable_help_subcommand = true)]
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
    /// Draw the figure of a topic as SVG or PNG
    #[command(
        after_help = "Example: axlewright figure traction --set vehicle.base=corrie -o traction.svg"
    )]
    Figure {
        #[command(flatten)]
        question: QuestionArgs,
        /// side, plan or chart; the topic's own first view if left out
        #[arg(long, default_value = "")]
        view: String,
        /// Colours
        #[arg(long, value_enum, default_value = "light")]
        style: Style,
        /// Width of the figure in its own units; text is 13 units high
        #[arg(long, default_value_t = axlewright_widgets::figure::WIDE)]
        width: f64,
        /// Pixels of a PNG for each unit of the figure
        #[arg(long, default_value_t = 2.0)]
        scale: f32,
        /// File to write, .svg or .png; SVG on the standard output if left out
        #[arg(short, long)]
        output: Option<PathBuf>,
        /// Print the text description instead of the figure
        #[arg(long)]
        alt: bool,
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
}

#[derive(Args)]
struct QuestionArgs {
    /// The topic: load-transfer, traction, motor-split, launch, turn-in-place
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

/// Colours of a figure.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Style {
    /// For a light page
    Light,
    /// For a dark page
    Dark,
    /// For print, safe in greyscale
    Print,
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
            eprintln!("axlewright: {line}");
            ExitCode::from(2)
        }
        Err(Failure::Machine(line)) => {
            eprintln!("axlewright: {line}");
            ExitCode::FAILURE
        }
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
    eprintln!("axlewright: {}", line.trim_start_matches("error: "));
    ExitCode::from(2)
}
