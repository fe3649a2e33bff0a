import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, copper, levelDipole, plainStation } from "../../testing/plainStation";
import { sky } from "./run";

function ask(station: Station, parameters = {}): Answer {
  const steps: Generator<unknown, Answer | Refusal> = sky.run(station, parameters, {
    program: "",
    catalogue: "",
    fileHash: "",
  });
  let step = steps.next();
  while (!step.done) step = steps.next();
  if ("refused" in step.value) throw new Error(step.value.refused.why);
  return step.value;
}

const number = (answer: Answer, name: string): number => (answer.values[name] as { value: number }).value;
const table = (answer: Answer, name: string) => answer.tables.find((t) => t.name === name)!;
const column = (answer: Answer, of: string, name: string) => table(answer, of).columns[name]!.values as number[];

describe("sky", () => {
  const station = plainStation();
  const answer = ask(station);

  it("parts the watts to the sky by elevation without remainder", () => {
    const low = number(answer, "radiatedBelow30");
    const high = number(answer, "radiatedAbove60");
    expect(low).toBeGreaterThan(0);
    expect(low + high).toBeLessThan(number(answer, "radiatedPower"));
    expect(number(answer, "radiatedNearMaximum")).toBeLessThan(number(answer, "radiatedPower"));
  });

  it("judges nothing unless something is wanted", () => {
    expect(answer.verdict).toBeNull();
    expect(ask(station, { elevation: 0.9 }).verdict).toBe("good");
    // Off the ends of the wire and low: the null of the dipole.
    const offEnd = ask(station, { elevation: 0.1, direction: Math.PI / 2 });
    expect(offEnd.verdict).toBe("trouble");
    expect(offEnd.next).toMatch(/^Turn it/);
  });

  it("finds a level dipole to be what the dipole it is compared with is", () => {
    // Copper and 20.1 m against a lossless 0.48 wave: a tenth of a dB.
    expect(Math.abs(number(answer, "gainAgainstDipole"))).toBeLessThan(0.15);
  });

  it("takes from directivity and average gain what the gain is", () => {
    expect(number(answer, "directivity") + number(answer, "averageGain")).toBeCloseTo(number(answer, "maximumGain"), 6);
  });

  it("shortens the hop as the angle rises, to nothing straight up, and follows the layer asked for", () => {
    const hops = column(answer, "gainByAngle", "firstHopByF");
    hops.slice(1).forEach((hop, i) => {
      expect(hop).toBeLessThan(hops[i]!);
    });
    expect(hops.at(-1)).toBeCloseTo(0, 9);
    const higher = ask(station, { layerF: 400e3 });
    expect(number(higher, "firstHopByF")).toBeGreaterThan(number(answer, "firstHopByF"));
    expect(answer.cautions.join(" ")).toContain("geometry, not a prediction");
  });

  it("gives the whole sky as a grid, with its strongest cell no stronger than the strongest direction", () => {
    const [grid] = answer.grids!;
    expect(grid!.values).toHaveLength(grid!.rows.values.length);
    const most = Math.max(...grid!.values.flat().map(Number));
    expect(most).toBeLessThanOrEqual(number(answer, "maximumGain") + 1e-3);
    expect(most).toBeGreaterThan(number(answer, "maximumGain") - 0.1);
  });

  it("corrects the horizon for a level wire", () => {
    expect(answer.mistakenIdea?.idea).toContain("broadside at the horizon");
  });

  it("corrects the low angle of a vertical where a level dipole as high is stronger", () => {
    const mast = {
      kind: "vertical" as const,
      base: exactly(3),
      sections: [{ length: exactly(10), wire: copper(0.02) }],
    };
    const radials = { count: 4, length: exactly(10), wire: copper(2e-3), lie: exactly(3), bond: null };
    const vertical = {
      ...antennaOf(mast),
      against: "radials",
      radials: { ...radials, over: { from: 0, to: 2 * Math.PI } },
    };
    const told = ask(plainStation({ antennas: [vertical] }));
    expect(told.mistakenIdea?.idea).toContain("low angle of a vertical");
    expect(number(told, "uprightShare")).toBeGreaterThan(99);
    expect(number(told, "strongerThanDipoleBelow")).toBeGreaterThan(3);
  });

  it("answers in free space without hops, soil or half a sky", () => {
    const free = ask(plainStation({ ground: { kind: "free space" }, antennas: [antennaOf(levelDipole(20.1, 12))] }));
    expect(free.values.firstHopByE).toMatchObject({ value: null });
    expect(free.values.soilCostAtElevation).toMatchObject({ value: null });
    expect(number(free, "averageGain")).toBeCloseTo(0, 0);
    expect(free.grids![0]!.rows.values[0]).toBe(-90);
    expect(column(free, "elevationPattern", "gain")).toHaveLength(361);
  });

  it("carries an uncertain soil into the gain at the wanted angle", () => {
    const soil = { value: 13, low: 5, high: 30, basis: "stated" as const };
    const unsure = plainStation({
      ground: { kind: "soil", name: "", permittivity: soil, conductivity: exactly(5e-3) },
    });
    const value = ask(unsure, { elevation: 0.2 }).values.gainAtElevation as { low: number; high: number; unit: string };
    expect(value.unit).toBe("dBi");
    expect(value.high).toBeGreaterThan(value.low);
  });
});
