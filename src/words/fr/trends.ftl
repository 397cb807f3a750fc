# An effect in a sentence.
trends-direction =
    { $kind ->
        [distance] { $much ->
            [more] plus loin
           *[less] plus près
        }
        [height] { $much ->
            [more] plus haut
           *[less] plus bas
        }
        [lateral] { $much ->
            [more] plus à gauche du véhicule
           *[less] plus à droite du véhicule
        }
        [yaw] { $much ->
            [more] tourné, l’extrémité gauche plus près
           *[less] tourné, l’extrémité droite plus près
        }
        [pitch] { $much ->
            [more] le haut plus écarté du véhicule
           *[less] le haut plus penché vers le véhicule
        }
        [roll] { $much ->
            [more] de travers, l’extrémité droite plus basse
           *[less] de travers, l’extrémité gauche plus basse
        }
       *[other] { $much ->
            [more] plus
           *[less] moins
        }
    }
trends-direction-than =
    { $than ->
        [before] { $direction } qu’avant
        [others] { $direction } que chez les autres
       *[required] { $direction } que demandé
    }
trends-factor =
    { $factor ->
        [technician] Technicien
        [bay] Poste
        [setup] Fiche de montage
        [kit] Jeu de marqueurs
        [vehicle] Véhicule
        [camera] Appareil
        [week] Semaine
       *[other] { $factor }
    }
trends-subject =
    { $factor ->
        [bay] Poste { $name }
        [setup] Fiche de montage { $name }
        [kit] Jeu de marqueurs { $name }
       *[other] { $name }
    }
trends-amount = { $amount } { $unit } ({ $size } tolérances)
trends-amount-tolerances = { $size } tolérances
trends-effect-shift = { $who } : { $what } s’écarte de { $amount } ({ $way }), toujours de ce côté, même par rapport aux autres au même endroit.
trends-effect-change = { $who } : depuis la semaine { $week }, { $what } a changé de { $amount } ({ $way }).
trends-effect-sheet = { $who } : elle indique { $what } { $nominal } { $unit }, mais les valeurs de ses dossiers se situent autour de { $value } { $unit } (à { $off } tolérances), quel que soit l’opérateur : comparer la fiche à sa source.
trends-effect-slip = { $said } Faute de frappe probable : { $slip }.
trends-slip =
    { $slip ->
        [sign] signe inversé
        [inches] pouces et millimètres confondus
        [point] virgule décalée d’un rang
        [swapped] deux chiffres intervertis
       *[digit] un chiffre erroné
    }
trends-effect-finding = { $who } : le constat { $code } a été fait { $seen } fois, alors que { $expected } sont à attendre d’après les autres au même endroit.
trends-effect-outside = { $who } : { $what } était hors tolérance { $seen } fois, alors que { $expected } sont à attendre d’après les autres au même endroit.
trends-also-outside = { $what } hors tolérance
trends-together = Impossible à distinguer de ceci : { $other } ; les dossiers sont les mêmes.
trends-together-one =
    { $factor ->
        [setup] fiche de montage { $name }
        [kit] jeu de marqueurs { $name }
        [bay] poste { $name }
        [vehicle] véhicule { $name }
        [camera] appareil { $name }
       *[technician] technicien { $name }
    }
trends-together-all =
    { $factor ->
        [setup] les fiches de montage associées
        [kit] les jeux de marqueurs associés
        [bay] les postes associés
        [vehicle] les véhicules associés
        [camera] les appareils associés
       *[technician] les personnes associées
    }
trends-advice-technician-change = Quelque chose a changé dans la façon de travailler de cette personne : demander quoi avant de conclure.
trends-advice-technician = Regarder les photos ensemble : une telle habitude se découvre et se corrige au support, non dans un tableau.
trends-advice-bay-change = Demander ce qui a été changé à ce poste : un pont, le sol, ses repères, les lampes.
trends-advice-bay = Vérifier le sol (`baywitness bay`), ses repères et ce qui sert d’alignement à ce poste.
trends-advice-kit = Mesurer de nouveau le jeu de marqueurs (`baywitness survey`, `recheck`) : un porte-marqueurs a été plié, est tombé ou a été monté autrement.
trends-advice-setup-change = Comparer les révisions de la fiche : depuis, elle demande autre chose, ou les véhicules diffèrent.
trends-advice-setup = Comparer chaque chiffre de la fiche aux informations de service qu’elle cite, puis la corriger et juger de nouveau ses dossiers.

