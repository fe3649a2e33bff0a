import { describe, expect, it } from "vitest";
import { complexPermittivity } from "../ground/soilMedium";
import { buildSpectrum } from "../ground/spectrum";
import { sumSpectrum } from "../kernels/reference/spectralSums";
import { add, type Complex, complex, exponential, magnitude, multiply, one, scale, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { speedOfLight, vacuumImpedance, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { dipole, groundPlane, testFrequency, testWavelength, upright, wire } from "../wires/antennas.fixture";
import { type DrivenAntenna, driveAntenna, elementCurrent } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Point, Soil, Structure } from "../wires/structure";
import { farField } from "./farField";
import { type NearField, nearField, nearFieldSampler } from "./nearField";

const wl = testWavelength;
const w = 2 * Math.PI * testFrequency;
const k = w / speedOfLight;
const free: Soil = { kind: "free space" };
const average = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 } as const;
const soils: readonly Soil[] = [
  free,
  { kind: "perfect" },
  average,
  { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 },
  { kind: "homogeneous", relativePermittivity: 4, conductivity: 1e-5 },
];
/** Dry sand on wet soil. */
const layered: Soil = {
  kind: "layered",
  layers: [
    { relativePermittivity: 3, conductivity: 1e-4, thickness: 2 },
    { relativePermittivity: 30, conductivity: 1e-2, thickness: null },
  ],
};
const drive = (structure: Structure, soil: Soil) => driveAntenna(solveAntenna(structure, soil, testFrequency), [one]);
/** Bent and sloping, so that every kernel takes part. */
const sloping: Structure = {
  ...dipole(wl / 2, 1e-3, 8),
  wires: [wire([2, -9, 4], [0, 0, 8]), wire([0, 0, 8], [-1, 8, 11])],
};

const size = (v: readonly Complex[]): number => Math.hypot(...v.map(magnitude));
const apart = (a: readonly Complex[], b: readonly Complex[]): number =>
  Math.hypot(...a.map((x, i) => Math.hypot(x.re - b[i]!.re, x.im - b[i]!.im))) / size(b);

type Vector = [Complex, Complex, Complex];
const rule = gaussLegendre(20);

