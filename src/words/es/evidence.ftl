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
    }: { $lies ->
        [nowhere] ninguna de sus { $gone } fotos está en el archivo
        [scattered] sus { $photos } fotos están dispersas, ningún trabajo del archivo las tiene todas
        [refiled] sus { $photos } fotos están en { $path }, archivado como otro intento o para otra orden de reparación, y en ningún trabajo archivado como lo fue este intento
        [stated] solo la copia enmascarada { $path } tiene sus { $photos } fotos, según huellas que ella misma indica: las fotos enmascaradas no pueden mostrarlas, y no contiene ninguna prueba de este registro; pedir la carpeta entera
       *[partly] { $gone } de sus { $photos } fotos no están en ningún trabajo del archivo
    } ({ $entries })
evidence-log-entry = entrada { $entry } del { $when }: { $verdict }
evidence-log-entry-with = entrada { $entry } del { $when }: { $with ->
        [both] { $verdict } con otro job.toml y otra hoja de montaje
        [job] { $verdict } con otro job.toml
        [setup] { $verdict } con otra hoja de montaje
        [photos] { $verdict } con otras fotos junto a estas
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } antes; { $entries }
evidence-log-restated = las fotos de { $path }, ahora { $now }, se juzgaron de otro modo: { $entries }
evidence-log-no-entry = { $path } está sellada y el registro de intentos no tiene ninguna entrada suya
evidence-logged-before-taken = la entrada { $entry } { $by ->
        [witness] fue vista por { $witness }
       *[log] se registró
    } el { $when }, antes de { $what ->
        [calibration] la calibración
       *[photo] que se tomara { $photo }
    } ({ $taken }): uno de los relojes iba mal
evidence-logged-late = { $path }: la entrada { $entry }, la primera con sus fotos, se registró el { $when }, más de un día después de la última de sus fotos y de su calibración ({ $taken })
evidence-log-unlogged = { $path } no está sellada y ninguna entrada tiene sus fotos
evidence-log-orders-unknown = con el secreto indicado (--log-orders), la orden de reparación de ninguna entrada es la de un trabajo del archivo: no es el secreto de este registro, o todos los trabajos se archivaron de nuevo. Las órdenes de reparación no se compararon
evidence-log-summary = Registro de intentos { $log }: { $size } entradas, { $signed ->
        [yes] firmado con una clave reconocida
       *[no] sin que se indicara su clave de verificación (--log-keys)
    }{ $witnessed ->
        [yes] , refrendado por { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes] ; comienza con todos los puntos de control conservados
       *[no] { "" }
    }{ $unlogged ->
        [0] { "" }
        [one] ; { $unlogged } trabajo no está sellado ni figura en ninguna entrada
       *[other] ; { $unlogged } trabajos no están sellados ni figuran en ninguna entrada
    }{ $late ->
        [0] { "" }
        [one] ; { $late } trabajo se registró con más de un día de retraso
       *[other] ; { $late } trabajos se registraron con más de un día de retraso
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
evidence-file-unlike-neighbours =
    { $role ->
        [kit] El archivo de su juego de marcadores es otro
        [setup] Su hoja de montaje es otra
       *[camera] Su archivo de cámara es otro
    } que con el mismo nombre en los trabajos de antes y de después, que tienen uno y el mismo. Puede haberse cambiado para este trabajo: compare ambos archivos (sus SHA-256 están en `inputs` de los resultados).

# An audited archive.
evidence-audit-title = Auditoría de montajes
evidence-audit-unreadable = ilegible, alterado o desaparecido
evidence-audit-unread =
    { $what ->
        [job-name] parece un archivo de trabajo, cuyo nombre es exactamente job.toml: cambiarle el nombre
        [no-job] contiene imágenes como un trabajo, y no hay archivo de trabajo por encima: volver a poner job.toml en su lugar, o las imágenes en otro
        [tar-name] contiene evidencia sellada en un solo archivo, cuyo nombre termina en .tar: cambiarle el nombre
        [unfinished] es lo que dejó un sellado interrumpido: sellar de nuevo y después borrarlo
        [packed] no se mira dentro de archivos comprimidos de este tipo: descomprimirlo
        [link] es un enlace que lleva fuera de lo auditado: indicar también su destino, o ponerlo en su lugar
        [deep] hay demasiadas carpetas por encima: indicarla directamente
       *[system] { $why }
    }
evidence-audit-filter = Mostrar filas con
evidence-audit-filter-hint = cualquiera de sus palabras
evidence-audit-shown = { $shown } de { $count } a la vista
evidence-audit-foot = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Estas cifras documentan montajes y no sustituyen ningún procedimiento; el trabajo es para personal cualificado, y los láseres y los vehículos elevados requieren sus propias precauciones.
evidence-audit-progress = { $done } de { $total } ({ $kept } de antes), { $rate } por segundo, faltan { $left } s
evidence-audit-jobs = { $count } trabajos, { $kept } de ellos de una auditoría anterior
evidence-audit-across = comparten una foto o un montaje con otro trabajo, o tienen un archivo distinto de los trabajos vecinos: véase el informe
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
        [gone] ya no está
       *[altered] alterada
    }
