/**
 * Complex arithmetic without allocation, for loops over many nodes: results go to places `at` (re) and `at` + 1 (im) of an
 * array. No guard against overflow: magnitudes well between 1e-150 and 1e150. Must not know any physics.
 */

export function divideInto(out: Float64Array, at: number, ar: number, ai: number, br: number, bi: number): void {
  const size = br * br + bi * bi;
  out[at] = (ar * br + ai * bi) / size;
  out[at + 1] = (ai * br - ar * bi) / size;
}

/** Square root with Im <= 0. */
export function lowerRootInto(out: Float64Array, at: number, re: number, im: number): void {
  const size = Math.sqrt(re * re + im * im);
  const t = Math.sqrt((size + Math.abs(re)) / 2);
  const u = t === 0 ? 0 : Math.abs(im) / (2 * t);
  const [x, y] = re >= 0 ? [t, u] : [u, t];
  out[at] = im > 0 ? -x : x;
  out[at + 1] = -y;
}
