//! A plot of the table that a study wrote. The table is read row by row; what is drawn of it is bounded.

use super::StudyError;
use super::design::mixed;
use crate::words::fill;
use axlewright_core::input::{self, Kind};
use axlewright_core::quick::Wanted;
use axlewright_core::topic::{OutputKind, Topic};
use axlewright_core::units::{self, Dimension, System};
use axlewright_core::words::{self, Lang};
use axlewright_core::{format, units::to_si};
use axlewright_widgets::figure::plot::{
    Contour, Frame, Parallel, Points, Ruler, contour, parallel, points,
};
use axlewright_widgets::figure::{NARROW_BELOW, SvgOptions};
use std::path::Path;

/// Most points, and most lines across axes: more would be one blot.
const MOST_POINTS: u64 = 4000;
const MOST_LINES: u64 = 400;
/// Most values of an input on the grid of a contour plot.
const MOST_STEPS: usize = 2000;
/// Share of the rows that stands out among parallel axes.
const TOP: f64 = 0.1;

/// What kind of plot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, clap::ValueEnum)]
pub enum PlotKind {
    /// Lines of equal value over two inputs of a grid
    Contour,
    /// One value against another, a point for each row
    Scatter,
    /// An axis for each input and for the value, a line for each row
    Parallel,
}

/// What is plotted.
#[derive(Clone, Debug)]
pub struct PlotAsked<'a> {
    /// Kind of plot.
    pub kind: PlotKind,
    /// Column along; the first input if `None`.
    pub x: Option<&'a str>,
    /// Column up; the second input, or the first value for points, if `None`.
    pub y: Option<&'a str>,
    /// Column of the value; the first if `None`.
    pub z: Option<&'a str>,
    /// Only rows in which a column holds a value.
    pub only: Vec<(String, String)>,
    /// Language.
    pub lang: Lang,
    /// Units.
    pub system: System,
    /// Width and height in scene units; the height follows from the width if `None`.
    pub size: (f64, Option<f64>),
}

/// A plot, and what it says.
#[derive(Clone, Debug, PartialEq)]
pub struct Plotted {
    /// SVG.
    pub svg: String,
    /// Finding and description.
    pub description: String,
}

/// A column of the table: what it is, and how it is shown.
#[derive(Clone, Debug)]
struct Shown {
    /// Its position in the table.
    at: usize,
    title: String,
    dimension: Option<Dimension>,
    words: Vec<String>,
    least: f64,
    greatest: f64,
}

impl Shown {
    fn unit(&self, system: System) -> String {
        let unit = self
            .dimension
            .map(|dimension| dimension.display_unit(system));
        unit.unwrap_or_default().into()
    }

    /// A cell as a number in the unit that is shown: a word by its place among the column's words.
    fn value(&mut self, cell: &str, system: System) -> f64 {
        if let (Some(dimension), Ok(number)) = (self.dimension, cell.parse::<f64>()) {
            return units::from_si(number, dimension, system);
        }
        if cell.is_empty() || self.dimension.is_some() {
            return f64::NAN;
        }
        let known = self.words.iter().position(|word| word == cell);
        known.unwrap_or_else(|| {
            self.words.push(cell.to_owned());
            self.words.len() - 1
        }) as f64
    }

    fn ruler(&self, asked: &PlotAsked) -> Ruler {
        if self.dimension.is_none() {
            let said = self.words.iter().map(|word| said_word(word, asked.lang));
            return Ruler::of_words(self.title.clone(), said.collect());
        }
        let unit = self.unit(asked.system);
        Ruler::over(self.title.clone(), unit, (self.least, self.greatest))
    }

    /// A value of the column as people read it.
    fn said(&self, value: f64, asked: &PlotAsked) -> String {
        match self.dimension {
            Some(dimension) => {
                let si = to_si(value, dimension, asked.system);
                format::quantity(si, dimension, asked.system, 3, asked.lang)
            }
            None => self.words.get(value as usize).cloned().unwrap_or_default(),
        }
    }
}

/// A word of a table as people read it.
fn said_word(word: &str, lang: Lang) -> String {
    ["reason.", "surface.", "vehicle.name."]
        .iter()
        .find_map(|start| words::find(lang, &[start, word].concat()))
        .unwrap_or(word)
        .to_owned()
}

