//! TypeScript types. Those of scenarios and answers are printed from the topics' JSON Schemas.
//!
//! The elements are interfaces: the script gives them to the page by their tags and exports no class.

use super::{camel, pascal, union};
use axlewright_core::input::{Input, Kind};
use axlewright_core::layout::Layout;
use axlewright_core::topic::{TOPICS, Topic};
use axlewright_core::words::{self, Lang};
use axlewright_core::{Tree, schema};
use axlewright_widgets::element::interface::{
    ATTRIBUTES, Attribute, DETAILS, EVENTS, Event, FUNCTIONS, Field, MEMBERS, Member, MemberKind,
    Takes, talk, view_words,
};

/// What React, Preact and their like accept on any tag.
const MARKUP: &str = "\
/** What a tag in JSX takes besides the attributes of its element. */
export interface AxleMarkup {
  children?: unknown;
  class?: string;
  className?: string;
  id?: string;
  key?: string | number | bigint | null;
  ref?: unknown;
  slot?: string;
  style?: unknown;
}

";

const EVENT_LISTENERS: &str = "  addEventListener<K extends keyof AxleEventMap<Scenario, Answer>>(
    type: K,
    listener: (this: this, event: AxleEventMap<Scenario, Answer>[K]) => unknown,
    options?: boolean | AddEventListenerOptions,
  ): void;
  addEventListener<K extends keyof HTMLElementEventMap>(
    type: K,
    listener: (this: HTMLElement, event: HTMLElementEventMap[K]) => unknown,
    options?: boolean | AddEventListenerOptions,
  ): void;
  addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject,
    options?: boolean | AddEventListenerOptions,
  ): void;
  removeEventListener<K extends keyof AxleEventMap<Scenario, Answer>>(
    type: K,
    listener: (this: this, event: AxleEventMap<Scenario, Answer>[K]) => unknown,
    options?: boolean | EventListenerOptions,
  ): void;
  removeEventListener<K extends keyof HTMLElementEventMap>(
    type: K,
    listener: (this: HTMLElement, event: HTMLElementEventMap[K]) => unknown,
    options?: boolean | EventListenerOptions,
  ): void;
  removeEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject,
    options?: boolean | EventListenerOptions,
  ): void;
";

/// `axlewright.d.ts`.
pub(super) fn types(version: &str) -> String {
    let mut out = format!(
        "// Types of axlewright.js {version}, made from the tables of the program.\n\n\
         /** Where the motors are. */\nexport type Layout = {};\n\n",
        union(Layout::NAMES)
    );
    out += &shared();
    for topic in TOPICS {
        out += &of_topic(topic);
    }
    out += &of_talk();
    out += &maps();
    for function in FUNCTIONS {
        out += &export(function);
    }
    out += MARKUP;
    out += &markup();
    out += &globals();
    out
}

/// Types that all elements share.
fn shared() -> String {
    let step = TOPICS.first().and_then(|topic| {
        let schema = schema::of_topic(topic);
        place(&schema, "properties.answer.properties.working.items").cloned()
    });
    let mut out = format!(
        "/** One step of a working. */\nexport interface WorkingStep {}\n\n\
         /** An answer with its working. */\n\
         export type Worked<Answer> = Answer & {{ working: WorkingStep[] }};\n\n\
         /** What is thrown where a scenario is refused. */\n\
         export interface AxleError extends Error {{\n  field: string;\n  value: string;\n  allowed: string;\n}}\n\n",
        step.map_or("{}".into(), |step| shape(&step, "", ""))
    );
    out += &details(DETAILS);
    out += &event_map(EVENT_MAP, EVENTS);
    out += "/** What every element has. */\n\
            export interface AxleElement<Scenario, Answer> extends HTMLElement {\n";
    for member in MEMBERS {
        out += &property(member);
    }
    let own = |name: &str| MEMBERS.iter().any(|member| member.name == name) || name == "lang";
    let common = ATTRIBUTES.iter().filter(|a| !own(a.name));
    for attribute in common.filter(|a| !matches!(a.takes, Takes::View)) {
        let takes = takes(&attribute.takes, None);
        out += &accessor(attribute.name, &takes, attribute.help);
    }
    out + EVENT_LISTENERS + "}\n\n"
}

