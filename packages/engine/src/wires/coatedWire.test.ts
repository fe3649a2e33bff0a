import { describe, expect, it } from "vitest";
import { modifiedBessel } from "../numerics/besselModified";
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  multiply,
  reciprocal,
  scale,
  squareRoot,
  subtract,
} from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { impedance, wire } from "./antennas.fixture";
import { solveAntenna } from "./solveAntenna";
import type { Point, Sleeve, Soil, Structure } from "./structure";

const free: Soil = { kind: "free space" };
const squared = (z: Complex): Complex => multiply(z, z);
const permittivityOf = ({ permittivity, lossTangent = 0 }: Sleeve): Complex =>
  complex(permittivity, -permittivity * lossTangent);

/** Newton's rule with a difference quotient, from a start near the root. */
function root(f: (s: Complex) => Complex, start: Complex): Complex {
  let s = start;
  for (let i = 0; i < 50; i++) {
    const here = f(s);
    const h = scale(s, 1e-6);
    const step = divide(multiply(here, h), subtract(f(add(s, h)), here));
    s = subtract(s, step);
    if (Math.hypot(step.re, step.im) < 1e-11 * Math.hypot(s.re, s.im)) return s;
  }
  throw new Error("no root found");
}

/**
 * Radial decay s (1/m; beta^2 = k^2 + s^2) as the moment method has it for an endless wire: potentials of a tube with the
 * exact kernel, and the sleeve's term. s^2 I0(s a) K0(s a) = beta^2 (1 - 1/eps) ln(b/a).
 */
function decayOfModel(radius: number, sleeve: Sleeve, k: number): Complex {
  const share = subtract(complex(1), reciprocal(permittivityOf(sleeve)));
  const coat = scale(share, Math.log(sleeve.outerRadius / radius));
  const mismatch = (s: Complex) => {
    const { i0, k0 } = modifiedBessel(scale(s, radius));
    return subtract(multiply(squared(s), multiply(i0, k0)), multiply(add(complex(k * k), squared(s)), coat));
  };
  return root(mismatch, scale(squareRoot(scale(coat, 0.1)), k));
}

/**
 * The same, exact: the TM wave along a perfect wire in a sleeve (Goubau, J. Appl. Phys. 21 (1950) 1119, from memory; derived
 * anew). E_z = 0 on the metal, E_z and H_phi continuous at the sleeve's surface, K0(s r) outside; in the sleeve modified
 * functions of g r, g^2 = beta^2 - eps k^2.
 */
function decayExact(radius: number, sleeve: Sleeve, k: number, start: Complex): Complex {
  const eps = permittivityOf(sleeve);
  const b = sleeve.outerRadius;
  const mismatch = (s: Complex) => {
    const g = squareRoot(add(squared(s), scale(subtract(complex(1), eps), k * k)));
    const [atA, atB, out] = [
      modifiedBessel(scale(g, radius)),
      modifiedBessel(scale(g, b)),
      modifiedBessel(scale(s, b)),
    ];
    // The functions come scaled; this brings the terms with K at b to the scale of those with I at b.
    const fade = exponential(scale(g, -2 * (b - radius)));
    const field = subtract(multiply(atB.i0, atA.k0), multiply(fade, multiply(atA.i0, atB.k0)));
    const slope = add(multiply(atB.i1, atA.k0), multiply(fade, multiply(atA.i0, atB.k1)));
    const inside = multiply(multiply(eps, slope), multiply(s, out.k0));
    return add(inside, multiply(multiply(g, field), out.k1));
  };
  return root(mismatch, start);
}

const betaOf = (s: Complex, k: number): Complex => squareRoot(add(complex(k * k), squared(s)));

const coats: readonly (readonly [string, number, Sleeve])[] = [
  ["1 mm of PVC on 2 mm wire", 1e-3, { outerRadius: 2e-3, permittivity: 3.5, lossTangent: 0.03 }],
  ["0.8 mm of PVC on 1 mm wire", 0.5e-3, { outerRadius: 1.3e-3, permittivity: 4.5, lossTangent: 0.1 }],
  ["polyethylene on 1.5 mm wire", 0.75e-3, { outerRadius: 1.25e-3, permittivity: 2.26, lossTangent: 3e-4 }],
  ["jacket of a coaxial line", 4e-3, { outerRadius: 5.1e-3, permittivity: 3, lossTangent: 0.02 }],
  ["a coat ten times the wire", 0.5e-3, { outerRadius: 5e-3, permittivity: 9 }],
];

