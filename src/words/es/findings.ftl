# Qué otra cosa explicaría las fotos casi igual de bien.
findings-rivals = Casi igual de probable: { $rivals }.
findings-if-moved = { $body } se movió entre las fotos
findings-if-size = los marcadores de un portamarcadores tienen otro tamaño ({ $body })
findings-if-size-kind =
    los marcadores de todas las { $kind ->
        [floor] láminas de suelo
       *[plates] placas de las ruedas
    } tienen otro tamaño
findings-if-half-turned = la imagen se giró 180 grados
findings-if-sizes = todos los marcadores tienen otro tamaño que el del archivo del juego
findings-if-zoomed = { $photo } se tomó con zoom
findings-if-focal = la cámara tiene otra distancia focal
findings-if-displaced = el marcador { $marker } ({ $body }) está en otro lugar que en el archivo del juego
findings-if-marker = el marcador { $marker } ({ $body }) se detectó mal en { $photo }
findings-if-lens-one = { $photo } se tomó con otro objetivo
findings-if-lens = las fotos se tomaron con otro objetivo
findings-if-off-floor =
    { $count ->
        [one] la lámina de suelo { $sheets } está fuera del plano del suelo
       *[other] las láminas de suelo { $sheets } están fuera del plano del suelo
    }

# Qué sería un valor con una explicación de un hallazgo; va delante de un valor.
findings-with-place =
    { $count ->
        [one] con { $body } donde solo { $photos } lo muestra
       *[other] con { $body } donde solo { $photos } lo muestran
    }
findings-with-sizes = con otro tamaño de todos los marcadores
findings-with-size = con otro tamaño de los marcadores de un portamarcadores ({ $body })
findings-with-focal = con otra distancia focal de { $photos }
findings-with-lens = con otro objetivo para { $photos }
findings-with-rear-floor = con el suelo bajo las ruedas traseras en lugar del plano de las láminas
findings-with-floor =
    { $count ->
        [one] con un suelo sin la lámina { $sheets }
       *[other] con un suelo sin las láminas { $sheets }
    }
findings-with-not-flush = con { $body } sin asentar a ras en su rueda
findings-without-readings = sin las lecturas
findings-with-typed-wrong = dando por erróneo lo introducido

# A qué distancia están dos lugares de un cuerpo.
findings-step-far = Los dos lugares están muy separados.
findings-step = Los dos lugares distan unos { $mm } mm y { $degrees }°.

findings-stand-moved = { $body } está en { $photos } en otro lugar que en las demás fotos. { $step } No dejar que nadie toque el soporte y repetir todas las fotos.
findings-arch-moved = { $body } está en { $photos } en otra posición sobre su rueda que en las demás fotos. { $step } Recibió un golpe, alguien subió o bajó, o la suspensión aún se asentaba. No dejar subir a nadie y repetir todas las fotos.
findings-body-moved = { $body } está en { $photos } en otro lugar que en las demás fotos. { $step } Recibió un golpe o el vehículo se movió. Fijarla y repetir todas las fotos.
findings-plate-moved = { $body } está en { $photos } en otra posición que en las demás fotos. { $step } Resbaló en su rueda o esa rueda se movió. Asentarla de nuevo y repetir todas las fotos.
findings-vehicle-rolled =
    { $way ->
        [forward] El vehículo está en { $photos } unos { $mm } mm más adelante que en las demás fotos. Calzar las ruedas, comprobar de nuevo el soporte y repetir todas las fotos.
       *[rearward] El vehículo está en { $photos } unos { $mm } mm más atrás que en las demás fotos. Calzar las ruedas, comprobar de nuevo el soporte y repetir todas las fotos.
    }
findings-vehicle-nudged = El vehículo está en { $photos } a unos { $mm } mm de donde estaba antes de mover el soporte, girado { $degrees }°: recibió un empujón. Calzar las ruedas y repetir dos fotos de todo.
findings-sheet-slid = { $body } está en { $photo } en otro lugar que en las fotos de antes o después de otro movimiento del soporte, a unos { $mm } mm y { $degrees }°: alguien le dio un golpe o el vehículo se movió. Volver a colocarla, calzar las ruedas y repetir dos fotos de todo.
findings-phases-differ = { $body } estaba después de la calibración en otro lugar que antes, a unos { $mm } mm y { $degrees }°. Los valores son los de antes; nadie sabe dónde estaba durante la calibración. Montar y calibrar de nuevo.

