//! A server for one journey, whose folder can be changed and which can be cut off, and a next version of
//! the site to serve.

use crate::session::site;
use axlewright_site::serve::policy_of;
use sha2::{Digest, Sha256};
use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

/// The policy for the content of what a request targets.
type Policy = fn(&str) -> Option<&'static str>;

/// A server whose folder can be changed, and which can be cut off.
pub struct Host {
    /// Where it serves, with the last slash.
    pub url: String,
    folder: Arc<Mutex<Option<PathBuf>>>,
}

impl Host {
    /// Serves a folder under the policy of the site's own server.
    #[must_use]
    pub fn of(folder: &Path) -> Self {
        Self::start(folder, policy_of)
    }

    /// Serves the pages of others, without a policy.
    #[must_use]
    pub fn bare(folder: &Path) -> Self {
        Self::start(folder, |_| None)
    }

    fn start(folder: &Path, policy: Policy) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
        // The name, not the number: pages at the development server's address get no worker.
        let url = format!(
            "http://localhost:{}/",
            listener.local_addr().expect("an address").port()
        );
        let shared = Arc::new(Mutex::new(Some(folder.to_path_buf())));
        let own = Arc::clone(&shared);
        std::thread::spawn(move || {
            for stream in listener.incoming().flatten() {
                let folder = own.lock().ok().and_then(|folder| folder.clone());
                // Cut off: the connection ends without an answer.
                if let Some(folder) = folder {
                    std::thread::spawn(move || answer(&stream, &folder, policy));
                }
            }
        });
        Self {
            url,
            folder: shared,
        }
    }

    /// Serves another folder from now on, or nothing at all.
    pub fn show(&self, folder: Option<&Path>) {
        *self.folder.lock().expect("the folder") = folder.map(Path::to_path_buf);
    }
}

fn answer(mut stream: &TcpStream, folder: &Path, policy: Policy) -> std::io::Result<()> {
    let mut lines = BufReader::new(stream).lines();
    let first = lines.next().transpose()?.unwrap_or_default();
    while lines
        .next()
        .transpose()?
        .is_some_and(|line| !line.is_empty())
    {}
    let target = first.split(' ').nth(1).unwrap_or("/");
    let name = target
        .split('?')
        .next()
        .unwrap_or("/")
        .trim_start_matches('/');
    let name = if name.is_empty() { "index.html" } else { name };
    let kind = match name.rsplit('.').next() {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("json") => "application/json",
        _ => "text/plain; charset=utf-8",
    };
    let (status, body) = match std::fs::read(folder.join(name)) {
        Ok(body) => ("200 OK", body),
        Err(_) => ("404 Not Found", Vec::new()),
    };
    let policy = policy(target).map_or_else(String::new, |policy| {
        format!("Content-Security-Policy: {policy}\r\n")
    });
    let head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {}\r\n{policy}Cache-Control: no-store\r\nConnection: close\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes())?;
    stream.write_all(&body)
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).expect("a folder");
    for entry in std::fs::read_dir(from).expect("a folder") {
        let path = entry.expect("an entry").path();
        let target = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            copy(&path, &target);
        } else {
            std::fs::copy(&path, &target).expect("a copy");
        }
    }
}

/// The hash that stands behind a file's name in an address, reckoned apart from the site's own code.
#[must_use]
pub fn short_hash(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    digest
        .iter()
        .take(6)
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// The site with another first page, and a worker that knows it.
pub fn next_version(folder: &Path) {
    copy(&site().folder, folder);
    let page = folder.join("index.html");
    let old = std::fs::read_to_string(&page).expect("a page");
    let new = old.replace(
        "<h1 id=\"one-motor-or-four\">",
        "<h1 id=\"one-motor-or-four\">Second edition: ",
    );
    assert_ne!(old, new);
    std::fs::write(&page, &new).expect("a page");
    let worker = folder.join("sw.js");
    let script = std::fs::read_to_string(&worker).expect("a worker");
    let other = script.replace(&short_hash(old.as_bytes()), &short_hash(new.as_bytes()));
    assert_ne!(script, other);
    std::fs::write(&worker, other).expect("a worker");
}
