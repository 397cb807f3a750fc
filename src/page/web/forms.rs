//! What forms send, as values.

use super::limits;
use super::trouble::Trouble;
use crate::input::{is_unseen, turns_writing};
use crate::words::{Figure, phrase};

/// The fields of a form, in its order.
pub(super) struct Fields(pub(super) Vec<(String, String)>);

impl Fields {
    /// What was typed, without blanks around it; nothing is `None`.
    pub(super) fn get(&self, name: &str) -> Option<&str> {
        let value = self.0.iter().find(|(n, _)| n == name).map(|(_, v)| v.trim())?;
        (!value.is_empty()).then_some(value)
    }

    /// One line.
    pub(super) fn line(&self, name: &str) -> Result<Option<String>, Trouble> {
        let Some(value) = self.get(name) else { return Ok(None) };
        let odd = |c: char| c.is_control() || turns_writing(c) || is_unseen(c);
        if value.chars().count() > limits::LINE || value.chars().any(odd) {
            return Err(Trouble::typed(phrase!("page-trouble-line", most = limits::LINE)));
        }
        Ok(Some(value.to_owned()))
    }

    /// A number; a comma is a decimal point, as German keyboards have it.
    pub(super) fn number(&self, name: &str) -> Result<Option<f64>, Trouble> {
        let Some(value) = self.get(name) else { return Ok(None) };
        let shown: String = value.chars().take(40).collect();
        let number = value.replace(',', ".").parse::<f64>().ok().filter(|n| n.is_finite());
        number.map(Some).ok_or_else(|| {
            Trouble::typed(phrase!("page-trouble-number", typed = shown, example = Figure::fixed(1502.5, 1)))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_are_trimmed_and_limited() {
        let fields = |value: &str| Fields(vec![("a".into(), value.into())]);
        assert_eq!(fields("  x ").get("a"), Some("x"));
        assert_eq!(fields("  ").get("a"), None);
        assert_eq!(fields("1502,5").number("a").unwrap(), Some(1502.5));
        for wrong in ["1e999", "inf", "NaN", "12 mm", "1.2.3"] {
            assert!(fields(wrong).number("a").is_err(), "{wrong}");
        }
        assert!(fields(&"x".repeat(121)).line("a").is_err());
        assert!(fields("a\u{7}b").line("a").is_err());
        assert!(fields("4\u{202e}NIHTIW").line("a").is_err());
    }
}
