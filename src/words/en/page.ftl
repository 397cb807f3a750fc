page-skip = Skip to the content
page-all-jobs = All jobs

page-jobs-title = Jobs
page-begin-job = New job
page-search-jobs = Search by number, vehicle, VIN, technician or sheet
page-search = Search
page-no-jobs = No job here yet.
page-no-match = No job has all of these words.
page-earlier = Earlier jobs
page-later = Later jobs
page-open-state = open
page-closed-state = closed and sealed
page-unreadable-job = This job's file can't be read
page-attempt-n = attempt { $n }
page-not-measured = to be measured

page-choose-sheet = Which set-up sheet?
page-search-sheets = Part of the sheet's name
page-used-lately = Used lately
page-every-sheet = All sheets
page-no-sheet = No set-up sheet has all of these words.
page-new-sheet = Type a new set-up sheet
page-new-sheet-why = Every figure is typed twice, each time from the source: a wrong one would let a wrong set-up pass. Leave a quantity empty if the source does not ask for it.
page-sheet-name = Short name
page-sheet-name-hint = Small letters, digits and hyphens.
page-sheet-title = What is calibrated with what
page-sheet-source = Source
page-sheet-source-hint = Whose figures these are: the manufacturer's document and its date. Shown on every report.
page-reference-line = Reference line
page-choose = choose
page-line-thrust = thrust line
page-line-centre = centreline
page-line-rear-axle = perpendicular to the rear axle
page-distance-from = From
page-wanted-value = Required
page-tolerance-value = Tolerance, plus and minus
page-once-more = once more
page-keep-sheet = Save sheet
page-source-says = Source:

page-new-job = New job
page-other-sheet = Another sheet
page-vehicle = Vehicle
page-vehicle-description = Vehicle in words
page-vin = VIN (17 characters)
page-vin-ok = The VIN's check digit agrees.
page-vin-doubt = The ninth character is not the check digit of North American numbers. Compare the number with the vehicle once more; other markets need no check digit.
page-repair-order = Repair order
page-kit = Marker kit
page-camera = Camera
page-camera-by-photo = as recorded in each photo
page-no-kit = No marker kit has what this sheet checks. Put the kit's file where the program looks for it.
page-technician = Technician
page-bay = Bay
page-optional = optional
page-start-job = Start this job

page-step-prepare = Prepare
page-step-photos = Photos
page-step-finish = Finish
page-steps-of-job = Steps of this job
page-attempts = Attempts
page-this-attempt = this one

page-before-photos = Before the photos
page-answered = { $answered } of { $all } answered
page-yes = Yes
page-no = No
page-unanswered = Not answered
page-required = required
page-sizes = Vehicle sizes
page-sizes-why = Compared with the photos, and used alone where they do not show it. Tracks are measured from hub to hub.
page-wheelbase = Wheelbase, mm
page-nose-from-rear-axle = Nose in front of the rear axle, mm
page-floor-below-hub = Wheel centre above the floor, mm
page-rear-track = Rear track, mm
page-front-track = Front track, mm
# Behind a name, what it is of: a button and its photo, a kind and its file.
page-name-of = { $name }: { $of }
# The same where both are drawn differently.
page-colon = :
page-readings = Readings
page-readings-why = Laser, tape, spirit level: compared with the photos, never mixed in.
page-instrument = Instrument
page-laser = laser
page-tape = tape
page-level = spirit level
page-alignment = alignment rack
page-alignment-sheet = Alignment printout
page-alignment-sheet-why = The thrust angle, or both rear toes that give it: degrees and minutes without a sign, and the side.
page-thrust-angle = Thrust angle
page-rear-toe-left = Rear toe, left wheel
page-rear-toe-right = Rear toe, right wheel
page-points-left = points left
page-points-right = points right
page-toe-in = toe-in
page-toe-out = toe-out
page-choose-side = side?
page-save = Save
page-saved = Saved.
page-to-photos = Continue to the photos

page-from-nose = nose
page-from-front-axle = front axle
page-from-rear-axle = rear axle

page-wanted = required { $limits }

