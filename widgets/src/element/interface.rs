//! What a page may rely on: attributes, properties, methods, events, parts, custom properties and the
//! functions of the script. Types, the manifest and the reference page are made from these tables, and
//! tests hold them against the code, so that neither can leave the other behind.
//!
//! The inputs of a topic are attributes too; they are declared in the core's `INPUTS`. The texts stand
//! here and not in the catalogue, because the catalogue goes into every browser.

pub mod talk;

#[cfg(test)]
mod tests;

use crate::visual::{View, Visual};
use axlewright_core::topic::Topic;

/// An attribute that every element has besides the inputs of its topic.
#[derive(Debug)]
pub struct Attribute {
    /// Name.
    pub name: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// What holds without it.
    pub default: &'static str,
    /// What it does.
    pub help: &'static str,
}

/// What an attribute takes.
#[derive(Debug)]
pub enum Takes {
    /// One word of these.
    Word(&'static [&'static str]),
    /// One word of the views that the topic's figure has: [`view_words`].
    View,
    /// Any of these words, with spaces between.
    Words(&'static [&'static str]),
    /// A text; what kind of text.
    Text(&'static str),
}

/// A property, a method or a function, with its type in TypeScript.
#[derive(Debug)]
pub struct Member {
    /// Name.
    pub name: &'static str,
    /// What it is.
    pub kind: MemberKind,
    /// What it does.
    pub help: &'static str,
}

/// What a member is. In a type, `Scenario` and `Answer` are those of the element's topic.
#[derive(Debug)]
pub enum MemberKind {
    /// A value that is read.
    ReadOnly(&'static str),
    /// A value that is read as the first type and set as the second.
    Value(&'static str, &'static str),
    /// Something to call: parameters and what it gives, one text for each way to call it.
    Call(&'static [&'static str]),
}

/// An event. All of them bubble and leave the shadow root.
#[derive(Debug)]
pub struct Event {
    /// Name.
    pub name: &'static str,
    /// Name of the type of `detail`.
    pub detail: &'static str,
    /// When it is sent.
    pub help: &'static str,
}

/// A field of the detail of an event.
#[derive(Debug)]
pub struct Field {
    /// Name; with a question mark where it may be missing.
    pub name: &'static str,
    /// Type in TypeScript.
    pub kind: &'static str,
    /// What it holds.
    pub help: &'static str,
}

/// A part that a page may style by `::part()`.
#[derive(Debug)]
pub struct Part {
    /// Name.
    pub name: &'static str,
    /// What it is.
    pub help: &'static str,
}

/// A custom property that a page may set on an element.
#[derive(Debug)]
pub struct Style {
    /// Name.
    pub name: &'static str,
    /// Value on a light page.
    pub light: &'static str,
    /// Value on a dark page.
    pub dark: &'static str,
    /// What it takes, as CSS writes the syntax of a value.
    pub syntax: &'static str,
    /// What it does.
    pub help: &'static str,
}

/// Views that a topic's figure may begin in; the chart has its own place.
#[must_use]
pub fn views(topic: &Topic) -> Vec<View> {
    let all = Visual::of(topic).map_or(&[][..], |visual| visual.views);
    let views = all.iter().copied();
    views.filter(|view| *view != View::Chart).collect()
}

/// What the attribute `view` takes: the words of one topic's views, or those of all topics.
#[must_use]
pub fn view_words(topic: Option<&Topic>) -> Vec<&'static str> {
    let own = topic.map(views);
    let known = |view: &View| own.as_ref().is_none_or(|own| own.contains(view));
    let all = View::ALL.into_iter().filter(|view| *view != View::Chart);
    all.filter(known).map(View::word).collect()
}

