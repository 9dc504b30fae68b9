//! The time to 60 mph alone, for questions that ask it of many launches.

use super::Question;
use super::car::Car;
use super::run::{LONGEST_S, MARK_60_MPH, MARKS, begin};
use crate::layout::Layout;
use crate::root;

/// Error of a step, relative: the time is right to a thousandth, where ideal grip leaves corners in it.
const TOLERANCE: f64 = 1e-6;
/// Time that a tyre is given to take hold \[s\].
const PATIENCE_S: f64 = 3.0;
/// Steps after which a run is given up.
const MOST_STEPS: u32 = 2000;

/// Time from rest to 60 mph \[s\]; none where the car never gets there.
#[must_use]
pub fn time_to_60_mph_s(question: &Question, layout: Layout) -> Option<f64> {
    let car = Car::new(question, layout);
    let mut way = begin(&car, TOLERANCE);
    let (at, value) = MARKS[MARK_60_MPH];
    while way.time_s < LONGEST_S && way.tried < MOST_STEPS {
        let longest_s = LONGEST_S - way.time_s;
        let mut gain_m_s2 = 0.0;
        let step = way.step(
            &mut |_, state, rates| gain_m_s2 = car.instant(state, Some(rates)).acceleration_m_s2,
            longest_s,
        );
        if way.state[at] >= value {
            let share = root::last_not_negative(0.0, 1.0, |share| value - step.value(share, at));
            return Some(step.time_s + share * step.length_s);
        }
        // A car that hardly gains will not get there.
        if gain_m_s2 < 1e-3 && way.time_s > PATIENCE_S {
            return None;
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::launch::run;
    use crate::scenario::Scenario;

    #[test]
    fn it_is_the_time_of_the_whole_run() {
        for base in crate::vehicle::DEMO_NAMES {
            let mut scenario = Scenario::default();
            scenario.set("vehicle.base", base).unwrap();
            let full = Question::from_scenario(&scenario).unwrap();
            for question in [full, full.on_paper()] {
                for layout in Layout::ALL {
                    let got = time_to_60_mph_s(&question, layout).unwrap();
                    let want = run(&question, layout).marks[MARK_60_MPH].unwrap().time_s;
                    assert!(
                        (got / want - 1.0).abs() < 1e-3,
                        "{base} {layout:?}: {got}, {want}"
                    );
                }
            }
        }
    }

    #[test]
    fn a_car_that_never_gets_there_has_no_time() {
        let mut scenario = Scenario::default();
        scenario.set("vehicle.base", "kame").unwrap();
        scenario.set("vehicle.motor_power", "1 kW").unwrap();
        let question = Question::from_scenario(&scenario).unwrap();
        assert_eq!(time_to_60_mph_s(&question.on_paper(), Layout::R1), None);
    }
}
