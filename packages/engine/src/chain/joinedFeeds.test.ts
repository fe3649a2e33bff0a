import { describe, expect, it } from "vitest";
import { magnitude, subtract } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { stationNumbers } from "../questions/common/stationNumbers";
import type { Antenna } from "../station/antennaDescription";
import type { Part } from "../station/path";
import { antennaOf, levelDipole, linePart, pathOf, plainLine, plainStation } from "../testing/plainStation";
import { createAntennaSolver } from "./antennaSolver";
import { workPoint } from "./workPoint";

const worked = (antenna: Antenna, parts: readonly Part[]) => {
  const station = plainStation({ antennas: [antenna], path: pathOf([linePart("line 1", 28), ...parts]) });
  const point = workPoint(station, station.bands[0]!, 7.1e6, createAntennaSolver(), { tuner: "matched" });
  if ("refused" in point) throw new Error(point.refused.why);
  return point;
};

describe("lines joined to the feeds of an antenna", () => {
  const stub = { line: plainLine(), length: exactly(3), farEnd: "open" as const };
  const plain = antennaOf(levelDipole(20.1, 12));

  it("as a stub across the feed are a stub in the path there", () => {
    const inPath = worked(plain, [{ kind: "stub", name: "stub 1", note: "", state: "in line", ...stub }]);
    const inAntenna = worked({ ...plain, joined: [{ ...stub, from: "antenna" }] }, []);
    expect(magnitude(subtract(inPath.joints[0]!.impedance, inAntenna.joints[0]!.impedance))).toBeLessThan(1e-6);
    const [path, antenna] = [inPath, inAntenna].map((point) => stationNumbers(point).numbers);
    expect(antenna!.radiatedPower! / path!.radiatedPower!).toBeCloseTo(1, 4);
    // The stub's heat now counts to the antenna: its gain refers to what goes into both.
    expect(antenna!.maximumGain).toBeLessThan(path!.maximumGain!);
    expect(antenna!.stationGain).toBeCloseTo(path!.stationGain!, 4);
    expect(Math.abs(antenna!.powerBalanceResidue!)).toBeLessThan(1e-3);
  });
});
