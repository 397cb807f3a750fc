# An effect in a sentence.
trends-direction =
    { $kind ->
        [distance] { $much ->
            [more] further away
           *[less] nearer
        }
        [height] { $much ->
            [more] higher
           *[less] lower
        }
        [lateral] { $much ->
            [more] further to the vehicle's left
           *[less] further to the vehicle's right
        }
        [yaw] { $much ->
            [more] turned, its left end nearer
           *[less] turned, its right end nearer
        }
        [pitch] { $much ->
            [more] leaning more away from the vehicle
           *[less] leaning more towards the vehicle
        }
        [roll] { $much ->
            [more] out of level, its right end lower
           *[less] out of level, its left end lower
        }
       *[other] { $much ->
            [more] more
           *[less] less
        }
    }
trends-direction-than =
    { $than ->
        [before] { $direction } than before
        [others] { $direction } than with the others
       *[required] { $direction } than required
    }
trends-factor =
    { $factor ->
        [technician] Technician
        [bay] Bay
        [setup] Set-up sheet
        [kit] Marker kit
        [vehicle] Vehicle
        [camera] Camera
        [week] Week
       *[other] { $factor }
    }
trends-subject =
    { $factor ->
        [bay] Bay { $name }
        [setup] Set-up sheet { $name }
        [kit] Marker kit { $name }
       *[other] { $name }
    }
trends-amount = { $amount } { $unit } ({ $size } tolerances)
trends-amount-tolerances = { $size } tolerances
trends-effect-shift = { $who }: { $what } is off by { $amount } ({ $way }), always to this side, also against others in the same place.
trends-effect-change = { $who }: from week { $week } on { $what } has changed by { $amount } ({ $way }).
trends-effect-sheet = { $who }: it states { $what } { $nominal } { $unit }, but its jobs' values sit around { $value } { $unit } ({ $off } tolerances off), whoever works with it: compare the sheet with its source.
trends-effect-slip = { $said } Likely typing error: { $slip }.
trends-slip =
    { $slip ->
        [sign] the sign is turned
        [inches] inches and millimetres are mixed up
        [point] the decimal point is one place off
        [swapped] two digits are swapped
       *[digit] one digit is another
    }
trends-effect-finding = { $who }: the finding { $code } was made { $seen } times where { $expected } are to be expected after the others in the same place.
trends-effect-outside = { $who }: { $what } was outside { $seen } times where { $expected } are to be expected after the others in the same place.
trends-also-outside = { $what } outside
trends-together = It cannot be told apart from { $other }: their jobs are the same.
trends-together-one =
    { $factor ->
        [setup] set-up sheet { $name }
        [kit] marker kit { $name }
        [bay] bay { $name }
        [vehicle] vehicle { $name }
        [camera] camera { $name }
       *[technician] technician { $name }
    }
trends-together-all =
    { $factor ->
        [setup] the set-up sheets that go with it
        [kit] the marker kits that go with it
        [bay] the bays that go with it
        [vehicle] the vehicles that go with it
        [camera] the cameras that go with it
       *[technician] the people that go with it
    }
trends-advice-technician-change = Something about how this person works has changed: ask what, before anything is concluded.
trends-advice-technician = Look at the photos together: a habit like this is found and mended at the stand, not in a table.
trends-advice-bay-change = Ask what was changed in this bay: a lift, the floor, marks on it, lamps.
trends-advice-bay = Check the floor (`baywitness bay`), the marks on it, and what people sight along in this bay.
trends-advice-kit = Survey the kit again (`baywitness survey`, `recheck`): a marker holder was bent, dropped or mounted otherwise.
trends-advice-setup-change = Compare the sheet's revisions: since then it asks for something else, or the vehicles differ.
trends-advice-setup = Compare every figure of the sheet with the service information that it names, then correct it and judge its jobs again.

# The page.
trends-title = Trends of { $count ->
        [one] one job
       *[other] { $count } jobs
    }
trends-period = From { $first } to { $last }.
trends-copies =
    { $count ->
        [one] One copy was
       *[other] { $count } copies were
    } counted once.
trends-not-judged =
    { $count ->
        [one] One job
       *[other] { $count } jobs
    } could not be judged when audited.
trends-unreadable =
    { $count ->
        [one] One file or line
       *[other] { $count } files or lines
    } could not be read.
