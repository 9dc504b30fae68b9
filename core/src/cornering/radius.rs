//! The constant-radius test (ISO 4138): the same circle, faster and faster, until something ends it.

use super::trim::{Unknowns, first_guess, from_guess};
use super::{Question, Trim, Turn};
use crate::GRAVITY_M_S2;
use crate::math;
use std::cell::RefCell;
use std::rc::Rc;

/// Whether a turn can be held, and what ends it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// It is held.
    Yes,
    /// The front tyres have no more grip: the car leaves the path outwards.
    FrontSlides,
    /// The rear tyres have no more: the car swings round.
    RearSlides,
    /// The car tips over.
    Tips,
    /// The inner driven wheel carries too little for its half of the drive, and spins.
    WheelSpins,
    /// The motors cannot hold the speed.
    TooWeak,
    /// The wheels are at full lock.
    AtLock,
    /// Nothing ends it within what is computed.
    NoEnd,
}

impl Held {
    /// Word in answers.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Yes => "turn_held",
            Self::FrontSlides => "front_slides",
            Self::RearSlides => "rear_slides",
            Self::Tips => "tips_over",
            Self::WheelSpins => "wheel_spins",
            Self::TooWeak => "drive_too_weak",
            Self::AtLock => "at_full_lock",
            Self::NoEnd => "no_end",
        }
    }
}

/// A point of the test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Lateral acceleration a_y \[m/s²\].
    pub lateral_m_s2: f64,
    /// Steer angle δ \[rad\].
    pub steer_rad: f64,
    /// Sideslip angle β \[rad\].
    pub sideslip_rad: f64,
}

/// The test.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Points from walking pace to the end.
    pub points: Vec<Point>,
    /// The fastest turn that is held.
    pub last: Option<Trim>,
    /// What ends the test.
    pub end: Held,
    /// The turn that was asked for, where it is held.
    pub asked: Option<Trim>,
    /// Whether it is, and if not, why.
    pub held: Held,
}

/// Lateral acceleration up to which the test tells the understeer gradient \[m/s²\]: what normal driving
/// uses, where the steer angle still grows in a straight line.
const LOW_M_S2: f64 = 2.0;

impl Curve {
    /// The first point of the test and the last one of its straight part; none where the test ends before.
    #[must_use]
    pub fn straight(&self) -> Option<(Point, Point)> {
        let low = |point: &&Point| point.lateral_m_s2 <= LOW_M_S2 + 1e-9;
        let last = self.points.iter().rev().find(low)?;
        let first = self.points.first()?;
        (last.lateral_m_s2 > 0.5 * LOW_M_S2).then_some((*first, *last))
    }

    /// The turn that was asked for, or the fastest that is held on its radius.
    #[must_use]
    pub fn shown(&self) -> Option<&Trim> {
        self.asked.as_ref().or(self.last.as_ref())
    }
}

/// ISO 4138 takes steps of at most 0.5 m/s²; a step here is that long.
const STEP_M_S2: f64 = 0.5;
/// Where nothing limits, the test goes this far.
const FAR_M_S2: f64 = 1.5 * GRAVITY_M_S2;
/// The end is found to this part of g.
const LEAST_STEP_M_S2: f64 = 1e-4 * GRAVITY_M_S2;
/// A steady turn whose sideslip or steer angle leaps is another one: a slide, not the turn that grew.
const LEAP_RAD: f64 = 0.12;

/// A change of the steer angle from point to point that a chart would show as a corner.
const BEND_RAD: f64 = 0.01;

thread_local! {
    /// The last test: answer, working, figure and chart ask for the same one. The same question has the
    /// same curve, so nothing but time depends on what is kept.
    static KEPT: RefCell<Option<(Question, Rc<Curve>)>> = const { RefCell::new(None) };
}

/// The test of a question.
#[must_use]
pub fn constant_radius(question: &Question) -> Rc<Curve> {
    let known = KEPT.with_borrow(|kept| {
        kept.as_ref()
            .filter(|(known, _)| known == question)
            .map(|(_, curve)| curve.clone())
    });
    known.unwrap_or_else(|| {
        let curve = Rc::new(drive(question));
        KEPT.with_borrow_mut(|kept| *kept = Some((*question, curve.clone())));
        curve
    })
}

fn turn(question: &Question, lateral_m_s2: f64) -> Turn {
    let speed_m_s = math::sqrt(lateral_m_s2 * question.radius_m);
    Turn::plain(speed_m_s, 1.0 / question.radius_m)
}

/// The next point: begun where the last two point to, and refused where it leaps.
fn next(
    question: &Question,
    lateral_m_s2: f64,
    before: Option<&Trim>,
    guess: Unknowns,
) -> Option<Trim> {
    let turn = turn(question, lateral_m_s2);
    let found = from_guess(question, &turn, guess)?;
    let leaps = before.is_some_and(|before| {
        (found.sideslip_rad - before.sideslip_rad).abs() > LEAP_RAD
            || (found.steer_rad - before.steer_rad).abs() > LEAP_RAD
    });
    (!leaps).then_some(found)
}

/// What a steady turn asks more of than there is, if anything.
pub(super) fn beyond(question: &Question, trim: &Trim) -> Option<Held> {
    if question
        .max_steer_rad
        .is_some_and(|most| trim.steer_rad.abs() > most)
    {
        return Some(Held::AtLock);
    }
    let weak = (0..4).any(|wheel| {
        let most_n = question.motor_force_n(question.layout, wheel / 2, trim.turn.speed_m_s);
        // The wheels' torque, so that a motor's full torque is what the gears pass on of it.
        let asked_n = trim.controls.torques_n_m[wheel] / question.car.radius_m;
        asked_n > most_n && asked_n > 0.0
    });
    weak.then_some(Held::TooWeak)
}

