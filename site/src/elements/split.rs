//! Splits the linked wasm into the main file and the parts that a page fetches when it needs them.
//!
//! A library finds what each way into a part (`widgets/src/element/parts.rs`) alone reaches. What several
//! parts reach it puts into a piece for each set of parts; every topic brings more such sets, and most of
//! their pieces are tiny. So pieces are joined where that costs a page little.

use super::empty::without_unused;
use super::join::{join, weight};
use super::{BuildError, read};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use wasm_split_cli_support::{Options, transform};

/// The name under which the wasm asks for the loader of a part.
pub(super) const LINK: &str = "parts";

/// Bytes that pages may fetch in vain for one file less: the sum over the parts.
const WASTE: usize = 6_000;

/// A wasm file beside the main one.
#[derive(Debug)]
pub(super) struct Piece {
    /// Name without folder and ending.
    pub name: String,
    /// The content.
    pub wasm: Vec<u8>,
    /// The parts that need it.
    pub parts: BTreeSet<String>,
}

/// What is to become one file.
struct Draft {
    files: Vec<Vec<u8>>,
    size: usize,
    parts: BTreeSet<String>,
}

impl Draft {
    /// Bytes fetched in vain if both were one file.
    fn waste(&self, other: &Self) -> usize {
        let lone = |one: &Self, two: &Self| one.parts.difference(&two.parts).count();
        self.size * lone(other, self) + other.size * lone(self, other)
    }
}

/// Writes the main file to `main` and gives the pieces.
pub(super) fn split(compiled: &Path, main: &Path) -> Result<Vec<Piece>, BuildError> {
    let wasm = without_unused(&read(compiled)?)
        .ok_or_else(|| BuildError::NotWasm(compiled.to_path_buf()))?;
    let folder = tempfile::tempdir().map_err(|source| BuildError::File {
        path: std::env::temp_dir(),
        source,
    })?;
    let mut options = Options::new(&wasm);
    options.output_dir = folder.path();
    options.main_out_path = main;
    options.link_name = LINK;
    let made = transform(options).map_err(|error| BuildError::Split(format!("{error:#}")))?;
    let mut parts_of: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for (part, files) in made.prefetch_map {
        for file in files {
            parts_of.entry(file).or_default().insert(part.clone());
        }
    }
    let mut drafts = Vec::new();
    for (file, parts) in parts_of {
        let wasm = read(&folder.path().join(file + ".wasm"))?;
        drafts.push(Draft {
            size: weight(&wasm),
            files: vec![wasm],
            parts,
        });
    }
    join_where_cheap(&mut drafts);
    let numbered = drafts.into_iter().zip(1..);
    numbered
        .map(|(draft, number)| finish(draft, number))
        .collect()
}

/// Joins the two drafts that waste least, again and again, for as long as that is little.
fn join_where_cheap(drafts: &mut Vec<Draft>) {
    loop {
        let pairs = (0..drafts.len()).flat_map(|b| (0..b).map(move |a| (a, b)));
        let cheapest = pairs.min_by_key(|(a, b)| drafts[*a].waste(&drafts[*b]));
        match cheapest {
            Some((a, b)) if drafts[a].waste(&drafts[b]) <= WASTE => {
                let other = drafts.remove(b);
                drafts[a].files.extend(other.files);
                drafts[a].size += other.size;
                drafts[a].parts.extend(other.parts);
            }
            _ => return,
        }
    }
}

/// A piece of one part has its name; others have a number.
fn finish(draft: Draft, number: usize) -> Result<Piece, BuildError> {
    let own = draft.parts.first().filter(|_| draft.parts.len() == 1);
    Ok(Piece {
        name: own.map_or_else(|| format!("shared-{number}"), String::clone),
        wasm: join(&draft.files).map_err(BuildError::Split)?,
        parts: draft.parts,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn draft(size: usize, parts: &[&str]) -> Draft {
        Draft {
            files: vec![Vec::new()],
            size,
            parts: parts.iter().map(|part| (*part).to_owned()).collect(),
        }
    }

    #[test]
    fn small_pieces_are_joined_and_large_ones_are_not() {
        let mut drafts = vec![
            draft(20_000, &["a"]),
            draft(20_000, &["b"]),
            draft(300, &["a", "b"]),
            draft(200, &["a", "b", "c"]),
            draft(20_000, &["c"]),
        ];
        join_where_cheap(&mut drafts);
        let sets: Vec<usize> = drafts.iter().map(|draft| draft.parts.len()).collect();
        assert_eq!(sets, [1, 1, 3, 1], "the two shared pieces became one");
        assert_eq!(
            (drafts[2].size, drafts[2].files.len()),
            (500, 2),
            "with all that was in them"
        );
    }
}
