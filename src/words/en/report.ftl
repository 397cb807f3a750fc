report-quantity-from =
    { $quantity ->
        [height_from_nose] height above { $datum }
        [lateral_from_nose] centring on { $datum }
       *[other] { $name } from { $datum }
    }
report-datum =
    { $datum ->
        [nose] the nose
        [front_axle] the front axle
        [rear_axle] the rear axle
       *[other] the datum “{ $datum }”
    }
report-term =
    { $term ->
        [yaw] yaw
        [pitch] pitch
        [roll] roll
        [lateral] lateral offset
       *[range] range
    }
report-with-term = { $name } ({ $term })
report-step = step { $step }
report-reference-line =
    { $line ->
        [rear_axle_normal] the normal to the rear axle
        [thrust_line] the thrust line
        [centreline] the vehicle's centreline
       *[other] { $line }
    }
report-verdict-short =
    { $verdict ->
        [within] within
        [outside] outside
        [not_proven] not proven
       *[retake] retake
    }
report-not-trusted-short = not trusted
report-mark =
    { $verdict ->
        [within] ok
        [outside] X
        [not_proven] ?
       *[retake] again
    }
report-grade =
    { $grade ->
        [pass] pass
        [conditional_pass] conditional pass
        [conditional_fail] conditional fail
        [fail] fail
       *[other] { $grade }
    }
report-instrument =
    { $instrument ->
        [laser] laser
        [tape] tape
        [level] spirit level
        [alignment] alignment rack
       *[other] { $instrument }
    }

report-amount =
    { $unit ->
        [deg] { $value } deg
        [degrees] { $value } degrees
        [in] { $value } in
        [mm] { $value } mm
       *[other] { $value } { $unit }
    }
report-amount-with-u =
    { $unit ->
        [deg] { $value } ± { $u } deg
        [degrees] { $value } ± { $u } degrees
        [in] { $value } ± { $u } in
        [mm] { $value } ± { $u } mm
       *[other] { $value } ± { $u } { $unit }
    }
report-with-inches = { $amount } ({ $inches })
report-to-side = { $amount } { $side }
report-required-side = { $nominal }, ± { $half }
report-required-range = { $nominal }, from { $lower } to { $upper }
report-required-least = { $nominal }, at least { $lower }
report-required-most = { $nominal }, at most { $upper }
report-required-open = { $nominal }, no limit
report-probability =
    { $bound ->
        [above] > { $percent } %
        [below] < { $percent } %
        [unknown] unknown
       *[exact] { $percent } %
    }
report-otherwise = { $assuming }: { $value }, { $verdict }
report-no-value = no value
report-not-determined = not determined

report-side-short =
    { $side ->
        [right] right
        [left] left
        [steered-right] right
        [steered-left] left
        [right-end-nearer] right end nearer
        [left-end-nearer] left end nearer
        [top-towards] top towards
        [top-away] top away
        [left-end-low] left end low
        [right-end-low] right end low
        [right-longer] right longer
        [left-longer] left longer
        [toe-out] toe-out
        [toe-in] toe-in
        [top-rearward] top rearward
        [top-forward] top forward
        [top-inward] top inward
        [top-outward] top outward
        [nose-up] nose up
        [nose-down] nose down
        [below] below
        [above] above
        [below-floor] below the floor
        [behind] behind it
       *[negative] negative
    }
report-side-long =
    { $side ->
        [right] to the vehicle's right
        [left] to the vehicle's left
        [steered-right] steered to the right
        [steered-left] steered to the left
        [right-end-nearer] turned: the end on the vehicle's right is nearer the vehicle
        [left-end-nearer] turned: the end on the vehicle's left is nearer the vehicle
        [top-towards] tilted: the top leans towards the vehicle
        [top-away] tilted: the top leans away from the vehicle
        [left-end-low] out of level: the end on the vehicle's left is lower
        [right-end-low] out of level: the end on the vehicle's right is lower
        [right-longer] longer on the vehicle's right
        [left-longer] longer on the vehicle's left
        [toe-out] toe-out
        [toe-in] toe-in
        [top-rearward] with the top leaning to the vehicle's rear
        [top-forward] with the top leaning forward
        [top-inward] with the top leaning inward
        [top-outward] with the top leaning outward
        [nose-up] with the nose up
        [nose-down] with the nose down
        [below] below it
        [above] above it
        [below-floor] below the floor
        [behind] on the vehicle's side of it
       *[negative] below zero
    }