findings-plates-swapped-sides =
    { $axle ->
        [front] Las placas de las ruedas delanteras están intercambiadas: la izquierda está en la rueda derecha. Poner cada una en su rueda, en posición vertical correcta, y repetir las fotos.
       *[rear] Las placas de las ruedas traseras están intercambiadas: la izquierda está en la rueda derecha. Poner cada una en su rueda, en posición vertical correcta, y repetir las fotos.
    }
findings-plates-swapped-ends =
    { $side ->
        [left] Las placas izquierdas, delantera y trasera, están intercambiadas: la delantera está en la rueda trasera. Poner cada una en su rueda y repetir las fotos.
       *[right] Las placas derechas, delantera y trasera, están intercambiadas: la delantera está en la rueda trasera. Poner cada una en su rueda y repetir las fotos.
    }
findings-upside-down = { $body } está del revés. Ponerlo en la posición correcta y repetir las fotos.
findings-marker-turned = El marcador { $marker } está girado en su portamarcadores ({ $body }). Montarlo como muestra el dibujo del juego, en la posición correcta, y repetir las fotos.
findings-markers-exchanged = Los marcadores { $one } ({ $body }) y { $other } ({ $other_body }) están intercambiados. Montarlos como muestra el dibujo del juego y repetir las fotos.
findings-plate-not-flush =
    { $axle ->
        [front] Las direcciones de las placas delanteras difieren { $degrees }°, más de lo que puede ser la convergencia: { $body } probablemente no está a ras en su rueda. Asentarla de nuevo y repetir las fotos.
       *[rear] Las direcciones de las placas traseras difieren { $degrees }°, más de lo que puede ser la convergencia: { $body } probablemente no está a ras en su rueda. Asentarla de nuevo y repetir las fotos.
    }
findings-plate-off-hub-track = Las placas de las ruedas traseras están a { $rear } mm una de otra y las delanteras a { $front } mm, y los ejes de ningún vehículo difieren tanto: una placa no está en el buje de su rueda, o está en otro vehículo. Asentar cada placa en su propio buje y repetir las fotos.
findings-plate-off-hub-thrust = Según las placas, las ruedas traseras apuntan { $degrees }° hacia un lado, más que las de ningún vehículo: una placa no está en el buje de su rueda, o está en otro vehículo. Asentar cada placa en su propio buje y repetir las fotos.
findings-size-disagrees =
    { $size ->
        [wheelbase] Las fotos muestran una distancia entre ejes de { $measured } mm y se introdujeron { $typed } mm: una placa de rueda está fuera de su buje, o las medidas introducidas son de otro vehículo o están mal escritas. Asentar las placas en sus bujes y repetir las fotos, o corregir lo introducido.
        [nose] Las fotos muestran la marca frontal { $measured } mm por delante del eje trasero y se introdujeron { $typed } mm: la marca está en mal lugar, una placa de rueda trasera está fuera de su buje, o las medidas introducidas son de otro vehículo o están mal escritas. Poner la marca en el punto más avanzado del vehículo, asentar las placas en sus bujes y repetir las fotos, o corregir lo introducido.
        [front_track] Las fotos muestran un ancho de vía delantero de { $measured } mm de buje a buje y se introdujeron { $typed } mm: una placa de rueda delantera está fuera de su buje, o las medidas introducidas son de otro vehículo o están mal escritas. Asentar las placas en sus bujes y repetir las fotos, o corregir lo introducido.
       *[rear_track] Las fotos muestran un ancho de vía trasero de { $measured } mm de buje a buje y se introdujeron { $typed } mm: una placa de rueda trasera está fuera de su buje, o las medidas introducidas son de otro vehículo o están mal escritas. Asentar las placas en sus bujes y repetir las fotos, o corregir lo introducido.
    }
findings-size-mistyped =
    { $size ->
        [wheelbase] Las fotos muestran una distancia entre ejes de { $measured } mm y se introdujeron { $typed } mm: tan lejos es casi seguro un error de tecleo o la medida de otro vehículo. Corregir lo introducido, en mm, y verificar de nuevo; si es correcto, mirar dónde están las placas y la marca frontal.
        [nose] Las fotos muestran la marca frontal { $measured } mm por delante del eje trasero y se introdujeron { $typed } mm: tan lejos es casi seguro un error de tecleo o la medida de otro vehículo. Corregir lo introducido, en mm, y verificar de nuevo; si es correcto, mirar dónde están las placas y la marca frontal.
        [front_track] Las fotos muestran un ancho de vía delantero de { $measured } mm de buje a buje y se introdujeron { $typed } mm: tan lejos es casi seguro un error de tecleo o la medida de otro vehículo. Corregir lo introducido, en mm, y verificar de nuevo; si es correcto, mirar dónde están las placas y la marca frontal.
       *[rear_track] Las fotos muestran un ancho de vía trasero de { $measured } mm de buje a buje y se introdujeron { $typed } mm: tan lejos es casi seguro un error de tecleo o la medida de otro vehículo. Corregir lo introducido, en mm, y verificar de nuevo; si es correcto, mirar dónde están las placas y la marca frontal.
    }

