# The log of attempts against an archive.
evidence-verdict =
    { $verdict ->
        [within] innerhalb
        [outside] außerhalb
        [retake] neu aufnehmen
        [not_proven] nicht nachgewiesen
       *[other] { $verdict }
    }
evidence-log-broken = Das Versuchsprotokoll trägt nicht: { $why }
evidence-log-unreadable = Eintrag { $entry } ist nicht lesbar: { $why }
evidence-log-repeated = Eintrag { $entry } wiederholt Eintrag { $first }, Byte für Byte
evidence-log-out-of-order = Eintrag { $entry } nennt { $when }, { $off } s { $which ->
        [earlier] früher
       *[later] später
    }, als seine Nachbarn zulassen (mehr als { $tolerance } s): vor- oder zurückdatiert, oder eine Uhr ging falsch
evidence-log-against-witness =
    { $which ->
        [earlier] Eintrag { $entry } nennt { $when }, kam aber hinzu, nachdem { $witness } { $size } Einträge gesehen hatte: { $off } s davor datiert
       *[later] Eintrag { $entry } nennt { $when }, war aber schon da, als { $witness } { $size } Einträge sah: { $off } s danach datiert
    }
evidence-log-missing =
    { $numbered ->
        [yes] Versuch { $attempt }
       *[no] Ein Versuch
    } { $known ->
        [yes] zu Reparaturauftrag { $order }
       *[no] zu einem Reparaturauftrag, den das Archiv nicht hat oder dessen Geheimnis nicht angegeben wurde
    }: { $lies ->
        [nowhere] keines seiner { $gone } Fotos ist im Archiv
        [scattered] seine { $photos } Fotos liegen verstreut, kein Auftrag des Archivs hat sie alle
        [refiled] seine { $photos } Fotos sind in { $path }, das als anderer Versuch oder zu einem anderen Reparaturauftrag abgelegt ist, und in keinem Auftrag, der so abgelegt ist wie dieser Versuch
        [stated] nur die maskierte Kopie { $path } hat seine { $photos } Fotos, nach Prüfsummen, wie sie sie selbst angibt: maskierte Fotos können sie nicht zeigen, und sie enthält keinen Beleg aus diesem Protokoll; nach dem ganzen Ordner fragen
       *[partly] { $gone } seiner { $photos } Fotos sind in keinem Auftrag des Archivs
    } ({ $entries })
evidence-log-entry = Eintrag { $entry } am { $when }: { $verdict }
evidence-log-entry-with = Eintrag { $entry } am { $when }: { $with ->
        [both] { $verdict } mit anderem job.toml und anderem Vorgabeblatt
        [job] { $verdict } mit anderem job.toml
        [setup] { $verdict } mit anderem Vorgabeblatt
        [photos] { $verdict } mit anderen Fotos neben diesen
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } davor; { $entries }
evidence-log-restated = Die Fotos von { $path }, jetzt { $now }, wurden anders beurteilt: { $entries }
evidence-log-no-entry = { $path } ist versiegelt, im Versuchsprotokoll fehlt ein Eintrag dazu
evidence-logged-before-taken = Eintrag { $entry } wurde { $when } { $by ->
        [witness] von { $witness } gesehen
       *[log] protokolliert
    }, früher als { $what ->
        [calibration] die Kalibrierung lief
       *[photo] { $photo } aufgenommen wurde
    } ({ $taken }): eine der Uhren ging falsch
