"""Reads a Parquet table with Apache Arrow: types of its columns, and its rows."""

import datetime
import json
import sys

import pyarrow.parquet

asked = json.load(sys.stdin)
table = pyarrow.parquet.read_table(asked["table"])
rows = table.to_pylist()
for row in rows:
    for key, value in row.items():
        if isinstance(value, datetime.datetime):
            row[key] = value.isoformat()
json.dump({"types": {field.name: str(field.type) for field in table.schema}, "rows": rows}, sys.stdout)
