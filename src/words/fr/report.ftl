report-quantity-from =
    { $quantity ->
        [height_from_nose] hauteur depuis { $datum }
        [lateral_from_nose] centrage sur { $datum }
       *[other] { $name } depuis { $datum }
    }
report-datum =
    { $datum ->
        [nose] l’avant du véhicule
        [front_axle] l’essieu avant
        [rear_axle] l’essieu arrière
       *[other] le point de référence « { $datum } »
    }
report-term =
    { $term ->
        [yaw] lacet
        [pitch] tangage
        [roll] roulis
        [lateral] écart latéral
       *[range] portée
    }
report-with-term = { $name } ({ $term })
report-step = étape { $step }
report-reference-line =
    { $line ->
        [rear_axle_normal] la perpendiculaire à l’essieu arrière
        [thrust_line] l’axe de poussée
        [centreline] l’axe médian du véhicule
       *[other] { $line }
    }
report-verdict-short =
    { $verdict ->
        [within] dedans
        [outside] dehors
        [not_proven] non prouvé
       *[retake] à refaire
    }
report-not-trusted-short = pas fiable
report-mark =
    { $verdict ->
        [within] ok
        [outside] X
        [not_proven] { "?" }
       *[retake] à refaire
    }
report-grade =
    { $grade ->
        [pass] conforme
        [conditional_pass] conforme sous condition
        [conditional_fail] non conforme sous condition
        [fail] non conforme
       *[other] { $grade }
    }
report-instrument =
    { $instrument ->
        [laser] laser
        [tape] mètre ruban
        [level] niveau à bulle
        [alignment] banc de géométrie
       *[other] { $instrument }
    }

report-amount =
    { $unit ->
        [deg] { $value }°
        [degrees] { $value } degrés
        [in] { $value } in
        [mm] { $value } mm
       *[other] { $value } { $unit }
    }
report-amount-with-u =
    { $unit ->
        [deg] { $value }° ± { $u }°
        [degrees] { $value } ± { $u } degrés
        [in] { $value } ± { $u } in
        [mm] { $value } ± { $u } mm
       *[other] { $value } ± { $u } { $unit }
    }
report-with-inches = { $amount } ({ $inches })
report-to-side = { $amount } { $side }
report-required-side = { $nominal }, ± { $half }
report-required-range = { $nominal }, de { $lower } à { $upper }
report-required-least = { $nominal }, au moins { $lower }
report-required-most = { $nominal }, au plus { $upper }
report-required-open = { $nominal }, sans limite
report-probability =
    { $bound ->
        [above] > { $percent } %
        [below] < { $percent } %
        [unknown] inconnu
       *[exact] { $percent } %
    }
report-otherwise = { $assuming } : { $value }, { $verdict }
report-no-value = aucune valeur
report-not-determined = non déterminé

report-side-short =
    { $side ->
        [right] à droite
        [left] à gauche
        [steered-right] à droite
        [steered-left] à gauche
        [right-end-nearer] droite plus proche
        [left-end-nearer] gauche plus proche
        [top-towards] haut vers le véhicule
        [top-away] haut en arrière
        [left-end-low] gauche basse
        [right-end-low] droite basse
        [right-longer] plus long à droite
        [left-longer] plus long à gauche
        [toe-out] ouverture
        [toe-in] pincement
        [top-rearward] haut vers l’arrière
        [top-forward] haut vers l’avant
        [top-inward] haut vers l’intérieur
        [top-outward] haut vers l’extérieur
        [nose-up] avant relevé
        [nose-down] avant plongeant
        [below] au-dessous
        [above] au-dessus
        [below-floor] sous le sol
        [behind] derrière
       *[negative] négatif
    }
