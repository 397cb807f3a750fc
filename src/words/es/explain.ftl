# Qué significa cada hallazgo (`explain`, galería), cómo lo encuentra su regla y las palabras del propio `explain`.

explain-meaning = Significado
explain-cause = Causa
explain-look = Cómo verlo
explain-remedy = Qué hacer
explain-rationale = Por qué
explain-method = Método
explain-level =
    { $level ->
        [void] nulo
        [stop] alto
        [warn] aviso
       *[note] nota
    }
explain-weight =
    { $level ->
        [void] nulo: la medición no es fiable, hay que repetir las fotos
        [stop] alto: nada se da por dentro de tolerancia
        [warn] aviso: conviene mirarlo
       *[note] nota: conviene saberlo
    }
explain-gallery = `baywitness gallery { $code } --out DIR` lo muestra en un puesto inventado: fotos y cifras, sin el error y con él.
explain-unknown = ningún hallazgo tiene el código { $code }: `baywitness explain` los enumera todos
explain-did-you-mean = ningún hallazgo tiene el código { $code }; ¿quería decir { $near }?
explain-exit-code = Código de salida { $code }
explain-exit-0 = verify, watch, audit: todos los trabajos están dentro de tolerancia. check: íntegro y firmado por un firmante de la lista. plan: todas las comprobaciones se pueden decidir. Otros comandos: hecho.
explain-exit-1 = verify, watch, audit: un trabajo está fuera de tolerancia y ninguno está peor. check: alterado o mal firmado. log check: reescrito, truncado, bifurcado o alterado. log witness: rechazado. bay: fuera de un límite.
explain-exit-2 = Uso incorrecto o una entrada que no se puede leer: un archivo que falta o está dañado, una foto cortada. El mensaje indica el archivo, el lugar y el remedio.
explain-exit-3 = verify, watch, audit: un trabajo no está demostrado y ninguno está peor: las fotos no deciden ni en un sentido ni en otro. check: íntegro, pero sin firma o de un firmante que no está en la lista, o el dictamen no se confirmó al medir de nuevo. plan: una comprobación no se puede decidir. setup check: la hoja de montaje se contradice, o ningún juego de marcadores decide todas las comprobaciones. log check: se sostiene, pero no lo firmó ninguna clave válida, o las horas no están en orden. camera fit, survey, recheck, seating, bay: no apto para el uso o no demostrado.
explain-exit-4 = verify, watch, audit: un trabajo no se puede medir a partir de sus fotos y hay que volver a fotografiarlo; el informe dice por qué.

finding-stand-turned =
    .title = Soporte girado
    .meaning = El soporte no está a escuadra con la línea de referencia.
    .cause = Se empujó un extremo al moverlo, se escuadró con el paragolpes o con una pared, o con el eje central cuando cuenta la línea de empuje.
    .look = Medir desde ambos extremos del soporte hasta el mismo punto de cada lado del vehículo.
    .remedy = Girar el soporte lo que indica el informe y volver a fotografiar.
    .scene = El extremo del soporte del lado izquierdo del vehículo se empujó hacia el vehículo.

finding-stand-off-centre =
    .title = Soporte descentrado
    .meaning = El punto de mira está a un lado de donde debería estar.
    .cause = Se centró a ojo, con el emblema o con la matrícula, o el desplazamiento propio del sensor se olvidó o se tomó hacia el lado contrario.
    .look = Colgar una plomada del emblema y otra del punto de mira, y mirar a lo largo del centro del vehículo.
    .remedy = Desplazar el soporte hacia un lado lo que indica el informe, mantenerlo a escuadra y volver a fotografiar.
    .scene = El soporte se centró a ojo y está hacia la derecha del vehículo.

finding-stand-too-near =
    .title = Soporte demasiado cerca
    .meaning = La distancia del punto de referencia a la cara de la diana es demasiado pequeña.
    .cause = Se midió desde otro punto del vehículo, o hasta el pie o el mástil del soporte en vez de hasta la cara.
    .look = Bajar una plomada desde el punto de referencia y desde la cara de la diana, y medir en el suelo.
    .remedy = Alejar el soporte lo que indica el informe y volver a fotografiar.
    .scene = La distancia se midió hasta el mástil del soporte en vez de hasta la cara.

finding-stand-too-far =
    .title = Soporte demasiado lejos
    .meaning = La distancia del punto de referencia a la cara de la diana es demasiado grande.
    .cause = Se midió desde otro punto del vehículo, o con una cinta que no estaba recta.
    .look = Bajar una plomada desde el punto de referencia y desde la cara de la diana, y medir en el suelo.
    .remedy = Acercar el soporte al vehículo lo que indica el informe y volver a fotografiar.
    .scene = La cinta no estaba recta.

finding-stand-too-high =
    .title = Diana demasiado alta
    .meaning = El punto de mira está por encima de donde debería estar.
    .cause = La escala del mástil se leyó en otro borde, o se dejó la altura de otro vehículo.
    .look = Medir del suelo al punto de mira con una regla en vertical.
    .remedy = Bajar la diana lo que indica el informe y volver a fotografiar.
    .scene = La escala del mástil se leyó en otro borde.

finding-stand-too-low =
    .title = Diana demasiado baja
    .meaning = El punto de mira está por debajo de donde debería estar.
    .cause = La escala del mástil se leyó en otro borde, o se dejó la altura de otro vehículo.
    .look = Medir del suelo al punto de mira con una regla en vertical.
    .remedy = Subir la diana lo que indica el informe y volver a fotografiar.
    .scene = Se dejó la altura de otro vehículo.

finding-stand-tilted =
    .title = Diana inclinada
    .meaning = La cara de la diana se inclina hacia delante o hacia atrás.
    .cause = No se nivelaron los pies, se dejó la inclinación de otro paso, o se inclinó hacia el lado contrario.
    .look = Apoyar un nivel de burbuja o un medidor de ángulos en vertical contra la cara.
    .remedy = Inclinar la diana como indica el informe y volver a fotografiar.
    .scene = Se dejó la inclinación de otro paso.

finding-stand-not-level =
    .title = Diana sin nivelar
    .meaning = Un extremo de la diana está más bajo que el otro, o la diana está boca abajo (entonces no se mide nada: nulo).
    .cause = Un pie está en una junta del suelo o no se niveló.
    .look = Poner un nivel de burbuja sobre el travesaño.
    .remedy = Nivelar el soporte por los pies y volver a fotografiar.
    .scene = Un pie del soporte está en una junta del suelo.

finding-stand-moved-between-photos =
    .title = El soporte se movió entre las fotos
    .meaning = Las fotos no concuerdan en dónde está el soporte respecto a todo lo demás: en unas estaba en un sitio y en las demás en otro.
    .cause = Alguien rozó el soporte, lo apartó para pasar o lo corrigió después de la primera foto.
    .look = Comparar en ambas fotos los pies del soporte con una marca del suelo, o la distancia a algo fijo.
    .remedy = Que nadie toque el soporte; repetir todas las fotos. Si se movió a propósito, dar las fotos posteriores con `--moved`, o escribir `after_move = 1` en su [[photo]] de job.toml.
    .scene = Alguien golpeó el soporte antes de la segunda de cuatro fotos.

