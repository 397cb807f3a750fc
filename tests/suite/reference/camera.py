"""OpenCV's calibration of a chessboard, for comparison.

Reads `{"photos": [path], "corners": [[[u, v]]], "inner": [columns, rows], "square_mm": s,
"size": [w, h], "runs": n}`. Calibrates the given corners, and again without each
photo in turn; times reading, finding and calibrating from the files (fastest run).
"""
import json
import sys
import time

import cv2
import numpy as np

job = json.load(sys.stdin)
columns, rows = job["inner"]
board = np.zeros((columns * rows, 3), np.float32)
board[:, :2] = np.mgrid[0:columns, 0:rows].T.reshape(-1, 2) * job["square_mm"]
size = tuple(job["size"])
corners = [np.array(c, np.float32).reshape(-1, 1, 2) for c in job["corners"]]


def calibrate(points):
    found = cv2.calibrateCameraExtended([board] * len(points), points, size, None, None)
    k, d = found[1], found[2].ravel()
    return np.r_[k[0, 0], k[1, 1], k[0, 2], k[1, 2], d[:5]], found[5].ravel()[:9], found[0]


values, stated, rms = calibrate(corners)
n = len(corners)
without = np.array([calibrate(corners[:i] + corners[i + 1:])[0] for i in range(n)])
away = without - without.mean(0)
spread = (n - 1) / n * away.T @ away

whole, alone = [], []
for _ in range(job["runs"]):
    start = time.perf_counter()
    points = []
    for path in job["photos"]:
        grey = cv2.imread(path, cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION)
        ok, found = cv2.findChessboardCorners(grey, (columns, rows))
        if ok:
            stop = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 30, 1e-3)
            points.append(cv2.cornerSubPix(grey, found, (5, 5), (-1, -1), stop))
    before = time.perf_counter()
    calibrate(points)
    end = time.perf_counter()
    whole.append(1e3 * (end - start))
    alone.append(1e3 * (end - before))
json.dump({"opencv": cv2.__version__, "parameters": values.tolist(), "stated_sd": stated.tolist(),
           "jackknife_sd": np.sqrt(np.diag(spread)).tolist(), "jackknife_covariance": spread.tolist(),
           # OpenCV's is a point's distance, ours a coordinate's.
           "rms_px": rms / np.sqrt(2.0), "all_ms": min(whole), "calibrate_ms": min(alone)}, sys.stdout)
