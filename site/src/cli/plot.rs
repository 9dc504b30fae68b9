//! The command `plot`.

use super::figure::{FileArgs, LookArgs};
use super::{Failure, Units, language, print, refused, system_of, topics};
use axlewright_core::topic;
use axlewright_site::study::{PlotAsked, PlotKind, StudyError, plot};
use axlewright_widgets::figure::SvgOptions;
use axlewright_widgets::figure::svg::FILE_FONT;
use clap::Args;
use std::path::PathBuf;

/// What `plot` is told.
#[derive(Args)]
pub(super) struct PlotArgs {
    #[arg(help = topics())]
    topic: String,
    /// The CSV file that `study` wrote
    table: PathBuf,
    /// Kind of plot
    #[arg(long, value_enum, default_value = "contour")]
    kind: PlotKind,
    /// Column along; the first input if left out
    #[arg(long)]
    x: Option<String>,
    /// Column up; the second input, or the first value for points, if left out
    #[arg(long)]
    y: Option<String>,
    /// Column of the value; the first if left out
    #[arg(long)]
    z: Option<String>,
    /// Only rows in which a column holds a value
    #[arg(long = "where", value_name = "COLUMN=VALUE")]
    only: Vec<String>,
    /// Units of what is printed for people
    #[arg(long, value_enum, default_value = "si")]
    units: Units,
    /// Language: en, de, es
    #[arg(long, default_value = "en")]
    lang: String,
    #[command(flatten)]
    look: LookArgs,
    #[command(flatten)]
    file: FileArgs,
    /// Print the text description. With -o the plot is written too
    #[arg(long)]
    alt: bool,
}

/// Runs the command.
pub(super) fn run(args: &PlotArgs) -> Result<(), Failure> {
    args.file.check()?;
    let lang = language(&args.lang)?;
    let topic = topic::find(&args.topic).map_err(|problem| refused(&problem, lang))?;
    let size = args.look.size()?;
    let only = args.only.iter().map(|text| match text.split_once('=') {
        Some((column, value)) => Ok((column.trim().to_owned(), value.trim().to_owned())),
        None => Err(Failure::Input(format!(
            "--where \"{text}\" is no condition; allowed: column=value, for example surface.kind=ice"
        ))),
    });
    let asked = PlotAsked {
        kind: args.kind,
        x: args.x.as_deref(),
        y: args.y.as_deref(),
        z: args.z.as_deref(),
        only: only.collect::<Result<_, _>>()?,
        lang,
        system: system_of(args.units),
        size: (
            size.units().map_err(Failure::input)?,
            size.height_units().map_err(Failure::input)?,
        ),
    };
    let options = SvgOptions {
        prefix: &format!("{}-plot", topic.name),
        theme: args.look.theme(),
        font_family: FILE_FONT,
        metadata: &metadata(args, topic.name),
        sized: true,
    };
    let plotted = plot(topic, &args.table, &asked, &options).map_err(|error| match error {
        StudyError::File { .. } => Failure::machine(error),
        _ => Failure::input(error),
    })?;
    if args.alt {
        print(&(plotted.description + "\n"))?;
        if args.file.output.is_none() {
            return Ok(());
        }
    }
    let svg = args.look.finish(plotted.svg, &size)?;
    args.file.write(svg, &size)
}

/// What a plot says of itself. The table is not in it, so it cannot be made again from itself alone.
fn metadata(args: &PlotArgs, topic: &str) -> String {
    let version = env!("CARGO_PKG_VERSION");
    let name = args.table.file_name().unwrap_or_default().to_string_lossy();
    format!(
        "# axlewright {version} plot {topic} of the table {name}\n\
         # Cite as: Axlewright {version}, study of {topic}. Values of the table are SI.\n"
    )
}
