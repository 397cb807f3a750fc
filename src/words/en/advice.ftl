# Why a check has no value.
advice-not-seen = No usable photo shows { $body }.
advice-nothing-measured = Too few photos can be used to measure anything.
advice-no-floor = Neither floor sheets nor both rear wheel plates were seen, so there is no floor.
advice-no-floor-height = No floor sheet was seen and vehicle.floor_below_hub_mm is not given.
advice-no-centreline = There is no centreline: show plates on both front wheels, or a nose mark that is on_centreline.
advice-no-wheelbase = No front plates were seen and vehicle.wheelbase_mm is not given.
advice-no-nose = No nose mark was seen and vehicle.nose_from_rear_axle_mm is not given.
advice-no-datum = The datum is on a marker holder that the kit does not have.
advice-plates-are-the-floor = The plates define the floor here; floor sheets are needed.
advice-leans = Askew against the vehicle by more than a degree: { $body }. A point measured from it in the vehicle's directions is not where it seems. Fix the mark upright and square to the vehicle, or measure from a mark nearer to the point.
advice-reading-only = Photos can't tell; it takes a reading, which names target and step where there are several.
advice-degenerate = The geometry is degenerate.

# Why a check is not decided.
advice-too-small = These photos and this kit cannot prove so small a tolerance. This is not a fail. The uncertainty is { $uncertainty }, and no value could be proven unless it is below { $needed }; it takes { $more }.
advice-too-unsure = The set-up sheet's rule decides by the measured value alone, which presumes an uncertainty no larger than the tolerance (JCGM 106:2012, 8.2). This is not a fail. The uncertainty is { $uncertainty }, the tolerance { $tolerance }; it takes { $more }.
advice-too-unsure-likely = The set-up sheet's rule decides by less than 95 % probability, which is done only where the uncertainty is no larger than the tolerance. This is not a fail. The uncertainty is { $uncertainty }, the tolerance { $tolerance }; it takes { $more }.
advice-too-near = The value is too near the limit for its uncertainty of { $uncertainty }. One more photo, or a set-up nearer to the nominal, decides it.
advice-more-wider = more photos from wider apart
advice-more-or-plates = more photos from wider apart, or plates on all four wheels
advice-more-with-plates = more photos from wider apart, in which the plates on all four wheels are seen
advice-untrusted = Not to be trusted while “{ $finding }” stands.
advice-untrusted-outside = Not to be trusted while “{ $finding }” stands: what is outside as measured need not be so.
advice-outside-anyway = Outside whatever the cause of that, while “{ $finding }” stands.
advice-light-changed = The phone changed the photos' light; left alone (HDR off, or a raw picture developed plainly) they would give { $uncertainty } where it is { $now } now.
advice-one-more-photo = One more photo would decide it at this value: { $where }.

advice-next-photo =
    { $side ->
        [middle] from { $ahead } m in front of the nose, in the middle, camera { $up } m above the floor, showing stand and wheel plates
        [left] from { $ahead } m in front of the nose, { $aside } m to the vehicle's left (as the vehicle faces), camera { $up } m above the floor, showing stand and wheel plates
       *[right] from { $ahead } m in front of the nose, { $aside } m to the vehicle's right (as the vehicle faces), camera { $up } m above the floor, showing stand and wheel plates
    }
advice-next-photo-in-step =
    { $side ->
        [middle] from { $ahead } m in front of the nose, in the middle, camera { $up } m above the floor, showing stand and wheel plates, with the stand as in step { $step }
        [left] from { $ahead } m in front of the nose, { $aside } m to the vehicle's left (as the vehicle faces), camera { $up } m above the floor, showing stand and wheel plates, with the stand as in step { $step }
       *[right] from { $ahead } m in front of the nose, { $aside } m to the vehicle's right (as the vehicle faces), camera { $up } m above the floor, showing stand and wheel plates, with the stand as in step { $step }
    }

