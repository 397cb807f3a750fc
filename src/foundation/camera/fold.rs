//! Where a radial distortion polynomial stops growing: beyond that place the
//! model shows two rays at one pixel.

/// Whether `1 + c[0] s + c[1] s^2 + ...` is positive for all s from 0 to `end`.
pub(super) fn stays_positive<const N: usize>(c: &[f64; N], end: f64) -> bool {
    let mut power = 1.0;
    let mut least = 1.0;
    for coefficient in c {
        power *= end;
        least += (coefficient * power).min(0.0);
    }
    if least > 0.0 {
        return true;
    }
    match c.as_slice() {
        [a, b, c] => cubic_stays_positive([*a, *b, *c], end),
        _ => first_zero(c, end).is_none(),
    }
}

/// The cubic's least value lies at a turn or at the end.
fn cubic_stays_positive([a, b, c]: [f64; 3], end: f64) -> bool {
    let value = |s: f64| 1.0 + s * (a + s * (b + s * c));
    // Zeros of the derivative a + 2 b s + 3 c s^2, in the form that loses no digits.
    let discriminant = b * b - 3.0 * a * c;
    let turns = if discriminant > 0.0 {
        let q = -(b + discriminant.sqrt().copysign(b));
        [q / (3.0 * c), a / q]
    } else {
        [end; 2]
    };
    value(end) > 0.0 && turns.iter().all(|s| !(0.0..end).contains(s) || value(*s) > 0.0)
}

/// The smallest s in (0, `end`] where `1 + c[0] s + c[1] s^2 + ...` is zero.
pub(super) fn first_zero<const N: usize>(c: &[f64; N], end: f64) -> Option<f64> {
    let mut all = [1.0; 8];
    all[1..=N].copy_from_slice(c);
    let mut found = [0.0; 8];
    (zeros(&all[..=N], end, &mut found) > 0).then_some(found[0])
}

/// The zeros of a polynomial in (0, `end`], in rising order, and how many:
/// between the zeros of its derivative it is monotone.
fn zeros(c: &[f64], end: f64, found: &mut [f64; 8]) -> usize {
    if c.len() < 2 {
        return 0;
    }
    let mut slope = [0.0; 8];
    for (power, coefficient) in c.iter().enumerate().skip(1) {
        slope[power - 1] = power as f64 * coefficient;
    }
    let mut turns = [0.0; 8];
    let turn_count = zeros(&slope[..c.len() - 1], end, &mut turns);
    turns[turn_count] = end;
    let value = |s: f64| c.iter().rev().fold(0.0, |sum, coefficient| sum * s + coefficient);
    let (mut count, mut from) = (0, 0.0);
    for &to in &turns[..=turn_count] {
        if value(from) * value(to) <= 0.0 && value(from).abs() > 0.0 {
            found[count] = bisect(&value, from, to);
            count += 1;
        }
        from = to;
    }
    count
}

fn bisect(value: &impl Fn(f64) -> f64, mut from: f64, mut to: f64) -> f64 {
    let rises = value(to) > value(from);
    for _ in 0..60 {
        let middle = f64::midpoint(from, to);
        if (value(middle) > 0.0) == rises {
            to = middle;
        } else {
            from = middle;
        }
    }
    f64::midpoint(from, to)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_the_first_zero() {
        // (1 - s)(1 - s / 2)(1 - s / 3) = 1 - 11/6 s + s^2 - s^3 / 6.
        let c = [-11.0 / 6.0, 1.0, -1.0 / 6.0];
        assert!((first_zero(&c, 10.0).unwrap() - 1.0).abs() < 1e-12);
        assert_eq!(first_zero(&c, 0.9), None);
        assert!(stays_positive(&c, 0.999) && !stays_positive(&c, 1.001));
    }

    #[test]
    fn a_short_dip_is_not_overlooked() {
        // Negative only between 0.70 and 0.71.
        let scale = 0.70 * 0.71;
        let c = [-(0.70 + 0.71) / scale, 1.0 / scale, 0.0];
        assert!(!stays_positive(&c, 1.0));
        assert!(stays_positive(&c, 0.69));
        assert!(stays_positive(&[0.243, -1.05, 0.84, 0.0], 5.0));
    }

    #[test]
    fn cubics_are_judged_as_their_zeros_say() {
        let mut seed = 7_u64;
        let mut next = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (seed >> 11) as f64 / (1_u64 << 53) as f64
        };
        for _ in 0..2000 {
            let c = [4.0 * next() - 2.0, 4.0 * next() - 2.0, 4.0 * next() - 2.0];
            let end = 3.0 * next();
            assert_eq!(cubic_stays_positive(c, end), first_zero(&c, end).is_none(), "{c:?} to {end}");
        }
    }
}
