page-skip = Zum Inhalt
page-all-jobs = Alle Aufträge

page-jobs-title = Aufträge
page-begin-job = Neuer Auftrag
page-search-jobs = Suche nach Nummer, Fahrzeug, FIN, Techniker oder Vorgabeblatt
page-search = Suchen
page-no-jobs = Noch kein Auftrag hier.
page-no-match = Kein Auftrag enthält alle diese Wörter.
page-earlier = Frühere Aufträge
page-later = Spätere Aufträge
page-open-state = offen
page-closed-state = abgeschlossen und versiegelt
page-unreadable-job = Die Datei dieses Auftrags ist nicht lesbar
page-attempt-n = Versuch { $n }
page-not-measured = noch zu messen

page-choose-sheet = Welches Vorgabeblatt?
page-search-sheets = Teil des Namens
page-used-lately = Zuletzt benutzt
page-every-sheet = Alle Vorgabeblätter
page-no-sheet = Kein Vorgabeblatt enthält alle diese Wörter.
page-new-sheet = Neues Vorgabeblatt eingeben
page-new-sheet-why = Jede Zahl wird zweimal eingegeben, jedes Mal aus der Quelle: mit einer falschen würde eine falsche Aufstellung bestehen. Was die Quelle nicht verlangt, bleibt leer.
page-sheet-name = Kurzname
page-sheet-name-hint = Kleinbuchstaben, Ziffern und Bindestriche.
page-sheet-title = Was wird womit kalibriert
page-sheet-source = Quelle
page-sheet-source-hint = Wessen Zahlen das sind: Unterlage des Herstellers mit Datum. Steht auf jedem Bericht.
page-reference-line = Bezugslinie
page-choose = wählen
page-line-thrust = Fahrachse
page-line-centre = Mittellinie
page-line-rear-axle = Senkrechte zur Hinterachse
page-distance-from = Ab
page-wanted-value = Soll
page-tolerance-value = Toleranz, plus und minus
page-once-more = noch einmal
page-keep-sheet = Vorgabeblatt speichern
page-source-says = Quelle:

page-new-job = Neuer Auftrag
page-other-sheet = Anderes Vorgabeblatt
page-vehicle = Fahrzeug
page-vehicle-description = Fahrzeug in Worten
page-vin = FIN (17 Zeichen)
page-vin-ok = Die Prüfziffer der FIN stimmt.
page-vin-doubt = Das neunte Zeichen ist nicht die Prüfziffer, die nordamerikanische Nummern tragen. Nummer noch einmal mit dem Fahrzeug vergleichen; andere Märkte brauchen keine.
page-repair-order = Reparaturauftrag
page-kit = Markersatz
page-camera = Kamera
page-camera-by-photo = wie in jedem Foto angegeben
page-no-kit = Kein Markersatz trägt, was dieses Vorgabeblatt prüft. Datei des Markersatzes dort ablegen, wo das Programm sucht.
page-technician = Techniker
page-bay = Kalibrierplatz
page-optional = optional
page-start-job = Diesen Auftrag starten

page-step-prepare = Vorbereiten
page-step-photos = Fotos
page-step-finish = Abschluss
page-steps-of-job = Schritte dieses Auftrags
page-attempts = Versuche
page-this-attempt = dieser

page-before-photos = Vor den Fotos
page-answered = { $answered } von { $all } beantwortet
page-yes = Ja
page-no = Nein
page-unanswered = Nicht beantwortet
page-required = Pflicht
page-sizes = Fahrzeugmaße
page-sizes-why = Wird mit den Fotos verglichen und allein benutzt, wo sie es nicht zeigen. Spurweiten von Nabe zu Nabe gemessen.
page-wheelbase = Radstand, mm
page-nose-from-rear-axle = Fahrzeugfront vor der Hinterachse, mm
page-floor-below-hub = Radmitte über dem Boden, mm
page-rear-track = Spurweite hinten, mm
page-front-track = Spurweite vorn, mm
# Behind a name, what it is of: a button and its photo, a kind and its file.
page-name-of = { $name }: { $of }
# The same where both are drawn differently.
page-colon = :
page-readings = Messwerte
page-readings-why = Laser, Maßband, Wasserwaage: mit den Fotos verglichen, nie eingemischt.
page-instrument = Messgerät
page-laser = Laser
page-tape = Maßband
page-level = Wasserwaage
page-alignment = Achsmessanlage
page-alignment-sheet = Achsmessprotokoll
page-alignment-sheet-why = Der Fahrachswinkel, oder die Spur beider Hinterräder: Grad und Minuten ohne Vorzeichen, und die Seite.
page-thrust-angle = Fahrachswinkel
page-rear-toe-left = Spur hinten links
page-rear-toe-right = Spur hinten rechts
page-points-left = zeigt nach links
page-points-right = zeigt nach rechts
page-toe-in = Vorspur
page-toe-out = Nachspur
page-choose-side = Seite?
page-save = Speichern
page-saved = Gespeichert.
page-to-photos = Weiter zu den Fotos