finding-vehicle-moved-between-photos =
    .title = El vehículo se movió entre las fotos
    .meaning = En algunas fotos las placas y el frontal están en otro sitio respecto al suelo y al soporte.
    .cause = El vehículo rodó al soltar el freno, alguien subió, se cerró una puerta de golpe o se desplazó una lámina del suelo.
    .look = Mirar los neumáticos respecto a una línea del suelo; los calzos que no tocan el neumático lo dejan rodar.
    .remedy = Calzar las ruedas, que nadie se siente dentro, comprobar otra vez el soporte y repetir todas las fotos.
    .scene = Se soltó el freno entre la segunda y la tercera foto.

finding-plate-not-seated =
    .title = Placa mal asentada
    .meaning = Una placa de rueda apunta adonde ninguna rueda puede apuntar, no está en su buje, o estaba asentada de otro modo en una foto que en otra.
    .cause = Una garra se apoya en un contrapeso, el borde de la llanta está doblado, hay suciedad entre placa y llanta, o la placa resbaló.
    .look = Presionar el borde de la placa: no debe bailar. La holgura entre placa y llanta debe ser igual en todo el contorno.
    .remedy = Asentar de nuevo la placa en una parte limpia y sana de la llanta y repetir todas las fotos.
    .scene = Una placa de rueda no apoya contra la llanta.

finding-vehicle-sizes-disagree =
    .title = Medidas introducidas desmentidas
    .meaning = Una medida del vehículo que se introdujo es otra que la que muestran las fotos: una de las dos es errónea.
    .cause = La marca frontal se puso al lado o por delante del frontal, una placa de rueda está fuera de su buje, o se introdujeron las medidas de otro vehículo.
    .look = Medir con una cinta del centro de una rueda trasera al de la delantera, y a la marca frontal.
    .remedy = Poner la marca y las placas en su lugar y repetir las fotos, o corregir lo introducido.
    .scene = La marca frontal está 25 mm por delante del frontal.

finding-plates-swapped =
    .title = Placas o láminas intercambiadas
    .meaning = Dos placas están cada una en la rueda de la otra, o hay láminas de marcadores donde el archivo del juego tiene otras, o giradas.
    .cause = Se confundieron la placa izquierda y la derecha al fijarlas; o se montaron láminas en el sitio equivocado al construir o reparar el juego.
    .look = La etiqueta de cada placa nombra su rueda y muestra qué lado va arriba; comparar los números de las láminas con el plano del juego.
    .remedy = Poner cada una en su sitio, con el lado correcto hacia arriba, y repetir las fotos.
    .scene = Las placas traseras se fijaron cada una en la rueda de la otra.

finding-print-scale-wrong =
    .title = Impreso a otro tamaño
    .meaning = Los marcadores no tienen el tamaño que dice el archivo del juego, en relación con su separación.
    .cause = La impresora ajustó la página a sus márgenes, o se montaron láminas de otro juego.
    .look = Medir el cuadrado negro de un marcador con una regla de acero, en ambas direcciones; la regla de control de la propia impresión debe ser exacta.
    .remedy = Imprimir de nuevo al 100 % (sin ajustar a la página), o poner en el archivo del juego el tamaño medido.
    .scene = Los marcadores del soporte se imprimieron ajustados a la página.

finding-print-not-flat =
    .title = Impresiones no planas
    .meaning = Lo que muestra un marcador se aparta de lo que mostraría uno plano e impreso de forma regular, por lo que su lugar se conoce peor.
    .cause = Papel que se ha despegado o se pegó con burbujas, una placa doblada o una impresora cuyo avance es irregular.
    .look = Poner el canto de una regla sobre la impresión: pasa luz por debajo; o juntar dos impresiones.
    .remedy = Pegar las hojas de nuevo, planas sobre algo rígido y sin burbujas; cambiar una placa doblada; imprimir en otra impresora.
    .scene = Todas las impresiones están onduladas.

finding-marker-displaced =
    .title = Marcadores fuera de su lugar en el juego
    .meaning = Los marcadores de un portamarcadores no están entre sí como dice el archivo del juego, de modo que lo que marca está en otro lugar del que las fotos parecen mostrar.
    .cause = Un portamarcadores doblado o golpeado, una lámina reparada o montada en otro lugar, impresiones pegadas con menos cuidado de lo que dice el archivo, o el archivo de otro.
    .look = Poner una regla a lo largo del portamarcadores; comparar las separaciones de las láminas con el dibujo del juego, con una cinta de acero.
    .remedy = Arreglarlo, o levantar las medidas del portamarcadores (baywitness survey) y usar el archivo del juego que resulta.
    .scene = Unas láminas del extremo izquierdo del soporte se repararon y sobresalen desde entonces.

finding-marker-duplicated =
    .title = Un código dos veces
    .meaning = El mismo código aparece dos veces en una foto; no se usó en ninguna foto del trabajo.
    .cause = Hay una impresión sobrante en el puesto, un espejo o un panel brillante refleja un marcador, o hay dos juegos con los mismos códigos.
    .look = Buscar en la foto una segunda lámina con ese número, también en cristales y en la pintura.
    .remedy = Retirar o tapar la impresión sobrante y repetir las fotos.
    .scene = En el puesto cuelga una impresión sobrante de un marcador.

finding-camera-mismatch =
    .title = Otra cámara
    .meaning = Las fotos no corresponden al objetivo que describe el archivo de cámara.
    .cause = Otro teléfono, otro objetivo del teléfono (gran angular, tele, frontal), una corrección del objetivo o una vista en espejo que aplicó el teléfono, o el archivo de cámara equivocado en el trabajo.
    .look = Los detalles de la foto en la galería del teléfono nombran aparato y objetivo. Dos teléfonos del mismo modelo escriben lo mismo: si solo una foto no encaja, preguntar quién la hizo.
    .remedy = Hacer las fotos con la cámara y el objetivo ajustados, o ajustar esta cámara con un tablero y nombrar su archivo en el trabajo.
    .scene = Las fotos se hicieron con el otro objetivo del teléfono.

finding-photo-zoomed =
    .title = Foto con zoom
    .meaning = Una foto muestra todo más grande o más pequeño de lo que su cámara puede con la distancia focal del archivo de cámara.
    .cause = Dos dedos en la pantalla, el cambio automático de objetivo del teléfono, o un recorte guardado al tamaño anterior.
    .look = La galería del teléfono muestra el zoom o la distancia focal entre los detalles de la foto; la imagen muestra menos puesto que las otras.
    .remedy = Poner la cámara en su objetivo normal 1x y repetir la foto.
    .scene = Una de cuatro fotos se hizo con zoom digital.

finding-photo-resized =
    .title = Foto redimensionada
    .meaning = La foto no tiene el tamaño con que su cámara guarda las imágenes.
    .cause = Una aplicación de mensajería, un programa de correo o una aplicación de imágenes la redujo por el camino, o se recortó.
    .look = La galería del teléfono muestra el tamaño del original en píxeles.
    .remedy = Copiar el archivo original del teléfono por cable o como archivo, no como imagen en un mensaje.
    .scene = Una aplicación de mensajería redujo una de cuatro fotos.

finding-photo-blurred =
    .title = Borrosa
    .meaning = Los bordes de los marcadores son demasiado difusos para medirlos bien.
    .cause = Se movió la mano, había poca luz, el objetivo estaba sucio o se enfocó algo cercano.
    .look = Ampliar un marcador en el teléfono: sus cuadrados pequeños deben tener bordes nítidos.
    .remedy = Limpiar el objetivo, apoyar los codos, poner más luz, tocar el soporte en la pantalla para enfocar y repetir la foto.
    .scene = El teléfono se movió al hacer la última foto.

