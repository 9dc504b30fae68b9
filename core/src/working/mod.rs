//! The working of an answer: its equations in order, each with the numbers put in, the result and
//! the source.
//!
//! The code states each equation as a book does; it is read into an expression tree, and the step
//! holds that tree. Text, LaTeX and MathML are printed from it, and the tests evaluate it: what is
//! shown is what was computed.

mod expression;
mod notation;
mod print;
mod slip;

pub use expression::{Expression, Function, Operator};
pub(crate) use slip::with_slip;

use crate::format;
use crate::units::{Dimension, System};
use crate::words::Lang;

/// A quantity that a step uses or gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Quantity {
    /// Symbol: `N_f`.
    pub symbol: &'static str,
    /// Value, SI.
    pub value: f64,
    /// What it measures.
    pub dimension: Dimension,
}

/// What a step says of its two sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The symbol on the left is computed from the right.
    Computed,
    /// The equation was solved for an unknown inside it: it is satisfied, not evaluated.
    Satisfied,
}

/// One step of a working.
#[derive(Clone, Debug)]
pub struct Step {
    /// What the step finds, as a key of the catalogue.
    pub about: &'static str,
    /// Layout or axle that the step belongs to; empty for the whole vehicle.
    pub scope: &'static str,
    /// Whether the right side was evaluated or the equation solved.
    pub kind: Kind,
    /// Quantity that the step gives, and its path in the answer (empty for a mere intermediate).
    pub result: Quantity,
    /// Path of the result in the answer; empty for an intermediate.
    pub path: String,
    /// Right side of the equation.
    pub expression: Expression,
    /// The numbers put in.
    pub inputs: Vec<Quantity>,
    /// Where the equation comes from, as a key of the catalogue.
    pub source: &'static str,
}

/// A working sheet: known quantities, then steps, written top to bottom.
///
/// Symbols are looked up in the sheet, so a step cannot use a number that was not given or computed
/// before it.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    known: Vec<(&'static str, Quantity)>,
    steps: Vec<Step>,
    scope: &'static str,
    source: &'static str,
}

impl Sheet {
    /// An empty sheet.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Begins a scope (a layout): its symbols hide those of the whole vehicle and end with it.
    pub fn begin(&mut self, scope: &'static str) {
        self.scope = scope;
    }

    /// Names the source of the steps that follow, as a key of the catalogue.
    pub fn source(&mut self, source: &'static str) {
        self.source = source;
    }

    /// A quantity given by the scenario.
    pub fn given(&mut self, symbol: &'static str, value: f64, dimension: Dimension) {
        self.learn(Quantity {
            symbol,
            value,
            dimension,
        });
    }

    /// A step: `symbol = equation`, which gave `value`.
    ///
    /// The path is that of the result in the answer, with `*` for the scope; empty for an
    /// intermediate. An equation that is malformed, or that holds a symbol not known so far, shows
    /// as `?` and has no value; the tests see to it that none does.
    pub fn step(
        &mut self,
        about: &'static str,
        symbol: &'static str,
        path: &str,
        equation: &str,
        value: f64,
        dimension: Dimension,
    ) {
        let result = Quantity {
            symbol,
            value,
            dimension,
        };
        let expression = notation::read(equation, &|name| self.find(name).map(|q| q.symbol))
            .unwrap_or(Expression::Symbol("?"));
        let mut inputs: Vec<Quantity> = Vec::new();
        for name in expression.symbols() {
            if let Some(quantity) = self.find(name) {
                inputs.push(quantity.clone());
            }
        }
        self.steps.push(Step {
            about,
            scope: self.scope,
            kind: Kind::Computed,
            result: result.clone(),
            path: path.replace('*', self.scope),
            expression,
            inputs,
            source: self.source,
        });
        self.learn(result);
    }

    /// A solved equation, as [`Sheet::step`]: satisfied by `value` and by the unknowns, which must
    /// have been made known with [`Sheet::given`] or a step.
    pub fn satisfied(
        &mut self,
        about: &'static str,
        symbol: &'static str,
        path: &str,
        equation: &str,
        value: f64,
        dimension: Dimension,
    ) {
        self.step(about, symbol, path, equation, value, dimension);
        if let Some(step) = self.steps.last_mut() {
            step.kind = Kind::Satisfied;
        }
    }

    fn learn(&mut self, quantity: Quantity) {
        let scope = self.scope;
        match self
            .known
            .iter_mut()
            .find(|(s, q)| *s == scope && q.symbol == quantity.symbol)
        {
            Some((_, old)) => *old = quantity,
            None => self.known.push((scope, quantity)),
        }
    }

