//! What each command does.

use super::{Command, Failure, QuestionArgs, Style, Units};
use axlewright_core::topic::{self, Topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario, schema};
use axlewright_site::answer::{self, AnswerFormat};
use axlewright_site::output::write_whole;
use axlewright_site::scenario_file::ScenarioError;
use axlewright_site::{figure, scenario_file, serve, site, toolchain};
use axlewright_widgets::figure::Theme;
use axlewright_widgets::figure_file::figure_file;
use axlewright_widgets::visual::{Look, Visual};
use std::io::{self, Write};
use std::path::Path;

pub(super) fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Serve { port } => serve_site(port),
        Command::Build { trunk: true, .. } => build_for_trunk(),
        Command::Build { out, .. } => build_site(&out),
        Command::Answer { question, format } => print_answer(&question, format),
        Command::Figure {
            question,
            view,
            style,
            width,
            scale,
            output,
            alt,
        } => {
            let wanted = Wanted {
                view,
                style,
                width,
                scale,
            };
            draw(&question, &wanted, output.as_deref(), alt)
        }
        Command::Schema { topic } => print_schema(topic.as_deref()),
        Command::New { scenario, topic } => new_scenario(&scenario, &topic),
    }
}

/// Prints on the standard output. A reader that has gone away (`| head`) is no failure.
fn print(text: &str) -> Result<(), Failure> {
    match io::stdout().lock().write_all(text.as_bytes()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => Err(Failure::machine(error)),
        _ => Ok(()),
    }
}

fn say(line: &str) {
    eprintln!("{line}");
}

fn build_site(out: &Path) -> Result<(), Failure> {
    let root = toolchain::workspace_root().map_err(Failure::machine)?;
    let report = site::build(&root, out, &mut say).map_err(Failure::machine)?;
    print(&report.summary())
}

/// The site in Trunk's staging folder; every page carries the live-reload script that Trunk put into its
/// own page.
fn build_for_trunk() -> Result<(), Failure> {
    let out = std::env::var_os("TRUNK_STAGING_DIR")
        .map(std::path::PathBuf::from)
        .ok_or_else(|| Failure::Input("--trunk works only when Trunk calls it".into()))?;
    let own_page = std::fs::read_to_string(out.join("index.html")).unwrap_or_default();
    build_site(&out)?;
    site::add_scripts(&out, &own_page).map_err(Failure::machine)
}

fn serve_site(port: Option<u16>) -> Result<(), Failure> {
    let root = toolchain::workspace_root().map_err(Failure::machine)?;
    let out = root.join("target/site");
    site::build(&root, &out, &mut say).map_err(Failure::machine)?;
    let _watch =
        site::watch(&root, &out, &mut |line| eprintln!("{line}")).map_err(Failure::machine)?;
    let ready = |url: &str| {
        let line = format!("{url}\n");
        let mut terminal = io::stdout().lock();
        let _ = terminal
            .write_all(line.as_bytes())
            .and_then(|()| terminal.flush());
    };
    match serve::serve(out, port, ready) {
        Ok(never) => match never {},
        Err(error) => Err(Failure::machine(error)),
    }
}

/// What is asked: topic, scenario and the language of the answer.
struct Asked {
    topic: &'static Topic,
    scenario: Scenario,
    lang: Lang,
}

