"""OpenCV's projection and its derivatives, for comparison.

Reads `{"cases": [{"model", "focal_px", "centre_px", "distortion", "points_mm"}]}`
from standard input and writes the same with `pixels`, `d_point` (2 x 3 a point)
and `d_lens` (2 x 9: focal, centre, distortion). With `--table` the cases are a
fixed list: its output is tests/data/lens_table.json.
"""
import json
import sys

import cv2
import numpy as np

TABLE = [
    # name, model, focal, centre, distortion, half widths of the field seen (tangent of the angle)
    ("phone", "brown-conrady", [3050.1, 3049.7], [2014.9, 1508.3], [0.081, -0.21, 0.0004, -0.0002, 0.12], [0.78, 0.6]),
    ("webcam", "brown-conrady", [532.8, 532.9], [342.5, 233.9], [-0.2809, 0.025, 0.00122, -0.00014, 0.16], [0.62, 0.44]),
    ("barrel", "brown-conrady", [900.0, 905.0], [960.0, 540.0], [-0.24, 0.06, -0.001, 0.002, -0.006], [1.0, 0.6]),
    ("cushion", "brown-conrady", [2500.0, 2510.0], [1990.0, 1500.0], [0.2, 0.4, 0.01, -0.008, -0.3], [0.7, 0.55]),
    ("wide", "kannala-brandt", [1500.0, 1502.0], [2020.0, 1510.0], [0.03, -0.012, 0.004, -0.0007, 0.0], [3.0, 2.0]),
    ("phone", "kannala-brandt", [3050.1, 3049.7], [2014.9, 1508.3], [0.41, 0.1, -0.3, 0.2, 0.0], [0.78, 0.6]),
]


def table():
    random = np.random.default_rng(20260)
    cases = []
    for name, model, focal, centre, distortion, half in TABLE:
        flat = random.uniform(-1.0, 1.0, (12, 2)) * half
        depth = random.uniform(300.0, 6000.0, 12)
        points = np.column_stack([flat, np.ones(12)]) * depth[:, None]
        cases.append({"name": name, "model": model, "focal_px": focal, "centre_px": centre,
                      "distortion": distortion, "points_mm": np.round(points, 3).tolist()})
    return cases


def project(case):
    points = np.array(case["points_mm"], dtype=float).reshape(-1, 1, 3)
    (fu, fv), (cu, cv) = case["focal_px"], case["centre_px"]
    camera = np.array([[fu, 0.0, cu], [0.0, fv, cv], [0.0, 0.0, 1.0]])
    still = np.zeros((3, 1))
    distortion = np.array(case["distortion"], dtype=float)
    count = len(points)
    if case["model"] == "brown-conrady":
        pixels, d = cv2.projectPoints(points, still, still, camera, distortion)
        d_point, d_lens = d[:, 3:6], d[:, 6:15]
    else:
        pixels, d = cv2.fisheye.projectPoints(points, still, still, camera, distortion[:4])
        d_point, d_lens = d[:, 11:14], np.column_stack([d[:, :8], np.zeros(2 * count)])
    return dict(case, pixels=pixels.reshape(count, 2).tolist(), d_point=d_point.reshape(count, 2, 3).tolist(),
                d_lens=d_lens.reshape(count, 2, 9).tolist())


def main():
    cases = table() if "--table" in sys.argv else json.load(sys.stdin)["cases"]
    json.dump({"opencv": cv2.__version__, "cases": [project(case) for case in cases]}, sys.stdout)
    print()


main()
