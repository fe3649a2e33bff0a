/** Tables of reflected kernels, whatever the soil: the one place that chooses between the two ways of integration. */
import { buildKernelTable, type KernelTable } from "./kernelTable";
import { layeredSampler } from "./layeredSampler";
import { layeredMedium } from "./layeredSoil";
import { octaveSampler } from "./octaveSampler";
import { quasiStaticImages } from "./quasiStaticImages";
import { complexPermittivity } from "./soilMedium";
import type { RealSoil } from "./soilSurface";
import type { Reach } from "./spectralNodes";
import { buildSpectrum } from "./spectrum";
import type { Sampler } from "./tablePieces";

/** A function from reaches to tables, at one frequency (air wavenumber `k` in rad/m, `frequency` in Hz). */
export function reflectedTables(soil: RealSoil, frequency: number, k: number, sum: Sampler): (r: Reach) => KernelTable {
  if (soil.kind === "homogeneous") {
    const eps = complexPermittivity(soil, frequency);
    return (reach) =>
      buildKernelTable(
        k,
        reach,
        octaveSampler(reach, (part) => buildSpectrum(k, eps, part), sum),
      );
  }
  const medium = layeredMedium(soil.layers, frequency);
  const whole = layeredSampler(medium, { sum });
  const less = layeredSampler(medium, { takenOut: quasiStaticImages(medium.layers[0]!.permittivity), sum });
  return (reach) => buildKernelTable(k, reach, reach.lessImages ? less : whole);
}
