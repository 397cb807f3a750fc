# Pourquoi un contrôle n'a pas de valeur.
advice-not-seen = Aucune photo exploitable ne montre { $body }.
advice-nothing-measured = Trop peu de photos sont exploitables pour mesurer quoi que ce soit.
advice-no-floor = Ni feuilles de sol ni les deux plaques de roue arrière ne sont visibles : il n’y a pas de sol.
advice-no-floor-height = Aucune feuille de sol n’est visible et vehicle.floor_below_hub_mm manque.
advice-no-centreline = Il n’y a pas d’axe médian : montrer des plaques sur les deux roues avant, ou une marque avant avec on_centreline.
advice-no-wheelbase = Aucune plaque avant n’est visible et vehicle.wheelbase_mm manque.
advice-no-nose = Aucune marque avant n’est visible et vehicle.nose_from_rear_axle_mm manque.
advice-no-datum = Le point de référence est sur un porte-marqueurs que le jeu n’a pas.
advice-plates-are-the-floor = Ici, les plaques définissent le sol ; il faut des feuilles de sol.
advice-leans = De travers par rapport au véhicule, de plus d’un degré : { $body }. Un point mesuré à partir d’elle dans les directions du véhicule n’est pas là où il paraît. Fixer la marque d’aplomb et d’équerre avec le véhicule, ou mesurer à partir d’une marque plus proche du point.
advice-reading-only = Les photos ne le montrent pas ; il faut un relevé, qui nomme la cible et l’étape s’il y en a plusieurs.
advice-degenerate = La géométrie est dégénérée.

# Pourquoi un contrôle n'est pas décidé.
advice-too-small = Ces photos et ce jeu de marqueurs ne peuvent pas prouver une tolérance aussi petite. Ce n’est pas un échec. L’incertitude est de { $uncertainty } ; aucune valeur ne pourrait être prouvée tant qu’elle dépasse { $needed }. Il faut : { $more }.
advice-too-unsure = La règle de la fiche de montage juge la seule valeur mesurée, ce qui suppose une incertitude au plus égale à la tolérance (JCGM 106:2012, 8.2). Ce n’est pas un échec. L’incertitude est de { $uncertainty }, la tolérance de { $tolerance }. Il faut : { $more }.
advice-too-unsure-likely = La règle de la fiche de montage juge avec moins de 95 % de probabilité, ce qui ne se fait que si l’incertitude est au plus égale à la tolérance. Ce n’est pas un échec. L’incertitude est de { $uncertainty }, la tolérance de { $tolerance }. Il faut : { $more }.
advice-too-near = La valeur est trop proche de la limite pour son incertitude de { $uncertainty }. Une photo de plus, ou un montage plus proche de la valeur nominale, tranche.
advice-more-wider = d’autres photos, prises de directions plus écartées
advice-more-or-plates = d’autres photos, prises de directions plus écartées, ou des plaques sur les quatre roues
advice-more-with-plates = d’autres photos, prises de directions plus écartées, où les plaques des quatre roues sont visibles
advice-untrusted = Non fiable tant que « { $finding } » subsiste.
advice-untrusted-outside = Non fiable tant que « { $finding } » subsiste : ce qui est mesuré hors tolérance ne l’est pas forcément.
advice-outside-anyway = Hors tolérance quelle qu’en soit la cause, tant que « { $finding } » subsiste.
advice-light-changed = Le téléphone a modifié la lumière des photos ; sans modification (HDR désactivé, ou image brute développée sans retouche), elles donneraient { $uncertainty } au lieu de { $now } actuellement.
advice-one-more-photo = Avec cette valeur, une photo de plus trancherait : { $where }.

advice-next-photo =
    { $side ->
        [middle] à { $ahead } m devant l’avant du véhicule, au milieu, appareil à { $up } m du sol, support et plaques de roue visibles
        [left] à { $ahead } m devant l’avant du véhicule, { $aside } m à sa gauche (dans le sens de la marche), appareil à { $up } m du sol, support et plaques de roue visibles
       *[right] à { $ahead } m devant l’avant du véhicule, { $aside } m à sa droite (dans le sens de la marche), appareil à { $up } m du sol, support et plaques de roue visibles
    }
advice-next-photo-in-step =
    { $side ->
        [middle] à { $ahead } m devant l’avant du véhicule, au milieu, appareil à { $up } m du sol, support et plaques de roue visibles, le support comme à l’étape { $step }
        [left] à { $ahead } m devant l’avant du véhicule, { $aside } m à sa gauche (dans le sens de la marche), appareil à { $up } m du sol, support et plaques de roue visibles, le support comme à l’étape { $step }
       *[right] à { $ahead } m devant l’avant du véhicule, { $aside } m à sa droite (dans le sens de la marche), appareil à { $up } m du sol, support et plaques de roue visibles, le support comme à l’étape { $step }
    }

