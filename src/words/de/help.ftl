# Was das Programm von sich selbst sagt: `baywitness --help`, die Hilfe jedes Befehls, das Handbuch,
# und was an der Eingabe nicht stimmt.
#
# `help-BEFEHL` ist der Befehl in einer Zeile (höchstens 85 Zeichen), seine Attribute sind seine Angaben
# nach ihrem Namen im Programm; `.about-more` steht unter der Zeile, `.exit-codes` am Ende.

help-baywitness = Weist aus gewöhnlichen Fotos nach, wo ein Kalibrierziel stand, mit einer Unsicherheit zu jedem Wert
help-shared =
    .cameras = Zu jedem Foto sagen, welche Kamera es aufgenommen hat, nach dem eigenen Muster des Sensors: ein Ordner mit Mustern, die `camera fit --pattern` erstellt hat; kein Exit-Code hängt davon ab, und `audit` hält es in cameras.jsonl fest
    .quiet = Nur Fehler ausgeben: das Übrige sagen der Exit-Code und die verlangten Dateien
    .language = Sprache von allem, was Menschen lesen: en, de, es oder fr (ohne Angabe: die der Umgebung); Dateien für Programme haben keine
    .help = Hilfe ausgeben: mit -h kurz, mit --help vollständig
    .version = Version ausgeben
    .models = Ordner mit setups/, kits/ und cameras/, in dem Namen gesucht werden
    .threads = Anzahl der Threads (ohne Angabe: einer je Kern)
    .json = Ergebnis als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe
    .kit = Markersatz: eine Datei oder der Name eines Markersatzes
    .camera = Kamera: eine Datei oder ein Name unter den Modellen (ohne Angabe: nach den Angaben jedes Fotos gewählt)
    .setup = Vorgabeblatt: eine Datei oder der Name eines Vorgabeblatts
    .signers = Wessen Signaturen zählen: eine Datei erlaubter Unterzeichner, wie ssh-keygen sie kennt
    .credential_anchors = Wessen Herkunftsnachweise (C2PA) zählen: Zertifikate (PEM), die für die Unterzeichner der Fotos bürgen; braucht ein Programm, das mit der Eigenschaft `credentials` gebaut wurde
    .log = Jedes Urteil in dieses Versuchsprotokoll eintragen, bevor es gezeigt wird (angelegt mit `baywitness log new DIR --origin NAME`)
    .log_keys = Wessen Versuchsprotokolle zählen: eine Datei mit Prüfschlüsseln von Protokollen und Zeugen, einer je Zeile
    .evidence = Nachweisordner, auch als eine Datei
    .paths = Ordner, die Auftrags- und Nachweisordner enthalten oder selbst solche sind
    .sign_pdf = PDF-Bericht mit diesem privaten Schlüssel signieren (PEM; `baywitness certificate NAME --out FILE` legt einen an)
    .certificate = Das Zertifikat des Schlüssels, der den Bericht signiert (PEM, dahinter die, die dafür bürgen), wenn es nicht in der Datei des Schlüssels steht
    .certificates = Wessen Signaturen von PDF-Berichten zählen: die Zertifikate der Unterzeichner selbst (PEM)
help-with-default = { $help } (ohne Angabe: { $value })
help-help = Hilfe zu einem Befehl ausgeben

## Die Seite aller Befehle

help-usage = Aufruf:
help-usage-options = [OPTIONEN]
help-usage-command = BEFEHL
help-arguments = Angaben:
help-options = Optionen:
help-commands = Befehle:
help-start = Für den Anfang:
    .sheet = ein Markersatz zum Drucken, Schneiden und Kleben
    .new = ein Auftragsordner; Fotos kommen in JOB/photos
    .verify = das Urteil und ein Bericht zum Weitergeben
help-each = Jeder Befehl hat eine eigene Hilfe: { $command }
help-phase-prepare = Vorbereiten
    .when = Markersatz, Kamera, Vorgabeblatt und Kalibrierplatz, einmal und nach jeder Änderung
help-phase-measure = Messen
    .when = bei jedem Auftrag
help-phase-prove = Nachweisen
    .when = Nachweise zum Weitergeben und Prüfen
