//! The topic's table, its readings and its working.

use super::{Bound, EXTRAORDINARY_W_M3, Nearest, Room, Vehicle, Wheel};
use crate::error::Problem;
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::topic::{Output, OutputKind, Reading, ReadingValue, Readings, Topic, plain, quantity};
use crate::units::Dimension as D;
use crate::working::{Sheet, Step};
use core::f64::consts::PI;

/// The topic.
pub const TOPIC: Topic = Topic {
    name: "packaging",
    inputs: &[
        "vehicle.base",
        "layout",
        "layouts",
        "vehicle.motor_power",
        "packaging.motor_power_density",
        "packaging.inverter_power_density",
        "packaging.gear_power_density",
        "vehicle.max_steer_angle",
        "vehicle.track_front",
        "vehicle.track_rear",
        "vehicle.wheel_radius",
        "vehicle.tyre_width_front",
        "vehicle.tyre_width_rear",
        "packaging.box_fill",
        "packaging.unit_length",
        "packaging.unit_height",
        "packaging.clearance",
        "packaging.structure_width",
        "packaging.half_shaft_length",
        "packaging.gap",
        "vehicle.wheelbase",
        "vehicle.cg_to_front_axle",
        "vehicle.body",
    ],
    controls: &[
        "vehicle.base",
        "layout",
        "vehicle.motor_power",
        "packaging.motor_power_density",
        "packaging.inverter_power_density",
        "packaging.gear_power_density",
        "vehicle.max_steer_angle",
        "vehicle.track_front",
        "vehicle.tyre_width_front",
        "packaging.structure_width",
    ],
    example: &[("vehicle.base", "corrie"), ("layout", "F1R2")],
    outputs: OUTPUTS,
    solve: readings,
    solve_without_run: None,
    working,
};

#[rustfmt::skip] // One output, one line: it is read as a table.
const OUTPUTS: &[Output] = &[
    quantity("unit_volume", "V", D::Volume, 3, true),
    quantity("power_density", "p", D::PowerDensity, 3, true),
    plain("extraordinary", OutputKind::Flag),
    quantity("unit_width", "w_u", D::Length, 3, true),
    quantity("front_wheel_reach", "e_f", D::Length, 3, false),
    quantity("swept_area", "A_s", D::Area, 3, true),
    quantity("front_room", "B_f", D::Length, 3, true),
    quantity("rear_room", "B_r", D::Length, 3, true),
    quantity("front_left_with_one", "d_f1", D::Length, 2, false),
    quantity("front_left_with_two", "d_f2", D::Length, 2, false),
    quantity("rear_left_with_one", "d_r1", D::Length, 2, false),
    quantity("rear_left_with_two", "d_r2", D::Length, 2, false),
    plain("layouts.*.fits", OutputKind::Flag),
    plain("layouts.*.reason", OutputKind::Word),
    quantity("layouts.*.room_left", "d", D::Length, 2, false),
    quantity("layouts.*.drive_volume", "V_d", D::Volume, 3, false),
];

/// What is left at an axle with one unit and with two: axle, units, path, symbol, equation.
const LEFT: [(usize, u8, &str, &str, &str); 4] = [
    (0, 1, "front_left_with_one", "d_f1", "B_f - w_u"),
    (0, 2, "front_left_with_two", "d_f2", "B_f - 2*w_u - g_u"),
    (1, 1, "rear_left_with_one", "d_r1", "B_r - w_u"),
    (1, 2, "rear_left_with_two", "d_r2", "B_r - 2*w_u - g_u"),
];

