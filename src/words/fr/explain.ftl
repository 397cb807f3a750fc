# Ce que signifie chaque constat (`explain`, galerie), comment sa règle le trouve, et les mots d'`explain` lui-même.

explain-meaning = Signification
explain-cause = Cause
explain-look = À regarder
explain-remedy = À faire
explain-rationale = Pourquoi
explain-method = Méthode
explain-level =
    { $level ->
        [void] nul
        [stop] arrêt
        [warn] alerte
       *[note] note
    }
explain-weight =
    { $level ->
        [void] nul : la mesure n’est pas fiable, les photos sont à refaire
        [stop] arrêt : rien n’est déclaré dans la tolérance
        [warn] alerte : mérite un coup d’œil
       *[note] note : bon à savoir
    }
explain-gallery = `baywitness gallery { $code } --out DIR` le montre dans un poste inventé : photos et valeurs, sans l’erreur et avec elle.
explain-unknown = aucun constat n’a le code { $code } : `baywitness explain` les énumère tous
explain-did-you-mean = aucun constat n’a le code { $code } ; s’agit-il de { $near } ?
explain-exit-code = Code de sortie { $code }
explain-exit-0 = verify, watch, audit : tous les dossiers sont dans la tolérance. check : intact et signé par un signataire de la liste. plan : tous les contrôles peuvent être décidés. Autres commandes : terminé.
explain-exit-1 = verify, watch, audit : un dossier est hors tolérance, aucun n’est pire. check : modifié ou mal signé. log check : réécrit, tronqué, dédoublé ou modifié. log witness : refusé. bay : hors d’une limite.
explain-exit-2 = Mauvais usage, ou une entrée illisible : un fichier manquant ou abîmé, une photo tronquée. Le message nomme le fichier, l’endroit et le remède.
explain-exit-3 = verify, watch, audit : un dossier n’est pas prouvé, aucun n’est pire : les photos ne tranchent ni dans un sens ni dans l’autre. check : intact, mais non signé ou d’un signataire absent de la liste, ou verdict non confirmé par une nouvelle mesure. plan : un contrôle ne peut être décidé. setup check : la fiche de montage se contredit, ou aucun jeu de marqueurs ne décide tous les contrôles. log check : il tient, mais aucune clé qui compte ne l’a signé, ou des heures ne sont pas dans l’ordre. camera fit, survey, recheck, seating, bay : inutilisable ou non prouvé.
explain-exit-4 = verify, watch, audit : un dossier ne peut être mesuré d’après ses photos et doit être photographié de nouveau ; le rapport dit pourquoi.

finding-stand-turned =
    .title = Support tourné
    .meaning = Le support n’est pas d’équerre avec la ligne de référence.
    .cause = Une extrémité a été poussée pendant le déplacement, le support a été mis d’équerre avec le pare-chocs ou un mur, ou avec l’axe médian alors que l’axe de poussée compte.
    .look = Mesurer des deux extrémités du support jusqu’au même point de chaque côté du véhicule.
    .remedy = Tourner le support de la valeur indiquée par le rapport, puis photographier de nouveau.
    .scene = L’extrémité du support côté gauche du véhicule a été poussée vers le véhicule.

finding-stand-off-centre =
    .title = Support décentré
    .meaning = Le point visé est à côté de l’endroit prévu.
    .cause = Le centrage a été fait à l’œil, sur l’emblème ou sur la plaque d’immatriculation, ou le décalage propre du capteur a été oublié ou pris du mauvais côté.
    .look = Suspendre un fil à plomb à l’emblème et un autre au point visé, et viser le long du milieu du véhicule.
    .remedy = Décaler le support de la valeur indiquée par le rapport, le garder d’équerre, puis photographier de nouveau.
    .scene = Le support a été centré à l’œil et se trouve trop à droite du véhicule.

finding-stand-too-near =
    .title = Support trop près
    .meaning = La distance du point de référence à la face de la cible est trop petite.
    .cause = On a mesuré depuis un autre point du véhicule, ou jusqu’au pied ou au mât du support au lieu de la face.
    .look = Descendre un fil à plomb depuis le point de référence et depuis la face de la cible, et mesurer au sol.
    .remedy = Éloigner le support de la valeur indiquée par le rapport, puis photographier de nouveau.
    .scene = La distance a été mesurée jusqu’au mât du support au lieu de la face.

finding-stand-too-far =
    .title = Support trop loin
    .meaning = La distance du point de référence à la face de la cible est trop grande.
    .cause = On a mesuré depuis un autre point du véhicule, ou avec un mètre ruban qui n’était pas droit.
    .look = Descendre un fil à plomb depuis le point de référence et depuis la face de la cible, et mesurer au sol.
    .remedy = Rapprocher le support du véhicule de la valeur indiquée par le rapport, puis photographier de nouveau.
    .scene = Le mètre ruban n’était pas droit.

finding-stand-too-high =
    .title = Cible trop haute
    .meaning = Le point visé est au-dessus de l’endroit prévu.
    .cause = L’échelle du mât a été lue sur un autre bord, ou la hauteur d’un autre véhicule est restée réglée.
    .look = Mesurer du sol au point visé avec une règle tenue verticale.
    .remedy = Baisser la cible de la valeur indiquée par le rapport, puis photographier de nouveau.
    .scene = L’échelle du mât a été lue sur un autre bord.

finding-stand-too-low =
    .title = Cible trop basse
    .meaning = Le point visé est au-dessous de l’endroit prévu.
    .cause = L’échelle du mât a été lue sur un autre bord, ou la hauteur d’un autre véhicule est restée réglée.
    .look = Mesurer du sol au point visé avec une règle tenue verticale.
    .remedy = Monter la cible de la valeur indiquée par le rapport, puis photographier de nouveau.
    .scene = La hauteur d’un autre véhicule est restée réglée.

finding-stand-tilted =
    .title = Cible inclinée
    .meaning = La face de la cible penche vers l’avant ou vers l’arrière.
    .cause = Les pieds n’ont pas été mis de niveau, l’inclinaison d’une autre étape est restée réglée, ou la cible a été inclinée dans le mauvais sens.
    .look = Tenir un niveau à bulle ou un mesureur d’angle vertical contre la face.
    .remedy = Incliner la cible comme l’indique le rapport, puis photographier de nouveau.
    .scene = L’inclinaison d’une autre étape est restée réglée.

finding-stand-not-level =
    .title = Cible pas de niveau
    .meaning = Une extrémité de la cible est plus basse que l’autre, ou la cible est à l’envers (alors rien n’est mesuré : nul).
    .cause = Un pied est dans un joint du sol ou n’a pas été réglé.
    .look = Poser un niveau à bulle sur la traverse.
    .remedy = Mettre le support de niveau par ses pieds, puis photographier de nouveau.
    .scene = Un pied du support est dans un joint du sol.

finding-stand-moved-between-photos =
    .title = Support déplacé entre les photos
    .meaning = Les photos ne s’accordent pas sur la place du support par rapport à tout le reste : il était à un endroit pour certaines et à un autre pour les autres.
    .cause = Quelqu’un a frôlé le support, l’a écarté pour passer ou l’a corrigé après la première photo.
    .look = Comparer sur les photos les pieds du support avec une marque au sol, ou l’écart à quelque chose de fixe.
    .remedy = Que personne ne touche au support ; refaire toutes les photos. S’il a été déplacé exprès, donner les photos suivantes avec `--moved`, ou écrire `after_move = 1` à leur [[photo]] dans job.toml.
    .scene = Quelqu’un a heurté le support avant la deuxième de quatre photos.