report-side-long =
    { $side ->
        [right] vers la droite du véhicule
        [left] vers la gauche du véhicule
        [steered-right] braqué à droite
        [steered-left] braqué à gauche
        [right-end-nearer] tourné : le bout du côté droit du véhicule est plus proche du véhicule
        [left-end-nearer] tourné : le bout du côté gauche du véhicule est plus proche du véhicule
        [top-towards] incliné : le haut penche vers le véhicule
        [top-away] incliné : le haut s’éloigne du véhicule
        [left-end-low] pas de niveau : le bout du côté gauche du véhicule est plus bas
        [right-end-low] pas de niveau : le bout du côté droit du véhicule est plus bas
        [right-longer] plus long du côté droit du véhicule
        [left-longer] plus long du côté gauche du véhicule
        [toe-out] ouverture
        [toe-in] pincement
        [top-rearward] le haut penché vers l’arrière du véhicule
        [top-forward] le haut penché vers l’avant
        [top-inward] le haut penché vers l’intérieur
        [top-outward] le haut penché vers l’extérieur
        [nose-up] l’avant relevé
        [nose-down] l’avant plongeant
        [below] au-dessous
        [above] au-dessus
        [below-floor] sous le sol
        [behind] du côté du véhicule
       *[negative] au-dessous de zéro
    }
report-end =
    { $end ->
        [nearer] plus proche
        [further] plus loin
        [lower] plus bas
        [higher] plus haut
        [vehicle-right] droite du véhicule
        [vehicle-left] gauche du véhicule
        [less] moins
       *[more] plus
    }
report-against-required =
    { $way ->
        [nearer] plus proche que requis
        [further] plus loin que requis
        [lower] plus bas que requis
        [higher] plus haut que requis
        [right] plus à droite du véhicule que requis
        [left] plus à gauche du véhicule que requis
        [right-end-nearer] tourné, bout droit plus proche que requis
        [left-end-nearer] tourné, bout gauche plus proche que requis
        [top-towards] plus penché vers le véhicule que requis
        [top-away] plus penché en arrière que requis
        [left-end-low] tourné, bout gauche plus bas que requis
        [right-end-low] tourné, bout droit plus bas que requis
        [less] moins que requis
       *[more] plus que requis
    }
report-deviation = { $name } : { $amount } { $against }
report-as-required = { $name } : comme requis

report-what-to-do = Que faire maintenant
report-do-now = À faire maintenant, dans cet ordre
report-numbered-step = { $title } : { $words }
report-with-extras = { $title } ({ $extras })
report-move =
    { $name ->
        [level] horizontalité
        [tilt] inclinaison
        [square] équerrage
        [centre] centrage
        [distance] distance
       *[height] hauteur
    }
report-clear-first = À éclaircir d’abord
report-settle = À régler
report-measured = mesuré : { $value }
report-prove-more = non prouvé : prendre d’autres photos depuis des endroits plus écartés, ou rapprocher la valeur de celle requise
report-prove-never = ces photos et ce jeu de marqueurs ne peuvent pas prouver une tolérance aussi petite. Ce n’est pas un échec : l’incertitude est trop grande, où que soit le support
report-measure-again = les photos ne le déterminent pas : les refaire
report-then = Ensuite
report-close-moved = Prendre une photo du support à sa nouvelle place, avec plaques et feuilles de sol : elle est mesurée avec les précédentes ; une deuxième le prouve.
report-close-void = Refaire les photos. Ne pas déplacer le support d’après les chiffres de ce rapport : ils ne sont pas fiables.
report-close-held = Refaire les photos. Ne pas déplacer le support d’après les chiffres de ce rapport : régler d’abord ce qui est indiqué plus haut.
report-close-held-typed = Vérifier à nouveau le dossier. Ne pas déplacer le support d’après les chiffres de ce rapport : régler d’abord ce qui est indiqué plus haut.
report-nothing-to-move = Rien à déplacer
report-keep-report = Conserver ce rapport avec le dossier.
report-close-retake = Refaire les photos et vérifier à nouveau le dossier.
report-close-verify = Vérifier à nouveau le dossier.
report-none-trusted = Les chiffres ne sont pas fiables.
report-some-trusted = Tous les chiffres ne sont pas fiables.
report-findings-say-why = Les constats disent pourquoi.

report-job = Dossier { $job }
report-fact-bay = poste de calibrage { $bay }
report-fact-technician = technicien : { $name }
report-fact-attempt = essai { $number }
report-fact-kit = jeu de marqueurs : { $upkeep }
report-kit-serial = n° de série { $serial }
report-kit-due =
    { $state ->
        [overdue] mesure du jeu échue depuis le { $due } : le mesurer de nouveau
        [due] prochaine mesure du jeu : { $due }
       *[unknown] prochaine mesure du jeu : { $due } (non vérifiable : aucune heure indiquée)
    }
