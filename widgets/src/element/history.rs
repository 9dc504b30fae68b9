//! What the reader did, step by step, so that it can be taken back.

use axlewright_core::Scenario;

/// Steps that are kept.
const KEPT: usize = 100;

/// Changes of one input that follow each other within this time are one step: a drag of a slider.
const ONE_STEP_MS: f64 = 700.0;

/// Past and future states around the present one, which the history does not hold.
#[derive(Default)]
pub(super) struct History {
    past: Vec<Scenario>,
    future: Vec<Scenario>,
    /// The input changed last, and when.
    last: Option<(&'static str, f64)>,
}

impl History {
    /// Remembers the state before a change. `path` is the changed input; `None` is a step of its own.
    pub(super) fn record(&mut self, before: &Scenario, path: Option<&'static str>, now_ms: f64) {
        let same_step = self.last.is_some_and(|(last, then)| {
            path == Some(last) && now_ms - then < ONE_STEP_MS && self.future.is_empty()
        });
        self.last = path.map(|path| (path, now_ms));
        self.future.clear();
        if !same_step {
            if self.past.len() == KEPT {
                self.past.remove(0);
            }
            self.past.push(before.clone());
        }
    }

    /// The state before the last step; `now` becomes the one that can be done again.
    pub(super) fn undo(&mut self, now: &Scenario) -> Option<Scenario> {
        let before = self.past.pop()?;
        self.future.push(now.clone());
        self.last = None;
        Some(before)
    }

    /// The state that was taken back last.
    pub(super) fn redo(&mut self, now: &Scenario) -> Option<Scenario> {
        let after = self.future.pop()?;
        self.past.push(now.clone());
        self.last = None;
        Some(after)
    }

    /// Whether there is a step to take back.
    pub(super) fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step to do again.
    pub(super) fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// Forgets all: the page gave another scenario.
    pub(super) fn clear(&mut self) {
        *self = Self::default();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn state(acceleration: &str) -> Scenario {
        let mut scenario = Scenario::default();
        scenario
            .set("load_transfer.acceleration", acceleration)
            .unwrap();
        scenario
    }

    const PATH: Option<&str> = Some("load_transfer.acceleration");

    #[test]
    fn a_drag_is_one_step_and_a_pause_begins_another() {
        let mut history = History::default();
        for (at, then_ms) in [("0.1 g", 0.0), ("0.2 g", 100.0), ("0.3 g", 600.0)] {
            history.record(&state(at), PATH, then_ms);
        }
        history.record(&state("0.4 g"), PATH, 2000.0);
        history.record(&state("0.5 g"), Some("vehicle.mass"), 2100.0);
        let mut now = state("0.6 g");
        for want in ["0.5 g", "0.4 g", "0.1 g"] {
            now = history.undo(&now).unwrap();
            assert_eq!(now, state(want));
        }
        assert_eq!(history.undo(&now), None);
        assert!(!history.can_undo() && history.can_redo());
    }

    #[test]
    fn what_was_taken_back_can_be_done_again_until_something_else_is_done() {
        let mut history = History::default();
        history.record(&state("0.1 g"), PATH, 0.0);
        let back = history.undo(&state("0.2 g")).unwrap();
        assert_eq!(history.redo(&back), Some(state("0.2 g")));
        let back = history.undo(&state("0.2 g")).unwrap();
        history.record(&back, PATH, 10.0);
        assert!(!history.can_redo());
        assert_eq!(history.undo(&state("0.3 g")), Some(state("0.1 g")));
    }

    #[test]
    fn the_history_is_bounded() {
        let mut history = History::default();
        for step in 0..500 {
            history.record(&state("0.1 g"), PATH, 1e4 * f64::from(step));
        }
        let mut count = 0;
        while history.undo(&state("0.1 g")).is_some() {
            count += 1;
        }
        assert_eq!(count, KEPT);
        assert!(history.can_redo());
        history.clear();
        assert!(!history.can_undo() && !history.can_redo());
    }
}
