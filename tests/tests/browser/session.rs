//! A real browser, driven by WebDriver, and the site that it is shown.
//!
//! Nothing here but [`Engine`] knows which browser it is, so that the same journeys can run in others.

use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::{OnceLock, mpsc};
use std::time::{Duration, Instant};
use thirtyfour::prelude::*;
use thirtyfour::{CapabilitiesHelper, ChromiumLikeCapabilities};
use tokio::sync::{Mutex, MutexGuard};

/// A browser and its driver program.
pub(crate) struct Engine {
    driver: Child,
    url: String,
    _profile: tempfile::TempDir,
}

impl Drop for Engine {
    fn drop(&mut self) {
        let _ = self.driver.kill();
        let _ = self.driver.wait();
    }
}

/// One browser at a time: two cores are not enough for more, and a starved page is no finding.
static TURN: Mutex<()> = Mutex::const_new(());

/// The built site with the test pages beside it, served; its folder and its address.
pub(crate) struct Site {
    pub(crate) folder: PathBuf,
    pub(crate) url: String,
}

/// Builds the site (which takes no time when nothing changed) and serves it for all journeys.
pub(crate) fn site() -> &'static Site {
    static SITE: OnceLock<Site> = OnceLock::new();
    SITE.get_or_init(|| {
        let root = axlewright_tests::file("..")
            .canonicalize()
            .expect("the workspace is there");
        let folder = root.join("target/browser-site");
        axlewright_site::site::build(&root, &folder, &mut |line| eprintln!("{line}"))
            .expect("the site builds");
        for entry in std::fs::read_dir(axlewright_tests::file("pages")).expect("test pages") {
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

/// A browser window for one journey.
pub(crate) struct Window {
    pub(crate) driver: WebDriver,
    _engine: Engine,
    _turn: MutexGuard<'static, ()>,
}

fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
    listener.local_addr().expect("it has an address").port()
}

fn start_chromium_driver() -> Engine {
    let port = free_port();
    let driver = Command::new("chromedriver")
        .arg(format!("--port={port}"))
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("chromedriver is installed (tests/run installs it)");
    let deadline = Instant::now() + Duration::from_secs(20);
    while std::net::TcpStream::connect(("127.0.0.1", port)).is_err() {
        assert!(Instant::now() < deadline, "chromedriver does not answer");
        std::thread::sleep(Duration::from_millis(50));
    }
    Engine {
        driver,
        url: format!("http://127.0.0.1:{port}"),
        _profile: tempfile::tempdir().expect("a folder for the profile"),
    }
}

impl Window {
    /// A window of the given width with extra browser arguments.
    pub(crate) async fn open_with(width: u32, arguments: &[&str]) -> Self {
        let turn = TURN.lock().await;
        let engine = start_chromium_driver();
        let mut capabilities = DesiredCapabilities::chrome();
        let profile = format!("--user-data-dir={}", engine._profile.path().display());
        let usual = [
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            &profile,
        ];
        for argument in usual.iter().chain(arguments) {
            capabilities.add_arg(argument).expect("an argument");
        }
        capabilities
            .set_base_capability("goog:loggingPrefs", serde_json::json!({ "browser": "ALL" }))
            .expect("log settings");
        let driver = WebDriver::new(&engine.url, capabilities)
            .await
            .expect("the browser starts");
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

    /// A window as wide as a desk.
    pub(crate) async fn open() -> Self {
        Self::open_with(1280, &[]).await
    }

    /// Goes to a page of the served site.
    pub(crate) async fn visit(&self, page: &str) {
        self.go(&format!("{}{page}", site().url)).await;
    }

    /// Goes to a page of the built site in the file system.
    pub(crate) async fn visit_file(&self, page: &str) {
        self.go(&format!("file://{}", site().folder.join(page).display()))
            .await;
    }

    /// Goes to an address.
    pub(crate) async fn go(&self, url: &str) {
        self.driver
            .goto(url)
            .await
            .unwrap_or_else(|e| panic!("{url}: {e}"));
    }

    /// A command of the browser's own debugging protocol; only Chromium's has it.
    pub(crate) async fn debug(
        &self,
        method: &str,
        parameters: serde_json::Value,
    ) -> serde_json::Value {
        let tools = thirtyfour::extensions::cdp::ChromeDevTools::new(self.driver.handle.clone());
        let done = tools.execute_cdp_with_params(method, parameters).await;
        done.unwrap_or_else(|e| panic!("{method}: {e}"))
    }

    /// Errors that reached the page, which `watch.js` has noted.
    pub(crate) async fn errors(&self) -> serde_json::Value {
        self.run("return seen.errors;").await
    }

    /// Runs a script in the page and gives its value; a promise is waited for.
    pub(crate) async fn run(&self, script: &str) -> serde_json::Value {
        let wrapped = format!(
            "const done = arguments[arguments.length - 1];\
             (async () => {{ {script} }})().then(v => done({{ ok: v ?? null }}), e => done({{ error: String(e) }}));"
        );
        let value = self.driver.execute_async(&wrapped, Vec::new()).await;
        let value = value
            .unwrap_or_else(|e| panic!("{script}: {e}"))
            .json()
            .clone();
        assert!(value.get("error").is_none(), "{script}: {value}");
        value["ok"].clone()
    }

    /// Waits until the first element of a tag shows its present state.
    pub(crate) async fn ready(&self, tag: &str) {
        let script = format!(
            "await customElements.whenDefined('{tag}');\
             return await document.querySelector('{tag}').updateComplete;"
        );
        assert_eq!(self.run(&script).await, true, "{tag} does not start");
    }

    /// A part of the first element of a tag, inside its shadow root.
    pub(crate) async fn inside(&self, tag: &str, selector: &str) -> WebElement {
        let element = self
            .driver
            .find(By::Css(tag))
            .await
            .expect("the element is on the page");
        let root = element
            .get_shadow_root()
            .await
            .expect("it has a shadow root");
        root.find(By::Css(selector))
            .await
            .unwrap_or_else(|e| panic!("{tag} {selector}: {e}"))
    }

    /// The answer that an element shows.
    pub(crate) async fn answer(&self, tag: &str) -> serde_json::Value {
        self.run(&format!("return document.querySelector('{tag}').answer;"))
            .await
    }

    /// Messages of the console that the page should not have caused, since the last call.
    pub(crate) async fn complaints(&self) -> Vec<String> {
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
    pub(crate) async fn foreign_requests(&self) -> serde_json::Value {
        self.run(
            "return performance.getEntriesByType('resource').map(e => e.name)\
             .filter(name => !name.startsWith(location.origin) && !name.startsWith('file:')\
             && !name.startsWith('data:') && !name.startsWith('blob:'));",
        )
        .await
    }

    /// Ends the browser.
    pub(crate) async fn close(self) {
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
pub(crate) fn answer_of_program(topic: &str, scenario: &serde_json::Value) -> serde_json::Value {
    let file = tempfile::Builder::new()
        .suffix(".json")
        .tempfile()
        .expect("a file");
    std::fs::write(file.path(), scenario.to_string()).expect("it is written");
    let path = file.path().to_str().expect("a path");
    let done = axlewright_tests::run(&["answer", topic, path, "--format", "json"]);
    assert_eq!(done.code, Some(0), "{}", done.stderr);
    serde_json::from_str(&done.stdout).expect("JSON")
}

/// The text of a file that the tests need.
pub(crate) fn needed(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|e| {
        panic!("{}: {e}; `bash tests/run` installs it", path.display());
    })
}
