"""SciPy's and NumPy's answer to one photo and one sensor's pattern.

Reads the photo's pixels and the pattern's file from standard input; answers the noise that scipy.signal.wiener takes
away, and peak-to-correlation energy and shift from plain Fourier transforms, with the file decoded anew from its
description in docs/formats.
"""
import base64
import json
import sys
import tomllib

import numpy as np
from scipy.signal import wiener

BLOCK = 256
asked = json.load(sys.stdin)
width, height = asked["width"], asked["height"]
photo = np.array(asked["pixels"], float).reshape(height, width)

padded = np.pad(photo, 6, mode="reflect")
noise = (padded - wiener(padded, 5, asked["noise"]))[6:-6, 6:-6]

level = noise.copy()
for axis in (1, 0):
    for start in range(8):
        part = (slice(None), slice(start, None, 8)) if axis == 1 else (slice(start, None, 8), slice(None))
        level[part] -= level[part].mean(axis=axis, keepdims=True)
level *= np.where((photo >= 4) & (photo <= 250), photo, 0)

head, body = base64.b64decode(asked["file"]).split(b"\n\n", 1)
head = tomllib.loads(head.decode())
signs, place = np.zeros(head["width"] * head["height"]), 0
for byte in body:
    place += byte & 127
    if byte & 127 < 127:
        signs[place] = -1 if byte & 128 else 1
        place += 1
signs = signs.reshape(head["height"], head["width"])

total = 0
for top in range(0, height, BLOCK):
    for left in range(0, width, BLOCK):
        cut = [np.zeros((BLOCK, BLOCK)) for _ in range(2)]
        for block, picture in zip(cut, (level, signs)):
            piece = picture[top:top + BLOCK, left:left + BLOCK]
            block[:piece.shape[0], :piece.shape[1]] = piece
        total = total + np.fft.fft2(cut[0]) * np.conj(np.fft.fft2(cut[1]))
surface = np.fft.ifft2(total).real
# As many pixels meet at each shift as ones correlate to.
meet = 0
for top in range(0, height, BLOCK):
    for left in range(0, width, BLOCK):
        ones = np.zeros((BLOCK, BLOCK))
        ones[:height - top, :width - left] = 1
        meet = meet + np.abs(np.fft.fft2(ones)) ** 2
share = np.fft.ifft2(meet).real
share /= share.max()
surface = np.where(share > 0.25, surface / np.sqrt(np.maximum(share, 0.25)), 0)
peak = np.unravel_index(surface.argmax(), surface.shape)
away = share > 0.25
rows, columns = (np.arange(p - 5, p + 6) % BLOCK for p in peak)
away[np.ix_(rows, columns)] = False
energy = surface[peak] ** 2 / (surface[away] ** 2).mean()
shift = [int(p) if p < BLOCK // 2 else int(p) - BLOCK for p in peak[::-1]]
json.dump({"noise": noise.ravel().tolist(), "energy": float(energy), "shift": shift}, sys.stdout)
