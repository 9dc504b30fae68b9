//! The package for npm: a folder that `npm pack` makes into one file.

use crate::elements::CLASSIC;
use crate::folder::Folder;
use crate::interface::{MANIFEST, TYPES};
use crate::site::{SiteError, read};
use serde_json::json;
use std::path::Path;

/// The folder of the package in the built site.
pub const FOLDER: &str = "npm";

/// The entry of the package. The script with everything inside is taken: each bundler has a way of its
/// own with files that a module fetches, and several leave them behind.
const ENTRY: &str = "import \"./axlewright.classic.js\";\n\nconst api = globalThis.axlewright;\nexport default api.init;\nexport const { version, solve, topics, schema } = api;\n";

/// Writes the folder.
///
/// # Errors
/// When a file cannot be read or written.
pub(super) fn package(root: &Path, folder: &mut Folder) -> Result<(), SiteError> {
    let about = json!({
        "name": "axlewright",
        "version": env!("CARGO_PKG_VERSION"),
        "description": "Web elements that compute and draw why an electric car has one, two, three or four motors.",
        "license": "MIT OR Apache-2.0",
        "type": "module",
        "main": "./index.js",
        "types": "./index.d.ts",
        "customElements": MANIFEST,
        "sideEffects": true,
        "exports": {
            ".": { "types": "./index.d.ts", "default": "./index.js" },
            "./classic": format!("./{CLASSIC}"),
            "./custom-elements.json": format!("./{MANIFEST}"),
            "./package.json": "./package.json",
        },
        "files": [CLASSIC, MANIFEST, "index.js", "index.d.ts", "LICENSE-MIT", "LICENSE-APACHE"],
    });
    let about = serde_json::to_string_pretty(&about)
        .map_err(|error| SiteError::Layout(error.to_string()))?;
    let mut put = |name: &str, bytes: &[u8]| folder.write(&format!("{FOLDER}/{name}"), bytes);
    put("package.json", (about + "\n").as_bytes())?;
    put("index.js", ENTRY.as_bytes())?;
    put(
        "README.md",
        read(&root.join("site/npm/README.md"))?.as_bytes(),
    )?;
    for name in ["LICENSE-MIT", "LICENSE-APACHE"] {
        put(name, read(&root.join(name))?.as_bytes())?;
    }
    for (from, to) in [
        (CLASSIC, CLASSIC),
        (MANIFEST, MANIFEST),
        (TYPES, "index.d.ts"),
    ] {
        let bytes = folder.read(from)?;
        folder.write(&format!("{FOLDER}/{to}"), &bytes)?;
    }
    Ok(())
}
