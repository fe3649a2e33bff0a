/** An axis of numbers of things on which every doubling is one step; none stands one step before one. */
export interface CountAxis {
  readonly values: readonly number[];
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  readonly at: (count: number) => number;
}

const at = (count: number): number => (count === 0 ? -1 : Math.log2(count));

/** For counts in rising order, 0 or 1 and up. */
export function countAxis(counts: readonly number[]): CountAxis {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const doublings = Array.from({ length: 16 }, (_, i) => 2 ** i).filter((n) => n >= least && n <= most);
  const ticks = doublings.map((n) => ({ value: at(n), text: String(n) }));
  return { values: counts.map(at), ticks: least === 0 ? [{ value: -1, text: "none" }, ...ticks] : ticks, at };
}
