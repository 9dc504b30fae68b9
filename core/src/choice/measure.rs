//! What each layout does, from the topics that compute it.

use super::parts::Parts;
use crate::cornering;
use crate::error::Problem;
use crate::idle_drag;
use crate::launch::{self, Mark};
use crate::layout::{AxleDrive, Layout};
use crate::motor_split;
use crate::packaging;
use crate::scenario::Scenario;
use crate::traction::{self, Limit};
use crate::turn_in_place;

/// The grounds on which the traction limit is told beside that of the scenario: output, surface,
/// and symbol.
pub const GROUNDS: [(&str, &str, &str); 7] = [
    ("layouts.*.limit_wet", "asphalt_wet", "a_w"),
    ("layouts.*.limit_wet_concrete", "concrete_wet", "a_c"),
    ("layouts.*.limit_gravel", "gravel", "a_v"),
    ("layouts.*.limit_dry_earth", "earth_dry", "a_d"),
    ("layouts.*.limit_wet_earth", "earth_wet", "a_e"),
    ("layouts.*.limit_snow", "snow", "a_s"),
    ("layouts.*.limit_ice", "ice", "a_i"),
];

/// How many traction limits are told.
const LIMITS: usize = GROUNDS.len() + 1;

/// The room that a layout leaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Space {
    /// Volume of one drive unit \[m³\].
    pub unit_m3: f64,
    /// Volume of all of them \[m³\].
    pub volume_m3: f64,
    /// Room at the driven axle that has least left \[m\].
    pub room_m: f64,
    /// Width that its units need \[m\].
    pub needed_m: f64,
    /// What is left there \[m\]; negative where the units do not fit.
    pub left_m: f64,
    /// Room at the rear axle \[m\].
    pub rear_room_m: f64,
    /// Width that its units take \[m\].
    pub rear_taken_m: f64,
    /// Share of the room at the rear axle that no drive unit takes.
    pub free_share: f64,
}

/// What one layout does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measure {
    /// The layout.
    pub layout: Layout,
    /// The car as it passes 60 mph; none where it never does.
    pub mark: Option<Mark>,
    /// Traction limit on the ground of the scenario, and on those of [`GROUNDS`]; none where it is only
    /// judged whether the layout meets the brief.
    pub limits: Option<[Limit; LIMITS]>,
    /// Limit when it starts on the grade of the brief; a negative acceleration is that of sliding back.
    pub start: Limit,
    /// Largest yaw moment that its motors add in a turn \[N·m\]; none where that is not known.
    pub yaw_n_m: Option<f64>,
    /// Whether an axle has a motor per wheel, which can move torque from left to right.
    pub vectors: bool,
    /// Whether it can turn in place.
    pub turn: turn_in_place::Verdict,
    /// Energy for a distance \[J/m\]; none where its motors cannot follow the cycle.
    pub energy_j_m: Option<f64>,
    /// Energy and distance of the cycle \[J\], \[m\].
    pub cycle: Option<(f64, f64)>,
    /// Distance that the battery lasts \[m\].
    pub range_m: Option<f64>,
    /// The room that it leaves.
    pub space: Space,
    /// Its parts.
    pub parts: Parts,
}

/// A scenario on another ground: what it gives of friction and grade is taken away.
fn on_ground(scenario: &Scenario, kind: &str, grade: Option<f64>) -> Result<Scenario, Problem> {
    let mut there = scenario.clone();
    for path in [
        "surface.friction_peak",
        "surface.friction_sliding",
        "surface.friction_peak_left",
        "surface.friction_peak_right",
        "surface.grade",
    ] {
        there.unset(path);
    }
    there.set("surface.kind", kind)?;
    if let Some(grade) = grade {
        there.set_number("surface.grade", grade)?;
    }
    Ok(there)
}

/// What is found by a run or a search, not by a formula.
#[derive(Clone, Copy, Default)]
pub(super) struct Found {
    pub(super) mark: Option<Mark>,
    pub(super) cycle: Option<(f64, f64)>,
    pub(super) yaw_n_m: Option<f64>,
}

/// Largest yaw moment of each layout in the turn of cornering, on the level: cornering's own numbers. None
/// for a car whose tyres are not known, or that cannot be steered so far.
pub(super) fn yaw_moments(scenario: &Scenario) -> Vec<(Layout, f64)> {
    let mut level = scenario.clone();
    level.unset("surface.grade");
    let Ok(question) = cornering::Question::from_scenario(&level) else {
        return Vec::new();
    };
    let curve = cornering::constant_radius(&question);
    let Some(turn) = curve.shown() else {
        return Vec::new();
    };
    let mut moments = Vec::new();
    for (layout, reach) in cornering::reaches(&question, turn, &scenario.layouts()) {
        moments.push((layout, reach.moment_n_m));
    }
    moments
}

