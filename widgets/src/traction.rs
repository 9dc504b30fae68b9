//! Traction limits: bars with the layouts seen from above, the side view of one layout at its limit,
//! and a chart against friction.

use crate::figure::{
    Axis, BarReference, BarRow, Bars, Chart, ChartPoint, Dash, GhostLoads, Line, Marker, Role,
    Scene, SideView, Vertical, bars, side_view,
};
use crate::load_transfer::chart_height;
use crate::side::SideState;
use crate::visual::{Drawing, Look, View, Visual, Voice, body};
use axlewright_core::layout::Layout;
use axlewright_core::surface::{self, Friction, SURFACES};
use axlewright_core::traction::{Limit, Question, TOPIC, limit};
use axlewright_core::units::Dimension as D;
use axlewright_core::{GRAVITY_M_S2, Problem, Scenario};

/// The looks of the topic.
pub const VISUAL: Visual = Visual {
    views: &[View::Plan, View::Side, View::Chart],
    ..Visual::of_topic(&TOPIC, draw)
};

fn draw(scenario: &Scenario, view: View, look: &Look) -> Result<Drawing, Problem> {
    let question = Question::from_scenario(scenario)?;
    Ok(match view {
        View::Plan | View::Bars => Drawing::Scene(rows(scenario, &question, look)?),
        View::Side => Drawing::Scene(side(scenario, &question, look)?),
        View::Chart => Drawing::Chart(chart(scenario, &question, look)?),
    })
}

/// Friction in words: one value, or two where the sides differ.
fn friction_text(voice: Voice, scenario: &Scenario) -> String {
    match Friction::peak(scenario) {
        Ok(friction) => {
            let (left, right) = (friction.peak_left, friction.peak_right);
            let left_text = voice.fixed(left, 2);
            if left.to_bits() == right.to_bits() {
                left_text
            } else {
                format!("{left_text} / {}", voice.fixed(right, 2))
            }
        }
        Err(_) => String::new(),
    }
}

fn limits(scenario: &Scenario, question: &Question) -> Result<Vec<(Layout, Limit)>, Problem> {
    scenario
        .layouts()
        .into_iter()
        .map(|layout| Ok((layout, limit(question, layout)?)))
        .collect()
}

