//! The work of one brief in small pieces, so that a page can do it between two frames.

use super::measure::{Found, Measure, Questions, yaw_moments};
use super::sensitivity::{Base, Flip, VARIED, flip, ideal_s};
use super::{Brief, Decision, TOPIC, decide};
use crate::error::Problem;
use crate::idle_drag;
use crate::launch::{self, MARK_60_MPH};
use crate::layout::Layout;
use crate::scenario::Scenario;
use std::cell::RefCell;
use std::rc::Rc;

/// The answer to a brief.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The brief.
    pub brief: Brief,
    /// What each layout does.
    pub measures: Vec<Measure>,
    /// What comes of it.
    pub decision: Decision,
    /// What would come of it if no layout were refused.
    pub without_demands: Decision,
    /// For each of [`VARIED`] the nearest change that changes the recommendation.
    pub flips: Vec<Option<Flip>>,
    /// Share of a value by which it was varied.
    pub spread: f64,
}

/// A brief that is being worked on.
struct Work {
    scenario: Scenario,
    brief: Brief,
    questions: Questions,
    base: Base,
    /// Yaw moments of the layouts, once they are found.
    yaws: Option<Vec<(Layout, f64)>>,
    flips: Vec<Option<Flip>>,
    /// Pieces done on the layouts: two for each.
    done: usize,
    answer: Option<Rc<Answer>>,
}

thread_local! {
    /// The last brief. The same brief has the same answer, so nothing but time depends on what is kept.
    static WORK: RefCell<Option<Work>> = const { RefCell::new(None) };
}

impl Work {
    fn begin(scenario: &Scenario) -> Result<Self, Problem> {
        Ok(Self {
            brief: Brief::from_scenario(scenario)?,
            questions: Questions::from_scenario(scenario)?,
            scenario: scenario.clone(),
            base: Base {
                measures: Vec::new(),
                ideal_s: Vec::new(),
                recommended: None,
            },
            yaws: None,
            flips: Vec::new(),
            done: 0,
            answer: None,
        })
    }

    /// Does one piece: the turn, a launch, a drive over the cycle, or the search for one input.
    fn piece(&mut self) -> Result<(), Problem> {
        let Some(yaws) = &self.yaws else {
            self.yaws = Some(yaw_moments(&self.scenario));
            return Ok(());
        };
        let layouts = self.scenario.layouts();
        let questions = &self.questions;
        if let Some(layout) = layouts.get(self.done / 2).copied() {
            if self.done.is_multiple_of(2) {
                let _kept = launch::course(&questions.launch, layout);
            } else {
                let mark = launch::course(&questions.launch, layout).run.marks[MARK_60_MPH];
                let drive = idle_drag::course(&questions.energy, layout);
                let yaw = yaws.iter().find(|(known, _)| *known == layout);
                let found = Found {
                    mark,
                    cycle: drive.map(|drive| (drive.best.battery_j, drive.best.distance_m)),
                    yaw_n_m: yaw.map(|(_, moment)| *moment),
                };
                self.base.measures.push(questions.measure(layout, found)?);
                self.base.ideal_s.push(ideal_s(&questions.launch, layout));
            }
        } else if let Some((path, .., again)) = VARIED.get(self.flips.len()).copied() {
            if self.flips.is_empty() {
                let decision = decide(&self.brief, &self.base.measures, false);
                self.base.recommended = decision.recommended;
            }
            let found = flip(&self.scenario, &self.base, (path, again), self.spread());
            self.flips.push(found?);
        } else {
            let measures = self.base.measures.clone();
            self.answer = Some(Rc::new(Answer {
                brief: self.brief,
                decision: decide(&self.brief, &measures, false),
                without_demands: decide(&self.brief, &measures, true),
                measures,
                flips: self.flips.clone(),
                spread: self.spread(),
            }));
        }
        self.done += 1;
        Ok(())
    }

    fn spread(&self) -> f64 {
        self.scenario.number("choice.spread").unwrap_or(0.0)
    }
}

/// A scenario as the brief sees it: what the topic reads, without the layout that is looked at, which has no
/// part in the answer.
fn own(scenario: &Scenario) -> Scenario {
    let mut own = TOPIC.own(scenario).into_owned();
    if scenario.text("layouts").is_none() {
        own.unset("layout");
    }
    own
}

/// The brief, and the layouts as far as formulas tell them: without launch, cycle and turn.
///
/// # Errors
/// A [`Problem`] of the scenario.
pub(super) fn compared(scenario: &Scenario) -> Result<(Brief, Vec<Measure>), Problem> {
    let scenario = own(scenario);
    let questions = Questions::from_scenario(&scenario)?;
    let mut measures = Vec::new();
    for layout in scenario.layouts() {
        measures.push(questions.measure(layout, Found::default())?);
    }
    Ok((Brief::from_scenario(&scenario)?, measures))
}

/// Does one piece of the work on a scenario, and gives the answer once it is there. A page calls it
/// between two frames; [`answer`] calls it until it is done.
///
/// # Errors
/// A [`Problem`] of the scenario.
pub fn advance(scenario: &Scenario) -> Result<Option<Rc<Answer>>, Problem> {
    let scenario = &own(scenario);
    WORK.with_borrow_mut(|kept| {
        if kept.as_ref().is_none_or(|work| work.scenario != *scenario) {
            *kept = Some(Work::begin(scenario)?);
        }
        let Some(work) = kept else {
            return Ok(None);
        };
        if work.answer.is_none() {
            let piece = work.piece();
            if let Err(problem) = piece {
                *kept = None;
                return Err(problem);
            }
        }
        Ok(kept.as_ref().and_then(|work| work.answer.clone()))
    })
}

/// The answer to the brief of a scenario.
///
/// # Errors
/// A [`Problem`] of the scenario.
///
/// ```
/// use axlewright_core::{Scenario, choice, layout::Layout};
/// let mut scenario = Scenario::default();
/// scenario.set("vehicle.base", "esker")?;
/// scenario.set("choice.target_time", "6.5 s")?;
/// // Quick enough with one motor, if it is behind.
/// let answer = choice::answer(&scenario)?;
/// assert_eq!(answer.decision.recommended, Some(Layout::R1));
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
pub fn answer(scenario: &Scenario) -> Result<Rc<Answer>, Problem> {
    loop {
        if let Some(answer) = advance(scenario)? {
            return Ok(answer);
        }
    }
}
