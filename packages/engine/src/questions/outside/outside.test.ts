import { describe, expect, it } from "vitest";
import type { Answer, Refusal, ScalarValue } from "../../answer/answer";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { closePorts } from "../../chain/closePorts";
import { complex, divide, magnitude } from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import type { Shape } from "../../station/antennaDescription";
import type { Part } from "../../station/path";
import type { Station } from "../../station/station";
import { antennaOf, copper, linePart, pathOf, place, plainLine, plainStation } from "../../testing/plainStation";
import { chokeOf, withImpedances } from "./chokes";
import { compareOutside, withOnlyChokeAt } from "./comparison";
import { judgedShare } from "./facts";
import { lengthened } from "./lengthStudy";
import { probedStation, routeBetween, routeLength } from "./probedStation";
import { outside } from "./run";
import { currentAt, isOutside, type OutsideState, workOutside } from "./state";

const q = exactly;
const route = [place(0, 9, 1), place(0, 0, 1), place(0, 0, 12)];
const routed = { ...linePart("line 1", 28), route };
const offCentre: Shape = {
  kind: "off-centre dipole",
  legs: [q(13.4), q(6.7)],
  height: q(12),
  endsHeight: null,
  sag: q(0),
  direction: q(Math.PI / 2),
  wire: copper(2e-3),
};
const station = (parts: readonly Part[], more: Partial<Station> = {}): Station =>
  plainStation({ path: pathOf(parts), ...more });
const lopsided = (parts: readonly Part[], more: Partial<Station> = {}): Station =>
  station(parts, { antennas: [antennaOf(offCentre)], ...more });

function ask(asked: Station): Answer | Refusal {
  const run = outside.run(asked, {}, { program: "test", catalogue: "test", fileHash: "" });
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value;
}

