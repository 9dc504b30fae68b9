//! Weight transfer under acceleration: how much each axle carries.
//!
//! The inertial force acts at CG height, the tractive force at the ground; the axle loads must
//! balance the couple. In steady state the springs have no part in it: they set only the squat.
//!
//! Model: rigid body in its plane of symmetry on a straight slope, steady acceleration. Rotating
//! parts are left out. Holds while both axles stay on the ground.

use crate::error::{Allowed, Problem};
use crate::math;
use crate::scenario::Scenario;
use crate::topic::{Output, Reading, Readings, Topic, quantity};
use crate::units::Dimension as D;
use crate::vehicle::{Air, AirForces, Chassis, Slope};
use crate::working::{Sheet, Step};

/// What the topic asks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Question {
    /// Mass, wheelbase, CG.
    pub chassis: Chassis,
    /// Forces of the air at the speed asked for.
    pub air: AirForces,
    /// Slope of the road.
    pub slope: Slope,
    /// Acceleration along the road, a_x \[m/s²\], forward positive.
    pub acceleration_m_s2: f64,
    /// Springs, where given.
    pub suspension: Option<Suspension>,
}

/// Springs, dampers and link geometry, as far as squat is concerned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Suspension {
    /// Ride frequency of the front axle's share of the body, f_1 \[Hz\].
    pub ride_frequency_front_hz: f64,
    /// Ride frequency of the rear axle's share of the body, f_2 \[Hz\].
    pub ride_frequency_rear_hz: f64,
    /// Share of the front load change that the links carry, 0 to 1.
    pub anti_lift_front: f64,
    /// Share of the rear load change that the links carry, 0 to 1.
    pub anti_squat_rear: f64,
    /// Damping ratio ζ of both ends, between 0 and 1.
    pub damping_ratio: f64,
}

/// Axle loads in steady state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxleLoads {
    /// Load of the front axle, N_f \[N\].
    pub front_n: f64,
    /// Load of the rear axle, N_r \[N\].
    pub rear_n: f64,
}

/// What the topic answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Axle loads.
    pub loads: AxleLoads,
    /// Axle loads at rest on the level.
    pub static_loads: AxleLoads,
    /// Acceleration at which the front axle leaves the ground \[m/s²\]; none for a CG on the ground.
    pub front_lift_acceleration_m_s2: Option<f64>,
    /// Acceleration at which the rear axle carries twice the front \[m/s²\]; none for a CG on the
    /// ground.
    pub two_to_one_acceleration_m_s2: Option<f64>,
    /// Squat, where springs are given.
    pub squat: Option<Squat>,
}

/// How the body stands on its springs in steady state, against its height at rest on the level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Squat {
    /// Rise of the body over the front axle \[m\], upward positive.
    pub rise_front_m: f64,
    /// Drop of the body over the rear axle \[m\], downward positive.
    pub drop_rear_m: f64,
    /// Pitch angle \[rad\], nose down positive (ISO 8855: about the y axis, which points left).
    pub pitch_rad: f64,
    /// Heave of the CG \[m\], upward positive.
    pub heave_m: f64,
}

impl Question {
    /// Reads the question of a scenario.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario. The CG height may be left out only where it has no part: at a
    /// steady speed on the level without drag.
    pub fn from_scenario(scenario: &Scenario) -> Result<Self, Problem> {
        let acceleration_m_s2 = scenario.number("load_transfer.acceleration").unwrap_or(0.0);
        let speed_m_s = scenario.number("load_transfer.speed").unwrap_or(0.0);
        let slope = Slope::from_grade(scenario.number("surface.grade").unwrap_or(0.0));
        let at_rest = acceleration_m_s2 == 0.0 && speed_m_s == 0.0 && slope.sin == 0.0;
        let chassis = if at_rest {
            Chassis::without_height(scenario)?
        } else {
            Chassis::from_scenario(scenario)?
        };
        Ok(Self {
            chassis,
            air: Air::from_scenario(scenario).forces(speed_m_s),
            slope,
            acceleration_m_s2,
            suspension: Suspension::from_scenario(scenario),
        })
    }
}

