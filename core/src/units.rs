//! Quantities typed with a unit: `"1850 kg"`, `"4080 lb"`, `"0.6 g"`, `"60 mph"`, `"5 %"`.
//!
//! A number without a unit is taken as SI. Conversion factors are exact by definition
//! (international yard and pound, 1959; NIST SP 811, appendix B) but for the unit "g" of an
//! acceleration, which is [`GRAVITY_M_S2`].
//!
//! ```
//! use axlewright_core::units::{self, Dimension};
//!
//! assert_eq!(units::parse("60 mph", Dimension::Speed), Ok(26.8224));
//! assert!(units::parse("60 kg", Dimension::Speed).is_err());
//! ```

use crate::{GRAVITY_M_S2, math};

/// What a quantity measures. Its SI unit is the unit of every number inside the program.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Dimension {
    /// A pure number; `%` is accepted.
    Ratio,
    /// Mass \[kg\].
    Mass,
    /// Length \[m\].
    Length,
    /// Area \[m²\].
    Area,
    /// Speed \[m/s\].
    Speed,
    /// Acceleration \[m/s²\].
    Acceleration,
    /// Force \[N\].
    Force,
    /// Moment or torque \[N·m\].
    Torque,
    /// Power \[W\].
    Power,
    /// Energy \[J\].
    Energy,
    /// Angle \[rad\].
    Angle,
    /// Slope of the road as rise over run, tan θ \[1\]; `%` and degrees are accepted.
    Slope,
    /// Frequency \[Hz\].
    Frequency,
    /// Density \[kg/m³\].
    Density,
    /// Time \[s\].
    Time,
    /// Moment of inertia \[kg·m²\].
    Inertia,
    /// Rotational speed \[rad/s\].
    Rotation,
    /// Volume \[m³\].
    Volume,
    /// Power per volume \[W/m³\].
    PowerDensity,
    /// Distance travelled \[m\], read in kilometres or miles.
    Distance,
    /// Energy of a battery \[J\], read in kilowatt-hours.
    StoredEnergy,
    /// Energy for a distance \[J/m\].
    EnergyPerDistance,
    /// Yaw rate \[rad/s\], read in degrees.
    YawRate,
    /// Pressure \[Pa\].
    Pressure,
    /// Worn mass \[kg\], read in milligrams.
    WornMass,
    /// Volume that a friction energy wears off \[m³/J\].
    WearPerEnergy,
    /// Lateral force of a tyre for each slip angle \[N/rad\].
    CorneringStiffness,
    /// Steer angle for each lateral acceleration \[rad·s²/m\].
    SteerGradient,
    /// Lateral acceleration for each steer angle \[m/(s²·rad)\].
    AccelerationGain,
    /// Yaw rate for each steer angle \[s⁻¹\].
    YawGain,
}

/// A unit that may be typed.
#[derive(Clone, Copy, Debug)]
struct Unit {
    text: &'static str,
    dimension: Dimension,
    factor: f64,
}

const fn unit(text: &'static str, dimension: Dimension, factor: f64) -> Unit {
    Unit {
        text,
        dimension,
        factor,
    }
}

const POUND_KG: f64 = 0.453_592_37;
const FOOT_M: f64 = 0.3048;
const LITRE_M3: f64 = 0.001;
const POUND_FORCE_N: f64 = 4.448_221_615_260_5;
const DEGREE_RAD: f64 = core::f64::consts::PI / 180.0;

