//! What a job names: its sheet, its kit and a camera.

use std::path::Path;

use crate::camera::Profile;
use crate::folder::{JobFile, Kind};
use crate::input::SourceFile;
use crate::marker::KitFile;
use crate::setup::Setup;
use crate::web::app::App;
use crate::web::desk::Named;
use crate::words::{Value, phrase};

/// Reads a job's sheet, kit and a camera. Words say what can't be read.
pub(in crate::web) fn named(app: &App, folder: &Path, job: &JobFile) -> Result<Named, Value> {
    let (setup_file, kit_file) = (open(app, folder, Kind::Setup, &job.setup)?, open(app, folder, Kind::Kit, &job.kit)?);
    let camera_file = job.camera.as_deref().map(|name| open(app, folder, Kind::Camera, name)).transpose()?;
    let words = |e: crate::input::Error| Value::from(e.without_file());
    let setup = Setup::from_toml(setup_file.text().map_err(words)?, setup_file.name()).map_err(words)?;
    let kit = KitFile::from_toml(kit_file.text().map_err(words)?, kit_file.name()).map_err(words)?.kit;
    let camera = match &camera_file {
        Some(file) => Profile::from_toml(file.text().map_err(words)?, file.name()).map_err(words)?,
        // Each photo will say which; for the plan any of the shop's will do.
        None => app.library.now().cameras.first().map(|(_, c)| c.clone()).ok_or(phrase!("page-trouble-no-camera"))?,
    };
    let v = &job.vehicle;
    let sizes = (v.wheelbase_mm, v.nose_from_rear_axle_mm, v.floor_below_hub_mm);
    let key = format!("{} {} {} {sizes:?}", setup_file.sha256(), kit_file.sha256(), camera.name);
    Ok(Named { setup, kit, camera, key })
}

fn open(app: &App, folder: &Path, kind: Kind, name: &str) -> Result<SourceFile, Value> {
    let own = [folder.join(name), folder.join(format!("{name}.toml"))];
    if let Some(path) = own.iter().find(|p| p.is_file()) {
        return SourceFile::read(path).map_err(|e| e.without_file().into());
    }
    let stem = name.trim_end_matches(".toml");
    // Only names: a path could lead anywhere.
    if !app.options.models.names(kind).iter().any(|known| known == stem) {
        return Err(phrase!("page-trouble-no-model", kind = kind.name(), name = name).into());
    }
    app.options.models.open(&[kind], stem).map_err(|e| e.without_file().into())
}
