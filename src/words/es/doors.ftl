# Qué está mal en un archivo de entrada: archivo, lugar y clave; después, qué está mal y qué hacer. Las frases siguen a los dos puntos y no llevan punto final.
doors-at-place-and-key = { $file }, línea { $line }, columna { $column }: { $key }: { $problem }; { $remedy }
doors-at-place = { $file }, línea { $line }, columna { $column }: { $problem }; { $remedy }
doors-at-key = { $file }: { $key }: { $problem }; { $remedy }
doors-of-file = { $file }: { $problem }; { $remedy }
doors-key-without-file = { $key }: { $problem }; { $remedy }
doors-without-file = { $problem }; { $remedy }
doors-said = { $text }

# Formatos
doors-format-not-stated = no se indica el formato
doors-format-text = debe ser un texto como «{ $wanted }»
doors-format-not-first = no es la primera clave
doors-format-remedy = la primera línea debe ser: format = "{ $wanted }"
doors-format-version = «{ $found }» es una versión que este programa no conoce; lee «{ $wanted }»
doors-format-version-remedy = utilizar un baywitness más reciente o el archivo anterior
doors-format-other = este archivo tiene el formato «{ $found }», pero aquí se necesita uno con el formato «{ $wanted }»
doors-format-other-remedy = indicar aquí un archivo de tipo «{ $kind }» o corregir la primera línea: format = "{ $wanted }"
doors-no-toml = no es TOML válido ({ $why })
doors-no-toml-remedy = corregir la línea: una clave, `=` y un valor; los textos entre comillas, los decimales con punto
doors-key-twice-remedy = conservar una de las dos; una tabla que aparece varias veces lleva siempre corchetes dobles: [[...]]

# Archivos
doors-too-large = ocupa más de { $most } MiB, demasiado para un archivo de este tipo
doors-too-large-remedy = comprobar que se ha indicado el archivo correcto
doors-no-utf8 = no es texto en UTF-8
doors-no-utf8-remedy = guardarlo como texto sin formato en UTF-8
doors-is-folder = es una carpeta, no un archivo
doors-is-folder-remedy = indicar el archivo que contiene
doors-not-regular = no es un archivo normal
doors-not-regular-remedy = indicar un archivo normal
doors-not-there = no existe
doors-not-there-remedy = comprobar el nombre y la carpeta
doors-forbidden = no se puede leer por falta de permiso
doors-forbidden-remedy = pedir permiso de lectura
doors-unreadable = no se puede leer ({ $why })
doors-unreadable-remedy = comprobar la ruta y el disco

# Claves y valores
doors-unknown-key = clave desconocida
doors-did-you-mean = ¿se quería decir `{ $word }`?
doors-remove-it = eliminarlo
doors-known-here = aquí se conocen: { $words }
doors-older-key-too = es el nombre antiguo de una clave que también está
doors-older-key-too-remedy = conservar solo `{ $now }`
doors-older-name = { $file }: `{ $older }` se llama ahora `{ $now }`; el nombre antiguo se sigue leyendo
doors-missing = falta
doors-missing-remedy = añadir aquí `{ $key } = ...`
doors-no-tables = debe ser una lista de tablas
doors-no-tables-remedy = escribir cada una como [[{ $path }]]
doors-many-tables = tiene { $count } entradas, más de { $most }
doors-many-tables-remedy = quitar la mayor parte
doors-kind = debe ser { $wanted ->
        [text] un texto
        [flag] true o false
        [flag-or-text] true, false o un texto
        [number] un número
        [finite] un número finito
        [whole] un número entero
        [list] una lista
        [table] una tabla
        [time-with-offset] fecha y hora con su diferencia respecto a UTC
        [time] fecha y hora
        [existing-time] un momento que exista
        *[date] una fecha
    }, no { $found }
