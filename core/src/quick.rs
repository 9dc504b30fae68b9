//! Quick answers: one topic asked again and again with a few inputs changed, and a few outputs read.
//!
//! A study asks a million times. So the scenario is read once, what varies is changed in place, and the
//! outputs that are wanted fall into a row by their position: no text, no tree, no working. The numbers
//! are those of [`Topic::solve`](crate::topic::Topic::solve), to the bit.

use crate::error::Problem;
use crate::input::{self, Kind};
use crate::layout::Layout;
use crate::scenario::Scenario;
use crate::topic::{Reading, ReadingValue, Readings, Topic};
use crate::{surface, traction};

/// Whoever is told the values of an answer.
pub(crate) trait Told {
    /// Takes the value of the output at a position; without a layout it is the whole vehicle's.
    fn tell(&mut self, output: usize, layout: Option<Layout>, value: ReadingValue);
}

impl Told for Readings {
    fn tell(&mut self, output: usize, layout: Option<Layout>, value: ReadingValue) {
        self.put(output, layout.map_or("", Layout::name), value);
    }
}

type Tell = fn(&Scenario, &mut dyn Told) -> Result<(), Problem>;

/// Topics whose answer is so quick to compute that making its list of readings would take longer. Every
/// other topic is asked for its list.
const TELLERS: &[(&str, Tell)] = &[("traction", traction::tell)];

/// A value that is wanted: the output's position among the topic's, and the layout.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// Position in [`Topic::outputs`].
    pub output: usize,
    /// Name of the layout, or of the surface where the answer has one for each; empty for the whole
    /// vehicle.
    pub part: &'static str,
}

impl Wanted {
    /// The values that a path names: `limits.F1.acceleration`, or `limits.*.acceleration` for each of
    /// some layouts. Empty where the topic has no such output.
    #[must_use]
    pub fn of(topic: &Topic, path: &str, layouts: &[Layout]) -> Vec<Self> {
        let path = path.trim();
        for (output, known) in topic.outputs.iter().enumerate() {
            let each = known.name.contains('*');
            if known.name == path {
                return if each {
                    let of_surfaces = known.name.starts_with("surfaces.");
                    let names = layouts.iter().map(|layout| layout.name());
                    let surfaces = surface::NAMES.iter().copied();
                    let all: Vec<_> = if of_surfaces {
                        surfaces.collect()
                    } else {
                        names.collect()
                    };
                    all.into_iter().map(|part| Self { output, part }).collect()
                } else {
                    vec![Self { output, part: "" }]
                };
            }
            let one = parts().find(|part| each && known.name.replace('*', part) == path);
            if let Some(part) = one {
                return vec![Self { output, part }];
            }
        }
        Vec::new()
    }

    /// The path in the answer.
    #[must_use]
    pub fn path(&self, topic: &Topic) -> String {
        let name = topic.outputs.get(self.output).map_or("", |o| o.name);
        name.replace('*', self.part)
    }
}

/// The values of one answer, in the order in which they are wanted.
#[derive(Clone, Debug)]
struct Row {
    /// Position in `values` for each output and layout; past the end where it is not wanted.
    places: Vec<usize>,
    values: Vec<Option<ReadingValue>>,
}

/// What an answer may have values for: layouts, then surfaces.
fn parts() -> impl Iterator<Item = &'static str> {
    Layout::NAMES.iter().chain(surface::NAMES).copied()
}

/// Places of one output: the whole vehicle's, then one for each layout and each surface.
const PLACES: usize = 1 + Layout::NAMES.len() + surface::NAMES.len();

fn place(output: usize, part: &str) -> usize {
    let at = parts().position(|known| known == part);
    output * PLACES + at.map_or(0, |at| 1 + at)
}

fn place_of_layout(output: usize, layout: Option<Layout>) -> usize {
    output * PLACES + layout.map_or(0, |layout| 1 + layout as usize)
}

impl Told for Row {
    fn tell(&mut self, output: usize, layout: Option<Layout>, value: ReadingValue) {
        self.take(place_of_layout(output, layout), value);
    }
}

