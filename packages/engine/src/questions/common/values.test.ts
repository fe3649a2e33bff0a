import { describe, expect, it } from "vitest";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { workPoint } from "../../chain/workPoint";
import { plainStation } from "../../testing/plainStation";
import { valuesOf } from "./values";

const station = plainStation();
const point = workPoint(station, station.bands[0]!, 7.1e6, createAntennaSolver(), { tuner: "matched" });
if ("refused" in point) throw new Error(point.refused.why);

describe("values of an answer", () => {
  it("keep their bounds to what can be: no SWR below 1, no power below 0 or above what is delivered", () => {
    const numbers = { swrAtFeedPoint: 1.1, radiatedPower: 95, heatInSoil: 1, powerFromTransmitter: 100 };
    const low = { swrAtFeedPoint: 0.8, radiatedPower: 80, heatInSoil: -4, powerFromTransmitter: 100 };
    const high = { swrAtFeedPoint: 1.4, radiatedPower: 120, heatInSoil: 6, powerFromTransmitter: 100 };
    const values = valuesOf(numbers, { low, high }, point);
    expect(values.swrAtFeedPoint).toMatchObject({ low: 1, high: 1.4, reference: 50 });
    expect(values.radiatedPower).toMatchObject({ low: 80, high: 100 });
    expect(values.heatInSoil).toMatchObject({ low: 0, high: 6 });
  });

  it("tell no bounds where nothing is in doubt, and the reason where a number does not apply", () => {
    const values = valuesOf(
      { radiatedPower: 60, lineLoss: null, swrAtFeedPoint: Number.POSITIVE_INFINITY },
      null,
      point,
    );
    expect(values.radiatedPower).toEqual({ value: 60, unit: "W" });
    expect(values.lineLoss).toMatchObject({ value: null, reason: expect.stringMatching(/\w/) });
    expect(values.swrAtFeedPoint).toMatchObject({ value: null, reason: expect.stringContaining("without end") });
  });
});
