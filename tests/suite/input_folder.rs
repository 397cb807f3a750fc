//! Job folders: what is found where, and what a job may not reach.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test may stop where its own helper fails, and say that it skips"
)]

use std::path::{Path, PathBuf};

use baywitness::folder::{JobFolder, Models, Origin};
use baywitness::input::SourceFile;
use baywitness::marker::Layout;

/// Independent job folders with known truth, kept outside the project.
fn shared_jobs() -> Option<Vec<PathBuf>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/bay/jobs");
    let Ok(entries) = std::fs::read_dir(&folder) else {
        println!("skipped: {} is absent", folder.display());
        return None;
    };
    let jobs = entries.filter_map(|e| Some(e.ok()?.path())).filter(|p| p.join("job.toml").exists());
    Some(jobs.collect())
}

#[test]
fn independent_job_folders_open() {
    let Some(jobs) = shared_jobs() else { return };
    assert!(!jobs.is_empty());
    for job in jobs {
        let opened = JobFolder::open(&job, &Models::embedded()).unwrap();
        assert!(opened.photos.len() >= 2, "{}", job.display());
        assert_eq!(opened.inputs.len(), 4);
        assert!(opened.candidates.is_empty());
    }
}

/// A right job that names everything by path; markers as small as may be.
struct Bench {
    folder: tempfile::TempDir,
}

const JOB: &str =
    "format = \"job/1\"\njob = \"D-1\"\nsetup = \"setup.toml\"\nkit = \"kit.toml\"\ncamera = \"camera.toml\"\n";
const SETUP: &str = "format = \"setup/1\"\nname = \"s\"\ntitle = \"t\"\nsource = \"invented\"\n\
    reference_line = \"centreline\"\n\n[[datum]]\nname = \"sensor\"\ncarrier = \"nose\"\noffset_mm = [0, 0, 0]\nu_mm = 1\n\n\
    [[check]]\nquantity = \"yaw\"\nnominal = 0\ntolerance = 1\n";
const KIT: &str = "format = \"kit/1\"\nname = \"r\"\nfamily = \"36h11\"\n\n[[carrier]]\nname = \"stand\"\nrole = \"target\"\n\n\
    [[carrier.marker]]\nid = 1\nsize_mm = 100\ncentre_mm = [0, 0, 0]\nright = [0, 1, 0]\nup = [0, 0, 1]\n\n\
    [[carrier]]\nname = \"nose\"\nrole = \"nose\"\n\n\
    [[carrier.marker]]\nid = 2\nsize_mm = 50\ncentre_mm = [0, 0, 0]\nright = [0, 1, 0]\nup = [0, 0, 1]\n";
const CAMERA: &str = "format = \"camera/1\"\nname = \"own\"\nmodel = \"brown-conrady\"\nimage_size_px = [4000, 3000]\n\
    focal_px = [3000, 3000]\ncentre_px = [2000, 1500]\ndistortion = [0, 0, 0, 0, 0]\n\n[exif]\nmake = \"Invented\"\n";

impl Bench {
    fn new() -> Self {
        let bench = Bench { folder: tempfile::tempdir().unwrap() };
        for (name, text) in [("job.toml", JOB), ("setup.toml", SETUP), ("kit.toml", KIT), ("camera.toml", CAMERA)] {
            bench.write(&format!("job/{name}"), text);
        }
        for name in ["b.JPG", "a.png", "c.heic", "notes.txt", "._a.png"] {
            bench.write(&format!("job/photos/{name}"), "x");
        }
        bench
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn write(&self, name: &str, text: &str) {
        let path = self.path(name);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, text).unwrap();
    }

    fn job(&self, change: impl FnOnce(String) -> String) -> Result<JobFolder, String> {
        self.write("job/job.toml", &change(JOB.to_owned()));
        self.open(&Models::embedded())
    }

    fn open(&self, models: &Models) -> Result<JobFolder, String> {
        JobFolder::open(&self.path("job"), models).map_err(|e| {
            // People are shown the path as typed; the tests look for what follows it.
            e.to_string().replace(&format!("{}/", self.path("job").display()), "")
        })
    }
}

