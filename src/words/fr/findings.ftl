# Ce qui expliquerait presque aussi bien les photos.
findings-rivals = Presque aussi probable : { $rivals }.
findings-if-moved = { $body } a bougé entre les photos
findings-if-size = les marqueurs d’un porte-marqueurs ont une autre taille ({ $body })
findings-if-size-kind =
    les marqueurs de toutes les { $kind ->
        [floor] feuilles de sol
       *[plates] plaques de roue
    } ont une autre taille
findings-if-half-turned = l’image a été tournée de 180 degrés
findings-if-sizes = tous les marqueurs ont une autre taille que celle du fichier du jeu
findings-if-zoomed = { $photo } a été prise avec zoom
findings-if-focal = l’appareil a une autre distance focale
findings-if-displaced = le marqueur { $marker } ({ $body }) se trouve ailleurs que dans le fichier du jeu
findings-if-marker = le marqueur { $marker } ({ $body }) a été mal repéré dans { $photo }
findings-if-lens-one = { $photo } a été prise avec un autre objectif
findings-if-lens = les photos ont été prises avec un autre objectif
findings-if-off-floor =
    { $count ->
        [one] la feuille de sol { $sheets } est hors du plan du sol
       *[other] les feuilles de sol { $sheets } sont hors du plan du sol
    }

# Ce que serait une valeur avec une explication d'un constat ; placé devant une valeur.
findings-with-place =
    { $count ->
        [one] avec { $body } là où seule { $photos } le montre
       *[other] avec { $body } là où seules { $photos } le montrent
    }
findings-with-sizes = avec une autre taille de tous les marqueurs
findings-with-size = avec une autre taille des marqueurs d’un porte-marqueurs ({ $body })
findings-with-focal = avec une autre distance focale pour { $photos }
findings-with-lens = avec un autre objectif pour { $photos }
findings-with-rear-floor = avec le sol sous les roues arrière au lieu du plan des feuilles
findings-with-floor =
    { $count ->
        [one] avec un sol sans la feuille { $sheets }
       *[other] avec un sol sans les feuilles { $sheets }
    }
findings-with-not-flush = avec { $body } mal plaquée sur sa roue
findings-without-readings = sans les relevés
findings-with-typed-wrong = en tenant la saisie pour fausse

# De combien deux emplacements d'un corps sont distants.
findings-step-far = Les deux emplacements sont très éloignés.
findings-step = Les deux emplacements sont distants d’environ { $mm } mm et { $degrees }°.

findings-stand-moved = { $body } se trouve dans { $photos } ailleurs que dans les autres photos. { $step } Ne laisser personne toucher le support et reprendre toutes les photos.
findings-arch-moved = { $body } est placée dans { $photos } autrement au-dessus de sa roue que dans les autres photos. { $step } Elle a été heurtée, quelqu’un est monté ou descendu, ou la suspension n’était pas encore stabilisée. Ne laisser monter personne et reprendre toutes les photos.
findings-body-moved = { $body } se trouve dans { $photos } ailleurs que dans les autres photos. { $step } Elle a été heurtée, ou le véhicule a bougé. La fixer et reprendre toutes les photos.
findings-plate-moved = { $body } est placée dans { $photos } autrement que dans les autres photos. { $step } Elle a glissé sur sa roue, ou cette roue a bougé. La reposer et reprendre toutes les photos.
findings-vehicle-rolled =
    { $way ->
        [forward] Le véhicule se trouve dans { $photos } environ { $mm } mm plus en avant que dans les autres photos. Caler les roues, contrôler de nouveau le support et reprendre toutes les photos.
       *[rearward] Le véhicule se trouve dans { $photos } environ { $mm } mm plus en arrière que dans les autres photos. Caler les roues, contrôler de nouveau le support et reprendre toutes les photos.
    }
findings-vehicle-nudged = Le véhicule se trouve dans { $photos } à environ { $mm } mm de sa place d’avant le déplacement du support, tourné de { $degrees }° : il a été poussé. Caler les roues et reprendre deux photos de l’ensemble.
findings-sheet-slid = { $body } se trouve dans { $photo } ailleurs que dans les photos d’avant ou d’après un autre déplacement du support, à environ { $mm } mm et { $degrees }° : elle a été heurtée, ou le véhicule a bougé. La reposer, caler les roues et reprendre deux photos de l’ensemble.
findings-phases-differ = { $body } se trouvait après le calibrage ailleurs qu’avant, à environ { $mm } mm et { $degrees }°. Les valeurs sont celles d’avant ; personne ne sait où il se trouvait pendant le calibrage. Remonter et recalibrer.

findings-plates-swapped-sides =
    { $axle ->
        [front] Les plaques des roues avant sont interverties : la gauche est sur la roue droite. Poser chacune sur sa roue, à l’endroit, et reprendre les photos.
       *[rear] Les plaques des roues arrière sont interverties : la gauche est sur la roue droite. Poser chacune sur sa roue, à l’endroit, et reprendre les photos.
    }
