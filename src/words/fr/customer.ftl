customer-title = Pour le client : où se trouvait la cible
customer-page-title = Pour le client : dossier { $job }
customer-why = Les caméras et radars qui aident le conducteur sont réglés à l’atelier avec une cible placée devant le véhicule. Elle doit se trouver au bon endroit, sinon le capteur apprend une mauvaise direction. Cette page indique où se trouvait la cible, mesuré d’après des photos.
customer-answer =
    { $verdict ->
        [within] La cible se trouvait là où elle devait être, pour tout ce qui a été contrôlé.
        [outside] La cible ne se trouvait pas là où elle devait être.
        [not_proven] Il n’est pas prouvé que la cible se trouvait là où elle devait être.
       *[retake] Ces photos ne prouvent pas où se trouvait la cible.
    }
customer-what = Ce qui a été mis en place
customer-vehicle = Véhicule
customer-vin = Numéro d’identification du véhicule (VIN)
customer-repair-order = Ordre de réparation
customer-photos-taken = Photos prises
customer-job = Dossier
customer-proven = Ce qui est prouvé
customer-proven-simple = Ce qui, mesuré, est dans les limites
customer-proven-likely = Ce qui est dans les limites avec au moins { $least } % de probabilité
customer-proven-nothing = Rien.
customer-open = Ce qui n’est pas prouvé, ou est faux
customer-open-nothing = Rien n’est resté ouvert.
customer-photos = Avec quelles photos
customer-no-photo = Aucune photo n’a pu être lue.
customer-whose = D’où viennent ces limites
customer-whose-nobody = De nulle part : la fiche de montage n’indique aucune source pour ses limites. Demandez à l’atelier d’où elles viennent.
customer-meaning = Ce que cela veut dire, et ne veut pas dire
customer-again = C’est vérifiable : quiconque a les photos et les fichiers peut les faire mesurer à nouveau.
customer-repeats = Cette page reproduit le fichier result.json, écrit par { $tool }. Le SHA-512 de ce fichier :
customer-void = Les chiffres tirés de ces photos ne sont pas fiables. Le rapport du technicien dit pourquoi.
customer-held = Il faut d’abord éclaircir quelque chose. Le rapport du technicien dit quoi.
customer-waived = { $name } : non contrôlé. Motif indiqué : { $because }.
customer-not-checked = { $name } : non contrôlé.
customer-no-check = La fiche de montage ne demande aucun contrôle.
customer-not-seen = { $name } : les photos ne le montrent pas.
customer-not-trusted = { $name } : aucun chiffre fiable.
customer-held-up = { $name } : non prouvé tant que cela reste ouvert.
customer-within = { $figures }.
customer-outside = { $figures } : c’est en dehors de ce qui est permis.
customer-too-close = { $figures } : trop juste pour trancher avec ces photos.
customer-figures = { $amount } (à { $u } près) ; requis : { $allowed }
customer-figure-alone = { $amount } ; requis : { $allowed }
customer-named = { $name } : { $figures }
customer-named-read = { $name } (lu sur un instrument, non vu sur les photos) : { $figures }
customer-no-value = aucune valeur
customer-allowed = { $nominal }, à { $half } près au plus
customer-quantity =
    { $quantity ->
        [distance] À quelle distance du véhicule se trouvait la cible
        [centring] De combien la cible était décalée sur le côté
        [height] À quelle hauteur se trouvait la cible
        [yaw] Si la cible faisait bien face au véhicule
        [pitch] De combien la cible penchait vers le véhicule ou en arrière
       *[roll] Si la cible était de niveau d’un côté à l’autre
    }
customer-distance-from =
    { $datum ->
        [nose] À quelle distance de l’avant du véhicule se trouvait la cible
        [front_axle] À quelle distance de l’essieu avant se trouvait la cible
        [rear_axle] À quelle distance de l’essieu arrière se trouvait la cible
       *[other] À quelle distance du point « { $datum } » se trouvait la cible
    }
customer-with-extras = { $name } ({ $extras })
customer-photo =
    { $used ->
        [yes] Photo { $number } : { $file }
       *[no] Photo { $number } : { $file } (inutilisable)
    }
customer-photo-taken =
    { $used ->
        [yes] Photo { $number } : { $file }, prise { $taken }
       *[no] Photo { $number } : { $file }, prise { $taken } (inutilisable)
    }
customer-many-photos = { $count } photos. { $photos }
customer-meaning-moment = Il s’agit du moment où les photos ont été prises, et seulement de la place de la cible.
customer-meaning-not = Cela ne dit pas que le réglage a réussi, que le capteur fonctionne ni que le véhicule est sûr.
customer-meaning-scan = Le technicien a noté « { $result } » comme indication de l’outil de diagnostic. Cela ne fait pas partie de cette preuve.
customer-meaning-u = « À … près » est l’incertitude de la mesure elle-même : dans 95 cas sur 100, le chiffre vrai s’y trouve.
customer-meaning-limits = Si les limites sont les bonnes pour ce véhicule, ce sont les informations de service du constructeur et les règles locales qui le disent ; elles font foi.
customer-meaning-trained = Ce travail est réservé à des personnes formées ; cette page ne remplace aucune étape de la procédure. Lasers et véhicules levés exigent leurs propres précautions.

customer-series = Ordre de réparation { $series }
customer-series-vehicle = Véhicule : { $vehicle }
customer-stands-now = Où on en est
customer-last-counts = Pour chaque capteur, le dernier essai compte ; les précédents sont conservés.
customer-all-attempts = Tous les essais
customer-attempt-line =
    { $numbered ->
        [yes] Dossier { $job }, essai { $number }, { $photos ->
            [one] une photo
           *[other] { $photos } photos
        }.
       *[no] Dossier { $job }, { $photos ->
            [one] une photo
           *[other] { $photos } photos
        }.
    }
customer-which-last = Impossible de savoir quel essai est le dernier :
customer-number-them = deux indiquent le même numéro et la même heure. Numéroter les essais.
customer-sensor = Capteur
customer-attempt = Essai
customer-verdict = Verdict
customer-not-stated = non indiqué
customer-series-only = Seuls figurent ici les dossiers examinés ensemble. Un capteur absent n’a pas été examiné.
customer-series-about = Il s’agit de l’endroit où se trouvait chaque cible lors de la prise de ses photos. Cela ne dit pas qu’un réglage a réussi ni qu’un capteur fonctionne.
customer-series-own-page = Chaque dossier a sa propre page avec ses chiffres, ses photos et l’origine des limites.
customer-series-govern = Les informations de service du constructeur du véhicule et les règles locales font foi. Ce travail est réservé à des personnes formées ; lasers et véhicules levés exigent leurs propres précautions.
