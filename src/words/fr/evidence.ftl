# The log of attempts against an archive.
evidence-verdict =
    { $verdict ->
        [within] dans la tolérance
        [outside] hors tolérance
        [retake] photos à refaire
        [not_proven] non prouvé
       *[other] { $verdict }
    }
evidence-log-broken = Le journal des tentatives n’est pas fiable : { $why }
evidence-log-unreadable = l’entrée { $entry } est illisible : { $why }
evidence-log-repeated = l’entrée { $entry } répète l’entrée { $first }, octet pour octet
evidence-log-out-of-order = l’entrée { $entry } indique { $when }, { $off } s { $which ->
        [earlier] plus tôt
       *[later] plus tard
    } que ne le permettent ses voisines (plus de { $tolerance } s) : antidatée ou postdatée, ou une horloge était fausse
evidence-log-against-witness =
    { $which ->
        [earlier] l’entrée { $entry } indique { $when }, mais a été ajoutée après que { $witness } a vu { $size } entrées : datée { $off } s avant
       *[later] l’entrée { $entry } indique { $when }, mais était déjà là quand { $witness } a vu { $size } entrées : datée { $off } s après
    }
evidence-log-missing =
    { $numbered ->
        [yes] tentative { $attempt }
       *[no] une tentative
    } { $known ->
        [yes] de l’ordre de réparation { $order }
       *[no] d’un ordre de réparation que l’archive n’a pas, ou dont le secret n’a pas été donné
    } : { $whole ->
        [yes] aucune de ses { $gone } photos n’est dans l’archive
       *[no] { $gone } de ses { $photos } photos ne sont dans aucun dossier de l’archive
    } ({ $entries })
evidence-log-entry = entrée { $entry } du { $when } : { $verdict }
evidence-log-entry-with = entrée { $entry } du { $when } : { $with ->
        [both] { $verdict } avec un autre job.toml et une autre fiche de montage
        [job] { $verdict } avec un autre job.toml
        [setup] { $verdict } avec une autre fiche de montage
       *[none] { $verdict }
    }
evidence-log-entries = { $entries }
evidence-log-entries-more = { $more } avant ; { $entries }
evidence-log-restated = les photos de { $path }, maintenant { $now }, ont été jugées autrement : { $entries }
evidence-log-no-entry = { $path } est scellé, et le journal des tentatives n’en a aucune entrée
evidence-log-summary = Journal des tentatives { $log } : { $size } entrées, { $signed ->
        [yes] signé par une clé reconnue
       *[no] clé de vérification non fournie (--log-keys)
    }{ $witnessed ->
        [yes] , contresigné par { $witnesses }
       *[no] { "" }
    }{ $kept ->
        [yes]  ; il commence par tous les points de contrôle conservés
       *[no] { "" }
    }
evidence-log-title = Journal des tentatives
evidence-log-nothing = toutes les tentatives sont dans l’archive, tous les dossiers scellés dans le journal
evidence-log-more = { $count } de plus
evidence-log-all = tous : { $file }

# What joins two jobs of an archive.
evidence-photo-of-another-job =
    { $how ->
        [bytes] { $photo } est octet pour octet { $other } de ce dossier
       *[view] { $photo } montre la même vue que { $other } de ce dossier, réenregistrée, mise à l’échelle ou recadrée
    } : l’un des deux dossiers n’a pas été photographié pour lui-même. Un dossier copié pour un autre véhicule a cet aspect, de même qu’un appareil resté sur trépied devant un véhicule qui n’a pas bougé. Demander les photos d’origine.
evidence-set-up-of-another-job = Ceci est identique à ce dossier au bruit des photos près, plus que les montages de cette archive ne le sont par hasard : { $quantities }. Un véhicule photographié pour deux dossiers a cet aspect. Comparer les photos des deux : véhicule, sol, ombres.

# An audited archive.
evidence-audit-title = Audit des montages
evidence-audit-unreadable = illisible ou altéré
evidence-audit-filter = Afficher les lignes avec
evidence-audit-filter-hint = l’un de leurs mots
evidence-audit-shown = { $shown } sur { $count } affichées
evidence-audit-foot = Les informations de service du constructeur du véhicule et les règles locales font foi. Ces chiffres documentent des montages et ne remplacent aucune procédure ; le travail est réservé à un personnel formé, les lasers et les véhicules levés exigent leurs propres précautions.
evidence-audit-progress = { $done } sur { $total } ({ $kept } d’avant), { $rate } par seconde, encore { $left } s
evidence-audit-jobs = { $count } dossiers, dont { $kept } gardés d’un audit antérieur
evidence-audit-across = partagent une photo ou un montage avec un dossier antérieur : voir le rapport
evidence-audit-changed = disent autre chose qu’avant leur recalcul : voir le rapport
evidence-audit-other-version = ont été jugés par une autre version du programme : --recompute les juge de nouveau
evidence-audit-report = Rapport : { $file }
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
evidence-attempt = tentative { $attempt }
evidence-not-sealed = non scellé
evidence-state =
    { $state ->
        [signed] intact et signé par { $who }
        [unknown] intact, signataire inconnu
        [unsigned] intact, non signé
       *[altered] altéré
    }