evidence-logged-late = { $path }: Eintrag { $entry }, der erste mit diesen Fotos, wurde { $when } protokolliert, mehr als einen Tag nach dem letzten Foto und der Kalibrierung ({ $taken })
evidence-log-unlogged = { $path } ist nicht versiegelt, und kein Eintrag hat diese Fotos
evidence-log-orders-unknown = Kein Eintrag gehört mit dem angegebenen Geheimnis (--log-orders) zum Reparaturauftrag eines Auftrags im Archiv: Es ist nicht das Geheimnis dieses Versuchsprotokolls, oder alle Aufträge wurden umgebucht. Reparaturaufträge wurden nicht verglichen
evidence-log-summary = Versuchsprotokoll { $log }: { $size } Einträge, { $signed ->
        [yes] von einem gültigen Schlüssel signiert
       *[no] Prüfschlüssel nicht angegeben (--log-keys)
    }{ $witnessed ->
        [yes] , gegengezeichnet von { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; es beginnt mit jedem aufbewahrten Prüfpunkt
       *[no] { "" }
    }{ $unlogged ->
        [0] { "" }
        [one] ; { $unlogged } Auftrag ist weder versiegelt noch in einem Eintrag
       *[other] ; { $unlogged } Aufträge sind weder versiegelt noch in einem Eintrag
    }{ $late ->
        [0] { "" }
        [one] ; { $late } Auftrag wurde mehr als einen Tag zu spät protokolliert
       *[other] ; { $late } Aufträge wurden mehr als einen Tag zu spät protokolliert
    }
evidence-log-title = Versuchsprotokoll
evidence-log-nothing = Jeder Versuch ist im Archiv, jeder versiegelte Auftrag im Versuchsprotokoll
evidence-log-more = { $count } weitere
evidence-log-all = alle: { $file }

# What joins two jobs of an archive.
evidence-photo-of-another-job =
    { $how ->
        [bytes] { $photo } ist Byte für Byte { $other } jenes Auftrags
       *[view] { $photo } zeigt dieselbe Ansicht wie { $other } jenes Auftrags, neu gespeichert, skaliert oder beschnitten
    }: Einer der beiden Aufträge wurde nicht eigens fotografiert. So sieht ein Ordner aus, der für ein anderes Fahrzeug kopiert wurde, aber auch eine Kamera, die auf dem Stativ vor einem stehen gebliebenen Fahrzeug blieb. Nach den Originalfotos fragen.
evidence-set-up-of-another-job = Dies stimmt mit jenem Auftrag bis auf das Rauschen der Fotos überein, genauer, als Aufstellungen dieses Archivs es zufällig tun: { $quantities }. So sieht ein Fahrzeug aus, das für zwei Aufträge fotografiert wurde. Die Fotos beider vergleichen: Fahrzeug, Boden, Schatten.
evidence-file-unlike-neighbours =
    { $role ->
        [kit] Die Datei des Markersatzes ist eine andere
        [setup] Das Vorgabeblatt ist ein anderes
       *[camera] Die Kameradatei ist eine andere
    } als unter demselben Namen bei den Aufträgen davor und danach, die ein und dieselbe haben. Sie kann für diesen Auftrag geändert worden sein: beide Dateien vergleichen (ihre SHA-256 stehen in `inputs` der Ergebnisse).

# An audited archive.
evidence-audit-title = Prüflauf über Aufstellungen
evidence-audit-unreadable = unlesbar, verändert oder nicht mehr da
evidence-audit-unread =
    { $what ->
        [job-name] Der Name ähnelt dem einer Auftragsdatei, die genau job.toml heißt: umbenennen
        [no-job] Darin liegen Bilder wie in einem Auftrag, und keine Auftragsdatei darüber: job.toml wieder an ihre Stelle legen, oder die Bilder anderswohin
        [tar-name] Die Datei enthält versiegelte Nachweise, deren Name auf .tar endet: umbenennen
        [unfinished] Das ließ ein abgebrochenes Versiegeln zurück: neu versiegeln, dann löschen
        [packed] In Archive dieser Art wird nicht hineingesehen: auspacken
        [link] Das ist ein Verweis, der aus dem Geprüften hinausführt: sein Ziel mit angeben oder an seine Stelle legen
        [deep] Zu viele Ordner liegen darüber: den Ordner selbst angeben
       *[system] { $why }
    }
evidence-audit-filter = Zeilen zeigen mit
evidence-audit-filter-hint = Wörtern der Zeile
evidence-audit-shown = { $shown } von { $count } angezeigt
evidence-audit-foot = Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Diese Zahlen dokumentieren Aufstellungen und ersetzen kein Verfahren; die Arbeit ist Sache von Fachpersonal, Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen.
evidence-audit-progress = { $done } von { $total } ({ $kept } von früher), { $rate } je Sekunde, noch { $left } s
evidence-audit-jobs = { $count } Aufträge, davon { $kept } aus einem früheren Prüflauf
evidence-audit-across = teilen ein Foto oder eine Aufstellung mit einem anderen Auftrag oder haben eine andere Datei als die Aufträge daneben: siehe Bericht
evidence-audit-changed = sagen nach der Neuberechnung anderes als davor: siehe Bericht
evidence-audit-other-version = wurden von einer anderen Programmversion beurteilt: --recompute beurteilt sie neu
evidence-audit-report = Bericht: { $file }
evidence-column-verdict = Urteil
evidence-column-job = Auftrag
evidence-column-checks = Prüfgrößen
evidence-column-findings = Befunde
evidence-column-setup = Vorgabeblatt
evidence-column-vehicle = Fahrzeug
evidence-column-technician = Techniker
evidence-column-bay = Kalibrierplatz
evidence-column-taken = Aufgenommen
evidence-column-evidence = Nachweis
evidence-column-folder = Ordner
evidence-column-finding = Befund
evidence-column-meaning = Was er besagt
evidence-attempt = Versuch { $attempt }
evidence-not-sealed = nicht versiegelt
evidence-state =
    { $state ->
        [signed] unverändert, signiert von { $who }
        [unknown] unverändert, Unterzeichner unbekannt
        [unsigned] unverändert, nicht signiert
        [gone] nicht mehr da
       *[altered] verändert
    }
evidence-state-copy =
    { $measured ->
        [yes] { $state } (maskierte Kopie)
       *[no] { $state } (maskierte Kopie, nicht neu gemessen)
    }
evidence-recomputed = neu berechnet: { $count } geändert
evidence-check = { $what }: Ist { $measured }, Soll { $required }: { $verdict }
evidence-change-what =
    { $what ->
        [verdict] Urteil
        [findings] Befunde
       *[message] Meldung
    }
evidence-change-check = { $name } ({ $parts })
evidence-change = { $what }: vorher { $earlier }, jetzt { $now }
evidence-change-moved =
    { $what }: vorher { $earlier }, jetzt { $now }, { $sign ->
        [minus] -
       *[plus] +
    }{ $moved } u
evidence-value = { $value } { $unit } (u { $u })
evidence-none = keine
evidence-not-checked = nicht geprüft
evidence-not-determined = nicht bestimmt

# An evidence folder checked.
evidence-outcome =
    { $outcome ->
        [passed] bestanden
        [failed] verletzt
       *[other] nicht prüfbar
    }
evidence-item =
    { $item ->
        [names] Namen
        [declaration] Kennung
        [completeness] Vollständigkeit
        [manifests] Prüfsummenlisten
        [tag-files] Begleitdateien
        [payload] Inhalt
        [signature] Signatur
        [timestamp] Zeitstempel
        [sealed-files] versiegelte Dateien
        [masked-photos] maskierte Fotos
        [signer] Unterzeichner
        [authority] Zeitstempelstelle
        [measured-again] neu gemessen
        [credentials] Herkunftsnachweise
        [log] Versuchsprotokoll
        [sensor-pattern] Sensormuster
        [reports] Berichte
        [report-signature] Signatur des Berichts
        [report-signer] Unterzeichner des Berichts
        [report-timestamp] Zeitstempel des Berichts
        [series] Ordner des Reparaturauftrags
        [series-signature] Signatur des Verzeichnisses zum Reparaturauftrag
        [series-page] Seite des Reparaturauftrags
        [report-authority] Zeitstempelstelle des Berichts
        [signing-time] Zeit der Signatur
        [report-signing-time] Zeit der Signatur des Berichts
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] unverändert und signiert
        [unknown] unverändert, Unterzeichner unbekannt
        [unsigned] unverändert, nicht signiert
        [unconfirmed] unverändert und signiert; das Urteil ist nicht bestätigt
       *[altered] verändert
    }