/// What ended the test after its last point.
fn end_of(question: &Question, last: &Trim) -> Held {
    // Whether a wheel is about to lose the ground for good shows in the loads of the inner side.
    let loads = &last.instant.loads.loads_n;
    let shares = question.drive_shares();
    let spins = [0, 2].into_iter().any(|inner| {
        // Tyres without a limit push until there is nothing left on them.
        let curve = question.car.tyres[inner].curve;
        let light = if curve.is_some() && last.instant.used[inner] > 0.9 {
            0.2
        } else {
            0.01
        };
        shares[inner] > 0.0 && loads[inner] < light * loads[inner + 1]
    });
    if loads[0] + loads[2] < 0.01 * question.car.chassis.weight_n() {
        Held::Tips
    } else if spins {
        Held::WheelSpins
    } else if question.car.tyres[0].curve.is_none() {
        Held::NoEnd
    } else if last.used(0) >= last.used(1) {
        Held::FrontSlides
    } else {
        Held::RearSlides
    }
}

fn drive(question: &Question) -> Curve {
    let asked_m_s2 = question.lateral_m_s2();
    let far_m_s2 = if question.car.tyres[0].curve.is_none() {
        FAR_M_S2.max(asked_m_s2)
    } else {
        // More than four tyres with all their friction and all the downforce of the highest speed.
        20.0 * GRAVITY_M_S2
    };
    let mut curve = Curve {
        points: Vec::new(),
        last: None,
        end: Held::NoEnd,
        asked: None,
        held: Held::NoEnd,
    };
    let mut before: Option<Trim> = None;
    let mut step = STEP_M_S2;
    let mut lateral = 0.01 * GRAVITY_M_S2;
    while lateral <= far_m_s2 {
        let guess = match (&curve.last, &before) {
            (Some(last), Some(earlier)) => {
                let gone = last.turn.speed_m_s * last.turn.speed_m_s
                    - earlier.turn.speed_m_s * earlier.turn.speed_m_s;
                let ahead = lateral * question.radius_m - last.turn.speed_m_s * last.turn.speed_m_s;
                let share = (ahead / gone).min(1.0);
                core::array::from_fn(|at| {
                    last.unknowns[at] + share * (last.unknowns[at] - earlier.unknowns[at])
                })
            }
            (Some(last), None) => last.unknowns,
            _ => first_guess(question, &turn(question, lateral)),
        };
        let found = next(question, lateral, curve.last.as_ref(), guess);
        let stop = found.as_ref().and_then(|trim| beyond(question, trim));
        match found.filter(|_| stop.is_none()) {
            Some(trim) => {
                curve.points.push(Point {
                    lateral_m_s2: lateral,
                    steer_rad: trim.steer_rad,
                    sideslip_rad: trim.sideslip_rad,
                });
                // Where the line bends upwards the points stand closer.
                let bends = curve
                    .last
                    .as_ref()
                    .is_some_and(|last| (trim.steer_rad - last.steer_rad).abs() > BEND_RAD);
                if bends && step > 0.1 * STEP_M_S2 {
                    step *= 0.5;
                }
                before = curve.last.replace(trim);
                lateral += step;
            }
            None => {
                curve.end = match (stop, &curve.last) {
                    (Some(stop), _) => stop,
                    (None, Some(last)) => end_of(question, last),
                    (None, None) => Held::TooWeak,
                };
                if step <= LEAST_STEP_M_S2 || curve.last.is_none() {
                    break;
                }
                lateral -= step;
                step *= 0.25;
                lateral += step;
            }
        }
    }
    ask(question, asked_m_s2, &mut curve);
    curve
}

/// The turn that was asked for, from the point before it.
fn ask(question: &Question, asked_m_s2: f64, curve: &mut Curve) {
    let last_m_s2 = curve.points.last().map_or(0.0, |point| point.lateral_m_s2);
    if asked_m_s2 > last_m_s2 {
        curve.held = curve.end;
        if curve.end != Held::NoEnd {
            return;
        }
    }
    // From the nearest side, in as many steps as it takes.
    let turn = Turn::plain(question.speed_m_s, 1.0 / question.radius_m);
    let begin = first_guess(question, &turn);
    let direct =
        from_guess(question, &turn, begin).filter(|found| on_curve(curve, asked_m_s2, found));
    let found = direct.or_else(|| follow(question, asked_m_s2));
    match found.map(|trim| (beyond(question, &trim), trim)) {
        Some((None, trim)) => {
            curve.held = Held::Yes;
            curve.asked = Some(trim);
        }
        Some((Some(stop), _)) => curve.held = stop,
        None => curve.held = curve.end,
    }
}

/// Whether a steady turn lies between its neighbours on the curve.
fn on_curve(curve: &Curve, lateral_m_s2: f64, found: &Trim) -> bool {
    curve
        .points
        .iter()
        .min_by(|one, other| {
            let off = |point: &Point| (point.lateral_m_s2 - lateral_m_s2).abs();
            off(one).total_cmp(&off(other))
        })
        .is_none_or(|near| {
            (near.steer_rad - found.steer_rad).abs() < LEAP_RAD
                && (near.sideslip_rad - found.sideslip_rad).abs() < LEAP_RAD
        })
}

/// The turn by way of slower ones.
fn follow(question: &Question, lateral_m_s2: f64) -> Option<Trim> {
    let mut trim = None;
    for part in 1..=24 {
        let now = lateral_m_s2 * f64::from(part) / 24.0;
        let guess = trim.as_ref().map_or_else(
            || first_guess(question, &turn(question, now)),
            |trim: &Trim| trim.unknowns,
        );
        trim = Some(next(question, now, trim.as_ref(), guess)?);
    }
    trim
}
