//! Gauge repeatability and reproducibility: how much of the spread of readings
//! comes from the instrument and the people, how much from the parts
//! (AIAG, Measurement Systems Analysis, 4th edition, chapter III).

use crate::words::{Phrase, phrase};

/// One reading; operators and parts by their index.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Who.
    pub operator: usize,
    /// What.
    pub part: usize,
    /// What was read.
    pub value: f64,
}

/// How the spread was divided.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GaugeMethod {
    /// From ranges and averages, with the handbook's constants.
    AverageAndRange,
    /// Analysis of variance, the interaction pooled where it is not significant.
    Anova,
}

/// The result, all as standard deviations.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GaugeStudy {
    /// How it was found.
    pub method: GaugeMethod,
    /// Repeatability (EV).
    pub repeatability: f64,
    /// Reproducibility (AV), with the interaction where that is significant.
    pub reproducibility: f64,
    /// Parts (PV).
    pub parts: f64,
}

impl GaugeStudy {
    /// Repeatability and reproducibility together (GRR).
    pub fn gauge(&self) -> f64 {
        self.repeatability.hypot(self.reproducibility)
    }

    /// The whole spread (TV).
    pub fn total(&self) -> f64 {
        self.gauge().hypot(self.parts)
    }

    /// GRR over the whole spread, percent.
    pub fn percent(&self) -> f64 {
        100.0 * self.gauge() / self.total()
    }

    /// Whether the readings scatter between trials or people beyond rounding. If not, what was
    /// written down is coarser than the gauge, and nothing is known of it.
    pub fn tells(&self) -> bool {
        /// Above what sums of squares lose in double precision (half of its 16 digits), far below any gauge.
        const ROUNDING: f64 = 1e-6;
        self.gauge() > ROUNDING * self.total()
    }

    /// Number of distinct categories: parts that the gauge can tell apart; none where the
    /// readings do not tell (see [`GaugeStudy::tells`]).
    pub fn categories(&self) -> Option<usize> {
        self.tells().then(|| (2f64.sqrt() * self.parts / self.gauge()).floor().max(1.0) as usize)
    }
}

/// 1 / d2 of the range of 2 to 5 trials.
const K1: [f64; 4] = [0.8862, 0.5908, 0.4857, 0.4299];
/// 1 / d2* of a single range of 2 to 10 averages.
const K2: [f64; 9] = [std::f64::consts::FRAC_1_SQRT_2, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146];
/// An interaction that chance makes as large more often than this is pooled (AIAG).
const POOLED_FROM: f64 = 0.25;

/// Readings as a full table: every operator measured every part equally often.
struct Table {
    /// By operator, part and trial.
    values: Vec<Vec<Vec<f64>>>,
    trials: usize,
}

impl Table {
    fn new(readings: &[Reading]) -> Result<Table, Phrase> {
        let count = |f: fn(&Reading) -> usize| readings.iter().map(f).max().map_or(0, |m| m + 1);
        let (operators, parts) = (count(|r| r.operator), count(|r| r.part));
        let mut values = vec![vec![Vec::new(); parts]; operators];
        for r in readings {
            values[r.operator][r.part].push(r.value);
        }
        let trials = values.first().and_then(|o| o.first()).map_or(0, Vec::len);
        if operators < 2 || parts < 2 || trials < 2 {
            return Err(phrase!("doors-gauge-too-few", operators = operators, parts = parts, trials = trials));
        }
        if values.iter().flatten().any(|cell| cell.len() != trials) {
            return Err(phrase!("doors-gauge-uneven"));
        }
        Ok(Table { values, trials })
    }

    fn sizes(&self) -> [f64; 3] {
        [self.values.len() as f64, self.values[0].len() as f64, self.trials as f64]
    }

    fn part(&self, part: usize) -> Vec<f64> {
        self.values.iter().flat_map(|o| o[part].iter().copied()).collect()
    }

    fn operator(&self, operator: usize) -> Vec<f64> {
        self.values[operator].iter().flatten().copied().collect()
    }
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

fn range(values: &[f64]) -> f64 {
    let (low, high) = values.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), v| (a.min(*v), b.max(*v)));
    high - low
}

/// Divides the spread of readings.
///
/// # Errors
/// Fewer than two operators, parts or trials, an incomplete table, or for
/// [`GaugeMethod::AverageAndRange`] more than the handbook has constants for.
pub fn gauge_study(readings: &[Reading], method: GaugeMethod) -> Result<GaugeStudy, Phrase> {
    let table = Table::new(readings)?;
    match method {
        GaugeMethod::AverageAndRange => average_and_range(&table),
        GaugeMethod::Anova => Ok(anova(&table)),
    }
}

fn average_and_range(table: &Table) -> Result<GaugeStudy, Phrase> {
    let [operators, parts, trials] = table.sizes();
    let constant = |all: &[f64], n: f64, what: &str| {
        all.get(n as usize - 2).copied().ok_or_else(|| phrase!("doors-gauge-constant", of = what, count = n as usize))
    };
    let ranges: Vec<f64> = table.values.iter().flatten().map(|cell| range(cell)).collect();
    let repeatability = mean(&ranges) * constant(&K1, trials, "trials")?;
    let means: Vec<f64> = (0..operators as usize).map(|o| mean(&table.operator(o))).collect();
    let between = range(&means) * constant(&K2, operators, "operators")?;
    let noise = repeatability * repeatability / (parts * trials);
    let means: Vec<f64> = (0..parts as usize).map(|p| mean(&table.part(p))).collect();
    Ok(GaugeStudy {
        method: GaugeMethod::AverageAndRange,
        repeatability,
        reproducibility: (between * between - noise).max(0.0).sqrt(),
        parts: range(&means) * constant(&K2, parts, "parts")?,
    })
}

