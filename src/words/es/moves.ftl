# Qué hacer en el soporte; un rótulo donde no hay nada que hacer.
moves-none-needed = nada que corregir
moves-not-measured = no medido
moves-not-decided = no decidido
moves-leave-it = dejarlo donde está
moves-later = de momento nada
moves-held = no mover nada mientras siga abierto «{ $finding }»: aclararlo primero

moves-turn =
    { $way ->
        [left] Girar el soporte { $angle }°: el extremo del lado izquierdo del vehículo { $ends } mm hacia el vehículo, el del lado derecho { $ends } mm alejándolo.
       *[right] Girar el soporte { $angle }°: el extremo del lado izquierdo del vehículo { $ends } mm alejándolo del vehículo, el del lado derecho { $ends } mm hacia él.
    }
moves-sideways =
    { $way ->
        [left] Mover el soporte { $by } mm hacia la izquierda del vehículo.
       *[right] Mover el soporte { $by } mm hacia la derecha del vehículo.
    }
moves-along =
    { $way ->
        [away] Alejar el soporte { $by } mm del vehículo.
       *[towards] Acercar el soporte { $by } mm al vehículo.
    }
moves-height =
    { $way ->
        [up] Subir la diana { $by } mm.
       *[down] Bajar la diana { $by } mm.
    }
moves-tilt =
    { $way ->
        [away] Inclinar la diana { $angle }°: el borde superior { $top } mm más lejos del vehículo que el inferior.
       *[towards] Inclinar la diana { $angle }°: el borde superior { $top } mm más cerca del vehículo que el inferior.
    }
moves-level =
    { $way ->
        [lower] Nivelar la diana { $angle }°: bajar { $end } mm el extremo del lado derecho del vehículo, o subir otro tanto el opuesto.
       *[raise] Nivelar la diana { $angle }°: subir { $end } mm el extremo del lado derecho del vehículo, o bajar otro tanto el opuesto.
    }
moves-side-ranges =
    { $way ->
        [longer] Girar el soporte hasta que la distancia lateral izquierda sea { $by } mm mayor respecto a la derecha: el extremo del lado izquierdo del vehículo, alejándolo del vehículo.
       *[shorter] Girar el soporte hasta que la distancia lateral izquierda sea { $by } mm menor respecto a la derecha: el extremo del lado izquierdo del vehículo, hacia el vehículo.
    }
moves-steering =
    { $way ->
        [left] Girar la dirección hasta que las ruedas delanteras apunten { $angle }° más a la izquierda.
       *[right] Girar la dirección hasta que las ruedas delanteras apunten { $angle }° más a la derecha.
    }
moves-plate =
    { $way ->
        [forwards] Girar la placa { $angle }° alrededor del eje de su rueda: la parte superior hacia delante.
       *[rearwards] Girar la placa { $angle }° alrededor del eje de su rueda: la parte superior hacia atrás.
    }
moves-vehicle = Desviación de { $by }: { $quantity }. Es asunto del vehículo, no del soporte.

moves-unasked = movido { $moved } sin pedirlo: { $left } de vuelta
moves-not-seen = pedido { $asked }, las fotos no muestran movimiento: faltan { $left }
moves-wrong-way = pedido { $asked }, movido { $moved } en sentido contrario: faltan { $left }
moves-far-enough = pedido { $asked }, movido { $moved }: suficiente
moves-as-far-as-told = pedido { $asked }, movido { $moved }: correcto hasta donde muestran las fotos
moves-more = pedido { $asked }, movido { $moved }: faltan { $left }
moves-back = pedido { $asked }, movido { $moved }: { $left } de vuelta
moves-of-check = { $quantity }: { $words }

moves-screw =
    { $amount ->
        [one] { $way ->
            [clockwise] { $turns } vuelta de «{ $screw }» en sentido horario
           *[counter] { $turns } vuelta de «{ $screw }» en sentido antihorario
        }
       *[several] { $way ->
            [clockwise] { $turns } vueltas de «{ $screw }» en sentido horario
           *[counter] { $turns } vueltas de «{ $screw }» en sentido antihorario
        }
    }
moves-screw-unknown = { $turns } vueltas de «{ $screw }»: estas fotos no permiten saber su efecto
moves-screw-gave = { $turns } vueltas de «{ $screw }» dieron { $gave } (±{ $uncertainty }): { $per_turn } por vuelta; el archivo del soporte indica { $stated }
moves-screw-learned =
    { $way ->
        [other] { $turns }; aquí una vuelta da en realidad { $gives } en sentido contrario; el archivo del soporte indica { $stated }
       *[same] { $turns }; aquí una vuelta da en realidad { $gives }; el archivo del soporte indica { $stated }
    }

