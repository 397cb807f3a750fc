//! Reading scene files (`scene/1`) and the files that they name.

use std::borrow::Cow;
use std::path::Path;

use super::check::check;
use super::{Scene, SceneSpec};
use crate::camera::Profile;
use crate::input::{Document, Error, Place, SourceFile, as_it_came, did_you_mean};
use crate::marker::Kit;
use crate::setup::Setup;
use crate::words::phrase;

const FORMAT: &str = "scene/1";

impl Scene {
    /// Reads a scene file and the kit, set-up sheet and camera that it names,
    /// relative to its own folder.
    ///
    /// # Errors
    /// Any of the files is unreadable or wrong: names file, line, key and remedy.
    pub fn read(path: &Path) -> Result<Self, Error> {
        let file = SourceFile::read(path)?;
        let (text, name) = (file.text()?, file.name());
        let document = Document::parse(text, name, FORMAT)?;
        let spec = SceneSpec::from_toml(text, name)?;
        let folder = path.parent().unwrap_or(Path::new(""));
        let mut scene = Scene::new(
            Kit::read(&folder.join(&spec.kit))?,
            Setup::read(&folder.join(&spec.setup))?,
            Profile::read(&folder.join(&spec.camera))?,
        );
        scene.spec = spec;
        scene.folder = Some(folder.to_path_buf());
        check(&scene).map_err(|problem| document.error(&problem))?;
        Ok(scene)
    }
}

impl Scene {
    /// A scene from texts that the program carries; `text_of` gives the text of a
    /// file that the scene names, and `name` is the scene's for messages.
    ///
    /// # Errors
    /// Any of the texts is wrong or missing: names file, line, key and remedy.
    pub fn from_texts(text: &str, name: &str, text_of: &dyn Fn(&str) -> Option<&'static str>) -> Result<Self, Error> {
        let document = Document::parse(text, name, FORMAT)?;
        let spec = SceneSpec::from_toml(text, name)?;
        let missing = |file: &str| {
            Error::new(name, phrase!("doors-scene-not-carried", file = file), phrase!("doors-scene-not-carried-remedy"))
        };
        let named = |file: &str| text_of(file).ok_or_else(|| missing(file));
        let mut scene = Scene::new(
            crate::marker::KitFile::from_toml(named(&spec.kit)?, &spec.kit)?.kit,
            Setup::from_toml(named(&spec.setup)?, &spec.setup)?,
            Profile::from_toml(named(&spec.camera)?, &spec.camera)?,
        );
        scene.spec = spec;
        check(&scene).map_err(|problem| document.error(&problem))?;
        Ok(scene)
    }
}

impl SceneSpec {
    /// Reads a scene file's own keys; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        Document::parse(text, file, FORMAT)?;
        let text = &present_names(text);
        toml::from_str(text).map_err(|e| translated(text, file, &e))
    }
}

/// Before 0.2 the kit was called `rig`, and `[kit]` its errors.
fn present_names(text: &str) -> Cow<'_, str> {
    if !text.lines().any(|line| line.starts_with("rig ") || line.starts_with("rig=")) {
        return Cow::Borrowed(text);
    }
    let present = |line: &str| match line {
        _ if line.starts_with("rig ") || line.starts_with("rig=") => format!("kit{}", &line["rig".len()..]),
        _ if line.trim_end() == "[kit]" => "[kit_errors]".to_owned(),
        _ => line.to_owned(),
    };
    Cow::Owned(text.lines().map(|line| present(line) + "\n").collect())
}

/// The deserialiser's error in the words of all other input errors.
fn translated(text: &str, file: &str, error: &toml::de::Error) -> Error {
    let place = error.span().map(|span| Place::of_offset(text, span.start));
    let message = error.message();
    // serde's wording: unknown field `x`, expected one of `a`, `b` / unknown variant ...
    let words: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    let (problem, remedy) = match (message.split_whitespace().next(), words.split_first()) {
        (Some("unknown"), Some((word, known))) => {
            (phrase!("doors-scene-unknown", word = *word), did_you_mean(word, known.iter().copied()))
        }
        (Some("missing"), Some((word, _))) => {
            (phrase!("doors-scene-missing", key = *word), phrase!("doors-scene-missing-remedy", key = *word))
        }
        _ => (as_it_came(message), phrase!("doors-scene-kinds-remedy")),
    };
    Error::new(file, problem, remedy).at(place)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn error_of(text: &str) -> String {
        SceneSpec::from_toml(text, "scene.toml").unwrap_err().to_string()
    }

    #[test]
    fn three_names_are_a_whole_scene() {
        let text = "format = \"scene/1\"\ncamera = \"c.toml\"\nkit = \"r.toml\"\nsetup = \"s.toml\"\n";
        let spec = SceneSpec::from_toml(text, "scene.toml").unwrap();
        assert_eq!((spec.kit.as_str(), spec.seed, spec.photo), ("r.toml", 0, None));
    }

    #[test]
    fn names_of_before_the_kit_had_one_are_read() {
        let text =
            "format = \"scene/1\"\ncamera = \"c.toml\"\nrig = \"r.toml\"\nsetup = \"s.toml\"\n[kit]\nexact = true\n";
        let spec = SceneSpec::from_toml(text, "scene.toml").unwrap();
        assert!(spec.kit == "r.toml" && spec.kit_errors.exact);
    }

    #[test]
    fn mistakes_are_named_with_line_and_nearest_key() {
        let text = "format = \"scene/1\"\ncamera = \"c.toml\"\nkit = \"r.toml\"\nsetup = \"s.toml\"\n[vehicle]\nwheelbase = 3.0\n";
        assert_eq!(
            error_of(text),
            "scene.toml, line 6, column 1: unknown key or word `wheelbase`; did you mean `wheelbase_mm`?"
        );
        assert!(error_of("format = \"scene/1\"\ncamera = \"c.toml\"\nkit = \"r\"\n").contains("`setup` is missing"));
        assert!(error_of("format = \"kit/1\"\n").contains("scene/1"));
        assert!(error_of("format = \"scene/1\"\nseed = \"x\"\n").contains("line 2"));
    }
}
