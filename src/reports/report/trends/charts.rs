//! Charts over time: shares by week, single values, an effect by week.

use maud::{Markup, html};

use super::draw::{Axis, Point, over_time, some_labels};
use super::lists;
use super::words::{quantity_words, short};
use crate::record::{ChartRecord, EffectRecord, TrendsRecord};
use crate::words::{Language, say};

/// Weeks drawn: the latest.
const MOST_WEEKS: usize = 104;

/// The share outside by week with its limits.
pub(super) fn weeks(record: &TrendsRecord, language: Language) -> Markup {
    let none = Vec::new();
    let all = record.groups.get("week").unwrap_or(&none);
    let skipped = all.len().saturating_sub(MOST_WEEKS);
    let weeks = &all[skipped..];
    let series: Vec<Point> = weeks
        .iter()
        .enumerate()
        .map(|(i, w)| Point {
            value: w.outside,
            limits: w.limits,
            name: say!(language, "trends-week-point", week = &w.name, outside = w.verdicts[1], count = w.jobs),
            link: Some(format!("#week-{i}")),
            out: w.limits.is_some_and(|[low, high]| w.outside < low || w.outside > high),
        })
        .collect();
    let (outside, jobs) = all.iter().fold((0, 0), |(a, b), w| (a + w.verdicts[1], b + w.jobs));
    let names: Vec<String> = weeks.iter().map(|w| w.name.clone()).collect();
    html! {
        section {
            h2 { (say!(language, "trends-weeks-title")) }
            @if weeks.len() < 2 { p { (say!(language, "trends-weeks-few")) } } @else {
                p.aside { (say!(language, "trends-weeks-note")) }
                @let mean = say!(language, "trends-mean");
                @let across = [(outside as f64 / jobs.max(1) as f64, "ref", mean.as_str())];
                (over_time(&say!(language, "trends-weeks-chart"), &series, &across, Axis::Percent, &some_labels(&names), language))
                @for (i, w) in weeks.iter().enumerate() {
                    (lists::jobs(record, &format!("week-{i}"), &w.name, &w.linked, w.jobs, language))
                }
            }
        }
    }
}

/// Single values and moving ranges, the latest first attempts.
pub(super) fn individuals(record: &TrendsRecord, language: Language) -> Markup {
    html! {
        section {
            h2 { (say!(language, "trends-jobs-title")) }
            p.aside { (say!(language, "trends-jobs-note")) }
            @for chart in &record.charts { (individual(record, chart, language)) }
        }
    }
}

fn individual(record: &TrendsRecord, chart: &ChartRecord, language: Language) -> Markup {
    let job = |i: usize| record.jobs.get(chart.linked[i]);
    let point = |i: usize, value: f64, out: bool| {
        let name = job(i).map_or("", |job| job.job.as_str());
        Point {
            value,
            limits: None,
            name: say!(language, "trends-point", name = name, value = short(value)),
            link: job(i).map(|job| lists::href(job.report.as_ref().unwrap_or(&job.result))),
            out,
        }
    };
    let [centre, low, high] = chart.limits;
    let values: Vec<Point> =
        chart.values.iter().enumerate().map(|(i, v)| point(i, *v, *v < low || *v > high)).collect();
    let [mean, most] = chart.range_limits;
    let range = |(i, w): (usize, &[f64])| {
        let range = (w[1] - w[0]).abs();
        point(i + 1, range, range > most)
    };
    let ranges: Vec<Point> = chart.values.windows(2).enumerate().map(range).collect();
    let [mean_word, limit, tolerance, mean_range] = [
        say!(language, "trends-mean"),
        say!(language, "trends-limit"),
        say!(language, "trends-tolerance"),
        say!(language, "trends-mean-range"),
    ];
    let across = [
        (centre, "ref", mean_word.as_str()),
        (low, "lim", limit.as_str()),
        (high, "lim", limit.as_str()),
        (1.0, "tol", tolerance.as_str()),
        (-1.0, "tol", tolerance.as_str()),
    ];
    let across_ranges = [(mean, "ref", mean_range.as_str()), (most, "lim", limit.as_str())];
    html! {
        details {
            summary {
                (quantity_words(&chart.quantity).say(language)) " "
                small { (say!(language, "trends-latest", shown = chart.values.len(), count = chart.of)) }
            }
            (over_time(&say!(language, "trends-single-values"), &values, &across, Axis::Tolerances, &[], language))
            (over_time(&say!(language, "trends-moving-ranges"), &ranges, &across_ranges, Axis::Tolerances, &[], language))
        }
    }
}

/// An effect's means by week, and for a change their cumulative sums.
pub(super) fn effect(record: &TrendsRecord, effect: &EffectRecord, language: Language) -> Markup {
    if effect.weeks.len() < 4 {
        return html! {};
    }
    let weeks = &effect.weeks[effect.weeks.len().saturating_sub(MOST_WEEKS)..];
    let names: Vec<String> = weeks.iter().map(|w| w.week.clone()).collect();
    let means: Vec<Point> = weeks
        .iter()
        .map(|w| Point {
            value: w.mean,
            limits: None,
            name: say!(language, "trends-week-mean", week = &w.week, mean = short(w.mean), count = w.count),
            link: None,
            out: effect.since_week.as_ref().is_some_and(|since| w.week >= *since),
        })
        .collect();
    let interval = record.weekly_chart.interval;
    let sums: Vec<Point> = weeks
        .iter()
        .map(|w| {
            let largest = w.sums[0].max(w.sums[1]);
            Point {
                value: largest.min(4.0 * interval),
                limits: None,
                name: say!(language, "trends-point", name = &w.week, value = short(largest)),
                link: None,
                out: largest > interval,
            }
        })
        .collect();
    let against = if effect.factor == "setup" { "nominal" } else { "others" };
    let level = say!(language, "trends-level", against = against);
    let interval_word = say!(language, "trends-decision-interval");
    let changed = if effect.since_week.is_some() { "yes" } else { "no" };
    let labels = some_labels(&names);
    html! {
        p.aside { (say!(language, "trends-effect-weeks", against = against, changed = changed)) }
        (over_time(&say!(language, "trends-effect-chart"), &means, &[(0.0, "ref", level.as_str())], Axis::Tolerances, &labels, language))
        @if effect.since_week.is_some() {
            p.aside { (say!(language, "trends-sums-note")) }
            (over_time(&say!(language, "trends-sums-chart"), &sums, &[(interval, "lim", interval_word.as_str())], Axis::Tolerances, &labels, language))
        }
    }
}