/// Attributes of every element.
pub const ATTRIBUTES: &[Attribute] = &[
    Attribute {
        name: "scenario",
        takes: Takes::Text("a scenario as JSON, or the address of a file that holds one"),
        default: "",
        help: "Gives many inputs at once. Attributes of single inputs win over it.",
    },
    Attribute {
        name: "units",
        takes: Takes::Word(&["si", "us"]),
        default: "si",
        help: "Units in which numbers are shown: metric, or those customary in the United States. Typed values may have any unit.",
    },
    Attribute {
        name: "lang",
        takes: Takes::Text("a language tag (BCP 47)"),
        default: "the language of the page",
        help: "Language of the words. Where the element has none in that language, they are English.",
    },
    Attribute {
        name: "controls",
        takes: Takes::Text("names of input attributes, with spaces between"),
        default: "the usual ones of the topic",
        help: "Inputs that the reader may move. Empty: none.",
    },
    Attribute {
        name: "show",
        takes: Takes::Words(&["figure", "tools", "chart", "data", "readouts", "working"]),
        default: "all of them",
        help: "Parts of the element that are shown.",
    },
    Attribute {
        name: "view",
        takes: Takes::View,
        default: "the first view of the topic",
        help: "View in which the figure begins: from the side, from above, or bars. Each topic has some of them. The chart has its own place.",
    },
    Attribute {
        name: "reveal",
        takes: Takes::Words(&[
            "ground",
            "wheels",
            "body",
            "motors",
            "cg",
            "inertial_force",
            "axle_loads",
            "tractive_forces",
            "friction_circles",
            "motion",
            "dimensions",
            "labels",
            "headline",
        ]),
        default: "all of them",
        help: "Parts of the figure that are drawn, to build it up step by step. A chart and a caution are always whole.",
    },
    Attribute {
        name: "question",
        takes: Takes::Text("the name of a question or \"any\", then a whole number as its seed"),
        default: "",
        help: "Asks for a prediction before the answer is shown. The same seed gives the same numbers everywhere; without one the values of the scenario are asked.",
    },
    Attribute {
        name: "theme",
        takes: Takes::Word(&["auto", "light", "dark"]),
        default: "auto",
        help: "Colours for a light or a dark page. Without it the reader's own setting is followed.",
    },
];

/// Properties and methods of every element. Each attribute is a property too, in camel case.
pub const MEMBERS: &[Member] = &[
    Member {
        name: "scenario",
        kind: MemberKind::Value("Scenario | null", "Scenario | string | null | undefined"),
        help: "The scenario that is shown, as a plain object. It may be set to an object, to JSON or to the address of a file.",
    },
    Member {
        name: "answer",
        kind: MemberKind::ReadOnly("Worked<Answer> | null"),
        help: "The last good answer with its working, in SI units; null before the first, and while a question is open.",
    },
    Member {
        name: "updateComplete",
        kind: MemberKind::ReadOnly("Promise<boolean>"),
        help: "Starts the element if need be. True once it shows its present state, false if it cannot.",
    },
    Member {
        name: "figure",
        kind: MemberKind::Call(&[
            "(kind?: \"svg\"): Promise<string | null>",
            "(kind: \"png\", options?: { scale?: number }): Promise<Blob | null>",
        ]),
        help: "The figure as a file: SVG text, or a PNG with 1 to 4 pixels for each unit, 2 unless told otherwise; null while a question is open.",
    },
    Member {
        name: "table",
        kind: MemberKind::Call(&[
            "(kind?: \"csv\"): Promise<string | null>",
            "(kind: \"json\"): Promise<Worked<Answer> | null>",
        ]),
        help: "The numbers of the answer as CSV text, or as a plain object; null before the first answer.",
    },
    Member {
        name: "undo",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Takes the reader's last step back.",
    },
    Member {
        name: "redo",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Does again what was taken back.",
    },
    Member {
        name: "reset",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Returns every input to what the page set.",
    },
    Member {
        name: "pin",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Pins the shown state as a ghost to compare with.",
    },
    Member {
        name: "unpin",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Takes the pin away.",
    },
    Member {
        name: "embed",
        kind: MemberKind::Call(&["(kind?: \"module\" | \"classic\" | \"frame\"): Promise<string>"]),
        help: "The line that puts the element with its present state into another page; the module's carries the hash of its script.",
    },
    Member {
        name: "score",
        kind: MemberKind::ReadOnly("AxleScore | null"),
        help: "How far off the reader's last prediction was; null before the first.",
    },
];

