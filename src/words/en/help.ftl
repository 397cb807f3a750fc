# What the program says of itself: `baywitness --help`, each command's help, docs/commands.md,
# the manual, and what is wrong with what was typed.
#
# `help-COMMAND` is the command in one line (85 letters at most), its attributes are its arguments by
# their id; `.about-more` stands below the line, `.exit-codes` at the end. What several commands have
# alike stands once, at the command above them or in `help-shared`.

help-baywitness = Proves from ordinary photos where a calibration target stood, with an uncertainty for every figure
help-shared =
    .cameras = Say by photo which camera took it, by the sensor's own pattern: a folder of patterns that `camera fit --pattern` made; no exit code depends on it, and `audit` keeps it in cameras.jsonl
    .quiet = Print errors only: the exit code and the files that were asked for say the rest
    .language = Language of everything that people read: en, de, es or fr (default: that of the environment); files for programs have none
    .help = Print help: -h in short, --help in full
    .version = Print the version
    .models = Folder with setups/, kits/ and cameras/ to look for names in
    .threads = Number of threads (default: one for each core)
    .json = Write the result as JSON to a file, or to standard output with `-`
    .kit = Marker kit: a kit file or the name of one
    .camera = The camera: a file, or a name among the models (default: picked by each photo's own record)
    .setup = Set-up sheet: a file or the name of one
    .signers = Whose signatures count: a file of allowed signers, as ssh-keygen has it
    .credential_anchors = Whose content credentials (C2PA) count: certificates (PEM) that vouch for the signers of photos; needs a program built with the feature `credentials`
    .log = Add every verdict to this log of attempts, before it is shown (made by `baywitness log new DIR --origin NAME`)
    .log_keys = Whose logs of attempts count: a file of verifier keys of logs and witnesses, one a line
    .evidence = Evidence folder, also as one file
    .paths = Folders that hold job and evidence folders, or are ones
    .sign_pdf = Sign the PDF report with this private key (PEM; `baywitness certificate NAME --out FILE` makes one)
    .certificate = The certificate of the key that signs the report (PEM, those that vouch for it behind it), where it does not lie in the key's file
    .certificates = Whose signatures of PDF reports count: the signers' own certificates (PEM)
help-with-default = { $help } (default: { $value })
help-help = Print the help of a command

## The page of all commands

help-usage = Usage:
help-usage-options = [OPTIONS]
help-usage-command = COMMAND
help-arguments = Arguments:
help-options = Options:
help-commands = Commands:
help-start = Start with:
    .sheet = a marker kit to print, cut and glue
    .new = a job folder; photos go into JOB/photos
    .verify = the verdict, and a report to hand on
help-each = Each command has its own help: { $command }
help-phase-prepare = Prepare
    .when = kit, camera, set-up sheet and bay, once and when something has changed
help-phase-measure = Measure
    .when = each job
help-phase-prove = Prove
    .when = evidence to hand on and to check
help-phase-oversee = Oversee
    .when = many jobs
help-phase-train = Train
    .when = invented bays
help-phase-tools = Tools
    .when = for other programs and the shell

## The manual's headings

help-man-name = NAME
help-man-synopsis = SYNOPSIS
help-man-description = DESCRIPTION
help-man-options = OPTIONS
help-man-commands = COMMANDS
help-man-codes = EXIT CODES
help-man-version = VERSION

## What is wrong with what was typed

help-wrong-argument = unexpected argument '{ $argument }'
help-wrong-command = there is no command '{ $command }'
help-wrong-value = '{ $value }' is not valid for { $argument }: { $why }
help-wrong-choice = '{ $value }' is not valid for { $argument }: choose one of { $known }
help-no-value = { $argument } needs a value
help-too-many-values = { $argument } takes no more values: leave '{ $value }' out
help-number-of-values =
    { $wanted ->
        [one] { $argument } takes one value, { $actual } were given
       *[other] { $argument } takes { $wanted } values, { $actual } were given
    }
help-conflict = { $argument } cannot go together with { $others }
help-twice = { $argument } can be given only once
help-missing = still missing: { $arguments }
help-missing-command = '{ $command }' needs a command: { $known }
help-no-text = what was typed is not valid Unicode (UTF-8)
help-wrong-otherwise = wrong usage: { $why }
help-did-you-mean = did you mean { $names }?
help-more = More: { $command } --help
help-not-whole = a whole number is needed
help-not-whole-within = a whole number from { $from } to { $to } is needed
help-not-number = a number is needed, such as 12.5
help-not-address = an address with a port is needed, such as 127.0.0.1:8425
help-not-choice = choose one of { $known }

## Exit codes that several commands share

help-job-codes = Exit code: 0 within tolerance, 1 outside, 2 unreadable, 3 not proven, 4 photos to be taken again; of several jobs the worst of 2, 4, 1, 3, 0
help-fit-codes = Exit code: 0 done, 2 unreadable, 3 not fit for use, or too little to say

## Prepare

help-sheet = Print a marker kit or a camera board as PDF at true size
    .about-more = Rulers on every sheet show what the printer really did, drawings how to build each marker holder.
    .model = Kit or board: a file, or a name among the models
    .out = The PDF to write
    .paper = The paper in the printer: a4, a3 or letter
    .measured_mm = What the two check rulers of 160.0 mm read after printing on this paper, right and up
    .corrected = Where to write the kit or board with the sizes as printed
    .models = A folder of models that is searched first
help-camera = Fit a camera to photos of a board
help-camera-fit = Fit a camera to 12 to 20 photos of a board, or to ordinary photos of a surveyed kit
    .exit-codes = { help-fit-codes }
    .photos = Photos of the board (or kit), all by one camera at one zoom
    .board = The board, or a surveyed kit instead: a file, or a name among the models
    .out = The camera file to write
    .model = The lens model: brown-conrady for most lenses, kannala-brandt for very wide ones
    .report = Write a page with residuals, coverage and uncertainty into this folder
    .pattern = Also write the sensor's own pattern, by which verify, check and audit --cameras know the camera's photos again; its name ends in .pattern
help-survey = Find where the markers of a kit really sit on their marker holders
    .about-more = Scale comes from lengths measured on the kit; what is found is written with its covariance.
    .exit-codes = { help-fit-codes }
    .photos = Six or more photos of the kit from all sides; nothing moves between them
    .kit = The kit as built: a file, or a name among the models
    .out = The surveyed kit to write; its layout is written beside it
    .lengths = A length measured between two marker corners, with its standard uncertainty, such as 10:tl,13:tr=1200.4~0.3 (corners tl tr br bl, or 0 to 3 in that order); may be repeated
    .apart = Marker holders may have moved against each other between photos: survey each by itself
    .serial = Serial number to write into the kit
    .due = When the kit must be surveyed again, such as 2027-05-01
    .report = Write a page with a picture of every marker holder into this folder
    .models = Folder with kits/ and cameras/ to look for names in
help-seating = Measure how repeatably a wheel plate seats
    .about-more = The plate is clamped on again and again while the stand stays where it is; half a turn of the wheel adds the plate's run-out.
    .exit-codes = { help-fit-codes }
    .seatings = One folder of photos for each time the plate was clamped on, or result files of `verify --json`
    .kit = The kit: a file, or a name among the models
    .plate = The plate: a marker holder of the kit
    .against = A marker holder that stayed where it was (default: the first target stand)
    .turned = Likewise after the wheel was turned by half a turn, the plate left on: gives the run-out
    .out = The kit to write, with the found seating at this plate
help-gauge = Divide the spread of readings into gauge, people and parts
    .readings = Readings: a CSV file with the columns operator, part and value
    .method = How the spread is divided: range (average and range) or anova (analysis of variance); left out: both are printed
help-recheck = Check a fixed reference against its first survey
    .about-more = Each check adds a line to a log, and control charts show all of them.
    .exit-codes = Exit code: 0 in order, 2 unreadable, 3 something moved or could not be measured
    .photos = Photos of the reference, four or more from different sides
    .kit = The reference as first surveyed: the kit that `survey` wrote
    .log = The log of all checks; a line is added
    .date = The day, where the photos' own records do not say
    .report = Write the control charts into this folder
help-setup = Explain and examine a set-up sheet
help-setup-check = Explain a set-up sheet, find what contradicts itself, say with which kit each check can be decided
    .exit-codes = Exit code: 0 in order, 2 unreadable, 3 it contradicts itself or no kit decides every check
    .kit = Marker kit to try: a file or the name of one (default: all that can be found by name)
    .camera = Camera file or the name of one
    .report = Write setup.html into this folder
help-plan = Say where to stand and what the photos will be worth
    .about-more = Tells how many photos it takes at least, and what to change where no photos could decide.
    .exit-codes = Exit code: 0 every check can be decided, 2 unreadable, 3 one cannot
    .camera = Camera file or the name of one; demo-phone is an invented one for demonstration
    .job = Job folder or job.toml with the vehicle's sizes (default: a middling car)
    .earlier = An earlier job by the same phone (a folder), again for each: its photos' corner noise and how far the hand turned are counted on (default: what the fit of the camera found)
    .photos = So many photos (default: the fewest that decide every check)
    .from = A camera position in mm: in front of the rear axle, to the vehicle's left, above the floor; again for each photo
    .after_move = Also say from where one photo is worth most after the stand was moved
    .width = Clear width of the bay, mm
    .ahead = Clear length in front of the vehicle's nose, mm (default: what the sheet needs, else 6000)
    .post = A post that nobody can stand in: in front of the rear axle, to the left, mm; again for each
    .json = Write the plan as JSON to a file, or to standard output with `-`
    .report = Write plan.html and plan.svg into this folder
help-bay = Measure how level and flat a bay's floor is
    .about-more = Floor sheets all over the bay are measured against the plane of the wheels: slope, unevenness, free length.
    .exit-codes = Exit code: 0 within every limit, 1 outside one, 2 unreadable, 3 one not proven
    .photos = Photos of the floor sheets and the wheel plates; neighbouring photos share some of them
    .camera = Camera file or the name of one
    .setup = Set-up sheet with [limits]: a file or the name of one
    .job = Job folder or job.toml with the vehicle's sizes
    .report = Write bay.html and bay.svg into this folder

## Measure

help-new = Make a job folder to fill
    .about-more = job.toml holds everything that a job may say, what is not known yet as comments; photos go into photos/.
    .folder = The job's folder, which is made; its last part is the job's number
    .setup = Set-up sheet: a name of the models, as `setup check` takes it
    .kit = Marker kit, a name of the models
    .camera = Camera, a name of the models; left out, each photo's own record chooses
help-verify = Measure a job's photos and decide on the checks of its set-up sheet
    .about-more = The report is a page (HTML), the same as PDF, the result as JSON, and a page for the customer. Attempts of one repair order (`series` in job.toml) that are given together are compared, and listed on one more page. After a correction one photo is enough: `verify --moved c.jpg JOB` takes it into the job and measures it with the first.
    .exit-codes = { help-job-codes }
    .jobs = Job folders
    .moved = A photo of the stand after it was moved and nothing else was: it is copied into the job and listed there; again for each further photo of that place
    .more = One more photo of the stand where the last photos found it
    .step = The step of the set-up sheet that these photos show, where the sheet has steps
    .json = Write the record as JSON to a file, or to standard output with `-`
    .report = Write the report into this folder
    .private = Also show what the photos' own records hold of people and things: positions, serial numbers, names
help-watch = Verify every job below a folder as its photos arrive
    .about-more = With --tripod: takes the photos of one job's camera, which stands on a tripod while the stand's screws are turned. After each standstill in a new place it says the verdict and the one thing to do first.
    .exit-codes = { help-job-codes }
    .folder = A job folder, or a folder with job folders in it
    .tripod = Take the photos that come into this folder, of a camera on a tripod, into the one job DIR: of each place in which the stand is at rest the newest; nothing in the folder is changed
    .step = The step of the set-up sheet that the tripod's photos show, where the sheet has steps
    .report = Write the reports into this folder
    .every = Look every so many seconds
    .once = End after the first look, with the worst job's exit code as `verify` has it
help-serve = Serve the technician's page, which phones in the bay open
    .about-more = Photos are judged as they arrive; then come the verdict, which way to move what, further attempts, and closing into an evidence folder.
    .listen = Where to listen; anything but 127.0.0.1 asks each device for the code on this terminal
    .jobs = The folder of job folders; made where it does not exist
    .key = Sign closed jobs with this key of ssh-keygen (ed25519); a .pub file names one that the agent holds
    .tls_cert = Encrypt with this certificate (PEM, those that vouch for it behind it); taken up anew when it changes
    .tls_key = The certificate's private key (PEM)
    .tls_own = Encrypt with a certificate of the page's own, made once and kept with the jobs
    .names = What phones type for this machine, such as bay.example; the own certificate bears it; may be repeated
    .log = Add every verdict that changed to this log of attempts, before it is shown (made by `baywitness log new DIR --origin NAME`)
help-explain = Say what a code of a report or an exit code means
    .about-more = For a finding: its meaning, where it comes from, how to see it in the bay, and what to do.
    .codes = Codes as they stand in a report, or exit codes; left out: all codes in one line each

## Prove

help-seal = Seal a job with its result and report in an evidence folder
    .about-more = The folder is a BagIt bag with SHA-512 digests, signed with --key as `ssh-keygen -Y sign -n baywitness-evidence` does. Jobs of one repair order are sealed side by side, each in a folder that can be checked and handed on alone; index-sha512.txt binds them.
    .jobs = Job folder; several of one repair order (`series`) get an evidence folder each, with an index
    .out = The evidence folder to make; a name that ends in .tar makes one file of it; for several jobs the folder that holds theirs
    .key = Sign with this key of ssh-keygen (ed25519); a .pub file names one that the agent holds
    .timestamp = Put in this answer of a timestamp authority (RFC 3161), given for a request of the same job and key
    .timestamp_request = Also write the request to send to a timestamp authority
    .log = Add each job to this log of attempts, and seal the proof of it (made by `baywitness log new DIR --origin NAME`)
help-certificate = Make a certificate of the workshop's own, to sign PDF reports with
    .about-more = For a workshop that has none from an authority. It vouches for itself: whoever reads the reports gets it, or its SHA-256, from the workshop. `verify --report`, `watch`, `seal` and `serve` sign with it (--sign-pdf).
    .name = Who signs: the workshop's name, as readers of a report will see it
    .out = The file to make: private key and certificate (PEM), readable by its owner alone; beside it, with the ending .crt, the certificate to hand on
    .years = How many years it counts, 10 at most
help-stamp = Timestamp an evidence folder or a signed PDF report
    .about-more = Writes the request for a timestamp authority (RFC 3161), and puts its answer into the folder or the report.
    .folder = Evidence folder, also as one file, or a PDF report that is signed
    .request = Write the request (RFC 3161) to send to a timestamp authority
    .answer = Put the authority's answer into the folder or the report
help-check = Check an evidence folder and measure its photos again
    .about-more = Looks at every byte, the signature and the timestamps, and compares the result and its reports with what the photos say now. Of a masked copy it measures the masked photos, and says how far that goes. Of a signed PDF report it says whether its bytes are those that were signed, by whom and since when.
    .exit-codes = Exit code: 0 intact and signed by a listed signer, 1 altered, 2 unreadable, 3 intact but unsigned, signer unknown or verdict not confirmed
    .folder = Evidence folder, also as one file, or a signed PDF report
    .timestamp_ca = Whose timestamps count: root certificates of authorities (PEM)
    .log = The log of attempts as it is now: it must still begin with what the folder's proof was signed for
    .json = Write the checks as JSON to a file, or to standard output with `-`
help-redact = Copy an evidence folder with its photos masked but for the markers
    .about-more = The copy still checks against the sealed digests; reports and attachments are left out. A folder whose photos do not give its result is not copied.
    .folder = { help-shared.evidence }
    .out = The copy to make; a name that ends in .tar makes one file of it
    .show = What else of every photo stays visible, as seen upright: left, top, right, bottom in percent

## Oversee

help-audit = Judge an archive of job and evidence folders
    .about-more = Uses every core and goes on where it was after any interruption. Writes a page, a table (CSV), a line for each job and each result whole; a build with the feature `parquet` also audit.parquet. Evidence as one file (.tar) is taken too.
    .exit-codes = { help-job-codes }
    .out = Where results and the report go; run again, only what is new or changed is judged
    .stdin = Read job paths from standard input and write one JSON line for each to standard output
    .recompute = Judge again what was judged before, by any version of the program, and list what that changed
    .log = Hold the archive against this log of attempts; what differs goes into log.json, the newest checkpoint into log-checkpoint
    .log_keys = Whose logs and witnesses count: a file of verifier keys, one a line
    .log_earlier = A checkpoint of the log that was kept from before (the one in the audit's own folder is used in any case)
    .log_orders = The log's secret that tells which repair order a missing attempt was of (default: DIR.private/order-salt, where it is)
help-log = Keep and check the append-only log of attempts
    .about-more = `verify --log`, `seal --log` and `serve --log` add every verdict to it, so that no attempt can be dropped, put in later or changed without being seen. The folder is a tiled transparency log (C2SP tlog-tiles) that any file server publishes as it is; what must stay private lies beside it, in DIR.private.
    .folder = The log's folder
help-log-new = Make an empty log with a key of its own
    .about-more = Prints the verifier key to publish. The private key, and the secret that salts repair orders, lie in DIR.private.
    .origin = The log's name, as a web address without https://, such as shop.example/attempts
help-log-show = List the newest entries
    .last = How many
help-log-check = Check every entry, hash and signature, and that no entry was changed since a checkpoint was kept
    .exit-codes = Exit code: 0 it holds, 1 it was rewritten, truncated, forked or altered, 2 unreadable, 3 it holds, but no key that counts signed it or times are out of order
    .keys = Whose logs and witnesses count: a file of verifier keys, one a line
    .earlier = A checkpoint that was kept from before; may be given several times
help-log-witness = Cosign the newest checkpoint as a witness, where it continues what this witness has seen
    .about-more = Run on another machine than the log's, on the shared folder or a copy of it. The cosigned checkpoint is put into DIR/witnessed; from a copy it is carried back there.
    .exit-codes = Exit code: 0 cosigned, 1 refused: the log was rewritten, truncated, forked or altered, 2 unreadable, the log's own key, or a memory of another log
    .key = The witness's key of ssh-keygen (ed25519), of no other use
    .name = The witness's name, such as association.example/witness
    .keys = The verifier key of the log: a file with one key a line
    .seen = Where this witness remembers what it saw (default: KEY.seen; a file of its own beside it for each further log)
help-trends = Say which mistakes happen, where and since when
    .about-more = Reads what `audit` or `verify --json` wrote. Compares first attempts and tells people, bays, sheets and kits apart, as far as the archive allows; names only what stands out beyond chance.
    .paths = Folders of audits or results, or files of results (JSON, or one a line)
    .out = Folder for report.html, trends.json, trends.csv and jobs.csv
    .by = What the page compares first: technician, bay, setup or vehicle
    .names = Show people's names; else they are pseudonyms, the same ones as long as people.key stays in the folder
    .reports = Folder with the jobs' reports (`verify --report`), to link them
help-due = List jobs whose retention period has ended, and timestamps to renew
    .about-more = Nothing is deleted.
    .on = The day (default: today)
    .ahead = Timestamps that end within so many days are due
    .json = Write the list as JSON to a file, or to standard output with `-`

## Train

help-gallery = Show each mistake in an invented bay, with cause and remedy
    .about-more = Photos and figures without and with the mistake.
    .out = Folder to write gallery.html and its pictures, jobs and reports into
    .codes = Codes to show; left out: all
help-drill = Practise on invented jobs with hidden mistakes
    .dir = The drill's folder
help-drill-new = Make jobs with hidden mistakes
    .level = 1: one large mistake, to 5: up to three small ones, or none
    .count = How many jobs
    .out = Folder to make; it must not hold a drill yet
    .seed = The same number makes the same mistakes again
help-drill-answer = Say what is wrong in a job; several mistakes are several answers
    .job = The job, such as DRILL-01
    .finding = The finding's code, or none
    .way = Which way to move: HOW-TO.txt lists the words
    .size = By how much, mm or degrees
help-drill-mark = Mark the answers, and add them to the trainee's progress
    .trainee = Who practised
    .progress = Where progress is kept (default: drills.jsonl beside the drill's folder); its page is written beside it
    .day = Day of the mark (default: today)
help-stage = Render an invented bay: a job folder and what is true of it
    .scene = Scene file (scene/1)
    .out = Folder to write; made where it does not exist, files in it are overwritten
    .truth_only = Write only truth.json's figures to the terminal, render nothing

## Tools

help-detect = Find the markers of photos, with the uncertainty of every corner
    .photos = Photos (JPEG, PNG or HEIC)
    .json = Write what was found as JSON to a file, or to standard output with `-`
help-schema = Print the JSON schema of what the program writes
    .format = A format, such as result/1; none lists those that there are
help-completions = Print what a shell needs to complete these commands
    .shell = The shell: bash, elvish, fish, powershell or zsh
help-man = Write the pages of the manual
    .out = Folder for one page of the program and one of each command
