# Names of quantities, lines and units, also for trends and audits.
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, Schritt { $step }
plan-check-target-step = { $name }, { $target }, Schritt { $step }
plan-unit =
    { $unit ->
        [deg] Grad
       *[other] { $unit }
    }

# A plan of the photos.
plan-title = Fotoplan: { $sheet }
plan-with = Markersatz { $kit }, Kamera { $camera }
plan-no-station = Von keinem Ort an diesem Kalibrierplatz sind genug Marker zu sehen. Was zu ändern ist, steht unten.
plan-no-station-page = Von keinem Ort an diesem Kalibrierplatz sind genug Marker zu sehen.
plan-photos =
    { $count ->
        [one] Ein Foto
       *[other] { $count } Fotos
    }:
plan-photos-each-step =
    { $count ->
        [one] Ein Foto
       *[other] { $count } Fotos
    }, in jedem Schritt aufgenommen ({ $steps }):
plan-shows = zeigt: { $bodies }
plan-worth-head = Was sie wert sein werden (95 %):
plan-noise = Gerechnet wird mit Ecken, die { $ratio }-mal so stark rauschen wie in schlicht entwickelten Fotos, wie eigene Fotos dieses Telefons zeigen.
plan-place =
    { $along ->
        [front] { $ahead } m vor der Fahrzeugfront
       *[behind] { $ahead } m hinter der Fahrzeugfront
    }, { $across ->
        [centre] auf der Mittellinie
        [left] { $beside } m links der Mittellinie
       *[right] { $beside } m rechts der Mittellinie
    }, Kamera { $height } m hoch, { $towards ->
        [middle] auf die Mitte der Vorderachse gerichtet
        [left-wheel] auf das linke Vorderrad gerichtet
        [right-wheel] auf das rechte Vorderrad gerichtet
        [left-of] auf einen Punkt { $aside } m links der Vorderachse gerichtet
        [right-of] auf einen Punkt { $aside } m rechts der Vorderachse gerichtet
       *[off] { $turn }° zur Fahrtrichtung gedreht
    }
plan-worth = ±{ $u } gegen ±{ $tolerance }: nachweisbar bis { $room } Abweichung
plan-worth-unprovable = ±{ $u } gegen ±{ $tolerance }: NICHT NACHWEISBAR
plan-worth-reading = durch Ablesung entschieden, nicht durch Fotos
plan-worth-none = durch diese Fotos NICHT BESTIMMT
plan-least =
    { $count ->
        [one] ein Foto genügt
       *[other] { $count } Fotos genügen
    }
plan-least-none = kein Foto
plan-least-not =
    { $count ->
        [one] nicht mit einem Foto
       *[other] nicht mit { $count } Fotos
    }
plan-follow-up = Nach jedem Schritt am Gestell ein Foto:
plan-follow-up-note = Es misst; was nach dem letzten Schritt innerhalb der Toleranz liegt, braucht so viele Fotos, wie das Vorgabeblatt verlangt.
plan-change-head = Was zu ändern ist:
plan-change-title = Was zu ändern ist
plan-stand-title = Aufnahmeorte
plan-every-step = Jedes Foto in jedem Schritt aufnehmen: { $steps }.
plan-station-markers = ({ $count ->
        [one] ein Marker
       *[other] { $count } Marker
    } auf: { $bodies })
plan-worth-title = Was die Fotos wert sein werden
plan-column-check = Prüfgröße
plan-column-line = Bezogen auf
plan-column-expected = Erwartet, 95 %
plan-column-least = Mindestens
plan-foot = Vorhergesagt für ein Gestell an seinem Sollort, saubere Drucke und einen beleuchteten Kalibrierplatz. Maßgeblich sind die Unterlagen des Fahrzeugherstellers; Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen.
plan-drawing = Der Kalibrierplatz von oben: Fahrzeug, Gestell und Aufnahmeorte
plan-clear-width = freie Breite { $width } m
plan-vehicle =
    { $heading ->
        [up] Fahrzeug
       *[right] Fahrzeug, fährt nach rechts
    }
plan-camera-height = Kamera { $height } m hoch

# A set-up sheet explained.
plan-sheet-title = Vorgabeblatt: { $sheet }
plan-sheet-asks = Was es verlangt
plan-sheet-open = Weder geprüft noch erlassen
plan-sheet-contradictions = Widersprüche
plan-sheet-contradictions-title = Widersprüche: So lässt sich das Blatt nicht erfüllen
plan-sheet-questions = Fragen
plan-sheet-kit = Mit dem Markersatz { $kit }
plan-sheet-photos =
    { $decided ->
        [all] { $each ->
            [step] { $count } Fotos in jedem Schritt entscheiden jede Prüfgröße.
           *[once] { $count } Fotos entscheiden jede Prüfgröße.
        }
       *[some] { $each ->
            [step] { $count } Fotos in jedem Schritt entscheiden nicht jede Prüfgröße.
           *[once] { $count } Fotos entscheiden nicht jede Prüfgröße.
        }
    }
plan-sheet-no-kit = Kein Markersatz der Vorlagen hat die Zieltafeln, die dieses Blatt nennt.
plan-drawing-written = Zeichnung: { $file }
