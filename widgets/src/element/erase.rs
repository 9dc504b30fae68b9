//! Closures under one type each.
//!
//! Leptos makes its machinery anew for every type of closure, and the browser pays for every copy.
//! Boxed closures share it.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::Event;

/// A text that follows the state.
pub(super) fn text(read: impl Fn() -> String + Send + Sync + 'static) -> Signal<String> {
    Signal::derive(read)
}

/// A yes or no that follows the state.
pub(super) fn flag(read: impl Fn() -> bool + Send + Sync + 'static) -> Signal<bool> {
    Signal::derive(read)
}

/// A part of the view that follows the state.
pub(super) fn part(
    read: impl Fn() -> Vec<AnyView> + Send + Sync + 'static,
) -> Box<dyn Fn() -> Vec<AnyView> + Send + Sync> {
    Box::new(read)
}

/// A listener.
pub(super) fn on<E: 'static>(listener: impl FnMut(E) + 'static) -> Box<dyn FnMut(E)> {
    Box::new(listener)
}

/// Does something now and whenever what it read has changed.
pub(super) fn follow(mut act: impl FnMut() + 'static) {
    let act: Box<dyn FnMut(Option<()>)> = Box::new(move |_| act());
    Effect::new(act);
}

/// The element that an event comes from, if it is of the wanted kind.
pub(super) fn target<T: JsCast>(event: &Event) -> Option<T> {
    event.target()?.dyn_into().ok()
}