help-phase-oversee = Überblicken
    .when = viele Aufträge
help-phase-train = Üben
    .when = erfundene Kalibrierplätze
help-phase-tools = Werkzeuge
    .when = für andere Programme und die Shell

## Überschriften des Handbuchs

help-man-name = BEZEICHNUNG
help-man-synopsis = ÜBERSICHT
help-man-description = BESCHREIBUNG
help-man-options = OPTIONEN
help-man-commands = BEFEHLE
help-man-codes = EXIT-CODES
help-man-version = VERSION

## Was an der Eingabe nicht stimmt

help-wrong-argument = unbekannte Angabe „{ $argument }“
help-wrong-command = den Befehl „{ $command }“ gibt es nicht
help-wrong-value = „{ $value }“ gilt nicht für { $argument }: { $why }
help-wrong-choice = „{ $value }“ gilt nicht für { $argument }: eines von { $known } wählen
help-no-value = { $argument } braucht einen Wert
help-too-many-values = { $argument } nimmt keinen weiteren Wert: „{ $value }“ weglassen
help-number-of-values =
    { $wanted ->
        [one] { $argument } nimmt einen Wert, angegeben: { $actual }
       *[other] { $argument } nimmt { $wanted } Werte, angegeben: { $actual }
    }
help-conflict = { $argument } geht nicht zusammen mit { $others }
help-twice = { $argument } darf nur einmal angegeben werden
help-missing = es fehlt noch: { $arguments }
help-missing-command = „{ $command }“ braucht einen Befehl: { $known }
help-no-text = die Eingabe ist kein gültiges Unicode (UTF-8)
help-wrong-otherwise = falscher Aufruf: { $why }
help-did-you-mean = War { $names } gemeint?
help-more = Mehr: { $command } --help
help-not-whole = eine ganze Zahl angeben
help-not-whole-within = eine ganze Zahl von { $from } bis { $to } angeben
help-not-number = eine Zahl angeben, wie 12.5
help-not-address = eine Adresse mit Port angeben, wie 127.0.0.1:8425
help-not-choice = eines von { $known } wählen

## Exit-Codes, die mehrere Befehle gemeinsam haben

help-job-codes = Exit-Code: 0 innerhalb der Toleranz, 1 außerhalb, 2 nicht lesbar, 3 nicht nachgewiesen, 4 Fotos neu aufnehmen; bei mehreren Aufträgen der erste, der vorkommt, aus 2, 4, 1, 3, 0
help-fit-codes = Exit-Code: 0 erledigt, 2 nicht lesbar, 3 nicht verwendbar, oder zu wenig, um etwas zu sagen

## Vorbereiten

help-sheet = Markersatz oder Kameratafel als PDF in wahrer Größe ausgeben
    .about-more = Lineale auf jedem Blatt zeigen, was der Drucker wirklich getan hat, Zeichnungen, wie jeder Markerträger gebaut wird.
    .model = Markersatz oder Tafel: eine Datei oder ein Name unter den Modellen
    .out = Die PDF-Datei, die geschrieben wird
    .paper = Das Papier im Drucker: a4, a3 oder letter
    .measured_mm = Was auf den beiden Prüflinealen von 160,0 mm nach dem Druck auf dieses Papier abgelesen wird, nach rechts und nach oben
    .corrected = Wohin der Markersatz oder die Tafel mit den gedruckten Größen geschrieben wird
    .models = Ein Ordner mit Modellen, der zuerst durchsucht wird
help-camera = Kamera an Fotos einer Tafel anpassen
help-camera-fit = Kamera an 12 bis 20 Fotos einer Tafel oder an Fotos eines eingemessenen Markersatzes anpassen
    .exit-codes = { help-fit-codes }
    .photos = Fotos der Tafel (oder des Markersatzes), alle von einer Kamera mit derselben Brennweite
    .board = Die Tafel, oder stattdessen ein eingemessener Markersatz: eine Datei oder ein Name unter den Modellen
    .out = Die Kameradatei, die geschrieben wird
    .model = Das Objektivmodell: brown-conrady für die meisten Objektive, kannala-brandt für sehr weitwinklige
    .report = Eine Seite mit Restabweichungen, Abdeckung und Unsicherheit in diesen Ordner schreiben
    .pattern = Auch das eigene Muster des Sensors schreiben, an dem verify, check und audit --cameras die Fotos der Kamera wiedererkennen; der Name endet auf .pattern
