//! Pictures as rows of numbers.

/// A photo's luma, eight bits a pixel, rows from the top.
#[derive(Debug, Clone, Copy)]
pub struct Grey<'a> {
    /// Pixels in a row.
    pub width: usize,
    /// Rows.
    pub height: usize,
    /// All of them, row after row: `width * height`.
    pub pixels: &'a [u8],
}

/// A number for each pixel.
#[derive(Debug, Clone, PartialEq)]
pub struct Plane {
    /// Pixels in a row.
    pub width: usize,
    /// Rows.
    pub height: usize,
    /// All of them, row after row.
    pub values: Vec<f32>,
}

/// Rows and columns are levelled apart for each place in a block of so many
/// pixels: JPEG's blocks repeat after eight, a colour mosaic after two.
const PERIOD: usize = 8;

impl Plane {
    /// Width and height.
    pub fn size(&self) -> [usize; 2] {
        [self.width, self.height]
    }

    /// The picture turned clockwise by so many quarters.
    #[must_use]
    pub(crate) fn turned(mut self, quarters: u8) -> Plane {
        let (w, h) = (self.width, self.height);
        let at = |u: usize, v: usize| self.values[v * w + u];
        if quarters.is_multiple_of(2) {
            if quarters % 4 == 2 {
                self.values.reverse();
            }
            return self;
        }
        let places = (0..w).flat_map(|v| (0..h).map(move |u| (u, v)));
        let values = match quarters % 4 {
            1 => places.map(|(u, v)| at(v, h - 1 - u)).collect(),
            _ => places.map(|(u, v)| at(w - 1 - v, u)).collect(),
        };
        Plane { width: h, height: w, values }
    }

    /// The picture at another size, each new pixel the mean of the area that it covers.
    #[must_use]
    pub(crate) fn resized(&self, [width, height]: [usize; 2]) -> Plane {
        let across = shares(self.width, width);
        let down = shares(self.height, height);
        let mut values = Vec::with_capacity(width * height);
        let mut column = vec![0.0f32; self.width];
        for (first, weights) in &down {
            column.fill(0.0);
            for (k, weight) in weights.iter().enumerate() {
                let row = &self.values[(first + k) * self.width..][..self.width];
                column.iter_mut().zip(row).for_each(|(c, x)| *c += weight * x);
            }
            let mean = |(first, weights): &(usize, Vec<f32>)| -> f32 {
                weights.iter().zip(&column[*first..]).map(|(w, x)| w * x).sum()
            };
            values.extend(across.iter().map(mean));
        }
        Plane { width, height, values }
    }

    /// Takes away what whole rows and columns have in common, as the camera's readout and its compression add it to
    /// every photo of every camera of the kind (Chen et al. 2008, section III: zero-mean).
    pub(crate) fn level(&mut self) {
        for row in self.values.chunks_mut(self.width) {
            for class in 0..PERIOD {
                let own = row.iter().skip(class).step_by(PERIOD);
                let mean = own.clone().sum::<f32>() / own.len().max(1) as f32;
                row.iter_mut().skip(class).step_by(PERIOD).for_each(|x| *x -= mean);
            }
        }
        for class in 0..PERIOD {
            let mut mean = vec![0.0f32; self.width];
            let mut rows = 0.0f32;
            for row in self.values.chunks(self.width).skip(class).step_by(PERIOD) {
                mean.iter_mut().zip(row).for_each(|(m, x)| *m += x);
                rows += 1.0;
            }
            for row in self.values.chunks_mut(self.width).skip(class).step_by(PERIOD) {
                row.iter_mut().zip(&mean).for_each(|(x, m)| *x -= m / rows);
            }
        }
    }
}

/// For each of `to` new places: the first old one that it covers, and how much of each counts.
fn shares(from: usize, to: usize) -> Vec<(usize, Vec<f32>)> {
    let step = from as f64 / to as f64;
    (0..to)
        .map(|i| {
            let (low, high) = (i as f64 * step, (i + 1) as f64 * step);
            let first = (low as usize).min(from - 1);
            let last = (high.ceil() as usize).clamp(first + 1, from);
            let cover = |p: usize| (high.min(p as f64 + 1.0) - low.max(p as f64)).max(0.0) / step;
            (first, (first..last).map(|p| cover(p) as f32).collect())
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counted(width: usize, height: usize) -> Plane {
        Plane { width, height, values: (0..width * height).map(|i| i as f32).collect() }
    }

    #[test]
    fn four_quarters_bring_it_back_and_one_puts_the_left_edge_on_top() {
        let plane = counted(3, 2);
        let once = plane.clone().turned(1);
        assert_eq!((once.size(), &once.values[..2]), ([2, 3], &[3.0, 0.0][..]));
        assert_eq!(once.clone().turned(1).values, plane.clone().turned(2).values);
        assert_eq!(once.turned(3), plane);
    }

    #[test]
    fn resizing_keeps_the_mean_and_halves_exactly() {
        let half = counted(6, 4).resized([3, 2]);
        assert_eq!(half.values, [3.5, 5.5, 7.5, 15.5, 17.5, 19.5]);
        let odd = counted(7, 5).resized([4, 3]);
        assert!((odd.values.iter().sum::<f32>() / 12.0 - 17.0).abs() < 1e-4);
    }

    #[test]
    fn what_repeats_in_rows_columns_and_blocks_is_levelled() {
        let mut plane = counted(40, 24);
        let row = |i: usize| (i / 40) as f32;
        for (i, x) in plane.values.iter_mut().enumerate() {
            *x = 3.0 * row(i) + ((i % 40) as f32).sin() + if i % 8 == 0 { 5.0 } else { 0.0 };
        }
        plane.level();
        assert!(plane.values.iter().all(|x| x.abs() < 1e-3));
    }
}
