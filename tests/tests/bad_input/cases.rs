//! Scenario files that no topic can use, and what must be said of each.

/// A scenario file that is refused.
pub(crate) struct Case<'a> {
    /// Name of the file; its ending says what it is.
    pub(crate) file: &'a str,
    /// What is in it.
    pub(crate) bytes: &'a [u8],
    /// What the line on standard error must name: field, value, allowed.
    pub(crate) names: &'a [&'a str],
}

const fn case<'a>(file: &'a str, text: &'a str, names: &'a [&'a str]) -> Case<'a> {
    Case {
        file,
        bytes: text.as_bytes(),
        names,
    }
}

/// Files that no topic can use.
pub(crate) const CASES: &[Case] = &[
    case(
        "wrong_unit.toml",
        "[vehicle]\nmass = \"1850 m\"\n",
        &[
            "vehicle.mass",
            "1850 m",
            "length",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "unknown_unit.toml",
        "[vehicle]\nmass = \"1850 stone\"\n",
        &[
            "vehicle.mass",
            "1850 stone",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "text_for_a_number.toml",
        "[vehicle]\nmass = \"heavy\"\n",
        &[
            "vehicle.mass",
            "heavy",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "zero_mass.toml",
        "[vehicle]\nmass = \"0 kg\"\n",
        &[
            "vehicle.mass",
            "0 kg",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "negative_mass.toml",
        "[vehicle]\nmass = -1850\n",
        &[
            "vehicle.mass",
            "-1850 kg",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "sticky.toml",
        "[vehicle]\nbase = \"esker\"\n[surface]\nfriction_peak = 1e9\n",
        &["surface.friction_peak", "1000000000", "0.001", "5"],
    ),
    case(
        "sticky_text.toml",
        "[vehicle]\nbase = \"esker\"\n[surface]\nfriction_peak = \"1e9\"\n",
        &["surface.friction_peak", "1e9", "0.001", "5"],
    ),
    case(
        "nan.toml",
        "[vehicle]\nmass = nan\n",
        &[
            "vehicle.mass",
            "NaN",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "nan_text.toml",
        "[vehicle]\nmass = \"nan\"\n",
        &[
            "vehicle.mass",
            "nan",
            "10\u{2009}kg",
            "100\u{2009}000\u{2009}kg",
        ],
    ),
    case(
        "infinite.toml",
        "[vehicle]\nwheelbase = inf\n",
        &["vehicle.wheelbase", "0.2\u{2009}m", "20\u{2009}m"],
    ),
    case(
        "overflow.json",
        "{\"vehicle\": {\"mass\": \"1e999 kg\"}}",
        &["vehicle.mass", "1e999 kg", "10\u{2009}kg"],
    ),
    case(
        "table_for_a_number.toml",
        "[vehicle.mass]\nvalue = 5\n",
        &["vehicle.mass", "10\u{2009}kg"],
    ),
    case(
        "yes_for_a_number.json",
        "{\"vehicle\": {\"mass\": true}}",
        &["vehicle.mass", "true", "10\u{2009}kg"],
    ),
    case(
        "unknown_field.toml",
        "[vehicle]\nweelbase = \"2.8 m\"\n",
        &["vehicle.weelbase", "vehicle.wheelbase"],
    ),
    case(
        "unknown_section.toml",
        "[vehikle]\nmass = \"1850 kg\"\n",
        &["vehikle"],
    ),
    case(
        "unknown_vehicle.toml",
        "[vehicle]\nbase = \"lorry\"\n",
        &[
            "vehicle.base",
            "lorry",
            "kame",
            "esker",
            "moraine",
            "corrie",
        ],
    ),
    case(
        "unknown_layout.toml",
        "layouts = [\"F1\", \"R9\"]\n[vehicle]\nbase = \"esker\"\n",
        &["layouts", "R9", "F1", "F2R2"],
    ),
    case(
        "unknown_surface.toml",
        "[vehicle]\nbase = \"esker\"\n[surface]\nkind = \"mud\"\n",
        &["surface.kind", "mud", "gravel", "ice"],
    ),
    case("empty.toml", "", &["empty"]),
    case("blank.toml", " \n\t\n", &["empty"]),
    case("only_a_comment.toml", "# nothing here\n", &["empty"]),
    case("empty.json", "{}", &["empty"]),
    case(
        "broken.toml",
        "[vehicle]\nmass = \"1850 kg\nwheelbase = 2.8\n",
        &["broken.toml", "line 2", "TOML or JSON"],
    ),
    case(
        "twice.toml",
        "[vehicle]\nmass = 1850\nmass = 1900\n",
        &["twice.toml", "line 3", "TOML or JSON"],
    ),
    case(
        "broken.json",
        "{\"vehicle\": {\"mass\": 1850,}}",
        &["broken.json", "line 1", "TOML or JSON"],
    ),
    case(
        "nan.json",
        "{\"vehicle\": {\"mass\": NaN}}",
        &["nan.json", "line 1", "TOML or JSON"],
    ),
    Case {
        file: "binary.toml",
        bytes: &[0x7f, b'E', b'L', b'F', 0, 0xff, 0xfe, 0, 1, 2, 3],
        names: &["binary.toml", "UTF-8"],
    },
    Case {
        file: "binary.json",
        bytes: &[0, 1, 2, b'\n', 3, 27, b'[', b'2', b'J'],
        names: &["binary.json", "line 1", "TOML or JSON"],
    },
];