# The page.
trends-title = Tendances de { $count ->
        [one] un dossier
       *[other] { $count } dossiers
    }
trends-period = Du { $first } au { $last }.
trends-copies =
    { $count ->
        [one] Une copie a été comptée
       *[other] { $count } copies ont été comptées
    } une seule fois.
trends-not-judged =
    { $count ->
        [one] Un dossier n’a pu être jugé
       *[other] { $count } dossiers n’ont pu être jugés
    } lors de l’audit.
trends-unreadable =
    { $count ->
        [one] Un fichier ou une ligne n’a pu être lu
       *[other] { $count } fichiers ou lignes n’ont pu être lus
    }.
trends-pseudonyms = Les personnes portent un pseudonyme ; les résultats et rapports liés les nomment.
trends-unreadable-title = Ce qui n’a pu être lu
trends-percent = { $share } %
trends-share-interval = { $share } % (de { $low } à { $high } %)
trends-interval = { $value } (de { $low } à { $high })
trends-beyond-chance = Ce qui dépasse le hasard
trends-nothing = Rien. Les différences entre personnes, postes, fiches de montage et jeux de marqueurs ci-dessous ne dépassent pas celles du hasard.
trends-effect-interval = Intervalle à 95 % : de { $low } à { $high } tolérances.
trends-effect-chance =
    { $count ->
        [one] Un premier essai
       *[other] { $count } premiers essais
    } ; probabilité d’une telle différence quelque part dans une archive sans aucun effet : { $chance }.
trends-one-in-a-million = moins d’une sur un million
trends-effect-also = Plus fréquent ici aussi : { $others }.
trends-do = À faire :
trends-effect-jobs = Ses dossiers, les plus écartés d’abord
trends-jobs =
    { $count ->
        [one] un dossier
       *[other] { $count } dossiers
    }
trends-jobs-some = { $shown } dossiers sur { $count } ; tous : jobs.csv
trends-link-report = rapport et ses photos
trends-link-result = résultat
trends-link-folder = dossier source
trends-misplaced-title = Comment le support était mal placé
trends-misplaced-aside = Contrôles hors tolérance, en part des dossiers qui en comportent un tel ; les traits sont des intervalles à 95 % (Wilson).
trends-misplaced-none = Aucun contrôle n’était hors tolérance.
trends-misplaced-chart = Mauvais placements par type et direction
trends-misplaced = { $what } : { $way }
trends-misplaced-note =
    { $count ->
        [one] un dossier
       *[other] { $count } dossiers
    }, { $share }
trends-size = { $amount } { $unit } ({ $size } tolérances)
trends-column-check = Contrôle
trends-column-way = Dans quel sens
trends-column-jobs = Dossiers
trends-column-median = Médiane
trends-column-ninth = Neuf sur dix en dessous
trends-column-within = Dans la tolérance
trends-column-outside = Hors tolérance
trends-column-not-proven = Non prouvé
trends-column-retake = À refaire
trends-column-share = Part hors tolérance, 95 %
trends-column-setup = Fiche de montage
trends-column-first = Premiers essais
trends-column-mean = Moyenne
trends-column-deviation = Écart type
trends-column-cp = Cp, 95 %
trends-column-cpk = Cpk, 95 %
trends-by =
    { $factor ->
        [technician] Par technicien
        [bay] Par poste
        [setup] Par fiche de montage
        [kit] Par jeu de marqueurs
        [vehicle] Par véhicule
        [camera] Par appareil
        [week] Par semaine
       *[other] Par { $factor }
    }
