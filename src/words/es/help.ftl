# Lo que el programa dice de sí mismo: `baywitness --help`, la ayuda de cada comando, el manual
# y qué no está bien en lo que se ha escrito.
#
# `help-COMANDO` es el comando en una línea (85 letras como máximo), sus atributos son sus argumentos por
# su nombre en el programa; `.about-more` va debajo de la línea, `.exit-codes` al final.

help-baywitness = Demuestra con fotos corrientes dónde estaba una diana de calibración, con una incertidumbre para cada valor
help-shared =
    .cameras = Decir de cada foto qué cámara la tomó, según el patrón propio del sensor: una carpeta de patrones hechos con `camera fit --pattern`; ningún código de salida depende de ello, y `audit` lo guarda en cameras.jsonl
    .quiet = Mostrar solo errores: lo demás lo dicen el código de salida y los archivos pedidos
    .language = Idioma de todo lo que leen las personas: en, de, es o fr (por defecto: el del entorno); los archivos para programas no tienen ninguno
    .help = Mostrar la ayuda: con -h breve, con --help completa
    .version = Mostrar la versión
    .models = Carpeta con setups/, kits/ y cameras/ donde se buscan los nombres
    .threads = Número de hilos (por defecto: uno por núcleo)
    .json = Escribir el resultado como JSON en un archivo, o en la salida estándar con `-`
    .kit = Juego de marcadores: un archivo o el nombre de uno
    .camera = La cámara: un archivo o un nombre de los modelos (por defecto: según los datos de cada foto)
    .setup = Hoja de montaje: un archivo o el nombre de una
    .signers = De quién valen las firmas: un archivo de firmantes permitidos, como los usa ssh-keygen
    .credential_anchors = Qué credenciales de contenido (C2PA) cuentan: certificados (PEM) que avalan a los firmantes de las fotos; requiere un programa construido con la opción `credentials`
    .log = Añadir cada dictamen a este registro de intentos antes de mostrarlo (creado con `baywitness log new DIR --origin NAME`)
    .log_keys = De quién valen los registros de intentos: un archivo de claves de verificación de registros y testigos, una por línea
    .evidence = Carpeta de evidencia, también como un solo archivo
    .paths = Carpetas que contienen carpetas de trabajo y de evidencia, o que lo son
    .sign_pdf = Firmar el informe PDF con esta clave privada (PEM; `baywitness certificate NAME --out FILE` crea una)
    .certificate = El certificado de la clave que firma el informe (PEM, detrás los que responden de él), si no está en el archivo de la clave
    .certificates = De quién valen las firmas de informes PDF: los certificados de los propios firmantes (PEM)
help-with-default = { $help } (por defecto: { $value })
help-help = Mostrar la ayuda de un comando

## La página de todos los comandos

help-usage = Uso:
help-usage-options = [OPCIONES]
help-usage-command = COMANDO
help-arguments = Argumentos:
help-options = Opciones:
help-commands = Comandos:
help-start = Para empezar:
    .sheet = un juego de marcadores para imprimir, cortar y pegar
    .new = una carpeta de trabajo; las fotos van en JOB/photos
    .verify = el dictamen y un informe para entregar
help-each = Cada comando tiene su propia ayuda: { $command }
help-phase-prepare = Preparar
    .when = juego de marcadores, cámara, hoja de montaje y puesto, una vez y cuando algo cambia
help-phase-measure = Medir
    .when = en cada trabajo
help-phase-prove = Demostrar
    .when = evidencia para entregar y comprobar
help-phase-oversee = Supervisar
    .when = muchos trabajos
help-phase-train = Practicar
    .when = puestos inventados
help-phase-tools = Herramientas
    .when = para otros programas y el intérprete de comandos

## Encabezados del manual

help-man-name = NOMBRE
help-man-synopsis = SINOPSIS
help-man-description = DESCRIPCIÓN
help-man-options = OPCIONES
help-man-commands = COMANDOS
help-man-codes = CÓDIGOS DE SALIDA
help-man-version = VERSIÓN