impl Row {
    fn take(&mut self, place: usize, value: ReadingValue) {
        if matches!(value, ReadingValue::Number(number) if !number.is_finite()) {
            return;
        }
        let wanted = self.places.get(place).copied();
        if let Some(slot) = wanted.and_then(|at| self.values.get_mut(at)) {
            *slot = Some(value);
        }
    }
}

/// A topic, a scenario that varies, and a row of answers.
///
/// ```
/// use axlewright_core::quick::{Quick, Wanted};
/// use axlewright_core::{input, topic};
/// let topic = topic::find("traction")?;
/// let wanted = Wanted::of(topic, "limits.R1.acceleration", &[]);
/// let mut quick = Quick::new(topic, topic.example()?, &wanted);
/// let height = input::index("vehicle.cg_height").unwrap_or_default();
/// quick.vary(height, 0.4)?;
/// let low = quick.solve()?.to_vec();
/// quick.vary(height, 0.7)?;
/// assert_ne!(quick.solve()?, low);
/// # Ok::<(), axlewright_core::Problem>(())
/// ```
#[derive(Clone, Debug)]
pub struct Quick {
    topic: &'static Topic,
    scenario: Scenario,
    tell: Option<Tell>,
    row: Row,
}

impl Quick {
    /// Reads a scenario once.
    #[must_use]
    pub fn new(topic: &'static Topic, scenario: Scenario, wanted: &[Wanted]) -> Self {
        let scenario = topic.own(&scenario).into_owned();
        let tell = TELLERS.iter().find(|(name, _)| *name == topic.name);
        let mut places = vec![usize::MAX; topic.outputs.len() * PLACES];
        for (at, wanted) in wanted.iter().enumerate() {
            if let Some(slot) = places.get_mut(place(wanted.output, wanted.part)) {
                *slot = at;
            }
        }
        Self {
            topic,
            scenario,
            tell: tell.map(|(_, tell)| *tell),
            row: Row {
                places,
                values: vec![None; wanted.len()],
            },
        }
    }

    /// Changes the quantity at an index of [`input::INPUTS`] to an SI value.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`], or [`Problem::WrongKind`] for an input that is no quantity.
    pub fn vary(&mut self, input: usize, value: f64) -> Result<(), Problem> {
        match input::INPUTS.get(input).map(|input| &input.kind) {
            Some(Kind::Quantity { accepted, .. }) if accepted.0 <= value && value <= accepted.1 => {
                self.scenario.vary(input, value);
                Ok(())
            }
            Some(_) => self.scenario.set_number(input::INPUTS[input].path, value),
            None => Err(Problem::Empty),
        }
    }

    /// Changes the word at an index of [`input::INPUTS`].
    ///
    /// # Errors
    /// As [`Scenario::set`].
    pub fn choose(&mut self, input: usize, word: &str) -> Result<(), Problem> {
        match input::INPUTS.get(input) {
            Some(input) => self.scenario.set(input.path, word),
            None => Err(Problem::Empty),
        }
    }

    /// Answers the scenario as it now is. A value that this answer does not have is `None`.
    ///
    /// # Errors
    /// A [`Problem`] of the scenario. Its value may be empty where the input was varied.
    pub fn solve(&mut self) -> Result<&[Option<ReadingValue>], Problem> {
        self.row.values.fill(None);
        match self.tell {
            Some(tell) => tell(&self.scenario, &mut self.row)?,
            None => {
                for reading in self.topic.solve(&self.scenario)? {
                    let Reading {
                        layout,
                        output,
                        value,
                        ..
                    } = reading;
                    self.row.take(place(output, layout), value);
                }
            }
        }
        Ok(&self.row.values)
    }

