//! What a document may ask for. Every function takes the topic first, and by name: `scenario`, a file
//! beside the document; `set`, fields on top of it; `units`; `lang`.

use super::Markup;
use crate::figure::paper::{self, Paper, Size, USUAL_TEXT_PT};
use crate::figure::{self, Figure, FigureAsked};
use crate::output::write_whole;
use crate::scenario_file::{self, one_line};
use axlewright_core::input::{self, Kind, nearest};
use axlewright_core::topic::{self, Report, Topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, format};
use axlewright_widgets::figure::{Theme, WIDE};
use axlewright_widgets::table::{label_text, value_text};
use minijinja::value::Kwargs;
use minijinja::{Environment, Error, ErrorKind, Value};
use sha2::{Digest, Sha256};
use std::fmt::Display;
use std::path::PathBuf;
use std::sync::Arc;

/// Where a document stands and what it is.
pub(super) struct Place {
    /// Folder of the scenario files.
    pub(super) sources: PathBuf,
    /// Folder of the result.
    pub(super) out: PathBuf,
    pub(super) markup: Markup,
}

/// Folder for figures beside the result.
const FIGURES: &str = "figures";

fn wrong(reason: impl Display) -> Error {
    Error::new(ErrorKind::InvalidOperation, one_line(&reason.to_string()))
}

/// Adds the functions to an environment.
pub(super) fn add(environment: &mut Environment, place: &Arc<Place>) {
    let p = place.clone();
    environment.add_function("value", move |topic: &str, path: &str, options: Kwargs| {
        let question = Question::read(&p, topic, &options)?;
        options.assert_all_used()?;
        question.value(path)
    });
    let p = place.clone();
    environment.add_function("given", move |topic: &str, path: &str, options: Kwargs| {
        let question = Question::read(&p, topic, &options)?;
        options.assert_all_used()?;
        question.given(path)
    });
    let p = place.clone();
    environment.add_function("rows", move |topic: &str, options: Kwargs| {
        let question = Question::read(&p, topic, &options)?;
        options.assert_all_used()?;
        question.rows()
    });
    let p = place.clone();
    environment.add_function(
        "working",
        move |topic: &str, path: &str, options: Kwargs| {
            let question = Question::read(&p, topic, &options)?;
            options.assert_all_used()?;
            question.working(path)
        },
    );
    let p = place.clone();
    environment.add_function("figure", move |topic: &str, options: Kwargs| {
        let ending: Option<String> = options.get("format")?;
        let question = Question::read(&p, topic, &options)?;
        let figure = question.figure(&options)?;
        options.assert_all_used()?;
        question.write(&figure, ending.as_deref().unwrap_or("svg"))
    });
    let p = place.clone();
    environment.add_function("alt", move |topic: &str, options: Kwargs| {
        let question = Question::read(&p, topic, &options)?;
        let figure = question.figure(&options)?;
        options.assert_all_used()?;
        Ok::<_, Error>(p.markup.text(&figure.alt))
    });
    let p = place.clone();
    environment.add_function("caption", move |topic: &str, options: Kwargs| {
        let question = Question::read(&p, topic, &options)?;
        let figure = question.figure(&options)?;
        options.assert_all_used()?;
        Ok::<_, Error>(p.markup.text(&figure.caption))
    });
}

/// A topic asked by a document.
struct Question<'a> {
    place: &'a Place,
    topic: &'static Topic,
    scenario: Scenario,
    lang: Lang,
    system: System,
}

impl<'a> Question<'a> {
    fn read(place: &'a Place, topic: &str, options: &Kwargs) -> Result<Self, Error> {
        let topic = topic::find(topic).map_err(wrong)?;
        let tag: Option<String> = options.get("lang")?;
        let tag = tag.as_deref().unwrap_or("en");
        let lang = Lang::known(tag).ok_or_else(|| {
            wrong(format!(
                "lang = \"{tag}\" is not known; allowed: en, de, es"
            ))
        })?;
        let units: Option<String> = options.get("units")?;
        let system = match units.as_deref().unwrap_or("si") {
            "si" => System::Si,
            "us" => System::Us,
            other => {
                return Err(wrong(format!(
                    "units = \"{other}\" is not known; allowed: si, us"
                )));
            }
        };
        let file: Option<String> = options.get("scenario")?;
        let file = file.map(|name| place.sources.join(name));
        let set: Option<Value> = options.get("set")?;
        let mut settings = Vec::new();
        if let Some(set) = set {
            for path in set.try_iter()? {
                let value = set.get_item(&path)?;
                settings.push(format!("{path}={value}"));
            }
        }
        let scenario = scenario_file::gather(topic, file.as_deref(), &settings).map_err(wrong)?;
        Ok(Self {
            place,
            topic,
            scenario,
            lang,
            system,
        })
    }

    fn report(&self) -> Result<Report, Error> {
        self.topic.brief(&self.scenario).map_err(wrong)
    }

