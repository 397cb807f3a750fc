# Was die Fotos fast ebenso gut erklären würde.
findings-rivals = Fast ebenso wahrscheinlich: { $rivals }.
findings-if-moved = { $body } wurde zwischen den Fotos bewegt
findings-if-size = die Marker eines Trägers haben eine andere Größe ({ $body })
findings-if-size-kind =
    die Marker aller { $kind ->
        [floor] Bodenblätter
       *[plates] Radplatten
    } haben eine andere Größe
findings-if-half-turned = das Bild wurde um 180 Grad gedreht
findings-if-sizes = alle Marker haben eine andere Größe als in der Datei des Markersatzes
findings-if-zoomed = { $photo } wurde gezoomt
findings-if-focal = die Kamera hat eine andere Brennweite
findings-if-displaced = Marker { $marker } ({ $body }) sitzt anders, als die Satzdatei ihn hat
findings-if-marker = Marker { $marker } ({ $body }) wurde in { $photo } falsch gefunden
findings-if-lens-one = { $photo } wurde mit einem anderen Objektiv aufgenommen
findings-if-lens = die Fotos wurden mit einem anderen Objektiv aufgenommen
findings-if-off-floor =
    { $count ->
        [one] Bodenblatt { $sheets } liegt nicht in der Ebene des Bodens
       *[other] die Bodenblätter { $sheets } liegen nicht in der Ebene des Bodens
    }

# Was ein Wert mit einer Erklärung eines Befunds wäre; steht vor einem Wert.
findings-with-place =
    { $count ->
        [one] { $body } dort, wo allein { $photos } es zeigt
       *[other] { $body } dort, wo allein { $photos } es zeigen
    }
findings-with-sizes = mit anderer Größe aller Marker
findings-with-size = mit anderer Größe der Marker eines Trägers ({ $body })
findings-with-focal = mit anderer Brennweite von { $photos }
findings-with-lens = mit anderem Objektiv bei { $photos }
findings-with-rear-floor = mit dem Boden unter den Hinterrädern statt der Ebene der Bodenblätter
findings-with-floor =
    { $count ->
        [one] mit einem Boden ohne Bodenblatt { $sheets }
       *[other] mit einem Boden ohne die Bodenblätter { $sheets }
    }
findings-with-not-flush = { $body } liegt nicht bündig am Rad an
findings-without-readings = ohne die Ablesungen
findings-with-typed-wrong = mit falscher Eingabe

# Wie weit zwei Orte eines Körpers auseinanderliegen.
findings-step-far = Die beiden Orte liegen weit auseinander.
findings-step = Die beiden Orte liegen etwa { $mm } mm und { $degrees }° auseinander.

findings-stand-moved = { $body } steht in { $photos } an anderer Stelle als in den übrigen Fotos. { $step } Niemanden an das Gestell lassen und alle Fotos neu aufnehmen.
findings-arch-moved = { $body } sitzt in { $photos } anders über dem Rad als in den übrigen Fotos. { $step } Die Karosserie wurde angestoßen, jemand ist ein- oder ausgestiegen, oder die Federung hatte sich noch nicht gesetzt. Niemanden einsteigen lassen und alle Fotos neu aufnehmen.
findings-body-moved = { $body } sitzt in { $photos } an anderer Stelle als in den übrigen Fotos. { $step } Sie wurde angestoßen oder das Fahrzeug hat sich bewegt. Befestigen und alle Fotos neu aufnehmen.
findings-plate-moved = { $body } sitzt in { $photos } anders als in den übrigen Fotos. { $step } Sie ist am Rad verrutscht oder das Rad hat sich bewegt. Neu ansetzen und alle Fotos neu aufnehmen.
findings-vehicle-rolled =
    { $way ->
        [forward] Das Fahrzeug steht in { $photos } etwa { $mm } mm weiter vorn als in den übrigen Fotos. Räder mit Keilen sichern, Gestell neu prüfen und alle Fotos neu aufnehmen.
       *[rearward] Das Fahrzeug steht in { $photos } etwa { $mm } mm weiter hinten als in den übrigen Fotos. Räder mit Keilen sichern, Gestell neu prüfen und alle Fotos neu aufnehmen.
    }
findings-vehicle-nudged = Das Fahrzeug steht in { $photos } etwa { $mm } mm neben der Stelle, an der es vor dem Verschieben des Gestells stand, um { $degrees }° gedreht: es wurde angestoßen. Räder mit Keilen sichern und zwei Fotos von allem neu aufnehmen.
findings-sheet-slid = { $body } liegt in { $photo } an anderer Stelle als in Fotos vor oder nach einer anderen Bewegung des Gestells, um etwa { $mm } mm und { $degrees }°: es wurde angestoßen oder das Fahrzeug hat sich bewegt. Wieder hinlegen, Räder mit Keilen sichern und zwei Fotos von allem neu aufnehmen.
findings-phases-differ = { $body } stand nach der Kalibrierung an anderer Stelle als davor, um etwa { $mm } mm und { $degrees }° versetzt. Die Werte hier sind die von davor; der Standort während der Kalibrierung ist unbekannt. Neu aufstellen und neu kalibrieren.

findings-plates-swapped-sides =
    { $axle ->
        [front] Die vorderen Radplatten sind vertauscht: die linke sitzt am rechten Rad. Jede aufrecht an ihr eigenes Rad setzen und die Fotos neu aufnehmen.
       *[rear] Die hinteren Radplatten sind vertauscht: die linke sitzt am rechten Rad. Jede aufrecht an ihr eigenes Rad setzen und die Fotos neu aufnehmen.
    }
