# Lo que dicen los comandos en la terminal, cuando no corresponde a otro archivo.

## Errores, notas, archivos

cli-error = error: { $message }
cli-note = nota: { $words }
cli-cannot-read = no se puede leer { $path }: { $why }; comprobar el nombre y los permisos
cli-not-over-a-photo = { $path } es una foto y se queda como está: nombrar otro archivo para escribir. Una opción que escribe toma lo que la sigue; las fotos van delante de ella
cli-not-over-no-json = { $path } ya existe, no es un archivo JSON y se queda como está: nombrar otro archivo detrás de --json, o - para la salida estándar
cli-not-over-an-input = { $path } es un archivo del trabajo { $job } y se queda como está: nombrar otro archivo detrás de --json
cli-no-utf8 = { $path } no es un texto en UTF-8: guardarlo como UTF-8 (una hoja de cálculo dice «CSV UTF-8»)
cli-cannot-write = no se puede escribir { $path }: { $why }; comprobar los permisos y el espacio libre de la carpeta, o nombrar otra
cli-cannot-make-folder = no se puede crear la carpeta { $path }: { $why }; comprobar los permisos de la carpeta superior, o nombrar otra
cli-cannot-unpack = no se puede crear una carpeta para desempaquetar: { $why }
cli-no-stdout = no se puede escribir en la salida estándar: { $why }
cli-no-threads = no se pueden iniciar { $count } hilos: { $why }
cli-no-date = «{ $text }» no es una fecha: escribirla como 2027-05-01
cli-no-area = «{ $text }» no es un área: escribir izquierda, arriba, derecha, abajo en tanto por ciento, como 10,20,60,90
cli-no-schema = «{ $format }» no tiene esquema: indicar uno de { $known }
cli-no-evidence = { $folder } no es una carpeta de evidencia: indicar una hecha por `baywitness seal`
cli-no-carrier = el juego { $kit } no tiene portamarcadores { $name }; tiene: { $known }
cli-no-photo = la carpeta { $folder } no tiene ninguna foto
cli-no-photo-but-below = la carpeta { $folder } no tiene ninguna foto: nombrar su carpeta { $photos }
cli-job-twice = { $job } y { $again } son el mismo trabajo: nombrar cada trabajo una vez
cli-jobs =
    { $count ->
        [one] un trabajo
       *[other] { $count } trabajos
    }
cli-verdict =
    { $verdict ->
        [within] dentro de tolerancia
        [outside] fuera de tolerancia
        [not_proven] no demostrado
       *[retake] repetir las fotos
    }
cli-passphrase = Frase de contraseña de { $key }:

## `baywitness` solo

cli-next = Qué se puede hacer ahora:
cli-next-more = ... y { $count } más. Todos a la vez: baywitness audit . --out audit
cli-next-all-commands = Todos los comandos: baywitness --help
cli-next-sealed = { $folder }: sellado
cli-next-not-ready = { $folder }: aún no está listo
cli-next-photos =
    { $count ->
        [one] { $folder }: una foto
       *[other] { $folder }: { $count } fotos
    }
cli-next-one-more = hacer al menos una más, desde el otro lado en diagonal por delante
cli-next-answer = responder en [prerequisites] de job.toml: { $questions }

## new: el archivo del trabajo

cli-new-made = Rellenar { $folder }/job.toml; las fotos van en { $folder }/photos. Después: baywitness verify { $folder }
cli-new-is-there = { $folder } ya existe: elegir otro nombre, no se sobrescribe nada
cli-new-no-number = { $folder } no da número al trabajo: terminar con uno, como jobs/D-0042
cli-new-sheet = hoja de montaje { $sheet }: { $key } { $problem }; { $remedy }
cli-new-source = Fuente: { $source }
cli-new-camera = si se omite, eligen los datos de cada foto
cli-new-series = orden de reparación: la comparten sus intentos y sensores
cli-new-wheelbase = se compara con las fotos; se usa solo donde no muestran placas delanteras
cli-new-nose = se compara con las fotos; se usa solo donde no muestran la marca frontal
cli-new-hub = se compara con las fotos; se usa solo donde no muestran ninguna lámina de suelo
cli-new-rear-track = de buje a buje: dice si las placas traseras están en sus bujes
cli-new-front-track = de buje a buje: dice si las placas delanteras están en sus bujes
cli-new-required = { $question } (obligatorio)
cli-new-reading = leído con láser, cinta, nivel o banco de alineación
cli-new-steps = Esta hoja tiene los pasos { $steps }: decir de cada foto cuál muestra.

## Fotos que se añaden a un trabajo

