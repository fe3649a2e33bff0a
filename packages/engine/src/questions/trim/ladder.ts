/** From a frequency of lowest SWR to what comes off or on: along the dip that was worked out, not by a rule. */
import { type DipCurve, lengthOfDip, slopeAt } from "./dips";

export interface Rung {
  /** Measured frequency of lowest SWR, Hz. */
  readonly dip: number;
  /** Change of the whole piece, m: negative is cut. */
  readonly change: number;
}

/** Rungs reach this far to either side of the wanted frequency, in about so many steps. */
const reach = 0.06;
const stepsWanted = 14;

/** m: from the length whose dip lies at `dip` to the one whose dip lies at the wanted frequency; null beyond the curve. */
export function changeFor(read: DipCurve, goal: DipCurve, dip: number, wanted: number): number | null {
  const [from, to] = [lengthOfDip(read, dip), lengthOfDip(goal, wanted)];
  return from === null || to === null ? null : to - from;
}

/** Round frequencies around the wanted one, itself and the measured one among them. */
export function ladderOf(dips: DipCurve, wanted: number, measured: number | null): Rung[] {
  const step = roundStep((2 * reach * wanted) / stepsWanted);
  const first = Math.ceil((wanted * (1 - reach)) / step);
  const last = Math.floor((wanted * (1 + reach)) / step);
  const round = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
  const own = [wanted, ...(measured === null ? [] : [measured])];
  const frequencies = [...own, ...round.filter((f) => own.every((o) => Math.abs(f - o) > 0.2 * step))];
  return frequencies
    .toSorted((a, b) => a - b)
    .flatMap((dip) => {
      const change = changeFor(dips, dips, dip, wanted);
      return change === null ? [] : [{ dip, change }];
    });
}

/** 1, 2, 2.5 or 5 times a power of ten, at least `hertz`. */
function roundStep(hertz: number): number {
  const decade = 10 ** Math.floor(Math.log10(hertz));
  return decade * ([1, 2, 2.5, 5, 10].find((m) => m * decade >= hertz * 0.999) ?? 10);
}

/** Hz by which the dip falls for each metre added to the whole piece, at the wanted frequency; null beyond the curve. */
export function hertzPerMetre(dips: DipCurve, wanted: number): number | null {
  const slope = slopeAt(dips, wanted);
  return slope === null ? null : -1 / slope;
}
