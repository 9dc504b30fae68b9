//! Cases whose answer is known, the agreement of closed forms, steady solve and transient, and what
//! cannot be held.

use super::step_steer::{controls_at, straight};
use super::*;
use crate::planar::{FORWARD, HEADING, LEFTWARD, State, WHEEL, X, Y, YAW_RATE, advance};
use crate::topic::{Reading, ReadingValue, number_of};
use crate::{GRAVITY_M_S2, vehicle};

fn scenario(fields: &[(&str, &str)]) -> Scenario {
    let mut scenario = Scenario::default();
    for (path, text) in fields {
        scenario.set(path, text).unwrap();
    }
    scenario
}

fn question(fields: &[(&str, &str)]) -> Question {
    Question::from_scenario(&scenario(fields)).unwrap()
}

fn word<'a>(readings: &'a [Reading], path: &str) -> &'a str {
    match readings.iter().find(|r| r.path == path).map(|r| &r.value) {
        Some(ReadingValue::Word(word)) => word,
        other => panic!("{path}: {other:?}"),
    }
}

fn close(got: f64, want: f64, relative: f64) {
    assert!(
        (got - want).abs() <= relative * want.abs(),
        "{got}, want {want}"
    );
}

/// What Gillespie's example prints, and nothing else.
const PRINTED: &[(&str, &str)] = &[
    ("vehicle.axle_load_front", "1901 lb"),
    ("vehicle.axle_load_rear", "1552 lb"),
    ("vehicle.cornering_stiffness_front", "217 lb/deg"),
    ("vehicle.cornering_stiffness_rear", "187 lb/deg"),
    ("vehicle.wheelbase", "100.6 in"),
    ("cornering.speed", "60 mph"),
    ("cornering.radius", "800 ft"),
];

#[test]
fn a_textbook_case_enters_as_it_is_printed() {
    let readings = TOPIC.solve(&scenario(PRINTED)).unwrap();
    let number = |path| number_of(&readings, path).unwrap();
    let degrees = core::f64::consts::PI / 180.0;
    let per_g = degrees / GRAVITY_M_S2;
    assert!((number("understeer_gradient") / per_g - 0.23).abs() < 0.005);
    assert!((number("characteristic_speed") / 0.447_04 - 177.0).abs() < 1.0);
    let beta = number("single_track.sideslip_angle") / degrees;
    assert!((beta + 0.92).abs() < 0.01, "{beta}");
    // The full solve of the same car, which has no track, no height and no friction, agrees.
    assert_eq!(word(&readings, "turn"), "turn_held");
    close(
        number("steer_angle"),
        number("single_track.steer_angle"),
        5e-3,
    );
    let whole = number("sideslip_angle") / degrees;
    assert!((whole - beta).abs() < 0.02, "{whole} {beta}");
    assert_eq!(number_of(&readings, "vectoring.motors.power"), None);
}

#[test]
fn at_low_lateral_acceleration_the_single_track_holds_to_a_hundredth() {
    for base in vehicle::DEMO_NAMES {
        for layout in ["F1", "R1", "F2R2"] {
            let question = question(&[
                ("vehicle.base", base),
                ("layout", layout),
                ("vehicle.drag_area", "0"),
                ("vehicle.rolling_resistance", "0"),
                ("cornering.radius", "500 m"),
                ("cornering.speed", "15 m/s"),
            ]);
            let track = SingleTrack::of(&question);
            let trim = trim(&question, &Turn::plain(15.0, 1.0 / 500.0), None).unwrap();
            close(trim.steer_rad, track.steer_rad(), 0.01);
            let part = track.cg_to_rear_m / track.radius_m;
            assert!((trim.sideslip_rad - track.sideslip_rad()).abs() < 0.01 * part);
            // What the steering takes for more lateral acceleration is the understeer gradient.
            // At half the speed, where friction and drag bend nothing yet, to a hundredth.
            let steer = |speed_m_s: f64| {
                let turn = Turn::plain(speed_m_s, 1.0 / 500.0);
                super::trim(&question, &turn, None).unwrap().steer_rad
            };
            let gradient = (steer(10.0) - steer(5.0)) / ((100.0 - 25.0) / 500.0);
            close(gradient, track.gradient(), 0.01);
        }
    }
}

