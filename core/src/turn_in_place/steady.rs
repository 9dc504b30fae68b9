//! The steady turn: where is the turning centre, and how fast must the wheels turn?
//!
//! Seen from the turning centre C, a patch at distance X ahead and t/2 to the right moves at yaw rate
//! r with r·t/2 forward and r·X to the left; its wheel rolls at R·ω. Per unit of yaw rate, with
//! κ = R·ω/r, the patch slides with (t/2 − κ, X), so its sliding speed is s = √((κ − t/2)² + X²) and
//! friction gives the tractive force μN·(κ − t/2)/s and the lateral force −μN·X/s.
//!
//! Lateral balance Σ μN·X/s = 0 says that the centre lies where the power lost to sliding,
//! φ = Σ μN·s, is least. The balance of moments is κ·φ'(κ) = φ: what the wheels put in is what
//! sliding takes out. φ is convex, so κ·φ' − φ grows with κ and there is one answer.

use crate::math;
use crate::root;

/// One axle in a turn in place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxleState {
    /// Load of both wheels, N \[N\].
    pub load_n: f64,
    /// Track width t \[m\].
    pub track_m: f64,
    /// Sliding coefficient of friction at this load, μ \[1\].
    pub friction: f64,
    /// Speed of these wheels over the common wheel speed \[1\].
    pub speed_factor: f64,
}

/// Input of the steady solve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Steady {
    /// Wheelbase L \[m\].
    pub wheelbase_m: f64,
    /// Front axle.
    pub front: AxleState,
    /// Rear axle.
    pub rear: AxleState,
    /// Whether each front wheel has its own motor.
    pub front_driven: bool,
    /// Whether each rear wheel has its own motor.
    pub rear_driven: bool,
}

/// A steady turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turn {
    /// Distance of the turning centre behind the front axle \[m\].
    pub centre_behind_front_m: f64,
    /// Common wheel speed over yaw rate, κ = R·ω/r \[m\].
    pub speed_ratio_m: f64,
    /// Tractive force of one front wheel \[N\].
    pub front_force_n: f64,
    /// Tractive force of one rear wheel \[N\].
    pub rear_force_n: f64,
    /// Lateral force of one front wheel towards the centre's side \[N\].
    pub front_lateral_n: f64,
    /// Lateral force of one rear wheel \[N\].
    pub rear_lateral_n: f64,
    /// Sliding speed of a front patch per unit of yaw rate, s_f \[m\].
    pub front_slide_m: f64,
    /// Sliding speed of a rear patch per unit of yaw rate, s_r \[m\].
    pub rear_slide_m: f64,
    /// Moment of the lateral forces about the turning centre, which resists \[N·m\].
    pub resisting_moment_n_m: f64,
    /// Energy lost to sliding in one full turn \[J\].
    pub energy_per_turn_j: f64,
    /// The driven axle whose wheels only roll, if one does: the car then turns about that axle.
    pub rolling: Option<End>,
}

/// One end of the car.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// The front axle.
    Front,
    /// The rear axle.
    Rear,
}

/// How it ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// A steady turn about a centre between the axles, or about a driven axle.
    InPlace(Turn),
    /// A pair whose wheels spin can only swing the car about the other axle.
    AboutUndrivenAxle(Turn),
    /// Nothing makes the car yaw.
    None,
}

/// Solves the steady turn.
#[must_use]
pub fn steady(input: &Steady) -> Outcome {
    if !input.front_driven && !input.rear_driven {
        return Outcome::None;
    }
    let moment = |ratio_m: f64| {
        let centre_m = centre(input, ratio_m);
        moment_balance(input, ratio_m, centre_m)
    };
    let slowest = slowest_ratio(input);
    let fastest = 1e6 * (input.wheelbase_m + slowest);
    if moment(fastest) <= 0.0 {
        return Outcome::None;
    }
    // Where even wheels that only roll turn the car, nothing need slide lengthwise.
    let ratio_m = if moment(slowest) >= 0.0 {
        slowest
    } else {
        root::last_not_negative(fastest, slowest, moment)
    };
    let centre_m = centre(input, ratio_m);
    let (ratio_m, centre_m, rolling) = settle(input, ratio_m, centre_m);
    let turn = turn(input, ratio_m, centre_m, rolling);
    let near = 1e-9 * input.wheelbase_m;
    let about_front = centre_m <= near && !input.front_driven;
    let about_rear = centre_m >= input.wheelbase_m - near && !input.rear_driven;
    if about_front || about_rear {
        Outcome::AboutUndrivenAxle(turn)
    } else {
        Outcome::InPlace(turn)
    }
}

/// Wheel speed ratio at which the slowest driven wheel just rolls.
fn slowest_ratio(input: &Steady) -> f64 {
    let rolling = |axle: &AxleState, driven: bool| {
        if driven {
            0.5 * axle.track_m / axle.speed_factor
        } else {
            f64::INFINITY
        }
    };
    rolling(&input.front, input.front_driven).min(rolling(&input.rear, input.rear_driven))
}

