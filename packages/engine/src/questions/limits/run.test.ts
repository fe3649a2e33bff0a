import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import type { LineEntry } from "../../lines/lineModel";
import { between, exactly } from "../../quantity/quantity";
import type { Part } from "../../station/path";
import type { Station } from "../../station/station";
import { coaxialBuild } from "../../testing/coaxialBuild";
import { antennaOf, levelDipole, linePart, pathOf, plainLine, plainStation } from "../../testing/plainStation";
import type { Parameters, Progress } from "../common/question";
import { limits } from "./run";

const build = coaxialBuild({ inner: 0.45e-3, outer: 1.475e-3, strands: 0.97, innerFactor: 1.2, outerFactor: 2 });
const thin: LineEntry = { designation: "thin line", model: build, build, jacketDiameter: 4.95e-3, sources: [] };
const rated: LineEntry = { ...thin, ratings: { voltage: { ...exactly(1400), high: 1900 } } };

function station(power: number, parts: readonly Part[] = [linePart("line 1", 20, rated)], length = 20.1): Station {
  const plain = plainStation({ path: pathOf(parts), antennas: [antennaOf(levelDipole(length, 12))] });
  return { ...plain, transmitter: { ...plain.transmitter, power: exactly(power), duty: exactly(1) } };
}

function ask(of: Station, parameters: Parameters = {}): Answer | Refusal {
  const steps: Generator<Progress, Answer | Refusal> = limits.run(of, parameters, {
    program: "",
    catalogue: "",
    fileHash: "",
  });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(of: Station, parameters: Parameters = {}): Answer {
  const answer = ask(of, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value ${name}`);
  return found.value;
};

const connector: Part = {
  kind: "connector",
  name: "plug",
  note: "",
  state: "in line",
  series: "PL-259",
  count: 1,
  loss: exactly(0),
};

describe("limits", () => {
  it("names the power at which the first limit is reached: sent with that power, the margin is gone", () => {
    const now = answered(station(100));
    const power = value(now, "powerAtFirstLimit");
    expect(power).toBeCloseTo(100 * 10 ** (value(now, "leastMargin") / 10), 6);
    const then = answered(station(power));
    expect(value(then, "leastMargin")).toBeCloseTo(0, 1);
    expect(value(then, "hottestConductor")).toBeCloseTo(80, 0);
  });

  it("says trouble and names what fails beyond its limit, and good far below", () => {
    const hot = answered(station(5000));
    expect(hot.verdict).toBe("trouble");
    expect(hot.headline).toMatch(/^5 kW is too much: above .* the line overheats\.$/);
    expect(hot.next).toMatch(/^Send with /);
    expect(answered(station(10)).verdict).toBe("good");
  });

  it("has the largest voltage of the line between its samples, and its ends where the path has them", () => {
    const answer = answered(station(100, [linePart("line 1", 20, rated)], 26));
    const [line] = answer.parts;
    const sampled = Math.SQRT2 * Math.max(...line!.along.voltage);
    expect(value(answer, "greatestPeakVoltage")).toBeGreaterThanOrEqual(sampled * (1 - 1e-9));
    expect(value(answer, "greatestPeakVoltage") / sampled).toBeLessThan(1.02);
    const along = answer.tables.find(({ name }) => name === "alongLines")!.columns;
    expect(along.peakVoltage!.values[0]! / (Math.SQRT2 * line!.along.voltage[0]!)).toBeCloseTo(1, 6);
    expect(along.current!.values.at(-1)! / line!.along.current.at(-1)!).toBeCloseTo(1, 6);
  });

  it("gives each part the least of its margins, and none to parts without a limit", () => {
    const parts = [connector, linePart("line 1", 20, rated), linePart("line 2", 3, plainLine())];
    const answer = answered(station(100, parts));
    const margins = Object.fromEntries(answer.parts.map((part) => [part.name, part.margin]));
    expect(Math.min(margins.plug!, margins["line 1"]!)).toBeCloseTo(value(answer, "leastMargin"), 9);
    expect(margins["line 2"]).toBeNull();
    expect(answer.notCovered.join(" ")).toMatch(/Line 2: how it is built is not known/);
  });

  it("leaves less margin with hotter air, sun, more duty, no pause, and height above the sea", () => {
    const heat = (parameters: Parameters) => value(answered(station(100), parameters), "leastHeatMargin");
    const usual = heat({});
    expect(heat({ airTemperature: 333.15 })).toBeLessThan(usual);
    expect(heat({ lies: "in the sun" })).toBeLessThan(usual);
    expect(heat({ lies: "on a drum" })).toBeLessThan(heat({ lies: "in a conduit" }));
    expect(heat({ altitude: 4000 })).toBeLessThan(usual);
    expect(heat({ modulation: "SSB" })).toBeGreaterThan(usual);
    expect(heat({ transmission: 60 })).toBeGreaterThan(usual);
    expect(heat({ transmission: 6 * 3600 })).toBeCloseTo(usual, 2);
    const volts = (altitude: number) =>
      value(answered(station(100, [connector, linePart("line 1", 20, rated)]), { altitude }), "leastVoltageMargin");
    expect(volts(4000)).toBeLessThan(volts(0));
  });

  it("judges a short transmission by turns between steady sending and its mean", () => {
    const own = station(100);
    const turns = { ...own, transmitter: { ...own.transmitter, onAir: { on: 60, of: 240 } } };
    const once = value(answered(turns), "hottestConductor");
    expect(once).toBeLessThan(value(answered(own), "hottestConductor"));
    const mean = { ...own, transmitter: { ...own.transmitter, duty: exactly(0.25) } };
    expect(once).toBeGreaterThan(value(answered(mean), "hottestConductor"));
  });

  it("puts the doubt of air, cooling and limits into the margin beside that of the file", () => {
    const plain = station(100);
    const answer = answered({
      ...plain,
      site: { altitude: null, airTemperature: between(293.15, 313.15), noise: null },
    });
    const margin = answer.values.leastMargin as { value: number; low: number; high: number };
    expect(margin.low).toBeLessThan(margin.value - 0.3);
    expect(margin.high).toBeGreaterThan(margin.value + 0.3);
    expect(answer.uncertainties.map((one) => one.input)).toContain("temperature of the air");
    expect(answer.uncertainties.map((one) => one.input)).toContain("how well a line is cooled");
  });

  it("takes the tuner's gap as asked, and proposes line that lowers its voltage without touching the SWR", () => {
    const tuner: Part = {
      kind: "tuner",
      name: "tuner 1",
      note: "",
      state: "in line",
      network: "L",
      capacitors: null,
      coil: null,
      output: "coaxial",
      set: "least loss",
      voltageLimit: null,
    };
    const answer = answered(station(100, [tuner, linePart("line 1", 20, rated)], 31), { gap: 1e-4 });
    expect(answer.reasons.some(({ says }) => says.includes("0.1 mm of air"))).toBe(true);
    const added = answer.tables.find(({ name }) => name === "voltageByAddedLine")!.columns;
    const peaks = added.peakVoltage!.values as number[];
    const now = peaks[(added.addedLength!.values as number[]).findIndex((metres) => Math.abs(metres) < 1e-9)]!;
    const behind = answer.joints.find(({ name }) => name === "after tuner 1")!;
    expect(now / behind.voltage.peak).toBeCloseTo(1, 6);
    // Half a wave further the wave is the same, but for the line's loss.
    expect(peaks.at(-1)! / peaks[0]!).toBeGreaterThan(0.7);
    expect(peaks.at(-1)! / peaks[0]!).toBeLessThan(1.3);
  });

  it("looks at every band of the station, and warns of one that fails where this one does not", () => {
    const plain = station(300);
    const [only] = plain.bands;
    const bands = [
      { ...only!, name: "low" },
      { ...only!, name: "high", frequency: exactly(28.4e6), sweep: { from: 28e6, to: 29e6 } },
    ];
    const answer = answered({ ...plain, bands });
    const table = answer.tables.find(({ name }) => name === "firstLimitByBand")!.columns;
    expect(table.powerAtFirstLimit!.values[0]).toBeCloseTo(value(answer, "powerAtFirstLimit"), 6);
    const high = answered({ ...plain, bands }, { band: "high" });
    expect(table.powerAtFirstLimit!.values[1]).toBeCloseTo(value(high, "powerAtFirstLimit"), 6);
    expect(high.verdict).toBe("trouble");
    expect(answer.cautions[0]).toMatch(/^On high the line comes first, above /);
    expect(answered(plain).tables.some(({ name }) => name === "firstLimitByBand")).toBe(false);
  });

  it("links every number of its sentences, and holds nothing that JSON cannot", () => {
    const answer = answered(station(100, [connector, linePart("line 1", 20, rated)]));
    for (const phrase of [...answer.headlinePhrases, ...answer.verdictPhrases]) {
      if (phrase.value) expect(answer.values).toHaveProperty(phrase.value);
    }
    const walk = (thing: unknown): void => {
      if (typeof thing === "number") expect(Number.isFinite(thing)).toBe(true);
      else if (typeof thing === "object" && thing !== null) Object.values(thing).forEach(walk);
    };
    walk(answer);
  });
});