finding-photo-badly-lit =
    .title = Mal iluminada
    .meaning = La luz estropea una foto: una lámpara deslumbra en un marcador, el blanco está quemado o está demasiado oscura.
    .cause = Una lámpara o el sol brilla en una impresión satinada en el ángulo de la cámara, el flash del teléfono estaba encendido o el puesto está oscuro.
    .look = Ampliar el marcador: manchas blancas donde debería haber negro, o gris sobre gris.
    .remedy = Dar un paso al lado para que el reflejo salga del marcador, apagar el flash, usar papel mate y luz uniforme, y repetir la foto.
    .scene = La última foto está sobreexpuesta: el papel blanco invade el negro.

finding-photo-light-changed =
    .title = Luz cambiada por el teléfono
    .meaning = El teléfono aclaró partes oscuras y oscureció partes claras, de modo que los bordes de los marcadores se conocen con menos exactitud.
    .cause = HDR, modo nocturno, optimización de escena o un filtro, o luz fuerte junto a sombra profunda, que lleva a los teléfonos a hacerlo.
    .look = Ampliar un marcador: cerca de los bordes el blanco es más claro y el negro más oscuro que en el centro de los cuadrados.
    .remedy = Apagar HDR, modo nocturno y optimización de escena, o hacer una imagen raw y revelarla sin retoques; iluminar el puesto de modo más uniforme; hacer una foto más o acercarse.
    .scene = En todas las fotos el teléfono aclaró lo oscuro y oscureció lo claro, zona por zona.

finding-photo-reused =
    .title = Foto usada dos veces
    .meaning = Dos de las fotos son la misma imagen, quizá recodificada, recortada o en espejo.
    .cause = Un archivo se copió con otro nombre, se envió dos veces o se retocó para que pareciera otra foto; o la cámara estaba en un trípode.
    .look = Superponer las dos imágenes: todo coincide, también las personas y las sombras.
    .remedy = Hacer la segunda foto desde otro sitio.
    .scene = La primera foto se guardó otra vez como cuarta.

finding-photos-too-alike =
    .title = Fotos demasiado parecidas
    .meaning = Dos fotos se hicieron casi desde la misma dirección, así que cuentan como una.
    .cause = Las dos se hicieron desde el mismo sitio.
    .look = Poner las dos imágenes una al lado de otra: el soporte tapa la misma parte del vehículo.
    .remedy = Hacer una de ellas desde el otro lado del soporte.
    .scene = Dos de tres fotos se hicieron casi desde el mismo sitio.

finding-carrier-not-seen =
    .title = No se ve
    .meaning = Una parte del juego de marcadores no está en ninguna foto útil, o solo de modo que dos posiciones encajan igual de bien.
    .cause = Estaba detrás de algo, fuera de la imagen, demasiado lejos o de canto.
    .look = Abrir las fotos: ¿hay al menos dos de sus marcadores enteros, nítidos y mayores que la uña del pulgar?
    .remedy = Hacer una foto más que la muestre junto con otras dos partes del juego.
    .scene = No se colocó una lámina de suelo.

finding-floor-not-level =
    .title = El suelo no es un solo plano
    .meaning = El suelo se quiebra entre el vehículo y el soporte, una lámina no está plana sobre él, o las ruedas no se apoyan por igual en el plano de las láminas.
    .cause = Un desagüe, una rampa, una junta entre losas, una lámina ondulada o levantada, un neumático desinflado, una rueda sobre un taco o un plato giratorio; o la altura de buje introducida es errónea.
    .look = Poner una regla larga o un nivel de agua a través del puesto; presionar las esquinas de la lámina.
    .remedy = Alisar la lámina; si la causa es el suelo, usar un puesto nivelado.
    .scene = El suelo sube delante del vehículo.

finding-steering-not-straight =
    .title = Dirección no recta
    .meaning = Las ruedas delanteras apuntan a un lado del eje central.
    .cause = El volante estaba girado al aparcar, o se movió al bajar alguien; o no está centrado en marcha recta.
    .look = Los radios del volante y la holgura entre el neumático delantero y la aleta en cada lado.
    .remedy = Rodar el vehículo recto unos metros, centrar la dirección, comprobar otra vez el soporte y repetir las fotos.
    .scene = Las ruedas delanteras no están rectas.

finding-weak-geometry =
    .title = Demasiado débil para demostrar
    .meaning = Con estas fotos no se podría demostrar que ninguna posición del soporte está dentro de una tolerancia, o la respuesta depende de una foto o de un portamarcadores más de lo que admite su incertidumbre.
    .cause = Muy pocas fotos, todas desde un lado, placas solo en dos ruedas, o marcadores pequeños y lejanos.
    .look = La tabla de incertidumbre del informe muestra de dónde viene la mayor parte.
    .remedy = Añadir fotos más separadas que muestren las dos hojas de las placas; si solo dos ruedas llevan placa, ponerlas en las cuatro.
    .scene = La hoja exige una tolerancia menor de lo que estas fotos pueden demostrar.

finding-wrong-datum-suspected =
    .title = Se sospecha un punto de referencia equivocado
    .meaning = Un valor muy alejado sería correcto si se hubiera medido desde otro punto, hacia el otro lado, con otro signo u otra unidad, o para otro paso.
    .cause = Se midió desde el emblema, el paragolpes o el eje en vez del punto de referencia, hasta el mástil en vez de la cara, hasta el borde del panel en vez de su centro; desplazamiento tomado hacia el lado contrario; cifras intercambiadas; hoja leída en la columna equivocada.
    .look = Leer otra vez la línea de la hoja, en voz alta, con el dedo en el punto del vehículo que nombra.
    .remedy = Colocar el soporte según el punto, el signo y la unidad correctos; la sospecha no cambia las cifras del informe.
    .scene = El desplazamiento de 60 mm del sensor se tomó hacia el otro lado.

finding-reading-disagrees =
    .title = Lectura en desacuerdo
    .meaning = Un valor leído en el vehículo y las fotos se excluyen mutuamente dentro de sus incertidumbres. Si la lectura se usó en el resultado, o si decide una comprobación de la hoja, el trabajo se detiene y la lectura usada queda fuera de las cifras. Lo mismo ocurre con dos lecturas de lo mismo que se excluyen.
    .cause = Se leyó en otro punto, se intercambiaron cifras al teclear, el láser no estaba a escuadra o la cinta colgaba; o las fotos son erróneas.
    .look = Leer otra vez, desde el punto que nombra la hoja, y leer en voz alta lo que se teclea.
    .remedy = Corregir la lectura o hallar el punto desde el que se tomó; si se mantiene, repetir las fotos.
    .scene = El láser se apoyó en otro punto del vehículo.

finding-times-out-of-order =
    .title = Horas fuera de orden
    .meaning = Según sus propios relojes, las fotos, el trabajo y la calibración no se suceden como deberían.
    .cause = Se eligieron fotos de un trabajo anterior, se inscribieron fotos más antiguas como tomadas después de mover el soporte, la calibración se hizo antes que las fotos, o el reloj de un aparato va mal.
    .look = Comparar las horas del informe con el informe de diagnosis y con el reloj de la pared.
    .remedy = Poner los relojes en hora; si las fotos son de verdad de otro momento, hacer otras.
    .scene = La calibración se hizo media hora antes que las fotos.

