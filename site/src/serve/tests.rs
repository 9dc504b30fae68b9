//! The server, asked over real connections.

use super::{CONTENT_SECURITY_POLICY, bind, serve};
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::mpsc;
use std::time::Duration;

/// A folder `site` to be served, beside a file that must stay private.
fn folder() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let write = |name: &str, content: &str| {
        let path = folder.path().join(name);
        std::fs::create_dir_all(path.parent().expect("a parent")).expect("a folder");
        std::fs::write(path, content).expect("a file");
    };
    write("site/index.html", "<p>start</p>");
    write("site/topic/index.html", "<p>topic</p>");
    write("site/a b.js", "export {};");
    write("site/x.wasm", "wasm");
    write("site/empty/note.txt", "n");
    write("site/embed/topic.html", "<p>frame</p>");
    write("secret.txt", "secret");
    folder
}

/// Runs `test` against the real server for the folder. Its thread ends with the test program.
fn with_server(test: impl FnOnce(SocketAddr, &Path)) {
    let folder = folder();
    let root = folder.path().join("site").canonicalize().expect("the site");
    let (sender, receiver) = mpsc::channel();
    let served = root.clone();
    std::thread::spawn(move || {
        serve(served, Some(0), |url| {
            sender.send(url.to_string()).expect("told")
        })
    });
    let url = receiver
        .recv_timeout(Duration::from_secs(10))
        .expect("the server is ready");
    let address = url
        .trim_start_matches("http://")
        .trim_end_matches('/')
        .parse()
        .expect("an address");
    test(address, &root);
}

/// Sends one request as it stands, and gives the head and the body of the answer.
fn ask(address: SocketAddr, request: &str) -> (String, String) {
    let mut stream = TcpStream::connect(address).expect("a connection");
    stream
        .set_read_timeout(Some(Duration::from_secs(10)))
        .expect("a time limit");
    write!(
        stream,
        "{request}\r\nHost: {address}\r\nConnection: close\r\n\r\n"
    )
    .expect("sent");
    let mut answer = String::new();
    stream.read_to_string(&mut answer).expect("an answer");
    let (head, body) = answer.split_once("\r\n\r\n").expect("head and body");
    (head.to_string(), body.to_string())
}

fn get(address: SocketAddr, path: &str) -> (String, String) {
    ask(address, &format!("GET {path} HTTP/1.1"))
}

#[test]
fn files_and_folders_are_served_with_their_types() {
    with_server(|address, _| {
        for (path, kind, content) in [
            ("/", "text/html; charset=utf-8", "<p>start</p>"),
            ("/topic/", "text/html; charset=utf-8", "<p>topic</p>"),
            (
                "/topic/index.html?a=b",
                "text/html; charset=utf-8",
                "<p>topic</p>",
            ),
            ("/a%20b.js", "text/javascript; charset=utf-8", "export {};"),
            ("/x.wasm?0123", "application/wasm", "wasm"),
        ] {
            let (head, body) = get(address, path);
            assert!(head.starts_with("HTTP/1.1 200 "), "{path}: {head}");
            assert!(
                head.contains(&format!("Content-Type: {kind}\r\n")),
                "{path}: {head}"
            );
            assert_eq!(body, content, "{path}");
        }
    });
}

#[test]
fn every_answer_carries_the_policy_once() {
    with_server(|address, _| {
        for path in ["/", "/nothing", "/topic", "/x.wasm"] {
            let (head, _) = get(address, path);
            let policy = format!("Content-Security-Policy: {CONTENT_SECURITY_POLICY}");
            assert_eq!(head.matches(&policy).count(), 1, "{path}: {head}");
            assert!(
                head.contains("X-Content-Type-Options: nosniff"),
                "{path}: {head}"
            );
            assert!(head.contains("Cache-Control: no-cache"), "{path}: {head}");
            assert_eq!(head.matches("Content-Type:").count(), 1, "{path}: {head}");
        }
        // A frame brings its own; nothing else in its folder does.
        for (path, times) in [("/embed/topic.html?a=b", 0), ("/embed/x/topic.html", 1)] {
            let (head, _) = get(address, path);
            let found = head.matches("Content-Security-Policy").count();
            assert_eq!(found, times, "{path}: {head}");
        }
        assert!(
            get(address, "/x.wasm")
                .0
                .contains("Access-Control-Allow-Origin: *"),
            "elements"
        );
        assert!(
            !get(address, "/").0.contains("Access-Control-Allow-Origin"),
            "pages"
        );
    });
}

#[test]
fn nothing_outside_the_folder_is_found() {
    with_server(|address, root| {
        #[cfg(unix)]
        std::os::unix::fs::symlink(root.join("../secret.txt"), root.join("link.txt"))
            .expect("a link");
        for path in [
            "/../secret.txt",
            "/%2e%2e/secret.txt",
            "/..%2fsecret.txt",
            "/topic/../../secret.txt",
            "/..\\secret.txt",
            "/%5c..%5csecret.txt",
            "//secret.txt",
            "/%00",
            "/%ff",
            "/%2",
            "/link.txt",
            "/index.html/",
            "/empty/",
            &format!("/{}", root.join("../secret.txt").display()),
        ] {
            let (head, body) = get(address, path);
            assert!(head.starts_with("HTTP/1.1 404 "), "{path}: {head}");
            assert!(!body.contains("secret"), "{path}: {body}");
        }
    });
}

