//! The search over all levels: outlines, quadrilaterals, codes.

use super::busy::idle_straight;
use super::contour::{AGAINST_GREY, AGAINST_MARGIN, DARKEST, Darkness, HALFWAY, Means, Rule, Surroundings};
use super::decode::{Reading, Unread, centre, read};
use super::edge::{REACH, sharpen};
use super::pyramid::{Level, TILE, active_tiles, darkest_around};
use super::quad::{Quad, area, cross, is_plausible, quad_around};
use crate::marker::Dictionary;
use nalgebra::Vector2;

/// Least contrast of a tile that is looked at, grey levels.
const TILE_CONTRAST: u8 = 32;

/// On so many of the finest levels, where there is most to look at, only tiles in which grey levels change in both
/// directions are looked at. Markers too large for that are found on coarser levels.
const FINE: usize = 2;

/// When pixels count as dark; on the photo's own grid borders may be less than two pixels wide.
const RULES: [Rule; 3] = [AGAINST_MARGIN, DARKEST, AGAINST_GREY];
const FINEST_RULES: [Rule; 4] = [AGAINST_MARGIN, DARKEST, HALFWAY, AGAINST_GREY];

/// Least rise of grey levels over a side that is looked at closer.
const LEAST_RISE: i32 = 8;

/// How far sides are looked for, share of the marker's side.
const NEAR: f64 = 0.07;
/// How far doubtful sides are looked for, share of the marker's side.
const WIDE: f64 = 0.1;

/// Size of a marker within its margin's outer edge, for margins of 1 and 0.6 cells, and
/// how far from there its edges are looked for, share of the outer edge.
const MARGINS: [f64; 2] = [0.8, 0.87];
const MARGIN_REACH: f64 = 0.055;

/// Sizes that small markers are read at where their own fails, and which are small, px.
const SHIFTED: [f64; 2] = [0.96, 1.04];
const SMALL: f64 = 26.0;

/// Side that a code can be read at, px of a level, with some in reserve.
const LEAST_READ: f64 = 18.0;

/// A marker with its margin, share of the marker.
const WITH_MARGIN: f64 = 1.2;

/// How much alike in size and place outlines of one marker are, share of its side.
const SAME_SIZE: f64 = 0.25;
const SAME_PLACE: f64 = 0.1;

/// How far apart corners of one quadrilateral are that was found twice, px of its level: less than what would help to read it.
const SAME_PX: f64 = 0.2;
/// The same, share of its side and most px, where edges have been looked for farther away in vain.
const SAME_LOOKED_AT: (f64, f64) = (0.05, 2.0);

/// Outlines of a photo that are looked at, large ones first. Photos of bays have
/// some hundreds; one that has more than this was made to take time.
const MOST_EXAMINED: usize = 10_000;

