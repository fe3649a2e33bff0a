import { describe, expect, it } from "vitest";
import { powerAccount } from "../fields/powerAccount";
import { add, magnitude, subtract } from "../numerics/complex";
import { exactly, type Spectrum } from "../quantity/quantity";
import type { Shape } from "../station/antennaDescription";
import type { ChokePart, Part } from "../station/path";
import type { Station } from "../station/station";
import { antennaOf, copper, linePart, pathOf, place, plainStation } from "../testing/plainStation";
import { driveAntenna, elementCurrent } from "../wires/driveAntenna";
import { createAntennaSolver } from "./antennaSolver";
import { allPortVoltages } from "./closePorts";
import type { WorkedPoint } from "./workedPoint";
import { workPoint } from "./workPoint";

const solver = createAntennaSolver();
const q = exactly;
const constant = (value: number): Spectrum => ({ kind: "constant", quantity: q(value) });

const choke = (resistance: number, reactance = 0, name = "choke"): ChokePart => ({
  kind: "choke",
  name,
  note: "",
  state: "in line",
  resistance: constant(resistance),
  reactance: reactance === 0 ? null : constant(reactance),
  heatLimit: null,
  length: null,
});

/** From 3 m north of the foot up to the feed at 12 m: in the plane of symmetry of a dipole that lies east and west. */
const routed = { ...linePart("line 1", 28), route: [place(0, 9, 1), place(0, 0, 1), place(0, 0, 12)] };
const station = (parts: readonly Part[], more: Partial<Station> = {}): Station =>
  plainStation({ path: pathOf(parts), ...more });

function worked(asked: Station): WorkedPoint {
  const point = workPoint(asked, asked.bands[0]!, 7.1e6, solver, { tuner: "matched" });
  if ("refused" in point) throw new Error(point.refused.why);
  return point;
}

const driven = ({ antenna, portVoltages }: WorkedPoint) =>
  driveAntenna(antenna.solution!, allPortVoltages(antenna.portVoltages, portVoltages));

/** Largest current on the outside over that into the feed. */
function outsideShare(point: WorkedPoint): number {
  const antenna = driven(point);
  const { mesh } = antenna.solution.model;
  const currents = point.antenna.build.outside.flatMap(({ wires }) =>
    wires.flatMap((w) =>
      Array.from({ length: mesh.firstElement[w + 1]! - mesh.firstElement[w]! }, (_, i) =>
        magnitude(elementCurrent(antenna, mesh.firstElement[w]! + i, 0)),
      ),
    ),
  );
  return Math.max(...currents) / magnitude(antenna.portCurrents[0]!);
}

const offCentre: Shape = {
  kind: "off-centre dipole",
  legs: [q(13.4), q(6.7)],
  height: q(12),
  endsHeight: null,
  sag: q(0),
  direction: q(Math.PI / 2),
  wire: copper(2e-3),
};