/// The map of the events that every element sends.
const EVENT_MAP: &str = "AxleEventMap<Scenario, Answer>";

fn details(all: &[(&str, &[Field])]) -> String {
    let mut out = String::new();
    for (name, fields) in all {
        out += &format!("export interface {name} {{\n");
        for field in *fields {
            let help = doc(field.help, "  ");
            out += &format!("{help}  {}: {};\n", field.name, field.kind);
        }
        out += "}\n\n";
    }
    out
}

fn event_map(map: &str, events: &[Event]) -> String {
    let mut out = format!("export interface {map} {{\n");
    for event in events {
        let (help, name, detail) = (doc(event.help, "  "), event.name, event.detail);
        out += &format!("{help}  \"{name}\": CustomEvent<{detail}>;\n");
    }
    out + "}\n\n"
}

/// The element of talks.
fn of_talk() -> String {
    const MAP: &str = "AxleTalkEventMap";
    let mut out = details(talk::DETAILS) + &event_map(MAP, talk::EVENTS);
    out += &format!(
        "/** {}: `<{}>`, from {}. */\nexport interface AxleTalkElement extends HTMLElement {{\n",
        talk::HELP.trim_end_matches('.'),
        talk::TAG,
        talk::MODULE
    );
    for member in talk::MEMBERS {
        out += &property(member);
    }
    out + &EVENT_LISTENERS.replace(EVENT_MAP, MAP) + "}\n\n"
}

fn takes(takes: &Takes, topic: Option<&Topic>) -> String {
    match takes {
        Takes::Word(words) => union(words),
        Takes::View => union(&view_words(topic)),
        Takes::Words(_) | Takes::Text(_) => "string".into(),
    }
}

fn property(member: &Member) -> String {
    let (name, help) = (member.name, doc(member.help, "  "));
    match member.kind {
        MemberKind::ReadOnly(kind) => format!("{help}  readonly {name}: {kind};\n"),
        MemberKind::Value(read, set) => {
            format!("{help}  get {name}(): {read};\n  set {name}(value: {set});\n")
        }
        MemberKind::Call(ways) => {
            let ways = ways.iter().map(|way| format!("  {name}{way};\n"));
            help + &ways.collect::<String>()
        }
    }
}

/// An attribute as a property: it gives the text of the attribute.
fn accessor(attribute: &str, set: &str, help: &str) -> String {
    let name = camel(attribute);
    format!(
        "{}  get {name}(): string | null;\n  set {name}(value: {set} | null | undefined);\n",
        doc(help, "  ")
    )
}

/// What an input takes as an attribute. Words and layouts may be typed in any way that the element reads.
pub(super) fn input_takes(input: &Input) -> String {
    match &input.kind {
        Kind::Quantity { .. } => "string | number".into(),
        Kind::Choice { words, .. } => union(words),
        Kind::Layouts | Kind::Text { .. } => "string".into(),
    }
}

fn help_of(input: &Input) -> &'static str {
    words::get(Lang::English, &input.help_key())
}

fn of_topic(topic: &Topic) -> String {
    let schema = schema::of_topic(topic);
    let name = pascal(topic.name);
    let mut out = String::new();
    for (part, path) in [
        ("Scenario", "properties.scenario"),
        ("Answer", "properties.answer"),
    ] {
        let printed = place(&schema, path).map_or("{}".into(), |tree| shape(tree, "", &name));
        out += &format!("export interface {name}{part} {printed}\n\n");
    }
    let title = words::get(Lang::English, &format!("topic.{}", topic.name));
    out += &format!(
        "/** {title}: `<{}>`. */\nexport interface Axle{name}Element extends AxleElement<{name}Scenario, {name}Answer> {{\n",
        topic.tag()
    );
    for attribute in own_attributes() {
        let takes = takes(&attribute.takes, Some(topic));
        out += &accessor(attribute.name, &takes, attribute.help);
    }
    for input in topic.inputs() {
        out += &accessor(&input.attribute(), &input_takes(input), help_of(input));
    }
    out + "}\n\n"
}

