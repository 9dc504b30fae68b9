//! What a page may rely on in `<axle-talk>`. Its script stands beside that of the elements
//! (`widgets/js/talk/`), so its tables stand beside theirs.

use super::{Attribute, Event, Field, Member, MemberKind, Part, Takes};

/// The tag.
pub const TAG: &str = "axle-talk";

/// The module that defines it.
pub const MODULE: &str = "axlewright-talk.js";

/// What it is.
pub const HELP: &str = "Plays a talk from a file, or from the data between its tags.";

/// Attributes.
pub const ATTRIBUTES: &[Attribute] = &[
    Attribute {
        name: "src",
        takes: Takes::Text("the address of a talk, as TOML or as JSON"),
        default: "the talk that stands inside as a script of the type application/toml or application/json",
        help: "The talk that is played.",
    },
    Attribute {
        name: "lang",
        takes: Takes::Text("a language tag (BCP 47)"),
        default: "the language of the page",
        help: "Language of the buttons. What is said is in the language of the talk.",
    },
    Attribute {
        name: "units",
        takes: Takes::Word(&["si", "us"]),
        default: "si",
        help: "Units in which numbers are shown and said.",
    },
    Attribute {
        name: "theme",
        takes: Takes::Word(&["auto", "light", "dark"]),
        default: "auto",
        help: "Colours for a light or a dark page.",
    },
    Attribute {
        name: "size",
        takes: Takes::Word(&["large"]),
        default: "",
        help: "Larger words, to be read from the back of a room.",
    },
    Attribute {
        name: "frame",
        takes: Takes::Word(&["16:9", "9:16"]),
        default: "",
        help: "Shape of the picture that a camera takes: lying or upright.",
    },
    Attribute {
        name: "background",
        takes: Takes::Word(&["dark", "transparent"]),
        default: "",
        help: "Another ground than the page's: dark, or none, to lie over a film.",
    },
    Attribute {
        name: "clean",
        takes: Takes::Text("nothing: that it is there is enough"),
        default: "",
        help: "Hides every button. The keys still work, and Escape brings the buttons back.",
    },
];

/// Properties and methods. Of the attributes none is a property besides `lang`.
pub const MEMBERS: &[Member] = &[
    Member {
        name: "step",
        kind: MemberKind::Value("number", "number"),
        help: "The step that is shown, or whose question is asked, from 1.",
    },
    Member {
        name: "steps",
        kind: MemberKind::ReadOnly("number"),
        help: "How many steps the talk has; 0 before it is read.",
    },
    Member {
        name: "elapsed",
        kind: MemberKind::ReadOnly("number"),
        help: "Milliseconds since the speaker first went on.",
    },
    Member {
        name: "said",
        kind: MemberKind::ReadOnly("string"),
        help: "What is said now.",
    },
    Member {
        name: "forward",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Answers the question that is asked, or turns to the next step.",
    },
    Member {
        name: "back",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Takes back what the speaker changed, or turns to the step before.",
    },
    Member {
        name: "goTo",
        kind: MemberKind::Call(&["(at: number): Promise<void>"]),
        help: "Turns to a step, counted from 0.",
    },
    Member {
        name: "restore",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Takes back what the speaker changed.",
    },
    Member {
        name: "figure",
        kind: MemberKind::Call(&["(): Promise<string | null>"]),
        help: "The figure of the present step with the ink on it, as SVG text; null where it has none.",
    },
    Member {
        name: "handout",
        kind: MemberKind::Call(&["(): Promise<HTMLElement>"]),
        help: "The whole talk on paper, as an element.",
    },
    Member {
        name: "print",
        kind: MemberKind::Call(&["(): Promise<void>"]),
        help: "Prints the handout.",
    },
];

/// Events. Both bubble and leave the shadow root.
pub const EVENTS: &[Event] = &[
    Event {
        name: "axle-step",
        detail: "AxleStep",
        help: "A step is shown, or its question is asked.",
    },
    Event {
        name: "axle-problem",
        detail: "AxleTalkProblem",
        help: "The talk cannot be given.",
    },
];

/// Types of the details of its events: name and fields.
pub const DETAILS: &[(&str, &[Field])] = &[
    (
        "AxleStep",
        &[
            Field {
                name: "step",
                kind: "number",
                help: "The step, from 1.",
            },
            Field {
                name: "said",
                kind: "string",
                help: "What is said, or asked.",
            },
            Field {
                name: "question?",
                kind: "true",
                help: "There where the question of the step is asked.",
            },
        ],
    ),
    (
        "AxleTalkProblem",
        &[
            Field {
                name: "faults",
                kind: "Array<{ step: number; field: string; message: string }>",
                help: "Every fault of the talk; step 0 is its head. Empty where it could not be read at all.",
            },
            Field {
                name: "message",
                kind: "string",
                help: "The first of them as a sentence.",
            },
        ],
    ),
];

/// Parts.
pub const PARTS: &[Part] = &[
    Part {
        name: "notice",
        help: "A sentence for when the talk cannot be given.",
    },
    Part {
        name: "talk",
        help: "All that is shown besides the notice.",
    },
    Part {
        name: "title",
        help: "The title.",
    },
    Part {
        name: "stage",
        help: "The place of the figure.",
    },
    Part {
        name: "question",
        help: "The question to the audience, and what it predicted.",
    },
    Part {
        name: "said",
        help: "What is said.",
    },
    Part {
        name: "working",
        help: "The derivation, in steps that show one.",
    },
    Part {
        name: "note",
        help: "The speaker's note.",
    },
    Part {
        name: "transcript",
        help: "The whole talk as text.",
    },
];
