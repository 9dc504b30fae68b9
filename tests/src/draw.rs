//! Numbers drawn with a fixed seed, the same on every machine and in every run.

/// A linear congruential generator (Knuth, The Art of Computer Programming, vol. 2, 3.3.4).
#[derive(Clone, Debug)]
pub struct Draw {
    state: u64,
}

impl Draw {
    /// A generator that begins at a seed.
    #[must_use]
    pub fn seeded(seed: u64) -> Self {
        let mut draw = Self { state: seed };
        draw.unit();
        draw
    }

    /// A number from 0 to 1.
    pub fn unit(&mut self) -> f64 {
        self.state = self
            .state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        // The upper bits are the random ones; 53 of them fill a double.
        (self.state >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A number between two others.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Yes with a probability.
    pub fn chance(&mut self, probability: f64) -> bool {
        self.unit() < probability
    }

    /// One of several.
    ///
    /// # Panics
    /// When there is none.
    pub fn one_of<T: Copy>(&mut self, items: &[T]) -> T {
        let at = (self.unit() * items.len() as f64) as usize;
        items[at.min(items.len() - 1)]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_numbers_fill_the_interval_and_repeat_with_the_seed() {
        let mut draw = Draw::seeded(7);
        let drawn: Vec<f64> = (0..10_000).map(|_| draw.unit()).collect();
        let mean = drawn.iter().sum::<f64>() / 10_000.0;
        assert!((mean - 0.5).abs() < 0.01, "mean {mean}");
        assert!(drawn.iter().all(|x| (0.0..1.0).contains(x)));
        let again = Draw::seeded(7).unit();
        assert!((again - drawn[0]).abs() < f64::EPSILON);
    }
}
