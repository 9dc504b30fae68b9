//! Completions for shells, and manual pages, both made from the table of commands.

use super::{Cli, Failure, print};
use clap::CommandFactory;
use clap_complete::Shell;
use clap_mangen::Man;
use std::path::Path;

/// Prints the completions of a shell.
pub(super) fn completions(shell: Shell) -> Result<(), Failure> {
    let mut script = Vec::new();
    clap_complete::generate(shell, &mut Cli::command(), "axlewright", &mut script);
    print(&String::from_utf8_lossy(&script))
}

/// Prints the manual page of the program, or writes a page for it and for every command into a folder.
pub(super) fn manual(out: Option<&Path>) -> Result<(), Failure> {
    let Some(out) = out else {
        let mut page = Vec::new();
        Man::new(Cli::command())
            .render(&mut page)
            .map_err(Failure::machine)?;
        return print(&String::from_utf8_lossy(&page));
    };
    std::fs::create_dir_all(out)
        .and_then(|()| clap_mangen::generate_to(Cli::command(), out))
        .map_err(|error| Failure::Machine(format!("{} cannot be written: {error}", out.display())))
}