impl Suspension {
    /// Reads the springs of a scenario; none unless both ride frequencies are given.
    #[must_use]
    pub fn from_scenario(scenario: &Scenario) -> Option<Self> {
        let number = |path| scenario.number(path);
        Some(Self {
            ride_frequency_front_hz: number("vehicle.ride_frequency_front")?,
            ride_frequency_rear_hz: number("vehicle.ride_frequency_rear")?,
            anti_lift_front: number("vehicle.anti_lift_front").unwrap_or(0.0),
            anti_squat_rear: number("vehicle.anti_squat_rear").unwrap_or(0.0),
            damping_ratio: number("vehicle.damping_ratio").unwrap_or(0.3),
        })
    }
}

/// Axle loads of a chassis at an acceleration on a slope. Either may come out negative: then that
/// axle has left the ground, and the caller must refuse.
///
/// Source: R. N. Jazar, Vehicle Dynamics: Theory and Application, ch. 2, eq. 2.121–2.122 (read),
/// with drag and lift added by the same balance of moments.
///
/// ```
/// use axlewright_core::{load_transfer, vehicle::{AirForces, Chassis, Slope}};
/// let chassis = Chassis::new(890.0, 2.35, 0.78, 0.5)?;
/// let level = Slope::from_grade(0.0);
/// let loads = load_transfer::axle_loads(&chassis, &AirForces::default(), level, 0.0);
/// assert!((loads.front_n / 2.0 - 2916.5).abs() < 0.5);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[must_use]
pub fn axle_loads(
    chassis: &Chassis,
    air: &AirForces,
    slope: Slope,
    acceleration_m_s2: f64,
) -> AxleLoads {
    let weight_n = chassis.weight_n();
    let (a, b) = (chassis.cg_to_front_axle_m(), chassis.cg_to_rear_axle_m());
    let wheelbase_m = chassis.wheelbase_m();
    // M = (m·a_x + W·sin θ)·h + D·h_d
    let couple_n_m = (chassis.mass_kg() * acceleration_m_s2 + weight_n * slope.sin)
        * chassis.cg_height_m()
        + air.drag_n * air.drag_height_m;
    AxleLoads {
        // N_f = (W·cos θ·b − M)/L − Z_f
        front_n: (weight_n * slope.cos * b - couple_n_m) / wheelbase_m - air.lift_front_n,
        // N_r = (W·cos θ·a + M)/L − Z_r
        rear_n: (weight_n * slope.cos * a + couple_n_m) / wheelbase_m - air.lift_rear_n,
    }
}

/// Acceleration at which the front axle leaves the ground \[m/s²\]; infinite for a CG on the ground.
#[must_use]
pub fn front_lift_acceleration(chassis: &Chassis, air: &AirForces, slope: Slope) -> f64 {
    acceleration_at_ratio(chassis, air, slope, None)
}

/// Acceleration at which the rear axle leaves the ground \[m/s²\] (braking: negative).
#[must_use]
pub fn rear_lift_acceleration(chassis: &Chassis, air: &AirForces, slope: Slope) -> f64 {
    acceleration_at_ratio(chassis, air, slope, Some(0.0))
}

/// Acceleration at which N_r = ratio·N_f \[m/s²\]; with no ratio, at which N_f = 0.
///
/// Both loads are straight lines in a_x, so the answer is exact.
#[must_use]
pub fn acceleration_at_ratio(
    chassis: &Chassis,
    air: &AirForces,
    slope: Slope,
    ratio: Option<f64>,
) -> f64 {
    let unaccelerated = axle_loads(chassis, air, slope, 0.0);
    // dN_r/da_x = −dN_f/da_x = m·h/L
    let gain_kg = chassis.mass_kg() * chassis.cg_height_m() / chassis.wheelbase_m();
    match ratio {
        None => unaccelerated.front_n / gain_kg,
        Some(ratio) => {
            (ratio * unaccelerated.front_n - unaccelerated.rear_n) / ((1.0 + ratio) * gain_kg)
        }
    }
}

