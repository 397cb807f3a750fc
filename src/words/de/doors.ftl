# Was an einer Eingabedatei nicht stimmt: Datei, Ort und Schlüssel, dann was falsch ist und was zu tun ist. Die Sätze stehen nach dem Doppelpunkt und haben keinen Punkt.
doors-at-place-and-key = { $file }, Zeile { $line }, Spalte { $column }: { $key }: { $problem }; { $remedy }
doors-at-place = { $file }, Zeile { $line }, Spalte { $column }: { $problem }; { $remedy }
doors-at-key = { $file }: { $key }: { $problem }; { $remedy }
doors-of-file = { $file }: { $problem }; { $remedy }
doors-key-without-file = { $key }: { $problem }; { $remedy }
doors-without-file = { $problem }; { $remedy }
doors-said = { $text }

# Formate
doors-format-not-stated = das Format ist nicht angegeben
doors-format-text = muss ein Text wie „{ $wanted }“ sein
doors-format-not-first = ist nicht der erste Schlüssel
doors-format-remedy = die erste Zeile muss lauten: format = "{ $wanted }"
doors-format-version = „{ $found }“ ist eine Version, die dieses Programm nicht kennt; es liest „{ $wanted }“
doors-format-version-remedy = ein neueres baywitness oder die ältere Datei verwenden
doors-format-other = dies ist eine Datei im Format „{ $found }“, hier muss aber eine im Format „{ $wanted }“ stehen
doors-format-other-remedy = hier eine Datei der Art „{ $kind }“ nennen oder die erste Zeile berichtigen: format = "{ $wanted }"
doors-no-toml = ist kein gültiges TOML ({ $why })
doors-no-toml-remedy = die Zeile berichtigen: Schlüssel, `=` und Wert; Texte in Anführungszeichen, Dezimalzahlen mit Punkt
doors-key-twice-remedy = eine der beiden Angaben behalten; eine Tabelle, die es mehrfach gibt, hat jedes Mal doppelte Klammern: [[...]]

# Dateien
doors-too-large = ist größer als { $most } MiB, zu groß für eine Datei dieser Art
doors-too-large-remedy = prüfen, ob die richtige Datei genannt ist
doors-no-utf8 = ist kein Text in UTF-8
doors-no-utf8-remedy = als reinen Text in UTF-8 speichern (ohne Formatierung)
doors-is-folder = ist ein Ordner, keine Datei
doors-is-folder-remedy = die Datei darin nennen
doors-not-regular = ist keine gewöhnliche Datei
doors-not-regular-remedy = eine gewöhnliche Datei nennen
doors-not-there = gibt es nicht
doors-not-there-remedy = Namen und Ordner prüfen
doors-forbidden = darf nicht gelesen werden
doors-forbidden-remedy = um Leseberechtigung bitten
doors-unreadable = kann nicht gelesen werden ({ $why })
doors-unreadable-remedy = Pfad und Datenträger prüfen

# Schlüssel und Werte
doors-unknown-key = unbekannter Schlüssel
doors-did-you-mean = war `{ $word }` gemeint?
doors-remove-it = entfernen
doors-known-here = hier bekannt: { $words }
doors-older-key-too = ist der ältere Name eines Schlüssels, der auch da ist
doors-older-key-too-remedy = nur `{ $now }` behalten
doors-older-name = { $file }: `{ $older }` heißt jetzt `{ $now }`; der ältere Name wird weiterhin gelesen
doors-missing = fehlt
doors-missing-remedy = hier `{ $key } = ...` ergänzen
doors-no-tables = muss eine Liste von Tabellen sein
doors-no-tables-remedy = jede als [[{ $path }]] schreiben
doors-many-tables = hat { $count } Einträge, mehr als { $most }
doors-many-tables-remedy = die meisten weglassen
doors-kind = muss { $wanted ->
        [text] ein Text
        [flag] true oder false
        [flag-or-text] true, false oder ein Text
        [number] eine Zahl
        [finite] eine endliche Zahl
        [whole] eine ganze Zahl
        [list] eine Liste
        [table] eine Tabelle
        [time-with-offset] Datum und Uhrzeit mit Abstand zu UTC
        [time] Datum und Uhrzeit
        [existing-time] ein Zeitpunkt, den es gibt,
        *[date] ein Datum
    } sein, nicht { $found }
