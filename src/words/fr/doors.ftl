# Ce qui ne va pas dans un fichier d'entrée : fichier, endroit et clé, puis le défaut et le remède. Les phrases suivent les deux-points et n'ont pas de point final.
doors-at-place-and-key = { $file }, ligne { $line }, colonne { $column } : { $key } : { $problem } ; { $remedy }
doors-at-place = { $file }, ligne { $line }, colonne { $column } : { $problem } ; { $remedy }
doors-at-key = { $file } : { $key } : { $problem } ; { $remedy }
doors-of-file = { $file } : { $problem } ; { $remedy }
doors-key-without-file = { $key } : { $problem } ; { $remedy }
doors-without-file = { $problem } ; { $remedy }
doors-said = { $text }

# Formats
doors-format-not-stated = le format n’est pas indiqué
doors-format-text = doit être un texte comme « { $wanted } »
doors-format-not-first = n’est pas la première clé
doors-format-remedy = la première ligne doit être : format = "{ $wanted }"
doors-format-version = « { $found } » est une version que ce programme ne connaît pas ; il lit « { $wanted } »
doors-format-version-remedy = utiliser un baywitness plus récent ou l’ancien fichier
doors-format-other = ce fichier est au format « { $found } », mais il faut ici le format « { $wanted } »
doors-format-other-remedy = indiquer ici un fichier de type « { $kind } », ou corriger la première ligne : format = "{ $wanted }"
doors-no-toml = n’est pas du TOML valide ({ $why })
doors-no-toml-remedy = corriger la ligne : une clé, `=` et une valeur ; les textes entre guillemets, les décimales avec un point
doors-key-twice-remedy = garder l’une des deux ; une table présente plusieurs fois a toujours des crochets doubles : [[...]]

# Fichiers
doors-too-large = dépasse { $most } Mio, trop pour un fichier de ce type
doors-too-large-remedy = vérifier que le bon fichier est indiqué
doors-no-utf8 = n’est pas du texte UTF-8
doors-no-utf8-remedy = l’enregistrer comme texte brut en UTF-8 (sans mise en forme)
doors-is-folder = est un dossier, pas un fichier
doors-is-folder-remedy = indiquer le fichier qu’il contient
doors-not-regular = n’est pas un fichier ordinaire
doors-not-regular-remedy = indiquer un fichier ordinaire
doors-not-there = n’existe pas
doors-not-there-remedy = vérifier le nom et le dossier
doors-forbidden = ne peut pas être lu, faute d’autorisation
doors-forbidden-remedy = demander l’autorisation de le lire
doors-unreadable = ne peut pas être lu ({ $why })
doors-unreadable-remedy = vérifier le chemin et le disque

# Clés et valeurs
doors-unknown-key = clé inconnue
doors-did-you-mean = fallait-il lire `{ $word }` ?
doors-remove-it = le supprimer
doors-known-here = connus ici : { $words }
doors-older-key-too = est l’ancien nom d’une clé également présente
doors-older-key-too-remedy = ne garder que `{ $now }`
doors-older-name = { $file } : `{ $older }` s’appelle désormais `{ $now }` ; l’ancien nom reste lu
doors-missing = manque
doors-missing-remedy = ajouter ici `{ $key } = ...`
doors-no-tables = doit être une liste de tables
doors-no-tables-remedy = écrire chacune sous la forme [[{ $path }]]
doors-many-tables = a { $count } entrées, plus que { $most }
doors-many-tables-remedy = en retirer la plupart
doors-kind = doit être { $wanted ->
        [text] un texte
        [flag] true ou false
        [flag-or-text] true, false ou un texte
        [number] un nombre
        [finite] un nombre fini
        [whole] un nombre entier
        [list] une liste
        [table] une table
        [time-with-offset] une date et une heure avec leur décalage par rapport à UTC
        [time] une date et une heure
        [existing-time] un instant qui existe
        *[date] une date
    }, et non { $found }
