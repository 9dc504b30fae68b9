//! The parts of the wasm that a page fetches when something needs them.
//!
//! Each part has one way in: a function marked `wasm_split`. The builder puts into the part whatever only
//! that function reaches. The script fetches a part, puts it beside the running instance, and names it
//! here; nothing enters a part before.

use super::quiz::Mode;
use super::take::Take;
use super::talk::Asked;
use crate::visual::{self, Visual};
use axlewright_core::topic::Topic;
use axlewright_core::words::{Lang, add_english};
use axlewright_core::working::Step;
use axlewright_core::{Problem, Tree};
use std::cell::RefCell;
use std::future::Future;
use std::pin::Pin;
use std::task::{Context, Poll, Waker};

thread_local! {
    static HERE: RefCell<Vec<&'static Part>> = const { RefCell::new(Vec::new()) };
}

/// A part.
pub(crate) struct Part {
    /// What comes with it.
    pub(crate) brings: Brings,
    /// The English words that only it says.
    pub(crate) words: &'static str,
}

/// What comes with a part.
pub(crate) enum Brings {
    /// A topic and its looks.
    Topic(&'static Visual),
    /// Question mode.
    Question(Mode),
    /// What a reader takes along.
    Take(Take),
    /// The printer of workings.
    Working(Working),
    /// The writer of schemas.
    Schema(Schema),
    /// What a talk asks.
    Talk(Asked),
}

/// Prints the steps of a working as HTML.
pub(super) type Working = fn(&[&Step], Lang) -> String;

/// Writes the schema of a topic.
pub(super) type Schema = fn(&Topic) -> Tree;

/// The way into a part, as the macro makes it.
pub(crate) type Entry = Pin<Box<dyn Future<Output = &'static Part>>>;

/// Makes a part of each name, with what it brings.
macro_rules! parts {
    ($($name:ident: $brings:expr),* $(,)?) => {
        $(
            #[wasm_split_helpers::wasm_split($name)]
            fn $name() -> &'static $crate::element::parts::Part {
                const {
                    &$crate::element::parts::Part {
                        brings: $brings,
                        words: axlewright_core::english!(stringify!($name)),
                    }
                }
            }
        )*

        /// The way into the part of a name.
        pub(crate) fn entry(name: &str) -> Option<$crate::element::parts::Entry> {
            match name {
                $(stringify!($name) => Some(Box::pin($name())),)*
                _ => None,
            }
        }
    };
}

/// Makes a part of each topic.
macro_rules! topic_parts {
    ($($topic:ident),*) => {
        pub(crate) mod parts {
            use $crate::element::parts::Brings;

            $crate::element::parts::parts!($($topic: Brings::Topic(&crate::$topic::VISUAL)),*);
        }
    };
}
pub(crate) use {parts, topic_parts};

mod asked {
    use super::Brings;
    use crate::element::{question, take, talk as talks, working_html};
    use axlewright_core::schema as schemas;

    parts! {
        question: Brings::Question(question::MODE),
        take: Brings::Take(take::TAKE),
        working: Brings::Working(working_html::working_html),
        schema: Brings::Schema(schemas::of_topic),
        talk: Brings::Talk(talks::TALK),
    }
}

/// What an entry gives. The part is here already, so its future ends without waiting.
fn at_once(mut entry: Entry) -> Option<&'static Part> {
    let mut context = Context::from_waker(Waker::noop());
    (0..3).find_map(|_| match entry.as_mut().poll(&mut context) {
        Poll::Ready(part) => Some(part),
        Poll::Pending => None,
    })
}

/// Takes a part into use; tells whether there is one of that name.
pub(super) fn add(name: &str) -> bool {
    let entry = visual::parts::entry(name).or_else(|| asked::entry(name));
    let part = entry.and_then(at_once);
    if let Some(part) = part {
        add_english(part.words);
        HERE.with_borrow_mut(|here| here.push(part));
    }
    part.is_some()
}

/// The first part here that is what is wanted.
fn find<T>(wanted: impl FnMut(&&'static Part) -> Option<T>) -> Option<T> {
    HERE.with_borrow(|here| here.iter().find_map(wanted))
}

/// The topics that are here.
pub(super) fn topics() -> Vec<&'static Visual> {
    HERE.with_borrow(|here| {
        let topics = here.iter().filter_map(|part| match &part.brings {
            Brings::Topic(visual) => Some(*visual),
            _ => None,
        });
        topics.collect()
    })
}

/// The topic of a name that is here; hyphens and underscores are the same.
///
/// # Errors
/// [`Problem::UnknownWord`] lists the topics that are here.
pub(super) fn topic(name: &str) -> Result<&'static Visual, Problem> {
    let wanted = name.trim().to_ascii_lowercase().replace('-', "_");
    let here = topics();
    let found = here.iter().find(|visual| visual.topic.name == wanted);
    found.copied().ok_or_else(|| Problem::UnknownWord {
        field: "topic".into(),
        value: name.chars().take(40).collect(),
        allowed: here.iter().map(|visual| visual.topic.name).collect(),
    })
}

/// Question mode.
pub(super) fn question() -> Option<&'static Mode> {
    find(|part| match &part.brings {
        Brings::Question(mode) => Some(mode),
        _ => None,
    })
}

/// What a reader takes along.
pub(super) fn take() -> Option<&'static Take> {
    find(|part| match &part.brings {
        Brings::Take(take) => Some(take),
        _ => None,
    })
}

/// The printer of workings.
pub(super) fn working() -> Option<Working> {
    find(|part| match part.brings {
        Brings::Working(print) => Some(print),
        _ => None,
    })
}

/// The writer of schemas.
pub(super) fn schema() -> Option<Schema> {
    find(|part| match part.brings {
        Brings::Schema(write) => Some(write),
        _ => None,
    })
}

/// What a talk asks.
pub(super) fn talk() -> Option<&'static Asked> {
    find(|part| match &part.brings {
        Brings::Talk(asked) => Some(asked),
        _ => None,
    })
}