findings-not-flat = { $body } muestra sus impresiones a unos { $size } mm de donde las mostrarían unas planas: el papel se comba o se ondula, o se imprimió de forma irregular. Por eso su lugar se conoce peor. Pegarlas planas sobre algo rígido, o imprimirlas de nuevo.
findings-prints-not-flat = Las impresiones de { $count } portamarcadores aparecen a unos { $size } mm de donde aparecerían unas planas: el papel se comba o se ondula, se imprimió de forma irregular, o el teléfono suavizó las fotos (modo noche). Por eso su lugar se conoce peor. Pegarlas planas sobre algo rígido, o imprimirlas de nuevo; fotografiar sin modo noche.
findings-marker-displaced = Los marcadores { $markers } ({ $body }) y los demás del mismo portamarcadores no están entre sí como dice el archivo del juego (unos { $mm } mm de diferencia): algo está doblado, se reparó o se montó en otro lugar, o el archivo es de otro. Cuáles están bien no lo dicen las fotos. Arreglarlo o levantar las medidas del portamarcadores, y verificar de nuevo.
findings-holder-deformed = Los marcadores de un portamarcadores ({ $body }) no están entre sí como dice el archivo del juego: está doblado, sus impresiones se pegaron con menos cuidado de lo que dice el archivo, o el archivo es de otro. Levantar las medidas del portamarcadores, o indicar en el archivo lo bien que se conocen los lugares, y verificar de nuevo.
findings-print-scale =
    { $size ->
        [smaller] Los marcadores de un portamarcadores ({ $body }) parecen un { $percent } % más pequeños que en el archivo del juego. Medir con una regla el cuadrado negro de uno e introducir el valor, o imprimir de nuevo al 100 %.
       *[larger] Los marcadores de un portamarcadores ({ $body }) parecen un { $percent } % más grandes que en el archivo del juego. Medir con una regla el cuadrado negro de uno e introducir el valor, o imprimir de nuevo al 100 %.
    }
findings-print-scale-kind =
    Los marcadores de todas las { $kind ->
        [floor] láminas de suelo
       *[plates] placas de las ruedas
    } parecen un { $percent } % más { $size ->
        [smaller] pequeños
       *[larger] grandes
    } que en el archivo del juego. Medir con una regla el cuadrado negro de uno e introducir el valor, o imprimirlas de nuevo al 100 %.
findings-print-scales =
    { $size ->
        [smaller] Todos los marcadores parecen un { $percent } % más pequeños que en el archivo del juego, respecto a sus separaciones. Medir con una regla el cuadrado negro de uno e introducir el valor, o imprimir de nuevo al 100 %.
       *[larger] Todos los marcadores parecen un { $percent } % más grandes que en el archivo del juego, respecto a sus separaciones. Medir con una regla el cuadrado negro de uno e introducir el valor, o imprimir de nuevo al 100 %.
    }

findings-of-photo = Foto { $photo }: { $why }.
findings-mirrored = { $photo } está reflejada: izquierda y derecha están cambiadas y no se puede leer ningún código. Tomarla con la cámara principal, no con la frontal, y entregarla tal como se guardó.
findings-focal-of-all =
    { $length ->
        [longer] Todas las fotos corresponden a una distancia focal un { $percent } % más larga que la de la cámara { $camera }: se usó otra cámara u otro objetivo, o todas tienen el mismo zoom. Usar el archivo de la cámara que las tomó o repetirlas.
       *[shorter] Todas las fotos corresponden a una distancia focal un { $percent } % más corta que la de la cámara { $camera }: se usó otra cámara u otro objetivo, o todas tienen el mismo zoom. Usar el archivo de la cámara que las tomó o repetirlas.
    }