report-end =
    { $end ->
        [nearer] nearer
        [further] further away
        [lower] lower
        [higher] higher
        [vehicle-right] vehicle's right
        [vehicle-left] vehicle's left
        [less] less
       *[more] more
    }
report-against-required =
    { $way ->
        [nearer] nearer than required
        [further] further away than required
        [lower] lower than required
        [higher] higher than required
        [right] further to the vehicle's right than required
        [left] further to the vehicle's left than required
        [right-end-nearer] turned, its right end nearer than required
        [left-end-nearer] turned, its left end nearer than required
        [top-towards] leaning more towards the vehicle than required
        [top-away] leaning more away from the vehicle than required
        [left-end-low] turned, its left end lower than required
        [right-end-low] turned, its right end lower than required
        [less] less than required
       *[more] more than required
    }
report-deviation = { $name }: { $amount } { $against }
report-as-required = { $name }: as required

report-what-to-do = What to do now
report-do-now = Do now, in this order
report-numbered-step = { $title }: { $words }
report-with-extras = { $title } ({ $extras })
report-move =
    { $name ->
        [level] level
        [tilt] tilt
        [square] square
        [centre] centre
        [distance] distance
       *[height] height
    }
report-clear-first = Clear up first
report-settle = Settle
report-measured = measured { $value }
report-prove-more = not proven: take more photos from further apart, or move the value nearer to the required one
report-prove-never = these photos and this kit cannot prove so small a tolerance. This is not a fail: the uncertainty is too large for it, wherever the stand is
report-measure-again = the photos do not determine it: take them again
report-then = Then
report-close-moved = Take one photo of the stand there, with plates and floor sheets: it is measured with those before; a second one proves it.
report-close-void = Take the photos again. Do not move the stand by the figures of this report: they can't be trusted.
report-close-held = Take the photos again. Do not move the stand by the figures of this report: what has to be settled comes first.
report-close-held-typed = Verify the job again. Do not move the stand by the figures of this report: what has to be settled comes first.
report-nothing-to-move = Nothing to move
report-keep-report = Keep this report with the job.
report-close-retake = Take the photos again and verify the job again.
report-close-verify = Verify the job again.
report-none-trusted = The figures can't be trusted.
report-some-trusted = Not all figures can be trusted.
report-findings-say-why = The findings say why.

report-job = Job { $job }
report-fact-bay = bay { $bay }
report-fact-technician = technician { $name }
report-fact-attempt = attempt { $number }
report-fact-kit = marker kit { $upkeep }
report-kit-serial = serial { $serial }
report-kit-due =
    { $state ->
        [overdue] survey overdue since { $due }: survey the kit again
        [due] survey due { $due }
       *[unknown] survey due { $due } (not checkable: no time is stated)
    }
report-first = First
report-by-screw = That is { $screw }.
report-last-move = The last move: { $last }.
report-track-text = Where the stand went (± expanded uncertainty, 95 %)
report-position-first = first
report-position-move = move { $number }
report-figure = { $name } { $value }
report-figure-moved = { $name } { $value } ({ $moved })
report-last-position = The last position is shown by { $photos }.
report-last-position-none = No photo shows the last position.
report-checks-text = Checks against { $line } (measured ± expanded uncertainty, 95 %)
report-required-value = required { $required }
report-probability-short = { $probability } within
report-required-and-probability = { $required }, { $probability }
report-from-photos-alone = The same checks from the photos alone
report-same-verdicts = The verdicts are the same.
report-readings-text = Readings against the photos (± standard uncertainty)
report-agreement =
    { $agreement ->
        [agrees] agrees
        [disagrees] disagrees
       *[other] not comparable
    }
