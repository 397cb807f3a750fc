//! The built program as a user meets it: exit codes, messages, where results go.

#![cfg(test)]

use crate::staged;
use baywitness::cli;
use baywitness::words::Language;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::LazyLock;

use image::{ExtendedColorType, ImageEncoder, codecs::jpeg::JpegEncoder};
use tempfile::TempDir;

/// Exit codes: all within, some outside, unreadable or wrong usage, not proven, retake.
const WITHIN: i32 = 0;
const OUTSIDE: i32 = 1;
const UNREADABLE: i32 = 2;
const UNUSABLE: i32 = 4;

/// A right job whose stand stands 22 mm too near, staged once for all tests.
static JOB: LazyLock<TempDir> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let mut scene = staged::scene(0.4);
    scene.spec.stand.error.distance_mm = -22.0;
    scene.stage(folder.path(), &mut |_| ()).unwrap();
    folder
});

fn run(arguments: &[&str]) -> Output {
    let mut command = crate::program::program();
    command.args(arguments).env_remove("BAYWITNESS_MODELS").output().unwrap()
}

fn run_in(folder: &Path, arguments: &[&str]) -> Output {
    let mut command = crate::program::program();
    command.args(arguments).current_dir(folder).env_remove("BAYWITNESS_MODELS").output().unwrap()
}

fn verify(job: &Path) -> Output {
    run(&["verify", job.to_str().unwrap()])
}

fn words(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// Ends with `code`; its words (wrapped lines joined) hold each of `says`.
fn ends(output: &Output, code: i32, says: &[&str]) {
    let told = format!("{}{}", words(&output.stdout), words(&output.stderr));
    assert_eq!(output.status.code(), Some(code), "{told}");
    let joined = told.split_whitespace().collect::<Vec<_>>().join(" ");
    for s in says {
        assert!(joined.contains(s), "should say {s:?}:\n{told}");
    }
}

/// A file of the job with one place changed, in a folder of its own.
fn changed(file: &str, old: &str, new: &str) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    staged::copy(JOB.path(), folder.path(), true);
    let path = folder.path().join(file);
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains(old), "{old:?} is not in {text}");
    std::fs::write(&path, text.replacen(old, new, 1)).unwrap();
    folder
}

/// The job without its photos and with `photos` as its list.
fn with_photos(list: &str) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    staged::copy(JOB.path(), folder.path(), false);
    let path = folder.path().join("job.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let lines = text.lines().map(|l| if l.starts_with("photos") { format!("photos = {list}") } else { l.to_owned() });
    std::fs::write(&path, lines.collect::<Vec<_>>().join("\n")).unwrap();
    folder
}

fn photo(name: &str) -> PathBuf {
    JOB.path().join("photos").join(name)
}

/// An evenly grey photo of the job's size, or of another.
fn grey(path: &Path, width: u32, height: u32) {
    let pixels = vec![120; (width * height) as usize];
    let mut bytes = Vec::new();
    JpegEncoder::new(&mut bytes).write_image(&pixels, width, height, ExtendedColorType::L8).unwrap();
    std::fs::write(path, bytes).unwrap();
}

#[test]
fn a_missing_folder_or_file_is_named() {
    ends(&run(&["verify", "no-such-job"]), UNREADABLE, &["error: no-such-job", "check the path"]);
    let empty = tempfile::tempdir().unwrap();
    ends(&verify(empty.path()), UNREADABLE, &["job.toml", "does not exist"]);
    let job = changed("job.toml", "setup = \"setup.toml\"", "setup = \"setpu.toml\"");
    ends(&verify(job.path()), UNREADABLE, &["job.toml, line ", "setup", "setpu.toml"]);
    let job = with_photos("[\"photos/a.jpg\", \"photos/c.jpg\"]");
    ends(&verify(job.path()), UNREADABLE, &["job.toml, line ", "photos"]);
}

#[test]
fn unknown_keys_are_named_with_the_nearest_known() {
    let job = changed("job.toml", "setup = ", "sutep = ");
    ends(&verify(job.path()), UNREADABLE, &["job.toml, line ", "sutep", "did you mean `setup`"]);
    let job = changed("kit.toml", "centre_mm = ", "centre_cm = ");
    ends(&verify(job.path()), UNREADABLE, &["kit.toml, line ", "centre_cm", "did you mean `centre_mm`"]);
}

#[test]
fn an_id_twice_is_refused() {
    let job = changed("kit.toml", "id = 1\n", "id = 0\n");
    ends(&verify(job.path()), UNREADABLE, &["kit.toml, line ", "id", "0"]);
}