page-from-nose = Fahrzeugfront
page-from-front-axle = Vorderachse
page-from-rear-axle = Hinterachse

page-wanted = Soll { $limits }

page-card-title = Einmalkarte
page-card-why = Ein Code, den nur dieser Auftrag hat und der auf den Fotos zu sehen ist, beweist, dass sie für ihn aufgenommen wurden. Auf einem zweiten Bildschirm neben dem Gestell zeigen oder aus Kacheln mit diesen Nummern legen.
page-card-make = Karte benutzen
page-card-show = Karte zeigen
page-card-code = Code dieses Auftrags: { $code }
page-card-marker = Marker { $id }
page-back-to-photos = Zurück zu den Fotos

page-where-to-stand = Aufnahmeorte
page-place-sees = Im Bild: { $names }
page-no-place = Kein Ort auf diesem Kalibrierplatz zeigt genug Marker.
page-drawing-from-above = Der Kalibrierplatz von oben; das Fahrzeug fährt nach oben.
page-in-every-step = Von jedem Aufnahmeort in jeder Stellung: { $steps }.
page-position = Stellung des Gestells
page-plan-failed = Für diesen Markersatz lassen sich keine Aufnahmeorte angeben.

page-take-photo = Foto aufnehmen
page-live-photo = Foto in dieser Seite
page-live-take = Auslösen
page-live-close = Kamera schließen
page-live-wait = Marker werden gesucht …
page-live-seen = Marker gefunden: { $count } ({ $names })
page-live-none = Kein Marker dieses Satzes im Bild.
page-live-ties = Gestell und Umgebung sind beide im Bild.
page-live-apart = Gestell und noch etwas müssen beide im Bild sein.
page-live-away = Der Server antwortet nicht: Fotos bleiben hier, bis er es tut.
page-live-level = gedreht { $turned }°, blickt { $down }° nach unten
page-live-refused = Dieser Browser stellt keine Kamera bereit ({ $why }). Den anderen Knopf benutzen.
page-live-taken = Aufgenommen: { $width } × { $height } Pixel.
page-live-frame = Es ist ein Einzelbild des laufenden Bildes: kleiner als Fotos des Telefons und anders beschnitten; eine Kameradatei aus Fotos passt deshalb nicht dazu.
page-live-no-record = Es sagt nichts über das Telefon (kein EXIF): gemessen wird es nur, wenn der Auftrag seine Kamera nennt, und nur eine Kameradatei, die aus so aufgenommenen Bildern bestimmt ist, passt.
page-live-unnamed = Dieser Auftrag nennt keine Kamera: besser die Kamera des Telefons mit dem anderen Knopf benutzen.
page-tripod-start = Stativ: alle paar Sekunden ein Foto
page-tripod-stop = Stativfotos beenden
page-tripod-why = Das Telefon steht still auf einem Stativ, während das Gestell bewegt wird. Von jedem Ort, an dem das Gestell ruht, wird das neueste Foto behalten.
page-tripod-says = Stativ: { $said }
page-choose-photos = Fotos wählen
page-drop-here = oder hier ablegen
page-needs-script = Zum Senden von Fotos braucht dieser Browser JavaScript. Die Fotos können auch in den Ordner photos/ des Auftrags kopiert werden.
page-waiting-here = Auf diesem Gerät, noch nicht gesendet
page-photos = Fotos
page-no-photos = Noch kein Foto. Mindestens zwei von verschiedenen Seiten sind nötig.
page-photo-n = Foto { $n }
page-good-photo = Gut
page-retake-photo = Neu aufnehmen
page-looking = Wird angesehen …
page-no-target = Das Gestell ist nicht auf diesem Foto, oder nichts außer ihm: beides muss auf ein Bild.
page-set-aside = Dieses Foto weglassen
page-bring-back = Wieder mitmessen
page-aside-photos = Weggelassen, nicht mitgemessen
page-after-photo-tag = nach der Kalibrierung
page-seen-key = gefunden
page-missing-key = nicht gefunden

