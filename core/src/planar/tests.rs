//! Balances, symmetries and rest.

use super::*;
use crate::tyre::SlipCurve;

const STEP_S: f64 = 0.001;

fn tyre(friction: f64, peak_slip: [f64; 2]) -> Tyre {
    Tyre {
        friction,
        sensitivity: 0.0,
        reference_n: 4500.0,
        peak_slip,
        curve: Some(SlipCurve::new(0.1, 0.85)),
    }
}

fn car() -> Car {
    Car {
        chassis: Chassis::new(1850.0, 2.86, 1.46, 0.54).unwrap(),
        yaw_inertia_kg_m2: 1850.0 * 1.46 * 1.40,
        tracks_m: [1.6, 1.58],
        roll_front_share: 0.58,
        radius_m: 0.335,
        wheel_inertias_kg_m2: [1.1, 1.1, 2.2, 2.2],
        rolling_resistance: 0.0,
        air: Air::default(),
        slope: Slope::from_grade(0.0),
        tyres: [tyre(1.0, [0.1, 0.14]); 4],
        relaxation_m: 0.3,
    }
}

/// A car of which everything is given, also what makes the sums uneven.
fn full() -> Car {
    let mut car = car();
    car.rolling_resistance = 0.012;
    car.slope = Slope::from_grade(0.06);
    car.air = Air {
        drag_area_m2: 0.6,
        drag_height_m: 0.7,
        lift_area_front_m2: -0.2,
        lift_area_rear_m2: 0.1,
        density_kg_m3: 1.2,
    };
    for tyre in &mut car.tyres {
        tyre.sensitivity = 0.12;
    }
    car
}

fn state(values: &[(usize, f64)]) -> State {
    let mut state = [0.0; STATES];
    for (at, value) in values {
        state[*at] = *value;
    }
    state
}

/// Some states: cornering, sliding sideways, spinning, wheels locked, wheels spinning at rest.
fn states(car: &Car) -> Vec<(Controls, State)> {
    let mut list = Vec::new();
    for (steer, velocity) in [
        (0.03, (25.0, -0.4, 0.3)),
        (-0.2, (12.0, 5.0, -1.5)),
        (0.0, (0.5, 8.0, 2.0)),
        (0.4, (-6.0, 1.0, 4.0)),
    ] {
        let controls = Controls::steered(steer, -0.1 * steer);
        let rolling = car.rolling(&controls, velocity);
        let mut turning = rolling;
        for wheel in 0..4 {
            turning[WHEEL + wheel] *= 0.6 + 0.3 * wheel as f64;
        }
        car.settle_slips(&controls, &mut turning);
        let mut locked = rolling;
        locked[WHEEL..WHEEL + 4].fill(0.0);
        car.settle_slips(&controls, &mut locked);
        for state in [rolling, turning, locked] {
            list.push((controls, state));
        }
    }
    let spinning = state(&[(WHEEL, -20.0), (WHEEL + 1, 20.0), (WHEEL + 2, -30.0)]);
    list.push((Controls::steered(0.0, 0.0), spinning));
    list
}

/// Energy of the deflected tyres where both peak slips are alike: μ·N·∫λ(σ)·y dσ.
fn stored_j(car: &Car, controls: &Controls, state: &State) -> f64 {
    let instant = car.instant(controls, state);
    (0..4)
        .map(|wheel| {
            let tyre = &car.tyres[wheel];
            let slip = math::hypot(state[SLIP_ALONG + wheel], state[SLIP_ACROSS + wheel]);
            let share = |slip: f64| {
                let size = slip / tyre.peak_slip[0];
                tyre.curve.unwrap().share(size * 0.1) / math::hypot(1.0, size)
            };
            let parts = 200;
            let area: f64 = (0..=parts)
                .map(|at| {
                    let weight = match at {
                        0 => 1.0,
                        at if at == parts => 1.0,
                        at if at % 2 == 1 => 4.0,
                        _ => 2.0,
                    };
                    weight * share(slip * f64::from(at) / f64::from(parts))
                })
                .sum::<f64>()
                * slip
                / f64::from(3 * parts);
            car.relaxation_m * tyre.friction * instant.loads.loads_n[wheel] * area
        })
        .sum()
}

