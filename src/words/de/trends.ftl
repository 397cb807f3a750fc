# An effect in a sentence.
trends-direction =
    { $kind ->
        [distance] { $much ->
            [more] weiter weg
           *[less] näher
        }
        [height] { $much ->
            [more] höher
           *[less] tiefer
        }
        [lateral] { $much ->
            [more] weiter links vom Fahrzeug aus
           *[less] weiter rechts vom Fahrzeug aus
        }
        [yaw] { $much ->
            [more] gedreht, linkes Ende näher
           *[less] gedreht, rechtes Ende näher
        }
        [pitch] { $much ->
            [more] oben weiter vom Fahrzeug weg geneigt
           *[less] oben weiter zum Fahrzeug hin geneigt
        }
        [roll] { $much ->
            [more] schräg, rechtes Ende tiefer
           *[less] schräg, linkes Ende tiefer
        }
       *[other] { $much ->
            [more] mehr
           *[less] weniger
        }
    }
trends-direction-than =
    { $than ->
        [before] { $direction } als vorher
        [others] { $direction } als bei den anderen
       *[required] { $direction } als verlangt
    }
trends-factor =
    { $factor ->
        [technician] Techniker
        [bay] Kalibrierplatz
        [setup] Vorgabeblatt
        [kit] Markersatz
        [vehicle] Fahrzeug
        [camera] Kamera
        [week] Woche
       *[other] { $factor }
    }
trends-subject =
    { $factor ->
        [bay] Kalibrierplatz { $name }
        [setup] Vorgabeblatt { $name }
        [kit] Markersatz { $name }
       *[other] { $name }
    }
trends-amount = { $amount } { $unit } ({ $size } Toleranzen)
trends-amount-tolerances = { $size } Toleranzen
trends-effect-shift = { $who }: { $what } weicht um { $amount } ab ({ $way }), immer zu dieser Seite, auch gegenüber anderen am selben Ort.
trends-effect-change = { $who }: Seit Woche { $week } hat sich dies um { $amount } geändert ({ $way }): { $what }.
trends-effect-sheet = { $who }: { $what } ist mit { $nominal } { $unit } angegeben, die Werte der Aufträge liegen aber um { $value } { $unit } ({ $off } Toleranzen daneben), wer auch immer damit arbeitet: Blatt mit seiner Quelle vergleichen.
trends-effect-slip = { $said } Wahrscheinlicher Tippfehler: { $slip }.
trends-slip =
    { $slip ->
        [sign] Vorzeichen vertauscht
        [inches] Zoll und Millimeter verwechselt
        [point] Komma um eine Stelle verschoben
        [swapped] zwei Ziffern vertauscht
       *[digit] eine Ziffer ist falsch
    }
trends-effect-finding = { $who }: Der Befund { $code } kam { $seen }-mal vor, wo nach den anderen am selben Ort { $expected } zu erwarten sind.
trends-effect-outside = { $who }: { $what } lag { $seen }-mal außerhalb der Toleranz, wo nach den anderen am selben Ort { $expected } zu erwarten sind.
trends-also-outside = { $what } außerhalb der Toleranz
trends-together = Davon nicht zu unterscheiden: { $other }; es sind dieselben Aufträge.
trends-together-one =
    { $factor ->
        [setup] Vorgabeblatt { $name }
        [kit] Markersatz { $name }
        [bay] Kalibrierplatz { $name }
        [vehicle] Fahrzeug { $name }
        [camera] Kamera { $name }
       *[technician] Techniker { $name }
    }
trends-together-all =
    { $factor ->
        [setup] die zugehörigen Vorgabeblätter
        [kit] die zugehörigen Markersätze
        [bay] die zugehörigen Kalibrierplätze
        [vehicle] die zugehörigen Fahrzeuge
        [camera] die zugehörigen Kameras
       *[technician] die zugehörigen Personen
    }
trends-advice-technician-change = An der Arbeitsweise dieser Person hat sich etwas geändert: erst nachfragen, dann Schlüsse ziehen.
trends-advice-technician = Die Fotos gemeinsam ansehen: So eine Gewohnheit findet und behebt man am Gestell, nicht in einer Tabelle.
trends-advice-bay-change = Fragen, was an diesem Kalibrierplatz geändert wurde: Hebebühne, Boden, Markierungen, Lampen.
trends-advice-bay = Den Boden prüfen (`baywitness bay`), die Markierungen darauf und woran an diesem Platz angepeilt wird.
trends-advice-kit = Den Markersatz neu einmessen (`baywitness survey`, `recheck`): Ein Markerträger wurde verbogen, fallen gelassen oder anders montiert.
trends-advice-setup-change = Die Ausgaben des Blatts vergleichen: Seither verlangt es etwas anderes, oder die Fahrzeuge sind andere.
trends-advice-setup = Jede Zahl des Blatts mit den genannten Herstellerunterlagen vergleichen, dann berichtigen und die Aufträge neu beurteilen.