page-card-title = One-time card
page-card-why = A code that only this job has, seen in the photos, proves that they were taken for it. Show it on a second screen beside the stand, or lay it out from tiles with these numbers.
page-card-make = Use a card
page-card-show = Show the card
page-card-code = This job's code: { $code }
page-card-marker = Marker { $id }
page-back-to-photos = Back to the photos

page-where-to-stand = Where to stand
page-place-sees = In the picture: { $names }
page-no-place = No place in this bay shows enough markers.
page-drawing-from-above = The bay from above; the vehicle drives upwards.
page-in-every-step = From each place in every position: { $steps }.
page-position = Position of the stand
page-plan-failed = Where to stand can't be said for this kit.

page-take-photo = Take a photo
page-live-photo = Photo in this page
page-live-take = Take the photo
page-live-close = Close the camera
page-live-wait = Looking for markers …
page-live-seen = Markers found: { $count } ({ $names })
page-live-none = No marker of this kit in the picture.
page-live-ties = Stand and surroundings are both in the picture.
page-live-apart = Stand and something else must both be in the picture.
page-live-away = The server does not answer: photos are kept here until it does.
page-live-level = rotated { $turned }°, looks { $down }° down
page-live-refused = This browser provides no camera ({ $why }). Use the other button.
page-live-taken = Taken: { $width } × { $height } pixels.
page-live-frame = It is a frame of the live picture: smaller than the phone's own photos and cropped differently, so a camera file made from photos does not fit it.
page-live-no-record = It does not say which phone took it (no EXIF): it is measured only if the job names its camera, and only a camera file fitted from pictures taken this way fits.
page-live-unnamed = This job names no camera: it is better to use the phone's own camera with the other button.
page-tripod-start = Tripod: a photo every few seconds
page-tripod-stop = Stop the tripod's photos
page-tripod-why = The phone stands still on a tripod while the stand is moved. Of each place in which the stand is at rest the newest photo is kept.
page-tripod-says = Tripod: { $said }
page-choose-photos = Choose photos
page-drop-here = or drop them here
page-needs-script = Sending photos needs JavaScript in this browser. The photos can also be copied into the job's folder photos/.
page-waiting-here = On this device, not sent yet
page-photos = Photos
page-no-photos = No photo yet. At least two from different sides are needed.
page-photo-n = Photo { $n }
page-good-photo = Good
page-retake-photo = Take it again
page-looking = Being looked at …
page-no-target = The stand is not in this photo, or nothing else is: both must be in one picture.
page-set-aside = Leave this photo out
page-bring-back = Use it again
page-aside-photos = Left out, not measured with
page-after-photo-tag = after the calibration
page-seen-key = found
page-missing-key = not found

page-measuring = Measuring …
page-verdict-within = Within tolerance
page-all-within = All checks within tolerance
page-verdict-outside = Outside tolerance
page-verdict-not-proven = Not proven
page-verdict-retake = Retake
page-verdict-failed = Can't be measured
page-lead-within = Every check is proven. Run the calibration, then take one more photo.
page-lead-within-simple = Every measured value is within; the set-up sheet's rule takes no account of the uncertainty. Run the calibration, then take one more photo.
page-lead-within-likely = Every check is within with at least { $least } % probability, which is all that the set-up sheet's rule asks for. Run the calibration, then take one more photo.
page-lead-outside = Move the stand as shown, then take one photo.
page-lead-held = Do not move the stand yet: settle first what is named below, then begin the next attempt.
page-not-trusted = not trustworthy
page-lead-not-proven = Nothing is proven wrong, but not everything is proven right.
page-lead-retake = The photos can't decide. What to do is below.
page-second-photo = One more photo from the other side.
page-what-moves = What to move
page-not-to-scale = Not to scale. Dashed: where it must be.
page-from-above = From above
page-from-side = From the vehicle's right side
page-from-vehicle = Seen from the vehicle
page-turn-left-end = Turn: the end on the vehicle's left towards the vehicle, { $amount }°
page-turn-right-end = Turn: the end on the vehicle's right towards the vehicle, { $amount }°
page-move-left = { $amount } mm to the vehicle's left
page-move-right = { $amount } mm to the vehicle's right
page-move-away = { $amount } mm away from the vehicle
page-move-towards = { $amount } mm towards the vehicle
page-move-up = { $amount } mm higher
page-move-down = { $amount } mm lower
page-tilt-away = Tilt: the top away from the vehicle, { $amount }°
page-tilt-towards = Tilt: the top towards the vehicle, { $amount }°
page-level-right-down = Level: the end on the vehicle's right lower, { $amount }°
page-level-left-down = Level: the end on the vehicle's left lower, { $amount }°
page-vehicle-word = vehicle
page-left-word = left
page-right-word = right
page-found-out = What was found
page-checks = Checks
page-full-report = Full report
page-first-thing = First
page-prove-it = Leave the stand where it is. Take one more photo from another place.
page-moved-it = Stand moved: one photo
page-moved-step = Stand moved: one photo of “{ $step }”
page-moved-why = Only the stand was moved. Show it with plates and floor sheets.
page-next-attempt = Stand moved: next attempt
page-beside-title = Against earlier attempts
page-measure-together = Measure with those photos too
page-measure-together-why = They are copied into this attempt: more photos of the same stand prove more.
page-next-attempt-why = This attempt is sealed as it is and stays in the list.
page-to-finish = Continue to the calibration