doors-kind-text-remedy = escribirlo entre comillas
doors-kind-flag-remedy = escribirlo sin comillas
doors-kind-flag-or-text-remedy = escribir true, false o un texto entre comillas
doors-kind-number-remedy = escribir un número sin comillas ni unidad
doors-kind-finite-remedy = escribir en su lugar un número corriente
doors-kind-whole-remedy = escribirlo sin punto decimal ni comillas
doors-kind-list-remedy = escribirlo entre corchetes
doors-kind-table-remedy = escribir sus claves debajo de una línea [{ $path }]
doors-kind-time-remedy = escribirlo como 2026-11-25T10:30:00+01:00 (o con Z para UTC), sin comillas
doors-kind-date-remedy = escribirla como 2026-11-25, sin comillas ni hora
doors-empty = está vacío
doors-empty-remedy = rellenarlo u omitir la clave
doors-long = tiene más de { $most } bytes
doors-long-remedy = acortarlo
doors-control = contiene caracteres de control
doors-control-remedy = eliminarlos
doors-turning = contiene caracteres que invierten el sentido de la escritura (U+202A a U+202E, U+2066 a U+2069): lo que se muestra no es lo que dice
doors-unseen = contiene caracteres que no muestran nada (como U+200B, U+2028 o etiquetas): dos textos de igual aspecto no serían el mismo
doors-turning-remedy = escribirlo de nuevo sin ellos
doors-no-name = no es un nombre: una línea de hasta 120 caracteres sin espacios al principio ni al final
doors-no-name-remedy = acortarlo o quitar los espacios sobrantes
doors-no-such = «{ $word }» no es { $what ->
        [language] un idioma
        [phase] una fase
        [attachment] un tipo de adjunto
        [calibration-result] un resultado de calibración
        [lens] un modelo de objetivo
        [evidence] un tipo de evidencia
        [line] una línea de referencia
        [unit] una unidad
        [step] un paso
        [rule] una regla de decisión
        [board] un tipo de tablero
        [family] una familia de marcadores admitida
        [quantity] una magnitud
        *[role] una función
    }
doors-unit = { $unit ->
        [none] {""}
        [deg] {"°"}
        [deg-per-s] {" "}°/s
        [mm-per-m] {" "}mm/m
        [in] {" "}pulgadas
        [turns] {" "}vueltas
        [a-turn] {" "}por vuelta
        *[other] {" "}{ $unit }
    }
doors-between = debe estar entre { $low } y { $high }{ $unit }, no { $found }
doors-between-remedy = comprobar la unidad, el punto decimal y el signo
doors-above-zero = debe ser mayor que cero, no { $found }{ $unit }
doors-above-zero-remedy = comprobar el signo y el punto decimal
doors-at-most = debe ser como máximo { $high }{ $unit }, no { $found }
doors-at-most-remedy = comprobar la unidad y el punto decimal
doors-uncertainty = una incertidumbre típica debe estar entre 0 y { $high }{ $unit }, no { $found }
doors-uncertainty-remedy = indicar una desviación típica (1 sigma) en la unidad que figura en el nombre de la clave
doors-whole-between = debe ser un número entero de { $low } a { $high }, no { $found }
doors-whole-between-remedy = comprobar el número
doors-count = debe tener { $wanted } valores, no { $found }
doors-count-remedy = escribir { $wanted } valores entre corchetes, separados por comas
doors-named-twice = «{ $name }» aparece dos veces
doors-already = «{ $name }» ya está en { $key }
doors-leave-out = omitir { $key }

# Matrices de covarianza
doors-matrix-size = debe tener { $size } x { $size } valores, no { $rows } x { $width }
doors-matrix-not-finite = contiene un valor que no es finito
doors-matrix-negative = tiene una varianza negativa en la fila { $row }
doors-matrix-not-symmetric = no es simétrica en las filas { $first } y { $second }
doors-matrix-correlation = indica una correlación superior a 1 entre las filas { $first } y { $second }
doors-matrix-not-semidefinite = no es semidefinida positiva: ningún conjunto de errores puede tenerla

