//! Builds the web elements: Rust to wasm, the glue, the two scripts, and what each of them weighs.

mod empty;
mod error;
mod fingerprint;
mod join;
mod report;
mod script;
mod sections;
mod split;
mod strip;
mod talk;
mod wasm;

pub use error::BuildError;
pub use report::{ElementsReport, FileSize};

use crate::toolchain;
use axlewright_core::words::{self, Lang};
use fingerprint::fingerprint;
pub(crate) use fingerprint::short_hash;
use script::Script;
use std::collections::BTreeMap;
use std::fs::File;
use std::path::{Path, PathBuf};

/// The ES module.
pub const MODULE: &str = "axlewright.js";
/// The wasm file that the module loads.
pub const WASM: &str = "axlewright_bg.wasm";
/// The classic script with the wasm inside.
pub const CLASSIC: &str = "axlewright.classic.js";

/// The module of talks.
pub const TALK: &str = "axlewright-talk.js";
/// The classic script of talks, which comes after that of the elements.
pub const TALK_CLASSIC: &str = "axlewright-talk.classic.js";

/// The folder of the parts of the wasm that are fetched when something needs them.
pub const PARTS: &str = "parts";

/// The folder of the languages that are not inside the wasm.
pub const WORDS: &str = "words";

/// Raised when this program makes other files from the same inputs.
const RECIPE: &str = "7";

/// What to build, and from what.
#[derive(Debug, Clone)]
pub struct ElementsOptions {
    /// The root of the source tree.
    pub root: PathBuf,
    /// The package that exports `mount` and its companions.
    pub package: String,
    /// Files and folders whose content decides whether a build is needed.
    pub inputs: Vec<PathBuf>,
    /// The folder of the hand-written scripts and styles.
    pub scripts: PathBuf,
    /// Tags, topics, attributes and sentences, as JSON.
    pub table: String,
    /// Tag and words of each language that is not inside the wasm.
    pub words: Vec<(String, String)>,
    /// The version that the scripts state.
    pub version: String,
    /// The folder for compiled code; finished files are kept there too.
    pub target: PathBuf,
    /// The program that makes wasm smaller, if there is one.
    pub wasm_opt: Option<PathBuf>,
}

impl ElementsOptions {
    /// The elements of the source tree at `root`, with the table that the widgets declare and the
    /// languages of the catalogue.
    #[must_use]
    pub fn new(root: &Path, table: impl Into<String>, version: impl Into<String>) -> Self {
        // Whole folders: code may include files that do not lie in `src`.
        let inputs = ["Cargo.toml", "Cargo.lock", "core", "widgets"];
        Self {
            root: root.to_path_buf(),
            package: "axlewright-widgets".into(),
            inputs: inputs.iter().map(|name| root.join(name)).collect(),
            scripts: root.join("widgets/js"),
            table: table.into(),
            words: Lang::ALL
                .into_iter()
                .filter(|lang| *lang != Lang::English)
                .map(|lang| (lang.tag().into(), words::text(lang).into()))
                .collect(),
            version: version.into(),
            target: std::env::var_os("CARGO_TARGET_DIR")
                .map_or_else(|| root.join("target"), |folder| root.join(folder)),
            wasm_opt: toolchain::find_wasm_opt(root),
        }
    }
}

/// Builds the elements into the folder `out`. When nothing changed since the last build, its files are
/// copied and nothing is built. `say` is told what takes time or is missing, a line each.
///
/// # Errors
/// When a tool is missing or fails, or a file cannot be read or written.
pub fn build_elements(
    out: &Path,
    options: &ElementsOptions,
    say: &mut dyn FnMut(&str),
) -> Result<ElementsReport, BuildError> {
    let kept = options.target.join("axlewright-elements");
    create_folder(&kept)?;
    let _turn = wait_for_turn(&kept)?;
    let wanted = wanted_fingerprint(options)?;
    let report = match report::load(&kept, &wanted) {
        Some(report) => report,
        None => {
            toolchain::ensure_wasm_target(&options.root, say)?;
            let report = build_into(&kept, options, say)?;
            // Written last: a build that was broken off leaves no fingerprint.
            report::keep(&kept, &report, &wanted)?;
            report
        }
    };
    if options.wasm_opt.is_none() {
        say("wasm-opt was not found: the elements work, and are larger than they need be");
    }
    create_folder(&out.join(WORDS))?;
    create_folder(&out.join(PARTS))?;
    for file in &report.files {
        let to = out.join(&file.name);
        std::fs::copy(kept.join(&file.name), &to)
            .map_err(|source| BuildError::File { path: to, source })?;
    }
    Ok(report)
}

