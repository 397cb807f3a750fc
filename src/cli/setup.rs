//! `baywitness setup check`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{JsonTarget, complain, language, make_folder, tell, write_file, write_json};
use crate::camera::Profile;
use crate::folder::{Kind, Models, Vehicle};
use crate::job::setup_check;
use crate::marker::{Kit, KitFile};
use crate::record::SetupCheckRecord;
use crate::report::{setup_html, setup_text};
use crate::setup::Setup;
use crate::words::say;

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, clap::Subcommand)]
enum Command {
    Check(Check),
}

#[derive(Debug, clap::Args)]
struct Check {
    setup: String,
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: Option<String>,
    #[arg(long, value_name = "FILE", default_value = "demo-phone")]
    camera: String,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Runs the command: 0 done, 3 a contradiction or no kit that decides every check, 2 unreadable.
pub(super) fn run(args: &Arguments) -> u8 {
    let Command::Check(args) = &args.command;
    match check(args) {
        Ok(record) => {
            let decided = record.kits.iter().any(|k| k.predicted.iter().all(|p| p.can_decide));
            if decided && record.contradictions.is_empty() { 0 } else { 3 }
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn check(args: &Check) -> Result<SetupCheckRecord, String> {
    let words = |e: crate::input::Error| e.say(language());
    let models = Models::standard(args.models.as_deref()).map_err(words)?;
    let sheet = models.open(&[Kind::Setup], &args.setup).map_err(words)?;
    let setup = Setup::from_toml(sheet.text().map_err(words)?, sheet.name()).map_err(words)?;
    let camera = models.open(&[Kind::Camera], &args.camera).map_err(words)?;
    let camera = Profile::from_toml(camera.text().map_err(words)?, camera.name()).map_err(words)?;
    let names = args.kit.clone().map_or_else(|| models.names(Kind::Kit), |name| vec![name]);
    let kits: Vec<Kit> = names.iter().map(|name| kit(&models, name)).collect::<Result<_, _>>()?;
    let record = setup_check(&setup, &kits, &camera, &Vehicle::default());
    tell(&setup_text(&record, language()), args.json.as_ref());
    if let Some(folder) = &args.report {
        make_folder(folder)?;
        write_file(&folder.join("setup.html"), setup_html(&record, language()).as_bytes())?;
        let written = say!(language(), "plan-drawing-written", file = folder.join("setup.html").display().to_string());
        tell(&format!("\n{written}\n"), args.json.as_ref());
    }
    if let Some(target) = &args.json {
        write_json(target, &record)?;
    }
    Ok(record)
}

fn kit(models: &Models, name: &str) -> Result<Kit, String> {
    let file = models.open(&[Kind::Kit], name).map_err(|e| e.say(language()))?;
    let text = file.text().map_err(|e| e.say(language()))?;
    Ok(KitFile::from_toml(text, file.name()).map_err(|e| e.say(language()))?.kit)
}
