//! Parts of a view under one type each.
//!
//! Leptos makes its machinery anew for every type of closure and for every tag with its own set of
//! attributes, and the browser pays for every copy. Boxed closures and a tag whose attributes and
//! children are lists share one copy.

use leptos::attr::any_attribute::{AnyAttribute, IntoAnyAttribute};
use leptos::attr::custom::custom_attribute;
use leptos::html::{Custom, custom};
use leptos::prelude::*;
use leptos::tachys::html::event;
use leptos::tachys::html::node_ref::node_ref;
use leptos::tachys::html::property::prop;
use std::sync::{Arc, Mutex};
use wasm_bindgen::JsCast;
use web_sys::Event;

/// A value that follows the state.
type Reader<T> = Arc<Mutex<dyn FnMut() -> T + Send>>;

/// Holds an element of the page once it is there.
pub(super) type Place = NodeRef<Custom<String>>;

/// A tag with its attributes and what is in it.
pub(super) struct Tag {
    name: String,
    attributes: Vec<AnyAttribute>,
    children: Vec<AnyView>,
}

/// A tag of a name and a class; an empty class is none.
///
/// Leptos keeps an element when its name is still the same, and compares with the name that the
/// page tells: in capitals, unless the page is written as XML.
pub(super) fn tag(name: &str, class: &str) -> Tag {
    let root = document().document_element();
    let name = if root.is_some_and(|root| root.tag_name() == "HTML") {
        name.to_ascii_uppercase()
    } else {
        name.to_owned()
    };
    let tag = Tag {
        name,
        attributes: Vec::new(),
        children: Vec::new(),
    };
    if class.is_empty() {
        tag
    } else {
        tag.fixed("class", class)
    }
}

impl Tag {
    /// An attribute that stays.
    pub(super) fn fixed(mut self, name: &'static str, value: &str) -> Self {
        self.attributes
            .push(custom_attribute(name, value.to_owned()).into_any_attr());
        self
    }

    /// An attribute that follows the state.
    pub(super) fn live(
        mut self,
        name: &'static str,
        read: impl FnMut() -> String + Send + 'static,
    ) -> Self {
        let read: Reader<String> = Arc::new(Mutex::new(read));
        self.attributes
            .push(custom_attribute(name, read).into_any_attr());
        self
    }

    fn property(mut self, name: &'static str, read: Reader<String>) -> Self {
        self.attributes.push(prop(name, read).into_any_attr());
        self
    }

    /// The value of a field, which follows the state.
    pub(super) fn value(self, read: impl FnMut() -> String + Send + 'static) -> Self {
        self.property("value", Arc::new(Mutex::new(read)))
    }

    /// A property that is true while the text is not empty.
    pub(super) fn flag(
        self,
        name: &'static str,
        read: impl FnMut() -> String + Send + 'static,
    ) -> Self {
        self.property(name, Arc::new(Mutex::new(read)))
    }

    /// The whole content as HTML, which follows the state. It must be safe: nothing here escapes it.
    pub(super) fn html(self, read: impl FnMut() -> String + Send + 'static) -> Self {
        self.property("innerHTML", Arc::new(Mutex::new(read)))
    }

    /// The whole content as text, which follows the state.
    pub(super) fn says(self, read: impl FnMut() -> String + Send + 'static) -> Self {
        self.property("textContent", Arc::new(Mutex::new(read)))
    }

    /// A listener.
    pub(super) fn on(mut self, name: &'static str, listener: impl FnMut(Event) + 'static) -> Self {
        let listener: Box<dyn FnMut(Event)> = Box::new(listener);
        let name = event::Custom::<Event>::new(name);
        self.attributes
            .push(event::on(name, listener).into_any_attr());
        self
    }

    /// Tells a place of the element.
    pub(super) fn at(mut self, place: Place) -> Self {
        self.attributes.push(node_ref(place).into_any_attr());
        self
    }

    /// A child.
    pub(super) fn with(mut self, child: AnyView) -> Self {
        self.children.push(child);
        self
    }

    /// A child, where there is one.
    pub(super) fn some(self, child: Option<AnyView>) -> Self {
        match child {
            Some(child) => self.with(child),
            None => self,
        }
    }

    /// A text that stays.
    pub(super) fn word(self, text: &str) -> Self {
        self.with(text.to_owned().into_any())
    }

    /// Children that follow the state.
    pub(super) fn part(self, read: impl FnMut() -> Vec<AnyView> + Send + 'static) -> Self {
        let read: Reader<Vec<AnyView>> = Arc::new(Mutex::new(read));
        self.with(read.into_any())
    }

    /// The finished tag.
    pub(super) fn view(self) -> AnyView {
        let element = custom(self.name).child(self.children);
        element.add_any_attr(self.attributes).into_any()
    }
}

/// Does something now and whenever what it read has changed.
pub(super) fn follow(mut act: impl FnMut() + 'static) {
    let act: Box<dyn FnMut(Option<()>)> = Box::new(move |_| act());
    Effect::new(act);
}

/// Does something when the element, or what is computed around this call, goes.
pub(super) fn at_end(act: impl FnOnce() + 'static) {
    let act: Box<dyn FnOnce()> = Box::new(act);
    let kept = StoredValue::new_local(Some(act));
    on_cleanup(move || {
        if let Some(act) = kept.try_update_value(Option::take).flatten() {
            act();
        }
    });
}

/// The element that an event comes from, if it is of the wanted kind.
pub(super) fn target<T: JsCast>(event: &Event) -> Option<T> {
    event.target()?.dyn_into().ok()
}