finding-photo-of-another-day =
    .title = Foto de otro día
    .meaning = Según sus propios datos, la foto se hizo otro día que el trabajo. Eso no demuestra que fuera así.
    .cause = Se eligió una foto de un trabajo anterior, el trabajo se escribió días después o la fecha del teléfono es errónea.
    .look = Comparar la fecha en la galería del teléfono con la del trabajo, y el vehículo de la foto con el del trabajo.
    .remedy = Usar las fotos de este trabajo; corregir la fecha del teléfono y dejar que registre su zona horaria.
    .scene = Una de cuatro fotos es del día anterior; ninguna indica su zona horaria.

finding-photo-edited =
    .title = Foto escrita por un programa
    .meaning = El archivo lleva huellas de un programa que lo escribió después de la cámara. Eso no demuestra que se cambiara nada en la imagen.
    .cause = La foto se giró, recortó o mejoró en una galería o un editor, o se exportó de una aplicación en vez de copiarla.
    .look = Comparar con el original del teléfono: sus detalles indican la hora en que se hizo y el programa que lo escribió.
    .remedy = Copiar el archivo original del teléfono y verificar otra vez; apartar el editado.
    .scene = Una de cuatro fotos pasó por un programa que se nombra en sus datos.

finding-thumbnail-differs =
    .title = Miniatura de otra imagen
    .meaning = La imagen pequeña que la cámara puso en el archivo no muestra lo que muestra la foto. Eso no demuestra intención.
    .cause = Un programa sustituyó o recortó la imagen y dejó la miniatura antigua, o un aparato escribió una errónea.
    .look = Abrir la miniatura con un visor de datos de fotos y ponerla junto a la foto.
    .remedy = Entregar el archivo original del teléfono; si se perdió, repetir la foto.
    .scene = La miniatura de la segunda foto es la de la tercera; las otras tienen la suya.

finding-photo-rendered =
    .title = Foto renderizada
    .meaning = Este programa hizo la imagen; ninguna cámara la tomó. Su trabajo no dice que sea una muestra o una práctica.
    .cause = Fotos de una muestra, de una práctica o de un archivo de escena llegaron entre las de un trabajo, o alguien da fotos inventadas por verdaderas.
    .look = Los detalles del archivo nombran el programa que la renderizó, si no se quitaron; la imagen muestra el vehículo inventado.
    .remedy = Entregar las fotos que se tomaron en el puesto. Para practicar, escribir rendered = true en job.toml; el informe lo dice entonces en su primera línea.
    .scene = El puesto correcto, cuyo archivo de trabajo no dice que sus fotos están renderizadas.

finding-noise-repeated =
    .title = El mismo ruido en dos fotos
    .meaning = Marcadores de la misma forma tienen el mismo ruido, píxel a píxel, en dos fotos que no son la misma imagen.
    .cause = Una segunda foto se hizo a partir de la primera moviendo una parte; o una foto muy suavizada desde un trípode muestra el grano de la propia impresión.
    .look = Superponer las dos fotos ampliadas: el grano en blanco y negro coincide.
    .remedy = Volver a tomar la foto y entregar el archivo que escribió la cámara.
    .scene = La foto posterior a un movimiento del soporte se hizo a partir de la primera: solo el soporte está en otro lugar.

finding-markers-without-noise =
    .title = Marcadores sin el ruido de la foto
    .meaning = El blanco y el negro de los marcadores de un portamarcadores son mucho más lisos que los de todos los demás marcadores de la misma foto.
    .cause = Un programa dibujó los marcadores en la foto; o los lleva algo liso, como una pantalla.
    .look = Ampliar la foto: los demás marcadores tienen grano, estos no.
    .remedy = Entregar el archivo original del teléfono o volver a tomar la foto.
    .scene = En la segunda de dos fotos un programa insertó los marcadores del soporte.

finding-compression-differs =
    .title = Marcadores sin la compresión anterior de la foto
    .meaning = La foto se guardó antes como JPEG y luego otra vez, y todos los marcadores lo muestran salvo los de un portamarcadores.
    .cause = Un editor abrió la foto, los marcadores se pegaron, giraron o movieron, y se guardó otra vez.
    .look = Pida el archivo tal como lo guardó el teléfono: se comprimió una sola vez.
    .remedy = Entregue el archivo original del teléfono o repita la foto.
    .scene = La segunda de dos fotos se guardó, luego se insertaron los marcadores del soporte y se guardó otra vez.

finding-focal-length-contradicts =
    .title = Datos de otra distancia focal
    .meaning = Los datos de la foto indican un ángulo de visión que la imagen no tiene. Eso no demuestra intención.
    .cause = La imagen se recortó y amplió, se copiaron datos de otra foto, o el aparato escribe un valor erróneo.
    .look = Hacer otra foto con la misma cámara y el mismo objetivo y comparar el valor en sus detalles.
    .remedy = Entregar el archivo original; si el aparato siempre escribe ese valor, anotarlo en el trabajo.
    .scene = Los datos de una foto indican una distancia focal más larga que la usada.

finding-markers-of-another-kit =
    .title = Marcadores de otro juego
    .meaning = Las fotos muestran marcadores que el juego del trabajo no tiene. Se dejaron fuera, y lo medido con los demás es correcto.
    .cause = Hay un segundo juego o un tablero de cámara en el puesto, o el trabajo nombra otro juego que el usado.
    .look = Buscar los números del mensaje en las fotos y en las portadas de los juegos.
    .remedy = Nombrar en el trabajo el juego usado; retirar los demás para que nadie confunda los portamarcadores.
    .scene = En el puesto cuelgan marcadores de un segundo juego.

finding-card-not-seen =
    .title = La tarjeta del trabajo no está en ninguna foto
    .meaning = El trabajo tiene una tarjeta de un solo uso y ninguna foto muestra todos sus marcadores, así que nada demuestra que las fotos se hicieran para él.
    .cause = La tarjeta estaba tumbada o demasiado lejos, había algo delante, o las fotos son anteriores a la tarjeta.
    .look = Abrir las fotos: ¿está la tarjeta de pie y es tan grande como el marcador de una placa de rueda?
    .remedy = Poner la tarjeta de pie donde las fotos la muestren, sobre el capó o junto al soporte, y hacer una foto más.
    .scene = La tarjeta del trabajo se olvidó en la oficina.

finding-card-of-another-job =
    .title = Una foto muestra la tarjeta de otro trabajo
    .meaning = En una foto se encontraron marcadores reservados para tarjetas, pero no son el código de este trabajo.
    .cause = Se mezclaron fotos de dos trabajos, o la tarjeta anterior quedó en el puesto.
    .look = Comparar los números del mensaje con la tarjeta del banco.
    .remedy = Dejar fuera esa foto o repetirla con la tarjeta de este trabajo.
    .scene = Sobre el vehículo sigue la tarjeta del trabajo anterior.

finding-prerequisite-not-met =
    .title = Requisito no cumplido
    .meaning = El técnico declara que algo que exige la hoja no es así.
    .cause = Neumáticos, carga, combustible, suspensión o dirección no estaban como exige el procedimiento.
    .look = Repasar la lista de la hoja junto al vehículo.
    .remedy = Corregirlo, esperar a que se asiente la suspensión y repetir las fotos.
    .scene = El técnico declara que la presión de los neumáticos no está ajustada.

