//! The sentence that says why.

use super::{Answer, Judged, Measure, Verdict};
use crate::layout::Layout;
use crate::topic::{Part, Sentence};
use crate::units::Dimension as D;

/// What is weighed, in words, in the order of the weights.
const NAMES: [&str; 4] = [
    "choice.name_time",
    "choice.name_cost",
    "choice.name_energy",
    "choice.name_room",
];

impl Answer {
    /// What a layout does.
    #[must_use]
    pub fn measure(&self, layout: Layout) -> Option<&Measure> {
        self.measures.iter().find(|m| m.layout == layout)
    }

    /// Why the layout is recommended: what the layout that would be best without the demands fails, or
    /// what sets the recommended one apart from the next.
    #[must_use]
    pub fn because(&self) -> Sentence {
        let free = self.without_demands.recommended;
        let wanted = free.and_then(|layout| self.decision.of(layout));
        let chosen = self.decision.recommended;
        let found = chosen.and_then(|layout| {
            let judged = self.decision.of(layout)?;
            Some((judged, self.measure(layout)?))
        });
        match (found, wanted) {
            (Some((judged, measure)), Some(wanted)) if wanted.layout != judged.layout => {
                self.in_spite_of(judged, measure, wanted)
            }
            (Some((judged, measure)), _) => self.as_best(judged, measure),
            (None, Some(wanted)) => self.refused(wanted),
            (None, None) => Sentence {
                key: "choice.because_none",
                parts: vec![Part::Name("–"), Part::Key("reason.does_not_fit")],
            },
        }
    }

    /// No layout meets the brief: what ends the one that would be best without it.
    fn refused(&self, wanted: &Judged) -> Sentence {
        Sentence {
            key: "choice.because_none",
            parts: vec![
                Part::Name(wanted.layout.name()),
                Part::Key(reason_key(wanted.verdict)),
            ],
        }
    }

    /// The recommended layout is also the best without demands: score, next, and what decides.
    fn as_best(&self, judged: &Judged, measure: &Measure) -> Sentence {
        let mut parts = vec![
            Part::Name(judged.layout.name()),
            Part::Number(judged.score.unwrap_or(0.0), D::Ratio, 3),
            Part::Number(judged.cost, D::Ratio, 3),
            Part::Number(measure.mark.map_or(0.0, |mark| mark.time_s), D::Time, 3),
        ];
        let Some(next) = self.decision.runner_up() else {
            return Sentence {
                key: "choice.because_only",
                parts,
            };
        };
        parts.push(Part::Name(next.layout.name()));
        parts.push(Part::Number(next.score.unwrap_or(0.0), D::Ratio, 3));
        parts.push(Part::Key(NAMES[self.decides(judged, next)]));
        Sentence {
            key: "choice.because_best",
            parts,
        }
    }

    /// The weighed thing that adds most to the lead of one over the other.
    fn decides(&self, judged: &Judged, next: &Judged) -> usize {
        let lead = |at: usize| self.brief.weights[at] * (judged.shares[at] - next.shares[at]);
        let mut most = 0;
        for at in 1..4 {
            if lead(at) > lead(most) {
                most = at;
            }
        }
        most
    }

    /// Another layout would be best if the brief did not refuse it.
    fn in_spite_of(&self, judged: &Judged, measure: &Measure, wanted: &Judged) -> Sentence {
        let names = [judged, wanted].map(|one| Part::Name(one.layout.name()));
        let mut parts = Vec::from(names);
        let fails = self.measure(wanted.layout);
        let time = |measure: Option<&Measure>| {
            let mark = measure.and_then(|measure| measure.mark);
            mark.map(|mark| Part::Number(mark.time_s, D::Time, 3))
        };
        let key = match wanted.verdict {
            Verdict::TooSlow => {
                let Some(taken) = time(fails) else {
                    return self.plainly(parts, wanted);
                };
                parts.push(taken);
                let target_s = self.brief.target_s.unwrap_or(0.0);
                parts.push(Part::Number(target_s, D::Time, 3));
                parts.extend(time(Some(measure)));
                "choice.because_too_slow"
            }
            Verdict::CannotStart => {
                let grade = self.brief.start_grade.unwrap_or(0.0);
                parts.push(Part::Number(grade, D::Slope, 2));
                let left =
                    |m: &Measure| Part::Number(m.start.acceleration_m_s2, D::Acceleration, 2);
                parts.extend(fails.map(left));
                parts.push(left(measure));
                "choice.because_cannot_start"
            }
            Verdict::RangeTooShort => {
                let range = |m: &Measure| Part::Number(m.range_m.unwrap_or(0.0), D::Distance, 3);
                parts.extend(fails.map(range));
                let least_m = self.brief.least_range_m.unwrap_or(0.0);
                parts.push(Part::Number(least_m, D::Distance, 3));
                parts.push(range(measure));
                "choice.because_range"
            }
            Verdict::DoesNotFit => {
                let left = fails.map_or(0.0, |m| -m.space.left_m);
                parts.push(Part::Number(left, D::Length, 2));
                parts.push(Part::Number(measure.space.left_m, D::Length, 2));
                "choice.because_fit"
            }
            Verdict::CannotVector => {
                let Some(yaw_n_m) = measure.yaw_n_m else {
                    return self.plainly(parts, wanted);
                };
                parts.push(Part::Number(yaw_n_m, D::Torque, 3));
                "choice.because_vector"
            }
            Verdict::CannotTurn => {
                parts.push(Part::Number(judged.cost, D::Ratio, 3));
                parts.push(Part::Number(wanted.cost, D::Ratio, 3));
                "choice.because_turn"
            }
            Verdict::Meets => return self.plainly(parts, wanted),
        };
        Sentence { key, parts }
    }

    /// The reason without a number.
    fn plainly(&self, mut parts: Vec<Part>, wanted: &Judged) -> Sentence {
        parts.push(Part::Key(reason_key(wanted.verdict)));
        Sentence {
            key: "choice.because_other",
            parts,
        }
    }
}

/// Key of a verdict's reason in the catalogue.
fn reason_key(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "reason.meets_brief",
        Verdict::DoesNotFit => "reason.does_not_fit",
        Verdict::CannotTurn => "reason.cannot_turn_in_place",
        Verdict::CannotVector => "reason.cannot_vector_torque",
        Verdict::CannotStart => "reason.cannot_start_on_grade",
        Verdict::TooSlow => "reason.misses_target_time",
        Verdict::RangeTooShort => "reason.range_too_short",
    }
}
