//! Every fault of a talk at once: of its fields, of every value that it would say, and of what else a
//! caller minds.

use super::fault::Fault;
use super::{FindTopic, Step, Talk};
use crate::error::Problem;
use crate::scenario::Scenario;
use crate::topic::Report;
use crate::tree::Tree;
use crate::units::System;

impl Talk {
    /// Reads a talk and says all of it once: what could be read of it, and its faults by step. Without a
    /// fault it can be given. Where all of it could be read, `mind` is asked of each step too, with the
    /// answer that was solved for it.
    #[must_use]
    pub fn checked(
        tree: &Tree,
        find: FindTopic,
        mind: &dyn Fn(&Self, &Step, &mut Report) -> Result<(), Problem>,
    ) -> (Self, Vec<Fault>) {
        let (talk, mut faults) = Self::read(tree, find);
        let is_whole = faults.is_empty();
        for step in &talk.steps {
            let place = step.place();
            let mut report = match step.report(&Scenario::default()) {
                Ok(report) => report,
                Err(problem) => {
                    faults.push(Fault::refused(place, problem));
                    continue;
                }
            };
            let (lang, system) = (talk.lang, System::Si);
            faults.extend(step.said(&report, lang, system).err());
            faults.extend(step.noted(&report, lang, system).err());
            if let Some(question) = &step.question {
                faults.extend(question.answer(&place, &report, lang, system).err());
            }
            if is_whole && let Err(problem) = mind(&talk, step, &mut report) {
                faults.push(Fault::refused(place, problem));
            }
        }
        faults.sort_by_key(|fault| fault.place().number());
        (talk, faults)
    }
}