/// Draws a plot of a table.
///
/// # Errors
/// A [`StudyError`] that names the field and what is allowed, or the file.
pub fn plot(
    topic: &Topic,
    table: &Path,
    asked: &PlotAsked,
    options: &SvgOptions,
) -> Result<Plotted, StudyError> {
    let mut reader = Table::open(table, asked)?;
    let names = reader.names.clone();
    let is_input = |name: &&String| input::find(name).is_some();
    let inputs: Vec<String> = names.iter().filter(is_input).cloned().collect();
    let values: Vec<String> = names
        .iter()
        .filter(|name| !is_input(name) && !["row", "problem"].contains(&name.as_str()))
        .cloned()
        .collect();
    let pick = |field: &str, given: Option<&str>, usual: Option<&String>| {
        let name = given.map(str::to_owned).or_else(|| usual.cloned());
        let name = name.unwrap_or_default();
        shown(topic, &names, &name, asked.lang)
            .ok_or_else(|| StudyError::refused(field, name, names.join(", ")))
    };
    let columns = match asked.kind {
        PlotKind::Contour => vec![
            pick("x", asked.x, inputs.first())?,
            pick("y", asked.y, inputs.get(1))?,
            pick("z", asked.z, values.first())?,
        ],
        PlotKind::Scatter => vec![
            pick("x", asked.x, inputs.first())?,
            pick("y", asked.y.or(asked.z), values.first())?,
        ],
        PlotKind::Parallel => {
            let mut columns: Vec<Shown> = inputs
                .iter()
                .map(|name| pick("x", Some(name), None))
                .collect::<Result<_, _>>()?;
            columns.push(pick("z", asked.z, values.first())?);
            columns
        }
    };
    match asked.kind {
        PlotKind::Contour => draw_contour(&mut reader, columns, asked, options),
        PlotKind::Scatter => draw_points(&mut reader, columns, asked, options),
        PlotKind::Parallel => draw_parallel(&mut reader, columns, asked, options),
    }
}

/// What a column is: an input, or an output of the topic.
fn shown(topic: &Topic, names: &[String], name: &str, lang: Lang) -> Option<Shown> {
    let at = names.iter().position(|known| known == name)?;
    let (title, dimension) = match input::find(name) {
        Some(input) => {
            let dimension = match input.kind {
                Kind::Quantity { dimension, .. } => Some(dimension),
                _ => None,
            };
            (words::get(lang, &input.label_key()).to_owned(), dimension)
        }
        None => {
            let wanted = *Wanted::of(topic, name, &[]).first()?;
            let dimension = match topic.outputs[wanted.output].kind {
                OutputKind::Quantity(dimension) => Some(dimension),
                _ => None,
            };
            let label = words::get(lang, &topic.output_key(wanted.output));
            let title = match wanted.part {
                "" => label.to_owned(),
                part => format!("{part}: {label}"),
            };
            (title, dimension)
        }
    };
    Some(Shown {
        at,
        title,
        dimension,
        words: Vec::new(),
        least: f64::INFINITY,
        greatest: f64::NEG_INFINITY,
    })
}

/// Takes the number of a row among those that are plotted, and its values.
type Act<'a> = dyn FnMut(u64, &[f64]) -> Result<(), StudyError> + 'a;

/// The table, row by row, as often as is needed.
struct Table<'a> {
    path: &'a Path,
    names: Vec<String>,
    only: Vec<(usize, &'a str)>,
    /// Rows that are plotted, once they have been counted.
    rows: u64,
}

impl<'a> Table<'a> {
    fn open(path: &'a Path, asked: &'a PlotAsked) -> Result<Self, StudyError> {
        let mut reader = csv::Reader::from_path(path).map_err(|e| StudyError::file(path, e))?;
        let head = reader.headers().map_err(|e| StudyError::file(path, e))?;
        let names: Vec<String> = head.iter().map(str::to_owned).collect();
        let mut only = Vec::new();
        for (name, value) in &asked.only {
            let at = names.iter().position(|known| known == name);
            let at = at.ok_or_else(|| StudyError::refused("where", name, names.join(", ")))?;
            only.push((at, value.as_str()));
        }
        Ok(Self {
            path,
            names,
            only,
            rows: 0,
        })
    }

