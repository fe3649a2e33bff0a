/** The radiation vector of a driven antenna in many directions at once: behind far field and soil heat. */
import { chosenKernels } from "../kernels/chosen";
import type { PlaneWaves } from "../kernels/waves";
import type { Radiating } from "../wires/radiating";

export { numbersOfWave } from "../kernels/waves";

/** See Kernels.sumWaves: along the plane of incidence (u), across it (v) and upwards (n), A m; re and im of each. */
export const radiationVectors = ({ solution, moments }: Radiating, waves: PlaneWaves): Float64Array =>
  chosenKernels().sumWaves({ ...solution.model.points, moments }, waves);

/** Room for so many waves. */
export const wavesOf = (count: number): PlaneWaves => ({
  radial: new Float64Array(count),
  phi: new Float64Array(count),
  upright: new Float64Array(count),
});
