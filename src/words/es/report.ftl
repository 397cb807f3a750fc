report-quantity-from =
    { $quantity ->
        [height_from_nose] altura sobre { $datum }
        [lateral_from_nose] centrado sobre { $datum }
       *[other] { $name } desde { $datum }
    }
report-datum =
    { $datum ->
        [nose] el frontal
        [front_axle] el eje delantero
        [rear_axle] el eje trasero
       *[other] el punto de referencia «{ $datum }»
    }
report-term =
    { $term ->
        [yaw] guiñada
        [pitch] cabeceo
        [roll] balanceo
        [lateral] desplazamiento lateral
       *[range] alcance
    }
report-with-term = { $name } ({ $term })
report-step = paso { $step }
report-reference-line =
    { $line ->
        [rear_axle_normal] la perpendicular al eje trasero
        [thrust_line] la línea de empuje
        [centreline] el eje central del vehículo
       *[other] { $line }
    }
report-verdict-short =
    { $verdict ->
        [within] dentro
        [outside] fuera
        [not_proven] no demostrado
       *[retake] repetir
    }
report-not-trusted-short = no fiable
report-mark =
    { $verdict ->
        [within] ok
        [outside] X
        [not_proven] ?
       *[retake] otra vez
    }
report-grade =
    { $grade ->
        [pass] conforme
        [conditional_pass] conforme condicional
        [conditional_fail] no conforme condicional
        [fail] no conforme
       *[other] { $grade }
    }
report-instrument =
    { $instrument ->
        [laser] láser
        [tape] cinta métrica
        [level] nivel de burbuja
        [alignment] alineador
       *[other] { $instrument }
    }

report-amount =
    { $unit ->
        [deg] { $value }°
        [degrees] { $value } grados
        [in] { $value } in
        [mm] { $value } mm
       *[other] { $value } { $unit }
    }
report-amount-with-u =
    { $unit ->
        [deg] { $value }° ± { $u }°
        [degrees] { $value } ± { $u } grados
        [in] { $value } ± { $u } in
        [mm] { $value } ± { $u } mm
       *[other] { $value } ± { $u } { $unit }
    }
report-with-inches = { $amount } ({ $inches })
report-to-side = { $amount } { $side }
report-required-side = { $nominal }, ± { $half }
report-required-range = { $nominal }, de { $lower } a { $upper }
report-required-least = { $nominal }, como mínimo { $lower }
report-required-most = { $nominal }, como máximo { $upper }
report-required-open = { $nominal }, sin límite
report-probability =
    { $bound ->
        [above] > { $percent } %
        [below] < { $percent } %
        [unknown] desconocido
       *[exact] { $percent } %
    }
report-otherwise = { $assuming }: { $value }, { $verdict }
report-no-value = sin valor
report-not-determined = no determinado

report-side-short =
    { $side ->
        [right] derecha
        [left] izquierda
        [steered-right] derecha
        [steered-left] izquierda
        [right-end-nearer] dcha. más cerca
        [left-end-nearer] izda. más cerca
        [top-towards] arriba se acerca
        [top-away] arriba se aleja
        [left-end-low] izda. baja
        [right-end-low] dcha. baja
        [right-longer] dcha. más larga
        [left-longer] izda. más larga
        [toe-out] divergencia
        [toe-in] convergencia
        [top-rearward] arriba hacia atrás
        [top-forward] arriba hacia delante
        [top-inward] arriba hacia dentro
        [top-outward] arriba hacia fuera
        [nose-up] frontal alto
        [nose-down] frontal bajo
        [below] por debajo
        [above] por encima
        [below-floor] bajo el suelo
        [behind] por detrás
       *[negative] negativo
    }
