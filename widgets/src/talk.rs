//! The steps of a talk as they stand on paper: figure, description, working.

use crate::element::working_html::working_html;
use crate::figure::{SvgOptions, Theme, WIDE};
use crate::visual::{Look, Visual};
use axlewright_core::talk::{Fault, FindTopic, Show, Step, Talk};
use axlewright_core::topic::{Report, Topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Tree};

/// What a handout shows of one step, besides what is said.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    /// The figure as SVG; empty where the step shows numbers alone.
    pub svg: String,
    /// What the figure shows, in words.
    pub description: String,
}

/// Draws a step for a handout, laid out for a width in scene units: [`WIDE`] on paper.
///
/// # Errors
/// A [`Problem`] when the topic has not the view that the step asks for.
pub fn sheet(
    visual: &Visual,
    step: &Step,
    report: &Report,
    lang: Lang,
    system: System,
    theme: Theme,
    width: f64,
) -> Result<Sheet, Problem> {
    let mut sheet = Sheet::default();
    if step.show != Show::Table {
        let look = Look {
            width,
            lang,
            system,
            parts: step.parts,
            ..Look::default()
        };
        let view = visual.view(step.show.word())?;
        let drawing = visual.draw(&report.scenario, view, &look)?;
        sheet.svg = drawing.svg(&SvgOptions {
            prefix: &[
                "step",
                &axlewright_core::format::plain(step.number as f64),
                "-",
            ]
            .concat(),
            theme,
            ..SvgOptions::default()
        });
        sheet.description = [drawing.title(), ". ", drawing.description()].concat();
    }
    Ok(sheet)
}

/// Widths that the picture of a step may be laid out for, in scene units.
const WIDTHS: [f64; 6] = [WIDE, 860.0, 740.0, 650.0, 520.0, 400.0];

/// Widths that the picture of a step may be laid out for, each with the height that it then has, without
/// its caution. A camera's picture has a shape of its own: in one of them letters are largest.
///
/// # Errors
/// As [`sheet`].
pub fn sizes(
    visual: &Visual,
    step: &Step,
    report: &Report,
    lang: Lang,
    system: System,
) -> Result<Vec<[f64; 2]>, Problem> {
    let mut sizes = Vec::new();
    if step.show != Show::Table {
        let view = visual.view(step.show.word())?;
        for width in WIDTHS {
            let look = Look {
                width,
                lang,
                system,
                caution: false,
                ..Look::default()
            };
            sizes.push([width, visual.draw(&report.scenario, view, &look)?.height()]);
        }
    }
    Ok(sizes)
}

/// The working of a step as HTML: of the values that its sentence names, or of the topic's main results
/// where it names none that is computed.
#[must_use]
pub fn working(step: &Step, report: &mut Report, lang: Lang) -> String {
    report.write_working();
    let named: Vec<String> = step.say.names().map(String::from).collect();
    let mut steps = report.derivations(&named);
    let mut main = Vec::new();
    if steps.is_empty() {
        for reading in &report.readings {
            if step.topic.outputs[reading.output].headline {
                main.push(reading.path.clone());
            }
        }
        steps = report.derivations(&main);
    }
    if steps.is_empty() {
        return String::new();
    }
    working_html(&steps, lang)
}

/// Finds the looks of a topic.
pub type FindLook = fn(&Topic) -> Option<&'static Visual>;