/// Every unit that is understood. The first of each dimension is the SI unit.
const UNITS: &[Unit] = &[
    // Before the more usual meanings of "m" and "kWh", which an error sentence should name.
    unit("J", Dimension::StoredEnergy, 1.0),
    unit("kWh", Dimension::StoredEnergy, 3.6e6),
    unit("MJ", Dimension::StoredEnergy, 1.0e6),
    unit("J/m", Dimension::EnergyPerDistance, 1.0),
    unit("Wh/km", Dimension::EnergyPerDistance, 3.6),
    unit(
        "Wh/mi",
        Dimension::EnergyPerDistance,
        3600.0 / (5280.0 * FOOT_M),
    ),
    unit("", Dimension::Ratio, 1.0),
    unit("%", Dimension::Ratio, 0.01),
    unit("kg", Dimension::Mass, 1.0),
    unit("t", Dimension::Mass, 1000.0),
    unit("lb", Dimension::Mass, POUND_KG),
    unit("slug", Dimension::Mass, POUND_FORCE_N / FOOT_M),
    unit("m", Dimension::Length, 1.0),
    unit("cm", Dimension::Length, 0.01),
    unit("mm", Dimension::Length, 0.001),
    unit("in", Dimension::Length, 0.0254),
    unit("ft", Dimension::Length, FOOT_M),
    unit("m", Dimension::Distance, 1.0),
    unit("km", Dimension::Distance, 1000.0),
    unit("mi", Dimension::Distance, 5280.0 * FOOT_M),
    unit("m²", Dimension::Area, 1.0),
    unit("ft²", Dimension::Area, FOOT_M * FOOT_M),
    unit("m/s", Dimension::Speed, 1.0),
    unit("km/h", Dimension::Speed, 1.0 / 3.6),
    unit("mph", Dimension::Speed, 0.447_04),
    unit("ft/s", Dimension::Speed, FOOT_M),
    unit("m/s²", Dimension::Acceleration, 1.0),
    unit("g", Dimension::Acceleration, GRAVITY_M_S2),
    unit("ft/s²", Dimension::Acceleration, FOOT_M),
    unit("N", Dimension::Force, 1.0),
    unit("kN", Dimension::Force, 1000.0),
    unit("lbf", Dimension::Force, POUND_FORCE_N),
    unit("N·m", Dimension::Torque, 1.0),
    unit("kN·m", Dimension::Torque, 1000.0),
    unit("lbf·ft", Dimension::Torque, POUND_FORCE_N * FOOT_M),
    unit("W", Dimension::Power, 1.0),
    unit("kW", Dimension::Power, 1000.0),
    unit("hp", Dimension::Power, POUND_FORCE_N * FOOT_M * 550.0),
    unit("J", Dimension::Energy, 1.0),
    unit("kJ", Dimension::Energy, 1000.0),
    unit("MJ", Dimension::Energy, 1.0e6),
    unit("Wh", Dimension::Energy, 3600.0),
    unit("kWh", Dimension::Energy, 3.6e6),
    unit("rad", Dimension::Angle, 1.0),
    unit("°", Dimension::Angle, DEGREE_RAD),
    unit("deg", Dimension::Angle, DEGREE_RAD),
    unit("", Dimension::Slope, 1.0),
    unit("%", Dimension::Slope, 0.01),
    unit("°", Dimension::Slope, DEGREE_RAD),
    unit("deg", Dimension::Slope, DEGREE_RAD),
    unit("rad", Dimension::Slope, 1.0),
    unit("Hz", Dimension::Frequency, 1.0),
    unit("kg/m³", Dimension::Density, 1.0),
    unit(
        "slug/ft³",
        Dimension::Density,
        POUND_FORCE_N / (FOOT_M * FOOT_M * FOOT_M * FOOT_M),
    ),
    unit("s", Dimension::Time, 1.0),
    unit("ms", Dimension::Time, 0.001),
    unit("kg·m²", Dimension::Inertia, 1.0),
    unit("lb·ft²", Dimension::Inertia, POUND_KG * FOOT_M * FOOT_M),
    unit("rad/s", Dimension::Rotation, 1.0),
    unit("rpm", Dimension::Rotation, core::f64::consts::PI / 30.0),
    unit("m³", Dimension::Volume, 1.0),
    unit("L", Dimension::Volume, LITRE_M3),
    unit("ft³", Dimension::Volume, FOOT_M * FOOT_M * FOOT_M),
    unit("W/m³", Dimension::PowerDensity, 1.0),
    unit("kW/L", Dimension::PowerDensity, 1000.0 / LITRE_M3),
    unit("rad/s", Dimension::YawRate, 1.0),
    unit("°/s", Dimension::YawRate, DEGREE_RAD),
    unit("deg/s", Dimension::YawRate, DEGREE_RAD),
    unit("Pa", Dimension::Pressure, 1.0),
    unit("kPa", Dimension::Pressure, 1000.0),
    unit("bar", Dimension::Pressure, 1.0e5),
    unit(
        "psi",
        Dimension::Pressure,
        POUND_FORCE_N / (FOOT_M / 12.0 * FOOT_M / 12.0),
    ),
    unit("kg", Dimension::WornMass, 1.0),
    unit("mg", Dimension::WornMass, 1.0e-6),
    unit("m³/J", Dimension::WearPerEnergy, 1.0),
    unit("mm³/J", Dimension::WearPerEnergy, 1.0e-9),
    unit("N/rad", Dimension::CorneringStiffness, 1.0),
    unit("kN/rad", Dimension::CorneringStiffness, 1000.0),
    unit("N/°", Dimension::CorneringStiffness, 1.0 / DEGREE_RAD),
    unit(
        "lbf/°",
        Dimension::CorneringStiffness,
        POUND_FORCE_N / DEGREE_RAD,
    ),
    unit("rad·s²/m", Dimension::SteerGradient, 1.0),
    unit("°/g", Dimension::SteerGradient, DEGREE_RAD / GRAVITY_M_S2),
    unit("m/(s²·rad)", Dimension::AccelerationGain, 1.0),
    unit(
        "g/°",
        Dimension::AccelerationGain,
        GRAVITY_M_S2 / DEGREE_RAD,
    ),
    unit("s⁻¹", Dimension::YawGain, 1.0),
];

