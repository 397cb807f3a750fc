# What each finding means (`explain`, gallery), how its rule finds it, and the words of `explain` itself.

explain-meaning = Meaning
explain-cause = Cause
explain-look = Look
explain-remedy = Do
explain-rationale = Why
explain-method = Method
explain-level =
    { $level ->
        [void] void
        [stop] stop
        [warn] warn
       *[note] note
    }
explain-weight =
    { $level ->
        [void] void: the measurement can't be trusted, the photos must be taken again
        [stop] stop: nothing is called within tolerance
        [warn] warn: worth a look
       *[note] note: worth knowing
    }
explain-gallery = `baywitness gallery { $code } --out DIR` shows it in an invented bay: photos and figures, without and with it.
explain-unknown = no finding has the code { $code }: `baywitness explain` lists all
explain-did-you-mean = no finding has the code { $code }; did you mean { $near }?
explain-exit-code = Exit code { $code }
explain-exit-0 = verify, watch, audit: every job is within tolerance. check: intact and signed by a listed signer. plan: every check can be decided. Other commands: done.
explain-exit-1 = verify, watch, audit: a job is outside tolerance, and none is worse. check: altered, or wrongly signed. log check: rewritten, truncated, forked or altered. log witness: refused. bay: outside a limit.
explain-exit-2 = Wrong usage, or an input that cannot be read: a missing or broken file, a photo that was cut off. The message names file, place and remedy.
explain-exit-3 = verify, watch, audit: a job is not proven, and none is worse: the photos decide neither way. check: intact, but unsigned or by a signer who is not listed, or its verdict was not confirmed by measuring again. plan: a check cannot be decided. setup check: the sheet contradicts itself, or no kit decides every check. log check: it holds, but no key that counts signed it, or times are out of order. camera fit, survey, recheck, seating, bay: not fit for use, or not proven.
explain-exit-4 = verify, watch, audit: a job cannot be measured from its photos, and must be photographed again; the report says why.

finding-stand-turned =
    .title = Stand turned
    .meaning = The stand is not square to the reference line.
    .cause = One end was pushed when it was moved, it was squared to the bumper or a wall, or to the centreline where the thrust line counts.
    .look = Measure from both ends of the stand to the same point on either side of the vehicle.
    .remedy = Turn the stand by the amount the report gives, then photograph again.
    .scene = The stand's end on the vehicle's left was pushed towards the vehicle.

finding-stand-off-centre =
    .title = Stand off centre
    .meaning = The aim point is to one side of where it should be.
    .cause = It was centred by eye, on the emblem, on the number plate, or the sensor's own offset was left out or taken to the wrong side.
    .look = Hang a plumb line from the emblem and from the aim point and sight along the vehicle's middle.
    .remedy = Move the stand sideways by the amount the report gives, keep it square, then photograph again.
    .scene = The stand was centred by eye and stands to the vehicle's right.

finding-stand-too-near =
    .title = Stand too near
    .meaning = The distance from the datum to the target face is too small.
    .cause = It was measured from another point of the vehicle, or to the stand's foot or mast instead of the face.
    .look = Drop a plumb line from the datum and from the target face and measure on the floor.
    .remedy = Move the stand away by the amount the report gives, then photograph again.
    .scene = The distance was measured to the stand's mast instead of the face.

finding-stand-too-far =
    .title = Stand too far
    .meaning = The distance from the datum to the target face is too large.
    .cause = It was measured from another point of the vehicle, or along a tape that was not straight.
    .look = Drop a plumb line from the datum and from the target face and measure on the floor.
    .remedy = Move the stand towards the vehicle by the amount the report gives, then photograph again.
    .scene = The tape was not straight.

finding-stand-too-high =
    .title = Target too high
    .meaning = The aim point is above where it should be.
    .cause = The scale on the mast was read at another edge, or the height of another vehicle was left.
    .look = Measure from the floor to the aim point with a rule held upright.
    .remedy = Lower the target by the amount the report gives, then photograph again.
    .scene = The scale on the mast was read at another edge.

finding-stand-too-low =
    .title = Target too low
    .meaning = The aim point is below where it should be.
    .cause = The scale on the mast was read at another edge, or the height of another vehicle was left.
    .look = Measure from the floor to the aim point with a rule held upright.
    .remedy = Raise the target by the amount the report gives, then photograph again.
    .scene = The height of another vehicle was left.

finding-stand-tilted =
    .title = Target tilted
    .meaning = The target face leans forward or back.
    .cause = The feet were not levelled, the tilt of another step was left, or it was tilted the wrong way.
    .look = Hold a spirit level or an angle gauge upright against the face.
    .remedy = Tilt the target as the report says, then photograph again.
    .scene = The tilt of another step was left.

finding-stand-not-level =
    .title = Target not level
    .meaning = One end of the target is lower than the other, or the target is upside down (then nothing is measured: void).
    .cause = A foot stands in a joint of the floor, or was not levelled.
    .look = Lay a spirit level on the beam.
    .remedy = Level the stand at its feet, then photograph again.
    .scene = A foot of the stand stands in a joint of the floor.

finding-stand-moved-between-photos =
    .title = Stand moved between photos
    .meaning = The photos do not agree on where the stand is against everything else: it was in one place for some of them and in another for the rest.
    .cause = Somebody brushed against the stand, rolled it to get past, or corrected it after the first photo.
    .look = Compare the stand's feet with a mark on the floor, or the gap to something fixed, in both photos.
    .remedy = Let nobody touch the stand, and take all photos again. Where it was moved on purpose, give the later photos with `--moved`, or write `after_move = 1` at their [[photo]] in job.toml.
    .scene = Somebody bumped into the stand for the second of four photos.

