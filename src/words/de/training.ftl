# Üben: die Galerie der Fehler, Übungen und ihre Bewertung.

## Die Seite der Galerie

training-gallery = Galerie der Fehler
training-gallery-lede = Jeder Befund eines Berichts, gezeigt auf einem erfundenen Kalibrierplatz: ein Fehler nach dem anderen, dasselbe Foto ohne ihn und mit ihm, und was die Werte sagen. Alles hier ist vom Programm selbst gerendert und gemessen.
training-gallery-caution = Es gelten die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften. Die Galerie zeigt, wie Befunde aussehen; sie ersetzt kein Verfahren. Die Arbeit ist für Fachpersonal; Laser und angehobene Fahrzeuge erfordern eigene Schutzmaßnahmen.
training-findings = Befunde
training-void = der Messung ist nicht zu trauen
training-stop = nichts wird als innerhalb der Toleranz bezeichnet
training-warn = verdient einen Blick
training-note = gut zu wissen
training-in-this-bay = Auf diesem Platz:
training-alt-without = { $title }: ohne den Fehler
training-alt-with = { $title }: mit dem Fehler
training-as-it-should-be = Wie es sein soll
training-with-the-mistake = Mit dem Fehler
training-what-it-says = Was er sagt
training-how-it-comes-about = Wie es dazu kommt
training-how-to-see-it = Woran man es sieht
training-how-to-mend-it = Was zu tun ist
training-in-the-figures = Wie es sich in den Werten zeigt
training-companions = Tritt zusammen auf mit: { $codes }.
training-whole-report = Der ganze Bericht dieses Auftrags
training-check = Prüfung
training-required = Soll
training-without = Ohne den Fehler
training-with = Mit ihm
training-verdict = Urteil
training-not-determined = nicht bestimmt
training-not-checked = nicht geprüft
training-not-used = nicht verwendet
training-misfit = Wie gut die Fotos zusammenpassen (quadratisches Mittel, px): { $without } ohne den Fehler, { $with } mit ihm.

## Der Fortschritt eines Übenden

training-progress = Fortschritt in den Übungen
training-progress-lede = Punkte jeder Übung in der Reihenfolge der Bewertung. Übungen, die schon einmal bewertet wurden (offene Kreise), zählen nicht: ihre Antworten waren bekannt.
training-drill-caution = Übungen sind erfunden und üben das Lesen einer Aufstellung; sie ersetzen keine Ausbildung am echten Fahrzeug. Es gelten die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften. Die Arbeit ist für Fachpersonal; Laser und angehobene Fahrzeuge erfordern eigene Schutzmaßnahmen.
training-chart = Anteil der Punkte jeder Übung
training-level = Stufe { $level }
training-point = { $day }, Stufe { $level }: { $percent } % der Punkte
training-head-mistake = Fehler
training-head-there = Vorhanden
training-head-named = Genannt
training-head-right-way = Richtung richtig
training-head-right-size = Betrag richtig
training-head-share = Genannt, 95 %
training-interval = { $low } bis { $high } %
training-few = zu wenige für eine Aussage
training-last-drill = Die letzte Übung: { $day }, Stufe { $level }
training-job = Auftrag
training-head-points = Punkte
training-head-remarks = Was da war und was geantwortet wurde
training-points = { $points } von { $points_of }
training-job-points = { $job }: { $points } von { $points_of } Punkten
training-score = Befunde { $named } von { $there }, Richtungen { $ways } von { $ways_of }, Beträge { $sizes } von { $sizes_of }, falsche Alarme { $false_alarms }: { $points } von { $points_of } Punkten
training-marked-before = Diese Übung wurde schon einmal bewertet: ihre Antworten waren bekannt.

## Die Antworten zu einem Auftrag

training-nothing-wrong = Nichts falsch
training-nothing-was-wrong = nichts war falsch
training-nothing-was-wrong-and-said = nichts war falsch, und so wurde geantwortet
training-missed = übersehen: { $truth }
training-right = richtig: { $truth }
training-partly =
    { $right ->
        [way] genannt, Richtung richtig, Betrag falsch: { $truth }; geantwortet: { $answer }
        [size] genannt, Richtung falsch, Betrag richtig: { $truth }; geantwortet: { $answer }
       *[neither] genannt, Richtung falsch, Betrag falsch: { $truth }; geantwortet: { $answer }
    }
training-not-so = trifft nicht zu: { $answer }
training-no-answer = keine Antwort gegeben
training-answer-one = { $title }: { $part }
training-answer-both = { $title }: { $way }, { $size }
training-size =
    { $unit ->
        [deg] { $size }°
       *[mm] { $size } mm
    }
training-way-away = vom Fahrzeug weg versetzen
training-way-towards = zum Fahrzeug hin versetzen
training-way-left = nach links versetzen
training-way-right = nach rechts versetzen
training-way-raise = heben
training-way-lower = senken
training-way-left-end-towards = das linke Ende zum Fahrzeug hin drehen
training-way-left-end-away = das linke Ende vom Fahrzeug weg drehen
training-way-top-away = oben vom Fahrzeug weg neigen
training-way-top-towards = oben zum Fahrzeug hin neigen
training-way-right-end-lower = das rechte Ende senken
training-way-right-end-raise = das rechte Ende heben

## Was im Ordner einer Übung steht

