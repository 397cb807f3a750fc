//! `baywitness new`: a job folder to fill.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::output::{complain, language, make_folder, say, shown, write_file};
use crate::folder::{JobFile, Kind, Models};
use crate::marker::KitFile;
use crate::setup::Setup;
use crate::words::say;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "JOB")]
    folder: PathBuf,
    #[arg(long, value_name = "NAME")]
    setup: String,
    #[arg(long, alias = "rig", value_name = "NAME", default_value = "bay-a4")]
    kit: String,
    #[arg(long, value_name = "NAME")]
    camera: Option<String>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Makes the folder.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match make(arguments) {
        Ok(()) => {
            say(&(say!(language(), "cli-new-made", folder = shown(&arguments.folder)) + "\n"), None);
            0
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn make(arguments: &Arguments) -> Result<(), String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.say(language()))?;
    let text = |kind, name: &str| -> Result<String, String> {
        let file = models.open(&[kind], name).map_err(|e| e.say(language()))?;
        Ok(file.text().map_err(|e| e.say(language()))?.to_owned())
    };
    let setup =
        Setup::from_toml(&text(Kind::Setup, &arguments.setup)?, &arguments.setup).map_err(|e| e.say(language()))?;
    let kit = KitFile::from_toml(&text(Kind::Kit, &arguments.kit)?, &arguments.kit).map_err(|e| e.say(language()))?.kit;
    setup.check_against(&kit).map_err(|p| {
        say!(language(), "cli-new-sheet", sheet = &setup.name, key = p.key, problem = p.problem, remedy = p.remedy)
    })?;
    if let Some(camera) = &arguments.camera {
        models.open(&[Kind::Camera], camera).map_err(|e| e.say(language()))?;
    }
    let name = job_name(&arguments.folder)?;
    let job = template(name, arguments, &setup)?;
    if arguments.folder.exists() {
        return Err(say!(language(), "cli-new-is-there", folder = shown(&arguments.folder)));
    }
    let photos = arguments.folder.join("photos");
    make_folder(&photos)?;
    write_file(&arguments.folder.join("job.toml"), job.as_bytes())
}

fn job_name(folder: &Path) -> Result<&str, String> {
    let name = folder.file_name().and_then(|n| n.to_str());
    name.ok_or_else(|| say!(language(), "cli-new-no-number", folder = shown(folder)))
}

/// The job file with everything that it may say, what is not known yet as comments.
fn template(name: &str, arguments: &Arguments, setup: &Setup) -> Result<String, String> {
    let language = language();
    let quoted = |text: &str| toml::Value::String(text.to_owned()).to_string();
    let mut text = format!(
        "# {}\n# {}\nformat = \"job/1\"\njob = {}\nsetup = {}\nkit = {}\n",
        one_line(&setup.title),
        say!(language, "cli-new-source", source = one_line(&setup.source)),
        quoted(name),
        quoted(&arguments.setup),
        quoted(&arguments.kit)
    );
    match &arguments.camera {
        Some(camera) => _ = writeln!(text, "camera = {}", quoted(camera)),
        None => beside(&mut text, "camera = \"my-phone\"", &say!(language, "cli-new-camera")),
    }
    beside(&mut text, "series = \"R-2291\"", &say!(language, "cli-new-series"));
    text.push_str("# attempt = 1\n# technician = \"T1\"\n# bay = \"2\"\n# taken = 2026-11-25T10:30:00+01:00\n\n");
    text.push_str("[vehicle]\n# description = \"\"\n# vin = \"\"\n");
    beside(&mut text, "wheelbase_mm = 2700.0", &say!(language, "cli-new-wheelbase"));
    beside(&mut text, "nose_from_rear_axle_mm = 3560.0", &say!(language, "cli-new-nose"));
    beside(&mut text, "floor_below_hub_mm = 318.0", &say!(language, "cli-new-hub"));
    beside(&mut text, "rear_track_mm = 1560.0", &say!(language, "cli-new-rear-track"));
    beside(&mut text, "front_track_mm = 1560.0", &say!(language, "cli-new-front-track"));
    text.push_str("\n[prerequisites]\n");
    for p in &setup.prerequisites {
        let question = one_line(&p.text);
        let question = if p.required { say!(language, "cli-new-required", question = question) } else { question };
        _ = writeln!(text, "# {question}\n# {} = true", p.id);
    }
    text.push('\n');
    beside(&mut text, "[[reading]]", &say!(language, "cli-new-reading"));
    text.push_str("# quantity = \"distance\"\n# from = \"nose\"\n# value = 1500.0\n# instrument = \"laser\"\n");
    if let Some(step) = setup.steps.first() {
        let told = say!(language, "cli-new-steps", steps = setup.steps.join(", "));
        _ = writeln!(text, "\n# {told}\n# [[photo]]\n# file = \"photos/a.jpg\"\n# step = {}", quoted(step));
    }
    JobFile::from_toml(&text, "job.toml").map_err(|e| e.say(language))?;
    Ok(text)
}

/// A line that is not said yet, with what is to be known of it.
fn beside(text: &mut String, line: &str, words: &str) {
    _ = writeln!(text, "# {line:34}# {words}");
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
