verdict-word =
    { $verdict ->
        [within] within tolerance
        [outside] outside tolerance
        [not_proven] not proven
       *[retake] retake
    }
verdict-grade =
    { $grade ->
        [pass] pass
        [conditional_pass] conditional pass
        [conditional_fail] conditional fail
       *[fail] fail
    }

# Whole sentences, one behind the other.
verdict-sentences = { $first } { $then }
verdict-either-two = { $first } or { $second }
verdict-either-three = { $first }, { $second } or { $third }
verdict-mm = { $x } mm
verdict-degrees = { $x } deg
verdict-plus-minus-mm = ±{ $x } mm
verdict-plus-minus-degrees = ±{ $x } deg
# What a camera signed about a photo's bytes.
verdict-credentials-by =
    { $state ->
        [trusted] valid, signed by { $signer }, for whom a trust anchor vouches
        [unknown_signer] valid, signed by { $signer }, for whom no trust anchor vouches
        [expired] unaltered since { $signer } signed, whose certificate is not valid at the time that is proven
       *[revoked] unaltered since { $signer } signed, whose certificate was revoked
    }
verdict-credentials-broken = broken: { $failures }
verdict-credentials-nameless = somebody without a name
verdict-credentials-count =
    { $state ->
        [trusted] { $count } valid and trusted
        [unknown_signer] { $count } valid, signer unknown
        [expired] { $count } with a certificate out of its time
        [revoked] { $count } with a revoked certificate
        [broken] { $count } broken
       *[none] { $count } without any
    }
verdict-credentials-counts = { $parts }

verdict-quantity =
    { $quantity ->
        [distance] distance
        [range] straight-line distance
        [lateral_offset] centring
        [lateral_from_nose] centring on the nose mark
        [height] height
        [height_from_nose] height above the nose mark
        [yaw] squareness
        [pitch] tilt
        [roll] level
        [side_range_difference] side ranges, left minus right
        [side_range_left] left side range
        [side_range_right] right side range
        [rear_toe_left] rear toe, left
        [rear_toe_right] rear toe, right
        [front_toe_left] front toe, left
        [front_toe_right] front toe, right
        [thrust_angle] thrust angle
        [steering_angle] steering angle
        [plate_plumb_left] rear left plate plumb
        [plate_plumb_right] rear right plate plumb
        [plate_plumb_front_left] front left plate plumb
        [plate_plumb_front_right] front right plate plumb
        [camber_left] rear left camber
        [camber_right] rear right camber
        [camber_front_left] front left camber
        [camber_front_right] front right camber
        [rear_track] rear track
        [wheelbase] wheelbase
        [setback] setback
        [arch_height_front_left] front left arch height
        [arch_height_front_right] front right arch height
        [arch_height_rear_left] rear left arch height
        [arch_height_rear_right] rear right arch height
        [ride_height] ride height, mean of four arches
        [body_pitch] tilt of the body over its wheels
        [target_tilt_gravity] target tilt by spirit level
        [target_level_gravity] target level by spirit level
       *[other] { $quantity }
    }
verdict-line =
    { $line ->
        [rear_axle_normal] the normal to the rear axle
        [thrust_line] the thrust line
       *[centreline] the vehicle's centreline
    }

# Bodies of the bay: within a sentence, at its beginning, as a label.
verdict-body =
    { $role ->
        [target] the stand
        [rear_left_wheel] the rear left wheel plate
        [rear_right_wheel] the rear right wheel plate
        [front_left_wheel] the front left wheel plate
        [front_right_wheel] the front right wheel plate
        [floor] the floor sheet
        [nose] the nose mark
        [rear_left_arch] the rear left arch mark
        [rear_right_arch] the rear right arch mark
        [front_left_arch] the front left arch mark
        [front_right_arch] the front right arch mark
        [vehicle] the vehicle
       *[card] the job card
    }
