//! The command `figure`.

use super::{Failure, Units, gather, language, print, refused, say, system_of, topics};
use axlewright_core::Scenario;
use axlewright_core::topic::{self, Topic};
use axlewright_site::figure::paper::{self, Paper, Size, SizeProblem, USUAL_TEXT_PT};
use axlewright_site::figure::{self, FigureAsked, MakeError, again, make};
use axlewright_site::output::write_whole;
use axlewright_widgets::figure::Theme;
use clap::{Args, Parser, ValueEnum};
use std::path::{Path, PathBuf};

/// What `figure` is told.
#[derive(Args)]
pub(super) struct FigureArgs {
    #[arg(required_unless_present = "again", help = topics())]
    topic: Option<String>,
    /// Scenario file, TOML or JSON; "-" is the standard input
    scenario: Option<PathBuf>,
    /// A field and its value, on top of the scenario: field=value
    #[arg(long = "set", value_name = "FIELD=VALUE")]
    settings: Vec<String>,
    /// Units of what is printed for people
    #[arg(long, value_enum, default_value = "si")]
    units: Units,
    /// Language: en, de, es
    #[arg(long, default_value = "en")]
    lang: String,
    /// side, plan or chart; the topic's own first view if left out
    #[arg(long, default_value = "")]
    view: String,
    #[command(flatten)]
    look: LookArgs,
    #[command(flatten)]
    file: FileArgs,
    /// Print the text description: for the alt text of a page. With -o the figure is written too
    #[arg(long)]
    alt: bool,
    /// Print a caption computed from the answer. With -o the figure is written too
    #[arg(long)]
    caption: bool,
    /// Make the figure of an SVG, PNG or PDF again from what it says of itself
    #[arg(
        long,
        value_name = "FILE",
        conflicts_with_all = ["topic", "settings", "view", "style", "width", "height", "text_size", "outline_text"]
    )]
    again: Option<PathBuf>,
}

/// How a drawing looks.
#[derive(Args)]
pub(super) struct LookArgs {
    /// Colours; print is safe in greyscale
    #[arg(long, value_enum, default_value = "light")]
    style: Style,
    /// Width on paper with its unit (84mm, 3.3in), or a number of the figure's own units, in which text
    /// is 13 high; 1000 if left out
    #[arg(long)]
    width: Option<String>,
    /// Height on paper with its unit; as high as the figure is if left out
    #[arg(long)]
    height: Option<String>,
    /// Size of text on paper; 8pt if left out
    #[arg(long)]
    text_size: Option<String>,
    /// Draw letters as shapes: the file then needs no font
    #[arg(long)]
    outline_text: bool,
}

/// What file is written.
#[derive(Args)]
pub(super) struct FileArgs {
    /// Pixels of a PNG for each unit of the figure
    #[arg(long, default_value_t = 2.0)]
    scale: f32,
    /// Dots per inch of a PNG that has its size in millimetres; 300 if left out
    #[arg(long)]
    dpi: Option<f32>,
    /// File to write, .svg, .png or .pdf; SVG on the standard output if left out
    #[arg(short, long)]
    pub(super) output: Option<PathBuf>,
}

/// Colours of a figure.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum Style {
    /// For a light page
    Light,
    /// For a dark page
    Dark,
    /// For print, safe in greyscale
    Print,
}

/// The arguments that a figure names as those that made it.
#[derive(Parser)]
struct MadeWith {
    #[command(flatten)]
    figure: FigureArgs,
}

/// Runs the command.
pub(super) fn run(args: &FigureArgs) -> Result<(), Failure> {
    args.file.check()?;
    let Some(path) = &args.again else {
        let lang = language(&args.lang)?;
        let name = args.topic.as_deref().unwrap_or_default();
        let topic = topic::find(name).map_err(|problem| refused(&problem, lang))?;
        let scenario = gather(topic, args.scenario.as_deref(), &args.settings, lang)?;
        return draw(topic, &scenario, args, args);
    };
    let made = again::read(path).map_err(Failure::input)?;
    let named = std::iter::once("figure".to_owned()).chain(made.arguments);
    let old = MadeWith::try_parse_from(named).map_err(|_| {
        Failure::Input(format!(
            "again = {}: it was made with options that are not known here, by version {}; \
             allowed: a figure of version {}",
            path.display(),
            made.version,
            env!("CARGO_PKG_VERSION")
        ))
    })?;
    if made.version != env!("CARGO_PKG_VERSION") {
        say(&format!(
            "{} was made by version {}; this is version {}, so the figure may differ",
            path.display(),
            made.version,
            env!("CARGO_PKG_VERSION")
        ));
    }
    let name = old.figure.topic.as_deref().unwrap_or_default();
    let topic = topic::find(name).map_err(Failure::input)?;
    draw(topic, &made.scenario, &old.figure, args)
}

