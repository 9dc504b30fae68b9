//! Tables that `plot` reads: whatever stands in them, there is a plot or a refusal of one line.
//!
//! A table is the one that a study wrote, with pieces put in, taken out and written over at random. Which
//! code an input reaches does not lead the tries, as it does for the fuzz targets.

use crate::scenarios::{config, topic};
use axlewright_core::units::System;
use axlewright_core::words::Lang;
use axlewright_site::study::{PlotAsked, PlotKind, plot};
use axlewright_widgets::figure::svg::FILE_FONT;
use axlewright_widgets::figure::{SvgOptions, Theme};
use proptest::prelude::*;
use std::time::Instant;

const HEAD: &str =
    "row,vehicle.cg_height,surface.grade,limits.R1.acceleration,limits.R1.limited_by,problem\r\n";

/// What is put in: marks of the format, numbers at the ends, names of columns, markup, what moves a cursor.
const PIECES: &[&str] = &[
    "",
    ",",
    "\"",
    "\r\n",
    "\n",
    "NaN",
    "inf",
    "-inf",
    "1e308",
    "-1e308",
    "1.7976931348623157e308",
    "5e-324",
    "0",
    "-0",
    "1e999",
    "0x10",
    "\u{0}",
    "\u{1b}[31m",
    "\u{202e}",
    "é",
    "<script>alert(1)</script>",
    "]]>",
    "--",
    "&amp;",
    "rear_slip",
    "vehicle.mass",
    "limits.*.acceleration",
    "limits.R9.acceleration",
    "row",
    "problem",
    "layouts",
];

/// Where, from 0 to 1; how many bytes are written over; what stands there then.
type Edit = (f64, usize, &'static str);

fn edited(edits: &[Edit]) -> Vec<u8> {
    let mut table = HEAD.as_bytes().to_vec();
    for row in 0..12 {
        let (height, grade) = (0.4 + 0.1 * f64::from(row / 4), 0.05 * f64::from(row % 4));
        let line = format!(
            "{row},{height},{grade},{},rear_slip,\r\n",
            6.0 + height - 9.0 * grade
        );
        table.extend_from_slice(line.as_bytes());
    }
    for (place, over, piece) in edits {
        let from = (place * table.len() as f64) as usize;
        let to = (from + over).min(table.len());
        table.splice(from..to, piece.bytes());
    }
    table
}

fn column() -> impl Strategy<Value = Option<&'static str>> {
    prop_oneof![
        3 => Just(None),
        1 => prop::sample::select(HEAD.trim().split(',').collect::<Vec<_>>()).prop_map(Some),
        1 => prop::sample::select(PIECES).prop_map(Some),
    ]
}

proptest! {
    #![proptest_config(config(3000))]

    #[test]
    fn any_table_is_plotted_or_refused_in_a_line(
        edits in prop::collection::vec((0.0..=1.0, 0_usize..40, prop::sample::select(PIECES)), 0..6),
        kind in prop::sample::select(&[PlotKind::Contour, PlotKind::Scatter, PlotKind::Parallel][..]),
        columns in (column(), column(), column()),
        only in prop::option::of((column(), prop::sample::select(PIECES))),
        width in 100.0..900.0,
    ) {
        let table = edited(&edits);
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("table.csv");
        std::fs::write(&path, &table).unwrap();
        let only = only.map(|(name, value)| (name.unwrap_or_default().to_owned(), value.to_owned()));
        let asked = PlotAsked {
            kind,
            x: columns.0,
            y: columns.1,
            z: columns.2,
            only: only.into_iter().collect(),
            lang: Lang::English,
            system: System::Si,
            size: (width, None),
        };
        let options = SvgOptions {
            prefix: "plot",
            theme: Theme::Light,
            font_family: FILE_FONT,
            metadata: "",
            sized: true,
        };
        let case = String::from_utf8_lossy(&table);
        let began = Instant::now();
        match plot(topic("traction"), &path, &asked, &options) {
            Ok(plotted) => {
                prop_assert!(plotted.svg.starts_with("<svg"), "{:?}", case);
                prop_assert!(!plotted.svg.contains("<script"), "{:?}", case);
                for wrong in ["NaN", "\"inf", "-inf", " inf"] {
                    prop_assert!(!plotted.svg.contains(wrong), "{}: {:?}", wrong, case);
                }
            }
            Err(error) => {
                let told = error.to_string();
                prop_assert!(!told.is_empty(), "{:?}", case);
                prop_assert!(!told.contains(char::is_control), "{:?}: {:?}", told, case);
            }
        }
        prop_assert!(began.elapsed().as_secs() < 10, "{:?}: {:?}", began.elapsed(), case);
    }
}