training-level-1 = ein großer Fehler
training-level-2 = ein Fehler oder keiner
training-level-3 = ein kleiner Fehler oder keiner
training-level-4 = bis zu zwei Fehler
training-level-5 = bis zu drei kleine Fehler
training-how-to-head = Eine Übung der Stufe { $level }, in jedem Auftrag: { $words }. Alles ist erfunden.
training-how-to-folders = Jeder Ordner ist ein Auftrag: Fotos, das Vorgabeblatt (setup.toml: Soll und Toleranz) und readings.txt.
training-how-to-answer = Zu jedem Auftrag angeben, was außerhalb der Toleranz ist, in welche Richtung und um wie viel es zu bewegen ist: answers.csv ausfüllen oder eingeben
training-how-to-several = Mehrere Fehler eines Auftrags sind mehrere Zeilen; ist nichts falsch, lautet der Befund `none`.
training-how-to-findings = Befunde (FINDING): { $codes }
training-how-to-ways = Richtungen (WAY): { $ways }
training-how-to-sizes = Beträge (SIZE): mm, bei stand-turned, stand-tilted und stand-not-level Grad.
training-how-to-seal = Die Satzdatei bleibt unter Siegel, bis die Übung bewertet ist; danach lässt sich jeder Auftrag prüfen. Das Siegel schützt die Antworten vor einem flüchtigen Blick und zeigt, wenn sie verändert wurden; ein Schloss ist es nicht.
training-read-head = { $job }: am Gestell abgelesen (ein erfundener Platz)
training-read-distance = Tafelfläche vor der Fahrzeugfront, in der Mitte
training-read-left-end = Ende des Gestells auf der linken Fahrzeugseite vor der Fahrzeugfront
training-read-right-end = Ende des Gestells auf der rechten Fahrzeugseite vor der Fahrzeugfront
training-read-centring = Zielpunkt neben der Mittellinie, zur linken Fahrzeugseite positiv
training-read-height = Zielpunkt über dem Boden
training-read-plumb-line = Lot an der Fläche: oben weiter vom Fahrzeug weg als unten
training-read-water-level = Schlauchwaage: linkes Ende höher als rechtes (vom Fahrzeug aus)
training-read-bases = Die Enden sind { $ends } mm auseinander, die Ablesepunkte des Lots { $points } mm. Daraus folgen Verdrehung, Neigung und Querneigung in Grad.

## Was die Befehle sagen

training-rendering = { $job } wird gerendert
training-made =
    { $jobs ->
        [one] { $folder }: ein Auftrag, { $words }; HOW-TO.txt dort lesen
       *[other] { $folder }: { $jobs } Aufträge, { $words }; HOW-TO.txt dort lesen
    }
training-sealed = Die Antworten sind versiegelt; ihr SHA-256: { $digest }
training-progress-page = Fortschritt: { $page }
training-gallery-page = Galerie: { $page }
training-cannot-find = { $path } ist nicht auffindbar: { $why }
training-cannot-read = { $path } lässt sich nicht lesen: { $why }
training-cannot-write = { $path } lässt sich nicht schreiben: { $why }
training-cannot-verify = der gerenderte Auftrag { $job } lässt sich nicht prüfen: { $why }
training-cannot-picture = die Bilder zu { $job } lassen sich nicht erstellen: { $why }
training-no-scene = die Galerie hat keine Szene für { $code }
training-no-level = eine Stufe { $level } gibt es nicht: 1 bis { $last } wählen
training-so-many-jobs = { $count } Aufträge: 1 bis { $most } wählen
training-drill-is-there = in { $folder } liegt schon eine Übung: einen anderen Ordner nennen
training-no-random-bytes = das System liefert keine Zufallsbytes: { $why }
training-drill-unreadable = { $path }: { $why }; die Übung neu erstellen
training-drill-format = { $path }: das Format ist { $format }, nicht drill/1
training-at-line = { $path }, Zeile { $line }: { $why }
training-unknown =
    { $what ->
        [job] kein Auftrag `{ $word }`; bekannt sind { $all }
        [finding] kein Befund `{ $word }`; bekannt sind { $all }
       *[way] keine Richtung `{ $word }`; bekannt sind { $all }
    }
training-unknown-near =
    { $what ->
        [job] kein Auftrag `{ $word }`; ist `{ $near }` gemeint?
        [finding] kein Befund `{ $word }`; ist `{ $near }` gemeint?
       *[way] keine Richtung `{ $word }`; ist `{ $near }` gemeint?
    }
training-no-size = `{ $word }` ist kein Betrag: eine Zahl in mm oder Grad
training-answered = Notiert für { $job }: { $answer }.
training-answer-cells = hat { $found } Zellen, höchstens { $most } gehören hin: job, finding, way, size; zwischen Kommas Dezimalzahlen mit Punkt schreiben
training-answers-changed = { $path } ist nicht, worauf sich { $drill } festgelegt hat: die Antworten wurden verändert, nichts wird bewertet
training-gives-back-other = { $path }: seine Antworten würden { $name } schreiben, was kein Auftrag dieser Übung hat: nichts wird bewertet; die Übung neu erstellen lassen
training-gives-back-link = { $path } ist eine Verknüpfung: durch sie wird nichts geschrieben und nichts wird bewertet; den eigenen Ordner des Auftrags mit seinen Dateien dorthin legen
training-drill-changed = { $path } hat eine andere Stufe oder andere Aufträge, als mit den Antworten versiegelt wurden: nichts wird bewertet; die Datei in ihren alten Stand bringen
training-level-unsealed = Diese Übung wurde erstellt, bevor die Stufe mit den Antworten versiegelt wurde: nichts beweist, dass sie von Stufe { $level } ist.
training-progress-unreadable = { $path }, Zeile { $line }: { $why }; berichtigen oder eine andere Fortschrittsdatei nennen
training-progress-edited = { $path }, Zeile { $line }: Ihre Punkte sind nicht die, die das Programm aus den Antworten darin macht; die Zeile wiederherstellen oder eine andere Fortschrittsdatei nennen
