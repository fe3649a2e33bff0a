/** The elements of a driven antenna with their currents, and their images in a perfect plane. */
import { type DrivenAntenna, elementCurrent } from "../wires/driveAntenna";
import type { CurrentElement } from "./nearDirect";

const triple = (values: Float64Array, e: number): [number, number, number] => [
  values[3 * e]!,
  values[3 * e + 1]!,
  values[3 * e + 2]!,
];

/** All elements in the order of the mesh, A rms. */
export function currentElements(driven: DrivenAntenna): CurrentElement[] {
  const { elements } = driven.solution.model.mesh;
  return Array.from({ length: elements.count }, (_, e) => {
    const [from, to] = [elementCurrent(driven, e, 0), elementCurrent(driven, e, 1)];
    const length = elements.length[e]!;
    return {
      start: triple(elements.start, e),
      direction: triple(elements.direction, e),
      length,
      radius: elements.radius[e]!,
      current: [from.re, from.im],
      slope: [(to.re - from.re) / length, (to.im - from.im) / length],
    };
  });
}

/** The same mirrored in the plane z = 0, with opposite charges: what a perfect plane adds above it. */
export const imageElements = (elements: readonly CurrentElement[]): CurrentElement[] =>
  elements.map((element) => ({
    ...element,
    start: [element.start[0], element.start[1], -element.start[2]],
    direction: [element.direction[0], element.direction[1], -element.direction[2]],
    current: [-element.current[0], -element.current[1]],
    slope: [-element.slope[0], -element.slope[1]],
  }));
