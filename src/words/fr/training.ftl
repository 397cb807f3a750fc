# S'exercer : la galerie des erreurs, les exercices et leur notation.

## La page de la galerie

training-gallery = Galerie des erreurs
training-gallery-lede = Chaque constat d’un rapport, montré dans un poste inventé : une erreur à la fois, la même photo sans elle et avec elle, et ce que disent les valeurs. Tout ici est généré et mesuré par le programme lui-même.
training-gallery-caution = Les informations de service du constructeur du véhicule et les règles locales font foi. La galerie montre à quoi ressemblent les constats ; elle ne remplace aucune procédure. Le travail est réservé au personnel formé ; lasers et véhicules levés exigent leurs propres précautions.
training-findings = Constats
training-void = la mesure n’est pas fiable
training-stop = rien n’est déclaré dans la tolérance
training-warn = mérite un coup d’œil
training-note = bon à savoir
training-in-this-bay = Dans ce poste :
training-alt-without = { $title } : sans l’erreur
training-alt-with = { $title } : avec l’erreur
training-as-it-should-be = Comme il faut
training-with-the-mistake = Avec l’erreur
training-what-it-says = Ce qu’il dit
training-how-it-comes-about = Comment cela arrive
training-how-to-see-it = À quoi le voir
training-how-to-mend-it = À faire
training-in-the-figures = Comment cela se voit dans les valeurs
training-companions = Apparaît avec : { $codes }.
training-whole-report = Le rapport complet de ce dossier
training-check = Contrôle
training-required = Requis
training-without = Sans l’erreur
training-with = Avec elle
training-verdict = Verdict
training-not-determined = non déterminé
training-not-checked = non contrôlé
training-not-used = non utilisée
training-misfit = Accord des photos entre elles (moyenne quadratique, px) : { $without } sans l’erreur, { $with } avec elle.

## Les progrès de l'apprenant

training-progress = Progrès aux exercices
training-progress-lede = Points de chaque exercice dans l’ordre de la notation. Les exercices déjà notés auparavant (cercles vides) ne comptent pas : leurs réponses étaient connues.
training-drill-caution = Les exercices sont inventés et exercent à lire un montage ; ils ne remplacent pas la formation sur un véhicule réel. Les informations de service du constructeur du véhicule et les règles locales font foi. Le travail est réservé au personnel formé ; lasers et véhicules levés exigent leurs propres précautions.
training-chart = Part des points de chaque exercice
training-level = Niveau { $level }
training-point = { $day }, niveau { $level } : { $percent } % des points
training-head-mistake = Erreur
training-head-there = Présente
training-head-named = Nommée
training-head-right-way = Sens juste
training-head-right-size = Valeur juste
training-head-share = Nommée, 95 %
training-interval = { $low } à { $high } %
training-few = trop peu pour conclure
training-last-drill = Le dernier exercice : { $day }, niveau { $level }
training-job = Dossier
training-head-points = Points
training-head-remarks = Ce qu’il y avait, et la réponse donnée
training-points = { $points } sur { $points_of }
training-job-points = { $job } : { $points } points sur { $points_of }
training-score = constats { $named } sur { $there }, sens { $ways } sur { $ways_of }, valeurs { $sizes } sur { $sizes_of }, fausses alarmes { $false_alarms } : { $points } points sur { $points_of }
training-marked-before = Cet exercice a déjà été noté : ses réponses étaient connues.

## Les réponses à un dossier

training-nothing-wrong = Rien de faux
training-nothing-was-wrong = rien n’était faux
training-nothing-was-wrong-and-said = rien n’était faux, et c’est ce qui a été répondu
training-missed = manqué : { $truth }
training-right = juste : { $truth }
training-partly =
    { $right ->
        [way] nommé, sens juste, valeur fausse : { $truth } ; réponse : { $answer }
        [size] nommé, sens faux, valeur juste : { $truth } ; réponse : { $answer }
       *[neither] nommé, sens faux, valeur fausse : { $truth } ; réponse : { $answer }
    }
training-not-so = ce n’est pas le cas : { $answer }
training-no-answer = aucune réponse n’a été donnée
training-answer-one = { $title } : { $part }
training-answer-both = { $title } : { $way }, { $size }
training-size =
    { $unit ->
        [deg] { $size }°
       *[mm] { $size } mm
    }
training-way-away = l’éloigner
training-way-towards = le rapprocher du véhicule
training-way-left = le déplacer à gauche
training-way-right = le déplacer à droite
training-way-raise = le monter
training-way-lower = le baisser
training-way-left-end-towards = tourner son extrémité gauche vers le véhicule
training-way-left-end-away = tourner son extrémité gauche à l’opposé du véhicule
training-way-top-away = incliner le haut à l’opposé du véhicule
training-way-top-towards = incliner le haut vers le véhicule
training-way-right-end-lower = baisser son extrémité droite
training-way-right-end-raise = monter son extrémité droite

## Ce que contient le dossier d'un exercice

