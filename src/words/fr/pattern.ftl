# Le motif propre d'un capteur : son fichier, et ce qu'il dit d'une photo.
pattern-too-large = { $file } : est plus grand que ne peut l’être le motif d’un capteur ; refaites-le avec camera fit --pattern
pattern-no-head = { $file } : n’est pas le motif d’un capteur ({ $why }) ; indiquez un fichier écrit par camera fit --pattern
pattern-not-whole = { $file } : n’est pas complet : ce qui suit ses premières lignes ne leur correspond pas ; refaites-le avec camera fit --pattern
pattern-sizes = { $photo } : a { $width } sur { $height } pixels, la première photo { $first_width } sur { $first_height } : un motif demande des photos d’une même taille ; retirez-la
pattern-few = { $photos } photos sont trop peu pour le motif d’un capteur : il en faut { $least }
pattern-faint = seules { $shown } photos sur { $photos } montrent un motif des autres : l’appareil le cache, ou les photos viennent de plusieurs appareils ; aucun motif n’est écrit
pattern-made = Motif du capteur : { $shown } photos sur { $photos } se retrouvent dans le motif des autres (la moitié avec une énergie de { $energy } ou plus ; { $needed } compte)
pattern-this-camera = { $photo } : cet appareil, { $camera } (probabilité d’une coïncidence au plus { $chance })
pattern-another-camera = { $photo } : un autre appareil : elle porte le motif de { $other } (probabilité d’une coïncidence au plus { $chance }) et non celui de { $camera }, qui se serait vu
pattern-cant-tell =
    { $photo } : impossible de dire si c’est { $camera } : { $why ->
        [no-pattern] aucun motif de cet appareil n’est connu
        [might-hide] elle porte le motif d’un autre appareil connu, mais trop faiblement pour affirmer que le sien se serait vu
        [alike] elle porte le motif d’un autre appareil connu, qui ressemble au sien : un appareil sous deux noms, ou un type d’appareil dont les motifs ne se distinguent pas
       *[faint] son motif ne se voit pas : un autre appareil, ou le traitement, la fusion de vues ou une retouche l’ont caché
    }
pattern-no-camera = { $photo } : impossible de le dire : aucun fichier d’appareil ne lui correspond
pattern-title = Quel appareil, d’après le motif propre du capteur (essayé sur peu d’appareils : docs/sensor-pattern.md)
pattern-twice = { $first } et { $second } sont tous deux des motifs de l’appareil { $camera } : retirez-en un
pattern-none = { $folder } : ne contient aucun motif de capteur (fichiers en .pattern) ; camera fit --pattern en fait un
pattern-counts = { $this } photos de l’appareil nommé, { $another } d’un autre, { $cant } impossible à dire
pattern-all = toutes : { $file }
pattern-not-looked = non examiné : { $why }
