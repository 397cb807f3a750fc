# A fitted camera, on the terminal.
fit-parameter =
    { $name ->
        [focal-u] Brennweite u
        [focal-v] Brennweite v
        [centre-u] Mitte u
       *[centre-v] Mitte v
    }
fit-parameters-head = Parameter mit Standardunsicherheit (1 Sigma):
fit-for-use = Brauchbar: { $answer ->
        [yes] ja
       *[no] NEIN
    }
fit-verdict =
    { $answer ->
        [yes] Brauchbar
       *[no] Nicht brauchbar
    }
fit-forbids = Schließt den Gebrauch aus:
fit-advice =
    { $kind ->
        [forbids] Nicht brauchbar: { $advice }
       *[note] Hinweis: { $advice }
    }
fit-head = { $name }: Objektiv { $model }, { $width } x { $height } px, aus { $count } Fotos
fit-head-noise = RMS { $rms } px je Koordinate, Eckenrauschen { $noise } px (das { $factor }-Fache der Angabe des Detektors), { $freedom } Freiheitsgrade
fit-per-photo = Von Foto zu Foto (1 Sigma): Brennweite { $focal } % ({ $focal_freedom } Freiheitsgrade), Mitte { $centre } px ({ $centre_freedom })
fit-turn = Während die Zeilen gelesen wurden, drehte sich die Kamera um { $turn }° je Achse (1 Sigma)
fit-board = Tafel: um { $bend } mm verbogen (Gipfel bis Tal), dazu in jedem Foto um { $flex } mm anders (1 Sigma); berücksichtigt
fit-seen = Gesehen in { $share } % des Bilds, bis { $tilt }° gegeneinander geneigt, bis { $turn }° gedreht
fit-halves = Zwei Hälften ({ $first } und { $second } Fotos): Projektionen unterscheiden sich um bis zu { $most } px ({ $shape } px ohne Brennweite und Mitte), das { $ratio }-Fache der Angabe ({ $agree ->
        [yes] sie stimmen überein
       *[no] sie widersprechen sich
    })
fit-left-out = Weggelassen: { $file }: { $why }
fit-wrote = geschrieben: { $file }
fit-looked-at = angesehen: { $file }

# Why a photo is left out.
fit-out-size = Es hat { $width } x { $height } px, die anderen { $others_width } x { $others_height } px
fit-out-record = Seine eigenen Angaben nennen eine andere Kamera oder Brennweite als die der anderen Fotos
fit-out-no-board = Kein Teil der Tafel darin gefunden (ein Schachbrett muss ganz zu sehen sein)
fit-out-few-markers =
    { $count ->
        [one] Nur ein Marker der Tafel darin gefunden
       *[other] Nur { $count } Marker der Tafel darin gefunden
    }
fit-out-no-pose = Keine Lage der Tafel erklärt es
fit-out-zoomed =
    { $side ->
        [shorter] Seine Brennweite ist { $off } % kürzer als die der anderen Fotos: gezoomt, beschnitten oder skaliert
       *[longer] Seine Brennweite ist { $off } % länger als die der anderen Fotos: gezoomt, beschnitten oder skaliert
    }
fit-out-misfit = Seine Ecken verfehlen die Ausgleichung { $ratio }-mal so weit wie die anderer Fotos (unscharf, Tafel bewegt oder verbogen?)
fit-out-markers = { $share } % seiner Marker liegen nicht, wo die Tafel sie hat

# What to do about a fit.
fit-part =
    { $part ->
        [upper-left] linke obere Ecke
        [upper] oberer Rand
        [upper-right] rechte obere Ecke
        [left] linker Rand
        [middle] Mitte
        [right] rechter Rand
        [lower-left] linke untere Ecke
        [lower] unterer Rand
        [lower-right] rechte untere Ecke
        [edges] Ränder
       *[corners] Ecken
    }
