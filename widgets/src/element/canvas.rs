//! The backend that draws a chart on a canvas of the page.
//!
//! Numbers are written by the core and colours carry no opacity: the standard library's way to print a
//! fraction would be a twentieth of what a page fetches.

use axlewright_core::format::plain;
use core::cell::{Cell, RefCell};
use core::convert::Infallible;
use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

type Drawn = Result<(), DrawingErrorKind<Infallible>>;

/// A canvas to draw on.
pub(super) struct Canvas {
    size: (u32, u32),
    context: CanvasRenderingContext2d,
    /// Colours to fill and to draw with, and the font: the browser reads each as a text.
    inks: [Cell<Option<BackendColor>>; 2],
    font: RefCell<String>,
}

impl Canvas {
    /// `None` where the browser gives no context to draw in.
    pub(super) fn of(canvas: &HtmlCanvasElement) -> Option<Self> {
        let context = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        Some(Self {
            size: (canvas.width(), canvas.height()),
            context,
            inks: Default::default(),
            font: RefCell::default(),
        })
    }

    fn ink(&self, color: BackendColor, fill: bool, width: u32) {
        let other = self.inks[usize::from(fill)]
            .replace(Some(color))
            .is_none_or(|before| before.rgb != color.rgb);
        if other && fill {
            self.context.set_fill_style_str(&css(color));
        } else if other {
            self.context.set_stroke_style_str(&css(color));
        }
        if !fill {
            self.context.set_line_width(f64::from(width));
        }
    }

    fn trace(&self, path: &mut dyn Iterator<Item = BackendCoord>) {
        self.context.begin_path();
        for (x, y) in path {
            // The first line to a point of an empty path only goes there.
            self.context.line_to(f64::from(x), f64::from(y));
        }
    }

    fn finish(&self, fill: bool) {
        if fill {
            self.context.fill();
        } else {
            self.context.stroke();
        }
    }
}

fn css(color: BackendColor) -> String {
    let (red, green, blue) = color.rgb;
    let mut text = String::from("#");
    for part in [red, green, blue] {
        for digit in [part >> 4, part & 15] {
            text.push(char::from_digit(u32::from(digit), 16).unwrap_or('0'));
        }
    }
    text
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

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Drawn {
        self.ink(color, true, 0);
        let (x, y) = (f64::from(point.0), f64::from(point.1));
        self.context.fill_rect(x, y, 1.0, 1.0);
        Ok(())
    }

    /// A level or upright line lies on the pixel grid, where it is sharp.
    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Drawn {
        self.ink(style.color(), false, style.stroke_width());
        let aside = |one: i32, other: i32| if one == other { 0.5 } else { 0.0 };
        let (x, y) = (aside(from.0, to.0), aside(from.1, to.1));
        self.context.begin_path();
        self.context
            .move_to(f64::from(from.0) - x, f64::from(from.1) - y);
        self.context
            .line_to(f64::from(to.0) - x, f64::from(to.1) - y);
        self.finish(false);
        Ok(())
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Drawn {
        self.ink(style.color(), fill, style.stroke_width());
        let (left, top) = (f64::from(upper_left.0), f64::from(upper_left.1));
        let width = f64::from(bottom_right.0) - left;
        let height = f64::from(bottom_right.1) - top;
        self.context.begin_path();
        self.context.rect(left, top, width, height);
        self.finish(fill);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        self.ink(style.color(), false, style.stroke_width());
        self.trace(&mut path.into_iter());
        self.finish(false);
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        self.ink(style.color(), true, 0);
        self.trace(&mut path.into_iter());
        self.finish(true);
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Drawn {
        self.ink(style.color(), fill, style.stroke_width());
        let (x, y) = (f64::from(center.0), f64::from(center.1));
        self.context.begin_path();
        // It refuses only a negative radius.
        let _ = self
            .context
            .arc(x, y, f64::from(radius), 0.0, core::f64::consts::TAU);
        self.finish(fill);
        Ok(())
    }

    /// Text stands upright in every chart.
    fn draw_text<S: BackendTextStyle>(
        &mut self,
        text: &str,
        style: &S,
        pos: BackendCoord,
    ) -> Drawn {
        self.ink(style.color(), true, 0);
        let anchor = style.anchor();
        self.context.set_text_baseline(match anchor.v_pos {
            VPos::Top => "top",
            VPos::Center => "middle",
            VPos::Bottom => "bottom",
        });
        self.context.set_text_align(match anchor.h_pos {
            HPos::Left => "start",
            HPos::Right => "end",
            HPos::Center => "center",
        });
        let (style_word, family) = (style.style(), style.family());
        let mut font = String::from(style_word.as_str());
        for part in [" ", &plain(style.size()), "px ", family.as_str()] {
            font.push_str(part);
        }
        if *self.font.borrow() != font {
            self.context.set_font(&font);
            *self.font.borrow_mut() = font;
        }
        // It refuses nothing: the text is one.
        let _ = self
            .context
            .fill_text(text, f64::from(pos.0), f64::from(pos.1));
        Ok(())
    }
}
