# Por qué una comprobación no tiene valor.
advice-not-seen = Ninguna foto utilizable muestra { $body }.
advice-nothing-measured = Hay muy pocas fotos utilizables para medir algo.
advice-no-floor = No se vieron ni láminas de suelo ni las dos placas de las ruedas traseras: no hay suelo.
advice-no-floor-height = No se vio ninguna lámina de suelo y falta vehicle.floor_below_hub_mm.
advice-no-centreline = No hay eje central: mostrar placas en las dos ruedas delanteras o una marca frontal con on_centreline.
advice-no-wheelbase = No se vieron placas delanteras y falta vehicle.wheelbase_mm.
advice-no-nose = No se vio la marca frontal y falta vehicle.nose_from_rear_axle_mm.
advice-no-datum = El punto de referencia está en un portamarcadores que el juego no tiene.
advice-plates-are-the-floor = Aquí las placas definen el suelo; hacen falta láminas de suelo.
advice-leans = Torcida respecto al vehículo, más de un grado: { $body }. Un punto medido desde ella en las direcciones del vehículo no está donde parece. Fijar la marca a plomo y a escuadra con el vehículo, o medir desde una marca más cercana al punto.
advice-reading-only = Las fotos no lo muestran; hace falta una lectura, que nombre la diana y el paso si hay varios.
advice-degenerate = La geometría es degenerada.

# Por qué una comprobación no está decidida.
advice-too-small = Estas fotos y este juego no pueden demostrar una tolerancia tan pequeña. Esto no significa que esté fuera de tolerancia. La incertidumbre es de { $uncertainty } y ningún valor podría demostrarse si no baja de { $needed }. Hace falta: { $more }.
advice-too-unsure = La regla de la hoja de montaje decide solo por el valor medido, lo que presupone una incertidumbre no mayor que la tolerancia (JCGM 106:2012, 8.2). Esto no significa que esté fuera de tolerancia. La incertidumbre es de { $uncertainty } y la tolerancia de { $tolerance }. Hace falta: { $more }.
advice-too-unsure-likely = La regla de la hoja de montaje decide con menos del 95 % de probabilidad, lo que solo se hace donde la incertidumbre no es mayor que la tolerancia. Esto no significa que esté fuera de tolerancia. La incertidumbre es de { $uncertainty } y la tolerancia de { $tolerance }. Hace falta: { $more }.
advice-too-near = El valor está demasiado cerca del límite para su incertidumbre de { $uncertainty }. Lo decide una foto más o un montaje más cercano al valor nominal.
advice-more-wider = más fotos desde direcciones más separadas
advice-more-or-plates = más fotos desde direcciones más separadas, o placas en las cuatro ruedas
advice-more-with-plates = más fotos desde direcciones más separadas, en las que se vean las placas de las cuatro ruedas
advice-untrusted = No fiable mientras siga abierto «{ $finding }».
advice-untrusted-outside = No fiable mientras siga abierto «{ $finding }»: lo que se midió fuera puede no estarlo.
advice-outside-anyway = Fuera sea cual sea la causa, mientras siga abierto «{ $finding }».
advice-light-changed = El teléfono alteró la luz de las fotos; sin alterar (HDR desactivado, o una imagen en bruto revelada sin retoques) darían { $uncertainty } en lugar de los { $now } actuales.
advice-one-more-photo = Con este valor, una foto más lo decidiría: { $where }.

advice-next-photo =
    { $side ->
        [middle] a { $ahead } m delante del frontal, en el centro, cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista
        [left] a { $ahead } m delante del frontal, { $aside } m a la izquierda del vehículo (en su sentido de marcha), cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista
       *[right] a { $ahead } m delante del frontal, { $aside } m a la derecha del vehículo (en su sentido de marcha), cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista
    }
advice-next-photo-in-step =
    { $side ->
        [middle] a { $ahead } m delante del frontal, en el centro, cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista, el soporte como en el paso { $step }
        [left] a { $ahead } m delante del frontal, { $aside } m a la izquierda del vehículo (en su sentido de marcha), cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista, el soporte como en el paso { $step }
       *[right] a { $ahead } m delante del frontal, { $aside } m a la derecha del vehículo (en su sentido de marcha), cámara a { $up } m sobre el suelo, con soporte y placas de rueda a la vista, el soporte como en el paso { $step }
    }