doors-kind-text-remedy = in Anführungszeichen schreiben
doors-kind-flag-remedy = ohne Anführungszeichen schreiben
doors-kind-flag-or-text-remedy = true, false oder einen Text in Anführungszeichen schreiben
doors-kind-number-remedy = eine Zahl ohne Anführungszeichen und ohne Einheit schreiben
doors-kind-finite-remedy = stattdessen eine gewöhnliche Zahl schreiben
doors-kind-whole-remedy = ohne Dezimalpunkt und ohne Anführungszeichen schreiben
doors-kind-list-remedy = in eckigen Klammern schreiben
doors-kind-table-remedy = die Schlüssel unter eine Zeile [{ $path }] schreiben
doors-kind-time-remedy = wie 2026-11-25T10:30:00+01:00 schreiben (oder mit Z für UTC), ohne Anführungszeichen
doors-kind-date-remedy = wie 2026-11-25 schreiben, ohne Anführungszeichen und ohne Uhrzeit
doors-empty = ist leer
doors-empty-remedy = ausfüllen oder den Schlüssel weglassen
doors-long = ist länger als { $most } Bytes
doors-long-remedy = kürzen
doors-control = enthält Steuerzeichen
doors-control-remedy = entfernen
doors-turning = enthält Zeichen, die die Schreibrichtung umkehren (U+202A bis U+202E, U+2066 bis U+2069): gezeigt würde anderes, als dort steht
doors-unseen = enthält Zeichen, die nichts zeigen (etwa U+200B, U+2028 oder Tags): Zwei gleich aussehende Texte wären nicht dieselben
doors-turning-remedy = ohne sie neu eintippen
doors-no-name = ist kein Name: eine Zeile mit höchstens 120 Zeichen, ohne Leerzeichen am Rand
doors-no-name-remedy = kürzen oder die Leerzeichen am Rand entfernen
doors-no-such = „{ $word }“ ist { $what ->
        [language] keine Sprache
        [phase] keine Phase
        [attachment] keine Art von Anhang
        [calibration-result] kein Ergebnis einer Kalibrierung
        [lens] kein Objektivmodell
        [evidence] keine Art von Nachweis
        [line] keine Bezugslinie
        [unit] keine Einheit
        [step] kein Schritt
        [rule] keine Entscheidungsregel
        [board] keine Art von Kalibriertafel
        [family] keine unterstützte Markerfamilie
        [quantity] keine Größe
        *[role] keine Rolle
    }
doors-unit = { $unit ->
        [none] {""}
        [deg] {"°"}
        [deg-per-s] {" "}°/s
        [mm-per-m] {" "}mm/m
        [in] {" "}Zoll
        [turns] {" "}Umdrehungen
        [a-turn] {" "}je Umdrehung
        *[other] {" "}{ $unit }
    }
doors-between = muss zwischen { $low } und { $high }{ $unit } liegen, nicht { $found }
doors-between-remedy = Einheit, Dezimalpunkt und Vorzeichen prüfen
doors-above-zero = muss größer als null sein, nicht { $found }{ $unit }
doors-above-zero-remedy = Vorzeichen und Dezimalpunkt prüfen
doors-at-most = darf höchstens { $high }{ $unit } betragen, nicht { $found }
doors-at-most-remedy = Einheit und Dezimalpunkt prüfen
doors-uncertainty = eine Standardmessunsicherheit muss zwischen 0 und { $high }{ $unit } liegen, nicht { $found }
doors-uncertainty-remedy = eine Standardabweichung (1 Sigma) in der Einheit aus dem Namen des Schlüssels angeben
doors-whole-between = muss eine ganze Zahl von { $low } bis { $high } sein, nicht { $found }
doors-whole-between-remedy = die Zahl prüfen
doors-count = muss { $wanted } Werte haben, nicht { $found }
doors-count-remedy = { $wanted } Werte in eckigen Klammern schreiben, mit Kommas dazwischen
doors-named-twice = „{ $name }“ ist zweimal genannt
doors-already = „{ $name }“ steht schon in { $key }
doors-leave-out = { $key } weglassen

# Kovarianzmatrizen
doors-matrix-size = muss { $size } x { $size } Werte haben, nicht { $rows } x { $width }
doors-matrix-not-finite = enthält einen Wert, der nicht endlich ist
doors-matrix-negative = hat in Zeile { $row } eine negative Varianz
doors-matrix-not-symmetric = ist in den Zeilen { $first } und { $second } nicht symmetrisch
doors-matrix-correlation = gibt zwischen den Zeilen { $first } und { $second } eine Korrelation über 1 an
doors-matrix-not-semidefinite = ist nicht positiv semidefinit: Keine Abweichungen können so verteilt sein

