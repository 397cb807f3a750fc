# A fitted camera, on the terminal.
fit-parameter =
    { $name ->
        [focal-u] focale u
        [focal-v] focale v
        [centre-u] centre u
       *[centre-v] centre v
    }
fit-parameters-head = Paramètres avec leur incertitude-type (1 sigma) :
fit-for-use = Utilisable : { $answer ->
        [yes] oui
       *[no] NON
    }
fit-verdict =
    { $answer ->
        [yes] Utilisable
       *[no] Inutilisable
    }
fit-forbids = Interdit l’emploi :
fit-advice =
    { $kind ->
        [forbids] Inutilisable : { $advice }
       *[note] Note : { $advice }
    }
fit-head = { $name } : objectif { $model }, { $width } x { $height } px, d’après { $count } photos
fit-head-noise = RMS { $rms } px par coordonnée, bruit des coins { $noise } px ({ $factor } fois ce qu’indique le détecteur), { $freedom } degrés de liberté
fit-per-photo = D’une photo à l’autre (1 sigma) : focale { $focal } % ({ $focal_freedom } degrés de liberté), centre { $centre } px ({ $centre_freedom })
fit-turn = Pendant la lecture des lignes, l’appareil a tourné de { $turn }° autour de chaque axe (1 sigma)
fit-board = Mire : courbée de { $bend } mm de crête à creux, et de { $flex } mm autrement à chaque photo (1 sigma) ; pris en compte
fit-seen = Vue dans { $share } % du cadre, inclinée jusqu’à { $tilt }° d’une photo à l’autre, tournée jusqu’à { $turn }°
fit-halves = Deux moitiés ({ $first } et { $second } photos) : les projections diffèrent jusqu’à { $most } px ({ $shape } px hors focale et centre), { $ratio } fois ce qui est indiqué ({ $agree ->
        [yes] elles concordent
       *[no] elles se contredisent
    })
fit-left-out = Écartée : { $file } : { $why }
fit-wrote = écrit : { $file }
fit-looked-at = examinée : { $file }

# Why a photo is left out.
fit-out-size = elle fait { $width } x { $height } px, les autres { $others_width } x { $others_height } px
fit-out-record = ses propres données nomment un autre appareil ou une autre focale que celles des autres photos
fit-out-no-board = aucune partie de la mire n’y a été trouvée (un damier doit être vu en entier)
fit-out-few-markers =
    { $count ->
        [one] un seul marqueur de la mire y a été trouvé
       *[other] seuls { $count } marqueurs de la mire y ont été trouvés
    }
fit-out-no-pose = aucune pose de la mire ne l’explique
fit-out-zoomed =
    { $side ->
        [shorter] sa focale est { $off } % plus courte que celle des autres photos : zoomée, recadrée ou redimensionnée
       *[longer] sa focale est { $off } % plus longue que celle des autres photos : zoomée, recadrée ou redimensionnée
    }
fit-out-misfit = ses coins s’écartent de l’ajustement { $ratio } fois plus que ceux des autres photos (floue, mire bougée ou courbée ?)
fit-out-markers = { $share } % de ses marqueurs ne sont pas là où la mire les a

# What to do about a fit.
fit-part =
    { $part ->
        [upper-left] le coin supérieur gauche
        [upper] le bord supérieur
        [upper-right] le coin supérieur droit
        [left] le bord gauche
        [middle] le milieu
        [right] le bord droit
        [lower-left] le coin inférieur gauche
        [lower] le bord inférieur
        [lower-right] le coin inférieur droit
        [edges] les bords
       *[corners] les coins
    }