# La carpeta del trabajo
doors-job-unopened = no se puede abrir la carpeta del trabajo ({ $why })
doors-job-unopened-remedy = comprobar la ruta
doors-job-is-file = es un archivo, no una carpeta de trabajo
doors-job-is-file-remedy = indicar la carpeta que contiene job.toml
doors-no-job = no existe: esta no es una carpeta de trabajo
doors-no-job-remedy = indicar una carpeta que contenga job.toml o crear ese archivo
doors-no-job-renamed = cambiar el nombre de { $file } a job.toml: un sistema que oculta las extensiones muestra job.toml en lugar de job.toml.txt
doors-photos-none = no indica ninguna foto
doors-photos-none-remedy = indicar las fotos u omitir la clave para usar todas las de photos/
doors-photos-many = indica { $count } fotos, más de { $most }
doors-split-the-job = dividir el trabajo
doors-photo-once = indicar cada foto una sola vez
doors-photos-twice = figura junto a [[photo]]
doors-photos-twice-remedy = indicar cada foto en uno solo de los dos
doors-same-file = «{ $name }» y «{ $earlier }» son el mismo archivo
doors-photos-remedy = poner las fotos del puesto en la carpeta photos/ del trabajo
doors-photos-no-folder = no indica fotos y su carpeta photos/ no se puede leer ({ $why })
doors-photos-unreadable = su carpeta photos/ no se puede leer ({ $why })
doors-photos-empty = no indica fotos y en su carpeta photos/ no hay ningún archivo jpg, jpeg, png o heic
doors-attachment-large = ocupa más de { $most } MB
doors-attachment-large-remedy = guardarlo en otro lugar y adjuntar un extracto
doors-photos-too-many = su carpeta photos/ tiene más de { $most } imágenes
doors-photo-name = el nombre de la foto «{ $name }» no está en UTF-8
doors-photo-name-remedy = cambiar el nombre del archivo
doors-card-twice = { $id } aparece dos veces
doors-card-twice-remedy = copiar de nuevo el código de la tarjeta
doors-card-empty = no indica ningún número
doors-card-empty-remedy = copiar el código de la tarjeta u omitir la clave
doors-vin-character = contiene el carácter { $character }; se admiten cifras y letras mayúsculas, salvo I, O y Q
doors-vin-length = tiene { $count } caracteres en lugar de 17
doors-vin-remedy = copiar otra vez el número del vehículo, en mayúsculas
doors-prerequisite-key = su clave no es un nombre
doors-prerequisite-key-remedy = utilizar el identificador de uno de los requisitos previos de la hoja de montaje
doors-reading-unused = { $quantity } no tiene equivalente en las fotos y no puede entrar en el ajuste
doors-reading-no-u = no indica ni u ni un instrumento conocido
doors-reading-no-u-remedy = añadir u = (una desviación típica) o instrument = laser, tape, level o alignment
doors-instrument-unknown = «{ $instrument }» no tiene una incertidumbre habitual
doors-instrument-unknown-remedy = añadir u = (una desviación típica); { $known }
doors-instrument-unit = la incertidumbre habitual de «{ $instrument }» está en { $own }, pero esta magnitud está en { $unit }
doors-instrument-unit-remedy = añadir u = (una desviación típica)
doors-file-once = indicar cada archivo una sola vez
doors-no-stand = indica un tornillo, pero el trabajo no tiene archivo de soporte
doors-no-stand-remedy = añadir `stand = ...` al trabajo u omitir turned
doors-no-screw = «{ $screw }» no es un tornillo del soporte «{ $stand }»
doors-no-step = «{ $step }» no es un paso de la hoja de montaje «{ $sheet }»
doors-no-steps-remedy = la hoja no tiene pasos: omitir step

# Rutas y modelos
doors-path-backslash = «{ $name }» contiene una barra invertida
doors-path-backslash-remedy = escribir las rutas con /
doors-path-turning = «{ $name }» contiene caracteres que invierten el sentido de la escritura
doors-path-turning-remedy = cambiar el nombre del archivo
doors-path-absolute = «{ $name }» es una ruta absoluta
doors-path-absolute-remedy = escribirla respecto a la carpeta del trabajo, para que el trabajo se pueda mover
doors-path-outside = «{ $name }» sale de la carpeta del trabajo
doors-path-outside-remedy = guardar las fotos y los adjuntos del trabajo en su carpeta
doors-path-not-there = «{ $name }» no existe en la carpeta del trabajo
doors-path-not-there-remedy = corregir el nombre o añadir el archivo
doors-path-unreadable = no se puede abrir «{ $name }» ({ $why })
doors-path-unreadable-remedy = comprobar el archivo
doors-path-link = «{ $name }» es un enlace que lleva fuera de la carpeta del trabajo
doors-path-no-file = «{ $name }» no es un archivo
doors-path-no-file-remedy = indicar un archivo
doors-no-model = no es ni un archivo ni uno de los modelos
doors-no-model-remedy = indicar una ruta o uno de estos: { $names }
doors-no-model-guess = ¿se quería decir «{ $guess }»? Si no, indicar una ruta o uno de estos: { $names }
doors-not-found = no se encuentra { $kind ->
        [setup] ninguna hoja de montaje
        [kit] ningún juego de marcadores
        [camera] ninguna cámara
        [stand] ningún soporte
        *[board] ningún tablero
    } «{ $name }» en la carpeta del trabajo { $folder } ni entre los modelos incorporados
doors-not-found-either = no se encuentra { $kind ->
        [setup] ninguna hoja de montaje
        [kit] ningún juego de marcadores
        [camera] ninguna cámara
        [stand] ningún soporte
        *[board] ningún tablero
    } «{ $name }» en la carpeta del trabajo { $folder }, en { $others } ni entre los modelos incorporados