evidence-state-copy =
    { $measured ->
        [yes] { $state } (copia enmascarada)
       *[no] { $state } (copia enmascarada, sin medir de nuevo)
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
        [masked-photos] fotos enmascaradas
        [signer] firmante
        [authority] autoridad
        [measured-again] medido de nuevo
        [credentials] credenciales
        [log] registro
        [sensor-pattern] patrón del sensor
        [reports] informes
        [report-signature] firma del informe
        [report-signer] firmante del informe
        [report-timestamp] sello de tiempo del informe
        [series] carpetas de la orden de reparación
        [series-signature] firma del índice de la orden de reparación
        [series-page] página de la orden de reparación
        [report-authority] autoridad del informe
        [signing-time] hora de la firma
        [report-signing-time] hora de la firma del informe
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] íntegra y firmada
        [unknown] íntegra, firmante desconocido
        [unsigned] íntegra, sin firma
        [unconfirmed] íntegra y firmada; su veredicto no está confirmado
       *[altered] alterada
    }
evidence-whole-copy =
    { $measured ->
        [yes] { $state }, hasta donde lo muestra una copia enmascarada: sus fotos miden lo registrado; nada une a lo sellado lo demás que muestran
       *[no] { $state }, hasta donde lo muestra una copia enmascarada: NO se midió de nuevo, y solo la carpeta sellada muestra si el resultado se sigue de las fotos
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
        [strange] el sellado no pone allí { $file }
       *[altered] { $file } se alteró
    }
evidence-files = { $count } archivos, ninguno falta, se añadió ni se alteró (SHA-512)
evidence-series-signer = { $index } no está firmado por quien firmó { $folders }: se escribió de nuevo
evidence-unsigned = la carpeta no está firmada
evidence-signed = con la clave { $key }
evidence-name-not-utf8 = { $file } no es UTF-8
evidence-name-case = { $first } y { $second } solo difieren en mayúsculas y minúsculas
evidence-empty-folder = { $folder } es una carpeta sin archivos, que ninguna lista tiene
evidence-name-link = { $file } es un enlace u otra cosa que no es un archivo
evidence-too-many = hay más de { $count } archivos
evidence-stamped = sellada a más tardar el { $when }, según { $authority }
evidence-copy-other-manifest = { $file } no es el que figura en { $list }
evidence-copy-signed = la de la carpeta sellada, con la clave { $key }
evidence-copy-unsigned = la carpeta sellada no estaba firmada
evidence-copy-state =
    { $state ->
        [altered] { $file } no está como se selló y no figura como enmascarado
        [missing] { $file } se selló, no está aquí y no figura como omitido
        [no-photo] { $file } figura como enmascarado y no es una foto del trabajo
        [added] { $file } no se selló y no es nada de lo que tiene una copia
        [says-more] { $file } dice lo que ninguna copia dice de sí misma
       *[strange] { $file } figura como enmascarado u omitido y nunca se selló
    }