fit-advice-noise = les coins sont { $factor } fois plus dispersés que ne l’indique le détecteur : vérifier que la mire est plane et imprimée selon son fichier ; les incertitudes indiquées en tiennent compte
fit-advice-too-few = seules { $count } photos ont pu servir : en prendre 12 à 20 de la mire
fit-advice-few = { $count } photos disent peu de ce qui distingue les photos : en prendre 12 à 20
fit-advice-many-out = { $left_out } photos ont été écartées, { $used } utilisées : voir pourquoi et en prendre d’autres
fit-advice-coverage = la mire a été vue dans { $share } % du cadre : remplir { $parts } (de l’image enregistrée)
fit-advice-alike = les photos se ressemblent : la direction de la mire diffère de { $tilt }° au plus ; incliner la mire (ou en faire le tour) de 30 à 45° à gauche, à droite, en haut et en bas
fit-advice-tilt = incliner davantage la mire : sa direction diffère de { $tilt }° au plus, 60° conviennent
fit-advice-turn = la mire est dans le même sens sur toutes les photos : tourner l’appareil d’un quart de tour pour certaines
fit-advice-focal = la focale n’est connue qu’à { $u } % ({ $most } % nécessaires) : plus de photos avec la mire plus inclinée
fit-advice-dark = l’objectif ajusté ne montre rien dans un dixième du cadre ou plus : sa distorsion n’y a pas été déterminée, remplir le cadre avec la mire
fit-advice-frame = un dixième du cadre n’est connu qu’à { $u } px ({ $most } px nécessaires) : remplir { $parts }
fit-advice-bent = la mire est courbée de { $bend } mm : la coller sur une plaque plane (verre, aluminium) et ajuster de nouveau
fit-advice-no-halves = trop peu de photos pour en comparer deux moitiés
fit-advice-other-lens = deux moitiés des photos montrent des objectifs différents : leurs projections diffèrent de { $shape } px quelque part dans le cadre, focale et centre mis à part ({ $most } px au plus) ; le modèle d’objectif n’est pas le bon, l’objectif a changé entre les photos, ou trop peu d’entre elles atteignent cette partie
fit-advice-halves-changed = deux moitiés des photos diffèrent de { $ratio } fois ce qui est indiqué (jusqu’à { $most } px) : l’objectif a changé entre elles, ou la mire
fit-advice-halves-enlarged = deux moitiés des photos diffèrent de { $ratio } fois ce qui est indiqué (jusqu’à { $most } px) ; les incertitudes indiquées ont été élargies de ce facteur
fit-advice-better-model = l’objectif n’est pas de ce modèle : l’ajuster avec --model { $model }, qui laisse { $rms } px de résidus au lieu de { $own_rms } px et dont les moitiés diffèrent de { $shape } px au lieu de { $own_shape } px (focale et centre mis à part)

# A camera from photos of a kit.
fit-kit-head = { $name } : objectif { $model } d’après { $used } photos sur { $count } d’un jeu de marqueurs
fit-kit-noise = RMS { $rms } px par coordonnée ({ $factor } fois ce qu’indique le détecteur)
fit-kit-known = Neuf dixièmes du cadre sont connus à { $u } px, focale et centre mis à part
fit-kit-too-few = seules { $count } photos ont pu servir : en prendre { $least } ou plus
fit-kit-focal = la focale n’est connue qu’à { $u } % ({ $most } % nécessaires) : s’approcher, pour que des marqueurs proches et lointains soient sur une même photo
fit-kit-frame = un dixième du cadre n’est connu qu’à { $u } px ({ $most } px nécessaires) : avoir des marqueurs dans les coins de quelques photos, ou ajuster avec une mire

# The fitted camera's page.
fit-title = Ajustement de l’appareil : { $name }
fit-lens-title = Objectif
fit-lens = { $model }, RMS { $rms } px par coordonnée, bruit des coins { $factor } fois ce qu’indique le détecteur.
fit-lens-varies = D’une photo à l’autre (1 sigma), la focale varie de { $focal } % et le centre de { $centre } px. Pendant la lecture des lignes, l’appareil a tourné de { $turn }° autour de chaque axe (1 sigma).
fit-column-parameter = Paramètre
fit-column-value = Valeur
fit-column-u = Incertitude type
fit-circles-title = De combien un point peut paraître décalé
fit-circles-drawing = Cercles sur le cadre : de combien un point peut paraître décalé
fit-circles-size = taille de { $size } mm
fit-circles-caption = Un point à { $distance } m de l’appareil paraît au plus à cette distance de sa place (95 %) parce que l’objectif n’est pas mieux connu : { $best } mm là où il l’est le mieux, { $worst } mm au pire endroit du cadre. Une rotation de tout l’appareil est ôtée, chaque photo trouvant la sienne. Un tiret : l’objectif n’y montre rien.
fit-residuals-title = Résidus
fit-residuals-drawing = Résidus sur le cadre
fit-residuals-caption = Trouvé moins prévu pour { $count } coins de toutes les photos, traits { $factor } fois leur longueur réelle. Des voisins orientés de même sur bien des photos seraient une erreur du modèle d’objectif.
fit-coverage-title = Où la mire a été vue
fit-coverage-drawing = Nombre de coins dans chaque partie du cadre
fit-coverage-caption = Coins de toutes les photos dans chaque partie de l’image enregistrée : { $share } % du cadre. Entre les photos, la mire a été inclinée jusqu’à { $tilt }° et tournée jusqu’à { $turn }°.
fit-halves-title = Deux moitiés des photos
fit-halves-few = Trop peu de photos pour comparer deux moitiés.
fit-halves-page = Une photo sur deux contre les autres : les deux objectifs projettent un point à { $most } px d’écart au plus ({ $shape } px hors focale et centre), soit { $ratio } fois ce qui est indiqué, où jusqu’à { $limit } relève du hasard : { $agree ->
        [yes] ils concordent.
       *[no] ils se contredisent.
    }