    fn find(&self, symbol: &str) -> Option<&Quantity> {
        let in_scope = |scope: &str| {
            self.known
                .iter()
                .find(|(s, q)| *s == scope && q.symbol == symbol)
                .map(|(_, q)| q)
        };
        in_scope(self.scope).or_else(|| in_scope(""))
    }

    /// The steps.
    #[must_use]
    pub fn into_steps(self) -> Vec<Step> {
        self.steps
    }
}

/// The steps that lead to one number of an answer, in order: its own and all that it rests on.
#[must_use]
pub fn derivation<'a>(steps: &'a [Step], path: &str) -> Vec<&'a Step> {
    let Some(target) = steps.iter().position(|step| step.path == path) else {
        return Vec::new();
    };
    let mut wanted = vec![false; steps.len()];
    wanted[target] = true;
    for at in (0..=target).rev() {
        if !wanted[at] {
            continue;
        }
        for input in &steps[at].inputs {
            let earlier = steps[..at].iter().rposition(|step| {
                step.result == *input && (step.scope.is_empty() || step.scope == steps[at].scope)
            });
            if let Some(found) = earlier {
                wanted[found] = true;
            }
        }
    }
    steps
        .iter()
        .zip(wanted)
        .filter_map(|(step, wanted)| wanted.then_some(step))
        .collect()
}

impl Step {
    /// Value of the right side with the numbers of [`Step::inputs`]; `None` when a symbol has none.
    #[must_use]
    pub fn evaluate(&self) -> Option<f64> {
        self.expression.evaluate(&|symbol| {
            self.inputs
                .iter()
                .find(|quantity| quantity.symbol == symbol)
                .map(|quantity| quantity.value)
        })
    }

    /// The equation in plain text: `N_f = (W·cos θ·b − …)/L`.
    #[must_use]
    pub fn text(&self, lang: Lang) -> String {
        format!(
            "{} = {}",
            self.result.symbol,
            self.expression.text(&|_| None, lang)
        )
    }

    /// The equation in plain text with the numbers put in.
    #[must_use]
    pub fn text_with_numbers(&self, lang: Lang) -> String {
        format!(
            "{} = {} = {}",
            self.result.symbol,
            self.expression
                .text(&|symbol| self.number_of(symbol, lang), lang),
            self.result_text(lang)
        )
    }

    /// The equation in LaTeX.
    #[must_use]
    pub fn latex(&self, lang: Lang) -> String {
        format!(
            "{} = {}",
            print::latex_symbol(self.result.symbol),
            self.expression.latex(&|_| None, lang)
        )
    }

    /// The equation in LaTeX with the numbers put in.
    #[must_use]
    pub fn latex_with_numbers(&self, lang: Lang) -> String {
        format!(
            "{} = {} = {}",
            print::latex_symbol(self.result.symbol),
            self.expression
                .latex(&|symbol| self.number_of(symbol, lang), lang),
            print::latex_quantity(&self.result_text(lang))
        )
    }

    /// The equation as presentation MathML, with the numbers put in on a second row.
    #[must_use]
    pub fn mathml(&self, lang: Lang) -> String {
        let symbol = print::mathml_symbol(self.result.symbol);
        let general = self.expression.mathml(&|_| None, lang);
        let numbers = self
            .expression
            .mathml(&|symbol| self.number_of(symbol, lang), lang);
        let result = print::mathml_text(&self.result_text(lang));
        let mut table = String::from(
            "<math display=\"block\"><mtable columnalign=\"right center left\" displaystyle=\"true\">",
        );
        let mut row = |left: &str, right: &str| {
            table.push_str("<mtr><mtd>");
            table.push_str(left);
            table.push_str("</mtd><mtd><mo>=</mo></mtd><mtd>");
            table.push_str(right);
            table.push_str("</mtd></mtr>");
        };
        row(&symbol, &general);
        // An equation of numbers alone would stand there twice.
        if numbers != general {
            row("", &numbers);
        }
        row("", &result);
        table.push_str("</mtable></math>");
        table
    }

    /// The equation alone as presentation MathML, for a page that lists the models.
    #[must_use]
    pub fn equation_mathml(&self, lang: Lang) -> String {
        format!(
            "<math><mrow>{}<mo>=</mo>{}</mrow></math>",
            print::mathml_symbol(self.result.symbol),
            self.expression.mathml(&|_| None, lang)
        )
    }

    /// The result with its SI unit.
    #[must_use]
    pub fn result_text(&self, lang: Lang) -> String {
        si_text(&self.result, lang)
    }

    fn number_of(&self, symbol: &str, lang: Lang) -> Option<String> {
        self.inputs
            .iter()
            .find(|quantity| quantity.symbol == symbol)
            .map(|quantity| format::significant(quantity.value, 4, lang))
    }
}

