"""Two-step nitrification with SciPy's LSODA and Radau: reads the problem as JSON, prints one JSON line per method and tolerance."""

import json
import sys
import time

import numpy as np
import scipy
from scipy.integrate import solve_ivp

problem = json.load(sys.stdin)
p = problem["parameters"]
reference = np.array(problem["reference"])
times = problem["times"]
muA, KA, KOA, YA, bA = (p[k] for k in ("muA", "KA", "KOA", "YA", "bA"))
muN, KN, KON, YN, bN = (p[k] for k in ("muN", "KN", "KON", "YN", "bN"))
load, kLa, O2sat = p["load"], p["kLa"], p["O2sat"]


def slope(_t, y):
    NH4, NO2, _, XA, XN, O2 = y
    rA = muA * NH4 / (KA + NH4) * O2 / (KOA + O2) * XA / YA
    rN = muN * NO2 / (KN + NO2) * O2 / (KON + O2) * XN / YN
    return (
        load - rA,
        rA - rN,
        rN,
        YA * rA - bA * XA,
        YN * rN - bN * XN,
        kLa * (O2sat - O2) - 3.43 * rA - 1.14 * rN,
    )


def solve(method, rtol):
    return solve_ivp(
        slope,
        (0.0, times[-1]),
        problem["y0"],
        method=method,
        t_eval=times,
        rtol=rtol,
        atol=rtol * 1e-4,
    )


for method in ("LSODA", "Radau"):
    for exponent in range(4, 21):
        rtol = 10.0 ** (-exponent / 2)
        best = float("inf")
        end = time.perf_counter() + problem["seconds"]
        while best == float("inf") or time.perf_counter() < end:
            start = time.perf_counter()
            solution = solve(method, rtol)
            best = min(best, time.perf_counter() - start)
        error = float(np.max(np.abs(solution.y.T / reference - 1)))
        line = {
            "name": f"SciPy {scipy.__version__} {method}",
            "tolerance": rtol,
            "error": error,
            "seconds": best,
            "evaluations": int(solution.nfev),
        }
        print(json.dumps(line), flush=True)
