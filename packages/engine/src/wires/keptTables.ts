/** Tables of reflected kernels kept by content: a finer mesh of the same wires, or another metal, needs no new ones. */

import type { KernelTable } from "../ground/kernelTable";
import { reflectedTables } from "../ground/reflectedKernels";
import type { RealSoil } from "../ground/soilSurface";
import type { Reach } from "../ground/spectralNodes";
import { createBoundedStore } from "../kept/boundedStore";
import type { Kernels } from "../kernels/door";

const mostBytes = 16e6;
/** Coefficients are nearly all there is. */
const sizeOf = ({ bands }: KernelTable): number =>
  bands.reduce((sum, { coefficients }) => sum + 8 * coefficients.length + 500, 1000);
const tables = createBoundedStore<KernelTable>(mostBytes, sizeOf);

const written = (reach: Reach): string => JSON.stringify({ ...reach, sums: reach.sums ? [...reach.sums] : null });

/** Builds as `build` does what is not kept; `about` names all that the tables hang on beside their reach. */
export const keeping =
  (about: string, build: (reach: Reach) => KernelTable) =>
  (reach: Reach): KernelTable => {
    const key = `${about} ${written(reach)}`;
    const table = tables.get(key) ?? build(reach);
    tables.set(key, table);
    return table;
  };

/** As reflectedTables: a function from reaches to tables, at one frequency (Hz; air wavenumber `k`, rad/m). */
export const keptTables = (
  soil: RealSoil,
  frequency: number,
  k: number,
  kernels: Kernels,
): ((reach: Reach) => KernelTable) =>
  keeping(
    `${kernels.name} ${frequency} ${JSON.stringify(soil)}`,
    reflectedTables(soil, frequency, k, kernels.sumSpectrum),
  );