findings-plates-swapped-ends =
    { $side ->
        [left] Les plaques gauches avant et arrière sont interverties : celle de l’avant est sur la roue arrière. Poser chacune sur sa roue et reprendre les photos.
       *[right] Les plaques droites avant et arrière sont interverties : celle de l’avant est sur la roue arrière. Poser chacune sur sa roue et reprendre les photos.
    }
findings-upside-down = { $body } est à l’envers. Remettre à l’endroit et reprendre les photos.
findings-marker-turned = Le marqueur { $marker } est tourné sur son porte-marqueurs ({ $body }). Le monter comme sur le dessin du jeu, à l’endroit, et reprendre les photos.
findings-markers-exchanged = Les marqueurs { $one } ({ $body }) et { $other } ({ $other_body }) sont intervertis. Les monter comme sur le dessin du jeu et reprendre les photos.
findings-plate-not-flush =
    { $axle ->
        [front] Les directions des plaques des roues avant diffèrent de { $degrees }°, plus que ne peut le faire le parallélisme : { $body } est sans doute mal plaquée sur sa roue. La reposer et reprendre les photos.
       *[rear] Les directions des plaques des roues arrière diffèrent de { $degrees }°, plus que ne peut le faire le parallélisme : { $body } est sans doute mal plaquée sur sa roue. La reposer et reprendre les photos.
    }
findings-plate-off-hub-track = Les plaques des roues arrière sont à { $rear } mm l’une de l’autre, celles de l’avant à { $front } mm, et les essieux d’aucun véhicule ne diffèrent autant : une plaque n’est pas sur le moyeu de sa roue, ou est sur un autre véhicule. Poser chaque plaque sur son propre moyeu et reprendre les photos.
findings-plate-off-hub-thrust = D’après les plaques, les roues arrière pointent de { $degrees }° de côté, plus que celles d’aucun véhicule : une plaque n’est pas sur le moyeu de sa roue, ou est sur un autre véhicule. Poser chaque plaque sur son propre moyeu et reprendre les photos.
findings-size-disagrees =
    { $size ->
        [wheelbase] Les photos montrent un empattement de { $measured } mm, { $typed } mm ont été saisis : une plaque de roue est à côté de son moyeu, ou les dimensions saisies sont celles d’un autre véhicule ou mal tapées. Poser les plaques sur leurs moyeux et reprendre les photos, ou corriger la saisie.
        [nose] Les photos montrent la marque avant à { $measured } mm devant l’essieu arrière, { $typed } mm ont été saisis : la marque est au mauvais endroit, une plaque de roue arrière est à côté de son moyeu, ou les dimensions saisies sont celles d’un autre véhicule ou mal tapées. Placer la marque au point le plus avancé du véhicule, poser les plaques sur leurs moyeux et reprendre les photos, ou corriger la saisie.
        [front_track] Les photos montrent une voie avant de { $measured } mm de moyeu à moyeu, { $typed } mm ont été saisis : une plaque de roue avant est à côté de son moyeu, ou les dimensions saisies sont celles d’un autre véhicule ou mal tapées. Poser les plaques sur leurs moyeux et reprendre les photos, ou corriger la saisie.
       *[rear_track] Les photos montrent une voie arrière de { $measured } mm de moyeu à moyeu, { $typed } mm ont été saisis : une plaque de roue arrière est à côté de son moyeu, ou les dimensions saisies sont celles d’un autre véhicule ou mal tapées. Poser les plaques sur leurs moyeux et reprendre les photos, ou corriger la saisie.
    }
findings-size-mistyped =
    { $size ->
        [wheelbase] Les photos montrent un empattement de { $measured } mm, { $typed } mm ont été saisis : un tel écart est très probablement une faute de frappe, ou la dimension d’un autre véhicule. Corriger la saisie, en mm, et vérifier à nouveau ; si elle est juste, contrôler où sont les plaques et la marque avant.
        [nose] Les photos montrent la marque avant à { $measured } mm devant l’essieu arrière, { $typed } mm ont été saisis : un tel écart est très probablement une faute de frappe, ou la dimension d’un autre véhicule. Corriger la saisie, en mm, et vérifier à nouveau ; si elle est juste, contrôler où sont les plaques et la marque avant.
        [front_track] Les photos montrent une voie avant de { $measured } mm de moyeu à moyeu, { $typed } mm ont été saisis : un tel écart est très probablement une faute de frappe, ou la dimension d’un autre véhicule. Corriger la saisie, en mm, et vérifier à nouveau ; si elle est juste, contrôler où sont les plaques et la marque avant.
       *[rear_track] Les photos montrent une voie arrière de { $measured } mm de moyeu à moyeu, { $typed } mm ont été saisis : un tel écart est très probablement une faute de frappe, ou la dimension d’un autre véhicule. Corriger la saisie, en mm, et vérifier à nouveau ; si elle est juste, contrôler où sont les plaques et la marque avant.
    }

