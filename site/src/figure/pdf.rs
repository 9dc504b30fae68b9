//! PDF of a figure: one page of its size, text as text.

use super::{FileError, PIXELS_PER_INCH, element_text, tree};
use pdf_writer::{Chunk, Content, Finish, Name, Pdf, Rect, Ref, TextStr};
use resvg::usvg::Tree;
use std::collections::HashMap;
use svg2pdf::ConversionOptions;

const POINTS_PER_INCH: f32 = 72.0;

/// Two fonts are in order one time in four. To miss it so often has a chance of one in 10¹².
const TRIES: usize = 100;

/// What the page calls its figure.
const FIGURE: Name<'static> = Name(b"figure");

/// Writes an SVG as a PDF of one page that is as large as the figure. A figure that has no size on paper
/// counts 96 of its units to the inch. Fonts are embedded, so that text can be searched and copied.
///
/// # Errors
/// [`FileError`].
pub fn pdf(svg: &str) -> Result<Vec<u8>, FileError> {
    let tree = tree(svg)?;
    let (chunk, drawn) = drawn(&tree)?;
    let mut next = Ref::new(1);
    let [catalog, pages, page, content, info, metadata] = [(); 6].map(|()| next.bump());
    let mut renumbered = HashMap::new();
    let chunk = chunk.renumber(|old| *renumbered.entry(old).or_insert_with(|| next.bump()));
    let drawn = renumbered.get(&drawn).copied();
    let drawn = drawn.ok_or_else(|| FileError::Pdf("the figure is not in it".into()))?;

    let points = POINTS_PER_INCH / PIXELS_PER_INCH;
    let (width, height) = (tree.size().width() * points, tree.size().height() * points);
    let (title, made) = (element_text(svg, "title"), element_text(svg, "metadata"));

    let mut pdf = Pdf::new();
    pdf.catalog(catalog).pages(pages).metadata(metadata);
    pdf.pages(pages).kids([page]).count(1);
    let mut sheet = pdf.page(page);
    sheet.media_box(Rect::new(0.0, 0.0, width, height));
    sheet.parent(pages).contents(content);
    sheet.resources().x_objects().pair(FIGURE, drawn);
    sheet.finish();
    let mut drawing = Content::new();
    drawing.transform([width, 0.0, 0.0, height, 0.0, 0.0]);
    drawing.x_object(FIGURE);
    pdf.stream(content, &drawing.finish());
    pdf.document_info(info)
        .title(TextStr(&title))
        .creator(TextStr("Axlewright"));
    pdf.metadata(metadata, packet(&title, &made).as_bytes());
    pdf.extend(&chunk);
    Ok(pdf.finish())
}

/// The figure as PDF objects, in the same order every time.
///
/// The converter keeps its fonts in hash maps and writes them in the maps' order, which is another one
/// for every map. So it is asked until names and fonts come in order: four times on average.
fn drawn(tree: &Tree) -> Result<(Chunk, Ref), FileError> {
    let mut converted = None;
    for _ in 0..TRIES {
        let (chunk, drawn) = svg2pdf::to_chunk(tree, ConversionOptions::default())
            .map_err(|e| FileError::Pdf(e.to_string()))?;
        let in_order = in_order(&chunk);
        converted = Some((chunk, drawn));
        if in_order {
            break;
        }
    }
    converted.ok_or_else(|| FileError::Pdf("it was not converted".into()))
}

/// Whether the fonts are named in order (`/fo0 7 0 R`, then `/fo1 8 0 R`), and written in that order.
fn in_order(chunk: &Chunk) -> bool {
    let text = String::from_utf8_lossy(chunk.as_bytes());
    let named: Vec<(u32, i32)> = text
        .match_indices("/fo")
        .filter_map(|(at, start)| {
            let mut words = text.get(at + start.len()..)?.split_ascii_whitespace();
            Some((words.next()?.parse().ok()?, words.next()?.parse().ok()?))
        })
        .collect();
    let place = |number: i32| chunk.refs().position(|other| other.get() == number);
    named.is_sorted() && named.iter().map(|(_, number)| place(*number)).is_sorted()
}

/// The metadata packet that PDF readers know (XMP, ISO 16684-1): the title, and what the figure was made
/// from as its source.
fn packet(title: &str, made: &str) -> String {
    let escaped = |text: &str| {
        let mut out = String::new();
        axlewright_widgets::figure::svg::push_escaped(&mut out, text);
        out
    };
    format!(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\
         <x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\
         <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\
         <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\
         <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{}</rdf:li></rdf:Alt></dc:title>\
         <dc:source>{}</dc:source>\
         </rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end=\"r\"?>",
        escaped(title),
        escaped(made)
    )
}
