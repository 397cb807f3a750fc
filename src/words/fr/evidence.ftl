# The log of attempts against an archive.
evidence-verdict =
    { $verdict ->
        [within] dans la tolérance
        [outside] hors tolérance
        [retake] photos à refaire
        [not_proven] non prouvé
       *[other] { $verdict }
    }
evidence-log-broken = Le journal des essais n’est pas fiable : { $why }
evidence-log-unreadable = l’entrée { $entry } est illisible : { $why }
evidence-log-repeated = l’entrée { $entry } répète l’entrée { $first }, octet pour octet
evidence-log-out-of-order = l’entrée { $entry } indique { $when }, { $off } s { $which ->
        [earlier] plus tôt
       *[later] plus tard
    } que ne le permettent ses voisines (plus de { $tolerance } s) : antidatée ou postdatée, ou une horloge était fausse
evidence-log-against-witness =
    { $which ->
        [earlier] l’entrée { $entry } indique { $when }, mais a été ajoutée après que { $witness } a vu { $size } entrées : datée { $off } s avant
       *[later] l’entrée { $entry } indique { $when }, mais était déjà là quand { $witness } a vu { $size } entrées : datée { $off } s après
    }
evidence-log-missing =
    { $numbered ->
        [yes] essai { $attempt }
       *[no] un essai
    } { $known ->
        [yes] de l’ordre de réparation { $order }
       *[no] d’un ordre de réparation que l’archive n’a pas, ou dont le secret n’a pas été donné
    } : { $lies ->
        [nowhere] aucune de ses { $gone } photos n’est dans l’archive
        [scattered] ses { $photos } photos sont dispersées, aucun dossier de l’archive ne les a toutes
        [refiled] ses { $photos } photos sont dans { $path }, classé comme un autre essai ou pour un autre ordre de réparation, et dans aucun dossier classé comme l’était cet essai
        [stated] seule la copie masquée { $path } a ses { $photos } photos, selon des empreintes qu’elle donne elle-même : des photos masquées ne peuvent pas les montrer, et elle ne contient aucune preuve de ce journal ; demander le dossier entier
       *[partly] { $gone } de ses { $photos } photos ne sont dans aucun dossier de l’archive
    } ({ $entries })
evidence-log-entry = entrée { $entry } du { $when } : { $verdict }
evidence-log-entry-with = entrée { $entry } du { $when } : { $with ->
        [both] { $verdict } avec un autre job.toml et une autre fiche de montage
        [job] { $verdict } avec un autre job.toml
        [setup] { $verdict } avec une autre fiche de montage
        [photos] { $verdict } avec d’autres photos à côté de celles-ci
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } avant ; { $entries }
evidence-log-restated = les photos de { $path }, maintenant { $now }, ont été jugées autrement : { $entries }
evidence-log-no-entry = { $path } est scellé, et le journal des essais n’en a aucune entrée
evidence-logged-before-taken = l’entrée { $entry } a été { $by ->
        [witness] vue par { $witness }
       *[log] consignée
    } le { $when }, avant { $what ->
        [calibration] le calibrage
       *[photo] la prise de { $photo }
    } ({ $taken }) : l’une des horloges est fausse
evidence-logged-late = { $path } : l’entrée { $entry }, la première de ses photos, a été consignée le { $when }, plus d’un jour après la dernière de ses photos et son calibrage ({ $taken })
evidence-log-unlogged = { $path } n’est pas scellé, et aucune entrée n’a ses photos
evidence-log-orders-unknown = avec le secret donné (--log-orders), l’ordre de réparation d’aucune entrée n’est celui d’un dossier de l’archive : ce n’est pas le secret de ce journal, ou tous les dossiers ont été reclassés. Les ordres de réparation n’ont pas été comparés
evidence-log-summary = Journal des essais { $log } : { $size } entrées, { $signed ->
        [yes] signé par une clé reconnue
       *[no] clé de vérification non fournie (--log-keys)
    }{ $witnessed ->
        [yes] , contresigné par { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes]  ; il commence par tous les points de contrôle conservés
       *[no] { "" }
    }{ $unlogged ->
        [0] { "" }
        [one]  ; { $unlogged } dossier n’est ni scellé ni dans une entrée
       *[other]  ; { $unlogged } dossiers ne sont ni scellés ni dans une entrée
    }{ $late ->
        [0] { "" }
        [one]  ; { $late } dossier a été consigné avec plus d’un jour de retard
       *[other]  ; { $late } dossiers ont été consignés avec plus d’un jour de retard
    }
evidence-log-title = Journal des essais
evidence-log-nothing = tous les essais sont dans l’archive, tous les dossiers scellés dans le journal
evidence-log-more = { $count } de plus
evidence-log-all = tous : { $file }

# What joins two jobs of an archive.
evidence-photo-of-another-job =
    { $how ->
        [bytes] { $photo } est octet pour octet { $other } de ce dossier
       *[view] { $photo } montre la même vue que { $other } de ce dossier, réenregistrée, mise à l’échelle ou recadrée
    } : l’un des deux dossiers n’a pas été photographié pour lui-même. Un dossier copié pour un autre véhicule a cet aspect, de même qu’un appareil resté sur trépied devant un véhicule qui n’a pas bougé. Demander les photos d’origine.
