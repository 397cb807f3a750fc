# What else would explain the photos almost as well.
findings-rivals = Almost as likely: { $rivals }.
findings-if-moved = { $body } moved between the photos
findings-if-size = the markers on { $body } have another size
findings-if-size-kind =
    the markers on all { $kind ->
        [floor] floor sheets
       *[plates] wheel plates
    } have another size
findings-if-half-turned = the picture was turned by 180 degrees
findings-if-sizes = all markers have another size than the kit file says
findings-if-zoomed = { $photo } was zoomed
findings-if-focal = the camera's focal length is another
findings-if-displaced = marker { $marker } on { $body } sits elsewhere than the kit file has it
findings-if-marker = marker { $marker } on { $body } was found wrong in { $photo }
findings-if-lens-one = { $photo } was taken through another lens
findings-if-lens = the photos were taken through another lens
findings-if-off-floor =
    { $count ->
        [one] floor sheet { $sheets } lies off the floor's plane
       *[other] floor sheets { $sheets } lie off the floor's plane
    }

# What a figure would be with one explanation of a finding; these stand before a figure.
findings-with-place =
    { $count ->
        [one] with { $body } where { $photos } alone shows it
       *[other] with { $body } where { $photos } alone show it
    }
findings-with-sizes = with all markers of another size
findings-with-size = with the markers on { $body } of another size
findings-with-focal = with another focal length of { $photos }
findings-with-lens = with { $photos } taken through another lens
findings-with-rear-floor = with the floor below the rear wheels instead of the sheets' plane
findings-with-floor =
    { $count ->
        [one] with a floor that sheet { $sheets } is no part of
       *[other] with a floor that sheets { $sheets } are no part of
    }
findings-with-not-flush = with { $body } not flush with its wheel
findings-without-readings = without the readings
findings-with-typed-wrong = with what was typed taken for wrong

# How far two places of a body are apart.
findings-step-far = The two places are far apart.
findings-step = The two places are about { $mm } mm and { $degrees } deg apart.

findings-stand-moved = { $body } stands elsewhere in { $photos } than in the other photos. { $step } Let nobody touch the stand and take all photos again.
findings-arch-moved = { $body } sits elsewhere over its wheel in { $photos } than in the other photos. { $step } It was bumped, somebody got in or out, or the suspension was still settling. Let nobody aboard and take all photos again.
findings-body-moved = { $body } sits elsewhere in { $photos } than in the other photos. { $step } It was bumped, or the vehicle moved. Fix it and take all photos again.
findings-plate-moved = { $body } sits elsewhere in { $photos } than in the other photos. { $step } It slipped on its wheel, or that wheel moved. Seat it again and take all photos again.
findings-vehicle-rolled =
    { $way ->
        [forward] The vehicle stands about { $mm } mm further forward in { $photos } than in the other photos. Chock the wheels, check the stand again and take all photos again.
       *[rearward] The vehicle stands about { $mm } mm further rearward in { $photos } than in the other photos. Chock the wheels, check the stand again and take all photos again.
    }
findings-vehicle-nudged = The vehicle stands about { $mm } mm elsewhere in { $photos } than in the photos before the stand was moved, turned by { $degrees } deg: it was nudged. Chock the wheels and take two photos again, of all of it.
findings-sheet-slid = { $body } lies elsewhere in { $photo } than in photos from before or after another move of the stand, by about { $mm } mm and { $degrees } deg: it was kicked, or the vehicle moved. Lay it down, chock the wheels and take two photos again, of all of it.
findings-phases-differ = { $body } stood elsewhere after the calibration than before it, by about { $mm } mm and { $degrees } deg. The values here are those from before; nobody knows where it stood while the calibration ran. Set up and calibrate again.

findings-plates-swapped-sides =
    { $axle ->
        [front] The front wheel plates are swapped: the left one is on the right wheel. Put each on its own wheel, the right way up, and take the photos again.
       *[rear] The rear wheel plates are swapped: the left one is on the right wheel. Put each on its own wheel, the right way up, and take the photos again.
    }
findings-plates-swapped-ends =
    { $side ->
        [left] The left front and rear wheel plates are swapped: the front one is on the rear wheel. Put each on its own wheel and take the photos again.
       *[right] The right front and rear wheel plates are swapped: the front one is on the rear wheel. Put each on its own wheel and take the photos again.
    }
