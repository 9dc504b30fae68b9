//! A real browser, driven by WebDriver, and the site that it is shown.
//!
//! Nothing here knows which browser it is, so that the same journeys can run in each of them.

use crate::engine::{Browser, Engine};
use std::path::{Path, PathBuf};
use std::sync::{OnceLock, mpsc};
use std::time::Duration;
use thirtyfour::prelude::*;
use tokio::sync::{Mutex, MutexGuard};

/// One browser at a time: two cores are not enough for more, and a starved page is no finding.
static TURN: Mutex<()> = Mutex::const_new(());

/// The built site with the test pages beside it, served; its folder and its address.
pub struct Site {
    /// Where its files lie.
    pub folder: PathBuf,
    /// Where it is served, with the last slash.
    pub url: String,
}

/// Builds the site (which takes no time when nothing changed) and serves it for all journeys.
pub fn site() -> &'static Site {
    static SITE: OnceLock<Site> = OnceLock::new();
    SITE.get_or_init(|| {
        let root = crate::file("..")
            .canonicalize()
            .expect("the workspace is there");
        let folder = root.join("target/browser-site");
        axlewright_site::site::build(&root, &folder, &mut |line| eprintln!("{line}"))
            .expect("the site builds");
        for entry in std::fs::read_dir(crate::file("pages")).expect("test pages") {
            let page = entry.expect("a test page").path();
            let name = page.file_name().expect("a name");
            std::fs::copy(&page, folder.join(name)).expect("a test page is copied");
        }
        let (ready, address) = mpsc::channel();
        let served = folder.clone();
        std::thread::spawn(move || {
            let told = |url: &str| {
                let _ = ready.send(url.to_owned());
            };
            let _ = axlewright_site::serve::serve(served, None, told);
        });
        let url = address
            .recv_timeout(Duration::from_secs(10))
            .expect("the site is served");
        Site { folder, url }
    })
}

/// What [`YARDSTICK`] takes on the machine that bounds in time are for \[ms\].
const YARDSTICK_MS: f64 = 125.0;

/// Rounds of which the best counts.
const ROUNDS: u32 = 4;

/// The least time of seven rounds of what any page does: markup, layout, sums. Nothing of ours is in it.
const YARDSTICK: &str = "
    const times = [];
    for (let round = 0; round < 7; round += 1) {
      const began = performance.now();
      const box = document.createElement('div');
      let html = '';
      for (let i = 0; i < 1500; i += 1) html += `<p class='a${i % 7}' style='width:${i % 300}px'>${i * 7919 % 1000}<b>${i}</b></p>`;
      box.innerHTML = html;
      document.body.append(box);
      let sum = [...box.querySelectorAll('b')].reduce((all, e) => all + e.offsetWidth, 0);
      box.remove();
      for (let i = 1; i < 3e6; i += 1) sum += Math.sqrt(i) / (1 + sum);
      if (!Number.isFinite(sum)) throw new Error('no sum');
      times.push(performance.now() - began);
      await new Promise((done) => setTimeout(done));
    }
    return Math.min(...times);";

/// A browser window for one journey.
pub struct Window {
    /// Tells the browser what to do.
    pub driver: WebDriver,
    _engine: Engine,
    _turn: MutexGuard<'static, ()>,
}

impl Window {
    /// A window of some browser, of the given width, with extra browser arguments.
    pub async fn open_in(browser: Browser, width: u32, arguments: &[&str]) -> Self {
        let turn = TURN.lock().await;
        let engine = Engine::start(browser);
        let capabilities = browser.capabilities(&engine, arguments);
        let driver = WebDriver::new(&engine.url, capabilities)
            .await
            .unwrap_or_else(|e| panic!("{browser:?} does not start: {e}"));
        // A busy machine takes its time; what must be quick is measured, not cut off.
        driver
            .set_script_timeout(Duration::from_secs(100))
            .await
            .expect("a time for scripts");
        driver
            .set_window_rect(0, 0, width, 900)
            .await
            .expect("a window size");
        Self {
            driver,
            _engine: engine,
            _turn: turn,
        }
    }