report-side-long =
    { $side ->
        [right] hacia la derecha del vehículo
        [left] hacia la izquierda del vehículo
        [steered-right] girado a la derecha
        [steered-left] girado a la izquierda
        [right-end-nearer] girado: el extremo del lado derecho del vehículo está más cerca del vehículo
        [left-end-nearer] girado: el extremo del lado izquierdo del vehículo está más cerca del vehículo
        [top-towards] inclinado: la parte superior se inclina hacia el vehículo
        [top-away] inclinado: la parte superior se aleja del vehículo
        [left-end-low] desnivelado: el extremo del lado izquierdo del vehículo está más bajo
        [right-end-low] desnivelado: el extremo del lado derecho del vehículo está más bajo
        [right-longer] más larga en el lado derecho del vehículo
        [left-longer] más larga en el lado izquierdo del vehículo
        [toe-out] divergencia
        [toe-in] convergencia
        [top-rearward] con la parte superior hacia la trasera del vehículo
        [top-forward] con la parte superior hacia delante
        [top-inward] con la parte superior hacia dentro
        [top-outward] con la parte superior hacia fuera
        [nose-up] con el frontal alto
        [nose-down] con el frontal bajo
        [below] por debajo
        [above] por encima
        [below-floor] bajo el suelo
        [behind] del lado del vehículo
       *[negative] por debajo de cero
    }
report-end =
    { $end ->
        [nearer] más cerca
        [further] más lejos
        [lower] más bajo
        [higher] más alto
        [vehicle-right] dcha. del vehículo
        [vehicle-left] izda. del vehículo
        [less] menos
       *[more] más
    }
report-against-required =
    { $way ->
        [nearer] más cerca de lo exigido
        [further] más lejos de lo exigido
        [lower] más bajo de lo exigido
        [higher] más alto de lo exigido
        [right] más a la derecha del vehículo de lo exigido
        [left] más a la izquierda del vehículo de lo exigido
        [right-end-nearer] girado, extremo derecho más cerca de lo exigido
        [left-end-nearer] girado, extremo izquierdo más cerca de lo exigido
        [top-towards] más inclinado hacia el vehículo de lo exigido
        [top-away] más inclinado hacia fuera de lo exigido
        [left-end-low] girado, extremo izquierdo más bajo de lo exigido
        [right-end-low] girado, extremo derecho más bajo de lo exigido
        [less] menos de lo exigido
       *[more] más de lo exigido
    }
report-deviation = { $name }: { $amount } { $against }
report-as-required = { $name }: como se exige

report-what-to-do = Qué hacer ahora
report-do-now = Qué hacer ahora, en este orden
report-numbered-step = { $title }: { $words }
report-with-extras = { $title } ({ $extras })
report-move =
    { $name ->
        [level] nivelación
        [tilt] inclinación
        [square] perpendicularidad
        [centre] centrado
        [distance] distancia
       *[height] altura
    }
report-clear-first = Aclarar primero
report-settle = Aclarar
report-measured = medido: { $value }
report-prove-more = no demostrado: tomar más fotos desde lugares más separados o acercar el valor al exigido
report-prove-never = estas fotos y este juego de marcadores no pueden demostrar una tolerancia tan pequeña. Esto no significa que esté fuera de tolerancia: la incertidumbre es demasiado grande, esté donde esté el soporte
report-measure-again = las fotos no lo determinan: repetirlas
report-then = Después
report-close-moved = Tomar una foto del soporte en el nuevo lugar, con placas y láminas de suelo: se mide junto con las anteriores; una segunda lo demuestra.
report-close-void = Repetir las fotos. No mover el soporte según las cifras de este informe: no son fiables.
report-close-held = Repetir las fotos. No mover el soporte según las cifras de este informe: antes hay que aclarar lo indicado arriba.
report-close-held-typed = Verificar de nuevo el trabajo. No mover el soporte según las cifras de este informe: antes hay que aclarar lo indicado arriba.
report-nothing-to-move = Nada que mover
report-keep-report = Guardar este informe con el trabajo.
report-close-retake = Repetir las fotos y verificar de nuevo el trabajo.
report-close-verify = Verificar de nuevo el trabajo.
report-none-trusted = Las cifras no son fiables.
report-some-trusted = No todas las cifras son fiables.
report-findings-say-why = Los hallazgos dicen por qué.

