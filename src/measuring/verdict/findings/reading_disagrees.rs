//! A reading and the photos exclude each other.

use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::quantity::rounded;
use crate::verdict::Level;

pub(super) const RULE: Rule =
    Rule { name: "reading-disagrees", codes: &["reading-disagrees"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("reading-disagrees", Level::Warn)];

fn find(case: &Case) -> Vec<Finding> {
    case.readings
        .iter()
        .filter(|r| r.normalized_error.is_some_and(|e| e.abs() > 1.0))
        .map(|r| {
            let (unit, what) = (r.quantity.unit().symbol(), r.quantity.trade_name());
            let photo = r.photo.map_or(String::new(), |p| rounded(p.value, 2));
            let message = format!(
                "{what}: the reading of {} {unit} and the photos' {photo} {unit} exclude each other (E_n {}). Read again; check which point it was measured from.",
                rounded(r.value, 2),
                rounded(r.normalized_error.unwrap_or(0.0).abs(), 1)
            );
            let level = if r.used { Level::Stop } else { Level::Warn };
            Finding::new("reading-disagrees", level, message).leaving(vec![Open::WithoutReadings])
        })
        .collect()
}