fn rows(scenario: &Scenario, question: &Question, look: &Look) -> Result<Scene, Problem> {
    let voice = Voice::of(look);
    let limits = limits(scenario, question)?;
    let reason = |limit: &Limit| {
        let reason = voice.word(&format!("reason.{}", limit.limited_by.word()));
        if limit.acceleration_m_s2 < 0.0 {
            voice.fill("figure.traction.cannot_hold", &[&reason])
        } else {
            reason
        }
    };
    let in_g = |limit: &Limit| limit.acceleration_m_s2 / GRAVITY_M_S2;
    let by_limit = |a: &&(Layout, Limit), b: &&(Layout, Limit)| {
        a.1.acceleration_m_s2.total_cmp(&b.1.acceleration_m_s2)
    };
    let (worst, best) = (
        limits.iter().min_by(by_limit),
        limits.iter().max_by(by_limit),
    );
    let title = match (worst, best) {
        (Some(worst), Some(best)) if in_g(&best.1) - in_g(&worst.1) > 0.005 => voice.fill(
            "figure.traction.bars_title",
            &[
                worst.0.name(),
                &voice.acceleration(worst.1.acceleration_m_s2),
                best.0.name(),
                &voice.acceleration(best.1.acceleration_m_s2),
            ],
        ),
        (Some(only), _) => voice.fill(
            "figure.traction.bars_title_one",
            &[only.0.name(), &voice.acceleration(only.1.acceleration_m_s2)],
        ),
        _ => String::new(),
    };
    let friction = friction_text(voice, scenario);
    let ghost = look.pinned.and_then(|p| Question::from_scenario(p).ok());
    let row_texts: Vec<String> = limits
        .iter()
        .map(|(layout, limit)| {
            let value = voice.acceleration(limit.acceleration_m_s2);
            voice.fill(
                "figure.traction.bars_row",
                &[layout.name(), &value, &reason(limit)],
            )
        })
        .collect();
    let most_g = limits.iter().map(|(_, l)| in_g(l)).fold(0.0, f64::max);
    let peak = question
        .front
        .friction
        .peak_left
        .max(question.front.friction.peak_right);
    // A few fixed lengths of the axis, so that bars are seen to grow while a slider moves.
    let axis_max = [0.25, 0.5, 1.25, 2.5, 5.0]
        .into_iter()
        .find(|max| *max >= most_g.max(peak) * 1.02)
        .unwrap_or(10.0);
    Ok(bars(&Bars {
        width: look.width,
        title,
        subtitle: format!(
            "{} {}",
            voice.fill("figure.traction.bars_sub", &[&friction]),
            voice.whose(scenario)
        ),
        description: voice.fill("figure.traction.bars_describe", &[&row_texts.join("; ")]),
        body: body(scenario),
        axis_title: voice.word("figure.traction.axis"),
        axis_max,
        decimal_mark: look.lang.decimal_mark(),
        role: Role::Tractive,
        rows: limits
            .iter()
            .map(|(layout, limit)| BarRow {
                name: layout.name().into(),
                front_motors: layout.front().motors(),
                rear_motors: layout.rear().motors(),
                value: in_g(limit).max(0.0),
                value_text: voice.acceleration(limit.acceleration_m_s2),
                reason: reason(limit),
                pinned: ghost
                    .as_ref()
                    .and_then(|pinned| axlewright_core::traction::limit(pinned, *layout).ok())
                    .map(|found| in_g(&found).max(0.0)),
                chosen: *layout == scenario.layout(),
                choice: Some(("layout", layout.name())),
            })
            .collect(),
        references: vec![BarReference {
            value: peak,
            label: voice.fill("figure.traction.mu", &[&voice.fixed(peak, 2)]),
        }],
        caution: None,
    }))
}

fn side(scenario: &Scenario, question: &Question, look: &Look) -> Result<Scene, Problem> {
    let voice = Voice::of(look);
    let layout = scenario.layout();
    let found = limit(question, layout)?;
    let reason = voice.word(&format!("reason.{}", found.limited_by.word()));
    let acceleration = voice.acceleration(found.acceleration_m_s2);
    let state = SideState {
        scenario,
        chassis: &question.chassis,
        air: &question.air,
        slope: question.slope,
        acceleration_m_s2: found.acceleration_m_s2,
        loads: found.loads,
        forces_n: (found.front_force_n, found.rear_force_n),
    };
    Ok(side_view(&SideView {
        title: voice.fill(
            "figure.traction.side_title",
            &[layout.name(), &acceleration, &reason],
        ),
        subtitle: format!(
            "{} {}",
            voice.fill(
                "figure.traction.bars_sub",
                &[&friction_text(voice, scenario)]
            ),
            voice.whose(scenario)
        ),
        description: voice.fill(
            "figure.traction.side_describe",
            &[
                layout.name(),
                &acceleration,
                &reason,
                &voice.force(found.loads.front_n),
                &voice.force(found.loads.rear_n),
                &voice.force(found.front_force_n),
                &voice.force(found.rear_force_n),
            ],
        ),
        ghost: look.pinned.and_then(ghost),
        ..state.view(look)
    }))
}

/// The axle loads of a pinned scenario at its own limit.
fn ghost(pinned: &Scenario) -> Option<GhostLoads> {
    let found = limit(&Question::from_scenario(pinned).ok()?, pinned.layout()).ok()?;
    Some(GhostLoads {
        front_n: found.loads.front_n,
        rear_n: found.loads.rear_n,
    })
}

