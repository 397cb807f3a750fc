# A fitted camera, on the terminal.
fit-parameter =
    { $name ->
        [focal-u] focal u
        [focal-v] focal v
        [centre-u] centro u
       *[centre-v] centro v
    }
fit-parameters-head = Parámetros con su incertidumbre típica (1 sigma):
fit-for-use = Apto para el uso: { $answer ->
        [yes] sí
       *[no] NO
    }
fit-verdict =
    { $answer ->
        [yes] Apto para el uso
       *[no] No apto para el uso
    }
fit-forbids = Impide el uso:
fit-advice =
    { $kind ->
        [forbids] No apto para el uso: { $advice }
       *[note] Nota: { $advice }
    }
fit-head = { $name }: objetivo { $model }, { $width } x { $height } px, de { $count } fotos
fit-head-noise = RMS { $rms } px por coordenada, ruido de esquinas { $noise } px ({ $factor } veces lo que indica el detector), { $freedom } grados de libertad
fit-per-photo = De foto a foto (1 sigma): distancia focal { $focal } % ({ $focal_freedom } grados de libertad), centro { $centre } px ({ $centre_freedom })
fit-turn = Mientras se leían las filas la cámara giró { $turn }° en torno a cada eje (1 sigma)
fit-board = Tablero: combado { $bend } mm de cresta a valle, y { $flex } mm distinto en cada foto (1 sigma); tenido en cuenta
fit-seen = Visto en el { $share } % del encuadre, inclinado hasta { $tilt }° entre fotos, girado hasta { $turn }°
fit-halves = Dos mitades ({ $first } y { $second } fotos): las proyecciones difieren hasta { $most } px ({ $shape } px sin focal ni centro), { $ratio } veces lo indicado ({ $agree ->
        [yes] concuerdan
       *[no] discrepan
    })
fit-left-out = Descartada: { $file }: { $why }
fit-wrote = escrito: { $file }
fit-looked-at = examinada: { $file }

# Why a photo is left out.
fit-out-size = es de { $width } x { $height } px, las demás de { $others_width } x { $others_height } px
fit-out-record = su propio registro nombra otra cámara u otra focal que el de las demás fotos
fit-out-no-board = no se encontró en ella ninguna parte del tablero (un ajedrezado debe verse entero)
fit-out-few-markers =
    { $count ->
        [one] solo se encontró en ella un marcador del tablero
       *[other] solo se encontraron en ella { $count } marcadores del tablero
    }
fit-out-no-pose = ninguna posición del tablero la explica
fit-out-zoomed =
    { $side ->
        [shorter] su focal es un { $off } % más corta que la de las demás fotos: con zoom, recortada o redimensionada
       *[longer] su focal es un { $off } % más larga que la de las demás fotos: con zoom, recortada o redimensionada
    }
fit-out-misfit = sus esquinas se apartan del ajuste { $ratio } veces más que las de otras fotos (¿borrosa, tablero movido o combado?)
fit-out-markers = el { $share } % de sus marcadores no está donde los tiene el tablero

# What to do about a fit.
fit-part =
    { $part ->
        [upper-left] la esquina superior izquierda
        [upper] el borde superior
        [upper-right] la esquina superior derecha
        [left] el borde izquierdo
        [middle] el centro
        [right] el borde derecho
        [lower-left] la esquina inferior izquierda
        [lower] el borde inferior
        [lower-right] la esquina inferior derecha
        [edges] los bordes
       *[corners] las esquinas
    }
