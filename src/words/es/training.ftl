# Práctica: la galería de errores, los ejercicios y su calificación.

## La página de la galería

training-gallery = Galería de errores
training-gallery-lede = Cada hallazgo de un informe, mostrado en un puesto inventado: un error cada vez, la misma foto sin él y con él, y lo que dicen las cifras. Todo aquí lo ha generado y medido el propio programa.
training-gallery-caution = Prevalecen la información de servicio del fabricante del vehículo y la normativa local. La galería enseña qué aspecto tienen los hallazgos; no sustituye ningún procedimiento. El trabajo es para personal cualificado; los láseres y los vehículos elevados exigen sus propias precauciones.
training-findings = Hallazgos
training-void = la medición no es fiable
training-stop = nada se da por dentro de tolerancia
training-warn = conviene mirarlo
training-note = conviene saberlo
training-in-this-bay = En este puesto:
training-alt-without = { $title }: sin el error
training-alt-with = { $title }: con el error
training-as-it-should-be = Como debe estar
training-with-the-mistake = Con el error
training-what-it-says = Qué dice
training-how-it-comes-about = Cómo se produce
training-how-to-see-it = Cómo verlo
training-how-to-mend-it = Qué hacer
training-in-the-figures = Cómo se nota en las cifras
training-companions = Aparece junto con: { $codes }.
training-whole-report = El informe completo de este trabajo
training-check = Comprobación
training-required = Exigido
training-without = Sin el error
training-with = Con él
training-verdict = Dictamen
training-not-determined = no determinado
training-not-checked = sin comprobar
training-not-used = no usada
training-misfit = Cómo encajan las fotos entre sí (media cuadrática, px): { $without } sin el error, { $with } con él.

## El progreso de quien practica

training-progress = Progreso en los ejercicios
training-progress-lede = Puntos de cada ejercicio en el orden en que se calificaron. Los ejercicios ya calificados antes (círculos vacíos) no cuentan: sus respuestas se conocían.
training-drill-caution = Los ejercicios son inventados y practican la lectura de un montaje; no sustituyen la formación con un vehículo real. Prevalecen la información de servicio del fabricante del vehículo y la normativa local. El trabajo es para personal cualificado; los láseres y los vehículos elevados exigen sus propias precauciones.
training-chart = Parte de los puntos de cada ejercicio
training-level = Nivel { $level }
training-point = { $day }, nivel { $level }: { $percent } % de los puntos
training-head-mistake = Error
training-head-there = Presente
training-head-named = Nombrado
training-head-right-way = Sentido correcto
training-head-right-size = Valor correcto
training-head-share = Nombrado, 95 %
training-interval = { $low } a { $high } %
training-few = muy pocos para decir algo
training-last-drill = El último ejercicio: { $day }, nivel { $level }
training-job = Trabajo
training-head-points = Puntos
training-head-remarks = Qué había y qué se respondió
training-points = { $points } de { $points_of }
training-job-points = { $job }: { $points } de { $points_of } puntos
training-score = hallazgos { $named } de { $there }, sentidos { $ways } de { $ways_of }, valores { $sizes } de { $sizes_of }, falsas alarmas { $false_alarms }: { $points } de { $points_of } puntos
training-marked-before = Este ejercicio ya se calificó antes: sus respuestas se conocían.

## Las respuestas de un trabajo

training-nothing-wrong = Nada mal
training-nothing-was-wrong = no había nada mal
training-nothing-was-wrong-and-said = no había nada mal, y así se respondió
training-missed = pasado por alto: { $truth }
training-right = correcto: { $truth }
training-partly =
    { $right ->
        [way] nombrado, sentido correcto, valor incorrecto: { $truth }; respuesta: { $answer }
        [size] nombrado, sentido incorrecto, valor correcto: { $truth }; respuesta: { $answer }
       *[neither] nombrado, sentido incorrecto, valor incorrecto: { $truth }; respuesta: { $answer }
    }
training-not-so = no es así: { $answer }
training-no-answer = no se dio respuesta
training-answer-one = { $title }: { $part }
training-answer-both = { $title }: { $way }, { $size }
training-size =
    { $unit ->
        [deg] { $size }°
       *[mm] { $size } mm
    }
training-way-away = alejarlo
training-way-towards = acercarlo al vehículo
training-way-left = desplazarlo a la izquierda
training-way-right = desplazarlo a la derecha
training-way-raise = subirlo
training-way-lower = bajarlo
training-way-left-end-towards = girar su extremo izquierdo hacia el vehículo
training-way-left-end-away = girar su extremo izquierdo alejándolo del vehículo
training-way-top-away = inclinar su parte alta alejándola del vehículo
training-way-top-towards = inclinar su parte alta hacia el vehículo
training-way-right-end-lower = bajar su extremo derecho
training-way-right-end-raise = subir su extremo derecho

## Lo que hay en la carpeta de un ejercicio

