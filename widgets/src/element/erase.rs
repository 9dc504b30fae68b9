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
use leptos::tachys::html::property::{IntoProperty, prop};
use leptos::tachys::reactive_graph::ReactiveFunction;
use leptos::tachys::renderer::{Rndr, types};
use std::sync::{Arc, Mutex};
use wasm_bindgen::prelude::*;
use web_sys::{Element, Event};

// Of the script (`widgets/js/rewrite.js`), beside which the glue stands.
#[wasm_bindgen]
extern "C" {
    /// Amends the content of a place that nobody else writes to, tag by tag, to be this HTML.
    fn rewrite(place: &Element, html: &str);
    /// Makes a text the whole content of a place that nobody else writes to.
    fn say(place: &Element, text: &str);
}

/// A value that follows the state.
type Reader<T> = Arc<Mutex<dyn FnMut() -> T + Send>>;

/// Holds an element of the page once it is there.
pub(super) type Place = NodeRef<Custom<String>>;

/// Content that nobody else writes to: it is written again only where it has changed. Leptos writes a
/// property whatever it was, and the browser would lay out every label of an element for every step of a
/// slider. What is amended keeps its boxes, where the browser would make new ones.
struct Content(String);

/// The contents that are amended, beside properties of the element.
const TEXT: &str = "text";
const HTML: &str = "html";

impl IntoProperty for Content {
    type State = (types::Element, String);
    type Cloneable = String;
    type CloneableOwned = String;

    fn hydrate<const FROM_SERVER: bool>(self, element: &types::Element, key: &str) -> Self::State {
        self.build(element, key)
    }

    fn build(self, element: &types::Element, key: &str) -> Self::State {
        match key {
            TEXT => say(element, &self.0),
            HTML => rewrite(element, &self.0),
            _ => Rndr::set_property_or_value(element, key, &self.0.as_str().into()),
        }
        (element.clone(), self.0)
    }

    fn rebuild(self, state: &mut Self::State, key: &str) {
        if state.1 != self.0 {
            *state = self.build(&state.0, key);
        }
    }

    fn into_cloneable(self) -> String {
        self.0
    }

    fn into_cloneable_owned(self) -> String {
        self.0
    }
}

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

    fn content(mut self, name: &'static str, mut read: Reader<String>) -> Self {
        let read: Reader<Content> = Arc::new(Mutex::new(move || Content(read.invoke())));
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
        self.content(HTML, Arc::new(Mutex::new(read)))
    }

    /// The options of a list, as HTML that follows the state. They are made anew: to amend one would not
    /// choose it.
    pub(super) fn options(self, read: impl FnMut() -> String + Send + 'static) -> Self {
        self.content("innerHTML", Arc::new(Mutex::new(read)))
    }

    /// The whole content as text, which follows the state.
    pub(super) fn says(self, read: impl FnMut() -> String + Send + 'static) -> Self {
        self.content(TEXT, Arc::new(Mutex::new(read)))
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

/// The element that an event comes from, if it is of the wanted kind.
pub(super) fn target<T: JsCast>(event: &Event) -> Option<T> {
    event.target()?.dyn_into().ok()
}
