//! Ordinate dimensions: each place with its distance from the datum, read off one edge.

use super::canvas::{Anchor, Canvas, DARK, GREY, Style};
use super::words;

const LINE_MM: f64 = 0.12;
const SPACING_MM: f64 = 3.1;
const TEXT: f64 = 7.0;

/// A place to dimension: where it is drawn along the edge, how far away from the edge its
/// extension line starts, and what it measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Ordinate {
    pub(super) at_mm: f64,
    pub(super) from_mm: f64,
    pub(super) value_mm: f64,
}

/// Keeps one ordinate for each value, in order of place; of equal ones the line that starts nearest `edge_mm`.
pub(super) fn distinct(mut ordinates: Vec<Ordinate>, edge_mm: f64) -> Vec<Ordinate> {
    ordinates.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
    let mut kept: Vec<Ordinate> = Vec::new();
    for ordinate in ordinates {
        match kept.last_mut() {
            Some(last) if (last.value_mm - ordinate.value_mm).abs() < 0.005 => {
                if (ordinate.from_mm - edge_mm).abs() > (last.from_mm - edge_mm).abs() {
                    last.from_mm = ordinate.from_mm;
                }
            }
            _ => kept.push(ordinate),
        }
    }
    kept
}

/// Dimensions below a view; the extension lines run down to `edge_mm` (page y).
pub(super) fn below(canvas: &mut Canvas<'_>, ordinates: &[Ordinate], edge_mm: f64) {
    for (ordinate, place) in ordinates.iter().zip(spread(ordinates)) {
        let knee = edge_mm + 2.0;
        canvas.line([ordinate.at_mm, ordinate.from_mm], [ordinate.at_mm, edge_mm], LINE_MM, GREY);
        canvas.line([ordinate.at_mm, edge_mm], [place, knee], LINE_MM, GREY);
        canvas.line([place, knee], [place, knee + 1.5], LINE_MM, GREY);
        let text = words::mm(ordinate.value_mm).say(canvas.language);
        canvas.text_upwards([place + 0.9, knee + 2.2], Anchor::Right, Style::regular(TEXT).grey(DARK), &text);
    }
}

/// Dimensions left of a view; the extension lines run left to `edge_mm` (page x).
pub(super) fn left(canvas: &mut Canvas<'_>, ordinates: &[Ordinate], edge_mm: f64) {
    for (ordinate, place) in ordinates.iter().zip(spread(ordinates)) {
        let knee = edge_mm - 2.0;
        canvas.line([ordinate.from_mm, ordinate.at_mm], [edge_mm, ordinate.at_mm], LINE_MM, GREY);
        canvas.line([edge_mm, ordinate.at_mm], [knee, place], LINE_MM, GREY);
        canvas.line([knee, place], [knee - 1.5, place], LINE_MM, GREY);
        let text = words::mm(ordinate.value_mm).say(canvas.language);
        canvas.text([knee - 2.2, place + 0.9], Anchor::Right, Style::regular(TEXT).grey(DARK), &text);
    }
}

/// Places at least `SPACING_MM` apart, as near to the ordinates as a group's middle allows.
fn spread(ordinates: &[Ordinate]) -> Vec<f64> {
    // Groups of crowded ordinates: wanted middle, count.
    let mut groups: Vec<(f64, usize)> = Vec::new();
    for ordinate in ordinates {
        groups.push((ordinate.at_mm, 1));
        while let [.., before, last] = groups.as_slice() {
            let reach = |group: &(f64, usize)| 0.5 * SPACING_MM * group.1 as f64;
            if before.0 + reach(before) <= last.0 - reach(last) + 1e-9 {
                break;
            }
            let count = before.1 + last.1;
            let middle = (before.0 * before.1 as f64 + last.0 * last.1 as f64) / count as f64;
            groups.truncate(groups.len() - 2);
            groups.push((middle, count));
        }
    }
    let places = |(middle, count): (f64, usize)| {
        (0..count).map(move |i| middle + SPACING_MM * (i as f64 - 0.5 * (count as f64 - 1.0)))
    };
    groups.into_iter().flat_map(places).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ordinate(at_mm: f64) -> Ordinate {
        Ordinate { at_mm, from_mm: 0.0, value_mm: at_mm }
    }

    #[test]
    fn labels_never_crowd_and_keep_their_order() {
        let wanted = [0.0, 1.0, 1.5, 20.0, 21.0, 60.0].map(ordinate);
        let places = spread(&wanted);
        assert_eq!(places.len(), wanted.len());
        assert!(places.windows(2).all(|pair| pair[1] - pair[0] > SPACING_MM - 1e-9), "{places:?}");
        assert!((places[5] - 60.0).abs() < 1e-12);
    }

    #[test]
    fn equal_values_are_dimensioned_once_from_the_farthest_place() {
        let near = Ordinate { from_mm: 5.0, ..ordinate(10.0) };
        let far = Ordinate { from_mm: 1.0, ..ordinate(10.0) };
        assert_eq!(distinct(vec![near, far, ordinate(12.0)], 9.0), [far, ordinate(12.0)]);
    }
}