verdict-body-first =
    { $role ->
        [target] The stand
        [rear_left_wheel] The rear left wheel plate
        [rear_right_wheel] The rear right wheel plate
        [front_left_wheel] The front left wheel plate
        [front_right_wheel] The front right wheel plate
        [floor] The floor sheet
        [nose] The nose mark
        [rear_left_arch] The rear left arch mark
        [rear_right_arch] The rear right arch mark
        [front_left_arch] The front left arch mark
        [front_right_arch] The front right arch mark
        [vehicle] The vehicle
       *[card] The job card
    }
verdict-body-label =
    { $role ->
        [target] stand
        [rear_left_wheel] rear left wheel plate
        [rear_right_wheel] rear right wheel plate
        [front_left_wheel] front left wheel plate
        [front_right_wheel] front right wheel plate
        [floor] floor sheet
        [nose] nose mark
        [rear_left_arch] rear left arch mark
        [rear_right_arch] rear right arch mark
        [front_left_arch] front left arch mark
        [front_right_arch] front right arch mark
        [front_axle] front axle
        [rear_axle] rear axle
        [vehicle] vehicle
       *[card] job card
    }
# Where a kit has several of a kind: with its own name.
verdict-body-own = { $body } “{ $name }”
verdict-stand-before = { $stand } (before it was moved)
verdict-stand-after = { $stand } (after move { $move })
verdict-stand-step = { $stand } (step { $step })

verdict-budget-corners = noise of the marker corners in the photos
verdict-budget-calibration = calibration of the camera
verdict-budget-focal = focal length of each photo
verdict-budget-centre = principal point of each photo
verdict-budget-edge = edge offset of each photo
verdict-budget-turn = turn of the camera while each photo was read row by row
verdict-budget-layout = places and turns of the markers on their holders
verdict-budget-scale = sizes of the printed markers
verdict-budget-seating = seating: { $body }
verdict-budget-wheelbase = typed wheelbase
verdict-budget-nose = typed nose position
verdict-budget-hub-height = typed hub height
verdict-budget-datum = offset of the datum “{ $datum }”
verdict-budget-reading = reading: { $quantity }

verdict-without-body = without { $body }
verdict-without-photo = without { $photo }
verdict-other-lens-model = with the other lens model

# One sentence that says why a job has its verdict.
verdict-why-within =
    { $checks ->
        [one] The one check is proven to be within tolerance.
       *[other] All { $checks } checks are proven to be within tolerance.
    }
verdict-why-within-simple =
    { $checks ->
        [one] The one check's measured value is within tolerance. The set-up sheet's rule takes no account of its uncertainty.
       *[other] The measured values of all { $checks } checks are within tolerance. The set-up sheet's rule takes no account of their uncertainty.
    }
verdict-why-within-likely =
    { $checks ->
        [one] The one check is within tolerance with a probability of at least { $least } %. That is what the set-up sheet's rule asks for, and too little for a proof.
       *[other] All { $checks } checks are within tolerance, each with a probability of at least { $least } %. That is what the set-up sheet's rule asks for, and too little for a proof.
    }
verdict-why-outside = Proven to be outside tolerance: { $quantities }.
verdict-why-outside-simple = Measured outside tolerance: { $quantities }. The set-up sheet's rule takes no account of the uncertainty.
verdict-why-outside-likely = Outside tolerance with a probability of at least { $least } %: { $quantities }. That is what the set-up sheet's rule asks for, and too little for a proof.
verdict-why-outside-anyway = Proven to be outside tolerance whatever the cause of that: { $quantities }.
verdict-why-retake = Could not be measured: { $quantity }. { $reason }
verdict-why-retake-bare = Not every check could be measured.
verdict-why-not-proven = Not proven: { $quantity }. { $reason }
verdict-why-no-checks = The sheet has no checks: nothing was proven.
verdict-why-nothing = Nothing could be measured. { $reason }
verdict-no-value = There is no value.

verdict-kit-serial = serial number { $serial }
verdict-kit-overdue = survey overdue since { $due }: survey the kit again
verdict-kit-due = survey due { $due }
verdict-kit-due-unknown = survey due { $due } (not checkable: no time is stated)
verdict-kit-both = { $serial }, { $survey }

verdict-bay-slope = floor slope against the wheels' plane
verdict-bay-flatness = unevenness between neighbouring sheets
verdict-bay-ahead = free in front of the nose, to the farthest sheet