page-measuring = Wird gemessen …
page-verdict-within = Innerhalb der Toleranz
page-all-within = Alle Prüfungen innerhalb der Toleranz
page-verdict-outside = Außerhalb der Toleranz
page-verdict-not-proven = Nicht nachgewiesen
page-verdict-retake = Neu aufnehmen
page-verdict-failed = Nicht messbar
page-lead-within = Jede Prüfung ist nachgewiesen. Kalibrierung starten, danach noch ein Foto aufnehmen.
page-lead-within-simple = Jeder Messwert liegt innerhalb; die Regel des Vorgabeblatts berücksichtigt die Messunsicherheit nicht. Kalibrierung starten, danach noch ein Foto aufnehmen.
page-lead-within-likely = Jede Prüfung liegt mit mindestens { $least } % Wahrscheinlichkeit innerhalb; mehr verlangt die Regel des Vorgabeblatts nicht. Kalibrierung starten, danach noch ein Foto aufnehmen.
page-lead-outside = Gestell wie gezeigt bewegen, dann ein Foto aufnehmen.
page-lead-held = Gestell noch nicht bewegen: erst klären, was unten steht, dann nächsten Versuch beginnen.
page-not-trusted = nicht verlässlich
page-lead-not-proven = Nichts ist nachweislich falsch, aber nicht alles nachweislich richtig.
page-lead-retake = Die Fotos können nicht entscheiden. Was zu tun ist, steht unten.
page-second-photo = Noch ein Foto von der anderen Seite.
page-what-moves = Was zu bewegen ist
page-not-to-scale = Nicht maßstäblich. Gestrichelt: wo es sein muss.
page-from-above = Von oben
page-from-side = Von der rechten Fahrzeugseite
page-from-vehicle = Vom Fahrzeug aus
page-turn-left-end = Drehen: das linke Ende zum Fahrzeug hin, { $amount }°
page-turn-right-end = Drehen: das rechte Ende zum Fahrzeug hin, { $amount }°
page-move-left = { $amount } mm zur linken Fahrzeugseite
page-move-right = { $amount } mm zur rechten Fahrzeugseite
page-move-away = { $amount } mm vom Fahrzeug weg
page-move-towards = { $amount } mm zum Fahrzeug hin
page-move-up = { $amount } mm höher
page-move-down = { $amount } mm tiefer
page-tilt-away = Neigen: oben vom Fahrzeug weg, { $amount }°
page-tilt-towards = Neigen: oben zum Fahrzeug hin, { $amount }°
page-level-right-down = Ausrichten: das rechte Ende tiefer, { $amount }°
page-level-left-down = Ausrichten: das linke Ende tiefer, { $amount }°
page-vehicle-word = Fahrzeug
page-left-word = links
page-right-word = rechts
page-found-out = Was gefunden wurde
page-checks = Prüfungen
page-full-report = Vollständiger Bericht
page-first-thing = Zuerst
page-prove-it = Gestell stehen lassen. Noch ein Foto von anderer Stelle.
page-moved-it = Gestell bewegt: ein Foto
page-moved-step = Gestell bewegt: ein Foto von „{ $step }“
page-moved-why = Nur das Gestell wurde bewegt. Mit Radplatten und Bodenblättern aufnehmen.
page-next-attempt = Gestell bewegt: nächster Versuch
page-beside-title = Gegenüber früheren Versuchen
page-measure-together = Mit jenen Fotos zusammen messen
page-measure-together-why = Sie werden in diesen Versuch kopiert: mehr Fotos desselben Gestells weisen mehr nach.
page-next-attempt-why = Dieser Versuch wird so versiegelt und bleibt in der Liste.
page-to-finish = Weiter zur Kalibrierung