doors-not-found-remedy = corregir el nombre o poner el archivo allí
doors-not-found-guess = ¿se quería decir «{ $guess }»? Si no, corregir el nombre o poner el archivo allí
doors-no-models-folder = la carpeta que indica { $said_by } no existe
doors-no-models-folder-remedy = corregir { $said_by } u omitirlo
doors-named-file = { $kind ->
        [setup] hoja de montaje
        [kit] juego de marcadores
        [camera] cámara
        [stand] soporte
        [layout] levantamiento
        *[board] tablero
    } «{ $file }»: { $problem }

# Hojas de montaje
doors-datum-role = «{ $carrier }» tiene la función { $role }
doors-datum-role-remedy = indicar un portamarcadores del vehículo o del suelo: nada se mide desde una diana o una tarjeta
doors-which-target = no dice a qué diana se refiere: el juego de marcadores «{ $kit }» tiene { $targets }
doors-which-target-remedy = añadir target = "{ $target }" u otra de ellas
doors-kit-no-target = se refiere a la diana, pero el juego de marcadores «{ $kit }» no tiene ningún portamarcadores con la función target
doors-kit-no-target-remedy = indicar el juego de marcadores al que pertenece el soporte
doors-no-carrier = «{ $name }» no es un { $what ->
        [target] portamarcadores con la función target
        *[any] portamarcadores
    } del juego de marcadores «{ $kit }»
doors-not-in-photos = { $quantity } no se puede ver en las fotos
doors-not-in-photos-remedy = añadir evidence = "reading": entonces decide la lectura del trabajo
doors-from-no-point = { $quantity } no se mide desde un punto
doors-from-no-point-remedy = omitir from o comprobar distance, range, height_from_nose o lateral_from_nose
doors-from-axle = { $quantity } no se mide desde un eje
doors-from-axle-remedy = indicar nose o un punto de referencia de la hoja
doors-from-unknown = «{ $name }» no es un punto desde el que medir
doors-unit-of = { $quantity } se indica en { $unit }
doors-unit-of-remedy = omitir unit; solo las longitudes se pueden indicar en pulgadas
doors-no-target-here = { $quantity } no se refiere a una diana
doors-no-step-here = { $quantity } no se refiere a una diana y es igual en todos los pasos
doors-sheet-no-steps = la hoja no tiene pasos
doors-sheet-no-steps-remedy = añadir steps = [...] al principio u omitir step
doors-beside-tolerance = figura junto a tolerance
doors-beside-tolerance-remedy = indicar tolerance, o bien lower y upper
doors-no-limit = no tiene límite
doors-no-limit-remedy = añadir tolerance = ..., o lower = ... o upper = ... o ambos
doors-limits-order = { $lower } { $unit } no es menor que upper, { $upper } { $unit }
doors-limits-order-remedy = los límites son valores, no desviaciones
doors-nominal-outside = { $nominal } { $unit } está fuera de sus propios límites
doors-nominal-outside-remedy = lower y upper son valores como nominal, no desviaciones de él
doors-step-count = tiene { $count } pasos
doors-step-count-remedy = indicar de uno a { $most } u omitir la clave
doors-step-once = indicar cada paso una sola vez
doors-probability = debe ser al menos { $least } y menor que 1, no { $found }
doors-probability-remedy = lo habitual es 0.95: lo que se decide con menos no se llama demostrado
doors-datum-standard = «{ $name }» es un punto que tiene toda hoja
doors-other-name = elegir otro nombre
doors-name-taken = «{ $name }» ya es el nombre de { $key }
doors-id-taken = «{ $id }» ya es el identificador de { $key }
doors-other-id = elegir otro identificador
doors-no-check = no tiene ninguna comprobación
doors-no-check-remedy = añadir un [[check]] con quantity, nominal y tolerance
doors-check-twice = { $quantity } ya lo comprueba { $key }
doors-check-twice-remedy = conservar uno de los dos o hacer que difieran en from, target, step o reference_line
doors-waived-and-checked = aquí se renuncia a { $quantity }, pero { $key } lo comprueba
doors-waived-and-checked-remedy = conservar la comprobación o la renuncia
doors-waived-twice = { $key } ya renuncia a { $quantity }
doors-waived-twice-remedy = conservar una

