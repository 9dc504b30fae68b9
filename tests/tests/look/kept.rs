//! The figures against those that are kept: as text, and as pictures drawn without a browser.

use axlewright_core::Scenario;
use axlewright_core::topic;
use axlewright_site::figure::png;
use axlewright_tests::{Picture, picture_differs, text_differs};
use axlewright_widgets::figure::svg::FILE_FONT;
use axlewright_widgets::figure::{NARROW, SvgOptions, Theme, WIDE};
use axlewright_widgets::visual::{Look, VISUALS, View, Visual};

const SIZES: [(&str, f64); 2] = [("wide", WIDE), ("narrow", NARROW)];
const THEMES: [(&str, Theme); 3] = [
    ("light", Theme::Light),
    ("dark", Theme::Dark),
    ("print", Theme::Print),
];

fn figure(visual: &Visual, view: View, width: f64, theme: Theme) -> String {
    let scenario = visual
        .topic
        .completed(&Scenario::default())
        .expect("the example is whole");
    let look = Look {
        width,
        ..Look::default()
    };
    let drawing = visual.draw(&scenario, view, &look);
    drawing.expect("the example is drawn").svg(&SvgOptions {
        prefix: "f",
        theme,
        font_family: FILE_FONT,
        sized: true,
        ..SvgOptions::default()
    })
}

/// Places to the whole unit: a figure is not another for a tenth.
fn normalised(svg: &str) -> String {
    let mut out = String::new();
    let mut in_tag = false;
    let mut letters = svg.chars().peekable();
    while let Some(letter) = letters.next() {
        in_tag = (in_tag || letter == '<') && letter != '>';
        if !in_tag || !letter.is_ascii_digit() || out.ends_with('#') {
            out.push(letter);
            continue;
        }
        let mut number = String::from(letter);
        while let Some(next) = letters.next_if(|next| next.is_ascii_alphanumeric() || *next == '.')
        {
            number.push(next);
        }
        match number.parse::<f64>() {
            Ok(value) if value >= 10.0 && number.contains('.') => {
                out.push_str(&format!("{value:.0}"));
            }
            _ => out.push_str(&number),
        }
    }
    out
}

fn each(mut act: impl FnMut(&str, &Visual, View, f64)) {
    for visual in VISUALS {
        for view in visual.views {
            for (size, width) in SIZES {
                let name = format!("{}-{}-{size}", visual.topic.name, view.word());
                act(&name.replace('_', "-"), visual, *view, width);
            }
        }
    }
}

#[test]
fn figures_are_those_that_are_kept() {
    assert_eq!(VISUALS.len(), topic::TOPICS.len());
    let mut wrong = Vec::new();
    each(|name, visual, view, width| {
        let svg = figure(visual, view, width, Theme::Light);
        wrong.extend(text_differs(name, "svg", &normalised(&svg)));
        for (theme_name, theme) in THEMES {
            let svg = figure(visual, view, width, theme);
            let picture = png(&svg, 1.0).expect("a picture");
            let name = format!("{name}-{theme_name}");
            wrong.extend(picture_differs(&name, &picture, 0.0005));
        }
    });
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn numbers_in_tags_are_rounded_and_no_others() {
    assert_eq!(
        normalised("<path d=\"M12.6 9.4L-103.2 7\" stroke=\"#12.3d\"/>in 12.6 N"),
        "<path d=\"M13 9.4L-103 7\" stroke=\"#12.3d\"/>in 12.6 N"
    );
}

/// How far each colour of a theme is from the next in lightness, on a grey printer.
#[test]
fn the_figures_for_print_have_no_colour_that_grey_swallows() {
    let white = 255.0;
    each(|name, visual, view, width| {
        let picture = Picture::read(&png(&figure(visual, view, width, Theme::Print), 1.0).unwrap());
        let grey = |p: &[u8; 3]| {
            0.299 * f64::from(p[0]) + 0.587 * f64::from(p[1]) + 0.114 * f64::from(p[2])
        };
        // Saturated pixels are strokes that mean something: against white paper they must stay dark.
        let meant = picture.rgb.iter().filter(|p| {
            let (low, high) = (p.iter().min(), p.iter().max());
            high.zip(low).is_some_and(|(high, low)| high - low > 100)
        });
        let (mut count, mut pale) = (0, 0);
        for pixel in meant {
            count += 1;
            pale += u32::from(white - grey(pixel) < 90.0);
        }
        // Yaw has a darker colour, which greys further; it is a colour all the same.
        let dull = picture.rgb.iter().filter(|p| {
            let (low, high) = (p.iter().min(), p.iter().max());
            high.zip(low).is_some_and(|(high, low)| high - low > 50)
        });
        assert!(dull.count() > 20, "{name}: nothing in colour");
        assert!(
            pale * 5 <= count,
            "{name}: {pale} of {count} pixels are pale in grey"
        );
    });
}