/// The question with another friction under all wheels.
fn with_friction(question: &Question, peak: f64) -> Question {
    let mut other = *question;
    let friction = Friction {
        peak_left: peak,
        peak_right: peak,
    };
    other.front.friction = friction;
    other.rear.friction = friction;
    other
}

fn chart(scenario: &Scenario, question: &Question, look: &Look) -> Result<Chart, Problem> {
    let voice = Voice::of(look);
    let peak = question.front.friction.peak_left;
    let max = [1.2, 2.0, 3.0, 5.0]
        .into_iter()
        .find(|m| peak * 1.05 < *m)
        .unwrap_or(5.25);
    let styles = [
        (Role::Front, Dash::Solid, Marker::Circle),
        (Role::Rear, Dash::Long, Marker::Square),
        (Role::Tractive, Dash::Short, Marker::Triangle),
        (Role::Inertia, Dash::DashDot, Marker::Diamond),
    ];
    // Layouts that push alike share a line, so that no line hides another.
    let mut lines: Vec<Line> = Vec::new();
    let mut present: Vec<ChartPoint> = Vec::new();
    let ghost = look.pinned.and_then(|p| Question::from_scenario(p).ok());
    let mut pinned: Vec<ChartPoint> = Vec::new();
    let mut told = Vec::new();
    for layout in scenario.layouts() {
        let mut points = Vec::new();
        for step in 0..=48 {
            let friction = max * (0.02 + 0.98 * f64::from(step) / 48.0);
            let found = limit(&with_friction(question, friction), layout)?;
            points.push((friction, found.acceleration_m_s2 / GRAVITY_M_S2));
        }
        let now = limit(question, layout)?.acceleration_m_s2;
        told.push(format!("{} {}", layout.name(), voice.acceleration(now)));
        let same = |line: &&mut Line| {
            line.points
                .iter()
                .zip(&points)
                .all(|(a, b)| (a.1 - b.1).abs() < 1e-9)
        };
        if let Some(line) = lines.iter_mut().find(same) {
            line.label = format!("{}, {}", line.label, layout.name());
            continue;
        }
        let (role, dash, marker) = styles[lines.len() % styles.len()];
        present.push(ChartPoint {
            x: peak,
            y: now / GRAVITY_M_S2,
            role,
        });
        if let Some(ghost) = &ghost {
            pinned.push(ChartPoint {
                x: ghost.front.friction.peak_left,
                y: limit(ghost, layout)?.acceleration_m_s2 / GRAVITY_M_S2,
                role,
            });
        }
        lines.push(Line {
            label: layout.name().into(),
            points,
            role,
            dash,
            marker,
        });
    }
    let top = lines
        .iter()
        .flat_map(|line| &line.points)
        .map(|point| point.1)
        .fold(0.0, f64::max);
    let marks = ["ice", "snow", "gravel", "asphalt_dry"];
    let verticals = SURFACES
        .iter()
        .filter(|s| marks.contains(&s.name))
        .map(|s| Vertical {
            x: surface::Surface::friction_peak(s),
            label: voice.word(&format!("surface.short.{}", s.name)),
        })
        .collect();
    Ok(Chart {
        width: look.width,
        height: chart_height(look.width),
        title: voice.word("figure.traction.chart_title"),
        subtitle: voice.whose(scenario),
        description: voice.fill(
            "figure.traction.chart_describe",
            &[&voice.fixed(peak, 2), &told.join("; ")],
        ),
        x_axis: Axis {
            title: voice.word("figure.axis.friction"),
            unit: String::new(),
            min: 0.0,
            max,
        },
        y_axis: Axis {
            title: voice.word("figure.axis.limit"),
            unit: voice.unit(D::Acceleration),
            min: 0.0,
            max: top.max(0.1),
        },
        lines,
        present,
        pinned,
        verticals,
        names: Vec::new(),
        decimal_mark: look.lang.decimal_mark(),
        x_input: Some("surface.friction_peak"),
    })
}