## Qué no está bien en lo que se ha escrito

help-wrong-argument = argumento desconocido «{ $argument }»
help-wrong-command = no existe el comando «{ $command }»
help-wrong-value = «{ $value }» no es válido para { $argument }: { $why }
help-wrong-choice = «{ $value }» no es válido para { $argument }: elegir entre { $known }
help-no-value = { $argument } requiere un valor
help-too-many-values = { $argument } no admite más valores: omitir «{ $value }»
help-number-of-values =
    { $wanted ->
        [one] { $argument } admite un valor, indicados: { $actual }
       *[other] { $argument } admite { $wanted } valores, indicados: { $actual }
    }
help-conflict = { $argument } no puede ir junto con { $others }
help-twice = { $argument } solo se puede indicar una vez
help-missing = falta todavía: { $arguments }
help-missing-command = «{ $command }» requiere un comando: { $known }
help-no-text = lo escrito no es Unicode válido (UTF-8)
help-wrong-otherwise = uso incorrecto: { $why }
help-did-you-mean = ¿Se quería decir { $names }?
help-more = Más: { $command } --help
help-not-whole = indicar un número entero
help-not-whole-within = indicar un número entero de { $from } a { $to }
help-not-number = indicar un número, como 12.5
help-not-address = indicar una dirección con puerto, como 127.0.0.1:8425
help-not-choice = elegir entre { $known }

## Códigos de salida comunes a varios comandos

help-job-codes = Código de salida: 0 dentro de tolerancia, 1 fuera, 2 ilegible, 3 no demostrado, 4 hay que repetir fotos; de varios trabajos, el primero que se dé de 2, 4, 1, 3, 0
help-fit-codes = Código de salida: 0 hecho, 2 ilegible, 3 no apto para el uso, o demasiado poco para decir algo

## Preparar

help-sheet = Generar un juego de marcadores o un tablero de cámara como PDF a tamaño real
    .about-more = Las reglas de cada hoja muestran lo que hizo de verdad la impresora; los dibujos, cómo construir cada portamarcadores.
    .model = Juego o tablero: un archivo o un nombre de los modelos
    .out = El PDF que se escribe
    .paper = El papel de la impresora: a4, a3 o letter
    .measured_mm = Lo que se lee en las dos reglas de control de 160,0 mm tras imprimir en este papel, a la derecha y hacia arriba
    .corrected = Dónde escribir el juego o el tablero con los tamaños impresos
    .models = Una carpeta de modelos en la que se busca primero
help-camera = Ajustar una cámara a fotos de un tablero
help-camera-fit = Ajustar una cámara a 12 a 20 fotos de un tablero o a fotos de un juego medido
    .exit-codes = { help-fit-codes }
    .photos = Fotos del tablero (o del juego), todas de una cámara con el mismo zoom
    .board = El tablero o, en su lugar, un juego medido: un archivo o un nombre de los modelos
    .out = El archivo de cámara que se escribe
    .model = El modelo de objetivo: brown-conrady para la mayoría, kannala-brandt para los de ángulo muy amplio
    .report = Escribir en esta carpeta una página con residuos, cobertura e incertidumbre
    .pattern = Escribir también el patrón propio del sensor, por el que verify, check y audit --cameras reconocen las fotos de la cámara; su nombre acaba en .pattern
help-survey = Hallar dónde están de verdad los marcadores de un juego en sus portamarcadores
    .about-more = La escala viene de longitudes medidas en el juego; lo hallado se escribe con su covarianza.
    .exit-codes = { help-fit-codes }
    .photos = Seis o más fotos del juego desde todos los lados; entre ellas no se mueve nada
    .kit = El juego tal como se construyó: un archivo o un nombre de los modelos
    .out = El juego medido que se escribe; su disposición se escribe al lado
    .lengths = Una longitud medida entre dos esquinas de marcadores con su incertidumbre típica, como 10:tl,13:tr=1200.4~0.3 (esquinas tl tr br bl, o 0 a 3 en ese orden); se puede repetir
    .apart = Los portamarcadores pueden haberse movido entre sí de una foto a otra: medir cada uno por separado
    .serial = Número de serie que se escribe en el juego
    .due = Cuándo hay que volver a medir el juego, como 2027-05-01
    .report = Escribir en esta carpeta una página con una imagen de cada portamarcadores
    .models = Carpeta con kits/ y cameras/ donde se buscan los nombres
