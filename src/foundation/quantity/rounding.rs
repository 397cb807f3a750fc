//! Rounding for people: as many digits as the uncertainty supports (GUM 7.2.6).

/// `value` with `digits` after the point; a negative zero loses its sign.
pub fn rounded(value: f64, digits: usize) -> String {
    let text = format!("{value:.digits$}");
    if text.trim_start_matches('-').chars().all(|c| c == '0' || c == '.') {
        return text.trim_start_matches('-').to_owned();
    }
    text
}

/// Value and expanded uncertainty with the uncertainty at two significant
/// digits and the value to the same place: `(1299.3, 1.2)`. No more than
/// three digits stand after the point; 0.001 is finer than any bay.
pub fn with_uncertainty(value: f64, uncertainty: f64) -> (String, String) {
    let digits = if uncertainty > 0.0 && uncertainty.is_finite() {
        let leading = uncertainty.log10().floor();
        (1.0 - leading).clamp(0.0, 3.0) as usize
    } else {
        1
    };
    (rounded(value, digits), rounded(uncertainty, digits))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_follow_the_uncertainty() {
        assert_eq!(with_uncertainty(1299.318, 1.234), ("1299.3".into(), "1.2".into()));
        assert_eq!(with_uncertainty(0.1149, 0.0421), ("0.115".into(), "0.042".into()));
        assert_eq!(with_uncertainty(-0.0001, 0.04), ("0.000".into(), "0.040".into()));
        assert_eq!(with_uncertainty(5123.4, 37.0), ("5123".into(), "37".into()));
    }
}
