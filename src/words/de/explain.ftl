# Was jeder Befund bedeutet (`explain`, Galerie), wie seine Regel ihn findet, und die Wörter von `explain` selbst.

explain-meaning = Bedeutung
explain-cause = Ursache
explain-look = Hinsehen
explain-remedy = Abhilfe
explain-rationale = Warum
explain-method = Verfahren
explain-level =
    { $level ->
        [void] ungültig
        [stop] Stopp
        [warn] Warnung
       *[note] Hinweis
    }
explain-weight =
    { $level ->
        [void] ungültig: der Messung ist nicht zu trauen, die Fotos müssen neu aufgenommen werden
        [stop] Stopp: nichts wird als innerhalb der Toleranz bezeichnet
        [warn] Warnung: verdient einen Blick
       *[note] Hinweis: gut zu wissen
    }
explain-gallery = `baywitness gallery { $code } --out DIR` zeigt es auf einem erfundenen Kalibrierplatz: Fotos und Werte, ohne den Fehler und mit ihm.
explain-unknown = kein Befund hat den Code { $code }: `baywitness explain` listet alle
explain-did-you-mean = kein Befund hat den Code { $code }; ist { $near } gemeint?
explain-exit-code = Exit-Code { $code }
explain-exit-0 = verify, watch, audit: jeder Auftrag ist innerhalb der Toleranz. check: unverändert und von einem gelisteten Unterzeichner signiert. plan: jede Prüfung ist entscheidbar. Andere Befehle: erledigt.
explain-exit-1 = verify, watch, audit: ein Auftrag ist außerhalb der Toleranz, keiner ist schlechter. check: verändert oder falsch signiert. log check: umgeschrieben, gekürzt, verzweigt oder verändert. log witness: abgelehnt. bay: außerhalb einer Grenze.
explain-exit-2 = Falscher Aufruf oder eine Eingabe, die nicht lesbar ist: eine fehlende oder beschädigte Datei, ein abgeschnittenes Foto. Die Meldung nennt Datei, Stelle und Abhilfe.
explain-exit-3 = verify, watch, audit: ein Auftrag ist nicht nachgewiesen, keiner ist schlechter: die Fotos entscheiden weder so noch so. check: unverändert, aber nicht signiert oder von einem Unterzeichner, der nicht gelistet ist, oder das Urteil wurde beim Nachmessen nicht bestätigt. plan: eine Prüfung ist nicht entscheidbar. setup check: das Vorgabeblatt widerspricht sich, oder kein Markersatz entscheidet alle Prüfungen. log check: es stimmt, aber kein geltender Schlüssel hat es signiert, oder Zeiten sind nicht in Reihenfolge. camera fit, survey, recheck, seating, bay: nicht verwendbar oder nicht nachgewiesen.
explain-exit-4 = verify, watch, audit: ein Auftrag lässt sich aus seinen Fotos nicht messen und muss neu fotografiert werden; der Bericht sagt, warum.

finding-stand-turned =
    .title = Gestell verdreht
    .meaning = Das Gestell steht nicht rechtwinklig zur Bezugslinie.
    .cause = Ein Ende wurde beim Verschieben angestoßen, das Gestell wurde nach dem Stoßfänger oder einer Wand ausgerichtet, oder nach der Mittellinie, wo die Fahrachse gilt.
    .look = Von beiden Enden des Gestells zum jeweils gleichen Punkt der beiden Fahrzeugseiten messen.
    .remedy = Das Gestell um den Betrag drehen, den der Bericht nennt, dann neu fotografieren.
    .scene = Das Ende des Gestells auf der linken Fahrzeugseite wurde zum Fahrzeug hin geschoben.

finding-stand-off-centre =
    .title = Gestell außermittig
    .meaning = Der Zielpunkt liegt seitlich neben seinem Soll.
    .cause = Es wurde nach Augenmaß, nach dem Emblem oder nach dem Kennzeichen gemittet, oder der seitliche Versatz des Sensors wurde vergessen oder zur falschen Seite genommen.
    .look = Am Emblem und am Zielpunkt ein Lot aufhängen und längs der Fahrzeugmitte peilen.
    .remedy = Das Gestell um den Betrag, den der Bericht nennt, seitlich versetzen, rechtwinklig halten, dann neu fotografieren.
    .scene = Das Gestell wurde nach Augenmaß gemittet und steht zu weit auf der rechten Fahrzeugseite.

finding-stand-too-near =
    .title = Gestell zu nah
    .meaning = Der Abstand vom Bezugspunkt zur Zieltafel ist zu klein.
    .cause = Es wurde von einem anderen Punkt des Fahrzeugs aus gemessen, oder zum Fuß oder Mast des Gestells statt zur Tafelfläche.
    .look = Am Bezugspunkt und an der Tafelfläche loten und am Boden messen.
    .remedy = Das Gestell um den Betrag, den der Bericht nennt, vom Fahrzeug weg versetzen, dann neu fotografieren.
    .scene = Der Abstand wurde zum Mast des Gestells statt zur Tafelfläche gemessen.

finding-stand-too-far =
    .title = Gestell zu weit weg
    .meaning = Der Abstand vom Bezugspunkt zur Zieltafel ist zu groß.
    .cause = Es wurde von einem anderen Punkt des Fahrzeugs aus gemessen, oder das Maßband lag nicht gerade.
    .look = Am Bezugspunkt und an der Tafelfläche loten und am Boden messen.
    .remedy = Das Gestell um den Betrag, den der Bericht nennt, zum Fahrzeug hin versetzen, dann neu fotografieren.
    .scene = Das Maßband lag nicht gerade.

finding-stand-too-high =
    .title = Zieltafel zu hoch
    .meaning = Der Zielpunkt liegt über seinem Soll.
    .cause = Die Skala am Mast wurde an der falschen Kante abgelesen, oder die Höhe des vorigen Fahrzeugs blieb eingestellt.
    .look = Mit einem lotrecht gehaltenen Maßstab vom Boden zum Zielpunkt messen.
    .remedy = Die Zieltafel um den Betrag senken, den der Bericht nennt, dann neu fotografieren.
    .scene = Die Skala am Mast wurde an der falschen Kante abgelesen.

finding-stand-too-low =
    .title = Zieltafel zu tief
    .meaning = Der Zielpunkt liegt unter seinem Soll.
    .cause = Die Skala am Mast wurde an der falschen Kante abgelesen, oder die Höhe des vorigen Fahrzeugs blieb eingestellt.
    .look = Mit einem lotrecht gehaltenen Maßstab vom Boden zum Zielpunkt messen.
    .remedy = Die Zieltafel um den Betrag heben, den der Bericht nennt, dann neu fotografieren.
    .scene = Die Höhe des vorigen Fahrzeugs blieb eingestellt.

finding-stand-tilted =
    .title = Zieltafel geneigt
    .meaning = Die Tafelfläche neigt sich nach vorn oder nach hinten.
    .cause = Die Füße wurden nicht ausgerichtet, die Neigung eines anderen Schritts blieb eingestellt, oder es wurde zur falschen Seite geneigt.
    .look = Wasserwaage oder Winkelmesser lotrecht an die Fläche halten.
    .remedy = Die Zieltafel neigen, wie der Bericht es angibt, dann neu fotografieren.
    .scene = Die Neigung eines anderen Schritts blieb eingestellt.

finding-stand-not-level =
    .title = Zieltafel nicht waagerecht
    .meaning = Ein Ende der Zieltafel liegt tiefer als das andere, oder sie steht auf dem Kopf (dann wird nichts gemessen: ungültig).
    .cause = Ein Fuß steht in einer Bodenfuge oder wurde nicht ausgerichtet.
    .look = Eine Wasserwaage auf den Querbalken legen.
    .remedy = Das Gestell an den Füßen waagerecht stellen, dann neu fotografieren.
    .scene = Ein Fuß des Gestells steht in einer Bodenfuge.

finding-stand-moved-between-photos =
    .title = Gestell zwischen den Fotos bewegt
    .meaning = Die Fotos sind sich nicht einig, wo das Gestell gegenüber allem anderen steht: für einige stand es an einer Stelle, für die übrigen an einer anderen.
    .cause = Jemand hat das Gestell gestreift, beiseite gerollt oder nach dem ersten Foto korrigiert.
    .look = Auf den Fotos die Füße des Gestells mit einer Marke am Boden vergleichen, oder den Abstand zu etwas Festem.
    .remedy = Niemand berührt das Gestell; alle Fotos neu aufnehmen. Wurde es mit Absicht bewegt, die späteren Fotos mit `--moved` angeben oder bei ihrem [[photo]] in job.toml `after_move = 1` eintragen.
    .scene = Beim zweiten von vier Fotos ist jemand gegen das Gestell gestoßen.