findings-not-flat = { $body } montre ses impressions à quelque { $size } mm de là où des impressions planes se verraient : le papier gondole ou ondule, ou l’impression est irrégulière. Leur position est donc moins bien connue. Les coller à plat sur un support rigide, ou réimprimer.
findings-prints-not-flat = Les impressions de { $count } porte-marqueurs apparaissent à quelque { $size } mm de là où des impressions planes apparaîtraient : le papier gondole ou ondule, l’impression est irrégulière, ou le téléphone a lissé les photos (mode nuit). Leur position est donc moins bien connue. Les coller à plat sur un support rigide, ou réimprimer ; photographier sans mode nuit.
findings-marker-displaced = Les marqueurs { $markers } ({ $body }) et les autres du même porte-marqueurs ne sont pas placés les uns par rapport aux autres comme dans le fichier du jeu (écart de quelque { $mm } mm) : quelque chose est tordu, a été réparé ou monté ailleurs, ou le fichier est celui d’un autre. Les photos ne disent pas lesquels sont à leur place. Remettre en ordre ou relever le porte-marqueurs, puis vérifier de nouveau.
findings-holder-deformed = Les marqueurs d’un porte-marqueurs ({ $body }) ne sont pas placés les uns par rapport aux autres comme dans le fichier du jeu : il est tordu, ses impressions ont été collées avec moins de soin que ne le dit le fichier, ou le fichier est celui d’un autre. Relever le porte-marqueurs, ou indiquer dans le fichier à quel point les places sont connues, puis vérifier de nouveau.
findings-print-scale =
    { $size ->
        [smaller] Les marqueurs d’un porte-marqueurs ({ $body }) paraissent { $percent } % plus petits que dans le fichier du jeu. Mesurer à la règle le carré noir de l’un d’eux et saisir la valeur, ou réimprimer à 100 %.
       *[larger] Les marqueurs d’un porte-marqueurs ({ $body }) paraissent { $percent } % plus grands que dans le fichier du jeu. Mesurer à la règle le carré noir de l’un d’eux et saisir la valeur, ou réimprimer à 100 %.
    }
findings-print-scale-kind =
    Les marqueurs de toutes les { $kind ->
        [floor] feuilles de sol
       *[plates] plaques de roue
    } paraissent { $percent } % plus { $size ->
        [smaller] petits
       *[larger] grands
    } que dans le fichier du jeu. Mesurer à la règle le carré noir de l’un d’eux et saisir la valeur, ou les réimprimer à 100 %.
findings-print-scales =
    { $size ->
        [smaller] Tous les marqueurs paraissent, rapportés à leurs espacements, { $percent } % plus petits que dans le fichier du jeu. Mesurer à la règle le carré noir de l’un d’eux et saisir la valeur, ou réimprimer à 100 %.
       *[larger] Tous les marqueurs paraissent, rapportés à leurs espacements, { $percent } % plus grands que dans le fichier du jeu. Mesurer à la règle le carré noir de l’un d’eux et saisir la valeur, ou réimprimer à 100 %.
    }

findings-of-photo = Photo { $photo } : { $why }.
findings-mirrored = { $photo } est en miroir : gauche et droite sont inversées, aucun code n’est lisible. La prendre avec l’appareil principal, pas l’appareil frontal, et la remettre telle qu’enregistrée.
findings-focal-of-all =
    { $length ->
        [longer] Toutes les photos correspondent à une distance focale d’environ { $percent } % plus longue que celle de l’appareil { $camera } : un autre appareil ou objectif a été utilisé, ou toutes ont le même zoom. Utiliser le fichier de l’appareil qui les a prises, ou les reprendre.
       *[shorter] Toutes les photos correspondent à une distance focale d’environ { $percent } % plus courte que celle de l’appareil { $camera } : un autre appareil ou objectif a été utilisé, ou toutes ont le même zoom. Utiliser le fichier de l’appareil qui les a prises, ou les reprendre.
    }
