import { describe, expect, it } from "vitest";
import { createAntennaSolver } from "../../chain/antennaSolver";
import { driveSolved } from "../../chain/driveSolved";
import { powerAccount } from "../../fields/powerAccount";
import { strongestDirection } from "../../fields/strongestDirection";
import { complex } from "../../numerics/complex";
import { plainStation } from "../../testing/plainStation";
import { antennaFields } from "./antennaFields";

describe("fields of an antenna with one feed", () => {
  it("are those worked out under the voltage itself, whatever came before", () => {
    const antenna = createAntennaSolver().solve(plainStation(), 7.1e6);
    if ("refused" in antenna) throw new Error(antenna.refused.why);
    for (const voltage of [complex(3, -40), complex(0.2, 0)]) {
      const driven = driveSolved(antenna, [voltage])!;
      const { account, strongest } = antennaFields(antenna, [voltage], driven);
      const direct = powerAccount(driven);
      for (const name of ["powerIn", "radiated", "heatInSoil", "heatInWires", "heatInLoads"] as const) {
        expect(Math.abs(account[name] - direct[name])).toBeLessThan(1e-12 * direct.powerIn);
      }
      expect(Math.abs(account.residue - direct.residue)).toBeLessThan(1e-12);
      expect(strongest.gain / strongestDirection(driven).gain).toBeCloseTo(1, 5);
    }
  });
});
