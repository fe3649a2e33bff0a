/** Nodes over vertical wavenumbers for the power into soil, whatever the soil. */
import { layeredPowerNodes } from "./layeredPowerNodes";
import type { LayeredMedium } from "./layeredSoil";
import { contrast } from "./soilMedium";
import type { SoilSurface } from "./soilSurface";
import { spectralEnd } from "./spectralEnd";
import { type Reach, type SpectralNode, spectralNodes } from "./spectrum";

/** Largest wavenumber of all layers, rad/m. */
const fastest = ({ k, layers }: LayeredMedium): number =>
  k * Math.sqrt(Math.max(...layers.map(({ permittivity }) => contrast(permittivity))));

/** Over real kz from 0 to k, then over the decay until e^-tail at the smallest height sum, or earlier (spectralEnd). */
export const powerNodes = (
  surface: SoilSurface,
  reach: Reach,
  tail: number,
): { propagating: SpectralNode[]; evanescent: SpectralNode[] } =>
  surface.layers
    ? layeredPowerNodes(surface.k, surface.transmit, reach, spectralEnd(fastest(surface.layers), reach, tail))
    : spectralNodes(surface.k, surface.top, reach, tail);
