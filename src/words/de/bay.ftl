# The floor of a bay.
bay-title = Boden des Kalibrierplatzes
bay-head = Boden des Kalibrierplatzes, { $sheets ->
        [one] ein Bodenblatt
       *[other] { $sheets } Bodenblätter
    }, { $photos ->
        [one] ein Foto
       *[other] { $photos } Fotos
    }
bay-basis-typed = Höhen über der Ebene, auf der die Räder stehen (Nabenhöhe wie eingegeben). Fotos kennen kein Lot: Ob diese Ebene waagerecht ist, zeigt nur eine Wasserwaage.
bay-basis-wheels = Höhen über einer Ebene parallel zu den Radmitten; null ist der Boden bei den Hinterrädern. Fotos kennen kein Lot: Ob diese Ebene waagerecht ist, zeigt nur eine Wasserwaage.
bay-basis-sheets = Keine Radplatten zu sehen: Höhen über der Ausgleichsebene der Bodenblätter, kein Gefälle gegen das Fahrzeug.
bay-limit =
    { $what }: { $value } ±{ $u } { $unit }, { $bound ->
        [most] höchstens { $limit } { $unit } verlangt
        [least] mindestens { $limit } { $unit } verlangt
       *[none] kein Grenzwert im Vorgabeblatt
    }
bay-limit-verdict = { $figure }: { $verdict }
bay-rise = Der Boden { $front ->
        [up] steigt nach vorn um { $front_deg }° ({ $front_mm } mm/m)
        [down] fällt nach vorn um { $front_deg }° ({ $front_mm } mm/m)
       *[flat] steigt nach vorn nicht
    } und { $left ->
        [up] steigt nach links um { $left_deg }° ({ $left_mm } mm/m)
        [down] fällt nach links um { $left_deg }° ({ $left_mm } mm/m)
       *[flat] steigt nach links nicht
    }.
bay-twist = Die vier Radmitten sind um { $twist } mm gegeneinander verwunden.
bay-column-sheet = Bodenblatt
bay-column-ahead = Vor der Hinterachse
bay-column-left = Nach links
bay-column-height-mm = Höhe, mm
bay-column-off-plane-mm = Abweichung von der Ebene, mm
bay-column-height = Höhe, 95 %
bay-column-off-plane = Abweichung von der Ebene
bay-column-rise = Eigene Steigung, vorn / links
bay-map = Höhen des Bodens von oben
bay-map-written = Karte: { $file }
bay-foot = Zwischen den Bodenblättern ist die Karte interpoliert. Maßgeblich sind die Unterlagen des Fahrzeugherstellers und örtliche Regeln; Laser und angehobene Fahrzeuge brauchen eigene Schutzmaßnahmen.