findings-half-turned = Al revés respecto al objetivo de la cámara: { $photos }. Guardada con un giro de 180 grados, una imagen tiene el centro y los defectos del objetivo en el lado equivocado. Dar las fotos tal como la cámara las guardó.
findings-lens-of-all = Las fotos no corresponden al objetivo de la cámara { $camera }: las esquinas se desvían { $times } veces su ruido, y otro objetivo lo explicaría. Usar el archivo de la cámara que las tomó o ajustarla de nuevo.
findings-lens-of-one = { $photo } no corresponde al objetivo de la cámara { $camera }, al que sí corresponden las demás fotos: la tomó otro teléfono del mismo modelo u otro objetivo de este. Tomar todas las fotos con el teléfono de ese archivo de cámara, o quitar esta foto del trabajo.
findings-zoomed-by-record = { $photo } se tomó con zoom digital de { $times } aumentos (según su EXIF). Repetirla sin zoom.
findings-zoomed =
    { $length ->
        [longer] { $photo } corresponde a una distancia focal un { $percent } % más larga de lo que permite su archivo de cámara: zoom, recorte u otro objetivo. Repetirla sin zoom.
       *[shorter] { $photo } corresponde a una distancia focal un { $percent } % más corta de lo que permite su archivo de cámara: zoom, recorte u otro objetivo. Repetirla sin zoom.
    }
findings-resized = { $photo } tiene { $width } x { $height } px, pero sus propios datos indican { $stated_width } x { $stated_height }: se guardó de nuevo con otro tamaño. Usar la foto tal como la guardó la cámara.
findings-reused =
    { $how ->
        [bytes] { $photo } es la misma imagen que { $earlier } (byte a byte): no demuestra nada más. Tomar una foto desde otro lugar.
        [mirrored] { $photo } es la misma imagen que { $earlier } (reflejada): no demuestra nada más. Tomar una foto desde otro lugar.
       *[again] { $photo } es la misma imagen que { $earlier } (guardada de nuevo, escalada o recortada): no demuestra nada más. Tomar una foto desde otro lugar.
    }
findings-blurred = { $photo } está borrosa (unos { $px } px). Sujetar firme, apoyar los codos o usar más luz, y repetirla.
findings-blurred-no-marker = { $photo } está tan borrosa que no se encontró ningún marcador. Sujetar firme, apoyar los codos o usar más luz, y repetirla.
findings-glare =
    { $count ->
        [one] Reflejo de una lámpara en el marcador { $markers } de { $photo }. Dar un paso a un lado y repetirla.
       *[other] Reflejo de una lámpara en los marcadores { $markers } de { $photo }. Dar un paso a un lado y repetirla.
    }
findings-burnt-out = { $photo } es demasiado clara: el blanco está quemado alrededor de los marcadores. Apagar el flash o tocar el soporte en la pantalla para que el teléfono exponga para él, y repetirla.
findings-dark = { $photo } es demasiado oscura: el negro y el blanco de los marcadores apenas se distinguen. Usar más luz y repetirla.
findings-dark-no-marker = { $photo } es tan oscura que no se encontró ningún marcador. Usar más luz y repetirla.
findings-light-changed = En { $photo } el teléfono cambió la luz de un lugar a otro: las esquinas se conocen con { $stated } px; en una foto revelada sin retoques serían { $plain } px. Desactivar HDR, modo noche y optimización de escena, o revelar una imagen en bruto sin retoques, y repetirla.
findings-too-alike = { $first } y { $second } se tomaron casi desde la misma dirección ({ $degrees }° de diferencia). Tomar una de ellas desde el otro lado del soporte.
findings-focal-contradicts = Los datos de { $photo } indican una distancia focal de { $stated } mm (equivalente a 35 mm), pero la imagen tiene de { $least } a { $most } mm: se recortó, o los datos son de otra foto. Entregar el archivo original.

findings-edited = Un programa escribió { $photo } después de tomarla: { $traces }. Eso no prueba ningún cambio de la imagen, pero el archivo original no dejaría dudas.
findings-edited-other = Un programa escribió { $photo } después de tomarla: { $traces }; está comprimida de otro modo que las demás fotos de esta cámara en el trabajo. Eso no prueba ningún cambio de la imagen, pero el archivo original no dejaría dudas.
findings-trace-program = sus datos nombran un programa de edición ({ $program })
findings-trace-later =
    { $seconds ->
        [one] se escribió { $seconds } segundo después de tomarla
       *[other] se escribió { $seconds } segundos después de tomarla
    }