fit-advice-noise = las esquinas se dispersan { $factor } veces más de lo que indica el detector: comprobar que el tablero es plano y está impreso según su archivo; las incertidumbres indicadas lo tienen en cuenta
fit-advice-too-few = solo se pudieron usar { $count } fotos: tomar de 12 a 20 del tablero
fit-advice-few = { $count } fotos dicen poco de cómo difieren las fotos: tomar de 12 a 20
fit-advice-many-out = se descartaron { $left_out } fotos y se usaron { $used }: ver por qué y tomar otras
fit-advice-coverage = el tablero se vio en el { $share } % del encuadre: falta llenar { $parts } (de la imagen guardada)
fit-advice-alike = las fotos se parecen: la dirección del tablero difiere { $tilt }° como mucho; inclinar el tablero (o rodearlo) de 30 a 45° a la izquierda, a la derecha, arriba y abajo
fit-advice-tilt = inclinar más el tablero: su dirección difiere { $tilt }° como mucho, 60° está bien
fit-advice-turn = en todas las fotos el tablero está igual de orientado: girar la cámara un cuarto de vuelta en algunas
fit-advice-focal = la distancia focal solo se conoce al { $u } % (hace falta { $most } %): más fotos con el tablero más inclinado
fit-advice-dark = el objetivo ajustado no muestra nada en una décima parte del encuadre o más: allí no se determinó su distorsión, llenar el encuadre con el tablero
fit-advice-frame = una décima parte del encuadre solo se conoce a { $u } px (hacen falta { $most } px): falta llenar { $parts }
fit-advice-bent = el tablero está combado { $bend } mm: pegarlo a una placa plana (vidrio, aluminio) y ajustar de nuevo
fit-advice-no-halves = muy pocas fotos para comparar dos mitades
fit-advice-other-lens = dos mitades de las fotos muestran objetivos distintos: sus proyecciones difieren { $shape } px en algún punto del encuadre, aparte de focal y centro (máximo { $most } px); el modelo de objetivo no es el correcto, el objetivo cambió entre las fotos, o muy pocas llegan a esa parte
fit-advice-halves-changed = dos mitades de las fotos difieren { $ratio } veces lo indicado (hasta { $most } px): cambió el objetivo entre ellas, o el tablero
fit-advice-halves-enlarged = dos mitades de las fotos difieren { $ratio } veces lo indicado (hasta { $most } px); las incertidumbres indicadas se ampliaron en ese factor
fit-advice-better-model = el objetivo no es de este modelo: ajustarlo con --model { $model }, que deja { $rms } px de residuos en lugar de { $own_rms } px y cuyas mitades difieren { $shape } px en lugar de { $own_shape } px (aparte de focal y centro)

# A camera from photos of a kit.
fit-kit-head = { $name }: objetivo { $model } de { $used } de { $count } fotos de un juego de marcadores
fit-kit-noise = RMS { $rms } px por coordenada ({ $factor } veces lo que indica el detector)
fit-kit-known = Nueve décimas partes del encuadre se conocen a { $u } px, aparte de focal y centro
fit-kit-too-few = solo se pudieron usar { $count } fotos: tomar { $least } o más
fit-kit-focal = la distancia focal solo se conoce al { $u } % (hace falta { $most } %): acercarse, para que haya marcadores cercanos y lejanos en una misma foto
fit-kit-frame = una décima parte del encuadre solo se conoce a { $u } px (hacen falta { $most } px): poner marcadores en las esquinas de algunas fotos, o ajustar con un tablero

# The fitted camera's page.
fit-title = Ajuste de cámara: { $name }
fit-lens-title = Objetivo
fit-lens = { $model }, RMS { $rms } px por coordenada, ruido de esquinas { $factor } veces lo que indica el detector.
fit-lens-varies = De foto a foto (1 sigma) la focal varía un { $focal } % y el centro { $centre } px. Mientras se leían las filas la cámara giró { $turn }° en torno a cada eje (1 sigma).
fit-column-parameter = Parámetro
fit-column-value = Valor
fit-column-u = Incertidumbre típica
fit-circles-title = Cuánto puede aparecer desplazado un punto
fit-circles-drawing = Círculos sobre el encuadre: cuánto puede aparecer desplazado un punto
fit-circles-size = tamaño de { $size } mm
fit-circles-caption = Un punto a { $distance } m de la cámara aparece como mucho así de lejos de su sitio (95 %) porque el objetivo no se conoce mejor: { $best } mm donde mejor se conoce, { $worst } mm en el peor lugar del encuadre. Se descuenta un giro de toda la cámara, pues cada foto halla el suyo. Un guion: allí el objetivo no muestra nada.
fit-residuals-title = Residuos
fit-residuals-drawing = Residuos sobre el encuadre
fit-residuals-caption = Hallado menos previsto para { $count } esquinas de todas las fotos, líneas { $factor } veces su longitud real. Vecinas que apuntaran igual en muchas fotos serían un error del modelo de objetivo.
fit-coverage-title = Dónde se vio el tablero
fit-coverage-drawing = Número de esquinas en cada parte del encuadre
fit-coverage-caption = Esquinas de todas las fotos en cada parte de la imagen guardada: { $share } % del encuadre. Entre fotos el tablero se inclinó hasta { $tilt }° y se giró hasta { $turn }°.
fit-halves-title = Dos mitades de las fotos
fit-halves-few = Muy pocas fotos para comparar dos mitades.
fit-halves-page = Una de cada dos fotos frente a las demás: los dos objetivos proyectan un punto como mucho a { $most } px ({ $shape } px aparte de focal y centro), { $ratio } veces lo indicado, donde hasta { $limit } es azar: { $agree ->
        [yes] concuerdan.
       *[no] discrepan.
    }
