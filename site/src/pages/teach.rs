//! What a teacher is told: goals and timing of a lesson, and what the course consists of.

use super::functions::{LANG, escaped, report, wrong};
use super::{Common, Context};
use axlewright_core::question;
use axlewright_core::topic::{self, TOPICS};
use axlewright_core::words;
use minijinja::Error;
use serde::Deserialize;
use std::collections::BTreeMap;

/// What a teacher is told of each topic, by its name.
pub type Lessons = BTreeMap<String, Lesson>;

/// One lesson.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lesson {
    /// What a student can do after it.
    pub goals: Vec<String>,
    /// What students predict before the element shows it.
    pub predict: String,
    /// What the class then finds out with the element.
    pub explore: String,
    /// What is asked at the end.
    pub discuss: String,
}

/// The parts of a lesson: minutes, and key of what is done.
const TIMING: &[(u32, &str)] = &[
    (5, "lesson_open"),
    (5, "lesson_predict"),
    (10, "lesson_explore"),
    (10, "lesson_example"),
    (10, "lesson_practice"),
    (5, "lesson_discuss"),
];

fn word(name: &str) -> &'static str {
    words::get(LANG, &format!("site.{name}"))
}

/// A part of the lesson plan of the page's topic.
pub(super) fn lesson(context: &Context, part: &str) -> Result<String, Error> {
    let topic = report(context)?.topic;
    let lesson = context
        .common
        .lessons
        .get(topic.name)
        .ok_or_else(|| wrong(format!("site/lessons.toml has no lesson on {}", topic.name)))?;
    let page = context
        .common
        .pages
        .iter()
        .find(|page| page.is_topic_page() && page.topic == topic.name);
    let list = |items: &[String]| {
        let items: Vec<String> = items.iter().map(|item| format!("- {item}")).collect();
        items.join("\n")
    };
    Ok(match part {
        "opening" => page.map_or(String::new(), |page| page.heading.clone()),
        "goals" => list(&lesson.goals),
        "timing" => {
            let mut text = format!(
                "| {} | {} |\n| --- | --- |\n",
                word("lesson_minutes"),
                word("lesson_what")
            );
            let mut total = 0;
            for (minutes, key) in TIMING {
                let own = match *key {
                    "lesson_predict" => &lesson.predict,
                    "lesson_explore" => &lesson.explore,
                    "lesson_discuss" => &lesson.discuss,
                    _ => "",
                };
                text.push_str(&format!("| {minutes} | {} {own} |\n", word(key)));
                total += minutes;
            }
            text.push_str(&format!("| {total} | {} |\n", word("lesson_total")));
            text
        }
        "mistakes" => {
            let found = context
                .common
                .texts
                .iter()
                .find(|(name, _)| name == topic.name);
            list(&mistakes(found.map_or("", |(_, text)| text)))
        }
        other => return Err(wrong(format!("a lesson has no part {other}"))),
    })
}

/// The mistakes that a topic's page names: what stands in bold quotes at the start of a line.
fn mistakes(text: &str) -> Vec<String> {
    text.lines()
        .filter_map(|line| line.strip_prefix("**\""))
        .filter_map(|line| line.split_once("\"**"))
        .map(|(mistake, _)| format!("“{mistake}”"))
        .collect()
}

/// What the course consists of: for each topic its page, lesson plan, questions and answers.
pub(super) fn course(common: &Common) -> String {
    let heads = [
        "course_topic",
        "course_lesson",
        "course_questions",
        "course_answers",
    ];
    let mut html = String::from("<table class=\"stack\">");
    html.push_str(&super::functions::head_row(&heads));
    for topic in TOPICS {
        let slug = topic.slug();
        let exists = |page: &str| common.pages.iter().any(|other| other.slug == page);
        let link = |page: String, text: &str| {
            if exists(&page) {
                format!("<a href=\"{page}.html\">{}</a>", escaped(text))
            } else {
                escaped(text)
            }
        };
        let count = topic::find(topic.name).map_or(0, |topic| question::of(topic).len());
        let counted = words::fill(LANG, "site.course_count", &[&count.to_string()]);
        html.push_str(&format!(
            "<tr><th scope=\"row\">{}</th><td data-head=\"{}\">{}</td><td data-head=\"{}\">{}</td><td data-head=\"{}\">{}</td></tr>",
            link(slug.clone(), words::get(LANG, &format!("topic.{}", topic.name))),
            word(heads[1]),
            link(format!("lesson-{slug}"), word("course_plan")),
            word(heads[2]),
            link(format!("questions-{slug}"), &counted),
            word(heads[3]),
            link(format!("answers-{slug}"), word("course_key")),
        ));
    }
    html + "</tbody></table>"
}
