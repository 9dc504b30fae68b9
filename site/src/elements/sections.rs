//! Drops the parts of a wasm file that a browser does not need: names, debug data, tool names.

/// The file without the custom sections that only tools read, or `None` when it is not a wasm file.
///
/// This runs after the glue is written and `wasm-opt` is done, because both read some of them.
#[must_use]
pub(super) fn without_tool_sections(wasm: &[u8]) -> Option<Vec<u8>> {
    const HEADER: usize = 8; // magic number and version
    if wasm.get(..4)? != b"\0asm" {
        return None;
    }
    let mut kept = wasm.get(..HEADER)?.to_vec();
    let mut at = HEADER;
    while at < wasm.len() {
        let id = *wasm.get(at)?;
        let (size, body) = leb128(wasm, at + 1)?;
        let end = body.checked_add(size)?;
        let section = wasm.get(at..end)?;
        if id != 0 || !is_for_tools(section_name(wasm.get(body..end)?)?) {
            kept.extend_from_slice(section);
        }
        at = end;
    }
    Some(kept)
}

fn is_for_tools(name: &[u8]) -> bool {
    const NAMES: [&[u8]; 4] = [
        b"name",
        b"producers",
        b"target_features",
        b"sourceMappingURL",
    ];
    NAMES.contains(&name) || name.starts_with(b".debug")
}

fn section_name(body: &[u8]) -> Option<&[u8]> {
    let (length, start) = leb128(body, 0)?;
    body.get(start..start.checked_add(length)?)
}

/// An unsigned number in the variable-length code of wasm, and the place after it.
fn leb128(bytes: &[u8], mut at: usize) -> Option<(usize, usize)> {
    let mut value = 0_u64;
    for shift in (0..35).step_by(7) {
        let byte = *bytes.get(at)?;
        at += 1;
        value |= u64::from(byte & 0x7f) << shift;
        if byte & 0x80 == 0 {
            return Some((usize::try_from(value).ok()?, at));
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn custom(name: &str, data: &[u8]) -> Vec<u8> {
        let mut body = vec![u8::try_from(name.len()).expect("short")];
        body.extend_from_slice(name.as_bytes());
        body.extend_from_slice(data);
        // Two bytes for a number that needs one: linkers write it so.
        let size = u8::try_from(body.len()).expect("short");
        [vec![0, size | 0x80, 0], body].concat()
    }

    #[test]
    fn tool_sections_go_and_the_rest_stays_in_order() {
        let header = b"\0asm\x01\0\0\0".to_vec();
        let types = vec![1, 4, 1, 0x60, 0, 0];
        let own = custom("own", b"kept");
        let wasm = [
            header.clone(),
            custom("producers", b"x"),
            types.clone(),
            custom(".debug_info", b"yy"),
            own.clone(),
            custom("name", b"z"),
        ]
        .concat();
        assert_eq!(
            without_tool_sections(&wasm),
            Some([header, types, own].concat())
        );
    }

    #[test]
    fn what_is_not_wasm_is_refused() {
        assert_eq!(without_tool_sections(b"<!doctype html>"), None, "text");
        assert_eq!(
            without_tool_sections(b"\0asm\x01\0\0\0\x01\x7f"),
            None,
            "cut short"
        );
        assert_eq!(without_tool_sections(b""), None, "empty");
    }
}
