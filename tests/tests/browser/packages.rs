//! The package for course systems in a small host that implements the standard's script interface, and
//! the package for npm in a page that Vite made.

use axlewright_core::topic::TOPICS;
use axlewright_tests::host::Host;
use axlewright_tests::session::{Window, answer_of_program, site};
use serde_json::json;
use std::process::Command;
use thirtyfour::By;

fn done(command: &mut Command) -> String {
    let output = command
        .output()
        .unwrap_or_else(|e| panic!("{command:?}: {e} (tests/run installs it)"));
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{command:?}: {errors}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// The run-time interface of SCORM 1.2, as far as a lesson may use it: every call is kept, and what the
/// standard forbids throws.
const HOST: &str = r#"<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Host</title><script>
const data = JSON.parse(sessionStorage.getItem("data") || "{}");
const calls = []; let state = "new";
const MODEL = {
  "cmi.core.lesson_status": /^(passed|completed|failed|incomplete|browsed|not attempted)$/,
  "cmi.core.score.raw": /^(100|\d{1,2})(\.\d+)?$|^$/, "cmi.core.score.min": /^\d+$/, "cmi.core.score.max": /^\d+$/,
  "cmi.core.session_time": /^\d{2,4}:\d\d:\d\d(\.\d{1,2})?$/, "cmi.core.exit": /^(time-out|suspend|logout|)$/,
  "cmi.suspend_data": /^.{0,4096}$/s,
};
const faults = [];
const must = (holds, what) => { if (!holds) faults.push(what); return holds; };
window.API = {
  LMSInitialize: (x) => { calls.push("init"); must(x === "" && state === "new", "initialize"); state = "on"; return "true"; },
  LMSFinish: (x) => { calls.push("finish"); must(x === "" && state === "on", "finish"); state = "off"; sessionStorage.setItem("data", JSON.stringify(data)); return "true"; },
  LMSGetValue: (name) => { must(state === "on" && name in MODEL, "get " + name); return data[name] ?? ""; },
  LMSSetValue: (name, value) => { calls.push(name); must(state === "on" && typeof value === "string" && MODEL[name]?.test(value), `set ${name} ${value}`); data[name] = value; return "true"; },
  LMSCommit: (x) => { must(x === "" && state === "on", "commit"); return "true"; },
  LMSGetLastError: () => "0", LMSGetErrorString: () => "", LMSGetDiagnostic: () => "",
};
const open = (lesson) => { state = "new"; document.querySelector("iframe").src = lesson; };
</script></head><body><iframe title="lesson" width="1000" height="800"></iframe></body></html>"#;

const ANSWER: &str = "
const frame = document.querySelector('iframe').contentWindow;
for (let i = 0; i < 200 && !(frame.customElements.get(TAG)); i += 1) await new Promise(r => setTimeout(r, 50));
const all = [...frame.document.querySelectorAll('.practice > [question]')];
let at = 0;
for (const e of all) {
  if (!await e.updateComplete) throw new Error('does not start');
  const root = e.shadowRoot; const radio = root.querySelector('input[name=prediction]');
  const line = [...root.querySelectorAll('.pad input')];
  if (radio) radio.checked = true;
  else if (line.length) for (const handle of line) { handle.value = handle.max; handle.dispatchEvent(new frame.Event('input', { bubbles: true })); }
  else { const field = root.querySelector('#prediction'); field.value = '1'; field.dispatchEvent(new frame.Event('input', { bubbles: true })); }
  if (radio) radio.dispatchEvent(new frame.Event('change', { bubbles: true }));
  const was = data['cmi.core.lesson_status'];
  if (was !== 'incomplete') throw new Error('before the last answer it is ' + was);
  root.querySelector('form').requestSubmit();
  await new Promise(r => setTimeout(r, 400)); at += 1;
}
return [all.map(e => e.score?.score ?? null), data, faults];
";

/// Looks a word up from a lesson, as a reader does, and comes back.
async fn look_a_word_up(window: &Window, topic: &str) {
    let driver = &window.driver;
    let lesson = driver.window().await.expect("a window");
    driver.enter_frame(0).await.expect("the lesson");
    let terms = driver.find_all(By::Css("a.term")).await.expect("terms");
    let mut clicked = false;
    for term in terms {
        if !clicked && term.is_displayed().await.expect("known") {
            term.click().await.expect("a click");
            clicked = true;
        }
    }
    assert!(clicked, "{topic}: no term is shown");
    driver.enter_default_frame().await.expect("the host");
    window
        .run("await new Promise(r => setTimeout(r, 500));")
        .await;
    let ended = window
        .run("return [calls.includes('finish'), document.querySelector('iframe').contentWindow.location.pathname.split('/').at(-1)];")
        .await;
    assert_eq!(
        ended,
        json!([false, format!("{topic}.html")]),
        "a word that is looked up ends no lesson"
    );
    let windows = driver.windows().await.expect("windows");
    let other: Vec<_> = windows.into_iter().filter(|one| *one != lesson).collect();
    assert_eq!(other.len(), 1, "{topic}: the glossary has its own window");
    driver.switch_to_window(other[0].clone()).await.expect("it");
    let seen = window
        .run("return [document.querySelector('h1').textContent.length > 0, location.hash.length > 1 && document.querySelector(location.hash) !== null, window.opener === null];")
        .await;
    assert_eq!(seen, json!([true, true, true]), "{topic}");
    driver.close_window().await.expect("closed");
    driver.switch_to_window(lesson).await.expect("back");
}

#[tokio::test]
async fn each_topic_reports_completion_and_score_to_the_host() {
    let folder = site().folder.join("course-host");
    let _ = std::fs::remove_dir_all(&folder);
    let script = "import sys, zipfile; zipfile.ZipFile(sys.argv[1]).extractall(sys.argv[2])";
    let package = site().folder.join("axlewright-scorm12.zip");
    done(
        Command::new("python3")
            .args(["-c", script])
            .arg(package)
            .arg(&folder),
    );
    std::fs::write(folder.join("host.html"), HOST).expect("a host");
    // The host's own script stands in its page, so no policy can hold there: another small server.
    let url = Host::bare(&folder).url;
    let window = Window::open().await;
    for topic in TOPICS {
        window.go(&format!("{url}host.html")).await;
        window.run("sessionStorage.clear();").await;
        window.go(&format!("{url}host.html")).await;
        let lesson = format!("{}.html", topic.slug());
        window
            .run(&format!(
                "const frame = document.querySelector('iframe');\
                 const there = new Promise(r => frame.addEventListener('load', r, {{ once: true }}));\
                 open('{lesson}'); await there;"
            ))
            .await;
        look_a_word_up(&window, &topic.slug()).await;
        let seen = window
            .run(&ANSWER.replace("TAG", &format!("'{}'", topic.tag())))
            .await;
        assert_eq!(seen[2], json!([]), "{}: faults", topic.name);
        let scores: Vec<f64> = seen[0]
            .as_array()
            .expect("scores")
            .iter()
            .map(|s| s.as_f64().expect("a score"))
            .collect();
        assert_eq!(scores.len(), 3, "{}", topic.name);
        let mean = 100.0 * scores.iter().sum::<f64>() / scores.len() as f64;
        assert_eq!(
            seen[1]["cmi.core.score.raw"],
            format!("{mean:.0}"),
            "{}",
            topic.name
        );
        assert_eq!(
            seen[1]["cmi.core.lesson_status"], "completed",
            "{}",
            topic.name
        );
        // Left and opened again, the lesson is still completed.
        let left = window
            .run("document.querySelector('iframe').src = 'about:blank'; await new Promise(r => setTimeout(r, 500)); return [calls.includes('finish'), data, faults];")
            .await;
        assert_eq!(left[0], true, "{}", topic.name);
        assert_eq!(left[1]["cmi.core.exit"], "");
        assert_eq!(left[2], json!([]));
        window
            .run(&format!(
                "open('{lesson}'); await new Promise(r => setTimeout(r, 1200));"
            ))
            .await;
        let again = window.run("return [data, faults];").await;
        assert_eq!(
            again[0]["cmi.core.lesson_status"], "completed",
            "{}",
            topic.name
        );
        assert_eq!(again[1], json!([]));
    }
    window.close().await;
}

#[tokio::test]
async fn the_npm_package_runs_in_a_page_that_vite_made() {
    let place = tempfile::tempdir().expect("a folder");
    let told = done(
        Command::new("npm")
            .args(["pack", "--silent", "--pack-destination"])
            .arg(place.path())
            .current_dir(site().folder.join("npm")),
    );
    let tarball = told.lines().last().expect("a name").trim().to_owned();
    let write =
        |name: &str, text: &str| std::fs::write(place.path().join(name), text).expect("a file");
    write(
        "package.json",
        "{ \"name\": \"page\", \"private\": true, \"type\": \"module\" }",
    );
    write(
        "index.html",
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Vite</title><link rel=\"icon\" href=\"data:,\"><script type=\"module\" src=\"./main.js\"></script></head><body><axle-traction vehicle=\"corrie\"></axle-traction></body></html>",
    );
    write(
        "main.js",
        "import init, { solve, version } from \"axlewright\";\nawait init();\ndocument.body.dataset.version = version;\nglobalThis.answer = solve(\"traction\", { vehicle: { base: \"kame\" } });\n",
    );
    done(
        Command::new("npm")
            .args([
                "install",
                "--no-audit",
                "--no-fund",
                "--offline",
                &format!("./{tarball}"),
            ])
            .current_dir(place.path()),
    );
    let out = site().folder.join("vite-page");
    done(
        Command::new(axlewright_tests::file("node_modules/.bin/vite"))
            .args([
                "build",
                "--base",
                "./",
                "--emptyOutDir",
                "--target",
                "esnext",
                "--outDir",
            ])
            .arg(&out)
            .current_dir(place.path()),
    );
    let window = Window::open().await;
    window.visit("vite-page/index.html").await;
    window.ready("axle-traction").await;
    let seen = window
        .run("for (let i = 0; i < 100 && !globalThis.answer; i += 1) await new Promise(r => setTimeout(r, 50));\
              return [document.body.dataset.version, globalThis.answer.limits.F1.acceleration];")
        .await;
    let own = answer_of_program("traction", &json!({ "vehicle": { "base": "kame" } }));
    assert_eq!(
        seen,
        json!([
            env!("CARGO_PKG_VERSION"),
            own["limits"]["F1"]["acceleration"]
        ])
    );
    assert_eq!(window.complaints().await, Vec::<String>::new());
    window.close().await;
}
