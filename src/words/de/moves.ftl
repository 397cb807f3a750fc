# Was am Gestell zu tun ist; eine kurze Angabe, wo nichts zu tun ist.
moves-none-needed = nichts zu ändern
moves-not-measured = nicht gemessen
moves-not-decided = nicht entschieden
moves-leave-it = stehen lassen
moves-later = noch nichts
moves-held = nichts bewegen, solange der Befund „{ $finding }“ besteht: zuerst klären

moves-turn =
    { $way ->
        [left] Gestell um { $angle }° drehen: das Ende auf der linken Fahrzeugseite { $ends } mm zum Fahrzeug hin, das Ende auf der rechten { $ends } mm vom Fahrzeug weg.
       *[right] Gestell um { $angle }° drehen: das Ende auf der linken Fahrzeugseite { $ends } mm vom Fahrzeug weg, das Ende auf der rechten { $ends } mm zum Fahrzeug hin.
    }
moves-sideways =
    { $way ->
        [left] Gestell { $by } mm zur linken Fahrzeugseite versetzen.
       *[right] Gestell { $by } mm zur rechten Fahrzeugseite versetzen.
    }
moves-along =
    { $way ->
        [away] Gestell { $by } mm vom Fahrzeug weg bewegen.
       *[towards] Gestell { $by } mm zum Fahrzeug hin bewegen.
    }
moves-height =
    { $way ->
        [up] Zieltafel um { $by } mm höher stellen.
       *[down] Zieltafel um { $by } mm tiefer stellen.
    }
moves-tilt =
    { $way ->
        [away] Zieltafel um { $angle }° neigen: die Oberkante gegenüber der Unterkante { $top } mm vom Fahrzeug weg.
       *[towards] Zieltafel um { $angle }° neigen: die Oberkante gegenüber der Unterkante { $top } mm zum Fahrzeug hin.
    }
moves-level =
    { $way ->
        [lower] Querneigung der Zieltafel um { $angle }° ausgleichen: das Ende auf der rechten Fahrzeugseite um { $end } mm senken oder das andere ebenso viel heben.
       *[raise] Querneigung der Zieltafel um { $angle }° ausgleichen: das Ende auf der rechten Fahrzeugseite um { $end } mm heben oder das andere ebenso viel senken.
    }
moves-side-ranges =
    { $way ->
        [longer] Gestell drehen, bis der linke Seitenabstand gegenüber dem rechten { $by } mm länger ist: das Ende auf der linken Fahrzeugseite vom Fahrzeug weg.
       *[shorter] Gestell drehen, bis der linke Seitenabstand gegenüber dem rechten { $by } mm kürzer ist: das Ende auf der linken Fahrzeugseite zum Fahrzeug hin.
    }
moves-steering =
    { $way ->
        [left] Lenkung drehen, bis die Vorderräder { $angle }° weiter nach links zeigen.
       *[right] Lenkung drehen, bis die Vorderräder { $angle }° weiter nach rechts zeigen.
    }
moves-plate =
    { $way ->
        [forwards] Radplatte um { $angle }° um die Radachse drehen: Oberkante nach vorn.
       *[rearwards] Radplatte um { $angle }° um die Radachse drehen: Oberkante nach hinten.
    }
moves-vehicle = Abweichung { $by }: { $quantity }. Das ist Sache des Fahrzeugs, nicht des Gestells.

moves-unasked = ohne Vorgabe { $moved } bewegt: { $left } zurück
moves-not-seen = Soll { $asked }, in den Fotos keine Bewegung erkennbar: noch { $left }
moves-wrong-way = Soll { $asked }, { $moved } in die falsche Richtung bewegt: noch { $left }
moves-far-enough = Soll { $asked }, { $moved } bewegt: weit genug
moves-as-far-as-told = Soll { $asked }, { $moved } bewegt: richtig, soweit es die Fotos zeigen
moves-more = Soll { $asked }, { $moved } bewegt: noch { $left }
moves-back = Soll { $asked }, { $moved } bewegt: { $left } zurück
moves-of-check = { $quantity }: { $words }

moves-screw =
    { $amount ->
        [one] { $way ->
            [clockwise] { $turns } Umdrehung im Uhrzeigersinn an „{ $screw }“
           *[counter] { $turns } Umdrehung gegen den Uhrzeigersinn an „{ $screw }“
        }
       *[several] { $way ->
            [clockwise] { $turns } Umdrehungen im Uhrzeigersinn an „{ $screw }“
           *[counter] { $turns } Umdrehungen gegen den Uhrzeigersinn an „{ $screw }“
        }
    }
moves-screw-unknown = { $turns } Umdrehungen an „{ $screw }“: die Wirkung ist aus diesen Fotos nicht zu erkennen
moves-screw-gave = { $turns } Umdrehungen an „{ $screw }“ ergaben { $gave } (±{ $uncertainty }): { $per_turn } je Umdrehung, laut Gestelldatei { $stated }
moves-screw-learned =
    { $way ->
        [other] { $turns }; eine Umdrehung ergibt hier tatsächlich { $gives } in Gegenrichtung, laut Gestelldatei { $stated }
       *[same] { $turns }; eine Umdrehung ergibt hier tatsächlich { $gives }, laut Gestelldatei { $stated }
    }

