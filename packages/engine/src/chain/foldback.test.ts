import { describe, expect, it } from "vitest";
import { exactly } from "../quantity/quantity";
import { plainStation } from "../testing/plainStation";
import { beyondCurve, deliveredPower } from "./foldback";

const withCurve = (...points: readonly (readonly [number, number])[]) => ({
  ...plainStation().transmitter,
  powerAtSwr: points.map(([swr, power]) => ({ swr, power: exactly(power) })),
});

describe("foldback", () => {
  it("delivers the stated power into the rated load also where the curve begins later", () => {
    // `power` is that into the rated load (docs/conventions.md): 100 W at SWR 1, then straight to 60 W at 2 (arithmetic).
    const transmitter = withCurve([2, 60], [3, 30]);
    expect(deliveredPower(transmitter, 1)).toBeCloseTo(100, 12);
    expect(deliveredPower(transmitter, 1.5)).toBeCloseTo(80, 12);
    expect(deliveredPower(transmitter, 2.5)).toBeCloseTo(45, 12);
  });

  it("holds the last point's power beyond it, and says so", () => {
    const transmitter = withCurve([1.5, 100], [3, 30]);
    expect(deliveredPower(transmitter, 7)).toBe(30);
    expect(deliveredPower(transmitter, Number.POSITIVE_INFINITY)).toBe(30);
    expect(beyondCurve(transmitter, 7)).toBe(true);
    expect(deliveredPower(transmitter, 1.2)).toBeCloseTo(100, 12);
  });

  it("takes a curve that begins at SWR 1 as it stands", () => {
    expect(deliveredPower(withCurve([1, 90], [2, 50]), 1)).toBe(90);
  });
});