evidence-set-up-of-another-job = Ceci est identique à ce dossier au bruit des photos près, plus que les montages de cette archive ne le sont par hasard : { $quantities }. Un véhicule photographié pour deux dossiers a cet aspect. Comparer les photos des deux : véhicule, sol, ombres.
evidence-file-unlike-neighbours =
    { $role ->
        [kit] Le fichier de son jeu de marqueurs est un autre
        [setup] Sa fiche de montage est une autre
       *[camera] Son fichier d’appareil est un autre
    } que sous le même nom dans les dossiers d’avant et d’après, qui ont un seul et même fichier. Il peut avoir été modifié pour ce dossier : comparer les deux fichiers (leurs SHA-256 sont dans `inputs` des résultats).

# An audited archive.
evidence-audit-title = Audit des montages
evidence-audit-unreadable = illisible, altéré ou disparu
evidence-audit-unread =
    { $what ->
        [job-name] il ressemble à un fichier d’intervention, dont le nom est exactement job.toml : le renommer
        [no-job] des images s’y trouvent comme dans une intervention, sans fichier d’intervention au-dessus : remettre job.toml à sa place, ou mettre les images ailleurs
        [tar-name] il contient des preuves scellées en un seul fichier, dont le nom finit par .tar : le renommer
        [unfinished] c’est ce qu’a laissé un scellement interrompu : sceller à nouveau, puis le supprimer
        [packed] les archives de ce type ne sont pas ouvertes : la décompresser
        [link] c’est un lien qui mène hors de ce qui est audité : nommer aussi sa cible, ou la mettre à sa place
        [deep] trop de dossiers se trouvent au-dessus : le nommer lui-même
       *[system] { $why }
    }
evidence-audit-filter = Afficher les lignes avec
evidence-audit-filter-hint = l’un de leurs mots
evidence-audit-shown = { $shown } sur { $count } affichées
evidence-audit-foot = Les informations de service du constructeur du véhicule et les règles locales font foi. Ces chiffres documentent des montages et ne remplacent aucune procédure ; le travail est réservé à un personnel formé, les lasers et les véhicules levés exigent leurs propres précautions.
evidence-audit-progress = { $done } sur { $total } ({ $kept } d’avant), { $rate } par seconde, encore { $left } s
evidence-audit-jobs = { $count } dossiers, dont { $kept } gardés d’un audit antérieur
evidence-audit-across = partagent une photo ou un montage avec un autre dossier, ou ont un fichier autre que les dossiers voisins : voir le rapport
evidence-audit-changed = disent autre chose qu’avant leur recalcul : voir le rapport
evidence-audit-other-version = ont été jugés par une autre version du programme : --recompute les juge de nouveau
evidence-audit-report = Rapport : { $file }
evidence-column-verdict = Verdict
evidence-column-job = Dossier
evidence-column-checks = Contrôles
evidence-column-findings = Constats
evidence-column-setup = Fiche de montage
evidence-column-vehicle = Véhicule
evidence-column-technician = Technicien
evidence-column-bay = Poste
evidence-column-taken = Pris le
evidence-column-evidence = Preuve
evidence-column-folder = Répertoire
evidence-column-finding = Constat
evidence-column-meaning = Ce qu’il dit
evidence-attempt = essai { $attempt }
evidence-not-sealed = non scellé
evidence-state =
    { $state ->
        [signed] intact et signé par { $who }
        [unknown] intact, signataire inconnu
        [unsigned] intact, non signé
        [gone] plus là
       *[altered] altéré
    }
evidence-state-copy =
    { $measured ->
        [yes] { $state } (copie masquée)
       *[no] { $state } (copie masquée, non remesurée)
    }
evidence-recomputed = recalculé : { $count } changements
evidence-check = { $what } : { $measured }, requis { $required } : { $verdict }
evidence-change-what =
    { $what ->
        [verdict] verdict
        [findings] constats
       *[message] message
    }
evidence-change-check = { $name } ({ $parts })
evidence-change = { $what } : avant { $earlier }, maintenant { $now }
evidence-change-moved =
    { $what } : avant { $earlier }, maintenant { $now }, { $sign ->
        [minus] -
       *[plus] +
    }{ $moved } u
evidence-value = { $value } { $unit } (u { $u })
evidence-none = aucun
evidence-not-checked = non contrôlé
evidence-not-determined = non déterminé

# An evidence folder checked.
evidence-outcome =
    { $outcome ->
        [passed] conforme
        [failed] en défaut
       *[other] non contrôlable
    }
