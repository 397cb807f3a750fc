# What is wrong with an input file: file, place and key, then what is wrong and what to do. The sentences begin after the colon and have no full stop.
doors-at-place-and-key = { $file }, line { $line }, column { $column }: { $key }: { $problem }; { $remedy }
doors-at-place = { $file }, line { $line }, column { $column }: { $problem }; { $remedy }
doors-at-key = { $file }: { $key }: { $problem }; { $remedy }
doors-of-file = { $file }: { $problem }; { $remedy }
doors-key-without-file = { $key }: { $problem }; { $remedy }
doors-without-file = { $problem }; { $remedy }
doors-said = { $text }

# Formats
doors-format-not-stated = the format is not stated
doors-format-text = must be a text such as "{ $wanted }"
doors-format-not-first = is not the first key
doors-format-remedy = its first line must be: format = "{ $wanted }"
doors-format-version = "{ $found }" is a version that this program does not know; it reads "{ $wanted }"
doors-format-version-remedy = use a newer baywitness or the older file
doors-format-other = this is a "{ $found }" file, but a "{ $wanted }" file is needed here
doors-format-other-remedy = name a { $kind } file here, or correct its first line to: format = "{ $wanted }"
doors-no-toml = is not valid TOML ({ $why })
doors-no-toml-remedy = correct the line: a key, `=` and a value; texts in quotation marks, decimals with a point
doors-key-twice-remedy = keep one of the two; a table of which there are several has double brackets each time: [[...]]

# Files
doors-too-large = is larger than { $most } MiB, too large for a file of this kind
doors-too-large-remedy = check that the right file is named
doors-no-utf8 = is not UTF-8 text
doors-no-utf8-remedy = save it as plain text in UTF-8 (without formatting)
doors-is-folder = is a folder, not a file
doors-is-folder-remedy = name the file in it
doors-not-regular = is not a regular file
doors-not-regular-remedy = name a regular file
doors-not-there = does not exist
doors-not-there-remedy = check the name and the folder
doors-forbidden = may not be read
doors-forbidden-remedy = ask for permission to read it
doors-unreadable = cannot be read ({ $why })
doors-unreadable-remedy = check the path and the disk

# Keys and values
doors-unknown-key = unknown key
doors-did-you-mean = did you mean `{ $word }`?
doors-remove-it = remove it
doors-known-here = known here: { $words }
doors-older-key-too = is the older name of a key that is there too
doors-older-key-too-remedy = keep `{ $now }` alone
doors-older-name = { $file }: `{ $older }` is called `{ $now }` now; the older name is read as well
doors-missing = is missing
doors-missing-remedy = add `{ $key } = ...` here
doors-no-tables = must be a list of tables
doors-no-tables-remedy = write each as [[{ $path }]]
doors-many-tables = has { $count } entries, more than { $most }
doors-many-tables-remedy = leave most of them out
doors-kind = must be { $wanted ->
        [text] a text
        [flag] true or false
        [flag-or-text] true, false or a text
        [number] a number
        [finite] a finite number
        [whole] a whole number
        [list] a list
        [table] a table
        [time-with-offset] a date and time with its offset from UTC
        [time] a date and time
        [existing-time] a time that exists
        *[date] a date
    }, not { $found }