findings-plates-swapped-ends =
    { $side ->
        [left] Die linken Radplatten vorn und hinten sind vertauscht: die vordere sitzt am Hinterrad. Jede an ihr eigenes Rad setzen und die Fotos neu aufnehmen.
       *[right] Die rechten Radplatten vorn und hinten sind vertauscht: die vordere sitzt am Hinterrad. Jede an ihr eigenes Rad setzen und die Fotos neu aufnehmen.
    }
findings-upside-down = { $body } steht auf dem Kopf. Richtig herum anbringen und die Fotos neu aufnehmen.
findings-marker-turned = Marker { $marker } sitzt verdreht auf seinem Träger ({ $body }). Aufrecht anbringen, wie es die Zeichnung des Markersatzes zeigt, und die Fotos neu aufnehmen.
findings-markers-exchanged = Marker { $one } ({ $body }) und { $other } ({ $other_body }) sind gegeneinander vertauscht. Anbringen, wie es die Zeichnung des Markersatzes zeigt, und die Fotos neu aufnehmen.
findings-plate-not-flush =
    { $axle ->
        [front] Die Richtungen der vorderen Radplatten weichen um { $degrees }° voneinander ab, mehr als die Spur ausmachen kann: { $body } liegt wahrscheinlich nicht bündig am Rad an. Neu ansetzen und die Fotos neu aufnehmen.
       *[rear] Die Richtungen der hinteren Radplatten weichen um { $degrees }° voneinander ab, mehr als die Spur ausmachen kann: { $body } liegt wahrscheinlich nicht bündig am Rad an. Neu ansetzen und die Fotos neu aufnehmen.
    }
findings-plate-off-hub-track = Die hinteren Radplatten stehen { $rear } mm auseinander, die vorderen { $front } mm, und so verschieden sind die Achsen keines Fahrzeugs: Eine Platte sitzt nicht auf der Nabe ihres Rades, oder an einem anderen Fahrzeug. Jede Platte auf ihre eigene Nabe setzen und die Fotos neu aufnehmen.
findings-plate-off-hub-thrust = Nach den Radplatten zeigen die Hinterräder { $degrees }° zur Seite, mehr als die irgendeines Fahrzeugs: Eine Platte sitzt nicht auf der Nabe ihres Rades, oder an einem anderen Fahrzeug. Jede Platte auf ihre eigene Nabe setzen und die Fotos neu aufnehmen.
findings-size-disagrees =
    { $size ->
        [wheelbase] Die Fotos zeigen einen Radstand von { $measured } mm, eingegeben sind { $typed } mm: Eine Radplatte sitzt neben ihrer Nabe, oder die Eingaben gehören zu einem anderen Fahrzeug oder sind vertippt. Die Platten auf ihre Naben setzen und die Fotos neu aufnehmen, oder die Eingabe berichtigen.
        [nose] Die Fotos zeigen die Frontmarke { $measured } mm vor der Hinterachse, eingegeben sind { $typed } mm: Die Marke sitzt an der falschen Stelle, eine hintere Radplatte sitzt neben ihrer Nabe, oder die Eingaben gehören zu einem anderen Fahrzeug oder sind vertippt. Die Marke am vordersten Punkt des Fahrzeugs anbringen, die Platten auf ihre Naben setzen und die Fotos neu aufnehmen, oder die Eingabe berichtigen.
        [front_track] Die Fotos zeigen vorn eine Spurweite von { $measured } mm von Nabe zu Nabe, eingegeben sind { $typed } mm: Eine vordere Radplatte sitzt neben ihrer Nabe, oder die Eingaben gehören zu einem anderen Fahrzeug oder sind vertippt. Die Platten auf ihre Naben setzen und die Fotos neu aufnehmen, oder die Eingabe berichtigen.
       *[rear_track] Die Fotos zeigen hinten eine Spurweite von { $measured } mm von Nabe zu Nabe, eingegeben sind { $typed } mm: Eine hintere Radplatte sitzt neben ihrer Nabe, oder die Eingaben gehören zu einem anderen Fahrzeug oder sind vertippt. Die Platten auf ihre Naben setzen und die Fotos neu aufnehmen, oder die Eingabe berichtigen.
    }
findings-size-mistyped =
    { $size ->
        [wheelbase] Die Fotos zeigen einen Radstand von { $measured } mm, eingegeben sind { $typed } mm: So weit daneben ist das höchstwahrscheinlich vertippt oder das Maß eines anderen Fahrzeugs. Die Eingabe in mm berichtigen und noch einmal prüfen; stimmt sie, den Sitz der Platten und der Frontmarke ansehen.
        [nose] Die Fotos zeigen die Frontmarke { $measured } mm vor der Hinterachse, eingegeben sind { $typed } mm: So weit daneben ist das höchstwahrscheinlich vertippt oder das Maß eines anderen Fahrzeugs. Die Eingabe in mm berichtigen und noch einmal prüfen; stimmt sie, den Sitz der Platten und der Frontmarke ansehen.
        [front_track] Die Fotos zeigen vorn eine Spurweite von { $measured } mm von Nabe zu Nabe, eingegeben sind { $typed } mm: So weit daneben ist das höchstwahrscheinlich vertippt oder das Maß eines anderen Fahrzeugs. Die Eingabe in mm berichtigen und noch einmal prüfen; stimmt sie, den Sitz der Platten und der Frontmarke ansehen.
       *[rear_track] Die Fotos zeigen hinten eine Spurweite von { $measured } mm von Nabe zu Nabe, eingegeben sind { $typed } mm: So weit daneben ist das höchstwahrscheinlich vertippt oder das Maß eines anderen Fahrzeugs. Die Eingabe in mm berichtigen und noch einmal prüfen; stimmt sie, den Sitz der Platten und der Frontmarke ansehen.
    }

