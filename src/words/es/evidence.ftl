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

# An evidence folder checked.
evidence-outcome =
    { $outcome ->
        [passed] correcto
        [failed] fallido
       *[other] no comprobable
    }
evidence-item =
    { $item ->
        [names] nombres
        [declaration] declaración
        [completeness] integridad
        [manifests] manifiestos
        [tag-files] archivos de etiqueta
        [payload] contenido
        [signature] firma
        [timestamp] sello de tiempo
        [sealed-files] archivos sellados
        [signer] firmante
        [authority] autoridad
        [measured-again] medido de nuevo
        [log] registro
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] íntegra y firmada
        [unknown] íntegra, firmante desconocido
        [unsigned] íntegra, sin firma
       *[altered] alterada
    }
evidence-bad =
    { $more ->
        [0] { $files }
       *[other] { $files }; { $more } más
    }
evidence-names = { $count } archivos, ninguno es un enlace ni tiene un nombre que lleve a otra parte
evidence-bag = una bolsa BagIt 1.0 (RFC 8493)
evidence-no-bag = { $file } no declara BagIt 1.0 en UTF-8
evidence-file-unreadable = { $file } no se puede leer ({ $why })
evidence-file-wrong = { $file }: { $why }
evidence-fetch = fetch.txt pide archivos de otra parte: la evidencia contiene todos los suyos
evidence-file-state =
    { $state ->
        [missing] falta { $file }
        [added] { $file } se añadió
       *[altered] { $file } se alteró
    }
evidence-files = { $count } archivos, ninguno falta, se añadió ni se alteró (SHA-512)
evidence-unsigned = la carpeta no está firmada
evidence-signed = con la clave { $key }
evidence-name-not-utf8 = { $file } no es UTF-8
evidence-name-case = { $first } y { $second } solo difieren en mayúsculas y minúsculas
evidence-name-link = { $file } es un enlace u otra cosa que no es un archivo
evidence-too-many = hay más de { $count } archivos
evidence-stamped = sellada a más tardar el { $when }, según { $authority }
evidence-copy-unreadable = ilegible: { $why }
evidence-copy-other-manifest = { $file } no es el que figura en { $list }
evidence-copy-signed = la de la carpeta sellada, con la clave { $key }
evidence-copy-unsigned = la carpeta sellada no estaba firmada
evidence-copy-state =
    { $state ->
        [altered] { $file } no está como se selló y no figura como enmascarado
        [missing] { $file } se selló, no está aquí y no figura como omitido
       *[strange] { $file } figura como enmascarado u omitido y nunca se selló
    }
evidence-copy = { $count } archivos como se sellaron, { $masked } fotos enmascaradas, { $left_out } archivos omitidos
evidence-not-measured =
    { $why ->
        [copy] no se midió de nuevo: las fotos están enmascaradas, la carpeta sellada las tiene enteras
       *[altered] no se midió de nuevo: los bytes no son los que se sellaron
    }
evidence-no-signers = no se indicó ninguna lista de firmantes (--signers)
evidence-signer = { $who }, que figura en la lista
evidence-signer-unknown = no reconocido: { $why }
evidence-no-authority = no se indicó el certificado de ninguna autoridad (--timestamp-ca)
evidence-authority-false = no reconocida: { $why }
evidence-authority-ended = su certificado terminó el { $day } y ningún sello de tiempo más reciente lo cubre
evidence-authority = { $who }; su certificado termina el { $day }
evidence-measured = { $verdict }; cada valor a menos de { $share } de su incertidumbre típica del registrado
evidence-measured-otherwise = distinto de lo registrado: { $differences }
evidence-measured-by-other = distinto de lo registrado: { $differences } (registrado por la versión { $recorded }, medido por { $now })
evidence-not-measurable = no se puede medir: { $why }
evidence-several = { $folder } contiene las carpetas de evidencia de una orden de reparación: compruebe cada una (`baywitness check { $folder }/NAME`), o todas con `baywitness audit`; su propio { $index } lo lee `sha512sum -c`
evidence-no-folder = { $folder } no es una carpeta de evidencia: indique una hecha con `baywitness seal`
evidence-cannot-read = no se puede leer { $path }: { $why }
evidence-no-proof = la carpeta no contiene prueba de que su intento se registrara (seal --log)
evidence-logged = entrada { $entry } de { $log }, registrada el { $when }; en su punto de control de { $size } entradas{ $still ->
        [yes] , con el que el registro aún comienza
       *[no] { "" }
    }{ $witnessed ->
        [yes] , refrendado por { $witnesses }
       *[no] { "" }
    }{ $signed ->
        [yes] { "" }
       *[no] ; si { $log } lo firmó: no se indicó su clave de verificación (--log-keys)
    }
