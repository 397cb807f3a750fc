# Names of quantities, lines and units, also for trends and audits.
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, paso { $step }
plan-check-target-step = { $name }, { $target }, paso { $step }
plan-unit =
    { $unit ->
        [deg] °
       *[other] { $unit }
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
plan-worth = ±{ $u } frente a ±{ $tolerance }: demostrable hasta { $room } de desviación
plan-worth-unprovable = ±{ $u } frente a ±{ $tolerance }: NO SE PUEDE DEMOSTRAR
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
plan-vehicle =
    { $heading ->
        [up] vehículo
       *[right] vehículo, avanza hacia la derecha
    }
plan-camera-height = cámara a { $height } m

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