cli-move-step-lacks = la hoja de montaje «{ $sheet }» tiene pasos: indicar cuál muestra la foto: { $steps }
cli-move-no-steps = la hoja de montaje «{ $sheet }» no tiene pasos: omitir --step "{ $step }"
cli-move-no-such-step = «{ $step }» no es un paso de la hoja de montaje «{ $sheet }»: indicar uno de ellos: { $steps }
cli-move-too-often = el soporte de { $job } ya se movió { $most } veces: empezar un trabajo nuevo
cli-move-is-there = { $photo } ya es una foto de { $job }: indicar una nueva; si el soporte se movió antes de ella, escribir `after_move = 1` en su [[photo]] de job.toml
cli-move-no-name = { $file } no tiene un nombre que pueda estar en un archivo de trabajo: cambiarlo
cli-move-name-taken = en { $folder } hay otras fotos llamadas { $name }: cambiar el nombre de la nueva

## watch --tripod

cli-tripod-no-folder = { $folder } no es una carpeta: indicar aquella a la que llegan las fotos de la cámara
cli-tripod-too-few =
    { $count ->
        [0] { $job } no tiene ninguna primera foto: hacer dos desde lugares distintos y verificarlas; después, colocar el trípode
        [one] { $job } solo tiene una primera foto: hacer otra desde otro lugar y verificarlas; después, colocar el trípode
       *[other] { $job } solo tiene { $count } primeras fotos: hacer más desde otros lugares y verificarlas; después, colocar el trípode
    }
cli-tripod-left-out =
    { $count ->
        [one] Ya hay una imagen en { $folder }: no se tiene en cuenta.
       *[other] Ya hay { $count } imágenes en { $folder }: no se tienen en cuenta.
    }
cli-tripod-watching = Vigilando { $folder } para { $job }; Ctrl-C para terminar.
cli-tripod-line = { $photo }: { $what }
cli-tripod-kept = { $seen }: { $kept }
cli-tripod-verdict = Tras el movimiento { $move }: { $verdict }. { $reason }
cli-tripod-do-first = Primero:

## detect, gauge, stage, due

cli-detect-photo =
    { $count ->
        [one] { $photo }: un marcador, borrosidad { $blur } px, desplazamiento de bordes { $offset } px (corregido)
       *[other] { $photo }: { $count } marcadores, borrosidad { $blur } px, desplazamiento de bordes { $offset } px (corregido)
    }
cli-detect-marker =
    { $covered ->
        [yes] { $side } px, esquinas { $corners } ± { $u } px, una esquina está tapada
       *[no] { $side } px, esquinas { $corners } ± { $u } px
    }
cli-detect-corner = ({ $u }; { $v })
cli-gauge-line = { $file }, línea { $line }: { $why }
cli-gauge-head = el encabezado debe nombrar las columnas operator, part y value
cli-gauge-reading = requiere un operador (operator), una pieza (part) y un número como valor (value)
cli-gauge-cells = tiene { $found } celdas y el encabezado { $wanted }: separar con «{ $separator }» como el encabezado, con punto decimal si es una coma
cli-gauge-range = Media y rango (AIAG MSA)
cli-gauge-anova = Análisis de varianza (AIAG MSA)
cli-gauge-deviations = { $method }: repetibilidad { $repeatability }, reproducibilidad { $reproducibility }, sistema de medida { $gauge }, piezas { $parts } (desviaciones típicas)
cli-gauge-share = el sistema de medida es el { $percent } % de la dispersión total; categorías distinguibles: { $categories } (bastan cinco)
cli-gauge-untold = las lecturas repetidas y las de varios operadores no difieren: no se puede decir la parte del sistema de medida ni cuántas categorías distingue
cli-staged =
    { $count ->
        [one] { $folder }: una foto y truth.json
       *[other] { $folder }: { $count } fotos y truth.json
    }
cli-due-may-go = conservar hasta el { $day }: se puede borrar
cli-due-stamp = el sello de tiempo vale hasta el { $day }: sellar de nuevo
cli-due-sum = vencidos el { $on }: { $due }, todavía no: { $kept }; no se borró nada

## seating

cli-seating-times =
    { $count ->
        [one] { $plate }: fijada una vez; desviaciones respecto a la media a lo largo de sus propios ejes y alrededor de ellos
       *[other] { $plate }: fijada { $count } veces; desviaciones respecto a la media a lo largo de sus propios ejes y alrededor de ellos
    }
