# What to do at the stand with a check: a label where there is nothing to do.
moves-none-needed = none needed
moves-not-measured = not measured
moves-not-decided = not decided
moves-leave-it = leave it where it is
moves-later = nothing yet
moves-held = no move is ordered while “{ $finding }” stands: settle that first

moves-turn =
    { $way ->
        [left] Turn the stand by { $angle } deg: its end on the vehicle's left { $ends } mm towards the vehicle, its end on the vehicle's right { $ends } mm away from it.
       *[right] Turn the stand by { $angle } deg: its end on the vehicle's left { $ends } mm away from the vehicle, its end on the vehicle's right { $ends } mm towards it.
    }
moves-sideways =
    { $way ->
        [left] Move the stand { $by } mm to the vehicle's left.
       *[right] Move the stand { $by } mm to the vehicle's right.
    }
moves-along =
    { $way ->
        [away] Move the stand { $by } mm away from the vehicle.
       *[towards] Move the stand { $by } mm towards the vehicle.
    }
moves-height =
    { $way ->
        [up] Raise the target by { $by } mm.
       *[down] Lower the target by { $by } mm.
    }
moves-tilt =
    { $way ->
        [away] Tilt the target by { $angle } deg: its top { $top } mm away from the vehicle against its bottom.
       *[towards] Tilt the target by { $angle } deg: its top { $top } mm towards the vehicle against its bottom.
    }
moves-level =
    { $way ->
        [lower] Level the target by { $angle } deg: lower its end on the vehicle's right by { $end } mm, or raise the other end by as much.
       *[raise] Level the target by { $angle } deg: raise its end on the vehicle's right by { $end } mm, or lower the other end by as much.
    }
moves-side-ranges =
    { $way ->
        [longer] Turn the stand until the left side range is { $by } mm longer against the right one: its end on the vehicle's left away from the vehicle.
       *[shorter] Turn the stand until the left side range is { $by } mm shorter against the right one: its end on the vehicle's left towards the vehicle.
    }
moves-steering =
    { $way ->
        [left] Turn the steering until the front wheels point { $angle } deg further to the vehicle's left.
       *[right] Turn the steering until the front wheels point { $angle } deg further to the vehicle's right.
    }
moves-plate =
    { $way ->
        [forwards] Turn the plate { $angle } deg about its wheel's axle: its top forwards.
       *[rearwards] Turn the plate { $angle } deg about its wheel's axle: its top rearwards.
    }
moves-vehicle = Off by { $by }: { $quantity }. This is a matter of the vehicle, not of the stand.

moves-unasked = moved { $moved } unasked: { $left } back
moves-not-seen = asked { $asked }, not moved that photos could tell: { $left } to go
moves-wrong-way = asked { $asked }, moved { $moved } the wrong way: { $left } to go
moves-far-enough = asked { $asked }, moved { $moved }: far enough
moves-as-far-as-told = asked { $asked }, moved { $moved }: right as far as the photos tell
moves-more = asked { $asked }, moved { $moved }: { $left } more
moves-back = asked { $asked }, moved { $moved }: { $left } back
moves-of-check = { $quantity }: { $words }

moves-screw =
    { $amount ->
        [one] { $way ->
            [clockwise] { $turns } turn of { $screw }, clockwise
           *[counter] { $turns } turn of { $screw }, counter-clockwise
        }
       *[several] { $way ->
            [clockwise] { $turns } turns of { $screw }, clockwise
           *[counter] { $turns } turns of { $screw }, counter-clockwise
        }
    }
moves-screw-unknown = { $turns } turns of { $screw }: what they gave can't be told from these photos
moves-screw-gave = { $turns } turns of { $screw } gave { $gave } (±{ $uncertainty }): { $per_turn } a turn, where the stand file says { $stated }
moves-screw-learned =
    { $way ->
        [other] { $turns }; one turn really gives { $gives } the other way here, the stand file says { $stated }
       *[same] { $turns }; one turn really gives { $gives } here, the stand file says { $stated }
    }