fit-photos-title = Photos
fit-column-photo = Photo
fit-column-corners = Coins
fit-column-rms = RMS, px
fit-column-focal = Focale
fit-column-centre = Centre, px
fit-corners = { $found } sur { $count }
fit-left-out-title = Écartées

# A surveyed kit.
fit-survey-title = Mesure de { $kit }
fit-survey-serial = Numéro de série { $serial }
fit-survey-head = { $name } : { $markers } marqueurs sur { $carriers } porte-marqueurs d’après { $used } photos sur { $count } ; coins dispersés { $factor } fois plus que ne l’indique le détecteur, { $freedom } degrés de liberté
fit-survey-carrier = { $name } : { $count } marqueurs, décalés de { $moved } mm par coordonnée, désormais connus entre eux à { $known } mm
fit-survey-column-marker = Marqueur
fit-survey-column-photos = Photos
fit-survey-column-moved = Trouvé - fichier, mm (x y z)
fit-survey-column-u-shape = u entre marqueurs, mm
fit-survey-column-u-centre = u dans le porte-marqueurs, mm
fit-survey-column-turned = Tourné, °
fit-survey-column-markers = Marqueurs
fit-length = Longueur { $length } : { $against ->
        [sizes] les tailles de marqueur indiquées
       *[others] les autres
    } donnent { $expected } mm +- { $u }, E_n { $score } : { $agrees ->
        [yes] concorde
       *[no] CONTREDIT
    }
fit-scale = Échelle d’après { $source ->
        [lengths] les longueurs mesurées
       *[sizes] les tailles de marqueur indiquées
    } ; marqueurs imprimés à { $scale } % +- { $u } % (1 sigma) de leur taille indiquée
fit-survey-file = Les places du fichier étaient décalées de { $off } mm par coordonnée (1 sigma) ; le repère de chaque porte-marqueurs est connu à cela près, divisé par la racine du nombre de ses marqueurs
fit-survey-halves = Deux moitiés ({ $first } et { $second } photos) : les centres diffèrent de { $rms } mm par coordonnée, { $most } mm au plus (marqueur { $marker }), { $ratio } fois ce qui est indiqué ({ $agree ->
        [yes] elles concordent
       *[no] elles se contredisent
    })
fit-survey-halves-page = Une photo sur deux contre les autres, { $count } marqueurs : les centres diffèrent de { $rms } mm par coordonnée, { $most } mm au plus (marqueur { $marker }). Rapportée à son incertitude indiquée, la différence est de { $ratio } (jusqu’à { $limit } relève du hasard) : { $agree ->
        [yes] les moitiés concordent.
       *[no] les moitiés se contredisent.
    }
fit-survey-photo-out = Écartée : { $file } : elle ne partage aucun marqueur avec les autres
fit-survey-left-out = Non mesuré : { $what } : { $why }
fit-survey-left-out-title = Non mesurés
fit-survey-left-out-line = { $what } : { $why }
fit-survey-no-part = n’a pas participé
fit-survey-scale-title = Échelle
fit-survey-lengths = Longueurs mesurées face à tout le reste ; au-dessus de 1, E_n dit qu’elles se contredisent (ISO/IEC 17043, k = 2) :
fit-survey-frame = Les photos fixent les marqueurs les uns par rapport aux autres. La place du repère du porte-marqueurs (référence du moyeu, point visé) vient du fichier du jeu : la forme trouvée y est posée par le meilleur ajustement rigide, et l’effet des erreurs du fichier ({ $off } mm, 1 sigma, trouvées ici) sur cet ajustement fait partie de « u dans le porte-marqueurs ».
fit-survey-caption = Vu de là où regardent les marqueurs, bords supérieurs des codes en gras. Rouge : du centre du fichier au centre trouvé, { $factor } fois sa longueur réelle ; disque : le double de son incertitude-type. Nombres : marqueur et de combien il a été trouvé devant (+) sa place, mm.
fit-survey-drawing = { $carrier } : places trouvées de ses marqueurs par rapport au fichier du jeu
fit-survey-markers-on = marqueur { $markers } sur { $carrier }
fit-survey-marker = marqueur { $marker }
fit-survey-holder = { $name }
fit-survey-unseen =
    { $seen ->
        [none] aucune photo ne le montre
       *[one] une photo le montre, il en faut au moins deux
    }