evidence-copy = { $count } archivos como se sellaron, { $masked } fotos enmascaradas, { $left_out } archivos omitidos
evidence-not-measured = no se midió de nuevo: los bytes no son los que se sellaron
evidence-no-signers = no se indicó ninguna lista de firmantes (--signers)
evidence-signer = { $who }, que figura en la lista
evidence-signer-unknown = no reconocido: { $why }
evidence-no-authority = no se indicó el certificado de ninguna autoridad (--timestamp-ca)
evidence-authority-false = no reconocida: { $why }
evidence-authority-ended = su certificado terminó el { $day } y ningún sello de tiempo más reciente que cuente lo cubre
evidence-authority = { $who }; su certificado termina el { $day }
evidence-measured = { $verdict }; cada valor a menos de { $share } de su incertidumbre típica del registrado; { $sentences ->
        [compared] todo lo demás como se registró
       *[not] sus frases, de la versión { $recorded }, no se compararon
    }
evidence-measured-unconfirmed = registrado: { $recorded }; confirmado: { $verdict }; la hoja de montaje exige credenciales de contenido, y esta comprobación no responde de ninguna que baste (un programa construido con la opción credentials, y --credential-anchors); cada valor a menos de { $share } de su incertidumbre típica del registrado
evidence-masked = { $photos } fotos muestran { $markers } marcadores donde los tiene el resultado sellado; nada une lo demás que muestran
evidence-masked-no-markers = las fotos no muestran ningún marcador que las una al resultado sellado
evidence-masked-measured = { $verdict }; cada valor de las fotos enmascaradas a menos de { $share } incertidumbres típicas del registrado; lo que depende de las fotos enteras y de sus propios datos no se buscó de nuevo
evidence-masked-size = { $photo } no es la foto sellada, enmascarada: tiene { $width } por { $height } píxeles
evidence-masked-markers = { $photo } no es la foto sellada, enmascarada: de { $recorded } marcadores registrados y { $seen } que muestra, { $found } están en el mismo sitio
evidence-masked-no-camera = no se midió de nuevo: el trabajo no nombra ninguna cámara y ningún archivo de cámara corresponde a sus fotos, así que el resultado sellado tampoco mide nada
evidence-masked-cameras = no se midió de nuevo: el trabajo no nombra ninguna cámara, varias se eligieron por los datos propios de las fotos, y esos se enmascararon; la carpeta sellada los tiene
evidence-measured-otherwise = distinto de lo registrado: { $differences }
evidence-measured-by-other = distinto de lo registrado: { $differences } (registrado por la versión { $recorded }, medido por { $now })
evidence-not-measurable = no se puede medir: { $why }
evidence-several = { $folder } contiene las carpetas de evidencia de una orden de reparación: comprobar cada una (`baywitness check { $folder }/NAME`), o todas con `baywitness audit`; su propio { $index } lo lee `sha512sum -c`
evidence-no-folder = { $folder } no es una carpeta de evidencia: indicar una hecha con `baywitness seal`
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

# Reading and writing.
evidence-cannot =
    { $doing ->
        [read] no se puede leer { $path }: { $why }
        [write] no se puede escribir { $path }: { $why }
        [make] no se puede crear la carpeta { $path }: { $why }
        [rename] no se puede cambiar el nombre a { $path }: { $why }
        [folder] no se puede leer la carpeta { $path }: { $why }
        [move] no se puede mover { $path }: { $why }
        [remove] no se puede eliminar { $path }: { $why }
        [lock] no se puede bloquear { $path }: { $why }
        [protect] no se puede proteger { $path }: { $why }
        [key] no se puede leer la clave { $path }: { $why }
       *[random] no se obtienen números aleatorios para una clave: { $why }
    }
evidence-said = { $why }
evidence-further = { $first }; { $rest }
evidence-line = línea { $line }: { $why }
evidence-unreadable = no se puede leer ({ $why })
evidence-not-utf8 = no está en UTF-8
evidence-size =
    { $what ->
        [manifest] no es un archivo del tamaño de una lista de sumas
        [signature] no es un archivo del tamaño de una firma
        [small] no es un archivo del tamaño que tiene en una carpeta sellada
       *[timestamp] no es un archivo del tamaño de un sello de tiempo
    }