page-calibration = Calibration
page-calibration-result = What the scan tool said
page-result-none = nothing yet
page-result-successful = successful
page-result-failed = failed
page-result-not-run = not run
page-reported-azimuth = Reported misalignment sideways, degrees
page-reported-elevation = Reported misalignment up and down, degrees
page-large-misalignment = The control unit reports { $angle }°. If the set-up is proven, so large a figure points to the sensor's bracket or its mounting; if it is not proven, check the set-up first.
page-after-photo = Photo after the calibration
page-after-with-sheets = One more photo of the stand and the floor sheets, where they stood before, shows whether the stand moved on the floor. It shows whether the vehicle moved only with wheel plates fitted; fit them again for it, or leave the question open.
page-after-without-sheets = This kit has no floor sheets: one more photo shows whether the stand moved relative to the vehicle only with at least one wheel plate on it. Fit it again when the calibration has ended.
page-scan-reports = Reports and other files
page-scan-before = Scan report before
page-scan-after = Scan report after
page-other-file = Other file
page-attach = Attach
page-attach-file = Attach: { $kind }
page-no-files = No file attached.
page-close-job = Close the job
page-close-why = Photos, inputs, result and report are sealed in an evidence folder. After that nothing can be changed here.
page-close-open = Still open: { $open }
page-open-prerequisites = prerequisites without answer
page-open-verdict = the set-up is not proven to be within tolerance
page-open-result = the calibration's result
page-open-after = the photo after the calibration
page-close-now = Seal and close
page-closed-title = Closed and sealed
page-take-evidence = Download evidence (one file)
page-send-photos = Send the photos
page-send-file = Send the file
page-evidence-in = Evidence folder: { $folder }
page-signed-words = Signed with this computer's key.
page-unsigned-words = Not signed: it shows accidental changes, not deliberate ones.

page-cautions = The vehicle manufacturer's service information and local rules govern. For trained people; lasers and lifted vehicles need their own precautions. This page documents a set-up and does not replace the procedure.

page-pair-title = Connect this device
page-pair-why = Enter the code to use this page.
page-pair-now = Connect
page-pair-code = Code on the terminal
page-pair-name = A name for this device
page-pair-name-why = Optional; appears in each job's list of changes, for example: left bay's phone.
page-open-network = This page is not encrypted: everybody in this network can read along, including photos, jobs and this device's key. Taking photos in the page and starting without a network need encryption too. Whoever runs the server turns it on.
page-open-network-here = Not encrypted: this network can read along.
page-devices = Connected devices
page-devices-why = A device that is disconnected is refused at once and needs a new code. What it changed stays in each job's list of changes.
page-no-devices = No device is connected.
page-this-device = this device
page-connected-since = Connected { $when }
page-last-here = last active { $when }
page-show-out = Disconnect
page-certificate = This page's certificate
page-certificate-why = Compare these digits with the terminal's, not with another page: where they are the same, nobody stands between.
page-certificate-of-page = SHA-256 of the certificate that the browser shows
page-certificate-of-root = SHA-256 of the root certificate that a phone can be told to trust
page-root-why = Once this device trusts the root certificate, the browser no longer warns, and the page starts without a network too. The root can sign nothing else: its key was deleted.
page-take-root = Download the root certificate
page-changes = Who changed what
page-did-begin = job started
page-did-prepare = preparation
page-did-photo = photo
page-did-aside = photo left out
page-did-back = photo used again
page-did-file = file attached
page-did-calibration = calibration
page-did-card = card
page-did-join = measured with earlier photos
page-did-attempt = next attempt
page-did-close = closed
page-pair-wrong = That is not the code. Read it again from the terminal, or scan the QR code.
page-pair-wait = Too many wrong codes. Wait a minute.
page-trouble-title = This did not work