doors-kind-text-remedy = write it in quotation marks
doors-kind-flag-remedy = write it without quotation marks
doors-kind-flag-or-text-remedy = write true, false or a text in quotation marks
doors-kind-number-remedy = write a number without quotation marks or unit
doors-kind-finite-remedy = write a plain number instead
doors-kind-whole-remedy = write it without a decimal point or quotation marks
doors-kind-list-remedy = write it in square brackets
doors-kind-table-remedy = write its keys below a line [{ $path }]
doors-kind-time-remedy = write it like 2026-11-25T10:30:00+01:00 (or with Z for UTC), without quotation marks
doors-kind-date-remedy = write it like 2026-11-25, without quotation marks or time
doors-empty = is empty
doors-empty-remedy = fill it in or leave the key out
doors-long = is longer than { $most } bytes
doors-long-remedy = shorten it
doors-control = has control characters
doors-control-remedy = remove them
doors-turning = has characters that turn the direction of writing (U+202A to U+202E, U+2066 to U+2069): what it shows is not what it says
doors-unseen = has characters that show nothing (such as U+200B, U+2028 or tags): two texts that look alike would not be the same
doors-turning-remedy = type it anew without them
doors-no-name = is not a name: one line of up to 120 characters without blanks around it
doors-no-name-remedy = shorten or trim it
doors-no-such = "{ $word }" is no { $what ->
        [language] language
        [phase] phase
        [attachment] kind of attachment
        [calibration-result] result of a calibration
        [lens] lens model
        [evidence] kind of evidence
        [line] reference line
        [unit] unit
        [step] step
        [rule] decision rule
        [board] kind of board
        [family] supported marker family
        [quantity] quantity
        *[role] role
    }
doors-unit = { $unit ->
        [none] {""}
        [deg-per-s] {" "}deg/s
        [mm-per-m] {" "}mm/m
        [a-turn] {" "}a turn
        *[other] {" "}{ $unit }
    }
doors-between = must lie between { $low } and { $high }{ $unit }, not { $found }
doors-between-remedy = check the unit, the decimal point and the sign
doors-above-zero = must be above zero, not { $found }{ $unit }
doors-above-zero-remedy = check the sign and the decimal point
doors-at-most = must be at most { $high }{ $unit }, not { $found }
doors-at-most-remedy = check the unit and the decimal point
doors-uncertainty = a standard uncertainty must lie between 0 and { $high }{ $unit }, not { $found }
doors-uncertainty-remedy = state one standard deviation (1 sigma) in the unit of the key's name
doors-whole-between = must be a whole number from { $low } to { $high }, not { $found }
doors-whole-between-remedy = check the number
doors-count = must have { $wanted } values, not { $found }
doors-count-remedy = write { $wanted } values in square brackets, with commas between them
doors-named-twice = "{ $name }" is named twice
doors-already = "{ $name }" is already { $key }
doors-leave-out = leave { $key } out

# Covariance matrices
doors-matrix-size = must have { $size } x { $size } values, not { $rows } x { $width }
doors-matrix-not-finite = has a value that is not finite
doors-matrix-negative = has a negative variance in row { $row }
doors-matrix-not-symmetric = is not symmetric at rows { $first } and { $second }
doors-matrix-correlation = states a correlation beyond 1 between rows { $first } and { $second }
doors-matrix-not-semidefinite = is not positive semi-definite, so that no set of errors can have it