fit-survey-ambiguous = deux poses conviennent également : prendre des photos de côté qui le montrent avec d’autres
fit-survey-one-marker = son unique marqueur est le porte-marqueurs : il n’y a rien à mesurer que sa taille
fit-survey-apart = moins de deux de ses marqueurs ont été mesurés ensemble : il reste tel que le fichier du jeu l’a
fit-survey-too-few = seules { $count } photos ont pu servir : en prendre { $enough } de tous les côtés
fit-survey-few = { $count } photos ne peuvent guère se contredire : en prendre { $enough }
fit-survey-length =
    { $against ->
        [sizes] la longueur { $length } contredit les tailles de marqueur du fichier : { $expected } mm attendus (E_n { $score }) ; la remesurer, ou les impressions ont une autre taille qu’indiqué
       *[others] la longueur { $length } contredit les autres longueurs : { $expected } mm attendus (E_n { $score }) ; la remesurer
    }
fit-survey-no-length = aucune longueur n’a été mesurée, l’échelle est donc celle des tailles de marqueur indiquées : en mesurer une aussi longue que possible (--length)
fit-survey-halves-differ =
    { $outcome ->
        [moved] deux moitiés des photos diffèrent de { $ratio } fois ce qui est indiqué (jusqu’à { $most } mm, marqueur { $marker }) : quelque chose a bougé entre les photos ; remesurer, ou les porte-marqueurs séparément (--apart)
       *[enlarged] deux moitiés des photos diffèrent de { $ratio } fois ce qui est indiqué (jusqu’à { $most } mm, marqueur { $marker }) : les incertitudes indiquées ont été élargies de ce facteur
    }
fit-survey-no-halves = deux moitiés des photos ne peuvent être comparées : elles sont trop peu, ou la moitié ne fixe pas les marqueurs
fit-survey-noise = les coins sont { $factor } fois plus dispersés que ne l’indique le détecteur : marqueurs plans ? rien n’a bougé ? Les incertitudes indiquées en tiennent compte
fit-survey-far-off = les marqueurs sont à { $off } mm (1 sigma) de là où le fichier du jeu les a, si bien que rien ne dit où sont la référence du moyeu ou le point visé : est-ce le fichier de ce jeu, des feuilles sont-elles interverties ? Y corriger les centres et remesurer
fit-survey-loose = les marqueurs de { $carrier } sont connus à { $known } mm par rapport à son propre repère (référence du moyeu, point visé) : le fichier du jeu ne dit pas mieux où ils sont ; les mesurer sur le porte-marqueurs et saisir leurs centres
fit-survey-weak =
    { $count ->
        [one] la place du marqueur { $markers } n’est pas connue à mieux que { $most } mm : en prendre plus de photos, de plus près et des deux côtés
       *[other] les places des marqueurs { $markers } ne sont pas connues à mieux que { $most } mm : en prendre plus de photos, de plus près et des deux côtés
    }

# A fixed reference checked again.
fit-recheck = { $day } : { $count } marqueurs ; le plus déplacé : { $marker }, { $most } mm ; plus grand déplacement { $sigmas } fois son incertitude-type ; écartement { $spacing } %
fit-recheck-moved = Quelque chose a bougé depuis la première mesure : le mur, une feuille, ou le fichier de l’appareil n’est plus juste.
fit-recheck-outside = { $name } : { $value } est hors de ses limites de contrôle, { $low } à { $high } ; chercher la cause avant le prochain dossier.
fit-recheck-fine = En ordre.
fit-recheck-series =
    { $series ->
        [move] Plus grand déplacement, mm
       *[spacing] Écartement, %
    }
fit-recheck-title = Contrôles de { $reference }
fit-recheck-chart = Carte de contrôle : { $name }
fit-recheck-line =
    { $line ->
        [mean] moyenne
        [upper] limite haute
       *[lower] limite basse
    }
