//! A folder with years of jobs.

use std::path::Path;
use std::time::{Duration, Instant};

use super::client::Server;

fn many(jobs: &Path, count: usize) {
    for i in 0..count {
        let folder = jobs.join(format!("J-{i:05}"));
        std::fs::create_dir(&folder).unwrap();
        let text = format!(
            "format = \"job/1\"\njob = \"J-{i:05}\"\nsetup = \"demo-front-radar\"\nkit = \"demo-bay\"\nseries = \"R-{}\"\ntechnician = \"T{}\"\n\n[vehicle]\ndescription = \"invented {}\"\n",
            i / 3,
            i % 7,
            if i % 1000 == 77 { "rare van" } else { "hatchback" }
        );
        std::fs::write(folder.join("job.toml"), text).unwrap();
    }
}

fn listed(count: usize) -> [Duration; 3] {
    let jobs = tempfile::tempdir().unwrap();
    many(jobs.path(), count);
    std::fs::create_dir(jobs.path().join("broken")).unwrap();
    std::fs::write(jobs.path().join("broken/job.toml"), "format = \"job/1\"\njub = 1").unwrap();
    let server = Server::start(jobs.path(), None);
    let timed = |path: &str, says: &str| {
        let start = Instant::now();
        let page = server.get(path).text();
        let took = start.elapsed();
        assert!(page.contains(says), "{page}");
        took
    };
    let first = timed("/", &format!("{} jobs", count + 1));
    assert!(server.get("/?q=broken").text().contains("can't be read"));
    std::thread::sleep(Duration::from_millis(1100));
    let again = timed("/", &format!("{} jobs", count + 1));
    let found = timed("/?q=rare+van", "invented rare van");
    // What another program adds is there within two seconds.
    many_more(jobs.path());
    std::thread::sleep(Duration::from_millis(1100));
    timed("/?q=added", "added by hand");
    [first, again, found]
}

fn many_more(jobs: &Path) {
    let folder = jobs.join("added");
    std::fs::create_dir(&folder).unwrap();
    let text =
        "format = \"job/1\"\njob = \"added\"\nsetup = \"x\"\nkit = \"y\"\n[vehicle]\ndescription = \"added by hand\"\n";
    std::fs::write(folder.join("job.toml"), text).unwrap();
}

#[test]
fn hundreds_of_jobs_are_listed_searched_and_seen_to_change() {
    listed(600);
}

#[test]
#[ignore = "ten thousand folders: figures for the books"]
fn ten_thousand_jobs_are_listed_fast() {
    let [first, again, found] = listed(10_000);
    println!("10,000 jobs: first list {first:?}, later {again:?}, search {found:?}");
    assert!(again < Duration::from_millis(200) && found < Duration::from_millis(200));
}
