report-quantity-from =
    { $quantity ->
        [height_from_nose] Höhe über: { $datum }
        [lateral_from_nose] Mittigkeit zu: { $datum }
       *[other] { $name } ab { $datum }
    }
report-datum =
    { $datum ->
        [nose] Fahrzeugfront
        [front_axle] Vorderachse
        [rear_axle] Hinterachse
       *[other] Bezugspunkt „{ $datum }“
    }
report-term =
    { $term ->
        [yaw] Gierwinkel
        [pitch] Nickwinkel
        [roll] Wankwinkel
        [lateral] seitlicher Versatz
       *[range] Schrägabstand
    }
report-with-term = { $name } ({ $term })
report-step = Schritt { $step }
report-reference-line =
    { $line ->
        [rear_axle_normal] Senkrechte zur Hinterachse
        [thrust_line] Fahrachse
        [centreline] Mittellinie des Fahrzeugs
       *[other] { $line }
    }
report-verdict-short =
    { $verdict ->
        [within] innerhalb
        [outside] außerhalb
        [not_proven] nicht nachgewiesen
       *[retake] neu aufnehmen
    }
report-not-trusted-short = nicht verlässlich
report-mark =
    { $verdict ->
        [within] ok
        [outside] X
        [not_proven] ?
       *[retake] nochmals
    }
report-grade =
    { $grade ->
        [pass] bestanden
        [conditional_pass] bedingt bestanden
        [conditional_fail] bedingt nicht bestanden
        [fail] nicht bestanden
       *[other] { $grade }
    }
report-instrument =
    { $instrument ->
        [laser] Laser
        [tape] Maßband
        [level] Wasserwaage
        [alignment] Achsmessanlage
       *[other] { $instrument }
    }

report-amount =
    { $unit ->
        [deg] { $value }°
        [degrees] { $value } Grad
        [in] { $value } Zoll
        [mm] { $value } mm
       *[other] { $value } { $unit }
    }
report-amount-with-u =
    { $unit ->
        [deg] { $value }° ± { $u }°
        [degrees] { $value } ± { $u } Grad
        [in] { $value } ± { $u } Zoll
        [mm] { $value } ± { $u } mm
       *[other] { $value } ± { $u } { $unit }
    }
report-with-inches = { $amount } ({ $inches })
report-to-side = { $amount } { $side }
report-required-side = { $nominal }, ± { $half }
report-required-range = { $nominal }, von { $lower } bis { $upper }
report-required-least = { $nominal }, mindestens { $lower }
report-required-most = { $nominal }, höchstens { $upper }
report-required-open = { $nominal }, ohne Grenze
report-probability =
    { $bound ->
        [above] > { $percent } %
        [below] < { $percent } %
        [unknown] unbekannt
       *[exact] { $percent } %
    }
report-otherwise = { $assuming }: { $value }, { $verdict }
report-no-value = kein Wert
report-not-determined = nicht bestimmt

report-side-short =
    { $side ->
        [right] rechts
        [left] links
        [steered-right] rechts
        [steered-left] links
        [right-end-nearer] rechtes Ende näher
        [left-end-nearer] linkes Ende näher
        [top-towards] oben hin
        [top-away] oben weg
        [left-end-low] linkes Ende tief
        [right-end-low] rechtes Ende tief
        [right-longer] rechts länger
        [left-longer] links länger
        [toe-out] Nachspur
        [toe-in] Vorspur
        [top-rearward] oben nach hinten
        [top-forward] oben nach vorn
        [top-inward] oben nach innen
        [top-outward] oben nach außen
        [nose-up] vorn hoch
        [nose-down] vorn tief
        [below] darunter
        [above] darüber
        [below-floor] unter dem Boden
        [behind] dahinter
       *[negative] negativ
    }
