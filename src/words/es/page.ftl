page-skip = Ir al contenido
page-all-jobs = Todos los trabajos

page-jobs-title = Trabajos
page-begin-job = Nuevo trabajo
page-search-jobs = Buscar por número, vehículo, VIN, técnico u hoja
page-search = Buscar
page-no-jobs = Aún no hay ningún trabajo.
page-no-match = Ningún trabajo contiene todas estas palabras.
page-earlier = Trabajos anteriores
page-later = Trabajos posteriores
page-open-state = abierto
page-closed-state = cerrado y sellado
page-unreadable-job = No se puede leer el archivo de este trabajo
page-attempt-n = intento { $n }
page-not-measured = por medir

page-choose-sheet = ¿Qué hoja de montaje?
page-search-sheets = Parte del nombre de la hoja
page-used-lately = Usadas recientemente
page-every-sheet = Todas las hojas
page-no-sheet = Ninguna hoja de montaje contiene todas estas palabras.
page-new-sheet = Introducir una hoja de montaje nueva
page-new-sheet-why = Cada cifra se introduce dos veces, leyéndola cada vez de la fuente: con una cifra errónea se daría por bueno un montaje incorrecto. Dejar vacía la magnitud que la fuente no exija.
page-sheet-name = Nombre corto
page-sheet-name-hint = Minúsculas, cifras y guiones.
page-sheet-title = Qué se calibra y con qué
page-sheet-source = Fuente
page-sheet-source-hint = De quién son estas cifras: documento del fabricante y su fecha. Aparece en cada informe.
page-reference-line = Línea de referencia
page-choose = elegir
page-line-thrust = línea de empuje
page-line-centre = eje central
page-line-rear-axle = perpendicular al eje trasero
page-distance-from = Desde
page-wanted-value = Valor exigido
page-tolerance-value = Tolerancia, más y menos
page-once-more = otra vez
page-keep-sheet = Guardar la hoja
page-source-says = Fuente:

page-new-job = Nuevo trabajo
page-other-sheet = Otra hoja
page-vehicle = Vehículo
page-vehicle-description = Descripción del vehículo
page-vin = VIN (17 caracteres)
page-vin-ok = El dígito de control del VIN coincide.
page-vin-doubt = El noveno carácter no es el dígito de control que llevan los números norteamericanos. Comparar el número otra vez con el vehículo; en otros mercados no hace falta dígito de control.
page-repair-order = Orden de reparación
page-kit = Juego de marcadores
page-camera = Cámara
page-camera-by-photo = la que indique cada foto
page-no-kit = Ningún juego de marcadores lleva lo que comprueba esta hoja. Poner el archivo del juego donde lo busca el programa.
page-technician = Técnico
page-bay = Puesto de calibración
page-optional = opcional
page-start-job = Empezar este trabajo

page-step-prepare = Preparar
page-step-photos = Fotos
page-step-finish = Cierre
page-steps-of-job = Pasos de este trabajo
page-attempts = Intentos
page-this-attempt = este

page-before-photos = Antes de las fotos
page-answered = { $answered } de { $all } con respuesta
page-yes = Sí
page-no = No
page-unanswered = Sin respuesta
page-required = obligatorio
page-sizes = Medidas del vehículo
page-sizes-why = Se comparan con las fotos, y se usan solas donde estas no las muestran. Anchos de vía medidos de buje a buje.
page-wheelbase = Distancia entre ejes, mm
page-nose-from-rear-axle = Del eje trasero al frontal del vehículo, mm
page-floor-below-hub = Centro de la rueda sobre el suelo, mm
page-rear-track = Ancho de vía trasero, mm
page-front-track = Ancho de vía delantero, mm
# Behind a name, what it is of: a button and its photo, a kind and its file.
page-name-of = { $name }: { $of }
# The same where both are drawn differently.
page-colon = :
page-readings = Lecturas
page-readings-why = Láser, cinta métrica, nivel de burbuja: se comparan con las fotos, nunca se mezclan con ellas.
page-instrument = Instrumento
page-laser = láser
page-tape = cinta métrica
page-level = nivel de burbuja
page-alignment = alineador de ejes
page-alignment-sheet = Informe de alineación
page-alignment-sheet-why = El ángulo de empuje, o la convergencia de ambas ruedas traseras, de la que se obtiene: grados y minutos sin signo, y el lado.
page-thrust-angle = Ángulo de empuje
page-rear-toe-left = Convergencia trasera, rueda izquierda
page-rear-toe-right = Convergencia trasera, rueda derecha
page-points-left = hacia la izquierda
page-points-right = hacia la derecha
page-toe-in = convergente
page-toe-out = divergente
page-choose-side = ¿lado?
page-save = Guardar
page-saved = Guardado.
page-to-photos = Continuar con las fotos