training-level-1 = un error grande
training-level-2 = un error o ninguno
training-level-3 = un error pequeño o ninguno
training-level-4 = hasta dos errores
training-level-5 = hasta tres errores pequeños
training-how-to-head = Un ejercicio de nivel { $level }, en cada trabajo: { $words }. Todo es inventado.
training-how-to-folders = Cada carpeta es un trabajo: fotos, la hoja de montaje (setup.toml: lo que se exige y con qué tolerancia) y readings.txt.
training-how-to-answer = Decir de cada trabajo qué está fuera de tolerancia, en qué sentido moverlo y cuánto: rellenar answers.csv o teclear
training-how-to-several = Varios errores de un trabajo son varias líneas; si no hay nada mal, el hallazgo es `none`.
training-how-to-findings = Hallazgos (FINDING): { $codes }
training-how-to-ways = Sentidos (WAY): { $ways }
training-how-to-sizes = Valores (SIZE): mm, o grados para stand-turned, stand-tilted y stand-not-level.
training-how-to-seal = El archivo del juego queda sellado hasta que se califica el ejercicio; después se puede verificar cada trabajo. El sello guarda las respuestas de una mirada y muestra si se cambiaron; no es una cerradura.
training-read-head = { $job }: leído junto al soporte (un puesto inventado)
training-read-distance = Cara de la diana delante del frontal del vehículo, en el centro
training-read-left-end = Extremo izquierdo del soporte (lado del vehículo) delante del frontal
training-read-right-end = Extremo derecho del soporte (lado del vehículo) delante del frontal
training-read-centring = Punto de mira respecto al eje central, positivo a la izquierda del vehículo
training-read-height = Punto de mira sobre el suelo
training-read-plumb-line = Plomada en la cara: arriba más lejos del vehículo que abajo
training-read-water-level = Nivel de agua: extremo izquierdo (lado del vehículo) más alto que el derecho
training-read-bases = Los extremos distan { $ends } mm, los puntos de la plomada { $points } mm. De ello se deducen giro, inclinación y nivelación en grados.

## Lo que dicen los comandos

training-rendering = se genera { $job }
training-made =
    { $jobs ->
        [one] { $folder }: un trabajo, { $words }; leer allí HOW-TO.txt
       *[other] { $folder }: { $jobs } trabajos, { $words }; leer allí HOW-TO.txt
    }
training-sealed = Las respuestas están selladas; su SHA-256: { $digest }
training-progress-page = Progreso: { $page }
training-gallery-page = Galería: { $page }
training-cannot-find = no se encuentra { $path }: { $why }
training-cannot-read = no se puede leer { $path }: { $why }
training-cannot-write = no se puede escribir { $path }: { $why }
training-cannot-verify = no se puede verificar el trabajo generado { $job }: { $why }
training-cannot-picture = no se pueden hacer las imágenes de { $job }: { $why }
training-no-scene = la galería no tiene escena para { $code }
training-no-level = no hay nivel { $level }: elegir de 1 a { $last }
training-so-many-jobs = { $count } trabajos: elegir de 1 a { $most }
training-drill-is-there = { $folder } ya contiene un ejercicio: indicar otra carpeta
training-no-random-bytes = el sistema no da bytes aleatorios: { $why }
training-drill-unreadable = { $path }: { $why }; hacer de nuevo el ejercicio
training-drill-format = { $path }: el formato es { $format }, no drill/1
training-at-line = { $path }, línea { $line }: { $why }
training-unknown =
    { $what ->
        [job] no hay trabajo `{ $word }`; se conocen { $all }
        [finding] no hay hallazgo `{ $word }`; se conocen { $all }
       *[way] no hay sentido `{ $word }`; se conocen { $all }
    }
training-unknown-near =
    { $what ->
        [job] no hay trabajo `{ $word }`; ¿quería decir `{ $near }`?
        [finding] no hay hallazgo `{ $word }`; ¿quería decir `{ $near }`?
       *[way] no hay sentido `{ $word }`; ¿quería decir `{ $near }`?
    }
training-no-size = `{ $word }` no es un valor: un número de mm o grados
training-answered = Anotado para { $job }: { $answer }.
training-answer-cells = tiene { $found } celdas, se quieren { $most } como máximo: job, finding, way, size; entre comas, escribir los decimales con punto
training-answers-changed = { $path } no es aquello a lo que se comprometió { $drill }: las respuestas se cambiaron, no se califica nada
training-gives-back-other = { $path }: sus respuestas escribirían { $name }, que ningún trabajo de este ejercicio tiene: no se califica nada; pedir que se haga de nuevo el ejercicio
training-gives-back-link = { $path } es un enlace: no se escribe nada a través de él y no se califica nada; poner allí la propia carpeta del trabajo con sus archivos
training-drill-changed = { $path } tiene otro nivel u otros trabajos que los sellados con las respuestas: no se califica nada; devolver el archivo a su estado anterior
training-level-unsealed = Este ejercicio se hizo antes de que el nivel se sellara con las respuestas: nada demuestra que sea de nivel { $level }.
training-progress-unreadable = { $path }, línea { $line }: { $why }; corregirlo o indicar otro archivo de progreso
training-progress-edited = { $path }, línea { $line }: sus puntos no son los que el programa saca de las respuestas que contiene; restablecer la línea o indicar otro archivo de progreso