report-side-long =
    { $side ->
        [right] zur rechten Fahrzeugseite
        [left] zur linken Fahrzeugseite
        [steered-right] nach rechts gelenkt
        [steered-left] nach links gelenkt
        [right-end-nearer] gedreht: das Ende auf der rechten Fahrzeugseite ist näher am Fahrzeug
        [left-end-nearer] gedreht: das Ende auf der linken Fahrzeugseite ist näher am Fahrzeug
        [top-towards] geneigt: oben zum Fahrzeug hin
        [top-away] geneigt: oben vom Fahrzeug weg
        [left-end-low] quer geneigt: das Ende auf der linken Fahrzeugseite ist tiefer
        [right-end-low] quer geneigt: das Ende auf der rechten Fahrzeugseite ist tiefer
        [right-longer] auf der rechten Fahrzeugseite länger
        [left-longer] auf der linken Fahrzeugseite länger
        [toe-out] Nachspur
        [toe-in] Vorspur
        [top-rearward] oben zum Heck geneigt
        [top-forward] oben nach vorn geneigt
        [top-inward] oben nach innen geneigt
        [top-outward] oben nach außen geneigt
        [nose-up] Fahrzeugfront hoch
        [nose-down] Fahrzeugfront tief
        [below] darunter
        [above] darüber
        [below-floor] unter dem Boden
        [behind] auf der Fahrzeugseite davon
       *[negative] unter null
    }
report-end =
    { $end ->
        [nearer] näher
        [further] weiter weg
        [lower] tiefer
        [higher] höher
        [vehicle-right] Fahrzeug rechts
        [vehicle-left] Fahrzeug links
        [less] weniger
       *[more] mehr
    }
report-against-required =
    { $way ->
        [nearer] näher als Soll
        [further] weiter weg als Soll
        [lower] tiefer als Soll
        [higher] höher als Soll
        [right] weiter zur rechten Fahrzeugseite als Soll
        [left] weiter zur linken Fahrzeugseite als Soll
        [right-end-nearer] gedreht, rechtes Ende näher als Soll
        [left-end-nearer] gedreht, linkes Ende näher als Soll
        [top-towards] weiter zum Fahrzeug hin geneigt als Soll
        [top-away] weiter vom Fahrzeug weg geneigt als Soll
        [left-end-low] gedreht, linkes Ende tiefer als Soll
        [right-end-low] gedreht, rechtes Ende tiefer als Soll
        [less] weniger als Soll
       *[more] mehr als Soll
    }
report-deviation = { $name }: { $amount } { $against }
report-as-required = { $name }: wie Soll

report-what-to-do = Was jetzt zu tun ist
report-do-now = Jetzt zu tun, in dieser Reihenfolge
report-numbered-step = { $title }: { $words }
report-with-extras = { $title } ({ $extras })
report-move =
    { $name ->
        [level] Querneigung
        [tilt] Neigung
        [square] Rechtwinkligkeit
        [centre] Mittigkeit
        [distance] Abstand
       *[height] Höhe
    }
report-clear-first = Zuerst klären
report-settle = Klären
report-measured = gemessen: { $value }
report-prove-more = nicht nachgewiesen: mehr Fotos von weiter auseinanderliegenden Orten aufnehmen oder den Wert näher an das Soll bringen
report-prove-never = diese Fotos und dieser Markersatz können eine so kleine Toleranz nicht nachweisen. Das heißt nicht „nicht bestanden“: die Messunsicherheit ist dafür zu groß, wo auch immer das Gestell steht
report-measure-again = die Fotos bestimmen es nicht: neu aufnehmen
report-then = Danach
report-close-moved = Ein Foto vom Gestell an der neuen Stelle aufnehmen, mit Radplatten und Bodenblättern: es wird mit den früheren zusammen gemessen; ein zweites weist es nach.
report-close-void = Fotos neu aufnehmen. Das Gestell nicht nach den Zahlen dieses Berichts bewegen: sie sind nicht verlässlich.
report-close-held = Fotos neu aufnehmen. Das Gestell nicht nach den Zahlen dieses Berichts bewegen: erst klären, was oben steht.
report-close-held-typed = Den Auftrag noch einmal prüfen. Das Gestell nicht nach den Zahlen dieses Berichts bewegen: erst klären, was oben steht.
report-nothing-to-move = Nichts zu bewegen
report-keep-report = Diesen Bericht beim Auftrag aufbewahren.
report-close-retake = Fotos neu aufnehmen und den Auftrag noch einmal prüfen.
report-close-verify = Den Auftrag noch einmal prüfen.
report-none-trusted = Die Zahlen sind nicht verlässlich.
report-some-trusted = Nicht alle Zahlen sind verlässlich.
report-findings-say-why = Warum, sagen die Befunde.