    /// A Chromium window of the given width with extra browser arguments.
    pub async fn open_with(width: u32, arguments: &[&str]) -> Self {
        Self::open_in(Browser::Chromium, width, arguments).await
    }

    /// A Chromium window as wide as a desk.
    pub async fn open() -> Self {
        Self::open_with(1280, &[]).await
    }

    /// Goes to a page of the served site.
    pub async fn visit(&self, page: &str) {
        self.go(&format!("{}{page}", site().url)).await;
    }

    /// Goes to a page of the built site in the file system.
    pub async fn visit_file(&self, page: &str) {
        self.go(&format!("file://{}", site().folder.join(page).display()))
            .await;
    }

    /// Goes to an address.
    pub async fn go(&self, url: &str) {
        self.driver
            .goto(url)
            .await
            .unwrap_or_else(|e| panic!("{url}: {e}"));
    }

    /// A command of the browser's own debugging protocol; only Chromium's has it.
    pub async fn debug(&self, method: &str, parameters: serde_json::Value) -> serde_json::Value {
        let tools = thirtyfour::extensions::cdp::ChromeDevTools::new(self.driver.handle.clone());
        let done = tools.execute_cdp_with_params(method, parameters).await;
        done.unwrap_or_else(|e| panic!("{method}: {e}"))
    }

    /// Errors that reached the page, which `watch.js` has noted.
    pub async fn errors(&self) -> serde_json::Value {
        self.run("return seen.errors;").await
    }

    /// Runs a script in the page and gives its value; a promise is waited for.
    ///
    /// Firefox's driver gives each script globals of its own: what a later script shall find is put on
    /// `window`, and modules are brought by `bring_elements`. The value travels as text, because that
    /// driver reads a number and writes it again with another last bit.
    pub async fn run(&self, script: &str) -> serde_json::Value {
        let wrapped = format!(
            "const done = arguments[arguments.length - 1];\
             (async () => JSON.stringify((await (async () => {{ {script} }})()) ?? null))()\
             .then(v => done({{ ok: v }}), e => done({{ error: String(e) }}));"
        );
        let value = self.driver.execute_async(&wrapped, Vec::new()).await;
        let value = value
            .unwrap_or_else(|e| panic!("{script}: {e}"))
            .json()
            .clone();
        assert!(value.get("error").is_none(), "{script}: {value}");
        let text = value["ok"].as_str().expect("a text");
        serde_json::from_str(text).unwrap_or_else(|e| panic!("{script}: {e}: {text}"))
    }

    /// Brings the elements into a page that does not ask for them itself.
    pub async fn bring_elements(&self) {
        self.run(
            "const script = Object.assign(document.createElement('script'), { type: 'module', src: 'axlewright.js' });\
             const loaded = new Promise((done, failed) => { script.onload = done; script.onerror = failed; });\
             document.head.append(script); await loaded;",
        )
        .await;
    }

    /// Waits until the first element of a tag shows its present state.
    pub async fn ready(&self, tag: &str) {
        let script = format!(
            "await customElements.whenDefined('{tag}');\
             return await document.querySelector('{tag}').updateComplete;"
        );
        assert_eq!(self.run(&script).await, true, "{tag} does not start");
    }

    /// A part of the first element of a tag, inside its shadow root.
    pub async fn inside(&self, tag: &str, selector: &str) -> WebElement {
        // By script: Firefox's driver takes a shadow root for no element, and the library asks for one.
        let script =
            "return document.querySelector(arguments[0]).shadowRoot.querySelector(arguments[1]);";
        let found = self
            .driver
            .execute(script, vec![tag.into(), selector.into()]);
        let found = found.await.and_then(|found| found.element());
        found.unwrap_or_else(|e| panic!("{tag} {selector}: {e}"))
    }

