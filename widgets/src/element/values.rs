//! Plain data to and from the script's own values.

use axlewright_core::Tree;
use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// Deeper data is no scenario; data that contain themselves would have no end.
const DEEPEST: u8 = 16;

/// Plain objects and arrays, as `JSON.stringify` and the page's code expect them.
pub(super) fn to_js(tree: &Tree) -> JsValue {
    match tree {
        Tree::Null => JsValue::NULL,
        Tree::Bool(value) => (*value).into(),
        Tree::Number(value) => (*value).into(),
        Tree::Text(text) => text.into(),
        Tree::List(items) => {
            let list = Array::new();
            for item in items {
                list.push(&to_js(item));
            }
            list.into()
        }
        Tree::Map(entries) => {
            let object: JsValue = Object::new().into();
            for (name, value) in entries {
                // A fresh object refuses nothing.
                let _ = Reflect::set(&object, &name.into(), &to_js(value));
            }
            object
        }
    }
}

/// Data of the page: a plain value, or JSON. What is neither becomes nothing.
pub(super) fn tree_of(value: &JsValue) -> Tree {
    match value.as_string() {
        Some(text) => from_js(&JSON::parse(&text).unwrap_or(JsValue::NULL), DEEPEST),
        None => from_js(value, DEEPEST),
    }
}

fn from_js(value: &JsValue, depth: u8) -> Tree {
    if let Some(text) = value.as_string() {
        return Tree::Text(text);
    }
    if let Some(number) = value.as_f64() {
        return Tree::Number(number);
    }
    if let Some(flag) = value.as_bool() {
        return Tree::Bool(flag);
    }
    let Some(deeper) = depth.checked_sub(1).filter(|_| value.is_object()) else {
        return Tree::Null;
    };
    let entries = Object::entries(value.unchecked_ref());
    let entries = entries.iter().map(|pair| {
        let pair: Array = pair.unchecked_into();
        let name = pair.get(0).as_string().unwrap_or_default();
        (name, from_js(&pair.get(1), deeper))
    });
    if Array::is_array(value) {
        Tree::List(entries.map(|(_, item)| item).collect())
    } else {
        Tree::Map(entries.collect())
    }
}
