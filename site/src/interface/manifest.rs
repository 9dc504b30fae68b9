//! The manifest of the elements in the community's format, version 1.0.0, which editors read.

use super::{camel, pascal, types};
use axlewright_core::topic::{TOPICS, Topic};
use axlewright_core::words::{self, Lang};
use axlewright_widgets::element::interface::{
    ATTRIBUTES, Attribute, EVENTS, Event, FUNCTIONS, MEMBERS, Member, MemberKind, PARTS, Part,
    STYLES, Takes, talk, view_words,
};
use serde_json::{Value, json};

const MODULE: &str = "axlewright.js";

/// `custom-elements.json`.
pub(super) fn manifest() -> Value {
    let elements = TOPICS.iter().map(|topic| element(topic));
    let definitions = TOPICS.iter().map(|topic| {
        json!({
            "kind": "custom-element-definition",
            "name": topic.tag(),
            "declaration": { "name": class_of(topic), "module": MODULE },
        })
    });
    let exports = FUNCTIONS.iter().map(|function| {
        json!({
            "kind": "js",
            "name": if function.name == "init" { "default" } else { function.name },
            "declaration": { "name": function.name, "module": MODULE },
        })
    });
    json!({
        "schemaVersion": "1.0.0",
        "modules": [{
            "kind": "javascript-module",
            "path": MODULE,
            "declarations": elements.chain(FUNCTIONS.iter().map(declaration)).collect::<Vec<_>>(),
            "exports": definitions.chain(exports).collect::<Vec<_>>(),
        }, {
            "kind": "javascript-module",
            "path": talk::MODULE,
            "declarations": [of_talk()],
            "exports": [{
                "kind": "custom-element-definition",
                "name": talk::TAG,
                "declaration": { "name": TALK_CLASS, "module": talk::MODULE },
            }],
        }],
    })
}

const TALK_CLASS: &str = "AxleTalkElement";

/// What stands between the tags of any element.
const SLOT: &str = "What is shown until the element is ready, and for ever where it cannot start.";

fn of_talk() -> Value {
    let attributes = talk::ATTRIBUTES.iter().map(|own| attribute(own, None));
    let members = talk::MEMBERS.iter().map(|own| declared(own, true));
    json!({
        "kind": "class",
        "customElement": true,
        "name": TALK_CLASS,
        "tagName": talk::TAG,
        "description": talk::HELP,
        "superclass": { "name": "HTMLElement" },
        "attributes": attributes.collect::<Vec<_>>(),
        "members": members.collect::<Vec<_>>(),
        "events": talk::EVENTS.iter().map(event).collect::<Vec<_>>(),
        "slots": [named("", SLOT)],
        "cssParts": talk::PARTS.iter().map(part).collect::<Vec<_>>(),
    })
}

fn attribute(attribute: &Attribute, topic: Option<&Topic>) -> Value {
    let kind = match attribute.takes {
        Takes::Word(words) | Takes::Words(words) => words.join(" | "),
        Takes::View => view_words(topic).join(" | "),
        Takes::Text(_) => "string".into(),
    };
    json!({
        "name": attribute.name,
        "description": attribute.help,
        "type": { "text": kind },
        "default": attribute.default,
    })
}

fn event(event: &Event) -> Value {
    json!({
        "name": event.name,
        "description": event.help,
        "type": { "text": format!("CustomEvent<{}>", event.detail) },
    })
}

fn part(part: &Part) -> Value {
    named(part.name, part.help)
}

fn named(name: &str, help: &str) -> Value {
    json!({ "name": name, "description": help })
}

fn class_of(topic: &Topic) -> String {
    format!("Axle{}Element", pascal(topic.name))
}

fn element(topic: &Topic) -> Value {
    let common = ATTRIBUTES.iter().map(|common| {
        let mut told = attribute(common, Some(topic));
        told["fieldName"] = camel(common.name).into();
        told
    });
    let inputs = topic.inputs().map(|input| {
        let help = words::get(Lang::English, &input.help_key());
        let allowed = input.allowed().phrase(Lang::English);
        json!({
            "name": input.attribute(),
            "description": format!("{help} Allowed: {allowed}."),
            "type": { "text": types::input_takes(input) },
            "fieldName": camel(&input.attribute()),
        })
    });
    json!({
        "kind": "class",
        "customElement": true,
        "name": class_of(topic),
        "tagName": topic.tag(),
        "description": words::get(Lang::English, &format!("topic.{}", topic.name)),
        "superclass": { "name": "HTMLElement" },
        "attributes": common.chain(inputs).collect::<Vec<_>>(),
        "members": MEMBERS.iter().map(declaration).collect::<Vec<_>>(),
        "events": EVENTS.iter().map(event).collect::<Vec<_>>(),
        "slots": [named("", SLOT)],
        "cssParts": PARTS.iter().map(part).collect::<Vec<_>>(),
        "cssProperties": STYLES.iter().map(|style| json!({
            "name": style.name,
            "description": style.help,
            "syntax": style.syntax,
            "default": style.light,
        })).collect::<Vec<_>>(),
    })
}

/// A member of a class, or something that the module declares: it is told in the same way.
fn declaration(member: &Member) -> Value {
    let of_class = MEMBERS.iter().any(|own| own.name == member.name);
    declared(member, of_class)
}

fn declared(member: &Member, of_class: bool) -> Value {
    match member.kind {
        MemberKind::Call(ways) => json!({
            "kind": if of_class { "method" } else { "function" },
            "name": member.name,
            "description": format!("{} {}", ways.join("; "), member.help),
        }),
        MemberKind::ReadOnly(kind) => json!({
            "kind": if of_class { "field" } else { "variable" },
            "name": member.name,
            "description": member.help,
            "type": { "text": kind },
            "readonly": true,
        }),
        MemberKind::Value(kind, _) => json!({
            "kind": if of_class { "field" } else { "variable" },
            "name": member.name,
            "description": member.help,
            "type": { "text": kind },
        }),
    }
}
