"""The chains of a specimen solved one after the other by SciPy's banded Cholesky, for the benchmark: see ../specimens.ts. Reads the banded matrices from
standard input, prints microseconds of processor time per chain and, for comparison, the sum of all openings near the load."""
import sys
import time

import numpy as np
from scipy.linalg import solveh_banded

n, chains, repeats = map(int, sys.argv[1:4])
matrices = np.frombuffer(sys.stdin.buffer.read(chains * n * 4 * 8)).reshape(chains, n, 4)
ab = [np.ascontiguousarray(one.T) for one in matrices]
f = np.zeros((n, 2))
f[n - 4, 0] = 1
f[n // 2, 1] = 1


def solve():
    total = 0.0
    for one in ab:
        u = solveh_banded(one, f, lower=True, check_finite=False)
        total += u[n - 4, 0] + u[n - 4, 1]
    return total


best = float("inf")
for _ in range(repeats):
    start = time.process_time()
    total = solve()
    best = min(best, time.process_time() - start)
print(best * 1e6 / chains, float(total))
