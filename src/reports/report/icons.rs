//! Signs that need no words: the six moves of a stand, each both ways, and the
//! state that is no verdict. Those of the verdicts are in `html::symbol`.
//!
//! Everything is drawn in the colour of the text around it, so that a sign
//! needs no style sheet. The words stand beside it: readers of the text skip it.

use maud::{Markup, html};

use crate::quantity::Quantity;

/// One of the six moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Move {
    /// As seen from the vehicle: the low end goes up.
    Level,
    /// From the vehicle's right: the top goes away or towards it.
    Tilt,
    /// From above, the vehicle below: one end comes nearer.
    Square,
    /// From above: to the vehicle's left or right.
    Centre,
    /// From above: away from the vehicle or towards it.
    Distance,
    /// Over the floor.
    Height,
}

fn of(quantity: Quantity) -> Option<Move> {
    match quantity.move_order() {
        0 => Some(Move::Level),
        1 => Some(Move::Tilt),
        2 => Some(Move::Square),
        3 => Some(Move::Centre),
        4 => Some(Move::Distance),
        5 => Some(Move::Height),
        _ => None,
    }
}

/// The sign of the move that makes a quantity larger (`more`) or smaller;
/// `None` for a quantity that no move of the stand changes. The board is drawn
/// as it stands now, the arrow shows where it goes.
pub fn move_icon(quantity: Quantity, more: bool) -> Option<Markup> {
    let way = if more { 1.0 } else { -1.0 };
    let drawn = match of(quantity)? {
        // Roll lowers the right end: where it has to grow, the left end is low now.
        Move::Level => html! {
            (dashed("M8 60H92"))
            (board(&format!("M14 {} 86 {}", 60.0 + 13.0 * way, 60.0 - 13.0 * way)))
            (arrow([50.0 - 34.0 * way, 55.0], [50.0 - 34.0 * way, 20.0]))
        },
        // The vehicle is on the left.
        Move::Tilt => html! {
            (dashed("M50 12V88")) (dashed("M8 92H92"))
            (board(&format!("M{} 24 50 88", 50.0 - 22.0 * way)))
            (arrow([50.0 - 14.0 * way, 16.0], [50.0 + 30.0 * way, 16.0]))
        },
        // Yaw brings the left end nearer.
        Move::Square => html! {
            (nose())
            (dashed("M8 34H92"))
            (board(&format!("M14 {} 86 {}", 34.0 - 13.0 * way, 34.0 + 13.0 * way)))
            (arrow([50.0 - 36.0 * way, 28.0], [50.0 - 36.0 * way, 62.0]))
        },
        // Left is larger.
        Move::Centre => html! {
            (nose())
            (dashed("M50 6V66"))
            (board(&format!("M{} 22H{}", 36.0 + 14.0 * way, 64.0 + 14.0 * way)))
            (arrow([50.0 + 22.0 * way, 46.0], [50.0 - 26.0 * way, 46.0]))
        },
        Move::Distance => html! {
            (nose())
            @let y = if more { 40.0 } else { 12.0 };
            (board(&format!("M14 {y}H86")))
            @if more { (arrow([50.0, 34.0], [50.0, 2.0])) } @else { (arrow([50.0, 18.0], [50.0, 58.0])) }
        },
        Move::Height => html! {
            (dashed("M8 92H92"))
            @let y = if more { 64.0 } else { 36.0 };
            (board(&format!("M10 {y}H58"))) (board(&format!("M34 {y}V90")))
            (arrow([80.0, 50.0 + 28.0 * way], [80.0, 50.0 - 28.0 * way]))
        },
    };
    Some(html! {
        svg.move viewBox="0 0 100 100" aria-hidden="true" focusable="false" { (drawn) }
    })
}

/// For a job that could not be measured at all: no verdict's shape, no sign in it but a bar.
pub fn unmeasured_symbol() -> Markup {
    html! {
        svg.sym viewBox="0 0 100 100" aria-hidden="true" focusable="false" {
            path.plate d="M30 6H70L94 30V70L70 94H30L6 70V30Z" {}
            path.glyph d="M30 50H70" {}
        }
    }
}

fn board(d: &str) -> Markup {
    html! { path d=(d) fill="none" stroke="currentColor" stroke-width="11" {} }
}

fn dashed(d: &str) -> Markup {
    html! { path d=(d) fill="none" stroke="currentColor" stroke-width="3.5" stroke-dasharray="8 6" {} }
}

/// The front of a vehicle from above.
fn nose() -> Markup {
    html! { path d="M20 98V88Q22 70 50 70Q78 70 80 88V98" fill="none" stroke="currentColor" stroke-width="5" {} }
}

/// A line with a head, along one axis.
fn arrow(from: [f64; 2], to: [f64; 2]) -> Markup {
    let length = (to[0] - from[0]).hypot(to[1] - from[1]);
    let d = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    let foot = [to[0] - 18.0 * d[0], to[1] - 18.0 * d[1]];
    let corners = [to, [foot[0] - 12.0 * d[1], foot[1] + 12.0 * d[0]], [foot[0] + 12.0 * d[1], foot[1] - 12.0 * d[0]]];
    html! {
        path d=(format!("M{} {}L{} {}", from[0], from[1], foot[0], foot[1])) fill="none" stroke="currentColor" stroke-width="7" {}
        polygon points=(super::html::svg::points(&corners)) fill="currentColor" {}
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn six_moves_have_two_signs_each_and_no_other_quantity_has_any() {
        let mut drawn: Vec<String> = Vec::new();
        for &quantity in Quantity::ALL {
            for more in [false, true] {
                let icon = move_icon(quantity, more).map(maud::PreEscaped::into_string);
                assert_eq!(icon.is_some(), quantity.move_order() < 6, "{quantity:?}");
                drawn.extend(icon);
            }
        }
        drawn.sort();
        drawn.dedup();
        assert_eq!(drawn.len(), 12);
    }

    #[test]
    fn an_arrow_points_where_the_stand_goes() {
        // The head's tip is the polygon's first point: x to the vehicle's right, y down.
        let tip = |quantity, more| {
            let icon = move_icon(quantity, more).unwrap().into_string();
            let points = icon.split_once("points=\"").unwrap().1;
            let (x, rest) = points.split_once(',').unwrap();
            (x.parse::<f64>().unwrap(), rest.split(' ').next().unwrap().parse::<f64>().unwrap())
        };
        // ISO 8855: y left, z up; x away from a stand in front.
        assert!(tip(Quantity::LateralOffset, true).0 < 50.0, "left is larger");
        assert!(tip(Quantity::Height, true).1 < 50.0, "up is larger");
        assert!(tip(Quantity::Distance, true).1 < tip(Quantity::Distance, false).1, "away is up in the picture");
        assert!(tip(Quantity::Pitch, true).0 > 50.0, "the top goes away from a vehicle on the left");
        assert!(tip(Quantity::Yaw, true).0 < 50.0, "the left end comes nearer");
        assert!(tip(Quantity::Roll, true).0 < 50.0, "the left end, which is low, goes up");
    }
}