evidence-item =
    { $item ->
        [names] noms
        [declaration] déclaration
        [completeness] complétude
        [manifests] manifestes
        [tag-files] fichiers d’étiquette
        [payload] contenu
        [signature] signature
        [timestamp] horodatage
        [sealed-files] fichiers scellés
        [masked-photos] photos masquées
        [signer] signataire
        [authority] autorité
        [measured-again] remesuré
        [credentials] attestations
        [log] journal
        [sensor-pattern] motif du capteur
        [reports] rapports
        [report-signature] signature du rapport
        [report-signer] signataire du rapport
        [report-timestamp] horodatage du rapport
        [series] dossiers de l’ordre de réparation
        [series-signature] signature de l’index de l’ordre de réparation
        [series-page] page de l’ordre de réparation
        [report-authority] autorité du rapport
        [signing-time] heure de la signature
        [report-signing-time] heure de la signature du rapport
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] intact et signé
        [unknown] intact, signataire inconnu
        [unsigned] intact, non signé
        [unconfirmed] intact et signé ; son verdict n’est pas confirmé
       *[altered] altéré
    }
evidence-whole-copy =
    { $measured ->
        [yes] { $state }, pour autant qu’une copie masquée le montre : ses photos mesurent ce qui est enregistré ; rien ne lie à ce qui a été scellé le reste de ce qu’elles montrent
       *[no] { $state }, pour autant qu’une copie masquée le montre : elle n’a PAS été remesurée, et seul le dossier scellé montre si le résultat découle des photos
    }
evidence-bad =
    { $more ->
        [0] { $files }
       *[other] { $files } ; { $more } de plus
    }
evidence-names = { $count } fichiers, aucun n’est un lien ni n’a un nom qui mène ailleurs
evidence-bag = un sac BagIt 1.0 (RFC 8493)
evidence-no-bag = { $file } ne déclare pas BagIt 1.0 en UTF-8
evidence-file-unreadable = { $file } est illisible ({ $why })
evidence-file-wrong = { $file } : { $why }
evidence-fetch = fetch.txt demande des fichiers d’ailleurs : une preuve contient tous les siens
evidence-file-state =
    { $state ->
        [missing] { $file } manque
        [added] { $file } a été ajouté
        [strange] { $file } n’est rien que le scellement y mette
       *[altered] { $file } a été altéré
    }
evidence-files = { $count } fichiers, aucun manquant, ajouté ou altéré (SHA-512)
evidence-series-signer = { $index } n’est pas signé par qui a signé { $folders } : il a été récrit
evidence-unsigned = le dossier n’est pas signé
evidence-signed = par la clé { $key }
evidence-name-not-utf8 = { $file } n’est pas en UTF-8
evidence-name-case = { $first } et { $second } ne diffèrent que par la casse
evidence-empty-folder = { $folder } est un dossier sans fichiers, qu’aucune liste ne contient
evidence-name-link = { $file } est un lien ou autre chose qui n’est pas un fichier
evidence-too-many = il y a plus de { $count } fichiers
evidence-stamped = scellé au plus tard le { $when }, selon { $authority }
evidence-copy-other-manifest = { $file } n’est pas celui que cite { $list }
evidence-copy-signed = celle du dossier scellé, par la clé { $key }
evidence-copy-unsigned = le dossier scellé n’était pas signé
evidence-copy-state =
    { $state ->
        [altered] { $file } n’est pas tel que scellé, et n’est pas cité comme masqué
        [missing] { $file } a été scellé, n’est pas ici et n’est pas cité comme omis
        [no-photo] { $file } est cité comme masqué et n’est pas une photo de l’intervention
        [added] { $file } n’a pas été scellé et n’est rien de ce qu’a une copie
        [says-more] { $file } dit ce qu’aucune copie ne dit d’elle-même
       *[strange] { $file } est cité comme masqué ou omis, et n’a jamais été scellé
    }
evidence-copy = { $count } fichiers tels que scellés, { $masked } photos masquées, { $left_out } fichiers omis
evidence-not-measured = non remesuré : les octets ne sont pas ceux qui ont été scellés
evidence-no-signers = aucune liste de signataires fournie (--signers)
evidence-signer = { $who }, qui figure dans la liste
evidence-signer-unknown = non reconnu : { $why }
evidence-no-authority = aucun certificat d’autorité fourni (--timestamp-ca)
evidence-authority-false = non reconnue : { $why }
evidence-authority-ended = son certificat a pris fin le { $day }, et aucun horodatage plus récent qui compte ne le couvre
evidence-authority = { $who } ; son certificat prend fin le { $day }
evidence-measured = { $verdict } ; chaque valeur à moins de { $share } de son incertitude-type de celle enregistrée ; { $sentences ->
        [compared] tout le reste comme enregistré
       *[not] ses phrases, de la version { $recorded }, n’ont pas été comparées
    }
