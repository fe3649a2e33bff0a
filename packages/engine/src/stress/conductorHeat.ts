/** What circuits of coaxial lines and of wires share: metal that warms, surfaces, and the limit of an insulation. */
import { roundConductorAt, statedTemperature } from "../conductors/metalTemperature";
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import type { LineEntry, RoundConductor } from "../lines/lineModel";
import { metalHeat, type ThermalMaterial, unknownInsulation } from "./materials";

/** Per metre at 20 °C, both ways together: ohm and S. */
export interface Losses {
  readonly resistance: number;
  readonly conductance: number;
}

/** Dark jackets, and bare wire that has stood outdoors (from memory). */
export const jacketed = { emissivity: 0.9, absorptivity: 0.8 };
export const weathered = { emissivity: 0.6, absorptivity: 0.7 };
/** K m/W and J/(m K) of what is not there: small enough to change nothing. */
export const hardly = 1e-3;

/** K over room temperature at which the rise of a resistance is taken: about what insulation bears. */
const warmer = 50;

/**
 * Rise of the squared resistance a kelvin at `omega` rad/s, by which a resistance of one metal at small skin depth is its root;
 * of a plated conductor what the current makes of its layers. 0 for a perfect conductor.
 */
export function coefficientOf(conductor: RoundConductor, omega: number): number {
  const at = (kelvin: number): number => roundConductorImpedance(roundConductorAt(conductor, kelvin), omega).re;
  const cold = at(statedTemperature);
  return cold > 0 ? ((at(statedTemperature + warmer) / cold) ** 2 - 1) / warmer : 0;
}

/** m² of a ring between two diameters (m). */
export const area = (outer: number, inner: number): number => (Math.PI / 4) * (outer ** 2 - inner ** 2);

/** Of the circle round its strands, what is metal; 1 where they are not known. */
const filled = (conductor: RoundConductor): number => {
  const { strands } = conductor;
  return strands ? (strands.count * strands.diameter ** 2) / (2 * outerRadius(conductor)) ** 2 : 1;
};

/** J/(m K) and W m/K of a round conductor, layer by layer; strands without the air between them. */
export function metalArea(conductor: RoundConductor): { readonly heatCapacity: number; readonly along: number } {
  const share = filled(conductor);
  let [inside, heatCapacity, along] = [conductor.holeRadius, 0, 0];
  for (const layer of conductor.layers) {
    const section = share * area(2 * layer.outerRadius, 2 * inside);
    const metal = metalHeat(layer.metal.name);
    heatCapacity += section * metal.heatCapacity;
    along += section * metal.conductivity;
    inside = layer.outerRadius;
  }
  return { heatCapacity, along };
}

export interface HeatLimit {
  readonly greatestTemperature: number;
  readonly limitSource: string;
}

/** The rating of the line, else what its insulation is stated to bear (K), else what such material bears. */
export function limitOf(line: LineEntry, stated: number | undefined, material: ThermalMaterial): HeatLimit {
  const rated = line.ratings?.temperature?.value;
  if (rated !== undefined) return { greatestTemperature: rated, limitSource: "the line's rating" };
  if (stated !== undefined) return { greatestTemperature: stated, limitSource: "what its insulation bears for long" };
  return {
    greatestTemperature: material.greatestTemperature ?? unknownInsulation.greatestTemperature!,
    limitSource:
      material.greatestTemperature === null
        ? "its spacers and jacket, taken as polyethylene (our assumption)"
        : "what its insulation bears for long: cable practice (from memory)",
  };
}
