# Ce que le programme dit de lui-même : `baywitness --help`, l'aide de chaque commande, le manuel,
# et ce qui ne va pas dans ce qui a été saisi.
#
# `help-COMMANDE` est la commande en une ligne (85 lettres au plus), ses attributs sont ses arguments par
# leur nom dans le programme ; `.about-more` vient sous la ligne, `.exit-codes` à la fin.

help-baywitness = Prouve par des photos ordinaires où se trouvait une cible de calibrage, avec une incertitude pour chaque valeur
help-shared =
    .cameras = Dire pour chaque photo quel appareil l’a prise, d’après le motif propre du capteur : un dossier de motifs faits par `camera fit --pattern` ; aucun code de sortie n’en dépend, et `audit` le garde dans cameras.jsonl
    .quiet = N’afficher que les erreurs : le code de sortie et les fichiers demandés disent le reste
    .language = Langue de tout ce que lisent les personnes : en, de, es ou fr (par défaut : celle de l’environnement) ; les fichiers pour programmes n’en ont pas
    .help = Afficher l’aide : -h en bref, --help en entier
    .version = Afficher la version
    .models = Répertoire avec setups/, kits/ et cameras/ où chercher les noms
    .threads = Nombre de fils d’exécution (par défaut : un par cœur)
    .json = Écrire le résultat en JSON dans un fichier, ou sur la sortie standard avec `-`
    .kit = Jeu de marqueurs : un fichier ou le nom d’un jeu
    .camera = L’appareil : un fichier ou un nom parmi les modèles (par défaut : d’après les données de chaque photo)
    .setup = Fiche de montage : un fichier ou le nom d’une fiche
    .signers = Quelles signatures comptent : un fichier de signataires autorisés, comme les connaît ssh-keygen
    .credential_anchors = Quelles attestations de contenu (C2PA) comptent : certificats (PEM) qui répondent des signataires des photos ; demande un programme construit avec l’option `credentials`
    .log = Inscrire chaque verdict dans ce journal des essais avant de le montrer (créé par `baywitness log new DIR --origin NAME`)
    .log_keys = Quels journaux des essais comptent : un fichier de clés de vérification de journaux et de témoins, une par ligne
    .evidence = Dossier de preuve, aussi en un seul fichier
    .paths = Répertoires qui contiennent des dossiers d’intervention et de preuve, ou qui en sont
    .sign_pdf = Signer le rapport PDF avec cette clé privée (PEM ; `baywitness certificate NAME --out FILE` en crée une)
    .certificate = Le certificat de la clé qui signe le rapport (PEM, suivi de ceux qui s’en portent garants), s’il n’est pas dans le fichier de la clé
    .certificates = Quelles signatures de rapports PDF comptent : les certificats des signataires eux-mêmes (PEM)
help-with-default = { $help } (par défaut : { $value })
help-help = Afficher l’aide d’une commande

## La page de toutes les commandes

help-usage = Utilisation :
help-usage-options = [OPTIONS]
help-usage-command = COMMANDE
help-arguments = Paramètres :
help-options = Options :
help-commands = Commandes :
help-start = Pour commencer :
    .sheet = un jeu de marqueurs à imprimer, découper et coller
    .new = un dossier d’intervention ; les photos vont dans JOB/photos
    .verify = le verdict, et un rapport à transmettre
help-each = Chaque commande a sa propre aide : { $command }
help-phase-prepare = Préparer
    .when = jeu de marqueurs, appareil, fiche de montage et poste, une fois et à chaque changement
help-phase-measure = Mesurer
    .when = à chaque dossier
help-phase-prove = Prouver
    .when = des preuves à transmettre et à contrôler
help-phase-oversee = Superviser
    .when = de nombreux dossiers
help-phase-train = S’exercer
    .when = des postes inventés
help-phase-tools = Outils
    .when = pour d’autres programmes et l’interpréteur de commandes

## Titres du manuel

help-man-name = NOM
help-man-synopsis = SYNOPSIS
help-man-description = DESCRIPTION
help-man-options = OPTIONS
help-man-commands = COMMANDES
help-man-codes = CODES DE SORTIE
help-man-version = VERSION