help-survey = Bestimmen, wo die Marker eines Markersatzes wirklich auf ihren Markerträgern sitzen
    .about-more = Den Maßstab geben Längen, die am Markersatz gemessen werden; was gefunden wird, wird mit seiner Kovarianz geschrieben.
    .exit-codes = { help-fit-codes }
    .photos = Sechs oder mehr Fotos des Markersatzes von allen Seiten; dazwischen bewegt sich nichts
    .kit = Der Markersatz, wie er gebaut ist: eine Datei oder ein Name unter den Modellen
    .out = Der eingemessene Markersatz, der geschrieben wird; seine Anordnung wird daneben geschrieben
    .lengths = Eine zwischen zwei Markerecken gemessene Länge mit ihrer Standardunsicherheit, wie 10:tl,13:tr=1200.4~0.3 (Ecken tl tr br bl, oder 0 bis 3 in dieser Reihenfolge); auch mehrmals
    .apart = Markerträger können sich zwischen den Fotos gegeneinander bewegt haben: jeden für sich einmessen
    .serial = Seriennummer, die in den Markersatz geschrieben wird
    .due = Wann der Markersatz neu einzumessen ist, wie 2027-05-01
    .report = Eine Seite mit einem Bild jedes Markerträgers in diesen Ordner schreiben
    .models = Ordner mit kits/ und cameras/, in dem Namen gesucht werden
help-seating = Messen, wie wiederholbar eine Radplatte sitzt
    .about-more = Die Platte wird immer wieder aufgespannt, während das Gestell bleibt, wo es ist; mit einer halben Drehung des Rades kommt der Schlag der Platte hinzu.
    .exit-codes = { help-fit-codes }
    .seatings = Ein Ordner mit Fotos für jedes Aufspannen der Platte, oder Ergebnisdateien von `verify --json`
    .kit = Der Markersatz: eine Datei oder ein Name unter den Modellen
    .plate = Die Platte: ein Markerträger des Markersatzes
    .against = Ein Markerträger, der blieb, wo er war (ohne Angabe: das erste Gestell)
    .turned = Ebenso, nachdem das Rad um eine halbe Drehung gedreht wurde und die Platte aufgespannt blieb: gibt den Schlag
    .out = Der Markersatz, der geschrieben wird, mit dem gefundenen Sitz bei dieser Platte
help-gauge = Streuung von Ablesungen auf Messmittel, Personen und Teile aufteilen
    .readings = Ablesungen: eine CSV-Datei mit den Spalten operator, part und value
    .method = Wie die Streuung aufgeteilt wird: range (Mittelwert und Spannweite) oder anova (Varianzanalyse); ohne Angabe beides
help-recheck = Feste Referenz gegen ihr erstes Einmessen prüfen
    .about-more = Jede Nachprüfung fügt einem Protokoll eine Zeile hinzu, und Regelkarten zeigen alle.
    .exit-codes = Exit-Code: 0 in Ordnung, 2 nicht lesbar, 3 etwas hat sich bewegt oder ließ sich nicht messen
    .photos = Fotos der Referenz, vier oder mehr von verschiedenen Seiten
    .kit = Die Referenz, wie zuerst eingemessen: der Markersatz, den `survey` geschrieben hat
    .log = Das Protokoll aller Nachprüfungen; eine Zeile kommt hinzu
    .date = Der Tag, wo die Angaben der Fotos ihn nicht nennen
    .report = Die Regelkarten in diesen Ordner schreiben
help-setup = Vorgabeblatt erklären und prüfen
help-setup-check = Vorgabeblatt erklären, Widersprüche finden und sagen, welcher Markersatz zum Entscheiden taugt
    .exit-codes = Exit-Code: 0 in Ordnung, 2 nicht lesbar, 3 es widerspricht sich, oder kein Markersatz entscheidet jede Prüfung
    .kit = Markersatz, der erprobt wird: eine Datei oder der Name eines Markersatzes (ohne Angabe: alle, die sich nach Namen finden lassen)
    .camera = Kameradatei oder der Name einer Kamera
    .report = setup.html in diesen Ordner schreiben