/// Draws a figure as `look` has it, and writes it as `file` has it.
fn draw(
    topic: &'static Topic,
    scenario: &Scenario,
    look: &FigureArgs,
    file: &FigureArgs,
) -> Result<(), Failure> {
    let lang = language(&look.lang)?;
    let size = look.look.size()?;
    let made = make(&FigureAsked {
        topic,
        scenario,
        view: &look.view,
        theme: look.look.theme(),
        size,
        outline: look.look.outline_text,
        lang,
        system: system_of(look.units),
    });
    let figure = made.map_err(|error| match error {
        MakeError::Refused(problem) => refused(&problem, lang),
        MakeError::Size(problem) => Failure::input(problem),
        other => Failure::machine(other),
    })?;
    if file.alt {
        print(&(figure.alt + "\n"))?;
    }
    if file.caption {
        print(&(figure.caption + "\n"))?;
    }
    if (file.alt || file.caption) && file.file.output.is_none() {
        return Ok(());
    }
    file.file.write(figure.svg, &size)
}

impl LookArgs {
    pub(super) fn theme(&self) -> Theme {
        match self.style {
            Style::Light => Theme::Light,
            Style::Dark => Theme::Dark,
            Style::Print => Theme::Print,
        }
    }

    /// The size: on paper where the width has a unit.
    pub(super) fn size(&self) -> Result<Size, Failure> {
        let width = self.width.as_deref().unwrap_or("1000").trim();
        if let Ok(units) = width.parse::<f64>() {
            for (field, given) in [("height", &self.height), ("text-size", &self.text_size)] {
                if let Some(value) = given {
                    return Err(Failure::Input(format!(
                        "{field} = \"{value}\" needs a width on paper; allowed: with --width 84mm"
                    )));
                }
            }
            return Ok(Size::Units(units));
        }
        let height = self.height.as_deref();
        let height = height.map(|text| paper::millimetres("height", text));
        Ok(Size::Paper(Paper {
            width_mm: paper::millimetres("width", width).map_err(Failure::input)?,
            height_mm: height.transpose().map_err(Failure::input)?,
            text_pt: self.text_pt()?,
        }))
    }

    fn text_pt(&self) -> Result<f64, Failure> {
        let Some(text) = self.text_size.as_deref() else {
            return Ok(USUAL_TEXT_PT);
        };
        let number = text.trim().trim_end_matches("pt").trim_end().parse::<f64>();
        number
            .ok()
            .filter(|points| (5.0..=16.0).contains(points))
            .ok_or_else(|| {
                Failure::input(SizeProblem {
                    field: "text-size",
                    value: format!("\"{text}\""),
                    allowed: "5pt to 16pt".into(),
                })
            })
    }

    /// Makes shapes of the letters where that is asked for, and writes the size on paper.
    pub(super) fn finish(&self, svg: String, size: &Size) -> Result<String, Failure> {
        figure::finish(svg, size, self.outline_text).map_err(Failure::machine)
    }
}

/// What kind of file an output name asks for.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Svg,
    Png,
    Pdf,
}

impl FileArgs {
    fn kind(&self) -> Result<Kind, Failure> {
        let Some(path) = &self.output else {
            return Ok(Kind::Svg);
        };
        match path.extension().and_then(|e| e.to_str()) {
            Some("svg") => Ok(Kind::Svg),
            Some("png") => Ok(Kind::Png),
            Some("pdf") => Ok(Kind::Pdf),
            _ => Err(Failure::Input(format!(
                "output = \"{}\" has no known ending; allowed: .svg, .png, .pdf",
                path.display()
            ))),
        }
    }

    /// Refuses what no figure can be written with, before anything is computed.
    pub(super) fn check(&self) -> Result<(), Failure> {
        self.kind()?;
        let dpi = self.dpi.unwrap_or(300.0);
        for (name, value, min, max) in
            [("scale", self.scale, 0.25, 8.0), ("dpi", dpi, 50.0, 2400.0)]
        {
            if !(min..=max).contains(&value) {
                return Err(Failure::Input(format!(
                    "{name} = {value} is out of range; allowed: {min} to {max}"
                )));
            }
        }
        Ok(())
    }

    /// Writes an SVG as the file that is asked for.
    pub(super) fn write(&self, svg: String, size: &Size) -> Result<(), Failure> {
        let on_paper = matches!(size, Size::Paper(_));
        if self.dpi.is_some() && !on_paper {
            return Err(Failure::Input(
                "dpi needs a width on paper; allowed: with --width 84mm".into(),
            ));
        }
        let Some(path) = &self.output else {
            return print(&svg);
        };
        let bytes = match self.kind()? {
            Kind::Svg => svg.into_bytes(),
            Kind::Png if on_paper => {
                figure::png_at(&svg, self.dpi.unwrap_or(300.0)).map_err(Failure::machine)?
            }
            Kind::Png => figure::png(&svg, self.scale).map_err(Failure::machine)?,
            Kind::Pdf => figure::pdf(&svg).map_err(Failure::machine)?,
        };
        write(path, &bytes)
    }
}

/// Writes a file whole, or says why not.
pub(super) fn write(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    write_whole(path, bytes)
        .map_err(|error| Failure::Machine(format!("{} cannot be written: {error}", path.display())))
}
