//! Figures as files: SVG as the figures write it, PNG drawn from that SVG.

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};
use std::fmt;

const REGULAR: &[u8] = include_bytes!("../fonts/OpenSans-Regular.ttf");
const SEMIBOLD: &[u8] = include_bytes!("../fonts/OpenSans-Semibold.ttf");

/// Why a PNG could not be drawn.
#[derive(Debug)]
#[non_exhaustive]
pub enum PngError {
    /// The SVG could not be read back.
    Svg(String),
    /// The picture would be too large, or could not be packed.
    Picture(String),
}

impl fmt::Display for PngError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Svg(reason) => write!(f, "the figure cannot be drawn as PNG: {reason}"),
            Self::Picture(reason) => write!(f, "the PNG cannot be made: {reason}"),
        }
    }
}

impl std::error::Error for PngError {}

/// Draws an SVG as PNG, `scale` pixels for each unit of the figure. Only the font that comes with this
/// program is used, so the picture is the same on every machine.
///
/// # Errors
/// [`PngError`].
pub fn png(svg: &str, scale: f32) -> Result<Vec<u8>, PngError> {
    let mut options = Options::default();
    let fonts = options.fontdb_mut();
    fonts.load_font_data(REGULAR.to_vec());
    fonts.load_font_data(SEMIBOLD.to_vec());
    fonts.set_sans_serif_family("Open Sans");
    options.font_family = "Open Sans".into();
    let tree = Tree::from_str(svg, &options).map_err(|e| PngError::Svg(e.to_string()))?;
    let size = tree.size();
    let (width, height) = (
        (size.width() * scale).ceil(),
        (size.height() * scale).ceil(),
    );
    let mut picture = Pixmap::new(width as u32, height as u32)
        .ok_or_else(|| PngError::Picture(format!("{width} × {height} pixels")))?;
    resvg::render(
        &tree,
        Transform::from_scale(scale, scale),
        &mut picture.as_mut(),
    );
    picture
        .encode_png()
        .map_err(|e| PngError::Picture(e.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_drawn_with_the_font_that_comes_along() {
        let svg = |text: &str| {
            format!(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"80\" height=\"20\">\
                 <rect width=\"80\" height=\"20\" fill=\"#fff\"/>\
                 <text x=\"2\" y=\"15\" font-family=\"Nowhere, sans-serif\">{text}</text></svg>"
            )
        };
        let blank = png(&svg(""), 1.0).unwrap();
        let written = png(&svg("μ −"), 1.0).unwrap();
        assert_ne!(blank, written);
        assert_eq!(written, png(&svg("μ −"), 1.0).unwrap());
        assert!(png("no svg", 1.0).is_err());
    }
}
