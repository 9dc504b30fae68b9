//! The browsers of the journeys, each with the program that drives it by WebDriver.
//!
//! What differs between them is here and nowhere else. Only Chromium's driver gives the console and the
//! debugging protocol; a journey for every browser takes what `pages/watch.js` has seen instead.

use serde_json::{Value, json};
use std::io::{BufRead, BufReader};
use std::net::TcpListener;
use std::os::unix::process::CommandExt;
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};
use thirtyfour::Capabilities;

/// A kind of browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Browser {
    /// Debian's `chromium` with `chromium-driver`.
    Chromium,
    /// Debian's `firefox-esr` with geckodriver, which `tests/run` compiles into `tests/.tools`.
    Firefox,
    /// The small browser of Debian's `webkit2gtk-driver`, on a screen of `xvfb`.
    WebKit,
}

/// Chromium as the journeys want it: no screen, no talk with other hosts.
const CHROMIUM: [&str; 8] = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
];

impl Browser {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Chromium, Self::Firefox, Self::WebKit];

    /// What the driver is asked for.
    pub(crate) fn capabilities(self, engine: &Engine, arguments: &[&str]) -> Capabilities {
        let wanted = match self {
            Self::Chromium => {
                let profile = format!("--user-data-dir={}", engine.profile.path().display());
                let own = CHROMIUM.into_iter().chain(arguments.iter().copied());
                let all: Vec<&str> = own.chain([profile.as_str()]).collect();
                json!({
                    "browserName": "chrome",
                    "goog:chromeOptions": { "args": all },
                    "goog:loggingPrefs": { "browser": "ALL" },
                })
            }
            Self::Firefox => {
                let all: Vec<&str> = ["-headless"]
                    .into_iter()
                    .chain(arguments.iter().copied())
                    .collect();
                json!({
                    "browserName": "firefox",
                    "moz:firefoxOptions": { "binary": "/usr/bin/firefox-esr", "args": all },
                })
            }
            Self::WebKit => {
                let all: Vec<&str> = ["--automation"]
                    .into_iter()
                    .chain(arguments.iter().copied())
                    .collect();
                json!({
                    "browserName": "MiniBrowser",
                    "webkitgtk:browserOptions": { "binary": mini_browser(), "args": all },
                })
            }
        };
        match wanted {
            Value::Object(wanted) => wanted,
            _ => Capabilities::default(),
        }
    }

    /// The program that drives it; `port` is where it is to listen.
    fn driver(self, port: u16) -> Command {
        match self {
            Self::Chromium => {
                let mut driver = Command::new("chromedriver");
                driver.arg(format!("--port={port}"));
                driver
            }
            Self::Firefox => {
                let own = crate::file(".tools/bin/geckodriver");
                let program = if own.exists() {
                    own
                } else {
                    PathBuf::from("geckodriver")
                };
                let mut driver = Command::new(program);
                driver.args(["--log", "fatal", "--port", &port.to_string()]);
                driver
            }
            Self::WebKit => {
                let mut driver = Command::new("WebKitWebDriver");
                driver
                    .arg(format!("--port={port}"))
                    .env("GDK_BACKEND", "x11")
                    .env("NO_AT_BRIDGE", "1");
                driver
            }
        }
    }
}

/// Where Debian puts the browser that belongs to WebKit's driver: a folder for each kind of machine.
fn mini_browser() -> PathBuf {
    let folders = std::fs::read_dir("/usr/lib").into_iter().flatten();
    let mut found = folders.flatten().flat_map(|folder| {
        ["webkit2gtk-4.1", "webkitgtk-6.0"]
            .map(|version| folder.path().join(version).join("MiniBrowser"))
    });
    found
        .find(|path| path.exists())
        .unwrap_or_else(|| PathBuf::from("MiniBrowser"))
}

/// A running driver with the screen that its browser needs, if it needs one.
pub struct Engine {
    programs: Vec<Child>,
    /// Where the driver listens.
    pub(crate) url: String,
    profile: tempfile::TempDir,
}

impl Drop for Engine {
    fn drop(&mut self) {
        // With all that it has started: a journey that stops half-way leaves its browser open.
        for program in self.programs.iter_mut().rev() {
            let group = format!("-{}", program.id());
            let _ = Command::new("kill").args(["-KILL", "--", &group]).status();
            let _ = program.kill();
            let _ = program.wait();
        }
    }
}

fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
    listener.local_addr().expect("it has an address").port()
}

/// A screen in memory, and its name.
fn screen() -> (Child, String) {
    let mut server = Command::new("Xvfb")
        .args(["-displayfd", "1", "-screen", "0", "1600x1200x24"])
        .args(["-nolisten", "tcp"])
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .process_group(0)
        .spawn()
        .expect("Xvfb is installed (tests/run installs it)");
    let told = server.stdout.take().expect("it tells its number");
    let mut number = String::new();
    BufReader::new(told)
        .read_line(&mut number)
        .expect("it tells its number");
    (server, format!(":{}", number.trim()))
}

impl Engine {
    /// Starts the driver and waits until it listens.
    pub(crate) fn start(browser: Browser) -> Self {
        let port = free_port();
        let profile = tempfile::tempdir().expect("a folder for the profile");
        let mut programs = Vec::new();
        let mut command = browser.driver(port);
        if browser == Browser::WebKit {
            let (server, name) = screen();
            programs.push(server);
            command.env("DISPLAY", name);
        }
        let driver = command
            .env("TMPDIR", profile.path())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .process_group(0)
            .spawn();
        programs.push(driver.unwrap_or_else(|e| {
            panic!("{browser:?}: {e}; its driver is missing (tests/run installs it)")
        }));
        let deadline = Instant::now() + Duration::from_secs(20);
        while std::net::TcpStream::connect(("127.0.0.1", port)).is_err() {
            assert!(Instant::now() < deadline, "{browser:?} does not answer");
            std::thread::sleep(Duration::from_millis(50));
        }
        Self {
            programs,
            url: format!("http://127.0.0.1:{port}"),
            profile,
        }
    }
}
