import { beforeAll, describe, expect, it } from "vitest";
import type { Answer, Refusal, Table } from "../../answer/answer";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, copper, linePart, pathOf, plainStation } from "../../testing/plainStation";
import { radials } from "./run";
import { withRadials } from "./withRadials";

const q = exactly;
const vertical = {
  ...antennaOf({ kind: "vertical", base: q(0.1), sections: [{ length: q(10), wire: copper(20e-3) }] }),
  against: "radials" as const,
  radials: {
    count: 4,
    length: q(5),
    wire: copper(2e-3),
    lie: "on the soil" as const,
    over: { from: 0, to: 2 * Math.PI },
    bond: null,
  },
};
const station = plainStation({ antennas: [vertical], path: pathOf([linePart("line 1", 20)]) });

function ask(asked: Station): Answer | Refusal {
  const run = radials.run(asked, {}, { program: "test", catalogue: "test", fileHash: "" });
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value;
}

const column = (table: Table, name: string): number[] => table.columns[name]!.values.map((v) => v ?? Number.NaN);

describe("the question about radials", () => {
  let answer: Answer;
  const table = (name: string): Table => answer.tables.find((t) => t.name === name)!;
  beforeAll(() => {
    const given = ask(station);
    if ("refused" in given) throw new Error(given.refused.why);
    answer = given;
  }, 120_000);

  it("has the station's own radials among those tried, with the watts of its own answer", () => {
    const counts = column(table("radialCount"), "count");
    const own = column(table("radialCount"), "wattsToSky")[counts.indexOf(4)]!;
    const radiated = answer.values.radiatedPower as { value: number };
    expect(own / radiated.value).toBeCloseTo(1, 6);
  });

  it("sends more with more of them, up to where it hardly matters any more", () => {
    const watts = column(table("radialCount"), "wattsToSky");
    watts.slice(1).forEach((w, i) => {
      expect(w).toBeGreaterThan(0.99 * watts[i]!);
    });
    const steps = watts.slice(1).map((w, i) => w - watts[i]!);
    expect(steps.at(-1)!).toBeLessThan(0.5 * Math.max(...steps));
  });

  it("calls good only what no other use of the wire would beat by a noticeable step", () => {
    const watts = (name: string): number => (answer.values[name] as { value: number }).value;
    const behind = 10 * Math.log10(watts("radiatedWithSameWireOtherwise") / watts("radiatedPower"));
    const good = watts("behindSameWire") <= 0.5 && watts("behindMost") <= 1.5 && behind <= 1.5;
    expect(answer.verdict === "good").toBe(good);
  });

  it("keeps the wire of all radials together where it cuts it otherwise", () => {
    const [counts, lengths] = [column(table("sameWire"), "count"), column(table("sameWire"), "length")];
    counts.forEach((count, i) => {
      expect(count * lengths[i]!).toBeCloseTo(20, 6);
    });
  });

  it("shares the current evenly among radials all round an upright antenna", () => {
    const currents = column(table("radialCurrents"), "current");
    expect(currents).toHaveLength(4);
    expect(Math.max(...currents) / Math.min(...currents)).toBeLessThan(1.01);
    expect(column(table("radialCurrents"), "share").reduce((sum, s) => sum + s, 0)).toBeCloseTo(100, 0);
  });

  it("is refused for antennas that have no use for radials", () => {
    const refused = ask(plainStation());
    expect("refused" in refused && refused.refused.wouldMakeItAnswerable).toContain("radials");
  });

  it("changes nothing of the station but its radials", () => {
    const changed = withRadials(station, "antenna", { count: 9, length: 3, lie: "on the soil" })!;
    expect(changed.antennas[0]!.radials!.count).toBe(9);
    expect({ ...changed, antennas: [] }).toEqual({ ...station, antennas: [] });
    expect(station.antennas[0]!.radials!.count).toBe(4);
  });
});