## Ce qui ne va pas dans ce qui a été saisi

help-wrong-argument = paramètre inconnu « { $argument } »
help-wrong-command = il n’y a pas de commande « { $command } »
help-wrong-value = « { $value } » ne convient pas pour { $argument } : { $why }
help-wrong-choice = « { $value } » ne convient pas pour { $argument } : choisir parmi { $known }
help-no-value = { $argument } demande une valeur
help-too-many-values = { $argument } n’admet pas d’autre valeur : enlever « { $value } »
help-number-of-values =
    { $wanted ->
        [one] { $argument } admet une valeur, données : { $actual }
       *[other] { $argument } admet { $wanted } valeurs, données : { $actual }
    }
help-conflict = { $argument } ne va pas avec { $others }
help-twice = { $argument } ne peut être donné qu’une fois
help-missing = il manque encore : { $arguments }
help-missing-command = « { $command } » demande une commande : { $known }
help-no-text = ce qui a été saisi n’est pas de l’Unicode valide (UTF-8)
help-wrong-otherwise = mauvaise utilisation : { $why }
help-did-you-mean = Fallait-il lire { $names } ?
help-more = Pour en savoir plus : { $command } --help
help-not-whole = donner un nombre entier
help-not-whole-within = donner un nombre entier de { $from } à { $to }
help-not-number = donner un nombre, comme 12.5
help-not-address = donner une adresse avec un port, comme 127.0.0.1:8425
help-not-choice = choisir parmi { $known }

## Codes de sortie communs à plusieurs commandes

help-job-codes = Code de sortie : 0 dans la tolérance, 1 hors tolérance, 2 illisible, 3 non prouvé, 4 photos à refaire ; de plusieurs dossiers, le premier rencontré parmi 2, 4, 1, 3, 0
help-fit-codes = Code de sortie : 0 fait, 2 illisible, 3 inutilisable, ou trop peu pour en dire quelque chose

## Préparer

help-sheet = Produire un jeu de marqueurs ou une mire d’appareil en PDF à taille réelle
    .about-more = Les règles de chaque feuille montrent ce que l’imprimante a vraiment fait, les dessins comment construire chaque porte-marqueurs.
    .model = Jeu ou mire : un fichier ou un nom parmi les modèles
    .out = Le PDF à écrire
    .paper = Le papier de l’imprimante : a4, a3 ou letter
    .measured_mm = Ce qui se lit sur les deux règles de contrôle de 160,0 mm après impression sur ce papier, vers la droite et vers le haut
    .corrected = Où écrire le jeu ou la mire avec les tailles imprimées
    .models = Un répertoire de modèles où chercher d’abord
help-camera = Ajuster un appareil sur des photos d’une mire
help-camera-fit = Ajuster un appareil sur 12 à 20 photos d’une mire, ou sur des photos d’un jeu mesuré
    .exit-codes = { help-fit-codes }
    .photos = Photos de la mire (ou du jeu), toutes d’un même appareil au même zoom
    .board = La mire, ou à sa place un jeu mesuré : un fichier ou un nom parmi les modèles
    .out = Le fichier d’appareil à écrire
    .model = Le modèle d’objectif : brown-conrady pour la plupart, kannala-brandt pour les très grands angles
    .report = Écrire dans ce répertoire une page avec résidus, couverture et incertitude
    .pattern = Écrire aussi le motif propre du capteur, auquel verify, check et audit --cameras reconnaissent les photos de l’appareil ; son nom finit par .pattern
help-survey = Trouver où les marqueurs d’un jeu se trouvent vraiment sur leurs porte-marqueurs
    .about-more = L’échelle vient de longueurs mesurées sur le jeu ; ce qui est trouvé est écrit avec sa covariance.
    .exit-codes = { help-fit-codes }
    .photos = Six photos du jeu ou plus, de tous les côtés ; rien ne bouge entre elles
    .kit = Le jeu tel que construit : un fichier ou un nom parmi les modèles
    .out = Le jeu mesuré à écrire ; sa disposition est écrite à côté
    .lengths = Une longueur mesurée entre deux coins de marqueurs avec son incertitude-type, comme 10:tl,13:tr=1200.4~0.3 (coins tl tr br bl, ou 0 à 3 dans cet ordre) ; peut être répété
    .apart = Les porte-marqueurs peuvent avoir bougé les uns par rapport aux autres entre les photos : mesurer chacun séparément
    .serial = Numéro de série à écrire dans le jeu
    .due = Quand le jeu doit être mesuré de nouveau, comme 2027-05-01
    .report = Écrire dans ce répertoire une page avec une image de chaque porte-marqueurs
    .models = Répertoire avec kits/ et cameras/ où chercher les noms