findings-trace-editor = contiene el bloque de datos de un editor de imágenes
findings-trace-history = contiene un historial de ediciones (XMP)
findings-trace-credentials = sus credenciales de contenido no corresponden a sus bytes ({ $failures })
findings-trace-listed = sus credenciales de contenido enumeran ediciones ({ $edits })
# Lo que una hoja pide a las firmas de las cámaras.
findings-credentials-lacking = La hoja de montaje exige credenciales de contenido en cada foto; a estas fotos les faltan: { $photos }. Tomar las fotos con una cámara que firme lo que toma, entregar los archivos originales y pedir que se indiquen las anclas de confianza de su fabricante.
findings-credentials-of-photo = { $photo } ({ $why })
findings-credentials-none = no se encontró ninguna
findings-credentials-edited = su manifiesto enumera ediciones: { $edits }
findings-credentials-not-built-in = La hoja de montaje exige credenciales de contenido en cada foto, y este programa se construyó sin ellas. Verificar con un programa construido con la opción credentials.
findings-thumbnail = La miniatura de { $photo } muestra otra imagen que la foto (correlación { $likeness }). Puede que la imagen se haya sustituido o recortado; entregar el archivo original.
findings-rendered =
    { $place ->
        [both] Este programa renderizó { $photo }, como dicen sus datos y sus píxeles; ninguna cámara la tomó, y el trabajo no lo dice. No demuestra nada: entregar la foto que escribió la cámara.
        [record] Este programa renderizó { $photo }, como dicen sus datos; ninguna cámara la tomó, y el trabajo no lo dice. No demuestra nada: entregar la foto que escribió la cámara.
       *[picture] Este programa renderizó { $photo }, como dicen sus píxeles; ninguna cámara la tomó, y el trabajo no lo dice. No demuestra nada: entregar la foto que escribió la cámara.
    }
findings-noise-repeated = { $photo } y { $earlier } tienen el mismo ruido en los marcadores { $markers } (correlación { $correlation }), aunque no son la misma imagen: ninguna cámara repite su ruido. Puede que una se haya hecho a partir de la otra; volver a tomar la foto.
findings-without-noise = { $body } muestra { $share } del ruido que tienen los demás marcadores en { $photo }: puede que un programa haya insertado sus marcadores. Entregar el archivo original o volver a tomar la foto.
findings-compression-differs = { $body } muestra { $share } de la compresión anterior que muestran los demás marcadores en { $photo }: sus marcadores pueden haberse insertado después. Entregue el archivo original o repita la foto.

findings-floor-sheet = { $body } no está en el plano de las demás láminas de suelo (unos { $mm } mm y { $degrees }° fuera): el suelo se inclina o se quiebra allí, o la lámina está curvada. Alisar la lámina; si es el suelo, usar un puesto nivelado.
findings-floor-bends = El suelo se quiebra delante del vehículo: las láminas { $sheets } no están en el plano de las más cercanas a él (unos { $mm } mm y { $degrees }° fuera). Usar un puesto nivelado.
findings-floor-below-wheels =
    { $way ->
        [higher] El plano de las láminas de suelo está { $mm } mm más alto que el suelo bajo las ruedas traseras (altura de buje introducida: { $typed } mm): el suelo se inclina o se quiebra entre vehículo y soporte, o la altura introducida es errónea. Comprobar el suelo con un nivel de burbuja; usar un puesto nivelado.
       *[lower] El plano de las láminas de suelo está { $mm } mm más bajo que el suelo bajo las ruedas traseras (altura de buje introducida: { $typed } mm): el suelo se inclina o se quiebra entre vehículo y soporte, o la altura introducida es errónea. Comprobar el suelo con un nivel de burbuja; usar un puesto nivelado.
    }
findings-wheels-uneven =
    { $lower ->
        [rear_left] El buje trasero izquierdo está { $mm } mm más bajo sobre las láminas de suelo que el derecho: un neumático desinflado, un taco o un plato giratorio bajo una rueda, una placa fuera de su buje, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
        [rear_right] El buje trasero derecho está { $mm } mm más bajo sobre las láminas de suelo que el izquierdo: un neumático desinflado, un taco o un plato giratorio bajo una rueda, una placa fuera de su buje, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
        [front_left] El buje delantero izquierdo está { $mm } mm más bajo sobre las láminas de suelo que el derecho: un neumático desinflado, un taco o un plato giratorio bajo una rueda, una placa fuera de su buje, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
        [front_right] El buje delantero derecho está { $mm } mm más bajo sobre las láminas de suelo que el izquierdo: un neumático desinflado, un taco o un plato giratorio bajo una rueda, una placa fuera de su buje, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
        [front] Los bujes delanteros están { $mm } mm más bajos sobre las láminas de suelo que los traseros: ruedas sobre tacos o platos giratorios, neumáticos desinflados, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
       *[rear] Los bujes traseros están { $mm } mm más bajos sobre las láminas de suelo que los delanteros: ruedas sobre tacos o platos giratorios, neumáticos desinflados, o el suelo bajo las ruedas es otro plano que el de las láminas. Mirar los neumáticos y el suelo, y repetir las fotos.
    }