fit-photos-title = Fotos
fit-column-photo = Foto
fit-column-corners = Esquinas
fit-column-rms = RMS, px
fit-column-focal = Distancia focal
fit-column-centre = Centro, px
fit-corners = { $found } de { $count }
fit-left-out-title = Descartadas

# A surveyed kit.
fit-survey-title = Medición de { $kit }
fit-survey-serial = Número de serie { $serial }
fit-survey-head = { $name }: { $markers } marcadores en { $carriers } portamarcadores a partir de { $used } de { $count } fotos; las esquinas se dispersan { $factor } veces lo que indica el detector, { $freedom } grados de libertad
fit-survey-carrier = { $name }: { $count } marcadores, desviados { $moved } mm por coordenada, ahora conocidos entre sí a { $known } mm
fit-survey-column-marker = Marcador
fit-survey-column-photos = Fotos
fit-survey-column-moved = Hallado - archivo, mm (x y z)
fit-survey-column-u-shape = u entre marcadores, mm
fit-survey-column-u-centre = u en el portamarcadores, mm
fit-survey-column-turned = Girado, °
fit-survey-column-markers = Marcadores
fit-length = Longitud { $length }: { $against ->
        [sizes] los tamaños de marcador indicados
       *[others] las demás
    } dan { $expected } mm +- { $u }, E_n { $score }: { $agrees ->
        [yes] concuerda
       *[no] DISCREPA
    }
fit-scale = Escala de { $source ->
        [lengths] las longitudes medidas
       *[sizes] los tamaños de marcador indicados
    }; los marcadores están impresos con { $scale } % +- { $u } % (1 sigma) respecto a lo indicado
fit-survey-file = Los lugares del archivo se desviaban { $off } mm por coordenada (1 sigma); el sistema propio de cada portamarcadores se conoce a eso dividido por la raíz de su número de marcadores
fit-survey-halves = Dos mitades ({ $first } y { $second } fotos): los centros difieren { $rms } mm por coordenada, { $most } mm como mucho (marcador { $marker }), { $ratio } veces lo indicado ({ $agree ->
        [yes] concuerdan
       *[no] discrepan
    })
fit-survey-halves-page = Una de cada dos fotos frente a las demás, { $count } marcadores: los centros difieren { $rms } mm por coordenada, { $most } mm como mucho (marcador { $marker }). En relación con su incertidumbre indicada, la diferencia es { $ratio } (hasta { $limit } es azar): { $agree ->
        [yes] las mitades concuerdan.
       *[no] las mitades discrepan.
    }
fit-survey-photo-out = Descartada: { $file }: no comparte ningún marcador con las demás
fit-survey-left-out = Sin medir: { $what }: { $why }
fit-survey-left-out-title = Sin medir
fit-survey-left-out-line = { $what }: { $why }
fit-survey-no-part = no participó
fit-survey-scale-title = Escala
fit-survey-lengths = Longitudes medidas frente a todo lo demás; por encima de 1, E_n dice que discrepan (ISO/IEC 17043, k = 2):
fit-survey-frame = Las fotos fijan los marcadores entre sí. Dónde está el sistema propio del portamarcadores (referencia del buje, punto de mira) se deduce del archivo del juego: la forma hallada se coloca sobre él con el mejor ajuste rígido, y lo que los errores del archivo ({ $off } mm, 1 sigma, hallados aquí) hacen a ese ajuste forma parte de «u en el portamarcadores».
fit-survey-caption = Visto desde donde miran los marcadores, bordes superiores de los códigos en negrita. Rojo: del centro del archivo al hallado, { $factor } veces su longitud real; disco: el doble de su incertidumbre típica. Números: marcador y cuánto se halló por delante (+) de su sitio, mm.
fit-survey-drawing = { $carrier }: lugares hallados de sus marcadores frente al archivo del juego
fit-survey-markers-on = marcador { $markers } en { $carrier }
fit-survey-marker = marcador { $marker }
fit-survey-holder = { $name }
fit-survey-unseen =
    { $seen ->
        [none] ninguna foto lo muestra
       *[one] una foto lo muestra, hacen falta al menos dos
    }
