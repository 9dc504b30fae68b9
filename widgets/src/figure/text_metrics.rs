//! How wide a text will be, estimated from above, without a font at hand.
//!
//! The widths are those of DejaVu Sans, about the widest sans that a reader's
//! machine falls back to. A narrower font leaves a little more air.

/// Size of text in a figure, in scene units.
pub const TEXT: f64 = 13.0;
/// Size of a headline.
pub const TITLE: f64 = 16.0;
/// Distance between the baselines of two lines of text.
pub const LEADING: f64 = 18.0;
/// Gap between a bold value and its soft words.
pub const GAP: f64 = 6.0;

/// Hundredths of the font size, from the space (U+0020) to the tilde (U+007E).
const WIDTHS: [u8; 95] = [
    32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 54, 100, 69, 69, 70, 78, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75,
    79, 61, 79, 70, 64, 62, 74, 69, 99, 69, 62, 69, 40, 34, 40, 84, 50, 50, 62, 64, 55, 64, 62, 36,
    64, 64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
];

/// Width of a text in scene units.
pub fn text_width(text: &str, size: f64, bold: bool) -> f64 {
    let mut hundredths = 0u32;
    for letter in text.chars() {
        let code = letter as u32;
        hundredths += match code {
            0x20..=0x7e => u32::from(WIDTHS[(code - 0x20) as usize]),
            // thin and narrow no-break space, no-break space, middle dot
            0x2009 | 0x202f => 20,
            0xa0 | 0xb7 => 35,
            // dashes and mathematical signs
            0x2010..=0x2015 | 0x2026 | 0x2190..=0x22ff => 100,
            // scripts whose letters fill the square
            0x2e80.. => 105,
            _ => 80,
        };
        if bold {
            hundredths += 8;
        }
    }
    f64::from(hundredths) * size / 100.0
}

/// Breaks a text into lines no wider than `width`. A single word that is wider
/// keeps a line of its own.
pub fn wrap(text: &str, size: f64, bold: bool, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    // Only the plain space breaks a line: a thin one belongs to its number.
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let joined = match lines.last() {
            Some(line) => {
                text_width(line, size, bold)
                    + text_width(" ", size, bold)
                    + text_width(word, size, bold)
                    <= width
            }
            None => false,
        };
        match lines.last_mut() {
            Some(line) if joined => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(String::from(word)),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn widths_are_those_of_the_font() {
        // "11 320 N" measured in a browser, DejaVu Sans 13 px: 57.9 px, bold 64.5 px.
        let plain = text_width("11 320 N", 13.0, false);
        let bold = text_width("11 320 N", 13.0, true);
        assert!((57.0..62.0).contains(&plain), "{plain}");
        assert!((64.0..70.0).contains(&bold), "{bold}");
    }

    #[test]
    fn wrapping_keeps_every_word_and_the_width() {
        let text = "Closed ground only. Tears tyres and ground; drifts on slopes.";
        for width in [60.0, 120.0, 200.0, 1000.0] {
            let lines = wrap(text, 13.0, false, width);
            assert_eq!(lines.join(" "), text);
            for line in &lines {
                assert!(text_width(line, 13.0, false) <= width || !line.contains(' '));
            }
        }
    }

    #[test]
    fn a_thin_space_does_not_break() {
        let lines = wrap("11\u{2009}320\u{2009}N rear", 13.0, false, 60.0);
        assert_eq!(lines[0], "11\u{2009}320\u{2009}N");
    }
}