finding-vehicle-moved-between-photos =
    .title = Fahrzeug zwischen den Fotos bewegt
    .meaning = Radplatten und Fahrzeugfront stehen auf einigen Fotos anders zu Boden und Gestell als auf den übrigen.
    .cause = Das Fahrzeug ist beim Lösen der Bremse gerollt, jemand ist eingestiegen, eine Tür wurde zugeschlagen, oder ein Bodenblatt wurde verschoben.
    .look = Die Reifen mit einer Linie am Boden vergleichen; Keile, die den Reifen nicht berühren, lassen ihn rollen.
    .remedy = Die Räder verkeilen, niemanden einsteigen lassen, das Gestell erneut prüfen und alle Fotos neu aufnehmen.
    .scene = Zwischen dem zweiten und dem dritten Foto wurde die Bremse gelöst.

finding-plate-not-seated =
    .title = Radplatte sitzt nicht auf
    .meaning = Eine Radplatte zeigt in eine Richtung, in die kein Rad zeigen kann, sie sitzt nicht auf ihrer Nabe, oder sie saß auf einem Foto anders als auf einem anderen.
    .cause = Eine Klaue sitzt auf einem Auswuchtgewicht, das Felgenhorn ist verbogen, zwischen Platte und Felge ist Schmutz, oder die Platte ist gerutscht.
    .look = Auf den Rand der Platte drücken: sie darf nicht wackeln. Der Spalt zwischen Platte und Felge muss ringsum gleich sein.
    .remedy = Die Platte auf einer sauberen, unbeschädigten Stelle der Felge neu aufsetzen und alle Fotos neu aufnehmen.
    .scene = Eine Radplatte liegt nicht an der Felge an.

finding-vehicle-sizes-disagree =
    .title = Eingegebene Maße widerlegt
    .meaning = Ein eingegebenes Maß des Fahrzeugs ist ein anderes, als die Fotos zeigen; eines von beiden stimmt nicht.
    .cause = Die Frontmarke wurde neben oder vor der Fahrzeugfront angebracht, eine Radplatte sitzt neben ihrer Nabe, oder es wurden die Maße eines anderen Fahrzeugs eingegeben.
    .look = Mit einem Bandmaß von der Mitte eines Hinterrads zu der des Vorderrads und zur Frontmarke messen.
    .remedy = Marke und Platten dort anbringen, wo sie hingehören, und die Fotos neu aufnehmen, oder die Eingabe berichtigen.
    .scene = Die Frontmarke sitzt 25 mm vor der Fahrzeugfront.

finding-plates-swapped =
    .title = Radplatten oder Markerblätter vertauscht
    .meaning = Zwei Radplatten sitzen jeweils am Rad der anderen, oder Markerblätter sitzen dort, wo laut Satzdatei andere hingehören, oder verdreht.
    .cause = Linke und rechte Platte wurden beim Aufspannen verwechselt; oder Blätter wurden beim Bau oder bei der Reparatur des Satzes an der falschen Stelle angebracht.
    .look = Das Schild jeder Platte nennt ihr Rad und zeigt, wo oben ist; die Nummern der Blätter mit der Zeichnung des Satzes vergleichen.
    .remedy = Jedes Teil dorthin setzen, wo es hingehört, mit der richtigen Seite nach oben, und die Fotos neu aufnehmen.
    .scene = Die hinteren Radplatten wurden jeweils am Rad der anderen aufgespannt.

finding-print-scale-wrong =
    .title = In anderer Größe gedruckt
    .meaning = Die Marker haben, gemessen an ihren Abständen, nicht die Größe, die in der Satzdatei steht.
    .cause = Der Drucker hat die Seite auf seine Ränder angepasst, oder es wurden Blätter eines anderen Satzes angebracht.
    .look = Das schwarze Quadrat eines Markers mit einem Stahlmaßstab in beiden Richtungen messen; das Kontrolllineal auf dem Blatt muss stimmen.
    .remedy = Noch einmal mit 100 % drucken (keine Anpassung an die Seite), oder die gemessene Größe in die Satzdatei eintragen.
    .scene = Die Marker des Gestells wurden an die Seite angepasst gedruckt.

finding-print-not-flat =
    .title = Drucke nicht flach
    .meaning = Was ein Marker zeigt, weicht von dem ab, was ein flacher, gleichmäßig gedruckter zeigen würde; sein Ort ist deshalb weniger genau bekannt.
    .cause = Papier, das sich gelöst hat oder mit Blasen geklebt ist, eine verbogene Platte oder ein Drucker mit ungleichmäßigem Vorschub.
    .look = Ein Lineal mit der Kante über den Druck legen: darunter scheint Licht durch; oder zwei Drucke aneinander halten.
    .remedy = Die Blätter neu kleben, flach und ohne Blasen auf etwas Steifes; eine verbogene Platte ersetzen; auf einem anderen Drucker neu drucken.
    .scene = Jeder Druck liegt in Wellen.

finding-marker-displaced =
    .title = Marker nicht dort, wo der Satz sie hat
    .meaning = Die Marker eines Trägers liegen nicht so zueinander, wie es in der Satzdatei steht; was er markiert, steht deshalb anderswo, als die Fotos zu zeigen scheinen.
    .cause = Ein verbogener oder angestoßener Träger, ein geflicktes oder anderswo angebrachtes Blatt, weniger sorgfältig geklebte Drucke, als in der Datei steht, oder die Datei eines anderen Trägers.
    .look = Ein Lineal an den Träger legen; die Abstände der Blätter mit einem Stahlmaßband gegen die Zeichnung des Satzes prüfen.
    .remedy = In Ordnung bringen, oder den Träger vermessen (baywitness survey) und die Satzdatei benutzen, die dabei entsteht.
    .scene = Blätter am linken Ende des Gestells wurden geflickt und stehen seitdem vor.

finding-marker-duplicated =
    .title = Ein Code zweimal
    .meaning = Derselbe Code kommt auf einem Foto zweimal vor; er wurde auf keinem Foto des Auftrags verwendet.
    .cause = Am Platz liegt ein überzähliger Ausdruck, ein Spiegel oder eine glänzende Fläche zeigt einen Marker, oder zwei Sätze mit denselben Codes sind im Raum.
    .look = Auf dem Foto ein zweites Blatt mit dieser Nummer suchen, auch in Scheiben und auf dem Lack.
    .remedy = Den überzähligen Ausdruck entfernen oder abdecken und die Fotos neu aufnehmen.
    .scene = Am Platz hängt ein zweiter Ausdruck eines Markers.

finding-camera-mismatch =
    .title = Andere Kamera
    .meaning = Die Fotos passen nicht zu dem Objektiv, das die Kameradatei beschreibt.
    .cause = Ein anderes Telefon, ein anderes Objektiv desselben Telefons (Weitwinkel, Tele, Frontkamera), eine Objektivkorrektur oder gespiegelte Vorschau des Telefons, oder die falsche Kameradatei im Auftrag.
    .look = Die Details des Fotos in der Galerie des Telefons nennen Gerät und Objektiv. Zwei Telefone eines Modells schreiben dort dasselbe: passt nur ein Foto nicht, fragen, wer es aufgenommen hat.
    .remedy = Die Fotos mit der vermessenen Kamera und dem vermessenen Objektiv aufnehmen, oder diese Kamera mit einer Tafel vermessen und ihre Datei im Auftrag nennen.
    .scene = Die Fotos wurden mit dem anderen Objektiv des Telefons aufgenommen.

finding-photo-zoomed =
    .title = Foto gezoomt
    .meaning = Ein Foto zeigt alles größer oder kleiner, als seine Kamera es mit der Brennweite der Kameradatei kann.
    .cause = Zwei Finger auf dem Bildschirm, der selbsttätige Objektivwechsel des Telefons, oder ein Ausschnitt, der in der alten Größe gespeichert wurde.
    .look = Die Galerie des Telefons zeigt Zoom oder Brennweite in den Details des Fotos; das Bild zeigt weniger vom Platz als die anderen.
    .remedy = Die Kamera auf das einfache 1x-Objektiv stellen und das Foto neu aufnehmen.
    .scene = Eines von vier Fotos wurde mit Digitalzoom aufgenommen.

finding-photo-resized =
    .title = Foto in anderer Größe
    .meaning = Das Foto ist nicht so groß, wie seine Kamera Bilder speichert.
    .cause = Ein Messenger, ein Mailprogramm oder eine Bilder-App hat es unterwegs verkleinert, oder es wurde beschnitten.
    .look = Die Galerie des Telefons zeigt die Größe des Originals in Pixeln.
    .remedy = Die Originaldatei per Kabel oder als Datei vom Telefon kopieren, nicht als Bild in einer Nachricht.
    .scene = Ein Messenger hat eines von vier Fotos verkleinert.

finding-photo-blurred =
    .title = Unscharf
    .meaning = Die Kanten der Marker sind zu weich, um gut messbar zu sein.
    .cause = Die Hand hat sich bewegt, es war dunkel, das Objektiv war schmutzig, oder es wurde auf etwas Nahes scharf gestellt.
    .look = Einen Marker am Telefon vergrößern: seine kleinen Quadrate müssen scharfe Kanten haben.
    .remedy = Das Objektiv abwischen, die Ellbogen aufstützen, mehr Licht machen, zum Scharfstellen auf das Gestell tippen und das Foto neu aufnehmen.
    .scene = Das Telefon wurde beim letzten Foto bewegt.

