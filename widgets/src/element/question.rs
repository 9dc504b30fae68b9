//! Question mode: the reader commits a prediction before the answer is shown.
//!
//! While a question is open there is no answer in the element at all: nothing is solved for show, so
//! figure, results, chart, their descriptions and the exported files have nothing to tell.

use super::erase::{Place, follow, tag, target};
use super::model::Model;
use super::state::State;
use super::working_html::working_html;
use crate::figure::svg::push_escaped;
use axlewright_core::question::{Asked, Question, SEED_LIMIT, Setting, Verdict};
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::working::Step;
use axlewright_core::{Problem, Scenario};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, HtmlInputElement};

/// A question on the page, open or answered.
pub(super) struct Quiz {
    setting: Setting,
    asked: Option<Asked>,
    /// What the page had set when it was asked.
    base: Scenario,
    /// What the reader typed or chose, kept while the form is written anew.
    typed: String,
    refused: Option<Problem>,
    hinted: bool,
    verdict: Option<Verdict>,
    /// Counts changes, so that the form is written anew only for one of its own.
    turn: u32,
    /// Where the focus goes after the next change: a selector, or nothing.
    focus: &'static str,
}

impl Quiz {
    fn new(setting: Setting, turn: u32) -> Self {
        Self {
            setting,
            asked: None,
            base: Scenario::default(),
            typed: String::new(),
            refused: None,
            hinted: false,
            verdict: None,
            turn,
            focus: "",
        }
    }

    pub(super) fn is_open(&self) -> bool {
        self.verdict.is_none()
    }

    /// The scenario that shows the answer, once there is a verdict.
    pub(super) fn answered(&self) -> Option<&Scenario> {
        let asked = self.asked.as_ref()?;
        self.verdict.as_ref().map(|_| &asked.solved)
    }
}

impl Model {
    /// Changes the question, if there is one, and writes its form anew.
    fn change_quiz(&self, change: &mut dyn FnMut(&mut Quiz)) {
        self.state.update(|state| {
            if let Some(quiz) = &mut state.quiz {
                change(quiz);
                quiz.turn = quiz.turn.wrapping_add(1);
            }
        });
    }

    /// Takes the attribute `question`; without it there is no question.
    pub(super) fn set_question(&self, text: Option<&str>) -> Result<(), Problem> {
        let topic = self.visual.topic;
        let setting = text.map(|text| Setting::read(topic, text)).transpose()?;
        self.state.update(|state| {
            let turn = state.quiz.as_ref().map_or(0, |quiz| quiz.turn);
            if state.quiz.is_some() {
                state.current = state.author.clone();
            }
            state.quiz = setting.map(|setting| Quiz::new(setting, turn.wrapping_add(1)));
        });
        Ok(())
    }

    /// Asks the question, unless it is asked already of what the page has set.
    pub(super) fn ask(&self) {
        let asked = self.peek(|state| {
            let quiz = state.quiz.as_ref()?;
            if quiz.asked.is_some() && quiz.base == state.author {
                return None;
            }
            let id = quiz.setting.id(self.visual.topic);
            Some(Question::make(
                self.visual.topic,
                id,
                quiz.setting.seed,
                &state.author,
            ))
        });
        let Some(asked) = asked else { return };
        let (asked, problem) = match asked {
            Ok(asked) => (Some(asked), None),
            Err(problem) => (None, Some(problem)),
        };
        self.state.update(|state| {
            let Some(quiz) = &mut state.quiz else { return };
            let focus = quiz.focus;
            *quiz = Quiz::new(quiz.setting, quiz.turn.wrapping_add(1));
            quiz.focus = focus;
            quiz.base = state.author.clone();
            if let Some(asked) = &asked {
                state.current = asked.scenario.clone();
            }
            quiz.asked = asked;
            state.problem = None;
            state.report = None;
            state.chart = None;
            state.svg.clear();
            state.title.clear();
        });
        if let Some(problem) = problem {
            self.refuse(problem);
        }
    }