help-seating = Medir con qué repetibilidad asienta una placa de rueda
    .about-more = La placa se fija una y otra vez mientras el soporte sigue en su sitio; media vuelta de la rueda añade el alabeo de la placa.
    .exit-codes = { help-fit-codes }
    .seatings = Una carpeta de fotos por cada fijación de la placa, o archivos de resultado de `verify --json`
    .kit = El juego: un archivo o un nombre de los modelos
    .plate = La placa: un portamarcadores del juego
    .against = Un portamarcadores que no se movió (por defecto: el primer soporte de diana)
    .turned = Lo mismo tras girar la rueda media vuelta sin soltar la placa: da el alabeo
    .out = El juego que se escribe, con el asiento hallado en esta placa
help-gauge = Repartir la dispersión de lecturas entre sistema de medida, personas y piezas
    .readings = Lecturas: un archivo CSV con las columnas operator, part y value
    .method = Cómo se reparte la dispersión: range (media y rango) o anova (análisis de varianza); si se omite, las dos
help-recheck = Comprobar una referencia fija frente a su primera medición
    .about-more = Cada comprobación añade una línea a un registro, y los gráficos de control las muestran todas.
    .exit-codes = Código de salida: 0 en orden, 2 ilegible, 3 algo se movió o no se pudo medir
    .photos = Fotos de la referencia, cuatro o más desde lados distintos
    .kit = La referencia tal como se midió primero: el juego que escribió `survey`
    .log = El registro de todas las comprobaciones; se añade una línea
    .date = El día, si los datos de las fotos no lo dicen
    .report = Escribir los gráficos de control en esta carpeta
help-setup = Explicar y examinar una hoja de montaje
help-setup-check = Explicar una hoja de montaje, hallar contradicciones y decir qué juego decide cada comprobación
    .exit-codes = Código de salida: 0 en orden, 2 ilegible, 3 se contradice o ningún juego decide todas las comprobaciones
    .kit = Juego de marcadores que se prueba: un archivo o el nombre de uno (por defecto: todos los que se hallan por su nombre)
    .camera = Archivo de cámara o el nombre de una
    .report = Escribir setup.html en esta carpeta
help-plan = Decir dónde colocarse y cuánto valdrán las fotos
    .about-more = Dice cuántas fotos hacen falta como mínimo y qué cambiar donde ninguna foto podría decidir.
    .exit-codes = Código de salida: 0 todas las comprobaciones se pueden decidir, 2 ilegible, 3 alguna no
    .camera = Archivo de cámara o el nombre de una; demo-phone es una inventada para demostración
    .job = Carpeta de trabajo o job.toml con las medidas del vehículo (por defecto: un coche mediano)
    .earlier = Un trabajo anterior con el mismo teléfono (una carpeta), se puede repetir: se cuenta con el ruido de esquinas de sus fotos y el giro de la mano (por defecto: el que halló el ajuste de la cámara)
    .photos = Este número de fotos (por defecto: las menos que deciden todas las comprobaciones)
    .from = Una posición de la cámara en mm: por delante del eje trasero, a la izquierda del vehículo, sobre el suelo; una vez por foto
    .after_move = Decir también desde dónde vale más una foto después de mover el soporte
    .width = Ancho libre del puesto, mm
    .ahead = Longitud libre por delante del frontal del vehículo, mm (por defecto: lo que pide la hoja; si no, 6000)
    .post = Un poste donde nadie puede colocarse: por delante del eje trasero, a la izquierda, mm; se puede repetir
    .json = Escribir el plan como JSON en un archivo, o en la salida estándar con `-`
    .report = Escribir plan.html y plan.svg en esta carpeta
