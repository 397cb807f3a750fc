//! What goes into an evidence folder: all that a verification read and found.

use std::collections::BTreeMap;
use std::path::{Component, Path};

use crate::evidence::{Bytes, Contents, Identity, MOST_UP, PadesError, RESULT, joined, sealed_job, sign_pdf};
use crate::folder::{InputFile, JobFolder, Kind, Origin};
use crate::record::JobRecord;
use crate::report;
use crate::words::{Language, Phrase, Wish, phrase, say};

use super::CHANGES;
use super::sealed_report::{CUSTOMER_HTML, REPORT_HTML, REPORT_PDF};
use crate::job::{Error, Options, verify_and};

/// Why a job cannot be gathered for sealing.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum GatherError {
    /// The job cannot be verified.
    Job(#[from] Error),
    /// A photo cannot be read again for the report.
    Picture(#[from] report::PictureError),
    /// The report cannot be written as PDF.
    Pdf(#[from] report::PdfError),
    /// The result cannot be written as JSON.
    Json(#[from] serde_json::Error),
    /// A file lies too far away.
    Far(String),
    /// A file is no longer there.
    Gone(String),
}

impl GatherError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            GatherError::Job(e) => e.phrase(),
            GatherError::Picture(e) => e.phrase(),
            GatherError::Pdf(e) => e.phrase(),
            GatherError::Json(e) => phrase!("evidence-seal-json", why = e.to_string()),
            GatherError::Far(file) => phrase!("evidence-seal-far", file = file),
            GatherError::Gone(file) => phrase!("evidence-seal-gone", file = file),
        }
    }
}

/// Verifies a job and gathers its photos, its inputs, the result and the reports.
///
/// # Errors
/// The job cannot be verified, or a file went away meanwhile.
pub fn gather(path: &Path, options: &Options, wish: Wish) -> Result<(JobRecord, Contents), GatherError> {
    let (record, folder) = verify_and(path, options, |folder, _| folder.clone())?;
    let mut payload = own_files(path, &folder, &record)?;
    let json = record.to_json()?;
    // Reports are those of the result as it is kept: whoever checks has no other.
    let record = JobRecord::from_json(&json)?;
    let pictures = report::pictures(path, &record)?;
    let language = wish.for_job(record.context.language);
    payload.insert(REPORT_HTML.to_owned(), Bytes::Here(report::html(&record, &pictures, language).into_bytes()));
    payload.insert(REPORT_PDF.to_owned(), Bytes::Here(report::pdf(&record, &pictures, &json, language)?));
    let customer = report::customer_html(&record, &report::digest(&json), language);
    payload.insert(CUSTOMER_HTML.to_owned(), Bytes::Here(customer.into_bytes()));
    payload.insert(RESULT.to_owned(), Bytes::Here(json));
    let info = info(&record);
    Ok((record, Contents { payload, info }))
}

/// All that a verification read, by its place in a payload.
pub(super) fn own_files(
    path: &Path,
    folder: &JobFolder,
    record: &JobRecord,
) -> Result<BTreeMap<String, Bytes>, GatherError> {
    let inputs = inputs(folder, record);
    let up = inputs.iter().filter(|i| i.origin == Origin::Job).map(|i| steps_up(&i.name)).max().unwrap_or(0);
    if up > MOST_UP {
        let far = inputs.iter().find(|i| steps_up(&i.name) == up).map_or("", |i| &i.name);
        return Err(GatherError::Far(far.to_owned()));
    }
    let job = sealed_job(up);
    let mut payload = BTreeMap::new();
    let digest = |role: &str, name: &str| {
        record.inputs.iter().find(|i| i.role == role && i.file == name).map(|i| i.sha256.clone())
    };
    for photo in &folder.photos {
        let bytes = Bytes::File { path: photo.path.clone(), sha256: digest("photo", &photo.name) };
        payload.insert(joined(&job, &photo.name), bytes);
    }
    // What was left out of the measurement is evidence too, and the report names it.
    for photo in &folder.unlisted {
        payload.insert(joined(&job, &photo.name), Bytes::File { path: photo.path.clone(), sha256: None });
    }
    for attached in &folder.attachments {
        let bytes = Bytes::File { path: attached.path.clone(), sha256: Some(attached.sha256.clone()) };
        payload.insert(joined(&job, &attached.name), bytes);
    }
    // The page's list of who changed what goes along; nothing is measured from it.
    if path.join(CHANGES).is_file() {
        payload.insert(joined(&job, CHANGES), Bytes::File { path: path.join(CHANGES), sha256: None });
    }
    let mut beside = job.clone();
    for input in inputs {
        let place = place(&job, &beside, input);
        if input.role == Kind::Kit.name() {
            // A kit's layout is named from where the kit lies.
            beside = place.rsplit_once('/').map_or(String::new(), |(parent, _)| parent.to_owned());
        }
        payload.insert(place, content(input)?);
    }
    Ok(payload)
}