finding-vehicle-moved-between-photos =
    .title = Vehicle moved between photos
    .meaning = The plates and the nose are elsewhere against floor and stand in some photos.
    .cause = The vehicle rolled when the brake was let go, somebody got in, a door was shut hard, or a sheet on the floor was kicked.
    .look = Look at the tyres against a line on the floor; chocks that do not touch the tyre let it roll.
    .remedy = Chock the wheels, let nobody sit in, check the stand again and take all photos again.
    .scene = The brake was let go between the second and the third photo.

finding-plate-not-seated =
    .title = Plate not seated
    .meaning = A wheel plate points elsewhere than a wheel can, does not sit on its hub, or sat differently in one photo than in another.
    .cause = A claw sits on a balance weight, the rim's lip is bent, dirt lies between plate and rim, or the plate slipped.
    .look = Push at the plate's rim: it must not rock. The gap between plate and rim must be the same all around.
    .remedy = Seat the plate again on a clean, undamaged part of the rim, and take all photos again.
    .scene = A wheel plate does not lie against the rim.

finding-vehicle-sizes-disagree =
    .title = Typed sizes contradicted
    .meaning = A size of the vehicle that was typed is another than the photos show, so that one of them is wrong.
    .cause = The nose mark was put beside or in front of the nose, a wheel plate sits off its hub, or the sizes of another vehicle were typed.
    .look = Measure from the middle of a rear wheel to that of the front wheel, and to the nose mark, with a tape.
    .remedy = Put the mark and the plates where they belong and take the photos again, or correct what was typed.
    .scene = The nose mark is 25 mm in front of the nose.

finding-plates-swapped =
    .title = Plates or sheets swapped
    .meaning = Two plates are on each other's wheel, or marker sheets sit where the kit's file has others, or turned.
    .cause = The left and right plate were mixed up when they were clamped on; or sheets were mounted in the wrong place when the kit was made or repaired.
    .look = Each plate's label names its wheel and shows which way is up; compare the numbers on the sheets with the kit's drawing.
    .remedy = Put each where it belongs, the right way up, and take the photos again.
    .scene = The rear plates were clamped to each other's wheel.

finding-print-scale-wrong =
    .title = Printed at another size
    .meaning = Markers do not have the size that the kit file states, against their spacing.
    .cause = The printer scaled the page to fit its margins, or sheets of another kit were mounted.
    .look = Measure the black square of one marker with a steel ruler, in both directions; the print's own check ruler must be true.
    .remedy = Print again at 100 % (no fit to page), or enter the measured size in the kit file.
    .scene = The stand's markers were printed to fit the page.

finding-print-not-flat =
    .title = Prints not flat
    .meaning = What a marker shows is off what a flat, evenly printed one would show, so that its place is known less well.
    .cause = Paper that came loose or was glued with bubbles, a plate that is bent, or a printer whose feed wavers.
    .look = Lay a ruler's edge across the print: light shines through below it; or hold two prints against each other.
    .remedy = Glue the sheets anew, flat onto something rigid, without bubbles; replace a bent plate; print again on another printer.
    .scene = Every print lies in waves.

finding-marker-displaced =
    .title = Markers not where the kit has them
    .meaning = The markers of one holder do not lie to each other as the kit file says, so that what it marks stands elsewhere than the photos seem to show.
    .cause = A holder that was bent or knocked, a sheet that was mended or mounted elsewhere, prints glued less carefully than the file says, or the file of another holder.
    .look = Lay a straight edge along the holder; compare the spacing of the sheets with the kit's drawing, with a steel tape.
    .remedy = Put it right, or survey the holder (baywitness survey) and use the kit file that this writes.
    .scene = Sheets at the stand's left end were mended, and stand proud since.

finding-marker-duplicated =
    .title = One code twice
    .meaning = The same code appears twice in one photo; it was used in no photo of the job.
    .cause = A spare print lies in the bay, a mirror or a glossy panel shows a marker, or two kits with the same codes are about.
    .look = Look for a second sheet with that number in the photo, also in windows and on paint.
    .remedy = Remove or cover the spare print and take the photos again.
    .scene = A spare print of a marker hangs in the bay.

finding-camera-mismatch =
    .title = Another camera
    .meaning = The photos do not fit the lens that the camera file describes.
    .cause = Another phone, another of the phone's lenses (wide, tele, front), a lens correction or a mirrored preview that the phone applied, or the wrong camera file in the job.
    .look = The details of the photo in the phone's gallery name device and lens. Two phones of one model write the same there: where one photo alone does not fit, ask who took it.
    .remedy = Take the photos with the fitted camera and lens, or fit this one with a board and name its file in the job.
    .scene = The photos were taken with the phone's other lens.

finding-photo-zoomed =
    .title = Photo zoomed
    .meaning = One photo shows everything larger or smaller than its camera can at the focal length of the camera file.
    .cause = Two fingers on the screen, the phone's automatic change of lens, or a crop that was saved at the old size.
    .look = The phone's gallery shows zoom or focal length among the photo's details; the picture shows less of the bay than its neighbours.
    .remedy = Set the camera to its plain 1x lens and take the photo again.
    .scene = One of four photos was taken with digital zoom.

finding-photo-resized =
    .title = Photo resized
    .meaning = The photo is not as large as its camera stores pictures.
    .cause = A messenger, a mail program or an app for pictures made it smaller on the way, or it was cropped.
    .look = The gallery on the phone shows the original's size in pixels.
    .remedy = Copy the original file from the phone by cable or as a file, not as a picture in a message.
    .scene = A messenger made one of four photos smaller.

