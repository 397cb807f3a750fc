# Names of quantities, lines and units, also for trends and audits.
plan-check-target = { $name }, { $target }
plan-check-step = { $name }, étape { $step }
plan-check-target-step = { $name }, { $target }, étape { $step }
plan-unit =
    { $unit ->
        [deg] °
       *[other] { $unit }
    }

# A plan of the photos.
plan-title = Plan de prise de vues : { $sheet }
plan-with = Jeu de marqueurs { $kit }, appareil { $camera }
plan-no-station = Aucun endroit de ce poste ne montre assez de marqueurs. Voir plus bas ce qu’il faut changer.
plan-no-station-page = Aucun endroit de ce poste ne montre assez de marqueurs.
plan-photos =
    { $count ->
        [one] Une photo
       *[other] { $count } photos
    } :
plan-photos-each-step =
    { $count ->
        [one] Une photo, prise
       *[other] { $count } photos, prises
    } à chaque étape ({ $steps }) :
plan-shows = montre : { $bodies }
plan-worth-head = Ce qu’elles vaudront (95 %) :
plan-noise = Les coins sont supposés { $ratio } fois plus bruités que sur des photos développées sans traitement, comme le montrent les photos de ce téléphone.
plan-place =
    { $along ->
        [front] { $ahead } m devant l’avant du véhicule
       *[behind] { $ahead } m derrière l’avant du véhicule
    }, { $across ->
        [centre] sur l’axe médian
        [left] { $beside } m à gauche du véhicule
       *[right] { $beside } m à droite du véhicule
    }, appareil à { $height } m de haut, { $towards ->
        [middle] visant le milieu de l’essieu avant
        [left-wheel] visant la roue avant gauche
        [right-wheel] visant la roue avant droite
        [left-of] visant un point { $aside } m à gauche de l’essieu avant
        [right-of] visant un point { $aside } m à droite de l’essieu avant
       *[off] tourné de { $turn }° par rapport au sens de marche
    }
plan-worth = ±{ $u } contre ±{ $tolerance } : prouvé jusqu’à { $room } d’écart
plan-worth-unprovable = ±{ $u } contre ±{ $tolerance } : NE PEUT ÊTRE PROUVÉ
plan-worth-reading = décidé par un relevé, non par des photos
plan-worth-none = NON DÉTERMINÉ par ces photos
plan-least =
    { $count ->
        [one] une photo suffit
       *[other] { $count } photos suffisent
    }
plan-least-none = aucune photo
plan-least-not =
    { $count ->
        [one] pas avec une photo
       *[other] pas avec { $count } photos
    }
plan-follow-up = Une photo après chaque déplacement du support :
plan-follow-up-note = Elle sert à mesurer ; ce qui est dans la tolérance après le dernier déplacement demande autant de photos que le dit la fiche.
plan-change-head = Ce qu’il faut changer :
plan-change-title = Ce qu’il faut changer
plan-stand-title = Où se placer
plan-every-step = Prendre chaque photo à toutes les étapes : { $steps }.
plan-station-markers = ({ $count ->
        [one] un marqueur
       *[other] { $count } marqueurs
    } sur { $bodies })
plan-worth-title = Ce que vaudront les photos
plan-column-check = Contrôle
plan-column-line = Par rapport à
plan-column-expected = Attendu, 95 %
plan-column-least = Photos au moins
plan-foot = Prévu pour un support à sa place requise, des impressions propres et un poste éclairé. Les informations de service du constructeur du véhicule font foi ; les lasers et les véhicules levés exigent leurs propres précautions.
plan-drawing = Le poste vu de dessus : véhicule, support et lieux de prise de vue
plan-clear-width = largeur libre { $width } m
plan-vehicle =
    { $heading ->
        [up] véhicule
       *[right] véhicule, roule vers la droite
    }
plan-camera-height = appareil à { $height } m

# A set-up sheet explained.
plan-sheet-title = Fiche de montage : { $sheet }
plan-sheet-asks = Ce qu’elle demande
plan-sheet-open = Ni contrôlé ni dispensé
plan-sheet-contradictions = Contradictions
plan-sheet-contradictions-title = Contradictions : la fiche ne peut être respectée telle quelle
plan-sheet-questions = Questions
plan-sheet-kit = Avec le jeu de marqueurs { $kit }
plan-sheet-photos =
    { $decided ->
        [all] { $each ->
            [step] { $count } photos à chaque étape décident de tous les contrôles.
           *[once] { $count } photos décident de tous les contrôles.
        }
       *[some] { $each ->
            [step] { $count } photos à chaque étape ne décident pas de tous les contrôles.
           *[once] { $count } photos ne décident pas de tous les contrôles.
        }
    }
plan-sheet-no-kit = Aucun jeu de marqueurs des modèles n’a les cibles que nomme cette fiche.
plan-drawing-written = Dessin : { $file }
