/**
 * Rounds parts so that they still add up to the rounded whole: each to its nearest step, then single steps moved where
 * that changes a number least against its own size, none by a step or more while that can be had. The first part, which the headline tells, keeps its nearest step
 * while any other can be moved.
 */
export function shareOut(parts: readonly number[], whole: number, decimals: number): number[] {
  const step = 10 ** -decimals;
  const steps = parts.map((p) => Math.round(p / step));
  let missing = Math.round(whole / step) - steps.reduce((a, b) => a + b, 0);
  while (missing !== 0) {
    const move = Math.sign(missing);
    const cost = parts.map((p, i) => costOf(p, (steps[i]! + move) * step, step) + (i === 0 ? lastResort : 0));
    steps[cost.indexOf(Math.min(...cost))]! += move;
    missing -= move;
  }
  return steps.map((s) => s * step);
}

/** More than any honest change costs, less than making a part negative. */
const lastResort = 1e6;

/** More than a change by less than a step can cost, less than touching the first part. */
const wholeStep = 1e3;

function costOf(part: number, told: number, step: number): number {
  if (told < 0) return Number.POSITIVE_INFINITY;
  const off = Math.abs(told - part);
  return off / Math.max(part, step) + (off < step * (1 - 1e-9) ? 0 : wholeStep);
}
