//! A `plotters` backend that draws on an HTML canvas.
//!
//! Numbers become text by the core's own conversion: the standard library's would add more code to
//! the element than the whole chart has.

use axlewright_core::format;
use core::convert::Infallible;
use plotters_backend::text_anchor::HPos;
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

/// A canvas and its context.
pub(super) struct Canvas {
    context: CanvasRenderingContext2d,
    size: (u32, u32),
}

/// A canvas takes whatever it is given: nothing here can fail.
type Drawn = Result<(), DrawingErrorKind<Infallible>>;

/// `#rrggbb`.
fn hex(color: BackendColor) -> String {
    let (r, g, b) = color.rgb;
    let mut text = String::from("#");
    for byte in [r, g, b] {
        for digit in [byte >> 4, byte & 15] {
            text.push(char::from(b"0123456789abcdef"[usize::from(digit)]));
        }
    }
    text
}

impl Canvas {
    /// Takes a canvas of a size in its own pixels; `None` where the browser has no context for it.
    pub(super) fn new(canvas: &HtmlCanvasElement, size: (u32, u32)) -> Option<Self> {
        canvas.set_width(size.0);
        canvas.set_height(size.1);
        let context = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        Some(Self { context, size })
    }

    /// Traces points half a pixel off the grid or on it.
    fn trace(&self, points: impl IntoIterator<Item = BackendCoord>, shift: (f64, f64)) {
        self.context.begin_path();
        for (x, y) in points {
            // The first of a path begins it.
            self.context
                .line_to(f64::from(x) - shift.0, f64::from(y) - shift.1);
        }
    }

    /// Fills or strokes what was traced.
    fn ink(&self, color: BackendColor, stroke: Option<u32>) {
        match stroke {
            None => {
                self.context.set_fill_style_str(&hex(color));
                self.context.fill();
            }
            Some(width) => {
                self.context.set_stroke_style_str(&hex(color));
                self.context.set_line_width(f64::from(width));
                self.context.stroke();
            }
        }
    }
}

impl DrawingBackend for Canvas {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.size
    }

    fn ensure_prepared(&mut self) -> Drawn {
        Ok(())
    }

    fn present(&mut self) -> Drawn {
        Ok(())
    }

    fn draw_pixel(&mut self, (x, y): BackendCoord, color: BackendColor) -> Drawn {
        self.draw_rect((x, y), (x + 1, y + 1), &color, true)
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Drawn {
        // Half a pixel off the grid an upright or level line is sharp.
        let shift = |same| if same { 0.5 } else { 0.0 };
        self.trace([from, to], (shift(from.0 == to.0), shift(from.1 == to.1)));
        self.ink(style.color(), Some(style.stroke_width()));
        Ok(())
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        (left, top): BackendCoord,
        (right, bottom): BackendCoord,
        style: &S,
        fill: bool,
    ) -> Drawn {
        self.trace(
            [(left, top), (right, top), (right, bottom), (left, bottom)],
            (0.0, 0.0),
        );
        self.context.close_path();
        self.ink(style.color(), (!fill).then(|| style.stroke_width()));
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        self.trace(path, (0.0, 0.0));
        self.ink(style.color(), Some(style.stroke_width()));
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        (x, y): BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Drawn {
        let (x, y, radius) = (f64::from(x), f64::from(y), f64::from(radius));
        self.context.begin_path();
        // Only a negative radius is refused.
        let _ = self
            .context
            .arc(x, y, radius, 0.0, 2.0 * core::f64::consts::PI);
        self.ink(style.color(), (!fill).then(|| style.stroke_width()));
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        self.trace(path, (0.0, 0.0));
        self.ink(style.color(), None);
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(
        &mut self,
        text: &str,
        style: &S,
        (x, y): BackendCoord,
    ) -> Drawn {
        // Every text of a chart is centred on its height and level.
        self.context.set_text_baseline("middle");
        self.context.set_text_align(match style.anchor().h_pos {
            HPos::Left => "start",
            HPos::Right => "end",
            HPos::Center => "center",
        });
        self.context.set_fill_style_str(&hex(style.color()));
        let mut font = String::from(style.style().as_str());
        for part in [
            " ",
            &format::plain(style.size()),
            "px ",
            style.family().as_str(),
        ] {
            font.push_str(part);
        }
        self.context.set_font(&font);
        let _ = self.context.fill_text(text, f64::from(x), f64::from(y));
        Ok(())
    }
}