page-from-nose = frontal del vehículo
page-from-front-axle = eje delantero
page-from-rear-axle = eje trasero

page-wanted = exigido { $limits }

page-card-title = Tarjeta de un solo uso
page-card-why = Un código que solo tiene este trabajo y que se ve en las fotos demuestra que se hicieron para él. Mostrarlo en una segunda pantalla junto al soporte o formarlo con fichas que lleven estos números.
page-card-make = Usar una tarjeta
page-card-show = Mostrar la tarjeta
page-card-code = Código de este trabajo: { $code }
page-card-marker = Marcador { $id }
page-back-to-photos = Volver a las fotos

page-where-to-stand = Desde dónde fotografiar
page-place-sees = En la imagen: { $names }
page-no-place = Ningún lugar de este puesto muestra suficientes marcadores.
page-drawing-from-above = El puesto de calibración desde arriba; el vehículo avanza hacia arriba.
page-in-every-step = Desde cada lugar en cada posición: { $steps }.
page-position = Posición del soporte
page-plan-failed = Para este juego de marcadores no se puede decir desde dónde fotografiar.

page-take-photo = Hacer una foto
page-live-photo = Foto en esta página
page-live-take = Disparar
page-live-close = Cerrar la cámara
page-live-wait = Buscando marcadores …
page-live-seen = Marcadores encontrados: { $count } ({ $names })
page-live-none = Ningún marcador de este juego en la imagen.
page-live-ties = El soporte y su entorno están en la imagen.
page-live-apart = En la imagen deben estar el soporte y algo más.
page-live-away = El servidor no responde: las fotos se guardan aquí hasta que responda.
page-live-level = girado { $turned }°, mira { $down }° hacia abajo
page-live-refused = Este navegador no ofrece ninguna cámara ({ $why }). Usar el otro botón.
page-live-taken = Hecha: { $width } × { $height } píxeles.
page-live-frame = Es un fotograma de la imagen en directo: más pequeño que las fotos del teléfono y recortado de otra forma, por lo que no le sirve un archivo de cámara hecho con fotos.
page-live-no-record = No dice qué teléfono la hizo (sin EXIF): solo se mide si el trabajo indica su cámara, y solo sirve un archivo de cámara ajustado con imágenes hechas así.
page-live-unnamed = Este trabajo no indica ninguna cámara: es mejor usar la cámara del teléfono con el otro botón.
page-tripod-start = Trípode: una foto cada pocos segundos
page-tripod-stop = Terminar las fotos del trípode
page-tripod-why = El teléfono está quieto en un trípode mientras se mueve el soporte. De cada lugar en que el soporte está en reposo se guarda la foto más reciente.
page-tripod-says = Trípode: { $said }
page-choose-photos = Elegir fotos
page-drop-here = o soltarlas aquí
page-needs-script = Para enviar fotos, este navegador necesita JavaScript. Las fotos también se pueden copiar en la carpeta photos/ del trabajo.
page-waiting-here = En este dispositivo, aún sin enviar
page-photos = Fotos
page-no-photos = Aún no hay fotos. Hacen falta al menos dos desde lados distintos.
page-photo-n = Foto { $n }
page-good-photo = Válida
page-retake-photo = Repetir la foto
page-looking = Se está examinando …
page-no-target = El soporte no aparece en esta foto, o no aparece nada más: ambos deben estar en una misma imagen.
page-set-aside = Descartar esta foto
page-bring-back = Volver a usarla
page-aside-photos = Descartadas, no se miden
page-after-photo-tag = después de la calibración
page-seen-key = encontrado
page-missing-key = no encontrado

