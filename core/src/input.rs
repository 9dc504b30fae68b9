//! Every input, declared once: name, symbol, kind, range, default. Sliders, attributes, schema,
//! help, error sentences and fuzz ranges are read from this table; nothing repeats it.

use crate::error::Allowed;
use crate::idle_drag;
use crate::layout::Layout;
use crate::motor::Machine;
use crate::surface;
use crate::units::Dimension;
use crate::vehicle;

/// One input of a scenario.
#[derive(Debug)]
pub struct Input {
    /// Dotted name in a scenario: `vehicle.mass`. The last part, in kebab case, is the attribute.
    pub path: &'static str,
    /// Symbol in the equations; empty for words.
    pub symbol: &'static str,
    /// What it holds.
    pub kind: Kind,
}

/// What an input holds.
#[derive(Debug)]
pub enum Kind {
    /// A quantity with a unit.
    Quantity {
        /// What it measures.
        dimension: Dimension,
        /// Accepted range, SI. The physics answers for every value in it.
        accepted: (f64, f64),
        /// Range of a slider, SI: where road vehicles lie. A typed value may go beyond, up to the
        /// accepted range; one slider over 10 kg to 100 t would be of no use to anybody.
        usual: (f64, f64),
        /// Step of a slider, SI.
        step: f64,
        /// Value when nothing gives one; `None`: a topic that needs it refuses to go on.
        default: Option<f64>,
    },
    /// One word of a list.
    Choice {
        /// The accepted words.
        words: &'static [&'static str],
        /// Word when nothing gives one.
        default: Option<&'static str>,
    },
    /// A list of layouts.
    Layouts,
    /// A text of many lines, which the topic reads.
    Text {
        /// Most bytes.
        most: usize,
        /// What a line may hold: a key of the catalogue.
        allowed: &'static str,
    },
}

impl Input {
    /// What the input accepts, for error sentences and help.
    #[must_use]
    pub fn allowed(&self) -> Allowed {
        match self.kind {
            Kind::Quantity {
                dimension,
                accepted,
                ..
            } => Allowed::Between {
                min: accepted.0,
                max: accepted.1,
                dimension,
            },
            Kind::Choice { words, .. } => Allowed::OneOf(words.to_vec()),
            Kind::Layouts => Allowed::OneOf(Layout::ALL.iter().map(|l| l.name()).collect()),
            Kind::Text { allowed, .. } => Allowed::Sentence(allowed),
        }
    }

    /// Key of the catalogue under which a word of a choice is named. A layout has none: it is named by
    /// its letters.
    #[must_use]
    pub fn choice_key(&self, word: &str) -> String {
        let section = match self.path {
            "vehicle.base" => "vehicle.",
            "surface.kind" | "choice.start_surface" | "choice.turn_surface" => "surface.",
            _ => "option.",
        };
        section.to_owned() + word
    }

    /// Name as an attribute of an element: the last part of the path in kebab case.
    #[must_use]
    pub fn attribute(&self) -> String {
        match self.path {
            "vehicle.base" => "vehicle".into(),
            "surface.kind" => "surface".into(),
            path => path.rsplit('.').next().unwrap_or(path).replace('_', "-"),
        }
    }

    /// Key of the input's name in the catalogue.
    #[must_use]
    pub fn label_key(&self) -> String {
        format!("input.{}", self.path)
    }

    /// Key of the input's line of help in the catalogue.
    #[must_use]
    pub fn help_key(&self) -> String {
        format!("help.{}", self.path)
    }
}

const fn quantity(
    path: &'static str,
    symbol: &'static str,
    dimension: Dimension,
    accepted: (f64, f64),
    usual: (f64, f64),
    step: f64,
    default: Option<f64>,
) -> Input {
    Input {
        path,
        symbol,
        kind: Kind::Quantity {
            dimension,
            accepted,
            usual,
            step,
            default,
        },
    }
}

const fn choice(
    path: &'static str,
    words: &'static [&'static str],
    default: Option<&'static str>,
) -> Input {
    Input {
        path,
        symbol: "",
        kind: Kind::Choice { words, default },
    }
}

/// Body outlines of figures.
pub const BODIES: &[&str] = &["small_car", "saloon", "utility", "sports_car"];
/// Ways in which one motor's torque is shared between the two wheels of its axle.
pub const DIFFERENTIALS: &[&str] = &["open", "locked", "open_with_brakes"];
/// Kinds of driven axle.
pub const AXLE_TYPES: &[&str] = &["independent", "solid"];
/// Whether the motors' own torque may limit traction.
pub const MOTOR_LIMITS: &[&str] = &["unlimited", "as_fitted"];

