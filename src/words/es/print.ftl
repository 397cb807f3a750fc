# Printed kits and boards.
print-kit-title = Juego de marcadores { $kit }
print-board-title = Tablero de cámara
print-folio = baywitness · { $name } · página { $page } de { $count }
print-role =
    { $role ->
        [target] soporte con diana
        [rear_left_wheel] placa de rueda trasera izquierda
        [rear_right_wheel] placa de rueda trasera derecha
        [front_left_wheel] placa de rueda delantera izquierda
        [front_right_wheel] placa de rueda delantera derecha
        [floor] lámina de suelo
        [nose] marca frontal
        [rear_left_arch] marca en el paso de rueda trasero izquierdo
        [rear_right_arch] marca en el paso de rueda trasero derecho
        [front_left_arch] marca en el paso de rueda delantero izquierdo
        [front_right_arch] marca en el paso de rueda delantero derecho
       *[card] tarjeta de trabajo
    }
print-datum-of =
    { $kind ->
        [target] el punto de mira, el centro de la diana
        [floor] el centro del primer marcador; x-y es el suelo
        [nose] el centro de la tapa del sensor, o el punto más adelantado desde el que se miden las distancias
        [card] el centro de la tarjeta
        [arch] el borde inferior del paso de rueda, en vertical sobre el centro de la rueda
       *[wheel] la referencia del buje, donde el eje de giro de la rueda corta el plano de su cara exterior
    }
print-direction =
    { $way ->
        [forward] hacia delante
        [rearward] hacia atrás
        [left] a la izquierda
        [right] a la derecha
        [up] hacia arriba
        [down] hacia abajo
       *[nowhere] a ninguna parte
    }
print-direction-turned = { $first }, girado { $turn }° { $second }
print-up = ARRIBA
print-up-is = ARRIBA = { $direction }
print-place = x { $x }  y { $y }  z { $z }
print-ruler =
    { $way ->
        [up] arriba: medir esto: { $length } mm; introducir la lectura
       *[right] derecha: medir esto: { $length } mm; introducir la lectura
    }
print-ruler-short = arriba: medir esto: { $length } mm
print-view-looks = Mira { $direction }
print-view-note =
    { $side ->
        [behind] plano { $depth } mm detrás de la referencia · parte superior de la página = { $top }
       *[front] plano { $depth } mm delante de la referencia · parte superior de la página = { $top }
    }
