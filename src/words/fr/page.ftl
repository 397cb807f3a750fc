page-skip = Aller au contenu
page-all-jobs = Tous les dossiers

page-jobs-title = Dossiers
page-begin-job = Nouveau dossier
page-search-jobs = Rechercher par numéro, véhicule, VIN, technicien ou fiche
page-search = Rechercher
page-no-jobs = Aucun dossier pour l’instant.
page-no-match = Aucun dossier ne contient tous ces mots.
page-earlier = Dossiers plus anciens
page-later = Dossiers plus récents
page-open-state = ouvert
page-closed-state = clos et scellé
page-unreadable-job = Le fichier de ce dossier est illisible
page-attempt-n = essai { $n }
page-not-measured = à mesurer

page-choose-sheet = Quelle fiche de montage ?
page-search-sheets = Partie du nom de la fiche
page-used-lately = Utilisées récemment
page-every-sheet = Toutes les fiches
page-no-sheet = Aucune fiche de montage ne contient tous ces mots.
page-new-sheet = Saisir une nouvelle fiche de montage
page-new-sheet-why = Chaque valeur se saisit deux fois, en la relisant chaque fois dans la source : une valeur fausse ferait accepter un mauvais montage. Laisser vide toute grandeur que la source n’exige pas.
page-sheet-name = Nom court
page-sheet-name-hint = Minuscules, chiffres et traits d’union.
page-sheet-title = Ce qui est calibré et avec quoi
page-sheet-source = Source
page-sheet-source-hint = D’où viennent ces valeurs : document du constructeur et sa date. Figure sur chaque rapport.
page-reference-line = Ligne de référence
page-choose = choisir
page-line-thrust = axe de poussée
page-line-centre = axe médian
page-line-rear-axle = perpendiculaire à l’essieu arrière
page-distance-from = À partir de
page-wanted-value = Valeur requise
page-tolerance-value = Tolérance, en plus et en moins
page-once-more = encore une fois
page-keep-sheet = Enregistrer la fiche
page-source-says = Source :

page-new-job = Nouveau dossier
page-other-sheet = Autre fiche
page-vehicle = Véhicule
page-vehicle-description = Description du véhicule
page-vin = VIN (17 caractères)
page-vin-ok = La clé de contrôle du VIN est correcte.
page-vin-doubt = Le neuvième caractère n’est pas la clé de contrôle que portent les numéros nord-américains. Comparer encore une fois le numéro avec le véhicule ; les autres marchés n’exigent pas de clé.
page-repair-order = Ordre de réparation
page-kit = Jeu de marqueurs
page-camera = Appareil photo
page-camera-by-photo = celui qu’indique chaque photo
page-no-kit = Aucun jeu de marqueurs ne porte ce que cette fiche contrôle. Placer le fichier du jeu là où le programme le cherche.
page-technician = Technicien
page-bay = Poste de calibrage
page-optional = facultatif
page-start-job = Commencer ce dossier

page-step-prepare = Préparer
page-step-photos = Photos
page-step-finish = Clôture
page-steps-of-job = Étapes de ce dossier
page-attempts = Essais
page-this-attempt = celui-ci