evidence-measured-unconfirmed = enregistré : { $recorded } ; confirmé : { $verdict } ; la fiche de montage exige des attestations de contenu, et ce contrôle n’en garantit aucune qui suffise (un programme construit avec l’option credentials, et --credential-anchors) ; chaque valeur à moins de { $share } de son incertitude-type de celle enregistrée
evidence-masked = { $photos } photos montrent { $markers } marqueurs là où le résultat scellé les a ; rien ne lie le reste de ce qu’elles montrent
evidence-masked-no-markers = les photos ne montrent aucun marqueur qui les lierait au résultat scellé
evidence-masked-measured = { $verdict } ; chaque valeur des photos masquées à moins de { $share } incertitudes-types de celle enregistrée ; ce qui dépend des photos entières et de leurs propres données n’a pas été recherché à nouveau
evidence-masked-size = { $photo } n’est pas la photo scellée, masquée : elle a { $width } sur { $height } pixels
evidence-masked-markers = { $photo } n’est pas la photo scellée, masquée : de { $recorded } marqueurs enregistrés et { $seen } qu’elle montre, { $found } sont au même endroit
evidence-masked-no-camera = non remesuré : l’intervention ne nomme aucun appareil et aucun fichier d’appareil ne convient à ses photos, si bien que le résultat scellé ne mesure rien non plus
evidence-masked-cameras = non remesuré : l’intervention ne nomme aucun appareil, plusieurs ont été choisis d’après les propres données des photos, et celles-ci sont masquées ; le dossier scellé les a
evidence-measured-otherwise = autrement qu’enregistré : { $differences }
evidence-measured-by-other = autrement qu’enregistré : { $differences } (enregistré par la version { $recorded }, mesuré par { $now })
evidence-not-measurable = non mesurable : { $why }
evidence-several = { $folder } contient les dossiers de preuve d’un ordre de réparation : vérifier chacun (`baywitness check { $folder }/NAME`), ou tous avec `baywitness audit` ; son propre { $index } se lit avec `sha512sum -c`
evidence-no-folder = { $folder } n’est pas un dossier de preuve : en indiquer un fait par `baywitness seal`
evidence-cannot-read = impossible de lire { $path } : { $why }
evidence-no-proof = le dossier ne contient aucune preuve que son essai a été consigné (seal --log)
evidence-logged = entrée { $entry } de { $log }, consignée le { $when } ; dans son point de contrôle de { $size } entrées{ $still ->
        [yes] , par lequel le journal commence toujours
       *[no] { "" }
    }{ $witnessed ->
        [yes] , contresigné par { $witnesses }
       *[no] { "" }
    }{ $signed ->
        [yes] { "" }
       *[no]  ; signé ou non par { $log } : clé de vérification non fournie (--log-keys)
    }

# Reading and writing.
evidence-cannot =
    { $doing ->
        [read] impossible de lire { $path } : { $why }
        [write] impossible d’écrire { $path } : { $why }
        [make] impossible de créer le dossier { $path } : { $why }
        [rename] impossible de renommer en { $path } : { $why }
        [folder] impossible de lire le dossier { $path } : { $why }
        [move] impossible de déplacer { $path } : { $why }
        [remove] impossible de supprimer { $path } : { $why }
        [lock] impossible de verrouiller { $path } : { $why }
        [protect] impossible de protéger { $path } : { $why }
        [key] impossible de lire la clé { $path } : { $why }
       *[random] impossible d’obtenir des nombres aléatoires pour une clé : { $why }
    }
evidence-said = { $why }
evidence-further = { $first } ; { $rest }
evidence-line = ligne { $line } : { $why }
evidence-unreadable = illisible ({ $why })
evidence-not-utf8 = ce n’est pas de l’UTF-8
evidence-size =
    { $what ->
        [manifest] ce n’est pas un fichier de la taille d’une liste d’empreintes
        [signature] ce n’est pas un fichier de la taille d’une signature
        [small] ce n’est pas un fichier de la taille qu’il a dans un dossier scellé
       *[timestamp] ce n’est pas un fichier de la taille d’un horodatage
    }

# Names and manifests.
evidence-path =
    { $problem ->
        [empty] une partie du nom est vide
        [absolute] le chemin est absolu
        [relative] une partie du chemin mène ailleurs (. ou ..)
        [character] il contient une barre oblique inverse, un caractère de contrôle ou un autre que tous les systèmes ne savent pas enregistrer
        [special] une partie du nom a un sens particulier sur certains systèmes (nom de périphérique, point ou espace à la fin)
       *[long] le nom est trop long
    }
evidence-manifest-line = ce n’est pas un SHA-512 en hexadécimal minuscule, deux espaces et un chemin
evidence-manifest-path = elle nomme « { $path } » : { $problem }
evidence-manifest-twice = elle nomme { $path } une deuxième fois
evidence-manifest-order = elle n’a pas l’ordre ni la forme dans lesquels elle a été écrite

# Keys and signatures.
evidence-key-none = { $path } n’est pas une clé privée de ssh-keygen ({ $why }) : indiquer une clé ed25519, ou son fichier .pub si un agent la détient
evidence-key-kind = { $path } est une clé du type { $kind } : en créer une avec `ssh-keygen -t ed25519`
evidence-key-locked =
    { $typed ->
        [wrong] la clé { $path } a une phrase secrète, et ce qui a été saisi en est une autre : la saisir dans un terminal, ou ajouter la clé à l’agent et indiquer son fichier .pub
       *[nothing] la clé { $path } a une phrase secrète : la saisir dans un terminal, ou ajouter la clé à l’agent et indiquer son fichier .pub
    }
