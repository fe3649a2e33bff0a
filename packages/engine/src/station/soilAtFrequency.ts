/** The soil of a station at one frequency, and where its values are read beyond the frequencies they are known at. */
import type { Quantity, Spectrum } from "../quantity/quantity";
import { readSpectrum } from "../quantity/spectrum";
import type { Ground, SoilConstant } from "./station";

/** One layer in numbers: relative permittivity, conductivity in S/m, thickness in m, null for the lowest. */
export interface LayerNumbers {
  readonly relativePermittivity: number;
  readonly conductivity: number;
  readonly thickness: number | null;
}

const asSpectrum = (constant: SoilConstant): Spectrum =>
  "kind" in constant ? constant : { kind: "constant", quantity: constant };

/** Permittivity or conductivity (S/m) at a frequency in Hz. */
export const soilConstantAt = (constant: SoilConstant, frequency: number): Quantity =>
  readSpectrum(asSpectrum(constant), frequency).quantity;

/** Layers from the top at a frequency in Hz; one soil is one layer, free space and a perfect conductor have none. */
export function layersAt(ground: Ground, frequency: number): LayerNumbers[] {
  if (ground.kind === "free space" || ground.kind === "perfect") return [];
  const layers = ground.kind === "soil" ? [{ ...ground, thickness: null }] : ground.layers;
  return layers.map(({ permittivity, conductivity, thickness }) => ({
    relativePermittivity: soilConstantAt(permittivity, frequency).value,
    conductivity: soilConstantAt(conductivity, frequency).value,
    thickness: thickness?.value ?? null,
  }));
}

/** Frequencies (Hz) between which the soil's values are given, when `frequency` lies outside of them; else null. */
export function beyondSoilData(
  ground: Ground,
  frequency: number,
): { readonly from: number; readonly to: number } | null {
  if (ground.kind === "soil") {
    const { range } = ground;
    return range && (frequency < range.from || frequency > range.to) ? range : null;
  }
  if (ground.kind !== "layers") return null;
  for (const constant of ground.layers.flatMap((l) => [l.permittivity, l.conductivity])) {
    if (!("kind" in constant) || !readSpectrum(constant, frequency).outside) continue;
    const frequencies = constant.points.map((p) => p.frequency);
    return { from: Math.min(...frequencies), to: Math.max(...frequencies) };
  }
  return null;
}
