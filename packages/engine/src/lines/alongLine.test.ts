import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Complex, complex, magnitude } from "../numerics/complex";
import { alongLine, inputImpedance, lineLoss, lossByStandingWave, netPower } from "./alongLine";
import { fromImmittance, type LineConstants } from "./lineConstants";

/** A metre of line with given Z0 and gamma. */
const metre = (z0: Complex, gamma: Complex): LineConstants => ({
  frequency: 1,
  z0,
  gamma,
  resistance: 0,
  inductance: 0,
  conductance: 0,
  capacitance: 0,
  velocityFactor: 1,
  notes: [],
});

describe("line with a load", () => {
  // Load, Z0, then input impedance and loss at gamma l = 0.1 + j2. Source: telegrapher's equations, values by mpmath.
  it.each([
    [[100, 0], [50, 0], [32.3325289267551, 14.4306624791758], 1.0439722449328],
    [[100, 0], [50, -1], [32.3652707144955, 13.3467440286065], 1.08000827352544],
    [[50, 100], [50, -1], [13.0318764572427, 1.32543748691117], 2.00450920575859],
    [[5, -500], [50, 0], [6.72775324682448, 28.8237917881199], 20.1159080395748],
    [[5, -500], [50, -1], [7.43380054838012, 28.6698871440065], 20.5499604527683],
  ])("has the published input impedance and loss for load %o on %o", (load, z0, input, loss) => {
    const line = metre(complex(z0[0]!, z0[1]), complex(0.1, 2));
    const found = inputImpedance(line, 1, complex(load[0]!, load[1]));
    expect(found.re / input[0]!).toBeCloseTo(1, 9);
    expect(found.im / input[1]!).toBeCloseTo(1, 9);
    expect(lineLoss(line, 1, complex(load[0]!, load[1])).atLoad / loss).toBeCloseTo(1, 9);
  });

  // Matched loss (dB), SWR at the load, total loss (dB). Source: handbook formula, values by mpmath.
  it.each([
    [0.1, 20, 0.903002668379712],
    [1, 3, 1.50385254907822],
    [3, 5, 5.03861795344471],
    [6, 1.5, 6.16631296290692],
  ])("agrees with the handbook formula where Z0 is real: %f dB, SWR %f", (matched, ratio, total) => {
    expect(lossByStandingWave(matched, ratio) / total).toBeCloseTo(1, 9);
    const line = metre(complex(50), complex((matched * Math.LN10) / 20, 1.3));
    const found = lineLoss(line, 1, complex(50 * ratio));
    expect(found.atLoad / total).toBeCloseTo(1, 9);
    expect(found.matched / matched).toBeCloseTo(1, 12);
    expect(found.extra).toBeCloseTo(found.atLoad - matched, 12);
  });

  // Watts, SWR, greatest rms voltage and current on 50 ohm without loss: V = sqrt(P Z0 S), I = sqrt(P S/Z0), by mpmath.
  it.each([
    [400, 2, 200, 4],
    [1500, 3, 474.341649025257, 9.48683298050514],
  ])("reaches the voltage and current of %f W at SWR %f", (power, ratio, voltage, current) => {
    const line = metre(complex(50), complex(0, 2 * Math.PI));
    const load = { voltage: complex(Math.sqrt(power * 50 * ratio)), current: complex(Math.sqrt(power / (50 * ratio))) };
    const along = alongLine(line, 1, load, 40);
    expect(Math.max(...along.voltage.map(magnitude)) / voltage).toBeCloseTo(1, 9);
    expect(Math.max(...along.current.map(magnitude)) / current).toBeCloseTo(1, 9);
    for (const p of along.power) expect(p / power).toBeCloseTo(1, 9);
  });

  it("runs from the transmitter's end to the load, and its heat is R |I|^2 + G |V|^2 along the way", () => {
    const omega = 2 * Math.PI * 7.1e6;
    const series = complex(0.5, omega * 2.5e-7);
    const shunt = complex(2e-4, omega * 1e-10);
    const line = fromImmittance({ series, shunt, notes: [] }, 7.1e6, 0);
    const load = { voltage: complex(40, -20), current: complex(0.3, 0.9) };
    const steps = 200;
    const along = alongLine(line, 28, load, steps);
    expect(along.voltage.at(-1)).toEqual(load.voltage);
    const heat = along.current.map((i, k) => 0.5 * magnitude(i) ** 2 + 2e-4 * magnitude(along.voltage[k]!) ** 2);
    // Simpson's rule over the line.
    const sum = heat.reduce((s, h, k) => s + h * (k === 0 || k === steps ? 1 : k % 2 === 1 ? 4 : 2), 0);
    const dissipated = (sum * 28) / steps / 3;
    expect((along.power[0]! - netPower(load)) / dissipated).toBeCloseTo(1, 7);
  });

  it("loses power towards every passive load", () => {
    const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        amount(0, 1),
        amount(1e-6, 1e-3),
        amount(0.1, 3000),
        amount(-2000, 2000),
        amount(0.1, 60),
        (r, g, rl, xl, l) => {
          const omega = 2 * Math.PI * 1e7;
          const line = fromImmittance(
            { series: complex(r, omega * 2.5e-7), shunt: complex(g, omega * 1e-10), notes: [] },
            1e7,
            0,
          );
          expect(lineLoss(line, l, complex(rl, xl)).atLoad).toBeGreaterThan(0);
        },
      ),
    );
  });

  it("refuses a load that takes no power", () => {
    expect(() => lineLoss(metre(complex(50), complex(0.1, 1)), 1, complex(0, 30))).toThrow(/takes no power/);
  });
});
