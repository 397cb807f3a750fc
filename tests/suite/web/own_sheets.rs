//! Set-up sheets that the shop types itself.

use super::bay::BAY;

const TYPED: [(&str, &str); 14] = [
    ("name", "invented-radar"),
    ("title", "Front radar (invented)"),
    ("source", "Invented for a test."),
    ("line", "centreline"),
    ("distance:from", "nose"),
    ("distance:nominal", "1500"),
    ("distance:nominal:again", "1500"),
    ("distance:tolerance", "15"),
    ("distance:tolerance:again", "15"),
    ("yaw:nominal", "0"),
    ("yaw:nominal:again", "0"),
    ("yaw:tolerance", "0,5"),
    ("yaw:tolerance:again", "0.5"),
    ("lateral_offset:nominal", ""),
];

#[test]
fn a_sheet_typed_twice_is_used_and_goes_with_the_job() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    assert!(server.get("/new").text().contains("href=\"/new-sheet\""));
    // One wrong digit: what was typed is shown again, nothing is kept.
    let wrong: Vec<(&str, &str)> =
        TYPED.iter().map(|(n, v)| (*n, if *n == "distance:nominal:again" { "1050" } else { *v })).collect();
    let refused = server.form("/new-sheet", &wrong);
    assert!(refused.status == 422 && refused.text().contains("differ") && refused.text().contains("value=\"1050\""));
    assert!(!jobs.path().join("models").exists());
    let kept = server.form("/new-sheet", &TYPED);
    assert_eq!((kept.status, kept.header("location")), (303, Some("/new/invented-radar")), "{}", kept.text());
    assert_eq!(server.form("/new-sheet", &TYPED).status, 422, "the name is taken");
    assert!(server.get("/new").text().contains("Front radar (invented)"));
    let begun = server.form("/new/invented-radar", &[("kit", "test-kit"), ("camera", "test-camera")]);
    assert_eq!(begun.status, 303, "{}", begun.text());
    let name = begun.header("location").unwrap().split('/').nth(2).unwrap().to_owned();
    for photo in ["a.jpg", "b.jpg"] {
        assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &BAY.photo(photo)).status, 201);
    }
    server.verdict(&name);
    // The folder is whole: the command finds the sheet without the page's models.
    let mut command = crate::program::program();
    command.arg("verify").arg(jobs.path().join(&name)).arg("--models").arg(BAY.models());
    let out = command.env_remove("BAYWITNESS_MODELS").output().unwrap();
    let said = String::from_utf8_lossy(&out.stdout);
    assert!(
        out.status.code() != Some(2) && said.contains("distance"),
        "{said}{}",
        String::from_utf8_lossy(&out.stderr)
    );
}