# Soportes, juegos de marcadores, tableros y cámaras
doors-screw-count = tiene { $count } tornillos
doors-screw-count-remedy = describir de uno a { $most }, cada uno debajo de una línea [[screw]]
doors-screw-twice-remedy = dar a cada tornillo su propio nombre
doors-screw-quantity = { $quantity } no es una magnitud del soporte que midan las fotos
doors-screw-quantity-remedy = indicar qué cambia el tornillo: yaw, pitch, roll, height, lateral_offset, distance
doors-screw-unit = { $quantity } se mide en { $unit }
doors-screw-unit-remedy = escribir { $key }
doors-screw-nothing = es cero
doors-screw-nothing-remedy = indicar lo que cambia una vuelta en sentido horario, negativo si lo hace menor
doors-kit-no-carrier = no tiene ningún portamarcadores
doors-kit-no-carrier-remedy = añadir un [[carrier]] con sus marcadores
doors-on-centreline = es para una marca frontal, pero la función de este portamarcadores es { $role }
doors-on-centreline-remedy = omitirlo aquí
doors-carrier-no-marker = no tiene ningún marcador
doors-carrier-no-marker-remedy = añadir debajo un [[carrier.marker]]
doors-card-ids = { $id } en un portamarcadores con la función { $role }: los números { $first } a { $last } son solo para tarjetas de trabajo
doors-card-ids-remedy = utilizar un marcador con otro número
doors-size-twice = figura junto a size_mm
doors-size-twice-remedy = indicar uno de los dos
doors-unit-vector = debe ser un vector unitario, pero su longitud es { $length }
doors-unit-vector-remedy = dividir sus valores por su longitud
doors-axes-square = debe ser perpendicular a right, pero el ángulo entre ambos es de { $angle }°
doors-axes-square-remedy = corregir la dirección equivocada
doors-carrier-name-taken = «{ $name }» ya es el nombre de carrier[{ $carrier }], línea { $line }
doors-carrier-name-taken-remedy = dar a cada portamarcadores su propio nombre
doors-role-taken = { $role } ya es la función de carrier[{ $carrier }], línea { $line }
doors-role-taken-remedy = un portamarcadores para cada rueda, para cada paso de rueda y para el frontal
doors-marker-id-taken = el número de marcador { $id } ya lo usa { $path }, línea { $line }
doors-marker-id-taken-remedy = dar a cada marcador del juego su propio número
doors-same-centre = es también el centro del marcador { $id }
doors-same-centre-remedy = medir dónde está este marcador
doors-no-layout = no es un archivo de levantamiento ({ $why })
doors-layout-remedy = volver a levantar el juego de marcadores u omitir `layout` en su archivo
doors-layout-other-kit = pertenece a otro juego de marcadores, o su archivo se modificó después del levantamiento
doors-layout-no-marker = el marcador número { $id } no está en el juego
doors-layout-twice = el marcador número { $id } aparece dos veces
doors-board-ids = { $columns } x { $rows } marcadores desde el número { $first } llegan hasta { $last }, pero la familia termina en { $end }
doors-board-ids-remedy = empezar por un número menor o imprimir menos marcadores
doors-focal-lengths = las dos distancias focales difieren en más de una quinta parte, lo que no ocurre en ninguna cámara de píxeles cuadrados
doors-focal-lengths-remedy = comprobar ambos números
doors-focal = { $found } no puede ser una distancia focal en píxeles para una imagen de { $side } px de ancho{ $perhaps ->
        [millimetres] {" "}(¿está en mm?)
        *[wrong] {""}
    }
doors-focal-remedy = indicarla en píxeles de la imagen guardada o ajustar la cámara
doors-camera-covariance-remedy = abarca focal_px, centre_px y la distorsión de { $model }: volver a ajustar la cámara u omitirla
doors-distortion-foreign = no corresponde a { $model } junto a { $beside }
doors-distortion-foreign-remedy = omitirlo o indicar otro modelo
doors-distortion-count = debe tener { $wanted } valores para { $model }, no { $found }
doors-distortion-count-remedy = escribir { $terms } (0.0 para los que no se usen)

# Lo que pide una hoja de montaje, una frase por comprobación
doors-asks = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}decide una lectura, no las fotos
        [either] {"; "}deciden las fotos si el juego tiene una marca en ese paso de rueda; si no, una lectura
        *[photos] {""}
    }.
doors-asks-by = { $what }: { $wanted }{ $decides ->
        [reading] {"; "}decide una lectura, no las fotos
        [either] {"; "}deciden las fotos si el juego tiene una marca en ese paso de rueda; si no, una lectura
        *[photos] {""}
    } (tolerancia: { $basis }).
doors-asks-in-step = En el paso «{ $step }»: { $asked }
doors-asks-in-every-step = En todos los pasos: { $asked }
doors-asks-not = No se comprueba: { $quantity }; motivo: { $because }
doors-asks-credentials = Cada foto que cuenta lleva credenciales de contenido (C2PA) de un firmante de confianza y no enumera ninguna edición
doors-anchors-not-built-in = este programa se construyó sin credenciales de contenido: omitir --credential-anchors o usar un programa construido con la opción credentials
doors-anchors-unreadable = no se puede leer { $file } ({ $why }): indicar un archivo de certificados (PEM)
doors-anchors-no-certificate = { $file } no contiene ningún certificado legible: indicar un archivo de certificados (PEM), cada uno de BEGIN CERTIFICATE a END CERTIFICATE
doors-asks-distance = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está por delante { $from ->
        [nose] del frontal
        [front_axle] del eje delantero
        [rear_axle] del eje trasero
        *[datum] del punto «{ $point }»
    }, medido a lo largo { $line ->
        [rear_axle_normal] de la perpendicular al eje trasero
        [thrust_line] de la línea de empuje
        *[centreline] del eje central del vehículo
    }
