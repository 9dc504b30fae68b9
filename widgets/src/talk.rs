//! The steps of a talk as they stand on paper: figure, description, working.

use crate::element::working_html::working_html;
use crate::figure::{SvgOptions, Theme};
use crate::visual::{Look, Visual};
use axlewright_core::talk::{Fault, FindTopic, Part, Show, Step, Talk};
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
    /// The working as HTML; empty where the step does not show it.
    pub working: String,
}

/// Draws a step for a handout.
///
/// # Errors
/// A [`Problem`] when the topic has not the view that the step asks for.
pub fn sheet(
    visual: &Visual,
    step: &Step,
    report: &mut Report,
    lang: Lang,
    system: System,
    theme: Theme,
) -> Result<Sheet, Problem> {
    let mut sheet = Sheet::default();
    if step.show != Show::Table {
        let look = Look {
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
    if step.parts.has(Part::Working) {
        report.write_working();
        for reading in &report.readings {
            if step.topic.outputs[reading.output].headline {
                sheet.working += &working_html(&report.derivation(&reading.path), lang);
            }
        }
    }
    Ok(sheet)
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
        sheet(visual, step, report, talk.lang, System::Si, Theme::Print).map(|_| ())
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
        let mut report = step.report(&Scenario::default()).unwrap();
        let visual = Visual::of(step.topic).unwrap();
        let sheet = sheet(
            visual,
            step,
            &mut report,
            Lang::English,
            System::Si,
            Theme::Print,
        )
        .unwrap();
        assert!(sheet.svg.contains("id=\"step1-t\""), "{}", sheet.svg);
        assert!(sheet.description.contains("rear"), "{}", sheet.description);
        assert!(sheet.working.contains("<math"), "{}", sheet.working);
    }
}