evidence-key-agent = ssh-keygen ne signe pas avec { $path } : { $why }
evidence-key-not-started = il ne démarre pas ({ $why }) ; installer le client OpenSSH
evidence-key-refused = { $why } ; la clé est-elle ajoutée à l’agent (ssh-add) ?
evidence-key-answer = sa réponse : { $why }
evidence-key-sign = impossible de signer : { $why }
evidence-signature-none = ce n’est pas une signature SSH ({ $why })
evidence-signature-spelling = elle n’est pas écrite comme l’est une signature
evidence-signature-purpose = elle est pour « { $namespace } », non pour « { $own } »
evidence-signature-kind = elle vient d’une clé du type { $kind }, que ce programme ne vérifie pas
evidence-signature-bytes = elle n’appartient pas à ces octets
evidence-signers-line = { $file }, ligne { $line } : { $problem } ; l’écrire comme le manuel de ssh-keygen décrit les signataires autorisés
evidence-signers-unlisted = sa clé n’est pas dans la liste des signataires
evidence-signers-objection =
    { $why ->
        [authority] { $who } est inscrit comme autorité de certification, ce que ce programme ne suit pas
        [excluded] { $who } exclut quelqu’un, et une signature ne dit pas de qui elle est : inscrire les noms de ceux qui peuvent signer
        [namespace] { $who } ne peut pas signer pour « { $namespace } »
        [early] { $who } ne pouvait pas encore signer
       *[late] { $who } ne peut plus signer
    }
evidence-signers-no-key = aucune clé publique après les noms et les options
evidence-signers-option = l’option « { $option } » est inconnue
evidence-signers-option-twice = l’option « { $option } » y est deux fois
evidence-signers-time = « { $time } » n’est pas une heure

# Sealing.
evidence-exists =
    { $form ->
        [file] { $path } existe déjà : indiquer un autre fichier, ou le déplacer d’abord (une preuve scellée n’est jamais modifiée)
       *[folder] { $path } existe déjà : indiquer un autre dossier, ou le déplacer d’abord (un dossier scellé n’est jamais modifié)
    }
evidence-seal-name = le fichier « { $path } » ne peut être conservé sous ce nom : { $problem } ; le renommer
evidence-seal-alike = les fichiers { $first } et { $second } ne diffèrent que par les majuscules et minuscules : renommer l’un des deux
evidence-seal-changed = { $path } a changé pendant le scellement : vérifier et sceller de nouveau
evidence-seal-json = impossible d’écrire le résultat en JSON : { $why }
evidence-seal-far = le fichier « { $file } » se trouve trop de dossiers au-dessus de l’intervention : le rapprocher
evidence-seal-gone = le fichier « { $file } » a été lu pour le dossier et n’est plus là
evidence-one-file = { $file } n’est pas un dossier de preuve en un seul fichier : { $problem }
evidence-one-file-entry = { $file } n’est pas un dossier de preuve en un seul fichier : l’entrée « { $entry } » : { $problem }
evidence-one-file-problem =
    { $problem ->
        [link] un lien ou autre chose qui n’est pas un fichier
        [no-folder] elle n’est dans aucun dossier
        [second] elle est dans un second dossier
        [foreign] un autre programme l’a créé : le décompresser, puis vérifier le dossier
        [twice] elle est deux fois dans l’archive
        [empty] il est vide
       *[otherwise] une entrée ou son en-tête a été modifié, ou un autre programme l’a créé
    }

# Timestamps.
evidence-stamp-wrong = horodatage { $file } : { $why }
evidence-stamps-full = { $folder } contient déjà { $count } horodatages
evidence-token-form = ce n’est ni une réponse ni un jeton d’horodatage (RFC 3161, DER) : { $why }
evidence-token-refused = c’est un refus de l’autorité (statut { $status }) : redemander
evidence-token-other = il a été fait pour d’autres octets : demander un horodatage de ce dossier
evidence-token-unsigned = il n’est pas signé comme il le dit ({ $why })
evidence-token =
    { $problem ->
        [no-token] il ne contient aucun jeton
        [no-signed-data] il ne contient pas de données signées
        [no-timestamp] ce sont des données signées, mais pas un horodatage
        [no-time] il ne contient pas d’heure
        [signers] il n’a pas exactement un signataire
        [no-certificate] le certificat de l’autorité manque : demander avec certReq
        [digest] il utilise une empreinte à laquelle ce programme ne se fie pas
        [version] il est d’une version inconnue
        [extensions] il contient des extensions que ce programme ne connaît pas
        [bad-time] il contient une heure qui n’en est pas une
        [no-attributes] il ne signe aucun attribut
        [no-kind] il ne signe pas ce qu’il est
        [other-kind] il signe un autre type de contenu
        [no-digest] il ne signe pas son contenu
       *[unnamed-signer] il ne nomme pas le certificat qui l’a signé (RFC 5816)
    }
evidence-token-altered = son heure ou son empreinte a été modifiée
evidence-token-method = ce programme ne connaît pas la méthode : { $method }
evidence-token-key = la signature n’est pas de la clé de son certificat
evidence-certificate-unreadable = son certificat est illisible ({ $why })
evidence-authorities = { $file } : { $why } ; donner le certificat racine de l’autorité en PEM
evidence-authorities-no-pem = ce n’est pas un fichier PEM ({ $why })
evidence-authorities-empty = il ne contient aucun certificat
evidence-authorities-bad = il contient un certificat incorrect ({ $why })
evidence-authority-elsewhere = son certificat ne mène à aucune des autorités données (--timestamp-ca)
evidence-authority-early = son heure est antérieure à 1970
evidence-authority-unlisted = non donnée : { $who } ; { $why }
evidence-authority-wrong =
    { $problem ->
        [usage] son certificat ne sert pas aux seuls horodatages, avec la mention critique (RFC 3161, 2.3)
        [early] son certificat ne valait pas encore quand il a été fait
       *[late] son certificat avait pris fin quand il a été fait
    }