report-job = Auftrag { $job }
report-fact-bay = Kalibrierplatz { $bay }
report-fact-technician = Techniker: { $name }
report-fact-attempt = Versuch { $number }
report-fact-kit = Markersatz: { $upkeep }
report-kit-serial = Seriennummer { $serial }
report-kit-due =
    { $state ->
        [overdue] Einmessen überfällig seit { $due }: Markersatz neu einmessen
        [due] Einmessen fällig am { $due }
       *[unknown] Einmessen fällig am { $due } (nicht prüfbar: keine Zeit angegeben)
    }
report-first = Zuerst
report-by-screw = Das entspricht: { $screw }.
report-last-move = Die letzte Bewegung: { $last }.
report-track-text = Weg des Gestells (± erweiterte Messunsicherheit, 95 %)
report-position-first = zuerst
report-position-move = Bewegung { $number }
report-figure = { $name } { $value }
report-figure-moved = { $name } { $value } ({ $moved })
report-last-position = Die letzte Stellung zeigen: { $photos }.
report-last-position-none = Kein Foto zeigt die letzte Stellung.
report-checks-text = Prüfungen, Bezugslinie: { $line } (gemessen ± erweiterte Messunsicherheit, 95 %)
report-required-value = Soll { $required }
report-probability-short = { $probability } innerhalb
report-required-and-probability = { $required }, { $probability }
report-from-photos-alone = Dieselben Prüfungen nur aus den Fotos
report-same-verdicts = Die Urteile sind dieselben.
report-readings-text = Messwerte gegen die Fotos (± Standardunsicherheit)
report-agreement =
    { $agreement ->
        [agrees] stimmt überein
        [disagrees] weicht ab
       *[other] nicht vergleichbar
    }
report-reading =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, Fotos { $photos }, im Ergebnis verwendet
       *[no] { $name }: { $instrument } { $read }, Fotos { $photos }
    }
report-reading-alone =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, aus den Fotos nicht bestimmbar, im Ergebnis verwendet
       *[no] { $name }: { $instrument } { $read }, aus den Fotos nicht bestimmbar
    }
report-read-by = abgelesen
report-findings = Befunde
report-level =
    { $level ->
        [void] ungültig
        [stop] Halt
        [warn] Warnung
       *[note] Hinweis
    }
report-level-meaning =
    { $level ->
        [void] die Messung ist nicht verlässlich
        [stop] nichts gilt als innerhalb
        [warn] ansehen lohnt sich
       *[note] gut zu wissen
    }
report-blind-text = Mit diesen Fotos nicht prüfbar
report-blind = { $fault }: nötig wäre: { $remedy }
report-blind-of = { $fault } ({ $carriers }): nötig wäre: { $remedy }
report-more-photos = mehr Fotos
report-whose-tolerance = Wessen Toleranz:
report-cautions-text = Hinweise:
report-cautions-short = maßgebend sind die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften. Die Arbeit ist Sache von Fachpersonal; Laser und angehobene Fahrzeuge verlangen eigene Schutzmaßnahmen. Dies dokumentiert eine Aufstellung und ersetzt nicht das Verfahren.
report-not-proofread = Diese Texte hat noch kein Techniker dieser Sprache gelesen.