/// A quantity in its SI unit, with four digits: the working shows no rounding of its own kind.
#[must_use]
pub fn si_text(quantity: &Quantity, lang: Lang) -> String {
    let number = format::significant(quantity.value, 4, lang);
    let unit = match quantity.dimension {
        Dimension::Angle => {
            return format::quantity(quantity.value, Dimension::Angle, System::Si, 3, lang);
        }
        other => other.si_unit(),
    };
    format::with_unit(number, unit)
}

#[cfg(test)]
mod tests {
    use crate::scenario::Scenario;
    use crate::topic::TOPICS;
    use crate::words::{self, Lang};

    /// Changes to the example that reach every equation of every topic.
    const CASES: &[&[(&str, &str)]] = &[
        &[],
        &[("surface.grade", "12 %")],
        &[
            ("load_transfer.speed", "40 m/s"),
            ("traction.speed", "40 m/s"),
        ],
        &[
            ("load_transfer.speed", "40 m/s"),
            ("traction.speed", "40 m/s"),
            ("surface.grade", "-5 %"),
            ("vehicle.lift_area_front", "-0.4"),
            ("vehicle.lift_area_rear", "0.3"),
        ],
        &[
            ("load_transfer.acceleration", "0"),
            ("vehicle.rolling_resistance", "0"),
            ("vehicle.drag_area", "0"),
        ],
        &[
            ("vehicle.rolling_resistance", "0"),
            ("traction.front_share", "0.2"),
        ],
        &[
            ("vehicle.rolling_resistance", "0"),
            ("traction.front_share", "0.9"),
        ],
        &[
            ("surface.friction_peak", "1.7"),
            ("vehicle.cg_height", "1.1 m"),
        ],
        &[("traction.motor_limit", "as_fitted")],
        &[
            ("traction.rear_axle_type", "solid"),
            ("vehicle.final_drive_ratio", "2.9"),
        ],
        &[
            ("vehicle.cg_to_front_axle", "1.2 m"),
            ("vehicle.wheelbase", "2.4 m"),
            ("vehicle.track_front", "1.5 m"),
            ("vehicle.track_rear", "1.5 m"),
        ],
        // An axle whose wheels only roll: the front one, then the rear one.
        &[
            ("vehicle.track_front", "1.7 m"),
            ("vehicle.track_rear", "1.2 m"),
            ("vehicle.cg_to_front_axle", "0.6 m"),
            ("vehicle.wheelbase", "3 m"),
        ],
        &[
            ("vehicle.track_front", "1.2 m"),
            ("vehicle.track_rear", "1.7 m"),
            ("vehicle.cg_to_front_axle", "2.4 m"),
            ("vehicle.wheelbase", "3 m"),
        ],
        &[("turn_in_place.front_to_rear_wheel_speed", "0.5")],
        &[("layout", "F2R2")],
        &[
            ("surface.friction_sliding_left", "0.9"),
            ("turn_in_place.wear_coefficient", "0.005 mm³/J"),
        ],
        &[("turn_in_place.front_to_rear_wheel_speed", "2")],
        // A brief that another layout meets too if it asks for a little less.
        &[("choice.target_time", "6.5 s")],
        // A wheel that is not steered, hardly, and so far that its corner passes; long half shafts.
        &[("vehicle.max_steer_angle", "0")],
        &[
            ("vehicle.max_steer_angle", "5 deg"),
            ("packaging.half_shaft_length", "0.7 m"),
        ],
        &[
            ("vehicle.max_steer_angle", "59 deg"),
            ("vehicle.tyre_width_front", "0.5 m"),
        ],
        &[("packaging.unit_length", "0.2 m")],
        // A moment of a run.
        &[("launch.time", "2 s")],
    ];

    #[test]
    fn every_equation_is_well_formed_and_each_is_reached() {
        let mut unseen: Vec<&str> = words::keys(Lang::English)
            .filter(|key| key.starts_with("step."))
            .collect();
        for topic in TOPICS {
            for case in CASES {
                let mut scenario = Scenario::default();
                scenario.set("vehicle.base", "esker").unwrap();
                scenario.set("load_transfer.acceleration", "0.6 g").unwrap();
                for (path, text) in *case {
                    scenario.set(path, text).unwrap();
                }
                // Not every topic answers every case.
                let Ok(report) = topic.report(&scenario) else {
                    continue;
                };
                for step in report.steps {
                    assert!(
                        step.evaluate().is_some(),
                        "{case:?}: {}",
                        step.text(Lang::English)
                    );
                    unseen.retain(|key| *key != step.about);
                }
            }
        }
        assert_eq!(unseen, Vec::<&str>::new(), "these steps no case reaches");
    }
}