function answered(asked: Station): Answer {
  const answer = ask(asked);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const numberIn = (answer: Answer, name: string): number => (answer.values[name] as ScalarValue).value!;

const solver = createAntennaSolver();
const asking = (asked: Station) => ({ band: asked.bands[0]!, frequency: 7.1e6, solver });
function worked(asked: Station): OutsideState {
  const state = workOutside(asked, asking(asked));
  if (!isOutside(state)) throw new Error(state.refused.why);
  return state;
}

describe("the outside of the line, asked about", () => {
  it("is quiet under a level dipole in whose plane of symmetry it hangs, choked at the feed", () => {
    const answer = answered(station([routed, chokeOf("choke", complex(1e9))]));
    expect(numberIn(answer, "outsideShare")).toBeLessThan(1e-4);
    expect(answer.verdict).toBe("good");
    expect(answer.headline).toContain("no current");
    expect(answer.next).toMatch(/^Leave it/);
  });

  it("carries current beside an off-centre antenna, adds up, and tells what to do", () => {
    const answer = answered(lopsided([routed]));
    expect(answer.verdict).toBe("trouble");
    expect(answer.next).toMatch(/choke/);
    expect(Math.abs(numberIn(answer, "powerBalanceResidue"))).toBeLessThan(1e-3);
    const into = numberIn(answer, "powerIntoAntenna");
    const out = ["heatInWires", "heatInSoil", "radiatedPower"].reduce((sum, name) => sum + numberIn(answer, name), 0);
    expect(out / into).toBeCloseTo(1, 2);
    // The cases beside it answer for the same power from the transmitter.
    expect(numberIn(answer, "outsideShareWithPerfectChoke")).toBeLessThan(numberIn(answer, "outsideShare"));
    expect(answer.tables.map((t) => t.name)).toEqual(
      expect.arrayContaining(["outsideCurrent", "chokeReactance", "chokePlace", "outsideLength"]),
    );
    // A floating end carries nothing, and stands at volts.
    expect(answer.tables.find((t) => t.name === "outsideCurrent")!.columns.current!.values[0]).toBeLessThan(1e-9);
    expect(numberIn(answer, "voltageAtTransmitter")).toBeGreaterThan(1);
  });

  it("holds a choke against its limit, with duty and time on the air", () => {
    const hot = { ...chokeOf("choke", complex(300)), heatLimit: q(0.01) };
    const transmitter = { ...plainStation().transmitter, onAir: { on: 30, of: 60 } };
    const answer = answered(lopsided([routed, hot], { transmitter, ground: { kind: "perfect" } }));
    expect(numberIn(answer, "chokeHeatOnAir")).toBeCloseTo(0.4 * 0.5 * numberIn(answer, "heatInChokes"), 9);
    expect(answer.verdict).toBe("trouble");
    expect(answer.next).toContain("overheats");
  });

  it("keeps the return of a wire that works against it", () => {
    const endFed: Shape = { kind: "end-fed wire", points: [place(0, 0, 6), place(19, 0, 9)], wire: copper(1e-3) };
    const line = { ...linePart("line 1", 12), route: [place(0, -6, 1), place(0, 0, 1), place(0, 0, 6)] };
    const answer = answered(
      station([line], {
        antennas: [{ ...antennaOf(endFed), against: "outside of the line" }],
        ground: { kind: "perfect" },
      }),
    );
    expect(answer.headline).toContain("half of this antenna");
    expect(answer.values.outsideShareWithPerfectChoke).toBeUndefined();
    expect(answer.mistakenIdea!.idea).toContain("counterpoise");
    expect(answer.next).toMatch(/not at the feed point|counterpoise of its own|no choke at the feed point/);
  });
});

describe("what is studied", () => {
  const loud = lopsided([routed]);

  it("cuts a line into pieces without changing it", () => {
    const whole = worked(loud);
    const probed = probedStation(loud, whole.run);
    const cut = worked(probed.station);
    expect(probed.probes).toHaveLength(4);
    expect(cut.run.length).toBeCloseTo(whole.run.length, 9);
    expect(Math.abs(cut.point.swrAtTransmitter / whole.point.swrAtTransmitter - 1)).toBeLessThan(5e-3);
    expect(Math.abs(cut.largest.current / whole.largest.current - 1)).toBeLessThan(0.02);
    expect(routeLength(routeBetween(route, 4, 13))).toBeCloseTo(9, 9);
    expect(routeBetween(route, 4, 13)).toHaveLength(3);
  });

  it("finds the ohms above which the line is quiet", () => {
    const hung = station([routed], { ground: { kind: "perfect" } });
    const answer = answered(hung);
    const ohms = numberIn(answer, "resistanceNeededAtBestPlace");
    const whole = worked(hung);
    const compared = compareOutside(hung, asking(hung), {
      run: whole.run,
      aim: { elevation: 30, azimuth: 0 },
      againstLine: false,
    });
    const spot = compared.places.find((p) => Math.abs(p.distance - numberIn(answer, "bestChokePlace")) < 1e-6)!;
    const share = (r: number) => judgedShare(worked(withOnlyChokeAt(compared.probed, spot, complex(r))), false);
    expect(share(ohms)).toBeLessThanOrEqual(0.05);
    expect(share(0.9 * ohms)).toBeGreaterThan(0.05);
    expect(share(3 * ohms)).toBeLessThan(0.05);
  });

  it("solves the wires once for all chokes", () => {
    const fresh = createAntennaSolver();
    const asked = { band: loud.bands[0]!, frequency: 7.1e6, solver: fresh };
    const { station: many } = probedStation(loud, worked(loud).run);
    for (const ohms of [0, 10, 1000])
      workOutside(
        withImpedances(many, () => complex(ohms, ohms)),
        asked,
      );
    expect(fresh.solves()).toBe(1);
  });

  it("makes the outside longer and shorter, and moves the earth along", () => {
    const earths = [
      { name: "rod", form: "rod" as const, size: q(1.5), diameter: null, at: place(0, 9, 0), resistance: q(60) },
    ];
    const earthed = lopsided([routed], { earths, transmitter: { ...plainStation().transmitter, earthed: "rod" } });
    const { run } = worked(earthed);
    for (const extra of [-3, 5]) {
      const changed = lengthened(earthed, run, route, extra);
      expect(worked(changed).run.length).toBeCloseTo(run.length + extra, 9);
      expect(changed.earths[0]!.at![1].value).toBeCloseTo(9 + extra, 9);
    }
    expect(lengthened(earthed, run, route, 0)).toBe(earthed);
  });

  it("tells noise by reciprocity: volts at the open feed for one volt near the house", () => {
    const state = worked(loud);
    const { probes, station: probed } = probedStation(loud, state.run);
    const sending = worked(probed);
    const { solution, build } = sending.point.antenna;
    const house = sending.run.chokes.find((c) => c.names.includes(probes[0]!))!;
    // Receiving: all other gaps are shorted, one volt stands in the gap near the house, the feed is open.
    const others = build.closings.map((_, i) => i).filter((i) => i !== house.gap);
    const order = [0, 1 + house.gap, ...others.map((i) => 1 + i)];
    const admittance = order.map((row) => order.map((column) => solution!.fineAdmittance[row]![column]!));
    const pair = closePorts(
      admittance,
      others.map(() => complex(0)),
    )!.admittance;
    const openFeed = magnitude(divide(pair[0]![1]!, pair[0]![0]!));
    expect(openFeed / (currentAt(sending, house.distance) / sending.feedCurrent)).toBeCloseTo(1, 6);
  });

  it("gives the voltage across an earth as its current times its ohms", () => {
    const earths = [
      { name: "rod", form: "rod" as const, size: q(1.5), diameter: null, at: place(0, 9, 0), resistance: q(60) },
    ];
    const answer = answered(
      lopsided([routed], {
        earths,
        transmitter: { ...plainStation().transmitter, earthed: "rod" },
        ground: { kind: "perfect" },
      }),
    );
    expect(numberIn(answer, "voltageAtTransmitter")).toBeCloseTo(
      60 * numberIn(answer, "currentIntoTransmitterEarth"),
      9,
    );
    expect(answer.values.heatInEarths).toBeDefined();
  });
});

describe("what cannot be answered", () => {
  const why = (asked: Station) => {
    const answer = ask(asked);
    return "refused" in answer ? `${answer.refused.why} ${answer.refused.wouldMakeItAnswerable}` : answer.headline;
  };

  it("says that a route is needed, and how one is written", () => {
    expect(why(station([linePart("line 1", 28)]))).toMatch(/No `route` says where line 1 runs.*route: \[\[9 m north/);
  });

  it("tells lines that have no outside apart", () => {
    const line = plainLine(450);
    const model = { ...line.model, side: "balanced" as const } as typeof line.model;
    const pair = { ...linePart("pair", 20), line: { ...line, model } };
    expect(why(station([pair]))).toContain("a pair of wires has no outside");
    expect(why(station([routed, pair]))).toContain('where the pair "pair" begins');
    expect(why(station([]))).toContain("The path has no line");
  });
});
