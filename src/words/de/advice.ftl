# Warum eine Prüfung keinen Wert hat.
advice-not-seen = In keinem brauchbaren Foto zu sehen: { $body }.
advice-nothing-measured = Zu wenige Fotos sind brauchbar, um etwas zu messen.
advice-no-floor = Weder Bodenblätter noch beide hinteren Radplatten sind zu sehen, also gibt es keinen Boden.
advice-no-floor-height = Kein Bodenblatt ist zu sehen und vehicle.floor_below_hub_mm ist nicht angegeben.
advice-no-centreline = Es gibt keine Mittellinie: Radplatten an beiden Vorderrädern zeigen oder eine Frontmarke mit on_centreline.
advice-no-wheelbase = Keine vordere Radplatte ist zu sehen und vehicle.wheelbase_mm ist nicht angegeben.
advice-no-nose = Keine Frontmarke ist zu sehen und vehicle.nose_from_rear_axle_mm ist nicht angegeben.
advice-no-datum = Der Bezugspunkt liegt auf einem Markerträger, den der Markersatz nicht hat.
advice-plates-are-the-floor = Die Radplatten bestimmen hier den Boden; Bodenblätter sind nötig.
advice-leans = Schief zum Fahrzeug, um mehr als ein Grad: { $body }. Ein Punkt, der von dort in den Richtungen des Fahrzeugs gemessen ist, liegt nicht, wo er scheint. Die Marke aufrecht und winklig zum Fahrzeug befestigen oder von einer Marke näher am Punkt messen.
advice-reading-only = Fotos zeigen das nicht; eine Ablesung ist nötig, die Zieltafel und Schritt nennt, wo es mehrere gibt.
advice-degenerate = Die Geometrie ist entartet.

# Warum eine Prüfung nicht entschieden ist.
advice-too-small = Diese Fotos und dieser Markersatz können eine so kleine Toleranz nicht nachweisen. Das bedeutet kein „nicht bestanden“. Die Messunsicherheit beträgt { $uncertainty }; nachweisbar wäre ein Wert erst unter { $needed }. Nötig: { $more }.
advice-too-unsure = Die Regel des Vorgabeblatts entscheidet allein nach dem Messwert; das setzt eine Messunsicherheit voraus, die höchstens so groß wie die Toleranz ist (JCGM 106:2012, 8.2). Das bedeutet kein „nicht bestanden“. Die Messunsicherheit beträgt { $uncertainty }, die Toleranz { $tolerance }. Nötig: { $more }.
advice-too-unsure-likely = Die Regel des Vorgabeblatts entscheidet nach weniger als 95 % Wahrscheinlichkeit; das geschieht nur, wo die Messunsicherheit höchstens so groß wie die Toleranz ist. Das bedeutet kein „nicht bestanden“. Die Messunsicherheit beträgt { $uncertainty }, die Toleranz { $tolerance }. Nötig: { $more }.
advice-too-near = Der Wert liegt für seine Messunsicherheit von { $uncertainty } zu nah an der Grenze. Ein weiteres Foto oder ein Aufbau näher am Sollwert entscheidet es.
advice-more-wider = weitere Fotos aus weiter auseinanderliegenden Richtungen
advice-more-or-plates = weitere Fotos aus weiter auseinanderliegenden Richtungen oder Radplatten an allen vier Rädern
advice-more-with-plates = weitere Fotos aus weiter auseinanderliegenden Richtungen, in denen die Radplatten an allen vier Rädern zu sehen sind
advice-untrusted = Nicht verlässlich, solange der Befund „{ $finding }“ besteht.
advice-untrusted-outside = Nicht verlässlich, solange der Befund „{ $finding }“ besteht: was gemessen außerhalb liegt, muss es nicht sein.
advice-outside-anyway = Unabhängig von der Ursache außerhalb, solange der Befund „{ $finding }“ besteht.
advice-light-changed = Das Telefon hat die Helligkeit der Fotos verändert; unverändert (HDR aus, oder ein Rohbild ohne Eingriffe entwickelt) ergäben sie { $uncertainty } statt jetzt { $now }.
advice-one-more-photo = Ein weiteres Foto würde es bei diesem Wert entscheiden: { $where }.

advice-next-photo =
    { $side ->
        [middle] { $ahead } m vor der Fahrzeugfront, in der Mitte, Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild
        [left] { $ahead } m vor der Fahrzeugfront, { $aside } m nach links (in Fahrtrichtung gesehen), Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild
       *[right] { $ahead } m vor der Fahrzeugfront, { $aside } m nach rechts (in Fahrtrichtung gesehen), Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild
    }
advice-next-photo-in-step =
    { $side ->
        [middle] { $ahead } m vor der Fahrzeugfront, in der Mitte, Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild, Gestell wie in Schritt { $step }
        [left] { $ahead } m vor der Fahrzeugfront, { $aside } m nach links (in Fahrtrichtung gesehen), Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild, Gestell wie in Schritt { $step }
       *[right] { $ahead } m vor der Fahrzeugfront, { $aside } m nach rechts (in Fahrtrichtung gesehen), Kamera { $up } m über dem Boden, mit Gestell und Radplatten im Bild, Gestell wie in Schritt { $step }
    }

