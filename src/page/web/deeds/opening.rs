//! A new job folder.

use std::io::ErrorKind;
use std::path::Path;

use super::changes::Act;
use super::own_sheets;
use crate::folder::{JobFile, Vehicle, make_folder_durably, write_durably};
use crate::web::app::App;
use crate::web::folders::edit;
use crate::web::forms::Fields;
use crate::web::trouble::Trouble;
use crate::words::phrase;

/// Numbers that are tried in a day.
const MOST_A_DAY: u32 = 10_000;

/// Makes the job that a form describes; the folder's name.
pub(in crate::web) fn open(app: &App, sheet: &str, fields: &Fields, act: &Act) -> Result<String, Trouble> {
    let shelved = app.library.now();
    let setup = shelved.sheet(sheet).ok_or_else(|| Trouble::not_found("sheet"))?;
    let name = fields.get("kit").ok_or_else(|| Trouble::typed(phrase!("page-trouble-choose-kit")))?;
    let kit = shelved.kit(name).ok_or_else(|| Trouble::not_found("kit"))?;
    setup.check_against(kit).map_err(|p| Trouble::typed(p.phrase()))?;
    let camera = fields.get("camera");
    if camera.is_some_and(|c| shelved.cameras.iter().all(|(name, _)| name != c)) {
        return Err(Trouble::not_found("camera"));
    }
    let vehicle = Vehicle {
        description: fields.line("description")?,
        vin: fields.line("vin")?.map(|v| v.to_uppercase()),
        ..Vehicle::default()
    };
    let series = fields.line("series")?;
    let attempt = series.as_ref().map_or(1, |s| next_attempt(app, s, sheet));
    let mut job = JobFile {
        job: String::new(),
        setup: sheet.to_owned(),
        kit: name.to_owned(),
        camera: camera.map(str::to_owned),
        stand: None,
        photos: None,
        photo_entries: None,
        moves: Vec::new(),
        series,
        attempt: Some(attempt),
        card: Vec::new(),
        technician: fields.line("technician")?,
        bay: fields.line("bay")?,
        taken: None,
        keep_until: None,
        language: None,
        vehicle,
        prerequisites: std::collections::BTreeMap::new(),
        readings: Vec::new(),
        attachments: Vec::new(),
        calibration: None,
    };
    // What can't be read back makes no folder.
    job.job = "x".to_owned();
    JobFile::from_toml(&job.to_toml(), "job.toml")?;
    let day = app.now().date();
    let day = format!("{:04}{:02}{:02}", day.year(), u8::from(day.month()), day.day());
    let name = numbered(app.shelf.root(), &day)?;
    job.series.get_or_insert_with(|| name.clone());
    job.job.clone_from(&name);
    let folder = app.shelf.root().join(&name);
    // A sheet of the shop's own goes along, so that the folder is a whole job anywhere.
    if let Some(file) = own_sheets::file(app, sheet) {
        let bytes = std::fs::read(&file).map_err(|e| Trouble::disk("read", &e))?;
        write_durably(&folder.join(format!("{sheet}.toml")), &bytes).map_err(|e| Trouble::disk("sheet", &e))?;
    }
    fill(&folder, &job)?;
    act.note_since(&folder, &[])?;
    app.shelf.refresh(true);
    Ok(name)
}

/// The number after the last attempt of a series with one sheet.
pub(in crate::web) fn next_attempt(app: &App, series: &str, sheet: &str) -> u32 {
    let same = |job: &JobFile| job.series.as_deref() == Some(series) && job.setup == sheet;
    let all = app.shelf.latest(usize::MAX, |e| e.job.as_ref().is_ok_and(same));
    all.iter().filter_map(|e| e.job.as_ref().ok()?.attempt).max().map_or(1, |n| n + 1)
}

/// Makes the first free folder of these: `STEM-01`, `STEM-02`, ...
pub(in crate::web) fn numbered(root: &Path, stem: &str) -> Result<String, Trouble> {
    for n in 1..MOST_A_DAY {
        let name = format!("{stem}-{n:02}");
        match make_folder_durably(&root.join(&name)) {
            Ok(()) => return Ok(name),
            Err(e) if e.kind() == ErrorKind::AlreadyExists => {}
            Err(e) => return Err(Trouble::disk("folder", &e)),
        }
    }
    Err(Trouble::typed(phrase!("page-trouble-many-jobs")))
}

/// The folder of photos, then the job file: with that it is a job.
pub(in crate::web) fn fill(folder: &Path, job: &JobFile) -> Result<(), Trouble> {
    make_folder_durably(&folder.join("photos")).map_err(|e| Trouble::disk("folder", &e))?;
    edit::write(folder, job)
}
