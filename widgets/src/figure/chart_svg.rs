//! A `plotters` backend that writes our SVG.
//!
//! Backend coordinates are whole numbers; this one is ten times finer than the
//! drawing, so that slanted lines stay smooth. Colours are passed through as
//! the number of their role and become the theme's text at the end, which is
//! how custom properties of a page survive a backend that knows only RGB.

use core::convert::Infallible;

use plotters_backend::text_anchor::HPos;
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
    FontStyle,
};

use super::chart::Chart;
use super::chart_draw::draw_chart;
use super::number::{push_coord, within};
use super::palette::{Palette, ROLES, Role, Theme};
use super::scene::Scene;
use super::svg::{SvgOptions, open, push_escaped};

const FINE: f64 = 10.0;

/// Writes a chart as SVG.
pub fn chart_svg(chart: &Chart, options: &SvgOptions) -> String {
    let frame = Scene {
        width: within(chart.width, 200.0, 4000.0),
        height: within(chart.height, 140.0, 4000.0),
        title: chart.title.clone(),
        description: chart.description.clone(),
        ..Scene::default()
    };
    let mut backend = SvgBackend {
        out: String::with_capacity(8192),
        theme: options.theme,
        size: ((frame.width * FINE) as u32, (frame.height * FINE) as u32),
        path: None,
    };
    open(&mut backend.out, &frame, options);
    // Writing to a string cannot fail.
    let _drawn = draw_chart(&mut backend, chart, &coded(), options.font_family, FINE);
    backend.finish_path();
    backend.out.push_str("</svg>\n");
    backend.out
}

/// A palette whose colours name their role: (role, 0 stroke or 1 text, 0).
fn coded() -> Palette {
    let mut palette = Palette {
        stroke: [(0, 0, 0); 9],
        text: [(0, 0, 0); 9],
    };
    for role in ROLES {
        palette.stroke[role.index()] = (role as u8, 0, 0);
        palette.text[role.index()] = (role as u8, 1, 0);
    }
    palette
}

struct SvgBackend {
    out: String,
    theme: Theme,
    size: (u32, u32),
    /// Colour and width of the `<path>` that is still open: dashes of one line
    /// come one by one and belong in one.
    path: Option<((u8, u8, u8), u32)>,
}

type Written = Result<(), DrawingErrorKind<Infallible>>;

impl SvgBackend {
    fn colour(&self, color: BackendColor) -> &'static str {
        let role = ROLES
            .get(usize::from(color.rgb.0))
            .copied()
            .unwrap_or(Role::Ink);
        if color.rgb.1 == 1 {
            self.theme.text(role)
        } else {
            self.theme.stroke(role)
        }
    }

    fn num(&mut self, value: i32) {
        push_coord(&mut self.out, f64::from(value) / FINE);
    }

    fn attr(&mut self, name: &str, value: f64) {
        self.out.push(' ');
        self.out.push_str(name);
        self.out.push_str("=\"");
        push_coord(&mut self.out, value / FINE);
        self.out.push('"');
    }

    fn colour_attr(&mut self, name: &str, color: BackendColor) {
        let colour = self.colour(color);
        self.out.push(' ');
        self.out.push_str(name);
        self.out.push_str("=\"");
        self.out.push_str(colour);
        self.out.push('"');
    }

    fn points<I: IntoIterator<Item = BackendCoord>>(&mut self, points: I) {
        for (index, (x, y)) in points.into_iter().enumerate() {
            self.out.push(if index == 0 { 'M' } else { 'L' });
            self.num(x);
            self.out.push(' ');
            self.num(y);
        }
    }

    fn finish_path(&mut self) {
        if let Some((rgb, width)) = self.path.take() {
            self.out.push('"');
            self.colour_attr("stroke", BackendColor { alpha: 1.0, rgb });
            self.attr("stroke-width", f64::from(width));
            self.out.push_str("/>\n");
        }
    }
}

