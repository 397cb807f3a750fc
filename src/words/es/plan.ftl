# Names of quantities, lines and units, also for trends and audits.
plan-quantity =
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
        [plate_plumb_left] verticalidad de la placa de rueda trasera izquierda
        [plate_plumb_right] verticalidad de la placa de rueda trasera derecha
        [plate_plumb_front_left] verticalidad de la placa de rueda delantera izquierda
        [plate_plumb_front_right] verticalidad de la placa de rueda delantera derecha
        [camber_left] caída trasera izquierda
        [camber_right] caída trasera derecha
        [camber_front_left] caída delantera izquierda
        [camber_front_right] caída delantera derecha
        [rear_track] ancho de vía trasero
        [wheelbase] distancia entre ejes
        [setback] retraso de rueda delantera
        [arch_height_front_left] altura del paso de rueda delantero izquierdo
        [arch_height_front_right] altura del paso de rueda delantero derecho
        [arch_height_rear_left] altura del paso de rueda trasero izquierdo
        [arch_height_rear_right] altura del paso de rueda trasero derecho
        [ride_height] altura de la carrocería, media de los cuatro pasos de rueda
        [body_pitch] inclinación de la carrocería sobre las ruedas
        [target_tilt_gravity] inclinación de la diana según el nivel de burbuja
        [target_level_gravity] nivelación de la diana según el nivel de burbuja
       *[other] { $name }
    }
plan-quantity-from =
    { $quantity ->
        [height_from_nose] altura sobre { $datum }
        [lateral_from_nose] centrado sobre { $datum }
       *[other] { $plain } desde { $datum }
    }
plan-datum =
    { $datum ->
        [nose] el frontal del vehículo
        [front_axle] el eje delantero
        [rear_axle] el eje trasero
       *[other] el punto de referencia «{ $datum }»
    }
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, paso { $step }
plan-check-target-step = { $name }, { $target }, paso { $step }
plan-unit =
    { $unit ->
        [deg] °
       *[other] { $unit }
    }
plan-reference-line =
    { $line ->
        [thrust_line] la línea de empuje
        [centreline] el eje central del vehículo
       *[rear_axle_normal] la perpendicular al eje trasero
    }
plan-verdict =
    { $verdict ->
        [within] dentro de tolerancia
        [outside] fuera de tolerancia
        [retake] repetir las fotos
       *[not_proven] no demostrado
    }

# A plan of the photos.
plan-title = Plan de fotos: { $sheet }
plan-with = Juego de marcadores { $kit }, cámara { $camera }
plan-no-station = Desde ningún lugar de este puesto se ven bastantes marcadores. Abajo se indica qué cambiar.
plan-no-station-page = Desde ningún lugar de este puesto se ven bastantes marcadores.
plan-photos =
    { $count ->
        [one] Una foto
       *[other] { $count } fotos
    }:
plan-photos-each-step =
    { $count ->
        [one] Una foto, tomada
       *[other] { $count } fotos, tomadas
    } en cada paso ({ $steps }):
plan-shows = muestra: { $bodies }
plan-worth-head = Lo que valdrán (95 %):
plan-noise = Se cuenta con esquinas { $ratio } veces más ruidosas que en fotos reveladas sin retoque, como muestran las fotos de este teléfono.
plan-place =
    { $along ->
        [front] { $ahead } m por delante del frontal
       *[behind] { $ahead } m por detrás del frontal
    }, { $across ->
        [centre] sobre el eje central
        [left] { $beside } m a la izquierda del vehículo
       *[right] { $beside } m a la derecha del vehículo
    }, cámara a { $height } m de altura, { $towards ->
        [middle] apuntando al centro del eje delantero
        [left-wheel] apuntando a la rueda delantera izquierda
        [right-wheel] apuntando a la rueda delantera derecha
        [left-of] apuntando a un punto { $aside } m a la izquierda del eje delantero
        [right-of] apuntando a un punto { $aside } m a la derecha del eje delantero
       *[off] girada { $turn }° respecto a la dirección de marcha
    }
plan-worth = ±{ $u } { $unit } frente a ±{ $tolerance } { $unit }: demostrable hasta { $room } { $unit } de desviación
plan-worth-unprovable = ±{ $u } { $unit } frente a ±{ $tolerance } { $unit }: NO SE PUEDE DEMOSTRAR
plan-worth-reading = se decide por una lectura, no por fotos
plan-worth-none = NO DETERMINADO por estas fotos
plan-least =
    { $count ->
        [one] basta una foto
       *[other] bastan { $count } fotos
    }
plan-least-none = ninguna foto
plan-least-not =
    { $count ->
        [one] no con una foto
       *[other] no con { $count } fotos
    }
plan-follow-up = Una foto después de cada movimiento del soporte:
plan-follow-up-note = Sirve para medir; lo que quede dentro de tolerancia tras el último movimiento necesita tantas fotos como pide la hoja.
plan-change-head = Qué cambiar:
plan-change-title = Qué cambiar
plan-stand-title = Dónde situarse
plan-every-step = Tomar cada foto en todos los pasos: { $steps }.
plan-station-markers = ({ $count ->
        [one] un marcador
       *[other] { $count } marcadores
    } en { $bodies })
plan-worth-title = Lo que valdrán las fotos
plan-column-check = Comprobación
plan-column-line = Respecto a
plan-column-expected = Esperado, 95 %
plan-column-least = Mínimo de fotos
plan-foot = Previsto para un soporte en su lugar exigido, impresiones limpias y un puesto iluminado. Prevalece la información de servicio del fabricante del vehículo; los láseres y los vehículos elevados requieren sus propias precauciones.
plan-drawing = El puesto visto desde arriba: vehículo, soporte y lugares de las fotos
plan-clear-width = ancho libre { $width } m
plan-vehicle = vehículo, avanza hacia la derecha
plan-camera-height = cámara a { $height } m
plan-target-place =
    { $side ->
        [middle] { $ahead } mm por delante del frontal, en el centro, a { $height } mm de altura
        [left] { $ahead } mm por delante del frontal, { $beside } mm a la izquierda, a { $height } mm de altura
       *[right] { $ahead } mm por delante del frontal, { $beside } mm a la derecha, a { $height } mm de altura
    }

# A set-up sheet explained.
plan-sheet-title = Hoja de montaje: { $sheet }
plan-sheet-asks = Lo que pide
plan-sheet-open = Ni comprobado ni eximido
plan-sheet-contradictions = Contradicciones
plan-sheet-contradictions-title = Contradicciones: la hoja no puede cumplirse tal como está
plan-sheet-questions = Preguntas
plan-sheet-kit = Con el juego de marcadores { $kit }
plan-sheet-photos =
    { $decided ->
        [all] { $each ->
            [step] { $count } fotos en cada paso deciden todas las comprobaciones.
           *[once] { $count } fotos deciden todas las comprobaciones.
        }
       *[some] { $each ->
            [step] { $count } fotos en cada paso no deciden todas las comprobaciones.
           *[once] { $count } fotos no deciden todas las comprobaciones.
        }
    }
plan-sheet-no-kit = Ningún juego de marcadores de los modelos tiene las dianas que nombra esta hoja.
plan-drawing-written = Dibujo: { $file }