finding-photo-badly-lit =
    .title = Schlecht beleuchtet
    .meaning = Licht verdirbt ein Foto: eine Lampe blendet in einem Marker, Weiß ist überstrahlt, oder es ist zu dunkel.
    .cause = Eine Lampe oder die Sonne spiegelt sich im Winkel der Kamera auf einem glänzenden Ausdruck, der Blitz des Telefons war an, oder der Platz ist dunkel.
    .look = Den Marker vergrößern: weiße Flecken, wo Schwarz sein müsste, oder Grau auf Grau.
    .remedy = Einen Schritt zur Seite gehen, bis die Spiegelung den Marker verlässt, den Blitz ausschalten, mattes Papier und gleichmäßiges Licht verwenden und das Foto neu aufnehmen.
    .scene = Das letzte Foto ist überbelichtet: weißes Papier läuft in das Schwarz.

finding-photo-light-changed =
    .title = Licht vom Telefon verändert
    .meaning = Das Telefon hat dunkle Stellen aufgehellt und helle abgedunkelt, sodass die Kanten der Marker weniger genau bekannt sind.
    .cause = HDR, Nachtmodus, Szenenoptimierung oder ein Filter, oder starkes Licht neben tiefem Schatten, das Telefone dazu bringt.
    .look = Einen Marker vergrößern: nahe den Kanten ist Weiß heller und Schwarz dunkler als in der Mitte der Quadrate.
    .remedy = HDR, Nachtmodus und Szenenoptimierung ausschalten, oder ein Rohbild aufnehmen und schlicht entwickeln; den Platz gleichmäßiger beleuchten; ein weiteres Foto aufnehmen oder näher herangehen.
    .scene = Das Telefon hat auf jedem Foto von Stelle zu Stelle Dunkles aufgehellt und Helles abgedunkelt.

finding-photo-reused =
    .title = Foto zweimal verwendet
    .meaning = Zwei der Fotos sind dasselbe Bild, vielleicht neu gespeichert, beschnitten oder gespiegelt.
    .cause = Eine Datei wurde unter anderem Namen kopiert, zweimal gesendet oder so bearbeitet, dass sie wie ein zweites Foto aussieht; oder die Kamera stand auf einem Stativ.
    .look = Die beiden Bilder übereinanderlegen: alles deckt sich, auch Menschen und Schatten.
    .remedy = Das zweite Foto von einer anderen Stelle aufnehmen.
    .scene = Das erste Foto wurde noch einmal als viertes gespeichert.

finding-photos-too-alike =
    .title = Fotos zu ähnlich
    .meaning = Zwei Fotos wurden aus fast derselben Richtung aufgenommen und zählen deshalb als eines.
    .cause = Beide wurden von derselben Stelle aus aufgenommen.
    .look = Die beiden Bilder nebeneinanderlegen: das Gestell verdeckt denselben Teil des Fahrzeugs.
    .remedy = Eines davon von der anderen Seite des Gestells aufnehmen.
    .scene = Zwei von drei Fotos wurden von fast derselben Stelle aufgenommen.

finding-carrier-not-seen =
    .title = Nicht gesehen
    .meaning = Ein Teil des Markersatzes ist auf keinem brauchbaren Foto, oder nur so, dass zwei Lagen gleich gut passen.
    .cause = Es stand hinter etwas, außerhalb des Bildes, zu weit weg oder mit der Kante zur Kamera.
    .look = Die Fotos öffnen: sind mindestens zwei seiner Marker ganz, scharf und größer als ein Daumennagel?
    .remedy = Ein weiteres Foto aufnehmen, das es zusammen mit zwei anderen Teilen des Satzes zeigt.
    .scene = Ein Bodenblatt wurde nicht ausgelegt.

finding-floor-not-level =
    .title = Boden nicht eine Ebene
    .meaning = Der Boden knickt zwischen Fahrzeug und Gestell ab, ein Blatt liegt nicht flach auf ihm, oder die Räder stehen nicht gleich auf der Ebene der Blätter.
    .cause = Eine Rinne, eine Rampe, eine Fuge zwischen Platten, ein gewelltes oder aufgebocktes Blatt, ein platter Reifen, ein Rad auf einem Klotz oder einer Drehplatte; oder die eingegebene Nabenhöhe ist falsch.
    .look = Ein Richtscheit oder eine Schlauchwaage quer über den Platz legen; die Ecken des Blattes andrücken.
    .remedy = Das Blatt glatt auslegen; liegt es am Boden, einen ebenen Platz verwenden.
    .scene = Der Boden steigt vor dem Fahrzeug an.

finding-steering-not-straight =
    .title = Lenkung nicht geradeaus
    .meaning = Die Vorderräder zeigen zu einer Seite der Mittellinie.
    .cause = Das Lenkrad war beim Abstellen eingeschlagen oder wurde beim Aussteigen bewegt; oder es steht bei Geradeausfahrt nicht mittig.
    .look = Die Speichen des Lenkrads und den Spalt zwischen Vorderreifen und Kotflügel auf beiden Seiten ansehen.
    .remedy = Das Fahrzeug einige Meter geradeaus rollen, die Lenkung mittig stellen, das Gestell erneut prüfen und die Fotos neu aufnehmen.
    .scene = Die Vorderräder stehen nicht geradeaus.

finding-weak-geometry =
    .title = Zu schwach für einen Nachweis
    .meaning = Mit diesen Fotos ließe sich für keine Stellung des Gestells nachweisen, dass sie innerhalb einer Toleranz ist, oder das Ergebnis hängt stärker von einem Foto oder einem Markerträger ab, als seine Messunsicherheit zulässt.
    .cause = Zu wenige Fotos, alle von einer Seite, Radplatten nur an zwei Rädern, oder kleine, weit entfernte Marker.
    .look = Die Unsicherheitstabelle des Berichts zeigt, woher der größte Anteil kommt.
    .remedy = Fotos hinzufügen, die weiter auseinander liegen und beide Flügel der Radplatten zeigen; wo nur zwei Räder Platten tragen, alle vier damit versehen.
    .scene = Das Blatt verlangt eine kleinere Toleranz, als diese Fotos nachweisen können.

finding-wrong-datum-suspected =
    .title = Falscher Bezugspunkt vermutet
    .meaning = Ein Wert, der weit daneben liegt, wäre richtig, wenn er von einem anderen Punkt, zur anderen Seite, mit anderem Vorzeichen, in anderer Einheit oder für einen anderen Schritt gemessen worden wäre.
    .cause = Vom Emblem, vom Stoßfänger oder von der Achse statt vom Bezugspunkt gemessen, zum Mast statt zur Tafelfläche, zum Rand der Tafel statt zu ihrer Mitte; Versatz zur falschen Seite genommen; Ziffern vertauscht; das Blatt in der falschen Spalte gelesen.
    .look = Die Zeile des Blattes noch einmal lesen, laut, mit dem Finger am Fahrzeug auf dem Punkt, den sie nennt.
    .remedy = Das Gestell nach dem richtigen Punkt, Vorzeichen und der richtigen Einheit stellen; die Werte des Berichts ändern sich durch die Vermutung nicht.
    .scene = Der Versatz des Sensors von 60 mm wurde zur falschen Seite genommen.

finding-reading-disagrees =
    .title = Ablesung widerspricht
    .meaning = Ein am Fahrzeug abgelesener Wert und die Fotos schließen einander im Rahmen ihrer Messunsicherheiten aus. Wurde die Ablesung im Ergebnis verwendet oder entscheidet sie eine Prüfung des Blatts, hält der Widerspruch den Auftrag an, und die verwendete Ablesung bleibt aus dem Ergebnis heraus. Ebenso zwei Ablesungen derselben Größe, die einander ausschließen.
    .cause = Es wurde an einem anderen Punkt abgelesen, beim Eintippen wurden Ziffern vertauscht, der Laser stand nicht rechtwinklig oder das Maßband hing durch; oder die Fotos sind falsch.
    .look = Noch einmal ablesen, an dem Punkt, den das Blatt nennt, und laut vorlesen, was eingetippt wird.
    .remedy = Die Ablesung berichtigen oder den Punkt suchen, an dem abgelesen wurde; bleibt sie, die Fotos neu aufnehmen.
    .scene = Der Laser wurde an einen anderen Punkt des Fahrzeugs gehalten.

finding-times-out-of-order =
    .title = Zeiten nicht in der Reihenfolge
    .meaning = Nach ihren eigenen Uhren folgen Fotos, Auftrag und Kalibrierung nicht so aufeinander, wie sie sollten.
    .cause = Es wurden Fotos eines früheren Auftrags gewählt, ältere wurden als Fotos nach einem Versetzen des Gestells eingetragen, die Kalibrierung lief vor der Aufnahme der Fotos, oder die Uhr eines Geräts geht falsch.
    .look = Die Zeiten im Bericht mit dem Diagnosebericht und der Wanduhr vergleichen.
    .remedy = Die Uhren richtig stellen; sind die Fotos wirklich aus einer anderen Zeit, neue aufnehmen.
    .scene = Die Kalibrierung lief eine halbe Stunde vor der Aufnahme der Fotos.