help-bay = Medir lo horizontal y plano que es el suelo de un puesto
    .about-more = Láminas de suelo por todo el puesto se miden frente al plano de las ruedas: pendiente, irregularidad, longitud libre.
    .exit-codes = Código de salida: 0 dentro de todos los límites, 1 fuera de alguno, 2 ilegible, 3 alguno no demostrado
    .photos = Fotos de las láminas de suelo y de las placas de rueda; las fotos vecinas comparten algunas
    .camera = Archivo de cámara o el nombre de una
    .setup = Hoja de montaje con [limits]: un archivo o el nombre de una
    .job = Carpeta de trabajo o job.toml con las medidas del vehículo
    .report = Escribir bay.html y bay.svg en esta carpeta

## Medir

help-new = Crear una carpeta de trabajo para rellenar
    .about-more = job.toml contiene todo lo que un trabajo puede decir, lo aún no conocido como comentario; las fotos van en photos/.
    .folder = La carpeta del trabajo, que se crea; su última parte es el número del trabajo
    .setup = Hoja de montaje: un nombre de los modelos, como lo toma `setup check`
    .kit = Juego de marcadores, un nombre de los modelos
    .camera = Cámara, un nombre de los modelos; si se omite, eligen los datos de cada foto
help-verify = Medir las fotos de un trabajo y decidir las comprobaciones de su hoja de montaje
    .about-more = El informe es una página (HTML), lo mismo como PDF, el resultado como JSON y una página para el cliente. Los intentos de una orden de reparación (`series` en job.toml) que se indican juntos se comparan y se enumeran en una página más. Después de una corrección basta una foto: `verify --moved c.jpg JOB` la incorpora al trabajo y la mide con las primeras.
    .exit-codes = { help-job-codes }
    .jobs = Carpetas de trabajo
    .moved = Una foto del soporte después de moverlo sin mover nada más: se copia en el trabajo y se anota allí; se repite para cada foto más de ese lugar
    .more = Una foto más del soporte donde lo hallaron las últimas fotos
    .step = El paso de la hoja de montaje que muestran estas fotos, si la hoja tiene pasos
    .json = Escribir el resultado como JSON en un archivo, o en la salida estándar con `-`
    .report = Escribir el informe en esta carpeta
    .private = Mostrar también lo que los datos de las fotos guardan de personas y cosas: lugares, números de serie, nombres
help-watch = Verificar cada trabajo dentro de una carpeta según llegan sus fotos
    .about-more = Con --tripod: toma las fotos de la cámara de un trabajo, que está en un trípode mientras se giran los tornillos del soporte. Después de cada reposo en un lugar nuevo dice el dictamen y qué hacer primero.
    .exit-codes = { help-job-codes }
    .folder = Una carpeta de trabajo, o una carpeta que contiene carpetas de trabajo
    .tripod = Incorporar al único trabajo DIR las fotos de una cámara en un trípode que llegan a esta carpeta: de cada lugar en que el soporte está en reposo, la más nueva; en la carpeta no se cambia nada
    .step = El paso de la hoja de montaje que muestran las fotos del trípode, si la hoja tiene pasos
    .report = Escribir los informes en esta carpeta
    .every = Mirar cada tantos segundos
    .once = Terminar tras la primera mirada, con el código de salida del peor trabajo, como `verify`
