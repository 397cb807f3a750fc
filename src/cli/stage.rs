//! `baywitness stage SCENE --out DIR`.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{complain, language, say, shown};
use crate::synth::Scene;
use crate::words::say;

/// What is typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    scene: PathBuf,
    #[arg(long, value_name = "DIR")]
    out: PathBuf,
    #[arg(long)]
    truth_only: bool,
}

/// Runs the command: 0 done, 2 unreadable or wrong.
pub(super) fn run(args: &Arguments) -> u8 {
    let staged = Scene::read(&args.scene).map_err(|e| e.say(language())).and_then(|scene| stage(args, &scene));
    match staged {
        Ok(()) => 0,
        Err(message) => {
            complain(&message);
            UNREADABLE
        }
    }
}

fn stage(args: &Arguments, scene: &Scene) -> Result<(), String> {
    if args.truth_only {
        let text = serde_json::to_string_pretty(&scene.truth()).map_err(|e| e.to_string())?;
        say(&(text + "\n"), None);
        return Ok(());
    }
    let truth = scene
        .stage(&args.out, &mut |photo| say(&(say!(language(), "training-rendering", job = photo) + "\n"), None))
        .map_err(|e| e.say(language()))?;
    let count = truth.photos.len();
    say(&(say!(language(), "cli-staged", folder = shown(&args.out), count = count) + "\n"), None);
    Ok(())
}