# The page.
trends-title = Trends aus { $count ->
        [one] einem Auftrag
       *[other] { $count } Aufträgen
    }
trends-period = Vom { $first } bis { $last }.
trends-copies =
    { $count ->
        [one] Eine Kopie wurde
       *[other] { $count } Kopien wurden
    } nur einmal gezählt.
trends-not-judged =
    { $count ->
        [one] Ein Auftrag ließ
       *[other] { $count } Aufträge ließen
    } sich im Prüflauf nicht beurteilen.
trends-unreadable =
    { $count ->
        [one] Eine Datei oder Zeile war
       *[other] { $count } Dateien oder Zeilen waren
    } nicht lesbar.
trends-pseudonyms = Personen stehen unter Pseudonym; die verlinkten Ergebnisse und Berichte nennen sie.
trends-unreadable-title = Was nicht lesbar war
trends-percent = { $share } %
trends-share-interval = { $share } % ({ $low } bis { $high } %)
trends-interval = { $value } ({ $low } bis { $high })
trends-beyond-chance = Was über den Zufall hinausgeht
trends-nothing = Nichts. Die Unterschiede zwischen Personen, Kalibrierplätzen, Vorgabeblättern und Markersätzen unten sind nicht größer, als der Zufall sie macht.
trends-effect-interval = 95-%-Intervall: { $low } bis { $high } Toleranzen.
trends-effect-chance =
    { $count ->
        [one] Ein Erstversuch
       *[other] { $count } Erstversuche
    }; Wahrscheinlichkeit eines solchen Unterschieds irgendwo in einem Archiv ohne jeden Effekt: { $chance }.
trends-one-in-a-million = kleiner als eins zu einer Million
trends-effect-also = Hier ebenfalls häufiger: { $others }.
trends-do = Zu tun:
trends-effect-jobs = Die Aufträge, größte Abweichung zuerst
trends-jobs =
    { $count ->
        [one] ein Auftrag
       *[other] { $count } Aufträge
    }
trends-jobs-some = { $shown } von { $count } Aufträgen; alle: jobs.csv
trends-link-report = Bericht mit Fotos
trends-link-result = Ergebnis
trends-link-folder = Ordner
trends-misplaced-title = Wie das Gestell falsch stand
trends-misplaced-aside = Prüfgrößen außerhalb der Toleranz, als Anteil der Aufträge mit einer solchen Prüfgröße; die Striche sind 95-%-Intervalle (Wilson).
trends-misplaced-none = Keine Prüfgröße lag außerhalb der Toleranz.
trends-misplaced-chart = Fehlstellungen nach Art und Richtung
trends-misplaced = { $what }: { $way }
trends-misplaced-note =
    { $count ->
        [one] ein Auftrag
       *[other] { $count } Aufträge
    }, { $share }
trends-size = { $amount } { $unit } ({ $size } Toleranzen)
trends-column-check = Prüfgröße
trends-column-way = Richtung
trends-column-jobs = Aufträge
trends-column-median = Median
trends-column-ninth = Neun von zehn darunter
trends-column-within = Innerhalb
trends-column-outside = Außerhalb
trends-column-not-proven = Nicht nachgewiesen
trends-column-retake = Neu aufnehmen
trends-column-share = Anteil außerhalb, 95 %
trends-column-setup = Vorgabeblatt
trends-column-first = Erstversuche
trends-column-mean = Mittelwert
trends-column-deviation = Standardabweichung
trends-column-cp = Cp, 95 %
trends-column-cpk = Cpk, 95 %
trends-by =
    { $factor ->
        [technician] Nach Techniker
        [bay] Nach Kalibrierplatz
        [setup] Nach Vorgabeblatt
        [kit] Nach Markersatz
        [vehicle] Nach Fahrzeug
        [camera] Nach Kamera
        [week] Nach Woche
       *[other] Nach { $factor }
    }
