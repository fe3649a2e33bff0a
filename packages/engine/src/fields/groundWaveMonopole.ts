/** Ground wave of the antenna that field strength charts are drawn for. */
import { zero } from "../numerics/complex";
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";
import type { Soil } from "../wires/structure";
import { attenuationOf, checkWay, soilImpedance } from "./groundWaveWay";

/**
 * V/m rms at `distance` (m) of a short upright antenna on the ground that sends `power` (W), as ITU-R P.368 has it: a
 * directivity of 3 over a perfect plane (300 mV/m at 1 km from 1 kW), times the attenuation. Frequency in Hz;
 * ground and `radius` (m, null when flat) as for groundWaveField, a perfect plane or sphere besides.
 */
export function groundWaveOfMonopole(
  power: number,
  soil: Soil,
  frequency: number,
  distance: number,
  radius: number | null,
): number {
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const way = { k, distance, radius };
  checkWay(way);
  const impedance = soil.kind === "perfect" ? zero : soilImpedance(soil, frequency).vertical;
  const { re, im } = attenuationOf(impedance, way);
  const overPlane = Math.sqrt((3 * power * vacuumImpedance) / (4 * Math.PI)) / distance;
  return overPlane * Math.hypot(re, im);
}