/// Events of every element.
pub const EVENTS: &[Event] = &[
    Event {
        name: "axle-change",
        detail: "Scenario",
        help: "The reader changed an input. The detail is the scenario that is shown then. What the page changes itself is not told.",
    },
    Event {
        name: "axle-answer",
        detail: "Answer",
        help: "There is a new answer. The detail holds its numbers without the working, which takes longer to write; the property answer has both.",
    },
    Event {
        name: "axle-problem",
        detail: "AxleProblem",
        help: "A value was refused. The last good answer stays.",
    },
    Event {
        name: "axle-score",
        detail: "AxleScore",
        help: "The reader committed a prediction. Numbers are SI; the score is 1 inside the tolerance and falls to 0 at four times of it.",
    },
];

/// Types of event details that are no scenario and no answer: name and fields.
pub const DETAILS: &[(&str, &[Field])] = &[PROBLEM, SCORE];

const SCORE: (&str, &[Field]) = (
    "AxleScore",
    &[
        Field {
            name: "topic",
            kind: "TopicName",
            help: "The topic.",
        },
        Field {
            name: "question",
            kind: "string",
            help: "Name of the question.",
        },
        Field {
            name: "seed",
            kind: "number | null",
            help: "Its seed; null where the scenario was asked as it stood.",
        },
        Field {
            name: "given",
            kind: "number | string | number[]",
            help: "What the reader said: a number, the word of a choice, or the heights of a line.",
        },
        Field {
            name: "right",
            kind: "number | string | number[]",
            help: "What is right.",
        },
        Field {
            name: "unit",
            kind: "string",
            help: "SI unit of both; empty for choices and pure numbers.",
        },
        Field {
            name: "difference",
            kind: "number | null",
            help: "What was given less what is right; for a line the mean distance, null for a choice.",
        },
        Field {
            name: "relative",
            kind: "number | null",
            help: "The difference as a share of what is right, for a line of its largest value; null for a choice and near zero.",
        },
        Field {
            name: "at",
            kind: "number[] | null",
            help: "Of a line: where along its axis the heights lie; else null.",
        },
        Field {
            name: "within",
            kind: "boolean",
            help: "Whether it is inside the stated tolerance.",
        },
        Field {
            name: "score",
            kind: "number",
            help: "From 0 to 1.",
        },
    ],
);

const PROBLEM: (&str, &[Field]) = (
    "AxleProblem",
    &[
        Field {
            name: "field",
            kind: "string",
            help: "Dotted name of the field; empty where the whole scenario is at fault.",
        },
        Field {
            name: "value",
            kind: "string",
            help: "The value as it was given.",
        },
        Field {
            name: "allowed",
            kind: "string",
            help: "What is allowed, as a phrase.",
        },
        Field {
            name: "message?",
            kind: "string",
            help: "The sentence that the element shows.",
        },
        Field {
            name: "reason?",
            kind: "string",
            help: "Why a scenario could not be read.",
        },
    ],
);

/// Parts of every element.
pub const PARTS: &[Part] = &[
    Part {
        name: "base",
        help: "All that the element shows besides the notice.",
    },
    Part {
        name: "views",
        help: "The buttons that choose what the figure shows.",
    },
    Part {
        name: "figure",
        help: "The figure.",
    },
    Part {
        name: "playback",
        help: "Play, pause, step and time, where something moves.",
    },
    Part {
        name: "controls",
        help: "The inputs that the reader may move.",
    },
    Part {
        name: "readouts",
        help: "The results.",
    },
    Part {
        name: "working",
        help: "The derivation of one result, once it is open.",
    },
    Part {
        name: "chart",
        help: "The chart.",
    },
    Part {
        name: "data",
        help: "The numbers of the chart as a table, once it is open.",
    },
    Part {
        name: "tools",
        help: "The buttons below the figure: pin, full screen, print, save and share.",
    },
    Part {
        name: "done",
        help: "A sentence that says what was saved or copied.",
    },
    Part {
        name: "pinned",
        help: "In what the pinned state differs from the one that is shown.",
    },
    Part {
        name: "pinned-value",
        help: "The value of a result in the pinned state.",
    },
    Part {
        name: "question",
        help: "The question, and after the prediction its verdict.",
    },
    Part {
        name: "caution",
        help: "The caution. Please leave it visible: the physics can hurt someone.",
    },
    Part {
        name: "notice",
        help: "A sentence for when the element cannot start, or was started again.",
    },
];