/** Vector potential over mu0 and scalar potential by plain quadrature of the elements, images mirrored by hand. */
function potentials(driven: DrivenAntenna, place: Point): { a: Vector; phi: Complex } {
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
        const charge = multiply(complex(0, (side / w / vacuumPermittivity) * 1), multiply(slope, g));
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
  const g = sumSpectrum(buildSpectrum(k, complexPermittivity(soil, testFrequency), reach), rho, s);
  let phi: Complex = zero;
  for (let p = 0; p < points.count; p++) {
    const c = complex(driven.moments.re[p]!, driven.moments.im[p]!);
    const of = (plane: { re: Float64Array; im: Float64Array }): Complex => complex(plane.re[p]!, plane.im[p]!);
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
function slope<T>(f: (p: Point) => T, pick: (t: T) => Complex, at: Point, c: number, step: number): Complex {
  const value = (n: number): Complex => {
    const p: [number, number, number] = [...at];
    p[c]! += n * step;
    return pick(f(p));
  };
  const near = add(value(1), scale(value(-1), -1));
  const far = add(value(2), scale(value(-2), -1));
  return scale(add(scale(near, 8), scale(far, -1)), 1 / (12 * step));
}

function curl<T>(f: (p: Point) => T, pick: (t: T, c: number) => Complex, at: Point, step: number): Vector {
  const d = (of: number, along: number): Complex => slope(f, (t) => pick(t, of), at, along, step);
  return [0, 1, 2].map((c) => {
    const [p, q] = [(c + 1) % 3, (c + 2) % 3];
    return add(d(q, p), scale(d(p, q), -1));
  }) as Vector;
}

describe("near field", () => {
  const places: readonly Point[] = [
    [3, 2, 1.5],
    [-7, 5, 6],
    [15, -20, 3],
    [0.5, 1, 14],
  ];

  it.each(soils)("is what fourth-order differences of the potentials give: %j", (soil) => {
    const driven = drive(sloping, soil);
    const sampler = nearFieldSampler(driven);
    for (const place of places) {
      const known = new Map<string, ReturnType<typeof potentials>>();
      const at = (p: Point) => {
        const key = p.join();
        const value = known.get(key) ?? potentials(driven, p);
        known.set(key, value);
        return value;
      };
      const { e, h } = sampler(place);
      const { a } = at(place);
      const expected = a.map((x, c) =>
        add(
          multiply(complex(0, -w * vacuumPermeability), x),
          scale(
            slope(at, (t) => t.phi, place, c, 0.05),
            -1,
          ),
        ),
      );
      // 1e-6 of the field in free space and over a plane; over soil the tail the kernels cut counts more in differences.
      const share = soil.kind === "homogeneous" ? 3e-5 : 1e-6;
      expect(apart(e, expected), `E at ${place}`).toBeLessThan(share);
      expect(
        apart(
          h,
          curl(at, (t, c) => t.a[c]!, place, 0.05),
        ),
        `H at ${place}`,
      ).toBeLessThan(share);
    }
  });

  it.each([...soils, layered])("obeys Maxwell's equations by differences: %j", (soil) => {
    const sampler = nearFieldSampler(drive(sloping, soil));
    for (const place of places.slice(0, 2)) {
      const { e, h } = sampler(place);
      const curlE = curl(sampler, (f, c) => f.e[c]!, place, 0.05);
      const curlH = curl(sampler, (f, c) => f.h[c]!, place, 0.05);
      const scaled = (v: readonly Complex[], factor: Complex) => v.map((x) => multiply(x, factor));
      expect(apart(curlE, scaled(h, complex(0, -w * vacuumPermeability)))).toBeLessThan(1e-5);
      expect(apart(curlH, scaled(e, complex(0, w * vacuumPermittivity)))).toBeLessThan(1e-5);
    }
  });

  it("of a short dipole is Hertz's closed form", () => {
    // E_r, E_theta, H_phi of a Hertzian dipole (Balanis 2005, sec. 4.2, from memory), moment from the solved currents.
    const driven = drive(upright(0.002 * wl, 1e-6 * wl, 0), free);
    const { moments } = driven;
    const p = complex(
      moments.re.reduce((sum, x) => sum + x, 0),
      moments.im.reduce((sum, x) => sum + x, 0),
    );
    for (const [r, theta] of [
      [0.05 * wl, 0.6],
      [0.3 * wl, 1.2],
      [5 * wl, 2],
    ] as const) {
      const { e, h } = nearField(driven, [r * Math.sin(theta), 0, r * Math.cos(theta)]);
      const x = k * r;
      const wave = multiply(p, scale(exponential(complex(0, -x)), 1 / (4 * Math.PI * r)));
      const er = multiply(wave, scale(complex(1, -1 / x), (2 * vacuumImpedance * Math.cos(theta)) / r));
      const et = multiply(wave, scale(complex(1 / x, 1 - 1 / (x * x)), vacuumImpedance * k * Math.sin(theta)));
      const hp = multiply(wave, scale(complex(1 / x, 1), k * Math.sin(theta)));
      const ex = add(scale(er, Math.sin(theta)), scale(et, Math.cos(theta)));
      const ez = add(scale(er, Math.cos(theta)), scale(et, -Math.sin(theta)));
      // A dipole of length l differs by (l/r)^2: 1.6e-3 at the nearest place, of which a tenth counts.
      const share = 0.3 * ((0.002 * wl) / r) ** 2 + 1e-6;
      expect(apart(e, [ex, zero, ez])).toBeLessThan(share);
      expect(apart(h, [zero, hp, zero])).toBeLessThan(share);
    }
  });

  it("has no tangential part on a perfect plane", () => {
    const sampler = nearFieldSampler(drive(sloping, { kind: "perfect" }));
    for (const [x, y] of [
      [0, 0],
      [4, -6],
      [-20, 30],
    ] as const) {
      const { e, h } = sampler([x, y, 0]);
      expect(Math.hypot(magnitude(e[0]), magnitude(e[1]))).toBeLessThan(1e-12 * magnitude(e[2]));
      expect(magnitude(h[2])).toBeLessThan(1e-12 * size(h));
    }
  });

  it("goes over into the far field at 100 wavelengths", () => {
    for (const soil of [...soils, layered]) {
      const driven = drive(sloping, soil);
      const r = 100 * wl;
      for (const [elevation, azimuth] of [
        [0.4, 1],
        [1.1, 4],
      ] as const) {
        const [c, s] = [Math.cos(elevation), Math.sin(elevation)];
        const [sa, ca] = [Math.sin(azimuth), Math.cos(azimuth)];
        const { e } = nearField(driven, [r * c * sa, r * c * ca, r * s]);
        const far = farField(driven, elevation, azimuth);
        const wave = scale(exponential(complex(0, -k * r)), 1 / r);
        const [et, ep] = [multiply(far.eTheta, wave), multiply(far.ePhi, wave)];
        // theta grows downwards, phi counter-clockwise: unit vectors in x, y, z.
        const expected = [add(scale(et, s * sa), scale(ep, -ca)), add(scale(et, s * ca), scale(ep, sa)), scale(et, -c)];
        // Off by terms of (size of antenna)^2/(r wavelength): half a wavelength and its image give 0.5 per cent at most.
        expect(apart(e, expected), JSON.stringify(soil)).toBeLessThan(0.01);
      }
    }
  });

  it.each([...soils, layered])("carries the power of the feed out of a closed box: %j", (soil) => {
    const driven = drive(sloping, soil);
    const sampler = nearFieldSampler(driven);
    const low = [-5, -13, 1];
    const high = [6, 12, 15];
    const face = gaussLegendre(8);
    let flux = 0;
    for (let axis = 0; axis < 3; axis++) {
      const [p, q] = [(axis + 1) % 3, (axis + 2) % 3];
      for (const side of [low, high]) {
        face.points.forEach((x, i) => {
          face.points.forEach((y, n) => {
            const at: [number, number, number] = [0, 0, 0];
            at[axis] = side[axis]!;
            at[p] = low[p]! + ((high[p]! - low[p]!) * (1 + x)) / 2;
            at[q] = low[q]! + ((high[q]! - low[q]!) * (1 + y)) / 2;
            const area = (face.weights[i]! * face.weights[n]! * (high[p]! - low[p]!) * (high[q]! - low[q]!)) / 4;
            flux += area * (side === high ? 1 : -1) * outward(sampler(at), axis);
          });
        });
      }
    }
    expect(Math.abs(flux / driven.powerIn - 1)).toBeLessThan(1e-3);
  });

  /** Real part of E x H* along an axis. */
  function outward({ e, h }: NearField, axis: number): number {
    const [p, q] = [(axis + 1) % 3, (axis + 2) % 3];
    const product = (a: Complex, b: Complex): number => a.re * b.re + a.im * b.im;
    return product(e[p]!, h[q]!) - product(e[q]!, h[p]!);
  }

  it("along the surface of a lossless wire is nothing but what lies between the nodes", () => {
    const driven = drive(dipole(wl / 2, 0.02, 10), free);
    const { elements } = driven.solution.model.mesh;
    const sampler = nearFieldSampler(driven);
    // Galerkin: the mean of the tangential field under each hat vanishes. Against the radial field there.
    for (const e of [6, 12, elements.count - 10]) {
      let [along, across] = [zero, 0];
      for (const [element, rising] of [
        [e, true],
        [e + 1, false],
      ] as const) {
        const l = elements.length[element]!;
        rule.points.forEach((x, n) => {
          const rise = (1 + x) / 2;
          const f = sampler([0.02, elements.start[3 * element + 1]! + rise * l, 10]);
          const weight = (rule.weights[n]! * l * (rising ? rise : 1 - rise)) / 2;
          along = add(along, scale(f.e[1], weight));
          across += weight * magnitude(f.e[0]);
        });
      }
      expect(magnitude(along) / across, `${e}`).toBeLessThan(2e-3);
    }
  });

  it("over two layers of one soil is that over the soil", () => {
    const same = { relativePermittivity: 13, conductivity: 0.005 };
    const two: Soil = {
      kind: "layered",
      layers: [
        { ...same, thickness: 1 },
        { ...same, thickness: null },
      ],
    };
    const driven = drive(sloping, average);
    const twice = { ...driven, solution: { ...driven.solution, soil: two } };
    for (const place of [...places, [3, 4, 0], [120, 200, 1]] as const) {
      const [a, b] = [nearField(driven, place), nearField(twice, place)];
      expect(apart(b.e, a.e), `${place}`).toBeLessThan(1e-5);
      expect(apart(b.h, a.h), `${place}`).toBeLessThan(1e-5);
    }
  });

  it("refuses places inside a wire, below the ground, or on the soil under a wire that lies on it", () => {
    const driven = drive(groundPlane(3), average);
    expect(() => nearField(driven, [0, 0, 5])).toThrow("inside wire");
    expect(() => nearField(driven, [0, 5, -1])).toThrow("below the ground");
    expect(() => nearField(driven, [0, Number.NaN, 1])).toThrow("three finite coordinates");
    expect(nearField(driven, [1, 1, 0]).e).toHaveLength(3);
  });
});
