# Das eigene Muster eines Sensors: seine Datei, und was es über ein Foto sagt.
pattern-too-large = { $file }: ist größer, als ein Sensormuster sein darf; mit camera fit --pattern neu erstellen
pattern-no-head = { $file }: ist kein Sensormuster ({ $why }); eine Datei angeben, die camera fit --pattern geschrieben hat
pattern-not-whole = { $file }: ist nicht vollständig: Was den ersten Zeilen folgt, passt nicht zu ihnen; mit camera fit --pattern neu erstellen
pattern-sizes = { $photo }: hat { $width } mal { $height } Pixel, das erste Foto { $first_width } mal { $first_height }: Ein Muster braucht Fotos gleicher Größe; dieses weglassen
pattern-few = { $photos } Fotos sind zu wenige für ein Sensormuster: Es braucht { $least }
pattern-faint = nur { $shown } von { $photos } Fotos zeigen ein Muster der anderen: Die Kamera verdeckt es, oder die Fotos sind von mehreren Kameras; es wird kein Muster geschrieben
pattern-made = Sensormuster: { $shown } von { $photos } Fotos finden sich im Muster der anderen wieder (die Hälfte mit einer Energie von { $energy } oder mehr; ab { $needed } zählt es)
pattern-this-camera = { $photo }: diese Kamera, { $camera } (Wahrscheinlichkeit eines Zufalls höchstens { $chance })
pattern-another-camera = { $photo }: eine andere Kamera: Es trägt das Muster von { $other } (Wahrscheinlichkeit eines Zufalls höchstens { $chance }) und nicht das von { $camera }, das zu sehen gewesen wäre
pattern-cant-tell =
    { $photo }: nicht zu entscheiden, ob es { $camera } ist: { $why ->
        [no-pattern] Von dieser Kamera ist kein Muster bekannt
        [might-hide] Es trägt das Muster einer anderen bekannten Kamera, aber zu schwach, als dass das eigene zu sehen gewesen sein müsste
        [alike] Es trägt das Muster einer anderen bekannten Kamera, das dem eigenen gleicht: eine Kamera unter zwei Namen, oder eine Bauart, deren Muster nicht zu unterscheiden sind
       *[faint] Ihr Muster ist nicht zu sehen: eine andere Kamera, oder Verarbeitung, zusammengefügte Aufnahmen oder eine Bearbeitung haben es verdeckt
    }
pattern-no-camera = { $photo }: nicht zu entscheiden: Keine Kameradatei passt dazu
pattern-title = Welche Kamera, nach dem eigenen Muster des Sensors (an wenigen Kameras erprobt: docs/sensor-pattern.md)
pattern-twice = { $first } und { $second } sind beide Muster der Kamera { $camera }: eines davon weglassen
pattern-none = { $folder }: enthält kein Sensormuster (Dateien, die auf .pattern enden); camera fit --pattern erstellt eines
pattern-counts = { $this } Fotos von der genannten Kamera, { $another } von einer anderen, { $cant } nicht zu entscheiden
pattern-all = alle: { $file }
pattern-not-looked = nicht betrachtet: { $why }
