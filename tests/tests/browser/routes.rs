//! A second server for what the first one never does: refuse, redirect, send far too much, answer late.
//!
//! `/site/PAGE` is the built site as it is; other first parts of the path change what comes with it.

use axlewright_tests::session::site;
use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, OnceLock};
use std::time::Duration;

const SCENARIO: &str = r#"{"vehicle":{"base":"corrie"},"load_transfer":{"acceleration":"0.3 g"}}"#;

/// The server, on two ports: the second is another origin, which allows nobody.
pub(crate) struct Routes {
    /// The address that pages are opened from.
    pub(crate) url: String,
    /// Bytes that went out for `huge.json`.
    pub(crate) huge_sent: Arc<AtomicUsize>,
}

/// The server, started on first use; its threads end with the test program.
pub(crate) fn routes() -> &'static Routes {
    static ROUTES: OnceLock<Routes> = OnceLock::new();
    ROUTES.get_or_init(|| {
        let other = listen(String::new(), Arc::default());
        let huge_sent = Arc::new(AtomicUsize::new(0));
        let url = listen(other, Arc::clone(&huge_sent));
        Routes { url, huge_sent }
    })
}

/// Answers on a port of its own, one thread for each connection; gives the address.
fn listen(other: String, huge_sent: Arc<AtomicUsize>) -> String {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port is free");
    let url = format!("http://{}/", listener.local_addr().expect("an address"));
    std::thread::spawn(move || {
        for stream in listener.incoming().flatten() {
            let (other, huge_sent) = (other.clone(), Arc::clone(&huge_sent));
            // A browser that goes away in the middle is part of the tests.
            std::thread::spawn(move || answer(stream, &other, &huge_sent));
        }
    });
    url
}

fn answer(stream: TcpStream, other: &str, huge_sent: &AtomicUsize) -> std::io::Result<()> {
    let mut lines = BufReader::new(&stream).lines();
    let first = lines.next().transpose()?.unwrap_or_default();
    while lines.next().transpose()?.is_some_and(|l| !l.is_empty()) {}
    let target = first.split(' ').nth(1).unwrap_or("/");
    let path = target.split('?').next().unwrap_or("/");
    let (mode, name) = path
        .trim_start_matches('/')
        .split_once('/')
        .unwrap_or(("", path));
    let json = "Content-Type: application/json\r\n";
    match name.trim_start_matches('/') {
        "good.json" => send(&stream, "200 OK", json, SCENARIO.as_bytes()),
        "slow.json" => {
            std::thread::sleep(Duration::from_millis(1500));
            send(&stream, "200 OK", json, SCENARIO.as_bytes())
        }
        "never.json" => {
            std::thread::sleep(Duration::from_secs(30));
            Ok(())
        }
        "text.json" => send(&stream, "200 OK", json, b"a text that is no JSON"),
        "wrong.json" => send(&stream, "200 OK", json, br#"{"vehicle":{"mass":"-5 kg"}}"#),
        "list.json" => send(&stream, "200 OK", json, b"[1, 2]"),
        "huge.json" => send_huge(&stream, huge_sent),
        "away.json" => {
            let place = format!("Location: {other}site/good.json\r\n");
            send(&stream, "302 Found", &place, b"")
        }
        name => send_file(&stream, mode, name),
    }
}

/// A file of the built site, with what the mode changes.
fn send_file(stream: &TcpStream, mode: &str, name: &str) -> std::io::Result<()> {
    let kind = match name.rsplit('.').next() {
        Some("html") => "text/html",
        Some("js") => "text/javascript",
        Some("wasm") => "application/wasm",
        Some("css") => "text/css",
        _ => "application/octet-stream",
    };
    let policy = match mode {
        "no-wasm-eval" => "Content-Security-Policy: script-src 'self'\r\n",
        "no-script" => "Content-Security-Policy: script-src 'none'\r\n",
        _ => "",
    };
    let head = format!("Content-Type: {kind}\r\n{policy}");
    if kind == "application/wasm" {
        match mode {
            "part-missing" if name.starts_with("parts/") => {
                return send(stream, "404 Not Found", "", b"");
            }
            "question-missing" if name.starts_with("parts/question") => {
                return send(stream, "404 Not Found", "", b"");
            }
            "wasm-missing" => return send(stream, "404 Not Found", "", b""),
            "wasm-wrong" => return send(stream, "200 OK", &head, b"<!doctype html>"),
            // A valid module that is not ours.
            "wasm-other" => return send(stream, "200 OK", &head, b"\0asm\x01\0\0\0"),
            "wasm-slow" => std::thread::sleep(Duration::from_millis(1500)),
            _ => {}
        }
    }
    let plain = !name.is_empty() && !name.contains("..");
    match plain.then(|| std::fs::read(site().folder.join(name))) {
        Some(Ok(content)) => send(stream, "200 OK", &head, &content),
        _ => send(stream, "404 Not Found", "", b""),
    }
}

fn send(mut stream: &TcpStream, status: &str, headers: &str, body: &[u8]) -> std::io::Result<()> {
    let length = body.len();
    let head = format!(
        "HTTP/1.1 {status}\r\n{headers}Content-Length: {length}\r\nConnection: close\r\n\r\n"
    );
    stream.write_all(head.as_bytes())?;
    stream.write_all(body)
}

/// 50 MB of a JSON text without end.
fn send_huge(mut stream: &TcpStream, sent: &AtomicUsize) -> std::io::Result<()> {
    let head =
        "HTTP/1.1 200 OK\r\nContent-Type: application/json\r\nContent-Length: 50000000\r\n\r\n";
    stream.write_all(head.as_bytes())?;
    let part = [b'['; 50_000];
    for _ in 0..1000 {
        stream.write_all(&part)?;
        sent.fetch_add(part.len(), Ordering::Relaxed);
    }
    Ok(())
}