page-calibration = Kalibrierung
page-calibration-result = Was das Diagnosegerät meldet
page-result-none = noch nichts
page-result-successful = erfolgreich
page-result-failed = fehlgeschlagen
page-result-not-run = nicht durchgeführt
page-reported-azimuth = Gemeldete Dejustage seitlich, Grad
page-reported-elevation = Gemeldete Dejustage in der Höhe, Grad
page-large-misalignment = Das Steuergerät meldet { $angle }°. Bei nachgewiesener Aufstellung deutet ein so großer Wert auf Halter oder Einbau des Sensors; ist sie nicht nachgewiesen, zuerst die Aufstellung prüfen.
page-after-photo = Foto nach der Kalibrierung
page-after-with-sheets = Ein weiteres Foto von Gestell und Bodenblättern, wo sie vorher standen, zeigt, ob sich das Gestell auf dem Boden bewegt hat. Ob sich das Fahrzeug bewegt hat, zeigt es nur mit Radplatten; dafür wieder anbringen oder die Frage offen lassen.
page-after-without-sheets = Dieser Markersatz hat keine Bodenblätter: ein weiteres Foto zeigt nur mit mindestens einer Radplatte am Fahrzeug, ob sich das Gestell dagegen bewegt hat. Nach der Kalibrierung wieder anbringen.
page-scan-reports = Berichte und andere Dateien
page-scan-before = Diagnosebericht vorher
page-scan-after = Diagnosebericht nachher
page-other-file = Andere Datei
page-attach = Anhängen
page-attach-file = Anhängen: { $kind }
page-no-files = Keine Datei angehängt.
page-close-job = Auftrag abschließen
page-close-why = Fotos, Eingaben, Ergebnis und Bericht werden in einem Nachweisordner versiegelt. Danach lässt sich hier nichts mehr ändern.
page-close-open = Noch offen: { $open }
page-open-prerequisites = unbeantwortete Voraussetzungen
page-open-verdict = die Aufstellung ist nicht als innerhalb der Toleranz nachgewiesen
page-open-result = das Ergebnis der Kalibrierung
page-open-after = das Foto nach der Kalibrierung
page-close-now = Versiegeln und abschließen
page-closed-title = Abgeschlossen und versiegelt
page-take-evidence = Nachweisordner herunterladen (eine Datei)
page-send-photos = Fotos senden
page-send-file = Datei senden
page-evidence-in = Nachweisordner: { $folder }
page-signed-words = Mit dem Schlüssel dieses Rechners signiert.
page-unsigned-words = Nicht signiert: er zeigt versehentliche Änderungen, keine absichtlichen.

page-cautions = Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Nur für Fachpersonal; Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen. Diese Seite dokumentiert eine Aufstellung und ersetzt nicht das Verfahren.

page-pair-title = Dieses Gerät verbinden
page-pair-why = Code eingeben, um diese Seite zu benutzen.
page-pair-now = Verbinden
page-pair-code = Code auf dem Bildschirm des Servers
page-pair-name = Ein Name für dieses Gerät
page-pair-name-why = Optional; steht in der Liste der Änderungen jedes Auftrags, etwa: Telefon linker Platz.
page-open-network = Diese Seite ist nicht verschlüsselt: jeder in diesem Netz kann mitlesen, Fotos, Aufträge und den Schlüssel dieses Geräts. Auch Fotos in der Seite und der Start ohne Netz brauchen Verschlüsselung. Wer den Server betreibt, schaltet sie ein.
page-open-network-here = Nicht verschlüsselt: dieses Netz kann mitlesen.
page-devices = Verbundene Geräte
page-devices-why = Ein getrenntes Gerät wird sofort abgewiesen und braucht einen neuen Code. Was es geändert hat, bleibt in der Liste der Änderungen jedes Auftrags.
page-no-devices = Kein Gerät ist verbunden.
page-this-device = dieses Gerät
page-connected-since = Verbunden { $when }
page-last-here = zuletzt aktiv { $when }
page-show-out = Trennen
page-certificate = Zertifikat dieser Seite
page-certificate-why = Diese Ziffern mit denen auf dem Bildschirm des Servers vergleichen, nicht mit einer anderen Seite: sind sie gleich, steht niemand dazwischen.
page-certificate-of-page = SHA-256 des Zertifikats, das der Browser zeigt
page-certificate-of-root = SHA-256 des Stammzertifikats, dem ein Telefon vertrauen kann
page-root-why = Vertraut dieses Gerät dem Stammzertifikat, warnt der Browser nicht mehr, und die Seite startet auch ohne Netz. Das Stammzertifikat kann nichts anderes beglaubigen: sein Schlüssel ist gelöscht.
page-take-root = Stammzertifikat herunterladen
page-changes = Wer was geändert hat
page-did-begin = Auftrag begonnen
page-did-prepare = Vorbereitung
page-did-photo = Foto
page-did-aside = Foto weggelassen
page-did-back = Foto wieder mitgemessen
page-did-file = Datei angehängt
page-did-calibration = Kalibrierung
page-did-card = Karte
page-did-join = mit früheren Fotos gemessen
page-did-attempt = nächster Versuch
page-did-close = abgeschlossen
page-pair-wrong = Das ist nicht der Code. Noch einmal vom Bildschirm ablesen oder den QR-Code einscannen.
page-pair-wait = Zu viele falsche Codes. Eine Minute warten.
page-trouble-title = Das ging nicht