findings-upside-down = { $body } is upside down. Turn it the right way up and take the photos again.
findings-marker-turned = Marker { $marker } is turned on its holder ({ $body }). Mount it as the kit's drawing shows, the right way up, and take the photos again.
findings-markers-exchanged = Markers { $one } ({ $body }) and { $other } ({ $other_body }) sit in each other's place. Mount them as the kit's drawing shows and take the photos again.
findings-plate-not-flush =
    { $axle ->
        [front] The headings of the front wheel plates differ by { $degrees } deg, more than toe can be: { $body } is probably not flush with its wheel. Seat it again and take the photos again.
       *[rear] The headings of the rear wheel plates differ by { $degrees } deg, more than toe can be: { $body } is probably not flush with its wheel. Seat it again and take the photos again.
    }
findings-plate-off-hub-track = The rear wheel plates stand { $rear } mm apart, the front ones { $front } mm, and no vehicle's axles differ so much: a plate does not sit on its wheel's hub, or is on another vehicle. Seat each plate on its own hub and take the photos again.
findings-plate-off-hub-thrust = By the wheel plates the rear wheels point { $degrees } deg aside, more than any vehicle's do: a plate does not sit on its wheel's hub, or is on another vehicle. Seat each plate on its own hub and take the photos again.
findings-size-disagrees =
    { $size ->
        [wheelbase] The photos show a wheelbase of { $measured } mm, { $typed } mm were typed: a wheel plate sits off its hub, or the typed sizes are another vehicle's or mistyped. Seat the plates on their hubs and take the photos again, or correct what was typed.
        [nose] The photos show the nose mark { $measured } mm in front of the rear axle, { $typed } mm were typed: the mark is at the wrong place, a rear wheel plate sits off its hub, or the typed sizes are another vehicle's or mistyped. Put the mark at the foremost point of the vehicle, seat the plates on their hubs and take the photos again, or correct what was typed.
        [front_track] The photos show a front track of { $measured } mm from hub to hub, { $typed } mm were typed: a front wheel plate sits off its hub, or the typed sizes are another vehicle's or mistyped. Seat the plates on their hubs and take the photos again, or correct what was typed.
       *[rear_track] The photos show a rear track of { $measured } mm from hub to hub, { $typed } mm were typed: a rear wheel plate sits off its hub, or the typed sizes are another vehicle's or mistyped. Seat the plates on their hubs and take the photos again, or correct what was typed.
    }
findings-size-mistyped =
    { $size ->
        [wheelbase] The photos show a wheelbase of { $measured } mm, { $typed } mm were typed: so far off it is most likely a slip of the keyboard or another vehicle's. Correct what was typed, in mm, and verify again; if it is right, look at where the plates and the nose mark sit.
        [nose] The photos show the nose mark { $measured } mm in front of the rear axle, { $typed } mm were typed: so far off it is most likely a slip of the keyboard or another vehicle's. Correct what was typed, in mm, and verify again; if it is right, look at where the plates and the nose mark sit.
        [front_track] The photos show a front track of { $measured } mm from hub to hub, { $typed } mm were typed: so far off it is most likely a slip of the keyboard or another vehicle's. Correct what was typed, in mm, and verify again; if it is right, look at where the plates and the nose mark sit.
       *[rear_track] The photos show a rear track of { $measured } mm from hub to hub, { $typed } mm were typed: so far off it is most likely a slip of the keyboard or another vehicle's. Correct what was typed, in mm, and verify again; if it is right, look at where the plates and the nose mark sit.
    }