evidence-whole-copy =
    { $measured ->
        [yes] { $state }, soweit eine maskierte Kopie das zeigt: Ihre Fotos messen wie festgehalten; was sie sonst zeigen, bindet nichts an das Versiegelte
       *[no] { $state }, soweit eine maskierte Kopie das zeigt: Sie wurde NICHT neu gemessen, und ob das Ergebnis aus den Fotos folgt, zeigt nur der versiegelte Ordner
    }
evidence-bad =
    { $more ->
        [0] { $files }
       *[other] { $files }; { $more } weitere
    }
evidence-names = { $count } Dateien, keine ein Link oder mit einem Namen, der woandershin führt
evidence-bag = ein Beutel nach BagIt 1.0 (RFC 8493)
evidence-no-bag = { $file } nennt nicht BagIt 1.0 in UTF-8
evidence-file-unreadable = { $file } ist nicht lesbar ({ $why })
evidence-file-wrong = { $file }: { $why }
evidence-fetch = fetch.txt verlangt Dateien von anderswo: Ein Nachweis enthält alle eigenen
evidence-file-state =
    { $state ->
        [missing] { $file } fehlt
        [added] { $file } kam hinzu
        [strange] { $file } legt kein Versiegeln dort ab
       *[altered] { $file } wurde verändert
    }
evidence-files = { $count } Dateien, keine fehlt, kam hinzu oder wurde verändert (SHA-512)
evidence-series-signer = { $index } ist nicht von demselben signiert wie { $folders }: es wurde neu geschrieben
evidence-unsigned = Der Ordner ist nicht signiert
evidence-signed = mit dem Schlüssel { $key }
evidence-name-not-utf8 = { $file } ist nicht UTF-8
evidence-name-case = { $first } und { $second } unterscheiden sich nur in Groß- und Kleinschreibung
evidence-empty-folder = { $folder } ist ein Ordner ohne Dateien, den keine Liste hat
evidence-name-link = { $file } ist ein Link oder sonst etwas, das keine Datei ist
evidence-too-many = Es sind mehr als { $count } Dateien
evidence-stamped = versiegelt spätestens { $when }, sagt { $authority }
evidence-copy-other-manifest = { $file } ist nicht die, die { $list } nennt
evidence-copy-signed = die des versiegelten Ordners, mit dem Schlüssel { $key }
evidence-copy-unsigned = Der versiegelte Ordner war nicht signiert
evidence-copy-state =
    { $state ->
        [altered] { $file } ist nicht wie versiegelt und nicht als maskiert genannt
        [missing] { $file } war versiegelt, ist nicht hier und nicht als weggelassen genannt
        [no-photo] { $file } ist als maskiert genannt und kein Foto des Auftrags
        [added] { $file } war nicht versiegelt und ist nichts, was eine Kopie hat
        [says-more] { $file } sagt, was keine Kopie von sich sagt
       *[strange] { $file } ist als maskiert oder weggelassen genannt und war nie versiegelt
    }
evidence-copy = { $count } Dateien wie versiegelt, { $masked } Fotos maskiert, { $left_out } Dateien weggelassen
evidence-not-measured = nicht neu gemessen: Die Bytes sind nicht die versiegelten
evidence-no-signers = keine Liste der Unterzeichner angegeben (--signers)
evidence-signer = { $who }, in der Liste
evidence-signer-unknown = nicht anerkannt: { $why }
evidence-no-authority = kein Zertifikat einer Zeitstempelstelle angegeben (--timestamp-ca)
evidence-authority-false = nicht anerkannt: { $why }
evidence-authority-ended = Ihr Zertifikat endete am { $day }, und kein neuerer Zeitstempel, der zählt, deckt es
evidence-authority = { $who }; das Zertifikat endet am { $day }
evidence-measured = { $verdict }; jeder Wert auf { $share } seiner Standardunsicherheit wie festgehalten; { $sentences ->
        [compared] alles andere wie festgehalten
       *[not] die Sätze, von Version { $recorded }, wurden nicht verglichen
    }
