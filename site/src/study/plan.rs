//! What a study is: a topic, a scenario, the inputs that vary and how, the outputs that are wanted.

use super::StudyError;
use super::design::{Design, Level};
use crate::scenario_file::one_line;
use axlewright_core::input::{self, INPUTS, Kind, nearest};
use axlewright_core::quick::{Quick, Wanted};
use axlewright_core::topic::{OutputKind, Topic};
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario, Tree, format};
use axlewright_widgets::figure_file::scenario_toml;

/// Most rows of a study: more would take longer than anybody waits.
pub const MOST_ROWS: u64 = 1_000_000_000_000;

/// An input that varies.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// Its position in [`INPUTS`].
    pub input: usize,
    /// Its values.
    pub values: Values,
}

/// The values of an input.
#[derive(Clone, Debug, PartialEq)]
pub enum Values {
    /// A range, SI. The count is that of a grid; a Latin hypercube takes values between.
    Range {
        /// First value.
        from: f64,
        /// Last value.
        to: f64,
        /// Count of values.
        count: u64,
    },
    /// A list of quantities, SI.
    Numbers(Vec<f64>),
    /// A list of words.
    Words(Vec<String>),
}

/// What is asked of a study, by options or by the table `study` of a scenario file.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Asked {
    /// Inputs that vary: path, then `from:to:count` or a list with commas.
    pub vary: Vec<(String, String)>,
    /// Paths of outputs; `*` is each layout.
    pub want: Vec<String>,
    /// "grid" or "latin".
    pub design: Option<String>,
    /// Points of a Latin hypercube.
    pub points: Option<u64>,
    /// Its seed.
    pub seed: Option<u64>,
}

impl Asked {
    /// Reads the table `study` of a scenario file.
    ///
    /// # Errors
    /// [`StudyError::Refused`] for a field that is not known or not of its kind.
    pub fn from_tree(tree: &Tree) -> Result<Self, StudyError> {
        let mut asked = Self::default();
        let Tree::Map(entries) = tree else {
            return Err(StudyError::refused("study", "a value", "a table"));
        };
        for (name, value) in entries {
            let field = format!("study.{name}");
            match (name.as_str(), value) {
                ("vary", Tree::Map(inputs)) => vary(&mut asked.vary, "", inputs)?,
                ("want", Tree::List(paths)) => {
                    asked.want = paths
                        .iter()
                        .map(|p| text(&field, p))
                        .collect::<Result<_, _>>()?;
                }
                ("want", Tree::Text(path)) => asked.want = vec![path.clone()],
                ("design", Tree::Text(word)) => asked.design = Some(word.clone()),
                ("points", value) => asked.points = Some(whole(&field, value)?),
                ("seed", value) => asked.seed = Some(whole(&field, value)?),
                ("vary", _) => {
                    return Err(StudyError::refused(field, "a value", "a table of inputs"));
                }
                _ => {
                    return Err(StudyError::refused(
                        field,
                        "?",
                        "vary, want, design, points, seed",
                    ));
                }
            }
        }
        Ok(asked)
    }

    /// This with everything that the other says put in its place; inputs that vary are added.
    #[must_use]
    pub fn overlaid_with(mut self, other: Self) -> Self {
        self.vary
            .retain(|(path, _)| !other.vary.iter().any(|(again, _)| again == path));
        self.vary.extend(other.vary);
        if !other.want.is_empty() {
            self.want = other.want;
        }
        Self {
            design: other.design.or(self.design),
            points: other.points.or(self.points),
            seed: other.seed.or(self.seed),
            ..self
        }
    }
}

/// Inputs that vary, nested by sections or with dotted names.
fn vary(
    found: &mut Vec<(String, String)>,
    section: &str,
    entries: &[(String, Tree)],
) -> Result<(), StudyError> {
    for (name, value) in entries {
        let path = match section {
            "" => name.clone(),
            section => format!("{section}.{name}"),
        };
        let field = format!("study.vary.{path}");
        match value {
            Tree::Map(inner) => vary(found, &path, inner)?,
            Tree::List(items) => {
                let items: Result<Vec<_>, _> = items.iter().map(|i| text(&field, i)).collect();
                found.push((path, items?.join(",")));
            }
            other => found.push((path, text(&field, other)?)),
        }
    }
    Ok(())
}

