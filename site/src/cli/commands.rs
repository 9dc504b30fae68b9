//! What each command does.

use super::figure::write;
use super::{
    Command, Failure, QuestionArgs, document, figure, gather, ink, language, plot, print, refused,
    say, shell, study, system_of,
};
use axlewright_core::schema;
use axlewright_core::topic;
use axlewright_site::answer::{self, AnswerFormat};
use axlewright_site::{lines, serve, site, toolchain};
use std::io::{self, Write};
use std::path::Path;

pub(super) fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Serve { port } => serve_site(port),
        Command::Build { trunk: true, .. } => build_for_trunk(),
        Command::Build { out, .. } => build_site(&out),
        Command::Answer { question, format } => print_answer(&question, format),
        Command::Answers { lang } => answer_lines(&lang),
        Command::Figure(args) => figure::run(&args),
        Command::Study(args) => study::run(&args),
        Command::Plot(args) => plot::run(&args),
        Command::Fill { document, output } => document::fill_file(&document, output.as_deref()),
        Command::Mdbook { asked } => document::mdbook(&asked),
        Command::Schema { topic } => print_schema(topic.as_deref()),
        Command::Talk(command) => super::talk::run(command),
        Command::New { scenario, topic } => new_scenario(&scenario, &topic),
        Command::Completions { shell } => shell::completions(shell),
        Command::Manual { out } => shell::manual(out.as_deref()),
    }
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

fn print_answer(args: &QuestionArgs, format: AnswerFormat) -> Result<(), Failure> {
    let lang = language(&args.lang)?;
    let topic = topic::find(&args.topic).map_err(|problem| refused(&problem, lang))?;
    let scenario = gather(topic, args.scenario.as_deref(), &args.settings, lang)?;
    let report = topic
        .report(&scenario)
        .map_err(|problem| refused(&problem, lang))?;
    let text = answer::print(&report, format, lang, system_of(args.units));
    let text = text.map_err(Failure::machine)?;
    let colour = format == AnswerFormat::Text && ink::allowed(&io::stdout());
    print(&ink::titled(&text, colour))
}

fn answer_lines(lang: &str) -> Result<(), Failure> {
    let (mut questions, mut answers) = (io::stdin().lock(), io::stdout().lock());
    lines::answer_lines(&mut questions, &mut answers, language(lang)?).map_err(Failure::machine)
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
    write(path, schema::starter(topic).as_bytes())
}