page-before-photos = Avant les photos
page-answered = { $answered } réponses sur { $all }
page-yes = Oui
page-no = Non
page-unanswered = Sans réponse
page-required = obligatoire
page-sizes = Dimensions du véhicule
page-sizes-why = Comparées aux photos, et utilisées seules là où elles ne les montrent pas. Voies mesurées de moyeu à moyeu.
page-wheelbase = Empattement, mm
page-nose-from-rear-axle = De l’essieu arrière à l’avant du véhicule, mm
page-floor-below-hub = Centre de roue au-dessus du sol, mm
page-rear-track = Voie arrière, mm
page-front-track = Voie avant, mm
# Behind a name, what it is of: a button and its photo, a kind and its file.
page-name-of = { $name } : { $of }
# The same where both are drawn differently.
page-colon = {" "}:
page-readings = Relevés
page-readings-why = Laser, mètre ruban, niveau à bulle : comparés aux photos, jamais mélangés avec elles.
page-instrument = Instrument
page-laser = laser
page-tape = mètre ruban
page-level = niveau à bulle
page-alignment = banc de géométrie
page-alignment-sheet = Relevé de géométrie
page-alignment-sheet-why = L’angle de poussée, ou le parallélisme des deux roues arrière dont il découle : degrés et minutes sans signe, et le côté.
page-thrust-angle = Angle de poussée
page-rear-toe-left = Parallélisme arrière, roue gauche
page-rear-toe-right = Parallélisme arrière, roue droite
page-points-left = vers la gauche
page-points-right = vers la droite
page-toe-in = pincement
page-toe-out = ouverture
page-choose-side = côté ?
page-save = Enregistrer
page-saved = Enregistré.
page-to-photos = Passer aux photos

page-from-nose = avant du véhicule
page-from-front-axle = essieu avant
page-from-rear-axle = essieu arrière

page-wanted = requis { $limits }

page-card-title = Carte à usage unique
page-card-why = Un code propre à ce dossier, visible sur les photos, prouve qu’elles ont été prises pour lui. L’afficher sur un second écran à côté du support, ou le composer avec des plaquettes portant ces numéros.
page-card-make = Utiliser une carte
page-card-show = Afficher la carte
page-card-code = Code de ce dossier : { $code }
page-card-marker = Marqueur { $id }
page-back-to-photos = Retour aux photos

page-where-to-stand = D’où photographier
page-place-sees = Dans l’image : { $names }
page-no-place = Aucun endroit de ce poste ne montre assez de marqueurs.
page-drawing-from-above = Le poste de calibrage vu de dessus ; le véhicule roule vers le haut.
page-in-every-step = De chaque endroit, dans chaque position : { $steps }.
page-position = Position du support
page-plan-failed = Pour ce jeu de marqueurs, impossible de dire d’où photographier.

page-take-photo = Prendre une photo
page-live-photo = Photo dans cette page
page-live-take = Déclencher
page-live-close = Fermer l’appareil photo
page-live-wait = Recherche des marqueurs …
page-live-seen = Marqueurs trouvés : { $count } ({ $names })
page-live-none = Aucun marqueur de ce jeu dans l’image.
page-live-ties = Le support et son entourage sont tous deux dans l’image.
page-live-apart = Le support et autre chose doivent être tous deux dans l’image.
page-live-away = Le serveur ne répond pas : les photos restent ici jusqu’à ce qu’il réponde.
page-live-level = tourné de { $turned }°, vise { $down }° vers le bas
page-live-refused = Ce navigateur ne fournit pas d’appareil photo ({ $why }). Utiliser l’autre bouton.
page-live-taken = Prise : { $width } × { $height } pixels.
page-live-frame = C’est une image du flux en direct : plus petite que les photos du téléphone et cadrée autrement ; un fichier d’appareil établi à partir de photos ne lui convient donc pas.
page-live-no-record = Elle ne dit pas quel téléphone l’a prise (pas d’EXIF) : elle n’est mesurée que si le dossier nomme son appareil, et seul convient un fichier d’appareil établi à partir d’images prises ainsi.
page-live-unnamed = Ce dossier ne nomme aucun appareil : mieux vaut utiliser l’appareil photo du téléphone avec l’autre bouton.
page-tripod-start = Trépied : une photo toutes les quelques secondes
page-tripod-stop = Arrêter les photos du trépied
page-tripod-why = Le téléphone reste immobile sur un trépied pendant que le support est déplacé. De chaque endroit où le support est au repos, la photo la plus récente est conservée.
page-tripod-says = Trépied : { $said }
page-choose-photos = Choisir des photos
page-drop-here = ou les déposer ici
page-needs-script = Pour envoyer des photos, ce navigateur a besoin de JavaScript. Les photos peuvent aussi être copiées dans le répertoire photos/ du dossier.
page-waiting-here = Sur cet appareil, pas encore envoyé
page-photos = Photos
page-no-photos = Pas encore de photo. Il en faut au moins deux, de côtés différents.
page-photo-n = Photo { $n }
page-good-photo = Bonne
page-retake-photo = Refaire la photo
page-looking = Examen en cours …
page-no-target = Le support n’est pas sur cette photo, ou rien d’autre n’y est : les deux doivent être sur une même image.
page-set-aside = Écarter cette photo
page-bring-back = La réutiliser
page-aside-photos = Écartées, non mesurées
page-after-photo-tag = après le calibrage
page-seen-key = trouvé
page-missing-key = non trouvé

