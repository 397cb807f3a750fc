# Was die Befehle auf dem Bildschirm sagen, soweit es in keinen anderen Raum gehört.

## Fehler, Hinweise, Dateien

cli-error = Fehler: { $message }
cli-note = Hinweis: { $words }
cli-cannot-read = { $path } lässt sich nicht lesen: { $why }; Namen und Zugriffsrechte prüfen
cli-not-over-a-photo = { $path } ist ein Foto und bleibt, wie es ist: eine andere Datei zum Schreiben nennen. Eine Angabe, die schreibt, nimmt, was auf sie folgt; Fotos gehören vor sie
cli-not-over-no-json = { $path } ist schon da und keine JSON-Datei und bleibt darum, wie sie ist: hinter --json eine andere Datei nennen, oder - für die Standardausgabe
cli-not-over-an-input = { $path } ist eine Datei des Auftrags { $job } und bleibt, wie sie ist: hinter --json eine andere Datei nennen
cli-no-utf8 = { $path } ist kein Text in UTF-8: als UTF-8 speichern (in Tabellenprogrammen „CSV UTF-8“)
cli-cannot-write = { $path } lässt sich nicht schreiben: { $why }; Zugriffsrechte und freien Platz des Ordners prüfen oder einen anderen nennen
cli-cannot-make-folder = der Ordner { $path } lässt sich nicht anlegen: { $why }; Zugriffsrechte des Ordners darüber prüfen oder einen anderen nennen
cli-cannot-unpack = ein Ordner zum Entpacken lässt sich nicht anlegen: { $why }
cli-no-stdout = die Standardausgabe lässt sich nicht schreiben: { $why }
cli-no-threads = { $count } Threads lassen sich nicht starten: { $why }
cli-no-date = „{ $text }“ ist kein Datum: wie 2027-05-01 schreiben
cli-no-area = „{ $text }“ ist kein Bereich: links, oben, rechts, unten in Prozent schreiben, wie 10,20,60,90
cli-no-schema = „{ $format }“ hat kein Schema: eines von { $known } nennen
cli-no-evidence = { $folder } ist kein Nachweisordner: einen nennen, den `baywitness seal` angelegt hat
cli-no-carrier = der Markersatz { $kit } hat keinen Markerträger { $name }; er hat: { $known }
cli-no-photo = im Ordner { $folder } liegt kein Foto
cli-no-photo-but-below = im Ordner { $folder } liegt kein Foto: seinen Unterordner { $photos } nennen
cli-job-twice = { $job } und { $again } sind derselbe Auftrag: jeden Auftrag einmal nennen
cli-jobs =
    { $count ->
        [one] ein Auftrag
       *[other] { $count } Aufträge
    }
cli-verdict =
    { $verdict ->
        [within] innerhalb der Toleranz
        [outside] außerhalb der Toleranz
        [not_proven] nicht nachgewiesen
       *[retake] neu aufnehmen
    }
cli-passphrase = Passphrase von { $key }:

## `baywitness` allein

cli-next = Was als Nächstes getan werden kann:
cli-next-more = ... und { $count } weitere. Alle zusammen: baywitness audit . --out audit
cli-next-all-commands = Alle Befehle: baywitness --help
cli-next-sealed = { $folder }: versiegelt
cli-next-not-ready = { $folder }: noch nicht so weit
cli-next-photos =
    { $count ->
        [one] { $folder }: ein Foto
       *[other] { $folder }: { $count } Fotos
    }
cli-next-one-more = mindestens ein weiteres aufnehmen, von der anderen Seite schräg vorn
cli-next-answer = unter [prerequisites] in job.toml beantworten: { $questions }

## new: die Datei des Auftrags

