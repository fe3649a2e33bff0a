import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { between, exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, copper, levelDipole, linePart, pathOf, plainStation } from "../../testing/plainStation";
import type { Progress } from "../common/question";
import { watts } from "./run";

function ask(station: Station, parameters = {}): Answer | Refusal {
  const steps: Generator<Progress, Answer | Refusal> = watts.run(station, parameters, {
    program: "",
    catalogue: "",
    fileHash: "",
  });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(station: Station): Answer {
  const answer = ask(station);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value ${name}`);
  return found.value;
};

const sumOfTerms = (a: Answer) =>
  value(a, "heatInPath") + value(a, "heatInWires") + value(a, "heatInSoil") + value(a, "radiatedPower");

describe("watts", () => {
  it("accounts for every watt over soil within 1e-3, over a perfect conductor and in free space within 1e-4", () => {
    const grounds = {
      soil: plainStation(),
      perfect: plainStation({ ground: { kind: "perfect" } }),
      free: plainStation({ ground: { kind: "free space" } }),
    };
    expect(sumOfTerms(answered(grounds.soil)) / 100).toBeCloseTo(1, 3);
    expect(Math.abs(sumOfTerms(answered(grounds.perfect)) / 100 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(sumOfTerms(answered(grounds.free)) / 100 - 1)).toBeLessThan(1e-4);
  });

  it("says of a line called wet, or not known, that it is computed as dry", () => {
    const told = (condition: "dry" | "wet" | "unknown") => {
      const parts = [{ ...linePart("garden line", 20), condition }];
      return answered(plainStation({ path: pathOf(parts) })).notCovered.join(" ");
    };
    expect(told("wet")).toMatch(/Water in the garden line: the file calls it wet/);
    expect(told("unknown")).toMatch(/Water in the garden line: its condition is not known/);
    expect(told("dry")).not.toMatch(/Water in/);
  });

  it("tells whole watts in the headline and sentence that add up", () => {
    const answer = answered(plainStation());
    const told = [...answer.headlinePhrases, ...answer.verdictPhrases]
      .filter((p) => p.value)
      .map((p) => Number.parseFloat(p.text));
    expect(told.reduce((a, b) => a + b, 0)).toBe(100);
    expect(answer.headline).toMatch(/^Of 100 W, \d+ W leave for the sky\.$/);
  });

  it("links every number of its sentences to a value", () => {
    const answer = answered(plainStation());
    for (const phrase of [...answer.headlinePhrases, ...answer.verdictPhrases]) {
      if (phrase.value) expect(answer.values).toHaveProperty(phrase.value);
    }
  });

  it("brackets the result by what is uncertain and names the unknown that matters most", () => {
    const soil = {
      kind: "soil" as const,
      name: "",
      permittivity: { ...between(3, 30), tied: "soil" },
      conductivity: { ...between(1e-4, 1e-2), tied: "soil" },
    };
    const answer = answered(
      plainStation({ ground: soil, path: pathOf([{ ...linePart("line 1", 28), length: between(27, 29) }]) }),
    );
    const radiated = answer.values.radiatedPower as { value: number; low: number; high: number };
    expect(radiated.low).toBeLessThan(radiated.value - 3);
    expect(radiated.high).toBeGreaterThan(radiated.value + 1);
    expect(answer.uncertainties[0]!.input).toBe("the soil");
    expect(answer.wouldSettle).toMatch(/Lower the wire to .* read R at the feed point: about \d+ Ω/);
  });

  it("does not reward low SWR: a line of high loss gives trouble however good the SWR", () => {
    const lossy = { ...linePart("old line", 200), excessLoss: between(0.05, 0.051) };
    const answer = answered(plainStation({ path: pathOf([lossy]) }));
    expect(value(answer, "swrAtTransmitter")).toBeLessThan(1.1);
    expect(answer.verdict).toBe("trouble");
    expect(answer.mistakenIdea?.idea).toContain("My SWR is low");
  });

  it("refuses a wire in the soil with the reason", () => {
    const answer = ask(plainStation({ antennas: [antennaOf(levelDipole(20, 0.0001))] }));
    if (!("refused" in answer)) throw new Error("answered");
    expect(answer.refused.why).not.toBe("");
  });

  it("refuses a band the station does not have and names those it has", () => {
    const answer = ask(plainStation(), { band: "10 m" });
    if (!("refused" in answer)) throw new Error("answered");
    expect(answer.refused.why).toContain("10 m");
  });

  it("gives the same bytes twice", () => {
    expect(JSON.stringify(ask(plainStation()))).toBe(JSON.stringify(ask(plainStation())));
  });

  it("holds nothing that JSON cannot: no NaN, no infinity", () => {
    const walk = (thing: unknown): void => {
      if (typeof thing === "number") expect(Number.isFinite(thing)).toBe(true);
      else if (typeof thing === "object" && thing !== null) Object.values(thing).forEach(walk);
    };
    walk(ask(plainStation()));
  });

  it("lists that insulation is taken without loss where its loss tangent is not known, and else counts its heat", () => {
    const bare = levelDipole(20.1, 12);
    const insulation = { material: "PVC", wall: exactly(8e-4), permittivity: exactly(3.5) };
    const sleeved = { ...bare, wire: { ...copper(2e-3), insulation } } as typeof bare;
    const told = (shape: typeof bare) =>
      answered(plainStation({ antennas: [antennaOf(shape)] })).assumptions.filter((a) =>
        a.name.startsWith("insulation"),
      );
    expect(told(bare)).toEqual([]);
    expect(told(sleeved)[0]).toMatchObject({ value: "without loss" });
    const lossy = (lossTangent: number) =>
      ({
        ...bare,
        wire: { ...copper(2e-3), insulation: { ...insulation, lossTangent: exactly(lossTangent) } },
      }) as typeof bare;
    expect(told(lossy(0.03))).toEqual([]);
    const heat = (shape: typeof bare) =>
      (answered(plainStation({ antennas: [antennaOf(shape)] })).values.heatInWires as { value: number }).value;
    const lossless = heat(lossy(0));
    // Proportional to the loss while it is small: twice the loss tangent, twice the heat.
    expect((heat(lossy(0.02)) - lossless) / (heat(lossy(0.01)) - lossless)).toBeCloseTo(2, 1);
    expect(heat(lossy(0.01))).toBeGreaterThan(lossless);
  });
});