    /// Gives the values of every row that has all of them.
    fn each(
        &mut self,
        columns: &mut [Shown],
        system: System,
        act: &mut Act,
    ) -> Result<(), StudyError> {
        let failed = |e: csv::Error| StudyError::file(self.path, e);
        let mut reader = csv::Reader::from_path(self.path).map_err(failed)?;
        let mut record = csv::StringRecord::new();
        let mut values = vec![0.0; columns.len()];
        let mut rows = 0;
        while reader.read_record(&mut record).map_err(failed)? {
            let cell = |at: usize| record.get(at).unwrap_or("");
            if !self
                .only
                .iter()
                .all(|(at, wanted)| holds(cell(*at), wanted))
            {
                continue;
            }
            for (column, value) in columns.iter_mut().zip(&mut values) {
                *value = column.value(cell(column.at), system);
            }
            if values.iter().all(|value| value.is_finite()) {
                for (column, value) in columns.iter_mut().zip(&values) {
                    column.least = column.least.min(*value);
                    column.greatest = column.greatest.max(*value);
                }
                act(rows, &values)?;
                rows += 1;
            }
        }
        self.rows = rows;
        if rows == 0 {
            let name = self.path.display().to_string();
            return Err(StudyError::refused(
                "table",
                name,
                "a table with rows to plot",
            ));
        }
        Ok(())
    }

    /// As [`Table::each`] with so many rows at the most, drawn from all of them, the same every time.
    fn some(
        &mut self,
        columns: &mut [Shown],
        system: System,
        most: u64,
        act: &mut dyn FnMut(&[f64]),
    ) -> Result<(), StudyError> {
        self.each(columns, system, &mut |_, _| Ok(()))?;
        let all = self.rows;
        self.each(columns, system, &mut |row, values| {
            // By a hash and not by every nth row: a grid repeats itself.
            if all <= most || mixed(row) % all < most {
                act(values);
            }
            Ok(())
        })
    }
}

/// Whether a cell holds a value, as a number or as a word.
fn holds(cell: &str, wanted: &str) -> bool {
    match (cell.parse::<f64>(), wanted.parse::<f64>()) {
        (Ok(cell), Ok(wanted)) => (cell - wanted).abs() <= 1e-9 * wanted.abs().max(1e-9),
        _ => cell == wanted,
    }
}

/// Title, subtitle and description from the column of the value.
fn frame(asked: &PlotAsked, title: String, columns: &[Shown], rows: u64) -> Frame {
    let axes: Vec<&str> = columns.iter().map(|column| column.title.as_str()).collect();
    let said = |key: &str| fill(asked.lang, key, &[&rows.to_string(), &axes.join(", ")]);
    let (width, height) = asked.size;
    let ratio = if width < NARROW_BELOW { 0.85 } else { 0.6 };
    Frame {
        width,
        height: height.unwrap_or(ratio * width),
        description: format!("{title}. {}", said("plot.description")),
        title,
        subtitle: fill(asked.lang, "plot.rows", &[&rows.to_string()]),
        decimal_mark: asked.lang.decimal_mark(),
    }
}

fn plotted(svg: String, description: String) -> Result<Plotted, StudyError> {
    Ok(Plotted { svg, description })
}

/// "R1: largest acceleration from 0.42 m/s² to 3.42 m/s²".
fn spread(column: &Shown, asked: &PlotAsked) -> String {
    let ends = [column.least, column.greatest].map(|value| column.said(value, asked));
    fill(
        asked.lang,
        "plot.spread",
        &[&column.title, &ends[0], &ends[1]],
    )
}

fn draw_contour(
    table: &mut Table,
    mut columns: Vec<Shown>,
    asked: &PlotAsked,
    options: &SvgOptions,
) -> Result<Plotted, StudyError> {
    for (field, column) in ["x", "y", "z"].iter().zip(&columns) {
        if column.dimension.is_none() {
            return Err(StudyError::refused(
                *field,
                &column.title,
                "a quantity, not a word",
            ));
        }
    }
    let (mut xs, mut ys): (Vec<f64>, Vec<f64>) = (Vec::new(), Vec::new());
    table.each(&mut columns, asked.system, &mut |_, values| {
        for (known, value) in [(&mut xs, values[0]), (&mut ys, values[1])] {
            if let Err(place) = known.binary_search_by(|other| other.total_cmp(&value)) {
                known.insert(place, value);
            }
            if known.len() > MOST_STEPS {
                return Err(StudyError::refused(
                    "kind",
                    "contour",
                    format!("a grid of at most {MOST_STEPS} values of each input; scatter and parallel for other designs"),
                ));
            }
        }
        Ok(())
    })?;
    let mut grid = vec![f64::NAN; xs.len() * ys.len()];
    let place =
        |known: &[f64], value: f64| known.binary_search_by(|k| k.total_cmp(&value)).unwrap_or(0);
    table.each(&mut columns, asked.system, &mut |_, values| {
        let slot = &mut grid[place(&ys, values[1]) * xs.len() + place(&xs, values[0])];
        if slot.is_finite() && slot.to_bits() != values[2].to_bits() {
            return Err(StudyError::refused(
                "where",
                "",
                "one value of each other input that varies, for example --where surface.kind=ice",
            ));
        }
        *slot = values[2];
        Ok(())
    })?;
    let frame = frame(asked, spread(&columns[2], asked), &columns, table.rows);
    let description = frame.description.clone();
    let plot = Contour {
        frame,
        x: columns[0].ruler(asked),
        y: columns[1].ruler(asked),
        columns: xs,
        rows: ys,
        values: grid,
    };
    plotted(contour(&plot, options), description)
}