doors-kind-text-remedy = l’écrire entre guillemets
doors-kind-flag-remedy = l’écrire sans guillemets
doors-kind-flag-or-text-remedy = écrire true, false ou un texte entre guillemets
doors-kind-number-remedy = écrire un nombre sans guillemets ni unité
doors-kind-finite-remedy = écrire à la place un nombre ordinaire
doors-kind-whole-remedy = l’écrire sans point décimal ni guillemets
doors-kind-list-remedy = l’écrire entre crochets
doors-kind-table-remedy = écrire ses clés sous une ligne [{ $path }]
doors-kind-time-remedy = l’écrire comme 2026-11-25T10:30:00+01:00 (ou avec Z pour UTC), sans guillemets
doors-kind-date-remedy = l’écrire comme 2026-11-25, sans guillemets ni heure
doors-empty = est vide
doors-empty-remedy = le remplir ou omettre la clé
doors-long = dépasse { $most } octets
doors-long-remedy = le raccourcir
doors-control = contient des caractères de contrôle
doors-control-remedy = les supprimer
doors-turning = contient des caractères qui inversent le sens d’écriture (U+202A à U+202E, U+2066 à U+2069) : ce qui s’affiche n’est pas ce qui est écrit
doors-unseen = contient des caractères qui ne montrent rien (tels que U+200B, U+2028 ou des étiquettes) : deux textes d’apparence égale ne seraient pas les mêmes
doors-turning-remedy = le saisir de nouveau sans eux
doors-no-name = n’est pas un nom : une ligne de 120 caractères au plus, sans espace au début ni à la fin
doors-no-name-remedy = le raccourcir ou retirer les espaces aux extrémités
doors-no-such = « { $word } » n’est pas { $what ->
        [language] une langue
        [phase] une phase
        [attachment] un type de pièce jointe
        [calibration-result] un résultat de calibrage
        [lens] un modèle d’objectif
        [evidence] un type de preuve
        [line] une ligne de référence
        [unit] une unité
        [step] une étape
        [rule] une règle de décision
        [board] un type de mire
        [family] une famille de marqueurs prise en charge
        [quantity] une grandeur
        *[role] un rôle
    }
doors-unit = { $unit ->
        [none] {""}
        [deg] {"°"}
        [deg-per-s] {" "}°/s
        [mm-per-m] {" "}mm/m
        [in] {" "}pouces
        [turns] {" "}tours
        [a-turn] {" "}par tour
        *[other] {" "}{ $unit }
    }
doors-between = doit être compris entre { $low } et { $high }{ $unit }, et non { $found }
doors-between-remedy = vérifier l’unité, le point décimal et le signe
doors-above-zero = doit être supérieur à zéro, et non { $found }{ $unit }
doors-above-zero-remedy = vérifier le signe et le point décimal
doors-at-most = doit être au plus { $high }{ $unit }, et non { $found }
doors-at-most-remedy = vérifier l’unité et le point décimal
doors-uncertainty = une incertitude-type doit être comprise entre 0 et { $high }{ $unit }, et non { $found }
doors-uncertainty-remedy = indiquer un écart-type (1 sigma) dans l’unité du nom de la clé
doors-whole-between = doit être un nombre entier de { $low } à { $high }, et non { $found }
doors-whole-between-remedy = vérifier le nombre
doors-count = doit avoir { $wanted } valeurs, et non { $found }
doors-count-remedy = écrire { $wanted } valeurs entre crochets, séparées par des virgules
doors-named-twice = « { $name } » est indiqué deux fois
doors-already = « { $name } » figure déjà dans { $key }
doors-leave-out = omettre { $key }

# Matrices de covariance
doors-matrix-size = doit avoir { $size } x { $size } valeurs, et non { $rows } x { $width }
doors-matrix-not-finite = contient une valeur qui n’est pas finie
doors-matrix-negative = a une variance négative à la ligne { $row }
doors-matrix-not-symmetric = n’est pas symétrique aux lignes { $first } et { $second }
doors-matrix-correlation = indique une corrélation supérieure à 1 entre les lignes { $first } et { $second }
doors-matrix-not-semidefinite = n’est pas semi-définie positive : aucun ensemble d’erreurs ne peut l’avoir

