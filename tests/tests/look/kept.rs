//! The figures against those that are kept: as text, and as pictures drawn without a browser.

use axlewright_core::Scenario;
use axlewright_core::topic::{self, TOPICS, Topic};
use axlewright_site::figure::png;
use axlewright_tests::{Picture, picture_differs, text_differs};
use axlewright_widgets::figure::svg::FILE_FONT;
use axlewright_widgets::figure::{NARROW, SvgOptions, Theme, WIDE};
use axlewright_widgets::visual::{Look, VISUALS, View, Visual};
use std::collections::BTreeSet;

const SIZES: [(&str, f64); 2] = [("wide", WIDE), ("narrow", NARROW)];
const THEMES: [(&str, Theme); 3] = [
    ("light", Theme::Light),
    ("dark", Theme::Dark),
    ("print", Theme::Print),
];

/// A picture besides the views: its name, topic, view, and the input that makes it another.
type More = (
    &'static str,
    &'static str,
    View,
    (&'static str, &'static str),
);

/// What a view shows only at a moment of a run.
const MOMENTS: [More; 1] = [(
    "turn-in-place-moment",
    "turn_in_place",
    View::Plan,
    ("turn_in_place.time", "1.5 s"),
)];

/// A figure of the example, with some inputs set.
struct Kept {
    visual: &'static Visual,
    view: View,
    width: f64,
    set: Option<(&'static str, &'static str)>,
}

fn figure(kept: &Kept, theme: Theme) -> String {
    let (visual, view, width) = (kept.visual, kept.view, kept.width);
    let mut scenario = visual
        .topic
        .completed(&Scenario::default())
        .expect("the example is whole");
    if let Some((path, text)) = kept.set {
        scenario.set(path, text).expect("it is accepted");
    }
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

fn each(mut act: impl FnMut(&str, &Kept)) {
    for (size, width) in SIZES {
        for visual in VISUALS {
            for view in visual.views {
                let name = format!("{}-{}-{size}", visual.topic.name, view.word());
                let kept = Kept {
                    visual,
                    view: *view,
                    width,
                    set: None,
                };
                act(&name.replace('_', "-"), &kept);
            }
        }
    }
    let (size, width) = SIZES[0];
    for (name, topic, view, set) in MOMENTS {
        let topic = topic::find(topic).expect("a topic");
        let kept = Kept {
            visual: Visual::of(topic).expect("a look"),
            view,
            width,
            set: Some(set),
        };
        act(&format!("{name}-{size}"), &kept);
    }
}

#[test]
fn figures_are_those_that_are_kept() {
    assert_eq!(VISUALS.len(), topic::TOPICS.len());
    let mut wrong = Vec::new();
    each(|name, kept| {
        let svg = figure(kept, Theme::Light);
        wrong.extend(text_differs(name, "svg", &normalised(&svg)));
        for (theme_name, theme) in THEMES {
            let svg = figure(kept, theme);
            let picture = png(&svg, 1.0).expect("a picture");
            let name = format!("{name}-{theme_name}");
            wrong.extend(picture_differs(&name, &picture, 0.0005));
        }
    });
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// Names of the pictures that other tests keep: whole elements, figures in a column of print, plots of a
/// study.
fn kept_elsewhere(name: &str) -> bool {
    let element = |topic: &Topic| {
        let start = format!("{}-element-", topic.slug());
        let theme = name.strip_prefix(&start);
        theme.is_some_and(|theme| THEMES.iter().any(|(known, _)| *known == theme))
    };
    let column = |visual: &&Visual| {
        let topic = visual.topic.slug();
        let mut views = visual.views.iter();
        views.any(|view| name == format!("{topic}-{}-column-print", view.word()))
    };
    TOPICS.iter().any(|topic| element(topic))
        || VISUALS.iter().any(column)
        || name.starts_with("plot-")
}

#[test]
fn every_kept_picture_is_one_that_is_drawn() {
    let mut drawn = BTreeSet::new();
    each(|name, _| {
        drawn.insert(format!("{name}.svg"));
        drawn.extend(THEMES.map(|(theme, _)| format!("{name}-{theme}.png")));
    });
    let mut orphans = Vec::new();
    let mut seen = 0;
    for entry in std::fs::read_dir(axlewright_tests::file("snapshots")).expect("snapshots") {
        let file = entry.expect("a file").file_name();
        let file = file.to_string_lossy();
        // What a failed comparison left is not kept.
        let left = file.contains("-changed.") || file.contains("-difference.");
        let stem = file.strip_suffix(".png").or(file.strip_suffix(".svg"));
        if !left && !drawn.contains(file.as_ref()) && !stem.is_some_and(kept_elsewhere) {
            orphans.push(file.into_owned());
        }
        seen += 1;
    }
    assert!(seen > drawn.len(), "{seen} files, {} drawn", drawn.len());
    assert!(orphans.is_empty(), "nothing draws {orphans:?}");
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
    each(|name, kept| {
        let picture = Picture::read(&png(&figure(kept, Theme::Print), 1.0).unwrap());
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