doors-asks-range = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está separado { $from ->
        [nose] del frontal
        [front_axle] del eje delantero
        [rear_axle] del eje trasero
        *[datum] del punto «{ $point }»
    }, en línea recta horizontal
doors-asks-lateral = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está al lado { $line ->
        [rear_axle_normal] de la perpendicular al eje trasero
        [thrust_line] de la línea de empuje
        *[centreline] del eje central del vehículo
    } (a la izquierda es positivo)
doors-asks-lateral-from = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está al lado { $from ->
        [nose] del frontal
        [front_axle] del eje delantero
        [rear_axle] del eje trasero
        *[datum] del punto «{ $point }»
    } (a la izquierda es positivo)
doors-asks-height = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está por encima del suelo
doors-asks-height-from = El centro { $which ->
        [named] de «{ $target }»
        *[one] de la diana
    } está por encima { $from ->
        [nose] del frontal
        [front_axle] del eje delantero
        [rear_axle] del eje trasero
        *[datum] del punto «{ $point }»
    } (por debajo es negativo)
doors-asks-yaw = { $which ->
        [named] «{ $target }»
        *[one] La diana
    } está girada respecto { $line ->
        [rear_axle_normal] a la perpendicular al eje trasero
        [thrust_line] a la línea de empuje
        *[centreline] al eje central del vehículo
    } (hacia la izquierda del vehículo es positivo; 0 es a escuadra)
doors-asks-pitch = { $which ->
        [named] «{ $target }»
        *[one] La diana
    } está inclinada (borde superior alejado del vehículo es positivo; 0 es a plomo)
doors-asks-roll = { $which ->
        [named] «{ $target }»
        *[one] La diana
    } está desnivelada (más baja a la derecha del vehículo es positivo)
doors-asks-sides = Las distancias laterales a las ruedas traseras difieren, izquierda menos derecha
doors-asks-other = { $quantity }
doors-wanted-both = { $nominal }, de { $low } a { $high }
doors-wanted-least = { $nominal }, como mínimo { $low }
doors-wanted-most = { $nominal }, como máximo { $high }
doors-wanted-open = { $nominal }, sin límite
doors-value-mm = { $value } mm
doors-value-inches = { $inches } pulgadas ({ $value } mm)
doors-value-degrees = { $value }°

# Lo contradictorio o inusual de una hoja de montaje
doors-doubt-no-prerequisite = La hoja no exige requisitos previos. ¿No importan los neumáticos, la carga ni la dirección?
doors-doubt-thrust-line = La perpendicularidad respecto a la línea de empuje se exige a menos de { $least }°: las placas de rueda asientan con unos { $seat }°, así que hacen falta fotos antes y después de media vuelta de rueda, o el eje central como referencia.
doors-doubt-no-room = El soporte debe estar a { $distance } mm por delante del frontal, pero solo se piden { $free } mm libres allí: el soporte y la persona necesitan unos { $room } mm más.
doors-doubt-step = Ninguna comprobación corresponde solo al paso «{ $step }»: ¿qué lo hace un paso distinto?
doors-doubt-range-short = La distancia en línea recta de { $range } mm es menor que el desplazamiento lateral de { $offset } mm.
doors-doubt-range = La distancia y el desplazamiento lateral dan una línea recta de { $least } a { $most } mm, pero se piden de { $low } a { $high } mm.
doors-doubt-sides = Con un soporte girado { $turn }°, las distancias laterales difieren de { $least } a { $most } mm, izquierda menos derecha; se piden { $asked } mm. ¿Es correcto el signo?
doors-doubt-nose = Según la altura y la altura sobre el frontal, el frontal está a { $nose } mm del suelo. ¿Es así?
doors-doubt-nominal = { $quantity }: { $nominal } { $unit ->
        [deg] °
        *[mm] mm
    } no es habitual (lo habitual es de { $low } a { $high } { $unit ->
        [deg] °
        *[mm] mm
    }).{ $hint ->
        [inches] {" "}¿Son pulgadas? Entonces añadir unit = "in".
        *[none] {""}
    }
