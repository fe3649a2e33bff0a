/** Heat in the dielectric sleeves of wires. */
import { type DrivenAntenna, elementCurrent } from "../wires/driveAntenna";

/** W: the charge of each element, spread evenly over it, across the loss of the sleeve. */
export function sleeveHeat(driven: DrivenAntenna): number {
  const { mesh, local } = driven.solution.model;
  let heat = 0;
  local.sleeves.forEach((sleeve, wire) => {
    if (sleeve.re === 0) return;
    for (let e = mesh.firstElement[wire]!; e < mesh.firstElement[wire + 1]!; e++) {
      const a = elementCurrent(driven, e, 0);
      const b = elementCurrent(driven, e, 1);
      heat += (sleeve.re * ((a.re - b.re) ** 2 + (a.im - b.im) ** 2)) / mesh.elements.length[e]!;
    }
  });
  return heat;
}
