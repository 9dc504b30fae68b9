//! One file that holds every page and element, to be opened from a disk.
//!
//! The pages that teach stand in it as they are, so that they can be read without script. The rest is
//! compressed and put in by the file's own script: the teachers' sheets, the reference, the elements.

use super::rewrite::{Rewrite, rewritten};
use crate::elements::{CLASSIC, TALK_CLASSIC};
use crate::folder::Folder;
use crate::pages::Page;
use crate::search;
use crate::site::{Made, SiteError, read};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use flate2::Compression;
use flate2::write::GzEncoder;
use serde_json::{Map, Value, json};
use std::io::Write;
use std::path::Path;

/// Makes the file.
///
/// # Errors
/// When a file cannot be read.
pub(super) fn file(root: &Path, folder: &Folder, made: &Made) -> Result<String, SiteError> {
    let place = root.join("site/offline");
    let slugs: Vec<&str> = made
        .pages
        .iter()
        .map(|page| page.listed.slug.as_str())
        .collect();
    let mut plain = String::new();
    let mut packed = Map::new();
    let mut titles = Map::new();
    for page in made.pages.iter().filter(|page| page.listed.slug != "404") {
        let slug = &page.listed.slug;
        let rules = Rewrite {
            // Anchors of a page are told from those of the others by the page's name.
            anchor: &|anchor| format!("{slug}--{anchor}"),
            link: &|address| offline_link(address, slug, &slugs),
            mark: &|_| String::new(),
            image: &|address| inline_image(folder, address),
        };
        let body = rewritten(&page.body, &rules);
        let article = format!("<article id=\"{slug}\">\n{body}\n</article>\n");
        titles.insert(slug.clone(), page.listed.title.clone().into());
        if is_plain(page) {
            plain.push_str(&article);
        } else {
            packed.insert(slug.clone(), article.into());
        }
    }
    let text = |name: &str| {
        let bytes = folder.read(name)?;
        String::from_utf8(bytes).map_err(|_| SiteError::Layout(format!("{name} is no text")))
    };
    let order: Vec<&str> = slugs
        .iter()
        .copied()
        .filter(|slug| *slug != "404")
        .collect();
    let rest = json!({
        "order": order,
        "titles": titles,
        "pages": packed,
        "elements": text(CLASSIC)? + &text(TALK_CLASSIC)?,
        "follow": text("follow.js")?,
        "onFirst": {
            "embed": text("builder.js")?,
            "search": entries(made, &read(&place.join("entries.js"))?) + &text("search.js")?,
        },
    });
    let icon = STANDARD.encode(folder.read("icon.svg")?);
    Ok(read(&place.join("offline.html"))?
        .replace("OFFLINE_ICON", &icon)
        .replace(
            "OFFLINE_STYLE",
            &(text("style.css")? + &read(&place.join("offline.css"))?),
        )
        .replace("OFFLINE_MENU", &menu(made))
        .replace("OFFLINE_VERSION", env!("CARGO_PKG_VERSION"))
        .replace("OFFLINE_SCRIPT", &read(&place.join("offline.js"))?)
        .replace("OFFLINE_PAGES", &plain)
        .replace("OFFLINE_REST", &packed_text(&rest)?))
}

/// The script that lists what the search looks through.
fn entries(made: &Made, script: &str) -> String {
    let mut found = Map::new();
    for page in made.pages.iter().filter(|page| search::looks_through(page)) {
        found.insert(page.listed.slug.clone(), page.listed.title.clone().into());
    }
    script
        .replace("FOUND", &Value::from(found).to_string())
        .replace("LONGEST", &search::EXCERPT.to_string())
}

/// Whether a page stands in the file as it is.
fn is_plain(page: &Page) -> bool {
    matches!(page.listed.section.as_str(), "start" | "topics")
}

fn packed_text(rest: &Value) -> Result<String, SiteError> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    let done = encoder.write_all(rest.to_string().as_bytes());
    let bytes = done.and_then(|()| encoder.finish());
    bytes
        .map(|bytes| in_letters(&bytes))
        .map_err(|error| SiteError::File("axlewright-offline.html".into(), error))
}

