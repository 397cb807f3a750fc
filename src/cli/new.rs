//! `baywitness new`: a job folder to fill.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::UNREADABLE;
use super::output::{complain, say, write_file};
use crate::folder::{JobFile, Kind, Models};
use crate::marker::KitFile;
use crate::setup::Setup;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    /// The job's folder, which is made; its last part is the job's number
    #[arg(value_name = "JOB")]
    folder: PathBuf,
    /// Set-up sheet: a name of the models, as `setup check` takes it
    #[arg(long, value_name = "NAME")]
    setup: String,
    /// Marker kit, a name of the models
    #[arg(long, alias = "rig", value_name = "NAME", default_value = "bay-a4")]
    kit: String,
    /// Camera, a name of the models; left out, each photo's own record chooses
    #[arg(long, value_name = "NAME")]
    camera: Option<String>,
    /// Folder with setups/, kits/ and cameras/ to look for names in
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// Makes the folder.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match make(arguments) {
        Ok(()) => {
            let at = arguments.folder.display();
            say(
                &format!(
                    "{at}/job.toml is to be filled in, photos go into {at}/photos. Then: baywitness verify {at}\n"
                ),
                None,
            );
            0
        }
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn make(arguments: &Arguments) -> Result<(), String> {
    let models = Models::standard(arguments.models.as_deref()).map_err(|e| e.to_string())?;
    let text = |kind, name: &str| -> Result<String, String> {
        let file = models.open(&[kind], name).map_err(|e| e.to_string())?;
        Ok(file.text().map_err(|e| e.to_string())?.to_owned())
    };
    let setup = Setup::from_toml(&text(Kind::Setup, &arguments.setup)?, &arguments.setup).map_err(|e| e.to_string())?;
    let kit = KitFile::from_toml(&text(Kind::Kit, &arguments.kit)?, &arguments.kit).map_err(|e| e.to_string())?.kit;
    setup
        .check_against(&kit)
        .map_err(|p| format!("set-up sheet {}: {} {}; {}", setup.name, p.key, p.problem, p.remedy))?;
    if let Some(camera) = &arguments.camera {
        models.open(&[Kind::Camera], camera).map_err(|e| e.to_string())?;
    }
    let name = job_name(&arguments.folder)?;
    let job = template(name, arguments, &setup)?;
    if arguments.folder.exists() {
        return Err(format!(
            "{} is there already: choose another name, nothing is overwritten",
            arguments.folder.display()
        ));
    }
    let photos = arguments.folder.join("photos");
    std::fs::create_dir_all(&photos).map_err(|e| format!("cannot make {}: {e}", photos.display()))?;
    write_file(&arguments.folder.join("job.toml"), job.as_bytes())
}

fn job_name(folder: &Path) -> Result<&str, String> {
    let name = folder.file_name().and_then(|n| n.to_str());
    name.ok_or_else(|| format!("{} gives the job no number: end it with one, such as jobs/D-0042", folder.display()))
}

/// The job file with everything that it may say, what is not known yet as comments.
fn template(name: &str, arguments: &Arguments, setup: &Setup) -> Result<String, String> {
    let quoted = |text: &str| toml::Value::String(text.to_owned()).to_string();
    let mut text = format!(
        "# {}\n# Source: {}\nformat = \"job/1\"\njob = {}\nsetup = {}\nkit = {}\n",
        one_line(&setup.title),
        one_line(&setup.source),
        quoted(name),
        quoted(&arguments.setup),
        quoted(&arguments.kit)
    );
    match &arguments.camera {
        Some(camera) => _ = writeln!(text, "camera = {}", quoted(camera)),
        None => text.push_str("# camera = \"my-phone\"             # left out: each photo's own record chooses\n"),
    }
    text.push_str(
        "# series = \"R-2291\"               # repair order: its attempts and sensors share it\n\
         # attempt = 1\n# technician = \"T1\"\n# bay = \"2\"\n# taken = 2026-11-25T10:30:00+01:00\n\n\
         [vehicle]\n# description = \"\"\n# vin = \"\"\n# wheelbase_mm = 2700.0             # where no front wheel plates are seen\n\
         # nose_from_rear_axle_mm = 3560.0   # where no nose mark is seen\n\
         # floor_below_hub_mm = 318.0        # where no floor sheet is seen\n\n[prerequisites]\n",
    );
    for p in &setup.prerequisites {
        let required = if p.required { " (required)" } else { "" };
        _ = writeln!(text, "# {}{required}\n# {} = true", one_line(&p.text), p.id);
    }
    text.push_str(
        "\n# [[reading]]                     # read by laser, tape, level or alignment rack\n\
         # quantity = \"distance\"\n# from = \"nose\"\n# value = 1500.0\n# instrument = \"laser\"\n",
    );
    if let Some(step) = setup.steps.first() {
        _ = writeln!(
            text,
            "\n# This sheet has the steps {}: say of each photo which one it shows.\n# [[photo]]\n# file = \"photos/a.jpg\"\n# step = {}",
            setup.steps.join(", "),
            quoted(step)
        );
    }
    JobFile::from_toml(&text, "job.toml").map_err(|e| e.to_string())?;
    Ok(text)
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
