//! A scene as SVG text.
//!
//! Only presentation attributes, no `style`: a page with a strict content
//! security policy shows it unchanged. Text stays text.

use super::number::push_coord;
use super::palette::{Role, Theme};
use super::scene::Scene;
use super::svg_writer::Writer;

/// How to write a figure.
#[derive(Clone, Copy, Debug, Default)]
pub struct SvgOptions<'a> {
    /// Start of every id, so that many figures share a page.
    pub prefix: &'a str,
    /// Colours.
    pub theme: Theme,
    /// Font family; empty inherits the page's.
    pub font_family: &'a str,
    /// Text for `<metadata>`, such as the scenario that gave the figure.
    pub metadata: &'a str,
    /// Writes `width` and `height`, for a file. A page sizes it by its box.
    pub sized: bool,
}

/// The font for files: a humanist sans with fallbacks.
pub const FILE_FONT: &str = "'Source Sans 3', 'DejaVu Sans', Verdana, sans-serif";

/// Writes a scene.
pub fn svg(scene: &Scene, options: &SvgOptions) -> String {
    let mut w = Writer {
        out: String::with_capacity(8192),
        theme: options.theme,
        per_unit: scene.newtons_per_unit,
    };
    open(&mut w.out, scene, options);
    for mark in &scene.marks {
        w.mark(mark);
    }
    w.put("</svg>\n");
    w.out
}

/// Escapes a text for element content and for attributes in double quotes.
pub fn push_escaped(out: &mut String, text: &str) {
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // XML 1.0 forbids other control characters altogether.
            '\u{0}'..='\u{8}'
            | '\u{b}'
            | '\u{c}'
            | '\u{e}'..='\u{1f}'
            | '\u{fffe}'
            | '\u{ffff}' => {}
            _ => out.push(letter),
        }
    }
}