cli-new-made = { $folder }/job.toml ist auszufüllen, Fotos kommen in { $folder }/photos. Danach: baywitness verify { $folder }
cli-new-is-there = { $folder } gibt es schon: einen anderen Namen wählen, überschrieben wird nichts
cli-new-no-number = { $folder } gibt dem Auftrag keine Nummer: mit einer enden, etwa jobs/D-0042
cli-new-sheet = Vorgabeblatt { $sheet }: { $key } { $problem }; { $remedy }
cli-new-source = Quelle: { $source }
cli-new-camera = weggelassen: jedes Foto wählt sie nach seinen eigenen Angaben
cli-new-series = Reparaturauftrag: seine Versuche und Sensoren haben ihn gemeinsam
cli-new-wheelbase = wird mit den Fotos verglichen; allein benutzt, wo sie keine vorderen Radplatten zeigen
cli-new-nose = wird mit den Fotos verglichen; allein benutzt, wo sie keine Frontmarke zeigen
cli-new-hub = wird mit den Fotos verglichen; allein benutzt, wo sie kein Bodenblatt zeigen
cli-new-rear-track = von Nabe zu Nabe: zeigt, ob die hinteren Radplatten auf ihren Naben sitzen
cli-new-front-track = von Nabe zu Nabe: zeigt, ob die vorderen Radplatten auf ihren Naben sitzen
cli-new-required = { $question } (Pflicht)
cli-new-reading = abgelesen mit Laser, Maßband, Wasserwaage oder am Achsmessstand
cli-new-steps = Dieses Blatt hat die Schritte { $steps }: zu jedem Foto angeben, welchen es zeigt.

## Fotos, die zu einem Auftrag hinzukommen

cli-move-step-lacks = das Vorgabeblatt „{ $sheet }“ hat Schritte: angeben, welchen das Foto zeigt: { $steps }
cli-move-no-steps = das Vorgabeblatt „{ $sheet }“ hat keine Schritte: --step "{ $step }" weglassen
cli-move-no-such-step = „{ $step }“ ist kein Schritt des Vorgabeblatts „{ $sheet }“: einen davon angeben: { $steps }
cli-move-too-often = das Gestell von { $job } wurde schon { $most }-mal bewegt: einen neuen Auftrag beginnen
cli-move-is-there = { $photo } ist schon ein Foto von { $job }: ein neues nennen; wurde das Gestell davor bewegt, bei seinem [[photo]] in job.toml `after_move = 1` eintragen
cli-move-no-name = { $file } hat keinen Namen, der in einer Auftragsdatei stehen kann: umbenennen
cli-move-name-taken = in { $folder } gibt es andere Fotos namens { $name }: das neue umbenennen

## watch --tripod

cli-tripod-no-folder = { $folder } ist kein Ordner: den nennen, in den die Fotos der Kamera kommen
cli-tripod-too-few =
    { $count ->
        [0] { $job } hat noch kein erstes Foto: zwei von verschiedenen Stellen aufnehmen und prüfen, dann das Stativ aufstellen
        [one] { $job } hat nur ein erstes Foto: noch eines von einer anderen Stelle aufnehmen und prüfen, dann das Stativ aufstellen
       *[other] { $job } hat nur { $count } erste Fotos: weitere von anderen Stellen aufnehmen und prüfen, dann das Stativ aufstellen
    }
cli-tripod-left-out =
    { $count ->
        [one] Ein Bild liegt schon in { $folder }: es bleibt unberücksichtigt.
       *[other] { $count } Bilder liegen schon in { $folder }: sie bleiben unberücksichtigt.
    }
cli-tripod-watching = { $folder } wird für { $job } beobachtet; Strg-C beendet es.
cli-tripod-line = { $photo }: { $what }
cli-tripod-kept = { $seen }: { $kept }
cli-tripod-verdict = Nach Bewegung { $move }: { $verdict }. { $reason }
cli-tripod-do-first = Zuerst:

## detect, gauge, stage, due

cli-detect-photo =
    { $count ->
        [one] { $photo }: ein Marker, Unschärfe { $blur } px, Kantenversatz { $offset } px (korrigiert)
       *[other] { $photo }: { $count } Marker, Unschärfe { $blur } px, Kantenversatz { $offset } px (korrigiert)
    }
cli-detect-marker =
    { $covered ->
        [yes] { $side } px, Ecken { $corners } ± { $u } px, eine Ecke ist verdeckt
       *[no] { $side } px, Ecken { $corners } ± { $u } px
    }