# Le dossier d'intervention
doors-job-unopened = impossible d’ouvrir le dossier d’intervention ({ $why })
doors-job-unopened-remedy = vérifier le chemin
doors-job-is-file = est un fichier, pas un dossier d’intervention
doors-job-is-file-remedy = indiquer le dossier qui contient job.toml
doors-no-job = n’existe pas : ce n’est pas un dossier d’intervention
doors-no-job-remedy = indiquer un dossier qui contient job.toml, ou créer ce fichier
doors-no-job-renamed = renommer { $file } en job.toml : un système qui cache les extensions montre job.toml pour job.toml.txt
doors-photos-none = n’indique aucune photo
doors-photos-none-remedy = indiquer les photos, ou omettre la clé pour utiliser toutes celles de photos/
doors-photos-many = indique { $count } photos, plus que { $most }
doors-split-the-job = partager le dossier d’intervention
doors-photo-once = indiquer chaque photo une seule fois
doors-photos-twice = figure à côté de [[photo]]
doors-photos-twice-remedy = indiquer chaque photo dans l’un des deux seulement
doors-same-file = « { $name } » et « { $earlier } » sont le même fichier
doors-photos-remedy = mettre les photos du poste dans le répertoire photos/ du dossier
doors-photos-no-folder = n’indique aucune photo, et son répertoire photos/ ne peut pas être lu ({ $why })
doors-photos-unreadable = son répertoire photos/ ne peut pas être lu ({ $why })
doors-photos-empty = n’indique aucune photo, et son répertoire photos/ n’a aucun fichier jpg, jpeg, png ou heic
doors-attachment-large = dépasse { $most } Mo
doors-attachment-large-remedy = le conserver ailleurs et joindre un extrait
doors-photos-too-many = son répertoire photos/ contient plus de { $most } images
doors-photo-name = le nom de la photo « { $name } » n’est pas en UTF-8
doors-photo-name-remedy = renommer le fichier
doors-card-twice = { $id } est indiqué deux fois
doors-card-twice-remedy = recopier le code de la carte
doors-card-empty = n’indique aucun numéro
doors-card-empty-remedy = recopier le code de la carte, ou omettre la clé
doors-vin-character = contient le caractère { $character } ; seuls les chiffres et les majuscules sauf I, O et Q sont admis
doors-vin-length = a { $count } caractères au lieu de 17
doors-vin-remedy = recopier le numéro du véhicule, en majuscules
doors-prerequisite-key = sa clé n’est pas un nom
doors-prerequisite-key-remedy = utiliser l’identifiant d’une des conditions préalables de la fiche de montage
doors-reading-unused = { $quantity } n’a pas d’équivalent dans les photos et ne peut pas entrer dans la compensation
doors-reading-no-u = n’indique ni u ni un instrument connu
doors-reading-no-u-remedy = ajouter u = (un écart-type), ou instrument = laser, tape, level ou alignment
doors-instrument-unknown = « { $instrument } » n’a pas d’incertitude usuelle
doors-instrument-unknown-remedy = ajouter u = (un écart-type) ; { $known }
doors-instrument-unit = l’incertitude usuelle de « { $instrument } » est en { $own }, mais cette grandeur est en { $unit }
doors-instrument-unit-remedy = ajouter u = (un écart-type)
doors-file-once = indiquer chaque fichier une seule fois
doors-no-stand = indique une vis, mais l’intervention n’a pas de fichier de support
doors-no-stand-remedy = ajouter `stand = ...` à l’intervention, ou omettre turned
doors-no-screw = « { $screw } » n’est pas une vis du support « { $stand } »
doors-no-step = « { $step } » n’est pas une étape de la fiche de montage « { $sheet } »
doors-no-steps-remedy = la fiche n’a pas d’étapes : omettre step

# Chemins et modèles
doors-path-backslash = « { $name } » contient une barre oblique inverse
doors-path-backslash-remedy = écrire les chemins avec /
doors-path-turning = « { $name } » contient des caractères qui inversent le sens d’écriture
doors-path-turning-remedy = renommer le fichier
doors-path-absolute = « { $name } » est un chemin absolu
doors-path-absolute-remedy = l’écrire par rapport au dossier d’intervention, pour que celui-ci puisse être déplacé
doors-path-outside = « { $name } » sort du dossier d’intervention
doors-path-outside-remedy = garder les photos et pièces jointes de l’intervention dans son dossier
doors-path-not-there = « { $name } » n’existe pas dans le dossier d’intervention
doors-path-not-there-remedy = corriger le nom ou ajouter le fichier
doors-path-unreadable = impossible d’ouvrir « { $name } » ({ $why })
doors-path-unreadable-remedy = vérifier le fichier
doors-path-link = « { $name } » est un lien qui mène hors du dossier d’intervention
doors-path-no-file = « { $name } » n’est pas un fichier
doors-path-no-file-remedy = indiquer un fichier
doors-no-model = n’est ni un fichier ni l’un des modèles
doors-no-model-remedy = donner un chemin ou l’un de ceux-ci : { $names }
doors-no-model-guess = fallait-il lire « { $guess } » ? Sinon donner un chemin ou l’un de ceux-ci : { $names }
doors-not-found = { $kind ->
        [setup] aucune fiche de montage
        [kit] aucun jeu de marqueurs
        [camera] aucun appareil photo
        [stand] aucun support
        *[board] aucune mire
    } « { $name } » dans le dossier d’intervention { $folder } ni parmi les modèles intégrés
doors-not-found-either = { $kind ->
        [setup] aucune fiche de montage
        [kit] aucun jeu de marqueurs
        [camera] aucun appareil photo
        [stand] aucun support
        *[board] aucune mire
    } « { $name } » dans le dossier d’intervention { $folder }, dans { $others } ni parmi les modèles intégrés
doors-not-found-remedy = corriger le nom, ou y mettre le fichier
doors-not-found-guess = fallait-il lire « { $guess } » ? Sinon corriger le nom, ou y mettre le fichier
doors-no-models-folder = le dossier indiqué par { $said_by } n’existe pas
doors-no-models-folder-remedy = corriger { $said_by } ou l’omettre
doors-named-file = { $kind ->
        [setup] fiche de montage
        [kit] jeu de marqueurs
        [camera] appareil photo
        [stand] support
        [layout] mesure du jeu
        *[board] mire
    } « { $file } » : { $problem }