report-first = D’abord
report-by-screw = Cela correspond à : { $screw }.
report-last-move = Le dernier déplacement : { $last }.
report-track-text = Parcours du support (± incertitude élargie, 95 %)
report-position-first = initiale
report-position-move = déplacement { $number }
report-figure = { $name } { $value }
report-figure-moved = { $name } { $value } ({ $moved })
report-last-position = La dernière position est montrée par : { $photos }.
report-last-position-none = Aucune photo ne montre la dernière position.
report-checks-text = Contrôles par rapport à : { $line } (mesuré ± incertitude élargie, 95 %)
report-required-value = requis { $required }
report-probability-short = { $probability } dedans
report-required-and-probability = { $required }, { $probability }
report-from-photos-alone = Les mêmes contrôles d’après les photos seules
report-same-verdicts = Les verdicts sont les mêmes.
report-readings-text = Relevés comparés aux photos (± incertitude-type)
report-agreement =
    { $agreement ->
        [agrees] concorde
        [disagrees] ne concorde pas
       *[other] non comparable
    }
report-reading =
    { $used ->
        [yes] { $name } : { $instrument } { $read }, photos { $photos }, utilisé dans le résultat
       *[no] { $name } : { $instrument } { $read }, photos { $photos }
    }
report-reading-alone =
    { $used ->
        [yes] { $name } : { $instrument } { $read }, les photos ne le déterminent pas, utilisé dans le résultat
       *[no] { $name } : { $instrument } { $read }, les photos ne le déterminent pas
    }
report-read-by = relevé
report-findings = Constats
report-level =
    { $level ->
        [void] nul
        [stop] arrêt
        [warn] alerte
       *[note] note
    }
report-level-meaning =
    { $level ->
        [void] la mesure n’est pas fiable
        [stop] rien n’est déclaré dans la tolérance
        [warn] à regarder
       *[note] bon à savoir
    }
report-blind-text = Non vérifiable avec ces photos
report-blind = { $fault } : il faudrait : { $remedy }
report-blind-of = { $fault } ({ $carriers }) : il faudrait : { $remedy }
report-more-photos = plus de photos
report-whose-tolerance = Origine de la tolérance :
report-cautions-text = Précautions :
report-cautions-short = les informations de service du constructeur du véhicule et les règles locales font foi. Ce travail est réservé à des personnes formées ; lasers et véhicules levés exigent leurs propres précautions. Ceci documente une mise en place et ne remplace pas la procédure.
report-not-proofread = Ces textes n’ont pas encore été relus par un technicien francophone ; en cas de doute, le texte anglais fait foi.

report-phases = Avant et après le calibrage
report-attempts = Essais de cette série
report-ride-height = Hauteur de caisse
report-one-more-photo = Une photo de plus
report-next-photo = Trancherait ce qui reste ouvert : { $photo }.
report-moved = { $body } : déplacement de { $mm } et { $degrees }.
report-not-moved = { $body } : pas de déplacement au-delà de l’incertitude : { $mm } et { $degrees }.
report-body =
    { $body ->
        [vehicle] véhicule
       *[other] { $body }
    }
report-attempt-line =
    { $numbered ->
        [yes] Essai { $number }, dossier { $job }
       *[no] Dossier { $job }
    }, { $photos ->
        [one] une photo
       *[other] { $photos } photos
    }, d’après ses propres photos : { $verdict } ; { $beside ->
        [own] ce dossier
        [together] compensé avec ce dossier, car rien n’avait bougé
       *[apart] non compensé avec ce dossier : { $why }
    }.