page-measuring = Mesure en cours …
page-verdict-within = Dans la tolérance
page-all-within = Tous les contrôles dans la tolérance
page-verdict-outside = Hors tolérance
page-verdict-not-proven = Non prouvé
page-verdict-retake = Photos à refaire
page-verdict-failed = Mesure impossible
page-lead-within = Chaque contrôle est prouvé. Lancer le calibrage, puis prendre encore une photo.
page-lead-within-simple = Chaque valeur mesurée est dans la tolérance ; la règle de la fiche de montage ne tient pas compte de l’incertitude. Lancer le calibrage, puis prendre encore une photo.
page-lead-within-likely = Chaque contrôle est dans la tolérance avec au moins { $least } % de probabilité ; la règle de la fiche de montage n’en demande pas plus. Lancer le calibrage, puis prendre encore une photo.
page-lead-outside = Déplacer le support comme indiqué, puis prendre une photo.
page-lead-held = Ne pas encore déplacer le support : régler d’abord ce qui est indiqué ci-dessous, puis commencer l’essai suivant.
page-not-trusted = pas fiable
page-lead-not-proven = Rien n’est prouvé faux, mais tout n’est pas prouvé juste.
page-lead-retake = Les photos ne permettent pas de décider. Ce qu’il faut faire est indiqué ci-dessous.
page-second-photo = Encore une photo, de l’autre côté.
page-what-moves = Ce qu’il faut déplacer
page-not-to-scale = Pas à l’échelle. En pointillé : là où il doit être.
page-from-above = Vu de dessus
page-from-side = Vu du côté droit du véhicule
page-from-vehicle = Vu depuis le véhicule
page-turn-left-end = Tourner : rapprocher du véhicule l’extrémité de son côté gauche, { $amount }°
page-turn-right-end = Tourner : rapprocher du véhicule l’extrémité de son côté droit, { $amount }°
page-move-left = { $amount } mm vers la gauche du véhicule
page-move-right = { $amount } mm vers la droite du véhicule
page-move-away = Éloigner du véhicule de { $amount } mm
page-move-towards = Rapprocher du véhicule de { $amount } mm
page-move-up = Monter de { $amount } mm
page-move-down = Descendre de { $amount } mm
page-tilt-away = Incliner : éloigner le haut du véhicule, { $amount }°
page-tilt-towards = Incliner : rapprocher le haut du véhicule, { $amount }°
page-level-right-down = Mettre de niveau : baisser l’extrémité du côté droit du véhicule, { $amount }°
page-level-left-down = Mettre de niveau : baisser l’extrémité du côté gauche du véhicule, { $amount }°
page-vehicle-word = véhicule
page-left-word = gauche
page-right-word = droite
page-found-out = Constats
page-checks = Contrôles
page-full-report = Rapport complet
page-first-thing = D’abord
page-prove-it = Laisser le support en place. Prendre encore une photo d’un autre endroit.
page-moved-it = Support déplacé : une photo
page-moved-step = Support déplacé : une photo de « { $step } »
page-moved-why = Seul le support a été déplacé. Le photographier avec les plaques de roue et les feuilles de sol.
page-next-attempt = Support déplacé : essai suivant
page-beside-title = Par rapport aux essais précédents
page-measure-together = Mesurer aussi avec ces photos
page-measure-together-why = Elles sont copiées dans cet essai : davantage de photos du même support prouvent davantage.
page-next-attempt-why = Cet essai est scellé tel quel et reste dans la liste.
page-to-finish = Passer au calibrage