help-plan = Sagen, wo man sich aufstellt und was die Fotos wert sein werden
    .about-more = Nennt, wie viele Fotos mindestens nötig sind, und was zu ändern ist, wo keine Fotos entscheiden könnten.
    .exit-codes = Exit-Code: 0 jede Prüfung lässt sich entscheiden, 2 nicht lesbar, 3 eine lässt sich nicht entscheiden
    .camera = Kameradatei oder der Name einer Kamera; demo-phone ist eine erfundene zur Vorführung
    .job = Auftragsordner oder job.toml mit den Maßen des Fahrzeugs (ohne Angabe: ein mittleres Auto)
    .earlier = Ein früherer Auftrag mit demselben Telefon (ein Ordner), auch mehrmals: mit dem Eckenrauschen seiner Fotos und der Drehung der Hand wird gerechnet (ohne Angabe: mit dem, was die Anpassung der Kamera fand)
    .photos = So viele Fotos (ohne Angabe: so wenige, wie jede Prüfung entscheiden)
    .from = Ein Kameraort in mm: vor der Hinterachse, nach links vom Fahrzeug, über dem Boden; für jedes Foto einmal
    .after_move = Auch sagen, von wo ein Foto am meisten wert ist, nachdem das Gestell bewegt wurde
    .width = Freie Breite des Kalibrierplatzes, mm
    .ahead = Freie Länge vor der Fahrzeugfront, mm (ohne Angabe: was das Vorgabeblatt braucht, sonst 6000)
    .post = Ein Pfosten, wo niemand stehen kann: vor der Hinterachse, nach links, mm; auch mehrmals
    .json = Plan als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe
    .report = plan.html und plan.svg in diesen Ordner schreiben
help-bay = Messen, wie waagerecht und eben der Boden eines Kalibrierplatzes ist
    .about-more = Bodenblätter auf dem ganzen Platz werden gegen die Ebene der Räder gemessen: Gefälle, Unebenheit, freie Länge.
    .exit-codes = Exit-Code: 0 innerhalb jeder Grenze, 1 außerhalb einer Grenze, 2 nicht lesbar, 3 eine nicht nachgewiesen
    .photos = Fotos der Bodenblätter und der Radplatten; benachbarte Fotos haben einige davon gemeinsam
    .camera = Kameradatei oder der Name einer Kamera
    .setup = Vorgabeblatt mit [limits]: eine Datei oder der Name eines Vorgabeblatts
    .job = Auftragsordner oder job.toml mit den Maßen des Fahrzeugs
    .report = bay.html und bay.svg in diesen Ordner schreiben

## Messen

help-new = Auftragsordner zum Ausfüllen anlegen
    .about-more = job.toml enthält alles, was ein Auftrag sagen kann, noch nicht Bekanntes als Kommentar; Fotos kommen in photos/.
    .folder = Der Ordner des Auftrags, der angelegt wird; sein letzter Teil ist die Nummer des Auftrags
    .setup = Vorgabeblatt: ein Name unter den Modellen, wie ihn `setup check` nimmt
    .kit = Markersatz, ein Name unter den Modellen
    .camera = Kamera, ein Name unter den Modellen; ohne Angabe wählen die Angaben jedes Fotos
help-verify = Fotos eines Auftrags messen und über die Prüfungen seines Vorgabeblatts entscheiden
    .about-more = Der Bericht ist eine Seite (HTML), dasselbe als PDF, das Ergebnis als JSON und eine Seite für den Kunden. Versuche eines Reparaturauftrags (`series` in job.toml), die zusammen angegeben werden, werden verglichen und auf einer weiteren Seite aufgeführt. Nach einer Korrektur genügt ein Foto: `verify --moved c.jpg JOB` nimmt es in den Auftrag auf und misst es mit den ersten.
    .exit-codes = { help-job-codes }
    .jobs = Auftragsordner
    .moved = Ein Foto des Gestells, nachdem es und nichts sonst bewegt wurde: es wird in den Auftrag kopiert und dort aufgeführt; für jedes weitere Foto von dieser Stelle noch einmal
    .more = Ein weiteres Foto des Gestells dort, wo die letzten Fotos es gezeigt haben
    .step = Der Schritt des Vorgabeblatts, den diese Fotos zeigen, wo das Blatt Schritte hat
    .json = Ergebnis als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe
    .report = Bericht in diesen Ordner schreiben
    .private = Auch zeigen, was die Angaben der Fotos über Personen und Dinge enthalten: Orte, Seriennummern, Namen