report-title = Où se trouvait la cible : dossier { $job }
report-rendered = IMAGES DE SYNTHÈSE : aucun appareil n’a pris ces photos. Elles montrent un poste inventé, pour l’exercice ou comme exemple, et ne prouvent rien d’aucun véhicule.
report-page-title = Dossier { $job } : { $verdict }
report-document-title = Où se trouvait la cible : dossier { $job } : { $verdict }
report-page-of = page { $page } sur { $pages }
report-repair-order = Ordre de réparation
report-attempt = Essai
report-vehicle = Véhicule
report-vin = Numéro d’identification du véhicule (VIN)
report-photos-taken = Photos prises
report-bay = Poste de calibrage
report-technician = Technicien
report-kit = Jeu de marqueurs
report-kit-upkeep = Suivi du jeu
report-camera = Appareil photo
report-setup-sheet = Fiche de montage

report-checks = Contrôles
report-checks-none = La fiche de montage ne contrôle rien.
report-checks-lede = Mesuré par rapport à : { $line }. ± est l’incertitude élargie U (95 %).
report-rule =
    { $rule ->
        [guarded] « Dans la tolérance » exige au moins { $least } % de probabilité que la valeur vraie soit dans les limites ; « hors tolérance » de même.
        [simple] Seule la valeur mesurée est comparée aux limites ; son incertitude ne compte pas.
        [binary] Une bande de garde d’une incertitude élargie est conservée à l’intérieur des limites (ILAC-G8:2019, binaire).
        [four_way] Conforme, conforme sous condition, non conforme sous condition, non conforme (ILAC-G8:2019).
       *[other] Règle de décision : { $rule }.
    }
report-without-readings = Des relevés interviennent dans le tableau ci-dessus. Sans eux :
report-check = Contrôle
report-required = Requis
report-measured-u = Mesuré ± U
report-measured-key = Mesuré
report-against-limits = Par rapport aux limites
report-verdict-column = Verdict
report-tolerance-basis = tolérance : { $basis }
report-not-to-be-trusted = pas fiable
report-within-limits = { $probability } dans les limites
report-too-small = Ces photos et ce jeu de marqueurs ne peuvent pas prouver une tolérance aussi petite. Ce n’est pas un échec.
report-reason-in-step = Pourquoi : voir « Que faire maintenant », étape { $step }.
report-same-reason = Même raison que pour : { $check }.
report-against-line = par rapport à : { $line }
report-by-reading = décidé par un relevé
report-bar-key = Comment lire les barres
report-bar-limits = limites
report-bar-required = requis
report-bar-true = où se situe la valeur vraie (95 %)
report-bar-mark = Le repère qui s’y trouve est la valeur mesurée, à la forme de son verdict.
report-off-scale = hors échelle : { $amount }
report-bar-spoken = { $name } : { $value }, requis { $required }, { $verdict }

report-drawing = Où tout se trouvait
report-drawings-neither = Ces dessins non plus.
report-drawings-not-all = Ni tous ces dessins.
report-nothing-to-draw = Les photos ne déterminent pas où se trouvaient le support et le véhicule : il n’y a rien à dessiner.
report-plan = Plan : vu de dessus
report-side = Côté : vu depuis la droite du véhicule
report-drawing-caption = À l’échelle, chaque écart en vraie grandeur. Marqueurs (noir), centres de roue et support sont là où ils ont été mesurés ; la carrosserie est esquissée autour. Les cercles numérotés sont les photos avec leur direction.
report-nose-typed = L’avant du véhicule n’était pas repéré : sa place découle de la longueur saisie.
report-magnified = Le support par rapport à la place requise
report-magnified-of = Le support par rapport à la place requise : { $name }
report-magnified-lede = Tirets : requis. Trait plein : mesuré, avec son incertitude en croix (95 %). Ombré : où le point de visée peut se trouver ; pointillé : de combien le support peut être tourné.
report-drawing-spoken = Dessin à l’échelle du véhicule, du support de cible et des photos. { $figures }
report-view-above = Vu de dessus
report-view-right = Depuis la droite du véhicule
report-view-vehicle = Vu depuis le véhicule
report-edge =
    { $edge ->
        [towards] vers le véhicule
        [away] au loin
        [left] gauche du véhicule
        [right] droite du véhicule
        [higher] plus haut
        [lower] plus bas
       *[away-from-vehicle] en s’éloignant du véhicule
    }