page-calibration = Calibrage
page-calibration-result = Ce qu’indique l’outil de diagnostic
page-result-none = rien pour l’instant
page-result-successful = réussi
page-result-failed = échoué
page-result-not-run = non effectué
page-reported-azimuth = Désalignement latéral indiqué, degrés
page-reported-elevation = Désalignement vertical indiqué, degrés
page-large-misalignment = Le calculateur indique { $angle }°. Si le montage est prouvé, une valeur aussi grande met en cause la patte du capteur ou sa fixation ; s’il ne l’est pas, contrôler d’abord le montage.
page-after-photo = Photo après le calibrage
page-after-with-sheets = Encore une photo du support et des feuilles de sol, là où ils étaient, montre si le support a bougé sur le sol. Elle ne montre si le véhicule a bougé que si les plaques de roue sont posées ; les reposer pour cela, ou laisser la question ouverte.
page-after-without-sheets = Ce jeu n’a pas de feuilles de sol : encore une photo ne montre si le support a bougé par rapport au véhicule que si celui-ci porte au moins une plaque de roue. La reposer une fois le calibrage terminé.
page-scan-reports = Rapports et autres fichiers
page-scan-before = Rapport de diagnostic avant
page-scan-after = Rapport de diagnostic après
page-other-file = Autre fichier
page-attach = Joindre
page-attach-file = Joindre : { $kind }
page-no-files = Aucun fichier joint.
page-close-job = Clore le dossier
page-close-why = Photos, saisies, résultat et rapport sont scellés dans un dossier de preuve. Ensuite, plus rien ne peut être modifié ici.
page-close-open = Encore ouvert : { $open }
page-open-prerequisites = conditions préalables sans réponse
page-open-verdict = le montage n’est pas prouvé dans la tolérance
page-open-result = le résultat du calibrage
page-open-after = la photo après le calibrage
page-close-now = Sceller et clore
page-closed-title = Clos et scellé
page-take-evidence = Télécharger la preuve (un fichier)
page-send-photos = Envoyer les photos
page-send-file = Envoyer le fichier
page-evidence-in = Dossier de preuve : { $folder }
page-signed-words = Signé avec la clé de cet ordinateur.
page-unsigned-words = Non signé : il révèle les modifications accidentelles, pas les modifications voulues.

page-cautions = Les informations de service du constructeur et les règles locales font foi. Réservé au personnel formé ; les lasers et les véhicules levés exigent leurs propres précautions. Cette page documente un montage et ne remplace pas la procédure.

page-pair-title = Connecter cet appareil
page-pair-why = Saisir le code pour utiliser cette page.
page-pair-now = Connecter
page-pair-code = Code affiché sur le terminal du serveur
page-pair-name = Un nom pour cet appareil
page-pair-name-why = Facultatif ; figure dans la liste des modifications de chaque dossier, par exemple : téléphone du poste gauche.
page-open-network = Cette page n’est pas chiffrée : toute personne sur ce réseau peut lire les photos, les dossiers et la clé de cet appareil. Prendre des photos dans la page et l’ouvrir sans réseau exigent aussi le chiffrement. La personne qui gère le serveur l’active.
page-open-network-here = Non chiffré : ce réseau peut tout lire.
page-devices = Appareils connectés
page-devices-why = Un appareil déconnecté est refusé aussitôt et a besoin d’un nouveau code. Ce qu’il a modifié reste dans la liste des modifications de chaque dossier.
page-no-devices = Aucun appareil n’est connecté.
page-this-device = cet appareil
page-connected-since = Connecté { $when }
page-last-here = dernière activité { $when }
page-show-out = Déconnecter
page-certificate = Certificat de cette page
page-certificate-why = Comparer ces chiffres avec ceux du terminal du serveur, pas avec une autre page : s’ils sont identiques, personne ne s’interpose.
page-certificate-of-page = SHA-256 du certificat que montre le navigateur
page-certificate-of-root = SHA-256 du certificat racine auquel un téléphone peut faire confiance
page-root-why = Une fois que cet appareil fait confiance au certificat racine, le navigateur n’avertit plus et la page s’ouvre aussi sans réseau. La racine ne peut rien signer d’autre : sa clé a été effacée.
page-take-root = Télécharger le certificat racine
page-changes = Qui a modifié quoi
page-did-begin = dossier commencé
page-did-prepare = préparation
page-did-photo = photo
page-did-aside = photo écartée
page-did-back = photo réutilisée
page-did-file = fichier joint
page-did-calibration = calibrage
page-did-card = carte
page-did-join = mesuré avec des photos antérieures
page-did-attempt = essai suivant
page-did-close = clos
page-pair-wrong = Ce n’est pas le code. Le relire sur le terminal, ou scanner le code QR.
page-pair-wait = Trop de codes faux. Attendre une minute.
page-trouble-title = Cela n’a pas fonctionné

