# Printed kits and boards.
print-kit-title = Marker kit { $kit }
print-board-title = Camera board
print-folio = baywitness · { $name } · page { $page } of { $count }
print-role =
    { $role ->
        [target] target stand
        [rear_left_wheel] rear left wheel plate
        [rear_right_wheel] rear right wheel plate
        [front_left_wheel] front left wheel plate
        [front_right_wheel] front right wheel plate
        [floor] floor sheet
        [nose] nose mark
        [rear_left_arch] mark on the rear left wheel arch
        [rear_right_arch] mark on the rear right wheel arch
        [front_left_arch] mark on the front left wheel arch
        [front_right_arch] mark on the front right wheel arch
       *[card] job card
    }
print-datum-of =
    { $kind ->
        [target] the aim point: the middle of the target face
        [floor] the centre of the first marker; x-y is the floor
        [nose] the middle of the sensor's cover, or the foremost point that distances are measured from
        [card] the middle of the card
        [arch] the lower edge of the wheel arch, straight above the wheel's centre
       *[wheel] the hub datum: where the wheel's spin axis meets the plane of its outer face
    }
print-direction =
    { $way ->
        [forward] forward
        [rearward] rearward
        [left] to the vehicle's left
        [right] to the vehicle's right
        [up] up
        [down] down
       *[nowhere] nowhere
    }
print-direction-turned = { $first }, turned { $turn }° { $second }
print-up = UP
print-up-is = UP = { $direction }
print-place = x { $x }  y { $y }  z { $z }
print-ruler =
    { $way ->
        [up] up: measure this: { $length } mm; enter what you read
       *[right] right: measure this: { $length } mm; enter what you read
    }
print-ruler-short = up: measure this: { $length } mm
print-view-looks = Looks { $direction }
print-view-note =
    { $side ->
        [behind] plane { $depth } mm behind the datum · top of the page = { $top }
       *[front] plane { $depth } mm in front of the datum · top of the page = { $top }
    }
print-view-plan = Plan, seen from above
print-view-plan-note = dimensions are x (forward) and y (left) · top of the page = forward
print-view-scale = { $title } · 1:{ $scale }
print-assembly-title = { $carrier }: where the sheets go
print-assembly-note = All dimensions in mm from the datum, { $datum }; seen face on, right and up are positive. Align the short lines at the edges of each sheet with pencilled lines through its centre.
print-datum = datum
print-column-page = page
print-column-ids = ids
print-column-square = black square, right x up
print-column-centre-x = centre x
print-column-looks = printed face looks
print-size = { $right } x { $up } mm
print-sheet-title = { $carrier } · id { $ids }
print-sheet-line = black square { $right } x { $up } mm · printed face looks { $direction } · sheet centre at { $place } mm from the datum
print-strip = { $up } · id { $ids } · { $carrier }
print-wide-note = This marker is as wide as the paper, so the upright ruler is short: a quick check. Enter the reading of the { $length } mm ruler on page 1, or measure the black square itself with a caliper.
print-board-note = 100 %, matt, glued flat on a stiff plate
print-board-foot = baywitness · camera board
print-board-markers = camera board, { $columns } x { $rows } markers 36h11, ids { $first } to { $last } from left to right and top to bottom, size { $size } mm, gap { $gap } mm
print-board-chessboard = camera board, chessboard with { $across } x { $down } inner corners, squares of { $square } mm
print-pages = { $first } to { $last }
print-serial = serial { $serial }
print-kind = markers of family 36h11 · { $paper } paper
print-survey-due = survey due { $date }
print-step-print-title = Print
print-step-print = at 100 % ("actual size"; no "fit to page"), on matt paper of 120 g/m² or more or on matt film, with a laser printer. One run, one printer, one tray: sheets of one run share their scale.
print-step-measure-title = Measure
print-step-measure = the two rulers on this page with a caliper, from the middle of one end line to the middle of the other, to 0.05 mm. Check two more pages. Enter what you read: baywitness sheet KIT --measured-mm RIGHT,UP --corrected FILE writes the kit's file with the sizes as printed. Verify jobs with that file; print from the first one.
print-step-glue-title = Glue
print-step-glue = on flat, stiff, matt plates (aluminium composite of 4 mm; thin sheet metal, all alike, for the floor): pencil lines through each sheet's centre as the drawings say, spray adhesive over the whole back, short edge lines on the pencil lines, no bubbles. A plate that a straight edge shows to be hollow by more than 0.2 mm is not flat.
print-step-white-title = Keep the white
print-step-white = margin of one cell around each black square. Cut on the crop marks or outside, never into the margin; no tape, no gloss, no laminate that mirrors lamps.
print-step-off-title = Take off
print-step-off = the nose mark and every metal plate before the calibration runs: what is in a sensor's view changes what it sees.
print-step-keep-title = Keep in order
print-step-keep = paper grows and shrinks by 0.1 to 0.3 % with humidity: measure again when seasons change and enter it. A kit that was dropped or bent is surveyed again before it is used.
print-caution = The vehicle maker's service information and local rules govern. This work is for trained people; lasers and lifted vehicles need their own precautions. baywitness documents the procedure and does not replace it.
print-assumes = The kit's file assumes sheet centres within { $layout } mm of the drawings, sheets straight within { $turn } degrees and sizes within { $scale } % (one standard deviation each). Work to half of that.
print-assumes-surveyed = The kit's file assumes sheet centres as surveyed and sizes within { $scale } % (one standard deviation). Work to half of that.
print-column-holder = marker holder
print-column-role = what it is
print-column-drawing = drawing, page
print-column-sheets = sheets, page
print-wrote = wrote { $file }: print at 100 % on { $paper } paper, then measure the check rulers
print-wrote-corrected = wrote { $file }: printed at { $right } % to the right and { $up } % up

# Why nothing was printed
print-two-sides = { $width } x { $height }
print-marker-too-large = marker { $id } of { $holder } needs { $needs } mm with its white margin, but { $paper } paper offers { $offers } mm: { $remedy }
print-board-too-large = the board needs { $needs } mm with its white margin, but { $paper } paper offers { $offers } mm: { $remedy }
print-smaller-marker = give it a size_mm of { $size } or less
print-larger-paper-or-marker = print with --paper { $paper }, or give it a size_mm of { $size } or less
print-smaller-board = make the board smaller by a factor of { $factor }
print-larger-paper-or-board = print with --paper { $paper }, or make the board smaller by a factor of { $factor }
print-unknown-marker = marker { $id } is not in family { $family }, whose ids run from 0 to { $last }: give it another id
print-the-marker = marker { $id }
print-of-the-board =
    { $what ->
        [marker] the board's marker
        [gap] the board's gap
       *[square] the board's square
    }
print-bad-size = { $what } has size { $size } mm: give its size in millimetres, above zero
print-no-markers = kit { $kit } has no marker to print: add a [[carrier.marker]]
print-reading-off =
    { $direction ->
        [right] the ruler to the right reads { $read } mm instead of { $nominal } mm: more than { $limit } % off is a misreading or a printer that scales to fit; print at 100 % and read both rulers again
       *[up] the upright ruler reads { $read } mm instead of { $nominal } mm: more than { $limit } % off is a misreading or a printer that scales to fit; print at 100 % and read both rulers again
    }
print-unknown-paper = unknown paper "{ $name }": use a4, a3 or letter
print-no-pdf = cannot write the PDF: { $why }
print-font-damaged = an embedded font is damaged; build the program again
