# Practice: the gallery of mistakes, drills and their marks.

## The gallery's page

training-gallery = Gallery of mistakes
training-gallery-lede = Each finding of a report, shown in an invented bay: one mistake at a time, the same photo without it and with it, and what the figures say. Everything here is rendered and measured by the program itself.
training-gallery-caution = The vehicle maker's service information and local rules govern. The gallery teaches what findings look like; it replaces no procedure. The work is for trained people, and lasers and lifted vehicles need their own precautions.
training-findings = Findings
training-void = the measurement can't be trusted
training-stop = nothing is called within tolerance
training-warn = worth a look
training-note = worth knowing
training-in-this-bay = In this bay:
training-alt-without = { $title }: without the mistake
training-alt-with = { $title }: with the mistake
training-as-it-should-be = As it should be
training-with-the-mistake = With the mistake
training-what-it-says = What it says
training-how-it-comes-about = How it comes about
training-how-to-see-it = How to see it
training-how-to-mend-it = What to do
training-in-the-figures = How it shows in the figures
training-companions = It comes together with { $codes }.
training-whole-report = The whole report of this job
training-check = Check
training-required = Required
training-without = Without the mistake
training-with = With it
training-verdict = Verdict
training-not-determined = not determined
training-not-checked = not checked
training-not-used = not used
training-misfit = How well the photos fit together (root mean square, px): { $without } without the mistake, { $with } with it.

## A trainee's progress

training-progress = Progress in drills
training-progress-lede = Points of each drill in the order in which they were marked. Drills that were marked before (open circles) do not count: their answers were known.
training-drill-caution = Drills are invented and practise reading a set-up; they replace no training at a real vehicle. The vehicle maker's service information and local rules govern. The work is for trained people, and lasers and lifted vehicles need their own precautions.
training-chart = Share of the points of each drill
training-level = Level { $level }
training-point = { $day }, level { $level }: { $percent } % of the points
training-head-mistake = Mistake
training-head-there = There
training-head-named = Named
training-head-right-way = Right way
training-head-right-size = Right size
training-head-share = Named, 95 %
training-interval = { $low } to { $high } %
training-few = too few to say much
training-last-drill = The last drill: { $day }, level { $level }
training-job = Job
training-head-points = Points
training-head-remarks = What was there, and what was said
training-points = { $points } of { $points_of }
training-job-points = { $job }: { $points } of { $points_of } points
training-score = findings { $named } of { $there }, directions { $ways } of { $ways_of }, sizes { $sizes } of { $sizes_of }, false alarms { $false_alarms }: { $points } of { $points_of } points
training-marked-before = This drill was marked before: its answers were known.

## One job's answers

training-nothing-wrong = Nothing wrong
training-nothing-was-wrong = nothing was wrong
training-nothing-was-wrong-and-said = nothing was wrong, and that was said
training-missed = missed: { $truth }
training-right = right: { $truth }
training-partly =
    { $right ->
        [way] named, right way, wrong size: { $truth }; answered: { $answer }
        [size] named, wrong way, right size: { $truth }; answered: { $answer }
       *[neither] named, wrong way, wrong size: { $truth }; answered: { $answer }
    }
training-not-so = not so: { $answer }
training-no-answer = no answer was given
training-answer-one = { $title }: { $part }
training-answer-both = { $title }: { $way }, { $size }
training-size =
    { $unit ->
        [deg] { $size } deg
       *[mm] { $size } mm
    }
training-way-away = move it away
training-way-towards = move it towards the vehicle
training-way-left = move it left
training-way-right = move it right
training-way-raise = raise it
training-way-lower = lower it
training-way-left-end-towards = turn its left end towards the vehicle
training-way-left-end-away = turn its left end away from the vehicle
training-way-top-away = tilt its top away from the vehicle
training-way-top-towards = tilt its top towards the vehicle
training-way-right-end-lower = lower its right end
training-way-right-end-raise = raise its right end

## What a drill's folder says