help-serve = Ofrecer la página del técnico, que los teléfonos abren en el puesto
    .about-more = Las fotos se juzgan según llegan; después vienen el dictamen, qué mover y hacia dónde, más intentos y el cierre en una carpeta de evidencia.
    .listen = Dónde escuchar; con cualquier dirección que no sea 127.0.0.1 se pide a cada dispositivo el código que aparece en esta terminal
    .jobs = La carpeta de las carpetas de trabajo; se crea si no existe
    .key = Firmar los trabajos cerrados con esta clave de ssh-keygen (ed25519); un archivo .pub nombra una que guarda el agente
    .tls_cert = Cifrar con este certificado (PEM, detrás los que lo avalan); se vuelve a leer cuando cambia
    .tls_key = La clave privada del certificado (PEM)
    .tls_own = Cifrar con un certificado propio de la página, creado una vez y guardado con los trabajos
    .names = Lo que se escribe en los teléfonos para llegar a esta máquina, como bay.example; figura en el certificado propio; se puede repetir
    .log = Añadir cada dictamen que cambió a este registro de intentos antes de mostrarlo (creado con `baywitness log new DIR --origin NAME`)
help-explain = Decir qué significa un código de un informe o un código de salida
    .about-more = De un hallazgo: qué significa, de dónde viene, cómo verlo en el puesto y qué hacer.
    .codes = Códigos como figuran en un informe, o códigos de salida; si se omite, todos los códigos en una línea cada uno

## Demostrar

help-seal = Sellar un trabajo con su resultado y su informe en una carpeta de evidencia
    .about-more = La carpeta es una bolsa BagIt con resúmenes SHA-512, firmada con --key como lo hace `ssh-keygen -Y sign -n baywitness-evidence`. Los trabajos de una orden de reparación se sellan uno junto a otro, cada uno en una carpeta que se puede comprobar y entregar sola; index-sha512.txt los une.
    .jobs = Carpeta de trabajo; varias de una orden de reparación (`series`) obtienen una carpeta de evidencia cada una y un índice común
    .out = La carpeta de evidencia que se crea; si el nombre termina en .tar, será un solo archivo; con varios trabajos, la carpeta que contiene las suyas
    .key = Firmar con esta clave de ssh-keygen (ed25519); un archivo .pub nombra una que guarda el agente
    .timestamp = Incluir esta respuesta de una autoridad de sellado de tiempo (RFC 3161), dada a una petición del mismo trabajo y la misma clave
    .timestamp_request = Escribir también la petición para enviar a una autoridad de sellado de tiempo
    .log = Añadir cada trabajo a este registro de intentos y sellar su prueba (creado con `baywitness log new DIR --origin NAME`)
help-certificate = Crear un certificado propio del taller para firmar informes PDF
    .about-more = Para un taller que no tiene ninguno de una autoridad. Responde de sí mismo: quien lee los informes lo recibe del taller, o su SHA-256. `verify --report`, `watch`, `seal` y `serve` firman con él (--sign-pdf).
    .name = Quién firma: el nombre del taller, como lo verán los lectores de un informe
    .out = El archivo que se crea: clave privada y certificado (PEM), que solo su dueño puede leer; a su lado, con la extensión .crt, el certificado para entregar
    .years = Cuántos años vale, 10 como máximo
help-stamp = Poner un sello de tiempo a una carpeta de evidencia o a un informe PDF firmado
    .about-more = Escribe la petición para una autoridad de sellado de tiempo (RFC 3161) y guarda su respuesta en la carpeta o en el informe.
    .folder = Carpeta de evidencia, también como un solo archivo, o un informe PDF firmado
    .request = Escribir la petición (RFC 3161) para enviar a una autoridad de sellado de tiempo
    .answer = Guardar la respuesta de la autoridad en la carpeta o en el informe
help-check = Comprobar una carpeta de evidencia y volver a medir sus fotos
    .about-more = Mira cada byte, la firma y los sellos de tiempo, y compara el resultado y sus informes con lo que dicen ahora las fotos. De una copia enmascarada mide las fotos enmascaradas y dice hasta dónde llega eso. De un informe PDF firmado dice si sus bytes son los que se firmaron, quién los firmó y desde cuándo.
    .exit-codes = Código de salida: 0 íntegra y firmada por un firmante de la lista, 1 alterada, 2 ilegible, 3 íntegra pero sin firma, con firmante desconocido o con el veredicto sin confirmar
    .folder = Carpeta de evidencia, también como un solo archivo, o un informe PDF firmado
    .timestamp_ca = De quién valen los sellos de tiempo: certificados raíz de autoridades (PEM)
    .log = El registro de intentos tal como es ahora: debe empezar todavía con aquello para lo que se firmó la prueba de la carpeta
    .json = Escribir las comprobaciones como JSON en un archivo, o en la salida estándar con `-`