fn anova(table: &Table) -> GaugeStudy {
    let [operators, parts, trials] = table.sizes();
    let all: Vec<f64> = table.values.iter().flatten().flatten().copied().collect();
    let grand = mean(&all);
    let squares = |values: &[f64], about: f64| values.iter().map(|v| (v - about).powi(2)).sum::<f64>();
    let part_means: Vec<f64> = (0..parts as usize).map(|p| mean(&table.part(p))).collect();
    let operator_means: Vec<f64> = (0..operators as usize).map(|o| mean(&table.operator(o))).collect();
    let of_parts = squares(&part_means, grand) * operators * trials;
    let of_operators = squares(&operator_means, grand) * parts * trials;
    let within: f64 = table.values.iter().flatten().map(|cell| squares(cell, mean(cell))).sum();
    let interaction = squares(&all, grand) - of_parts - of_operators - within;
    let free = [parts - 1.0, operators - 1.0, (parts - 1.0) * (operators - 1.0), parts * operators * (trials - 1.0)];
    let (ms_parts, ms_operators) = (of_parts / free[0], of_operators / free[1]);
    let (ms_both, ms_within) = (interaction / free[2], within / free[3]);
    let significant = super::fisher_tail(ms_both / ms_within.max(f64::MIN_POSITIVE), free[2], free[3]) < POOLED_FROM;
    let (error, against) = if significant {
        (ms_within, ms_both)
    } else {
        let pooled = (interaction + within) / (free[2] + free[3]);
        (pooled, pooled)
    };
    let operator = ((ms_operators - against) / (parts * trials)).max(0.0);
    let both = if significant { ((ms_both - ms_within) / trials).max(0.0) } else { 0.0 };
    GaugeStudy {
        method: GaugeMethod::Anova,
        // Rounding may leave less than nothing of no scatter.
        repeatability: error.max(0.0).sqrt(),
        reproducibility: (operator + both).sqrt(),
        parts: ((ms_parts - against) / (operators * trials)).max(0.0).sqrt(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// AIAG, Measurement Systems Analysis, 4th edition, table III-B 1: three
    /// appraisers, three trials, ten parts. Compared figure by figure with table 1 of
    /// W. McNeese, Three Methods to Analyze Gage R&R Studies (2015), which reprints it.
    const WORKED: [[f64; 10]; 9] = [
        [0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36],
        [0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25],
        [0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31],
        [0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68],
        [0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62],
        [0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50],
        [0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49],
        [-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77],
        [-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16],
    ];

    fn worked() -> Vec<Reading> {
        let row = |(i, row): (usize, &[f64; 10])| {
            let one = move |(part, value): (usize, &f64)| Reading { operator: i / 3, part, value: *value };
            row.iter().enumerate().map(one).collect::<Vec<_>>()
        };
        WORKED.iter().enumerate().flat_map(row).collect()
    }

    #[test]
    fn worked_example_of_the_handbook() {
        // Expected: McNeese 2015, which gives both methods' results for these data.
        let near = |found: f64, published: f64, last_digit: f64| (found - published).abs() < 0.6 * last_digit;
        let ranges = gauge_study(&worked(), GaugeMethod::AverageAndRange).unwrap();
        assert!(near(ranges.repeatability, 0.202, 1e-3) && near(ranges.reproducibility, 0.230, 1e-3));
        assert!(near(ranges.gauge(), 0.306, 1e-3) && near(ranges.total(), 1.146, 1e-3));
        assert!(near(100.0 * ranges.repeatability / ranges.total(), 17.61, 1e-2));
        assert!((ranges.percent() - 26.68).abs() < 0.02, "{}", ranges.percent());
        assert!((ranges.repeatability - 0.20188).abs() < 1e-4 && (ranges.reproducibility - 0.22963).abs() < 1e-4);
        assert_eq!(ranges.categories(), Some(5));
        let anova = gauge_study(&worked(), GaugeMethod::Anova).unwrap();
        // Variances: equipment .0400 with the interaction pooled, appraisers .0515, both .0914, parts 1.086.
        assert!(near(anova.repeatability.powi(2), 0.0400, 1e-4) && near(anova.reproducibility.powi(2), 0.0515, 1e-4));
        assert!(near(anova.gauge().powi(2), 0.0914, 1e-4) && near(anova.parts.powi(2), 1.086, 1e-3));
        assert!((anova.percent() - 27.86).abs() < 0.02, "{}", anova.percent());
        assert!((anova.repeatability - 0.199933).abs() < 1e-4, "{}", anova.repeatability);
        assert_eq!(anova.categories(), Some(4));
    }

    #[test]
    fn readings_that_never_scatter_tell_nothing_of_the_gauge() {
        for scatter in [0.0, 0.25] {
            let reading = |i: usize| {
                let (operator, part, trial) = (i / 6, i / 2 % 3, i % 2);
                Reading { operator, part, value: 0.7 + 0.1 * part as f64 + scatter * trial as f64 }
            };
            let readings: Vec<Reading> = (0..12).map(reading).collect();
            for method in [GaugeMethod::AverageAndRange, GaugeMethod::Anova] {
                let study = gauge_study(&readings, method).unwrap();
                assert_eq!(study.tells(), scatter > 0.0, "{method:?}");
                assert_eq!(study.categories().is_some(), scatter > 0.0, "{method:?}");
            }
        }
    }

    #[test]
    fn an_incomplete_table_is_refused() {
        let mut readings = worked();
        readings.pop();
        let error = gauge_study(&readings, GaugeMethod::Anova).unwrap_err();
        assert_eq!(error.key, "doors-gauge-uneven");
        assert_eq!(gauge_study(&[], GaugeMethod::Anova).unwrap_err().key, "doors-gauge-too-few");
    }
}