fn readings(scenario: &Scenario) -> Result<Vec<Reading>, Problem> {
    let vehicle = Vehicle::from_scenario(scenario)?;
    let mut readings = Readings::of(OUTPUTS);
    readings.optional("unit_volume", vehicle.unit.map(|unit| unit.volume_m3));
    readings.number("power_density", vehicle.density_w_m3);
    let extraordinary = vehicle.density_w_m3 > EXTRAORDINARY_W_M3;
    readings.add("extraordinary", "", ReadingValue::Flag(extraordinary));
    readings.optional("unit_width", vehicle.unit.map(|unit| unit.width_m));
    let front = vehicle.wheels[0];
    let reach = |wheel: Wheel| wheel.reach_m(vehicle.around.unit_length_m).0;
    readings.optional("front_wheel_reach", front.map(reach));
    readings.optional("swept_area", front.map(|wheel| wheel.swept_area_m2()));
    for (room, path) in vehicle.rooms.iter().zip(["front_room", "rear_room"]) {
        readings.optional(path, room.map(|room| room.free_m));
    }
    for (axle, units, path, ..) in LEFT {
        readings.optional(path, vehicle.left_m(axle, units));
    }
    for layout in scenario.layouts() {
        let mut add = |name, value| readings.add(name, layout.name(), value);
        if let Some((left_m, verdict)) = vehicle.judge(layout) {
            add("layouts.*.fits", ReadingValue::Flag(left_m >= 0.0));
            add("layouts.*.reason", ReadingValue::Word(verdict.word()));
            add("layouts.*.room_left", ReadingValue::Number(left_m));
        }
        if let Some(unit) = vehicle.unit {
            let volume_m3 = f64::from(layout.motors()) * unit.volume_m3;
            add("layouts.*.drive_volume", ReadingValue::Number(volume_m3));
        }
    }
    Ok(readings.into_list())
}

fn working(scenario: &Scenario) -> Result<Vec<Step>, Problem> {
    let vehicle = Vehicle::from_scenario(scenario)?;
    let around = &vehicle.around;
    let mut sheet = Sheet::new();
    sheet.source("source.packaging");
    sheet.given("l_u", around.unit_length_m, D::Length);
    sheet.given("c", around.clearance_m, D::Length);
    sheet.given("s", around.structure_m, D::Length);
    sheet.given("l_h", around.half_shaft_m, D::Length);
    write_unit(&mut sheet, &vehicle);
    if let Some(wheel) = &vehicle.wheels[0] {
        write_front(&mut sheet, wheel, around.unit_length_m);
    }
    let [front, rear] = &vehicle.rooms;
    if let Some(front) = front {
        sheet.given("t_f", front.track_m, D::Length);
        write_room(&mut sheet, front, ("B_f", "front_room"), ("t_f", "e_f"));
    }
    if let Some(rear) = rear {
        sheet.given("w_r", rear.wheel.width_m, D::Length);
        sheet.given("t_r", rear.track_m, D::Length);
        sheet.step(
            "step.rear_reach",
            "e_r",
            "",
            "w_r/2",
            rear.reach_m,
            D::Length,
        );
        write_room(&mut sheet, rear, ("B_r", "rear_room"), ("t_r", "e_r"));
    }
    for (axle, units, path, symbol, right) in LEFT {
        let about = if units == 1 {
            "step.left_with_one"
        } else {
            "step.left_with_two"
        };
        if let Some(left_m) = vehicle.left_m(axle, units) {
            sheet.step(about, symbol, path, right, left_m, D::Length);
        }
    }
    for layout in scenario.layouts() {
        sheet.begin(layout.name());
        write_layout(&mut sheet, &vehicle, layout);
        sheet.begin("");
    }
    Ok(sheet.into_steps())
}

/// The power density, and where the power is given the volume of a unit and the width of its box.
fn write_unit(sheet: &mut Sheet, vehicle: &Vehicle) {
    for (symbol, density) in ["p_m", "p_i", "p_g"]
        .into_iter()
        .zip(vehicle.densities_w_m3)
    {
        sheet.given(symbol, density, D::PowerDensity);
    }
    let (path, density) = ("power_density", vehicle.density_w_m3);
    let right = "1/(1/p_m + 1/p_i + 1/p_g)";
    sheet.step(
        "step.power_density",
        "p",
        path,
        right,
        density,
        D::PowerDensity,
    );
    let Some(unit) = &vehicle.unit else {
        return;
    };
    sheet.given("P", unit.power_w, D::Power);
    sheet.given("k_v", vehicle.box_fill, D::Ratio);
    sheet.given("h_u", vehicle.unit_height_m, D::Length);
    sheet.given("g_u", unit.gap_m, D::Length);
    let (path, volume_m3) = ("unit_volume", unit.volume_m3);
    let right = "P/p_m + P/p_i + P/p_g";
    sheet.step("step.unit_volume", "V", path, right, volume_m3, D::Volume);
    let (path, right) = ("unit_width", "V/(k_v*l_u*h_u)");
    sheet.step(
        "step.unit_width",
        "w_u",
        path,
        right,
        unit.width_m,
        D::Length,
    );
}

