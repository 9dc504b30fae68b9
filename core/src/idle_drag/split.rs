//! How the torque is best shared between the axles: at a given speed the losses are quadratic in the
//! torque, so the least loss has a closed form.

/// All motors of an axle as one, at one speed. Torques are sums of its motors' torques.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axle {
    /// Loss that does not depend on the torque, while the axle makes some \[W\].
    pub run_w: f64,
    /// Loss while it makes none \[W\]; nothing where it is disconnected.
    pub idle_w: f64,
    /// Copper, c \[W/(N·m)²\]: each of n motors has 1/n of the torque, so c is that of one over n.
    pub copper: f64,
    /// Most torque \[N·m\]; 0 for an axle without a motor.
    pub most_n_m: f64,
}

impl Axle {
    /// An axle without a motor.
    pub const UNDRIVEN: Self = Self {
        run_w: 0.0,
        idle_w: 0.0,
        copper: 0.0,
        most_n_m: 0.0,
    };

    /// Loss at a torque \[W\].
    #[must_use]
    pub fn loss_w(&self, torque_n_m: f64) -> f64 {
        if torque_n_m == 0.0 {
            self.idle_w
        } else {
            self.run_w + self.copper * torque_n_m * torque_n_m
        }
    }
}

/// A way of sharing: torque of the front and of the rear axle \[N·m\], and the loss of all motors \[W\].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Split {
    /// Torques of front and rear axle \[N·m\], neither negative.
    pub torques_n_m: [f64; 2],
    /// Loss \[W\].
    pub loss_w: f64,
}

impl Split {
    fn of(axles: &[Axle; 2], torques_n_m: [f64; 2]) -> Self {
        Self {
            torques_n_m,
            loss_w: axles[0].loss_w(torques_n_m[0]) + axles[1].loss_w(torques_n_m[1]),
        }
    }

    /// Torque of both axles \[N·m\].
    #[must_use]
    pub fn total_n_m(&self) -> f64 {
        self.torques_n_m[0] + self.torques_n_m[1]
    }

    /// Whether both axles make torque.
    #[must_use]
    pub fn is_both(&self) -> bool {
        self.torques_n_m[0] > 0.0 && self.torques_n_m[1] > 0.0
    }
}

/// The way of least loss that makes a torque; none where the motors have not that much.
///
/// There are three ways: each axle alone, or both. With both, c_f·T_f² + c_r·T_r² is least for a given
/// sum where c_f·T_f = c_r·T_r; where an axle has no more torque, the other makes the rest. Of equal
/// losses the rear axle alone comes first.
#[must_use]
pub fn best(axles: &[Axle; 2], torque_n_m: f64) -> Option<Split> {
    if torque_n_m <= 0.0 {
        return Some(Split::of(axles, [0.0; 2]));
    }
    let [front, rear] = axles;
    let mut least: Option<Split> = None;
    let mut offer = |torques| {
        let split = Split::of(axles, torques);
        if least.is_none_or(|now| split.loss_w < now.loss_w) {
            least = Some(split);
        }
    };
    if torque_n_m <= rear.most_n_m {
        offer([0.0, torque_n_m]);
    }
    if torque_n_m <= front.most_n_m {
        offer([torque_n_m, 0.0]);
    }
    if rear.most_n_m > 0.0 && front.most_n_m > 0.0 && torque_n_m <= front.most_n_m + rear.most_n_m {
        offer(shared(axles, torque_n_m));
    }
    least
}

/// The best torques of two axles that both run.
fn shared([front, rear]: &[Axle; 2], torque_n_m: f64) -> [f64; 2] {
    // T_f = T·c_r/(c_f + c_r), within what each axle has
    let least = (torque_n_m - rear.most_n_m).max(0.0);
    let most = torque_n_m.min(front.most_n_m);
    let wanted = torque_n_m * rear.copper / (front.copper + rear.copper);
    let front_n_m = wanted.min(most).max(least);
    [front_n_m, torque_n_m - front_n_m]
}

/// The way in which every motor makes the same torque; none where they have not that much.
///
/// `counts`: motors of the front and of the rear axle.
#[must_use]
pub fn even(axles: &[Axle; 2], counts: [f64; 2], torque_n_m: f64) -> Option<Split> {
    let [front, rear] = counts.map(|count| torque_n_m * count / (counts[0] + counts[1]));
    (front <= axles[0].most_n_m && rear <= axles[1].most_n_m)
        .then(|| Split::of(axles, [front, rear]))
}