const fn style(
    name: &'static str,
    light: &'static str,
    dark: &'static str,
    help: &'static str,
) -> Style {
    Style {
        name,
        light,
        dark,
        syntax: "<color>",
        help,
    }
}

/// A custom property that is the same on every page.
const fn measure(
    name: &'static str,
    value: &'static str,
    syntax: &'static str,
    help: &'static str,
) -> Style {
    Style {
        name,
        light: value,
        dark: value,
        syntax,
        help,
    }
}

/// Custom properties of every element. Charts take colours where they are written as six hexadecimal
/// digits.
#[rustfmt::skip]
pub const STYLES: &[Style] = &[
    style("--axle-ink", "#1d2433", "#e8ebf1", "Text and outlines."),
    style("--axle-soft", "#5b6477", "#a9b2c3", "Text of lesser weight."),
    style("--axle-hair", "#c9cfd9", "#3d4656", "Hairlines."),
    style("--axle-fine", "#868fa1", "#737d91", "Thin lines that must be seen, and frames of fields."),
    style("--axle-paper", "#ffffff", "#12161f", "The ground."),
    style("--axle-front", "#0072b2", "#56b4e9", "Strokes of the front axle, and the focus."),
    style("--axle-rear", "#d55e00", "#ef7a26", "Strokes of the rear axle, and a refused field."),
    style("--axle-tractive", "#009e73", "#2fbf93", "Strokes of tractive forces."),
    style("--axle-inertia", "#7a4b8f", "#b98ad0", "Strokes of inertia and yaw."),
    style("--axle-front-text", "#0072b2", "#56b4e9", "Text about the front axle."),
    style("--axle-rear-text", "#b84f00", "#f08a3e", "Text about the rear axle."),
    style("--axle-tractive-text", "#007a58", "#2fbf93", "Text about tractive forces."),
    style("--axle-inertia-text", "#7a4b8f", "#c39ad8", "Text about inertia and yaw."),
    measure("--axle-space", "1", "<number>", "The distances between the parts are multiplied by it."),
    measure("--axle-text-size", "1em", "<length>", "Size of the text. Without it that of the page."),
    measure("--axle-font", "inherit", "<custom-ident>+ | <string>", "Font family. Without it that of the page. It may be set on the page as a whole."),
];

/// What the script exports besides its default, which is `init`.
pub const FUNCTIONS: &[Member] = &[
    Member {
        name: "version",
        kind: MemberKind::ReadOnly("string"),
        help: "Version of the script.",
    },
    Member {
        name: "init",
        kind: MemberKind::Call(&["(options?: { topics?: Topic[] }): Promise<void>"]),
        help: "Starts the physics and fetches the topics, all of them or those that are named. It comes before the first call of another function; elements need no such call. In the module it is the default export.",
    },
    Member {
        name: "solve",
        kind: MemberKind::Call(&[
            "<T extends Topic>(topic: T, scenario: Scenarios[T]): Worked<Answers[T]>",
        ]),
        help: "The answer to a scenario with its working, in SI units. Throws an AxleError where the scenario is refused.",
    },
    Member {
        name: "topics",
        kind: MemberKind::Call(&["(): TopicName[]"]),
        help: "Names of the topics.",
    },
    Member {
        name: "schema",
        kind: MemberKind::Call(&["(topic: Topic): Record<string, unknown>"]),
        help: "JSON Schema of a topic's scenario and answer.",
    },
    Member {
        name: "talk",
        kind: MemberKind::ReadOnly(
            "{ init(topics: string[]): Promise<void>; read(json: string): { title: string; lang: string; steps: Record<string, unknown>[] }; step(json: string, at: number, changed: string, units: string, theme: string, width?: number): Record<string, unknown>; between(json: string, from: number, to: number, share: number): Record<string, unknown>; text(url: URL, signal?: AbortSignal): Promise<string>; checked(json: string): string }",
        ),
        help: "What `<axle-talk>` asks: reads a talk, says and draws one of its steps, and gives the scenario on the way between two steps. A talk is JSON text; `text` reads a file and `checked` a text within the bounds of a scenario.",
    },
    Member {
        name: "provokeTrap",
        kind: MemberKind::Call(&["(): Promise<never>"]),
        help: "Stops the physics on purpose, so that a page can test that its elements come back.",
    },
];
