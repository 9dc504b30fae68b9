//! Hashes of the scripts, so that a page of somebody else can ask its browser for just these bytes.
//!
//! A script cannot hold its own hash, so they stand in a file of their own. The hash of the module does
//! not cover the wasm files that the module loads; the classic script has them inside.

use crate::elements::{CLASSIC, MODULE};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha384};
use std::io;
use std::path::Path;

/// The file of the hashes.
pub const INTEGRITY: &str = "integrity.json";

/// The hashes of both scripts of a folder, as JSON: name of the file, value of `integrity`.
///
/// # Errors
/// When a script cannot be read.
pub fn integrity(folder: &Path) -> io::Result<String> {
    let mut hashes = serde_json::Map::new();
    for name in [MODULE, CLASSIC] {
        let digest = Sha384::digest(std::fs::read(folder.join(name))?);
        let hash = format!("sha384-{}", STANDARD.encode(digest));
        hashes.insert(name.into(), hash.into());
    }
    Ok(format!("{:#}\n", serde_json::Value::Object(hashes)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hash_is_what_a_browser_computes() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join(MODULE), "abc").unwrap();
        std::fs::write(folder.path().join(CLASSIC), "").unwrap();
        let hashes: serde_json::Value =
            serde_json::from_str(&integrity(folder.path()).unwrap()).unwrap();
        // SHA-384 of "abc", FIPS 180-4 example, in base 64.
        assert_eq!(
            hashes[MODULE],
            "sha384-ywB1P0WjXou1oD1pmsZQBycsMqsO3tFjGotgWkP/W+2AhgcroefMI1i67KE0yCWn"
        );
        assert_ne!(hashes[MODULE], hashes[CLASSIC]);
    }
}
