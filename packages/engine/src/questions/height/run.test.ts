import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, copper, levelDipole, linePart, pathOf, place, plainStation } from "../../testing/plainStation";
import type { Question } from "../common/question";
import { watts } from "../watts/run";
import { height } from "./run";

const context = { program: "", catalogue: "", fileHash: "" };

function ask(question: Question, station: Station, parameters = {}): Answer | Refusal {
  const steps: Generator<unknown, Answer | Refusal> = question.run(station, parameters, context);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(question: Question, station: Station, parameters = {}): Answer {
  const answer = ask(question, station, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const number = (answer: Answer, name: string) => (answer.values[name] as { value: number }).value;
const column = (answer: Answer, name: string) => answer.tables[0]!.columns[name]!.values as number[];

describe("height", () => {
  const station = plainStation();
  const answer = answered(height, station);

  it("gives at a height of the study what watts gives for a station hung there", () => {
    const i = 7;
    const h = column(answer, "height")[i]!;
    const there = answered(watts, plainStation({ antennas: [antennaOf(levelDipole(20.1, h))] }));
    expect(column(answer, "radiatedPower")[i]!).toBeCloseTo(number(there, "radiatedPower"), 6);
    expect(column(answer, "swrAtTransmitter")[i]!).toBeCloseTo(number(there, "swrAtTransmitter"), 6);
  });

  it("never sends more than it takes, and heats the soil more the lower it hangs", () => {
    const heat = column(answer, "heatInSoil");
    expect(heat[0]!).toBeGreaterThan(2 * heat[12]!);
    column(answer, "radiatedPower").forEach((p, i) => {
      expect(p).toBeLessThan(column(answer, "powerIntoAntenna")[i]!);
    });
  });

  it("marks where the pattern splits: straight up 1 dB below the strongest direction", () => {
    const split = number(answer, "splitHeight");
    const heights = column(answer, "height");
    const depth = heights.map((_, i) => column(answer, "maximumGain")[i]! - column(answer, "gainHigh")[i]!);
    heights.forEach((h, i) => {
      if (h < split) expect(depth[i]!).toBeLessThan(1);
    });
    expect(depth[heights.findIndex((h) => h > split)]!).toBeGreaterThan(1);
  });

  it("refuses where there is no ground", () => {
    expect(ask(height, plainStation({ ground: { kind: "free space" } }))).toHaveProperty("refused");
  });

  it("answers within the span asked for", () => {
    const asked = answered(height, station, { heights: { from: 5, to: 8 } });
    expect(column(asked, "height")[0]).toBe(5);
    expect(column(asked, "height").at(-1)).toBeCloseTo(8, 12);
  });

  it("does not blame the soil for what resistors in the wire take", () => {
    const resistor = {
      kind: "resistor" as const,
      component: { coil: null, capacitor: null, resistor: exactly(150), q: exactly(1) },
      hat: null,
      on: "both legs",
      fromFeed: exactly(1),
      length: null,
    };
    const lossy = { ...antennaOf(levelDipole(20.1, 12)), loads: [resistor] };
    const answer = answered(height, plainStation({ antennas: [lossy] }));
    expect(answer.verdict).toBe("trouble");
    expect(number(answer, "heatInWires")).toBeGreaterThan(2 * number(answer, "heatInSoil"));
    expect(answer.next).not.toMatch(/soil takes most/i);
    const low = answered(height, plainStation({ antennas: [antennaOf(levelDipole(20.1, 2))] }));
    expect(low.verdict).toBe("trouble");
    expect(low.next).toMatch(/soil takes most/i);
  });

  it("tells the rule for level wires of level wires only", () => {
    const mast = {
      kind: "vertical" as const,
      base: exactly(12),
      sections: [{ length: exactly(10), wire: copper(0.02) }],
    };
    const radials = { count: 4, length: exactly(10), wire: copper(2e-3), lie: exactly(12), bond: null };
    const vertical = {
      ...antennaOf(mast),
      against: "radials",
      radials: { ...radials, over: { from: 0, to: 2 * Math.PI } },
    };
    const heights = { heights: { from: 11, to: 14 } };
    const rules = (antenna: typeof vertical | ReturnType<typeof antennaOf>) =>
      answered(height, plainStation({ antennas: [antenna] }), heights).rulesOfThumb.map((r) => r.rule);
    expect(rules(vertical)).toEqual([]);
    expect(rules(antennaOf(levelDipole(20.1, 12)))[0]).toContain("level wire");
  });

  it("works out the lowest SWR and the split at their own heights, not at the nearest step", () => {
    const heights = column(answer, "height");
    const swrs = column(answer, "swrAtTransmitter");
    const lowest = number(answer, "lowestSwrHeight");
    expect(number(answer, "lowestSwrOverHeights")).toBe(Math.min(...swrs));
    const steps = heights.filter((h) => Math.abs(h - lowest) > 1e-9);
    expect(Math.min(...steps.map((h) => swrs[heights.indexOf(h)]!))).toBeGreaterThan(Math.min(...swrs));
    const i = heights.indexOf(number(answer, "splitHeight"));
    expect(column(answer, "maximumGain")[i]! - column(answer, "gainHigh")[i]!).toBeCloseTo(1, 1);
  });

  it("follows each lobe from the zenith down, lower the higher it hangs", () => {
    const table = answer.tables.find((t) => t.name === "lobesByHeight")!;
    const lowest = table.columns.elevationOfLobe1!.values as number[];
    expect(lowest[0]).toBe(90);
    expect(lowest.every((e, i) => i === 0 || e <= lowest[i - 1]! + 0.1)).toBe(true);
    // Image theory: sine of the angle is a quarter wave over the height; the wire's own pattern lowers nothing broadside.
    const quarter = 299792458 / 7.1e6 / 4;
    const h = column(answer, "height").at(-1)!;
    expect(Math.abs(lowest.at(-1)! - (Math.asin(quarter / h) * 180) / Math.PI)).toBeLessThan(3);
  });

  it("refuses what stands on an earth before solving anything, and says what to ask instead", () => {
    const rod = {
      name: "rod",
      form: "rod" as const,
      size: exactly(1.5),
      diameter: null,
      at: place(0, 0, 0),
      resistance: exactly(60),
    };
    const mast = {
      kind: "vertical" as const,
      base: exactly(0),
      sections: [{ length: exactly(10), wire: copper(0.02) }],
    };
    const standing = { ...antennaOf(mast), against: "rod" };
    const steps = height.run(plainStation({ antennas: [standing], earths: [rod] }), {}, context);
    const first = steps.next();
    expect(first.done).toBe(true);
    const { refused } = first.value as Refusal;
    expect(refused.why).toContain("cannot be raised or lowered");
    expect(refused.wouldMakeItAnswerable).toContain("“Where does my signal go?”");
  });

  it("keeps a choke at the feed point when the antenna hangs higher or lower than its line was drawn", () => {
    const choke = {
      kind: "choke" as const,
      name: "choke",
      note: "",
      state: "in line" as const,
      resistance: { kind: "constant" as const, quantity: exactly(1e15) },
      reactance: null,
      heatLimit: null,
      length: null,
    };
    const routed = { ...linePart("line 1", 28), route: [place(0, 9, 1), place(0, 0, 1), place(0, 0, 12)] };
    const station = plainStation({ path: pathOf([routed, choke]) });
    const told = answered(height, station, { heights: { from: 8, to: 16 } });
    // In the plane of symmetry of a level dipole a line that is opened at the feed changes nothing.
    const bare = answered(height, plainStation({ path: pathOf([linePart("line 1", 28)]) }), {
      heights: { from: 8, to: 16 },
    });
    const at = (a: Answer, h: number) => column(a, "radiatedPower")[column(a, "height").indexOf(h)]!;
    for (const h of [8, 16]) expect(at(told, h)).toBeCloseTo(at(bare, h), 1);
    expect(told.assumptions.some((a) => a.name === "outside of line 1")).toBe(true);
    expect(bare.assumptions.some((a) => a.name.startsWith("outside of"))).toBe(false);
  });

  it("calls no height good while half of the power never arrives at the antenna", () => {
    const lossy = { ...linePart("old line", 100), excessLoss: exactly(0.05) };
    const told = answered(height, plainStation({ path: pathOf([lossy]) }));
    expect(answer.verdict).toBe("good");
    expect(told.verdict).toBe("workable");
    expect(told.reasons).toHaveLength(2);
  });
});