# Fiches de montage
doors-datum-role = « { $carrier } » a le rôle { $role }
doors-datum-role-remedy = indiquer un porte-marqueurs du véhicule ou du sol : rien n’est mesuré depuis une cible ou une carte
doors-which-target = ne dit pas de quelle cible il s’agit : le jeu de marqueurs « { $kit } » a { $targets }
doors-which-target-remedy = ajouter target = "{ $target }" ou une autre
doors-kit-no-target = concerne la cible, mais le jeu de marqueurs « { $kit } » n’a aucun porte-marqueurs de rôle target
doors-kit-no-target-remedy = indiquer le jeu de marqueurs auquel appartient le support
doors-no-carrier = « { $name } » n’est pas un { $what ->
        [target] porte-marqueurs de rôle target
        *[any] porte-marqueurs
    } du jeu de marqueurs « { $kit } »
doors-not-in-photos = { $quantity } ne se voit pas sur les photos
doors-not-in-photos-remedy = ajouter evidence = "reading" : le relevé de l’intervention décide alors
doors-from-no-point = { $quantity } ne se mesure pas depuis un point
doors-from-no-point-remedy = omettre from, ou contrôler distance, range, height_from_nose ou lateral_from_nose
doors-from-axle = { $quantity } ne se mesure pas depuis un essieu
doors-from-axle-remedy = indiquer nose ou un point de référence de la fiche
doors-from-unknown = « { $name } » n’est pas un point d’où l’on mesure
doors-unit-of = { $quantity } s’indique en { $unit }
doors-unit-of-remedy = omettre unit ; seules les longueurs peuvent être en pouces
doors-no-target-here = { $quantity } ne concerne pas une cible
doors-no-step-here = { $quantity } ne concerne pas une cible et reste la même à chaque étape
doors-sheet-no-steps = la fiche n’a pas d’étapes
doors-sheet-no-steps-remedy = ajouter steps = [...] en tête, ou omettre step
doors-beside-tolerance = figure à côté de tolerance
doors-beside-tolerance-remedy = indiquer tolerance, ou bien lower et upper
doors-no-limit = n’a pas de limite
doors-no-limit-remedy = ajouter tolerance = ..., ou lower = ... ou upper = ... ou les deux
doors-limits-order = { $lower } { $unit } n’est pas inférieur à upper, { $upper } { $unit }
doors-limits-order-remedy = les limites sont des valeurs, pas des écarts
doors-nominal-outside = { $nominal } { $unit } est hors de ses propres limites
doors-nominal-outside-remedy = lower et upper sont des valeurs comme nominal, pas des écarts
doors-step-count = a { $count } étapes
doors-step-count-remedy = en indiquer une à { $most }, ou omettre la clé
doors-step-once = indiquer chaque étape une seule fois
doors-probability = doit être au moins { $least } et inférieur à 1, et non { $found }
doors-probability-remedy = la valeur usuelle est 0.95 : ce qui est décidé avec moins n’est pas dit prouvé
doors-datum-standard = « { $name } » est un point que toute fiche possède
doors-other-name = choisir un autre nom
doors-name-taken = « { $name } » est déjà le nom de { $key }
doors-id-taken = « { $id } » est déjà l’identifiant de { $key }
doors-other-id = choisir un autre identifiant
doors-no-check = n’a aucun contrôle
doors-no-check-remedy = ajouter un [[check]] avec quantity, nominal et tolerance
doors-check-twice = { $quantity } est déjà contrôlé par { $key }
doors-check-twice-remedy = garder l’un des deux, ou les distinguer par from, target, step ou reference_line
doors-waived-and-checked = il est renoncé ici à { $quantity }, mais { $key } le contrôle
doors-waived-and-checked-remedy = garder le contrôle ou la renonciation
doors-waived-twice = { $key } renonce déjà à { $quantity }
doors-waived-twice-remedy = en garder une

