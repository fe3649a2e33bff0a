import { describe, expect, it } from "vitest";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { exactly } from "../../quantity/quantity";
import { antennaOf, levelDipole, pathOf, plainStation } from "../../testing/plainStation";
import { compareReadings } from "./readings";

function compared(swr: number, directivity: number) {
  const base = plainStation();
  const meter = { kind: "meter" as const, name: "meter", note: "", state: "in line" as const };
  const station = plainStation({
    transmitter: { ...base.transmitter, designedFor: exactly(75) },
    path: pathOf([{ ...meter, directivity: exactly(directivity) }]),
    antennas: [antennaOf(levelDipole(20.35, 12))],
    readings: [
      { at: "meter", frequency: exactly(7.1e6), swr: exactly(swr), file: null, taken: null, farEnd: "antenna" },
    ],
  });
  const steps = compareReadings(station, station.bands[0]!, createAntennaSolver());
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value.readings[0]!;
}

describe("readings", () => {
  it("allow a meter to show less than its worst leak: the leak may be smaller than stated", () => {
    // The predicted reflection is smaller than the leak of 15 dB: both may cancel, the meter may read 1.0.
    const reading = compared(1, 15);
    expect(reading.predicted).toBeGreaterThan(1.1);
    expect(reading.predicted).toBeLessThan(1.4);
    expect(reading.meterMayShow!.low).toBe(1);
    expect(reading.agrees).toBe(true);
  });

  it("do not agree beyond what the leak explains", () => {
    expect(compared(3, 15).agrees).toBe(false);
    expect(compared(1, 40).agrees).toBe(false);
  });
});
