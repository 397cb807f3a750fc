//! From an outline to a four-sided candidate.

use nalgebra::Vector2;

/// Corners in clockwise order as seen (v down).
pub(super) type Quad = [Vector2<f64>; 4];

/// Smallest side of a candidate's bounding box, px of its level.
const SMALLEST: i32 = 5;

/// Twice the least area within an outline, px of its level: a broken border encloses less than its hull.
const LEAST_OUTLINED: i64 = 30;
/// Smallest area of an outline's hull, px of its level: less shows no code.
const SMALLEST_AREA: f64 = 70.0;

/// The quadrilateral around an outline, if the outline's hull is nearly one.
pub(super) fn quad_around(outline: &[(i32, i32)]) -> Option<Quad> {
    if outline.len() < 20 {
        return None;
    }
    let first = outline[0];
    let (mut low, mut high) = (first, first);
    // Twice the area; positive where the outline runs clockwise (v down), negative for a hole's border.
    let (mut outlined, mut before) = (0i64, outline[outline.len() - 1]);
    for p in outline {
        low = (low.0.min(p.0), low.1.min(p.1));
        high = (high.0.max(p.0), high.1.max(p.1));
        outlined += i64::from(before.0 - first.0) * i64::from(p.1 - first.1);
        outlined -= i64::from(p.0 - first.0) * i64::from(before.1 - first.1);
        before = *p;
    }
    let (w, h) = (high.0 - low.0 + 1, high.1 - low.1 + 1);
    if w.min(h) < SMALLEST || w.max(h) < 10 || outlined < LEAST_OUTLINED {
        return None;
    }
    let hull = hull(outline, low.1, h as usize);
    let inner = area(&hull);
    if inner < SMALLEST_AREA {
        return None;
    }
    let most = inner * 1.25 + 6.0;
    let quad = four_sides(hull, most - inner)?;
    (area(&quad) <= most && is_plausible(&quad)).then_some(quad)
}

/// Convex hull from the extent of each row, clockwise.
fn hull(outline: &[(i32, i32)], top: i32, rows: usize) -> Vec<Vector2<f64>> {
    let mut extent = vec![(i32::MAX, i32::MIN); rows];
    for (u, v) in outline {
        let e = &mut extent[(v - top) as usize];
        *e = (e.0.min(*u), e.1.max(*u));
    }
    let rows = || (top..top + rows as i32).zip(&extent).filter(|(_, e)| e.0 <= e.1);
    let mut all = Vec::with_capacity(32);
    chain(&mut all, rows().map(|(v, e)| (e.1, v)));
    let right = all.len();
    chain(&mut all, rows().rev().map(|(v, e)| (e.0, v)));
    // Where the lowest and the uppermost row have one pixel both sides end in it.
    if all.len() > right && all.get(right) == right.checked_sub(1).and_then(|last| all.get(last)) {
        all.remove(right);
    }
    if all.len() > 1 && all.first() == all.last() {
        all.pop();
    }
    all.into_iter().map(|(u, v)| Vector2::new(u.into(), v.into())).collect()
}

/// Adds the points where the path turns clockwise (v down).
fn chain(all: &mut Vec<(i32, i32)>, points: impl Iterator<Item = (i32, i32)>) {
    let first = all.len();
    for p in points {
        while let [.., a, b] = all[first..] {
            if (b.0 - a.0) * (p.1 - b.1) > (b.1 - a.1) * (p.0 - b.0) {
                break;
            }
            all.pop();
        }
        all.push(p);
    }
}

pub(super) fn cross(a: Vector2<f64>, b: Vector2<f64>) -> f64 {
    a.x * b.y - a.y * b.x
}

pub(super) fn area(polygon: &[Vector2<f64>]) -> f64 {
    let next = polygon.iter().cycle().skip(1);
    polygon.iter().zip(next).map(|(a, b)| cross(*a, *b)).sum::<f64>() / 2.0
}

/// Drops the sides of a convex polygon whose neighbours meet with the least area added, until four are left; `None` where
/// that takes more area than there is to spare.
fn four_sides(mut polygon: Vec<Vector2<f64>>, mut spare: f64) -> Option<Quad> {
    let mut added: Vec<_> = (0..polygon.len()).map(|i| without_side(&polygon, i)).collect();
    while polygon.len() > 4 {
        let known = added.iter().enumerate().filter_map(|(i, a)| Some((i, (*a)?)));
        let (mut i, (more, meet)) = known.min_by(|a, b| a.1.0.total_cmp(&b.1.0))?;
        spare -= more;
        // Sums may be rounded: the caller compares the areas themselves.
        if spare < -1e-6 {
            return None;
        }
        polygon[i] = meet;
        let gone = (i + 1) % polygon.len();
        polygon.remove(gone);
        added.remove(gone);
        if gone < i {
            i -= 1;
        }
        // Only the sides around the new corner see something else.
        let n = polygon.len();
        for k in [i + n - 2, i + n - 1, i, i + 1].map(|k| k % n) {
            added[k] = without_side(&polygon, k);
        }
    }
    polygon.try_into().ok()
}