finding-vehicle-moved-between-photos =
    .title = Véhicule déplacé entre les photos
    .meaning = Sur certaines photos, les plaques et l’avant du véhicule sont ailleurs par rapport au sol et au support.
    .cause = Le véhicule a roulé quand le frein a été desserré, quelqu’un est monté, une porte a claqué, ou une feuille de sol a été poussée.
    .look = Regarder les pneus par rapport à une ligne au sol ; des cales qui ne touchent pas le pneu le laissent rouler.
    .remedy = Caler les roues, ne laisser monter personne, contrôler de nouveau le support et refaire toutes les photos.
    .scene = Le frein a été desserré entre la deuxième et la troisième photo.

finding-plate-not-seated =
    .title = Plaque mal assise
    .meaning = Une plaque de roue pointe là où aucune roue ne peut pointer, n’est pas sur son moyeu, ou était assise autrement sur une photo que sur une autre.
    .cause = Une griffe repose sur une masse d’équilibrage, le rebord de la jante est tordu, il y a de la saleté entre plaque et jante, ou la plaque a glissé.
    .look = Appuyer sur le bord de la plaque : elle ne doit pas bouger. L’écart entre plaque et jante doit être le même tout autour.
    .remedy = Reposer la plaque sur une partie propre et intacte de la jante, et refaire toutes les photos.
    .scene = Une plaque de roue n’est pas en appui contre la jante.

finding-vehicle-sizes-disagree =
    .title = Dimensions saisies contredites
    .meaning = Une dimension du véhicule qui a été saisie est autre que ce que montrent les photos : l’une des deux est fausse.
    .cause = La marque avant a été placée à côté ou en avant du véhicule, une plaque de roue est à côté de son moyeu, ou les dimensions d’un autre véhicule ont été saisies.
    .look = Mesurer au mètre ruban du centre d’une roue arrière à celui de la roue avant, et à la marque avant.
    .remedy = Mettre la marque et les plaques à leur place et refaire les photos, ou corriger la saisie.
    .scene = La marque avant est à 25 mm en avant du véhicule.

finding-plates-swapped =
    .title = Plaques ou feuilles interverties
    .meaning = Deux plaques sont chacune sur la roue de l’autre, ou des feuilles de marqueurs sont là où le fichier du jeu en a d’autres, ou tournées.
    .cause = La plaque gauche et la droite ont été confondues au montage ; ou des feuilles ont été posées au mauvais endroit à la fabrication ou à la réparation du jeu.
    .look = L’étiquette de chaque plaque nomme sa roue et montre le haut ; comparer les numéros des feuilles avec le plan du jeu.
    .remedy = Remettre chacune à sa place, dans le bon sens, et refaire les photos.
    .scene = Les plaques arrière ont été fixées chacune sur la roue de l’autre.

finding-print-scale-wrong =
    .title = Imprimé à une autre taille
    .meaning = Les marqueurs n’ont pas la taille qu’indique le fichier du jeu, d’après leurs écarts.
    .cause = L’imprimante a ajusté la page à ses marges, ou des feuilles d’un autre jeu ont été montées.
    .look = Mesurer le carré noir d’un marqueur avec un réglet d’acier, dans les deux sens ; la règle de contrôle de la feuille doit être juste.
    .remedy = Imprimer de nouveau à 100 % (sans ajustement à la page), ou inscrire la taille mesurée dans le fichier du jeu.
    .scene = Les marqueurs du support ont été imprimés ajustés à la page.

finding-print-not-flat =
    .title = Impressions non planes
    .meaning = Ce que montre un marqueur s’écarte de ce que montrerait un marqueur plan et imprimé régulièrement ; sa position est donc moins bien connue.
    .cause = Du papier décollé ou collé avec des bulles, une plaque tordue, ou une imprimante dont l’entraînement du papier est irrégulier.
    .look = Poser le bord d’une règle sur l’impression : la lumière passe dessous ; ou mettre deux impressions l’une contre l’autre.
    .remedy = Recoller les feuilles à plat sur un support rigide, sans bulles ; remplacer une plaque tordue ; réimprimer sur une autre imprimante.
    .scene = Toutes les impressions sont ondulées.

finding-marker-displaced =
    .title = Marqueurs ailleurs que dans le jeu
    .meaning = Les marqueurs d’un porte-marqueurs ne sont pas placés les uns par rapport aux autres comme le dit le fichier du jeu ; ce qu’il marque se trouve donc ailleurs que les photos ne semblent le montrer.
    .cause = Un porte-marqueurs tordu ou heurté, une feuille réparée ou montée ailleurs, des impressions collées avec moins de soin que ne le dit le fichier, ou le fichier d’un autre.
    .look = Poser une règle le long du porte-marqueurs ; comparer les écarts des feuilles avec le dessin du jeu, au ruban d’acier.
    .remedy = Remettre en ordre, ou relever le porte-marqueurs (baywitness survey) et utiliser le fichier du jeu qui en résulte.
    .scene = Des feuilles à l’extrémité gauche du support ont été réparées et dépassent depuis.

finding-marker-duplicated =
    .title = Un code deux fois
    .meaning = Le même code apparaît deux fois sur une photo ; il n’a servi sur aucune photo du dossier.
    .cause = Une impression de trop traîne dans le poste, un miroir ou une surface brillante montre un marqueur, ou deux jeux de mêmes codes sont présents.
    .look = Chercher sur la photo une seconde feuille portant ce numéro, aussi dans les vitres et sur la peinture.
    .remedy = Retirer ou couvrir l’impression de trop et refaire les photos.
    .scene = Une impression de trop d’un marqueur est accrochée dans le poste.

finding-camera-mismatch =
    .title = Autre appareil photo
    .meaning = Les photos ne correspondent pas à l’objectif que décrit le fichier d’appareil.
    .cause = Un autre téléphone, un autre objectif du téléphone (grand-angle, télé, frontal), une correction d’objectif ou un aperçu en miroir appliqué par le téléphone, ou le mauvais fichier d’appareil dans le dossier.
    .look = Les détails de la photo dans la galerie du téléphone nomment l’appareil et l’objectif. Deux téléphones d’un même modèle y écrivent la même chose : si une seule photo ne convient pas, demander qui l’a prise.
    .remedy = Prendre les photos avec l’appareil et l’objectif étalonnés, ou étalonner celui-ci avec une mire et nommer son fichier dans le dossier.
    .scene = Les photos ont été prises avec l’autre objectif du téléphone.

finding-photo-zoomed =
    .title = Photo zoomée
    .meaning = Une photo montre tout plus grand ou plus petit que son appareil ne le peut à la distance focale du fichier d’appareil.
    .cause = Deux doigts sur l’écran, le changement d’objectif automatique du téléphone, ou un recadrage enregistré à l’ancienne taille.
    .look = La galerie du téléphone montre le zoom ou la distance focale dans les détails de la photo ; l’image montre moins du poste que ses voisines.
    .remedy = Régler l’appareil sur son objectif simple 1x et refaire la photo.
    .scene = Une photo sur quatre a été prise avec le zoom numérique.

finding-photo-resized =
    .title = Photo redimensionnée
    .meaning = La photo n’a pas la taille à laquelle son appareil enregistre les images.
    .cause = Une messagerie, un logiciel de courrier ou une application d’images l’a réduite en route, ou elle a été recadrée.
    .look = La galerie du téléphone montre la taille de l’original en pixels.
    .remedy = Copier le fichier original depuis le téléphone par câble ou comme fichier, pas comme image dans un message.
    .scene = Une messagerie a réduit une photo sur quatre.

finding-photo-blurred =
    .title = Floue
    .meaning = Les bords des marqueurs sont trop mous pour être bien mesurés.
    .cause = La main a bougé, il faisait sombre, l’objectif était sale, ou la mise au point était sur quelque chose de proche.
    .look = Agrandir un marqueur sur le téléphone : ses petits carrés doivent avoir des bords nets.
    .remedy = Essuyer l’objectif, appuyer les coudes, ajouter de la lumière, toucher le support à l’écran pour la mise au point et refaire la photo.
    .scene = Le téléphone a bougé pendant la dernière photo.

