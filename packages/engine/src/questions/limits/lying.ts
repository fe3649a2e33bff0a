/** How a line of the path lies, and how heat leaves it there. */
import type { LinePart, Lying } from "../../station/path";
import { sunshine } from "../../stress/surfaceHeat";
import { type Leaving, leavingOf } from "../../stress/surroundings";
import type { ThermalLine } from "../../stress/thermalLine";
import { type Conditions, soilTemperature } from "./conditions";

/** m below the soil's surface where the route does not say. */
const usualDepth = 0.5;
const conduitRatio = 3;

/** Buried where most of its route lies in the soil. */
export function lyingOf(part: LinePart, asked: Lying | null): { readonly lies: Lying; readonly taken: boolean } {
  if (asked) return { lies: asked, taken: false };
  if (part.lies) return { lies: part.lies, taken: false };
  return { lies: buriedShare(part) > 0.5 ? "buried" : "in air", taken: true };
}

/** Mean height of each run of the route, m. */
const runs = ({ route }: LinePart) =>
  route.slice(1).map((to, i) => {
    const from = route[i]!;
    const length = Math.hypot(...to.map((q, axis) => q.value - from[axis]!.value));
    return { length, height: (to[2].value + from[2].value) / 2 };
  });

function buriedShare(part: LinePart): number {
  const all = runs(part);
  const total = all.reduce((sum, run) => sum + run.length, 0);
  const buried = all.filter((run) => run.height < 0).reduce((sum, run) => sum + run.length, 0);
  return total > 0 ? buried / total : 0;
}

function depthOf(part: LinePart): number {
  const deepest = Math.min(0, ...runs(part).map((run) => run.height));
  return deepest < 0 ? -deepest : usualDepth;
}

/** W/m against the temperature of its surface (K), under these conditions. In the soil it is covered at least by its own radius. */
export function leavingHeat(line: LinePart, thermal: ThermalLine, lies: Lying, conditions: Conditions): Leaving {
  const site = {
    air: conditions.air,
    irradiance: noonSun,
    soil: {
      temperature: soilTemperature,
      resistivity: conditions.soilResistivity,
      depth: Math.max(depthOf(line), thermal.surface.diameter),
    },
    conduit: conduitRatio,
  };
  const leaving = leavingOf(lies, thermal.surface, site, line.length.value);
  if (lies === "buried" || conditions.cooling === 1) return leaving;
  // Cooling is in doubt, not what the sun brings.
  const sun = lies === "in the sun" ? sunshine(thermal.surface, noonSun) : 0;
  return (t) => conditions.cooling * (leaving(t) + sun) - sun;
}

/** W/m² square to the sun: IEC 60287-1-1 (from memory). */
const noonSun = 1000;