/// How a launch is computed: with slip, springs and spinning parts, or as the first sums on paper are.
pub const LAUNCH_MODELS: &[&str] = &["full", "ideal"];
/// The axle at which torque is moved from left to right.
pub const AXLES: &[&str] = &["front", "rear"];
/// What the chart of cornering shows.
pub const CORNERING_CHARTS: &[&str] = &["constant_radius", "yaw_moment", "step_steer"];
/// On or off.
pub const SWITCH: &[&str] = &["on", "off"];

use Dimension as D;

/// Every input, in the order in which people are shown them.
#[rustfmt::skip]
pub const INPUTS: &[Input] = &[
    choice("vehicle.base", vehicle::DEMO_NAMES, None),
    choice("vehicle.body", BODIES, None),
    quantity("vehicle.mass", "m", D::Mass, (10.0, 100_000.0), (600.0, 4000.0), 10.0, None),
    quantity("vehicle.wheelbase", "L", D::Length, (0.2, 20.0), (1.8, 4.0), 0.01, None),
    quantity("vehicle.cg_to_front_axle", "a", D::Length, (0.001, 20.0), (0.6, 2.4), 0.01, None),
    quantity("vehicle.cg_height", "h", D::Length, (0.0, 5.0), (0.2, 1.2), 0.01, None),
    quantity("vehicle.track_front", "t_f", D::Length, (0.2, 5.0), (1.2, 2.0), 0.01, None),
    quantity("vehicle.track_rear", "t_r", D::Length, (0.2, 5.0), (1.2, 2.0), 0.01, None),
    quantity("vehicle.wheel_radius", "R", D::Length, (0.05, 2.0), (0.25, 0.5), 0.005, None),
    quantity("vehicle.tyre_width_front", "", D::Length, (0.02, 1.0), (0.14, 0.35), 0.005, Some(0.22)),
    quantity("vehicle.tyre_width_rear", "", D::Length, (0.02, 1.0), (0.14, 0.35), 0.005, Some(0.22)),
    quantity("vehicle.tyre_pressure", "p", D::Pressure, (2e4, 2e6), (150e3, 400e3), 1e4, None),
    quantity("vehicle.max_steer_angle", "δ_m", D::Angle, (0.0, core::f64::consts::PI / 3.0), (core::f64::consts::PI / 18.0, core::f64::consts::PI / 4.0), core::f64::consts::PI / 180.0, None),
    quantity("vehicle.drag_area", "C_dA", D::Area, (0.0, 30.0), (0.0, 2.0), 0.01, Some(0.0)),
    quantity("vehicle.drag_height", "h_d", D::Length, (0.0, 5.0), (0.2, 1.2), 0.01, None),
    quantity("vehicle.lift_area_front", "C_lA_f", D::Area, (-30.0, 10.0), (-3.0, 0.5), 0.05, Some(0.0)),
    quantity("vehicle.lift_area_rear", "C_lA_r", D::Area, (-30.0, 10.0), (-3.0, 0.5), 0.05, Some(0.0)),
    quantity("vehicle.rolling_resistance", "f_r", D::Ratio, (0.0, 0.5), (0.0, 0.05), 0.001, Some(0.0)),
    quantity("vehicle.ride_frequency_front", "f_1", D::Frequency, (0.3, 10.0), (0.8, 3.0), 0.05, None),
    quantity("vehicle.ride_frequency_rear", "f_2", D::Frequency, (0.3, 10.0), (0.8, 3.0), 0.05, None),
    quantity("vehicle.anti_lift_front", "k_al", D::Ratio, (0.0, 1.0), (0.0, 1.0), 0.05, Some(0.0)),
    quantity("vehicle.anti_squat_rear", "k_as", D::Ratio, (0.0, 1.0), (0.0, 1.0), 0.05, Some(0.0)),
    quantity("vehicle.damping_ratio", "ζ", D::Ratio, (0.01, 0.99), (0.1, 0.8), 0.01, Some(0.3)),
    quantity("vehicle.tyre_friction", "μ_t", D::Ratio, (0.001, 5.0), (0.3, 1.8), 0.01, None),
    quantity("vehicle.tyre_load_sensitivity", "k", D::Ratio, (0.0, 0.5), (0.0, 0.3), 0.01, Some(0.0)),
    quantity("vehicle.tyre_reference_load", "N_0", D::Force, (10.0, 500_000.0), (1000.0, 10_000.0), 100.0, None),
    quantity("vehicle.tyre_peak_slip", "σ_p", D::Ratio, (0.02, 0.5), (0.04, 0.3), 0.01, None),
    quantity("vehicle.tyre_relaxation_length", "λ", D::Length, (0.05, 2.0), (0.1, 1.0), 0.05, Some(0.3)),
    quantity("vehicle.wheel_inertia", "J_w", D::Inertia, (0.01, 500.0), (0.3, 4.0), 0.1, None),
    quantity("vehicle.axle_load_front", "m_f", D::Mass, (1.0, 100_000.0), (200.0, 2500.0), 10.0, None),
    quantity("vehicle.axle_load_rear", "m_r", D::Mass, (1.0, 100_000.0), (200.0, 2500.0), 10.0, None),
    quantity("vehicle.cornering_stiffness_front", "C_f", D::CorneringStiffness, (1000.0, 2e6), (20e3, 200e3), 1000.0, None),
    quantity("vehicle.cornering_stiffness_rear", "C_r", D::CorneringStiffness, (1000.0, 2e6), (20e3, 200e3), 1000.0, None),
    quantity("vehicle.yaw_inertia", "I_z", D::Inertia, (0.1, 1e7), (500.0, 10_000.0), 10.0, None),
    quantity("vehicle.roll_stiffness_front_share", "φ", D::Ratio, (0.0, 1.0), (0.3, 0.9), 0.01, Some(0.5)),
    quantity("vehicle.final_drive_ratio", "i_0", D::Ratio, (0.5, 40.0), (2.0, 14.0), 0.1, None),
    quantity("vehicle.motor_torque", "T_m", D::Torque, (1.0, 20_000.0), (50.0, 800.0), 10.0, None),
    quantity("vehicle.motor_power", "P_m", D::Power, (100.0, 5e6), (20e3, 500e3), 5e3, None),
    quantity("vehicle.motor_ratio", "i", D::Ratio, (0.5, 100.0), (4.0, 16.0), 0.1, None),
    quantity("vehicle.motor_decline_speed", "ω_2", D::Rotation, (1.0, 20_000.0), (500.0, 2500.0), core::f64::consts::PI * 50.0 / 3.0, None),
    quantity("vehicle.motor_max_speed", "ω_m", D::Rotation, (1.0, 20_000.0), (500.0, 2500.0), core::f64::consts::PI * 50.0 / 3.0, None),
    quantity("vehicle.rotor_inertia", "J_m", D::Inertia, (0.0, 50.0), (0.0, 0.2), 0.005, Some(0.0)),
    quantity("vehicle.gear_efficiency", "η", D::Ratio, (0.1, 1.0), (0.8, 1.0), 0.01, Some(1.0)),
    choice("vehicle.front_machine", Machine::NAMES, Some("permanent_magnet")),
    choice("vehicle.rear_machine", Machine::NAMES, Some("permanent_magnet")),
    choice("vehicle.disconnect", idle_drag::DISCONNECTS, Some("none")),
    quantity("vehicle.copper_loss_magnet", "k_p", D::Ratio, (1e-5, 1.0), (0.01, 0.15), 0.001, Some(0.075)),
    quantity("vehicle.weakening_loss", "k_f", D::Ratio, (0.0, 1.0), (0.0, 0.06), 0.001, Some(0.025)),
    quantity("vehicle.copper_loss_induction", "k_i", D::Ratio, (1e-5, 1.0), (0.01, 0.15), 0.001, Some(0.09)),
    quantity("vehicle.magnetising_loss", "k_m", D::Ratio, (0.0, 1.0), (0.0, 0.03), 0.001, Some(0.005)),
    quantity("vehicle.hysteresis_loss", "k_h", D::Ratio, (0.0, 1.0), (0.0, 0.02), 0.0005, Some(0.0025)),
    quantity("vehicle.eddy_loss", "k_e", D::Ratio, (0.0, 1.0), (0.0, 0.02), 0.0005, Some(0.0015)),
    quantity("vehicle.bearing_loss", "k_b", D::Ratio, (0.0, 1.0), (0.0, 0.01), 0.0002, Some(0.0008)),
    quantity("vehicle.windage_loss", "k_w", D::Ratio, (0.0, 1.0), (0.0, 0.01), 0.0002, Some(0.0004)),
    quantity("vehicle.battery_energy", "E_b", D::StoredEnergy, (3.6e4, 3.6e10), (3.6e7, 7.2e8), 3.6e6, None),
    quantity("vehicle.drive_efficiency", "η_d", D::Ratio, (0.1, 1.0), (0.7, 1.0), 0.01, Some(1.0)),
    quantity("vehicle.battery_power", "P_b", D::Power, (100.0, 2e7), (50e3, 1e6), 1e4, None),
    choice("surface.kind", surface::NAMES, None),
    quantity("surface.friction_peak", "μ", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_sliding", "μ_s", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_peak_left", "μ_l", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_peak_right", "μ_ri", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_sliding_left", "μ_sl", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_sliding_right", "μ_sr", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.grade", "G", D::Slope, (-1.0, 1.0), (-0.3, 0.3), 0.01, Some(0.0)),
    quantity("air.density", "ρ", D::Density, (0.0, 10.0), (0.9, 1.4), 0.005, Some(1.225)),
    Input { path: "layouts", symbol: "", kind: Kind::Layouts },
    choice("layout", Layout::NAMES, Some("R1")),
    quantity("load_transfer.acceleration", "a_x", D::Acceleration, (-30.0, 40.0), (-9.81, 14.715), 0.0981, None),
    quantity("load_transfer.speed", "V", D::Speed, (0.0, 150.0), (0.0, 70.0), 0.5, Some(0.0)),
    quantity("traction.speed", "V", D::Speed, (0.0, 150.0), (0.0, 70.0), 0.5, Some(0.0)),
    quantity("traction.front_share", "p_f", D::Ratio, (0.0, 1.0), (0.0, 1.0), 0.01, None),
    choice("traction.front_differential", DIFFERENTIALS, Some("open")),
    choice("traction.rear_differential", DIFFERENTIALS, Some("open")),
    choice("traction.front_axle_type", AXLE_TYPES, Some("independent")),
    choice("traction.rear_axle_type", AXLE_TYPES, Some("independent")),
    choice("traction.motor_limit", MOTOR_LIMITS, Some("unlimited")),
    quantity("motor_split.speed", "V", D::Speed, (0.0, 150.0), (0.0, 70.0), 0.5, Some(60.0 * 0.447_04)),
    quantity("motor_split.drive_unit_mass", "m_u", D::Mass, (0.0, 2000.0), (20.0, 150.0), 5.0, Some(60.0)),
    quantity("motor_split.drive_unit_cost", "c_u", D::Ratio, (0.0, 1e6), (0.5, 5.0), 0.1, Some(1.0)),
    choice("launch.model", LAUNCH_MODELS, Some("full")),
    choice("launch.traction_control", SWITCH, Some("on")),
    quantity("launch.slip_target", "σ_t", D::Ratio, (0.005, 0.9), (0.02, 0.4), 0.01, None),
    quantity("launch.time", "t", D::Time, (0.0, 120.0), (0.0, 15.0), 0.05, Some(0.0)),
    quantity("packaging.motor_power_density", "p_m", D::PowerDensity, (1e5, 1e9), (2e6, 6e7), 1e6, Some(2e7)),
    quantity("packaging.inverter_power_density", "p_i", D::PowerDensity, (1e5, 1e9), (5e6, 1.2e8), 1e6, Some(4e7)),
    quantity("packaging.gear_power_density", "p_g", D::PowerDensity, (1e5, 1e9), (2e6, 6e7), 1e6, Some(2e7)),
    quantity("packaging.box_fill", "k_v", D::Ratio, (0.05, 1.0), (0.2, 1.0), 0.05, Some(0.5)),
    quantity("packaging.unit_length", "l_u", D::Length, (0.05, 3.0), (0.2, 0.8), 0.01, Some(0.45)),
    quantity("packaging.unit_height", "h_u", D::Length, (0.05, 3.0), (0.15, 0.6), 0.01, Some(0.3)),
    quantity("packaging.clearance", "c", D::Length, (0.0, 0.5), (0.0, 0.1), 0.005, Some(0.03)),
    quantity("packaging.structure_width", "s", D::Length, (0.0, 1.0), (0.0, 0.3), 0.01, Some(0.12)),
    quantity("packaging.half_shaft_length", "l_h", D::Length, (0.0, 1.5), (0.1, 0.6), 0.01, Some(0.25)),
    quantity("packaging.gap", "g_u", D::Length, (0.0, 0.5), (0.0, 0.1), 0.005, Some(0.02)),
    choice("idle_drag.cycle", idle_drag::CYCLES, Some("wltc")),
    Input { path: "idle_drag.trace", symbol: "", kind: Kind::Text { most: 600_000, allowed: "allowed.trace" } },
    choice("idle_drag.chart", idle_drag::CHARTS, Some("idle_losses")),
    quantity("idle_drag.speed", "V", D::Speed, (0.0, 150.0), (0.0, 50.0), 0.5, Some(100.0 / 3.6)),
    quantity("idle_drag.acceleration", "a_x", D::Acceleration, (-30.0, 40.0), (-2.943, 4.905), 0.0981, Some(0.0)),
    quantity("idle_drag.auxiliary_power", "P_a", D::Power, (0.0, 1e5), (0.0, 4000.0), 50.0, Some(250.0)),
    quantity("idle_drag.regeneration_power", "P_r", D::Power, (0.0, 1e7), (0.0, 300e3), 5e3, Some(60e3)),
    quantity("choice.target_time", "t_t", D::Time, (0.5, 120.0), (2.0, 15.0), 0.1, None),
    quantity("choice.start_grade", "G_s", D::Slope, (0.0, 1.0), (0.0, 0.4), 0.01, None),
    choice("choice.start_surface", surface::NAMES, Some("asphalt_wet")),
    quantity("choice.least_range", "s_t", D::Distance, (1000.0, 5e6), (1e5, 8e5), 1e4, None),
    choice("choice.turn_in_place", SWITCH, Some("off")),
    choice("choice.turn_surface", surface::NAMES, Some("gravel")),
    choice("choice.torque_vectoring", SWITCH, Some("off")),
    quantity("choice.weight_time", "w_t", D::Ratio, (0.0, 100.0), (0.0, 10.0), 0.5, Some(2.0)),
    quantity("choice.weight_cost", "w_c", D::Ratio, (0.0, 100.0), (0.0, 10.0), 0.5, Some(4.0)),
    quantity("choice.weight_energy", "w_e", D::Ratio, (0.0, 100.0), (0.0, 10.0), 0.5, Some(2.0)),
    quantity("choice.weight_room", "w_s", D::Ratio, (0.0, 100.0), (0.0, 10.0), 0.5, Some(2.0)),
    quantity("choice.motor_cost", "c_m", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(4.0)),
    quantity("choice.inverter_cost", "c_i", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(3.0)),
    quantity("choice.gear_set_cost", "c_g", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(2.0)),
    quantity("choice.half_shaft_cost", "c_h", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(0.5)),
    quantity("choice.differential_cost", "c_d", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(1.0)),
    quantity("choice.disconnect_cost", "c_x", D::Ratio, (0.0, 1e6), (0.0, 10.0), 0.5, Some(1.0)),
    quantity("choice.spread", "r", D::Ratio, (0.001, 0.9), (0.05, 0.5), 0.05, Some(0.2)),
    quantity("cornering.speed", "V", D::Speed, (0.1, 150.0), (5.0, 60.0), 0.5, Some(20.0)),
    quantity("cornering.radius", "R_p", D::Length, (1.0, 1e5), (10.0, 300.0), 1.0, Some(80.0)),
    quantity("cornering.yaw_moment", "M_z", D::Torque, (0.0, 1e5), (0.0, 5000.0), 50.0, Some(1000.0)),
    choice("cornering.axle", AXLES, Some("rear")),
    quantity("cornering.front_share", "q_f", D::Ratio, (0.0, 1.0), (0.0, 1.0), 0.05, Some(0.5)),
    choice("cornering.chart", CORNERING_CHARTS, Some("constant_radius")),
    quantity("turn_in_place.front_to_rear_wheel_speed", "q", D::Ratio, (0.2, 5.0), (0.5, 2.0), 0.01, Some(1.0)),
    quantity("turn_in_place.yaw_rate", "r_w", D::YawRate, (0.01, 20.0), (core::f64::consts::PI / 18.0, core::f64::consts::PI), core::f64::consts::PI / 36.0, Some(core::f64::consts::PI / 3.0)),
    quantity("turn_in_place.time", "t", D::Time, (0.0, 60.0), (0.0, 10.0), 0.05, None),
    quantity("turn_in_place.wear_coefficient", "k_w", D::WearPerEnergy, (1e-15, 1e-9), (1e-12, 2e-11), 1e-13, None),
];

