//! The one table of the reference runs: what was solved again elsewhere, and how far apart the two are.

use std::fs;
use std::path::{Path, PathBuf};

/// What a reference run found.
#[derive(Clone, Copy, Debug)]
pub struct Reference {
    /// What was compared.
    pub what: &'static str,
    /// Who solved it again, and how.
    pub against: &'static str,
    /// How many cases were compared.
    pub cases: usize,
    /// Largest relative difference that is accepted.
    pub bound: f64,
    /// Largest relative difference that was found.
    pub largest: f64,
}

impl Reference {
    /// Asserts the bound, and keeps the row: `target/reference.md` holds the rows of all runs.
    ///
    /// # Panics
    /// When the bound does not hold, or DEVELOPERS.md does not state it.
    pub fn keep(self) {
        let Self {
            what,
            against,
            cases,
            bound,
            largest,
        } = self;
        assert!(largest <= bound, "{what}: {largest:e}, allowed {bound:e}");
        let stated = format!("| {what} | {against} | {cases} | {bound:e} |");
        let told = fs::read_to_string(crate::file("../DEVELOPERS.md")).expect("the page is there");
        assert!(
            told.lines().any(|line| line.starts_with(&stated)),
            "the table of reference runs in DEVELOPERS.md does not say {stated}"
        );
        let folder = target().join("reference");
        fs::create_dir_all(&folder).expect("the target folder takes files");
        let name: String = what
            .chars()
            .map(|sign| if sign.is_alphanumeric() { sign } else { '-' })
            .collect();
        fs::write(folder.join(name), format!("{stated} {largest:.1e} |\n")).expect("a row");
        fs::write(target().join("reference.md"), table(&folder)).expect("a table");
    }
}

/// The head, and every row that was kept, in the order of their names.
fn table(folder: &Path) -> String {
    let rows = fs::read_dir(folder).expect("the folder is there");
    let mut paths: Vec<PathBuf> = rows.flatten().map(|row| row.path()).collect();
    paths.sort();
    let rows: Vec<String> = paths.iter().flat_map(fs::read_to_string).collect();
    format!(
        "| what | solved again by | cases | bound | largest difference |\n|---|---|---|---|---|\n{}",
        rows.concat()
    )
}

/// The folder that cargo builds into.
fn target() -> PathBuf {
    let here = std::env::current_exe().unwrap_or_default();
    let target = here.ancestors().find(|folder| folder.ends_with("target"));
    target.map_or_else(|| crate::file("../target"), Path::to_path_buf)
}