page-measuring = Midiendo …
page-verdict-within = Dentro de tolerancia
page-all-within = Todas las comprobaciones dentro de tolerancia
page-verdict-outside = Fuera de tolerancia
page-verdict-not-proven = No demostrado
page-verdict-retake = Repetir las fotos
page-verdict-failed = No se puede medir
page-lead-within = Todas las comprobaciones están demostradas. Ejecutar la calibración y después hacer una foto más.
page-lead-within-simple = Todos los valores medidos están dentro; la regla de la hoja de montaje no tiene en cuenta la incertidumbre. Ejecutar la calibración y después hacer una foto más.
page-lead-within-likely = Todas las comprobaciones están dentro con al menos el { $least } % de probabilidad; la regla de la hoja de montaje no pide más. Ejecutar la calibración y después hacer una foto más.
page-lead-outside = Mover el soporte como se indica y después hacer una foto.
page-lead-held = No mover todavía el soporte: aclarar primero lo que se indica abajo y después empezar el siguiente intento.
page-not-trusted = no fiable
page-lead-not-proven = No está demostrado que nada esté mal, pero tampoco que todo esté bien.
page-lead-retake = Las fotos no permiten decidir. Abajo se indica qué hacer.
page-second-photo = Una foto más desde el otro lado.
page-what-moves = Qué mover
page-not-to-scale = Sin escala. Línea discontinua: donde debe estar.
page-from-above = Desde arriba
page-from-side = Desde el lado derecho del vehículo
page-from-vehicle = Visto desde el vehículo
page-turn-left-end = Girar: acercar al vehículo el extremo de su lado izquierdo, { $amount }°
page-turn-right-end = Girar: acercar al vehículo el extremo de su lado derecho, { $amount }°
page-move-left = { $amount } mm hacia la izquierda del vehículo
page-move-right = { $amount } mm hacia la derecha del vehículo
page-move-away = Alejar { $amount } mm del vehículo
page-move-towards = Acercar { $amount } mm al vehículo
page-move-up = Subir { $amount } mm
page-move-down = Bajar { $amount } mm
page-tilt-away = Inclinar: alejar del vehículo la parte superior, { $amount }°
page-tilt-towards = Inclinar: acercar al vehículo la parte superior, { $amount }°
page-level-right-down = Nivelar: bajar el extremo del lado derecho del vehículo, { $amount }°
page-level-left-down = Nivelar: bajar el extremo del lado izquierdo del vehículo, { $amount }°
page-vehicle-word = vehículo
page-left-word = izquierda
page-right-word = derecha
page-found-out = Hallazgos
page-checks = Comprobaciones
page-full-report = Informe completo
page-first-thing = Primero
page-prove-it = Dejar el soporte donde está. Hacer una foto más desde otro lugar.
page-moved-it = Soporte movido: una foto
page-moved-step = Soporte movido: una foto de «{ $step }»
page-moved-why = Solo se ha movido el soporte. Fotografiarlo con las placas de rueda y las láminas de suelo.
page-next-attempt = Soporte movido: siguiente intento
page-beside-title = Frente a intentos anteriores
page-measure-together = Medir también con esas fotos
page-measure-together-why = Se copian en este intento: más fotos del mismo soporte demuestran más.
page-next-attempt-why = Este intento se sella tal como está y sigue en la lista.
page-to-finish = Continuar con la calibración

