import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { type AntennaSolver, createAntennaSolver, type SolvedAntenna } from "../../chain/antennaSolver";
import { workPoint } from "../../chain/workPoint";
import { exactly } from "../../quantity/quantity";
import type { Part } from "../../station/path";
import type { Station } from "../../station/station";
import { antennaOf, levelDipole, linePart, pathOf, place, plainStation } from "../../testing/plainStation";
import { band } from "./run";

function answered(station: Station, parameters = {}): Answer {
  const steps: Generator<unknown, Answer | Refusal> = band.run(station, parameters, {
    program: "",
    catalogue: "",
    fileHash: "",
  });
  let step = steps.next();
  while (!step.done) step = steps.next();
  if ("refused" in step.value) throw new Error(step.value.refused.why);
  return step.value;
}

const number = (answer: Answer, name: string) => (answer.values[name] as { value: number }).value;
const column = (answer: Answer, name: string) => answer.tables[0]!.columns[name]!.values as number[];

describe("band", () => {
  const station = plainStation();
  const answer = answered(station);

  it("agrees with exact solves between the points it interpolated", () => {
    const own = createAntennaSolver();
    const frequencies = column(answer, "frequency").map((f) => f * 1e6);
    const to = frequencies.at(-1)!;
    // On the mesh held over the curve: as fine as its upper end asks for, where waves are shortest.
    const { refinement } = (own.solve(station, to) as SolvedAntenna).solution!.method;
    const mesh = { refinement, meshFrequency: to };
    const solver: AntennaSolver = { ...own, solve: (one, f, lift) => own.solve(one, f, lift, mesh) };
    for (const i of [3, 37, 71, 98]) {
      const f = column(answer, "frequency")[i]! * 1e6;
      const point = workPoint(station, station.bands[0]!, f, solver, { tuner: "through" });
      if ("refused" in point) throw new Error(point.refused.why);
      expect(column(answer, "swrAtTransmitter")[i]!).toBeCloseTo(point.swrAtTransmitter, 3);
    }
  });

  it("tells resonance (X = 0 at the feed point) apart from lowest SWR (in the shack)", () => {
    const resonant = number(answer, "resonantFrequency");
    const frequencies = column(answer, "frequency");
    const reactance = column(answer, "feedPointReactance");
    const i = frequencies.findIndex((f) => f > resonant);
    expect(reactance[i - 1]!).toBeLessThan(0);
    expect(reactance[i]!).toBeGreaterThan(0);
    const swr = column(answer, "swrAtTransmitter");
    expect(number(answer, "lowestSwr")).toBeLessThanOrEqual(Math.min(...swr) + 1e-9);
    expect(number(answer, "lowestSwrFrequency")).not.toBeCloseTo(resonant, 3);
  });

  it("finds the usable width to where the SWR crosses the limit, also beyond the curve", () => {
    const narrow = answered(station, { swrBelow: 1.8 });
    const wide = answered(station, { swrBelow: 3 });
    expect(number(wide, "usableWidth")).toBeGreaterThan(number(narrow, "usableWidth"));
    expect(number(wide, "usableWidth")).toBeGreaterThan(400);
  });

  it("ends the usable width where a band splitter stops passing: SWR without end is an edge too", () => {
    const split = plainStation({
      path: {
        parts: [],
        end: {
          kind: "band splitter",
          name: "box",
          branches: { wire: pathOf([linePart("line 1", 28)]) },
          passes: { wire: { from: 6.85e6, to: 7.35e6 } },
          loss: exactly(0),
        },
      },
    });
    expect(number(answered(split, { swrBelow: 10 }), "usableWidth")).toBeCloseTo(500, 0);
  });

  it("shows that loss flatters: SWR in the shack is below that at the antenna", () => {
    const swr = column(answer, "swrAtTransmitter");
    const feed = column(answer, "swrAtFeedPoint");
    swr.forEach((s, i) => {
      expect(s).toBeLessThan(feed[i]!);
    });
  });

  it("does not call a curve good that is only loss", () => {
    const lossy = plainStation({ path: pathOf([{ ...linePart("old line", 100), excessLoss: exactly(0.05) }]) });
    const flattered = answered(lossy);
    expect(flattered.verdict).toBe("workable");
    expect(flattered.next).toContain("loss");
  });

  it("does not call a curve good that a resistor in the antenna makes", () => {
    const base = plainStation();
    const resistor = {
      kind: "resistor" as const,
      component: { coil: null, capacitor: null, resistor: exactly(80), q: exactly(1) },
      hat: null,
      on: "both legs",
      fromFeed: exactly(0.5),
      length: null,
    };
    const loaded = answered({
      ...base,
      transmitter: { ...base.transmitter, designedFor: exactly(230) },
      path: pathOf([]),
      antennas: [{ ...antennaOf(levelDipole(20.1, 12)), loads: [resistor] }],
    });
    expect(number(loaded, "worstSwrInBand")).toBeLessThan(2);
    expect(number(loaded, "heatInWires")).toBeGreaterThan(50);
    expect(loaded.verdict).toBe("workable");
    expect(loaded.next).toContain("loss");
  });

  it("says that there is no resonance where there is none", () => {
    const short = answered(plainStation({ antennas: [antennaOf(levelDipole(6, 12))] }));
    const resonance = short.values.resonantFrequency as { value: number | null; reason?: string };
    expect(resonance.value).toBeNull();
    expect(resonance.reason).toContain("not resonant");
  });

  it("tells what the outside of the line does to the lowest SWR, and that it is nothing in the plane of symmetry", () => {
    const choke = (ohms: number): Part => ({
      kind: "choke",
      name: "choke",
      note: "",
      state: "in line",
      resistance: { kind: "constant", quantity: exactly(ohms) },
      reactance: null,
      heatLimit: null,
      length: null,
    });
    const line = { ...linePart("line 1", 28), route: [place(0, 9, 1), place(0, 0, 1), place(0, 0, 12)] };
    const sweep = { sweep: { from: 6.9e6, to: 7.5e6 } };
    const shift = (parts: readonly Part[]) =>
      number(answered(plainStation({ path: pathOf(parts) }), sweep), "outsideShift");
    expect(Math.abs(shift([line, choke(1e9)]))).toBeLessThan(0.1);
    // Beside the antenna the line is driven: no choke at all is the same as one that passes all.
    const aside = { ...line, route: [place(7, 9, 1), place(7, 0, 1), place(0, 0, 12)] };
    const open = shift([aside]);
    expect(Math.abs(open)).toBeGreaterThan(1);
    expect(shift([aside, choke(0)]) / open).toBeCloseTo(1, 1);
    expect(answer.values).not.toHaveProperty("outsideShift");
  });
});
