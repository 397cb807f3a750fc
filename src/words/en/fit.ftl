# A fitted camera, on the terminal.
fit-parameter =
    { $name ->
        [focal-u] focal u
        [focal-v] focal v
        [centre-u] centre u
       *[centre-v] centre v
    }
fit-parameters-head = Parameters with their standard uncertainty (1 sigma):
fit-for-use = Fit for use: { $answer ->
        [yes] yes
       *[no] NO
    }
fit-verdict =
    { $answer ->
        [yes] Fit for use
       *[no] Not fit for use
    }
fit-forbids = Forbids use:
fit-advice =
    { $kind ->
        [forbids] Not fit for use: { $advice }
       *[note] Note: { $advice }
    }
fit-head = { $name }: { $model } lens, { $width } x { $height } px, from { $count } photos
fit-head-noise = RMS { $rms } px per coordinate, corner noise { $noise } px ({ $factor } times what the detector states), { $freedom } degrees of freedom
fit-per-photo = Photo to photo (1 sigma): focal length { $focal } % ({ $focal_freedom } degrees of freedom), centre { $centre } px ({ $centre_freedom })
fit-turn = While rows were read the camera turned by { $turn } deg about each axis (1 sigma)
fit-board = Board: bent by { $bend } mm from peak to valley, and by { $flex } mm differently in each photo (1 sigma); allowed for
fit-seen = Seen in { $share } % of the frame, tilted by up to { $tilt } deg against each other, turned by up to { $turn } deg
fit-halves = Two halves ({ $first } and { $second } photos): projections differ by up to { $most } px ({ $shape } px besides focal length and centre), { $ratio } times what is stated ({ $agree ->
        [yes] they agree
       *[no] they disagree
    })
fit-left-out = Left out: { $file }: { $why }
fit-wrote = wrote { $file }
fit-looked-at = looked at { $file }

# Why a photo is left out.
fit-out-size = it is { $width } x { $height } px, the others are { $others_width } x { $others_height } px
fit-out-record = its own record names another camera or focal length than the other photos'
fit-out-no-board = no part of the board was found in it (a chessboard must be seen whole)
fit-out-few-markers =
    { $count ->
        [one] only one of the board's markers was found in it
       *[other] only { $count } of the board's markers were found in it
    }
fit-out-no-pose = no pose of the board explains it
fit-out-zoomed =
    { $side ->
        [shorter] its focal length is { $off } % shorter than the other photos': zoomed, cropped or resized
       *[longer] its focal length is { $off } % longer than the other photos': zoomed, cropped or resized
    }
fit-out-misfit = its corners miss the fit by { $ratio } times as much as other photos' (blur, a moved or bent board?)
fit-out-markers = { $share } % of its markers do not lie where the board has them

# What to do about a fit.
fit-part =
    { $part ->
        [upper-left] the upper left corner
        [upper] the upper edge
        [upper-right] the upper right corner
        [left] the left edge
        [middle] the middle
        [right] the right edge
        [lower-left] the lower left corner
        [lower] the lower edge
        [lower-right] the lower right corner
        [edges] its edges
       *[corners] its corners
    }
fit-advice-noise = the corners scatter { $factor } times as much as the detector states: check that the board is flat and printed as its file says; the stated uncertainties allow for it
fit-advice-too-few = only { $count } photos could be used: take 12 to 20 of the board
fit-advice-few = { $count } photos say little of how photos differ: take 12 to 20
fit-advice-many-out = { $left_out } photos were left out, { $used } used: see why, and take new ones
fit-advice-coverage = the board was seen in { $share } % of the frame: fill { $parts } (of the picture as stored)
fit-advice-alike = the photos look alike: the board's direction differs by { $tilt } deg at most; tilt the board (or walk round it) by 30 to 45 deg to the left, to the right, up and down
fit-advice-tilt = tilt the board more: its direction differs by { $tilt } deg at most, 60 deg is good
fit-advice-turn = all photos have the board the same way up: turn the camera by a quarter for some of them
fit-advice-focal = the focal length is known to { $u } % only ({ $most } % is needed): more photos with the board tilted more
fit-advice-dark = the fitted lens shows nothing at all in a tenth of the frame or more: its distortion was not determined there, fill the frame with the board
fit-advice-frame = a tenth of the frame is known to no better than { $u } px ({ $most } px is needed): fill { $parts }
fit-advice-bent = the board is bent by { $bend } mm: glue it to a flat plate (glass, aluminium) and fit again
fit-advice-no-halves = too few photos to compare two halves of them
fit-advice-other-lens = two halves of the photos show different lenses: their projections differ by { $shape } px somewhere in the frame, focal length and centre apart ({ $most } px is the most); the lens model is the wrong one, the lens changed between the photos, or too few of them reach that part
fit-advice-halves-changed = two halves of the photos differ by { $ratio } times what is stated (up to { $most } px): the lens changed between them, or the board did
fit-advice-halves-enlarged = two halves of the photos differ by { $ratio } times what is stated (up to { $most } px); the stated uncertainties were enlarged by that factor
fit-advice-better-model = the lens is not of this model: fit it with --model { $model }, which leaves { $rms } px of residuals instead of { $own_rms } px, and whose halves differ by { $shape } px instead of { $own_shape } px (focal length and centre apart)

