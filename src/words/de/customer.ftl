customer-title = Für den Kunden: wo die Zieltafel stand
customer-page-title = Für den Kunden: Auftrag { $job }
customer-why = Kameras und Radare, die beim Fahren helfen, werden in der Werkstatt mit einer Zieltafel justiert, die vor dem Fahrzeug steht. Sie muss an der richtigen Stelle stehen, sonst lernt der Sensor eine falsche Richtung. Diese Seite sagt, wo die Zieltafel stand, gemessen aus Fotos.
customer-answer =
    { $verdict ->
        [within] Die Zieltafel stand, wo sie stehen musste, in allem, was geprüft wurde.
        [outside] Die Zieltafel stand nicht, wo sie stehen musste.
        [not_proven] Es ist nicht nachgewiesen, dass die Zieltafel stand, wo sie stehen musste.
       *[retake] Diese Fotos weisen nicht nach, wo die Zieltafel stand.
    }
customer-what = Was aufgestellt wurde
customer-vehicle = Fahrzeug
customer-vin = Fahrzeug-Identifizierungsnummer
customer-repair-order = Reparaturauftrag
customer-photos-taken = Fotos aufgenommen
customer-job = Auftrag
customer-proven = Was nachgewiesen ist
customer-proven-simple = Was gemessen innerhalb der Grenzen liegt
customer-proven-likely = Was mit mindestens { $least } % Wahrscheinlichkeit innerhalb der Grenzen liegt
customer-proven-nothing = Nichts.
customer-open = Was nicht nachgewiesen oder falsch ist
customer-open-nothing = Nichts blieb offen.
customer-photos = Mit welchen Fotos
customer-no-photo = Kein Foto war lesbar.
customer-whose = Wessen Grenzen das sind
customer-whose-nobody = Niemandes: das Vorgabeblatt nennt keine Quelle für seine Grenzen. In der Werkstatt fragen, woher sie kommen.
customer-meaning = Was das heißt und was nicht
customer-again = Es lässt sich nachprüfen: wer die Fotos und Dateien hat, kann sie noch einmal messen lassen.
customer-repeats = Diese Seite gibt die Datei result.json wieder, geschrieben von { $tool }. Die SHA-512 dieser Datei:
customer-void = Die Zahlen aus diesen Fotos sind nicht verlässlich. Der Bericht des Technikers sagt, warum.
customer-held = Zuerst ist etwas zu klären. Der Bericht des Technikers sagt, was.
customer-waived = { $name }: nicht geprüft. Angegebener Grund: { $because }.
customer-not-checked = { $name }: nicht geprüft.
customer-no-check = Das Vorgabeblatt verlangt keine Prüfung.
customer-not-seen = { $name }: die Fotos zeigen es nicht.
customer-not-trusted = { $name }: keine verlässliche Zahl.
customer-held-up = { $name }: nicht nachgewiesen, solange das offen ist.
customer-within = { $figures }.
customer-outside = { $figures }: das liegt außerhalb des Erlaubten.
customer-too-close = { $figures }: mit diesen Fotos zu knapp für ein Urteil.
customer-figures = { $amount } (auf { $u } genau); Soll: { $allowed }
customer-figure-alone = { $amount }; Soll: { $allowed }
customer-named = { $name }: { $figures }
customer-named-read = { $name } (an einem Messgerät abgelesen, nicht auf den Fotos zu sehen): { $figures }
customer-no-value = kein Wert
customer-allowed = { $nominal }, höchstens { $half } daneben
customer-quantity =
    { $quantity ->
        [distance] Wie weit die Zieltafel vom Fahrzeug entfernt stand
        [centring] Wie weit die Zieltafel seitlich daneben stand
        [height] Wie hoch die Zieltafel stand
        [yaw] Wie rechtwinklig die Zieltafel zum Fahrzeug stand
        [pitch] Wie weit die Zieltafel zum Fahrzeug hin oder von ihm weg geneigt war
       *[roll] Wie waagerecht die Zieltafel von Seite zu Seite stand
    }
customer-distance-from =
    { $datum ->
        [nose] Wie weit die Zieltafel von der Fahrzeugfront entfernt stand
        [front_axle] Wie weit die Zieltafel von der Vorderachse entfernt stand
        [rear_axle] Wie weit die Zieltafel von der Hinterachse entfernt stand
       *[other] Wie weit die Zieltafel vom Punkt „{ $datum }“ entfernt stand
    }
customer-with-extras = { $name } ({ $extras })
customer-photo =
    { $used ->
        [yes] Foto { $number }: { $file }
       *[no] Foto { $number }: { $file } (nicht verwendbar)
    }
customer-photo-taken =
    { $used ->
        [yes] Foto { $number }: { $file }, aufgenommen { $taken }
       *[no] Foto { $number }: { $file }, aufgenommen { $taken } (nicht verwendbar)
    }
customer-many-photos = { $count } Fotos. { $photos }
customer-meaning-moment = Es geht um den Augenblick, in dem die Fotos aufgenommen wurden, und nur um den Platz der Zieltafel.
customer-meaning-not = Es sagt nicht, dass die Justierung gelungen ist, dass der Sensor funktioniert oder dass das Fahrzeug sicher ist.
customer-meaning-scan = Als Auskunft des Diagnosegeräts hat der Techniker „{ $result }“ vermerkt. Das gehört nicht zu diesem Nachweis.
customer-meaning-u = „Auf … genau“ ist die Unsicherheit der Messung selbst: in 95 von 100 Fällen liegt die wahre Zahl darin.
customer-meaning-limits = Ob die Grenzen für dieses Fahrzeug die richtigen sind, sagen die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften; sie sind maßgebend.
customer-meaning-trained = Die Arbeit ist Sache von Fachpersonal; diese Seite ersetzt keinen Schritt des Verfahrens. Laser und angehobene Fahrzeuge verlangen eigene Schutzmaßnahmen.

customer-series = Reparaturauftrag { $series }
customer-series-vehicle = Fahrzeug: { $vehicle }
customer-stands-now = Stand der Dinge
customer-last-counts = Für jeden Sensor zählt der letzte Versuch; frühere bleiben aufbewahrt.
customer-all-attempts = Alle Versuche
customer-attempt-line =
    { $numbered ->
        [yes] Auftrag { $job }, Versuch { $number }, { $photos ->
            [one] ein Foto
           *[other] { $photos } Fotos
        }.
       *[no] Auftrag { $job }, { $photos ->
            [one] ein Foto
           *[other] { $photos } Fotos
        }.
    }
customer-which-last = Welcher Versuch der letzte war, ist nicht zu erkennen:
customer-number-them = zwei geben dieselbe Nummer und Zeit an. Versuche nummerieren.
customer-sensor = Sensor
customer-attempt = Versuch
customer-verdict = Urteil
customer-not-stated = nicht angegeben
customer-series-only = Hier stehen nur die Aufträge, die zusammen betrachtet wurden. Ein Sensor, der fehlt, wurde nicht betrachtet.
customer-series-about = Es geht darum, wo jede Zieltafel stand, als ihre Fotos aufgenommen wurden. Es sagt nicht, dass eine Justierung gelungen ist oder dass ein Sensor funktioniert.
customer-series-own-page = Jeder Auftrag hat eine eigene Seite mit seinen Zahlen, seinen Fotos und der Herkunft der Grenzen.
customer-series-govern = Maßgebend sind die Serviceinformationen des Fahrzeugherstellers und die örtlichen Vorschriften. Die Arbeit ist Sache von Fachpersonal; Laser und angehobene Fahrzeuge verlangen eigene Schutzmaßnahmen.