    fn text(&self, text: &str) -> String {
        self.place.markup.text(text)
    }

    /// A value of the answer, as people read it.
    fn value(&self, path: &str) -> Result<String, Error> {
        let report = self.report()?;
        let found = report.readings.iter().find(|reading| reading.path == path);
        let reading = found.ok_or_else(|| no_value(&report, path))?;
        Ok(self.text(&value_text(&report, reading, self.lang, self.system)))
    }

    /// A value of the scenario, as people read it.
    fn given(&self, path: &str) -> Result<String, Error> {
        let input = input::find(path);
        let input = input.ok_or_else(|| {
            wrong(format!(
                "{path} is no input; allowed: {}",
                self.topic.inputs.join(", ")
            ))
        })?;
        let said = match &input.kind {
            Kind::Quantity { dimension, .. } => self
                .scenario
                .number(path)
                .map(|value| format::quantity(value, *dimension, self.system, 4, self.lang)),
            _ => self.scenario.word(path).map(str::to_owned),
        };
        let said = said.ok_or_else(|| wrong(format!("{path} is not given by the scenario")))?;
        Ok(self.text(&said))
    }

    /// Every value with its path and what it is, for a table.
    fn rows(&self) -> Result<Value, Error> {
        let report = self.report()?;
        let rows = report.readings.iter().map(|reading| {
            let value = value_text(&report, reading, self.lang, self.system);
            minijinja::context! {
                path => reading.path,
                label => self.text(&label_text(&report, reading, self.lang)),
                value => self.text(&value),
            }
        });
        Ok(rows.collect())
    }

    /// The equations that lead to a value, as LaTeX, with the numbers put in.
    fn working(&self, path: &str) -> Result<Value, Error> {
        let mut report = self.report()?;
        report.write_working();
        let steps = report.derivation(path);
        if steps.is_empty() {
            return Err(no_value(&report, path));
        }
        let lines = steps.iter().map(|step| {
            minijinja::context! {
                equation => step.latex(self.lang),
                numbers => step.latex_with_numbers(self.lang),
                about => self.text(axlewright_core::words::get(self.lang, step.about)),
            }
        });
        Ok(lines.collect())
    }

    fn figure(&self, options: &Kwargs) -> Result<Figure, Error> {
        let text = |name: &str| -> Result<String, Error> {
            let given: Option<String> = options.get(name)?;
            Ok(given.unwrap_or_default())
        };
        let theme = match text("style")?.as_str() {
            "" | "light" => Theme::Light,
            "dark" => Theme::Dark,
            "print" => Theme::Print,
            other => {
                let told = format!("style = \"{other}\" is not known; allowed: light, dark, print");
                return Err(wrong(told));
            }
        };
        let width = text("width")?;
        let size = match width.as_str() {
            "" => Size::Units(WIDE),
            width => Size::Paper(Paper {
                width_mm: paper::millimetres("width", width).map_err(wrong)?,
                height_mm: None,
                text_pt: USUAL_TEXT_PT,
            }),
        };
        let outline: Option<bool> = options.get("outline")?;
        figure::make(&FigureAsked {
            topic: self.topic,
            scenario: &self.scenario,
            view: &text("view")?,
            theme,
            size,
            outline: outline.unwrap_or(false),
            lang: self.lang,
            system: self.system,
        })
        .map_err(wrong)
    }

    /// Writes a figure beside the result, and gives its name from there. The name holds a hash of the
    /// figure: another figure has another name, and an unchanged one is not written again.
    fn write(&self, figure: &Figure, ending: &str) -> Result<String, Error> {
        let bytes = match ending {
            "svg" => figure.svg.clone().into_bytes(),
            "png" => figure::png_at(&figure.svg, 300.0).map_err(wrong)?,
            "pdf" => figure::pdf(&figure.svg).map_err(wrong)?,
            other => {
                let told = format!("format = \"{other}\" is not known; allowed: svg, png, pdf");
                return Err(wrong(told));
            }
        };
        let hash: String = Sha256::digest(&bytes)
            .iter()
            .take(4)
            .map(|byte| format!("{byte:02x}"))
            .collect();
        let (topic, view) = (self.topic.slug(), figure.view.word());
        let name = format!("{FIGURES}/{topic}-{view}-{hash}.{ending}");
        let path = self.place.out.join(&name);
        if !path.exists() {
            std::fs::create_dir_all(self.place.out.join(FIGURES))
                .and_then(|()| write_whole(&path, &bytes))
                .map_err(|error| wrong(format!("{} cannot be written: {error}", path.display())))?;
        }
        Ok(name)
    }
}

fn no_value(report: &Report, path: &str) -> Error {
    let known = || report.readings.iter().map(|reading| reading.path.as_str());
    let allowed = match nearest(path, known()) {
        Some(near) => near.to_owned(),
        None => known().collect::<Vec<_>>().join(", "),
    };
    wrong(format!("{path} is not answered; allowed: {allowed}"))
}