# Names and manifests.
evidence-path =
    { $problem ->
        [empty] una parte del nombre está vacía
        [absolute] la ruta es absoluta
        [relative] una parte de la ruta lleva a otro lugar (. o ..)
        [character] contiene una barra invertida, un carácter de control u otro que no todos los sistemas pueden guardar
        [special] una parte del nombre tiene un significado especial en algunos sistemas (nombre de dispositivo, punto o espacio al final)
       *[long] el nombre es demasiado largo
    }
evidence-manifest-line = no es un SHA-512 en hexadecimal minúsculo, dos espacios y una ruta
evidence-manifest-path = nombra «{ $path }»: { $problem }
evidence-manifest-twice = nombra { $path } por segunda vez
evidence-manifest-order = no está en el orden y la forma en que se escribió

# Keys and signatures.
evidence-key-none = { $path } no es una clave privada de ssh-keygen ({ $why }): indicar una clave ed25519, o su archivo .pub si la guarda un agente
evidence-key-kind = { $path } es una clave del tipo { $kind }: crear una con `ssh-keygen -t ed25519`
evidence-key-locked =
    { $typed ->
        [wrong] la clave { $path } tiene una contraseña, y lo escrito no lo es: escribirla en un terminal, o añadir la clave al agente e indicar su archivo .pub
       *[nothing] la clave { $path } tiene una contraseña: escribirla en un terminal, o añadir la clave al agente e indicar su archivo .pub
    }
evidence-key-agent = ssh-keygen no firma con { $path }: { $why }
evidence-key-not-started = no se puede iniciar ({ $why }); instalar el cliente OpenSSH
evidence-key-refused = { $why }; ¿está la clave añadida al agente (ssh-add)?
evidence-key-answer = su respuesta: { $why }
evidence-key-sign = no se puede firmar: { $why }
evidence-signature-none = no es una firma SSH ({ $why })
evidence-signature-spelling = no está escrita como se escribe una firma
evidence-signature-purpose = es para «{ $namespace }», no para «{ $own }»
evidence-signature-kind = es de una clave del tipo { $kind }, que este programa no comprueba
evidence-signature-bytes = no corresponde a estos bytes
evidence-signers-line = { $file }, línea { $line }: { $problem }; escribirla como el manual de ssh-keygen describe los firmantes permitidos
evidence-signers-unlisted = su clave no está en la lista de firmantes
evidence-signers-objection =
    { $why ->
        [authority] { $who } figura como autoridad de certificación, y este programa no las sigue
        [excluded] { $who } excluye a alguien, y una firma no dice de quién es: anotar los nombres de quienes pueden firmar
        [namespace] { $who } no puede firmar para «{ $namespace }»
        [early] { $who } aún no podía firmar
       *[late] { $who } ya no puede firmar
    }
evidence-signers-no-key = no hay una clave pública después de los nombres y las opciones
evidence-signers-option = la opción «{ $option }» no se conoce
evidence-signers-option-twice = la opción «{ $option }» aparece dos veces
evidence-signers-time = «{ $time }» no es una hora

# Sealing.
evidence-exists =
    { $form ->
        [file] { $path } ya existe: indicar otro archivo, o moverlo antes (la evidencia sellada nunca se modifica)
       *[folder] { $path } ya existe: indicar otra carpeta, o moverla antes (una carpeta sellada nunca se modifica)
    }
evidence-seal-name = el archivo «{ $path }» no puede conservarse con este nombre: { $problem }; cambiarle el nombre
evidence-seal-alike = los archivos { $first } y { $second } solo se diferencian en mayúsculas y minúsculas: cambiar el nombre de uno
evidence-seal-changed = { $path } cambió mientras se sellaba: verificar y sellar de nuevo
evidence-seal-json = no se puede escribir el resultado como JSON: { $why }
evidence-seal-far = el archivo «{ $file }» está demasiadas carpetas por encima del trabajo: acercarlo
evidence-seal-gone = el archivo «{ $file }» se leyó para el trabajo y ya no está
evidence-one-file = { $file } no es una carpeta de evidencia en un solo archivo: { $problem }
evidence-one-file-entry = { $file } no es una carpeta de evidencia en un solo archivo: la entrada «{ $entry }»: { $problem }
evidence-one-file-problem =
    { $problem ->
        [link] es un enlace u otra cosa que no es un archivo
        [no-folder] no está en ninguna carpeta
        [second] está en una segunda carpeta
        [foreign] lo empaquetó otro programa: descomprimirlo y comprobar después la carpeta
        [twice] está dos veces en el archivo
        [empty] está vacío
       *[otherwise] se alteró una entrada o su cabecera, o lo empaquetó otro programa
    }

