"""Finds 36h11 markers with the AprilTag library in the grey pictures named on the command line.

Prints a line per marker: picture's number, id, hamming distance, then the corners of the upright
code (top-left, top-right, bottom-right, bottom-left; pixel centres are integers).
"""

import sys

import numpy
from PIL import Image
from pupil_apriltags import Detector

detector = Detector(families="tag36h11", quad_decimate=2.0)
Image.MAX_IMAGE_PIXELS = None
for number, name in enumerate(sys.argv[1:]):
    picture = numpy.asarray(Image.open(name).convert("L"))
    for found in sorted(detector.detect(picture), key=lambda f: f.tag_id):
        # The library's corners run from the bottom left counter-clockwise and its pixels' corners are integers.
        corners = numpy.asarray(found.corners)[::-1] - 0.5
        print(number, found.tag_id, found.hamming, *(f"{value:.3f}" for value in corners.ravel()))