help-seating = Mesurer la répétabilité de l’assise d’une plaque de roue
    .about-more = La plaque est fixée encore et encore pendant que le support reste en place ; un demi-tour de la roue ajoute le voile de la plaque.
    .exit-codes = { help-fit-codes }
    .seatings = Un répertoire de photos pour chaque fixation de la plaque, ou des fichiers de résultat de `verify --json`
    .kit = Le jeu : un fichier ou un nom parmi les modèles
    .plate = La plaque : un porte-marqueurs du jeu
    .against = Un porte-marqueurs resté en place (par défaut : le premier support de cible)
    .turned = De même après un demi-tour de la roue, la plaque restant fixée : donne le voile
    .out = Le jeu à écrire, avec l’assise trouvée à cette plaque
help-gauge = Répartir la dispersion de relevés entre système de mesure, personnes et pièces
    .readings = Relevés : un fichier CSV avec les colonnes operator, part et value
    .method = Comment la dispersion est répartie : range (moyenne et étendue) ou anova (analyse de la variance) ; si omis, les deux
help-recheck = Contrôler une référence fixe par rapport à sa première mesure
    .about-more = Chaque contrôle ajoute une ligne à un journal, et des cartes de contrôle les montrent toutes.
    .exit-codes = Code de sortie : 0 en ordre, 2 illisible, 3 quelque chose a bougé ou n’a pas pu être mesuré
    .photos = Photos de la référence, quatre ou plus de différents côtés
    .kit = La référence telle que mesurée d’abord : le jeu écrit par `survey`
    .log = Le journal de tous les contrôles ; une ligne est ajoutée
    .date = Le jour, si les données des photos ne le disent pas
    .report = Écrire les cartes de contrôle dans ce répertoire
help-setup = Expliquer et examiner une fiche de montage
help-setup-check = Expliquer une fiche de montage, trouver ses contradictions, dire quel jeu permet de trancher
    .exit-codes = Code de sortie : 0 en ordre, 2 illisible, 3 elle se contredit ou aucun jeu ne tranche tous les contrôles
    .kit = Jeu de marqueurs à essayer : un fichier ou le nom d’un jeu (par défaut : tous ceux trouvés par leur nom)
    .camera = Fichier d’appareil ou nom d’un appareil
    .report = Écrire setup.html dans ce répertoire
help-plan = Dire où se placer et ce que vaudront les photos
    .about-more = Dit combien de photos il faut au moins, et que changer là où aucune photo ne permettrait de trancher.
    .exit-codes = Code de sortie : 0 chaque contrôle peut être tranché, 2 illisible, 3 l’un ne peut pas l’être
    .camera = Fichier d’appareil ou nom d’un appareil ; demo-phone est un appareil inventé pour la démonstration
    .job = Dossier d’intervention ou job.toml avec les dimensions du véhicule (par défaut : une voiture moyenne)
    .earlier = Un dossier antérieur avec le même téléphone (un répertoire), peut être répété : on compte avec le bruit de coins de ses photos et la rotation de la main (par défaut : celui trouvé par l’ajustement de l’appareil)
    .photos = Tant de photos (par défaut : le moins qui tranche chaque contrôle)
    .from = Une position de l’appareil en mm : devant l’essieu arrière, à gauche du véhicule, au-dessus du sol ; une fois par photo
    .after_move = Dire aussi d’où une photo vaut le plus après un déplacement du support
    .width = Largeur libre du poste, mm
    .ahead = Longueur libre devant l’avant du véhicule, mm (par défaut : ce que demande la fiche, sinon 6000)
    .post = Un poteau où personne ne peut se tenir : devant l’essieu arrière, à gauche, mm ; peut être répété
    .json = Écrire le plan en JSON dans un fichier, ou sur la sortie standard avec `-`
    .report = Écrire plan.html et plan.svg dans ce répertoire