finding-record-incomplete =
    .title = Datos incompletos
    .meaning = La hoja exige una respuesta que el trabajo no da, en la carpeta del trabajo hay fotos que este no enumera, o hay fotos que muestran el soporte en un paso del que no trata ninguna comprobación.
    .cause = Se saltó una pregunta del trabajo; o se quitaron fotos de la lista del trabajo y no de su carpeta; o se creó un paso para fotos que contradirían.
    .look = El informe enumera lo que se preguntó y lo que se respondió, y nombra las fotos.
    .remedy = Responder en [prerequisites] del trabajo según estaba cuando se hicieron las fotos; enumerar las fotos, o llevar a aside las de otra cosa.
    .scene = Nadie respondió si la presión de los neumáticos está ajustada.

finding-credentials-lacking =
    .title = Faltan credenciales de contenido
    .meaning = La hoja de montaje quiere saber qué cámara tomó las fotos, firmado por la propia cámara. Al menos una foto que cuenta no lleva credenciales de contenido, las lleva rotas o de un firmante desconocido, o enumera ediciones. Eso no dice nada contra lo medido.
    .cause = El teléfono o la cámara no firma lo que toma, una mensajería o una galería quitó o reescribió los datos del archivo, no se indicaron anclas de confianza, o el programa se construyó sin credenciales de contenido.
    .look = El informe enumera las credenciales de contenido de cada foto; cualquier lector de manifiestos C2PA muestra lo mismo del archivo original.
    .remedy = Tomar las fotos con una cámara que firme, copiar los archivos originales e indicar las anclas de confianza del fabricante de la cámara (--credential-anchors); si no, que cambie la hoja quien la escribió.
    .scene = La hoja exige credenciales de contenido, y las fotos no llevan ninguna.

finding-not-checked =
    .title = Sin comprobar
    .meaning = La hoja de montaje no dice nada de una magnitud que sitúa el soporte.
    .cause = La hoja se escribió solo para una parte del trabajo.
    .look = Comparar la hoja con la información de servicio del fabricante.
    .remedy = Añadir una comprobación a la hoja, o renunciar a la magnitud con un motivo.
    .scene = La hoja ni comprueba la nivelación ni renuncia a ella.

## Cómo buscan las reglas: por qué importa; cómo se encuentra, la tasa de falsas alarmas, lo que no se ve.

finding-rule-stand-misplaced =
    .rationale = El sensor aprende la posición del soporte como si fuera la del vehículo: su error es el error del soporte.
    .method = Una comprobación que está fuera de su tolerancia según la regla de decisión de la hoja; la tasa de falsas alarmas es la de la regla.

finding-rule-something-moved =
    .rationale = Todas las fotos se miden juntas. Un soporte al que se dio un golpe entre dos de ellas está donde ninguna lo muestra.
    .method = Prueba de puntuación (Rao 1948) de una posición propia de un cuerpo, o de un desplazamiento común de todo lo que va en el vehículo en la dirección de las ruedas, en algunas fotos: cada corte de la serie y cada foto por separado; en fotos de antes y después de mover el soporte, también de cualquier paso del vehículo sobre el suelo. De todas las explicaciones posibles esta debe ser la mejor, con una probabilidad de azar inferior a 1e-4 en un trabajo sin defectos, y mayor que 2,5 mm o 0,12° (vehículo: 1,5 mm). Las fotos deben estar enlazadas también por otros cuerpos: un cuerpo que es el único común a dos fotos no tiene redundancia.

finding-rule-sheet-slid =
    .rationale = Quien mueve un soporte pisa las láminas. Las fotos de antes y después del movimiento se enlazan por láminas y placas: si una se ha ido, nadie sabe qué más se ha ido.
    .method = Una lámina de la que no se usó ninguna esquina en una foto, pero sí en fotos entre otros movimientos del soporte: se les ajusta su deslizamiento por el suelo (dos coordenadas, un giro). Es un golpe si una esquina se desplazó más de 2,5 mm y lo que queda está por debajo de 0,2 px o de una séptima parte del desajuste; una sombra o una bota no conserva la forma de la impresión. Las láminas usadas las ve la búsqueda de lo que se movió entre las fotos.

finding-rule-phases-differ =
    .rationale = Las fotos de antes y después de la calibración demuestran que nada se movió mientras duró.
    .method = Un solo ajuste en el que soporte y placas tienen una posición en cada fase sobre las mismas láminas de suelo; la diferencia frente a su propia covarianza (prueba de Wald), probabilidad de azar inferior a 1e-4 y mayor que 2,5 mm o 0,12°. Si se encuentra, las comprobaciones son las de las fotos de antes.

finding-rule-plates-swapped =
    .rationale = Cada placa pertenece a un lado del vehículo y cada lámina a su sitio en el portamarcadores; intercambiadas, miden otro cuerpo.
    .method = La placa izquierda debe estar a la izquierda de la línea que va de las ruedas traseras al soporte, la delantera por delante de la trasera de su lado, y lo alto de cada placa debe apuntar hacia arriba. Láminas: en todas las fotos un marcador está donde el juego pone otro, cuatro veces más cerca que de su propio sitio, o en su propio sitio pero girado. Exacto; sin falsas alarmas. Las láminas de suelo que son cuerpos propios pueden estar en cualquier sitio: intercambiarlas no cambia nada.

finding-rule-plate-not-seated =
    .rationale = Una placa que no está a ras de su rueda apunta a otro sitio que la rueda: la línea de empuje y la convergencia siguen a la placa.
    .method = Diferencia de las direcciones de las dos placas de un eje (convergencia total), que es pequeña en cualquier vehículo de carretera: más de 0,55° (práctica habitual, sin fuente) con una probabilidad de 0,95. También una posición propia de la placa en algunas fotos (prueba de puntuación, probabilidad de azar inferior a 1e-4). No se ven dos placas torcidas el mismo ángulo ni una placa girada alrededor de su eje, lo que no cambia nada.

finding-rule-plate-off-hub =
    .rationale = Una placa que está fuera del buje de su rueda por igual en todas las fotos desplaza el eje, y con él la línea central y todo lo que se mide desde ella; las fotos concuerdan entre sí de todos modos.
    .method = El ángulo de empuje, más de 1° (práctica habitual, sin fuente) con una probabilidad de 0,95, donde la convergencia total del eje no lo distingue de una placa que no está a ras; y el ancho de vía delantero frente al trasero, de buje a buje, más de 100 mm (práctica habitual, sin fuente) con esa probabilidad. Desplazamientos menores solo se ven frente a medidas introducidas, y apenas dos placas de un eje desplazadas por igual hacia un lado.

finding-rule-vehicle-sizes-disagree =
    .rationale = Una marca por delante del frontal o una placa fuera de su buje es la misma en cada foto, y ningún desajuste la muestra: lo hace lo que se sabe del vehículo.
    .method = Distancia entre ejes, frontal por delante del eje trasero y los dos anchos de vía, tal como se introdujeron, cada uno frente a lo que muestran las fotos: más de cuatro incertidumbres típicas de ambos juntos (probabilidad de azar inferior a 1e-4) y 5 mm (práctica habitual, sin fuente). No se dice donde otra cosa ya estropea todos los valores. No se ven las medidas no introducidas ni lo que no cambia ninguna de ellas, como una marca frontal a un lado del frontal.