findings-not-flat = { $body } shows its prints some { $size } mm off where flat ones would show them: the paper curls or lies in waves, or was printed unevenly. Where they stand is known less well for it. Glue them flat onto something rigid, or print them again.
findings-prints-not-flat = The prints of { $count } marker holders show some { $size } mm off where flat ones would: the paper curls or lies in waves, it was printed unevenly, or the phone smoothed the photos (night mode). Where they stand is known less well for it. Glue them flat onto something rigid, or print them again; take photos without night mode.
findings-marker-displaced = Markers { $markers } and the others on { $body } do not lie to each other as the kit file has them, by some { $mm } mm: something is bent, was mended or mounted elsewhere, or the file is another holder's. Which of them is right the photos can't tell. Put it right or survey the holder, and verify again.
findings-holder-deformed = The markers on { $body } do not lie to each other as the kit file has them: the holder is bent, its prints were glued less carefully than the file says, or the file is another holder's. Survey the holder, or state in the kit file how well the places are known, and verify again.
findings-print-scale =
    { $size ->
        [smaller] The markers on { $body } look { $percent } % smaller than the kit file says. Measure the black square of one with a ruler and enter what you read, or print again at 100 %.
       *[larger] The markers on { $body } look { $percent } % larger than the kit file says. Measure the black square of one with a ruler and enter what you read, or print again at 100 %.
    }
findings-print-scale-kind =
    The markers on all { $kind ->
        [floor] floor sheets
       *[plates] wheel plates
    } look { $percent } % { $size ->
        [smaller] smaller
       *[larger] larger
    } than the kit file says. Measure the black square of one with a ruler and enter what you read, or print them again at 100 %.
findings-print-scales =
    { $size ->
        [smaller] All markers look { $percent } % smaller than the kit file says, against their spacing on the holders. Measure the black square of one with a ruler and enter what you read, or print again at 100 %.
       *[larger] All markers look { $percent } % larger than the kit file says, against their spacing on the holders. Measure the black square of one with a ruler and enter what you read, or print again at 100 %.
    }

findings-of-photo = { $photo }: { $why }.
findings-mirrored = { $photo } is mirrored: left and right are exchanged, so no code can be read. Take it with the main camera, not the front one, and give it as it was stored.
findings-focal-of-all =
    { $length ->
        [longer] All photos fit a focal length about { $percent } % longer than camera { $camera } has: another camera or lens took them, or all were zoomed alike. Use the camera file of the camera that took them, or take them again.
       *[shorter] All photos fit a focal length about { $percent } % shorter than camera { $camera } has: another camera or lens took them, or all were zoomed alike. Use the camera file of the camera that took them, or take them again.
    }
findings-half-turned = Upside down to the camera's lens: { $photos }. Turned by 180 degrees before it was saved, a picture has its lens's middle and errors on the wrong side. Give the photos as the camera stored them.
findings-lens-of-all = The photos do not fit the lens of camera { $camera }: the corners miss it by { $times } times their noise, and another lens would explain that. Use the camera file of the camera that took them, or fit it again.
findings-lens-of-one = { $photo } does not fit the lens of camera { $camera } that the other photos fit: another phone of the same model took it, or another lens of this one. Take all photos with the phone whose camera file this is, or leave this photo out of the job.
findings-zoomed-by-record = { $photo } was taken with { $times } x digital zoom (its EXIF says so). Take it again without zoom.
findings-zoomed =
    { $length ->
        [longer] { $photo } fits a focal length { $percent } % longer than its camera file allows: zoomed, cropped, or another lens. Take it again without zoom.
       *[shorter] { $photo } fits a focal length { $percent } % shorter than its camera file allows: zoomed, cropped, or another lens. Take it again without zoom.
    }
findings-resized = { $photo } has { $width } x { $height } px, but its own record says { $stated_width } x { $stated_height }: it was saved again at another size. Use the photo as the camera stored it.
findings-reused =
    { $how ->
        [bytes] { $photo } is the same picture as { $earlier } (byte for byte): it proves nothing more. Take a photo from another place.
        [mirrored] { $photo } is the same picture as { $earlier } (mirrored): it proves nothing more. Take a photo from another place.
       *[again] { $photo } is the same picture as { $earlier } (saved again, scaled or cropped): it proves nothing more. Take a photo from another place.
    }
findings-blurred = { $photo } is blurred (about { $px } px). Hold still, rest the elbows or use more light, and take it again.
findings-blurred-no-marker = { $photo } is so blurred that no marker was found in it. Hold still, rest the elbows or use more light, and take it again.
findings-glare =
    { $count ->
        [one] Glare from a lamp on marker { $markers } in { $photo }. Take a step aside and take it again.
       *[other] Glare from a lamp on markers { $markers } in { $photo }. Take a step aside and take it again.
    }
