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
evidence-log-unreadable = entry { $entry }: { $why }
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
    }: { $lies ->
        [nowhere] none of its { $gone } photos is in the archive
        [scattered] its { $photos } photos lie scattered, no job of the archive has all of them
        [refiled] its { $photos } photos are in { $path }, which is filed as another attempt or for another repair order, and in no job that is filed as this one was
        [stated] only the masked copy { $path } has its { $photos } photos, by digests as it states them: masked photos cannot show those, and it holds no proof of this log; ask for the whole folder
       *[partly] { $gone } of its { $photos } photos are in no job of the archive
    } ({ $entries })
evidence-log-entry = entry { $entry } at { $when }: { $verdict }
evidence-log-entry-with = entry { $entry } at { $when }: { $with ->
        [both] { $verdict } with another job.toml and set-up sheet
        [job] { $verdict } with another job.toml
        [setup] { $verdict } with another set-up sheet
        [photos] { $verdict } with other photos beside these
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } before; { $entries }
evidence-log-restated = the photos of { $path }, { $now } now, were judged otherwise: { $entries }
evidence-log-no-entry = { $path } is sealed, and the log has no entry of it
evidence-logged-before-taken = entry { $entry } was { $by ->
        [witness] seen by { $witness }
       *[log] logged
    } at { $when }, before { $what ->
        [calibration] the calibration was run
       *[photo] { $photo } was taken
    } at { $taken }: one of the clocks is false
