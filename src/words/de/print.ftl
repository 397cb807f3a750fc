# Printed kits and boards.
print-kit-title = Markersatz { $kit }
print-board-title = Kameratafel
print-folio = baywitness · { $name } · Seite { $page } von { $count }
print-role =
    { $role ->
        [target] Gestell mit Zieltafel
        [rear_left_wheel] Radplatte hinten links
        [rear_right_wheel] Radplatte hinten rechts
        [front_left_wheel] Radplatte vorn links
        [front_right_wheel] Radplatte vorn rechts
        [floor] Bodenblatt
        [nose] Frontmarke
        [rear_left_arch] Marke am Radlauf hinten links
        [rear_right_arch] Marke am Radlauf hinten rechts
        [front_left_arch] Marke am Radlauf vorn links
        [front_right_arch] Marke am Radlauf vorn rechts
       *[card] Auftragskarte
    }
print-datum-of =
    { $kind ->
        [target] der Zielpunkt, die Mitte der Zieltafel
        [floor] die Mitte des ersten Markers; x-y ist der Boden
        [nose] die Mitte der Sensorabdeckung oder der vorderste Punkt, ab dem Abstände gemessen werden
        [card] die Mitte der Karte
        [arch] die Unterkante des Radlaufs, senkrecht über der Radmitte
       *[wheel] der Nabenbezug, wo die Drehachse des Rads die Ebene seiner Außenseite trifft
    }
print-direction =
    { $way ->
        [forward] nach vorn
        [rearward] nach hinten
        [left] nach links
        [right] nach rechts
        [up] nach oben
        [down] nach unten
       *[nowhere] nirgendwohin
    }
print-direction-turned = { $first }, um { $turn }° { $second } gedreht
print-up = OBEN
print-up-is = OBEN = { $direction }
print-place = x { $x }  y { $y }  z { $z }
print-ruler =
    { $way ->
        [up] nach oben: dies messen: { $length } mm; Ablesung eingeben
       *[right] nach rechts: dies messen: { $length } mm; Ablesung eingeben
    }
print-ruler-short = nach oben: dies messen: { $length } mm
print-view-looks = Druckseite { $direction }
print-view-note =
    { $side ->
        [behind] Ebene { $depth } mm hinter dem Bezug · oben auf der Seite = { $top }
       *[front] Ebene { $depth } mm vor dem Bezug · oben auf der Seite = { $top }
    }
