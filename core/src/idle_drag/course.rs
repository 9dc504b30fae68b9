//! The last drives, kept: an answer, its working and its chart ask for the same ones.

use super::{Drive, Question, drive};
use crate::layout::Layout;
use std::cell::RefCell;

/// Drives that are kept: as many as there are layouts.
const KEPT: usize = 8;

type Kept = Vec<(Question, Layout, Option<Drive>)>;

thread_local! {
    /// The same question has the same drive, so nothing but time depends on what is kept.
    static DRIVES: RefCell<Kept> = const { RefCell::new(Vec::new()) };
}

/// The drive of a layout over the question's cycle; none where its motors are too weak to follow.
///
/// The point that is looked at has no part in it, so a drive is kept while that moves.
#[must_use]
pub fn course(question: &Question, layout: Layout) -> Option<Drive> {
    let mut asked = question.clone();
    asked.speed_m_s = 0.0;
    asked.acceleration_m_s2 = 0.0;
    let known = DRIVES.with_borrow(|kept| {
        let same = kept.iter().find(|(q, l, _)| *l == layout && *q == asked);
        same.map(|(.., drive)| *drive)
    });
    known.unwrap_or_else(|| {
        let drive = drive(question, layout);
        DRIVES.with_borrow_mut(|kept| {
            if kept.len() >= KEPT {
                kept.remove(0);
            }
            kept.push((asked, layout, drive));
        });
        drive
    })
}
