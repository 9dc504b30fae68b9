//! The one root finder: a bracketed false position that cannot leave its bracket.

/// Root of a function that is positive or zero at `inside` and negative at `outside`.
///
/// Illinois variant of the false position (Dowell and Jarratt, BIT 11, 1971), with a halving step
/// whenever the bracket fails to shrink by half in three steps. Returns the bracket's inner end, so
/// the function there is never negative; a linear function is solved in two steps. Ends after at
/// most 200 evaluations, for any input.
pub(crate) fn last_not_negative(
    mut inside: f64,
    mut outside: f64,
    function: impl Fn(f64) -> f64,
) -> f64 {
    let mut at_inside = function(inside);
    let mut at_outside = function(outside);
    if !(at_inside > 0.0 && at_outside < 0.0) {
        return inside;
    }
    let mut checked_width = (outside - inside).abs();
    for step in 0..198 {
        let width = (outside - inside).abs();
        if width <= 4.0 * f64::EPSILON * inside.abs().max(outside.abs()).max(1e-300) {
            break;
        }
        let halve = step % 3 == 2 && {
            let slow = width > 0.5 * checked_width;
            checked_width = width;
            slow
        };
        let mut next = if halve {
            0.5 * (inside + outside)
        } else {
            outside - at_outside * (outside - inside) / (at_outside - at_inside)
        };
        let (low, high) = (inside.min(outside), inside.max(outside));
        if !(low < next && next < high) {
            next = 0.5 * (inside + outside);
            if next <= low || next >= high {
                break;
            }
        }
        let value = function(next);
        if value == 0.0 {
            return next;
        }
        if value > 0.0 {
            inside = next;
            at_inside = value;
            at_outside *= 0.5;
        } else {
            outside = next;
            at_outside = value;
            at_inside *= 0.5;
        }
    }
    inside
}

#[cfg(test)]
mod tests {
    use super::last_not_negative;

    #[test]
    fn finds_straight_and_crooked_roots() {
        let straight = last_not_negative(0.0, 10.0, |x| 3.0 - x);
        assert!((straight - 3.0).abs() < 1e-14, "{straight}");
        let cubic = last_not_negative(0.0, 10.0, |x| 2.0 - x * x * x);
        assert!((cubic * cubic * cubic - 2.0).abs() < 1e-13, "{cubic}");
        let kinked = last_not_negative(10.0, -10.0, |x| (x - 1.0).min(1e-3 * (x - 1.0)));
        assert!((kinked - 1.0).abs() < 1e-12, "{kinked}");
        let hopeless = last_not_negative(2.0, 5.0, |_| -1.0);
        assert!((hopeless - 2.0).abs() < f64::EPSILON, "{hopeless}");
    }
}