/// The opening tag with title, description and metadata. Shared with charts.
pub(super) fn open(out: &mut String, scene: &Scene, options: &SvgOptions) {
    out.push_str("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    push_coord(out, scene.width);
    out.push(' ');
    push_coord(out, scene.height);
    out.push('"');
    if options.sized {
        out.push_str(" width=\"");
        push_coord(out, scene.width);
        out.push_str("\" height=\"");
        push_coord(out, scene.height);
        out.push('"');
    }
    out.push_str(" role=\"img\" aria-labelledby=\"");
    for (index, part) in ["t", "d"].into_iter().enumerate() {
        if index > 0 {
            out.push(' ');
        }
        push_escaped(out, options.prefix);
        out.push_str(part);
    }
    // A right-to-left page must not turn the anchors of the texts around.
    out.push_str(
        "\" direction=\"ltr\" fill=\"none\" stroke-linejoin=\"round\" stroke-linecap=\"butt\"",
    );
    if !options.font_family.is_empty() {
        out.push_str(" font-family=\"");
        push_escaped(out, options.font_family);
        out.push('"');
    }
    out.push('>');
    for (tag, id, text) in [
        ("title", "t", &scene.title),
        ("desc", "d", &scene.description),
    ] {
        out.push('<');
        out.push_str(tag);
        out.push_str(" id=\"");
        push_escaped(out, options.prefix);
        out.push_str(id);
        out.push_str("\">");
        push_escaped(out, text);
        out.push_str("</");
        out.push_str(tag);
        out.push('>');
    }
    if !options.metadata.is_empty() {
        out.push_str("<metadata>");
        push_escaped(out, options.metadata);
        out.push_str("</metadata>");
    }
    out.push('\n');
    if options.theme != Theme::Live {
        out.push_str("<rect width=\"100%\" height=\"100%\" fill=\"");
        out.push_str(options.theme.stroke(Role::Paper));
        out.push_str("\"/>\n");
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::chart::{Chart, ChartPoint, Dash, Line, Marker};
    use crate::figure::chart_svg::chart_svg;
    use crate::figure::outline::BodyKind;
    use crate::figure::plan_glyph::plan_glyph;
    use crate::figure::scene::{Caution, ValueLabel};
    use crate::figure::side_view::{AxleForces, SideView, side_view};

    const NASTY: &str = "a < b & \"c\" > 'd' \u{1}";

    fn scene() -> Scene {
        let axle = AxleForces {
            load_n: 9000.0,
            load_label: ValueLabel {
                value: "9 000 N".into(),
                words: NASTY.into(),
            },
            ..AxleForces::default()
        };
        side_view(&SideView {
            width: 1000.0,
            title: NASTY.into(),
            description: NASTY.into(),
            wheelbase_m: 2.8,
            wheel_radius_m: 0.33,
            cg_behind_front_m: 1.4,
            cg_height_m: 0.5,
            front: axle.clone(),
            rear: axle,
            inertia_n: 4000.0,
            caution: Some(Caution {
                word: "Caution".into(),
                text: NASTY.into(),
            }),
            ..SideView::default()
        })
    }

    fn chart() -> Chart {
        let line = |dash, marker| Line {
            label: NASTY.into(),
            points: (0..50).map(|i| (f64::from(i), f64::from(i * i))).collect(),
            role: Role::Front,
            dash,
            marker,
        };
        let mut chart = Chart {
            width: 600.0,
            height: 300.0,
            title: NASTY.into(),
            lines: vec![
                line(Dash::Solid, Marker::Circle),
                line(Dash::DashDot, Marker::Diamond),
            ],
            present: vec![ChartPoint {
                x: 10.0,
                y: 100.0,
                role: Role::Rear,
            }],
            ..Chart::default()
        };
        chart.x_axis.max = 49.0;
        chart.y_axis.max = 2401.0;
        chart
    }

    fn all(options: &SvgOptions) -> [String; 3] {
        [
            svg(&scene(), options),
            svg(&plan_glyph(BodyKind::Sports, 1, 2, NASTY), options),
            chart_svg(&chart(), options),
        ]
    }

    const OPTIONS: SvgOptions = SvgOptions {
        prefix: "fig7-",
        theme: Theme::Live,
        font_family: FILE_FONT,
        metadata: NASTY,
        sized: true,
    };

    /// A strict little reader: tags balance, attributes are quoted and not
    /// repeated, nothing is left unescaped.
    fn assert_well_formed(text: &str) {
        let mut open: Vec<&str> = Vec::new();
        let mut rest = text;
        while let Some(start) = rest.find('<') {
            assert!(!rest[..start].contains('>'));
            for (index, _) in rest[..start].match_indices('&') {
                let entity = &rest[index..];
                assert!(
                    ["&amp;", "&lt;", "&gt;", "&quot;"]
                        .iter()
                        .any(|e| entity.starts_with(e))
                );
            }
            let end = start + rest[start..].find('>').unwrap_or(0);
            assert!(end > start, "a tag that does not end");
            let tag = &rest[start + 1..end];
            assert!(!tag.contains('<'), "{tag}");
            assert_eq!(tag.matches('"').count() % 2, 0, "{tag}");
            if let Some(name) = tag.strip_prefix('/') {
                assert_eq!(open.pop(), Some(name));
            } else {
                let name = tag.split([' ', '/']).next().unwrap_or("");
                let mut names: Vec<&str> = tag
                    .split('"')
                    .step_by(2)
                    .filter_map(|part| part.trim().rsplit(' ').next())
                    .filter(|part| part.ends_with('='))
                    .collect();
                let count = names.len();
                names.sort_unstable();
                names.dedup();
                assert_eq!(names.len(), count, "{tag}");
                if !tag.ends_with('/') {
                    open.push(name);
                }
            }
            rest = &rest[end + 1..];
        }
        assert!(open.is_empty());
        assert_eq!(rest.trim(), "");
    }

    #[test]
    fn figures_are_well_formed() {
        for text in all(&OPTIONS) {
            assert_well_formed(&text);
            assert!(!text.contains('\u{1}'));
        }
    }

    #[test]
    fn a_strict_content_security_policy_passes() {
        for text in all(&OPTIONS) {
            for word in ["style=", "<style", "<script", "href", "url(", " on"] {
                assert!(!text.contains(word), "{word}");
            }
        }
    }

    #[test]
    fn title_and_description_name_the_figure() {
        for text in all(&OPTIONS) {
            assert!(text.contains("role=\"img\" aria-labelledby=\"fig7-t fig7-d\""));
            assert!(text.contains("<title id=\"fig7-t\">a &lt; b &amp; &quot;c&quot;"));
            assert!(text.contains("<desc id=\"fig7-d\">"));
            assert!(text.contains("<metadata>a &lt; b"));
        }
    }

    #[test]
    fn the_same_figure_is_the_same_text() {
        assert_eq!(all(&OPTIONS), all(&OPTIONS));
    }

    #[test]
    fn every_theme_draws_the_same_shapes() {
        let mut plain = OPTIONS;
        plain.theme = Theme::Print;
        let strip = |mut text: String, theme: Theme| {
            for role in crate::figure::palette::ROLES {
                text = text
                    .replace(theme.stroke(role), "c")
                    .replace(theme.text(role), "c");
            }
            text.replace("<rect width=\"100%\" height=\"100%\" fill=\"c\"/>\n", "")
        };
        let live = all(&OPTIONS).map(|text| strip(text, Theme::Live));
        let print = all(&plain).map(|text| strip(text, Theme::Print));
        assert_eq!(live, print);
    }
}
