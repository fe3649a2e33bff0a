/** Soils, an antenna and plain potentials that tests of the near field share; E and H come from them by differences. */
import { complexPermittivity } from "../ground/soilMedium";
import { buildSpectrum } from "../ground/spectrum";
import { sumSpectrum } from "../kernels/reference/spectralSums";
import { add, type Complex, complex, exponential, magnitude, multiply, one, scale, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { speedOfLight, vacuumPermittivity } from "../numerics/vacuum";
import { dipole, testFrequency, testWavelength, wire } from "../wires/antennas.fixture";
import { type DrivenAntenna, driveAntenna, elementCurrent } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Point, Soil, Structure } from "../wires/structure";

const wl = testWavelength;
export const w = 2 * Math.PI * testFrequency;
export const k = w / speedOfLight;
export const free: Soil = { kind: "free space" };
export const average = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 } as const;
export const soils: readonly Soil[] = [
  free,
  { kind: "perfect" },
  average,
  { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 },
  { kind: "homogeneous", relativePermittivity: 4, conductivity: 1e-5 },
];
/** Dry sand on wet soil. */
export const layered: Soil = {
  kind: "layered",
  layers: [
    { relativePermittivity: 3, conductivity: 1e-4, thickness: 2 },
    { relativePermittivity: 30, conductivity: 1e-2, thickness: null },
  ],
};
export const drive = (structure: Structure, soil: Soil) =>
  driveAntenna(solveAntenna(structure, soil, testFrequency), [one]);
/** Bent and sloping, so that every kernel takes part. */
export const sloping: Structure = {
  ...dipole(wl / 2, 1e-3, 8),
  wires: [wire([2, -9, 4], [0, 0, 8]), wire([0, 0, 8], [-1, 8, 11])],
};

export const size = (v: readonly Complex[]): number => Math.hypot(...v.map(magnitude));
export const apart = (a: readonly Complex[], b: readonly Complex[]): number =>
  Math.hypot(...a.map((x, i) => Math.hypot(x.re - b[i]!.re, x.im - b[i]!.im))) / size(b);

export type Vector = [Complex, Complex, Complex];
const rule = gaussLegendre(20);

/** Vector potential over mu0 and scalar potential by plain quadrature of the elements, images mirrored by hand. */
export function potentials(driven: DrivenAntenna, place: Point): { a: Vector; phi: Complex } {
  const { soil, model } = driven.solution;
  const { elements } = model.mesh;
  let phi: Complex = zero;
  const a: Vector = [zero, zero, zero];
  for (let e = 0; e < elements.count; e++) {
    const [i0, i1] = [elementCurrent(driven, e, 0), elementCurrent(driven, e, 1)];
    const length = elements.length[e]!;
    const slope = scale(add(i1, scale(i0, -1)), 1 / length);
    rule.points.forEach((x, n) => {
      const rise = (1 + x) / 2;
      const weight = (length * rule.weights[n]!) / 2;
      for (const side of soil.kind === "perfect" ? [1, -1] : [1]) {
        const at = [0, 1, 2].map((c) => elements.start[3 * e + c]! + rise * length * elements.direction[3 * e + c]!);
        const r = Math.hypot(place[0] - at[0]!, place[1] - at[1]!, place[2] - side * at[2]!);
        const g = scale(exponential(complex(0, -k * r)), weight / (4 * Math.PI * r));
        const current = multiply(add(scale(i0, 1 - rise), scale(i1, rise)), g);
        for (let c = 0; c < 3; c++) {
          const sign = c === 2 ? 1 : side;
          a[c] = add(a[c]!, scale(current, sign * elements.direction[3 * e + c]!));
        }
        const charge = multiply(complex(0, side / w / vacuumPermittivity), multiply(slope, g));
        phi = add(phi, charge);
      }
    });
  }
  if (soil.kind === "homogeneous") phi = add(phi, addReflectedPotentials(driven, soil, place, a));
  return { a, phi };
}

/** From the kernels of the moment method and its sample points; adds to `a`, returns the scalar potential. */
function addReflectedPotentials(
  driven: DrivenAntenna,
  soil: Soil & { kind: "homogeneous" },
  place: Point,
  a: Vector,
): Complex {
  const { points } = driven.solution.model;
  const q = Array.from({ length: points.count }, () => ({ re: 0, im: 0 }));
  for (let n = 0; n + 1 < points.first.length; n++) {
    for (let i = points.first[n]!; i < points.first[n + 1]!; i++) {
      q[points.point[i]!]!.re += points.charge[i]! * driven.currents.re[n]!;
      q[points.point[i]!]!.im += points.charge[i]! * driven.currents.im[n]!;
    }
  }
  const rho = new Float64Array(points.count);
  const s = new Float64Array(points.count);
  for (let p = 0; p < points.count; p++) {
    rho[p] = Math.hypot(place[0] - points.position[3 * p]!, place[1] - points.position[3 * p + 1]!);
    s[p] = place[2] + points.position[3 * p + 2]!;
  }
  const reach = {
    smallestSum: Math.min(...s) / 2,
    largestSum: Math.max(...s),
    largestDistance: Math.max(...rho),
    steep: true,
  };
  // All pairs of a distance and a height sum: those of one point lie on the diagonal.
  const g = sumSpectrum(buildSpectrum(k, complexPermittivity(soil, testFrequency), reach), rho, s);
  let phi: Complex = zero;
  for (let p = 0; p < points.count; p++) {
    const c = complex(driven.moments.re[p]!, driven.moments.im[p]!);
    const of = (plane: { re: Float64Array; im: Float64Array }): Complex =>
      complex(plane.re[p * (points.count + 1)]!, plane.im[p * (points.count + 1)]!);
    const [tx, ty, tz] = [0, 1, 2].map((i) => points.direction[3 * p + i]!) as [number, number, number];
    const [dx, dy] = [place[0] - points.position[3 * p]!, place[1] - points.position[3 * p + 1]!];
    const t = multiply(c, of(g.cross));
    a[0] = add(a[0], add(scale(multiply(c, of(g.horizontal)), tx), scale(t, -tz * dx)));
    a[1] = add(a[1], add(scale(multiply(c, of(g.horizontal)), ty), scale(t, -tz * dy)));
    a[2] = add(a[2], add(scale(multiply(c, of(g.vertical)), tz), scale(t, tx * dx + ty * dy)));
    phi = add(phi, multiply(complex(0, 1 / (w * vacuumPermittivity)), multiply(q[p]!, of(g.scalar))));
  }
  return phi;
}

/** Fourth-order difference of a function of place along axis `c`. */
export function slope<T>(f: (p: Point) => T, pick: (t: T) => Complex, at: Point, c: number, step: number): Complex {
  const value = (n: number): Complex => {
    const p: [number, number, number] = [...at];
    p[c]! += n * step;
    return pick(f(p));
  };
  const near = add(value(1), scale(value(-1), -1));
  const far = add(value(2), scale(value(-2), -1));
  return scale(add(scale(near, 8), scale(far, -1)), 1 / (12 * step));
}

export function curl<T>(f: (p: Point) => T, pick: (t: T, c: number) => Complex, at: Point, step: number): Vector {
  const d = (of: number, along: number): Complex => slope(f, (t) => pick(t, of), at, along, step);
  return [0, 1, 2].map((c) => {
    const [p, q] = [(c + 1) % 3, (c + 2) % 3];
    return add(d(q, p), scale(d(p, q), -1));
  }) as Vector;
}