fit-advice-noise = Die Ecken streuen { $factor }-mal so stark, wie der Detektor angibt: prüfen, ob die Tafel eben und nach ihrer Datei gedruckt ist; die angegebenen Messunsicherheiten berücksichtigen es
fit-advice-too-few = Nur { $count } Fotos waren brauchbar: 12 bis 20 von der Tafel aufnehmen
fit-advice-few = { $count } Fotos sagen wenig darüber, wie Fotos sich unterscheiden: 12 bis 20 aufnehmen
fit-advice-many-out = { $left_out } Fotos wurden weggelassen, { $used } benutzt: nachsehen, warum, und neue aufnehmen
fit-advice-coverage = Die Tafel war in { $share } % des Bilds zu sehen. Noch zu füllen: { $parts } (des gespeicherten Bilds)
fit-advice-alike = Die Fotos gleichen sich: Die Richtung der Tafel unterscheidet sich um höchstens { $tilt }°; die Tafel um 30 bis 45° nach links, rechts, oben und unten neigen (oder um sie herumgehen)
fit-advice-tilt = Die Tafel stärker neigen: Ihre Richtung unterscheidet sich um höchstens { $tilt }°, gut sind 60°
fit-advice-turn = In allen Fotos steht die Tafel gleich herum: die Kamera für einige um ein Viertel drehen
fit-advice-focal = Die Brennweite ist nur auf { $u } % bekannt (nötig: { $most } %): mehr Fotos mit stärker geneigter Tafel
fit-advice-dark = Das angepasste Objektiv zeigt in einem Zehntel des Bilds oder mehr gar nichts: Seine Verzeichnung wurde dort nicht bestimmt, das Bild mit der Tafel füllen
fit-advice-frame = Ein Zehntel des Bilds ist nur auf { $u } px bekannt (nötig: { $most } px). Noch zu füllen: { $parts }
fit-advice-bent = Die Tafel ist um { $bend } mm verbogen: auf eine ebene Platte kleben (Glas, Aluminium) und neu anpassen
fit-advice-no-halves = Zu wenige Fotos, um zwei Hälften zu vergleichen
fit-advice-other-lens = Zwei Hälften der Fotos zeigen verschiedene Objektive: Ihre Projektionen unterscheiden sich irgendwo im Bild um { $shape } px, Brennweite und Mitte ausgenommen (höchstens { $most } px); das Objektivmodell ist das falsche, das Objektiv hat sich zwischen den Fotos geändert, oder zu wenige reichen dorthin
fit-advice-halves-changed = Zwei Hälften der Fotos unterscheiden sich um das { $ratio }-Fache der Angabe (bis { $most } px): Das Objektiv hat sich dazwischen geändert oder die Tafel
fit-advice-halves-enlarged = Zwei Hälften der Fotos unterscheiden sich um das { $ratio }-Fache der Angabe (bis { $most } px); die angegebenen Messunsicherheiten wurden um diesen Faktor vergrößert
fit-advice-better-model = Das Objektiv ist nicht von diesem Modell: mit --model { $model } anpassen, das { $rms } px statt { $own_rms } px Restfehler lässt und dessen Hälften sich um { $shape } px statt { $own_shape } px unterscheiden (Brennweite und Mitte ausgenommen)

# A camera from photos of a kit.
fit-kit-head = { $name }: Objektiv { $model } aus { $used } von { $count } Fotos eines Markersatzes
fit-kit-noise = RMS { $rms } px je Koordinate (das { $factor }-Fache der Angabe des Detektors)
fit-kit-known = Neun Zehntel des Bilds sind auf { $u } px bekannt, Brennweite und Mitte ausgenommen
fit-kit-too-few = Nur { $count } Fotos waren brauchbar: { $least } oder mehr aufnehmen
fit-kit-focal = Die Brennweite ist nur auf { $u } % bekannt (nötig: { $most } %): näher herangehen, sodass nahe und ferne Marker in einem Foto sind
fit-kit-frame = Ein Zehntel des Bilds ist nur auf { $u } px bekannt (nötig: { $most } px): in einigen Fotos Marker in die Ecken bringen oder mit einer Tafel anpassen

