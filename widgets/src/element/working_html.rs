//! A working as HTML with MathML, for elements and pages alike.

use crate::figure::svg::push_escaped;
use axlewright_core::words::{self, Lang};
use axlewright_core::working::Step;

/// The steps as an ordered list: what each finds, its equation with the numbers put in, its source.
///
/// Every text comes from the catalogue or from the equation itself and is escaped.
#[must_use]
pub fn working_html(steps: &[&Step], lang: Lang) -> String {
    // A long equation scrolls sideways on a narrow screen; the keyboard must reach it.
    let mut html = String::from("<ol class=\"working\" tabindex=\"0\">");
    let mut told = "";
    for step in steps {
        html.push_str("<li><p class=\"about\">");
        push_escaped(&mut html, words::get(lang, step.about));
        html.push_str("</p>");
        html.push_str(&step.mathml(lang));
        // A source is said once, where it begins.
        if step.source != told {
            told = step.source;
            html.push_str("<p class=\"source\">");
            push_escaped(&mut html, words::get(lang, told));
            html.push_str("</p>");
        }
        html.push_str("</li>");
    }
    html.push_str("</ol>");
    html
}

#[cfg(test)]
mod tests {
    use super::*;
    use axlewright_core::topic::TOPICS;

    #[test]
    fn a_working_holds_its_equations_and_its_source_once() {
        let topic = TOPICS[0];
        let report = topic.report(&topic.example().unwrap()).unwrap();
        let html = working_html(&report.derivation("rear_axle_load"), Lang::English);
        assert_eq!(
            html.matches("<math").count(),
            html.matches("</math>").count()
        );
        assert!(html.matches("<math").count() >= 2, "{html}");
        assert_eq!(html.matches("Jazar").count(), 1, "{html}");
    }
}
