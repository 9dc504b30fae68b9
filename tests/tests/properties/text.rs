//! What is written can be read back.

use crate::scenarios::{Reach, config, partial, topic};
use axlewright_core::typed::with_point;
use axlewright_core::units::{self, Dimension, System, UnitError};
use axlewright_core::words::Lang;
use axlewright_core::{Scenario, format};
use axlewright_tests::assert_equal_relative;
use proptest::prelude::*;

const DIMENSIONS: [Dimension; 30] = [
    Dimension::Ratio,
    Dimension::Mass,
    Dimension::Length,
    Dimension::Area,
    Dimension::Speed,
    Dimension::Acceleration,
    Dimension::Force,
    Dimension::Torque,
    Dimension::Power,
    Dimension::Energy,
    Dimension::Angle,
    Dimension::Slope,
    Dimension::Frequency,
    Dimension::Density,
    Dimension::Time,
    Dimension::Inertia,
    Dimension::Rotation,
    Dimension::Volume,
    Dimension::PowerDensity,
    Dimension::Distance,
    Dimension::StoredEnergy,
    Dimension::EnergyPerDistance,
    Dimension::YawRate,
    Dimension::Pressure,
    Dimension::WornMass,
    Dimension::WearPerEnergy,
    Dimension::CorneringStiffness,
    Dimension::SteerGradient,
    Dimension::AccelerationGain,
    Dimension::YawGain,
];

/// The core reads what people type, up to 15 digits, exactly, and longer numbers to a few units in the
/// last place: reading them exactly would cost the browser 40 kB.
const ULPS: f64 = 1e-15;

/// Units of an angle are no factor for a slope, which is a tangent.
fn is_angle(unit: &str) -> bool {
    matches!(unit, "°" | "deg" | "rad")
}