help-bay = Mesurer à quel point le sol d’un poste est horizontal et plan
    .about-more = Des feuilles de sol réparties sur le poste sont mesurées par rapport au plan des roues : pente, défauts de planéité, longueur libre.
    .exit-codes = Code de sortie : 0 dans chaque limite, 1 hors d’une limite, 2 illisible, 3 l’une n’est pas prouvée
    .photos = Photos des feuilles de sol et des plaques de roue ; des photos voisines en ont en commun
    .camera = Fichier d’appareil ou nom d’un appareil
    .setup = Fiche de montage avec [limits] : un fichier ou le nom d’une fiche
    .job = Dossier d’intervention ou job.toml avec les dimensions du véhicule
    .report = Écrire bay.html et bay.svg dans ce répertoire

## Mesurer

help-new = Créer un dossier d’intervention à remplir
    .about-more = job.toml contient tout ce qu’un dossier peut dire, ce qui n’est pas encore connu en commentaire ; les photos vont dans photos/.
    .folder = Le répertoire du dossier, qui est créé ; sa dernière partie est le numéro du dossier
    .setup = Fiche de montage : un nom parmi les modèles, comme le prend `setup check`
    .kit = Jeu de marqueurs, un nom parmi les modèles
    .camera = Appareil, un nom parmi les modèles ; si omis, les données de chaque photo choisissent
help-verify = Mesurer les photos d’un dossier et trancher les contrôles de sa fiche de montage
    .about-more = Le rapport est une page (HTML), la même en PDF, le résultat en JSON, et une page pour le client. Les essais d’un ordre de réparation (`series` dans job.toml) donnés ensemble sont comparés et énumérés sur une page de plus. Après une correction, une photo suffit : `verify --moved c.jpg JOB` l’ajoute au dossier et la mesure avec les premières.
    .exit-codes = { help-job-codes }
    .jobs = Dossiers d’intervention
    .moved = Une photo du support après que lui seul a été déplacé : elle est copiée dans le dossier et y est inscrite ; à répéter pour chaque autre photo de cet endroit
    .more = Une photo de plus du support là où les dernières photos l’ont trouvé
    .step = L’étape de la fiche de montage que montrent ces photos, si la fiche a des étapes
    .json = Écrire le résultat en JSON dans un fichier, ou sur la sortie standard avec `-`
    .report = Écrire le rapport dans ce répertoire
    .private = Montrer aussi ce que les données des photos contiennent sur des personnes et des choses : lieux, numéros de série, noms
help-watch = Vérifier chaque dossier sous un répertoire à l’arrivée de ses photos
    .about-more = Avec --tripod : prend les photos de l’appareil d’un dossier, posé sur un trépied pendant qu’on tourne les vis du support. Après chaque arrêt à un nouvel endroit, dit le verdict et la première chose à faire.
    .exit-codes = { help-job-codes }
    .folder = Un dossier d’intervention, ou un répertoire qui en contient
    .tripod = Ajouter au seul dossier DIR les photos d’un appareil sur trépied qui arrivent dans ce répertoire : de chaque endroit où le support est au repos, la plus récente ; rien n’est changé dans le répertoire
    .step = L’étape de la fiche de montage que montrent les photos du trépied, si la fiche a des étapes
    .report = Écrire les rapports dans ce répertoire
    .every = Regarder toutes les tant de secondes
    .once = Terminer après le premier regard, avec le code de sortie du plus mauvais dossier, comme `verify`