finding-photo-badly-lit =
    .title = Mal éclairée
    .meaning = La lumière gâche une photo : une lampe éblouit dans un marqueur, le blanc est brûlé, ou il fait trop sombre.
    .cause = Une lampe ou le soleil se reflète sur une impression brillante dans l’angle de l’appareil, le flash du téléphone était allumé, ou le poste est sombre.
    .look = Agrandir le marqueur : des taches blanches là où il devrait y avoir du noir, ou du gris sur gris.
    .remedy = Faire un pas de côté pour que le reflet quitte le marqueur, couper le flash, utiliser du papier mat et une lumière régulière, et refaire la photo.
    .scene = La dernière photo est surexposée : le papier blanc déborde sur le noir.

finding-photo-light-changed =
    .title = Lumière modifiée par le téléphone
    .meaning = Le téléphone a éclairci des zones sombres et assombri des zones claires, si bien que les bords des marqueurs sont moins bien connus.
    .cause = HDR, mode nuit, optimisation de scène ou un filtre, ou une lumière forte à côté d’une ombre profonde, qui y amène les téléphones.
    .look = Agrandir un marqueur : près des bords, le blanc est plus clair et le noir plus sombre qu’au milieu des carrés.
    .remedy = Couper HDR, mode nuit et optimisation de scène, ou prendre une image brute et la développer simplement ; éclairer le poste plus régulièrement ; prendre une photo de plus ou s’approcher.
    .scene = Le téléphone a éclairci le sombre et assombri le clair, d’un endroit à l’autre, sur chaque photo.

finding-photo-reused =
    .title = Photo utilisée deux fois
    .meaning = Deux des photos sont la même image, peut-être réencodée, recadrée ou en miroir.
    .cause = Un fichier a été copié sous un autre nom, envoyé deux fois, ou retouché pour passer pour une deuxième photo ; ou l’appareil était sur un trépied.
    .look = Superposer les deux images : tout coïncide, y compris les personnes et les ombres.
    .remedy = Prendre la deuxième photo d’un autre endroit.
    .scene = La première photo a été enregistrée de nouveau comme quatrième.

finding-photos-too-alike =
    .title = Photos trop semblables
    .meaning = Deux photos ont été prises presque de la même direction et comptent donc pour une.
    .cause = Les deux ont été prises du même endroit.
    .look = Mettre les deux images côte à côte : le support cache la même partie du véhicule.
    .remedy = Prendre l’une d’elles de l’autre côté du support.
    .scene = Deux photos sur trois ont été prises presque du même endroit.

finding-carrier-not-seen =
    .title = Non vu
    .meaning = Une partie du jeu de marqueurs n’est sur aucune photo utilisable, ou seulement de façon que deux positions conviennent aussi bien.
    .cause = Elle était derrière quelque chose, hors de l’image, trop loin ou vue par la tranche.
    .look = Ouvrir les photos : au moins deux de ses marqueurs sont-ils entiers, nets et plus grands qu’un ongle de pouce ?
    .remedy = Prendre une photo de plus qui la montre avec deux autres parties du jeu.
    .scene = Une feuille de sol n’a pas été posée.

finding-floor-not-level =
    .title = Sol qui n’est pas un seul plan
    .meaning = Le sol se brise entre le véhicule et le support, une feuille n’y est pas à plat, ou les roues ne reposent pas de même sur le plan des feuilles.
    .cause = Un caniveau, une rampe, un joint entre dalles, une feuille gondolée ou soulevée, un pneu à plat, une roue sur une cale ou un plateau tournant ; ou la hauteur de moyeu saisie est fausse.
    .look = Poser une règle de maçon ou un niveau à eau en travers du poste ; appuyer sur les coins de la feuille.
    .remedy = Aplatir la feuille ; si le sol est en cause, utiliser un poste de niveau.
    .scene = Le sol monte devant le véhicule.

finding-steering-not-straight =
    .title = Direction pas droite
    .meaning = Les roues avant pointent d’un côté de l’axe médian.
    .cause = Le volant était braqué au stationnement, ou a bougé quand quelqu’un est descendu ; ou il n’est pas centré en ligne droite.
    .look = Les branches du volant, et l’écart entre pneu avant et aile de chaque côté.
    .remedy = Faire rouler le véhicule tout droit sur quelques mètres, centrer la direction, contrôler de nouveau le support et refaire les photos.
    .scene = Les roues avant ne sont pas droites.

finding-weak-geometry =
    .title = Trop faible pour prouver
    .meaning = Avec ces photos, on ne pourrait prouver d’aucune position du support qu’elle est dans une tolérance, ou la réponse dépend d’une photo ou d’un porte-marqueurs plus que son incertitude ne l’admet.
    .cause = Trop peu de photos, toutes d’un côté, des plaques sur deux roues seulement, ou des marqueurs petits et éloignés.
    .look = Le tableau d’incertitude du rapport montre d’où vient la plus grande part.
    .remedy = Ajouter des photos plus écartées qui montrent les deux volets des plaques ; si deux roues seulement portent des plaques, en mettre sur les quatre.
    .scene = La fiche exige une tolérance plus petite que ce que ces photos peuvent prouver.

finding-wrong-datum-suspected =
    .title = Point de référence sans doute faux
    .meaning = Une valeur très éloignée serait juste si elle avait été mesurée depuis un autre point, de l’autre côté, avec un autre signe ou une autre unité, ou pour une autre étape.
    .cause = Mesuré depuis l’emblème, le pare-chocs ou l’essieu au lieu du point de référence, jusqu’au mât au lieu de la face, jusqu’au bord du panneau au lieu de son centre ; décalage pris du mauvais côté ; chiffres intervertis ; fiche lue dans la mauvaise colonne.
    .look = Relire la ligne de la fiche, à voix haute, le doigt sur le point du véhicule qu’elle nomme.
    .remedy = Placer le support selon le bon point, le bon signe et la bonne unité ; le soupçon ne change pas les valeurs du rapport.
    .scene = Le décalage de 60 mm du capteur a été pris de l’autre côté.

finding-reading-disagrees =
    .title = Relevé en désaccord
    .meaning = Une valeur relevée au véhicule et les photos s’excluent dans leurs incertitudes. Si le relevé a servi au résultat ou décide d’un contrôle de la fiche, il arrête le dossier, et le relevé utilisé reste hors des chiffres. De même pour deux relevés d’une même grandeur qui s’excluent.
    .cause = On a relevé à un autre point, des chiffres ont été intervertis à la saisie, le laser n’était pas d’équerre ou le mètre ruban pendait ; ou les photos sont fausses.
    .look = Relever de nouveau, au point que nomme la fiche, et lire à voix haute ce qui est saisi.
    .remedy = Corriger le relevé ou trouver le point où il a été pris ; s’il se confirme, refaire les photos.
    .scene = Le laser a été tenu contre un autre point du véhicule.

finding-times-out-of-order =
    .title = Heures en désordre
    .meaning = D’après leurs propres horloges, les photos, le dossier et le calibrage ne se suivent pas comme ils le devraient.
    .cause = Des photos d’un dossier antérieur ont été choisies, de plus anciennes ont été inscrites comme prises après un déplacement du support, le calibrage a eu lieu avant les photos, ou l’horloge d’un appareil est fausse.
    .look = Comparer les heures du rapport avec le rapport de diagnostic et l’horloge murale.
    .remedy = Mettre les horloges à l’heure ; si les photos sont vraiment d’un autre moment, en prendre de nouvelles.
    .scene = Le calibrage a eu lieu une demi-heure avant les photos.