proptest! {
    #![proptest_config(config(500))]

    #[test]
    fn a_quantity_in_any_unit_is_a_factor_times_its_number(
        number in -1e6..1e6,
        dimension in prop::sample::select(&DIMENSIONS),
    ) {
        for unit in dimension.units() {
            if dimension == Dimension::Slope && is_angle(unit) {
                continue;
            }
            let one = units::parse(&format!("1 {unit}"), dimension).unwrap();
            let got = units::parse(&format!("{number} {unit}"), dimension).unwrap();
            assert_equal_relative(unit, &format!("{number}"), (got, number * one), 1e-15, 0.0);
            let tight = units::parse(&format!("{number}{unit}"), dimension);
            prop_assert_eq!(tight, Ok(got), "{}", unit);
        }
        let bare = units::parse(&format!("{number}"), dimension).unwrap();
        assert_equal_relative("a bare number is SI", "", (bare, number), ULPS, 0.0);
    }

    /// What people read can be pasted back, with its thin spaces and its true minus sign.
    #[test]
    fn a_printed_quantity_can_be_pasted_back(
        value in prop_oneof![-1e5..1e5, -1.0..1.0],
        dimension in prop::sample::select(&DIMENSIONS),
        system in prop::sample::select(&[System::Si, System::Us]),
        digits in 3_u8..14,
        lang in prop::sample::select(&Lang::ALL),
    ) {
        let text = format::quantity(value, dimension, system, digits, lang);
        let got = with_point(&text, lang).and_then(|plain| units::parse(&plain, dimension));
        prop_assert!(got.is_ok(), "{} {:?}", text, got);
        let rounding = 5.0 * 10_f64.powi(-i32::from(digits));
        assert_equal_relative(&text, "pasted back", (got.unwrap_or(f64::NAN), value), rounding, 0.0);
    }

    /// A unit of another kind is refused and said what it measures.
    #[test]
    fn a_wrong_dimension_is_named(
        dimension in prop::sample::select(&DIMENSIONS),
        other in prop::sample::select(&DIMENSIONS),
    ) {
        for unit in other.units() {
            let shared = dimension.units().any(|u| u == unit);
            let got = units::parse(&format!("5 {unit}"), dimension);
            if shared {
                prop_assert!(got.is_ok());
            } else {
                let named = matches!(&got, Err(UnitError::WrongDimension { unit: typed, .. }) if typed == unit);
                prop_assert!(named, "5 {} as {:?}: {:?}", unit, dimension, got);
            }
        }
    }

    #[test]
    fn no_text_makes_the_reader_stumble(text in ".{0,40}", dimension in prop::sample::select(&DIMENSIONS)) {
        if let Ok(value) = units::parse(&text, dimension) {
            prop_assert!(value.is_finite(), "{:?} read as {}", text, value);
        }
        for lang in Lang::ALL {
            if let Ok(plain) = with_point(&text, lang) {
                // Nothing but a mark is another.
                prop_assert_eq!(plain.replace('.', ","), text.trim().replace('.', ","));
            }
        }
    }

    #[test]
    fn fifteen_digits_are_read_as_the_standard_library_reads_them(
        digits in 0_u64..1_000_000_000_000_000,
        decimals in 0_u32..16,
        sign in prop::sample::select(&["", "-", "+", "−"]),
    ) {
        let text = format!("{digits:016}");
        let (whole, fraction) = text.split_at(text.len() - decimals as usize);
        let text = format!("{whole}.{fraction}");
        let exact: f64 = text.parse().unwrap();
        let exact = if matches!(sign, "-" | "−") { -exact } else { exact };
        prop_assert_eq!(units::parse(&format!("{sign}{text}"), Dimension::Ratio), Ok(exact));
    }

    #[test]
    fn any_decimal_is_read_to_a_few_units_in_the_last_place(
        text in "[0-9]{1,25}(\\.[0-9]{0,25})?(e-?[0-9]{1,2})?"
    ) {
        let exact: f64 = text.parse().unwrap();
        let got = units::parse(&text, Dimension::Ratio).unwrap();
        assert_equal_relative(&text, "read", (got, exact), ULPS, 0.0);
    }

    /// Texts come back as they were, numbers to a few units in the last place; TOML and JSON keep the whole scenario.
    #[test]
    fn a_scenario_can_be_written_and_read_back(
        scenario in prop_oneof![
            partial(topic("load_transfer"), Reach::Accepted),
            partial(topic("traction"), Reach::Accepted),
            partial(topic("motor_split"), Reach::Accepted),
            partial(topic("launch"), Reach::Accepted),
            partial(topic("cornering"), Reach::Accepted),
            partial(topic("turn_in_place"), Reach::Accepted),
            partial(topic("idle_drag"), Reach::Accepted),
            partial(topic("packaging"), Reach::Accepted),
            partial(topic("choice"), Reach::Accepted),
        ]
    ) {
        if scenario == Scenario::default() {
            return Ok(());
        }
        let json = serde_json::to_string(&scenario).unwrap();
        let from_json: Scenario = serde_json::from_str(&json).unwrap();
        same(&from_json, &scenario);
        let text = toml::to_string(&scenario).unwrap();
        let from_toml: Scenario = toml::from_str(&text).unwrap();
        same(&from_toml, &scenario);
        prop_assert_eq!(&from_toml, &from_json);
    }
}

fn same(got: &Scenario, want: &Scenario) {
    let texts = |scenario: &Scenario| -> Vec<_> {
        let texts = scenario.entries();
        texts.map(|(path, text)| (path, text.to_owned())).collect()
    };
    assert_eq!(texts(got), texts(want));
    assert_eq!(got.layouts(), want.layouts());
    for (path, _) in want.entries() {
        assert_eq!(got.word(path), want.word(path), "{path}");
        if let Some(number) = want.given_number(path) {
            let pair = (got.given_number(path).unwrap(), number);
            assert_equal_relative(path, "written and read back", pair, ULPS, 0.0);
        }
    }
}
