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
    }: { $whole ->
        [yes] keines seiner { $gone } Fotos ist im Archiv
       *[no] { $gone } seiner { $photos } Fotos sind in keinem Auftrag des Archivs
    } ({ $entries })
evidence-log-entry = Eintrag { $entry } am { $when }: { $verdict }
evidence-log-entry-with = Eintrag { $entry } am { $when }: { $with ->
        [both] { $verdict } mit anderem job.toml und anderem Vorgabeblatt
        [job] { $verdict } mit anderem job.toml
        [setup] { $verdict } mit anderem Vorgabeblatt
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } davor; { $entries }
evidence-log-restated = Die Fotos von { $path }, jetzt { $now }, wurden anders beurteilt: { $entries }
evidence-log-no-entry = { $path } ist versiegelt, im Versuchsprotokoll fehlt ein Eintrag dazu
evidence-log-summary = Versuchsprotokoll { $log }: { $size } Einträge, { $signed ->
        [yes] von einem gültigen Schlüssel signiert
       *[no] Prüfschlüssel nicht angegeben (--log-keys)
    }{ $witnessed ->
        [yes] , gegengezeichnet von { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; es beginnt mit jedem aufbewahrten Prüfpunkt
       *[no] { "" }
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

# An audited archive.
evidence-audit-title = Prüflauf über Aufstellungen
evidence-audit-unreadable = unlesbar oder verändert
evidence-audit-filter = Zeilen zeigen mit
evidence-audit-filter-hint = Wörtern der Zeile
evidence-audit-shown = { $shown } von { $count } angezeigt
evidence-audit-foot = Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln. Diese Zahlen dokumentieren Aufstellungen und ersetzen kein Verfahren; die Arbeit ist Sache von Fachpersonal, Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen.
evidence-audit-progress = { $done } von { $total } ({ $kept } von früher), { $rate } je Sekunde, noch { $left } s
evidence-audit-jobs = { $count } Aufträge, davon { $kept } aus einem früheren Prüflauf
evidence-audit-across = teilen ein Foto oder eine Aufstellung mit einem früheren Auftrag: siehe Bericht
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
       *[altered] verändert
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
        [signer] Unterzeichner
        [authority] Zeitstempelstelle
        [measured-again] neu gemessen
        [log] Versuchsprotokoll
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] unverändert und signiert
        [unknown] unverändert, Unterzeichner unbekannt
        [unsigned] unverändert, nicht signiert
       *[altered] verändert
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
       *[altered] { $file } wurde verändert
    }
evidence-files = { $count } Dateien, keine fehlt, kam hinzu oder wurde verändert (SHA-512)
evidence-unsigned = Der Ordner ist nicht signiert
evidence-signed = mit dem Schlüssel { $key }
evidence-name-not-utf8 = { $file } ist nicht UTF-8
evidence-name-case = { $first } und { $second } unterscheiden sich nur in Groß- und Kleinschreibung
evidence-name-link = { $file } ist ein Link oder sonst etwas, das keine Datei ist
evidence-too-many = Es sind mehr als { $count } Dateien
evidence-stamped = versiegelt spätestens { $when }, sagt { $authority }
evidence-copy-unreadable = Nicht lesbar: { $why }
evidence-copy-other-manifest = { $file } ist nicht die, die { $list } nennt
evidence-copy-signed = die des versiegelten Ordners, mit dem Schlüssel { $key }
evidence-copy-unsigned = Der versiegelte Ordner war nicht signiert
evidence-copy-state =
    { $state ->
        [altered] { $file } ist nicht wie versiegelt und nicht als maskiert genannt
        [missing] { $file } war versiegelt, ist nicht hier und nicht als weggelassen genannt
       *[strange] { $file } ist als maskiert oder weggelassen genannt und war nie versiegelt
    }
evidence-copy = { $count } Dateien wie versiegelt, { $masked } Fotos maskiert, { $left_out } Dateien weggelassen
evidence-not-measured =
    { $why ->
        [copy] nicht neu gemessen: Die Fotos sind maskiert, ganz hat sie der versiegelte Ordner
       *[altered] nicht neu gemessen: Die Bytes sind nicht die versiegelten
    }
evidence-no-signers = keine Liste der Unterzeichner angegeben (--signers)
evidence-signer = { $who }, in der Liste
evidence-signer-unknown = nicht anerkannt: { $why }
evidence-no-authority = kein Zertifikat einer Zeitstempelstelle angegeben (--timestamp-ca)
evidence-authority-false = nicht anerkannt: { $why }
evidence-authority-ended = Ihr Zertifikat endete am { $day }, und kein neuerer Zeitstempel deckt es
evidence-authority = { $who }; das Zertifikat endet am { $day }
evidence-measured = { $verdict }; jeder Wert auf { $share } seiner Standardunsicherheit wie festgehalten
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
