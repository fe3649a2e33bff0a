import { describe, expect, it } from "vitest";
import { complex, magnitude, multiply, subtract } from "../numerics/complex";
import type { MeasuredNetwork } from "../station/station";
import { measuredTwoPort } from "./measuredTwoPort";
import { transformedImpedance } from "./twoPort";

const network = (frequencies: number[], scattering: number[][]): MeasuredNetwork => ({
  ports: 2,
  reference: 50,
  frequencies,
  scattering,
});
/** 50 ohm in series on 50 ohm: S11 = 1/3, S21 = 2/3. 50 ohm across: S11 = -1/3, S21 = 2/3. Elementary. */
const inSeries = [1 / 3, 0, 2 / 3, 0, 2 / 3, 0, 1 / 3, 0];
const across = [-1 / 3, 0, 2 / 3, 0, 2 / 3, 0, -1 / 3, 0];

describe("measured two-port", () => {
  it("is a series or a shunt resistor when its scattering parameters say so", () => {
    const made = measuredTwoPort(network([1e6, 2e6], [inSeries, across]), 1e6);
    if (made.kind !== "two-port") throw new Error(made.reason);
    expect(transformedImpedance(made.twoPort, complex(20, 5)).re).toBeCloseTo(70, 10);
    const second = measuredTwoPort(network([1e6, 2e6], [inSeries, across]), 2e6);
    if (second.kind !== "two-port") throw new Error(second.reason);
    expect(transformedImpedance(second.twoPort, complex(50)).re).toBeCloseTo(25, 10);
  });

  it("stays reciprocal between points and keeps port 1 towards the transmitter", () => {
    const made = measuredTwoPort(network([1e6, 2e6], [inSeries, across]), 1.25e6);
    if (made.kind !== "two-port") throw new Error(made.reason);
    const { a, b, c, d } = made.twoPort;
    expect(magnitude(subtract(multiply(a, d), multiply(b, c)))).toBeCloseTo(1, 12);
    // S11 = 1/6 at a quarter of the way, seen from a matched load.
    expect(transformedImpedance(made.twoPort, complex(50)).re).toBeCloseTo((50 * (7 / 6)) / (5 / 6), 10);
  });

  it("warns of points too far apart to interpolate, and refuses what lies outside them", () => {
    const turned = network(
      [1e6, 2e6],
      [
        [0, 0, 1, 0, 1, 0, 0, 0],
        [0, 0, 0, -1, 0, -1, 0, 0],
      ],
    );
    const made = measuredTwoPort(turned, 1.5e6);
    expect(made.kind === "two-port" ? made.notes.join() : "").toMatch(/up to 3\.0 dB/);
    const outside = measuredTwoPort(turned, 3e6);
    expect(outside.kind === "not computed" ? outside.reason : "").toMatch(/1 MHz to 2 MHz, asked at 3 MHz/);
    const deaf = measuredTwoPort(
      network(
        [1e6, 2e6],
        [
          [1, 0, 0, 0, 0, 0, 1, 0],
          [1, 0, 0, 0, 0, 0, 1, 0],
        ],
      ),
      1e6,
    );
    expect(deaf.kind).toBe("not computed");
    expect(measuredTwoPort({ ...turned, ports: 1 }, 1e6).kind).toBe("not computed");
  });
});