findings-not-flat = { $body }: die Drucke erscheinen rund { $size } mm neben der Stelle, an der flache erscheinen würden. Das Papier wölbt sich oder liegt in Wellen, oder es ist ungleichmäßig bedruckt; deshalb ist ihr Ort weniger genau bekannt. Flach auf etwas Steifes kleben oder neu drucken.
findings-prints-not-flat = Die Drucke von { $count } Trägern erscheinen rund { $size } mm neben der Stelle, an der flache erscheinen würden: das Papier wölbt sich oder liegt in Wellen, es ist ungleichmäßig bedruckt, oder das Telefon hat die Fotos geglättet (Nachtmodus). Deshalb ist ihr Ort weniger genau bekannt. Flach auf etwas Steifes kleben oder neu drucken; ohne Nachtmodus fotografieren.
findings-marker-displaced = Marker { $markers } und die übrigen desselben Trägers ({ $body }) liegen nicht so zueinander, wie die Datei des Markersatzes sie hat, um etwa { $mm } mm: Etwas ist verbogen, wurde geflickt oder anderswo angebracht, oder die Datei gehört zu einem anderen Träger. Welche von ihnen richtig sitzen, sagen die Fotos nicht. In Ordnung bringen oder den Träger vermessen, und noch einmal auswerten.
findings-holder-deformed = Die Marker eines Trägers ({ $body }) liegen nicht so zueinander, wie die Datei des Markersatzes sie hat: Der Träger ist verbogen, seine Drucke wurden weniger sorgfältig geklebt, als in der Datei steht, oder die Datei gehört zu einem anderen. Den Träger vermessen oder in der Datei angeben, wie genau die Orte bekannt sind, und noch einmal auswerten.
findings-print-scale =
    { $size ->
        [smaller] Die Marker eines Trägers ({ $body }) erscheinen { $percent } % kleiner als in der Datei des Markersatzes. Das schwarze Quadrat eines Markers mit dem Lineal messen und den Wert eintragen oder mit 100 % neu drucken.
       *[larger] Die Marker eines Trägers ({ $body }) erscheinen { $percent } % größer als in der Datei des Markersatzes. Das schwarze Quadrat eines Markers mit dem Lineal messen und den Wert eintragen oder mit 100 % neu drucken.
    }
findings-print-scale-kind =
    Die Marker aller { $kind ->
        [floor] Bodenblätter
       *[plates] Radplatten
    } erscheinen { $percent } % { $size ->
        [smaller] kleiner
       *[larger] größer
    } als in der Datei des Markersatzes. Das schwarze Quadrat eines Markers mit dem Lineal messen und den Wert eintragen oder sie mit 100 % neu drucken.
findings-print-scales =
    { $size ->
        [smaller] Alle Marker erscheinen, gemessen an ihren Abständen auf den Trägern, { $percent } % kleiner als in der Datei des Markersatzes. Das schwarze Quadrat eines Markers mit dem Lineal messen und den Wert eintragen oder mit 100 % neu drucken.
       *[larger] Alle Marker erscheinen, gemessen an ihren Abständen auf den Trägern, { $percent } % größer als in der Datei des Markersatzes. Das schwarze Quadrat eines Markers mit dem Lineal messen und den Wert eintragen oder mit 100 % neu drucken.
    }

findings-of-photo = Zu { $photo }: { $why }.
findings-mirrored = { $photo } ist gespiegelt: links und rechts sind vertauscht, kein Code ist lesbar. Mit der Hauptkamera statt der Frontkamera aufnehmen und unverändert übergeben, wie das Foto gespeichert wurde.
findings-focal-of-all =
    { $length ->
        [longer] Alle Fotos passen zu einer Brennweite, die etwa { $percent } % länger ist als die der Kamera { $camera }: eine andere Kamera oder ein anderes Objektiv wurde verwendet, oder alle sind gleich gezoomt. Die Kameradatei der verwendeten Kamera angeben oder die Fotos neu aufnehmen.
       *[shorter] Alle Fotos passen zu einer Brennweite, die etwa { $percent } % kürzer ist als die der Kamera { $camera }: eine andere Kamera oder ein anderes Objektiv wurde verwendet, oder alle sind gleich gezoomt. Die Kameradatei der verwendeten Kamera angeben oder die Fotos neu aufnehmen.
    }
