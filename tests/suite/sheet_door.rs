//! The `sheet` command as people call it.
#![cfg(test)]

use std::path::Path;
use std::process::Output;

use baywitness::marker::{Board, BoardKind, KitFile};

fn sheet(arguments: &[&str], folder: &Path) -> Output {
    crate::program::program()
        .arg("sheet")
        .args(arguments)
        .current_dir(folder)
        .env_remove("BAYWITNESS_MODELS")
        .output()
        .unwrap()
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

const KIT: &str = r#"format = "kit/1"
name = "plate-kit"
family = "36h11"

[[carrier]]
name = "stand"
role = "target"

[[carrier.marker]]
id = 3
size_mm = 120.0
centre_mm = [40.0, 600.0, 180.0]
right = [0.0, 1.0, 0.0]
up = [0.0, 0.0, 1.0]
"#;

#[test]
fn a_kit_and_a_board_become_pdf_files() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("kit.toml"), KIT).unwrap();
    let board =
        Board { kind: BoardKind::Chessboard { inner_corners: [9, 6], square_mm: 20.0 }, u_scale_relative: 0.0005 };
    std::fs::write(folder.path().join("board.toml"), board.to_toml()).unwrap();
    for model in ["kit.toml", "board.toml"] {
        let output = sheet(&[model, "--out", "a.pdf", "--paper", "letter"], folder.path());
        assert!(output.status.success(), "{}", said(&output));
        assert!(std::fs::read(folder.path().join("a.pdf")).unwrap().starts_with(b"%PDF-"));
    }
}

#[test]
fn readings_become_a_corrected_kit() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("kit.toml"), KIT).unwrap();
    let output = sheet(&["kit.toml", "--measured-mm", "159.2,160.4", "--corrected", "printed.toml"], folder.path());
    assert!(output.status.success(), "{}", said(&output));
    let text = std::fs::read_to_string(folder.path().join("printed.toml")).unwrap();
    let kit = KitFile::from_toml(&text, "printed.toml").unwrap().kit;
    let [right, up] = kit.marker(3).unwrap().1.size_mm;
    assert!((right - 119.4).abs() < 1e-9 && (up - 120.3).abs() < 1e-9, "{right} {up}");
}

/// Whatever language wrote the file: corrected twice, its sizes would be wrong by the printer's error.
#[test]
fn a_corrected_kit_is_not_corrected_again() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("kit.toml"), KIT).unwrap();
    let at = |name: &str| folder.path().join(name);
    for language in ["en", "de", "fr", "es"] {
        let printed = format!("{language}.toml");
        let again = ["--measured-mm", "159.2,160.4", "--corrected"];
        let first = [&["kit.toml", "--paper", "a3", "--language", language][..], &again, &[&printed]].concat();
        assert!(sheet(&first, folder.path()).status.success());
        let output = sheet(&[&[printed.as_str()][..], &again, &["twice.toml"]].concat(), folder.path());
        assert_eq!(output.status.code(), Some(2), "{language}");
        let words = said(&output);
        assert!(words.contains("corrected twice") && words.contains("bay-a4"), "{language}: {words}");
        assert!(!at("twice.toml").exists());
        // It is a kit like any other: it may be printed, and then, without the line, corrected.
        assert!(sheet(&[&printed, "--out", "kit.pdf"], folder.path()).status.success());
        let text = std::fs::read_to_string(at(&printed)).unwrap();
        std::fs::write(at("own.toml"), text.split_once('\n').unwrap().1).unwrap();
        let own = [&["own.toml"][..], &again, &["fresh.toml"]].concat();
        assert!(sheet(&own, folder.path()).status.success(), "{language}");
    }
}

#[test]
fn what_is_wrong_is_said_with_file_and_remedy() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("wide.toml"), KIT.replace("120.0", "180.0")).unwrap();
    std::fs::write(folder.path().join("broken.toml"), KIT.replace("size_mm", "sise_mm")).unwrap();
    let cases: [(&[&str], &[&str]); 6] = [
        (&["wide.toml", "--out", "a.pdf"], &["wide.toml", "marker 3 of stand", "--paper a3"]),
        (&["broken.toml", "--out", "a.pdf"], &["broken.toml", "line", "size_mm"]),
        (&["nowhere.toml", "--out", "a.pdf"], &["nowhere.toml", "neither a file nor"]),
        (&["wide.toml", "--out", "a.pdf", "--paper", "a5"], &["a5", "a4, a3"]),
        (&["wide.toml", "--out", "broken.toml/a.pdf", "--paper", "a3"], &["broken.toml/a.pdf"]),
        (&["wide.toml", "--measured-mm", "16.0,160.0", "--corrected", "c.toml"], &["ruler to the right", "16 mm"]),
    ];
    for (arguments, words) in cases {
        let output = sheet(arguments, folder.path());
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        for word in words {
            assert!(said(&output).contains(word), "{arguments:?}: {word}: {}", said(&output));
        }
    }
}