/// Why a text is not a quantity of the wanted dimension.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum UnitError {
    /// The text does not begin with a finite number.
    NotANumber,
    /// The number has a mark that parts thousands for one reader and decimals for another: "1,850".
    TwoReadings(String),
    /// The number is followed by a unit that is not known at all.
    UnknownUnit(String),
    /// The unit is known but measures something else.
    WrongDimension {
        /// The unit as typed.
        unit: String,
        /// What it measures.
        measures: Dimension,
    },
}

/// Units of people: metric, or those customary in the United States.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum System {
    /// Metric units.
    #[default]
    Si,
    /// Units customary in the United States.
    Us,
}

impl Dimension {
    /// Units that may be typed for this dimension, the SI unit first.
    pub fn units(self) -> impl Iterator<Item = &'static str> {
        UNITS
            .iter()
            .filter(move |u| u.dimension == self && !u.text.is_empty())
            .map(|u| u.text)
    }

    /// SI unit as written after a number; empty for pure numbers.
    #[must_use]
    pub fn si_unit(self) -> &'static str {
        UNITS
            .iter()
            .find(|u| u.dimension == self)
            .map_or("", |u| u.text)
    }

    /// Unit in which people read this dimension.
    #[must_use]
    pub fn display_unit(self, system: System) -> &'static str {
        match (self, system) {
            (Self::Slope, _) => "%",
            (Self::Angle, _) => "°",
            (Self::Acceleration, _) => "g",
            (Self::Speed, System::Si) => "km/h",
            (Self::Power, System::Si) => "kW",
            (Self::Energy, _) => "kJ",
            (Self::Rotation, _) => "rpm",
            (Self::Volume, _) => "L",
            (Self::PowerDensity, _) => "kW/L",
            (Self::StoredEnergy, _) => "kWh",
            (Self::Distance, System::Si) => "km",
            (Self::Distance, System::Us) => "mi",
            (Self::EnergyPerDistance, System::Si) => "Wh/km",
            (Self::EnergyPerDistance, System::Us) => "Wh/mi",
            (Self::YawRate, _) => "°/s",
            (Self::Pressure, System::Si) => "kPa",
            (Self::Pressure, System::Us) => "psi",
            (Self::WornMass, _) => "mg",
            (Self::WearPerEnergy, _) => "mm³/J",
            (Self::CorneringStiffness, System::Si) => "kN/rad",
            (Self::CorneringStiffness, System::Us) => "lbf/°",
            (Self::SteerGradient, _) => "°/g",
            (Self::AccelerationGain, _) => "g/°",
            (Self::Mass, System::Us) => "lb",
            (Self::Length, System::Us) => "in",
            (Self::Area, System::Us) => "ft²",
            (Self::Speed, System::Us) => "mph",
            (Self::Force, System::Us) => "lbf",
            (Self::Torque, System::Us) => "lbf·ft",
            (Self::Power, System::Us) => "hp",
            _ => self.si_unit(),
        }
    }

    /// Key of this dimension's name in the language catalogue.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Ratio => "dimension.ratio",
            Self::Mass => "dimension.mass",
            Self::Length => "dimension.length",
            Self::Area => "dimension.area",
            Self::Speed => "dimension.speed",
            Self::Acceleration => "dimension.acceleration",
            Self::Force => "dimension.force",
            Self::Torque => "dimension.torque",
            Self::Power => "dimension.power",
            Self::Energy => "dimension.energy",
            Self::Angle => "dimension.angle",
            Self::Slope => "dimension.slope",
            Self::Frequency => "dimension.frequency",
            Self::Density => "dimension.density",
            Self::Time => "dimension.time",
            Self::Inertia => "dimension.inertia",
            Self::Rotation => "dimension.rotation",
            Self::Volume => "dimension.volume",
            Self::PowerDensity => "dimension.power_density",
            Self::Distance => "dimension.distance",
            Self::StoredEnergy => "dimension.stored_energy",
            Self::EnergyPerDistance => "dimension.energy_per_distance",
            Self::YawRate => "dimension.yaw_rate",
            Self::Pressure => "dimension.pressure",
            Self::WornMass => "dimension.worn_mass",
            Self::WearPerEnergy => "dimension.wear_per_energy",
            Self::CorneringStiffness => "dimension.cornering_stiffness",
            Self::SteerGradient => "dimension.steer_gradient",
            Self::AccelerationGain => "dimension.acceleration_gain",
            Self::YawGain => "dimension.yaw_gain",
        }
    }
}

