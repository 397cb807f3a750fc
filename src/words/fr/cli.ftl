# Ce que disent les commandes dans le terminal, quand cela n'appartient pas à un autre fichier.

## Erreurs, notes, fichiers

cli-error = erreur : { $message }
cli-note = note : { $words }
cli-cannot-read = impossible de lire { $path } : { $why } ; vérifier le nom et les droits d’accès
cli-not-over-a-photo = { $path } est une photo et reste telle quelle : nommer un autre fichier à écrire. Une option qui écrit prend ce qui la suit ; les photos vont devant elle
cli-not-over-no-json = { $path } existe déjà, n’est pas un fichier JSON et reste tel quel : nommer un autre fichier après --json, ou - pour la sortie standard
cli-not-over-an-input = { $path } est un fichier du dossier { $job } et reste tel quel : nommer un autre fichier après --json
cli-no-utf8 = { $path } n’est pas un texte en UTF-8 : l’enregistrer en UTF-8 (un tableur dit « CSV UTF-8 »)
cli-cannot-write = impossible d’écrire { $path } : { $why } ; vérifier les droits d’accès et la place libre du répertoire, ou en nommer un autre
cli-cannot-make-folder = impossible de créer le répertoire { $path } : { $why } ; vérifier les droits d’accès du répertoire au-dessus, ou en nommer un autre
cli-cannot-unpack = impossible de créer un répertoire où déballer : { $why }
cli-no-stdout = impossible d’écrire sur la sortie standard : { $why }
cli-no-threads = impossible de lancer { $count } fils d’exécution : { $why }
cli-no-date = « { $text } » n’est pas une date : l’écrire comme 2027-05-01
cli-no-area = « { $text } » n’est pas une zone : écrire gauche, haut, droite, bas en pour cent, comme 10,20,60,90
cli-no-schema = « { $format } » n’a pas de schéma : nommer l’un de { $known }
cli-no-evidence = { $folder } n’est pas un dossier de preuve : en nommer un fait par `baywitness seal`
cli-no-carrier = le jeu { $kit } n’a pas de porte-marqueurs { $name } ; il a : { $known }
cli-no-photo = le répertoire { $folder } ne contient aucune photo
cli-no-photo-but-below = le répertoire { $folder } ne contient aucune photo : nommer son répertoire { $photos }
cli-job-twice = { $job } et { $again } sont le même dossier : nommer chaque dossier une fois
cli-jobs =
    { $count ->
        [1] un dossier
       *[other] { $count } dossiers
    }
cli-verdict =
    { $verdict ->
        [within] dans la tolérance
        [outside] hors tolérance
        [not_proven] non prouvé
       *[retake] photos à refaire
    }
cli-passphrase = Phrase secrète de { $key } :

## `baywitness` seul

cli-next = Ce qui peut être fait maintenant :
cli-next-more = ... et { $count } de plus. Tous à la fois : baywitness audit . --out audit
cli-next-all-commands = Toutes les commandes : baywitness --help
cli-next-sealed = { $folder } : scellé
cli-next-not-ready = { $folder } : pas encore prêt
cli-next-photos =
    { $count ->
        [1] { $folder } : une photo
       *[other] { $folder } : { $count } photos
    }
cli-next-one-more = en prendre au moins une de plus, de l’autre côté, de trois quarts avant
cli-next-answer = répondre dans [prerequisites] de job.toml : { $questions }

## new : le fichier du dossier

cli-new-made = Remplir { $folder }/job.toml ; les photos vont dans { $folder }/photos. Ensuite : baywitness verify { $folder }
cli-new-is-there = { $folder } existe déjà : choisir un autre nom, rien n’est écrasé
cli-new-no-number = { $folder } ne donne pas de numéro au dossier : terminer par un numéro, comme jobs/D-0042
cli-new-sheet = fiche de montage { $sheet } : { $key } { $problem } ; { $remedy }
cli-new-source = Source : { $source }
cli-new-camera = si omis, les données de chaque photo choisissent
cli-new-series = ordre de réparation : partagé par ses essais et capteurs
cli-new-wheelbase = comparé aux photos ; utilisé seul là où elles ne montrent aucune plaque avant
cli-new-nose = comparé aux photos ; utilisé seul là où elles ne montrent pas la marque avant
cli-new-hub = comparé aux photos ; utilisé seul là où elles ne montrent aucune feuille de sol
cli-new-rear-track = de moyeu à moyeu : dit si les plaques arrière sont sur leurs moyeux
cli-new-front-track = de moyeu à moyeu : dit si les plaques avant sont sur leurs moyeux
cli-new-required = { $question } (obligatoire)
cli-new-reading = relevé au laser, au mètre ruban, au niveau ou au banc de géométrie
cli-new-steps = Cette fiche a les étapes { $steps } : dire de chaque photo laquelle elle montre.