page-calibration = Calibración
page-calibration-result = Qué indica el equipo de diagnosis
page-result-none = nada todavía
page-result-successful = correcta
page-result-failed = fallida
page-result-not-run = no realizada
page-reported-azimuth = Desajuste lateral indicado, grados
page-reported-elevation = Desajuste vertical indicado, grados
page-large-misalignment = La unidad de control indica { $angle }°. Con el montaje demostrado, un valor tan grande apunta al anclaje del sensor o a su fijación; si no está demostrado, comprobar primero el montaje.
page-after-photo = Foto después de la calibración
page-after-with-sheets = Una foto más del soporte y de las láminas de suelo, donde estaban antes, muestra si el soporte se movió sobre el suelo. Si se movió el vehículo solo lo muestra con las placas de rueda puestas; volver a ponerlas para ello o dejar la pregunta abierta.
page-after-without-sheets = Este juego no tiene láminas de suelo: una foto más muestra si el soporte se movió respecto al vehículo solo si este lleva al menos una placa de rueda. Volver a ponerla cuando termine la calibración.
page-scan-reports = Informes y otros archivos
page-scan-before = Informe de diagnosis previo
page-scan-after = Informe de diagnosis posterior
page-other-file = Otro archivo
page-attach = Adjuntar
page-attach-file = Adjuntar: { $kind }
page-no-files = Ningún archivo adjunto.
page-close-job = Cerrar el trabajo
page-close-why = Las fotos, los datos, el resultado y el informe se sellan en una carpeta de evidencia. Después no se puede cambiar nada aquí.
page-close-open = Pendiente: { $open }
page-open-prerequisites = requisitos previos sin respuesta
page-open-verdict = no está demostrado que el montaje esté dentro de tolerancia
page-open-result = el resultado de la calibración
page-open-after = la foto después de la calibración
page-close-now = Sellar y cerrar
page-closed-title = Cerrado y sellado
page-take-evidence = Descargar la evidencia (un archivo)
page-send-photos = Enviar las fotos
page-send-file = Enviar el archivo
page-evidence-in = Carpeta de evidencia: { $folder }
page-signed-words = Firmada con la clave de este ordenador.
page-unsigned-words = Sin firmar: revela cambios accidentales, no los intencionados.

page-cautions = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Solo para personal cualificado; los láseres y los vehículos elevados exigen sus propias precauciones. Esta página documenta un montaje y no sustituye el procedimiento.

page-pair-title = Conectar este dispositivo
page-pair-why = Introducir el código para usar esta página.
page-pair-now = Conectar
page-pair-code = Código del terminal del servidor
page-pair-name = Un nombre para este dispositivo
page-pair-name-why = Opcional; aparece en la lista de cambios de cada trabajo, por ejemplo: teléfono del puesto izquierdo.
page-open-network = Esta página no está cifrada: cualquiera en esta red puede leer las fotos, los trabajos y la clave de este dispositivo. Hacer fotos en la página y abrirla sin red también requieren cifrado. Lo activa quien administra el servidor.
page-open-network-here = Sin cifrar: cualquiera en esta red puede leerlo.
page-devices = Dispositivos conectados
page-devices-why = Un dispositivo desconectado se rechaza al instante y necesita un código nuevo. Lo que cambió permanece en la lista de cambios de cada trabajo.
page-no-devices = No hay ningún dispositivo conectado.
page-this-device = este dispositivo
page-connected-since = Conectado { $when }
page-last-here = última actividad { $when }
page-show-out = Desconectar
page-certificate = Certificado de esta página
page-certificate-why = Comparar estos dígitos con los del terminal del servidor, no con otra página: si son iguales, nadie se interpone.
page-certificate-of-page = SHA-256 del certificado que muestra el navegador
page-certificate-of-root = SHA-256 del certificado raíz en el que puede confiar un teléfono
page-root-why = Cuando este dispositivo confía en el certificado raíz, el navegador deja de avisar y la página también se abre sin red. La raíz no puede firmar nada más: su clave se ha borrado.
page-take-root = Descargar el certificado raíz
page-changes = Quién cambió qué
page-did-begin = trabajo empezado
page-did-prepare = preparación
page-did-photo = foto
page-did-aside = foto descartada
page-did-back = foto usada de nuevo
page-did-file = archivo adjuntado
page-did-calibration = calibración
page-did-card = tarjeta
page-did-join = medido con fotos anteriores
page-did-attempt = siguiente intento
page-did-close = cerrado
page-pair-wrong = Ese no es el código. Leerlo otra vez en el terminal o escanear el código QR.
page-pair-wait = Demasiados códigos erróneos. Esperar un minuto.
page-trouble-title = No ha funcionado

