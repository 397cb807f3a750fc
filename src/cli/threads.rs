//! The threads that a command works on.

/// As many threads as asked for; not asked: one for each core.
pub(super) fn pool(threads: Option<usize>) -> Result<rayon::ThreadPool, String> {
    let threads = threads.unwrap_or(0);
    rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()
        .map_err(|e| format!("cannot start {threads} threads: {e}"))
}
