//! The topic's table, its readings and its working; and the steps that other topics share.

use super::{
    AxleLoads, Question, Squat, Suspension, acceleration_at_ratio, axle_loads,
    front_lift_acceleration, solve,
};
use crate::error::Problem;
use crate::scenario::Scenario;
use crate::topic::{Output, Reading, Readings, Topic, quantity};
use crate::units::Dimension as D;
use crate::vehicle::{Air, AirForces, Chassis, Slope};
use crate::working::{Sheet, Step};

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
    solve_without_run: None,
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