findings-half-turned = Kopfüber zum Objektiv der Kamera: { $photos }. Um 180 Grad gedreht gespeichert, hat ein Bild Mitte und Fehler des Objektivs auf der falschen Seite. Die Fotos so geben, wie die Kamera sie gespeichert hat.
findings-lens-of-all = Die Fotos passen nicht zum Objektiv der Kamera { $camera }: die Ecken liegen um das { $times }-Fache ihres Rauschens daneben, ein anderes Objektiv würde das erklären. Die Kameradatei der verwendeten Kamera angeben oder die Kamera neu anpassen.
findings-lens-of-one = { $photo } passt nicht zum Objektiv der Kamera { $camera }, zu dem die übrigen Fotos passen: ein anderes Telefon gleichen Modells oder ein anderes Objektiv dieses Telefons wurde verwendet. Alle Fotos mit dem Telefon aufnehmen, zu dem die Kameradatei gehört, oder dieses Foto aus dem Auftrag nehmen.
findings-zoomed-by-record = { $photo } wurde mit { $times }-fachem Digitalzoom aufgenommen (laut EXIF). Foto ohne Zoom neu aufnehmen.
findings-zoomed =
    { $length ->
        [longer] { $photo } passt zu einer Brennweite, die { $percent } % länger ist, als die Kameradatei zulässt: gezoomt, beschnitten oder anderes Objektiv. Foto ohne Zoom neu aufnehmen.
       *[shorter] { $photo } passt zu einer Brennweite, die { $percent } % kürzer ist, als die Kameradatei zulässt: gezoomt, beschnitten oder anderes Objektiv. Foto ohne Zoom neu aufnehmen.
    }
findings-resized = { $photo } hat { $width } x { $height } px, laut eigener Angabe aber { $stated_width } x { $stated_height }: das Foto wurde in anderer Größe neu gespeichert. Das Foto verwenden, wie die Kamera es gespeichert hat.
findings-reused =
    { $how ->
        [bytes] { $photo } ist dasselbe Bild wie { $earlier } (Byte für Byte) und weist nichts Weiteres nach. Ein Foto von einer anderen Stelle aufnehmen.
        [mirrored] { $photo } ist dasselbe Bild wie { $earlier } (gespiegelt) und weist nichts Weiteres nach. Ein Foto von einer anderen Stelle aufnehmen.
       *[again] { $photo } ist dasselbe Bild wie { $earlier } (neu gespeichert, skaliert oder beschnitten) und weist nichts Weiteres nach. Ein Foto von einer anderen Stelle aufnehmen.
    }
findings-blurred = { $photo } ist unscharf (etwa { $px } px). Ruhig halten, die Ellbogen abstützen oder mehr Licht machen und neu aufnehmen.
findings-blurred-no-marker = { $photo } ist so unscharf, dass kein Marker gefunden wurde. Ruhig halten, die Ellbogen abstützen oder mehr Licht machen und neu aufnehmen.
findings-glare =
    { $count ->
        [one] Eine Lampe blendet auf Marker { $markers } in { $photo }. Einen Schritt zur Seite gehen und neu aufnehmen.
       *[other] Eine Lampe blendet auf den Markern { $markers } in { $photo }. Einen Schritt zur Seite gehen und neu aufnehmen.
    }
findings-burnt-out = { $photo } ist zu hell: um die Marker ist das Weiß ausgebrannt. Blitz ausschalten oder auf das Gestell tippen, damit das Telefon darauf belichtet, und neu aufnehmen.
findings-dark = { $photo } ist zu dunkel: Schwarz und Weiß der Marker unterscheiden sich kaum. Mehr Licht machen und neu aufnehmen.
findings-dark-no-marker = { $photo } ist so dunkel, dass kein Marker gefunden wurde. Mehr Licht machen und neu aufnehmen.
findings-light-changed = In { $photo } hat das Telefon die Helligkeit von Stelle zu Stelle verändert: die Ecken sind auf { $stated } px bekannt, in einem unverändert entwickelten Foto wären es { $plain } px. HDR, Nachtmodus und Szenenoptimierung ausschalten oder ein Rohbild ohne Eingriffe entwickeln und neu aufnehmen.
findings-too-alike = { $first } und { $second } wurden aus fast derselben Richtung aufgenommen ({ $degrees }° Unterschied). Eines davon von der anderen Seite des Gestells aufnehmen.
findings-focal-contradicts = Die Aufnahmedaten von { $photo } nennen eine Brennweite von { $stated } mm (auf Kleinbild bezogen), das Bild hat aber { $least } bis { $most } mm: es wurde beschnitten, oder die Daten gehören zu einem anderen Foto. Die Originaldatei übergeben.

findings-edited = { $photo } wurde nach der Aufnahme von einem Programm geschrieben: { $traces }. Das beweist keine Änderung des Bildes, die Originaldatei ließe aber keinen Zweifel.
findings-edited-other = { $photo } wurde nach der Aufnahme von einem Programm geschrieben: { $traces }; es ist anders komprimiert als die übrigen Fotos dieser Kamera im Auftrag. Das beweist keine Änderung des Bildes, die Originaldatei ließe aber keinen Zweifel.
findings-trace-program = die Aufnahmedaten nennen ein Bearbeitungsprogramm ({ $program })
findings-trace-later =
    { $seconds ->
        [one] es wurde { $seconds } Sekunde nach der Aufnahme geschrieben
       *[other] es wurde { $seconds } Sekunden nach der Aufnahme geschrieben
    }