report-drawn-moved = Par rapport au contour du support : déplacements dessinés { $lengths } fois.
report-drawn-turned = Par rapport au contour du support : rotation dessinée { $angles } fois.
report-drawn-both = Par rapport au contour du support : déplacements dessinés { $lengths } fois, rotation dessinée { $angles } fois.
report-wheelbase = empattement { $amount }
report-distance-from = { $amount } depuis { $datum }

report-track = Parcours du support
report-track-lede = Toutes les photos sont mesurées ensemble : véhicule, plaques et feuilles de sol restent là où les premières les ont trouvés ; le support a sa propre place après chaque déplacement. ± est l’incertitude élargie (95 %) ; celle d’un déplacement est plus petite que celle de deux places, car ce qui leur est commun n’y intervient pas.
report-track-none = Aucune photo ne montre le support à sa place actuelle avec le véhicule.
report-track-shown = Sa place actuelle est montrée par : { $photos }.
report-track-above = Vu de dessus : { $name }
report-track-caption = Le point de visée avant le premier déplacement (0) et après chacun ; le gros point est sa place actuelle.
report-track-spoken = Parcours vu de dessus : { $name }. { $moves }
report-track-move = déplacement { $number }, { $name } : { $moved }
report-position = Position
report-before-moves = Avant tout déplacement
report-after-move = Après le déplacement { $number }
report-sentence = { $words }.

report-nothing-to-report = Rien à signaler.
report-photos = Photos
report-no-photo = Aucune photo n’a pu être lue.
report-photos-key = Comment lire les photos
report-key-used = marqueur utilisé, avec son numéro
report-key-not-used = marqueur non utilisé
report-key-outline = où tombent les porte-marqueurs calculés et le point de visée
report-key-residual = résidu, trouvé moins calculé, agrandi
report-photo = Photo { $number } :
report-photo-not-used = Non utilisée :
report-photo-spoken = Photo { $number } : { $markers }
report-markers-found =
    { $found ->
        [one] un marqueur trouvé
       *[other] { $found } marqueurs trouvés
    }, dont utilisés : { $used }
report-markers-left-out = du jeu de marqueurs, laissés de côté : { $count }
report-markers-unknown = avec des numéros que le jeu de marqueurs ne connaît pas : { $count }
report-markers-nameless = trop serrés pour être nommés dans l’image : { $numbers }
report-marker-unknown = { $number } inconnu
report-marker-not-used = { $number } non utilisé
report-no-picture = l’image n’est pas disponible
report-residual-scale = { $length } px, résidus dessinés { $factor } fois
report-camera-profile = Profil d’appareil
report-taken = Prise
report-private-kinds = Aussi dans les données propres de la photo, non montré ici
report-private-value = Privé : { $name }
report-residuals = Résidus, RMS
report-blur = Flou, médiane
report-noise = Bruit des coins
report-noise-value = { $ratio } fois celui d’une photo développée sans retouche
report-light = Lumière modifiée par le téléphone
report-light-value = de { $percent } % d’un endroit à l’autre (1 sigma)
report-edge-offset = Décalage des bords
report-edge-offset-value =
    { $way ->
        [outward] { $offset } px, vers l’extérieur
        [inward] { $offset } px, vers l’intérieur
       *[none] { $offset } px
    }
report-focal-length = Distance focale
report-credentials = Attestations de contenu
report-credentials-of-photos = Attestations de contenu des photos : { $counts }.
report-credentials-made = établies avec { $generator }
report-credentials-time = horodatage du { $time }
report-credentials-bytes = l’empreinte porte sur tous les octets sauf { $count } à partir de l’octet { $first }
report-credentials-edits = retouches énumérées par le manifeste : { $edits }
report-px = { $value } px
report-px-twice = { $first } px, { $second } px
report-taken-from = Lieu de prise de vue
report-taken-from-value =
    { $side ->
        [left] { $ahead } m en avant de l’essieu arrière, { $across } m à gauche du véhicule, { $high } m de hauteur
       *[right] { $ahead } m en avant de l’essieu arrière, { $across } m à droite du véhicule, { $high } m de hauteur
    }