evidence-token-turn = ce n’est pas un horodatage à son rang : un précédent manque, si bien qu’il ne couvre rien ici
evidence-unstamped = aucun, bien que des autorités aient été données (--timestamp-ca) ; on ne peut pas dire s’il y en a jamais eu un
evidence-stamp-time =
    { $problem ->
        [ahead] il indique { $when }, plus de cinq minutes après l’heure de cette machine
       *[falls] il indique { $when }, avant l’horodatage qu’il couvre
    }
evidence-stamped-before =
    { $what ->
        [calibration] il indique { $when } : horodaté avant que le calibrage n’ait eu lieu, selon l’intervention
       *[photo] il indique { $when } : horodaté avant que ses photos n’aient été prises, selon { $what }
    }

# PDF reports that are signed.
evidence-pdf-field = Signature de ce rapport
evidence-pdf-problem =
    { $problem ->
        [no-key] il ne contient aucune clé privée en PEM : nommer le fichier de la clé, ou en créer une avec `baywitness certificate`
        [locked] sa clé privée est chiffrée : l’écrire sans mot de passe dans un fichier que vous seul pouvez lire (`openssl pkey -in KEY -out FILE`)
        [key-kind] sa clé est d’un autre type : en nommer une pour ECDSA sur P-256 ou P-384, ou pour RSA de 2048 à 4096 bits
        [no-certificate] il ne contient aucun certificat en PEM, ou trop : nommer le fichier du certificat avec --certificate
        [unreadable] il contient un certificat illisible : le demander à son émetteur en PEM
        [other-key] aucun de ses certificats ne correspond à la clé privée : nommer celui qui a été émis pour cette clé
        [usage] son certificat est destiné à d’autres usages que les signatures : en demander un avec l’usage digitalSignature ou nonRepudiation
        [early] son certificat ne vaut pas encore : régler l’horloge de cette machine, ou attendre
        [late] son certificat est terminé : en obtenir un nouveau, ou en créer un avec `baywitness certificate`
        [no-pdf] ce n’est pas un rapport PDF de ce programme
        [signed-already] il est déjà signé : refaire le rapport et signer celui-là
        [unsigned] c’est un PDF sans signature : l’écrire avec --sign-pdf
        [range] sa signature ne couvre pas tout le fichier : quelque chose a été ajouté ou coupé après la signature
        [no-signature] sa signature n’est pas de celles que ce programme lit (PAdES, un signataire)
        [stamped-already] il a déjà un horodatage
        [no-room] l’horodatage est plus grand que la place qui lui a été laissée : demander à une autorité dont les réponses sont plus courtes
        [name] le nom est vide, dépasse 64 caractères ou contient des caractères de contrôle ou qui inversent le sens de l’écriture
       *[years] un certificat vaut de 1 à 10 ans
    }
evidence-pdf-by = de { $who }, sur tout le fichier ; horloge du signataire : { $when }
evidence-pdf-listed = { $who }, dont le certificat a été donné
evidence-pdf-unlisted = son certificat n’est pas parmi ceux qui ont été donnés ; son SHA-256 est { $print }
evidence-pdf-no-certificates = aucun certificat n’a été donné (--certificates)
evidence-pdf-stamped = signé au plus tard le { $when }, selon { $authority }
evidence-pdf-earlier = une précédente, de { $who }, sur les { $count } premiers octets du fichier ; ce qui suit a été ajouté plus tard, et ce signataire ne l’a pas vu
evidence-pdf-earlier-false = une signature précédente, de { $who }, ne tient pas ({ $why }) ; la dernière est de { $last }
evidence-pdf-uncounted =
    { $problem ->
        [usage] { $who }, dont le certificat a été donné mais ne sert pas à signer
        [early] { $who }, dont le certificat a été donné mais ne valait pas encore à la signature ({ $when })
       *[late] { $who }, dont le certificat a été donné mais avait pris fin à la signature ({ $when })
    }
evidence-pdf-claim =
    { $problem ->
        [ahead] l’horloge du signataire indiquait { $when }, après l’heure de cette machine : l’une des deux est fausse
       *[stamped] l’horloge du signataire indiquait { $when }, or la signature a été horodatée avant : cette horloge était fausse
    }
evidence-reports-same = { $count } fichiers, chacun ce que donnent le résultat et les photos scellés
evidence-reports-other = { $files } : pas ce que donnent { $result } et les photos scellés, mais d’un autre résultat ou altéré
evidence-reports-by-other = faits par la version { $recorded } : la version { $now } ne peut pas les refaire, et on ne peut donc dire s’ils sont de ce résultat
evidence-report-unsigned = le rapport (PDF) ne porte pas de signature
evidence-report-state =
    { $state ->
        [holds] rapport signé par { $who }, dont personne ne répond ici (--certificates)
        [listed] rapport signé par { $who }, dont le certificat a été donné
        [unlisted] rapport signé par { $who }, dont le certificat n’est pas parmi ceux qui ont été donnés, ou ne valait pas à la signature
        [broken] la signature du rapport n’est pas valable
       *[none] rapport non signé
    }