/// Puts a signature into the PDF report of what was gathered; `moment` is when,
/// by the signer's clock.
///
/// # Errors
/// The certificate does not count at `moment`, or the key refuses.
pub fn sign_report(
    (record, contents): &mut (JobRecord, Contents),
    identity: &Identity,
    wish: Wish,
    moment: time::OffsetDateTime,
) -> Result<(), PadesError> {
    let field = say!(wish.for_job(record.context.language), "evidence-pdf-field");
    if let Some(Bytes::Here(report)) = contents.payload.get_mut(REPORT_PDF) {
        *report = sign_pdf(report, identity, &field, moment)?;
    }
    Ok(())
}

/// Every file that the verification read, cameras chosen by EXIF among them.
fn inputs<'a>(folder: &'a JobFolder, record: &JobRecord) -> Vec<&'a InputFile> {
    let chosen = folder.candidates.iter().map(|c| &c.input);
    let chosen = chosen.filter(|c| record.inputs.iter().any(|i| i.role == c.role && i.sha256 == c.sha256));
    folder.inputs.iter().chain(chosen).collect()
}

/// How many folders above its start a path leads.
fn steps_up(name: &str) -> usize {
    let (mut depth, mut up) = (0_usize, 0);
    for part in Path::new(name).components() {
        match part {
            Component::ParentDir if depth > 0 => depth -= 1,
            Component::ParentDir => up += 1,
            Component::Normal(_) => depth += 1,
            _ => {}
        }
    }
    up
}

/// Where an input goes, so that the job finds it again.
fn place(job: &str, beside: &str, input: &InputFile) -> String {
    let with_ending = |name: &str| if name.ends_with(".toml") { name.to_owned() } else { format!("{name}.toml") };
    let kind = [Kind::Setup, Kind::Kit, Kind::Camera, Kind::Stand].into_iter().find(|k| k.name() == input.role);
    match (kind, input.origin) {
        _ if input.role == "layout" => joined(beside, &input.name),
        (Some(kind), Origin::Job) => {
            // By a path from the job folder, or a camera of the job's own folder of cameras.
            let file = input.path.as_deref().and_then(Path::file_name).map(|n| n.to_string_lossy().into_owned());
            let by_path = joined(job, &input.name);
            match file {
                Some(file) if by_path.ends_with(&file) => by_path,
                _ if input.path.as_deref().is_some_and(|p| p.parent().is_some_and(|d| d.ends_with(kind.folder()))) => {
                    joined(job, &format!("{}/{}", kind.folder(), with_ending(&input.name)))
                }
                _ => joined(job, &with_ending(&input.name)),
            }
        }
        (Some(kind), _) => format!("models/{}/{}", kind.folder(), with_ending(&input.name)),
        (None, _) => joined(job, &input.name),
    }
}

fn content(input: &InputFile) -> Result<Bytes, GatherError> {
    if let Some(path) = &input.path {
        return Ok(Bytes::File { path: path.clone(), sha256: Some(input.sha256.clone()) });
    }
    let text = input.embedded_text().ok_or_else(|| GatherError::Gone(input.name.clone()))?;
    Ok(Bytes::Here(text.as_bytes().to_vec()))
}

/// Labels of RFC 8493, 2.2.2, and the verdict.
pub(super) fn info(record: &JobRecord) -> Vec<(String, String)> {
    let mut info = vec![
        ("External-Identifier", record.job.clone()),
        ("External-Description", record.sheet.title.clone()),
        ("Bag-Software-Agent", format!("{} {}", record.tool.name, record.tool.version)),
        ("Verdict", record.verdict.name().to_owned()),
    ];
    if let Some(series) = &record.context.series {
        info.push(("Bag-Group-Identifier", series.clone()));
    }
    info.into_iter().map(|(label, value)| (label.to_owned(), value)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shared_files_keep_their_place() {
        assert_eq!(steps_up("kit.toml"), 0);
        assert_eq!(steps_up("a/../../kit.toml"), 1);
        assert_eq!(steps_up("../../kit.toml"), 2);
        for up in 0..4 {
            let name = format!("{}shared/kit.toml", "../".repeat(up));
            let place = joined(&sealed_job(up), &name);
            assert!(place.ends_with("shared/kit.toml") && !place.contains(".."), "{place}");
        }
        assert_eq!(joined("job", "photos/./a.jpg"), "job/photos/a.jpg");
    }
}