/// Solves the question.
///
/// # Errors
/// [`Problem::NoAnswer`] when an axle would leave the ground.
pub fn solve(question: &Question) -> Result<Answer, Problem> {
    let Question {
        chassis,
        air,
        slope,
        ..
    } = question;
    let loads = axle_loads(chassis, air, *slope, question.acceleration_m_s2);
    // A millionth of the weight keeps the ratio of the loads a sensible number.
    let least_n = 1e-6 * chassis.weight_n();
    if loads.front_n < least_n || loads.rear_n < least_n {
        return Err(lifted(question));
    }
    let level = Slope::from_grade(0.0);
    let static_loads = axle_loads(chassis, &AirForces::default(), level, 0.0);
    let finite = |value: f64| value.is_finite().then_some(value);
    Ok(Answer {
        loads,
        static_loads,
        front_lift_acceleration_m_s2: finite(front_lift_acceleration(chassis, air, *slope)),
        two_to_one_acceleration_m_s2: finite(acceleration_at_ratio(
            chassis,
            air,
            *slope,
            Some(2.0),
        )),
        squat: question
            .suspension
            .map(|springs| steady_squat(chassis, &springs, &static_loads, &loads)),
    })
}

/// The refusal when an axle would leave the ground: it tells the range in which both stay down.
fn lifted(question: &Question) -> Problem {
    let Question {
        chassis,
        air,
        slope,
        ..
    } = question;
    let low = rear_lift_acceleration(chassis, air, *slope);
    let high = front_lift_acceleration(chassis, air, *slope);
    let allowed = if low.is_finite() && high.is_finite() {
        Allowed::Inside {
            min: low,
            max: high,
            dimension: D::Acceleration,
        }
    } else {
        Allowed::Sentence("allowed.less_lift")
    };
    Problem::NoAnswer {
        field: "load_transfer.acceleration",
        value: format!("{} m/s²", crate::format::plain(question.acceleration_m_s2)),
        why: "why.axle_lifts",
        allowed,
    }
}

/// Body attitude in steady state.
///
/// Each axle's share of the body stands on its own spring of stiffness k = (2π·f)²·m_axle, with the
/// pitch inertia m·a·b that makes the two ends independent (common practice, no source).
#[must_use]
pub fn steady_squat(
    chassis: &Chassis,
    springs: &Suspension,
    static_loads: &AxleLoads,
    loads: &AxleLoads,
) -> Squat {
    let (a, b, wheelbase_m) = (
        chassis.cg_to_front_axle_m(),
        chassis.cg_to_rear_axle_m(),
        chassis.wheelbase_m(),
    );
    let stiffness = |frequency_hz: f64, load_n: f64| {
        let omega_rad_s = core::f64::consts::TAU * frequency_hz;
        omega_rad_s * omega_rad_s * load_n / crate::GRAVITY_M_S2
    };
    let front_n_m = stiffness(springs.ride_frequency_front_hz, static_loads.front_n);
    let rear_n_m = stiffness(springs.ride_frequency_rear_hz, static_loads.rear_n);
    let rise_front_m =
        (1.0 - springs.anti_lift_front) * (static_loads.front_n - loads.front_n) / front_n_m;
    let drop_rear_m =
        (1.0 - springs.anti_squat_rear) * (loads.rear_n - static_loads.rear_n) / rear_n_m;
    Squat {
        rise_front_m,
        drop_rear_m,
        pitch_rad: -math::atan((rise_front_m + drop_rear_m) / wheelbase_m),
        heave_m: (rise_front_m * b - drop_rear_m * a) / wheelbase_m,
    }
}

