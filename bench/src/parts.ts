/** The parts of the bench by name, in the order of the page. */
import { drag } from "./cases/drag";
import { heightStudies } from "./cases/heights";
import { lines } from "./cases/lines";
import { onePoint } from "./cases/onePoint";
import { pageInBrowser } from "./cases/page";
import { programs } from "./cases/programs";
import { denseSolves } from "./cases/solves";
import { sweep } from "./cases/sweep";
import { wireGridSolve } from "./cases/wireGrid";
import { workedFiles } from "./cases/workedFiles";
import { growth } from "./growth/growth";
import type { Section } from "./report/section";

export const parts: Readonly<Record<string, () => Promise<Section>>> = {
  point: onePoint,
  heights: heightStudies,
  sweep,
  lines,
  drag,
  bands: workedFiles,
  solves: denseSolves,
  grid: wireGridSolve,
  programs,
  growth,
  page: pageInBrowser,
};