page-js-queued = Sur cet appareil, en attente du réseau : { $count }. Rien n’est perdu.
page-js-sending = Envoi de { $name } …
page-js-kept = { $name } : enregistré.
page-js-already = { $name } était déjà là.
page-js-aside = { $name } a été écarté auparavant. Au besoin, le réutiliser ci-dessous.
page-js-refused = { $name } n’a pas été accepté : { $why }
page-js-again = Réessayer
page-js-discard = Supprimer
page-js-ready = Un nouveau verdict est arrivé.
page-js-other-certificate = Le code QR scanné nomme un autre certificat que cette page : ne pas connecter, et prévenir la personne qui gère le serveur.
page-js-offline = Pas de connexion au serveur : ce qu’affiche cette page peut être ancien. Les photos peuvent être prises et seront envoyées plus tard.
page-js-no-store = Ce navigateur ne garde rien en attente : rester sur cette page jusqu’à l’envoi des photos.

## Languages

page-languages = Langues
page-not-proofread = Pas encore relu par un technicien.
page-moment = { $day } { $clock }
page-unit = { $unit ->
    [deg] °
   *[other] { $unit }
}

## Numbers of things

page-found-jobs = { $count ->
    [one] { $count } dossier
   *[other] { $count } dossiers
}
page-checks-n = { $count ->
    [one] { $count } contrôle
   *[other] { $count } contrôles
}
page-photo-shows = { $count ->
    [one] { $count } marqueur trouvé.
   *[other] { $count } marqueurs trouvés.
} Montre : { $names }
page-photo-lacks = { $count ->
    [one] { $count } non trouvé là où il devrait être : { $ids }.
   *[other] { $count } non trouvés là où ils devraient être : { $ids }.
} Masqué, reflet d’une lampe ou dans l’ombre ?
page-photo-described = { $count ->
    [one] { $photo } : { $count } marqueur trouvé
   *[other] { $photo } : { $count } marqueurs trouvés
}

## Quantities and sides

page-quantity-from = { $datum ->
    [nose] { $name } depuis l’avant du véhicule
    [front_axle] { $name } depuis l’essieu avant
    [rear_axle] { $name } depuis l’essieu arrière
   *[other] { $name } depuis { $datum }
}
page-side = { $side ->
    [left] gauche
    [right] droite
    [left-end-nearer] extrémité gauche plus près
    [right-end-nearer] extrémité droite plus près
    [top-away] haut plus loin
    [top-towards] haut plus près
    [left-end-low] extrémité gauche basse
    [right-end-low] extrémité droite basse
    [above] au-dessus
    [below] au-dessous
    [left-longer] gauche plus longue
    [right-longer] droite plus longue
    [toe-in] pincement
    [toe-out] ouverture
    [top-forward] haut vers l’avant
    [top-rearward] haut vers l’arrière
    [top-inward] haut vers l’intérieur
    [top-outward] haut vers l’extérieur
    [nose-up] avant vers le haut
    [nose-down] avant vers le bas
    [below-floor] sous le sol
    [behind] derrière
    [negative] négatif
   *[other] ?
}
page-angle-degrees = { $angle }, degrés
page-angle-minutes = { $angle }, minutes

