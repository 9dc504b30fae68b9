//! Designs: which values a row of a study has, from its number alone.

use super::StudyError;
use super::plan::{Axis, Values};

/// How a study fills the space of its inputs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Design {
    /// Every combination of the values; the last input varies first.
    Grid,
    /// So many points, each input stratified: a Latin hypercube.
    ///
    /// Source: M. D. McKay, R. J. Beckman, W. J. Conover, A Comparison of Three Methods for Selecting
    /// Values of Input Variables, Technometrics 21 (1979) (from memory).
    Latin {
        /// Count of points.
        points: u64,
        /// The same seed gives the same points.
        seed: u64,
    },
}

/// The value of an input in a row: an SI number, or the position of a word.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Level {
    Number(f64),
    Word(usize),
}

impl Design {
    /// Count of rows.
    ///
    /// # Errors
    /// [`StudyError::Refused`] where a grid has more than can be counted.
    pub(super) fn rows(self, axes: &[Axis], most: u64) -> Result<u64, StudyError> {
        let rows = match self {
            Self::Latin { points, .. } => Some(points),
            Self::Grid => axes
                .iter()
                .try_fold(1_u64, |rows, axis| rows.checked_mul(axis.values.count())),
        };
        rows.filter(|rows| (1..=most).contains(rows))
            .ok_or_else(|| {
                let value = rows.map_or_else(|| "beyond counting".into(), |rows| rows.to_string());
                StudyError::refused("rows", value, format!("1 to {most} rows"))
            })
    }

    /// The values of a row, one for each input.
    pub(super) fn levels(self, axes: &[Axis], row: u64, levels: &mut [Level]) {
        match self {
            Self::Grid => {
                let mut rest = row;
                for (axis, level) in axes.iter().zip(levels).rev() {
                    let count = axis.values.count();
                    *level = axis.values.nth(rest % count);
                    rest /= count;
                }
            }
            Self::Latin { points, seed } => {
                for (at, (axis, level)) in axes.iter().zip(levels).enumerate() {
                    let key = mixed(seed ^ mixed(at as u64 + 1));
                    let stratum = shuffled(row, points, key);
                    // 53 bits fill a number between 0 and 1.
                    let within = (mixed(key ^ mixed(row)) >> 11) as f64 / (1_u64 << 53) as f64;
                    *level = axis.values.at((stratum as f64 + within) / points as f64);
                }
            }
        }
    }
}

impl Values {
    /// Count of values on a grid.
    pub(super) fn count(&self) -> u64 {
        match self {
            Self::Range { count, .. } => *count,
            Self::Numbers(numbers) => numbers.len() as u64,
            Self::Words(words) => words.len() as u64,
        }
    }

    fn nth(&self, at: u64) -> Level {
        match self {
            Self::Range { from, to, count } => {
                let last = count.saturating_sub(1);
                Level::Number(if at == 0 {
                    *from
                } else if at == last {
                    *to
                } else {
                    from + (to - from) * (at as f64 / last as f64)
                })
            }
            Self::Numbers(numbers) => Level::Number(numbers[at as usize]),
            Self::Words(_) => Level::Word(at as usize),
        }
    }

    /// The value at a share of the way, from 0 up to, and without, 1.
    fn at(&self, share: f64) -> Level {
        let nth = |count: usize| ((share * count as f64) as usize).min(count - 1);
        match self {
            Self::Range { from, to, .. } => Level::Number(from + (to - from) * share),
            Self::Numbers(numbers) => Level::Number(numbers[nth(numbers.len())]),
            Self::Words(words) => Level::Word(nth(words.len())),
        }
    }
}

/// A number that looks like no relative of the given one: the mixer of SplitMix64.
///
/// Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators,
/// OOPSLA 2014 (constants from memory).
pub(super) fn mixed(value: u64) -> u64 {
    let mut mixed = value.wrapping_add(0x9e37_79b9_7f4a_7c15);
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    mixed ^ (mixed >> 31)
}

