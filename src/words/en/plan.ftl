# Names of quantities, lines and units, also for trends and audits.
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, step { $step }
plan-check-target-step = { $name }, { $target }, step { $step }
plan-unit = { $unit }

# A plan of the photos.
plan-title = Photo plan: { $sheet }
plan-with = Kit { $kit }, camera { $camera }
plan-no-station = No place in this bay shows enough markers. See what to change below.
plan-no-station-page = No place in this bay shows enough markers.
plan-photos =
    { $count ->
        [one] One photo
       *[other] { $count } photos
    }:
plan-photos-each-step =
    { $count ->
        [one] One photo
       *[other] { $count } photos
    }, taken in every step ({ $steps }):
plan-shows = shows { $bodies }
plan-worth-head = What they will be worth (95 %):
plan-noise = Corners are counted on as { $ratio } times as noisy as in plainly developed photos, as this phone's own photos show.
plan-place =
    { $along ->
        [front] { $ahead } m in front of the nose
       *[behind] { $ahead } m behind the nose
    }, { $across ->
        [centre] on the centreline
        [left] { $beside } m to the vehicle's left
       *[right] { $beside } m to the vehicle's right
    }, camera { $height } m high, { $towards ->
        [middle] looking at the middle of the front axle
        [left-wheel] looking at the left front wheel
        [right-wheel] looking at the right front wheel
        [left-of] looking at a point { $aside } m to the left of the front axle
        [right-of] looking at a point { $aside } m to the right of the front axle
       *[off] looking { $turn } deg off the driving direction
    }
plan-worth = ±{ $u } against ±{ $tolerance }: proven up to { $room } off
plan-worth-unprovable = ±{ $u } against ±{ $tolerance }: CANNOT BE PROVEN
plan-worth-reading = decided by a reading, not by photos
plan-worth-none = NOT DETERMINED by these photos
plan-least =
    { $count ->
        [one] one photo is enough
       *[other] { $count } photos are enough
    }
plan-least-none = no photo
plan-least-not =
    { $count ->
        [one] not with one photo
       *[other] not with { $count } photos
    }
plan-follow-up = After each move of the stand one photo:
plan-follow-up-note = It measures; what is within after the last move takes as many photos as the sheet says.
plan-change-head = What to change:
plan-change-title = What to change
plan-stand-title = Where to stand
plan-every-step = Take each photo in every step: { $steps }.
plan-station-markers = ({ $count ->
        [one] one marker
       *[other] { $count } markers
    } on { $bodies })
plan-worth-title = What the photos will be worth
plan-column-check = Check
plan-column-line = Against
plan-column-expected = Expected, 95 %
plan-column-least = Fewest photos
plan-foot = Predicted for a stand in its required place, clean prints and a lit bay. The vehicle maker's service information governs; lasers and lifted vehicles need their own precautions.
plan-drawing = The bay from above: vehicle, stand and where to take the photos
plan-clear-width = clear width { $width } m
plan-vehicle =
    { $heading ->
        [up] vehicle
       *[right] vehicle, drives to the right
    }
plan-camera-height = camera { $height } m high

# A set-up sheet explained.
plan-sheet-title = Set-up sheet: { $sheet }
plan-sheet-asks = What it asks for
plan-sheet-open = Neither checked nor waived
plan-sheet-contradictions = Contradictions
plan-sheet-contradictions-title = Contradictions: the sheet cannot be met as it is
plan-sheet-questions = Questions
plan-sheet-kit = With the kit { $kit }
plan-sheet-photos =
    { $decided ->
        [all] { $each ->
            [step] { $count } photos in each step decide every check.
           *[once] { $count } photos decide every check.
        }
       *[some] { $each ->
            [step] { $count } photos in each step do not decide every check.
           *[once] { $count } photos do not decide every check.
        }
    }
plan-sheet-no-kit = No kit among the models has the targets that this sheet names.
plan-drawing-written = Drawing: { $file }
