import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { complex, magnitude } from "../numerics/complex";
import {
  meterMayShow,
  powerWaveReflection,
  reflectionOfSwr,
  returnLoss,
  swr,
  swrOfReflection,
  voltageReflection,
} from "./reflection";

describe("reflection", () => {
  // SWR, |reflection|, return loss in dB. Source: rho = (S-1)/(S+1), values by mpmath.
  it.each([
    [1.05, 0.024390243902439, 32.2556771347394],
    [2, 0.333333333333333, 9.54242509439325],
    [3, 0.5, 6.02059991327962],
    [10, 0.818181818181818, 1.743003514378],
  ])("ties SWR %f to its reflection and return loss", (ratio, rho, loss) => {
    expect(reflectionOfSwr(ratio) / rho).toBeCloseTo(1, 9);
    expect(returnLoss(reflectionOfSwr(ratio)) / loss).toBeCloseTo(1, 9);
    expect(swrOfReflection(rho) / ratio).toBeCloseTo(1, 9);
  });

  it("reads 70, 100 and 35 ohm on 50 ohm as practice does", () => {
    // 1.4, 2 and 1.4286: arithmetic, common practice, no source.
    expect(swr(complex(70), 50)).toBeCloseTo(1.4, 12);
    expect(swr(complex(100), 50)).toBeCloseTo(2, 12);
    expect(swr(complex(35), 50)).toBeCloseTo(50 / 35, 12);
    expect(swr(complex(0, 20), 50)).toBe(Number.POSITIVE_INFINITY);
  });

  it("keeps power waves within 1 for every passive load and every lossy reference, unlike voltage waves", () => {
    const resistance = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
    const reactance = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(resistance, reactance, resistance, reactance, (r, x, r0, x0) => {
        expect(magnitude(powerWaveReflection(complex(r, x), complex(r0, x0)))).toBeLessThanOrEqual(1);
      }),
    );
    expect(magnitude(voltageReflection(complex(0, 50), complex(50, -10)))).toBeGreaterThan(1);
  });
});

describe("meter of finite directivity", () => {
  it("may show 1.14 to 1.73 for a true 1.4 at 20 dB", () => {
    // Source: |rho - D| and rho + D with rho = 1/6, D = 0.1; stated the same way in texts on directional couplers.
    const { low, high } = meterMayShow(1.4, 20);
    expect(low).toBeCloseTo(1.14, 2);
    expect(high).toBeCloseTo(1.73, 2);
  });

  it("cannot tell a perfect match from its own leak, and has no upper end where leak and reflection fill the scale", () => {
    expect(meterMayShow(1, 20).low).toBeCloseTo(1.1 / 0.9, 12);
    expect(meterMayShow(30, 15).high).toBeNull();
    expect(() => meterMayShow(0.9, 20)).toThrow(/expected at least 1/);
  });
});