report-taken-from-behind =
    { $side ->
        [left] { $behind } m en arrière de l’essieu arrière, { $across } m à gauche du véhicule, { $high } m de hauteur
       *[right] { $behind } m en arrière de l’essieu arrière, { $across } m à droite du véhicule, { $high } m de hauteur
    }

report-readings = Relevés comparés aux photos
report-readings-lede = ± est l’incertitude-type u. E_n est l’écart divisé par la racine de la somme des carrés des deux incertitudes élargies (ISO/IEC 17043) : jusqu’à 1, ils concordent.
report-reading-column = Relevé
report-read = Lu
report-result = Résultat
report-by-instrument = avec : { $instrument }
report-reading-used = utilisé dans le résultat
report-reading-compared = seulement comparé, pas utilisé
report-all-measured = Toutes les grandeurs mesurées
report-all-measured-none = Les photos ne déterminent aucune grandeur de la mise en place.
report-all-measured-lede = Par rapport à : { $line }. ± est l’incertitude-type u.
report-quantity-column = Grandeur
report-value-u = Valeur ± u
report-direction = Direction
report-budget = D’où vient l’incertitude
report-budget-lede = Incertitude-type de chaque source et sa part de la variance (GUM).
report-source = Source
report-share = Part
report-budget-total =
    { $name } : u = { $u }, { $freedom ->
        [infinite] degrés de liberté infinis
       *[finite] { $degrees } degrés de liberté
    }{ $factor_known ->
        [yes] , facteur d’élargissement { $factor }
       *[no] {""}
    }

report-doubts = Ce que ces photos auraient montré
report-doubts-lede = La plus petite taille de chaque défaut qui est trouvée avec une probabilité de 95 % dans ce dossier. De plus petits peuvent exister.
report-fault = Défaut
report-found-from = Trouvé à partir de
report-all-alike = tous de la même valeur
report-worst-of = le pire de { $count } : { $name }
report-not-checkable = non vérifiable avec ces photos
report-it-takes = il faudrait : { $remedy }
report-hangs-on = De quoi dépendent les contrôles
report-hangs-on-lede = La plus grande variation de chaque valeur quand on retire une photo, un porte-marqueurs ou la forme du modèle d’objectif.
report-change = Variation
report-uncertainty-95 = Incertitude (95 %)

report-attested = Ce que le technicien atteste
report-attested-nothing = La fiche ne demande rien et rien n’a été indiqué.
report-attested-complete = Toutes les réponses obligatoires ont été données.
report-attested-missing = Des réponses obligatoires manquent.
report-statement = Déclaration
report-answer = Réponse
report-not-asked = non demandé par la fiche
report-obligation =
    { $required ->
        [yes] obligatoire
       *[no] facultatif
    }
report-answered =
    { $answer ->
        [yes] ✓ oui
        [no] ✕ non
       *[none] — sans réponse
    }
report-scan-tool = Ce que l’outil de diagnostic a indiqué
report-scan-tool-nothing = Rien n’a été indiqué sur le calibrage lui-même.
report-scan-tool-aside = Tel que saisi par le technicien. Cela ne dit rien de l’endroit où se trouvait le support.
report-calibration-key =
    { $key ->
        [result] Résultat
        [at] Heure
        [reported_azimuth_deg] Azimut indiqué, degrés
        [reported_elevation_deg] Élévation indiquée, degrés
       *[other] { $key }
    }
report-calibration-result =
    { $result ->
        [successful] réussi
        [failed] échoué
        [not-run] non effectué
       *[other] { $result }
    }
report-attachments = Pièces jointes
report-attachment-kind =
    { $kind ->
        [scan-before] rapport de diagnostic avant
        [scan-after] rapport de diagnostic après
        [alignment] relevé de géométrie
        [procedure] procédure
        [overview-photo] photo d’ensemble
        [other] autre
       *[unknown] { $kind }
    }
report-sheet = D’où viennent ces valeurs
report-sheet-no-source = La fiche de montage n’indique aucune source.
report-procedure-key =
    { $key ->
        [document] Document
        [revision] Révision
        [opened] Consulté le
        [applies-to] S’applique à
       *[other] { $key }
    }
