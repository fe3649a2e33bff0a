/** The same antenna on the mesh of doubled elements: what differs between the two is three times the error. */
import type { SplitVectors } from "../kernels/door";
import type { AntennaSolution } from "./antennaSolution";
import { portAdmittance } from "./portMatrices";
import type { Restriction } from "./restriction";

/** Currents of the coarse mesh as those of the fine one: hats of the fine mesh sum up to each of the coarse one. */
export function prolong(coarse: SplitVectors, { first, unknown, weight }: Restriction, length: number): SplitVectors {
  const re = new Float64Array(coarse.count * length);
  const im = new Float64Array(coarse.count * length);
  for (let v = 0; v < coarse.count; v++) {
    for (let c = 0; c < coarse.length; c++) {
      for (let a = first[c]!; a < first[c + 1]!; a++) {
        re[v * length + unknown[a]!]! += weight[a]! * coarse.re[v * coarse.length + c]!;
        im[v * length + unknown[a]!]! += weight[a]! * coarse.im[v * coarse.length + c]!;
      }
    }
  }
  return { count: coarse.count, length, re, im };
}

/** A solution whose currents, and all that is worked out from them, are those of the coarse mesh. */
export function coarseTwin(solution: AntennaSolution): AntennaSolution {
  const { model } = solution;
  const admittance = portAdmittance(model.coarseCurrents, model.mesh.ports);
  return {
    ...solution,
    admittance,
    fineAdmittance: admittance,
    model: { ...model, currents: model.coarseCurrents },
  };
}
