//! The working of what a slow turn brings with it: other friction left and right, the size of the
//! patches, wear, drift, full lock, other surfaces.

use super::report::{Numbers, OnOne, Slow, patches, wear_m3_j};
use super::{Question, SplitTurn, full_lock, wear};
use crate::error::Problem;
use crate::scenario::Scenario;
use crate::surface::SURFACES;
use crate::units::Dimension as D;
use crate::working::Sheet;

/// Friction, slide and force of each wheel: symbols and equations.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const SPLIT_WHEELS: [(&str, &str, &str, &str, &str, &str); 4] = [
    ("G_fl", "μ_f*N_f/2*μ_sl/μ_s", "s_fl", "sqrt((q*κ - t_f/2 + y)² + x²)", "F_fl", "-G_fl*(q*κ - t_f/2 + y)/s_fl"),
    ("G_fr", "μ_f*N_f/2*μ_sr/μ_s", "s_fr", "sqrt((q*κ - t_f/2 - y)² + x²)", "F_fr", "G_fr*(q*κ - t_f/2 - y)/s_fr"),
    ("G_rl", "μ_r*N_r/2*μ_sl/μ_s", "s_rl", "sqrt((κ - t_r/2 + y)² + (x - L)²)", "F_rl", "-G_rl*(κ - t_r/2 + y)/s_rl"),
    ("G_rr", "μ_r*N_r/2*μ_sr/μ_s", "s_rr", "sqrt((κ - t_r/2 - y)² + (x - L)²)", "F_rr", "G_rr*(κ - t_r/2 - y)/s_rr"),
];

/// What follows from them.
#[rustfmt::skip] // One equation, one line: it is read as a table.
const SPLIT_SUMS: &[(&str, &str, &str, &str, D)] = &[
    ("step.split_force_front", "F_f", "front_tractive_force_per_wheel", "(abs(F_fl) + abs(F_fr))/2", D::Force),
    ("step.split_force_rear", "F_r", "rear_tractive_force_per_wheel", "(abs(F_rl) + abs(F_rr))/2", D::Force),
    ("step.force_mean", "F", "tractive_force_per_wheel", "(F_f + F_r)/2", D::Force),
    ("step.lengthwise", "c", "friction_used_lengthwise", "4*F/(μ_f*N_f + μ_r*N_r)", D::Ratio),
    ("step.lateral_scrub", "M_l", "lateral_scrub_moment", "μ_f*N_f*abs(x) + μ_r*N_r*abs(L - x)", D::Torque),
    ("step.resisting", "M_r", "resisting_moment", "(G_fl/s_fl + G_fr/s_fr)*x² + (G_rl/s_rl + G_rr/s_rr)*(L - x)²", D::Torque),
    ("step.energy", "E", "energy_per_turn", "2*π*(G_fl*s_fl + G_fr*s_fr + G_rl*s_rl + G_rr*s_rr)", D::Energy),
];

pub(super) fn write_split(
    sheet: &mut Sheet,
    question: &Question,
    turn: &SplitTurn,
    numbers: &Numbers,
) {
    sheet.given("μ_sl", question.sides[0], D::Ratio);
    sheet.given("μ_sr", question.sides[1], D::Ratio);
    for (symbol, path, value) in [
        (
            "x",
            "turning_centre_behind_front_axle",
            turn.centre_behind_front_m,
        ),
        ("y", "turning_centre_to_left", turn.centre_to_left_m),
        ("κ", "wheel_speed_ratio", turn.speed_ratio_m),
    ] {
        found(sheet, "step.split_found", symbol, path, value, D::Length);
    }
    for (at, (grip, its, slide, far, force, push)) in SPLIT_WHEELS.into_iter().enumerate() {
        let grip_n = turn.grips_n[at];
        sheet.step("step.split_grip", grip, "", its, grip_n, D::Force);
        let slide_m = turn.slides_m[at][2];
        sheet.step("step.split_slide", slide, "", far, slide_m, D::Length);
        let force_n = turn.forces_n[at].0;
        sheet.step("step.split_force", force, "", push, force_n, D::Force);
    }
    let values = [
        numbers.front_force_n,
        numbers.rear_force_n,
        numbers.mean_force_n,
        numbers.lengthwise_use,
        numbers.lateral_scrub_n_m,
        numbers.resisting_n_m,
        numbers.energy_j,
    ];
    for ((about, symbol, path, right, dimension), value) in SPLIT_SUMS.iter().zip(values) {
        sheet.step(about, symbol, path, right, value, *dimension);
    }
}