evidence-pdf-not-signed = Ce rapport n’est pas signé : il a été refait sans la clé (--sign-pdf). Celui qu’il remplace, signé par { $who }, est conservé à côté sous le nom { $file }.
evidence-pdf-signature = sa signature n’est pas valable : { $why }
evidence-pdf-form = sa signature ne peut être lue ou écrite ({ $why })

# The log of attempts: what is wrong with its files.
evidence-log-none = { $folder } ne contient aucun journal des essais : en créer un avec `baywitness log new { $folder } --origin NAME`, ou indiquer un autre répertoire
evidence-log-name = « { $name } » n’est pas un nom de journal ou de témoin : en écrire un comme shop.example/attempts, sans espaces ni signes plus
evidence-verifier =
    { $problem ->
        [parts] « { $text } » n’est pas une clé de vérification : elle n’a pas de nom, d’identifiant et de clé entre signes plus
        [base64] « { $text } » n’est pas une clé de vérification : sa clé n’est pas en base64
        [kind] « { $text } » n’est pas une clé de vérification : ce programme lit les clés Ed25519 de journaux (1) et de témoins (4)
        [key] « { $text } » n’est pas une clé de vérification : sa clé n’est pas une clé Ed25519
       *[id] « { $text } » n’est pas une clé de vérification : son identifiant n’appartient pas à son nom et à sa clé
    }
evidence-verifier-line = { $file }, ligne { $line } : { $why }
evidence-note =
    { $problem ->
        [characters] ce n’est pas une note signée : elle contient des caractères de contrôle ou s’arrête au milieu d’une ligne
        [empty-line] ce n’est pas une note signée : aucune ligne vide avant ses signatures
       *[signatures] ce n’est pas une note signée : une ligne de ses signatures n’en est pas une
    }
evidence-note-count = elle a { $count } signatures, non 1 à { $most }
evidence-checkpoint =
    { $problem ->
        [lines] ce n’est pas un point de contrôle : il n’a pas d’origine, de taille et de racine
        [numbers] ce n’est pas un point de contrôle : sa deuxième ligne n’est pas une taille ou la troisième pas une racine
       *[spelling] ce n’est pas un point de contrôle : il n’est pas écrit comme tel
    }
evidence-checkpoint-false = une signature de { $key } est fausse
evidence-checkpoint-unsigned = il n’est pas signé par la clé de { $log }
evidence-proof =
    { $problem ->
        [head] ce n’est pas une preuve : aucune ligne vide avant un point de contrôle
        [first-line] ce n’est pas une preuve : sa première ligne n’est pas { $first_line }
        [entry] ce n’est pas la preuve d’un essai : sa deuxième ligne ne contient pas l’entrée
        [index] ce n’est pas une preuve : sa troisième ligne n’a pas de numéro
        [hash] ce n’est pas une preuve : une ligne de son chemin n’est pas une empreinte
        [spelling] elle n’est pas écrite comme l’est une preuve
       *[path] elle ne montre pas que son entrée est dans le journal : le chemin ne mène pas à la racine
    }
evidence-proof-entry = elle contient une entrée qui n’en est pas une : { $why }
evidence-attempt-photos = { $count } photos, c’est plus qu’une entrée n’en contient : scinder le dossier
evidence-attempt-form = ce n’est pas du { $format } ({ $why })
evidence-attempt-spelling = elle n’est pas écrite comme { $format }
evidence-attempt-other = elle est d’un autre essai ; diffèrent : { $parts }
evidence-attempt-part =
    { $part ->
        [photos] photos
        [job] job.toml
        [setup] fiche de montage
        [result] résultat
       *[verdict] verdict
    }
evidence-no-result = aucun résultat à côté ({ $why })
evidence-bad-result = aucun résultat lisible à côté ({ $why })
evidence-log-does-not-fit = elle ne correspond pas au journal actuel : { $why }
evidence-tile =
    { $problem ->
        [none] cette tuile n’existe pas
        [subtree] un sous-arbre que son arbre n’a pas est demandé
       *[altered] il a été modifié
    }