/// Body attitude a time t \[s\] after a step in acceleration from rest.
///
/// With pitch inertia m·a·b each end is an oscillator of its own, so its path is the damped step
/// response x(t) = x_s·(1 − e^(−ζωt)·(cos ω_d t + ζ/√(1−ζ²)·sin ω_d t)).
#[must_use]
pub fn squat_after_step(
    chassis: &Chassis,
    springs: &Suspension,
    steady: &Squat,
    time_s: f64,
) -> Squat {
    let wheelbase_m = chassis.wheelbase_m();
    let front = steady.rise_front_m
        * step_response(
            springs.ride_frequency_front_hz,
            springs.damping_ratio,
            time_s,
        );
    let rear = steady.drop_rear_m
        * step_response(
            springs.ride_frequency_rear_hz,
            springs.damping_ratio,
            time_s,
        );
    Squat {
        rise_front_m: front,
        drop_rear_m: rear,
        pitch_rad: -math::atan((front + rear) / wheelbase_m),
        heave_m: (front * chassis.cg_to_rear_axle_m() - rear * chassis.cg_to_front_axle_m())
            / wheelbase_m,
    }
}

fn step_response(frequency_hz: f64, damping_ratio: f64, time_s: f64) -> f64 {
    if time_s <= 0.0 {
        return 0.0;
    }
    let omega = core::f64::consts::TAU * frequency_hz;
    let root = math::sqrt(1.0 - damping_ratio * damping_ratio);
    let damped = omega * root;
    1.0 - math::exp(-damping_ratio * omega * time_s)
        * (math::cos(damped * time_s) + damping_ratio / root * math::sin(damped * time_s))
}

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "load_transfer",
    inputs: &[
        "vehicle.base",
        "load_transfer.acceleration",
        "vehicle.mass",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.cg_height",
        "surface.grade",
        "load_transfer.speed",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "air.density",
        "vehicle.ride_frequency_front",
        "vehicle.ride_frequency_rear",
        "vehicle.anti_lift_front",
        "vehicle.anti_squat_rear",
        "vehicle.damping_ratio",
        "vehicle.wheel_radius",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "load_transfer.acceleration",
        "vehicle.cg_height",
        "vehicle.cg_to_front_axle",
        "vehicle.wheelbase",
        "vehicle.mass",
        "surface.grade",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("load_transfer.acceleration", "0.6 g"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    working,
};

const OUTPUTS: &[Output] = &[
    quantity("front_axle_load", "N_f", D::Force, 4, true),
    quantity("rear_axle_load", "N_r", D::Force, 4, true),
    quantity("rear_to_front_ratio", "n", D::Ratio, 3, true),
    quantity("front_load_share", "x_f", D::Ratio, 3, false),
    quantity("transferred_load", "ΔN", D::Force, 4, false),
    quantity("static_front_axle_load", "N_f0", D::Force, 4, false),
    quantity("static_rear_axle_load", "N_r0", D::Force, 4, false),
    quantity("two_to_one_acceleration", "a_2", D::Acceleration, 3, true),
    quantity("front_lift_acceleration", "a_l", D::Acceleration, 3, true),
    quantity("pitch_angle", "θ_p", D::Angle, 2, false),
    quantity("rise_front", "z_f", D::Length, 2, false),
    quantity("drop_rear", "z_r", D::Length, 2, false),
    quantity("heave", "z", D::Length, 2, false),
];

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let answer = solve(&question)?;
    let mut readings = Readings::of(OUTPUTS);
    let loads = answer.loads;
    readings.number("front_axle_load", loads.front_n);
    readings.number("rear_axle_load", loads.rear_n);
    readings.number("rear_to_front_ratio", loads.rear_n / loads.front_n);
    readings.number(
        "front_load_share",
        loads.front_n / (loads.front_n + loads.rear_n),
    );
    readings.number(
        "transferred_load",
        loads.rear_n - answer.static_loads.rear_n,
    );
    readings.number("static_front_axle_load", answer.static_loads.front_n);
    readings.number("static_rear_axle_load", answer.static_loads.rear_n);
    readings.optional(
        "two_to_one_acceleration",
        answer.two_to_one_acceleration_m_s2,
    );
    readings.optional(
        "front_lift_acceleration",
        answer.front_lift_acceleration_m_s2,
    );
    if let Some(squat) = answer.squat {
        readings.number("pitch_angle", squat.pitch_rad);
        readings.number("rise_front", squat.rise_front_m);
        readings.number("drop_rear", squat.drop_rear_m);
        readings.number("heave", squat.heave_m);
    }
    Ok(readings.into_list())
}

