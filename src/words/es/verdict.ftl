verdict-word =
    { $verdict ->
        [within] dentro de tolerancia
        [outside] fuera de tolerancia
        [not_proven] no demostrado
       *[retake] repetir las fotos
    }
verdict-grade =
    { $grade ->
        [pass] conforme
        [conditional_pass] conforme condicional
        [conditional_fail] no conforme condicional
       *[fail] no conforme
    }

# Frases enteras, una tras otra.
verdict-sentences = { $first } { $then }
verdict-either-two = { $first } o { $second }
verdict-either-three = { $first }, { $second } o { $third }
verdict-mm = { $x } mm
verdict-degrees = { $x }°
verdict-plus-minus-mm = ±{ $x } mm
verdict-plus-minus-degrees = ±{ $x }°
# What a camera signed about a photo's bytes.
verdict-credentials-by =
    { $state ->
        [trusted] válidas, firmadas por { $signer }, a quien avala un ancla de confianza
        [unknown_signer] válidas, firmadas por { $signer }, a quien no avala ningún ancla de confianza
        [expired] sin cambios desde que firmó { $signer }, cuyo certificado no es válido en el momento probado
       *[revoked] sin cambios desde que firmó { $signer }, cuyo certificado fue revocado
    }
verdict-credentials-broken = rotas: { $failures }
verdict-credentials-nameless = alguien sin nombre
verdict-credentials-count =
    { $state ->
        [trusted] { $count } válidas y de confianza
        [unknown_signer] { $count } válidas, firmante desconocido
        [expired] { $count } con certificado fuera de plazo
        [revoked] { $count } con certificado revocado
        [broken] { $count } rotas
       *[none] { $count } sin ninguna
    }
verdict-credentials-counts = { $parts }

verdict-quantity =
    { $quantity ->
        [distance] distancia
        [range] distancia en línea recta
        [lateral_offset] centrado
        [lateral_from_nose] centrado sobre la marca frontal
        [height] altura
        [height_from_nose] altura sobre la marca frontal
        [yaw] perpendicularidad
        [pitch] inclinación
        [roll] nivelación
        [side_range_difference] distancias laterales, izquierda menos derecha
        [side_range_left] distancia lateral izquierda
        [side_range_right] distancia lateral derecha
        [rear_toe_left] convergencia trasera izquierda
        [rear_toe_right] convergencia trasera derecha
        [front_toe_left] convergencia delantera izquierda
        [front_toe_right] convergencia delantera derecha
        [thrust_angle] ángulo de empuje
        [steering_angle] ángulo de dirección
        [plate_plumb_left] aplomo de la placa trasera izquierda
        [plate_plumb_right] aplomo de la placa trasera derecha
        [plate_plumb_front_left] aplomo de la placa delantera izquierda
        [plate_plumb_front_right] aplomo de la placa delantera derecha
        [camber_left] caída trasera izquierda
        [camber_right] caída trasera derecha
        [camber_front_left] caída delantera izquierda
        [camber_front_right] caída delantera derecha
        [rear_track] ancho de vía trasero
        [wheelbase] distancia entre ejes
        [setback] retraso de rueda (setback)
        [arch_height_front_left] altura del paso de rueda delantero izquierdo
        [arch_height_front_right] altura del paso de rueda delantero derecho
        [arch_height_rear_left] altura del paso de rueda trasero izquierdo
        [arch_height_rear_right] altura del paso de rueda trasero derecho
        [ride_height] altura de la carrocería, media de los cuatro pasos de rueda
        [body_pitch] inclinación de la carrocería respecto a las ruedas
        [target_tilt_gravity] inclinación de la diana según el nivel de burbuja
        [target_level_gravity] nivelación de la diana según el nivel de burbuja
       *[other] { $quantity }
    }
verdict-line =
    { $line ->
        [rear_axle_normal] la perpendicular al eje trasero
        [thrust_line] la línea de empuje
       *[centreline] el eje central del vehículo
    }

# Cuerpos del puesto: dentro de una frase, al principio, como rótulo.
verdict-body =
    { $role ->
        [target] el soporte
        [rear_left_wheel] la placa de la rueda trasera izquierda
        [rear_right_wheel] la placa de la rueda trasera derecha
        [front_left_wheel] la placa de la rueda delantera izquierda
        [front_right_wheel] la placa de la rueda delantera derecha
        [floor] la lámina de suelo
        [nose] la marca frontal
        [rear_left_arch] la marca del paso de rueda trasero izquierdo
        [rear_right_arch] la marca del paso de rueda trasero derecho
        [front_left_arch] la marca del paso de rueda delantero izquierdo
        [front_right_arch] la marca del paso de rueda delantero derecho
        [vehicle] el vehículo
       *[card] la tarjeta del trabajo
    }
