//! Draws a chart on any `plotters` backend: canvas in the browser, SVG in files.

use core::convert::Infallible;

use plotters_backend::text_anchor::{HPos, Pos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
    FontFamily, FontStyle,
};

use super::chart::{Chart, ChartPoint, Dash, Line, Marker};
use super::chart_layout::{ChartLayout, Placed, chart_layout};
use super::chart_lines::{beads, dashed, runs};
use super::number::{tick_text, ticks, within};
use super::palette::{Palette, Role};
use super::scene::{Anchor, Point, at};
use super::text_metrics::{TEXT, TITLE, text_width};

/// Draws a chart.
///
/// `scale` is the number of backend pixels per unit of the chart: fonts,
/// margins and strokes all grow with it, so that a canvas whose backing store
/// is finer than the page is sharp. The backend must be `scale` times the
/// chart's size.
pub fn draw_chart<B: DrawingBackend>(
    backend: &mut B,
    chart: &Chart,
    palette: &Palette,
    font_family: &str,
    scale: f64,
) -> Result<(), DrawingErrorKind<B::ErrorType>> {
    backend.ensure_prepared()?;
    let mut surface = Keeping {
        backend,
        result: Ok(()),
    };
    draw(&mut surface, chart, palette, font_family, scale);
    surface.result?;
    backend.present()
}

/// A backend behind calls of fixed types, so that one copy of the drawing serves all backends. It
/// keeps the first error and draws no more after it.
trait Surface {
    fn size(&self) -> (u32, u32);
    fn draw_paper(&mut self, far: BackendCoord, pen: &Pen);
    fn draw_line(&mut self, from: BackendCoord, to: BackendCoord, pen: &Pen);
    fn draw_path(&mut self, path: Vec<BackendCoord>, pen: &Pen, fill: bool);
    fn draw_circle(&mut self, centre: BackendCoord, radius: u32, pen: &Pen, fill: bool);
    fn draw_text(&mut self, text: &str, style: &Lettering, place: BackendCoord);
}

struct Keeping<'a, B: DrawingBackend> {
    backend: &'a mut B,
    result: Result<(), DrawingErrorKind<B::ErrorType>>,
}

impl<B: DrawingBackend> Surface for Keeping<'_, B> {
    fn size(&self) -> (u32, u32) {
        self.backend.get_size()
    }
    fn draw_paper(&mut self, far: BackendCoord, pen: &Pen) {
        if self.result.is_ok() {
            self.result = self.backend.draw_rect((0, 0), far, pen, true);
        }
    }
    fn draw_line(&mut self, from: BackendCoord, to: BackendCoord, pen: &Pen) {
        if self.result.is_ok() {
            self.result = self.backend.draw_line(from, to, pen);
        }
    }
    fn draw_path(&mut self, path: Vec<BackendCoord>, pen: &Pen, fill: bool) {
        if self.result.is_ok() {
            self.result = if fill {
                self.backend.fill_polygon(path, pen)
            } else {
                self.backend.draw_path(path, pen)
            };
        }
    }
    fn draw_circle(&mut self, centre: BackendCoord, radius: u32, pen: &Pen, fill: bool) {
        if self.result.is_ok() {
            self.result = self.backend.draw_circle(centre, radius, pen, fill);
        }
    }
    fn draw_text(&mut self, text: &str, style: &Lettering, place: BackendCoord) {
        if self.result.is_ok() {
            self.result = self.backend.draw_text(text, style, place);
        }
    }
}

fn draw(
    surface: &mut dyn Surface,
    chart: &Chart,
    palette: &Palette,
    font_family: &str,
    scale: f64,
) {
    let layout = chart_layout(chart);
    let mut pencil = Pencil {
        surface,
        palette,
        font_family,
        scale,
    };
    pencil.paper();
    pencil.grid(chart, &layout);
    pencil.verticals(chart, &layout);
    for (index, line) in chart.lines.iter().enumerate() {
        pencil.line(line, index, &layout);
    }
    for (line, (end, label)) in chart.lines.iter().zip(&layout.ends) {
        pencil.end(line, *end, label);
    }
    pencil.points(&chart.pinned, &layout, false);
    pencil.points(&chart.present, &layout, true);
    pencil.names(chart, &layout);
    pencil.titles(&layout);
}

struct Pen {
    color: BackendColor,
    width: u32,
}

impl BackendStyle for Pen {
    fn color(&self) -> BackendColor {
        self.color
    }
    fn stroke_width(&self) -> u32 {
        self.width
    }
}

struct Lettering<'a> {
    family: &'a str,
    size: f64,
    bold: bool,
    color: BackendColor,
    anchor: HPos,
}

