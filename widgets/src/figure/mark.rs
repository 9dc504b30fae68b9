//! The meant things that a scene is made of, and their places.

use super::angle::sin_cos;
use super::force::ForceKind;
use super::palette::Role;
use super::place::{Rect, text_rect};
use super::text_metrics::{GAP, text_width};

/// A place, or a vector, in scene units, y down.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// Short for [`Point`].
pub const fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

impl Point {
    /// This place moved by a vector.
    pub fn plus(self, dx: f64, dy: f64) -> Point {
        at(self.x + dx, self.y + dy)
    }

    /// This place turned about another, anticlockwise as seen on the page.
    pub fn turned(self, centre: Point, angle_rad: f64) -> Point {
        let (sin, cos) = sin_cos(angle_rad);
        let (dx, dy) = (self.x - centre.x, self.y - centre.y);
        at(
            centre.x + dx * cos + dy * sin,
            centre.y - dx * sin + dy * cos,
        )
    }
}

/// Where a text hangs on its place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Anchor {
    /// The text starts there.
    #[default]
    Start,
    /// The text is centred there.
    Middle,
    /// The text ends there.
    End,
}

/// One piece of an outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Piece {
    /// Start here.
    Move(Point),
    /// Straight to.
    Line(Point),
    /// Bézier curve: two control points and the end.
    Curve(Point, Point, Point),
    /// Back to the start.
    Close,
}

/// A text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Label {
    /// Place on the baseline.
    pub at: Point,
    /// How it hangs there.
    pub anchor: Anchor,
    /// Bold value in the colour of `role`.
    pub value: String,
    /// Soft words.
    pub words: String,
    /// Colour of the value.
    pub role: Role,
    /// Size.
    pub size: f64,
    /// Paper-coloured rim, for a text that lies over lines.
    pub rim: bool,
}

/// A meant thing.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A force, to the scale of the scene; `vector_n` has y down.
    ForceArrow {
        /// What it is.
        kind: ForceKind,
        /// Its tail.
        from: Point,
        /// Size and direction in newtons.
        vector_n: Point,
        /// Pinned: drawn as an outline.
        ghost: bool,
    },
    /// A velocity, thin and dashed with an open head; `vector` in scene units.
    VelocityArrow {
        /// Its tail.
        from: Point,
        /// Length and direction.
        vector: Point,
    },
    /// The sense of yaw, three quarters of a circle.
    YawArrow {
        /// Middle.
        centre: Point,
        /// Radius.
        radius: f64,
        /// Sense as seen on the page.
        anticlockwise: bool,
    },
    /// A wheel from the side.
    Wheel {
        /// Hub.
        centre: Point,
        /// Radius of the tyre.
        radius: f64,
    },
    /// A wheel from above.
    WheelAbove {
        /// Middle.
        centre: Point,
        /// Twice the radius.
        length: f64,
        /// Tyre width.
        width: f64,
        /// Anticlockwise as seen on the page.
        angle_rad: f64,
    },
    /// A motor from above.
    Motor {
        /// Middle.
        centre: Point,
        /// Along the car.
        length: f64,
        /// Across the car.
        width: f64,
        /// Anticlockwise as seen on the page.
        angle_rad: f64,
        /// Colour of its axle.
        role: Role,
    },
    /// A brake that holds a wheel, from above: its disc, and the block that grips it.
    Brake {
        /// Middle of the disc.
        centre: Point,
        /// Length of the disc, along the wheel.
        length: f64,
        /// Anticlockwise as seen on the page.
        angle_rad: f64,
    },
    /// A half shaft.
    HalfShaft {
        /// At the motor.
        from: Point,
        /// At the wheel.
        to: Point,
        /// Colour of its axle.
        role: Role,
    },
    /// The centre of gravity.
    CentreOfGravity {
        /// Where.
        at: Point,
        /// Radius of the sign.
        radius: f64,
    },
    /// The body's outline, filled with paper.
    Body(Vec<Piece>),
    /// Lines on the body: windows, doors.
    BodyLines(Vec<Piece>),
    /// The ground, hatched on the right hand of the way from `from` to `to`.
    Ground {
        /// Left end.
        from: Point,
        /// Right end.
        to: Point,
    },
    /// A dimension line with end strokes.
    Dimension {
        /// One end.
        from: Point,
        /// Other end.
        to: Point,
        /// Length left open in the middle, for the label.
        gap: f64,
    },
    /// A helping line, such as from a thing to its dimension line.
    Extension {
        /// One end.
        from: Point,
        /// Other end.
        to: Point,
    },
    /// Ties a label to its sign.
    Leader {
        /// At the sign.
        from: Point,
        /// At the label.
        to: Point,
    },
    /// All the friction that a contact patch has, as a radius.
    FrictionCircle {
        /// Contact patch.
        centre: Point,
        /// Friction force.
        friction_n: f64,
    },
    /// The length of a force.
    ScaleBar {
        /// Left end.
        at: Point,
        /// Force.
        force_n: f64,
    },
    /// The point about which the car turns.
    TurningCentre {
        /// Where.
        at: Point,
    },
    /// A path travelled.
    Path {
        /// Points along it.
        points: Vec<Point>,
    },
    /// What a sliding tyre leaves on the ground.
    Trace {
        /// Points along it.
        points: Vec<Point>,
    },
    /// A bar of a bar chart.
    Bar {
        /// Upper left corner.
        at: Point,
        /// Length.
        width: f64,
        /// Thickness.
        height: f64,
        /// Its colour.
        role: Role,
        /// Chosen: drawn full.
        chosen: bool,
    },
    /// A pinned value, a ring.
    PinnedRing {
        /// Where.
        at: Point,
    },
    /// A line across the bars at a value.
    Reference {
        /// Upper end.
        from: Point,
        /// Lower end.
        to: Point,
    },
    /// A hairline of the grid or between rows.
    Hairline {
        /// One end.
        from: Point,
        /// Other end.
        to: Point,
    },
    /// A text.
    Label(Label),
    /// The frame of the caution.
    CautionBox {
        /// Upper left corner.
        at: Point,
        /// Width.
        width: f64,
        /// Height.
        height: f64,
    },
}

impl Label {
    /// Width by the estimate of [`text_width`].
    pub fn width(&self) -> f64 {
        let gap = if self.value.is_empty() || self.words.is_empty() {
            0.0
        } else {
            GAP
        };
        text_width(&self.value, self.size, true) + gap + text_width(&self.words, self.size, false)
    }

    /// The box that the text fills.
    pub fn rect(&self) -> Rect {
        text_rect(self.at, self.anchor, self.width(), self.size)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn turning_is_anticlockwise_on_the_page() {
        let up = at(1.0, 0.0).turned(at(0.0, 0.0), core::f64::consts::FRAC_PI_2);
        assert!((up.x).abs() < 1e-12 && (up.y + 1.0).abs() < 1e-12);
    }
}