findings-trace-editor = es enthält den Datenblock einer Bildbearbeitung
findings-trace-history = es enthält einen Verlauf von Bearbeitungen (XMP)
findings-trace-credentials = seine Herkunftsnachweise passen nicht zu seinen Bytes ({ $failures })
findings-trace-listed = seine Herkunftsnachweise führen Bearbeitungen auf ({ $edits })
# Was ein Vorgabeblatt von den Unterschriften der Kameras verlangt.
findings-credentials-lacking = Das Vorgabeblatt verlangt Herkunftsnachweise für jedes Foto; diesen Fotos fehlen sie: { $photos }. Die Fotos mit einer Kamera aufnehmen, die ihre Aufnahmen unterzeichnet, die Originaldateien übergeben und die Vertrauensanker ihres Herstellers nennen lassen.
findings-credentials-of-photo = { $photo } ({ $why })
findings-credentials-none = keine gefunden
findings-credentials-edited = sein Manifest führt Bearbeitungen auf: { $edits }
findings-credentials-not-built-in = Das Vorgabeblatt verlangt Herkunftsnachweise für jedes Foto, und dieses Programm wurde ohne sie gebaut. Mit einem Programm prüfen, das mit der Eigenschaft credentials gebaut wurde.
findings-thumbnail = Das Vorschaubild in { $photo } zeigt ein anderes Bild als das Foto (Korrelation { $likeness }). Das Bild wurde möglicherweise ersetzt oder beschnitten; die Originaldatei übergeben.
findings-rendered =
    { $place ->
        [both] { $photo } wurde von diesem Programm gerendert, wie Aufnahmedaten und Pixel sagen; keine Kamera hat es aufgenommen, und der Auftrag sagt das nicht. Es beweist nichts: das Foto übergeben, das die Kamera geschrieben hat.
        [record] { $photo } wurde von diesem Programm gerendert, wie die Aufnahmedaten sagen; keine Kamera hat es aufgenommen, und der Auftrag sagt das nicht. Es beweist nichts: das Foto übergeben, das die Kamera geschrieben hat.
       *[picture] { $photo } wurde von diesem Programm gerendert, wie die Pixel sagen; keine Kamera hat es aufgenommen, und der Auftrag sagt das nicht. Es beweist nichts: das Foto übergeben, das die Kamera geschrieben hat.
    }
findings-noise-repeated = { $photo } und { $earlier } haben in den Markern { $markers } dasselbe Rauschen (Korrelation { $correlation }), obwohl sie nicht dasselbe Bild sind: keine Kamera rauscht zweimal gleich. Eines wurde möglicherweise aus dem anderen gemacht; das Foto neu aufnehmen.
findings-without-noise = { $body } zeigt das { $share }-Fache des Rauschens, das die übrigen Marker in { $photo } haben: ihre Marker wurden möglicherweise von einem Programm eingesetzt. Die Originaldatei übergeben oder das Foto neu aufnehmen.
findings-compression-differs = { $body } zeigt { $share } der früheren Kompression, die die anderen Marker in { $photo } zeigen: seine Marker könnten danach eingesetzt worden sein. Die Originaldatei abgeben oder das Foto noch einmal aufnehmen.

findings-floor-sheet = { $body } liegt nicht in der Ebene der übrigen Bodenblätter (etwa { $mm } mm und { $degrees }° daneben): der Boden ist dort geneigt oder geknickt, oder das Blatt ist gewellt. Das Blatt glätten; liegt es am Boden, einen ebenen Kalibrierplatz verwenden.
findings-floor-bends = Der Boden knickt vor dem Fahrzeug ab: die Blätter { $sheets } liegen nicht in der Ebene der näher am Fahrzeug liegenden Blätter (etwa { $mm } mm und { $degrees }° daneben). Einen ebenen Kalibrierplatz verwenden.
findings-floor-below-wheels =
    { $way ->
        [higher] Die Ebene der Bodenblätter liegt { $mm } mm höher als der Boden unter den Hinterrädern (Nabenhöhe { $typed } mm laut Eingabe): der Boden ist zwischen Fahrzeug und Gestell geneigt oder geknickt, oder die eingegebene Höhe ist falsch. Den Boden mit der Wasserwaage prüfen; einen ebenen Kalibrierplatz verwenden.
       *[lower] Die Ebene der Bodenblätter liegt { $mm } mm tiefer als der Boden unter den Hinterrädern (Nabenhöhe { $typed } mm laut Eingabe): der Boden ist zwischen Fahrzeug und Gestell geneigt oder geknickt, oder die eingegebene Höhe ist falsch. Den Boden mit der Wasserwaage prüfen; einen ebenen Kalibrierplatz verwenden.
    }
findings-wheels-uneven =
    { $lower ->
        [rear_left] Die linke hintere Nabe steht { $mm } mm niedriger über den Bodenblättern als die rechte: ein platter Reifen, ein Klotz oder eine Drehplatte unter einem Rad, eine Platte neben ihrer Nabe, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
        [rear_right] Die rechte hintere Nabe steht { $mm } mm niedriger über den Bodenblättern als die linke: ein platter Reifen, ein Klotz oder eine Drehplatte unter einem Rad, eine Platte neben ihrer Nabe, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
        [front_left] Die linke vordere Nabe steht { $mm } mm niedriger über den Bodenblättern als die rechte: ein platter Reifen, ein Klotz oder eine Drehplatte unter einem Rad, eine Platte neben ihrer Nabe, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
        [front_right] Die rechte vordere Nabe steht { $mm } mm niedriger über den Bodenblättern als die linke: ein platter Reifen, ein Klotz oder eine Drehplatte unter einem Rad, eine Platte neben ihrer Nabe, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
        [front] Die vorderen Naben stehen { $mm } mm niedriger über den Bodenblättern als die hinteren: Räder auf Klötzen oder Drehplatten, platte Reifen, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
       *[rear] Die hinteren Naben stehen { $mm } mm niedriger über den Bodenblättern als die vorderen: Räder auf Klötzen oder Drehplatten, platte Reifen, oder der Boden unter den Rädern ist eine andere Ebene als die der Blätter. Reifen und Boden ansehen und die Fotos neu aufnehmen.
    }