/// Where a shuffle of the numbers below `count` puts one of them. Nothing is kept: the shuffle is a
/// Feistel network on the next power of four, walked until it comes back below the count (J. Black,
/// P. Rogaway, Ciphers with Arbitrary Finite Domains, 2002, from memory).
fn shuffled(number: u64, count: u64, key: u64) -> u64 {
    let mut bits = 1;
    while bits < 31 && (1_u64 << (2 * bits)) < count {
        bits += 1;
    }
    let mask = (1_u64 << bits) - 1;
    let mut place = number;
    // Once in four steps at the least it lands below the count; it is a permutation, so it comes back.
    loop {
        let (mut left, mut right) = (place >> bits, place & mask);
        for round in 0..6 {
            let turned = left ^ (mixed(right ^ mixed(key ^ round)) & mask);
            (left, right) = (right, turned);
        }
        place = (left << bits) | right;
        if place < count {
            return place;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(from: f64, to: f64, count: u64) -> Axis {
        Axis {
            input: 0,
            values: Values::Range { from, to, count },
        }
    }

    fn words(count: usize) -> Axis {
        Axis {
            input: 1,
            values: Values::Words((0..count).map(|at| at.to_string()).collect()),
        }
    }

    fn all(design: Design, axes: &[Axis]) -> Vec<Vec<Level>> {
        let rows = design.rows(axes, 1_000_000).unwrap();
        (0..rows)
            .map(|row| {
                let mut levels = vec![Level::Word(usize::MAX); axes.len()];
                design.levels(axes, row, &mut levels);
                levels
            })
            .collect()
    }

    #[test]
    fn a_grid_has_every_combination_once_and_its_ends() {
        let axes = [range(0.1, 0.7, 4), words(3), range(5.0, 5.0, 1)];
        let rows = all(Design::Grid, &axes);
        assert_eq!(rows.len(), 12);
        for (at, row) in rows.iter().enumerate() {
            assert!(!rows[..at].contains(row), "{row:?} comes twice");
        }
        let five = Level::Number(5.0);
        assert_eq!(rows[0], [Level::Number(0.1), Level::Word(0), five]);
        assert_eq!(rows[11], [Level::Number(0.7), Level::Word(2), five]);
    }

    #[test]
    fn a_latin_hypercube_has_each_stratum_of_each_input_once() {
        for points in [1, 2, 3, 7, 64, 100, 1000] {
            let axes = [range(0.0, 1.0, 1), range(0.0, 1.0, 1), words(2)];
            let rows = all(Design::Latin { points, seed: 7 }, &axes);
            for axis in 0..2 {
                let mut seen = vec![false; points as usize];
                for row in &rows {
                    let Level::Number(value) = row[axis] else {
                        panic!("{row:?}")
                    };
                    let stratum = (value * points as f64) as usize;
                    assert!(
                        !seen[stratum],
                        "{points} points: stratum {stratum} comes twice"
                    );
                    seen[stratum] = true;
                }
            }
            let firsts = rows.iter().filter(|row| row[2] == Level::Word(0)).count();
            assert!(
                firsts.abs_diff(points as usize - firsts) <= 1,
                "{points}: {firsts}"
            );
        }
    }

    #[test]
    fn inputs_of_a_latin_hypercube_are_not_tied_to_each_other_and_seeds_differ() {
        let axes = [range(-1.0, 1.0, 1), range(-1.0, 1.0, 1)];
        let rows = all(
            Design::Latin {
                points: 2000,
                seed: 1,
            },
            &axes,
        );
        let number = |level: Level| match level {
            Level::Number(value) => value,
            Level::Word(_) => f64::NAN,
        };
        // Uniform on ±1 each has variance 1/3: the correlation of 2000 pairs is 0 ± 0.022.
        let sum: f64 = rows.iter().map(|row| number(row[0]) * number(row[1])).sum();
        let correlation = 3.0 * sum / 2000.0;
        assert!(correlation.abs() < 0.1, "{correlation}");
        let order: f64 = rows
            .windows(2)
            .map(|p| number(p[0][0]) * number(p[1][0]))
            .sum();
        assert!((3.0 * order / 2000.0).abs() < 0.1, "rows follow each other");
        assert_eq!(
            rows,
            all(
                Design::Latin {
                    points: 2000,
                    seed: 1
                },
                &axes
            )
        );
        assert_ne!(
            rows,
            all(
                Design::Latin {
                    points: 2000,
                    seed: 2
                },
                &axes
            )
        );
    }

    #[test]
    fn too_many_rows_are_told() {
        let wide = range(0.0, 1.0, 1 << 40);
        for axes in [vec![wide.clone()], vec![wide.clone(), wide.clone()]] {
            let told = Design::Grid.rows(&axes, 1000).unwrap_err().to_string();
            assert!(told.contains("rows") && told.contains("1000"), "{told}");
        }
    }
}