/// Lengthwise sliding of an axle's patches per unit of yaw rate, κ_i − t/2; an undriven wheel rolls.
fn lengthwise(axle: &AxleState, driven: bool, ratio_m: f64) -> f64 {
    if driven {
        axle.speed_factor * ratio_m - 0.5 * axle.track_m
    } else {
        0.0
    }
}

/// Sliding speed per unit of yaw rate, s; never quite zero, so that quotients stay finite.
fn slide(lengthwise_m: f64, ahead_m: f64) -> f64 {
    math::hypot(lengthwise_m, ahead_m).max(1e-12)
}

/// Distance of the turning centre behind the front axle: where Σ μN·X/s changes sign, which it does
/// once between the axles, for it grows with the distance.
fn centre(input: &Steady, ratio_m: f64) -> f64 {
    let wheelbase_m = input.wheelbase_m;
    let front_m = lengthwise(&input.front, input.front_driven, ratio_m);
    let rear_m = lengthwise(&input.rear, input.rear_driven, ratio_m);
    let pull = |axle: &AxleState, lengthwise_m: f64, ahead_m: f64| {
        if lengthwise_m == 0.0 {
            // A wheel that only rolls holds with up to μN either way; the side decides.
            return axle.friction * axle.load_n * if ahead_m >= 0.0 { 1.0 } else { -1.0 };
        }
        axle.friction * axle.load_n * ahead_m / slide(lengthwise_m, ahead_m)
    };
    let lateral =
        |x_m: f64| pull(&input.front, front_m, x_m) + pull(&input.rear, rear_m, x_m - wheelbase_m);
    // At the ends one axle has no arm: its friction holds instead of sliding, so it takes either sign.
    let hold = |axle: &AxleState, lengthwise_m: f64| {
        if lengthwise_m == 0.0 {
            axle.friction * axle.load_n
        } else {
            0.0
        }
    };
    let at_front = hold(&input.front, front_m) + pull(&input.rear, rear_m, -wheelbase_m);
    if at_front >= 0.0 && front_m == 0.0 {
        return 0.0;
    }
    let at_rear = pull(&input.front, front_m, wheelbase_m) - hold(&input.rear, rear_m);
    if at_rear <= 0.0 && rear_m == 0.0 {
        return wheelbase_m;
    }
    root::last_not_negative(wheelbase_m, 0.0, lateral)
}

/// κ·φ'(κ) − φ \[N·m\]: moment of the wheels less the power lost to sliding per unit of yaw rate.
fn moment_balance(input: &Steady, ratio_m: f64, centre_m: f64) -> f64 {
    let axle = |axle: &AxleState, driven: bool, ahead_m: f64| {
        let along_m = lengthwise(axle, driven, ratio_m);
        let slide_m = slide(along_m, ahead_m);
        let grip_n = axle.friction * axle.load_n;
        let force_n = grip_n * along_m / slide_m;
        // F·t/2 − μN·X²/s, which is κ_i·F − μN·s
        force_n * 0.5 * axle.track_m - grip_n * ahead_m * ahead_m / slide_m
    };
    axle(&input.front, input.front_driven, centre_m)
        + axle(&input.rear, input.rear_driven, centre_m - input.wheelbase_m)
}

/// Where a driven axle all but rolls it does roll, and the centre lies on it: exactly, so that forces
/// are not made of the round-off of a vanishing slide.
fn settle(input: &Steady, ratio_m: f64, centre_m: f64) -> (f64, f64, Option<End>) {
    let rolls = |axle: &AxleState, driven: bool, ahead_m: f64| {
        let slide_m = math::hypot(lengthwise(axle, driven, ratio_m), ahead_m);
        driven && slide_m < 1e-6 * input.wheelbase_m
    };
    let own_ratio = |axle: &AxleState| 0.5 * axle.track_m / axle.speed_factor;
    if rolls(&input.front, input.front_driven, centre_m) {
        (own_ratio(&input.front), 0.0, Some(End::Front))
    } else if rolls(&input.rear, input.rear_driven, centre_m - input.wheelbase_m) {
        (own_ratio(&input.rear), input.wheelbase_m, Some(End::Rear))
    } else {
        (ratio_m, centre_m, None)
    }
}

