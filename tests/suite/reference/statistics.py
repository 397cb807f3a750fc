"""SciPy's and NumPy's answers to the statistics of archives.

Reads one object of cases from standard input, answers one object of figures.
"""
import json
import sys

import numpy as np
import scipy
from scipy import stats

asked = json.load(sys.stdin)


def wilson(case):
    hits, of, confidence = case
    interval = stats.binomtest(hits, of).proportion_ci(confidence, method="wilson")
    return [interval.low, interval.high]


def excess(case):
    """Sum of independent hypergeometric numbers, by convolution of their mass functions."""
    total = np.array([1.0])
    for size, hits, own in case["strata"]:
        total = np.convolve(total, stats.hypergeom.pmf(np.arange(own + 1), size, hits, own))
    return float(total[case["seen"]:].sum())


def shift(case):
    """One level against the others, dummies for the other factors: ordinary least squares."""
    y = np.array(case["values"])
    columns = [np.ones_like(y)]
    for codes in case["others"]:
        codes = np.array(codes)
        columns += [(codes == level).astype(float) for level in np.unique(codes)[1:]]
    columns.append((np.array(case["codes"]) == case["level"]).astype(float))
    x = np.column_stack(columns)
    beta, *_ = np.linalg.lstsq(x, y, rcond=None)
    residual = y - x @ beta
    inverse = np.linalg.pinv(x.T @ x)
    pooled = residual @ residual / (len(y) - np.linalg.matrix_rank(x))
    return [float(beta[-1]), float(np.sqrt(pooled * inverse[-1, -1]))]


def capability(case):
    n, confidence = case
    return [float(np.sqrt(stats.chi2.ppf(p, n - 1) / (n - 1))) for p in ((1 - confidence) / 2, (1 + confidence) / 2)]


json.dump(
    {
        "scipy": scipy.__version__,
        "wilson": [wilson(c) for c in asked["wilson"]],
        "excess": [excess(c) for c in asked["excess"]],
        "shift": [shift(c) for c in asked["shift"]],
        "kolmogorov": [float(stats.kstwobign.sf(x)) for x in asked["kolmogorov"]],
        "capability": [capability(c) for c in asked["capability"]],
    },
    sys.stdout,
)