# Supports, jeux de marqueurs, mires et appareils
doors-screw-count = a { $count } vis
doors-screw-count-remedy = en décrire une à { $most }, chacune sous une ligne [[screw]]
doors-screw-twice-remedy = donner à chaque vis son propre nom
doors-screw-quantity = { $quantity } n’est pas une grandeur du support mesurée par les photos
doors-screw-quantity-remedy = indiquer ce que la vis modifie : yaw, pitch, roll, height, lateral_offset, distance
doors-screw-unit = { $quantity } se mesure en { $unit }
doors-screw-unit-remedy = écrire { $key }
doors-screw-nothing = est nul
doors-screw-nothing-remedy = indiquer ce que change un tour dans le sens horaire, négatif si la valeur diminue
doors-kit-no-carrier = n’a aucun porte-marqueurs
doors-kit-no-carrier-remedy = ajouter un [[carrier]] avec ses marqueurs
doors-on-centreline = est pour un repère avant, mais ce porte-marqueurs a le rôle { $role }
doors-on-centreline-remedy = l’omettre ici
doors-carrier-no-marker = n’a aucun marqueur
doors-carrier-no-marker-remedy = ajouter dessous un [[carrier.marker]]
doors-card-ids = { $id } sur un porte-marqueurs de rôle { $role } : les numéros { $first } à { $last } sont réservés aux cartes d’intervention
doors-card-ids-remedy = utiliser un marqueur portant un autre numéro
doors-size-twice = figure à côté de size_mm
doors-size-twice-remedy = indiquer l’un des deux
doors-unit-vector = doit être un vecteur unitaire, mais sa longueur est { $length }
doors-unit-vector-remedy = diviser ses valeurs par sa longueur
doors-axes-square = doit être perpendiculaire à right, mais l’angle entre eux est de { $angle }°
doors-axes-square-remedy = corriger la direction fausse
doors-carrier-name-taken = « { $name } » est déjà le nom de carrier[{ $carrier }], ligne { $line }
doors-carrier-name-taken-remedy = donner à chaque porte-marqueurs son propre nom
doors-role-taken = { $role } est déjà le rôle de carrier[{ $carrier }], ligne { $line }
doors-role-taken-remedy = un porte-marqueurs par roue, par passage de roue et pour l’avant du véhicule
doors-marker-id-taken = le numéro de marqueur { $id } est déjà utilisé par { $path }, ligne { $line }
doors-marker-id-taken-remedy = donner à chaque marqueur du jeu son propre numéro
doors-same-centre = est aussi le centre du marqueur { $id }
doors-same-centre-remedy = mesurer où se trouve ce marqueur
doors-no-layout = n’est pas un fichier de mesure du jeu ({ $why })
doors-layout-remedy = mesurer de nouveau le jeu de marqueurs, ou omettre `layout` dans son fichier
doors-layout-other-kit = appartient à un autre jeu de marqueurs, ou son fichier a été modifié après la mesure
doors-layout-no-marker = le marqueur numéro { $id } n’est pas dans le jeu
doors-layout-twice = le marqueur numéro { $id } est listé deux fois
doors-board-ids = { $columns } x { $rows } marqueurs à partir du numéro { $first } vont jusqu’à { $last }, mais la famille s’arrête à { $end }
doors-board-ids-remedy = commencer à un numéro plus petit ou imprimer moins de marqueurs
doors-focal-lengths = les deux distances focales diffèrent de plus d’un cinquième, ce qu’aucun appareil à pixels carrés ne fait
doors-focal-lengths-remedy = vérifier les deux nombres
doors-focal = { $found } ne peut pas être une distance focale en pixels pour une image de { $side } px de large{ $perhaps ->
        [millimetres] {" "}(est-elle en mm ?)
        *[wrong] {""}
    }
doors-focal-remedy = l’indiquer en pixels de l’image enregistrée, ou étalonner l’appareil
doors-camera-covariance-remedy = elle porte sur focal_px, centre_px et la distorsion de { $model } : étalonner à nouveau l’appareil ou omettre la clé
doors-distortion-foreign = n’a pas sa place pour { $model } à côté de { $beside }
doors-distortion-foreign-remedy = l’omettre, ou indiquer un autre modèle
doors-distortion-count = doit avoir { $wanted } valeurs pour { $model }, et non { $found }
doors-distortion-count-remedy = écrire { $terms } (0.0 pour ceux qui ne servent pas)

# Ce que demande une fiche de montage, une phrase par contrôle
doors-asks = { $what } : { $wanted }{ $decides ->
        [reading] {" "}; un relevé décide, pas les photos
        [either] {" "}; les photos décident si le jeu a un repère sur ce passage de roue, sinon un relevé
        *[photos] {""}
    }.
doors-asks-by = { $what } : { $wanted }{ $decides ->
        [reading] {" "}; un relevé décide, pas les photos
        [either] {" "}; les photos décident si le jeu a un repère sur ce passage de roue, sinon un relevé
        *[photos] {""}
    } (tolérance : { $basis }).
