//! Charts over time: shares by week, single values, an effect by week.

use maud::{Markup, html};

use super::draw::{Axis, Point, over_time, some_labels};
use super::lists;
use super::words::{quantity_label, short};
use crate::record::{EffectRecord, TrendsRecord};

/// Weeks drawn: the latest.
const MOST_WEEKS: usize = 104;

/// The share outside by week with its limits.
pub(super) fn weeks(record: &TrendsRecord) -> Markup {
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
            name: format!("{}: {} of {} outside", w.name, w.verdicts[1], w.jobs),
            link: Some(format!("#week-{i}")),
            out: w.limits.is_some_and(|[low, high]| w.outside < low || w.outside > high),
        })
        .collect();
    let (outside, jobs) = all.iter().fold((0, 0), |(a, b), w| (a + w.verdicts[1], b + w.jobs));
    let names: Vec<String> = weeks.iter().map(|w| w.name.clone()).collect();
    html! {
        section {
            h2 { "Week by week" }
            @if weeks.len() < 2 { p { "Too few weeks, or no job states its time." } } @else {
                p.aside { "Share of jobs outside; limits at three standard deviations of the week's number of jobs. Beyond them: squares." }
                (over_time("Share outside by week", &series, &[(outside as f64 / jobs.max(1) as f64, "ref", "mean")], Axis::Percent, &some_labels(&names)))
                @for (i, w) in weeks.iter().enumerate() {
                    (lists::jobs(record, &format!("week-{i}"), &format!("{}:", w.name), &w.linked, w.jobs))
                }
            }
        }
    }
}

/// Single values and moving ranges, the latest first attempts.
pub(super) fn individuals(record: &TrendsRecord) -> Markup {
    html! {
        section {
            h2 { "Job by job" }
            p.aside { "(value - nominal) / tolerance of the latest first attempts, and the differences between neighbours below; limits from the mean moving range (2.660 and 3.267 times it). Beyond them: squares. Each point leads to its job." }
            @for chart in &record.charts {
                @let link = |i: usize| record.jobs.get(chart.linked[i]).map(|job| lists::href(job.report.as_ref().unwrap_or(&job.result)));
                @let name = |i: usize| record.jobs.get(chart.linked[i]).map_or(String::new(), |job| job.job.clone());
                @let [centre, low, high] = chart.limits;
                @let values: Vec<Point> = chart.values.iter().enumerate().map(|(i, v)| Point {
                    value: *v, limits: None, name: format!("{}: {}", name(i), short(*v)), link: link(i), out: *v < low || *v > high,
                }).collect();
                @let [mean, most] = chart.range_limits;
                @let ranges: Vec<Point> = chart.values.windows(2).enumerate().map(|(i, w)| {
                    let range = (w[1] - w[0]).abs();
                    Point { value: range, limits: None, name: format!("{}: {}", name(i + 1), short(range)), link: link(i + 1), out: range > most }
                }).collect();
                details {
                    summary { (quantity_label(&chart.quantity).full()) small { " the latest " (chart.values.len()) " of " (chart.of) } }
                    (over_time("Single values", &values, &[(centre, "ref", "mean"), (low, "lim", "limit"), (high, "lim", "limit"), (1.0, "tol", "tolerance"), (-1.0, "tol", "tolerance")], Axis::Tolerances, &[]))
                    (over_time("Moving ranges", &ranges, &[(mean, "ref", "mean range"), (most, "lim", "limit")], Axis::Tolerances, &[]))
                }
            }
        }
    }
}

/// An effect's means by week, and for a change their cumulative sums.
pub(super) fn effect(record: &TrendsRecord, effect: &EffectRecord) -> Markup {
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
            name: format!("{}: {} in {} jobs", w.week, short(w.mean), w.count),
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
                name: format!("{}: {}", w.week, short(largest)),
                link: None,
                out: largest > interval,
            }
        })
        .collect();
    html! {
        p.aside { @if effect.factor == "setup" { "Mean by week, tolerances" } @else { "Mean by week against the others, tolerances" } @if effect.since_week.is_some() { "; squares: since the change" } "." }
        (over_time("Mean by week", &means, &[(0.0, "ref", if effect.factor == "setup" { "nominal" } else { "the others" })], Axis::Tolerances, &some_labels(&names)))
        @if effect.since_week.is_some() {
            p.aside { "Cumulative sum of the weekly means against the level before, the larger of both sides, drawn up to four intervals." }
            (over_time("Cumulative sums", &sums, &[(interval, "lim", "interval")], Axis::Tolerances, &some_labels(&names)))
        }
    }
}