# The fitted camera's page.
fit-title = Kameraanpassung: { $name }
fit-lens-title = Objektiv
fit-lens = { $model }, RMS { $rms } px je Koordinate, Eckenrauschen das { $factor }-Fache der Angabe des Detektors.
fit-lens-varies = Von Foto zu Foto (1 Sigma) schwankt die Brennweite um { $focal } % und die Mitte um { $centre } px. Während die Zeilen gelesen wurden, drehte sich die Kamera um { $turn }° je Achse (1 Sigma).
fit-column-parameter = Größe
fit-column-value = Wert
fit-column-u = Standardunsicherheit
fit-circles-title = Wie weit daneben ein Punkt erscheinen kann
fit-circles-drawing = Kreise über dem Bild: wie weit daneben ein Punkt erscheinen kann
fit-circles-size = so groß sind { $size } mm
fit-circles-caption = Ein Punkt { $distance } m vor der Kamera erscheint höchstens so weit neben seinem Ort (95 %), weil das Objektiv nicht genauer bekannt ist: { $best } mm an der am besten, { $worst } mm an der am schlechtesten bekannten Stelle des Bilds. Eine Drehung der ganzen Kamera ist herausgerechnet, denn jedes Foto findet seine eigene. Ein Strich: dort zeigt das Objektiv nichts.
fit-residuals-title = Restfehler
fit-residuals-drawing = Restfehler über dem Bild
fit-residuals-caption = Gefunden minus vorhergesagt für { $count } Ecken aller Fotos, Striche { $factor }-fach vergrößert. Zeigten Nachbarn in vielen Fotos in dieselbe Richtung, wäre das ein Fehler des Objektivmodells.
fit-coverage-title = Wo die Tafel zu sehen war
fit-coverage-drawing = Zahl der Ecken in jedem Teil des Bilds
fit-coverage-caption = Ecken aller Fotos in jedem Teil des gespeicherten Bilds: { $share } % des Bilds. Zwischen den Fotos war die Tafel bis { $tilt }° geneigt und bis { $turn }° gedreht.
fit-halves-title = Zwei Hälften der Fotos
fit-halves-few = Zu wenige Fotos, um zwei Hälften zu vergleichen.
fit-halves-page = Jedes zweite Foto gegen die anderen: Die beiden Objektive bilden einen Punkt höchstens { $most } px auseinander ab ({ $shape } px ohne Brennweite und Mitte), das { $ratio }-Fache der Angabe, wobei bis { $limit } Zufall ist: { $agree ->
        [yes] Sie stimmen überein.
       *[no] Sie widersprechen sich.
    }
fit-photos-title = Fotos
fit-column-photo = Foto
fit-column-corners = Ecken
fit-column-rms = RMS, px
fit-column-focal = Brennweite
fit-column-centre = Mitte, px
fit-corners = { $found } von { $count }
fit-left-out-title = Weggelassen

# A surveyed kit.
fit-survey-title = Einmessung von { $kit }
fit-survey-serial = Seriennummer { $serial }
fit-survey-head = { $name }: { $markers } Marker auf { $carriers } Markerträgern aus { $used } von { $count } Fotos; Ecken streuen um das { $factor }-Fache der Angabe des Detektors, { $freedom } Freiheitsgrade
fit-survey-carrier = { $name }: { $count } Marker, um { $moved } mm je Koordinate daneben, untereinander jetzt auf { $known } mm bekannt
fit-survey-column-marker = Marker
fit-survey-column-photos = Fotos
fit-survey-column-moved = Gefunden - Datei, mm (x y z)
fit-survey-column-u-shape = u unter Markern, mm
fit-survey-column-u-centre = u im Markerträger, mm
fit-survey-column-turned = Gedreht, Grad
fit-survey-column-markers = Marker
fit-length = Länge { $length }: { $against ->
        [sizes] angegebene Markergrößen
       *[others] die anderen
    } ergeben { $expected } mm +- { $u }, E_n { $score }: { $agrees ->
        [yes] stimmt überein
       *[no] WIDERSPRICHT
    }
