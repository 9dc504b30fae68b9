//! An expression printed as plain text, LaTeX and presentation MathML.
//!
//! A printer asks for each symbol's number; where it gets none it prints the symbol itself.

use core::cell::Cell;

use super::expression::{Expression, Function, Operator};
use crate::format;
use crate::words::Lang;

/// Gives the number to print in place of a symbol, or `None` for the symbol itself.
type Numbers<'a> = &'a dyn Fn(&str) -> Option<String>;

/// What stands in place of symbols, and the language of the constants beside them.
struct Values<'a> {
    numbers: Numbers<'a>,
    lang: Lang,
}

/// How tightly an expression holds together, loosest first.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
enum Binding {
    Sum,
    Product,
    Power,
    Atom,
}

impl Expression {
    /// Plain text: `(W·b − m·a_x·h)/L`.
    #[must_use]
    pub fn text(&self, numbers: Numbers, lang: Lang) -> String {
        let mut out = String::new();
        self.print(&Text, &Values { numbers, lang }, Binding::Sum, &mut out);
        out
    }

    /// LaTeX, for mathematics mode.
    #[must_use]
    pub fn latex(&self, numbers: Numbers, lang: Lang) -> String {
        let mut out = String::new();
        self.print(&Latex, &Values { numbers, lang }, Binding::Sum, &mut out);
        out
    }

    /// Presentation MathML (one `mrow`'s content).
    #[must_use]
    pub fn mathml(&self, numbers: Numbers, lang: Lang) -> String {
        let mut out = String::from("<mrow>");
        self.print(
            &MathMl::default(),
            &Values { numbers, lang },
            Binding::Sum,
            &mut out,
        );
        out.push_str("</mrow>");
        out
    }

    fn binding(&self, values: &Values) -> Binding {
        match self {
            Self::Number(value) if *value < 0.0 => Binding::Sum,
            Self::Symbol(name) if (values.numbers)(name).is_some_and(|n| n.starts_with('−')) => {
                Binding::Sum
            }
            Self::Number(_) | Self::Symbol(_) => Binding::Atom,
            Self::Negative(_) => Binding::Sum,
            Self::Square(_) => Binding::Power,
            Self::Call(Function::Sqrt | Function::Abs, _) => Binding::Atom,
            Self::Call(..) => Binding::Product,
            Self::Pair(Operator::Add | Operator::Sub, ..) => Binding::Sum,
            Self::Pair(Operator::Mul | Operator::Div, ..) => Binding::Product,
            Self::Pair(Operator::Min, ..) => Binding::Atom,
        }
    }

    fn print(&self, hand: &dyn Hand, values: &Values, least: Binding, out: &mut String) {
        let fenced = self.binding(values) < least;
        if fenced {
            hand.open(out);
        }
        match self {
            Self::Number(value) => hand.number(&equation_number(*value, values.lang), out),
            Self::Symbol(name) => match (values.numbers)(name) {
                Some(number) => hand.number(&number, out),
                None => hand.symbol(name, out),
            },
            Self::Negative(inner) => {
                hand.operator("−", out);
                inner.print(hand, values, Binding::Product, out);
            }
            Self::Square(inner) => {
                hand.square(out, &mut |out| {
                    inner.print(hand, values, Binding::Atom, out)
                });
            }
            Self::Call(function, inner) => {
                let least = match function {
                    Function::Sqrt | Function::Abs => Binding::Sum,
                    _ => Binding::Power,
                };
                hand.call(*function, out, &mut |out| {
                    inner.print(hand, values, least, out)
                });
            }
            Self::Pair(operator, left, right) => {
                pair(hand, values, *operator, left, right, out);
            }
        }
        if fenced {
            hand.close(out);
        }
    }
}

fn pair(
    hand: &dyn Hand,
    values: &Values,
    operator: Operator,
    left: &Expression,
    right: &Expression,
    out: &mut String,
) {
    let mut write = |sign: &str, least_left, least_right| {
        left.print(hand, values, least_left, out);
        hand.operator(sign, out);
        right.print(hand, values, least_right, out);
    };
    match operator {
        Operator::Add => write("+", Binding::Sum, Binding::Product),
        Operator::Sub => write("−", Binding::Sum, Binding::Product),
        Operator::Mul => write("·", Binding::Product, Binding::Product),
        Operator::Div => {
            let least = hand.fraction_needs();
            hand.fraction(
                out,
                &mut |out| left.print(hand, values, least.0, out),
                &mut |out| right.print(hand, values, least.1, out),
            );
        }
        Operator::Min => hand.minimum(
            out,
            &mut |out| left.print(hand, values, Binding::Sum, out),
            &mut |out| right.print(hand, values, Binding::Sum, out),
        ),
    }
}

