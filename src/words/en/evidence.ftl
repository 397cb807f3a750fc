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

# An evidence folder checked.
evidence-outcome =
    { $outcome ->
        [passed] passed
        [failed] failed
       *[other] not checkable
    }
evidence-item =
    { $item ->
        [names] names
        [declaration] declaration
        [completeness] completeness
        [manifests] manifests
        [tag-files] tag files
        [payload] payload
        [signature] signature
        [timestamp] timestamp
        [sealed-files] sealed files
        [signer] signer
        [authority] authority
        [measured-again] measured again
        [log] log
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] intact and signed
        [unknown] intact, signer unknown
        [unsigned] intact, unsigned
       *[altered] altered
    }
evidence-bad =
    { $more ->
        [0] { $files }
       *[other] { $files }; { $more } more
    }
evidence-names = { $count } files, none a link or with a name that leads elsewhere
evidence-bag = a BagIt 1.0 bag (RFC 8493)
evidence-no-bag = { $file } does not declare BagIt 1.0 in UTF-8
evidence-file-unreadable = { $file } cannot be read ({ $why })
evidence-file-wrong = { $file } { $why }
evidence-fetch = fetch.txt wants files from elsewhere: evidence holds all of its own
evidence-file-state =
    { $state ->
        [missing] { $file } is missing
        [added] { $file } was added
       *[altered] { $file } was altered
    }
evidence-files = { $count } files, none missing, added or altered (SHA-512)
evidence-unsigned = the folder is not signed
evidence-signed = by the key { $key }
evidence-name-not-utf8 = { $file } is not UTF-8
evidence-name-case = { $first } and { $second } differ only in upper and lower case
evidence-name-link = { $file } is a link or another thing that is no file
evidence-too-many = there are more than { $count } files
evidence-stamped = sealed no later than { $when }, says { $authority }
evidence-copy-unreadable = { $why }
evidence-copy-other-manifest = { $file } is not the one that { $list } lists
evidence-copy-signed = the sealed folder's, by the key { $key }
evidence-copy-unsigned = the sealed folder was not signed
evidence-copy-state =
    { $state ->
        [altered] { $file } is not as it was sealed, and not named as masked
        [missing] { $file } was sealed, is not here, and is not named as left out
       *[strange] { $file } is named as masked or left out, and was never sealed
    }
evidence-copy = { $count } files as they were sealed, { $masked } photos masked, { $left_out } files left out
evidence-not-measured =
    { $why ->
        [copy] not measured again: the photos are masked, the sealed folder holds them whole
       *[altered] not measured again: the bytes are not those that were sealed
    }
evidence-no-signers = no list of signers was given (--signers)
evidence-signer = { $who }, who is listed
evidence-signer-unknown = { $why }
evidence-no-authority = no authority's certificate was given (--timestamp-ca)
evidence-authority-false = { $why }
evidence-authority-ended = its certificate ended on { $day }, and no newer timestamp covers it
evidence-authority = { $who }; its certificate ends on { $day }
evidence-measured = { $verdict }; every value within { $share } of its standard uncertainty of the recorded one
evidence-measured-otherwise = { $differences }
evidence-measured-by-other = { $differences } (recorded by version { $recorded }, measured by { $now })
evidence-not-measurable = { $why }
evidence-several = { $folder } holds the evidence folders of one repair order: check each of them (`baywitness check { $folder }/NAME`), or all with `baywitness audit`; its own { $index } is read by `sha512sum -c`
evidence-no-folder = { $folder } is no evidence folder: name one that `baywitness seal` made
evidence-cannot-read = cannot read { $path }: { $why }
evidence-no-proof = the folder holds no proof that its attempt was logged (seal --log)
evidence-logged = entry { $entry } of { $log }, logged at { $when }; in its checkpoint of { $size } entries{ $still ->
        [yes] , which the log still begins with
       *[no] { "" }
    }{ $witnessed ->
        [yes] , cosigned by { $witnesses }
       *[no] { "" }
    }{ $signed ->
        [yes] { "" }
       *[no] ; whether { $log } signed it: its verifier key was not given (--log-keys)
    }