#[test]
fn the_transient_ends_at_the_steady_turn() {
    {
        for (base, layout) in vehicle::DEMO_NAMES.iter().zip(["F1", "R2", "F1R2", "F2R2"]) {
            let question = question(&[("vehicle.base", base), ("layout", layout)]);
            let curve = constant_radius(&question);
            let trim = curve.asked.unwrap();
            let mut state = straight(&question, &trim);
            for step in 0..240_000 {
                let controls = controls_at(&trim, f64::from(step) * 0.0025);
                advance(&question.car, &controls, &mut state, 0.0025);
            }
            for at in [FORWARD, LEFTWARD, YAW_RATE, WHEEL, WHEEL + 3] {
                assert!(
                    (state[at] - trim.state[at]).abs() <= 1e-6 * trim.state[at].abs(),
                    "{base} {layout} {at}: {} and {}",
                    state[at],
                    trim.state[at]
                );
            }
            // The path is the circle.
            let begin: State = state;
            let mut most = 0.0_f64;
            let (sin, cos) = math::sin_cos(state[HEADING] + trim.sideslip_rad);
            let radius = question.radius_m;
            let centre = (begin[X] - radius * sin, begin[Y] + radius * cos);
            for _ in 0..4000 {
                advance(&question.car, &trim.controls, &mut state, 0.0025);
                let away = math::hypot(state[X] - centre.0, state[Y] - centre.1);
                most = most.max((away - radius).abs());
            }
            assert!(most < 1e-3, "{base}: {most} m off the circle");
        }
    }
}

#[test]
fn a_turn_to_the_right_is_the_mirror_image() {
    let question = question(&[("vehicle.base", "corrie"), ("layout", "F1R2")]);
    let left = trim(&question, &Turn::plain(25.0, 1.0 / 90.0), None).unwrap();
    let right = trim(&question, &Turn::plain(25.0, -1.0 / 90.0), None).unwrap();
    close(right.steer_rad, -left.steer_rad, 1e-9);
    close(right.sideslip_rad, -left.sideslip_rad, 1e-9);
    close(right.drive_n_m, left.drive_n_m, 1e-9);
    for (one, other) in [(0, 1), (1, 0), (2, 3), (3, 2)] {
        let of = |trim: &Trim, wheel: usize| trim.instant.loads.loads_n[wheel];
        close(of(&right, one), of(&left, other), 1e-9);
    }
    assert!((left.state[YAW_RATE] + right.state[YAW_RATE]).abs() < 1e-12);
}

#[test]
fn the_same_moment_costs_brakes_what_motors_only_pass_on() {
    let mut fields = vec![
        ("vehicle.base", "esker"),
        ("cornering.speed", "20 m/s"),
        ("cornering.radius", "150 m"),
        ("vehicle.drive_efficiency", "1"),
        ("layout", "R2"),
    ];
    let readings = TOPIC.solve(&scenario(&fields)).unwrap();
    let number = |path| number_of(&readings, path).unwrap();
    // V7: track 1.6 m, 1000 N·m, 20 m/s.
    close(number("vectoring.motors.force"), 625.0, 1e-12);
    close(number("vectoring.brakes.force"), 1250.0, 1e-12);
    close(number("vectoring.brakes.heat"), 25e3, 1e-12);
    assert!(number("vectoring.motors.power").abs() < 1e-9);
    assert_eq!(word(&readings, "vectoring.motors.verdict"), "way_possible");
    // One motor takes F·V/η, the other gives back F·V·η: with 94 % that leaves 1547.3 W.
    fields[3] = ("vehicle.drive_efficiency", "0.94");
    let lossy = TOPIC.solve(&scenario(&fields)).unwrap();
    let paid_w = number_of(&lossy, "vectoring.motors.power").unwrap();
    close(paid_w, 625.0 * 20.0 * (1.0 / 0.94 - 0.94), 1e-12);
    fields[3] = ("vehicle.drive_efficiency", "1");
    // The solve with tyres that slip agrees with the sums on paper.
    fields.push(("vehicle.roll_stiffness_front_share", "0.55"));
    let question = question(&fields);
    let plain = constant_radius(&question).asked.unwrap();
    for (way, want_w) in [
        (Way::Brakes, 25e3),
        (Way::Motors, 0.0),
        (Way::Mixed, 12.5e3),
    ] {
        let trim = help(&question, way)
            .unwrap()
            .trim(&question, &plain)
            .unwrap();
        let more_w = trim.wheel_power_w() - plain.wheel_power_w();
        assert!(
            (more_w - want_w).abs() < 0.08 * 25e3,
            "{way:?}: {more_w} W, want {want_w}"
        );
        // A moment into the turn saves steering: as much as front tyres would have made it with.
        let saved = plain.steer_rad - trim.steer_rad;
        assert!(saved > 0.0, "{way:?}: {saved}");
    }
}