fit-survey-ambiguous = dos posiciones encajan igual de bien: tomar fotos de lado que lo muestren con otros
fit-survey-one-marker = su único marcador es el portamarcadores: no hay nada que medir salvo su tamaño
fit-survey-apart = menos de dos de sus marcadores se midieron juntos: queda como lo tiene el archivo del juego
fit-survey-too-few = solo se pudieron usar { $count } fotos: tomar { $enough } desde todos los lados
fit-survey-few = { $count } fotos apenas pueden contradecirse: tomar { $enough }
fit-survey-length =
    { $against ->
        [sizes] la longitud { $length } discrepa de los tamaños de marcador del archivo: se esperaban { $expected } mm (E_n { $score }); medirla de nuevo, o las impresiones son de otro tamaño que el indicado
       *[others] la longitud { $length } discrepa de las demás longitudes: se esperaban { $expected } mm (E_n { $score }); medirla de nuevo
    }
fit-survey-no-length = no se midió ninguna longitud, así que la escala es la de los tamaños de marcador indicados: medir una lo más larga posible (--length)
fit-survey-halves-differ =
    { $outcome ->
        [moved] dos mitades de las fotos difieren { $ratio } veces lo indicado (hasta { $most } mm, marcador { $marker }): algo se movió entre las fotos; medir de nuevo, o los portamarcadores por separado (--apart)
       *[enlarged] dos mitades de las fotos difieren { $ratio } veces lo indicado (hasta { $most } mm, marcador { $marker }): las incertidumbres indicadas se ampliaron en ese factor
    }
fit-survey-no-halves = no se pueden comparar dos mitades de las fotos: son muy pocas, o la mitad no fija los marcadores
fit-survey-noise = las esquinas se dispersan { $factor } veces más de lo que indica el detector: ¿marcadores planos?, ¿nada se movió? Las incertidumbres indicadas lo tienen en cuenta
fit-survey-far-off = los marcadores están a { $off } mm (1 sigma) de donde los tiene el archivo del juego, así que nada dice dónde están la referencia del buje o el punto de mira: ¿es el archivo de este juego?, ¿hojas intercambiadas? Corregir los centros en él y medir de nuevo
fit-survey-loose = los marcadores de { $carrier } se conocen a { $known } mm respecto a su sistema propio (referencia del buje, punto de mira): el archivo del juego no dice mejor dónde están; medirlos en el portamarcadores e introducir sus centros
fit-survey-weak =
    { $count ->
        [one] el lugar del marcador { $markers } no se conoce mejor que a { $most } mm: tomar más fotos de él, más cerca y de ambos lados
       *[other] los lugares de los marcadores { $markers } no se conocen mejor que a { $most } mm: tomar más fotos de ellos, más cerca y de ambos lados
    }

# A fixed reference checked again.
fit-recheck = { $day }: { $count } marcadores; el que más se movió: { $marker }, { $most } mm; mayor movimiento { $sigmas } veces su incertidumbre típica; separación { $spacing } %
fit-recheck-moved = Algo se movió desde la primera medición: la pared, una hoja, o el archivo de cámara ya no es correcto.
fit-recheck-outside = { $name }: { $value } está fuera de sus límites de control, de { $low } a { $high }; buscar la causa antes del próximo trabajo.
fit-recheck-fine = En orden.
fit-recheck-series =
    { $series ->
        [move] Mayor movimiento, mm
       *[spacing] Separación, %
    }
fit-recheck-title = Comprobaciones de { $reference }
fit-recheck-chart = Gráfico de control: { $name }
fit-recheck-line =
    { $line ->
        [mean] media
        [upper] límite superior
       *[lower] límite inferior
    }