help-watch = Jeden Auftrag unter einem Ordner prüfen, sobald seine Fotos ankommen
    .about-more = Mit --tripod: nimmt die Fotos der Kamera eines Auftrags, die auf einem Stativ steht, während an den Schrauben des Gestells gedreht wird. Nach jedem Stillstand an einer neuen Stelle sagt es das Urteil und was zuerst zu tun ist.
    .exit-codes = { help-job-codes }
    .folder = Ein Auftragsordner oder ein Ordner, in dem Auftragsordner liegen
    .tripod = Die Fotos einer Kamera auf einem Stativ, die in diesen Ordner kommen, in den einen Auftrag DIR aufnehmen: von jeder Stelle, an der das Gestell ruht, das neueste; im Ordner selbst wird nichts geändert
    .step = Der Schritt des Vorgabeblatts, den die Fotos vom Stativ zeigen, wo das Blatt Schritte hat
    .report = Berichte in diesen Ordner schreiben
    .every = Alle so viele Sekunden nachsehen
    .once = Nach dem ersten Nachsehen enden, mit dem Exit-Code des schlechtesten Auftrags wie bei `verify`
help-serve = Seite für die Werkstatt bereitstellen, die Telefone am Kalibrierplatz öffnen
    .about-more = Fotos werden beurteilt, sobald sie ankommen; dann folgen das Urteil, was wohin zu bewegen ist, weitere Versuche und der Abschluss in einen Nachweisordner.
    .listen = Unter welcher Adresse; bei jeder anderen als 127.0.0.1 wird von jedem Gerät der Code verlangt, der hier steht
    .jobs = Der Ordner der Auftragsordner; wird angelegt, wo es ihn nicht gibt
    .key = Abgeschlossene Aufträge mit diesem Schlüssel von ssh-keygen (ed25519) signieren; eine .pub-Datei nennt einen, den der Agent hält
    .tls_cert = Mit diesem Zertifikat verschlüsseln (PEM, dahinter jene, die dafür bürgen); nach einer Änderung wird es neu gelesen
    .tls_key = Der private Schlüssel des Zertifikats (PEM)
    .tls_own = Mit einem eigenen Zertifikat der Seite verschlüsseln, das einmal angelegt und bei den Aufträgen aufbewahrt wird
    .names = Was Telefone für diesen Rechner eintippen, wie bay.example; das eigene Zertifikat trägt den Namen; auch mehrmals
    .log = Jedes Urteil, das sich geändert hat, in dieses Versuchsprotokoll eintragen, bevor es gezeigt wird (angelegt mit `baywitness log new DIR --origin NAME`)
help-explain = Sagen, was ein Code eines Berichts oder ein Exit-Code bedeutet
    .about-more = Zu einem Befund: was er bedeutet, woher er kommt, woran man ihn am Kalibrierplatz erkennt und was zu tun ist.
    .codes = Codes, wie sie in einem Bericht stehen, oder Exit-Codes; ohne Angabe alle Codes in je einer Zeile

## Nachweisen

