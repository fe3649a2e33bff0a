/** Rounds parts so that they still add up to the rounded whole (largest remainder). */
export function shareOut(parts: readonly number[], whole: number, decimals: number): number[] {
  const step = 10 ** -decimals;
  const scaled = parts.map((p) => p / step);
  const floors = scaled.map(Math.floor);
  let missing = Math.round(whole / step) - floors.reduce((a, b) => a + b, 0);
  const order = scaled.map((s, i) => [s - Math.floor(s), i] as const).sort((a, b) => b[0] - a[0]);
  for (const [, i] of order) {
    if (missing <= 0) break;
    floors[i]! += 1;
    missing -= 1;
  }
  return floors.map((f) => f * step);
}
