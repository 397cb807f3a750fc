//! `baywitness due PATH...`.

use std::fmt::Write;
use std::path::PathBuf;

use time::{Date, Duration, OffsetDateTime};

use super::codes::UNREADABLE;
use super::output::{JsonTarget, cannot_read, complain, language, say, write_json};
use crate::custody::{Due, audit, due};
use crate::words::{Value, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "PATH", required = true)]
    paths: Vec<PathBuf>,
    #[arg(long, value_name = "DATE", value_parser = super::dates::date)]
    on: Option<Date>,
    #[arg(long, value_name = "DAYS", default_value_t = 90, value_parser = super::typed::whole::<u16, 0, 3650>)]
    ahead: u16,
    #[arg(long, value_name = "FILE|-")]
    json: Option<JsonTarget>,
}

#[derive(serde::Serialize)]
struct Entry {
    path: String,
    job: String,
    keep_until: Option<String>,
    stamped_until: Option<String>,
    may_go: bool,
    wants_stamp: bool,
}

#[derive(serde::Serialize)]
struct List {
    format: &'static str,
    on: String,
    due: Vec<Entry>,
    kept: usize,
    unreadable: usize,
}

/// Lists; nothing is ever deleted. Exit code 0 done, 2 something could not be read.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let on = arguments.on.unwrap_or_else(|| OffsetDateTime::now_utc().date());
    let by = on.saturating_add(Duration::days(i64::from(arguments.ahead)));
    let mut list = List { format: "due/1", on: on.to_string(), due: Vec::new(), kept: 0, unreadable: 0 };
    let mut unread = 0;
    let found = audit::find(&arguments.paths, &mut |path, why| {
        complain(&cannot_read(path, &why.phrase().say(language())));
        unread += 1;
    });
    for found in found.iter().filter(|f| f.sort != audit::Sort::Series) {
        match due(found) {
            Ok(one) if one.may_go(on) || one.wants_stamp(by) => list.due.push(entry(&one, on, by)),
            Ok(_) => list.kept += 1,
            Err(why) => {
                complain(&why.say(language()));
                unread += 1;
            }
        }
    }
    list.unreadable = unread;
    say(&words(&list), arguments.json.as_ref());
    let written = arguments.json.as_ref().map_or(Ok(()), |target| write_json(target, &list));
    if let Err(message) = &written {
        complain(message);
    }
    if unread > 0 || written.is_err() { UNREADABLE } else { 0 }
}

fn entry(due: &Due, on: Date, by: Date) -> Entry {
    Entry {
        path: due.path.display().to_string(),
        job: due.job.clone(),
        keep_until: due.keep_until.map(|d| d.to_string()),
        stamped_until: due.stamped_until.map(|d| d.to_string()),
        may_go: due.may_go(on),
        wants_stamp: due.wants_stamp(by),
    }
}

fn words(list: &List) -> String {
    let language = language();
    let mut text = String::new();
    for entry in &list.due {
        let until = |date: &Option<String>| Value::moment(date.clone().unwrap_or_default());
        let what = if entry.may_go {
            say!(language, "cli-due-may-go", day = until(&entry.keep_until))
        } else {
            say!(language, "cli-due-stamp", day = until(&entry.stamped_until))
        };
        let _ = writeln!(text, "{:24}  {what}  {}", entry.job, entry.path);
    }
    let on = Value::moment(&list.on);
    let _ = writeln!(text, "{}", say!(language, "cli-due-sum", due = list.due.len(), on = on, kept = list.kept));
    text
}