report-reading =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, photos { $photos }, used in the result
       *[no] { $name }: { $instrument } { $read }, photos { $photos }
    }
report-reading-alone =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, the photos don't determine it, used in the result
       *[no] { $name }: { $instrument } { $read }, the photos don't determine it
    }
report-read-by = read
report-findings = Findings
report-level =
    { $level ->
        [void] void
        [stop] stop
        [warn] warn
       *[note] note
    }
report-level-meaning =
    { $level ->
        [void] the measurement can't be trusted
        [stop] nothing is called within
        [warn] worth a look
       *[note] worth knowing
    }
report-blind-text = Not checkable with these photos
report-blind = { $fault }: it takes { $remedy }
report-blind-of = { $fault } of { $carriers }: it takes { $remedy }
report-more-photos = more photos
report-whose-tolerance = Whose tolerance:
report-cautions-text = Cautions:
report-cautions-short = the vehicle maker's service information and local rules govern. The work is for trained people; lasers and lifted vehicles need their own precautions. This documents a set-up and does not replace the procedure.
report-not-proofread = A technician whose language this is has not read these texts yet.

report-phases = Before and after the calibration
report-attempts = Attempts of this series
report-ride-height = Ride height
report-one-more-photo = One more photo
report-next-photo = Would decide what is open: { $photo }.
report-moved = { $body } moved by { $mm } and { $degrees }.
report-not-moved = { $body } did not move beyond the uncertainty: { $mm } and { $degrees }.
report-body =
    { $body ->
        [vehicle] vehicle
       *[other] { $body }
    }
report-attempt-line =
    { $numbered ->
        [yes] Attempt { $number }, job { $job }
       *[no] job { $job }
    }, { $photos ->
        [one] one photo
       *[other] { $photos } photos
    }, by its own photos: { $verdict }; { $beside ->
        [own] this job
        [together] adjusted together with this job, because nothing had moved
       *[apart] not adjusted together with this job: { $why }
    }.

report-title = Where the target stood: job { $job }
report-rendered = RENDERED: no camera took these photos. They show an invented bay, for practice or as a sample, and prove nothing of any vehicle.
report-page-title = Job { $job }: { $verdict }
report-document-title = Where the target stood: job { $job }: { $verdict }
report-page-of = page { $page } of { $pages }
report-repair-order = Repair order
report-attempt = Attempt
report-vehicle = Vehicle
report-vin = Vehicle identification number
report-photos-taken = Photos taken
report-bay = Bay
report-technician = Technician
report-kit = Marker kit
report-kit-upkeep = Kit upkeep
report-camera = Camera
report-setup-sheet = Set-up sheet

report-checks = Checks
report-checks-none = The set-up sheet checks nothing.
report-checks-lede = Measured against { $line }. ± is the expanded uncertainty U (95 %).
report-rule =
    { $rule ->
        [guarded] “Within” needs at least { $least } % probability that the true value lies inside the limits; so does “outside”.
        [simple] The measured value alone is held against the limits; its uncertainty does not count.
        [binary] A guard band of one expanded uncertainty is kept inside the limits (ILAC-G8:2019, binary).
        [four_way] Pass, conditional pass, conditional fail, fail (ILAC-G8:2019).
       *[other] Decision rule: { $rule }.
    }
report-without-readings = Readings took part in the table above. Without them:
report-check = Check
report-required = Required
report-measured-u = Measured ± U
report-measured-key = Measured
report-against-limits = Against the limits
report-verdict-column = Verdict
report-tolerance-basis = tolerance: { $basis }
report-not-to-be-trusted = not to be trusted
report-within-limits = { $probability } within the limits
report-too-small = These photos and this kit cannot prove so small a tolerance. This is not a fail.
report-reason-in-step = Why: see “What to do now”, step { $step }.
report-same-reason = For the same reason as { $check }.
report-against-line = against { $line }
report-by-reading = decided by a reading
report-bar-key = How to read the bars
report-bar-limits = limits
report-bar-required = required
report-bar-true = where the true value lies (95 %)
report-bar-mark = The mark in it is the measured value, in the shape of its verdict.
report-off-scale = off this scale: { $amount }
report-bar-spoken = { $name }: { $value }, required { $required }, { $verdict }