report-job = Trabajo { $job }
report-fact-bay = puesto de calibración { $bay }
report-fact-technician = técnico: { $name }
report-fact-attempt = intento { $number }
report-fact-kit = juego de marcadores: { $upkeep }
report-kit-serial = n.º de serie { $serial }
report-kit-due =
    { $state ->
        [overdue] medición vencida desde el { $due }: volver a medir el juego
        [due] próxima medición: { $due }
       *[unknown] próxima medición: { $due } (no comprobable: no se indica la hora)
    }
report-first = Primero
report-by-screw = Equivale a: { $screw }.
report-last-move = El último movimiento: { $last }.
report-track-text = Recorrido del soporte (± incertidumbre expandida, 95 %)
report-position-first = inicial
report-position-move = movimiento { $number }
report-figure = { $name } { $value }
report-figure-moved = { $name } { $value } ({ $moved })
report-last-position = La última posición se ve en: { $photos }.
report-last-position-none = Ninguna foto muestra la última posición.
report-checks-text = Comprobaciones respecto de: { $line } (medido ± incertidumbre expandida, 95 %)
report-required-value = exigido { $required }
report-probability-short = { $probability } dentro
report-required-and-probability = { $required }, { $probability }
report-from-photos-alone = Las mismas comprobaciones solo con las fotos
report-same-verdicts = Los dictámenes son los mismos.
report-readings-text = Lecturas frente a las fotos (± incertidumbre típica)
report-agreement =
    { $agreement ->
        [agrees] coincide
        [disagrees] no coincide
       *[other] no comparable
    }
report-reading =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, fotos { $photos }, usada en el resultado
       *[no] { $name }: { $instrument } { $read }, fotos { $photos }
    }
report-reading-alone =
    { $used ->
        [yes] { $name }: { $instrument } { $read }, las fotos no lo determinan, usada en el resultado
       *[no] { $name }: { $instrument } { $read }, las fotos no lo determinan
    }
report-read-by = leído
report-findings = Hallazgos
report-level =
    { $level ->
        [void] nulo
        [stop] alto
        [warn] aviso
       *[note] nota
    }
report-level-meaning =
    { $level ->
        [void] la medición no es fiable
        [stop] nada se da por dentro de tolerancia
        [warn] conviene mirarlo
       *[note] conviene saberlo
    }
report-blind-text = No comprobable con estas fotos
report-blind = { $fault }: haría falta: { $remedy }
report-blind-of = { $fault } ({ $carriers }): haría falta: { $remedy }
report-more-photos = más fotos
report-whose-tolerance = De quién es la tolerancia:
report-cautions-text = Precauciones:
report-cautions-short = prevalecen la información de servicio del fabricante del vehículo y las normas locales. El trabajo es para personal cualificado; los láseres y los vehículos elevados exigen sus propias precauciones. Esto documenta un montaje y no sustituye el procedimiento.
report-not-proofread = Ningún técnico de habla española ha revisado todavía estos textos; en caso de duda vale el texto inglés.

report-phases = Antes y después de la calibración
report-attempts = Intentos de esta serie
report-ride-height = Altura de la carrocería
report-one-more-photo = Una foto más
report-next-photo = Decidiría lo que queda abierto: { $photo }.
report-moved = { $body }: se ha movido { $mm } y { $degrees }.
report-not-moved = { $body }: sin movimiento por encima de la incertidumbre: { $mm } y { $degrees }.
report-body =
    { $body ->
        [vehicle] vehículo
       *[other] { $body }
    }
report-attempt-line =
    { $numbered ->
        [yes] Intento { $number }, trabajo { $job }
       *[no] Trabajo { $job }
    }, { $photos ->
        [one] una foto
       *[other] { $photos } fotos
    }, según sus propias fotos: { $verdict }; { $beside ->
        [own] este trabajo
        [together] ajustado junto con este trabajo, porque nada se había movido
       *[apart] no ajustado junto con este trabajo: { $why }
    }.