page-js-queued = Waiting on this device for the network: { $count }. Nothing is lost.
page-js-sending = Sending { $name } …
page-js-kept = { $name } is saved.
page-js-already = { $name } was already here.
page-js-aside = { $name } was left out before. Use it again below if you need it.
page-js-refused = { $name } was not accepted: { $why }
page-js-again = Try again
page-js-discard = Discard
page-js-ready = There is a new verdict.
page-js-other-certificate = The QR code that was scanned names another certificate than this page: do not connect, and tell whoever runs the server.
page-js-offline = No connection to the server: what this page shows may be old. Photos can be taken and are sent later.
page-js-no-store = This browser keeps no queue: stay on this page until the photos are sent.

## Languages

page-languages = Languages
page-not-proofread = Not yet read by a technician.
page-moment = { $day } { $clock }
page-unit = { $unit ->
    [deg] deg
   *[other] { $unit }
}

## Numbers of things

page-found-jobs = { $count ->
    [one] One job
   *[other] { $count } jobs
}
page-checks-n = { $count ->
    [one] One check
   *[other] { $count } checks
}
page-photo-shows = { $count ->
    [one] One marker found.
   *[other] { $count } markers found.
} Shows: { $names }
page-photo-lacks = { $count ->
    [one] One marker not found where it should be: { $ids }.
   *[other] { $count } not found where they should be: { $ids }.
} Covered, glare from a lamp, or in the dark?
page-photo-described = { $count ->
    [one] { $photo }: one marker found
   *[other] { $photo }: { $count } markers found
}

## Quantities and sides

page-quantity-from = { $datum ->
    [nose] { $name } from the nose
    [front_axle] { $name } from the front axle
    [rear_axle] { $name } from the rear axle
   *[other] { $name } from { $datum }
}
page-side = { $side ->
    [left] left
    [right] right
    [left-end-nearer] left end nearer
    [right-end-nearer] right end nearer
    [top-away] top away
    [top-towards] top towards
    [left-end-low] left end low
    [right-end-low] right end low
    [above] above
    [below] below
    [left-longer] left longer
    [right-longer] right longer
    [toe-in] toe-in
    [toe-out] toe-out
    [top-forward] top forward
    [top-rearward] top rearward
    [top-inward] top inward
    [top-outward] top outward
    [nose-up] nose points up
    [nose-down] nose points down
    [below-floor] below the floor
    [behind] behind it
    [negative] negative
   *[other] ?
}
page-angle-degrees = { $angle }, degrees
page-angle-minutes = { $angle }, minutes

## Sentences with several figures

page-place = { $along ->
    [ahead] { $distance } m in front of the nose
   *[behind] { $distance } m behind the nose
}, { $side ->
    [left] { $beside } m to the vehicle's left
    [right] { $beside } m to the vehicle's right
   *[middle] on the centreline
}, phone { $height } m high
page-take-off = { $sheets ->
    [some] Before the calibration runs, take off what would disturb it: { $names }. The stand and the floor sheets stay where they are.
   *[none] Before the calibration runs, take off what would disturb it: { $names }.
}
page-moved = { $moved ->
    [yes] { $body }: { $mm } mm and { $deg }° between before and after: has moved
   *[no] { $body }: { $mm } mm and { $deg }° between before and after: no move proven
}
page-stood-alike = Attempt { $n }: { $verdict }; nothing has moved since
page-stood-apart = Attempt { $n }: { $verdict }; cannot be measured together:
page-this-machine = this machine
page-device-unnamed = device { $digits }