findings-burnt-out = { $photo } is too bright: white is burnt out around the markers. Switch the flash off or tap on the stand so that the phone exposes for it, and take it again.
findings-dark = { $photo } is too dark: black and white of the markers hardly differ. Use more light and take it again.
findings-dark-no-marker = { $photo } is so dark that no marker was found in it. Use more light and take it again.
findings-light-changed = In { $photo } the phone changed the light from place to place: corners are known to { $stated } px, in a plainly developed photo it would be { $plain } px. Turn HDR, night mode and scene optimisation off, or develop a raw picture plainly, and take it again.
findings-too-alike = { $first } and { $second } were taken from almost the same direction ({ $degrees } deg apart). Take one of them from the other side of the stand.
findings-focal-contradicts = The record of { $photo } states a focal length of { $stated } mm (for 35 mm film), but the picture has { $least } to { $most } mm: it was cut, or the record is another photo's. Give the original file.

findings-edited = { $photo } was written by a program after it was taken: { $traces }. That proves no change of the picture, but the original file would leave no doubt.
findings-edited-other = { $photo } was written by a program after it was taken: { $traces }; it is compressed otherwise than the job's other photos by this camera. That proves no change of the picture, but the original file would leave no doubt.
findings-trace-program = its record names a processing program ({ $program })
findings-trace-later =
    { $seconds ->
        [one] it was written { $seconds } second after it was taken
       *[other] it was written { $seconds } seconds after it was taken
    }
findings-trace-editor = it holds the data block of a picture editor
findings-trace-history = it holds a history of edits (XMP)
findings-trace-credentials = its content credentials do not fit its bytes ({ $failures })
findings-trace-listed = its content credentials list edits ({ $edits })
# What a sheet asks of the cameras' signatures.
findings-credentials-lacking = The set-up sheet requires content credentials of every photo; these photos lack them: { $photos }. Take the photos with a camera that signs what it takes, hand over the original files, and have its maker's trust anchors named.
findings-credentials-of-photo = { $photo } ({ $why })
findings-credentials-none = none found
findings-credentials-edited = its manifest lists edits: { $edits }
findings-credentials-not-built-in = The set-up sheet requires content credentials of every photo, and this program was built without them. Verify with a program that was built with the feature credentials.
findings-thumbnail = The thumbnail in { $photo } shows another picture than the photo (correlation { $likeness }). The picture may have been replaced or cut; give the original file.
findings-rendered =
    { $place ->
        [both] { $photo } was rendered by this program, as its record and its pixels say; no camera took it, and the job does not say so. It proves nothing: give the photo that the camera wrote.
        [record] { $photo } was rendered by this program, as its record says; no camera took it, and the job does not say so. It proves nothing: give the photo that the camera wrote.
       *[picture] { $photo } was rendered by this program, as its pixels say; no camera took it, and the job does not say so. It proves nothing: give the photo that the camera wrote.
    }
findings-noise-repeated = { $photo } and { $earlier } have the same noise in the markers { $markers } (correlation { $correlation }), though they are not the same picture: a camera makes no noise twice. One may have been made from the other; take the photo again.
findings-without-noise = { $body } shows { $share } of the noise that the other markers in { $photo } have: its markers may have been put in by a program. Give the original file, or take the photo again.
findings-compression-differs = { $body } shows { $share } of the earlier compression that the other markers in { $photo } show: its markers may have been put in after that. Give the original file, or take the photo again.

findings-floor-sheet = { $body } does not lie in the plane of the other floor sheets (about { $mm } mm and { $degrees } deg off): the floor slopes or bends there, or the sheet is curled. Flatten the sheet; if the floor is at fault, use a bay that is level.
findings-floor-bends = The floor bends in front of the vehicle: sheets { $sheets } do not lie in the plane of the sheets nearer to it (about { $mm } mm and { $degrees } deg off). Use a bay that is level.
findings-floor-below-wheels =
    { $way ->
        [higher] The plane of the floor sheets lies { $mm } mm higher than the floor below the rear wheels (hub height { $typed } mm as typed): the floor slopes or bends between vehicle and stand, or the typed height is wrong. Check the floor with a spirit level; use a bay that is level.
       *[lower] The plane of the floor sheets lies { $mm } mm lower than the floor below the rear wheels (hub height { $typed } mm as typed): the floor slopes or bends between vehicle and stand, or the typed height is wrong. Check the floor with a spirit level; use a bay that is level.
    }