findings-half-turned = À l’envers par rapport à l’objectif de l’appareil : { $photos }. Enregistrée tournée de 180 degrés, une image a le centre et les défauts de l’objectif du mauvais côté. Remettre les photos telles que l’appareil les a enregistrées.
findings-lens-of-all = Les photos ne correspondent pas à l’objectif de l’appareil { $camera } : les coins s’en écartent de { $times } fois leur bruit, ce qu’un autre objectif expliquerait. Utiliser le fichier de l’appareil qui les a prises, ou le recaler.
findings-lens-of-one = { $photo } ne correspond pas à l’objectif de l’appareil { $camera }, auquel correspondent les autres photos : un autre téléphone du même modèle l’a prise, ou un autre objectif de celui-ci. Prendre toutes les photos avec le téléphone de ce fichier d’appareil, ou retirer cette photo du dossier.
findings-zoomed-by-record = { $photo } a été prise avec un zoom numérique de { $times } x (selon son EXIF). La reprendre sans zoom.
findings-zoomed =
    { $length ->
        [longer] { $photo } correspond à une distance focale { $percent } % plus longue que ne le permet son fichier d’appareil : zoom, recadrage ou autre objectif. La reprendre sans zoom.
       *[shorter] { $photo } correspond à une distance focale { $percent } % plus courte que ne le permet son fichier d’appareil : zoom, recadrage ou autre objectif. La reprendre sans zoom.
    }
findings-resized = { $photo } fait { $width } x { $height } px, mais ses propres données indiquent { $stated_width } x { $stated_height } : elle a été réenregistrée à une autre taille. Utiliser la photo telle que l’appareil l’a enregistrée.
findings-reused =
    { $how ->
        [bytes] { $photo } est la même image que { $earlier } (octet pour octet) : elle ne prouve rien de plus. Prendre une photo depuis un autre endroit.
        [mirrored] { $photo } est la même image que { $earlier } (en miroir) : elle ne prouve rien de plus. Prendre une photo depuis un autre endroit.
       *[again] { $photo } est la même image que { $earlier } (réenregistrée, redimensionnée ou recadrée) : elle ne prouve rien de plus. Prendre une photo depuis un autre endroit.
    }
findings-blurred = { $photo } est floue (environ { $px } px). Tenir fermement, appuyer les coudes ou éclairer davantage, et la reprendre.
findings-blurred-no-marker = { $photo } est si floue qu’aucun marqueur n’y a été trouvé. Tenir fermement, appuyer les coudes ou éclairer davantage, et la reprendre.
findings-glare =
    { $count ->
        [one] Reflet d’une lampe sur le marqueur { $markers } dans { $photo }. Faire un pas de côté et la reprendre.
       *[other] Reflet d’une lampe sur les marqueurs { $markers } dans { $photo }. Faire un pas de côté et la reprendre.
    }
findings-burnt-out = { $photo } est trop claire : le blanc est brûlé autour des marqueurs. Couper le flash ou toucher le support à l’écran pour que le téléphone l’expose correctement, et la reprendre.
findings-dark = { $photo } est trop sombre : le noir et le blanc des marqueurs se distinguent à peine. Éclairer davantage et la reprendre.
findings-dark-no-marker = { $photo } est si sombre qu’aucun marqueur n’y a été trouvé. Éclairer davantage et la reprendre.
findings-light-changed = Dans { $photo }, le téléphone a modifié la lumière d’un endroit à l’autre : les coins sont connus à { $stated } px ; dans une photo développée sans retouche, ce serait { $plain } px. Désactiver HDR, mode nuit et optimisation de scène, ou développer une image brute sans retouche, et la reprendre.
findings-too-alike = { $first } et { $second } ont été prises presque de la même direction ({ $degrees }° d’écart). Reprendre l’une d’elles de l’autre côté du support.
findings-focal-contradicts = Les données de { $photo } indiquent une distance focale de { $stated } mm (équivalent 35 mm), mais l’image a de { $least } à { $most } mm : elle a été recadrée, ou les données sont celles d’une autre photo. Remettre le fichier d’origine.

findings-edited = { $photo } a été écrite par un programme après la prise de vue : { $traces }. Cela ne prouve aucune modification de l’image, mais le fichier d’origine lèverait tout doute.
findings-edited-other = { $photo } a été écrite par un programme après la prise de vue : { $traces } ; elle est compressée autrement que les autres photos de cet appareil dans le dossier. Cela ne prouve aucune modification de l’image, mais le fichier d’origine lèverait tout doute.
findings-trace-program = ses données nomment un programme de retouche ({ $program })
findings-trace-later =
    { $seconds ->
        [one] elle a été écrite { $seconds } seconde après la prise de vue
       *[other] elle a été écrite { $seconds } secondes après la prise de vue
    }
