import { describe, expect, it } from "vitest";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { exactly, type Quantity, within } from "../../quantity/quantity";
import type { Part } from "../../station/path";
import type { Reading } from "../../station/station";
import { antennaOf, levelDipole, pathOf, plainStation } from "../../testing/plainStation";
import { compareReadings } from "./readings";

const meter = (directivity: number) => ({
  kind: "meter" as const,
  name: "meter",
  note: "",
  state: "in line" as const,
  directivity: exactly(directivity),
});

const tuner = {
  kind: "tuner" as const,
  name: "tuner",
  note: "",
  state: "in line" as const,
  network: "L" as const,
  capacitors: null,
  coil: null,
  output: "coaxial" as const,
  set: "least loss" as const,
  voltageLimit: null,
};

function answered(parts: readonly Part[], swr: Quantity, farEnd: Reading["farEnd"] = "antenna") {
  const base = plainStation();
  const station = plainStation({
    transmitter: { ...base.transmitter, designedFor: exactly(75) },
    path: pathOf(parts),
    antennas: [antennaOf(levelDipole(20.35, 12))],
    readings: [{ at: "meter", frequency: exactly(7.1e6), swr, file: null, taken: null, farEnd }],
  });
  const steps = compareReadings(station, station.bands[0]!, createAntennaSolver());
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

const compared = (swr: number, directivity: number) => answered([meter(directivity)], exactly(swr)).readings[0]!;

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

  it("count how well the meter could be read", () => {
    expect(answered([meter(40)], exactly(2)).readings[0]!.agrees).toBe(false);
    expect(answered([meter(40)], within(2, 1)).readings[0]!.agrees).toBe(true);
  });

  it("tell nothing of the antenna in front of a tuner at work, or with the far end open", () => {
    const inFront = answered([meter(25), tuner], exactly(1));
    expect(inFront.readings).toEqual([]);
    expect(inFront.notComputed[0]).toContain("how tuner behind it was set is not known");
    expect(answered([tuner, meter(25)], exactly(1.2)).readings).toHaveLength(1);
    expect(answered([meter(25), { ...tuner, set: "bypassed" }], exactly(1.2)).readings).toHaveLength(1);
    const open = answered([meter(25)], exactly(20), "open");
    expect(open.readings).toEqual([]);
    expect(open.notComputed[0]).toContain("far end open");
  });
});
