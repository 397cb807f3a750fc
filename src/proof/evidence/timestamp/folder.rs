//! The tokens of an evidence folder: the first stamps the tag manifest, each
//! further one the file of the one before.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use super::super::cannot;
use crate::folder::write_durably;
use crate::words::{Language, Phrase, phrase};

use super::super::inspection::{Inspection, Outcome};
use super::super::small_file::{MOST_MANIFEST, read_small};
use super::request::request;
use super::token::Token;
use super::token_error::TokenError;
use super::{MOST_TOKEN, MOST_TOKENS, TAG_MANIFEST, token_name};

/// Why a folder was not stamped.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum StampError {
    /// Reading or writing failed.
    Io {
        /// `read` or `write`.
        doing: &'static str,
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// What is to be stamped is no file of its size.
    Unread(PathBuf, Phrase),
    /// The token does not fit.
    Token {
        /// As it was named.
        file: String,
        /// Why.
        source: TokenError,
    },
    /// No more tokens.
    Full(PathBuf),
}

impl StampError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            StampError::Io { doing, path, source } => cannot(doing, path, source),
            StampError::Unread(path, why) => {
                phrase!("evidence-file-wrong", file = path.display().to_string(), why = why.clone())
            }
            StampError::Token { file, source } => phrase!("evidence-stamp-wrong", file = file, why = source.phrase()),
            StampError::Full(folder) => {
                phrase!("evidence-stamps-full", folder = folder.display().to_string(), count = MOST_TOKENS)
            }
        }
    }
}

/// The file name of the next token, and what it stamps.
fn next(folder: &Path) -> Result<(String, Vec<u8>), StampError> {
    let there = |n: &usize| fs::symlink_metadata(folder.join(token_name(*n))).is_ok();
    let n = (0..MOST_TOKENS).find(|n| !there(n)).ok_or_else(|| StampError::Full(folder.to_path_buf()))?;
    let path = folder.join(if n == 0 { TAG_MANIFEST.to_owned() } else { token_name(n - 1) });
    let stamped = read_small(&path, MOST_MANIFEST, "small").map_err(|e| StampError::Unread(path, e.why))?;
    Ok((token_name(n), stamped))
}

/// The request for the folder's next token.
///
/// # Errors
/// The folder cannot be read, or is full.
pub fn stamp_request(folder: &Path) -> Result<Vec<u8>, StampError> {
    let (_, stamped) = next(folder)?;
    request(&stamped).map_err(|e| StampError::Token { file: "request".to_owned(), source: e.into() })
}

/// Puts an authority's answer into the folder; `file` is its name for messages.
///
/// # Errors
/// The answer is none, or is for other bytes; nothing is changed then.
pub fn stamp(folder: &Path, answer: &[u8], file: &str) -> Result<Token, StampError> {
    let wrong = |source| StampError::Token { file: file.to_owned(), source };
    let (name, stamped) = next(folder)?;
    let token = Token::read(answer).map_err(wrong)?;
    token.check(&stamped).map_err(wrong)?;
    let path = folder.join(&name);
    write_durably(&path, token.answer()).map_err(|source| StampError::Io { doing: "write", path, source })?;
    Ok(token)
}

/// The names of a folder's tokens as far as they follow each other, and the first of one that does not: whoever reads
/// one after the other would never see it.
fn in_turn(folder: &Path) -> (Vec<String>, Option<String>) {
    let is_there = |name: &String| fs::symlink_metadata(folder.join(name)).is_ok();
    let mut names = (0..MOST_TOKENS).map(token_name);
    let there = names.by_ref().take_while(is_there).collect();
    (there, names.find(is_there))
}

fn out_of_turn(name: &str) -> Phrase {
    phrase!("evidence-file-wrong", file = name, why = phrase!("evidence-token-turn"))
}

fn read_token(folder: &Path, name: &str) -> Result<(Token, Vec<u8>), Phrase> {
    let bytes = read_small(&folder.join(name), MOST_TOKEN, "timestamp").map_err(|e| e.why)?;
    Ok((Token::read(&bytes).map_err(|e| e.phrase())?, bytes))
}

/// The folder's newest token, where there is any; nothing of it is checked.
///
/// # Errors
/// What should be the newest is none, or comes out of its turn.
pub fn newest_token(folder: &Path) -> Result<Option<Token>, Phrase> {
    let (names, stray) = in_turn(folder);
    if let Some(stray) = stray {
        return Err(out_of_turn(&stray));
    }
    let wrong = |name: &String, why| phrase!("evidence-file-wrong", file = name, why = why);
    names.last().map(|name| Ok(read_token(folder, name).map_err(|why| wrong(name, why))?.0)).transpose()
}

/// Reads and checks every token of a folder that may be anything.
pub(in super::super) fn inspect_tokens(folder: &Path, tag_manifest: &[u8], found: &mut Inspection) {
    let mut stamped = tag_manifest.to_vec();
    let (names, stray) = in_turn(folder);
    for name in names {
        let read = || -> Result<(Token, Vec<u8>), Phrase> {
            let (token, bytes) = read_token(folder, &name)?;
            token.check(&stamped).map_err(|e| e.phrase())?;
            Ok((token, bytes))
        };
        match read() {
            Ok((token, bytes)) => {
                let (when, authority) = (token.when().to_string(), token.authority().to_string());
                found.note(
                    "timestamp",
                    Outcome::Passed,
                    phrase!("evidence-stamped", when = when, authority = authority),
                );
                found.tokens.push(token);
                stamped = bytes;
            }
            Err(why) => {
                found.note("timestamp", Outcome::Failed, phrase!("evidence-file-wrong", file = &name, why = why));
                break;
            }
        }
    }
    if let Some(stray) = stray {
        found.note("timestamp", Outcome::Failed, out_of_turn(&stray));
    }
}
