//! What happens at a job.

/// Something that happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::web) enum Happened {
    /// The list of photos, or what is known of one, changed.
    Photos,
    /// There is a new verdict, or none can be had.
    Verdict,
    /// The job was closed.
    Closed,
}

impl Happened {
    pub(in crate::web) fn name(self) -> &'static str {
        match self {
            Happened::Photos => "photos",
            Happened::Verdict => "verdict",
            Happened::Closed => "closed",
        }
    }
}
