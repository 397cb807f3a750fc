"""Validates instances: {"schema", "instances"} in, a list of what is wrong with each out."""

import json
import sys

import jsonschema

asked = json.load(sys.stdin)
jsonschema.Draft202012Validator.check_schema(asked["schema"])
validator = jsonschema.Draft202012Validator(asked["schema"])
print(
    json.dumps(
        [
            [f"/{'/'.join(map(str, e.absolute_path))}: {e.message[:200]}" for e in validator.iter_errors(instance)]
            for instance in asked["instances"]
        ]
    )
)