#[test]
fn numbers_that_are_none_or_negative_are_refused() {
    let job = changed("kit.toml", "size_xy_mm = [150.0", "size_xy_mm = [-150.0");
    ends(&verify(job.path()), UNREADABLE, &["kit.toml, line ", "carrier[0].marker[0].size_xy_mm"]);
    let job = changed("kit.toml", "size_xy_mm = [150.0", "size_xy_mm = [nan");
    ends(&verify(job.path()), UNREADABLE, &["kit.toml, line ", "carrier[0].marker[0].size_xy_mm"]);
    let job = changed("setup.toml", "nominal = 1500.0", "nominal = nan");
    ends(&verify(job.path()), UNREADABLE, &["setup.toml, line ", "nominal"]);
    let job = changed("camera.toml", "focal_px = [", "focal_px = [-1.0, 2.0] # ");
    ends(&verify(job.path()), UNREADABLE, &["camera.toml, line ", "focal_px"]);
}

#[test]
fn a_truncated_photo_is_unreadable() {
    let job = with_photos("[\"photos/a.jpg\", \"photos/b.jpg\"]");
    std::fs::copy(photo("b.jpg"), job.path().join("photos/b.jpg")).unwrap();
    let bytes = std::fs::read(photo("a.jpg")).unwrap();
    for share in [1, 4, 8, 9] {
        std::fs::write(job.path().join("photos/a.jpg"), &bytes[..bytes.len() * share / 10]).unwrap();
        ends(&verify(job.path()), UNREADABLE, &["a.jpg", "cut off", "copy it from the camera again"]);
    }
    std::fs::write(job.path().join("photos/a.jpg"), b"").unwrap();
    ends(&verify(job.path()), UNREADABLE, &["a.jpg", "empty"]);
    std::fs::write(job.path().join("photos/a.jpg"), b"%PDF-1.7 and more").unwrap();
    ends(&verify(job.path()), UNREADABLE, &["a.jpg"]);
}

#[test]
fn one_photo_alone_is_retake() {
    let job = with_photos("[\"photos/a.jpg\"]");
    std::fs::copy(photo("a.jpg"), job.path().join("photos/a.jpg")).unwrap();
    let output = verify(job.path());
    ends(&output, UNUSABLE, &["RETAKE", "Only one photo", "Take at least one more", "Too few photos can be used"]);
    // It does show the stand.
    assert!(!words(&output.stdout).contains("No usable photo shows"), "{}", words(&output.stdout));
}

#[test]
fn photos_without_markers_are_retake() {
    let job = with_photos("[\"photos/a.jpg\", \"photos/b.jpg\"]");
    for name in ["a.jpg", "b.jpg"] {
        grey(&job.path().join("photos").join(name), 1536, 1152);
    }
    ends(&verify(job.path()), UNUSABLE, &["RETAKE", "No photo can be measured"]);
}

#[test]
fn photos_of_another_size_than_the_camera_s_are_retake() {
    let job = changed("camera.toml", "image_size_px = [1536, 1152]", "image_size_px = [1600, 1200]");
    let says = ["RETAKE", "1536 x 1152", "1600 x 1200", "photo-resized"];
    ends(&verify(job.path()), UNUSABLE, &says);
}

#[test]
fn a_stand_too_near_is_outside_and_told_where_to_go() {
    let output = verify(JOB.path());
    ends(&output, OUTSIDE, &["OUTSIDE TOLERANCE", "Move the stand ", "mm away from the vehicle"]);
    assert!(output.stderr.is_empty(), "{}", words(&output.stderr));
}

#[test]
fn json_on_standard_output_is_pure() {
    let output = run(&["verify", JOB.path().to_str().unwrap(), "--json", "-"]);
    ends(&output, OUTSIDE, &[]);
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!((&json["format"], &json["verdict"]), (&"result/1".into(), &"outside".into()));
    assert!(json["checks"].as_array().is_some_and(|c| c.len() == 5));
    assert!(words(&output.stderr).contains("OUTSIDE TOLERANCE"));
}