cli-seating-scatter = La medición por sí sola se dispersa { $mm } mm y { $degrees } grados (descontado)
cli-seating-keys = { $keys } (1 sigma, ampliado para { $freedom } grados de libertad)
cli-seating-run-out = Rueda girada { $turn }°: eje de giro desviado { $camber }° alrededor de x (caída) y { $heading }° alrededor de z (dirección) del de la placa.
cli-seating-beside = El eje de giro pasa { $ahead } mm por delante y { $above } mm por encima del punto de buje de la placa.
cli-seating-rolled = La rueda siguió rodando, así que no se dice nada del punto de buje.
cli-seating-head =
    { $count ->
        [one] Asiento de { $plate } a partir de una fijación.
       *[other] Asiento de { $plate } a partir de { $count } fijaciones.
    }
cli-seating-no-target = el juego no tiene soporte de diana: indicar un portamarcadores con --against
cli-seating-no-result = { $path } no es ni una carpeta de fotos ni el resultado de un trabajo ({ $why }): escribirlo con verify --json

## seal, stamp, redact

cli-sealed-one = Sellado el trabajo { $job }, dictamen: { $verdict }, carpeta { $folder }, archivos: { $files }.
cli-sealed-signed = Firmado para «{ $namespace }» sobre { $file }.
cli-sealed-unsigned = Sin firma: muestra cambios accidentales, no intencionados. Sellar con --key para firmar.
cli-sealed-send = Enviar { $file } a una autoridad de sellado de tiempo y después: baywitness stamp { $folder } --answer FILE
cli-sealed-check = Se puede comprobar en cualquier momento: baywitness check { $folder }
cli-sealed-several =
    { $count ->
        [one] Sellado un trabajo de la orden de reparación { $order }, en su propia carpeta de evidencia:
       *[other] Sellados { $count } trabajos de la orden de reparación { $order }, cada uno en su propia carpeta de evidencia:
    }
cli-sealed-index = El índice { $file } los une. Cada carpeta se puede comprobar en cualquier momento: baywitness check FOLDER
cli-seal-several-folders = varios trabajos se convierten en carpetas, cada una con su sello de tiempo: sellarlos en una carpeta sin --timestamp y después `baywitness stamp` cada una, o sellarlos uno por uno
cli-seal-no-series = los trabajos se sellan juntos solo si todos indican la misma orden de reparación (`series` en job.toml): indicarla o sellarlos uno por uno
cli-seal-no-name = { $path } no es un nombre
cli-stamp-request = Escrito: { $file }. Enviarlo a una autoridad de sellado de tiempo y después: baywitness stamp { $folder } --answer FILE
cli-stamp-no-answer = indicar la respuesta con --answer
cli-stamped = Sello de tiempo puesto en { $folder }: hora según { $authority }: { $when }. Sellar de nuevo antes del { $ends }, cuando termina el certificado de la autoridad.
cli-stamp-sealed = { $file } está en una carpeta sellada, que nunca se cambia: sellar la carpeta o un informe que esté fuera
cli-stamped-pdf = Sello de tiempo puesto en { $file }: hora según { $authority }: { $when }; el certificado de la autoridad termina el { $ends }.
cli-pdf-large = { $file } es demasiado grande para un informe
cli-certificate-made = Hecho { $file }, que nadie más puede leer, y { $public } para entregar; el certificado termina el { $ends }.
cli-certificate-next = Firmar informes con él: baywitness verify JOB --report DIR --sign-pdf { $file }
cli-certificate-ending = { $file } tiene la extensión del certificado que se escribe a su lado: usar otra, como .pem
cli-redacted = Hecho { $folder }: fotos enmascaradas, informes y anexos omitidos, los demás archivos como se sellaron.
cli-redacted-credentials =
    { $count ->
        [one] Las credenciales de contenido de { $count } foto no están en la copia: valen para el archivo entero, que está enmascarado. La carpeta sellada las conserva.
       *[other] Las credenciales de contenido de { $count } fotos no están en la copia: valen para los archivos enteros, que están enmascarados. La carpeta sellada las conserva.
    }
cli-redacted-check = Quien la reciba la comprueba con: baywitness check { $folder }

## El registro de intentos

cli-logged-one = Registrado como entrada { $entry } de { $log }.
cli-logged-several = Registrado como entradas { $first } a { $last } de { $log }.
cli-log-made = Creado el registro { $log } en { $folder }. Publicar esa carpeta y dar esta línea a quien lo compruebe:
cli-log-private = No publicar nunca { $folder }: contiene la clave del registro. A un auditor se le puede dar order-salt de ahí, para nombrar las órdenes de reparación de intentos que faltan.
cli-log-photos =
    { $photos ->
        [one] una foto
       *[other] { $photos } fotos
    }
cli-log-attempt =
    { $photos ->
        [one] una foto, intento { $attempt }
       *[other] { $photos } fotos, intento { $attempt }
    }