# What one photo of a camera on a tripod shows, and what becomes of it.
moves-tripod-first = the first photo; the next one tells whether the stand is at rest
moves-tripod-new-place = the stand is at rest in a new place
moves-tripod-same-place = the stand stands where it did
moves-tripod-unsure = the stand may be in a new place; the next photo tells
moves-tripod-skipped = skipped: { $why }
moves-tripod-rest = nothing moved since the photo before
moves-tripod-stand = the stand moved since the photo before
moves-tripod-itself = the tripod itself was moved, or stand and vehicle at once: leave the tripod alone, the next photos count again
moves-tripod-vehicle = the vehicle moved, the floor sheets did not: its first photos no longer hold, begin a new attempt
moves-tripod-one = { $body } moved, nothing else beside the stand did: check how it sits
moves-tripod-no-stand = the stand's markers are not seen, or not the same ones as in the photo before
moves-tripod-nothing-fixed = it shows no wheel plate or floor sheet that the photo before shows too
moves-tripod-other-size = it has another size than the photo before: leave the camera's settings alone
moves-tripod-kept-first = { $photo }, after move { $move }
moves-tripod-kept-instead = { $photo } instead of the photo before
moves-tripod-older-stays = not kept, since a logged verdict rests on { $photo }
moves-tripod-already = it is { $photo } already

moves-leave-stand = Leave the stand where it is. { $reason }
moves-one-more-photo = It takes one more photo.
moves-too-few-photos =
    { $have ->
        [0] It measures within, but no photo of where the stand stands now proves it: the sheet asks for { $wanted }. { $more }
        [one] It measures within, but one photo of where the stand stands now measures and does not prove: the sheet asks for { $wanted }. { $more }
       *[other] It measures within, but { $have } photos of where the stand stands now measure and do not prove: the sheet asks for { $wanted }. { $more }
    }
moves-too-few-in-step =
    { $have ->
        [0] It measures within, but no photo of step { $step } shows the stand with the vehicle: proving it takes { $wanted }. { $more }
        [one] It measures within, but one photo of step { $step } measures and does not prove: nothing could contradict it. It takes { $wanted }. { $more }
       *[other] It measures within, but { $have } photos of step { $step } measure and do not prove: it takes { $wanted }. { $more }
    }
moves-take-more =
    { $photos ->
        [one] Leave everything where it is and take one more photo of the stand with plates and floor sheets, from another place.
       *[other] Leave everything where it is and take { $photos } more photos of the stand with plates and floor sheets, from other places.
    }
moves-counts-later =
    { $photos ->
        [one] It measures within, which counts once the stand is where it stays and one photo shows it there.
       *[other] It measures within, which counts once the stand is where it stays and { $photos } photos show it there.
    }
moves-no-place = The stand was not measured where it stands after move { $move }: no photo of that position shows it with the plates or floor sheets of the photos before. Take one that does.
moves-no-place-because = The stand was not measured where it stands after move { $move }.

moves-apart-unlinked = the attempts share no floor sheet or plate, so they cannot be compared
moves-apart-unsettled = the photos of the two attempts could not be adjusted together
moves-apart-elsewhere = { $body } stood elsewhere, by about { $mm } mm and { $degrees } deg
moves-apart-stand-unseen = the stand is not seen in both attempts
moves-apart-untold = it cannot be told whether { $body } stood the same

moves-ride-height =
    { $way ->
        [lower] The body stands { $by } mm (±{ $uncertainty }) lower than the sheet's arch heights on average.
       *[higher] The body stands { $by } mm (±{ $uncertainty }) higher than the sheet's arch heights on average.
    }
moves-body-pitch =
    { $way ->
        [down] Its nose points { $by } deg (±{ $uncertainty }) down against them, and a sensor on it with it.
       *[up] Its nose points { $by } deg (±{ $uncertainty }) up against them, and a sensor on it with it.
    }
