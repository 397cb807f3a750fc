//! One page for a repair order: its sensors, their attempts and where each
//! stands now.

use maud::{Markup, html};

use super::words;
use crate::record::JobRecord;
use crate::report::figures::moment;
use crate::report::html::symbol::tag;
use crate::report::html::{rendered, verdict_class, verdict_symbol, whole_page};
use crate::words::{Language, say};

/// A sensor with its attempts, the last one last.
struct Sensor<'a> {
    title: &'a str,
    attempts: Vec<&'a JobRecord>,
}

/// The jobs of each repair order that has several, in the order of the jobs.
pub fn by_series<'a>(records: &[&'a JobRecord]) -> Vec<(&'a str, Vec<&'a JobRecord>)> {
    let mut all: Vec<(&str, Vec<&JobRecord>)> = Vec::new();
    for &record in records {
        let Some(series) = record.context.series.as_deref() else { continue };
        match all.iter_mut().find(|(name, _)| *name == series) {
            Some((_, of_it)) => of_it.push(record),
            None => all.push((series, vec![record])),
        }
    }
    all.retain(|(_, of_it)| of_it.len() > 1);
    all
}

/// The name of a job's files: its number, and digits that tell jobs of one
/// number apart by their job files.
pub fn stem(record: &JobRecord) -> String {
    let own = record.inputs.iter().find(|i| i.role == "job").map_or("", |i| &i.sha256);
    format!("{}-{}", file_stem(&record.job), own.chars().take(8).collect::<String>())
}

/// A name of a job or a repair order as part of a file's name.
pub fn file_stem(name: &str) -> String {
    name.chars().map(|c| if c.is_ascii_alphanumeric() || "-_".contains(c) { c } else { '_' }).take(60).collect()
}

/// The page of all jobs of one repair order, in any order.
pub fn series_html(series: &str, records: &[&JobRecord], language: Language) -> String {
    // The page of the same jobs is the same bytes, in whichever order they are named.
    let mut records = records.to_vec();
    records.sort_by_cached_key(|record| (instant(record), stem(record)));
    let records = records.as_slice();
    let sensors = sensors(records);
    let title = say!(language, "customer-series", series = series);
    let body = html! {
        main {
            section.leaf {
                (rendered_jobs(records, language))
                h1 { (title) }
                p { (say!(language, "customer-why")) }
                (vehicle(records, language))
                h2 { (say!(language, "customer-stands-now")) }
                p.lede { (say!(language, "customer-last-counts")) }
                @for sensor in &sensors { (state(sensor, language)) }
                h2 { (say!(language, "customer-all-attempts")) }
                (table(&sensors, language))
                h2 { (say!(language, "customer-meaning")) }
                ul.plain {
                    li { (say!(language, "customer-series-only")) }
                    li { (say!(language, "customer-series-about")) }
                    li { (say!(language, "customer-series-own-page")) }
                    li { (say!(language, "customer-series-govern")) }
                }
                @if !language.is_proofread() { p.aside { (say!(language, "report-not-proofread")) } }
            }
        }
    };
    whole_page(&title, series, language, body)
}

/// The first line, where no camera took the photos of a job: of which, where others are of a camera.
fn rendered_jobs(records: &[&JobRecord], language: Language) -> Markup {
    let of_it: Vec<&JobRecord> = records.iter().copied().filter(|r| r.is_rendered()).collect();
    let Some(first) = of_it.first() else { return html! {} };
    html! {
        (rendered(first, language))
        @if of_it.len() < records.len() {
            ul.plain { @for record in of_it { li { (record.job) } } }
        }
    }
}

fn sensors<'a>(records: &[&'a JobRecord]) -> Vec<Sensor<'a>> {
    let mut sensors: Vec<Sensor> = Vec::new();
    for &record in records {
        let title = if record.sheet.title.is_empty() { &record.context.setup } else { &record.sheet.title };
        let same = |s: &&mut Sensor| s.attempts.iter().all(|r| r.context.setup == record.context.setup);
        match sensors.iter_mut().find(same) {
            Some(sensor) => sensor.attempts.push(record),
            None => sensors.push(Sensor { title, attempts: vec![record] }),
        }
    }
    for sensor in &mut sensors {
        // Numbers first; a job without one is older than those that have one.
        sensor.attempts.sort_by_key(|r| (r.context.attempt, instant(r)));
    }
    sensors
}

/// Seconds since 1970 of the job's time, for ordering across offsets.
fn instant(record: &JobRecord) -> Option<i64> {
    use time::{OffsetDateTime, format_description::well_known::Rfc3339};
    let taken = record.context.taken.as_deref()?;
    OffsetDateTime::parse(taken, &Rfc3339).ok().map(OffsetDateTime::unix_timestamp)
}

/// Whether the order of the last two can't be told.
fn ambiguous(sensor: &Sensor) -> bool {
    let key = |r: &JobRecord| (r.context.attempt, instant(r));
    matches!(sensor.attempts.as_slice(), [.., a, b] if key(a) == key(b))
}

fn vehicle(records: &[&JobRecord], language: Language) -> Markup {
    let mut all: Vec<&str> = records.iter().filter_map(|r| r.context.vehicle.as_deref()).collect();
    all.extend(records.iter().filter_map(|r| r.context.vin.as_deref()));
    let mut named: Vec<&str> = Vec::new();
    for name in all {
        if !named.contains(&name) {
            named.push(name);
        }
    }
    html! { @if !named.is_empty() { p { (say!(language, "customer-series-vehicle", vehicle = named.join(", "))) } } }
}

fn state(sensor: &Sensor, language: Language) -> Markup {
    let Some(last) = sensor.attempts.last() else { return html! {} };
    html! {
        div class={ "verdict " (verdict_class(last.verdict)) } {
            (verdict_symbol(last.verdict))
            div {
                h3 { (sensor.title) }
                p { strong { (words::answer(last.verdict, language)) } " " (attempt(last, language)) }
                @if ambiguous(sensor) {
                    p { strong { (say!(language, "customer-which-last")) } " " (say!(language, "customer-number-them")) }
                }
            }
        }
    }
}

fn attempt(record: &JobRecord, language: Language) -> String {
    say!(
        language,
        "customer-attempt-line",
        numbered = if record.context.attempt.is_some() { "yes" } else { "no" },
        number = record.context.attempt.unwrap_or_default().to_string(),
        job = &record.job,
        photos = record.photos.len()
    )
}

fn table(sensors: &[Sensor], language: Language) -> Markup {
    let columns = [
        say!(language, "customer-sensor"),
        say!(language, "customer-attempt"),
        say!(language, "customer-job"),
        say!(language, "customer-photos-taken"),
        say!(language, "customer-verdict"),
    ];
    let taken = |record: &JobRecord| match record.context.taken.as_deref() {
        Some(taken) => moment(taken, language),
        None => say!(language, "customer-not-stated"),
    };
    html! {
        table.stack {
            thead { tr { @for name in &columns { th scope="col" { (name) } } } }
            tbody {
                @for sensor in sensors { @for record in &sensor.attempts {
                    tr class=(verdict_class(record.verdict)) {
                        th scope="row" { (sensor.title) }
                        td data-k=(columns[1]) { (record.context.attempt.map_or("–".to_owned(), |n| n.to_string())) }
                        td data-k=(columns[2]) { (record.job) }
                        td data-k=(columns[3]) { (taken(record)) }
                        td data-k=(columns[4]) { (tag(record.verdict, language)) }
                    }
                } }
            }
        }
    }
}