report-title = Dónde estaba la diana: trabajo { $job }
report-rendered = RENDERIZADAS: ninguna cámara tomó estas fotos. Muestran un puesto inventado, de práctica o de muestra, y no demuestran nada de ningún vehículo.
report-page-title = Trabajo { $job }: { $verdict }
report-document-title = Dónde estaba la diana: trabajo { $job }: { $verdict }
report-page-of = página { $page } de { $pages }
report-repair-order = Orden de reparación
report-attempt = Intento
report-vehicle = Vehículo
report-vin = Número de bastidor (VIN)
report-photos-taken = Fotos tomadas
report-bay = Puesto de calibración
report-technician = Técnico
report-kit = Juego de marcadores
report-kit-upkeep = Estado del juego
report-camera = Cámara
report-setup-sheet = Hoja de montaje

report-checks = Comprobaciones
report-checks-none = La hoja de montaje no comprueba nada.
report-checks-lede = Medido respecto de: { $line }. ± es la incertidumbre expandida U (95 %).
report-rule =
    { $rule ->
        [guarded] «Dentro» exige una probabilidad de al menos el { $least } % de que el valor verdadero esté dentro de los límites; «fuera», lo mismo.
        [simple] Solo se compara el valor medido con los límites; su incertidumbre no cuenta.
        [binary] Dentro de los límites se guarda una banda de seguridad de una incertidumbre expandida (ILAC-G8:2019, binaria).
        [four_way] Conforme, conforme condicional, no conforme condicional, no conforme (ILAC-G8:2019).
       *[other] Regla de decisión: { $rule }.
    }
report-without-readings = En la tabla anterior han intervenido lecturas. Sin ellas:
report-check = Comprobación
report-required = Exigido
report-measured-u = Medido ± U
report-measured-key = Medido
report-against-limits = Frente a los límites
report-verdict-column = Dictamen
report-tolerance-basis = tolerancia: { $basis }
report-not-to-be-trusted = no fiable
report-within-limits = { $probability } dentro de los límites
report-too-small = Estas fotos y este juego de marcadores no pueden demostrar una tolerancia tan pequeña. Esto no significa que esté fuera de tolerancia.
report-reason-in-step = Por qué: véase «Qué hacer ahora», paso { $step }.
report-same-reason = Por el mismo motivo que: { $check }.
report-against-line = respecto de: { $line }
report-by-reading = decidido por una lectura
report-bar-key = Cómo leer las barras
report-bar-limits = límites
report-bar-required = exigido
report-bar-true = dónde está el valor verdadero (95 %)
report-bar-mark = La marca que contiene es el valor medido, con la forma de su dictamen.
report-off-scale = fuera de escala: { $amount }
report-bar-spoken = { $name }: { $value }, exigido { $required }, { $verdict }

report-drawing = Dónde estaba cada cosa
report-drawings-neither = Tampoco estos dibujos.
report-drawings-not-all = Tampoco todos estos dibujos.
report-nothing-to-draw = Las fotos no determinan dónde estaban el soporte y el vehículo, así que no hay nada que dibujar.
report-plan = Planta: vista desde arriba
report-side = Alzado lateral: visto desde la derecha del vehículo
report-drawing-caption = A escala, con cada desviación en tamaño real. Los marcadores (negro), los centros de rueda y el soporte están donde se midieron; la carrocería es un croquis a su alrededor. Los círculos numerados son las fotos con su dirección.
report-nose-typed = El frontal no llevaba marca: su lugar se deduce de la longitud introducida.
report-magnified = El soporte frente al lugar exigido
report-magnified-of = El soporte frente al lugar exigido: { $name }
report-magnified-lede = Línea discontinua: exigido. Línea continua: medido, con su incertidumbre en cruz (95 %). Sombreado: dónde puede estar el punto de mira; punteado: cuánto puede estar girado el soporte.
report-drawing-spoken = Dibujo a escala del vehículo, el soporte de la diana y las fotos. { $figures }
report-view-above = Desde arriba
report-view-right = Desde la derecha del vehículo
report-view-vehicle = Visto desde el vehículo
report-edge =
    { $edge ->
        [towards] hacia el vehículo
        [away] hacia fuera
        [left] izda. del vehículo
        [right] dcha. del vehículo
        [higher] más alto
        [lower] más bajo
       *[away-from-vehicle] alejándose del vehículo
    }