finding-photo-of-another-day =
    .title = Photo d’un autre jour
    .meaning = D’après ses propres données, la photo a été prise un autre jour que le dossier. Cela ne prouve pas qu’il en fut ainsi.
    .cause = Une photo d’un dossier antérieur a été choisie, le dossier a été écrit des jours plus tard, ou la date du téléphone est fausse.
    .look = Comparer la date dans la galerie du téléphone avec celle du dossier, et le véhicule de la photo avec celui du dossier.
    .remedy = Utiliser les photos de ce dossier ; régler la date du téléphone et lui laisser noter son fuseau horaire.
    .scene = Une photo sur quatre est de la veille ; aucune n’indique son fuseau horaire.

finding-photo-edited =
    .title = Photo écrite par un programme
    .meaning = Le fichier porte les traces d’un programme qui l’a écrit après l’appareil. Cela ne prouve pas que l’image ait été modifiée.
    .cause = La photo a été tournée, recadrée ou améliorée dans une galerie ou un éditeur, ou exportée d’une application au lieu d’être copiée.
    .look = Comparer avec l’original sur le téléphone : ses détails indiquent l’heure de la prise et le programme qui l’a écrit.
    .remedy = Copier le fichier original depuis le téléphone et vérifier de nouveau ; mettre de côté celui qui a été retouché.
    .scene = Une photo sur quatre est passée par un programme qui se nomme dans ses données.

finding-thumbnail-differs =
    .title = Vignette d’une autre image
    .meaning = La petite image que l’appareil a mise dans le fichier ne montre pas ce que montre la photo. Cela ne prouve pas une intention.
    .cause = Un programme a remplacé ou recadré l’image et laissé l’ancienne vignette, ou un appareil en a écrit une fausse.
    .look = Ouvrir la vignette avec une visionneuse de données de photos et la mettre à côté de la photo.
    .remedy = Fournir le fichier original du téléphone ; s’il est perdu, refaire la photo.
    .scene = La vignette de la deuxième photo est celle de la troisième ; les autres ont la leur.

finding-photo-rendered =
    .title = Image de synthèse
    .meaning = Ce programme a fait l’image ; aucun appareil ne l’a prise. Son dossier ne dit pas que c’est un exemple ou un exercice.
    .cause = Des photos d’un exemple, d’un exercice ou d’un fichier de scène se sont mêlées à celles d’un dossier, ou quelqu’un donne des photos inventées pour vraies.
    .look = Les détails du fichier nomment le programme de rendu, s’ils n’ont pas été enlevés ; l’image montre le véhicule inventé.
    .remedy = Remettre les photos prises au poste. Pour s’exercer, écrire rendered = true dans job.toml ; le rapport le dit alors sur sa première ligne.
    .scene = Le poste correct, dont le fichier de dossier ne dit pas que ses photos sont des images de synthèse.

finding-noise-repeated =
    .title = Même bruit dans deux photos
    .meaning = Des marqueurs de même forme ont le même bruit, pixel par pixel, dans deux photos qui ne sont pas la même image.
    .cause = Une seconde photo a été faite à partir de la première en déplaçant une partie ; ou une photo très lissée prise sur trépied montre le grain de l’impression elle-même.
    .look = Superposer les deux photos agrandies : le grain sur le blanc et le noir coïncide.
    .remedy = Reprendre la photo et remettre le fichier que l’appareil a écrit.
    .scene = La photo d’après un déplacement du support a été faite à partir de la première : seul le support est ailleurs.

finding-markers-without-noise =
    .title = Marqueurs sans le bruit de la photo
    .meaning = Le blanc et le noir des marqueurs d’un porte-marqueurs sont bien plus lisses que ceux de tous les autres marqueurs de la même photo.
    .cause = Un programme a dessiné les marqueurs dans la photo ; ou quelque chose de lisse les porte, un écran par exemple.
    .look = Agrandir la photo : les autres marqueurs ont du grain, ceux-ci non.
    .remedy = Remettre le fichier original du téléphone ou reprendre la photo.
    .scene = Dans la deuxième de deux photos, un programme a inséré les marqueurs du support.

finding-compression-differs =
    .title = Marqueurs sans la compression antérieure de la photo
    .meaning = La photo a été enregistrée en JPEG puis une nouvelle fois, et tous les marqueurs le montrent sauf ceux d’un porte-marqueurs.
    .cause = Un logiciel a ouvert la photo, les marqueurs ont été collés, tournés ou déplacés, puis elle a été enregistrée de nouveau.
    .look = Demandez le fichier tel que le téléphone l’a enregistré : il a été compressé une seule fois.
    .remedy = Donnez le fichier d’origine du téléphone ou reprenez la photo.
    .scene = La deuxième de deux photos a été enregistrée, puis les marqueurs du support ont été insérés, et elle a été enregistrée de nouveau.

finding-focal-length-contradicts =
    .title = Données d’une autre distance focale
    .meaning = Les données de la photo indiquent un angle de vue que l’image n’a pas. Cela ne prouve pas une intention.
    .cause = L’image a été recadrée et agrandie, des données ont été copiées d’une autre photo, ou l’appareil écrit une valeur fausse.
    .look = Prendre une nouvelle photo avec le même appareil et le même objectif, et comparer la valeur dans ses détails.
    .remedy = Fournir le fichier original ; si l’appareil écrit toujours cette valeur, le noter dans le dossier.
    .scene = Les données d’une photo indiquent une distance focale plus longue que celle utilisée.

finding-markers-of-another-kit =
    .title = Marqueurs d’un autre jeu
    .meaning = Les photos montrent des marqueurs que le jeu du dossier n’a pas. Ils ont été laissés de côté, et ce qui a été mesuré avec les autres est bon.
    .cause = Un second jeu ou une mire d’appareil est dans le poste, ou le dossier nomme un autre jeu que celui utilisé.
    .look = Chercher les numéros du message sur les photos et sur les pages de garde des jeux.
    .remedy = Nommer dans le dossier le jeu utilisé ; ranger les autres pour que personne ne confonde les porte-marqueurs.
    .scene = Des marqueurs d’un second jeu sont accrochés dans le poste.

finding-card-not-seen =
    .title = La carte du dossier n’est sur aucune photo
    .meaning = Le dossier a une carte à usage unique, et aucune photo ne montre tous ses marqueurs : rien ne prouve donc que les photos ont été prises pour lui.
    .cause = La carte était à plat ou trop loin, quelque chose était devant, ou les photos sont plus anciennes que la carte.
    .look = Ouvrir les photos : la carte est-elle debout et aussi grande que le marqueur d’une plaque de roue ?
    .remedy = Mettre la carte debout là où les photos la montrent, sur le capot ou à côté du support, et prendre une photo de plus.
    .scene = La carte du dossier a été oubliée au bureau.

finding-card-of-another-job =
    .title = Une photo montre la carte d’un autre dossier
    .meaning = Des marqueurs réservés aux cartes ont été trouvés sur une photo, mais ce n’est pas le code de ce dossier.
    .cause = Les photos de deux dossiers ont été mélangées, ou l’ancienne carte est restée dans le poste.
    .look = Comparer les numéros du message avec la carte sur l’établi.
    .remedy = Laisser cette photo de côté, ou la refaire avec la carte de ce dossier.
    .scene = La carte du dossier précédent est encore sur le véhicule.

finding-prerequisite-not-met =
    .title = Condition préalable non remplie
    .meaning = Le technicien déclare que quelque chose que la fiche exige n’est pas le cas.
    .cause = Pneus, charge, carburant, suspension ou direction n’étaient pas comme la procédure l’exige.
    .look = Parcourir la liste de la fiche au véhicule.
    .remedy = Y remédier, attendre que la suspension se soit stabilisée, et refaire les photos.
    .scene = Le technicien déclare que la pression des pneus n’est pas réglée.

