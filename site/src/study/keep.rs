//! The file that a study is written to, so that a kill loses nothing and doubles nothing.
//!
//! Rows go to `NAME.unfinished`; beside it `NAME.plan` says of which study they are. When all are there,
//! the file gets its name. A later run of the same study finds both, keeps every whole row, and goes on.

use super::plan::Plan;
use super::table::{head, read_row};
use super::{StudyError, Tally};
use crate::output::write_whole;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{BufRead, BufReader, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

/// A file of rows that is being written.
#[derive(Debug)]
pub struct Kept {
    file: File,
    path: PathBuf,
    draft: PathBuf,
    plan: PathBuf,
    /// Rows that are there already.
    pub rows: u64,
}

fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    name.into()
}

impl Kept {
    /// Opens the file of a study, and counts the rows that an earlier run left into `tally`. With `fresh`
    /// what was left is thrown away.
    ///
    /// # Errors
    /// [`StudyError::File`]; [`StudyError::Refused`] where what is there is of another study, or is being
    /// written now.
    pub fn open(
        path: &Path,
        plan: &Plan,
        fresh: bool,
        tally: &mut Tally,
    ) -> Result<Self, StudyError> {
        let (draft, plan_path) = (beside(path, ".unfinished"), beside(path, ".plan"));
        let file = OpenOptions::new()
            .read(true)
            .write(true)
            .create(true)
            .truncate(false)
            .open(&draft)
            .map_err(|e| StudyError::file(&draft, e))?;
        match file.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => {
                let name = draft.display().to_string();
                let allowed = "one run of a study at a time";
                return Err(StudyError::refused("output", name, allowed));
            }
            Err(TryLockError::Error(error)) => return Err(StudyError::file(&draft, error)),
        }
        let mut kept = Self {
            file,
            path: path.to_path_buf(),
            draft,
            plan: plan_path,
            rows: 0,
        };
        let wanted = plan.text();
        let found = std::fs::read_to_string(&kept.plan).unwrap_or_default();
        if fresh || found.is_empty() {
            kept.begin(plan)?;
            return Ok(kept);
        }
        if found != wanted {
            return Err(StudyError::refused(
                "output",
                kept.draft.display().to_string(),
                "the study that it was begun with, or --fresh to throw it away",
            ));
        }
        kept.go_on(plan, tally)?;
        Ok(kept)
    }

    /// Begins with the head alone. The plan is written last: rows without a plan are never gone on with.
    fn begin(&mut self, plan: &Plan) -> Result<(), StudyError> {
        let _ = std::fs::remove_file(&self.plan); // not being there is as good
        let head = head(&plan.columns());
        self.file
            .set_len(0)
            .and_then(|()| self.file.rewind())
            .and_then(|()| self.file.write_all(head.as_bytes()))
            .map_err(|e| StudyError::file(&self.draft, e))?;
        write_whole(&self.plan, plan.text().as_bytes()).map_err(|e| StudyError::file(&self.plan, e))
    }

    /// Keeps every whole row up to the first that is not, and stands behind them.
    fn go_on(&mut self, plan: &Plan, tally: &mut Tally) -> Result<(), StudyError> {
        let names = plan.columns();
        let failed = |e: std::io::Error| StudyError::file(&self.draft, e);
        let mut lines = BufReader::new(&self.file);
        let mut line = String::new();
        // A line that is no text, as a torn write leaves it, is no row.
        let mut next = |line: &mut String| {
            line.clear();
            lines.read_line(line).map_or(0, |bytes| bytes as u64)
        };
        let mut end = next(&mut line);
        if line != head(&names) {
            return self.begin(plan);
        }
        while self.rows < plan.rows {
            let bytes = next(&mut line);
            if read_row(&line, self.rows, names.len(), plan.axes.len(), tally).is_none() {
                break;
            }
            end += bytes;
            self.rows += 1;
        }
        self.file.set_len(end).map_err(failed)?;
        self.file.seek(SeekFrom::Start(end)).map_err(failed)?;
        Ok(())
    }

    /// Gives the file its name: all rows are there.
    ///
    /// # Errors
    /// [`StudyError::File`].
    pub fn finish(self) -> Result<(), StudyError> {
        self.file
            .sync_all()
            .and_then(|()| std::fs::rename(&self.draft, &self.path))
            .map_err(|e| StudyError::file(&self.path, e))?;
        std::fs::remove_file(&self.plan).map_err(|e| StudyError::file(&self.plan, e))
    }
}

impl Write for Kept {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.file.write(bytes)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        self.file.flush()
    }
}