# A camera from photos of a kit.
fit-kit-head = { $name }: { $model } lens from { $used } of { $count } photos of a kit
fit-kit-noise = RMS { $rms } px per coordinate ({ $factor } times what the detector states)
fit-kit-known = Nine tenths of the frame are known to { $u } px besides focal length and centre
fit-kit-too-few = only { $count } photos could be used: take { $least } or more
fit-kit-focal = the focal length is known to { $u } % only ({ $most } % is needed): stand nearer, so that near and far markers are in one photo
fit-kit-frame = a tenth of the frame is known to no better than { $u } px ({ $most } px is needed): have markers in the corners of some photos, or fit with a board

# The fitted camera's page.
fit-title = Camera fit: { $name }
fit-lens-title = Lens
fit-lens = { $model }, RMS { $rms } px per coordinate, corner noise { $factor } times what the detector states.
fit-lens-varies = From photo to photo (1 sigma) the focal length varies by { $focal } % and the centre by { $centre } px. While rows were read the camera turned by { $turn }° about each axis (1 sigma).
fit-column-parameter = Parameter
fit-column-value = Value
fit-column-u = Standard uncertainty
fit-circles-title = How far off a point may appear
fit-circles-drawing = Circles over the frame: how far off a point may appear
fit-circles-size = the size of { $size } mm
fit-circles-caption = A point { $distance } m from the camera appears at most this far beside its place (95 %) because the lens is not known better: { $best } mm where it is known best, { $worst } mm at the worst place of the frame. A turn of the whole camera is taken out, since each photo finds its own. A dash: the lens shows nothing there.
fit-residuals-title = Residuals
fit-residuals-drawing = Residuals over the frame
fit-residuals-caption = Found minus predicted for { $count } corners of all photos, lines { $factor } times their true length. Neighbours that point the same way in many photos would be an error of the lens model.
fit-coverage-title = Where the board was seen
fit-coverage-drawing = Number of corners in each part of the frame
fit-coverage-caption = Corners of all photos in each part of the picture as stored: { $share } % of the frame. The board was tilted by up to { $tilt }° and turned by up to { $turn }° between photos.
fit-halves-title = Two halves of the photos
fit-halves-few = Too few photos to compare two halves.
fit-halves-page = Every second photo against the others: the two lenses project a point at most { $most } px apart ({ $shape } px besides focal length and centre), which is { $ratio } times what is stated, where up to { $limit } is chance: { $agree ->
        [yes] they agree.
       *[no] they disagree.
    }
fit-photos-title = Photos
fit-column-photo = Photo
fit-column-corners = Corners
fit-column-rms = RMS, px
fit-column-focal = Focal length
fit-column-centre = Centre, px
fit-corners = { $found } of { $count }
fit-left-out-title = Left out

# A surveyed kit.
fit-survey-title = Survey of { $kit }
fit-survey-serial = Serial { $serial }
fit-survey-head = { $name }: { $markers } markers on { $carriers } marker holders from { $used } of { $count } photos; corners scatter { $factor } times what the detector states, { $freedom } degrees of freedom
fit-survey-carrier = { $name }: { $count } markers, off by { $moved } mm per coordinate, now known to { $known } mm among themselves
fit-survey-column-marker = Marker
fit-survey-column-photos = Photos
fit-survey-column-moved = Found - file, mm (x y z)
fit-survey-column-u-shape = u among markers, mm
fit-survey-column-u-centre = u in the holder, mm
fit-survey-column-turned = Turned, deg
fit-survey-column-markers = Markers
fit-length = Length { $length }: { $against ->
        [sizes] marker sizes as stated
       *[others] the others
    } say { $expected } mm +- { $u }, E_n { $score }: { $agrees ->
        [yes] agrees
       *[no] DISAGREES
    }