impl BackendTextStyle for Lettering<'_> {
    type FontError = Infallible;

    fn color(&self) -> BackendColor {
        self.color
    }
    fn size(&self) -> f64 {
        self.size
    }
    fn style(&self) -> FontStyle {
        if self.bold {
            FontStyle::Bold
        } else {
            FontStyle::Normal
        }
    }
    fn anchor(&self) -> Pos {
        Pos::new(self.anchor, VPos::Center)
    }
    fn family(&self) -> FontFamily<'_> {
        FontFamily::Name(self.family)
    }
    // Backends that draw text themselves never ask for these two.
    fn layout_box(&self, _text: &str) -> Result<((i32, i32), (i32, i32)), Infallible> {
        Ok(((0, 0), (0, 0)))
    }
    fn draw<E, F: FnMut(i32, i32, BackendColor) -> Result<(), E>>(
        &self,
        _text: &str,
        _pos: BackendCoord,
        _draw: F,
    ) -> Result<Result<(), E>, Infallible> {
        Ok(Ok(()))
    }
}

struct Pencil<'a> {
    surface: &'a mut dyn Surface,
    palette: &'a Palette,
    font_family: &'a str,
    scale: f64,
}

impl Pencil<'_> {
    fn pixel(&self, p: Point) -> BackendCoord {
        let round = |v: f64| within((v * self.scale).round(), -1e6, 1e6) as i32;
        (round(p.x), round(p.y))
    }

    fn pen(&self, role: Role, width: f64) -> Pen {
        Pen {
            color: BackendColor {
                alpha: 1.0,
                rgb: self.palette.stroke[role.index()],
            },
            width: (width * self.scale).round().max(1.0) as u32,
        }
    }

    fn stroke(&mut self, points: &[Point], role: Role, width: f64) {
        let pen = self.pen(role, width);
        let path: Vec<BackendCoord> = points.iter().map(|p| self.pixel(*p)).collect();
        if let [from, to] = path[..] {
            // A backend sets a single line on the pixel grid, a path it does not.
            self.surface.draw_line(from, to, &pen);
        } else {
            self.surface.draw_path(path, &pen, false);
        }
    }

    fn fill(&mut self, points: &[Point], role: Role) {
        let pen = self.pen(role, 1.0);
        let path: Vec<BackendCoord> = points.iter().map(|p| self.pixel(*p)).collect();
        self.surface.draw_path(path, &pen, true);
    }

    fn circle(&mut self, p: Point, radius: f64, role: Role, stroke: Option<f64>) {
        let pen = self.pen(role, stroke.unwrap_or(1.0));
        let radius = (radius * self.scale).round().max(1.0) as u32;
        let centre = self.pixel(p);
        self.surface
            .draw_circle(centre, radius, &pen, stroke.is_none());
    }

    fn text(&mut self, placed: &Placed, role: Role, size: f64, bold: bool) {
        let style = Lettering {
            family: self.font_family,
            size: size * self.scale,
            bold,
            color: BackendColor {
                alpha: 1.0,
                rgb: self.palette.text[role.index()],
            },
            anchor: match placed.anchor {
                Anchor::Start => HPos::Left,
                Anchor::Middle => HPos::Center,
                Anchor::End => HPos::Right,
            },
        };
        let place = self.pixel(placed.at);
        self.surface.draw_text(&placed.text, &style, place);
    }

    fn paper(&mut self) {
        let (width, height) = self.surface.size();
        let pen = self.pen(Role::Paper, 1.0);
        self.surface.draw_paper((width as i32, height as i32), &pen);
    }

    fn grid(&mut self, chart: &Chart, layout: &ChartLayout) {
        let plot = layout.plot;
        let (x_range, y_range) = (layout.x_range(), layout.y_range());
        for value in ticks(x_range.0, x_range.1, layout.x_step) {
            let x = layout.place(value, y_range.0).x;
            self.stroke(&[at(x, plot.y0), at(x, plot.y1 + 4.0)], Role::Hair, 1.0);
            let text = tick_text(value, layout.x_step, chart.decimal_mark);
            // The last one keeps clear of the names at the lines' ends, and on the page.
            let last = plot.x1 + 12.0 - 0.5 * text_width(&text, TEXT, false);
            let placed = Placed {
                at: at(x.min(last), plot.y1 + 14.0),
                anchor: Anchor::Middle,
                text,
            };
            self.text(&placed, Role::Soft, TEXT, false);
        }
        for value in ticks(y_range.0, y_range.1, layout.y_step) {
            let y = layout.place(x_range.0, value).y;
            // The zero line is the one that is read against.
            let zero = value.abs() < layout.y_step * 1e-6;
            let role = if zero { Role::Fine } else { Role::Hair };
            self.stroke(&[at(plot.x0 - 4.0, y), at(plot.x1, y)], role, 1.0);
            let text = tick_text(value, layout.y_step, chart.decimal_mark);
            let placed = Placed {
                at: at(plot.x0 - 8.0, y),
                anchor: Anchor::End,
                text,
            };
            self.text(&placed, Role::Soft, TEXT, false);
        }
    }

    fn verticals(&mut self, chart: &Chart, layout: &ChartLayout) {
        let plot = layout.plot;
        for (vertical, label) in chart.verticals.iter().zip(&layout.verticals) {
            let x = layout.place(vertical.x, 0.0).x;
            if x < plot.x0 - 0.5 || x > plot.x1 + 0.5 {
                continue;
            }
            let top = label.at.y + 9.0;
            for dash in dashed(&[at(x, top), at(x, plot.y1)], &[5.0, 3.0]) {
                self.stroke(&dash, Role::Soft, 1.2);
            }
        }
        for label in &layout.verticals {
            self.text(label, Role::Soft, TEXT, false);
        }
    }

    fn line(&mut self, line: &Line, index: usize, layout: &ChartLayout) {
        // The first marker of each line sits elsewhere, so that lines that run
        // together can still be told apart.
        let offset = 24.0 + 17.0 * (index % 4) as f64;
        for run in runs(line, layout) {
            let pattern: &[f64] = match line.dash {
                Dash::Solid => &[],
                Dash::Long => &[10.0, 5.0],
                Dash::Short => &[3.0, 3.0],
                Dash::DashDot => &[10.0, 4.0, 2.0, 4.0],
                Dash::Dots => &[2.0, 7.0],
            };
            if pattern.is_empty() {
                self.stroke(&run, line.role, 2.0);
            } else {
                for dash in dashed(&run, pattern) {
                    self.stroke(&dash, line.role, 2.0);
                }
            }
            if line.marker != Marker::None {
                for p in beads(&run, offset, 68.0) {
                    self.marker(line.marker, p, line.role);
                }
            }
        }
    }

    fn marker(&mut self, marker: Marker, p: Point, role: Role) {
        let by = |dx: f64, dy: f64| p.plus(dx, dy);
        match marker {
            Marker::None => {}
            Marker::Circle => self.circle(p, 3.5, role, None),
            Marker::Square => self.fill(
                &[by(-3.5, -3.5), by(3.5, -3.5), by(3.5, 3.5), by(-3.5, 3.5)],
                role,
            ),
            Marker::Triangle => self.fill(&[by(0.0, -5.0), by(4.5, 3.5), by(-4.5, 3.5)], role),
            Marker::Diamond => self.fill(
                &[by(0.0, -5.0), by(4.5, 0.0), by(0.0, 5.0), by(-4.5, 0.0)],
                role,
            ),
        }
    }

    /// The label of a line, and a leader where it had to move away.
    fn end(&mut self, line: &Line, end: Point, label: &[Placed]) {
        let (Some(first), Some(last)) = (label.first(), label.last()) else {
            return;
        };
        let middle = (first.at.y + last.at.y) / 2.0;
        let far = first.at.x - 3.0;
        if far - end.x > 16.0 || (middle - end.y).abs() > 3.0 {
            self.stroke(&[end.plus(2.0, 0.0), at(far, middle)], line.role, 1.0);
        }
        for part in label {
            self.text(part, line.role, TEXT, false);
        }
    }

    fn points(&mut self, points: &[ChartPoint], layout: &ChartLayout, filled: bool) {
        for point in points {
            let p = layout.place(point.x, point.y);
            let plot = layout.plot;
            if !(p.x >= plot.x0 - 1.0
                && p.x <= plot.x1 + 1.0
                && p.y >= plot.y0 - 1.0
                && p.y <= plot.y1 + 1.0)
            {
                continue;
            }
            if filled {
                self.circle(p, 6.5, Role::Paper, None);
                self.circle(p, 5.0, point.role, None);
            } else {
                self.circle(p, 6.0, Role::Paper, None);
                self.circle(p, 5.5, point.role, Some(2.0));
            }
        }
    }

    fn names(&mut self, chart: &Chart, layout: &ChartLayout) {
        for placed in layout.names(chart) {
            // On paper of its own, so that no line of the grid runs through it.
            let box_ = placed.rect();
            let corners = [
                at(box_.x0, box_.y0),
                at(box_.x1, box_.y0),
                at(box_.x1, box_.y1),
                at(box_.x0, box_.y1),
            ];
            self.fill(&corners, Role::Paper);
            self.text(&placed, Role::Ink, TEXT, false);
        }
    }

    fn titles(&mut self, layout: &ChartLayout) {
        for line in &layout.title {
            self.text(line, Role::Ink, TITLE, true);
        }
        for line in layout
            .subtitle
            .iter()
            .chain(&layout.y_title)
            .chain(&layout.x_title)
        {
            self.text(line, Role::Soft, TEXT, false);
        }
    }
}
