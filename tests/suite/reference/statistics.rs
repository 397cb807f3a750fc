//! The statistics of archives against SciPy and NumPy on the same cases.

use baywitness::num::{Additive, Factor, Stratum, capability, excess, kolmogorov_tail, wilson};
use serde_json::json;

use super::harness::answer;

/// A number that looks random and is the same everywhere.
fn scattered(i: usize) -> f64 {
    ((i * 7919 + 13) % 1009) as f64 / 1009.0
}

#[test]
fn intervals_and_tests_agree_with_scipy() {
    let proportions = [(4usize, 20usize, 0.9), (0, 7, 0.95), (7, 7, 0.95), (333, 20_000, 0.95), (1, 3, 0.99)];
    // Far enough out that the exact sum is formed, not the normal approximation.
    let tables = [
        (vec![[40usize, 8, 10], [25, 6, 12], [60, 9, 5]], 14usize),
        (vec![[200, 20, 30]], 12),
        (vec![[12, 6, 6]; 4], 21),
    ];
    let count = 240;
    let people: Vec<u32> = (0..count).map(|i| (scattered(i) * 5.0) as u32).collect();
    let bays: Vec<u32> = (0..count).map(|i| ((scattered(3 * i + 1) + scattered(i)) * 2.0) as u32).collect();
    let sheets: Vec<u32> = (0..count).map(|i| (scattered(5 * i + 2) * 7.0) as u32).collect();
    let values: Vec<f64> =
        (0..count).map(|i| scattered(11 * i) + 0.3 * f64::from(people[i]) - 0.2 * f64::from(bays[i])).collect();
    let suprema = [0.5, 0.9, 1.358, 2.5];
    let sizes = [(8usize, 0.95), (50, 0.95), (1000, 0.9)];
    let asked = json!({
        "wilson": proportions,
        "excess": tables.iter().map(|(strata, seen)| json!({"strata": strata, "seen": seen})).collect::<Vec<_>>(),
        "shift": (0..5).map(|level| json!({"values": values, "codes": people, "others": [bays, sheets], "level": level})).collect::<Vec<_>>(),
        "kolmogorov": suprema,
        "capability": sizes,
    });
    let Some(answer) = answer("statistics.py", &["numpy", "scipy"], &asked) else { return };
    let near = |what: &str, ours: f64, theirs: f64, relative: f64| {
        assert!((ours - theirs).abs() <= relative * theirs.abs().max(1e-12), "{what}: {ours} against {theirs}");
    };
    let number = |key: &str, i: usize| answer[key][i].as_f64().unwrap();
    let pair = |key: &str, i: usize| [0, 1].map(|k| answer[key][i][k].as_f64().unwrap());
    for (i, (hits, of, confidence)) in proportions.iter().enumerate() {
        let (ours, theirs) = (wilson(*hits, *of, *confidence), pair("wilson", i));
        (0..2).for_each(|k| near("wilson", ours[k], theirs[k], 1e-8));
    }
    for (i, (strata, seen)) in tables.iter().enumerate() {
        let strata: Vec<Stratum> = strata.iter().map(|s| Stratum { size: s[0], hits: s[1], own: s[2] }).collect();
        near("excess", excess(&strata, *seen).unwrap().p_value, number("excess", i), 1e-8);
    }
    let factors = vec![Factor { codes: &bays, levels: 4 }, Factor { codes: &sheets, levels: 7 }];
    let model = Additive::new(factors, count).unwrap();
    let rest = model.rest(&values);
    for level in 0..5u32 {
        let (ours, theirs) = (model.shift(&rest, &people, level).unwrap(), pair("shift", level as usize));
        near("shift", ours.value, theirs[0], 1e-5);
        // Ours is the larger of the pooled error and the one with the level's own spread.
        assert!(ours.standard_error > 0.97 * theirs[1] && ours.standard_error < 1.6 * theirs[1], "{ours:?} {theirs:?}");
    }
    suprema
        .iter()
        .enumerate()
        .for_each(|(i, x)| near("kolmogorov", kolmogorov_tail(*x), number("kolmogorov", i), 1e-9));
    for (i, (n, confidence)) in sizes.iter().enumerate() {
        let ours = capability(*n, 0.0, 1.0, [-3.0, 3.0], *confidence).unwrap().potential_interval;
        (0..2).for_each(|k| near("capability", ours[k], pair("capability", i)[k], 1e-8));
    }
    println!("statistics agree with SciPy {}", answer["scipy"]);
}
