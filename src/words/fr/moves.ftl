# Que faire au support ; un libellé là où il n'y a rien à faire.
moves-none-needed = rien à corriger
moves-not-measured = non mesuré
moves-not-decided = non décidé
moves-leave-it = le laisser où il est
moves-later = rien pour l’instant
moves-held = ne rien déplacer tant que « { $finding } » subsiste : l’éclaircir d’abord

moves-turn =
    { $way ->
        [left] Tourner le support de { $angle }° : l’extrémité côté gauche du véhicule de { $ends } mm vers le véhicule, l’extrémité côté droit de { $ends } mm en s’en éloignant.
       *[right] Tourner le support de { $angle }° : l’extrémité côté gauche du véhicule de { $ends } mm en s’éloignant du véhicule, l’extrémité côté droit de { $ends } mm vers lui.
    }
moves-sideways =
    { $way ->
        [left] Déplacer le support de { $by } mm vers la gauche du véhicule.
       *[right] Déplacer le support de { $by } mm vers la droite du véhicule.
    }
moves-along =
    { $way ->
        [away] Éloigner le support du véhicule de { $by } mm.
       *[towards] Rapprocher le support du véhicule de { $by } mm.
    }
moves-height =
    { $way ->
        [up] Monter la cible de { $by } mm.
       *[down] Descendre la cible de { $by } mm.
    }
moves-tilt =
    { $way ->
        [away] Incliner la cible de { $angle }° : le bord supérieur de { $top } mm en s’éloignant du véhicule par rapport au bord inférieur.
       *[towards] Incliner la cible de { $angle }° : le bord supérieur de { $top } mm vers le véhicule par rapport au bord inférieur.
    }
moves-level =
    { $way ->
        [lower] Mettre la cible de niveau de { $angle }° : baisser de { $end } mm l’extrémité côté droit du véhicule, ou lever l’autre d’autant.
       *[raise] Mettre la cible de niveau de { $angle }° : lever de { $end } mm l’extrémité côté droit du véhicule, ou baisser l’autre d’autant.
    }
moves-side-ranges =
    { $way ->
        [longer] Tourner le support jusqu’à ce que la distance latérale gauche soit plus longue de { $by } mm par rapport à la droite : l’extrémité côté gauche du véhicule en s’éloignant du véhicule.
       *[shorter] Tourner le support jusqu’à ce que la distance latérale gauche soit plus courte de { $by } mm par rapport à la droite : l’extrémité côté gauche du véhicule vers le véhicule.
    }
moves-steering =
    { $way ->
        [left] Tourner la direction jusqu’à ce que les roues avant pointent { $angle }° plus à gauche.
       *[right] Tourner la direction jusqu’à ce que les roues avant pointent { $angle }° plus à droite.
    }
moves-plate =
    { $way ->
        [forwards] Tourner la plaque de { $angle }° autour de l’axe de sa roue : le haut vers l’avant.
       *[rearwards] Tourner la plaque de { $angle }° autour de l’axe de sa roue : le haut vers l’arrière.
    }
moves-vehicle = Écart de { $by } : { $quantity }. Cela relève du véhicule, non du support.

moves-unasked = déplacé de { $moved } sans demande : { $left } en retour
moves-not-seen = demandé { $asked }, aucun déplacement visible sur les photos : reste { $left }
moves-wrong-way = demandé { $asked }, déplacé de { $moved } dans le mauvais sens : reste { $left }
moves-far-enough = demandé { $asked }, déplacé de { $moved } : suffisant
moves-as-far-as-told = demandé { $asked }, déplacé de { $moved } : correct pour autant que les photos le montrent
moves-more = demandé { $asked }, déplacé de { $moved } : reste { $left }
moves-back = demandé { $asked }, déplacé de { $moved } : { $left } en retour
moves-of-check = { $quantity } : { $words }

moves-screw =
    { $amount ->
        [one] { $way ->
            [clockwise] { $turns } tour de « { $screw } » dans le sens horaire
           *[counter] { $turns } tour de « { $screw } » dans le sens antihoraire
        }
       *[several] { $way ->
            [clockwise] { $turns } tours de « { $screw } » dans le sens horaire
           *[counter] { $turns } tours de « { $screw } » dans le sens antihoraire
        }
    }
moves-screw-unknown = { $turns } tours de « { $screw } » : ces photos ne permettent pas d’en connaître l’effet
moves-screw-gave = { $turns } tours de « { $screw } » ont donné { $gave } (±{ $uncertainty }) : { $per_turn } par tour ; le fichier du support indique { $stated }
moves-screw-learned =
    { $way ->
        [other] { $turns } ; un tour donne ici en réalité { $gives } en sens contraire, le fichier du support indique { $stated }
       *[same] { $turns } ; un tour donne ici en réalité { $gives }, le fichier du support indique { $stated }
    }

