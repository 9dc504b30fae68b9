//! Reads text, headings and links out of HTML that this program made itself.

/// A heading and the text under it, up to the next heading.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Section {
    /// Level of the heading: 1, 2 or 3; 4 for a word that is explained.
    pub level: u8,
    /// Anchor of the heading; empty where it has none.
    pub anchor: String,
    /// The heading.
    pub heading: String,
    /// The text below it.
    pub text: String,
}

/// A part of HTML: a tag as written between its brackets, or text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part<'a> {
    /// `p class="a"`, `/p`, `br`.
    Tag(&'a str),
    /// Text, still with its entities.
    Text(&'a str),
}

/// What holds no text for readers.
const SILENT: &[&str] = &["math", "svg", "script", "style"];

/// Tags within a line: around them words do not end.
const INLINE: &[&str] = &[
    "a", "abbr", "code", "dfn", "em", "i", "b", "span", "strong", "sub", "sup",
];

/// The parts of a text in HTML.
pub fn parts(html: &str) -> impl Iterator<Item = Part<'_>> {
    let mut rest = html;
    std::iter::from_fn(move || {
        let part = if let Some(inside) = rest.strip_prefix('<') {
            let end = inside.find('>').unwrap_or(inside.len());
            let tag = &inside[..end];
            rest = inside.get(end + 1..).unwrap_or("");
            Part::Tag(tag)
        } else {
            let end = rest.find('<').unwrap_or(rest.len());
            if end == 0 {
                return None;
            }
            let (text, after) = rest.split_at(end);
            rest = after;
            Part::Text(text)
        };
        Some(part)
    })
}

/// Name of a tag: `p` for `p class="a"` and `/p` alike.
#[must_use]
pub fn name(tag: &str) -> &str {
    let bare = tag.trim_start_matches('/');
    let end = bare
        .find(|c: char| c.is_whitespace() || c == '/')
        .unwrap_or(bare.len());
    &bare[..end]
}

/// Value of an attribute of a tag.
#[must_use]
pub fn attribute<'a>(tag: &'a str, wanted: &str) -> Option<&'a str> {
    let start = tag.find(&format!(" {wanted}=\""))? + wanted.len() + 3;
    let end = tag[start..].find('"')? + start;
    Some(&tag[start..end])
}

/// Text without its entities.
#[must_use]
pub fn plain(text: &str) -> String {
    text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&")
}

/// Headings of levels 1 to 3 with the text below each.
#[must_use]
pub fn sections(html: &str) -> Vec<Section> {
    let mut all: Vec<Section> = Vec::new();
    let mut silent: Option<&str> = None;
    let mut in_heading = false;
    for part in parts(html) {
        match part {
            Part::Tag(tag) => {
                let name = name(tag);
                match silent {
                    Some(open) if tag.starts_with('/') && name == open => silent = None,
                    Some(_) => {}
                    None if SILENT.contains(&name) && !tag.starts_with('/') => silent = Some(name),
                    None => {
                        let level = match name {
                            "h1" => 1,
                            "h2" => 2,
                            "h3" => 3,
                            // A word of the glossary heads what it means.
                            "dt" if in_heading || attribute(tag, "id").is_some() => 4,
                            _ => 0,
                        };
                        if level > 0 {
                            in_heading = !tag.starts_with('/');
                        }
                        if level > 0 && in_heading {
                            all.push(Section {
                                level,
                                anchor: attribute(tag, "id").unwrap_or("").into(),
                                heading: String::new(),
                                text: String::new(),
                            });
                        }
                        if !INLINE.contains(&name)
                            && let Some(last) = all.last_mut()
                            && !last.text.ends_with(' ')
                        {
                            last.text.push(' ');
                        }
                    }
                }
            }
            Part::Text(text) if silent.is_none() => {
                if let Some(last) = all.last_mut() {
                    let into = if in_heading {
                        &mut last.heading
                    } else {
                        &mut last.text
                    };
                    into.push_str(&plain(text).replace('\n', " "));
                }
            }
            Part::Text(_) => {}
        }
    }
    for section in &mut all {
        section.text = section
            .text
            .split_whitespace()
            .collect::<Vec<_>>()
            .join(" ");
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_read_by_heading_and_equations_are_left_out() {
        let html = "<h1 id=\"a\">A <em>b</em></h1><p>One&amp;two</p><p>three</p><math><mi>x</mi></math><h2 id=\"c\">C</h2>\n<p>Four</p>";
        let all = sections(html);
        assert_eq!(all.len(), 2);
        assert_eq!(all[0].heading, "A b");
        assert_eq!(all[0].text, "One&two three");
        assert_eq!(
            (all[1].anchor.as_str(), all[1].text.as_str()),
            ("c", "Four")
        );
        assert_eq!(
            attribute("a class=\"x\" href=\"y.html\"", "href"),
            Some("y.html")
        );
    }
}