## Photos ajoutées à un dossier

cli-move-step-lacks = la fiche de montage « { $sheet } » a des étapes : indiquer laquelle la photo montre : { $steps }
cli-move-no-steps = la fiche de montage « { $sheet } » n’a pas d’étapes : enlever --step "{ $step }"
cli-move-no-such-step = « { $step } » n’est pas une étape de la fiche de montage « { $sheet } » : en indiquer une : { $steps }
cli-move-too-often = le support de { $job } a déjà été déplacé { $most } fois : commencer un nouveau dossier
cli-move-is-there = { $photo } est déjà une photo de { $job } : en nommer une nouvelle ; si le support a été déplacé avant elle, écrire `after_move = 1` à son [[photo]] dans job.toml
cli-move-no-name = { $file } n’a pas de nom qui puisse figurer dans un fichier de dossier : le renommer
cli-move-name-taken = { $folder } contient d’autres photos nommées { $name } : renommer la nouvelle

## watch --tripod

cli-tripod-no-folder = { $folder } n’est pas un répertoire : indiquer celui où arrivent les photos de l’appareil
cli-tripod-too-few =
    { $count ->
        [0] { $job } n’a pas encore de première photo : en prendre deux d’endroits différents et les vérifier, puis installer le trépied
        [one] { $job } n’a qu’une première photo : en prendre une de plus d’un autre endroit et les vérifier, puis installer le trépied
       *[other] { $job } n’a que { $count } premières photos : en prendre d’autres d’autres endroits et les vérifier, puis installer le trépied
    }
cli-tripod-left-out =
    { $count ->
        [one] Une image est déjà dans { $folder } : elle n’est pas prise en compte.
       *[other] { $count } images sont déjà dans { $folder } : elles ne sont pas prises en compte.
    }
cli-tripod-watching = Surveillance de { $folder } pour { $job } ; Ctrl-C pour terminer.
cli-tripod-line = { $photo } : { $what }
cli-tripod-kept = { $seen } : { $kept }
cli-tripod-verdict = Après le déplacement { $move } : { $verdict }. { $reason }
cli-tripod-do-first = D’abord :

## detect, gauge, stage, due

cli-detect-photo =
    { $count ->
        [1] { $photo } : un marqueur, flou { $blur } px, décalage des bords { $offset } px (corrigé)
       *[other] { $photo } : { $count } marqueurs, flou { $blur } px, décalage des bords { $offset } px (corrigé)
    }
cli-detect-marker =
    { $covered ->
        [yes] { $side } px, coins { $corners } ± { $u } px, un coin est caché
       *[no] { $side } px, coins { $corners } ± { $u } px
    }
cli-detect-corner = ({ $u } ; { $v })
cli-gauge-line = { $file }, ligne { $line } : { $why }
cli-gauge-head = l’en-tête doit nommer les colonnes operator, part et value
cli-gauge-reading = demande un opérateur (operator), une pièce (part) et un nombre comme valeur (value)
cli-gauge-cells = a { $found } cellules, l’en-tête en a { $wanted } : séparer par « { $separator } » comme l’en-tête, avec un point décimal si c’est une virgule
cli-gauge-range = Moyenne et étendue (AIAG MSA)
cli-gauge-anova = Analyse de la variance (AIAG MSA)
cli-gauge-deviations = { $method } : répétabilité { $repeatability }, reproductibilité { $reproducibility }, système de mesure { $gauge }, pièces { $parts } (écarts types)
cli-gauge-share = le système de mesure fait { $percent } % de la dispersion totale ; catégories distinguées : { $categories } (cinq suffisent)
cli-gauge-untold = les lectures répétées et celles de plusieurs opérateurs ne diffèrent pas : la part du système de mesure et le nombre de catégories distinguées ne peuvent être dits
cli-staged =
    { $count ->
        [1] { $folder } : une photo et truth.json
       *[other] { $folder } : { $count } photos et truth.json
    }
cli-due-may-go = à conserver jusqu’au { $day } : peut être supprimé
cli-due-stamp = horodatage valable jusqu’au { $day } : horodater de nouveau
cli-due-sum = échus au { $on } : { $due }, pas encore : { $kept } ; rien n’a été supprimé

## seating

cli-seating-times =
    { $count ->
        [1] { $plate } : fixée une fois ; écarts à la moyenne le long de ses propres axes et autour d’eux
       *[other] { $plate } : fixée { $count } fois ; écarts à la moyenne le long de ses propres axes et autour d’eux
    }