fn turn(input: &Steady, ratio_m: f64, centre_m: f64, rolling: Option<End>) -> Turn {
    let forces = |axle: &AxleState, driven: bool, ahead_m: f64| {
        let along_m = lengthwise(axle, driven, ratio_m);
        let slide_m = slide(along_m, ahead_m);
        let wheel_n = 0.5 * axle.friction * axle.load_n;
        (
            wheel_n * along_m / slide_m,
            -wheel_n * ahead_m / slide_m,
            math::hypot(along_m, ahead_m),
        )
    };
    let (front_ahead_m, rear_ahead_m) = (centre_m, centre_m - input.wheelbase_m);
    let (front_force_n, front_lateral_n, front_slide_m) =
        forces(&input.front, input.front_driven, front_ahead_m);
    let (rear_force_n, rear_lateral_n, rear_slide_m) =
        forces(&input.rear, input.rear_driven, rear_ahead_m);
    let resisting_moment_n_m =
        -2.0 * (front_lateral_n * front_ahead_m + rear_lateral_n * rear_ahead_m);
    // An axle that only rolls holds with less than its full friction: just what the other leaves over.
    let rest_n = |other_n: f64, other: &AxleState, own: &AxleState| {
        (resisting_moment_n_m - other_n * other.track_m) / own.track_m
    };
    let (front_force_n, front_lateral_n, rear_force_n, rear_lateral_n) = match rolling {
        None => (front_force_n, front_lateral_n, rear_force_n, rear_lateral_n),
        Some(End::Front) => {
            let force_n = rest_n(rear_force_n, &input.rear, &input.front);
            (force_n, -rear_lateral_n, rear_force_n, rear_lateral_n)
        }
        Some(End::Rear) => {
            let force_n = rest_n(front_force_n, &input.front, &input.rear);
            (front_force_n, front_lateral_n, force_n, -front_lateral_n)
        }
    };
    let sliding_n_m = input.front.friction * input.front.load_n * front_slide_m
        + input.rear.friction * input.rear.load_n * rear_slide_m;
    Turn {
        centre_behind_front_m: centre_m,
        speed_ratio_m: ratio_m,
        front_force_n,
        rear_force_n,
        front_lateral_n,
        rear_lateral_n,
        front_slide_m,
        rear_slide_m,
        resisting_moment_n_m,
        rolling,
        energy_per_turn_j: core::f64::consts::TAU * sliding_n_m,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn even(load_n: f64, track_m: f64, wheelbase_m: f64, friction: f64) -> Steady {
        let axle = AxleState {
            load_n: 0.5 * load_n,
            track_m,
            friction,
            speed_factor: 1.0,
        };
        Steady {
            wheelbase_m,
            front: axle,
            rear: axle,
            front_driven: true,
            rear_driven: true,
        }
    }

    #[test]
    fn an_even_car_meets_the_closed_forms() {
        let (w, t, l, mu) = (24_525.0, 1.65, 2.9, 0.8);
        let Outcome::InPlace(turn) = steady(&even(w, t, l, mu)) else {
            panic!("an even car turns in place");
        };
        let near = |got: f64, want: f64, what: &str| {
            assert!(
                (got / want - 1.0).abs() < 1e-12,
                "{what}: got {got}, want {want}"
            );
        };
        near(turn.speed_ratio_m, (t * t + l * l) / (2.0 * t), "R·ω/r");
        near(
            turn.front_force_n,
            mu * w / 4.0 * l / math::hypot(l, t),
            "force per wheel",
        );
        near(
            turn.resisting_moment_n_m,
            mu * w * l * t / (2.0 * math::hypot(l, t)),
            "moment",
        );
        let energy = core::f64::consts::PI * mu * w * l * math::hypot(1.0, l / t);
        near(turn.energy_per_turn_j, energy, "energy");
        near(turn.centre_behind_front_m, l / 2.0, "centre");
    }

    #[test]
    fn forces_and_moments_balance_off_centre() {
        let mut input = even(20_000.0, 1.6, 2.8, 0.7);
        input.front.load_n = 12_500.0;
        input.rear.load_n = 7_500.0;
        input.rear.track_m = 1.5;
        let Outcome::InPlace(turn) = steady(&input) else {
            panic!("it turns in place");
        };
        let lateral = turn.front_lateral_n + turn.rear_lateral_n;
        assert!(lateral.abs() < 1e-8, "lateral {lateral}");
        let drive = turn.front_force_n * 1.6 + turn.rear_force_n * 1.5;
        let rest = drive - turn.resisting_moment_n_m;
        assert!(rest.abs() < 1e-7 * drive, "moment {rest}");
        assert!(
            turn.centre_behind_front_m < 1.4,
            "the centre lies nearer the heavy axle"
        );
    }

    #[test]
    fn a_light_front_axle_lets_a_rear_pair_turn_about_itself() {
        let mut input = even(10_000.0, 1.6, 2.0, 0.8);
        input.front.load_n = 500.0;
        input.rear.load_n = 9_500.0;
        input.front_driven = false;
        assert!(matches!(steady(&input), Outcome::InPlace(t) if t.centre_behind_front_m > 1.99));
    }

    #[test]
    fn a_rear_pair_on_an_even_car_only_swings_about_the_front_axle() {
        let mut input = even(18_000.0, 1.6, 2.86, 1.0);
        input.front_driven = false;
        let Outcome::AboutUndrivenAxle(turn) = steady(&input) else {
            panic!("it swings");
        };
        // κ = t/2 + 2·L²/t: the wheels must spin far faster than the car turns.
        let want = 0.8 + 2.0 * 2.86 * 2.86 / 1.6;
        assert!(
            (turn.speed_ratio_m / want - 1.0).abs() < 1e-9,
            "{}",
            turn.speed_ratio_m
        );
    }
}