fn asked(args: &QuestionArgs) -> Result<Asked, Failure> {
    let lang = language(&args.lang)?;
    let topic = topic::find(&args.topic).map_err(|problem| refused(&problem, lang))?;
    let scenario = scenario_file::gather(topic, args.scenario.as_deref(), &args.settings).map_err(
        |error| match error {
            ScenarioError::Refused(problem) => refused(&problem, lang),
            other => Failure::input(other),
        },
    )?;
    Ok(Asked {
        topic,
        scenario,
        lang,
    })
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

fn system_of(units: Units) -> System {
    match units {
        Units::Si => System::Si,
        Units::Us => System::Us,
    }
}

fn print_answer(args: &QuestionArgs, format: AnswerFormat) -> Result<(), Failure> {
    let asked = asked(args)?;
    let report = asked
        .topic
        .report(&asked.scenario)
        .map_err(|problem| refused(&problem, asked.lang))?;
    let text = answer::print(&report, format, asked.lang, system_of(args.units))
        .map_err(Failure::machine)?;
    print(&text)
}

/// How a figure is wanted.
struct Wanted {
    view: String,
    style: Style,
    width: f64,
    scale: f32,
}

/// What kind of file an output name asks for.
#[derive(PartialEq)]
enum FileKind {
    Svg,
    Png,
}

fn kind_of(output: Option<&Path>) -> Result<FileKind, Failure> {
    let Some(path) = output else {
        return Ok(FileKind::Svg);
    };
    match path.extension().and_then(|e| e.to_str()) {
        Some("svg") => Ok(FileKind::Svg),
        Some("png") => Ok(FileKind::Png),
        _ => Err(Failure::Input(format!(
            "output = \"{}\" has no known ending; allowed: .svg, .png",
            path.display()
        ))),
    }
}

fn draw(
    args: &QuestionArgs,
    wanted: &Wanted,
    output: Option<&Path>,
    alt: bool,
) -> Result<(), Failure> {
    let kind = kind_of(output)?;
    let in_range = |name: &str, value: f64, min: f64, max: f64| {
        if (min..=max).contains(&value) {
            return Ok(());
        }
        Err(Failure::Input(format!(
            "{name} = {value} is out of range; allowed: {min} to {max}"
        )))
    };
    in_range("width", wanted.width, 320.0, 4000.0)?;
    in_range("scale", f64::from(wanted.scale), 0.25, 8.0)?;
    let Asked {
        topic,
        scenario,
        lang,
    } = asked(args)?;
    let refused = |problem: Problem| refused(&problem, lang);
    let visual = Visual::of(topic)
        .ok_or_else(|| Failure::Machine(format!("{} has no figure", topic.name)))?;
    let view = visual.view(&wanted.view).map_err(refused)?;
    let look = Look {
        width: wanted.width,
        lang,
        system: system_of(args.units),
        ..Look::default()
    };
    if alt {
        let drawing = visual.draw(&scenario, view, &look).map_err(refused)?;
        return print(&format!("{}. {}\n", drawing.title(), drawing.description()));
    }
    let theme = match wanted.style {
        Style::Light => Theme::Light,
        Style::Dark => Theme::Dark,
        Style::Print => Theme::Print,
    };
    let svg = figure_file(visual, &scenario, view, &look, theme).map_err(refused)?;
    let Some(path) = output else {
        return print(&svg);
    };
    let bytes = match kind {
        FileKind::Svg => svg.into_bytes(),
        FileKind::Png => figure::png(&svg, wanted.scale).map_err(Failure::machine)?,
    };
    write_whole(path, &bytes)
        .map_err(|error| Failure::Machine(format!("{} cannot be written: {error}", path.display())))
}

fn print_schema(topic: Option<&str>) -> Result<(), Failure> {
    let tree = match topic {
        Some(name) => schema::of_topic(topic::find(name).map_err(Failure::input)?),
        None => schema::of_scenario(),
    };
    let text = serde_json::to_string_pretty(&tree).map_err(Failure::machine)?;
    print(&(text + "\n"))
}

fn new_scenario(path: &Path, topic: &str) -> Result<(), Failure> {
    let topic = topic::find(topic).map_err(Failure::input)?;
    if path.exists() {
        return Err(Failure::Input(format!(
            "{} is there already; allowed: the name of a new file",
            path.display()
        )));
    }
    write_whole(path, schema::starter(topic).as_bytes())
        .map_err(|error| Failure::Machine(format!("{} cannot be written: {error}", path.display())))
}