# Pourquoi rien n'a pu être mesuré.
advice-no-photo = Le dossier n’a aucune photo.
advice-no-usable-photo = Aucune photo ne peut être mesurée ; pour la première : { $why }.
advice-one-photo = Une seule photo peut être mesurée, et rien ne pourrait la contredire. En prendre au moins une autre de l’autre côté.
advice-one-photo-because = Une seule photo peut être mesurée, et rien ne pourrait la contredire.
advice-photo-cannot = { $photo } ne peut pas être mesurée : { $why }.
advice-not-linked = Les photos n’ont aucun porte-marqueurs en commun. Les prendre de sorte que chacune montre le support et les plaques de roue.
advice-nothing-seen =
    { $photos ->
        [one] La photo ne montre aucun marqueur du jeu.
       *[other] Aucune des { $photos } photos ne montre un marqueur du jeu.
    }
advice-not-settled = L’ajustement des photos n’a pas abouti. Les reprendre depuis d’autres endroits.
advice-not-settled-with = L’ajustement des photos n’a pas abouti ; sans le marqueur { $marker } ({ $name }), il aboutit. Une autre impression de ce marqueur est visible, ou il a été déplacé entre les photos. Retirer les impressions en trop et reprendre les photos.

# Ce que dit un plan d'un contrôle que ses photos ne pourraient pas trancher.
advice-plan-undetermined = { $quantity } : rien dans les photos ne détermine cette valeur. Montrer les plaques, les feuilles de sol ou la marque avant à partir desquelles on mesure, ou saisir les cotes du véhicule dans le dossier.
advice-plan-corners = { $quantity } : { $percent } % de la variance viennent du bruit des coins. De plus grands marqueurs, ou des photos de plus près et de directions plus écartées, le réduisent.
advice-plan-layout = { $quantity } : { $percent } % de la variance viennent de la position des marqueurs sur leurs porte-marqueurs. Mesurer le jeu (`baywitness survey`) ou coller plus précisément.
advice-plan-scale = { $quantity } : { $percent } % de la variance viennent des tailles imprimées. Mesurer les marqueurs et saisir leurs tailles.
advice-plan-calibration = { $quantity } : { $percent } % de la variance viennent de l’étalonnage de l’appareil. Ajuster de nouveau l’appareil avec davantage de photos de la mire.
advice-plan-focal = { $quantity } : { $percent } % de la variance viennent de la distance focale et du point principal de chaque photo. Davantage de photos, ou des photos avec des marqueurs proches et lointains à la fois, les fixent.
advice-plan-turn = { $quantity } : { $percent } % de la variance viennent du mouvement de la main pendant la lecture ligne par ligne d’une photo. Tenir le téléphone immobile ou le poser sur un trépied.
advice-plan-edge = { $quantity } : { $percent } % de la variance viennent du décalage des bords des photos. De plus grands marqueurs le réduisent.
advice-plan-seating-thrust = { $quantity } : { $percent } % de la variance viennent de l’assise des plaques sur les roues. Reprendre les photos après un demi-tour de roue, utiliser de meilleures pinces, ou rapporter la fiche à l’axe médian, pour lequel les quatre roues portent une plaque.
advice-plan-seating = { $quantity } : { $percent } % de la variance viennent de l’assise des plaques et des marques. Utiliser de meilleures pinces ; indiquer une assise mesurée dans le jeu.
advice-plan-wheelbase = { $quantity } : { $percent } % de la variance viennent de l’empattement saisi. Poser des plaques sur les roues avant.
advice-plan-nose = { $quantity } : { $percent } % de la variance viennent de la position de l’avant saisie. Poser une marque à l’avant.
advice-plan-hub-height = { $quantity } : { $percent } % de la variance viennent de la hauteur de moyeu saisie. Poser des feuilles de sol.
advice-plan-datum = { $quantity } : { $percent } % de la variance viennent du décalage du point de référence. Mieux le mesurer ou en choisir un autre.
advice-plan-reading = { $quantity } : { $percent } % de la variance viennent d’un relevé. Le faire avec un instrument plus fin.
advice-plan-target =
    { $side ->
        [middle] { $ahead } mm devant l’avant du véhicule, au milieu, à { $up } mm de hauteur
        [left] { $ahead } mm devant l’avant du véhicule, { $aside } mm à gauche, à { $up } mm de hauteur
       *[right] { $ahead } mm devant l’avant du véhicule, { $aside } mm à droite, à { $up } mm de hauteur
    }

advice-bay-wrong-camera = { $photo } : { $width } x { $height } px n’est pas la taille de l’appareil { $camera }. Indiquer l’appareil qui l’a prise.
advice-bay-too-few-sheets =
    { $sheets ->
        [0] Les photos ne relient aucune feuille de sol ; il en faut au moins trois qui ne soient pas alignées. Poser plus de feuilles et faire que des photos voisines en partagent.
        [one] Les photos ne relient qu’une feuille de sol ; il en faut au moins trois qui ne soient pas alignées. Poser plus de feuilles et faire que des photos voisines en partagent.
       *[other] Les photos relient { $sheets } feuilles de sol ; il en faut au moins trois qui ne soient pas alignées. Poser plus de feuilles et faire que des photos voisines en partagent.
    }
