//! `baywitness plan`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{JsonTarget, complain, language, make_folder, tell, write_file, write_json};
use crate::camera::Profile;
use crate::folder::{JobFile, Kind, Models, Vehicle};
use crate::input::SourceFile;
use crate::job::{Options, PlanOptions, Reach, Wanted, plan, verify};
use crate::marker::{Kit, KitFile};
use crate::num::median;
use crate::report::{plan_html, plan_svg, plan_text};
use crate::setup::Setup;
use crate::words::say;

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: String,
    #[arg(long, value_name = "FILE")]
    setup: String,
    #[arg(long, value_name = "FILE", default_value = "demo-phone")]
    camera: String,
    #[arg(long, value_name = "FILE")]
    job: Option<PathBuf>,
    #[arg(long, value_name = "JOB")]
    earlier: Vec<PathBuf>,
    #[arg(long, value_name = "N", value_parser = super::typed::whole::<u16, 2, 12>)]
    photos: Option<u16>,
    #[arg(long, value_name = "X,Y,Z", allow_hyphen_values = true, value_parser = three)]
    from: Vec<[f64; 3]>,
    #[arg(long)]
    after_move: bool,
    #[arg(long, value_name = "MM", default_value_t = 4000.0, allow_negative_numbers = true, value_parser = length)]
    width: f64,
    #[arg(long, value_name = "MM", allow_negative_numbers = true, value_parser = length)]
    ahead: Option<f64>,
    #[arg(long, value_name = "X,Y", allow_hyphen_values = true, value_parser = two)]
    post: Vec<[f64; 2]>,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

/// A list of numbers, each within a bay.
fn numbers<const N: usize>(text: &str) -> Result<[f64; N], String> {
    let wrong = || crate::words::say!(super::output::language(), "cli-plan-numbers", count = N);
    let all: Vec<f64> = text.split(',').map(|t| t.trim().parse()).collect::<Result<_, _>>().map_err(|_| wrong())?;
    let in_bay = all.iter().all(|v: &f64| v.abs() <= 50_000.0);
    <[f64; N]>::try_from(all).ok().filter(|_| in_bay).ok_or_else(wrong)
}

fn three(text: &str) -> Result<[f64; 3], String> {
    numbers(text)
}

fn two(text: &str) -> Result<[f64; 2], String> {
    numbers(text)
}

fn length(text: &str) -> Result<f64, String> {
    let value: Option<f64> = text.parse().ok().filter(|v| (500.0..=50_000.0).contains(v));
    value.ok_or_else(|| crate::words::say!(super::output::language(), "cli-plan-length"))
}

/// The files of a plan, read and checked.
pub(super) struct Inputs {
    pub(super) kit: Kit,
    pub(super) setup: Setup,
    pub(super) camera: Profile,
    pub(super) vehicle: Vehicle,
}

/// Reads what a plan is about, each by path or name.
pub(super) fn read(models: &Models, kit: &str, setup: &str, camera: &str) -> Result<Inputs, String> {
    let open = |kind, name: &str| models.open(&[kind], name).map_err(|e| e.say(language()));
    let words = |e: crate::input::Error| e.say(language());
    let (kit_file, setup_file, camera_file) =
        (open(Kind::Kit, kit)?, open(Kind::Setup, setup)?, open(Kind::Camera, camera)?);
    let kit = KitFile::from_toml(kit_file.text().map_err(words)?, kit_file.name()).map_err(words)?.kit;
    let document = Setup::document(setup_file.text().map_err(words)?, setup_file.name()).map_err(words)?;
    let setup = Setup::from_document(&document).map_err(words)?;
    setup.check_against(&kit).map_err(|p| document.error(&p).say(language()))?;
    let camera = Profile::from_toml(camera_file.text().map_err(words)?, camera_file.name()).map_err(words)?;
    Ok(Inputs { kit, setup, camera, vehicle: Vehicle::default() })
}

/// Runs the command: 0 every check can be decided, 3 not, 2 unreadable.
pub(super) fn run(args: &Arguments) -> u8 {
    let made = inputs(args).and_then(|inputs| {
        let wanted =
            Wanted { kit: &inputs.kit, setup: &inputs.setup, camera: &inputs.camera, vehicle: &inputs.vehicle };
        let ahead_mm = args.ahead.or(inputs.setup.limits.free_ahead_mm).unwrap_or(Reach::default().ahead_mm);
        let earlier = earlier(args)?;
        let options = PlanOptions {
            photos: args.photos.map(usize::from),
            from_mm: args.from.clone(),
            reach: Reach { width_mm: args.width, ahead_mm, posts_mm: args.post.clone() },
            noise_ratio: earlier.noise_ratio,
            turn_ratio: earlier.turn_ratio,
            after_move: args.after_move,
        };
        let record = plan(wanted, &options);
        tell(&plan_text(&record, language()), args.json.as_ref());
        if let Some(folder) = &args.report {
            make_folder(folder)?;
            write_file(&folder.join("plan.svg"), plan_svg(&record, language()).as_bytes())?;
            write_file(&folder.join("plan.html"), plan_html(&record, language()).as_bytes())?;
            let written =
                say!(language(), "plan-drawing-written", file = folder.join("plan.html").display().to_string());
            tell(&format!("\n{written}\n"), args.json.as_ref());
        }
        if let Some(target) = &args.json {
            write_json(target, &record)?;
        }
        Ok(record.predicted.iter().all(|p| p.can_decide))
    });
    match made {
        Ok(true) => 0,
        Ok(false) => 3,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

/// What earlier jobs say of the phone and of the hand that holds it, medians of their photos.
struct Earlier {
    noise_ratio: Option<f64>,
    turn_ratio: Option<f64>,
}

fn earlier(args: &Arguments) -> Result<Earlier, String> {
    let (mut ratios, mut turns) = (Vec::new(), Vec::new());
    let options = Options::new(Models::standard(args.models.as_deref()).map_err(|e| e.say(language()))?);
    for job in &args.earlier {
        let record = verify(job, &options).map_err(|e| e.say(language()))?;
        let before = ratios.len();
        turns.extend(record.photos.iter().filter_map(|p| p.turn_ratio));
        ratios.extend(record.photos.iter().filter_map(|p| p.noise_ratio));
        if ratios.len() == before {
            let job = super::output::shown(job);
            return Err(crate::words::say!(super::output::language(), "cli-plan-earlier", job = job));
        }
    }
    Ok(Earlier { noise_ratio: median(ratios), turn_ratio: median(turns) })
}

fn inputs(args: &Arguments) -> Result<Inputs, String> {
    let models = Models::standard(args.models.as_deref()).map_err(|e| e.say(language()))?;
    let mut inputs = read(&models, &args.kit, &args.setup, &args.camera)?;
    if let Some(job) = &args.job {
        let path = if job.is_dir() { job.join("job.toml") } else { job.clone() };
        let source = SourceFile::read(&path).map_err(|e| e.say(language()))?;
        let text = source.text().map_err(|e| e.say(language()))?;
        inputs.vehicle = JobFile::from_toml(text, source.name()).map_err(|e| e.say(language()))?.vehicle;
    }
    Ok(inputs)
}
