import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { lineConstants } from "../../lines/lineConstants";
import { lineTwoPort } from "../../networks/lineTwoPort";
import { cascade, seriesImpedance, shuntAdmittance, type TwoPort } from "../../networks/twoPort";
import { decibelsOf, factorOf } from "../../noise/systemNoise";
import { add, type Complex, complex, conjugate, divide, magnitude, multiply } from "../../numerics/complex";
import { between, exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { antennaOf, levelDipole, linePart, pathOf, plainLine, plainStation } from "../../testing/plainStation";
import { listen } from "./run";

function ask(station: Station, parameters = {}): Answer | Refusal {
  const steps = listen.run(station, parameters, { program: "", catalogue: "", fileHash: "" });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(station: Station, parameters = {}): Answer {
  const answer = ask(station, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value ${name}`);
  return found.value;
};

const free = (changes: Partial<Station> = {}): Station => plainStation({ ground: { kind: "free space" }, ...changes });
const withLine = (length: number, changes: Partial<Station> = {}): Station =>
  free({ path: pathOf([linePart("line 1", length)]), ...changes });
/** A half-wave for 145 MHz, on a line of that band. */
const atTwoMetres = (length: number): Station =>
  withLine(length, {
    bands: [{ name: "2 m", frequency: exactly(145e6), sweep: { from: 144e6, to: 146e6 }, set: {} }],
    antennas: [antennaOf({ ...levelDipole(0.97, 10) })],
  });

describe("listen", () => {
  it("says on 7 MHz that a lossy line costs nothing, and on 145 MHz what it costs", () => {
    const low = answered(withLine(60), { noisePlace: "residential" });
    expect(value(low, "pathLoss")).toBeGreaterThan(1.1);
    expect(value(low, "snrLossByLine")).toBeLessThan(0.02);
    expect(low.verdict).toBe("good");
    expect(low.headline).toContain("nothing you can hear");
    const high = answered(atTwoMetres(40), { noisePlace: "quiet rural" });
    expect(value(high, "snrLossByLine")).toBeGreaterThan(1.5);
    expect(high.verdict).toBe("trouble");
    expect(value(high, "wonByPreamplifierAtAntenna")).toBeGreaterThan(value(high, "wonByPreamplifierInShack"));
    expect(high.next).toContain("A preamplifier at the antenna");
  });

  it("adds up by the equation it states", () => {
    const answer = answered(withLine(60), { noisePlace: "rural", receiverNoiseFigure: 15 });
    const [fa, lc, lt, fr] = ["externalNoise", "antennaLoss", "pathLoss", "receiverNoiseFigure"].map((name) =>
      factorOf(value(answer, name)),
    ) as [number, number, number, number];
    // ITU-R P.372 with everything at T0, as the answer assumes for this station.
    expect(value(answer, "externalNoise")).toBeCloseTo(67.2 - 27.7 * Math.log10(answer.frequency / 1e6), 10);
    const total = fa - 1 + lc * lt * fr;
    expect(value(answer, "systemNoise")).toBeCloseTo(decibelsOf(total), 8);
    expect(value(answer, "snrLossByLine")).toBeCloseTo(decibelsOf(total / (fa - 1 + lc * fr)), 10);
    expect(value(answer, "noiseRise")).toBeCloseTo(decibelsOf(total / (lc * lt * fr)), 8);
    expect(value(answer, "antennaLoss")).toBeCloseTo(
      decibelsOf(value(answer, "powerIntoAntenna") / value(answer, "radiatedPower")),
      8,
    );
  });

  it("names the frequency from which the same line costs half a decibel", () => {
    const answer = answered(withLine(60), { noisePlace: "rural" });
    const table = answer.tables.find(({ name }) => name === "byFrequency")!;
    const from = value(answer, "lineMattersFrom");
    const cost = table.columns.snrLossByLine!.values as number[];
    table.columns.frequency!.values.forEach((f, i) => {
      if (f! > from * 1.001) expect(cost[i]).toBeGreaterThanOrEqual(0.499);
    });
    expect(cost[table.columns.frequency!.values.findLastIndex((f) => f! < from)]).toBeLessThan(0.5);
    const short = answered(withLine(1), { noisePlace: "city" });
    expect(short.values.lineMattersFrom).toMatchObject({ value: null, reason: expect.stringContaining("432") });
  });

  it("takes place, noise figure and temperatures from the file", () => {
    const answer = answered(
      withLine(60, {
        site: { altitude: null, airTemperature: exactly(310), noise: "quiet rural" },
        transmitter: { ...plainStation().transmitter, noiseFigure: between(8, 12) },
      }),
    );
    expect(answer.parameters).toMatchObject({ noisePlace: "quiet rural", receiverNoiseFigure: 10 });
    const assumed = answer.assumptions.map(({ place }) => place);
    for (const place of ["site.noise", "transmitter.noiseFigure", "site.airTemperature"])
      expect(assumed).not.toContain(place);
    expect(answer.uncertainties.map(({ place }) => place)).toContain("transmitter.noiseFigure");
  });

  it("lists what it takes for granted, and lets it reach the answer as a range", () => {
    const answer = answered(withLine(60));
    const assumed = answer.assumptions.map(({ place }) => place);
    expect(assumed).toEqual(expect.arrayContaining(["site.noise", "transmitter.noiseFigure", "site.airTemperature"]));
    const { low, high } = answer.values.noiseOnMeter as { low: number; high: number };
    const places = answer.tables.find(({ name }) => name === "byKindOfPlace")!.columns.noiseOnMeter!.values as number[];
    expect(low).toBeLessThanOrEqual(Math.min(...places));
    expect(high).toBeGreaterThanOrEqual(Math.max(...places));
    expect(answer.uncertainties[0]?.says).toBe("quiet rural to city");
  });

  it("holds the noise on a meter against that of the place", () => {
    const site = { altitude: null, airTemperature: null, noise: "residential" } as const;
    const expected = value(answered(withLine(30, { site })), "noiseOnMeter");
    const fits = answered(withLine(30, { site }), { meterReading: Math.round(expected) });
    expect(fits.verdictPhrases.map(({ text }) => text).join("")).toContain("fits such a place");
    const loud = answered(withLine(30, { site }), { meterReading: expected + 4 });
    expect(value(loud, "noiseAboveExpected")).toBeCloseTo(24, 9);
    expect(loud.verdictPhrases.map(({ text }) => text).join("")).toContain("24 dB above that");
    expect(loud.next).toContain("on a battery");
  });

  it("has a row for every band", () => {
    const bands = [7.1e6, 14.2e6].map((f) => ({
      name: `${f / 1e6}`,
      frequency: exactly(f),
      sweep: { from: f, to: f * 1.01 },
      set: {},
    }));
    const answer = answered(withLine(30, { bands }), { band: "14.2" });
    const table = answer.tables.find(({ name }) => name === "byBand")!;
    expect(table.labels).toEqual(["7.1", "14.2"]);
    expect(table.columns.snrLossByLine!.values[1]).toBeCloseTo(value(answer, "snrLossByLine"), 3);
  });

  it("refuses frequencies without a formula", () => {
    const low = free({
      bands: [{ name: "", frequency: exactly(137e3), sweep: { from: 136e3, to: 138e3 }, set: {} }],
    });
    expect(ask(low)).toMatchObject({ refused: { why: expect.stringContaining("0.3 MHz") } });
  });
});

const input = ({ a, b, c, d }: TwoPort, load: Complex): Complex =>
  divide(add(multiply(a, load), b), add(multiply(c, load), d));
/** Power into the load over power in. */
const gain = (twoPort: TwoPort, load: Complex): number =>
  load.re / (magnitude(add(multiply(twoPort.c, load), twoPort.d)) ** 2 * input(twoPort, load).re);

describe("what is taken from the received is what is taken from the sent", () => {
  it("for a mismatched path of a line, a coil and a shunt, heard with a conjugate match", () => {
    const line = lineTwoPort(lineConstants(plainLine(75).model, 28e6), 33);
    const pieces = [seriesImpedance(complex(3, 80)), line, shuntAdmittance(complex(1e-3, -4e-3))];
    const [forward, backward] = [cascade(...pieces), cascade(...[...pieces].reverse())];
    const antenna = complex(31, -140);
    const sent = gain(forward, antenna);
    // The antenna of 1 V drives the path from its far end; the receiver is the conjugate of what it sees there.
    const seen = input(forward, antenna);
    const receiver = conjugate(seen);
    const into = input(backward, receiver);
    const current = 1 / magnitude(add(antenna, into)) ** 2;
    const received = current * into.re * gain(backward, receiver);
    const available = 1 / (4 * antenna.re);
    expect(received / available).toBeCloseTo(sent, 12);
  });
});
