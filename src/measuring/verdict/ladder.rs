//! The words of judgement, ordered.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::words::{Phrase, phrase};

/// The ladder of verdicts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Proven to be within tolerance.
    Within,
    /// Proven to be outside tolerance.
    Outside,
    /// Not proven either way; records of before 0.2 say `undecided`.
    #[serde(alias = "undecided")]
    NotProven,
    /// Could not be measured: the photos are taken again; records of before 0.2 say `unusable`.
    #[serde(alias = "unusable")]
    Retake,
}

impl Verdict {
    /// The name in records.
    pub fn name(self) -> &'static str {
        match self {
            Verdict::Within => "within",
            Verdict::Outside => "outside",
            Verdict::NotProven => "not_proven",
            Verdict::Retake => "retake",
        }
    }

    /// The verdict of a name in records, also of before 0.2.
    pub fn of_name(name: &str) -> Option<Self> {
        match name {
            "within" => Some(Verdict::Within),
            "outside" => Some(Verdict::Outside),
            "not_proven" | "undecided" => Some(Verdict::NotProven),
            "retake" | "unusable" => Some(Verdict::Retake),
            _ => None,
        }
    }

    /// The exit code of a command that ends with it.
    pub fn exit_code(self) -> u8 {
        match self {
            Verdict::Within => 0,
            Verdict::Outside => 1,
            Verdict::NotProven => 3,
            Verdict::Retake => 4,
        }
    }

    /// The words for people, in a reader's language.
    pub fn phrase(self) -> Phrase {
        phrase!("verdict-word", verdict = self.name())
    }

    /// The words for people, in English.
    pub fn words(self) -> &'static str {
        match self {
            Verdict::Within => "within tolerance",
            Verdict::Outside => "outside tolerance",
            Verdict::NotProven => "not proven",
            Verdict::Retake => "retake",
        }
    }
}

/// How much a finding weighs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum Level {
    /// The measurement can't be trusted: the job is `retake`.
    Void,
    /// No `within`.
    Stop,
    /// Worth a look.
    Warn,
    /// Worth knowing.
    Note,
}

impl Verdict {
    /// A job's verdict from its checks': outside where one is, else retake
    /// where one is, else not proven where one is, else within. A job without
    /// checks proves nothing.
    pub fn of_checks(checks: impl IntoIterator<Item = Verdict>) -> Verdict {
        let checks: Vec<Verdict> = checks.into_iter().collect();
        let any = |v| checks.contains(&v);
        match () {
            () if any(Verdict::Outside) => Verdict::Outside,
            () if any(Verdict::Retake) => Verdict::Retake,
            () if any(Verdict::NotProven) || checks.is_empty() => Verdict::NotProven,
            () => Verdict::Within,
        }
    }

    /// What findings leave of a verdict: a void measurement is `retake`, a
    /// stop forbids `within`.
    pub fn limited_by(self, levels: impl IntoIterator<Item = Level>) -> Verdict {
        match levels.into_iter().min() {
            Some(Level::Void) => Verdict::Retake,
            Some(Level::Stop) if self == Verdict::Within => Verdict::NotProven,
            _ => self,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_worst_check_names_the_job() {
        use Verdict::{NotProven, Outside, Retake, Within};
        assert_eq!(Verdict::of_checks([Within, Within]), Within);
        assert_eq!(Verdict::of_checks([Within, NotProven]), NotProven);
        assert_eq!(Verdict::of_checks([NotProven, Retake]), Retake);
        assert_eq!(Verdict::of_checks([Retake, Outside]), Outside);
        assert_eq!(Verdict::of_checks([]), NotProven);
    }

    #[test]
    fn findings_take_within_away_but_never_give_it() {
        assert_eq!(Verdict::Within.limited_by([Level::Stop]), Verdict::NotProven);
        assert_eq!(Verdict::Outside.limited_by([Level::Stop]), Verdict::Outside);
        assert_eq!(Verdict::Outside.limited_by([Level::Warn, Level::Void]), Verdict::Retake);
        assert_eq!(Verdict::Within.limited_by([Level::Warn, Level::Note]), Verdict::Within);
    }
}
