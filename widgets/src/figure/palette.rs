//! Colours by meaning, from the Okabe-Ito palette, in four themes.
//!
//! Colour is never the only sign: loads stand upright and are solid, inertia is
//! dashed, friction has its circle, lines in a chart differ in dash and marker.

/// What a colour stands for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Role {
    /// Outlines and main text.
    #[default]
    Ink,
    /// Soft text.
    Soft,
    /// Hairlines: grid, dimension lines, hatching.
    Hair,
    /// Window lines and friction circles.
    Fine,
    /// The background.
    Paper,
    /// Front axle.
    Front,
    /// Rear axle.
    Rear,
    /// Tractive force.
    Tractive,
    /// Inertia and yaw.
    Inertia,
}

/// Which set of colours.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// White paper, on a screen.
    #[default]
    Light,
    /// Near-black paper.
    Dark,
    /// White paper, printed: black ink, hairlines that a printer holds.
    Print,
    /// Custom properties of the page (`--axle-front` …), the light colours as fallback.
    Live,
}

/// All roles, in the order of the tables below.
pub const ROLES: [Role; 9] = [
    Role::Ink,
    Role::Soft,
    Role::Hair,
    Role::Fine,
    Role::Paper,
    Role::Front,
    Role::Rear,
    Role::Tractive,
    Role::Inertia,
];

const LIGHT: [&str; 9] = [
    "#1d2433", "#5b6477", "#c9cfd9", "#868fa1", "#ffffff", "#0072B2", "#D55E00", "#009E73",
    "#7a4b8f",
];
const LIGHT_TEXT: [&str; 9] = [
    "#1d2433", "#5b6477", "#5b6477", "#5b6477", "#ffffff", "#0072B2", "#b84f00", "#007a58",
    "#7a4b8f",
];
const DARK: [&str; 9] = [
    "#e8ebf1", "#a9b2c3", "#3d4656", "#737d91", "#12161f", "#56B4E9", "#ef7a26", "#2fbf93",
    "#b98ad0",
];
const DARK_TEXT: [&str; 9] = [
    "#e8ebf1", "#a9b2c3", "#a9b2c3", "#a9b2c3", "#12161f", "#56B4E9", "#f08a3e", "#2fbf93",
    "#c39ad8",
];
const PRINT: [&str; 9] = [
    "#000000", "#404040", "#bcbcbc", "#777777", "#ffffff", "#0065a0", "#d55e00", "#008560",
    "#5d3372",
];
const PRINT_TEXT: [&str; 9] = [
    "#000000", "#404040", "#404040", "#404040", "#ffffff", "#0065a0", "#b04a00", "#00704f",
    "#5d3372",
];
const LIVE: [&str; 9] = [
    "var(--axle-ink, #1d2433)",
    "var(--axle-soft, #5b6477)",
    "var(--axle-hair, #c9cfd9)",
    "var(--axle-fine, #868fa1)",
    "var(--axle-paper, #ffffff)",
    "var(--axle-front, #0072B2)",
    "var(--axle-rear, #D55E00)",
    "var(--axle-tractive, #009E73)",
    "var(--axle-inertia, #7a4b8f)",
];
const LIVE_TEXT: [&str; 9] = [
    "var(--axle-ink, #1d2433)",
    "var(--axle-soft, #5b6477)",
    "var(--axle-soft, #5b6477)",
    "var(--axle-soft, #5b6477)",
    "var(--axle-paper, #ffffff)",
    "var(--axle-front-text, #0072B2)",
    "var(--axle-rear-text, #b84f00)",
    "var(--axle-tractive-text, #007a58)",
    "var(--axle-inertia-text, #7a4b8f)",
];

impl Role {
    /// Its place in [`ROLES`].
    pub fn index(self) -> usize {
        self as usize
    }
}

#[cfg(not(target_arch = "wasm32"))]
impl Theme {
    /// Its word on the command line; none for the usual one.
    pub fn word(self) -> Option<&'static str> {
        match self {
            Theme::Light | Theme::Live => None,
            Theme::Dark => Some("dark"),
            Theme::Print => Some("print"),
        }
    }
}

