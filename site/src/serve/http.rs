//! The little of HTTP/1.1 that serving files takes: read a request, write an answer, keep the connection.
//!
//! Each connection has its own thread. Browsers open connections that they may never use, so no
//! number of silent ones may hold up another.

use std::io::{self, Read, Write};
use std::net::{TcpListener, TcpStream};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

/// The longest head of a request, in bytes.
const HEAD_LIMIT: usize = 16 * 1024;
/// How long a connection may be silent.
const PATIENCE: Duration = Duration::from_secs(60);
/// More connections than any browser opens; what comes on top is closed at once.
const CONNECTIONS: usize = 512;

/// A request without its body, which nothing here reads.
pub(super) struct Request {
    pub method: String,
    pub target: String,
    headers: Vec<(String, String)>,
    keeps_alive: bool,
}

impl Request {
    /// All values that the request gives for a header, each up to its comma.
    pub(super) fn values<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a str> {
        self.headers
            .iter()
            .filter(move |(given, _)| given.eq_ignore_ascii_case(name))
            .flat_map(|(_, value)| value.split(',').map(str::trim))
    }
}

/// An answer. The length and what concerns the connection are added when it is written.
pub(super) struct Answer {
    pub status: &'static str,
    pub headers: Vec<(&'static str, String)>,
    pub body: Vec<u8>,
}

impl Answer {
    pub(super) fn new(status: &'static str, kind: &str, body: Vec<u8>) -> Self {
        Self {
            status,
            headers: Vec::new(),
            body,
        }
        .with("Content-Type", kind)
    }

    pub(super) fn with(mut self, name: &'static str, value: &str) -> Self {
        self.headers.push((name, value.to_string()));
        self
    }
}

/// Answers every connection that reaches the listener.
pub(super) fn answer_all(
    listener: &TcpListener,
    answer: impl Fn(&Request) -> Answer + Send + Sync + 'static,
) -> ! {
    let answer = Arc::new(answer);
    let open = Arc::new(AtomicUsize::new(0));
    loop {
        // A connection that failed concerns only whoever opened it. Out of handles, the next try
        // fails too, and trying on without a pause would only heat the room.
        let Ok((stream, _)) = listener.accept() else {
            std::thread::sleep(Duration::from_millis(20));
            continue;
        };
        if open.load(Ordering::Relaxed) >= CONNECTIONS {
            continue;
        }
        open.fetch_add(1, Ordering::Relaxed);
        let (answer, open_here) = (Arc::clone(&answer), Arc::clone(&open));
        let started = std::thread::Builder::new().spawn(move || {
            // An error here means that the other side has gone.
            let _ = converse(&stream, &*answer);
            open_here.fetch_sub(1, Ordering::Relaxed);
        });
        if started.is_err() {
            open.fetch_sub(1, Ordering::Relaxed);
        }
    }
}

fn converse(mut stream: &TcpStream, answer: &dyn Fn(&Request) -> Answer) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    stream.set_nodelay(true)?;
    let mut received = Vec::new();
    while let Some(head) = next_head(stream, &mut received)? {
        let (reply, sends_body, keeps_alive) = match parse(&head) {
            Some(request) => (
                answer(&request),
                request.method != "HEAD",
                request.keeps_alive,
            ),
            None => (
                Answer::new("400 Bad Request", "text/plain", Vec::new()),
                true,
                false,
            ),
        };
        stream.write_all(&bytes(&reply, sends_body, keeps_alive))?;
        if !keeps_alive {
            break;
        }
    }
    stream.shutdown(std::net::Shutdown::Write)
}

/// The text of the next request up to its empty line, or `None` at the end of the connection.
/// What follows stays in `received`.
fn next_head(mut stream: &TcpStream, received: &mut Vec<u8>) -> io::Result<Option<String>> {
    loop {
        if let Some(end) = received.windows(4).position(|part| part == b"\r\n\r\n") {
            let head: Vec<u8> = received.drain(..end + 4).collect();
            return Ok(Some(String::from_utf8_lossy(&head).into_owned()));
        }
        if received.len() > HEAD_LIMIT {
            return Err(io::Error::from(io::ErrorKind::InvalidData));
        }
        let mut part = [0; 4096];
        match stream.read(&mut part)? {
            0 => return Ok(None),
            length => received.extend_from_slice(&part[..length]),
        }
    }
}

fn parse(head: &str) -> Option<Request> {
    let mut lines = head.lines();
    let mut words = lines.next()?.split(' ');
    let (method, target, version) = (words.next()?, words.next()?, words.next()?);
    if words.next().is_some() || !version.starts_with("HTTP/1.") {
        return None;
    }
    let headers = lines.take_while(|line| !line.is_empty()).map(|line| {
        let (name, value) = line.split_once(':')?;
        Some((name.to_string(), value.trim().to_string()))
    });
    let mut request = Request {
        method: method.to_string(),
        target: target.to_string(),
        headers: headers.collect::<Option<_>>()?,
        keeps_alive: version == "HTTP/1.1",
    };
    // A body would be taken for the next request.
    let has_body = request.values("Content-Length").any(|length| length != "0")
        || request.values("Transfer-Encoding").next().is_some();
    let closes = request
        .values("Connection")
        .any(|word| word.eq_ignore_ascii_case("close"));
    request.keeps_alive &= !has_body && !closes;
    Some(request)
}

fn bytes(answer: &Answer, sends_body: bool, keeps_alive: bool) -> Vec<u8> {
    let mut head = format!("HTTP/1.1 {}\r\n", answer.status);
    for (name, value) in &answer.headers {
        // A line end in a value would end the header.
        if !value.contains(['\r', '\n']) {
            head += &format!("{name}: {value}\r\n");
        }
    }
    let connection = if keeps_alive { "keep-alive" } else { "close" };
    head += &format!(
        "Content-Length: {}\r\nConnection: {connection}\r\n\r\n",
        answer.body.len()
    );
    let mut bytes = head.into_bytes();
    if sends_body {
        bytes.extend_from_slice(&answer.body);
    }
    bytes
}