help-seal = Auftrag mit Ergebnis und Bericht in einem Nachweisordner versiegeln
    .about-more = Der Ordner ist ein BagIt-Ordner mit SHA-512-Prüfsummen, mit --key signiert, wie es `ssh-keygen -Y sign -n baywitness-evidence` tut. Aufträge eines Reparaturauftrags werden nebeneinander versiegelt, jeder in einem Ordner, der allein geprüft und weitergegeben werden kann; index-sha512.txt bindet sie zusammen.
    .jobs = Auftragsordner; mehrere eines Reparaturauftrags (`series`) erhalten je einen Nachweisordner und gemeinsam ein Verzeichnis
    .out = Der Nachweisordner, der angelegt wird; endet der Name auf .tar, wird er eine Datei; bei mehreren Aufträgen der Ordner, in dem ihre liegen
    .key = Mit diesem Schlüssel von ssh-keygen (ed25519) signieren; eine .pub-Datei nennt einen, den der Agent hält
    .timestamp = Diese Antwort einer Zeitstempelstelle (RFC 3161) aufnehmen, gegeben auf eine Anfrage desselben Auftrags und Schlüssels
    .timestamp_request = Auch die Anfrage an eine Zeitstempelstelle schreiben
    .log = Jeden Auftrag in dieses Versuchsprotokoll eintragen und den Beweis dafür versiegeln (angelegt mit `baywitness log new DIR --origin NAME`)
help-certificate = Eigenes Zertifikat der Werkstatt anlegen, um PDF-Berichte zu signieren
    .about-more = Für eine Werkstatt, die keines von einer Zertifizierungsstelle hat. Es bürgt für sich selbst: Wer die Berichte liest, erhält es oder seine SHA-256-Prüfsumme von der Werkstatt. `verify --report`, `watch`, `seal` und `serve` signieren damit (--sign-pdf).
    .name = Wer signiert: der Name der Werkstatt, wie ihn Leser eines Berichts sehen
    .out = Die Datei, die angelegt wird: privater Schlüssel und Zertifikat (PEM), nur für den Besitzer lesbar; daneben, mit der Endung .crt, das Zertifikat zum Weitergeben
    .years = Wie viele Jahre es gilt, höchstens 10
help-stamp = Nachweisordner oder signierten PDF-Bericht mit einem Zeitstempel versehen
    .about-more = Schreibt die Anfrage an eine Zeitstempelstelle (RFC 3161) und legt deren Antwort in den Ordner oder den Bericht.
    .folder = Nachweisordner, auch als eine Datei, oder ein signierter PDF-Bericht
    .request = Anfrage (RFC 3161) an eine Zeitstempelstelle schreiben
    .answer = Antwort der Stelle in den Ordner oder den Bericht legen
help-check = Nachweisordner prüfen und seine Fotos noch einmal messen
    .about-more = Sieht jedes Byte, die Signatur und die Zeitstempel an und vergleicht das Ergebnis und seine Berichte mit dem, was die Fotos jetzt ergeben. Von einer maskierten Kopie misst es die maskierten Fotos und sagt, wie weit das reicht. Von einem signierten PDF-Bericht sagt es, ob seine Bytes die signierten sind, von wem und seit wann.
    .exit-codes = Exit-Code: 0 unversehrt und von einem aufgeführten Unterzeichner signiert, 1 verändert, 2 nicht lesbar, 3 unversehrt, aber nicht signiert, der Unterzeichner unbekannt oder das Urteil nicht bestätigt
    .folder = Nachweisordner, auch als eine Datei, oder ein signierter PDF-Bericht
    .timestamp_ca = Wessen Zeitstempel zählen: Wurzelzertifikate von Stellen (PEM)
    .log = Das Versuchsprotokoll, wie es jetzt ist: es muss noch mit dem beginnen, wofür der Beweis des Ordners signiert wurde
    .json = Prüfungen als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe
help-redact = Nachweisordner kopieren, Fotos bis auf die Marker maskiert
    .about-more = Die Kopie lässt sich weiterhin gegen die versiegelten Prüfsummen prüfen; Berichte und Anhänge bleiben weg. Ein Ordner, dessen Fotos sein Ergebnis nicht ergeben, wird nicht kopiert.
    .folder = { help-shared.evidence }
    .out = Die Kopie, die angelegt wird; endet der Name auf .tar, wird sie eine Datei
    .show = Was sonst von jedem Foto sichtbar bleibt, aufrecht gesehen: links, oben, rechts, unten in Prozent

## Überblicken

