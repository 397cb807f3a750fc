//! `baywitness seating`: how repeatably a wheel plate seats.

use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::output::{cannot_read, complain, language, read_text, say, shown};
use super::survey::{cameras, kit, write_kit};
use crate::camera::Profile;
use crate::folder::{Models, PHOTOS};
use crate::marker::{Kit, Role};
use crate::record::JobRecord;
use crate::survey::{self, Seated, Seating};
use crate::words::{Figure, say};

/// The seatings say too little.
const NOT_FIT: u8 = 3;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "FOLDER|RESULT.json")]
    seatings: Vec<PathBuf>,
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: String,
    #[arg(long, value_name = "CARRIER")]
    plate: String,
    #[arg(long, value_name = "CARRIER")]
    against: Option<String>,
    #[arg(long, value_name = "FOLDER|RESULT.json", num_args = 1..)]
    turned: Vec<PathBuf>,
    #[arg(long, value_name = "FILE")]
    camera: Option<String>,
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

/// Measures the seating; exit code 0, 2 unreadable, 3 too little to say.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match work(arguments) {
        Ok(()) => 0,
        Err((code, message)) => {
            complain(&message);
            code
        }
    }
}

struct Bench {
    kit: Kit,
    cameras: Vec<Profile>,
    named: bool,
    carriers: [usize; 2],
}

fn work(typed: &Arguments) -> Result<(), (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let models = Models::standard(None).map_err(|e| unreadable(e.say(language())))?;
    let kit = kit(&models, &typed.kit).map_err(unreadable)?;
    let carriers = carriers(&kit, typed).map_err(unreadable)?;
    let cameras = cameras(&models, typed.camera.as_deref()).map_err(unreadable)?;
    let bench = Bench { kit, cameras, named: typed.camera.is_some(), carriers };
    let all = |paths: &[PathBuf]| paths.iter().map(|p| seated(&bench, p)).collect::<Result<Vec<Seated>, _>>();
    let (seatings, turned) = (all(&typed.seatings)?, all(&typed.turned)?);
    let failed = |e: survey::Error| (if e.unreadable() { UNREADABLE } else { NOT_FIT }, e.phrase().say(language()));
    let found = survey::seating(&seatings, &turned).map_err(failed)?;
    say(&words(&typed.plate, &seatings, &found), None);
    if let Some(out) = &typed.out {
        let mut kit = bench.kit;
        kit.carriers[carriers[0]].u_seating_mm = found.u_seating_mm;
        kit.carriers[carriers[0]].u_seating_deg = found.u_seating_deg;
        let head = say!(language(), "cli-seating-head", plate = &typed.plate, count = seatings.len());
        let head = format!("# {head}\n");
        write_kit(out, &kit, &head).map_err(unreadable)?;
    }
    Ok(())
}

fn carriers(kit: &Kit, typed: &Arguments) -> Result<[usize; 2], String> {
    let find = |name: &str| {
        let names: Vec<&str> = kit.carriers.iter().map(|c| c.name.as_str()).collect();
        names
            .iter()
            .position(|n| *n == name)
            .ok_or_else(|| say!(language(), "cli-no-carrier", kit = &kit.name, name = name, known = names.join(", ")))
    };
    let against = match &typed.against {
        Some(name) => find(name)?,
        None => kit.with_role(Role::Target).next().ok_or_else(|| say!(language(), "cli-seating-no-target"))?,
    };
    Ok([find(&typed.plate)?, against])
}

fn seated(bench: &Bench, path: &Path) -> Result<Seated, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let name = path.display().to_string();
    let failed = |e: survey::Error| (if e.unreadable() { UNREADABLE } else { NOT_FIT }, e.phrase().say(language()));
    let [plate, against] = bench.carriers.map(|k| bench.kit.carriers[k].name.as_str());
    if path.is_dir() {
        let photos = survey::look(&pictures(path).map_err(unreadable)?, &|_| ()).map_err(failed)?;
        return survey::seated_from_photos(&bench.kit, &bench.cameras, bench.named, &name, &photos, bench.carriers)
            .map_err(failed);
    }
    let text = read_text(path).map_err(unreadable)?;
    let record = JobRecord::from_json(text.as_bytes())
        .map_err(|e| unreadable(say!(language(), "cli-seating-no-result", path = shown(path), why = e.to_string())))?;
    survey::seated_from_record(&name, &record, plate, against).map_err(failed)
}

/// The pictures of a folder, by name.
fn pictures(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let failed = |e: std::io::Error| cannot_read(folder, &e);
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        let ending = path.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default();
        if ["jpg", "jpeg", "png", "heic"].contains(&ending.as_str()) {
            found.push(path);
        }
    }
    found.sort();
    if !found.is_empty() {
        return Ok(found);
    }
    let below = folder.join(PHOTOS);
    Err(if below.is_dir() {
        say!(language(), "cli-no-photo-but-below", folder = shown(folder), photos = shown(&below))
    } else {
        say!(language(), "cli-no-photo", folder = shown(folder))
    })
}

fn words(plate: &str, seatings: &[Seated], found: &Seating) -> String {
    let language = language();
    let signed = |v: f64, digits: u8| {
        let sign = if v.is_sign_negative() { "" } else { "+" };
        format!("{sign}{}", Figure::fixed(v, digits).say(language))
    };
    let mut lines = vec![say!(language, "cli-seating-times", plate = plate, count = seatings.len())];
    lines.push("   x mm   y mm   z mm     x deg    y deg    z deg".to_owned());
    for (seated, d) in seatings.iter().zip(&found.deviations) {
        let [x, y, z] = [d[0], d[1], d[2]].map(|v| signed(v, 2));
        let [a, b, c] = [d[3], d[4], d[5]].map(|v| signed(v.to_degrees(), 3));
        lines.push(format!(" {x:>6} {y:>6} {z:>6}  {a:>8} {b:>8} {c:>8}  {}", seated.name));
    }
    let three = |[x, y, z]: [f64; 3]| [x, y, z].map(|v| Figure::fixed(v, 3).say(language)).join(" ");
    let [mm, x, y, z] = found.u_measured;
    lines.push(say!(language, "cli-seating-scatter", mm = Figure::fixed(mm, 2), degrees = three([x, y, z])));
    // Keys and numbers as the kit's file has them.
    let [x, y, z] = found.u_seating_deg;
    let keys = format!("u_seating_mm = {:.2}, u_seating_deg = [{x:.3}, {y:.3}, {z:.3}]", found.u_seating_mm);
    lines.push(say!(language, "cli-seating-keys", keys = keys, freedom = Figure::fixed(found.degrees_of_freedom, 0)));
    if let Some(out) = &found.run_out {
        let [camber, heading] = out.about_deg.map(|v| Figure::fixed(v, 3));
        let turn = Figure::fixed(out.turn_deg, 0);
        lines.push(say!(language, "cli-seating-run-out", turn = turn, camber = camber, heading = heading));
        lines.push(match out.beside_mm {
            Some([x, z]) => {
                say!(language, "cli-seating-beside", ahead = Figure::fixed(x, 2), above = Figure::fixed(z, 2))
            }
            None => say!(language, "cli-seating-rolled"),
        });
    }
    lines.join("\n") + "\n"
}