report-drawing = Where everything stood
report-drawings-neither = Neither can these drawings.
report-drawings-not-all = Nor can all of these drawings.
report-nothing-to-draw = The photos do not determine where the stand and the vehicle were, so there is nothing to draw.
report-plan = Plan: seen from above
report-side = Side: seen from the vehicle's right
report-drawing-caption = To scale, true size of every deviation. Markers (black), wheel centres and the stand are where they were measured; the vehicle's body is a sketch around them. Numbered circles are the photos with their directions.
report-nose-typed = The nose was not marked: its place follows from the typed length.
report-magnified = The stand against where it must be
report-magnified-of = The stand against where it must be: { $name }
report-magnified-lede = Dashed: required. Solid: measured, with its uncertainty as a cross (95 %). Shaded: where the aim point may be; dotted: how far the stand may be turned.
report-drawing-spoken = Drawing to scale of the vehicle, the target stand and the photos. { $figures }
report-view-above = From above
report-view-right = From the vehicle's right
report-view-vehicle = As seen from the vehicle
report-edge =
    { $edge ->
        [towards] towards the vehicle
        [away] away
        [left] vehicle's left
        [right] vehicle's right
        [higher] higher
        [lower] lower
       *[away-from-vehicle] away from the vehicle
    }
report-drawn-moved = Against the stand's outline: displacements drawn { $lengths } times.
report-drawn-turned = Against the stand's outline: turn drawn { $angles } times.
report-drawn-both = Against the stand's outline: displacements drawn { $lengths } times, turn drawn { $angles } times.
report-wheelbase = wheelbase { $amount }
report-distance-from = { $amount } from { $datum }

report-track = Where the stand went
report-track-lede = All photos are measured together: vehicle, plates and floor sheets stand where the first ones found them, the stand has a place of its own after each move. ± is the expanded uncertainty (95 %); that of a move is smaller than that of two places, since what both have in common takes no part in it.
report-track-none = No photo shows the stand where it stands now together with the vehicle.
report-track-shown = Where it stands now is shown by { $photos }.
report-track-above = From above: { $name }
report-track-caption = The aim point before the first move (0) and after each; the large point is where it stands now.
report-track-spoken = The way of { $name } from above. { $moves }
report-track-move = move { $number }, { $name }: { $moved }
report-position = Position
report-before-moves = Before it was moved
report-after-move = After move { $number }
report-sentence = { $words }.

report-nothing-to-report = Nothing to report.
report-photos = Photos
report-no-photo = No photo could be read.
report-photos-key = How to read the photos
report-key-used = marker that was used, with its number
report-key-not-used = marker that was not used
report-key-outline = where the solved marker holders and the aim point come out
report-key-residual = residual, found minus calculated, magnified
report-photo = Photo { $number }:
report-photo-not-used = Not used:
report-photo-spoken = Photo { $number }: { $markers }
report-markers-found =
    { $found ->
        [one] one marker
       *[other] { $found } markers
    } found, { $used } of them used
report-markers-left-out = { $count } of the marker kit left out
report-markers-unknown = { $count } with numbers that the marker kit does not know
report-markers-nameless = too close together to be named in the picture: { $numbers }
report-marker-unknown = { $number } unknown
report-marker-not-used = { $number } not used
report-no-picture = the picture is not at hand
report-residual-scale = { $length } px, residuals drawn { $factor } times
report-camera-profile = Camera profile
report-taken = Taken
report-private-kinds = Also in the photo's own record, and not shown here
report-private-value = Private: { $name }
report-residuals = Residuals, RMS
report-blur = Blur, median
report-noise = Corner noise
report-noise-value = { $ratio } times that of a plainly developed photo
report-light = Light changed by the phone
report-light-value = by { $percent } % from place to place (1 sigma)
report-edge-offset = Edge offset
report-edge-offset-value =
    { $way ->
        [outward] { $offset } px, outward
        [inward] { $offset } px, inward
       *[none] { $offset } px
    }
