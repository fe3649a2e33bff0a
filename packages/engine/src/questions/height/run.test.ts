import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, copper, levelDipole, linePart, pathOf, plainStation } from "../../testing/plainStation";
import type { Question } from "../common/question";
import { watts } from "../watts/run";
import { height } from "./run";

function ask(question: Question, station: Station, parameters = {}): Answer | Refusal {
  const steps: Generator<unknown, Answer | Refusal> = question.run(station, parameters, {
    program: "",
    catalogue: "",
    fileHash: "",
  });
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

  it("calls no height good while half of the power never arrives at the antenna", () => {
    const lossy = { ...linePart("old line", 100), excessLoss: exactly(0.05) };
    const told = answered(height, plainStation({ path: pathOf([lossy]) }));
    expect(answer.verdict).toBe("good");
    expect(told.verdict).toBe("workable");
    expect(told.reasons).toHaveLength(2);
  });
});
