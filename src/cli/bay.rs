//! `baywitness bay`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{JsonTarget, complain, language, make_folder, tell, write_file, write_json};
use crate::camera::Profile;
use crate::folder::{JobFile, Kind, Models, Vehicle};
use crate::input::SourceFile;
use crate::job::{BayWanted, check_bay};
use crate::marker::KitFile;
use crate::record::{BayRecord, Verdict};
use crate::report::{bay_html, bay_svg, bay_text};
use crate::setup::{Limits, Setup};
use crate::words::say;

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: String,
    #[arg(long, value_name = "FILE", default_value = "demo-phone")]
    camera: String,
    #[arg(long, value_name = "FILE")]
    setup: Option<String>,
    #[arg(long, value_name = "FILE")]
    job: Option<PathBuf>,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Runs the command: 0 done and within every limit, 1 outside one, 3 one not proven, 2 unreadable.
pub(super) fn run(args: &Arguments) -> u8 {
    match measure(args) {
        Ok(record) => {
            let any = |v: Verdict| record.limits.iter().any(|l| l.verdict == Some(v));
            match () {
                () if any(Verdict::Outside) => 1,
                () if any(Verdict::NotProven) => 3,
                () => 0,
            }
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn measure(args: &Arguments) -> Result<BayRecord, String> {
    let words = |e: crate::input::Error| e.say(language());
    let models = Models::standard(args.models.as_deref()).map_err(words)?;
    let kit = models.open(&[Kind::Kit], &args.kit).map_err(words)?;
    let kit = KitFile::from_toml(kit.text().map_err(words)?, kit.name()).map_err(words)?.kit;
    let camera = models.open(&[Kind::Camera], &args.camera).map_err(words)?;
    let camera = Profile::from_toml(camera.text().map_err(words)?, camera.name()).map_err(words)?;
    let limits = match &args.setup {
        None => Limits::default(),
        Some(name) => {
            let file = models.open(&[Kind::Setup], name).map_err(words)?;
            Setup::from_toml(file.text().map_err(words)?, file.name()).map_err(words)?.limits
        }
    };
    let vehicle = match &args.job {
        None => Vehicle::default(),
        Some(job) => {
            let path = if job.is_dir() { job.join("job.toml") } else { job.clone() };
            let file = SourceFile::read(&path).map_err(words)?;
            JobFile::from_toml(file.text().map_err(words)?, file.name()).map_err(words)?.vehicle
        }
    };
    let wanted = BayWanted { kit: &kit, camera: &camera, vehicle: &vehicle, limits: &limits };
    let record = check_bay(&args.photos, &wanted).map_err(|e| e.say(language()))?;
    tell(&bay_text(&record, language()), args.json.as_ref());
    if let Some(folder) = &args.report {
        make_folder(folder)?;
        write_file(&folder.join("bay.svg"), bay_svg(&record, language()).as_bytes())?;
        write_file(&folder.join("bay.html"), bay_html(&record, language()).as_bytes())?;
        let written = say!(language(), "bay-map-written", file = folder.join("bay.html").display().to_string());
        tell(&format!("\n{written}\n"), args.json.as_ref());
    }
    if let Some(target) = &args.json {
        write_json(target, &record)?;
    }
    Ok(record)
}