# Der Auftragsordner
doors-job-unopened = der Auftragsordner lässt sich nicht öffnen ({ $why })
doors-job-unopened-remedy = den Pfad prüfen
doors-job-is-file = ist eine Datei, kein Auftragsordner
doors-job-is-file-remedy = den Ordner nennen, in dem job.toml liegt
doors-no-job = gibt es nicht: Dies ist kein Auftragsordner
doors-no-job-remedy = einen Ordner nennen, in dem job.toml liegt, oder die Datei anlegen
doors-no-job-renamed = { $file } in job.toml umbenennen: wo Dateiendungen ausgeblendet sind, steht für job.toml.txt nur job.toml da
doors-photos-none = nennt kein Foto
doors-photos-none-remedy = die Fotos nennen oder den Schlüssel weglassen, um alle in photos/ zu verwenden
doors-photos-many = nennt { $count } Fotos, mehr als { $most }
doors-split-the-job = den Auftrag aufteilen
doors-photo-once = jedes Foto einmal nennen
doors-photos-twice = steht neben [[photo]]
doors-photos-twice-remedy = jedes Foto nur an einer der beiden Stellen nennen
doors-same-file = „{ $name }“ und „{ $earlier }“ sind dieselbe Datei
doors-photos-remedy = die Fotos vom Kalibrierplatz in den Ordner photos/ des Auftrags legen
doors-photos-no-folder = nennt keine Fotos, und der Ordner photos/ kann nicht gelesen werden ({ $why })
doors-photos-unreadable = der Ordner photos/ kann nicht gelesen werden ({ $why })
doors-photos-empty = nennt keine Fotos, und im Ordner photos/ ist keine Datei mit der Endung jpg, jpeg, png oder heic
doors-attachment-large = ist größer als { $most } MB
doors-attachment-large-remedy = anderswo aufbewahren und einen Auszug beilegen
doors-photos-too-many = im Ordner photos/ sind mehr als { $most } Bilder
doors-photo-name = der Name des Fotos „{ $name }“ ist nicht in UTF-8
doors-photo-name-remedy = die Datei umbenennen
doors-card-twice = { $id } ist zweimal genannt
doors-card-twice-remedy = den Code der Karte neu abschreiben
doors-card-empty = nennt keine Nummer
doors-card-empty-remedy = den Code der Karte abschreiben oder den Schlüssel weglassen
doors-vin-character = enthält das Zeichen { $character }; erlaubt sind Ziffern und Großbuchstaben ohne I, O und Q
doors-vin-length = hat { $count } Zeichen statt 17
doors-vin-remedy = die Nummer noch einmal vom Fahrzeug abschreiben, in Großbuchstaben
doors-prerequisite-key = der Schlüssel ist kein Name
doors-prerequisite-key-remedy = die Kennung einer der Voraussetzungen des Vorgabeblatts verwenden
doors-reading-unused = { $quantity } hat in den Fotos keine Entsprechung und kann nicht in die Ausgleichung eingehen
doors-reading-no-u = nennt weder u noch ein bekanntes Messgerät
doors-reading-no-u-remedy = u = (eine Standardabweichung) ergänzen oder instrument = laser, tape, level oder alignment
doors-instrument-unknown = für „{ $instrument }“ gibt es keine übliche Messunsicherheit
doors-instrument-unknown-remedy = u = (eine Standardabweichung) ergänzen; { $known }
doors-instrument-unit = die übliche Messunsicherheit von „{ $instrument }“ ist in { $own } angegeben, diese Größe aber in { $unit }
doors-instrument-unit-remedy = u = (eine Standardabweichung) ergänzen
doors-file-once = jede Datei einmal nennen
doors-no-stand = nennt eine Schraube, aber der Auftrag hat keine Gestelldatei
doors-no-stand-remedy = im Auftrag `stand = ...` ergänzen oder turned weglassen
doors-no-screw = „{ $screw }“ ist keine Schraube des Gestells „{ $stand }“
doors-no-step = „{ $step }“ ist kein Schritt des Vorgabeblatts „{ $sheet }“
doors-no-steps-remedy = das Blatt hat keine Schritte: step weglassen

# Pfade und Modelle
doors-path-backslash = „{ $name }“ enthält einen umgekehrten Schrägstrich
doors-path-backslash-remedy = Pfade mit / schreiben
doors-path-turning = „{ $name }“ enthält Zeichen, die die Schreibrichtung umkehren
doors-path-turning-remedy = die Datei umbenennen
doors-path-absolute = „{ $name }“ ist ein absoluter Pfad
doors-path-absolute-remedy = vom Auftragsordner aus schreiben, damit der Auftrag verschoben werden kann
doors-path-outside = „{ $name }“ führt aus dem Auftragsordner hinaus
doors-path-outside-remedy = Fotos und Anhänge des Auftrags in dessen Ordner lassen
doors-path-not-there = „{ $name }“ gibt es im Auftragsordner nicht
doors-path-not-there-remedy = den Namen berichtigen oder die Datei ergänzen
doors-path-unreadable = „{ $name }“ lässt sich nicht öffnen ({ $why })
doors-path-unreadable-remedy = die Datei prüfen
doors-path-link = „{ $name }“ ist eine Verknüpfung, die aus dem Auftragsordner hinausführt
doors-path-no-file = „{ $name }“ ist keine Datei
doors-path-no-file-remedy = eine Datei nennen
doors-no-model = ist weder eine Datei noch eines der Modelle
doors-no-model-remedy = einen Pfad angeben oder eines von: { $names }
doors-no-model-guess = war „{ $guess }“ gemeint? Sonst einen Pfad angeben oder eines von: { $names }
doors-not-found = { $kind ->
        [setup] kein Vorgabeblatt
        [kit] kein Markersatz
        [camera] keine Kamera
        [stand] kein Gestell
        *[board] keine Kalibriertafel
    } „{ $name }“ gefunden im Auftragsordner { $folder } und unter den eingebauten Modellen
doors-not-found-either = { $kind ->
        [setup] kein Vorgabeblatt
        [kit] kein Markersatz
        [camera] keine Kamera
        [stand] kein Gestell
        *[board] keine Kalibriertafel
    } „{ $name }“ gefunden im Auftragsordner { $folder }, in { $others } und unter den eingebauten Modellen
doors-not-found-remedy = den Namen berichtigen oder die Datei dorthin legen
doors-not-found-guess = war „{ $guess }“ gemeint? Sonst den Namen berichtigen oder die Datei dorthin legen
doors-no-models-folder = den Ordner, den { $said_by } nennt, gibt es nicht
doors-no-models-folder-remedy = { $said_by } berichtigen oder weglassen
doors-named-file = { $kind ->
        [setup] Vorgabeblatt
        [kit] Markersatz
        [camera] Kamera
        [stand] Gestell
        [layout] Einmessung
        *[board] Kalibriertafel
    } „{ $file }“: { $problem }