# Timestamps.
evidence-stamp-wrong = sello de tiempo { $file }: { $why }
evidence-stamps-full = { $folder } ya contiene { $count } sellos de tiempo
evidence-token-form = no es una respuesta ni un sello de tiempo (RFC 3161, DER): { $why }
evidence-token-refused = es un rechazo de la autoridad (estado { $status }): pedirlo de nuevo
evidence-token-other = se hizo para otros bytes: pedir un sello de tiempo de esta carpeta
evidence-token-unsigned = no está firmado como dice ({ $why })
evidence-token =
    { $problem ->
        [no-token] no contiene ningún sello de tiempo
        [no-signed-data] no contiene datos firmados
        [no-timestamp] son datos firmados, pero no un sello de tiempo
        [no-time] no contiene ninguna hora
        [signers] no tiene exactamente un firmante
        [no-certificate] falta el certificado de la autoridad: pedirlo con certReq
        [digest] usa una función resumen en la que este programa no confía
        [version] es de una versión desconocida
        [extensions] contiene extensiones que este programa no conoce
        [bad-time] contiene una hora que no lo es
        [no-attributes] no firma atributos
        [no-kind] no firma lo que es
        [other-kind] firma otro tipo de contenido
        [no-digest] no firma su contenido
       *[unnamed-signer] no nombra el certificado que lo firmó (RFC 5816)
    }
evidence-token-altered = se alteró su hora o su resumen
evidence-token-method = este programa no conoce el método: { $method }
evidence-token-key = la firma no es de la clave de su certificado
evidence-certificate-unreadable = su certificado no se puede leer ({ $why })
evidence-authorities = { $file }: { $why }; indicar el certificado raíz de la autoridad en PEM
evidence-authorities-no-pem = no es un archivo PEM ({ $why })
evidence-authorities-empty = no contiene ningún certificado
evidence-authorities-bad = contiene un certificado incorrecto ({ $why })
evidence-authority-elsewhere = su certificado no lleva a ninguna de las autoridades indicadas (--timestamp-ca)
evidence-authority-early = su hora es anterior a 1970
evidence-authority-unlisted = no indicada: { $who }; { $why }
evidence-authority-wrong =
    { $problem ->
        [usage] su certificado no sirve solo para sellos de tiempo, marcado como crítico (RFC 3161, 2.3)
        [early] su certificado aún no valía cuando se hizo
       *[late] su certificado había terminado cuando se hizo
    }
evidence-token-turn = no es un sello de tiempo que esté en su turno: falta uno anterior, de modo que aquí no cubre nada
evidence-unstamped = ninguno, aunque se indicaron autoridades (--timestamp-ca); no se puede saber si alguna vez lo hubo
evidence-stamp-time =
    { $problem ->
        [ahead] dice { $when }, más de cinco minutos después de la hora de este equipo
       *[falls] dice { $when }, antes del sello de tiempo que cubre
    }
evidence-stamped-before =
    { $what ->
        [calibration] dice { $when }: sellado antes de la calibración, según el trabajo
       *[photo] dice { $when }: sellado antes de que se tomaran sus fotos, según { $what }
    }

