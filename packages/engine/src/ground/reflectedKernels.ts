/** Tables of reflected kernels, whatever the soil: the one place that chooses between the two ways of integration. */
import type { SpectralSums, Spectrum } from "../kernels/door";
import { buildKernelTable, type KernelTable } from "./kernelTable";
import { layeredSampler } from "./layeredSampler";
import { layeredMedium } from "./layeredSoil";
import { complexPermittivity } from "./soilMedium";
import type { RealSoil } from "./soilSurface";
import { buildSpectrum, type Reach } from "./spectrum";
import type { Sampler } from "./tablePieces";

const nothing = { re: new Float64Array(), im: new Float64Array() };
const noSpectrum: Spectrum = {
  propagating: 0,
  steep: true,
  depth: nothing.re,
  radial: nothing.re,
  horizontal: nothing,
  scalar: nothing,
  vertical: nothing,
  cross: nothing,
};

/** A function from reaches to tables, at one frequency (air wavenumber `k` in rad/m, `frequency` in Hz). */
export function reflectedTables(soil: RealSoil, frequency: number, k: number, sum: Sampler): (r: Reach) => KernelTable {
  if (soil.kind === "homogeneous") {
    const eps = complexPermittivity(soil, frequency);
    return (reach) => buildKernelTable(buildSpectrum(k, eps, reach), k, reach, sum);
  }
  const layered = layeredSampler(layeredMedium(soil.layers, frequency));
  const sample = (_: Spectrum, rho: Float64Array, s: Float64Array): SpectralSums => layered(rho, s);
  return (reach) => buildKernelTable(noSpectrum, k, reach, sample);
}
