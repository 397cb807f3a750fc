"""Pipes job paths through a command on a local Spark cluster.

{"command", "paths", "parts"} in, {"lines"} out, in the order of the paths.
"""

import json
import os
import sys

os.environ["SPARK_LOCAL_IP"] = "127.0.0.1"
os.environ["PYSPARK_PYTHON"] = sys.executable
out = os.dup(1)
os.dup2(2, 1)  # what the engine prints is no answer

from pyspark import SparkConf, SparkContext  # noqa: E402

asked = json.load(sys.stdin)
conf = (
    SparkConf()
    .setMaster("local[2]")
    .setAppName("audit")
    .set("spark.ui.enabled", "false")
    .set("spark.driver.host", "127.0.0.1")
    .set("spark.driver.bindAddress", "127.0.0.1")
)
context = SparkContext(conf=conf)
context.setLogLevel("ERROR")
lines = context.parallelize(asked["paths"], asked["parts"]).pipe(asked["command"], checkCode=True).collect()
context.stop()
os.write(out, json.dumps({"lines": lines}).encode())