report-drawn-moved = Respecto al contorno del soporte: desplazamientos dibujados { $lengths } veces.
report-drawn-turned = Respecto al contorno del soporte: giro dibujado { $angles } veces.
report-drawn-both = Respecto al contorno del soporte: desplazamientos dibujados { $lengths } veces, giro dibujado { $angles } veces.
report-wheelbase = entre ejes { $amount }
report-distance-from = { $amount } desde { $datum }

report-track = Recorrido del soporte
report-track-lede = Todas las fotos se miden juntas: el vehículo, las placas y las láminas de suelo están donde los hallaron las primeras; el soporte tiene un lugar propio tras cada movimiento. ± es la incertidumbre expandida (95 %); la de un movimiento es menor que la de dos lugares, porque lo que ambos tienen en común no interviene.
report-track-none = Ninguna foto muestra el soporte en su lugar actual junto con el vehículo.
report-track-shown = Su lugar actual se ve en: { $photos }.
report-track-above = Desde arriba: { $name }
report-track-caption = El punto de mira antes del primer movimiento (0) y después de cada uno; el punto grande es su lugar actual.
report-track-spoken = Recorrido visto desde arriba: { $name }. { $moves }
report-track-move = movimiento { $number }, { $name }: { $moved }
report-position = Posición
report-before-moves = Antes de moverlo
report-after-move = Tras el movimiento { $number }
report-sentence = { $words }.

report-nothing-to-report = Nada que señalar.
report-photos = Fotos
report-no-photo = No se pudo leer ninguna foto.
report-photos-key = Cómo leer las fotos
report-key-used = marcador usado, con su número
report-key-not-used = marcador no usado
report-key-outline = dónde resultan los portamarcadores calculados y el punto de mira
report-key-residual = residuo, hallado menos calculado, ampliado
report-photo = Foto { $number }:
report-photo-not-used = No usada:
report-photo-spoken = Foto { $number }: { $markers }
report-markers-found =
    { $found ->
        [one] un marcador hallado
       *[other] { $found } marcadores hallados
    }, de ellos usados: { $used }
report-markers-left-out = del juego de marcadores, no usados: { $count }
report-markers-unknown = con números que el juego de marcadores no conoce: { $count }
report-markers-nameless = demasiado juntos para nombrarlos en la imagen: { $numbers }
report-marker-unknown = { $number } desconocido
report-marker-not-used = { $number } no usado
report-no-picture = la imagen no está disponible
report-residual-scale = { $length } px, residuos dibujados { $factor } veces
report-camera-profile = Perfil de cámara
report-taken = Tomada
report-private-kinds = También en los datos propios de la foto, no se muestra aquí
report-private-value = Privado: { $name }
report-residuals = Residuos, RMS
report-blur = Desenfoque, mediana
report-noise = Ruido de las esquinas
report-noise-value = { $ratio } veces el de una foto revelada sin retoques
report-light = Luz alterada por el teléfono
report-light-value = en un { $percent } % de un lugar a otro (1 sigma)
report-edge-offset = Desplazamiento de borde
report-edge-offset-value =
    { $way ->
        [outward] { $offset } px, hacia fuera
        [inward] { $offset } px, hacia dentro
       *[none] { $offset } px
    }
report-focal-length = Distancia focal
report-credentials = Credenciales de contenido
report-credentials-of-photos = Credenciales de contenido de las fotos: { $counts }.
report-credentials-made = hechas con { $generator }
report-credentials-time = sello de tiempo del { $time }
report-credentials-bytes = el hash abarca todos los bytes salvo { $count } desde el byte { $first }
report-credentials-edits = ediciones que enumera el manifiesto: { $edits }
report-px = { $value } px
report-px-twice = { $first } px, { $second } px
report-taken-from = Lugar de la toma
report-taken-from-value =
    { $side ->
        [left] { $ahead } m por delante del eje trasero, { $across } m a la izquierda del vehículo, { $high } m de altura
       *[right] { $ahead } m por delante del eje trasero, { $across } m a la derecha del vehículo, { $high } m de altura
    }
