//! Numbers drawn from a seed: the same seed gives the same numbers on every machine.

/// SplitMix64, a generator of whole numbers.
///
/// Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators,
/// OOPSLA 2014 (constants from memory; the tests hold numbers that were published for them).
#[derive(Clone, Debug)]
pub(super) struct Draw {
    state: u64,
}

impl Draw {
    /// A generator for one question: the same seed draws other numbers for another name.
    pub(super) fn of(seed: u64, topic: &str, id: &str) -> Self {
        // FNV-1a (Fowler, Noll, Vo) makes a number of the name.
        let mut state = 0xcbf2_9ce4_8422_2325_u64;
        for byte in topic.bytes().chain([b'.']).chain(id.bytes()) {
            state = (state ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
        }
        Self {
            state: state ^ seed,
        }
    }

    fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.state;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A whole number from 0 up to, and without, the count; 0 for a count of 0.
    pub(super) fn below(&mut self, count: usize) -> usize {
        // A count of some hundreds leaves no skew that matters in 2⁶⁴.
        (self.next() % (count.max(1) as u64)) as usize
    }
}

#[cfg(test)]
mod tests {
    use super::Draw;

    #[test]
    fn the_generator_gives_the_published_numbers() {
        let mut draw = Draw { state: 1_234_567 };
        for want in [
            6_457_827_717_110_365_317,
            3_203_168_211_198_807_973,
            9_817_491_932_198_370_423,
            4_593_380_528_125_082_431,
            16_408_922_859_458_223_821,
        ] {
            assert_eq!(draw.next(), want);
        }
    }

    #[test]
    fn every_number_below_the_count_comes_and_names_draw_apart() {
        let mut seen = [0_usize; 7];
        for seed in 0..2000 {
            seen[Draw::of(seed, "traction", "limit").below(7)] += 1;
        }
        assert!(
            seen.iter().all(|count| (200..380).contains(count)),
            "{seen:?}"
        );
        let of = |id| {
            let mut draw = Draw::of(7, "traction", id);
            [draw.next(), draw.next()]
        };
        assert_eq!(of("limit"), of("limit"));
        assert_ne!(of("limit"), of("change"));
    }
}
