/**
 * Power that evanescent waves of large decay carry into the soil from low wires: there the waves that get in tend to those
 * of electrostatics, whose integral over all decays is known in closed form, 1/R to the mirror images of the charges.
 */
import { quasiStaticImages } from "../ground/quasiStaticImages";
import type { SoilSurface } from "../ground/soilSurface";
import type { Kernels } from "../kernels/door";
import { complex, zero } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { lowImages } from "../wires/lowImages";

/** Ohm m: limit, for large decay, of 4 pi times what is let in of the squared charge; (eta0/k) 2 eps''/|1 + eps|^2. */
export const imageLoss = ({ k, top }: SoilSurface): number => (quasiStaticImages(top).scalar.im * vacuumImpedance) / k;

/** W: sum over the charges of all low elements and their images, imageLoss cos(kR)/(4 pi R) apart. */
export function imageHeat(driven: DrivenAntenna, surface: SoilSurface, kernels: Kernels): number {
  const { model } = driven.solution;
  const low = lowImages(model.mesh, model.points.lowWires, kernels);
  if (!low) return 0;
  const n = model.mesh.unknowns;
  const matrix = { size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) };
  // A strength of j times the scalar factor: the loss comes out as the real part.
  kernels.addPairTerms(
    {
      tests: low.elements,
      sources: low.mirrored,
      near: low.near,
      scatter: low.scatter,
      wavenumber: surface.k,
      vectorFactor: 0,
      scalarFactor: imageLoss(surface) / (4 * Math.PI),
      factors: { level: zero, upright: zero, charge: complex(0, 1), cross: null },
    },
    matrix,
  );
  const { re, im } = driven.currents;
  let power = 0;
  for (let row = 0; row < n; row++) {
    for (let column = row; column < n; column++) {
      const both = re[row]! * re[column]! + im[row]! * im[column]!;
      power += (row === column ? 1 : 2) * matrix.re[row * n + column]! * both;
    }
  }
  return power;
}
