verdict-word =
    { $verdict ->
        [within] dans la tolérance
        [outside] hors tolérance
        [not_proven] non prouvé
       *[retake] photos à refaire
    }
verdict-grade =
    { $grade ->
        [pass] conforme
        [conditional_pass] conforme sous condition
        [conditional_fail] non conforme sous condition
       *[fail] non conforme
    }

# Des phrases entières, l'une après l'autre.
verdict-sentences = { $first } { $then }
verdict-either-two = { $first } ou { $second }
verdict-either-three = { $first }, { $second } ou { $third }
verdict-mm = { $x } mm
verdict-degrees = { $x }°
verdict-plus-minus-mm = ±{ $x } mm
verdict-plus-minus-degrees = ±{ $x }°
# What a camera signed about a photo's bytes.
verdict-credentials-by =
    { $state ->
        [trusted] valides, signées par { $signer }, dont une ancre de confiance répond
        [unknown_signer] valides, signées par { $signer }, dont aucune ancre de confiance ne répond
        [expired] inchangées depuis la signature de { $signer }, dont le certificat n’est pas valable au moment prouvé
       *[revoked] inchangées depuis la signature de { $signer }, dont le certificat a été révoqué
    }
verdict-credentials-broken = rompues : { $failures }
verdict-credentials-nameless = quelqu’un sans nom
verdict-credentials-count =
    { $state ->
        [trusted] { $count } valides et de confiance
        [unknown_signer] { $count } valides, signataire inconnu
        [expired] { $count } avec un certificat hors délai
        [revoked] { $count } avec un certificat révoqué
        [broken] { $count } rompues
       *[none] { $count } sans aucune
    }
verdict-credentials-counts = { $parts }

verdict-quantity =
    { $quantity ->
        [distance] distance
        [range] distance en ligne droite
        [lateral_offset] centrage
        [lateral_from_nose] centrage sur le marque avant
        [height] hauteur
        [height_from_nose] hauteur au-dessus du marque avant
        [yaw] équerrage
        [pitch] inclinaison
        [roll] horizontalité
        [side_range_difference] distances latérales, gauche moins droite
        [side_range_left] distance latérale gauche
        [side_range_right] distance latérale droite
        [rear_toe_left] parallélisme arrière gauche
        [rear_toe_right] parallélisme arrière droit
        [front_toe_left] parallélisme avant gauche
        [front_toe_right] parallélisme avant droit
        [thrust_angle] angle de poussée
        [steering_angle] angle de braquage
        [plate_plumb_left] aplomb de la plaque de roue arrière gauche
        [plate_plumb_right] aplomb de la plaque de roue arrière droite
        [plate_plumb_front_left] aplomb de la plaque de roue avant gauche
        [plate_plumb_front_right] aplomb de la plaque de roue avant droite
        [camber_left] carrossage arrière gauche
        [camber_right] carrossage arrière droit
        [camber_front_left] carrossage avant gauche
        [camber_front_right] carrossage avant droit
        [rear_track] voie arrière
        [wheelbase] empattement
        [setback] recul de roue (setback)
        [arch_height_front_left] hauteur du passage de roue avant gauche
        [arch_height_front_right] hauteur du passage de roue avant droit
        [arch_height_rear_left] hauteur du passage de roue arrière gauche
        [arch_height_rear_right] hauteur du passage de roue arrière droit
        [ride_height] hauteur de caisse, moyenne des quatre passages de roue
        [body_pitch] inclinaison de la caisse par rapport aux roues
        [target_tilt_gravity] inclinaison de la cible au niveau à bulle
        [target_level_gravity] horizontalité de la cible au niveau à bulle
       *[other] { $quantity }
    }
verdict-line =
    { $line ->
        [rear_axle_normal] la perpendiculaire à l’essieu arrière
        [thrust_line] l’axe de poussée
       *[centreline] l’axe médian du véhicule
    }

# Les corps du poste : dans une phrase, en début de phrase, en libellé.
verdict-body =
    { $role ->
        [target] le support
        [rear_left_wheel] la plaque de roue arrière gauche
        [rear_right_wheel] la plaque de roue arrière droite
        [front_left_wheel] la plaque de roue avant gauche
        [front_right_wheel] la plaque de roue avant droite
        [floor] la feuille de sol
        [nose] la marque avant
        [rear_left_arch] la marque de passage de roue arrière gauche
        [rear_right_arch] la marque de passage de roue arrière droite
        [front_left_arch] la marque de passage de roue avant gauche
        [front_right_arch] la marque de passage de roue avant droite
        [vehicle] le véhicule
       *[card] la carte du dossier
    }
verdict-body-first =
    { $role ->
        [target] Le support
        [rear_left_wheel] La plaque de roue arrière gauche
        [rear_right_wheel] La plaque de roue arrière droite
        [front_left_wheel] La plaque de roue avant gauche
        [front_right_wheel] La plaque de roue avant droite
        [floor] La feuille de sol
        [nose] La marque avant
        [rear_left_arch] La marque de passage de roue arrière gauche
        [rear_right_arch] La marque de passage de roue arrière droite
        [front_left_arch] La marque de passage de roue avant gauche
        [front_right_arch] La marque de passage de roue avant droite
        [vehicle] Le véhicule
       *[card] La carte du dossier
    }
