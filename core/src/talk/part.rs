//! The parts of a figure that a talk reveals one by one.

/// A part of a figure. The order is that in which a hand would draw them on a board.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// Ground and dimensions that the rest stands on.
    Ground,
    /// The wheels.
    Wheels,
    /// The outline of the body.
    Body,
    /// The motors and their half shafts.
    Motors,
    /// The centre of gravity.
    Cg,
    /// The inertial force, and what turns the car.
    Inertia,
    /// The axle loads.
    Loads,
    /// The tractive forces.
    Tractive,
    /// The friction circles.
    Circles,
    /// Velocities, paths and the turning centre.
    Motion,
    /// Dimension lines and their extensions.
    Dimensions,
    /// Words and values beside the things.
    Labels,
    /// The headline, which is the finding.
    Headline,
    /// The working below the figure.
    Working,
}

impl Part {
    /// Every part, in the order of drawing.
    pub const ALL: [Self; 14] = [
        Self::Ground,
        Self::Wheels,
        Self::Body,
        Self::Motors,
        Self::Cg,
        Self::Inertia,
        Self::Loads,
        Self::Tractive,
        Self::Circles,
        Self::Motion,
        Self::Dimensions,
        Self::Labels,
        Self::Headline,
        Self::Working,
    ];

    /// Its word in a talk file.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Ground => "ground",
            Self::Wheels => "wheels",
            Self::Body => "body",
            Self::Motors => "motors",
            Self::Cg => "cg",
            Self::Inertia => "inertial_force",
            Self::Loads => "axle_loads",
            Self::Tractive => "tractive_forces",
            Self::Circles => "friction_circles",
            Self::Motion => "motion",
            Self::Dimensions => "dimensions",
            Self::Labels => "labels",
            Self::Headline => "headline",
            Self::Working => "working",
        }
    }
}

/// A set of parts.
///
/// ```
/// use axlewright_core::talk::{Part, Parts};
/// let parts = Parts::NONE.with(Part::Body);
/// assert!(parts.has(Part::Body) && !parts.has(Part::Cg));
/// assert_eq!(parts.words(), "body");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Parts(u16);

impl Parts {
    /// No part.
    pub const NONE: Self = Self(0);
    /// Every part of a figure; the working stands below it and is asked for by name.
    pub const FIGURE: Self = Self((1 << Part::Working as u16) - 1);

    /// This set and a part more.
    #[must_use]
    pub const fn with(self, part: Part) -> Self {
        Self(self.0 | 1 << part as u16)
    }

    /// Whether the whole figure is drawn.
    #[must_use]
    pub const fn has_whole_figure(self) -> bool {
        self.0 & Self::FIGURE.0 == Self::FIGURE.0
    }

    /// Whether a part is among them.
    #[must_use]
    pub const fn has(self, part: Part) -> bool {
        self.0 & (1 << part as u16) != 0
    }

    /// The words of the parts, in the order of drawing, with a space between.
    #[must_use]
    pub fn words(self) -> String {
        let named: Vec<&str> = Part::ALL
            .into_iter()
            .filter(|part| self.has(*part))
            .map(Part::word)
            .collect();
        named.join(" ")
    }

    /// The parts of words with spaces or commas between; `all` for every part of
    /// the figure. The word that is not
    /// known comes back.
    ///
    /// # Errors
    /// The first word that names no part.
    pub fn read(words: &str) -> Result<Self, &str> {
        let mut parts = Self::NONE;
        for word in words.split([' ', ',']).filter(|word| !word.is_empty()) {
            if word == "all" {
                parts = Self(parts.0 | Self::FIGURE.0);
                continue;
            }
            let plain = word.replace('-', "_");
            let part = Part::ALL.into_iter().find(|part| part.word() == plain);
            parts = parts.with(part.ok_or(word)?);
        }
        Ok(parts)
    }
}