fit-recheck-all = Tous les contrôles
fit-recheck-note = Les déplacements sont par rapport à la première mesure. Un déplacement de plus de { $sigmas } fois son incertitude-type n’est pas un hasard. Écartement : distances entre marqueurs rapportées à leurs tailles imprimées ; il baisse là où le papier a gonflé.
fit-recheck-column-day = Jour
fit-recheck-column-most = Le plus déplacé : marqueur
fit-recheck-column-by = de mm
fit-recheck-column-sigmas = Plus grand déplacement sur son incertitude
fit-recheck-caption = Carte des valeurs individuelles : moyenne et limites ({ $factor } étendues mobiles moyennes) des contrôles avant le dernier{ $provisional ->
        [yes]  ; provisoire jusqu’à ce qu’il y en ait { $enough }. Un losange rouge est hors limites.
       *[no] . Un losange rouge est hors limites.
    }
fit-recheck-no-limits = Les limites apparaissent au troisième contrôle.

# Why no camera could be fitted, no kit surveyed.
fit-further = { $first } ; { $rest }
fit-of = { $what } : { $why }
fit-no-too-few = impossible d’ajuster un appareil : { $left } photos sur { $photos } utilisables, il en faut au moins 3
fit-no-start = aucun objectif n’explique les { $photos } photos : est-ce la mire du fichier, plane, et les photos sont-elles non retouchées ?
fit-no-kit = impossible d’ajuster un appareil aux photos du jeu de marqueurs : { $why }
fit-no-settled = l’ajustement de { $photos } photos n’a pas convergé : elles ne déterminent pas l’objectif ; prendre 12 à 20 photos avec la mire dans toutes les parties du cadre, inclinée de 30° à 45° de tous les côtés
fit-no-photo = aucune photo donnée
fit-no-same-size = { $file } ne fait pas { $width } x { $height } px comme { $first } : ajuster chaque taille à part
fit-no-survey = impossible de mesurer le jeu de marqueurs : { $why }
fit-no-camera = impossible de mesurer { $file } : { $why }
fit-no-camera-size = la photo fait { $width } x { $height } px, mais l’appareil { $camera } est pour { $for_width } x { $for_height } px : utiliser la photo telle que l’appareil l’a enregistrée
fit-no-camera-fits =
    { $known ->
        [yes] aucun fichier d’appareil ne convient ({ $width } x { $height } px, { $make } { $model }) : ajuster l’appareil avec une mire, ou l’indiquer avec --camera
       *[no] aucun fichier d’appareil ne convient ({ $width } x { $height } px, marque ou modèle non enregistrés) : ajuster l’appareil avec une mire, ou l’indiquer avec --camera
    }
fit-no-camera-two = deux fichiers d’appareil conviennent, { $first } et { $second } : en indiquer un avec --camera
fit-no-pair = aucun porte-marqueurs n’a deux marqueurs que les { $photos } photos placent ensemble sans doute : prendre six photos ou plus de tous les côtés, chacune avec le plus de marqueurs possible
fit-no-length = la longueur { $length } est inutilisable : { $why }
fit-no-length-unseen = les photos ne montrent pas ses deux marqueurs avec d’autres (les numéros sont-ils justes ?)
fit-no-length-unmeasured = un de ses marqueurs n’a pas été mesuré
fit-no-length-contradicts = les longueurs contredisent les photos
fit-no-length-text =
    { $problem ->
        [same] « { $text } » a le même coin aux deux extrémités : l’écrire ID:CORNER,ID:CORNER=MM~U, par exemple 10:0,13:1=1200.4~0.3 : coins 0 en haut à gauche, 1 en haut à droite, 2 en bas à droite, 3 en bas à gauche du marqueur à l’endroit (ou tl, tr, br, bl), U l’incertitude-type en mm
       *[form] « { $text } » n’est pas une longueur : l’écrire ID:CORNER,ID:CORNER=MM~U, par exemple 10:0,13:1=1200.4~0.3 : coins 0 en haut à gauche, 1 en haut à droite, 2 en bas à droite, 3 en bas à gauche du marqueur à l’endroit (ou tl, tr, br, bl), U l’incertitude-type en mm
    }
fit-no-first-survey = la référence n’a jamais été mesurée : la mesurer une fois, et vérifier par rapport au jeu de marqueurs ainsi écrit
fit-no-place = les photos ne déterminent pas { $holder } : le prendre de deux côtés
fit-no-holder = aucun porte-marqueurs { $holder } n’y a été mesuré
fit-no-seatings = { $count } poses ne disent rien de la répétabilité : fixer la plaque au moins trois fois, dix est bien
