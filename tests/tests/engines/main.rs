//! The journeys in each of three engines: Chromium, Firefox and WebKit, by WebDriver alone.
//!
//! One engine alone: `cargo test -p axlewright-tests --test engines firefox`.
#![allow(
    clippy::expect_used,
    clippy::panic,
    reason = "in a test, stopping is the right answer"
)]

mod camera;
mod inject;
mod reader;
mod same;
mod taken;

/// A journey as one test for each engine, which bears the engine's name.
macro_rules! in_each_engine {
    ($($journey:ident)*) => { $(
        mod $journey {
            use axlewright_tests::engine::Browser;

            #[tokio::test]
            async fn chromium() {
                super::$journey(Browser::Chromium).await;
            }

            #[tokio::test]
            async fn firefox() {
                super::$journey(Browser::Firefox).await;
            }

            #[tokio::test]
            async fn webkit() {
                super::$journey(Browser::WebKit).await;
            }
        }
    )* };
}
pub(crate) use in_each_engine;
