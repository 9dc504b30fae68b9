//! Drive layouts, named by where the motors are.

use crate::error::Problem;

/// Motors on one axle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AxleDrive {
    /// No motor.
    Undriven,
    /// One motor for both wheels, through a differential.
    OneMotor,
    /// One motor for each wheel.
    MotorPerWheel,
}

impl AxleDrive {
    /// Count of motors.
    #[must_use]
    pub fn motors(self) -> u8 {
        match self {
            Self::Undriven => 0,
            Self::OneMotor => 1,
            Self::MotorPerWheel => 2,
        }
    }
}

/// A drive layout: how many motors drive the front axle and how many the rear.
///
/// ```
/// use axlewright_core::layout::{AxleDrive, Layout};
/// let layout = Layout::from_name("F1R2")?;
/// assert_eq!(layout.rear(), AxleDrive::MotorPerWheel);
/// assert_eq!(layout.motors(), 3);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// One motor on the front axle.
    F1,
    /// One motor on the rear axle.
    R1,
    /// A motor for each front wheel.
    F2,
    /// A motor for each rear wheel.
    R2,
    /// One motor on each axle.
    F1R1,
    /// One motor in front, one for each rear wheel.
    F1R2,
    /// One for each front wheel, one motor behind.
    F2R1,
    /// A motor for each wheel.
    F2R2,
}

impl Layout {
    /// Every layout, fewest motors first.
    pub const ALL: [Self; 8] = [
        Self::F1,
        Self::R1,
        Self::F2,
        Self::R2,
        Self::F1R1,
        Self::F1R2,
        Self::F2R1,
        Self::F2R2,
    ];

    /// Names of all layouts, in the order of [`Layout::ALL`].
    pub const NAMES: &'static [&'static str] =
        &["F1", "R1", "F2", "R2", "F1R1", "F1R2", "F2R1", "F2R2"];

    /// The layout's name.
    #[must_use]
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }

    /// The layout of a name; upper or lower case.
    ///
    /// # Errors
    /// [`Problem::UnknownWord`] lists the known names.
    pub fn from_name(name: &str) -> Result<Self, Problem> {
        Self::ALL
            .into_iter()
            .find(|layout| layout.name().eq_ignore_ascii_case(name.trim()))
            .ok_or_else(|| Problem::UnknownWord {
                field: "layout".into(),
                value: name.chars().take(40).collect(),
                allowed: Self::NAMES.to_vec(),
            })
    }

    /// Motors on the front axle.
    #[must_use]
    pub fn front(self) -> AxleDrive {
        match self {
            Self::R1 | Self::R2 => AxleDrive::Undriven,
            Self::F1 | Self::F1R1 | Self::F1R2 => AxleDrive::OneMotor,
            Self::F2 | Self::F2R1 | Self::F2R2 => AxleDrive::MotorPerWheel,
        }
    }

    /// Motors on the rear axle.
    #[must_use]
    pub fn rear(self) -> AxleDrive {
        match self {
            Self::F1 | Self::F2 => AxleDrive::Undriven,
            Self::R1 | Self::F1R1 | Self::F2R1 => AxleDrive::OneMotor,
            Self::R2 | Self::F1R2 | Self::F2R2 => AxleDrive::MotorPerWheel,
        }
    }

    /// Count of motors.
    #[must_use]
    pub fn motors(self) -> u8 {
        self.front().motors() + self.rear().motors()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_motors_agree() {
        for layout in Layout::ALL {
            let digit = |axle: char| {
                let after = layout.name().split(axle).nth(1).unwrap_or("");
                after
                    .chars()
                    .next()
                    .and_then(|d| d.to_digit(10))
                    .unwrap_or(0)
            };
            assert_eq!(u32::from(layout.front().motors()), digit('F'), "{layout:?}");
            assert_eq!(u32::from(layout.rear().motors()), digit('R'), "{layout:?}");
            assert_eq!(Layout::from_name(layout.name()), Ok(layout));
        }
        assert!(Layout::from_name("F3").is_err());
    }
}