# Why nothing could be measured.
advice-no-photo = The job has no photo.
advice-no-usable-photo = No photo can be measured; of the first one: { $why }.
advice-one-photo = Only one photo can be measured, and nothing could contradict it. Take at least one more from the other side.
advice-one-photo-because = Only one photo can be measured, and nothing could contradict it.
advice-photo-cannot = { $photo } can't be measured: { $why }.
advice-not-linked = The photos share no marker holder. Take them so that each shows the stand and the wheel plates.
advice-nothing-seen =
    { $photos ->
        [one] The photo shows no marker of the kit.
       *[other] None of the { $photos } photos shows a marker of the kit.
    }
advice-not-settled = The adjustment of the photos did not settle. Take them again from other places.
advice-not-settled-with = The adjustment of the photos did not settle; without marker { $marker } ({ $name }) it does. Another print of that marker is in view, or it was moved between the photos. Remove spare prints and take the photos again.

# What a plan says of a check that its photos could not decide.
advice-plan-undetermined = { $quantity }: nothing in the photos determines it. Show the plates, floor sheets or the nose mark that it is measured from, or type the vehicle's sizes into the job.
advice-plan-corners = { $quantity }: { $percent } % of its variance comes from the corners' noise. Larger markers, or photos from nearer and wider apart, bring it down.
advice-plan-layout = { $quantity }: { $percent } % of its variance comes from where the markers sit on their holders. Survey the kit (`baywitness survey`) or glue it more exactly.
advice-plan-scale = { $quantity }: { $percent } % of its variance comes from the printed sizes. Measure the markers and enter their sizes.
advice-plan-calibration = { $quantity }: { $percent } % of its variance comes from the camera's calibration. Fit the camera again with more photos of the board.
advice-plan-focal = { $quantity }: { $percent } % of its variance comes from each photo's focal length and principal point. More photos, or ones that hold markers nearer and farther at once, fix them.
advice-plan-turn = { $quantity }: { $percent } % of its variance comes from how the hand turns while a photo is read row by row. Hold the phone still, or put it on a tripod.
advice-plan-edge = { $quantity }: { $percent } % of its variance comes from the photos' edge offset. Larger markers bring it down.
advice-plan-seating-thrust = { $quantity }: { $percent } % of its variance comes from how the plates seat on the wheels. Take the photos again after half a wheel turn, use better clamps, or let the sheet refer to the centreline, for which all four wheels carry a plate.
advice-plan-seating = { $quantity }: { $percent } % of its variance comes from how the plates and marks seat. Use better clamps; state a measured seating in the kit.
advice-plan-wheelbase = { $quantity }: { $percent } % of its variance comes from the typed wheelbase. Put plates on the front wheels.
advice-plan-nose = { $quantity }: { $percent } % of its variance comes from the typed nose position. Put a mark on the nose.
advice-plan-hub-height = { $quantity }: { $percent } % of its variance comes from the typed hub height. Lay floor sheets.
advice-plan-datum = { $quantity }: { $percent } % of its variance comes from the datum's own offset. Measure it better or choose another datum.
advice-plan-reading = { $quantity }: { $percent } % of its variance comes from a reading. Take it with a finer instrument.
advice-plan-target =
    { $side ->
        [middle] { $ahead } mm in front of the nose, in the middle, { $up } mm high
        [left] { $ahead } mm in front of the nose, { $aside } mm to the left, { $up } mm high
       *[right] { $ahead } mm in front of the nose, { $aside } mm to the right, { $up } mm high
    }

advice-bay-wrong-camera = { $photo }: { $width } x { $height } px is not the size of camera { $camera }. Name the camera that took it.
advice-bay-too-few-sheets =
    { $sheets ->
        [0] No floor sheet is joined by the photos, and three that do not lie in a row are the least. Lay more sheets, and let neighbouring photos share some.
        [one] One floor sheet is joined by the photos, and three that do not lie in a row are the least. Lay more sheets, and let neighbouring photos share some.
       *[other] { $sheets } floor sheets are joined by the photos, and three that do not lie in a row are the least. Lay more sheets, and let neighbouring photos share some.
    }
