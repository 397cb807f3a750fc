//! A sealed result beside what the masked photos of its copy measure.
//!
//! Masked photos give nearly the same values, and sentences with other figures in them. So values are compared to a
//! share of their uncertainties, whatever follows from a recorded value is made again from that, and whatever the job's
//! own files say has to be there as it is. What goes by whole photos, their bytes or their own records is not compared.

use super::compared::{
    another_program, checks, difference, files_differ, found_otherwise, near, of_check, part, shown,
};
use super::own_figures::{claims, contradictions, estimate, pairs, stated};
use crate::folder::{InputFile, JobFolder, Origin};
use crate::quantity::Estimate;
use crate::record::{CheckRecord, FindingRecord, JobRecord, Level, MeasuredRecord, ReadingRecord, Tool};
use crate::setup::Decision;
use crate::words::{Phrase, Value, phrase};

/// Values of masked photos agree with the recorded ones to so many standard uncertainties. Most move by a tenth of one,
/// those of photos of the night, whose markers are found by what is around them too, by up to 0.8.
pub const MASKED_AGREE_U: f64 = 2.0;
/// Their uncertainties agree to this share of themselves; they were seen to change by a twentieth. So do coverage
/// factors, and the shares of a budget to this much of the whole.
const MASKED_AGREE_OF_U: f64 = 0.25;
const NEAR: [f64; 2] = [MASKED_AGREE_U, MASKED_AGREE_OF_U];
/// A reading's normalized error moves with the photos' value, by up to this where that moves by [`MASKED_AGREE_U`].
const NEAR_E_N: f64 = 1.0;
/// Findings that go by a photo's bytes, or by its own record, which masking takes away.
const OF_WHOLE_PHOTOS: [&str; 3] = ["photo-edited", "photo-rendered", "credentials-lacking"];
/// One view given twice is seen in masked photos too. Of a stand that was moved before a camera that stayed, times in
/// the photos' own records may have shown that there are two.
const REUSED: &str = "photo-reused";

/// In what a sealed result differs from the files beside it that are whole in a copy: set-up sheet, kit, camera and the
/// other inputs by their digests, photos and attachments by their names.
pub(super) fn inputs_differ(recorded: &JobRecord, folder: &JobFolder) -> Vec<Phrase> {
    let named = |role: &str, file: &str, sha256: &str| format!("{role} {file} {sha256}");
    let of_file = |f: &InputFile| named(f.role, &f.name, &f.sha256);
    let candidates: Vec<String> = folder.candidates.iter().map(|c| of_file(&c.input)).collect();
    let mut now: Vec<String> = folder.inputs.iter().map(of_file).collect();
    now.extend(folder.photos.iter().map(|photo| named("photo", &photo.name, "")));
    now.extend(folder.attachments.iter().map(|attached| named("attachment", &attached.name, "")));
    let mut was = Vec::new();
    for input in &recorded.inputs {
        let left_out = ["photo", "attachment"].contains(&input.role.as_str());
        let one = named(&input.role, &input.file, if left_out { "" } else { &input.sha256 });
        // Which of the cameras there were chosen is compared as the photos' cameras.
        if !(input.role == "camera" && candidates.contains(&one)) {
            was.push(one);
        }
    }
    was.sort();
    now.sort();
    let kept = |role: &str, file: &str| {
        recorded.inputs.iter().find(|i| i.role == role && i.file == file).map(|i| i.sha256.as_str())
    };
    let mut found = Vec::new();
    if was != now {
        found.push(difference(part("inputs"), was.join(", ").into(), now.join(", ").into()));
    }
    if found.is_empty() && recorded.tool.is_like(&Tool::this()) {
        let read = || folder.inputs.iter().chain(folder.candidates.iter().map(|c| &c.input));
        found.extend(found_otherwise(recorded, |n| {
            let was = &recorded.inputs[n];
            let same = |f: &&InputFile| (f.role, &f.name, &f.sha256) == (was.role.as_str(), &was.file, &was.sha256);
            read().find(same).is_some_and(|f| f.origin != Origin::Job)
        }));
    }
    for attached in &recorded.attachments {
        if kept("attachment", &attached.file) != Some(&attached.sha256) {
            let listed = kept("attachment", &attached.file).unwrap_or_default();
            found.push(difference(part("inputs"), (&attached.sha256).into(), listed.into()));
        }
    }
    found
}

