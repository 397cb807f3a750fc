//! Where the photos were taken, in the plan and the side view.

use maud::{Markup, html};

use super::svg::{head, line, n, text};

/// Places closer than this share one label, units.
const TOO_CLOSE: f64 = 40.0;
const LABEL_HEIGHT: f64 = 32.0;

/// One photo on the page: its number, where it stands and which way it looks.
pub(super) type Place = (usize, [f64; 2], Option<[f64; 2]>);

/// A numbered label for each photo with a dotted line along which it looks;
/// photos that stand too close share a label.
pub(super) fn photo_places(places: &[Place]) -> Markup {
    html! {
        @for &(_, at, direction) in places { (sight(at, direction)) }
        @for group in grouped(places) { (label(&group)) }
    }
}

fn sight(at: [f64; 2], direction: Option<[f64; 2]>) -> Markup {
    let Some(d) = direction else { return html! {} };
    let length = d[0].hypot(d[1]);
    if length < 0.05 {
        return html! {};
    }
    let unit = [d[0] / length, d[1] / length];
    let tip = [at[0] + unit[0] * 74.0, at[1] + unit[1] * 74.0];
    html! { (line("sight", at, tip)) (head("head", tip, unit, 9.0)) }
}

fn grouped(places: &[Place]) -> Vec<Vec<Place>> {
    let mut groups: Vec<Vec<Place>> = Vec::new();
    for &place in places {
        let near = |other: &Place| (other.1[0] - place.1[0]).hypot(other.1[1] - place.1[1]) < TOO_CLOSE;
        match groups.iter_mut().find(|group| group.iter().any(near)) {
            Some(group) => group.push(place),
            None => groups.push(vec![place]),
        }
    }
    groups
}

fn label(group: &[Place]) -> Markup {
    let words = group.iter().map(|p| p.0.to_string()).collect::<Vec<_>>().join(" ");
    let mean = |axis: usize| group.iter().map(|p| p.1[axis]).sum::<f64>() / group.len() as f64;
    let (x, y) = (mean(0), mean(1));
    let width = (words.len() as f64 * 9.0 + 16.0).max(LABEL_HEIGHT);
    html! {
        g.place {
            rect.cam x=(n(x - width / 2.0)) y=(n(y - LABEL_HEIGHT / 2.0)) width=(n(width)) height=(n(LABEL_HEIGHT)) rx="16" {}
            (text("", "middle", [x, y + 5.5], &words))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn close_photos_share_a_label() {
        let places = [(1, [10.0, 10.0], None), (2, [400.0, 10.0], None), (3, [30.0, 12.0], None)];
        let numbers: Vec<Vec<usize>> = grouped(&places).iter().map(|g| g.iter().map(|p| p.0).collect()).collect();
        assert_eq!(numbers, [vec![1, 3], vec![2]]);
    }
}