trends-no-group = Kein Auftrag nennt dies.
trends-people-note = In der Reihenfolge der Namen: Ein Unterschied zwischen Personen gilt nur dort als einer, wo er über den Zufall hinausgeht (oben). Wer an einem schlechten Platz arbeitet, hat schlechte Zahlen.
trends-groups-folded = { $count } insgesamt: Anteile, Zahlen, Aufträge
trends-group-note =
    { $outside } von { $count } Aufträgen{ $few ->
        [yes] , wenige
       *[no] { "" }
    }
trends-all-jobs = alle Aufträge
trends-share-chart = Anteil außerhalb der Toleranz, { $factor }
trends-share-note = Anteil der Aufträge außerhalb der Toleranz mit 95-%-Intervallen. Intervalle, die sich überlappen, sagen nichts; eines von zwanzig liegt zufällig neben der Wahrheit.
trends-first-attempts =
    { $count ->
        [one] ein Erstversuch
       *[other] { $count } Erstversuche
    }
trends-level =
    { $against ->
        [nominal] Sollwert
       *[others] die anderen
    }
trends-which-way = Richtung: { $what }
trends-which-way-note = Mittel von (Wert - Sollwert) / Toleranz gegenüber den anderen, andere Einflüsse herausgerechnet; 95-%-Intervalle jedes Einzelnen. Nach rechts: { $way }.
trends-stands-out = fällt auf: siehe oben
trends-few-jobs = wenige Aufträge: sagt wenig
trends-attempts-title = Erster gegen letzten Versuch
trends-attempts-first = Beim ersten Versuch innerhalb der Toleranz: { $within } von { $count } ({ $share }).
trends-attempts-none = Kein Reparaturauftrag hat mehr als einen Versuch.
trends-attempts = Von { $series } Reparaturaufträgen mit mehreren Versuchen waren { $first } beim ersten und { $last } beim letzten innerhalb der Toleranz.
trends-attempts-size = Die größte Abweichung betrug im Mittel { $first } Toleranzen beim ersten, { $last } beim letzten Versuch.
trends-capability-title = Fähigkeit nach Vorgabeblatt
trends-capability-note = (Wert - Sollwert) / Toleranz der Erstversuche; Cp und Cpk mit 95-%-Intervallen für Normalverteilung (ISO 22514-2). Unter 1 passt die Streuung nicht in die Toleranz.
trends-capability-none = Kein Blatt hat acht Erstversuche.
trends-capability-folded =
    { $count ->
        [one] eine Prüfgröße
       *[other] { $count } Prüfgrößen
    }
trends-findings-title = Befunde
trends-finding = { $code }: { $share } aller Aufträge
trends-findings-none = Keine.
trends-findings-note = `baywitness explain CODE` sagt, was ein Code bedeutet; `baywitness gallery` zeigt jeden.
trends-method-title = Wie dies gefunden wurde und was es nicht sagen kann
trends-method-compared = Verglichen werden Erstversuche ({ $count }), damit niemandes Zahlen durch Wiederholen besser werden. Personen, Kalibrierplätze, Vorgabeblätter und Markersätze trennt ein additives Modell je Größe; Befunde werden innerhalb von Schichten aller anderen Einflüsse verglichen (Mantel und Haenszel, exakt).
trends-method-tests = { $count } Tests wurden gemacht. Mit Holms Korrektur wird höchstens in einem von { $archives } Archiven ohne jeden Effekt hier einer genannt. Unterschiede unter { $size } Toleranzen und Gruppen mit weniger als { $jobs } Erstversuchen werden nie genannt.
trends-method-changes = Änderungen werden mit kumulativen Summen über einzelne Aufträge gesucht; die Woche ist die wahrscheinlichste, eine benachbarte kann die richtige sein. Die Wochenkarte schlägt zufällig einmal in { $run } Wochen an (Referenzwert { $allowance }, Entscheidungsgrenze { $interval }) und { $shifted } Wochen nach einer Verschiebung um eine Standardabweichung eines Wochenmittels.
trends-method-together = Was immer zusammen auftritt (eine Person, die nur an einem Platz mit einem Markersatz arbeitet), können keine Zahlen trennen; wo das so ist, steht es dabei.
trends-method-not-why = Zahlen sagen, dass etwas anders ist, nicht warum und nicht, wer schuld ist. Aufträge, deren Fotos nicht brauchbar waren, zählen nur als Urteil.
trends-foot = Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Diese Zahlen dokumentieren Aufstellungen und ersetzen kein Verfahren; die Arbeit ist Sache von Fachpersonal, Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen.