doors-asks-in-step = À l’étape « { $step } » : { $asked }
doors-asks-in-every-step = À chaque étape : { $asked }
doors-asks-not = Non contrôlé : { $quantity } ; raison : { $because }
doors-asks-credentials = Chaque photo qui compte porte des attestations de contenu (C2PA) d’un signataire de confiance et n’énumère aucune retouche
doors-anchors-not-built-in = ce programme a été construit sans attestations de contenu : omettre --credential-anchors ou prendre un programme construit avec l’option credentials
doors-anchors-unreadable = { $file } est illisible ({ $why }) : indiquer un fichier de certificats (PEM)
doors-anchors-no-certificate = { $file } ne contient aucun certificat lisible : indiquer un fichier de certificats (PEM), chacun de BEGIN CERTIFICATE à END CERTIFICATE
doors-asks-distance = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est devant { $from ->
        [nose] l’avant du véhicule
        [front_axle] l’essieu avant
        [rear_axle] l’essieu arrière
        *[datum] le point « { $point } »
    }, mesuré le long { $line ->
        [rear_axle_normal] de la perpendiculaire à l’essieu arrière
        [thrust_line] de l’axe de poussée
        *[centreline] de l’axe médian du véhicule
    }
doors-asks-range = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est éloigné { $from ->
        [nose] de l’avant du véhicule
        [front_axle] de l’essieu avant
        [rear_axle] de l’essieu arrière
        *[datum] du point « { $point } »
    }, en ligne droite horizontale
doors-asks-lateral = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est à côté { $line ->
        [rear_axle_normal] de la perpendiculaire à l’essieu arrière
        [thrust_line] de l’axe de poussée
        *[centreline] de l’axe médian du véhicule
    } (à gauche est positif)
doors-asks-lateral-from = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est à côté { $from ->
        [nose] de l’avant du véhicule
        [front_axle] de l’essieu avant
        [rear_axle] de l’essieu arrière
        *[datum] du point « { $point } »
    } (à gauche est positif)
doors-asks-height = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est au-dessus du sol
doors-asks-height-from = Le centre { $which ->
        [named] de « { $target } »
        *[one] de la cible
    } est au-dessus { $from ->
        [nose] du repère avant
        [front_axle] de l’essieu avant
        [rear_axle] de l’essieu arrière
        *[datum] du point « { $point } »
    } (au-dessous est négatif)
doors-asks-yaw = { $which ->
        [named] « { $target } »
        *[one] La cible
    } est tournée par rapport { $line ->
        [rear_axle_normal] à la perpendiculaire à l’essieu arrière
        [thrust_line] à l’axe de poussée
        *[centreline] à l’axe médian du véhicule
    } (vers la gauche du véhicule est positif ; 0 est d’équerre)
doors-asks-pitch = { $which ->
        [named] « { $target } »
        *[one] La cible
    } est inclinée (le haut éloigné du véhicule est positif ; 0 est d’aplomb)
doors-asks-roll = { $which ->
        [named] « { $target } »
        *[one] La cible
    } n’est pas de niveau (côté droit du véhicule plus bas est positif)
doors-asks-sides = Les distances latérales aux roues arrière diffèrent, gauche moins droite
doors-asks-other = { $quantity }
doors-wanted-both = { $nominal }, de { $low } à { $high }
doors-wanted-least = { $nominal }, au moins { $low }
doors-wanted-most = { $nominal }, au plus { $high }
doors-wanted-open = { $nominal }, sans limite
doors-value-mm = { $value } mm
doors-value-inches = { $inches } pouces ({ $value } mm)
doors-value-degrees = { $value }°

# Ce qui est contradictoire ou inhabituel dans une fiche de montage
doors-doubt-no-prerequisite = La fiche ne demande aucune condition préalable. Les pneus, la charge et la direction sont-ils sans importance ?
doors-doubt-thrust-line = L’équerrage par rapport à l’axe de poussée est demandé à mieux que { $least }° : les plaques de roue se posent à environ { $seat }° près, il faut donc des photos avant et après un demi-tour de roue, ou l’axe médian comme référence.
doors-doubt-no-room = Le support doit être à { $distance } mm devant l’avant du véhicule, mais seuls { $free } mm y sont demandés libres : le support et la personne ont besoin d’environ { $room } mm de plus.
doors-doubt-step = Aucun contrôle n’appartient à la seule étape « { $step } » : qu’est-ce qui en fait une étape à part ?
doors-doubt-range-short = La distance en ligne droite de { $range } mm est plus courte que le décalage latéral de { $offset } mm.
doors-doubt-range = La distance et le décalage latéral donnent une ligne droite de { $least } à { $most } mm, mais { $low } à { $high } mm sont demandés.
doors-doubt-sides = Avec un support tourné de { $turn }°, les distances latérales diffèrent de { $least } à { $most } mm, gauche moins droite ; { $asked } mm sont demandés. Le signe est-il le bon ?
doors-doubt-nose = D’après la hauteur et la hauteur au-dessus du repère avant, ce repère est à { $nose } mm du sol. Est-ce exact ?
doors-doubt-nominal = { $quantity } : { $nominal } { $unit ->
        [deg] °
        *[mm] mm
    } est inhabituel ({ $low } à { $high } { $unit ->
        [deg] °
        *[mm] mm
    } est courant).{ $hint ->
        [inches] {" "}S’agit-il de pouces ? Alors ajouter unit = "in".
        *[none] {""}
    }
