verdict-word =
    { $verdict ->
        [within] innerhalb der Toleranz
        [outside] außerhalb der Toleranz
        [not_proven] nicht nachgewiesen
       *[retake] neu aufnehmen
    }
verdict-grade =
    { $grade ->
        [pass] bestanden
        [conditional_pass] bedingt bestanden
        [conditional_fail] bedingt nicht bestanden
       *[fail] nicht bestanden
    }

# Ganze Sätze hintereinander.
verdict-sentences = { $first } { $then }
verdict-either-two = { $first } oder { $second }
verdict-either-three = { $first }, { $second } oder { $third }
verdict-mm = { $x } mm
verdict-degrees = { $x }°
verdict-plus-minus-mm = ±{ $x } mm
verdict-plus-minus-degrees = ±{ $x }°
# What a camera signed about a photo's bytes.
verdict-credentials-by =
    { $state ->
        [trusted] gültig, unterzeichnet von { $signer }, für den ein Vertrauensanker bürgt
        [unknown_signer] gültig, unterzeichnet von { $signer }, für den kein Vertrauensanker bürgt
        [expired] unverändert, seit { $signer } unterzeichnet hat; dessen Zertifikat gilt nicht zur belegten Zeit
       *[revoked] unverändert, seit { $signer } unterzeichnet hat; dessen Zertifikat wurde widerrufen
    }
verdict-credentials-broken = gebrochen: { $failures }
verdict-credentials-nameless = jemandem ohne Namen
verdict-credentials-count =
    { $state ->
        [trusted] { $count } gültig und vertraut
        [unknown_signer] { $count } gültig, Unterzeichner unbekannt
        [expired] { $count } mit Zertifikat außerhalb seiner Zeit
        [revoked] { $count } mit widerrufenem Zertifikat
        [broken] { $count } gebrochen
       *[none] { $count } ohne
    }
verdict-credentials-counts = { $parts }

verdict-quantity =
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
        [side_range_left] linker Seitenabstand
        [side_range_right] rechter Seitenabstand
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
        [setback] Radversatz
        [arch_height_front_left] Radlaufhöhe vorn links
        [arch_height_front_right] Radlaufhöhe vorn rechts
        [arch_height_rear_left] Radlaufhöhe hinten links
        [arch_height_rear_right] Radlaufhöhe hinten rechts
        [ride_height] Höhenstand, Mittel aus vier Radläufen
        [body_pitch] Neigung der Karosserie gegen die Räder
        [target_tilt_gravity] Neigung der Zieltafel nach Wasserwaage
        [target_level_gravity] Querneigung der Zieltafel nach Wasserwaage
       *[other] { $quantity }
    }
verdict-line =
    { $line ->
        [rear_axle_normal] die Senkrechte zur Hinterachse
        [thrust_line] die Fahrachse
       *[centreline] die Mittellinie des Fahrzeugs
    }

# Körper am Kalibrierplatz: im Satz, am Satzanfang, als Bezeichnung.
verdict-body =
    { $role ->
        [target] das Gestell
        [rear_left_wheel] die Radplatte hinten links
        [rear_right_wheel] die Radplatte hinten rechts
        [front_left_wheel] die Radplatte vorn links
        [front_right_wheel] die Radplatte vorn rechts
        [floor] das Bodenblatt
        [nose] die Frontmarke
        [rear_left_arch] die Radlaufmarke hinten links
        [rear_right_arch] die Radlaufmarke hinten rechts
        [front_left_arch] die Radlaufmarke vorn links
        [front_right_arch] die Radlaufmarke vorn rechts
        [vehicle] das Fahrzeug
       *[card] die Auftragskarte
    }
verdict-body-first =
    { $role ->
        [target] Das Gestell
        [rear_left_wheel] Die Radplatte hinten links
        [rear_right_wheel] Die Radplatte hinten rechts
        [front_left_wheel] Die Radplatte vorn links
        [front_right_wheel] Die Radplatte vorn rechts
        [floor] Das Bodenblatt
        [nose] Die Frontmarke
        [rear_left_arch] Die Radlaufmarke hinten links
        [rear_right_arch] Die Radlaufmarke hinten rechts
        [front_left_arch] Die Radlaufmarke vorn links
        [front_right_arch] Die Radlaufmarke vorn rechts
        [vehicle] Das Fahrzeug
       *[card] Die Auftragskarte
    }
verdict-body-label =
    { $role ->
        [target] Gestell
        [rear_left_wheel] Radplatte hinten links
        [rear_right_wheel] Radplatte hinten rechts
        [front_left_wheel] Radplatte vorn links
        [front_right_wheel] Radplatte vorn rechts
        [floor] Bodenblatt
        [nose] Frontmarke
        [rear_left_arch] Radlaufmarke hinten links
        [rear_right_arch] Radlaufmarke hinten rechts
        [front_left_arch] Radlaufmarke vorn links
        [front_right_arch] Radlaufmarke vorn rechts
        [front_axle] Vorderachse
        [rear_axle] Hinterachse
        [vehicle] Fahrzeug
       *[card] Auftragskarte
    }