fn draw_points(
    table: &mut Table,
    mut columns: Vec<Shown>,
    asked: &PlotAsked,
    options: &SvgOptions,
) -> Result<Plotted, StudyError> {
    let mut found = Vec::new();
    table.some(&mut columns, asked.system, MOST_POINTS, &mut |values| {
        found.push((values[0], values[1]));
    })?;
    let title = match correlation(&found) {
        Some(r) if columns.iter().all(|column| column.dimension.is_some()) => {
            let r = format::fixed(r, 2, asked.lang);
            fill(
                asked.lang,
                "plot.correlation",
                &[&columns[1].title, &columns[0].title, &r],
            )
        }
        _ => spread(&columns[1], asked),
    };
    let frame = frame(asked, title, &columns, table.rows);
    let description = frame.description.clone();
    let plot = Points {
        frame,
        x: columns[0].ruler(asked).with_room(),
        y: columns[1].ruler(asked).with_room(),
        points: found,
    };
    plotted(points(&plot, options), description)
}

/// Correlation of pairs (Pearson): 1 on a rising line, 0 where one says nothing of the other.
fn correlation(pairs: &[(f64, f64)]) -> Option<f64> {
    let count = pairs.len() as f64;
    let mean = |pick: fn(&(f64, f64)) -> f64| pairs.iter().map(pick).sum::<f64>() / count;
    let (x, y) = (mean(|p| p.0), mean(|p| p.1));
    let (mut xy, mut xx, mut yy) = (0.0, 0.0, 0.0);
    for (a, b) in pairs {
        xy += (a - x) * (b - y);
        xx += (a - x) * (a - x);
        yy += (b - y) * (b - y);
    }
    let r = xy / (xx * yy).sqrt();
    r.is_finite().then_some(r)
}

fn draw_parallel(
    table: &mut Table,
    mut columns: Vec<Shown>,
    asked: &PlotAsked,
    options: &SvgOptions,
) -> Result<Plotted, StudyError> {
    let mut rows: Vec<(Vec<f64>, bool)> = Vec::new();
    table.some(&mut columns, asked.system, MOST_LINES, &mut |values| {
        rows.push((values.to_vec(), false));
    })?;
    let last = columns.len() - 1;
    let mut sorted: Vec<f64> = rows.iter().map(|(values, _)| values[last]).collect();
    sorted.sort_by(f64::total_cmp);
    let from = ((1.0 - TOP) * sorted.len() as f64) as usize;
    let bound = sorted.get(from).copied().unwrap_or(f64::INFINITY);
    for (values, stands_out) in &mut rows {
        *stands_out = values[last] >= bound;
    }
    let value = &columns[last];
    let title = fill(
        asked.lang,
        "plot.top",
        &[&value.title, &value.said(bound, asked)],
    );
    let frame = frame(asked, title, &columns, table.rows);
    let description = frame.description.clone();
    let plot = Parallel {
        frame,
        axes: columns.iter().map(|column| column.ruler(asked)).collect(),
        rows,
    };
    plotted(parallel(&plot, options), description)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn correlation_is_that_of_the_textbook() {
        let line: Vec<(f64, f64)> = (0..10)
            .map(|i| (f64::from(i), 3.0 - 2.0 * f64::from(i)))
            .collect();
        assert!((correlation(&line).unwrap() + 1.0).abs() < 1e-12);
        // Anscombe's first set has 0.816 (F. J. Anscombe, 1973, from memory).
        let x = [10.0, 8.0, 13.0, 9.0, 11.0, 14.0, 6.0, 4.0, 12.0, 7.0, 5.0];
        let y = [
            8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68,
        ];
        let pairs: Vec<_> = x.into_iter().zip(y).collect();
        assert!((correlation(&pairs).unwrap() - 0.816).abs() < 5e-4);
        assert_eq!(correlation(&[(1.0, 1.0), (1.0, 2.0)]), None);
    }

    #[test]
    fn a_cell_holds_a_number_however_it_is_written() {
        assert!(holds("0.5", "0.50") && holds("ice", "ice") && holds("1850", "1.85e3"));
        assert!(!holds("0.5", "0.51") && !holds("ice", "snow") && !holds("", "0"));
    }
}
