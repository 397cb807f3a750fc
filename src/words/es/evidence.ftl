# The log of attempts against an archive.
evidence-verdict =
    { $verdict ->
        [within] dentro
        [outside] fuera
        [retake] repetir las fotos
        [not_proven] no demostrado
       *[other] { $verdict }
    }
evidence-log-broken = El registro de intentos no es válido: { $why }
evidence-log-unreadable = la entrada { $entry } no se puede leer: { $why }
evidence-log-repeated = la entrada { $entry } repite la entrada { $first }, byte a byte
evidence-log-out-of-order = la entrada { $entry } indica { $when }, { $off } s { $which ->
        [earlier] antes
       *[later] después
    } de lo que permiten sus vecinas (más de { $tolerance } s): se adelantó o atrasó su fecha, o un reloj iba mal
evidence-log-against-witness =
    { $which ->
        [earlier] la entrada { $entry } indica { $when }, pero se añadió después de que { $witness } viera { $size } entradas: fechada { $off } s antes
       *[later] la entrada { $entry } indica { $when }, pero ya estaba cuando { $witness } vio { $size } entradas: fechada { $off } s después
    }
evidence-log-missing =
    { $numbered ->
        [yes] intento { $attempt }
       *[no] un intento
    } { $known ->
        [yes] de la orden de reparación { $order }
       *[no] de una orden de reparación que el archivo no tiene o cuyo secreto no se indicó
    }: { $whole ->
        [yes] ninguna de sus { $gone } fotos está en el archivo
       *[no] { $gone } de sus { $photos } fotos no están en ningún trabajo del archivo
    } ({ $entries })
evidence-log-entry = entrada { $entry } del { $when }: { $verdict }
evidence-log-entry-with = entrada { $entry } del { $when }: { $with ->
        [both] { $verdict } con otro job.toml y otra hoja de montaje
        [job] { $verdict } con otro job.toml
        [setup] { $verdict } con otra hoja de montaje
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } antes; { $entries }
evidence-log-restated = las fotos de { $path }, ahora { $now }, se juzgaron de otro modo: { $entries }
evidence-log-no-entry = { $path } está sellada y el registro de intentos no tiene ninguna entrada suya
evidence-log-summary = Registro de intentos { $log }: { $size } entradas, { $signed ->
        [yes] firmado con una clave reconocida
       *[no] sin que se indicara su clave de verificación (--log-keys)
    }{ $witnessed ->
        [yes] , refrendado por { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; comienza con todos los puntos de control conservados
       *[no] { "" }
    }
evidence-log-title = Registro de intentos
evidence-log-nothing = todos los intentos están en el archivo; todos los trabajos sellados, en el registro
evidence-log-more = { $count } más
evidence-log-all = todos: { $file }

# What joins two jobs of an archive.
evidence-photo-of-another-job =
    { $how ->
        [bytes] { $photo } es byte a byte { $other } de aquel trabajo
       *[view] { $photo } muestra la misma vista que { $other } de aquel trabajo, guardada de nuevo, escalada o recortada
    }: uno de los dos trabajos no se fotografió por separado. Así se ve una carpeta copiada para otro vehículo, y también una cámara dejada en el trípode delante de un vehículo que no se movió. Pida las fotos originales.
evidence-set-up-of-another-job = Esto coincide con aquel trabajo dentro del ruido de las fotos, más de lo que los montajes de este archivo coinciden por azar: { $quantities }. Así se ve un vehículo fotografiado para dos trabajos. Compare las fotos de ambos: vehículo, suelo, sombras.

# An audited archive.
evidence-audit-title = Auditoría de montajes
evidence-audit-unreadable = ilegible o alterado
evidence-audit-filter = Mostrar filas con
evidence-audit-filter-hint = cualquiera de sus palabras
evidence-audit-shown = { $shown } de { $count } a la vista
evidence-audit-foot = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Estas cifras documentan montajes y no sustituyen ningún procedimiento; el trabajo es para personal cualificado, y los láseres y los vehículos elevados requieren sus propias precauciones.
evidence-audit-progress = { $done } de { $total } ({ $kept } de antes), { $rate } por segundo, faltan { $left } s
evidence-audit-jobs = { $count } trabajos, { $kept } de ellos de una auditoría anterior
evidence-audit-across = comparten una foto o un montaje con un trabajo anterior: véase el informe
evidence-audit-changed = dicen otra cosa que antes de recalcularse: véase el informe
evidence-audit-other-version = se juzgaron con otra versión del programa: --recompute los vuelve a juzgar
evidence-audit-report = Informe: { $file }
evidence-column-verdict = Dictamen
evidence-column-job = Trabajo
evidence-column-checks = Comprobaciones
evidence-column-findings = Hallazgos
evidence-column-setup = Hoja de montaje
evidence-column-vehicle = Vehículo
evidence-column-technician = Técnico
evidence-column-bay = Puesto
evidence-column-taken = Tomado
evidence-column-evidence = Evidencia
evidence-column-folder = Carpeta
evidence-column-finding = Hallazgo
evidence-column-meaning = Qué dice
evidence-attempt = intento { $attempt }
evidence-not-sealed = sin sellar
evidence-state =
    { $state ->
        [signed] íntegra y firmada por { $who }
        [unknown] íntegra, firmante desconocido
        [unsigned] íntegra, sin firma
       *[altered] alterada
    }
evidence-recomputed = recalculado: { $count } cambios
evidence-check = { $what }: { $measured }, exigido { $required }: { $verdict }
evidence-change-what =
    { $what ->
        [verdict] dictamen
        [findings] hallazgos
       *[message] mensaje
    }
evidence-change-check = { $name } ({ $parts })
evidence-change = { $what }: antes { $earlier }, ahora { $now }
evidence-change-moved =
    { $what }: antes { $earlier }, ahora { $now }, { $sign ->
        [minus] -
       *[plus] +
    }{ $moved } u
evidence-value = { $value } { $unit } (u { $u })
evidence-none = ninguno
evidence-not-checked = no comprobado
evidence-not-determined = no determinado
