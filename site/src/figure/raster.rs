//! PNG of a figure.

use super::{FileError, PIXELS_PER_INCH, element_text, tree};
use png::{BitDepth, ColorType, Encoder, PixelDimensions, Unit};
use resvg::tiny_skia::{Pixmap, Transform};

/// Key of the text in a PNG that says what it was made from.
pub(super) const KEY: &str = "Axlewright";

const METRES_PER_INCH: f32 = 0.0254;

/// Draws an SVG as PNG, `scale` pixels for each unit of the figure. Only the font that comes with this
/// program is used, so the picture is the same on every machine.
///
/// # Errors
/// [`FileError`].
pub fn png(svg: &str, scale: f32) -> Result<Vec<u8>, FileError> {
    draw(svg, scale, None)
}

/// Draws an SVG that has its size in millimetres as PNG of so many dots per inch, and says so in it.
///
/// # Errors
/// [`FileError`].
pub fn png_at(svg: &str, dpi: f32) -> Result<Vec<u8>, FileError> {
    draw(svg, dpi / PIXELS_PER_INCH, Some(dpi))
}

fn draw(svg: &str, scale: f32, dpi: Option<f32>) -> Result<Vec<u8>, FileError> {
    let tree = tree(svg)?;
    let size = tree.size();
    let (width, height) = (
        (size.width() * scale).ceil(),
        (size.height() * scale).ceil(),
    );
    let mut picture = Pixmap::new(width as u32, height as u32)
        .ok_or_else(|| FileError::Picture(format!("{width} × {height} pixels")))?;
    resvg::render(
        &tree,
        Transform::from_scale(scale, scale),
        &mut picture.as_mut(),
    );
    pack(&picture, dpi, element_text(svg, "metadata"))
        .map_err(|e| FileError::Picture(e.to_string()))
}

fn pack(picture: &Pixmap, dpi: Option<f32>, made: String) -> Result<Vec<u8>, png::EncodingError> {
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, picture.width(), picture.height());
    encoder.set_color(ColorType::Rgba);
    encoder.set_depth(BitDepth::Eight);
    if let Some(dpi) = dpi {
        let per_metre = (dpi / METRES_PER_INCH).round() as u32;
        encoder.set_pixel_dims(Some(PixelDimensions {
            xppu: per_metre,
            yppu: per_metre,
            unit: Unit::Meter,
        }));
    }
    if !made.is_empty() {
        encoder.add_itxt_chunk(KEY.into(), made)?;
    }
    let pixels: Vec<u8> = picture
        .pixels()
        .iter()
        .flat_map(|pixel| {
            let plain = pixel.demultiply();
            [plain.red(), plain.green(), plain.blue(), plain.alpha()]
        })
        .collect();
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&pixels)?;
    writer.finish()?;
    Ok(bytes)
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

    #[test]
    fn a_size_on_paper_becomes_dots() {
        let svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 5\" width=\"25.4mm\" \
                   height=\"12.7mm\"><metadata>a &lt; b</metadata></svg>";
        let bytes = png_at(svg, 300.0).unwrap();
        let reader = png::Decoder::new(&bytes[..]).read_info().unwrap();
        let info = reader.info();
        assert_eq!((info.width, info.height), (300, 150));
        assert_eq!(info.pixel_dims.map(|d| d.xppu), Some(11_811));
        assert_eq!(info.utf8_text[0].get_text().unwrap(), "a < b");
    }
}
