/** The order of the candidates by what the asker says matters. What is not known never ranks as good. */
import { type RunFacts, runFacts } from "./runFacts";
import { type Studied, type Study, worstRow } from "./study";

export type Matters = "watts" | "price" | "weight" | "wind" | "bend";
export const mattersWords: readonly Matters[] = ["watts", "price", "weight", "wind", "bend"];

export interface Ranked extends Studied {
  readonly run: RunFacts;
}

/** dB by which a line may bring less than the present one and still be ranked by price, weight, wind or bend: our rule. */
export const mayBringLess = 0.5;

export const measured: Readonly<Record<Exclude<Matters, "watts">, (run: RunFacts) => number | null>> = {
  price: (run) => run.price,
  weight: (run) => run.weight,
  wind: (run) => run.windArea,
  bend: (run) => run.bendRadius,
};

const last = Number.POSITIVE_INFINITY;

/** dB, of the rated power, in the worst band. */
const behind = (studied: Studied): number => -10 * Math.log10(worstRow(studied).watts);

/** Best first. `length` in m. */
export function rankedLines(study: Study, matters: Matters, length: number): Ranked[] {
  const all = study.all.map((studied): Ranked => ({ ...studied, run: runFacts(study, studied, length) }));
  const keys = (one: Ranked): readonly number[] =>
    matters === "watts"
      ? [behind(one)]
      : [one.run.gained < -mayBringLess ? 1 : 0, measured[matters](one.run) ?? last, behind(one)];
  return [...all].sort((a, b) => compared(keys(a), keys(b)));
}

export function compared(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : a[at]! < b[at]! ? -1 : 1;
}
