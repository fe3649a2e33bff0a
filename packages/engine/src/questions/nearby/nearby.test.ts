import { describe, expect, it } from "vitest";
import type { Answer, Refusal, ScalarValue, Value } from "../../answer/answer";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { workPoint } from "../../chain/workPoint";
import { add, type Complex, divide, magnitude, multiply, reciprocal, subtract } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { exactly } from "../../quantity/quantity";
import type { Station, Surrounding } from "../../station/station";
import { antennaOf, copper, levelDipole, linePart, pathOf, place, plainStation } from "../../testing/plainStation";
import { workStation } from "../common/worked";
import { studyResonance } from "./resonance";
import { nearby } from "./run";
import { type Thing, thingsNearBy } from "./things";
import { withEnd, withGap, withMoved, withoutThings } from "./variants";

const q = exactly;
const frequency = 7.1e6;
const wave = speedOfLight / frequency;

/** A level wire south of the antenna, along it, in free space. */
const wireAt = (south: number, length = 21, height = 12): Surrounding => ({
  kind: "conductor",
  name: "fence",
  points: [place(-length / 2, -south, height), place(length / 2, -south, height)],
  wire: copper(2e-3),
});
const alone = (more: Partial<Station> = {}): Station => plainStation({ ground: { kind: "free space" }, ...more });
const beside = (south: number, more: Partial<Station> = {}): Station =>
  alone({
    surroundings: [wireAt(south)],
    wanted: { elevation: q(0), direction: 0, swrBelow: null, mayChange: [] },
    ...more,
  });

/** A second dipole as long, `south` metres away, at an idle side of a switch. */
const withSecond = (south: number): Station =>
  alone({
    antennas: [
      antennaOf(levelDipole(20.1, 12)),
      { ...antennaOf(levelDipole(20.1, 12), "spare"), at: place(0, -south, 0) },
    ],
    path: {
      parts: [],
      end: {
        kind: "switch",
        name: "relay",
        idle: "open",
        now: "main",
        loss: q(0),
        isolation: null,
        positions: { main: pathOf([]), other: pathOf([linePart("spare line", 7)], "spare") },
      },
    },
  });

function finish<T>(run: Generator<unknown, T>): T {
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value;
}

function ask(station: Station): Answer | Refusal {
  return finish(nearby.run(station, {}, { program: "test", catalogue: "test", fileHash: "" }));
}

function answer(station: Station): Answer {
  const made = ask(station);
  if ("refused" in made) throw new Error(made.refused.why);
  return made;
}

const number = (value: Value | undefined): number => (value as ScalarValue).value!;

function workedOf(station: Station) {
  const made = finish(workStation(station, {}, {}, () => ({})));
  if ("refused" in made) throw new Error(made.refused);
  return made;
}

const feedOf = (station: Station): Complex => {
  const solver = createAntennaSolver();
  const mesh = { refinement: 1, meshFrequency: frequency };
  const held = { ...solver, solve: (s: Station, f: number) => solver.solve(s, f, 0, mesh) };
  const point = workPoint(station, station.bands[0]!, frequency, held, { tuner: "through" });
  if ("refused" in point) throw new Error(point.refused.why);
  return point.joints.find((j) => j.name.startsWith("feed point"))!.impedance;
};

const thing = (station: Station): Thing => thingsNearBy(workedOf(station)).things[0]!;

describe("what is near by", () => {
  it("is the conductors and the antennas that do not transmit, with the distance between nearest wires", () => {
    const both = { ...withSecond(9), surroundings: [wireAt(4)] };
    const { things } = thingsNearBy(workedOf(both));
    expect(things.map((t) => [t.name, t.kind])).toEqual([
      ["fence", "conductor"],
      ["spare", "antenna"],
    ]);
    // Level wires side by side: the distance is that of the file.
    expect(things[0]!.distance).toBeCloseTo(4, 9);
    expect(things[1]!.distance).toBeCloseTo(9, 9);
  });

  it("goes with its branch of the path, and moves with its line", () => {
    const station = withSecond(9);
    const spare = thing(station);
    const without = withoutThings(station, [spare]);
    expect(without.antennas.map((a) => a.name)).toEqual(["antenna"]);
    expect(Object.keys(without.path.end.kind === "switch" ? without.path.end.positions : {})).toEqual(["main"]);
    const moved = withMoved(station, spare, [0, -3]);
    expect(thing(moved).distance).toBeCloseTo(12, 9);
  });
});

