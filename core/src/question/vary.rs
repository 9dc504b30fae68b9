//! Which values a seed may give to an input or to a target.

use super::draw::Draw;
use crate::{format, math};

/// One value that the seed draws.
#[derive(Debug)]
pub struct Vary {
    /// Path of the input; for a target, of the output.
    pub path: &'static str,
    /// The values that may come.
    pub spread: Spread,
}

/// The values that may come.
#[derive(Debug)]
pub enum Spread {
    /// Whole multiples of a step, over a divisor: 20 to 90 by 5 over 100 is 0.20, 0.25, … 0.90.
    Steps {
        /// First, last and step.
        of: (i32, i32, i32),
        /// The divisor.
        over: i32,
        /// Unit of the quotient, as typed.
        unit: &'static str,
    },
    /// Percentages of what the scenario has, rounded: first, last and step. They
    /// suit a vehicle of any size.
    Percent(i32, i32, i32),
    /// Words.
    Words(&'static [&'static str]),
}

impl Vary {
    /// Steps of a unit.
    pub(super) const fn steps(
        path: &'static str,
        of: (i32, i32, i32),
        over: i32,
        unit: &'static str,
    ) -> Self {
        Self {
            path,
            spread: Spread::Steps { of, over, unit },
        }
    }

    /// Percentages of what the scenario has.
    pub(super) const fn percent(path: &'static str, first: i32, last: i32, step: i32) -> Self {
        Self {
            path,
            spread: Spread::Percent(first, last, step),
        }
    }

    /// Words.
    pub(super) const fn words(path: &'static str, words: &'static [&'static str]) -> Self {
        Self {
            path,
            spread: Spread::Words(words),
        }
    }

    fn count(&self) -> usize {
        match self.spread {
            Spread::Steps { of, .. } => steps_of(of),
            Spread::Percent(first, last, step) => steps_of((first, last, step)),
            Spread::Words(words) => words.len(),
        }
    }

    /// The drawn value as a text that a scenario reads; the middle of the spread without a seed.
    /// `now` is what there is now, SI; a percentage of nothing is nothing.
    pub(super) fn text(&self, draw: Option<&mut Draw>, now: Option<f64>) -> Option<String> {
        let count = self.count();
        let at = draw.map_or(count / 2, |draw| draw.below(count));
        let nth = |first: i32, step: i32| f64::from(first) + at as f64 * f64::from(step);
        match self.spread {
            Spread::Steps { of, over, unit } => {
                let value = nth(of.0, of.2) / f64::from(over);
                Some(format::plain(value) + " " + unit)
            }
            Spread::Percent(first, _, step) => {
                Some(format::plain(rounded(now? * nth(first, step) / 100.0)))
            }
            Spread::Words(words) => words.get(at).map(|word| (*word).into()),
        }
    }
}

fn steps_of((first, last, step): (i32, i32, i32)) -> usize {
    ((last - first) / step + 1) as usize
}

/// A value rounded to hundredths, or to two digits where it is smaller than a tenth, and to no more
/// than three digits: as vehicles are told.
fn rounded(value: f64) -> f64 {
    let mut exponent = -2;
    while value.abs() * math::power_of_ten(-exponent) < 10.0 && exponent > -12 {
        exponent -= 1;
    }
    while value.abs() * math::power_of_ten(-exponent) >= 1000.0 {
        exponent += 1;
    }
    // Divided rather than multiplied where there are decimals: the nearest double to 2.97 comes out.
    if exponent < 0 {
        let scale = math::power_of_ten(-exponent);
        math::round(value * scale) / scale
    } else {
        let scale = math::power_of_ten(exponent);
        math::round(value / scale) * scale
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_are_round_and_lie_in_the_spread() {
        let steps = Vary::steps("x", (20, 90, 5), 100, "g");
        let percent = Vary::percent("x", 80, 120, 10);
        let mut draw = Draw::of(3, "a", "b");
        for _ in 0..200 {
            let text = steps.text(Some(&mut draw), None).unwrap();
            let value: f64 = text.trim_end_matches(" g").parse().unwrap();
            assert!((0.2..=0.9).contains(&value) && text.len() <= 6, "{text}");
            let text = percent.text(Some(&mut draw), Some(2.86)).unwrap();
            assert!(
                ["2.29", "2.57", "2.86", "3.15", "3.43"].contains(&&*text),
                "{text}"
            );
        }
        assert_eq!(steps.text(None, None).as_deref(), Some("0.55 g"));
        assert_eq!(percent.text(None, None), None);
    }

    #[test]
    fn values_are_told_as_vehicles_are() {
        for (value, want) in [
            (1850.0 * 1.13, 2090.0),
            (0.6142, 0.61),
            (2.974, 2.97),
            (-25_367.0, -25_400.0),
            (0.012_345, 0.012),
            (999.9, 1000.0),
            (0.0, 0.0),
        ] {
            assert!((rounded(value) - want).abs() < 1e-12, "{value}");
        }
    }
}