# Vorgabeblätter
doors-datum-role = „{ $carrier }“ hat die Rolle { $role }
doors-datum-role-remedy = einen Markerträger am Fahrzeug oder auf dem Boden nennen: Von einer Zieltafel oder Karte aus wird nichts gemessen
doors-which-target = sagt nicht, welche Zieltafel gemeint ist: Der Markersatz „{ $kit }“ hat { $targets }
doors-which-target-remedy = target = "{ $target }" oder eine der anderen ergänzen
doors-kit-no-target = betrifft die Zieltafel, aber der Markersatz „{ $kit }“ hat keinen Markerträger mit der Rolle target
doors-kit-no-target-remedy = den Markersatz nennen, zu dem das Gestell gehört
doors-no-carrier = „{ $name }“ ist kein { $what ->
        [target] Markerträger mit der Rolle target
        *[any] Markerträger
    } im Markersatz „{ $kit }“
doors-not-in-photos = { $quantity } ist in Fotos nicht zu sehen
doors-not-in-photos-remedy = evidence = "reading" ergänzen: Dann entscheidet der im Auftrag abgelesene Wert
doors-from-no-point = { $quantity } wird nicht von einem Punkt aus gemessen
doors-from-no-point-remedy = from weglassen oder distance, range, height_from_nose oder lateral_from_nose prüfen lassen
doors-from-axle = { $quantity } wird nicht von einer Achse aus gemessen
doors-from-axle-remedy = nose oder einen Bezugspunkt des Blatts nennen
doors-from-unknown = „{ $name }“ ist kein Punkt, von dem aus gemessen wird
doors-unit-of = { $quantity } wird in { $unit } angegeben
doors-unit-of-remedy = unit weglassen; nur Längen dürfen in Zoll angegeben werden
doors-no-target-here = { $quantity } betrifft keine Zieltafel
doors-no-step-here = { $quantity } betrifft keine Zieltafel und ist in jedem Schritt gleich
doors-sheet-no-steps = das Blatt hat keine Schritte
doors-sheet-no-steps-remedy = am Anfang steps = [...] ergänzen oder step weglassen
doors-beside-tolerance = steht neben tolerance
doors-beside-tolerance-remedy = tolerance angeben oder lower und upper
doors-no-limit = hat keine Grenze
doors-no-limit-remedy = tolerance = ... ergänzen oder lower = ... oder upper = ... oder beide
doors-limits-order = { $lower } { $unit } liegt nicht unter upper, { $upper } { $unit }
doors-limits-order-remedy = Grenzen sind Werte, keine Abweichungen
doors-nominal-outside = { $nominal } { $unit } liegt außerhalb der eigenen Grenzen
doors-nominal-outside-remedy = lower und upper sind Werte wie nominal, keine Abweichungen davon
doors-step-count = hat { $count } Schritte
doors-step-count-remedy = einen bis { $most } nennen oder den Schlüssel weglassen
doors-step-once = jeden Schritt einmal nennen
doors-probability = muss mindestens { $least } und kleiner als 1 sein, nicht { $found }
doors-probability-remedy = üblich ist 0.95: Was nach weniger entschieden wird, heißt nicht nachgewiesen
doors-datum-standard = „{ $name }“ ist ein Punkt, den jedes Blatt hat
doors-other-name = einen anderen Namen wählen
doors-name-taken = „{ $name }“ ist schon der Name von { $key }
doors-id-taken = „{ $id }“ ist schon die Kennung von { $key }
doors-other-id = eine andere Kennung wählen
doors-no-check = hat keine Prüfung
doors-no-check-remedy = ein [[check]] mit quantity, nominal und tolerance ergänzen
doors-check-twice = { $quantity } wird schon von { $key } geprüft
doors-check-twice-remedy = eine der beiden behalten, oder sie müssen sich in from, target, step oder reference_line unterscheiden
doors-waived-and-checked = auf { $quantity } wird hier verzichtet, aber { $key } prüft es
doors-waived-and-checked-remedy = die Prüfung oder den Verzicht behalten
doors-waived-twice = auf { $quantity } verzichtet schon { $key }
doors-waived-twice-remedy = eines davon behalten