report-taken-from-behind =
    { $side ->
        [left] { $behind } m por detrás del eje trasero, { $across } m a la izquierda del vehículo, { $high } m de altura
       *[right] { $behind } m por detrás del eje trasero, { $across } m a la derecha del vehículo, { $high } m de altura
    }

report-readings = Lecturas frente a las fotos
report-readings-lede = ± es la incertidumbre típica u. E_n es la diferencia dividida por la raíz de la suma de los cuadrados de ambas incertidumbres expandidas (ISO/IEC 17043): hasta 1 coinciden.
report-reading-column = Lectura
report-read = Leído
report-result = Resultado
report-by-instrument = con: { $instrument }
report-reading-used = usada en el resultado
report-reading-compared = solo comparada, no usada
report-all-measured = Todas las magnitudes medidas
report-all-measured-none = Las fotos no determinan ninguna magnitud del montaje.
report-all-measured-lede = Respecto de: { $line }. ± es la incertidumbre típica u.
report-quantity-column = Magnitud
report-value-u = Valor ± u
report-direction = Dirección
report-budget = De dónde viene la incertidumbre
report-budget-lede = Incertidumbre típica de cada fuente y su parte de la varianza (GUM).
report-source = Fuente
report-share = Parte
report-budget-total =
    { $name }: u = { $u }, { $freedom ->
        [infinite] infinitos grados de libertad
       *[finite] { $degrees } grados de libertad
    }{ $factor_known ->
        [yes] , factor de cobertura { $factor }
       *[no] {""}
    }

report-doubts = Lo que estas fotos habrían mostrado
report-doubts-lede = El menor tamaño de cada fallo que se detecta en este trabajo con una probabilidad del 95 %. Puede haberlos menores.
report-fault = Fallo
report-found-from = Se detecta desde
report-all-alike = todos en la misma medida
report-worst-of = el peor de { $count }: { $name }
report-not-checkable = no comprobable con estas fotos
report-it-takes = haría falta: { $remedy }
report-hangs-on = De qué dependen las comprobaciones
report-hangs-on-lede = El mayor cambio de cada valor al quitar una foto, un portamarcadores o la forma del modelo de lente.
report-change = Cambio
report-uncertainty-95 = Incertidumbre (95 %)

report-attested = Lo que declara el técnico
report-attested-nothing = La hoja no pide nada y no se indicó nada.
report-attested-complete = Se dieron todas las respuestas obligatorias.
report-attested-missing = Faltan respuestas obligatorias.
report-statement = Declaración
report-answer = Respuesta
report-not-asked = no lo pide la hoja
report-obligation =
    { $required ->
        [yes] obligatorio
       *[no] opcional
    }
report-answered =
    { $answer ->
        [yes] ✓ sí
        [no] ✕ no
       *[none] — sin respuesta
    }
report-scan-tool = Lo que indicó el equipo de diagnosis
report-scan-tool-nothing = No se indicó nada sobre la calibración en sí.
report-scan-tool-aside = Tal como lo escribió el técnico. No dice nada de dónde estaba el soporte.
report-calibration-key =
    { $key ->
        [result] Resultado
        [at] Hora
        [reported_azimuth_deg] Acimut indicado, grados
        [reported_elevation_deg] Elevación indicada, grados
       *[other] { $key }
    }
report-calibration-result =
    { $result ->
        [successful] correcta
        [failed] fallida
        [not-run] no realizada
       *[other] { $result }
    }
report-attachments = Archivos adjuntos
report-attachment-kind =
    { $kind ->
        [scan-before] informe de diagnosis previo
        [scan-after] informe de diagnosis posterior
        [alignment] informe de alineación
        [procedure] procedimiento
        [overview-photo] foto de conjunto
        [other] otro
       *[unknown] { $kind }
    }
report-sheet = De quién son estas cifras
report-sheet-no-source = La hoja de montaje no indica ninguna fuente.
report-procedure-key =
    { $key ->
        [document] Documento
        [revision] Revisión
        [opened] Consultado
        [applies-to] Se aplica a
       *[other] { $key }
    }
