# What the commands say on the terminal, where it belongs to no other room.

## Errors, notes, files

cli-error = error: { $message }
cli-note = note: { $words }
cli-cannot-read = cannot read { $path }: { $why }; check the name and the permissions
cli-not-over-a-photo = { $path } is a photo and stays as it is: name another file to write. An option that writes takes what follows it, so photos go in front of it
cli-not-over-no-json = { $path } is there and is no JSON file, so it stays as it is: name another file behind --json, or - for standard output
cli-not-over-an-input = { $path } is a file of the job { $job } and stays as it is: name another file behind --json
cli-no-utf8 = { $path } is no text in UTF-8: save it as UTF-8 (a spreadsheet calls it "CSV UTF-8")
cli-cannot-write = cannot write { $path }: { $why }; check the folder's permissions and free space, or name another
cli-cannot-make-folder = cannot make the folder { $path }: { $why }; check the permissions of the folder above, or name another
cli-cannot-unpack = cannot make a folder to unpack into: { $why }
cli-no-stdout = cannot write to standard output: { $why }
cli-no-threads = cannot start { $count } threads: { $why }
cli-no-date = "{ $text }" is no date: write it as 2027-05-01
cli-no-area = "{ $text }" is no area: write left, top, right, bottom in percent, as 10,20,60,90
cli-no-schema = "{ $format }" has no schema: name one of { $known }
cli-no-evidence = { $folder } is no evidence folder: name one that `baywitness seal` made
cli-no-carrier = the kit { $kit } has no marker holder { $name }; it has: { $known }
cli-no-photo = the folder { $folder } has no photo
cli-no-photo-but-below = the folder { $folder } has no photo: name its { $photos }
cli-job-twice = { $job } and { $again } are the same job: name each job once
cli-jobs =
    { $count ->
        [one] one job
       *[other] { $count } jobs
    }
cli-verdict =
    { $verdict ->
        [within] within tolerance
        [outside] outside tolerance
        [not_proven] not proven
       *[retake] retake
    }
cli-passphrase = Passphrase of { $key }:

## `baywitness` alone

cli-next = What could be done next:
cli-next-more = ... and { $count } more. All at once: baywitness audit . --out audit
cli-next-all-commands = All commands: baywitness --help
cli-next-sealed = { $folder }: sealed
cli-next-not-ready = { $folder }: not ready yet
cli-next-photos =
    { $count ->
        [one] { $folder }: one photo
       *[other] { $folder }: { $count } photos
    }
cli-next-one-more = take at least one more, from the other front quarter
cli-next-answer = answer in [prerequisites] of job.toml: { $questions }

## new: the job's file

cli-new-made = { $folder }/job.toml is to be filled in, photos go into { $folder }/photos. Then: baywitness verify { $folder }
cli-new-is-there = { $folder } is there already: choose another name, nothing is overwritten
cli-new-no-number = { $folder } gives the job no number: end it with one, such as jobs/D-0042
cli-new-sheet = set-up sheet { $sheet }: { $key } { $problem }; { $remedy }
cli-new-source = Source: { $source }
cli-new-camera = left out: each photo's own record chooses
cli-new-series = repair order: its attempts and sensors share it
cli-new-wheelbase = compared with the photos; used alone where they show no front plates
cli-new-nose = compared with the photos; used alone where they show no nose mark
cli-new-hub = compared with the photos; used alone where they show no floor sheet
cli-new-rear-track = from hub to hub: tells whether the rear plates sit on their hubs
cli-new-front-track = from hub to hub: tells whether the front plates sit on their hubs
cli-new-required = { $question } (required)
cli-new-reading = read by laser, tape, level or alignment rack
cli-new-steps = This sheet has the steps { $steps }: say of each photo which one it shows.

## Photos that are added to a job

cli-move-step-lacks = the set-up sheet "{ $sheet }" has steps: say which one the photo shows: { $steps }
cli-move-no-steps = the set-up sheet "{ $sheet }" has no steps: leave --step "{ $step }" out
cli-move-no-such-step = "{ $step }" is no step of the set-up sheet "{ $sheet }": say { $steps }
cli-move-too-often = the stand of { $job } was moved { $most } times already: begin a new job
cli-move-is-there = { $photo } is already a photo of { $job }: name a new one; if the stand was moved before it was taken, write `after_move = 1` at its [[photo]] in job.toml
cli-move-no-name = { $file } has no name that can stand in a job file: rename it
cli-move-name-taken = { $folder } has other photos named { $name }: rename the new one

## watch --tripod

cli-tripod-no-folder = { $folder } is no folder: name the one that the camera's photos come into
cli-tripod-too-few =
    { $count ->
        [0] { $job } has no first photo: take two from different places and verify them, then put up the tripod
        [one] { $job } has only one first photo: take one more from another place and verify them, then put up the tripod
       *[other] { $job } has only { $count } first photos: take more from other places and verify them, then put up the tripod
    }
cli-tripod-left-out =
    { $count ->
        [one] One picture is already in { $folder }: it is left out.
       *[other] { $count } pictures are already in { $folder }: they are left out.
    }