/// A constant of an equation: as few digits as say it exactly, up to six.
fn equation_number(value: f64, lang: Lang) -> String {
    let whole = value.abs() < 1e6 && (value - crate::math::round(value)).abs() < f64::EPSILON;
    if whole {
        return format::fixed(value, 0, lang);
    }
    let text = format::significant(value, 6, lang);
    text.trim_end_matches('0').into()
}

type Part<'a> = &'a mut dyn FnMut(&mut String);

/// The marks of one notation.
trait Hand {
    fn number(&self, number: &str, out: &mut String);
    fn symbol(&self, name: &str, out: &mut String);
    fn operator(&self, sign: &str, out: &mut String);
    fn open(&self, out: &mut String);
    fn close(&self, out: &mut String);
    fn square(&self, out: &mut String, inner: Part);
    fn call(&self, function: Function, out: &mut String, inner: Part);
    fn fraction_needs(&self) -> (Binding, Binding) {
        (Binding::Sum, Binding::Sum)
    }
    fn fraction(&self, out: &mut String, over: Part, under: Part);
    fn minimum(&self, out: &mut String, left: Part, right: Part);
}

fn function_name(function: Function) -> &'static str {
    match function {
        Function::Sin => "sin",
        Function::Cos => "cos",
        Function::Atan => "arctan",
        Function::Sqrt | Function::Abs => "",
    }
}

struct Text;

impl Hand for Text {
    fn number(&self, number: &str, out: &mut String) {
        out.push_str(number);
    }
    fn symbol(&self, name: &str, out: &mut String) {
        out.push_str(name);
    }
    fn operator(&self, sign: &str, out: &mut String) {
        let tight = sign == "·" || out.is_empty() || out.ends_with('(') || out.ends_with('/');
        if tight {
            out.push_str(sign);
        } else {
            out.push(' ');
            out.push_str(sign);
            out.push(' ');
        }
    }
    fn open(&self, out: &mut String) {
        out.push('(');
    }
    fn close(&self, out: &mut String) {
        out.push(')');
    }
    fn square(&self, out: &mut String, inner: Part) {
        inner(out);
        out.push('²');
    }
    fn call(&self, function: Function, out: &mut String, inner: Part) {
        match function {
            Function::Sqrt => {
                out.push_str("√(");
                inner(out);
                out.push(')');
            }
            Function::Abs => {
                out.push('|');
                inner(out);
                out.push('|');
            }
            _ => {
                out.push_str(function_name(function));
                out.push(' ');
                inner(out);
            }
        }
    }
    fn fraction_needs(&self) -> (Binding, Binding) {
        (Binding::Product, Binding::Power)
    }
    fn fraction(&self, out: &mut String, over: Part, under: Part) {
        over(out);
        out.push('/');
        under(out);
    }
    fn minimum(&self, out: &mut String, left: Part, right: Part) {
        out.push_str("min(");
        left(out);
        out.push_str("; ");
        right(out);
        out.push(')');
    }
}

struct Latex;

impl Hand for Latex {
    fn number(&self, number: &str, out: &mut String) {
        out.push_str(&latex_number(number));
    }
    fn symbol(&self, name: &str, out: &mut String) {
        out.push_str(&latex_symbol(name));
    }
    fn operator(&self, sign: &str, out: &mut String) {
        out.push_str(match sign {
            "·" => " \\cdot ",
            "−" => " - ",
            other => return out.push_str(&format!(" {other} ")),
        });
    }
    fn open(&self, out: &mut String) {
        out.push_str("\\left(");
    }
    fn close(&self, out: &mut String) {
        out.push_str("\\right)");
    }
    fn square(&self, out: &mut String, inner: Part) {
        out.push('{');
        inner(out);
        out.push_str("}^{2}");
    }
    fn call(&self, function: Function, out: &mut String, inner: Part) {
        let (open, close) = match function {
            Function::Sqrt => ("\\sqrt{", "}"),
            Function::Abs => ("\\left|", "\\right|"),
            Function::Sin => ("\\sin ", ""),
            Function::Cos => ("\\cos ", ""),
            Function::Atan => ("\\arctan ", ""),
        };
        out.push_str(open);
        inner(out);
        out.push_str(close);
    }
    fn fraction(&self, out: &mut String, over: Part, under: Part) {
        out.push_str("\\frac{");
        over(out);
        out.push_str("}{");
        under(out);
        out.push('}');
    }
    fn minimum(&self, out: &mut String, left: Part, right: Part) {
        out.push_str("\\min\\left(");
        left(out);
        out.push_str(";\\, ");
        right(out);
        out.push_str("\\right)");
    }
}