finding-photo-blurred =
    .title = Blurred
    .meaning = The markers' edges are too soft to be measured well.
    .cause = The hand moved, the light was low, the lens was dirty, or the focus was on something near.
    .look = Enlarge a marker on the phone: its small squares must have crisp edges.
    .remedy = Wipe the lens, rest the elbows, use more light, tap on the stand to focus, and take it again.
    .scene = The phone was moved while it took the last photo.

finding-photo-badly-lit =
    .title = Badly lit
    .meaning = Light spoils a photo: a lamp glares in a marker, white is burnt out, or it is too dark.
    .cause = A lamp or the sun shines on a glossy print at the angle of the camera, the phone's flash was on, or the bay is dark.
    .look = Enlarge the marker: white spots where black should be, or grey on grey.
    .remedy = Step aside so that the reflection leaves the marker, switch the flash off, use matt paper and even light, and take it again.
    .scene = The last photo is overexposed: white paper runs into the black.

finding-photo-light-changed =
    .title = Light changed by the phone
    .meaning = The phone has made dark parts lighter and bright parts darker, so that the markers' edges are known less well.
    .cause = HDR, night mode, scene optimisation or a filter, or strong light beside deep shade, which makes phones do that.
    .look = Enlarge a marker: white is brighter, and black darker, close to the edges than in the middle of the squares.
    .remedy = Turn HDR, night mode and scene optimisation off, or take a raw picture and develop it plainly; light the bay more evenly; take one more photo, or go nearer.
    .scene = The phone lifted what was dark and lowered what was bright, from place to place, in every photo.

finding-photo-reused =
    .title = Photo used twice
    .meaning = Two of the photos are the same picture, perhaps re-encoded, cropped or mirrored.
    .cause = A file was copied under another name, sent twice, or edited to look like a second photo; or the camera stood on a tripod.
    .look = Lay the two pictures over each other: everything coincides, also the people and the shadows.
    .remedy = Take the second photo from another place.
    .scene = The first photo was saved again as the fourth.

finding-photos-too-alike =
    .title = Photos too alike
    .meaning = Two photos were taken from nearly the same direction, so they count as one.
    .cause = Both were taken standing in one place.
    .look = Lay the two pictures side by side: the stand covers the same part of the vehicle.
    .remedy = Take one of them from the other side of the stand.
    .scene = Two of three photos were taken from almost the same place.

finding-carrier-not-seen =
    .title = Not seen
    .meaning = A part of the marker kit is in no usable photo, or only so that two positions fit it equally well.
    .cause = It stood behind something, outside the picture, too far away, or edge on.
    .look = Open the photos: are at least two markers of it whole, sharp and larger than a thumbnail?
    .remedy = Take one more photo that shows it together with two other parts of the kit.
    .scene = A floor sheet was not laid out.

finding-floor-not-level =
    .title = Floor not one plane
    .meaning = The floor bends between vehicle and stand, a sheet does not lie flat on it, or the wheels do not stand alike on the sheets' plane.
    .cause = A drain, a ramp, a joint between slabs, a curled or propped-up sheet, a flat tyre, a wheel on a block or a turn plate; or the typed hub height is wrong.
    .look = Lay a straight edge or a water level across the bay; press down the corners of the sheet.
    .remedy = Flatten the sheet; if the floor is at fault, use a bay that is level.
    .scene = The floor rises in front of the vehicle.

finding-steering-not-straight =
    .title = Steering not straight
    .meaning = The front wheels point to one side of the centreline.
    .cause = The steering wheel was turned when the vehicle was parked, or moved when somebody got out; or it is not centred when it drives straight.
    .look = The steering wheel's spokes, and the gap between front tyre and wing on either side.
    .remedy = Roll the vehicle straight for a few metres, centre the steering, check the stand again and take the photos again.
    .scene = The front wheels are not straight ahead.

finding-weak-geometry =
    .title = Too weak to prove
    .meaning = With these photos no position of the stand could be proven to be within a tolerance, or the answer depends on one photo or one marker holder more than its uncertainty admits.
    .cause = Too few photos, all from one side, plates on two wheels only, or small and distant markers.
    .look = The report's table of uncertainty shows what the largest part comes from.
    .remedy = Add photos from wider apart that show both leaves of the plates; where only two wheels bear plates, put plates on all four.
    .scene = The sheet requires a tolerance smaller than these photos can prove.

finding-wrong-datum-suspected =
    .title = Wrong datum suspected
    .meaning = A value that is far off would be right if it had been measured from another point, to the other side, with another sign or unit, or for another step.
    .cause = Measured from the emblem, bumper or axle instead of the datum, to the mast instead of the face, to the panel's edge instead of its centre; the offset taken to the wrong side; digits exchanged; the sheet read in the wrong column.
    .look = Read the sheet's line again, aloud, with a finger on the vehicle at the point that it names.
    .remedy = Set the stand by the right point, sign and unit; the report's figures are not changed by the suspicion.
    .scene = The sensor's offset of 60 mm was taken to the other side.

finding-reading-disagrees =
    .title = Reading disagrees
    .meaning = A value read at the vehicle and the photos exclude each other within their uncertainties. Where the reading was used in the result, or a check of the sheet is decided by it, it stops the job, and what was used is left out of the figures. So do two readings of one thing that exclude each other.
    .cause = It was read from another point, digits were exchanged when it was typed, the laser was not square, or the tape sagged; or the photos are wrong.
    .look = Read again, from the point that the sheet names, and read aloud what is typed.
    .remedy = Correct the reading, or find the point it was taken from; if it stands, take the photos again.
    .scene = The laser was held against another point of the vehicle.