page-js-queued = En este dispositivo, a la espera de la red: { $count }. No se pierde nada.
page-js-sending = Enviando { $name } …
page-js-kept = { $name }: guardado.
page-js-already = { $name } ya estaba aquí.
page-js-aside = { $name } se descartó antes. Si hace falta, volver a usarla abajo.
page-js-refused = { $name } no se ha aceptado: { $why }
page-js-again = Reintentar
page-js-discard = Eliminar
page-js-ready = Hay un dictamen nuevo.
page-js-other-certificate = El código QR escaneado indica un certificado distinto del de esta página: no conectar y avisar a quien administra el servidor.
page-js-offline = Sin conexión con el servidor: lo que muestra esta página puede estar desfasado. Se pueden hacer fotos; se enviarán más tarde.
page-js-no-store = Este navegador no guarda nada en espera: permanecer en esta página hasta que se envíen las fotos.

## Languages

page-languages = Idiomas
page-not-proofread = Todavía no revisado por un técnico.
page-moment = { $day } { $clock }
page-unit = { $unit ->
    [deg] °
   *[other] { $unit }
}

## Numbers of things

page-found-jobs = { $count ->
    [one] Un trabajo
   *[other] { $count } trabajos
}
page-checks-n = { $count ->
    [one] Una comprobación
   *[other] { $count } comprobaciones
}
page-photo-shows = { $count ->
    [one] Un marcador encontrado.
   *[other] { $count } marcadores encontrados.
} Muestra: { $names }
page-photo-lacks = { $count ->
    [one] Un marcador no encontrado donde debería estar: { $ids }.
   *[other] { $count } no encontrados donde deberían estar: { $ids }.
} ¿Tapados, con el reflejo de una lámpara o a oscuras?
page-photo-described = { $count ->
    [one] { $photo }: un marcador encontrado
   *[other] { $photo }: { $count } marcadores encontrados
}

## Quantities and sides

page-quantity-from = { $datum ->
    [nose] { $name } desde el frontal del vehículo
    [front_axle] { $name } desde el eje delantero
    [rear_axle] { $name } desde el eje trasero
   *[other] { $name } desde { $datum }
}
page-side = { $side ->
    [left] izquierda
    [right] derecha
    [left-end-nearer] extremo izquierdo más cerca
    [right-end-nearer] extremo derecho más cerca
    [top-away] arriba más lejos
    [top-towards] arriba más cerca
    [left-end-low] extremo izquierdo bajo
    [right-end-low] extremo derecho bajo
    [above] por encima
    [below] por debajo
    [left-longer] izquierda más larga
    [right-longer] derecha más larga
    [toe-in] convergente
    [toe-out] divergente
    [top-forward] arriba hacia delante
    [top-rearward] arriba hacia atrás
    [top-inward] arriba hacia dentro
    [top-outward] arriba hacia fuera
    [nose-up] frontal hacia arriba
    [nose-down] frontal hacia abajo
    [below-floor] bajo el suelo
    [behind] detrás
    [negative] negativo
   *[other] ?
}
page-angle-degrees = { $angle }, grados
page-angle-minutes = { $angle }, minutos

## Sentences with several figures