report-focal-length = Focal length
report-credentials = Content credentials
report-credentials-of-photos = Content credentials of the photos: { $counts }.
report-credentials-made = made with { $generator }
report-credentials-time = timestamp of { $time }
report-credentials-bytes = hashed were all bytes but { $count } from byte { $first } on
report-credentials-edits = edits that the manifest lists: { $edits }
report-px = { $value } px
report-px-twice = { $first } px, { $second } px
report-taken-from = Taken from
report-taken-from-value =
    { $side ->
        [left] { $ahead } m in front of the rear axle, { $across } m to the vehicle's left, { $high } m high
       *[right] { $ahead } m in front of the rear axle, { $across } m to the vehicle's right, { $high } m high
    }
report-taken-from-behind =
    { $side ->
        [left] { $behind } m behind the rear axle, { $across } m to the vehicle's left, { $high } m high
       *[right] { $behind } m behind the rear axle, { $across } m to the vehicle's right, { $high } m high
    }

report-readings = Readings against the photos
report-readings-lede = ± is the standard uncertainty u. E_n is the difference over the root of the summed squares of both expanded uncertainties (ISO/IEC 17043): up to 1 they agree.
report-reading-column = Reading
report-read = Read
report-result = Result
report-by-instrument = by { $instrument }
report-reading-used = used in the result
report-reading-compared = compared only, not used
report-all-measured = All measured quantities
report-all-measured-none = The photos determine no quantity of the set-up.
report-all-measured-lede = Against { $line }. ± is the standard uncertainty u.
report-quantity-column = Quantity
report-value-u = Value ± u
report-direction = Direction
report-budget = Where the uncertainty comes from
report-budget-lede = Each source's standard uncertainty and its share of the variance (GUM).
report-source = Source
report-share = Share
report-budget-total =
    { $name }: u = { $u }, { $freedom ->
        [infinite] infinite degrees of freedom
       *[finite] { $degrees } degrees of freedom
    }{ $factor_known ->
        [yes] , coverage factor { $factor }
       *[no] {""}
    }

report-doubts = What these photos would have shown
report-doubts-lede = The least size of each fault that is found with a probability of 95 % in this job. Smaller ones may be there.
report-fault = Fault
report-found-from = Found from
report-all-alike = all by the same amount
report-worst-of = worst of { $count }: { $name }
report-not-checkable = not checkable with these photos
report-it-takes = it takes { $remedy }
report-hangs-on = What the checks depend on
report-hangs-on-lede = The largest change of each value when one photo, one marker holder or the form of the lens model is taken away.
report-change = Change
report-uncertainty-95 = Uncertainty (95 %)

report-attested = What the technician attests
report-attested-nothing = The sheet asks for nothing and nothing was stated.
report-attested-complete = Every required answer was given.
report-attested-missing = Required answers are missing.
report-statement = Statement
report-answer = Answer
report-not-asked = not asked for by the sheet
report-obligation =
    { $required ->
        [yes] required
       *[no] optional
    }
report-answered =
    { $answer ->
        [yes] ✓ yes
        [no] ✕ no
       *[none] — not answered
    }
report-scan-tool = What the scan tool said
report-scan-tool-nothing = Nothing was stated about the calibration itself.
report-scan-tool-aside = As typed by the technician. It says nothing about where the stand stood.
report-calibration-key =
    { $key ->
        [result] Result
        [at] Time
        [reported_azimuth_deg] Reported azimuth, deg
        [reported_elevation_deg] Reported elevation, deg
       *[other] { $key }
    }