cli-detect-corner = ({ $u }; { $v })
cli-gauge-line = { $file }, Zeile { $line }: { $why }
cli-gauge-head = die Kopfzeile muss die Spalten operator, part und value nennen
cli-gauge-reading = braucht einen Prüfer (operator), ein Teil (part) und eine Zahl als Wert (value)
cli-gauge-cells = hat { $found } Zellen, die Kopfzeile hat { $wanted }: mit „{ $separator }“ trennen wie die Kopfzeile; ist das ein Komma, dann mit Dezimalpunkt
cli-gauge-range = Mittelwert und Spannweite (AIAG MSA)
cli-gauge-anova = Varianzanalyse (AIAG MSA)
cli-gauge-deviations = { $method }: Wiederholpräzision { $repeatability }, Vergleichspräzision { $reproducibility }, Messmittel { $gauge }, Teile { $parts } (Standardabweichungen)
cli-gauge-share = das Messmittel macht { $percent } % der Gesamtstreuung aus; unterscheidbare Klassen: { $categories } (fünf genügen)
cli-gauge-untold = wiederholte Ablesungen und die mehrerer Prüfer unterscheiden sich nicht: der Anteil des Messmittels an der Streuung und die unterscheidbaren Klassen lassen sich nicht sagen
cli-staged =
    { $count ->
        [one] { $folder }: ein Foto und truth.json
       *[other] { $folder }: { $count } Fotos und truth.json
    }
cli-due-may-go = aufzubewahren bis { $day }: darf gelöscht werden
cli-due-stamp = Zeitstempel gilt bis { $day }: neu stempeln
cli-due-sum = am { $on } fällig: { $due }, noch nicht fällig: { $kept }; gelöscht wurde nichts

## seating

cli-seating-times =
    { $count ->
        [one] { $plate }: einmal aufgespannt; Abweichungen vom Mittel längs der eigenen Achsen und um sie
       *[other] { $plate }: { $count }-mal aufgespannt; Abweichungen vom Mittel längs der eigenen Achsen und um sie
    }
cli-seating-scatter = Die Messung allein streut um { $mm } mm und { $degrees }° (herausgerechnet)
cli-seating-keys = { $keys } (1 Sigma, erweitert für { $freedom } Freiheitsgrade)
cli-seating-run-out = Rad um { $turn }° gedreht: Drehachse { $camber }° um x (Sturz) und { $heading }° um z (Richtung) neben der Achse der Platte.
cli-seating-beside = Die Drehachse liegt { $ahead } mm vor und { $above } mm über dem Nabenpunkt der Platte.
cli-seating-rolled = Das Rad ist weitergerollt, zum Nabenpunkt wird nichts gesagt.
cli-seating-head =
    { $count ->
        [one] Sitz von { $plate } aus einem Aufspannen.
       *[other] Sitz von { $plate } aus { $count }-maligem Aufspannen.
    }
cli-seating-no-target = der Markersatz hat kein Gestell: mit --against einen Markerträger nennen
cli-seating-no-result = { $path } ist weder ein Ordner mit Fotos noch das Ergebnis eines Auftrags ({ $why }): mit verify --json schreiben

## seal, stamp, redact

cli-sealed-one = Auftrag { $job } versiegelt, Urteil: { $verdict }, Ordner { $folder }, Dateien: { $files }.
cli-sealed-signed = Signiert für „{ $namespace }“ über { $file }.
cli-sealed-unsigned = Nicht signiert: der Ordner zeigt zufällige Änderungen, keine absichtlichen. Zum Signieren mit --key versiegeln.
cli-sealed-send = { $file } an eine Zeitstempelstelle senden, danach: baywitness stamp { $folder } --answer FILE
cli-sealed-check = Jederzeit prüfbar: baywitness check { $folder }
cli-sealed-several =
    { $count ->
        [one] Ein Auftrag des Reparaturauftrags { $order } versiegelt, in einem eigenen Nachweisordner:
       *[other] { $count } Aufträge des Reparaturauftrags { $order } versiegelt, jeder in einem eigenen Nachweisordner:
    }