# Lo que muestra una foto de una cámara en trípode y qué se hace con ella.
moves-tripod-first = la primera foto; la siguiente dirá si el soporte está en reposo
moves-tripod-new-place = el soporte está en reposo en un lugar nuevo
moves-tripod-same-place = el soporte sigue donde estaba
moves-tripod-unsure = el soporte quizá esté en un lugar nuevo; la siguiente foto lo dirá
moves-tripod-skipped = omitida: { $why }
moves-tripod-rest = nada se ha movido desde la foto anterior
moves-tripod-stand = el soporte se ha movido desde la foto anterior
moves-tripod-itself = se ha movido el propio trípode, o soporte y vehículo a la vez: no tocar más el trípode, las fotos siguientes vuelven a contar
moves-tripod-vehicle = el vehículo se ha movido y las láminas de suelo no: sus primeras fotos ya no valen, empezar un intento nuevo
moves-tripod-one = { $body } se ha movido, y aparte del soporte nada más: comprobar su asiento
moves-tripod-no-stand = no se ven los marcadores del soporte, o no son los mismos que en la foto anterior
moves-tripod-nothing-fixed = no muestra ninguna placa de rueda ni lámina de suelo que también muestre la foto anterior
moves-tripod-other-size = tiene otro tamaño que la foto anterior: no cambiar los ajustes de la cámara
moves-tripod-kept-first = { $photo }, tras el movimiento { $move }
moves-tripod-kept-instead = { $photo } en lugar de la foto anterior
moves-tripod-older-stays = no se guarda, porque un dictamen registrado se basa en { $photo }
moves-tripod-already = ya está como { $photo }

moves-leave-stand = Dejar el soporte donde está. { $reason }
moves-one-more-photo = Hace falta una foto más.
moves-too-few-photos =
    { $have ->
        [0] El valor está dentro de tolerancia, pero ninguna foto de la posición actual lo demuestra: la hoja de montaje pide { $wanted }. { $more }
        [one] El valor está dentro de tolerancia, pero una sola foto de la posición actual mide y no demuestra: la hoja de montaje pide { $wanted }. { $more }
       *[other] El valor está dentro de tolerancia, pero { $have } fotos de la posición actual miden y no demuestran: la hoja de montaje pide { $wanted }. { $more }
    }
moves-too-few-in-step =
    { $have ->
        [0] El valor está dentro de tolerancia, pero ninguna foto del paso { $step } muestra el soporte con el vehículo: para demostrarlo hacen falta { $wanted }. { $more }
        [one] El valor está dentro de tolerancia, pero una sola foto del paso { $step } mide y no demuestra, porque nada podría contradecirla. Hacen falta { $wanted }. { $more }
       *[other] El valor está dentro de tolerancia, pero { $have } fotos del paso { $step } miden y no demuestran: hacen falta { $wanted }. { $more }
    }
moves-take-more =
    { $photos ->
        [one] Dejar todo donde está y tomar una foto más del soporte con placas y láminas de suelo, desde otro lugar.
       *[other] Dejar todo donde está y tomar { $photos } fotos más del soporte con placas y láminas de suelo, desde otros lugares.
    }
moves-counts-later =
    { $photos ->
        [one] El valor está dentro de tolerancia; contará cuando el soporte esté en su posición definitiva y una foto lo muestre allí.
       *[other] El valor está dentro de tolerancia; contará cuando el soporte esté en su posición definitiva y { $photos } fotos lo muestren allí.
    }
moves-no-place = No se midió dónde está el soporte tras el movimiento { $move }: ninguna foto lo muestra allí junto con las placas o láminas de suelo de las fotos anteriores. Tomar una que lo haga.
moves-no-place-because = No se midió dónde está el soporte tras el movimiento { $move }.

moves-apart-unlinked = los intentos no comparten ninguna lámina de suelo ni placa y no se pueden comparar
moves-apart-unsettled = las fotos de los dos intentos no se pudieron ajustar juntas
moves-apart-elsewhere = { $body } estaba en otro lugar, a unos { $mm } mm y { $degrees }°
moves-apart-stand-unseen = el soporte no se ve en ambos intentos
moves-apart-untold = no se puede saber si { $body } estaba en el mismo lugar

moves-ride-height =
    { $way ->
        [lower] La carrocería está de media { $by } mm (±{ $uncertainty }) más baja que las alturas de paso de rueda de la hoja.
       *[higher] La carrocería está de media { $by } mm (±{ $uncertainty }) más alta que las alturas de paso de rueda de la hoja.
    }
moves-body-pitch =
    { $way ->
        [down] Respecto a ellas el frontal apunta { $by }° (±{ $uncertainty }) hacia abajo, y con él un sensor montado en la carrocería.
       *[up] Respecto a ellas el frontal apunta { $by }° (±{ $uncertainty }) hacia arriba, y con él un sensor montado en la carrocería.
    }