findings-two-poses = { $body } encaja en dos posiciones que concuerdan igual de bien con las fotos. Tomar una foto más desde otra dirección, más cerca.
findings-not-seen = { $body } no está en ninguna foto utilizable. Tomar una foto más que muestre también otros dos portamarcadores.
findings-steering =
    { $way ->
        [left] Las ruedas delanteras apuntan { $degrees }° a la izquierda. Centrar la dirección, comprobar de nuevo el soporte y repetir las fotos.
       *[right] Las ruedas delanteras apuntan { $degrees }° a la derecha. Centrar la dirección, comprobar de nuevo el soporte y repetir las fotos.
    }
findings-outside-held = Fuera de tolerancia: { $quantity }; { $correction }.
findings-reading-disagrees-mm = { $quantity }: la lectura de { $read } mm y los { $photos } mm de las fotos se excluyen (E_n { $error }). Leer de nuevo; comprobar desde qué punto se midió.
findings-reading-disagrees-degrees = { $quantity }: la lectura de { $read }° y los { $photos }° de las fotos se excluyen (E_n { $error }). Leer de nuevo; comprobar desde qué punto se midió.
findings-readings-differ-mm = { $quantity }: las lecturas de { $read } mm y { $again } mm se excluyen (E_n { $error }). Leer de nuevo y dejar en el trabajo solo lo que se leyó bien.
findings-readings-differ-degrees = { $quantity }: las lecturas de { $read }° y { $again }° se excluyen (E_n { $error }). Leer de nuevo y dejar en el trabajo solo lo que se leyó bien.
findings-marker-duplicated =
    { $count ->
        [2] El marcador { $marker } aparece dos veces en { $photo }: se descartó en todas las fotos. Retirar las impresiones sobrantes y repetir las fotos.
       *[other] El marcador { $marker } aparece { $count } veces en { $photo }: se descartó en todas las fotos. Retirar las impresiones sobrantes y repetir las fotos.
    }
findings-cannot-prove = Estas fotos y este juego no pueden demostrar una tolerancia tan pequeña: { $quantities }. Hace falta: { $more }. Esto no significa que esté fuera de tolerancia.
findings-hangs-on-body =
    { $way ->
        [larger] { $quantity }: sin { $body } el valor sería { $change } mayor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
       *[smaller] { $quantity }: sin { $body } el valor sería { $change } menor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
    }
findings-hangs-on-photo =
    { $way ->
        [larger] { $quantity }: sin { $photo } el valor sería { $change } mayor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
       *[smaller] { $quantity }: sin { $photo } el valor sería { $change } menor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
    }
findings-hangs-on-lens =
    { $way ->
        [larger] { $quantity }: con el otro modelo de objetivo el valor sería { $change } mayor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
       *[smaller] { $quantity }: con el otro modelo de objetivo el valor sería { $change } menor, más que su incertidumbre de { $uncertainty }. Algo allí no encaja con el resto. Revisarlo y añadir una foto.
    }

findings-gap-minutes = { $n } min
findings-gap-hours = { $n } h
findings-gap-days = { $n } días
findings-photos-apart = { $photo } se tomó { $gap } después de { $first }: el montaje puede haber cambiado entretanto.
findings-not-when-job-says =
    { $way ->
        [before] El trabajo dice que sus fotos se tomaron { $gap } antes de lo que indican los datos de { $photo }.
       *[after] El trabajo dice que sus fotos se tomaron { $gap } después de lo que indican los datos de { $photo }.
    }
findings-not-as-satellites-say = Según la hora de los satélites de su registro, { $photo } se tomó con { $gap } de diferencia respecto a su propia hora: esta se cambió, o el reloj del teléfono está mal.
findings-ran-before = La calibración se hizo { $gap } antes de tomar la primera foto: las fotos no muestran dónde estaba entonces el soporte.
findings-ran-before-move = La calibración se ejecutó { $gap } antes de { $photo }, la primera foto de la posición actual del soporte: este se movió entre las fotos, y ninguna muestra dónde estaba cuando se ejecutó la calibración.
findings-ran-late = La calibración se ejecutó { $gap } después de { $photo }, la última foto que muestra el montaje: pudo cambiar entretanto.
findings-not-yet-run = { $photo } figura como tomada después de la calibración, pero se tomó { $gap } antes de hacerla: no muestra dónde estaba el soporte después.
findings-phases-exchanged = { $after } figura como tomada después de la calibración y { $before } como tomada antes, pero según sus propios datos es al revés.
findings-moves-exchanged = { $after } figura como tomada después de mover el soporte y { $before } como tomada antes, pero según sus propios datos es al revés.
findings-other-day-than-job = { $photo } se tomó el { $day } según sus propios datos; el trabajo es del { $wanted }. Usar fotos de este trabajo o poner en hora el reloj.
findings-other-day-than-photo = { $photo } se tomó el { $day } según sus propios datos; la primera foto del trabajo, el { $wanted }. Usar fotos de este trabajo o poner en hora el reloj.

