"""A level straight dipole over homogeneous soil, as a capable user of numpy and scipy would write it.

The method is the engine's: Galerkin with hat functions, mixed potentials, the exact kernel of a round tube for close
pairs, Sommerfeld integrals for the soil, a dense solve, a search for the greatest gain. Time factor e^{+jwt}, SI, rms.
Arrays do the work; only the close pairs are looped over. Kernels over soil after Michalski and Zheng 1990 (from memory).

Speaks in lines: a problem as JSON comes in, the result with the seconds of each stage goes out.
"""
import json
import sys
import time

import numpy as np
import scipy
from scipy import integrate, linalg, optimize, special

speed_of_light = 299792458.0
mu0 = 1.25663706127e-6
eps0 = 1 / (mu0 * speed_of_light**2)


def soil_spectrum(kr, kz, k0, eps):
    """TE and TM reflection of tangential E, and (TE - TM)/kr^2 without cancellation."""
    k1 = np.sqrt(k0**2 * eps - kr**2)
    k1 = np.where(k1.imag > 0, -k1, k1)
    te = (kz - k1) / (kz + k1)
    tm = (k1 - eps * kz) / (k1 + eps * kz)
    return te, tm, 2 * (1 - eps) / ((kz + k1) * (k1 + eps * kz))


def reflected_kernels(rho, s, k0, eps):
    """Reflected G_xx and K (1/m) at the distances rho (array) and the sum of heights s: two rows."""

    def integrand(kr, kz, weight):
        te, tm, x = soil_spectrum(kr, kz, k0, eps)
        common = weight * np.exp(-1j * kz * s) * special.j0(kr * rho) / (4j * np.pi)
        return np.array([te * common, (tm + k0**2 * x) * common])

    def propagating(t):  # kr = k0 sin t takes the root at k0 away
        return integrand(k0 * np.sin(t), k0 * np.cos(t) + 0j, k0 * np.sin(t))

    def evanescent(u):  # kr = k0 cosh u
        return integrand(k0 * np.cosh(u), -1j * k0 * np.sinh(u), 1j * k0 * np.cosh(u))

    last = np.arcsinh(20 / (k0 * s))
    ends = [(propagating, 0, np.pi / 2), (evanescent, 0, last)]
    return sum(integrate.quad_vec(f, a, b, epsabs=1e-9, epsrel=1e-8, norm="max")[0] for f, a, b in ends)


def reflected_table(longest, s, k0, eps, count=28):
    """Chebyshev coefficients of both reflected kernels over the distance 0 .. longest."""
    nodes = np.cos(np.pi * (np.arange(count) + 0.5) / count)
    values = reflected_kernels(longest * (1 + nodes) / 2, s, k0, eps)
    return np.polynomial.chebyshev.chebfit(nodes, values.T, count - 1)


def tube_kernel(x, k, a):
    """Mean over both circumferences of e^{-jkR}/(4 pi R) at the axial distance x: the static part exactly."""
    across = x**2 + 4 * a**2
    static = 2 / np.pi * special.ellipkm1(x**2 / across) / np.sqrt(across)
    r = np.sqrt(x**2 + 2 * a**2)
    return (static + (np.exp(-1j * k * r) - 1) / r) / (4 * np.pi)


def gauss(count):
    points, weights = np.polynomial.legendre.leggauss(count)
    return (1 + points) / 2, weights / 2


panel_points, panel_weights = gauss(10)
pair_points, pair_weights = gauss(2)
shrinking = 4.0 ** -np.arange(9)


def close_moments(s0, s1, t0, t1, k, a):
    """Double integrals of ramp times kernel times ramp over two elements of one line (2 x 2, falling and rising).

    With x = s - t the inner integral is one of polynomials, exact with two points; the outer one has its panels shrink
    to the logarithm at x = 0.
    """
    kinks = np.array([s0 - t1, s0 - t0, s1 - t1, s1 - t0])
    low, high = kinks.min(), kinks.max()
    span = max(abs(low), abs(high))
    cuts = np.concatenate([kinks, [0.0], span * shrinking, -span * shrinking])
    cuts = np.unique(cuts[(cuts >= low) & (cuts <= high)])
    width = np.diff(cuts)
    x = (cuts[:-1, None] + width[:, None] * panel_points).ravel()
    weights = (width[:, None] * panel_weights).ravel() * tube_kernel(x, k, a)
    first = np.maximum(s0, t0 + x)
    overlap = np.maximum(np.minimum(s1, t1 + x) - first, 0)
    s = first[:, None] + overlap[:, None] * pair_points
    inner = overlap[:, None] * pair_weights * weights[:, None]
    up = (s - s0) / (s1 - s0)
    along = (s - x[:, None] - t0) / (t1 - t0)
    tests, sources = np.array([1 - up, up]), np.array([1 - along, along])
    return np.einsum("ipq,jpq,pq->ij", tests, sources, inner)


def element_points(nodes, count):
    """Places, weights and both ramps at the Gauss points of every element."""
    points, weights = gauss(count)
    length = np.diff(nodes)
    return nodes[:-1, None] + length[:, None] * points, length[:, None] * weights, np.array([1 - points, points])


def moments_of(kernel, weights, ramps):
    """Double integrals of ramp, kernel, ramp for all pairs of elements: (2, 2, elements, elements)."""
    elements, count = weights.shape
    weighted = weights * ramps[:, None, :]
    table = kernel.reshape(elements, count, elements, count)
    return np.einsum("iep,epfq,jfq->ijef", weighted, table, weighted, optimize=True)


