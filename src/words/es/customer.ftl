customer-title = Para el cliente: dónde estaba la diana
customer-page-title = Para el cliente: trabajo { $job }
customer-why = Las cámaras y los radares que ayudan al conductor se ajustan en el taller con una diana que se coloca delante del vehículo. Tiene que estar en el lugar correcto; si no, el sensor aprende una dirección equivocada. Esta página dice dónde estaba la diana, medido a partir de fotos.
customer-answer =
    { $verdict ->
        [within] La diana estaba donde tenía que estar, en todo lo que se comprobó.
        [outside] La diana no estaba donde tenía que estar.
        [not_proven] No está demostrado que la diana estuviera donde tenía que estar.
       *[retake] Estas fotos no demuestran dónde estaba la diana.
    }
customer-what = Qué se montó
customer-vehicle = Vehículo
customer-vin = Número de bastidor (VIN)
customer-repair-order = Orden de reparación
customer-photos-taken = Fotos tomadas
customer-job = Trabajo
customer-proven = Lo que quedó demostrado
customer-proven-simple = Lo que, medido, está dentro de los límites
customer-proven-likely = Lo que está dentro de los límites con al menos el { $least } % de probabilidad
customer-proven-nothing = Nada.
customer-open = Lo que no quedó demostrado o está mal
customer-open-nothing = No quedó nada abierto.
customer-photos = Con qué fotos
customer-no-photo = No se pudo leer ninguna foto.
customer-whose = De quién son estos límites
customer-whose-nobody = De nadie: la hoja de montaje no indica la fuente de sus límites. Pregunte en el taller de dónde vienen.
customer-meaning = Qué significa y qué no
customer-again = Se puede volver a comprobar: quien tenga las fotos y los archivos puede hacerlos medir de nuevo.
customer-repeats = Esta página repite el archivo result.json, escrito por { $tool }. El SHA-512 de ese archivo:
customer-void = Las cifras de estas fotos no son fiables. El informe del técnico dice por qué.
customer-held = Antes hay que aclarar algo. El informe del técnico dice qué.
customer-waived = { $name }: no comprobado. Motivo indicado: { $because }.
customer-not-checked = { $name }: no comprobado.
customer-no-check = La hoja de montaje no pide ninguna comprobación.
customer-not-seen = { $name }: las fotos no lo muestran.
customer-not-trusted = { $name }: ninguna cifra fiable.
customer-held-up = { $name }: no demostrado mientras eso siga abierto.
customer-within = { $figures }.
customer-outside = { $figures }: está fuera de lo permitido.
customer-too-close = { $figures }: demasiado justo para decidir con estas fotos.
customer-figures = { $amount } (con un margen de { $u }); exigido: { $allowed }
customer-figure-alone = { $amount }; exigido: { $allowed }
customer-named = { $name }: { $figures }
customer-named-read = { $name } (leído en un instrumento, no visto en las fotos): { $figures }
customer-no-value = sin valor
customer-allowed = { $nominal }, con { $half } de desvío como máximo
customer-quantity =
    { $quantity ->
        [distance] A qué distancia del vehículo estaba la diana
        [centring] Cuánto estaba la diana desplazada hacia un lado
        [height] A qué altura estaba la diana
        [yaw] Con qué perpendicularidad miraba la diana al vehículo
        [pitch] Cuánto se inclinaba la diana hacia el vehículo o hacia fuera
       *[roll] Con qué horizontalidad estaba la diana de lado a lado
    }
customer-distance-from =
    { $datum ->
        [nose] A qué distancia del frontal estaba la diana
        [front_axle] A qué distancia del eje delantero estaba la diana
        [rear_axle] A qué distancia del eje trasero estaba la diana
       *[other] A qué distancia del punto «{ $datum }» estaba la diana
    }
customer-with-extras = { $name } ({ $extras })
customer-photo =
    { $used ->
        [yes] Foto { $number }: { $file }
       *[no] Foto { $number }: { $file } (no se pudo usar)
    }
customer-photo-taken =
    { $used ->
        [yes] Foto { $number }: { $file }, tomada { $taken }
       *[no] Foto { $number }: { $file }, tomada { $taken } (no se pudo usar)
    }
customer-many-photos = { $count } fotos. { $photos }
customer-meaning-moment = Se refiere al momento en que se tomaron las fotos, y solo al lugar de la diana.
customer-meaning-not = No dice que el ajuste haya salido bien, que el sensor funcione ni que el vehículo sea seguro.
customer-meaning-scan = El técnico anotó «{ $result }» como lo que indicó el equipo de diagnosis. Eso no forma parte de esta prueba.
customer-meaning-u = El «margen» es la incertidumbre de la propia medición: en 95 de 100 casos la cifra verdadera está dentro de él.
customer-meaning-limits = Si los límites son los correctos para este vehículo lo dicen la información de servicio del fabricante y las normas locales; ellas prevalecen.
customer-meaning-trained = El trabajo es para personal cualificado; esta página no sustituye ningún paso del procedimiento. Los láseres y los vehículos elevados exigen sus propias precauciones.

customer-series = Orden de reparación { $series }
customer-series-vehicle = Vehículo: { $vehicle }
customer-stands-now = Estado actual
customer-last-counts = De cada sensor cuenta el último intento; los anteriores se conservan.
customer-all-attempts = Todos los intentos
customer-attempt-line =
    { $numbered ->
        [yes] Trabajo { $job }, intento { $number }, { $photos ->
            [one] una foto
           *[other] { $photos } fotos
        }.
       *[no] Trabajo { $job }, { $photos ->
            [one] una foto
           *[other] { $photos } fotos
        }.
    }
customer-which-last = No se puede saber cuál fue el último intento:
customer-number-them = dos indican el mismo número y la misma hora. Numerar los intentos.
customer-sensor = Sensor
customer-attempt = Intento
customer-verdict = Dictamen
customer-not-stated = no indicado
customer-series-only = Aquí solo figuran los trabajos que se consideraron juntos. Un sensor que falta no se consideró.
customer-series-about = Se trata de dónde estaba cada diana cuando se tomaron sus fotos. No dice que un ajuste haya salido bien ni que un sensor funcione.
customer-series-own-page = Cada trabajo tiene su propia página con sus cifras, sus fotos y el origen de los límites.
customer-series-govern = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. El trabajo es para personal cualificado; los láseres y los vehículos elevados exigen sus propias precauciones.
