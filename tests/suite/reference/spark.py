"""Pipes job paths through a command on a local Spark cluster.

{"command", "paths", "parts"} in, {"lines", "seconds"} out, the lines in the order of the paths.
With "workers", each of them is a process of its own with one core; with
"kill_after_s", one of them is killed after so many seconds and "killed" says its number.
"""

import json
import os
import signal
import subprocess
import sys
import threading
import time

os.environ["SPARK_LOCAL_IP"] = "127.0.0.1"
os.environ["PYSPARK_PYTHON"] = sys.executable
out = os.dup(1)
os.dup2(2, 1)  # what the engine prints is no answer

from pyspark import SparkConf, SparkContext  # noqa: E402

EXECUTOR = "CoarseGrainedExecutorBackend"


def executors():
    """Process numbers of the workers' executors."""
    found = subprocess.run(["pgrep", "-f", EXECUTOR], capture_output=True, text=True).stdout.split()
    return [int(n) for n in found]


asked = json.load(sys.stdin)
workers = asked.get("workers")
conf = (
    SparkConf()
    .setMaster(f"local-cluster[{workers},1,1024]" if workers else "local[2]")
    .setAppName("audit")
    .set("spark.ui.enabled", "false")
    .set("spark.driver.host", "127.0.0.1")
    .set("spark.driver.bindAddress", "127.0.0.1")
    .set("spark.executor.memory", "1024m")
)
context = SparkContext(conf=conf)
context.setLogLevel("ERROR")
if workers:
    # Workers that are still starting are no part of what piping costs.
    context.parallelize(range(workers), workers).map(lambda n: time.sleep(1)).count()
killed = []


def kill():
    time.sleep(asked["kill_after_s"])
    for number in executors()[:1]:
        os.kill(number, signal.SIGKILL)
        killed.append(number)


if "kill_after_s" in asked:
    threading.Thread(target=kill, daemon=True).start()
began = time.monotonic()
lines = context.parallelize(asked["paths"], asked["parts"]).pipe(asked["command"], checkCode=True).collect()
seconds = time.monotonic() - began
context.stop()
os.write(out, json.dumps({"lines": lines, "seconds": seconds, "killed": killed}).encode())