#[test]
fn with_friction_and_no_torque_energy_only_falls() {
    // A CG on the ground: the loads, and with them what a tyre can store, stay.
    let mut car = car();
    car.chassis = Chassis::new(1850.0, 2.86, 1.46, 0.0).unwrap();
    car.tyres = [tyre(0.9, [0.12, 0.12]); 4];
    for (controls, start) in states(&car) {
        let mut state = start;
        let energy = |state: &State| car.kinetic_j(state) + stored_j(&car, &controls, state);
        let begin = car.kinetic_j(&start);
        let mut before = energy(&state);
        for step in 0..3000 {
            advance(&car, &controls, &mut state, STEP_S);
            let now = energy(&state);
            assert!(
                now <= before + 1e-9 * begin,
                "step {step}: {before} J, then {now} J"
            );
            before = now;
        }
        assert!(before < begin, "{begin} J at first, {before} J at last");
    }
}

#[test]
fn kinetic_energy_falls_but_for_what_the_tyres_give_back() {
    let mut car = car();
    car.rolling_resistance = 0.01;
    for (controls, start) in states(&car) {
        let mut state = start;
        let begin = car.kinetic_j(&state);
        let mut least = begin;
        // Four tyres deflected to their peak hold less than λ·σ_p·μ·W.
        let held = 0.3 * 0.14 * car.chassis.weight_n();
        for _ in 0..5000 {
            advance(&car, &controls, &mut state, STEP_S);
            let now = car.kinetic_j(&state);
            assert!(now < least + held, "{now} J after {least} J of {begin} J");
            least = least.min(now);
        }
        assert!(least < begin, "{begin} J, {least} J");
    }
}

#[test]
fn momentum_changes_by_what_the_forces_add() {
    let car = full();
    for (mut controls, mut state) in states(&car) {
        controls.torques_n_m = [300.0, -200.0, 800.0, 500.0];
        controls.brakes_n_m = [0.0, 400.0, 0.0, 0.0];
        let mass = car.chassis.mass_kg();
        let ground = |state: &State, x: f64, y: f64| {
            let (cos, sin) = (math::cos(state[HEADING]), math::sin(state[HEADING]));
            (x * cos - y * sin, x * sin + y * cos)
        };
        let momentum = |state: &State| {
            let (x, y) = ground(state, state[FORWARD], state[LEFTWARD]);
            let spin = car.yaw_inertia_kg_m2 * state[YAW_RATE];
            [
                mass * x,
                mass * y,
                spin + mass * (state[X] * y - state[Y] * x),
            ]
        };
        // Forces wheel by wheel on the ground, with drag and slope at the CG, about the origin.
        let pushed = |state: &State| {
            let instant = car.instant(&controls, state);
            let mut sum = [0.0; 3];
            let mut add = |force: (f64, f64), at: (f64, f64)| {
                sum[0] += force.0;
                sum[1] += force.1;
                sum[2] += at.0 * force.1 - at.1 * force.0;
            };
            let cg = (state[X], state[Y]);
            for wheel in 0..4 {
                let (ahead, left) = car.place_m(wheel);
                let arm = ground(state, ahead, left);
                let [x, y] = instant.body_n[wheel];
                add(ground(state, x, y), (cg.0 + arm.0, cg.1 + arm.1));
            }
            let (x, y) = ground(state, state[FORWARD], state[LEFTWARD]);
            let drag = 0.5 * 1.2 * 0.6 * math::hypot(x, y);
            add((-drag * x - mass * 9.81 * car.slope.sin, -drag * y), cg);
            sum
        };
        let begin = momentum(&state);
        let mut impulse = [0.0; 3];
        let mut first = pushed(&state);
        let length_s = 1e-4;
        for _ in 0..5000 {
            advance(&car, &controls, &mut state, length_s);
            let last = pushed(&state);
            for part in 0..3 {
                impulse[part] += 0.5 * length_s * (first[part] + last[part]);
            }
            first = last;
        }
        let end = momentum(&state);
        for part in 0..3 {
            let off = end[part] - begin[part] - impulse[part];
            let size = 1850.0 * 10.0;
            assert!(off.abs() < 1e-5 * size, "part {part}: off by {off}");
        }
    }
}

/// The other side's wheel.
const MIRROR: [usize; 4] = [1, 0, 3, 2];

fn mirrored(state: &State) -> State {
    let mut other = *state;
    for at in [Y, HEADING, LEFTWARD, YAW_RATE] {
        other[at] = -state[at];
    }
    for wheel in 0..4 {
        other[WHEEL + wheel] = state[WHEEL + MIRROR[wheel]];
        other[SLIP_ALONG + wheel] = state[SLIP_ALONG + MIRROR[wheel]];
        other[SLIP_ACROSS + wheel] = -state[SLIP_ACROSS + MIRROR[wheel]];
    }
    other
}

