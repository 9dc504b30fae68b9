//! The working: closed forms as they stand, and for what was solved the equations that it satisfies.

use super::report::{Found, drive_power_w, find, gradient_between};
use super::{Trim, math};
use crate::error::Problem;
use crate::load_transfer::write_chassis;
use crate::planar::WHEEL;
use crate::scenario::Scenario;
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};

/// An equation: what it finds, symbol, path in the answer, right side, value, dimension.
type Line<'a> = (&'static str, &'static str, &'a str, &'a str, f64, D);

pub(super) fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let found = find(scenario)?;
    let mut sheet = Sheet::new();
    single_track(&mut sheet, &found);
    sheet.source("source.planar");
    if let Some(trim) = &found.curve.asked {
        steady(&mut sheet, &found, trim);
        step(&mut sheet, &found);
    }
    limit(&mut sheet, &found);
    vectoring(&mut sheet, &found);
    for (layout, reach) in &found.reaches {
        sheet.begin(layout.name());
        let [front, rear] = reach.apart_n;
        sheet.given("X_f", front, D::Force);
        sheet.given("X_r", rear, D::Force);
        sheet.given("M_y", reach.across_n_m, D::Torque);
        let right = "t_f*X_f + t_r*X_r + M_y";
        let path = "yaw_moment.*.max";
        sheet.step(
            "step.reach",
            "M_l",
            path,
            right,
            reach.moment_n_m,
            D::Torque,
        );
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

fn write(sheet: &mut Sheet, lines: &[Line]) {
    for (about, symbol, path, right, value, dimension) in lines {
        sheet.step(about, symbol, path, right, *value, *dimension);
    }
}

#[rustfmt::skip] // One equation, one line: it is read as a table.
fn single_track(sheet: &mut Sheet, found: &Found) {
    let (question, track) = (&found.question, &found.track);
    write_chassis(sheet, &question.car.chassis);
    let [front, rear] = question.stiffness_n_rad;
    sheet.given("C_f", front, D::CorneringStiffness);
    sheet.given("C_r", rear, D::CorneringStiffness);
    sheet.given("V", question.speed_m_s, D::Speed);
    sheet.given("R_p", question.radius_m, D::Length);
    sheet.given("t_f", question.car.tracks_m[0], D::Length);
    sheet.given("t_r", question.car.tracks_m[1], D::Length);
    let [front_n, rear_n] = track.loads_n;
    let gradient = track.gradient();
    write(sheet, &[
        ("step.static_front", "N_f", "", "W*b/L", front_n, D::Force),
        ("step.static_rear", "N_r", "", "W*a/L", rear_n, D::Force),
    ]);
    sheet.source("source.single_track");
    write(sheet, &[
        ("step.lateral_acceleration", "a_y", "lateral_acceleration", "V²/R_p", track.lateral_m_s2(), D::Acceleration),
        ("step.understeer_gradient", "K", "understeer_gradient", "(N_f/(2*C_f) - N_r/(2*C_r))/g", gradient, D::SteerGradient),
        ("step.ackermann_angle", "δ_A", "ackermann_angle", "L/R_p", track.ackermann_rad(), D::Angle),
        ("step.single_steer", "δ_1", "single_track.steer_angle", "δ_A + K*a_y", track.steer_rad(), D::Angle),
        ("step.single_sideslip", "β_1", "single_track.sideslip_angle", "b/R_p - N_r*a_y/(2*g*C_r)", track.sideslip_rad(), D::Angle),
    ]);
    if let Some((first, last)) = found.curve.straight() {
        for (symbol, value, dimension) in [
            ("δ_a", first.steer_rad, D::Angle),
            ("δ_b", last.steer_rad, D::Angle),
            ("a_a", first.lateral_m_s2, D::Acceleration),
            ("a_b", last.lateral_m_s2, D::Acceleration),
        ] {
            sheet.given(symbol, value, dimension);
        }
        let path = "constant_radius.understeer_gradient";
        let gradient = gradient_between((first, last));
        sheet.step("step.test_gradient", "K_r", path, "(δ_b - δ_a)/(a_b - a_a)", gradient, D::SteerGradient);
    }
    if let Some(speed) = track.characteristic_m_s() {
        sheet.step("step.characteristic_speed", "V_c", "characteristic_speed", "sqrt(L/K)", speed, D::Speed);
    }
    if let Some(speed) = track.critical_m_s() {
        sheet.step("step.critical_speed", "V_k", "critical_speed", "sqrt(L/(0 - K))", speed, D::Speed);
    }
    if let (Some(acceleration), Some(yaw)) = (track.acceleration_gain(), track.yaw_gain()) {
        write(sheet, &[
            ("step.acceleration_gain", "G_a", "single_track.lateral_acceleration_gain", "V²/(L + K*V²)", acceleration, D::AccelerationGain),
            ("step.yaw_gain", "G_r", "single_track.yaw_rate_gain", "G_a/V", yaw, D::YawGain),
        ]);
    }
}

/// Slip angles of the middles of the axles in a steady turn.
fn slip_angles(found: &Found, trim: &Trim) -> [f64; 2] {
    let chassis = &found.question.car.chassis;
    let (sin, cos) = (math::sin(trim.sideslip_rad), math::cos(trim.sideslip_rad));
    let curvature = trim.turn.curvature;
    let front = math::atan((sin + chassis.cg_to_front_axle_m() * curvature) / cos);
    let rear = math::atan((sin - chassis.cg_to_rear_axle_m() * curvature) / cos);
    [trim.steer_rad - front, -rear]
}

#[rustfmt::skip] // One equation, one line: it is read as a table.
fn steady(sheet: &mut Sheet, found: &Found, trim: &Trim) {
    let question = &found.question;
    let [front, rear] = slip_angles(found, trim);
    sheet.given("α_f", front, D::Angle);
    sheet.given("α_r", rear, D::Angle);
    sheet.given("β", trim.sideslip_rad, D::Angle);
    sheet.satisfied("step.sideslip", "β", "sideslip_angle", "atan(b/(R_p*cos(β)) - sin(α_r)/cos(α_r))", trim.sideslip_rad, D::Angle);
    sheet.satisfied("step.steer", "δ", "steer_angle", "α_f + atan((sin(β) + a/R_p)/cos(β))", trim.steer_rad, D::Angle);
    let radius_m = question.car.radius_m;
    sheet.given("T_d", trim.drive_n_m, D::Torque);
    sheet.given("R", radius_m, D::Length);
    sheet.step("step.drive_force", "F_d", "drive_force", "T_d/R", trim.drive_n_m / radius_m, D::Force);
    let mean = driven_speed(found, trim);
    sheet.given("ω_d", mean, D::Rotation);
    sheet.given("η_d", question.drive_efficiency, D::Ratio);
    sheet.step("step.drive_power", "P_d", "drive_power", "T_d*ω_d/η_d", drive_power_w(question, trim), D::Power);
}

/// Mean speed of the driven wheels, each with its share of the torque.
fn driven_speed(found: &Found, trim: &Trim) -> f64 {
    let shares = found.question.drive_shares();
    (0..4)
        .map(|wheel| shares[wheel] * trim.state[WHEEL + wheel])
        .sum()
}

#[rustfmt::skip] // One equation, one line: it is read as a table.
fn step(sheet: &mut Sheet, found: &Found) {
    let Some(response) = &found.response else {
        return;
    };
    if let (Some(nine_tenths), Some(rise)) = (response.nine_tenths_s, response.rise_time_s()) {
        sheet.given("t_90", nine_tenths, D::Time);
        sheet.given("t_50", response.half_steered_s, D::Time);
        sheet.step("step.rise_time", "t_s", "step_steer.rise_time", "t_90 - t_50", rise, D::Time);
    }
    sheet.given("r_m", response.most_rad_s, D::Rotation);
    sheet.given("r_s", response.steady_rad_s, D::Rotation);
    sheet.step("step.overshoot", "U", "step_steer.overshoot", "(r_m - r_s)/r_s", response.overshoot(), D::Ratio);
}

#[rustfmt::skip] // One equation, one line: it is read as a table.
fn limit(sheet: &mut Sheet, found: &Found) {
    let (Some(last), Some(point)) = (&found.curve.last, found.curve.points.last()) else {
        return;
    };
    let [forward, left] = last.instant.acceleration_m_s2;
    sheet.given("A_x", forward, D::Acceleration);
    sheet.given("A_y", left, D::Acceleration);
    sheet.given("β_l", last.sideslip_rad, D::Angle);
    sheet.satisfied("step.lateral_limit", "a_l", "limit_lateral_acceleration", "A_y*cos(β_l) - A_x*sin(β_l)", point.lateral_m_s2, D::Acceleration);
    sheet.step("step.limit_speed", "V_l", "limit_speed", "sqrt(a_l*R_p)", last.turn.speed_m_s, D::Speed);
}

#[rustfmt::skip] // One equation, one line: it is read as a table.
fn vectoring(sheet: &mut Sheet, found: &Found) {
    let question = &found.question;
    sheet.given("M_z", question.moment_n_m, D::Torque);
    sheet.given("η_d", question.drive_efficiency, D::Ratio);
    sheet.given("q_f", question.front_share, D::Ratio);
    sheet.source("source.vectoring");
    let (track, twice) = if question.axle == 0 { ("M_z/t_f", "2*M_z/t_f") } else { ("M_z/t_r", "2*M_z/t_r") };
    let [motors, brakes, mixed] = &found.ways;
    if let Some((help, with, _)) = motors {
        write(sheet, &[
            ("step.motor_pair_force", "F_2", "vectoring.motors.force", track, help.motor_force_n, D::Force),
            ("step.motor_pair_power", "P_2", "vectoring.motors.power", "F_2*V*(1/η_d - η_d)", help.power_w, D::Power),
        ]);
        turned(sheet, found, with.as_ref(), ("δ_2", "vectoring.motors.steer_angle", "α_2", "β_2", "α_2 + atan((sin(β_2) + a/R_p)/cos(β_2))"));
    }
    if let Some((help, with, _)) = brakes {
        write(sheet, &[
            ("step.brake_force", "F_3", "vectoring.brakes.force", twice, help.brake_force_n, D::Force),
            ("step.brake_heat", "Q_3", "vectoring.brakes.heat", "F_3*V", help.brake_heat_w, D::Power),
            ("step.brake_power", "P_3", "vectoring.brakes.power", "F_3*V/η_d", help.power_w, D::Power),
            ("step.brake_deceleration", "d_3", "vectoring.brakes.deceleration", "F_3/m", help.deceleration_m_s2, D::Acceleration),
        ]);
        turned(sheet, found, with.as_ref(), ("δ_3", "vectoring.brakes.steer_angle", "α_3", "β_3", "α_3 + atan((sin(β_3) + a/R_p)/cos(β_3))"));
    }
    if let Some((help, with, _)) = mixed {
        write(sheet, &[
            ("step.mixed_motor", "F_4", "vectoring.mixed.motor_force", "(1 - q_f)*M_z/t_r", help.motor_force_n, D::Force),
            ("step.mixed_brake", "F_5", "vectoring.mixed.brake_force", "2*q_f*M_z/t_f", help.brake_force_n, D::Force),
            ("step.mixed_heat", "Q_4", "vectoring.mixed.heat", "F_5*V", help.brake_heat_w, D::Power),
            ("step.mixed_power", "P_4", "vectoring.mixed.power", "F_4*V*(1/η_d - η_d) + F_5*V/η_d", help.power_w, D::Power),
            ("step.brake_deceleration", "d_4", "vectoring.mixed.deceleration", "F_5/m", help.deceleration_m_s2, D::Acceleration),
        ]);
        turned(sheet, found, with.as_ref(), ("δ_4", "vectoring.mixed.steer_angle", "α_4", "β_4", "α_4 + atan((sin(β_4) + a/R_p)/cos(β_4))"));
    }
}

/// The steer angle of a turn with help: symbol, path, symbols of slip and sideslip angle, right side.
fn turned(
    sheet: &mut Sheet,
    found: &Found,
    with: Option<&Trim>,
    (symbol, path, slip, sideslip, right): (&'static str, &str, &'static str, &'static str, &str),
) {
    let Some(trim) = with else {
        return;
    };
    sheet.given(slip, slip_angles(found, trim)[0], D::Angle);
    sheet.given(sideslip, trim.sideslip_rad, D::Angle);
    sheet.satisfied("step.steer", symbol, path, right, trim.steer_rad, D::Angle);
}
