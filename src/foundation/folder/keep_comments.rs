//! A job file written anew keeps what people wrote into it by hand: comments,
//! order, blank lines of everything that did not change.

use super::JobFile;
use crate::input::Error;
use toml_edit::{DocumentMut, Item, Table, Value};

impl JobFile {
    /// This job's text, with the comments of the text that it replaces, read back as `verify` will.
    ///
    /// # Errors
    /// It does not read back.
    pub fn text_instead_of(&self, old: Option<&str>) -> Result<String, Error> {
        let new = self.to_toml();
        let text = old.map_or_else(|| new.clone(), |old| keep_comments(old, &new));
        JobFile::from_toml(&text, "job.toml")?;
        Ok(text)
    }
}

/// The new text with the old one's comments and order. Where the old text is no
/// TOML, or the result would not say the same, the new text as it is.
fn keep_comments(old: &str, new: &str) -> String {
    let (Ok(mut kept), Ok(wanted)) = (old.parse::<DocumentMut>(), new.parse::<DocumentMut>()) else {
        return new.to_owned();
    };
    merge(kept.as_table_mut(), wanted.as_table());
    let text = kept.to_string();
    let same = match (text.parse::<toml::Table>(), new.parse::<toml::Table>()) {
        (Ok(text), Ok(new)) => text == new,
        _ => false,
    };
    if same { text } else { new.to_owned() }
}

fn merge(kept: &mut Table, wanted: &Table) {
    let gone: Vec<String> = kept.iter().map(|(k, _)| k.to_owned()).filter(|k| !wanted.contains_key(k)).collect();
    for key in gone {
        kept.remove(&key);
    }
    for (key, item) in wanted {
        match (kept.get_mut(key), item) {
            (Some(Item::Table(kept)), Item::Table(wanted)) => merge(kept, wanted),
            (Some(Item::ArrayOfTables(kept)), Item::ArrayOfTables(wanted)) => {
                for (i, table) in wanted.iter().enumerate() {
                    match kept.get_mut(i) {
                        Some(kept) => merge(kept, table),
                        None => kept.push(table.clone()),
                    }
                }
                while kept.len() > wanted.len() {
                    kept.remove(kept.len() - 1);
                }
            }
            (Some(Item::Value(kept)), Item::Value(wanted)) => replace(kept, wanted),
            _ => drop(kept.insert(key, item.clone())),
        }
    }
}

/// Another value keeps the blanks and the comment around the one before.
fn replace(kept: &mut Value, wanted: &Value) {
    let plain = |v: &Value| v.clone().decorated("", "").to_string();
    if plain(kept) == plain(wanted) {
        return;
    }
    let decor = kept.decor().clone();
    *kept = wanted.clone();
    *kept.decor_mut() = decor;
}

#[cfg(test)]
mod tests {
    use super::*;

    const OLD: &str = "# by hand\nformat = \"job/1\"\njob = \"A\" # the number\n\n[vehicle]\nvin = \"X\" # read at the screen\n\n\
                       [[reading]]\nquantity = \"distance\"\nvalue = 1.0 # twice\n\n[[reading]]\nvalue = 2.0\n";

    #[test]
    fn comments_stay_where_nothing_changed_and_beside_what_did() {
        let new = "format = \"job/1\"\njob = \"B\"\nbay = \"2\"\n[vehicle]\nvin = \"X\"\n[[reading]]\nquantity = \"distance\"\nvalue = 3.5\n";
        let kept = keep_comments(OLD, new);
        for comment in ["# by hand", "job = \"B\" # the number", "vin = \"X\" # read at the screen", "3.5 # twice"] {
            assert!(kept.contains(comment), "{comment}: {kept}");
        }
        assert_eq!(kept.parse::<toml::Table>().unwrap(), new.parse::<toml::Table>().unwrap());
        assert_eq!(keep_comments("= no toml", new), new);
    }
}
