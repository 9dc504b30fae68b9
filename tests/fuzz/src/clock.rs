//! Time on the processor, which does not grow where other programs run beside.

use std::time::Instant;

/// Runs and asserts that it took no longer than so many seconds.
pub(crate) fn within(longest_s: f64, case: impl Fn() -> String, run: impl FnOnce()) {
    let (start, from) = (spent_s(), Instant::now());
    run();
    let took_s = match (start, spent_s()) {
        (Some(start), Some(end)) => end - start,
        _ => from.elapsed().as_secs_f64(),
    };
    assert!(took_s <= longest_s, "{took_s:.2} s: {}", case());
}

/// Seconds that this thread has spent on a processor, where the kernel tells them. It counts them again at
/// each turn of its clock, so they may lag by some milliseconds.
fn spent_s() -> Option<f64> {
    let text = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    let nanoseconds: f64 = text.split_whitespace().next()?.parse().ok()?;
    Some(nanoseconds / 1e9)
}