# Wo ein Markersatz mehrere davon hat: mit eigenem Namen.
verdict-body-own = { $body } „{ $name }“
verdict-stand-before = { $stand } (vor dem Verschieben)
verdict-stand-after = { $stand } (nach Bewegung { $move })
verdict-stand-step = { $stand } (Schritt { $step })

verdict-budget-corners = Rauschen der Markerecken in den Fotos
verdict-budget-calibration = Kalibrierung der Kamera
verdict-budget-focal = Brennweite jedes Fotos
verdict-budget-centre = Bildhauptpunkt jedes Fotos
verdict-budget-edge = Kantenversatz jedes Fotos
verdict-budget-turn = Drehung der Kamera, während jedes Foto zeilenweise ausgelesen wird
verdict-budget-layout = Lage und Drehung der Marker auf ihren Trägern
verdict-budget-scale = Größe der gedruckten Marker
verdict-budget-seating = Sitz: { $body }
verdict-budget-wheelbase = eingegebener Radstand
verdict-budget-nose = eingegebene Lage der Fahrzeugfront
verdict-budget-hub-height = eingegebene Nabenhöhe
verdict-budget-datum = Versatz des Bezugspunkts „{ $datum }“
verdict-budget-reading = Ablesung: { $quantity }

verdict-without-body = ohne { $body }
verdict-without-photo = ohne { $photo }
verdict-other-lens-model = mit dem anderen Objektivmodell

# Ein Satz, der das Urteil eines Auftrags begründet.
verdict-why-within =
    { $checks ->
        [one] Die eine Prüfung liegt nachgewiesen innerhalb der Toleranz.
       *[other] Alle { $checks } Prüfungen liegen nachgewiesen innerhalb der Toleranz.
    }
verdict-why-within-simple =
    { $checks ->
        [one] Der Messwert der einen Prüfung liegt innerhalb der Toleranz. Die Regel des Vorgabeblatts berücksichtigt seine Messunsicherheit nicht.
       *[other] Die Messwerte aller { $checks } Prüfungen liegen innerhalb der Toleranz. Die Regel des Vorgabeblatts berücksichtigt ihre Messunsicherheit nicht.
    }
verdict-why-within-likely =
    { $checks ->
        [one] Die eine Prüfung liegt mit mindestens { $least } % Wahrscheinlichkeit innerhalb der Toleranz. Mehr verlangt die Regel des Vorgabeblatts nicht; für einen Nachweis ist das zu wenig.
       *[other] Alle { $checks } Prüfungen liegen mit je mindestens { $least } % Wahrscheinlichkeit innerhalb der Toleranz. Mehr verlangt die Regel des Vorgabeblatts nicht; für einen Nachweis ist das zu wenig.
    }
verdict-why-outside = Nachgewiesen außerhalb der Toleranz: { $quantities }.
verdict-why-outside-simple = Außerhalb der Toleranz gemessen: { $quantities }. Die Regel des Vorgabeblatts berücksichtigt die Messunsicherheit nicht.
verdict-why-outside-likely = Mit mindestens { $least } % Wahrscheinlichkeit außerhalb der Toleranz: { $quantities }. Mehr verlangt die Regel des Vorgabeblatts nicht; für einen Nachweis ist das zu wenig.
verdict-why-outside-anyway = Unabhängig von der Ursache nachgewiesen außerhalb der Toleranz: { $quantities }.
verdict-why-retake = Nicht messbar: { $quantity }. { $reason }
verdict-why-retake-bare = Nicht jede Prüfung war messbar.
verdict-why-not-proven = Nicht nachgewiesen: { $quantity }. { $reason }
verdict-why-no-checks = Das Vorgabeblatt enthält keine Prüfungen: nichts wurde nachgewiesen.
verdict-why-nothing = Nichts war messbar. { $reason }
verdict-no-value = Es gibt keinen Wert.

verdict-kit-serial = Seriennummer { $serial }
verdict-kit-overdue = Einmessung seit { $due } überfällig: den Markersatz neu einmessen
verdict-kit-due = Einmessung fällig am { $due }
verdict-kit-due-unknown = Einmessung fällig am { $due } (nicht prüfbar: keine Zeit angegeben)
verdict-kit-both = { $serial }, { $survey }

verdict-bay-slope = Gefälle des Bodens gegen die Ebene der Räder
verdict-bay-flatness = Unebenheit zwischen benachbarten Blättern
verdict-bay-ahead = frei vor der Fahrzeugfront, bis zum entferntesten Blatt