finding-times-out-of-order =
    .title = Times out of order
    .meaning = By their own clocks the photos, the job and the calibration do not follow each other as they should.
    .cause = Photos of an earlier job were picked, older ones were listed as from after a move of the stand, the calibration ran before the photos were taken, or a device's clock is wrong.
    .look = Compare the times on the report with the scan report and the clock on the wall.
    .remedy = Set the clocks right; if the photos are really of another time, take new ones.
    .scene = The calibration ran half an hour before the photos were taken.

finding-photo-of-another-day =
    .title = Photo of another day
    .meaning = By its own record the photo was taken on another day than the job. That is no proof that it was.
    .cause = A photo of an earlier job was picked, the job was written days later, or the phone's date is wrong.
    .look = Compare the date in the phone's gallery with the job's, and the vehicle in the photo with the job's.
    .remedy = Use the photos of this job; set the phone's date right and let it record its time zone.
    .scene = One of four photos is from the day before; no record states its time zone.

finding-photo-edited =
    .title = Photo written by a program
    .meaning = The file bears marks of a program that wrote it after the camera did. That is no proof that anything in the picture was changed.
    .cause = The photo was turned, trimmed or improved in a gallery or an editor, or exported from an app instead of copied.
    .look = Compare with the original on the phone: its details name the time it was taken and the program that wrote it.
    .remedy = Copy the original file from the phone and verify again; keep the edited one aside.
    .scene = One of four photos went through a program that names itself in the record.

finding-thumbnail-differs =
    .title = Thumbnail of another picture
    .meaning = The small picture that the camera put into the file does not show what the photo shows. That is no proof of intent.
    .cause = A program replaced or cut the picture and left the old thumbnail, or a device wrote a wrong one.
    .look = Open the thumbnail with any viewer of photo records and lay it beside the photo.
    .remedy = Give the original file from the phone; if it was lost, take the photo again.
    .scene = The thumbnail of the second photo is the third one's; the others' are their own.

finding-photo-rendered =
    .title = Rendered photo
    .meaning = This program made the picture; no camera took it. Its job does not say that it is a sample or a drill.
    .cause = Photos of a sample, a drill or a scene file came among a job's photos, or somebody gives invented photos for real ones.
    .look = The details of the file name the renderer, where they were not removed; the picture shows the invented vehicle.
    .remedy = Give the photos that were taken in the bay. For practice, write rendered = true into job.toml; the report then says so on its first line.
    .scene = The right bay, whose job file does not say that its photos were rendered.

finding-noise-repeated =
    .title = Same noise in two photos
    .meaning = Markers of the same form have the same noise, pixel by pixel, in two photos that are not the same picture.
    .cause = A second photo was made from the first one by moving a part of it; or a strongly smoothed photo from a tripod shows the print's own grain.
    .look = Lay the two photos over each other, magnified: the grain on white and black coincides.
    .remedy = Take the photo again and give the file that the camera wrote.
    .scene = The photo after a move of the stand was made from the first one: only the stand is elsewhere.

finding-markers-without-noise =
    .title = Markers without the photo's noise
    .meaning = White and black of one marker holder's markers are much smoother than those of all other markers in the same photo.
    .cause = The markers were drawn into the photo by a program; or something smooth, such as a screen, bears them.
    .look = Magnify the photo: the other markers are grainy, these are not.
    .remedy = Give the original file from the phone, or take the photo again.
    .scene = In the second of two photos a program put in the markers of the stand.

finding-compression-differs =
    .title = Markers without the photo's earlier compression
    .meaning = The photo was saved as JPEG before and then again, and all markers show it but those of one marker holder.
    .cause = An editor opened the photo, the markers were pasted in, turned or moved, and it was saved again.
    .look = Ask for the file as the phone stored it: it was compressed once.
    .remedy = Give the original file from the phone, or take the photo again.
    .scene = The second of two photos was saved, then the stand's markers were put in, and it was saved again.

finding-focal-length-contradicts =
    .title = Record of another focal length
    .meaning = The photo's record states an angle of view that the picture does not have. That is no proof of intent.
    .cause = The picture was cut and enlarged, a record was copied from another photo, or the device writes a wrong value.
    .look = Take a new photo with the same camera and lens and compare the value in its details.
    .remedy = Give the original file; where the device always writes that value, note it in the job.
    .scene = The record of one photo states a longer lens than took it.

finding-markers-of-another-kit =
    .title = Markers of another kit
    .meaning = The photos show markers that the job's kit does not have. They were left out, and nothing is wrong with what was measured by the others.
    .cause = A second kit or a camera board stands in the bay, or the job names another kit than the one that was used.
    .look = Find the numbers of the message in the photos and on the kits' cover sheets.
    .remedy = Name the kit that was used in the job; clear other kits away, so that nobody takes one holder for another.
    .scene = Markers of a second kit hang in the bay.

finding-card-not-seen =
    .title = The job's card is in no photo
    .meaning = The job has a one-time card, and no photo shows all of its markers, so nothing proves that the photos were taken for it.
    .cause = The card lay flat or too far off, something stood in front of it, or the photos are older than the card.
    .look = Open the photos: is the card upright and as large as a wheel plate's marker?
    .remedy = Put the card upright where the photos show it, on the bonnet or beside the stand, and take one more photo.
    .scene = The job's card was forgotten in the office.

finding-card-of-another-job =
    .title = A photo shows another job's card
    .meaning = Markers that are kept for cards were found in a photo, but they are not the code of this job.
    .cause = Photos of two jobs were mixed up, or the old card stayed in the bay.
    .look = Compare the ids in the message with the card on the bench.
    .remedy = Leave that photo out, or take it again with this job's card.
    .scene = The card of the job before still stands on the vehicle.

