//! The topic's table and its readings.

use super::radius::{Curve, Point};
use super::reach::{Reach, reaches};
use super::step_steer::{Response, step_steer};
use super::vectoring::{Help, Way, help};
use super::{Question, SingleTrack, Trim, constant_radius, working};
use crate::error::Problem;
use crate::layout::{AxleDrive, Layout};
use crate::scenario::Scenario;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use std::rc::Rc;

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "cornering",
    inputs: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "layouts",
        "cornering.speed",
        "cornering.radius",
        "cornering.yaw_moment",
        "cornering.axle",
        "cornering.front_share",
        "cornering.chart",
        "surface.friction_peak",
        "surface.friction_peak_left",
        "surface.friction_peak_right",
        "surface.friction_sliding",
        "vehicle.cornering_stiffness_front",
        "vehicle.cornering_stiffness_rear",
        "vehicle.mass",
        "vehicle.cg_to_front_axle",
        "vehicle.cg_height",
        "vehicle.axle_load_front",
        "vehicle.axle_load_rear",
        "vehicle.wheelbase",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.roll_stiffness_front_share",
        "vehicle.yaw_inertia",
        "vehicle.max_steer_angle",
        "vehicle.motor_torque",
        "vehicle.motor_power",
        "vehicle.motor_ratio",
        "vehicle.motor_decline_speed",
        "vehicle.motor_max_speed",
        "vehicle.rotor_inertia",
        "vehicle.gear_efficiency",
        "vehicle.drive_efficiency",
        "vehicle.wheel_radius",
        "vehicle.wheel_inertia",
        "vehicle.rolling_resistance",
        "vehicle.drag_area",
        "vehicle.drag_height",
        "vehicle.lift_area_front",
        "vehicle.lift_area_rear",
        "air.density",
        "vehicle.tyre_friction",
        "vehicle.tyre_load_sensitivity",
        "vehicle.tyre_reference_load",
        "vehicle.tyre_peak_slip",
        "vehicle.tyre_relaxation_length",
        "surface.grade",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "surface.kind",
        "layout",
        "cornering.speed",
        "cornering.radius",
        "cornering.yaw_moment",
        "cornering.axle",
        "cornering.chart",
        "vehicle.cg_to_front_axle",
        "vehicle.roll_stiffness_front_share",
    ],
    example: &[
        ("vehicle.base", "esker"),
        ("layouts", "R1 R2 F1R1 F1R2 F2R2"),
        ("layout", "F1R2"),
    ],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working: working::working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
pub(super) const OUTPUTS: &[Output] = &[
    quantity("lateral_acceleration", "a_y", D::Acceleration, 3, true),
    plain("turn", OutputKind::Word),
    quantity("steer_angle", "δ", D::Angle, 3, true),
    quantity("sideslip_angle", "β", D::Angle, 3, false),
    quantity("drive_force", "F_d", D::Force, 3, false),
    quantity("drive_power", "P_d", D::Power, 3, false),
    quantity("limit_lateral_acceleration", "a_l", D::Acceleration, 3, true),
    quantity("limit_speed", "V_l", D::Speed, 3, false),
    plain("limit", OutputKind::Word),
    quantity("understeer_gradient", "K", D::SteerGradient, 2, true),
    quantity("constant_radius.understeer_gradient", "K_r", D::SteerGradient, 2, false),
    quantity("characteristic_speed", "V_c", D::Speed, 3, false),
    quantity("critical_speed", "V_k", D::Speed, 3, false),
    quantity("ackermann_angle", "δ_A", D::Angle, 3, false),
    quantity("single_track.steer_angle", "δ_1", D::Angle, 3, false),
    quantity("single_track.sideslip_angle", "β_1", D::Angle, 3, false),
    quantity("single_track.lateral_acceleration_gain", "G_a", D::AccelerationGain, 2, false),
    quantity("single_track.yaw_rate_gain", "G_r", D::YawGain, 2, false),
    quantity("step_steer.rise_time", "t_s", D::Time, 2, false),
    quantity("step_steer.overshoot", "U", D::Ratio, 2, false),
    quantity("vectoring.motors.force", "F_2", D::Force, 4, false),
    quantity("vectoring.motors.power", "P_2", D::Power, 3, true),
    quantity("vectoring.motors.steer_angle", "δ_2", D::Angle, 3, false),
    plain("vectoring.motors.verdict", OutputKind::Word),
    quantity("vectoring.brakes.force", "F_3", D::Force, 4, false),
    quantity("vectoring.brakes.power", "P_3", D::Power, 3, true),
    quantity("vectoring.brakes.heat", "Q_3", D::Power, 3, false),
    quantity("vectoring.brakes.deceleration", "d_3", D::Acceleration, 3, false),
    quantity("vectoring.brakes.steer_angle", "δ_3", D::Angle, 3, false),
    plain("vectoring.brakes.verdict", OutputKind::Word),
    quantity("vectoring.mixed.motor_force", "F_4", D::Force, 4, false),
    quantity("vectoring.mixed.brake_force", "F_5", D::Force, 4, false),
    quantity("vectoring.mixed.power", "P_4", D::Power, 3, false),
    quantity("vectoring.mixed.heat", "Q_4", D::Power, 3, false),
    quantity("vectoring.mixed.deceleration", "d_4", D::Acceleration, 3, false),
    quantity("vectoring.mixed.steer_angle", "δ_4", D::Angle, 3, false),
    plain("vectoring.mixed.verdict", OutputKind::Word),
    quantity("yaw_moment.*.max", "M_l", D::Torque, 3, false),
];

