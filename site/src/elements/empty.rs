//! Empties functions of the linked wasm that nothing will call, before it is split.
//!
//! A dependency hands out its bridges between byte streams; nothing here asks for them. What they reach
//! would stay for good: the parts share the function table, so no later step can tell what is in use.

use std::ops::Range;
use wasm_encoder::{CustomSection, Encode};
use wasmparser::{BinaryReader, ExternalKind, Parser, Payload, RelocSectionReader, TypeRef};

/// Part of the names of the functions that go.
pub(super) const UNUSED: &str = "intounderlying";

/// The list of relocations of the code.
const NAME: &str = "reloc.CODE";

/// The wasm with these functions empty, or `None` where it is not whole.
pub(super) fn without_unused(wasm: &[u8]) -> Option<Vec<u8>> {
    let (mut imported, mut unused, mut bodies) = (0, Vec::new(), Vec::new());
    let mut code_start = 0;
    let mut relocations = None;
    for payload in Parser::new(0).parse_all(wasm) {
        match payload.ok()? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += u32::from(matches!(import.ok()?.ty, TypeRef::Func(_)));
                }
            }
            Payload::ExportSection(exports) => {
                for export in exports {
                    let export = export.ok()?;
                    // What describes a function to the writer of the glue is run by it.
                    let described = export.name.starts_with("__wbindgen_describe");
                    if export.kind == ExternalKind::Func
                        && export.name.contains(UNUSED)
                        && !described
                    {
                        unused.push(export.index);
                    }
                }
            }
            Payload::CodeSectionStart { range, .. } => code_start = range.start,
            Payload::CodeSectionEntry(body) => bodies.push(place(&body.range())?),
            Payload::CustomSection(custom) if custom.name() == NAME => {
                let start = usize::try_from(custom.data_offset()).ok()?;
                relocations = Some(start..start + custom.data().len());
            }
            _ => {}
        }
    }
    let code_start = usize::try_from(code_start).ok()?;
    let mut emptied = Vec::new();
    let mut wasm = wasm.to_vec();
    for function in unused {
        let body = bodies.get(usize::try_from(function.checked_sub(imported)?).ok()?)?;
        empty(wasm.get_mut(body.clone())?)?;
        emptied.push(body.start - code_start..body.end - code_start);
    }
    forget(&mut wasm, relocations?, &emptied)?;
    Some(wasm)
}

fn place(range: &Range<u64>) -> Option<Range<usize>> {
    Some(usize::try_from(range.start).ok()?..usize::try_from(range.end).ok()?)
}

/// A body of the same length that does nothing: no locals, a trap, nothing more.
fn empty(body: &mut [u8]) -> Option<()> {
    const TRAP: u8 = 0x00;
    const NOTHING: u8 = 0x01;
    const END: u8 = 0x0b;
    body.fill(NOTHING);
    *body.first_mut()? = 0;
    *body.get_mut(1)? = TRAP;
    *body.last_mut()? = END;
    Some(())
}

/// Writes the list of relocations anew, without what it said about emptied bodies.
fn forget(wasm: &mut Vec<u8>, place: Range<usize>, emptied: &[Range<usize>]) -> Option<()> {
    let data = wasm.get(place.clone())?.to_vec();
    let section = RelocSectionReader::new(BinaryReader::new(&data, 0)).ok()?;
    let mut kept = Vec::new();
    let mut count = 0_u32;
    let entries = section.entries().into_iter_with_offsets();
    let entries = entries.collect::<Result<Vec<_>, _>>().ok()?;
    let ends = entries
        .iter()
        .skip(1)
        .map(|(start, _)| usize::try_from(*start).ok());
    for ((start, entry), end) in entries.iter().zip(ends.chain([Some(data.len())])) {
        let at = usize::try_from(entry.offset).ok()?;
        if !emptied.iter().any(|body| body.contains(&at)) {
            count += 1;
            kept.extend_from_slice(data.get(usize::try_from(*start).ok()?..end?)?);
        }
    }
    let mut list = Vec::new();
    section.section_index().encode(&mut list);
    count.encode(&mut list);
    list.extend(kept);
    // The name ends where the data begin; under another name nobody reads the old list.
    *wasm.get_mut(place.start.checked_sub(1)?)? = b'_';
    wasm.push(0);
    CustomSection {
        name: NAME.into(),
        data: list.into(),
    }
    .encode(wasm);
    Some(())
}