doors-doubt-tolerance = { $quantity } : une tolérance de ±{ $half } { $unit ->
        [deg] °
        *[mm] mm
    } est inhabituelle (±{ $low } à ±{ $high } { $unit ->
        [deg] °
        *[mm] mm
    } est courant).
doors-doubt-middle = { $quantity } : la valeur nominale n’est pas au milieu de ses limites. Est-ce voulu ?

# Photos qui ne peuvent pas être lues
doors-photo-open = impossible de lire { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } : { $why }
doors-photo-no-file = ce n’est pas un fichier
doors-photo-empty = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } est vide (0 octet) : la copier à nouveau depuis l’appareil
doors-photo-bytes = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } a { $bytes } octets, plus que { $most } : donner le JPEG d’origine de l’appareil
doors-photo-pixels = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } indique { $width } x { $height } pixels, plus que { $most } en tout : donner la photo d’origine de l’appareil
doors-photo-cut = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } est tronquée ({ $detail }) : la copier à nouveau depuis l’appareil
doors-photo-damaged = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } est endommagée ({ $detail }) : la copier à nouveau depuis l’appareil
doors-photo-unsupported = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } n’est pas décodée ({ $what }) : l’enregistrer en JPEG ordinaire, en taille réelle
doors-photo-foreign = { $name ->
        [none] la photo
        *[named] la photo « { $name } »
    } est { $what ->
        [avif] une image AVIF
        [heic] une image HEIC, que cette version ne décode pas
        [raw] une image brute (raw)
        [video] une vidéo
        [tiff] une image TIFF ou brute (raw)
        [gif] une image GIF
        [bmp] une image BMP
        [jxl] une image JPEG XL
        [jp2] une image JPEG 2000
        [jpeg] une image JPEG dont le deuxième marqueur de format est endommagé
        [png] une image PNG modifiée comme du texte
        [pdf] un document PDF
        [zip] une archive ZIP ou un document bureautique
        [gzip] une archive gzip
        [ps] un document PostScript
        [qoi] une image QOI
        [pgm] une image PGM
        [ppm] une image PPM
        [webp] une image WebP
        [text] un fichier texte
        *[other] d’un format d’image inconnu
    } : { $remedy ->
        [convert] la convertir en JPEG en taille réelle, en gardant ses données EXIF
        [heic] régler l’appareil photo du téléphone sur « le plus compatible » (JPEG), ou convertir l’image en JPEG en taille réelle, en gardant ses données EXIF
        [still] donner une photo fixe, JPEG, PNG ou HEIC
        [copy] copier à nouveau la photo depuis l’appareil
        [binary] copier à nouveau la photo en mode binaire
        *[photo] donner une photo, JPEG, PNG ou HEIC
    }

# Ce que le décodage d'une photo a révélé
doors-fault-pixels = elle indique { $width } x { $height } pixels
doors-fault-size-changed = sa taille a changé pendant le décodage
doors-fault-no-size = elle n’indique aucune taille
doors-fault-marker = marqueur de format FF{ $marker } mal placé, près de l’octet { $at }
doors-fault-early = données d’image avant l’en-tête
doors-fault-restarts = { $found } marqueurs de reprise là où sa taille en demande { $wanted }
doors-fault-no-data = elle ne contient aucune donnée d’image
doors-fault-short-header = son en-tête est trop court
doors-fault-two-headers = elle a deux en-têtes
doors-fault-sampling = son en-tête indique un facteur d’échantillonnage nul
doors-fault-no-marker = pas de marqueur de format à l’octet { $at }
doors-fault-no-length = le segment FF{ $marker } n’indique pas de longueur à l’octet { $at }
doors-fault-turn = marqueur de reprise hors séquence à l’octet { $at }
doors-fault-jpeg-end = le JPEG se termine à l’octet { $at } sans son marqueur de fin
doors-fault-missing = il manque des données d’image
doors-fault-left-over = { $bytes } octets de données d’image sont en trop
doors-fault-parts = seules { $used } parties sur { $count } de ses données d’image conviennent
doors-fault-rows = ses lignes ne correspondent pas à la taille qu’elle indique
doors-fault-heic-pixels = { $coded } pixels sont codés là où { $stated } sont indiqués
doors-fault-tiles = { $found } tuiles là où { $rows } x { $columns } sont indiquées
doors-fault-uncovered = ses tuiles ne la couvrent pas
doors-fault-heic-box = le fichier HEIC se termine à l’octet { $end }, dans le bloc de l’octet { $at }
doors-fault-heic-early = le fichier HEIC se termine trop tôt
doors-variant-heic = une image HEIC
doors-variant-heic-by = une image HEIC faite avec { $what }
doors-variant-heic-with = une image HEIC avec { $what }
doors-variant-jpeg = { $kind ->
        [lossless] un JPEG sans perte
        [hierarchical] un JPEG hiérarchique
        *[arithmetic] un JPEG à codage arithmétique
    }