/// Everything that is found, in one place for readings and working.
pub(super) struct Found {
    pub(super) question: Question,
    pub(super) track: SingleTrack,
    pub(super) curve: Rc<Curve>,
    pub(super) response: Option<Response>,
    /// Motors, brakes, mixed: what each takes, the turn with it, and whether it can be.
    pub(super) ways: [Option<(Help, Option<Trim>, &'static str)>; 3],
    pub(super) reaches: Vec<(Layout, Reach)>,
}

/// Whether a way can be gone, as a word of the catalogue.
fn verdict(question: &Question, way: Way, help: &Help, with: Option<&Trim>) -> &'static str {
    let Some(trim) = with else {
        return "way_beyond_grip";
    };
    if way == Way::Brakes {
        return "way_possible";
    }
    let axle = [question.layout.front(), question.layout.rear()][help.motor_axle];
    if axle != AxleDrive::MotorPerWheel {
        return "way_needs_a_pair";
    }
    let most_n = question.motor_force_n(question.layout, help.motor_axle, question.speed_m_s);
    let weak = [0, 1].into_iter().any(|side| {
        let torque = trim.controls.torques_n_m[2 * help.motor_axle + side];
        torque.abs() / question.car.radius_m > most_n
    });
    if weak {
        "way_beyond_motors"
    } else {
        "way_possible"
    }
}

pub(super) fn find(scenario: &Scenario) -> Result<Found, Problem> {
    let question = Question::from_scenario(scenario)?;
    let curve = constant_radius(&question);
    let asked = curve.asked;
    let ways = [Way::Motors, Way::Brakes, Way::Mixed].map(|way| {
        let help = help(&question, way)?;
        let with = asked.as_ref().and_then(|plain| help.trim(&question, plain));
        let word = match &asked {
            Some(_) => verdict(&question, way, &help, with.as_ref()),
            None => "way_no_turn",
        };
        Some((help, with, word))
    });
    let layouts = scenario.layouts();
    let reaches = curve
        .shown()
        .map_or_else(Vec::new, |trim| reaches(&question, trim, &layouts));
    Ok(Found {
        question,
        track: SingleTrack::of(&question),
        response: asked.as_ref().map(|trim| step_steer(&question, trim)),
        curve,
        ways,
        reaches,
    })
}

impl Response {
    /// Rise time of the yaw rate: from half of the steering to nine tenths of the steady value \[s\].
    #[must_use]
    pub fn rise_time_s(&self) -> Option<f64> {
        self.nine_tenths_s
            .map(|time_s| time_s - self.half_steered_s)
    }

