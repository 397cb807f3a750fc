# A sensor's own pattern: its file, and what it says of a photo.
pattern-too-large = { $file }: is larger than a sensor's pattern may be; make it again with camera fit --pattern
pattern-no-head = { $file }: is no sensor's pattern ({ $why }); name a file that camera fit --pattern wrote
pattern-not-whole = { $file }: is not whole: what follows its first lines does not fit them; make it again with camera fit --pattern
pattern-sizes = { $photo }: has { $width } by { $height } pixels, the first photo { $first_width } by { $first_height }: a pattern takes photos of one size; leave it out
pattern-few = { $photos } photos are too few for a sensor's pattern: it takes { $least }
pattern-faint = only { $shown } of { $photos } photos show a pattern of the others: the camera's processing hides it, or the photos are of several cameras; no pattern is written
pattern-made = Sensor's pattern: { $shown } of { $photos } photos are found in the pattern of the others (half of them at an energy of { $energy } or more; { $needed } counts)
pattern-this-camera = { $photo }: this camera, { $camera } (chance of a chance match at most { $chance })
pattern-another-camera = { $photo }: another camera: it carries the pattern of { $other } (chance of a chance match at most { $chance }) and not that of { $camera }, which would have shown
pattern-cant-tell =
    { $photo }: can't tell whether it is { $camera }: { $why ->
        [no-pattern] no pattern of that camera is known
        [might-hide] it carries the pattern of another known camera, but too faintly to say that its own would have shown
        [alike] it carries the pattern of another known camera, whose pattern is like this one's: one camera under two names, or a kind of camera whose patterns can't be told apart
       *[faint] its pattern does not show: another camera, or processing, merged frames or an edit have hidden it
    }
pattern-no-camera = { $photo }: can't tell: no camera file fits it
pattern-title = Which camera, by the sensor's own pattern (tried on few cameras: docs/sensor-pattern.md)
pattern-twice = { $first } and { $second } are both patterns of the camera { $camera }: leave one of them
pattern-none = { $folder }: holds no sensor's pattern (files that end in .pattern); camera fit --pattern makes one
pattern-counts = { $this } photos by the camera that they name, { $another } by another one, { $cant } can't tell
pattern-all = all of them: { $file }
pattern-not-looked = not looked at: { $why }
