//! The physics of Axlewright: why an electric car has one, two, three or four motors, and where they go.
//!
//! Data flows one way: a [`Scenario`] is read, a topic solves it, and the answer carries its
//! [`working`]. The crate does no input or output, has no clock and no randomness. Everything is SI
//! inside; axes and signs follow ISO 8855 (x forward, y left, z up, yaw positive anticlockwise seen
//! from above).
//!
//! ```
//! use axlewright_core::{Scenario, topic};
//!
//! let mut scenario = Scenario::default();
//! scenario.set("vehicle.base", "esker")?;
//! scenario.set("load_transfer.acceleration", "0.6 g")?;
//! let report = topic::find("load-transfer")?.report(&scenario)?;
//! let ratio = report.number("rear_to_front_ratio");
//! assert!(ratio.is_some_and(|r| (r - 1.66).abs() < 0.01), "got {ratio:?}");
//! # Ok::<(), axlewright_core::Problem>(())
//! ```

pub mod choice;
pub mod cornering;
mod decimal;
mod error;
pub mod format;
pub mod idle_drag;
pub mod input;
pub mod integrate;
pub mod launch;
pub mod layout;
pub mod link;
pub mod load_transfer;
pub mod math;
pub mod motor;
pub mod motor_split;
pub mod packaging;
pub mod planar;
pub mod question;
pub mod quick;
pub mod road_load;
mod root;
mod scenario;
pub mod schema;
pub mod scrub;
pub mod surface;
pub mod talk;
pub mod topic;
pub mod traction;
mod tree;
pub mod turn_in_place;
pub mod typed;
pub mod tyre;
pub mod units;
pub mod vehicle;
pub mod words;
pub mod working;

pub use error::{Allowed, Problem};
pub use scenario::Scenario;
pub use tree::Tree;

/// Acceleration due to gravity, g \[m/s²\]: 9.81, the value that the textbooks round to.
///
/// The unit "g" of an acceleration is this same value, so that a limit of μ·g reads as μ on screen.
pub const GRAVITY_M_S2: f64 = 9.81;