    /// By how much the yaw rate first goes beyond the steady one, as a share of it.
    #[must_use]
    pub fn overshoot(&self) -> f64 {
        (self.most_rad_s - self.steady_rad_s) / self.steady_rad_s
    }
}

/// Power of the drive from the battery that holds a steady turn \[W\].
pub(super) fn drive_power_w(question: &Question, trim: &Trim) -> f64 {
    trim.wheel_power_w() / question.drive_efficiency
}

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let found = find(scenario)?;
    let question = &found.question;
    let mut readings = Readings::of(OUTPUTS);
    let word = ReadingValue::Word;
    readings.number("lateral_acceleration", question.lateral_m_s2());
    readings.add("turn", "", word(found.curve.held.word()));
    if let Some(trim) = &found.curve.asked {
        readings.number("steer_angle", trim.steer_rad);
        readings.number("sideslip_angle", trim.sideslip_rad);
        let force_n = trim.drive_n_m / question.car.radius_m;
        readings.number("drive_force", force_n);
        readings.number("drive_power", drive_power_w(question, trim));
    }
    let last = found.curve.points.last();
    if let Some(last) = last {
        readings.number("limit_lateral_acceleration", last.lateral_m_s2);
        let trim = found.curve.last.as_ref();
        readings.optional("limit_speed", trim.map(|trim| trim.turn.speed_m_s));
    }
    readings.add("limit", "", word(found.curve.end.word()));
    let gradient = found.curve.straight().map(gradient_between);
    readings.optional("constant_radius.understeer_gradient", gradient);
    single_track(&mut readings, &found.track);
    if let Some(response) = &found.response {
        readings.optional("step_steer.rise_time", response.rise_time_s());
        readings.number("step_steer.overshoot", response.overshoot());
    }
    vectoring(&mut readings, &found);
    for (layout, reach) in &found.reaches {
        let moment = ReadingValue::Number(reach.moment_n_m);
        readings.add("yaw_moment.*.max", layout.name(), moment);
    }
    Ok(readings.into_list())
}

/// Understeer gradient between two points of a test on one radius: the angle of Ackermann is the same in
/// both and goes out.
pub(super) fn gradient_between((first, last): (Point, Point)) -> f64 {
    (last.steer_rad - first.steer_rad) / (last.lateral_m_s2 - first.lateral_m_s2)
}

fn single_track(readings: &mut Readings, track: &SingleTrack) {
    readings.number("understeer_gradient", track.gradient());
    readings.optional("characteristic_speed", track.characteristic_m_s());
    readings.optional("critical_speed", track.critical_m_s());
    readings.number("ackermann_angle", track.ackermann_rad());
    readings.number("single_track.steer_angle", track.steer_rad());
    readings.number("single_track.sideslip_angle", track.sideslip_rad());
    readings.optional(
        "single_track.lateral_acceleration_gain",
        track.acceleration_gain(),
    );
    readings.optional("single_track.yaw_rate_gain", track.yaw_gain());
}

fn vectoring(readings: &mut Readings, found: &Found) {
    let steer = |with: &Option<Trim>| with.as_ref().map(|trim| trim.steer_rad);
    let [motors, brakes, mixed] = &found.ways;
    if let Some((help, with, word)) = motors {
        readings.number("vectoring.motors.force", help.motor_force_n);
        readings.number("vectoring.motors.power", help.power_w);
        readings.optional("vectoring.motors.steer_angle", steer(with));
        readings.add("vectoring.motors.verdict", "", ReadingValue::Word(word));
    }
    if let Some((help, with, word)) = brakes {
        readings.number("vectoring.brakes.force", help.brake_force_n);
        readings.number("vectoring.brakes.power", help.power_w);
        readings.number("vectoring.brakes.heat", help.brake_heat_w);
        readings.number("vectoring.brakes.deceleration", help.deceleration_m_s2);
        readings.optional("vectoring.brakes.steer_angle", steer(with));
        readings.add("vectoring.brakes.verdict", "", ReadingValue::Word(word));
    }
    if let Some((help, with, word)) = mixed {
        readings.number("vectoring.mixed.motor_force", help.motor_force_n);
        readings.number("vectoring.mixed.brake_force", help.brake_force_n);
        readings.number("vectoring.mixed.power", help.power_w);
        readings.number("vectoring.mixed.heat", help.brake_heat_w);
        readings.number("vectoring.mixed.deceleration", help.deceleration_m_s2);
        readings.optional("vectoring.mixed.steer_angle", steer(with));
        readings.add("vectoring.mixed.verdict", "", ReadingValue::Word(word));
    }
}
