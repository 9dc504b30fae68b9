//! Every figure in every language: its words fit, and its numbers have the marks of the language.

use axlewright_core::Scenario;
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_widgets::figure::chart_layout::Placed;
use axlewright_widgets::figure::mark::Mark;
use axlewright_widgets::figure::place::Rect;
use axlewright_widgets::figure::text_metrics::{TITLE, text_width};
use axlewright_widgets::figure::{Chart, Scene, SvgOptions, chart_layout};
use axlewright_widgets::visual::{Drawing, Look, VISUALS, View, Visual};

const WIDTHS: [f64; 3] = [340.0, 640.0, 1000.0];

/// What a state sets: path and text.
type Settings = &'static [(&'static str, &'static str)];

/// States whose figures say different things, topic by topic.
const STATES: &[(&str, &[Settings])] = &[
    (
        "load_transfer",
        &[
            &[("load_transfer.acceleration", "0.6 g")],
            &[
                ("load_transfer.acceleration", "-0.8 g"),
                ("surface.grade", "12 %"),
            ],
            &[
                ("load_transfer.acceleration", "0 g"),
                ("load_transfer.speed", "200 km/h"),
            ],
        ],
    ),
    (
        "traction",
        &[
            &[("layout", "F1"), ("layouts", "F1 R1 F1R1 F2R2")],
            &[
                ("layout", "R1"),
                ("surface.kind", "ice"),
                ("surface.grade", "15 %"),
            ],
            &[("layout", "F2R2"), ("surface.friction_peak_left", "0.3")],
            &[
                ("layout", "R1"),
                ("traction.motor_limit", "as_fitted"),
                ("traction.speed", "180 km/h"),
            ],
        ],
    ),
    (
        "turn_in_place",
        &[
            &[("layout", "F2R2"), ("surface.kind", "gravel")],
            &[("layout", "R2")],
            &[("layout", "R1")],
            &[("layout", "F2R2"), ("vehicle.motor_torque", "20 N·m")],
            &[("layout", "F2R2"), ("turn_in_place.time", "1.5 s")],
            &[("layout", "R2"), ("turn_in_place.time", "0 s")],
        ],
    ),
    (
        "motor_split",
        &[
            &[("layout", "F1R2")],
            &[("layout", "R1")],
            &[("layout", "F2R1")],
        ],
    ),
    (
        "launch",
        &[
            &[("layouts", "F1 R1 F1R1 F1R2"), ("launch.time", "1.5 s")],
            &[("layouts", "R1"), ("launch.model", "ideal")],
        ],
    ),
    (
        "cornering",
        &[
            &[("layout", "F1R2")],
            &[("layout", "R1"), ("cornering.chart", "yaw_moment")],
            &[("cornering.speed", "60 m/s"), ("cornering.axle", "front")],
            &[
                ("cornering.chart", "step_steer"),
                ("cornering.yaw_moment", "0"),
            ],
        ],
    ),
    (
        "idle_drag",
        &[
            &[
                ("vehicle.front_machine", "induction"),
                ("layouts", "R1 F1R1 F1R2 F2R2"),
                ("layout", "F1R1"),
            ],
            &[
                ("vehicle.disconnect", "both"),
                ("layout", "F1R2"),
                ("layouts", "F1 F1R2"),
                ("idle_drag.chart", "best_split"),
                ("idle_drag.acceleration", "0.4 g"),
            ],
            &[
                ("layout", "F1"),
                ("layouts", "F1 R1 F1R1"),
                ("idle_drag.chart", "energy"),
                ("idle_drag.acceleration", "-0.2 g"),
            ],
            &[
                ("layout", "F2R2"),
                ("layouts", "F2R2"),
                ("idle_drag.chart", "speed"),
                ("vehicle.motor_power", "15 kW"),
                ("idle_drag.cycle", "steady"),
                ("idle_drag.speed", "200 km/h"),
            ],
        ],
    ),
    (
        "choice",
        &[
            &[],
            &[("choice.target_time", "6.5 s"), ("layout", "F1")],
            &[("choice.target_time", "1 s"), ("layout", "F2R2")],
        ],
    ),
    (
        "packaging",
        &[
            &[("layout", "F2R2")],
            &[("layout", "R1"), ("vehicle.max_steer_angle", "50 deg")],
            &[
                ("layout", "F2"),
                ("packaging.motor_power_density", "90 kW/L"),
                ("packaging.inverter_power_density", "90 kW/L"),
                ("packaging.gear_power_density", "90 kW/L"),
            ],
        ],
    ),
];