doors-variant-bits = un JPEG de { $bits } bits par échantillon
doors-variant-scans = un JPEG à couleur réduite avec un balayage par composante
doors-variant-components = un JPEG aux composantes inhabituelles ({ $what })
doors-variant-unusual = un JPEG d’un type inhabituel ({ $what })
doors-variant-png-extra = un PNG avec des données annexes très volumineuses
doors-fault-of-the-program = le programme a échoué sur l’intervention « { $job } » : le signaler, si possible avec le dossier

# Fichiers de scène, lus par le moteur de rendu
doors-scene-value = doit être compris entre { $low } et { $high }, et non { $found }
doors-scene-value-remedy = corriger la valeur
doors-scene-photos = { $count } photos
doors-scene-photos-remedy = en donner de 1 à { $most }, ou aucune pour les deux habituelles
doors-scene-name-twice = le nom est donné deux fois
doors-scene-name-twice-remedy = donner à chaque photo un nom différent
doors-scene-order = de { $from } à { $to } est dans le mauvais ordre
doors-scene-order-remedy = donner le plus petit en premier
doors-scene-things = { $count } objets
doors-scene-things-remedy = en donner { $most } au plus
doors-scene-long = est trop long
doors-scene-long-remedy = écrire { $most } lettres au plus
doors-scene-no-carrier = le jeu n’a aucun porte-marqueurs `{ $name }`
doors-scene-no-photo = aucune photo `{ $file }` dans la scène
doors-scene-own-key = est écrit par `stage` lui-même
doors-scene-no-step = `{ $step }` n’est pas une étape de la fiche de montage
doors-scene-moves = est { $found }, mais la scène a { $count } déplacements
doors-scene-moves-remedy = écrire un [[move]] pour chaque déplacement du support
doors-scene-no-phase = `{ $phase }` n’est pas une phase
doors-scene-file = `{ $name }` n’est pas un nom de fichier simple
doors-scene-file-remedy = utiliser des lettres, des chiffres, - et _ et la terminaison .jpg
doors-scene-orientation = doit être 1, 3, 6 ou 8, et non { $found }
doors-scene-orientation-remedy = 6 est tenu à la verticale
doors-scene-not-carried = rien ne s’appelle `{ $file }`
doors-scene-not-carried-remedy = indiquer un fichier fourni
doors-scene-unknown = clé ou mot inconnu `{ $word }`
doors-scene-missing = `{ $key }` manque
doors-scene-missing-remedy = ajouter `{ $key } = ...`
doors-scene-kinds-remedy = voir les clés du format de scène et leurs types
doors-stage-read = impossible de lire { $path } : { $why } ; vérifier le chemin et ses autorisations
doors-stage-write = impossible d’écrire { $path } : { $why } ; vérifier les autorisations et l’espace libre du dossier
doors-stage-job = les clés d’intervention de la scène ne donnent pas un fichier valide : { $why }
doors-stage-compress = impossible de compresser la photo « { $photo } » : { $why } ; la réduire
doors-stage-truth = impossible d’écrire l’intervention ou ses valeurs vraies en texte : { $why } ; vérifier les clés d’intervention de la scène

doors-newest-most-moves = le support y a déjà été déplacé { $most } fois
doors-newest-new-job = commencer un nouveau dossier
doors-newest-unwritten = ne peut pas être écrit ({ $why })
doors-newest-make-room = libérer de la place sur le disque ou autoriser l’écriture à cet endroit

## Études du système de mesure, et photos d'un poste inventé

doors-gauge-too-few = une étude du système de mesure demande au moins deux opérateurs, pièces et répétitions, pas { $operators }, { $parts } et { $trials }
doors-gauge-uneven = chaque opérateur doit relever chaque pièce autant de fois
doors-gauge-constant =
    { $of ->
        [operators] moyenne et étendue n’a pas de constante pour { $count } opérateurs : prendre l’analyse de la variance
       *[trials] moyenne et étendue n’a pas de constante pour { $count } répétitions : prendre l’analyse de la variance
    }
doors-stage-too-large = { $pixels } pixels sont plus que ce qu’un JPEG peut contenir
doors-pose-nothing-seen = aucune des { $photos } photos ne montre un marqueur du jeu
doors-pose-unsettled =
    { $why ->
        [first] la compensation de { $photos } photos n’aboutit pas : la première solution ne s’accorde pas avec les photos
        [singular] la compensation de { $photos } photos n’aboutit pas : les équations sont singulières
       *[covariance] la compensation de { $photos } photos n’aboutit pas : la covariance n’existe pas
    }
