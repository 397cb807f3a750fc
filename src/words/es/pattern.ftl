# El patrón propio de un sensor: su archivo y lo que dice de una foto.
pattern-too-large = { $file }: es mayor de lo que puede ser el patrón de un sensor; hágalo de nuevo con camera fit --pattern
pattern-no-head = { $file }: no es el patrón de un sensor ({ $why }); indique un archivo que haya escrito camera fit --pattern
pattern-not-whole = { $file }: no está completo: lo que sigue a sus primeras líneas no encaja con ellas; hágalo de nuevo con camera fit --pattern
pattern-sizes = { $photo }: tiene { $width } por { $height } píxeles, la primera foto { $first_width } por { $first_height }: un patrón necesita fotos del mismo tamaño; quítela
pattern-few = { $photos } fotos son pocas para el patrón de un sensor: hacen falta { $least }
pattern-faint = solo { $shown } de { $photos } fotos muestran un patrón de las demás: la cámara lo oculta, o las fotos son de varias cámaras; no se escribe ningún patrón
pattern-made = Patrón del sensor: { $shown } de { $photos } fotos se reconocen en el patrón de las demás (la mitad con una energía de { $energy } o más; cuenta desde { $needed })
pattern-this-camera = { $photo }: esta cámara, { $camera } (probabilidad de una coincidencia casual como máximo { $chance })
pattern-another-camera = { $photo }: otra cámara: lleva el patrón de { $other } (probabilidad de una coincidencia casual como máximo { $chance }) y no el de { $camera }, que se habría visto
pattern-cant-tell =
    { $photo }: no se puede decir si es { $camera }: { $why ->
        [no-pattern] no se conoce ningún patrón de esa cámara
        [might-hide] lleva el patrón de otra cámara conocida, pero demasiado débil para afirmar que el suyo se habría visto
        [alike] lleva el patrón de otra cámara conocida, que se parece al suyo: una cámara con dos nombres, o un tipo de cámara cuyos patrones no se distinguen
       *[faint] su patrón no se ve: otra cámara, o el procesado, la fusión de tomas o una edición lo han ocultado
    }
pattern-no-camera = { $photo }: no se puede decir: ningún archivo de cámara encaja con ella
pattern-title = Qué cámara, según el patrón propio del sensor (probado con pocas cámaras: docs/sensor-pattern.md)
pattern-twice = { $first } y { $second } son ambos patrones de la cámara { $camera }: quite uno de ellos
pattern-none = { $folder }: no contiene ningún patrón de sensor (archivos que acaban en .pattern); camera fit --pattern hace uno
pattern-counts = { $this } fotos de la cámara que nombran, { $another } de otra, { $cant } no se puede decir
pattern-all = todas: { $file }
pattern-not-looked = no se ha examinado: { $why }