cli-sealed-index = Das Verzeichnis { $file } bindet sie zusammen. Jeder Ordner ist jederzeit prüfbar: baywitness check FOLDER
cli-seal-several-folders = mehrere Aufträge werden zu Ordnern mit je eigenem Zeitstempel: ohne --timestamp in einen Ordner versiegeln, dann jeden mit `baywitness stamp` stempeln, oder sie einzeln versiegeln
cli-seal-no-series = Aufträge werden nur gemeinsam versiegelt, wenn alle denselben Reparaturauftrag nennen (`series` in job.toml): ihn nennen oder einzeln versiegeln
cli-seal-no-name = { $path } ist kein Name
cli-stamp-request = Geschrieben: { $file }. An eine Zeitstempelstelle senden, danach: baywitness stamp { $folder } --answer FILE
cli-stamp-no-answer = die Antwort mit --answer nennen
cli-stamped = { $folder } gestempelt: Zeit nach { $authority }: { $when }. Vor dem { $ends } neu stempeln, dann endet das Zertifikat der Stelle.
cli-stamp-sealed = { $file } liegt in einem versiegelten Ordner, der nie geändert wird: den Ordner stempeln oder einen Bericht außerhalb
cli-stamped-pdf = { $file } gestempelt: Zeit nach { $authority }: { $when }; das Zertifikat der Stelle endet am { $ends }.
cli-pdf-large = { $file } ist zu groß für einen Bericht
cli-certificate-made = Angelegt: { $file }, für niemand sonst lesbar, und { $public } zum Weitergeben; das Zertifikat endet am { $ends }.
cli-certificate-next = Berichte damit signieren: baywitness verify JOB --report DIR --sign-pdf { $file }
cli-certificate-ending = { $file } hat die Endung des Zertifikats, das daneben geschrieben wird: eine andere nehmen, etwa .pem
cli-redacted = Angelegt: { $folder }; Fotos maskiert, Berichte und Anhänge weggelassen, alle übrigen Dateien wie versiegelt.
cli-redacted-credentials =
    { $count ->
        [one] Die Herkunftsnachweise von { $count } Foto fehlen in der Kopie: Sie gelten für die ganze Datei, und die ist maskiert. Der versiegelte Ordner behält sie.
       *[other] Die Herkunftsnachweise von { $count } Fotos fehlen in der Kopie: Sie gelten für die ganzen Dateien, und die sind maskiert. Der versiegelte Ordner behält sie.
    }
cli-redacted-check = Wer ihn erhält, prüft ihn mit: baywitness check { $folder }

## Das Versuchsprotokoll

cli-logged-one = Protokolliert als Eintrag { $entry } von { $log }.
cli-logged-several = Protokolliert als Einträge { $first } bis { $last } von { $log }.
cli-log-made = Versuchsprotokoll { $log } in { $folder } angelegt. Diesen Ordner veröffentlichen; wer ihn prüft, braucht diese Zeile:
cli-log-private = Niemals veröffentlichen: { $folder }, dort liegt der Schlüssel des Protokolls. Ein Prüfer darf daraus order-salt erhalten, um die Reparaturaufträge fehlender Versuche zu benennen.
cli-log-photos =
    { $photos ->
        [one] ein Foto
       *[other] { $photos } Fotos
    }
cli-log-attempt =
    { $photos ->
        [one] ein Foto, Versuch { $attempt }
       *[other] { $photos } Fotos, Versuch { $attempt }
    }
cli-log-size =
    { $count ->
        [one] ein Eintrag in { $log }
       *[other] { $count } Einträge in { $log }
    }
cli-log-holds =
    { $count ->
        [one] { $log }: ein Eintrag, passend zu seinem Hash, und der Hash passend zur Wurzel des Prüfpunkts
       *[other] { $log }: { $count } Einträge, jeder passend zu seinem Hash, jeder Hash passend zur Wurzel des Prüfpunkts
    }
cli-log-witnessed =
    { $count ->
        [one] { $witness } hat einen Eintrag gesehen, { $when }
       *[other] { $witness } hat { $count } Einträge gesehen, { $when }
    }
cli-log-continues = Es beginnt mit jedem genannten Prüfpunkt.
cli-log-disordered =
    { $count ->
        [one] Ein Eintrag hat eine Zeit, die nicht zu der seiner Nachbarn passt (`baywitness audit --log` nennt ihn).
       *[other] { $count } Einträge haben Zeiten, die nicht zu denen ihrer Nachbarn passen (`baywitness audit --log` nennt sie).
    }
cli-log-odd =
    { $count ->
        [one] Ein Eintrag ist nicht von diesem Programm.
       *[other] { $count } Einträge sind nicht von diesem Programm.
    }