/// Steps that every working on a slope with air begins with; returns nothing where neither acts.
pub(crate) fn write_surroundings(sheet: &mut Sheet, scenario: &Scenario, speed_path: &str) {
    let air = Air::from_scenario(scenario);
    let speed_m_s = scenario.number(speed_path).unwrap_or(0.0);
    let grade = scenario.number("surface.grade").unwrap_or(0.0);
    if grade != 0.0 {
        sheet.given("G", grade, D::Slope);
        let angle_rad = Slope::from_grade(grade).angle_rad;
        sheet.step("step.slope_angle", "θ", "", "atan(G)", angle_rad, D::Angle);
    }
    let forces = air.forces(speed_m_s);
    for (symbol, area_symbol, area_m2, force_n, about) in [
        ("D", "C_dA", air.drag_area_m2, forces.drag_n, "step.drag"),
        (
            "Z_f",
            "C_lA_f",
            air.lift_area_front_m2,
            forces.lift_front_n,
            "step.lift_front",
        ),
        (
            "Z_r",
            "C_lA_r",
            air.lift_area_rear_m2,
            forces.lift_rear_n,
            "step.lift_rear",
        ),
    ] {
        if force_n != 0.0 {
            sheet.given("ρ", air.density_kg_m3, D::Density);
            sheet.given("V", speed_m_s, D::Speed);
            sheet.given(area_symbol, area_m2, D::Area);
            let right = format!("0.5*ρ*{area_symbol}*V²");
            sheet.step(about, symbol, "", &right, force_n, D::Force);
        }
    }
    if forces.drag_n != 0.0 {
        sheet.given("h_d", air.drag_height_m, D::Length);
    }
}

/// The equations of both axle loads: weight, a couple that shifts load rearward, lift; each part
/// where it acts. An empty inertia stands for a steady speed.
fn load_equations(inertia: &str, sloped: bool, air: &AirForces) -> [String; 2] {
    let couple = match (inertia, sloped) {
        ("", false) => "",
        ("", true) => "W*sin(θ)*h",
        (_, false) => "m*a_x*h",
        (_, true) => "(m*a_x + W*sin(θ))*h",
    };
    let couple = match (couple, air.drag_n != 0.0) {
        (couple, false) => couple.to_owned(),
        ("", true) => "D*h_d".to_owned(),
        (couple, true) => format!("({couple} + D*h_d)"),
    };
    let weight = if sloped { "W*cos(θ)" } else { "W" };
    [
        ("b", "-", air.lift_front_n, "Z_f"),
        ("a", "+", air.lift_rear_n, "Z_r"),
    ]
    .map(|(arm, sign, lift_n, lift)| {
        let moment = if couple.is_empty() {
            format!("{weight}*{arm}/L")
        } else {
            format!("({weight}*{arm} {sign} {couple})/L")
        };
        if lift_n == 0.0 {
            moment
        } else {
            format!("{moment} - {lift}")
        }
    })
}

/// The axle loads at the acceleration `a_x`.
pub(crate) fn write_loads(
    sheet: &mut Sheet,
    paths: [&str; 2],
    sloped: bool,
    air: &AirForces,
    loads: AxleLoads,
) {
    let [front, rear] = load_equations("m*a_x", sloped, air);
    sheet.step(
        "step.front_load",
        "N_f",
        paths[0],
        &front,
        loads.front_n,
        D::Force,
    );
    sheet.step(
        "step.rear_load",
        "N_r",
        paths[1],
        &rear,
        loads.rear_n,
        D::Force,
    );
}

