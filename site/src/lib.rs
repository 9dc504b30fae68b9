//! The page builder and the program `axlewright`.

pub mod answer;
pub mod elements;
pub mod figure;
pub mod frame;
pub mod integrity;
pub mod interface;
pub mod output;
pub mod pages;
pub mod published;
pub mod scenario_file;
pub mod serve;
pub mod site;
pub mod toolchain;