trends-pseudonyms = People are pseudonyms; the results and reports that this page links to name them.
trends-unreadable-title = What could not be read
trends-percent = { $share } %
trends-share-interval = { $share } % ({ $low } to { $high } %)
trends-interval = { $value } ({ $low } to { $high })
trends-beyond-chance = What stands out beyond chance
trends-nothing = Nothing. Differences between people, bays, set-up sheets and kits below are no larger than chance makes them.
trends-effect-interval = 95 % interval: { $low } to { $high } tolerances.
trends-effect-chance =
    { $count ->
        [one] One first attempt
       *[other] { $count } first attempts
    }; chance of such a difference anywhere in an archive without any: { $chance }.
trends-one-in-a-million = less than one in a million
trends-effect-also = More frequent here too: { $others }.
trends-do = Do:
trends-effect-jobs = Its jobs, the furthest off first
trends-jobs =
    { $count ->
        [one] one job
       *[other] { $count } jobs
    }
trends-jobs-some = { $shown } of { $count } jobs; all of them: jobs.csv
trends-link-report = report and its photos
trends-link-result = result
trends-link-folder = folder
trends-misplaced-title = How the stand was misplaced
trends-misplaced-aside = Checks that are outside tolerance, as a share of the jobs that have such a check; the lines are 95 % intervals (Wilson).
trends-misplaced-none = No check was outside.
trends-misplaced-chart = Misplacements by kind and direction
trends-misplaced = { $what }: { $way }
trends-misplaced-note =
    { $count ->
        [one] one job
       *[other] { $count } jobs
    }, { $share }
trends-size = { $amount } { $unit } ({ $size } tolerances)
trends-column-check = Check
trends-column-way = Which way
trends-column-jobs = Jobs
trends-column-median = Median
trends-column-ninth = Nine of ten below
trends-column-within = Within
trends-column-outside = Outside
trends-column-not-proven = Not proven
trends-column-retake = Retake
trends-column-share = Share outside, 95 %
trends-column-setup = Set-up sheet
trends-column-first = First attempts
trends-column-mean = Mean
trends-column-deviation = Standard deviation
trends-column-cp = Cp, 95 %
trends-column-cpk = Cpk, 95 %
trends-by =
    { $factor ->
        [technician] By technician
        [bay] By bay
        [setup] By set-up sheet
        [kit] By marker kit
        [vehicle] By vehicle
        [camera] By camera
        [week] By week
       *[other] By { $factor }
    }
trends-no-group = No job states it.
trends-people-note = In the order of names: a difference between people is only said to be one where it stands out beyond chance (above). Who works in a bad bay has bad figures.
trends-groups-folded = { $count } in all: shares, figures, jobs
trends-group-note =
    { $outside } of { $count } jobs{ $few ->
        [yes] , few
       *[no] { "" }
    }
trends-all-jobs = all jobs
trends-share-chart = Share outside, { $factor }
trends-share-note = Share of jobs outside tolerance with 95 % intervals. Intervals that overlap say nothing; one in twenty lies beside the truth by chance.
trends-first-attempts =
    { $count ->
        [one] one first attempt
       *[other] { $count } first attempts
    }
trends-level =
    { $against ->
        [nominal] nominal
       *[others] the others
    }
trends-which-way = Which way: { $what }
trends-which-way-note = Mean of (value - nominal) / tolerance against the others, other factors taken out; 95 % intervals of each alone. To the right: { $way }.
trends-stands-out = stands out: see above
trends-few-jobs = few jobs: says little
trends-attempts-title = First attempt against last
trends-attempts-first = Within at the first attempt: { $within } of { $count } ({ $share }).
trends-attempts-none = No repair order has more than one attempt.
trends-attempts = Of { $series } repair orders with several attempts { $first } were within at the first and { $last } at the last.
trends-attempts-size = The largest deviation was { $first } tolerances in the mean at the first, { $last } at the last.
trends-capability-title = Capability by set-up sheet
trends-capability-note = (value - nominal) / tolerance of first attempts; Cp and Cpk with 95 % intervals for a normal spread (ISO 22514-2). Below 1 the spread does not fit the tolerance.
trends-capability-none = No sheet has eight first attempts.
trends-capability-folded =
    { $count ->
        [one] one check
       *[other] { $count } checks
    }