help-audit = Archiv von Auftrags- und Nachweisordnern beurteilen
    .about-more = Nutzt jeden Kern und macht nach jeder Unterbrechung dort weiter, wo es war. Schreibt eine Seite, eine Tabelle (CSV), eine Zeile je Auftrag und jedes Ergebnis vollständig; mit dem Merkmal `parquet` gebaut auch audit.parquet. Nachweise als eine Datei (.tar) werden ebenso genommen.
    .exit-codes = { help-job-codes }
    .out = Wohin Ergebnisse und Bericht kommen; beim nächsten Lauf wird nur Neues und Geändertes beurteilt
    .stdin = Pfade von Aufträgen von der Standardeingabe lesen und je eine JSON-Zeile auf die Standardausgabe schreiben
    .recompute = Neu beurteilen, was eine beliebige Version des Programms schon beurteilt hat, und aufführen, was sich dadurch ändert
    .log = Archiv mit diesem Versuchsprotokoll vergleichen; Unterschiede kommen in log.json, der neueste Prüfpunkt in log-checkpoint
    .log_keys = Wessen Protokolle und Zeugen zählen: eine Datei mit Prüfschlüsseln, einer je Zeile
    .log_earlier = Ein früher aufbewahrter Prüfpunkt des Protokolls (der im Ordner des Prüflaufs wird in jedem Fall verwendet)
    .log_orders = Das Geheimnis des Protokolls, das sagt, zu welchem Reparaturauftrag ein fehlender Versuch gehört (ohne Angabe: DIR.private/order-salt, wo vorhanden)
help-log = Versuchsprotokoll führen und prüfen, an das nur angehängt wird
    .about-more = `verify --log`, `seal --log` und `serve --log` tragen jedes Urteil ein, so dass kein Versuch unbemerkt wegfallen, nachgetragen oder geändert werden kann. Der Ordner ist ein Transparenzprotokoll in Kacheln (C2SP tlog-tiles), das jeder Dateiserver so veröffentlicht, wie es ist; was geheim bleiben muss, liegt daneben in DIR.private.
    .folder = Der Ordner des Protokolls
help-log-new = Leeres Protokoll mit eigenem Schlüssel anlegen
    .about-more = Gibt den Prüfschlüssel zum Veröffentlichen aus. Der private Schlüssel und das Geheimnis, mit dem Reparaturaufträge unkenntlich gemacht werden, liegen in DIR.private.
    .origin = Der Name des Protokolls, als Webadresse ohne https://, wie shop.example/attempts
help-log-show = Die neuesten Einträge aufführen
    .last = Wie viele
help-log-check = Jeden Eintrag, Hash und jede Signatur prüfen, auch gegen früher aufbewahrte Prüfpunkte
    .exit-codes = Exit-Code: 0 es stimmt, 1 es wurde umgeschrieben, gekürzt, gespalten oder verändert, 2 nicht lesbar, 3 es stimmt, aber kein Schlüssel, der zählt, hat es signiert, oder Zeiten stehen in falscher Reihenfolge
    .keys = Wessen Protokolle und Zeugen zählen: eine Datei mit Prüfschlüsseln, einer je Zeile
    .earlier = Ein früher aufbewahrter Prüfpunkt; auch mehrmals
help-log-witness = Neuesten Prüfpunkt als Zeuge gegenzeichnen, wo er fortsetzt, was der Zeuge gesehen hat
    .about-more = Auf einem anderen Rechner als dem des Protokolls auszuführen, auf dem freigegebenen Ordner oder einer Kopie. Der gegengezeichnete Prüfpunkt kommt in DIR/witnessed; aus einer Kopie wird er dorthin zurückgebracht.
    .exit-codes = Exit-Code: 0 gegengezeichnet, 1 verweigert: das Protokoll wurde umgeschrieben, gekürzt, gespalten oder verändert, 2 nicht lesbar, der Schlüssel des Protokolls selbst, oder das Gemerkte ist von einem anderen Protokoll
    .key = Der Schlüssel des Zeugen von ssh-keygen (ed25519), der keinem anderen Zweck dient
    .name = Der Name des Zeugen, wie association.example/witness
    .keys = Der Prüfschlüssel des Protokolls: eine Datei mit einem Schlüssel je Zeile
    .seen = Wo dieser Zeuge sich merkt, was er gesehen hat (ohne Angabe: KEY.seen; für jedes weitere Protokoll eine eigene Datei daneben)