/// A number that a solver found as the answer of all equations together: shown as it is.
pub(super) fn found(
    sheet: &mut Sheet,
    about: &'static str,
    symbol: &'static str,
    path: &str,
    value: f64,
    dimension: D,
) {
    sheet.given(symbol, value, dimension);
    let same = ["1*", symbol].concat();
    sheet.step(about, symbol, path, &same, value, dimension);
}

/// Symbols of one axle's patches: load, friction, width, length, slide along, distance ahead, slide in
/// all, moment, bound; then path of the length and the slide along.
struct Axle {
    length: (&'static str, &'static str, &'static str),
    along: (&'static str, &'static str),
    slide: (&'static str, &'static str),
    moment: (&'static str, &'static str),
    bound: (&'static str, &'static str),
}

const AXLES: [Axle; 2] = [
    Axle {
        length: ("l_f", "front_patch_length", "N_f/(2*p*w_f)"),
        along: ("u_f", "q*κ - t_f/2"),
        slide: ("S_f", "sqrt(u_f² + x²)"),
        moment: ("M_pf", "μ_f*N_f/(12*S_f)*((l_f*u_f/S_f)² + (w_f*x/S_f)²)"),
        bound: ("M_bf", "μ_f*N_f/3*sqrt(N_f/(2*p))"),
    },
    Axle {
        length: ("l_r", "rear_patch_length", "N_r/(2*p*w_r)"),
        along: ("u_r", "κ - t_r/2"),
        slide: ("S_r", "sqrt(u_r² + (L - x)²)"),
        moment: (
            "M_pr",
            "μ_r*N_r/(12*S_r)*((l_r*u_r/S_r)² + (w_r*(L - x)/S_r)²)",
        ),
        bound: ("M_br", "μ_r*N_r/3*sqrt(N_r/(2*p))"),
    },
];

pub(super) fn write_patches(sheet: &mut Sheet, question: &Question, numbers: &Numbers) {
    let (Some(patches), Some(pressure_pa)) = (patches(question, numbers), question.pressure_pa)
    else {
        return;
    };
    sheet.source("source.drilling");
    sheet.given("p", pressure_pa, D::Pressure);
    sheet.given("w_f", question.tyre_widths_m[0], D::Length);
    sheet.given("w_r", question.tyre_widths_m[1], D::Length);
    for (at, axle) in AXLES.iter().enumerate() {
        let drilling = &patches.axles[at];
        let (symbol, path, right) = axle.length;
        let length_m = drilling.patch_length_m;
        sheet.step(
            "step.patch_length",
            symbol,
            path,
            right,
            length_m,
            D::Length,
        );
        let (symbol, right) = axle.bound;
        let bound_n_m = drilling.bound_n_m;
        sheet.step(
            "step.drilling_bound",
            symbol,
            "",
            right,
            bound_n_m,
            D::Torque,
        );
        if drilling.slides_far {
            let (along_m, ahead_m) = patches.slides_m[at];
            let (symbol, right) = axle.along;
            sheet.step("step.slide_along", symbol, "", right, along_m, D::Length);
            let (symbol, right) = axle.slide;
            let slide_m = crate::math::hypot(along_m, ahead_m);
            sheet.step("step.slide_in_all", symbol, "", right, slide_m, D::Length);
            let (symbol, right) = axle.moment;
            let moment_n_m = drilling.moment_n_m;
            sheet.step("step.drilling", symbol, "", right, moment_n_m, D::Torque);
        } else {
            let (bound, (symbol, _)) = (axle.bound.0, axle.moment);
            let same = ["1*", bound].concat();
            let moment_n_m = drilling.moment_n_m;
            sheet.step(
                "step.drilling_as_bound",
                symbol,
                "",
                &same,
                moment_n_m,
                D::Torque,
            );
        }
    }
    let [front, rear] = &patches.axles;
    let sum = front.moment_n_m + rear.moment_n_m;
    sheet.step(
        "step.drilling_sum",
        "M_p",
        "drilling_moment",
        "M_pf + M_pr",
        sum,
        D::Torque,
    );
    let sum = front.bound_n_m + rear.bound_n_m;
    let path = "drilling_moment_bound";
    sheet.step(
        "step.drilling_bound_sum",
        "M_b",
        path,
        "M_bf + M_br",
        sum,
        D::Torque,
    );
    let Some(against) = &patches.against else {
        return;
    };
    let about = "step.against_found";
    found(
        sheet,
        about,
        "x_b",
        "",
        against.centre_behind_front_m,
        D::Length,
    );
    found(sheet, about, "κ_b", "", against.speed_ratio_m, D::Length);
    for (symbol, right, value) in [
        ("s_fb", "sqrt((q*κ_b - t_f/2)² + x_b²)", against.slides_m[0]),
        (
            "s_rb",
            "sqrt((κ_b - t_r/2)² + (L - x_b)²)",
            against.slides_m[1],
        ),
    ] {
        sheet.step("step.slide_in_all", symbol, "", right, value, D::Length);
    }
    for (symbol, right, value) in [
        (
            "F_fb",
            "μ_f*N_f/2*(q*κ_b - t_f/2)/s_fb",
            against.forces_n[0],
        ),
        ("F_rb", "μ_r*N_r/2*(κ_b - t_r/2)/s_rb", against.forces_n[1]),
    ] {
        sheet.step("step.force_against", symbol, "", right, value, D::Force);
    }
    if let Some(radius_m) = question.wheel_radius_m {
        let torque_n_m = radius_m * (0.5 * (against.forces_n[0] + against.forces_n[1]));
        let right = "R*((F_fb + F_rb)/2)";
        sheet.step(
            "step.torque_bound",
            "T_b",
            "wheel_torque_bound",
            right,
            torque_n_m,
            D::Torque,
        );
    }
    let right = "2*π*(μ_f*N_f*s_fb + μ_r*N_r*s_rb + M_b)";
    let path = "energy_per_turn_bound";
    sheet.step(
        "step.energy_bound",
        "E_b",
        path,
        right,
        against.energy_j,
        D::Energy,
    );
}

pub(super) fn write_wear(sheet: &mut Sheet, question: &Question, numbers: &Numbers) {
    sheet.source("source.turn_in_place");
    match &numbers.slow {
        Slow::Alike(turn) => {
            sheet.given("s_f", turn.front_slide_m, D::Length);
            sheet.given("s_r", turn.rear_slide_m, D::Length);
            for (symbol, path, right, value) in [
                (
                    "Q_f",
                    "heat_per_front_tyre",
                    "π*μ_f*N_f*s_f",
                    numbers.heat_j[0],
                ),
                (
                    "Q_r",
                    "heat_per_rear_tyre",
                    "π*μ_r*N_r*s_r",
                    numbers.heat_j[1],
                ),
            ] {
                sheet.step("step.heat", symbol, path, right, value, D::Energy);
            }
        }
        Slow::Split(_) => {
            for (symbol, path, right, value) in [
                (
                    "Q_f",
                    "heat_per_front_tyre",
                    "π*(G_fl*s_fl + G_fr*s_fr)",
                    numbers.heat_j[0],
                ),
                (
                    "Q_r",
                    "heat_per_rear_tyre",
                    "π*(G_rl*s_rl + G_rr*s_rr)",
                    numbers.heat_j[1],
                ),
            ] {
                sheet.step("step.heat", symbol, path, right, value, D::Energy);
            }
        }
    }
    sheet.source("source.wear");
    sheet.given("ρ_t", wear::TREAD_DENSITY_KG_M3, D::Density);
    let coefficient = wear_m3_j(question);
    if question.wear_m3_j.is_some() {
        let about = "step.wear_given";
        found(
            sheet,
            about,
            "k_w",
            "wear_coefficient",
            coefficient,
            D::WearPerEnergy,
        );
    } else {
        let wear = wear::calibrated();
        sheet.given("w_k", wear::WORN_PER_KM_KG, D::WornMass);
        sheet.given("w_t", wear::WORN_PER_KM_AND_TONNE_KG, D::WornMass);
        sheet.given("m_1t", 1000.0, D::Mass);
        sheet.given("s_1k", 1000.0, D::Length);
        sheet.given("u_o", wear::ORDINARY_USE, D::Ratio);
        sheet.given("C_s", wear.slip_stiffness, D::Ratio);
        let right = "m_1t*w_k/w_t";
        sheet.step("step.wear_car", "m_c", "", right, wear.car_kg, D::Mass);
        let right = "m_c*g*u_o*u_o/C_s";
        sheet.step(
            "step.wear_drag",
            "F_s",
            "",
            right,
            wear.slip_drag_n,
            D::Force,
        );
        let right = "w_k/(ρ_t*F_s*s_1k)";
        let path = "wear_coefficient";
        sheet.step(
            "step.wear_calibrated",
            "k_w",
            path,
            right,
            coefficient,
            D::WearPerEnergy,
        );
    }
    let (least, most) = wear::RANGE_M3_J;
    sheet.given("k_1", least, D::WearPerEnergy);
    sheet.given("k_2", most, D::WearPerEnergy);
    for (about, symbol, path, right, coefficient) in [
        (
            "step.tread_lost",
            "m_t",
            "tread_lost_per_turn",
            "ρ_t*k_w*E",
            coefficient,
        ),
        (
            "step.tread_least",
            "m_1",
            "tread_lost_least",
            "ρ_t*k_1*E",
            least,
        ),
        (
            "step.tread_most",
            "m_2",
            "tread_lost_most",
            "ρ_t*k_2*E",
            most,
        ),
    ] {
        let value = wear::worn_kg(coefficient, numbers.energy_j);
        sheet.step(about, symbol, path, right, value, D::WornMass);
    }
}

pub(super) fn write_drift(sheet: &mut Sheet, question: &Question, numbers: &Numbers) {
    let Slow::Alike(turn) = &numbers.slow else {
        return;
    };
    if let Some(drift_m) = question.drift_per_turn_m(turn) {
        sheet.source("source.turn_in_place");
        let [along_n, across_n] = question.drift_answers_n(turn);
        let right = "μ_f*N_f*(x/s_f)²/s_f + μ_r*N_r*((L - x)/s_r)²/s_r";
        sheet.step("step.drift_along", "H_x", "", right, along_n, D::Force);
        let right = "μ_f*N_f*((q*κ - t_f/2)/s_f)²/s_f + μ_r*N_r*((κ - t_r/2)/s_r)²/s_r";
        sheet.step("step.drift_across", "H_y", "", right, across_n, D::Force);
        sheet.given("G", question.slope.sin.abs() / question.slope.cos, D::Slope);
        let right = "π*W*sin(atan(G))*(1/H_x + 1/H_y)";
        sheet.step(
            "step.drift",
            "d",
            "drift_per_turn",
            right,
            drift_m,
            D::Length,
        );
    }
}

pub(super) fn write_lock(sheet: &mut Sheet, scenario: &Scenario, question: &Question) {
    sheet.source("source.turn_in_place");
    for layout in scenario.layouts() {
        let Some(lock) = full_lock(question, layout) else {
            continue;
        };
        sheet.begin(layout.name());
        let about = "step.lock_found";
        let path = "layouts.*.full_lock_centre_behind_front";
        found(
            sheet,
            about,
            "x_l",
            path,
            lock.centre_behind_front_m,
            D::Length,
        );
        let path = "layouts.*.full_lock_centre_to_left";
        found(sheet, about, "y_l", path, lock.centre_to_left_m, D::Length);
        let path = "layouts.*.full_lock_sweep_radius";
        let right = "sqrt(x_l² + y_l²)";
        sheet.step(
            "step.lock_sweep",
            "ρ_l",
            path,
            right,
            lock.sweep_radius_m,
            D::Length,
        );
        sheet.begin("");
    }
}

pub(super) fn write_surfaces(
    sheet: &mut Sheet,
    scenario: &Scenario,
    question: &Question,
) -> Result<(), Problem> {
    let on_one = OnOne::of(question, scenario.layout())?;
    sheet.source("source.adhesion");
    let torque_n_m = question
        .wheel_radius_m
        .map(|radius_m| radius_m * on_one.mean_force_n);
    sheet.given("E_1", on_one.energy_j, D::Energy);
    if let Some(torque_n_m) = torque_n_m {
        sheet.given("T_1", torque_n_m, D::Torque);
    }
    for surface in SURFACES {
        sheet.begin(surface.name);
        let friction = surface.friction_sliding();
        sheet.given("μ_k", friction, D::Ratio);
        if let Some(torque_n_m) = torque_n_m {
            let path = "surfaces.*.wheel_torque";
            let value = torque_n_m * friction;
            sheet.step(
                "step.surface_torque",
                "T_k",
                path,
                "T_1*μ_k",
                value,
                D::Torque,
            );
        }
        let path = "surfaces.*.energy_per_turn";
        let value = on_one.energy_j * friction;
        sheet.step(
            "step.surface_energy",
            "E_k",
            path,
            "E_1*μ_k",
            value,
            D::Energy,
        );
        sheet.begin("");
    }
    Ok(())
}