describe("the sleeve's term against the exact wave on a coated wire", () => {
  it.each(coats)(
    "%s: slows and damps the wave within 1 %% of what the coat does, 1.8 to 30 MHz",
    (_, radius, sleeve) => {
      for (const frequency of [1.8e6, 7.1e6, 30e6]) {
        const k = (2 * Math.PI * frequency) / speedOfLight;
        const model = decayOfModel(radius, sleeve, k);
        const [found, exact] = [betaOf(model, k), betaOf(decayExact(radius, sleeve, k, model), k)];
        expect((found.re - k) / (exact.re - k)).toBeCloseTo(1, 2);
        if (sleeve.lossTangent) expect(found.im / exact.im).toBeCloseTo(1, 2);
      }
    },
  );
});

describe("the sleeve in the engine", () => {
  /** Reactance across one end of a pair of wires in sleeves, its other end open or shorted. */
  function reactance(sleeve: Sleeve | null, end: "open" | "shorted", frequency: number): number {
    const [radius, spacing, length] = [1e-3, 0.1, 10];
    const corners: readonly Point[] = [
      [0, 0, 0],
      [0, 0, spacing],
      [0, length, spacing],
      [0, length, 0],
    ];
    const [a, b, c, d] = corners as [Point, Point, Point, Point];
    const coated = (from: Point, to: Point) => ({ ...wire(from, to, radius), insulation: sleeve });
    const structure: Structure = {
      wires: [wire(a, b, radius), coated(b, c), coated(a, d), ...(end === "shorted" ? [wire(c, d, radius)] : [])],
      feeds: [{ name: "feed", at: a, from: [2], into: [0] }],
      loads: [],
    };
    return impedance(solveAntenna(structure, free, frequency)).im;
  }

  // Line theory, sleeves far apart: the inductance of bare wires, ln(D/a), over potentials ln(D/b) + ln(b/a)/eps.
  it.each([1.5, 2, 4])("slows a pair of wires as line theory says, sleeve of %f radii", (ratio) => {
    const sleeve = { outerRadius: ratio * 1e-3, permittivity: 3.5 };
    const frequency = 3e6;
    const angle = (coat: Sleeve | null) =>
      Math.atan(Math.sqrt(-reactance(coat, "shorted", frequency) / reactance(coat, "open", frequency)));
    const slowing = angle(sleeve) / angle(null);
    const [whole, coat] = [Math.log(100), Math.log(ratio)];
    const expected = Math.sqrt(whole / (whole - coat + coat / 3.5));
    expect((slowing - 1) / (expected - 1)).toBeCloseTo(1, 1);
    expect(slowing / expected).toBeCloseTo(1, 2);
  });

  // A thin coat moves resonance by about (1 - 1/eps) ln(b/a) over twice the logarithm that stores the charge's field.
  it("moves the resonance of a half-wave dipole in proportion to the coat while it is thin", () => {
    const dipole = (insulation: Sleeve | null): Structure => ({
      wires: [
        { ...wire([0, -10, 0], [0, 0, 0]), insulation },
        { ...wire([0, 0, 0], [0, 10, 0]), insulation },
      ],
      feeds: [{ name: "feed", at: [0, 0, 0], from: [0], into: [1] }],
      loads: [],
    });
    const resonance = (insulation: Sleeve | null): number => {
      let [low, high] = [5.5e6, 7.5e6];
      for (let i = 0; i < 24; i++) {
        const middle = (low + high) / 2;
        const { im } = impedance(
          solveAntenna(dipole(insulation), free, middle, undefined, { refinement: 1, meshFrequency: 7.5e6 }),
        );
        if (im < 0) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    };
    // Bare but with elements at the ends as sleeved wires have them: a sleeve of air.
    const bare = resonance({ outerRadius: 1.2e-3, permittivity: 1 });
    const shift = (permittivity: number) => 1 - resonance({ outerRadius: 1.2e-3, permittivity }) / bare;
    expect(shift(4) / shift(1.6)).toBeCloseTo((1 - 1 / 4) / (1 - 1 / 1.6), 1);
    // 0.75 ln 1.2 over 2 ln(half the length over the radius), within the width of that logarithm.
    expect(shift(4)).toBeGreaterThan((0.75 * Math.log(1.2)) / (2 * Math.log(20 / 1e-3)));
    expect(shift(4)).toBeLessThan((0.75 * Math.log(1.2)) / (2 * (Math.log(10 / 1e-3) - 2)));
  });
});