/// In what a sealed result differs from what the job's own files say, and from what follows from its own figures,
/// where the photos cannot be measured again: the cameras are not known.
pub(super) fn unmeasured(recorded: &JobRecord, now: &JobRecord, decision: &Decision) -> Vec<Phrase> {
    let older = !recorded.tool.is_like(&now.tool);
    let mut found = of_files(recorded, now, &["cameras"]);
    if found.is_empty() {
        found = contradictions(recorded, now, decision, older);
    }
    if recorded.context.cameras.is_empty() && recorded.verdict != now.verdict {
        found.push(difference(part("verdict"), recorded.verdict.name().into(), now.verdict.name().into()));
    }
    found
}

/// In what a sealed result differs from what its masked photos measure.
pub fn differences(recorded: &JobRecord, now: &JobRecord, decision: &Decision) -> Vec<Phrase> {
    let older = !recorded.tool.is_like(&now.tool);
    let mut found = of_files(recorded, now, &[]);
    if checks(recorded) != checks(now) {
        return found;
    }
    let with_and_without = |record: &JobRecord| record.checks_without_readings.as_ref().map(Vec::len);
    if with_and_without(recorded) != with_and_without(now) && !older {
        found.push(difference(part("checks"), counted(recorded), counted(now)));
    }
    for (a, b) in pairs(recorded, now) {
        found.extend(check_differs(a, b, older));
    }
    found.extend(quantities_differ(recorded, now, older));
    found.extend(contradictions(recorded, now, decision, older));
    found.extend(readings_differ(recorded, now));
    found.extend(findings_differ(recorded, now, older));
    found
}

/// What the job's own files say, and what it asks for.
fn of_files(recorded: &JobRecord, now: &JobRecord, but_for: &[&str]) -> Vec<Phrase> {
    let mut without = but_for.to_vec();
    if now.context.taken.is_none() {
        // When it was taken, and with it whether the kit's survey was overdue, may come from a photo's own record.
        without.extend(["taken", "kit_upkeep"]);
    }
    if !recorded.tool.is_like(&now.tool) {
        // What a record lacks is looked for by other rules.
        without.push("record_complete");
    }
    let mut found = files_differ(recorded, now, &without);
    found.extend(another_program(recorded, now));
    let mut differ = |what, a: String, b: String| {
        if a != b {
            found.push(difference(part(what), a.into(), b.into()));
        }
    };
    differ("job", recorded.job.clone(), now.job.clone());
    differ("checks", checks(recorded), checks(now));
    let photos = |r: &JobRecord| {
        r.photos.iter().map(|p| format!("{} {:?} {:?}", p.file, p.step, p.phase)).collect::<Vec<_>>().join(", ")
    };
    differ("photos", photos(recorded), photos(now));
    let kept =
        |r: &JobRecord| r.attachments.iter().map(|a| format!("{} {}", a.kind, a.file)).collect::<Vec<_>>().join(", ");
    differ("attachments", kept(recorded), kept(now));
    found
}

fn counted(record: &JobRecord) -> Value {
    let without = record.checks_without_readings.as_ref().map_or(0, Vec::len);
    format!("{} + {without}", record.checks.len()).into()
}

/// The same check measured by masked photos.
fn check_differs(a: &CheckRecord, b: &CheckRecord, older: bool) -> Vec<Phrase> {
    let mut found = Vec::new();
    let mut differ = |what: Value, a: Value, b: Value| found.push(difference(what, a, b));
    // A reading is in the job file, and no photo moves it.
    let share = if b.evidence == "reading" { [super::AGREE_U; 2] } else { NEAR };
    if !near(of_check(a), of_check(b), share) {
        differ((&a.quantity).into(), shown(a.value), shown(b.value));
    } else if !factors_agree(estimate(a), estimate(b)) {
        differ((&a.quantity).into(), shown(a.degrees_of_freedom), shown(b.degrees_of_freedom));
    }
    let lost = |code: &&String| !a.untrusted.contains(*code) && !OF_WHOLE_PHOTOS.contains(&code.as_str());
    if let Some(code) = b.untrusted.iter().find(lost).filter(|_| claims(a.verdict) && !older) {
        differ((&a.quantity).into(), phrase!("evidence-nothing").into(), code.into());
    }
    let of = |check: &CheckRecord, source: &str| {
        check.budget.iter().filter(|line| line.source == source).map(|line| line.share).sum::<f64>()
    };
    for line in a.budget.iter().chain(&b.budget).filter(|_| !older) {
        let (was, is) = (of(a, &line.source), of(b, &line.source));
        if (was - is).abs() > MASKED_AGREE_OF_U {
            differ(part("budget"), shown(Some(was)), shown(Some(is)));
            break;
        }
    }
    found
}

