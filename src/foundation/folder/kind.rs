//! What kinds of models there are, and in which folders they lie.

/// What a job names by path or name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A set-up sheet.
    Setup,
    /// A kit.
    Kit,
    /// A camera.
    Camera,
    /// A stand's screws.
    Stand,
    /// A board for fitting a camera; no job names one.
    Board,
}

impl Kind {
    /// Its key in job files and its role in records.
    pub fn name(self) -> &'static str {
        match self {
            Kind::Setup => "setup",
            Kind::Kit => "kit",
            Kind::Camera => "camera",
            Kind::Stand => "stand",
            Kind::Board => "board",
        }
    }

    /// Its subfolders of a models folder: the present name, then an older one.
    pub(super) fn folders(self) -> impl Iterator<Item = &'static str> {
        std::iter::once(self.folder()).chain((self == Kind::Kit).then_some("rigs"))
    }

    /// Its subfolder of a models folder.
    pub fn folder(self) -> &'static str {
        match self {
            Kind::Setup => "setups",
            Kind::Kit => "kits",
            Kind::Camera => "cameras",
            Kind::Stand => "stands",
            Kind::Board => "boards",
        }
    }
}
