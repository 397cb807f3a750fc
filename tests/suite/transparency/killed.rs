//! Writers that are killed, and several at once: what was acknowledged is in the log, once.

use std::collections::BTreeSet;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use baywitness::transparency::{Log, LogFolder};
use rand::{RngExt, SeedableRng};

use super::{attempt, log, names};

const FOLDER: &str = "BAYWITNESS_TEST_LOG";
const WHO: &str = "BAYWITNESS_TEST_WHO";

/// What [`writer`] starts: adds attempts and says so, until it is killed.
#[test]
#[ignore = "a part of the tests below, which start it"]
fn writes_until_it_is_killed() {
    let Some(folder) = std::env::var_os(FOLDER) else { return };
    let (own, who) = (Log::open(Path::new(&folder)).unwrap(), std::env::var(WHO).unwrap());
    for n in 0..10_000 {
        let name = format!("{who}-{n}");
        own.append(&[attempt(&name, "2026-05-01T08:00:00Z")]).unwrap();
        println!("acknowledged {name}");
    }
}

fn writer(folder: &Path, who: &str) -> Child {
    Command::new(std::env::current_exe().unwrap())
        .args(["transparency::killed::writes_until_it_is_killed", "--exact", "--ignored", "--nocapture"])
        .env(FOLDER, folder)
        .env(WHO, who)
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

/// Lets two writers run and kills them, each a moment after it acknowledged something; what they said.
fn killed(folder: &Path, round: u32, random: &mut rand::rngs::StdRng) -> Vec<String> {
    let children = ["a", "b"].map(|who| writer(folder, &format!("{round}{who}")));
    let mut said = Vec::new();
    for mut child in children {
        let lines = BufReader::new(child.stdout.take().unwrap()).lines().map(Result::unwrap);
        let mut acknowledged = lines.filter_map(|l| Some(l.split_once("acknowledged ")?.1.to_owned()));
        said.extend(acknowledged.next());
        std::thread::sleep(Duration::from_micros(random.random_range(0..40_000)));
        child.kill().unwrap();
        said.extend(acknowledged);
        child.wait().unwrap();
    }
    said
}

fn kills(rounds: u32) {
    let dir = tempfile::tempdir().unwrap();
    let (own, folder) = log(dir.path());
    let mut random = rand::rngs::StdRng::seed_from_u64(21);
    let (mut said, mut repaired) = (BTreeSet::new(), 0);
    let mut before = LogFolder::open(&folder).unwrap().checkpoint;
    for round in 0..rounds {
        said.extend(killed(&folder, round, &mut random));
        // Whoever only reads finds a whole log, before anything is put right.
        let now = LogFolder::open(&folder).unwrap();
        now.check_earlier(&before, Path::new("kept")).unwrap();
        assert!(now.checkpoint.vouchers(&now.note, &[own.verifier()]).unwrap().log);
        names(&now);
        before = now.checkpoint;
        // The next writer says what it put right, and goes on.
        repaired += own.append(&[]).unwrap().repaired.len();
        let found = names(&LogFolder::open(&folder).unwrap());
        let unique: BTreeSet<String> = found.iter().cloned().collect();
        assert_eq!(unique.len(), found.len(), "an entry is there twice");
        let lost: Vec<&String> = said.difference(&unique).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
    }
    println!("{rounds} times two writers killed: {} acknowledged, {repaired} appends put right", said.len());
    assert!(said.len() > rounds as usize, "{} were acknowledged", said.len());
}

#[test]
fn a_killed_writer_loses_nothing_that_it_acknowledged() {
    kills(3);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_hundred_killed_writers_lose_nothing() {
    kills(50);
}

#[test]
fn writers_at_once_wait_for_each_other() {
    let dir = tempfile::tempdir().unwrap();
    let (_, folder) = log(dir.path());
    std::thread::scope(|threads| {
        for who in 0..4 {
            let folder = &folder;
            threads.spawn(move || {
                let own = Log::open(folder).unwrap();
                for n in 0..6 {
                    let done = own.append(&[attempt(&format!("{who}-{n}"), "2026-05-01T08:00:00Z")]).unwrap();
                    assert!(done.repaired.is_empty(), "{:?}", done.repaired);
                }
            });
        }
    });
    let found: BTreeSet<String> = names(&LogFolder::open(&folder).unwrap()).into_iter().collect();
    assert_eq!(found.len(), 24);
}
