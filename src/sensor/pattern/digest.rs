//! A pattern small enough to keep beside a camera file.

use serde::{Deserialize, Serialize};

use super::correlate::Values;
use super::error::{Broken, Error};
use super::plane::Plane;

/// No pattern's file is larger.
pub const LIMIT_BYTES: usize = 1_000_000;
/// Room for the head.
const HEAD_BYTES: usize = 1_000;
const FORMAT: &str = "sensor-pattern/1";
/// The largest picture that is accepted, px: what `photo` decodes.
const MOST_PIXELS: u64 = 60_000_000;

/// The signs of a pattern's largest values; all others count as nothing.
///
/// Of a pattern that has more pixels than fit, the largest values carry most of
/// what correlates (Goljan, Fridrich and Filler, Managing a large database of
/// camera fingerprints, 2010), and of a value its sign (Bayram, Sencar and
/// Memon, Efficient sensor fingerprint matching through fingerprint
/// binarization, 2012): all signs keep 2/pi of the energy, those of the largest
/// twelfth 0.38.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Digest {
    /// Whose it is: the camera file's name for the camera.
    pub camera: String,
    /// Photos that it was made from.
    pub photos: usize,
    /// Of these, how many are found in the pattern of the other half.
    pub shown: usize,
    /// Half of them reach this energy there.
    pub median_pce: u32,
    width: usize,
    height: usize,
    /// -1, 0 or 1, row after row.
    signs: Vec<i8>,
}

/// The file's first lines, TOML up to an empty line; `bytes` follow.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Head {
    format: String,
    camera: String,
    width: usize,
    height: usize,
    photos: usize,
    shown: usize,
    median_pce: u32,
    bytes: usize,
}

/// A byte's high bit is the sign; the others are how many pixels are passed over before it. This many and no sign:
const SKIP: u8 = 127;

impl Values for Digest {
    fn size(&self) -> [usize; 2] {
        [self.width, self.height]
    }
    fn at(&self, index: usize) -> f32 {
        f32::from(self.signs[index])
    }
}

impl Digest {
    /// Width and height of the photos that it was made from, px.
    pub fn size(&self) -> [usize; 2] {
        [self.width, self.height]
    }

    /// The largest values' signs of a pattern.
    pub(super) fn of(pattern: &Plane, camera: &str) -> Digest {
        let mut sizes: Vec<f32> = pattern.values.iter().map(|x| x.abs()).collect();
        let mut kept = sizes.len().min(LIMIT_BYTES);
        loop {
            let least = match sizes.len() - kept {
                0 => f32::MIN_POSITIVE,
                k => *sizes.select_nth_unstable_by(k, f32::total_cmp).1,
            };
            let sign = |x: &f32| if x.abs() < least { 0 } else { x.signum() as i8 };
            let digest = Digest {
                camera: camera.to_owned(),
                photos: 0,
                shown: 0,
                median_pce: 0,
                width: pattern.width,
                height: pattern.height,
                signs: pattern.values.iter().map(sign).collect(),
            };
            if digest.body().len() <= LIMIT_BYTES - HEAD_BYTES {
                return digest;
            }
            kept -= kept / 50 + 1;
        }
    }

    /// With what its photos showed.
    pub(super) fn with_quality(self, photos: usize, shown: usize, median_pce: u32) -> Digest {
        Digest { photos, shown, median_pce, ..self }
    }

    fn body(&self) -> Vec<u8> {
        let mut bytes = Vec::new();
        let mut passed = 0;
        for sign in &self.signs {
            match sign {
                0 => passed += 1,
                _ => {
                    bytes.push(passed | if *sign < 0 { 0x80 } else { 0 });
                    passed = 0;
                }
            }
            if passed == SKIP {
                bytes.push(SKIP);
                passed = 0;
            }
        }
        bytes
    }

    /// The file's bytes (`docs/formats`).
    pub fn to_bytes(&self) -> Vec<u8> {
        let body = self.body();
        let head = Head {
            format: FORMAT.to_owned(),
            camera: self.camera.chars().take(200).collect(),
            width: self.width,
            height: self.height,
            photos: self.photos,
            shown: self.shown,
            median_pce: self.median_pce,
            bytes: body.len(),
        };
        let mut bytes = toml::to_string(&head).unwrap_or_default().into_bytes();
        bytes.push(b'\n');
        bytes.extend(body);
        bytes
    }