#[test]
fn a_job_that_names_nothing_takes_all_its_pictures_by_name() {
    let opened = Bench::new().job(|j| j).unwrap();
    let names: Vec<&str> = opened.photos.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["photos/a.png", "photos/b.JPG", "photos/c.heic"]);
    let roles: Vec<_> = opened.inputs.iter().map(|i| (i.role, i.name.as_str(), i.origin)).collect();
    assert_eq!(
        roles,
        [
            ("job", "job.toml", Origin::Job),
            ("kit", "kit.toml", Origin::Job),
            ("setup", "setup.toml", Origin::Job),
            ("camera", "camera.toml", Origin::Job),
        ]
    );
    assert!(opened.camera.is_some() && opened.candidates.is_empty());
}

#[test]
fn names_are_looked_for_in_order() {
    let bench = Bench::new();
    let with_kit = |name: &str| JOB.replace("\"kit.toml\"", &format!("\"{name}\""));
    let kit_named = |name: &str| KIT.replacen("name = \"r\"", &format!("name = \"{name}\""), 1);
    bench.write("job/job.toml", &with_kit("shop"));
    bench.write("models/kits/shop.toml", &kit_named("from models"));
    let models = Models::in_folder(&bench.path("models")).unwrap();
    let opened = bench.open(&models).unwrap();
    assert_eq!((opened.kit.name.as_str(), opened.inputs[1].origin), ("from models", Origin::ModelsOption));
    bench.write("job/shop.toml", &kit_named("from job"));
    let opened = bench.open(&models).unwrap();
    assert_eq!((opened.kit.name.as_str(), opened.inputs[1].origin), ("from job", Origin::Job));

    bench.write("job/job.toml", &with_kit("demo-bay"));
    let opened = bench.open(&models).unwrap();
    assert_eq!((opened.kit.name.as_str(), opened.inputs[1].origin), ("demo-bay", Origin::Embedded));
    assert_eq!(opened.inputs[1].path, None);

    bench.write("job/job.toml", &with_kit("demo-bya"));
    let told = bench.open(&models).unwrap_err();
    assert!(told.starts_with("job.toml, line 4, column 1: kit: no kit \"demo-bya\" is found in"), "{told}");
    assert!(told.contains("models/kits") && told.contains("did you mean \"demo-bay\"?"), "{told}");
    bench.write("job/job.toml", &with_kit("kit.tom"));
    let told = bench.open(&models).unwrap_err();
    assert!(told.contains("did you mean \"kit.toml\"?"), "{told}");
    assert!(Models::in_folder(&bench.path("nowhere")).unwrap_err().to_string().contains("--models"));
}

#[test]
fn shared_models_may_lie_beside_the_job() {
    let bench = Bench::new();
    bench.write("kit.toml", KIT);
    assert!(bench.job(|j| j.replace("\"kit.toml\"", "\"../kit.toml\"")).is_ok());
    let absolute = bench.path("kit.toml").display().to_string();
    let told = bench.job(|j| j.replace("\"kit.toml\"", &format!("\"{absolute}\""))).unwrap_err();
    assert!(told.starts_with("job.toml, line 4, column 1: kit: ") && told.contains("absolute path"), "{told}");
    let told = bench.job(|j| j.replace("\"kit.toml\"", "'..\\kit.toml'")).unwrap_err();
    assert!(told.contains("backslash; write paths with /"), "{told}");
}

#[test]
fn cameras_are_candidates_where_the_job_names_none() {
    let bench = Bench::new();
    bench.write("job/cameras/own.toml", CAMERA);
    bench.write("job/job.toml", &JOB.replace("camera = \"camera.toml\"\n", ""));
    bench.write("models/cameras/own.toml", &CAMERA.replace("\"own\"", "\"hidden\""));
    bench.write("models/cameras/other.toml", &CAMERA.replace("\"own\"", "\"other\""));
    let opened = bench.open(&Models::in_folder(&bench.path("models")).unwrap()).unwrap();
    let found: Vec<_> = opened.candidates.iter().map(|c| (c.profile.name.as_str(), c.input.origin)).collect();
    assert_eq!(found, [("own", Origin::Job), ("other", Origin::ModelsOption), ("demo-phone", Origin::Embedded),]);
    assert!(opened.candidates[0].profile.is_for([4000, 3000], Some("INVENTED"), None, None));
    assert!(!opened.candidates[0].profile.is_for([3000, 4000], Some("INVENTED"), None, None));
}