cli-log-no-key = Ob das Protokoll dies signiert hat, ist nicht bekannt: sein Prüfschlüssel wurde nicht genannt (--keys).
cli-log-agent-key = { $key } nennt einen Schlüssel, den ein Agent hält und der keine Notizen signiert: den privaten Schlüssel nennen
cli-log-cosigned-first =
    { $count ->
        [one] { $log } bei einem Eintrag gegengezeichnet, zum ersten Mal gesehen: { $file }
       *[other] { $log } bei { $count } Einträgen gegengezeichnet, zum ersten Mal gesehen: { $file }
    }
cli-log-cosigned =
    { $count ->
        [one] { $log } bei einem Eintrag gegengezeichnet, Fortsetzung des zuvor Gesehenen ({ $seen }): { $file }
       *[other] { $log } bei { $count } Einträgen gegengezeichnet, Fortsetzung der zuvor gesehenen { $seen }: { $file }
    }
cli-log-witness-key = Der Schlüssel des Zeugen, für alle, die das Protokoll prüfen:

## serve

cli-serve-alone = Die Seite ist unter { $link } nur für diesen Rechner erreichbar. Strg-C beendet sie.
cli-serve-at = Die Seite ist erreichbar unter { $link }
cli-serve-code = Code für Geräte: { $code }. Wer ihn hat, darf jeden Auftrag sehen und ändern.
cli-serve-open = Das Netz kann mitlesen: jedes Foto, jeden Auftrag und den Schlüssel jedes Geräts dazu. Mit --tls-own oder --tls-cert verschlüsseln oder nur das eigene Netz der Werkstatt verwenden, das verschlüsselt sein muss.
cli-serve-encrypted = Die Verbindung ist verschlüsselt.
cli-serve-end = Strg-C beendet sie.
cli-serve-certificate = Zertifikat, SHA-256: { $digest }
cli-serve-root = Wurzel, der Telefone vertrauen können, SHA-256: { $digest }

## plan, recheck, sheet, trends

cli-plan-numbers = { $count } Zahlen in mm angeben, wie 7200,1700,1500 (kein Platz ist größer als 50000)
cli-plan-length = eine Länge von 500 bis 50000 mm angeben
cli-plan-earlier = kein Foto von { $job } ließ sich messen: einen früheren Auftrag nennen, den `baywitness verify` misst
cli-recheck-no-log = { $file } ist kein Protokoll von Nachprüfungen: die erste Zeile ist nicht „{ $head }“
cli-recheck-no-check = { $file }, Zeile { $line }: ist keine Nachprüfung
cli-sheet-measured = nach rechts und nach oben als zwei Zahlen mit Dezimalpunkt und einem Komma dazwischen, wie 159.6,160.1
cli-sheet-corrected = { $file } enthält schon Größen wie gedruckt, sie würden doppelt berichtigt: die Datei berichtigen, die gedruckt wurde (etwa bay-a4). Wurde eben diese Datei gedruckt, zuerst ihre Zeile „{ $line }“ löschen
cli-no-people-key = { $path } ist kein Schlüssel aus 64 Hexadezimalziffern: für neue Pseudonyme löschen oder wiederherstellen

## audit, camera

cli-audit-nothing = Kein Auftrag und kein Nachweisordner gefunden: einen Ordner nennen, der welche enthält
cli-audit-no-report = Der Bericht des Prüflaufs lässt sich nicht schreiben: { $why }
cli-no-stdin = Die Standardeingabe ist nicht lesbar: { $why }
cli-log-put-right = { $log }: { $what }.
cli-camera-no-report = Ein Bericht zeigt Fotos einer Tafel; bei einem Markersatz --report weglassen

## Kommentare am Kopf von Dateien, die das Programm schreibt

cli-file-not-fit = NICHT VERWENDBAR: { $why }
cli-file-surveyed = Eingemessen aus { $photos } Fotos. Wer diese Datei von Hand ändert, macht ihre Anordnung ungültig: neu einmessen.
cli-file-length = Gemessene Länge { $length }
cli-file-printed = Größen wie auf Papier { $paper } gedruckt: die Prüflineale messen { $right } mm nach rechts und { $up } mm nach oben.
