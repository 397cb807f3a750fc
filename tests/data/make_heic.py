"""Writes wave.heic: a grey wave, 200 x 120 as coded, to be turned 90 degrees
clockwise (irot 3); with libheif's encoder (PyPI pillow-heif 1.1 or newer)."""
import numpy as np
import pillow_heif
from PIL import Image

v, u = np.mgrid[0:120, 0:200]
grey = np.round(128 + 90 * np.sin(u * 0.07) * np.cos(v * 0.05)).astype(np.uint8)
exif = Image.Exif()
exif[0x010F] = "Example"
exif[0x0112] = 6
picture = Image.fromarray(np.dstack([grey] * 3))
pillow_heif.register_heif_opener()
picture.save("wave.heic", quality=90, exif=exif.tobytes())
