/** Nodes over vertical wavenumbers for the power into soil, whatever the soil, with what it lets in there. */
import { layeredPowerNodes } from "./layeredPowerNodes";
import { largestWavenumber } from "./layeredSoil";
import type { SoilSurface } from "./soilSurface";
import { spectralEnd } from "./spectralEnd";
import { evanescentNodes, type PowerNodes, propagatingNodes, type Reach, type SpectralNodes } from "./spectralNodes";

const two = new Float64Array(2);

function withTransmission({ depth, weight }: SpectralNodes, surface: SoilSurface, sign: 1 | -1): PowerNodes {
  const [tm, te] = [new Float64Array(depth.length), new Float64Array(depth.length)];
  for (let n = 0; n < depth.length; n++) {
    surface.transmit(sign === 1 ? depth[n]! : 0, sign === 1 ? 0 : -depth[n]!, two);
    tm[n] = two[0]!;
    te[n] = two[1]!;
  }
  return { depth, weight, tm, te };
}

/** Over real kz from 0 to k. */
export function propagatingPower(surface: SoilSurface, reach: Reach): PowerNodes {
  const { k, top, layers } = surface;
  return layers
    ? layeredPowerNodes(layers, surface.transmit, reach, "propagating")
    : withTransmission(propagatingNodes(k, top, reach), surface, 1);
}

/** Over the decay until e^-tail at the smallest height sum, or earlier (spectralEnd). */
export function evanescentPower(surface: SoilSurface, reach: Reach, tail: number): PowerNodes {
  const { k, top, layers } = surface;
  return layers
    ? layeredPowerNodes(layers, surface.transmit, reach, spectralEnd(largestWavenumber(layers), reach, tail))
    : withTransmission(evanescentNodes(k, top, reach, tail), surface, -1);
}