/// Waits until no other run of this program works on the kept files. The turn ends with the value.
fn wait_for_turn(kept: &Path) -> Result<File, BuildError> {
    let path = kept.join("lock");
    let opened = File::create(&path).and_then(|file| file.lock().map(|()| file));
    opened.map_err(|source| BuildError::File { path, source })
}

fn wanted_fingerprint(options: &ElementsOptions) -> Result<String, BuildError> {
    let compiler = toolchain::rustc_version(&options.root)?;
    // A replaced wasm-opt has another size, most likely; its version would cost a start of it.
    let wasm_opt = options.wasm_opt.as_ref().map_or(String::new(), |path| {
        let size = std::fs::metadata(path).map_or(0, |data| data.len());
        format!("{} {size}", path.display())
    });
    let mut settings = vec![
        RECIPE,
        &options.package,
        &options.table,
        &options.version,
        &compiler,
        &wasm_opt,
    ];
    for (tag, text) in &options.words {
        settings.extend([tag.as_str(), text]);
    }
    let inputs = [
        options.inputs.as_slice(),
        std::slice::from_ref(&options.scripts),
    ]
    .concat();
    fingerprint(&inputs, &settings)
}

fn build_into(
    kept: &Path,
    options: &ElementsOptions,
    say: &mut dyn FnMut(&str),
) -> Result<ElementsReport, BuildError> {
    report::forget(kept);
    say("building the elements for the browser");
    wasm::compile(options)?;
    let main = kept.join(WASM);
    let pieces = split::split(&wasm::compiled_wasm(options), &main)?;
    let (glue, wasm) = wasm::write_glue(&main)?;
    let mut files = vec![(WASM.to_owned(), wasm)];
    let mut parts: BTreeMap<String, Vec<String>> = BTreeMap::new();
    create_folder(&kept.join(PARTS))?;
    for piece in pieces {
        let name = format!("{PARTS}/{}.wasm", piece.name);
        for part in piece.parts {
            parts.entry(part).or_default().push(name.clone());
        }
        files.push((name, piece.wasm));
    }
    let optimised = make_smaller(kept, &mut files, options, say)?;
    let script = Script {
        folder: &options.scripts,
        glue: &glue,
        table: &options.table,
        words: &options.words,
        version: &options.version,
        wasm: &files,
        parts: &parts,
    };
    write(&kept.join(MODULE), script.module()?.as_bytes())?;
    write(&kept.join(CLASSIC), script.classic()?.as_bytes())?;
    let talk = talk::talk_scripts(&options.scripts, &options.version)?;
    write(&kept.join(TALK), talk.module.as_bytes())?;
    write(&kept.join(TALK_CLASSIC), talk.classic.as_bytes())?;
    create_folder(&kept.join(WORDS))?;
    let names = [MODULE, CLASSIC, TALK, TALK_CLASSIC];
    let mut names: Vec<String> = names.map(String::from).into();
    names.extend(files.into_iter().map(|(name, _)| name));
    for (tag, text) in &options.words {
        let name = format!("{WORDS}/{tag}.txt");
        write(&kept.join(&name), text.as_bytes())?;
        names.push(name);
    }
    let files = names.iter().map(|name| report::weigh(kept, name));
    Ok(ElementsReport {
        files: files.collect::<Result<_, _>>()?,
        parts,
        optimised,
        built: true,
    })
}

/// Writes each wasm file as small as it can be made; tells whether `wasm-opt` did it.
fn make_smaller(
    kept: &Path,
    files: &mut [(String, Vec<u8>)],
    options: &ElementsOptions,
    say: &mut dyn FnMut(&str),
) -> Result<bool, BuildError> {
    let mut program = options.wasm_opt.as_deref();
    if program.is_some() {
        say("making the elements smaller with wasm-opt");
    }
    for (name, wasm) in files {
        let path = kept.join(name.as_str());
        write(&path, wasm)?;
        if let Some(found) = program
            && !wasm::optimise(found, &path, say)?
        {
            program = None; // it has said why, and would say it for every file
        }
        *wasm = sections::without_tool_sections(&read(&path)?)
            .ok_or_else(|| BuildError::NotWasm(path.clone()))?;
        write(&path, wasm)?;
    }
    Ok(program.is_some())
}

fn create_folder(path: &Path) -> Result<(), BuildError> {
    std::fs::create_dir_all(path).map_err(|source| BuildError::File {
        path: path.to_path_buf(),
        source,
    })
}

fn read(path: &Path) -> Result<Vec<u8>, BuildError> {
    std::fs::read(path).map_err(|source| BuildError::File {
        path: path.to_path_buf(),
        source,
    })
}

fn write(path: &Path, content: &[u8]) -> Result<(), BuildError> {
    std::fs::write(path, content).map_err(|source| BuildError::File {
        path: path.to_path_buf(),
        source,
    })
}