# Warum nichts messbar war.
advice-no-photo = Der Auftrag hat kein Foto.
advice-no-usable-photo = Kein Foto ist messbar; zum ersten: { $why }.
advice-one-photo = Nur ein Foto ist messbar, und nichts könnte ihm widersprechen. Mindestens ein weiteres von der anderen Seite aufnehmen.
advice-one-photo-because = Nur ein Foto ist messbar, und nichts könnte ihm widersprechen.
advice-photo-cannot = { $photo } ist nicht messbar: { $why }.
advice-not-linked = Die Fotos haben keinen Markerträger gemeinsam. So aufnehmen, dass jedes Foto Gestell und Radplatten zeigt.
advice-nothing-seen =
    { $photos ->
        [one] Das Foto zeigt keinen Marker des Markersatzes.
       *[other] Keines der { $photos } Fotos zeigt einen Marker des Markersatzes.
    }
advice-not-settled = Die Ausgleichung der Fotos kam zu keinem Ergebnis. Die Fotos von anderen Stellen neu aufnehmen.
advice-not-settled-with = Die Ausgleichung der Fotos kam zu keinem Ergebnis; ohne Marker { $marker } ({ $name }) gelingt sie. Ein anderer Ausdruck dieses Markers ist im Bild, oder er wurde zwischen den Fotos bewegt. Überzählige Ausdrucke entfernen und die Fotos neu aufnehmen.

# Was ein Aufnahmeplan zu einer Prüfung sagt, die seine Fotos nicht entscheiden könnten.
advice-plan-undetermined = { $quantity }: nichts in den Fotos bestimmt diesen Wert. Radplatten, Bodenblätter oder die Frontmarke zeigen, ab denen gemessen wird, oder die Maße des Fahrzeugs im Auftrag angeben.
advice-plan-corners = { $quantity }: { $percent } % der Varianz stammen vom Rauschen der Ecken. Größere Marker oder Fotos aus größerer Nähe und aus weiter auseinanderliegenden Richtungen verringern es.
advice-plan-layout = { $quantity }: { $percent } % der Varianz stammen von der Lage der Marker auf ihren Trägern. Den Markersatz einmessen (`baywitness survey`) oder genauer kleben.
advice-plan-scale = { $quantity }: { $percent } % der Varianz stammen von den gedruckten Größen. Die Marker messen und ihre Größen eintragen.
advice-plan-calibration = { $quantity }: { $percent } % der Varianz stammen von der Kalibrierung der Kamera. Die Kamera mit mehr Fotos der Kalibriertafel neu anpassen.
advice-plan-focal = { $quantity }: { $percent } % der Varianz stammen von Brennweite und Bildhauptpunkt jedes Fotos. Mehr Fotos, oder solche mit nahen und fernen Markern zugleich, legen sie fest.
advice-plan-turn = { $quantity }: { $percent } % der Varianz stammen von der Drehung der Hand, während ein Foto zeilenweise ausgelesen wird. Das Telefon ruhig halten oder auf ein Stativ setzen.
advice-plan-edge = { $quantity }: { $percent } % der Varianz stammen vom Kantenversatz der Fotos. Größere Marker verringern ihn.
advice-plan-seating-thrust = { $quantity }: { $percent } % der Varianz stammen vom Sitz der Radplatten an den Rädern. Die Fotos nach einer halben Radumdrehung neu aufnehmen, bessere Klemmen verwenden oder das Vorgabeblatt auf die Mittellinie beziehen, für die alle vier Räder eine Platte tragen.
advice-plan-seating = { $quantity }: { $percent } % der Varianz stammen vom Sitz der Radplatten und Marken. Bessere Klemmen verwenden; einen gemessenen Sitz im Markersatz angeben.
advice-plan-wheelbase = { $quantity }: { $percent } % der Varianz stammen vom eingegebenen Radstand. Radplatten an den Vorderrädern anbringen.
advice-plan-nose = { $quantity }: { $percent } % der Varianz stammen von der eingegebenen Lage der Fahrzeugfront. Eine Frontmarke anbringen.
advice-plan-hub-height = { $quantity }: { $percent } % der Varianz stammen von der eingegebenen Nabenhöhe. Bodenblätter auslegen.
advice-plan-datum = { $quantity }: { $percent } % der Varianz stammen vom Versatz des Bezugspunkts. Ihn genauer messen oder einen anderen Bezugspunkt wählen.
advice-plan-reading = { $quantity }: { $percent } % der Varianz stammen von einer Ablesung. Mit einem feineren Messmittel ablesen.
advice-plan-target =
    { $side ->
        [middle] { $ahead } mm vor der Fahrzeugfront, in der Mitte, { $up } mm hoch
        [left] { $ahead } mm vor der Fahrzeugfront, { $aside } mm nach links, { $up } mm hoch
       *[right] { $ahead } mm vor der Fahrzeugfront, { $aside } mm nach rechts, { $up } mm hoch
    }

advice-bay-wrong-camera = { $photo }: { $width } x { $height } px ist nicht die Bildgröße der Kamera { $camera }. Die verwendete Kamera nennen.
advice-bay-too-few-sheets =
    { $sheets ->
        [0] Kein Bodenblatt ist durch die Fotos verbunden; mindestens drei, die nicht in einer Reihe liegen, sind nötig. Mehr Blätter auslegen und benachbarte Fotos einige davon gemeinsam zeigen lassen.
        [one] Ein Bodenblatt ist durch die Fotos verbunden; mindestens drei, die nicht in einer Reihe liegen, sind nötig. Mehr Blätter auslegen und benachbarte Fotos einige davon gemeinsam zeigen lassen.
       *[other] { $sheets } Bodenblätter sind durch die Fotos verbunden; mindestens drei, die nicht in einer Reihe liegen, sind nötig. Mehr Blätter auslegen und benachbarte Fotos einige davon gemeinsam zeigen lassen.
    }