    /// Reads a file's bytes; `file` is for messages.
    ///
    /// # Errors
    /// Where they are no pattern, not whole, or more than [`LIMIT_BYTES`].
    pub fn from_bytes(bytes: &[u8], file: &str) -> Result<Digest, Error> {
        let broken = |why| Error::NotAPattern { file: file.to_owned(), why };
        if bytes.len() > LIMIT_BYTES {
            return Err(broken(Broken::TooLarge));
        }
        let end = bytes.windows(2).take(HEAD_BYTES).position(|w| w == b"\n\n");
        let head = end.and_then(|end| std::str::from_utf8(&bytes[..=end]).ok());
        let (Some(end), Some(head)) = (end, head) else {
            return Err(broken(Broken::Head(format!("format ? instead of {FORMAT:?}"))));
        };
        let head: Head = toml::from_str(head).map_err(|e| broken(Broken::Head(e.message().to_owned())))?;
        if head.format != FORMAT {
            return Err(broken(Broken::Head(format!("format {:?} instead of {FORMAT:?}", head.format))));
        }
        let pixels = (head.width as u64).checked_mul(head.height as u64).filter(|n| (1..=MOST_PIXELS).contains(n));
        let body = &bytes[end + 2..];
        let signs = pixels.filter(|_| head.bytes == body.len()).and_then(|n| signs(body, n as usize));
        let signs = signs.ok_or_else(|| broken(Broken::Body))?;
        Ok(Digest {
            camera: head.camera,
            photos: head.photos,
            shown: head.shown,
            median_pce: head.median_pce,
            width: head.width,
            height: head.height,
            signs,
        })
    }

    /// As a plane of numbers.
    pub(super) fn plane(&self) -> Plane {
        Plane { width: self.width, height: self.height, values: self.signs.iter().map(|s| f32::from(*s)).collect() }
    }
}

/// The signs of so many pixels; `None` where the bytes run past the last one.
fn signs(body: &[u8], pixels: usize) -> Option<Vec<i8>> {
    let mut signs = vec![0i8; pixels];
    let mut place = 0usize;
    for byte in body {
        match byte & 0x7f {
            SKIP => place += usize::from(SKIP),
            passed => {
                place += usize::from(passed);
                *signs.get_mut(place)? = if byte & 0x80 == 0 { 1 } else { -1 };
                place += 1;
            }
        }
    }
    (place <= pixels).then_some(signs)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wavy(width: usize, height: usize) -> Plane {
        let values = (0..width * height).map(|i| (i as f32 * 0.7).sin() * ((i * i % 1009) as f32)).collect();
        Plane { width, height, values }
    }

    #[test]
    fn a_small_pattern_keeps_every_sign_and_a_large_one_its_largest() {
        let small = Digest::of(&wavy(300, 200), "a");
        let nothing = small.signs.iter().filter(|s| **s == 0).count();
        assert!(nothing < 100, "{nothing}");
        let plane = wavy(2400, 1800);
        let large = Digest::of(&plane, "a");
        let bytes = large.to_bytes();
        assert!((LIMIT_BYTES * 9 / 10..=LIMIT_BYTES).contains(&bytes.len()), "{}", bytes.len());
        let least = plane.values.iter().zip(&large.signs).filter(|(_, s)| **s != 0).map(|(x, _)| x.abs());
        let most = plane.values.iter().zip(&large.signs).filter(|(_, s)| **s == 0).map(|(x, _)| x.abs());
        assert!(least.fold(f32::MAX, f32::min) >= most.fold(0.0, f32::max));
        assert_eq!(Digest::from_bytes(&bytes, "a").unwrap(), large);
    }

    #[test]
    fn long_gaps_come_back() {
        let mut plane = Plane { width: 1000, height: 3, values: vec![0.0; 3000] };
        (plane.values[126], plane.values[253], plane.values[2999]) = (1.0, -2.0, 3.0);
        let digest = Digest::of(&plane, "camera \"b\"");
        assert_eq!(digest.signs.iter().filter(|s| **s != 0).count(), 3);
        assert_eq!(Digest::from_bytes(&digest.to_bytes(), "b").unwrap(), digest);
    }

    #[test]
    fn whatever_is_broken_is_an_error_that_names_the_file() {
        let whole = Digest::of(&wavy(60, 40), "a").to_bytes();
        let said = |bytes: &[u8]| Digest::from_bytes(bytes, "x.pattern").unwrap_err().to_string();
        for cut in (0..whole.len()).step_by(7).chain([whole.len() - 1]) {
            assert!(said(&whole[..cut]).contains("x.pattern"));
        }
        let more = [&whole[..], &[0]].concat();
        assert!(said(&more).contains("x.pattern"));
        let text = String::from_utf8_lossy(&whole[..150]).into_owned();
        assert!(text.contains("width = 60"), "{text}");
        let huge = [text.replace("width = 60", "width = 9000000000").as_bytes(), &whole[150..]].concat();
        assert!(said(&huge).contains("x.pattern"));
        assert!(said(&vec![b'a'; LIMIT_BYTES + 1]).contains("x.pattern"));
    }
}