/// Places for the paths, by a number made of their letters: some four times as many as there are inputs.
const PLACES: usize = 512;
/// A place that holds no input.
const EMPTY: u8 = u8::MAX;
/// Where each input is found. A question reads some thirty inputs by name, and a study asks a million.
static TABLE: [u8; PLACES] = table();

const fn table() -> [u8; PLACES] {
    assert!(INPUTS.len() < EMPTY as usize, "an index must fit its place");
    let mut table = [EMPTY; PLACES];
    let mut at = 0;
    while at < INPUTS.len() {
        let mut place = place_of(INPUTS[at].path.as_bytes());
        while table[place] != EMPTY {
            place = (place + 1) % PLACES;
        }
        table[place] = at as u8;
        at += 1;
    }
    table
}

/// The place at which the search for a path begins: made of its length and of some letters from its end.
const fn place_of(path: &[u8]) -> usize {
    const FROM_END: [usize; 6] = [1, 2, 4, 7, 10, 13];
    let mut sum = path.len();
    let mut letter = 0;
    while letter < FROM_END.len() {
        let back = FROM_END[letter];
        if back <= path.len() {
            sum = sum
                .wrapping_mul(31)
                .wrapping_add(path[path.len() - back] as usize);
        }
        letter += 1;
    }
    sum % PLACES
}

