//! A fixed reference photographed again: has anything moved since its first survey?

use super::compose::survey;
use super::surveyed::{Options, Survey};
use super::{Error, SurveyPhoto};
use crate::camera::Profile;
use crate::marker::Kit;
use crate::shown::signed;
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

/// Beyond this many standard uncertainties a marker moved: with sixty
/// coordinates chance does that once in three hundred checks.
pub(super) const MOST_SIGMAS: f64 = 4.0;
/// Fewer points than this give no control limits worth acting on (common practice, no source).
pub(super) const ENOUGH_POINTS: usize = 8;
/// Individuals chart: limits from the mean moving range of two (Shewhart; ISO 7870-2).
const FACTOR: f64 = 2.66;

/// One check against the first survey.
#[derive(Debug, Clone, PartialEq)]
pub struct Recheck {
    /// Day, year-month-day.
    pub date: String,
    /// Markers compared.
    pub markers: usize,
    /// The marker that moved most against its carrier's others, and how far, mm.
    pub largest: (u32, f64),
    /// Largest move of a coordinate over the standard uncertainty of both surveys.
    pub sigmas: f64,
    /// Spacing of the markers over their printed sizes, against the first
    /// survey, percent: paper that grew makes it fall.
    pub spacing_percent: f64,
}

/// A figure's centre line and limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Mean.
    pub centre: f64,
    /// Mean plus and minus 2.66 mean moving ranges.
    pub limits: [f64; 2],
}

impl Recheck {
    /// Whether something moved for certain.
    pub fn moved(&self) -> bool {
        self.sigmas > MOST_SIGMAS
    }

    /// A line of the log.
    pub fn to_csv(&self) -> String {
        let (id, mm) = self.largest;
        format!("{},{},{id},{mm:.4},{:.3},{:.5}", self.date, self.markers, self.sigmas, self.spacing_percent)
    }

    /// The log's head.
    pub const HEAD: &'static str = "date,markers,marker,largest_mm,sigmas,spacing_percent";

    /// Reads a line of the log. `None` where it is none.
    pub fn from_csv(line: &str) -> Option<Recheck> {
        let cells: Vec<&str> = line.split(',').map(str::trim).collect();
        let [date, markers, marker, mm, sigmas, spacing] = cells.as_slice() else { return None };
        let number = |text: &str| text.parse::<f64>().ok().filter(|v| v.is_finite());
        Some(Recheck {
            date: (*date).to_owned(),
            markers: markers.parse().ok()?,
            largest: (marker.parse().ok()?, number(mm)?),
            sigmas: number(sigmas)?,
            spacing_percent: number(spacing)?,
        })
    }
}

/// Compares photos of a surveyed reference with its first survey.
///
/// # Errors
/// As [`survey`]; and a kit without layout.
pub fn recheck(
    first: &Kit,
    cameras: &[Profile],
    photos: &[SurveyPhoto],
    camera_named: bool,
    date: &str,
) -> Result<Recheck, Error> {
    if first.layout.is_none() {
        return Err(Error::NotMeasured(phrase!("fit-no-first-survey")));
    }
    let found = survey(first, cameras, photos, &Options { camera_named, ..Options::default() })?;
    let farthest = found.markers().max_by(|a, b| a.moved_mm.norm().total_cmp(&b.moved_mm.norm()));
    let sigmas = found
        .markers()
        .flat_map(|m| (0..3).map(|i| m.moved_mm[i].abs() / m.u_shape_mm[i].hypot(m.u_stated_mm[i]).max(1e-6)));
    Ok(Recheck {
        date: date.to_owned(),
        markers: found.markers().count(),
        largest: farthest.map_or((0, 0.0), |m| (m.id, m.moved_mm.norm())),
        sigmas: sigmas.fold(0.0, f64::max),
        spacing_percent: 100.0 * spacing(&found),
    })
}

/// Relative change of the markers' spacing.
fn spacing(found: &Survey) -> f64 {
    let (mut along, mut squares) = (0.0, 0.0);
    for carrier in &found.carriers {
        let n = carrier.markers.len() as f64;
        let mean = carrier.markers.iter().map(|m| m.stated_mm).sum::<nalgebra::Vector3<f64>>() / n;
        for marker in &carrier.markers {
            let arm = marker.stated_mm - mean;
            along += arm.dot(&marker.moved_mm);
            squares += arm.norm_squared();
        }
    }
    along / f64::max(squares, 1e-9)
}

