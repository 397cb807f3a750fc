//! Opening a model that a person named: a path, or a name among the models.

use std::path::Path;

use crate::input::{Error, SourceFile, nearest};
use crate::words::phrase;

use super::kind::Kind;
use super::models::Models;

impl Models {
    /// Reads the file at a path, or the first model of one of these kinds with that name.
    ///
    /// # Errors
    /// Neither is there, or the file can't be read.
    pub fn open(&self, kinds: &[Kind], name: &str) -> Result<SourceFile, Error> {
        let path = Path::new(name);
        if path.exists() {
            return SourceFile::read(path);
        }
        let stem = name.strip_suffix(".toml").unwrap_or(name);
        let known: Vec<(Kind, String)> =
            kinds.iter().flat_map(|&kind| self.names(kind).into_iter().map(move |known| (kind, known))).collect();
        if let Some((kind, _)) = known.iter().find(|(_, known)| known == stem) {
            // The folder of jobs plays no part here: the name is none of its files.
            return self
                .find(*kind, stem, Path::new(""))
                .map(|found| found.source)
                .map_err(|(problem, remedy)| Error::new(name, problem, remedy));
        }
        let names: Vec<&str> = known.iter().map(|(_, known)| known.as_str()).collect();
        let all = names.join(", ");
        let remedy = match nearest(stem, names.iter().copied()) {
            Some(guess) => phrase!("doors-no-model-guess", guess = guess, names = all),
            None => phrase!("doors-no-model-remedy", names = all),
        };
        Err(Error::new(name, phrase!("doors-no-model"), remedy))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_a_path_and_nothing() {
        let models = Models::embedded();
        let by_name = models.open(&[Kind::Kit], "demo-bay").unwrap();
        assert!(by_name.text().unwrap().contains("kit/1"));
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("mine.toml");
        std::fs::write(&path, "format = \"kit/1\"").unwrap();
        let by_path = models.open(&[Kind::Kit], path.to_str().unwrap()).unwrap();
        assert_eq!(by_path.text().unwrap(), "format = \"kit/1\"");
        let error = models.open(&[Kind::Kit], "demo-bya").unwrap_err().to_string();
        assert!(error.contains("demo-bya") && error.contains("did you mean \"demo-bay\""), "{error}");
    }
}