## Shop's own sheets

page-asks-tyres = Tyre pressures as on the tyre placard
page-asks-empty = Vehicle empty: nobody and no load in it
page-asks-steering = Steering straight ahead
page-asks-settled = Vehicle rolled into place, brakes released, suspension settled
page-sheet-left-out = the sheet's author left it out

## What did not work

page-trouble-not-here = { $what ->
    [job] This job is not here: it may have been moved or renamed.
    [photo] This photo is not here: it may have been moved or renamed.
    [picture] This picture is not here: take it again.
    [sheet] This set-up sheet is not here: it may have been moved or renamed.
    [kit] This marker kit is not here: it may have been moved or renamed.
    [camera] This camera file is not here: it may have been moved or renamed.
    [device] This device is not in the list: it may have been disconnected already.
    [evidence] This evidence folder is not here: it may have been moved or renamed.
    [root] This page has no root certificate of its own.
   *[page] This page does not exist: go back to the list of jobs.
}
page-trouble-closed = The job is closed and sealed: begin a further attempt instead.
page-sealed-another = Something else lies in { $folder }, where this job is sealed: another job's evidence, or this one's from before its file was changed. Nothing here is called sealed before it is moved elsewhere.
page-trouble-disk = { $doing ->
    [read] A file can't be read ({ $why }): check the disk of the computer that serves this page.
    [folder] A folder can't be made ({ $why }): check the disk of the computer that serves this page.
    [photo] The photo can't be saved ({ $why }): check the disk of the computer that serves this page.
    [job] The job's file can't be written ({ $why }): check the disk of the computer that serves this page.
    [list] A list can't be saved ({ $why }): check the disk of the computer that serves this page.
    [sheet] The set-up sheet can't be saved ({ $why }): check the disk of the computer that serves this page.
   *[file] The file can't be saved ({ $why }): check the disk of the computer that serves this page.
}
page-trouble-fault = The program failed at this: report it with the job.
page-trouble-random = The computer gives no random numbers: restart it, and report it if that does not help.
page-trouble-measuring = The program failed while it measured this job: report it with the photos.
page-trouble-not-logged = the verdict is not shown, since { $why }
page-trouble-stays-open = the job stays open, since { $why }
page-trouble-vin = The VIN must have 17 characters, digits and capital letters without I, O and Q: read it from the vehicle again.
page-trouble-form = The form arrived damaged or too large: send it again.
page-trouble-line = One line of at most { $most } characters is kept: shorten it.
page-trouble-number = "{ $typed }" is not a number: type digits, such as { $example }.
page-trouble-not-measured = This attempt is not measured yet: wait for its verdict.
page-trouble-both-toes = Type the toe of both rear wheels, or of none.
page-trouble-toes-contradict = { $side ->
    [left] The rear toes give a thrust angle of { $degrees }° { $minutes }′ to the left, which is not the one typed: read both again.
   *[right] The rear toes give a thrust angle of { $degrees }° { $minutes }′ to the right, which is not the one typed: read both again.
}
page-trouble-angle-sign = Type an angle without a sign and choose its side.
page-trouble-angle-large = An angle of an alignment printout has at most { $degrees } degrees, and less than 60 minutes: read it again.
page-trouble-angle-side = Choose to which side the angle points.
page-trouble-choose-kit = Choose the marker kit.
page-trouble-many-jobs = There are too many jobs of this day in the folder: move older ones away.
page-trouble-upload-id = X-Upload-Id must be 8 to 64 letters, digits or hyphens.
page-trouble-upload-digest = X-Upload-Sha256 must be the file's SHA-256 as 64 lower-case hexadecimal digits.
page-trouble-damaged = The file did not arrive as it was sent: send it again.
page-trouble-too-large = The file has more than { $most } MB: send a smaller one.
page-trouble-slow = The file came too slowly: send it again.
page-trouble-cut = The connection broke off: send the file again.
page-trouble-uploads-busy = Many files arrive at once: send it again soon.
page-trouble-pace = Send fewer live pictures.
page-trouble-glances-busy = Others are looking too: send it again soon.
page-trouble-live-kind = Live pictures must be JPEG.
page-trouble-live-size = Live pictures must be small: send fewer pixels.
page-trouble-host = This page answers only to this machine's own names, such as localhost.
page-trouble-origin = This was sent by another site's page, or by a program that does not say where it comes from.
page-trouble-not-connected = This device is not connected: open the page and type the code that the terminal shows.
page-trouble-many-photos = A job keeps at most { $most } photos: leave some out.
page-trouble-no-first-photos = A tripod's photos are measured with two first photos: take these from different places, then put up the tripod.
page-trouble-which-step = Say which step of the sheet the photos show: { $steps }.
page-trouble-many-files = A job keeps at most { $most } attached files.
page-trouble-instrument = Choose the instrument that read the value.
page-trouble-many-readings = A job keeps at most { $most } readings.
page-trouble-cards = Every card is in use: close jobs that are done.
page-trouble-no-camera = No camera file is at hand: put one where the program looks for it.
page-trouble-no-model = { $kind ->
    [setup] No set-up sheet "{ $name }" is found: put it where the program looks for it.
    [kit] No marker kit "{ $name }" is found: put it where the program looks for it.
    [camera] No camera file "{ $name }" is found: put it where the program looks for it.
   *[other] No file "{ $name }" is found: put it where the program looks for it.
}
page-trouble-sheet-exists = There is a set-up sheet "{ $name }" already: give this one its own name.
page-trouble-sheet-needs = { $field ->
    [name] Type a short name for the sheet.
    [title] Type what is calibrated with what.
   *[source] Type whose figures these are: document and date.
}
page-trouble-sheet-name = The short name takes 3 to 60 lower-case letters, digits and hyphens, such as front-radar-model-x.
page-trouble-choose-line = Choose the reference line.
page-trouble-choose-start = Choose where the distance starts.
page-trouble-sheet-empty = Type at least one required value with its tolerance.
page-trouble-figures-differ = { $quantity }: the two typed figures differ: read the source again.
page-trouble-figure-once = { $quantity }: type the figure in both fields.
page-trouble-figure-alone = { $quantity }: type the required value and its tolerance, or neither.
page-trouble-tolerance-zero = { $quantity }: a tolerance must be larger than zero.