evidence-measured-unconfirmed = festgehalten ist { $recorded }, bestätigt ist { $verdict }: Das Vorgabeblatt verlangt Herkunftsnachweise, und diese Prüfung steht für keine ein, die genügen (ein Programm, das mit der Eigenschaft credentials gebaut wurde, und --credential-anchors); jeder Wert auf { $share } seiner Standardunsicherheit wie festgehalten
evidence-masked = { $photos } Fotos zeigen { $markers } Marker, wo das versiegelte Ergebnis sie hat; was sie sonst zeigen, bindet nichts
evidence-masked-no-markers = Die Fotos zeigen keinen Marker, der sie an das versiegelte Ergebnis bände
evidence-masked-measured = { $verdict }; jeder Wert der maskierten Fotos auf { $share } Standardunsicherheiten wie festgehalten; was an ganzen Fotos und deren eigenen Angaben hängt, wurde nicht neu gesucht
evidence-masked-size = { $photo } ist nicht das versiegelte Foto, maskiert: Es hat { $width } mal { $height } Pixel
evidence-masked-markers = { $photo } ist nicht das versiegelte Foto, maskiert: Von { $recorded } festgehaltenen Markern und { $seen }, die es zeigt, liegen { $found } am selben Ort
evidence-masked-no-camera = nicht neu gemessen: Der Auftrag nennt keine Kamera, und keine Kameradatei passt zu seinen Fotos; auch das versiegelte Ergebnis misst deshalb nichts
evidence-masked-cameras = nicht neu gemessen: Der Auftrag nennt keine Kamera, mehrere wurden nach den eigenen Angaben der Fotos gewählt, und die sind maskiert; der versiegelte Ordner hat sie
evidence-measured-otherwise = anders als festgehalten: { $differences }
evidence-measured-by-other = anders als festgehalten: { $differences } (festgehalten von Version { $recorded }, gemessen von { $now })
evidence-not-measurable = nicht messbar: { $why }
evidence-several = { $folder } enthält die Nachweisordner eines Reparaturauftrags: jeden einzeln prüfen (`baywitness check { $folder }/NAME`) oder alle mit `baywitness audit`; das eigene { $index } liest `sha512sum -c`
evidence-no-folder = { $folder } ist kein Nachweisordner: einen nennen, den `baywitness seal` gemacht hat
evidence-cannot-read = { $path } ist nicht lesbar: { $why }
evidence-no-proof = Der Ordner enthält keinen Beleg, dass sein Versuch protokolliert wurde (seal --log)
evidence-logged = Eintrag { $entry } von { $log }, protokolliert { $when }; in dessen Prüfpunkt mit { $size } Einträgen{ $still ->
        [yes] , mit dem das Protokoll noch beginnt
       *[no] { "" }
    }{ $witnessed ->
        [yes] , gegengezeichnet von { $witnesses }
       *[no] { "" }
    }{ $signed ->
        [yes] { "" }
       *[no] ; ob { $log } ihn signiert hat: Prüfschlüssel nicht angegeben (--log-keys)
    }

# Reading and writing.
evidence-cannot =
    { $doing ->
        [read] { $path } ist nicht lesbar: { $why }
        [write] { $path } lässt sich nicht schreiben: { $why }
        [make] Der Ordner { $path } lässt sich nicht anlegen: { $why }
        [rename] Umbenennen in { $path } geht nicht: { $why }
        [folder] Der Ordner { $path } ist nicht lesbar: { $why }
        [move] { $path } lässt sich nicht verschieben: { $why }
        [remove] { $path } lässt sich nicht entfernen: { $why }
        [lock] { $path } lässt sich nicht sperren: { $why }
        [protect] { $path } lässt sich nicht vor anderen schützen: { $why }
        [key] Der Schlüssel { $path } ist nicht lesbar: { $why }
       *[random] Für einen Schlüssel gibt es keine Zufallszahlen: { $why }
    }
evidence-said = { $why }
evidence-further = { $first }; { $rest }
evidence-line = Zeile { $line }: { $why }
evidence-unreadable = nicht lesbar ({ $why })
evidence-not-utf8 = nicht in UTF-8
evidence-size =
    { $what ->
        [manifest] keine Datei von der Größe einer Prüfsummenliste
        [signature] keine Datei von der Größe einer Signatur
        [small] keine Datei von der Größe, die sie in einem versiegelten Ordner hat
       *[timestamp] keine Datei von der Größe eines Zeitstempels
    }

# Names and manifests.
evidence-path =
    { $problem ->
        [empty] Ein Teil des Namens ist leer
        [absolute] Der Pfad ist absolut
        [relative] Ein Teil des Pfads führt woandershin (. oder ..)
        [character] Ein umgekehrter Schrägstrich, ein Steuerzeichen oder ein anderes Zeichen, das nicht jedes System speichern kann
        [special] Ein Teil des Namens, den manche Systeme besonders behandeln (Gerätename, Punkt oder Leerzeichen am Ende)
       *[long] Der Name ist zu lang
    }
evidence-manifest-line = kein SHA-512 in kleinen Hexadezimalziffern mit zwei Leerzeichen und einem Pfad
evidence-manifest-path = genannt ist „{ $path }“: { $problem }
evidence-manifest-twice = { $path } ist ein zweites Mal genannt
evidence-manifest-order = nicht in der Reihenfolge und Schreibweise, in der die Liste geschrieben wurde

# Keys and signatures.
evidence-key-none = { $path } ist kein privater Schlüssel von ssh-keygen ({ $why }): einen ed25519-Schlüssel nennen oder dessen .pub-Datei, wenn ein Agent ihn hält
evidence-key-kind = { $path } ist ein Schlüssel der Art { $kind }: einen mit `ssh-keygen -t ed25519` anlegen
evidence-key-locked =
    { $typed ->
        [wrong] Der Schlüssel { $path } hat eine Passphrase, und die Eingabe war eine andere: an einem Terminal eingeben, oder den Schlüssel in den Agenten laden und die .pub-Datei nennen
       *[nothing] Der Schlüssel { $path } hat eine Passphrase: an einem Terminal eingeben, oder den Schlüssel in den Agenten laden und die .pub-Datei nennen
    }