#[rustfmt::skip] // One step, one line: it is read as a table.
fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let question = Question::from_scenario(scenario)?;
    let answer = solve(&question)?;
    let chassis = question.chassis;
    let air = question.air;
    let sloped = question.slope.sin != 0.0;
    let mut sheet = Sheet::new();
    write_chassis(&mut sheet, &chassis);
    write_surroundings(&mut sheet, scenario, "load_transfer.speed");
    sheet.source("source.load_transfer");
    sheet.given("a_x", question.acceleration_m_s2, D::Acceleration);

    let at_rest = answer.static_loads;
    sheet.step("step.static_front", "N_f0", "static_front_axle_load", "W*b/L", at_rest.front_n, D::Force);
    sheet.step("step.static_rear", "N_r0", "static_rear_axle_load", "W*a/L", at_rest.rear_n, D::Force);
    write_loads(&mut sheet, ["front_axle_load", "rear_axle_load"], sloped, &air, answer.loads);
    let AxleLoads { front_n, rear_n } = answer.loads;
    sheet.step("step.ratio", "n", "rear_to_front_ratio", "N_r/N_f", rear_n / front_n, D::Ratio);
    let share = front_n / (front_n + rear_n);
    sheet.step("step.front_share", "x_f", "front_load_share", "N_f/(N_f + N_r)", share, D::Ratio);
    let transfer_n = rear_n - at_rest.rear_n;
    sheet.step("step.transfer", "ΔN", "transferred_load", "N_r - N_r0", transfer_n, D::Force);
    let still = axle_loads(&chassis, &air, question.slope, 0.0);
    let unmoved = (still == answer.static_loads).then_some(("N_f0", "N_r0"));
    write_landmarks(&mut sheet, (&chassis, &air, question.slope), unmoved);
    if let (Some(springs), Some(squat)) = (question.suspension, answer.squat) {
        write_squat(&mut sheet, &springs, &squat);
    }
    Ok(sheet.into_steps())
}

/// The known quantities of a chassis and its weight.
pub(crate) fn write_chassis(sheet: &mut Sheet, chassis: &Chassis) {
    sheet.source("source.statics");
    sheet.given("m", chassis.mass_kg(), D::Mass);
    sheet.given("g", crate::GRAVITY_M_S2, D::Acceleration);
    sheet.given("L", chassis.wheelbase_m(), D::Length);
    sheet.given("a", chassis.cg_to_front_axle_m(), D::Length);
    sheet.given("h", chassis.cg_height_m(), D::Length);
    let b_m = chassis.cg_to_rear_axle_m();
    sheet.step("step.weight", "W", "", "m*g", chassis.weight_n(), D::Force);
    sheet.step("step.cg_to_rear", "b", "", "L - a", b_m, D::Length);
}

/// The accelerations of the 2 : 1 load and of the lifting front axle, from the loads at a steady
/// speed: those named in `still`, or `N_f1` and `N_r1`, which are then written first.
#[rustfmt::skip] // One step, one line: it is read as a table.
pub(crate) fn write_landmarks(
    sheet: &mut Sheet,
    (chassis, air, slope): (&Chassis, &AirForces, Slope),
    still: Option<(&'static str, &'static str)>,
) {
    let (front, rear) = still.unwrap_or_else(|| {
        let [front, rear] = load_equations("", slope.sin != 0.0, air);
        let still = axle_loads(chassis, air, slope, 0.0);
        sheet.step("step.front_unaccelerated", "N_f1", "", &front, still.front_n, D::Force);
        sheet.step("step.rear_unaccelerated", "N_r1", "", &rear, still.rear_n, D::Force);
        ("N_f1", "N_r1")
    });
    let two_to_one = acceleration_at_ratio(chassis, air, slope, Some(2.0));
    if two_to_one.is_finite() {
        let right = format!("(2*{front} - {rear})/(3*(m*h/L))");
        sheet.step("step.two_to_one", "a_2", "two_to_one_acceleration", &right, two_to_one, D::Acceleration);
    }
    let lift = front_lift_acceleration(chassis, air, slope);
    if lift.is_finite() {
        let right = format!("{front}/(m*h/L)");
        sheet.step("step.front_lift", "a_l", "front_lift_acceleration", &right, lift, D::Acceleration);
    }
}