page-place = { $along ->
    [ahead] { $distance } m por delante del frontal del vehículo
   *[behind] { $distance } m por detrás del frontal del vehículo
}, { $side ->
    [left] { $beside } m hacia la izquierda del vehículo
    [right] { $beside } m hacia la derecha del vehículo
   *[middle] en el eje central
}, teléfono a { $height } m de altura
page-take-off = { $sheets ->
    [some] Antes de ejecutar la calibración, quitar lo que la perturbaría: { $names }. El soporte y las láminas de suelo se quedan donde están.
   *[none] Antes de ejecutar la calibración, quitar lo que la perturbaría: { $names }.
}
page-moved = { $moved ->
    [yes] { $body }: { $mm } mm y { $deg }° entre antes y después: se ha movido
   *[no] { $body }: { $mm } mm y { $deg }° entre antes y después: ningún movimiento demostrado
}
page-stood-alike = Intento { $n }: { $verdict }; nada se ha movido desde entonces
page-stood-apart = Intento { $n }: { $verdict }; no se pueden medir juntos:
page-this-machine = este ordenador
page-device-unnamed = dispositivo { $digits }

## Shop's own sheets

page-asks-tyres = Presiones de los neumáticos según la placa de presiones
page-asks-empty = Vehículo vacío: sin personas ni carga
page-asks-steering = Dirección recta
page-asks-settled = Vehículo rodado hasta su sitio, frenos sueltos, suspensión asentada
page-sheet-left-out = quien introdujo la hoja no la incluyó

## What did not work

