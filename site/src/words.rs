//! What the program alone says to people, in every language. The elements never say it, so it is not in
//! the catalogue that a browser must fetch.

use axlewright_core::words::Lang;

/// Key, then the text in English, German and Spanish. Sorted by key; `{0}` stands for a value put in.
#[rustfmt::skip]
const WORDS: &[(&str, [&str; 3])] = &[
    ("caption.made", [
        "Computed with Axlewright {0}, {1}.",
        "Berechnet mit Axlewright {0}, {1}.",
        "Calculado con Axlewright {0}, {1}.",
    ]),
    ("plot.correlation", [
        "{0} against {1}: correlation {2}",
        "{0} über {1}: Korrelation {2}",
        "{0} según {1}: correlación {2}",
    ]),
    ("plot.description", [
        "Drawn from {0} rows of a study over {1}.",
        "Gezeichnet aus {0} Zeilen einer Studie über {1}.",
        "Dibujado a partir de {0} filas de un estudio de {1}.",
    ]),
    ("plot.rows", [
        "{0} rows of the study.",
        "{0} Zeilen der Studie.",
        "{0} filas del estudio.",
    ]),
    ("plot.spread", ["{0} from {1} to {2}", "{0} von {1} bis {2}", "{0} de {1} a {2}"]),
    ("plot.top", [
        "{0}: the highest tenth has {1} and more (strong lines)",
        "{0}: das höchste Zehntel hat {1} und mehr (kräftige Linien)",
        "{0}: la décima parte más alta tiene {1} o más (líneas gruesas)",
    ]),
    ("study.absent", ["absent", "fehlt", "falta"]),
    ("study.count", ["count", "Anzahl", "cantidad"]),
    ("study.done", [
        "{0} rows, {1} without an answer",
        "{0} Zeilen, {1} ohne Antwort",
        "{0} filas, {1} sin respuesta",
    ]),
    ("study.greatest", ["greatest", "größter", "mayor"]),
    ("study.least", ["least", "kleinster", "menor"]),
    ("study.left", ["left", "verbleiben", "restantes"]),
    ("study.median", ["median", "Zentralwert", "mediana"]),
    ("study.not_in_range", [
        "{0}: out of range",
        "{0}: außerhalb des Bereichs",
        "{0}: fuera de rango",
    ]),
    ("study.quantile", ["{0} % below", "{0} % darunter", "{0} % por debajo"]),
    ("study.quantity", ["quantity, SI", "Größe, SI", "magnitud, SI"]),
    ("study.rows_per_second", ["rows/s", "Zeilen/s", "filas/s"]),
    ("study.without", ["Without an answer:", "Ohne Antwort:", "Sin respuesta:"]),
];

fn place(lang: Lang) -> usize {
    match lang {
        Lang::English => 0,
        Lang::German => 1,
        Lang::Spanish => 2,
    }
}

/// The text of a key; empty for a key that is not there, which the tests see to.
#[must_use]
pub fn get(lang: Lang, key: &str) -> &'static str {
    let found = WORDS.binary_search_by_key(&key, |(known, _)| known);
    found.map_or("", |at| WORDS[at].1[place(lang)])
}

/// The text of a key with `{0}`, `{1}`, … replaced.
#[must_use]
pub fn fill(lang: Lang, key: &str, parts: &[&str]) -> String {
    let mut text = String::new();
    let mut rest = get(lang, key);
    while let Some((before, after)) = rest.split_once('{') {
        let (number, tail) = after.split_once('}').unwrap_or((after, ""));
        let part = number.parse().ok().and_then(|at: usize| parts.get(at));
        text.push_str(before);
        text.push_str(part.copied().unwrap_or_default());
        rest = tail;
    }
    text.push_str(rest);
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_key_is_sorted_translated_and_has_the_same_values_put_in() {
        for pair in WORDS.windows(2) {
            assert!(pair[0].0 < pair[1].0, "{} before {}", pair[0].0, pair[1].0);
        }
        for (key, texts) in WORDS {
            let parts = |text: &str| {
                let mut found: Vec<_> = text
                    .match_indices('{')
                    .map(|(at, _)| text[at..at + 3].to_owned())
                    .collect();
                found.sort();
                found
            };
            for (lang, text) in Lang::ALL.into_iter().zip(texts) {
                assert!(!text.is_empty(), "{key}");
                assert_eq!(parts(text), parts(texts[0]), "{key}: {text}");
                assert_eq!(get(lang, key), *text);
            }
            assert!(
                texts[1] != texts[0] && texts[2] != texts[0],
                "{key} is not translated"
            );
        }
        assert_eq!(
            fill(Lang::German, "caption.made", &["1", "Zug"]),
            "Berechnet mit Axlewright 1, Zug."
        );
    }
}