findings-two-poses = { $body } passt in zwei Lagen gleich gut zu den Fotos. Ein weiteres Foto aus einer anderen Richtung und aus größerer Nähe aufnehmen.
findings-not-seen = { $body } ist in keinem brauchbaren Foto zu sehen. Ein weiteres Foto aufnehmen, das auch zwei andere Markerträger zeigt.
findings-steering =
    { $way ->
        [left] Die Vorderräder zeigen { $degrees }° nach links. Lenkung geradeaus stellen, Gestell neu prüfen und die Fotos neu aufnehmen.
       *[right] Die Vorderräder zeigen { $degrees }° nach rechts. Lenkung geradeaus stellen, Gestell neu prüfen und die Fotos neu aufnehmen.
    }
findings-outside-held = Außerhalb der Toleranz: { $quantity }; { $correction }.
findings-reading-disagrees-mm = { $quantity }: die Ablesung { $read } mm und der Wert aus den Fotos { $photos } mm schließen einander aus (E_n { $error }). Neu ablesen; prüfen, von welchem Punkt aus gemessen wurde.
findings-reading-disagrees-degrees = { $quantity }: die Ablesung { $read }° und der Wert aus den Fotos { $photos }° schließen einander aus (E_n { $error }). Neu ablesen; prüfen, von welchem Punkt aus gemessen wurde.
findings-readings-differ-mm = { $quantity }: die Ablesungen { $read } mm und { $again } mm schließen einander aus (E_n { $error }). Neu ablesen und im Auftrag nur lassen, was richtig abgelesen wurde.
findings-readings-differ-degrees = { $quantity }: die Ablesungen { $read }° und { $again }° schließen einander aus (E_n { $error }). Neu ablesen und im Auftrag nur lassen, was richtig abgelesen wurde.
findings-marker-duplicated =
    { $count ->
        [2] Marker { $marker } kommt in { $photo } zweimal vor: er wurde in allen Fotos weggelassen. Überzählige Ausdrucke entfernen und die Fotos neu aufnehmen.
       *[other] Marker { $marker } kommt in { $photo } { $count }-mal vor: er wurde in allen Fotos weggelassen. Überzählige Ausdrucke entfernen und die Fotos neu aufnehmen.
    }
findings-cannot-prove = Diese Fotos und dieser Markersatz können eine so kleine Toleranz nicht nachweisen: { $quantities }. Nötig: { $more }. Das bedeutet kein „nicht bestanden“.
findings-hangs-on-body =
    { $way ->
        [larger] { $quantity }: ohne { $body } wäre der Wert um { $change } größer, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
       *[smaller] { $quantity }: ohne { $body } wäre der Wert um { $change } kleiner, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
    }
findings-hangs-on-photo =
    { $way ->
        [larger] { $quantity }: ohne { $photo } wäre der Wert um { $change } größer, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
       *[smaller] { $quantity }: ohne { $photo } wäre der Wert um { $change } kleiner, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
    }
findings-hangs-on-lens =
    { $way ->
        [larger] { $quantity }: mit dem anderen Objektivmodell wäre der Wert um { $change } größer, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
       *[smaller] { $quantity }: mit dem anderen Objektivmodell wäre der Wert um { $change } kleiner, mehr als seine Messunsicherheit von { $uncertainty }. Etwas passt dort nicht zum Übrigen. Ansehen und ein weiteres Foto aufnehmen.
    }

findings-gap-minutes = { $n } min
findings-gap-hours = { $n } h
findings-gap-days = { $n } d
findings-photos-apart = { $photo } wurde { $gap } nach { $first } aufgenommen: der Aufbau kann sich dazwischen geändert haben.
findings-not-when-job-says =
    { $way ->
        [before] Laut Auftrag wurden die Fotos { $gap } früher aufgenommen, als die Aufnahmedaten von { $photo } angeben.
       *[after] Laut Auftrag wurden die Fotos { $gap } später aufgenommen, als die Aufnahmedaten von { $photo } angeben.
    }
findings-not-as-satellites-say = { $photo } wurde nach der Satellitenzeit in seinem Eintrag { $gap } von seiner eigenen Zeit entfernt aufgenommen: die Zeit wurde geändert, oder die Uhr des Telefons geht falsch.
findings-ran-before = Die Kalibrierung lief { $gap } vor dem ersten Foto: die Fotos zeigen nicht, wo das Gestell zu dieser Zeit stand.
findings-ran-before-move = Die Kalibrierung lief { $gap } vor { $photo }, dem ersten Foto des jetzigen Standorts: das Gestell wurde zwischen den Fotos versetzt, und keines zeigt, wo es stand, als die Kalibrierung lief.
findings-ran-late = Die Kalibrierung lief { $gap } nach { $photo }, dem letzten Foto des Aufbaus: er kann sich dazwischen geändert haben.
findings-not-yet-run = { $photo } ist als Foto nach der Kalibrierung eingetragen, wurde aber { $gap } vor ihrem Lauf aufgenommen: es zeigt nicht, wo das Gestell danach stand.
findings-phases-exchanged = { $after } ist als Foto nach der Kalibrierung eingetragen und { $before } als Foto davor; nach den eigenen Aufnahmedaten ist es umgekehrt.
findings-moves-exchanged = { $after } ist als Foto nach einem Versetzen des Gestells eingetragen und { $before } als Foto davor; nach den eigenen Aufnahmedaten ist es umgekehrt.
findings-other-day-than-job = { $photo } wurde nach den eigenen Aufnahmedaten am { $day } aufgenommen, der Auftrag nennt den { $wanted }. Fotos dieses Auftrags verwenden oder die Uhr richtig stellen.
findings-other-day-than-photo = { $photo } wurde nach den eigenen Aufnahmedaten am { $day } aufgenommen, das erste Foto des Auftrags am { $wanted }. Fotos dieses Auftrags verwenden oder die Uhr richtig stellen.

