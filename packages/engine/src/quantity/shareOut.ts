/**
 * Rounds parts so that they still add up to the rounded whole: each to its nearest step, then single steps moved where
 * that changes a number least against its own size, so that small numbers keep the value they have elsewhere.
 */
export function shareOut(parts: readonly number[], whole: number, decimals: number): number[] {
  const step = 10 ** -decimals;
  const steps = parts.map((p) => Math.round(p / step));
  let missing = Math.round(whole / step) - steps.reduce((a, b) => a + b, 0);
  while (missing !== 0) {
    const move = Math.sign(missing);
    const cost = parts.map((p, i) => Math.abs((steps[i]! + move) * step - p) / Math.max(p, step));
    steps[cost.indexOf(Math.min(...cost))]! += move;
    missing -= move;
  }
  return steps.map((s) => s * step);
}