finding-record-incomplete =
    .title = Données incomplètes
    .meaning = La fiche exige une réponse que le dossier ne donne pas, le répertoire du dossier contient des photos que celui-ci n’énumère pas, ou des photos montrent le support dans une étape qu’aucun contrôle ne concerne.
    .cause = Une question du dossier a été sautée ; ou des photos ont été retirées de la liste du dossier et non de son répertoire ; ou une étape a été créée pour des photos qui contrediraient.
    .look = Le rapport énumère les questions et les réponses, et nomme les photos.
    .remedy = Répondre dans [prerequisites] du dossier selon l’état au moment des photos ; énumérer les photos, ou ranger dans aside celles d’autre chose.
    .scene = Personne n’a répondu si la pression des pneus est réglée.

finding-credentials-lacking =
    .title = Attestations de contenu manquantes
    .meaning = La fiche de montage veut savoir quel appareil a pris les photos, signé par l’appareil lui-même. Au moins une photo qui compte ne porte pas d’attestations de contenu, en porte de rompues ou d’un signataire inconnu, ou énumère des retouches. Cela ne dit rien contre ce qui a été mesuré.
    .cause = Le téléphone ou l’appareil ne signe pas ses prises de vue, une messagerie ou une galerie a dépouillé ou réécrit le fichier, aucune ancre de confiance n’a été indiquée, ou le programme a été construit sans attestations de contenu.
    .look = Le rapport énumère les attestations de contenu de chaque photo ; tout lecteur de manifestes C2PA montre la même chose du fichier d’origine.
    .remedy = Prendre les photos avec un appareil qui signe, copier les fichiers d’origine et indiquer les ancres de confiance du fabricant de l’appareil (--credential-anchors) ; sinon faire modifier la fiche par son auteur.
    .scene = La fiche exige des attestations de contenu, et les photos n’en portent aucune.

finding-not-checked =
    .title = Non contrôlé
    .meaning = La fiche de montage ne dit rien d’une grandeur qui place le support.
    .cause = La fiche n’a été écrite que pour une partie du travail.
    .look = Comparer la fiche avec les informations de service du constructeur.
    .remedy = Ajouter un contrôle à la fiche, ou renoncer à la grandeur en donnant un motif.
    .scene = La fiche ne contrôle pas la mise à niveau et n’y renonce pas non plus.

## Comment cherchent les règles : pourquoi cela compte ; comment on trouve, le taux de fausses alarmes, ce qui n'est pas vu.

finding-rule-stand-misplaced =
    .rationale = Le capteur apprend la position du support comme celle du véhicule : son erreur est celle du support.
    .method = Un contrôle hors de sa tolérance selon la règle de décision de la fiche ; son taux de fausses alarmes est celui de la règle.

finding-rule-something-moved =
    .rationale = Toutes les photos sont mesurées ensemble. Un support heurté entre deux d’entre elles se trouve là où aucune ne le montre.
    .method = Test du score (Rao 1948) d’une pose propre d’un corps, ou d’un décalage commun, dans la direction des roues, de tout ce qui est sur le véhicule, sur certaines photos : chaque coupure de la série et chaque photo seule ; pour des photos d’avant et d’après un déplacement du support, aussi de tout pas du véhicule sur le sol. De toutes les explications possibles, celle-ci doit être la meilleure, avec une probabilité de hasard inférieure à 1e-4 dans un dossier sans défaut, et dépasser 2,5 mm ou 0,12° (véhicule : 1,5 mm). Les photos doivent aussi être liées par d’autres corps : un corps qui est le seul commun à deux photos n’a pas de redondance.

finding-rule-sheet-slid =
    .rationale = Qui déplace un support marche sur les feuilles. Les photos d’avant et d’après le déplacement sont liées par feuilles et plaques : si l’une a bougé, personne ne sait ce qui a bougé encore.
    .method = Une feuille dont aucun coin n’a servi sur une photo, mais bien sur des photos entre d’autres déplacements du support : on y ajuste son glissement au sol (deux coordonnées, une rotation). C’est un coup de pied si un coin est parti à plus de 2,5 mm et que le reste est inférieur à 0,2 px ou à un septième de l’écart ; une ombre ou une botte ne conserve pas la forme de l’impression. Les feuilles utilisées sont vues par la recherche de ce qui a bougé entre les photos.

finding-rule-phases-differ =
    .rationale = Des photos d’avant et d’après le calibrage prouvent que rien n’a bougé pendant qu’il durait.
    .method = Une seule compensation où support et plaques ont une pose par phase sur les mêmes feuilles de sol ; la différence rapportée à sa propre covariance (test de Wald), probabilité de hasard inférieure à 1e-4 et plus de 2,5 mm ou 0,12°. Si elle est trouvée, les contrôles sont ceux des photos d’avant.

finding-rule-plates-swapped =
    .rationale = Chaque plaque appartient à un côté du véhicule, chaque feuille à sa place sur le porte-marqueurs ; interverties, elles mesurent un autre corps.
    .method = La plaque gauche doit être à gauche de la ligne des roues arrière au support, l’avant devant l’arrière du même côté, et le haut de chaque plaque doit pointer vers le haut. Feuilles : sur chaque photo un marqueur est là où le jeu en met un autre, quatre fois plus près que de sa propre place, ou à sa place mais tourné. Exact ; pas de fausse alarme. Les feuilles de sol qui sont des corps à part peuvent être n’importe où : les intervertir ne change rien.

finding-rule-plate-not-seated =
    .rationale = Une plaque qui n’est pas bien à plat sur sa roue pointe ailleurs que la roue : axe de poussée et parallélisme suivent la plaque.
    .method = Différence des directions des deux plaques d’un essieu (parallélisme total), faible sur tout véhicule routier : plus de 0,55° (pratique courante, sans source) avec une probabilité de 0,95. Aussi une pose propre de la plaque sur certaines photos (test du score, probabilité de hasard inférieure à 1e-4). Ne sont pas vues deux plaques de travers du même angle, ni une plaque tournée autour de son axe, ce qui ne change rien.

finding-rule-plate-off-hub =
    .rationale = Une plaque qui est à côté du moyeu de sa roue, d’autant sur toutes les photos, déplace l’essieu, et avec lui l’axe médian et tout ce qui en est mesuré ; les photos s’accordent quand même entre elles.
    .method = L’angle de poussée, plus de 1° (pratique courante, sans source) avec une probabilité de 0,95, là où le parallélisme total de l’essieu ne le distingue pas d’une plaque mal plaquée ; et la voie avant contre la voie arrière, de moyeu à moyeu, plus de 100 mm (pratique courante, sans source) avec cette probabilité. Des écarts plus petits ne se voient que contre des dimensions saisies, et deux plaques d’un essieu déplacées de même sur le côté à peine.

finding-rule-vehicle-sizes-disagree =
    .rationale = Une marque en avant du véhicule ou une plaque à côté de son moyeu est la même sur chaque photo, et aucun écart ne la montre : ce qui est connu du véhicule le fait.
    .method = Empattement, distance de l’avant à l’essieu arrière et les deux voies, tels que saisis, chacun contre ce que les photos en montrent : au-delà de quatre incertitudes-types des deux ensemble (probabilité de hasard inférieure à 1e-4) et de 5 mm (pratique courante, sans source). N’est pas dit là où autre chose fausse déjà toutes les valeurs. Ne sont pas vues les dimensions non saisies, ni ce qui n’en change aucune, comme une marque avant décalée sur le côté.

