//! Every command of the first-day guide is tried where it stands: what needs
//! no photos must succeed, what does must fail for want of photos only.

use std::path::Path;

use super::run_in;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn commands() -> Vec<String> {
    let guide = std::fs::read_to_string(root().join("docs/first-day.md")).unwrap();
    guide.lines().filter_map(|l| l.strip_prefix("$ baywitness ")).map(str::to_owned).collect()
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let path = entry.unwrap().path();
        let target = to.join(path.file_name().unwrap());
        if path.is_dir() { copy(&path, &target) } else { std::fs::copy(&path, &target).map(|_| ()).unwrap() }
    }
}

#[test]
fn every_command_of_the_guide_runs() {
    let folder = tempfile::tempdir().unwrap();
    let here = folder.path();
    copy(&root().join("samples/good"), &here.join("first-job"));
    std::fs::write(here.join("readings.csv"), readings()).unwrap();
    std::fs::create_dir(here.join("cameras")).unwrap();
    // Where the guide's earlier steps need photos, the sample's files stand in.
    std::fs::copy(root().join("samples/good/kit.toml"), here.join("kit.toml")).unwrap();
    std::fs::copy(root().join("samples/good/kit.toml"), here.join("wall.toml")).unwrap();
    std::fs::copy(root().join("samples/good/camera.toml"), here.join("cameras/my-phone.toml")).unwrap();
    let all = commands();
    assert!(all.len() >= 9, "{all:?}");
    for command in &all {
        let words: Vec<&str> = command.split_whitespace().collect();
        let needs_photos = ["camera", "survey", "seating", "recheck"].contains(&words[0]);
        let (code, text) = run_in(here, &words);
        if needs_photos {
            let missing = ["*.jpg", "seat-1"].iter().any(|name| text.contains(name));
            assert!(code == 2 && missing && !text.contains("Usage:"), "{command}: {code} {text}");
        } else {
            assert_eq!(code, 0, "{command}: {text}");
        }
    }
    for made in ["kit.pdf", "board.pdf", "reference.pdf", "my-kit.toml", "my-board.toml", "first-day"] {
        assert!(here.join(made).exists(), "{made}");
    }
}

/// Two people, two parts, two trials.
fn readings() -> &'static str {
    "operator,part,value\nA,1,1.0\nA,1,1.1\nA,2,2.0\nA,2,2.1\nB,1,1.2\nB,1,1.1\nB,2,2.2\nB,2,2.2\n"
}

#[test]
fn every_picture_and_link_of_the_guide_is_there() {
    let guide = std::fs::read_to_string(root().join("docs/first-day.md")).unwrap();
    let links: Vec<&str> = guide.split("](").skip(1).filter_map(|rest| rest.split(')').next()).collect();
    assert!(links.len() >= 6);
    for link in links {
        assert!(root().join("docs").join(link).exists(), "{link}");
    }
}