#[test]
fn left_and_right_are_mirror_images() {
    let mut car = full();
    car.tyres[0].friction = 0.4;
    car.tyres[2].friction = 0.5;
    let mut other_car = car;
    other_car.tyres = core::array::from_fn(|wheel| car.tyres[MIRROR[wheel]]);
    for (mut controls, state) in states(&car) {
        controls.torques_n_m = [100.0, 300.0, -50.0, 700.0];
        let mut other = controls;
        for (wheel, twin) in MIRROR.into_iter().enumerate() {
            let (cos, sin) = controls.directions[twin];
            other.directions[wheel] = (cos, -sin);
            other.torques_n_m[wheel] = controls.torques_n_m[twin];
        }
        let (mut one, mut two) = (state, mirrored(&state));
        for _ in 0..500 {
            advance(&car, &controls, &mut one, STEP_S);
            advance(&other_car, &other, &mut two, STEP_S);
        }
        let back = mirrored(&two);
        for at in 0..STATES {
            let size = one[at].abs().max(1.0);
            assert!((one[at] - back[at]).abs() < 1e-9 * size, "number {at}");
        }
    }
}

#[test]
fn turning_the_frame_changes_nothing() {
    let mut car = full();
    // Level: a slope has a direction of its own.
    car.slope = Slope::from_grade(0.0);
    let angle = 1.1;
    let turn = |state: &State| {
        let mut turned = *state;
        let (cos, sin) = (math::cos(angle), math::sin(angle));
        turned[X] = state[X] * cos - state[Y] * sin + 40.0;
        turned[Y] = state[X] * sin + state[Y] * cos - 7.0;
        turned[HEADING] = state[HEADING] + angle;
        turned
    };
    for (controls, state) in states(&car) {
        let (mut one, mut two) = (state, turn(&state));
        for _ in 0..1000 {
            advance(&car, &controls, &mut one, STEP_S);
            advance(&car, &controls, &mut two, STEP_S);
        }
        let want = turn(&one);
        for at in 0..STATES {
            let size = want[at].abs().max(1.0);
            assert!((want[at] - two[at]).abs() < 1e-9 * size, "number {at}");
        }
    }
}

#[test]
fn a_braked_car_hangs_on_the_slope_and_does_not_creep() {
    let mut car = full();
    car.slope = Slope::from_grade(0.25);
    for heading in [0.0, 0.7, 1.6, 3.0] {
        let mut controls = Controls::steered(0.1, 0.0);
        controls.brakes_n_m = [2000.0; 4];
        let mut state = state(&[(HEADING, heading)]);
        run(&car, &mut state, STEP_S, 20_000, &mut |_, _| controls);
        let place = (state[X], state[Y]);
        assert!(math::hypot(place.0, place.1) < 0.05, "settled at {place:?}");
        run(&car, &mut state, STEP_S, 60_000, &mut |_, _| controls);
        let crept = math::hypot(state[X] - place.0, state[Y] - place.1);
        assert!(
            crept < 1e-6,
            "heading {heading}: crept {crept} m in a minute"
        );
        // What the tyres hold is what pulls.
        let held = car.instant(&controls, &state).loads.sum_n;
        let pulls = car.chassis.weight_n() * car.slope.sin;
        assert!((math::hypot(held[0], held[1]) / pulls - 1.0).abs() < 1e-6);
    }
}

#[test]
fn a_braked_car_comes_to_rest_and_passes_through_no_speed_backwards() {
    let mut car = full();
    car.slope = Slope::from_grade(0.0);
    let mut controls = Controls::steered(0.0, 0.0);
    controls.brakes_n_m = [900.0, 900.0, 600.0, 600.0];
    let mut state = car.rolling(&controls, (15.0, 0.0, 0.0));
    run(&car, &mut state, STEP_S, 8000, &mut |_, _| controls);
    assert!(state[FORWARD].abs() < 1e-5, "{} m/s", state[FORWARD]);
    // Driven through rest, backwards: nothing is special about no speed.
    let mut driven = Controls::steered(0.05, 0.0);
    driven.torques_n_m = [0.0, 0.0, -300.0, -300.0];
    let mut state = car.rolling(&driven, (3.0, 0.0, 0.0));
    let mut most = 0.0_f64;
    for _ in 0..6000 {
        let mut rates = [0.0; STATES];
        car.rates(&driven, &state, &mut rates);
        most = most.max(rates[FORWARD].abs());
        advance(&car, &driven, &mut state, STEP_S);
    }
    assert!(
        state[FORWARD] < -1.0 && most < 2.0,
        "{} {most}",
        state[FORWARD]
    );
}