fn scenarios(topic: &str) -> Vec<Scenario> {
    let states = STATES.iter().find(|(name, _)| *name == topic);
    let (_, states) = states.unwrap_or_else(|| panic!("{topic} has no states to draw"));
    let mut all = Vec::new();
    for vehicle in ["kame", "esker", "moraine", "corrie"] {
        for state in *states {
            let mut scenario = Scenario::default();
            scenario.set("vehicle.base", vehicle).unwrap();
            for (path, text) in *state {
                scenario.set(path, text).unwrap();
            }
            all.push(scenario);
        }
    }
    all
}

/// Calls with every drawing and a name for it.
fn every_drawing(mut check: impl FnMut(Lang, f64, &Drawing, &str)) {
    for visual in VISUALS {
        for scenario in scenarios(visual.topic.name) {
            for lang in Lang::ALL {
                for system in [System::Si, System::Us] {
                    for width in WIDTHS {
                        for view in visual.views {
                            let look = Look {
                                width,
                                lang,
                                system,
                                ..Look::default()
                            };
                            let name = told(visual, *view, &scenario, &look);
                            let drawing = visual.draw(&scenario, *view, &look);
                            let drawing = drawing.unwrap_or_else(|p| panic!("{name}: {p}"));
                            check(lang, width, &drawing, &name);
                        }
                    }
                }
            }
        }
    }
}

fn told(visual: &Visual, view: View, scenario: &Scenario, look: &Look) -> String {
    let given: Vec<_> = scenario.entries().map(|(_, text)| text).collect();
    let (topic, width) = (visual.topic.name, look.width);
    format!(
        "{topic} {view:?} {given:?} {:?} {:?} {width}",
        look.lang, look.system
    )
}

fn apart_and_inside(boxes: &[(Rect, String)], width: f64, height: f64, name: &str) {
    assert!(!boxes.is_empty(), "{name} says nothing");
    for (at, (one, text)) in boxes.iter().enumerate() {
        let inside = one.x0 >= 0.0 && one.x1 <= width && one.y0 >= 0.0 && one.y1 <= height;
        assert!(inside, "{name}: {text:?} leaves the page: {one:?}");
        for (other, other_text) in &boxes[at + 1..] {
            assert!(
                !one.overlaps(other),
                "{name}: {text:?} lies on {other_text:?}"
            );
        }
    }
}

fn boxes_of_scene(scene: &Scene) -> Vec<(Rect, String)> {
    let texts = scene.marks.iter().filter_map(|mark| match mark {
        Mark::Label(label) => Some(format!("{} {}", label.value, label.words)),
        _ => None,
    });
    scene.label_boxes().into_iter().zip(texts).collect()
}

fn boxes_of_chart(chart: &Chart) -> Vec<(Rect, String)> {
    let layout = chart_layout(chart);
    let ends = layout.ends.iter().flat_map(|(_, parts)| parts);
    let titles = layout.y_title.iter().chain(&layout.x_title);
    let placed = layout.subtitle.iter().chain(titles);
    let boxed = |placed: &Placed| (placed.rect(), placed.text.clone());
    let mut boxes: Vec<_> = placed
        .chain(&layout.verticals)
        .chain(ends)
        .map(boxed)
        .collect();
    for line in &layout.title {
        let rect = line.rect();
        let x1 = rect.x0 + text_width(&line.text, TITLE, true);
        boxes.push((Rect { x1, ..rect }, line.text.clone()));
    }
    boxes
}

#[test]
fn every_label_fits_in_every_language() {
    let mut drawings = 0;
    every_drawing(|_, width, drawing, name| {
        drawings += 1;
        match drawing {
            Drawing::Scene(scene) => {
                apart_and_inside(&boxes_of_scene(scene), width, scene.height, name);
            }
            Drawing::Chart(chart) => {
                apart_and_inside(&boxes_of_chart(chart), width, chart.height, name);
            }
        }
    });
    assert!(drawings > 1500, "only {drawings}");
}

/// Whether a mark stands between two digits.
fn between_digits(text: &str, mark: char) -> bool {
    let letters: Vec<char> = text.chars().collect();
    let digit = |letter: char| letter.is_ascii_digit();
    letters
        .windows(3)
        .any(|three| digit(three[0]) && three[1] == mark && digit(three[2]))
}

#[test]
fn every_number_has_the_mark_of_its_language() {
    let mut seen = [0; 2];
    every_drawing(|lang, _, drawing, name| {
        // Ticks are in the file only. Texts stand before an end tag there.
        let svg = drawing.svg(&SvgOptions::default());
        let texts: Vec<&str> = svg
            .split('>')
            .filter_map(|part| part.split_once("</").map(|(text, _)| text))
            .collect();
        let said = texts.join("\n");
        let (own, other) = match lang.decimal_mark() {
            '.' => ('.', ','),
            own => (own, '.'),
        };
        assert!(!between_digits(&said, other), "{name}: {said}");
        seen[usize::from(own == ',')] += usize::from(between_digits(&said, own));
    });
    assert!(seen[0] > 400 && seen[1] > 800, "too few decimals: {seen:?}");
}