# The job folder
doors-job-unopened = the job folder cannot be opened ({ $why })
doors-job-unopened-remedy = check the path
doors-job-is-file = is a file, not a job folder
doors-job-is-file-remedy = name the folder that holds job.toml
doors-no-job = does not exist: this is no job folder
doors-no-job-remedy = name a folder that holds job.toml, or write one
doors-no-job-renamed = rename { $file } to job.toml: a system that hides endings shows job.toml for job.toml.txt
doors-photos-none = names no photo
doors-photos-none-remedy = name the photos, or leave the key out to use all in photos/
doors-photos-many = names { $count } photos, more than { $most }
doors-split-the-job = split the job
doors-photo-once = name each photo once
doors-photos-twice = stands beside [[photo]]
doors-photos-twice-remedy = name each photo in one of the two
doors-same-file = "{ $name }" and "{ $earlier }" are the same file
doors-photos-remedy = put the photos of the bay into the folder photos/ of the job
doors-photos-no-folder = names no photos, and its folder photos/ cannot be read ({ $why })
doors-photos-unreadable = its folder photos/ cannot be read ({ $why })
doors-photos-empty = names no photos, and its folder photos/ has no jpg, jpeg, png or heic file
doors-attachment-large = is larger than { $most } MB
doors-attachment-large-remedy = keep it elsewhere, and attach an extract
doors-photos-too-many = its folder photos/ has more than { $most } pictures
doors-photo-name = the photo name { $name } is not UTF-8
doors-photo-name-remedy = rename the file
doors-card-twice = { $id } is named twice
doors-card-twice-remedy = copy the card's code again
doors-card-empty = names no id
doors-card-empty-remedy = copy the card's code, or leave the key out
doors-vin-character = has the character { $character }; digits and capital letters without I, O and Q are allowed
doors-vin-length = has { $count } characters instead of 17
doors-vin-remedy = copy the number from the vehicle again, in capital letters
doors-prerequisite-key = its key is not a name
doors-prerequisite-key-remedy = use the id of one of the set-up sheet's prerequisites
doors-reading-unused = { $quantity } has no counterpart in the photos and cannot enter the adjustment
doors-reading-no-u = states neither u nor an instrument that is known
doors-reading-no-u-remedy = add u = (one standard deviation), or instrument = laser, tape, level or alignment
doors-instrument-unknown = "{ $instrument }" has no usual uncertainty
doors-instrument-unknown-remedy = add u = (one standard deviation); { $known }
doors-instrument-unit = a { $instrument } has a usual uncertainty in { $own }, but this quantity is in { $unit }
doors-instrument-unit-remedy = add u = (one standard deviation)
doors-file-once = name each file once
doors-no-stand = names a screw, but the job has no stand file
doors-no-stand-remedy = add `stand = ...` to the job, or leave turned out
doors-no-screw = "{ $screw }" is no screw of the stand "{ $stand }"
doors-no-step = "{ $step }" is no step of the set-up sheet "{ $sheet }"
doors-no-steps-remedy = the sheet has no steps: leave step out

# Paths and models
doors-path-backslash = "{ $name }" has a backslash
doors-path-backslash-remedy = write paths with /
doors-path-turning = "{ $name }" has characters that turn the direction of writing
doors-path-turning-remedy = rename the file
doors-path-absolute = "{ $name }" is an absolute path
doors-path-absolute-remedy = write it relative to the job folder, so that the job can be moved
doors-path-outside = "{ $name }" reaches outside the job folder
doors-path-outside-remedy = keep the job's photos and attachments in its folder
doors-path-not-there = "{ $name }" does not exist in the job folder
doors-path-not-there-remedy = correct the name or add the file
doors-path-unreadable = "{ $name }" cannot be opened ({ $why })
doors-path-unreadable-remedy = check the file
doors-path-link = "{ $name }" is a link that leads outside the job folder
doors-path-no-file = "{ $name }" is not a file
doors-path-no-file-remedy = name a file
doors-no-model = is neither a file nor one of the models
doors-no-model-remedy = give a path or one of: { $names }
doors-no-model-guess = did you mean "{ $guess }"? Otherwise give a path or one of: { $names }
doors-not-found = no { $kind } "{ $name }" is found in the job folder { $folder }, the embedded models
doors-not-found-either = no { $kind } "{ $name }" is found in the job folder { $folder }, { $others }, the embedded models
doors-not-found-remedy = correct the name, or put the file there
doors-not-found-guess = did you mean "{ $guess }"? Otherwise correct the name, or put the file there
doors-no-models-folder = the folder that { $said_by } names does not exist
doors-no-models-folder-remedy = correct { $said_by } or leave it out
doors-named-file = the { $kind } { $file } { $problem }

# Set-up sheets
doors-datum-role = "{ $carrier }" has the role { $role }
doors-datum-role-remedy = name a marker holder on the vehicle or the floor: nothing is measured from a target or card
doors-which-target = does not say which target is meant: the kit "{ $kit }" has { $targets }
doors-which-target-remedy = add target = "{ $target }" or another of them
doors-kit-no-target = concerns the target, but the kit "{ $kit }" has no marker holder of role target
doors-kit-no-target-remedy = name the kit that the stand belongs to
doors-no-carrier = "{ $name }" is no { $what ->
        [target] marker holder of role target
        *[any] marker holder
    } of the kit "{ $kit }"