report-calibration-result =
    { $result ->
        [successful] successful
        [failed] failed
        [not-run] not run
       *[other] { $result }
    }
report-attachments = Attachments
report-attachment-kind =
    { $kind ->
        [scan-before] scan report before
        [scan-after] scan report after
        [alignment] alignment printout
        [procedure] procedure
        [overview-photo] overview photo
        [other] other
       *[unknown] { $kind }
    }
report-sheet = Whose figures these are
report-sheet-no-source = The set-up sheet names no source.
report-procedure-key =
    { $key ->
        [document] Document
        [revision] Revision
        [opened] Opened
        [applies-to] Applies to
       *[other] { $key }
    }
report-not-checked = What was not checked
report-not-checked-nothing = The set-up sheet waives nothing and left nothing out.
report-left-out = { $quantity }: the sheet neither checks nor waives it
report-waived = { $quantity }: waived, because { $because }
report-inputs = The files behind this report
report-inputs-lede = A changed file has another SHA-256.
report-what = What
report-file = File
report-input-role =
    { $role ->
        [job] job
        [setup] set-up sheet
        [kit] marker kit
        [layout] layout
        [camera] camera
        [stand] stand
        [photo] photo
        [attachment] attachment
       *[other] { $role }
    }
report-found-in =
    { $place ->
        [embedded] found in: embedded models
        [installed] found in: installed models
        [option] found in: --models folder
        [environment] found in: BAYWITNESS_MODELS folder
       *[other] found in: models of another place
    }
report-cautions = Cautions
report-caution-maker = The vehicle maker's service information and local rules govern. Where they differ from this report, follow them.
report-caution-trained = Work on driver-assistance sensors is for trained people.
report-caution-lasers = Lasers and lifted vehicles need precautions of their own.
report-caution-documents = This report documents where the target stood when the photos were taken. It does not replace the calibration procedure, and it does not say that the sensor works.
report-footer = Measured and written by { $tool } · record format { $format } · job { $job }

report-about = About this document
report-about-repeats = It repeats the result of job { $job }, which is kept as the file result.json. The SHA-512 of that file stands on every page, also as a QR code:
report-about-undated = Neither the job nor its photos state a time with its offset. The date in this file's properties is the first of January 1970, because PDF/A wants one; it means nothing.
report-digest-of = SHA-512 of result.json, which this document repeats:
report-foreign-characters =
    { $count ->
        [one] One character of this record has no shape in this document's fonts and is shown as { $sign }; copied text, the HTML report and result.json have it.
       *[other] { $count } different characters of this record have no shape in this document's fonts and are shown as { $sign }; copied text, the HTML report and result.json have them.
    }

verify-one-job = --moved and --more take one job: name the folder that the photo belongs to
verify-not-logged = Not logged: { $jobs }, which could not be read.
verify-report = Report:
verify-for-the-customer = For the customer: { $file }
verify-repair-order = Repair order { $series }: { $file }
verify-no-folder = cannot make the folder { $folder }: { $why }
verify-no-json = cannot write the result as JSON: { $why }
verify-watch-every = "{ $text }" is no time from 0.05 to 3600 s
verify-watch-no-folder = { $folder } is no folder: name one that holds job folders
verify-watching = Watching { $folder }; Ctrl-C ends it.
verify-unreadable-folder = cannot read the folder { $folder }: { $why }
report-findings-above = Every finding stands under “What to do now”.

report-private-kind =
    { $kind ->
        [position] position (GPS)
        [serial] serial numbers
        [owner] owner or author
       *[notes] the maker's own notes
    }
report-picture-unreadable = cannot read photo { $photo } for the report: { $why }
report-picture-not-made = cannot encode the copy of photo { $photo }: { $why }
report-no-pdf = cannot write the PDF report: { $why }
report-no-pdf-of-page = cannot write the PDF report: its page is not well-formed: { $why }
report-no-table = cannot write the table as Parquet: { $why }