# PDF reports that are signed.
evidence-pdf-field = Firma de este informe
evidence-pdf-problem =
    { $problem ->
        [no-key] no contiene ninguna clave privada en PEM: indicar el archivo de la clave o crear una con `baywitness certificate`
        [locked] su clave privada está cifrada: escribirla sin contraseña en un archivo que solo usted pueda leer (`openssl pkey -in KEY -out FILE`)
        [key-kind] su clave es de otro tipo: indicar una para ECDSA en P-256 o P-384, o para RSA de 2048 a 4096 bits
        [no-certificate] no contiene ningún certificado en PEM, o demasiados: indicar el archivo del certificado con --certificate
        [unreadable] contiene un certificado que no se puede leer: pedirlo a su emisor en PEM
        [other-key] ninguno de sus certificados corresponde a la clave privada: indicar el que se emitió para esta clave
        [usage] su certificado es para otros usos que las firmas: pedir uno con el uso digitalSignature o nonRepudiation
        [early] su certificado aún no vale: ajustar el reloj de este equipo o esperar
        [late] su certificado ha terminado: obtener uno nuevo o crear uno con `baywitness certificate`
        [no-pdf] no es un informe PDF de este programa
        [signed-already] ya está firmado: hacer de nuevo el informe y firmar ese
        [unsigned] es un PDF sin firma: escribirlo con --sign-pdf
        [range] su firma no cubre todo el archivo: se añadió o se cortó algo después de firmarlo
        [no-signature] su firma no es una que este programa lea (PAdES, un firmante)
        [stamped-already] ya tiene un sello de tiempo
        [no-room] el sello de tiempo es mayor que el sitio que se dejó para él: pedirlo a una autoridad de respuestas más cortas
        [name] el nombre está vacío, pasa de 64 caracteres o tiene caracteres de control o que invierten el sentido de la escritura
       *[years] un certificado vale de 1 a 10 años
    }
evidence-pdf-by = de { $who }, sobre todo el archivo; reloj del firmante: { $when }
evidence-pdf-listed = { $who }, cuyo certificado se indicó
evidence-pdf-unlisted = su certificado no está entre los indicados; su SHA-256 es { $print }
evidence-pdf-no-certificates = no se indicaron certificados (--certificates)
evidence-pdf-stamped = firmado no después de { $when }, según { $authority }
evidence-pdf-earlier = una anterior, de { $who }, sobre los primeros { $count } bytes del archivo; lo que sigue se añadió después, y ese firmante no lo vio
evidence-pdf-earlier-false = una firma anterior, de { $who }, no es válida ({ $why }); la última es de { $last }
evidence-pdf-uncounted =
    { $problem ->
        [usage] { $who }, cuyo certificado se indicó pero no sirve para firmar
        [early] { $who }, cuyo certificado se indicó pero aún no valía al firmar ({ $when })
       *[late] { $who }, cuyo certificado se indicó pero había terminado al firmar ({ $when })
    }
evidence-pdf-claim =
    { $problem ->
        [ahead] el reloj del firmante decía { $when }, después de la hora de este equipo: uno de los dos está mal
       *[stamped] el reloj del firmante decía { $when }, pero la firma se selló antes: ese reloj estaba mal
    }
evidence-reports-same = { $count } archivos, cada uno lo que dan el resultado y las fotos sellados
evidence-reports-other = { $files }: no es lo que dan { $result } y las fotos selladas, sino de otro resultado o alterado
evidence-reports-by-other = hechos por la versión { $recorded }: la versión { $now } no puede hacerlos de nuevo, y así no se puede decir si son de este resultado
evidence-report-unsigned = el informe (PDF) no lleva firma
evidence-report-state =
    { $state ->
        [holds] informe firmado por { $who }, de quien aquí nadie responde (--certificates)
        [listed] informe firmado por { $who }, cuyo certificado se indicó
        [unlisted] informe firmado por { $who }, cuyo certificado no está entre los indicados, o no valía al firmar
        [broken] la firma del informe no es válida
       *[none] informe sin firmar
    }
evidence-pdf-not-signed = Este informe no está firmado: se hizo de nuevo sin la clave (--sign-pdf). El que sustituye, firmado por { $who }, queda a su lado como { $file }.
evidence-pdf-signature = su firma no es válida: { $why }
evidence-pdf-form = su firma no se puede leer ni escribir ({ $why })

# The log of attempts: what is wrong with its files.
evidence-log-none = { $folder } no contiene ningún registro de intentos: crear uno con `baywitness log new { $folder } --origin NAME`, o indicar otra carpeta
evidence-log-name = «{ $name }» no es nombre de un registro ni de un testigo: escribir uno como shop.example/attempts, sin espacios ni signos más
evidence-verifier =
    { $problem ->
        [parts] «{ $text }» no es una clave de verificación: no tiene nombre, identificador y clave entre signos más
        [base64] «{ $text }» no es una clave de verificación: su clave no está en base64
        [kind] «{ $text }» no es una clave de verificación: este programa lee claves Ed25519 de registros (1) y testigos (4)
        [key] «{ $text }» no es una clave de verificación: su clave no es Ed25519
       *[id] «{ $text }» no es una clave de verificación: su identificador no corresponde a su nombre y clave
    }
