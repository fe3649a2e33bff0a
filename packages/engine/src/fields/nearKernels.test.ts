import { describe, expect, it } from "vitest";
import { complexPermittivity } from "../ground/soilMedium";
import { keptKernels } from "./nearKernels";
import { buildNearSpectrum } from "./nearSpectrum";

describe("near kernels", () => {
  const frequency = 7.1e6;
  const k = (2 * Math.PI * frequency) / 299792458;
  const soils = [
    { relativePermittivity: 13, conductivity: 0.005 },
    { relativePermittivity: 80, conductivity: 5 },
    { relativePermittivity: 4, conductivity: 1e-5 },
  ];
  const places = [
    [0.01, 2],
    [3, 2],
    [40, 2],
    [40, 0.5],
    [300, 3],
    [30, 0.05],
  ] as const;
  it.each(soils)("end early where distances are large without loss: %j", (soil) => {
    const eps = complexPermittivity(soil, frequency);
    const early = keptKernels((reach) => buildNearSpectrum(k, eps, reach));
    const whole = keptKernels((reach) => buildNearSpectrum(k, eps, { ...reach, nearest: 0 }));
    const [a, b] = [new Float64Array(20), new Float64Array(20)];
    for (const [rho, s] of places) {
      early(rho, s, a);
      whole(rho, s, b);
      // Against what each kernel is at this distance: 1/R, and one more power of 1/R or k for each derivative.
      const r = Math.hypot(rho, s);
      const slope = Math.max(k, 1 / r);
      const sizes = [1, slope, slope / r, slope, slope / r, 1, slope / r, 1 / r, slope / r, slope / (r * r)];
      sizes.forEach((size, i) => {
        const error = Math.hypot(a[2 * i]! - b[2 * i]!, a[2 * i + 1]! - b[2 * i + 1]!);
        expect((error * 4 * Math.PI * r) / size, `kernel ${i} at ${rho}, ${s}`).toBeLessThan(1e-6);
      });
    }
  });
});
