//! An equation's right side as a small tree that can be evaluated and printed.

use crate::math;

/// A function of one argument.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Function {
    /// Sine.
    Sin,
    /// Cosine.
    Cos,
    /// Inverse tangent.
    Atan,
    /// Square root.
    Sqrt,
    /// Absolute value.
    Abs,
}

/// An operator of two arguments.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operator {
    /// Sum.
    Add,
    /// Difference.
    Sub,
    /// Product.
    Mul,
    /// Quotient.
    Div,
    /// The smaller of two.
    Min,
}

/// An expression.
#[derive(Clone, Debug, PartialEq)]
pub enum Expression {
    /// A number that belongs to the equation.
    Number(f64),
    /// A quantity, by its symbol.
    Symbol(&'static str),
    /// Minus an expression.
    Negative(Box<Expression>),
    /// A function of an expression.
    Call(Function, Box<Expression>),
    /// Two expressions joined.
    Pair(Operator, Box<Expression>, Box<Expression>),
    /// An expression squared.
    Square(Box<Expression>),
}

impl Expression {
    /// Two expressions joined.
    pub(super) fn pair(operator: Operator, left: Self, right: Self) -> Self {
        Self::Pair(operator, Box::new(left), Box::new(right))
    }

    /// Names of the symbols, in the order in which they are first written.
    #[must_use]
    pub fn symbols(&self) -> Vec<&'static str> {
        let mut names = Vec::new();
        self.collect(&mut names);
        names
    }

    fn collect(&self, names: &mut Vec<&'static str>) {
        match self {
            Self::Number(_) => {}
            Self::Symbol(name) => {
                if !names.contains(name) {
                    names.push(name);
                }
            }
            Self::Negative(inner) | Self::Call(_, inner) | Self::Square(inner) => {
                inner.collect(names);
            }
            Self::Pair(_, left, right) => {
                left.collect(names);
                right.collect(names);
            }
        }
    }

    /// Value of the expression; `None` when a symbol has no value.
    pub fn evaluate(&self, value_of: &dyn Fn(&str) -> Option<f64>) -> Option<f64> {
        Some(match self {
            Self::Number(value) => *value,
            Self::Symbol(name) => value_of(name)?,
            Self::Negative(inner) => -inner.evaluate(value_of)?,
            Self::Square(inner) => {
                let value = inner.evaluate(value_of)?;
                value * value
            }
            Self::Call(function, inner) => {
                let value = inner.evaluate(value_of)?;
                match function {
                    Function::Sin => math::sin(value),
                    Function::Cos => math::cos(value),
                    Function::Atan => math::atan(value),
                    Function::Sqrt => math::sqrt(value),
                    Function::Abs => value.abs(),
                }
            }
            Self::Pair(operator, left, right) => {
                let (left, right) = (left.evaluate(value_of)?, right.evaluate(value_of)?);
                match operator {
                    Operator::Add => left + right,
                    Operator::Sub => left - right,
                    Operator::Mul => left * right,
                    Operator::Div => left / right,
                    Operator::Min => left.min(right),
                }
            }
        })
    }
}