/// From names of topics, with underscores or hyphens, to their types.
fn maps() -> String {
    let mut out = String::new();
    for part in ["Scenario", "Answer"] {
        out += &format!("export interface {part}s {{\n");
        for topic in TOPICS {
            let kind = format!("{}{part}", pascal(topic.name));
            out += &format!("  {}: {kind};\n", topic.name);
            if topic.slug() != topic.name {
                out += &format!("  \"{}\": {kind};\n", topic.slug());
            }
        }
        out += "}\n\n";
    }
    let names: Vec<&str> = TOPICS.iter().map(|topic| topic.name).collect();
    out + &format!(
        "/** A topic, with underscores or hyphens. */\nexport type Topic = keyof Scenarios;\n\
         export type TopicName = {};\n\n",
        union(&names)
    )
}

fn export(member: &Member) -> String {
    let (name, help) = (member.name, doc(member.help, ""));
    let before = if name == "init" {
        "export default"
    } else {
        "export"
    };
    match member.kind {
        MemberKind::ReadOnly(kind) | MemberKind::Value(kind, _) => {
            format!("{help}export const {name}: {kind};\n\n")
        }
        MemberKind::Call(ways) => {
            let ways = ways
                .iter()
                .map(|way| format!("{before} function {name}{way};\n"));
            help + &ways.collect::<String>() + "\n"
        }
    }
}

/// The tags with their attributes, for JSX.
fn markup() -> String {
    let mut out = String::from(
        "/** Attributes of every element, as JSX writes them. */\nexport interface AxleAttributes extends AxleMarkup {\n",
    );
    let common = ATTRIBUTES.iter();
    for attribute in common.filter(|a| !matches!(a.takes, Takes::View)) {
        let kind = takes(&attribute.takes, None);
        out += &format!("  \"{}\"?: {kind};\n", attribute.name);
    }
    out += "}\n\n/** The tags for JSX; the reference page shows how to make them known. */\nexport interface AxleIntrinsicElements {\n";
    for topic in TOPICS {
        out += &format!("  \"{}\": AxleAttributes & {{\n", topic.tag());
        for attribute in own_attributes() {
            let kind = takes(&attribute.takes, Some(topic));
            out += &format!("    \"{}\"?: {kind};\n", attribute.name);
        }
        for input in topic.inputs() {
            out += &format!("    \"{}\"?: {};\n", input.attribute(), input_takes(input));
        }
        out += "  };\n";
    }
    out += &format!("  \"{}\": AxleMarkup & {{\n", talk::TAG);
    for attribute in talk::ATTRIBUTES {
        let kind = takes(&attribute.takes, None);
        out += &format!("    \"{}\"?: {kind};\n", attribute.name);
    }
    out + "  };\n}\n\n"
}

/// Attributes whose words differ from topic to topic.
fn own_attributes() -> impl Iterator<Item = &'static Attribute> {
    ATTRIBUTES.iter().filter(|a| matches!(a.takes, Takes::View))
}