# Por qué no se pudo medir nada.
advice-no-photo = El trabajo no tiene ninguna foto.
advice-no-usable-photo = No se puede medir ninguna foto; sobre la primera: { $why }.
advice-one-photo = Solo se puede medir una foto y nada podría contradecirla. Tomar al menos una más desde el otro lado.
advice-one-photo-because = Solo se puede medir una foto y nada podría contradecirla.
advice-photo-cannot = { $photo } no se puede medir: { $why }.
advice-not-linked = Las fotos no tienen ningún portamarcadores en común. Tomarlas de modo que cada una muestre el soporte y las placas de rueda.
advice-nothing-seen =
    { $photos ->
        [one] La foto no muestra ningún marcador del juego.
       *[other] Ninguna de las { $photos } fotos muestra un marcador del juego.
    }
advice-not-settled = El ajuste de las fotos no llegó a una solución. Repetirlas desde otros lugares.
advice-not-settled-with = El ajuste de las fotos no llegó a una solución; sin el marcador { $marker } ({ $name }) llega a ella. Otra impresión de ese marcador está a la vista, o se movió entre las fotos. Retirar las impresiones sobrantes y repetir las fotos.

# Qué dice un plan de una comprobación que sus fotos no podrían decidir.
advice-plan-undetermined = { $quantity }: nada en las fotos determina este valor. Mostrar las placas, las láminas de suelo o la marca frontal desde las que se mide, o escribir las medidas del vehículo en el trabajo.
advice-plan-corners = { $quantity }: el { $percent } % de su varianza viene del ruido de las esquinas. Lo reducen marcadores más grandes o fotos desde más cerca y desde direcciones más separadas.
advice-plan-layout = { $quantity }: el { $percent } % de su varianza viene de la posición de los marcadores en sus portamarcadores. Medir el juego (`baywitness survey`) o pegarlos con más exactitud.
advice-plan-scale = { $quantity }: el { $percent } % de su varianza viene de los tamaños impresos. Medir los marcadores e introducir sus tamaños.
advice-plan-calibration = { $quantity }: el { $percent } % de su varianza viene de la calibración de la cámara. Volver a ajustar la cámara con más fotos del tablero.
advice-plan-focal = { $quantity }: el { $percent } % de su varianza viene de la distancia focal y del punto principal de cada foto. Los fijan más fotos, o fotos con marcadores cercanos y lejanos a la vez.
advice-plan-turn = { $quantity }: el { $percent } % de su varianza viene del giro de la mano mientras una foto se lee línea a línea. Mantener quieto el teléfono o ponerlo en un trípode.
advice-plan-edge = { $quantity }: el { $percent } % de su varianza viene del desplazamiento de bordes de las fotos. Lo reducen marcadores más grandes.
advice-plan-seating-thrust = { $quantity }: el { $percent } % de su varianza viene del asiento de las placas en las ruedas. Repetir las fotos tras media vuelta de rueda, usar mejores pinzas o referir la hoja al eje central, para el que las cuatro ruedas llevan placa.
advice-plan-seating = { $quantity }: el { $percent } % de su varianza viene del asiento de placas y marcas. Usar mejores pinzas; indicar en el juego un asiento medido.
advice-plan-wheelbase = { $quantity }: el { $percent } % de su varianza viene de la distancia entre ejes introducida. Poner placas en las ruedas delanteras.
advice-plan-nose = { $quantity }: el { $percent } % de su varianza viene de la posición del frontal introducida. Poner una marca en el frontal.
advice-plan-hub-height = { $quantity }: el { $percent } % de su varianza viene de la altura de buje introducida. Colocar láminas de suelo.
advice-plan-datum = { $quantity }: el { $percent } % de su varianza viene del desplazamiento del punto de referencia. Medirlo mejor o elegir otro.
advice-plan-reading = { $quantity }: el { $percent } % de su varianza viene de una lectura. Tomarla con un instrumento más fino.
advice-plan-target =
    { $side ->
        [middle] { $ahead } mm delante del frontal, en el centro, a { $up } mm de altura
        [left] { $ahead } mm delante del frontal, { $aside } mm a la izquierda, a { $up } mm de altura
       *[right] { $ahead } mm delante del frontal, { $aside } mm a la derecha, a { $up } mm de altura
    }

advice-bay-wrong-camera = { $photo }: { $width } x { $height } px no es el tamaño de la cámara { $camera }. Indicar la cámara que la tomó.
advice-bay-too-few-sheets =
    { $sheets ->
        [0] Las fotos no unen ninguna lámina de suelo; hacen falta al menos tres que no estén en fila. Colocar más láminas y hacer que fotos vecinas compartan algunas.
        [one] Las fotos unen una sola lámina de suelo; hacen falta al menos tres que no estén en fila. Colocar más láminas y hacer que fotos vecinas compartan algunas.
       *[other] Las fotos unen { $sheets } láminas de suelo; hacen falta al menos tres que no estén en fila. Colocar más láminas y hacer que fotos vecinas compartan algunas.
    }
