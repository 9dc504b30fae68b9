//! Labels in one column, kept apart.

use super::number::within;

/// Moves labels on one vertical line apart so that each keeps `gap` to the
/// next, inside `low..high`, each staying as near to where it wants to be as
/// the others let it. `wanted` may be in any order; the result is in the same.
pub fn spread(wanted: &[f64], gap: f64, low: f64, high: f64) -> Vec<f64> {
    // Few labels: each is put in behind those that want to be above it.
    let mut order: Vec<usize> = Vec::with_capacity(wanted.len());
    for (index, wish) in wanted.iter().enumerate() {
        let mut place = order.len();
        while place > 0 && wanted[order[place - 1]] > *wish {
            place -= 1;
        }
        order.insert(place, index);
    }
    // Where the room is too small, the gap shrinks rather than that labels leave it.
    let gap = if wanted.len() > 1 {
        gap.min((high - low).max(0.0) / (wanted.len() - 1) as f64)
    } else {
        gap
    };
    // Groups of labels that touch, each kept centred on its members' wishes.
    let mut groups: Vec<(f64, usize)> = Vec::new();
    for index in &order {
        let wish = within(wanted[*index], low, high);
        groups.push((wish, 1));
        while groups.len() > 1 {
            let (middle, count) = groups[groups.len() - 1];
            let (above, above_count) = groups[groups.len() - 2];
            let need = gap * (count + above_count) as f64 / 2.0;
            if middle - above >= need - 1e-9 {
                break;
            }
            groups.pop();
            let total = (count + above_count) as f64;
            let joined = (middle * count as f64 + above * above_count as f64) / total;
            let half = gap * (total - 1.0) / 2.0;
            let last = groups.len() - 1;
            groups[last] = (joined.min(high - half).max(low + half), count + above_count);
        }
    }
    let mut placed = vec![0.0; wanted.len()];
    let mut next = order.iter();
    for (middle, count) in groups {
        for member in 0..count {
            if let Some(index) = next.next() {
                placed[*index] = middle + gap * (member as f64 - (count as f64 - 1.0) / 2.0);
            }
        }
    }
    placed
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spread_keeps_gap_order_and_room() {
        for seed in 0..200 {
            let wanted: Vec<f64> = (0..5)
                .map(|i| f64::from((seed * 37 + i * i * 53) % 97))
                .collect();
            let placed = spread(&wanted, 18.0, 0.0, 100.0);
            for a in 0..5 {
                assert!((-1e-6..=100.0 + 1e-6).contains(&placed[a]), "{placed:?}");
                for b in 0..5 {
                    if wanted[a] < wanted[b] {
                        assert!(
                            placed[b] - placed[a] >= 18.0 - 1e-6,
                            "{wanted:?} {placed:?}"
                        );
                    }
                }
            }
        }
    }

    #[test]
    fn spread_leaves_labels_that_are_free() {
        assert_eq!(spread(&[90.0, 10.0], 18.0, 0.0, 100.0), vec![90.0, 10.0]);
    }
}