fit-scale = Maßstab aus { $source ->
        [lengths] den gemessenen Längen
       *[sizes] den angegebenen Markergrößen
    }; Marker sind um { $scale } % +- { $u } % (1 Sigma) gegenüber ihrer Angabe gedruckt
fit-survey-file = Die Orte der Datei lagen um { $off } mm je Koordinate daneben (1 Sigma); das eigene System jedes Markerträgers ist auf dies durch die Wurzel der Zahl seiner Marker bekannt
fit-survey-halves = Zwei Hälften ({ $first } und { $second } Fotos): Mitten unterscheiden sich um { $rms } mm je Koordinate, höchstens { $most } mm (Marker { $marker }), das { $ratio }-Fache der Angabe ({ $agree ->
        [yes] sie stimmen überein
       *[no] sie widersprechen sich
    })
fit-survey-halves-page = Jedes zweite Foto gegen die anderen, { $count } Marker: Mitten unterscheiden sich um { $rms } mm je Koordinate, höchstens { $most } mm (Marker { $marker }). Im Verhältnis zur angegebenen Messunsicherheit ist der Unterschied { $ratio } (bis { $limit } ist Zufall): { $agree ->
        [yes] Die Hälften stimmen überein.
       *[no] Die Hälften widersprechen sich.
    }
fit-survey-photo-out = Weggelassen: { $file }: teilt keinen Marker mit den anderen
fit-survey-left-out = Nicht eingemessen: { $what }: { $why }
fit-survey-left-out-title = Nicht eingemessen
fit-survey-left-out-line = { $what }: { $why }
fit-survey-no-part = nicht beteiligt
fit-survey-scale-title = Maßstab
fit-survey-lengths = Gemessene Längen gegen alles andere; über 1 sagt E_n, dass sie sich widersprechen (ISO/IEC 17043, k = 2):
fit-survey-frame = Fotos legen die Marker gegeneinander fest. Wo das eigene System des Markerträgers liegt (Nabenbezug, Zielpunkt), folgt aus der Datei des Markersatzes: Die gefundene Form wird starr bestmöglich daraufgelegt, und was die Fehler der Datei ({ $off } mm, 1 Sigma, hier gefunden) dabei ausmachen, steckt in „u im Markerträger“.
fit-survey-caption = Gesehen von dort, wohin die Marker blicken, Oberkanten der Codes fett. Rot: von der Mitte der Datei zur gefundenen, { $factor }-fach vergrößert; Scheibe: doppelte Standardunsicherheit. Zahlen: Marker und wie weit er vor (+) seinem Ort gefunden wurde, mm.
fit-survey-drawing = { $carrier }: gefundene Orte der Marker gegenüber der Datei des Markersatzes
fit-survey-markers-on = Marker { $markers } auf { $carrier }
fit-survey-marker = Marker { $marker }
fit-survey-holder = { $name }
fit-survey-unseen =
    { $seen ->
        [none] auf keinem Foto zu sehen
       *[one] auf einem Foto zu sehen, mindestens zwei sind nötig
    }
fit-survey-ambiguous = Zwei Lagen passen gleich gut: von der Seite Fotos aufnehmen, die ihn mit anderen zeigen
fit-survey-one-marker = Sein einziger Marker ist der Markerträger: einzumessen gibt es nur dessen Größe
fit-survey-apart = Weniger als zwei seiner Marker wurden gemeinsam gemessen: Er bleibt, wie die Datei des Markersatzes ihn hat
fit-survey-too-few = Nur { $count } Fotos waren brauchbar: { $enough } von allen Seiten aufnehmen
fit-survey-few = { $count } Fotos können sich kaum widersprechen: { $enough } aufnehmen
fit-survey-length =
    { $against ->
        [sizes] Die Länge { $length } widerspricht den Markergrößen der Datei: erwartet { $expected } mm (E_n { $score }); neu messen, oder die Drucke sind anders groß als angegeben
       *[others] Die Länge { $length } widerspricht den anderen Längen: erwartet { $expected } mm (E_n { $score }); neu messen
    }
