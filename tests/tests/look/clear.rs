//! No two texts of a figure overlap, none leaves the page, none lies on a wheel, a motor or an arrow.

use crate::grid::{Case, each};
use crate::read::{self, Page};
use crate::shape::{bounds, meets};
use axlewright_widgets::visual::Drawing;
use std::collections::BTreeMap;

/// What is wrong on a page, one line each.
fn faults(page: &Page) -> Vec<(&'static str, String)> {
    let mut faults = Vec::new();
    for (index, text) in page.texts.iter().enumerate() {
        let box_ = &text.rect;
        if box_.x0 < 0.0 || box_.x1 > page.width || box_.y0 < 0.0 || box_.y1 > page.height {
            faults.push(("off the page", format!("{:?} {box_:?}", text.says)));
        }
        for other in &page.texts[index + 1..] {
            if box_.overlaps(&other.rect) {
                faults.push((
                    "on another text",
                    format!(
                        "{:?} {box_:?} and {:?} {:?}",
                        text.says, other.says, other.rect
                    ),
                ));
            }
        }
        for thing in &page.things {
            if !(thing.thin && text.rim) && meets(box_, &thing.shape) {
                faults.push((
                    thing.name,
                    format!("{:?} {box_:?} on {:?}", text.says, bounds(&thing.shape)),
                ));
            }
        }
    }
    for thing in page.things.iter().filter(|thing| !thing.thin) {
        let out = |p: &axlewright_widgets::figure::scene::Point| {
            p.x < -0.5 || p.x > page.width + 0.5 || p.y < -0.5 || p.y > page.height + 0.5
        };
        if thing.shape.iter().any(out) {
            faults.push((
                "thing off the page",
                format!("{} {:?}", thing.name, bounds(&thing.shape)),
            ));
        }
    }
    faults
}

fn page_of(case: &Case) -> Option<Page> {
    Some(match case.draw()? {
        Drawing::Scene(scene) => read::scene(&scene),
        Drawing::Chart(chart) => read::chart(&chart),
    })
}

/// States that are drawn for each vehicle and width.
const DRAWS: u32 = 40;

fn try_topic(topic: &'static str, at_least: u32) {
    try_draws(topic, DRAWS, at_least);
}

/// Tries a topic; `AXLEWRIGHT_DRAWS` sets how many states are drawn for each vehicle and width.
fn try_draws(topic: &'static str, draws: u32, at_least: u32) {
    let wanted = std::env::var("AXLEWRIGHT_DRAWS").ok();
    let draws = wanted.and_then(|text| text.parse().ok()).unwrap_or(draws);
    let (mut drawn, mut texts, mut failed) = (0, 0, 0);
    let mut kinds: BTreeMap<String, (u32, String)> = BTreeMap::new();
    each(topic, draws, |case| {
        let Some(page) = page_of(case) else { return };
        drawn += 1;
        texts += page.texts.len();
        let faults = faults(&page);
        failed += u32::from(!faults.is_empty());
        for (kind, what) in faults {
            let kind = format!("{} {kind}", case.view.word());
            let seen = kinds
                .entry(kind)
                .or_insert_with(|| (0, format!("{what}\n      {}", case.name())));
            seen.0 += 1;
        }
    });
    assert!(
        drawn >= at_least && texts > 5 * drawn as usize,
        "{topic}: {drawn} figures with {texts} texts are too few to prove anything"
    );
    let list: Vec<String> = kinds
        .iter()
        .map(|(kind, (count, first))| format!("{count} × {kind}: {first}"))
        .collect();
    println!("{topic}: {drawn} figures drawn, {failed} with a fault");
    assert!(
        failed == 0,
        "{topic}: {failed} of {drawn} figures have a fault\n  {}",
        list.join("\n  ")
    );
}

#[test]
fn labels_of_load_transfer_are_clear() {
    try_topic("load_transfer", 1000);
}

#[test]
fn labels_of_traction_are_clear() {
    try_topic("traction", 1000);
}

#[test]
fn labels_of_turn_in_place_are_clear() {
    // Half of the states are moments of a spin-up, and each of those is a run.
    try_draws("turn_in_place", 12, 2000);
}

#[test]
fn labels_of_packaging_are_clear() {
    try_topic("packaging", 1000);
}

#[test]
fn labels_of_motor_split_are_clear() {
    try_draws("motor_split", 10, 500);
}

#[test]
fn labels_of_launch_are_clear() {
    try_draws("launch", 3, 200);
}

#[test]
fn labels_of_cornering_are_clear() {
    try_draws("cornering", 10, 500);
}

#[test]
fn labels_of_idle_drag_are_clear() {
    try_draws("idle_drag", 5, 300);
}

#[test]
fn labels_of_choice_are_clear() {
    try_draws("choice", 1, 60);
}
