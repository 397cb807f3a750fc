"""Runs OpenCV's aruco and the AprilTag library on JPEG files; prints one JSON object.

python3 peers.py FILE...   needs opencv-python-headless and pupil-apriltags
Corners come out as top-left, top-right, bottom-right, bottom-left of the upright code, pixel centre = integer.
"""
import json
import sys
import time

import cv2
import numpy as np
from pupil_apriltags import Detector

cv2.setNumThreads(1)
aruco = cv2.aruco
family = aruco.getPredefinedDictionary(aruco.DICT_APRILTAG_36h11)
plain = aruco.ArucoDetector(family, aruco.DetectorParameters())
tuned = aruco.DetectorParameters()
tuned.adaptiveThreshWinSizeMin, tuned.adaptiveThreshWinSizeMax, tuned.adaptiveThreshWinSizeStep = 3, 23, 5
tuned.minMarkerPerimeterRate = 0.005
tuned.cornerRefinementMethod = aruco.CORNER_REFINE_SUBPIX
tuned.cornerRefinementWinSize = 3
tuned = aruco.ArucoDetector(family, tuned)
full = Detector(families="tag36h11", nthreads=1, quad_decimate=1.0)
half = Detector(families="tag36h11", nthreads=1, quad_decimate=2.0)


def by_aruco(detector, grey):
    corners, ids, _ = detector.detectMarkers(grey)
    # OpenCV's table is the AprilTag library's, half a turn on.
    return [] if ids is None else [(int(i), np.roll(c[0], 2, axis=0).tolist()) for i, c in zip(ids.ravel(), corners)]


def by_apriltag(detector, grey):
    # The library counts bottom-left first, counter-clockwise; its pixel centres lie at one half.
    return [(d.tag_id, [(d.corners[k] - 0.5).tolist() for k in (3, 2, 1, 0)]) for d in detector.detect(grey) if d.hamming <= 2]


METHODS = {
    "OpenCV aruco, defaults": lambda g: by_aruco(plain, g),
    "OpenCV aruco, tuned, SUBPIX": lambda g: by_aruco(tuned, g),
    "AprilTag, full size": lambda g: by_apriltag(full, g),
    "AprilTag, half size": lambda g: by_apriltag(half, g),
}
read, seconds, found = 0.0, dict.fromkeys(METHODS, 0.0), {m: [] for m in METHODS}
for path in sys.argv[1:]:
    cv2.imread(path, cv2.IMREAD_GRAYSCALE)
    start = time.process_time()
    grey = cv2.imread(path, cv2.IMREAD_GRAYSCALE)
    read += time.process_time() - start
    for name, method in METHODS.items():
        start = time.process_time()
        found[name].append(method(grey))
        seconds[name] += time.process_time() - start
json.dump({"read_s": read, "seconds": seconds, "found": found, "versions": {"opencv": cv2.__version__}}, sys.stdout)
