/** The parts of the bench by name, in the order of the page. */
import { heightStudies } from "./cases/heights";
import { onePoint } from "./cases/onePoint";
import { denseSolves } from "./cases/solves";
import type { Section } from "./report/section";

export const parts: Readonly<Record<string, () => Promise<Section>>> = {
  point: onePoint,
  heights: heightStudies,
  solves: denseSolves,
};