#[test]
fn left_against_right_makes_the_moment_and_front_against_rear_little() {
    for base in vehicle::DEMO_NAMES {
        let question = question(&[("vehicle.base", base)]);
        let trim = constant_radius(&question).asked.unwrap();
        let moment = |layout| reaches(&question, &trim, &[layout])[0].1.moment_n_m;
        assert!(moment(Layout::R1).abs() < 1e-9);
        assert!(moment(Layout::F1).abs() < 1e-9);
        let ends = moment(Layout::F1R1);
        for pair in [Layout::R2, Layout::F2] {
            assert!(
                moment(pair) > 2.0 * ends,
                "{base}: {} against {ends}",
                moment(pair)
            );
        }
        assert!(moment(Layout::F2R2) > moment(Layout::R2));
        assert!(moment(Layout::F1R2) >= 0.999 * moment(Layout::R2));
    }
}

/// Why one motor in front adds so much to a pair behind. It makes no difference of forces on its own axle.
/// It holds back, so that the pair need not: the outer wheel, which carries more, may push with all it has,
/// while the inner one pulls back with the little that it has.
#[test]
fn a_motor_in_front_frees_the_pair_behind_and_makes_no_moment_itself() {
    for base in vehicle::DEMO_NAMES {
        let of = |fields: &[(&str, &str)], layout: Layout| {
            let fields = [&[("vehicle.base", *base)][..], fields].concat();
            let question = question(&fields);
            let trim = constant_radius(&question).asked.unwrap();
            reaches(&question, &trim, &[layout])[0].1
        };
        let (pair, three) = (of(&[], Layout::R2), of(&[], Layout::F1R2));
        assert!(three.moment_n_m > 1.2 * pair.moment_n_m, "{base}");
        // An open differential in front: no moment of forces along the car from there.
        assert!(
            three.apart_n[0].abs() < 2e-3 * three.apart_n[1],
            "{base}: {three:?}"
        );
        assert!(
            three.apart_n[1] > 1.2 * pair.apart_n[1],
            "{base}: {pair:?} {three:?}"
        );
        // Without load transfer both wheels of an axle have the same grip, and there is little to free: only
        // what the outer wheel's share of the drive took.
        let freed = three.apart_n[1] - pair.apart_n[1];
        let flat = [("vehicle.cg_height", "0.001 m")];
        let (pair, three) = (of(&flat, Layout::R2), of(&flat, Layout::F1R2));
        let still = three.apart_n[1] - pair.apart_n[1];
        assert!(still < 0.5 * freed, "{base}: {still} N and {freed} N");
    }
}

#[test]
fn what_a_layout_can_add_does_not_depend_on_which_is_looked_at() {
    let reached = |layout: &str| {
        let question = question(&[("vehicle.base", "esker"), ("layout", layout)]);
        let trim = constant_radius(&question).asked.unwrap();
        reaches(&question, &trim, &Layout::ALL)
    };
    let (one, other) = (reached("F1R2"), reached("F1"));
    assert_eq!(one.len(), Layout::ALL.len());
    for ((layout, one), (_, other)) in one.iter().zip(&other) {
        assert!(
            (one.moment_n_m - other.moment_n_m).abs() < 1e-3,
            "{layout:?}"
        );
    }
}

