//! What the reader is told: the inputs that the table names, and all others that move the answer.

use super::make::dimension_of;
use super::{Asked, Kind, Right};
use crate::error::Problem;
use crate::scenario::Scenario;

/// Inputs that have no part in an answer, or that the statement names.
const NEVER_TOLD: &[&str] = &[
    "layouts",
    "layout",
    "vehicle.body",
    "vehicle.tyre_width_front",
    "vehicle.tyre_width_rear",
];

impl Asked {
    /// The inputs to tell: those of the table, and every other one that moves the answer.
    pub(super) fn what_is_given(&self) -> Result<Vec<&'static str>, Problem> {
        // A chart tells it all.
        if self.traced.is_some() {
            return Ok(Vec::new());
        }
        let sought = match self.question.kind {
            Kind::Find { input, .. } => input,
            Kind::Sketch(ref sketch) => sketch.input,
            _ => "",
        };
        let changed = self.change.as_ref().map_or("", |change| change.input);
        let untold = |path: &str| {
            path == sought
                || path == changed
                || self.question.hides.contains(&path)
                || self.question.parts.contains(&path)
        };
        // What the table tells is put in as if it were given, so that what it was taken from (a
        // tyre's friction, say) does not count any more.
        let mut explicit = self.solved.clone();
        for path in self.question.told {
            if let Some(value) = explicit.number(path)
                && explicit.given_number(path).is_none()
            {
                explicit.set_number(path, value)?;
            }
        }
        let numbers = |scenario: &Scenario| -> Option<Vec<f64>> {
            let mut all = Vec::new();
            for probe in self.probes(scenario) {
                let readings = self.topic.solve_without_run(&probe).ok()?;
                let value = |path: &String| crate::topic::number_of(&readings, path);
                all.extend(self.shown.iter().filter_map(value));
            }
            Some(all)
        };
        let before = numbers(&explicit);
        let moves = |path: &str| {
            let Some(value) = explicit.number(path).filter(|value| *value != 0.0) else {
                return false;
            };
            let mut nudged = explicit.clone();
            // A value at an end of its range can be nudged only the other way.
            let set = nudged.set_number(path, 1.001 * value);
            if set
                .or_else(|_| nudged.set_number(path, 0.999 * value))
                .is_err()
            {
                return false;
            }
            match (&before, numbers(&nudged)) {
                (Some(before), Some(after)) if before.len() == after.len() => before
                    .iter()
                    .zip(&after)
                    .any(|(a, b)| (a - b).abs() > 1e-8 * a.abs().max(b.abs())),
                _ => true,
            }
        };
        let is_told = |path: &&'static str| {
            let known = self.solved.number(path).is_some();
            let chosen = self.scenario.text(path).is_some() && !NEVER_TOLD.contains(path);
            !untold(path) && (chosen || known && (self.question.told.contains(path) || moves(path)))
        };
        Ok(self.topic.inputs.iter().copied().filter(is_told).collect())
    }

    /// Whether, by chance, the answer is a number that the reader is told.
    pub(super) fn tells_the_answer(&self) -> bool {
        let Right::Number(right) = self.right else {
            return false;
        };
        let same = |path: &&str| {
            let told = self.scenario.number(path).unwrap_or(0.0);
            dimension_of(path) == right.dimension
                && (told - right.value).abs() < 0.005 * right.value.abs()
        };
        self.given.iter().any(same)
    }
}
