# An effect in a sentence.
trends-direction =
    { $kind ->
        [distance] { $much ->
            [more] más lejos
           *[less] más cerca
        }
        [height] { $much ->
            [more] más alto
           *[less] más bajo
        }
        [lateral] { $much ->
            [more] más a la izquierda del vehículo
           *[less] más a la derecha del vehículo
        }
        [yaw] { $much ->
            [more] girado, con el extremo izquierdo más cerca
           *[less] girado, con el extremo derecho más cerca
        }
        [pitch] { $much ->
            [more] con la parte superior más alejada del vehículo
           *[less] con la parte superior más inclinada hacia el vehículo
        }
        [roll] { $much ->
            [more] desnivelado, con el extremo derecho más bajo
           *[less] desnivelado, con el extremo izquierdo más bajo
        }
       *[other] { $much ->
            [more] más
           *[less] menos
        }
    }
trends-direction-than =
    { $than ->
        [before] { $direction } que antes
        [others] { $direction } que en los demás
       *[required] { $direction } de lo exigido
    }
trends-factor =
    { $factor ->
        [technician] Técnico
        [bay] Puesto
        [setup] Hoja de montaje
        [kit] Juego de marcadores
        [vehicle] Vehículo
        [camera] Cámara
        [week] Semana
       *[other] { $factor }
    }
trends-subject =
    { $factor ->
        [bay] Puesto { $name }
        [setup] Hoja de montaje { $name }
        [kit] Juego de marcadores { $name }
       *[other] { $name }
    }
trends-amount = { $amount } { $unit } ({ $size } tolerancias)
trends-amount-tolerances = { $size } tolerancias
trends-effect-shift = { $who }: { $what } se desvía en { $amount } ({ $way }), siempre hacia ese lado, también frente a otros en el mismo lugar.
trends-effect-change = { $who }: desde la semana { $week }, { $what } ha cambiado en { $amount } ({ $way }).
trends-effect-sheet = { $who }: indica { $what } { $nominal } { $unit }, pero los valores de sus trabajos rondan { $value } { $unit } (a { $off } tolerancias), sea quien sea quien trabaje con ella: compare la hoja con su fuente.
trends-effect-slip = { $said } Error de tecleo probable: { $slip }.
trends-slip =
    { $slip ->
        [sign] signo invertido
        [inches] pulgadas y milímetros confundidos
        [point] coma decimal desplazada una posición
        [swapped] dos cifras intercambiadas
       *[digit] una cifra equivocada
    }
trends-effect-finding = { $who }: el hallazgo { $code } se dio { $seen } veces, cuando según los demás en el mismo lugar cabe esperar { $expected }.
trends-effect-outside = { $who }: { $what } quedó fuera de tolerancia { $seen } veces, cuando según los demás en el mismo lugar cabe esperar { $expected }.
trends-also-outside = { $what } fuera de tolerancia
trends-together = No se distingue de lo siguiente: { $other }; los trabajos son los mismos.
trends-together-one =
    { $factor ->
        [setup] hoja de montaje { $name }
        [kit] juego de marcadores { $name }
        [bay] puesto { $name }
        [vehicle] vehículo { $name }
        [camera] cámara { $name }
       *[technician] técnico { $name }
    }
trends-together-all =
    { $factor ->
        [setup] las hojas de montaje que lo acompañan
        [kit] los juegos de marcadores que lo acompañan
        [bay] los puestos que lo acompañan
        [vehicle] los vehículos que lo acompañan
        [camera] las cámaras que lo acompañan
       *[technician] las personas que lo acompañan
    }
