//! A job opened and looked at: everything that judging needs.

use std::path::Path;

use super::assign::{Assignment, assign, views};
use super::compare::compare;
use super::doubles::Doubles;
use super::look::{Looked, look};
use super::options::Options;
use crate::folder::{JobFolder, Phase, PhotoFile};
use crate::job::error::Error;
use crate::marker::{Carrier, Kit, Role};
use crate::pose::{PhotoView, Problem};
use crate::verdict::findings::{Moved, PhotoProblem};

/// A job with what its photos show.
#[derive(Debug, Clone)]
pub(in crate::job) struct Opened {
    /// The job; its kit is the working kit, with a stand for each step.
    pub(in crate::job) folder: JobFolder,
    /// The stands of the steps and of the positions.
    pub(in crate::job) steps: Doubles,
    /// How often the stand had been moved, by position, the last one first; one entry where it was not moved.
    pub(in crate::job) moves: Vec<u32>,
    /// The job's photos, then those of attempts that are adjusted with it.
    pub(in crate::job) photos: Vec<Looked>,
    pub(in crate::job) assignment: Assignment,
    pub(in crate::job) views: Vec<PhotoView>,
    /// How far stand and vehicle moved between the phases; empty where not photographed.
    pub(in crate::job) phases: Vec<Moved>,
}

/// The numbers of moves after which photos were taken, the last first.
fn positions(photos: &[PhotoFile]) -> Vec<u32> {
    let mut moves: Vec<u32> = photos.iter().map(|p| p.after_move).collect();
    moves.sort_unstable_by(|a, b| b.cmp(a));
    moves.dedup();
    moves
}

impl Opened {
    /// Reads a job's files and finds the markers in its photos.
    ///
    /// # Errors
    /// An input that cannot be read or decoded.
    pub(in crate::job) fn read(path: &Path, options: &Options) -> Result<Self, Error> {
        Opened::read_with(path, options, look)
    }

    /// The same with another way to look at photos.
    ///
    /// # Errors
    /// As [`Opened::read`].
    pub(in crate::job) fn read_with(
        path: &Path,
        options: &Options,
        look: impl FnOnce(&[PhotoFile]) -> Result<Vec<Looked>, Error>,
    ) -> Result<Self, Error> {
        let mut folder = JobFolder::open(path, &options.models)?;
        let photos = look(&folder.photos)?;
        let mut assignment = assign(&folder, &photos);
        let mut views = views(&folder, &photos, &mut assignment);
        let names: Vec<&str> = folder.setup.steps.iter().map(String::as_str).collect();
        let moves = positions(&folder.photos);
        let steps = Doubles::of_positions(&folder.kit, &names, &moves);
        for (view, photo) in views.iter_mut().zip(&folder.photos) {
            let position = moves.iter().position(|n| *n == photo.after_move).unwrap_or(0);
            // Of a sheet with steps a photo that names none shows no stand.
            let step = if names.is_empty() { Some(0) } else { photo.step };
            steps.assign(view, step.map(|step| steps.state(position, step)));
            if step.is_none() {
                view.views.retain(|v| steps.kit.carriers[v.carrier].role != Role::Target);
            }
        }
        folder.kit = steps.kit.clone();
        let mut opened = Opened { folder, steps, moves, photos, assignment, views, phases: Vec::new() };
        opened.compare_phases();
        Ok(opened)
    }

    /// The kit as its file describes it, each carrier once.
    pub(in crate::job) fn kit(&self) -> Kit {
        let mut kit = self.folder.kit.clone();
        kit.carriers.truncate(self.steps.carriers());
        kit
    }

    pub(in crate::job) fn problem(&self) -> Problem<'_> {
        Problem { kit: &self.folder.kit, cameras: self.assignment.cameras.iter().collect(), photos: self.views.clone() }
    }

    /// Compares the photos from before and after the calibration. Where
    /// something moved, those from after take no part in the checks.
    fn compare_phases(&mut self) {
        let states: Vec<Option<usize>> =
            self.folder.photos.iter().map(|p| p.phase.map(|phase| usize::from(phase == Phase::After))).collect();
        if !states.contains(&Some(0)) || !states.contains(&Some(1)) {
            return;
        }
        let stands = |c: &Carrier| c.role == Role::Target;
        let problem = self.problem();
        // Floor sheets join the phases; without any, the vehicle does, and only
        // the stand's move against it can be told.
        let floor_seen = |state| {
            let photos = states.iter().zip(&self.views).filter(|(s, _)| **s == Some(state));
            let floors = self.folder.kit.with_role(Role::Floor);
            floors.filter(|k| photos.clone().any(|(_, v)| v.shows(*k))).collect::<Vec<_>>()
        };
        let (before, after) = (floor_seen(0), floor_seen(1));
        let moves = if before.iter().any(|k| after.contains(k)) {
            compare(&problem, &states, |c| stands(c) || c.role.is_on_vehicle())
        } else {
            compare(&problem, &states, stands)
        };
        self.phases = moves.unwrap_or_default();
        if self.phases.iter().any(Moved::is_proven) {
            for j in (0..states.len()).filter(|j| states[*j] == Some(1)) {
                self.views[j].views.clear();
                self.assignment.photos[j] = Err(PhotoProblem::OtherPhase);
            }
        }
    }
}