page-js-queued = Auf diesem Gerät warten auf das Netz: { $count }. Nichts geht verloren.
page-js-sending = { $name } wird gesendet …
page-js-kept = { $name } ist gespeichert.
page-js-already = { $name } war schon hier.
page-js-aside = { $name } wurde weggelassen. Bei Bedarf unten wieder mitmessen.
page-js-refused = { $name } wurde nicht angenommen: { $why }
page-js-again = Noch einmal
page-js-discard = Verwerfen
page-js-ready = Es gibt ein neues Urteil.
page-js-other-certificate = Der eingescannte QR-Code nennt ein anderes Zertifikat als diese Seite: nicht verbinden und dem Betreiber des Servers Bescheid geben.
page-js-offline = Keine Verbindung zum Server: was hier steht, kann alt sein. Fotos können aufgenommen werden und werden später gesendet.
page-js-no-store = Dieser Browser merkt sich nichts: auf dieser Seite bleiben, bis die Fotos gesendet sind.

## Languages

page-languages = Sprachen
page-not-proofread = Von Fachpersonal noch nicht gelesen.
page-moment = { $day } { $clock }
page-unit = { $unit ->
    [deg] °
   *[other] { $unit }
}

## Numbers of things

page-found-jobs = { $count ->
    [one] Ein Auftrag
   *[other] { $count } Aufträge
}
page-checks-n = { $count ->
    [one] Eine Prüfung
   *[other] { $count } Prüfungen
}
page-photo-shows = { $count ->
    [one] Ein Marker gefunden.
   *[other] { $count } Marker gefunden.
} Zeigt: { $names }
page-photo-lacks = { $count ->
    [one] Ein Marker nicht gefunden, wo er sein sollte: { $ids }.
   *[other] { $count } nicht gefunden, wo sie sein sollten: { $ids }.
} Verdeckt, von einer Lampe geblendet oder im Dunkeln?
page-photo-described = { $count ->
    [one] { $photo }: ein Marker gefunden
   *[other] { $photo }: { $count } Marker gefunden
}

## Quantities and sides

page-quantity-from = { $datum ->
    [nose] { $name } ab Fahrzeugfront
    [front_axle] { $name } ab Vorderachse
    [rear_axle] { $name } ab Hinterachse
   *[other] { $name } ab { $datum }
}
page-side = { $side ->
    [left] links
    [right] rechts
    [left-end-nearer] linkes Ende näher
    [right-end-nearer] rechtes Ende näher
    [top-away] oben weg
    [top-towards] oben hin
    [left-end-low] linkes Ende tief
    [right-end-low] rechtes Ende tief
    [above] darüber
    [below] darunter
    [left-longer] links länger
    [right-longer] rechts länger
    [toe-in] Vorspur
    [toe-out] Nachspur
    [top-forward] oben nach vorn
    [top-rearward] oben nach hinten
    [top-inward] oben nach innen
    [top-outward] oben nach außen
    [nose-up] Front zeigt nach oben
    [nose-down] Front zeigt nach unten
    [below-floor] unter dem Boden
    [behind] dahinter
    [negative] negativ
   *[other] ?
}
page-angle-degrees = { $angle }, Grad
page-angle-minutes = { $angle }, Minuten

## Sentences with several figures