report-not-checked = Ce qui n’a pas été contrôlé
report-not-checked-nothing = La fiche de montage ne dispense de rien et n’omet rien.
report-left-out = { $quantity } : la fiche ne le contrôle pas et n’en dispense pas
report-waived = { $quantity } : dispensé ; motif : { $because }
report-inputs = Les fichiers à l’origine de ce rapport
report-inputs-lede = Un fichier modifié a un autre SHA-256.
report-what = Quoi
report-file = Fichier
report-input-role =
    { $role ->
        [job] dossier
        [setup] fiche de montage
        [kit] jeu de marqueurs
        [layout] disposition
        [camera] appareil photo
        [stand] support
        [photo] photo
        [attachment] pièce jointe
       *[other] { $role }
    }
report-found-in =
    { $place ->
        [embedded] trouvé dans : modèles intégrés
        [installed] trouvé dans : modèles installés
        [option] trouvé dans : répertoire de --models
        [environment] trouvé dans : répertoire de BAYWITNESS_MODELS
       *[other] trouvé dans : modèles d’un autre endroit
    }
report-cautions = Précautions
report-caution-maker = Les informations de service du constructeur du véhicule et les règles locales font foi. Si elles diffèrent de ce rapport, les suivre.
report-caution-trained = Les interventions sur les capteurs d’aide à la conduite sont réservées à des personnes formées.
report-caution-lasers = Lasers et véhicules levés exigent leurs propres précautions.
report-caution-documents = Ce rapport documente où se trouvait la cible lors de la prise des photos. Il ne remplace pas la procédure de calibrage et ne dit pas que le capteur fonctionne.
report-footer = Mesuré et écrit par { $tool } · format d’enregistrement { $format } · dossier { $job }

report-about = À propos de ce document
report-about-repeats = Il reproduit le résultat du dossier { $job }, conservé dans le fichier result.json. Le SHA-512 de ce fichier figure sur chaque page, aussi sous forme de code QR :
report-about-undated = Ni le dossier ni ses photos n’indiquent une heure avec son décalage. La date dans les propriétés de ce fichier est le 1er janvier 1970, car PDF/A en exige une ; elle ne signifie rien.
report-digest-of = SHA-512 de result.json, que ce document reproduit :
report-foreign-characters =
    { $count ->
        [one] Un caractère de cet enregistrement n’a pas de forme dans les polices de ce document et apparaît comme { $sign } ; le texte copié, le rapport HTML et result.json l’ont.
       *[other] { $count } caractères différents de cet enregistrement n’ont pas de forme dans les polices de ce document et apparaissent comme { $sign } ; le texte copié, le rapport HTML et result.json les ont.
    }

verify-one-job = --moved et --more prennent un seul dossier : indiquer celui auquel la photo appartient
verify-not-logged = Non consigné : { $jobs }, car illisible.
verify-report = Rapport :
verify-for-the-customer = Pour le client : { $file }
verify-repair-order = Ordre de réparation { $series } : { $file }
verify-no-folder = impossible de créer le répertoire { $folder } : { $why }
verify-no-json = impossible d’écrire le résultat en JSON : { $why }
verify-watch-every = « { $text } » n’est pas une durée de 0,05 à 3600 s
verify-watch-no-folder = { $folder } n’est pas un répertoire : en indiquer un qui contient des dossiers d’intervention
verify-watching = Surveillance de { $folder } ; Ctrl-C pour terminer.
verify-unreadable-folder = impossible de lire le répertoire { $folder } : { $why }
report-findings-above = Tous les constats figurent sous « Que faire maintenant ».

report-private-kind =
    { $kind ->
        [position] lieu de prise de vue (GPS)
        [serial] numéros de série
        [owner] propriétaire ou auteur
       *[notes] notes propres au fabricant
    }
report-picture-unreadable = impossible de lire la photo { $photo } pour le rapport : { $why }
report-picture-not-made = impossible de coder la copie de la photo { $photo } : { $why }
report-no-pdf = impossible d’écrire le rapport en PDF : { $why }
report-no-pdf-of-page = impossible d’écrire le rapport en PDF : sa page n’est pas bien formée : { $why }
report-no-table = impossible d’écrire le tableau en Parquet : { $why }
