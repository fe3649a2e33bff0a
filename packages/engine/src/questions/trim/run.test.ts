import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { workPoint } from "../../chain/workPoint";
import { voltageReflection } from "../../lines/reflection";
import { exactly } from "../../quantity/quantity";
import type { Conductor } from "../../station/place";
import type { Reading, Station } from "../../station/station";
import {
  antennaOf,
  copper,
  levelDipole,
  linePart,
  pathOf,
  place,
  plainLine,
  plainStation,
} from "../../testing/plainStation";
import { band } from "../band/run";
import type { Parameters, Question } from "../common/question";
import { watts } from "../watts/run";
import { trim } from "./run";

function ask(question: Question, station: Station, parameters: Parameters = {}): Answer | Refusal {
  const steps = question.run(station, parameters, { program: "", catalogue: "", fileHash: "" });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(question: Question, station: Station, parameters: Parameters = {}): Answer {
  const answer = ask(question, station, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const number = (answer: Answer, name: string): number => (answer.values[name] as { value: number }).value;
const column = (answer: Answer, table: string, name: string): number[] =>
  answer.tables.find((t) => t.name === table)!.columns[name]!.values as number[];

const dipole = (length: number, wire: Conductor = copper(2e-3)) =>
  antennaOf({ ...levelDipole(length, 12), wire } as ReturnType<typeof levelDipole>);
const station = plainStation();
const answer = answered(trim, station);

describe("the length", () => {
  it("of lowest SWR is what watts finds there, and lower than to either side", () => {
    const swrWith = (length: number) =>
      number(answered(watts, plainStation({ antennas: [dipole(length)] })), "swrAtTransmitter");
    const best = number(answer, "lengthForLowestSwr");
    expect(swrWith(best)).toBeCloseTo(number(answer, "lowestSwrByTrimming"), 6);
    expect(swrWith(best - 0.08)).toBeGreaterThan(swrWith(best));
    expect(swrWith(best + 0.08)).toBeGreaterThan(swrWith(best));
  });

  it("of resonance has X = 0 when it is solved by itself", () => {
    const there = answered(watts, plainStation({ antennas: [dipole(number(answer, "lengthForResonance"))] }));
    expect(Math.abs((there.values.feedPointImpedance as { im: number }).im)).toBeLessThan(0.3);
  });

  it("moves with the soil, and is not asked to move with what only warms", () => {
    const soil = { ...exactly(13), low: 5, high: 25 };
    const doubtful = answered(
      trim,
      plainStation({ ground: { kind: "soil", name: "", permittivity: soil, conductivity: exactly(5e-3) } }),
    );
    const value = doubtful.values.lengthForLowestSwr as { low: number; high: number; value: number };
    expect(value.low).toBeLessThan(value.value);
    expect(value.high).toBeGreaterThan(value.value);
    expect(doubtful.uncertainties[0]!.input).toMatch(/soil/);
    for (const { atLow, atHigh } of doubtful.uncertainties)
      for (const end of [atLow, atHigh]) expect(Math.abs(end / value.value - 1)).toBeLessThan(0.05);
  });
});

describe("the dip and what to cut", () => {
  it("moves per centimetre as band finds with two wires that differ by 20 cm", () => {
    const best = number(answer, "lengthForLowestSwr");
    const dipOf = (length: number) =>
      number(answered(band, plainStation({ antennas: [dipole(length)] })), "lowestSwrFrequency");
    const perCentimetre = ((dipOf(best - 0.1) - dipOf(best + 0.1)) * 1e3) / 10;
    expect(number(answer, "kilohertzPerCentimetre")).toBeCloseTo(perCentimetre, 1);
  });

  it("gives back the cut of a wire that was 40 cm too long, from the dip that band finds for it", () => {
    const long = answered(band, plainStation({ antennas: [dipole(20.8)] }), { sweep: { from: 6.8e6, to: 7.2e6 } });
    const measuredLowest = number(long, "lowestSwrFrequency") * 1e6;
    const told = answered(trim, station, { measuredLowest });
    expect(number(told, "lengthAsMeasured")).toBeCloseTo(20.8, 2);
    const cut = 2 * number(told, "changeAtEachEnd");
    const right = answered(band, plainStation({ antennas: [dipole(20.8 + cut / 100)] }), {
      sweep: { from: 6.9e6, to: 7.3e6 },
    });
    expect(number(right, "lowestSwrFrequency")).toBeCloseTo(7.1, 3);
    expect(told.headline).toMatch(/cut .* from each leg/);
    expect(told.next).toMatch(/fold back/);
  });

  it("has a ladder that falls to nothing at the wanted frequency, in both units alike", () => {
    const dips = column(answer, "ladder", "measuredLowest");
    const cm = column(answer, "ladder", "changeAtEachEnd");
    const inches = column(answer, "ladder", "changeAtEachEndInInches");
    expect(cm[dips.indexOf(7.1)]).toBeCloseTo(0, 6);
    dips.forEach((f, i) => {
      expect(Math.sign(Math.round(1e3 * cm[i]!))).toBe(Math.sign(Math.round(1e6 * (f - 7.1))));
      expect(inches[i]! * 2.54).toBeCloseTo(cm[i]!, 9);
    });
  });

  it("says so, and cuts nothing, where what was measured lies a quarter off", () => {
    const far = answered(trim, station, { measuredLowest: 5.2e6 });
    expect(far.values.changeAtEachEnd).toMatchObject({ value: null });
    expect(far.headline).toMatch(/too far off/);
    expect(far.next).toMatch(/^Do not cut/);
  });

  it("splits the change of unequal legs in their proportion", () => {
    const legs = [exactly(6.9), exactly(13.8)] as const;
    const { length: _, ...span } = levelDipole(20, 12) as Extract<ReturnType<typeof levelDipole>, { kind: "dipole" }>;
    const off = answered(trim, plainStation({ antennas: [antennaOf({ ...span, kind: "off-centre dipole", legs })] }));
    const [first, second] = ["changeOfFirstLeg", "changeOfSecondLeg"].map((name) => number(off, name));
    expect(second! / first!).toBeCloseTo(2, 9);
  });
});

describe("what was measured", () => {
  const reading = (frequency: number, swr: number): Reading => ({
    at: "transmitter",
    frequency: exactly(frequency),
    swr: exactly(swr),
    file: null,
    taken: null,
    farEnd: "antenna",
  });

  it("is read from three readings with the lowest in the middle, and not from one", () => {
    const readings = [reading(6.9e6, 1.8), reading(7.0e6, 1.5), reading(7.1e6, 1.8)];
    const three = answered(trim, plainStation({ readings }));
    expect(number(three, "measuredLowest")).toBeCloseTo(7.0, 9);
    const one = answered(trim, plainStation({ readings: readings.slice(0, 1) }));
    expect(one.values).not.toHaveProperty("measuredLowest");
    expect(one.notCovered.join(" ")).toMatch(/does not show where the SWR is lowest/);
  });

  it("is read from a sweep, and its X = 0 comes back at the feed point through the line", () => {
    const real = plainStation({ antennas: [dipole(20.7)] });
    const solver = createAntennaSolver();
    const frequencies = Array.from({ length: 61 }, (_, i) => 6.6e6 + i * 15e3);
    const scattering = frequencies.map((f) => {
      const point = workPoint(real, real.bands[0]!, f, solver, { tuner: "through" });
      if ("refused" in point) throw new Error(point.refused.why);
      const s = voltageReflection(point.joints[0]!.impedance, { re: 50, im: 0 });
      return [s.re, s.im];
    });
    const taken: Reading = { ...reading(0, 1), frequency: null, swr: null, file: "a.s1p" };
    const measured = { "a.s1p": { ports: 1, reference: 50, frequencies, scattering } };
    const told = answered(trim, plainStation({ readings: [taken], measured }));
    const dip = answered(band, real, { sweep: { from: 6.8e6, to: 7.2e6 } });
    expect(number(told, "measuredLowest")).toBeCloseTo(number(dip, "lowestSwrFrequency"), 2);
    expect(number(told, "lengthAsMeasured")).toBeCloseTo(20.7, 1);
    const zero = told.values.measuredZeroReactanceAtFeedPoint as { value: number; low: number; high: number };
    expect(zero.value).toBeCloseTo(number(dip, "resonantFrequency"), 3);
    expect(zero.low).toBeLessThan(zero.value);
    expect(zero.high).toBeGreaterThan(zero.value);
    expect(told.notCovered.join(" ")).not.toMatch(/a\.s1p/);
  });
});

describe("what makes the length", () => {
  it("tells of insulation what two stations without ground differ by", () => {
    const sleeve = { material: "PVC", wall: exactly(0.8e-3), permittivity: exactly(3.5) };
    const insulated = { ...copper(2e-3), insulation: sleeve };
    const told = answered(trim, plainStation({ antennas: [dipole(20.1, insulated)] }));
    const free = (wire: Conductor) =>
      number(
        answered(trim, plainStation({ ground: { kind: "free space" }, antennas: [dipole(20.1, wire)] })),
        "lengthForResonance",
      );
    const between = 100 * (free(insulated) - free(copper(2e-3)));
    expect(between).toBeLessThan(-20);
    expect(number(told, "shareOfInsulation")).toBeCloseTo(between, 0);
  });

  it("shows X = 0 moving with a metre more of line, and the lowest SWR hardly", () => {
    expect(Math.abs(number(answer, "zeroReactanceShiftOfOneMetre"))).toBeGreaterThan(20);
    expect(Math.abs(number(answer, "lowestSwrShiftOfOneMetre"))).toBeLessThan(5);
  });

  it("tells where a line of another impedance moves the lowest SWR too", () => {
    const path = pathOf([linePart("75-ohm line", 28, plainLine(75))]);
    const moved = answered(trim, plainStation({ path }), { measuredLowest: 7e6 });
    expect(Math.abs(number(moved, "lowestSwrShiftOfOneMetre"))).toBeGreaterThan(10);
    expect(moved.mistakenIdea!.idea).toMatch(/X = 0/);
  });
});

describe("no length", () => {
  it("is told for a tuner's sake: no verdict, and the length left alone", () => {
    const tuner = {
      kind: "tuner" as const,
      name: "tuner 1",
      note: "",
      state: "in line" as const,
      network: "L" as const,
      capacitors: null,
      coil: null,
      output: "coaxial" as const,
      set: "least loss" as const,
      voltageLimit: null,
    };
    const told = answered(trim, plainStation({ path: pathOf([tuner, linePart("line 1", 28)]) }));
    expect(told.verdict).toBeNull();
    expect(told.headline).toMatch(/^Without the tuner/);
  });

  it("can be cut from a small loop, or where two feed points are fed at once", () => {
    const loop = {
      kind: "small loop" as const,
      round: exactly(3),
      height: exactly(5),
      plane: exactly(0),
      wire: copper(20e-3),
      capacitor: { from: 1e-11, to: 2e-10, q: exactly(1000) },
      jointsResistance: null,
    };
    expect(ask(trim, plainStation({ antennas: [antennaOf(loop)] }))).toHaveProperty("refused");
    const two = [antennaOf(levelDipole(20, 12), "a"), { ...antennaOf(levelDipole(20, 12), "b"), at: place(0, 30, 0) }];
    const branches = { one: pathOf([], "a"), two: pathOf([], "b") };
    const refused = ask(
      trim,
      plainStation({ antennas: two, path: { parts: [], end: { kind: "tee", name: "tee", branches } } }),
    );
    expect(refused).toMatchObject({ refused: { why: expect.stringMatching(/2 feed points/) } });
  });

  it("gives a lowest SWR where the wire is far from any resonance", () => {
    const short = answered(trim, plainStation({ antennas: [dipole(9)] }));
    expect(short.values.lengthForLowestSwr).toMatchObject({ value: null });
    expect(short.verdict).toBe("trouble");
    expect(short.verdictPhrases.map((p) => p.text).join("")).toMatch(/falling towards longer wire/);
  });
});
