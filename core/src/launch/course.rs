//! The course of a run: how it ended, and enough of its points to draw it.

use super::run::{Run, follow_run};
use super::state::AxleLimit;
use super::{Question, state};
use crate::layout::Layout;
use std::cell::RefCell;
use std::rc::Rc;

/// A point of a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Time \[s\].
    pub time_s: f64,
    /// Speed \[m/s\].
    pub speed_m_s: f64,
    /// What limits each axle, front and rear, up to here.
    pub limits: [AxleLimit; 2],
}

/// A run and its points.
#[derive(Clone, Debug)]
pub struct Course {
    /// How it ended, and the marks that it passed.
    pub run: Run,
    /// Points of it, dense at first and wherever something else begins to limit.
    pub points: Vec<Point>,
}

/// Most phases of an axle that are told; of more the shortest go.
const PHASES: usize = 4;

impl Course {
    /// What limits an axle, phase by phase, and until when \[s\]; the last ends with the run.
    #[must_use]
    pub fn phases(&self, axle: usize) -> Vec<(AxleLimit, f64)> {
        let mut phases: Vec<(AxleLimit, f64)> = Vec::new();
        for point in &self.points {
            add_phase(&mut phases, point.limits[axle], point.time_s);
        }
        while phases.len() > PHASES {
            let mut shortest = 0;
            let mut least_s = f64::INFINITY;
            let mut from_s = 0.0;
            for (at, (_, until_s)) in phases.iter().enumerate() {
                if until_s - from_s < least_s {
                    (shortest, least_s) = (at, until_s - from_s);
                }
                from_s = *until_s;
            }
            // Its time goes to the phase before it, or to the one after the first.
            let (_, until_s) = phases.remove(shortest);
            if let Some(before) = shortest.checked_sub(1) {
                phases[before].1 = until_s;
            }
            let known = core::mem::take(&mut phases);
            for (limit, until_s) in known {
                add_phase(&mut phases, limit, until_s);
            }
        }
        phases
    }
}

fn add_phase(phases: &mut Vec<(AxleLimit, f64)>, limit: AxleLimit, until_s: f64) {
    match phases.last_mut() {
        Some(last) if last.0 == limit => last.1 = until_s,
        _ => phases.push((limit, until_s)),
    }
}

/// Courses that are kept: as many as there are layouts.
const KEPT: usize = 8;

type Kept = Vec<(Question, Layout, Rc<Course>)>;

thread_local! {
    /// The last courses. An answer, its working and its chart ask for the same ones, and a run takes a
    /// thousand times as long as a closed form. The same question has the same course, so nothing but
    /// time depends on what is kept.
    static COURSES: RefCell<Kept> = const { RefCell::new(Vec::new()) };
}

/// The course of a layout.
#[must_use]
pub fn course(question: &Question, layout: Layout) -> Rc<Course> {
    let known = COURSES.with_borrow(|kept| {
        let same = kept.iter().find(|(q, l, _)| *l == layout && q == question);
        same.map(|(.., course)| course.clone())
    });
    known.unwrap_or_else(|| {
        let course = Rc::new(trace(question, layout));
        COURSES.with_borrow_mut(|kept| {
            if kept.len() >= KEPT {
                kept.remove(0);
            }
            kept.push((*question, layout, course.clone()));
        });
        course
    })
}

fn trace(question: &Question, layout: Layout) -> Course {
    let mut points: Vec<Point> = Vec::new();
    let run = follow_run(question, layout, &mut |way, now| {
        let point = Point {
            time_s: way.time_s,
            speed_m_s: way.state[state::SPEED],
            limits: now.limits,
        };
        let Some(last) = points.last() else {
            points.push(Point {
                time_s: 0.0,
                speed_m_s: 0.0,
                ..point
            });
            return;
        };
        let apart_s = (0.1 * point.time_s).min(0.1);
        if last.limits != point.limits || point.time_s - last.time_s > apart_s {
            points.push(point);
        }
    });
    let limits = points.last().map_or([AxleLimit::Undriven; 2], |p| p.limits);
    points.push(Point {
        time_s: run.end_s,
        speed_m_s: run.end_speed_m_s,
        limits,
    });
    Course { run, points }
}
