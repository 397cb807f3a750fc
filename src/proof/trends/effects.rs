//! What was named, as a record: sizes, intervals, weeks, and for a sheet the
//! slip that would explain it.

use std::collections::BTreeMap;

use super::archive::{Archive, Factor, week_name};
use super::explore::{Explored, Named, What};
use super::groups::MOST_LINKED;
use super::outcomes::Outcome;
use super::pointers::Pointers;
use super::shifts::{Candidate, Column, SETUP};
use crate::num::{CusumDesign, median};
use crate::record::{CusumRecord, EffectRecord, WeekMean};
use crate::report::effect_words;
use crate::words::{Language, phrase};

/// What people, bays, sheets and kits are called.
pub(super) type Call<'a> = &'a dyn Fn(Factor, u32) -> String;

/// Mean run length without a change that the weekly chart is designed for, weeks: about seven years.
const RUN_LENGTH: f64 = 370.0;
/// Half of the shift that it is made for, in standard deviations of a weekly mean.
const ALLOWANCE: f64 = 0.5;

/// The weekly chart: allowance, decision interval, mean run length without a change and with the shift it is made for.
pub(super) fn weekly_chart() -> CusumRecord {
    let design = CusumDesign::with_run_length(ALLOWANCE, RUN_LENGTH);
    CusumRecord {
        allowance: design.allowance,
        interval: design.interval,
        run_length: design.mean_run_length(0.0),
        run_length_shifted: design.mean_run_length(2.0 * ALLOWANCE),
    }
}

/// All named effects.
pub(super) fn effects(
    archive: &Archive,
    explored: &Explored,
    pointers: &mut Pointers,
    call: Call,
) -> Vec<EffectRecord> {
    let one = |named: &Named| {
        let mut effect = match &named.what {
            What::Shift(c) | What::Change(c, _) => of_figures(archive, explored, named, c),
            What::Finding(f) => EffectRecord {
                kind: "finding".into(),
                code: code(archive, f.outcome),
                quantity: match f.outcome {
                    Outcome::Outside(key) => Some(archive.keys.list[key as usize].clone()),
                    Outcome::Code(_) => None,
                },
                size: f.seen as f64 / f.expected,
                counts: Some([f.seen as f64, f.expected]),
                ..blank()
            },
        };
        effect.factor = Factor::COMPARED[named.factor].name().into();
        effect.name = call(Factor::COMPARED[named.factor], named.label);
        effect.together_phrase = named.together.map(|(factor, label)| {
            let factor = Factor::COMPARED[factor];
            match label {
                Some(label) => phrase!("trends-together-one", factor = factor.name(), name = call(factor, label)),
                None => phrase!("trends-together-all", factor = factor.name()),
            }
        });
        effect.together_with = effect.together_phrase.as_ref().map(|p| p.say(Language::English));
        effect.jobs = named.jobs.len();
        effect.adjusted_p = named.adjusted_p;
        effect.also = named.also.iter().map(|o| outcome(archive, *o)).collect();
        effect.linked = pointers.all(furthest(archive, explored, named), MOST_LINKED);
        effect.words = effect_words(&effect, Language::English);
        effect
    };
    explored.named.iter().map(one).collect()
}

fn code(archive: &Archive, outcome: Outcome) -> Option<String> {
    match outcome {
        Outcome::Code(code) => Some(archive.codes.list[code as usize].clone()),
        Outcome::Outside(_) => None,
    }
}

/// A code, or `QUANTITY outside`.
fn outcome(archive: &Archive, outcome: Outcome) -> String {
    match outcome {
        Outcome::Code(code) => archive.codes.list[code as usize].clone(),
        Outcome::Outside(key) => format!("{} outside", archive.keys.list[key as usize]),
    }
}

fn blank() -> EffectRecord {
    EffectRecord {
        kind: String::new(),
        factor: String::new(),
        name: String::new(),
        quantity: None,
        code: None,
        size: 0.0,
        interval: None,
        amount: None,
        unit: None,
        nominal: None,
        slip: None,
        slip_phrase: None,
        since_week: None,
        together_with: None,
        together_phrase: None,
        jobs: 0,
        counts: None,
        adjusted_p: 1.0,
        also: Vec::new(),
        words: String::new(),
        weeks: Vec::new(),
        linked: Vec::new(),
    }
}

fn of_figures(archive: &Archive, explored: &Explored, named: &Named, c: &Candidate) -> EffectRecord {
    let Some(column) = named.column.map(|i| &explored.columns[i]) else { return blank() };
    let own = |job: &usize| archive.marks(*job).find(|m| m.key == column.key);
    let half = median(named.jobs.iter().filter_map(own).map(|m| m.half)).unwrap_or(f64::NAN);
    let sheet = named.factor == SETUP && matches!(named.what, What::Shift(_));
    // A sheet's values may be far beyond where deviations were clipped.
    let of_sheet = sheet.then(|| {
        let nominal = median(named.jobs.iter().filter_map(own).map(|m| m.nominal)).unwrap_or(0.0);
        let value = median(named.jobs.iter().filter_map(own).map(|m| m.value)).unwrap_or(0.0);
        [nominal, value]
    });
    let clipped = c.size;
    let size = match of_sheet {
        Some([nominal, value]) if ((value - nominal) / half).abs() > clipped.abs() => (value - nominal) / half,
        _ => clipped,
    };
    let since = match named.what {
        What::Change(_, from) => Some(from),
        _ => None,
    };
    let unit = archive.units[column.key as usize].clone();
    let slip = of_sheet.filter(|_| size.abs() > 1.0).and_then(|[n, v]| slip(n, v, half, &unit));
    let slip = slip.map(|slip| phrase!("trends-slip", slip = slip));
    EffectRecord {
        kind: if since.is_some() {
            "change"
        } else if sheet {
            "sheet"
        } else {
            "shift"
        }
        .into(),
        quantity: Some(archive.keys.list[column.key as usize].clone()),
        size,
        // Where deviations were clipped their spread says nothing.
        interval: ((size - clipped).abs() < 0.5 * clipped.abs()).then(|| c.interval.map(|end| end - clipped + size)),
        amount: (half.is_finite()).then_some(size * half),
        slip: slip.as_ref().map(|s| s.say(Language::English)),
        slip_phrase: slip,
        nominal: of_sheet,
        unit: Some(unit),
        since_week: since.map(|s| week_name((s.div_euclid(86_400) + UNIX_DAY).div_euclid(7) as i32)),
        weeks: weeks(archive, column, named),
        ..blank()
    }
}