evidence-verifier-line = { $file }, línea { $line }: { $why }
evidence-note =
    { $problem ->
        [characters] no es una nota firmada: tiene caracteres de control o termina a mitad de línea
        [empty-line] no es una nota firmada: no hay una línea vacía antes de las firmas
       *[signatures] no es una nota firmada: una línea de las firmas no lo es
    }
evidence-note-count = tiene { $count } firmas, no de 1 a { $most }
evidence-checkpoint =
    { $problem ->
        [lines] no es un punto de control: no tiene origen, tamaño y raíz
        [numbers] no es un punto de control: su segunda línea no es un tamaño o la tercera no es una raíz
       *[spelling] no es un punto de control: no está escrito como uno
    }
evidence-checkpoint-false = tiene una firma falsa de { $key }
evidence-checkpoint-unsigned = no está firmado con la clave de { $log }
evidence-proof =
    { $problem ->
        [head] no es una prueba: falta la línea vacía antes de un punto de control
        [first-line] no es una prueba: su primera línea no es { $first_line }
        [entry] no es una prueba de un intento: su segunda línea no contiene la entrada
        [index] no es una prueba: su tercera línea no tiene índice
        [hash] no es una prueba: una línea de su ruta no es un resumen
        [spelling] no está escrita como se escribe una prueba
       *[path] no muestra que su entrada esté en el registro: la ruta no lleva a la raíz
    }
evidence-proof-entry = contiene una entrada que no lo es: { $why }
evidence-attempt-photos = { $count } fotos son más de las que admite una entrada: dividir el trabajo
evidence-attempt-form = no es { $format } ({ $why })
evidence-attempt-spelling = no está escrita como { $format }
evidence-attempt-other = es de otro intento; difieren: { $parts }
evidence-attempt-part =
    { $part ->
        [photos] fotos
        [job] job.toml
        [setup] hoja de montaje
        [result] resultado
       *[verdict] dictamen
    }
evidence-no-result = no tiene ningún resultado al lado ({ $why })
evidence-bad-result = no tiene al lado ningún resultado legible ({ $why })
evidence-log-does-not-fit = no concuerda con el registro actual: { $why }
evidence-tile =
    { $problem ->
        [none] no tiene esa tesela
        [subtree] se le pide un subárbol que su árbol no tiene
       *[altered] se alteró
    }
evidence-tile-hashes = no contiene { $count } resúmenes
evidence-tile-entries = no contiene { $count } entradas, cada una tras su longitud
evidence-tile-entry = su entrada número { $entry } no es la del resumen de tile/0
evidence-tiles-level = tiene en el nivel { $level } resúmenes que no son de las teselas inferiores
evidence-tiles-root = contiene teselas que no dan la raíz de su punto de control de { $size } entradas: se alteraron, o son de otro estado del registro
evidence-log-no-such-entry = tiene { $size } entradas, ninguna con el número { $entry }
evidence-log-other = es el registro { $log }; { $file } es de { $other }
evidence-log-truncated = tiene { $size } entradas y { $file } tiene { $earlier }: el registro se truncó, o esta es una copia antigua
evidence-log-forked = este y { $file } son dos puntos de control de { $size } entradas con raíces distintas: el registro se bifurcó
evidence-log-rewritten = no empieza con las { $size } entradas de { $file }: el registro se reescribió
evidence-log-key-not-given = es el registro { $log }, cuya clave de verificación no se indicó
evidence-witness-own-key = esta clave es la del propio registro { $log }, que no puede dar fe de sí mismo: indicar una clave propia del testigo
evidence-witness-of-another = este archivo recuerda el registro { $other }, no { $log }: indicar con --seen un archivo propio para cada registro
evidence-log-key-file =
    { $problem ->
        [salt] no es un secreto de 64 dígitos hexadecimales
        [no-key] no es una clave privada de ssh-keygen
        [kind] no es una clave ed25519 sin contraseña
       *[other-key] no está firmado con la clave del propio registro
    }
