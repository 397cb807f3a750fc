# Printed kits and boards.
print-kit-title = Jeu de marqueurs { $kit }
print-board-title = Mire d’appareil
print-folio = baywitness · { $name } · page { $page } sur { $count }
print-role =
    { $role ->
        [target] support de cible
        [rear_left_wheel] plaque de roue arrière gauche
        [rear_right_wheel] plaque de roue arrière droite
        [front_left_wheel] plaque de roue avant gauche
        [front_right_wheel] plaque de roue avant droite
        [floor] feuille de sol
        [nose] marque avant
        [rear_left_arch] marque sur le passage de roue arrière gauche
        [rear_right_arch] marque sur le passage de roue arrière droit
        [front_left_arch] marque sur le passage de roue avant gauche
        [front_right_arch] marque sur le passage de roue avant droit
       *[card] carte de dossier
    }
print-datum-of =
    { $kind ->
        [target] le point visé, le milieu de la cible
        [floor] le centre du premier marqueur ; x-y est le sol
        [nose] le milieu du cache du capteur, ou le point le plus avancé d’où se mesurent les distances
        [card] le milieu de la carte
        [arch] le bord inférieur du passage de roue, à la verticale du centre de la roue
       *[wheel] la référence du moyeu, où l’axe de rotation de la roue coupe le plan de sa face extérieure
    }
print-direction =
    { $way ->
        [forward] vers l’avant
        [rearward] vers l’arrière
        [left] à gauche
        [right] à droite
        [up] vers le haut
        [down] vers le bas
       *[nowhere] nulle part
    }
print-direction-turned = { $first }, tourné de { $turn }° { $second }
print-up = HAUT
print-up-is = HAUT = { $direction }
print-place = x { $x }  y { $y }  z { $z }
print-ruler =
    { $way ->
        [up] haut : mesurer ceci : { $length } mm ; saisir la lecture
       *[right] droite : mesurer ceci : { $length } mm ; saisir la lecture
    }
print-ruler-short = haut : mesurer ceci : { $length } mm
print-view-looks = Face { $direction }
print-view-note =
    { $side ->
        [behind] plan { $depth } mm derrière la référence · haut de la page = { $top }
       *[front] plan { $depth } mm devant la référence · haut de la page = { $top }
    }
