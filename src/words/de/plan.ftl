# Names of quantities, lines and units, also for trends and audits.
plan-quantity =
    { $quantity ->
        [distance] Abstand
        [range] Abstand in gerader Linie
        [lateral_offset] Mittigkeit
        [lateral_from_nose] Mittigkeit zur Frontmarke
        [height] Höhe
        [height_from_nose] Höhe über der Frontmarke
        [yaw] Rechtwinkligkeit
        [pitch] Neigung
        [roll] Querneigung
        [side_range_difference] Seitenabstände, links minus rechts
        [side_range_left] Seitenabstand links
        [side_range_right] Seitenabstand rechts
        [rear_toe_left] Spur hinten links
        [rear_toe_right] Spur hinten rechts
        [front_toe_left] Spur vorn links
        [front_toe_right] Spur vorn rechts
        [thrust_angle] Fahrachswinkel
        [steering_angle] Lenkwinkel
        [plate_plumb_left] Lot der Radplatte hinten links
        [plate_plumb_right] Lot der Radplatte hinten rechts
        [plate_plumb_front_left] Lot der Radplatte vorn links
        [plate_plumb_front_right] Lot der Radplatte vorn rechts
        [camber_left] Sturz hinten links
        [camber_right] Sturz hinten rechts
        [camber_front_left] Sturz vorn links
        [camber_front_right] Sturz vorn rechts
        [rear_track] Spurweite hinten
        [wheelbase] Radstand
        [setback] Radversatz vorn
        [arch_height_front_left] Radlaufhöhe vorn links
        [arch_height_front_right] Radlaufhöhe vorn rechts
        [arch_height_rear_left] Radlaufhöhe hinten links
        [arch_height_rear_right] Radlaufhöhe hinten rechts
        [ride_height] Standhöhe, Mittel der vier Radläufe
        [body_pitch] Neigung der Karosserie über den Rädern
        [target_tilt_gravity] Neigung der Zieltafel nach Wasserwaage
        [target_level_gravity] Querneigung der Zieltafel nach Wasserwaage
       *[other] { $name }
    }
plan-quantity-from =
    { $quantity ->
        [height_from_nose] Höhe über { $datum }
        [lateral_from_nose] Mittigkeit, bezogen auf: { $datum }
       *[other] { $plain } ab { $datum }
    }
plan-datum =
    { $datum ->
        [nose] Fahrzeugfront
        [front_axle] Vorderachse
        [rear_axle] Hinterachse
       *[other] Bezugspunkt „{ $datum }“
    }
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, Schritt { $step }
plan-check-target-step = { $name }, { $target }, Schritt { $step }
plan-unit =
    { $unit ->
        [deg] Grad
       *[other] { $unit }
    }
plan-reference-line =
    { $line ->
        [thrust_line] die Fahrachse
        [centreline] die Mittellinie des Fahrzeugs
       *[rear_axle_normal] die Senkrechte zur Hinterachse
    }
plan-verdict =
    { $verdict ->
        [within] innerhalb der Toleranz
        [outside] außerhalb der Toleranz
        [retake] neu aufnehmen
       *[not_proven] nicht nachgewiesen
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
plan-worth = ±{ $u } { $unit } gegen ±{ $tolerance } { $unit }: nachweisbar bis { $room } { $unit } Abweichung
plan-worth-unprovable = ±{ $u } { $unit } gegen ±{ $tolerance } { $unit }: NICHT NACHWEISBAR
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
plan-vehicle = Fahrzeug, fährt nach rechts
plan-camera-height = Kamera { $height } m hoch
plan-target-place =
    { $side ->
        [middle] { $ahead } mm vor der Fahrzeugfront, mittig, { $height } mm hoch
        [left] { $ahead } mm vor der Fahrzeugfront, { $beside } mm links, { $height } mm hoch
       *[right] { $ahead } mm vor der Fahrzeugfront, { $beside } mm rechts, { $height } mm hoch
    }

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