page-place = { $along ->
    [ahead] { $distance } m vor der Fahrzeugfront
   *[behind] { $distance } m hinter der Fahrzeugfront
}, { $side ->
    [left] { $beside } m zur linken Fahrzeugseite
    [right] { $beside } m zur rechten Fahrzeugseite
   *[middle] auf der Mittellinie
}, Telefon { $height } m hoch
page-take-off = { $sheets ->
    [some] Vor der Kalibrierung abnehmen, was sie stören würde: { $names }. Gestell und Bodenblätter bleiben, wo sie sind.
   *[none] Vor der Kalibrierung abnehmen, was sie stören würde: { $names }.
}
page-moved = { $moved ->
    [yes] { $body }: { $mm } mm und { $deg }° zwischen vorher und nachher: hat sich bewegt
   *[no] { $body }: { $mm } mm und { $deg }° zwischen vorher und nachher: keine Bewegung nachgewiesen
}
page-stood-alike = Versuch { $n }: { $verdict }; seither hat sich nichts bewegt
page-stood-apart = Versuch { $n }: { $verdict }; nicht gemeinsam messbar:
page-this-machine = dieser Rechner
page-device-unnamed = Gerät { $digits }

## Shop's own sheets

page-asks-tyres = Reifendrücke wie auf dem Reifendruckschild
page-asks-empty = Fahrzeug leer: niemand und keine Last darin
page-asks-steering = Lenkung geradeaus
page-asks-settled = Fahrzeug an seinen Platz gerollt, Bremsen gelöst, Federung gesetzt
page-sheet-left-out = wer das Vorgabeblatt eingegeben hat, ließ es weg

## What did not work

