//! What a study keeps of its rows: least and greatest value, how the values are spread, what failed.
//!
//! Values are counted in buckets between powers of two, 1024 to each, so a quantile is known to a
//! thousandth of its size whatever the count of rows, and it does not depend on their order.

use std::collections::{BTreeMap, HashMap};

/// Bits of a number that tell its bucket apart from those of its neighbours: sign, exponent, and ten bits
/// of the mantissa.
const DROPPED_BITS: u32 = 42;

/// Most different words, or reasons, that are counted apart.
const MOST_WORDS: usize = 100;

/// What a cell holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Cell<'a> {
    Nothing,
    Number(f64),
    Word(&'a str),
}

impl<'a> Cell<'a> {
    /// A cell as it was written.
    pub(super) fn read(text: &'a str) -> Self {
        match text {
            "" => Self::Nothing,
            text => text.parse().map_or(Self::Word(text), Self::Number),
        }
    }
}

/// The values of a column.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Column {
    /// Its name: a path in the answer.
    pub name: String,
    /// Count of numbers.
    pub count: u64,
    /// Least number.
    pub min: f64,
    /// Greatest number.
    pub max: f64,
    /// Rows that have an answer but not this value.
    pub absent: u64,
    /// Count of each word.
    pub words: BTreeMap<String, u64>,
    buckets: HashMap<i64, u64>,
}

/// A bucket's number, in the order of the values.
fn bucket(value: f64) -> i64 {
    let size = (value.abs().to_bits() >> DROPPED_BITS) as i64;
    // Both zeros share a bucket with the smallest numbers of their sign.
    if value < 0.0 { -size - 1 } else { size }
}

/// Ends of a bucket, nearer to zero first.
fn ends(bucket: i64) -> (f64, f64) {
    let (size, sign) = if bucket < 0 {
        (-bucket - 1, -1.0)
    } else {
        (bucket, 1.0)
    };
    let at = |size: i64| sign * f64::from_bits((size as u64) << DROPPED_BITS);
    (at(size), at(size + 1))
}

impl Column {
    fn number(&mut self, value: f64) {
        if self.count == 0 {
            (self.min, self.max) = (value, value);
        }
        self.min = self.min.min(value);
        self.max = self.max.max(value);
        self.count += 1;
        *self.buckets.entry(bucket(value)).or_default() += 1;
    }

    fn add(&mut self, other: &Self) {
        if other.count > 0 {
            if self.count == 0 {
                (self.min, self.max) = (other.min, other.max);
            }
            self.min = self.min.min(other.min);
            self.max = self.max.max(other.max);
        }
        self.count += other.count;
        self.absent += other.absent;
        for (bucket, count) in &other.buckets {
            *self.buckets.entry(*bucket).or_default() += count;
        }
        for (word, count) in &other.words {
            *kept(&mut self.words, word) += count;
        }
    }

    /// The value below which a share of the numbers lie; `None` where there is no number.
    #[must_use]
    pub fn quantile(&self, share: f64) -> Option<f64> {
        if self.count == 0 {
            return None;
        }
        let mut sorted: Vec<(i64, u64)> = self.buckets.iter().map(|(b, c)| (*b, *c)).collect();
        sorted.sort_unstable();
        let wanted = share * (self.count - 1) as f64;
        let mut before = 0_u64;
        for (bucket, count) in sorted {
            if wanted < (before + count) as f64 {
                let (near, far) = ends(bucket);
                let (low, high) = (near.min(far), near.max(far));
                let within = (wanted - before as f64 + 0.5) / count as f64;
                let value = low + (high - low) * within.min(1.0);
                return Some(value.max(self.min).min(self.max));
            }
            before += count;
        }
        Some(self.max)
    }
}

/// The count of a word; beyond so many words that of all others.
fn kept<'a>(words: &'a mut BTreeMap<String, u64>, word: &str) -> &'a mut u64 {
    let room = words.len() < MOST_WORDS || words.contains_key(word);
    words
        .entry(if room { word.to_owned() } else { "…".into() })
        .or_default()
}

/// What is kept of a study.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tally {
    /// Rows with an answer or without.
    pub rows: u64,
    /// Rows without an answer, by the reason.
    pub problems: BTreeMap<String, u64>,
    /// The columns that were wanted.
    pub columns: Vec<Column>,
}

