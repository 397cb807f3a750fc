"""Validates a bag: {"folder"} in, {"valid", "why", "files"} out."""

import json
import sys

import bagit

bag = bagit.Bag(json.load(sys.stdin)["folder"])
try:
    bag.validate()
    valid, why = True, ""
except bagit.BagValidationError as error:
    valid, why = False, str(error)
print(json.dumps({"valid": valid, "why": why, "files": len(list(bag.payload_files()))}))
