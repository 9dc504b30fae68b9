//! From the path of an address to a file inside the served folder, and never to one outside.

use std::path::{Component, Path, PathBuf};

/// What the path of an address leads to.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Found {
    File(PathBuf),
    /// Relative links of the page would lead to the wrong place, so the browser is sent on.
    FolderWithoutSlash,
    Nothing,
}

/// The file for the path of an address. Nothing outside `root` is ever found, by `..`, by an absolute
/// path or by a symbolic link.
pub(super) fn find(root: &Path, path: &str) -> Found {
    let Some(decoded) = percent_decode(path) else {
        return Found::Nothing;
    };
    // `//host/` would be a redirect to another machine.
    if !decoded.starts_with('/') || decoded.starts_with("//") || decoded.contains(['\0', '\\', ':'])
    {
        return Found::Nothing;
    }
    let relative = Path::new(decoded.trim_start_matches('/'));
    if !relative
        .components()
        .all(|part| matches!(part, Component::Normal(_)))
    {
        return Found::Nothing;
    }
    let mut wanted = root.join(relative);
    if wanted.is_dir() {
        if !decoded.ends_with('/') {
            return Found::FolderWithoutSlash;
        }
        wanted.push("index.html");
    } else if decoded.ends_with('/') {
        return Found::Nothing;
    }
    match wanted.canonicalize() {
        Ok(real) if real.starts_with(root) && real.is_file() => Found::File(real),
        _ => Found::Nothing,
    }
}

fn percent_decode(text: &str) -> Option<String> {
    let mut decoded = Vec::with_capacity(text.len());
    let mut bytes = text.bytes();
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let mut digit = || char::from(bytes.next()?).to_digit(16);
            let value = digit()? * 16 + digit()?;
            decoded.push(u8::try_from(value).ok()?);
        } else {
            decoded.push(byte);
        }
    }
    String::from_utf8(decoded).ok()
}