report-not-checked = Lo que no se comprobó
report-not-checked-nothing = La hoja de montaje no exime de nada ni omite nada.
report-left-out = { $quantity }: la hoja ni lo comprueba ni exime de ello
report-waived = { $quantity }: exento; motivo: { $because }
report-inputs = Los archivos en que se basa este informe
report-inputs-lede = Un archivo modificado tiene otro SHA-256.
report-what = Qué
report-file = Archivo
report-input-role =
    { $role ->
        [job] trabajo
        [setup] hoja de montaje
        [kit] juego de marcadores
        [layout] disposición
        [camera] cámara
        [stand] soporte
        [photo] foto
        [attachment] adjunto
       *[other] { $role }
    }
report-found-in =
    { $place ->
        [embedded] hallado en: modelos incorporados
        [installed] hallado en: modelos instalados
        [option] hallado en: carpeta de --models
        [environment] hallado en: carpeta de BAYWITNESS_MODELS
       *[other] hallado en: modelos de otro lugar
    }
report-cautions = Precauciones
report-caution-maker = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Si difieren de este informe, seguirlas.
report-caution-trained = El trabajo en sensores de asistencia a la conducción es para personal cualificado.
report-caution-lasers = Los láseres y los vehículos elevados exigen sus propias precauciones.
report-caution-documents = Este informe documenta dónde estaba la diana cuando se tomaron las fotos. No sustituye el procedimiento de calibración ni dice que el sensor funcione.
report-footer = Medido y escrito por { $tool } · formato de registro { $format } · trabajo { $job }

report-about = Sobre este documento
report-about-repeats = Repite el resultado del trabajo { $job }, que se guarda en el archivo result.json. El SHA-512 de ese archivo figura en cada página, también como código QR:
report-about-undated = Ni el trabajo ni sus fotos indican una hora con su zona horaria. La fecha en las propiedades de este archivo es el 1 de enero de 1970, porque PDF/A exige una; no significa nada.
report-digest-of = SHA-512 de result.json, que este documento repite:
report-foreign-characters =
    { $count ->
        [one] Un carácter de este registro no tiene forma en las fuentes de este documento y se muestra como { $sign }; el texto copiado, el informe HTML y result.json lo tienen.
       *[other] { $count } caracteres distintos de este registro no tienen forma en las fuentes de este documento y se muestran como { $sign }; el texto copiado, el informe HTML y result.json los tienen.
    }

verify-one-job = --moved y --more admiten un solo trabajo: indicar la carpeta a la que pertenece la foto
verify-not-logged = Sin registrar: { $jobs }, por no poder leerse.
verify-report = Informe:
verify-for-the-customer = Para el cliente: { $file }
verify-repair-order = Orden de reparación { $series }: { $file }
verify-no-folder = no se puede crear la carpeta { $folder }: { $why }
verify-no-json = no se puede escribir el resultado como JSON: { $why }
verify-watch-every = «{ $text }» no es un tiempo entre 0,05 y 3600 s
verify-watch-no-folder = { $folder } no es una carpeta: indicar una que contenga carpetas de trabajos
verify-watching = Vigilando { $folder }; Ctrl-C para terminar.
verify-unreadable-folder = no se puede leer la carpeta { $folder }: { $why }
report-findings-above = Todos los hallazgos figuran en «Qué hacer ahora».

report-private-kind =
    { $kind ->
        [position] lugar de la toma (GPS)
        [serial] números de serie
        [owner] propietario o autor
       *[notes] notas propias del fabricante
    }
report-picture-unreadable = no se puede leer la foto { $photo } para el informe: { $why }
report-picture-not-made = no se puede codificar la copia de la foto { $photo }: { $why }
report-no-pdf = no se puede escribir el informe en PDF: { $why }
report-no-pdf-of-page = no se puede escribir el informe en PDF: su página no está bien formada: { $why }
report-no-table = no se puede escribir la tabla en Parquet: { $why }
