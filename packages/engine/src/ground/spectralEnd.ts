/** Where the integration over evanescent waves may end. */

/** Width of the window's edge times the smallest distance: what the window drops is below e^-(9/2)^2 = 2e-9. */
const edgeInDistances = 9;
/** Reach of the edge to either side, in widths: 1 - 1e-8 there. */
const edgeReach = 4;

/** Past this the edge is 1 or 0 to 1e-12. */
const flat = 5;

/** Half the complementary error function, by the series of erf of positive terms (DLMF 7.6.2). */
function fallingEdge(x: number): number {
  if (Math.abs(x) > flat) return x < 0 ? 1 : 0;
  let term = Math.abs(x);
  let sum = 0;
  for (let n = 1; term > 1e-17 * (sum + term); n++) {
    sum += term;
    term *= (2 * x * x) / (2 * n + 1);
  }
  const half = (Math.exp(-x * x) * sum) / Math.sqrt(Math.PI);
  return x < 0 ? 0.5 + half : 0.5 - half;
}

/**
 * End of the decay (rad/m), and the share of the integrand to keep at each. Beside e^-tail at the smallest height sum:
 * past the wavenumbers of the soil (`soilWavenumber`, rad/m) the spectra are smooth, so that Bessel functions of large
 * distance average them out. A window with a Gaussian edge wide against 1/distance therefore may end them there; it has to
 * have left the soil's branch point behind by as much as that lies off the axis, and by its own reach.
 */
export function spectralEnd(
  soilWavenumber: number,
  reach: { readonly smallestSum: number; readonly nearestDistance?: number },
  tail: number,
): { readonly end: number; readonly share: (decay: number) => number } {
  const whole = tail / reach.smallestSum;
  if (!reach.nearestDistance) return { end: whole, share: () => 1 };
  const width = edgeInDistances / reach.nearestDistance;
  const middle = 2 * soilWavenumber + edgeReach * width;
  const end = middle + edgeReach * width;
  return end < whole ? { end, share: (a) => fallingEdge((a - middle) / width) } : { end: whole, share: () => 1 };
}