evidence-log-not-made = no se crea ningún registro: { $why }
evidence-log-exists = ya existe: un registro se crea una vez, y nunca de nuevo con su nombre
evidence-log-no-key = no se crea ninguna clave ({ $why })
evidence-log-refuses = no admite el trabajo: { $why }
evidence-log-went-back = no es aquello para lo que se firmó { $file } ({ $why }): volvió a una copia anterior, o se alteró. Recuperar la copia más reciente; continuar bifurcaría el registro
evidence-log-published = se publica una adición que se interrumpió después de firmarse: { $size } entradas
evidence-log-removed =
    { $count ->
        [one] se elimina un archivo de una adición interrumpida que nunca se confirmó
       *[other] se eliminan { $count } archivos de una adición interrumpida que nunca se confirmó
    }

# A job gathered, measured again, masked, audited.
evidence-altered = { $path } se alteró: { $why }
evidence-altered-item = { $item }: { $found }
evidence-otherwise = { $path }: medidas de nuevo, las fotos dicen otra cosa: { $differences }
evidence-judge-gone = { $path } estaba en la auditoría anterior y ya no está, ni su trabajo está en otro lugar del archivo; si se retiró con razón, auditar en otra carpeta (--out)
evidence-judge-fault = el programa falló con este trabajo: comunicarlo, con el trabajo si es posible
evidence-unpack-room = no se puede crear una carpeta para desempaquetar { $path }: { $why }
evidence-holds-no-job = { $folder } no contiene ningún trabajo
evidence-ledger-busy = otra auditoría está escribiendo en { $folder }: esperar a que termine, o indicar otra carpeta
evidence-ledger-no-message = su resultado no se puede leer
evidence-redact-altered = { $folder } no está intacta: comprobarla primero
evidence-redact-otherwise = { $folder } no se copia: medidas de nuevo, sus fotos dicen otra cosa ({ $why }); comprobarla
evidence-redact-copy = { $folder } ya es una copia: indicar la carpeta sellada
evidence-redact-write = no se puede escribir la copia enmascarada de { $photo }: { $why }
evidence-remeasure-result = el resultado registrado { $file } no se puede leer: { $why }
evidence-remeasure-room = no hay sitio para medir: { $why }; hacer sitio para archivos temporales y comprobar de nuevo
evidence-remeasure-no-job = la carpeta no contiene ningún trabajo
evidence-remeasure-job = el trabajo de la carpeta no se puede medir: { $why }
evidence-difference = { $what }: registrado { $recorded }, ahora { $now }
evidence-difference-credentials = credenciales de contenido de { $photo }
evidence-credentials-gone = registradas, pero ninguna foto las lleva
evidence-credentials-as-recorded = como se registraron: { $counts }; este programa se construyó sin ellas y no las validó de nuevo
evidence-difference-place = { $place } en { $file }
evidence-written-otherwise = { $file } no está como lo escribe el programa: dice algo dos veces, o algo que ningún resultado tiene
evidence-more-files = ni el trabajo ni su resultado tienen { $files }
evidence-label-other = { $file } dice «{ $label }: { $value }», lo que su resultado no dice
evidence-label-count = { $file } dice «{ $label }: { $value }», y se cuenta { $counted }
evidence-found-shared = entre los modelos, con sus propios bytes
evidence-found-own = en la carpeta del propio trabajo
evidence-labels-lack = en { $file } faltan datos que el sellado escribe
evidence-no-reports = no hay ninguno en la carpeta: el sellado los pone allí
evidence-unread-result = no se puede leer como resultado
evidence-difference-what =
    { $what ->
        [job] trabajo
        [verdict] dictamen
        [inputs] archivos leídos
        [findings] hallazgos
        [checks] comprobaciones
        [reason] motivo
        [budget] balance de incertidumbre
        [readings] lecturas
        [photos] fotos
        [attachments] adjuntos
       *[quantities] magnitudes
    }
evidence-nothing = nada