/// All codes in a photo, corners on the photo's grid; coarse levels first.
pub(super) fn search(levels: &[Level<'_>], dictionary: &Dictionary) -> Vec<Reading> {
    let mut found: Vec<Reading> = Vec::new();
    let mut darkness = Darkness::default();
    let mut examined = 0;
    let mut vain = Vec::new();
    for index in (0..levels.len().saturating_sub(2)).rev() {
        let level = &levels[index];
        let mut active = active_tiles(level, TILE_CONTRAST);
        for reading in &found {
            idle_inside(&mut active, level, &reading.quad);
        }
        if index < FINE {
            idle_straight(&mut active, level.width.div_ceil(TILE), &levels[index + 1]);
        }
        let means = Means::new(&levels[index + 2]);
        darkness.start(&means);
        let darkest = darkest_around(level);
        let around = Surroundings { means: &means, contrast: &active, darkest: &darkest };
        vain.clear();
        let rules: &[Rule] = if index == 0 { &FINEST_RULES } else { &RULES };
        for rule in rules.iter().copied() {
            darkness.mark(level, &around, rule);
            darkness.outlines(|outline| {
                if examined == MOST_EXAMINED {
                    return;
                }
                let quad = quad_around(outline).filter(|quad| !is_known(&found, level, quad));
                examined += usize::from(quad.is_some());
                if let Some(reading) = quad.and_then(|quad| examine(levels, index, &quad, dictionary, &mut vain)) {
                    keep(&mut found, reading);
                }
            });
        }
    }
    found
}

/// Whether a candidate is the outline of a marker that was read without any doubt.
fn is_known(found: &[Reading], level: &Level<'_>, quad: &Quad) -> bool {
    let middle = centre(quad).map(|x| level.on_photo(x));
    let side = area(quad).sqrt() * level.scale;
    found.iter().filter(|r| r.is_clean()).any(|r| {
        let known = area(&r.quad).sqrt();
        (side / known - 1.0).abs() < SAME_SIZE && (centre(&r.quad) - middle).norm() < SAME_PLACE * known
    })
}

/// Reads a candidate and carries its sides down to the photo's own grid. What was looked at closely on this level
/// `vain`ly is known again: most outlines are seen by several rules.
fn examine(
    levels: &[Level<'_>],
    index: usize,
    quad: &Quad,
    dictionary: &Dictionary,
    vain: &mut Vec<(Quad, f64)>,
) -> Option<Reading> {
    let level = &levels[index];
    if !is_dark_in_light(level, quad) {
        return None;
    }
    // A small marker's margin ends within that reach: its own edge is nearer.
    let reach = REACH.min(NEAR * area(quad).sqrt()).max(1.0);
    let quad = sharpen(level, quad, reach).filter(is_plausible)?;
    let quad = sharpen(level, &quad, reach).filter(is_plausible).unwrap_or(quad);
    if vain.iter().any(|(known, reach)| moved(known, &quad) < *reach) {
        return None;
    }
    let first = read(level, &quad, dictionary);
    let mut reading = match first {
        Ok(reading) if reading.is_clean() => reading,
        Err(Unread { promising: false }) => {
            vain.push((quad, SAME_PX));
            return None;
        }
        // What is too small to be read here is seen twice as large on the next level.
        Err(_) if index > 0 && area(&quad) < LEAST_READ.powi(2) => return None,
        doubtful => {
            let better = second_look(level, &quad, dictionary, doubtful.ok());
            let better = better.or_else(|| part(level, &quad, dictionary));
            if better.is_none() {
                let reach = (SAME_LOOKED_AT.0 * area(&quad).sqrt()).clamp(SAME_PX, SAME_LOOKED_AT.1);
                vain.push((quad, reach));
            }
            better?
        }
    };
    // Two levels at once: what is left of an error on the coarse one stays within reach.
    let mut at = index;
    while at > 0 {
        let below = at.saturating_sub(2);
        let (fine, coarse) = (&levels[below], &levels[at]);
        let start = reading.quad.map(|c| c.map(|x| fine.on_level(coarse.on_photo(x))));
        reading.quad = sharpen(fine, &start, REACH).filter(|q| moved(q, &start) < 3.0).unwrap_or(start);
        at = below;
    }
    Some(reading)
}

/// Looks farther for edges: a side may lie wrong at one end, or all on the outer edge of a margin
/// that is darker than what surrounds it.
fn second_look(level: &Level<'_>, quad: &Quad, dictionary: &Dictionary, first: Option<Reading>) -> Option<Reading> {
    let side = area(quad).sqrt();
    let try_from = |start: &Quad, reach: f64| {
        let wide = sharpen(level, start, reach.max(1.0))?;
        let quad = sharpen(level, &wide, REACH.min(reach.max(1.0))).filter(is_plausible)?;
        read(level, &quad, dictionary).ok()
    };
    let scaled = |scale: f64| quad.map(|c| centre(quad) + (c - centre(quad)) * scale);
    let mut best = better(first, try_from(quad, side * WIDE));
    for scale in MARGINS {
        if best.as_ref().is_some_and(Reading::is_clean) {
            return best;
        }
        best = better(best, try_from(&scaled(scale), side * MARGIN_REACH));
    }
    // Blur moves the edges of the smallest markers by a good part of a cell.
    for scale in SHIFTED.iter().filter(|_| side < SMALL) {
        best = better(best, read(level, &scaled(*scale), dictionary).ok());
    }
    best
}

/// Looks within the outline for a marker that a local threshold joined with its neighbour.
fn part(level: &Level<'_>, quad: &Quad, dictionary: &Dictionary) -> Option<Reading> {
    let low = quad.iter().fold(quad[0], |low, c| low.inf(c)).map(|x| (x - 2.0).max(0.0) as usize);
    let high = quad.iter().fold(quad[0], |high, c| high.sup(c)).map(|x| (x + 3.0).max(0.0) as usize);
    let high = (high.x.min(level.width), high.y.min(level.height));
    if low.x >= high.0 || low.y >= high.1 {
        return None;
    }
    let corner = low.map(|x| x as f64);
    let mut best = None;
    Darkness::within(level, (low.x, low.y), high).outlines(|outline| {
        let inner = quad_around(outline).map(|quad| quad.map(|c| c + corner));
        let inner = inner.filter(|inner| is_dark_in_light(level, inner));
        let sharp = inner.and_then(|inner| sharpen(level, &inner, REACH)).filter(is_plausible);
        let new = sharp.and_then(|sharp| read(level, &sharp, dictionary).ok());
        best = better(best.take(), new);
    });
    best
}

fn better(a: Option<Reading>, b: Option<Reading>) -> Option<Reading> {
    match (a, b) {
        (Some(a), Some(b)) => Some(if a.rank() <= b.rank() { a } else { b }),
        (a, b) => a.or(b),
    }
}

/// A quick look: most places along the sides are lighter outside than inside.
fn is_dark_in_light(level: &Level<'_>, quad: &Quad) -> bool {
    let grey = |p: Vector2<f64>| {
        let (u, v) = ((p.x + 0.5).max(0.0) as usize, (p.y + 0.5).max(0.0) as usize);
        i32::from(level.pixels()[v.min(level.height - 1) * level.width + u.min(level.width - 1)])
    };
    let middle = centre(quad);
    (0..4).all(|i| {
        let (a, b) = (quad[i], quad[(i + 1) % 4]);
        let outward = Vector2::new(b.y - a.y, a.x - b.x).normalize();
        let inward = outward.dot(&(middle - a)).abs().min(1.0);
        let rises = |t: f64| {
            let p = a + (b - a) * t;
            grey(p + outward * 1.6) - grey(p - outward * inward * 0.5) >= LEAST_RISE
        };
        [0.12, 0.3, 0.5, 0.7, 0.88].iter().filter(|t| rises(**t)).count() >= 3
    })
}

fn moved(a: &Quad, b: &Quad) -> f64 {
    a.iter().zip(b).map(|(p, q)| (p - q).norm()).fold(0.0, f64::max)
}

/// Keeps the better of two readings of the same place.
fn keep(found: &mut Vec<Reading>, new: Reading) {
    let reach = area(&new.quad).sqrt() / 4.0;
    let same = found.iter().position(|r| r.id == new.id && (centre(&r.quad) - centre(&new.quad)).norm() < reach);
    match same {
        Some(i) if found[i].rank() > new.rank() => found[i] = new,
        Some(_) => {}
        None => found.push(new),
    }
}

/// Tiles that lie wholly within a found marker and its margin need no second look.
fn idle_inside(active: &mut [u8], level: &Level<'_>, quad: &Quad) {
    let columns = level.width.div_ceil(TILE);
    let middle = centre(quad);
    let quad = quad.map(|c| (middle + (c - middle) * WITH_MARGIN).map(|x| level.on_level(x)));
    let inside = |p: Vector2<f64>| (0..4).all(|i| cross(quad[(i + 1) % 4] - quad[i], p - quad[i]) >= 0.0);
    let tile = TILE as f64;
    let range = |axis: fn(&Vector2<f64>) -> f64, most: usize| {
        let low = quad.iter().map(axis).fold(f64::MAX, f64::min).max(0.0) / tile;
        let high = quad.iter().map(axis).fold(0.0, f64::max) / tile;
        low as usize..(high as usize + 1).min(most)
    };
    for r in range(|p| p.y, active.len() / columns) {
        for c in range(|p| p.x, columns) {
            let (u, v) = (c as f64 * tile, r as f64 * tile);
            if [(0.0, 0.0), (tile, 0.0), (0.0, tile), (tile, tile)]
                .iter()
                .all(|(a, b)| inside(Vector2::new(u + a, v + b)))
            {
                active[r * columns + c] = 0;
            }
        }
    }
}
