//! A table of an input file.

use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::document::Document;
use super::error::{Error, Place};
use super::nearest::did_you_mean;
use super::older::{note, older_key, present_key};
use super::value::Value;
use crate::words::{Phrase, phrase};

/// No list is longer; comparing each entry with each must stay quick.
const MOST_TABLES: usize = 2000;

/// A table that knows its path and place.
#[derive(Debug, Clone)]
pub struct Table<'d> {
    document: &'d Document<'d>,
    path: String,
    entries: &'d DeTable<'d>,
    span: Range<usize>,
}

impl<'d> Table<'d> {
    pub(super) fn new(document: &'d Document<'d>, path: String, entries: &'d DeTable<'d>, span: Range<usize>) -> Self {
        Table { document, path, entries, span }
    }

    /// Checks that the table has no other keys than these.
    ///
    /// # Errors
    /// An unknown key, with the nearest known one.
    pub fn allow(self, known: &[&str]) -> Result<Self, Error> {
        let mut keys: Vec<&Spanned<_>> = self.entries.keys().collect();
        keys.sort_by_key(|k| k.span().start);
        for key in keys {
            let name: &str = key.get_ref();
            let error = |problem: Phrase, remedy: Phrase| {
                Error::new(self.document.file(), problem, remedy)
                    .at(Some(self.document.place_of_offset(key.span().start)))
                    .key_path(shortened(&self.path_of(name)))
            };
            if let Some(now) = present_key(name).filter(|now| known.contains(now)) {
                if self.entries.contains_key(now) {
                    return Err(error(
                        phrase!("doors-older-key-too"),
                        phrase!("doors-older-key-too-remedy", now = now),
                    ));
                }
                note(self.document.file(), name, now);
            } else if !known.contains(&name) {
                return Err(error(phrase!("doors-unknown-key"), did_you_mean(name, known.iter().copied())));
            }
        }
        Ok(self)
    }

    /// The full path of a key of this table.
    pub fn path_of(&self, key: &str) -> String {
        if self.path.is_empty() { key.to_owned() } else { format!("{}.{key}", self.path) }
    }

    /// Where the table begins.
    pub fn place(&self) -> Place {
        self.document.place_of_offset(self.span.start)
    }

    /// The value of a key, if there is one; an older name of the key will do.
    pub fn get(&self, key: &str) -> Option<Value<'d>> {
        let named = |key: &str| Some(Value::new(self.document, self.path_of(key), self.entries.get(key)?));
        named(key).or_else(|| named(older_key(key)?))
    }

    /// The value of a key that must be there.
    ///
    /// # Errors
    /// Names the missing key and the line of its table.
    pub fn need(&self, key: &str) -> Result<Value<'d>, Error> {
        self.get(key).ok_or_else(|| {
            let place = if self.path.is_empty() { Place { line: 1, column: 1 } } else { self.place() };
            Error::new(self.document.file(), phrase!("doors-missing"), phrase!("doors-missing-remedy", key = key))
                .at(Some(place))
                .key_path(self.path_of(key))
        })
    }

    /// The value of a key as `read` makes it, if the key is there.
    ///
    /// # Errors
    /// What `read` finds wrong.
    pub fn maybe<T>(&self, key: &str, read: impl FnOnce(&Value<'d>) -> Result<T, Error>) -> Result<Option<T>, Error> {
        self.get(key).map(|value| read(&value)).transpose()
    }

    /// A table under a key, if there is one.
    ///
    /// # Errors
    /// The key holds something else.
    pub fn table(&self, key: &str) -> Result<Option<Table<'d>>, Error> {
        self.maybe(key, Value::table)
    }

    /// The tables of a list of tables (`[[key]]`); none where the key is absent.
    ///
    /// # Errors
    /// The key holds something else.
    pub fn tables(&self, key: &str) -> Result<Vec<Table<'d>>, Error> {
        let Some(value) = self.get(key) else { return Ok(Vec::new()) };
        let wrong = || {
            value.error(
                phrase!("doors-no-tables"),
                phrase!("doors-no-tables-remedy", path = without_positions(value.path())),
            )
        };
        let items = value.items().map_err(|_| wrong())?;
        if items.len() > MOST_TABLES {
            return Err(value.error(
                phrase!("doors-many-tables", count = items.len(), most = MOST_TABLES),
                phrase!("doors-many-tables-remedy"),
            ));
        }
        items.iter().map(|item| item.table().map_err(|_| wrong())).collect()
    }

    /// All keys in the file's order with their values.
    pub fn entries(&self) -> Vec<(&'d str, Value<'d>)> {
        let mut all: Vec<(&'d Spanned<_>, &'d Spanned<DeValue<'d>>)> = self.entries.iter().collect();
        all.sort_by_key(|(key, _)| key.span().start);
        all.into_iter()
            .map(|(key, value)| {
                let name: &'d str = key.get_ref();
                (name, Value::new(self.document, self.path_of(name), value))
            })
            .collect()
    }

    /// An error of the table as a whole.
    pub fn error(&self, problem: Phrase, remedy: Phrase) -> Error {
        Error::new(self.document.file(), problem, remedy).at(Some(self.place())).key_path(&self.path)
    }
}

/// `check[3].step` to `check.step`.
fn without_positions(path: &str) -> String {
    let parts: Vec<&str> = path.split('.').map(|part| part.split('[').next().unwrap_or(part)).collect();
    parts.join(".")
}

/// A hostile file may have keys of any length.
fn shortened(path: &str) -> String {
    const LONGEST: usize = 120;
    if path.chars().count() <= LONGEST {
        return path.to_owned();
    }
    path.chars().take(LONGEST).chain("...".chars()).collect()
}

impl<'a> Document<'a> {
    /// The document's outermost table.
    pub fn root(&self) -> Table<'_> {
        Table::new(self, String::new(), self.root.get_ref(), self.root.span())
    }
}

impl<'d> Value<'d> {
    /// A table.
    ///
    /// # Errors
    /// Anything else.
    pub fn table(&self) -> Result<Table<'d>, Error> {
        match self.value.get_ref() {
            DeValue::Table(entries) => Ok(Table::new(self.document, self.path.clone(), entries, self.value.span())),
            _ => Err(self.type_error("table", phrase!("doors-kind-table-remedy", path = &self.path))),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn unknown_keys_are_named_with_line_and_nearest_key() {
        let text = "format = \"kit/1\"\nname = \"x\"\nu_layuot_mm = 0.3\n";
        let document = Document::parse(text, "kit.toml", "kit/1").unwrap();
        let error = document.root().allow(&["format", "name", "u_layout_mm"]).unwrap_err();
        assert_eq!(
            error.to_string(),
            "kit.toml, line 3, column 1: u_layuot_mm: unknown key; did you mean `u_layout_mm`?"
        );
    }

    #[test]
    fn a_missing_key_names_its_table() {
        let text = "format = \"kit/1\"\n\n[[carrier]]\nname = \"a\"\n";
        let document = Document::parse(text, "kit.toml", "kit/1").unwrap();
        let carrier = document.root().tables("carrier").unwrap().remove(0);
        let error = carrier.need("role").unwrap_err();
        assert_eq!((error.key(), error.place().map(|p| p.line)), (Some("carrier[0].role"), Some(3)));
    }

    #[test]
    fn a_list_of_tables_is_asked_for_as_such() {
        let text = "format = \"kit/1\"\n[carrier]\nname = \"a\"\n";
        let document = Document::parse(text, "kit.toml", "kit/1").unwrap();
        let error = document.root().tables("carrier").unwrap_err();
        assert!(error.to_string().contains("write each as [[carrier]]"), "{error}");
    }
}