# Gestelle, Markersätze, Kalibriertafeln und Kameras
doors-screw-count = hat { $count } Schrauben
doors-screw-count-remedy = eine bis { $most } beschreiben, jede unter einer Zeile [[screw]]
doors-screw-twice-remedy = jeder Schraube einen eigenen Namen geben
doors-screw-quantity = { $quantity } ist keine Größe des Gestells, die Fotos messen
doors-screw-quantity-remedy = nennen, was die Schraube verstellt: yaw, pitch, roll, height, lateral_offset, distance
doors-screw-unit = { $quantity } wird in { $unit } gemessen
doors-screw-unit-remedy = { $key } schreiben
doors-screw-nothing = ist null
doors-screw-nothing-remedy = angeben, was eine Umdrehung im Uhrzeigersinn ändert; negativ, wo sie den Wert verkleinert
doors-kit-no-carrier = hat keinen Markerträger
doors-kit-no-carrier-remedy = einen [[carrier]] mit seinen Markern ergänzen
doors-on-centreline = ist für eine Frontmarke, aber dieser Markerträger hat die Rolle { $role }
doors-on-centreline-remedy = hier weglassen
doors-carrier-no-marker = hat keinen Marker
doors-carrier-no-marker-remedy = darunter einen [[carrier.marker]] ergänzen
doors-card-ids = { $id } auf einem Markerträger mit der Rolle { $role }: Die Nummern { $first } bis { $last } sind nur für Auftragskarten
doors-card-ids-remedy = einen Marker mit anderer Nummer verwenden
doors-size-twice = steht neben size_mm
doors-size-twice-remedy = eines der beiden angeben
doors-unit-vector = muss ein Einheitsvektor sein, hat aber die Länge { $length }
doors-unit-vector-remedy = die Werte durch die Länge teilen
doors-axes-square = muss rechtwinklig zu right sein, aber der Winkel dazwischen beträgt { $angle }°
doors-axes-square-remedy = die falsche Richtung berichtigen
doors-carrier-name-taken = „{ $name }“ ist schon der Name von carrier[{ $carrier }], Zeile { $line }
doors-carrier-name-taken-remedy = jedem Markerträger einen eigenen Namen geben
doors-role-taken = { $role } ist schon die Rolle von carrier[{ $carrier }], Zeile { $line }
doors-role-taken-remedy = je ein Markerträger für jedes Rad, für jeden Radlauf und für die Fahrzeugfront
doors-marker-id-taken = die Markernummer { $id } ist schon vergeben an { $path }, Zeile { $line }
doors-marker-id-taken-remedy = jedem Marker des Satzes eine eigene Nummer geben
doors-same-centre = ist auch die Mitte von Marker { $id }
doors-same-centre-remedy = messen, wo dieser Marker sitzt
doors-no-layout = ist keine Einmessdatei ({ $why })
doors-layout-remedy = den Markersatz neu einmessen oder `layout` in der Datei des Markersatzes weglassen
doors-layout-other-kit = gehört zur Datei eines anderen Markersatzes, oder die Datei wurde nach dem Einmessen geändert
doors-layout-no-marker = die Markernummer { $id } kommt im Markersatz nicht vor
doors-layout-twice = die Markernummer { $id } ist zweimal aufgeführt
doors-board-ids = { $columns } x { $rows } Marker ab Nummer { $first } reichen bis { $last }, die Familie endet aber bei { $end }
doors-board-ids-remedy = bei einer kleineren Nummer beginnen oder weniger Marker drucken
doors-focal-lengths = die beiden Brennweiten unterscheiden sich um mehr als ein Fünftel, was bei keiner Kamera mit quadratischen Bildpunkten vorkommt
doors-focal-lengths-remedy = beide Zahlen prüfen
doors-focal = { $found } kann keine Brennweite in Bildpunkten sein bei einem Bild von { $side } px Breite{ $perhaps ->
        [millimetres] {" "}(ist sie in mm?)
        *[wrong] {""}
    }
doors-focal-remedy = in Bildpunkten des gespeicherten Bildes angeben oder die Kamera anpassen
doors-camera-covariance-remedy = sie umfasst focal_px, centre_px und die Verzeichnung von { $model }: die Kamera neu anpassen oder den Schlüssel weglassen
doors-distortion-foreign = gehört bei { $model } nicht neben { $beside }
doors-distortion-foreign-remedy = weglassen oder ein anderes Modell angeben
doors-distortion-count = muss für { $model } { $wanted } Werte haben, nicht { $found }
doors-distortion-count-remedy = { $terms } angeben (0.0 für nicht benutzte)

# Was ein Vorgabeblatt verlangt, ein Satz je Prüfung
doors-asks = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}ein abgelesener Wert entscheidet, nicht die Fotos
        [either] {"; "}die Fotos entscheiden, wo der Markersatz an diesem Radlauf eine Marke hat, sonst ein abgelesener Wert
        *[photos] {""}
    }.
doors-asks-by = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}ein abgelesener Wert entscheidet, nicht die Fotos
        [either] {"; "}die Fotos entscheiden, wo der Markersatz an diesem Radlauf eine Marke hat, sonst ein abgelesener Wert
        *[photos] {""}
    } (Toleranz: { $basis }).
doors-asks-in-step = In Schritt „{ $step }“: { $asked }
doors-asks-in-every-step = In jedem Schritt: { $asked }
doors-asks-not = Nicht geprüft: { $quantity }; Grund: { $because }
doors-asks-credentials = Jedes Foto, das zählt, trägt Herkunftsnachweise (C2PA) eines vertrauten Unterzeichners und führt keine Bearbeitung auf
doors-anchors-not-built-in = Dieses Programm wurde ohne Herkunftsnachweise gebaut: --credential-anchors weglassen oder ein Programm mit der Eigenschaft credentials verwenden
doors-anchors-unreadable = { $file } ist nicht lesbar ({ $why }): eine Datei mit Zertifikaten (PEM) nennen
doors-anchors-no-certificate = { $file } enthält kein lesbares Zertifikat: eine Datei mit Zertifikaten (PEM) nennen, jedes von BEGIN CERTIFICATE bis END CERTIFICATE
doors-asks-distance = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } steht vor { $from ->
        [nose] der Fahrzeugfront
        [front_axle] der Vorderachse
        [rear_axle] der Hinterachse
        *[datum] dem Punkt „{ $point }“
    }, gemessen entlang { $line ->
        [rear_axle_normal] der Senkrechten zur Hinterachse
        [thrust_line] der Fahrachse
        *[centreline] der Mittellinie des Fahrzeugs
    }