finding-photo-of-another-day =
    .title = Foto von einem anderen Tag
    .meaning = Nach seinen eigenen Angaben wurde das Foto an einem anderen Tag als der Auftrag aufgenommen. Das beweist nicht, dass es so war.
    .cause = Es wurde ein Foto eines früheren Auftrags gewählt, der Auftrag wurde Tage später geschrieben, oder das Datum des Telefons ist falsch.
    .look = Das Datum in der Galerie des Telefons mit dem des Auftrags vergleichen, und das Fahrzeug auf dem Foto mit dem des Auftrags.
    .remedy = Die Fotos dieses Auftrags verwenden; das Datum des Telefons richtig stellen und die Zeitzone mitschreiben lassen.
    .scene = Eines von vier Fotos ist vom Vortag; keines nennt seine Zeitzone.

finding-photo-edited =
    .title = Foto von einem Programm geschrieben
    .meaning = Die Datei trägt Spuren eines Programms, das sie nach der Kamera geschrieben hat. Das beweist nicht, dass am Bild etwas verändert wurde.
    .cause = Das Foto wurde in einer Galerie oder einem Bildprogramm gedreht, beschnitten oder verbessert, oder aus einer App exportiert statt kopiert.
    .look = Mit dem Original auf dem Telefon vergleichen: dessen Details nennen die Aufnahmezeit und das Programm, das es geschrieben hat.
    .remedy = Die Originaldatei vom Telefon kopieren und neu prüfen; die bearbeitete beiseitelegen.
    .scene = Eines von vier Fotos ging durch ein Programm, das sich in den Angaben nennt.

finding-thumbnail-differs =
    .title = Vorschaubild eines anderen Fotos
    .meaning = Das kleine Bild, das die Kamera in die Datei legte, zeigt nicht, was das Foto zeigt. Das beweist keine Absicht.
    .cause = Ein Programm hat das Bild ersetzt oder beschnitten und das alte Vorschaubild gelassen, oder ein Gerät hat ein falsches geschrieben.
    .look = Das Vorschaubild mit einem Betrachter für Fotodaten öffnen und neben das Foto legen.
    .remedy = Die Originaldatei vom Telefon liefern; ist sie verloren, das Foto neu aufnehmen.
    .scene = Das Vorschaubild des zweiten Fotos ist das des dritten; die übrigen haben ihr eigenes.

finding-photo-rendered =
    .title = Gerendertes Foto
    .meaning = Dieses Programm hat das Bild gemacht; keine Kamera hat es aufgenommen. Der Auftrag sagt nicht, dass er ein Muster oder eine Übung ist.
    .cause = Fotos eines Musters, einer Übung oder einer Szenendatei gerieten unter die Fotos eines Auftrags, oder jemand gibt erfundene Fotos als echte aus.
    .look = Die Details der Datei nennen den Renderer, wo sie nicht entfernt wurden; das Bild zeigt das erfundene Fahrzeug.
    .remedy = Die Fotos übergeben, die am Arbeitsplatz aufgenommen wurden. Zur Übung rendered = true in job.toml schreiben; der Bericht sagt es dann in seiner ersten Zeile.
    .scene = Der richtige Arbeitsplatz, dessen Auftragsdatei nicht sagt, dass seine Fotos gerendert sind.

finding-noise-repeated =
    .title = Gleiches Rauschen in zwei Fotos
    .meaning = Marker gleicher Form haben Pixel für Pixel dasselbe Rauschen in zwei Fotos, die nicht dasselbe Bild sind.
    .cause = Ein zweites Foto wurde aus dem ersten gemacht, indem ein Teil verschoben wurde; oder ein stark geglättetes Foto vom Stativ zeigt das Korn des Drucks selbst.
    .look = Beide Fotos vergrößert übereinanderlegen: das Korn auf Weiß und Schwarz fällt zusammen.
    .remedy = Das Foto neu aufnehmen und die Datei übergeben, die die Kamera geschrieben hat.
    .scene = Das Foto nach einer Bewegung des Gestells wurde aus dem ersten gemacht: nur das Gestell steht anderswo.

finding-markers-without-noise =
    .title = Marker ohne das Rauschen des Fotos
    .meaning = Weiß und Schwarz der Marker eines Markerträgers sind viel glatter als bei allen übrigen Markern desselben Fotos.
    .cause = Die Marker wurden von einem Programm in das Foto gezeichnet; oder etwas Glattes trägt sie, etwa ein Bildschirm.
    .look = Das Foto vergrößern: die übrigen Marker sind körnig, diese nicht.
    .remedy = Die Originaldatei vom Telefon übergeben oder das Foto neu aufnehmen.
    .scene = Im zweiten von zwei Fotos hat ein Programm die Marker des Gestells eingesetzt.

finding-compression-differs =
    .title = Marker ohne die frühere Kompression des Fotos
    .meaning = Das Foto wurde schon einmal als JPEG gespeichert und dann noch einmal, und alle Marker zeigen das außer denen eines Markerträgers.
    .cause = Ein Bildprogramm hat das Foto geöffnet, die Marker wurden eingesetzt, gedreht oder verschoben, und es wurde noch einmal gespeichert.
    .look = Die Datei verlangen, wie das Telefon sie gespeichert hat: sie wurde einmal komprimiert.
    .remedy = Die Originaldatei vom Telefon abgeben oder das Foto noch einmal aufnehmen.
    .scene = Das zweite von zwei Fotos wurde gespeichert, dann wurden die Marker des Gestells eingesetzt, und es wurde noch einmal gespeichert.

finding-focal-length-contradicts =
    .title = Angaben mit anderer Brennweite
    .meaning = Die Angaben im Foto nennen einen Bildwinkel, den das Bild nicht hat. Das beweist keine Absicht.
    .cause = Das Bild wurde beschnitten und vergrößert, Angaben wurden von einem anderen Foto kopiert, oder das Gerät schreibt einen falschen Wert.
    .look = Mit derselben Kamera und demselben Objektiv ein neues Foto aufnehmen und den Wert in dessen Details vergleichen.
    .remedy = Die Originaldatei liefern; schreibt das Gerät immer diesen Wert, es im Auftrag vermerken.
    .scene = Die Angaben eines Fotos nennen eine längere Brennweite, als verwendet wurde.

finding-markers-of-another-kit =
    .title = Marker eines anderen Satzes
    .meaning = Die Fotos zeigen Marker, die der Markersatz des Auftrags nicht hat. Sie blieben außer Acht; was mit den anderen gemessen wurde, ist in Ordnung.
    .cause = Ein zweiter Satz oder eine Kameratafel steht am Platz, oder der Auftrag nennt einen anderen Satz als den verwendeten.
    .look = Die Nummern der Meldung auf den Fotos und auf den Deckblättern der Sätze suchen.
    .remedy = Im Auftrag den verwendeten Satz nennen; andere Sätze wegräumen, damit niemand die Markerträger verwechselt.
    .scene = Am Platz hängen Marker eines zweiten Satzes.

finding-card-not-seen =
    .title = Auftragskarte auf keinem Foto
    .meaning = Der Auftrag hat eine einmalige Karte, und kein Foto zeigt alle ihre Marker; nichts weist also nach, dass die Fotos für ihn aufgenommen wurden.
    .cause = Die Karte lag flach oder zu weit weg, etwas stand davor, oder die Fotos sind älter als die Karte.
    .look = Die Fotos öffnen: steht die Karte aufrecht und ist sie so groß wie der Marker einer Radplatte?
    .remedy = Die Karte aufrecht dorthin stellen, wo die Fotos sie zeigen, auf die Motorhaube oder neben das Gestell, und ein weiteres Foto aufnehmen.
    .scene = Die Auftragskarte wurde im Büro vergessen.

finding-card-of-another-job =
    .title = Ein Foto zeigt die Karte eines anderen Auftrags
    .meaning = Auf einem Foto wurden Marker gefunden, die Karten vorbehalten sind, aber nicht der Code dieses Auftrags.
    .cause = Fotos zweier Aufträge wurden vermischt, oder die alte Karte blieb am Platz.
    .look = Die Nummern der Meldung mit der Karte auf der Werkbank vergleichen.
    .remedy = Dieses Foto weglassen oder mit der Karte dieses Auftrags neu aufnehmen.
    .scene = Auf dem Fahrzeug steht noch die Karte des vorigen Auftrags.

finding-prerequisite-not-met =
    .title = Voraussetzung nicht erfüllt
    .meaning = Nach Angabe des Technikers trifft etwas nicht zu, was das Blatt verlangt.
    .cause = Reifen, Beladung, Kraftstoff, Fahrwerk oder Lenkung waren nicht so, wie das Verfahren es verlangt.
    .look = Die Liste des Blattes am Fahrzeug durchgehen.
    .remedy = In Ordnung bringen, warten, bis sich das Fahrwerk gesetzt hat, und die Fotos neu aufnehmen.
    .scene = Der Techniker gibt an, dass der Reifendruck nicht eingestellt ist.