verdict-body-label =
    { $role ->
        [target] support
        [rear_left_wheel] plaque de roue arrière gauche
        [rear_right_wheel] plaque de roue arrière droite
        [front_left_wheel] plaque de roue avant gauche
        [front_right_wheel] plaque de roue avant droite
        [floor] feuille de sol
        [nose] marque avant
        [rear_left_arch] marque de passage de roue arrière gauche
        [rear_right_arch] marque de passage de roue arrière droite
        [front_left_arch] marque de passage de roue avant gauche
        [front_right_arch] marque de passage de roue avant droite
        [front_axle] essieu avant
        [rear_axle] essieu arrière
        [vehicle] véhicule
       *[card] carte du dossier
    }
# Si le jeu en a plusieurs du même type : avec son propre nom.
verdict-body-own = { $body } « { $name } »
verdict-stand-before = { $stand } (avant son déplacement)
verdict-stand-after = { $stand } (après le déplacement { $move })
verdict-stand-step = { $stand } (étape { $step })

verdict-budget-corners = bruit des coins des marqueurs dans les photos
verdict-budget-calibration = étalonnage de l’appareil photo
verdict-budget-focal = distance focale de chaque photo
verdict-budget-centre = point principal de chaque photo
verdict-budget-edge = décalage des bords de chaque photo
verdict-budget-turn = rotation de l’appareil pendant la lecture ligne par ligne de chaque photo
verdict-budget-layout = position et rotation des marqueurs sur leurs porte-marqueurs
verdict-budget-scale = taille des marqueurs imprimés
verdict-budget-seating = assise : { $body }
verdict-budget-wheelbase = empattement saisi
verdict-budget-nose = position de l’avant saisie
verdict-budget-hub-height = hauteur de moyeu saisie
verdict-budget-datum = décalage du point de référence « { $datum } »
verdict-budget-reading = relevé : { $quantity }

verdict-without-body = sans { $body }
verdict-without-photo = sans { $photo }
verdict-other-lens-model = avec l’autre modèle d’objectif

# Une phrase qui explique le verdict d'un dossier.
verdict-why-within =
    { $checks ->
        [one] Le seul contrôle est dans la tolérance, preuve à l’appui.
       *[other] Les { $checks } contrôles sont dans la tolérance, preuve à l’appui.
    }
verdict-why-within-simple =
    { $checks ->
        [one] La valeur mesurée du seul contrôle est dans la tolérance. La règle de la fiche de montage ne tient pas compte de son incertitude.
       *[other] Les valeurs mesurées des { $checks } contrôles sont dans la tolérance. La règle de la fiche de montage ne tient pas compte de leur incertitude.
    }
verdict-why-within-likely =
    { $checks ->
        [one] Le seul contrôle est dans la tolérance avec une probabilité d’au moins { $least } %. C’est ce que demande la règle de la fiche de montage, et trop peu pour l’établir.
       *[other] Les { $checks } contrôles sont dans la tolérance, chacun avec une probabilité d’au moins { $least } %. C’est ce que demande la règle de la fiche de montage, et trop peu pour l’établir.
    }
verdict-why-outside = Prouvé hors tolérance : { $quantities }.
verdict-why-outside-simple = Mesuré hors tolérance : { $quantities }. La règle de la fiche de montage ne tient pas compte de l’incertitude.
verdict-why-outside-likely = Hors tolérance avec une probabilité d’au moins { $least } % : { $quantities }. C’est ce que demande la règle de la fiche de montage, et trop peu pour l’établir.
verdict-why-outside-anyway = Prouvé hors tolérance quelle qu’en soit la cause : { $quantities }.
verdict-why-retake = Mesure impossible : { $quantity }. { $reason }
verdict-why-retake-bare = Certains contrôles n’ont pas pu être mesurés.
verdict-why-not-proven = Non prouvé : { $quantity }. { $reason }
verdict-why-no-checks = La fiche de montage ne contient aucun contrôle : rien n’a été prouvé.
verdict-why-nothing = Rien n’a pu être mesuré. { $reason }
verdict-no-value = Il n’y a pas de valeur.

verdict-kit-serial = numéro de série { $serial }
verdict-kit-overdue = mesure du jeu échue depuis le { $due } : la refaire
verdict-kit-due = prochaine mesure du jeu : { $due }
verdict-kit-due-unknown = prochaine mesure du jeu : { $due } (non vérifiable : aucune heure indiquée)
verdict-kit-both = { $serial }, { $survey }

verdict-bay-slope = pente du sol par rapport au plan des roues
verdict-bay-flatness = inégalité entre feuilles voisines
verdict-bay-ahead = espace libre devant l’avant, jusqu’à la feuille la plus éloignée