/// The way in which braking with the motors brings the battery most.
///
/// `torque_n_m`: the most that they may brake with; what they leave is for the brakes. An axle that
/// brakes with T at the shafts' speed ω gives T·ω − c·T², which is most at T = ω/(2·c): more would heat
/// the copper by more than it brings.
#[must_use]
pub fn recovering(axles: &[Axle; 2], torque_n_m: f64, speed_rad_s: f64) -> Split {
    let worth = |axle: &Axle| {
        if axle.most_n_m > 0.0 {
            axle.most_n_m.min(0.5 * speed_rad_s / axle.copper)
        } else {
            0.0
        }
    };
    let capped = [0, 1].map(|at| Axle {
        most_n_m: worth(&axles[at]),
        ..axles[at]
    });
    let gain = |split: &Split| split.total_n_m() * speed_rad_s - split.loss_w;
    let mut most = Split::of(axles, [0.0; 2]);
    let [front, rear] = [0, 1].map(|at| capped[at].most_n_m.min(torque_n_m.max(0.0)));
    let together = (capped[0].most_n_m + capped[1].most_n_m).min(torque_n_m.max(0.0));
    let mut ways = [[0.0, rear], [front, 0.0], [0.0; 2]];
    if front > 0.0 && rear > 0.0 {
        ways[2] = shared(&capped, together);
    }
    for torques in ways {
        let split = Split::of(axles, torques);
        if gain(&split) > gain(&most) {
            most = split;
        }
    }
    most
}

/// As [`recovering`], with the same torque for every motor.
#[must_use]
pub fn recovering_even(
    axles: &[Axle; 2],
    counts: [f64; 2],
    torque_n_m: f64,
    speed_rad_s: f64,
) -> Split {
    let share = counts.map(|count| count / (counts[0] + counts[1]));
    let mut most_n_m = torque_n_m.max(0.0);
    let mut copper = 0.0;
    for (axle, share) in axles.iter().zip(share) {
        if share > 0.0 {
            most_n_m = most_n_m.min(axle.most_n_m / share);
            copper += axle.copper * share * share;
        }
    }
    most_n_m = most_n_m.min(0.5 * speed_rad_s / copper);
    let split = Split::of(axles, share.map(|share| share * most_n_m));
    let none = Split::of(axles, [0.0; 2]);
    let gain_w = most_n_m * speed_rad_s - split.loss_w;
    if gain_w > -none.loss_w { split } else { none }
}

/// Torques at which another way becomes the best, in rising order, each with the axles that run above
/// it, front and rear.
///
/// Two ways have the same loss where their quadratics cross; a way also ends where its motors have no
/// more torque.
#[must_use]
pub fn changes(axles: &[Axle; 2]) -> Vec<(f64, [bool; 2])> {
    let [front, rear] = axles;
    let all_n_m = front.most_n_m + rear.most_n_m;
    let together = front.copper * rear.copper / (front.copper + rear.copper);
    // Loss of each way as fixed part and copper: rear alone, front alone, both.
    let ways = [
        (rear.run_w + front.idle_w, rear.copper),
        (front.run_w + rear.idle_w, front.copper),
        (front.run_w + rear.run_w, together),
    ];
    let mut places = vec![0.0, front.most_n_m, rear.most_n_m];
    for (one, other) in [(0, 1), (0, 2), (1, 2)] {
        // T² = (a_1 − a_0)/(c_0 − c_1)
        let squared = (ways[other].0 - ways[one].0) / (ways[one].1 - ways[other].1);
        if squared > 0.0 && squared.is_finite() {
            places.push(crate::math::sqrt(squared));
        }
    }
    // Where both run and an axle has no more torque F, the other alone crosses it in a straight line:
    // c_s·F² + ΔP = c·(2·T·F − F²).
    for (spent, other) in [(front, rear), (rear, front)] {
        let (most, added_w) = (spent.most_n_m, spent.run_w - spent.idle_w);
        let all = added_w + (spent.copper + other.copper) * most * most;
        let place = all / (2.0 * other.copper * most);
        if place.is_finite() {
            places.push(place);
        }
    }
    places.retain(|place| *place < all_n_m);
    places.sort_by(f64::total_cmp);
    let mut changes: Vec<(f64, [bool; 2])> = Vec::new();
    for (at, place) in places.iter().enumerate() {
        let next = places.get(at + 1).copied().unwrap_or(all_n_m);
        let Some(split) = best(axles, 0.5 * (place + next)).filter(|_| next > *place) else {
            continue;
        };
        let running = split.torques_n_m.map(|torque| torque > 0.0);
        if changes.last().is_none_or(|(_, before)| *before != running) {
            changes.push((*place, running));
        }
    }
    changes
}