impl Theme {
    /// Colour for strokes and fills, as a CSS colour.
    pub fn stroke(self, role: Role) -> &'static str {
        let table = match self {
            Theme::Light => &LIGHT,
            Theme::Dark => &DARK,
            Theme::Print => &PRINT,
            Theme::Live => &LIVE,
        };
        table[role.index()]
    }

    /// Colour for text, which needs more contrast than a stroke.
    pub fn text(self, role: Role) -> &'static str {
        let table = match self {
            Theme::Light => &LIGHT_TEXT,
            Theme::Dark => &DARK_TEXT,
            Theme::Print => &PRINT_TEXT,
            Theme::Live => &LIVE_TEXT,
        };
        table[role.index()]
    }

    /// The same as numbers, for a canvas. The live theme gives the light ones.
    pub fn palette(self) -> Palette {
        let theme = if self == Theme::Live {
            Theme::Light
        } else {
            self
        };
        let mut palette = Palette {
            stroke: [(0, 0, 0); 9],
            text: [(0, 0, 0); 9],
        };
        for role in ROLES {
            palette.stroke[role.index()] = rgb(theme.stroke(role));
            palette.text[role.index()] = rgb(theme.text(role));
        }
        palette
    }
}

/// Colours as red, green and blue. A page may overwrite single ones.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Palette {
    /// Strokes and fills, in the order of [`ROLES`].
    pub stroke: [(u8, u8, u8); 9],
    /// Text, in the order of [`ROLES`].
    pub text: [(u8, u8, u8); 9],
}

/// Reads "#rrggbb"; anything else is black.
pub fn rgb(hex: &str) -> (u8, u8, u8) {
    let value = hex
        .strip_prefix('#')
        .filter(|digits| digits.len() == 6)
        .and_then(|digits| u32::from_str_radix(digits, 16).ok())
        .unwrap_or(0);
    ((value >> 16) as u8, (value >> 8) as u8, value as u8)
}

/// Contrast ratio of two colours after WCAG 2.2, from 1 to 21.
pub fn contrast(one: &str, other: &str) -> f64 {
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// Relative luminance after WCAG 2.2, from 0 to 1.
pub fn luminance(hex: &str) -> f64 {
    let (r, g, b) = rgb(hex);
    // L = 0.2126 R + 0.7152 G + 0.0722 B, each made linear
    0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b)
}

fn linear(channel: u8) -> f64 {
    let c = f64::from(channel) / 255.0;
    if c <= 0.04045 {
        c / 12.92
    } else {
        axlewright_core::math::power((c + 0.055) / 1.055, 2.4)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FIXED: [Theme; 3] = [Theme::Light, Theme::Dark, Theme::Print];
    const FORCES: [Role; 4] = [Role::Front, Role::Rear, Role::Tractive, Role::Inertia];

    #[test]
    fn black_on_white_is_21() {
        assert!((contrast("#000000", "#ffffff") - 21.0).abs() < 1e-9);
    }

    #[test]
    fn strokes_that_mean_something_have_3_to_1() {
        for theme in FIXED {
            let paper = theme.stroke(Role::Paper);
            for role in [Role::Ink, Role::Soft, Role::Fine]
                .into_iter()
                .chain(FORCES)
            {
                let ratio = contrast(theme.stroke(role), paper);
                assert!(ratio >= 3.0, "{theme:?} {role:?} {ratio:.2}");
            }
        }
    }

    #[test]
    fn text_has_4_5_to_1() {
        for theme in FIXED {
            let paper = theme.stroke(Role::Paper);
            for role in ROLES.into_iter().filter(|role| *role != Role::Paper) {
                let ratio = contrast(theme.text(role), paper);
                assert!(ratio >= 4.5, "{theme:?} {role:?} {ratio:.2}");
            }
        }
    }

    #[test]
    fn front_and_rear_stay_apart_in_greyscale_print() {
        let ratio = contrast(
            Theme::Print.stroke(Role::Front),
            Theme::Print.stroke(Role::Rear),
        );
        assert!(ratio >= 1.5, "{ratio:.2}");
    }

    #[test]
    fn live_falls_back_to_light() {
        for role in ROLES {
            assert!(Theme::Live.stroke(role).contains(Theme::Light.stroke(role)));
            assert!(Theme::Live.text(role).contains(Theme::Light.text(role)));
        }
    }

    #[test]
    fn roles_index_their_tables() {
        for (index, role) in ROLES.into_iter().enumerate() {
            assert_eq!(role.index(), index);
        }
    }
}