/// Julian day of 1 January 1970.
const UNIX_DAY: i64 = 2_440_588;

/// The typing error that turns what is meant into what the sheet states.
fn slip(stated: f64, meant: f64, half: f64, unit: &str) -> Option<&'static str> {
    let near = |v: f64| (v - meant).abs() <= half;
    if near(-stated) {
        return Some("sign");
    }
    if unit == "mm" && (near(stated * 25.4) || near(stated / 25.4)) {
        return Some("inches");
    }
    if near(stated * 10.0) || near(stated / 10.0) {
        return Some("point");
    }
    let digits: Vec<char> = crate::quantity::rounded(stated, 0).chars().collect();
    let read = |digits: &[char]| digits.iter().collect::<String>().parse::<f64>().ok();
    let swapped = (1..digits.len()).any(|i| {
        let mut other = digits.clone();
        other.swap(i - 1, i);
        read(&other).is_some_and(near)
    });
    if swapped {
        return Some("swapped");
    }
    // Only digits whose place is well above the tolerance: one of the others always comes near.
    let place = |i: usize| 10f64.powi((digits.len() - 1 - i) as i32);
    let changed = (0..digits.len()).filter(|i| digits[*i].is_ascii_digit() && place(*i) >= 10.0 * half).any(|i| {
        ('0'..='9').any(|d| {
            let mut other = digits.clone();
            other[i] = d;
            read(&other).is_some_and(|v| (v - meant).abs() <= half / 2.0)
        })
    });
    changed.then_some("digit")
}

/// Means by week, with the cumulative sums of the weekly means: each is
/// standardised by the spread of single jobs and the week's number of them.
fn weeks(archive: &Archive, column: &Column, named: &Named) -> Vec<WeekMean> {
    let rest = if named.factor == SETUP { column.raw.clone() } else { column.rest_for(named.factor) };
    let before = match named.what {
        What::Change(_, from) => from,
        _ => i64::MAX,
    };
    let mut by: BTreeMap<i32, (f64, usize)> = BTreeMap::new();
    let mut level = (0.0, 0usize);
    let mut all = Vec::new();
    for (job, value) in column.coding.jobs.iter().zip(&rest) {
        let own = archive.jobs[*job].labels[named.factor] == Some(named.label);
        if let (true, Some(week)) = (own, archive.jobs[*job].week()) {
            let (sum, count) = by.entry(week).or_default();
            *sum += value;
            *count += 1;
            all.push(*value);
            if archive.jobs[*job].seconds.is_some_and(|s| s < before) {
                level = (level.0 + value, level.1 + 1);
            }
        }
    }
    let spread = (all.windows(2).map(|w| (w[1] - w[0]).powi(2)).sum::<f64>() / (2.0 * all.len() as f64)).sqrt();
    // Sums are over the difference to the level before the change.
    let level = level.0 / level.1.max(1) as f64;
    let scale = |(sum, n): &(f64, usize)| (sum - level * *n as f64) / (*n as f64).sqrt() / spread.max(1e-9);
    let scaled: Vec<f64> = by.values().map(scale).collect();
    let sums = CusumDesign { allowance: ALLOWANCE, interval: 0.0 }.sums(&scaled);
    by.iter()
        .zip(sums)
        .map(|((week, (sum, count)), sums)| WeekMean {
            week: week_name(*week),
            mean: sum / *count as f64,
            count: *count,
            sums,
        })
        .collect()
}

/// The effect's jobs, the furthest off first.
fn furthest(archive: &Archive, explored: &Explored, named: &Named) -> Vec<usize> {
    let mut jobs = named.jobs.clone();
    if let Some(column) = named.column.map(|i| &explored.columns[i]) {
        let size = |job: &usize| {
            let mark = archive.marks(*job).find(|m| m.key == column.key);
            mark.and_then(|m| m.deviation()).map_or(0.0, f64::abs)
        };
        if let What::Change(_, from) = named.what {
            jobs.retain(|j| archive.jobs[*j].seconds.is_some_and(|s| s >= from));
        }
        jobs.sort_by(|a, b| size(b).total_cmp(&size(a)));
    }
    jobs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slips_are_recognised() {
        let of = |stated, meant| slip(stated, meant, 10.0, "mm");
        assert_eq!(of(1050.0, 1503.0), Some("swapped"));
        assert_eq!(of(-35.0, 35.0), Some("sign"));
        assert_eq!(of(59.06, 1500.0), Some("inches"));
        assert_eq!(of(150.0, 1501.0), Some("point"));
        assert_eq!(of(1800.0, 1500.0), Some("digit"));
        assert_eq!(of(1500.0, 1537.0), None);
    }

    #[test]
    fn unix_time_falls_into_its_week() {
        // 20 July 2026 00:00 UTC is a Monday, ISO week 30.
        let day = (1_784_505_600i64.div_euclid(86_400) + UNIX_DAY).div_euclid(7);
        assert_eq!(week_name(day as i32), "2026-W30");
    }
}
