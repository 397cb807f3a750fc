customer-title = For the customer: where the target stood
customer-page-title = For the customer: job { $job }
customer-why = Cameras and radars that help the driver are adjusted in the workshop with a target that stands in front of the vehicle. It has to stand at the right place, or the sensor learns a wrong direction. This page says where the target stood, measured from photos.
customer-answer =
    { $verdict ->
        [within] The target stood where it had to stand, in everything that was checked.
        [outside] The target did not stand where it had to stand.
        [not_proven] It is not proven that the target stood where it had to stand.
       *[retake] These photos do not prove where the target stood.
    }
customer-what = What was set up
customer-vehicle = Vehicle
customer-vin = Vehicle identification number
customer-repair-order = Repair order
customer-photos-taken = Photos taken
customer-job = Job
customer-proven = What was proven
customer-proven-simple = What was measured to be within the limits
customer-proven-likely = What is within the limits with at least { $least } % probability
customer-proven-nothing = Nothing.
customer-open = What was not proven, or is wrong
customer-open-nothing = Nothing was left open.
customer-photos = By which photos
customer-no-photo = No photo could be read.
customer-whose = Whose limits these are
customer-whose-nobody = Nobody: the set-up sheet names no source for its limits. Ask the workshop where they come from.
customer-meaning = What that means, and what it does not
customer-again = It can be checked again: whoever has the photos and the files can have them measured once more.
customer-repeats = This page repeats the file result.json, written by { $tool }. The SHA-512 of that file:
customer-void = The figures of these photos can't be trusted. The technician's report says why.
customer-held = Something has to be cleared up first. The technician's report says what.
customer-waived = { $name }: not checked. The reason given: { $because }.
customer-not-checked = { $name }: not checked.
customer-no-check = The set-up sheet asks for no check.
customer-not-seen = { $name }: the photos do not show it.
customer-not-trusted = { $name }: no figure that can be trusted.
customer-held-up = { $name }: not proven as long as that is open.
customer-within = { $figures }.
customer-outside = { $figures }: this is outside what is allowed.
customer-too-close = { $figures }: too close to call with these photos.
customer-figures = { $amount } (give or take { $u }); required: { $allowed }
customer-figure-alone = { $amount }; required: { $allowed }
customer-named = { $name }: { $figures }
customer-named-read = { $name } (read off an instrument, not seen in the photos): { $figures }
customer-no-value = no value
customer-allowed = { $nominal }, at most { $half } off
customer-quantity =
    { $quantity ->
        [distance] How far the target stood from the vehicle
        [centring] How far the target stood off to one side
        [height] How high the target stood
        [yaw] How squarely the target faced the vehicle
        [pitch] How far the target leant towards or away from the vehicle
       *[roll] How level the target stood from side to side
    }
customer-distance-from =
    { $datum ->
        [nose] How far the target stood from the nose
        [front_axle] How far the target stood from the front axle
        [rear_axle] How far the target stood from the rear axle
       *[other] How far the target stood from the point “{ $datum }”
    }
customer-with-extras = { $name } ({ $extras })
customer-photo =
    { $used ->
        [yes] Photo { $number }: { $file }
       *[no] Photo { $number }: { $file } (could not be used)
    }
customer-photo-taken =
    { $used ->
        [yes] Photo { $number }: { $file }, taken { $taken }
       *[no] Photo { $number }: { $file }, taken { $taken } (could not be used)
    }
customer-many-photos = { $count } photos. { $photos }
customer-meaning-moment = It is about the moment at which the photos were taken, and about the target's place only.
customer-meaning-not = It does not say that the adjustment itself succeeded, that the sensor works, or that the vehicle is safe.
customer-meaning-scan = The technician noted “{ $result }” as what the scan tool said. That is no part of this proof.
customer-meaning-u = “Give or take” is the measurement's own uncertainty: the true figure lies within it in 95 of 100 cases.
customer-meaning-limits = Whether the limits are the right ones for this vehicle is for the vehicle maker's service information and local rules to say; they govern.
customer-meaning-trained = The work is for trained people; this page replaces no step of the procedure. Lasers and lifted vehicles need precautions of their own.

customer-series = Repair order { $series }
customer-series-vehicle = Vehicle: { $vehicle }
customer-stands-now = Where it stands now
customer-last-counts = The last attempt of each sensor counts; earlier ones are kept.
customer-all-attempts = All attempts
customer-attempt-line =
    { $numbered ->
        [yes] Job { $job }, attempt { $number }, { $photos ->
            [one] one photo
           *[other] { $photos } photos
        }.
       *[no] Job { $job }, { $photos ->
            [one] one photo
           *[other] { $photos } photos
        }.
    }
customer-which-last = Which attempt was the last cannot be told:
customer-number-them = two state the same number and time. Number the attempts.
customer-sensor = Sensor
customer-attempt = Attempt
customer-verdict = Verdict
customer-not-stated = not stated
customer-series-only = Only the jobs that were looked at together stand here. A sensor that is missing was not looked at.
customer-series-about = It is about where each target stood when its photos were taken. It does not say that an adjustment succeeded or that a sensor works.
customer-series-own-page = Each job has a page of its own with its figures, its photos and whose limits they are.
customer-series-govern = The vehicle maker's service information and local rules govern. The work is for trained people; lasers and lifted vehicles need precautions of their own.
