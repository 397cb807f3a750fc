//! The groups of an archive as a table.

use super::super::cell::table_cell;
use crate::record::TrendsRecord;

const COLUMNS: [&str; 12] = [
    "grouping",
    "name",
    "jobs",
    "within",
    "outside",
    "not_proven",
    "retake",
    "outside_share",
    "outside_low",
    "outside_high",
    "small",
    "stands_out",
];

/// One row for each group: counts, share outside with its 95 % interval.
pub fn trends_csv(record: &TrendsRecord) -> String {
    let mut table = csv::Writer::from_writer(Vec::new());
    // A vector takes every byte.
    let _ = table.write_record(COLUMNS);
    for (grouping, groups) in &record.groups {
        for g in groups {
            let [within, outside, not_proven, retake] = g.verdicts.map(|n| n.to_string());
            let row = [
                grouping.clone(),
                g.name.clone(),
                g.jobs.to_string(),
                within,
                outside,
                not_proven,
                retake,
                format!("{:.4}", g.outside),
                format!("{:.4}", g.interval[0]),
                format!("{:.4}", g.interval[1]),
                g.small.to_string(),
                g.stands_out.to_string(),
            ];
            let _ = table.write_record(row.map(table_cell));
        }
    }
    table.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}
