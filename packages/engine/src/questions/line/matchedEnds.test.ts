import { describe, expect, it } from "vitest";
import { fromImmittance, type LineConstants } from "../../lines/lineConstants";
import { swr } from "../../lines/reflection";
import { lineTwoPort } from "../../networks/lineTwoPort";
import { cascade, transformedImpedance } from "../../networks/twoPort";
import { complex } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { shortSection } from "./matchedEnds";

const frequency = 10e6;

/** A line in vacuum without loss. */
function ideal(z0: number): LineConstants {
  const beta = (2 * Math.PI * frequency) / speedOfLight;
  const immittance = { series: complex(0, beta * z0), shunt: complex(0, beta / z0), notes: [] };
  return fromImmittance(immittance, frequency, 0);
}

describe("two short sections", () => {
  it("join any two impedances exactly, whatever the length of the line between them", () => {
    for (const [rated, other] of [
      [50, 75],
      [50, 93],
      [75, 50],
      [50, 190],
    ] as const) {
      const length = (shortSection(other / rated) * speedOfLight) / (2 * Math.PI * frequency);
      const sections = [other, rated].map((z) => lineTwoPort(ideal(z), length));
      for (const main of [3.1, 17.7]) {
        const chain = cascade(...sections, lineTwoPort(ideal(other), main), ...[...sections].reverse());
        expect(swr(transformedImpedance(chain, complex(rated)), rated)).toBeCloseTo(1, 9);
      }
    }
  });

  it("are near a twelfth of a wave: 0.0815 of one between 50 and 75 ohm (handbooks, from memory)", () => {
    expect(shortSection(1.5) / (2 * Math.PI)).toBeCloseTo(0.0815, 4);
    expect(shortSection(1) / (2 * Math.PI)).toBeCloseTo(1 / 12, 12);
  });
});
