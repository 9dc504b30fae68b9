//! The documented settings of nginx and Apache, tried with nginx and Apache.

use crate::{read, root, site};
use axlewright_site::serve::CONTENT_SECURITY_POLICY;
use std::io::{Read, Write};
use std::net::{TcpListener, TcpStream};
use std::process::{Child, Command};
use std::time::{Duration, Instant};

/// A web server with the documented settings.
struct Server {
    child: Child,
    port: u16,
    _folder: tempfile::TempDir,
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// The documented settings of a server, for the site of the tests.
fn settings(name: &str) -> String {
    read(&root().join("site/hosting").join(name))
        .replace("AXLE_ROOT", &site().out.display().to_string())
        .replace("AXLE_POLICY", CONTENT_SECURITY_POLICY)
}

/// Starts a server with a folder of its own, to which everything goes that it writes.
fn start(folder: tempfile::TempDir, port: u16, command: &mut Command) -> Server {
    let child = command
        .spawn()
        .unwrap_or_else(|e| panic!("{command:?}: {e} (tests/run installs it)"));
    let server = Server {
        child,
        port,
        _folder: folder,
    };
    let deadline = Instant::now() + Duration::from_secs(10);
    while TcpStream::connect(("127.0.0.1", port)).is_err() {
        assert!(Instant::now() < deadline, "{command:?} does not answer");
        std::thread::sleep(Duration::from_millis(30));
    }
    server
}

fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").unwrap();
    listener.local_addr().unwrap().port()
}

fn nginx() -> Server {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().display();
    let port = free_port();
    let settings = settings("nginx.conf")
        .replace("listen 80;", &format!("listen 127.0.0.1:{port};"))
        .replace("include mime.types;", "include /etc/nginx/mime.types;");
    // One process, so that it ends with us.
    let whole = format!(
        "daemon off;\nmaster_process off;\npid {place}/pid;\nerror_log {place}/errors;\nevents {{}}\nhttp {{\n\
         access_log off;\nclient_body_temp_path {place}/a;\nproxy_temp_path {place}/b;\nfastcgi_temp_path {place}/c;\n\
         uwsgi_temp_path {place}/d;\nscgi_temp_path {place}/e;\n{settings}\n}}\n"
    );
    let file = folder.path().join("nginx.conf");
    std::fs::write(&file, whole).unwrap();
    let mut command = Command::new("nginx");
    start(
        folder,
        port,
        command.args(["-e", "stderr", "-c"]).arg(&file),
    )
}

fn apache() -> Server {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().display();
    let port = free_port();
    let out = site().out.display();
    let mut whole = format!(
        "ServerRoot {place}\nServerName localhost\nListen 127.0.0.1:{port}\nPidFile {place}/pid\n\
         ErrorLog {place}/errors\nMutex file:{place}\nTypesConfig {place}/types\nUser www-data\nGroup www-data\n"
    );
    for module in [
        "mpm_event",
        "authz_core",
        "dir",
        "mime",
        "headers",
        "filter",
        "deflate",
    ] {
        whole += &format!("LoadModule {module}_module /usr/lib/apache2/modules/mod_{module}.so\n");
    }
    whole += &format!(
        "DocumentRoot {out}\n<Directory {out}>\nRequire all granted\n{}\n</Directory>\n",
        settings("apache.conf")
    );
    // What Debian's list of types says of these endings.
    let types =
        "text/html html\ntext/css css\nimage/svg+xml svg\napplication/json json\ntext/plain txt\n";
    std::fs::write(folder.path().join("types"), types).unwrap();
    let file = folder.path().join("apache.conf");
    std::fs::write(&file, whole).unwrap();
    let mut command = Command::new("/usr/sbin/apache2");
    // In the foreground and in one process, so that it ends with us.
    start(folder, port, command.args(["-X", "-f"]).arg(&file))
}

/// Status line and headers of an answer, in lower case names.
fn heads(port: u16, target: &str) -> String {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
    let ask = format!(
        "GET {target} HTTP/1.1\r\nHost: localhost\r\nAccept-Encoding: gzip\r\nConnection: close\r\n\r\n"
    );
    stream.write_all(ask.as_bytes()).unwrap();
    let mut answer = Vec::new();
    stream.read_to_end(&mut answer).unwrap();
    let text = String::from_utf8_lossy(&answer).into_owned();
    text.split("\r\n\r\n").next().unwrap().to_lowercase()
}

#[test]
fn nginx_sends_what_the_page_on_hosting_says() {
    sends_what_the_page_says(&nginx());
}

#[test]
fn apache_sends_what_the_page_on_hosting_says() {
    sends_what_the_page_says(&apache());
}

fn sends_what_the_page_says(server: &Server) {
    let policy = CONTENT_SECURITY_POLICY.to_lowercase();
    for (target, kind, cache, shared) in [
        ("/", "text/html", "no-cache", false),
        ("/traction.html", "text/html", "no-cache", false),
        (
            "/embed/traction.html?mass=1000+kg",
            "text/html",
            "no-cache",
            false,
        ),
        ("/style.css", "text/css", "no-cache", false),
        ("/style.css?0123456789ab", "text/css", "immutable", false),
        ("/style.css?version=2", "text/css", "no-cache", false),
        ("/axlewright.js", "javascript", "no-cache", true),
        (
            "/axlewright_bg.wasm?0123456789ab",
            "application/wasm",
            "immutable",
            true,
        ),
        (
            "/words/de.txt?0123456789ab",
            "text/plain",
            "immutable",
            true,
        ),
        ("/integrity.json", "application/json", "no-cache", true),
        (
            "/figures/traction-side.svg",
            "image/svg+xml",
            "no-cache",
            false,
        ),
    ] {
        let heads = heads(server.port, target);
        assert!(heads.starts_with("http/1.1 200"), "{target}: {heads}");
        let line = |name: &str| {
            let found: Vec<&str> = heads.lines().filter_map(|l| l.strip_prefix(name)).collect();
            assert!(found.len() < 2, "{target}: {name} twice");
            found.first().map_or("", |value| value.trim()).to_owned()
        };
        assert!(line("content-type:").contains(kind), "{target}: {heads}");
        let own = target.starts_with("/embed/");
        let want = if own { "" } else { &policy };
        assert_eq!(line("content-security-policy:"), want, "{target}");
        // The icon is small; everything else here is text or code.
        assert_eq!(line("content-encoding:"), "gzip", "{target}: {heads}");
        assert_eq!(line("x-content-type-options:"), "nosniff", "{target}");
        assert_eq!(line("referrer-policy:"), "no-referrer", "{target}");
        assert!(line("cache-control:").ends_with(cache), "{target}: {heads}");
        assert_eq!(
            line("access-control-allow-origin:") == "*",
            shared,
            "{target}: {heads}"
        );
    }
    let heads = heads(server.port, "/no-such-page.html");
    assert!(
        heads.starts_with("http/1.1 404") && heads.contains("text/html"),
        "{heads}"
    );
}