    /// The answer that an element shows.
    pub async fn answer(&self, tag: &str) -> serde_json::Value {
        self.run(&format!("return document.querySelector('{tag}').answer;"))
            .await
    }

    /// Messages of the console that the page should not have caused, since the last call.
    pub async fn complaints(&self) -> Vec<String> {
        let entries =
            self.driver
                .handle
                .cmd(thirtyfour::common::command::Command::ExtensionCommand(
                    Box::new(BrowserLog),
                ));
        let entries = entries
            .await
            .expect("the browser's log")
            .value_json()
            .expect("a list");
        let list = entries.as_array().cloned().unwrap_or_default();
        list.iter()
            .filter(|entry| matches!(entry["level"].as_str(), Some("SEVERE" | "WARNING")))
            .map(|entry| entry["message"].to_string())
            .collect()
    }

    /// Origins other than the page's own that anything on the page asked.
    pub async fn foreign_requests(&self) -> serde_json::Value {
        self.run(
            "return performance.getEntriesByType('resource').map(e => e.name)\
             .filter(name => !name.startsWith(location.origin) && !name.startsWith('file:')\
             && !name.startsWith('data:') && !name.startsWith('blob:'));",
        )
        .await
    }

    /// How many times as long this machine takes at present, 1 or more, as the one that bounds in time are for:
    /// a yardstick of layout and sums, against the milliseconds that it takes there.
    async fn slowness(&self) -> f64 {
        let least = self.run(YARDSTICK).await;
        let factor = least.as_f64().expect("a time") / YARDSTICK_MS;
        println!("the yardstick takes {factor:.2} times {YARDSTICK_MS} ms");
        factor.max(1.0)
    }

    /// Takes times up to four times, until all are below their bounds: a machine that is busy with something
    /// else holds up a page now and then, what holds up the reader itself does so each time. The times are
    /// brought to the machine that bounds are for. Each time a page must be open.
    pub async fn within<const N: usize>(
        &self,
        what: &str,
        bounds: [f64; N],
        mut round: impl AsyncFnMut(&Self) -> [f64; N],
    ) {
        let mut best = [f64::INFINITY; N];
        for _ in 0..ROUNDS {
            let slowness = self.slowness().await;
            for (best, time) in best.iter_mut().zip(round(self).await) {
                *best = best.min(time / slowness);
            }
            if best.iter().zip(bounds).all(|(best, bound)| *best < bound) {
                return;
            }
        }
        panic!("{what}: the best of {ROUNDS} rounds: {best:?}, may be {bounds:?}");
    }

    /// Ends the browser.
    pub async fn close(self) {
        self.driver.clone().quit().await.expect("the browser ends");
    }
}

/// The driver's own way to the browser's console; only Chromium's has it.
#[derive(Debug)]
struct BrowserLog;

impl thirtyfour::common::command::ExtensionCommand for BrowserLog {
    fn parameters_json(&self) -> Option<serde_json::Value> {
        Some(serde_json::json!({ "type": "browser" }))
    }

    fn method(&self) -> http::Method {
        http::Method::POST
    }

    fn endpoint(&self) -> std::sync::Arc<str> {
        "/se/log".into()
    }
}

/// The program's answer to a scenario.
pub fn answer_of_program(topic: &str, scenario: &serde_json::Value) -> serde_json::Value {
    let file = tempfile::Builder::new()
        .suffix(".json")
        .tempfile()
        .expect("a file");
    std::fs::write(file.path(), scenario.to_string()).expect("it is written");
    let path = file.path().to_str().expect("a path");
    let done = crate::run(&["answer", topic, path, "--format", "json"]);
    assert_eq!(done.code, Some(0), "{}", done.stderr);
    serde_json::from_str(&done.stdout).expect("JSON")
}

/// The text of a file that the tests need.
pub fn needed(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|e| {
        panic!("{}: {e}; `bash tests/run` installs it", path.display());
    })
}