#[test]
fn loads_are_those_of_the_side_view_and_carry_the_weight() {
    let mut car = full();
    for (controls, state) in states(&car) {
        let instant = car.instant(&controls, &state);
        let loads = instant.loads;
        let air = car.air.forces(math::hypot(state[FORWARD], state[LEFTWARD]));
        let weight_n = car.chassis.weight_n() * car.slope.cos - air.lift_front_n - air.lift_rear_n;
        let carried: f64 = loads.loads_n.iter().sum();
        assert!(
            (carried / weight_n - 1.0).abs() < 1e-12,
            "{carried} {weight_n}"
        );
        if loads.lifted {
            continue;
        }
        let front = loads.loads_n[0] + loads.loads_n[1];
        // ΣF_x = m·a_x + W·sin θ + D: the side view with that acceleration and no slope beside it.
        let level = Slope::from_grade(0.0);
        let still = crate::vehicle::AirForces {
            drag_n: air.drag_n,
            drag_height_m: air.drag_height_m,
            lift_front_n: air.lift_front_n,
            lift_rear_n: air.lift_rear_n,
        };
        let shown = crate::load_transfer::axle_loads(
            &car.chassis,
            &still,
            level,
            (loads.sum_n[0] - air.drag_n) / car.chassis.mass_kg(),
        );
        let less = car.chassis.weight_n() * (1.0 - car.slope.cos) * 1.40 / 2.86;
        assert!((front - (shown.front_n - less)).abs() < 1e-6 * weight_n);
        let moved = [
            0.5 * (loads.loads_n[1] - loads.loads_n[0]) * car.tracks_m[0],
            0.5 * (loads.loads_n[3] - loads.loads_n[2]) * car.tracks_m[1],
        ];
        let roll = loads.sum_n[1] * car.chassis.cg_height_m();
        assert!((moved[0] - 0.58 * roll).abs() < 1e-7 * weight_n);
        assert!((moved[0] + moved[1] - roll).abs() < 1e-7 * weight_n);
    }
    // A tall car lifts its inner wheels and says so; nothing carries less than nothing.
    car.chassis = Chassis::new(1850.0, 2.86, 1.46, 1.6).unwrap();
    let controls = Controls::steered(0.0, 0.0);
    let sliding = car.rolling(&controls, (10.0, -6.0, 0.0));
    let loads = car.instant(&controls, &sliding).loads;
    assert!(loads.lifted && loads.tipped, "{loads:?}");
    assert!(loads.loads_n.iter().all(|load| *load >= 0.0), "{loads:?}");
}

#[test]
fn halving_the_step_shows_order_four() {
    let car = full();
    let controls = Controls::steered(0.03, 0.0);
    let start = car.rolling(&controls, (20.0, 0.0, 0.0));
    let end = |steps: u32| {
        let mut state = start;
        run(
            &car,
            &mut state,
            1.0 / f64::from(steps),
            steps,
            &mut |_, _| controls,
        );
        state
    };
    let best = end(8000);
    let off = |state: State| {
        [LEFTWARD, YAW_RATE, X, Y]
            .map(|at| (state[at] - best[at]).abs())
            .into_iter()
            .fold(0.0, f64::max)
    };
    let order = libm::log2(off(end(500)) / off(end(1000)));
    assert!((order - 4.0).abs() < 0.5, "{order}");
}

#[test]
#[ignore = "a measurement: cargo test --release -p axlewright-core planar_speed -- --ignored --nocapture"]
fn planar_speed() {
    let car = full();
    let controls = Controls::steered(0.03, 0.0);
    let start = car.rolling(&controls, (20.0, 0.0, 0.0));
    let taken_s = (0..40)
        .map(|_| {
            let mut state = start;
            let begin = std::time::Instant::now();
            run(&car, &mut state, STEP_S, 10_000, &mut |_, _| controls);
            assert!(state[FORWARD] > 10.0, "{} m/s", state[FORWARD]);
            begin.elapsed().as_secs_f64()
        })
        .fold(f64::INFINITY, f64::min);
    println!(
        "10 s at 1 kHz: {:.2} ms, {:.0} ns each rate",
        taken_s * 1e3,
        taken_s * 1e9 / 40_000.0
    );
}