findings-wheels-uneven =
    { $lower ->
        [rear_left] The left rear hub stands { $mm } mm lower over the floor sheets than the right one: a flat tyre, a block or a turn plate below a wheel, a plate off its hub, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
        [rear_right] The right rear hub stands { $mm } mm lower over the floor sheets than the left one: a flat tyre, a block or a turn plate below a wheel, a plate off its hub, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
        [front_left] The left front hub stands { $mm } mm lower over the floor sheets than the right one: a flat tyre, a block or a turn plate below a wheel, a plate off its hub, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
        [front_right] The right front hub stands { $mm } mm lower over the floor sheets than the left one: a flat tyre, a block or a turn plate below a wheel, a plate off its hub, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
        [front] The front hubs stand { $mm } mm lower over the floor sheets than the rear ones: wheels on blocks or turn plates, flat tyres, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
       *[rear] The rear hubs stand { $mm } mm lower over the floor sheets than the front ones: wheels on blocks or turn plates, flat tyres, or the floor below the wheels is another plane than the sheets'. Look at the tyres and at the floor, and take the photos again.
    }
findings-two-poses = { $body } could be placed in two ways that fit the photos equally well. Take one more photo from another direction, nearer to it.
findings-not-seen = { $body } is in no usable photo. Take one more photo that shows it and two other marker holders.
findings-steering =
    { $way ->
        [left] The front wheels point { $degrees } deg to the vehicle's left. Centre the steering, check the stand again and take the photos again.
       *[right] The front wheels point { $degrees } deg to the vehicle's right. Centre the steering, check the stand again and take the photos again.
    }
findings-outside-held = Outside tolerance: { $quantity }; { $correction }.
findings-reading-disagrees-mm = { $quantity }: the reading of { $read } mm and the photos' { $photos } mm exclude each other (E_n { $error }). Read again; check which point it was measured from.
findings-reading-disagrees-degrees = { $quantity }: the reading of { $read } deg and the photos' { $photos } deg exclude each other (E_n { $error }). Read again; check which point it was measured from.
findings-readings-differ-mm = { $quantity }: the readings of { $read } mm and { $again } mm exclude each other (E_n { $error }). Read again, and leave in the job only what was read right.
findings-readings-differ-degrees = { $quantity }: the readings of { $read } deg and { $again } deg exclude each other (E_n { $error }). Read again, and leave in the job only what was read right.
findings-marker-duplicated =
    { $count ->
        [2] Marker { $marker } appears twice in { $photo }: it was left out of all photos. Remove spare prints and take the photos again.
       *[other] Marker { $marker } appears { $count } times in { $photo }: it was left out of all photos. Remove spare prints and take the photos again.
    }
findings-cannot-prove = These photos and this kit cannot prove so small a tolerance: { $quantities }. It takes { $more }. This is not a fail.
findings-hangs-on-body =
    { $way ->
        [larger] { $quantity }: without { $body } it would be { $change } larger, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
       *[smaller] { $quantity }: without { $body } it would be { $change } smaller, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
    }
findings-hangs-on-photo =
    { $way ->
        [larger] { $quantity }: without { $photo } it would be { $change } larger, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
       *[smaller] { $quantity }: without { $photo } it would be { $change } smaller, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
    }
findings-hangs-on-lens =
    { $way ->
        [larger] { $quantity }: with the other lens model it would be { $change } larger, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
       *[smaller] { $quantity }: with the other lens model it would be { $change } smaller, more than its uncertainty of { $uncertainty }. Something there does not fit the rest. Look at it, and add a photo.
    }

findings-gap-minutes = { $n } min
findings-gap-hours = { $n } h
findings-gap-days = { $n } days
findings-photos-apart = { $photo } was taken { $gap } after { $first }: the set-up may have changed in between.
findings-not-when-job-says =
    { $way ->
        [before] The job says that its photos were taken { $gap } before { $photo } was, by its own record.
       *[after] The job says that its photos were taken { $gap } after { $photo } was, by its own record.
    }