# Was ein Foto einer Kamera auf einem Stativ zeigt und was daraus wird.
moves-tripod-first = das erste Foto; erst das nächste zeigt, ob das Gestell ruht
moves-tripod-new-place = das Gestell ruht an einem neuen Ort
moves-tripod-same-place = das Gestell steht, wo es stand
moves-tripod-unsure = das Gestell steht vielleicht an einem neuen Ort; das nächste Foto klärt es
moves-tripod-skipped = übersprungen: { $why }
moves-tripod-rest = seit dem vorigen Foto hat sich nichts bewegt
moves-tripod-stand = das Gestell hat sich seit dem vorigen Foto bewegt
moves-tripod-itself = das Stativ selbst wurde bewegt, oder Gestell und Fahrzeug zugleich: das Stativ nicht mehr berühren, die nächsten Fotos zählen wieder
moves-tripod-vehicle = das Fahrzeug hat sich bewegt, die Bodenblätter nicht: die ersten Fotos gelten nicht mehr, einen neuen Versuch beginnen
moves-tripod-one = { $body } hat sich bewegt, außer dem Gestell sonst nichts: den Sitz prüfen
moves-tripod-no-stand = die Marker des Gestells sind nicht zu sehen, oder nicht dieselben wie im vorigen Foto
moves-tripod-nothing-fixed = es zeigt keine Radplatte und kein Bodenblatt, die auch das vorige Foto zeigt
moves-tripod-other-size = es hat eine andere Größe als das vorige Foto: die Einstellungen der Kamera nicht ändern
moves-tripod-kept-first = { $photo }, nach Bewegung { $move }
moves-tripod-kept-instead = { $photo } anstelle des vorigen Fotos
moves-tripod-older-stays = nicht behalten, weil ein protokolliertes Urteil auf { $photo } beruht
moves-tripod-already = liegt schon vor als { $photo }

moves-leave-stand = Das Gestell stehen lassen. { $reason }
moves-one-more-photo = Ein weiteres Foto ist nötig.
moves-too-few-photos =
    { $have ->
        [0] Der Wert liegt innerhalb der Toleranz, aber kein Foto des jetzigen Standorts weist es nach: das Vorgabeblatt verlangt { $wanted }. { $more }
        [one] Der Wert liegt innerhalb der Toleranz, aber ein Foto des jetzigen Standorts misst nur und weist nicht nach: das Vorgabeblatt verlangt { $wanted }. { $more }
       *[other] Der Wert liegt innerhalb der Toleranz, aber { $have } Fotos des jetzigen Standorts messen nur und weisen nicht nach: das Vorgabeblatt verlangt { $wanted }. { $more }
    }
moves-too-few-in-step =
    { $have ->
        [0] Der Wert liegt innerhalb der Toleranz, aber kein Foto von Schritt { $step } zeigt das Gestell mit dem Fahrzeug: für den Nachweis sind { $wanted } nötig. { $more }
        [one] Der Wert liegt innerhalb der Toleranz, aber ein einziges Foto von Schritt { $step } misst nur und weist nicht nach, denn nichts könnte ihm widersprechen. Nötig sind { $wanted }. { $more }
       *[other] Der Wert liegt innerhalb der Toleranz, aber { $have } Fotos von Schritt { $step } messen nur und weisen nicht nach: nötig sind { $wanted }. { $more }
    }
moves-take-more =
    { $photos ->
        [one] Alles stehen lassen und noch ein Foto vom Gestell mit Radplatten und Bodenblättern von einer anderen Stelle aufnehmen.
       *[other] Alles stehen lassen und noch { $photos } Fotos vom Gestell mit Radplatten und Bodenblättern von anderen Stellen aufnehmen.
    }
moves-counts-later =
    { $photos ->
        [one] Der Wert liegt innerhalb der Toleranz; das zählt, sobald das Gestell endgültig steht und ein Foto es dort zeigt.
       *[other] Der Wert liegt innerhalb der Toleranz; das zählt, sobald das Gestell endgültig steht und { $photos } Fotos es dort zeigen.
    }
moves-no-place = Der Standort des Gestells nach Bewegung { $move } wurde nicht gemessen: kein Foto zeigt es dort zusammen mit den Radplatten oder Bodenblättern der früheren Fotos. Ein solches Foto aufnehmen.
moves-no-place-because = Der Standort des Gestells nach Bewegung { $move } wurde nicht gemessen.

moves-apart-unlinked = Die Versuche haben kein Bodenblatt und keine Radplatte gemeinsam und sind nicht vergleichbar
moves-apart-unsettled = Die Fotos der beiden Versuche ließen sich nicht gemeinsam ausgleichen
moves-apart-elsewhere = Standort um etwa { $mm } mm und { $degrees }° geändert: { $body }
moves-apart-stand-unseen = Das Gestell ist nicht in beiden Versuchen zu sehen
moves-apart-untold = Nicht zu erkennen ist, ob sich der Standort geändert hat: { $body }

moves-ride-height =
    { $way ->
        [lower] Die Karosserie steht im Mittel { $by } mm (±{ $uncertainty }) tiefer als die Radlaufhöhen des Vorgabeblatts.
       *[higher] Die Karosserie steht im Mittel { $by } mm (±{ $uncertainty }) höher als die Radlaufhöhen des Vorgabeblatts.
    }
moves-body-pitch =
    { $way ->
        [down] Die Fahrzeugfront zeigt dagegen { $by }° (±{ $uncertainty }) nach unten, und ein Sensor daran mit ihr.
       *[up] Die Fahrzeugfront zeigt dagegen { $by }° (±{ $uncertainty }) nach oben, und ein Sensor daran mit ihr.
    }