fit-survey-no-length = Keine Länge wurde gemessen, der Maßstab ist der der angegebenen Markergrößen: eine möglichst lange messen (--length)
fit-survey-halves-differ =
    { $outcome ->
        [moved] Zwei Hälften der Fotos unterscheiden sich um das { $ratio }-Fache der Angabe (bis { $most } mm, Marker { $marker }): Zwischen den Fotos hat sich etwas bewegt; neu einmessen oder Markerträger getrennt (--apart)
       *[enlarged] Zwei Hälften der Fotos unterscheiden sich um das { $ratio }-Fache der Angabe (bis { $most } mm, Marker { $marker }): Die angegebenen Messunsicherheiten wurden um diesen Faktor vergrößert
    }
fit-survey-no-halves = Zwei Hälften der Fotos lassen sich nicht vergleichen: Es sind zu wenige, oder die Hälfte legt die Marker nicht fest
fit-survey-noise = Ecken streuen { $factor }-mal so stark, wie der Detektor angibt: Marker eben? nichts bewegt? Die angegebenen Messunsicherheiten berücksichtigen es
fit-survey-far-off = Marker sitzen { $off } mm (1 Sigma) von dort, wo die Datei des Markersatzes sie hat; nichts sagt dann, wo Nabenbezug oder Zielpunkt sind: Ist es die Datei dieses Markersatzes, sind Blätter vertauscht? Die Mitten darin berichtigen und neu einmessen
fit-survey-loose = Marker von { $carrier } sind gegen das eigene System (Nabenbezug, Zielpunkt) nur auf { $known } mm bekannt: Die Datei des Markersatzes sagt nicht genauer, wo sie sitzen; am Markerträger messen und die Mitten eintragen
fit-survey-weak =
    { $count ->
        [one] Der Ort von Marker { $markers } ist nicht besser als auf { $most } mm bekannt: mehr Fotos davon aufnehmen, näher und von beiden Seiten
       *[other] Die Orte der Marker { $markers } sind nicht besser als auf { $most } mm bekannt: mehr Fotos davon aufnehmen, näher und von beiden Seiten
    }

# A fixed reference checked again.
fit-recheck = { $day }: { $count } Marker; am weitesten verschoben: Marker { $marker }, { $most } mm; größte Verschiebung das { $sigmas }-Fache ihrer Standardunsicherheit; Abstände { $spacing } %
fit-recheck-moved = Seit der ersten Einmessung hat sich etwas bewegt: die Wand, ein Blatt, oder die Kameradatei stimmt nicht mehr.
fit-recheck-outside = { $name }: { $value } liegt außerhalb der Eingriffsgrenzen { $low } bis { $high }; vor dem nächsten Auftrag den Grund suchen.
fit-recheck-fine = In Ordnung.
fit-recheck-series =
    { $series ->
        [move] Größte Verschiebung, mm
       *[spacing] Abstände, %
    }
fit-recheck-title = Nachmessungen von { $reference }
fit-recheck-chart = Regelkarte: { $name }
fit-recheck-line =
    { $line ->
        [mean] Mittelwert
        [upper] obere Grenze
       *[lower] untere Grenze
    }
fit-recheck-all = Alle Nachmessungen
fit-recheck-note = Verschiebungen gegenüber der ersten Einmessung. Eine Verschiebung um mehr als das { $sigmas }-Fache ihrer Standardunsicherheit ist kein Zufall. Abstände: Abstände zwischen Markern im Verhältnis zu ihren gedruckten Größen; sie sinken, wo Papier gewachsen ist.
fit-recheck-column-day = Tag
fit-recheck-column-most = Am weitesten verschoben: Marker
fit-recheck-column-by = um mm
fit-recheck-column-sigmas = Größte Verschiebung durch ihre Messunsicherheit
fit-recheck-caption = Einzelwertkarte: Mittelwert und Grenzen ({ $factor } mittlere gleitende Spannweiten) der Nachmessungen vor der letzten{ $provisional ->
        [yes] ; vorläufig, bis es { $enough } sind. Eine rote Raute liegt außerhalb.
       *[no] . Eine rote Raute liegt außerhalb.
    }