trends-findings-title = Findings
trends-finding = { $code }: { $share } of all jobs
trends-findings-none = None was made.
trends-findings-note = `baywitness explain CODE` says what a code means; `baywitness gallery` shows each.
trends-method-title = How this was found, and what it can't say
trends-method-compared = Compared are first attempts ({ $count }), so that nobody's figures are mended by repeating. People, bays, set-up sheets and kits are told apart by one additive model for each quantity; findings are compared within strata of all other factors (Mantel and Haenszel, exact).
trends-method-tests = { $count } tests were made. With Holm's correction at most one archive in { $archives } without any effect has one named here. Differences below { $size } tolerances, and groups with fewer than { $jobs } first attempts, are never named.
trends-method-changes = Changes are looked for by cumulative sums over single jobs; the week is the likeliest one, a neighbour may be the right one. The weekly chart signals by chance once in { $run } weeks (allowance { $allowance }, interval { $interval }), and { $shifted } weeks after a shift of one standard deviation of a weekly mean.
trends-method-together = What always goes together (a person who only works in one bay with one kit) cannot be told apart by any figures; it is said where that is so.
trends-method-not-why = Figures say that something differs, not why, and not whose fault it is. Jobs whose photos could not be used count as a verdict only.
trends-foot = The vehicle maker's service information and local rules govern. These figures document set-ups and replace no procedure; the work is for trained people, and lasers and lifted vehicles need their own precautions.

# Charts over time.
trends-week-point = { $week }: { $outside } of { $count } outside
trends-weeks-title = Week by week
trends-weeks-few = Too few weeks, or no job states its time.
trends-weeks-note = Share of jobs outside; limits at three standard deviations of the week's number of jobs. Beyond them: squares.
trends-weeks-chart = Share outside by week
trends-mean = mean
trends-limit = limit
trends-tolerance = tolerance
trends-mean-range = mean range
trends-jobs-title = Job by job
trends-jobs-note = (value - nominal) / tolerance of the latest first attempts, and the differences between neighbours below; limits from the mean moving range (2.660 and 3.267 times it). Beyond them: squares. Each point leads to its job.
trends-point = { $name }: { $value }
trends-latest = the latest { $shown } of { $count }
trends-single-values = Single values
trends-moving-ranges = Moving ranges
trends-week-mean =
    { $week }: { $mean } in { $count ->
        [one] one job
       *[other] { $count } jobs
    }
trends-effect-weeks =
    { $against ->
        [nominal] Mean by week, tolerances
       *[others] Mean by week against the others, tolerances
    }{ $changed ->
        [yes] ; squares: since the change.
       *[no] .
    }
trends-effect-chart = Mean by week
trends-sums-note = Cumulative sum of the weekly means against the level before, the larger of both sides, drawn up to four intervals.
trends-sums-chart = Cumulative sums
trends-decision-interval = interval

# What the command prints.
trends-said-jobs =
    { $count ->
        [one] 1 job
       *[other] { $count } jobs
    }
trends-said-also =
    { $what ->
        [copies] { $count ->
            [one] 1 copy counted once
           *[other] { $count } copies counted once
        }
        [errors] { $count } could not be judged
        [unreadable] { $count } unreadable
       *[others] { $count } other JSON
    }
trends-said-unreadable = unreadable: { $words }
trends-said-verdict = { $verdict } ({ $share } %)
trends-said-nothing = Nothing stands out beyond what chance explains.
trends-said-report = Report: { $file }

# What cannot be read of an archive; `trends-in-file` puts the file before the reason.
trends-in-file = { $file }: { $why }
trends-cannot-read = cannot read { $path }: { $why }
trends-no-results = no results were found: name the folder of an audit, or files of results as `verify --json` and `audit` write them
trends-no-results-because = no results were found: name the folder of an audit, or files of results as `verify --json` and `audit` write them ({ $why })
trends-no-verdict = a result without a verdict
trends-row-no-verdict = a row without a known verdict
trends-no-parquet = this build reads no Parquet: name the audit's folder or its audit.jsonl, or build with the feature `parquet`
trends-not-json = it is no JSON: `{ $found }` stands where an object should begin
trends-cut-off = its last object is cut off
trends-parquet-damaged = it is no Parquet file that can be read ({ $why }): run the audit again
trends-parquet-rows = it states an impossible number of rows: run the audit again
trends-parquet-column = it states a column larger than the file: run the audit again
trends-parquet-other = it is not the table of an audit: name audit.parquet of an audit's folder
trends-parquet-part = it holds a check or a finding without its words: run the audit again
