//! What would change the recommendation: one input at a time, up and down by a share of its value.
//!
//! Where an input has a part in the launch, the times of the base are scaled by how a launch with ideal
//! grip changes: that takes a tenth of the time of the full model. The energy of the base is kept. Both
//! say how the layouts compare, which is what matters here. The yaw moment of the base is told and not
//! weighed, so it is kept as well.

use super::measure::{Found, Measure, Questions};
use super::{Brief, decide};
use crate::error::Problem;
use crate::input::{self, Kind};
use crate::launch::{self, Mark};
use crate::layout::Layout;
use crate::scenario::Scenario;

/// The inputs that are varied, with the output that tells the change, the one that tells to which layout,
/// and whether the layouts must be measured again.
pub const VARIED: &[(&str, &str, &str, bool)] = &[
    (
        "choice.target_time",
        "changes_at.target_time",
        "becomes.target_time",
        false,
    ),
    (
        "choice.start_grade",
        "changes_at.start_grade",
        "becomes.start_grade",
        true,
    ),
    (
        "choice.least_range",
        "changes_at.least_range",
        "becomes.least_range",
        false,
    ),
    (
        "choice.weight_time",
        "changes_at.weight_time",
        "becomes.weight_time",
        false,
    ),
    (
        "choice.weight_cost",
        "changes_at.weight_cost",
        "becomes.weight_cost",
        false,
    ),
    (
        "choice.weight_energy",
        "changes_at.weight_energy",
        "becomes.weight_energy",
        false,
    ),
    (
        "choice.weight_room",
        "changes_at.weight_room",
        "becomes.weight_room",
        false,
    ),
    (
        "choice.motor_cost",
        "changes_at.motor_cost",
        "becomes.motor_cost",
        false,
    ),
    (
        "choice.inverter_cost",
        "changes_at.inverter_cost",
        "becomes.inverter_cost",
        false,
    ),
    ("vehicle.mass", "changes_at.mass", "becomes.mass", true),
    (
        "vehicle.cg_height",
        "changes_at.cg_height",
        "becomes.cg_height",
        true,
    ),
    (
        "vehicle.motor_torque",
        "changes_at.motor_torque",
        "becomes.motor_torque",
        true,
    ),
    (
        "vehicle.motor_power",
        "changes_at.motor_power",
        "becomes.motor_power",
        true,
    ),
    (
        "surface.friction_peak",
        "changes_at.friction_peak",
        "becomes.friction_peak",
        true,
    ),
    (
        "vehicle.battery_energy",
        "changes_at.battery_energy",
        "becomes.battery_energy",
        true,
    ),
];

/// Halvings that find where the recommendation changes: to a share of a thousandth of the range.
const HALVINGS: u32 = 9;

/// A change of one input that changes the recommendation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flip {
    /// Value of the input in the brief, SI.
    pub from: f64,
    /// Value from which on another layout is recommended, SI.
    pub at: f64,
    /// That layout; none where no layout meets the brief any more.
    pub becomes: Option<Layout>,
}

impl Flip {
    /// The change as a share of the value.
    #[must_use]
    pub fn change(&self) -> f64 {
        (self.at - self.from) / self.from
    }
}

/// The brief and the layouts as they are, and the times of a launch with ideal grip.
pub(super) struct Base {
    pub(super) measures: Vec<Measure>,
    pub(super) ideal_s: Vec<Option<f64>>,
    pub(super) recommended: Option<Layout>,
}

/// Time to 60 mph with ideal grip, for comparing.
pub(super) fn ideal_s(question: &launch::Question, layout: Layout) -> Option<f64> {
    launch::time_to_60_mph_s(&question.on_paper(), layout)
}

/// The nearest change of an input that changes the recommendation, within a share of its value.
///
/// # Errors
/// None that the base has not; a value that a topic refuses ends the search on its side.
pub(super) fn flip(
    scenario: &Scenario,
    base: &Base,
    (path, again): (&'static str, bool),
    spread: f64,
) -> Result<Option<Flip>, Problem> {
    let Some(from) = scenario.number(path).filter(|value| *value != 0.0) else {
        return Ok(None);
    };
    let mut nearest: Option<Flip> = None;
    for side in [-1.0, 1.0] {
        let found = one_side(scenario, base, (path, again), from, side * spread);
        if let Some(flip) = found
            && nearest.is_none_or(|other| flip.change().abs() < other.change().abs())
        {
            nearest = Some(flip);
        }
    }
    Ok(nearest)
}

fn one_side(
    scenario: &Scenario,
    base: &Base,
    (path, again): (&'static str, bool),
    from: f64,
    spread: f64,
) -> Option<Flip> {
    let recommended = |share: f64| {
        let mut there = scenario.clone();
        let value = within(path, from * (1.0 + spread * share));
        there.set_number(path, value).ok()?;
        let found = recommend(&there, base, again).ok()?;
        Some((value, found))
    };
    let differs = |share: f64| {
        let (value, becomes) = recommended(share)?;
        (becomes != base.recommended).then_some((value, becomes))
    };
    // Two places, so that a change that is undone farther out is not missed.
    let (mut low, mut high) = (0.0, 0.5);
    let mut found = differs(high);
    if found.is_none() {
        (low, high) = (0.5, 1.0);
        found = differs(high);
    }
    let mut found = found?;
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        match differs(middle) {
            Some(nearer) => {
                found = nearer;
                high = middle;
            }
            None => low = middle,
        }
    }
    Some(Flip {
        from,
        at: found.0,
        becomes: found.1,
    })
}

/// A value brought into the accepted range of its input.
fn within(path: &str, value: f64) -> f64 {
    match input::find(path).map(|input| &input.kind) {
        Some(Kind::Quantity { accepted, .. }) => value.max(accepted.0).min(accepted.1),
        _ => value,
    }
}

/// The recommendation for a changed scenario.
fn recommend(scenario: &Scenario, base: &Base, again: bool) -> Result<Option<Layout>, Problem> {
    let brief = Brief::from_scenario(scenario)?;
    if !again {
        return Ok(decide(&brief, &base.measures, false).recommended);
    }
    let questions = Questions::to_judge(scenario)?;
    let mut measures = Vec::new();
    for (known, before_s) in base.measures.iter().zip(&base.ideal_s) {
        let now_s = ideal_s(&questions.launch, known.layout);
        let scaled = known.mark.zip(*before_s).zip(now_s);
        let mark = scaled.map(|((mark, before_s), now_s)| Mark {
            time_s: mark.time_s * now_s / before_s,
            ..mark
        });
        let found = Found {
            mark,
            cycle: known.cycle,
            yaw_n_m: known.yaw_n_m,
        };
        measures.push(questions.measure(known.layout, found)?);
    }
    Ok(decide(&brief, &measures, false).recommended)
}