/// Index of a path in [`INPUTS`].
#[must_use]
pub fn index(path: &str) -> Option<usize> {
    let mut place = place_of(path.as_bytes());
    // Most places are empty, so the search ends.
    while TABLE[place] != EMPTY {
        let at = usize::from(TABLE[place]);
        if INPUTS[at].path == path {
            return Some(at);
        }
        place = (place + 1) % PLACES;
    }
    None
}

/// The input of a path.
#[must_use]
pub fn find(path: &str) -> Option<&'static Input> {
    index(path).map(|at| &INPUTS[at])
}

/// The known word that is most like the given one, if any is near.
#[must_use]
pub fn nearest<'a>(word: &str, known: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let word: Vec<char> = word.to_ascii_lowercase().chars().take(64).collect();
    let mut best: Option<(usize, &str)> = None;
    for candidate in known {
        let distance = edit_distance(&word, candidate);
        let worth_naming = distance * 2 <= candidate.chars().count().max(word.len());
        if worth_naming && best.is_none_or(|(least, _)| distance < least) {
            best = Some((distance, candidate));
        }
    }
    best.map(|(_, name)| name)
}

/// Count of single-letter changes between two words (Levenshtein 1966).
fn edit_distance(word: &[char], other: &str) -> usize {
    let mut row: Vec<usize> = (0..=word.len()).collect();
    for (i, letter) in other.to_ascii_lowercase().chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for j in 1..row.len() {
            let change = diagonal + usize::from(word[j - 1] != letter);
            diagonal = row[j];
            row[j] = change.min(row[j] + 1).min(row[j - 1] + 1);
        }
    }
    row[word.len()]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{self, Lang};

    #[test]
    fn every_input_is_named_helped_and_in_range() {
        for input in INPUTS {
            for key in [input.label_key(), input.help_key()] {
                assert!(
                    words::find(Lang::English, &key).is_some(),
                    "no words for {key}"
                );
            }
            if let Kind::Quantity {
                accepted,
                usual,
                step,
                default,
                ..
            } = input.kind
            {
                let path = input.path;
                assert!(accepted.0 <= usual.0 && usual.1 <= accepted.1, "{path}");
                assert!(usual.0 < usual.1 && step > 0.0, "{path}");
                assert!(
                    default.is_none_or(|d| accepted.0 <= d && d <= accepted.1),
                    "{path}"
                );
            }
        }
    }

    #[test]
    fn every_path_is_found_and_no_other() {
        for (at, input) in INPUTS.iter().enumerate() {
            assert_eq!(index(input.path), Some(at), "{}", input.path);
            assert_eq!(index(&input.path[1..]), None, "{}", input.path);
            let longer = [input.path, "_"].concat();
            assert_eq!(index(&longer), None, "{longer}");
        }
        assert_eq!(index(""), None);
    }

    #[test]
    fn a_slip_of_the_finger_is_recognised() {
        let paths = || INPUTS.iter().map(|i| i.path);
        assert_eq!(nearest("vehicle.mas", paths()), Some("vehicle.mass"));
        assert_eq!(
            nearest("vehicle.weelbase", paths()),
            Some("vehicle.wheelbase")
        );
        assert_eq!(nearest("zzzz", paths()), None);
    }
}
