//! One value against another, a point for each row.

use super::{Frame, Ruler, axes, begin, end};
use crate::figure::palette::Role;
use crate::figure::svg::SvgOptions;

/// What it shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Points {
    /// What every plot has.
    pub frame: Frame,
    /// Along.
    pub x: Ruler,
    /// Up.
    pub y: Ruler,
    /// The points; what is not finite is left out.
    pub points: Vec<(f64, f64)>,
}

/// Draws it as SVG.
#[must_use]
pub fn points(plot: &Points, options: &SvgOptions) -> String {
    let (mut writer, top) = begin(&plot.frame, options);
    let area = axes(&mut writer, &plot.frame, &plot.x, &plot.y, top);
    // Rings stay apart where filled dots would make one blot; many of them are smaller.
    let radius = if plot.points.len() > 400 { 1.6 } else { 2.6 };
    let places = plot.points.iter().map(|(x, y)| area.place(*x, *y));
    for place in places.filter(|place| place.x.is_finite() && place.y.is_finite()) {
        writer.circle(place, radius);
        writer.ink(Role::Ink, 0.8);
        writer.put("/>\n");
    }
    end(writer)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{frame, options};
    use super::*;

    #[test]
    fn every_point_is_drawn_and_nothing_that_is_none() {
        let plot = Points {
            frame: frame(),
            x: Ruler::over("a".into(), "m".into(), (0.0, 9.0)),
            y: Ruler::of_words("b".into(), vec!["ice".into(), "snow".into()]),
            points: (0..10)
                .map(|i| (f64::from(i), f64::from(i % 2)))
                .chain([(f64::NAN, 0.0)])
                .collect(),
        };
        let svg = points(&plot, &options());
        assert_eq!(svg.matches("<circle").count(), 10);
        assert!(svg.contains(">ice<") && svg.contains(">snow<") && !svg.contains("NaN"));
    }
}
