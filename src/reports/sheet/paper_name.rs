//! A paper by its name as typed.

use std::str::FromStr;

use super::error::Error;
use super::paper::Paper;

impl FromStr for Paper {
    type Err = Error;

    fn from_str(name: &str) -> Result<Self, Error> {
        Paper::ALL
            .into_iter()
            .find(|paper| paper.name().eq_ignore_ascii_case(name))
            .ok_or_else(|| Error::UnknownPaper { name: name.to_owned() })
    }
}