/// A fraction inside a fraction is written with a stroke, as books do: stacked, its digits would be too
/// small to read.
#[derive(Default)]
struct MathMl {
    inside: Cell<bool>,
}

impl Hand for MathMl {
    fn number(&self, number: &str, out: &mut String) {
        out.push_str(&mathml_text(number));
    }
    fn symbol(&self, name: &str, out: &mut String) {
        out.push_str(&mathml_symbol(name));
    }
    fn operator(&self, sign: &str, out: &mut String) {
        out.push_str("<mo>");
        out.push_str(sign);
        out.push_str("</mo>");
    }
    fn open(&self, out: &mut String) {
        out.push_str("<mrow><mo>(</mo>");
    }
    fn close(&self, out: &mut String) {
        out.push_str("<mo>)</mo></mrow>");
    }
    fn square(&self, out: &mut String, inner: Part) {
        out.push_str("<msup><mrow>");
        inner(out);
        out.push_str("</mrow><mn>2</mn></msup>");
    }
    fn call(&self, function: Function, out: &mut String, inner: Part) {
        match function {
            Function::Sqrt => {
                out.push_str("<msqrt>");
                inner(out);
                out.push_str("</msqrt>");
            }
            Function::Abs => {
                out.push_str("<mrow><mo>|</mo>");
                inner(out);
                out.push_str("<mo>|</mo></mrow>");
            }
            _ => {
                out.push_str("<mi>");
                out.push_str(function_name(function));
                out.push_str("</mi><mo>\u{2061}</mo><mspace width=\"0.17em\"></mspace>");
                inner(out);
            }
        }
    }
    fn fraction_needs(&self) -> (Binding, Binding) {
        if self.inside.get() {
            (Binding::Product, Binding::Power)
        } else {
            (Binding::Sum, Binding::Sum)
        }
    }
    fn fraction(&self, out: &mut String, over: Part, under: Part) {
        if self.inside.get() {
            over(out);
            out.push_str("<mo>/</mo>");
            under(out);
            return;
        }
        self.inside.set(true);
        out.push_str("<mfrac><mrow>");
        over(out);
        out.push_str("</mrow><mrow>");
        under(out);
        out.push_str("</mrow></mfrac>");
        self.inside.set(false);
    }
    fn minimum(&self, out: &mut String, left: Part, right: Part) {
        out.push_str("<mi>min</mi><mrow><mo>(</mo>");
        left(out);
        out.push_str("<mo>;</mo>");
        right(out);
        out.push_str("<mo>)</mo></mrow>");
    }
}

/// LaTeX of a symbol: `N_f` → `N_{\mathrm{f}}`, `μ_s` → `\mu_{\mathrm{s}}`.
pub(super) fn latex_symbol(name: &str) -> String {
    let (base, below) = name.split_once('_').unwrap_or((name, ""));
    let mut text = String::new();
    for letter in base.chars() {
        match latex_letter(letter) {
            Some(command) => text.push_str(command),
            None => text.push(letter),
        }
    }
    if !below.is_empty() {
        text.push_str("_{\\mathrm{");
        text.push_str(below);
        text.push_str("}}");
    }
    text
}

fn latex_letter(letter: char) -> Option<&'static str> {
    Some(match letter {
        'μ' => "\\mu ",
        'θ' => "\\theta ",
        'ρ' => "\\rho ",
        'φ' => "\\varphi ",
        'κ' => "\\kappa ",
        'ζ' => "\\zeta ",
        'π' => "\\pi ",
        'Δ' => "\\Delta ",
        _ => return None,
    })
}

fn latex_number(number: &str) -> String {
    // LaTeX sets a bare comma as the end of a list, with a gap after it.
    number
        .replace(',', "{,}")
        .replace(format::THIN_SPACE, "\\,")
        .replace('−', "-")
}

/// Parts a text after its last digit.
fn number_and_unit(text: &str) -> (&str, &str) {
    let last = text.bytes().rposition(|byte| byte.is_ascii_digit());
    let unit_at = last.map_or(0, |at| at + 1);
    text.split_at_checked(unit_at).unwrap_or((text, ""))
}

