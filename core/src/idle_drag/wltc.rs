//! The published cycle: WLTC class 3b, UN Global Technical Regulation No. 15, Annex 1.

/// The trace as it was published, one speed a second.
const CSV: &[u8] = include_bytes!("../../data/wltc_class3b.csv");

/// Length of the cycle \[s\].
pub const LENGTH_S: usize = 1800;

/// Ends of its phases (low, medium, high, extra-high): the last second of each \[s\].
pub const PHASE_ENDS_S: [usize; 4] = [589, 1022, 1477, LENGTH_S];

/// Steps of the speed from second to second \[0.1 km/h\]; the trace is read when this is compiled, so
/// that a browser fetches a byte for each second.
static STEPS: [i8; LENGTH_S] = read(CSV);

/// The digits of the last field of each line, its point left out, are the speed in 0.1 km/h.
const fn read(text: &[u8]) -> [i8; LENGTH_S] {
    let mut steps = [0; LENGTH_S];
    let (mut line, mut field, mut last, mut second) = (0, 0, 0, 0);
    let mut numbers = false;
    let mut at = 0;
    while at < text.len() {
        match text[at] {
            b'\n' => {
                if numbers {
                    if second > 0 {
                        let step = field - last;
                        assert!(step >= -128 && step < 128, "a step of a byte");
                        steps[second - 1] = step as i8;
                    }
                    last = field;
                    second += 1;
                }
                line = at + 1;
                field = 0;
                numbers = false;
            }
            b',' => field = 0,
            digit @ b'0'..=b'9' => {
                numbers |= at == line;
                if numbers {
                    field = 10 * field + (digit - b'0') as i32;
                }
            }
            _ => {}
        }
        at += 1;
    }
    assert!(second == LENGTH_S + 1, "every second");
    steps
}

/// Speeds at whole seconds, from 0 to [`LENGTH_S`] \[km/h\].
pub fn speeds_km_h() -> impl Iterator<Item = f64> {
    let mut tenths = 0;
    core::iter::once(0.0).chain(STEPS.iter().map(move |step| {
        tenths += i32::from(*step);
        f64::from(tenths) / 10.0
    }))
}

/// Speeds of a phase (0 to 3), without the second at which it begins.
fn phase_km_h(phase: usize) -> impl Iterator<Item = f64> {
    let end = PHASE_ENDS_S.get(phase).copied().unwrap_or(LENGTH_S);
    let start = match phase {
        0 => 0,
        later => PHASE_ENDS_S.get(later - 1).map_or(0, |before| before + 1),
    };
    speeds_km_h().skip(start).take(end + 1 - start)
}

/// Sum of the speeds of a phase (0 to 3) \[km/h\], as the regulation prints it for a check.
#[must_use]
pub fn phase_sum_km_h(phase: usize) -> f64 {
    phase_km_h(phase).sum()
}

/// Distance of a phase (0 to 3) \[m\]: its speeds, a second each.
#[must_use]
pub fn phase_distance_m(phase: usize) -> f64 {
    phase_sum_km_h(phase) / 3.6
}

/// Highest speed \[km/h\].
#[must_use]
pub fn highest_km_h() -> f64 {
    speeds_km_h().fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_second_is_as_published() {
        let text = core::str::from_utf8(CSV).unwrap();
        let lines = text
            .lines()
            .filter(|line| line.starts_with(|c: char| c.is_ascii_digit()));
        let mut speeds = speeds_km_h();
        let mut count = 0;
        for (second, line) in lines.enumerate() {
            let (time, speed) = line.split_once(',').unwrap();
            assert_eq!(time.parse(), Ok(second));
            let speed: f64 = speed.trim().parse().unwrap();
            let got = speeds.next().unwrap();
            assert!((got - speed).abs() < 1e-12, "{second}: {got}, {speed}");
            count += 1;
        }
        assert_eq!((count, speeds.next()), (LENGTH_S + 1, None));
    }
}