#[test]
fn a_reachable_moment_is_the_best_of_many_tries() {
    let question = question(&[("vehicle.base", "corrie"), ("layout", "R2")]);
    let trim = constant_radius(&question).asked.unwrap();
    let found = Reaches::new(&question, &trim).of(Layout::R2).unwrap();
    // Through the whole model: torque apart at the rear, loads and slip angles as they are. Every slip
    // of the left wheel up to its most force, with the slip of the right one that keeps the sum.
    let force_n = |wheel: usize, slip: f64| {
        let load = trim.instant.loads.loads_n[wheel] * trim.instant.loads.factors[wheel];
        let across = trim.state[crate::planar::SLIP_ACROSS + wheel];
        question
            .car
            .grip(wheel, [slip, across])
            .map(|part| part * load)
    };
    let still_n = |wheel: usize| trim.instant.tyre_n[wheel];
    let arm_m = -question.car.chassis.cg_to_rear_axle_m();
    let mut most = 0.0_f64;
    let mut right_slip = 0.0;
    let mut before_n = f64::INFINITY;
    for part in 0..=20_000 {
        let left_n = force_n(2, -1e-5 * f64::from(part));
        if left_n[0] > before_n {
            break;
        }
        before_n = left_n[0];
        let apart_n = still_n(2)[0] - left_n[0];
        while force_n(3, right_slip)[0] < still_n(3)[0] + apart_n {
            right_slip += 1e-6;
        }
        let across_n = left_n[1] + force_n(3, right_slip)[1] - still_n(2)[1] - still_n(3)[1];
        most = most.max(apart_n * question.car.tracks_m[1] + arm_m * across_n);
    }
    close(found.moment_n_m, most, 0.003);
}

#[test]
fn what_ends_the_test_is_said() {
    let held = |fields: &[(&str, &str)]| {
        let question = question(fields);
        let curve = constant_radius(&question);
        let last = curve.points.last().map_or(0.0, |p| p.lateral_m_s2);
        (curve.end, curve.held, last / GRAVITY_M_S2)
    };
    for (more, end) in [
        (vec![], Held::FrontSlides),
        (
            vec![
                ("vehicle.cornering_stiffness_front", "120 kN/rad"),
                ("vehicle.tyre_load_sensitivity", "0.2"),
                ("vehicle.roll_stiffness_front_share", "0.2"),
                ("vehicle.cg_height", "0.3 m"),
                ("layout", "R1"),
            ],
            Held::RearSlides,
        ),
        (
            vec![("vehicle.cg_height", "1.5 m"), ("layout", "R1")],
            Held::WheelSpins,
        ),
        (vec![("vehicle.motor_torque", "1 N·m")], Held::TooWeak),
        (
            vec![
                ("vehicle.max_steer_angle", "12°"),
                ("cornering.radius", "14 m"),
                ("vehicle.cornering_stiffness_front", "40 kN/rad"),
            ],
            Held::AtLock,
        ),
    ] {
        let mut fields = vec![("vehicle.base", "esker"), ("cornering.speed", "45 m/s")];
        fields.extend(more);
        let (found, asked, limit) = held(&fields);
        assert_eq!(found, end, "{fields:?}: {limit} g");
        assert_eq!(asked, end, "{fields:?}");
        // The friction is 1, and nothing presses the car down.
        assert!(limit < 1.0, "{fields:?}: {limit} g");
        if end == Held::FrontSlides {
            assert!(limit > 0.9, "{limit} g");
        }
        let readings = TOPIC.solve(&scenario(&fields)).unwrap();
        assert_eq!(number_of(&readings, "steer_angle"), None);
        assert_eq!(word(&readings, "turn"), end.word());
        assert!(number_of(&readings, "understeer_gradient").is_some());
    }
    // Tyres that never slide tip a tall car.
    let mut tall = PRINTED.to_vec();
    tall.extend([
        ("vehicle.cg_height", "1.2 m"),
        ("vehicle.track_front", "1.4 m"),
    ]);
    // Both axles lift at once.
    tall.push(("vehicle.roll_stiffness_front_share", "0.5505"));
    tall.push(("cornering.radius", "100 m"));
    let (end, asked, limit) = held(&tall);
    assert_eq!((end, asked), (Held::Tips, Held::Tips), "{limit} g");
    assert!((limit / (0.5 * 1.4 / 1.2) - 1.0).abs() < 0.02, "{limit} g");
    let (end, asked, _) = held(PRINTED);
    assert_eq!((end, asked), (Held::NoEnd, Held::Yes));
}