/// Centre line and limits of the points before the last one, which is judged
/// by them. `None` with fewer than two of them.
pub(super) fn limits(values: &[f64]) -> Option<Limits> {
    let before = &values[..values.len().saturating_sub(1)];
    if before.len() < 2 {
        return None;
    }
    let centre = before.iter().sum::<f64>() / before.len() as f64;
    let ranges = before.windows(2).map(|p| (p[1] - p[0]).abs());
    let spread = FACTOR * ranges.sum::<f64>() / (before.len() - 1) as f64;
    Some(Limits { centre, limits: [centre - spread, centre + spread] })
}

/// What is said of the last of all checks; the second value: something is out.
pub fn recheck_words(all: &[Recheck], language: Language) -> (String, bool) {
    let Some(last) = all.last() else { return (String::new(), false) };
    let mut text = say!(
        language,
        "fit-recheck",
        day = Value::moment(&last.date),
        count = last.markers,
        marker = last.largest.0.to_string(),
        most = Figure::fixed(last.largest.1, 3),
        sigmas = Figure::fixed(last.sigmas, 1),
        spacing = signed(last.spacing_percent, 3, language),
    );
    text.push('\n');
    let mut out = last.moved();
    if out {
        text += &format!("{}\n", say!(language, "fit-recheck-moved"));
    }
    for Series { name, values, .. } in series(all) {
        let Some(found) = limits(&values).filter(|_| values.len() > ENOUGH_POINTS) else { continue };
        let value = values[values.len() - 1];
        if value < found.limits[0] || value > found.limits[1] {
            out = true;
            let [low, high] = found.limits.map(|l| Figure::fixed(l, 3));
            let value = Figure::fixed(value, 3);
            text += &say!(language, "fit-recheck-outside", name = name, value = value, low = low, high = high);
            text.push('\n');
        }
    }
    if !out {
        text += &format!("{}\n", say!(language, "fit-recheck-fine"));
    }
    (text, out)
}

/// A figure over all checks.
pub(super) struct Series {
    pub(super) name: Phrase,
    pub(super) values: Vec<f64>,
    /// Below nothing there is none of it.
    pub(super) never_negative: bool,
}

/// The figures that are charted.
pub(super) fn series(all: &[Recheck]) -> [Series; 2] {
    let of = |name, never_negative, value: fn(&Recheck) -> f64| Series {
        name: phrase!("fit-recheck-series", series = name),
        values: all.iter().map(value).collect(),
        never_negative,
    };
    [of("move", true, |r| r.largest.1), of("spacing", false, |r| r.spacing_percent)]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_are_those_of_an_individuals_chart() {
        // Moving ranges 2, 1, 3 about a mean of 11.25: 11.25 +- 2.66 x 2.
        let found = limits(&[10.0, 12.0, 13.0, 10.0, 99.0]).unwrap();
        assert!((found.centre - 11.25).abs() < 1e-12);
        assert!((found.limits[1] - (11.25 + 2.66 * 2.0)).abs() < 1e-12);
        assert!(limits(&[1.0, 2.0]).is_none());
    }

    #[test]
    fn a_jump_is_named_and_lines_survive_the_log() {
        let point = |i: usize, mm: f64| Recheck {
            date: format!("2026-01-{:02}", i + 1),
            markers: 6,
            largest: (3, mm),
            sigmas: 1.0,
            spacing_percent: 0.01 * (i % 2) as f64,
        };
        let mut all: Vec<Recheck> = (0..10).map(|i| point(i, 0.05 + 0.01 * (i % 3) as f64)).collect();
        assert!(!recheck_words(&all, Language::English).1);
        all.push(point(10, 0.4));
        let (text, out) = recheck_words(&all, Language::English);
        assert!(out && text.contains("control limits"), "{text}");
        assert_eq!(Recheck::from_csv(&all[10].to_csv()), Some(all[10].clone()));
        assert_eq!(Recheck::from_csv(Recheck::HEAD), None);
    }
}