trends-no-group = Aucun dossier ne l’indique.
trends-people-note = Dans l’ordre des noms : une différence entre personnes n’est dite telle que là où elle dépasse le hasard (ci-dessus). Qui travaille à un mauvais poste a de mauvais chiffres.
trends-groups-folded = { $count } en tout : parts, chiffres, dossiers
trends-group-note =
    { $outside } dossiers sur { $count }{ $few ->
        [yes] , peu
       *[no] { "" }
    }
trends-all-jobs = tous les dossiers
trends-share-chart = Part hors tolérance, { $factor }
trends-share-note = Part des dossiers hors tolérance avec intervalles à 95 %. Des intervalles qui se chevauchent ne disent rien ; un sur vingt est à côté de la vérité par hasard.
trends-first-attempts =
    { $count ->
        [one] un premier essai
       *[other] { $count } premiers essais
    }
trends-level =
    { $against ->
        [nominal] nominal
       *[others] les autres
    }
trends-which-way = Dans quel sens : { $what }
trends-which-way-note = Moyenne de (valeur - nominal) / tolérance par rapport aux autres, autres facteurs ôtés ; intervalles à 95 % de chacun. Vers la droite : { $way }.
trends-stands-out = ressort : voir plus haut
trends-few-jobs = peu de dossiers : dit peu
trends-attempts-title = Premier essai et dernier
trends-attempts-first = Dans la tolérance au premier essai : { $within } sur { $count } ({ $share }).
trends-attempts-none = Aucun ordre de réparation n’a plus d’un essai.
trends-attempts = Sur { $series } ordres de réparation à plusieurs essais, { $first } étaient dans la tolérance au premier et { $last } au dernier.
trends-attempts-size = Le plus grand écart était en moyenne de { $first } tolérances à la première, de { $last } à la dernière.
trends-capability-title = Aptitude par fiche de montage
trends-capability-note = (valeur - nominal) / tolérance des premiers essais ; Cp et Cpk avec intervalles à 95 % pour une dispersion normale (ISO 22514-2). En dessous de 1, la dispersion ne tient pas dans la tolérance.
trends-capability-none = Aucune fiche n’a huit premiers essais.
trends-capability-folded =
    { $count ->
        [one] un contrôle
       *[other] { $count } contrôles
    }
trends-findings-title = Constats
trends-finding = { $code } : { $share } de tous les dossiers
trends-findings-none = Aucun.
trends-findings-note = `baywitness explain CODE` dit ce que signifie un code ; `baywitness gallery` les montre tous.
trends-method-title = Comment cela a été trouvé, et ce que cela ne peut dire
trends-method-compared = On compare les premiers essais ({ $count }), pour que nul n’améliore ses chiffres en recommençant. Personnes, postes, fiches de montage et jeux de marqueurs sont distingués par un modèle additif pour chaque grandeur ; les constats sont comparés au sein de strates de tous les autres facteurs (Mantel et Haenszel, exact).
trends-method-tests = { $count } tests ont été faits. Avec la correction de Holm, au plus une archive sur { $archives } sans aucun effet en voit nommer un ici. Les différences inférieures à { $size } tolérances et les groupes de moins de { $jobs } premiers essais ne sont jamais nommés.
trends-method-changes = Les changements sont cherchés par sommes cumulées sur les dossiers un à un ; la semaine est la plus probable, une voisine peut être la bonne. La carte hebdomadaire signale par hasard une fois en { $run } semaines (tolérance { $allowance }, intervalle { $interval }), et { $shifted } semaines après un décalage d’un écart type d’une moyenne hebdomadaire.
trends-method-together = Ce qui va toujours ensemble (une personne qui ne travaille qu’à un poste avec un jeu de marqueurs) ne se distingue par aucun chiffre ; c’est dit là où il en est ainsi.
trends-method-not-why = Les chiffres disent que quelque chose diffère, non pourquoi, ni à qui la faute. Les dossiers dont les photos n’ont pu servir ne comptent que comme verdict.
trends-foot = Les informations de service du constructeur du véhicule et les règles locales font foi. Ces chiffres documentent des montages et ne remplacent aucune procédure ; le travail est réservé à un personnel formé, les lasers et les véhicules levés exigent leurs propres précautions.