help-redact = Copiar una carpeta de evidencia con las fotos enmascaradas salvo los marcadores
    .about-more = La copia se puede comprobar aún con los resúmenes sellados; se omiten los informes y anexos. Una carpeta cuyas fotos no dan su resultado no se copia.
    .folder = { help-shared.evidence }
    .out = La copia que se crea; si el nombre termina en .tar, será un solo archivo
    .show = Qué más queda visible de cada foto, vista derecha: izquierda, arriba, derecha, abajo en tanto por ciento

## Supervisar

help-audit = Juzgar un archivo de carpetas de trabajo y de evidencia
    .about-more = Usa todos los núcleos y sigue donde estaba tras cualquier interrupción. Escribe una página, una tabla (CSV), una línea por trabajo y cada resultado completo; compilado con la función `parquet`, también audit.parquet. Admite también evidencia como un solo archivo (.tar).
    .exit-codes = { help-job-codes }
    .out = Dónde van los resultados y el informe; al repetir, solo se juzga lo nuevo o cambiado
    .stdin = Leer rutas de trabajos de la entrada estándar y escribir una línea JSON por cada uno en la salida estándar
    .recompute = Juzgar de nuevo lo ya juzgado por cualquier versión del programa y enumerar qué cambia con ello
    .log = Cotejar el archivo con este registro de intentos; lo que difiere va a log.json, el punto de control más nuevo a log-checkpoint
    .log_keys = De quién valen los registros y testigos: un archivo de claves de verificación, una por línea
    .log_earlier = Un punto de control del registro guardado de antes (el de la propia carpeta de la auditoría se usa siempre)
    .log_orders = El secreto del registro que dice de qué orden de reparación era un intento que falta (por defecto: DIR.private/order-salt, si está)
help-log = Llevar y comprobar el registro de intentos, al que solo se añade
    .about-more = `verify --log`, `seal --log` y `serve --log` le añaden cada dictamen, de modo que ningún intento pueda quitarse, ponerse después o cambiarse sin que se vea. La carpeta es un registro de transparencia en teselas (C2SP tlog-tiles) que cualquier servidor de archivos publica tal como es; lo que debe seguir siendo privado está al lado, en DIR.private.
    .folder = La carpeta del registro
help-log-new = Crear un registro vacío con su propia clave
    .about-more = Muestra la clave de verificación para publicar. La clave privada y el secreto que disimula las órdenes de reparación están en DIR.private.
    .origin = El nombre del registro, como dirección web sin https://, por ejemplo shop.example/attempts
help-log-show = Enumerar las entradas más nuevas
    .last = Cuántas
help-log-check = Comprobar cada entrada, hash y firma, también frente a puntos de control guardados
    .exit-codes = Código de salida: 0 es correcto, 1 se reescribió, recortó, bifurcó o alteró, 2 ilegible, 3 es correcto, pero no lo firmó ninguna clave que valga o hay horas fuera de orden
    .keys = De quién valen los registros y testigos: un archivo de claves de verificación, una por línea
    .earlier = Un punto de control guardado de antes; se puede repetir