## Sentences with several figures

page-place = { $along ->
    [ahead] { $distance } m devant l’avant du véhicule
   *[behind] { $distance } m derrière l’avant du véhicule
}, { $side ->
    [left] { $beside } m vers la gauche du véhicule
    [right] { $beside } m vers la droite du véhicule
   *[middle] sur l’axe médian
}, téléphone à { $height } m de hauteur
page-take-off = { $sheets ->
    [some] Avant de lancer le calibrage, retirer ce qui le perturberait : { $names }. Le support et les feuilles de sol restent en place.
   *[none] Avant de lancer le calibrage, retirer ce qui le perturberait : { $names }.
}
page-moved = { $moved ->
    [yes] { $body } : { $mm } mm et { $deg }° entre avant et après : a bougé
   *[no] { $body } : { $mm } mm et { $deg }° entre avant et après : aucun mouvement prouvé
}
page-stood-alike = Essai { $n } : { $verdict } ; rien n’a bougé depuis
page-stood-apart = Essai { $n } : { $verdict } ; ne peut pas être mesuré avec celui-ci :
page-this-machine = cet ordinateur
page-device-unnamed = appareil { $digits }

## Shop's own sheets

page-asks-tyres = Pressions des pneus conformes à l’étiquette de pression
page-asks-empty = Véhicule vide : personne à bord, aucune charge
page-asks-steering = Direction en ligne droite
page-asks-settled = Véhicule roulé jusqu’à sa place, freins desserrés, suspension stabilisée
page-sheet-left-out = non repris par l’auteur de la fiche

## What did not work