# Ce que montre une photo d'un appareil sur trépied, et ce qu'elle devient.
moves-tripod-first = la première photo ; la suivante dira si le support est au repos
moves-tripod-new-place = le support est au repos à un nouvel endroit
moves-tripod-same-place = le support est resté où il était
moves-tripod-unsure = le support est peut-être à un nouvel endroit ; la photo suivante le dira
moves-tripod-skipped = ignorée : { $why }
moves-tripod-rest = rien n’a bougé depuis la photo précédente
moves-tripod-stand = le support a bougé depuis la photo précédente
moves-tripod-itself = le trépied lui-même a bougé, ou le support et le véhicule à la fois : ne plus toucher au trépied, les photos suivantes comptent de nouveau
moves-tripod-vehicle = le véhicule a bougé, les feuilles de sol non : ses premières photos ne valent plus, commencer un nouvel essai
moves-tripod-one = { $body } a bougé, et rien d’autre hormis le support : vérifier son assise
moves-tripod-no-stand = les marqueurs du support ne sont pas visibles, ou ce ne sont pas les mêmes que sur la photo précédente
moves-tripod-nothing-fixed = elle ne montre aucune plaque de roue ni feuille de sol que montre aussi la photo précédente
moves-tripod-other-size = elle n’a pas la taille de la photo précédente : ne pas changer les réglages de l’appareil
moves-tripod-kept-first = { $photo }, après le déplacement { $move }
moves-tripod-kept-instead = { $photo } à la place de la photo précédente
moves-tripod-older-stays = non conservée, car un verdict consigné repose sur { $photo }
moves-tripod-already = c’est déjà { $photo }

moves-leave-stand = Laisser le support où il est. { $reason }
moves-one-more-photo = Il faut une photo de plus.
moves-too-few-photos =
    { $have ->
        [0] La valeur est dans la tolérance, mais aucune photo de la position actuelle ne le prouve : la fiche de montage en demande { $wanted }. { $more }
        [one] La valeur est dans la tolérance, mais une seule photo de la position actuelle mesure sans prouver : la fiche de montage en demande { $wanted }. { $more }
       *[other] La valeur est dans la tolérance, mais { $have } photos de la position actuelle mesurent sans prouver : la fiche de montage en demande { $wanted }. { $more }
    }
moves-too-few-in-step =
    { $have ->
        [0] La valeur est dans la tolérance, mais aucune photo de l’étape { $step } ne montre le support avec le véhicule : il en faut { $wanted } pour le prouver. { $more }
        [one] La valeur est dans la tolérance, mais une seule photo de l’étape { $step } mesure sans prouver, car rien ne pourrait la contredire. Il en faut { $wanted }. { $more }
       *[other] La valeur est dans la tolérance, mais { $have } photos de l’étape { $step } mesurent sans prouver : il en faut { $wanted }. { $more }
    }
moves-take-more =
    { $photos ->
        [one] Tout laisser en place et prendre une photo de plus du support avec plaques et feuilles de sol, depuis un autre endroit.
       *[other] Tout laisser en place et prendre { $photos } photos de plus du support avec plaques et feuilles de sol, depuis d’autres endroits.
    }
moves-counts-later =
    { $photos ->
        [one] La valeur est dans la tolérance ; cela comptera quand le support sera à sa place définitive et qu’une photo l’y montrera.
       *[other] La valeur est dans la tolérance ; cela comptera quand le support sera à sa place définitive et que { $photos } photos l’y montreront.
    }
moves-no-place = La position du support après le déplacement { $move } n’a pas été mesurée : aucune photo ne l’y montre avec les plaques ou feuilles de sol des photos précédentes. En prendre une qui le fasse.
moves-no-place-because = La position du support après le déplacement { $move } n’a pas été mesurée.

moves-apart-unlinked = les essais n’ont aucune feuille de sol ni plaque en commun et ne peuvent pas être comparés
moves-apart-unsettled = les photos des deux essais n’ont pas pu être ajustées ensemble
moves-apart-elsewhere = { $body } se trouvait ailleurs, à environ { $mm } mm et { $degrees }°
moves-apart-stand-unseen = le support n’est pas visible dans les deux essais
moves-apart-untold = impossible de savoir si { $body } se trouvait au même endroit

moves-ride-height =
    { $way ->
        [lower] La caisse est en moyenne { $by } mm (±{ $uncertainty }) plus basse que les hauteurs de passage de roue de la fiche.
       *[higher] La caisse est en moyenne { $by } mm (±{ $uncertainty }) plus haute que les hauteurs de passage de roue de la fiche.
    }
moves-body-pitch =
    { $way ->
        [down] Par rapport à elles, l’avant du véhicule pointe de { $by }° (±{ $uncertainty }) vers le bas, et avec lui un capteur monté sur la caisse.
       *[up] Par rapport à elles, l’avant du véhicule pointe de { $by }° (±{ $uncertainty }) vers le haut, et avec lui un capteur monté sur la caisse.
    }
