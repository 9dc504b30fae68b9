//! The table of layouts, sorted by the head that was pressed.

use super::erase::{Place, tag, target};
use super::model::Model;
use crate::compare::{Sort, compare_html};
use axlewright_core::words;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

/// The table, where the topic has one.
pub(super) fn compare(model: Model) -> Option<AnyView> {
    let columns = model.visual.table;
    if columns.is_empty() {
        return None;
    }
    let sort: RwSignal<Option<Sort>> = RwSignal::new(None);
    let place = Place::new();
    let html = move || {
        let sort = sort.get();
        model.read(|s| match &s.report {
            Some(report) if s.show.readouts => {
                compare_html(report, columns, sort, (s.lang, s.system))
            }
            _ => String::new(),
        })
    };
    let press = move |event| {
        let pressed = target::<Element>(&event);
        if let Some(name) = pressed
            .as_ref()
            .and_then(|e| e.get_attribute("data-layout"))
        {
            model.change("layout", &name, None);
            // Its new button takes the focus that the old one had.
            let new = ["[data-layout=", &name, "]"].concat();
            return request_animation_frame(move || {
                let table = place.try_get_untracked().flatten();
                let button = table.and_then(|table| table.query_selector(&new).ok().flatten());
                if let Some(button) = button.and_then(|b| b.dyn_into::<HtmlElement>().ok()) {
                    let _ = button.focus();
                }
            });
        }
        let pressed = pressed
            .and_then(|element| element.get_attribute("data-column"))
            .and_then(|text| text.bytes().next())
            .map(|digit| usize::from(digit.wrapping_sub(b'0')));
        let Some(column) = pressed.filter(|column| *column < columns.len()) else {
            return;
        };
        sort.update(|sort| *sort = Some(Sort::pressed(*sort, column)));
        // The new head takes the focus that the old one had.
        request_animation_frame(move || {
            let table = place.try_get_untracked().flatten();
            let heads = table.map(|table| table.get_elements_by_tag_name("button"));
            let head = heads.and_then(|heads| heads.item(column as u32));
            if let Some(head) = head.and_then(|head| head.dyn_into::<HtmlElement>().ok()) {
                let _ = head.focus();
            }
        });
    };
    Some(
        tag("div", "compare")
            .fixed("role", "region")
            .fixed("tabindex", "0")
            .live("aria-label", move || {
                model.read(|s| words::get(s.lang, "input.layouts").into())
            })
            .at(place)
            .on("click", press)
            .html(html)
            .view(),
    )
}