#[test]
fn a_folder_without_slash_is_sent_on_and_never_to_another_machine() {
    with_server(|address, _| {
        let (head, _) = get(address, "/topic");
        assert!(head.starts_with("HTTP/1.1 301 "), "{head}");
        assert!(head.contains("Location: /topic/\r\n"), "{head}");
        assert!(
            get(address, "//topic").0.starts_with("HTTP/1.1 404 "),
            "two slashes"
        );
    });
}

#[test]
fn a_head_request_has_no_body_and_other_methods_are_refused() {
    with_server(|address, _| {
        let (head, body) = ask(address, "HEAD / HTTP/1.1");
        assert!(head.starts_with("HTTP/1.1 200 "), "{head}");
        assert!(head.contains("Content-Length: 12"), "{head}");
        assert_eq!(body, "", "no body");
        let (head, _) = ask(address, "POST / HTTP/1.1\r\nContent-Length: 0");
        assert!(head.starts_with("HTTP/1.1 405 "), "{head}");
        assert!(head.contains("Allow: GET, HEAD"), "{head}");
    });
}

#[test]
fn an_unchanged_file_is_not_sent_again() {
    with_server(|address, root| {
        let (head, _) = get(address, "/");
        let tag = head
            .lines()
            .find_map(|line| line.strip_prefix("ETag: "))
            .expect("a tag")
            .to_string();
        let again = format!("GET / HTTP/1.1\r\nIf-None-Match: \"other\", W/{tag}");
        let (head, body) = ask(address, &again);
        assert!(head.starts_with("HTTP/1.1 304 "), "{head}");
        assert_eq!(body, "", "no body");
        std::fs::write(root.join("index.html"), "<p>new</p>").expect("a file");
        assert_eq!(
            ask(address, &again).1,
            "<p>new</p>",
            "a changed file is sent"
        );
    });
}

#[test]
fn the_folder_may_bring_its_own_page_for_what_is_missing() {
    with_server(|address, root| {
        assert_eq!(get(address, "/none").1, "404 Not Found", "without a page");
        std::fs::write(root.join("404.html"), "<p>lost</p>").expect("a file");
        let (head, body) = get(address, "/none");
        assert!(head.starts_with("HTTP/1.1 404 "), "{head}");
        assert_eq!(body, "<p>lost</p>", "with a page");
    });
}

#[test]
fn silent_connections_hold_up_nobody() {
    with_server(|address, _| {
        let silent: Vec<_> = (0..100)
            .map(|_| TcpStream::connect(address).expect("a connection"))
            .collect();
        for _ in 0..20 {
            let (head, _) = get(address, "/");
            assert!(
                head.starts_with("HTTP/1.1 200 "),
                "beside {} silent ones: {head}",
                silent.len()
            );
        }
    });
}

#[test]
fn a_burst_of_connections_that_stay_open_is_answered() {
    with_server(|address, _| {
        std::thread::scope(|scope| {
            for _ in 0..60 {
                scope.spawn(|| {
                    let mut stream = TcpStream::connect(address).expect("a connection");
                    stream
                        .set_read_timeout(Some(Duration::from_secs(10)))
                        .expect("a time limit");
                    // Two requests at once on one connection that is not closed: two answers, in order.
                    write!(stream, "GET / HTTP/1.1\r\n\r\nGET /topic/ HTTP/1.1\r\n\r\n")
                        .expect("sent");
                    let mut received = String::new();
                    while !received.ends_with("<p>topic</p>") {
                        let mut part = [0; 4096];
                        let length = stream.read(&mut part).expect("an answer in time");
                        received += std::str::from_utf8(&part[..length]).expect("text");
                    }
                    assert!(
                        received.contains("<p>start</p>"),
                        "both answers: {received}"
                    );
                });
            }
        });
    });
}

#[test]
fn what_is_not_a_request_is_refused_and_the_next_one_is_served() {
    with_server(|address, _| {
        assert!(
            ask(address, "hello").0.starts_with("HTTP/1.1 400 "),
            "no target"
        );
        assert!(
            ask(address, "GET / HTTP/2").0.starts_with("HTTP/1.1 400 "),
            "other version"
        );
        let mut stream = TcpStream::connect(address).expect("a connection");
        // The server may hang up before all of it is sent.
        let _ = stream.write_all(&vec![b'x'; 1_000_000]);
        assert!(get(address, "/").0.starts_with("HTTP/1.1 200 "), "alive");
    });
}

#[test]
fn a_port_in_use_gives_way_and_only_this_machine_is_served() {
    let first = bind(0).expect("a port");
    let port = first.local_addr().expect("an address").port();
    let second = bind(port).expect("another port");
    let address = second.local_addr().expect("an address");
    assert_ne!(address.port(), port, "another port");
    assert!(address.ip().is_loopback(), "{address}");
}

#[test]
fn a_missing_folder_is_named() {
    let error = serve(PathBuf::from("/nowhere/site"), None, |_| ()).expect_err("missing");
    assert!(error.to_string().contains("/nowhere/site"), "{error}");
}