cli-log-size =
    { $count ->
        [one] una entrada en { $log }
       *[other] { $count } entradas en { $log }
    }
cli-log-holds =
    { $count ->
        [one] { $log }: una entrada, conforme a su hash, y su hash conforme a la raíz del punto de control
       *[other] { $log }: { $count } entradas, cada una conforme a su hash, cada hash conforme a la raíz del punto de control
    }
cli-log-witnessed =
    { $count ->
        [one] { $witness } vio una entrada, { $when }
       *[other] { $witness } vio { $count } entradas, { $when }
    }
cli-log-continues = Empieza con todos los puntos de control indicados.
cli-log-disordered =
    { $count ->
        [one] Una entrada tiene una hora que no encaja con la de sus vecinas (`baywitness audit --log` la nombra).
       *[other] { $count } entradas tienen horas que no encajan con las de sus vecinas (`baywitness audit --log` las nombra).
    }
cli-log-odd =
    { $count ->
        [one] Una entrada no es de este programa.
       *[other] { $count } entradas no son de este programa.
    }
cli-log-no-key = No se sabe si el registro lo firmó: no se indicó su clave de verificación (--keys).
cli-log-agent-key = { $key } nombra una clave que guarda un agente, que no firma notas: indicar la clave privada
cli-log-cosigned-first =
    { $count ->
        [one] Refrendado { $log } en una entrada, visto por primera vez: { $file }
       *[other] Refrendado { $log } en { $count } entradas, visto por primera vez: { $file }
    }
cli-log-cosigned =
    { $count ->
        [one] Refrendado { $log } en una entrada, que continúa lo visto antes ({ $seen }): { $file }
       *[other] Refrendado { $log } en { $count } entradas, que continúan las { $seen } vistas antes: { $file }
    }
cli-log-witness-key = La clave del testigo, para dar a quien compruebe el registro:

## serve

cli-serve-alone = La página está en { $link } solo para esta máquina. Ctrl-C la termina.
cli-serve-at = La página está en { $link }
cli-serve-code = Código para dispositivos: { $code }. Quien lo tenga puede ver y cambiar todos los trabajos.
cli-serve-open = La red puede leerlo todo: cada foto, cada trabajo y la clave de cada dispositivo. Cifrar con --tls-own o --tls-cert, o usar solo la red propia del taller, que debe estar cifrada.
cli-serve-encrypted = La conexión está cifrada.
cli-serve-end = Ctrl-C la termina.
cli-serve-certificate = Certificado, SHA-256: { $digest }
cli-serve-root = Raíz en la que deben confiar los teléfonos, SHA-256: { $digest }

## plan, recheck, sheet, trends

cli-plan-numbers = dar { $count } números en mm, como 7200,1700,1500 (ningún puesto supera 50000)
cli-plan-length = dar una longitud de 500 a 50000 mm
cli-plan-earlier = no se pudo medir ninguna foto de { $job }: indicar un trabajo anterior que `baywitness verify` mida
cli-recheck-no-log = { $file } no es un registro de comprobaciones: su primera línea no es «{ $head }»
cli-recheck-no-check = { $file }, línea { $line }: no es una comprobación
cli-sheet-measured = a la derecha y hacia arriba como dos números con punto decimal y una coma entre ellos, como 159.6,160.1
cli-sheet-corrected = { $file } ya contiene tamaños como se imprimieron, que se corregirían dos veces: corregir el archivo que se imprimió (como bay-a4). Si se imprimió este mismo archivo, borrar antes su línea «{ $line }»
cli-no-people-key = { $path } no es una clave de 64 cifras hexadecimales: borrarla para tener seudónimos nuevos, o restaurarla

## audit, camera

cli-audit-nothing = no se encontró ningún trabajo ni carpeta de evidencia: indicar una carpeta que los contenga
cli-audit-no-report = no se puede escribir el informe de la auditoría: { $why }
cli-no-stdin = no se puede leer la entrada estándar: { $why }
cli-log-put-right = { $log }: { $what }.
cli-camera-no-report = un informe muestra fotos de un tablero; con un juego de marcadores, omitir --report

## Comentarios al principio de los archivos que escribe el programa

cli-file-not-fit = NO APTO PARA EL USO: { $why }
cli-file-surveyed = Medido con { $photos } fotos. Cambiar este archivo a mano invalida su disposición: medir de nuevo.
cli-file-length = Longitud medida { $length }
cli-file-printed = Tamaños como se imprimieron en papel { $paper }: las reglas de control miden { $right } mm hacia la derecha y { $up } mm hacia arriba.