finding-rule-print-scale-wrong =
    .rationale = Une impression à 97 % fait paraître son porte-marqueurs 3 % plus loin.
    .method = Test du score d’un facteur sur les tailles de tous les marqueurs d’un porte-marqueurs, de toutes les feuilles de sol ou de toutes les plaques de roue, et d’un sur tous les marqueurs. Le facteur commun à tous se distingue de la distance focale par le seul écart des marqueurs sur un porte-marqueurs ; si cela ne suffit pas, l’explication rivale est nommée. Meilleure de toutes les explications possibles, probabilité de hasard inférieure à 1e-4, plus de 0,15 % sur un porte-marqueurs ou un tel groupe, et avec la même sûreté plus de 0,05 % ; plus de 0,3 % sur tous. Non vu : un porte-marqueurs à un seul marqueur dont rien d’autre ne fixe la distance.

finding-rule-print-not-flat =
    .rationale = Un marqueur est mesuré comme un carré plan. Du papier qui gondole montre son motif ailleurs, différemment de chaque côté, et entraîne distances et angles ; aucun nombre de pixels n’efface cela.
    .method = Les résidus disent de combien l’image de chaque marqueur est déplacée de façon lisse : courbures (polynômes de degré deux, sauf ce qui ressemble à la perspective) et ondulations (de degré trois et quatre), au-delà de la dispersion de blocs de résidus ; le cinquième le plus mauvais des marqueurs d’une photo ne parle pas pour les autres. En dessous de 0,0002 du côté (0,03 px au plus ; 2,5 fois plus où le téléphone a modifié la lumière) elles comptent pour nulles. Ce qu’elles font aux coins est compris dans leur incertitude. Signalé quand la moitié de ce que les photos montrent d’un porte-marqueurs s’écarte de plus de 0,001 du côté ; des photos de nuit rendues d’impressions planes atteignent 0,0007. Alerte si un contrôle n’est pas prouvé, sinon note. Il ne dégrade rien par lui-même : les incertitudes le contiennent. Ne se voient ni une courbure qui ressemble à une autre direction d’observation, ni des impressions déplacées, tournées, étirées ou cisaillées en entier.

finding-rule-marker-displaced =
    .rationale = Les places sur un porte-marqueurs sont connues aussi bien que le dit le fichier du jeu, et la compensation les laisse céder d’autant ; si elle cédait davantage, un porte-marqueurs tordu de quelques millimètres passerait pour une autre place du support.
    .method = Les carrés de ce que les places d’un porte-marqueurs ont cédé, chacun en incertitudes-types, sont additionnés : au plus un khi carré où le fichier est juste ; probabilité de hasard inférieure à 1e-6. Sont nommés les marqueurs dont la place libre (test du score, trois coordonnées) a une telle probabilité et s’écarte de plus de 0,75 mm, et ceux qui n’ont pris part à aucune photo, ou, à plusieurs du même porte-marqueurs, manquent dans une photo, alors que tous leurs coins sont décalés de même, de plus de 0,5 px. Il n’est pas question de places où autre chose explique mieux les photos. Non vu : tous les marqueurs d’un porte-marqueurs déplacés de même.

finding-rule-camera-mismatch =
    .rationale = Un fichier d’appareil vaut pour un objectif d’un appareil ; à travers un autre, les droites se courbent autrement et tout se décale.
    .method = EXIF contre le fichier d’appareil : exact, là où les deux disent quelque chose. Par compensation : un facteur de focale commun à toutes les photos d’une caméra, écarté de plus de 1 % ; ou le test du score d’un objectif libre (distances focales, point principal, distorsion) comme meilleure explication avec une probabilité de hasard inférieure à 1e-4, si les résidus dépassent le double de ce que déclare le détecteur. Le même test sur l’objectif d’une seule photo révèle un autre téléphone du même modèle, ce qu’EXIF ne peut pas. Une image tournée de 180 degrés avant d’être enregistrée : le test du score de ce seul changement de l’objectif (point principal et décentrement de l’autre côté) ; un objectif bien au milieu de l’image ne le trahit pas. Une image en miroir : exact. Un autre appareil de même objectif n’est pas vu.

finding-rule-photo-zoomed =
    .rationale = Le fichier d’appareil vaut pour une distance focale ; une photo zoomée fait tout paraître plus près.
    .method = Zoom numérique dans EXIF supérieur à 1,02, ou distance focale résolue d’une photo écartée de plus de 1 % et de cinq incertitudes-types de sa valeur a priori (probabilité de hasard 6e-7), ou test du score d’une distance focale libre comme meilleure explication (probabilité de hasard inférieure à 1e-4). Si toutes les photos s’écartent du même facteur, c’est `camera-mismatch`.

finding-rule-photo-resized =
    .rationale = Un fichier d’appareil vaut pour une grille de pixels ; une photo mise à l’échelle a perdu des pixels et ne convient à aucun fichier d’appareil.
    .method = Taille enregistrée contre le fichier d’appareil, et contre la taille qu’indique l’EXIF de la photo elle-même. Exact ; une photo réduite, agrandie de nouveau et privée de son EXIF ne se remarque que comme floue.

finding-rule-photo-reused =
    .rationale = Deux photos prouvent quelque chose parce que chacune pourrait contredire l’autre ; une copie s’accorde avec elle-même.
    .method = Mêmes octets ; ou les coins des marqueurs communs à deux photos (deux marqueurs ou plus) sont images affines les uns des autres à 1 px près : c’est une copie réencodée, mise à l’échelle ou recadrée, aussi en miroir. De deux endroits d’un poste, le résidu est de dizaines de pixels ; il n’y a donc pas de fausse alarme, sauf pour un appareil sur trépied : cela aussi n’est qu’une photo, à moins que le support n’ait été déplacé entre-temps et que les photos le montrent : prises à un autre moment selon leurs propres données, ou le support ailleurs par rapport à tout le reste de plus de 0,1 px et de trois fois le résidu de l’application.

finding-rule-photo-blurred =
    .rationale = Le flou coûte de l’exactitude, et celui d’une main qui bouge n’est pas le même dans toutes les directions : il décale les bords.
    .method = Médiane du flou ajusté des marqueurs de la photo : plus de 1,8 px, ou plus de 1,2 px et le double de la photo la plus nette. Si aucun marqueur n’a été trouvé : de chaque montée de 40 niveaux en 32 px, la part contenue dans 4 px ; la moitié a moins de 0,5, en largeur ou en hauteur, et de telles montées se trouvent dans vingt au moins de ses 64 parties. Un mur uni ou une ombre douce n’est pas dit flou : il en a trop peu.

finding-rule-photo-badly-lit =
    .rationale = Un reflet avale le noir, le blanc brûlé déborde de ses bords, l’obscurité est du bruit : les bords bougent ou se perdent.
    .method = Éblouissement : un marqueur que les poses résolues placent dans l’image, face à l’appareil et assez grand, n’a pas été trouvé ou a perdu des coins, alors qu’un voisin de la même face a été trouvé et que le support ne peut pas le cacher, et plus de 0,45 de sa surface est saturée (l’impression seule atteint 0,4). Brûlé : plus d’un tiers de la surface de la moitié des marqueurs est saturé. Sombre : la moitié des marqueurs a un contraste inférieur à 0,12 ; ou aucun marqueur n’a été trouvé et moins d’un centième de l’image dépasse le niveau 48 sur 255. Tout est exact sur l’image ; un marqueur devant lequel quelqu’un se tient n’est pas un éblouissement.