help-log-witness = Refrendar como testigo el último punto de control, si continúa lo que el testigo vio
    .about-more = Se ejecuta en otra máquina que la del registro, sobre la carpeta compartida o una copia. El punto de control refrendado va a DIR/witnessed; desde una copia se lleva allí.
    .exit-codes = Código de salida: 0 refrendado, 1 rechazado: el registro se reescribió, recortó, bifurcó o alteró, 2 ilegible, clave del propio registro, o recuerdo de otro registro
    .key = La clave de ssh-keygen (ed25519) del testigo, sin otro uso
    .name = El nombre del testigo, como association.example/witness
    .keys = La clave de verificación del registro: un archivo con una clave por línea
    .seen = Dónde recuerda este testigo lo que vio (por defecto: KEY.seen; para cada registro más, un archivo propio al lado)
help-trends = Decir qué errores ocurren, dónde y desde cuándo
    .about-more = Lee lo que escribió `audit` o `verify --json`. Compara los primeros intentos y distingue personas, puestos, hojas de montaje y juegos, hasta donde el archivo lo permite; solo nombra lo que destaca más allá del azar.
    .paths = Carpetas de auditorías o de resultados, o archivos de resultados (JSON, o uno por línea)
    .out = Carpeta para report.html, trends.json, trends.csv y jobs.csv
    .by = Qué compara primero la página: technician (personas), bay (puestos), setup (hojas de montaje) o vehicle (vehículos)
    .names = Mostrar los nombres de las personas; si no, seudónimos, siempre los mismos mientras people.key siga en la carpeta
    .reports = Carpeta con los informes de los trabajos (`verify --report`), para enlazarlos
help-due = Enumerar trabajos con el plazo de conservación vencido y sellos de tiempo por renovar
    .about-more = No se borra nada.
    .on = El día (por defecto: hoy)
    .ahead = Los sellos de tiempo que terminan dentro de tantos días están vencidos
    .json = Escribir la lista como JSON en un archivo, o en la salida estándar con `-`

## Practicar

help-gallery = Mostrar cada error en un puesto inventado, con causa y remedio
    .about-more = Fotos y valores sin el error y con él.
    .out = Carpeta donde escribir gallery.html con sus imágenes, trabajos e informes
    .codes = Códigos que se muestran; si se omite, todos
help-drill = Practicar con trabajos inventados que esconden errores
    .dir = La carpeta del ejercicio
help-drill-new = Crear trabajos con errores escondidos
    .level = 1: un error grande, hasta 5: hasta tres pequeños, o ninguno
    .count = Cuántos trabajos
    .out = Carpeta que se crea; no debe contener ya un ejercicio
    .seed = El mismo número da otra vez los mismos errores
help-drill-answer = Decir qué está mal en un trabajo; varios errores son varias respuestas
    .job = El trabajo, como DRILL-01
    .finding = El código del hallazgo, o none
    .way = Hacia dónde mover: HOW-TO.txt enumera las palabras
    .size = Cuánto, mm o grados
help-drill-mark = Calificar las respuestas y añadirlas al progreso de quien practica
    .trainee = Quién practicó
    .progress = Dónde se guarda el progreso (por defecto: drills.jsonl junto a la carpeta del ejercicio); su página se escribe al lado
    .day = Día de la calificación (por defecto: hoy)
help-stage = Generar un puesto inventado: una carpeta de trabajo y lo que es verdad en ella
    .scene = Archivo de escena (scene/1)
    .out = Carpeta donde escribir; se crea si no existe, los archivos que contenga se sobrescriben
    .truth_only = Escribir solo los valores de truth.json en la terminal, sin generar imágenes

## Herramientas

help-detect = Encontrar los marcadores de las fotos, con la incertidumbre de cada esquina
    .photos = Fotos (JPEG, PNG o HEIC)
    .json = Escribir lo encontrado como JSON en un archivo, o en la salida estándar con `-`
help-schema = Mostrar el esquema JSON de lo que escribe el programa
    .format = Un formato, como result/1; si se omite, se enumeran los que hay
help-completions = Mostrar lo que un intérprete de comandos necesita para completar estos comandos
    .shell = El intérprete de comandos: bash, elvish, fish, powershell o zsh
help-man = Escribir las páginas del manual
    .out = Carpeta para una página del programa y una de cada comando