finding-rule-print-scale-wrong =
    .rationale = Una impresión al 97 % hace que su portamarcadores parezca un 3 % más lejos.
    .method = Prueba de puntuación de un factor en los tamaños de todos los marcadores de un portamarcadores, de todas las láminas de suelo o de todas las placas de las ruedas, y de uno en todos los marcadores. El factor común a todos se distingue de la distancia focal de la cámara solo por la separación de los marcadores en un portamarcadores; si no basta, se nombra la explicación rival. La mejor de todas las explicaciones posibles, probabilidad de azar inferior a 1e-4, más del 0,15 % en un portamarcadores o en uno de esos grupos, y con la misma seguridad más del 0,05 %; más del 0,3 % en todos. No se ve: un portamarcadores con un solo marcador cuya distancia no fija nada más.

finding-rule-print-not-flat =
    .rationale = Un marcador se mide como un cuadrado plano. El papel combado muestra su dibujo en otro lugar, distinto desde cada lado, y arrastra distancias y ángulos; ningún número de píxeles lo compensa.
    .method = Los residuos dicen cuánto se desplaza de forma suave la imagen de cada marcador: combaduras (polinomios de grado dos, salvo lo que parece perspectiva) y ondas (de grado tres y cuatro), más allá de la dispersión de bloques de residuos; la peor quinta parte de los marcadores de una foto no habla por los demás. Por debajo de 0,0002 del lado (0,03 px como máximo; 2,5 veces eso donde el teléfono cambió la luz) cuentan como ninguna. Lo que hacen a las esquinas es parte de su incertidumbre. Se nombra donde la mitad de lo que las fotos muestran de un portamarcadores se aparta más de 0,001 del lado; fotos de noche renderizadas de impresiones planas llegan a 0,0007. Aviso si una comprobación no está demostrada; si no, nota. Por sí mismo no empeora nada: las incertidumbres ya lo incluyen. No se ven una combadura que parece otra dirección de observación ni impresiones desplazadas, giradas, estiradas o cizalladas en conjunto.

finding-rule-marker-displaced =
    .rationale = Los lugares en un portamarcadores se conocen tan bien como dice su archivo del juego, y el ajuste los deja ceder otro tanto; si cedieran más, un portamarcadores doblado unos milímetros pasaría por otro lugar del soporte.
    .method = Se suman los cuadrados de lo que cedieron los lugares de un portamarcadores, cada uno en su incertidumbre típica: a lo sumo una ji cuadrado donde el archivo es cierto; probabilidad de azar inferior a 1e-6. Se nombran los marcadores cuyo lugar libre (prueba de puntuación, tres coordenadas) tiene tal probabilidad y se aparta más de 0,75 mm, y los que no participaron en ninguna foto, o que, varios del mismo portamarcadores, faltaron en una, aunque todas sus esquinas se apartan por igual, más de 0,5 px. Nada se dice de lugares donde otra cosa explica mejor las fotos. No se ve: todos los marcadores de un portamarcadores desplazados por igual.

finding-rule-camera-mismatch =
    .rationale = Un archivo de cámara vale para un objetivo de un aparato; con otro, las rectas se curvan de otro modo y todo se desplaza.
    .method = EXIF frente al archivo de cámara: exacto cuando ambos dicen algo. Por ajuste: un factor focal común a todas las fotos de una cámara, desviado más del 1 %; o la prueba de puntuación de un objetivo libre (distancias focales, punto principal, distorsión) como mejor explicación con una probabilidad de azar inferior a 1e-4, si los residuos son más del doble de lo que declara el detector. La misma prueba del objetivo de una sola foto descubre otro teléfono del mismo modelo, cosa que EXIF no puede. Una imagen girada 180 grados antes de guardarla: la prueba de puntuación de ese único cambio del objetivo (punto principal y descentrado en el otro lado); un objetivo justo en el centro de la imagen no lo delata. Una imagen en espejo: exacto. No se ve otro aparato con el mismo objetivo.

finding-rule-photo-zoomed =
    .rationale = El archivo de cámara vale para una distancia focal; una foto con zoom hace que todo parezca más cerca.
    .method = Zoom digital en EXIF superior a 1,02, o la distancia focal resuelta de una foto desviada más del 1 % y cinco incertidumbres típicas de su valor previo (probabilidad de azar 6e-7), o la prueba de puntuación de una distancia focal libre como mejor explicación (probabilidad de azar inferior a 1e-4). Si todas las fotos se desvían por el mismo factor, es `camera-mismatch`.

finding-rule-photo-resized =
    .rationale = Un archivo de cámara vale para una cuadrícula de píxeles; una foto reescalada ha perdido píxeles y no encaja con ningún archivo de cámara.
    .method = Tamaño guardado frente al archivo de cámara y frente al tamaño que indica el EXIF de la propia foto. Exacto; una foto reducida, ampliada de nuevo y despojada de su EXIF solo se nota como borrosa.

finding-rule-photo-reused =
    .rationale = Dos fotos demuestran algo porque cada una podría contradecir a la otra; una copia concuerda consigo misma.
    .method = Los mismos bytes; o las esquinas de los marcadores que comparten dos fotos (dos marcadores o más) son imagen afín unas de otras con 1 px: es una copia recodificada, reescalada o recortada, también en espejo. Desde dos sitios de un puesto el residuo es de decenas de píxeles, así que no hay falsas alarmas salvo con una cámara en trípode: también eso es una sola foto, a no ser que el soporte se moviera entretanto y las fotos lo muestren: hechas a otra hora según sus propios datos, o con el soporte en otro sitio respecto a todo lo demás en más de 0,1 px y tres veces el residuo de la aplicación.

finding-rule-photo-blurred =
    .rationale = La borrosidad cuesta exactitud, y la de una mano que se mueve no es igual en todas las direcciones, así que desplaza los bordes.
    .method = Mediana de la borrosidad ajustada de los marcadores de la foto: más de 1,8 px, o más de 1,2 px y el doble que la foto más nítida. Donde no se encontró ningún marcador: de cada subida de 40 niveles en 32 px, la parte que cabe en 4 px; la mitad tiene menos de 0,5, a lo ancho o a lo alto de la imagen, y hay subidas así en veinte o más de sus 64 partes. Una pared lisa o una sombra suave no se considera borrosa: tiene muy pocas.

finding-rule-photo-badly-lit =
    .rationale = Un reflejo se traga el negro, el blanco quemado desborda sus bordes, la oscuridad es ruido: los bordes se mueven o se pierden.
    .method = Deslumbramiento: un marcador que las posiciones resueltas sitúan en la imagen, de cara a la cámara y bastante grande, no se encontró o perdió esquinas, mientras que se encontró un vecino de la misma cara y el soporte no puede taparlo, y más de 0,45 de su área está a plena escala (la impresión por sí sola llega a 0,4). Quemado: más de un tercio del área de la mitad de los marcadores está a plena escala. Oscuro: la mitad de los marcadores tiene un contraste inferior a 0,12; o no se encontró ningún marcador y menos de una centésima de la imagen supera el nivel 48 de 255. Todo exacto en la imagen; un marcador con alguien delante no es deslumbramiento.

