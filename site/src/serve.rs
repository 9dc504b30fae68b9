//! Serves a folder to a browser on this machine, and to no other machine.

mod find;
mod http;
#[cfg(test)]
mod tests;

use find::{Found, find};
use http::{Answer, Request};
use sha2::{Digest, Sha256};
use std::convert::Infallible;
use std::fmt;
use std::io;
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};

/// The port that is tried first when none is given.
pub const DEFAULT_PORT: u16 = 7400;
/// How many ports are tried, one after the other, before any free one is taken.
const PORTS_TRIED: u16 = 50;

/// Nothing but the site's own files; no inline script or style; wasm may be compiled.
pub const CONTENT_SECURITY_POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; \
    style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; frame-src 'self'; \
    base-uri 'none'; form-action 'self'";

/// The policy that goes with a target of a request: [`CONTENT_SECURITY_POLICY`], but for the frames.
///
/// They bring their own. In the sandbox that they are meant for, WebKit would take this one to forbid the
/// frame its own files: the origin there is one of its own, and nothing is `'self'`.
#[must_use]
pub fn policy_of(target: &str) -> Option<&'static str> {
    let path = target.split(['?', '#']).next().unwrap_or("/");
    let is_frame = path
        .strip_prefix("/embed/")
        .is_some_and(|name| name.ends_with(".html") && !name.contains('/'));
    (!is_frame).then_some(CONTENT_SECURITY_POLICY)
}

/// Why a folder cannot be served.
#[derive(Debug)]
#[non_exhaustive]
pub enum ServeError {
    /// The folder is not there.
    NoFolder(PathBuf, io::Error),
    /// No port can be opened.
    NoPort(io::Error),
}

impl fmt::Display for ServeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoFolder(path, source) => {
                write!(f, "{} cannot be served: {source}", path.display())
            }
            Self::NoPort(source) => write!(f, "no port can be opened on 127.0.0.1: {source}"),
        }
    }
}

impl std::error::Error for ServeError {}

/// Serves `dir` on 127.0.0.1 until the program ends. `on_ready` is given the address once requests
/// are taken. A port in use gives way to the next free one; port 0 takes any free one.
///
/// # Errors
/// When the folder is missing or no port can be opened.
pub fn serve(
    dir: PathBuf,
    port: Option<u16>,
    on_ready: impl FnOnce(&str),
) -> Result<Infallible, ServeError> {
    let root = dir
        .canonicalize()
        .map_err(|source| ServeError::NoFolder(dir.clone(), source))?;
    if !root.is_dir() {
        return Err(ServeError::NoFolder(
            dir,
            io::Error::from(io::ErrorKind::NotADirectory),
        ));
    }
    let listener = bind(port.unwrap_or(DEFAULT_PORT)).map_err(ServeError::NoPort)?;
    let address = listener.local_addr().map_err(ServeError::NoPort)?;
    // The listener is open: a browser that comes before the first `accept` waits in its queue.
    on_ready(&format!("http://{address}/"));
    http::answer_all(&listener, move |request| answer(&root, request))
}

fn bind(first: u16) -> io::Result<TcpListener> {
    let last = if first == 0 {
        0
    } else {
        first.saturating_add(PORTS_TRIED)
    };
    (first..=last)
        .chain([0])
        .map(|port| TcpListener::bind((Ipv4Addr::LOCALHOST, port)))
        .find_map(Result::ok)
        .map_or_else(|| TcpListener::bind((Ipv4Addr::LOCALHOST, 0)), Ok)
}

fn answer(root: &Path, request: &Request) -> Answer {
    let answer = content(root, request);
    let answer = match policy_of(&request.target) {
        Some(policy) => answer.with("Content-Security-Policy", policy),
        None => answer,
    };
    answer
        .with("X-Content-Type-Options", "nosniff")
        .with("Referrer-Policy", "no-referrer")
        // The browser asks each time and mostly hears "not changed".
        .with("Cache-Control", "no-cache")
}

fn content(root: &Path, request: &Request) -> Answer {
    if !matches!(request.method.as_str(), "GET" | "HEAD") {
        return plain("405 Method Not Allowed").with("Allow", "GET, HEAD");
    }
    let path = request.target.split(['?', '#']).next().unwrap_or("/");
    match find(root, path) {
        Found::File(file) => match std::fs::read(&file) {
            Ok(content) => send(request, &file, content),
            Err(_) => not_found(root),
        },
        Found::FolderWithoutSlash => {
            plain("301 Moved Permanently").with("Location", &format!("{path}/"))
        }
        Found::Nothing => not_found(root),
    }
}

fn send(request: &Request, file: &Path, content: Vec<u8>) -> Answer {
    let digest = Sha256::digest(&content);
    let hex: String = digest
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let tag = format!("\"{hex}\"");
    let known = request
        .values("If-None-Match")
        .any(|known| known.trim_start_matches("W/") == tag);
    let answer = if known {
        Answer {
            status: "304 Not Modified",
            headers: Vec::new(),
            body: Vec::new(),
        }
    } else {
        Answer::new("200 OK", media_type(file), content)
    };
    let answer = answer.with("ETag", &tag);
    // A page of another origin may use the elements. They are the same for everybody; pages are not.
    match extension(file) {
        "js" | "wasm" => answer.with("Access-Control-Allow-Origin", "*"),
        _ => answer,
    }
}

fn not_found(root: &Path) -> Answer {
    match std::fs::read(root.join("404.html")) {
        Ok(page) => Answer::new("404 Not Found", "text/html; charset=utf-8", page),
        Err(_) => plain("404 Not Found"),
    }
}

fn plain(status: &'static str) -> Answer {
    Answer::new(status, "text/plain; charset=utf-8", status.into())
}

fn extension(file: &Path) -> &str {
    file.extension()
        .and_then(|extension| extension.to_str())
        .unwrap_or("")
}

fn media_type(file: &Path) -> &'static str {
    match extension(file) {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "wasm" => "application/wasm",
        "json" | "map" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/x-icon",
        "woff2" => "font/woff2",
        "csv" => "text/csv; charset=utf-8",
        "txt" | "toml" | "md" => "text/plain; charset=utf-8",
        "xml" => "application/xml",
        "pdf" => "application/pdf",
        "zip" => "application/zip",
        _ => "application/octet-stream",
    }
}
