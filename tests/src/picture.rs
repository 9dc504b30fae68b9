//! Pictures: read, written small, and compared.

use std::collections::HashMap;

/// A picture, three bytes for each pixel.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// Pixels along.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// Red, green and blue of each pixel, row by row.
    pub rgb: Vec<[u8; 3]>,
}

/// Levels of a colour by which two pixels may differ unseen: letters have soft edges, which are
/// rounded differently from machine to machine.
const LEVELS: u8 = 60;

impl Picture {
    /// Reads a PNG file.
    ///
    /// # Panics
    /// When it is none.
    #[must_use]
    pub fn read(file: &[u8]) -> Self {
        let mut decoder = png::Decoder::new(file);
        decoder.set_transformations(png::Transformations::EXPAND | png::Transformations::STRIP_16);
        let mut reader = decoder.read_info().expect("a PNG file");
        let size = reader.output_buffer_size();
        let mut bytes = vec![0; size];
        let info = reader.next_frame(&mut bytes).expect("a whole PNG file");
        let samples = info.color_type.samples();
        let pixel = |p: &[u8]| {
            if samples < 3 {
                [p[0]; 3]
            } else {
                [p[0], p[1], p[2]]
            }
        };
        let used = &bytes[..info.buffer_size()];
        Self {
            width: info.width,
            height: info.height,
            rgb: used.chunks_exact(samples).map(pixel).collect(),
        }
    }

    /// Writes a PNG file with a palette of the 256 colours that most of the picture is made of; a
    /// colour that is not among them becomes the nearest.
    ///
    /// # Panics
    /// When the picture has no pixels.
    #[must_use]
    pub fn write_small(&self) -> Vec<u8> {
        let mut counts: HashMap<[u8; 3], u32> = HashMap::new();
        for pixel in &self.rgb {
            *counts.entry(*pixel).or_default() += 1;
        }
        let mut colours: Vec<([u8; 3], u32)> = counts.into_iter().collect();
        colours.sort_by_key(|(colour, count)| (u32::MAX - count, *colour));
        let palette: Vec<[u8; 3]> = colours.iter().take(256).map(|(c, _)| *c).collect();
        let nearest = |colour: &[u8; 3]| {
            let far = |other: &[u8; 3]| -> u32 {
                let part = |a: u8, b: u8| u32::from(a.abs_diff(b)).pow(2);
                part(colour[0], other[0]) + part(colour[1], other[1]) + part(colour[2], other[2])
            };
            let index = (0..palette.len()).min_by_key(|index| far(&palette[*index]));
            index.unwrap_or(0) as u8
        };
        let index: HashMap<[u8; 3], u8> = colours.iter().map(|(c, _)| (*c, nearest(c))).collect();
        let pixels: Vec<u8> = self.rgb.iter().map(|pixel| index[pixel]).collect();
        let mut file = Vec::new();
        let mut encoder = png::Encoder::new(&mut file, self.width, self.height);
        encoder.set_color(png::ColorType::Indexed);
        encoder.set_depth(png::BitDepth::Eight);
        encoder.set_palette(palette.concat());
        encoder.set_compression(png::Compression::Best);
        encoder.set_filter(png::FilterType::NoFilter);
        let mut writer = encoder.write_header().expect("a PNG header");
        writer.write_image_data(&pixels).expect("PNG data");
        writer.finish().expect("the end of a PNG");
        file
    }

    /// The share of pixels that differ to the eye from another picture of the same size, and a
    /// picture of where they do; nothing where the sizes differ.
    #[must_use]
    pub fn difference(&self, other: &Self) -> Option<(f64, Self)> {
        if (self.width, self.height) != (other.width, other.height) {
            return None;
        }
        let differs =
            |(a, b): (&[u8; 3], &[u8; 3])| a.iter().zip(b).any(|(x, y)| x.abs_diff(*y) > LEVELS);
        let marks: Vec<bool> = self.rgb.iter().zip(&other.rgb).map(differs).collect();
        let share = marks.iter().filter(|mark| **mark).count() as f64 / marks.len() as f64;
        // What is the same stays as a faint ground to find one's way on.
        let faint = |pixel: &[u8; 3]| pixel.map(|level| 170 + level / 3);
        let rgb = marks
            .iter()
            .zip(&self.rgb)
            .map(|(mark, pixel)| if *mark { [220, 0, 0] } else { faint(pixel) })
            .collect();
        Some((share, Self { rgb, ..*self }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn picture() -> Picture {
        let rgb = (0..600_u32)
            .map(|i| [(i % 7 * 36) as u8, (i % 5 * 50) as u8, 255])
            .collect();
        Picture {
            width: 30,
            height: 20,
            rgb,
        }
    }

    #[test]
    fn a_picture_of_few_colours_comes_back_as_it_was() {
        let picture = picture();
        assert_eq!(Picture::read(&picture.write_small()), picture);
    }

    #[test]
    fn what_differs_is_counted_and_marked() {
        let one = picture();
        let mut other = one.clone();
        other.rgb[31] = [0, 0, 0];
        other.rgb[32][2] -= 10; // as a soft edge may
        let (share, marked) = one.difference(&other).expect("one size");
        assert!((share - 1.0 / 600.0).abs() < 1e-9, "{share}");
        assert_eq!(marked.rgb[31], [220, 0, 0]);
        assert_ne!(marked.rgb[32], [220, 0, 0]);
        other.height = 19;
        other.rgb.truncate(570);
        assert_eq!(one.difference(&other), None);
    }
}