finding-prerequisite-not-met =
    .title = Prerequisite not met
    .meaning = The technician states that something that the sheet requires is not so.
    .cause = Tyres, load, fuel, suspension or steering were not as the procedure requires.
    .look = Go through the sheet's list at the vehicle.
    .remedy = Put it right, wait until the suspension has settled, and take the photos again.
    .scene = The technician attests that the tyre pressures are not set.

finding-record-incomplete =
    .title = Record incomplete
    .meaning = The sheet requires an answer that the job does not give, photos lie in the job's folder that it does not list, or photos show the stand in a step that no check is about.
    .cause = A question of the job was skipped; or photos were taken out of the job's list and not out of its folder; or a step was made for photos that would contradict.
    .look = The report lists what was asked and what was answered, and names the photos.
    .remedy = Answer in the job's [prerequisites], as it was when the photos were taken; list the photos, or put those of something else into aside.
    .scene = Nobody answered whether the tyre pressures are set.

finding-credentials-lacking =
    .title = Content credentials are lacking
    .meaning = The set-up sheet wants to know which camera took the photos, signed by the camera itself. At least one photo that counts has no content credentials, has broken ones or ones of an unknown signer, or lists edits. That says nothing against what was measured.
    .cause = The phone or camera does not sign what it takes, a messenger or gallery stripped or rewrote the file, no trust anchors were named, or the program was built without content credentials.
    .look = The report lists each photo's content credentials; any reader of C2PA manifests shows the same of the original file.
    .remedy = Take the photos with a camera that signs, copy the original files, and name the trust anchors of the camera's maker (--credential-anchors); else have the sheet changed by whoever wrote it.
    .scene = The sheet requires content credentials, and the photos bear none.

finding-not-checked =
    .title = Not checked
    .meaning = The set-up sheet says nothing about a quantity that places the stand.
    .cause = The sheet was written for part of the job only.
    .look = Compare the sheet with the maker's service information.
    .remedy = Add a check to the sheet, or waive the quantity with a reason.
    .scene = The sheet neither checks nor waives the level.

## How rules search: why it matters; how it is found, the rate of false alarms, what is not seen.

finding-rule-stand-misplaced =
    .rationale = The sensor learns the stand's position as the vehicle's: its error is the stand's error.
    .method = A check that is outside its tolerance by the sheet's decision rule; its rate of false alarms is the rule's.

finding-rule-something-moved =
    .rationale = All photos are measured together. A stand that was nudged between two of them stands where neither shows it.
    .method = Score test (Rao 1948) of a separate pose of one body, or of one common shift along the wheels' direction of everything on the vehicle, in some photos: every cut of the series and each photo alone; of photos from before and after a move of the stand also of any step of the vehicle over the floor. The best explanation of all suspects must be this one, with a chance below 1e-4 in a plain job, and larger than 2.5 mm or 0.12 deg (vehicle: 1.5 mm). Needs photos that are linked by other bodies too: a body that is the only one that two photos share has no redundancy.

finding-rule-sheet-slid =
    .rationale = Who moves a stand steps on sheets. Photos from before and after the move are tied by sheets and plates: if one has gone, nobody knows what else has.
    .method = A sheet none of whose corners was used in a photo, but in photos between other moves of the stand: its slide in the floor (two coordinates, one turn) is fitted to them. It is a kick where a corner went farther than 2.5 mm and what is left is below 0.2 px or a seventh of the misfit; a shadow or a boot does not keep the print's shape. Sheets that were used are seen by the search for what moved between photos.

finding-rule-phases-differ =
    .rationale = Photos from before and after the calibration prove that nothing moved while it ran.
    .method = One adjustment in which stand and plates have a pose for each phase over the same floor sheets; the difference against its own covariance (Wald test), chance below 1e-4 and larger than 2.5 mm or 0.12 deg. Where it is found, the checks are those of the photos from before.

finding-rule-plates-swapped =
    .rationale = Each plate knows which side of the vehicle it belongs to, each sheet where it sits on its marker holder; exchanged, they measure another body.
    .method = The left plate must be on the left of the line from the rear wheels to the stand, the front one in front of the rear one of its side, and every plate's up must point up. Sheets: in every photo a marker lies where the kit puts another one, four times nearer than to its own place, or on its own place but turned. Exact; no false alarms. Floor sheets that are bodies of their own may lie anywhere: exchanging them changes nothing.

finding-rule-plate-not-seated =
    .rationale = A plate that is not flush with its wheel points elsewhere than the wheel: thrust line and toe follow the plate.
    .method = Difference of the two headings of an axle's plates (total toe), which is small on any road vehicle: beyond 0.55 deg (common practice, no source) with a probability of 0.95. Also a plate's separate pose in some photos (score test, chance below 1e-4). Both plates askew by the same angle are not seen, nor a plate turned about its axle, which changes nothing.

finding-rule-plate-off-hub =
    .rationale = A plate that sits off its wheel's hub by the same in all photos moves the axle, and with it the centreline and all that is measured from it; the photos agree with each other all the same.
    .method = The thrust angle, beyond 1 deg (common practice, no source) with a probability of 0.95, where the axle's total toe does not tell it from a plate that is not flush; and the front track against the rear one, hub to hub, beyond 100 mm (common practice, no source) with that probability. Smaller offsets are seen only against typed sizes, and both plates of an axle displaced alike to the side hardly.

finding-rule-vehicle-sizes-disagree =
    .rationale = A nose mark ahead of the nose or a plate off its hub is the same in every photo, and no misfit shows it: what is known of the vehicle does.
    .method = Wheelbase, nose in front of the rear axle and both tracks as typed, each against what the photos show of it: beyond four standard uncertainties of both together (chance below 1e-4) and 5 mm (common practice, no source). Not said where something else already spoils every figure. Not seen: sizes that were not typed, and what moves none of them, such as a nose mark to the side of the nose.