trends-advice-technician-change = Algo ha cambiado en la forma de trabajar de esta persona: preguntar qué antes de sacar conclusiones.
trends-advice-technician = Miren las fotos juntos: un hábito así se descubre y se corrige junto al soporte, no en una tabla.
trends-advice-bay-change = Preguntar qué se cambió en este puesto: un elevador, el suelo, sus marcas, las lámparas.
trends-advice-bay = Comprobar el suelo (`baywitness bay`), sus marcas y aquello con lo que se alinea en este puesto.
trends-advice-kit = Volver a medir el juego de marcadores (`baywitness survey`, `recheck`): un portamarcadores se dobló, se cayó o se montó de otro modo.
trends-advice-setup-change = Comparar las revisiones de la hoja: desde entonces pide otra cosa, o los vehículos son distintos.
trends-advice-setup = Comparar cada cifra de la hoja con la información de servicio que nombra; corregirla después y volver a juzgar sus trabajos.

# The page.
trends-title = Tendencias de { $count ->
        [one] un trabajo
       *[other] { $count } trabajos
    }
trends-period = Del { $first } al { $last }.
trends-copies =
    { $count ->
        [one] Una copia se contó
       *[other] { $count } copias se contaron
    } una sola vez.
trends-not-judged =
    { $count ->
        [one] Un trabajo no pudo
       *[other] { $count } trabajos no pudieron
    } juzgarse en la auditoría.
trends-unreadable =
    { $count ->
        [one] No se pudo leer un archivo o línea
       *[other] No se pudieron leer { $count } archivos o líneas
    }.
trends-pseudonyms = Las personas figuran con seudónimo; los resultados e informes enlazados las nombran.
trends-unreadable-title = Lo que no se pudo leer
trends-percent = { $share } %
trends-share-interval = { $share } % (de { $low } a { $high } %)
trends-interval = { $value } (de { $low } a { $high })
trends-beyond-chance = Lo que destaca más allá del azar
trends-nothing = Nada. Las diferencias entre personas, puestos, hojas de montaje y juegos de marcadores que siguen no son mayores que las del azar.
trends-effect-interval = Intervalo del 95 %: de { $low } a { $high } tolerancias.
trends-effect-chance =
    { $count ->
        [one] Un primer intento
       *[other] { $count } primeros intentos
    }; probabilidad de una diferencia así en cualquier parte de un archivo sin ningún efecto: { $chance }.
trends-one-in-a-million = menos de una entre un millón
trends-effect-also = También más frecuente aquí: { $others }.
trends-do = Qué hacer:
trends-effect-jobs = Sus trabajos, primero los más desviados
trends-jobs =
    { $count ->
        [one] un trabajo
       *[other] { $count } trabajos
    }
trends-jobs-some = { $shown } de { $count } trabajos; todos: jobs.csv
trends-link-report = informe y sus fotos
trends-link-result = resultado
trends-link-folder = carpeta
trends-misplaced-title = Cómo estaba mal colocado el soporte
trends-misplaced-aside = Comprobaciones fuera de tolerancia, como parte de los trabajos que las tienen; las líneas son intervalos del 95 % (Wilson).
trends-misplaced-none = Ninguna comprobación quedó fuera de tolerancia.
trends-misplaced-chart = Malas colocaciones por tipo y dirección
trends-misplaced = { $what }: { $way }
trends-misplaced-note =
    { $count ->
        [one] un trabajo
       *[other] { $count } trabajos
    }, { $share }
trends-size = { $amount } { $unit } ({ $size } tolerancias)
trends-column-check = Comprobación
trends-column-way = En qué sentido
trends-column-jobs = Trabajos
trends-column-median = Mediana
trends-column-ninth = Nueve de cada diez por debajo
trends-column-within = Dentro
trends-column-outside = Fuera
trends-column-not-proven = No demostrado
trends-column-retake = Repetir
trends-column-share = Proporción fuera, 95 %
trends-column-setup = Hoja de montaje
trends-column-first = Primeros intentos
trends-column-mean = Media
trends-column-deviation = Desviación típica
trends-column-cp = Cp, 95 %
trends-column-cpk = Cpk, 95 %
trends-by =
    { $factor ->
        [technician] Por técnico
        [bay] Por puesto
        [setup] Por hoja de montaje
        [kit] Por juego de marcadores
        [vehicle] Por vehículo
        [camera] Por cámara
        [week] Por semana
       *[other] Por { $factor }
    }