finding-record-incomplete =
    .title = Angaben unvollständig
    .meaning = Das Blatt verlangt eine Antwort, die der Auftrag nicht gibt, im Ordner des Auftrags liegen Fotos, die er nicht aufführt, oder Fotos zeigen das Gestell in einem Schritt, den keine Prüfung betrifft.
    .cause = Eine Frage des Auftrags wurde übersprungen; oder Fotos wurden aus der Liste des Auftrags genommen und nicht aus dem Ordner; oder ein Schritt wurde für Fotos gemacht, die widersprechen würden.
    .look = Der Bericht führt auf, was gefragt und was geantwortet wurde, und nennt die Fotos.
    .remedy = Im Abschnitt [prerequisites] des Auftrags so antworten, wie es war, als die Fotos aufgenommen wurden; die Fotos aufführen, oder die von anderem nach aside legen.
    .scene = Niemand hat beantwortet, ob der Reifendruck eingestellt ist.

finding-credentials-lacking =
    .title = Herkunftsnachweise fehlen
    .meaning = Das Vorgabeblatt will wissen, welche Kamera die Fotos aufgenommen hat, von der Kamera selbst unterzeichnet. Mindestens ein Foto, das zählt, trägt keine Herkunftsnachweise, gebrochene oder solche eines unbekannten Unterzeichners, oder führt Bearbeitungen auf. Gegen das Gemessene sagt das nichts.
    .cause = Telefon oder Kamera unterzeichnet nicht, ein Kurznachrichtendienst oder eine Galerie hat die Datei entkleidet oder neu geschrieben, es wurden keine Vertrauensanker genannt, oder das Programm wurde ohne Herkunftsnachweise gebaut.
    .look = Der Bericht nennt die Herkunftsnachweise jedes Fotos; jedes Leseprogramm für C2PA-Manifeste zeigt dasselbe an der Originaldatei.
    .remedy = Die Fotos mit einer Kamera aufnehmen, die unterzeichnet, die Originaldateien kopieren und die Vertrauensanker des Kameraherstellers nennen (--credential-anchors); sonst das Blatt von dem ändern lassen, der es geschrieben hat.
    .scene = Das Blatt verlangt Herkunftsnachweise, und die Fotos tragen keine.

finding-not-checked =
    .title = Nicht geprüft
    .meaning = Das Vorgabeblatt sagt nichts zu einer Größe, die die Stellung des Gestells bestimmt.
    .cause = Das Blatt wurde nur für einen Teil der Arbeit geschrieben.
    .look = Das Blatt mit den Serviceinformationen des Fahrzeugherstellers vergleichen.
    .remedy = Dem Blatt eine Prüfung hinzufügen oder mit Begründung auf die Größe verzichten.
    .scene = Das Blatt prüft die Querneigung nicht und verzichtet auch nicht auf sie.

## Wie Regeln suchen: warum es zählt; wie gefunden wird, Rate falscher Alarme, was nicht gesehen wird.

finding-rule-stand-misplaced =
    .rationale = Der Sensor lernt die Stellung des Gestells, als wäre sie die des Fahrzeugs: sein Fehler ist der Fehler des Gestells.
    .method = Eine Prüfung, die nach der Entscheidungsregel des Blattes außerhalb ihrer Toleranz ist; die Rate falscher Alarme ist die der Regel.

finding-rule-something-moved =
    .rationale = Alle Fotos werden gemeinsam gemessen. Ein Gestell, das zwischen zweien angestoßen wurde, steht dort, wo keines es zeigt.
    .method = Score-Test (Rao 1948) auf eine eigene Lage eines Körpers, oder auf eine gemeinsame Verschiebung von allem am Fahrzeug in Richtung der Räder, auf einigen der Fotos: jeder Schnitt durch die Reihe und jedes Foto für sich; bei Fotos von vor und nach einer Bewegung des Gestells auch auf jede Verschiebung des Fahrzeugs am Boden. Von allen möglichen Erklärungen muss diese die beste sein, mit einer Zufallswahrscheinlichkeit unter 1e-4 in einem fehlerfreien Auftrag, und größer als 2,5 mm oder 0,12° (Fahrzeug: 1,5 mm). Die Fotos müssen auch durch andere Körper verbunden sein: ein Körper, der zwei Fotos als einziger gemeinsam ist, hat keine Redundanz.

finding-rule-sheet-slid =
    .rationale = Wer ein Gestell bewegt, tritt auf Blätter. Fotos von vor und nach der Bewegung sind durch Blätter und Radplatten verbunden: ist eines verrutscht, weiß niemand, was noch.
    .method = Ein Blatt, von dem auf einem Foto keine Ecke verwendet wurde, wohl aber auf Fotos zwischen anderen Bewegungen des Gestells: seine Verschiebung am Boden (zwei Koordinaten, eine Drehung) wird an sie angepasst. Es wurde verschoben, wenn eine Ecke weiter als 2,5 mm wanderte und der Rest unter 0,2 px oder einem Siebtel der Abweichung liegt; ein Schatten oder ein Stiefel lässt die Form des Drucks nicht bestehen. Verwendete Blätter erfasst die Suche nach Bewegungen zwischen den Fotos.

finding-rule-phases-differ =
    .rationale = Fotos von vor und nach der Kalibrierung weisen nach, dass sich währenddessen nichts bewegt hat.
    .method = Eine Ausgleichung, in der Gestell und Radplatten über denselben Bodenblättern für jede Phase eine Lage haben; der Unterschied gegen seine eigene Kovarianz (Wald-Test), Zufallswahrscheinlichkeit unter 1e-4 und größer als 2,5 mm oder 0,12°. Wird er gefunden, gelten für die Prüfungen die Fotos von vorher.

finding-rule-plates-swapped =
    .rationale = Jede Radplatte gehört auf eine bestimmte Seite des Fahrzeugs, jedes Blatt an seine Stelle auf dem Markerträger; vertauscht messen sie einen anderen Körper.
    .method = Die linke Platte muss links der Linie von den Hinterrädern zum Gestell liegen, die vordere vor der hinteren derselben Seite, und das Oben jeder Platte muss nach oben zeigen. Blätter: auf jedem Foto liegt ein Marker dort, wo der Satz einen anderen hat, viermal näher als an seiner eigenen Stelle, oder an seiner eigenen Stelle, aber verdreht. Exakt; keine falschen Alarme. Bodenblätter, die eigene Körper sind, dürfen beliebig liegen: sie zu vertauschen ändert nichts.

finding-rule-plate-not-seated =
    .rationale = Eine Platte, die nicht bündig am Rad sitzt, zeigt anderswohin als das Rad: Fahrachse und Spur folgen der Platte.
    .method = Unterschied der Richtungen der beiden Platten einer Achse (Gesamtspur), der bei jedem Straßenfahrzeug klein ist: mehr als 0,55° (übliche Praxis, keine Quelle) mit einer Wahrscheinlichkeit von 0,95. Außerdem eine eigene Lage der Platte auf einigen Fotos (Score-Test, Zufallswahrscheinlichkeit unter 1e-4). Nicht gesehen werden zwei Platten, die um denselben Winkel schief sitzen, und eine Platte, die um ihre Achse verdreht ist, was nichts ändert.

finding-rule-plate-off-hub =
    .rationale = Eine Platte, die auf allen Fotos gleich weit neben der Nabe ihres Rades sitzt, versetzt die Achse und mit ihr die Mittellinie und alles, was von ihr aus gemessen wird; die Fotos stimmen trotzdem miteinander überein.
    .method = Der Fahrachswinkel, mehr als 1° (übliche Praxis, keine Quelle) mit einer Wahrscheinlichkeit von 0,95, wo die Gesamtspur der Achse ihn nicht von einer Platte unterscheidet, die nicht bündig sitzt; und die vordere Spurweite gegen die hintere, von Nabe zu Nabe, mehr als 100 mm (übliche Praxis, keine Quelle) mit derselben Wahrscheinlichkeit. Kleinere Versätze werden nur an eingegebenen Maßen gesehen, und zwei gleich weit zur Seite versetzte Platten einer Achse kaum.

finding-rule-vehicle-sizes-disagree =
    .rationale = Eine Frontmarke vor der Fahrzeugfront oder eine Platte neben ihrer Nabe ist auf jedem Foto dieselbe, und keine Restabweichung zeigt sie: das tut, was vom Fahrzeug bekannt ist.
    .method = Radstand, Fahrzeugfront vor der Hinterachse und beide Spurweiten, wie sie eingegeben sind, jeweils gegen das, was die Fotos davon zeigen: mehr als vier Standardunsicherheiten beider zusammen (Zufallswahrscheinlichkeit unter 1e-4) und 5 mm (übliche Praxis, keine Quelle). Nicht genannt, wo schon etwas anderes jeden Wert verdirbt. Nicht gesehen werden Maße, die nicht eingegeben sind, und was keines von ihnen ändert, etwa eine Frontmarke seitlich der Fahrzeugfront.