findings-trace-editor = elle contient le bloc de données d’un éditeur d’images
findings-trace-history = elle contient un historique de retouches (XMP)
findings-trace-credentials = ses attestations de contenu ne correspondent pas à ses octets ({ $failures })
findings-trace-listed = ses attestations de contenu énumèrent des retouches ({ $edits })
# Ce qu'une fiche demande aux signatures des appareils.
findings-credentials-lacking = La fiche de montage exige des attestations de contenu pour chaque photo ; elles manquent à ces photos : { $photos }. Prendre les photos avec un appareil qui signe ses prises de vue, remettre les fichiers d’origine et faire indiquer les ancres de confiance de son fabricant.
findings-credentials-of-photo = { $photo } ({ $why })
findings-credentials-none = aucune trouvée
findings-credentials-edited = son manifeste énumère des retouches : { $edits }
findings-credentials-not-built-in = La fiche de montage exige des attestations de contenu pour chaque photo, et ce programme a été construit sans elles. Vérifier avec un programme construit avec l’option credentials.
findings-thumbnail = La vignette de { $photo } montre une autre image que la photo (corrélation { $likeness }). L’image a peut-être été remplacée ou recadrée ; remettre le fichier d’origine.
findings-rendered =
    { $place ->
        [both] { $photo } est une image de synthèse de ce programme, comme le disent ses données et ses pixels ; aucun appareil ne l’a prise, et le dossier ne le dit pas. Elle ne prouve rien : remettre la photo que l’appareil a écrite.
        [record] { $photo } est une image de synthèse de ce programme, comme le disent ses données ; aucun appareil ne l’a prise, et le dossier ne le dit pas. Elle ne prouve rien : remettre la photo que l’appareil a écrite.
       *[picture] { $photo } est une image de synthèse de ce programme, comme le disent ses pixels ; aucun appareil ne l’a prise, et le dossier ne le dit pas. Elle ne prouve rien : remettre la photo que l’appareil a écrite.
    }
findings-noise-repeated = { $photo } et { $earlier } ont le même bruit dans les marqueurs { $markers } (corrélation { $correlation }), bien qu’elles ne soient pas la même image : aucun appareil ne répète son bruit. L’une a peut-être été faite à partir de l’autre ; reprendre la photo.
findings-without-noise = { $body } montre { $share } du bruit qu’ont les autres marqueurs dans { $photo } : ses marqueurs ont peut-être été insérés par un programme. Remettre le fichier d’origine ou reprendre la photo.
findings-compression-differs = { $body } montre { $share } de la compression antérieure que montrent les autres marqueurs dans { $photo } : ses marqueurs ont pu être insérés après. Donnez le fichier d’origine ou reprenez la photo.

findings-floor-sheet = { $body } n’est pas dans le plan des autres feuilles de sol (environ { $mm } mm et { $degrees }° d’écart) : le sol y est en pente ou cassé, ou la feuille gondole. Aplanir la feuille ; si c’est le sol, utiliser un poste de niveau.
findings-floor-bends = Le sol se casse devant le véhicule : les feuilles { $sheets } ne sont pas dans le plan de celles plus proches du véhicule (environ { $mm } mm et { $degrees }° d’écart). Utiliser un poste de niveau.
findings-floor-below-wheels =
    { $way ->
        [higher] Le plan des feuilles de sol est { $mm } mm plus haut que le sol sous les roues arrière (hauteur de moyeu saisie : { $typed } mm) : le sol est en pente ou cassé entre véhicule et support, ou la hauteur saisie est fausse. Contrôler le sol au niveau à bulle ; utiliser un poste de niveau.
       *[lower] Le plan des feuilles de sol est { $mm } mm plus bas que le sol sous les roues arrière (hauteur de moyeu saisie : { $typed } mm) : le sol est en pente ou cassé entre véhicule et support, ou la hauteur saisie est fausse. Contrôler le sol au niveau à bulle ; utiliser un poste de niveau.
    }
findings-wheels-uneven =
    { $lower ->
        [rear_left] Le moyeu arrière gauche est { $mm } mm plus bas au-dessus des feuilles de sol que le droit : un pneu à plat, une cale ou un plateau tournant sous une roue, une plaque à côté de son moyeu, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
        [rear_right] Le moyeu arrière droit est { $mm } mm plus bas au-dessus des feuilles de sol que le gauche : un pneu à plat, une cale ou un plateau tournant sous une roue, une plaque à côté de son moyeu, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
        [front_left] Le moyeu avant gauche est { $mm } mm plus bas au-dessus des feuilles de sol que le droit : un pneu à plat, une cale ou un plateau tournant sous une roue, une plaque à côté de son moyeu, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
        [front_right] Le moyeu avant droit est { $mm } mm plus bas au-dessus des feuilles de sol que le gauche : un pneu à plat, une cale ou un plateau tournant sous une roue, une plaque à côté de son moyeu, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
        [front] Les moyeux avant sont { $mm } mm plus bas au-dessus des feuilles de sol que ceux de l’arrière : des roues sur des cales ou des plateaux tournants, des pneus à plat, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
       *[rear] Les moyeux arrière sont { $mm } mm plus bas au-dessus des feuilles de sol que ceux de l’avant : des roues sur des cales ou des plateaux tournants, des pneus à plat, ou le sol sous les roues est un autre plan que celui des feuilles. Regarder les pneus et le sol, et reprendre les photos.
    }
