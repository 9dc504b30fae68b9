//! Puts a page's HTML into another place: its anchors, links and pictures are renamed.

use crate::html::{Part, attribute, name, parts};

/// What becomes of names and addresses.
pub(super) struct Rewrite<'a> {
    /// The anchor of a heading, a word or a row.
    pub anchor: &'a dyn Fn(&str) -> String,
    /// The address of a link; none takes the link away and leaves its text.
    pub link: &'a dyn Fn(&str) -> Option<String>,
    /// What a link has besides its address.
    pub mark: &'a dyn Fn(&str) -> String,
    /// The address of a picture; none leaves it as it is. A picture has one source then.
    pub image: &'a dyn Fn(&str) -> Option<String>,
}

/// What carries anchors. Fields and buttons keep their names, by which scripts find them.
const ANCHORED: &[&str] = &["h1", "h2", "h3", "dt", "li", "tr"];

/// The HTML in its new place.
pub(super) fn rewritten(html: &str, rules: &Rewrite) -> String {
    let mut out = String::with_capacity(html.len());
    for part in parts(html) {
        match part {
            Part::Text(text) => out.push_str(text),
            Part::Tag(tag) => {
                let name = name(tag);
                let mut tag = tag.to_owned();
                if ANCHORED.contains(&name)
                    && let Some(anchor) = attribute(&tag, "id").map(str::to_owned)
                {
                    let new = (rules.anchor)(&anchor);
                    tag = tag.replace(&format!(" id=\"{anchor}\""), &format!(" id=\"{new}\""));
                }
                if name == "a"
                    && let Some(address) = attribute(&tag, "href").map(str::to_owned)
                {
                    let old = format!(" href=\"{address}\"");
                    let new = (rules.link)(&address).map_or(String::new(), |new| {
                        format!(" href=\"{new}\"{}", (rules.mark)(&address))
                    });
                    tag = tag.replace(&old, &new);
                    if new.is_empty() {
                        tag = tag.replace(" download", "");
                    }
                }
                if name == "img"
                    && let Some(address) = attribute(&tag, "src").map(str::to_owned)
                    && let Some(new) = (rules.image)(&address)
                {
                    tag = tag.replace(&format!(" src=\"{address}\""), &format!(" src=\"{new}\""));
                }
                // The narrow and the dark picture stay behind where pictures go inside.
                let is_left = name == "source"
                    && attribute(&tag, "srcset")
                        .is_some_and(|address| (rules.image)(address).is_some());
                if !is_left {
                    out.push('<');
                    out.push_str(&tag);
                    out.push('>');
                }
            }
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn anchors_links_and_pictures_are_renamed_and_a_lost_link_leaves_its_text() {
        let rules = Rewrite {
            anchor: &|anchor| format!("p--{anchor}"),
            link: &|address| (address != "x.zip").then(|| format!("#{address}")),
            mark: &|address| format!(" rel=\"{}\"", &address[..1]),
            image: &|_| Some("data:,".into()),
        };
        let html = "<h2 id=\"a\">A</h2><input id=\"q\"><a href=\"b.html\">b</a> <a href=\"x.zip\">x</a><picture><source srcset=\"d.svg\"><img src=\"c.svg\" alt=\"c\"></picture>";
        assert_eq!(
            rewritten(html, &rules),
            "<h2 id=\"p--a\">A</h2><input id=\"q\"><a href=\"#b.html\" rel=\"b\">b</a> <a>x</a><picture><img src=\"data:,\" alt=\"c\"></picture>"
        );
    }
}
