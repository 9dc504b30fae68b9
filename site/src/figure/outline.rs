//! A figure whose letters are shapes: it needs no font where it is shown.

use super::{FileError, tree};
use resvg::usvg::{Indent, WriteOptions};

/// What the root says for all that is drawn. What is read back says it at every shape.
const INHERITED: &str = " fill=\"none\" stroke-linejoin=\"round\" stroke-linecap=\"butt\"";

/// Decimals of a coordinate of a letter: a thousandth of a unit is finer than any printer.
const DECIMALS: u8 = 3;

/// An SVG of ours with every text as a shape of the font that comes with this program. Title,
/// description and metadata stay text.
///
/// # Errors
/// [`FileError::Svg`] where it is no SVG of ours.
pub fn outlined(svg: &str) -> Result<String, FileError> {
    let unknown = || FileError::Svg("it is no figure of this program".into());
    let end = "</metadata>\n";
    let at = svg.find(end).ok_or_else(unknown)? + end.len();
    let head = svg.get(..at).ok_or_else(unknown)?;
    let shapes = tree(svg)?.to_string(&WriteOptions {
        coordinates_precision: DECIMALS,
        transforms_precision: DECIMALS,
        indent: Indent::Spaces(0),
        ..WriteOptions::default()
    });
    let (_, body) = shapes.split_once("<svg").ok_or_else(unknown)?;
    let (_, body) = body.split_once('>').ok_or_else(unknown)?;
    Ok([
        &without_font(&head.replacen(INHERITED, "", 1)),
        body.trim_start(),
    ]
    .concat())
}

/// The head without its font: no text is left that would need it.
fn without_font(head: &str) -> String {
    let attribute = " font-family=\"";
    let Some((before, rest)) = head.split_once(attribute) else {
        return head.to_owned();
    };
    match rest.split_once('"') {
        Some((_, after)) => [before, after].concat(),
        None => head.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::png;

    const SVG: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 80 20\" width=\"80\" \
        height=\"20\" fill=\"none\" stroke-linejoin=\"round\" stroke-linecap=\"butt\" \
        font-family=\"'Source Sans 3', sans-serif\"><title>T</title><metadata>a\nb</metadata>\n\
        <rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n\
        <path d=\"M0 0L80 20\" stroke=\"#000000\"/>\n\
        <text x=\"2\" y=\"15\" font-size=\"13\"><tspan fill=\"#000000\">μ = 0.9</tspan></text>\n</svg>\n";

    #[test]
    fn letters_become_shapes_and_nothing_else_changes() {
        let shapes = outlined(SVG).unwrap();
        assert!(
            !shapes.contains("<text") && !shapes.contains("font-family"),
            "{shapes}"
        );
        assert!(
            shapes.contains("<title>T</title><metadata>a\nb</metadata>"),
            "{shapes}"
        );
        assert_eq!(shapes, outlined(SVG).unwrap());
        let (one, other) = (png(SVG, 4.0).unwrap(), png(&shapes, 4.0).unwrap());
        let pixels = |bytes: &[u8]| {
            let mut reader = png::Decoder::new(bytes).read_info().unwrap();
            let mut pixels = vec![0; reader.output_buffer_size()];
            reader.next_frame(&mut pixels).unwrap();
            pixels
        };
        let (one, other) = (pixels(&one), pixels(&other));
        let apart = one
            .iter()
            .zip(&other)
            .filter(|(a, b)| a.abs_diff(**b) > 8)
            .count();
        assert!(apart * 1000 < one.len(), "{apart} of {} differ", one.len());
        assert!(outlined("<svg></svg>").is_err());
    }
}
