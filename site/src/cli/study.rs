//! The command `study`.

use super::{Failure, gather, ink, language, print, refused, topics};
use axlewright_core::topic;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, Tree};
use axlewright_site::scenario_file::{self, ScenarioError};
use axlewright_site::study::{self, Asked, Kept, Plan, StudyError, Tally, summary};
use axlewright_site::words::get;
use clap::Args;
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressState, ProgressStyle};
use std::fmt;
use std::io::{self, IsTerminal};
use std::path::PathBuf;

/// What `study` is told.
#[derive(Args)]
pub(super) struct StudyArgs {
    #[arg(help = topics())]
    topic: String,
    /// Scenario file, TOML or JSON. Its table `study` may say vary, want, design, points and seed
    scenario: Option<PathBuf>,
    /// A field and its value, on top of the scenario: field=value
    #[arg(long = "set", value_name = "FIELD=VALUE")]
    settings: Vec<String>,
    /// An input and its values: from:to:count, or a list with commas
    #[arg(long, value_name = "FIELD=FROM:TO:COUNT")]
    vary: Vec<String>,
    /// A value of the answer, such as limits.R1.acceleration; * is each layout. The headlines if left out
    #[arg(long, value_name = "PATH")]
    want: Vec<String>,
    /// grid: every combination; latin: a Latin hypercube, seeded
    #[arg(long)]
    design: Option<String>,
    /// Points of a Latin hypercube; 1000 if left out
    #[arg(long)]
    points: Option<u64>,
    /// Seed of a Latin hypercube; 1 if left out
    #[arg(long)]
    seed: Option<u64>,
    /// CSV file to write, SI. After a kill the same command goes on. Standard output if left out
    #[arg(short, long)]
    output: Option<PathBuf>,
    /// Throw away what an unfinished study left
    #[arg(long)]
    fresh: bool,
    /// Threads; one for each core if left out
    #[arg(long)]
    threads: Option<usize>,
    /// Language of the summary: en, de, es
    #[arg(long, default_value = "en")]
    lang: String,
}

fn failed(error: StudyError, lang: Lang) -> Failure {
    match error {
        StudyError::Scenario(problem) => refused(&problem, lang),
        StudyError::Refused { .. } => Failure::input(error),
        _ => Failure::machine(error),
    }
}

/// Runs the command.
pub(super) fn run(args: &StudyArgs) -> Result<(), Failure> {
    let lang = language(&args.lang)?;
    let plan = plan(args, lang)?;
    let threads = args.threads.unwrap_or_else(study::usual_threads);
    if !(1..=1024).contains(&threads) {
        return Err(Failure::Input(format!(
            "threads = {threads} is out of range; allowed: 1 to 1024"
        )));
    }
    let names: Vec<String> = plan.wanted.iter().map(|w| w.path(plan.topic)).collect();
    let mut tally = Tally::new(&names);
    let failed = |error| failed(error, lang);
    let Some(path) = &args.output else {
        print(&(plan.columns().join(",") + "\r\n"))?;
        let bar = ProgressBar::hidden();
        let done = study::run(
            &plan,
            0,
            threads,
            &mut io::stdout().lock(),
            &mut tally,
            &mut |rows| bar.set_position(rows),
        );
        done.map_err(failed)?;
        eprint!("{}", summary(&tally, lang));
        return Ok(());
    };
    let mut kept = Kept::open(path, &plan, args.fresh, &mut tally).map_err(failed)?;
    let first = kept.rows;
    let bar = bar(&plan, first, lang);
    let done = study::run(&plan, first, threads, &mut kept, &mut tally, &mut |rows| {
        bar.set_position(rows)
    });
    bar.finish_and_clear();
    done.map_err(failed)?;
    kept.finish().map_err(failed)?;
    print(&summary(&tally, lang))
}

fn plan(args: &StudyArgs, lang: Lang) -> Result<Plan, Failure> {
    let topic = topic::find(&args.topic).map_err(|problem| refused(&problem, lang))?;
    let from_options = Asked {
        vary: args
            .vary
            .iter()
            .map(|text| setting(text))
            .collect::<Result<_, _>>()?,
        want: args.want.clone(),
        design: args.design.clone(),
        points: args.points,
        seed: args.seed,
    };
    let told = |error: ScenarioError| match error {
        ScenarioError::Refused(problem) => refused(&problem, lang),
        other => Failure::input(other),
    };
    let (given, table) = match &args.scenario {
        Some(path) => scenario_file::read_study(path).map_err(told)?,
        None => (Scenario::default(), None),
    };
    let mut scenario = given;
    let overlay = |scenario: &mut Scenario| {
        args.settings
            .iter()
            .try_for_each(|text| scenario_file::set(scenario, text).map_err(told))
    };
    if scenario == Scenario::default() {
        scenario = gather(topic, None, &args.settings, lang)?;
    } else {
        overlay(&mut scenario)?;
    }
    let from_file = table.as_ref().map(|tree: &Tree| Asked::from_tree(tree));
    let from_file = from_file.transpose().map_err(|error| failed(error, lang))?;
    let asked = from_file.unwrap_or_default().overlaid_with(from_options);
    Plan::new(topic, scenario, &asked, lang).map_err(|error| failed(error, lang))
}

fn setting(text: &str) -> Result<(String, String), Failure> {
    text.split_once('=')
        .map(|(path, values)| (path.trim().to_owned(), values.trim().trim_matches('"').to_owned()))
        .ok_or_else(|| {
            Failure::input(format_args!(
                "--vary \"{}\" is not a range; allowed: field=from:to:count, for example vehicle.cg_height=0.4m:0.7m:31",
                scenario_file::one_line(text)
            ))
        })
}

/// A bar with the remaining time, on a terminal alone.
fn bar(plan: &Plan, first: u64, lang: Lang) -> ProgressBar {
    if !io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let shape = if ink::allowed(&io::stderr()) {
        "{bar:30.green}"
    } else {
        "{bar:30}"
    };
    let template = format!(
        "{shape} {{percent}} %  {{human_pos}}/{{human_len}}  {{rate}} {}  {{eta}} {}",
        get(lang, "study.rows_per_second"),
        get(lang, "study.left")
    );
    let bar = ProgressBar::with_draw_target(Some(plan.rows), ProgressDrawTarget::stderr_with_hz(5));
    if let Ok(style) = ProgressStyle::with_template(&template) {
        // The library's own `per_sec` brings four decimals and a unit of its own.
        bar.set_style(
            style.with_key("rate", |state: &ProgressState, out: &mut dyn fmt::Write| {
                let _written = write!(out, "{:.0}", state.per_sec());
            }),
        );
    }
    // What was there before says nothing of the speed.
    bar.set_position(first);
    bar.reset_eta();
    bar
}
