/**
 * Rounds parts so that they still add up to the rounded whole: each to its nearest step, then single steps moved where
 * that changes a number least against its own size. The first part, which the headline tells, keeps its nearest step
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

const costOf = (part: number, told: number, step: number): number =>
  told < 0 ? Number.POSITIVE_INFINITY : Math.abs(told - part) / Math.max(part, step);