page-trouble-not-here = { $what ->
    [job] Dieser Auftrag ist nicht hier: vielleicht wurde er verschoben oder umbenannt.
    [photo] Dieses Foto ist nicht hier: vielleicht wurde es verschoben oder umbenannt.
    [picture] Dieses Bild ist nicht hier: neu aufnehmen.
    [sheet] Dieses Vorgabeblatt ist nicht hier: vielleicht wurde es verschoben oder umbenannt.
    [kit] Dieser Markersatz ist nicht hier: vielleicht wurde er verschoben oder umbenannt.
    [camera] Diese Kameradatei ist nicht hier: vielleicht wurde sie verschoben oder umbenannt.
    [device] Dieses Gerät steht nicht in der Liste: vielleicht wurde es schon getrennt.
    [evidence] Dieser Nachweisordner ist nicht hier: vielleicht wurde er verschoben oder umbenannt.
    [root] Diese Seite hat kein eigenes Stammzertifikat.
   *[page] Diese Seite gibt es nicht: zurück zur Liste der Aufträge gehen.
}
page-trouble-closed = Der Auftrag ist abgeschlossen und versiegelt: stattdessen einen weiteren Versuch beginnen.
page-sealed-another = In { $folder }, wo dieser Auftrag versiegelt wird, liegt etwas anderes: der Nachweis eines anderen Auftrags, oder der dieses Auftrags von vor einer Änderung seiner Datei. Nichts gilt hier als versiegelt, bevor es anderswohin gebracht ist.
page-trouble-disk = { $doing ->
    [read] Eine Datei ist nicht lesbar ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
    [folder] Ein Ordner lässt sich nicht anlegen ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
    [photo] Das Foto lässt sich nicht speichern ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
    [job] Die Datei des Auftrags lässt sich nicht schreiben ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
    [list] Eine Liste lässt sich nicht speichern ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
    [sheet] Das Vorgabeblatt lässt sich nicht speichern ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
   *[file] Die Datei lässt sich nicht speichern ({ $why }): Datenträger des Rechners prüfen, auf dem diese Seite läuft.
}
page-trouble-fault = Das Programm ist daran gescheitert: mit dem Auftrag melden.
page-trouble-random = Der Rechner gibt keine Zufallszahlen: neu starten und melden, wenn das nicht hilft.
page-trouble-measuring = Das Programm ist beim Messen dieses Auftrags gescheitert: mit den Fotos melden.
page-trouble-not-logged = Das Urteil wird nicht gezeigt: { $why }
page-trouble-stays-open = Der Auftrag bleibt offen: { $why }
page-trouble-vin = Die FIN muss 17 Zeichen haben, Ziffern und Großbuchstaben ohne I, O und Q: noch einmal vom Fahrzeug ablesen.
page-trouble-form = Das Formular kam beschädigt oder zu groß an: noch einmal senden.
page-trouble-line = Gespeichert wird eine Zeile mit höchstens { $most } Zeichen: kürzen.
page-trouble-number = „{ $typed }“ ist keine Zahl: Ziffern eingeben, etwa { $example }.
page-trouble-not-measured = Dieser Versuch ist noch nicht gemessen: sein Urteil abwarten.
page-trouble-both-toes = Die Spur beider Hinterräder eingeben oder von keinem.
page-trouble-toes-contradict = { $side ->
    [left] Die Spur der Hinterräder ergibt einen Fahrachswinkel von { $degrees }° { $minutes }′ nach links, nicht den eingegebenen: beides noch einmal ablesen.
   *[right] Die Spur der Hinterräder ergibt einen Fahrachswinkel von { $degrees }° { $minutes }′ nach rechts, nicht den eingegebenen: beides noch einmal ablesen.
}
page-trouble-angle-sign = Winkel ohne Vorzeichen eingeben und seine Seite wählen.
page-trouble-angle-large = Ein Winkel eines Achsmessprotokolls hat höchstens { $degrees } Grad und weniger als 60 Minuten: noch einmal ablesen.
page-trouble-angle-side = Wählen, nach welcher Seite der Winkel zeigt.
page-trouble-choose-kit = Markersatz wählen.
page-trouble-many-jobs = Im Ordner sind zu viele Aufträge dieses Tages: ältere verschieben.
page-trouble-upload-id = X-Upload-Id braucht 8 bis 64 Buchstaben, Ziffern oder Bindestriche.
page-trouble-upload-digest = X-Upload-Sha256 muss der SHA-256 der Datei mit 64 kleinen hexadezimalen Ziffern sein.
page-trouble-damaged = Die Datei kam nicht so an, wie sie gesendet wurde: noch einmal senden.
page-trouble-too-large = Die Datei hat mehr als { $most } MB: eine kleinere senden.
page-trouble-slow = Die Datei kam zu langsam: noch einmal senden.
page-trouble-cut = Die Verbindung ist abgebrochen: Datei noch einmal senden.
page-trouble-uploads-busy = Viele Dateien kommen zugleich: bald noch einmal senden.
page-trouble-pace = Weniger laufende Bilder senden.
page-trouble-glances-busy = Andere schauen auch gerade: bald noch einmal senden.
page-trouble-live-kind = Laufende Bilder müssen JPEG sein.
page-trouble-live-size = Laufende Bilder müssen klein sein: weniger Pixel senden.
page-trouble-host = Diese Seite antwortet nur unter den eigenen Namen dieses Rechners, etwa localhost.
page-trouble-origin = Das kam von der Seite eines anderen Servers oder von einem Programm, das nicht sagt, woher es kommt.
page-trouble-not-connected = Dieses Gerät ist nicht verbunden: Seite öffnen und den Code vom Bildschirm des Servers eingeben.
page-trouble-many-photos = Ein Auftrag fasst höchstens { $most } Fotos: einige weglassen.
page-trouble-no-first-photos = Fotos vom Stativ werden mit zwei ersten Fotos gemessen: diese von verschiedenen Stellen aufnehmen, dann das Stativ aufstellen.
page-trouble-which-step = Angeben, welchen Schritt des Vorgabeblatts die Fotos zeigen: { $steps }.
page-trouble-many-files = Ein Auftrag fasst höchstens { $most } angehängte Dateien.
page-trouble-instrument = Das Messgerät wählen, das den Wert gezeigt hat.
page-trouble-many-readings = Ein Auftrag fasst höchstens { $most } Messwerte.
page-trouble-cards = Alle Karten sind vergeben: erledigte Aufträge abschließen.
page-trouble-no-camera = Keine Kameradatei vorhanden: eine dort ablegen, wo das Programm sucht.
page-trouble-no-model = { $kind ->
    [setup] Kein Vorgabeblatt „{ $name }“ gefunden: dort ablegen, wo das Programm sucht.
    [kit] Kein Markersatz „{ $name }“ gefunden: dort ablegen, wo das Programm sucht.
    [camera] Keine Kameradatei „{ $name }“ gefunden: dort ablegen, wo das Programm sucht.
   *[other] Keine Datei „{ $name }“ gefunden: dort ablegen, wo das Programm sucht.
}
page-trouble-sheet-exists = Ein Vorgabeblatt „{ $name }“ gibt es schon: diesem einen eigenen Namen geben.
page-trouble-sheet-needs = { $field ->
    [name] Einen Kurznamen für das Vorgabeblatt eingeben.
    [title] Eingeben, was womit kalibriert wird.
   *[source] Eingeben, wessen Zahlen das sind: Unterlage und Datum.
}
page-trouble-sheet-name = Der Kurzname braucht 3 bis 60 Kleinbuchstaben, Ziffern und Bindestriche, etwa front-radar-model-x.
page-trouble-choose-line = Bezugslinie wählen.
page-trouble-choose-start = Wählen, ab wo der Abstand zählt.
page-trouble-sheet-empty = Mindestens einen Sollwert mit seiner Toleranz eingeben.
page-trouble-figures-differ = { $quantity }: die beiden eingegebenen Zahlen sind verschieden: Quelle noch einmal lesen.
page-trouble-figure-once = { $quantity }: Zahl in beide Felder eingeben.
page-trouble-figure-alone = { $quantity }: Sollwert und Toleranz eingeben oder keines von beiden.
page-trouble-tolerance-zero = { $quantity }: eine Toleranz muss größer als null sein.