fit-scale = Scale from { $source ->
        [lengths] the measured lengths
       *[sizes] the stated marker sizes
    }; markers are printed { $scale } % +- { $u } % (1 sigma) of their stated sizes
fit-survey-file = The file's places were off by { $off } mm per coordinate (1 sigma); each marker holder's own frame is known to that over the root of its markers
fit-survey-halves = Two halves ({ $first } and { $second } photos): centres differ by { $rms } mm per coordinate, { $most } mm at most (marker { $marker }), { $ratio } times what is stated ({ $agree ->
        [yes] they agree
       *[no] they disagree
    })
fit-survey-halves-page = Every second photo against the others, { $count } markers: centres differ by { $rms } mm per coordinate, { $most } mm at most (marker { $marker }). Over its stated uncertainty the difference is { $ratio } (up to { $limit } is chance): { $agree ->
        [yes] the halves agree.
       *[no] the halves disagree.
    }
fit-survey-photo-out = Left out: { $file }: it shares no marker with the others
fit-survey-left-out = Not surveyed: { $what }: { $why }
fit-survey-left-out-title = Not surveyed
fit-survey-left-out-line = { $what }: { $why }
fit-survey-no-part = took no part
fit-survey-scale-title = Scale
fit-survey-lengths = Measured lengths against everything else; above 1, E_n says that they disagree (ISO/IEC 17043, k = 2):
fit-survey-frame = Photos fix the markers against each other. Where the marker holder's own frame is (hub datum, aim point) follows from the kit file: the found shape is laid on it by the best rigid fit, and what the file's errors ({ $off } mm, 1 sigma, found here) do to that fit is part of "u in the holder".
fit-survey-caption = Seen from where the markers look to, upper edges of the codes bold. Red: from the file's centre to the found one, { $factor } times its true length; disc: twice its standard uncertainty. Numbers: marker and how far it was found in front of (+) its place, mm.
fit-survey-drawing = { $carrier }: found places of its markers against the kit file
fit-survey-markers-on = marker { $markers } on { $carrier }
fit-survey-marker = marker { $marker }
fit-survey-holder = { $name }
fit-survey-unseen =
    { $seen ->
        [none] no photo shows it
       *[one] one photo shows it, two are the least
    }
fit-survey-ambiguous = two poses fit equally well: take photos from the side that show it with others
fit-survey-one-marker = its one marker is the marker holder: there is nothing to survey but its size
fit-survey-apart = fewer than two of its markers were measured together: it stays as the kit file has it
fit-survey-too-few = only { $count } photos could be used: take { $enough } from all sides
fit-survey-few = { $count } photos leave little to contradict each other: take { $enough }
fit-survey-length =
    { $against ->
        [sizes] the length { $length } disagrees with the marker sizes of the kit file: { $expected } mm was expected (E_n { $score }); measure it again, or the prints are of another size than stated
       *[others] the length { $length } disagrees with the other lengths: { $expected } mm was expected (E_n { $score }); measure it again
    }
fit-survey-no-length = no length was measured, so the scale is that of the stated marker sizes: measure one as long as possible (--length)
fit-survey-halves-differ =
    { $outcome ->
        [moved] two halves of the photos differ by { $ratio } times what is stated (up to { $most } mm, marker { $marker }): something moved between the photos: survey again, or marker holders apart (--apart)
       *[enlarged] two halves of the photos differ by { $ratio } times what is stated (up to { $most } mm, marker { $marker }): the stated uncertainties were enlarged by that factor
    }
fit-survey-no-halves = two halves of the photos cannot be compared: they are too few, or half of them does not fix the markers
fit-survey-noise = corners scatter { $factor } times as much as the detector states: flat markers? nothing moved? The stated uncertainties allow for it
fit-survey-far-off = markers sit { $off } mm (1 sigma) from where the kit file has them, so that nothing says where hub datum or aim point are: is it this kit's file, are sheets swapped? Correct the centres in it and survey again
fit-survey-loose = markers of { $carrier } are known to { $known } mm against its own frame (hub datum, aim point): the kit file says no better where they sit, measure them on the marker holder and enter their centres
fit-survey-weak =
    { $count ->
        [one] the place of marker { $markers } is known no better than { $most } mm: take more photos of it, nearer and from both sides
       *[other] the places of markers { $markers } are known no better than { $most } mm: take more photos of them, nearer and from both sides
    }

