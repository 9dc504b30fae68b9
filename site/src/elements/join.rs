//! Joins wasm files that were split from one program into one file.
//!
//! Such files share memory, function table and stack, which they import, and they have the same list of
//! types. They name no function of each other: calls go through the table. So all that changes when they
//! are joined is the numbers of their functions.

use std::convert::Infallible;
use wasm_encoder::reencode::{Error, Reencode};
use wasm_encoder::{
    CodeSection, CustomSection, DataSection, ElementSection, FunctionSection, ImportSection,
    Module, TypeSection,
};
use wasmparser::{Parser, Payload};

/// The one file, or why these cannot be joined.
pub(super) fn join(files: &[Vec<u8>]) -> Result<Vec<u8>, String> {
    let mut joined = Joined::default();
    for file in files {
        let added = joined.add(file);
        added.map_err(|error| format!("a part of the wasm cannot be joined: {error}"))?;
    }
    Ok(joined.finish())
}

/// Bytes of code and data in a file; 0 where it is not wasm.
pub(super) fn weight(file: &[u8]) -> usize {
    let payloads = Parser::new(0).parse_all(file).flatten();
    let ranges = payloads.filter_map(|payload| match payload {
        Payload::CodeSectionStart { range, .. } => Some(range),
        Payload::DataSection(segments) => Some(segments.range()),
        _ => None,
    });
    let sizes = ranges.map(|range| usize::try_from(range.end - range.start));
    sizes.flatten().sum()
}

#[derive(Default)]
struct Joined {
    types: Option<TypeSection>,
    imports: ImportSection,
    imported: Vec<String>,
    functions: FunctionSection,
    elements: ElementSection,
    code: CodeSection,
    data: DataSection,
    features: Option<Vec<u8>>,
}

/// Gives functions their new numbers.
struct Renumber {
    before: u32,
}

impl Reencode for Renumber {
    type Error = Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, Error> {
        Ok(self.before + function)
    }
}

impl Joined {
    fn add(&mut self, file: &[u8]) -> Result<(), Error> {
        let mut renumber = Renumber {
            before: self.functions.len(),
        };
        for payload in Parser::new(0).parse_all(file) {
            match payload? {
                Payload::TypeSection(types) if self.types.is_none() => {
                    let mut section = TypeSection::new();
                    renumber.parse_type_section(&mut section, types)?;
                    self.types = Some(section);
                }
                Payload::ImportSection(imports) => {
                    for import in imports.into_imports() {
                        let import = import?;
                        if !self.imported.iter().any(|name| name == import.name) {
                            self.imported.push(import.name.to_owned());
                            renumber.parse_import(&mut self.imports, import)?;
                        }
                    }
                }
                Payload::FunctionSection(functions) => {
                    renumber.parse_function_section(&mut self.functions, functions)?;
                }
                Payload::ElementSection(elements) => {
                    renumber.parse_element_section(&mut self.elements, elements)?;
                }
                Payload::CodeSectionEntry(body) => {
                    renumber.parse_function_body(&mut self.code, body)?;
                }
                Payload::DataSection(segments) => {
                    for segment in segments {
                        let segment = segment?;
                        // Empty ones stand for what is in other files.
                        if !segment.data.is_empty() {
                            renumber.parse_data(&mut self.data, segment)?;
                        }
                    }
                }
                Payload::CustomSection(custom) if custom.name() == "target_features" => {
                    self.features = Some(custom.data().to_vec());
                }
                Payload::TypeSection(_)
                | Payload::CustomSection(_)
                | Payload::Version { .. }
                | Payload::DataCountSection { .. }
                | Payload::CodeSectionStart { .. }
                | Payload::End(_) => {}
                Payload::ExportSection(exports) if exports.count() == 0 => {}
                _ => return Err(Error::UnexpectedNonCoreModuleSection),
            }
        }
        Ok(())
    }

    fn finish(self) -> Vec<u8> {
        let mut module = Module::new();
        module.section(&self.types.unwrap_or_default());
        module.section(&self.imports);
        module.section(&self.functions);
        module.section(&self.elements);
        module.section(&self.code);
        module.section(&self.data);
        // Without it wasm-opt would take the file for one of the first version of wasm.
        if let Some(features) = self.features {
            module.section(&CustomSection {
                name: "target_features".into(),
                data: features.into(),
            });
        }
        module.finish()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wasm_encoder::{ConstExpr, Elements, EntityType, Function, RefType, TableType};

    /// A file with one function, which calls itself, at a place of the table, and a byte of data.
    fn file(place: i32, byte: u8) -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], []);
        let mut imports = ImportSection::new();
        let table = TableType {
            element_type: RefType::FUNCREF,
            table64: false,
            minimum: 4,
            maximum: None,
            shared: false,
        };
        imports.import("shared", "table", EntityType::Table(table));
        let mut functions = FunctionSection::new();
        functions.function(0);
        let mut elements = ElementSection::new();
        let at = ConstExpr::i32_const(place);
        elements.active(None, &at, Elements::Functions([0].as_slice().into()));
        let mut code = CodeSection::new();
        let mut body = Function::new([]);
        body.instructions().call(0).end();
        code.function(&body);
        let mut data = DataSection::new();
        data.active(0, &ConstExpr::i32_const(0), []);
        data.active(0, &ConstExpr::i32_const(place), [byte]);
        let mut module = Module::new();
        module.section(&types).section(&imports).section(&functions);
        module.section(&elements).section(&code).section(&data);
        module.finish()
    }

    #[test]
    fn functions_are_numbered_on_and_shared_things_are_imported_once() {
        let joined = join(&[file(1, 7), file(2, 8)]).expect("one file");
        let (mut imports, mut called, mut bytes, mut listed) = (0, vec![], vec![], vec![]);
        for payload in Parser::new(0).parse_all(&joined) {
            match payload.expect("wasm") {
                Payload::ImportSection(section) => imports += section.into_imports().count(),
                Payload::CodeSectionEntry(body) => {
                    let mut operators = body.get_operators_reader().expect("code");
                    while let Ok(operator) = operators.read() {
                        if let wasmparser::Operator::Call { function_index } = operator {
                            called.push(function_index);
                        }
                    }
                }
                Payload::ElementSection(section) => {
                    for element in section {
                        if let wasmparser::ElementItems::Functions(functions) =
                            element.expect("an element").items
                        {
                            listed.extend(functions.into_iter().flatten());
                        }
                    }
                }
                Payload::DataSection(section) => {
                    for segment in section {
                        bytes.push(segment.expect("data").data.to_vec());
                    }
                }
                _ => {}
            }
        }
        assert_eq!(imports, 1, "the table is shared");
        assert_eq!(called, [0, 1], "each still calls itself");
        assert_eq!(listed, [0, 1], "and is in the table");
        assert_eq!(bytes, [[7], [8]], "empty segments are gone");
    }

    #[test]
    fn what_is_not_wasm_is_refused() {
        assert!(join(&[b"<!doctype html>".to_vec()]).is_err());
    }
}
