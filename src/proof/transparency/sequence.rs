//! Times of a log against each other and against its witnesses' clocks.

/// Clocks of two machines, and of one before and after it was set, may differ by this much, seconds (common
/// practice, no source).
pub const TOLERANCE_S: i64 = 300;

/// Entries whose times stand out of line, with by how much: the fewest without
/// which all others follow each other. One clock that ran ahead for one entry is
/// that entry's fault, not that of all after it.
pub fn out_of_order(times: &[i64]) -> Vec<(usize, i64)> {
    // Longest run of non-falling times (patience sorting): `ends[k]` is the entry that ends the best run of k + 1.
    let (mut ends, mut before) = (Vec::<usize>::new(), vec![None; times.len()]);
    for (n, time) in times.iter().enumerate() {
        let k = ends.partition_point(|&end| times[end] <= *time);
        before[n] = k.checked_sub(1).map(|k| ends[k]);
        ends.truncate(ends.len().max(k));
        if k == ends.len() { ends.push(n) } else { ends[k] = n }
    }
    let mut keeps = vec![false; times.len()];
    let mut at = ends.last().copied();
    while let Some(n) = at {
        keeps[n] = true;
        at = before[n];
    }
    let mut found = Vec::new();
    let mut last = None;
    let kept: Vec<usize> = (0..times.len()).filter(|n| keeps[*n]).collect();
    for (n, time) in times.iter().enumerate() {
        if keeps[n] {
            last = Some(*time);
            continue;
        }
        let next = kept.get(kept.partition_point(|k| *k < n)).map(|k| times[*k]);
        let early = last.map_or(0, |last: i64| last - time);
        let late = next.map_or(0, |next| time - next);
        let off = if early >= late { -early } else { late };
        if off.abs() > TOLERANCE_S {
            found.push((n, off));
        }
    }
    found
}

/// Entries that contradict a witness who saw `size` entries at `seen`: logged
/// later with an earlier time, or earlier with a later one; with by how much.
pub fn against_witness(times: &[i64], size: u64, seen: i64) -> Vec<(usize, i64)> {
    let off = |(n, time): (usize, &i64)| {
        // Whoever signs may state any time.
        let off = time.saturating_sub(seen);
        let wrong = if (n as u64) < size { off > TOLERANCE_S } else { off < -TOLERANCE_S };
        wrong.then_some((n, off))
    };
    times.iter().enumerate().filter_map(off).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_one_that_stands_out_is_named() {
        let steady: Vec<i64> = (0..50).map(|n| n * 1000).collect();
        assert_eq!(out_of_order(&steady), []);
        assert_eq!(out_of_order(&[0, 500, 250, 900]), [], "within the tolerance");
        let mut back = steady.clone();
        back[30] = 4_500;
        assert_eq!(out_of_order(&back), [(30, 4_500 - 29_000)]);
        let mut ahead = steady.clone();
        ahead[10] = 40_500;
        assert_eq!(out_of_order(&ahead), [(10, 40_500 - 11_000)]);
        assert_eq!(out_of_order(&[5_000]), []);
        assert_eq!(out_of_order(&[]), []);
    }

    #[test]
    fn a_witness_s_clock_binds_what_comes_before_and_after() {
        let times = [100, 200, 10_000, 90];
        assert_eq!(against_witness(&times, 2, 1_000), [(3, -910)]);
        assert_eq!(against_witness(&times, 3, 1_000), [(2, 9_000), (3, -910)]);
    }
}