print-view-plan = Draufsicht
print-view-plan-note = Maße sind x (nach vorn) und y (nach links) · oben auf der Seite = vorn
print-view-scale = { $title } · 1:{ $scale }
print-assembly-title = { $carrier }: wohin die Blätter gehören
print-assembly-note = Alle Maße in mm ab dem Bezug ({ $datum }); von vorn gesehen sind rechts und oben positiv. Die kurzen Striche an den Kanten jedes Blatts an Bleistiftlinien durch seine Mitte ausrichten.
print-datum = Bezug
print-column-page = Seite
print-column-ids = Nummern
print-column-square = Quadrat, Breite x Höhe
print-column-centre-x = Mitte x
print-column-looks = Druckseite zeigt
print-size = { $right } x { $up } mm
print-sheet-title = { $carrier } · Nr. { $ids }
print-sheet-line = schwarzes Quadrat { $right } x { $up } mm · Druckseite zeigt { $direction } · Blattmitte bei { $place } mm ab Bezug
print-strip = { $up } · Nr. { $ids } · { $carrier }
print-wide-note = Dieser Marker ist so breit wie das Papier, darum ist das senkrechte Lineal kurz: nur eine schnelle Probe. Die Ablesung des { $length }-mm-Lineals auf Seite 1 eingeben oder das schwarze Quadrat selbst mit dem Messschieber messen.
print-board-note = 100 %, matt, eben auf eine steife Platte geklebt
print-board-foot = baywitness · Kameratafel
print-board-markers = Kameratafel, { $columns } x { $rows } Marker 36h11, Nr. { $first } bis { $last } von links nach rechts und oben nach unten, Größe { $size } mm, Lücke { $gap } mm
print-board-chessboard = Kameratafel, Schachbrett mit { $across } x { $down } inneren Ecken, Felder von { $square } mm
print-pages = { $first } bis { $last }
print-serial = Seriennummer { $serial }
print-kind = Marker der Familie 36h11 · Papier { $paper }
print-survey-due = Einmessung fällig am { $date }
print-step-print-title = Drucken
print-step-print = mit 100 % („tatsächliche Größe“; nicht „an Seite anpassen“), auf mattes Papier ab 120 g/m² oder matte Folie, mit einem Laserdrucker. Ein Lauf, ein Drucker, ein Fach: Blätter eines Laufs haben denselben Maßstab.
print-step-measure-title = Messen
print-step-measure = Die beiden Lineale dieser Seite mit dem Messschieber, von Mitte Endstrich bis Mitte Endstrich, auf 0,05 mm. Zwei weitere Seiten gegenprüfen. Ablesung eingeben: baywitness sheet KIT --measured-mm RIGHT,UP --corrected FILE schreibt die Datei des Markersatzes mit den gedruckten Größen. Aufträge mit dieser Datei prüfen, aus der ersten drucken.
print-step-glue-title = Kleben
print-step-glue = auf ebene, steife, matte Platten (Aluverbund 4 mm; für den Boden dünnes Blech, alle gleich): Bleistiftlinien durch die Blattmitten nach Zeichnung, Sprühkleber auf die ganze Rückseite, kurze Randstriche auf die Bleistiftlinien, keine Blasen. Eine Platte, unter deren Haarlineal mehr als 0,2 mm Luft ist, ist nicht eben.
print-step-white-title = Weiß lassen
print-step-white = Rund um jedes schwarze Quadrat bleibt ein Rand von einer Zelle. An den Schnittmarken oder außerhalb schneiden, nie in den Rand; kein Klebeband, kein Glanz, kein Laminat, in dem sich Lampen spiegeln.
print-step-off-title = Abnehmen
print-step-off = Frontmarke und jede Metallplatte, bevor die Kalibrierung läuft: Was im Blick eines Sensors steht, ändert, was er sieht.
print-step-keep-title = Pflegen
print-step-keep = Papier wächst und schrumpft mit der Luftfeuchte um 0,1 bis 0,3 %: bei Wechsel der Jahreszeit neu messen und eingeben. Ein Markersatz, der fiel oder verbogen wurde, wird vor Gebrauch neu eingemessen.
print-caution = Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Nur für Fachpersonal; Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen. baywitness dokumentiert das Verfahren und ersetzt es nicht.
print-assumes = Die Datei des Markersatzes setzt voraus: Blattmitten auf { $layout } mm nach Zeichnung, Blätter auf { $turn } Grad gerade, Größen auf { $scale } % (je eine Standardabweichung). Auf die Hälfte davon arbeiten.
print-assumes-surveyed = Die Datei des Markersatzes setzt Blattmitten wie eingemessen und Größen auf { $scale } % voraus (eine Standardabweichung). Auf die Hälfte davon arbeiten.
print-column-holder = Markerträger
print-column-role = was es ist
print-column-drawing = Zeichnung, Seite
print-column-sheets = Blätter, Seite
print-wrote = { $file } geschrieben: mit 100 % auf Papier { $paper } drucken, dann die Prüflineale messen
print-wrote-corrected = { $file } geschrieben: gedruckt mit { $right } % nach rechts und { $up } % nach oben

# Warum nichts gedruckt wurde
print-two-sides = { $width } x { $height }
print-marker-too-large = Marker { $id } von { $holder } braucht mit seinem weißen Rand { $needs } mm, das Papier { $paper } bietet aber { $offers } mm: { $remedy }
print-board-too-large = die Tafel braucht mit ihrem weißen Rand { $needs } mm, das Papier { $paper } bietet aber { $offers } mm: { $remedy }
print-smaller-marker = size_mm auf { $size } oder weniger setzen
print-larger-paper-or-marker = mit --paper { $paper } drucken oder size_mm auf { $size } oder weniger setzen
print-smaller-board = die Tafel um den Faktor { $factor } kleiner machen
print-larger-paper-or-board = mit --paper { $paper } drucken oder die Tafel um den Faktor { $factor } kleiner machen
print-unknown-marker = Marker { $id } gibt es in der Familie { $family } nicht, deren Nummern von 0 bis { $last } reichen: ihm eine andere Nummer geben
print-the-marker = Marker { $id }
print-of-the-board =
    { $what ->
        [marker] Marker der Tafel
        [gap] Zwischenraum der Tafel
       *[square] Feld der Tafel
    }
print-bad-size = { $what }: Größe { $size } mm; die Größe in Millimetern angeben, größer als null
print-no-markers = der Markersatz { $kit } hat keinen Marker zum Drucken: einen [[carrier.marker]] ergänzen
print-reading-off =
    { $direction ->
        [right] das Lineal nach rechts misst { $read } mm statt { $nominal } mm: mehr als { $limit } % daneben ist ein Ablesefehler oder ein Drucker, der anpasst; mit 100 % drucken und beide Lineale neu ablesen
       *[up] das Lineal nach oben misst { $read } mm statt { $nominal } mm: mehr als { $limit } % daneben ist ein Ablesefehler oder ein Drucker, der anpasst; mit 100 % drucken und beide Lineale neu ablesen
    }
print-unknown-paper = unbekanntes Papier „{ $name }“: a4, a3 oder letter wählen
print-no-pdf = die PDF-Datei lässt sich nicht schreiben: { $why }
print-font-damaged = eine eingebaute Schrift ist beschädigt; das Programm neu bauen
