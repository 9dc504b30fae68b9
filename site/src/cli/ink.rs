//! Colour, on a terminal alone.

use std::env;
use std::io::IsTerminal;

/// Whether a stream may be coloured: it is a terminal that knows colour, and nobody asked for none
/// (`NO_COLOR`, <https://no-color.org>).
pub(super) fn allowed(stream: &impl IsTerminal) -> bool {
    let refused = env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
    let dumb = env::var_os("TERM").is_some_and(|value| value == "dumb");
    stream.is_terminal() && !refused && !dumb
}

/// A text in bold.
pub(super) fn bold(text: &str, allowed: bool) -> String {
    dressed("1", text, allowed)
}

/// A text in red, for what went wrong.
pub(super) fn red(text: &str, allowed: bool) -> String {
    dressed("1;31", text, allowed)
}

fn dressed(code: &str, text: &str, allowed: bool) -> String {
    if allowed {
        format!("\u{1b}[{code}m{text}\u{1b}[0m")
    } else {
        text.to_owned()
    }
}

/// A printed answer with its first line, the title, in bold.
pub(super) fn titled(text: &str, allowed: bool) -> String {
    match text.split_once('\n') {
        Some((title, rest)) => format!("{}\n{rest}", bold(title, allowed)),
        None => text.to_owned(),
    }
}
