//! Every wrong input ends with one error that names file, line, key, what is
//! wrong and what to do. Each case changes one place of a right file.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop where its own helper fails")]

mod cameras;
mod jobs;
mod kits;
mod setups;

use baywitness::input::Error;
use baywitness::words::Language;

/// A change of a right file and what the error must say: `old` becomes `new`,
/// and the error stands in the line of the last `|` of `new` (which is removed).
pub(crate) struct Case {
    old: &'static str,
    new: &'static str,
    key: &'static str,
    says: &'static str,
    remedy: &'static str,
}

pub(crate) const fn case(
    old: &'static str,
    new: &'static str,
    key: &'static str,
    says: &'static str,
    remedy: &'static str,
) -> Case {
    Case { old, new, key, says, remedy }
}

pub(crate) fn check(good: &str, file: &str, read: impl Fn(&str, &str) -> Result<(), Error>, cases: &[Case]) {
    read(good, file).unwrap();
    for Case { old, new, key, says, remedy } in cases {
        let at = good.find(old).unwrap_or_else(|| panic!("{old:?} is not in {file}"));
        let mark = at + new.rfind('|').unwrap_or(0);
        let text = good.replacen(old, &new.replace('|', ""), 1);
        // A key that is missing has no line: the line of its table's head is told.
        let mark = if ["is missing", "has no limit", "neither u nor an instrument"].contains(says) {
            text[..mark].rfind("\n[").map_or(0, |at| at + 1)
        } else {
            mark
        };
        let line = text[..mark].matches('\n').count() + 1;
        let error = match read(&text, file) {
            Ok(()) => panic!("{file} with {new:?} was accepted"),
            Err(error) => error,
        };
        let told = error.to_string();
        assert_eq!(error.file(), file, "{told}");
        assert_eq!(error.place().map(|p| p.line), Some(line), "{told}\nin\n{text}");
        assert_eq!(error.key().unwrap_or(""), *key, "{told}");
        assert!(error.problem().say(Language::English).contains(says), "{told}\nshould say {says:?}");
        assert!(error.remedy().say(Language::English).contains(remedy), "{told}\nshould advise {remedy:?}");
        assert!(told.starts_with(&format!("{file}, line {line}, column ")), "{told}");
        assert!(!told.contains('\n') && told.len() < 600, "{told}");
    }
}