trends-no-group = Ningún trabajo lo indica.
trends-people-note = En orden de nombres: una diferencia entre personas solo se considera tal donde supera el azar (arriba). Quien trabaja en un mal puesto tiene malas cifras.
trends-groups-folded = { $count } en total: proporciones, cifras, trabajos
trends-group-note =
    { $outside } de { $count } trabajos{ $few ->
        [yes] , pocos
       *[no] { "" }
    }
trends-all-jobs = todos los trabajos
trends-share-chart = Proporción fuera de tolerancia, { $factor }
trends-share-note = Proporción de trabajos fuera de tolerancia con intervalos del 95 %. Los intervalos que se solapan no dicen nada; uno de cada veinte queda fuera de la verdad por azar.
trends-first-attempts =
    { $count ->
        [one] un primer intento
       *[other] { $count } primeros intentos
    }
trends-level =
    { $against ->
        [nominal] nominal
       *[others] los demás
    }
trends-which-way = En qué sentido: { $what }
trends-which-way-note = Media de (valor - nominal) / tolerancia frente a los demás, descontados los otros factores; intervalos del 95 % de cada uno. Hacia la derecha: { $way }.
trends-stands-out = destaca: véase arriba
trends-few-jobs = pocos trabajos: dice poco
trends-attempts-title = Primer intento frente al último
trends-attempts-first = Dentro de tolerancia al primer intento: { $within } de { $count } ({ $share }).
trends-attempts-none = Ninguna orden de reparación tiene más de un intento.
trends-attempts = De { $series } órdenes de reparación con varios intentos, { $first } estaban dentro de tolerancia al primero y { $last } al último.
trends-attempts-size = La mayor desviación fue de media { $first } tolerancias en el primero y { $last } en el último.
trends-capability-title = Capacidad por hoja de montaje
trends-capability-note = (valor - nominal) / tolerancia de los primeros intentos; Cp y Cpk con intervalos del 95 % para una dispersión normal (ISO 22514-2). Por debajo de 1 la dispersión no cabe en la tolerancia.
trends-capability-none = Ninguna hoja tiene ocho primeros intentos.
trends-capability-folded =
    { $count ->
        [one] una comprobación
       *[other] { $count } comprobaciones
    }
trends-findings-title = Hallazgos
trends-finding = { $code }: { $share } de todos los trabajos
trends-findings-none = Ninguno.
trends-findings-note = `baywitness explain CODE` dice qué significa un código; `baywitness gallery` los muestra todos.
trends-method-title = Cómo se ha hallado esto y lo que no puede decir
trends-method-compared = Se comparan los primeros intentos ({ $count }), para que nadie mejore sus cifras repitiendo. Personas, puestos, hojas de montaje y juegos de marcadores se separan con un modelo aditivo para cada magnitud; los hallazgos se comparan dentro de estratos de todos los demás factores (Mantel y Haenszel, exacto).
trends-method-tests = Se hicieron { $count } pruebas. Con la corrección de Holm, a lo sumo en uno de cada { $archives } archivos sin ningún efecto se nombra aquí alguno. Las diferencias por debajo de { $size } tolerancias y los grupos con menos de { $jobs } primeros intentos no se nombran nunca.
trends-method-changes = Los cambios se buscan con sumas acumuladas sobre trabajos sueltos; la semana es la más probable, una vecina puede ser la correcta. El gráfico semanal avisa por azar una vez en { $run } semanas (holgura { $allowance }, intervalo { $interval }), y { $shifted } semanas después de un desplazamiento de una desviación típica de una media semanal.
trends-method-together = Lo que va siempre junto (una persona que solo trabaja en un puesto con un juego de marcadores) no lo separa ninguna cifra; se indica donde es así.
trends-method-not-why = Las cifras dicen que algo es distinto, no por qué ni de quién es la culpa. Los trabajos cuyas fotos no pudieron usarse cuentan solo como dictamen.
trends-foot = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Estas cifras documentan montajes y no sustituyen ningún procedimiento; el trabajo es para personal cualificado, y los láseres y los vehículos elevados requieren sus propias precauciones.