findings-card-not-seen = Kein Foto zeigt die ganze Karte dieses Auftrags (Marker { $ids }; höchstens { $most } von { $all } in einem Foto), also weist nichts nach, dass die Fotos für ihn aufgenommen wurden. Die Karte sichtbar hinlegen und ein weiteres Foto aufnehmen.
findings-card-of-another-job = { $photo } zeigt die Karte eines anderen Auftrags (Marker { $others }; die dieses Auftrags sind { $own }). Dieses Foto weglassen oder mit der Karte dieses Auftrags neu aufnehmen.
findings-other-kit = Die Marker { $ids } gehören zu keinem Träger des Markersatzes { $kit }, stehen aber in den Fotos (die meisten in { $photo }). Ein anderer Markersatz oder eine Kalibriertafel ist im Bild, oder der Auftrag nennt den falschen Markersatz.
findings-prerequisite-not-met = Nicht erfüllt: { $text }. In Ordnung bringen, dann die Fotos neu aufnehmen.
findings-prerequisite-answered-no = Nicht erfüllt: { $text }. Die Antwort lautet „{ $answer }“. In Ordnung bringen, dann die Fotos neu aufnehmen.
findings-prerequisite-in-words = { $text }: die Antwort lautet „{ $answer }“, kein klares Ja und kein Zahlenwert. Lesen, ob es erfüllt ist, und mit Ja oder Nein antworten.
findings-photos-not-listed =
    Im Ordner des Auftrags liegen Fotos, die er nicht aufführt: { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }und { $more } weitere
    }. Sie wurden nicht gemessen. In job.toml aufführen oder nach aside legen, wenn sie nichts von diesem Auftrag zeigen.
findings-photos-of-no-check =
    Keine Prüfung betrifft, wo das Gestell hier steht: { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }und { $more } weitere
    }. Der Schritt dieser Fotos hat im Vorgabeblatt keine Prüfung, oder sie nennen keinen Schritt. Was sie dort zeigen, widerspricht nichts. Den Schritt eintragen oder ihn prüfen lassen.
findings-not-answered = Nicht beantwortet: { $texts }. Unter „Vorbereiten“ oder im Abschnitt [prerequisites] der Auftragsdatei beantworten.
findings-not-checked = Das Vorgabeblatt prüft nicht und nimmt auch nicht aus: { $quantities }.

findings-far-off = { $quantity }: um { $off } daneben. Bis auf { $rest } passt dieser Fehler: { $mistake }. Am Vorgabeblatt und am Fahrzeug prüfen; nichts wurde deswegen korrigiert.
findings-far-off-or = { $quantity }: um { $off } daneben. Bis auf { $rest } passt dieser Fehler: { $mistake }. Oder dieser: { $others }. Am Vorgabeblatt und am Fahrzeug prüfen; nichts wurde deswegen korrigiert.
findings-reading-far-off = { $quantity }: die Ablesung { $read } passt mit diesem Fehler zu den Fotos: { $mistake }. Neu ablesen; nichts wurde deswegen korrigiert.

# Fehler, mit denen ein weit abweichender Wert verglichen wird.
findings-mistake-read-from = abgelesen ab: { $point }
findings-mistake-measured-from = gemessen ab: { $point }
findings-mistake-to-part = gemessen bis: { $point } des Gestells
findings-mistake-sign = Vorzeichen umgekehrt
findings-mistake-from-nose-height = ab der Frontmarke gemessen statt ab dem Boden
findings-mistake-from-floor = ab dem Boden gemessen statt ab der Frontmarke
findings-mistake-on-nose = auf die Frontmarke ausgemittelt statt auf die Bezugslinie
findings-mistake-on-line = auf die Bezugslinie ausgemittelt statt auf die Frontmarke
findings-mistake-other-line = ausgerichtet auf { $other } statt auf { $line }
findings-mistake-thrust-sign = der Fahrachswinkel wurde mit falschem Vorzeichen genommen
findings-mistake-other-side = der Versatz wurde zur anderen Seite genommen
findings-mistake-offset-left-out = der Versatz wurde weggelassen
findings-mistake-left-at-zero = auf null stehen gelassen
findings-mistake-other-angle = der Winkel wurde von der anderen Linie aus genommen (90° minus Winkel)
findings-mistake-other-step = eingestellt wie in Schritt { $step }
findings-mistake-mm-as-inches = mm wurden als Zoll gelesen
findings-mistake-inches-as-mm = Zoll wurden als mm gelesen
findings-mistake-cm-as-mm = cm wurden als mm gelesen
findings-mistake-digits = zwei Ziffern wurden vertauscht ({ $swapped } statt { $nominal })
findings-mistake-plane =
    { $where ->
        [behind] gemessen bis zu einem Teil des Gestells { $mm } mm hinter der Tafelfläche
       *[front] gemessen bis zu einem Teil des Gestells { $mm } mm vor der Tafelfläche
    }
findings-mistake-edge =
    { $edge ->
        [left] die linke Kante des Gestells wurde dorthin gestellt statt der Mitte
        [right] die rechte Kante des Gestells wurde dorthin gestellt statt der Mitte
        [upper] die obere Kante des Gestells wurde dorthin gestellt statt der Mitte
       *[lower] die untere Kante des Gestells wurde dorthin gestellt statt der Mitte
    }