report-phases = Vor und nach der Kalibrierung
report-attempts = Versuche dieser Reihe
report-ride-height = Höhenstand
report-one-more-photo = Ein weiteres Foto
report-next-photo = Würde entscheiden, was offen ist: { $photo }.
report-moved = { $body }: bewegt um { $mm } und { $degrees }.
report-not-moved = { $body }: nicht über die Messunsicherheit hinaus bewegt: { $mm } und { $degrees }.
report-body =
    { $body ->
        [vehicle] Fahrzeug
       *[other] { $body }
    }
report-attempt-line =
    { $numbered ->
        [yes] Versuch { $number }, Auftrag { $job }
       *[no] Auftrag { $job }
    }, { $photos ->
        [one] ein Foto
       *[other] { $photos } Fotos
    }, nach eigenen Fotos: { $verdict }; { $beside ->
        [own] dieser Auftrag
        [together] mit diesem Auftrag zusammen ausgeglichen, weil sich nichts bewegt hatte
       *[apart] nicht mit diesem Auftrag zusammen ausgeglichen: { $why }
    }.

report-title = Wo die Zieltafel stand: Auftrag { $job }
report-rendered = GERENDERT: Keine Kamera hat diese Fotos aufgenommen. Sie zeigen einen erfundenen Arbeitsplatz, zur Übung oder als Muster, und beweisen nichts über irgendein Fahrzeug.
report-page-title = Auftrag { $job }: { $verdict }
report-document-title = Wo die Zieltafel stand: Auftrag { $job }: { $verdict }
report-page-of = Seite { $page } von { $pages }
report-repair-order = Reparaturauftrag
report-attempt = Versuch
report-vehicle = Fahrzeug
report-vin = Fahrzeug-Identifizierungsnummer
report-photos-taken = Fotos aufgenommen
report-bay = Kalibrierplatz
report-technician = Techniker
report-kit = Markersatz
report-kit-upkeep = Pflege des Markersatzes
report-camera = Kamera
report-setup-sheet = Vorgabeblatt

report-checks = Prüfungen
report-checks-none = Das Vorgabeblatt prüft nichts.
report-checks-lede = Bezugslinie: { $line }. ± ist die erweiterte Messunsicherheit U (95 %).
report-rule =
    { $rule ->
        [guarded] „Innerhalb“ verlangt mindestens { $least } % Wahrscheinlichkeit, dass der wahre Wert innerhalb der Grenzen liegt; „außerhalb“ entsprechend.
        [simple] Nur der gemessene Wert wird an den Grenzen gemessen; seine Messunsicherheit zählt nicht.
        [binary] Innerhalb der Grenzen bleibt ein Schutzband von einer erweiterten Messunsicherheit frei (ILAC-G8:2019, binär).
        [four_way] Bestanden, bedingt bestanden, bedingt nicht bestanden, nicht bestanden (ILAC-G8:2019).
       *[other] Entscheidungsregel: { $rule }.
    }
report-without-readings = In der Tabelle oben wirken Messwerte mit. Ohne sie:
report-check = Prüfung
report-required = Soll
report-measured-u = Ist ± U
report-measured-key = Ist
report-against-limits = Lage zu den Grenzen
report-verdict-column = Urteil
report-tolerance-basis = Toleranz: { $basis }
report-not-to-be-trusted = nicht verlässlich
report-within-limits = { $probability } innerhalb der Grenzen
report-too-small = Diese Fotos und dieser Markersatz können eine so kleine Toleranz nicht nachweisen. Das heißt nicht „nicht bestanden“.
report-reason-in-step = Warum: siehe „Was jetzt zu tun ist“, Schritt { $step }.
report-same-reason = Derselbe Grund wie bei: { $check }.
report-against-line = Bezugslinie: { $line }
report-by-reading = durch einen Messwert entschieden
report-bar-key = So werden die Balken gelesen
report-bar-limits = Grenzen
report-bar-required = Soll
report-bar-true = wo der wahre Wert liegt (95 %)
report-bar-mark = Das Zeichen darin ist der gemessene Wert, in der Form seines Urteils.
report-off-scale = außerhalb der Skala: { $amount }
report-bar-spoken = { $name }: { $value }, Soll { $required }, { $verdict }