findings-two-poses = { $body } admet deux positions qui correspondent aussi bien aux photos. Prendre une photo de plus d’une autre direction et de plus près.
findings-not-seen = { $body } n’est dans aucune photo exploitable. Prendre une photo de plus qui montre aussi deux autres porte-marqueurs.
findings-steering =
    { $way ->
        [left] Les roues avant pointent de { $degrees }° vers la gauche. Centrer la direction, contrôler de nouveau le support et reprendre les photos.
       *[right] Les roues avant pointent de { $degrees }° vers la droite. Centrer la direction, contrôler de nouveau le support et reprendre les photos.
    }
findings-outside-held = Hors tolérance : { $quantity } ; { $correction }.
findings-reading-disagrees-mm = { $quantity } : le relevé de { $read } mm et les { $photos } mm des photos s’excluent (E_n { $error }). Relever de nouveau ; vérifier à partir de quel point on a mesuré.
findings-reading-disagrees-degrees = { $quantity } : le relevé de { $read }° et les { $photos }° des photos s’excluent (E_n { $error }). Relever de nouveau ; vérifier à partir de quel point on a mesuré.
findings-readings-differ-mm = { $quantity } : les relevés de { $read } mm et de { $again } mm s’excluent (E_n { $error }). Relever de nouveau et ne laisser dans le dossier que ce qui a été bien relevé.
findings-readings-differ-degrees = { $quantity } : les relevés de { $read }° et de { $again }° s’excluent (E_n { $error }). Relever de nouveau et ne laisser dans le dossier que ce qui a été bien relevé.
findings-marker-duplicated =
    { $count ->
        [2] Le marqueur { $marker } apparaît deux fois dans { $photo } : il a été écarté de toutes les photos. Retirer les impressions en trop et reprendre les photos.
       *[other] Le marqueur { $marker } apparaît { $count } fois dans { $photo } : il a été écarté de toutes les photos. Retirer les impressions en trop et reprendre les photos.
    }
findings-cannot-prove = Ces photos et ce jeu de marqueurs ne peuvent pas prouver une tolérance aussi petite : { $quantities }. Il faut : { $more }. Ce n’est pas un échec.
findings-hangs-on-body =
    { $way ->
        [larger] { $quantity } : sans { $body }, la valeur serait plus grande de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
       *[smaller] { $quantity } : sans { $body }, la valeur serait plus petite de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
    }
findings-hangs-on-photo =
    { $way ->
        [larger] { $quantity } : sans { $photo }, la valeur serait plus grande de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
       *[smaller] { $quantity } : sans { $photo }, la valeur serait plus petite de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
    }
findings-hangs-on-lens =
    { $way ->
        [larger] { $quantity } : avec l’autre modèle d’objectif, la valeur serait plus grande de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
       *[smaller] { $quantity } : avec l’autre modèle d’objectif, la valeur serait plus petite de { $change }, plus que son incertitude de { $uncertainty }. Quelque chose n’y concorde pas avec le reste. Vérifier et ajouter une photo.
    }

findings-gap-minutes = { $n } min
findings-gap-hours = { $n } h
findings-gap-days = { $n } jours
findings-photos-apart = { $photo } a été prise { $gap } après { $first } : le montage peut avoir changé entre-temps.
findings-not-when-job-says =
    { $way ->
        [before] Le dossier dit que ses photos ont été prises { $gap } avant ce qu’indiquent les données de { $photo }.
       *[after] Le dossier dit que ses photos ont été prises { $gap } après ce qu’indiquent les données de { $photo }.
    }
findings-not-as-satellites-say = D’après l’heure des satellites dans son enregistrement, { $photo } a été prise à { $gap } d’écart de sa propre heure : celle-ci a été changée, ou l’horloge du téléphone est fausse.
findings-ran-before = Le calibrage a eu lieu { $gap } avant la première photo : les photos ne montrent pas où était alors le support.
findings-ran-before-move = Le calibrage a eu lieu { $gap } avant { $photo }, première photo de la position actuelle du support : celui-ci a été déplacé entre les photos, et aucune ne montre où il était pendant le calibrage.
findings-ran-late = Le calibrage a eu lieu { $gap } après { $photo }, dernière photo qui montre le montage : il a pu changer entre-temps.
findings-not-yet-run = { $photo } est inscrite comme prise après le calibrage, mais l’a été { $gap } avant : elle ne montre pas où était ensuite le support.
findings-phases-exchanged = { $after } est inscrite comme prise après le calibrage et { $before } comme prise avant, mais c’est l’inverse selon leurs propres données.
findings-moves-exchanged = { $after } est inscrite comme prise après un déplacement du support et { $before } comme prise avant, mais c’est l’inverse selon leurs propres données.
findings-other-day-than-job = { $photo } a été prise le { $day } selon ses propres données ; le dossier est du { $wanted }. Utiliser des photos de ce dossier, ou mettre l’horloge à l’heure.
findings-other-day-than-photo = { $photo } a été prise le { $day } selon ses propres données ; la première photo du dossier, le { $wanted }. Utiliser des photos de ce dossier, ou mettre l’horloge à l’heure.