doors-asks-range = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } ist entfernt von { $from ->
        [nose] der Fahrzeugfront
        [front_axle] der Vorderachse
        [rear_axle] der Hinterachse
        *[datum] dem Punkt „{ $point }“
    }, in gerader waagerechter Linie
doors-asks-lateral = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } liegt neben { $line ->
        [rear_axle_normal] der Senkrechten zur Hinterachse
        [thrust_line] der Fahrachse
        *[centreline] der Mittellinie des Fahrzeugs
    } (links ist positiv)
doors-asks-lateral-from = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } liegt neben { $from ->
        [nose] der Fahrzeugfront
        [front_axle] der Vorderachse
        [rear_axle] der Hinterachse
        *[datum] dem Punkt „{ $point }“
    } (links ist positiv)
doors-asks-height = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } liegt über dem Boden
doors-asks-height-from = Die Mitte { $which ->
        [named] von „{ $target }“
        *[one] der Zieltafel
    } liegt über { $from ->
        [nose] der Frontmarke
        [front_axle] der Vorderachse
        [rear_axle] der Hinterachse
        *[datum] dem Punkt „{ $point }“
    } (darunter ist negativ)
doors-asks-yaw = { $which ->
        [named] „{ $target }“
        *[one] Die Zieltafel
    } ist gedreht gegen { $line ->
        [rear_axle_normal] die Senkrechte zur Hinterachse
        [thrust_line] die Fahrachse
        *[centreline] die Mittellinie des Fahrzeugs
    } (zur linken Fahrzeugseite ist positiv; 0 ist rechtwinklig)
doors-asks-pitch = { $which ->
        [named] „{ $target }“
        *[one] Die Zieltafel
    } ist geneigt (Oberkante vom Fahrzeug weg ist positiv; 0 ist lotrecht)
doors-asks-roll = { $which ->
        [named] „{ $target }“
        *[one] Die Zieltafel
    } steht nicht waagerecht (rechte Fahrzeugseite tiefer ist positiv)
doors-asks-sides = Die Seitenabstände zu den Hinterrädern unterscheiden sich, links minus rechts
doors-asks-other = { $quantity }
doors-wanted-both = { $nominal }, von { $low } bis { $high }
doors-wanted-least = { $nominal }, mindestens { $low }
doors-wanted-most = { $nominal }, höchstens { $high }
doors-wanted-open = { $nominal }, ohne Grenze
doors-value-mm = { $value } mm
doors-value-inches = { $inches } Zoll ({ $value } mm)
doors-value-degrees = { $value }°

# Was in einem Vorgabeblatt widersprüchlich oder ungewöhnlich ist
doors-doubt-no-prerequisite = Das Blatt verlangt keine Voraussetzungen. Spielen Reifen, Beladung und Lenkung keine Rolle?
doors-doubt-thrust-line = Die Rechtwinkligkeit zur Fahrachse ist enger als { $least }° verlangt: Radplatten sitzen auf etwa { $seat }° genau. Das erfordert Fotos vor und nach einer halben Radumdrehung oder die Mittellinie als Bezug.
doors-doubt-no-room = Das Gestell soll { $distance } mm vor der Fahrzeugfront stehen, dort sind aber nur { $free } mm freier Platz verlangt: Gestell und Person brauchen etwa { $room } mm mehr.
doors-doubt-step = Keine Prüfung gehört allein zu Schritt „{ $step }“: Was macht ihn zu einem eigenen Schritt?
doors-doubt-range-short = Der gerade Abstand von { $range } mm ist kürzer als der Seitenversatz von { $offset } mm.
doors-doubt-range = Abstand und Seitenversatz ergeben eine gerade Linie von { $least } bis { $most } mm, verlangt sind aber { $low } bis { $high } mm.
doors-doubt-sides = Bei einem um { $turn }° gedrehten Gestell unterscheiden sich die Seitenabstände um { $least } bis { $most } mm, links minus rechts; verlangt sind { $asked } mm. Stimmt das Vorzeichen?
doors-doubt-nose = Nach Höhe und Höhe über der Frontmarke liegt die Frontmarke { $nose } mm über dem Boden. Stimmt das?
doors-doubt-nominal = { $quantity }: { $nominal } { $unit ->
        [deg] °
        *[mm] mm
    } ist ungewöhnlich (üblich sind { $low } bis { $high } { $unit ->
        [deg] °
        *[mm] mm
    }).{ $hint ->
        [inches] {" "}Sind Zoll gemeint? Dann unit = "in" ergänzen.
        *[none] {""}
    }