/// Spellings that a keyboard offers, and the form of the table that they stand for.
const SPELLINGS: &[(&str, &str)] = &[
    ("m2", "m²"),
    ("ft2", "ft²"),
    ("Nm", "N·m"),
    ("kNm", "kN·m"),
    ("lb·ft", "lbf·ft"),
    ("ft·lb", "lbf·ft"),
    ("ft·lbf", "lbf·ft"),
    ("lbft", "lbf·ft"),
    ("lbfft", "lbf·ft"),
    ("m/s2", "m/s²"),
    ("ft/s2", "ft/s²"),
    ("kg/m3", "kg/m³"),
    ("m3", "m³"),
    ("ft3", "ft³"),
    ("W/m3", "W/m³"),
    ("l", "L"),
    ("kW/l", "kW/L"),
    ("mm3/J", "mm³/J"),
    ("m3/J", "m³/J"),
    ("kgm2", "kg·m²"),
    ("kgm²", "kg·m²"),
    ("kg·m2", "kg·m²"),
    ("kph", "km/h"),
    ("mi/h", "mph"),
    ("degrees", "deg"),
    ("degree", "deg"),
    ("inch", "in"),
    ("\"", "in"),
    ("lbs", "lb"),
    ("N/deg", "N/°"),
    ("lb/deg", "lbf/°"),
    ("lbf/deg", "lbf/°"),
    ("lb/°", "lbf/°"),
    ("deg/g", "°/g"),
    ("g/deg", "g/°"),
];