## Whoever runs the page

page-serve-listen = { $address } lässt sich nicht öffnen ({ $why }): ein anderes --listen ADDR:PORT nennen oder beenden, was dort läuft
page-serve-jobs = { $jobs } ist als Ordner der Aufträge nicht verwendbar ({ $why }): ein anderes --jobs DIR nennen
page-serve-start = Der Server lässt sich nicht starten ({ $why })
page-tls-file = { $doing ->
    [write] { $file } lässt sich nicht schreiben ({ $why }): Datei prüfen oder eine andere nennen
   *[read] { $file } ist nicht lesbar ({ $why }): Datei prüfen oder eine andere nennen
}
page-tls-holds = { $what ->
    [key] { $file } enthält keinen privaten Schlüssel in PEM-Form ("-----BEGIN ..."): die richtige Datei nennen
   *[certificate] { $file } enthält kein Zertifikat in PEM-Form ("-----BEGIN ..."): die richtige Datei nennen
}
page-tls-pair = Zertifikat in { $certificate } und Schlüssel in { $key } sind nicht verwendbar ({ $why }): ein zusammengehörendes Paar nennen
page-tls-name = „{ $name }“ ist kein Rechnername und keine Adresse für ein Zertifikat: Buchstaben, Ziffern, Bindestriche und Punkte verwenden
page-tls-make = Ein Zertifikat lässt sich nicht erzeugen ({ $why }): --tls-cert und --tls-key verwenden
page-tls-other-name = { $own ->
    [yes] Das Zertifikat gilt nicht für „{ $name }“, und Browser werden das melden: { $file } löschen, dann entsteht ein neues, dem Telefone von neuem vertrauen müssen
   *[no] Das Zertifikat gilt nicht für „{ $name }“, und Browser werden das melden: mit --name angeben, wofür es gilt, oder eines dafür ausstellen lassen, anstelle von { $file }
}
page-tls-over = { $own ->
    [yes] Das Zertifikat ist abgelaufen, und Browser werden das melden: { $file } löschen, dann entsteht ein neues, dem Telefone von neuem vertrauen müssen
   *[no] Das Zertifikat ist abgelaufen, und Browser werden das melden: erneuern, mit seinem Schlüssel in { $file }
}
page-tls-ends = { $own ->
    [yes] Das Zertifikat läuft bald ab (Tage: { $days }): { $file } löschen, dann entsteht ein neues, dem Telefone von neuem vertrauen müssen
   *[no] Das Zertifikat läuft bald ab (Tage: { $days }): erneuern, mit seinem Schlüssel in { $file }
}
page-tls-changed = Das Zertifikat hat sich geändert; sein SHA-256 ist jetzt { $print }
page-tls-kept = Die Seite behält das bisherige Zertifikat: { $why }
page-tls-plain = Diese Seite ist verschlüsselt: ihre Adresse beginnt mit https://
