/** Decibels as people hear them: parts of one S-unit. English. */

/** One S-unit, dB (IARU Region 1 Technical Recommendation R.1, from memory). */
export const decibelsPerSUnit = 6;

const parts: readonly (readonly [number, string])[] = [
  [0.1, "next to nothing on the air"],
  [0.13, "a tenth of one S-unit"],
  [0.2, "a sixth of one S-unit"],
  [0.29, "a quarter of one S-unit"],
  [0.41, "a third of one S-unit"],
  [0.6, "half an S-unit"],
  [0.85, "three quarters of one S-unit"],
  [1.25, "one S-unit"],
];

export function asSUnits(decibels: number): string {
  const units = decibels / decibelsPerSUnit;
  const found = parts.find(([limit]) => units < limit);
  return found ? found[1] : `${(Math.round(units * 2) / 2).toString()} S-units`;
}