/// A unit as typed, brought to the one form of the table.
fn canonical_unit(typed: &str) -> String {
    let mut text = String::new();
    let mut raised = false;
    for symbol in typed.chars() {
        let was_raised = core::mem::replace(&mut raised, symbol == '^');
        let shown = match symbol {
            '2' if was_raised => '²',
            '3' if was_raised => '³',
            '*' | '.' | ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' | '-' => '·',
            other => other,
        };
        if was_raised && matches!(shown, '²' | '³') {
            text.pop();
        }
        text.push(shown);
    }
    match SPELLINGS.iter().find(|(spelling, _)| *spelling == text) {
        Some((_, form)) => (*form).into(),
        None => text,
    }
}

/// Reads a number with an optional unit as SI.
///
/// Thin, narrow and no-break spaces inside the number are passed over, so that a printed number may
/// be pasted back. A comma is refused, because it means different things to different readers; what a
/// reader types comes through [`crate::typed`], which knows the reader's language.
///
/// # Errors
/// [`UnitError`] says whether the number, the unit or the dimension is at fault.
pub fn parse(text: &str, dimension: Dimension) -> Result<f64, UnitError> {
    let (number, unit_text) = split_number(text.trim()).ok_or(UnitError::NotANumber)?;
    let typed = unit_text.trim();
    let wanted = canonical_unit(typed);
    if wanted.is_empty() {
        return Ok(number);
    }
    let same_text = UNITS.iter().filter(|u| u.text == wanted);
    let mut measures = None;
    for candidate in same_text {
        if candidate.dimension == dimension {
            let value = number * candidate.factor;
            let is_angle_of_slope =
                dimension == Dimension::Slope && matches!(candidate.text, "°" | "deg" | "rad");
            let value = if is_angle_of_slope {
                math::tan(value)
            } else {
                value
            };
            return if value.is_finite() {
                Ok(value)
            } else {
                Err(UnitError::NotANumber)
            };
        }
        measures = measures.or(Some(candidate.dimension));
    }
    Err(match measures {
        Some(measures) => UnitError::WrongDimension {
            unit: typed.into(),
            measures,
        },
        None => UnitError::UnknownUnit(typed.chars().take(24).collect()),
    })
}

/// Splits "1850 kg" into the number and the rest.
fn split_number(text: &str) -> Option<(f64, &str)> {
    let mut digits = String::new();
    let mut end = 0;
    let mut previous = ' ';
    for (at, symbol) in text.char_indices() {
        let plain = match symbol {
            '0'..='9' | '.' => Some(symbol),
            '+' if at == 0 => Some('+'),
            '-' | '−' if at == 0 || matches!(previous, 'e' | 'E') => Some('-'),
            '+' if matches!(previous, 'e' | 'E') => Some('+'),
            'e' | 'E' if at > 0 && starts_exponent(after(text, at + 1)) => Some('e'),
            '\u{2009}' | '\u{202f}' | '\u{a0}'
                if starts_with_digit(after(text, at + symbol.len_utf8())) =>
            {
                end = at + symbol.len_utf8();
                continue;
            }
            _ => None,
        };
        let Some(plain) = plain else { break };
        digits.push(plain);
        previous = symbol;
        end = at + symbol.len_utf8();
    }
    let rest = after(text, end);
    if rest.starts_with(',') {
        return None;
    }
    let unsigned = digits.trim_start_matches(['+', '-']);
    let size = crate::decimal::parse(unsigned)?;
    let number = if digits.starts_with('-') { -size } else { size };
    Some((number, rest))
}

fn starts_exponent(rest: &str) -> bool {
    starts_with_digit(rest.strip_prefix(['+', '-', '−']).unwrap_or(rest))
}

fn starts_with_digit(text: &str) -> bool {
    text.as_bytes().first().is_some_and(u8::is_ascii_digit)
}

/// The text from a place on; never out of bounds, which would cost code for a message.
fn after(text: &str, place: usize) -> &str {
    text.get(place..).unwrap_or("")
}