print-view-plan = Planta, vista desde arriba
print-view-plan-note = las cotas son x (delante) e y (izquierda) · parte superior de la página = delante
print-view-scale = { $title } · 1:{ $scale }
print-assembly-title = { $carrier }: dónde van las hojas
print-assembly-note = Todas las cotas en mm desde la referencia ({ $datum }); vistas de frente, derecha y arriba son positivas. Alinee las líneas cortas de los bordes de cada hoja con líneas a lápiz por su centro.
print-datum = referencia
print-column-page = página
print-column-ids = números
print-column-square = cuadrado, ancho x alto
print-column-centre-x = centro x
print-column-looks = la cara impresa mira
print-size = { $right } x { $up } mm
print-sheet-title = { $carrier } · n.º { $ids }
print-sheet-line = cuadrado negro { $right } x { $up } mm · la cara impresa mira { $direction } · centro de la hoja en { $place } mm
print-strip = { $up } · n.º { $ids } · { $carrier }
print-wide-note = Este marcador es tan ancho como el papel, por eso la regla vertical es corta: una comprobación rápida. Introducir la lectura de la regla de { $length } mm de la página 1, o medir el propio cuadrado negro con un calibre.
print-board-note = 100 %, mate, pegado plano sobre una placa rígida
print-board-foot = baywitness · tablero de cámara
print-board-markers = tablero de cámara, { $columns } x { $rows } marcadores 36h11, n.º { $first } a { $last } de izquierda a derecha y de arriba abajo, tamaño { $size } mm, hueco { $gap } mm
print-board-chessboard = tablero de cámara, ajedrezado de { $across } x { $down } esquinas interiores, casillas de { $square } mm
print-pages = { $first } a { $last }
print-serial = número de serie { $serial }
print-kind = marcadores de la familia 36h11 · papel { $paper }
print-survey-due = nueva medición: { $date }
print-step-print-title = Imprimir
print-step-print = al 100 % («tamaño real»; nada de «ajustar a la página»), en papel mate de 120 g/m² o más o en película mate, con impresora láser. Una tirada, una impresora, una bandeja: las hojas de una tirada comparten su escala.
print-step-measure-title = Medir
print-step-measure = las dos reglas de esta página con un calibre, del centro de una línea final al centro de la otra, con 0,05 mm. Comprobar otras dos páginas. Introducir la lectura: baywitness sheet KIT --measured-mm RIGHT,UP --corrected FILE escribe el archivo del juego con los tamaños impresos. Verificar los trabajos con ese archivo; imprimir desde el primero.
print-step-glue-title = Pegar
print-step-glue = sobre placas planas, rígidas y mates (composite de aluminio de 4 mm; chapa fina, toda igual, para el suelo): líneas a lápiz por el centro de cada hoja según los dibujos, adhesivo en aerosol en todo el dorso, líneas cortas del borde sobre las de lápiz, sin burbujas. Una placa en la que una regla recta muestra más de 0,2 mm de hueco no es plana.
print-step-white-title = Margen blanco
print-step-white = de una celda alrededor de cada cuadrado negro. Cortar por las marcas o por fuera, nunca dentro del margen; sin cinta, sin brillo, sin laminado que refleje las lámparas.
print-step-off-title = Retirar
print-step-off = la marca frontal y todas las placas metálicas antes de la calibración: lo que está a la vista de un sensor cambia lo que ve.
print-step-keep-title = Mantener
print-step-keep = el papel crece y encoge de 0,1 a 0,3 % con la humedad: medir de nuevo al cambiar la estación e introducirlo. Un juego que se cayó o se dobló se mide de nuevo antes de usarlo.
print-caution = Prevalecen la información de servicio del fabricante del vehículo y las normas locales. Trabajo para personal cualificado; los láseres y los vehículos elevados requieren sus propias precauciones. baywitness documenta el procedimiento y no lo sustituye.
print-assumes = El archivo del juego supone centros de hoja a { $layout } mm de los dibujos, hojas rectas a { $turn } grados y tamaños a { $scale } % (una desviación típica cada uno). Trabaje con la mitad de eso.
print-assumes-surveyed = El archivo del juego supone centros de hoja según la medición y tamaños a { $scale } % (una desviación típica). Trabaje con la mitad de eso.
print-column-holder = portamarcadores
print-column-role = qué es
print-column-drawing = dibujo, página
print-column-sheets = hojas, página
print-wrote = escrito { $file }: imprimir al 100 % en papel { $paper } y medir después las reglas de control
print-wrote-corrected = escrito { $file }: impreso al { $right } % hacia la derecha y al { $up } % hacia arriba

# Por qué no se imprimió nada
print-two-sides = { $width } x { $height }
print-marker-too-large = el marcador { $id } de { $holder } necesita { $needs } mm con su margen blanco, pero el papel { $paper } ofrece { $offers } mm: { $remedy }
print-board-too-large = el tablero necesita { $needs } mm con su margen blanco, pero el papel { $paper } ofrece { $offers } mm: { $remedy }
print-smaller-marker = darle un size_mm de { $size } o menos
print-larger-paper-or-marker = imprimir con --paper { $paper } o darle un size_mm de { $size } o menos
print-smaller-board = reducir el tablero por un factor de { $factor }
print-larger-paper-or-board = imprimir con --paper { $paper } o reducir el tablero por un factor de { $factor }
print-unknown-marker = el marcador { $id } no está en la familia { $family }, cuyos números van de 0 a { $last }: darle otro número
print-the-marker = marcador { $id }
print-of-the-board =
    { $what ->
        [marker] marcador del tablero
        [gap] separación del tablero
       *[square] casilla del tablero
    }
print-bad-size = { $what }: tamaño { $size } mm; indicar el tamaño en milímetros, mayor que cero
print-no-markers = el juego { $kit } no tiene ningún marcador que imprimir: añadir un [[carrier.marker]]
print-reading-off =
    { $direction ->
        [right] la regla hacia la derecha mide { $read } mm en lugar de { $nominal } mm: más de un { $limit } % de diferencia es un error de lectura o una impresora que ajusta el tamaño; imprimir al 100 % y leer de nuevo las dos reglas
       *[up] la regla vertical mide { $read } mm en lugar de { $nominal } mm: más de un { $limit } % de diferencia es un error de lectura o una impresora que ajusta el tamaño; imprimir al 100 % y leer de nuevo las dos reglas
    }
print-unknown-paper = papel desconocido «{ $name }»: usar a4, a3 o letter
print-no-pdf = no se puede escribir el PDF: { $why }
print-font-damaged = una fuente incorporada está dañada; compilar de nuevo el programa
