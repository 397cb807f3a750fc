//! The names of all quantities that a set-up sheet, a reading or a record may use.

use baywitness_words::{Language, Phrase, phrase};

/// The unit that a quantity is reported in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// Millimetres.
    Millimetre,
    /// Degrees.
    Degree,
}

impl Unit {
    /// `mm` or `deg`, as in files and records.
    pub fn symbol(self) -> &'static str {
        match self {
            Unit::Millimetre => "mm",
            Unit::Degree => "deg",
        }
    }
}

macro_rules! quantities {
    ($($(#[$doc:meta])* $variant:ident = $name:literal, $unit:ident;)*) => {
        /// A quantity of the set-up. Definitions and signs: see each variant;
        /// frames are ISO 8855.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Quantity {
            $($(#[$doc])* $variant,)*
        }

        impl Quantity {
            /// Every quantity, in the order in which reports list them.
            pub const ALL: &'static [Quantity] = &[$(Quantity::$variant,)*];

            /// The name in files and records.
            pub fn name(self) -> &'static str {
                match self { $(Quantity::$variant => $name,)* }
            }

            /// The unit of the reported value.
            pub fn unit(self) -> Unit {
                match self { $(Quantity::$variant => Unit::$unit,)* }
            }

            /// The quantity of that name.
            pub fn from_name(name: &str) -> Option<Quantity> {
                Quantity::ALL.iter().copied().find(|q| q.name() == name)
            }
        }
    };
}

quantities! {
    /// `(a - from) . d`: how far the aim point stands before the datum, along the reference line.
    Distance = "distance", Millimetre;
    /// Horizontal straight line from the datum to the aim point.
    Range = "range", Millimetre;
    /// Of the aim point from the reference line, left positive.
    LateralOffset = "lateral_offset", Millimetre;
    /// Of the aim point from the nose mark or datum, across the reference line, left positive.
    LateralFromNose = "lateral_from_nose", Millimetre;
    /// Of the aim point above the floor.
    Height = "height", Millimetre;
    /// Of the aim point above the nose mark or datum.
    HeightFromNose = "height_from_nose", Millimetre;
    /// Of the target against the reference line, left positive.
    Yaw = "yaw", Degree;
    /// Of the target against the floor, top away from the vehicle positive.
    Pitch = "pitch", Degree;
    /// Of the target against the floor, vehicle's right side down positive.
    Roll = "roll", Degree;
    /// Left minus right side range.
    SideRangeDifference = "side_range_difference", Millimetre;
    /// What a laser fixed square to the stand's beam reads to the left rear hub.
    SideRangeLeft = "side_range_left", Millimetre;
    /// What a laser fixed square to the stand's beam reads to the right rear hub.
    SideRangeRight = "side_range_right", Millimetre;
    /// Toe-in positive, against the centreline.
    RearToeLeft = "rear_toe_left", Degree;
    /// Toe-in positive, against the centreline.
    RearToeRight = "rear_toe_right", Degree;
    /// Toe-in positive, against the centreline.
    FrontToeLeft = "front_toe_left", Degree;
    /// Toe-in positive, against the centreline.
    FrontToeRight = "front_toe_right", Degree;
    /// `(rear_toe_right - rear_toe_left) / 2`, left positive.
    ThrustAngle = "thrust_angle", Degree;
    /// Mean heading of the front plates against the centreline, left positive.
    SteeringAngle = "steering_angle", Degree;
    /// Left rear plate's z against the floor normal about y, top forward positive.
    PlatePlumbLeft = "plate_plumb_left", Degree;
    /// Right rear plate's z against the floor normal about y, top forward positive.
    PlatePlumbRight = "plate_plumb_right", Degree;
    /// Left front plate's z against the floor normal about y, top forward positive.
    PlatePlumbFrontLeft = "plate_plumb_front_left", Degree;
    /// Right front plate's z against the floor normal about y, top forward positive.
    PlatePlumbFrontRight = "plate_plumb_front_right", Degree;
    /// Left rear wheel, top outward positive.
    CamberLeft = "camber_left", Degree;
    /// Right rear wheel, top outward positive.
    CamberRight = "camber_right", Degree;
    /// Left front wheel, top outward positive.
    CamberFrontLeft = "camber_front_left", Degree;
    /// Right front wheel, top outward positive.
    CamberFrontRight = "camber_front_right", Degree;
    /// Distance between the rear hub datums.
    RearTrack = "rear_track", Millimetre;
    /// Between the midpoints of front and rear hub datums, along the floor.
    Wheelbase = "wheelbase", Millimetre;
    /// How far the right front hub datum sits behind the left one, along the reference line (sign from memory).
    Setback = "setback", Millimetre;
    /// Wheel-arch edge above the wheel centre, along the floor's normal; a reading where no mark is on the arch.
    ArchHeightFrontLeft = "arch_height_front_left", Millimetre;
    /// Wheel-arch edge above the wheel centre, along the floor's normal; a reading where no mark is on the arch.
    ArchHeightFrontRight = "arch_height_front_right", Millimetre;
    /// Wheel-arch edge above the wheel centre, along the floor's normal; a reading where no mark is on the arch.
    ArchHeightRearLeft = "arch_height_rear_left", Millimetre;
    /// Wheel-arch edge above the wheel centre, along the floor's normal; a reading where no mark is on the arch.
    ArchHeightRearRight = "arch_height_rear_right", Millimetre;
    /// Mean of the four arch heights.
    RideHeight = "ride_height", Millimetre;
    /// Turn of the line over the arch edges against the one through the wheel centres, nose down positive.
    BodyPitch = "body_pitch", Degree;
    /// Reading only: the target's pitch against gravity.
    TargetTiltGravity = "target_tilt_gravity", Degree;
    /// Reading only: the target's roll against gravity.
    TargetLevelGravity = "target_level_gravity", Degree;
}

impl Quantity {
    /// Whether the quantity can only be read by an instrument, never from photos.
    pub fn is_reading_only(self) -> bool {
        use Quantity as Q;
        matches!(self, Q::TargetTiltGravity | Q::TargetLevelGravity)
    }

    /// Whether the quantity concerns a target, so that with several targets
    /// one must be named.
    pub fn is_of_target(self) -> bool {
        use Quantity as Q;
        matches!(
            self,
            Q::Distance
                | Q::Range
                | Q::LateralOffset
                | Q::LateralFromNose
                | Q::Height
                | Q::HeightFromNose
                | Q::Yaw
                | Q::Pitch
                | Q::Roll
                | Q::SideRangeDifference
                | Q::SideRangeLeft
                | Q::SideRangeRight
                | Q::TargetTiltGravity
                | Q::TargetLevelGravity
        )
    }

    /// Its place in the order in which a stand is put right, so that no move undoes one before it: level, tilt, square,
    /// centre, distance, height; then everything that no move of the stand changes.
    ///
    /// It follows from the geometry. A stand that is levelled turns about its feet: half a degree under an aim point of
    /// 900 mm shifts centring or distance by 8 mm. Squaring turns it about its own upright, the aim point lies some
    /// 100 mm before that: a degree shifts it by 2 mm. What is shifted along the floor or up and down turns nothing.
    pub fn move_order(self) -> u8 {
        use Quantity as Q;
        match self {
            Q::Roll | Q::TargetLevelGravity => 0,
            Q::Pitch | Q::TargetTiltGravity => 1,
            Q::Yaw | Q::SideRangeDifference | Q::SideRangeLeft | Q::SideRangeRight => 2,
            Q::LateralOffset | Q::LateralFromNose => 3,
            Q::Distance | Q::Range => 4,
            Q::Height | Q::HeightFromNose => 5,
            _ => 6,
        }
    }

    /// The word that people at the stand use, in a reader's language.
    pub fn phrase(self) -> Phrase {
        phrase!("verdict-quantity", quantity = self.name())
    }

    /// The word that people at the stand use, in English.
    pub fn trade_name(self) -> String {
        self.phrase().say(Language::English)
    }
}