/// Converts an SI value into the unit in which people read it.
#[must_use]
pub fn from_si(value: f64, dimension: Dimension, system: System) -> f64 {
    value / factor(dimension.display_unit(system), dimension)
}

/// Converts a value in the unit in which people read it into SI.
#[must_use]
pub fn to_si(value: f64, dimension: Dimension, system: System) -> f64 {
    value * factor(dimension.display_unit(system), dimension)
}

fn factor(text: &str, dimension: Dimension) -> f64 {
    UNITS
        .iter()
        .find(|u| u.dimension == dimension && u.text == text)
        .map_or(1.0, |u| u.factor)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(text: &str, dimension: Dimension, want: f64) {
        let got = parse(text, dimension).unwrap_or_else(|e| panic!("{text}: {e:?}"));
        assert!(
            (got - want).abs() <= 1e-12 * want.abs(),
            "{text}: got {got}, want {want}"
        );
    }

    #[test]
    fn reads_the_units_that_people_type() {
        close("1850 kg", Dimension::Mass, 1850.0);
        close("1850", Dimension::Mass, 1850.0);
        close("1.85e3 kg", Dimension::Mass, 1850.0);
        close("4080 lb", Dimension::Mass, 4080.0 * 0.453_592_37);
        close("0.6 g", Dimension::Acceleration, 5.886);
        close("5.9 m/s^2", Dimension::Acceleration, 5.9);
        close("5.9m/s2", Dimension::Acceleration, 5.9);
        close("60 mph", Dimension::Speed, 26.8224);
        close("5 %", Dimension::Slope, 0.05);
        close("45 deg", Dimension::Slope, 1.0);
        close("19 in", Dimension::Length, 0.4826);
        close("330 N m", Dimension::Torque, 330.0);
        close("330 Nm", Dimension::Torque, 330.0);
        close("-0.6 g", Dimension::Acceleration, -5.886);
        close("−0.6 g", Dimension::Acceleration, -5.886);
        close("11\u{2009}320 N", Dimension::Force, 11320.0);
        close(
            "0.002045 slug/ft^3",
            Dimension::Density,
            0.002_045 * 515.378_818_393_196,
        );
    }

    #[test]
    fn refuses_what_is_not_a_quantity() {
        for text in [
            "", "kg", "abc", "nan", "NaN kg", "inf", "1e999", "--5", "1,850 kg", "1.2.3",
        ] {
            assert_eq!(
                parse(text, Dimension::Mass),
                Err(UnitError::NotANumber),
                "{text}"
            );
        }
        assert_eq!(
            parse("5 m", Dimension::Mass),
            Err(UnitError::WrongDimension {
                unit: "m".into(),
                measures: Dimension::Length
            })
        );
        assert_eq!(
            parse("5 stone", Dimension::Mass),
            Err(UnitError::UnknownUnit("stone".into()))
        );
    }

    #[test]
    fn every_unit_is_rebuilt_from_its_base_units() {
        let pound_force = POUND_KG * 9.806_65;
        assert!((POUND_FORCE_N - pound_force).abs() < 1e-12);
        close("1 hp", Dimension::Power, 550.0 * FOOT_M * pound_force);
        close("1 mph", Dimension::Speed, 5280.0 * FOOT_M / 3600.0);
        close("1 kWh", Dimension::Energy, 1000.0 * 3600.0);
        close("1 slug", Dimension::Mass, pound_force / FOOT_M);
    }

    #[test]
    fn people_units_convert_there_and_back() {
        for dimension in [
            Dimension::Mass,
            Dimension::Speed,
            Dimension::Slope,
            Dimension::Energy,
        ] {
            for system in [System::Si, System::Us] {
                let there = from_si(12.5, dimension, system);
                assert!(
                    (to_si(there, dimension, system) - 12.5).abs() < 1e-12,
                    "{dimension:?}"
                );
            }
        }
    }
}