doors-not-in-photos = { $quantity } cannot be seen in photos
doors-not-in-photos-remedy = add evidence = "reading": the job's reading then decides
doors-from-no-point = { $quantity } is not measured from a point
doors-from-no-point-remedy = leave from out, or check distance, range, height_from_nose or lateral_from_nose
doors-from-axle = { $quantity } is not measured from an axle
doors-from-axle-remedy = name the nose or a datum of the sheet
doors-from-unknown = "{ $name }" is no point to measure from
doors-unit-of = { $quantity } is stated in { $unit }
doors-unit-of-remedy = leave unit out; only lengths may be stated in inches
doors-no-target-here = { $quantity } does not concern a target
doors-no-step-here = { $quantity } does not concern a target and is the same in every step
doors-sheet-no-steps = the sheet has no steps
doors-sheet-no-steps-remedy = add steps = [...] at its head, or leave step out
doors-beside-tolerance = stands beside tolerance
doors-beside-tolerance-remedy = state tolerance, or lower and upper
doors-no-limit = has no limit
doors-no-limit-remedy = add tolerance = ..., or lower = ... or upper = ... or both
doors-limits-order = { $lower } { $unit } is not below upper, { $upper } { $unit }
doors-limits-order-remedy = limits are values, not deviations
doors-nominal-outside = { $nominal } { $unit } lies outside its own limits
doors-nominal-outside-remedy = lower and upper are values like nominal, not deviations from it
doors-step-count = has { $count } steps
doors-step-count-remedy = name one to { $most }, or leave the key out
doors-step-once = name each step once
doors-probability = must be at least { $least } and below 1, not { $found }
doors-probability-remedy = 0.95 is the usual value: what is decided by less is not called proven
doors-datum-standard = "{ $name }" is a point that every sheet has
doors-other-name = choose another name
doors-name-taken = "{ $name }" is already the name of { $key }
doors-id-taken = "{ $id }" is already the id of { $key }
doors-other-id = choose another id
doors-no-check = has no check
doors-no-check-remedy = add a [[check]] with quantity, nominal and tolerance
doors-check-twice = { $quantity } is already checked by { $key }
doors-check-twice-remedy = keep one of the two, or let them differ in from, target, step or reference_line
doors-waived-and-checked = { $quantity } is waived here but checked by { $key }
doors-waived-and-checked-remedy = keep the check or the waiver
doors-waived-twice = { $quantity } is already waived by { $key }
doors-waived-twice-remedy = keep one