fn text(field: &str, value: &Tree) -> Result<String, StudyError> {
    match value {
        Tree::Text(text) => Ok(text.clone()),
        Tree::Number(number) => Ok(format::plain(*number)),
        _ => Err(StudyError::refused(field, "…", "a text or a list of texts")),
    }
}

fn whole(field: &str, value: &Tree) -> Result<u64, StudyError> {
    match value {
        Tree::Number(number) if number.fract() == 0.0 && (0.0..=1e15).contains(number) => {
            Ok(*number as u64)
        }
        _ => Err(StudyError::refused(field, "…", "a whole number")),
    }
}

/// A study that can be run.
#[derive(Clone, Debug)]
pub struct Plan {
    /// The topic.
    pub topic: &'static Topic,
    /// What does not vary.
    pub scenario: Scenario,
    /// What varies.
    pub axes: Vec<Axis>,
    /// How.
    pub design: Design,
    /// What is wanted.
    pub wanted: Vec<Wanted>,
    /// Count of rows.
    pub rows: u64,
    /// Language of the reasons why a row has no answer.
    pub lang: Lang,
}

impl Plan {
    /// Makes a plan of what is asked.
    ///
    /// # Errors
    /// A [`StudyError`] that names the field, its value and what is allowed.
    pub fn new(
        topic: &'static Topic,
        scenario: Scenario,
        asked: &Asked,
        lang: Lang,
    ) -> Result<Self, StudyError> {
        let design = design(asked)?;
        if asked.vary.is_empty() {
            return Err(StudyError::refused(
                "vary",
                "",
                "an input and its range, for example vehicle.cg_height=0.4m:0.7m:31",
            ));
        }
        let axes: Vec<Axis> = asked
            .vary
            .iter()
            .map(|(path, values)| axis(topic, path, values, design))
            .collect::<Result<_, _>>()?;
        for (at, axis) in axes.iter().enumerate() {
            if axes[..at].iter().any(|other| other.input == axis.input) {
                let path = INPUTS[axis.input].path;
                return Err(StudyError::refused("vary", path, "every input once"));
            }
        }
        let wanted = wanted(topic, &scenario, &asked.want)?;
        let rows = design.rows(&axes, MOST_ROWS)?;
        Ok(Self {
            topic,
            scenario,
            axes,
            design,
            wanted,
            rows,
            lang,
        })
    }

    /// The topic and the scenario, ready to be asked row by row.
    #[must_use]
    pub fn quick(&self) -> Quick {
        Quick::new(self.topic, self.scenario.clone(), &self.wanted)
    }

    /// Names of the columns: the row, what varies, what is wanted, why there is no answer.
    #[must_use]
    pub fn columns(&self) -> Vec<String> {
        let mut columns = vec!["row".to_owned()];
        let inputs = self.axes.iter().map(|axis| INPUTS[axis.input].path);
        columns.extend(inputs.map(str::to_owned));
        columns.extend(self.wanted.iter().map(|wanted| wanted.path(self.topic)));
        columns.push("problem".into());
        columns
    }

    /// Everything that the rows depend on, as text: two studies with the same text have the same rows.
    #[must_use]
    pub fn text(&self) -> String {
        let mut text = format!(
            "# A study of axlewright {} that is not finished. Run it again and it goes on.\n\
             topic = \"{}\"\ndesign = \"{:?}\"\nlang = \"{}\"\ncolumns = {:?}\n",
            env!("CARGO_PKG_VERSION"),
            self.topic.name,
            self.design,
            self.lang.tag(),
            self.columns()
        );
        for axis in &self.axes {
            let (path, values) = (INPUTS[axis.input].path, &axis.values);
            text.push_str(&format!("vary.\"{path}\" = \"{values:?}\"\n"));
        }
        text + "[scenario]\n" + &scenario_toml(&self.scenario)
    }

    /// The values of a row.
    pub(super) fn levels(&self, row: u64, levels: &mut [Level]) {
        self.design.levels(&self.axes, row, levels);
    }
}