/// Reads a talk and tells its faults: those of its fields and values, and views that a topic has not.
#[must_use]
pub fn checked(tree: &Tree, find: FindTopic, look: FindLook) -> (Talk, Vec<Fault>) {
    Talk::checked(tree, find, &|talk, step, report| {
        let Some(visual) = look(step.topic) else {
            return Ok(());
        };
        let (lang, system) = (talk.lang, System::Si);
        sheet(visual, step, report, lang, system, Theme::Print, WIDE).map(|_| ())
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::Scenario;
    use axlewright_core::talk::Place;

    fn talk(view: &str) -> Tree {
        let step = Tree::Map(vec![
            ("topic".into(), Tree::text("load_transfer")),
            ("view".into(), Tree::text(view)),
            ("parts".into(), Tree::text("body working")),
        ]);
        Tree::Map(vec![
            ("title".into(), Tree::text("A talk")),
            ("vehicle".into(), Tree::text("esker")),
            ("steps".into(), Tree::List(vec![step])),
        ])
    }

    fn faults(tree: &Tree) -> Vec<Fault> {
        super::checked(tree, axlewright_core::topic::find, Visual::of).1
    }

    #[test]
    fn a_view_that_the_topic_has_not_is_a_fault() {
        assert_eq!(faults(&talk("side")), Vec::new());
        let found = faults(&talk("plan"));
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].place(), &Place::Step(1));
        assert_eq!(found[0].field(), "view");
    }

    #[test]
    fn a_sheet_holds_what_the_step_shows() {
        let talk = Talk::from_tree(&talk("side")).unwrap();
        let step = &talk.steps[0];
        let report = step.report(&Scenario::default()).unwrap();
        let visual = Visual::of(step.topic).unwrap();
        let drawn = |width| {
            let (lang, system) = (Lang::English, System::Si);
            sheet(visual, step, &report, lang, system, Theme::Print, width).unwrap()
        };
        let wide = drawn(WIDE);
        assert!(wide.svg.contains("id=\"step1-t\""), "{}", wide.svg);
        assert!(wide.description.contains("rear"), "{}", wide.description);
        for width in [340.0, 512.5] {
            let svg = drawn(width).svg;
            assert!(svg.contains(&format!("viewBox=\"0 0 {width} ")), "{svg}");
        }
    }

    #[test]
    fn a_picture_has_a_size_for_each_width_and_a_table_none() {
        let sizes_of = |view| {
            let talk = Talk::from_tree(&talk(view)).unwrap();
            let step = &talk.steps[0];
            let report = step.report(&Scenario::default()).unwrap();
            let visual = Visual::of(step.topic).unwrap();
            sizes(visual, step, &report, Lang::English, System::Si).unwrap()
        };
        for view in ["side", "chart"] {
            let sizes = sizes_of(view);
            assert_eq!(sizes.len(), WIDTHS.len());
            // The height is that of the picture: a telephone's is another.
            assert!(
                sizes.iter().all(|[width, high]| *high > 0.2 * width),
                "{sizes:?}"
            );
            assert!(
                sizes
                    .iter()
                    .any(|[_, high]| (high - sizes[0][1]).abs() > 1.0),
                "{sizes:?}"
            );
        }
        assert!(sizes_of("table").is_empty());
    }

    #[test]
    fn the_working_is_that_of_what_is_said() {
        let working_of = |say: &str| {
            let mut tree = talk("side");
            let Some(Tree::List(steps)) = tree.get("steps").cloned() else {
                panic!("no steps");
            };
            let mut step = steps[0].clone();
            step.set("say", Tree::text(say));
            tree.set("steps", Tree::List(vec![step]));
            let talk = Talk::from_tree(&tree).unwrap();
            let mut report = talk.steps[0].report(&Scenario::default()).unwrap();
            working(&talk.steps[0], &mut report, Lang::English)
        };
        let equations = |html: &str| html.matches("<math").count();
        let ratio = equations(&working_of("It is {rear_to_front_ratio}."));
        let front = equations(&working_of("It is {front_axle_load}."));
        assert!(0 < front && front < ratio, "{front}, {ratio}");
        // Each equation once, though both loads need it.
        let both = equations(&working_of("{front_axle_load} and {rear_axle_load}."));
        let rear = equations(&working_of("It is {rear_axle_load}."));
        assert!(both < front + rear, "{both} of {front} and {rear}");
        // An input has no working, and a plain sentence names nothing: the main results stand instead.
        for say in ["It weighs {vehicle.mass}.", "Look."] {
            assert!(equations(&working_of(say)) >= both, "{say}");
        }
    }
}