/// LaTeX of a number with its unit.
pub(super) fn latex_quantity(text: &str) -> String {
    let (number, unit) = number_and_unit(text);
    let unit = unit.trim_start_matches(format::THIN_SPACE);
    let unit = unit
        .replace('·', "\\,")
        .replace('²', "^2")
        .replace('³', "^3")
        .replace('°', "^\\circ ")
        .replace('%', "\\%");
    if unit.is_empty() {
        latex_number(number)
    } else {
        format!("{}\\,\\mathrm{{{unit}}}", latex_number(number))
    }
}

/// MathML of a symbol with its subscript.
pub(super) fn mathml_symbol(name: &str) -> String {
    match name.split_once('_') {
        Some((base, below)) => {
            format!("<msub><mi>{base}</mi><mi mathvariant=\"normal\">{below}</mi></msub>")
        }
        None => format!("<mi>{name}</mi>"),
    }
}

/// MathML of a number with or without a unit.
pub(super) fn mathml_text(text: &str) -> String {
    let (number, unit) = number_and_unit(text);
    let mut out = match number.strip_prefix('−') {
        Some(positive) => format!("<mo>−</mo><mn>{positive}</mn>"),
        None => format!("<mn>{number}</mn>"),
    };
    let bare = unit.trim_start_matches(format::THIN_SPACE);
    if !bare.is_empty() {
        out.push_str(&format!("<mtext>{unit}</mtext>"));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::super::notation;
    use super::*;

    /// The tree of an equation whose symbols have one letter or two.
    fn tree(equation: &str) -> Expression {
        let names = |name: &str| {
            ["a", "b", "c", "h", "W", "θ", "ρ", "μ", "N_f"]
                .into_iter()
                .find(|known| *known == name)
        };
        notation::read(equation, &names).unwrap()
    }

    #[test]
    fn brackets_stand_where_they_are_needed_and_nowhere_else() {
        for (equation, want) in [
            ("(a + b)*c", "(a + b)·c"),
            ("a + (b*c)", "a + b·c"),
            ("a - (b - c)", "a − (b − c)"),
            ("(a - b) - c", "a − b − c"),
            ("a/(b*c)", "a/(b·c)"),
            ("(a*b)/c", "a·b/c"),
            ("-(a + b)", "−(a + b)"),
            ("W*cos(θ)*b", "W·cos θ·b"),
            ("sqrt((a²) + b²)", "√(a² + b²)"),
            ("(a + b)²", "(a + b)²"),
            ("0.5*ρ", "0.5·ρ"),
            ("min((a); b)", "min(a; b)"),
        ] {
            assert_eq!(tree(equation).text(&|_| None, Lang::English), want);
        }
    }

    #[test]
    fn negative_numbers_put_in_get_brackets() {
        let expression = tree("a - b*c");
        let numbers = |name: &str| (name == "b").then(|| "−2.5".to_owned());
        assert_eq!(expression.text(&numbers, Lang::English), "a − (−2.5)·c");
    }

    #[test]
    fn the_same_tree_prints_as_latex_and_mathml() {
        let expression = tree("μ*N_f/(1 + h)");
        assert_eq!(
            expression.latex(&|_| None, Lang::English),
            "\\frac{\\mu  \\cdot N_{\\mathrm{f}}}{1 + h}"
        );
        let mathml = expression.mathml(&|_| None, Lang::English);
        assert!(
            mathml.contains("<mfrac>") && mathml.contains("<msub><mi>N</mi>"),
            "{mathml}"
        );
        assert_eq!(
            latex_quantity("11\u{2009}320\u{2009}N"),
            "11\\,320\\,\\mathrm{N}"
        );
    }

    #[test]
    fn numbers_have_the_decimal_mark_of_their_language() {
        let expression = tree("0.5*ρ + min(a; b)");
        let numbers = |name: &str| (name != "b").then(|| "1,25".to_owned());
        let german = Lang::German;
        assert_eq!(expression.text(&numbers, german), "0,5·1,25 + min(1,25; b)");
        assert_eq!(
            expression.latex(&numbers, german),
            "0{,}5 \\cdot 1{,}25 + \\min\\left(1{,}25;\\, b\\right)"
        );
        let mathml = expression.mathml(&numbers, german);
        assert!(
            mathml.contains("<mn>0,5</mn>") && mathml.contains("<mn>1,25</mn>"),
            "{mathml}"
        );
        assert_eq!(
            expression.text(&|_| None, Lang::English),
            "0.5·ρ + min(a; b)"
        );
        assert_eq!(latex_quantity("2,865\u{2009}m"), "2{,}865\\,\\mathrm{m}");
    }
}