evidence-key-agent = ssh-keygen signiert nicht mit { $path }: { $why }
evidence-key-not-started = Das Programm lässt sich nicht starten ({ $why }); den OpenSSH-Client installieren
evidence-key-refused = { $why }; ist der Schlüssel in den Agenten geladen (ssh-add)?
evidence-key-answer = seine Antwort: { $why }
evidence-key-sign = Signieren geht nicht: { $why }
evidence-signature-none = keine SSH-Signatur ({ $why })
evidence-signature-spelling = nicht so geschrieben, wie eine Signatur geschrieben wird
evidence-signature-purpose = Die Signatur gilt für „{ $namespace }“, nicht für „{ $own }“
evidence-signature-kind = Die Signatur ist von einem Schlüssel der Art { $kind }, die dieses Programm nicht prüft
evidence-signature-bytes = Die Signatur gehört nicht zu diesen Bytes
evidence-signers-line = { $file }, Zeile { $line }: { $problem }; so schreiben, wie das Handbuch von ssh-keygen erlaubte Unterzeichner beschreibt
evidence-signers-unlisted = Der Schlüssel steht nicht in der Liste der Unterzeichner
evidence-signers-objection =
    { $why ->
        [authority] { $who } ist als Zertifizierungsstelle eingetragen, der dieses Programm nicht folgt
        [excluded] { $who } nimmt jemanden aus, und eine Signatur sagt nicht, von wem sie ist: die Namen derer aufführen, die unterzeichnen dürfen
        [namespace] { $who } darf nicht für „{ $namespace }“ signieren
        [early] { $who } durfte noch nicht signieren
       *[late] { $who } darf nicht mehr signieren
    }
evidence-signers-no-key = nach Namen und Optionen steht kein öffentlicher Schlüssel
evidence-signers-option = die Option „{ $option }“ ist nicht bekannt
evidence-signers-option-twice = die Option „{ $option }“ steht zweimal da
evidence-signers-time = die Zeit „{ $time }“ ist keine

# Sealing.
evidence-exists =
    { $form ->
        [file] { $path } ist schon da: eine andere Datei nennen oder diese zuerst wegschieben (ein versiegelter Nachweis wird nie verändert)
       *[folder] { $path } ist schon da: einen anderen Ordner nennen oder diesen zuerst wegschieben (ein versiegelter Ordner wird nie verändert)
    }
evidence-seal-name = Die Datei „{ $path }“ kann unter diesem Namen nicht aufbewahrt werden: { $problem }; umbenennen
evidence-seal-alike = Die Dateien { $first } und { $second } unterscheiden sich nur in Groß- und Kleinschreibung: eine umbenennen
evidence-seal-changed = { $path } änderte sich während des Versiegelns: neu prüfen und versiegeln
evidence-seal-json = Das Ergebnis lässt sich nicht als JSON schreiben: { $why }
evidence-seal-far = Die Datei „{ $file }“ liegt zu viele Ordner über dem Auftrag: näher heran verschieben
evidence-seal-gone = Die Datei „{ $file }“ wurde für den Auftrag gelesen und ist nicht mehr da
evidence-one-file = { $file } ist kein Nachweisordner als eine Datei: { $problem }
evidence-one-file-entry = { $file } ist kein Nachweisordner als eine Datei: der Eintrag „{ $entry }“: { $problem }
evidence-one-file-problem =
    { $problem ->
        [link] ein Link oder sonst etwas, das keine Datei ist
        [no-folder] liegt in keinem Ordner
        [second] liegt in einem zweiten Ordner
        [foreign] ein anderes Programm hat sie gepackt: auspacken, dann den Ordner prüfen
        [twice] steht zweimal im Archiv
        [empty] die Datei ist leer
       *[otherwise] ein Eintrag oder sein Kopf wurde verändert, oder ein anderes Programm hat sie gepackt
    }

# Timestamps.
evidence-stamp-wrong = Zeitstempel { $file }: { $why }
evidence-stamps-full = { $folder } enthält schon { $count } Zeitstempel
evidence-token-form = weder Antwort einer Zeitstempelstelle noch Zeitstempel (RFC 3161, DER): { $why }
evidence-token-refused = eine Ablehnung der Zeitstempelstelle (Status { $status }): neu anfragen
evidence-token-other = für andere Bytes ausgestellt: einen Zeitstempel für diesen Ordner anfragen
evidence-token-unsigned = nicht so signiert, wie angegeben ({ $why })
evidence-token =
    { $problem ->
        [no-token] enthält keinen Zeitstempel
        [no-signed-data] enthält keine signierten Daten
        [no-timestamp] signierte Daten, aber kein Zeitstempel
        [no-time] enthält keine Zeit
        [signers] nicht genau ein Unterzeichner
        [no-certificate] das Zertifikat der Zeitstempelstelle fehlt: mit certReq anfragen
        [digest] verwendet eine Prüfsumme, der dieses Programm nicht vertraut
        [version] von unbekannter Version
        [extensions] enthält Erweiterungen, die dieses Programm nicht kennt
        [bad-time] enthält eine Zeit, die keine ist
        [no-attributes] signiert keine Attribute
        [no-kind] signiert nicht, was es ist
        [other-kind] signiert einen Inhalt anderer Art
        [no-digest] signiert seinen Inhalt nicht
       *[unnamed-signer] nennt das Zertifikat nicht, das signiert hat (RFC 5816)
    }
evidence-token-altered = Zeit oder Prüfsumme wurde verändert
evidence-token-method = Dieses Programm kennt das Verfahren nicht: { $method }
evidence-token-key = Die Signatur ist nicht vom Schlüssel des Zertifikats
evidence-certificate-unreadable = Das Zertifikat ist nicht lesbar ({ $why })
evidence-authorities = { $file }: { $why }; das Wurzelzertifikat der Zeitstempelstelle in PEM angeben
evidence-authorities-no-pem = keine PEM-Datei ({ $why })
evidence-authorities-empty = enthält kein Zertifikat
evidence-authorities-bad = enthält ein fehlerhaftes Zertifikat ({ $why })
evidence-authority-elsewhere = Das Zertifikat führt zu keiner der angegebenen Zeitstempelstellen (--timestamp-ca)
evidence-authority-early = Die Zeit liegt vor 1970
evidence-authority-unlisted = nicht angegeben: { $who }. { $why }
evidence-authority-wrong =
    { $problem ->
        [usage] Das Zertifikat gilt nicht allein für Zeitstempel, als kritisch bezeichnet (RFC 3161, 2.3)
        [early] Das Zertifikat galt noch nicht, als gestempelt wurde
       *[late] Das Zertifikat war abgelaufen, als gestempelt wurde
    }