#[test]
fn of_several_jobs_the_worst_wins_and_failures_stay_in_the_array() {
    let good = JOB.path().to_str().unwrap();
    let output = run(&["verify", good, "no-such-job", "--json", "-"]);
    ends(&output, UNREADABLE, &[]);
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!((&json[0]["format"], &json[1]["format"]), (&"result/1".into(), &"error/1".into()));
    assert_eq!(json[1]["path"], "no-such-job");
    assert!(json[1]["message"].as_str().is_some_and(|m| m.contains("no-such-job")));
    // Retake is worse than outside.
    let one = with_photos("[\"photos/a.jpg\"]");
    std::fs::copy(photo("a.jpg"), one.path().join("photos/a.jpg")).unwrap();
    ends(&run(&["verify", one.path().to_str().unwrap(), good]), UNUSABLE, &["RETAKE", "OUTSIDE TOLERANCE"]);
}

#[test]
fn a_report_and_a_record_are_written_where_they_are_wanted() {
    let folder = tempfile::tempdir().unwrap();
    let (reports, record) = (folder.path().join("new/reports"), folder.path().join("record.json"));
    let job = JOB.path().to_str().unwrap();
    let arguments = ["verify", job, "--report", reports.to_str().unwrap(), "--json", record.to_str().unwrap()];
    let output = run(&[&arguments[..], &["--threads", "1"]].concat());
    ends(&output, OUTSIDE, &["OUTSIDE TOLERANCE"]);
    let files: Vec<_> = std::fs::read_dir(&reports).unwrap().map(|e| e.unwrap().path()).collect();
    let of = |ending: &str| files.iter().find(|f| f.extension().is_some_and(|e| e == ending)).unwrap();
    assert_eq!(files.len(), 4, "page, PDF, result, folder of the customer's page: {files:?}");
    assert!(std::fs::read(of("pdf")).unwrap().starts_with(b"%PDF-"));
    let page = std::fs::read_to_string(of("html")).unwrap();
    assert!(page.starts_with("<!DOCTYPE html>") && page.trim_end().ends_with("</html>"));
    // One file: pictures within, nothing fetched.
    assert!(page.contains("data:image/") && !page.contains("src=\"http"));
    let json: serde_json::Value = serde_json::from_slice(&std::fs::read(&record).unwrap()).unwrap();
    assert_eq!(json["format"], "result/1");
    let beside: serde_json::Value = serde_json::from_slice(&std::fs::read(of("json")).unwrap()).unwrap();
    assert_eq!(beside, json);
}

#[test]
fn wrong_usage_is_told() {
    ends(&run(&["verify"]), UNREADABLE, &["JOB"]);
    ends(&run(&["verify", "x", "--jsno", "-"]), UNREADABLE, &["--jsno", "--json"]);
    ends(&run(&["verfy", "x"]), UNREADABLE, &["verfy", "verify"]);
    ends(&run(&["verify", "x", "--threads", "many"]), UNREADABLE, &["--threads"]);
    let empty = tempfile::tempdir().unwrap();
    let alone = run_in(empty.path(), &[]);
    ends(&alone, UNREADABLE, &["Usage", "Start with", "Measure:"]);
    assert!(alone.stdout.is_empty(), "{}", words(&alone.stdout));
    ends(&run(&["--help"]), WITHIN, &["verify", "detect", "sheet", "stage"]);
    ends(&run(&["verify", "--help"]), WITHIN, &["--json", "--report", "--models", "--threads"]);
    ends(&run(&["--version"]), WITHIN, &["baywitness", env!("CARGO_PKG_VERSION")]);
}

/// Help and what is wrong, in the language that was typed or that the environment has.
#[test]
fn the_program_explains_itself_in_the_reader_s_language() {
    ends(
        &run(&["--language", "de", "verify", "--help"]),
        WITHIN,
        &["Aufruf: baywitness verify [OPTIONEN] <JOB>...", "--json"],
    );
    ends(&run(&["--language=fr", "help", "camera", "fit"]), WITHIN, &["Utilisation : baywitness camera fit [OPTIONS]"]);
    ends(&run(&["--language", "es", "log"]), UNREADABLE, &["Comandos:", "witness"]);
    let mistyped = run(&["--language", "de", "verify", "--jsn", "x", "J"]);
    ends(
        &mistyped,
        UNREADABLE,
        &["Fehler: unbekannte Angabe", "War --json gemeint?", "Mehr: baywitness verify --help"],
    );
    let french = crate::program::program().env("LC_ALL", "fr_CA.UTF-8").args(["plan", "-h"]).output().unwrap();
    ends(&french, WITHIN, &["Utilisation : baywitness plan", "par défaut : 4000"]);
    assert!(!words(&french.stdout).contains("Usage"), "{}", words(&french.stdout));
    ends(
        &run(&["--language", "xx", "verify", "J"]),
        UNREADABLE,
        &["error: 'xx' is not valid for --language <TAG>: choose one of en, de"],
    );
}

