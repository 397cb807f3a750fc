//! `baywitness survey`: where a kit's markers really sit.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use time::Date;

use super::codes::UNREADABLE;
use super::output::{complain, language, make_folder, tell, write_file, write_named};
use crate::camera::Profile;
use crate::folder::{Kind, Models, candidate_cameras};
use crate::input::SourceFile;
use crate::marker::{Kit, KitFile, MAX_LAYOUT_BYTES, read_layout};
use crate::survey::{self, Length, Survey};
use crate::words::{Phrase, say};

/// The survey is not fit for use.
const NOT_FIT: u8 = 3;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: String,
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    #[arg(long, value_name = "FILE")]
    camera: Option<String>,
    #[arg(long = "length", value_name = "ID:CORNER,ID:CORNER=MM~U", value_parser = length)]
    lengths: Vec<Length>,
    #[arg(long)]
    apart: bool,
    #[arg(long)]
    serial: Option<String>,
    #[arg(long, value_name = "DATE", value_parser = super::dates::date)]
    due: Option<Date>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

fn length(text: &str) -> Result<Length, String> {
    text.parse().map_err(|why: Phrase| why.say(language()))
}

/// Surveys; exit code 0, 2 unreadable, 3 not fit for use.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match work(arguments) {
        Ok(code) => code,
        Err((code, message)) => {
            complain(&message);
            code
        }
    }
}

fn work(typed: &Arguments) -> Result<u8, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let models = Models::standard(typed.models.as_deref()).map_err(|e| unreadable(e.say(language())))?;
    let kit = kit(&models, &typed.kit).map_err(unreadable)?;
    let cameras = cameras(&models, typed.camera.as_deref()).map_err(unreadable)?;
    let failed = |e: survey::Error| (if e.unreadable() { UNREADABLE } else { NOT_FIT }, e.phrase().say(language()));
    let photos = survey::look(&typed.photos, &progress).map_err(failed)?;
    let options =
        survey::Options { lengths: typed.lengths.clone(), apart: typed.apart, camera_named: typed.camera.is_some() };
    let mut found = survey::survey(&kit, &cameras, &photos, &options).map_err(failed)?;
    found.kit.serial = typed.serial.clone().or(found.kit.serial);
    found.kit.survey_due = typed.due.or(found.kit.survey_due);
    tell(&survey::words(&found, language()), None);
    if let Some(folder) = &typed.report {
        make_folder(folder).map_err(unreadable)?;
        let path = folder.join("survey.html");
        write_file(&path, survey::page(&found, language()).as_bytes()).map_err(unreadable)?;
        tell(&(say!(language(), "fit-wrote", file = path.display().to_string()) + "\n"), None);
    }
    write_kit(&typed.out, &found.kit, &head(&found, photos.len())).map_err(unreadable)?;
    Ok(if found.fit_for_use() { 0 } else { NOT_FIT })
}

/// A photo takes a moment: say which ones are done. Interrupted, nothing was
/// written yet.
fn progress(file: &str) {
    if std::io::stderr().is_terminal() {
        super::output::note(&(say!(language(), "fit-looked-at", file = file) + "\n"));
    }
}

/// Reads a kit by path or name, with the layout that it names.
pub(super) fn kit(models: &Models, name: &str) -> Result<Kit, String> {
    let source = models.open(&[Kind::Kit], name).map_err(|e| e.say(language()))?;
    let text = source.text().map_err(|e| e.say(language()))?;
    let KitFile { mut kit, layout } = KitFile::from_toml(text, source.name()).map_err(|e| e.say(language()))?;
    if let Some(layout) = layout {
        let path = Path::new(source.name()).parent().unwrap_or(Path::new("")).join(layout);
        let file = SourceFile::read_up_to(&path, MAX_LAYOUT_BYTES).map_err(|e| e.say(language()))?;
        kit.layout = Some(read_layout(&file, &kit, &source.sha256()).map_err(|e| e.say(language()))?);
    }
    Ok(kit)
}

/// The named camera, else every one that a photo's record may pick.
pub(super) fn cameras(models: &Models, named: Option<&str>) -> Result<Vec<Profile>, String> {
    let Some(name) = named else {
        let all = candidate_cameras(models, Path::new("")).map_err(|e| e.say(language()))?;
        return Ok(all.into_iter().map(|c| c.profile).collect());
    };
    let source = models.open(&[Kind::Camera], name).map_err(|e| e.say(language()))?;
    let text = source.text().map_err(|e| e.say(language()))?;
    Ok(vec![Profile::from_toml(text, source.name()).map_err(|e| e.say(language()))?])
}

/// Writes a kit and the layout that it names; the layout first, so that a kit
/// never names one that is not there.
pub(super) fn write_kit(out: &Path, kit: &Kit, head: &str) -> Result<(), String> {
    let stem = out.file_stem().map_or_else(|| "kit".to_owned(), |s| s.to_string_lossy().into_owned());
    let layout_name = if stem == "kit" { "layout.json".to_owned() } else { format!("{stem}-layout.json") };
    let text = head.to_owned() + &kit.to_toml(kit.layout.as_ref().map(|_| layout_name.as_str()));
    let mut wrote = vec![out.display().to_string()];
    if let Some(layout) = &kit.layout {
        let path = out.with_file_name(&layout_name);
        let digest = SourceFile::new(out.display().to_string(), text.as_bytes().to_vec()).sha256();
        write_file(&path, layout.to_json(&digest).as_bytes())?;
        wrote.push(path.display().to_string());
    }
    write_named(out, text.as_bytes())?;
    tell(&(say!(language(), "fit-wrote", file = wrote) + "\n"), None);
    Ok(())
}

/// What the file says to whoever opens it.
fn head(found: &Survey, photos: usize) -> String {
    let forbids = found.advice.iter().filter(|a| a.forbids);
    let language = language();
    let mut lines: Vec<String> = forbids.map(|a| say!(language, "cli-file-not-fit", why = a.said.clone())).collect();
    lines.push(say!(language, "cli-file-surveyed", photos = photos));
    lines.extend(found.lengths.iter().map(|c| say!(language, "cli-file-length", length = c.length.to_string())));
    lines.into_iter().map(|line| format!("# {line}\n")).collect()
}