evidence-token-turn = kein Zeitstempel, der an der Reihe ist: Ein früherer fehlt, sodass er hier nichts deckt
evidence-unstamped = keiner, obwohl Zeitstempelstellen angegeben wurden (--timestamp-ca); ob es je einen gab, lässt sich nicht sagen
evidence-stamp-time =
    { $problem ->
        [ahead] Er nennt { $when }; das liegt mehr als fünf Minuten nach der Uhr dieses Rechners
       *[falls] Er nennt { $when }; das liegt vor dem Zeitstempel, den er deckt
    }
evidence-stamped-before =
    { $what ->
        [calibration] Er nennt { $when }: gestempelt, bevor laut Auftrag kalibriert wurde
       *[photo] Er nennt { $when }: gestempelt, bevor die Fotos laut { $what } aufgenommen wurden
    }

# PDF reports that are signed.
evidence-pdf-field = Signatur dieses Berichts
evidence-pdf-problem =
    { $problem ->
        [no-key] enthält keinen privaten Schlüssel in PEM: die Datei des Schlüssels nennen oder einen mit `baywitness certificate` anlegen
        [locked] der private Schlüssel ist verschlüsselt: ohne Passwort in eine Datei schreiben, die nur Sie lesen dürfen (`openssl pkey -in KEY -out FILE`)
        [key-kind] der Schlüssel ist von anderer Art: einen für ECDSA auf P-256 oder P-384 nennen oder einen für RSA mit 2048 bis 4096 Bit
        [no-certificate] enthält kein Zertifikat in PEM oder zu viele: die Datei des Zertifikats mit --certificate nennen
        [unreadable] enthält ein Zertifikat, das nicht lesbar ist: beim Aussteller in PEM anfragen
        [other-key] keines der Zertifikate gehört zum privaten Schlüssel: das nennen, das für diesen Schlüssel ausgestellt wurde
        [usage] das Zertifikat ist für anderes als Signaturen: eines mit der Verwendung digitalSignature oder nonRepudiation anfragen
        [early] das Zertifikat gilt noch nicht: die Uhr dieses Rechners stellen oder warten
        [late] das Zertifikat ist abgelaufen: ein neues besorgen oder eines mit `baywitness certificate` anlegen
        [no-pdf] kein PDF-Bericht dieses Programms
        [signed-already] schon signiert: den Bericht neu schreiben und diesen signieren
        [unsigned] ein PDF ohne Signatur: mit --sign-pdf schreiben
        [range] die Signatur deckt nicht die ganze Datei ab: nach dem Signieren wurde etwas angefügt oder abgeschnitten
        [no-signature] die Signatur ist keine, die dieses Programm liest (PAdES, ein Unterzeichner)
        [stamped-already] hat schon einen Zeitstempel
        [no-room] der Zeitstempel ist größer als der Platz dafür: eine Zeitstempelstelle mit kürzeren Antworten fragen
        [name] der Name ist leer, länger als 64 Zeichen oder enthält Steuerzeichen oder Zeichen, die die Schreibrichtung umkehren
       *[years] ein Zertifikat gilt 1 bis 10 Jahre
    }
evidence-pdf-by = von { $who }, über die ganze Datei; Uhr des Unterzeichners: { $when }
evidence-pdf-listed = { $who }; das Zertifikat wurde angegeben
evidence-pdf-unlisted = das Zertifikat ist keines der angegebenen; SHA-256: { $print }
evidence-pdf-no-certificates = keine Zertifikate angegeben (--certificates)
evidence-pdf-stamped = signiert spätestens { $when }, laut { $authority }
evidence-pdf-earlier = eine frühere, von { $who }, über die ersten { $count } Bytes der Datei; was dahinter steht, kam später dazu und lag dem Unterzeichner nicht vor
evidence-pdf-earlier-false = eine frühere Signatur, von { $who }, gilt nicht ({ $why }); die letzte ist von { $last }
evidence-pdf-uncounted =
    { $problem ->
        [usage] { $who }; das Zertifikat wurde angegeben, ist aber nicht für Signaturen
        [early] { $who }; das Zertifikat wurde angegeben, galt beim Signieren aber noch nicht ({ $when })
       *[late] { $who }; das Zertifikat wurde angegeben, war beim Signieren aber abgelaufen ({ $when })
    }
evidence-pdf-claim =
    { $problem ->
        [ahead] Die Uhr des Unterzeichners zeigte { $when }; das liegt nach der Uhr dieses Rechners: Eine von beiden geht falsch
       *[stamped] Die Uhr des Unterzeichners zeigte { $when }, die Signatur wurde aber vorher gestempelt: Diese Uhr ging falsch
    }