page-trouble-not-here = { $what ->
    [job] Ce dossier n’est pas ici : il a peut-être été déplacé ou renommé.
    [photo] Cette photo n’est pas ici : elle a peut-être été déplacée ou renommée.
    [picture] Cette image n’est pas ici : la refaire.
    [sheet] Cette fiche de montage n’est pas ici : elle a peut-être été déplacée ou renommée.
    [kit] Ce jeu de marqueurs n’est pas ici : il a peut-être été déplacé ou renommé.
    [camera] Ce fichier d’appareil photo n’est pas ici : il a peut-être été déplacé ou renommé.
    [device] Cet appareil n’est pas dans la liste : il a peut-être déjà été déconnecté.
    [evidence] Ce dossier de preuve n’est pas ici : il a peut-être été déplacé ou renommé.
    [root] Cette page n’a pas de certificat racine propre.
   *[page] Cette page n’existe pas : revenir à la liste des dossiers.
}
page-trouble-closed = Le dossier est clos et scellé : commencer plutôt un nouvel essai.
page-sealed-another = Autre chose se trouve dans { $folder }, où ce dossier est scellé : la preuve d’un autre dossier, ou celle de celui-ci d’avant une modification de son fichier. Rien n’est dit scellé ici avant que cela soit déplacé ailleurs.
page-trouble-disk = { $doing ->
    [read] Un fichier est illisible ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
    [folder] Un dossier ne peut pas être créé ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
    [photo] La photo ne peut pas être enregistrée ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
    [job] Le fichier du dossier d’intervention ne peut pas être écrit ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
    [list] Une liste ne peut pas être enregistrée ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
    [sheet] La fiche de montage ne peut pas être enregistrée ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
   *[file] Le fichier ne peut pas être enregistré ({ $why }) : vérifier le disque de l’ordinateur qui sert cette page.
}
page-trouble-fault = Le programme a échoué ici : le signaler avec le dossier.
page-trouble-random = L’ordinateur ne fournit pas de nombres aléatoires : le redémarrer, et le signaler si cela ne suffit pas.
page-trouble-measuring = Le programme a échoué pendant la mesure de ce dossier : le signaler avec les photos.
page-trouble-not-logged = Le verdict n’est pas affiché : { $why }
page-trouble-stays-open = Le dossier reste ouvert : { $why }
page-trouble-vin = Le VIN doit avoir 17 caractères, chiffres et majuscules sans I, O ni Q : le relire sur le véhicule.
page-trouble-form = Le formulaire est arrivé endommagé ou trop grand : le renvoyer.
page-trouble-line = Une ligne de { $most } caractères au plus est conservée : la raccourcir.
page-trouble-number = « { $typed } » n’est pas un nombre : saisir des chiffres, par exemple { $example }.
page-trouble-not-measured = Cet essai n’est pas encore mesuré : attendre son verdict.
page-trouble-both-toes = Saisir le parallélisme des deux roues arrière, ou d’aucune.
page-trouble-toes-contradict = { $side ->
    [left] Le parallélisme arrière donne un angle de poussée de { $degrees }° { $minutes }′ vers la gauche, différent de celui saisi : relire les deux.
   *[right] Le parallélisme arrière donne un angle de poussée de { $degrees }° { $minutes }′ vers la droite, différent de celui saisi : relire les deux.
}
page-trouble-angle-sign = Saisir l’angle sans signe et choisir son côté.
page-trouble-angle-large = Un angle d’un relevé de géométrie a au plus { $degrees } degrés et moins de 60 minutes : le relire.
page-trouble-angle-side = Choisir de quel côté l’angle est dirigé.
page-trouble-choose-kit = Choisir le jeu de marqueurs.
page-trouble-many-jobs = Il y a trop de dossiers de ce jour : déplacer les plus anciens.
page-trouble-upload-id = X-Upload-Id doit compter 8 à 64 lettres, chiffres ou traits d’union.
page-trouble-upload-digest = X-Upload-Sha256 doit être le SHA-256 du fichier, en 64 chiffres hexadécimaux minuscules.
page-trouble-damaged = Le fichier n’est pas arrivé tel qu’il a été envoyé : le renvoyer.
page-trouble-too-large = Le fichier dépasse { $most } Mo : en envoyer un plus petit.
page-trouble-slow = Le fichier est arrivé trop lentement : le renvoyer.
page-trouble-cut = La connexion a été coupée : renvoyer le fichier.
page-trouble-uploads-busy = Beaucoup de fichiers arrivent à la fois : le renvoyer bientôt.
page-trouble-pace = Envoyer moins d’images en direct.
page-trouble-glances-busy = D’autres regardent aussi : la renvoyer bientôt.
page-trouble-live-kind = Les images en direct doivent être en JPEG.
page-trouble-live-size = Les images en direct doivent être petites : envoyer moins de pixels.
page-trouble-host = Cette page ne répond qu’aux noms propres de cet ordinateur, par exemple localhost.
page-trouble-origin = Ceci vient de la page d’un autre site, ou d’un programme qui ne dit pas d’où il vient.
page-trouble-not-connected = Cet appareil n’est pas connecté : ouvrir la page et saisir le code affiché sur le terminal.
page-trouble-many-photos = Un dossier conserve au plus { $most } photos : en écarter.
page-trouble-no-first-photos = Les photos du trépied sont mesurées avec deux premières photos : les prendre d’endroits différents, puis installer le trépied.
page-trouble-which-step = Indiquer quelle étape de la fiche de montage les photos montrent : { $steps }.
page-trouble-many-files = Un dossier conserve au plus { $most } fichiers joints.
page-trouble-instrument = Choisir l’instrument qui a donné la valeur.
page-trouble-many-readings = Un dossier conserve au plus { $most } relevés.
page-trouble-cards = Toutes les cartes sont prises : clore les dossiers terminés.
page-trouble-no-camera = Aucun fichier d’appareil photo n’est disponible : en placer un là où le programme le cherche.
page-trouble-no-model = { $kind ->
    [setup] Fiche de montage « { $name } » introuvable : la placer là où le programme la cherche.
    [kit] Jeu de marqueurs « { $name } » introuvable : le placer là où le programme le cherche.
    [camera] Fichier d’appareil photo « { $name } » introuvable : le placer là où le programme le cherche.
   *[other] Fichier « { $name } » introuvable : le placer là où le programme le cherche.
}
page-trouble-sheet-exists = Une fiche de montage « { $name } » existe déjà : donner à celle-ci son propre nom.
page-trouble-sheet-needs = { $field ->
    [name] Saisir un nom court pour la fiche.
    [title] Saisir ce qui est calibré et avec quoi.
   *[source] Saisir d’où viennent ces valeurs : document et date.
}
page-trouble-sheet-name = Le nom court compte 3 à 60 minuscules, chiffres et traits d’union, par exemple front-radar-model-x.
page-trouble-choose-line = Choisir la ligne de référence.
page-trouble-choose-start = Choisir d’où part la distance.
page-trouble-sheet-empty = Saisir au moins une valeur requise avec sa tolérance.
page-trouble-figures-differ = { $quantity } : les deux valeurs saisies diffèrent : relire la source.
page-trouble-figure-once = { $quantity } : saisir la valeur dans les deux champs.
page-trouble-figure-alone = { $quantity } : saisir la valeur requise et sa tolérance, ou aucune des deux.
page-trouble-tolerance-zero = { $quantity } : une tolérance doit être supérieure à zéro.