help-serve = Servir la page du technicien, que les téléphones ouvrent au poste
    .about-more = Les photos sont jugées à leur arrivée ; viennent ensuite le verdict, quoi déplacer et dans quel sens, d’autres essais et la clôture dans un dossier de preuve.
    .listen = Où écouter ; toute autre adresse que 127.0.0.1 demande à chaque appareil le code affiché dans ce terminal
    .jobs = Le répertoire des dossiers d’intervention ; créé s’il n’existe pas
    .key = Signer les dossiers clos avec cette clé de ssh-keygen (ed25519) ; un fichier .pub en nomme une que détient l’agent
    .tls_cert = Chiffrer avec ce certificat (PEM, suivi de ceux qui s’en portent garants) ; relu quand il change
    .tls_key = La clé privée du certificat (PEM)
    .tls_own = Chiffrer avec un certificat propre à la page, créé une fois et gardé avec les dossiers
    .names = Ce que l’on saisit sur les téléphones pour cette machine, comme bay.example ; le certificat propre le porte ; peut être répété
    .log = Inscrire chaque verdict qui a changé dans ce journal des essais avant de le montrer (créé par `baywitness log new DIR --origin NAME`)
help-explain = Dire ce que signifie un code d’un rapport ou un code de sortie
    .about-more = Pour un constat : ce qu’il signifie, d’où il vient, comment le voir au poste, et que faire.
    .codes = Codes tels qu’ils figurent dans un rapport, ou codes de sortie ; si omis, tous les codes en une ligne chacun

## Prouver

help-seal = Sceller un dossier avec son résultat et son rapport dans un dossier de preuve
    .about-more = Le dossier de preuve est un sac BagIt avec empreintes SHA-512, signé avec --key comme le fait `ssh-keygen -Y sign -n baywitness-evidence`. Les dossiers d’un ordre de réparation sont scellés côte à côte, chacun dans un répertoire qui se contrôle et se transmet seul ; index-sha512.txt les lie.
    .jobs = Dossier d’intervention ; plusieurs d’un même ordre de réparation (`series`) reçoivent chacun un dossier de preuve, et un index commun
    .out = Le dossier de preuve à créer ; un nom qui se termine par .tar en fait un seul fichier ; pour plusieurs dossiers, le répertoire qui contient les leurs
    .key = Signer avec cette clé de ssh-keygen (ed25519) ; un fichier .pub en nomme une que détient l’agent
    .timestamp = Joindre cette réponse d’une autorité d’horodatage (RFC 3161), donnée à une demande du même dossier et de la même clé
    .timestamp_request = Écrire aussi la demande à envoyer à une autorité d’horodatage
    .log = Inscrire chaque dossier dans ce journal des essais et en sceller la preuve (créé par `baywitness log new DIR --origin NAME`)
help-certificate = Créer un certificat propre à l’atelier, pour signer des rapports PDF
    .about-more = Pour un atelier qui n’en a pas d’une autorité. Il se porte garant de lui-même : qui lit les rapports le reçoit de l’atelier, ou son SHA-256. `verify --report`, `watch`, `seal` et `serve` signent avec lui (--sign-pdf).
    .name = Qui signe : le nom de l’atelier, tel que le verront les lecteurs d’un rapport
    .out = Le fichier à créer : clé privée et certificat (PEM), lisible par son propriétaire seul ; à côté, avec l’extension .crt, le certificat à remettre
    .years = Combien d’années il vaut, 10 au plus
help-stamp = Horodater un dossier de preuve ou un rapport PDF signé
    .about-more = Écrit la demande pour une autorité d’horodatage (RFC 3161), et range sa réponse dans le dossier ou le rapport.
    .folder = Dossier de preuve, aussi en un seul fichier, ou un rapport PDF signé
    .request = Écrire la demande (RFC 3161) à envoyer à une autorité d’horodatage
    .answer = Ranger la réponse de l’autorité dans le dossier ou le rapport
help-check = Contrôler un dossier de preuve et mesurer de nouveau ses photos
    .about-more = Regarde chaque octet, la signature et les horodatages, et compare le résultat et ses rapports avec ce que disent maintenant les photos. D’une copie masquée, il mesure les photos masquées et dit jusqu’où cela va. D’un rapport PDF signé, il dit si ses octets sont ceux qui ont été signés, par qui et depuis quand.
    .exit-codes = Code de sortie : 0 intact et signé par un signataire de la liste, 1 modifié, 2 illisible, 3 intact mais non signé, signataire inconnu ou verdict non confirmé
    .folder = Dossier de preuve, aussi en un seul fichier, ou un rapport PDF signé
    .timestamp_ca = Quels horodatages comptent : certificats racines d’autorités (PEM)
    .log = Le journal des essais tel qu’il est maintenant : il doit encore commencer par ce pour quoi la preuve du dossier a été signée
    .json = Écrire les contrôles en JSON dans un fichier, ou sur la sortie standard avec `-`
