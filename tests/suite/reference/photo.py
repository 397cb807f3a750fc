"""OpenCV's reading of photos as grey, for comparison.

Reads `{"photos": [path], "out": folder, "runs": n}`. Each photo is also written anew as a
progressive file, `out/INDEX.jpg`; then each photo's grey levels (stored grid) go to
`out/INDEX.raw`, first those of the photos, then those of the new files; answers with sizes
and, per file, the milliseconds of each of `runs` readings on one thread.
"""
import json
import sys
import time

import cv2

cv2.setNumThreads(1)
job = json.load(sys.stdin)
answer = []
SAMPLING = [cv2.IMWRITE_JPEG_SAMPLING_FACTOR_420, cv2.IMWRITE_JPEG_SAMPLING_FACTOR_422, cv2.IMWRITE_JPEG_SAMPLING_FACTOR_444]
again = []
for index, path in enumerate(job["photos"]):
    colours = cv2.imread(path, cv2.IMREAD_COLOR | cv2.IMREAD_IGNORE_ORIENTATION)
    again.append(f"{job['out']}/{index}.jpg")
    cv2.imwrite(again[-1], colours, [
        cv2.IMWRITE_JPEG_PROGRESSIVE, 1, cv2.IMWRITE_JPEG_QUALITY, 90, cv2.IMWRITE_JPEG_OPTIMIZE, index % 2,
        cv2.IMWRITE_JPEG_SAMPLING_FACTOR, SAMPLING[index % 3], cv2.IMWRITE_JPEG_RST_INTERVAL, 0 if index < 3 else 7])
for index, path in enumerate(job["photos"] + again):
    times = []
    for _ in range(job["runs"]):
        start = time.perf_counter()
        grey = cv2.imread(path, cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION)
        times.append(1000.0 * (time.perf_counter() - start))
    grey.tofile(f"{job['out']}/{index}.raw")
    answer.append({"width": grey.shape[1], "height": grey.shape[0], "ms": times})
json.dump({"opencv": cv2.__version__, "photos": answer}, sys.stdout)
