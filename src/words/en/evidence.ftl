# The log of attempts against an archive.
evidence-verdict =
    { $verdict ->
        [within] within
        [outside] outside
        [retake] retake
        [not_proven] not proven
       *[other] { $verdict }
    }
evidence-log-broken = { $why }
evidence-log-unreadable = entry { $entry } { $why }
evidence-log-repeated = entry { $entry } repeats entry { $first }, byte for byte
evidence-log-out-of-order = entry { $entry } says { $when }, { $off } s { $which ->
        [earlier] earlier
       *[later] later
    } than its neighbours allow (more than { $tolerance } s): it was dated back or ahead, or a clock was wrong
evidence-log-against-witness =
    { $which ->
        [earlier] entry { $entry } says { $when }, yet it was added after { $witness } saw { $size } entries, { $off } s before that
       *[later] entry { $entry } says { $when }, yet it was there when { $witness } saw { $size } entries, { $off } s after that
    }
evidence-log-missing =
    { $numbered ->
        [yes] attempt { $attempt }
       *[no] an attempt
    } { $known ->
        [yes] of repair order { $order }
       *[no] of a repair order that the archive does not have, or whose secret was not given
    }: { $whole ->
        [yes] none of its { $gone } photos is in the archive
       *[no] { $gone } of its { $photos } photos are in no job of the archive
    } ({ $entries })
evidence-log-entry = entry { $entry } at { $when }: { $verdict }
evidence-log-entry-with = entry { $entry } at { $when }: { $with ->
        [both] { $verdict } with another job.toml and set-up sheet
        [job] { $verdict } with another job.toml
        [setup] { $verdict } with another set-up sheet
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } before; { $entries }
evidence-log-restated = the photos of { $path }, { $now } now, were judged otherwise: { $entries }
evidence-log-no-entry = { $path } is sealed, and the log has no entry of it
evidence-log-summary = Log { $log }: { $size } entries, { $signed ->
        [yes] signed by a key that counts
       *[no] whose verifier key was not given (--log-keys)
    }{ $witnessed ->
        [yes] , cosigned by { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; it begins with every checkpoint that was kept
       *[no] { "" }
    }
evidence-log-title = Log of attempts
evidence-log-nothing = every attempt is in the archive, every sealed job in the log
evidence-log-more = { $count } more
evidence-log-all = all of them: { $file }

# What joins two jobs of an archive.
evidence-photo-of-another-job =
    { $how ->
        [bytes] { $photo } is byte for byte { $other } of that job
       *[view] { $photo } shows the same view, saved again, scaled or cropped, as { $other } of that job
    }: one of the two jobs was not photographed on its own. A folder that was copied for another vehicle looks so, and a camera left on a tripod in front of a vehicle that stayed. Ask for the original photos.
evidence-set-up-of-another-job = These are those of that job to within the noise of the photos, closer than set-ups of this archive come by chance: { $quantities }. A vehicle that was photographed for two jobs looks so. Compare the photos of both: vehicle, floor, shadows.

# An audited archive.
evidence-audit-title = Audit of set-ups
evidence-audit-unreadable = unreadable or altered
evidence-audit-filter = Show rows with
evidence-audit-filter-hint = any of their words
evidence-audit-shown = { $shown } of { $count } shown
evidence-audit-foot = The vehicle maker's service information and local rules govern. These figures document set-ups and replace no procedure; the work is for trained people, and lasers and lifted vehicles need their own precautions.
evidence-audit-progress = { $done } of { $total } ({ $kept } from before), { $rate } a second, { $left } s left
evidence-audit-jobs = { $count } jobs, { $kept } of them kept from an earlier run
evidence-audit-across = share a photo or a set-up with an earlier job: see the report
evidence-audit-changed = say otherwise than before they were recomputed: see the report
evidence-audit-other-version = were judged by another version of the program: --recompute judges them again
evidence-audit-report = Report: { $file }
evidence-column-verdict = Verdict
evidence-column-job = Job
evidence-column-checks = Checks
evidence-column-findings = Findings
evidence-column-setup = Set-up sheet
evidence-column-vehicle = Vehicle
evidence-column-technician = Technician
evidence-column-bay = Bay
evidence-column-taken = Taken
evidence-column-evidence = Evidence
evidence-column-folder = Folder
evidence-column-finding = Finding
evidence-column-meaning = What it says
evidence-attempt = attempt { $attempt }
evidence-not-sealed = not sealed
evidence-state =
    { $state ->
        [signed] intact and signed by { $who }
        [unknown] intact, signer unknown
        [unsigned] intact, unsigned
       *[altered] altered
    }
evidence-recomputed = recomputed: { $count } changed
evidence-check = { $what }: { $measured }, required { $required }: { $verdict }
evidence-change-what =
    { $what ->
        [verdict] verdict
        [findings] findings
       *[message] message
    }
evidence-change-check = { $name } ({ $parts })
evidence-change = { $what }: { $earlier } before, now { $now }
evidence-change-moved =
    { $what }: { $earlier } before, now { $now }, { $sign ->
        [minus] -
       *[plus] +
    }{ $moved } u
evidence-value = { $value } { $unit } (u { $u })
evidence-none = none
evidence-not-checked = not checked
evidence-not-determined = not determined
