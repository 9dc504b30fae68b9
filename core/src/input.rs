//! Every input, declared once: name, symbol, kind, range, default. Sliders, attributes, schema,
//! help, error sentences and fuzz ranges are read from this table; nothing repeats it.

use crate::error::Allowed;
use crate::layout::Layout;
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
        }
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
    quantity("vehicle.roll_stiffness_front_share", "φ", D::Ratio, (0.0, 1.0), (0.3, 0.9), 0.01, Some(0.5)),
    quantity("vehicle.final_drive_ratio", "i_0", D::Ratio, (0.5, 40.0), (2.0, 14.0), 0.1, None),
    quantity("vehicle.motor_torque", "T_m", D::Torque, (1.0, 20_000.0), (50.0, 800.0), 10.0, None),
    quantity("vehicle.motor_power", "P_m", D::Power, (100.0, 5e6), (20e3, 500e3), 5e3, None),
    quantity("vehicle.motor_ratio", "i", D::Ratio, (0.5, 100.0), (4.0, 16.0), 0.1, None),
    quantity("vehicle.motor_decline_speed", "ω_2", D::Rotation, (1.0, 20_000.0), (500.0, 2500.0), core::f64::consts::PI * 50.0 / 3.0, None),
    quantity("vehicle.motor_max_speed", "ω_m", D::Rotation, (1.0, 20_000.0), (500.0, 2500.0), core::f64::consts::PI * 50.0 / 3.0, None),
    quantity("vehicle.rotor_inertia", "J_m", D::Inertia, (0.0, 50.0), (0.0, 0.2), 0.005, Some(0.0)),
    quantity("vehicle.gear_efficiency", "η", D::Ratio, (0.1, 1.0), (0.8, 1.0), 0.01, Some(1.0)),
    quantity("vehicle.battery_power", "P_b", D::Power, (100.0, 2e7), (50e3, 1e6), 1e4, None),
    choice("surface.kind", surface::NAMES, None),
    quantity("surface.friction_peak", "μ", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_sliding", "μ_s", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_peak_left", "μ_l", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
    quantity("surface.friction_peak_right", "μ_ri", D::Ratio, (0.001, 5.0), (0.05, 1.8), 0.01, None),
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
    quantity("turn_in_place.front_to_rear_wheel_speed", "q", D::Ratio, (0.2, 5.0), (0.5, 2.0), 0.01, Some(1.0)),
];

/// Index of a path in [`INPUTS`].
#[must_use]
pub fn index(path: &str) -> Option<usize> {
    INPUTS.iter().position(|input| input.path == path)
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