# Stands, kits, boards and cameras
doors-screw-count = has { $count } screws
doors-screw-count-remedy = describe one to { $most }, each below a line [[screw]]
doors-screw-twice-remedy = give each screw a name of its own
doors-screw-quantity = { $quantity } is no figure of a stand that photos measure
doors-screw-quantity-remedy = name what the screw changes: yaw, pitch, roll, height, lateral_offset, distance
doors-screw-unit = { $quantity } is measured in { $unit }
doors-screw-unit-remedy = write { $key }
doors-screw-nothing = is nothing
doors-screw-nothing-remedy = write what one turn clockwise changes, negative where it makes it smaller
doors-kit-no-carrier = has no marker holder
doors-kit-no-carrier-remedy = add a [[carrier]] with its markers
doors-on-centreline = is for a nose mark, but this marker holder's role is { $role }
doors-on-centreline-remedy = leave it out here
doors-carrier-no-marker = has no marker
doors-carrier-no-marker-remedy = add a [[carrier.marker]] below it
doors-card-ids = { $id } on a marker holder of role { $role }: ids { $first } to { $last } are for job cards and for nothing else
doors-card-ids-remedy = use a marker with another id
doors-size-twice = stands beside size_mm
doors-size-twice-remedy = state one of the two
doors-unit-vector = must be a unit vector, but its length is { $length }
doors-unit-vector-remedy = divide its values by its length
doors-axes-square = must be square to right, but the angle between them is { $angle } deg
doors-axes-square-remedy = correct the direction that is wrong
doors-carrier-name-taken = "{ $name }" is already the name of carrier[{ $carrier }], line { $line }
doors-carrier-name-taken-remedy = give each marker holder its own name
doors-role-taken = { $role } is already the role of carrier[{ $carrier }], line { $line }
doors-role-taken-remedy = one marker holder for each wheel, for each wheel arch and for the nose
doors-marker-id-taken = marker id { $id } is already used by { $path }, line { $line }
doors-marker-id-taken-remedy = give each marker of the kit its own id
doors-same-centre = is also the centre of marker { $id }
doors-same-centre-remedy = measure where this marker sits
doors-no-layout = is not a layout file ({ $why })
doors-layout-remedy = survey the kit again, or leave `layout` out of the kit file
doors-layout-other-kit = belongs to another kit file, or the kit file was changed after the survey
doors-layout-no-marker = marker id { $id } is not in the kit
doors-layout-twice = marker id { $id } is listed twice
doors-board-ids = { $columns } x { $rows } markers from id { $first } run to { $last }, but the family ends at { $end }
doors-board-ids-remedy = start at a smaller id or print fewer markers
doors-focal-lengths = the two focal lengths differ by more than a fifth, which no camera with square pixels does
doors-focal-lengths-remedy = check both numbers
doors-focal = { $found } cannot be a focal length in pixels for a picture { $side } px wide{ $perhaps ->
        [millimetres] {" "}(is it in mm?)
        *[wrong] {""}
    }
doors-focal-remedy = state it in pixels of the stored picture, or fit the camera
doors-camera-covariance-remedy = it runs over focal_px, centre_px, distortion of { $model }: fit the camera again or leave it out
doors-distortion-foreign = does not belong to { $model } beside { $beside }
doors-distortion-foreign-remedy = leave it out, or state another model
doors-distortion-count = must have { $wanted } values for { $model }, not { $found }
doors-distortion-count-remedy = write { $terms } (0.0 for those not used)

# What a set-up sheet asks for, a sentence for each check
doors-asks = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}a reading decides, not the photos
        [either] {"; "}the photos decide where the kit has a mark on that arch, else a reading
        *[photos] {""}
    }.
doors-asks-by = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}a reading decides, not the photos
        [either] {"; "}the photos decide where the kit has a mark on that arch, else a reading
        *[photos] {""}
    } (tolerance: { $basis }).
doors-asks-in-step = In step { $step }: { $asked }
doors-asks-in-every-step = In every step: { $asked }
doors-asks-not = Not checked: { $quantity }, because { $because }
doors-asks-credentials = Every photo that counts bears content credentials (C2PA) of a trusted signer, and lists no edit
doors-anchors-not-built-in = this program was built without content credentials: leave out --credential-anchors, or use a program built with the feature credentials
doors-anchors-unreadable = { $file } cannot be read ({ $why }): name a file of certificates (PEM)
doors-anchors-no-certificate = { $file } holds no certificate that can be read: name a file of certificates (PEM), each from BEGIN CERTIFICATE to END CERTIFICATE
doors-asks-distance = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } is in front of { $from ->
        [nose] the nose
        [front_axle] the front axle
        [rear_axle] the rear axle
        *[datum] the point "{ $point }"
    }, measured along { $line ->
        [rear_axle_normal] the normal to the rear axle
        [thrust_line] the thrust line
        *[centreline] the vehicle's centreline
    }
doors-asks-range = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } is away from { $from ->
        [nose] the nose
        [front_axle] the front axle
        [rear_axle] the rear axle
        *[datum] the point "{ $point }"
    }, in a straight horizontal line
