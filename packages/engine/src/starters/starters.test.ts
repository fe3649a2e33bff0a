import { describe, expect, it } from "vitest";
import { powerAccount } from "../fields/powerAccount";
import { type Complex, complex, one } from "../numerics/complex";
import { averageSoil, freeSpace, solveStarter, structureOf } from "../testing/solvedStarter";
import { validateStructure } from "../wires/validateStructure";
import { starters } from "./registry";
import type { Feeding } from "./starter";

/** Hz: where people put such an antenna up. */
const usualFrequency = (name: string): number => {
  if (name === "helix" || name.startsWith("J")) return 145e6;
  return ["beam", "log-periodic", "rhombic", "small transmitting loop"].includes(name) ? 14.2e6 : 7.1e6;
};

/** Currents at the feeds: one feed, or equal ones from the back to the front, each a quarter of a period later. */
function currentsFor(feeding: Feeding): Record<string, Complex> {
  if (feeding.kind === "line to one feed") return { [feeding.feed]: one };
  if (feeding.kind !== "tee") return {};
  const periods: Record<string, number> = { back: 0, left: 0.25, right: 0.25 };
  const front = "left" in feeding.wavelengths ? 0.5 : 0.25;
  const lag = (waves: number) => complex(Math.cos(2 * Math.PI * waves), -Math.sin(2 * Math.PI * waves));
  return Object.fromEntries(Object.keys(feeding.wavelengths).map((feed) => [feed, lag(periods[feed] ?? front)]));
}

describe("the starters", () => {
  it("have names of their own and say what they are", () => {
    expect(new Set(starters.map((s) => s.name)).size).toBe(starters.length);
    for (const { says, rule } of starters) expect([says.length > 10, rule.length > 10]).toEqual([true, true]);
  });

  const media = [
    ["free space", freeSpace],
    ["average soil", averageSoil],
  ] as const;
  const cases = starters.flatMap((starter) =>
    media.map(([medium, soil]) => [starter.name, medium, starter, soil] as const),
  );

  it.each(cases)(
    "%s in or over %s: solved within the goal, all power accounted for",
    (name, _medium, starter, soil) => {
      const frequency = usualFrequency(name);
      const antenna = starter.at(frequency);
      const { solution, driven } = solveStarter(antenna, soil, frequency, currentsFor(starter.feeding));
      expect(solution.goalMet).toBe(true);
      const account = powerAccount(driven);
      expect(Math.abs(account.residue)).toBeLessThan(1e-3);
      expect(account.powerIn).toBeGreaterThan(0);
    },
  );

  it.each(starters.map((s) => [s.name, s] as const))("%s keeps its shape over the bands", (_, starter) => {
    for (const frequency of [1.9e6, 3.65e6, 14.2e6, 28.5e6, 50.2e6, 145e6]) {
      const structure = structureOf(starter.at(frequency), freeSpace, frequency);
      expect(validateStructure(structure, freeSpace, frequency)).toEqual([]);
    }
  });
});
