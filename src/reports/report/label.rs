//! What a quantity is called.

use crate::quantity::Quantity;

/// A quantity as records name it, ready to be shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Label {
    /// The known quantity; `None` for a name from a later version.
    pub(super) quantity: Option<Quantity>,
    /// The trade's words: `squareness`, `distance from the nose`.
    pub(super) trade: String,
    /// The term of standards, where it differs: `yaw`.
    pub(super) term: Option<&'static str>,
    /// Which of several targets.
    pub(super) target: Option<String>,
    /// Which step.
    pub(super) step: Option<String>,
}

impl Label {
    /// Of a check or a reading.
    pub(super) fn new(quantity: &str, from: Option<&str>) -> Label {
        let known = Quantity::from_name(quantity);
        Label {
            quantity: known,
            trade: trade(quantity, known, from),
            term: known.and_then(term),
            target: None,
            step: None,
        }
    }

    /// Of a check, with its target and step.
    pub(super) fn of_check(check: &crate::record::CheckRecord) -> Label {
        Label {
            target: check.target.clone(),
            step: check.step.clone(),
            ..Label::new(&check.quantity, check.from.as_deref())
        }
    }

    /// Of a key of `measured`: `yaw`, `distance_from_nose`, `pitch@left-board`.
    pub(super) fn of_key(key: &str) -> Label {
        let (name, target) = match key.split_once('@') {
            Some((name, target)) => (name, Some(target.to_owned())),
            None => (key, None),
        };
        let label = match name.split_once("_from_") {
            Some((quantity, from)) if Quantity::from_name(name).is_none() => Label::new(quantity, Some(from)),
            _ => Label::new(name, None),
        };
        Label { target, ..label }
    }

    /// `squareness (yaw), left-board, step tilted`.
    pub(super) fn full(&self) -> String {
        let mut text = self.trade.clone();
        if let Some(term) = self.term {
            text = format!("{text} ({term})");
        }
        for extra in self.extras() {
            text = format!("{text}, {extra}");
        }
        text
    }

    /// Target and step, where stated.
    pub(super) fn extras(&self) -> Vec<String> {
        self.target.iter().cloned().chain(self.step.iter().map(|step| format!("step {step}"))).collect()
    }
}

fn trade(name: &str, known: Option<Quantity>, from: Option<&str>) -> String {
    let Some(quantity) = known else { return name.replace('_', " ") };
    let base = quantity.trade_name();
    match (quantity, from) {
        (Quantity::HeightFromNose, Some(from)) => format!("height above {}", datum(from)),
        (Quantity::LateralFromNose, Some(from)) => format!("centring on {}", datum(from)),
        (_, Some(from)) => format!("{base} from {}", datum(from)),
        (_, None) => base.to_owned(),
    }
}

fn term(quantity: Quantity) -> Option<&'static str> {
    use Quantity as Q;
    match quantity {
        Q::Yaw => Some("yaw"),
        Q::Pitch => Some("pitch"),
        Q::Roll => Some("roll"),
        Q::LateralOffset | Q::LateralFromNose => Some("lateral offset"),
        Q::Range => Some("range"),
        _ => None,
    }
}

/// The point that is measured from, in words.
pub(super) fn datum(from: &str) -> String {
    match from {
        "nose" => "the nose".into(),
        "front_axle" => "the front axle".into(),
        "rear_axle" => "the rear axle".into(),
        name => format!("the datum “{name}”"),
    }
}

/// A reference line in words.
pub(super) fn reference_line(name: &str) -> String {
    crate::setup::ReferenceLine::ALL
        .into_iter()
        .find(|line| line.name() == name)
        .map_or_else(|| name.replace('_', " "), |line| line.trade_name().to_owned())
}

/// With a capital at the front.
pub(super) fn sentence(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn trade_word_and_term_stand_together() {
        assert_eq!(Label::new("yaw", None).full(), "squareness (yaw)");
        assert_eq!(Label::new("distance", Some("nose")).full(), "distance from the nose");
        assert_eq!(Label::new("height_from_nose", Some("sensor")).full(), "height above the datum “sensor”");
    }

    #[test]
    fn keys_of_measured_are_taken_apart() {
        assert_eq!(Label::of_key("distance_from_rear_axle").full(), "distance from the rear axle");
        assert_eq!(Label::of_key("height_from_nose").full(), "height above the nose mark");
        assert_eq!(Label::of_key("pitch@left-board").full(), "tilt (pitch), left-board");
        assert_eq!(Label::of_key("of_a_later_version").full(), "of a later version");
    }

    #[test]
    fn sentences_begin_with_a_capital() {
        assert_eq!(sentence("centring"), "Centring");
        assert_eq!(sentence(""), "");
    }
}