finding-rule-print-scale-wrong =
    .rationale = A print at 97 % makes its marker holder seem 3 % farther away.
    .method = Score test of one factor on the sizes of all markers of a marker holder, of all floor sheets or of all wheel plates, and of one on all markers. The factor on all is told from the camera's focal length by the spacing of the markers on one marker holder alone; where that is not enough the rival explanation is named. Best explanation of all suspects, chance below 1e-4, more than 0.15 % on one marker holder or such a group, and as surely more than 0.05 %; more than 0.3 % on all. Not seen: a marker holder with one marker whose distance nothing else fixes.

finding-rule-print-not-flat =
    .rationale = A marker is measured as a flat square. Paper that curls shows its pattern elsewhere, differently from each side, and pulls distances and angles along; no number of pixels averages that out.
    .method = Residuals tell how large smooth displacements of each marker's picture are: curls (polynomials of degree two, but for what looks as perspective does) and waves (of degree three and four), beyond what blocks of residuals scatter by; a fifth of the photo's markers, the worst, does not speak for the others. Below 0.0002 of the side (0.03 px at most; 2.5 times that where the phone changed the light) they count as none. What they do to the corners is part of their uncertainty. Named where half of what the photos show of a marker holder is off by more than 0.001 of the side; rendered night photos of flat prints reach 0.0007. A warning where a check is not proven, else a note. It lowers nothing by itself: the uncertainties have it in them. A bend that looks as another direction of view does, and prints that are shifted, turned, stretched or sheared as a whole, are not seen.

finding-rule-marker-displaced =
    .rationale = Places on a holder are known within what its kit file states, and the adjustment lets them give way by as much; by more, it would make millimetres of a bent holder pass for another place of the stand.
    .method = The squares of how far a holder's places gave way, each in its standard uncertainty, are summed: at most a chi-square where the file is right; chance below 1e-6. Markers whose own free place (score test, three coordinates) has such a chance and is more than 0.75 mm off are named, and those that took part in no photo, or with others of their holder not in one, while all of their corners are off alike, by more than 0.5 px. Nothing is said of places where something else explains the photos better. Not seen: all of a holder's markers displaced alike.

finding-rule-camera-mismatch =
    .rationale = A camera file holds for one lens of one device; through another one straight lines bend differently and everything is displaced.
    .method = EXIF against the camera file: exact, where both say something. By fit: one focal factor common to all photos of a camera, more than 1 % off; or the score test of a free lens (focal lengths, principal point, distortion) as best explanation with a chance below 1e-4, where the residuals are more than twice what the detector states. The same test of the lens of one photo alone tells another phone of the same model, which EXIF does not. A picture turned by 180 degrees before it was saved: the score test of that one change of the lens (principal point and decentring on the other side); a lens quite in its picture's middle does not tell. A mirrored picture is exact. Another device with the same lens is not seen.

finding-rule-photo-zoomed =
    .rationale = The camera file holds for one focal length; a zoomed photo makes everything seem nearer.
    .method = EXIF digital zoom ratio above 1.02, or the solved focal length of a photo more than 1 % and five standard uncertainties off its prior (chance 6e-7), or the score test of a free focal length as best explanation (chance below 1e-4). Where all photos are off by the same factor it is `camera-mismatch`.

finding-rule-photo-resized =
    .rationale = A camera file holds for one pixel grid; a photo that was scaled has lost pixels and fits no camera file.
    .method = Stored size against the camera file, and against the size that the photo's own EXIF states. Exact; a photo that was scaled, scaled back and stripped of its EXIF only shows as blurred.

finding-rule-photo-reused =
    .rationale = Two photos prove something because each could contradict the other; a copy agrees with itself.
    .method = Same bytes; or the corners of the markers that two photos share (two markers or more) are an affine image of each other to 1 px: that is a copy that was re-encoded, scaled or cropped, also mirrored. From two stations of a bay the residual is tens of pixels, so there are no false alarms but for a camera that stood on a tripod: those are one photo too, unless the stand was moved in between and they show it: taken at other times by their own records, or the stand elsewhere against all else by more than 0.1 px and three times what the map leaves.

finding-rule-photo-blurred =
    .rationale = Blur costs accuracy, and the blur of a moving hand is not the same in all directions, so it shifts edges.
    .method = Median blur of the photo's markers, as fitted: above 1.8 px, or above 1.2 px and twice that of the sharpest photo. Where no marker was found: of each rise of 40 levels within 32 px the share that lies within 4 px; half of them have less than 0.5, across or down the picture, and such rises stand in twenty of its 64 parts or more. A plain wall or one soft shadow is not called blurred: it has too few.

finding-rule-photo-badly-lit =
    .rationale = A reflection swallows black, burnt-out white spills over its edges, darkness is noise: edges move or are lost.
    .method = Glare: a marker that the solved poses put into the picture, facing the camera and large enough, was not found or lost corners, while a neighbour on the same face was found and the stand cannot cover it, and more than 0.45 of its area is at full scale (print alone reaches 0.4). Burnt out: more than a third of the area of half of the markers is at full scale. Dark: half of the markers have a contrast below 0.12; or no marker was found and less than a hundredth of the picture is brighter than 48 of 255 levels. All exact on the picture; a marker with somebody standing in front of it is not glare.