doors-doubt-tolerance = { $quantity }: Eine Toleranz von ±{ $half } { $unit ->
        [deg] °
        *[mm] mm
    } ist ungewöhnlich (üblich sind ±{ $low } bis ±{ $high } { $unit ->
        [deg] °
        *[mm] mm
    }).
doors-doubt-middle = { $quantity }: Das Soll liegt nicht in der Mitte seiner Grenzen. Ist das gewollt?

# Fotos, die nicht gelesen werden können
doors-photo-open = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } kann nicht gelesen werden: { $why }
doors-photo-no-file = es ist keine Datei
doors-photo-empty = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } ist leer (0 Bytes): noch einmal von der Kamera kopieren
doors-photo-bytes = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } hat { $bytes } Bytes, mehr als { $most }: das JPEG der Kamera selbst verwenden
doors-photo-pixels = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } gibt { $width } x { $height } Bildpunkte an, mehr als { $most } insgesamt: das Foto der Kamera selbst verwenden
doors-photo-cut = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } ist abgeschnitten ({ $detail }): noch einmal von der Kamera kopieren
doors-photo-damaged = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } ist beschädigt ({ $detail }): noch einmal von der Kamera kopieren
doors-photo-unsupported = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } wird nicht dekodiert ({ $what }): in voller Größe als gewöhnliches JPEG speichern
doors-photo-foreign = { $name ->
        [none] das Foto
        *[named] Foto „{ $name }“
    } ist { $what ->
        [avif] ein AVIF-Bild
        [heic] ein HEIC-Bild, das dieses Programm in dieser Fassung nicht dekodiert
        [raw] ein Rohbild
        [video] ein Video
        [tiff] ein TIFF- oder Rohbild
        [gif] ein GIF-Bild
        [bmp] ein BMP-Bild
        [jxl] ein JPEG-XL-Bild
        [jp2] ein JPEG-2000-Bild
        [jpeg] ein JPEG-Bild, dessen zweite Kennung beschädigt ist
        [png] ein PNG-Bild, das wie ein Text verändert wurde
        [pdf] ein PDF-Dokument
        [zip] ein ZIP-Archiv oder Bürodokument
        [gzip] ein gzip-Archiv
        [ps] ein PostScript-Dokument
        [qoi] ein QOI-Bild
        [pgm] ein PGM-Bild
        [ppm] ein PPM-Bild
        [webp] ein WebP-Bild
        [text] eine Textdatei
        *[other] in keinem bekannten Bildformat
    }: { $remedy ->
        [convert] in voller Größe in JPEG umwandeln und die EXIF-Daten behalten
        [heic] die Kamera des Telefons auf „maximale Kompatibilität“ (JPEG) stellen oder das Bild in voller Größe in JPEG umwandeln und die EXIF-Daten behalten
        [still] ein Standbild als JPEG, PNG oder HEIC verwenden
        [copy] das Foto noch einmal von der Kamera kopieren
        [binary] das Foto noch einmal im Binärmodus kopieren
        *[photo] ein Foto als JPEG, PNG oder HEIC verwenden
    }

# Was beim Dekodieren eines Fotos auffiel
doors-fault-pixels = es gibt { $width } x { $height } Bildpunkte an
doors-fault-size-changed = die Größe änderte sich beim Dekodieren
doors-fault-no-size = es gibt keine Größe an
doors-fault-marker = Kennung FF{ $marker } am falschen Ort, nahe Byte { $at }
doors-fault-early = Bilddaten vor dem Bildkopf
doors-fault-restarts = { $found } Neustartkennungen, wo die Größe { $wanted } verlangt
doors-fault-no-data = es enthält keine Bilddaten
doors-fault-short-header = der Bildkopf ist zu kurz
doors-fault-two-headers = es hat zwei Bildköpfe
doors-fault-sampling = der Bildkopf gibt einen Abtastfaktor von null an
doors-fault-no-marker = keine Kennung bei Byte { $at }
doors-fault-no-length = Abschnitt FF{ $marker } gibt bei Byte { $at } keine Länge an
doors-fault-turn = Neustartkennung außer der Reihe bei Byte { $at }
doors-fault-jpeg-end = das JPEG endet bei Byte { $at } ohne Endkennung
doors-fault-missing = es fehlen Bilddaten
doors-fault-left-over = { $bytes } Bytes Bilddaten bleiben übrig
doors-fault-parts = nur { $used } von { $count } Teilen der Bilddaten passen
doors-fault-rows = die Zeilen passen nicht zur angegebenen Größe
doors-fault-heic-pixels = { $coded } Bildpunkte sind kodiert, wo { $stated } angegeben sind
doors-fault-tiles = { $found } Kacheln, wo { $rows } x { $columns } angegeben sind
doors-fault-uncovered = die Kacheln decken es nicht ab
doors-fault-heic-box = die HEIC-Datei endet bei Byte { $end }, innerhalb des Blocks bei Byte { $at }
doors-fault-heic-early = die HEIC-Datei endet zu früh
doors-variant-heic = ein HEIC-Bild
doors-variant-heic-by = ein HEIC-Bild, erzeugt mit { $what }
doors-variant-heic-with = ein HEIC-Bild mit { $what }
doors-variant-jpeg = { $kind ->
        [lossless] ein verlustfreies JPEG
        [hierarchical] ein hierarchisches JPEG
        *[arithmetic] ein JPEG mit arithmetischer Kodierung
    }