#[test]
fn folders_that_are_no_jobs_say_so() {
    let bench = Bench::new();
    let wrong = |name: &str| JobFolder::open(&bench.path(name), &Models::embedded()).unwrap_err().to_string();
    assert!(wrong("nowhere").contains("cannot be opened"), "{}", wrong("nowhere"));
    assert!(
        wrong("job/job.toml").contains("is a file, not a job folder; name the folder"),
        "{}",
        wrong("job/job.toml")
    );
    assert!(wrong("job/photos").contains("job.toml: does not exist: this is no job folder"), "{}", wrong("job/photos"));
}

#[test]
fn photos_must_be_there_and_inside() {
    let bench = Bench::new();
    let listed = |names: &str| bench.job(|j| format!("{j}photos = [{names}]\n"));
    assert_eq!(listed("\"photos/b.JPG\", \"photos/a.png\"").unwrap().photos[0].name, "photos/a.png", "sorted");
    let missing = listed("\"photos/a.png\",\n\"photos/z.jpg\"").unwrap_err();
    assert!(missing.starts_with("job.toml, line 7, column 1: photos[1]: \"photos/z.jpg\" does not exist"), "{missing}");
    let outside = listed("\"../secret.jpg\"").unwrap_err();
    assert!(outside.contains("photos[0]: \"../secret.jpg\" reaches outside the job folder"), "{outside}");
    let twice = listed("\"photos/a.png\", \"./photos/a.png\"").unwrap_err();
    assert!(twice.contains("photos[1]") && twice.contains("are the same file"), "{twice}");
    for name in ["b.JPG", "a.png", "c.heic"] {
        std::fs::remove_file(bench.path("job/photos").join(name)).unwrap();
    }
    let none = bench.job(|j| j).unwrap_err();
    assert!(none.contains("job.toml: names no photos") && none.contains("put the photos"), "{none}");
    std::fs::remove_dir_all(bench.path("job/photos")).unwrap();
    let none = bench.job(|j| j).unwrap_err();
    assert!(none.contains("photos/ cannot be read"), "{none}");
}

#[cfg(unix)]
#[test]
fn links_that_lead_outside_are_refused() {
    let bench = Bench::new();
    bench.write("secret.jpg", "x");
    std::os::unix::fs::symlink(bench.path("secret.jpg"), bench.path("job/photos/d.jpg")).unwrap();
    let told = bench.job(|j| j).unwrap_err();
    assert!(told.contains("\"photos/d.jpg\" is a link that leads outside"), "{told}");
}