fit-recheck-all = Todas las comprobaciones
fit-recheck-note = Los movimientos son respecto a la primera medición. Un movimiento de más de { $sigmas } veces su incertidumbre típica no es azar. Separación: distancias entre marcadores en relación con sus tamaños impresos; baja donde el papel ha crecido.
fit-recheck-column-day = Día
fit-recheck-column-most = El que más se movió: marcador
fit-recheck-column-by = mm
fit-recheck-column-sigmas = Mayor movimiento entre su incertidumbre
fit-recheck-caption = Gráfico de valores individuales: media y límites ({ $factor } rangos móviles medios) de las comprobaciones anteriores a la última{ $provisional ->
        [yes] ; provisional hasta que haya { $enough }. Un rombo rojo está fuera.
       *[no] . Un rombo rojo está fuera.
    }
fit-recheck-no-limits = Los límites aparecen con la tercera comprobación.

# Why no camera could be fitted, no kit surveyed.
fit-further = { $first }; { $rest }
fit-of = { $what }: { $why }
fit-no-too-few = no se puede ajustar una cámara: { $left } de { $photos } fotos sirvieron, hacen falta al menos 3
fit-no-start = ninguna lente explica las { $photos } fotos: ¿es el tablero del archivo, está plano y las fotos no están editadas?
fit-no-kit = no se puede ajustar una cámara a las fotos del juego de marcadores: { $why }
fit-no-settled = el ajuste de { $photos } fotos no convergió: no determinan la lente; tomar de 12 a 20 fotos con el tablero en todas las partes del encuadre, inclinado de 30° a 45° hacia todos los lados
fit-no-photo = no se indicó ninguna foto
fit-no-same-size = { $file } no tiene { $width } x { $height } px como { $first }: ajustar cada tamaño por separado
fit-no-survey = no se puede medir el juego de marcadores: { $why }
fit-no-camera = no se puede medir { $file }: { $why }
fit-no-camera-size = la foto tiene { $width } x { $height } px, pero la cámara { $camera } es para { $for_width } x { $for_height } px: usar la foto tal como la guardó la cámara
fit-no-camera-fits =
    { $known ->
        [yes] ningún archivo de cámara concuerda ({ $width } x { $height } px, { $make } { $model }): ajustar la cámara con un tablero, o indicarla con --camera
       *[no] ningún archivo de cámara concuerda ({ $width } x { $height } px, marca o modelo no registrados): ajustar la cámara con un tablero, o indicarla con --camera
    }
fit-no-camera-two = dos archivos de cámara concuerdan, { $first } y { $second }: indicar uno con --camera
fit-no-pair = ningún portamarcadores tiene dos marcadores que las { $photos } fotos sitúen juntos sin duda: tomar seis o más fotos desde todos los lados, cada una con el mayor número posible de marcadores
fit-no-length = no se puede usar la longitud { $length }: { $why }
fit-no-length-unseen = las fotos no muestran sus dos marcadores junto con otros (¿son correctos los números?)
fit-no-length-unmeasured = uno de sus marcadores no se midió
fit-no-length-contradicts = las longitudes contradicen las fotos
fit-no-length-text =
    { $problem ->
        [same] «{ $text }» tiene la misma esquina en ambos extremos: escribirla como ID:CORNER,ID:CORNER=MM~U, por ejemplo 10:0,13:1=1200.4~0.3: esquinas 0 superior izquierda, 1 superior derecha, 2 inferior derecha, 3 inferior izquierda del marcador en posición vertical (o tl, tr, br, bl), U la incertidumbre típica en mm
       *[form] «{ $text }» no es una longitud: escribirla como ID:CORNER,ID:CORNER=MM~U, por ejemplo 10:0,13:1=1200.4~0.3: esquinas 0 superior izquierda, 1 superior derecha, 2 inferior derecha, 3 inferior izquierda del marcador en posición vertical (o tl, tr, br, bl), U la incertidumbre típica en mm
    }
fit-no-first-survey = la referencia nunca se midió: medirla una vez y comprobar con el juego de marcadores que eso escribe
fit-no-place = las fotos no determinan { $holder }: fotografiarlo desde dos lados
fit-no-holder = no se midió en él ningún portamarcadores { $holder }
fit-no-seatings = { $count } fijaciones no dicen nada de la repetibilidad: fijar la placa al menos tres veces; diez es lo bueno