report-drawing = Wo alles stand
report-drawings-neither = Diese Zeichnungen auch nicht.
report-drawings-not-all = Auch nicht alle diese Zeichnungen.
report-nothing-to-draw = Die Fotos bestimmen nicht, wo Gestell und Fahrzeug standen; es gibt nichts zu zeichnen.
report-plan = Grundriss: von oben gesehen
report-side = Seitenansicht: von rechts vom Fahrzeug gesehen
report-drawing-caption = Maßstäblich, jede Abweichung in wahrer Größe. Marker (schwarz), Radmitten und Gestell stehen, wo sie gemessen wurden; die Karosserie ist darum skizziert. Nummerierte Kreise sind die Fotos mit ihrer Blickrichtung.
report-nose-typed = Die Fahrzeugfront trug keine Marke: ihre Lage folgt aus der eingegebenen Länge.
report-magnified = Das Gestell gegen seine Soll-Stelle
report-magnified-of = Das Gestell gegen seine Soll-Stelle: { $name }
report-magnified-lede = Gestrichelt: Soll. Durchgezogen: gemessen, mit der Messunsicherheit als Kreuz (95 %). Schattiert: wo der Zielpunkt sein darf; gepunktet: wie weit das Gestell gedreht sein darf.
report-drawing-spoken = Maßstäbliche Zeichnung von Fahrzeug, Gestell und Fotos. { $figures }
report-view-above = Von oben
report-view-right = Von rechts vom Fahrzeug
report-view-vehicle = Vom Fahrzeug aus gesehen
report-edge =
    { $edge ->
        [towards] zum Fahrzeug
        [away] weg
        [left] Fahrzeug links
        [right] Fahrzeug rechts
        [higher] höher
        [lower] tiefer
       *[away-from-vehicle] vom Fahrzeug weg
    }
report-drawn-moved = Gegen den Umriss des Gestells: Verschiebungen { $lengths }-fach gezeichnet.
report-drawn-turned = Gegen den Umriss des Gestells: Drehung { $angles }-fach gezeichnet.
report-drawn-both = Gegen den Umriss des Gestells: Verschiebungen { $lengths }-fach, Drehung { $angles }-fach gezeichnet.
report-wheelbase = Radstand { $amount }
report-distance-from = { $amount } ab { $datum }

report-track = Weg des Gestells
report-track-lede = Alle Fotos werden zusammen gemessen: Fahrzeug, Radplatten und Bodenblätter stehen, wo die ersten sie fanden; das Gestell hat nach jeder Bewegung eine eigene Stelle. ± ist die erweiterte Messunsicherheit (95 %); die einer Bewegung ist kleiner als die zweier Stellen, weil Gemeinsames darin wegfällt.
report-track-none = Kein Foto zeigt das Gestell an seiner jetzigen Stelle zusammen mit dem Fahrzeug.
report-track-shown = Seine jetzige Stelle zeigen: { $photos }.
report-track-above = Von oben: { $name }
report-track-caption = Der Zielpunkt vor der ersten Bewegung (0) und nach jeder weiteren; der große Punkt ist seine jetzige Stelle.
report-track-spoken = Weg von oben: { $name }. { $moves }
report-track-move = Bewegung { $number }, { $name }: { $moved }
report-position = Stellung
report-before-moves = Vor der ersten Bewegung
report-after-move = Nach Bewegung { $number }
report-sentence = { $words }.