findings-point-nose = Fahrzeugfront
findings-point-front-axle = Vorderachse
findings-point-rear-axle = Hinterachse
findings-point-datum = Bezugspunkt „{ $datum }“

# Was einen Fehler prüfbar machen würde; steht hinter „Nötig:“.
findings-takes-second-photo = ein zweites Foto davon, das auch etwas anderes aus seinem ersten Foto zeigt, damit eine Bewegung dazwischen erkennbar wird
findings-takes-linking-photo = ein weiteres Foto, das es zusammen mit einem anderen Teil des Markersatzes zeigt, der auch in { $photos } zu sehen ist: sonst haben sie nichts gemeinsam
findings-takes-two-with-stand = zwei Fotos, die beide Radplatten und Gestell zeigen, und ein Bodenblatt oder ein zweiter Körper, der sich nicht mit dem Fahrzeug bewegt
findings-takes-axle =
    { $axle ->
        [front] Fotos, die beide vorderen Radplatten zeigen
       *[rear] Fotos, die beide hinteren Radplatten zeigen
    }
findings-takes-typed-sizes =
    { $what ->
        [nose] der Abstand der Fahrzeugfront von der Hinterachse, im Auftrag eingegeben: Dass die Marke an der falschen Stelle sitzt, zeigt kein weiteres Foto
       *[plates] der Radstand und beide Spurweiten von Nabe zu Nabe, im Auftrag eingegeben: Dass eine Platte auf allen Fotos gleich weit neben ihrer Nabe sitzt, zeigt kein weiteres
    }
findings-takes-other-direction = ein zweites Foto davon aus einer anderen Richtung
findings-takes-nearer = Fotos aus größerer Nähe zum Gestell, damit sich Größen und Abstände unterscheiden lassen
findings-takes-one-more = ein weiteres Foto aus einer anderen Richtung
findings-takes-sheets = Bodenblätter: ohne sie wird der Boden aus den Radplatten bestimmt
findings-takes-fourth-sheet = ein viertes Bodenblatt: drei liegen immer in einer Ebene
findings-takes-second-view = ein zweites Foto, das es zeigt
findings-takes-two-and-two = zwei Bodenblätter am Gestell und zwei am Fahrzeug
findings-takes-hub-height = die Höhe der hinteren Naben über dem Boden, im Auftrag eingetragen: Ein Boden, der zwischen den Rädern und allen Blättern ansteigt, knickt zwischen keinen zweien davon
findings-takes-front-plates = Radplatten an den Vorderrädern

# Warum ein Foto nicht mitgemessen wird; steht hinter einem Doppelpunkt.
findings-photo-size = Das Foto hat { $width } x { $height } px, die Kamera { $camera } gilt aber für { $wanted_width } x { $wanted_height } px; das Foto verwenden, wie die Kamera es gespeichert hat, oder die Datei der verwendeten Kamera
findings-photo-other-camera = Aufgenommen mit { $maker } { $model }, nicht mit der Kamera { $camera }; die Datei der verwendeten Kamera im Auftrag nennen
findings-photo-other-camera-at = Aufgenommen mit { $maker } { $model } bei { $focal } mm, nicht mit der Kamera { $camera }; die Datei der verwendeten Kamera im Auftrag nennen
findings-photo-no-camera = Keine Kameradatei passt ({ $maker } { $model }, { $width } x { $height } px); die Kamera mit einer Kalibriertafel anpassen oder ihre Datei im Auftrag als `camera` nennen
findings-photo-two-cameras = Zwei Kameradateien passen ({ $maker } { $model }, { $width } x { $height } px): { $first } und { $second }; eine davon im Auftrag als `camera` nennen
findings-no-make = (kein Hersteller im EXIF)
findings-no-model = (kein Modell im EXIF)
findings-photo-no-markers = Kein Marker des Markersatzes wurde gefunden: { $why }
findings-photo-not-linked = Das Foto hat keinen Markerträger mit den übrigen Fotos gemeinsam; neu aufnehmen, sodass es zwei Markerträger zeigt, die auch ein anderes Foto zeigt
findings-photo-not-tied = Nichts verbindet das Foto mit denen vor Bewegung { $move }; neu aufnehmen, mit Radplatten und Bodenblättern neben dem Gestell
findings-photo-other-phase = Das Foto wurde nach der Kalibrierung aufgenommen, als Gestell oder Fahrzeug bewegt worden war; es wird verglichen, nicht mitgemessen
findings-unseen-other-kit = die Marker darin gehören zu einem anderen Markersatz
findings-unseen-doubled = von jedem Marker darin ist ein zweiter Ausdruck am Platz; überzählige Ausdrucke entfernen und neu aufnehmen
findings-unseen-mirrored = das Foto ist gespiegelt
findings-unseen-dark = das Foto ist zu dunkel; mehr Licht machen und neu aufnehmen
findings-unseen-blurred = das Foto ist unscharf; ruhig halten, die Ellbogen abstützen oder mehr Licht machen und neu aufnehmen
findings-unseen-not-in-view = das Foto ist scharf, also war keiner im Bild oder alle waren zu klein; näher herangehen, Gestell und Radplatten ins Bild nehmen und neu aufnehmen
findings-unseen-cannot-tell = entweder war keiner im Bild oder das Foto ist unscharf (was davon, lässt es nicht erkennen); vergrößert ansehen und neu aufnehmen