findings-not-as-satellites-say = { $photo } was taken { $gap } from its own time by the satellites' clock that its record has: its time was changed, or the phone's clock is wrong.
findings-ran-before = The calibration ran { $gap } before the first photo was taken: the photos do not show where the stand stood then.
findings-ran-before-move = The calibration ran { $gap } before { $photo }, the first photo of where the stand stands now: the stand was moved between the photos, and none shows where it stood when the calibration ran.
findings-ran-late = The calibration ran { $gap } after { $photo }, the last photo that shows the set-up: it may have changed in between.
findings-not-yet-run = { $photo } is listed as taken after the calibration, but was taken { $gap } before it ran: it does not show where the stand stood afterwards.
findings-phases-exchanged = { $after } is listed as taken after the calibration and { $before } as taken before it, but the other way round by their own records.
findings-moves-exchanged = { $after } is listed as taken after a move of the stand and { $before } as taken before it, but the other way round by their own records.
findings-other-day-than-job = { $photo } was taken on { $day } by its own record, the job on { $wanted }. Use photos of this job, or set the clock right.
findings-other-day-than-photo = { $photo } was taken on { $day } by its own record, the job's first photo on { $wanted }. Use photos of this job, or set the clock right.

findings-card-not-seen = No photo shows the whole card of this job (ids { $ids }; at most { $most } of { $all } in one photo), so nothing proves that the photos were taken for it. Put the card where it is seen and take one more photo.
findings-card-of-another-job = { $photo } shows the card of another job (ids { $others }; this job's are { $own }). Leave that photo out, or take it again with this job's card.
findings-other-kit = Markers { $ids } are on no holder of kit { $kit }, but stand in the photos (most of them in { $photo }). Another kit or a board is in view, or the job names the wrong kit.
findings-prerequisite-not-met = Not met: { $text }. Put it right, then take the photos again.
findings-prerequisite-answered-no = Not met: { $text }. The answer is “{ $answer }”. Put it right, then take the photos again.
findings-prerequisite-in-words = { $text }: the answer is “{ $answer }”, no plain yes and no figure. Read whether it is met, and answer yes or no.
findings-photos-not-listed =
    In the job's folder lie photos that it does not list: { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }. They were not measured. List them in job.toml, or put them into aside if they show nothing of this job.
findings-photos-of-no-check =
    No check is about where the stand stands in { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }: the step of these photos has no check in the set-up sheet, or they name no step. Whatever they show there contradicts nothing. Give them their step, or check it.
findings-not-answered = Not answered: { $texts }. Answer under “Prepare”, or in the job file’s [prerequisites].
findings-not-checked = The set-up sheet neither checks nor waives: { $quantities }.

findings-far-off = { $quantity }: { $off } off. It fits to { $rest } with this mistake: { $mistake }. Check it on the sheet and at the vehicle; nothing was corrected for it.
findings-far-off-or = { $quantity }: { $off } off. It fits to { $rest } with this mistake: { $mistake }. Or with this one: { $others }. Check it on the sheet and at the vehicle; nothing was corrected for it.
findings-reading-far-off = { $quantity }: the reading of { $read } fits the photos with this mistake: { $mistake }. Read again; nothing was corrected for it.

# Mistakes that a figure which is far off is tried against.
findings-mistake-read-from = it was read from { $point }
findings-mistake-measured-from = it was measured from { $point }
findings-mistake-to-part = it was measured to { $point } of the stand
findings-mistake-sign = its sign is reversed
findings-mistake-from-nose-height = it was measured from the nose mark, not from the floor
findings-mistake-from-floor = it was measured from the floor, not from the nose mark
findings-mistake-on-nose = it was centred on the nose mark, not on the reference line
findings-mistake-on-line = it was centred on the reference line, not on the nose mark
findings-mistake-other-line = it was set to { $other }, not to { $line }
findings-mistake-thrust-sign = the thrust angle was taken with the wrong sign
findings-mistake-other-side = its offset was taken to the other side
findings-mistake-offset-left-out = its offset was left out
findings-mistake-left-at-zero = it was left at zero
findings-mistake-other-angle = its angle was taken from the other line (90 deg minus it)
findings-mistake-other-step = it stood as in step { $step }
findings-mistake-mm-as-inches = mm were read as inches
findings-mistake-inches-as-mm = inches were read as mm
findings-mistake-cm-as-mm = cm were read as mm
findings-mistake-digits = two digits were exchanged ({ $swapped } for { $nominal })
findings-mistake-plane =
    { $where ->
        [behind] it was measured to a part of the stand { $mm } mm behind its face
       *[front] it was measured to a part of the stand { $mm } mm in front of its face
    }
findings-mistake-edge =
    { $edge ->
        [left] the left edge of the stand was set there instead of its centre
        [right] the right edge of the stand was set there instead of its centre
        [upper] the upper edge of the stand was set there instead of its centre
       *[lower] the lower edge of the stand was set there instead of its centre
    }
findings-point-nose = the nose
findings-point-front-axle = the front axle
findings-point-rear-axle = the rear axle
findings-point-datum = the datum “{ $datum }”

# What would make a fault checkable: stands behind "It takes".
findings-takes-second-photo = a second photo of it that also shows something else from its first photo, to see whether it moved in between
findings-takes-linking-photo = one more photo that shows it together with another part of the kit that is also in { $photos }: they have nothing else in common
findings-takes-two-with-stand = two photos that both show the wheel plates and the stand, and a floor sheet or a second body that does not move with the vehicle
findings-takes-axle =
    { $axle ->
        [front] photos that show both front wheel plates
       *[rear] photos that show both rear wheel plates
    }
findings-takes-typed-sizes =
    { $what ->
        [nose] the nose's distance from the rear axle, typed in the job: no further photo shows that the mark sits at the wrong place
       *[plates] the wheelbase and both tracks from hub to hub, typed in the job: no further photo shows that a plate sits off its hub by the same in all of them
    }
findings-takes-other-direction = a second photo of it from another direction
findings-takes-nearer = photos nearer to the stand, so that sizes and spacing can be told apart
findings-takes-one-more = one more photo from another direction
findings-takes-sheets = floor sheets: without them the floor comes from the plates
findings-takes-fourth-sheet = a fourth floor sheet: three always lie in one plane
findings-takes-second-view = a second photo that shows it
findings-takes-two-and-two = two floor sheets by the stand and two by the vehicle
findings-takes-hub-height = the height of the rear hubs above the floor, typed in the job: a floor that rises between the wheels and all sheets bends between no two of them
findings-takes-front-plates = plates on the front wheels

# Why a photo takes no part; stands behind a colon.
findings-photo-size = its size is { $width } x { $height } px, but camera { $camera } is for { $wanted_width } x { $wanted_height } px; use the photo as the camera stored it, or the camera file of the camera that took it
findings-photo-other-camera = it was taken by { $maker } { $model }, not by the camera of { $camera }; name that camera's file in the job
findings-photo-other-camera-at = it was taken by { $maker } { $model } at { $focal } mm, not by the camera of { $camera }; name that camera's file in the job
findings-photo-no-camera = no camera file fits it ({ $maker } { $model }, { $width } x { $height } px); fit the camera with a board, or name its file as `camera` in the job
findings-photo-two-cameras = two camera files fit it ({ $maker } { $model }, { $width } x { $height } px): { $first } and { $second }; name one as `camera` in the job
findings-no-make = (no make in EXIF)
findings-no-model = (no model in EXIF)
findings-photo-no-markers = no marker of the kit was found in it: { $why }
findings-photo-not-linked = it shares no marker holder with the other photos; take it again so that it shows two marker holders that another photo shows too
findings-photo-not-tied = nothing ties it to the photos before move { $move }; take it again with plates and floor sheets in it beside the stand
findings-photo-other-phase = it was taken after the calibration, when the stand or the vehicle had moved; it is compared, not measured with
findings-unseen-other-kit = the markers in it are of another kit
findings-unseen-doubled = a second print of each marker in it is about; remove spare prints and take it again
findings-unseen-mirrored = it is mirrored
findings-unseen-dark = it is too dark; use more light and take it again
findings-unseen-blurred = it is blurred; hold still, rest the elbows or use more light, and take it again
findings-unseen-not-in-view = it is sharp, so none was in view or all were too small; stand nearer, have the stand and the plates in the picture, and take it again
findings-unseen-cannot-tell = either none was in view or it is blurred (it shows too little to tell which); look at it enlarged and take it again
