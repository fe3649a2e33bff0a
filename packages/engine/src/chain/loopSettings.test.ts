import { describe, expect, it } from "vitest";
import { exactly } from "../quantity/quantity";
import type { Antenna } from "../station/antennaDescription";
import { antennaOf, copper, pathOf, place, plainStation } from "../testing/plainStation";
import { createAntennaSolver } from "./antennaSolver";
import { workPoint } from "./workPoint";

const q = exactly;

const loop: Antenna = {
  ...antennaOf(
    {
      kind: "small loop",
      round: q(5),
      height: q(3),
      plane: q(0),
      wire: copper(22e-3),
      capacitor: { from: 10e-12, to: 300e-12, q: q(2000) },
      jointsResistance: null,
    },
    "loop",
  ),
  at: place(10, 0, 0),
};
const mast: Antenna = {
  ...antennaOf({ kind: "end-fed wire", points: [place(0, 0, 0.3), place(0, 0, 10)], wire: copper(25e-3) }, "mast"),
  against: "rod",
};
const rod = { name: "rod", form: "rod" as const, size: q(1.5), diameter: null, at: null, resistance: q(40) };

describe("settings of small loops", () => {
  // All current of the mast passes its earth: the ports of the two are one, and their impedances have no number.
  it("are found beside an antenna whose feed and earth carry one current", () => {
    const station = plainStation({ path: pathOf([], "loop"), antennas: [loop, mast], earths: [rod] });
    const point = workPoint(station, station.bands[0]!, 7.1e6, createAntennaSolver(), { tuner: "matched" });
    if ("refused" in point) throw new Error(point.refused.why);
    const { impedance } = point.joints.find((j) => j.name.startsWith("feed point"))!;
    expect(impedance.re).toBeCloseTo(50, 3);
    expect(impedance.im).toBeCloseTo(0, 3);
  });
});
