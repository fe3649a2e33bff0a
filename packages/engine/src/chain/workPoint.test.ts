import { describe, expect, it } from "vitest";
import { lineLoss } from "../lines/alongLine";
import { complex, magnitude, subtract } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import type { Path } from "../station/path";
import type { Station } from "../station/station";
import { antennaOf, levelDipole, linePart, pathOf, plainLine, plainStation } from "../testing/plainStation";
import { createAntennaSolver } from "./antennaSolver";
import { constantsOf } from "./edges";
import type { WorkedPoint } from "./workedPoint";
import { type PointOptions, workPoint } from "./workPoint";

const solver = createAntennaSolver();

function worked(station: Station, options: PointOptions = { tuner: "matched" }): WorkedPoint {
  const band = station.bands[0]!;
  const point = workPoint(station, band, band.frequency.value, solver, options);
  if ("refused" in point) throw new Error(point.refused.why);
  return point;
}

const joint = (point: WorkedPoint, name: string) => point.joints.find((j) => j.name === name)!;

describe("a station worked at one frequency", () => {
  it("loses in one line what the line alone loses into the antenna's impedance", () => {
    const point = worked(plainStation());
    const line = point.parts[0]!;
    const feed = joint(point, "feed point");
    if (line.edge.part?.kind !== "line") throw new Error("the first part is the line");
    const alone = lineLoss(constantsOf(line.edge.part, point.frequency), 28, feed.impedance);
    expect(line.loss).toBeCloseTo(alone.atLoad, 9);
    expect(point.powerFromTransmitter).toBe(100);
    expect(point.powerIntoAntenna + line.heat).toBeCloseTo(100, 9);
    expect(line.along.power[0]).toBeCloseTo(100, 9);
    expect(line.along.power[24]).toBeCloseTo(feed.power, 9);
  });

  it("reports a transmitter at the feed point as both joints", () => {
    const point = worked(plainStation({ path: pathOf([]) }));
    expect(point.joints.map((j) => j.name)).toEqual(["transmitter", "feed point"]);
    expect(point.powerIntoAntenna).toBeCloseTo(100, 9);
    expect(point.heatInPath).toBeCloseTo(0, 9);
  });

  it("turns the transmitter down as its curve says and scales everything with it", () => {
    const base = plainStation();
    const curve = [1.5, 2, 3].map((swr, i) => ({ swr, power: exactly([100, 70, 30][i]!) }));
    const point = worked({ ...base, transmitter: { ...base.transmitter, powerAtSwr: curve } });
    const swr = point.swrAtTransmitter;
    expect(swr).toBeGreaterThan(1.5);
    expect(swr).toBeLessThan(2);
    expect(point.powerFromTransmitter).toBeCloseTo(100 - (30 * (swr - 1.5)) / 0.5, 9);
    expect(joint(point, "transmitter").power).toBeCloseTo(point.powerFromTransmitter, 9);
  });

  it("puts a match without loss in a tuner's place and says what it has to match", () => {
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
    const parts = [linePart("line 1", 5), tuner, linePart("line 2", 28)];
    const matched = worked(plainStation({ path: pathOf(parts) }));
    const through = worked(plainStation({ path: pathOf(parts) }), { tuner: "through" });
    expect(joint(matched, "after line 1").impedance.re).toBeCloseTo(50, 6);
    expect(joint(matched, "after line 1").impedance.im).toBeCloseTo(0, 6);
    const seen = joint(through, "after tuner 1").impedance;
    expect(magnitude(subtract(matched.tuner!.impedance, seen))).toBeLessThan(1e-6);
    expect(matched.parts[1]!.heat).toBeCloseTo(0, 9);
    expect(matched.heatInPath).toBeCloseTo(matched.parts[0]!.heat + matched.parts[2]!.heat, 9);
  });
});

describe("a path that branches", () => {
  const two = [antennaOf(levelDipole(20.1, 12), "one"), { ...antennaOf(levelDipole(20.1, 30), "two") }];
  const branch = (length: number, feed: string): Path => pathOf([linePart(`arm ${feed}`, length)], feed);
  const tee = (first: number, second: number): Path => ({
    parts: [linePart("trunk", 10)],
    end: { kind: "tee", name: "box", branches: { a: branch(first, "one"), b: branch(second, "two") } },
  });

  it("adds up: power in is heat in every line and what both feeds take", () => {
    const point = worked(plainStation({ path: tee(7, 13), antennas: two }));
    const heat = point.parts.reduce((sum, p) => sum + p.heat, 0);
    expect(point.joints.map((j) => j.name)).toEqual(["transmitter", "after trunk", "feed point one", "feed point two"]);
    expect(heat + point.powerIntoAntenna).toBeCloseTo(100, 8);
    const feeds = joint(point, "feed point one").power + joint(point, "feed point two").power;
    expect(feeds).toBeCloseTo(point.powerIntoAntenna, 8);
  });

  it("gives both feeds of a symmetric pair the same current", () => {
    const free = { ground: { kind: "free space" as const } };
    const point = worked(plainStation({ ...free, path: tee(7, 7), antennas: two }));
    const difference = subtract(joint(point, "feed point one").current, joint(point, "feed point two").current);
    expect(magnitude(difference)).toBeLessThan(1e-6 * magnitude(joint(point, "feed point one").current));
  });

  it("leaves the idle side of a switch as the file says: its antenna still couples", () => {
    const path = (idle: "open" | "shorted"): Path => ({
      parts: [],
      end: {
        kind: "switch",
        name: "relay",
        idle,
        now: "a",
        loss: exactly(0),
        isolation: null,
        positions: { a: pathOf([], "one"), b: pathOf([], "two") },
      },
    });
    const near = [antennaOf(levelDipole(20.1, 12), "one"), antennaOf(levelDipole(20.1, 14), "two")];
    const open = worked(plainStation({ path: path("open"), antennas: near }));
    const shorted = worked(plainStation({ path: path("shorted"), antennas: near }));
    const alone = worked(plainStation({ path: pathOf([], "one"), antennas: [near[0]!] }));
    const z = (p: WorkedPoint) => joint(p, "feed point").impedance;
    expect(magnitude(subtract(z(shorted), z(alone)))).toBeGreaterThan(5);
    expect(magnitude(subtract(z(open), z(shorted)))).toBeGreaterThan(5);
  });
});

describe("the network against closed forms", () => {
  it("transforms through a quarter wave of another impedance as Z0²/Z", () => {
    const station = plainStation();
    const lossless = {
      ...plainLine(75),
      model: {
        ...plainLine(75).model,
        kind: "data sheet" as const,
        side: "coaxial" as const,
        impedance: exactly(75),
        velocityFactor: exactly(1),
        loss: [{ frequency: 7e6, decibelsPerMetre: exactly(1e-9) }],
      },
    };
    const quarter = 299792458 / 7.1e6 / 4;
    const point = worked({ ...station, path: pathOf([linePart("section", quarter, lossless)]) });
    const z = joint(point, "feed point").impedance;
    const expected = 75 ** 2 / (z.re ** 2 + z.im ** 2);
    const seen = joint(point, "transmitter").impedance;
    expect(magnitude(subtract(seen, complex(expected * z.re, -expected * z.im)))).toBeLessThan(0.02);
  });
});
