//! The page builder and the program `axlewright`.

pub mod answer;
pub mod document;
pub mod elements;
pub mod figure;
pub mod folder;
pub mod frame;
pub mod html;
pub mod integrity;
pub mod interface;
pub mod lines;
pub mod output;
pub mod packages;
pub mod pages;
pub mod published;
pub mod scenario_file;
pub mod search;
pub mod serve;
pub mod site;
pub(crate) mod slim;
pub mod sources;
pub mod study;
pub mod talk;
pub mod theme;
pub mod toolchain;
pub mod words;
pub mod worker;