doors-variant-bits = ein JPEG mit { $bits } Bit je Abtastwert
doors-variant-scans = ein JPEG mit verringerter Farbauflösung und einem Durchgang je Farbanteil
doors-variant-components = ein JPEG mit ungewöhnlichen Farbanteilen ({ $what })
doors-variant-unusual = ein JPEG ungewöhnlicher Art ({ $what })
doors-variant-png-extra = ein PNG mit sehr großen Zusatzdaten
doors-fault-of-the-program = das Programm ist am Auftrag „{ $job }“ gescheitert: bitte melden, möglichst mit dem Auftrag

# Szenendateien, die der Bildrechner liest
doors-scene-value = muss zwischen { $low } und { $high } liegen, nicht { $found }
doors-scene-value-remedy = den Wert berichtigen
doors-scene-photos = { $count } Fotos
doors-scene-photos-remedy = 1 bis { $most } angeben oder keines für die üblichen zwei
doors-scene-name-twice = der Name ist zweimal vergeben
doors-scene-name-twice-remedy = jedes Foto anders nennen
doors-scene-order = von { $from } bis { $to } ist die falsche Reihenfolge
doors-scene-order-remedy = den kleineren Wert zuerst angeben
doors-scene-things = { $count } Gegenstände
doors-scene-things-remedy = höchstens { $most } angeben
doors-scene-long = ist zu lang
doors-scene-long-remedy = höchstens { $most } Zeichen schreiben
doors-scene-no-carrier = im Markersatz gibt es keinen Markerträger `{ $name }`
doors-scene-no-photo = kein Foto `{ $file }` ist in der Szene
doors-scene-own-key = wird von `stage` selbst geschrieben
doors-scene-no-step = `{ $step }` ist kein Schritt des Vorgabeblatts
doors-scene-moves = ist { $found }, die Szene hat aber { $count } Bewegungen
doors-scene-moves-remedy = für jede Bewegung des Gestells ein [[move]] schreiben
doors-scene-no-phase = `{ $phase }` ist keine Phase
doors-scene-file = `{ $name }` ist kein einfacher Dateiname
doors-scene-file-remedy = Buchstaben, Ziffern, - und _ und die Endung .jpg verwenden
doors-scene-orientation = muss 1, 3, 6 oder 8 sein, nicht { $found }
doors-scene-orientation-remedy = 6 ist hochkant gehalten
doors-scene-not-carried = nichts heißt `{ $file }`
doors-scene-not-carried-remedy = eine mitgelieferte Datei nennen
doors-scene-unknown = unbekannter Schlüssel oder unbekanntes Wort `{ $word }`
doors-scene-missing = `{ $key }` fehlt
doors-scene-missing-remedy = `{ $key } = ...` ergänzen
doors-scene-kinds-remedy = die Schlüssel des Szenenformats und ihre Arten nachsehen
doors-stage-read = { $path } kann nicht gelesen werden: { $why }; Pfad und Rechte prüfen
doors-stage-write = { $path } kann nicht geschrieben werden: { $why }; Rechte und freien Platz des Ordners prüfen
doors-stage-job = die job-Schlüssel der Szene ergeben keine gültige Auftragsdatei: { $why }
doors-stage-compress = Foto „{ $photo }“ kann nicht komprimiert werden: { $why }; kleiner machen
doors-stage-truth = der Auftrag oder seine wahren Werte lassen sich nicht als Text schreiben: { $why }; die job-Schlüssel der Szene prüfen

doors-newest-most-moves = das Gestell ist darin schon { $most }-mal bewegt worden
doors-newest-new-job = einen neuen Auftrag beginnen
doors-newest-unwritten = kann nicht geschrieben werden ({ $why })
doors-newest-make-room = Platz auf dem Datenträger schaffen oder das Schreiben dort erlauben

## Messmittelstudien, und Fotos eines erfundenen Kalibrierplatzes

doors-gauge-too-few = eine Messmittelstudie braucht je zwei oder mehr Prüfer, Teile und Wiederholungen, nicht { $operators }, { $parts } und { $trials }
doors-gauge-uneven = jeder Prüfer muss jedes Teil gleich oft ablesen
doors-gauge-constant =
    { $of ->
        [operators] Mittelwert und Spannweite hat keine Konstante für { $count } Prüfer: die Varianzanalyse nehmen
       *[trials] Mittelwert und Spannweite hat keine Konstante für { $count } Wiederholungen: die Varianzanalyse nehmen
    }
doors-stage-too-large = { $pixels } Pixel sind mehr, als ein JPEG fassen kann
doors-pose-nothing-seen = keines der { $photos } Fotos zeigt einen Marker des Markersatzes
doors-pose-unsettled =
    { $why ->
        [first] die Ausgleichung von { $photos } Fotos führt zu keiner Lösung: die erste Näherung passt nicht zu den Fotos
        [singular] die Ausgleichung von { $photos } Fotos führt zu keiner Lösung: die Gleichungen sind singulär
       *[covariance] die Ausgleichung von { $photos } Fotos führt zu keiner Lösung: die Kovarianz existiert nicht
    }