finding-rule-print-scale-wrong =
    .rationale = Ein Druck mit 97 % lässt seinen Markerträger 3 % weiter weg erscheinen.
    .method = Score-Test auf einen Faktor der Größen aller Marker eines Markerträgers, aller Bodenblätter oder aller Radplatten, und auf einen aller Marker. Der Faktor aller Marker wird von der Brennweite der Kamera allein durch die Abstände der Marker auf einem Markerträger unterschieden; reicht das nicht, wird die konkurrierende Erklärung genannt. Beste aller möglichen Erklärungen, Zufallswahrscheinlichkeit unter 1e-4, mehr als 0,15 % auf einem Markerträger oder einer solchen Gruppe, und mit derselben Sicherheit mehr als 0,05 %; mehr als 0,3 % auf allen. Nicht gesehen: ein Markerträger mit nur einem Marker, dessen Abstand sonst nichts festlegt.

finding-rule-print-not-flat =
    .rationale = Ein Marker wird als flaches Quadrat vermessen. Gewölbtes Papier zeigt sein Muster an anderer Stelle, von jeder Seite anders, und zieht Abstände und Winkel mit; keine Zahl von Pixeln mittelt das weg.
    .method = Die Restabweichungen sagen, wie groß glatte Verschiebungen im Bild jedes Markers sind: Wölbungen (Polynome zweiten Grades, außer was wie Perspektive aussieht) und Wellen (dritten und vierten Grades), über das hinaus, was Blöcke von Restabweichungen streuen; das schlechteste Fünftel der Marker eines Fotos spricht nicht für die anderen. Unter 0,0002 der Seite (höchstens 0,03 px; das 2,5-Fache, wo das Telefon die Helligkeit verändert hat) gelten sie als keine. Was sie an den Ecken bewirken, ist Teil ihrer Unsicherheit. Genannt, wo die Hälfte dessen, was die Fotos von einem Träger zeigen, um mehr als 0,001 der Seite abweicht; gerenderte Nachtfotos flacher Drucke erreichen 0,0007. Warnung, wo eine Prüfung nicht nachgewiesen ist, sonst Hinweis. Der Befund selbst verschlechtert nichts: die Messunsicherheiten enthalten es bereits. Nicht gesehen werden eine Wölbung, die wie eine andere Blickrichtung aussieht, und Drucke, die als Ganzes verschoben, verdreht, gestreckt oder geschert sind.

finding-rule-marker-displaced =
    .rationale = Orte auf einem Träger sind so genau bekannt, wie seine Satzdatei angibt, und um so viel lässt die Ausgleichung sie nachgeben; gäbe sie mehr nach, ginge ein um Millimeter verbogener Träger als anderer Ort des Gestells durch.
    .method = Die Quadrate dessen, was die Orte eines Trägers nachgaben, jedes in seiner Standardunsicherheit, werden summiert: höchstens ein Chi-Quadrat, wo die Datei stimmt; Zufallswahrscheinlichkeit unter 1e-6. Genannt werden Marker, deren eigener freier Ort (Score-Test, drei Koordinaten) eine solche Wahrscheinlichkeit hat und um mehr als 0,75 mm abweicht, und solche, die an keinem Foto teilhatten, oder mit anderen ihres Trägers an einem nicht, während alle ihre Ecken gleich weit danebenliegen, um mehr als 0,5 px. Von Orten ist nicht die Rede, wo etwas anderes die Fotos besser erklärt. Nicht gesehen: alle Marker eines Trägers, gleich versetzt.

finding-rule-camera-mismatch =
    .rationale = Eine Kameradatei gilt für ein Objektiv eines Geräts; durch ein anderes biegen sich gerade Linien anders, und alles verschiebt sich.
    .method = EXIF gegen die Kameradatei: exakt, wo beide etwas sagen. Aus der Ausgleichung: ein Brennweitenfaktor, der allen Fotos einer Kamera gemeinsam ist, mehr als 1 % daneben; oder der Score-Test eines freien Objektivs (Brennweiten, Hauptpunkt, Verzeichnung) als beste Erklärung mit einer Zufallswahrscheinlichkeit unter 1e-4, wo die Restabweichungen mehr als doppelt so groß sind, wie der Detektor angibt. Derselbe Test des Objektivs eines einzelnen Fotos erkennt ein anderes Telefon desselben Modells, was EXIF nicht kann. Ein vor dem Speichern um 180 Grad gedrehtes Bild: der Score-Test dieser einen Änderung des Objektivs (Hauptpunkt und Dezentrierung auf der anderen Seite); ein Objektiv genau in der Bildmitte verrät sie nicht. Ein gespiegeltes Bild: exakt. Nicht gesehen wird ein anderes Gerät mit gleichem Objektiv.

finding-rule-photo-zoomed =
    .rationale = Die Kameradatei gilt für eine Brennweite; ein gezoomtes Foto lässt alles näher erscheinen.
    .method = Digitalzoom in EXIF über 1,02, oder die bestimmte Brennweite eines Fotos mehr als 1 % und fünf Standardunsicherheiten neben ihrem Vorwissen (Zufallswahrscheinlichkeit 6e-7), oder der Score-Test einer freien Brennweite als beste Erklärung (Zufallswahrscheinlichkeit unter 1e-4). Weichen alle Fotos um denselben Faktor ab, ist es `camera-mismatch`.

finding-rule-photo-resized =
    .rationale = Eine Kameradatei gilt für ein Pixelraster; ein skaliertes Foto hat Pixel verloren und passt zu keiner Kameradatei.
    .method = Gespeicherte Größe gegen die Kameradatei und gegen die Größe, die das EXIF des Fotos selbst nennt. Exakt; ein Foto, das skaliert, zurückskaliert und von seinem EXIF befreit wurde, fällt nur als unscharf auf.

finding-rule-photo-reused =
    .rationale = Zwei Fotos weisen etwas nach, weil jedes dem anderen widersprechen könnte; eine Kopie stimmt mit sich selbst überein.
    .method = Gleiche Bytes; oder die Ecken der Marker, die zwei Fotos gemeinsam haben (zwei Marker oder mehr), gehen bis auf 1 px durch eine affine Abbildung auseinander hervor: das ist eine Kopie, die neu gespeichert, skaliert oder beschnitten wurde, auch gespiegelt. Von zwei Aufnahmeorten eines Platzes beträgt der Rest Dutzende Pixel, daher gibt es keine falschen Alarme außer bei einer Kamera auf einem Stativ: auch das ist nur ein Foto, es sei denn, das Gestell wurde dazwischen bewegt und die Fotos zeigen es: laut eigenen Angaben zu anderer Zeit aufgenommen, oder das Gestell steht gegen alles andere um mehr als 0,1 px und das Dreifache des Rests der Abbildung anderswo.

finding-rule-photo-blurred =
    .rationale = Unschärfe kostet Genauigkeit, und die einer bewegten Hand ist nicht in allen Richtungen gleich; sie verschiebt also Kanten.
    .method = Median der angepassten Unschärfe der Marker des Fotos: über 1,8 px, oder über 1,2 px und doppelt so groß wie auf dem schärfsten Foto. Wo kein Marker gefunden wurde: von jedem Anstieg um 40 Stufen innerhalb von 32 px der Anteil, der in 4 px liegt; die Hälfte hat weniger als 0,5, quer oder längs zum Bild, und solche Anstiege gibt es in mindestens zwanzig seiner 64 Teile. Eine glatte Wand oder ein weicher Schatten gilt nicht als unscharf: dort gibt es zu wenige.

finding-rule-photo-badly-lit =
    .rationale = Eine Spiegelung schluckt Schwarz, überstrahltes Weiß läuft über seine Kanten, Dunkelheit ist Rauschen: Kanten wandern oder gehen verloren.
    .method = Blendung: ein Marker, den die bestimmten Lagen im Bild erwarten lassen, der Kamera zugewandt und groß genug, wurde nicht gefunden oder verlor Ecken, während ein Nachbar auf derselben Fläche gefunden wurde und das Gestell ihn nicht verdecken kann, und mehr als 0,45 seiner Fläche ist voll ausgesteuert (Druck allein erreicht 0,4). Überstrahlt: mehr als ein Drittel der Fläche der Hälfte der Marker ist voll ausgesteuert. Dunkel: die Hälfte der Marker hat einen Kontrast unter 0,12; oder es wurde kein Marker gefunden, und weniger als ein Hundertstel des Bildes ist heller als 48 von 255 Stufen. Alles exakt am Bild; ein Marker, vor dem jemand steht, ist keine Blendung.

