"""OpenCV's pose of one body in one photo, for comparison.

Reads `{"cases": [{"focal_px", "centre_px", "distortion", "points_mm", "pixels"}]}`
from standard input; answers `{"poses": [[3 x 4 camera_from_body]]}`: solvePnP's
start (SQPNP), then its Levenberg-Marquardt refinement to the least sum of
squared pixel errors.
"""
import json
import sys

import cv2
import numpy as np

END = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_COUNT, 200, 1e-14)


def pose(case):
    points, pixels = (np.array(case[key], dtype=float) for key in ("points_mm", "pixels"))
    (fu, fv), (cu, cv) = case["focal_px"], case["centre_px"]
    camera = np.array([[fu, 0.0, cu], [0.0, fv, cv], [0.0, 0.0, 1.0]])
    distortion = np.array(case["distortion"], dtype=float)
    found, turn, shift = cv2.solvePnP(points, pixels, camera, distortion, flags=cv2.SOLVEPNP_SQPNP)
    assert found
    turn, shift = cv2.solvePnPRefineLM(points, pixels, camera, distortion, turn, shift, END)
    return np.column_stack([cv2.Rodrigues(turn)[0], shift]).tolist()


json.dump({"opencv": cv2.__version__, "poses": [pose(case) for case in json.load(sys.stdin)["cases"]]}, sys.stdout)