training-level-1 = one large mistake
training-level-2 = one mistake, or none
training-level-3 = one small mistake, or none
training-level-4 = up to two mistakes
training-level-5 = up to three small mistakes
training-how-to-head = A drill of level { $level }: { $words } in each job. Everything is invented.
training-how-to-folders = Each folder is a job: photos, the set-up sheet (setup.toml: what is required, and how closely) and readings.txt.
training-how-to-answer = Say for each job what is outside tolerance, which way to move it, and by how much: fill in answers.csv, or type
training-how-to-several = Several mistakes of one job are several lines; if nothing is wrong, the finding is `none`.
training-how-to-findings = Findings: { $codes }
training-how-to-ways = Ways: { $ways }
training-how-to-sizes = Sizes: mm, or degrees for stand-turned, stand-tilted, stand-not-level.
training-how-to-seal = The kit's file is kept under seal until the drill is marked; then each job can be verified. The seal keeps answers from a glance and shows a change of them; it is no lock.
training-read-head = { $job }: read at the stand (an invented bay)
training-read-distance = Target face in front of the nose, in the middle
training-read-left-end = Stand's end on the vehicle's left in front of the nose
training-read-right-end = Stand's end on the vehicle's right in front of the nose
training-read-centring = Aim point off the centreline, to the vehicle's left positive
training-read-height = Aim point above the floor
training-read-plumb-line = Plumb line at the face: top further from the vehicle than bottom
training-read-water-level = Water level: end on the vehicle's left higher than the end on its right
training-read-bases = The ends are { $ends } mm apart, plumb line points { $points } mm. Turn, tilt and level in degrees follow from these.

## What the commands say

training-rendering = rendering { $job }
training-made =
    { $jobs ->
        [one] { $folder }: one job, { $words }; read HOW-TO.txt there
       *[other] { $folder }: { $jobs } jobs, { $words }; read HOW-TO.txt there
    }
training-sealed = Answers are sealed; their SHA-256: { $digest }
training-progress-page = Progress: { $page }
training-gallery-page = Gallery: { $page }
training-cannot-find = cannot find { $path }: { $why }
training-cannot-read = cannot read { $path }: { $why }
training-cannot-write = cannot write { $path }: { $why }
training-cannot-verify = cannot verify the staged job { $job }: { $why }
training-cannot-picture = cannot make the pictures of { $job }: { $why }
training-no-scene = the gallery has no scene for { $code }
training-no-level = there is no level { $level }: take 1 to { $last }
training-so-many-jobs = { $count } jobs: take 1 to { $most }
training-drill-is-there = { $folder } holds a drill already: name another folder
training-no-random-bytes = the system gives no random bytes: { $why }
training-drill-unreadable = { $path }: { $why }; make the drill again
training-drill-format = { $path }: format is { $format }, not drill/1
training-at-line = { $path }, line { $line }: { $why }
training-unknown =
    { $what ->
        [job] no job `{ $word }`; known are { $all }
        [finding] no finding `{ $word }`; known are { $all }
       *[way] no way `{ $word }`; known are { $all }
    }
training-unknown-near =
    { $what ->
        [job] no job `{ $word }`; did you mean `{ $near }`?
        [finding] no finding `{ $word }`; did you mean `{ $near }`?
       *[way] no way `{ $word }`; did you mean `{ $near }`?
    }
training-no-size = `{ $word }` is no size: a number of mm or degrees
training-answered = Noted for { $job }: { $answer }.
training-answer-cells = has { $found } cells, at most { $most } are wanted: job, finding, way, size; between commas write decimals with a point
training-answers-changed = { $path } is not what { $drill } committed to: the answers were changed, nothing is marked
training-gives-back-other = { $path }: its answers would write { $name }, which no job of this drill has: nothing is marked; have the drill made again
training-gives-back-link = { $path } is a link: nothing is written through it and nothing is marked; put the job's own folder and files there
training-drill-changed = { $path } has another level or other jobs than were sealed with the answers: nothing is marked; put the file back as it was
training-level-unsealed = This drill was made before levels were sealed with the answers: nothing proves that it is of level { $level }.
training-progress-unreadable = { $path }, line { $line }: { $why }; put it right or name another progress file
training-progress-edited = { $path }, line { $line }: its points are not what the program makes of the answers in it; put the line back as it was, or name another progress file