findings-card-not-seen = Aucune photo ne montre en entier la carte de ce dossier (marqueurs { $ids } ; au plus { $most } sur { $all } dans une photo) : rien ne prouve que les photos ont été prises pour lui. Poser la carte bien en vue et prendre une photo de plus.
findings-card-of-another-job = { $photo } montre la carte d’un autre dossier (marqueurs { $others } ; ceux de ce dossier sont { $own }). Retirer cette photo, ou la reprendre avec la carte de ce dossier.
findings-other-kit = Les marqueurs { $ids } ne sont sur aucun porte-marqueurs du jeu { $kit }, mais figurent dans les photos (la plupart dans { $photo }). Un autre jeu ou une mire est visible, ou le dossier nomme le mauvais jeu.
findings-prerequisite-not-met = Non respecté : { $text }. Y remédier, puis reprendre les photos.
findings-prerequisite-answered-no = Non respecté : { $text }. La réponse est « { $answer } ». Y remédier, puis reprendre les photos.
findings-prerequisite-in-words = { $text } : la réponse est « { $answer } », ni un oui clair ni une valeur. Lire si c’est respecté, et répondre par oui ou non.
findings-photos-not-listed =
    Le répertoire du dossier contient des photos que celui-ci n’énumère pas : { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }et { $more } de plus
    }. Elles n’ont pas été mesurées. Les énumérer dans job.toml, ou les ranger dans aside si elles ne montrent rien de ce dossier.
findings-photos-of-no-check =
    Aucun contrôle ne porte sur la position du support ici : { $photos }{ $more ->
        [0] { "" }
       *[other] { " " }et { $more } de plus
    }. L’étape de ces photos n’a pas de contrôle dans la fiche de montage, ou elles n’en nomment aucune. Ce qu’elles y montrent ne contredit rien. Leur donner leur étape, ou la contrôler.
findings-not-answered = Sans réponse : { $texts }. Répondre dans « Préparer » ou dans la section [prerequisites] du fichier du dossier.
findings-not-checked = La fiche de montage ne contrôle pas et n’exempte pas : { $quantities }.

findings-far-off = { $quantity } : écart de { $off }. À { $rest } près, cette erreur l’explique : { $mistake }. Vérifier sur la fiche et au véhicule ; rien n’a été corrigé pour cela.
findings-far-off-or = { $quantity } : écart de { $off }. À { $rest } près, cette erreur l’explique : { $mistake }. Ou celle-ci : { $others }. Vérifier sur la fiche et au véhicule ; rien n’a été corrigé pour cela.
findings-reading-far-off = { $quantity } : le relevé de { $read } s’accorde avec les photos avec cette erreur : { $mistake }. Relever de nouveau ; rien n’a été corrigé pour cela.

# Erreurs auxquelles on compare une valeur très écartée.
findings-mistake-read-from = relevé à partir de : { $point }
findings-mistake-measured-from = mesuré à partir de : { $point }
findings-mistake-to-part = mesuré jusqu’à : { $point } du support
findings-mistake-sign = signe inversé
findings-mistake-from-nose-height = mesuré depuis la marque avant, non depuis le sol
findings-mistake-from-floor = mesuré depuis le sol, non depuis la marque avant
findings-mistake-on-nose = centré sur la marque avant, non sur la ligne de référence
findings-mistake-on-line = centré sur la ligne de référence, non sur la marque avant
findings-mistake-other-line = aligné sur { $other } au lieu de { $line }
findings-mistake-thrust-sign = l’angle de poussée a été pris avec le mauvais signe
findings-mistake-other-side = le décalage a été pris de l’autre côté
findings-mistake-offset-left-out = le décalage a été omis
findings-mistake-left-at-zero = laissé à zéro
findings-mistake-other-angle = l’angle a été pris depuis l’autre ligne (90° moins l’angle)
findings-mistake-other-step = placé comme à l’étape { $step }
findings-mistake-mm-as-inches = des mm ont été lus comme des pouces
findings-mistake-inches-as-mm = des pouces ont été lus comme des mm
findings-mistake-cm-as-mm = des cm ont été lus comme des mm
findings-mistake-digits = deux chiffres ont été intervertis ({ $swapped } au lieu de { $nominal })
findings-mistake-plane =
    { $where ->
        [behind] mesuré jusqu’à une partie du support { $mm } mm derrière sa face
       *[front] mesuré jusqu’à une partie du support { $mm } mm devant sa face
    }
findings-mistake-edge =
    { $edge ->
        [left] le bord gauche du support a été placé là au lieu de son centre
        [right] le bord droit du support a été placé là au lieu de son centre
        [upper] le bord supérieur du support a été placé là au lieu de son centre
       *[lower] le bord inférieur du support a été placé là au lieu de son centre
    }