doors-asks-lateral = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } lies beside { $line ->
        [rear_axle_normal] the normal to the rear axle
        [thrust_line] the thrust line
        *[centreline] the vehicle's centreline
    } (left is positive)
doors-asks-lateral-from = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } lies beside { $from ->
        [nose] the nose
        [front_axle] the front axle
        [rear_axle] the rear axle
        *[datum] the point "{ $point }"
    } (left is positive)
doors-asks-height = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } is above the floor
doors-asks-height-from = The middle of { $which ->
        [named] "{ $target }"
        *[one] the target
    } is above { $from ->
        [nose] the nose
        [front_axle] the front axle
        [rear_axle] the rear axle
        *[datum] the point "{ $point }"
    } (below is negative)
doors-asks-yaw = { $which ->
        [named] "{ $target }"
        *[one] The target
    } is turned against { $line ->
        [rear_axle_normal] the normal to the rear axle
        [thrust_line] the thrust line
        *[centreline] the vehicle's centreline
    } (to the vehicle's left is positive; 0 is square)
doors-asks-pitch = { $which ->
        [named] "{ $target }"
        *[one] The target
    } is tilted (top away from the vehicle is positive; 0 is plumb)
doors-asks-roll = { $which ->
        [named] "{ $target }"
        *[one] The target
    } is off level (vehicle's right side down is positive)
doors-asks-sides = The side ranges to the rear wheels differ, left minus right
doors-asks-other = { $quantity }
doors-wanted-both = { $nominal }, from { $low } to { $high }
doors-wanted-least = { $nominal }, at least { $low }
doors-wanted-most = { $nominal }, at most { $high }
doors-wanted-open = { $nominal }, without a limit
doors-value-mm = { $value } mm
doors-value-inches = { $inches } in ({ $value } mm)
doors-value-degrees = { $value } deg

# What is contradictory or unusual in a set-up sheet
doors-doubt-no-prerequisite = The sheet asks for no prerequisite. Are tyres, load and steering of no account?
doors-doubt-thrust-line = Squareness against the thrust line is asked for more closely than { $least } deg: wheel plates seat within about { $seat } deg, so this takes photos before and after half a wheel turn, or the centreline as reference.
doors-doubt-no-room = The stand is to be { $distance } mm in front of the nose, but only { $free } mm are asked to be free there: stand and person need some { $room } mm more.
doors-doubt-step = No check belongs to the step "{ $step }" alone: what makes it another step?
doors-doubt-range-short = The straight-line distance of { $range } mm is shorter than the offset of { $offset } mm.
doors-doubt-range = Distance and offset make a straight line of { $least } to { $most } mm, but { $low } to { $high } mm are asked for.
doors-doubt-sides = A stand turned by { $turn } deg makes side ranges that differ by { $least } to { $most } mm, left minus right; { $asked } mm are asked for. Is the sign the right one?
doors-doubt-nose = Height and height above the nose put the nose { $nose } mm above the floor. Is that so?
doors-doubt-nominal = { $quantity }: { $nominal } { $unit ->
        [deg] deg
        *[mm] mm
    } is unusual ({ $low } to { $high } { $unit ->
        [deg] deg
        *[mm] mm
    } is common).{ $hint ->
        [inches] {" "}Are inches meant? Then add unit = "in".
        *[none] {""}
    }
doors-doubt-tolerance = { $quantity }: a tolerance of +-{ $half } { $unit ->
        [deg] deg
        *[mm] mm
    } is unusual (+-{ $low } to +-{ $high } { $unit ->
        [deg] deg
        *[mm] mm
    } is common).
doors-doubt-middle = { $quantity }: the nominal is not in the middle of its limits. Is that meant?

# Photos that cannot be read
doors-photo-open = cannot read { $name ->
        [none] the photo
        *[named] photo { $name }
    }: { $why }
doors-photo-no-file = it is no file
doors-photo-empty = { $name ->
        [none] the photo
        *[named] photo { $name }
    } is empty (0 bytes): copy it from the camera again
doors-photo-bytes = { $name ->
        [none] the photo
        *[named] photo { $name }
    } has { $bytes } bytes, more than { $most }: give the camera's own JPEG
doors-photo-pixels = { $name ->
        [none] the photo
        *[named] photo { $name }
    } states { $width } x { $height } pixels, more than { $most } in all: give the camera's own photo
doors-photo-cut = { $name ->
        [none] the photo
        *[named] photo { $name }
    } is cut off ({ $detail }): copy it from the camera again
doors-photo-damaged = { $name ->
        [none] the photo
        *[named] photo { $name }
    } is damaged ({ $detail }): copy it from the camera again
doors-photo-unsupported = { $name ->
        [none] the photo
        *[named] photo { $name }
    } is { $what }, which is not decoded: save it as an ordinary JPEG at full size
doors-photo-foreign = { $name ->
        [none] the photo
        *[named] photo { $name }
    } is { $what ->
        [avif] an AVIF picture
        [heic] a HEIC picture, which this build does not decode
        [raw] a raw picture
        [video] a video
        [tiff] a TIFF or raw picture
        [gif] a GIF picture
        [bmp] a BMP picture
        [jxl] a JPEG XL picture
        [jp2] a JPEG 2000 picture
        [jpeg] a JPEG picture whose second marker is damaged
        [png] a PNG picture that was altered as if it were text
        [pdf] a PDF document
        [zip] a ZIP archive or office document
        [gzip] a gzip archive
        [ps] a PostScript document
        [qoi] a QOI picture
        [pgm] a PGM picture
        [ppm] a PPM picture
        [webp] a WebP picture
        [text] a text file
        *[other] of no known picture format
    }: { $remedy ->
        [convert] convert it to JPEG at full size, keeping its EXIF
        [heic] set the phone's camera to "most compatible" (JPEG) or convert the picture to JPEG at full size, keeping its EXIF
        [still] give a still photo, JPEG, PNG or HEIC
        [copy] copy the photo from the camera again
        [binary] copy the photo in binary mode again
        *[photo] give a photo, JPEG, PNG or HEIC
    }

# What a photo's decoder found
doors-fault-pixels = it states { $width } x { $height } pixels
doors-fault-size-changed = its size changed while it was decoded
doors-fault-no-size = it states no size
doors-fault-marker = marker FF{ $marker } out of place near byte { $at }
doors-fault-early = picture data before the frame header
doors-fault-restarts = { $found } restart markers where its size needs { $wanted }
doors-fault-no-data = it holds no picture data
doors-fault-short-header = its frame header is too short
doors-fault-two-headers = it has two frame headers
doors-fault-sampling = its frame header states a sampling factor of zero
doors-fault-no-marker = no marker at byte { $at }
doors-fault-no-length = segment FF{ $marker } states no length at byte { $at }
doors-fault-turn = restart marker out of turn at byte { $at }
doors-fault-jpeg-end = the JPEG ends at byte { $at } without its end marker
doors-fault-missing = picture data are missing
doors-fault-left-over = { $bytes } bytes of picture data are left over
doors-fault-parts = only { $used } of { $count } parts of its picture data fit
doors-fault-rows = its rows do not fit the size that it states
doors-fault-heic-pixels = { $coded } pixels are coded where { $stated } are stated
doors-fault-tiles = { $found } tiles where { $rows } x { $columns } are stated
doors-fault-uncovered = its tiles do not cover it
doors-fault-heic-box = the HEIC file ends at byte { $end }, within the box at byte { $at }
doors-fault-heic-early = the HEIC file ends early
doors-variant-heic = a HEIC picture
doors-variant-heic-by = a HEIC picture made by { $what }
doors-variant-heic-with = a HEIC picture with { $what }
doors-variant-jpeg = { $kind ->
        [lossless] a lossless JPEG
        [hierarchical] a hierarchical JPEG
        *[arithmetic] a JPEG with arithmetic coding
    }
doors-variant-bits = a JPEG with { $bits } bits a sample
doors-variant-scans = a JPEG with reduced colour and a scan for each component
doors-variant-components = a JPEG with unusual components ({ $what })
doors-variant-unusual = a JPEG of an unusual kind ({ $what })
doors-variant-png-extra = a PNG with very large extra data
doors-fault-of-the-program = the program failed on the job { $job }: please report it, with the job if that is possible

# Scene files, which the renderer reads
doors-scene-value = must be from { $low } to { $high }, not { $found }
doors-scene-value-remedy = correct the value
doors-scene-photos = { $count } photos
doors-scene-photos-remedy = give 1 to { $most }, or none for the usual two
doors-scene-name-twice = the name is given twice
doors-scene-name-twice-remedy = name each photo differently
doors-scene-order = from { $from } to { $to } is the wrong way round
doors-scene-order-remedy = give the lower one first
doors-scene-things = { $count } things
doors-scene-things-remedy = keep to { $most }
doors-scene-long = is too long
doors-scene-long-remedy = keep to { $most } letters
doors-scene-no-carrier = no marker holder `{ $name }` is in the kit
doors-scene-no-photo = no photo `{ $file }` is in the scene
doors-scene-own-key = is written by `stage` itself
doors-scene-no-step = `{ $step }` is no step of the set-up sheet
doors-scene-moves = is { $found }, but the scene has { $count } moves
doors-scene-moves-remedy = write a [[move]] for each move of the stand
doors-scene-no-phase = `{ $phase }` is no phase
doors-scene-file = `{ $name }` is no plain file name
doors-scene-file-remedy = use letters, digits, - and _ and the ending .jpg
doors-scene-orientation = must be 1, 3, 6 or 8, not { $found }
doors-scene-orientation-remedy = 6 is held upright
doors-scene-not-carried = nothing is called `{ $file }`
doors-scene-not-carried-remedy = name a file that is carried
doors-scene-unknown = unknown key or word `{ $word }`
doors-scene-missing = `{ $key }` is missing
doors-scene-missing-remedy = add `{ $key } = ...`
doors-scene-kinds-remedy = see the scene format's keys and their kinds
doors-stage-read = cannot read { $path }: { $why }; check the path and its permissions
doors-stage-write = cannot write { $path }: { $why }; check the folder's permissions and free space
doors-stage-job = the scene's job keys make no valid job file: { $why }
doors-stage-compress = cannot compress photo { $photo }: { $why }; make it smaller
doors-stage-truth = cannot write the job or its truth as text: { $why }; check the scene's job keys

doors-newest-most-moves = has the stand moved { $most } times already
doors-newest-new-job = begin a new job
doors-newest-unwritten = cannot be written ({ $why })
doors-newest-make-room = make room on the disk, or allow writing there

## Gauge studies, and photos of an invented bay

doors-gauge-too-few = a gauge study needs two or more operators, parts and trials, not { $operators }, { $parts } and { $trials }
doors-gauge-uneven = every operator must read every part equally often
doors-gauge-constant =
    { $of ->
        [operators] average and range has no constant for { $count } operators: take the analysis of variance
       *[trials] average and range has no constant for { $count } trials: take the analysis of variance
    }
doors-stage-too-large = { $pixels } pixels are more than a JPEG can hold
doors-pose-nothing-seen = none of the { $photos } photos shows a marker of the kit
doors-pose-unsettled =
    { $why ->
        [first] the adjustment of { $photos } photos did not settle: the first solution does not fit the photos
        [singular] the adjustment of { $photos } photos did not settle: the equations are singular
       *[covariance] the adjustment of { $photos } photos did not settle: the covariance does not exist
    }