finding-rule-photo-light-changed =
    .rationale = Los teléfonos aclaran lo oscuro y oscurecen lo claro zona por zona (HDR, mapeo de tonos). Lo que llega hasta un borde deforma entonces lo que muestra dónde está, así que las esquinas se conocen peor que en una foto revelada sin retoques.
    .method = Cada marcador de 60 px o más se divide en parcelas de 7 px; entre todas las parcelas de la foto, el logaritmo de la ganancia se dispersa más de 0,02 por encima de lo que explica el ruido (fotos muy cambiadas de verdad conocida muestran de 0,05 a 0,09). No se ven ganancias de grano más fino ni fotos cuyos marcadores son todos menores. Aviso si una comprobación no está demostrada; si no, nota. Por sí mismo no empeora nada: las incertidumbres ya lo incluyen.

finding-rule-photos-too-alike =
    .rationale = Las distancias salen de mirar lo mismo desde sitios distintos; dos fotos desde un sitio son una foto.
    .method = Ángulo entre las visuales del soporte a dos cámaras inferior a 5 grados. Exacto; sin falsas alarmas.

finding-rule-floor-not-level =
    .rationale = Altura, inclinación y nivelación se refieren al suelo. Si se quiebra entre el vehículo y el soporte, no existe tal plano.
    .method = Prueba de puntuación: altura e inclinación de una lámina, o de todas las láminas más allá de un quiebro transversal a la línea del vehículo. La mejor de todas las explicaciones posibles, probabilidad de azar inferior a 1e-4, más de 2 mm o 0,15°. También la altura de los bujes traseros sobre el plano de las láminas frente a la introducida, más de cuatro incertidumbres típicas y 2 mm (probabilidad de azar 6e-5). Un aviso donde los dos bujes de un eje difieren en altura más de 15 mm y dos incertidumbres típicas, o los ejes más de 40 mm (práctica habitual, sin fuente). Un suelo que es un solo plano inclinado no es un desajuste, y tres láminas están siempre en un plano.

finding-rule-carrier-not-seen =
    .rationale = Lo que no muestra ninguna foto no forma parte de la prueba.
    .method = Ninguna foto enlazada con las demás muestra dos esquinas útiles del portamarcadores, o un portamarcadores plano encaja igual de bien en dos posiciones. Exacto; sin falsas alarmas.

finding-rule-steering-not-straight =
    .rationale = Los procedimientos exigen las ruedas rectas: una rueda girada desplaza el vehículo sobre sus neumáticos, y el ángulo de dirección entra en muchas calibraciones.
    .method = Dirección media de las placas delanteras frente al eje central: más de lo que medio grado (práctica habitual, sin fuente) puede dar en el 95 % de los casos, y más de 3,3 incertidumbres típicas (probabilidad de azar inferior a 1e-3). Requiere placas en las cuatro ruedas.

finding-rule-wrong-datum-suspected =
    .rationale = Un soporte desviado justo por un error conocido se colocó con cuidado, según una cifra equivocada: nombrar el error ahorra medirlo todo otra vez.
    .method = Una comprobación que está fuera por más del doble de su tolerancia se prueba con los otros puntos de referencia (frontal, ejes, los de la hoja), las otras líneas de referencia, el ángulo de empuje con el signo contrario, el otro lado, el signo invertido, el nominal de otro paso, cero, pulgadas por mm, cifras intercambiadas, el ángulo complementario, otro plano del soporte y su borde por su centro. Se nombra si el resto está por debajo de la incertidumbre expandida más media tolerancia y de un cuarto de la desviación; nunca se aplica. Por azar una desviación de unos 100 mm encaja con alguno en cerca del 10 % de los casos: es un indicio.

finding-rule-reading-disagrees =
    .rationale = Dos instrumentos independientes que discrepan más allá de sus incertidumbres: uno de ellos está mal, o se tecleó mal.
    .method = E_n de ISO/IEC 17043 superior a 1: con incertidumbres correctas, como mucho uno de cada veintidós pares, menos cuando ambas cuentan.

finding-rule-marker-duplicated =
    .rationale = Nadie puede decir cuál de dos marcadores iguales es del juego, ni cuál de ellos muestra otra foto; el código se deja fuera en todas las fotos.
    .method = Un mismo número del juego visto dos veces en una foto. Exacto; basta con una impresión sobrante a la vista.

finding-rule-weak-geometry =
    .rationale = Si la incertidumbre es mayor de lo que permite la tolerancia, no se podría demostrar ninguna posición del soporte.
    .method = Una comprobación que ningún valor podría superar con esta incertidumbre (JCGM 106): exacto. Y una comprobación cuyo valor cambia más que su incertidumbre expandida, una décima de su tolerancia y cuatro desviaciones típicas de tal cambio al dejar fuera una foto, un portamarcadores o la forma del modelo de objetivo (probabilidad de azar 6e-5 en cada caso).

finding-rule-times-out-of-order =
    .rationale = Las fotos demuestran dónde estaba el soporte cuando se hicieron, no una hora después.
    .method = Horas que indican su diferencia con UTC: fotos de un trabajo (de cada fase, si tiene dos) dentro de una hora entre sí, las de antes dentro de una hora del `taken` del trabajo y no después de la calibración, las de después no antes de ella, y todas las de antes anteriores a todas las de después. Exacto, en la medida en que lo son los relojes; una hora sin diferencia no se puede comprobar y se deja aparte. Una foto que figura como tomada después de mover el soporte y que el mismo teléfono (marca y modelo) hizo más de un minuto antes que una de antes del movimiento es de nivel parada, indiquen o no las horas su diferencia; con dos teléfonos, más de cinco minutos antes, es un aviso. Si se movió el soporte, la calibración no puede haberse ejecutado antes de la primera foto de su posición actual: nivel parada cuando un mismo teléfono tiene fotos de antes y de después del movimiento; si no, un aviso. Las fotos de un mismo teléfono separadas más de una hora se señalan también por horas locales sin diferencia; igual que una calibración más de cuatro horas después de la última foto del montaje (práctica habitual, sin fuente), si no hay fotos de después; y una foto cuya hora propia se aparta más de 26 horas de la de los satélites de su registro.

finding-rule-other-day =
    .rationale = Una foto de la semana pasada muestra dónde estaba el soporte la semana pasada.
    .method = Para fotos cuyos datos no indican diferencia con UTC: su hora local frente a la del trabajo, o si no frente a la de la primera foto así, ambas tal como están escritas: más de 14 h de distancia y otra fecha. Las horas con diferencia las compara al minuto `times-out-of-order`. Un reloj mal puesto o un teléfono con la hora de otro continente se ven igual; un reloj atrasado a propósito no se ve.

finding-rule-photo-edited =
    .rationale = Lo que se midió es la imagen del archivo; un programa que lo escribió de nuevo puede haber cambiado más que el giro.
    .method = Huellas que dejan los programas de edición y no las cámaras: un programa de tratamiento nombrado en los datos, el bloque de datos de un editor, un historial de edición, una hora de escritura más de un minuto posterior a la toma, credenciales de contenido que no corresponden a los bytes o que enumeran ediciones (si el programa se construyó con ellas). La miniatura frente a la imagen: correlación en 24 por 18 celdas inferior a 0,85 en el mejor de cuatro giros, quitadas las franjas negras y los lados más largos. Las tablas de compresión solo se nombran junto a otras huellas: los teléfonos también usan las de la norma. No se ve una edición sin huella ni la de una parte pequeña; girar o renombrar sin malicia en una galería puede dejar una.

