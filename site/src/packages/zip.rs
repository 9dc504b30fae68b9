//! Writes a zip archive, the same to the byte from the same files.

use flate2::write::DeflateEncoder;
use flate2::{Compression, Crc};
use std::io::{self, Write};

/// 1 January 1980, the first day that the format knows.
const DATE: u16 = 0x21;

/// An archive of files in the given order.
///
/// Source: PKWARE, APPNOTE.TXT (from memory): local headers with their data, the central directory, its
/// end. Names are UTF-8 (flag bit 11), data is deflated (method 8).
///
/// # Errors
/// What the compression says; it has no reason to.
pub(super) fn archive(files: &[(String, Vec<u8>)]) -> io::Result<Vec<u8>> {
    let mut out = Vec::new();
    let mut directory = Vec::new();
    for (name, content) in files {
        let mut crc = Crc::new();
        crc.update(content);
        let mut encoder = DeflateEncoder::new(Vec::new(), Compression::best());
        encoder.write_all(content)?;
        let data = encoder.finish()?;
        let mut about = Vec::new();
        for field in [20_u16, 1 << 11, 8, 0, DATE] {
            about.extend(field.to_le_bytes());
        }
        for field in [crc.sum(), length(data.len())?, length(content.len())?] {
            about.extend(field.to_le_bytes());
        }
        about.extend(short(name.len())?.to_le_bytes());
        about.extend(0_u16.to_le_bytes());
        directory.extend(b"PK\x01\x02");
        directory.extend(20_u16.to_le_bytes());
        directory.extend(&about);
        // No comment, disk 0, no attributes.
        directory.extend([0; 10]);
        directory.extend(length(out.len())?.to_le_bytes());
        directory.extend(name.as_bytes());
        out.extend(b"PK\x03\x04");
        out.extend(&about);
        out.extend(name.as_bytes());
        out.extend(&data);
    }
    let start = length(out.len())?;
    out.extend(&directory);
    out.extend(b"PK\x05\x06");
    out.extend([0; 4]);
    for _ in 0..2 {
        out.extend(short(files.len())?.to_le_bytes());
    }
    out.extend(length(directory.len())?.to_le_bytes());
    out.extend(start.to_le_bytes());
    out.extend([0; 2]);
    Ok(out)
}

fn length(bytes: usize) -> io::Result<u32> {
    u32::try_from(bytes).map_err(io::Error::other)
}

fn short(count: usize) -> io::Result<u16> {
    u16::try_from(count).map_err(io::Error::other)
}