findings-card-not-seen = Ninguna foto muestra entera la tarjeta de este trabajo (marcadores { $ids }; como mucho { $most } de { $all } en una foto), así que nada demuestra que las fotos se tomaran para él. Poner la tarjeta donde se vea y tomar una foto más.
findings-card-of-another-job = { $photo } muestra la tarjeta de otro trabajo (marcadores { $others }; los de este son { $own }). Quitar esa foto o repetirla con la tarjeta de este trabajo.
findings-other-kit = Los marcadores { $ids } no están en ningún portamarcadores del juego { $kit }, pero salen en las fotos (la mayoría en { $photo }). Hay a la vista otro juego o un tablero, o el trabajo nombra un juego equivocado.
findings-prerequisite-not-met = No se cumple: { $text }. Corregirlo y repetir las fotos.
findings-prerequisite-answered-no = No se cumple: { $text }. La respuesta es «{ $answer }». Corregirlo y repetir las fotos.
findings-prerequisite-in-words = { $text }: la respuesta es «{ $answer }», ni un sí claro ni un valor. Leer si se cumple, y responder sí o no.
findings-photos-not-listed =
    En la carpeta del trabajo hay fotos que este no enumera: { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }y { $more } más
    }. No se midieron. Enumerarlas en job.toml, o llevarlas a aside si no muestran nada de este trabajo.
findings-photos-of-no-check =
    Ninguna comprobación trata de dónde está el soporte aquí: { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }y { $more } más
    }. El paso de estas fotos no tiene comprobación en la hoja de montaje, o no nombran ninguno. Lo que muestran ahí no contradice nada. Indicar su paso, o comprobarlo.
findings-not-answered = Sin respuesta: { $texts }. Responder en «Preparar» o en la sección [prerequisites] del archivo del trabajo.
findings-not-checked = La hoja de montaje ni comprueba ni exime: { $quantities }.

findings-far-off = { $quantity }: desviación de { $off }. Encaja, salvo { $rest }, con este error: { $mistake }. Comprobarlo en la hoja y en el vehículo; no se corrigió nada por ello.
findings-far-off-or = { $quantity }: desviación de { $off }. Encaja, salvo { $rest }, con este error: { $mistake }. O con este: { $others }. Comprobarlo en la hoja y en el vehículo; no se corrigió nada por ello.
findings-reading-far-off = { $quantity }: la lectura de { $read } encaja con las fotos con este error: { $mistake }. Leer de nuevo; no se corrigió nada por ello.

# Errores con los que se compara un valor muy desviado.
findings-mistake-read-from = leído desde: { $point }
findings-mistake-measured-from = medido desde: { $point }
findings-mistake-to-part = medido hasta: { $point } del soporte
findings-mistake-sign = signo invertido
findings-mistake-from-nose-height = medido desde la marca frontal, no desde el suelo
findings-mistake-from-floor = medido desde el suelo, no desde la marca frontal
findings-mistake-on-nose = centrado en la marca frontal, no en la línea de referencia
findings-mistake-on-line = centrado en la línea de referencia, no en la marca frontal
findings-mistake-other-line = alineado con { $other } en lugar de { $line }
findings-mistake-thrust-sign = el ángulo de empuje se tomó con el signo contrario
findings-mistake-other-side = el desplazamiento se tomó hacia el otro lado
findings-mistake-offset-left-out = se omitió el desplazamiento
findings-mistake-left-at-zero = se dejó a cero
findings-mistake-other-angle = el ángulo se tomó desde la otra línea (90° menos el ángulo)
findings-mistake-other-step = estaba como en el paso { $step }
findings-mistake-mm-as-inches = se leyeron mm como pulgadas
findings-mistake-inches-as-mm = se leyeron pulgadas como mm
findings-mistake-cm-as-mm = se leyeron cm como mm
findings-mistake-digits = se intercambiaron dos cifras ({ $swapped } en lugar de { $nominal })
findings-mistake-plane =
    { $where ->
        [behind] medido hasta una parte del soporte situada { $mm } mm detrás de su cara
       *[front] medido hasta una parte del soporte situada { $mm } mm delante de su cara
    }