def direct_moments(nodes, k, a):
    places, weights, ramps = element_points(nodes, 4)
    y = places.ravel()
    r = np.sqrt((y[:, None] - y) ** 2 + 2 * a**2)
    moments = moments_of(np.exp(-1j * k * r) / (4 * np.pi * r), weights, ramps)
    length = np.diff(nodes)
    middle = (nodes[1:] + nodes[:-1]) / 2
    between = np.abs(middle[:, None] - middle) - (length[:, None] + length) / 2
    close = between < np.maximum(2.6 * np.maximum(length[:, None], length), 12 * a)
    for e, f in zip(*np.nonzero(np.triu(close))):
        block = close_moments(nodes[e], nodes[e + 1], nodes[f], nodes[f + 1], k, a)
        moments[:, :, e, f] = block
        moments[:, :, f, e] = block.T
    return moments


def reflected_moments(nodes, table):
    places, weights, ramps = element_points(nodes, 3)
    y = places.ravel()
    distance = np.abs(y[:, None] - y) * 2 / (nodes[-1] - nodes[0]) - 1
    level, scalar = np.polynomial.chebyshev.chebval(distance, table)
    return moments_of(level, weights, ramps), moments_of(scalar, weights, ramps)


def wire_impedance(w, a, conductivity):
    """Ohm per metre of a solid round wire."""
    g = np.sqrt(1j * w * mu0 * conductivity)
    return g / conductivity / (2 * np.pi * a) * special.ive(0, g * a) / special.ive(1, g * a)


def impedance_matrix(problem, table):
    nodes = np.array(problem["nodes"])
    w = 2 * np.pi * problem["frequency"]
    length = np.diff(nodes)
    direct = direct_moments(nodes, w / speed_of_light, problem["radius"])
    level, scalar = reflected_moments(nodes, table)
    charge = (direct + scalar).sum(axis=(0, 1)) / (length[:, None] * length)
    current = 1j * w * mu0 * (direct + level)
    slope = np.array([-1, 1])
    whole = current + slope[:, None, None, None] * slope[None, :, None, None] * charge / (1j * w * eps0)
    own = wire_impedance(w, problem["radius"], problem["conductivity"]) * length
    each = np.arange(len(length))
    whole[:, :, each, each] += np.array([[1 / 3, 1 / 6], [1 / 6, 1 / 3]])[:, :, None] * own
    # Unknown n is the hat of node n + 1: rising on element n, falling on element n + 1.
    return whole[1, 1, :-1, :-1] + whole[1, 0, :-1, 1:] + whole[0, 1, 1:, :-1] + whole[0, 0, 1:, 1:]


def greatest_gain(problem, currents, power, eps):
    """Largest gain over the sky, linear."""
    w = 2 * np.pi * problem["frequency"]
    k = w / speed_of_light
    nodes, h = np.array(problem["nodes"]), problem["height"]
    places, weights, ramps = element_points(nodes, 4)
    padded = np.concatenate([[0], currents, [0]])
    moment = (weights * (padded[:-1, None] * ramps[0] + padded[1:, None] * ramps[1])).ravel()

    def gain(elevation, azimuth):
        ky = k * np.cos(elevation) * np.sin(azimuth)
        kz = k * np.sin(elevation)
        te, tm, _ = soil_spectrum(k * np.cos(elevation), kz + 0j, k, eps)
        n = np.exp(1j * np.multiply.outer(ky, places.ravel())) @ moment
        up, down = n * np.exp(1j * kz * h), n * np.exp(-1j * kz * h)
        theta = np.sin(elevation) * np.sin(azimuth) * (up + tm * down)
        phi = np.cos(azimuth) * (up + te * down)
        strength = (w * mu0 / (4 * np.pi)) ** 2 * (abs(theta) ** 2 + abs(phi) ** 2)
        return 4 * np.pi * strength / (mu0 * speed_of_light) / power

    elevations, azimuths = np.meshgrid(np.radians(np.arange(2.5, 90.1, 2.5)), np.radians(np.arange(0, 360, 5)))
    grid = gain(elevations.ravel(), azimuths.ravel())
    start = np.argmax(grid)
    found = optimize.minimize(
        lambda at: -float(gain(np.pi / 2 - abs(np.pi / 2 - at[0]), at[1])),
        [elevations.ravel()[start], azimuths.ravel()[start]],
        method="Nelder-Mead",
        options={"xatol": 1e-4, "fatol": 1e-6},
    )
    return max(-found.fun, grid[start])


def solve(problem):
    clock = [time.perf_counter()]
    w = 2 * np.pi * problem["frequency"]
    eps = problem["permittivity"] - 1j * problem["soilConductivity"] / (w * eps0)
    nodes = problem["nodes"]
    table = reflected_table(nodes[-1] - nodes[0], 2 * problem["height"], w / speed_of_light, eps)
    clock.append(time.perf_counter())
    matrix = impedance_matrix(problem, table)
    clock.append(time.perf_counter())
    voltage = np.zeros(len(matrix), complex)
    feed = problem["feed"] - 1
    voltage[feed] = 1
    currents = linalg.solve(matrix, voltage)
    clock.append(time.perf_counter())
    gain = greatest_gain(problem, currents, currents[feed].real, eps)
    clock.append(time.perf_counter())
    z = 1 / currents[feed]
    return {"re": z.real, "im": z.imag, "gain": gain, "seconds": list(np.diff(clock))}


def main():
    print("ready", np.__version__, scipy.__version__, flush=True)
    for line in sys.stdin:
        print(json.dumps(solve(json.loads(line))), flush=True)


if __name__ == "__main__":
    main()
