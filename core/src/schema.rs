//! JSON Schema (draft 2020-12) of scenarios and answers, made from the tables.

use crate::format;
use crate::input::{INPUTS, Input, Kind};
use crate::layout::Layout;
use crate::surface;
use crate::topic::{OutputKind, Topic};
use crate::tree::Tree;
use crate::words::{self, Lang};

const DIALECT: &str = "https://json-schema.org/draft/2020-12/schema";

/// Where a topic's schema holds that of its scenario.
const SCENARIO_PLACE: &str = "#/properties/scenario";

/// Schema of a topic: the scenario that it reads and the answer that it gives.
#[must_use]
pub fn of_topic(topic: &Topic) -> Tree {
    let inputs: Vec<&Input> = topic.inputs().collect();
    let mut schema = document(&format!("Axlewright: {}", topic.name));
    schema.set_path("properties.scenario", object_of(&inputs));
    schema.set_path("properties.answer", answer(topic));
    schema
}

/// Schema of a scenario with every field that any topic reads.
#[must_use]
pub fn of_scenario() -> Tree {
    let inputs: Vec<&Input> = INPUTS.iter().collect();
    let mut schema = document("Axlewright: scenario");
    if let Tree::Map(entries) = object_of(&inputs) {
        for (name, value) in entries {
            schema.set(&name, value);
        }
    }
    schema
}

fn document(title: &str) -> Tree {
    let mut schema = Tree::map();
    schema.set("$schema", Tree::text(DIALECT));
    schema.set("title", Tree::text(title));
    schema.set("type", Tree::text("object"));
    schema
}

fn object_of(inputs: &[&Input]) -> Tree {
    let mut root = closed_object();
    for input in inputs {
        match input.path.split_once('.') {
            None => root.set_path(&format!("properties.{}", input.path), field(input)),
            Some((section, name)) => {
                let place = format!("properties.{section}");
                let mut part = root
                    .get("properties")
                    .and_then(|p| p.get(section))
                    .cloned()
                    .unwrap_or_else(closed_object);
                part.set_path(&format!("properties.{name}"), field(input));
                root.set_path(&place, part);
            }
        }
    }
    root
}

fn closed_object() -> Tree {
    let mut object = Tree::map();
    object.set("type", Tree::text("object"));
    object.set("additionalProperties", Tree::Bool(false));
    object
}

fn texts(items: &[&str]) -> Tree {
    Tree::List(items.iter().map(|item| Tree::text(*item)).collect())
}

fn field(input: &Input) -> Tree {
    let mut field = Tree::map();
    field.set(
        "title",
        Tree::text(words::get(Lang::English, &input.label_key())),
    );
    field.set(
        "description",
        Tree::text(words::get(Lang::English, &input.help_key())),
    );
    match &input.kind {
        Kind::Quantity {
            dimension,
            accepted,
            default,
            ..
        } => {
            field.set("type", texts(&["string", "number"]));
            field.set("minimum", Tree::Number(accepted.0));
            field.set("maximum", Tree::Number(accepted.1));
            if let Some(default) = default {
                field.set("default", Tree::Number(*default));
            }
            field.set("x-symbol", Tree::text(input.symbol));
            field.set("x-unit", Tree::text(dimension.si_unit()));
            let units: Vec<&str> = dimension.units().collect();
            field.set("x-units", texts(&units));
        }
        Kind::Choice { words, default } => {
            field.set("type", Tree::text("string"));
            field.set("enum", texts(words));
            if let Some(word) = default {
                field.set("default", Tree::text(*word));
            }
        }
        Kind::Text { .. } => field.set("type", Tree::text("string")),
        Kind::Layouts => {
            let mut item = Tree::map();
            item.set("enum", texts(Layout::NAMES));
            // A text names them too, with spaces between, as an attribute does.
            field.set("type", texts(&["array", "string"]));
            field.set("items", item);
        }
    }
    field
}

fn answer(topic: &Topic) -> Tree {
    let mut root = closed_object();
    root.set("required", texts(&["topic", "scenario"]));
    root.set_path("properties.topic.const", Tree::text(topic.name));
    for (at, output) in topic.outputs.iter().enumerate() {
        let title = words::get(Lang::English, &topic.output_key(at));
        let mut field = Tree::map();
        field.set("title", Tree::text(title));
        match output.kind {
            OutputKind::Quantity(dimension) => {
                field.set("type", Tree::text("number"));
                field.set("x-symbol", Tree::text(output.symbol));
                field.set("x-unit", Tree::text(dimension.si_unit()));
                field.set("x-digits", Tree::Number(f64::from(output.digits)));
            }
            OutputKind::Word => field.set("type", Tree::text("string")),
            OutputKind::Flag => field.set("type", Tree::text("boolean")),
            OutputKind::Sentence | OutputKind::Layout => field.set("type", Tree::text("string")),
        }
        put(&mut root, "", output.name, field);
    }
    root.set_path("properties.scenario.$ref", Tree::text(SCENARIO_PLACE));
    root.set_path("properties.working.type", Tree::text("array"));
    root.set_path("properties.working.items", step());
    root
}

