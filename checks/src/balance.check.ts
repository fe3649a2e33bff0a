/** The power balance: what goes into the antenna against what its parts, the soil and the sky get, each computed by itself. */
import { readdirSync, readFileSync } from "node:fs";
import {
  type Answer,
  driveAntenna,
  findQuestion,
  isQuantity,
  powerAccount,
  type Refusal,
  type Soil,
  type Station,
  solveAntenna,
} from "@feedpath/engine";
import { readStation } from "@feedpath/station-file";
import { describe, expect, it } from "vitest";
import { dipoles, level, speedOfLight, upright } from "./antennas/thinWires";

const folder = new URL("../../examples/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

function stationOf(name: string): Station {
  const { station, problems } = readStation(readFileSync(new URL(name, folder), "utf8"), {
    fileName: name,
    readFile: (path) => readFileSync(new URL(path, folder), "utf8"),
  });
  if (!station) throw new Error(`${name} is not read: ${problems.map((p) => p.message).join(" ")}`);
  return nominal(station) as Station;
}

/** Every value without its uncertainty: the balance is one of each point, and ranges would only multiply the work. */
function nominal(thing: unknown): unknown {
  if (isQuantity(thing)) return { ...thing, low: thing.value, high: thing.value };
  if (Array.isArray(thing)) return thing.map(nominal);
  if (typeof thing !== "object" || thing === null) return thing;
  return Object.fromEntries(Object.entries(thing).map(([key, value]) => [key, nominal(value)]));
}

function ask(station: Station, band: string): Answer | Refusal {
  const context = { program: "checks", catalogue: "checks", fileHash: "" };
  const run = findQuestion("watts")!.run(station, band === "" ? {} : { band }, context);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value;
  }
}

const points = names.flatMap((name) => stationOf(name).bands.map((band) => [name, band.name] as const));

/** Stations whose antenna this version does not compute, with the word that must stand in the refusal. */
const notComputedYet: Readonly<Record<string, RegExp>> = {
  "lawn-vertical.yaml": /not computed yet: radials under the s/i,
};

describe("power balance of every example", () => {
  it.each(points)(
    "%s %s: what is left over is below a thousandth of the power, or it is refused with a reason",
    (name, band) => {
      const answer = ask(stationOf(name), band);
      if ("refused" in answer) {
        expect(notComputedYet[name] ?? "no refusal", answer.refused.why).toBeInstanceOf(RegExp);
        expect(answer.refused.why).toMatch(notComputedYet[name]!);
        return;
      }
      expect(notComputedYet).not.toHaveProperty(name);
      const residue = answer.values.powerBalanceResidue;
      expect(residue).toHaveProperty("value");
      expect(Math.abs((residue as { value: number }).value)).toBeLessThan(1e-3);
    },
  );
});

describe("power balance without soil", () => {
  const wavelength = speedOfLight / 14.2e6;
  const antennas = [0.3, 0.48, 1.3].flatMap((length) =>
    [level, upright].map((along) =>
      dipoles({ length: length * wavelength, radius: 1e-3, middle: [0, 0, 0.7 * wavelength], along }),
    ),
  );
  it.each(["free space", "perfect"] as const)("%s: below 1e-4", (kind) => {
    for (const structure of antennas) {
      const soil: Soil = { kind };
      const driven = driveAntenna(solveAntenna(structure, soil, 14.2e6), [{ re: 1, im: 0 }]);
      expect(Math.abs(powerAccount(driven).residue)).toBeLessThan(1e-4);
    }
  });
});