help-redact = Copier un dossier de preuve, photos masquées sauf les marqueurs
    .about-more = La copie se contrôle encore avec les empreintes scellées ; les rapports et annexes sont laissés de côté. Un dossier dont les photos ne donnent pas le résultat n’est pas copié.
    .folder = { help-shared.evidence }
    .out = La copie à créer ; un nom qui se termine par .tar en fait un seul fichier
    .show = Ce qui reste visible d’autre sur chaque photo, vue droite : gauche, haut, droite, bas en pour cent

## Superviser

help-audit = Juger une archive de dossiers d’intervention et de preuve
    .about-more = Utilise tous les cœurs et reprend où il en était après toute interruption. Écrit une page, un tableau (CSV), une ligne par dossier et chaque résultat en entier ; compilé avec l’option `parquet`, aussi audit.parquet. Les preuves en un seul fichier (.tar) sont prises aussi.
    .exit-codes = { help-job-codes }
    .out = Où vont les résultats et le rapport ; à la prochaine exécution, seul le nouveau ou le modifié est jugé
    .stdin = Lire des chemins de dossiers sur l’entrée standard et écrire une ligne JSON pour chacun sur la sortie standard
    .recompute = Juger de nouveau ce qui l’a été par n’importe quelle version du programme, et énumérer ce que cela change
    .log = Confronter l’archive à ce journal des essais ; ce qui diffère va dans log.json, le point de contrôle le plus récent dans log-checkpoint
    .log_keys = Quels journaux et témoins comptent : un fichier de clés de vérification, une par ligne
    .log_earlier = Un point de contrôle du journal gardé d’avant (celui du répertoire de l’audit est utilisé dans tous les cas)
    .log_orders = Le secret du journal qui dit de quel ordre de réparation était un essai manquant (par défaut : DIR.private/order-salt, s’il y est)
help-log = Tenir et contrôler le journal des essais, où l’on ne fait qu’ajouter
    .about-more = `verify --log`, `seal --log` et `serve --log` y inscrivent chaque verdict, de sorte qu’aucun essai ne puisse être enlevé, ajouté après coup ou modifié sans que cela se voie. Le répertoire est un journal de transparence en tuiles (C2SP tlog-tiles) que tout serveur de fichiers publie tel quel ; ce qui doit rester privé est à côté, dans DIR.private.
    .folder = Le répertoire du journal
help-log-new = Créer un journal vide avec sa propre clé
    .about-more = Affiche la clé de vérification à publier. La clé privée et le secret qui masque les ordres de réparation sont dans DIR.private.
    .origin = Le nom du journal, comme adresse web sans https://, par exemple shop.example/attempts
help-log-show = Énumérer les entrées les plus récentes
    .last = Combien
help-log-check = Contrôler chaque entrée, empreinte et signature, aussi face aux points de contrôle gardés
    .exit-codes = Code de sortie : 0 il tient, 1 il a été réécrit, tronqué, bifurqué ou modifié, 2 illisible, 3 il tient, mais aucune clé qui compte ne l’a signé ou des heures ne sont pas dans l’ordre
    .keys = Quels journaux et témoins comptent : un fichier de clés de vérification, une par ligne
    .earlier = Un point de contrôle gardé d’avant ; peut être répété
help-log-witness = Contresigner en témoin le dernier point de contrôle, s’il continue ce que le témoin a vu
    .about-more = À exécuter sur une autre machine que celle du journal, sur le répertoire partagé ou une copie. Le point de contrôle contresigné va dans DIR/witnessed ; depuis une copie, il y est rapporté.
    .exit-codes = Code de sortie : 0 contresigné, 1 refusé : le journal a été réécrit, tronqué, bifurqué ou modifié, 2 illisible, clé du journal lui-même, ou souvenir d’un autre journal
    .key = La clé de ssh-keygen (ed25519) du témoin, sans autre usage
    .name = Le nom du témoin, comme association.example/witness
    .keys = La clé de vérification du journal : un fichier avec une clé par ligne
    .seen = Où ce témoin se souvient de ce qu’il a vu (par défaut : KEY.seen ; pour chaque autre journal, un fichier à côté)
