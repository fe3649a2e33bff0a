/** How the hottest place of a line warms, from rest, by the rhythm of sending. */
import { atRest } from "../../stress/steadyHeat";
import { type Course, timeConstant, warmInTurns, warmOver } from "../../stress/transientHeat";
import { hottest, type LineHeat } from "./lineHeat";
import type { Study } from "./study";

/** s over which a steady load is followed, in time constants, and steps. */
const following = { constants: 7, steps: 90 };
const turnsShown = 8;

/** From rest, at the hottest place of a line, by the rhythm of sending. */
export function courseOf({ conditions: { sending } }: Study, heat: LineHeat): Course {
  const { thermal, drive, leaving } = heat;
  const cold = atRest(thermal, leaving, heat.ambient);
  if (sending.kind === "once")
    return warmOver(thermal, cold, drive, leaving, { seconds: sending.seconds, steps: following.steps });
  if (sending.kind === "turns") {
    const enough = Math.min(60, Math.max(turnsShown, Math.ceil((5 * lineTimeConstant(heat)) / sending.rhythm.of)));
    return warmInTurns(thermal, cold, drive, leaving, { rhythm: sending.rhythm, rounds: enough, steps: 8 });
  }
  const seconds = following.constants * lineTimeConstant(heat);
  return warmOver(thermal, cold, drive, leaving, { seconds, steps: following.steps });
}

/** s in which the conductor makes two thirds of its way under the drive it has; from its own course. */
export function lineTimeConstant(heat: LineHeat): number {
  const cold = atRest(heat.thermal, heat.leaving, heat.ambient);
  const end = hottest(heat.thermal, heat.drive, heat.leaving, heat.ambient, { kind: "endless" }).inner;
  const mass = heat.thermal.capacities.reduce((sum, c) => sum + c, 0);
  const rise = Math.max(end - cold.inner, 1e-6);
  const rough = heat.watts > 0 ? (mass * rise) / heat.watts : mass;
  const course = warmOver(heat.thermal, cold, heat.drive, heat.leaving, { seconds: 6 * rough, steps: 240 });
  return timeConstant(course, end) ?? rough;
}
