//! Equations read from text, so that the code shows them as a book does.
//!
//! `(W*cos(θ)*b - m*a_x*h)/L`: the signs `+ - * /`, brackets, `²` after what is squared, and the
//! functions `sin`, `cos`, `atan`, `sqrt`, `abs` of a bracket, `min(a; b)` of two.

use super::expression::{Expression, Function, Operator};
use crate::decimal;

/// Gives a symbol as the sheet knows it.
type Names<'a> = &'a dyn Fn(&str) -> Option<&'static str>;

/// Reads the right side of an equation; `None` where it is malformed or a symbol is not known.
pub(super) fn read(text: &str, names: Names) -> Option<Expression> {
    let mut reader = Reader { rest: text, names };
    let expression = reader.sum()?;
    reader.rest.is_empty().then_some(expression)
}

struct Reader<'a> {
    rest: &'a str,
    names: Names<'a>,
}

impl<'a> Reader<'a> {
    /// Takes a sign and the blanks around it, if it comes next.
    fn takes(&mut self, sign: &str) -> bool {
        let after = self.rest.trim_start_matches(' ').strip_prefix(sign);
        if let Some(after) = after {
            self.rest = after.trim_start_matches(' ');
        }
        after.is_some()
    }

    fn sum(&mut self) -> Option<Expression> {
        let mut left = if self.takes("-") {
            Expression::Negative(Box::new(self.product()?))
        } else {
            self.product()?
        };
        loop {
            let operator = if self.takes("+") {
                Operator::Add
            } else if self.takes("-") {
                Operator::Sub
            } else {
                return Some(left);
            };
            left = Expression::pair(operator, left, self.product()?);
        }
    }

    fn product(&mut self) -> Option<Expression> {
        let mut left = self.power()?;
        loop {
            let operator = if self.takes("*") {
                Operator::Mul
            } else if self.takes("/") {
                Operator::Div
            } else {
                return Some(left);
            };
            left = Expression::pair(operator, left, self.power()?);
        }
    }

    fn power(&mut self) -> Option<Expression> {
        let base = self.atom()?;
        Some(if self.takes("²") {
            Expression::Square(Box::new(base))
        } else {
            base
        })
    }

    fn atom(&mut self) -> Option<Expression> {
        if self.takes("(") {
            return self.closed();
        }
        let word = self.word();
        if self.takes("(") {
            return self.call(word);
        }
        if word.as_bytes().first()?.is_ascii_digit() {
            return decimal::parse(word).map(Expression::Number);
        }
        (self.names)(word).map(Expression::Symbol)
    }

    /// The rest of a bracket that is open.
    fn closed(&mut self) -> Option<Expression> {
        let inside = self.sum()?;
        self.takes(")").then_some(inside)
    }

    fn call(&mut self, name: &str) -> Option<Expression> {
        let function = match name {
            "sin" => Function::Sin,
            "cos" => Function::Cos,
            "atan" => Function::Atan,
            "sqrt" => Function::Sqrt,
            "abs" => Function::Abs,
            "min" => {
                let left = self.sum()?;
                let right = self.takes(";").then(|| self.closed())??;
                return Some(Expression::pair(Operator::Min, left, right));
            }
            _ => return None,
        };
        Some(Expression::Call(function, Box::new(self.closed()?)))
    }

    /// Everything up to the next sign or blank: a number, a symbol or the name of a function.
    fn word(&mut self) -> &'a str {
        let ends = |c| matches!(c, ' ' | '+' | '-' | '*' | '/' | '(' | ')' | ';' | '²');
        let end = self.rest.find(ends).unwrap_or(self.rest.len());
        let (word, rest) = self.rest.split_at_checked(end).unwrap_or((self.rest, ""));
        self.rest = rest;
        word
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Lang;

    /// Reads an equation of symbols that are all known.
    fn text(equation: &str) -> Option<String> {
        let names = |name: &str| {
            ["W", "b", "m", "a_x", "h", "L", "θ", "N_f0"]
                .into_iter()
                .find(|known| *known == name)
        };
        read(equation, &names).map(|expression| expression.text(&|_| None, Lang::English))
    }

    #[test]
    fn an_equation_means_what_its_brackets_say() {
        for (equation, want) in [
            ("W", "W"),
            ("-atan(W/L)", "−arctan (W/L)"),
            ("W - b - m", "W − b − m"),
            ("W - (b - m)", "W − (b − m)"),
            ("W*b/L", "W·b/L"),
            ("W*(b/L)", "W·b/L"),
            ("W/b/L", "W/b/L"),
            ("(W*cos(θ)*b - m*a_x*h)/L", "(W·cos θ·b − m·a_x·h)/L"),
            ("0.5*W²", "0.5·W²"),
            ("sqrt((W + 2*b)² + L²)", "√((W + 2·b)² + L²)"),
            ("min(W; abs(N_f0))", "min(W; |N_f0|)"),
            (" ( W+b )*m ", "(W + b)·m"),
        ] {
            assert_eq!(
                text(equation.trim_end()).as_deref(),
                Some(want),
                "{equation}"
            );
        }
    }

    #[test]
    fn what_is_malformed_or_unknown_is_refused() {
        for equation in [
            "", " ", "W +", "* W", "(W", "W)", "W b", "W²b", "sin W", "sinh(W)", "min(W)", "x",
            "1.2.3", "()", "W ; b", "W^2",
        ] {
            assert_eq!(text(equation), None, "{equation}");
        }
    }
}
