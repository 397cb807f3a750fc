"""Runs OpenCV's aruco and the AprilTag library on JPEG files; prints one JSON object.

python3 peers.py FILE...   needs opencv-python-headless and pupil-apriltags
Corners come out as top-left, top-right, bottom-right, bottom-left of the upright code, pixel centre = integer.
Each method runs in a process of its own: a crash loses one row, not all.
"""
import json
import subprocess
import sys
import time

import cv2
import numpy as np


def aruco(**settings):
    family = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11)
    parameters = cv2.aruco.DetectorParameters()
    for name, value in settings.items():
        setattr(parameters, name, value)
    detector = cv2.aruco.ArucoDetector(family, parameters)

    def detect(grey):
        corners, ids, _ = detector.detectMarkers(grey)
        # OpenCV's table is the AprilTag library's, half a turn on.
        return [] if ids is None else [(int(i), np.roll(c[0], 2, axis=0).tolist()) for i, c in zip(ids.ravel(), corners)]

    return detect


def apriltag(decimate):
    from pupil_apriltags import Detector

    detector = Detector(families="tag36h11", nthreads=1, quad_decimate=decimate)

    def detect(grey):
        # The library counts bottom-left first, counter-clockwise; its pixel centres lie at one half.
        return [(d.tag_id, [(d.corners[k] - 0.5).tolist() for k in (3, 2, 1, 0)]) for d in detector.detect(grey) if d.hamming <= 2]

    return detect


TUNED = dict(
    adaptiveThreshWinSizeMin=3,
    adaptiveThreshWinSizeMax=23,
    adaptiveThreshWinSizeStep=5,
    minMarkerPerimeterRate=0.005,
    cornerRefinementMethod=cv2.aruco.CORNER_REFINE_SUBPIX,
    cornerRefinementWinSize=3,
)
METHODS = {
    "OpenCV aruco, defaults": lambda: aruco(),
    "OpenCV aruco, tuned, SUBPIX": lambda: aruco(**TUNED),
    "AprilTag, full size": lambda: apriltag(1.0),
    "AprilTag, half size": lambda: apriltag(2.0),
}


def one(name, files):
    cv2.setNumThreads(1)
    detect = METHODS[name]()
    read, seconds, found = [], [], []
    for path in files:
        cv2.imread(path, cv2.IMREAD_GRAYSCALE)
        start = time.process_time()
        grey = cv2.imread(path, cv2.IMREAD_GRAYSCALE)
        read.append(time.process_time() - start)
        start = time.process_time()
        found.append(detect(grey))
        seconds.append(time.process_time() - start)
    return {"read_s": read, "seconds": seconds, "found": found}


def main(files):
    results = {}
    for name in METHODS:
        done = subprocess.run([sys.executable, __file__, "--one", name, *files], capture_output=True, text=True)
        if done.returncode == 0:
            results[name] = json.loads(done.stdout)
        else:
            print(f"{name}: ended with {done.returncode}", file=sys.stderr)
    json.dump(
        {
            "read_s": np.median([r["read_s"] for r in results.values()], axis=0).tolist() if results else [],
            "seconds": {n: r["seconds"] for n, r in results.items()},
            "found": {n: r["found"] for n, r in results.items()},
        },
        sys.stdout,
    )


def read(files):
    """CPU time of reading each file as grey, once read before."""
    cv2.setNumThreads(1)
    seconds = []
    for path in files:
        cv2.imread(path, cv2.IMREAD_GRAYSCALE)
        start = time.process_time()
        cv2.imread(path, cv2.IMREAD_GRAYSCALE)
        seconds.append(time.process_time() - start)
    return seconds


if sys.argv[1] == "--read":
    json.dump(read(sys.argv[2:]), sys.stdout)
elif sys.argv[1] == "--one":
    json.dump(one(sys.argv[2], sys.argv[3:]), sys.stdout)
else:
    main(sys.argv[1:])
