# The floor of a bay.
bay-title = Sol du poste de calibrage
bay-head = Sol du poste de calibrage, { $sheets ->
        [one] une feuille
       *[other] { $sheets } feuilles
    }, { $photos ->
        [one] une photo
       *[other] { $photos } photos
    }
bay-basis-typed = Hauteurs au-dessus du plan sur lequel reposent les roues (hauteur du moyeu saisie). Les photos ne connaissent pas la verticale : seul un niveau à bulle dit si ce plan est horizontal.
bay-basis-wheels = Hauteurs au-dessus d’un plan parallèle aux centres de roue ; le zéro est le sol au plus près des roues arrière. Les photos ne connaissent pas la verticale : seul un niveau à bulle dit si ce plan est horizontal.
bay-basis-sheets = Aucune plaque de roue vue : hauteurs au-dessus du plan moyen des feuilles, sans pente par rapport au véhicule.
bay-limit =
    { $what } : { $value } ±{ $u } { $unit }, { $bound ->
        [most] { $limit } { $unit } au plus requis
        [least] { $limit } { $unit } au moins requis
       *[none] aucune limite sur la fiche de montage
    }
bay-limit-verdict = { $figure } : { $verdict }
bay-rise = Le sol { $front ->
        [up] monte de { $front_deg }° ({ $front_mm } mm/m) vers l’avant
        [down] descend de { $front_deg }° ({ $front_mm } mm/m) vers l’avant
       *[flat] ne monte pas vers l’avant
    } et { $left ->
        [up] monte de { $left_deg }° ({ $left_mm } mm/m) vers la gauche
        [down] descend de { $left_deg }° ({ $left_mm } mm/m) vers la gauche
       *[flat] ne monte pas vers la gauche
    }.
bay-twist = Les quatre centres de roue sont vrillés de { $twist } mm.
bay-column-sheet = Feuille
bay-column-ahead = Devant l’essieu arrière
bay-column-left = Vers la gauche
bay-column-height-mm = Hauteur, mm
bay-column-off-plane-mm = Écart au plan, mm
bay-column-height = Hauteur, 95 %
bay-column-off-plane = Écart au plan
bay-column-rise = Pente propre, avant / gauche
bay-map = Hauteurs du sol vues de dessus
bay-map-written = Carte : { $file }
bay-foot = Entre les feuilles, la carte est interpolée. Les informations de service du constructeur du véhicule et les règles locales font foi ; les lasers et les véhicules levés exigent leurs propres précautions.