report-nothing-to-report = Nichts zu berichten.
report-photos = Fotos
report-no-photo = Kein Foto war lesbar.
report-photos-key = So werden die Fotos gelesen
report-key-used = verwendeter Marker mit seiner Nummer
report-key-not-used = nicht verwendeter Marker
report-key-outline = wo die berechneten Markerträger und der Zielpunkt liegen
report-key-residual = Restabweichung, gefunden minus berechnet, vergrößert
report-photo = Foto { $number }:
report-photo-not-used = Nicht verwendet:
report-photo-spoken = Foto { $number }: { $markers }
report-markers-found =
    { $found ->
        [one] ein Marker
       *[other] { $found } Marker
    } gefunden, davon verwendet: { $used }
report-markers-left-out = vom Markersatz weggelassen: { $count }
report-markers-unknown = mit Nummern, die der Markersatz nicht kennt: { $count }
report-markers-nameless = zu eng beieinander, um im Bild benannt zu werden: { $numbers }
report-marker-unknown = { $number } unbekannt
report-marker-not-used = { $number } nicht verwendet
report-no-picture = das Bild liegt nicht vor
report-residual-scale = { $length } px, Restabweichungen { $factor }-fach gezeichnet
report-camera-profile = Kameraprofil
report-taken = Aufgenommen
report-private-kinds = Steht auch in den eigenen Daten des Fotos, hier nicht gezeigt
report-private-value = Privat: { $name }
report-residuals = Restabweichungen, RMS
report-blur = Unschärfe, Median
report-noise = Rauschen der Ecken
report-noise-value = { $ratio }-mal so groß wie bei einem schlicht entwickelten Foto
report-light = Licht vom Telefon verändert
report-light-value = um { $percent } % von Stelle zu Stelle (1 Sigma)
report-edge-offset = Kantenversatz
report-edge-offset-value =
    { $way ->
        [outward] { $offset } px, nach außen
        [inward] { $offset } px, nach innen
       *[none] { $offset } px
    }
report-focal-length = Brennweite
report-credentials = Herkunftsnachweise
report-credentials-of-photos = Herkunftsnachweise der Fotos: { $counts }.
report-credentials-made = erstellt mit { $generator }
report-credentials-time = Zeitstempel vom { $time }
report-credentials-bytes = der Hash umfasst alle Bytes außer { $count } ab Byte { $first }
report-credentials-edits = Bearbeitungen laut Manifest: { $edits }
report-px = { $value } px
report-px-twice = { $first } px, { $second } px
report-taken-from = Aufnahmeort
report-taken-from-value =
    { $side ->
        [left] { $ahead } m vor der Hinterachse, { $across } m zur linken Fahrzeugseite, { $high } m hoch
       *[right] { $ahead } m vor der Hinterachse, { $across } m zur rechten Fahrzeugseite, { $high } m hoch
    }
report-taken-from-behind =
    { $side ->
        [left] { $behind } m hinter der Hinterachse, { $across } m zur linken Fahrzeugseite, { $high } m hoch
       *[right] { $behind } m hinter der Hinterachse, { $across } m zur rechten Fahrzeugseite, { $high } m hoch
    }

report-readings = Messwerte gegen die Fotos
report-readings-lede = ± ist die Standardunsicherheit u. E_n ist die Differenz, geteilt durch die Wurzel aus der Quadratsumme beider erweiterten Messunsicherheiten (ISO/IEC 17043): bis 1 stimmen sie überein.
report-reading-column = Messwert
report-read = Abgelesen
report-result = Ergebnis
report-by-instrument = mit: { $instrument }
report-reading-used = im Ergebnis verwendet
report-reading-compared = nur verglichen, nicht verwendet
report-all-measured = Alle gemessenen Größen
report-all-measured-none = Die Fotos bestimmen keine Größe der Aufstellung.
report-all-measured-lede = Bezugslinie: { $line }. ± ist die Standardunsicherheit u.
report-quantity-column = Größe
report-value-u = Wert ± u
report-direction = Richtung
report-budget = Woher die Messunsicherheit kommt
report-budget-lede = Standardunsicherheit jeder Quelle und ihr Anteil an der Varianz (GUM).
report-source = Quelle
report-share = Anteil
report-budget-total =
    { $name }: u = { $u }, { $freedom ->
        [infinite] unendlich viele Freiheitsgrade
       *[finite] { $degrees } Freiheitsgrade
    }{ $factor_known ->
        [yes] , Erweiterungsfaktor { $factor }
       *[no] {""}
    }