#[test]
fn what_cannot_be_is_refused_with_field_value_and_range() {
    for (path, text, field) in [
        ("cornering.radius", "3 m", "cornering.radius"),
        ("surface.grade", "5 %", "surface.grade"),
    ] {
        let problem =
            Question::from_scenario(&scenario(&[("vehicle.base", "esker"), (path, text)]))
                .unwrap_err();
        assert_eq!(problem.field(), field);
        assert_eq!(problem.value(), text);
    }
    let mut still = Scenario::default();
    let problem = still.set("cornering.speed", "0 m/s").unwrap_err();
    assert_eq!(problem.field(), "cornering.speed");
    let bare = scenario(&[
        ("vehicle.mass", "1500 kg"),
        ("vehicle.wheelbase", "2.7 m"),
        ("vehicle.cg_to_front_axle", "1.3 m"),
        ("surface.friction_peak", "0.9"),
    ]);
    let problem = Question::from_scenario(&bare).unwrap_err();
    assert_eq!(problem.field(), "vehicle.cornering_stiffness_front");
}

#[test]
fn the_step_rises_overshoots_little_and_settles() {
    for base in vehicle::DEMO_NAMES {
        let question = question(&[
            ("vehicle.base", base),
            ("cornering.speed", "22 m/s"),
            ("cornering.radius", "120 m"),
        ]);
        let trim = constant_radius(&question).asked.unwrap();
        let response = step_steer(&question, &trim);
        let rise = response.rise_time_s().unwrap();
        assert!((0.02..0.5).contains(&rise), "{base}: {rise} s");
        assert!(
            (-0.01..0.5).contains(&response.overshoot()),
            "{base}: {}",
            response.overshoot()
        );
        // Speed is lost while the drive torque is that of the turn, so the end is near, not there.
        let last = response.samples.last().unwrap();
        close(last.yaw_rate_rad_s, response.steady_rad_s, 0.03);
    }
}

#[test]
fn the_diagram_passes_through_the_steady_turn() {
    let question = question(&[
        ("vehicle.base", "esker"),
        ("vehicle.drag_area", "0"),
        ("vehicle.rolling_resistance", "0"),
    ]);
    let trim = trim(&question, &Turn::plain(15.0, 1.0 / 150.0), None).unwrap();
    let (lateral, moment) = diagram::at(&question, 15.0, trim.sideslip_rad, trim.steer_rad, 0.0);
    // Free wheels instead of driven ones: a little less is held along.
    close(lateral, 1.5, 0.02);
    let size = question.car.chassis.weight_n() * question.car.chassis.wheelbase_m();
    assert!(moment.abs() < 1e-3 * size, "{moment}");
    for trace in diagram(&question, &trim) {
        assert!(
            trace
                .points
                .iter()
                .all(|(x, y)| x.is_finite() && y.is_finite())
        );
    }
}

#[test]
#[ignore = "a measurement: cargo test --release -p axlewright-core cornering_speed -- --ignored --nocapture"]
fn cornering_speed() {
    let mut scenario = TOPIC.example().unwrap();
    let mut least = f64::INFINITY;
    for part in 0..60 {
        scenario
            .set_number("cornering.speed", 18.0 + 0.05 * f64::from(part))
            .unwrap();
        let begin = std::time::Instant::now();
        assert!(TOPIC.solve(&scenario).is_ok());
        least = least.min(begin.elapsed().as_secs_f64());
    }
    println!("all readings: {:.2} ms", 1e3 * least);
    let question = Question::from_scenario(&scenario).unwrap();
    let timed = |name: &str, work: &dyn Fn()| {
        let mut least = f64::INFINITY;
        for _ in 0..20 {
            let begin = std::time::Instant::now();
            work();
            least = least.min(begin.elapsed().as_secs_f64());
        }
        println!("{name}: {:.3} ms", 1e3 * least);
    };
    let trim = constant_radius(&question).asked.unwrap();
    let mut other = question;
    other.speed_m_s += 1e-3;
    timed("two constant-radius tests", &|| {
        let _ = (constant_radius(&other), constant_radius(&question));
    });
    timed("yaw moments of all layouts", &|| {
        let all = Reaches::new(&question, &trim);
        assert!(
            Layout::ALL
                .into_iter()
                .all(|layout| all.of(layout).is_some())
        );
    });
    timed("step steer", &|| {
        let _ = step_steer(&question, &trim);
    });
    timed("diagram", &|| {
        let _ = diagram(&question, &trim);
    });
    timed("one way", &|| {
        let _ = help(&question, Way::Motors).unwrap().trim(&question, &trim);
    });
}
