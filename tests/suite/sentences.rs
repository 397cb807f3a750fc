//! No sentence outside the message files: every text of the program's sources
//! that reads like words for people is looked at here.

#![cfg(test)]

use std::fs;
use std::path::{Path, PathBuf};

/// Texts that are no words for people, with why; the file's end, how the text begins.
const NOT_FOR_PEOPLE: [(&str, &str, &str); 25] = [
    ("cli/audit_words.rs", "intact", "a code of records"),
    ("cli/audit_words.rs", "unreadable or altered", "a code of records"),
    ("cli/check.rs", "intact", "a code of records"),
    ("custody/audit/judge.rs", "intact", "a code of records"),
    ("custody/audit/changes.rs", "unreadable or altered", "a code of records"),
    ("photo/exif_reader.rs", "owner or author", "a code of records"),
    ("photo/exif_reader.rs", "the maker's own notes", "a code of records"),
    ("evidence/redacted.rs", "Copy with photos masked", "a file of BagIt, in English as its labels are"),
    ("pades/identity.rs", "ENCRYPTED PRIVATE KEY", "how a locked key's file begins"),
    ("foundation/rendered.rs", "Rendered by baywitness", "a field of Exif, the same for every reader"),
    ("routes/guard.rs", "default-src", "a header of HTTP"),
    ("photo/jpeg_source.rs", "out of the file", "said to the decoder; words of damage are shown as they come"),
    ("photo/jpeg_source.rs", "picture data are missing", "said to the decoder; words of damage are shown as they come"),
    ("report/archive_table.rs", "the schema has fewer", "a fault of the program, in the library's error"),
    ("report/archive_table.rs", "required group", "the schema's notation"),
    ("html/photos.rs", "owner or author", "a code of records"),
    ("html/photos.rs", "the maker's own notes", "a code of records"),
    ("cli/phases.rs", "new JOB", "a command as it is typed"),
    ("cli/phases.rs", "verify JOB", "a command as it is typed"),
    ("drill/folder.rs", "baywitness drill", "a command as it is typed"),
    ("drill/folder.rs", "3. baywitness drill", "a command as it is typed"),
    ("html/loupe.rs", "small halo", "classes of a style sheet"),
    ("html/plan.rs", "small halo", "classes of a style sheet"),
    ("html/track.rs", "small halo", "classes of a style sheet"),
    ("scene/insides_spec.rs", "expected a number", "the reader of TOML puts place and remedy round it"),
];

fn sources_below(folder: &Path, files: &mut Vec<PathBuf>) {
    for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
        if path.is_dir() {
            sources_below(&path, files);
        } else if path.extension().is_some_and(|e| e == "rs") {
            files.push(path);
        }
    }
}

/// The program's sources but for the words' own crate and modules of tests.
fn sources() -> Vec<(PathBuf, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    sources_below(&root, &mut files);
    files.retain(|path| !path.starts_with(root.join("words")));
    let all: Vec<(PathBuf, String)> =
        files.into_iter().map(|path| (path.clone(), fs::read_to_string(path).unwrap())).collect();
    let of_tests: Vec<PathBuf> = all
        .iter()
        .flat_map(|(path, text)| {
            let text = text.replace("pub(crate) mod ", "mod ");
            let named: Vec<String> = text
                .split("#[cfg(test)]\nmod ")
                .skip(1)
                .filter_map(|rest| Some(rest.split_once(';')?.0.to_owned()))
                .collect();
            let own = if path.ends_with("mod.rs") || path.ends_with("lib.rs") {
                path.parent().unwrap().to_owned()
            } else {
                path.with_extension("")
            };
            named.into_iter().map(move |name| own.join(format!("{name}.rs")))
        })
        .collect();
    all.into_iter().filter(|(path, _)| !of_tests.contains(path)).collect()
}

/// A text with its line and what stands before it on that line.
struct Literal {
    line: usize,
    before: String,
    text: String,
}