fit-recheck-no-limits = Grenzen erscheinen mit der dritten Nachmessung.

# Why no camera could be fitted, no kit surveyed.
fit-further = { $first }; { $rest }
fit-of = { $what }: { $why }
fit-no-too-few = Keine Kamera angepasst: { $left } von { $photos } Fotos brauchbar, mindestens 3 sind nötig
fit-no-start = Kein Objektiv erklärt die { $photos } Fotos: Ist es die Tafel der Tafeldatei, eben, und sind die Fotos unbearbeitet?
fit-no-kit = An Fotos des Markersatzes lässt sich keine Kamera anpassen: { $why }
fit-no-settled = Die Ausgleichung von { $photos } Fotos kam nicht zur Ruhe: Sie bestimmen das Objektiv nicht; 12 bis 20 Fotos mit der Tafel in allen Teilen des Bilds aufnehmen, um 30° bis 45° nach allen Seiten geneigt
fit-no-photo = kein Foto angegeben
fit-no-same-size = { $file } hat nicht { $width } x { $height } px wie { $first }: jede Größe für sich anpassen
fit-no-survey = Der Markersatz lässt sich nicht einmessen: { $why }
fit-no-camera = { $file } lässt sich nicht messen: { $why }
fit-no-camera-size = Das Foto hat { $width } x { $height } px, die Kamera { $camera } gilt für { $for_width } x { $for_height } px: das Foto nehmen, wie die Kamera es gespeichert hat
fit-no-camera-fits =
    { $known ->
        [yes] Keine Kameradatei passt ({ $width } x { $height } px, { $make } { $model }): die Kamera mit einer Tafel anpassen oder mit --camera nennen
       *[no] Keine Kameradatei passt ({ $width } x { $height } px, Marke oder Modell nicht vermerkt): die Kamera mit einer Tafel anpassen oder mit --camera nennen
    }
fit-no-camera-two = Zwei Kameradateien passen, { $first } und { $second }: eine mit --camera nennen
fit-no-pair = Kein Markerträger hat zwei Marker, die die { $photos } Fotos zweifelsfrei zusammen festlegen: sechs oder mehr Fotos von allen Seiten aufnehmen, jedes mit möglichst vielen Markern
fit-no-length = Die Länge { $length } ist nicht verwendbar: { $why }
fit-no-length-unseen = Die Fotos zeigen nicht beide Marker zusammen mit anderen (stimmen die Nummern?)
fit-no-length-unmeasured = Einer der beiden Marker wurde nicht gemessen
fit-no-length-contradicts = Die Längen widersprechen den Fotos
fit-no-length-text =
    { $problem ->
        [same] „{ $text }“ hat an beiden Enden dieselbe Ecke: als ID:CORNER,ID:CORNER=MM~U schreiben, etwa 10:0,13:1=1200.4~0.3: Ecken 0 oben links, 1 oben rechts, 2 unten rechts, 3 unten links des aufrechten Markers (oder tl, tr, br, bl), U die Standardunsicherheit in mm
       *[form] „{ $text }“ ist keine Länge: als ID:CORNER,ID:CORNER=MM~U schreiben, etwa 10:0,13:1=1200.4~0.3: Ecken 0 oben links, 1 oben rechts, 2 unten rechts, 3 unten links des aufrechten Markers (oder tl, tr, br, bl), U die Standardunsicherheit in mm
    }
fit-no-first-survey = Die Referenz wurde nie eingemessen: einmal einmessen und gegen den dabei geschriebenen Markersatz prüfen
fit-no-place = Die Fotos legen { $holder } nicht fest: von zwei Seiten aufnehmen
fit-no-holder = Darin wurde kein Markerträger { $holder } gemessen
fit-no-seatings = { $count } Aufspannungen sagen nichts über die Wiederholbarkeit: die Platte mindestens dreimal aufspannen, zehnmal ist gut