finding-rule-photo-rendered =
    .rationale = Este programa renderiza puestos perfectos; una foto así dada por verdadera estaría dentro, sea como sea el vehículo.
    .method = Los datos nombran el programa que la renderizó, o la imagen lleva su marca: 160 por 160 celdas, cada una un nivel de gris más clara o más oscura según un signo seudoaleatorio, nunca sobre marcadores (Cox, Kilian, Leighton y Shamoon 1997). Cada celda frente a sus cuatro vecinas, limitada a 2 niveles, se correlaciona con los signos, en ocho giros y reflejos; desde 8 desviaciones típicas la marca está. Falsas alarmas: menos de 1e-13 por foto (Hoeffding 1963), pues los signos no saben nada de ella. La marca resiste la calidad JPEG 70 y la mitad del tamaño; una imagen recortada, compuesta o hecha por un programa cambiado puede no llevarla.

finding-rule-noise-repeated =
    .rationale = Dos fotos demuestran algo porque cada una podría contradecir a la otra; una que se hizo a partir de la otra dice lo que alguien quería.
    .method = Para marcadores cuyas esquinas difieren entre dos fotos solo por un desplazamiento (0,5 px): lo que cada píxel se aparta de sus cuatro vecinos, en el medio de las celdas (a 0,3 de la celda y 3 px de sus bordes), correlacionado con ese desplazamiento en 150 píxeles o más; por encima de 0,85 se llama el mismo. Desde un mismo lugar las impresiones y los bordes se ven iguales: fotos renderizadas de un trípode antes y después de un movimiento, como las revelan ocho clases de teléfonos, muestran hasta 0,64 (con calidad JPEG 75), y ninguna se nombra. Una parte girada, escalada o desplazada por fracciones de píxel casi nunca se ve, ni la que se guardó con calidad JPEG inferior a unos 95.

finding-rule-markers-without-noise =
    .rationale = Dónde estaba un soporte se sigue de sus marcadores; quien inserta otros lo mueve.
    .method = Mediana del tamaño de lo que un píxel se aparta de sus cuatro vecinos, en el medio de las celdas de un marcador (a 0,3 de la celda y 3 px de sus bordes), en blanco y en negro; cada uno frente a la mediana de los marcadores de la foto en otros portamarcadores (cuatro o más, con 0,3 niveles de gris o más). De blanco y negro cuenta el más ruidoso, de los marcadores del portamarcadores (dos o más) la mediana: por debajo de 0,4 se nombra. Imágenes renderizadas por dos programas: 64 portamarcadores en fotos de 12 MP, también muy suavizadas y comprimidas, muestran 0,53 o más, ninguno se nombra; los soportes insertados sin ruido se nombran en 30 de 30 con calidad JPEG 95, en 25 de 30 con 85 y en 18 de 30 con 75. No había fotos reales con tantos marcadores. Celdas menores de unos 18 px dejan demasiado poco. Los marcadores cortados de otra foto traen su propio ruido y no se ven, ni aquellos a los que se dio ruido.

finding-rule-compression-differs =
    .rationale = Dónde estaba un soporte se deduce de sus marcadores; quien pega otros, fotografiados en otro lugar con su propio ruido, lo mueve.
    .method = En los bloques de 8 x 8 píxeles dentro de los marcadores, los coeficientes de una compresión anterior quedan cerca de múltiplos de sus pasos si se guardó otra vez con pasos más finos (Popescu y Farid 2004; por zonas: Lin, He, Tang y Tang 2009): el histograma oscila. Se avisa cuando los demás marcadores (cuatro o más) oscilan más de 7 desviaciones típicas en dos de 20 coeficientes y los propios de un portamarcadores (dos o más) muestran menos de 0,35 de ello, conocido a un sexto o mejor. Una foto comprimida una vez no tiene ese rastro y no da aviso. Qué ataques se ven, y con qué frecuencia se avisa de fotos honestas, está en docs/attacks.md. No se ve: una foto guardada otra vez con los mismos pasos o más gruesos, una cuyo original no era JPEG y una en la que se pegaron todos los marcadores.

finding-rule-focal-contradicts =
    .rationale = Unos datos que indican otro ángulo de visión que el de la imagen son de otra imagen, o la imagen se recortó.
    .method = La distancia focal equivalente a 35 mm de los datos frente a la resuelta de la foto, por la diagonal de la imagen (43,27 mm) y por su lado largo (36 mm), con y sin el zoom digital que indican los datos, pues los fabricantes difieren: se nombra si se aparta de todas más del 10 %, medio milímetro y tres incertidumbres típicas. Un recorte menor no se ve, y unos datos sin ese valor no se pueden comprobar.

finding-rule-other-kit =
    .rationale = Dos juegos en una imagen invitan a usar el archivo de juego equivocado, o muestran un puesto que no es el del trabajo.
    .method = Números que no están en el juego del trabajo ni reservados para tarjetas: al menos dos leídos sin ningún bit corregido, cada uno en dos fotos, o tres en una. Un tablero de cámara en la pared o el juego de un vecino se ven igual; un marcador mal leído (menos de 1e-6 por foto) tendría que darse dos veces.

finding-rule-card =
    .rationale = Un código que existe solo para este trabajo, visto en una foto, demuestra que la foto se hizo para este trabajo.
    .method = Los números reservados para tarjetas, tal como se encontraron en cada foto, frente a los del trabajo. Exacto, salvo que un marcador se lea como otro (menos de 1e-6 por foto); una foto que muestra la tarjeta entera responde por las fotos que el ajuste une con ella.

finding-rule-photos-not-listed =
    .rationale = Quien puede elegir entre las fotos de un soporte puede omitir las que contradicen.
    .method = Los nombres de las imágenes de `photos` frente a las que el trabajo enumera como fotos o anexos, cuando enumera alguna. Exacto; no se mira dentro de ellas, pero se sellan con el trabajo. Las fotos que están en otro lugar o se borraron no se ven. En una hoja con varios pasos, también las fotos que muestran el soporte en un paso del que no trata ninguna comprobación, o que no nombran ninguno.

finding-rule-prerequisites =
    .rationale = La hoja dice qué debe cumplirse antes de que la geometría signifique algo: neumáticos, carga, dirección, suspensión asentada.
    .method = Las respuestas del trabajo frente a la lista de la hoja: `false` detiene, igual que las palabras que empiezan por no (no, not, nein, nicht, non, pas); la falta de respuesta a una obligatoria, o palabras que no son un sí claro ni llevan una cifra («2,3 bar»), dejan los datos incompletos. Las fotos no pueden comprobar una declaración.

finding-rule-credentials-lacking =
    .rationale = A una hoja que pregunta quién tomó las fotos no le basta lo que muestran.
    .method = En el archivo de cada foto que participa se busca un manifiesto C2PA; cada hash, la firma y su certificado se validan sin red, según las anclas indicadas. Solo bastan credenciales válidas de un firmante de confianza cuyo manifiesto no enumere más que la toma por una cámara. No hay tasa de falsas alarmas: lo exigido está o no está. No se ven una clave robada, la foto de una pantalla ni las revocaciones que el archivo no lleva.

finding-rule-not-checked =
    .rationale = Seis magnitudes sitúan un soporte; una hoja que calla sobre una la deja abierta, y quien lee debe saberlo.
    .method = Distancia, centrado, altura, escuadra, inclinación y nivelación frente a las comprobaciones y renuncias de la hoja. Exacto.