doors-doubt-tolerance = { $quantity }: una tolerancia de ±{ $half } { $unit ->
        [deg] °
        *[mm] mm
    } no es habitual (lo habitual es de ±{ $low } a ±{ $high } { $unit ->
        [deg] °
        *[mm] mm
    }).
doors-doubt-middle = { $quantity }: el valor nominal no está en el centro de sus límites. ¿Es intencionado?

# Fotos que no se pueden leer
doors-photo-open = no se puede leer { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    }: { $why }
doors-photo-no-file = no es un archivo
doors-photo-empty = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } está vacía (0 bytes): copiarla de nuevo desde la cámara
doors-photo-bytes = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } tiene { $bytes } bytes, más de { $most }: utilizar el JPEG original de la cámara
doors-photo-pixels = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } indica { $width } x { $height } píxeles, más de { $most } en total: utilizar la foto original de la cámara
doors-photo-cut = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } está cortada ({ $detail }): copiarla de nuevo desde la cámara
doors-photo-damaged = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } está dañada ({ $detail }): copiarla de nuevo desde la cámara
doors-photo-unsupported = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } no se decodifica ({ $what }): guardarla como JPEG corriente a tamaño completo
doors-photo-foreign = { $name ->
        [none] la foto
        *[named] la foto «{ $name }»
    } es { $what ->
        [avif] una imagen AVIF
        [heic] una imagen HEIC, que esta versión no decodifica
        [raw] una imagen sin procesar (raw)
        [video] un vídeo
        [tiff] una imagen TIFF o sin procesar (raw)
        [gif] una imagen GIF
        [bmp] una imagen BMP
        [jxl] una imagen JPEG XL
        [jp2] una imagen JPEG 2000
        [jpeg] una imagen JPEG cuyo segundo marcador de formato está dañado
        [png] una imagen PNG alterada como si fuera texto
        [pdf] un documento PDF
        [zip] un archivo ZIP o un documento de oficina
        [gzip] un archivo gzip
        [ps] un documento PostScript
        [qoi] una imagen QOI
        [pgm] una imagen PGM
        [ppm] una imagen PPM
        [webp] una imagen WebP
        [text] un archivo de texto
        *[other] de un formato de imagen desconocido
    }: { $remedy ->
        [convert] convertirla a JPEG a tamaño completo, conservando sus datos EXIF
        [heic] ajustar la cámara del teléfono a «más compatible» (JPEG) o convertir la imagen a JPEG a tamaño completo, conservando sus datos EXIF
        [still] utilizar una foto fija, JPEG, PNG o HEIC
        [copy] copiar la foto de nuevo desde la cámara
        [binary] copiar la foto de nuevo en modo binario
        *[photo] utilizar una foto, JPEG, PNG o HEIC
    }

# Lo que se encontró al decodificar una foto
doors-fault-pixels = indica { $width } x { $height } píxeles
doors-fault-size-changed = su tamaño cambió al decodificarla
doors-fault-no-size = no indica tamaño
doors-fault-marker = marcador de formato FF{ $marker } fuera de lugar cerca del byte { $at }
doors-fault-early = datos de imagen antes de la cabecera
doors-fault-restarts = { $found } marcadores de reinicio donde su tamaño requiere { $wanted }
doors-fault-no-data = no contiene datos de imagen
doors-fault-short-header = su cabecera es demasiado corta
doors-fault-two-headers = tiene dos cabeceras
doors-fault-sampling = su cabecera indica un factor de muestreo cero
doors-fault-no-marker = falta un marcador de formato en el byte { $at }
doors-fault-no-length = el segmento FF{ $marker } no indica longitud en el byte { $at }
doors-fault-turn = marcador de reinicio fuera de orden en el byte { $at }
doors-fault-jpeg-end = el JPEG termina en el byte { $at } sin su marcador final
doors-fault-missing = faltan datos de imagen
doors-fault-left-over = sobran { $bytes } bytes de datos de imagen
doors-fault-parts = solo encajan { $used } de { $count } partes de sus datos de imagen
doors-fault-rows = sus filas no corresponden al tamaño que indica
doors-fault-heic-pixels = hay { $coded } píxeles codificados donde se indican { $stated }
doors-fault-tiles = { $found } teselas donde se indican { $rows } x { $columns }
doors-fault-uncovered = sus teselas no la cubren
doors-fault-heic-box = el archivo HEIC termina en el byte { $end }, dentro del bloque del byte { $at }
doors-fault-heic-early = el archivo HEIC termina antes de tiempo
doors-variant-heic = una imagen HEIC
doors-variant-heic-by = una imagen HEIC hecha con { $what }
doors-variant-heic-with = una imagen HEIC con { $what }
doors-variant-jpeg = { $kind ->
        [lossless] un JPEG sin pérdidas
        [hierarchical] un JPEG jerárquico
        *[arithmetic] un JPEG con codificación aritmética
    }
