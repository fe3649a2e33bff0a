/** Nodes over vertical wavenumbers for the power into soil, whatever the soil. */
import { layeredPowerNodes } from "./layeredPowerNodes";
import { largestWavenumber } from "./layeredSoil";
import type { SoilSurface } from "./soilSurface";
import { spectralEnd } from "./spectralEnd";
import { type Reach, type SpectralNode, spectralNodes } from "./spectrum";

/** Over real kz from 0 to k, then over the decay until e^-tail at the smallest height sum, or earlier (spectralEnd). */
export const powerNodes = (
  surface: SoilSurface,
  reach: Reach,
  tail: number,
): { propagating: SpectralNode[]; evanescent: SpectralNode[] } =>
  surface.layers
    ? layeredPowerNodes(surface.k, surface.transmit, reach, spectralEnd(largestWavenumber(surface.layers), reach, tail))
    : spectralNodes(surface.k, surface.top, reach, tail);
