//! The file field of `<axle-idle-drag>`: a cycle of the reader's own is driven, and a bad one is refused by
//! its line while the last good answer stays.

use axlewright_tests::session::Window;
use serde_json::json;

/// Puts a file into the field, as a reader would choose one.
const HELP: &str = "
    const element = document.querySelector('axle-idle-drag');
    const problem = () => element.shadowRoot.querySelector('.problem')?.textContent ?? '';
    const until = async (test) => {
      for (let tries = 0; tries < 200 && !test(); tries += 1) await new Promise((done) => setTimeout(done, 30));
      return test();
    };
    const choose = async (text) => {
      const field = element.shadowRoot.querySelector('input[type=file]');
      const chosen = new DataTransfer();
      chosen.items.add(new File([text], 'cycle.csv', { type: 'text/csv' }));
      field.files = chosen.files;
      field.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
    };
    const told = async (text, part) => {
      await choose(text);
      await until(() => problem().includes(part));
      return { problem: problem(), cycle: element.scenario.idle_drag?.cycle ?? null, answer: element.answer !== null };
    };
";

#[tokio::test]
async fn a_bad_cycle_is_refused_by_its_line_and_a_good_one_is_driven() {
    let window = Window::open().await;
    window.visit("blank.html").await;
    window
        .run(
            "const element = document.createElement('axle-idle-drag'); document.body.append(element);\
             await import(new URL('axlewright.js', location)); await element.updateComplete;",
        )
        .await;
    for (text, line) in [
        ("'0,0\\n1,5\\n2,6\\n4,8\\n'", "line 4"),
        ("'0,0\\n1,10\\n2,-3\\n'", "line 3"),
        ("'0,0\\n1,ten\\n'", "line 2"),
        // Ten million rows: no more is read than is needed.
        ("'0,50\\n'.repeat(1e7)", "line 120001"),
    ] {
        let seen = window
            .run(&format!("{HELP} return await told({text}, '{line}');"))
            .await;
        let problem = seen["problem"].as_str().unwrap_or_default();
        assert!(problem.contains(line), "{text}: {seen}");
        assert_eq!(seen["answer"], true, "{text}: {seen}");
        assert_ne!(seen["cycle"], "own", "{text}: {seen}");
    }
    let seen = window
        .run(&format!(
            "{HELP} await choose('0,0\\n1,10\\n2,20\\n3,10\\n4,0\\n');\
             await until(() => element.scenario.idle_drag?.cycle === 'own' && problem() === '');\
             return {{ problem: problem(), cycle: element.scenario.idle_drag?.cycle, distance: element.answer.cycle_distance }};"
        ))
        .await;
    assert_eq!(seen["problem"], "", "{seen}");
    assert_eq!(seen["cycle"], "own", "{seen}");
    let distance_m = seen["distance"].as_f64().unwrap_or(0.0);
    assert!((distance_m - 40.0 / 3.6).abs() < 1e-9, "{seen}");
    assert_eq!(window.errors().await, json!([]));
    window.close().await;
}
