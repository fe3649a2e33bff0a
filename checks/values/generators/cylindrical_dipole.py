#!/usr/bin/env python3
"""Centre-fed perfectly conducting cylindrical dipoles (tubes, no end caps) in free space, delta gap.

Galerkin with piecewise-sinusoidal functions and the exact (surface-averaged) kernel: another basis, another kernel
treatment and another code than the engine's. Needs numpy. Prints the rows of checks/values/cylindricalDipoles.json.

Two meshes: N equal elements (values "N=..."; they creep with N, because the gap is one element wide and ends are
unresolved), and elements graded from 0.01 wavelengths at the gap, 0.0125 at most, to a sixteenth of the radius at
the ends, where the charge rises as one over the root of the distance (values "graded"). Lengths in wavelengths.
"""
import json
import numpy as np
from numpy.polynomial.legendre import leggauss

ETA = 376.730313461
K = 2 * np.pi
POINTS, WEIGHTS = leggauss(48)
AZIMUTH, AZIMUTH_WEIGHTS = leggauss(40)
U = (AZIMUTH + 1) / 2
PHI = np.pi * U**3
PHI_WEIGHTS = AZIMUTH_WEIGHTS / 2 * 3 * U**2


def ramp_integral(at, rho, zero, peak):
    """Azimuth mean of the integral of exp(-jkR)/R sin(k|z - zero|)/sin(k|peak - zero|) between zero and peak.

    R^2 = rho^2 + (z - at)^2, by z - at = rho sinh t; rho holds one distance for each azimuth."""
    low, high = min(zero, peak), max(zero, peak)
    t1, t2 = np.arcsinh((low - at) / rho), np.arcsinh((high - at) / rho)
    pieces = max(1, int(np.ceil(np.max(t2 - t1) / 4)))
    total = 0
    for i in range(pieces):
        a, b = t1 + (t2 - t1) * i / pieces, t1 + (t2 - t1) * (i + 1) / pieces
        t = ((a + b) / 2)[:, None] + ((b - a) / 2)[:, None] * POINTS[None, :]
        z = at + rho[:, None] * np.sinh(t)
        values = np.exp(-1j * K * rho[:, None] * np.cosh(t)) * np.sin(K * np.abs(z - zero))
        total = total + (b - a) / 2 * (values @ WEIGHTS)
    return np.sum(PHI_WEIGHTS * total) / np.sin(K * (high - low))


def mutual(test, mode, radius):
    """Reaction of two functions, each given by three nodes. The field of a piecewise sinusoid is three spherical waves."""
    rho = 2 * radius * np.sin(PHI / 2)
    d1, d2 = test[1] - test[0], test[2] - test[1]
    waves = (
        (test[0], 1 / np.sin(K * d1)),
        (test[2], 1 / np.sin(K * d2)),
        (test[1], -np.sin(K * (d1 + d2)) / (np.sin(K * d1) * np.sin(K * d2))),
    )
    total = sum(c * (ramp_integral(at, rho, mode[0], mode[1]) + ramp_integral(at, rho, mode[2], mode[1])) for at, c in waves)
    return 1j * ETA / (4 * np.pi) * total


def impedance(nodes, radius):
    """Input impedance at the middle node."""
    n = len(nodes) - 2
    z = np.zeros((n, n), complex)
    steps = np.diff(nodes)
    known = {}
    for i in range(n):
        for j in range(i, n):
            # Equal triples at equal distance are equal: what makes equal elements cheap.
            key = tuple(np.round([*steps[i : i + 2], *steps[j : j + 2], nodes[j + 1] - nodes[i + 1]], 13))
            if key not in known:
                known[key] = mutual(nodes[i : i + 3], nodes[j : j + 3], radius)
            z[i, j] = z[j, i] = known[key]
    v = np.zeros(n, complex)
    v[n // 2] = 1
    return 1 / np.linalg.solve(z, v)[n // 2]


def equal(length, count):
    return np.linspace(-length / 2, length / 2, count + 1)


def graded(length, radius, gap=0.01, largest=0.0125, growth=1.5):
    """Elements of `gap` at the middle, a sixteenth of `radius` at the ends, neighbours apart by at most `growth`."""
    inner, outer = [], []
    near, far, total = gap, min(radius / 16, gap), 0.0
    while total < length / 2:
        if far < near:
            outer.append(far)
            total += far
            far = min(far * growth, largest)
        else:
            inner.append(near)
            total += near
            near = min(near * growth, largest)
    steps = np.array(inner + outer[::-1])
    steps[0] = gap
    steps[1:] *= (length / 2 - gap) / np.sum(steps[1:])
    half = np.concatenate(([0.0], np.cumsum(steps)))
    return np.concatenate((-half[:0:-1], half))


def resonance(ratio, mesh):
    """Length with no reactance for a given length over diameter, and the resistance there."""
    reactance = lambda length: impedance(mesh(length, length / ratio / 2), length / ratio / 2).imag
    low, high = 0.42, 0.5
    at_low, at_high = reactance(low), reactance(high)
    for _ in range(40):
        middle = low - at_low * (high - low) / (at_high - at_low)
        here = reactance(middle)
        if abs(here) < 1e-5:
            break
        if here > 0:
            high, at_high = middle, here
        else:
            low, at_low = middle, here
    return middle, impedance(mesh(middle, middle / ratio / 2), middle / ratio / 2).real


def number(z):
    return {"re": round(z.real, 4), "im": round(z.imag, 4)}


CASES = (
    ("Omega10", 0.5, 0.25 / np.exp(5)), ("Omega15", 0.5, 0.25 / np.exp(7.5)), ("Omega20", 0.5, 0.25 / np.exp(10)),
    ("a0.001", 0.5, 0.001), ("a0.0001", 0.5, 0.0001), ("a1e-5", 0.5, 1e-5), ("a0.007022", 0.5, 0.007022),
    ("L0.48a0.0001", 0.48, 0.0001), ("L0.25", 0.25, 0.001), ("L0.75", 0.75, 0.001), ("L0.9", 0.9, 0.001),
    ("L1.0", 1.0, 0.001), ("L1.25", 1.25, 0.001), ("L1.5", 1.5, 0.001),
)


def main():
    # One function on a very thin wire is the induced-EMF method: 73.079 + j42.515 ohm.
    assert abs(impedance(equal(0.5, 2), 1e-7) - (73.0790102 + 42.5151147j)) < 1e-4
    rows = {}
    for name, length, radius in CASES:
        values = {f"N={n}": number(impedance(equal(length, n), radius)) for n in (2, 4, 8, 16, 32, 64)
                  if length / n >= radius and (length <= 0.5 or n >= 8)}
        values["graded"] = number(impedance(graded(length, radius), radius))
        rows[f"dipole.mom.{name}"] = values
    for ratio in (20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 25000):
        count = 32 if ratio >= 200 else (16 if ratio >= 50 else 8)
        length, resistance = resonance(ratio, lambda l, a: equal(l, count))
        half, _ = resonance(ratio, lambda l, a: equal(l, count // 2))
        fine, fine_resistance = resonance(ratio, graded)
        rows[f"dipole.resonance.L2a{ratio}"] = {
            "L/lambda": round(length, 5), "K = L/(lambda/2)": round(2 * length, 5), "R_ohm": round(resistance, 3),
            "same with half as many functions": round(2 * half, 5), "(lambda/2)/diameter": round(ratio / (2 * length), 2),
            "K, graded": round(2 * fine, 5), "R_ohm, graded": round(fine_resistance, 3),
        }
    print(json.dumps(rows, indent=1))


if __name__ == "__main__":
    main()