# Charts over time.
trends-week-point = { $week }: { $outside } de { $count } fuera de tolerancia
trends-weeks-title = Semana a semana
trends-weeks-few = Muy pocas semanas, o ningún trabajo indica su hora.
trends-weeks-note = Proporción de trabajos fuera de tolerancia; límites a tres desviaciones típicas para el número de trabajos de la semana. Más allá: cuadrados.
trends-weeks-chart = Proporción fuera de tolerancia por semana
trends-mean = media
trends-limit = límite
trends-tolerance = tolerancia
trends-mean-range = rango medio
trends-jobs-title = Trabajo a trabajo
trends-jobs-note = (valor - nominal) / tolerancia de los últimos primeros intentos, y debajo las diferencias entre vecinos; límites a partir del rango móvil medio (2,660 y 3,267 veces). Más allá: cuadrados. Cada punto lleva a su trabajo.
trends-point = { $name }: { $value }
trends-latest = los últimos { $shown } de { $count }
trends-single-values = Valores individuales
trends-moving-ranges = Rangos móviles
trends-week-mean =
    { $week }: { $mean } en { $count ->
        [one] un trabajo
       *[other] { $count } trabajos
    }
trends-effect-weeks =
    { $against ->
        [nominal] Media semanal, en tolerancias
       *[others] Media semanal frente a los demás, en tolerancias
    }{ $changed ->
        [yes] ; cuadrados: desde el cambio.
       *[no] .
    }
trends-effect-chart = Media semanal
trends-sums-note = Suma acumulada de las medias semanales frente al nivel anterior, el mayor de ambos lados, dibujada hasta cuatro intervalos.
trends-sums-chart = Sumas acumuladas
trends-decision-interval = intervalo

# What the command prints.
trends-said-jobs =
    { $count ->
        [one] 1 trabajo
       *[other] { $count } trabajos
    }
trends-said-also =
    { $what ->
        [copies] { $count ->
            [one] 1 copia contada una vez
           *[other] { $count } copias contadas una vez
        }
        [errors] { $count } sin poder juzgarse
        [unreadable] { $count } ilegibles
       *[others] { $count } de otro JSON
    }
trends-said-unreadable = ilegible: { $words }
trends-said-verdict = { $verdict } ({ $share } %)
trends-said-nothing = Nada destaca más allá de lo que explica el azar.
trends-said-report = Informe: { $file }

# Lo que no se puede leer de un archivo; `trends-in-file` pone el archivo delante del motivo.
trends-in-file = { $file }: { $why }
trends-cannot-read = no se puede leer { $path }: { $why }
trends-no-results = no se encontró ningún resultado: indicar la carpeta de una auditoría, o archivos de resultados como los escriben `verify --json` y `audit`
trends-no-results-because = no se encontró ningún resultado: indicar la carpeta de una auditoría, o archivos de resultados como los escriben `verify --json` y `audit` ({ $why })
trends-no-verdict = un resultado sin dictamen
trends-row-no-verdict = una fila sin dictamen conocido
trends-no-parquet = este programa se compiló sin Parquet: indicar la carpeta de la auditoría o su audit.jsonl, o compilar con la función `parquet`
trends-not-json = no es JSON: `{ $found }` está donde debería empezar un objeto
trends-cut-off = su último objeto está cortado
trends-parquet-damaged = no es un archivo Parquet legible ({ $why }): repetir la auditoría
trends-parquet-rows = declara un número imposible de filas: repetir la auditoría
trends-parquet-column = declara una columna mayor que el archivo: repetir la auditoría
trends-parquet-other = no es la tabla de una auditoría: indicar audit.parquet de la carpeta de una auditoría
trends-parquet-part = contiene una comprobación o un hallazgo sin sus palabras: repetir la auditoría
