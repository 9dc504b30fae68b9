//! Question mode: the reader commits a prediction before the answer is shown.
//!
//! While a question is open there is no answer in the element at all: nothing is solved for show, so
//! figure, results, chart, their descriptions and the exported files have nothing to tell.

use super::erase::{Place, target};
use super::model::Model;
use super::parts;
use super::quiz::{Mode, Quiz, Written};
use super::sketch;
use super::state::State;
use crate::figure::svg::push_escaped;
use crate::figure::{NARROW, SvgOptions, Theme, chart_svg};
use crate::question_chart::question_chart;
use axlewright_core::question::{Asked, Question, SEED_LIMIT, Setting, Verdict};
use axlewright_core::units::System;
use axlewright_core::words::{self, Lang};
use axlewright_core::working::Step;
use axlewright_core::{Problem, Scenario};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, HtmlInputElement};

/// What the element calls.
pub(super) const MODE: Mode = Mode {
    set,
    ask,
    write,
    submit,
    press,
    drawn: sketch::heard,
};

/// A question not asked yet.
fn begin(setting: Setting, turn: u32) -> Quiz {
    Quiz {
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

/// Takes the attribute `question`; without it there is no question.
fn set(model: &Model, text: Option<&str>) -> Result<(), Problem> {
    let topic = model.visual.topic;
    let setting = text.map(|text| Setting::read(topic, text)).transpose()?;
    model.update(|state| {
        let turn = state.quiz.as_ref().map_or(0, |quiz| quiz.turn);
        if state.quiz.is_some() {
            state.current = state.author.clone();
        }
        state.quiz = setting.map(|setting| begin(setting, turn.wrapping_add(1)));
    });
    Ok(())
}

/// Asks the question, unless it is asked already of what the page has set.
fn ask(model: &Model) {
    let asked = model.peek(|state| {
        let quiz = state.quiz.as_ref()?;
        if quiz.asked.is_some() && quiz.base == state.author {
            return None;
        }
        let id = quiz.setting.id(model.visual.topic);
        Some(Question::make(
            model.visual.topic,
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
    model.update(|state| {
        let Some(quiz) = &mut state.quiz else { return };
        let focus = quiz.focus;
        *quiz = begin(quiz.setting, quiz.turn.wrapping_add(1));
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
        model.refuse(problem);
    }
}

impl Model {
    /// Changes the question, if there is one, and writes its form anew.
    fn change_quiz(&self, change: &mut dyn FnMut(&mut Quiz)) {
        self.update(|state| {
            if let Some(quiz) = &mut state.quiz {
                change(quiz);
                quiz.turn = quiz.turn.wrapping_add(1);
            }
        });
    }

    /// Judges what the reader commits; then the answer may be shown.
    fn commit(&self, text: &str) {
        let judged = self.peek(|state| {
            let quiz = state.quiz.as_ref().filter(|quiz| quiz.is_open())?;
            let asked = quiz.asked.as_ref()?;
            let verdict = asked.judge(text, state.lang, state.system);
            Some(verdict.map(|verdict| {
                let score = asked.score_tree(&verdict);
                (verdict, score)
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
            Some(Ok((verdict, score))) => {
                self.change_quiz(&mut |quiz| {
                    if let Some(asked) = &mut quiz.asked {
                        asked.settle(&verdict);
                    }
                    quiz.verdict = Some(verdict.clone());
                    quiz.focus = ".verdict";
                });
                let solved = self.peek(|state| Some(state.quiz.as_ref()?.answered()?.clone()));
                let solved = solved.unwrap_or_default();
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

/// Writes the form anew for a change of its own.
fn write(model: &Model, place: Place, written: &mut Written) {
    let Some(form) = place.get_untracked() else {
        return;
    };
    let (turn, focus) = model.peek(|s| {
        let width = |quiz: &Quiz| sketch::width(quiz, s.width) as u32;
        let quiz = s.quiz.as_ref();
        let turn = quiz.map(|quiz| (quiz.turn, s.lang, s.system, width(quiz)));
        (turn, s.quiz.as_ref().map_or("", |quiz| quiz.focus))
    });
    if turn == *written {
        return;
    }
    let is_new = turn.map(|turn| turn.0) != written.map(|turn| turn.0);
    // What was typed or drawn outlives another language or width; in other units it is another thing.
    let in_units = |turn: Written| turn.map(|turn| turn.2);
    if !is_new && in_units(turn) == in_units(*written) {
        let kept = typed(place).unwrap_or_default();
        let _ = model.state.try_update_untracked(|state| {
            if let Some(quiz) = &mut state.quiz {
                quiz.typed = kept;
            }
        });
    }
    *written = turn;
    form.set_inner_html(&model.peek(form_html));
    if is_new && !focus.is_empty() {
        let found = form.query_selector(focus).ok().flatten();
        if let Some(field) = found.and_then(|field| field.dyn_into::<HtmlElement>().ok()) {
            let _ = field.focus();
        }
    }
}

fn typed(place: Place) -> Option<String> {
    let form = place.get_untracked()?;
    if let Some(line) = sketch::drawn(&form) {
        return Some(line);
    }
    let field = form.query_selector("input:checked, #prediction");
    let field: HtmlInputElement = field.ok().flatten()?.dyn_into().ok()?;
    Some(field.value())
}

fn submit(model: &Model, place: Place, event: &Event) {
    event.prevent_default();
    model.commit(&typed(place).unwrap_or_default());
}

fn press(model: &Model, place: Place, event: &Event) {
    let pressed = target::<Element>(event).and_then(|button| button.get_attribute("data-act"));
    match pressed.as_deref() {
        Some("hint") => model.change_quiz(&mut |quiz| {
            quiz.typed = typed(place).unwrap_or_default();
            quiz.hinted = true;
            quiz.focus = ".hint";
        }),
        Some(act) => model.ask_again(act == "another"),
        None => {}
    }
}

/// Writes HTML whose every text is escaped.
pub(super) struct Writer {
    pub(super) html: String,
    pub(super) lang: Lang,
}

impl Writer {
    /// Marks of our own, and then a text.
    pub(super) fn put(&mut self, marks: &str, text: &str) {
        self.html.push_str(marks);
        push_escaped(&mut self.html, text);
    }

    /// Marks of our own, and then a word of the catalogue.
    pub(super) fn word(&mut self, marks: &str, key: &str) {
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
        writer.html.push_str("</p>");
        put_shown(&mut writer, asked, system);
        match &quiz.verdict {
            None => put_field(&mut writer, quiz, asked, state),
            Some(verdict) => put_verdict(&mut writer, quiz, asked, verdict, state),
        }
    }
    writer.html
}

/// What the reader goes by: a chart, or the given values, and the solution to be checked.
fn put_shown(writer: &mut Writer, asked: &Asked, system: System) {
    let lang = writer.lang;
    if let Some(chart) = question_chart(asked, NARROW, lang, system) {
        let options = SvgOptions {
            prefix: "question",
            theme: Theme::Live,
            ..SvgOptions::default()
        };
        let svg = chart_svg(&chart, &options);
        writer.html.push_str("<div class=\"read-off\">");
        writer.html.push_str(&svg);
        writer.html.push_str("</div>");
        return;
    }
    writer.word("<p class=\"about\">", "question.given");
    writer.html.push_str("</p><dl class=\"given\">");
    for (name, value) in asked.given(lang, system) {
        writer.put("<div><dt>", name);
        writer.put("</dt><dd>", &value);
        writer.html.push_str("</dd></div>");
    }
    writer.html.push_str("</dl>");
    if let Some(spoilt) = &asked.spoilt
        && let Some(html) = parts::working()
    {
        let lines: Vec<&Step> = spoilt.lines.iter().collect();
        writer.html.push_str(&html(&lines, lang));
    }
}

fn put_field(writer: &mut Writer, quiz: &Quiz, asked: &Asked, state: &State) {
    let (lang, system) = (writer.lang, state.system);
    let label = words::fill(lang, "question.field", &[&asked.label(lang)]);
    let choices = asked.choices(lang);
    let unit = asked.unit(system);
    let refused = quiz.refused.as_ref().map(|problem| problem.sentence(lang));
    if asked.course().is_some() {
        sketch::put_axes(writer, quiz, asked, (&label, state));
    } else if choices.is_empty() {
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

fn put_verdict(writer: &mut Writer, quiz: &Quiz, asked: &Asked, verdict: &Verdict, state: &State) {
    let (lang, system) = (writer.lang, state.system);
    writer.put(
        "<p class=\"verdict\" role=\"status\" tabindex=\"-1\">",
        &asked.verdict(verdict, lang, system),
    );
    writer.html.push_str("</p>");
    sketch::put_lines(writer, quiz, asked, (verdict, state));
    writer.word(
        "<div class=\"actions\"><button type=\"button\" data-act=\"again\">",
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
    let steps = report.derivations(&asked.shown);
    writer.word(
        "<details class=\"derivation\" part=\"working\" open><summary>",
        "ui.working",
    );
    writer.html.push_str("</summary>");
    // The script brings that part together with this one.
    if let Some(html) = parts::working() {
        writer.html.push_str(&html(&steps, lang));
    }
    writer.html.push_str("</details>");
}
