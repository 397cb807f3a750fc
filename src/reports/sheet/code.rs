//! A marker's black cells as outlines.

use crate::marker::Dictionary;

use super::Error;

/// Cells along a side, the black border included.
pub(super) const CELLS: usize = 8;

/// Outlines of the black area of a marker in cells, x right and y down from the top-left
/// corner; inside by the even-odd rule. Following the outline instead of filling cell by
/// cell leaves no seam between neighbours, whatever draws it.
pub(super) fn outlines(id: u32) -> Result<Vec<Vec<[usize; 2]>>, Error> {
    let dictionary = Dictionary::tag36h11();
    if id as usize >= dictionary.len() {
        return Err(Error::UnknownMarker { id, family: dictionary.name(), last: dictionary.len() - 1 });
    }
    Ok(follow(|column, row| column < CELLS && row < CELLS && !dictionary.is_white(id, column, row)))
}

/// The marker in millimetres: `centre` on the page, `size` along x and y.
pub(super) fn outlines_mm(id: u32, centre: [f64; 2], size: [f64; 2]) -> Result<Vec<Vec<[f64; 2]>>, Error> {
    let place = |axis: usize, cell: usize| centre[axis] + (cell as f64 / CELLS as f64 - 0.5) * size[axis];
    let ring = |ring: &Vec<[usize; 2]>| ring.iter().map(|c| [place(0, c[0]), place(1, c[1])]).collect();
    Ok(outlines(id)?.iter().map(ring).collect())
}

/// Follows the edges between black and white, black on the right hand.
fn follow(black: impl Fn(usize, usize) -> bool) -> Vec<Vec<[usize; 2]>> {
    let at = |x: usize, y: usize, dx: usize, dy: usize| x >= dx && y >= dy && black(x - dx, y - dy);
    // Edges that leave each lattice point: towards +x, +y, -x, -y.
    let mut leaving = [[[false; 4]; CELLS + 1]; CELLS + 1];
    for (y, row) in leaving.iter_mut().enumerate() {
        for (x, edges) in row.iter_mut().enumerate() {
            let (se, sw, ne, nw) = (at(x, y, 0, 0), at(x, y, 1, 0), at(x, y, 0, 1), at(x, y, 1, 1));
            *edges = [se && !ne, sw && !se, nw && !sw, ne && !nw];
        }
    }
    let mut rings = Vec::new();
    for y in 0..=CELLS {
        for x in 0..=CELLS {
            while let Some(heading) = (0..4).find(|&h| leaving[y][x][h]) {
                rings.push(ring(&mut leaving, [x, y], heading));
            }
        }
    }
    rings
}

fn ring(leaving: &mut [[[bool; 4]; CELLS + 1]; CELLS + 1], start: [usize; 2], first_heading: usize) -> Vec<[usize; 2]> {
    let mut corners = Vec::new();
    let (mut at, mut heading, mut last) = (start, first_heading, usize::MAX);
    loop {
        leaving[at[1]][at[0]][heading] = false;
        if heading != last {
            corners.push(at);
        }
        last = heading;
        match heading {
            0 => at[0] += 1,
            1 => at[1] += 1,
            2 => at[0] -= 1,
            _ => at[1] -= 1,
        }
        if at == start {
            return corners;
        }
        // Where two black cells touch at a corner two edges leave: either one closes a ring.
        match (0..4).find(|&h| leaving[at[1]][at[0]][h]) {
            Some(next) => heading = next,
            None => return corners,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Even-odd test of a cell's centre against rings.
    fn inside(rings: &[Vec<[usize; 2]>], column: usize, row: usize) -> bool {
        let (x, y) = (column as f64 + 0.5, row as f64 + 0.5);
        let mut crossings = 0;
        for ring in rings {
            for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
                let (ay, by) = (a[1] as f64, b[1] as f64);
                if (ay < y) != (by < y) && a[0] as f64 > x {
                    crossings += 1;
                }
            }
        }
        crossings % 2 == 1
    }

    #[test]
    fn outlines_hold_the_black_cells_of_every_code() {
        let dictionary = Dictionary::tag36h11();
        for id in 0..dictionary.len() as u32 {
            let rings = outlines(id).unwrap();
            for row in 0..CELLS {
                for column in 0..CELLS {
                    let black = !dictionary.is_white(id, column, row);
                    assert_eq!(inside(&rings, column, row), black, "id {id}, column {column}, row {row}");
                }
            }
        }
    }

    #[test]
    fn an_id_beyond_the_family_is_named() {
        let error = outlines(587).unwrap_err().to_string();
        assert!(error.contains("587") && error.contains("36h11") && error.contains("586"), "{error}");
    }
}