training-level-1 = une grosse erreur
training-level-2 = une erreur, ou aucune
training-level-3 = une petite erreur, ou aucune
training-level-4 = jusqu’à deux erreurs
training-level-5 = jusqu’à trois petites erreurs
training-how-to-head = Un exercice de niveau { $level }, dans chaque dossier : { $words }. Tout est inventé.
training-how-to-folders = Chaque répertoire est un dossier : photos, fiche de montage (setup.toml : ce qui est requis, et avec quelle tolérance) et readings.txt.
training-how-to-answer = Dire pour chaque dossier ce qui est hors tolérance, dans quel sens le déplacer et de combien : remplir answers.csv ou taper
training-how-to-several = Plusieurs erreurs d’un dossier font plusieurs lignes ; si rien n’est faux, le constat est `none`.
training-how-to-findings = Constats (FINDING) : { $codes }
training-how-to-ways = Sens (WAY) : { $ways }
training-how-to-sizes = Valeurs (SIZE) : mm, ou degrés pour stand-turned, stand-tilted et stand-not-level.
training-how-to-seal = Le fichier du jeu reste scellé jusqu’à la notation de l’exercice ; ensuite chaque dossier peut être vérifié. Le scellé protège les réponses d’un coup d’œil et montre si elles ont été changées ; ce n’est pas une serrure.
training-read-head = { $job } : relevé au support (un poste inventé)
training-read-distance = Face de la cible devant l’avant du véhicule, au milieu
training-read-left-end = Extrémité gauche du support (côté du véhicule) devant l’avant
training-read-right-end = Extrémité droite du support (côté du véhicule) devant l’avant
training-read-centring = Point visé par rapport à l’axe médian, positif à gauche du véhicule
training-read-height = Point visé au-dessus du sol
training-read-plumb-line = Fil à plomb sur la face : haut plus loin du véhicule que le bas
training-read-water-level = Niveau à eau : extrémité gauche (côté du véhicule) plus haute que la droite
training-read-bases = Les extrémités sont à { $ends } mm l’une de l’autre, les points du fil à plomb à { $points } mm. Rotation, inclinaison et niveau en degrés s’en déduisent.

## Ce que disent les commandes

training-rendering = rendu de { $job }
training-made =
    { $jobs ->
        [1] { $folder } : un dossier, { $words } ; y lire HOW-TO.txt
       *[other] { $folder } : { $jobs } dossiers, { $words } ; y lire HOW-TO.txt
    }
training-sealed = Les réponses sont scellées ; leur SHA-256 : { $digest }
training-progress-page = Progrès : { $page }
training-gallery-page = Galerie : { $page }
training-cannot-find = { $path } est introuvable : { $why }
training-cannot-read = impossible de lire { $path } : { $why }
training-cannot-write = impossible d’écrire { $path } : { $why }
training-cannot-verify = impossible de vérifier le dossier généré { $job } : { $why }
training-cannot-picture = impossible de faire les images de { $job } : { $why }
training-no-scene = la galerie n’a pas de scène pour { $code }
training-no-level = il n’y a pas de niveau { $level } : choisir de 1 à { $last }
training-so-many-jobs = { $count } dossiers : choisir de 1 à { $most }
training-drill-is-there = { $folder } contient déjà un exercice : nommer un autre répertoire
training-no-random-bytes = le système ne donne pas d’octets aléatoires : { $why }
training-drill-unreadable = { $path } : { $why } ; refaire l’exercice
training-drill-format = { $path } : le format est { $format }, pas drill/1
training-at-line = { $path }, ligne { $line } : { $why }
training-unknown =
    { $what ->
        [job] pas de dossier `{ $word }` ; sont connus { $all }
        [finding] pas de constat `{ $word }` ; sont connus { $all }
       *[way] pas de sens `{ $word }` ; sont connus { $all }
    }
training-unknown-near =
    { $what ->
        [job] pas de dossier `{ $word }` ; s’agit-il de `{ $near }` ?
        [finding] pas de constat `{ $word }` ; s’agit-il de `{ $near }` ?
       *[way] pas de sens `{ $word }` ; s’agit-il de `{ $near }` ?
    }
training-no-size = `{ $word }` n’est pas une valeur : un nombre de mm ou de degrés
training-answered = Noté pour { $job } : { $answer }.
training-answer-cells = a { $found } cellules, { $most } au plus sont voulues : job, finding, way, size ; entre virgules, écrire les décimales avec un point
training-answers-changed = { $path } n’est pas ce sur quoi { $drill } s’est engagé : les réponses ont été changées, rien n’est noté
training-gives-back-other = { $path } : ses réponses écriraient { $name }, qu’aucun dossier de cet exercice ne contient : rien n’est noté ; faire refaire l’exercice
training-gives-back-link = { $path } est un lien : rien n’est écrit à travers lui et rien n’est noté ; y mettre le propre répertoire du dossier avec ses fichiers
training-drill-changed = { $path } a un autre niveau ou d’autres dossiers que ceux scellés avec les réponses : rien n’est noté ; remettre le fichier comme il était
training-level-unsealed = Cet exercice a été fait avant que le niveau soit scellé avec les réponses : rien ne prouve qu’il est de niveau { $level }.
training-progress-unreadable = { $path }, ligne { $line } : { $why } ; corriger ou nommer un autre fichier de progrès
training-progress-edited = { $path }, ligne { $line } : ses points ne sont pas ceux que le programme tire des réponses qu’elle contient ; rétablir la ligne ou nommer un autre fichier de progrès
