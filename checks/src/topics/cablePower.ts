/** Mean power that brings a cable of the catalogue to what its insulation bears: matched, in still air of 40 degrees at sea level. */
import { leavingOf, lineConstants, standardAir, steadyTemperatures, thermalLine, timesToReach } from "@feedpath/engine";
import type { CatalogueLine } from "@feedpath/station-file";

const air = { pressure: standardAir(0).pressure, temperature: 313.15 };
/** Only the air counts for a line hung in the shade. */
const site = { air, irradiance: 0, soil: { temperature: 288.15, resistivity: 1, depth: 0.5 }, conduit: 2 };

/** W at `frequency` in Hz. */
export function greatestPower(line: CatalogueLine, frequency: number): number {
  const circuit = thermalLine(line, frequency, 0);
  if (!circuit) throw new Error(`${line.designation}: no build, so that its heat cannot be worked out`);
  const { z0 } = lineConstants(line.model, frequency);
  const leaving = leavingOf("in air", circuit.surface, site, 1);
  const hottest = (watts: number): number => {
    const drive = { current: watts / z0.re, voltage: watts * z0.re };
    return steadyTemperatures(circuit, drive, leaving, air.temperature).inner;
  };
  return timesToReach(hottest, circuit.greatestTemperature);
}