finding-rule-photo-light-changed =
    .rationale = Phones lift the dark and lower the bright from place to place (HDR, tone mapping). What runs up to an edge then bends what shows where the edge lies, so corners are known less well than in a plainly developed photo.
    .method = Each marker of 60 px or more is parted into patches of 7 px; of all of the photo's patches the gain's logarithm spreads by more than 0.02 beyond what noise explains (strongly changed photos of known truth show 0.05 to 0.09). Gains of finer grain, and photos whose markers are all smaller, are not seen. A warning where a check is not proven, else a note. It lowers nothing by itself: the uncertainties have it in them.

finding-rule-photos-too-alike =
    .rationale = Distances come from looking at the same thing from different places; two photos from one place are one photo.
    .method = Angle between the lines of sight from the stand to two cameras below 5 degrees. Exact; no false alarms.

finding-rule-floor-not-level =
    .rationale = Height, tilt and level refer to the floor. Where it bends between vehicle and stand there is no such plane.
    .method = Score test: height and tilt of one sheet, or of all sheets beyond a kink across the vehicle's line. Best explanation of all suspects, chance below 1e-4, more than 2 mm or 0.15 deg. Also the rear hubs' height over the sheets' plane against the typed one, beyond four standard uncertainties and 2 mm (chance 6e-5). A warning where the two hubs of an axle differ in height by more than 15 mm and two standard uncertainties, or the axles by more than 40 mm (common practice, no source). A floor that is one tilted plane is no misfit, and three sheets always lie in one plane.

finding-rule-carrier-not-seen =
    .rationale = What no photo shows is not part of the proof.
    .method = No photo that is linked to the others shows two usable corners of the marker holder, or a flat marker holder fits two poses equally well. Exact; no false alarms.

finding-rule-steering-not-straight =
    .rationale = Procedures require the wheels straight ahead: a turned wheel shifts the vehicle on its tyres and the steering angle enters many calibrations.
    .method = Mean heading of the front plates against the centreline: beyond what half a degree (common practice, no source) can read in 95 % of all cases, and beyond 3.3 standard uncertainties (chance below 1e-3). Needs plates on all four wheels.