/// The reach of a front wheel at full lock, and the area that it sweeps.
fn write_front(sheet: &mut Sheet, wheel: &Wheel, unit_length_m: f64) {
    sheet.given("R", wheel.radius_m, D::Length);
    sheet.given("w_f", wheel.width_m, D::Length);
    sheet.given("δ_m", wheel.steer_rad, D::Angle);
    let (reach_m, nearest) = wheel.reach_m(unit_length_m);
    let right = match nearest {
        Nearest::Face => "w_f/2",
        Nearest::SlantedFace => "l_u/2*sin(δ_m)/cos(δ_m) + w_f/(2*cos(δ_m))",
        Nearest::Corner => "R*sin(δ_m) + w_f/2*cos(δ_m)",
        Nearest::CornerInPassing => "d_w",
    };
    let diagonal_m = crate::math::hypot(wheel.radius_m, 0.5 * wheel.width_m);
    let about = "step.wheel_half_diagonal";
    let half = "sqrt(R² + (w_f/2)²)";
    sheet.step(about, "d_w", "", half, diagonal_m, D::Length);
    let path = "front_wheel_reach";
    sheet.step("step.front_reach", "e_f", path, right, reach_m, D::Length);
    let angle_rad = crate::math::atan(0.5 * wheel.width_m / wheel.radius_m);
    let right = if nearest == Nearest::CornerInPassing {
        sheet.given("π", PI, D::Ratio);
        "π*d_w²"
    } else if wheel.steer_rad < angle_rad {
        "2*R*w_f + d_w²*(4*δ_m - 2*sin(δ_m)/cos(δ_m))"
    } else {
        "2*d_w²*(δ_m + atan(w_f/(2*R))) + R*w_f - w_f²/2*sin(δ_m)/cos(δ_m)"
    };
    let area_m2 = wheel.swept_area_m2();
    sheet.step(
        "step.swept_area",
        "A_s",
        "swept_area",
        right,
        area_m2,
        D::Area,
    );
}

fn write_room(
    sheet: &mut Sheet,
    room: &Room,
    (symbol, path): (&'static str, &str),
    (track, reach): (&str, &str),
) {
    let right = match room.bound {
        Bound::Wheels => [track, " - 2*(", reach, " + c + s)"].concat(),
        Bound::HalfShafts => [track, " - 2*l_h"].concat(),
    };
    sheet.step("step.room", symbol, path, &right, room.free_m, D::Length);
}

fn write_layout(sheet: &mut Sheet, vehicle: &Vehicle, layout: Layout) {
    let motors = [layout.front().motors(), layout.rear().motors()];
    if let Some(unit) = &vehicle.unit {
        let count = f64::from(layout.motors());
        sheet.given("n", count, D::Ratio);
        let path = "layouts.*.drive_volume";
        let volume_m3 = count * unit.volume_m3;
        sheet.step(
            "step.drive_volume",
            "V_d",
            path,
            "n*V",
            volume_m3,
            D::Volume,
        );
    }
    let Some((left_m, _)) = vehicle.judge(layout) else {
        return;
    };
    let of_layout = |row: &&(usize, u8, &str, &str, &str)| motors[row.0] == row.1;
    let symbols: Vec<&str> = LEFT.iter().filter(of_layout).map(|row| row.3).collect();
    let right = match symbols.as_slice() {
        [one, other] => ["min(", *one, "; ", *other, ")"].concat(),
        only => only.concat(),
    };
    let path = "layouts.*.room_left";
    sheet.step("step.room_left", "d", path, &right, left_m, D::Length);
}
