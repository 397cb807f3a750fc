//! Attempts in which nothing moved are measured together, once somebody says so.

use super::bay::{BAY, begin, with_comment};

#[test]
fn photos_of_a_stand_that_did_not_move_join_the_next_attempt() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let first = begin(&server, &[("series", "INVENTED-R3")]);
    for photo in ["a.jpg", "b.jpg"] {
        server.upload(&format!("/jobs/{first}/photos"), &BAY.photo(photo));
    }
    server.verdict(&first);
    let next = server.form(&format!("/jobs/{first}/attempt"), &[]);
    let next = next.header("location").unwrap().split('/').nth(2).unwrap().to_owned();
    for photo in ["a.jpg", "b.jpg"] {
        // Of the same stand from the same places; other bytes.
        server.upload(&format!("/jobs/{next}/photos"), &with_comment(&BAY.photo(photo), "again"));
    }
    server.verdict(&next);
    let page = server.get(&format!("/jobs/{next}/photos")).text();
    assert!(page.contains("Against earlier attempts") && page.contains("nothing has moved since"), "{page}");
    let job = |name: &str| std::fs::read_to_string(jobs.path().join(name).join("job.toml")).unwrap();
    let before = job(&first);
    // Somebody's own words in the file stay.
    std::fs::write(jobs.path().join(&next).join("job.toml"), format!("# a note by hand\n{}", job(&next))).unwrap();
    assert_eq!(server.form(&format!("/jobs/{next}/join"), &[]).status, 303);
    let photos = std::fs::read_dir(jobs.path().join(&next).join("photos")).unwrap().count();
    assert_eq!(photos, 4);
    assert!(job(&next).starts_with("# a note by hand\n"), "{}", job(&next));
    assert_eq!(job(&first), before, "the earlier attempt stays as it was sealed");
    server.verdict(&next);
    let page = server.get(&format!("/jobs/{next}/photos")).text();
    assert!(!page.contains("Measure with those photos too"), "they are here now");
    assert_eq!(server.form(&format!("/jobs/{next}/join"), &[]).status, 303);
    assert_eq!(std::fs::read_dir(jobs.path().join(&next).join("photos")).unwrap().count(), 4);
}