cli-tripod-watching = Watching { $folder } for { $job }; Ctrl-C ends it.
cli-tripod-line = { $photo }: { $what }
cli-tripod-kept = { $seen }: { $kept }
cli-tripod-verdict = After move { $move }: { $verdict }. { $reason }
cli-tripod-do-first = Do first:

## detect, gauge, stage, due

cli-detect-photo =
    { $count ->
        [one] { $photo }: one marker, blur { $blur } px, edge offset { $offset } px (corrected)
       *[other] { $photo }: { $count } markers, blur { $blur } px, edge offset { $offset } px (corrected)
    }
cli-detect-marker =
    { $covered ->
        [yes] { $side } px, corners { $corners } ± { $u } px, a corner is covered
       *[no] { $side } px, corners { $corners } ± { $u } px
    }
cli-detect-corner = ({ $u }, { $v })
cli-gauge-line = { $file }, line { $line }: { $why }
cli-gauge-head = the head must name the columns operator, part and value
cli-gauge-reading = needs an operator, a part and a number as value
cli-gauge-cells = has { $found } cells, the head has { $wanted }: separate with the head's "{ $separator }", with a decimal point where that is a comma
cli-gauge-range = Average and range (AIAG MSA)
cli-gauge-anova = Analysis of variance (AIAG MSA)
cli-gauge-deviations = { $method }: repeatability { $repeatability }, reproducibility { $reproducibility }, gauge { $gauge }, parts { $parts } (standard deviations)
cli-gauge-share = gauge is { $percent } % of the whole spread; it tells { $categories } categories apart (five are enough)
cli-gauge-untold = repeated readings and those of different people do not differ: the gauge's share of the spread and how many categories it tells apart cannot be told
cli-staged =
    { $count ->
        [one] { $folder }: one photo and truth.json
       *[other] { $folder }: { $count } photos and truth.json
    }
cli-due-may-go = kept until { $day }: may be deleted
cli-due-stamp = timestamp holds until { $day }: stamp it again
cli-due-sum = { $due } due on { $on }, { $kept } not yet; nothing was deleted

## seating

cli-seating-times =
    { $count ->
        [one] { $plate }: clamped on once; deviations from the mean along and about its own axes
       *[other] { $plate }: clamped on { $count } times; deviations from the mean along and about its own axes
    }
cli-seating-scatter = Measurement alone scatters by { $mm } mm and { $degrees } deg (taken out)
cli-seating-keys = { $keys } (1 sigma, widened for { $freedom } degrees of freedom)
cli-seating-run-out = Wheel turned by { $turn } deg: spin axis { $camber } deg about x (camber) and { $heading } deg about z (heading) off the plate's.
cli-seating-beside = The spin axis passes { $ahead } mm in front of and { $above } mm above the plate's hub datum.
cli-seating-rolled = The wheel rolled on, so nothing is said of the hub datum.
cli-seating-head =
    { $count ->
        [one] Seating of { $plate } from one seating.
       *[other] Seating of { $plate } from { $count } seatings.
    }
cli-seating-no-target = the kit has no target stand: name a marker holder with --against
cli-seating-no-result = { $path } is neither a folder of photos nor one job's result ({ $why }): write it with verify --json

## seal, stamp, redact

cli-sealed-one = Sealed job { $job }, { $verdict }, in { $folder }: { $files } files.
cli-sealed-signed = Signed for "{ $namespace }" over { $file }.
cli-sealed-unsigned = Not signed: it shows changes by chance, not by intent. Seal with --key to sign.
cli-sealed-send = Send { $file } to a timestamp authority, then: baywitness stamp { $folder } --answer FILE
cli-sealed-check = Check it any time: baywitness check { $folder }
cli-sealed-several =
    { $count ->
        [one] Sealed one job of repair order { $order }, in an evidence folder of its own:
       *[other] Sealed { $count } jobs of repair order { $order }, each in an evidence folder of its own:
    }
cli-sealed-index = The index { $file } binds them. Check each folder any time: baywitness check FOLDER
cli-seal-several-folders = several jobs become folders, each with a timestamp of its own: seal them into a folder without --timestamp, then `baywitness stamp` each, or seal them one by one
cli-seal-no-series = jobs are sealed together only where all state the same repair order (`series` in job.toml): state it, or seal them one by one
cli-seal-no-name = { $path } is no name
cli-stamp-request = Wrote { $file }. Send it to a timestamp authority, then: baywitness stamp { $folder } --answer FILE
cli-stamp-no-answer = name the answer with --answer
cli-stamped = Stamped { $folder }: { $authority } says { $when }. Stamp it again before { $ends }, when the authority's certificate ends.
cli-stamp-sealed = { $file } lies in a sealed folder, which is never changed: stamp the folder, or a report that lies outside
cli-stamped-pdf = Stamped { $file }: { $authority } says { $when }; the authority's certificate ends on { $ends }.
cli-pdf-large = { $file } is too large for a report
cli-certificate-made = Made { $file }, which nobody else may read, and { $public } to hand on; the certificate ends on { $ends }.
cli-certificate-next = Sign reports with it: baywitness verify JOB --report DIR --sign-pdf { $file }
cli-certificate-ending = { $file } has the ending of the certificate that is written beside it: name it with another, such as .pem
cli-redacted = Made { $folder }: photos masked, reports and attachments left out, all other files as sealed.
cli-redacted-credentials =
    { $count ->
        [one] The content credentials of { $count } photo are not in the copy: they are over its whole file, which is masked. The sealed folder keeps them.
       *[other] The content credentials of { $count } photos are not in the copy: they are over their whole files, which are masked. The sealed folder keeps them.
    }
