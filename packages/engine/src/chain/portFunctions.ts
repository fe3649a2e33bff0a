/** What a sweep interpolates of a solution: its ports' admittances and the impedances of its electrodes, as one list of numbers. */
import { type Complex, complex, magnitude } from "../numerics/complex";
import type { RationalSample } from "../numerics/rationalInterpolation";
import type { SolvedAntenna } from "./closeAntenna";

/** Divisors that bring all to one size. */
export interface Sizes {
  readonly admittance: number;
  readonly electrode: number;
}

const largest = (values: readonly Complex[]): number =>
  values.reduce((most, z) => Math.max(most, magnitude(z)), 0) || 1;

export const sizesOf = (solved: readonly SolvedAntenna[]): Sizes => ({
  admittance: largest(solved.flatMap((s) => s.solution!.admittance.flat())),
  electrode: largest(solved.flatMap((s) => s.solution!.electrodes)),
});

/** One sample: the upper triangle of the symmetric matrix, then the electrodes; `x` tells the frequency. */
export function sampleOf({ solution }: SolvedAntenna, x: number, sizes: Sizes): RationalSample {
  const { admittance, electrodes } = solution!;
  const upper = admittance.flatMap((row, i) => row.slice(i));
  const numbers = [
    ...upper.flatMap(({ re, im }) => [re / sizes.admittance, im / sizes.admittance]),
    ...electrodes.flatMap(({ re, im }) => [re / sizes.electrode, im / sizes.electrode]),
  ];
  return { x, values: Float64Array.from(numbers) };
}

/** The matrix between all `ports` and the electrodes' impedances from a sample's numbers. */
export function portsOf(values: Float64Array, ports: number, sizes: Sizes) {
  const admittance = Array.from({ length: ports }, () => new Array<Complex>(ports));
  let at = 0;
  const next = (size: number): Complex => {
    const read = complex(values[at]! * size, values[at + 1]! * size);
    at += 2;
    return read;
  };
  for (let i = 0; i < ports; i++) {
    for (let k = i; k < ports; k++) {
      const y = next(sizes.admittance);
      admittance[i]![k] = y;
      admittance[k]![i] = y;
    }
  }
  const electrodes: Complex[] = [];
  while (at < values.length) electrodes.push(next(sizes.electrode));
  return { admittance, electrodes };
}