finding-rule-photo-light-changed =
    .rationale = Les téléphones éclaircissent le sombre et assombrissent le clair d’un endroit à l’autre (HDR, mappage tonal). Ce qui mène à un bord déforme alors ce qui montre où il est ; les coins sont donc moins bien connus que sur une photo développée simplement.
    .method = Chaque marqueur de 60 px ou plus est divisé en parcelles de 7 px ; sur toutes les parcelles de la photo, le logarithme du gain se disperse de plus de 0,02 au-delà de ce qu’explique le bruit (des photos très modifiées de vérité connue montrent 0,05 à 0,09). Des gains de grain plus fin, et des photos dont tous les marqueurs sont plus petits, ne sont pas vus. Alerte si un contrôle n’est pas prouvé, sinon note. Il ne dégrade rien par lui-même : les incertitudes le contiennent.

finding-rule-photos-too-alike =
    .rationale = Les distances viennent de ce qu’on regarde la même chose de plusieurs endroits ; deux photos d’un endroit sont une photo.
    .method = Angle entre les lignes de visée du support à deux appareils inférieur à 5 degrés. Exact ; pas de fausse alarme.

finding-rule-floor-not-level =
    .rationale = Hauteur, inclinaison et niveau se rapportent au sol. S’il se brise entre véhicule et support, un tel plan n’existe pas.
    .method = Test du score : hauteur et inclinaison d’une feuille, ou de toutes les feuilles au-delà d’une cassure en travers de la ligne du véhicule. Meilleure de toutes les explications possibles, probabilité de hasard inférieure à 1e-4, plus de 2 mm ou 0,15°. Aussi la hauteur des moyeux arrière sur le plan des feuilles contre celle saisie, au-delà de quatre incertitudes-types et 2 mm (probabilité de hasard 6e-5). Un avertissement là où les deux moyeux d’un essieu diffèrent en hauteur de plus de 15 mm et deux incertitudes-types, ou les essieux de plus de 40 mm (pratique courante, sans source). Un sol qui est un seul plan incliné n’est pas un écart, et trois feuilles sont toujours dans un plan.

finding-rule-carrier-not-seen =
    .rationale = Ce qu’aucune photo ne montre ne fait pas partie de la preuve.
    .method = Aucune photo liée aux autres ne montre deux coins utilisables du porte-marqueurs, ou un porte-marqueurs plat convient aussi bien dans deux poses. Exact ; pas de fausse alarme.

finding-rule-steering-not-straight =
    .rationale = Les procédures exigent des roues droites : une roue braquée décale le véhicule sur ses pneus, et l’angle de braquage entre dans bien des calibrages.
    .method = Direction moyenne des plaques avant contre l’axe médian : plus que ce qu’un demi-degré (pratique courante, sans source) peut donner dans 95 % des cas, et plus de 3,3 incertitudes-types (probabilité de hasard inférieure à 1e-3). Exige des plaques sur les quatre roues.

finding-rule-wrong-datum-suspected =
    .rationale = Un support écarté exactement d’une erreur connue a été placé avec soin, selon une fausse valeur : nommer l’erreur évite de tout remesurer.
    .method = Un contrôle hors tolérance de plus du double de sa tolérance est essayé avec les autres points de référence (avant du véhicule, essieux, ceux de la fiche), les autres lignes de référence, l’angle de poussée de signe contraire, l’autre côté, le signe inversé, la valeur nominale d’une autre étape, zéro, des pouces pour des mm, des chiffres intervertis, l’angle complémentaire, un autre plan du support, son bord pour son centre. Nommé si le reste est inférieur à l’incertitude élargie plus la moitié de la tolérance, et à un quart de l’écart ; jamais appliqué. Par hasard, un écart d’environ 100 mm convient à l’un d’eux dans quelque 10 % des cas : c’est un indice.

finding-rule-reading-disagrees =
    .rationale = Deux instruments indépendants en désaccord au-delà de leurs incertitudes : l’un d’eux, ou une saisie, est faux.
    .method = E_n selon ISO/IEC 17043 supérieur à 1 : avec des incertitudes justes, une paire sur vingt-deux environ au plus, moins si les deux comptent.

finding-rule-marker-duplicated =
    .rationale = Personne ne peut dire lequel de deux marqueurs égaux appartient au jeu, ni lequel une autre photo montre ; le code est laissé de côté sur toutes les photos.
    .method = Un même numéro du jeu vu deux fois sur une photo. Exact ; une impression de trop qui traîne suffit.

finding-rule-weak-geometry =
    .rationale = Si l’incertitude dépasse ce que la tolérance permet, aucune position du support ne pourrait être prouvée.
    .method = Un contrôle qu’aucune valeur ne pourrait passer à cette incertitude (JCGM 106) : exact. Et un contrôle dont la valeur change de plus que son incertitude élargie, un dixième de sa tolérance et quatre écarts types d’un tel changement quand une photo, un porte-marqueurs ou la forme du modèle d’objectif est laissé de côté (probabilité de hasard 6e-5 chacun).

finding-rule-times-out-of-order =
    .rationale = Les photos prouvent où était le support quand elles ont été prises, pas une heure plus tard.
    .method = Heures qui indiquent leur décalage avec UTC : photos d’un dossier (de chaque phase, s’il en a deux) à moins d’une heure les unes des autres, celles d’avant à moins d’une heure du `taken` du dossier et pas après le calibrage, celles d’après pas avant lui, et toutes celles d’avant antérieures à toutes celles d’après. Exact, autant que les horloges le sont ; une heure sans décalage ne peut être contrôlée et est laissée de côté. Une photo inscrite comme prise après un déplacement du support et que le même téléphone (marque et modèle) a prise plus d’une minute avant une photo d’avant ce déplacement est de niveau arrêt, que les heures indiquent leur décalage ou non ; avec deux téléphones, plus de cinq minutes plus tôt, c’est une alerte. Si le support a été déplacé, le calibrage ne doit pas avoir eu lieu avant la première photo de sa position actuelle : niveau arrêt si un même téléphone a des photos d’avant et d’après le déplacement, sinon alerte. Les photos d’un même téléphone à plus d’une heure les unes des autres sont aussi signalées d’après des heures locales sans décalage ; de même un calibrage plus de quatre heures après la dernière photo du montage (pratique courante, sans source), s’il n’y a pas de photos d’après ; et une photo dont l’heure propre s’écarte de plus de 26 heures de celle des satellites dans son enregistrement.

finding-rule-other-day =
    .rationale = Une photo de la semaine dernière montre où était le support la semaine dernière.
    .method = Pour les photos dont les données n’indiquent pas de décalage avec UTC : leur heure locale contre celle du dossier, sinon contre celle de la première photo de ce genre, toutes deux telles qu’écrites : plus de 14 h d’écart et une autre date. Les heures avec décalage sont comparées à la minute par `times-out-of-order`. Une horloge mal réglée, ou un téléphone à l’heure d’un autre continent, a le même aspect ; une horloge reculée exprès n’est pas vue.

finding-rule-photo-edited =
    .rationale = Ce qui a été mesuré est l’image du fichier ; un programme qui l’a réécrit peut avoir changé plus que son orientation.
    .method = Traces que laissent les programmes de retouche et non les appareils : un programme de traitement nommé dans les données, le bloc de données d’un éditeur, un historique de retouches, une heure d’écriture plus d’une minute après la prise, des attestations de contenu qui ne correspondent pas aux octets ou énumèrent elles-mêmes des retouches (si le programme a été construit avec elles). La vignette contre l’image : corrélation sur 24 × 18 cellules inférieure à 0,85 dans la meilleure de quatre orientations, bandes noires et côtés plus longs retirés. Les tables de compression ne sont nommées qu’à côté d’autres traces : les téléphones utilisent aussi celles de la norme. Une retouche sans trace, ou d’une petite partie de l’image, n’est pas vue ; une rotation ou un renommage anodins dans une galerie peuvent en laisser une.