evidence-logged-late = { $path }: entry { $entry }, the first of its photos, was logged at { $when }, more than a day after the last of its photos and its calibration ({ $taken })
evidence-log-unlogged = { $path } is not sealed, and its photos are in no entry
evidence-log-orders-unknown = no entry's repair order is that of a job of the archive under the secret that was given (--log-orders): it is not the log's secret, or every job was filed anew. Repair orders were not compared
evidence-log-summary = Log { $log }: { $size } entries, { $signed ->
        [yes] signed by a key that counts
       *[no] whose verifier key was not given (--log-keys)
    }{ $witnessed ->
        [yes] , cosigned by { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; it begins with every checkpoint that was kept
       *[no] { "" }
    }{ $unlogged ->
        [0] { "" }
        [one] ; { $unlogged } job is neither sealed nor in any entry
       *[other] ; { $unlogged } jobs are neither sealed nor in any entry
    }{ $late ->
        [0] { "" }
        [one] ; { $late } job was logged more than a day late
       *[other] ; { $late } jobs were logged more than a day late
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
evidence-file-unlike-neighbours =
    { $role ->
        [kit] Its kit file
        [setup] Its set-up sheet
       *[camera] Its camera file
    } is another one than that of the jobs before and after it under the same name, which have one and the same. It may have been changed for this job: compare both files (their SHA-256 are in the results' `inputs`).

# An audited archive.
evidence-audit-title = Audit of set-ups
evidence-audit-unreadable = unreadable, altered or gone
evidence-audit-unread =
    { $what ->
        [job-name] it looks like a job file, whose name is job.toml and nothing else: rename it
        [no-job] pictures lie in it as in a job, and no job file above them: put job.toml in its place again, or the pictures elsewhere
        [tar-name] it holds sealed evidence as one file, whose name ends in .tar: rename it
        [unfinished] it is what a seal that was broken off left: seal again, then delete it
        [packed] archives of this kind are not looked into: unpack it
        [link] it is a link that leads out of what is audited: name its target too, or put that in its place
        [deep] too many folders lie above it: name it itself
       *[system] { $why }
    }
evidence-audit-filter = Show rows with
evidence-audit-filter-hint = any of their words
evidence-audit-shown = { $shown } of { $count } shown
evidence-audit-foot = The vehicle maker's service information and local rules govern. These figures document set-ups and replace no procedure; the work is for trained people, and lasers and lifted vehicles need their own precautions.
evidence-audit-progress = { $done } of { $total } ({ $kept } from before), { $rate } a second, { $left } s left
evidence-audit-jobs = { $count } jobs, { $kept } of them kept from an earlier run
evidence-audit-across = share a photo or a set-up with another job, or have a file unlike those of the jobs beside them: see the report
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
        [gone] no longer there
       *[altered] altered
    }
evidence-state-copy =
    { $measured ->
        [yes] { $state } (masked copy)
       *[no] { $state } (masked copy, not measured again)
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
        [masked-photos] masked photos
        [signer] signer
        [authority] authority
        [measured-again] measured again
        [credentials] credentials
        [log] log
        [sensor-pattern] sensor's pattern
        [reports] reports
        [report-signature] report's signature
        [report-signer] report's signer
        [report-timestamp] report's timestamp
        [series] repair order's folders
        [series-signature] signature of the repair order's index
        [series-page] repair order's page
        [report-authority] report's authority
        [signing-time] signing time
        [report-signing-time] report's signing time
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] intact and signed
        [unknown] intact, signer unknown
        [unsigned] intact, unsigned
        [unconfirmed] intact and signed; its verdict is not confirmed
       *[altered] altered
    }
evidence-whole-copy =
    { $measured ->
        [yes] { $state }, as far as a masked copy shows it: its photos measure as recorded; what else they show is not bound to what was sealed
       *[no] { $state }, as far as a masked copy shows it: it was NOT measured again, and only the sealed folder shows whether the result follows from the photos
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
evidence-file-wrong = { $file }: { $why }
evidence-fetch = fetch.txt wants files from elsewhere: evidence holds all of its own
evidence-file-state =
    { $state ->
        [missing] { $file } is missing
        [added] { $file } was added
        [strange] { $file } is nothing that sealing puts there
       *[altered] { $file } was altered
    }
evidence-files = { $count } files, none missing, added or altered (SHA-512)
evidence-series-signer = { $index } is not signed by who signed { $folders }: it was written anew
evidence-unsigned = the folder is not signed
evidence-signed = by the key { $key }
evidence-name-not-utf8 = { $file } is not UTF-8
evidence-name-case = { $first } and { $second } differ only in upper and lower case
evidence-empty-folder = { $folder } is a folder without files, which no list has
evidence-name-link = { $file } is a link or another thing that is no file
evidence-too-many = there are more than { $count } files
evidence-stamped = sealed no later than { $when }, says { $authority }
evidence-copy-other-manifest = { $file } is not the one that { $list } lists
evidence-copy-signed = the sealed folder's, by the key { $key }
evidence-copy-unsigned = the sealed folder was not signed
evidence-copy-state =
    { $state ->
        [altered] { $file } is not as it was sealed, and not named as masked
        [missing] { $file } was sealed, is not here, and is not named as left out
        [no-photo] { $file } is named as masked and is no photo of the job
        [added] { $file } was not sealed, and is nothing that a copy has
        [says-more] { $file } says what no copy says of itself
       *[strange] { $file } is named as masked or left out, and was never sealed
    }
evidence-copy = { $count } files as they were sealed, { $masked } photos masked, { $left_out } files left out
evidence-not-measured = not measured again: the bytes are not those that were sealed
evidence-no-signers = no list of signers was given (--signers)
evidence-signer = { $who }, who is listed
evidence-signer-unknown = { $why }
evidence-no-authority = no authority's certificate was given (--timestamp-ca)
evidence-authority-false = { $why }
evidence-authority-ended = its certificate ended on { $day }, and no newer timestamp that counts covers it
evidence-authority = { $who }; its certificate ends on { $day }
evidence-measured = { $verdict }; every value within { $share } of its standard uncertainty of the recorded one; { $sentences ->
        [compared] everything else as recorded
       *[not] its sentences, by version { $recorded }, were not compared
    }
evidence-measured-unconfirmed = recorded is { $recorded }, confirmed is { $verdict }: the set-up sheet requires content credentials, and this check vouches for none that suffice (a program built with the feature credentials, and --credential-anchors); every value within { $share } of its standard uncertainty of the recorded one
evidence-masked = { $photos } photos show { $markers } markers where the sealed result has them; nothing binds what else they show
evidence-masked-no-markers = the photos show no marker that would bind them to the sealed result
evidence-masked-measured = { $verdict }; every value of the masked photos within { $share } standard uncertainties of the recorded one; what goes by whole photos and their own records was not looked for again
evidence-masked-size = { $photo } is not the photo that was sealed, masked: it has { $width } by { $height } pixels
evidence-masked-markers = { $photo } is not the photo that was sealed, masked: of { $recorded } recorded markers and { $seen } that it shows, { $found } lie at the same place
evidence-masked-no-camera = not measured again: the job names no camera and no camera file fits its photos, so that the sealed result measures nothing either
evidence-masked-cameras = not measured again: the job names no camera, several were chosen by the photos’ own records, and those were masked; the sealed folder holds them
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

# Reading and writing.
evidence-cannot =
    { $doing ->
        [read] cannot read { $path }: { $why }
        [write] cannot write { $path }: { $why }
        [make] cannot make the folder { $path }: { $why }
        [rename] cannot rename to { $path }: { $why }
        [folder] cannot read the folder { $path }: { $why }
        [move] cannot move { $path }: { $why }
        [remove] cannot remove { $path }: { $why }
        [lock] cannot lock { $path }: { $why }
        [protect] cannot protect { $path }: { $why }
        [key] cannot read the key { $path }: { $why }
       *[random] cannot get random numbers for a key: { $why }
    }
evidence-said = { $why }
evidence-further = { $first }; { $rest }
evidence-line = line { $line }: { $why }
evidence-unreadable = it cannot be read ({ $why })
evidence-not-utf8 = it is not UTF-8
evidence-size =
    { $what ->
        [manifest] it is not a file of a manifest's size
        [signature] it is not a file of a signature's size
        [small] it is not a file of the size that it has in a folder as sealed
       *[timestamp] it is not a file of a timestamp's size
    }

# Names and manifests.
evidence-path =
    { $problem ->
        [empty] it has an empty part
        [absolute] it is an absolute path
        [relative] it has a part that leads elsewhere (. or ..)
        [character] it has a backslash, a control character or another that not every system can store
        [special] it has a part that some systems treat specially (a device's name, a dot or blank at the end)
       *[long] it is too long
    }
evidence-manifest-line = it is not a SHA-512 in lower-case hexadecimal, two blanks and a path
evidence-manifest-path = it names "{ $path }": { $problem }
evidence-manifest-twice = it names { $path } a second time
evidence-manifest-order = it is not in the order and spelling in which it was written

# Keys and signatures.
evidence-key-none = { $path } is no private key of ssh-keygen ({ $why }): name an ed25519 key, or its .pub file where an agent holds it
evidence-key-kind = { $path } is a key of the kind { $kind }: make one with `ssh-keygen -t ed25519`
evidence-key-locked =
    { $typed ->
        [wrong] the key { $path } has a passphrase, and what was typed is not it: type it at a terminal, or add the key to the agent and name its .pub file
       *[nothing] the key { $path } has a passphrase: type it at a terminal, or add the key to the agent and name its .pub file
    }
evidence-key-agent = ssh-keygen does not sign with { $path }: { $why }
evidence-key-not-started = it cannot be started ({ $why }); install the OpenSSH client
evidence-key-refused = { $why }; is the key added to the agent (ssh-add)?
evidence-key-answer = its answer: { $why }
evidence-key-sign = cannot sign: { $why }
evidence-signature-none = it is no SSH signature ({ $why })
evidence-signature-spelling = it is not spelled as a signature is written
evidence-signature-purpose = it is for "{ $namespace }", not for "{ $own }"
evidence-signature-kind = it is by a key of the kind { $kind }, which this program does not check
evidence-signature-bytes = it does not belong to these bytes
evidence-signers-line = { $file }, line { $line }: { $problem }; write it as ssh-keygen's manual describes allowed signers
evidence-signers-unlisted = its key is not in the list of signers
evidence-signers-objection =
    { $why ->
        [authority] { $who } is listed as a certificate authority, which this program does not follow
        [excluded] { $who } leaves somebody out, and a signature does not say whose it is: list the names of those who may sign
        [namespace] { $who } may not sign for "{ $namespace }"
        [early] { $who } was not yet allowed to sign
       *[late] { $who } is no longer allowed to sign
    }
evidence-signers-no-key = it has no public key after the principals and options
evidence-signers-option = it has the unknown option "{ $option }"
evidence-signers-option-twice = it has the option "{ $option }" twice
evidence-signers-time = it has the time "{ $time }", which is none

# Sealing.
evidence-exists =
    { $form ->
        [file] { $path } is already there: name another file, or move it away first (sealed evidence is never changed)
       *[folder] { $path } is already there: name another folder, or move it away first (a sealed folder is never changed)
    }
evidence-seal-name = the file "{ $path }" cannot be kept under this name: { $problem }; rename it
evidence-seal-alike = the files { $first } and { $second } differ only in upper and lower case: rename one
evidence-seal-changed = { $path } changed while it was sealed: verify and seal again
evidence-seal-json = cannot write the result as JSON: { $why }
evidence-seal-far = the file "{ $file }" lies too many folders above the job: move it nearer
evidence-seal-gone = the file "{ $file }" was read for the job and is no longer there
evidence-one-file = { $file } is no evidence folder as one file: { $problem }
evidence-one-file-entry = { $file } is no evidence folder as one file: the entry "{ $entry }": { $problem }
evidence-one-file-problem =
    { $problem ->
        [link] it is a link or another thing that is no file
        [no-folder] it lies in no folder
        [second] it lies in a second folder
        [foreign] another program packed it: unpack it, then check the folder
        [twice] it is in the archive twice
        [empty] it is empty
       *[otherwise] an entry or its header was altered, or another program packed it
    }

# Timestamps.
evidence-stamp-wrong = the timestamp { $file }: { $why }
evidence-stamps-full = { $folder } holds { $count } timestamps already
evidence-token-form = it is no timestamp answer or token (RFC 3161, DER): { $why }
evidence-token-refused = it is a refusal by the authority (status { $status }): ask again
evidence-token-other = it was made for other bytes: ask for a timestamp of this folder
evidence-token-unsigned = it is not signed as it says ({ $why })
evidence-token =
    { $problem ->
        [no-token] it holds no token
        [no-signed-data] it holds no signed data
        [no-timestamp] it is signed data, but no timestamp
        [no-time] it holds no time
        [signers] it has not exactly one signer
        [no-certificate] it lacks the authority's certificate: ask with certReq
        [digest] it uses a digest that this program does not trust
        [version] it is of an unknown version
        [extensions] it carries extensions that this program does not know
        [bad-time] it holds a time that is none
        [no-attributes] it signs no attributes
        [no-kind] it does not sign what it is
        [other-kind] it signs another kind of content
        [no-digest] it does not sign its content
       *[unnamed-signer] it does not name the certificate that signed it (RFC 5816)
    }
evidence-token-altered = its time or its digest was altered
evidence-token-method = its method is one that this program does not know, { $method }
evidence-token-key = its signature is not by its certificate's key
evidence-certificate-unreadable = its certificate cannot be read ({ $why })
evidence-authorities = { $file }: { $why }; give the authority's root certificate in PEM
evidence-authorities-no-pem = it is no PEM file ({ $why })
evidence-authorities-empty = it holds no certificate
evidence-authorities-bad = it holds a bad certificate ({ $why })
evidence-authority-elsewhere = its certificate leads to none of the given authorities (--timestamp-ca)
evidence-authority-early = its time is before 1970
evidence-authority-unlisted = { $who }: { $why }
evidence-authority-wrong =
    { $problem ->
        [usage] its certificate is not for timestamps alone, marked as critical (RFC 3161, 2.3)
        [early] its certificate had not begun when it was made
       *[late] its certificate had ended when it was made
    }
evidence-token-turn = it is not a timestamp in its turn: one before it is missing, so that it covers nothing here
evidence-unstamped = none, though authorities were given (--timestamp-ca): whether there ever was one cannot be told
evidence-stamp-time =
    { $problem ->
        [ahead] it says { $when }, which lies ahead of this machine's clock by more than five minutes
       *[falls] it says { $when }, which is before the timestamp that it covers
    }
evidence-stamped-before =
    { $what ->
        [calibration] it says { $when }: stamped before the calibration ran, as the job says
       *[photo] it says { $when }: stamped before its photos were taken, as { $what } says
    }

# PDF reports that are signed.
evidence-pdf-field = Signature of this report
evidence-pdf-problem =
    { $problem ->
        [no-key] it holds no private key in PEM: name the key's file, or make one with `baywitness certificate`
        [locked] its private key is encrypted: write it out without a passphrase into a file that only you may read (`openssl pkey -in KEY -out FILE`)
        [key-kind] its key is of another kind: name one for ECDSA on P-256 or P-384, or for RSA with 2048 to 4096 bits
        [no-certificate] it holds no certificate in PEM, or too many: name the certificate's file with --certificate
        [unreadable] it holds a certificate that cannot be read: ask its issuer for it in PEM
        [other-key] none of its certificates belongs to the private key: name the one that was issued for this key
        [usage] its certificate is for other uses than signatures: ask for one with the key usage digitalSignature or nonRepudiation
        [early] its certificate does not count yet: set this machine's clock, or wait
        [late] its certificate has ended: get a new one, or make one with `baywitness certificate`
        [no-pdf] it is no PDF report of this program
        [signed-already] it is signed already: make the report again, and sign that
        [unsigned] it is a PDF without a signature: write it with --sign-pdf
        [range] its signature does not cover the whole file: something was added or cut off after it was signed
        [no-signature] its signature is none that this program reads (PAdES, one signer)
        [stamped-already] it has a timestamp already
        [no-room] the timestamp is larger than the place that was left for it: ask an authority whose answers are shorter
        [name] the name is empty, longer than 64 characters or has control characters or such that turn the direction of writing
       *[years] a certificate counts from 1 to 10 years
    }
evidence-pdf-by = by { $who }, over the whole file; the signer's own clock said { $when }
evidence-pdf-listed = { $who }, whose certificate was given
evidence-pdf-unlisted = its certificate is not among those that were given; its SHA-256 is { $print }
evidence-pdf-no-certificates = no certificates were given (--certificates)
evidence-pdf-stamped = signed no later than { $when }, says { $authority }
evidence-pdf-earlier = an earlier one, by { $who }, over the file's first { $count } bytes: what stands behind them was added later, and is not what that signer saw
evidence-pdf-earlier-false = an earlier signature, by { $who }, does not hold ({ $why }); the last one is by { $last }
evidence-pdf-uncounted =
    { $problem ->
        [usage] { $who }, whose certificate was given and is not for signatures
        [early] { $who }, whose certificate was given and had not begun when it was signed ({ $when })
       *[late] { $who }, whose certificate was given and had ended when it was signed ({ $when })
    }
evidence-pdf-claim =
    { $problem ->
        [ahead] the signer's own clock said { $when }, which lies ahead of this machine's clock: one of the two is wrong
       *[stamped] the signer's own clock said { $when }, yet the signature was stamped before that: that clock was wrong
    }
evidence-reports-same = { $count } files, each what the sealed result and photos give
evidence-reports-other = { $files }: not what the sealed { $result } and photos give, but another result’s or changed
evidence-reports-by-other = made by version { $recorded }: version { $now } cannot make them again, so that it cannot be told whether they are of this result
evidence-report-unsigned = the report (PDF) bears no signature
evidence-report-state =
    { $state ->
        [holds] report signed by { $who }, whom nobody vouched for here (--certificates)
        [listed] report signed by { $who }, whose certificate was given
        [unlisted] report signed by { $who }, whose certificate is not among those that were given, or did not count when it was signed
        [broken] the report's signature does not hold
       *[none] report not signed
    }
evidence-pdf-not-signed = This report is not signed: it was made anew without the key (--sign-pdf). The one that it replaces, signed by { $who }, is kept beside it as { $file }.
evidence-pdf-signature = its signature does not hold: { $why }
evidence-pdf-form = its signature cannot be read or written ({ $why })

# The log of attempts: what is wrong with its files.
evidence-log-none = { $folder } holds no log: make one with `baywitness log new { $folder } --origin NAME`, or name another folder
evidence-log-name = "{ $name }" is no name of a log or witness: write one like shop.example/attempts, without blanks and plus signs
evidence-verifier =
    { $problem ->
        [parts] "{ $text }" is no verifier key: it has no name, id and key between plus signs
        [base64] "{ $text }" is no verifier key: its key is not base64
        [kind] "{ $text }" is no verifier key: this program reads Ed25519 keys of logs (1) and witnesses (4)
        [key] "{ $text }" is no verifier key: its key is no Ed25519 key
       *[id] "{ $text }" is no verifier key: its id does not belong to its name and key
    }
evidence-verifier-line = { $file }, line { $line }: { $why }
evidence-note =
    { $problem ->
        [characters] it is no signed note: it has control characters or ends within a line
        [empty-line] it is no signed note: no empty line stands before its signatures
       *[signatures] it is no signed note: a line of its signatures is none
    }
evidence-note-count = it has { $count } signatures, not 1 to { $most }
evidence-checkpoint =
    { $problem ->
        [lines] it is no checkpoint: it has no origin, size and root
        [numbers] it is no checkpoint: its second line is no size or its third no root
       *[spelling] it is no checkpoint: it is not spelled as one
    }
evidence-checkpoint-false = it has a false signature of { $key }
evidence-checkpoint-unsigned = it is not signed by the key of { $log }
evidence-proof =
    { $problem ->
        [head] it is no proof: it has no empty line before a checkpoint
        [first-line] it is no proof: its first line is not { $first_line }
        [entry] it is no proof of an attempt: its second line does not hold the entry
        [index] it is no proof: its third line has no index
        [hash] it is no proof: a line of its path is no hash
        [spelling] it is not spelled as a proof is written
       *[path] it does not show that its entry is in the log: the path does not lead to the root
    }
evidence-proof-entry = it holds an entry that is none: { $why }
evidence-attempt-photos = { $count } photos are more than an entry of a log holds: split the job
evidence-attempt-form = it is no { $format } ({ $why })
evidence-attempt-spelling = it is not spelled as { $format } is
evidence-attempt-other = it is of another attempt: { $parts } differ
evidence-attempt-part =
    { $part ->
        [photos] photos
        [job] job.toml
        [setup] set-up sheet
        [result] result
       *[verdict] verdict
    }
evidence-no-result = it has no result beside it ({ $why })
evidence-bad-result = it has no result beside it that can be read ({ $why })
evidence-log-does-not-fit = it does not fit the log now: { $why }
evidence-tile =
    { $problem ->
        [none] it has no such tile
        [subtree] it is asked for a subtree that its tree does not have
       *[altered] it was altered
    }
evidence-tile-hashes = it does not hold { $count } hashes
evidence-tile-entries = it does not hold { $count } entries, each behind its length
evidence-tile-entry = it has another entry number { $entry } than the hash in tile/0 is of
evidence-tiles-level = it has hashes at level { $level } that are not of the tiles below
evidence-tiles-root = it holds tiles that do not give the root of its checkpoint of { $size } entries: they were altered, or belong to another state of the log
evidence-log-no-such-entry = it has { $size } entries, none with the number { $entry }
evidence-log-other = it is the log { $log }, { $file } is of { $other }
evidence-log-truncated = it has { $size } entries where { $file } has { $earlier }: the log was truncated, or this is an old copy
evidence-log-forked = it and { $file } are two checkpoints of { $size } entries with different roots: the log was forked
evidence-log-rewritten = it does not begin with the { $size } entries of { $file }: the log was rewritten
evidence-log-key-not-given = it is the log { $log }, whose verifier key was not given
evidence-witness-own-key = this key is that of the log { $log } itself, which cannot vouch for itself: name a key of the witness's own
evidence-witness-of-another = it remembers the log { $other }, not { $log }: name a file of its own for each log with --seen
evidence-log-key-file =
    { $problem ->
        [salt] it is no secret of 64 hexadecimal digits
        [no-key] it is no private key of ssh-keygen
        [kind] it is no ed25519 key without a passphrase
       *[other-key] it is not signed by the log's own key
    }
evidence-log-not-made = it gets no log: { $why }
evidence-log-exists = it is there already: a log is made once, and never anew under its name
evidence-log-no-key = it gets no key ({ $why })
evidence-log-refuses = it does not take the job: { $why }
evidence-log-went-back = it is not what { $file } was signed for ({ $why }): it went back to an older copy, or was altered. Bring the newest copy back; to go on would fork the log
evidence-log-published = an append that was cut off after it was signed is published: { $size } entries
evidence-log-removed =
    { $count ->
        [one] one file of an append that was cut off is removed: it was never acknowledged
       *[other] { $count } files of an append that was cut off are removed: it was never acknowledged
    }

# A job gathered, measured again, masked, audited.
evidence-altered = { $path } was altered: { $why }
evidence-altered-item = { $item }: { $found }
evidence-otherwise = { $path }: measured again, the photos say otherwise: { $differences }
evidence-judge-gone = { $path } was there when the archive was audited before, and is no more, nor does its job lie elsewhere in it; where it was rightly taken away, audit into another folder (--out)
evidence-judge-fault = the program failed on this job: please report it, with the job if that is possible
evidence-unpack-room = cannot make a folder to unpack { $path } into: { $why }
evidence-holds-no-job = { $folder } holds no job
evidence-ledger-busy = another audit is writing to { $folder }: wait for it, or name another folder
evidence-ledger-no-message = its result cannot be read
evidence-redact-altered = { $folder } is not intact: check it first
evidence-redact-otherwise = { $folder } is not copied: measured again, its photos say otherwise ({ $why }); check it
evidence-redact-copy = { $folder } is a copy already: name the sealed folder
evidence-redact-write = cannot write the masked copy of { $photo }: { $why }
evidence-remeasure-result = the recorded result { $file } cannot be read: { $why }
evidence-remeasure-room = no room to measure in: { $why }; make room for temporary files, and check again
evidence-remeasure-no-job = the folder holds no job
evidence-remeasure-job = the job in the folder cannot be measured: { $why }
evidence-difference = { $what }: recorded { $recorded }, now { $now }
evidence-difference-credentials = content credentials of { $photo }
evidence-credentials-gone = recorded, but no photo bears any
evidence-credentials-as-recorded = as recorded: { $counts }; this program was built without them and did not validate them again
evidence-difference-place = { $place } in { $file }
evidence-written-otherwise = { $file } is not as the program writes it: it says something twice, or something that no result has
evidence-more-files = neither the job nor its result has { $files }
evidence-label-other = { $file } says “{ $label }: { $value }”, which its result does not
evidence-label-count = { $file } says “{ $label }: { $value }”, and counted is { $counted }
evidence-found-shared = among the models, with its own bytes
evidence-found-own = in the job’s own folder
evidence-labels-lack = { $file } lacks labels that sealing writes
evidence-no-reports = there is none in the folder: sealing puts them there
evidence-unread-result = it cannot be read as a result
evidence-difference-what =
    { $what ->
        [job] job
        [verdict] verdict
        [inputs] inputs
        [findings] findings
        [checks] checks
        [reason] reason
        [budget] uncertainty budget
        [readings] readings
        [photos] photos
        [attachments] attachments
       *[quantities] quantities
    }
evidence-nothing = nothing