evidence-tile-hashes = il ne contient pas { $count } empreintes
evidence-tile-entries = il ne contient pas { $count } entrées, chacune après sa longueur
evidence-tile-entry = son entrée numéro { $entry } n’est pas celle de l’empreinte dans tile/0
evidence-tiles-level = des empreintes du niveau { $level } ne sont pas celles des tuiles en dessous
evidence-tiles-root = il contient des tuiles qui ne donnent pas la racine de son point de contrôle de { $size } entrées : elles ont été modifiées, ou sont d’un autre état du journal
evidence-log-no-such-entry = { $size } entrées, aucune de numéro { $entry }
evidence-log-other = c’est le journal { $log }, { $file } est de { $other }
evidence-log-truncated = { $size } entrées, mais { $earlier } dans { $file } : le journal a été tronqué, ou ceci est une ancienne copie
evidence-log-forked = ceci et { $file } sont deux points de contrôle de { $size } entrées avec des racines différentes : le journal a été dédoublé
evidence-log-rewritten = il ne commence pas par les { $size } entrées de { $file } : le journal a été réécrit
evidence-log-key-not-given = c’est le journal { $log }, dont la clé de vérification n’a pas été donnée
evidence-witness-own-key = cette clé est celle du journal { $log } lui-même, qui ne peut pas témoigner pour lui-même : donner une clé propre au témoin
evidence-witness-of-another = ce fichier se souvient du journal { $other }, non de { $log } : donner avec --seen un fichier propre à chaque journal
evidence-log-key-file =
    { $problem ->
        [salt] ce n’est pas un secret de 64 chiffres hexadécimaux
        [no-key] ce n’est pas une clé privée de ssh-keygen
        [kind] ce n’est pas une clé ed25519 sans phrase secrète
       *[other-key] il n’est pas signé par la clé du journal
    }
evidence-log-not-made = aucun journal créé : { $why }
evidence-log-exists = il existe déjà : un journal est créé une fois, et jamais de nouveau sous son nom
evidence-log-no-key = aucune clé créée ({ $why })
evidence-log-refuses = il n’accepte pas le dossier : { $why }
evidence-log-went-back = ce n’est pas ce pour quoi { $file } a été signé ({ $why }) : il est revenu à une copie plus ancienne, ou a été modifié. Rétablir la copie la plus récente ; continuer dédoublerait le journal
evidence-log-published = un ajout interrompu après sa signature est publié : { $size } entrées
evidence-log-removed =
    { $count ->
        [one] un fichier d’un ajout interrompu et jamais confirmé est supprimé
       *[other] { $count } fichiers d’un ajout interrompu et jamais confirmé sont supprimés
    }

# A job gathered, measured again, masked, audited.
evidence-altered = { $path } a été modifié : { $why }
evidence-altered-item = { $item } : { $found }
evidence-otherwise = { $path } : mesurées à nouveau, les photos disent autre chose : { $differences }
evidence-judge-gone = { $path } était là lors de l’audit précédent et n’y est plus, et son intervention n’est nulle part ailleurs dans l’archive ; si le retrait est légitime, auditer dans un autre répertoire (--out)
evidence-judge-fault = le programme a échoué sur ce dossier : le signaler, si possible avec le dossier
evidence-unpack-room = impossible de créer un dossier où décompresser { $path } : { $why }
evidence-holds-no-job = { $folder } ne contient aucune intervention
evidence-ledger-busy = un autre audit écrit dans { $folder } : l’attendre, ou indiquer un autre répertoire
evidence-ledger-no-message = son résultat est illisible
evidence-redact-altered = { $folder } n’est pas intact : le vérifier d’abord
evidence-redact-otherwise = { $folder } n’est pas copié : remesurées, ses photos disent autre chose ({ $why }) ; le vérifier
evidence-redact-copy = { $folder } est déjà une copie : indiquer le dossier scellé
evidence-redact-write = impossible d’écrire la copie masquée de { $photo } : { $why }
evidence-remeasure-result = le résultat enregistré { $file } est illisible : { $why }
evidence-remeasure-room = pas de place pour mesurer : { $why } ; faire de la place pour des fichiers temporaires et vérifier à nouveau
evidence-remeasure-no-job = le dossier ne contient aucune intervention
evidence-remeasure-job = l’intervention dans le dossier ne peut être mesurée : { $why }
evidence-difference = { $what } : enregistré { $recorded }, maintenant { $now }
evidence-difference-credentials = attestations de contenu de { $photo }
evidence-credentials-gone = enregistrées, mais aucune photo n’en porte
evidence-credentials-as-recorded = telles qu’enregistrées : { $counts } ; ce programme a été construit sans elles et ne les a pas revérifiées
evidence-difference-place = { $place } dans { $file }
evidence-written-otherwise = { $file } n’est pas tel que le programme l’écrit : il dit quelque chose deux fois, ou quelque chose qu’aucun résultat ne contient
evidence-more-files = ni le dossier ni son résultat ne contiennent { $files }
evidence-label-other = { $file } dit « { $label }: { $value } », ce que son résultat ne dit pas
evidence-label-count = { $file } dit « { $label }: { $value } », et l’on compte { $counted }
evidence-found-shared = parmi les modèles, avec leurs propres octets
evidence-found-own = dans le dossier de l’intervention même
evidence-labels-lack = il manque dans { $file } des indications que le scellement écrit
evidence-no-reports = il n’y en a pas dans le dossier : le scellement les y met
evidence-unread-result = il ne se lit pas comme un résultat
evidence-difference-what =
    { $what ->
        [job] dossier
        [verdict] verdict
        [inputs] fichiers lus
        [findings] constats
        [checks] contrôles
        [reason] motif
        [budget] bilan d’incertitude
        [readings] lectures
        [photos] photos
        [attachments] pièces jointes
       *[quantities] grandeurs
    }
evidence-nothing = rien