cli-redacted-check = Who gets it checks it with: baywitness check { $folder }

## The log of attempts

cli-logged-one = Logged as entry { $entry } of { $log }.
cli-logged-several = Logged as entries { $first } to { $last } of { $log }.
cli-log-made = Made the log { $log } in { $folder }. Publish that folder, and give this line to whoever checks it:
cli-log-private = Never publish { $folder }: it holds the log's key. An auditor may be given order-salt from it, to name the repair orders of missing attempts.
cli-log-photos =
    { $photos ->
        [one] one photo
       *[other] { $photos } photos
    }
cli-log-attempt =
    { $photos ->
        [one] one photo, attempt { $attempt }
       *[other] { $photos } photos, attempt { $attempt }
    }
cli-log-size =
    { $count ->
        [one] one entry in { $log }
       *[other] { $count } entries in { $log }
    }
cli-log-holds =
    { $count ->
        [one] { $log }: one entry, as its hash says, and its hash as the checkpoint's root says
       *[other] { $log }: { $count } entries, every one as its hash says, every hash as the checkpoint's root says
    }
cli-log-witnessed =
    { $count ->
        [one] { $witness } saw one entry at { $when }
       *[other] { $witness } saw { $count } entries at { $when }
    }
cli-log-continues = It begins with every checkpoint that was given.
cli-log-disordered =
    { $count ->
        [one] One entry has a time that does not fit its neighbours' (`baywitness audit --log` names it).
       *[other] { $count } entries have times that do not fit their neighbours' (`baywitness audit --log` names them).
    }
cli-log-odd =
    { $count ->
        [one] One entry is not of this program.
       *[other] { $count } entries are not of this program.
    }
cli-log-no-key = Whether the log signed it is not known: its verifier key was not given (--keys).
cli-log-agent-key = { $key } names a key that an agent holds, which signs no notes: name the private key
cli-log-cosigned-first =
    { $count ->
        [one] Cosigned { $log } at one entry, seen for the first time: { $file }
       *[other] Cosigned { $log } at { $count } entries, seen for the first time: { $file }
    }
cli-log-cosigned =
    { $count ->
        [one] Cosigned { $log } at one entry, which continues what was seen before ({ $seen }): { $file }
       *[other] Cosigned { $log } at { $count } entries, which continue the { $seen } seen before: { $file }
    }
cli-log-witness-key = The witness's key, to give to whoever checks the log:

## serve

cli-serve-alone = The page is at { $link } for this machine alone. Ctrl-C ends it.
cli-serve-at = The page is at { $link }
cli-serve-code = Code for devices: { $code }. Whoever has it may see and change every job.
cli-serve-open = The network can read along: every photo, every job and each device's key to them. Encrypt with --tls-own or --tls-cert, or use the shop's own network only, which must be encrypted.
cli-serve-encrypted = The connection is encrypted.
cli-serve-end = Ctrl-C ends it.
cli-serve-certificate = Certificate, SHA-256: { $digest }
cli-serve-root = Root to be trusted on phones, SHA-256: { $digest }

## plan, recheck, sheet, trends

cli-plan-numbers = give { $count } numbers in mm, as 7200,1700,1500 (no bay is larger than 50000)
cli-plan-length = give a length from 500 to 50000 mm
cli-plan-earlier = no photo of { $job } could be measured: give an earlier job that `baywitness verify` measures
cli-recheck-no-log = { $file } is no log of checks: its first line is not "{ $head }"
cli-recheck-no-check = { $file }, line { $line }: is no check
cli-sheet-measured = right and up as two numbers with a decimal point and a comma between them, such as 159.6,160.1
cli-sheet-corrected = { $file } holds sizes as printed already, which would be corrected twice: correct the file that was printed (such as bay-a4). If this very file was printed, delete its line "{ $line }" first
cli-no-people-key = { $path } is no key of 64 hex digits: delete it for new pseudonyms, or restore it

## audit, camera

cli-audit-nothing = no job or evidence folder was found: name a folder that holds some
cli-audit-no-report = cannot write the report of the audit: { $why }
cli-no-stdin = cannot read standard input: { $why }
cli-log-put-right = { $log }: { $what }.
cli-camera-no-report = a report shows photos of a board; leave --report out with a kit

## Comments at the head of files that the program writes

cli-file-not-fit = NOT FIT FOR USE: { $why }
cli-file-surveyed = Surveyed from { $photos } photos. Changing this file by hand makes its layout invalid: survey again.
cli-file-length = Measured length { $length }
cli-file-printed = Sizes as printed on { $paper } paper: the check rulers read { $right } mm to the right and { $up } mm up.
