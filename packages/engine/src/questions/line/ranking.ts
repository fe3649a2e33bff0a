/** The order of the candidates by what the asker says matters. What is not known never ranks as good. */
import { type RunFacts, runFacts } from "./runFacts";
import { type Studied, type Study, worstRow } from "./study";

export type Matters = "watts" | "receive" | "price" | "weight" | "wind" | "bend";
export const mattersWords: readonly Matters[] = ["watts", "receive", "price", "weight", "wind", "bend"];

export interface Ranked extends Studied {
  readonly run: RunFacts;
}

/** dB by which a line may bring less than the present one and still be ranked by price, weight, wind or bend: our rule. */
export const mayBringLess = 0.5;

export const measured: Readonly<Record<Exclude<Matters, "watts">, (run: RunFacts) => number | null>> = {
  receive: (run) => run.receive,
  price: (run) => run.price,
  weight: (run) => run.weight,
  wind: (run) => run.windArea,
  bend: (run) => run.bendRadius,
};

const last = Number.POSITIVE_INFINITY;

/** Watts where nothing is known of any line by what was asked for: an order of unknowns tells nothing. */
export const knownMatters = (all: readonly Ranked[], asked: Matters): Matters =>
  asked === "watts" || all.some(({ run }) => measured[asked](run) !== null) ? asked : "watts";

/** `length` of the run in m. */
export const withRuns = (study: Study, length: number): Ranked[] =>
  study.all.map((studied): Ranked => ({ ...studied, run: runFacts(study, studied, length) }));

/** dB, of the rated power, in the worst band. */
const behind = (studied: Studied): number => -10 * Math.log10(worstRow(studied).watts);

/** Best first. */
export function rankedLines(all: readonly Ranked[], matters: Matters): Ranked[] {
  const keys = (one: Ranked): readonly number[] =>
    matters === "watts"
      ? [behind(one)]
      : [
          one.run.gained < -mayBringLess ? 1 : 0,
          one.candidate.standing === "converted" ? 1 : 0,
          measured[matters](one.run) ?? last,
          behind(one),
        ];
  return [...all].sort((a, b) => compared(keys(a), keys(b)));
}

export function compared(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : a[at]! < b[at]! ? -1 : 1;
}
