//! Many questions, a line of JSON each, and a line of JSON for each answer: what a notebook talks to.
//!
//! A question is `{"topic": "traction", "scenario": {…}}`; `"working": true` asks for the working too. An
//! answer is that of `axlewright answer --format json`; a refusal is `{"problem": {…}}` with the field, its
//! value, what is allowed, and the sentence. One program answers all, so that a question costs no start.

use crate::scenario_file::one_line;
use axlewright_core::topic;
use axlewright_core::words::Lang;
use axlewright_core::{Problem, Scenario, Tree};
use std::io::{self, BufRead, Write};

/// Longest question: a scenario has some hundred bytes.
const LONGEST: u64 = 1_000_000;

/// Answers every line until there are no more. Each answer is sent at once.
///
/// # Errors
/// What the system says of the input or the output; a reader that has gone away ends it without one.
pub fn answer_lines(
    questions: &mut dyn BufRead,
    answers: &mut dyn Write,
    lang: Lang,
) -> io::Result<()> {
    let mut line = Vec::new();
    loop {
        line.clear();
        let read = io::Read::take(&mut *questions, LONGEST).read_until(b'\n', &mut line)?;
        if read == 0 {
            return Ok(());
        }
        if line.trim_ascii().is_empty() {
            continue;
        }
        let mut text = serde_json::to_string(&answer(&line, lang))?;
        text.push('\n');
        let sent = answers
            .write_all(text.as_bytes())
            .and_then(|()| answers.flush());
        match sent {
            Err(error) if error.kind() == io::ErrorKind::BrokenPipe => return Ok(()),
            other => other?,
        }
    }
}

fn answer(line: &[u8], lang: Lang) -> Tree {
    let question: Tree = match serde_json::from_slice(line) {
        Ok(question) => question,
        Err(error) => {
            let sentence = format!("The question is no JSON: {}", one_line(&error.to_string()));
            return refusal("", "", "", &sentence);
        }
    };
    solve(&question).unwrap_or_else(|problem| {
        let sentence = one_line(&problem.sentence(lang));
        let allowed = problem.allowed(lang);
        refusal(problem.field(), problem.value(), &allowed, &sentence)
    })
}

fn refusal(field: &str, value: &str, allowed: &str, sentence: &str) -> Tree {
    let mut tree = Tree::map();
    for (name, text) in [
        ("field", field),
        ("value", value),
        ("allowed", allowed),
        ("sentence", sentence),
    ] {
        tree.set_path(&["problem.", name].concat(), Tree::text(text));
    }
    tree
}

fn solve(question: &Tree) -> Result<Tree, Problem> {
    if let Tree::Map(entries) = question {
        for (name, _) in entries {
            if !["topic", "scenario", "working"].contains(&name.as_str()) {
                return Err(Problem::UnknownWord {
                    field: "question".into(),
                    value: name.chars().take(40).collect(),
                    allowed: vec!["topic", "scenario", "working"],
                });
            }
        }
    }
    let name = match question.get("topic") {
        Some(Tree::Text(name)) => name,
        _ => "",
    };
    let topic = topic::find(name)?;
    let scenario = match question.get("scenario") {
        None | Some(Tree::Null) => topic.example()?,
        Some(tree) if *tree == Tree::map() => topic.example()?,
        Some(tree) => Scenario::from_tree(tree)?,
    };
    let mut report = topic.brief(&scenario)?;
    if question.get("working") == Some(&Tree::Bool(true)) {
        report.write_working();
        return Ok(report.to_tree());
    }
    Ok(report.numbers_tree())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn answers(questions: &str) -> Vec<serde_json::Value> {
        let mut out = Vec::new();
        answer_lines(&mut questions.as_bytes(), &mut out, Lang::English).unwrap();
        let text = String::from_utf8(out).unwrap();
        text.lines()
            .map(|line| serde_json::from_str(line).unwrap())
            .collect()
    }

    #[test]
    fn every_line_has_its_answer_or_its_refusal() {
        let got = answers(
            "{\"topic\": \"traction\", \"scenario\": {\"vehicle\": {\"base\": \"corrie\"}}}\n\n\
             {\"topic\": \"traction\", \"scenario\": {\"vehicle\": {\"mass\": -5}}}\n\
             {\"topic\": \"tractoin\"}\nno JSON\n{\"topic\": \"launch\", \"colour\": 1}\n\
             {\"topic\": \"load-transfer\", \"working\": true}\n[]",
        );
        assert_eq!(got.len(), 7, "{got:#?}");
        assert!(got[0]["limits"]["R1"]["acceleration"].as_f64().unwrap() > 5.0);
        assert_eq!(got[0].get("working"), None);
        for (at, field, part) in [
            (1, "vehicle.mass", "10\u{2009}kg"),
            (2, "topic", "traction"),
            (3, "", "no JSON"),
            (4, "question", "scenario"),
            (6, "topic", "traction"),
        ] {
            let problem = &got[at]["problem"];
            assert_eq!(problem["field"], field, "{problem}");
            assert!(
                problem["sentence"].as_str().unwrap().contains(part),
                "{problem}"
            );
        }
        assert!(got[5]["working"].as_array().unwrap().len() > 3);
    }
}
