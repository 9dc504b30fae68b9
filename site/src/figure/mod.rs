//! Figures as files: SVG as the figures write it, and PNG and PDF drawn from that SVG.
//!
//! Every file carries what it was made from, so that `axlewright figure --again FILE` makes it again.

pub mod again;
mod make;
mod outline;
pub mod paper;
mod pdf;
mod raster;

pub use make::{Figure, FigureAsked, MakeError, finish, make};
pub use outline::outlined;
pub use pdf::pdf;
pub use raster::{png, png_at};

use resvg::usvg::{Options, Tree};
use std::fmt;

const REGULAR: &[u8] = include_bytes!("../../fonts/OpenSans-Regular.ttf");
const SEMIBOLD: &[u8] = include_bytes!("../../fonts/OpenSans-Semibold.ttf");

/// Pixels of an inch where a file gives its size in pixels, as CSS has it.
const PIXELS_PER_INCH: f32 = 96.0;

/// Why a figure could not become a file.
#[derive(Debug)]
#[non_exhaustive]
pub enum FileError {
    /// The SVG could not be read back.
    Svg(String),
    /// The picture would be too large, or could not be packed.
    Picture(String),
    /// The PDF could not be written.
    Pdf(String),
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Svg(reason) => write!(f, "the figure cannot be read back: {reason}"),
            Self::Picture(reason) => write!(f, "the PNG cannot be made: {reason}"),
            Self::Pdf(reason) => write!(f, "the PDF cannot be made: {reason}"),
        }
    }
}

impl std::error::Error for FileError {}

/// Reads an SVG back with the font that comes with this program and no other, so that what is made of it
/// is the same on every machine.
fn tree(svg: &str) -> Result<Tree, FileError> {
    let mut options = Options {
        dpi: PIXELS_PER_INCH,
        font_family: "Open Sans".into(),
        ..Options::default()
    };
    let fonts = options.fontdb_mut();
    fonts.load_font_data(REGULAR.to_vec());
    fonts.load_font_data(SEMIBOLD.to_vec());
    fonts.set_sans_serif_family("Open Sans");
    Tree::from_str(svg, &options).map_err(|e| FileError::Svg(e.to_string()))
}

/// The text of an element of our own SVG, as it was before it was escaped; empty where there is none.
fn element_text(svg: &str, name: &str) -> String {
    let from = svg.find(&format!("<{name}"));
    let content = from.and_then(|from| {
        let (_, rest) = svg.get(from..)?.split_once('>')?;
        rest.split_once(&format!("</{name}>"))
    });
    content.map_or_else(String::new, |(text, _)| unescaped(text))
}

fn unescaped(text: &str) -> String {
    text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
}
