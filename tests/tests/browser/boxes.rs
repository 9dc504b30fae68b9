//! Texts of figures as a browser measures them. Labels are placed by an estimate of their width; here
//! `getBBox` says whether it holds: no text leaves its figure, and none lies on another.

use crate::grid::{Case, each};
use axlewright_core::topic::TOPICS;
use axlewright_tests::session::Window;
use axlewright_widgets::figure::SvgOptions;
use serde_json::{Value, json};

/// Figures that the browser is given in one go.
const BATCH: usize = 60;

/// What letters fill of the height that a font claims: from the top of capitals to below the line.
const MEASURE: &str = "
    const faults = [];
    let texts = 0;
    for (const [at, svg] of figures.entries()) {
      document.body.innerHTML = svg;
      const root = document.body.firstElementChild;
      const { width, height } = root.viewBox.baseVal;
      const boxes = [...root.querySelectorAll('text')].filter((text) => text.textContent.trim()).map((text) => {
        const { x, y, width, height } = text.getBBox();
        const to = root.getScreenCTM().inverse().multiply(text.getScreenCTM());
        const corners = [[x, y + 0.2 * height], [x + width, y + 0.85 * height]]
          .map(([x, y]) => new DOMPoint(x, y).matrixTransform(to));
        const [xs, ys] = ['x', 'y'].map((axis) => corners.map((corner) => corner[axis]).sort((a, b) => a - b));
        return { says: text.textContent, x0: xs[0], x1: xs[1], y0: ys[0], y1: ys[1] };
      });
      texts += boxes.length;
      boxes.forEach((box, first) => {
        const told = (what) => faults.push([at, `${what}: ${JSON.stringify(box)}`]);
        if (box.x0 < -0.5 || box.y0 < -0.5 || box.x1 > width + 0.5 || box.y1 > height + 0.5) told('off the page');
        for (const other of boxes.slice(first + 1)) {
          const over = (a, b) => Math.min(box[b], other[b]) - Math.max(box[a], other[a]);
          if (over('x0', 'x1') > 1 && over('y0', 'y1') > 1) told(`on ${JSON.stringify(other)}`);
        }
      });
    }
    return [texts, faults];";

#[tokio::test]
async fn no_text_of_a_figure_is_wider_in_a_browser_than_its_place() {
    let mut figures: Vec<(String, String)> = Vec::new();
    for topic in TOPICS {
        let before = figures.len();
        each(topic.name, 1, |case: &Case| {
            if let Some(drawing) = case.draw() {
                figures.push((case.name(), drawing.svg(&SvgOptions::default())));
            }
        });
        let count = figures.len() - before;
        assert!(count > 40, "{}: {count} figures", topic.name);
    }
    let window = Window::open().await;
    window.visit("blank.html").await;
    let (mut texts, mut faults) = (0, Vec::new());
    for batch in figures.chunks(BATCH) {
        let drawn: Vec<&String> = batch.iter().map(|(_, svg)| svg).collect();
        let found = window
            .run(&format!("const figures = {}; {MEASURE}", json!(drawn)))
            .await;
        texts += found[0].as_u64().expect("a count");
        for fault in found[1].as_array().expect("a list") {
            let at = fault[0].as_u64().expect("a place") as usize;
            faults.push(format!("{} in {}", text_of(&fault[1]), batch[at].0));
        }
    }
    println!(
        "{} figures with {texts} texts, {} faults",
        figures.len(),
        faults.len()
    );
    assert!(texts > 5 * figures.len() as u64);
    assert!(
        faults.is_empty(),
        "{} faults\n{}",
        faults.len(),
        faults[..faults.len().min(12)].join("\n")
    );
    window.close().await;
}

fn text_of(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}