describe("the outside of the line", () => {
  it("carries nothing in the plane of symmetry when nothing drives it at the feed", () => {
    // Without a choke the line hangs on one side of the feed and is driven there: symmetry alone does not help.
    expect(outsideShare(worked(station([routed, choke(1e15)])))).toBeLessThan(1e-6);
    expect(outsideShare(worked(station([routed])))).toBeGreaterThan(0.01);
  });

  it("carries current beside an off-centre antenna even when it is opened at the feed", () => {
    const share = outsideShare(worked(station([routed, choke(1e15)], { antennas: [antennaOf(offCentre)] })));
    expect(share).toBeGreaterThan(0.01);
  });

  it("with a choke of no impedance is the line without one", () => {
    const open = worked(station([routed]));
    const shorted = worked(station([routed, choke(0)]));
    const feed = (point: WorkedPoint) => point.joints.find((j) => j.name === "feed point")!.impedance;
    expect(magnitude(subtract(feed(open), feed(shorted)))).toBeLessThan(0.5);
  });

  it("adds up with chokes on both ends and an earth at the transmitter", () => {
    const earths = [
      { name: "rod", form: "rod" as const, size: q(1.5), diameter: null, at: place(0, 9, 0), resistance: q(60) },
    ];
    const earthed = station([choke(500, 800, "shack choke"), routed, choke(900, 300, "feed choke")], {
      earths,
      transmitter: { ...plainStation().transmitter, earthed: "rod" },
      antennas: [antennaOf(offCentre)],
    });
    const point = worked(earthed);
    const [outside] = point.antenna.build.outside;
    expect(outside!.chokes.map((c) => c.names)).toEqual([["shack choke"], ["feed choke"]]);
    expect(outside!.earthed).toBe("rod");
    const antenna = driven(point);
    const account = powerAccount(antenna);
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
    // Each choke takes its resistance times the square of the current through its port.
    [500, 900].forEach((resistance, i) => {
      const current = magnitude(antenna.portCurrents[1 + i]!);
      expect(antenna.closingHeat[i]! / (resistance * current ** 2)).toBeCloseTo(1, 9);
    });
  });

  it("changes with a choke or an earth without another solution of the wires", () => {
    const fresh = createAntennaSolver();
    const at = (ohms: number) => {
      const asked = station([routed, choke(ohms)]);
      return workPoint(asked, asked.bands[0]!, 7.1e6, fresh, { tuner: "matched" });
    };
    at(1000);
    at(2000);
    expect(fresh.solves()).toBe(1);
  });

  it("is the return of an end-fed wire that works against it", () => {
    const endFed: Shape = { kind: "end-fed wire", points: [place(0, 0, 6), place(19, 0, 9)], wire: copper(1e-3) };
    const against = { ...antennaOf(endFed), against: "outside of the line" as const };
    const line = { ...linePart("line 1", 12), route: [place(0, -6, 1), place(0, 0, 1), place(0, 0, 6)] };
    const point = worked(station([line], { antennas: [against] }));
    // All that flows into the wire has to come from the outside of the line, and the feed counts towards that.
    const antenna = driven(point);
    const { mesh } = antenna.solution.model;
    const last = point.antenna.build.outside[0]!.wires.at(-1)!;
    const returning = elementCurrent(antenna, mesh.firstElement[last + 1]! - 1, 1);
    expect(magnitude(add(returning, antenna.portCurrents[0]!))).toBeLessThan(1e-9);
  });

  it("cannot be the return behind a part that parts it from the feed", () => {
    const endFed: Shape = { kind: "end-fed wire", points: [place(0, 0, 6), place(19, 0, 9)], wire: copper(1e-3) };
    const line = { ...linePart("line 1", 12), route: [place(0, -6, 1), place(0, 0, 1), place(0, 0, 6)] };
    const isolated: Part = {
      kind: "transformer",
      name: "transformer",
      note: "",
      state: "in line",
      transmitterSide: q(50),
      antennaSide: q(450),
      sides: "isolated",
      loss: q(0.1),
      windingInductance: null,
      leakageInductance: null,
      capacitor: null,
      heatLimit: null,
    };
    const against = { ...antennaOf(endFed), against: "outside of the line" as const };
    const asked = station([line, isolated], { antennas: [against] });
    const point = workPoint(asked, asked.bands[0]!, 7.1e6, solver, { tuner: "matched" });
    expect("refused" in point && point.refused.why).toContain("nothing is left to work against");
  });

  it("is told where it is left out", () => {
    const unrouted = worked(station([linePart("line 1", 28)]));
    expect(unrouted.antenna.build.outside).toHaveLength(0);
    const elsewhere = { ...routed, route: [place(0, 9, 1), place(4, 0, 11)] };
    expect(worked(station([elsewhere])).antenna.build.notComputed[0]).toContain("4.1 m from the feed point");
    const buried = { ...routed, route: [place(0, 9, -0.3), place(0, 0, -0.3), place(0, 0, 12)] };
    expect(worked(station([buried])).antenna.build.notComputed[0]).toContain("runs in the soil");
  });
});