fn design(asked: &Asked) -> Result<Design, StudyError> {
    match asked.design.as_deref().unwrap_or("grid") {
        "latin" => {
            let points = asked.points.unwrap_or(1000);
            Ok(Design::Latin {
                points,
                seed: asked.seed.unwrap_or(1),
            })
        }
        "grid" => match (asked.points, asked.seed) {
            (Some(value), _) => Err(StudyError::refused(
                "points",
                value.to_string(),
                "with design latin",
            )),
            (_, Some(value)) => Err(StudyError::refused(
                "seed",
                value.to_string(),
                "with design latin",
            )),
            _ => Ok(Design::Grid),
        },
        other => Err(StudyError::refused(
            "design",
            one_line(other),
            "grid, latin",
        )),
    }
}

fn axis(topic: &Topic, path: &str, values: &str, design: Design) -> Result<Axis, StudyError> {
    let path = path.trim();
    let Some(at) = topic
        .inputs
        .iter()
        .find(|known| **known == path)
        .and_then(|known| input::index(known))
    else {
        let near = nearest(path, topic.inputs.iter().copied());
        let all = || topic.inputs.join(", ");
        let allowed = near.map_or_else(all, |near| {
            format!("an input of {}, such as {near}", topic.name)
        });
        return Err(StudyError::refused("vary", one_line(path), allowed));
    };
    let refused =
        |allowed: &str| StudyError::refused(format!("vary {path}"), one_line(values), allowed);
    let is_quantity = matches!(INPUTS[at].kind, Kind::Quantity { .. });
    let parts: Vec<&str> = values.split(':').map(str::trim).collect();
    let values = match parts[..] {
        [from, to] if is_quantity && matches!(design, Design::Latin { .. }) => Values::Range {
            from: number(path, from)?,
            to: number(path, to)?,
            count: 1,
        },
        [_, _] if is_quantity => return Err(refused("from:to:count, for example 0.4m:0.7m:31")),
        [from, to, count] if is_quantity => {
            let count = count
                .parse()
                .ok()
                .filter(|count| (1..=MOST_ROWS).contains(count));
            Values::Range {
                from: number(path, from)?,
                to: number(path, to)?,
                count: count.ok_or_else(|| refused("from:to:count with a whole count from 1"))?,
            }
        }
        [list] if is_quantity => {
            let numbers = list.split(',').map(|text| number(path, text));
            Values::Numbers(numbers.collect::<Result<_, _>>()?)
        }
        [list] => {
            let words: Vec<String> = list.split(',').map(|word| word.trim().to_owned()).collect();
            for word in &words {
                Scenario::default()
                    .set(path, word)
                    .map_err(StudyError::Scenario)?;
            }
            Values::Words(words)
        }
        _ => return Err(refused("from:to:count, or a list with commas")),
    };
    Ok(Axis { input: at, values })
}

/// A quantity of an input, SI, in its accepted range.
fn number(path: &str, text: &str) -> Result<f64, StudyError> {
    let mut scenario = Scenario::default();
    scenario.set(path, text).map_err(StudyError::Scenario)?;
    let missing = || StudyError::Scenario(Problem::Empty);
    scenario.given_number(path).ok_or_else(missing)
}

/// The values that are wanted: those named, or the headlines of the topic.
fn wanted(topic: &Topic, scenario: &Scenario, paths: &[String]) -> Result<Vec<Wanted>, StudyError> {
    let layouts = scenario.layouts();
    let mut wanted = Vec::new();
    for path in paths {
        let found = Wanted::of(topic, path, &layouts);
        if found.is_empty() {
            let names: Vec<&str> = topic.outputs.iter().map(|output| output.name).collect();
            return Err(StudyError::refused(
                "want",
                one_line(path),
                names.join(", "),
            ));
        }
        wanted.extend(found);
    }
    if paths.is_empty() {
        for output in topic.outputs {
            if output.headline
                && matches!(output.kind, OutputKind::Quantity(_) | OutputKind::Layout)
            {
                wanted.extend(Wanted::of(topic, output.name, &layouts));
            }
        }
    }
    for at in (1..wanted.len()).rev() {
        if wanted[..at].contains(&wanted[at]) {
            wanted.remove(at);
        }
    }
    Ok(wanted)
}