findings-mistake-edge =
    { $edge ->
        [left] se puso allí el borde izquierdo del soporte en lugar de su centro
        [right] se puso allí el borde derecho del soporte en lugar de su centro
        [upper] se puso allí el borde superior del soporte en lugar de su centro
       *[lower] se puso allí el borde inferior del soporte en lugar de su centro
    }
findings-point-nose = el frontal
findings-point-front-axle = el eje delantero
findings-point-rear-axle = el eje trasero
findings-point-datum = el punto de referencia «{ $datum }»

# Qué haría comprobable un fallo; va detrás de «Hace falta:».
findings-takes-second-photo = una segunda foto que muestre también otra cosa de su primera foto, para ver si se movió entretanto
findings-takes-linking-photo = una foto más que lo muestre junto con otra parte del juego que también esté en { $photos }: no tienen nada más en común
findings-takes-two-with-stand = dos fotos que muestren las placas de rueda y el soporte, y una lámina de suelo u otro cuerpo que no se mueva con el vehículo
findings-takes-axle =
    { $axle ->
        [front] fotos que muestren las dos placas de las ruedas delanteras
       *[rear] fotos que muestren las dos placas de las ruedas traseras
    }
findings-takes-typed-sizes =
    { $what ->
        [nose] la distancia del frontal al eje trasero, introducida en el trabajo: ninguna foto más muestra que la marca está en mal lugar
       *[plates] la distancia entre ejes y los dos anchos de vía de buje a buje, introducidos en el trabajo: ninguna foto más muestra que una placa está fuera de su buje por igual en todas
    }
findings-takes-other-direction = una segunda foto desde otra dirección
findings-takes-nearer = fotos más cerca del soporte, para distinguir tamaños y separaciones
findings-takes-one-more = una foto más desde otra dirección
findings-takes-sheets = láminas de suelo: sin ellas el suelo se toma de las placas
findings-takes-fourth-sheet = una cuarta lámina de suelo: tres están siempre en un plano
findings-takes-second-view = una segunda foto que la muestre
findings-takes-two-and-two = dos láminas de suelo junto al soporte y dos junto al vehículo
findings-takes-hub-height = la altura de los bujes traseros sobre el suelo, escrita en el trabajo: un suelo que sube entre las ruedas y todas las láminas no se dobla entre ningún par de ellas
findings-takes-front-plates = placas en las ruedas delanteras

# Por qué no cuenta una foto; va detrás de dos puntos.
findings-photo-size = mide { $width } x { $height } px, pero la cámara { $camera } es para { $wanted_width } x { $wanted_height } px; usar la foto tal como la guardó la cámara, o el archivo de la cámara que la tomó
findings-photo-other-camera = la tomó { $maker } { $model }, no la cámara { $camera }; indicar en el trabajo el archivo de esa cámara
findings-photo-other-camera-at = la tomó { $maker } { $model } a { $focal } mm, no la cámara { $camera }; indicar en el trabajo el archivo de esa cámara
findings-photo-no-camera = ningún archivo de cámara le corresponde ({ $maker } { $model }, { $width } x { $height } px); ajustar la cámara con un tablero o indicar su archivo como `camera` en el trabajo
findings-photo-two-cameras = le corresponden dos archivos de cámara ({ $maker } { $model }, { $width } x { $height } px): { $first } y { $second }; indicar uno como `camera` en el trabajo
findings-no-make = (sin fabricante en EXIF)
findings-no-model = (sin modelo en EXIF)
findings-photo-no-markers = no se encontró en ella ningún marcador del juego: { $why }
findings-photo-not-linked = no tiene ningún portamarcadores en común con las demás fotos; repetirla de modo que muestre dos que también muestre otra foto
findings-photo-not-tied = nada la une a las fotos de antes del movimiento { $move }; repetirla con placas y láminas de suelo junto al soporte
findings-photo-other-phase = se tomó después de la calibración, cuando el soporte o el vehículo se había movido; se compara, no se mide con ella
findings-unseen-other-kit = sus marcadores son de otro juego
findings-unseen-doubled = hay una segunda impresión de cada uno de sus marcadores en el puesto; retirar las impresiones sobrantes y repetirla
findings-unseen-mirrored = está reflejada
findings-unseen-dark = es demasiado oscura; usar más luz y repetirla
findings-unseen-blurred = está borrosa; sujetar firme, apoyar los codos o usar más luz, y repetirla
findings-unseen-not-in-view = es nítida, así que no había ninguno a la vista o todos eran demasiado pequeños; acercarse, incluir el soporte y las placas en la imagen y repetirla
findings-unseen-cannot-tell = o no había ninguno a la vista o está borrosa (muestra demasiado poco para saberlo); mirarla ampliada y repetirla