finding-rule-wrong-datum-suspected =
    .rationale = A stand that is off by exactly a known mistake was set with care, to the wrong figure: naming the mistake saves measuring everything again.
    .method = A check that is outside its tolerance by more than twice its tolerance is tried against the other datums (nose, axles, the sheet's own), the other reference lines, the thrust angle with the wrong sign, the other side, the reversed sign, the nominal of another step, zero, inches for mm, exchanged digits, the complement of an angle, another plane of the stand, its edge for its centre. Named where the rest is below the expanded uncertainty plus half the tolerance, and below a quarter of the deviation; never applied. By chance a deviation of some 100 mm fits one of them in some 10 % of all cases: it is a hint.

finding-rule-reading-disagrees =
    .rationale = Two independent instruments that disagree beyond their uncertainties: one of them, or a typing, is wrong.
    .method = E_n of ISO/IEC 17043 above 1: at correct uncertainties one pair in some twenty-two at most, fewer where both count.

finding-rule-marker-duplicated =
    .rationale = Nobody can tell which of two equal markers belongs to the kit, nor which of them another photo shows; the code is left out of all photos.
    .method = Two sightings of one id of the kit in one photo. Exact; a spare print that lies about is enough to cause it.

finding-rule-weak-geometry =
    .rationale = Where the uncertainty is larger than the tolerance allows, no position of the stand could be proven.
    .method = A check that no value could pass at this uncertainty (JCGM 106): exact. And a check whose value changes by more than its expanded uncertainty, a tenth of its tolerance and four standard deviations of such a change when one photo, one marker holder or the form of the lens model is left out (chance 6e-5 for each).

finding-rule-times-out-of-order =
    .rationale = Photos prove where the stand stood when they were taken, not an hour later.
    .method = Times that state their offset from UTC: photos of one job (of each phase, where it has two) within an hour of each other, those from before within an hour of the job's `taken` and not after the calibration, those from after it not before it, and all from before earlier than all from after. Exact, as far as clocks are; a time without an offset is not checkable and is left alone. A photo listed as taken after a move of the stand that the same phone (make and model) took more than a minute before one from before the move is of level stop, whether its times have offsets or not; by two phones, more than five minutes earlier, of level warn. Of a stand that was moved the calibration must not have run before the first photo of where it stands now: of level stop where one phone took photos from before and after the move, else of level warn. Photos of one phone more than an hour apart are named also by local times without offset; a calibration more than four hours after the last photo that shows the set-up (common practice, no source), unless photos from after it exist; and a photo whose own time is more than 26 hours from that of the satellites in its record.

finding-rule-other-day =
    .rationale = A photo of last week shows where the stand stood last week.
    .method = For photos whose record states no offset from UTC: their local time against the job's, or else against the first such photo's, both as written: more than 14 h apart and of another date. Times with an offset are compared to the minute by `times-out-of-order`. A clock that is set wrong, or a phone that keeps the time of another continent, looks the same; a clock that was set back on purpose is not seen.

finding-rule-photo-edited =
    .rationale = What was measured is the picture in the file; a program that wrote it anew may have changed more than its turn.
    .method = Marks that editing programs leave and cameras do not: a processing program named in the record, an editor's data block, a history of edits, a time of writing more than a minute after the picture was taken, content credentials that do not fit the bytes or themselves list edits (where the program was built with them). The record's thumbnail against the picture: correlation at 24 by 18 cells below 0.85 at the best of four turns, black bars and longer sides cut off. Compression tables are only named beside other marks: phones use the standard's tables too. An edit that leaves no mark, or one of a small part of the picture, is not seen; a harmless turn or rename in a gallery may leave one.

finding-rule-photo-rendered =
    .rationale = This program renders perfect bays; such a photo given for a real one would be within whatever the vehicle is like.
    .method = The record names the renderer, or the picture bears its mark: 160 by 160 cells, each one grey level brighter or darker by a pseudo-random sign, never on markers (Cox, Kilian, Leighton and Shamoon 1997). Each cell against its four neighbours, limited to 2 levels, is correlated with the signs, in eight turns and mirrorings; from 8 standard deviations on the mark is there. False alarms: below 1e-13 for a photo (Hoeffding 1963), since the signs know nothing of it. The mark survives JPEG quality 70 and half the size; a picture that was cropped, pasted together or made by a changed program need not bear it.

finding-rule-noise-repeated =
    .rationale = Two photos prove something because each could contradict the other; one that was made from the other says what somebody wanted.
    .method = For markers whose corners differ between two photos by a shift alone (0.5 px): what each pixel is apart from its four neighbours, in the middle of the cells (0.3 of the cell and 3 px away from its edges), correlated at that shift over 150 pixels or more; above 0.85 it is called the same. Prints and edges look the same from one place: photos of a rendered tripod before and after a move, as eight kinds of phones develop them, show up to 0.64 (at JPEG quality 75), and none is named. A part that was turned, scaled or shifted by fractions of a pixel is mostly not seen, nor one that was saved at a JPEG quality below some 95.

finding-rule-markers-without-noise =
    .rationale = Where a stand stood follows from its markers; who puts in other ones moves it.
    .method = Median size of what a pixel is apart from its four neighbours, in the middle of a marker's cells (0.3 of the cell and 3 px away from its edges), on white and on black; each against the median of the photo's markers on other marker holders (four or more, with 0.3 grey levels or more). Of white and black the noisier one counts, of the marker holder's markers (two or more) the median: below 0.4 it is named. Renders of two programs: 64 marker holders in 12 MP photos, also strongly denoised and compressed, show 0.53 or more, none is named; stands that were put in without noise are named in 30 of 30 at JPEG quality 95, in 25 of 30 at 85 and in 18 of 30 at 75. Real photos with so many markers were not at hand. Smaller cells than some 18 px leave too little to tell. Markers that were cut from another photo bring their own noise and are not seen, nor those that were given noise.

finding-rule-compression-differs =
    .rationale = Where a stand stood follows from its markers; who pastes in other ones, photographed elsewhere with noise of their own, moves it.
    .method = In the blocks of 8 x 8 pixels within the markers the coefficients of an earlier compression stay near multiples of its steps, if it was saved again with finer steps (Popescu and Farid 2004; by region: Lin, He, Tang and Tang 2009): the histogram swings. Named where the other markers (four or more) swing by more than 7 standard deviations in two of 20 coefficients, and a marker holder's own (two or more) show less than 0.35 of it, known to a sixth or better. A photo that was compressed once has no such trace and raises nothing. Which attacks are seen, and how often honest photos are named, is in docs/attacks.md. Not seen: a photo saved again with the same or coarser steps, one whose original was no JPEG, and one in which all markers were pasted.

finding-rule-focal-contradicts =
    .rationale = A record that states another angle of view than the picture has belongs to another picture, or the picture was cut.
    .method = The focal length for 35 mm film in the record against the solved one of the photo, by the picture's diagonal (43.27 mm) and by its longer side (36 mm), with and without the digital zoom that the record states, for makers differ: named where it leaves all of them by more than 10 %, half a millimetre and three standard uncertainties. A cut of less than that is not seen, and a record without the value is not checkable.

finding-rule-other-kit =
    .rationale = Two kits in one picture invite the wrong kit file, or show a bay that is not the job's.
    .method = Ids that are neither in the job's kit nor kept for job cards: at least two of them read without a corrected bit, each in two photos or three in one. A board for fitting cameras on the wall, or a neighbour's kit, looks the same; a misread marker (below 1e-6 for a photo) would have to come twice.

finding-rule-card =
    .rationale = A code that exists for this job only, seen in a photo, proves that the photo was taken for this job.
    .method = The ids kept for cards, as found in each photo, against the job's. Exact, but for a marker that is read as another one (below 1e-6 for a photo); one photo that shows the whole card vouches for the photos that the adjustment joins with it.

finding-rule-photos-not-listed =
    .rationale = Who may choose among the photos of a stand can leave out those that contradict.
    .method = Names of the pictures in the job's `photos` against those that the job lists as photos or attachments, where it lists any. Exact; they are not looked into, but sealed with the job. Photos that lie elsewhere, or were deleted, are not seen. Of a sheet with several steps also photos that show the stand in a step that no check is about, or that name no step.

finding-rule-prerequisites =
    .rationale = The sheet says what must be so before the geometry means anything: tyres, load, steering, settled suspension.
    .method = The job's answers against the sheet's list: `false` stops, and so do words that begin with no (no, not, nein, nicht, non, pas); no answer to a required one, or words that are neither a plain yes nor have a figure (“2.3 bar”), make the record incomplete. Photos can't check an attestation.

finding-rule-credentials-lacking =
    .rationale = A sheet that asks who took the photos is not satisfied by what they show.
    .method = Each photo that takes part is read for a C2PA manifest in its file; every hash, the signature and its certificate are validated without a network, by the anchors that were named. Sufficient are only valid credentials of a trusted signer whose manifest lists nothing but that a camera took the picture. There is no rate of false alarms: what is required is there or not. A stolen key, a picture of a screen, and revocations that the file does not bear are not seen.

finding-rule-not-checked =
    .rationale = Six quantities place a stand; a sheet that is silent on one leaves it open, and a reader must know.
    .method = Distance, centring, height, squareness, tilt, level against the sheet's checks and waivers. Exact.