describe("ends and gaps", () => {
  // Two-port theory: Z = Z11 - Z12²/(Z22 + Zend), Zend 0 shorted, without end open.
  it("leave the feed point as two-port theory has it", () => {
    const station = withSecond(5);
    const solver = createAntennaSolver();
    const solved = solver.solve(station, frequency, 0, { refinement: 1, meshFrequency: frequency });
    if ("refused" in solved) throw new Error(solved.refused.why);
    const y = solved.admittance;
    const shorted = reciprocal(y[0]![0]!);
    const open = reciprocal(subtract(y[0]![0]!, divide(multiply(y[0]![1]!, y[1]![0]!), y[1]![1]!)));
    const spare = thing(station);
    expect(magnitude(subtract(feedOf(withEnd(station, spare, "shorted")), shorted))).toBeLessThan(1e-3);
    expect(magnitude(subtract(feedOf(withEnd(station, spare, "open")), open))).toBeLessThan(1e-3);
    expect(magnitude(add(shorted, { re: -open.re, im: -open.im }))).toBeGreaterThan(5);
  });

  it("change nothing where a gap is bridged by nothing, and much where it is open", () => {
    const station = beside(4);
    const fence = thing(station);
    const before = feedOf(station);
    const bridged = feedOf(withGap(station, fence, 10.5, { re: 0, im: 0 }));
    const open = feedOf(withGap(station, fence, 10.5, "open"));
    // The mesh's own goal: half an ohm or half a per cent.
    expect(magnitude(subtract(bridged, before))).toBeLessThan(0.5);
    expect(magnitude(subtract(open, before))).toBeGreaterThan(20);
    // Two halves of a quarter wave hardly carry current: the antenna is as if alone.
    expect(magnitude(subtract(open, feedOf(alone())))).toBeLessThan(5);
  });
});

describe("the resonance of a conductor", () => {
  it("comes where it is 0.47 to 0.49 of a wave long", () => {
    const worked = workedOf(beside(4));
    const found = finish(studyResonance(worked, thingsNearBy(worked).things[0]!, 10.5))!;
    const share = (21 * found.frequency!) / speedOfLight;
    // Thin half-wave dipole: first resonance at 0.47 to 0.48 of a wave (Balanis, from memory); 0.49 for a wire this thin.
    expect(share).toBeGreaterThan(0.47);
    expect(share).toBeLessThan(0.49);
    // 73 ohm for an infinitely thin one, 65 to 73 as thick as wires are.
    expect(found.resistance!).toBeGreaterThan(65);
    expect(found.resistance!).toBeLessThan(74);
  });
});

describe("the answer", () => {
  it("tells a resonant wire near by as trouble, and what an insulator in its middle brings", () => {
    const made = answer(beside(3));
    expect(made.verdict).toBe("trouble");
    expect(made.next).toMatch(/insulator in the middle of the fence/);
    expect(number(made.values.inducedShare)).toBeGreaterThan(50);
    const [now, spoiled, without] = ["swrSeen", "swrWithInsulator", "swrWithout"].map((n) => number(made.values[n]));
    expect(Math.abs(spoiled! - without!)).toBeLessThan(0.2 * Math.abs(now! - without!));
    // A resonant one still carries a good tenth of the current at one and a half waves: no distance tried is enough.
    expect(made.values.clearDistance).toMatchObject({ value: null });
    expect(made.mistakenIdea?.idea).toMatch(/some metres/);
    expect(made.tables.map((t) => t.name)).toEqual(
      expect.arrayContaining(["things", "distance", "remedies", "currents", "azimuthCutWithout"]),
    );
    // Heat in the thing is part of the heat in all wires.
    expect(number(made.values.heatInThing)).toBeLessThan(number(made.values.heatInWires));
  });

  it("leaves a short piece of metal far away in peace", () => {
    const made = answer(alone({ surroundings: [wireAt(wave, 2)] }));
    expect(made.verdict).toBe("good");
    expect(made.next).toMatch(/^Nothing/);
    expect(made.mistakenIdea?.idea).toMatch(/Any metal/);
    expect(number(made.values.radiatedPower)).toBeCloseTo(number(made.values.radiatedPowerWithout), 1);
  });

  it("carries the roof's decibels of the file into what leaves", () => {
    const roof: Surrounding = { kind: "roof", covering: "slate", loss: { value: 2, low: 1, high: 3, basis: "stated" } };
    const made = answer(alone({ surroundings: [wireAt(wave, 2), roof] }));
    const behind = made.values.radiatedPowerBehindRoof as ScalarValue;
    expect(behind.low! / number(made.values.radiatedPower)).toBeCloseTo(10 ** -0.3, 6);
    expect(behind.high! / number(made.values.radiatedPower)).toBeCloseTo(10 ** -0.1, 6);
  });

  it("is refused where nothing is near by, with a line to write", () => {
    const made = ask(alone());
    expect("refused" in made && made.refused.wouldMakeItAnswerable).toMatch(/conductor: gutter/);
    const roof: Surrounding = { kind: "roof", covering: "slate", loss: q(1) };
    const only = ask(alone({ surroundings: [roof] }));
    expect("refused" in only && only.refused.why).toMatch(/only a roof of slate/i);
  });
});
