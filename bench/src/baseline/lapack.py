"""Times LAPACK on request: routine, size and right-hand sides come in as a line, milliseconds go out. Needs numpy, scipy.

`zgesv` is the general solver, `zsysv` the complex symmetric one. One thread: the caller sets the environment.
"""
import sys
import time

import numpy
import scipy
from scipy.linalg import lapack

known = {}
print("ready", numpy.__version__, scipy.__version__, flush=True)
for line in sys.stdin:
    routine, size, count = line.split()
    n, sides = int(size), int(count)
    if n not in known:
        random = numpy.random.default_rng(n)
        a = random.standard_normal((n, n)) + 1j * random.standard_normal((n, n))
        known[n] = numpy.asfortranarray(a + a.T + 2 * n * 1j * numpy.eye(n))
    matrix, right = known[n], numpy.ones((n, sides), complex, order="F")
    work = int(lapack.zsysv_lwork(n)[0].real)
    start = time.perf_counter()
    if routine == "zgesv":
        info = lapack.zgesv(matrix, right)[-1]
    else:
        info = lapack.zsysv(matrix, right, lwork=work)[-1]
    elapsed = time.perf_counter() - start
    print(1e3 * elapsed if info == 0 else "nan", flush=True)