impl DrawingBackend for SvgBackend {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.size
    }

    fn ensure_prepared(&mut self) -> Written {
        Ok(())
    }

    fn present(&mut self) -> Written {
        Ok(())
    }

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Written {
        self.draw_rect(point, (point.0 + 1, point.1 + 1), &color, true)
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Written {
        self.draw_path([from, to], style)
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Written {
        self.finish_path();
        // The paper is already there, or is left to the page.
        if fill && usize::from(style.color().rgb.0) == Role::Paper.index() {
            return Ok(());
        }
        self.out.push_str("<rect");
        self.attr("x", f64::from(upper_left.0));
        self.attr("y", f64::from(upper_left.1));
        self.attr("width", f64::from(bottom_right.0 - upper_left.0));
        self.attr("height", f64::from(bottom_right.1 - upper_left.1));
        self.colour_attr(if fill { "fill" } else { "stroke" }, style.color());
        self.out.push_str("/>\n");
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Written {
        let look = (style.color().rgb, style.stroke_width());
        if self.path != Some(look) {
            self.finish_path();
            self.out.push_str("<path d=\"");
            self.path = Some(look);
        }
        self.points(path);
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Written {
        self.finish_path();
        self.out.push_str("<circle");
        self.attr("cx", f64::from(center.0));
        self.attr("cy", f64::from(center.1));
        self.attr("r", f64::from(radius));
        if fill {
            self.colour_attr("fill", style.color());
        } else {
            self.colour_attr("stroke", style.color());
            self.attr("stroke-width", f64::from(style.stroke_width()));
        }
        self.out.push_str("/>\n");
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        vert: I,
        style: &S,
    ) -> Written {
        self.finish_path();
        self.out.push_str("<path d=\"");
        self.points(vert);
        self.out.push_str("z\"");
        self.colour_attr("fill", style.color());
        self.out.push_str("/>\n");
        Ok(())
    }

    fn draw_text<T: BackendTextStyle>(
        &mut self,
        text: &str,
        style: &T,
        pos: BackendCoord,
    ) -> Written {
        self.finish_path();
        self.out.push_str("<text");
        self.attr("x", f64::from(pos.0));
        // The anchor is the middle of the letters, SVG wants the baseline.
        self.attr("y", f64::from(pos.1) + 0.35 * style.size());
        self.attr("font-size", style.size());
        match style.anchor().h_pos {
            HPos::Left => {}
            HPos::Right => self.out.push_str(" text-anchor=\"end\""),
            HPos::Center => self.out.push_str(" text-anchor=\"middle\""),
        }
        if matches!(style.style(), FontStyle::Bold) {
            self.out.push_str(" font-weight=\"600\"");
        }
        self.colour_attr("fill", style.color());
        self.out.push('>');
        push_escaped(&mut self.out, text);
        self.out.push_str("</text>\n");
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::chart::{Dash, Line, Marker};

    fn drawn(dash: Dash, marker: Marker, role: Role) -> String {
        let mut chart = Chart {
            width: 600.0,
            height: 300.0,
            lines: vec![Line {
                label: String::from("a"),
                points: vec![(0.0, 0.0), (1.0, 1.0)],
                role,
                dash,
                marker,
            }],
            ..Chart::default()
        };
        chart.x_axis.max = 1.0;
        chart.y_axis.max = 1.0;
        let options = SvgOptions {
            theme: Theme::Print,
            ..SvgOptions::default()
        };
        let text = chart_svg(&chart, &options);
        let hidden = text.replace(Theme::Print.stroke(role), "grey");
        hidden.replace(Theme::Print.text(role), "grey")
    }

    #[test]
    fn four_lines_differ_without_colour() {
        let looks = [
            (Dash::Solid, Marker::None, Role::Front),
            (Dash::Long, Marker::Circle, Role::Rear),
            (Dash::Short, Marker::Square, Role::Tractive),
            (Dash::DashDot, Marker::Triangle, Role::Inertia),
            (Dash::Solid, Marker::Diamond, Role::Ink),
        ]
        .map(|(dash, marker, role)| drawn(dash, marker, role));
        for (index, one) in looks.iter().enumerate() {
            for other in &looks[index + 1..] {
                assert_ne!(one, other);
            }
        }
        // Colour is all that is hidden: the same look in another role is the same.
        let again = drawn(Dash::Solid, Marker::None, Role::Rear);
        assert_eq!(again, looks[0]);
    }

    #[test]
    fn slanted_lines_keep_a_tenth_of_a_unit() {
        let text = drawn(Dash::Solid, Marker::None, Role::Front);
        let path = text
            .lines()
            .find(|line| line.contains("stroke-width=\"2\""));
        assert!(path.is_some_and(|line| line.contains('.')), "{path:?}");
    }
}