#[test]
fn attachments_are_hashed_where_they_lie() {
    let bench = Bench::new();
    let attached = |file: &str| bench.job(|j| format!("{j}\n[[attachment]]\nfile = \"{file}\"\nkind = \"other\"\n"));
    bench.write("job/scan.pdf", "abc");
    let opened = attached("scan.pdf").unwrap();
    // FIPS 180-4: SHA-256 of "abc".
    assert_eq!(opened.attachments[0].sha256, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    let missing = attached("scan2.pdf").unwrap_err();
    assert!(
        missing.starts_with("job.toml, line 8, column 1: attachment[0].file: \"scan2.pdf\" does not exist"),
        "{missing}"
    );
}

#[test]
fn files_must_fit_together() {
    let bench = Bench::new();
    let reading = |from: &str| {
        bench.job(|j| {
            format!("{j}[[reading]]\nquantity = \"distance\"\nfrom = \"{from}\"\nvalue = 1\ninstrument = \"tape\"\n")
        })
    };
    assert!(reading("sensor").is_ok());
    let told = reading("senzor").unwrap_err();
    assert!(told.starts_with("job.toml, line 8, column 1: reading[0].from: ") && told.contains("`sensor`"), "{told}");

    let named = |quantity: &str, key: &str, name: &str| {
        bench.job(|j| {
            format!("{j}[[reading]]\nquantity = \"{quantity}\"\n{key} = \"{name}\"\nvalue = 1\ninstrument = \"tape\"\n")
        })
    };
    assert!(named("height", "target", "stand").is_ok());
    let told = named("height", "target", "stend").unwrap_err();
    assert!(told.starts_with("job.toml, line 8, column 1: reading[0].target: ") && told.contains("`stand`"), "{told}");
    // What is on the vehicle is no target, the sheet has no steps, and an arch has neither.
    assert!(named("height", "target", "nose").unwrap_err().contains("reading[0].target: "));
    assert!(named("height", "step", "up").unwrap_err().contains("reading[0].step: "));
    assert!(named("arch_height_rear_left", "target", "stand").unwrap_err().contains("reading[0].target: "));
    assert!(named("arch_height_rear_left", "step", "up").unwrap_err().contains("reading[0].step: "));

    let setup = |change: &dyn Fn(String) -> String| {
        bench.write("job/setup.toml", &change(SETUP.to_owned()));
        bench.job(|j| j).unwrap_err()
    };
    let told = setup(&|s| s.replace("carrier = \"nose\"", "carrier = \"noze\""));
    assert!(told.starts_with("setup.toml, line 9, column 1: datum[0].carrier: ") && told.contains("`nose`"), "{told}");
    let told = setup(&|s| s.replace("carrier = \"nose\"", "carrier = \"stand\""));
    assert!(told.contains("has the role target"), "{told}");
    let told = setup(&|s| format!("{s}target = \"stend\"\n"));
    assert!(told.starts_with("setup.toml, line 17, column 1: check[0].target: ") && told.contains("`stand`"), "{told}");

    bench.write("job/setup.toml", SETUP);
    bench.write("job/kit.toml", &KIT.replace("\"nose\"\nrole = \"nose\"", "\"nose\"\nrole = \"target\""));
    let told = bench.job(|j| j).unwrap_err();
    assert!(told.contains("datum[0].carrier"), "{told}");
    bench.write("job/setup.toml", &SETUP.replace("carrier = \"nose\"", "carrier = \"floor\""));
    bench.write(
        "job/kit.toml",
        &format!(
            "{}\n[[carrier]]\nname = \"floor\"\nrole = \"floor\"\n[[carrier.marker]]\nid = 3\nsize_mm = 9\n\
         centre_mm = [0, 0, 0]\nright = [0, -1, 0]\nup = [1, 0, 0]\n",
            KIT.replace("\"nose\"\nrole = \"nose\"", "\"nose\"\nrole = \"target\""),
        ),
    );
    let told = bench.job(|j| j).unwrap_err();
    assert!(
        told.contains("check[0]: does not say which target is meant") && told.contains("add target = \"stand\""),
        "{told}"
    );
}

#[test]
fn a_layout_belongs_to_one_kit_file() {
    let bench = Bench::new();
    let kit = KIT.replacen("family", "layout = \"layout.json\"\nfamily", 1);
    bench.write("job/kit.toml", &kit);
    let told = bench.job(|j| j).unwrap_err();
    assert!(told.starts_with("kit.toml, line 3, column 1: layout: ") && told.contains("does not exist"), "{told}");

    let sha256 = SourceFile::new("kit.toml", kit.into_bytes()).sha256();
    let covariance = nalgebra::DMatrix::identity(12, 12) * 0.01;
    let layout = Layout { ids: vec![2, 1], covariance, with_sizes: None };
    bench.write("job/layout.json", &layout.to_json(&sha256));
    let opened = bench.job(|j| j).unwrap();
    assert_eq!(opened.kit.layout.as_ref(), Some(&layout));
    assert_eq!((opened.inputs[2].role, opened.inputs[2].name.as_str()), ("layout", "layout.json"));
    assert_eq!(baywitness::marker::Kit::read(&bench.path("job/kit.toml")).unwrap(), opened.kit);

    let wrong = |text: String| {
        bench.write("job/layout.json", &text);
        bench.job(|j| j).unwrap_err()
    };
    let good = layout.to_json(&sha256);
    for (text, says) in [
        (layout.to_json("00"), "kit_sha256: belongs to another kit file"),
        (good.replace("layout/1", "layout/2"), "format: this is a \"layout/2\" file"),
        (good.replace("[2,1]", "[2,3]"), "ids: marker id 3 is not in the kit"),
        (good.replace("[2,1]", "[2,2]"), "ids: marker id 2 is listed twice"),
        (good.replace("[2,1]", "[2]"), "covariance: must have 6 x 6 values, not 12 x 12"),
        (good.replace("0.01", "-0.01"), "covariance: has a negative variance"),
        (good.replace("0.01", "1e999"), "is not a layout file (number out of range"),
        (good.replace("\"ids\"", "\"idz\""), "is not a layout file (missing field `ids`"),
    ] {
        let told = wrong(text);
        assert!(told.starts_with("layout.json, line 1, column ") && told.contains(says), "{told}\nshould say {says}");
        assert!(told.contains("survey the kit again"), "{told}");
    }
}
