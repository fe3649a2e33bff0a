/** Metals of cables at 20 degrees Celsius, each with its source and how well it is known. */
import type { Metal, RoundConductor } from "./conductor";
import { strandedConductor } from "./strandedConductor";

export const cableMetals = {
  copper: { name: "copper", conductivity: 58e6, permeability: 1, temperatureCoefficient: 0.00393 },
  silver: { name: "silver", conductivity: 62.9e6, permeability: 1, temperatureCoefficient: 0.0038 },
  tin: { name: "tin", conductivity: 8.7e6, permeability: 1, temperatureCoefficient: 0.0045 },
  aluminium: { name: "aluminium", conductivity: 35.38e6, permeability: 1, temperatureCoefficient: 0.00403 },
  steel: { name: "steel", conductivity: 5.8e6, permeability: 200, temperatureCoefficient: 0.005 },
} as const satisfies Record<string, Metal>;

/** Where conductivity and temperature coefficient of each metal come from. */
export const metalSources: Readonly<
  Record<keyof typeof cableMetals, { readonly source: string; readonly status: string }>
> = {
  copper: { source: "IEC 60028, annealed copper: 58.0 MS/m, 0.00393/K", status: "published, quoted from memory" },
  silver: { source: "handbooks: 15.9 nΩ m, 0.0038/K", status: "from memory" },
  tin: {
    source: "handbooks: 115 nΩ m, 0.0045/K; a plating that alloys with its copper conducts worse",
    status: "from memory",
  },
  aluminium: {
    source: "IEC 60889, hard-drawn, 61 % IACS: 35.38 MS/m, 0.00403/K; a handbook gives 34.8 MS/m",
    status: "published, quoted from memory",
  },
  steel: {
    source: "handbooks: 10 % IACS, 0.005/K; relative permeability 200, which falls with frequency, 50 to 300",
    status: "from memory",
  },
};

/** m of tin on tinned copper, 1 to 3 micrometres (ASTM B33), and of silver, 1 or more (ASTM B298): both from memory. */
export const platingThickness = { tin: 2e-6, silver: 1e-6 } as const;

/** Coat of tin or silver, as `strandedConductor` and `shieldedConductor` take it. */
export const plating = (
  metal: keyof typeof platingThickness,
): { readonly metal: Metal; readonly thickness: number } => ({
  metal: cableMetals[metal],
  thickness: platingThickness[metal],
});

/** Solid tinned copper wire of `radius` m over the tin. */
export const tinned = (radius: number): RoundConductor =>
  strandedConductor(1, 2 * radius, cableMetals.copper, { coatings: [plating("tin")] });
