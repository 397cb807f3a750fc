//! Whether a photo's own record names a camera profile.

use super::profile::{ExifMatch, Profile};

impl ExifMatch {
    /// Whether a photo's EXIF values fit. What the profile states must be in
    /// the photo; what it leaves out matches anything. A profile that states
    /// nothing matches nothing: it cannot be chosen by EXIF.
    pub fn matches(&self, make: Option<&str>, model: Option<&str>, focal_length_mm: Option<f64>) -> bool {
        if *self == ExifMatch::default() {
            return false;
        }
        same_text(self.make.as_deref(), make)
            && same_text(self.model.as_deref(), model)
            && same_focal(self.focal_length_mm, focal_length_mm)
    }
}

impl Profile {
    /// Whether the profile may be chosen for a photo of this size and EXIF.
    pub fn is_for(
        &self,
        image_size_px: [u32; 2],
        make: Option<&str>,
        model: Option<&str>,
        focal_length_mm: Option<f64>,
    ) -> bool {
        self.image_size_px == image_size_px
            && self.exif.as_ref().is_some_and(|exif| exif.matches(make, model, focal_length_mm))
    }
}

/// Cameras pad and capitalise their names as they like.
fn same_text(wanted: Option<&str>, found: Option<&str>) -> bool {
    let plain = |text: &str| text.trim_matches(|c: char| c.is_whitespace() || c == '\0').to_lowercase();
    wanted.is_none_or(|wanted| found.is_some_and(|found| plain(wanted) == plain(found)))
}

fn same_focal(wanted: Option<f64>, found: Option<f64>) -> bool {
    wanted.is_none_or(|wanted| found.is_some_and(|found| (found / wanted - 1.0).abs() <= 0.02))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_stated_must_be_found() {
        let wanted =
            ExifMatch { make: Some("Example".into()), model: Some("Phone 12M".into()), focal_length_mm: Some(5.7) };
        assert!(wanted.matches(Some("EXAMPLE "), Some("phone 12m\0"), Some(5.75)));
        assert!(!wanted.matches(Some("Example"), Some("Phone 12M"), None));
        assert!(!wanted.matches(Some("Example"), Some("Phone 13M"), Some(5.7)));
        assert!(!wanted.matches(Some("Example"), Some("Phone 12M"), Some(2.2)), "the wide lens of the same phone");
        let any_focal = ExifMatch { focal_length_mm: None, ..wanted };
        assert!(any_focal.matches(Some("Example"), Some("Phone 12M"), None));
        assert!(!ExifMatch::default().matches(Some("Example"), None, None));
    }
}
