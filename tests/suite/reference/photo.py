"""OpenCV's reading of photos as grey, for comparison.

Reads `{"photos": [path], "out": folder, "runs": n}` and writes each photo's grey
levels (stored grid) to `out/INDEX.raw`; answers with sizes and, per photo, the
milliseconds of each of `runs` readings on one thread.
"""
import json
import sys
import time

import cv2

cv2.setNumThreads(1)
job = json.load(sys.stdin)
answer = []
for index, path in enumerate(job["photos"]):
    times = []
    for _ in range(job["runs"]):
        start = time.perf_counter()
        grey = cv2.imread(path, cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION)
        times.append(1000.0 * (time.perf_counter() - start))
    grey.tofile(f"{job['out']}/{index}.raw")
    answer.append({"width": grey.shape[1], "height": grey.shape[0], "ms": times})
json.dump({"opencv": cv2.__version__, "photos": answer}, sys.stdout)
