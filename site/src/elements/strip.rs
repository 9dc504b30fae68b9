//! Makes a script smaller without touching what it does: comments, indentation and empty lines go.
//!
//! Line ends stay, because JavaScript may end a statement there. Names stay, because compression
//! makes them cheap. Strings, templates and regular expressions are copied as they are.

/// The script without comments, indentation and empty lines.
#[must_use]
pub(super) fn strip_script(source: &str) -> String {
    let mut stripper = Stripper {
        rest: source,
        out: String::with_capacity(source.len()),
        templates: Vec::new(),
    };
    while let Some(next) = stripper.rest.chars().next() {
        stripper.step(next);
    }
    stripper.end_line();
    stripper.out
}

struct Stripper<'a> {
    rest: &'a str,
    out: String,
    /// For each template whose `${…}` part is open: how many braces are open inside that part.
    templates: Vec<usize>,
}

impl Stripper<'_> {
    fn step(&mut self, next: char) {
        match next {
            '\n' => {
                self.end_line();
                self.skip(1);
            }
            ' ' | '\t' | '\r' => {
                self.blank();
                self.skip(1);
            }
            '"' | '\'' => self.quoted(next),
            '`' => self.template(),
            '/' if self.rest.starts_with("//") => {
                let end = self.rest.find('\n').unwrap_or(self.rest.len());
                self.skip(end);
            }
            '/' if self.rest.starts_with("/*") => self.block_comment(),
            '/' if self.expects_value() => self.regular_expression(),
            '{' => {
                if let Some(open) = self.templates.last_mut() {
                    *open += 1;
                }
                self.copy(1);
            }
            '}' => self.closing_brace(),
            _ => self.copy(next.len_utf8()),
        }
    }

    /// One blank at most, and none at the start of a line.
    fn blank(&mut self) {
        if !self.out.is_empty() && !self.out.ends_with(['\n', ' ']) {
            self.out.push(' ');
        }
    }

    fn end_line(&mut self) {
        // No literal ends in a blank, so this never cuts into one.
        self.out.truncate(self.out.trim_end_matches(' ').len());
        if !self.out.is_empty() && !self.out.ends_with('\n') {
            self.out.push('\n');
        }
    }

    fn block_comment(&mut self) {
        let end = self.rest.find("*/").map_or(self.rest.len(), |at| at + 2);
        // A comment over several lines counts as a line end.
        if self.rest[..end].contains('\n') {
            self.end_line();
        } else {
            self.blank();
        }
        self.skip(end);
    }

    fn quoted(&mut self, quote: char) {
        let length = literal_length(self.rest, |c| c == quote);
        self.copy(length);
    }

    fn regular_expression(&mut self) {
        let mut in_class = false;
        let length = literal_length(self.rest, |c| {
            match c {
                '[' => in_class = true,
                ']' => in_class = false,
                _ => (),
            }
            c == '/' && !in_class
        });
        self.copy(length);
    }

    /// From the opening backtick, or from the brace that ends a `${…}` part, to the next such part
    /// or to the end of the template.
    fn template(&mut self) {
        let mut previous = ' ';
        let mut opens_part = false;
        let length = literal_length(self.rest, |c| {
            opens_part = previous == '$' && c == '{';
            previous = c;
            c == '`' || opens_part
        });
        if opens_part {
            self.templates.push(0);
        }
        self.copy(length);
    }

    fn closing_brace(&mut self) {
        match self.templates.last_mut() {
            Some(0) => {
                self.templates.pop();
                self.template();
            }
            Some(open) => {
                *open -= 1;
                self.copy(1);
            }
            None => self.copy(1),
        }
    }

    /// Whether a value may begin here, so that a slash opens a regular expression and does not divide.
    fn expects_value(&self) -> bool {
        let before = self.out.trim_end();
        let word = before
            .rsplit(|c: char| !c.is_alphanumeric() && c != '_' && c != '$')
            .next();
        before.is_empty()
            || before.ends_with([
                '(', ',', '=', ':', '[', '!', '&', '|', '?', '{', '}', ';', '+', '-', '*', '<',
                '>', '~', '^', '%',
            ])
            || matches!(
                word,
                Some("return" | "typeof" | "case" | "in" | "of" | "void" | "delete" | "await")
            )
    }

    fn copy(&mut self, length: usize) {
        self.out.push_str(&self.rest[..length]);
        self.skip(length);
    }

    fn skip(&mut self, length: usize) {
        self.rest = &self.rest[length..];
    }
}

/// The length in bytes of a literal: its first character, then all up to and with the first one that
/// `ends` it. A backslash takes the next character with it.
fn literal_length(text: &str, mut ends: impl FnMut(char) -> bool) -> usize {
    let mut escaped = false;
    for (at, c) in text.char_indices().skip(1) {
        if escaped {
            escaped = false;
        } else if c == '\\' {
            escaped = true;
        } else if ends(c) {
            return at + c.len_utf8();
        }
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::strip_script;

    #[test]
    fn comments_indentation_and_empty_lines_go() {
        let source = "// one\n  a(); // two\n\n  /* three */ b( 1,  2 );\n/* four\n */ c();\n";
        assert_eq!(strip_script(source), "a();\nb( 1, 2 );\nc();\n");
    }

    #[test]
    fn literals_are_copied_as_they_are() {
        for literal in [
            r#"x = "a  // b";"#,
            r"x = 'it\'s  /* c */';",
            r"x = /[/]  \/\/ '/.test(y);",
            "x = `two\n   lines  // no comment`;",
            "x = `a ${f({ k: `in  ${n}  side` })}  // b`;",
            "x = y / 2 / z;",
            "x = (y + 1) / 2;",
        ] {
            assert_eq!(strip_script(literal), format!("{literal}\n"), "{literal}");
        }
    }

    #[test]
    fn code_inside_a_template_is_stripped_and_the_template_is_not() {
        assert_eq!(strip_script("`  ${ a  /* b */ }  `"), "`  ${ a }  `\n");
    }

    #[test]
    fn a_line_end_that_ends_a_statement_stays() {
        assert_eq!(strip_script("let a = b\n   (c)()\n"), "let a = b\n(c)()\n");
    }
}