report-doubts = Was diese Fotos gezeigt hätten
report-doubts-lede = Die kleinste Größe jedes Fehlers, die in diesem Auftrag mit 95 % Wahrscheinlichkeit gefunden wird. Kleinere können da sein.
report-fault = Fehler
report-found-from = Gefunden ab
report-all-alike = alle um denselben Betrag
report-worst-of = schlechtester von { $count }: { $name }
report-not-checkable = mit diesen Fotos nicht prüfbar
report-it-takes = nötig wäre: { $remedy }
report-hangs-on = Wovon die Prüfungen abhängen
report-hangs-on-lede = Die größte Änderung jedes Werts, wenn ein Foto, ein Markerträger oder die Form des Objektivmodells wegfällt.
report-change = Änderung
report-uncertainty-95 = Messunsicherheit (95 %)

report-attested = Was der Techniker bestätigt
report-attested-nothing = Das Vorgabeblatt verlangt nichts, und nichts wurde angegeben.
report-attested-complete = Jede Pflichtantwort liegt vor.
report-attested-missing = Pflichtantworten fehlen.
report-statement = Aussage
report-answer = Antwort
report-not-asked = vom Vorgabeblatt nicht verlangt
report-obligation =
    { $required ->
        [yes] Pflicht
       *[no] optional
    }
report-answered =
    { $answer ->
        [yes] ✓ ja
        [no] ✕ nein
       *[none] — nicht beantwortet
    }
report-scan-tool = Was das Diagnosegerät sagte
report-scan-tool-nothing = Über die Kalibrierung selbst wurde nichts angegeben.
report-scan-tool-aside = Wie vom Techniker eingegeben. Es sagt nichts darüber, wo das Gestell stand.
report-calibration-key =
    { $key ->
        [result] Ergebnis
        [at] Zeit
        [reported_azimuth_deg] Gemeldeter Azimut, Grad
        [reported_elevation_deg] Gemeldete Elevation, Grad
       *[other] { $key }
    }
report-calibration-result =
    { $result ->
        [successful] erfolgreich
        [failed] fehlgeschlagen
        [not-run] nicht durchgeführt
       *[other] { $result }
    }
report-attachments = Anlagen
report-attachment-kind =
    { $kind ->
        [scan-before] Diagnosebericht vorher
        [scan-after] Diagnosebericht nachher
        [alignment] Achsmessprotokoll
        [procedure] Verfahrensunterlage
        [overview-photo] Übersichtsfoto
        [other] Sonstiges
       *[unknown] { $kind }
    }
report-sheet = Wessen Vorgaben das sind
report-sheet-no-source = Das Vorgabeblatt nennt keine Quelle.
report-procedure-key =
    { $key ->
        [document] Unterlage
        [revision] Stand
        [opened] Abgerufen
        [applies-to] Gilt für
       *[other] { $key }
    }
report-not-checked = Was nicht geprüft wurde
report-not-checked-nothing = Das Vorgabeblatt verzichtet auf nichts und lässt nichts aus.
report-left-out = { $quantity }: vom Vorgabeblatt weder geprüft noch ausgenommen
report-waived = { $quantity }: ausgenommen; Begründung: { $because }
report-inputs = Die Dateien hinter diesem Bericht
report-inputs-lede = Eine geänderte Datei hat eine andere SHA-256.
report-what = Was
report-file = Datei
report-input-role =
    { $role ->
        [job] Auftrag
        [setup] Vorgabeblatt
        [kit] Markersatz
        [layout] Anordnung
        [camera] Kamera
        [stand] Gestell
        [photo] Foto
        [attachment] Anlage
       *[other] { $role }
    }