/// Bytes as letters, five for four bytes: a number of base 85 whose digits begin at "#". Base 64 would
/// take a sixteenth more. No digit is "<", which could end the script that holds the letters.
fn in_letters(bytes: &[u8]) -> String {
    let mut letters = String::with_capacity(bytes.len() / 4 * 5 + 5);
    for chunk in bytes.chunks(4) {
        let mut four = [0; 4];
        for (place, byte) in four.iter_mut().zip(chunk) {
            *place = *byte;
        }
        let number = u32::from_be_bytes(four);
        // Of a last chunk with fewer bytes as many digits as tell them.
        for power in (0..5).rev().take(chunk.len() + 1) {
            let digit = (number / 85_u32.pow(power) % 85) as u8;
            letters.push(match char::from(b'#' + digit) {
                '<' => 'x',
                other => other,
            });
        }
    }
    letters
}

/// A link inside the file; none where it leads to a file that is not inside.
fn offline_link(address: &str, own: &str, slugs: &[&str]) -> Option<String> {
    if let Some(anchor) = address.strip_prefix('#') {
        return Some(format!("#{own}--{anchor}"));
    }
    if address.contains("://") {
        return Some(address.into());
    }
    let (file, anchor) = address.split_once('#').unwrap_or((address, ""));
    let slug = file
        .strip_suffix(".html")
        .filter(|slug| slugs.contains(slug))?;
    Some(match anchor {
        "" => format!("#{slug}"),
        anchor => format!("#{slug}--{anchor}"),
    })
}

fn inline_image(folder: &Folder, address: &str) -> Option<String> {
    let file = address.split('?').next().unwrap_or(address);
    let svg = String::from_utf8(folder.read(file).ok()?).ok()?;
    Some(format!("data:image/svg+xml,{}", in_address(&svg)))
}

/// A picture whose attributes stand between single marks where they can: a double one takes three letters
/// in an address. In the text of a picture there is none, because the writer escapes it.
fn with_single_marks(svg: &str) -> String {
    let mut out = String::with_capacity(svg.len());
    let mut pieces = svg.split('"');
    out.push_str(pieces.next().unwrap_or_default());
    while let Some(value) = pieces.next() {
        let mark = if value.contains('\'') { '"' } else { '\'' };
        out.push(mark);
        out.push_str(value);
        out.push(mark);
        out.push_str(pieces.next().unwrap_or_default());
    }
    out
}

/// A picture as the address of itself, with only what an address and an attribute cannot hold escaped.
fn in_address(svg: &str) -> String {
    let mut out = String::with_capacity(svg.len() + svg.len() / 4);
    for c in with_single_marks(svg).chars() {
        match c {
            '%' => out.push_str("%25"),
            '#' => out.push_str("%23"),
            '"' => out.push_str("%22"),
            '<' => out.push_str("%3C"),
            '>' => out.push_str("%3E"),
            '&' => out.push_str("%26"),
            '\n' => out.push(' '),
            other => out.push(other),
        }
    }
    out
}

/// The menu: every page of every group.
fn menu(made: &Made) -> String {
    let mut html = String::new();
    for (title, pages) in made.theme.groups(&made.pages) {
        html.push_str(&format!("<div>\n<p>{title}</p>\n<ul>\n"));
        for page in pages {
            let short = page.short.replace('&', "&amp;").replace('<', "&lt;");
            html.push_str(&format!(
                "<li><a href=\"#{}\">{short}</a></li>\n",
                page.slug
            ));
        }
        html.push_str("</ul>\n</div>\n");
    }
    html
}

#[cfg(test)]
mod tests {
    use super::in_letters;

    /// What the script of the file does.
    fn bytes(letters: &str) -> Vec<u8> {
        let digits: Vec<u64> = letters
            .chars()
            .map(|letter| if letter == 'x' { '<' } else { letter })
            .map(|letter| u64::from(u32::from(letter)) - 35)
            .collect();
        let mut all = Vec::new();
        for chunk in digits.chunks(5) {
            let padded = chunk.iter().copied().chain([84; 4]).take(5);
            let number = padded.fold(0, |number, digit| number * 85 + digit);
            let four = u32::try_from(number).unwrap().to_be_bytes();
            all.extend(&four[..chunk.len() - 1]);
        }
        all
    }

    #[test]
    fn letters_hold_any_bytes_and_never_open_a_tag() {
        let many: Vec<u8> = (0..100_003_u64)
            .map(|at| ((at * at * 31) >> 7) as u8)
            .collect();
        for length in (0..12).chain([255, many.len()]) {
            for some in [&many[..length], &vec![255; length], &vec![0; length]] {
                let letters = in_letters(some);
                assert!(
                    letters
                        .bytes()
                        .all(|letter| (b'#'..=b'x').contains(&letter))
                );
                assert!(!letters.contains('<'));
                assert_eq!(bytes(&letters), some);
                assert!(letters.len() <= some.len() / 4 * 5 + 4);
            }
        }
    }
}