fn globals() -> String {
    let mut out = String::from("declare global {\n  interface HTMLElementTagNameMap {\n");
    for topic in TOPICS {
        out += &format!(
            "    \"{}\": Axle{}Element;\n",
            topic.tag(),
            pascal(topic.name)
        );
    }
    out += &format!("    \"{}\": AxleTalkElement;\n", talk::TAG);
    out += "  }\n  interface GlobalEventHandlersEventMap\n    extends AxleEventMap<Scenarios[TopicName], Answers[TopicName]> {\n    \"axle-step\": CustomEvent<AxleStep>;\n  }\n";
    out += "  /** What axlewright.classic.js gives to a page. */\n  var axlewright: {\n";
    for function in FUNCTIONS {
        out += &format!("    {}: typeof {};\n", function.name, function.name);
    }
    out + "  } | undefined;\n}\n"
}

/// A part of a schema; its path has dots.
fn place<'a>(schema: &'a Tree, path: &str) -> Option<&'a Tree> {
    path.split('.')
        .try_fold(schema, |tree, name| tree.get(name))
}

fn text<'a>(schema: &'a Tree, name: &str) -> &'a str {
    match schema.get(name) {
        Some(Tree::Text(text)) => text,
        _ => "",
    }
}

fn texts<'a>(tree: Option<&'a Tree>) -> Vec<&'a str> {
    let one = |tree: &'a Tree| match tree {
        Tree::Text(text) => Some(text.as_str()),
        _ => None,
    };
    match tree {
        Some(Tree::List(items)) => items.iter().filter_map(one).collect(),
        Some(tree) => one(tree).into_iter().collect(),
        None => Vec::new(),
    }
}

/// The TypeScript type of a JSON Schema, of the kinds that the core writes. `topic` begins the name
/// of the scenario's type.
fn shape(schema: &Tree, indent: &str, topic: &str) -> String {
    if schema.get("$ref").is_some() {
        return format!("{topic}Scenario");
    }
    if schema.get("const").is_some() {
        return union(&[text(schema, "const")]);
    }
    if schema.get("enum").is_some() {
        return union(&texts(schema.get("enum")));
    }
    let kinds = texts(schema.get("type"));
    let kinds = kinds.iter().map(|kind| match *kind {
        "array" => {
            let items = schema.get("items").map(|items| shape(items, indent, topic));
            format!("Array<{}>", items.unwrap_or("unknown".into()))
        }
        "object" => object(schema, indent, topic),
        other => other.to_owned(),
    });
    kinds.collect::<Vec<_>>().join(" | ")
}

fn object(schema: &Tree, indent: &str, topic: &str) -> String {
    if let Some(each @ Tree::Map(_)) = schema.get("additionalProperties") {
        let keys = schema.get("propertyNames");
        let keys = keys.map_or("string".into(), |keys| shape(keys, indent, topic));
        // Written out only where it is another set of names than that of the layouts.
        let layouts = union(Layout::NAMES);
        let keys = if keys == layouts { "Layout" } else { &keys };
        return format!("Partial<Record<{keys}, {}>>", shape(each, indent, topic));
    }
    let required = texts(schema.get("required"));
    let deeper = format!("{indent}  ");
    let mut out = String::from("{\n");
    if let Some(Tree::Map(fields)) = schema.get("properties") {
        for (name, field) in fields {
            let mark = if required.contains(&name.as_str()) {
                ""
            } else {
                "?"
            };
            let kind = if name == "working" {
                "WorkingStep[]".into()
            } else {
                shape(field, &deeper, topic)
            };
            out += &format!(
                "{}{deeper}{name}{mark}: {kind};\n",
                doc(&about(field), &deeper)
            );
        }
    }
    out + indent + "}"
}

/// What a field is, with its unit.
fn about(field: &Tree) -> String {
    let (title, help, unit) = (
        text(field, "title"),
        text(field, "description"),
        text(field, "x-unit"),
    );
    let mut line = title.to_owned();
    if !unit.is_empty() {
        line += &format!(" [{unit}]");
    }
    if !help.is_empty() {
        line += &format!(". {help}");
    }
    line
}

fn doc(text: &str, indent: &str) -> String {
    if text.is_empty() {
        return String::new();
    }
    format!("{indent}/** {} */\n", text.replace("*/", "* /"))
}