    /// Judges what the reader commits; then the answer may be shown.
    fn commit(&self, text: &str) {
        let judged = self.peek(|state| {
            let quiz = state.quiz.as_ref().filter(|quiz| quiz.is_open())?;
            let asked = quiz.asked.as_ref()?;
            let verdict = asked.judge(text, state.lang, state.system);
            Some(verdict.map(|verdict| {
                let score = asked.score_tree(&verdict);
                (verdict, score, asked.solved.clone())
            }))
        });
        match judged {
            None => {}
            Some(Err(problem)) => {
                self.tell_problem(&problem);
                self.change_quiz(&mut |quiz| {
                    quiz.typed = text.into();
                    quiz.refused = Some(problem.clone());
                    quiz.focus = "input";
                });
            }
            Some(Ok((verdict, score, solved))) => {
                self.change_quiz(&mut |quiz| {
                    quiz.verdict = Some(verdict.clone());
                    quiz.focus = ".verdict";
                });
                self.tell("axle-score", &score);
                match self.solve(&solved) {
                    Ok(report) => self.accept(report, Some(solved)),
                    Err(problem) => self.refuse(problem),
                }
            }
        }
    }

    /// Asks again: the same question, or the next one.
    fn ask_again(&self, next: bool) {
        self.change_quiz(&mut |quiz| {
            if next {
                let seed = quiz.setting.seed.map(|seed| seed + 1);
                quiz.setting.seed = seed.map(|seed| if seed > SEED_LIMIT { 0 } else { seed });
            }
            quiz.asked = None;
            quiz.focus = "input";
        });
        self.ask();
    }
}

/// The form of the question.
pub(super) fn question(model: Model) -> AnyView {
    let place = Place::new();
    let mut written: Option<(u32, Lang, System)> = None;
    follow(move || {
        let Some(form) = place.get() else { return };
        let (turn, focus) = model.read(|s| {
            let turn = s.quiz.as_ref().map(|quiz| (quiz.turn, s.lang, s.system));
            (turn, s.quiz.as_ref().map_or("", |quiz| quiz.focus))
        });
        if turn == written {
            return;
        }
        let is_new = turn.map(|turn| turn.0) != written.map(|turn| turn.0);
        written = turn;
        form.set_inner_html(&model.peek(form_html));
        if is_new && !focus.is_empty() {
            let found = form.query_selector(focus).ok().flatten();
            if let Some(field) = found.and_then(|field| field.dyn_into::<HtmlElement>().ok()) {
                let _ = field.focus();
            }
        }
    });
    let typed = move || {
        let field = place
            .get_untracked()?
            .query_selector("input:checked, #prediction");
        let field: HtmlInputElement = field.ok().flatten()?.dyn_into().ok()?;
        Some(field.value())
    };
    let commit = move |event: web_sys::Event| {
        event.prevent_default();
        model.commit(&typed().unwrap_or_default());
    };
    let press = move |event| {
        let pressed = target::<Element>(&event).and_then(|button| button.get_attribute("data-act"));
        match pressed.as_deref() {
            Some("hint") => model.change_quiz(&mut |quiz| {
                quiz.typed = typed().unwrap_or_default();
                quiz.hinted = true;
                quiz.focus = ".hint";
            }),
            Some(act) => model.ask_again(act == "another"),
            None => {}
        }
    };
    tag("form", "question")
        .fixed("part", "question")
        .fixed("novalidate", "")
        .at(place)
        .on("submit", commit)
        .on("click", press)
        .view()
}

/// Writes HTML whose every text is escaped.
struct Writer {
    html: String,
    lang: Lang,
}

impl Writer {
    /// Marks of our own, and then a text.
    fn put(&mut self, marks: &str, text: &str) {
        self.html.push_str(marks);
        push_escaped(&mut self.html, text);
    }

    /// Marks of our own, and then a word of the catalogue.
    fn word(&mut self, marks: &str, key: &str) {
        self.put(marks, words::get(self.lang, key));
    }
}