# Charts over time.
trends-week-point = { $week } : { $outside } sur { $count } hors tolérance
trends-weeks-title = Semaine par semaine
trends-weeks-few = Trop peu de semaines, ou aucun dossier n’indique son heure.
trends-weeks-note = Part des dossiers hors tolérance ; limites à trois écarts types pour le nombre de dossiers de la semaine. Au-delà : carrés.
trends-weeks-chart = Part hors tolérance par semaine
trends-mean = moyenne
trends-limit = limite
trends-tolerance = tolérance
trends-mean-range = étendue moyenne
trends-jobs-title = Dossier par dossier
trends-jobs-note = (valeur - nominal) / tolérance des dernières premiers essais, et dessous les différences entre voisins ; limites tirées de l’étendue mobile moyenne (2,660 et 3,267 fois). Au-delà : carrés. Chaque point mène à son dossier.
trends-point = { $name } : { $value }
trends-latest = les { $shown } dernières sur { $count }
trends-single-values = Valeurs individuelles
trends-moving-ranges = Étendues mobiles
trends-week-mean =
    { $week } : { $mean } pour { $count ->
        [one] un dossier
       *[other] { $count } dossiers
    }
trends-effect-weeks =
    { $against ->
        [nominal] Moyenne par semaine, en tolérances
       *[others] Moyenne par semaine par rapport aux autres, en tolérances
    }{ $changed ->
        [yes] ; carrés : depuis le changement.
       *[no] .
    }
trends-effect-chart = Moyenne par semaine
trends-sums-note = Somme cumulée des moyennes par semaine par rapport au niveau précédent, le plus grand des deux côtés, tracée jusqu’à quatre intervalles.
trends-sums-chart = Sommes cumulées
trends-decision-interval = intervalle

# What the command prints.
trends-said-jobs =
    { $count ->
        [one] { $count } dossier
       *[other] { $count } dossiers
    }
trends-said-also =
    { $what ->
        [copies] { $count ->
            [one] { $count } copie comptée une fois
           *[other] { $count } copies comptées une fois
        }
        [errors] { $count } non jugés
        [unreadable] { $count } illisibles
       *[others] { $count } autres JSON
    }
trends-said-unreadable = illisible : { $words }
trends-said-verdict = { $verdict } ({ $share } %)
trends-said-nothing = Rien ne dépasse ce que le hasard explique.
trends-said-report = Rapport : { $file }

# Ce qui ne se lit pas d'une archive ; `trends-in-file` met le fichier devant la raison.
trends-in-file = { $file } : { $why }
trends-cannot-read = impossible de lire { $path } : { $why }
trends-no-results = aucun résultat trouvé : indiquer le répertoire d’un audit, ou des fichiers de résultats comme les écrivent `verify --json` et `audit`
trends-no-results-because = aucun résultat trouvé : indiquer le répertoire d’un audit, ou des fichiers de résultats comme les écrivent `verify --json` et `audit` ({ $why })
trends-no-verdict = un résultat sans verdict
trends-row-no-verdict = une ligne sans verdict connu
trends-no-parquet = ce programme a été compilé sans Parquet : indiquer le répertoire de l’audit ou son audit.jsonl, ou compiler avec l’option `parquet`
trends-not-json = n’est pas du JSON : `{ $found }` se trouve où un objet devrait commencer
trends-cut-off = son dernier objet est coupé
trends-parquet-damaged = n’est pas un fichier Parquet lisible ({ $why }) : refaire l’audit
trends-parquet-rows = annonce un nombre de lignes impossible : refaire l’audit
trends-parquet-column = annonce une colonne plus grande que le fichier : refaire l’audit
trends-parquet-other = n’est pas le tableau d’un audit : indiquer audit.parquet du répertoire d’un audit
trends-parquet-part = contient un contrôle ou un constat sans ses mots : refaire l’audit
