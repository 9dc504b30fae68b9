//! Text as a markup wants it: what has a meaning there is written so that it has none.

use std::path::Path;

/// How a document is marked up, told by its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Markup {
    /// Markdown, and any text that needs no care.
    Markdown,
    /// AsciiDoc.
    AsciiDoc,
    /// LaTeX.
    Latex,
    /// HTML.
    Html,
}

impl Markup {
    /// The markup of a file.
    #[must_use]
    pub fn of(path: &Path) -> Self {
        match path.extension().and_then(|e| e.to_str()) {
            Some("adoc" | "asciidoc") => Self::AsciiDoc,
            Some("tex") => Self::Latex,
            Some("html" | "htm") => Self::Html,
            _ => Self::Markdown,
        }
    }

    /// A text of the catalogue or a number with its unit in this markup.
    #[must_use]
    pub fn text(self, text: &str) -> String {
        text.chars()
            .map(|letter| match (self, letter) {
                (Self::Markdown, '|' | '*' | '_' | '<' | '[') => format!("\\{letter}"),
                (Self::AsciiDoc, '|') => "{vbar}".into(),
                (Self::AsciiDoc, '*') => "{asterisk}".into(),
                (Self::Html, '&') => "&amp;".into(),
                (Self::Html, '<') => "&lt;".into(),
                (Self::Html, '"') => "&quot;".into(),
                (Self::Latex, '%' | '&' | '#' | '_' | '$' | '{' | '}') => format!("\\{letter}"),
                (Self::Latex, other) => latex(other),
                (_, other) => other.into(),
            })
            .collect()
    }
}

/// A letter for an engine that knows few beyond ASCII.
fn latex(letter: char) -> String {
    match letter {
        '\u{2009}' | '\u{202f}' => "\\,",
        '\u{a0}' => "~",
        '−' => "\\ensuremath{-}",
        '·' => "\\ensuremath{\\cdot}",
        '×' => "\\ensuremath{\\times}",
        '²' => "\\textsuperscript{2}",
        '³' => "\\textsuperscript{3}",
        '°' => "\\ensuremath{^\\circ}",
        'μ' => "\\ensuremath{\\mu}",
        '…' => "\\ldots{}",
        '\\' => "\\textbackslash{}",
        '^' => "\\textasciicircum{}",
        '~' => "\\textasciitilde{}",
        other => return other.into(),
    }
    .into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_means_itself_in_each_markup() {
        let text = "R1 | 62\u{2009}% < 0.5\u{2009}m/s² −1";
        for (name, want) in [
            ("a.md", "R1 \\| 62\u{2009}% \\< 0.5\u{2009}m/s² −1"),
            ("a.adoc", "R1 {vbar} 62\u{2009}% < 0.5\u{2009}m/s² −1"),
            ("a.html", "R1 | 62\u{2009}% &lt; 0.5\u{2009}m/s² −1"),
            (
                "a.tex",
                "R1 | 62\\,\\% < 0.5\\,m/s\\textsuperscript{2} \\ensuremath{-}1",
            ),
        ] {
            assert_eq!(Markup::of(Path::new(name)).text(text), want, "{name}");
        }
    }
}