help-trends = Dire quelles erreurs se produisent, où et depuis quand
    .about-more = Lit ce qu’a écrit `audit` ou `verify --json`. Compare les premiers essais et distingue personnes, postes, fiches de montage et jeux, autant que l’archive le permet ; ne nomme que ce qui ressort au-delà du hasard.
    .paths = Répertoires d’audits ou de résultats, ou fichiers de résultats (JSON, ou un par ligne)
    .out = Répertoire pour report.html, trends.json, trends.csv et jobs.csv
    .by = Ce que la page compare d’abord : technician (personnes), bay (postes), setup (fiches de montage) ou vehicle (véhicules)
    .names = Montrer les noms des personnes ; sinon des pseudonymes, les mêmes tant que people.key reste dans le répertoire
    .reports = Répertoire des rapports des dossiers (`verify --report`), pour les relier
help-due = Énumérer les dossiers à durée de conservation échue et les horodatages à renouveler
    .about-more = Rien n’est supprimé.
    .on = Le jour (par défaut : aujourd’hui)
    .ahead = Les horodatages qui prennent fin dans tant de jours sont échus
    .json = Écrire la liste en JSON dans un fichier, ou sur la sortie standard avec `-`

## S'exercer

help-gallery = Montrer chaque erreur dans un poste inventé, avec cause et remède
    .about-more = Photos et valeurs sans l’erreur et avec elle.
    .out = Répertoire où écrire gallery.html avec ses images, dossiers et rapports
    .codes = Codes à montrer ; si omis, tous
help-drill = S’exercer sur des dossiers inventés aux erreurs cachées
    .dir = Le répertoire de l’exercice
help-drill-new = Créer des dossiers aux erreurs cachées
    .level = 1 : une grande erreur, jusqu’à 5 : jusqu’à trois petites, ou aucune
    .count = Combien de dossiers
    .out = Répertoire à créer ; il ne doit pas déjà contenir un exercice
    .seed = Le même nombre redonne les mêmes erreurs
help-drill-answer = Dire ce qui ne va pas dans un dossier ; plusieurs erreurs sont plusieurs réponses
    .job = Le dossier, comme DRILL-01
    .finding = Le code du constat, ou none
    .way = Dans quel sens déplacer : HOW-TO.txt énumère les mots
    .size = De combien, mm ou degrés
help-drill-mark = Noter les réponses et les ajouter à la progression de l’apprenant
    .trainee = Qui s’est exercé
    .progress = Où la progression est gardée (par défaut : drills.jsonl à côté du répertoire de l’exercice) ; sa page est écrite à côté
    .day = Jour de la notation (par défaut : aujourd’hui)
help-stage = Calculer un poste inventé : un dossier d’intervention et ce qui y est vrai
    .scene = Fichier de scène (scene/1)
    .out = Répertoire où écrire ; créé s’il n’existe pas, les fichiers qui s’y trouvent sont écrasés
    .truth_only = N’écrire que les valeurs de truth.json dans le terminal, sans calculer d’images

## Outils

help-detect = Trouver les marqueurs de photos, avec l’incertitude de chaque coin
    .photos = Photos (JPEG, PNG ou HEIC)
    .json = Écrire ce qui a été trouvé en JSON dans un fichier, ou sur la sortie standard avec `-`
help-schema = Afficher le schéma JSON de ce qu’écrit le programme
    .format = Un format, comme result/1 ; si omis, ceux qui existent sont énumérés
help-completions = Afficher ce dont un interpréteur de commandes a besoin pour compléter ces commandes
    .shell = L’interpréteur de commandes : bash, elvish, fish, powershell ou zsh
help-man = Écrire les pages du manuel
    .out = Répertoire pour une page du programme et une de chaque commande