/// The area that is added where a polygon's neighbours of a side run on until they meet, and where they do;
/// `None` where that adds nothing.
fn without_side(polygon: &[Vector2<f64>], i: usize) -> Option<(f64, Vector2<f64>)> {
    let n = polygon.len();
    let next = |i: usize| if i + 1 < n { i + 1 } else { 0 };
    let before = if i > 0 { i - 1 } else { n - 1 };
    let [a, b, c, d] = [before, i, next(i), next(next(i))].map(|i| polygon[i]);
    let meet = intersection(a, b - a, d, c - d)?;
    let outside = -cross(c - b, meet - b);
    (outside > 0.0).then_some((outside / 2.0, meet))
}

/// Where two lines (point, direction) meet.
pub(super) fn intersection(p: Vector2<f64>, d: Vector2<f64>, q: Vector2<f64>, e: Vector2<f64>) -> Option<Vector2<f64>> {
    let det = cross(d, e);
    (det * det > 1e-12 * d.norm_squared() * e.norm_squared()).then(|| p + d * (cross(q - p, e) / det))
}

/// Convex, clockwise, and no steeper than a marker seen at some 80 degrees.
pub(super) fn is_plausible(quad: &Quad) -> bool {
    let side = |i: usize| quad[(i + 1) % 4] - quad[i];
    let shortest = (0..4).map(|i| side(i).norm()).fold(f64::MAX, f64::min);
    let longest = (0..4).map(|i| side(i).norm()).fold(0.0, f64::max);
    let convex = (0..4).all(|i| cross(side(i), side((i + 1) % 4)) > 0.1 * side(i).norm() * side((i + 1) % 4).norm());
    convex && shortest >= 3.5 && longest <= 12.0 * shortest
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Border pixels of a filled convex polygon, clockwise by angle.
    fn outline_of(polygon: &[(f64, f64)]) -> Vec<(i32, i32)> {
        let inside = |u: f64, v: f64| {
            let next = polygon.iter().cycle().skip(1);
            polygon.iter().zip(next).all(|(a, b)| (b.0 - a.0) * (v - a.1) - (b.1 - a.1) * (u - a.0) >= 0.0)
        };
        let dark = |u: i32, v: i32| inside(f64::from(u), f64::from(v));
        let mut border = Vec::new();
        for v in 0..100 {
            for u in 0..100 {
                let open = [(1, 0), (-1, 0), (0, 1), (0, -1)].iter().any(|(a, b)| !dark(u + a, v + b));
                if dark(u, v) && open {
                    border.push((u, v));
                }
            }
        }
        let n = border.len() as f64;
        let cu = border.iter().map(|p| f64::from(p.0)).sum::<f64>() / n;
        let cv = border.iter().map(|p| f64::from(p.1)).sum::<f64>() / n;
        let angle = |p: &(i32, i32)| (f64::from(p.1) - cv).atan2(f64::from(p.0) - cu);
        border.sort_by(|a, b| angle(a).total_cmp(&angle(b)));
        border
    }

    fn worst(quad: &Quad, truth: &[(f64, f64)]) -> f64 {
        let gap = |t: &(f64, f64)| quad.iter().map(|c| (c - Vector2::new(t.0, t.1)).norm()).fold(f64::MAX, f64::min);
        truth.iter().map(gap).fold(0.0, f64::max)
    }

    #[test]
    fn finds_the_corners_of_a_slanted_square() {
        let truth = [(30.0, 10.0), (70.0, 25.0), (60.0, 64.0), (18.0, 50.0)];
        let quad = quad_around(&outline_of(&truth)).unwrap();
        assert!(worst(&quad, &truth) < 1.5, "{quad:?}");
    }

    #[test]
    fn restores_a_cut_corner() {
        let truth = [(20.0, 20.0), (70.0, 20.0), (70.0, 70.0), (20.0, 70.0)];
        let cut = [(30.0, 20.0), (70.0, 20.0), (70.0, 70.0), (20.0, 70.0), (20.0, 30.0)];
        assert!(worst(&quad_around(&outline_of(&cut)).unwrap(), &truth) < 1.5);
    }

    #[test]
    fn a_disc_and_a_line_are_none() {
        let disc: Vec<_> = (0..90)
            .map(|i| (f64::from(i) * 4.0).to_radians())
            .map(|a| (50.0 + 30.0 * a.cos(), 50.0 + 30.0 * a.sin()))
            .collect();
        let bent = quad_around(&outline_of(&disc));
        assert!(bent.is_none_or(|q| area(&q) > 0.0));
        assert!(quad_around(&outline_of(&[(10.0, 10.0), (90.0, 10.0), (90.0, 12.0), (10.0, 12.0)])).is_none());
    }
}