finding-rule-photo-light-changed =
    .rationale = Telefone heben Dunkles und senken Helles von Stelle zu Stelle (HDR, Tone-Mapping). Was auf eine Kante zuläuft, verbiegt dann, was ihre Lage zeigt; Ecken sind deshalb weniger genau bekannt als auf einem schlicht entwickelten Foto.
    .method = Jeder Marker von 60 px oder mehr wird in Felder von 7 px geteilt; über alle Felder des Fotos streut der Logarithmus der Verstärkung um mehr als 0,02 über das hinaus, was Rauschen erklärt (stark veränderte Fotos mit bekannter Wahrheit zeigen 0,05 bis 0,09). Feinere Änderungen und Fotos, deren Marker alle kleiner sind, werden nicht gesehen. Warnung, wo eine Prüfung nicht nachgewiesen ist, sonst Hinweis. Der Befund selbst verschlechtert nichts: die Messunsicherheiten enthalten es bereits.

finding-rule-photos-too-alike =
    .rationale = Abstände ergeben sich daraus, dasselbe von verschiedenen Stellen zu sehen; zwei Fotos von einer Stelle sind ein Foto.
    .method = Winkel zwischen den Sichtlinien vom Gestell zu zwei Kameras unter 5°. Exakt; keine falschen Alarme.

finding-rule-floor-not-level =
    .rationale = Höhe, Neigung und Querneigung beziehen sich auf den Boden. Wo er zwischen Fahrzeug und Gestell abknickt, gibt es keine solche Ebene.
    .method = Score-Test: Höhe und Neigung eines Blattes, oder aller Blätter jenseits eines Knicks quer zur Fahrzeuglinie. Beste aller möglichen Erklärungen, Zufallswahrscheinlichkeit unter 1e-4, mehr als 2 mm oder 0,15°. Außerdem die Höhe der hinteren Naben über der Ebene der Blätter gegen die eingegebene, mehr als vier Standardunsicherheiten und 2 mm (Zufallswahrscheinlichkeit 6e-5). Eine Warnung, wo die beiden Naben einer Achse sich in der Höhe um mehr als 15 mm und zwei Standardunsicherheiten unterscheiden oder die Achsen um mehr als 40 mm (übliche Praxis, keine Quelle). Ein Boden, der eine einzige geneigte Ebene ist, ist keine Abweichung, und drei Blätter liegen immer in einer Ebene.

finding-rule-carrier-not-seen =
    .rationale = Was kein Foto zeigt, gehört nicht zum Nachweis.
    .method = Kein Foto, das mit den anderen verbunden ist, zeigt zwei brauchbare Ecken des Markerträgers, oder ein flacher Markerträger passt in zwei Lagen gleich gut. Exakt; keine falschen Alarme.

finding-rule-steering-not-straight =
    .rationale = Verfahren verlangen Räder in Geradeausstellung: ein eingeschlagenes Rad verschiebt das Fahrzeug auf seinen Reifen, und der Lenkwinkel geht in viele Kalibrierungen ein.
    .method = Mittlere Richtung der vorderen Platten gegen die Mittellinie: mehr, als ein halbes Grad (übliche Praxis, keine Quelle) in 95 % aller Fälle ergeben kann, und mehr als 3,3 Standardunsicherheiten (Zufallswahrscheinlichkeit unter 1e-3). Braucht Platten an allen vier Rädern.

finding-rule-wrong-datum-suspected =
    .rationale = Ein Gestell, das genau um einen bekannten Fehler daneben steht, wurde sorgfältig gestellt, nach der falschen Zahl: den Fehler zu nennen erspart es, alles neu zu messen.
    .method = Eine Prüfung, die um mehr als das Doppelte ihrer Toleranz außerhalb liegt, wird gegen die anderen Bezugspunkte (Fahrzeugfront, Achsen, die des Blattes), die anderen Bezugslinien, den Fahrachswinkel mit falschem Vorzeichen, die andere Seite, das umgekehrte Vorzeichen, das Soll eines anderen Schritts, null, Zoll statt mm, vertauschte Ziffern, den Ergänzungswinkel, eine andere Ebene des Gestells und seinen Rand statt seiner Mitte geprüft. Genannt wird, was einen Rest unter der erweiterten Messunsicherheit plus halber Toleranz und unter einem Viertel der Abweichung lässt; angewendet wird es nie. Zufällig passt eine Abweichung von etwa 100 mm in etwa 10 % aller Fälle zu einem davon: es ist ein Hinweis.

finding-rule-reading-disagrees =
    .rationale = Zwei unabhängige Messmittel, die sich über ihre Messunsicherheiten hinaus widersprechen: eines davon ist falsch, oder ein Tippfehler.
    .method = E_n nach ISO/IEC 17043 über 1: bei richtigen Messunsicherheiten höchstens eines von etwa zweiundzwanzig Paaren, weniger, wo beide zählen.

finding-rule-marker-duplicated =
    .rationale = Niemand kann sagen, welcher von zwei gleichen Markern zum Satz gehört und welchen davon ein anderes Foto zeigt; der Code bleibt auf allen Fotos außer Acht.
    .method = Eine Nummer des Satzes zweimal auf einem Foto. Exakt; ein herumliegender überzähliger Ausdruck genügt dafür.

finding-rule-weak-geometry =
    .rationale = Wo die Messunsicherheit größer ist, als die Toleranz erlaubt, ließe sich keine Stellung des Gestells nachweisen.
    .method = Eine Prüfung, die bei dieser Messunsicherheit kein Wert bestehen könnte (JCGM 106): exakt. Und eine Prüfung, deren Wert sich um mehr als seine erweiterte Messunsicherheit, ein Zehntel der Toleranz und vier Standardabweichungen einer solchen Änderung verschiebt, wenn ein Foto, ein Markerträger oder die Form des Objektivmodells weggelassen wird (Zufallswahrscheinlichkeit jeweils 6e-5).

finding-rule-times-out-of-order =
    .rationale = Fotos weisen nach, wo das Gestell stand, als sie aufgenommen wurden, nicht eine Stunde später.
    .method = Zeiten, die ihren Versatz zu UTC nennen: Fotos eines Auftrags (bei zwei Phasen: einer Phase) innerhalb einer Stunde, die von vorher innerhalb einer Stunde zur Angabe `taken` des Auftrags und nicht nach der Kalibrierung, die von nachher nicht vor ihr, und alle von vorher früher als alle von nachher. Exakt, soweit Uhren es sind; eine Zeit ohne Versatz ist nicht prüfbar und bleibt außer Acht. Ein Foto, das nach einem Versetzen des Gestells eingetragen ist und das dasselbe Telefon (Hersteller und Modell) über eine Minute vor einem von davor aufnahm, ist von der Stufe Stopp, ob die Zeiten einen Versatz nennen oder nicht; bei zwei Telefonen, mehr als fünf Minuten früher, eine Warnung. Wurde das Gestell versetzt, darf die Kalibrierung nicht vor dem ersten Foto des jetzigen Standorts gelaufen sein: Stufe Stopp, wo ein Telefon von vor und nach dem Versetzen Fotos hat, sonst eine Warnung. Fotos eines Telefons, die mehr als eine Stunde auseinanderliegen, werden auch nach Ortszeiten ohne Versatz genannt; eine Kalibrierung mehr als vier Stunden nach dem letzten Foto des Aufbaus (übliche Praxis, keine Quelle), wenn es keine Fotos von nachher gibt; und ein Foto, dessen eigene Zeit mehr als 26 Stunden von der Satellitenzeit in seinem Eintrag abweicht.

finding-rule-other-day =
    .rationale = Ein Foto von letzter Woche zeigt, wo das Gestell letzte Woche stand.
    .method = Für Fotos, die keinen Versatz zu UTC nennen: ihre Ortszeit gegen die des Auftrags, sonst gegen die des ersten solchen Fotos, beide wie geschrieben: mehr als 14 h auseinander und von anderem Datum. Zeiten mit Versatz vergleicht `times-out-of-order` auf die Minute. Eine falsch gestellte Uhr oder ein Telefon mit der Zeit eines anderen Kontinents sieht genauso aus; eine absichtlich zurückgestellte Uhr wird nicht gesehen.

finding-rule-photo-edited =
    .rationale = Gemessen wurde das Bild in der Datei; ein Programm, das sie neu geschrieben hat, kann mehr geändert haben als die Drehung.
    .method = Spuren, die Bildprogramme hinterlassen und Kameras nicht: ein in den Angaben genanntes Bearbeitungsprogramm, der Datenblock eines Bildprogramms, ein Bearbeitungsverlauf, eine Schreibzeit mehr als eine Minute nach der Aufnahme, Herkunftsnachweise, die nicht zu den Bytes passen oder selbst Bearbeitungen aufführen (wo das Programm mit ihnen gebaut wurde). Das Vorschaubild gegen das Bild: Korrelation auf 24 mal 18 Feldern unter 0,85 bei der besten von vier Drehungen, schwarze Balken und längere Seiten abgeschnitten. Kompressionstabellen werden nur neben anderen Spuren genannt: auch Telefone verwenden die der Norm. Eine Bearbeitung ohne Spur oder eines kleinen Bildteils wird nicht gesehen; harmloses Drehen oder Umbenennen in einer Galerie kann eine Spur hinterlassen.

