//! Live pictures: which markers they show, and how many of them are taken.

use super::bay::{BAY, begin};
use super::client::Server;

fn glance(server: &Server, job: &str, jpeg: &[u8]) -> super::client::Answer {
    let origin = format!("http://{}", server.host());
    server.request("POST", &format!("/jobs/{job}/glance"), &[("Origin", &origin), ("Content-Type", "image/jpeg")], jpeg)
}

#[test]
fn a_live_picture_is_answered_with_the_kits_markers_where_the_renderer_drew_them() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let answer = glance(&server, &name, &BAY.photo("a.jpg"));
    assert_eq!(answer.status, 200, "{}", answer.text());
    let (seen, truth) = (answer.json(), std::fs::read_to_string(BAY.job().join("truth.json")).unwrap());
    let truth: serde_json::Value = serde_json::from_str(&truth).unwrap();
    let drawn = truth["photos"].as_array().unwrap().iter().find(|p| p["file"] == "photos/a.jpg").unwrap();
    let markers = seen["markers"].as_array().unwrap();
    assert!(markers.len() > 10, "{seen}");
    for m in markers {
        let wanted = drawn["markers"].as_array().unwrap().iter().find(|d| d["id"] == m["id"]).unwrap();
        for (a, b) in m["corners_px"].as_array().unwrap().iter().zip(wanted["corners_px"].as_array().unwrap()) {
            for k in 0..2 {
                let off = a[k].as_f64().unwrap() - b[k].as_f64().unwrap();
                assert!(off.abs() < 1.0, "marker {}: {off} px", m["id"]);
            }
        }
    }
    assert_eq!(seen["ties"], true);
    assert!(seen["seen"].as_array().unwrap().iter().any(|s| s == "stand"), "{seen}");
    // Nothing of it is kept, and nothing is noted.
    let photos = jobs.path().join(&name).join("photos").read_dir().unwrap().count();
    let noted = std::fs::read_to_string(jobs.path().join(&name).join("changes.jsonl")).unwrap();
    assert_eq!((photos, noted.lines().count()), (0, 1));
}

#[test]
fn live_pictures_are_few_small_and_pictures() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let photo = BAY.photo("a.jpg");
    // One device may send five in a second; the other answers say so at once.
    let statuses: Vec<u16> = (0..6).map(|_| glance(&server, &name, b"x").status).collect();
    assert!(statuses.contains(&429), "{statuses:?}");
    let slowly = |bytes: &[u8]| {
        std::thread::sleep(std::time::Duration::from_millis(250));
        glance(&server, &name, bytes).status
    };
    assert_eq!(slowly(b"x"), 422);
    assert_eq!(slowly(&photo[..photo.len() / 2]), 422);
    // A frame that states 65,500 pixels squared (ITU-T T.81, B.2.2), and nothing behind it.
    assert_eq!(slowly(b"\xff\xd8\xff\xc0\0\x0b\x08\xff\xdc\xff\xdc\x01\x01\x11\0"), 422);
    assert_eq!(slowly(&vec![0; 2_000_000]), 413);
    std::thread::sleep(std::time::Duration::from_millis(250));
    assert_eq!(server.request("POST", &format!("/jobs/{name}/glance"), &[], &photo).status, 403, "no origin");
}
