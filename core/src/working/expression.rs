//! An equation's right side as a small tree that can be evaluated and printed.

use crate::math;
use core::ops::{Add, Div, Mul, Neg, Sub};

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

/// A quantity, by its symbol: `symbol("N_f")`.
#[must_use]
pub fn symbol(name: &'static str) -> Expression {
    Expression::Symbol(name)
}

/// A number that belongs to the equation.
#[must_use]
pub fn number(value: f64) -> Expression {
    Expression::Number(value)
}

/// Sine of an expression.
#[must_use]
pub fn sin(argument: Expression) -> Expression {
    argument.call(Function::Sin)
}

/// Cosine of an expression.
#[must_use]
pub fn cos(argument: Expression) -> Expression {
    argument.call(Function::Cos)
}

/// Square root of an expression.
#[must_use]
pub fn sqrt(argument: Expression) -> Expression {
    argument.call(Function::Sqrt)
}

impl Expression {
    // Not inlined: a working joins hundreds of these, and the browser pays for every copy.
    #[inline(never)]
    fn paired(self, operator: Operator, other: Self) -> Self {
        Self::Pair(operator, Box::new(self), Box::new(other))
    }

    /// A function of this expression.
    #[must_use]
    pub fn call(self, function: Function) -> Self {
        Self::Call(function, Box::new(self))
    }

    /// This expression squared.
    #[must_use]
    pub fn squared(self) -> Self {
        Self::Square(Box::new(self))
    }

    /// The smaller of this and another.
    #[must_use]
    pub fn min(self, other: Self) -> Self {
        self.paired(Operator::Min, other)
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

macro_rules! operator {
    ($trait:ident, $method:ident, $operator:ident) => {
        impl $trait for Expression {
            type Output = Self;
            fn $method(self, other: Self) -> Self {
                self.paired(Operator::$operator, other)
            }
        }
    };
}

operator!(Add, add, Add);
operator!(Sub, sub, Sub);
operator!(Mul, mul, Mul);
operator!(Div, div, Div);

impl Neg for Expression {
    type Output = Self;
    fn neg(self) -> Self {
        Self::Negative(Box::new(self))
    }
}
