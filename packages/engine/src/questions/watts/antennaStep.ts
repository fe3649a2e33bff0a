/** The watts behind the feed point: wires, soil and sky, each on its own. */
import type { WorkingStep } from "../../answer/answer";
import { significantNumber, watts } from "../../quantity/format";
import { isRealSoil } from "../../wires/structure";
import { antennaHeatSays } from "../common/antennaHeat";
import type { Worked } from "../common/worked";

export function wattsFromAntenna(worked: Worked): WorkingStep[] {
  const { point, numbers } = worked;
  const residue = Math.abs(numbers.powerBalanceResidue ?? 0);
  const soil = isRealSoil(point.antenna.soil);
  const soilText = soil ? `, ${watts(numbers.heatInSoil ?? 0)} go down through the soil's surface` : "";
  return [
    {
      text: `Of these ${watts(point.powerIntoAntenna)}, ${watts(numbers.heatInWires ?? 0)} heat the ${antennaHeatSays(worked)}${soilText}, ${watts(numbers.radiatedPower ?? 0)} leave above the horizon. Each is worked out on its own; their sum misses what goes in by ${significantNumber(100 * residue, 1)} %.${soil ? " Radiated is the sky wave: what runs along the lossy surface ends in the soil and is counted there." : ""}`,
      formula: "P_{\\mathrm{in}} = P_{\\mathrm{wires}} + P_{\\mathrm{soil}} + P_{\\mathrm{sky}}",
      source:
        "moment method and Sommerfeld integrals; far field integrated over the sky, power flow integrated over the surface",
      explains: ["powerIntoAntenna", "heatInWires", "heatInSoil", "radiatedPower", "powerBalanceResidue"],
    },
  ];
}