# A fixed reference checked again.
fit-recheck = { $day }: { $count } markers; marker { $marker } moved most, { $most } mm; largest move { $sigmas } times its standard uncertainty; spacing { $spacing } %
fit-recheck-moved = Something moved since the first survey: the wall, a sheet, or the camera file is no longer right.
fit-recheck-outside = { $name } { $value } is outside its control limits { $low } to { $high }: look for the reason before the next job.
fit-recheck-fine = In order.
fit-recheck-series =
    { $series ->
        [move] Largest move, mm
       *[spacing] Spacing, %
    }
fit-recheck-title = Checks of { $reference }
fit-recheck-chart = Control chart: { $name }
fit-recheck-line =
    { $line ->
        [mean] mean
        [upper] upper limit
       *[lower] lower limit
    }
fit-recheck-all = All checks
fit-recheck-note = Moves are against the first survey. A move of more than { $sigmas } times its standard uncertainty is no chance. Spacing: distances between markers over their printed sizes; it falls where paper has grown.
fit-recheck-column-day = Day
fit-recheck-column-most = Moved most: marker
fit-recheck-column-by = by mm
fit-recheck-column-sigmas = Largest move over its uncertainty
fit-recheck-caption = Individuals chart: mean and limits ({ $factor } mean moving ranges) of the checks before the last one{ $provisional ->
        [yes] ; provisional until there are { $enough }. A red diamond lies outside.
       *[no] . A red diamond lies outside.
    }
fit-recheck-no-limits = Limits appear with the third check.

# Why no camera could be fitted, no kit surveyed.
fit-further = { $first }; { $rest }
fit-of = { $what }: { $why }
fit-no-too-few = cannot fit a camera: { $left } of { $photos } photos could be used, at least 3 are needed
fit-no-start = no lens explains the { $photos } photos: is it the board of the board file, flat, and the photos unedited?
fit-no-kit = cannot fit a camera to photos of the kit: { $why }
fit-no-settled = the adjustment of { $photos } photos did not settle: they don't determine the lens; take 12 to 20 photos with the board in all parts of the frame, tilted by 30 to 45 deg to all sides
fit-no-photo = no photo was given
fit-no-same-size = { $file } is not { $width } x { $height } px as { $first } is: fit each size by itself
fit-no-survey = cannot survey the kit: { $why }
fit-no-camera = cannot measure { $file }: { $why }
fit-no-camera-size = it is { $width } x { $height } px, but camera { $camera } is for { $for_width } x { $for_height } px: use the photo as the camera stored it
fit-no-camera-fits =
    { $known ->
        [yes] no camera file fits it ({ $width } x { $height } px, { $make } { $model }): fit the camera with a board, or name it with --camera
       *[no] no camera file fits it ({ $width } x { $height } px, make or model not recorded): fit the camera with a board, or name it with --camera
    }
fit-no-camera-two = two camera files fit it, { $first } and { $second }: name one with --camera
fit-no-pair = no marker holder has two markers that the { $photos } photos place together without doubt: take six or more photos from all sides, each with as many markers as possible
fit-no-length = cannot use the length { $length }: { $why }
fit-no-length-unseen = photos do not show both of its markers together with others (are the ids right?)
fit-no-length-unmeasured = one of its markers was not measured
fit-no-length-contradicts = the lengths contradict the photos
fit-no-length-text =
    { $problem ->
        [same] "{ $text }" has the same corner at both ends: write it as ID:CORNER,ID:CORNER=MM~U, such as 10:0,13:1=1200.4~0.3: corners 0 top-left, 1 top-right, 2 bottom-right, 3 bottom-left of the upright marker (or tl, tr, br, bl), U the standard uncertainty in mm
       *[form] "{ $text }" is no length: write it as ID:CORNER,ID:CORNER=MM~U, such as 10:0,13:1=1200.4~0.3: corners 0 top-left, 1 top-right, 2 bottom-right, 3 bottom-left of the upright marker (or tl, tr, br, bl), U the standard uncertainty in mm
    }
fit-no-first-survey = the reference was never surveyed: survey it once, and check against the kit that this writes
fit-no-place = the photos do not fix { $holder }: take it from two sides
fit-no-holder = no marker holder { $holder } was measured in it
fit-no-seatings = { $count } seatings say nothing of repeatability: clamp the plate on at least three times, ten are good