#[rustfmt::skip] // One step, one line: it is read as a table.
fn write_squat(sheet: &mut Sheet, springs: &Suspension, squat: &Squat) {
    sheet.source("source.squat");
    sheet.given("π", core::f64::consts::PI, D::Ratio);
    sheet.given("f_1", springs.ride_frequency_front_hz, D::Frequency);
    sheet.given("f_2", springs.ride_frequency_rear_hz, D::Frequency);
    sheet.given("k_al", springs.anti_lift_front, D::Ratio);
    sheet.given("k_as", springs.anti_squat_rear, D::Ratio);
    let front = "(1 - k_al)*(N_f0 - N_f)/((2*π*f_1)²*N_f0/g)";
    let rear = "(1 - k_as)*(N_r - N_r0)/((2*π*f_2)²*N_r0/g)";
    sheet.step("step.rise_front", "z_f", "rise_front", front, squat.rise_front_m, D::Length);
    sheet.step("step.drop_rear", "z_r", "drop_rear", rear, squat.drop_rear_m, D::Length);
    sheet.step("step.pitch", "θ_p", "pitch_angle", "-atan((z_f + z_r)/L)", squat.pitch_rad, D::Angle);
    sheet.step("step.heave", "z", "heave", "(z_f*b - z_r*a)/L", squat.heave_m, D::Length);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::GRAVITY_M_S2;

    fn esker() -> Question {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "esker").unwrap();
        scenario.set("load_transfer.acceleration", "0.6 g").unwrap();
        Question::from_scenario(&scenario).unwrap()
    }

    #[test]
    fn loads_sum_to_the_weight_and_the_ratio_reaches_two_where_said() {
        let question = esker();
        let answer = solve(&question).unwrap();
        let sum = answer.loads.front_n + answer.loads.rear_n;
        assert!((sum - question.chassis.weight_n()).abs() < 1e-9, "{sum}");
        let at = answer.two_to_one_acceleration_m_s2.unwrap();
        assert!((at / GRAVITY_M_S2 - 0.827).abs() < 0.001, "{at}");
        let there = solve(&Question {
            acceleration_m_s2: at,
            ..question
        });
        let ratio = there.map(|a| a.loads.rear_n / a.loads.front_n).unwrap();
        assert!((ratio - 2.0).abs() < 1e-12, "{ratio}");
    }

    #[test]
    fn beyond_lift_off_the_refusal_names_the_range() {
        let lift = solve(&esker())
            .unwrap()
            .front_lift_acceleration_m_s2
            .unwrap();
        for acceleration_m_s2 in [lift, lift + 0.1, -30.0] {
            let problem = solve(&Question {
                acceleration_m_s2,
                ..esker()
            })
            .unwrap_err();
            assert_eq!(problem.field(), "load_transfer.acceleration");
            assert!(problem.to_string().contains("2.59"), "{problem}");
        }
    }

    #[test]
    fn a_step_of_acceleration_ends_in_the_steady_squat_and_overshoots_by_the_book() {
        let question = esker();
        let springs = question.suspension.unwrap();
        let steady = solve(&question).unwrap().squat.unwrap();
        assert!(steady.pitch_rad < 0.0, "nose up is negative");
        let late = squat_after_step(&question.chassis, &springs, &steady, 60.0);
        assert!((late.pitch_rad - steady.pitch_rad).abs() < 1e-12);
        // First overshoot of a damped step response: e^(−πζ/√(1−ζ²)) at t = π/ω_d.
        let root = math::sqrt(1.0 - springs.damping_ratio * springs.damping_ratio);
        let peak_at = 0.5 / (springs.ride_frequency_rear_hz * root);
        let peak = squat_after_step(&question.chassis, &springs, &steady, peak_at);
        let want = 1.0 + math::exp(-core::f64::consts::PI * springs.damping_ratio / root);
        assert!((peak.drop_rear_m / steady.drop_rear_m - want).abs() < 1e-12);
    }
}