## Whoever runs the page

page-serve-listen = impossible d’écouter sur { $address } ({ $why }) : indiquer un autre --listen ADDR:PORT, ou arrêter ce qui écoute là
page-serve-jobs = impossible d’utiliser { $jobs } comme dossier des interventions ({ $why }) : indiquer un autre --jobs DIR
page-serve-start = impossible de démarrer le serveur ({ $why })
page-tls-file = { $doing ->
    [write] impossible d’écrire { $file } ({ $why }) : vérifier le fichier ou en indiquer un autre
   *[read] impossible de lire { $file } ({ $why }) : vérifier le fichier ou en indiquer un autre
}
page-tls-holds = { $what ->
    [key] { $file } ne contient pas de clé privée au format PEM ("-----BEGIN ...") : indiquer le bon fichier
   *[certificate] { $file } ne contient pas de certificat au format PEM ("-----BEGIN ...") : indiquer le bon fichier
}
page-tls-pair = le certificat de { $certificate } et la clé de { $key } sont inutilisables ({ $why }) : indiquer une paire qui va ensemble
page-tls-name = « { $name } » n’est ni un nom d’hôte ni une adresse pour un certificat : utiliser lettres, chiffres, traits d’union et points
page-tls-make = impossible de créer un certificat ({ $why }) : utiliser --tls-cert et --tls-key
page-tls-other-name = { $own ->
    [yes] le certificat n’est pas établi pour « { $name } » et les navigateurs le signaleront : supprimer { $file } pour en faire créer un nouveau, auquel les téléphones devront de nouveau faire confiance
   *[no] le certificat n’est pas établi pour « { $name } » et les navigateurs le signaleront : indiquer avec --name pour quoi il est établi, ou en faire établir un pour ce nom, à la place de { $file }
}
page-tls-over = { $own ->
    [yes] le certificat a expiré et les navigateurs le signaleront : supprimer { $file } pour en faire créer un nouveau, auquel les téléphones devront de nouveau faire confiance
   *[no] le certificat a expiré et les navigateurs le signaleront : le renouveler, avec sa clé dans { $file }
}
page-tls-ends = { $own ->
    [yes] le certificat expire bientôt (jours restants : { $days }) : supprimer { $file } pour en faire créer un nouveau, auquel les téléphones devront de nouveau faire confiance
   *[no] le certificat expire bientôt (jours restants : { $days }) : le renouveler, avec sa clé dans { $file }
}
page-tls-changed = Le certificat a changé ; son SHA-256 est désormais { $print }
page-tls-kept = La page garde le certificat actuel : { $why }
page-tls-plain = Cette page est chiffrée : son adresse commence par https://
