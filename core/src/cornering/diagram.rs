//! Yaw moment against lateral acceleration: what the car would do at every sideslip angle if something
//! held it there.
//!
//! Method: W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics, ch. 8 (from memory). At one
//! speed, wheels free to roll, the path curves as the lateral acceleration asks.

use super::{Question, Trim};
use crate::planar::Controls;

/// One line of the diagram.
#[derive(Clone, Debug, PartialEq)]
pub struct Trace {
    /// Steer angle \[rad\].
    pub steer_rad: f64,
    /// Lateral acceleration \[m/s²\] and yaw moment \[N·m\], from most sideslip to the left to most to
    /// the right.
    pub points: Vec<(f64, f64)>,
}

/// Largest sideslip angle of the diagram \[rad\], about 10°.
const MOST_RAD: f64 = 0.175;
const PARTS: i32 = 14;

/// Lines of constant steer angle: straight ahead, and shares of the angle of a steady turn or of a few
/// degrees, whichever is larger.
#[must_use]
pub fn diagram(question: &Question, trim: &Trim) -> Vec<Trace> {
    let unit_rad = trim.steer_rad.abs().max(0.03);
    [-1.0, 0.0, 1.0, 2.0]
        .into_iter()
        .map(|times| {
            let steer_rad = times * unit_rad;
            let mut lateral = 0.0;
            let points = (-PARTS..=PARTS)
                .rev()
                .map(|part| {
                    let sideslip = MOST_RAD * f64::from(part) / f64::from(PARTS);
                    let point = at(question, trim.turn.speed_m_s, sideslip, steer_rad, lateral);
                    lateral = point.0;
                    point
                })
                .collect();
            Trace { steer_rad, points }
        })
        .collect()
}

/// Lateral acceleration and yaw moment at a sideslip and a steer angle; begun from a guess of the first.
#[must_use]
pub(super) fn at(
    question: &Question,
    speed_m_s: f64,
    sideslip_rad: f64,
    steer_rad: f64,
    guess_m_s2: f64,
) -> (f64, f64) {
    let car = &question.car;
    let controls = Controls::steered(steer_rad, 0.0);
    let (u, v) = (
        speed_m_s * crate::math::cos(sideslip_rad),
        speed_m_s * crate::math::sin(sideslip_rad),
    );
    let once = |lateral_m_s2: f64| {
        let state = car.rolling(&controls, (u, v, lateral_m_s2 / speed_m_s));
        let instant = car.instant(&controls, &state);
        (instant.acceleration_m_s2[1], instant.yaw_moment_n_m)
    };
    // r = a_y/V, so the lateral acceleration depends a little on itself: secants.
    let mut before = (guess_m_s2, once(guess_m_s2).0 - guess_m_s2);
    let mut lateral = guess_m_s2 + 0.5 * before.1;
    let mut moment = 0.0;
    for _ in 0..8 {
        let (found, made) = once(lateral);
        moment = made;
        let off = found - lateral;
        let slope = (off - before.1) / (lateral - before.0);
        before = (lateral, off);
        if off.abs() < 1e-4 || slope.is_nan() || slope.abs() < 1e-6 {
            break;
        }
        lateral -= off / slope;
    }
    (lateral, moment)
}