doors-variant-bits = un JPEG con { $bits } bits por muestra
doors-variant-scans = un JPEG con color reducido y un barrido por cada componente
doors-variant-components = un JPEG con componentes inusuales ({ $what })
doors-variant-unusual = un JPEG de un tipo inusual ({ $what })
doors-variant-png-extra = un PNG con datos adicionales muy grandes
doors-fault-of-the-program = el programa ha fallado con el trabajo «{ $job }»: comunicarlo, si es posible con el trabajo

# Archivos de escena, que lee el generador de imágenes
doors-scene-value = debe estar entre { $low } y { $high }, no { $found }
doors-scene-value-remedy = corregir el valor
doors-scene-photos = { $count } fotos
doors-scene-photos-remedy = indicar de 1 a { $most }, o ninguna para las dos habituales
doors-scene-name-twice = el nombre aparece dos veces
doors-scene-name-twice-remedy = dar a cada foto un nombre distinto
doors-scene-order = de { $from } a { $to } está en orden inverso
doors-scene-order-remedy = indicar primero el menor
doors-scene-things = { $count } objetos
doors-scene-things-remedy = indicar como máximo { $most }
doors-scene-long = es demasiado largo
doors-scene-long-remedy = escribir como máximo { $most } letras
doors-scene-no-carrier = en el juego no hay ningún portamarcadores `{ $name }`
doors-scene-no-photo = ninguna foto `{ $file }` está en la escena
doors-scene-own-key = lo escribe el propio `stage`
doors-scene-no-step = `{ $step }` no es un paso de la hoja de montaje
doors-scene-moves = es { $found }, pero la escena tiene { $count } movimientos
doors-scene-moves-remedy = escribir un [[move]] por cada movimiento del soporte
doors-scene-no-phase = `{ $phase }` no es una fase
doors-scene-file = `{ $name }` no es un nombre de archivo sencillo
doors-scene-file-remedy = utilizar letras, cifras, - y _ y la terminación .jpg
doors-scene-orientation = debe ser 1, 3, 6 u 8, no { $found }
doors-scene-orientation-remedy = 6 es en vertical
doors-scene-not-carried = nada se llama `{ $file }`
doors-scene-not-carried-remedy = indicar un archivo incluido
doors-scene-unknown = clave o palabra desconocida `{ $word }`
doors-scene-missing = falta `{ $key }`
doors-scene-missing-remedy = añadir `{ $key } = ...`
doors-scene-kinds-remedy = consultar las claves del formato de escena y sus tipos
doors-stage-read = no se puede leer { $path }: { $why }; comprobar la ruta y sus permisos
doors-stage-write = no se puede escribir { $path }: { $why }; comprobar los permisos y el espacio libre de la carpeta
doors-stage-job = las claves de trabajo de la escena no forman un archivo de trabajo válido: { $why }
doors-stage-compress = no se puede comprimir la foto «{ $photo }»: { $why }; reducirla
doors-stage-truth = no se puede escribir el trabajo o sus valores verdaderos como texto: { $why }; comprobar las claves de trabajo de la escena

doors-newest-most-moves = el soporte ya se ha movido { $most } veces en él
doors-newest-new-job = empezar un trabajo nuevo
doors-newest-unwritten = no se puede escribir ({ $why })
doors-newest-make-room = liberar espacio en el disco o permitir la escritura allí

## Estudios del sistema de medida, y fotos de un puesto inventado

doors-gauge-too-few = un estudio del sistema de medida necesita dos o más operadores, piezas y repeticiones, no { $operators }, { $parts } y { $trials }
doors-gauge-uneven = cada operador debe leer cada pieza las mismas veces
doors-gauge-constant =
    { $of ->
        [operators] media y rango no tiene constante para { $count } operadores: tomar el análisis de varianza
       *[trials] media y rango no tiene constante para { $count } repeticiones: tomar el análisis de varianza
    }
doors-stage-too-large = { $pixels } píxeles son más de los que caben en un JPEG
doors-pose-nothing-seen = ninguna de las { $photos } fotos muestra un marcador del juego
doors-pose-unsettled =
    { $why ->
        [first] el ajuste de { $photos } fotos no converge: la primera solución no concuerda con las fotos
        [singular] el ajuste de { $photos } fotos no converge: las ecuaciones son singulares
       *[covariance] el ajuste de { $photos } fotos no converge: la covarianza no existe
    }