help-trends = Sagen, welche Fehler vorkommen, wo und seit wann
    .about-more = Liest, was `audit` oder `verify --json` geschrieben hat. Vergleicht erste Versuche und hält Personen, Plätze, Vorgabeblätter und Markersätze auseinander, soweit das Archiv es erlaubt; nennt nur, was über den Zufall hinausragt.
    .paths = Ordner von Prüfläufen oder Ergebnissen, oder Dateien mit Ergebnissen (JSON, oder eines je Zeile)
    .out = Ordner für report.html, trends.json, trends.csv und jobs.csv
    .by = Was die Seite zuerst vergleicht: technician (Personen), bay (Plätze), setup (Vorgabeblätter) oder vehicle (Fahrzeuge)
    .names = Namen von Personen zeigen; sonst Pseudonyme, die gleich bleiben, solange people.key im Ordner liegt
    .reports = Ordner mit den Berichten der Aufträge (`verify --report`), um auf sie zu verweisen
help-due = Aufträge mit abgelaufener Aufbewahrungsfrist und zu erneuernde Zeitstempel aufführen
    .about-more = Gelöscht wird nichts.
    .on = Der Tag (ohne Angabe: heute)
    .ahead = Zeitstempel, die in so vielen Tagen enden, sind fällig
    .json = Aufstellung als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe

## Üben

help-gallery = Jeden Fehler an einem erfundenen Kalibrierplatz zeigen, mit Ursache und Abhilfe
    .about-more = Fotos und Werte ohne und mit dem Fehler.
    .out = Ordner, in den gallery.html mit Bildern, Aufträgen und Berichten geschrieben wird
    .codes = Codes, die gezeigt werden; ohne Angabe alle
help-drill = An erfundenen Aufträgen mit versteckten Fehlern üben
    .dir = Der Ordner der Übung
help-drill-new = Aufträge mit versteckten Fehlern anlegen
    .level = 1: ein großer Fehler, bis 5: bis zu drei kleine oder keiner
    .count = Wie viele Aufträge
    .out = Ordner, der angelegt wird; er darf noch keine Übung enthalten
    .seed = Dieselbe Zahl ergibt dieselben Fehler
help-drill-answer = Sagen, was an einem Auftrag nicht stimmt; mehrere Fehler sind mehrere Antworten
    .job = Der Auftrag, wie DRILL-01
    .finding = Der Code des Befunds, oder none
    .way = Wohin zu bewegen ist: die Wörter stehen in HOW-TO.txt
    .size = Um wie viel, mm oder Grad
help-drill-mark = Antworten bewerten und zum Lernstand des Übenden hinzufügen
    .trainee = Wer geübt hat
    .progress = Wo der Lernstand liegt (ohne Angabe: drills.jsonl neben dem Ordner der Übung); seine Seite wird daneben geschrieben
    .day = Tag der Bewertung (ohne Angabe: heute)
help-stage = Erfundenen Kalibrierplatz berechnen: ein Auftragsordner und was daran wahr ist
    .scene = Szenendatei (scene/1)
    .out = Ordner, in den geschrieben wird; wird angelegt, wo es ihn nicht gibt, Dateien darin werden überschrieben
    .truth_only = Nur die Werte von truth.json auf den Bildschirm schreiben, keine Bilder berechnen

## Werkzeuge

help-detect = Marker in Fotos finden, mit der Unsicherheit jeder Ecke
    .photos = Fotos (JPEG, PNG oder HEIC)
    .json = Gefundenes als JSON in eine Datei schreiben oder mit `-` auf die Standardausgabe
help-schema = JSON-Schema dessen ausgeben, was das Programm schreibt
    .format = Ein Format, wie result/1; ohne Angabe werden die vorhandenen aufgeführt
help-completions = Ausgeben, was eine Shell zum Vervollständigen dieser Befehle braucht
    .shell = Die Shell: bash, elvish, fish, powershell oder zsh
help-man = Seiten des Handbuchs schreiben
    .out = Ordner für eine Seite des Programms und eine jedes Befehls