evidence-reports-same = { $count } Dateien, jede das, was das versiegelte Ergebnis und die Fotos geben
evidence-reports-other = { $files }: nicht, was { $result } und die versiegelten Fotos geben, sondern von einem anderen Ergebnis oder verändert
evidence-reports-by-other = von Version { $recorded } gemacht: Version { $now } kann sie nicht nochmals machen, und so ist nicht zu sagen, ob sie zu diesem Ergebnis gehören
evidence-report-unsigned = der Bericht (PDF) trägt keine Signatur
evidence-report-state =
    { $state ->
        [holds] Bericht signiert von { $who }, für den hier niemand bürgt (--certificates)
        [listed] Bericht signiert von { $who }; das Zertifikat wurde angegeben
        [unlisted] Bericht signiert von { $who }; das Zertifikat ist keines der angegebenen oder galt beim Signieren nicht
        [broken] die Signatur des Berichts gilt nicht
       *[none] Bericht nicht signiert
    }
evidence-pdf-not-signed = Dieser Bericht ist nicht signiert: er wurde ohne den Schlüssel (--sign-pdf) neu erstellt. Der Bericht, den er ersetzt, signiert von { $who }, liegt daneben als { $file }.
evidence-pdf-signature = die Signatur gilt nicht: { $why }
evidence-pdf-form = die Signatur lässt sich nicht lesen oder schreiben ({ $why })

# The log of attempts: what is wrong with its files.
evidence-log-none = { $folder } enthält kein Versuchsprotokoll: eines mit `baywitness log new { $folder } --origin NAME` anlegen oder einen anderen Ordner nennen
evidence-log-name = „{ $name }“ ist kein Name eines Protokolls oder Zeugen: einen wie shop.example/attempts schreiben, ohne Leer- und Pluszeichen
evidence-verifier =
    { $problem ->
        [parts] „{ $text }“ ist kein Prüfschlüssel: Name, Kennung und Schlüssel zwischen Pluszeichen fehlen
        [base64] „{ $text }“ ist kein Prüfschlüssel: Der Schlüssel ist nicht base64
        [kind] „{ $text }“ ist kein Prüfschlüssel: Dieses Programm liest Ed25519-Schlüssel von Protokollen (1) und Zeugen (4)
        [key] „{ $text }“ ist kein Prüfschlüssel: Der Schlüssel ist kein Ed25519-Schlüssel
       *[id] „{ $text }“ ist kein Prüfschlüssel: Die Kennung gehört nicht zu Name und Schlüssel
    }
evidence-verifier-line = { $file }, Zeile { $line }: { $why }
evidence-note =
    { $problem ->
        [characters] kein signierter Vermerk: enthält Steuerzeichen oder endet mitten in einer Zeile
        [empty-line] kein signierter Vermerk: vor den Signaturen steht keine leere Zeile
       *[signatures] kein signierter Vermerk: eine Zeile der Signaturen ist keine
    }
evidence-note-count = { $count } Signaturen, nicht 1 bis { $most }
evidence-checkpoint =
    { $problem ->
        [lines] kein Prüfpunkt: Herkunft, Größe und Wurzel fehlen
        [numbers] kein Prüfpunkt: Die zweite Zeile ist keine Größe oder die dritte keine Wurzel
       *[spelling] kein Prüfpunkt: nicht wie einer geschrieben
    }
evidence-checkpoint-false = eine Signatur von { $key } ist falsch
evidence-checkpoint-unsigned = nicht vom Schlüssel von { $log } signiert
evidence-proof =
    { $problem ->
        [head] kein Beleg: vor einem Prüfpunkt fehlt die leere Zeile
        [first-line] kein Beleg: Die erste Zeile ist nicht { $first_line }
        [entry] kein Beleg eines Versuchs: Die zweite Zeile enthält den Eintrag nicht
        [index] kein Beleg: Die dritte Zeile hat keine Nummer
        [hash] kein Beleg: eine Zeile des Pfads ist kein Hash
        [spelling] nicht so geschrieben, wie ein Beleg geschrieben wird
       *[path] zeigt nicht, dass der Eintrag im Protokoll ist: Der Pfad führt nicht zur Wurzel
    }
evidence-proof-entry = enthält einen Eintrag, der keiner ist: { $why }
evidence-attempt-photos = { $count } Fotos sind mehr, als ein Eintrag fasst: den Auftrag teilen
evidence-attempt-form = kein { $format } ({ $why })
evidence-attempt-spelling = nicht wie { $format } geschrieben
evidence-attempt-other = von einem anderen Versuch, verschieden in: { $parts }
evidence-attempt-part =
    { $part ->
        [photos] Fotos
        [job] job.toml
        [setup] Vorgabeblatt
        [result] Ergebnis
       *[verdict] Urteil
    }
evidence-no-result = daneben liegt kein Ergebnis ({ $why })
evidence-bad-result = daneben liegt kein lesbares Ergebnis ({ $why })
evidence-log-does-not-fit = passt nicht zum heutigen Protokoll: { $why }
evidence-tile =
    { $problem ->
        [none] diese Kachel gibt es nicht
        [subtree] ein Teilbaum wird verlangt, den der Baum nicht hat
       *[altered] wurde verändert
    }