impl Tally {
    /// An empty one.
    #[must_use]
    pub fn new(names: &[String]) -> Self {
        let column = |name: &String| Column {
            name: name.clone(),
            ..Column::default()
        };
        Self {
            columns: names.iter().map(column).collect(),
            ..Self::default()
        }
    }

    /// Counts a cell of a row that has an answer. The first column counts the row.
    pub(super) fn count(&mut self, column: usize, cell: Cell) {
        self.rows += u64::from(column == 0);
        let Some(column) = self.columns.get_mut(column) else {
            return;
        };
        match cell {
            Cell::Nothing => column.absent += 1,
            Cell::Number(number) => column.number(number),
            Cell::Word(word) => match column.words.get_mut(word) {
                Some(count) => *count += 1,
                None => *kept(&mut column.words, word) += 1,
            },
        }
    }

    /// Counts a row that has no answer.
    pub(super) fn fail(&mut self, reason: &str) {
        self.rows += 1;
        *kept(&mut self.problems, reason) += 1;
    }

    /// Adds what another counted.
    pub(super) fn add(&mut self, other: &Self) {
        self.rows += other.rows;
        for (reason, count) in &other.problems {
            *kept(&mut self.problems, reason) += count;
        }
        for (column, other) in self.columns.iter_mut().zip(&other.columns) {
            column.add(other);
        }
    }

    /// Count of rows without an answer.
    #[must_use]
    pub fn failed(&self) -> u64 {
        self.problems.values().sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn column(values: impl Iterator<Item = f64>) -> Column {
        let mut column = Column::default();
        values.for_each(|value| column.number(value));
        column
    }

    #[test]
    fn quantiles_are_within_a_thousandth() {
        // Squares of numbers on both sides of zero: dense near zero, wide at the ends.
        let value = |at: i32| f64::from(at) * f64::from(at.abs()) * 1e-3;
        let column = column((-5000..=5000).map(value));
        for (share, want) in [
            (0.0, -5000),
            (0.05, -4500),
            (0.25, -2500),
            (0.5, 0),
            (0.9, 4000),
            (1.0, 5000),
        ] {
            let got = column.quantile(share).unwrap();
            let want = value(want);
            // Near zero one step of the values counts, elsewhere a bucket.
            assert!(
                (got - want).abs() <= 1e-3 * want.abs() + 4e-3,
                "{share}: {got}, want {want}"
            );
        }
        assert_eq!((column.min, column.max), (-25_000.0, 25_000.0));
        assert_eq!(Column::default().quantile(0.5), None);
    }

    #[test]
    fn a_value_lies_in_its_bucket_and_buckets_are_in_order() {
        let mut last = i64::MIN;
        for value in [
            -1e300, -2.0, -1.0, -1e-300, 0.0, 1e-300, 0.5, 1.0, 1.0005, 1.5, 1e300,
        ] {
            let (near, far) = ends(bucket(value));
            assert!(
                near.abs() <= value.abs() && value.abs() <= far.abs(),
                "{value}: {near} {far}"
            );
            assert!(bucket(value) >= last, "{value}");
            last = bucket(value);
        }
    }

    #[test]
    fn counting_apart_and_adding_is_counting_together() {
        let names = ["a".to_owned()];
        let (mut one, mut other, mut both) =
            (Tally::new(&names), Tally::new(&names), Tally::new(&names));
        for at in 0..1000 {
            let part = if at % 3 == 0 { &mut one } else { &mut other };
            for tally in [part, &mut both] {
                match at % 7 {
                    0 => tally.fail(&format!("reason {}", at % 2)),
                    1 => tally.count(0, Cell::Nothing),
                    2 => tally.count(0, Cell::Word("front_slip")),
                    _ => tally.count(0, Cell::Number(f64::from(at).sqrt())),
                }
            }
        }
        one.add(&other);
        assert_eq!(one, both);
        assert_eq!((both.rows, both.failed()), (1000, 143));
    }

    #[test]
    fn so_many_reasons_take_no_more_memory() {
        let mut tally = Tally::new(&[]);
        for at in 0..1000 {
            tally.fail(&format!("reason {at}"));
        }
        assert_eq!(tally.problems.len(), MOST_WORDS + 1);
        assert_eq!(tally.failed(), 1000);
    }
}