cli-seating-scatter = La mesure seule se disperse de { $mm } mm et { $degrees } degrés (retranché)
cli-seating-keys = { $keys } (1 sigma, élargi pour { $freedom } degrés de liberté)
cli-seating-run-out = Roue tournée de { $turn }° : axe de rotation écarté de { $camber }° autour de x (carrossage) et de { $heading }° autour de z (direction) de celui de la plaque.
cli-seating-beside = L’axe de rotation passe { $ahead } mm devant et { $above } mm au-dessus du point de moyeu de la plaque.
cli-seating-rolled = La roue a continué de rouler ; rien n’est dit du point de moyeu.
cli-seating-head =
    { $count ->
        [1] Assise de { $plate } d’après une fixation.
       *[other] Assise de { $plate } d’après { $count } fixations.
    }
cli-seating-no-target = le jeu n’a pas de support de cible : nommer un porte-marqueurs avec --against
cli-seating-no-result = { $path } n’est ni un répertoire de photos ni le résultat d’un dossier ({ $why }) : l’écrire avec verify --json

## seal, stamp, redact

cli-sealed-one = Dossier { $job } scellé, verdict : { $verdict }, dans { $folder }, fichiers : { $files }.
cli-sealed-signed = Signé pour « { $namespace } » sur { $file }.
cli-sealed-unsigned = Non signé : il montre les changements fortuits, pas les changements voulus. Sceller avec --key pour signer.
cli-sealed-send = Envoyer { $file } à une autorité d’horodatage, puis : baywitness stamp { $folder } --answer FILE
cli-sealed-check = Contrôlable à tout moment : baywitness check { $folder }
cli-sealed-several =
    { $count ->
        [1] Un dossier de l’ordre de réparation { $order } scellé, dans son propre dossier de preuve :
       *[other] { $count } dossiers de l’ordre de réparation { $order } scellés, chacun dans son propre dossier de preuve :
    }
cli-sealed-index = L’index { $file } les lie. Chaque dossier est contrôlable à tout moment : baywitness check FOLDER
cli-seal-several-folders = plusieurs dossiers deviennent des répertoires, chacun avec son horodatage : les sceller dans un répertoire sans --timestamp, puis `baywitness stamp` chacun, ou les sceller un par un
cli-seal-no-series = des dossiers ne sont scellés ensemble que si tous indiquent le même ordre de réparation (`series` dans job.toml) : l’indiquer, ou les sceller un par un
cli-seal-no-name = { $path } n’est pas un nom
cli-stamp-request = Écrit : { $file }. L’envoyer à une autorité d’horodatage, puis : baywitness stamp { $folder } --answer FILE
cli-stamp-no-answer = nommer la réponse avec --answer
cli-stamped = { $folder } horodaté : heure selon { $authority } : { $when }. Horodater de nouveau avant le { $ends }, fin du certificat de l’autorité.
cli-stamp-sealed = { $file } se trouve dans un dossier scellé, qui n’est jamais modifié : horodater le dossier, ou un rapport qui est dehors
cli-stamped-pdf = { $file } horodaté : heure selon { $authority } : { $when } ; le certificat de l’autorité se termine le { $ends }.
cli-pdf-large = { $file } est trop grand pour un rapport
cli-certificate-made = Fait : { $file }, que personne d’autre ne peut lire, et { $public } à remettre ; le certificat se termine le { $ends }.
cli-certificate-next = Signer des rapports avec lui : baywitness verify JOB --report DIR --sign-pdf { $file }
cli-certificate-ending = { $file } a l’extension du certificat qui est écrit à côté : en prendre une autre, par exemple .pem
cli-redacted = Fait : { $folder } ; photos masquées, rapports et annexes laissés de côté, tous les autres fichiers comme scellés.
cli-redacted-credentials =
    { $count ->
        [one] Les attestations de contenu de { $count } photo ne sont pas dans la copie : elles portent sur le fichier entier, qui est masqué. Le dossier scellé les garde.
       *[other] Les attestations de contenu de { $count } photos ne sont pas dans la copie : elles portent sur les fichiers entiers, qui sont masqués. Le dossier scellé les garde.
    }
cli-redacted-check = Qui le reçoit le contrôle avec : baywitness check { $folder }

## Le journal des essais

cli-logged-one = Inscrit comme entrée { $entry } de { $log }.
cli-logged-several = Inscrit comme entrées { $first } à { $last } de { $log }.
cli-log-made = Journal { $log } créé dans { $folder }. Publier ce répertoire et donner cette ligne à qui le contrôle :
cli-log-private = Ne jamais publier { $folder } : il contient la clé du journal. Un auditeur peut en recevoir order-salt, pour nommer les ordres de réparation des essais manquants.
cli-log-photos =
    { $photos ->
        [1] une photo
       *[other] { $photos } photos
    }
cli-log-attempt =
    { $photos ->
        [1] une photo, essai { $attempt }
       *[other] { $photos } photos, essai { $attempt }
    }
cli-log-size =
    { $count ->
        [1] une entrée dans { $log }
       *[other] { $count } entrées dans { $log }
    }
