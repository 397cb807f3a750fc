//! Reading and writing camera files (`camera/1`).

use std::path::Path;

use crate::input::{self, Document, Error, SourceFile, Table, Value, Writer};

use super::distortion;
use super::lens::{Lens, LensModel};
use super::profile::{ExifMatch, PerPhoto, Profile};
use super::read_out::ReadOut;
use crate::words::{Figure, phrase};

const FORMAT: &str = "camera/1";

/// Where a file states no photo-to-photo variation: that of a phone camera
/// with autofocus and stabilisation (common practice, no source).
const DEFAULT_PER_PHOTO: PerPhoto = PerPhoto { u_focal_relative: 0.002, u_centre_px: 5.0 };

/// No phone takes longer from the first row to the last, ms.
const MOST_READ_OUT_MS: f64 = 200.0;
/// Nobody takes photos while turning faster, deg/s.
const MOST_TURN_DEG_PER_S: f64 = 100.0;

impl Profile {
    /// Reads a camera file from disk.
    ///
    /// # Errors
    /// Unreadable, or wrong in any way: names file, line, key and remedy.
    pub fn read(path: &Path) -> Result<Self, Error> {
        let file = SourceFile::read(path)?;
        Profile::from_toml(file.text()?, file.name())
    }

    /// Reads a camera file's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        let document = Document::parse(text, file, FORMAT)?;
        let own = [
            "format",
            "name",
            "model",
            "image_size_px",
            "focal_px",
            "centre_px",
            "u_noise_px",
            "covariance",
            "read_out_ms",
            "per_photo",
            "exif",
        ];
        let root = document.root().allow(&[&own[..], &distortion::KEYS].concat())?;
        let name = root.need("name")?.name()?;
        let image_size_px = root.need("image_size_px")?.array(|v| v.whole(16, 100_000))?;
        let lens = read_lens(&root, image_size_px)?;
        let (per_photo, u_turn_deg_per_s) =
            root.table("per_photo")?.map_or(Ok((DEFAULT_PER_PHOTO, None)), read_per_photo)?;
        let read_out_ms = root.maybe("read_out_ms", |v| v.within(0.0, MOST_READ_OUT_MS, "ms"))?;
        Ok(Profile {
            name,
            lens,
            image_size_px,
            u_noise_px: root.maybe("u_noise_px", |v| v.positive(10.0, "px"))?,
            covariance: root.maybe("covariance", |v| read_covariance(v, lens.model))?,
            per_photo,
            read_out: ReadOut { read_out_ms, u_turn_deg_per_s },
            exif: root.table("exif")?.map(read_exif).transpose()?,
        })
    }

    /// The camera file's text.
    pub fn to_toml(&self) -> String {
        let mut w = Writer::new(FORMAT);
        w.key("name", self.name.as_str());
        w.key("model", self.lens.model.name());
        w.key("image_size_px", self.image_size_px.map(i64::from).to_vec());
        w.numbers("focal_px", &self.lens.focal_px);
        w.numbers("centre_px", &self.lens.centre_px);
        distortion::write(&mut w, self.lens.model, &self.lens.distortion);
        w.maybe("u_noise_px", self.u_noise_px);
        if let Some(covariance) = &self.covariance {
            w.matrix("covariance", covariance);
        }
        w.maybe("read_out_ms", self.read_out.read_out_ms);
        w.table("per_photo");
        w.key("u_focal_relative", self.per_photo.u_focal_relative);
        w.key("u_centre_px", self.per_photo.u_centre_px);
        w.maybe("u_turn_deg_per_s", self.read_out.u_turn_deg_per_s);
        if let Some(exif) = &self.exif {
            w.table("exif");
            w.maybe("make", exif.make.as_deref());
            w.maybe("model", exif.model.as_deref());
            w.maybe("focal_length_mm", exif.focal_length_mm);
        }
        w.finish()
    }
}

fn read_lens(root: &Table, image_size_px: [u32; 2]) -> Result<Lens, Error> {
    let model = root
        .need("model")?
        .choice("lens", &[LensModel::BrownConrady, LensModel::KannalaBrandt].map(|m| (m.name(), m)))?;
    let [width, height] = image_size_px.map(f64::from);
    let focal_px: [f64; 2] = root.need("focal_px")?.array(|v| read_focal(v, width.max(height)))?;
    if (focal_px[0] / focal_px[1] - 1.0).abs() > 0.2 {
        return Err(root
            .need("focal_px")?
            .error(phrase!("doors-focal-lengths"), phrase!("doors-focal-lengths-remedy")));
    }
    let mut sizes = [width, height].into_iter();
    let centre_px = root.need("centre_px")?.array(|v| {
        let size = sizes.next().unwrap_or(height);
        v.within(-0.5 * size, 1.5 * size, "px")
    })?;
    Ok(Lens { model, focal_px, centre_px, distortion: distortion::read(root, model)? })
}

/// A focal length in the wrong unit is the commonest mistake in such files.
fn read_focal(v: &Value, longer_side_px: f64) -> Result<f64, Error> {
    const LEAST: f64 = 0.2;
    const MOST: f64 = 20.0;
    let f = v.number()?;
    if (LEAST * longer_side_px..=MOST * longer_side_px).contains(&f) {
        return Ok(f);
    }
    let perhaps = if f > 0.0 && f < LEAST * longer_side_px { "millimetres" } else { "wrong" };
    let (found, side) = (Figure::plain(f), Figure::plain(longer_side_px));
    Err(v.error(phrase!("doors-focal", found = found, side = side, perhaps = perhaps), phrase!("doors-focal-remedy")))
}

fn read_covariance(value: &Value, model: LensModel) -> Result<nalgebra::DMatrix<f64>, Error> {
    let rows = value
        .items()?
        .iter()
        .map(|row| row.items()?.iter().map(Value::number).collect())
        .collect::<Result<Vec<Vec<f64>>, Error>>()?;
    input::covariance(&rows, model.parameters())
        .map_err(|problem| value.error(problem, phrase!("doors-camera-covariance-remedy", model = model.name())))
}

fn read_per_photo(table: Table) -> Result<(PerPhoto, Option<f64>), Error> {
    let table = table.allow(&["u_focal_relative", "u_centre_px", "u_turn_deg_per_s"])?;
    let per_photo = PerPhoto {
        u_focal_relative: table.need("u_focal_relative")?.uncertainty(0.2, "")?,
        u_centre_px: table.need("u_centre_px")?.uncertainty(1000.0, "px")?,
    };
    Ok((per_photo, table.maybe("u_turn_deg_per_s", |v| v.uncertainty(MOST_TURN_DEG_PER_S, "deg/s"))?))
}

fn read_exif(table: Table) -> Result<ExifMatch, Error> {
    let table = table.allow(&["make", "model", "focal_length_mm"])?;
    Ok(ExifMatch {
        make: table.maybe("make", Value::text)?,
        model: table.maybe("model", Value::text)?,
        focal_length_mm: table.maybe("focal_length_mm", |v| v.positive(2000.0, "mm"))?,
    })
}
