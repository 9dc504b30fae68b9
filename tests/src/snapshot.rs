//! Snapshots: what is drawn now against what is kept in `tests/snapshots`.
//!
//! `AXLEWRIGHT_REFRESH=1` keeps what is drawn now. Look at every picture that `git diff` then names.

use crate::picture::Picture;
use std::path::PathBuf;

fn path(name: &str) -> PathBuf {
    crate::file("snapshots").join(name)
}

fn refreshing() -> bool {
    std::env::var_os("AXLEWRIGHT_REFRESH").is_some_and(|value| value == "1")
}

fn write(name: &str, content: &[u8]) {
    std::fs::create_dir_all(path("")).expect("the folder of the snapshots");
    std::fs::write(path(name), content).unwrap_or_else(|e| panic!("{name}: {e}"));
}

fn forget(name: &str) {
    let _ = std::fs::remove_file(path(name)); // not being there is as good
}

/// Compares a text with the kept one; on a difference `NAME-changed.EXT` lies beside it. Gives what is
/// wrong.
#[must_use]
pub fn text_differs(name: &str, extension: &str, text: &str) -> Option<String> {
    let (kept, changed) = (
        format!("{name}.{extension}"),
        format!("{name}-changed.{extension}"),
    );
    forget(&changed);
    if refreshing() {
        write(&kept, text.as_bytes());
        return None;
    }
    let old = std::fs::read_to_string(path(&kept)).unwrap_or_default();
    if old == text {
        return None;
    }
    write(&changed, text.as_bytes());
    let line = old.lines().zip(text.lines()).position(|(a, b)| a != b);
    let line = line.unwrap_or_else(|| old.lines().count().min(text.lines().count()));
    Some(format!(
        "{kept} differs from line {}; see {changed}",
        line + 1
    ))
}

/// Compares a picture with the kept one; `share` of its pixels may differ. On a difference
/// `NAME-changed.png` and `NAME-difference.png` lie beside it. Gives what is wrong.
#[must_use]
pub fn picture_differs(name: &str, png: &[u8], share: f64) -> Option<String> {
    let (kept, changed) = (format!("{name}.png"), format!("{name}-changed.png"));
    let marked = format!("{name}-difference.png");
    forget(&changed);
    forget(&marked);
    let now = Picture::read(png);
    let old = std::fs::read(path(&kept))
        .ok()
        .map(|file| Picture::read(&file));
    let compared = old.as_ref().map(|old| old.difference(&now));
    if let Some(Some((differ, _))) = &compared
        && *differ <= share
    {
        return None;
    }
    if refreshing() {
        write(&kept, &now.write_small());
        return None;
    }
    write(&changed, &now.write_small());
    Some(match (old, compared.flatten()) {
        (Some(_), Some((differ, picture))) => {
            write(&marked, &picture.write_small());
            format!(
                "{kept}: {:.2} % of its pixels differ, {:.2} % may; see {changed} and {marked}",
                100.0 * differ,
                100.0 * share
            )
        }
        (Some(old), None) => format!(
            "{kept}: {} × {} pixels have become {} × {}; see {changed}",
            old.width, old.height, now.width, now.height
        ),
        (None, _) => format!("{kept} is not there; see {changed}"),
    })
}