cli-log-holds =
    { $count ->
        [1] { $log } : une entrée, conforme à son empreinte, et l’empreinte conforme à la racine du point de contrôle
       *[other] { $log } : { $count } entrées, chacune conforme à son empreinte, chaque empreinte conforme à la racine du point de contrôle
    }
cli-log-witnessed =
    { $count ->
        [1] { $witness } a vu une entrée, { $when }
       *[other] { $witness } a vu { $count } entrées, { $when }
    }
cli-log-continues = Il commence par tous les points de contrôle indiqués.
cli-log-disordered =
    { $count ->
        [1] Une entrée a une heure qui ne s’accorde pas avec celle de ses voisines (`baywitness audit --log` la nomme).
       *[other] { $count } entrées ont des heures qui ne s’accordent pas avec celles de leurs voisines (`baywitness audit --log` les nomme).
    }
cli-log-odd =
    { $count ->
        [1] Une entrée n’est pas de ce programme.
       *[other] { $count } entrées ne sont pas de ce programme.
    }
cli-log-no-key = On ne sait pas si le journal l’a signé : sa clé de vérification n’a pas été indiquée (--keys).
cli-log-agent-key = { $key } nomme une clé détenue par un agent, qui ne signe pas de notes : nommer la clé privée
cli-log-cosigned-first =
    { $count ->
        [1] { $log } contresigné à une entrée, vu pour la première fois : { $file }
       *[other] { $log } contresigné à { $count } entrées, vu pour la première fois : { $file }
    }
cli-log-cosigned =
    { $count ->
        [1] { $log } contresigné à une entrée, qui continue ce qui avait été vu ({ $seen }) : { $file }
       *[other] { $log } contresigné à { $count } entrées, qui continuent les { $seen } déjà vues : { $file }
    }
cli-log-witness-key = La clé du témoin, à donner à qui contrôle le journal :

## serve

cli-serve-alone = La page est à { $link }, pour cette machine seulement. Ctrl-C l’arrête.
cli-serve-at = La page est à { $link }
cli-serve-code = Code pour les appareils : { $code }. Qui l’a peut voir et modifier tous les dossiers.
cli-serve-open = Le réseau peut tout lire : chaque photo, chaque dossier et la clé de chaque appareil. Chiffrer avec --tls-own ou --tls-cert, ou n’utiliser que le réseau propre de l’atelier, qui doit être chiffré.
cli-serve-encrypted = La connexion est chiffrée.
cli-serve-end = Ctrl-C l’arrête.
cli-serve-certificate = Certificat, SHA-256 : { $digest }
cli-serve-root = Racine à laquelle les téléphones doivent se fier, SHA-256 : { $digest }

## plan, recheck, sheet, trends

cli-plan-numbers = donner { $count } nombres en mm, comme 7200,1700,1500 (aucun poste ne dépasse 50000)
cli-plan-length = donner une longueur de 500 à 50000 mm
cli-plan-earlier = aucune photo de { $job } n’a pu être mesurée : donner un dossier antérieur que `baywitness verify` mesure
cli-recheck-no-log = { $file } n’est pas un journal de contrôles : sa première ligne n’est pas « { $head } »
cli-recheck-no-check = { $file }, ligne { $line } : n’est pas un contrôle
cli-sheet-measured = vers la droite et vers le haut en deux nombres avec un point décimal et une virgule entre eux, comme 159.6,160.1
cli-sheet-corrected = { $file } contient déjà les tailles telles qu’imprimées, qui seraient corrigées deux fois : corriger le fichier qui a été imprimé (tel que bay-a4). Si c’est ce fichier même qui a été imprimé, supprimer d’abord sa ligne « { $line } »
cli-no-people-key = { $path } n’est pas une clé de 64 chiffres hexadécimaux : la supprimer pour de nouveaux pseudonymes, ou la restaurer

## audit, camera

cli-audit-nothing = aucun dossier d’intervention ni de preuve trouvé : indiquer un répertoire qui en contient
cli-audit-no-report = impossible d’écrire le rapport de l’audit : { $why }
cli-no-stdin = impossible de lire l’entrée standard : { $why }
cli-log-put-right = { $log } : { $what }.
cli-camera-no-report = un rapport montre des photos d’une mire ; avec un jeu de marqueurs, omettre --report

## Commentaires en tête des fichiers que le programme écrit

cli-file-not-fit = INUTILISABLE : { $why }
cli-file-surveyed = Mesuré d’après { $photos } photos. Modifier ce fichier à la main rend sa disposition caduque : mesurer de nouveau.
cli-file-length = Longueur mesurée { $length }
cli-file-printed = Tailles telles qu’imprimées sur papier { $paper } : les règles de contrôle mesurent { $right } mm vers la droite et { $up } mm vers le haut.