finding-rule-photo-rendered =
    .rationale = Dieses Programm rendert perfekte Arbeitsplätze; ein solches Foto, als echtes ausgegeben, wäre innerhalb, wie auch immer das Fahrzeug steht.
    .method = Die Aufnahmedaten nennen den Renderer, oder das Bild trägt sein Zeichen: 160 mal 160 Felder, jedes nach einem pseudozufälligen Vorzeichen eine Graustufe heller oder dunkler, nie auf Markern (Cox, Kilian, Leighton und Shamoon 1997). Jedes Feld gegen seine vier Nachbarn, auf 2 Stufen begrenzt, wird mit den Vorzeichen korreliert, in acht Drehungen und Spiegelungen; ab 8 Standardabweichungen ist das Zeichen da. Fehlalarme: unter 1e-13 je Foto (Hoeffding 1963), denn die Vorzeichen wissen nichts von ihm. Das Zeichen übersteht JPEG-Qualität 70 und die halbe Größe; ein beschnittenes, zusammengesetztes oder von einem geänderten Programm gemachtes Bild muss es nicht tragen.

finding-rule-noise-repeated =
    .rationale = Zwei Fotos beweisen etwas, weil jedes dem anderen widersprechen könnte; eines, das aus dem anderen gemacht wurde, sagt, was jemand wollte.
    .method = Für Marker, deren Ecken sich zwischen zwei Fotos nur um eine Verschiebung unterscheiden (0,5 px): was jedes Pixel von seinen vier Nachbarn abweicht, in der Mitte der Felder (0,3 des Feldes und 3 px von dessen Rändern), bei dieser Verschiebung korreliert über 150 Pixel oder mehr; über 0,85 heißt es gleich. Drucke und Kanten sehen von einer Stelle gleich aus: gerenderte Fotos eines Stativs vor und nach einer Bewegung, wie acht Arten von Telefonen sie entwickeln, zeigen bis zu 0,64 (bei JPEG-Qualität 75), und keines wird genannt. Ein gedrehter, skalierter oder um Bruchteile eines Pixels verschobener Teil wird meist nicht gesehen, auch keiner, der mit einer JPEG-Qualität unter etwa 95 gespeichert wurde.

finding-rule-markers-without-noise =
    .rationale = Wo ein Gestell stand, folgt aus ihren Markern; wer andere einsetzt, verschiebt es.
    .method = Median der Größe dessen, was ein Pixel von seinen vier Nachbarn abweicht, in der Mitte der Felder eines Markers (0,3 des Feldes und 3 px von dessen Rändern), auf Weiß und auf Schwarz; jeweils gegen den Median der Marker des Fotos auf anderen Markerträgern (vier oder mehr, mit 0,3 Graustufen oder mehr). Von Weiß und Schwarz zählt das stärker rauschende, von den Markern des Markerträgers (zwei oder mehr) der Median: unter 0,4 wird es genannt. Gerenderte Bilder zweier Programme: 64 Markerträger in Fotos von 12 MP, auch stark entrauscht und komprimiert, zeigen 0,53 oder mehr, keiner wird genannt; ohne Rauschen eingesetzte Gestelle werden bei JPEG-Qualität 95 in 30 von 30 genannt, bei 85 in 25 von 30 und bei 75 in 18 von 30. Echte Fotos mit so vielen Markern lagen nicht vor. Kleinere Felder als etwa 18 px lassen zu wenig erkennen. Aus einem anderen Foto ausgeschnittene Marker bringen ihr eigenes Rauschen mit und werden nicht gesehen, auch keine, denen Rauschen gegeben wurde.

finding-rule-compression-differs =
    .rationale = Wo ein Gestell stand, folgt aus seinen Markern; wer andere einsetzt, die anderswo mit eigenem Rauschen fotografiert wurden, versetzt es.
    .method = In den Blöcken von 8 x 8 Pixeln innerhalb der Marker bleiben die Koeffizienten einer früheren Kompression nahe den Vielfachen ihrer Stufen, wenn mit feineren Stufen noch einmal gespeichert wurde (Popescu und Farid 2004; nach Gebieten: Lin, He, Tang und Tang 2009): das Histogramm schwingt. Gemeldet wird, wo die anderen Marker (vier oder mehr) in zwei von 20 Koeffizienten um mehr als 7 Standardabweichungen schwingen und die eigenen eines Markerträgers (zwei oder mehr) weniger als 0,35 davon zeigen, auf ein Sechstel oder besser bekannt. Ein einmal komprimiertes Foto hat keine solche Spur und meldet nichts. Welche Angriffe gesehen werden und wie oft ehrliche Fotos gemeldet werden, steht in docs/attacks.md. Nicht gesehen: ein Foto, das mit gleichen oder gröberen Stufen noch einmal gespeichert wurde, eines, dessen Original kein JPEG war, und eines, in das alle Marker eingesetzt wurden.

finding-rule-focal-contradicts =
    .rationale = Angaben, die einen anderen Bildwinkel nennen, als das Bild hat, gehören zu einem anderen Bild, oder das Bild wurde beschnitten.
    .method = Die in den Angaben genannte Brennweite für Kleinbild (35 mm) gegen die bestimmte des Fotos, nach der Bilddiagonale (43,27 mm) und nach der längeren Seite (36 mm), mit und ohne den angegebenen Digitalzoom, denn Hersteller rechnen verschieden: genannt, wo sie von allen um mehr als 10 %, einen halben Millimeter und drei Standardunsicherheiten abweicht. Ein geringerer Beschnitt wird nicht gesehen, und Angaben ohne diesen Wert sind nicht prüfbar.

finding-rule-other-kit =
    .rationale = Zwei Sätze in einem Bild verleiten zur falschen Satzdatei oder zeigen einen Platz, der nicht der des Auftrags ist.
    .method = Nummern, die weder zum Satz des Auftrags gehören noch Auftragskarten vorbehalten sind: mindestens zwei davon ohne berichtigtes Bit gelesen, jede auf zwei Fotos, oder drei auf einem. Eine Kameratafel an der Wand oder der Satz vom Nachbarplatz sieht genauso aus; ein falsch gelesener Marker (unter 1e-6 je Foto) müsste zweimal vorkommen.

finding-rule-card =
    .rationale = Ein Code, den es nur für diesen Auftrag gibt, weist auf einem Foto nach, dass es für diesen Auftrag aufgenommen wurde.
    .method = Die für Karten vorbehaltenen Nummern, wie sie auf jedem Foto gefunden wurden, gegen die des Auftrags. Exakt, außer wenn ein Marker als ein anderer gelesen wird (unter 1e-6 je Foto); ein Foto, das die ganze Karte zeigt, bürgt für die Fotos, die die Ausgleichung mit ihm verbindet.

finding-rule-photos-not-listed =
    .rationale = Wer unter den Fotos eines Stands wählen kann, kann weglassen, was widerspricht.
    .method = Die Namen der Bilder in `photos` gegen die, die der Auftrag als Fotos oder Anlagen aufführt, wo er welche aufführt. Exakt; in die Bilder wird nicht hineingesehen, aber sie werden mit dem Auftrag versiegelt. Fotos, die anderswo liegen oder gelöscht wurden, bleiben ungesehen. Bei einem Blatt mit mehreren Schritten auch Fotos, die das Gestell in einem Schritt zeigen, den keine Prüfung betrifft, oder die keinen Schritt nennen.

finding-rule-prerequisites =
    .rationale = Das Blatt sagt, was gegeben sein muss, bevor die Geometrie etwas bedeutet: Reifen, Beladung, Lenkung, gesetztes Fahrwerk.
    .method = Die Antworten des Auftrags gegen die Liste des Blattes: `false` hält an, ebenso Worte, die mit Nein beginnen (no, not, nein, nicht, non, pas); eine fehlende Antwort auf eine Pflichtfrage, oder Worte, die weder ein klares Ja sind noch eine Zahl enthalten („2,3 bar“), machen die Angaben unvollständig. Fotos können eine Versicherung nicht prüfen.

finding-rule-credentials-lacking =
    .rationale = Ein Blatt, das fragt, wer die Fotos aufgenommen hat, gibt sich mit dem, was sie zeigen, nicht zufrieden.
    .method = In der Datei jedes beteiligten Fotos wird nach einem C2PA-Manifest gesucht; jeder Hash, die Unterschrift und ihr Zertifikat werden ohne Netz geprüft, nach den genannten Ankern. Es genügen nur gültige Nachweise eines vertrauten Unterzeichners, deren Manifest nichts aufführt, als dass eine Kamera das Bild aufnahm. Eine Fehlalarmrate gibt es nicht: Das Verlangte ist da oder nicht. Ein gestohlener Schlüssel, ein abfotografierter Bildschirm und Widerrufe, die die Datei nicht trägt, werden nicht gesehen.

finding-rule-not-checked =
    .rationale = Sechs Größen bestimmen die Stellung eines Gestells; ein Blatt, das zu einer schweigt, lässt sie offen, und wer den Bericht liest, muss es wissen.
    .method = Abstand, Mittigkeit, Höhe, Rechtwinkligkeit, Neigung und Querneigung gegen die Prüfungen und Verzichte des Blattes. Exakt.
