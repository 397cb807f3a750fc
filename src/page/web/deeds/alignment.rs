//! An alignment sheet's angles as people read them: a side, degrees and minutes, never a bare sign.

use crate::web::forms::Fields;
use crate::web::trouble::Trouble;
use crate::words::{Figure, phrase};

/// Most that a thrust angle may differ from what the rear toes give, deg: both are rounded to minutes.
const MOST_APART_DEG: f64 = 0.05;
/// Larger angles are no alignment's.
const MOST_DEG: f64 = 10.0;

/// Names of the fields of an angle, by what they begin with.
pub(in crate::web) const THRUST: &str = "thrust";
pub(in crate::web) const TOE_LEFT: &str = "rear-toe-left";
pub(in crate::web) const TOE_RIGHT: &str = "rear-toe-right";
/// The sides of an angle, the positive one first.
pub(in crate::web) const POINTS: [&str; 2] = ["left", "right"];
pub(in crate::web) const TOES: [&str; 2] = ["in", "out"];

/// The thrust angle that was typed, left positive, with its standard uncertainty, deg: itself, or half the
/// difference of the rear toes (right less left, in positive). `u` is that of each angle read.
///
/// # Errors
/// A sign, a side that is missing, one toe without the other, or toes that contradict the angle.
pub(in crate::web) fn thrust(fields: &Fields, u: f64) -> Result<Option<(f64, f64)>, Trouble> {
    let typed = angle(fields, THRUST, POINTS)?;
    let by_toes = match (angle(fields, TOE_LEFT, TOES)?, angle(fields, TOE_RIGHT, TOES)?) {
        (Some(left), Some(right)) => Some((right - left) / 2.0),
        (None, None) => None,
        _ => return Err(Trouble::typed(phrase!("page-trouble-both-toes"))),
    };
    match (typed, by_toes) {
        (Some(typed), Some(by_toes)) if (typed - by_toes).abs() > MOST_APART_DEG => Err(toes_contradict(by_toes)),
        (Some(typed), _) => Ok(Some((typed, u))),
        (None, by_toes) => Ok(by_toes.map(|angle| (angle, u / std::f64::consts::SQRT_2))),
    }
}

fn angle(fields: &Fields, name: &str, sides: [&str; 2]) -> Result<Option<f64>, Trouble> {
    let part = |part: &str| fields.number(&format!("{name}:{part}"));
    let (degrees, minutes) = match (part("deg")?, part("min")?) {
        (None, None) => return Ok(None),
        (degrees, minutes) => (degrees.unwrap_or(0.0), minutes.unwrap_or(0.0)),
    };
    if degrees.is_sign_negative() || minutes.is_sign_negative() {
        return Err(Trouble::typed(phrase!("page-trouble-angle-sign")));
    }
    if minutes >= 60.0 || degrees > MOST_DEG {
        return Err(Trouble::typed(phrase!("page-trouble-angle-large", degrees = Figure::plain(MOST_DEG))));
    }
    let size = degrees + minutes / 60.0;
    match fields.get(&format!("{name}:side")) {
        Some(side) if side == sides[0] => Ok(Some(size)),
        Some(side) if side == sides[1] => Ok(Some(-size)),
        _ if size < 1e-9 => Ok(Some(0.0)),
        _ => Err(Trouble::typed(phrase!("page-trouble-angle-side"))),
    }
}

/// Whole degrees, and minutes to a tenth, of an angle's size.
pub(in crate::web) fn degrees_and_minutes(angle: f64) -> (f64, f64) {
    let tenths = (angle.abs() * 600.0).round();
    ((tenths / 600.0).floor(), tenths % 600.0 / 10.0)
}

fn toes_contradict(by_toes: f64) -> Trouble {
    let (degrees, minutes) = degrees_and_minutes(by_toes);
    Trouble::typed(phrase!(
        "page-trouble-toes-contradict",
        side = if by_toes < 0.0 { "right" } else { "left" },
        degrees = Figure::plain(degrees),
        minutes = Figure::plain(minutes),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    fn fields(all: &[(&str, &str)]) -> Fields {
        Fields(all.iter().map(|(name, value)| ((*name).to_owned(), (*value).to_owned())).collect())
    }

    #[test]
    fn a_side_degrees_and_minutes() {
        let left = [("thrust:side", "left"), ("thrust:deg", "0"), ("thrust:min", "10")];
        let (angle, u) = thrust(&fields(&left), 0.04).unwrap().unwrap();
        assert!((angle - 1.0 / 6.0).abs() < 1e-12 && (u - 0.04).abs() < 1e-12);
        let right = [("thrust:side", "right"), ("thrust:min", "6")];
        assert!((thrust(&fields(&right), 0.04).unwrap().unwrap().0 + 0.1).abs() < 1e-12);
        assert!(thrust(&fields(&[("thrust:side", "left")]), 0.04).unwrap().is_none());
        for wrong in [
            vec![("thrust:side", "left"), ("thrust:deg", "-0")],
            vec![("thrust:side", "left"), ("thrust:min", "60")],
            vec![("thrust:deg", "1")],
            vec![("thrust:side", "left"), ("thrust:deg", "10.5")],
        ] {
            assert!(thrust(&fields(&wrong), 0.04).is_err(), "{wrong:?}");
        }
    }

    /// Toe-in of 6 minutes on the left and 18 on the right: the axle drives 6 minutes to the left.
    #[test]
    fn from_both_rear_toes() {
        let mut all = vec![("rear-toe-left:side", "in"), ("rear-toe-left:min", "6")];
        assert!(thrust(&fields(&all), 0.04).is_err());
        all.extend([("rear-toe-right:side", "in"), ("rear-toe-right:min", "18")]);
        let (angle, u) = thrust(&fields(&all), 0.04).unwrap().unwrap();
        assert!((angle - 0.1).abs() < 1e-12 && u < 0.03);
        all.extend([("thrust:side", "right"), ("thrust:min", "6")]);
        assert!(thrust(&fields(&all), 0.04).is_err());
    }

    #[test]
    fn shown_as_typed() {
        assert_eq!(degrees_and_minutes(-1.0 / 6.0), (0.0, 10.0));
        assert_eq!(degrees_and_minutes(1.999_99), (2.0, 0.0));
        let said = toes_contradict(-0.1).words.say(Language::English);
        assert!(said.contains("0° 6′ to the right"), "{said}");
    }
}