print-view-plan = Plan, vu de dessus
print-view-plan-note = les cotes sont x (avant) et y (gauche) · haut de la page = avant
print-view-scale = { $title } · 1:{ $scale }
print-assembly-title = { $carrier } : où vont les feuilles
print-assembly-note = Toutes les cotes en mm depuis la référence ({ $datum }) ; vu de face, droite et haut sont positifs. Aligner les petits traits au bord de chaque feuille sur des lignes au crayon passant par son centre.
print-datum = référence
print-column-page = page
print-column-ids = numéros
print-column-square = carré, largeur x hauteur
print-column-centre-x = centre x
print-column-looks = la face imprimée regarde
print-size = { $right } x { $up } mm
print-sheet-title = { $carrier } · n° { $ids }
print-sheet-line = carré noir { $right } x { $up } mm · la face imprimée regarde { $direction } · centre de la feuille à { $place } mm
print-strip = { $up } · n° { $ids } · { $carrier }
print-wide-note = Ce marqueur est aussi large que le papier, la règle verticale est donc courte : un contrôle rapide. Saisir la lecture de la règle de { $length } mm en page 1, ou mesurer le carré noir lui-même au pied à coulisse.
print-board-note = 100 %, mat, collé à plat sur une plaque rigide
print-board-foot = baywitness · mire d’appareil
print-board-markers = mire d’appareil, { $columns } x { $rows } marqueurs 36h11, n° { $first } à { $last } de gauche à droite et de haut en bas, taille { $size } mm, écart { $gap } mm
print-board-chessboard = mire d’appareil, damier à { $across } x { $down } coins intérieurs, cases de { $square } mm
print-pages = { $first } à { $last }
print-serial = numéro de série { $serial }
print-kind = marqueurs de la famille 36h11 · papier { $paper }
print-survey-due = à remesurer le { $date }
print-step-print-title = Imprimer
print-step-print = à 100 % (« taille réelle » ; pas « ajuster à la page »), sur papier mat de 120 g/m² ou plus ou sur film mat, avec une imprimante laser. Un tirage, une imprimante, un bac : les feuilles d’un tirage ont la même échelle.
print-step-measure-title = Mesurer
print-step-measure = les deux règles de cette page au pied à coulisse, du milieu d’un trait final au milieu de l’autre, à 0,05 mm. Contrôler deux autres pages. Saisir la lecture : baywitness sheet KIT --measured-mm RIGHT,UP --corrected FILE écrit le fichier du jeu avec les tailles imprimées. Vérifier les dossiers avec ce fichier ; imprimer avec le premier.
print-step-glue-title = Coller
print-step-glue = sur des plaques planes, rigides et mates (composite d’aluminium de 4 mm ; tôle mince, toute pareille, pour le sol) : lignes au crayon par le centre de chaque feuille selon les dessins, colle en aérosol sur tout le dos, petits traits du bord sur les lignes au crayon, sans bulles. Une plaque qu’une règle montre creuse de plus de 0,2 mm n’est pas plane.
print-step-white-title = Marge blanche
print-step-white = d’une cellule autour de chaque carré noir. Couper sur les repères ou à l’extérieur, jamais dans la marge ; pas d’adhésif, pas de brillant, pas de film qui reflète les lampes.
print-step-off-title = Retirer
print-step-off = la marque avant et toute plaque métallique avant le calibrage : ce qui est dans le champ d’un capteur change ce qu’il voit.
print-step-keep-title = Entretenir
print-step-keep = le papier gonfle et rétrécit de 0,1 à 0,3 % avec l’humidité : remesurer au changement de saison et saisir la lecture. Un jeu tombé ou plié est remesuré avant emploi.
print-caution = Les informations de service du constructeur du véhicule et les règles locales font foi. Travail réservé à un personnel formé ; les lasers et les véhicules levés exigent leurs propres précautions. baywitness documente la procédure et ne la remplace pas.
print-assumes = Le fichier du jeu suppose des centres de feuille à { $layout } mm des dessins, des feuilles droites à { $turn } degrés et des tailles à { $scale } % (un écart type chacun). Travailler à la moitié de cela.
print-assumes-surveyed = Le fichier du jeu suppose des centres de feuille tels que mesurés et des tailles à { $scale } % (un écart type). Travailler à la moitié de cela.
print-column-holder = porte-marqueurs
print-column-role = ce que c’est
print-column-drawing = dessin, page
print-column-sheets = feuilles, page
print-wrote = { $file } écrit : imprimer à 100 % sur papier { $paper }, puis mesurer les règles de contrôle
print-wrote-corrected = { $file } écrit : imprimé à { $right } % vers la droite et { $up } % vers le haut

# Pourquoi rien n'a été imprimé
print-two-sides = { $width } x { $height }
print-marker-too-large = le marqueur { $id } de { $holder } demande { $needs } mm avec sa marge blanche, mais le papier { $paper } offre { $offers } mm : { $remedy }
print-board-too-large = la mire demande { $needs } mm avec sa marge blanche, mais le papier { $paper } offre { $offers } mm : { $remedy }
print-smaller-marker = lui donner un size_mm de { $size } ou moins
print-larger-paper-or-marker = imprimer avec --paper { $paper } ou lui donner un size_mm de { $size } ou moins
print-smaller-board = réduire la mire d’un facteur { $factor }
print-larger-paper-or-board = imprimer avec --paper { $paper } ou réduire la mire d’un facteur { $factor }
print-unknown-marker = le marqueur { $id } n’est pas dans la famille { $family }, dont les numéros vont de 0 à { $last } : lui donner un autre numéro
print-the-marker = marqueur { $id }
print-of-the-board =
    { $what ->
        [marker] marqueur de la mire
        [gap] intervalle de la mire
       *[square] case de la mire
    }
print-bad-size = { $what } : taille { $size } mm ; donner la taille en millimètres, supérieure à zéro
print-no-markers = le jeu { $kit } n’a aucun marqueur à imprimer : ajouter un [[carrier.marker]]
print-reading-off =
    { $direction ->
        [right] la règle vers la droite mesure { $read } mm au lieu de { $nominal } mm : un écart de plus de { $limit } % est une erreur de lecture ou une imprimante qui ajuste la taille ; imprimer à 100 % et relire les deux règles
       *[up] la règle verticale mesure { $read } mm au lieu de { $nominal } mm : un écart de plus de { $limit } % est une erreur de lecture ou une imprimante qui ajuste la taille ; imprimer à 100 % et relire les deux règles
    }
print-unknown-paper = papier inconnu « { $name } » : choisir a4, a3 ou letter
print-no-pdf = impossible d’écrire le PDF : { $why }
print-font-damaged = une police intégrée est endommagée ; recompiler le programme
