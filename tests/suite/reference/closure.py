"""How well corners found in the same real photos agree with each other, by three detectors.

Reads `{"tool": folder, "focal_px", "size_px", "photos": [file], "detected": [what `detect --json` writes]}` from standard
input. `free_corners.py` of that folder adjusts every corner as a free point of space, with poses, one lens, and each photo's
focal length and principal point. Answers `{"baywitness", "apriltag", "opencv"}`, each with `rms` (px, by the redundancy),
`redundancy` and `ratio` (in units of the stated uncertainty; of ours alone).
"""
import json
import sys
import tempfile

import cv2
import pupil_apriltags

given = json.load(sys.stdin)
sys.path.insert(0, given["tool"])
import free_corners  # noqa: E402

SIZE = tuple(given["size_px"])
GREY = {file: cv2.imread(file, cv2.IMREAD_GRAYSCALE) for file in given["photos"]}
APRILTAG = pupil_apriltags.Detector(families="tag36h11", quad_decimate=1.0)
PARAMETERS = cv2.aruco.DetectorParameters()
PARAMETERS.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_SUBPIX
ARUCO = cv2.aruco.ArucoDetector(cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11), PARAMETERS)


def apriltag(grey):
    # Its corners begin at the lower left and run the other way around.
    return [{"id": int(d.tag_id), "corners_px": d.corners[::-1].tolist()} for d in APRILTAG.detect(grey)]


def opencv(grey):
    corners, ids, _ = ARUCO.detectMarkers(grey)
    found = [] if ids is None else zip(ids.ravel(), corners)
    return [{"id": int(i), "corners_px": c.reshape(4, 2).tolist()} for i, c in found]


def agreement(detected, stated):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as file:
        json.dump(detected, file)
        file.flush()
        photos = free_corners.load(file.name, SIZE)
    of = free_corners.ba(photos, given["focal_px"], SIZE, own=("f", "c"), use_u=False)[0]
    answer = {"rms": of["rms"], "redundancy": of["red"]}
    if stated:
        answer["ratio"] = free_corners.ba(photos, given["focal_px"], SIZE, own=("f", "c"), use_u=True)[0]["chi"]
    return answer


def by(detector):
    return [{"file": file, "markers": detector(grey)} for file, grey in GREY.items()]


json.dump(
    {
        "baywitness": agreement(given["detected"], True),
        "apriltag": agreement(by(apriltag), False),
        "opencv": agreement(by(opencv), False),
    },
    sys.stdout,
)