/// Two values are as many standard uncertainties wide.
fn factors_agree(a: Option<Estimate>, b: Option<Estimate>) -> bool {
    let (a, b) = (a.map(|e| e.coverage_factor()), b.map(|e| e.coverage_factor()));
    a.zip(b).is_none_or(|(a, b)| (a - b).abs() <= MASKED_AGREE_OF_U * b)
}

fn quantities_differ(recorded: &JobRecord, now: &JobRecord, older: bool) -> Vec<Phrase> {
    let of = |m: &MeasuredRecord| stated(m.value, m.standard_uncertainty, m.degrees_of_freedom);
    let figures = |m: Option<&MeasuredRecord>| m.map(|m| (m.value, m.standard_uncertainty));
    let keys = recorded.measured.keys().chain(now.measured.keys().filter(|key| !recorded.measured.contains_key(*key)));
    keys.filter_map(|key| {
        let (a, b) = (recorded.measured.get(key), now.measured.get(key));
        // Another version of the program knew fewer quantities.
        let unknown = older && a.is_none();
        let same = near(figures(a), figures(b), NEAR)
            && factors_agree(a.map(of), b.map(of))
            && a.map(|m| &m.unit) == b.map(|m| &m.unit);
        let value = |m: Option<&MeasuredRecord>| shown(m.map(|m| m.value));
        (!same && !unknown).then(|| difference(key.into(), value(a), value(b)))
    })
    .collect()
}

/// Readings are the job file's; what the photos say of them is compared as other values are.
fn readings_differ(recorded: &JobRecord, now: &JobRecord) -> Vec<Phrase> {
    let typed = |r: &ReadingRecord| {
        let (value, u) = (r.value, r.standard_uncertainty);
        format!("{} {:?} {} {value} {u} {:?} {}", r.quantity, r.from, r.unit, r.instrument, r.used)
    };
    let all = |record: &JobRecord| record.readings.iter().map(typed).collect::<Vec<_>>().join(", ");
    if all(recorded) != all(now) {
        return vec![difference(part("readings"), all(recorded).into(), all(now).into())];
    }
    let differs = |(a, b): (&ReadingRecord, &ReadingRecord)| {
        let photo = |r: &ReadingRecord| r.photo_value.zip(r.photo_standard_uncertainty);
        let error = match (a.normalized_error, b.normalized_error) {
            (Some(x), Some(y)) => (x - y).abs() <= NEAR_E_N + MASKED_AGREE_OF_U * y.abs(),
            (x, y) => x.is_none() && y.is_none(),
        };
        let agrees = a.agrees == a.normalized_error.map(|e| e.abs() <= 1.0);
        let same = near(photo(a), photo(b), NEAR) && error && agrees;
        (!same).then(|| difference((&a.quantity).into(), shown(a.photo_value), shown(b.photo_value)))
    };
    recorded.readings.iter().zip(&now.readings).filter_map(differs).collect()
}

/// Findings that forbid to trust, which the masked photos show and the sealed result does not have.
fn findings_differ(recorded: &JobRecord, now: &JobRecord, older: bool) -> Vec<Phrase> {
    let times = now.positions.len() > 1 && recorded.photos.iter().any(|p| p.taken.is_some());
    // Photos without a marker are all of one grey in a copy.
    let grey =
        |file: &Option<String>| recorded.photos.iter().any(|p| Some(&p.file) == file.as_ref() && p.markers.is_empty());
    let known = |now: &FindingRecord| {
        let code = now.code.as_str();
        let recorded = recorded.findings.iter().any(|f| f.code == code && (older || f.level <= now.level));
        recorded || OF_WHOLE_PHOTOS.contains(&code) || code == REUSED && (times || grey(&now.photo))
    };
    let grave = now.findings.iter().filter(|f| f.level <= Level::Stop);
    let lost = grave.filter(|f| !known(f));
    lost.map(|f| difference(part("findings"), phrase!("evidence-nothing").into(), f.code.as_str().into())).collect()
}
