//! The middle of values.

/// The middle value; of an even number the upper one of the two, so that it is
/// always one of them. None where there is no value.
pub fn median(values: impl IntoIterator<Item = f64>) -> Option<f64> {
    let mut sorted: Vec<f64> = values.into_iter().collect();
    sorted.sort_by(f64::total_cmp);
    sorted.get(sorted.len() / 2).copied()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_one_of_the_values() {
        assert_eq!(median([]), None);
        assert_eq!(median([3.0]), Some(3.0));
        assert_eq!(median([5.0, 1.0, 3.0]), Some(3.0));
        assert_eq!(median([4.0, 1.0, 2.0, 3.0]), Some(3.0));
    }
}