evidence-recomputed = recalculé : { $count } changements
evidence-check = { $what } : { $measured }, requis { $required } : { $verdict }
evidence-change-what =
    { $what ->
        [verdict] verdict
        [findings] constats
       *[message] message
    }
evidence-change-check = { $name } ({ $parts })
evidence-change = { $what } : avant { $earlier }, maintenant { $now }
evidence-change-moved =
    { $what } : avant { $earlier }, maintenant { $now }, { $sign ->
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
        [signer] signataire
        [authority] autorité
        [measured-again] remesuré
        [log] journal
       *[other] { $item }
    }
evidence-whole =
    { $state ->
        [signed] intact et signé
        [unknown] intact, signataire inconnu
        [unsigned] intact, non signé
       *[altered] altéré
    }
evidence-bad =
    { $more ->
        [0] { $files }
       *[other] { $files } ; { $more } de plus
    }
evidence-names = { $count } fichiers, aucun n’est un lien ni n’a un nom qui mène ailleurs
evidence-bag = un sac BagIt 1.0 (RFC 8493)
evidence-no-bag = { $file } ne déclare pas BagIt 1.0 en UTF-8
evidence-file-unreadable = { $file } est illisible ({ $why })
evidence-file-wrong = { $file } : { $why }
evidence-fetch = fetch.txt demande des fichiers d’ailleurs : une preuve contient tous les siens
evidence-file-state =
    { $state ->
        [missing] { $file } manque
        [added] { $file } a été ajouté
       *[altered] { $file } a été altéré
    }
evidence-files = { $count } fichiers, aucun manquant, ajouté ou altéré (SHA-512)
evidence-unsigned = le dossier n’est pas signé
evidence-signed = par la clé { $key }
evidence-name-not-utf8 = { $file } n’est pas en UTF-8
evidence-name-case = { $first } et { $second } ne diffèrent que par la casse
evidence-name-link = { $file } est un lien ou autre chose qui n’est pas un fichier
evidence-too-many = il y a plus de { $count } fichiers
evidence-stamped = scellé au plus tard le { $when }, selon { $authority }
evidence-copy-unreadable = illisible : { $why }
evidence-copy-other-manifest = { $file } n’est pas celui que cite { $list }
evidence-copy-signed = celle du dossier scellé, par la clé { $key }
evidence-copy-unsigned = le dossier scellé n’était pas signé
evidence-copy-state =
    { $state ->
        [altered] { $file } n’est pas tel que scellé, et n’est pas cité comme masqué
        [missing] { $file } a été scellé, n’est pas ici et n’est pas cité comme omis
       *[strange] { $file } est cité comme masqué ou omis, et n’a jamais été scellé
    }
evidence-copy = { $count } fichiers tels que scellés, { $masked } photos masquées, { $left_out } fichiers omis
evidence-not-measured =
    { $why ->
        [copy] non remesuré : les photos sont masquées, le dossier scellé les a entières
       *[altered] non remesuré : les octets ne sont pas ceux qui ont été scellés
    }
evidence-no-signers = aucune liste de signataires fournie (--signers)
evidence-signer = { $who }, qui figure dans la liste
evidence-signer-unknown = non reconnu : { $why }
evidence-no-authority = aucun certificat d’autorité fourni (--timestamp-ca)
evidence-authority-false = non reconnue : { $why }
evidence-authority-ended = son certificat a pris fin le { $day }, et aucun horodatage plus récent ne le couvre
evidence-authority = { $who } ; son certificat prend fin le { $day }
evidence-measured = { $verdict } ; chaque valeur à moins de { $share } de son incertitude type de celle enregistrée
evidence-measured-otherwise = autrement qu’enregistré : { $differences }
evidence-measured-by-other = autrement qu’enregistré : { $differences } (enregistré par la version { $recorded }, mesuré par { $now })
evidence-not-measurable = non mesurable : { $why }
evidence-several = { $folder } contient les dossiers de preuve d’un ordre de réparation : vérifier chacun (`baywitness check { $folder }/NAME`), ou tous avec `baywitness audit` ; son propre { $index } se lit avec `sha512sum -c`
evidence-no-folder = { $folder } n’est pas un dossier de preuve : en indiquer un fait par `baywitness seal`
evidence-cannot-read = impossible de lire { $path } : { $why }
evidence-no-proof = le dossier ne contient aucune preuve que sa tentative a été consignée (seal --log)
evidence-logged = entrée { $entry } de { $log }, consignée le { $when } ; dans son point de contrôle de { $size } entrées{ $still ->
        [yes] , par lequel le journal commence toujours
       *[no] { "" }
    }{ $witnessed ->
        [yes] , contresigné par { $witnesses }
       *[no] { "" }
    }{ $signed ->
        [yes] { "" }
       *[no]  ; signé ou non par { $log } : clé de vérification non fournie (--log-keys)
    }