/// The texts of a source file, without comments and without its module of tests.
fn literals(source: &str) -> Vec<Literal> {
    let source = source.split("#[cfg(test)]\nmod tests {").next().unwrap();
    let (mut found, mut at) = (Vec::new(), 0);
    while at < source.len() {
        let rest = &source[at..];
        let raw = ["r#\"", "r\""].into_iter().find(|open| rest.starts_with(open));
        let own = !source[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_');
        if rest.starts_with("//") {
            at += rest.find('\n').unwrap_or(rest.len());
        } else if let Some(open) = raw.filter(|_| own) {
            let close = if open.len() == 3 { "\"#" } else { "\"" };
            let length = rest[open.len()..].find(close).unwrap();
            found.push(literal(source, at, &rest[open.len()..][..length]));
            at += open.len() + length + close.len();
        } else if rest.starts_with('"') {
            let mut length = 1;
            while !rest[length..].starts_with('"') {
                length += if rest[length..].starts_with('\\') {
                    2
                } else {
                    rest[length..].chars().next().unwrap().len_utf8()
                };
            }
            found.push(literal(source, at, &rest[1..length]));
            at += length + 1;
        } else if let Some(quoted) = rest.strip_prefix('\'') {
            // A character, or else a lifetime's tick.
            let mut ahead = quoted.chars();
            let first = ahead.next().map_or(1, char::len_utf8);
            let length = if quoted.starts_with('\\') { quoted[2..].find('\'').map(|n| n + 2) } else { Some(first) };
            at += length.filter(|n| quoted[*n..].starts_with('\'')).map_or(1, |n| n + 2);
        } else {
            at += rest.chars().next().unwrap().len_utf8();
        }
    }
    found
}

fn literal(source: &str, at: usize, text: &str) -> Literal {
    let line = source[..at].lines().count();
    let before = source[source[..at].rfind('\n').map_or(0, |n| n + 1)..at].trim().to_owned();
    Literal { line, before, text: text.to_owned() }
}

/// Three words of letters, one after the other.
fn reads_like_words(text: &str) -> bool {
    let word = |w: &str| {
        let bare = w.trim_matches(|c: char| ",.;:!?()`\"".contains(c));
        bare.len() > 1 && bare.chars().all(|c| c.is_alphabetic() || c == '\'' || c == '-')
    };
    let mut in_a_row = 0;
    text.split([' ', '\n']).any(|w| {
        in_a_row = if word(w) { in_a_row + 1 } else { 0 };
        in_a_row == 3
    })
}

/// For who changes the source, not for who runs the program.
fn is_for_developers(before: &str) -> bool {
    ["reason =", "unreachable!(", "debug_assert"].iter().any(|of| before.contains(of))
}

#[test]
fn nothing_is_said_past_the_message_files() {
    let (mut past, mut excused, mut looked_at) = (Vec::new(), [false; NOT_FOR_PEOPLE.len()], 0);
    for (path, source) in sources() {
        for Literal { line, before, text } in literals(&source) {
            looked_at += 1;
            if !reads_like_words(&text) || is_for_developers(&before) {
                continue;
            }
            let known = NOT_FOR_PEOPLE
                .iter()
                .position(|(file, begins, _)| path.to_string_lossy().ends_with(file) && text.starts_with(begins));
            match known {
                Some(known) => excused[known] = true,
                None => past.push(format!("{}:{line}: {text}", path.display())),
            }
        }
    }
    assert!(looked_at > 5000, "{looked_at} texts");
    assert!(past.is_empty(), "said past the message files:\n{}", past.join("\n"));
    let needless: Vec<_> = NOT_FOR_PEOPLE.iter().zip(excused).filter(|(_, used)| !used).map(|(e, _)| e).collect();
    assert!(needless.is_empty(), "excused, but not there: {needless:?}");
}

/// The search finds what it is for.
#[test]
fn a_sentence_in_a_source_would_be_found() {
    let source = "fn f<'a>(c: char) { // \"not this one here\"\n let x = '\"'; g(\"the photo \\\" is too dark\"); }\n\
                  #[cfg(test)]\nmod tests {\n h(\"nor this one here\") }";
    let found: Vec<_> = literals(source).into_iter().filter(|l| reads_like_words(&l.text)).collect();
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].line, found[0].text.as_str()), (2, "the photo \\\" is too dark"));
    assert!(!reads_like_words("{} mm, {} px") && !reads_like_words("page-trouble-typed"));
    assert!(is_for_developers("#[allow(clippy::float_cmp, reason = ") && !is_for_developers("say("));
}
