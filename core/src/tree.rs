//! The one shape in which scenarios come in and answers go out: plain nested data.

use core::fmt;
use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::ser::{Serialize, SerializeMap, SerializeSeq, Serializer};

/// Plain nested data, as TOML, JSON and JavaScript objects hold it. Maps keep their order.
#[derive(Clone, Debug, PartialEq)]
pub enum Tree {
    /// Nothing.
    Null,
    /// Yes or no.
    Bool(bool),
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Tree>),
    /// Named values, in order.
    Map(Vec<(String, Tree)>),
}

impl Tree {
    /// An empty map.
    #[must_use]
    pub fn map() -> Self {
        Self::Map(Vec::new())
    }

    /// A text.
    pub fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    /// The value of a name in a map.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&Self> {
        match self {
            Self::Map(entries) => entries.iter().find(|(key, _)| key == name).map(|(_, v)| v),
            _ => None,
        }
    }

    /// Sets a name of a map; anything else is left as it is.
    pub fn set(&mut self, name: &str, value: Self) {
        if let Self::Map(entries) = self {
            match entries.iter_mut().find(|(key, _)| key == name) {
                Some((_, old)) => *old = value,
                None => entries.push((name.into(), value)),
            }
        }
    }

    /// Sets a dotted path, making the maps on the way.
    pub fn set_path(&mut self, path: &str, value: Self) {
        match path.split_once('.') {
            None => self.set(path, value),
            Some((head, rest)) => {
                if self.get(head).is_none() {
                    self.set(head, Self::map());
                }
                if let Self::Map(entries) = self
                    && let Some((_, child)) = entries.iter_mut().find(|(key, _)| key == head)
                {
                    child.set_path(rest, value);
                }
            }
        }
    }
}

impl Serialize for Tree {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Null => serializer.serialize_unit(),
            Self::Bool(value) => serializer.serialize_bool(*value),
            Self::Number(value) => serializer.serialize_f64(*value),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(items) => {
                let mut list = serializer.serialize_seq(Some(items.len()))?;
                for item in items {
                    list.serialize_element(item)?;
                }
                list.end()
            }
            Self::Map(entries) => {
                let mut map = serializer.serialize_map(Some(entries.len()))?;
                for (key, value) in entries {
                    map.serialize_entry(key, value)?;
                }
                map.end()
            }
        }
    }
}

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(TreeVisitor)
    }
}

struct TreeVisitor;

impl<'de> Visitor<'de> for TreeVisitor {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("plain data")
    }

    fn visit_bool<E>(self, value: bool) -> Result<Tree, E> {
        Ok(Tree::Bool(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Tree, E> {
        Ok(Tree::Number(value as f64))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Tree, E> {
        Ok(Tree::Number(value as f64))
    }

    fn visit_f64<E>(self, value: f64) -> Result<Tree, E> {
        Ok(Tree::Number(value))
    }

    fn visit_str<E>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.into()))
    }

    fn visit_string<E>(self, text: String) -> Result<Tree, E> {
        Ok(Tree::Text(text))
    }

    fn visit_none<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<Tree, D::Error> {
        Tree::deserialize(deserializer)
    }

    fn visit_unit<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Tree, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = seq.next_element()? {
            items.push(item);
        }
        Ok(Tree::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Tree, A::Error> {
        let mut entries = Vec::new();
        while let Some(entry) = map.next_entry()? {
            entries.push(entry);
        }
        Ok(Tree::Map(entries))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_dotted_path_makes_the_maps_on_its_way() {
        let mut tree = Tree::map();
        tree.set_path("limits.F1.acceleration", Tree::Number(4.0));
        tree.set_path("limits.F1.limited_by", Tree::text("front_slip"));
        let limits = tree.get("limits").and_then(|l| l.get("F1"));
        assert_eq!(
            limits.and_then(|l| l.get("acceleration")),
            Some(&Tree::Number(4.0))
        );
        assert_eq!(
            limits.and_then(|l| l.get("limited_by")),
            Some(&Tree::text("front_slip"))
        );
    }
}