# Charts over time.
trends-week-point = { $week }: { $outside } von { $count } außerhalb der Toleranz
trends-weeks-title = Woche für Woche
trends-weeks-few = Zu wenige Wochen, oder kein Auftrag nennt seine Zeit.
trends-weeks-note = Anteil der Aufträge außerhalb der Toleranz; Grenzen bei drei Standardabweichungen für die Zahl der Aufträge der Woche. Jenseits davon: Quadrate.
trends-weeks-chart = Anteil außerhalb der Toleranz je Woche
trends-mean = Mittelwert
trends-limit = Grenze
trends-tolerance = Toleranz
trends-mean-range = mittlere Spannweite
trends-jobs-title = Auftrag für Auftrag
trends-jobs-note = (Wert - Sollwert) / Toleranz der jüngsten Erstversuche, darunter die Unterschiede zwischen Nachbarn; Grenzen aus der mittleren gleitenden Spannweite (das 2,660- und 3,267-Fache). Jenseits davon: Quadrate. Jeder Punkt führt zu seinem Auftrag.
trends-point = { $name }: { $value }
trends-latest = die jüngsten { $shown } von { $count }
trends-single-values = Einzelwerte
trends-moving-ranges = Gleitende Spannweiten
trends-week-mean =
    { $week }: { $mean } in { $count ->
        [one] einem Auftrag
       *[other] { $count } Aufträgen
    }
trends-effect-weeks =
    { $against ->
        [nominal] Wochenmittel in Toleranzen
       *[others] Wochenmittel gegenüber den anderen, in Toleranzen
    }{ $changed ->
        [yes] ; Quadrate: seit der Änderung.
       *[no] .
    }
trends-effect-chart = Wochenmittel
trends-sums-note = Kumulative Summe der Wochenmittel gegen das Niveau davor, die größere der beiden Seiten, gezeichnet bis zur vierfachen Entscheidungsgrenze.
trends-sums-chart = Kumulative Summen
trends-decision-interval = Grenze

# What the command prints.
trends-said-jobs =
    { $count ->
        [one] 1 Auftrag
       *[other] { $count } Aufträge
    }
trends-said-also =
    { $what ->
        [copies] { $count ->
            [one] 1 Kopie einmal gezählt
           *[other] { $count } Kopien einmal gezählt
        }
        [errors] { $count } nicht beurteilbar
        [unreadable] { $count } unlesbar
       *[others] { $count } anderes JSON
    }
trends-said-unreadable = unlesbar: { $words }
trends-said-verdict = { $verdict } ({ $share } %)
trends-said-nothing = Nichts geht über das hinaus, was der Zufall erklärt.
trends-said-report = Bericht: { $file }

# Was von einem Archiv nicht lesbar ist; `trends-in-file` stellt die Datei vor den Grund.
trends-in-file = { $file }: { $why }
trends-cannot-read = { $path } ist nicht lesbar: { $why }
trends-no-results = keine Ergebnisse gefunden: den Ordner eines Prüflaufs nennen, oder Ergebnisdateien, wie `verify --json` und `audit` sie schreiben
trends-no-results-because = keine Ergebnisse gefunden: den Ordner eines Prüflaufs nennen, oder Ergebnisdateien, wie `verify --json` und `audit` sie schreiben ({ $why })
trends-no-verdict = ein Ergebnis ohne Urteil
trends-row-no-verdict = eine Zeile ohne bekanntes Urteil
trends-no-parquet = dieses Programm wurde ohne Parquet gebaut: den Ordner des Prüflaufs oder sein audit.jsonl nennen, oder mit dem Merkmal `parquet` bauen
trends-not-json = ist kein JSON: `{ $found }` steht, wo ein Objekt beginnen müsste
trends-cut-off = das letzte Objekt ist abgeschnitten
trends-parquet-damaged = ist keine lesbare Parquet-Datei ({ $why }): den Prüflauf wiederholen
trends-parquet-rows = nennt eine unmögliche Anzahl von Zeilen: den Prüflauf wiederholen
trends-parquet-column = nennt eine Spalte, die größer ist als die Datei: den Prüflauf wiederholen
trends-parquet-other = ist nicht die Tabelle eines Prüflaufs: audit.parquet im Ordner eines Prüflaufs nennen
trends-parquet-part = enthält eine Prüfung oder einen Befund ohne Angaben: den Prüflauf wiederholen
