/** Currents along the wires, for pictures. */
import { magnitude } from "../numerics/complex";
import { type DrivenAntenna, elementCurrent } from "./driveAntenna";

export interface WireCurrent {
  /** Index into the structure's wires. */
  readonly wire: number;
  /** Distances from the wire's start, m. */
  readonly distance: readonly number[];
  /** A rms at those places. */
  readonly magnitude: readonly number[];
}

/** Magnitude of the current at every node of every wire. */
export function wireCurrents(driven: DrivenAntenna): readonly WireCurrent[] {
  const { mesh, structure } = driven.solution.model;
  return structure.wires.map((_, wire) => {
    const distance = [0];
    const first = mesh.firstElement[wire]!;
    const values = [magnitude(elementCurrent(driven, first, 0))];
    for (let e = first; e < mesh.firstElement[wire + 1]!; e++) {
      distance.push(distance.at(-1)! + mesh.elements.length[e]!);
      values.push(magnitude(elementCurrent(driven, e, 1)));
    }
    return { wire, distance, magnitude: values };
  });
}
