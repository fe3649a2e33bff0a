import { describe, expect, it } from "vitest";
import { add, type Complex, complex, exponential, magnitude, multiply, scale, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { vacuumImpedance, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { dipole, groundPlane, testWavelength, upright } from "../wires/antennas.fixture";
import type { Point, Soil } from "../wires/structure";
import { farField } from "./farField";
import { nearField, nearFieldSampler } from "./nearField";
import {
  apart,
  average,
  curl,
  drive,
  free,
  k,
  layered,
  potentials,
  size,
  slope,
  sloping,
  soils,
  w,
} from "./nearField.fixture";

const wl = testWavelength;
const rule = gaussLegendre(20);

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
