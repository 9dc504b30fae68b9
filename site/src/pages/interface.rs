//! Tables of the interface for the reference page, made from what the code is held against.

use super::functions::{LANG, escaped, wrong};
use axlewright_core::format;
use axlewright_core::input::{INPUTS, Input, Kind};
use axlewright_core::topic::{TOPICS, Topic};
use axlewright_core::units::System;
use axlewright_core::words;
use axlewright_widgets::element::interface::{
    ATTRIBUTES, Attribute, DETAILS, EVENTS, Event, FUNCTIONS, Field, MEMBERS, Member, MemberKind,
    PARTS, Part, STYLES, Style, Takes, talk, view_words,
};
use minijinja::Error;

/// A cell of a table: a text, code, or a link to a file of the site.
enum Cell {
    Text(String),
    Code(Vec<String>),
    Link(String),
}

fn text(text: impl Into<String>) -> Cell {
    Cell::Text(text.into())
}

fn code(text: impl Into<String>) -> Cell {
    Cell::Code(vec![text.into()])
}

/// A table of one kind of thing.
///
/// # Errors
/// When there is no such kind.
pub(super) fn interface(what: &str) -> Result<String, Error> {
    Ok(match what {
        "elements" => table(&["topic", "schema"], elements()),
        "attributes" => table(&["takes", "default", "help"], attributes(ATTRIBUTES)),
        "inputs" => table(&["takes", "default", "help", "topics"], inputs()),
        "members" => table(&["kind", "help"], members(MEMBERS)),
        "functions" => table(&["kind", "help"], members(FUNCTIONS)),
        "events" => table(&["kind", "help"], events(EVENTS)),
        "details" => table(&["kind", "help"], details(DETAILS)),
        "parts" => table(&["help"], parts(PARTS)),
        "styles" => table(&["default", "help"], styles()),
        "talk-attributes" => table(&["takes", "default", "help"], attributes(talk::ATTRIBUTES)),
        "talk-members" => table(&["kind", "help"], members(talk::MEMBERS)),
        "talk-events" => table(&["kind", "help"], events(talk::EVENTS)),
        "talk-details" => table(&["kind", "help"], details(talk::DETAILS)),
        "talk-parts" => table(&["help"], parts(talk::PARTS)),
        other => return Err(wrong(format!("there is no table of {other}"))),
    })
}

fn elements() -> Vec<Vec<Cell>> {
    let row = |topic: &&Topic| {
        let title = words::get(LANG, &format!("topic.{}", topic.name));
        let schema = format!("schema/{}.json", topic.slug());
        let tag = format!("<{}>", topic.tag());
        vec![code(tag), text(title), Cell::Link(schema)]
    };
    TOPICS.iter().map(row).collect()
}

fn attributes(all: &[Attribute]) -> Vec<Vec<Cell>> {
    let each = |list: &[&str]| Cell::Code(list.iter().map(|w| (*w).into()).collect());
    let row = |a: &Attribute| {
        let takes = match a.takes {
            Takes::Word(list) => each(list),
            Takes::View => each(&view_words(None)),
            Takes::Words(list) => Cell::Code(vec![list.join(" ")]),
            Takes::Text(what) => text(what),
        };
        vec![code(a.name), takes, text(a.default), text(a.help)]
    };
    all.iter().map(row).collect()
}

/// Inputs that some topic reads.
fn inputs() -> Vec<Vec<Cell>> {
    let row = |input: &Input| {
        let readers = TOPICS.iter().filter(|t| t.inputs.contains(&input.path));
        let readers: Vec<String> = readers.map(|t| t.slug()).collect();
        let help = words::get(LANG, &input.help_key());
        let takes = match &input.kind {
            Kind::Choice { words, .. } => Cell::Code(words.iter().map(|w| (*w).into()).collect()),
            _ => text(input.allowed().phrase(LANG)),
        };
        let name = code(input.attribute());
        let row = vec![name, takes, text(default(input)), text(help)];
        (!readers.is_empty()).then(|| row.into_iter().chain([Cell::Code(readers)]).collect())
    };
    INPUTS.iter().filter_map(row).collect()
}

fn default(input: &Input) -> String {
    match input.kind {
        Kind::Quantity {
            dimension,
            default: Some(value),
            ..
        } => format::quantity(value, dimension, System::Si, 3, LANG),
        Kind::Choice {
            default: Some(word),
            ..
        } => word.into(),
        _ => String::new(),
    }
}

fn members(all: &[Member]) -> Vec<Vec<Cell>> {
    let row = |member: &Member| {
        let kind = match member.kind {
            MemberKind::ReadOnly(kind) | MemberKind::Value(kind, _) => code(kind),
            MemberKind::Call(ways) => Cell::Code(ways.iter().map(|way| (*way).into()).collect()),
        };
        vec![code(member.name), kind, text(member.help)]
    };
    all.iter().map(row).collect()
}

fn events(all: &[Event]) -> Vec<Vec<Cell>> {
    let row = |event: &Event| vec![code(event.name), code(event.detail), text(event.help)];
    all.iter().map(row).collect()
}

fn details(all: &[(&str, &[Field])]) -> Vec<Vec<Cell>> {
    let mut rows = Vec::new();
    for (name, fields) in all {
        for field in *fields {
            let place = format!("{name}.{}", field.name.trim_end_matches('?'));
            rows.push(vec![code(place), code(field.kind), text(field.help)]);
        }
    }
    rows
}

fn parts(all: &[Part]) -> Vec<Vec<Cell>> {
    let row = |part: &Part| vec![code(part.name), text(part.help)];
    all.iter().map(row).collect()
}

fn styles() -> Vec<Vec<Cell>> {
    let row = |style: &Style| {
        let mut both = vec![style.light.into(), style.dark.into()];
        both.dedup();
        vec![code(style.name), Cell::Code(both), text(style.help)]
    };
    STYLES.iter().map(row).collect()
}

/// A table whose rows stand one below the other on a narrow screen, each cell after its heading.
fn table(heads: &[&str], rows: Vec<Vec<Cell>>) -> String {
    let head = |name: &str| words::get(LANG, &format!("site.interface_{name}"));
    let mut html = format!(
        "<table class=\"stack\"><thead><tr><th scope=\"col\">{}</th>",
        head("name")
    );
    for name in heads {
        html.push_str(&format!("<th scope=\"col\">{}</th>", head(name)));
    }
    html.push_str("</tr></thead><tbody>");
    for row in rows {
        html.push_str("<tr>");
        for (at, cell) in row.iter().enumerate() {
            let inside = written(cell);
            match at.checked_sub(1).and_then(|at| heads.get(at)) {
                None => html.push_str(&format!("<th scope=\"row\">{inside}</th>")),
                Some(_) if inside.is_empty() => html.push_str("<td class=\"none\"></td>"),
                Some(name) => {
                    html.push_str(&format!("<td data-head=\"{}\">{inside}</td>", head(name)));
                }
            }
        }
        html.push_str("</tr>");
    }
    html + "</tbody></table>"
}

fn written(cell: &Cell) -> String {
    match cell {
        Cell::Text(text) => escaped(text),
        Cell::Link(path) => format!("<a href=\"{0}\">{0}</a>", escaped(path)),
        Cell::Code(all) => {
            let each = all.iter().map(|code| {
                // A name stays whole; a type may go over several lines.
                let is_name = !code.contains(' ') && code.len() < 28;
                let class = if is_name { " class=\"name\"" } else { "" };
                format!("<code{class}>{}</code>", escaped(code))
            });
            each.collect::<Vec<_>>().join(" ")
        }
    }
}