finding-rule-photo-rendered =
    .rationale = Ce programme rend des postes parfaits ; une telle photo donnée pour vraie serait dans la tolérance, quel que soit le véhicule.
    .method = Les données nomment le programme de rendu, ou l’image porte sa marque : 160 × 160 cellules, chacune plus claire ou plus sombre d’un niveau de gris selon un signe pseudo-aléatoire, jamais sur des marqueurs (Cox, Kilian, Leighton et Shamoon 1997). Chaque cellule contre ses quatre voisines, limitée à 2 niveaux, est corrélée avec les signes, dans huit rotations et miroirs ; à partir de 8 écarts-types la marque est là. Fausses alarmes : moins de 1e-13 par photo (Hoeffding 1963), car les signes ne savent rien d’elle. La marque survit à la qualité JPEG 70 et à la moitié de la taille ; une image recadrée, composée ou faite par un programme modifié peut ne pas la porter.

finding-rule-noise-repeated =
    .rationale = Deux photos prouvent quelque chose parce que chacune pourrait contredire l’autre ; une photo faite à partir de l’autre dit ce que quelqu’un voulait.
    .method = Pour les marqueurs dont les coins ne diffèrent entre deux photos que par un décalage (0,5 px) : l’écart de chaque pixel à ses quatre voisins, au milieu des cellules (à 0,3 de la cellule et 3 px de ses bords), corrélé à ce décalage sur 150 pixels ou plus ; au-dessus de 0,85 il est dit le même. D’un même endroit les impressions et les bords se ressemblent : des photos de synthèse sur trépied avant et après un déplacement, comme les développent huit sortes de téléphones, montrent jusqu’à 0,64 (à la qualité JPEG 75), et aucune n’est nommée. Une partie tournée, redimensionnée ou décalée de fractions de pixel n’est le plus souvent pas vue, ni celle qui a été enregistrée avec une qualité JPEG inférieure à environ 95.

finding-rule-markers-without-noise =
    .rationale = La place d’un support découle de ses marqueurs ; qui en insère d’autres le déplace.
    .method = Médiane de la taille de l’écart d’un pixel à ses quatre voisins, au milieu des cellules d’un marqueur (à 0,3 de la cellule et 3 px de ses bords), sur le blanc et sur le noir ; chacun contre la médiane des marqueurs de la photo sur d’autres porte-marqueurs (quatre ou plus, avec 0,3 niveau de gris ou plus). Du blanc et du noir compte le plus bruité, des marqueurs du porte-marqueurs (deux ou plus) la médiane : au-dessous de 0,4 il est nommé. Images de synthèse de deux programmes : 64 porte-marqueurs dans des photos de 12 MP, aussi fortement lissées et compressées, montrent 0,53 ou plus, aucun n’est nommé ; les supports insérés sans bruit sont nommés dans 30 sur 30 à la qualité JPEG 95, dans 25 sur 30 à 85 et dans 18 sur 30 à 75. De vraies photos avec autant de marqueurs manquaient. Des cellules de moins d’environ 18 px laissent trop peu. Des marqueurs découpés dans une autre photo apportent leur propre bruit et ne sont pas vus, ni ceux auxquels on a donné du bruit.

finding-rule-compression-differs =
    .rationale = La place d’un support se déduit de ses marqueurs ; qui en colle d’autres, photographiés ailleurs avec leur propre bruit, le déplace.
    .method = Dans les blocs de 8 x 8 pixels à l’intérieur des marqueurs, les coefficients d’une compression antérieure restent près de multiples de ses pas si l’image a été enregistrée de nouveau avec des pas plus fins (Popescu et Farid 2004 ; par zones : Lin, He, Tang et Tang 2009) : l’histogramme oscille. Signalé lorsque les autres marqueurs (quatre ou plus) oscillent de plus de 7 écarts types dans deux coefficients sur 20 et que ceux d’un porte-marqueurs (deux ou plus) en montrent moins de 0,35, connu au sixième ou mieux. Une photo compressée une fois n’a pas cette trace et ne signale rien. Les attaques vues et la fréquence des photos honnêtes signalées sont dans docs/attacks.md. N’est pas vue : une photo enregistrée de nouveau avec des pas égaux ou plus gros, une dont l’original n’était pas un JPEG, et une où tous les marqueurs ont été collés.

finding-rule-focal-contradicts =
    .rationale = Des données qui indiquent un autre angle de vue que celui de l’image sont d’une autre image, ou l’image a été recadrée.
    .method = La distance focale équivalente 35 mm des données contre celle résolue de la photo, par la diagonale de l’image (43,27 mm) et par son grand côté (36 mm), avec et sans le zoom numérique indiqué, car les fabricants diffèrent : nommée si elle s’écarte de toutes de plus de 10 %, d’un demi-millimètre et de trois incertitudes-types. Un recadrage moindre n’est pas vu, et des données sans cette valeur ne peuvent être contrôlées.

finding-rule-other-kit =
    .rationale = Deux jeux dans une image invitent au mauvais fichier de jeu, ou montrent un poste qui n’est pas celui du dossier.
    .method = Numéros qui ne sont ni du jeu du dossier ni réservés aux cartes : au moins deux lus sans bit corrigé, chacun sur deux photos, ou trois sur une. Une mire d’appareil au mur, ou le jeu d’un voisin, a le même aspect ; un marqueur mal lu (moins de 1e-6 par photo) devrait se produire deux fois.

finding-rule-card =
    .rationale = Un code qui n’existe que pour ce dossier, vu sur une photo, prouve que la photo a été prise pour ce dossier.
    .method = Les numéros réservés aux cartes, tels que trouvés sur chaque photo, contre ceux du dossier. Exact, sauf un marqueur lu pour un autre (moins de 1e-6 par photo) ; une photo qui montre toute la carte répond des photos que la compensation joint à elle.

finding-rule-photos-not-listed =
    .rationale = Qui peut choisir parmi les photos d’un support peut écarter celles qui contredisent.
    .method = Les noms des images de `photos` contre ceux que le dossier énumère comme photos ou annexes, s’il en énumère. Exact ; on ne regarde pas dedans, mais elles sont scellées avec le dossier. Les photos rangées ailleurs ou effacées ne sont pas vues. Pour une fiche à plusieurs étapes, aussi les photos qui montrent le support dans une étape qu’aucun contrôle ne concerne, ou qui n’en nomment aucune.

finding-rule-prerequisites =
    .rationale = La fiche dit ce qui doit être assuré avant que la géométrie ait un sens : pneus, charge, direction, suspension stabilisée.
    .method = Les réponses du dossier contre la liste de la fiche : `false` arrête, de même que des mots qui commencent par non (no, not, nein, nicht, non, pas) ; l’absence de réponse à une question obligatoire, ou des mots qui ne sont ni un oui clair ni une valeur chiffrée (« 2,3 bar »), rendent les données incomplètes. Les photos ne peuvent contrôler une déclaration.

finding-rule-credentials-lacking =
    .rationale = Une fiche qui demande qui a pris les photos ne se contente pas de ce qu’elles montrent.
    .method = Dans le fichier de chaque photo qui participe, un manifeste C2PA est cherché ; chaque empreinte, la signature et son certificat sont validés sans réseau, selon les ancres indiquées. Ne suffisent que des attestations valides d’un signataire de confiance dont le manifeste n’énumère que la prise de vue par un appareil. Il n’y a pas de taux de fausses alertes : ce qui est exigé est là ou non. Une clé volée, la photo d’un écran et les révocations que le fichier ne porte pas ne sont pas vues.

finding-rule-not-checked =
    .rationale = Six grandeurs placent un support ; une fiche muette sur l’une la laisse ouverte, et le lecteur doit le savoir.
    .method = Distance, centrage, hauteur, équerrage, inclinaison, niveau contre les contrôles et renoncements de la fiche. Exact.
