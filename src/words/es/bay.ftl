# The floor of a bay.
bay-title = Suelo del puesto de calibración
bay-head = Suelo del puesto de calibración, { $sheets ->
        [one] una lámina
       *[other] { $sheets } láminas
    }, { $photos ->
        [one] una foto
       *[other] { $photos } fotos
    }
bay-basis-typed = Alturas sobre el plano en que se apoyan las ruedas (altura del buje introducida). Las fotos no conocen la plomada: para saber si ese plano está horizontal hace falta un nivel de burbuja.
bay-basis-wheels = Alturas sobre un plano paralelo a los centros de rueda; el cero es el suelo junto a las ruedas traseras. Las fotos no conocen la plomada: para saber si ese plano está horizontal hace falta un nivel de burbuja.
bay-basis-sheets = No se vieron placas de rueda: alturas sobre el plano de ajuste de las propias láminas, sin pendiente respecto al vehículo.
bay-limit =
    { $what }: { $value } ±{ $u } { $unit }, { $bound ->
        [most] se exige { $limit } { $unit } como máximo
        [least] se exige { $limit } { $unit } como mínimo
       *[none] sin límite en la hoja de montaje
    }
bay-limit-verdict = { $figure }: { $verdict }
bay-rise = El suelo { $front ->
        [up] sube { $front_deg }° ({ $front_mm } mm/m) hacia delante
        [down] baja { $front_deg }° ({ $front_mm } mm/m) hacia delante
       *[flat] no sube hacia delante
    } y { $left ->
        [up] sube { $left_deg }° ({ $left_mm } mm/m) hacia la izquierda
        [down] baja { $left_deg }° ({ $left_mm } mm/m) hacia la izquierda
       *[flat] no sube hacia la izquierda
    }.
bay-twist = Los cuatro centros de rueda están alabeados { $twist } mm.
bay-column-sheet = Lámina
bay-column-ahead = Por delante del eje trasero
bay-column-left = A la izquierda
bay-column-height-mm = Altura, mm
bay-column-off-plane-mm = Fuera del plano, mm
bay-column-height = Altura, 95 %
bay-column-off-plane = Fuera del plano
bay-column-rise = Subida propia, delante / izquierda
bay-map = Alturas del suelo vistas desde arriba
bay-map-written = Mapa: { $file }
bay-foot = Entre las láminas el mapa está interpolado. Prevalecen la información de servicio del fabricante del vehículo y las normas locales; los láseres y los vehículos elevados requieren sus propias precauciones.