/// Lines of the help under each phase's heading.
#[test]
fn the_help_lists_every_command_once_under_a_phase() {
    let help = words(&run(&["--help"]).stdout);
    let known = cli::command();
    let (mut phase, mut listed) = (None, Vec::new());
    for line in help.lines() {
        assert!(line.chars().count() <= 100 && !line.contains('\u{1b}'), "{line}");
        if let Some(found) = cli::PHASES.iter().find(|p| line.starts_with(&format!("{}: ", p.name(Language::English))))
        {
            phase = Some(found);
        } else if line.is_empty() {
            phase = None;
        } else if let Some(phase) = phase {
            let (name, about) = line.trim().split_once("  ").unwrap();
            assert!(
                phase.commands.contains(&name) && line.starts_with("  "),
                "{name} under {}",
                phase.name(Language::English)
            );
            assert_eq!(about.trim(), known.find_subcommand(name).unwrap().get_about().unwrap().to_string());
            listed.push(name.to_owned());
        }
    }
    // The parser's own.
    let own = known.get_subcommands().filter(|c| c.get_name() != "help");
    let mut all: Vec<_> = own.map(|c| c.get_name().to_owned()).collect();
    listed.sort();
    all.sort();
    assert_eq!(listed, all);
    assert!(all.len() > 25, "{} commands", all.len());
    // The three to start with are typed as the program takes them.
    let start = help.split("Start with:").nth(1).unwrap().trim_start_matches('\n').lines().take(3);
    for line in start {
        let typed = line.trim().split("  ").next().unwrap();
        let typed = ["baywitness"].into_iter().chain(typed.split(' '));
        assert!(known.clone().try_get_matches_from(typed).is_ok(), "{line}");
    }
}

/// Without a command: what is missing is said, and what is offered can be done.
#[test]
fn alone_among_jobs_it_says_what_could_be_done_next() {
    let room = tempfile::tempdir().unwrap();
    staged::copy(JOB.path(), &room.path().join("jobs/D 1"), true);
    ends(&run_in(room.path(), &["new", "jobs/D-2", "--setup", "radar-plate"]), 0, &[]);
    let first = run_in(room.path(), &[]);
    let photos = "jobs/D-2: not ready yet jobs/D-2/job.toml: names no photos";
    ends(&first, WITHIN, &["\"jobs/D 1\": 2 photos", photos, "put the photos of the bay into the folder photos/"]);
    assert!(first.stderr.is_empty(), "{}", words(&first.stderr));
    let offered: Vec<Vec<String>> = words(&first.stdout)
        .lines()
        .filter_map(|l| l.strip_prefix("  baywitness "))
        .map(|l| l.replace("D 1", "D_1").split(' ').map(|w| w.trim_matches('"').replace("D_1", "D 1")).collect())
        .collect();
    let [verify, seal] = offered.as_slice() else { panic!("{offered:?}") };
    let typed = |line: &[String]| run_in(room.path(), &line.iter().map(String::as_str).collect::<Vec<_>>());
    ends(&typed(verify), OUTSIDE, &["OUTSIDE TOLERANCE", "Report: report/"]);
    ends(&typed(seal), WITHIN, &["Sealed job"]);
    // What is sealed is offered to be checked, not sealed again.
    let then = run_in(room.path(), &[]);
    ends(&then, WITHIN, &["\"evidence/D 1\": sealed", "baywitness check \"evidence/D 1\""]);
    assert!(!words(&then.stdout).contains("baywitness seal"), "{}", words(&then.stdout));
    // In the job's own folder; quiet or mistyped, it is wrong usage as before.
    ends(&run_in(&room.path().join("jobs/D 1"), &[]), WITHIN, &["baywitness verify . --report"]);
    ends(&run_in(room.path(), &["--quiet"]), UNREADABLE, &[]);
}

#[test]
fn alone_with_one_photo_or_an_open_question_it_asks() {
    let job = with_photos("[\"photos/a.jpg\"]");
    std::fs::copy(photo("a.jpg"), job.path().join("photos/a.jpg")).unwrap();
    ends(&run_in(job.path(), &[]), WITHIN, &["one photo", "take at least one more"]);
}