page-trouble-not-here = { $what ->
    [job] Este trabajo no está aquí: puede que se haya movido o renombrado.
    [photo] Esta foto no está aquí: puede que se haya movido o renombrado.
    [picture] Esta imagen no está aquí: repetirla.
    [sheet] Esta hoja de montaje no está aquí: puede que se haya movido o renombrado.
    [kit] Este juego de marcadores no está aquí: puede que se haya movido o renombrado.
    [camera] Este archivo de cámara no está aquí: puede que se haya movido o renombrado.
    [device] Este dispositivo no está en la lista: puede que ya se haya desconectado.
    [evidence] Esta carpeta de evidencia no está aquí: puede que se haya movido o renombrado.
    [root] Esta página no tiene certificado raíz propio.
   *[page] Esta página no existe: volver a la lista de trabajos.
}
page-trouble-closed = El trabajo está cerrado y sellado: empezar en su lugar un intento más.
page-sealed-another = En { $folder }, donde se sella este trabajo, hay otra cosa: la evidencia de otro trabajo, o la de este de antes de un cambio en su archivo. Nada se da aquí por sellado hasta que se lleve a otro lugar.
page-trouble-disk = { $doing ->
    [read] No se puede leer un archivo ({ $why }): comprobar el disco del ordenador que sirve esta página.
    [folder] No se puede crear una carpeta ({ $why }): comprobar el disco del ordenador que sirve esta página.
    [photo] No se puede guardar la foto ({ $why }): comprobar el disco del ordenador que sirve esta página.
    [job] No se puede escribir el archivo del trabajo ({ $why }): comprobar el disco del ordenador que sirve esta página.
    [list] No se puede guardar una lista ({ $why }): comprobar el disco del ordenador que sirve esta página.
    [sheet] No se puede guardar la hoja de montaje ({ $why }): comprobar el disco del ordenador que sirve esta página.
   *[file] No se puede guardar el archivo ({ $why }): comprobar el disco del ordenador que sirve esta página.
}
page-trouble-fault = El programa ha fallado en esto: notificarlo junto con el trabajo.
page-trouble-random = El ordenador no da números aleatorios: reiniciarlo y notificarlo si no sirve.
page-trouble-measuring = El programa ha fallado al medir este trabajo: notificarlo junto con las fotos.
page-trouble-not-logged = El dictamen no se muestra: { $why }
page-trouble-stays-open = El trabajo sigue abierto: { $why }
page-trouble-vin = El VIN debe tener 17 caracteres, cifras y mayúsculas sin I, O ni Q: leerlo otra vez en el vehículo.
page-trouble-form = El formulario ha llegado dañado o es demasiado grande: enviarlo otra vez.
page-trouble-line = Se guarda una línea de { $most } caracteres como máximo: acortarla.
page-trouble-number = «{ $typed }» no es un número: escribir cifras, por ejemplo { $example }.
page-trouble-not-measured = Este intento aún no está medido: esperar su dictamen.
page-trouble-both-toes = Introducir la convergencia de ambas ruedas traseras o de ninguna.
page-trouble-toes-contradict = { $side ->
    [left] La convergencia trasera da un ángulo de empuje de { $degrees }° { $minutes }′ hacia la izquierda, que no es el introducido: leer ambos otra vez.
   *[right] La convergencia trasera da un ángulo de empuje de { $degrees }° { $minutes }′ hacia la derecha, que no es el introducido: leer ambos otra vez.
}
page-trouble-angle-sign = Introducir el ángulo sin signo y elegir su lado.
page-trouble-angle-large = Un ángulo de un informe de alineación tiene como máximo { $degrees } grados y menos de 60 minutos: leerlo otra vez.
page-trouble-angle-side = Elegir hacia qué lado apunta el ángulo.
page-trouble-choose-kit = Elegir el juego de marcadores.
page-trouble-many-jobs = Hay demasiados trabajos de este día en la carpeta: mover los más antiguos a otro sitio.
page-trouble-upload-id = X-Upload-Id debe tener de 8 a 64 letras, cifras o guiones.
page-trouble-upload-digest = X-Upload-Sha256 debe ser el SHA-256 del archivo, con 64 cifras hexadecimales en minúscula.
page-trouble-damaged = El archivo no ha llegado como se envió: enviarlo otra vez.
page-trouble-too-large = El archivo tiene más de { $most } MB: enviar uno más pequeño.
page-trouble-slow = El archivo ha llegado demasiado despacio: enviarlo otra vez.
page-trouble-cut = La conexión se ha cortado: enviar el archivo otra vez.
page-trouble-uploads-busy = Llegan muchos archivos a la vez: enviarlo otra vez dentro de poco.
page-trouble-pace = Enviar menos imágenes en directo.
page-trouble-glances-busy = Otros también están mirando: enviarla otra vez dentro de poco.
page-trouble-live-kind = Las imágenes en directo deben ser JPEG.
page-trouble-live-size = Las imágenes en directo deben ser pequeñas: enviar menos píxeles.
page-trouble-host = Esta página solo responde a los nombres propios de este ordenador, por ejemplo localhost.
page-trouble-origin = Esto lo ha enviado la página de otro sitio o un programa que no dice de dónde viene.
page-trouble-not-connected = Este dispositivo no está conectado: abrir la página e introducir el código que muestra el terminal.
page-trouble-many-photos = Un trabajo guarda como máximo { $most } fotos: descartar algunas.
page-trouble-no-first-photos = Las fotos del trípode se miden con dos primeras fotos: hacerlas desde lugares distintos y después colocar el trípode.
page-trouble-which-step = Indicar qué paso de la hoja de montaje muestran las fotos: { $steps }.
page-trouble-many-files = Un trabajo guarda como máximo { $most } archivos adjuntos.
page-trouble-instrument = Elegir el instrumento que dio el valor.
page-trouble-many-readings = Un trabajo guarda como máximo { $most } lecturas.
page-trouble-cards = Todas las tarjetas están en uso: cerrar los trabajos terminados.
page-trouble-no-camera = No hay ningún archivo de cámara: poner uno donde lo busca el programa.
page-trouble-no-model = { $kind ->
    [setup] No se encuentra la hoja de montaje «{ $name }»: ponerla donde la busca el programa.
    [kit] No se encuentra el juego de marcadores «{ $name }»: ponerlo donde lo busca el programa.
    [camera] No se encuentra el archivo de cámara «{ $name }»: ponerlo donde lo busca el programa.
   *[other] No se encuentra el archivo «{ $name }»: ponerlo donde lo busca el programa.
}
page-trouble-sheet-exists = Ya hay una hoja de montaje «{ $name }»: dar a esta un nombre propio.
page-trouble-sheet-needs = { $field ->
    [name] Introducir un nombre corto para la hoja.
    [title] Introducir qué se calibra y con qué.
   *[source] Introducir de quién son estas cifras: documento y fecha.
}
page-trouble-sheet-name = El nombre corto lleva de 3 a 60 minúsculas, cifras y guiones, por ejemplo front-radar-model-x.
page-trouble-choose-line = Elegir la línea de referencia.
page-trouble-choose-start = Elegir desde dónde se cuenta la distancia.
page-trouble-sheet-empty = Introducir al menos un valor exigido con su tolerancia.
page-trouble-figures-differ = { $quantity }: las dos cifras introducidas son distintas: leer la fuente otra vez.
page-trouble-figure-once = { $quantity }: introducir la cifra en los dos campos.
page-trouble-figure-alone = { $quantity }: introducir el valor exigido y su tolerancia, o ninguno de los dos.
page-trouble-tolerance-zero = { $quantity }: una tolerancia debe ser mayor que cero.

