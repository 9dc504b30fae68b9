//! The functions that show case studies: each is a brief in a scenario file of its own.

use super::functions::{element, given, picture, say, wrong};
use super::{Asset, Context};
use crate::scenario_file;
use axlewright_core::{Scenario, choice, topic};
use minijinja::value::Kwargs;
use minijinja::{Environment, Error};
use std::path::PathBuf;
use std::sync::{Arc, Mutex};

/// Adds the functions to an environment.
pub(super) fn add(environment: &mut Environment, context: &Arc<Context>) {
    let c = context.clone();
    environment.add_function("case_say", move |name: &str, path: &str| {
        say(&of(&c, name, None)?, path)
    });
    let c = context.clone();
    environment.add_function("case_given", move |name: &str, path: &str| {
        given(&of(&c, name, None)?, path)
    });
    let c = context.clone();
    environment.add_function(
        "case_with",
        move |name: &str, path: &str, settings: Kwargs| say(&of(&c, name, Some(&settings))?, path),
    );
    let c = context.clone();
    environment.add_function("case_figure", move |name: &str, view: &str| {
        let case = of(&c, name, None)?;
        let report = case.report.as_ref().ok_or_else(|| wrong("no answer"))?;
        let html = picture(&case, &report.scenario, view)?;
        keep(&c, &case)?;
        Ok::<String, Error>(format!("<figure>{html}</figure>"))
    });
    let c = context.clone();
    environment.add_function("case_element", move |name: &str, attributes: Kwargs| {
        let case = of(&c, name, None)?;
        let html = element(&case, &attributes)?;
        keep(&c, &case)?;
        Ok::<String, Error>(html)
    });
    let c = context.clone();
    environment.add_function("case_file", move |name: &str| file(&c, name));
}

fn path_of(context: &Context, name: &str) -> PathBuf {
    context.cases.join(name).with_extension("toml")
}

/// A case with its answer, with some fields changed where settings are given; two underscores stand for
/// the dot, and an empty text takes a field away.
fn of(context: &Context, name: &str, settings: Option<&Kwargs>) -> Result<Context, Error> {
    let path = path_of(context, name);
    let mut scenario: Scenario = scenario_file::read(&path).map_err(|e| wrong(e.to_string()))?;
    for field in settings.iter().flat_map(|settings| settings.args()) {
        let value: String = settings.map_or(Ok(String::new()), |s| s.get(field))?;
        let path = field.replace("__", ".");
        if value.is_empty() {
            scenario.unset(&path);
        } else {
            scenario
                .set(&path, &value)
                .map_err(|p| wrong(p.to_string()))?;
        }
    }
    let topic = topic::find(choice::TOPIC.name).map_err(|p| wrong(p.to_string()))?;
    let report = topic.report(&scenario).map_err(|p| wrong(p.to_string()))?;
    Ok(Context {
        slug: format!("case-{name}"),
        cases: context.cases.clone(),
        report: Some(report),
        common: context.common.clone(),
        assets: Mutex::default(),
    })
}

/// Keeps the files that a case needs among those of the page.
fn keep(context: &Context, case: &Context) -> Result<(), Error> {
    let mut new = case.assets.lock().map_err(|_| wrong("assets are locked"))?;
    for Asset { path, content } in new.drain(..) {
        context.keep(path, content)?;
    }
    Ok(())
}

/// A link to the scenario file of a case, which is put beside the page.
fn file(context: &Context, name: &str) -> Result<String, Error> {
    let source = path_of(context, name);
    let content = std::fs::read_to_string(&source)
        .map_err(|error| wrong(format!("{}: {error}", source.display())))?;
    let path = format!("cases/{name}.toml");
    context.keep(path.clone(), content)?;
    Ok(format!("<a href=\"{path}\" download>{name}.toml</a>"))
}
