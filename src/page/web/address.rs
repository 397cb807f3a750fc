//! Addresses of the page: names as parts of a path.

use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};

/// What may stand in a part of a path as it is (RFC 3986, unreserved).
const KEPT: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_').remove(b'~');

/// A name as a part of a path or a value of a query.
pub(super) fn encoded(name: &str) -> String {
    utf8_percent_encode(name, KEPT).to_string()
}

/// The address of a job's page; of none, of the job.
pub(super) fn job_path(name: &str, page: &str) -> String {
    let slash = if page.is_empty() { "" } else { "/" };
    format!("/jobs/{}{slash}{page}", encoded(name))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_cannot_leave_their_place_in_a_path() {
        assert_eq!(job_path("a/../b c", "photos"), "/jobs/a%2F..%2Fb%20c/photos");
        assert_eq!(encoded("J-1.x_y~"), "J-1.x_y~");
        assert_eq!(encoded("\"&<ü"), "%22%26%3C%C3%BC");
    }
}