evidence-tile-hashes = enthält nicht { $count } Hashes
evidence-tile-entries = enthält nicht { $count } Einträge, jeden hinter seiner Länge
evidence-tile-entry = Eintrag Nummer { $entry } ist ein anderer als der des Hashs in tile/0
evidence-tiles-level = Hashes der Ebene { $level } sind nicht die der Kacheln darunter
evidence-tiles-root = enthält Kacheln, die nicht die Wurzel des Prüfpunkts mit { $size } Einträgen ergeben: Sie wurden verändert oder gehören zu einem anderen Stand des Protokolls
evidence-log-no-such-entry = { $size } Einträge, keiner mit der Nummer { $entry }
evidence-log-other = Dies ist das Protokoll { $log }, { $file } ist von { $other }
evidence-log-truncated = { $size } Einträge, in { $file } aber { $earlier }: Das Protokoll wurde gekürzt, oder dies ist eine alte Kopie
evidence-log-forked = Dies und { $file } sind zwei Prüfpunkte mit { $size } Einträgen und verschiedenen Wurzeln: Das Protokoll wurde gespalten
evidence-log-rewritten = beginnt nicht mit den { $size } Einträgen von { $file }: Das Protokoll wurde umgeschrieben
evidence-log-key-not-given = Dies ist das Protokoll { $log }, dessen Prüfschlüssel nicht angegeben wurde
evidence-witness-own-key = dieser Schlüssel ist der des Versuchsprotokolls { $log } selbst, das nicht für sich selbst zeugen kann: einen eigenen Schlüssel des Zeugen angeben
evidence-witness-of-another = hier ist das Versuchsprotokoll { $other } gemerkt, nicht { $log }: mit --seen für jedes Versuchsprotokoll eine eigene Datei angeben
evidence-log-key-file =
    { $problem ->
        [salt] kein Geheimnis aus 64 Hexadezimalziffern
        [no-key] kein privater Schlüssel von ssh-keygen
        [kind] kein ed25519-Schlüssel ohne Passphrase
       *[other-key] nicht vom eigenen Schlüssel des Protokolls signiert
    }
evidence-log-not-made = kein Protokoll angelegt: { $why }
evidence-log-exists = schon da: Ein Protokoll wird einmal angelegt und unter seinem Namen nie neu
evidence-log-no-key = kein Schlüssel angelegt ({ $why })
evidence-log-refuses = nimmt den Auftrag nicht an: { $why }
evidence-log-went-back = nicht das, wofür { $file } signiert wurde ({ $why }): Es ging auf eine ältere Kopie zurück oder wurde verändert. Die neueste Kopie zurückholen; weiterzumachen würde das Protokoll spalten
evidence-log-published = eine nach dem Signieren abgebrochene Ergänzung ist veröffentlicht: { $size } Einträge
evidence-log-removed =
    { $count ->
        [one] eine Datei einer abgebrochenen, nie bestätigten Ergänzung ist entfernt
       *[other] { $count } Dateien einer abgebrochenen, nie bestätigten Ergänzung sind entfernt
    }

# A job gathered, measured again, masked, audited.
evidence-altered = { $path } wurde verändert: { $why }
evidence-altered-item = { $item }: { $found }
evidence-otherwise = { $path }: Neu gemessen sagen die Fotos anderes: { $differences }
evidence-judge-gone = { $path } war beim vorigen Prüflauf da und fehlt jetzt, auch anderswo im Archiv liegt der Auftrag nicht; wurde er zu Recht entfernt, in einen anderen Ordner prüfen (--out)
evidence-judge-fault = Das Programm ist an diesem Auftrag gescheitert: bitte melden, möglichst mit dem Auftrag
evidence-unpack-room = Ein Ordner zum Auspacken von { $path } lässt sich nicht anlegen: { $why }
evidence-holds-no-job = { $folder } enthält keinen Auftrag
evidence-ledger-busy = Ein anderer Prüflauf schreibt in { $folder }: abwarten oder einen anderen Ordner nennen
evidence-ledger-no-message = Das Ergebnis ist nicht lesbar
evidence-redact-altered = { $folder } ist nicht unverändert: zuerst prüfen
evidence-redact-otherwise = { $folder } wird nicht kopiert: Neu gemessen sagen die Fotos anderes ({ $why }); den Ordner prüfen
evidence-redact-copy = { $folder } ist schon eine Kopie: den versiegelten Ordner nennen
evidence-redact-write = Die maskierte Kopie von { $photo } lässt sich nicht schreiben: { $why }
evidence-remeasure-result = Das festgehaltene Ergebnis { $file } ist nicht lesbar: { $why }
evidence-remeasure-room = kein Platz zum Messen: { $why }; Platz für vorläufige Dateien schaffen und nochmals prüfen
evidence-remeasure-no-job = Der Ordner enthält keinen Auftrag
evidence-remeasure-job = Der Auftrag im Ordner lässt sich nicht messen: { $why }
evidence-difference = { $what }: festgehalten { $recorded }, jetzt { $now }
evidence-difference-credentials = Herkunftsnachweise von { $photo }
evidence-credentials-gone = aufgezeichnet, aber kein Foto trägt welche
evidence-credentials-as-recorded = wie aufgezeichnet: { $counts }; dieses Programm wurde ohne sie gebaut und hat sie nicht erneut geprüft
evidence-difference-place = { $place } in { $file }
evidence-written-otherwise = { $file } ist nicht so, wie das Programm sie schreibt: etwas steht zweimal darin, oder etwas, das kein Ergebnis hat
evidence-more-files = weder der Auftrag noch sein Ergebnis hat { $files }
evidence-label-other = { $file } sagt „{ $label }: { $value }“, sein Ergebnis sagt das nicht
evidence-label-count = { $file } sagt „{ $label }: { $value }“, gezählt ist { $counted }
evidence-found-shared = bei den Modellen, mit deren eigenen Bytes
evidence-found-own = im Ordner des Auftrags selbst
evidence-labels-lack = in { $file } fehlen Angaben, die beim Versiegeln geschrieben werden
evidence-no-reports = im Ordner ist keiner: das Versiegeln legt sie dort ab
evidence-unread-result = es lässt sich nicht als Ergebnis lesen
evidence-difference-what =
    { $what ->
        [job] Auftrag
        [verdict] Urteil
        [inputs] gelesene Dateien
        [findings] Befunde
        [checks] Prüfgrößen
        [reason] Begründung
        [budget] Unsicherheitsbudget
        [readings] Ablesungen
        [photos] Fotos
        [attachments] Anlagen
       *[quantities] Größen
    }
evidence-nothing = nichts