## Whoever runs the page

page-serve-listen = cannot listen on { $address } ({ $why }): name another --listen ADDR:PORT, or stop what listens there
page-serve-jobs = cannot use { $jobs } as the folder of jobs ({ $why }): name another --jobs DIR
page-serve-start = cannot start the server ({ $why })
page-tls-file = { $doing ->
    [write] cannot write { $file } ({ $why }): check the file or name another one
   *[read] cannot read { $file } ({ $why }): check the file or name another one
}
page-tls-holds = { $what ->
    [key] { $file } holds no private key in PEM form ("-----BEGIN ..."): name the file that does
   *[certificate] { $file } holds no certificate in PEM form ("-----BEGIN ..."): name the file that does
}
page-tls-pair = the certificate in { $certificate } and the key in { $key } can't be used ({ $why }): name a pair that belongs together
page-tls-name = "{ $name }" is no host name or address for a certificate: use letters, digits, hyphens and dots
page-tls-make = cannot make a certificate ({ $why }): use --tls-cert and --tls-key
page-tls-other-name = { $own ->
    [yes] the certificate is not made for "{ $name }", and browsers will say so: to have a new one made, which phones must be told to trust anew, remove { $file }
   *[no] the certificate is not made for "{ $name }", and browsers will say so: say with --name what it is made for, or have one made for this, in place of { $file }
}
page-tls-over = { $own ->
    [yes] the certificate has expired, and browsers will say so: to have a new one made, which phones must be told to trust anew, remove { $file }
   *[no] the certificate has expired, and browsers will say so: renew it, with its key in { $file }
}
page-tls-ends = { $own ->
    [yes] the certificate ends soon (days left: { $days }): to have a new one made, which phones must be told to trust anew, remove { $file }
   *[no] the certificate ends soon (days left: { $days }): renew it, with its key in { $file }
}
page-tls-changed = The certificate has changed; its SHA-256 is now { $print }
page-tls-kept = The page goes on with the certificate that it has: { $why }
page-tls-plain = This page is encrypted: its address begins with https://