findings-point-nose = l’avant du véhicule
findings-point-front-axle = l’essieu avant
findings-point-rear-axle = l’essieu arrière
findings-point-datum = le point de référence « { $datum } »

# Ce qui rendrait un défaut vérifiable ; placé derrière « Il faut : ».
findings-takes-second-photo = une deuxième photo qui montre aussi autre chose de sa première photo, pour voir s’il y a eu déplacement entre-temps
findings-takes-linking-photo = une photo de plus qui le montre avec une autre partie du jeu également visible dans { $photos } : elles n’ont rien d’autre en commun
findings-takes-two-with-stand = deux photos qui montrent les plaques de roue et le support, et une feuille de sol ou un autre corps qui ne bouge pas avec le véhicule
findings-takes-axle =
    { $axle ->
        [front] des photos qui montrent les deux plaques des roues avant
       *[rear] des photos qui montrent les deux plaques des roues arrière
    }
findings-takes-typed-sizes =
    { $what ->
        [nose] la distance de l’avant du véhicule à l’essieu arrière, saisie dans le dossier : aucune photo de plus ne montre que la marque est au mauvais endroit
       *[plates] l’empattement et les deux voies de moyeu à moyeu, saisis dans le dossier : aucune photo de plus ne montre qu’une plaque est à côté de son moyeu d’autant sur toutes
    }
findings-takes-other-direction = une deuxième photo d’une autre direction
findings-takes-nearer = des photos plus près du support, pour distinguer tailles et espacements
findings-takes-one-more = une photo de plus d’une autre direction
findings-takes-sheets = des feuilles de sol : sans elles, le sol est tiré des plaques
findings-takes-fourth-sheet = une quatrième feuille de sol : trois sont toujours dans un plan
findings-takes-second-view = une deuxième photo qui la montre
findings-takes-two-and-two = deux feuilles de sol près du support et deux près du véhicule
findings-takes-hub-height = la hauteur des moyeux arrière au-dessus du sol, saisie dans le dossier : un sol qui monte entre les roues et toutes les feuilles ne plie entre aucune d’elles
findings-takes-front-plates = des plaques sur les roues avant

# Pourquoi une photo ne compte pas ; placé derrière deux points.
findings-photo-size = elle fait { $width } x { $height } px, mais l’appareil { $camera } est prévu pour { $wanted_width } x { $wanted_height } px ; utiliser la photo telle que l’appareil l’a enregistrée, ou le fichier de l’appareil qui l’a prise
findings-photo-other-camera = elle a été prise par { $maker } { $model }, non par l’appareil { $camera } ; indiquer le fichier de cet appareil dans le dossier
findings-photo-other-camera-at = elle a été prise par { $maker } { $model } à { $focal } mm, non par l’appareil { $camera } ; indiquer le fichier de cet appareil dans le dossier
findings-photo-no-camera = aucun fichier d’appareil ne lui correspond ({ $maker } { $model }, { $width } x { $height } px) ; caler l’appareil avec une mire, ou indiquer son fichier comme `camera` dans le dossier
findings-photo-two-cameras = deux fichiers d’appareil lui correspondent ({ $maker } { $model }, { $width } x { $height } px) : { $first } et { $second } ; en indiquer un comme `camera` dans le dossier
findings-no-make = (pas de fabricant dans l’EXIF)
findings-no-model = (pas de modèle dans l’EXIF)
findings-photo-no-markers = aucun marqueur du jeu n’y a été trouvé : { $why }
findings-photo-not-linked = elle n’a aucun porte-marqueurs en commun avec les autres photos ; la reprendre de sorte qu’elle en montre deux qu’une autre photo montre aussi
findings-photo-not-tied = rien ne la relie aux photos d’avant le déplacement { $move } ; la reprendre avec plaques et feuilles de sol à côté du support
findings-photo-other-phase = elle a été prise après le calibrage, alors que le support ou le véhicule avait bougé ; elle est comparée, non utilisée pour la mesure
findings-unseen-other-kit = ses marqueurs sont d’un autre jeu
findings-unseen-doubled = une seconde impression de chacun de ses marqueurs est dans le poste ; retirer les impressions en trop et la reprendre
findings-unseen-mirrored = elle est en miroir
findings-unseen-dark = elle est trop sombre ; éclairer davantage et la reprendre
findings-unseen-blurred = elle est floue ; tenir fermement, appuyer les coudes ou éclairer davantage, et la reprendre
findings-unseen-not-in-view = elle est nette, donc aucun n’était visible ou tous étaient trop petits ; s’approcher, cadrer le support et les plaques, et la reprendre
findings-unseen-cannot-tell = soit aucun n’était visible, soit elle est floue (elle en montre trop peu pour le dire) ; la regarder agrandie et la reprendre