#[test]
fn a_new_job_folder_is_a_job_once_it_has_photos() {
    let folder = tempfile::tempdir().unwrap();
    let job = folder.path().join("D-0042");
    let at = job.to_str().unwrap();
    ends(&run(&["new", at, "--setup", "radar-plate-two-tilts"]), 0, &["job.toml", "baywitness verify"]);
    let text = std::fs::read_to_string(job.join("job.toml")).unwrap();
    assert!(text.contains("job = \"D-0042\"") && text.contains("# step = \"up\""), "{text}");
    // What is typed is compared with the photos, tracks included.
    assert!(text.contains("# rear_track_mm = ") && text.contains("# front_track_mm = "), "{text}");
    let sizes = text.lines().filter(|l| l.starts_with("# wheelbase_mm") || l.starts_with("# nose_from"));
    assert_eq!(sizes.filter(|l| l.contains("compared with the photos")).count(), 2, "{text}");
    // Every line that is a comment only because it is not known yet can be filled in.
    let known = text.replace("# tyre_pressures_set = true", "tyre_pressures_set = true");
    assert!(known != text && known.replace("# bay", "bay").parse::<toml::Table>().is_ok(), "{text}");
    ends(&run(&["new", at, "--setup", "radar-plate-two-tilts"]), 2, &["is there already"]);
    ends(&run(&["new", &format!("{at}-2"), "--setup", "radar-plat"]), 2, &["radar-plat"]);
    ends(&run(&["new", &format!("{at}-2"), "--setup", "surround-mats", "--kit", "bay-a4"]), 2, &["target"]);
    assert!(!folder.path().join("D-0042-2").exists());
    ends(&run(&["verify", at]), 2, &["put the photos of the bay into the folder photos/"]);
}

/// What `docs/commands.md` says of each code, `explain` says too.
#[test]
fn exit_codes_are_explained_for_every_command_that_ends_with_them() {
    ends(&run(&["explain", "0"]), 0, &["watch"]);
    ends(&run(&["explain", "1"]), 0, &["watch", "log check", "log witness"]);
    ends(&run(&["explain", "3"]), 0, &["watch", "setup check", "seating", "log check", "not confirmed"]);
    ends(&run(&["explain", "4"]), 0, &["watch"]);
    ends(&run(&["explain", "stand-moved-between-photos"]), 0, &["--moved"]);
}

#[test]
fn quiet_leaves_the_exit_code_and_errors() {
    let quiet = run(&["--quiet", "explain", "stand-turned"]);
    assert!(quiet.status.success() && quiet.stdout.is_empty() && quiet.stderr.is_empty(), "{quiet:?}");
    let wrong = run(&["explain", "no-such-code", "--quiet"]);
    assert!(wrong.status.code() == Some(2) && !wrong.stderr.is_empty(), "{wrong:?}");
}

#[test]
fn json_is_never_written_over_a_photo() {
    let folder = tempfile::tempdir().unwrap();
    let [first, second] = ["a.jpg", "b.jpg"].map(|name| {
        let to = folder.path().join(name);
        std::fs::copy(JOB.path().join("photos").join(name), &to).unwrap();
        to
    });
    let before = std::fs::read(&first).unwrap();
    let output = run(&["detect", "--json", first.to_str().unwrap(), second.to_str().unwrap()]);
    ends(&output, UNREADABLE, &["a.jpg is a photo and stays as it is", "photos go in front"]);
    assert_eq!(std::fs::read(&first).unwrap(), before);
}

/// Who reads only the beginning of what is written ends the program, not in a fault.
#[cfg(unix)]
#[test]
fn a_reader_who_leaves_is_no_fault() {
    use std::io::Read;
    use std::process::Stdio;
    let photo = JOB.path().join("photos/a.jpg");
    for arguments in [vec!["detect", "--json", "-"], vec!["detect"]] {
        let mut child = crate::program::program()
            .args(&arguments)
            .args([&photo; 12])
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let mut first = [0; 1];
        child.stdout.take().unwrap().read_exact(&mut first).unwrap();
        let output = child.wait_with_output().unwrap();
        assert!(!words(&output.stderr).contains("panicked"), "{arguments:?}: {}", words(&output.stderr));
        assert_ne!(output.status.code(), Some(101), "{arguments:?}");
    }
}

/// A pipe could block for ever: it is named, and what to do instead.
#[cfg(unix)]
#[test]
fn a_pipe_is_no_photo() {
    let folder = tempfile::tempdir().unwrap();
    let pipe = folder.path().join("photo.jpg");
    assert!(Command::new("mkfifo").arg(&pipe).status().unwrap().success());
    ends(&run(&["detect", pipe.to_str().unwrap()]), UNREADABLE, &["photo.jpg", "it is no file"]);
}
