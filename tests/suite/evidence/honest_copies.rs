//! Masked copies of honest jobs, which nobody may call altered, whatever lies in the job's folder and whoever chose
//! its camera.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use super::doors::{rewrite, run, seal_with};

/// A small bay, rendered once for all tests.
static BAY: LazyLock<tempfile::TempDir> = LazyLock::new(|| {
    let dir = tempfile::tempdir().unwrap();
    crate::staged::scene(0.4).stage(dir.path(), &mut |_| ()).unwrap();
    fs::remove_file(dir.path().join("truth.json")).unwrap();
    dir
});

/// A small job that is within, in a folder of its own.
pub(crate) fn job(to: &Path) -> PathBuf {
    crate::staged::copy(BAY.path(), to, true);
    to.to_owned()
}

/// A job after a change, sealed and masked; what `check` says of folder and copy.
fn sealed_and_masked(change: impl FnOnce(&Path)) -> [(i32, String); 2] {
    let dir = tempfile::tempdir().unwrap();
    let key = super::fresh_key(dir.path(), "");
    let list = dir.path().join("signers");
    fs::write(&list, format!("T1 {}", fs::read_to_string(key.with_extension("pub")).unwrap())).unwrap();
    let (job, sealed, copy) = (job(&dir.path().join("in")), dir.path().join("sealed"), dir.path().join("copy"));
    change(&job);
    let (code, said) = seal_with(&job, &sealed, &key, None);
    assert_eq!(code, 0, "{said}");
    let (code, said) = run(&[&sealed, Path::new("--out"), &copy], &["redact"], None);
    assert_eq!(code, 0, "{said}");
    [&sealed, &copy].map(|folder| run(&[folder, Path::new("--signers"), &list], &["check"], None))
}

/// Folder and copy check with 0, and the copy was measured.
fn both_hold([folder, copy]: [(i32, String); 2]) {
    assert_eq!(folder.0, 0, "{}", folder.1);
    assert!(copy.0 == 0 && copy.1.contains("passed          measured again"), "{}: {}", copy.0, copy.1);
}

fn without_its_camera(job: &Path) {
    rewrite(&job.join("job.toml"), |text| text.replace("camera = \"camera.toml\"\n", ""));
}

#[test]
fn of_a_job_with_nothing_remarkable() {
    both_hold(sealed_and_masked(|_| ()));
}

/// What is said of the checks without a reading orders no move.
#[test]
fn of_a_job_that_measures_with_a_reading() {
    both_hold(sealed_and_masked(|job| {
        rewrite(&job.join("job.toml"), |text| {
            text.replace("value = 1502.0\n", "value = 1502.0\nu = 1.5\nuse = true\n")
        });
    }));
}

/// A picture that the job does not list is named by the result and left out of the copy.
#[test]
fn of_a_job_with_a_picture_that_it_does_not_list() {
    both_hold(sealed_and_masked(|job| {
        fs::copy(job.join("photos/a.jpg"), job.join("photos/z.jpg")).unwrap();
    }));
}

/// A camera that the photos' own records chose among those of the job's own folder of cameras, while another file
/// beside the job bears its name.
#[test]
fn of_a_job_whose_photos_chose_among_its_own_cameras() {
    both_hold(sealed_and_masked(|job| {
        without_its_camera(job);
        fs::create_dir(job.join("cameras")).unwrap();
        fs::rename(job.join("camera.toml"), job.join("cameras/setup.toml")).unwrap();
    }));
}

/// No camera fits: nothing is measured, and the words are not those of several cameras.
#[test]
fn of_a_job_without_any_camera() {
    let [folder, copy] = sealed_and_masked(without_its_camera);
    assert_eq!(folder.0, 0, "{}", folder.1);
    let line = copy.1.lines().find(|line| line.contains("measured again")).unwrap();
    assert!(copy.0 == 0 && line.contains("no camera file fits its photos"), "{}", copy.1);
}

/// A photo that took no part as its own record names another phone has no record in the copy.
#[test]
fn of_a_job_with_a_photo_by_another_phone() {
    both_hold(sealed_and_masked(|job| {
        let photo = job.join("photos/b.jpg");
        let (mut bytes, model) = (fs::read(&photo).unwrap(), b"Invented Phone 11M");
        let at = bytes.windows(model.len()).position(|w| w == model).unwrap();
        bytes[at..at + model.len()].copy_from_slice(b"Invented Phone 12X");
        fs::write(&photo, bytes).unwrap();
    }));
}