    /// The scenario as it now is.
    #[must_use]
    pub fn scenario(&self) -> &Scenario {
        &self.scenario
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::INPUTS;
    use crate::topic::TOPICS;

    /// Everything that a topic answers for every layout.
    fn everything(topic: &Topic) -> Vec<Wanted> {
        topic
            .outputs
            .iter()
            .flat_map(|output| Wanted::of(topic, output.name, &Layout::ALL))
            .collect()
    }

    #[test]
    fn a_path_names_one_value_or_one_for_each_layout() {
        for topic in TOPICS {
            for reading in topic.solve(&topic.example().unwrap()).unwrap() {
                let found = Wanted::of(topic, &reading.path, &[]);
                assert_eq!(found.len(), 1, "{}: {}", topic.name, reading.path);
                assert_eq!(found[0].output, reading.output);
                assert_eq!(found[0].path(topic), reading.path);
            }
            assert!(Wanted::of(topic, "nothing.of.the.kind", &Layout::ALL).is_empty());
        }
        let traction = topic_of("traction");
        let pair = [Layout::F1, Layout::R2];
        let each = Wanted::of(traction, "limits.*.acceleration", &pair);
        assert_eq!(each[1].path(traction), "limits.R2.acceleration");
    }

    fn topic_of(name: &str) -> &'static Topic {
        crate::topic::find(name).unwrap()
    }

    /// Every quantity that a topic reads is varied over what road vehicles have, on every vehicle; the
    /// quick answer and the plain one are the same to the bit, or refuse for the same field.
    #[test]
    fn quick_answers_are_the_answers() {
        for topic in TOPICS {
            // A launch takes a thousand times as long as a closed form: one vehicle, one layout.
            let slow = topic.solve(&topic.example().unwrap()).is_ok() && topic.name == "launch";
            let wanted = everything(topic);
            for base in crate::vehicle::DEMO_NAMES {
                let mut scenario = topic.example().unwrap();
                scenario.set("vehicle.base", base).unwrap();
                if slow {
                    scenario.set("layouts", "F1R1").unwrap();
                }
                let mut quick = Quick::new(topic, scenario, &wanted);
                for (at, input) in INPUTS.iter().enumerate() {
                    let Kind::Quantity { usual, .. } = input.kind else {
                        continue;
                    };
                    if !topic.inputs.contains(&input.path) || (slow && *base != "esker") {
                        continue;
                    }
                    for share in [0.1, 0.6] {
                        let value = usual.0 + share * (usual.1 - usual.0);
                        quick.vary(at, value).unwrap();
                        same(topic, &mut quick, &wanted, input.path);
                    }
                }
            }
        }
    }

    fn same(topic: &'static Topic, quick: &mut Quick, wanted: &[Wanted], path: &str) {
        let plain = topic.solve(quick.scenario());
        match (quick.solve(), plain) {
            (Ok(row), Ok(list)) => {
                let mut found = 0;
                for (wanted, value) in wanted.iter().zip(row) {
                    let path = wanted.path(topic);
                    let reading = list.iter().find(|reading| reading.path == path);
                    assert_eq!(value.as_ref(), reading.map(|r| &r.value), "{path}");
                    found += usize::from(value.is_some());
                }
                assert_eq!(found, list.len(), "{}: {path}", topic.name);
            }
            (Err(one), Err(other)) => assert_eq!(one.field(), other.field(), "{path}"),
            (one, other) => panic!("{}, {path}: {one:?}, {other:?}", topic.name),
        }
    }

    #[test]
    fn what_cannot_be_is_refused_and_changes_nothing() {
        let topic = topic_of("traction");
        let wanted = everything(topic);
        let mut quick = Quick::new(topic, topic.example().unwrap(), &wanted);
        let before = quick.scenario().clone();
        let mass = input::index("vehicle.mass").unwrap();
        let surface = input::index("surface.kind").unwrap();
        for value in [0.0, -5.0, f64::NAN, f64::INFINITY] {
            assert_eq!(quick.vary(mass, value).unwrap_err().field(), "vehicle.mass");
        }
        assert_eq!(
            quick.vary(surface, 1.0).unwrap_err().field(),
            "surface.kind"
        );
        assert_eq!(
            quick.choose(surface, "mud").unwrap_err().field(),
            "surface.kind"
        );
        assert!(quick.vary(usize::MAX, 1.0).is_err());
        assert_eq!(*quick.scenario(), before);
        quick.choose(surface, "ice").unwrap();
        assert!(quick.solve().is_ok());
    }
}