## Whoever runs the page

page-serve-listen = no se puede escuchar en { $address } ({ $why }): indicar otro --listen ADDR:PORT o detener lo que escucha ahí
page-serve-jobs = no se puede usar { $jobs } como carpeta de trabajos ({ $why }): indicar otro --jobs DIR
page-serve-start = no se puede iniciar el servidor ({ $why })
page-tls-file = { $doing ->
    [write] no se puede escribir { $file } ({ $why }): comprobar el archivo o indicar otro
   *[read] no se puede leer { $file } ({ $why }): comprobar el archivo o indicar otro
}
page-tls-holds = { $what ->
    [key] { $file } no contiene ninguna clave privada en formato PEM ("-----BEGIN ..."): indicar el archivo correcto
   *[certificate] { $file } no contiene ningún certificado en formato PEM ("-----BEGIN ..."): indicar el archivo correcto
}
page-tls-pair = el certificado de { $certificate } y la clave de { $key } no se pueden usar ({ $why }): indicar una pareja que se corresponda
page-tls-name = «{ $name }» no es un nombre de equipo ni una dirección para un certificado: usar letras, cifras, guiones y puntos
page-tls-make = no se puede crear un certificado ({ $why }): usar --tls-cert y --tls-key
page-tls-other-name = { $own ->
    [yes] el certificado no está hecho para «{ $name }» y los navegadores lo avisarán: borrar { $file } para que se cree uno nuevo, en el que los teléfonos tendrán que confiar de nuevo
   *[no] el certificado no está hecho para «{ $name }» y los navegadores lo avisarán: indicar con --name para qué está hecho o encargar uno para este nombre, en lugar de { $file }
}
page-tls-over = { $own ->
    [yes] el certificado ha caducado y los navegadores lo avisarán: borrar { $file } para que se cree uno nuevo, en el que los teléfonos tendrán que confiar de nuevo
   *[no] el certificado ha caducado y los navegadores lo avisarán: renovarlo, con su clave en { $file }
}
page-tls-ends = { $own ->
    [yes] el certificado caduca pronto (días restantes: { $days }): borrar { $file } para que se cree uno nuevo, en el que los teléfonos tendrán que confiar de nuevo
   *[no] el certificado caduca pronto (días restantes: { $days }): renovarlo, con su clave en { $file }
}
page-tls-changed = El certificado ha cambiado; su SHA-256 es ahora { $print }
page-tls-kept = La página sigue con el certificado que tiene: { $why }
page-tls-plain = Esta página está cifrada: su dirección empieza por https://
