//! What the commands of a talk do.

use super::{Failure, TalkCommand, print, say};
use axlewright_core::talk::STARTER;
use axlewright_site::output::write_whole;
use axlewright_site::talk::{self, TalkError, TalkFile};
use axlewright_site::{site, toolchain};
use std::path::Path;

pub(super) fn run(command: TalkCommand) -> Result<(), Failure> {
    match command {
        TalkCommand::New { talk } => new(&talk),
        TalkCommand::Check { talk } => {
            let count = read(&talk)?.talk.steps.len();
            print(&format!("{}: {count} steps, no fault\n", talk.display()))
        }
        TalkCommand::Build { talk, output } => build(&talk, &output),
    }
}

fn read(path: &Path) -> Result<TalkFile, Failure> {
    talk::read(path).map_err(|error| match error {
        TalkError::Script(_) => Failure::machine(error),
        _ => Failure::input(error),
    })
}

fn new(path: &Path) -> Result<(), Failure> {
    if path.exists() {
        return Err(Failure::Input(format!(
            "{} is there already; allowed: the name of a new file",
            path.display()
        )));
    }
    write(path, STARTER)
}

fn build(path: &Path, output: &Path) -> Result<(), Failure> {
    // A faulty talk is told at once; the elements may take minutes.
    let file = read(path)?;
    let root = toolchain::workspace_root().map_err(Failure::machine)?;
    let scripts = root.join("target/axlewright-talk");
    site::build_scripts(&root, &scripts, &mut say).map_err(Failure::machine)?;
    let html = talk::page(&file, &scripts).map_err(Failure::machine)?;
    write(output, &html)?;
    print(&format!("{}: {} bytes\n", output.display(), html.len()))
}

fn write(path: &Path, text: &str) -> Result<(), Failure> {
    write_whole(path, text.as_bytes())
        .map_err(|error| Failure::Machine(format!("{} cannot be written: {error}", path.display())))
}