fn form_html(state: &State) -> String {
    let mut writer = Writer {
        html: String::new(),
        lang: state.lang,
    };
    if let Some(quiz) = &state.quiz
        && let Some(asked) = &quiz.asked
    {
        let (lang, system) = (state.lang, state.system);
        let told = asked.statement(lang, system);
        writer.put("<p class=\"statement\">", &told);
        writer.word("</p><p class=\"about\">", "question.given");
        writer.html.push_str("</p><dl class=\"given\">");
        for (name, value) in asked.given(lang, system) {
            writer.put("<div><dt>", name);
            writer.put("</dt><dd>", &value);
            writer.html.push_str("</dd></div>");
        }
        writer.html.push_str("</dl>");
        match &quiz.verdict {
            None => put_field(&mut writer, quiz, asked, system),
            Some(verdict) => put_verdict(&mut writer, asked, verdict, system),
        }
    }
    writer.html
}

fn put_field(writer: &mut Writer, quiz: &Quiz, asked: &Asked, system: System) {
    let lang = writer.lang;
    let label = words::fill(lang, "question.field", &[&asked.label(lang)]);
    let choices = asked.choices(lang);
    let unit = asked.unit(system);
    let refused = quiz.refused.as_ref().map(|problem| problem.sentence(lang));
    if choices.is_empty() {
        writer.put("<label for=\"prediction\">", &label);
        writer.put(
            "</label><div class=\"entry\"><input class=\"number\" id=\"prediction\" type=\"text\" \
             autocomplete=\"off\" aria-describedby=\"help refusal\" aria-invalid=\"",
            if refused.is_some() { "true" } else { "false" },
        );
        writer.put("\" value=\"", &quiz.typed);
        writer.put("\"><span>", unit);
        writer
            .html
            .push_str("</span></div><p class=\"help\" id=\"help\">");
        if !unit.is_empty() {
            writer.put("", &words::fill(lang, "question.unit", &[unit]));
            writer.html.push(' ');
        }
        writer.put("", &asked.tolerance(lang));
        writer.html.push_str("</p>");
    } else {
        writer.put("<fieldset aria-describedby=\"refusal\"><legend>", &label);
        writer.html.push_str("</legend>");
        for (word, text) in choices {
            writer.put(
                "<label class=\"option\"><input type=\"radio\" name=\"prediction\" value=\"",
                word,
            );
            writer.html.push_str(if word == quiz.typed {
                "\" checked><span>"
            } else {
                "\"><span>"
            });
            writer.put("", text);
            writer.html.push_str("</span></label>");
        }
        writer.html.push_str("</fieldset>");
    }
    writer.put(
        "<p class=\"problem\" id=\"refusal\" role=\"alert\">",
        &refused.unwrap_or_default(),
    );
    if quiz.hinted {
        writer.put("</p><p class=\"hint\" tabindex=\"-1\">", asked.hint(lang));
    }
    writer.word(
        "</p><div class=\"actions\"><button type=\"submit\">",
        "question.commit",
    );
    if !quiz.hinted {
        writer.word(
            "</button><button type=\"button\" data-act=\"hint\">",
            "question.hint",
        );
    }
    writer.word("</button></div><p class=\"later\">", "question.later");
    writer.html.push_str("</p>");
}

fn put_verdict(writer: &mut Writer, asked: &Asked, verdict: &Verdict, system: System) {
    let lang = writer.lang;
    writer.put(
        "<p class=\"verdict\" role=\"status\" tabindex=\"-1\">",
        &asked.verdict(verdict, lang, system),
    );
    writer.word(
        "</p><div class=\"actions\"><button type=\"button\" data-act=\"again\">",
        "question.again",
    );
    if asked.seed.is_some() {
        writer.word(
            "</button><button type=\"button\" data-act=\"another\">",
            "question.another",
        );
    }
    writer.html.push_str("</button></div>");
    let Ok(report) = asked.report() else { return };
    // The steps of all that is shown, each once and in the order of the working.
    let wanted: Vec<&Step> = asked
        .shown
        .iter()
        .flat_map(|path| report.derivation(path))
        .collect();
    let steps: Vec<&Step> = report
        .steps
        .iter()
        .filter(|step| wanted.iter().any(|other| core::ptr::eq(*other, *step)))
        .collect();
    writer.word(
        "<details class=\"derivation\" part=\"working\" open><summary>",
        "ui.working",
    );
    writer.html.push_str("</summary>");
    writer.html.push_str(&working_html(&steps, lang));
    writer.html.push_str("</details>");
}
