import { describe, expect, it } from "vitest";
import type { Answer, Grid, Refusal, Table } from "../../answer/answer";
import { lineConstants } from "../../lines/lineConstants";
import type { Station } from "../../station/station";
import { antennaOf, levelDipole, linePart, pathOf, plainLine, plainStation } from "../../testing/plainStation";
import type { Parameters } from "../common/question";
import { watts } from "../watts/run";
import { bounce } from "./run";

const context = { program: "", catalogue: "", fileHash: "" };

function ask(parameters: Parameters = {}, station: Station = free, question = bounce): Answer | Refusal {
  const steps = question.run(station, parameters, context);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** In free space the antenna is solved fast. */
const free = plainStation({ ground: { kind: "free space" } });

function answered(parameters: Parameters = {}, station: Station = free): Answer {
  const answer = ask(parameters, station);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const numberOf = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value ${name}`);
  return found.value;
};
const tableOf = (answer: Answer, name: string): Table => answer.tables.find((t) => t.name === name)!;
const gridOf = (answer: Answer, name: string): Grid => answer.grids!.find((g) => g.name === name)!;
const columnOf = (answer: Answer, table: string, name: string): number[] =>
  tableOf(answer, table).columns[name]!.values.map((v) => v!);

const dipole = answered();

describe("bounce", () => {
  it("ends where the station's own phasor answer stands: power, SWR and volts", () => {
    const whole = ask({}, free, watts) as Answer;
    const [start, end] = [whole.joints[0]!, whole.joints[1]!];
    expect(numberOf(dipole, "powerIntoLine")).toBeCloseTo(start.power, 9);
    expect(numberOf(dipole, "powerOutOfLine")).toBeCloseTo(end.power, 9);
    expect(numberOf(dipole, "voltageAtEnd")).toBeCloseTo(end.voltage.rms, 9);
    expect(numberOf(dipole, "voltageAtStart")).toBeCloseTo(start.voltage.rms, 9);
  });

  it("ends its film there too, within a quarter of a percent", () => {
    expect(Math.abs(numberOf(dipole, "filmDeviation"))).toBeLessThan(0.25);
    expect(numberOf(dipole, "settlingTime")).toBeGreaterThan(numberOf(dipole, "oneWayTime"));
  });

  it("accounts for every joule to rounding", () => {
    expect(numberOf(dipole, "energyResidue")).toBeLessThan(1e-9);
    const of = (name: string) => columnOf(dipole, "energy", name);
    of("deliveredBySource").forEach((delivered, i) => {
      const sum = of("storedInLine")[i]! + of("heatInLine")[i]! + of("intoLoad")[i]!;
      // The table holds four figures.
      expect(Math.abs(sum - delivered)).toBeLessThan(2e-3 * delivered + 1e-12);
    });
  });

  it("says that the source changes the build-up and nothing else", () => {
    const of = (name: string) => columnOf(dipole, "sources", name);
    for (const name of ["powerIntoLine", "powerOutOfLine", "swrAtLoad"]) expect(new Set(of(name)).size).toBe(1);
    expect(new Set(of("firstWave")).size).toBe(3);
    const matched = answered({ source: "matched" });
    expect(numberOf(matched, "echoesToSettle")).toBe(1);
    expect(numberOf(dipole, "echoesToSettle")).toBeGreaterThan(1);
    expect(numberOf(matched, "powerOutOfLine")).toBeCloseTo(numberOf(dipole, "powerOutOfLine"), 9);
  });

  it("shows nothing beyond the front", () => {
    const grid = gridOf(dipole, "voltageOnLine");
    grid.rows.values.forEach((time, row) => {
      const reach = (28 * time) / numberOf(dipole, "oneWayTime");
      grid.columns.values.forEach((distance, place) => {
        if (distance > reach + 0.5) expect(grid.values[row]![place]).toBe(0);
      });
    });
  });

  it("is bounded in size", () => {
    for (const grid of dipole.grids!)
      expect(grid.values.length * grid.values[0]!.length).toBeLessThanOrEqual(120 * 101);
    expect(tableOf(dipole, "echoes").columns.echo!.values.length).toBeLessThanOrEqual(40);
  });

  it("grows the standing wave echo by echo into the one that stays", () => {
    const grown = gridOf(dipole, "standingWaveByEchoes").values;
    const final = columnOf(dipole, "standingWave", "voltage");
    const off = (row: readonly (number | null)[]) => Math.max(...row.map((v, i) => Math.abs(v! - final[i]!)));
    expect(off(grown[0]!)).toBeGreaterThan(10 * off(grown[grown.length - 1]!));
    expect(off(grown[grown.length - 1]!)).toBeLessThan(0.03 * Math.max(...final));
  });

  it("tries other loads without an antenna: a resistor, an open end, a short", () => {
    const resistive = answered({ load: 25 });
    expect(resistive.headline).toMatch(/go into 25 Ω\.$/);
    expect(numberOf(resistive, "powerIntoLine")).toBeCloseTo(100, 9);
    expect(resistive.joints).toEqual([]);
    const open = answered({ load: "open" });
    expect(numberOf(open, "powerOutOfLine")).toBeCloseTo(0, 12);
    expect(numberOf(open, "firstWavePower")).toBeCloseTo(100, 9);
    expect(open.cautions.join(" ")).toContain("thought experiment");
    const short = answered({ load: "shorted" });
    expect(numberOf(short, "voltageAtEnd")).toBeCloseTo(0, 9);
    expect(Math.abs(numberOf(short, "filmDeviation"))).toBeLessThan(1);
  });

  it("shows a tester the line's own impedance until the first echo is home", () => {
    const step = answered({ signal: "step", load: 150 });
    const seen = tableOf(step, "atTheStart").columns.voltageOverCurrent!.values;
    const time = columnOf(step, "atTheStart", "time");
    const home = numberOf(step, "firstEchoHome");
    const before = seen.filter((_, i) => time[i]! > 0.1 * home && time[i]! < 0.98 * home);
    // Loss lets it rise while the front runs on: by less than the resistance of what it has passed.
    const surge = numberOf(step, "surgeImpedance");
    const { resistance } = lineConstants(plainLine().model, 1e9 / home);
    for (const ohm of before) {
      expect(ohm).toBeGreaterThan(surge * (1 - 1e-3));
      expect(ohm).toBeLessThan(surge + 28 * resistance);
    }
    const last = seen[seen.length - 1]!;
    expect(last).toBeGreaterThan(150);
    expect(last).toBeLessThan(150 + 28 * resistance);
    expect(numberOf(step, "firstEchoShare") / 100).toBeCloseTo(0.5, 1);
  });

  it("sends a pulse home upside down from a low resistance", () => {
    const pulse = answered({ signal: "pulse", load: 10 });
    expect(pulse.headline).toContain("upside down");
    expect(numberOf(pulse, "firstEchoShare")).toBeLessThan(-50);
    expect(answered({ signal: "pulse", load: 50 }).headline).toMatch(/^No echo/);
  });

  it("takes a reactive load and a reactive source as they are at the frequency", () => {
    const reactive = answered({ load: 80, loadReactance: -40, source: 30, sourceReactance: 60 });
    expect(reactive.values.loadImpedance).toMatchObject({ re: 80, im: -40 });
    expect(Math.abs(numberOf(reactive, "filmDeviation"))).toBeLessThan(1);
  });

  it("shows sizes where a line is many waves long, and refuses a carrier on one too long to follow", () => {
    const long = (length: number) => plainStation({ path: pathOf([linePart("line 1", length)]) });
    const sizes = answered({ load: 25 }, long(120));
    expect(sizes.parameters.shows).toBe("sizes");
    for (const row of gridOf(sizes, "voltageOnLine").values) for (const v of row) expect(v).toBeGreaterThanOrEqual(0);
    expect(Math.abs(numberOf(sizes, "filmDeviation"))).toBeLessThan(1);
    const refused = ask({ load: 25 }, long(900));
    expect(refused).toMatchObject({ refused: { wouldMakeItAnswerable: expect.stringContaining("`signal`") } });
    expect("refused" in ask({ load: 25, signal: "step" }, long(900))).toBe(false);
    expect(ask({ load: "open", loadReactance: 20 })).toMatchObject({
      refused: { why: expect.stringContaining("no reactance") },
    });
  });

  it("looks at the longest line, or at the one named, and names those there are", () => {
    const two = plainStation({
      ground: { kind: "free space" },
      path: pathOf([linePart("jumper", 2), linePart("mast line", 20, plainLine(75))]),
      antennas: [antennaOf(levelDipole(20.1, 12))],
    });
    expect(answered({}, two).parameters.line).toBe("mast line");
    const jumper = answered({ line: "jumper" }, two);
    expect(jumper.parameters.line).toBe("jumper");
    expect(jumper.headline).toMatch(/come through\.$/);
    expect(ask({ line: "garden line" }, two)).toMatchObject({
      refused: { wouldMakeItAnswerable: "one of: jumper, mast line." },
    });
  });

  it("tries another length with the station's own load", () => {
    const longer = answered({ lineLength: 35 });
    expect(numberOf(longer, "oneWayTime") / numberOf(dipole, "oneWayTime")).toBeCloseTo(35 / 28, 3);
    expect(longer.values.loadImpedance).toEqual(dipole.values.loadImpedance);
    expect(numberOf(longer, "heatInLine")).toBeGreaterThan(numberOf(dipole, "heatInLine"));
    expect(longer.assumptions).toContainEqual(expect.objectContaining({ name: "length of line 1", value: "35 m" }));
    const same = answered({ lineLength: 28 });
    expect(numberOf(same, "powerOutOfLine")).toBeCloseTo(numberOf(dipole, "powerOutOfLine"), 9);
  });

  it("refuses a path without a line", () => {
    expect(ask({}, plainStation({ path: pathOf([]) }))).toMatchObject({
      refused: { why: expect.stringContaining("no line") },
    });
  });

  it("holds nothing that JSON cannot, and gives the same bytes twice", () => {
    const walk = (thing: unknown): void => {
      if (typeof thing === "number") expect(Number.isFinite(thing)).toBe(true);
      else if (typeof thing === "object" && thing !== null) Object.values(thing).forEach(walk);
    };
    for (const answer of [dipole, answered({ load: "open" }), answered({ signal: "step", load: "shorted" })])
      walk({ ...answer, grids: [] });
    expect(JSON.stringify(answered({ load: 25 }))).toBe(JSON.stringify(answered({ load: 25 })));
  });

  it("links every number of its sentences to a value", () => {
    for (const answer of [dipole, answered({ load: "open" }), answered({ signal: "pulse", load: 10 })]) {
      for (const phrase of [...answer.headlinePhrases, ...answer.verdictPhrases]) {
        if (phrase.value) expect(answer.values).toHaveProperty(phrase.value);
      }
      for (const step of answer.working) for (const name of step.explains) expect(name).toMatch(/^[a-z]+[A-Za-z]*$/);
    }
  });
});
