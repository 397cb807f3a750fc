# The floor of a bay.
bay-title = Floor of the bay
bay-head = Floor of the bay, { $sheets ->
        [one] one sheet
       *[other] { $sheets } sheets
    }, { $photos ->
        [one] one photo
       *[other] { $photos } photos
    }
bay-basis-typed = Heights over the plane on which the wheels stand (hub height as typed). Photos know no plumb line: whether that plane is level takes a spirit level.
bay-basis-wheels = Heights over a plane parallel to the wheel centres; zero is the floor nearest to the rear wheels. Photos know no plumb line: whether that plane is level takes a spirit level.
bay-basis-sheets = No wheel plates were seen: heights over the sheets' own best plane, and no slope against the vehicle.
bay-limit =
    { $what }: { $value } ±{ $u } { $unit }, { $bound ->
        [most] at most { $limit } { $unit } required
        [least] at least { $limit } { $unit } required
       *[none] no limit in the set-up sheet
    }
bay-limit-verdict = { $figure }: { $verdict }
bay-rise = The floor { $front ->
        [up] rises by { $front_deg } deg ({ $front_mm } mm/m) to the front
        [down] falls by { $front_deg } deg ({ $front_mm } mm/m) to the front
       *[flat] does not rise to the front
    } and { $left ->
        [up] rises by { $left_deg } deg ({ $left_mm } mm/m) to the left
        [down] falls by { $left_deg } deg ({ $left_mm } mm/m) to the left
       *[flat] does not rise to the left
    }.
bay-twist = The four wheel centres are twisted by { $twist } mm.
bay-column-sheet = Sheet
bay-column-ahead = In front of the rear axle
bay-column-left = To the left
bay-column-height-mm = Height, mm
bay-column-off-plane-mm = Off the plane, mm
bay-column-height = Height, 95 %
bay-column-off-plane = Off the plane
bay-column-rise = Own rise, front / left
bay-map = Heights of the floor from above
bay-map-written = Map: { $file }
bay-foot = Between the sheets the map is interpolated. The vehicle maker's service information and local rules govern; lasers and lifted vehicles need their own precautions.