/// Puts a field at its path in an object; `*` stands for the name of any layout, under `surfaces` for
/// that of any surface.
fn put(object: &mut Tree, under: &str, path: &str, field: Tree) {
    let (head, rest) = path.split_once('.').unwrap_or((path, ""));
    let place = if head == "*" {
        let names = match under {
            "surfaces" => surface::NAMES,
            _ => Layout::NAMES,
        };
        object.set_path("propertyNames.enum", texts(names));
        "additionalProperties".into()
    } else {
        format!("properties.{head}")
    };
    if rest.is_empty() {
        return object.set_path(&place, field);
    }
    let known = place
        .split('.')
        .try_fold(&*object, |part, name| part.get(name))
        .filter(|part| matches!(part, Tree::Map(_)));
    let mut inner = known.cloned().unwrap_or_else(closed_object);
    put(&mut inner, head, rest, field);
    object.set_path(&place, inner);
}

/// One step of a working. A step without `layout` is about the whole vehicle; one without `gives`
/// leads to a value that the answer does not hold.
fn step() -> Tree {
    let mut step = closed_object();
    let always = ["about", "equation", "latex", "inputs", "result", "source"];
    step.set("required", texts(&always));
    for name in ["about", "layout", "gives", "equation", "latex", "source"] {
        step.set_path(&format!("properties.{name}.type"), Tree::text("string"));
    }
    let mut quantity = closed_object();
    quantity.set("required", texts(&["symbol", "value", "unit"]));
    for (name, kind) in [
        ("symbol", "string"),
        ("value", "number"),
        ("unit", "string"),
    ] {
        quantity.set_path(&format!("properties.{name}.type"), Tree::text(kind));
    }
    step.set_path("properties.inputs.type", Tree::text("array"));
    step.set_path("properties.inputs.items", quantity.clone());
    step.set_path("properties.result", quantity);
    let solved = "properties.solved_for_unknown.type";
    step.set_path(solved, Tree::text("boolean"));
    step
}

/// A scenario to start from, as commented TOML: every field of a topic, those of the example set.
#[must_use]
pub fn starter(topic: &Topic) -> String {
    let mut text = format!(
        "# A scenario for `axlewright answer {} FILE`. {}\n",
        topic.name,
        words::get(Lang::English, "starter.intro")
    );
    // A commented field tells the value that it has without being set.
    let shown = topic.example().unwrap_or_default();
    let mut section = "";
    let mut inputs: Vec<&Input> = topic.inputs().collect();
    // TOML wants the fields without a section before the first section.
    inputs.sort_by_key(|input| {
        let head = input.path.split_once('.').map_or("", |(head, _)| head);
        INPUTS
            .iter()
            .position(|i| !head.is_empty() && i.path.starts_with(head))
    });
    for input in inputs {
        let (head, name) = input.path.split_once('.').unwrap_or(("", input.path));
        if head != section {
            section = head;
            text.push_str(&format!("\n[{head}]\n"));
        }
        let example = topic.example.iter().find(|(path, _)| *path == input.path);
        let value = match (example, &input.kind) {
            (Some((_, value)), Kind::Layouts) => {
                let names: Vec<String> = value.split(' ').map(|n| format!("\"{n}\"")).collect();
                format!("[{}]", names.join(", "))
            }
            (Some((_, value)), _) => format!("\"{value}\""),
            (
                None,
                Kind::Quantity {
                    dimension,
                    usual,
                    default,
                    ..
                },
            ) => {
                let shown = shown.number(input.path);
                let value = shown.or(*default).unwrap_or(usual.0);
                let shown = format!("{} {}", format::plain(value), dimension.si_unit());
                format!("\"{}\"", shown.trim())
            }
            (None, Kind::Choice { words, default }) => {
                format!(
                    "\"{}\"",
                    default.or(words.first().copied()).unwrap_or_default()
                )
            }
            (None, Kind::Text { .. }) => "\"\"".into(),
            (None, Kind::Layouts) => "[\"F1\", \"R1\"]".into(),
        };
        let mark = if example.is_some() { "" } else { "# " };
        let help = words::get(Lang::English, &input.help_key());
        let allowed = input.allowed().phrase(Lang::English);
        text.push_str(&format!("# {help} ({allowed})\n{mark}{name} = {value}\n"));
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::topic::TOPICS;

    #[test]
    fn a_schema_knows_every_field_of_its_topic() {
        for topic in TOPICS {
            let schema = of_topic(topic);
            let scenario = schema.get("properties").and_then(|p| p.get("scenario"));
            for path in topic.inputs {
                let mut place = scenario;
                for part in path.split('.') {
                    place = place
                        .and_then(|p| p.get("properties"))
                        .and_then(|p| p.get(part));
                }
                assert!(place.is_some(), "{path}");
            }
        }
    }
}