report-found-in =
    { $place ->
        [embedded] gefunden in: eingebaute Modelle
        [installed] gefunden in: installierte Modelle
        [option] gefunden in: Ordner von --models
        [environment] gefunden in: Ordner von BAYWITNESS_MODELS
       *[other] gefunden in: Modelle an einem anderen Ort
    }
report-cautions = Hinweise zur Vorsicht
report-caution-maker = Maßgebend sind die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften. Wo sie von diesem Bericht abweichen, gelten sie.
report-caution-trained = Arbeiten an Sensoren von Fahrerassistenzsystemen sind Sache von Fachpersonal.
report-caution-lasers = Laser und angehobene Fahrzeuge verlangen eigene Schutzmaßnahmen.
report-caution-documents = Dieser Bericht dokumentiert, wo die Zieltafel bei der Aufnahme der Fotos stand. Er ersetzt nicht das Kalibrierverfahren und sagt nicht, dass der Sensor funktioniert.
report-footer = Gemessen und geschrieben von { $tool } · Datensatzformat { $format } · Auftrag { $job }

report-about = Über dieses Dokument
report-about-repeats = Es gibt das Ergebnis des Auftrags { $job } wieder, das in der Datei result.json aufbewahrt wird. Die SHA-512 dieser Datei steht auf jeder Seite, auch als QR-Code:
report-about-undated = Weder der Auftrag noch seine Fotos geben eine Zeit mit Zeitzone an. Das Datum in den Eigenschaften dieser Datei ist der 1. Januar 1970, weil PDF/A eines verlangt; es bedeutet nichts.
report-digest-of = SHA-512 von result.json, deren Inhalt dieses Dokument wiedergibt:
report-foreign-characters =
    { $count ->
        [one] Ein Zeichen dieses Datensatzes hat in den Schriften dieses Dokuments keine Form und steht als { $sign }; kopierter Text, HTML-Bericht und result.json haben es.
       *[other] { $count } verschiedene Zeichen dieses Datensatzes haben in den Schriften dieses Dokuments keine Form und stehen als { $sign }; kopierter Text, HTML-Bericht und result.json haben sie.
    }

verify-one-job = --moved und --more nehmen einen Auftrag: den Ordner nennen, zu dem das Foto gehört
verify-not-logged = Nicht im Versuchsprotokoll: { $jobs }, nicht lesbar.
verify-report = Bericht:
verify-for-the-customer = Für den Kunden: { $file }
verify-repair-order = Reparaturauftrag { $series }: { $file }
verify-no-folder = Ordner lässt sich nicht anlegen: { $folder }: { $why }
verify-no-json = Ergebnis lässt sich nicht als JSON schreiben: { $why }
verify-watch-every = „{ $text }“ ist keine Zeit von 0,05 bis 3600 s
verify-watch-no-folder = { $folder } ist kein Ordner: einen nennen, der Auftragsordner enthält
verify-watching = { $folder } wird beobachtet; Strg-C beendet es.
verify-unreadable-folder = Ordner nicht lesbar: { $folder }: { $why }
report-findings-above = Alle Befunde stehen unter „Was jetzt zu tun ist“.

report-private-kind =
    { $kind ->
        [position] Aufnahmeort (GPS)
        [serial] Seriennummern
        [owner] Eigentümer oder Urheber
       *[notes] eigene Angaben des Herstellers
    }
report-picture-unreadable = Foto { $photo } ist für den Bericht nicht lesbar: { $why }
report-picture-not-made = die Kopie des Fotos { $photo } lässt sich nicht erzeugen: { $why }
report-no-pdf = der Bericht lässt sich nicht als PDF schreiben: { $why }
report-no-pdf-of-page = der Bericht lässt sich nicht als PDF schreiben, weil seine Seite nicht wohlgeformt ist: { $why }
report-no-table = die Tabelle lässt sich nicht als Parquet schreiben: { $why }