verdict-body-first =
    { $role ->
        [target] El soporte
        [rear_left_wheel] La placa de la rueda trasera izquierda
        [rear_right_wheel] La placa de la rueda trasera derecha
        [front_left_wheel] La placa de la rueda delantera izquierda
        [front_right_wheel] La placa de la rueda delantera derecha
        [floor] La lámina de suelo
        [nose] La marca frontal
        [rear_left_arch] La marca del paso de rueda trasero izquierdo
        [rear_right_arch] La marca del paso de rueda trasero derecho
        [front_left_arch] La marca del paso de rueda delantero izquierdo
        [front_right_arch] La marca del paso de rueda delantero derecho
        [vehicle] El vehículo
       *[card] La tarjeta del trabajo
    }
verdict-body-label =
    { $role ->
        [target] soporte
        [rear_left_wheel] placa de la rueda trasera izquierda
        [rear_right_wheel] placa de la rueda trasera derecha
        [front_left_wheel] placa de la rueda delantera izquierda
        [front_right_wheel] placa de la rueda delantera derecha
        [floor] lámina de suelo
        [nose] marca frontal
        [rear_left_arch] marca del paso de rueda trasero izquierdo
        [rear_right_arch] marca del paso de rueda trasero derecho
        [front_left_arch] marca del paso de rueda delantero izquierdo
        [front_right_arch] marca del paso de rueda delantero derecho
        [front_axle] eje delantero
        [rear_axle] eje trasero
        [vehicle] vehículo
       *[card] tarjeta del trabajo
    }
# Si el juego tiene varios del mismo tipo: con su propio nombre.
verdict-body-own = { $body } «{ $name }»
verdict-stand-before = { $stand } (antes de moverlo)
verdict-stand-after = { $stand } (tras el movimiento { $move })
verdict-stand-step = { $stand } (paso { $step })

verdict-budget-corners = ruido de las esquinas de los marcadores en las fotos
verdict-budget-calibration = calibración de la cámara
verdict-budget-focal = distancia focal de cada foto
verdict-budget-centre = punto principal de cada foto
verdict-budget-edge = desplazamiento de bordes de cada foto
verdict-budget-turn = giro de la cámara mientras cada foto se lee línea a línea
verdict-budget-layout = posición y giro de los marcadores en sus portamarcadores
verdict-budget-scale = tamaño de los marcadores impresos
verdict-budget-seating = asiento: { $body }
verdict-budget-wheelbase = distancia entre ejes introducida
verdict-budget-nose = posición del frontal introducida
verdict-budget-hub-height = altura de buje introducida
verdict-budget-datum = desplazamiento del punto de referencia «{ $datum }»
verdict-budget-reading = lectura: { $quantity }

verdict-without-body = sin { $body }
verdict-without-photo = sin { $photo }
verdict-other-lens-model = con el otro modelo de objetivo

# Una frase que explica el dictamen de un trabajo.
verdict-why-within =
    { $checks ->
        [one] La única comprobación está dentro de tolerancia, demostrado.
       *[other] Las { $checks } comprobaciones están dentro de tolerancia, demostrado.
    }
verdict-why-within-simple =
    { $checks ->
        [one] El valor medido de la única comprobación está dentro de tolerancia. La regla de la hoja de montaje no tiene en cuenta su incertidumbre.
       *[other] Los valores medidos de las { $checks } comprobaciones están dentro de tolerancia. La regla de la hoja de montaje no tiene en cuenta su incertidumbre.
    }
verdict-why-within-likely =
    { $checks ->
        [one] La única comprobación está dentro de tolerancia con una probabilidad de al menos el { $least } %. La regla de la hoja de montaje no pide más, y es poco para darlo por seguro.
       *[other] Las { $checks } comprobaciones están dentro de tolerancia, cada una con una probabilidad de al menos el { $least } %. La regla de la hoja de montaje no pide más, y es poco para darlo por seguro.
    }
verdict-why-outside = Demostrado fuera de tolerancia: { $quantities }.
verdict-why-outside-simple = Medido fuera de tolerancia: { $quantities }. La regla de la hoja de montaje no tiene en cuenta la incertidumbre.
verdict-why-outside-likely = Fuera de tolerancia con una probabilidad de al menos el { $least } %: { $quantities }. La regla de la hoja de montaje no pide más, y es poco para darlo por seguro.
verdict-why-outside-anyway = Demostrado fuera de tolerancia sea cual sea la causa: { $quantities }.
verdict-why-retake = No se pudo medir: { $quantity }. { $reason }
verdict-why-retake-bare = No se pudieron medir todas las comprobaciones.
verdict-why-not-proven = No demostrado: { $quantity }. { $reason }
verdict-why-no-checks = La hoja de montaje no tiene comprobaciones: no se demostró nada.
verdict-why-nothing = No se pudo medir nada. { $reason }
verdict-no-value = No hay valor.

verdict-kit-serial = número de serie { $serial }
verdict-kit-overdue = medición del juego vencida desde el { $due }: medirlo de nuevo
verdict-kit-due = próxima medición del juego: { $due }
verdict-kit-due-unknown = próxima medición del juego: { $due } (no comprobable: no consta ninguna hora)
verdict-kit-both = { $serial }, { $survey }

verdict-bay-slope = pendiente del suelo respecto al plano de las ruedas
verdict-bay-flatness = desnivel entre láminas vecinas
verdict-bay-ahead = libre delante del frontal, hasta la lámina más lejana