/// What the layouts are measured with, read once from a scenario.
pub(super) struct Questions {
    pub(super) launch: launch::Question,
    pub(super) energy: idle_drag::Question,
    grounds: Option<[traction::Question; LIMITS]>,
    start: traction::Question,
    turn: turn_in_place::Question,
    vehicle: packaging::Vehicle,
}

impl Questions {
    pub(super) fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let judging = Self::to_judge(scenario)?;
        let mut grounds = [traction::Question::from_scenario(scenario)?; LIMITS];
        for (ground, (_, kind, _)) in grounds.iter_mut().skip(1).zip(GROUNDS) {
            *ground = traction::Question::from_scenario(&on_ground(scenario, kind, None)?)?;
        }
        Ok(Self {
            grounds: Some(grounds),
            ..judging
        })
    }

    /// As far as the brief asks: without the limits on every ground.
    pub(super) fn to_judge(scenario: &Scenario) -> Result<Self, Problem> {
        let word = |path| scenario.word(path).unwrap_or_default();
        let start_grade = scenario.number("choice.start_grade");
        let mut start = on_ground(scenario, word("choice.start_surface"), start_grade)?;
        start.set("traction.motor_limit", "as_fitted")?;
        let turn = on_ground(scenario, word("choice.turn_surface"), None)?;
        // What packaging needs and no other topic asks for.
        for path in [
            "vehicle.max_steer_angle",
            "vehicle.track_front",
            "vehicle.track_rear",
        ] {
            scenario.require(path)?;
        }
        Ok(Self {
            launch: launch::Question::from_scenario(scenario)?,
            energy: idle_drag::Question::from_scenario(scenario)?,
            grounds: None,
            start: traction::Question::from_scenario(&start)?,
            turn: turn_in_place::Question::from_scenario(&turn)?,
            vehicle: packaging::Vehicle::from_scenario(scenario)?,
        })
    }

    /// Measures a layout, with what was found for it.
    pub(super) fn measure(&self, layout: Layout, found: Found) -> Result<Measure, Problem> {
        let Found {
            mark,
            cycle,
            yaw_n_m,
        } = found;
        let limits = match &self.grounds {
            Some(grounds) => {
                let mut limits = [traction::limit(&grounds[0], layout)?; LIMITS];
                for (limit, ground) in limits.iter_mut().zip(grounds).skip(1) {
                    *limit = traction::limit(ground, layout)?;
                }
                Some(limits)
            }
            None => None,
        };
        let energy_j_m = cycle.map(|(energy_j, distance_m)| energy_j / distance_m);
        let battery_j = self.energy.battery_j;
        let lasts = energy_j_m.filter(|energy| *energy > 0.0).zip(battery_j);
        Ok(Measure {
            layout,
            mark,
            limits,
            start: traction::limit(&self.start, layout)?,
            yaw_n_m,
            vectors: [layout.front(), layout.rear()].contains(&AxleDrive::MotorPerWheel),
            turn: turn_in_place::judge(&self.turn, layout).verdict,
            energy_j_m,
            cycle,
            range_m: lasts.map(|(energy_j_m, battery_j)| battery_j / energy_j_m),
            space: self.space(layout)?,
            parts: Parts::of(layout, self.energy.disconnect),
        })
    }

    fn space(&self, layout: Layout) -> Result<Space, Problem> {
        let vehicle = &self.vehicle;
        // What lacks was asked for when the questions were read.
        let ([Some(front), Some(rear)], Some(unit)) = (vehicle.rooms, vehicle.unit) else {
            return Err(Problem::Empty);
        };
        let [front_units, rear_units] = motor_split::counts(layout);
        let axles = [(front.free_m, front_units), (rear.free_m, rear_units)];
        let mut tight: Option<(f64, f64)> = None;
        for (room_m, units) in axles {
            let needed_m = unit.side_by_side_m(units);
            let tighter = tight.is_none_or(|(room, needed)| room_m - needed_m < room - needed);
            if units > 0 && tighter {
                tight = Some((room_m, needed_m));
            }
        }
        let (room_m, needed_m) = tight.unwrap_or((rear.free_m, 0.0));
        let rear_taken_m = unit.side_by_side_m(rear_units);
        let free_share = if rear.free_m > 0.0 {
            (1.0 - rear_taken_m / rear.free_m).max(0.0)
        } else {
            0.0
        };
        Ok(Space {
            unit_m3: unit.volume_m3,
            volume_m3: f64::from(layout.motors()) * unit.volume_m3,
            room_m,
            needed_m,
            left_m: room_m - needed_m,
            rear_room_m: rear.free_m,
            rear_taken_m,
            free_share,
        })
    }
}
