//! The threads that a command works on.

use super::output::language;
use crate::words::say;

/// As many threads as asked for; not asked: one for each core.
pub(super) fn pool(threads: Option<usize>) -> Result<rayon::ThreadPool, String> {
    let threads = threads.unwrap_or(0);
    rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()
        .map_err(|e| say!(language(), "cli-no-threads", count = threads, why = e.to_string()))
}
